//! A joint said in the words of the trade; what nobody says is filled in, and listed.

use alloc::{format, string::String, vec::Vec};

use super::{
    Joint, JointMethods, OwnNut, OwnParts, OwnScrew, OwnStrength, Pattern, Prying, Repeats, Scope,
    SetAside, Tightening,
};
use crate::error::Error;
use crate::joint::{Finish, Given, JointPly, LengthRules, StackBuilder};
use crate::material::{BoltGrade, NutGrade};
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::tables::galvanic::Exposure;
use crate::tables::holes::HoleFit;
use crate::thread::Thread;
use crate::units::{Force, Length, ThermodynamicTemperature, UnitSystem};

mod fill;

pub(super) use fill::still_granted;
mod place;
mod plies;

/// Collects what is said of a [`Joint`]. Made by [`Joint::builder`]; text or typed quantities alike ([`Given`]).
///
/// Details such as [`material`](Self::material) speak of the ply added last. Each fact is said once: said again and not
/// alike, [`build`](Self::build) refuses it, as only one of the two can be true, and the later one is as likely the slip.
/// ([`environment`](Self::environment) says all that is in it, [`finish`](Self::finish) that of bolt and nut.) To change
/// what a joint has, start from the joint ([`Joint::to_builder`]).
///
/// What is not said is taken for granted by
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
///     .ply("bracket", "12 +/- 0.3 mm").material("S275 steel")
///         .end_distance("35 mm").edge_distance("30 mm").width("60 mm")
///     .ply("rail", "20 +/- 0.5 mm").material("S275 steel")
///         .end_distance("35 mm").edge_distance("30 mm").width("60 mm")
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
    /// Whether it makes a joint again.
    again: bool,
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
    /// What this builder was told, not the joint that it makes again; of the ply added last apart.
    said: Vec<&'static str>,
    said_of_ply: Vec<&'static str>,
    /// Whether the last ply was added here.
    ply_is_new: bool,
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
        builder.said.push("the thread");
        builder
    }

    /// Starts a joint whose bolt is to be chosen: [`JointBuilder::choose`] finds diameter, grade, length, nut and
    /// washers, as far as nobody says them.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let designs = Joint::any_size(UnitSystem::Si)
    ///     .ply("post", "10 mm").material("S235 steel")
    ///         .end_distance("40 mm").edge_distance("40 mm").width("80 mm")
    ///     .ply("arm", "8 mm").material("S235 steel")
    ///         .end_distance("40 mm").edge_distance("40 mm").width("80 mm")
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
    /// One bolt of a connection, which says the loads: with its shear planes, if the connection is loaded across.
    ///
    /// # Errors
    ///
    /// Those of [`build`](Self::build); [`Error::Mismatch`] if it has loads of its own.
    pub(crate) fn template(mut self, is_sheared: bool) -> Result<Joint, Error> {
        if self.across != Force::default() || self.along != Force::default() {
            return Err(Error::Mismatch(
                "the bolt of a connection has loads: say them in its load cases".into(),
            ));
        }
        if is_sheared {
            // Any load: what is filled in asks only whether there is one.
            self.across = crate::units::newtons(1.0);
        }
        let mut joint = self.build()?;
        // How many there are the connection says.
        joint.granted.retain(|own| own.fact != super::Fact::Pattern);
        Ok(Joint {
            load: super::JointLoad {
                across: Force::default(),
                ..joint.load
            },
            ..joint
        })
    }

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

    /// Notes a fact, and refuses another value of one that was said before.
    fn say<T: PartialEq>(
        mut self,
        what: &'static str,
        slot: impl FnOnce(&mut Self) -> &mut T,
        value: T,
    ) -> Self {
        let again = self.said.contains(&what);
        let slot = slot(&mut self);
        if again && *slot != value {
            return self.twice(what);
        }
        *slot = value;
        self.said.push(what);
        self
    }

    /// The same of what may be text.
    fn say_given<T: PartialEq>(
        mut self,
        what: &'static str,
        slot: impl FnOnce(&mut Self) -> &mut Option<T>,
        value: impl Given<T>,
    ) -> Self {
        match self.keep(value.given()) {
            Some(value) => self.say(what, slot, Some(value)),
            None => self,
        }
    }

    /// The same of the ply added last.
    fn say_of_ply<T: PartialEq>(
        self,
        what: &'static str,
        slot: impl FnOnce(&mut JointPly) -> &mut Option<T>,
        value: T,
    ) -> Self {
        self.of_ply(what, |builder, ply| {
            let here = builder.ply_is_new || builder.said_of_ply.contains(&what);
            let slot = slot(ply);
            if here && slot.as_ref().is_some_and(|own| *own != value) {
                builder.error.get_or_insert(said_twice(what));
                return;
            }
            *slot = Some(value);
            builder.said_of_ply.push(what);
        })
    }

    fn twice(mut self, what: &str) -> Self {
        self.error.get_or_insert(said_twice(what));
        self
    }

    /// The ply added last, for the details of it.
    fn of_ply(mut self, what: &str, set: impl FnOnce(&mut Self, &mut JointPly)) -> Self {
        if self.stack.has_tapped_part() {
            let late = format!("{what} is said after the tapped part: say it of the part itself");
            self.error.get_or_insert(Error::Mismatch(late));
            return self;
        }
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
        mut self,
        what: &'static str,
        length: impl Given<Length>,
        slot: impl FnOnce(&mut JointPly) -> &mut Option<Length>,
    ) -> Self {
        match self.keep(length.given()) {
            Some(length) => self.say_of_ply(what, slot, length),
            None => self,
        }
    }

    /// What a drawing would call it.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// assert!(Joint::builder("M8").title("swing hanger (invented)").ply("a", "5 mm").build().is_ok());
    /// ```
    pub fn title(self, title: impl Into<String>) -> Self {
        self.say("the title", |own| &mut own.title, title.into())
    }

    /// Another thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M8").ply("a", "5 mm").build()?;
    /// assert_eq!(joint.to_builder().thread("M10").build()?.bolt.thread.to_string(), "M10");
    /// # Ok(())
    /// # }
    /// ```
    pub fn thread(self, thread: impl Given<Thread>) -> Self {
        self.say_given("the thread", |own| &mut own.thread, thread)
    }

    /// The product standard of the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let screw = Joint::builder("M8").product("ISO 4017");
    /// let typed = Joint::builder("M8").product(ScrewProduct::Iso4017);
    /// ```
    pub fn product(self, product: impl Given<ScrewProduct>) -> Self {
        self.say_given("the product of the bolt", |own| &mut own.product, product)
    }

    /// The grade of the bolt: `"8.8"`, `"SAE J429 grade 8"`.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let strong = Joint::builder("M8").grade("10.9");
    /// let unread = Joint::builder("M8").grade("best").ply("a", "5 mm").build();
    /// assert!(unread.is_err());
    /// ```
    pub fn grade(self, grade: impl Given<BoltGrade>) -> Self {
        self.say_given("the grade of the bolt", |own| &mut own.grade, grade)
    }

    /// The nominal length of the bolt; where it is not said, it is searched for.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bolt = Joint::builder("M8").length("40 mm");
    /// ```
    pub fn length(self, length: impl Given<Length>) -> Self {
        self.say_given("the length of the bolt", |own| &mut own.length, length)
    }

    /// The coating of bolt and nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let outdoors = Joint::builder("M8").finish(Finish::HotDipGalvanized);
    /// ```
    pub fn finish(self, finish: Finish) -> Self {
        self.bolt_finish(finish).nut_finish(finish)
    }

    /// The coating of the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let plated = Joint::builder("M8").bolt_finish(Finish::ZincPlated { baked: false });
    /// ```
    pub fn bolt_finish(self, finish: Finish) -> Self {
        self.say(
            "the coating of the bolt",
            |own| &mut own.bolt_finish,
            Some(finish),
        )
    }

    /// The coating of the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let plated = Joint::builder("M8").nut_finish(Finish::ZincPlated { baked: false });
    /// ```
    pub fn nut_finish(self, finish: Finish) -> Self {
        self.say(
            "the coating of the nut",
            |own| &mut own.nut_finish,
            Some(finish),
        )
    }

    /// The style of the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let locked = Joint::builder("M8").nut("ISO 7042");
    /// ```
    pub fn nut(self, style: impl Given<NutStyle>) -> Self {
        self.say_given("the nut", |own| &mut own.nut, style)
    }

    /// The grade of the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let heavy = Joint::builder("3/4-10 UNC").nut(NutStyle::HeavyHex).nut_grade("ASTM A563 DH");
    /// ```
    pub fn nut_grade(self, grade: impl Given<NutGrade>) -> Self {
        self.say_given("the grade of the nut", |own| &mut own.nut_grade, grade)
    }

    /// One washer of a style under the head and one under the nut, in place of any others.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let hard = Joint::builder("M8").washers(WasherStyle::Iso7090);
    /// ```
    pub fn washers(mut self, style: impl Given<WasherStyle>) -> Self {
        match self.keep(style.given()) {
            Some(style) => self.say("the washers", |own| &mut own.washers, Washers::Style(style)),
            None => self,
        }
    }

    /// No washers, but those that [`stack`](Self::stack) adds after this.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bare = Joint::builder("M8").no_washers().ply("a", "5 mm").build()?;
    /// assert!(bare.stack.washers_under_head().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    pub fn no_washers(self) -> Self {
        let mut told = self.say("the washers", |own| &mut own.washers, Washers::OfStack);
        told.stack = told.stack.without_washers();
        told
    }

    /// A bolt of the caller's own: the best of its lengths, unless [`length`](Self::length) names one of them.
    ///
    /// ```
    /// # use shankline::joint::{OwnLength, OwnScrew};
    /// # use shankline::prelude::*;
    /// let drawer = OwnScrew::new("turned bolt (invented)", [50.0, 60.0].map(|length| {
    ///     OwnLength::new(Spread::exact(millimetres(length)), millimetres(length - 24.0), millimetres(length - 18.0))
    /// }));
    /// let joint = Joint::builder("M12").own_bolt(drawer);
    /// ```
    pub fn own_bolt(self, bolt: OwnScrew) -> Self {
        self.say(
            "the product of the bolt",
            |own| &mut own.product,
            Some(ScrewProduct::Own),
        )
        .say(
            "the bolt of one's own",
            |own| &mut own.own.screw,
            Some(bolt),
        )
    }

    /// The strength of a bolt of the caller's own.
    ///
    /// ```
    /// # use shankline::joint::OwnStrength;
    /// # use shankline::prelude::*;
    /// let joint = Joint::builder("M12").own_strength(OwnStrength::new("shop steel (invented)", megapascals(900.0)));
    /// ```
    pub fn own_strength(self, strength: OwnStrength) -> Self {
        self.say(
            "the grade of the bolt",
            |own| &mut own.grade,
            Some(BoltGrade::Stated),
        )
        .say(
            "the strength of one's own",
            |own| &mut own.own.strength,
            Some(strength),
        )
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
    pub fn own_nut(self, nut: OwnNut) -> Self {
        self.say("the nut of one's own", |own| &mut own.own.nut, Some(nut))
    }
}

fn said_twice(what: &str) -> Error {
    Error::Mismatch(format!(
        "said twice, and not alike: {what}; say it once, or change it in a builder of the joint"
    ))
}
