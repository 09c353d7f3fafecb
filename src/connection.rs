//! Connections: several bolts in a pattern, plates with outlines, and many load cases.
//!
//! A [`Connection`] is one joint many times over: the parts and methods of a [`Joint`] as a template, where its bolts
//! stand, the outlines of its plates, and loads at points. Each bolt is checked as a joint of its own, under what comes to
//! it in every case, with the distances to edges and other holes that lie in the way of its own force; what several bolts
//! do together (block shear, sections of the plates) is checked for the connection.
//!
//! | question | begins at |
//! |---|---|
//! | does it hold, and which bolt and load case governs | [`Connection::check`], [`ConnectionVerdict`] |
//! | what comes to each bolt | [`Connection::forces`] |
//! | which bolt, in which of several patterns | [`Connection::design`] |
//! | which method for which load | [`InPlane`], [`OutOfPlane`], [`PlatePrying`] |
//! | the whole verdict of one bolt in one case | [`Connection::check_bolt_in`] |
//! | a cover under pressure: its force, how many bolts, how far apart | [`strength::cover`](crate::strength::cover) |
//! | in which order to tighten, and what to build from | [`ConnectionVerdict::order`], [`Connection::sheet`] |
//!
//! ```
//! use shankline::connection::{Connection, Outline, Side};
//! use shankline::joint::{RuleSet, Word};
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! let bolt = Joint::builder("M16")
//!     .ply("hanger", "10 mm").material("S275 steel")
//!     .ply("beam tab", "12 mm").material("S275 steel")
//!     .washers(WasherStyle::Iso7090)
//!     .methods(JointMethods::en_1993()).load_factor(1.5)
//!     .rules(RuleSet::En1090.rules(UnitSystem::Si));
//! let hanger = Connection::builder(bolt)
//!     .title("walkway hanger (invented)")
//!     .rows_and_columns(2, 2, "60 mm", "60 mm")
//!     .plate("hanger", Outline::rectangle("140 mm", "140 mm")?).held(Side::Bottom)
//!     .plate("beam tab", Outline::rectangle("160 mm", "160 mm")?).held(Side::Top)
//!     .loaded("hanger")
//!     .case("crowd").force("0 kN", "-60 kN", "0 kN").at("0 mm", "0 mm", "0 mm")
//!     .case("maintenance").force("0 kN", "-12 kN", "0 kN").at("0 mm", "0 mm", "0 mm")
//!     .build()?;
//! let verdict = hanger.check()?;
//! assert_eq!(verdict.word(), Word::Holds);
//! let worst = verdict.governing_bolt().expect("four bolts");
//! assert_eq!(verdict.cases[worst.case].name, "crowd");
//! println!("{}", verdict.render(UnitSystem::Si));
//! # Ok(())
//! # }
//! ```
//!
//! # What is taken to be safe
//!
//! The ends of a ply are the sides of its outline that face the line of a bolt's force within 45 degrees, before it or
//! behind it, and its sides are the others; both distances are the shortest. So a slanting load in a corner is no farther
//! from an edge than a straight one. Which way a ply pulls is not asked: both its ends are tried. Without an outline the
//! distances that the template states hold for every bolt, and where it states none they are missing.
//!
//! A bolt that slants to the others of its row counts as a row of its own, and what one bolt bears is not shared with
//! others that bear more: EN 1993-1-8 3.7 allows more to groups under a load through their centroid, and the check of the
//! group shows it beside those of the bolts. Slotted holes are refused where there are several bolts, as their direction
//! is that to one load.
//!
//! A plate counts beside its bolts no farther than the load spreads to at 30 degrees (Whitmore), or 2.5 holes if that is
//! more. Where a load straight to or from the held side presses a plate, the strip that counts is a column of its own, over
//! the [buckling length](Plate::buckling_length) that the caller states and over what lies between rows of bolts: by AISC
//! 360, EN 1993 and in machine design. Plates that lap on one side only bend each other when they are pressed: of them nothing
//! is said here, nor of any whose [loaded part](Connection::loaded) is not known. Every case counts for itself, so that of
//! loads that alternate the plate that one pulls is pressed by the other.
//!
//! Plates that bend between their bolts and what pulls at them pry, or yield before any bolt does. One that does so is given as a
//! [flange](PlatePrying); of others the [footprint](Plate::footprint) shows whether they are stiff. What neither shows leaves
//! the word undecided, until it is set aside with a reason. A tapped part has no outline here and is taken for a stiff block:
//! a thin plate with threads in it is not one.
//!
//! These are estimates: a structure on which people depend is checked to the local code by a licensed engineer.

