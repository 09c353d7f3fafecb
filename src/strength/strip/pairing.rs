//! Whether a nut belongs on a bolt: the tables of the standards first, numbers after.

use core::fmt;

use super::nut_proof;
use crate::caution::Cautions;
use crate::error::Error;
use crate::material::{
    BoltStrength, CoatedFit, Finish, Misfit, NutGrade, NutStrength, NutTapping, Severity,
    coated_fit,
};
use crate::tables::nut_grades::{BoltCoating, NutPairing, NutShape, NutStanding};
use crate::thread::Thread;
use crate::units::Ratio;

/// How a nut comes to be right for a bolt by a table.
///
/// ```
/// use shankline::strength::strip::PairStanding;
/// assert_eq!(PairStanding::StandsIn.to_string(), "as strong as the nut the standard names");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PairStanding {
    /// The standard of the bolt names it.
    Named,
    /// The standard of the bolt lets it stand in, by name.
    Suitable,
    /// Its proof stress is not below that of a nut so listed, which the standards let stand in (read in ASTM
    /// A354; for ISO 898-2 in an extract of DIN EN 20898-2).
    StandsIn,
}

impl fmt::Display for PairStanding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Named => "named by the standard",
            Self::Suitable => "suitable by the standard",
            Self::StandsIn => "as strong as the nut the standard names",
        })
    }
}

/// Why nothing shows that a nut outlasts the bolt.
///
/// ```
/// use shankline::strength::strip::NotShown;
/// assert!(NotShown::Thin.to_string().contains("thin"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum NotShown {
    /// No standard lists the pair, and the proof load of the nut is below the breaking load of the bolt.
    Weaker {
        /// Proof load of the nut over breaking load of the bolt.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        ratio: Ratio,
    },
    /// A thin nut: ISO 898-2 gives those of classes 04 and 05 a reduced load.
    Thin,
    /// Nothing says how strong the nut is when tapped oversize for thick zinc.
    OversizeStrength,
    /// No strength of such a nut on such a thread is in the tables.
    NoStrength,
    /// Every nut listed for the bolt is of weathering steel, and this one is not.
    NotWeathering,
    /// The pair is right for a bolt without thick zinc and not shown to be right for one with it, and
    /// nobody says what is on it.
    Finish,
}

impl fmt::Display for NotShown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Weaker { ratio } => write!(
                f,
                "no standard read lists the pair, and the nut is proved to {:.0} % of the breaking load of \
                 the bolt",
                100.0 * ratio.value
            ),
            Self::Thin => f.write_str("a thin nut may strip before the bolt breaks [ISO 898-2]"),
            Self::OversizeStrength => f.write_str(
                "the standard of the nut gives no strength for threads tapped oversize for thick zinc",
            ),
            Self::NoStrength => {
                f.write_str("no strength of such a nut on such a thread is in the tables")
            }
            Self::NotWeathering => f.write_str(
                "the standard of the bolt names nuts of weathering steel only [ASTM F3125, Table 1]",
            ),
            Self::Finish => f.write_str(
                "the pair is right without thick zinc only, and the finish is not described",
            ),
        }
    }
}

/// Whether a nut belongs on a bolt.
///
/// ```
/// use shankline::{prelude::*, strength::strip::{PairStanding, Pairing, nut_pairing}};
/// # fn main() -> Result<(), shankline::Error> {
/// // 1170 MPa of proof stress against 1220 MPa, and still the pair of the standard.
/// let thread: Thread = "M12".parse()?;
/// let bolt = PropertyClass::Class12_9.strength(thread.nominal_diameter())?;
/// let nut = NutGrade::Iso898_2Class12;
/// let pairing = nut_pairing(&bolt, None, nut, None, NutShape::Style1, &thread)?;
/// assert!(matches!(pairing, Pairing::Listed { standing: PairStanding::Named, .. }));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Pairing {
    /// A table of the standards lists the pair, so the bolt breaks first, whatever the numbers say.
    Listed {
        /// The row; data files have its source.
        #[cfg_attr(feature = "serde", serde(serialize_with = "source_of"))]
        row: &'static NutPairing,
        /// How the nut stands to it.
        standing: PairStanding,
    },
    /// No table lists it, but the proof load of the nut reaches the breaking load of the bolt.
    Outlasts {
        /// Proof load of the nut over breaking load of the bolt.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        ratio: Ratio,
    },
    /// Not shown to outlast the bolt.
    NotShown {
        /// Why.
        why: NotShown,
    },
    /// The coated threads do not go together.
    NotFit {
        /// Why.
        why: Misfit,
    },
}

