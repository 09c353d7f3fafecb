//! What codes want to know of the connection before they state a shear capacity.

use core::fmt;

use super::ShearMethod;
use crate::material::BoltGrade;
use crate::strength::code::{aisc_360, en_1993};
use crate::thread::Thread;
use crate::units::Length;

/// Length of the joint: between the end bolts, along the force.
///
/// ```
/// use shankline::strength::shear::JointLength;
/// assert_eq!(JointLength::default(), JointLength::Unknown);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum JointLength {
    /// Nobody said. Where the code would take something off, the result says so.
    #[default]
    Unknown,
    /// One bolt along the force: no length.
    SingleBolt,
    /// The load goes in all along the joint, as from the web of a beam into a flange or a cleat. The
    /// reductions are for joints loaded from their ends.
    LoadedAlong,
    /// A joint loaded from its ends, such as a splice, of this length.
    Known(
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        Length,
    ),
}

/// Facts of the connection that codes lower the shear capacity of a bolt for.
///
/// What is not known is left out. It then lowers nothing, and [`unknown`](super::ShearResistance::unknown)
/// of the result names it if the code could have taken something off.
///
/// | method | long joint | long grip | packing | wide holes |
/// |---|---|---|---|---|
/// | AISC 360-05 | 0.8 above 50 in | A307: 1 % for each 1/16 in above 5 d | 1 - 0.4 (t - 0.25) to 3/4 in (m; read for 1999) | none |
/// | AISC 360-10 on | 0.833 above 38 in | the same | the same, at least 0.85 (m) | none |
/// | EN 1993-1-8 3.8, 3.6.1 | 1 - (L - 15 d) / (200 d), 0.75 to 1 (m) | none | 9 d / (8 d + 3 t) for t over d/3 | 0.85, see below |
/// | BS 5950-1 6.3.2 | (5500 - L) / 5000 above 500 mm (m) | 8 d / (3 d + G) above 5 d (m) | 9 d / (8 d + 3 t) for t over d/3, at most 4 d / 3 (m) | none |
/// | IS 800 10.3.3 | 1.075 - L / (200 d), 0.75 to 1, above 15 d (m) | 8 d / (3 d + G) above 5 d, not above the factor of the long joint, at most 8 d (limit m) | 1 - 0.0125 t for t over 6 mm | none |
/// | AS 4100 9.3.2.1 | 1.075 - L / 4000 above 300 mm, at least 0.75 | none | for t over 6 to 20 mm the lesser of 0.85 (m) and 1 - 0.0154 (t - 6) | none |
/// | CSA S16 13.12.1.2 | 0.833 from 760 mm (m) | none | over 6.4 mm refused | none |
/// | others | none | none | none | none |
///
/// L and t in the unit of the numbers beside them, mm or in. (m): recalled, not read; a capacity it was
/// applied to carries a caution. Several reductions multiply.
///
/// EN 1993-1-8 3.6.1(5): M12 and M14 are for holes with 1 mm clearance. In holes with 2 mm classes 4.8, 5.8,
/// 6.8, 8.8 and 10.9 take 0.85 (reproduced in an advisory note and two tables), and with every class the
/// bearing of the group may not exceed its shear (recalled): [`bearing_governs`](super::ShearResistance::bearing_governs).
/// Any hole over d + 1 mm is taken for such a one, the 13.5 mm of ISO 273 for M12 too.
///
/// ```
/// use shankline::{strength::shear::{ConnectionFacts, JointLength}, units::millimetres};
/// let alone = ConnectionFacts::single_bolt(millimetres(30.0), millimetres(18.0));
/// assert_eq!(alone.joint_length, JointLength::SingleBolt);
/// assert_eq!(alone.packing, Some(millimetres(0.0)));
/// assert!(ConnectionFacts::default().packing.is_none()); // not known
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ConnectionFacts {
    /// Length of the joint.
    pub joint_length: JointLength,
    /// Grip G: thickness of all plies together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub grip: Option<Length>,
    /// Thickness t of packing (fillers) at the shear plane that is not developed beyond the joint: all of
    /// it, for EN and BS with packing on both sides of a ply the thicker. Zero where there is none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub packing: Option<Length>,
    /// Diameter of the widest hole of the plies, of a slot its width.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub hole: Option<Length>,
}

impl ConnectionFacts {
    /// One bolt along the force, no packing: grip and hole diameter.
    ///
    /// ```
    /// use shankline::{strength::shear::ConnectionFacts, units::millimetres};
    /// assert!(ConnectionFacts::single_bolt(millimetres(30.0), millimetres(18.0)).hole.is_some());
    /// ```
    #[must_use]
    pub const fn single_bolt(grip: Length, hole: Length) -> Self {
        Self {
            joint_length: JointLength::SingleBolt,
            grip: Some(grip),
            packing: Some(crate::units::millimetres(0.0)),
            hole: Some(hole),
        }
    }