use alloc::{string::String, vec::Vec};

use crate::error::Error;
use crate::joint::{Joint, JointLoad, Member, Sheet, Verdict};
use crate::strength::group::BoltPattern;
use crate::units::{Angle, Length};

mod around;
mod builder;
mod design;
mod forces;
mod load;
mod methods;
mod modes;
mod outline;
mod prying;
mod render;
mod run;
mod sane;
mod verdict;

pub use builder::ConnectionBuilder;
pub use design::ConnectionDesign;
pub use forces::BoltLoad;
pub use load::{Alternation, Combination, LoadCase, Part};
pub use methods::{InPlane, OutOfPlane, PlatePrying};
pub use outline::{Outline, Side};
pub use render::RenderedConnection;
pub use verdict::{BoltVerdict, CaseVerdict, ConnectionCheck, ConnectionVerdict, Governing};

/// One ply of the template as a plate: its outline, and what goes with it.
///
/// ```
/// use shankline::connection::{Outline, Plate, Side};
/// # fn main() -> Result<(), shankline::Error> {
/// let foot = Plate::new("foot", Outline::rectangle("200 mm", "160 mm")?);
/// assert_eq!(foot.held, None);
/// assert_eq!(Plate { held: Some(Side::Top), ..foot }.held, Some(Side::Top));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Plate {
    /// The ply, by its name in the stack; of several of that name, all.
    pub ply: String,
    /// Its outline.
    pub outline: Outline,
    /// On which side it is held; without it the sections of the plate are not checked.
    #[cfg_attr(feature = "serde", serde(default))]
    pub held: Option<Side>,
    /// Over which length it can buckle out of its plane where a load presses it, K L or Lcr: from the row of bolts next to
    /// the held side to that side, times what its ends make of it. At least half the way there is.
    ///
    /// | ends | K |
    /// |---|---|
    /// | held along two edges, by full-scale tests (AISC Design Guide 29, Example 5.1) | 0.5 |
    /// | neither turns nor moves aside at either end (commentary of AISC 360, Table C-A-7.1) | 0.65 |
    /// | the same, and its bolts move aside | 1.2 |
    /// | what is bolted to it can turn and move aside | 2.1 |
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub buckling_length: Option<Length>,
    /// Outline of what is fixed to it and brings its load or takes it: the foot of a post, a stem, a rib. Between it and bolts
    /// that are pulled the plate bends; without it nobody knows how much. Its edge runs beside the bolts, not through them.
    #[cfg_attr(feature = "serde", serde(default))]
    pub footprint: Option<Outline>,
    /// Direction of the grain of a ply of timber, anticlockwise from x. It takes the place of the angle in the template,
    /// which is that to one load.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Angle>>")
    )]
    pub grain: Option<Angle>,
}

impl Plate {
    /// A ply and its outline.
    ///
    /// ```
    /// # use shankline::connection::{Outline, Plate};
    /// let plate = Plate::new("cleat", Outline::rectangle("90 mm", "220 mm").unwrap());
    /// assert_eq!(plate.ply, "cleat");
    /// ```
    #[must_use]
    pub fn new(ply: impl Into<String>, outline: Outline) -> Self {
        Self {
            ply: ply.into(),
            outline,
            held: None,
            buckling_length: None,
            footprint: None,
            grain: None,
        }
    }
}

