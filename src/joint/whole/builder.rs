//! A joint said in the words of the trade; what nobody says is filled in, and listed.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use super::granted::{Fact, Granted};
use super::{
    Joint, JointBolt, JointLoad, JointMethods, JointNut, OwnNut, OwnParts, OwnScrew, OwnStrength,
    Pattern, Prying, Repeats, Scope, SetAside, Tightening, TorqueTightening,
};
use crate::error::Error;
use crate::joint::{
    Environment, Finish, Given, JointMaterial, JointPly, JointTimber, JointWasher, LengthRules,
    Stack, StackBuilder, TappedPart,
};
use crate::material::{BoltGrade, NutGrade};
use crate::parts::{NutStyle, ScrewProduct};
use crate::preload::{NutFactor, PreloadTarget};
use crate::spread::Spread;
use crate::strength::check::Mode;
use crate::strength::ply::SlotDirection;
use crate::tables::galvanic::{Exposure, Metal};
use crate::tables::holes::HoleFit;
use crate::tables::washers::WasherStyle;
use crate::thread::Thread;
use crate::units::{Angle, Force, Length, ThermodynamicTemperature, UnitSystem};

mod fill;

/// Collects what is said of a [`Joint`]. Made by [`Joint::builder`]; text or typed quantities alike ([`Given`]).
///
/// Details such as [`material`](Self::material) speak of the ply added last. What is not said is taken for granted by
/// the unit system of the thread: a stock product and grade, the plain nut or the lock nut that the surroundings ask
/// for, its grade by the standard of the bolt, a washer on each side, holes of normal fit, a shear plane between every
/// two plies, room temperature, a steady load, snug tight, length rules of fabrication, machine design with a factor of
/// 2. The [`Joint`] lists it ([`Joint::granted`]), and so does every report of its verdict. Nothing is taken for granted
/// of materials, distances and widths, of prying, of load factors and of torque: the verdict asks for them.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let joint = Joint::builder("M12")
///     .ply("bracket", "12 +/- 0.3 mm").material("S275 steel").end_distance("35 mm").edge_distance("30 mm").width("60 mm")
///     .ply("rail", "20 +/- 0.5 mm").material("S275 steel").end_distance("35 mm").edge_distance("30 mm").width("60 mm")
///     .across("9 kN")
///     .build()?;
/// let verdict = joint.check()?;
/// assert!(verdict.holds());
/// assert_eq!(joint.bolt.product, ScrewProduct::Iso4014); // taken for granted, and said so
/// assert!(verdict.render(UnitSystem::Si).to_string().contains("taken for granted"));
///
/// let stronger = joint.to_builder().grade("10.9").build()?;
/// assert_eq!(stronger.nut.unwrap().grade, Some(NutGrade::Iso898_2Class10)); // the nut follows
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[must_use]
pub struct JointBuilder {
    title: String,
    thread: Option<Thread>,
    any_size: Option<UnitSystem>,
    product: Option<ScrewProduct>,
    grade: Option<BoltGrade>,
    length: Option<Length>,
    bolt_finish: Option<Finish>,
    nut: Option<NutStyle>,
    nut_grade: Option<NutGrade>,
    nut_finish: Option<Finish>,
    washers: Washers,
    stack: StackBuilder,
    fit: Option<HoleFit>,
    planes_said: bool,
    pattern: Option<Pattern>,
    across: Force,
    along: Force,
    prying: Option<Prying>,
    repeats: Option<Repeats>,
    shock_factor: Option<f64>,
    load_factor: Option<f64>,
    temperatures: Option<(ThermodynamicTemperature, ThermodynamicTemperature)>,
    exposure: Option<Exposure>,
    surroundings: Surroundings,
    tightening: Option<Tightening>,
    rules: Option<LengthRules>,
    methods: Option<JointMethods>,
    scope: Scope,
    set_aside: Vec<SetAside>,
    own: OwnParts,
    error: Option<Error>,
}

