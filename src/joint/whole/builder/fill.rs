//! What a builder fills in, and how a joint becomes a builder again.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use super::{JointBuilder, Surroundings, Washers};
use crate::error::Error;
#[cfg(doc)]
use crate::joint::Objective;
use crate::joint::design::nut_grade_for;
use crate::joint::whole::granted::{Fact, Granted};
use crate::joint::whole::{
    Joint, JointBolt, JointLoad, JointMethods, JointNut, Pattern, Repeats, Tightening,
};
use crate::joint::{DesignSpace, Designs, NutChoice};
use crate::joint::{Environment, Finish, JointWasher, LengthRules, Stack};
use crate::material::{BoltGrade, PropertyClass, SaeGrade};
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::tables::galvanic::{Exposure, Metal};
use crate::tables::holes::{ClearanceHole, HoleFit};
use crate::thread::Thread;
use crate::units::{UnitSystem, celsius, shown};

/// Styles of nut to take where several of a kind are made, the usual ones.
const USUAL_NUTS: [NutStyle; 7] = [
    NutStyle::Hex,
    NutStyle::InsertLockNe,
    NutStyle::AllMetalLock,
    NutStyle::HexSlotted,
    NutStyle::Iso4032,
    NutStyle::Iso7040,
    NutStyle::Iso7042,
];

/// The list of what is taken for granted.
struct Grants(Vec<Granted>);

impl Grants {
    /// What was said, or else what is taken and a note of it.
    fn or<T>(&mut self, said: Option<T>, fact: Fact, taken: T, value: impl Into<String>) -> T {
        said.unwrap_or_else(|| {
            self.0.push(Granted::new(fact, value));
            taken
        })
    }
}

impl JointBuilder {
    /// The joint, with what nobody said filled in.
    ///
    /// # Errors
    ///
    /// The first text that could not be read; those of [`StackBuilder::build`](super::StackBuilder::build);
    /// [`Error::NotInTable`] if what is taken for granted is not made for the thread: say another part.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let unread = Joint::builder("M12").ply("plate", "20").build();
    /// assert!(unread.unwrap_err().to_string().contains("20")); // no unit
    /// ```
    pub fn build(mut self) -> Result<Joint, Error> {
        if let Some(error) = self.error {
            return Err(error);
        }
        let Some(thread) = self.thread else {
            let why = "no thread was said: say one, or let one be chosen";
            return Err(Error::Mismatch(why.into()));
        };
        let inch = thread.is_unified();
        let system = if inch {
            UnitSystem::UsCustomary
        } else {
            UnitSystem::Si
        };
        let mut grants = Grants(Vec::new());
        let product = usual_product(&thread);
        let product = grants.or(self.product, Fact::Product, product, product.to_string());
        let grade: BoltGrade = if inch {
            SaeGrade::Grade5.into()
        } else {
            PropertyClass::Class8_8.into()
        };
        let grade = grants.or(self.grade, Fact::Grade, grade, grade.to_string());
        let plain = if grade.is_stainless() {
            Finish::Bare(Metal::Stainless18Chromium)
        } else {
            Finish::Bare(Metal::Steel)
        };
        let finish = grants.or(self.bolt_finish, Fact::BoltFinish, plain, plain.to_string());
        let environment = self.surroundings(&mut grants);
        if let Some(nut) = &mut self.own.nut {
            let own = nut.finish.or(self.nut_finish);
            nut.finish = Some(grants.or(own, Fact::NutFinish, finish, finish.to_string()));
        }
        let nut = if self.stack.has_tapped_part() || self.own.nut.is_some() {
            None
        } else {
            Some(self.nut_for(&thread, (grade, finish), &environment, &mut grants)?)
        };
        let load = self.load(&mut grants);
        let stack = self.filled_stack(&thread, system, &load, &mut grants)?;
        let pattern = grants.or(self.pattern, Fact::Pattern, Pattern::Single, "one alone");
        let tightening = grants.or(
            self.tightening,
            Fact::Tightening,
            Tightening::Snug,
            "snug, no preload is counted on",
        );
        let rules = grants.or(
            self.rules,
            Fact::Rules,
            LengthRules::fabrication(system),
            "general fabrication",
        );
        let methods = grants.or(
            self.methods,
            Fact::Methods,
            JointMethods::machine_design(2.0),
            "machine design, factor 2",
        );
        Ok(Joint {
            title: self.title,
            bolt: JointBolt {
                product,
                thread,
                grade,
                length: self.length,
                finish: Some(finish),
            },
            nut,
            stack,
            pattern,
            load,
            environment,
            tightening: Some(tightening),
            rules,
            methods,
            scope: self.scope,
            set_aside: self.set_aside,
            granted: grants.0,
            own: self.own,
        })
    }

