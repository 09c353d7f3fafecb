//! What a builder fills in, and how a joint becomes a builder again.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt::{self, Write as _};

use super::{JointBuilder, Surroundings, Washers};
use crate::error::Error;
#[cfg(doc)]
use crate::joint::Objective;
use crate::joint::design::nut_grade_for;
use crate::joint::whole::granted::{Fact, Granted};
use crate::joint::whole::{
    Joint, JointBolt, JointLoad, JointMethods, JointNut, Pattern, Repeats, Tightening,
};
use crate::joint::{DesignSpace, Designs, HoleRule, NutChoice};
use crate::joint::{Environment, Finish, JointPly, JointWasher, LengthRules, Stack};
use crate::material::{BoltGrade, PropertyClass, SaeGrade};
use crate::names::Key;
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::tables::galvanic::{Exposure, Metal};
use crate::tables::holes::{ClearanceHole, HoleFit};
use crate::thread::Thread;
use crate::units::{Length, UnitSystem, celsius, shown};

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
        let plain = bare(grade.stainless_metal());
        let finish = grants.or(self.bolt_finish, Fact::BoltFinish, plain, plain.to_string());
        let environment = self.surroundings(&mut grants);
        let two_nuts = self.nut.is_some() || self.nut_grade.is_some();
        if two_nuts && (self.stack.has_tapped_part() || self.own.nut.is_some()) {
            let why = "a nut was said, and a tapped part or a nut of one's own in its place";
            return Err(Error::Mismatch(why.into()));
        }
        if let Some(nut) = &mut self.own.nut {
            // Of what it is made nobody says: nothing is taken for granted.
            nut.finish = nut.finish.or(self.nut_finish);
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
        if self.length.is_some() {
            let why = "a length was said: it is chosen with the bolt";
            return Err(Error::Mismatch(why.into()));
        }
        let fit = self.fit.unwrap_or(HoleFit::Normal);
        let (style, nut_grade) = (self.washers, self.nut_grade);
        if self.thread.is_none() {
            space.threads.clone_from(&common.threads);
            self.thread = common.threads.get(common.threads.len() / 2).copied();
        }
        let drilled = self.stack.plies().iter().zip(1..);
        let drilled = drilled.filter(|(ply, _)| ply.hole.is_none());
        let drilled: Vec<usize> = drilled.map(|(_, number)| number).collect();
        let mut joint = self.build()?;
        joint.stack = joint
            .stack
            .to_builder()
            .without_holes_in(&drilled)
            .build()?;
        space.holes = HoleRule::Missing(fit);
        if let Washers::Style(style) = style {
            space.washers = Vec::from([style]);
        }
        let granted = |fact: Fact| joint.granted.iter().any(|granted| granted.fact == fact);
        if granted(Fact::Product) {
            space.products = common.products;
        }
        if granted(Fact::Grade) {
            space.grades = common.grades;
        }
        if granted(Fact::Nut) {
            space.nuts = common.nuts;
            for nut in &mut space.nuts {
                nut.grade = nut_grade;
            }
        }
        if granted(Fact::Washers) {
            space.washers = common.washers;
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
        let unsaid = unsaid(said);
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
        let grade = if self.nut_grade.is_some() || grade == BoltGrade::Stated {
            self.nut_grade
        } else {
            let strength = grade.strength(thread.nominal_diameter())?;
            let coat = self.nut_finish.unwrap_or(finish);
            let found = nut_grade_for(&strength, coat, style, thread)?;
            let value = found.map(|grade| grade.to_string());
            let granted = value.map(|value| Granted::new(Fact::NutGrade, value));
            grants.0.extend(granted);
            found
        };
        // Coated as the bolt is; bare, of the steel that its own grade is of.
        let coat = match (finish, grade) {
            (Finish::Bare(_), Some(grade)) => bare(grade.stainless_metal()),
            (finish, _) => finish,
        };
        let finish = grants.or(self.nut_finish, Fact::NutFinish, coat, coat.to_string());
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
        if self.again {
            stack = stack.washers_for(thread)?;
        }
        let style = match self.washers {
            Washers::Style(style) => {
                stack = stack.without_washers();
                Some(style)
            }
            Washers::OfStack => None,
            Washers::Unsaid if stack.has_washers() || !stack.head_is_flat() => None,
            Washers::Unsaid => {
                let style = if thread.is_unified() {
                    WasherStyle::TypeANarrow
                } else {
                    WasherStyle::Iso7089
                };
                grants
                    .0
                    .push(Granted::new(Fact::Washers, OnEachSide(style).to_string()));
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
        if let Some(fit) = self.fit.filter(|_| self.again) {
            let hole = ClearanceHole::find(thread, fit)?.diameter_min;
            stack = stack.round_holes_of(hole);
        }
        let unsaid = stack.plies().iter().zip(1..);
        let unsaid = unsaid.filter(|(ply, _)| ply.hole.is_none());
        let plies: Vec<usize> = unsaid.map(|(_, number)| number).collect();
        if !plies.is_empty() {
            let hole = ClearanceHole::find(thread, self.fit.unwrap_or(HoleFit::Normal))?;
            let hole = hole.diameter_min;
            if self.fit.is_none() {
                grants.0.push(Granted {
                    plies,
                    ..Granted::new(Fact::Holes, NormalFit(hole, system).to_string())
                });
            }
            stack = stack.missing_holes_of(hole);
        }
        let zero = crate::units::Force::default();
        if !self.planes_said && load.across > zero {
            let faces = stack.plies().len() + usize::from(stack.has_tapped_part());
            if faces > 1 {
                let planes = in_turn(stack.plies(), faces);
                stack = stack.shear_planes(1..faces);
                grants.0.push(Granted::new(Fact::ShearPlanes, planes));
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

/// What nobody said of the place, in words.
fn unsaid(said: Surroundings) -> Vec<&'static str> {
    let words = [
        (said.vibration.is_none(), "not shaken"),
        (said.rotates.is_none(), "nothing turns on it"),
        (
            said.dangerous_if_lost.is_none(),
            "nobody in danger if it is lost",
        ),
        (said.refits.is_none(), "never taken apart"),
    ];
    let unsaid = words.into_iter().filter(|(unsaid, _)| *unsaid);
    unsaid.map(|(_, words)| words).collect()
}

struct OnEachSide(WasherStyle);

impl fmt::Display for OnEachSide {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "one {} on each side", self.0)
    }
}

/// The bare metal of a bolt or nut.
fn bare(metal: Option<Metal>) -> Finish {
    Finish::Bare(metal.unwrap_or(Metal::Steel))
}

/// "13.50 mm, normal fit".
struct NormalFit(Length, UnitSystem);

impl fmt::Display for NormalFit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}, normal fit", shown(self.0, self.1))
    }
}

