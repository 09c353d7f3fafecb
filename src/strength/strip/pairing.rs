//! Whether a nut belongs on a bolt: the tables of the standards first, numbers after.

use core::fmt;

use super::nut_proof;
use crate::caution::Cautions;
use crate::error::Error;
use crate::material::{
    BoltStrength, CoatedFit, Finish, Misfit, NutGrade, NutStrength, NutTapping, Severity,
    coated_fit,
};
use crate::source::cite;
use crate::tables::methods;
use crate::tables::nut_grades::{BoltCoating, NutPairing, NutShape, NutStanding};
use crate::thread::Thread;
use crate::units::Ratio;

#[cfg(test)]
mod tests;

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
    /// A354; for ISO 898-2 in an extract of DIN EN 20898-2). Never a nut of stainless steel, nor in place of one:
    /// nothing read says so.
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
            Self::Thin => cite(
                f,
                "a thin nut may strip before the bolt breaks",
                Some(methods::ISO_898_2_THIN_NUTS),
            ),
            Self::OversizeStrength => f.write_str(
                "the standard of the nut gives no strength for threads tapped oversize for thick zinc",
            ),
            Self::NoStrength => {
                f.write_str("no strength of such a nut on such a thread is in the tables")
            }
            Self::NotWeathering => cite(
                f,
                "the standard of the bolt names nuts of weathering steel only",
                Some(methods::ASTM_F3125_TABLE_1_WEATHERING),
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

    /// Whether a nut bears on this thread what the nut of a row bears, and may so stand in for it.
    fn reaches(&self, own: &NutStrength, row: &NutPairing, tapping: NutTapping) -> bool {
        if own.grade.is_stainless() || row.nut.is_stainless() {
            return false;
        }
        let shape = row.shape.unwrap_or(self.shape);
        let listed = row.nut.strength(shape, self.thread, tapping);
        listed.is_ok_and(|listed| own.proof_stress >= listed.proof_stress)
    }
}
