//! One rule of detail, judged: what it is about, what it is, what it must be.

use core::fmt;

use super::{MemberMaterial, TimberMember, TimberMethod, check_diameter};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, sane_length};
use crate::source::Method;
use crate::tables::methods;
use crate::units::{Length, Ratio, SAME_LENGTH, inches, millimetres};

/// A fact that a rule for bolts in timber asks for. `Display` gives its name in words.
///
/// ```
/// use shankline::strength::timber::TimberFact;
/// assert_eq!(TimberFact::WasherWidth.to_string(), "side or diameter of the washer");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TimberFact {
    /// Diameter of the hole in the timber.
    Hole,
    /// Diameter of the hole in the steel plate.
    PlateHole,
    /// Distance to the end or edge that the load acts along.
    EndDistance,
    /// Distance to the edge or end across the load.
    EdgeDistance,
    /// Distance to the next bolt along the load.
    Pitch,
    /// Distance to the next bolt across the load.
    Gauge,
    /// Distance between the outer rows of bolts.
    RowSpread,
    /// Diameter of a round or side of a square washer.
    WasherWidth,
    /// Thickness of the washer.
    WasherThickness,
    /// Number of bolts in a row.
    BoltsInRow,
    /// Modulus of elasticity times section of the main member.
    MainStiffness,
    /// Modulus of elasticity times section of the side members together.
    SideStiffness,
    /// Strength of the timber in compression across the grain.
    CompressionAcross,
    /// Characteristic resistance of the bolt in tension.
    BoltTension,
}

impl TimberFact {
    /// What it is called.
    ///
    /// ```
    /// use shankline::strength::timber::TimberFact;
    /// assert_eq!(TimberFact::EndDistance.name(), "end distance");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Hole => "hole in the timber",
            Self::PlateHole => "hole in the plate",
            Self::EndDistance => "end distance",
            Self::EdgeDistance => "edge distance",
            Self::Pitch => "pitch of the bolts",
            Self::Gauge => "gauge of the bolts",
            Self::RowSpread => "distance between the outer rows",
            Self::WasherWidth => "side or diameter of the washer",
            Self::WasherThickness => "thickness of the washer",
            Self::BoltsInRow => "number of bolts in a row",
            Self::MainStiffness => "stiffness E A of the main member",
            Self::SideStiffness => "stiffness E A of the side members",
            Self::CompressionAcross => "compressive strength across the grain",
            Self::BoltTension => "resistance of the bolt in tension",
        }
    }
}

impl fmt::Display for TimberFact {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
    }
}

/// What a rule finds.
///
/// ```
/// use shankline::strength::timber::Judged;
/// assert!(Judged::TooSmall.is_fault() && !Judged::Missing.is_fault());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Judged {
    /// As the rule wants it.
    Holds,
    /// Permitted, but it costs strength: [`Requirement::share`] is left.
    Reduces,
    /// Below the least value.
    TooSmall,
    /// Above the greatest value.
    TooGreat,
    /// Not known: nothing can be said, and nothing good may be assumed.
    Missing,
}

impl Judged {
    /// Whether the rule is broken.
    ///
    /// ```
    /// use shankline::strength::timber::Judged;
    /// assert!(Judged::TooGreat.is_fault() && !Judged::Reduces.is_fault());
    /// ```
    #[must_use]
    pub const fn is_fault(self) -> bool {
        matches!(self, Self::TooSmall | Self::TooGreat)
    }
}

/// A length that a rule wants within limits.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::{Judged, TimberMember, TimberMethod};
/// use shankline::{tables::timber::Timber, units::degrees};
/// # fn main() -> Result<(), shankline::Error> {
/// let post = TimberMember::wood(inches(3.5), Timber::find("Hem-Fir")?, degrees(0.0));
/// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.0 };
/// // A 1 in hole for a 1/2 in bolt
/// let rule = post.hole_rule(Some(inches(1.0)), inches(0.5), method)?;
/// assert_eq!(rule.judged(), Judged::TooGreat);
/// assert_eq!(rule.greatest, Some(inches(0.5625)));
/// assert_eq!(post.hole_rule(None, inches(0.5), method)?.judged(), Judged::Missing);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Requirement {
    /// What it is about.
    pub fact: TimberFact,
    /// What it is; none if that is not known.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub own: Option<Length>,
    /// What it must be at least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub least: Option<Length>,
    /// From where on it costs no strength; none if it never does.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub full: Option<Length>,
    /// What it must be at most.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub greatest: Option<Length>,
    /// Document and clause.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub clause: &'static Method,
    cautions: Cautions,
}

impl Requirement {
    /// Without limits; refuses a length that is no length.
    pub(super) fn new(
        fact: TimberFact,
        own: Option<Length>,
        clause: &'static Method,
    ) -> Result<Self, Error> {
        if let Some(own) = own {
            sane_length(name_of(fact), own)?;
        }
        let caution = Caution::of_method(clause);
        Ok(Self {
            fact,
            own,
            least: None,
            full: None,
            greatest: None,
            clause,
            cautions: Cautions::default().with(caution),
        })
    }

