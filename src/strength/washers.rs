//! Washers that a code requires under a head or a nut.
//!
//! The rules are rows of [`washer_rules`](crate::tables::washer_rules); here stands when each of them holds.

use alloc::vec::Vec;

use crate::error::{Error, positive};
use crate::material::{AstmGrade, BoltGrade, PropertyClass};
use crate::tables::nanometres;
use crate::tables::washer_rules::{WasherCase, WasherCode, WasherRule};
use crate::units::{Length, Stress, inches, ksi};

/// The hole of an outer ply, right under head or nut.
///
/// ```
/// use shankline::strength::washers::OuterHole;
/// assert_eq!(OuterHole::default(), OuterHole::Standard);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum OuterHole {
    /// Standard hole.
    #[default]
    Standard,
    /// Oversize hole.
    Oversize,
    /// Short slot, whichever way it lies.
    ShortSlot,
    /// Long slot, whichever way it lies.
    LongSlot,
}

/// How a bolt is tightened, as far as washers depend on it.
///
/// ```
/// use shankline::strength::washers::WasherTightening;
/// assert_eq!(WasherTightening::default(), WasherTightening::Snug);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum WasherTightening {
    /// Snug, or not preloaded.
    #[default]
    Snug,
    /// Preloaded by turning the nut, or by a method that is none of the others.
    TurnOfNut,
    /// Preloaded with a calibrated wrench, by torque.
    CalibratedWrench,
    /// Preloaded by direct tension indicators.
    DirectTensionIndicator,
}

impl WasherTightening {
    const fn is_preloaded(self) -> bool {
        !matches!(self, Self::Snug)
    }
}

/// What decides about washers. What is not known is `None`, and rules that depend on it are reported as open.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::washers::WasherFacts;
/// let facts = WasherFacts::of(PropertyClass::Class8_8.into(), millimetres(16.0));
/// assert!(facts.steep_face.is_none());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WasherFacts {
    /// Grade of the bolt.
    pub grade: BoltGrade,
    /// Nominal diameter.
    pub diameter: Length,
    /// Tightening; none where it is not known.
    pub tightening: Option<WasherTightening>,
    /// The worst hole of an outer ply.
    pub outer_hole: Option<OuterHole>,
    /// The lower yield strength of the outer plies, where they are of steel.
    pub outer_yield: Option<Stress>,
    /// Whether an outer face slopes more than 1:20.
    pub steep_face: Option<bool>,
    /// Whether it is a single lap with one row of bolts.
    pub single_lap_one_row: Option<bool>,
    /// Whether timber lies under head or nut.
    pub on_timber: bool,
}

impl WasherFacts {
    /// A bolt on steel of which nothing else is known.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::washers::{OuterHole, WasherFacts};
    /// let facts = WasherFacts {
    ///     outer_hole: Some(OuterHole::Standard),
    ///     ..WasherFacts::of(SaeGrade::Grade5.into(), inches(0.75))
    /// };
    /// assert!(!facts.on_timber);
    /// ```
    #[must_use]
    pub const fn of(grade: BoltGrade, diameter: Length) -> Self {
        Self {
            grade,
            diameter,
            tightening: None,
            outer_hole: None,
            outer_yield: None,
            steep_face: None,
            single_lap_one_row: None,
            on_timber: false,
        }
    }

    fn is_preloaded(&self) -> Option<bool> {
        self.tightening.map(WasherTightening::is_preloaded)
    }

    fn hole_is(&self, one: impl Fn(OuterHole) -> bool) -> Option<bool> {
        self.outer_hole.map(one)
    }

    /// Whether a case is given; none where what decides it is not known.
    fn meets(&self, case: WasherCase) -> Option<bool> {
        let tightened = |by: WasherTightening| self.tightening.map(|tightening| tightening == by);
        match case {
            WasherCase::SlopedFace => self.steep_face,
            WasherCase::SnugSlot => both(
                self.is_preloaded().map(|preloaded| !preloaded),
                self.hole_is(is_slot),
            ),
            WasherCase::A490OnSoftSteel => both(
                Some(self.grade.is_a490()),
                both(
                    self.is_preloaded(),
                    self.outer_yield.map(|yielding| yielding < ksi(40.0)),
                ),
            ),
            WasherCase::CalibratedWrench => tightened(WasherTightening::CalibratedWrench),
            WasherCase::TwistOff => Some(is_twist_off(self.grade)),
            WasherCase::DirectTensionIndicator => {
                tightened(WasherTightening::DirectTensionIndicator)
            }
            WasherCase::LargeA490OverHole => both(
                Some(self.grade.is_a490() && nanometres(self.diameter) > nanometres(inches(1.0))),
                self.hole_is(|hole| hole != OuterHole::Standard),
            ),
            WasherCase::OversizeHole => self.hole_is(|hole| hole == OuterHole::Oversize),
            WasherCase::ShortSlot => self.hole_is(|hole| hole == OuterHole::ShortSlot),
            WasherCase::LongSlot => self.hole_is(|hole| hole == OuterHole::LongSlot),
            WasherCase::SingleLapOneRow => self.single_lap_one_row,
            WasherCase::Preloaded8_8 => both(
                Some(self.grade == PropertyClass::Class8_8.into()),
                self.is_preloaded(),
            ),
            WasherCase::Preloaded10_9 => both(
                Some(self.grade == PropertyClass::Class10_9.into()),
                self.is_preloaded(),
            ),
            WasherCase::Timber => Some(self.on_timber),
        }
    }
}