impl Pairing {
    /// What it weighs.
    ///
    /// ```
    /// use shankline::material::{Misfit, Severity};
    /// use shankline::strength::strip::{NotShown, Pairing};
    /// assert_eq!(Pairing::NotShown { why: NotShown::Thin }.severity(), Severity::Undecided);
    /// assert_eq!(Pairing::NotFit { why: Misfit::Loose }.severity(), Severity::Fault);
    /// ```
    #[must_use]
    pub const fn severity(&self) -> Severity {
        match self {
            Self::Listed { .. } | Self::Outlasts { .. } => Severity::Fine,
            Self::NotShown { .. } => Severity::Undecided,
            Self::NotFit { .. } => Severity::Fault,
        }
    }
}

impl Pairing {
    /// What the user must be told: that the row of the pair was recalled.
    ///
    /// ```
    /// use shankline::strength::strip::{NotShown, Pairing};
    /// assert_eq!(Pairing::NotShown { why: NotShown::Thin }.cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        match self {
            Self::Listed { row, .. } => row.cautions(),
            _ => Cautions::default(),
        }
    }
}

impl fmt::Display for Pairing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Listed { row, standing } => {
                let NutPairing { bolt, nut, .. } = row;
                let source = row.provenance.source;
                write!(f, "{standing}: {nut} for {bolt} [{}]", source.document)
            }
            Self::Outlasts { ratio } => write!(
                f,
                "no standard read lists the pair; the nut is proved to {:.0} % of the breaking load of the bolt",
                100.0 * ratio.value
            ),
            Self::NotShown { why } => write!(f, "not shown to outlast the bolt: {why}"),
            Self::NotFit { why } => write!(f, "{why}"),
        }
    }
}

// serde's `serialize_with` hands over a reference.
#[cfg(feature = "serde")]
#[allow(clippy::trivially_copy_pass_by_ref)]
fn source_of<S: serde::Serializer>(
    row: &&'static NutPairing,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serde::Serialize::serialize(&row.provenance, serializer)
}