/// Several bolts of one kind that carry loads together. Plain data, or made by a [builder](Connection::builder).
///
/// | asked about | where it is described |
/// |---|---|
/// | bolt, nut, plies, surroundings, tightening, methods | [`Connection::joint`]: without loads, pattern and distances to other holes |
/// | distances, blocks, sections | [`Connection::bolts`], [`Connection::plates`], [`Connection::loaded`] |
/// | how loads come to the bolts | [`Connection::in_plane`], [`Connection::out_of_plane`], [`Connection::prying`] |
/// | loads | [`Connection::cases`], [`Connection::combinations`], [`Connection::alternations`] |
///
/// Without combinations every case is checked. With them the combinations are, and every case must be in one.
/// [`JointLoad::load_factor`] and [`JointLoad::shock_factor`] of the template hold for all: where combinations have the
/// factors of the code in them, say a load factor of 1.
///
/// ```
/// use shankline::connection::{Combination, Connection, LoadCase};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm").load_factor(1.0);
/// let weight = LoadCase::new("own weight", [0.0, -8e3, 0.0].map(newtons), [0.0; 3].map(millimetres));
/// let connection = Connection::builder(bolt)
///     .rows_and_columns(2, 2, "60 mm", "60 mm")
///     .cases([weight])
///     .combination(Combination::new("1.35 G").plus(1.35, "own weight"))
///     .build()?;
/// let forces = connection.forces("1.35 G")?;
/// assert!((forces[0].across - newtons(2700.0)).abs() < newtons(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Connection {
    /// What a drawing would call it.
    pub title: String,
    /// One of its bolts: the template of all.
    pub joint: Joint,
    /// Where they stand. All of one kind: relative areas are 1.
    pub bolts: BoltPattern,
    /// Outlines of plies.
    #[cfg_attr(feature = "serde", serde(default))]
    pub plates: Vec<Plate>,
    /// A ply of the part that the loads act on, by its name: with it go those that pull its way, and the others hold it.
    /// Without it nobody knows which plates a load pulls and which it presses.
    #[cfg_attr(feature = "serde", serde(default))]
    pub loaded: Option<String>,
    /// How loads in the plane come to the bolts; none where they all pass through the centroid.
    #[cfg_attr(feature = "serde", serde(default))]
    pub in_plane: Option<InPlane>,
    /// How moments out of the plane come to the bolts; none where there are none.
    #[cfg_attr(feature = "serde", serde(default))]
    pub out_of_plane: Option<OutOfPlane>,
    /// What a ply that bends adds to the load along the bolts, in place of the word of the caller in the template.
    #[cfg_attr(feature = "serde", serde(default))]
    pub prying: Option<PlatePrying>,
    /// Load cases.
    pub cases: Vec<LoadCase>,
    /// Their combinations. In a file they are said, if only as none: left out, cases would count without their factors.
    pub combinations: Vec<Combination>,
    /// Loads that alternate. What is in none is steady, which a file says too.
    pub alternations: Vec<Alternation>,
}