/// Both: no as soon as one is no, unknown while neither is.
fn both(one: Option<bool>, other: Option<bool>) -> Option<bool> {
    match (one, other) {
        (Some(false), _) | (_, Some(false)) => Some(false),
        (Some(true), Some(true)) => Some(true),
        _ => None,
    }
}

const fn is_slot(hole: OuterHole) -> bool {
    matches!(hole, OuterHole::ShortSlot | OuterHole::LongSlot)
}

/// Grades F1852 and F2280.
const fn is_twist_off(grade: BoltGrade) -> bool {
    use AstmGrade as A;
    matches!(
        grade,
        BoltGrade::Astm(
            A::F3125F1852Type1 | A::F3125F1852Type3 | A::F3125F2280Type1 | A::F3125F2280Type3
        )
    )
}

/// A rule for a washer that holds, or that may hold.
///
/// ```
/// use shankline::strength::washers::RequiredWasher;
/// fn print(required: &RequiredWasher) {
///     let doubt = if required.certain { "" } else { " (perhaps)" };
///     println!("{} {}{doubt}", required.rule.washer, required.rule.side);
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct RequiredWasher {
    /// The rule.
    pub rule: &'static WasherRule,
    /// Whether it holds; if not, what decides it is not known, and it may.
    pub certain: bool,
}

impl RequiredWasher {
    /// Least thickness of the washer for a bolt diameter, if the rule sets one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::washers::{WasherFacts, required_washers};
    /// use shankline::tables::washer_rules::WasherCode;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let beam = WasherFacts {
    ///     on_timber: true,
    ///     ..WasherFacts::of(PropertyClass::Class4_6.into(), millimetres(20.0))
    /// };
    /// let washer = required_washers(WasherCode::En1995_1_1, &beam)?[0];
    /// assert!((washer.thickness_min(beam.diameter).unwrap() - millimetres(6.0)).abs() < millimetres(1e-9));
    /// assert!((washer.width_min(beam.diameter).unwrap() - millimetres(60.0)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn thickness_min(&self, diameter: Length) -> Option<Length> {
        let by_diameter = self.rule.thickness_min_diameters;
        self.rule
            .thickness_min
            .or_else(|| by_diameter.map(|count| count * diameter))
    }

    /// Least side or diameter of the washer for a bolt diameter, if the rule sets one.
    ///
    /// ```
    /// use shankline::strength::washers::RequiredWasher;
    /// use shankline::units::inches;
    /// fn is_small(required: &RequiredWasher) -> bool {
    ///     required.width_min(inches(1.0)).is_some_and(|width| width < inches(3.0))
    /// }
    /// ```
    #[must_use]
    pub fn width_min(&self, diameter: Length) -> Option<Length> {
        self.rule.width_min_diameters.map(|count| count * diameter)
    }
}