/// Whether a nut belongs on a bolt: first whether the coated threads go together, then the tables of the
/// standards ([`NutPairing`]), then the proof load of the nut against the breaking load of the bolt.
///
/// Where a finish is not given, the pair must be right with and without thick zinc, unless a row lists it for
/// every coating. With thick zinc such a row counts only if the nut has a strength when tapped oversize.
/// Whether the nut bears the force that the joint brings is another check: [`nut_proof`] and its proof load.
///
/// Sources: the rows; ISO 898-2 A.1 (in an extract): with a nut of the mating class it is the bolt that
/// breaks.
///
/// # Errors
///
/// [`Error::Mismatch`] if the strength of the bolt holds for another size than the thread has, or if a nut of
/// ISO 10684 has the finish of one for an undersize bolt; [`Error::OutOfRange`] for loads that are not
/// positive and finite.
///
/// ```
/// use shankline::material::{Finish, Severity};
/// use shankline::{prelude::*, strength::strip::nut_pairing};
/// # fn main() -> Result<(), shankline::Error> {
/// // Both hot-dip galvanized: the nut is overtapped and bears 100 ksi of the 120 of the bolt.
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let bolt = AstmGrade::A449Type1.strength(thread.nominal_diameter())?;
/// let dipped = Some(Finish::HotDipGalvanized);
/// let judge = |nut| nut_pairing(&bolt, dipped, nut, dipped, NutShape::HeavyHex, &thread);
/// assert_eq!(judge(NutGrade::AstmA563B)?.severity(), Severity::Undecided);
/// assert_eq!(judge(NutGrade::AstmA563Dh)?.severity(), Severity::Fine);
/// # Ok(())
/// # }
/// ```
pub fn nut_pairing(
    bolt: &BoltStrength,
    bolt_finish: Option<Finish>,
    nut: NutGrade,
    nut_finish: Option<Finish>,
    shape: NutShape,
    thread: &Thread,
) -> Result<Pairing, Error> {
    bolt.matches(thread)?;
    // A class that is tapped oversize tells as much as a finish.
    let known_nut = nut_finish.or(nut.is_oversize().then_some(Finish::HotDipGalvanized));
    if let (Some(bolt), Some(of_nut)) = (bolt_finish, known_nut) {
        if let CoatedFit::NotFit { why } = coated_fit(bolt, Some(nut), of_nut, thread)? {
            return Ok(Pairing::NotFit { why });
        }
    }
    let pair = Pair {
        bolt,
        nut,
        shape,
        thread,
    };
    // Threads that fit are both with thick zinc or both without, so one finish tells the other.
    if let Some(coating) = coating(bolt_finish, nut, nut_finish) {
        return pair.judge(coating);
    }
    let plain = pair.judge(BoltCoating::Plain)?;
    if let Pairing::Listed { row, .. } = plain {
        if row.coating == BoltCoating::Any {
            return Ok(plain);
        }
    }
    let zinc = pair.judge(BoltCoating::ZincCoated)?;
    Ok(
        if plain.severity() == Severity::Fine && zinc.severity() != Severity::Fine {
            Pairing::NotShown {
                why: NotShown::Finish,
            }
        } else {
            plain
        },
    )
}

fn coating(bolt: Option<Finish>, nut: NutGrade, of_nut: Option<Finish>) -> Option<BoltCoating> {
    let by_class = nut.is_oversize().then_some(BoltCoating::ZincCoated);
    let by_finish = bolt.or(of_nut).map(Finish::bolt_coating);
    by_class.or(by_finish)
}

const fn is_weathering(nut: NutGrade) -> bool {
    matches!(nut, NutGrade::AstmA563C3 | NutGrade::AstmA563Dh3)
}

/// A bolt and a nut whose threads go together.
struct Pair<'a> {
    bolt: &'a BoltStrength,
    nut: NutGrade,
    shape: NutShape,
    thread: &'a Thread,
}