    /// Which of the facts a method asks for are not known.
    pub(super) fn unknown(&self, asked: ReductionNeeds) -> ReductionNeeds {
        let mut unknown = ReductionNeeds::default();
        for need in asked.iter() {
            let missing = match need {
                ReductionNeed::JointLength => self.joint_length == JointLength::Unknown,
                ReductionNeed::Grip => self.grip.is_none(),
                ReductionNeed::Packing => self.packing.is_none(),
                ReductionNeed::Hole => self.hole.is_none(),
            };
            if missing {
                unknown = unknown.with(need);
            }
        }
        unknown
    }
}

/// A fact of the connection that a method may lower the capacity of a bolt for.
///
/// ```
/// use shankline::strength::shear::ReductionNeed;
/// assert_eq!(ReductionNeed::JointLength.to_string(), "length of the joint");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ReductionNeed {
    /// Length of the joint between its end bolts.
    JointLength,
    /// Grip.
    Grip,
    /// Thickness of packing.
    Packing,
    /// Diameter of the hole.
    Hole,
}

impl ReductionNeed {
    const ALL: [Self; 4] = [Self::JointLength, Self::Grip, Self::Packing, Self::Hole];

    const fn bit(self) -> u8 {
        match self {
            Self::JointLength => 1,
            Self::Grip => 2,
            Self::Packing => 4,
            Self::Hole => 8,
        }
    }
}

impl fmt::Display for ReductionNeed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::JointLength => "length of the joint",
            Self::Grip => "grip",
            Self::Packing => "thickness of packing",
            Self::Hole => "hole diameter",
        })
    }
}

/// A set of [`ReductionNeed`]s.
///
/// ```
/// use shankline::strength::shear::{ReductionNeed, ReductionNeeds};
/// let none = ReductionNeeds::default();
/// assert!(none.is_empty() && !none.contains(ReductionNeed::Grip));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct ReductionNeeds(u8);

impl ReductionNeeds {
    pub(in crate::strength) const fn with(self, need: ReductionNeed) -> Self {
        Self(self.0 | need.bit())
    }

    const fn with_if(self, need: ReductionNeed, asked: bool) -> Self {
        if asked { self.with(need) } else { self }
    }

    /// Whether there is none.
    ///
    /// ```
    /// assert!(shankline::strength::shear::ReductionNeeds::default().is_empty());
    /// ```
    #[must_use]
    pub const fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// Whether a fact is among them.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::shear::ReductionNeed;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let needs = ShearMethod::Bs5950.needs(&"M20".parse()?, PropertyClass::Class8_8.into());
    /// assert!(needs.contains(ReductionNeed::Grip) && !needs.contains(ReductionNeed::Hole));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn contains(self, need: ReductionNeed) -> bool {
        self.0 & need.bit() != 0
    }

    /// The facts, one by one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let needs = ShearMethod::En1993.needs(&"M12".parse()?, PropertyClass::Class8_8.into());
    /// let named: Vec<_> = needs.iter().map(|need| need.to_string()).collect();
    /// assert_eq!(named, ["length of the joint", "thickness of packing", "hole diameter"]);
    /// # Ok(())
    /// # }
    /// ```
    pub fn iter(self) -> impl Iterator<Item = ReductionNeed> {
        ReductionNeed::ALL
            .into_iter()
            .filter(move |need| self.contains(*need))
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for ReductionNeeds {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.iter())
    }
}

impl ShearMethod {
    /// The facts of the connection that could lower the capacity of such a bolt by this method.
    ///
    /// Source: the clauses in the table of [`ConnectionFacts`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::shear::ReductionNeed;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// let thread = "3/4-10 UNC".parse()?;
    /// // Only A307 bolts lose by a long grip.
    /// assert!(method.needs(&thread, AstmGrade::A307A.into()).contains(ReductionNeed::Grip));
    /// assert!(!method.needs(&thread, AstmGrade::F3125A325Type1.into()).contains(ReductionNeed::Grip));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn needs(self, thread: &Thread, grade: BoltGrade) -> ReductionNeeds {
        let none = ReductionNeeds::default();
        let (length, grip, packing, hole) = match self {
            Self::Aisc360 { .. } => (true, aisc_360::is_a307(grade), true, false),
            Self::En1993 => (true, false, true, en_1993::has_small_hole(thread)),
            Self::Bs5950 | Self::Is800 => (true, true, true, false),
            Self::As4100 | Self::CsaS16 => (true, false, true, false),
            Self::DistortionEnergy { .. }
            | Self::Bs449
            | Self::MilHdbk5 { .. }
            | Self::NasaStd5020 { .. } => return none,
        };
        none.with_if(ReductionNeed::JointLength, length)
            .with_if(ReductionNeed::Grip, grip)
            .with_if(ReductionNeed::Packing, packing)
            .with_if(ReductionNeed::Hole, hole)
    }
}