/// The washers a code requires for a bolt: rules that hold, and rules that hang on what is not known.
///
/// An empty list says that none of the rules that were read calls for a washer, by that code: not that none is needed
/// for the pressure.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a diameter or yield strength that is not positive and finite.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::washers::{OuterHole, WasherFacts, WasherTightening, required_washers};
/// use shankline::tables::washer_rules::{WasherCode, WasherNeed};
/// # fn main() -> Result<(), shankline::Error> {
/// // A mezzanine beam of A36: 1-1/8 in A490, long slots in the cleat.
/// let cleat = WasherFacts {
///     tightening: Some(WasherTightening::TurnOfNut),
///     outer_hole: Some(OuterHole::LongSlot),
///     outer_yield: Some(ksi(36.0)),
///     steep_face: Some(false),
///     ..WasherFacts::of(AstmGrade::F3125A490Type1.into(), inches(1.125))
/// };
/// let by_aisc = required_washers(WasherCode::Aisc360, &cleat)?;
/// assert_eq!(by_aisc.len(), 2); // hardened, 5/16 in; and the plate over the slot
/// assert!(by_aisc.iter().any(|required| required.rule.washer == WasherNeed::Plate));
/// assert_eq!(required_washers(WasherCode::Rcsc, &cleat)?.len(), 1); // both sides: soft steel
/// # Ok(())
/// # }
/// ```
pub fn required_washers(
    code: WasherCode,
    facts: &WasherFacts,
) -> Result<Vec<RequiredWasher>, Error> {
    positive("bolt diameter", facts.diameter)?;
    if let Some(yielding) = facts.outer_yield {
        positive("yield strength of the outer plies", yielding)?;
    }
    let rules = WasherRule::of(code).filter_map(|rule| match facts.meets(rule.case) {
        Some(false) => None,
        known => Some(RequiredWasher {
            rule,
            certain: known.is_some(),
        }),
    });
    Ok(rules.collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::millimetres;

    fn cases(code: WasherCode, facts: &WasherFacts) -> Vec<(WasherCase, bool)> {
        let required = required_washers(code, facts).unwrap();
        required
            .iter()
            .map(|washer| (washer.rule.case, washer.certain))
            .collect()
    }

    /// RCSC section 6 and AISC 360-05 J3.1, J3.2, as read.
    #[test]
    fn structural_bolts() {
        let a325 = BoltGrade::Astm(AstmGrade::F3125A325Type1);
        let a490 = BoltGrade::Astm(AstmGrade::F3125A490Type1);
        let known = WasherFacts {
            tightening: Some(WasherTightening::Snug),
            outer_hole: Some(OuterHole::Standard),
            outer_yield: Some(ksi(36.0)),
            steep_face: Some(false),
            single_lap_one_row: Some(false),
            ..WasherFacts::of(a325, inches(0.75))
        };
        for code in [WasherCode::Rcsc, WasherCode::Aisc360] {
            assert_eq!(cases(code, &known), [], "{code}: snug A325 needs none");
        }
        let slotted = WasherFacts {
            outer_hole: Some(OuterHole::ShortSlot),
            ..known
        };
        assert_eq!(
            cases(WasherCode::Rcsc, &slotted),
            [(WasherCase::SnugSlot, true)]
        );
        assert_eq!(
            cases(WasherCode::Aisc360, &slotted),
            [(WasherCase::ShortSlot, true)]
        );
        let tight = WasherFacts {
            grade: a490,
            tightening: Some(WasherTightening::CalibratedWrench),
            ..known
        };
        assert_eq!(
            cases(WasherCode::Rcsc, &tight),
            [
                (WasherCase::A490OnSoftSteel, true),
                (WasherCase::CalibratedWrench, true)
            ]
        );
        // 40 ksi itself is not under 40 ksi; A325 does not mind soft steel.
        let on_50 = WasherFacts {
            outer_yield: Some(ksi(40.0)),
            ..tight
        };
        assert_eq!(
            cases(WasherCode::Rcsc, &on_50),
            [(WasherCase::CalibratedWrench, true)]
        );
        // 1 in is not over 1 in.
        let holes = |size| WasherFacts {
            diameter: inches(size),
            outer_hole: Some(OuterHole::Oversize),
            ..tight
        };
        assert_eq!(
            cases(WasherCode::Aisc360, &holes(1.0)),
            [(WasherCase::OversizeHole, true)]
        );
        assert_eq!(
            cases(WasherCode::Aisc360, &holes(1.125)),
            [
                (WasherCase::LargeA490OverHole, true),
                (WasherCase::OversizeHole, true)
            ]
        );
        let twist = WasherFacts {
            grade: BoltGrade::Astm(AstmGrade::F3125F1852Type1),
            tightening: Some(WasherTightening::TurnOfNut),
            ..known
        };
        assert_eq!(
            cases(WasherCode::Rcsc, &twist),
            [(WasherCase::TwistOff, true)]
        );
    }

    /// What is not known is not taken for no.
    #[test]
    fn unknown_facts_leave_rules_open() {
        let bare = WasherFacts::of(PropertyClass::Class10_9.into(), millimetres(20.0));
        assert_eq!(
            cases(WasherCode::En1993_1_8, &bare),
            [(WasherCase::SingleLapOneRow, false)]
        );
        assert_eq!(
            cases(WasherCode::En1090_2, &bare),
            [(WasherCase::Preloaded10_9, false)]
        );
        let open = cases(WasherCode::Rcsc, &bare);
        assert!(open.iter().all(|(_, certain)| !certain), "{open:?}");
        assert!(open.contains(&(WasherCase::SlopedFace, false)));
        // It is no A490, whatever the ply is.
        assert!(!open.contains(&(WasherCase::A490OnSoftSteel, false)));
    }

    #[test]
    fn timber_always_wants_one() {
        let timber = WasherFacts {
            on_timber: true,
            ..WasherFacts::of(AstmGrade::A307A.into(), inches(0.5))
        };
        for code in [WasherCode::Nds, WasherCode::En1995_1_1] {
            assert_eq!(cases(code, &timber), [(WasherCase::Timber, true)]);
        }
        let steel = WasherFacts {
            on_timber: false,
            ..timber
        };
        assert_eq!(cases(WasherCode::Nds, &steel), []);
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            let of = WasherFacts {
                diameter: inches(bad),
                ..timber
            };
            assert!(required_washers(WasherCode::Nds, &of).is_err());
        }
    }
}