/// Which washers were asked for.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
enum Washers {
    #[default]
    Unsaid,
    /// One of the style under the head and one under the nut.
    Style(WasherStyle),
    /// Those of the stack, or none.
    OfStack,
}

/// What was said of the place.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Surroundings {
    vibration: Option<bool>,
    rotates: Option<bool>,
    dangerous_if_lost: Option<bool>,
    refits: Option<usize>,
}

impl Joint {
    /// Starts a joint with the thread of its bolt.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let silent = Joint::builder("3/4-10 UNC").build();
    /// assert!(silent.is_err()); // no ply
    /// ```
    pub fn builder(thread: impl Given<Thread>) -> JointBuilder {
        let mut builder = JointBuilder::default();
        builder.thread = builder.keep(thread.given());
        builder
    }

    /// Starts a joint whose bolt is to be chosen: [`JointBuilder::choose`] finds diameter, grade, length, nut and
    /// washers, as far as nobody says them.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let designs = Joint::any_size(UnitSystem::Si)
    ///     .ply("post", "10 mm").material("S235 steel").end_distance("40 mm").edge_distance("40 mm").width("80 mm")
    ///     .ply("arm", "8 mm").material("S235 steel").end_distance("40 mm").edge_distance("40 mm").width("80 mm")
    ///     .across("6 kN")
    ///     .vibration(true)
    ///     .choose()?;
    /// let joint = designs.best_joint()?.expect("something holds");
    /// assert_eq!(joint.bolt.thread.to_string(), "M8");
    /// assert_eq!(joint.nut.unwrap().style, NutStyle::Iso7042); // the lightest lock nut: it is shaken
    /// assert!(joint.check()?.holds());
    /// # Ok(())
    /// # }
    /// ```
    pub fn any_size(units: UnitSystem) -> JointBuilder {
        JointBuilder {
            any_size: Some(units),
            ..JointBuilder::default()
        }
    }

    /// A builder that makes this joint again, to change something of it. What was taken for granted is taken anew: a
    /// nut follows another grade of bolt.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M10").ply("a", "8 mm").ply("b", "8 mm").across("2 kN").build()?;
    /// assert_eq!(joint.to_builder().build()?, joint);
    /// let thicker = joint.to_builder().thread("M12").build()?;
    /// assert_eq!(thicker.stack.plies()[0].hole, Some(millimetres(13.5))); // the hole follows
    /// # Ok(())
    /// # }
    /// ```
    pub fn to_builder(&self) -> JointBuilder {
        fill::builder_of(self)
    }
}

impl JointBuilder {
    /// The value, or none and a note of the first thing that could not be read.
    fn keep<T>(&mut self, value: Result<T, Error>) -> Option<T> {
        match value {
            Ok(value) => Some(value),
            Err(error) => {
                self.error.get_or_insert(error);
                None
            }
        }
    }

    /// The ply added last, for the details of it.
    fn of_ply(mut self, what: &str, set: impl FnOnce(&mut Self, &mut JointPly)) -> Self {
        let Some(mut ply) = self.stack.pop_ply() else {
            let none = format!("{what} is said of a ply, and no ply was added before it");
            self.error.get_or_insert(Error::Mismatch(none));
            return self;
        };
        set(&mut self, &mut ply);
        self.stack = self.stack.add(ply);
        self
    }

    fn length_of_ply(
        self,
        what: &str,
        length: impl Given<Length>,
        set: impl FnOnce(&mut JointPly, Length),
    ) -> Self {
        self.of_ply(what, |builder, ply| {
            if let Some(length) = builder.keep(length.given()) {
                set(ply, length);
            }
        })
    }

    /// What a drawing would call it.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// assert!(Joint::builder("M8").title("swing hanger (invented)").ply("a", "5 mm").build().is_ok());
    /// ```
    pub fn title(mut self, title: impl Into<String>) -> Self {
        self.title = title.into();
        self
    }