    /// Searches the usual threads, products, grades, nuts and washers, as far as none was said, for a bolt with which the
    /// joint holds: first with plain shank in every shear plane, then by the [usual objectives](Objective::DEFAULT).
    ///
    /// # Errors
    ///
    /// Those of [`build`](Self::build) and of [`Joint::design`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let undescribed = Joint::any_size(UnitSystem::UsCustomary).ply("a", "1/4 in").ply("b", "1/4 in").across("500 lbf");
    /// let designs = undescribed.choose()?;
    /// assert!(designs.best().is_none()); // what nobody knows is not proposed
    /// assert!(!designs.rejected().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    pub fn choose(mut self) -> Result<Designs, Error> {
        let units = match (self.any_size, &self.thread) {
            (Some(units), _) => units,
            (None, Some(thread)) if thread.is_unified() => UnitSystem::UsCustomary,
            (None, _) => UnitSystem::Si,
        };
        let common = DesignSpace::common(units)?;
        let mut space = DesignSpace::new();
        if self.thread.is_none() {
            space.threads.clone_from(&common.threads);
            self.thread = common.threads.get(common.threads.len() / 2).copied();
        }
        let joint = self.build()?;
        let granted = |fact: Fact| joint.granted.iter().any(|granted| granted.fact == fact);
        if granted(Fact::Product) {
            space.products = common.products;
        }
        if granted(Fact::Grade) {
            space.grades = common.grades;
        }
        if granted(Fact::Nut) {
            space.nuts = common.nuts;
        }
        if granted(Fact::Washers) {
            space.washers = common.washers;
        }
        if granted(Fact::Holes) {
            space.holes = common.holes;
        }
        joint.design(&space, &[])
    }

    fn load(&self, grants: &mut Grants) -> JointLoad {
        JointLoad {
            across: self.across,
            along: self.along,
            prying: self.prying,
            repeats: grants.or(
                self.repeats,
                Fact::Repeats,
                Repeats::Never,
                "it never repeats",
            ),
            shock_factor: grants.or(self.shock_factor, Fact::Shock, 1.0, "none, factor 1"),
            load_factor: self.load_factor,
        }
    }

    fn surroundings(&self, grants: &mut Grants) -> Environment {
        let room = celsius(20.0);
        let (coldest, hottest) =
            grants.or(self.temperatures, Fact::Temperature, (room, room), "20 C");
        let exposure = grants.or(self.exposure, Fact::Exposure, Exposure::Dry, "dry for life");
        let said = self.surroundings;
        let unsaid: Vec<&str> = [
            (said.vibration.is_none(), "not shaken"),
            (said.rotates.is_none(), "nothing turns on it"),
            (
                said.dangerous_if_lost.is_none(),
                "nobody in danger if it is lost",
            ),
            (said.refits.is_none(), "never taken apart"),
        ]
        .into_iter()
        .filter_map(|(unsaid, words)| unsaid.then_some(words))
        .collect();
        if !unsaid.is_empty() {
            let value = unsaid.join(", ");
            grants.0.push(Granted::new(Fact::Surroundings, value));
        }
        Environment {
            coldest,
            hottest,
            vibration: said.vibration.unwrap_or(false),
            rotates: said.rotates.unwrap_or(false),
            dangerous_if_lost: said.dangerous_if_lost.unwrap_or(false),
            refits: said.refits.unwrap_or(0),
            exposure,
        }
    }

    fn nut_for(
        &self,
        thread: &Thread,
        (grade, finish): (BoltGrade, Finish),
        environment: &Environment,
        grants: &mut Grants,
    ) -> Result<JointNut, Error> {
        let style = if let Some(style) = self.nut {
            style
        } else {
            let style = usual_nut(thread, environment)?;
            grants.0.push(Granted::new(Fact::Nut, style.to_string()));
            style
        };
        let finish = grants.or(self.nut_finish, Fact::NutFinish, finish, finish.to_string());
        let grade = if self.nut_grade.is_some() {
            self.nut_grade
        } else {
            let strength = grade.strength(thread.nominal_diameter())?;
            let found = nut_grade_for(&strength, finish, style, thread)?;
            let value = found.map(|grade| grade.to_string());
            let granted = value.map(|value| Granted::new(Fact::NutGrade, value));
            grants.0.extend(granted);
            found
        };
        Ok(JointNut {
            style,
            grade,
            finish: Some(finish),
        })
    }

    fn filled_stack(
        &mut self,
        thread: &Thread,
        system: UnitSystem,
        load: &JointLoad,
        grants: &mut Grants,
    ) -> Result<Stack, Error> {
        let mut stack = core::mem::take(&mut self.stack);
        let style = match self.washers {
            Washers::Style(style) => Some(style),
            Washers::OfStack => None,
            Washers::Unsaid if stack.has_washers() || !stack.head_is_flat() => None,
            Washers::Unsaid => {
                let style = if thread.is_unified() {
                    WasherStyle::TypeANarrow
                } else {
                    WasherStyle::Iso7089
                };
                let value = format!("one {style} on each side");
                grants.0.push(Granted::new(Fact::Washers, value));
                Some(style)
            }
        };
        if let Some(style) = style {
            let washer = JointWasher::find(style, thread)?;
            stack = stack.washer_under_head(washer.clone());
            if !stack.has_tapped_part() {
                stack = stack.washers_under_nut(washer, 1);
            }
        }
        if stack.plies().iter().any(|ply| ply.hole.is_none()) {
            let fit = self.fit.unwrap_or(HoleFit::Normal);
            let hole = ClearanceHole::find(thread, fit)?.diameter_min;
            if self.fit.is_none() {
                let value = format!("{}, normal fit", shown(hole, system));
                grants.0.push(Granted::new(Fact::Holes, value));
            }
            stack = stack.missing_holes_of(hole);
        }
        let zero = crate::units::Force::default();
        if !self.planes_said && load.across > zero {
            let faces = stack.plies().len() + usize::from(stack.has_tapped_part());
            if faces > 1 {
                stack = stack.shear_planes(1..faces);
                let value = "one between each two plies";
                grants.0.push(Granted::new(Fact::ShearPlanes, value));
            }
        }
        stack.build()
    }
}