impl Pair<'_> {
    fn judge(&self, coating: BoltCoating) -> Result<Pairing, Error> {
        let tapping = match coating {
            BoltCoating::ZincCoated => NutTapping::Oversize,
            _ => NutTapping::Usual,
        };
        let not_shown = |why| Ok(Pairing::NotShown { why });
        if self.shape == NutShape::Thin {
            return not_shown(NotShown::Thin);
        }
        let (own, no_oversize) = match self.nut.strength(self.shape, self.thread, tapping) {
            Ok(own) => (Some(own), false),
            // Of the nut there is a strength, of the nut tapped oversize none.
            Err(Error::NoValue { .. }) => (None, true),
            Err(Error::NotInTable { .. } | Error::OutOfRange { .. }) => (None, false),
            Err(error) => return Err(error),
        };
        let diameter = self.thread.nominal_diameter();
        let rows = NutPairing::for_bolt(self.bolt.grade, diameter, coating)?;
        let (mut stands_in, mut weathering, mut listed) = (None, true, false);
        for row in rows {
            listed = true;
            weathering &= is_weathering(row.nut);
            let shapes = row.shape.is_none_or(|shape| shape == self.shape);
            // A row for every coating did not have threads tapped oversize in mind.
            let meant = !no_oversize || row.coating == BoltCoating::ZincCoated;
            if row.nut == self.nut && shapes && meant {
                let standing = match row.standing {
                    NutStanding::Named => PairStanding::Named,
                    NutStanding::Suitable => PairStanding::Suitable,
                };
                return Ok(Pairing::Listed { row, standing });
            }
            if stands_in.is_none() && own.is_some_and(|own| self.reaches(&own, row, tapping)) {
                stands_in = Some(row);
            }
        }
        if listed && weathering && !is_weathering(self.nut) {
            return not_shown(NotShown::NotWeathering);
        }
        if let Some(row) = stands_in {
            let standing = PairStanding::StandsIn;
            return Ok(Pairing::Listed { row, standing });
        }
        let Some(own) = own else {
            return not_shown(if no_oversize {
                NotShown::OversizeStrength
            } else {
                NotShown::NoStrength
            });
        };
        let proof = nut_proof(self.thread, self.bolt, &own)?;
        let ratio = proof.ratio;
        if proof.outlasts_bolt() {
            Ok(Pairing::Outlasts { ratio })
        } else {
            not_shown(NotShown::Weaker { ratio })
        }
    }

    /// Whether a nut bears on this thread what the nut of a row bears.
    fn reaches(&self, own: &NutStrength, row: &NutPairing, tapping: NutTapping) -> bool {
        let shape = row.shape.unwrap_or(self.shape);
        let listed = row.nut.strength(shape, self.thread, tapping);
        listed.is_ok_and(|listed| own.proof_stress >= listed.proof_stress)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::{AstmGrade, BoltGrade, PropertyClass, SaeGrade};
    use crate::units::ksi;
    use alloc::string::ToString;

    const DIPPED: Option<Finish> = Some(Finish::HotDipGalvanized);
    const UNDERSIZE: Option<Finish> = Some(Finish::HotDipGalvanizedUndersize);
    const PLATED: Option<Finish> = Some(Finish::ZincPlated { baked: false });

    fn pair(
        (thread, bolt, bolt_finish): (&str, impl Into<BoltGrade>, Option<Finish>),
        (nut, shape, nut_finish): (NutGrade, NutShape, Option<Finish>),
    ) -> Pairing {
        let thread: Thread = thread.parse().unwrap();
        let bolt = bolt.into().strength(thread.nominal_diameter()).unwrap();
        nut_pairing(&bolt, bolt_finish, nut, nut_finish, shape, &thread).unwrap()
    }

    fn standing(pairing: Pairing) -> Option<PairStanding> {
        match pairing {
            Pairing::Listed { standing, .. } => Some(standing),
            _ => None,
        }
    }

    /// ISO 898-2 Table 2; SAE J995: the pairs are right though the nut is proved to less than the bolt breaks at.
    #[test]
    fn pairs_of_the_standards_are_right_whatever_the_numbers_say() {
        for finish in [None, PLATED] {
            let sae = (NutGrade::SaeJ995Grade5, NutShape::Hex, finish);
            let found = pair(("1/2-20 UNF", SaeGrade::Grade5, finish), sae);
            assert_eq!(standing(found), Some(PairStanding::Named));
            for thread in ["M6", "M12", "M20"] {
                let iso = (NutGrade::Iso898_2Class12, NutShape::Style2, finish);
                let found = pair((thread, PropertyClass::Class12_9, finish), iso);
                assert_eq!(standing(found), Some(PairStanding::Named));
            }
        }
    }

    #[test]
    fn a_stronger_nut_stands_in() {
        let nut = (NutGrade::Iso898_2Class10, NutShape::Style1, None);
        let found = pair(("M12", PropertyClass::Class8_8, None), nut);
        assert_eq!(standing(found), Some(PairStanding::StandsIn));
        // Of the same proof stress as J995 grade 5.
        let nut = (NutGrade::AstmA563B, NutShape::Hex, PLATED);
        let found = pair(("1/2-20 UNF", SaeGrade::Grade5, PLATED), nut);
        assert_eq!(standing(found), Some(PairStanding::StandsIn));
    }

    #[test]
    fn a_weaker_nut_is_not_shown_to_outlast_the_bolt() {
        let nut = (NutGrade::Iso898_2Class8, NutShape::Style1, PLATED);
        let found = pair(("M12", PropertyClass::Class10_9, PLATED), nut);
        let why = match found {
            Pairing::NotShown { why } => why,
            other => panic!("{other:?}"),
        };
        // 880 of 1040 MPa.
        assert!(matches!(why, NotShown::Weaker { ratio } if (ratio.value - 0.846).abs() < 5e-4));
        assert_eq!(found.severity(), Severity::Undecided);
        let thin = (NutGrade::Iso898_2Class05, NutShape::Thin, PLATED);
        let found = pair(("M12", PropertyClass::Class4_6, PLATED), thin);
        assert_eq!(
            found,
            Pairing::NotShown {
                why: NotShown::Thin
            }
        );
    }

    #[test]
    fn a_bolt_of_stated_strength_goes_by_numbers() {
        let thread: Thread = "1/2-13 UNC".parse().unwrap();
        let bolt = |strength| {
            BoltStrength::stated(thread.nominal_diameter(), None, None, ksi(strength)).unwrap()
        };
        let nut = |bolt: &BoltStrength| {
            let grade = NutGrade::SaeJ995Grade5;
            nut_pairing(bolt, PLATED, grade, PLATED, NutShape::Hex, &thread).unwrap()
        };
        assert!(matches!(nut(&bolt(119.0)), Pairing::Outlasts { .. }));
        assert!(matches!(nut(&bolt(121.0)), Pairing::NotShown { .. }));
    }

    /// ASTM A449, 1.4; ASTM A563 Table 3: overtapped, B heavy hex has 100 ksi, and 120 are wanted.
    #[test]
    fn overtapped_nuts_are_weaker() {
        let bolt = ("3/4-10 UNC", AstmGrade::A449Type1, DIPPED);
        let heavy = |grade| pair(bolt, (grade, NutShape::HeavyHex, DIPPED));
        let weaker = heavy(NutGrade::AstmA563B);
        let is_5_of_6 = |ratio: Ratio| (ratio.value - 100.0 / 120.0).abs() < 1e-9;
        assert!(matches!(
            weaker,
            Pairing::NotShown { why: NotShown::Weaker { ratio } } if is_5_of_6(ratio)
        ));
        assert_eq!(
            standing(heavy(NutGrade::AstmA563Dh)),
            Some(PairStanding::Named)
        );
        // J995 gives no strength for oversize threads.
        let sae = pair(bolt, (NutGrade::SaeJ995Grade5, NutShape::Hex, DIPPED));
        let why = NotShown::OversizeStrength;
        assert_eq!(sae, Pairing::NotShown { why });
    }

    /// Plain it is the pair of A449, 1.4; with thick zinc it is none, so the finish must be known.
    #[test]
    fn where_the_finish_decides_it_is_asked_for() {
        let judge = |finish| {
            let nut = (NutGrade::AstmA563B, NutShape::Hex, finish);
            pair(("3/4-10 UNC", AstmGrade::A449Type1, finish), nut)
        };
        assert_eq!(standing(judge(PLATED)), Some(PairStanding::Named));
        assert_eq!(
            judge(None),
            Pairing::NotShown {
                why: NotShown::Finish
            }
        );
        // A heavy hex nut of grade C has the same strength overtapped.
        let nut = (NutGrade::AstmA563C, NutShape::HeavyHex, None);
        let found = pair(("3/4-10 UNC", AstmGrade::F3125A325Type1, None), nut);
        assert_eq!(found.severity(), Severity::Fine);
    }

    #[test]
    fn dipped_iso_bolts_take_nuts_with_z() {
        for thread in ["M8", "M10", "M12", "M20"] {
            let bolt = (thread, PropertyClass::Class8_8, DIPPED);
            let z = pair(bolt, (NutGrade::Iso10684Class8z, NutShape::Style1, DIPPED));
            assert_eq!(standing(z), Some(PairStanding::Named), "{thread}");
            // The same nut, its class given without the letter.
            let dipped = pair(bolt, (NutGrade::Iso898_2Class8, NutShape::Style1, DIPPED));
            assert_eq!(dipped.severity(), Severity::Fine, "{thread}");
            let plated = pair(bolt, (NutGrade::Iso898_2Class8, NutShape::Style1, PLATED));
            let why = Misfit::DoesNotStart;
            assert_eq!(plated, Pairing::NotFit { why });
            let undersize = (thread, PropertyClass::Class8_8, UNDERSIZE);
            let usual = pair(
                undersize,
                (NutGrade::Iso898_2Class8, NutShape::Style1, PLATED),
            );
            assert_eq!(standing(usual), Some(PairStanding::Named));
            let z = pair(
                undersize,
                (NutGrade::Iso10684Class8z, NutShape::Style1, DIPPED),
            );
            let why = Misfit::TooLittleOverlap;
            assert_eq!(z, Pairing::NotFit { why });
        }
    }

    #[test]
    fn a_class_with_z_tells_its_thread_without_a_finish() {
        let z = (NutGrade::Iso10684Class8z, NutShape::Style1, None);
        let why = Misfit::Loose;
        let found = pair(("M12", PropertyClass::Class8_8, PLATED), z);
        assert_eq!(found, Pairing::NotFit { why });
        let found = pair(("M12", PropertyClass::Class8_8, None), z);
        assert_eq!(found.severity(), Severity::Fine);
    }

    /// ASTM F3125 Table 1: type 3 takes C3 and DH3.
    #[test]
    fn weathering_bolts_want_weathering_nuts() {
        let judge = |nut| {
            let bolt = ("7/8-9 UNC", AstmGrade::F3125A325Type3, None);
            pair(bolt, (nut, NutShape::HeavyHex, None))
        };
        let why = NotShown::NotWeathering;
        assert_eq!(judge(NutGrade::AstmA563Dh), Pairing::NotShown { why });
        assert_eq!(
            standing(judge(NutGrade::AstmA563Dh3)),
            Some(PairStanding::Named)
        );
        assert_eq!(
            standing(judge(NutGrade::AstmA563C3)),
            Some(PairStanding::Suitable)
        );
        let a325 = ("7/8-9 UNC", AstmGrade::F3125A325Type1, None);
        let dh3 = pair(a325, (NutGrade::AstmA563Dh3, NutShape::HeavyHex, None));
        assert_eq!(dh3.severity(), Severity::Fine);
    }

    /// ASTM A325-14, 3.2.2 and 3.2.3: A194 2H stands in, zinc-coated too, if treated as A563 asks.
    #[test]
    fn a_row_for_thick_zinc_needs_no_number() {
        let bolt = ("7/8-9 UNC", AstmGrade::A325To2014, DIPPED);
        let found = pair(bolt, (NutGrade::AstmA194_2h, NutShape::HeavyHex, DIPPED));
        assert_eq!(standing(found), Some(PairStanding::Suitable));
        assert!(
            found
                .to_string()
                .starts_with("suitable by the standard: ASTM A194 2H for ASTM A325")
        );
    }

    /// No panic and no silence on any pair of the tables.
    #[test]
    fn every_pair_gets_an_answer() {
        let finishes = [
            None,
            DIPPED,
            UNDERSIZE,
            PLATED,
            Some(Finish::MechanicalZinc),
        ];
        let shapes = [
            NutShape::Hex,
            NutShape::HeavyHex,
            NutShape::Style1,
            NutShape::Thin,
        ];
        let mut listed = 0;
        for row in NutPairing::all() {
            for size in ["M8", "M12", "M20", "1/2-13 UNC", "1/2-20 UNF", "1-8 UNC"] {
                let thread: Thread = size.parse().unwrap();
                let Ok(bolt) = row.bolt.strength(thread.nominal_diameter()) else {
                    continue;
                };
                for shape in shapes {
                    for of_bolt in finishes {
                        for of_nut in finishes {
                            match nut_pairing(&bolt, of_bolt, row.nut, of_nut, shape, &thread) {
                                Ok(found) => {
                                    assert!(!found.to_string().is_empty());
                                    listed += usize::from(standing(found).is_some());
                                }
                                Err(Error::Mismatch(_)) => {
                                    assert!(row.nut.is_oversize() && of_nut == UNDERSIZE);
                                }
                                Err(error) => panic!("{error}"),
                            }
                        }
                    }
                }
            }
        }
        assert!(listed > 1000, "{listed}");
    }
}