    /// Another thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M8").thread("M10").ply("a", "5 mm").build()?;
    /// assert_eq!(joint.bolt.thread.to_string(), "M10");
    /// # Ok(())
    /// # }
    /// ```
    pub fn thread(mut self, thread: impl Given<Thread>) -> Self {
        let thread = thread.given();
        self.thread = self.keep(thread);
        self
    }

    /// The product standard of the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let screw = Joint::builder("M8").product("ISO 4017");
    /// let typed = Joint::builder("M8").product(ScrewProduct::Iso4017);
    /// ```
    pub fn product(mut self, product: impl Given<ScrewProduct>) -> Self {
        let product = product.given();
        self.product = self.keep(product);
        self
    }

    /// The grade of the bolt: `"8.8"`, `"SAE J429 grade 8"`.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let strong = Joint::builder("M8").grade("10.9");
    /// let unread = Joint::builder("M8").grade("best").ply("a", "5 mm").build();
    /// assert!(unread.is_err());
    /// ```
    pub fn grade(mut self, grade: impl Given<BoltGrade>) -> Self {
        let grade = grade.given();
        self.grade = self.keep(grade);
        self
    }

    /// The nominal length of the bolt; where it is not said, it is searched for.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bolt = Joint::builder("M8").length("40 mm");
    /// ```
    pub fn length(mut self, length: impl Given<Length>) -> Self {
        let length = length.given();
        self.length = self.keep(length);
        self
    }

    /// The coating of bolt and nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let outdoors = Joint::builder("M8").finish(Finish::HotDipGalvanized);
    /// ```
    pub const fn finish(self, finish: Finish) -> Self {
        self.bolt_finish(finish).nut_finish(finish)
    }

    /// The coating of the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let plated = Joint::builder("M8").bolt_finish(Finish::ZincPlated { baked: false });
    /// ```
    pub const fn bolt_finish(mut self, finish: Finish) -> Self {
        self.bolt_finish = Some(finish);
        self
    }

    /// The coating of the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let plated = Joint::builder("M8").nut_finish(Finish::ZincPlated { baked: false });
    /// ```
    pub const fn nut_finish(mut self, finish: Finish) -> Self {
        self.nut_finish = Some(finish);
        self
    }

    /// The style of the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let locked = Joint::builder("M8").nut("ISO 7042");
    /// ```
    pub fn nut(mut self, style: impl Given<NutStyle>) -> Self {
        let style = style.given();
        self.nut = self.keep(style);
        self
    }

    /// The grade of the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let heavy = Joint::builder("3/4-10 UNC").nut(NutStyle::HeavyHex).nut_grade("ASTM A563 DH");
    /// ```
    pub fn nut_grade(mut self, grade: impl Given<NutGrade>) -> Self {
        let grade = grade.given();
        self.nut_grade = self.keep(grade);
        self
    }

    /// One washer of a style under the head and one under the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let hard = Joint::builder("M8").washers(WasherStyle::Iso7090);
    /// ```
    pub fn washers(mut self, style: impl Given<WasherStyle>) -> Self {
        if let Some(style) = self.keep(style.given()) {
            self.washers = Washers::Style(style);
        }
        self
    }