/// What planes between all plies mean for the load.
fn in_turn(plies: &[JointPly], faces: usize) -> &'static str {
    let said = plies.iter().any(|ply| ply.pull.is_some());
    if faces > 2 && !said {
        "one between each two plies, which pull in turn, this way and that"
    } else {
        "one between each two plies"
    }
}

/// Text against which other text is held while it is written: what of it is still to come.
struct Rest<'a>(&'a str);

impl fmt::Write for Rest<'_> {
    fn write_str(&mut self, written: &str) -> fmt::Result {
        self.0 = self.0.strip_prefix(written).ok_or(fmt::Error)?;
        Ok(())
    }
}

/// Whether a joint still has what was taken for granted: a field that was set by hand since then was said.
pub(in crate::joint) fn still_granted(joint: &Joint, granted: &Granted) -> bool {
    let inch = joint.bolt.thread.is_unified();
    let system = if inch {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    // Every check of the joint asks this, so no text is made for it.
    let is = |value: &dyn fmt::Display| {
        let mut rest = Rest(&granted.value);
        write!(rest, "{value}").is_ok() && rest.0.is_empty()
    };
    let (bolt, place) = (&joint.bolt, &joint.environment);
    match granted.fact {
        Fact::Product => joint.own.screw.is_none() && is(&bolt.product.label()),
        Fact::Grade => joint.own.strength.is_none() && is(&bolt.grade),
        Fact::BoltFinish => bolt.finish.is_some_and(|finish| is(&finish)),
        Fact::Nut => joint.nut.is_some_and(|nut| is(&nut.style.label())),
        Fact::NutGrade => {
            let grade = joint.nut.and_then(|nut| nut.grade);
            grade.is_some_and(|grade| is(&grade))
        }
        Fact::NutFinish => {
            let finish = joint.nut.and_then(|nut| nut.finish);
            finish.is_some_and(|finish| is(&finish))
        }
        Fact::Washers => {
            let own = joint.stack.washers_under_head();
            let at_nut = joint
                .stack
                .washers_under_nut()
                .is_none_or(|(washer, count)| {
                    count == 1 && washer.style.is_some_and(|style| is(&OnEachSide(style)))
                });
            let [one] = own else { return false };
            let others = joint.stack.other_washers_under_nut().is_empty();
            others && at_nut && one.style.is_some_and(|style| is(&OnEachSide(style)))
        }
        Fact::Holes => {
            let Ok(hole) = ClearanceHole::find(&bolt.thread, HoleFit::Normal) else {
                return false;
            };
            let hole = hole.diameter_min;
            let plies = joint.stack.plies();
            let mut own = granted.plies.iter().map(|at| plies.get(at.checked_sub(1)?));
            is(&NormalFit(hole, system))
                && own.all(|ply| ply.is_some_and(|ply| ply.hole == Some(hole)))
        }
        Fact::ShearPlanes => {
            let plies = joint.stack.plies();
            let faces = plies.len() + usize::from(joint.stack.tapped_part().is_some());
            let planes = joint.stack.shear_planes().iter().copied();
            planes.eq(1..faces) && is(&in_turn(plies, faces))
        }
        Fact::Pattern => joint.pattern == Pattern::Single,
        Fact::Repeats => joint.load.repeats == Repeats::Never,
        // Numbers that were set, not reckoned.
        #[allow(clippy::float_cmp)]
        Fact::Shock => joint.load.shock_factor == 1.0,
        Fact::Temperature => place.is_at_room_temperature(),
        Fact::Exposure => place.exposure == Exposure::Dry,
        Fact::Surroundings => {
            let unsaid = unsaid(Surroundings {
                vibration: place.vibration.then_some(true),
                rotates: place.rotates.then_some(true),
                dangerous_if_lost: place.dangerous_if_lost.then_some(true),
                refits: Some(place.refits).filter(|&refits| refits > 0),
            });
            // Each of the words must still be true.
            granted.value.split(", ").all(|word| unsaid.contains(&word))
        }
        Fact::Tightening => joint.tightening == Some(Tightening::Snug),
        Fact::Rules => joint.rules == LengthRules::fabrication(system),
        Fact::Methods => joint.methods == JointMethods::machine_design(2.0),
    }
}

pub(super) fn builder_of(joint: &Joint) -> JointBuilder {
    let grants = joint.granted.iter().filter(|own| still_granted(joint, own));
    let grants: Vec<&Granted> = grants.collect();
    let granted = |fact: Fact| grants.iter().any(|granted| granted.fact == fact);
    let mut stack = joint.stack.to_builder();
    let mut washers = Washers::OfStack;
    if granted(Fact::Washers) {
        stack = stack.without_washers();
        washers = Washers::Unsaid;
    }
    for holes in grants.iter().filter(|own| own.fact == Fact::Holes) {
        stack = stack.without_holes_in(&holes.plies);
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
        again: true,
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
        planes_said: said(Fact::ShearPlanes) && !joint.stack.shear_planes().is_empty(),
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
        said: Vec::new(),
        said_of_ply: Vec::new(),
        ply_is_new: false,
        error: None,
    }
}