impl Connection {
    /// Checks every bolt in every case, and what the bolts do together.
    ///
    /// # Errors
    ///
    /// Those of [`Joint::check`], [`Error::OutOfRange`] for more bolts (200), load cases (1 000 000) or bolts times load cases
    /// (1 000 000) than can be checked; [`Error::Mismatch`] for a description that contradicts itself (a template that has loads,
    /// a plate of no ply, a bolt outside its plate, a case twice or in no combination, loads that cancel everywhere), and for
    /// loads that the chosen methods do not cover; the message says what to choose.
    ///
    /// ```
    /// use shankline::connection::Connection;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let eccentric = Connection::builder(bolt)
    ///     .rows_and_columns(2, 2, "60 mm", "60 mm")
    ///     .case("off the centroid").force("0 kN", "5 kN", "0 kN").at("90 mm", "0 mm", "0 mm")
    ///     .build()?;
    /// assert!(eccentric.check().is_err()); // by which method?
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self) -> Result<ConnectionVerdict, Error> {
        run::run(self)
    }

    /// What comes to each bolt in a case, a combination, by its name, at the loads as they are given: without shock,
    /// load factor and prying.
    ///
    /// # Errors
    ///
    /// [`Error::UnknownName`] for a name that is neither; those of [`check`](Self::check).
    ///
    /// ```
    /// use shankline::connection::{Connection, InPlane};
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = Joint::builder("M16").ply("a", "10 mm").ply("b", "10 mm");
    /// let bracket = Connection::builder(bolt)
    ///     .rows_and_columns(2, 2, "120 mm", "150 mm")
    ///     .in_plane(InPlane::Elastic)
    ///     .case("full").force("0 kN", "-16 kN", "0 kN").at("425 mm", "0 mm", "0 mm")
    ///     .build()?;
    /// // Shigley, 9th ed., Example 8-7: 21 kN
    /// let most = bracket.forces("full")?.iter().map(|own| own.across.value).fold(0.0, f64::max);
    /// assert!((most - 20.97e3).abs() < 5.0);
    /// # Ok(())
    /// # }
    /// ```
    pub fn forces(&self, name: &str) -> Result<Vec<BoltLoad>, Error> {
        sane::checked(self)?;
        let case = forces::Known::of(self).by_name(name)?;
        Ok(forces::of(self, &case)?.loads)
    }

    /// The whole verdict of one bolt, counted from 1, in a case or combination by its name.
    ///
    /// # Errors
    ///
    /// Those of [`forces`](Self::forces) and of [`Joint::check`]; [`Error::Mismatch`] if there is no such bolt.
    ///
    /// ```
    /// # use shankline::connection::Connection;
    /// # use shankline::units::UnitSystem;
    /// fn show(connection: &Connection) -> Result<(), shankline::Error> {
    ///     println!("{}", connection.check_bolt_in("full hoist", 4)?.render(UnitSystem::Si));
    ///     Ok(())
    /// }
    /// ```
    pub fn check_bolt_in(&self, name: &str, bolt: usize) -> Result<Verdict, Error> {
        sane::checked(self)?;
        run::one_bolt(self, name, bolt)
    }

    /// The sheet for the workshop: parts and steps are those of every bolt, in the order of the pattern.
    ///
    /// # Errors
    ///
    /// Those of [`Sheet::new`]; [`Error::Mismatch`] if the verdict is that of another connection.
    ///
    /// ```
    /// # use shankline::connection::{Connection, ConnectionVerdict};
    /// # use shankline::units::UnitSystem;
    /// fn print(connection: &Connection, verdict: &ConnectionVerdict) -> Result<(), shankline::Error> {
    ///     println!("{}", connection.sheet(verdict)?.render(UnitSystem::Si));
    ///     Ok(())
    /// }
    /// ```
    pub fn sheet(&self, verdict: &ConnectionVerdict) -> Result<Sheet, Error> {
        run::sheet(self, verdict)
    }
}

impl Connection {
    /// The outline of a ply, and what goes with it.
    fn plate_of(&self, ply: &str) -> Option<&Plate> {
        self.plates.iter().find(|plate| plate.ply == ply)
    }
}

/// JSON Schema (draft 2020-12) of a [`Connection`] as it is read; kept as `examples/data/connection.schema.json`. See
/// [`joint::schema`](crate::joint::schema) for what such a schema knows.
///
/// ```
/// assert!(shankline::connection::schema().contains("\"alternations\""));
/// ```
#[cfg(feature = "schema")]
#[must_use]
pub fn schema() -> String {
    crate::joint::schema::text_of::<Connection>(
        schemars::generate::SchemaSettings::draft2020_12().for_deserialize(),
    )
}

/// The one door through which the bolts of a connection are checked.
fn check_bolt(joint: &Joint, load: &JointLoad, around: Option<&Member>) -> Result<Verdict, Error> {
    let joint = Joint {
        load: *load,
        ..joint.clone()
    };
    joint.check_among(around)
}

#[cfg(test)]
mod tests;