    /// No washers but those of [`stack`](Self::stack).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bare = Joint::builder("M8").no_washers().ply("a", "5 mm").build()?;
    /// assert!(bare.stack.washers_under_head().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    pub const fn no_washers(mut self) -> Self {
        self.washers = Washers::OfStack;
        self
    }

    /// A bolt of the caller's own, which is not searched for.
    ///
    /// ```
    /// # use shankline::joint::OwnScrew;
    /// # use shankline::prelude::*;
    /// let length = Spread::exact(millimetres(60.0));
    /// let turned = OwnScrew::new("turned bolt (invented)", length, millimetres(36.0), millimetres(42.0));
    /// let joint = Joint::builder("M12").own_bolt(turned);
    /// ```
    pub fn own_bolt(mut self, bolt: OwnScrew) -> Self {
        self.product = Some(ScrewProduct::Own);
        self.own.screw = Some(bolt);
        self
    }

    /// The strength of a bolt of the caller's own.
    ///
    /// ```
    /// # use shankline::joint::OwnStrength;
    /// # use shankline::prelude::*;
    /// let joint = Joint::builder("M12").own_strength(OwnStrength::new("shop steel (invented)", megapascals(900.0)));
    /// ```
    pub fn own_strength(mut self, strength: OwnStrength) -> Self {
        self.grade = Some(BoltGrade::Stated);
        self.own.strength = Some(strength);
        self
    }

    /// A nut of the caller's own.
    ///
    /// ```
    /// # use shankline::joint::OwnNut;
    /// # use shankline::parts::Locking;
    /// # use shankline::prelude::*;
    /// let nut = OwnNut::new("turned nut (invented)", Spread::exact(millimetres(16.0)), Locking::None);
    /// let joint = Joint::builder("M12").own_nut(nut);
    /// ```
    pub fn own_nut(mut self, nut: OwnNut) -> Self {
        self.own.nut = Some(nut);
        self
    }

    /// Adds the next ply, counted from the head, with its thickness.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M8").ply("lug", "0.500 +/- 0.015 in").build()?;
    /// assert_eq!(joint.stack.plies()[0].thickness, inches(0.5).plus_minus(inches(0.015)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn ply(mut self, name: impl Into<String>, thickness: impl Given<Spread<Length>>) -> Self {
        if let Some(thickness) = self.keep(thickness.given()) {
            self.stack = self.stack.ply(name, thickness);
        }
        self
    }

    /// Adds a ply that is described elsewhere.
    ///
    /// ```
    /// # use shankline::joint::JointPly;
    /// # use shankline::prelude::*;
    /// let shim = JointPly::packing("shim", Spread::exact(millimetres(2.0)));
    /// let packed = Joint::builder("M8").ply("a", "5 mm").add(shim).ply("b", "5 mm");
    /// ```
    #[allow(clippy::should_implement_trait)] // as on a stack
    pub fn add(mut self, ply: JointPly) -> Self {
        self.stack = self.stack.add(ply);
        self
    }

    /// Anything else of the stack: gaps, sleeves, recesses, washers of other kinds.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let clevis = Joint::builder("M8")
    ///     .ply("ear", "6 mm")
    ///     .stack(|stack| stack.gap(Spread::exact(millimetres(1.0))))
    ///     .ply("tongue", "10 mm")
    ///     .build()?;
    /// assert_eq!(clevis.stack.gaps().len(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn stack(mut self, change: impl FnOnce(StackBuilder) -> StackBuilder) -> Self {
        self.stack = change(self.stack);
        self
    }

    /// Ends the stack in a part with a threaded hole, in place of the nut.
    ///
    /// ```
    /// # use shankline::joint::{TappedHole, TappedPart};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bed = TappedPart::new("bed").thread(millimetres(12.0), TappedHole::Through);
    /// let joint = Joint::builder("M8").ply("cover", "5 mm").tapped(bed).build()?;
    /// assert_eq!(joint.nut, None);
    /// # Ok(())
    /// # }
    /// ```
    pub fn tapped(mut self, part: TappedPart) -> Self {
        self.stack = self.stack.tapped(part);
        self
    }

    /// The material of the ply added last: by name, or [one's own](crate::joint::OwnMaterial).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").material("S235 steel");
    /// ```
    pub fn material(self, material: impl Into<JointMaterial>) -> Self {
        self.of_ply("a material", |_, ply| ply.material = Some(material.into()))
    }

    /// The timber of the ply added last, by name or [one's own](crate::joint::OwnTimber), and the angle from the load to its grain.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let post = Joint::builder("M12").ply("post", "60 mm").timber("C24", "0 deg");
    /// ```
    pub fn timber(self, timber: impl Into<JointTimber>, grain_angle: impl Given<Angle>) -> Self {
        self.of_ply("a timber", |builder, ply| {
            ply.timber = Some(timber.into());
            ply.grain_angle = builder.keep(grain_angle.given());
        })
    }

    /// What the surface of the ply added last is made of, for corrosion.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::galvanic::Metal;
    /// let rail = Joint::builder("M8").ply("rail", "6 mm").metal(Metal::Zinc);
    /// ```
    pub fn metal(self, metal: Metal) -> Self {
        self.of_ply("a metal", |_, ply| ply.metal = Some(metal))
    }

    /// The diameter of the hole in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").hole("9 mm");
    /// ```
    pub fn hole(self, diameter: impl Given<Length>) -> Self {
        self.length_of_ply("a hole", diameter, |ply, hole| ply.hole = Some(hole))
    }

    /// A slot in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::ply::SlotDirection;
    /// let slotted = Joint::builder("M8").ply("bracket", "6 mm").slot("9 mm", "20 mm", SlotDirection::Across);
    /// ```
    pub fn slot(
        self,
        width: impl Given<Length>,
        length: impl Given<Length>,
        direction: SlotDirection,
    ) -> Self {
        self.of_ply("a slot", |builder, ply| {
            let (width, length) = (builder.keep(width.given()), builder.keep(length.given()));
            if let (Some(width), Some(length)) = (width, length) {
                *ply = ply.clone().slot(width, length, direction);
            }
        })
    }

    /// The holes of all plies of which none is said: drilled to a fit for the thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::holes::HoleFit;
    /// let close = Joint::builder("M8").holes(HoleFit::Close);
    /// ```
    pub const fn holes(mut self, fit: HoleFit) -> Self {
        self.fit = Some(fit);
        self
    }

    /// From the centre of the hole to the end of the ply added last, along the load.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").end_distance("20 mm");
    /// ```
    pub fn end_distance(self, distance: impl Given<Length>) -> Self {
        self.length_of_ply("an end distance", distance, |ply, length| {
            ply.end_distance = Some(length);
        })
    }

    /// From the centre of the hole to the side of the ply added last, across the load.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").edge_distance("15 mm");
    /// ```
    pub fn edge_distance(self, distance: impl Given<Length>) -> Self {
        self.length_of_ply("an edge distance", distance, |ply, length| {
            ply.edge_distance = Some(length);
        })
    }

    /// From hole to hole along the load, in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let splice = Joint::builder("M8").ply("plate", "6 mm").pitch("30 mm");
    /// ```
    pub fn pitch(self, pitch: impl Given<Length>) -> Self {
        self.length_of_ply("a pitch", pitch, |ply, length| ply.pitch = Some(length))
    }

    /// From hole to hole across the load, in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let splice = Joint::builder("M8").ply("plate", "6 mm").gauge("30 mm");
    /// ```
    pub fn gauge(self, gauge: impl Given<Length>) -> Self {
        self.length_of_ply("a gauge", gauge, |ply, length| ply.gauge = Some(length))
    }

    /// The width of the ply added last that the load of one bolt comes through.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").width("40 mm");
    /// ```
    pub fn width(self, width: impl Given<Length>) -> Self {
        self.length_of_ply("a width", width, |ply, length| ply.width = Some(length))
    }

    /// What the ply added last pulls, as a share of the load across; against the others where it is negative.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let packing = Joint::builder("M8").ply("shim", "2 mm").pulls(0.0);
    /// ```
    pub fn pulls(self, share: f64) -> Self {
        self.of_ply("a pull", |_, ply| ply.pull = Some(share))
    }

    /// After which plies the load across cuts the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let joint = Joint::builder("M8").ply("a", "5 mm").ply("b", "5 mm").shear_planes([1]);
    /// ```
    pub fn shear_planes(mut self, after_plies: impl IntoIterator<Item = usize>) -> Self {
        self.planes_said = true;
        self.stack = self.stack.shear_planes(after_plies);
        self
    }

    /// How many such bolts stand in a row along the load, and how many rows there are.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let splice = Joint::builder("M20").rows(3, 2);
    /// ```
    pub const fn rows(mut self, along: usize, across: usize) -> Self {
        self.pattern = Some(Pattern::Rows { along, across });
        self
    }

    /// How such bolts stand.
    ///
    /// ```
    /// # use shankline::joint::Pattern;
    /// # use shankline::prelude::*;
    /// let alone = Joint::builder("M20").pattern(Pattern::Single);
    /// ```
    pub const fn pattern(mut self, pattern: Pattern) -> Self {
        self.pattern = Some(pattern);
        self
    }

    /// The load of one bolt across its axis.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let sheared = Joint::builder("M8").across("2 kN");
    /// ```
    pub fn across(mut self, load: impl Given<Force>) -> Self {
        if let Some(load) = self.keep(load.given()) {
            self.across = load;
        }
        self
    }

    /// The load of one bolt along its axis, pulling.
    ///
    /// ```
    /// # use shankline::joint::Prying;
    /// # use shankline::prelude::*;
    /// let pulled = Joint::builder("M8").along("2 kN").prying(Prying::None);
    /// ```
    pub fn along(mut self, load: impl Given<Force>) -> Self {
        if let Some(load) = self.keep(load.given()) {
            self.along = load;
        }
        self
    }

    /// Whether plies that bend add to the load along the axis.
    ///
    /// ```
    /// # use shankline::joint::Prying;
    /// # use shankline::prelude::*;
    /// let stiff = Joint::builder("M8").along("2 kN").prying(Prying::None);
    /// ```
    pub const fn prying(mut self, prying: Prying) -> Self {
        self.prying = Some(prying);
        self
    }

    /// Between what the load goes.
    ///
    /// ```
    /// # use shankline::joint::Repeats;
    /// # use shankline::prelude::*;
    /// let steady = Joint::builder("M8").repeats(Repeats::Never);
    /// ```
    pub const fn repeats(mut self, repeats: Repeats) -> Self {
        self.repeats = Some(repeats);
        self
    }

    /// What shock multiplies the loads by.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let swing = Joint::builder("M8").across("2 kN").shock_factor(2.0);
    /// ```
    pub const fn shock_factor(mut self, factor: f64) -> Self {
        self.shock_factor = Some(factor);
        self
    }

    /// The load factor of the code, for methods that want factored loads; 1 if it is in the loads already.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let factored = Joint::builder("M8").across("2 kN").load_factor(1.0);
    /// ```
    pub const fn load_factor(mut self, factor: f64) -> Self {
        self.load_factor = Some(factor);
        self
    }

    /// The whole of what it lives through.
    ///
    /// ```
    /// # use shankline::joint::Environment;
    /// # use shankline::prelude::*;
    /// let indoors = Joint::builder("M8").environment(Environment::workshop());
    /// ```
    pub const fn environment(mut self, environment: Environment) -> Self {
        self.temperatures = Some((environment.coldest, environment.hottest));
        self.exposure = Some(environment.exposure);
        self.surroundings = Surroundings {
            vibration: Some(environment.vibration),
            rotates: Some(environment.rotates),
            dangerous_if_lost: Some(environment.dangerous_if_lost),
            refits: Some(environment.refits),
        };
        self
    }

    /// Its lowest and highest temperature.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let outdoors = Joint::builder("M8").temperatures("-15 C", "45 C");
    /// ```
    pub fn temperatures(
        mut self,
        coldest: impl Given<ThermodynamicTemperature>,
        hottest: impl Given<ThermodynamicTemperature>,
    ) -> Self {
        let (coldest, hottest) = (self.keep(coldest.given()), self.keep(hottest.given()));
        self.temperatures = coldest.zip(hottest);
        self
    }

    /// Whether it is in the dry or in the weather.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::galvanic::Exposure;
    /// let outdoors = Joint::builder("M8").exposure(Exposure::Harsh);
    /// ```
    pub const fn exposure(mut self, exposure: Exposure) -> Self {
        self.exposure = Some(exposure);
        self
    }

    /// Whether it is shaken.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M8").ply("a", "5 mm").vibration(true).build()?;
    /// assert_eq!(joint.nut.unwrap().style, NutStyle::Iso7040); // a lock nut
    /// # Ok(())
    /// # }
    /// ```
    pub const fn vibration(mut self, vibration: bool) -> Self {
        self.surroundings.vibration = Some(vibration);
        self
    }

    /// Whether something turns on the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let pivot = Joint::builder("M8").rotates(true);
    /// ```
    pub const fn rotates(mut self, rotates: bool) -> Self {
        self.surroundings.rotates = Some(rotates);
        self
    }

    /// Whether its loss endangers anybody.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let swing = Joint::builder("M8").dangerous_if_lost(true);
    /// ```
    pub const fn dangerous_if_lost(mut self, dangerous: bool) -> Self {
        self.surroundings.dangerous_if_lost = Some(dangerous);
        self
    }

    /// How often it is taken apart and put together again.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let cover = Joint::builder("M8").refits(3);
    /// ```
    pub const fn refits(mut self, refits: usize) -> Self {
        self.surroundings.refits = Some(refits);
        self
    }

    /// Tightened with an ordinary wrench: nothing counts on preload.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let snug = Joint::builder("M8").snug();
    /// ```
    pub const fn snug(mut self) -> Self {
        self.tightening = Some(Tightening::Snug);
        self
    }

    /// Tightened with a torque wrench: the nut factor of thread and finish, and what preload is aimed at.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let tight = Joint::builder("M8").torque(NutFactor::new(0.15, 0.18, 0.22)?, PreloadTarget::Reusable);
    /// # Ok(())
    /// # }
    /// ```
    pub const fn torque(mut self, nut_factor: NutFactor, target: PreloadTarget) -> Self {
        self.tightening = Some(Tightening::Torque(TorqueTightening::new(
            nut_factor, target,
        )));
        self
    }

    /// How it is tightened, in full.
    ///
    /// ```
    /// # use shankline::joint::Tightening;
    /// # use shankline::prelude::*;
    /// let snug = Joint::builder("M8").tightening(Tightening::Snug);
    /// ```
    pub const fn tightening(mut self, tightening: Tightening) -> Self {
        self.tightening = Some(tightening);
        self
    }

    /// The rules for its length.
    ///
    /// ```
    /// # use shankline::joint::RuleSet;
    /// # use shankline::prelude::*;
    /// let structural = Joint::builder("M20").rules(RuleSet::En1090.rules(UnitSystem::Si));
    /// ```
    pub const fn rules(mut self, rules: LengthRules) -> Self {
        self.rules = Some(rules);
        self
    }

    /// The methods of the check.
    ///
    /// ```
    /// # use shankline::joint::JointMethods;
    /// # use shankline::prelude::*;
    /// let structural = Joint::builder("M20").methods(JointMethods::en_1993());
    /// ```
    pub const fn methods(mut self, methods: JointMethods) -> Self {
        self.methods = Some(methods);
        self
    }

    /// Machine design with this factor.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let safer = Joint::builder("M8").design_factor(3.0);
    /// ```
    pub const fn design_factor(self, factor: f64) -> Self {
        self.methods(JointMethods::machine_design(factor))
    }

    /// What the verdict is to speak of.
    ///
    /// ```
    /// # use shankline::joint::Scope;
    /// # use shankline::prelude::*;
    /// let bolt = Joint::builder("M8").scope(Scope::Bolt);
    /// ```
    pub const fn scope(mut self, scope: Scope) -> Self {
        self.scope = scope;
        self
    }

    /// A mode that need not be decided here, and why.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::check::Mode;
    /// let joint = Joint::builder("M8").set_aside(Mode::Corrosion, "painted over (invented)");
    /// ```
    pub fn set_aside(mut self, mode: Mode, reason: impl Into<String>) -> Self {
        self.set_aside.push(SetAside::new(mode, reason));
        self
    }
}