    pub(super) fn at_least(self, least: Length) -> Self {
        Self {
            least: Some(least),
            ..self
        }
    }

    pub(super) fn at_most(self, greatest: Length) -> Self {
        Self {
            greatest: Some(greatest),
            ..self
        }
    }

    pub(super) fn full_from(self, full: Length) -> Self {
        Self {
            full: Some(full),
            ..self
        }
    }

    pub(super) fn warned(self, cautions: Cautions) -> Self {
        Self {
            cautions: self.cautions.and(cautions),
            ..self
        }
    }

    /// Whether it holds. A length within 0.1 nm of a limit is at the limit.
    ///
    /// ```
    /// # use shankline::strength::timber::{Judged, Requirement};
    /// fn unknown(rules: &[Requirement]) -> Vec<String> {
    ///     let missing = rules.iter().filter(|rule| rule.judged() == Judged::Missing);
    ///     missing.map(|rule| format!("{} ({})", rule.fact, rule.clause)).collect()
    /// }
    /// ```
    #[must_use]
    pub fn judged(&self) -> Judged {
        let Some(own) = self.own else {
            return Judged::Missing;
        };
        if self.least.is_some_and(|least| own < least - SAME_LENGTH) {
            Judged::TooSmall
        } else if self.greatest.is_some_and(|most| own > most + SAME_LENGTH) {
            Judged::TooGreat
        } else if self.full.is_some_and(|full| own < full - SAME_LENGTH) {
            Judged::Reduces
        } else {
            Judged::Holds
        }
    }

    /// The share of the strength that is left: the length over that of full strength, at most 1. It is 1
    /// too where the length is not known: look at [`judged`](Self::judged) first.
    ///
    /// ```
    /// # use shankline::strength::timber::Requirement;
    /// fn costs(rule: &Requirement) -> bool {
    ///     rule.share().value < 1.0
    /// }
    /// ```
    #[must_use]
    pub fn share(&self) -> Ratio {
        match (self.own, self.full) {
            (Some(own), Some(full)) if own < full - SAME_LENGTH => own / full,
            _ => crate::units::from_base(1.0),
        }
    }

    /// What the user must be told.
    ///
    /// ```
    /// # use shankline::strength::timber::Requirement;
    /// fn recalled(rule: &Requirement) -> bool {
    ///     rule.cautions().iter().next().is_some()
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }
}

/// For error messages.
const fn name_of(fact: TimberFact) -> &'static str {
    match fact {
        TimberFact::Hole => "hole in the timber",
        TimberFact::PlateHole => "hole of the plate",
        TimberFact::WasherWidth => "side or diameter of the washer",
        TimberFact::WasherThickness => "thickness of the washer",
        _ => "distance of a bolt in timber",
    }
}

impl TimberMember {
    /// The rule for the hole in this member.
    ///
    /// `in_timber` is the hole of a timber, none if it is not known; a plate brings its own. NDS 12.1.3: 1/32 to
    /// 1/16 in over the bolt, in plates too (read in a handbook and a trade magazine; for plates recalled). EN
    /// 1995-1-1, 10.4.3(1): at most 1 mm over in timber, the larger of 2 mm and 0.1 d in plates (recalled).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter outside the method or a hole that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{Judged, TimberMember, TimberMethod};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
    /// let plate = TimberMember::steel(millimetres(8.0), megapascals(360.0), millimetres(18.0));
    /// let rule = plate.hole_rule(None, millimetres(16.0), method)?;
    /// assert_eq!((rule.judged(), rule.greatest), (Judged::Holds, Some(millimetres(18.0))));
    /// # Ok(())
    /// # }
    /// ```
    pub fn hole_rule(
        &self,
        in_timber: Option<Length>,
        diameter: Length,
        method: TimberMethod,
    ) -> Result<Requirement, Error> {
        check_diameter(diameter, method)?;
        let (fact, own, plate) = match self.material {
            MemberMaterial::Wood(_) => (TimberFact::Hole, in_timber, false),
            MemberMaterial::Steel { hole, .. } => (TimberFact::PlateHole, Some(hole), true),
        };
        Ok(match method {
            TimberMethod::Nds { .. } => {
                let clause = if plate {
                    methods::NDS_2018_12_1_3_HOLES_IN_STEEL
                } else {
                    methods::NDS_2018_12_1_3
                };
                Requirement::new(fact, own, clause)?
                    .at_least(diameter + inches(1.0 / 32.0))
                    .at_most(diameter + inches(1.0 / 16.0))
            }
            TimberMethod::En1995 { .. } => {
                let over = if plate {
                    millimetres(2.0).max(0.1 * diameter)
                } else {
                    millimetres(1.0)
                };
                Requirement::new(fact, own, methods::EN_1995_1_1_2004_10_4_3_1)?
                    .at_least(diameter)
                    .at_most(diameter + over)
            }
        })
    }
}