/// The nut that the surroundings ask for, of the usual style where several are made.
fn usual_nut(thread: &Thread, environment: &Environment) -> Result<NutStyle, Error> {
    let choice = NutChoice::new(thread, environment)?;
    let of_first = choice.options.iter().take(1);
    let mut of_first = of_first.flat_map(|option| &option.styles);
    let usual = of_first.clone().find(|style| USUAL_NUTS.contains(style));
    usual
        .or_else(|| of_first.next())
        .copied()
        .ok_or_else(|| Error::Mismatch(format!("no nut of the tables has {thread}")))
}

fn usual_product(thread: &Thread) -> ScrewProduct {
    if thread.is_unified() {
        ScrewProduct::HexCapScrew
    } else if crate::parts::ScrewSeries::new(ScrewProduct::Iso4014, thread).is_err()
        && crate::parts::ScrewSeries::new(ScrewProduct::Iso8765, thread).is_ok()
    {
        ScrewProduct::Iso8765
    } else {
        ScrewProduct::Iso4014
    }
}

pub(super) fn builder_of(joint: &Joint) -> JointBuilder {
    let granted = |fact: Fact| joint.granted.iter().any(|granted| granted.fact == fact);
    let mut stack = joint.stack.to_builder();
    let mut washers = Washers::OfStack;
    if granted(Fact::Washers) {
        stack = stack.without_washers();
        washers = Washers::Unsaid;
    }
    if granted(Fact::Holes)
        && let Ok(hole) = ClearanceHole::find(&joint.bolt.thread, HoleFit::Normal)
    {
        stack = stack.without_holes_of(hole.diameter_min);
    }
    if granted(Fact::ShearPlanes) {
        stack = stack.shear_planes([]);
    }
    let (load, environment) = (&joint.load, &joint.environment);
    let said = |fact: Fact| !granted(fact);
    // Of several facts in one grant, those that are as usual are left to be taken again.
    let place = said(Fact::Surroundings);
    JointBuilder {
        title: joint.title.clone(),
        thread: Some(joint.bolt.thread),
        any_size: None,
        product: said(Fact::Product).then_some(joint.bolt.product),
        grade: said(Fact::Grade).then_some(joint.bolt.grade),
        length: joint.bolt.length,
        bolt_finish: joint.bolt.finish.filter(|_| said(Fact::BoltFinish)),
        nut: joint.nut.map(|nut| nut.style).filter(|_| said(Fact::Nut)),
        nut_grade: joint
            .nut
            .and_then(|nut| nut.grade)
            .filter(|_| said(Fact::NutGrade)),
        nut_finish: joint
            .nut
            .and_then(|nut| nut.finish)
            .filter(|_| said(Fact::NutFinish)),
        washers,
        stack,
        fit: None,
        planes_said: said(Fact::ShearPlanes),
        pattern: said(Fact::Pattern).then_some(joint.pattern),
        across: load.across,
        along: load.along,
        prying: load.prying,
        repeats: said(Fact::Repeats).then_some(load.repeats),
        shock_factor: said(Fact::Shock).then_some(load.shock_factor),
        load_factor: load.load_factor,
        temperatures: said(Fact::Temperature).then_some((environment.coldest, environment.hottest)),
        exposure: said(Fact::Exposure).then_some(environment.exposure),
        surroundings: Surroundings {
            vibration: Some(environment.vibration).filter(|&shaken| place || shaken),
            rotates: Some(environment.rotates).filter(|&turns| place || turns),
            dangerous_if_lost: Some(environment.dangerous_if_lost).filter(|&lost| place || lost),
            refits: Some(environment.refits).filter(|&refits| place || refits > 0),
        },
        tightening: joint.tightening.filter(|_| said(Fact::Tightening)),
        rules: said(Fact::Rules).then_some(joint.rules),
        methods: said(Fact::Methods).then_some(joint.methods),
        scope: joint.scope,
        set_aside: joint.set_aside.clone(),
        own: {
            let mut own = joint.own.clone();
            if let Some(nut) = &mut own.nut {
                nut.finish = nut.finish.filter(|_| said(Fact::NutFinish));
            }
            own
        },
        error: None,
    }
}
