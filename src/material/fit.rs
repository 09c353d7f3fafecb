//! Whether the threads of a coated bolt and of a coated nut go together.

use crate::source::cite;
use crate::tables::methods;
use core::fmt;

use super::{Finish, NutGrade, NutTapping, Severity};
use crate::error::Error;
use crate::thread::Thread;
use crate::units::{inches, millimetres};

/// Which part makes room for the coats.
///
/// ```
/// use shankline::material::ThreadSystem;
/// assert_eq!(ThreadSystem::NutOversize.to_string(), "nut tapped oversize");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum ThreadSystem {
    /// The usual allowance holds all: bare and thinly coated parts.
    Usual,
    /// The nut.
    NutOversize,
    /// The bolt.
    BoltUndersize,
}

impl fmt::Display for ThreadSystem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Usual => "usual threads",
            Self::NutOversize => "nut tapped oversize",
            Self::BoltUndersize => "bolt cut undersize",
        })
    }
}

/// Why two coated threads do not belong together. `Display` writes it with its source.
///
/// ```
/// use shankline::material::Misfit;
/// assert!(Misfit::DoesNotStart.to_string().contains("does not start"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Misfit {
    /// A bolt with thick zinc and a nut tapped as usual.
    DoesNotStart,
    /// A bolt without thick zinc and a nut tapped oversize.
    Loose,
    /// A bolt cut undersize and a nut tapped oversize.
    TooLittleOverlap,
}

impl fmt::Display for Misfit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (words, source) = match self {
            Self::DoesNotStart => (
                "the nut does not start: there is thick zinc on the bolt, and the nut is not tapped \
                 oversize",
                Some(methods::OVERSIZE_TAPS_A563_ISO_10684),
            ),
            Self::Loose => (
                "the nut is loose: it is tapped oversize for thick zinc, and the bolt has none",
                Some(methods::LOOSE_OVERSIZE_NUTS),
            ),
            Self::TooLittleOverlap => (
                "the threads overlap too little: the bolt is cut undersize and the nut tapped oversize",
                Some(methods::ISO_10684_6_2_OVERLAP),
            ),
        };
        cite(f, words, source)
    }
}

/// Something to know of two coated threads that go together. `Display` writes it with its source.
///
/// ```
/// use shankline::material::FitNote;
/// assert!(FitNote::MixedProcesses.to_string().contains("common practice"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum FitNote {
    /// ISO nuts tapped oversize carry a mark that tells them from the usual ones.
    MarkedOversize,
    /// ISO bolts cut undersize carry a mark, and the nut must have none.
    MarkedUndersize,
    /// Undersize bolts M8 and M10 bear less than their class says; the loads were not read.
    WeakUndersize,
    /// One part is dipped, the other mechanically coated.
    MixedProcesses,
    /// Above 1-1/2 in it is often the bolt that is cut undersize.
    LargeInch,
    /// ISO 10684 is for coarse threads M8 to M64.
    OutsideIso10684,
}

impl FitNote {
    /// What it weighs.
    ///
    /// ```
    /// use shankline::material::{FitNote, Severity};
    /// assert_eq!(FitNote::WeakUndersize.severity(), Severity::Undecided);
    /// ```
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::WeakUndersize | Self::OutsideIso10684 => Severity::Undecided,
            _ => Severity::Caution,
        }
    }
}

impl fmt::Display for FitNote {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (words, source) = match self {
            Self::MarkedOversize => (
                "the nut is marked Z (6AZ) or X (6AX) after its class; in sealed packs the label may \
                 carry the mark alone",
                Some(methods::ISO_10684_MARKS_OVERSIZE),
            ),
            Self::MarkedUndersize => (
                "the bolt is marked U after its class, and the nut has no Z or X",
                Some(methods::ISO_10684_MARKS_UNDERSIZE),
            ),
            Self::WeakUndersize => (
                "undersize bolts M8 and M10 bear less than their class says, and nobody has read how \
                 much",
                Some(methods::ISO_10684_ANNEX_A),
            ),
            Self::MixedProcesses => (
                "one part is dipped, the other mechanically coated: take both of one process",
                Some(methods::COMMON_PRACTICE),
            ),
            Self::LargeInch => (
                "above 1-1/2 in it is often the bolt that is cut undersize: ask which",
                Some(methods::LARGE_INCH_UNDERSIZE),
            ),
            Self::OutsideIso10684 => (
                "ISO 10684 is for coarse threads M8 to M64: no allowance for zinc is known for this one",
                None,
            ),
        };
        cite(f, words, source)
    }
}

/// Whether the thread of a coated bolt and that of a coated nut go together.
///
/// ```
/// use shankline::material::{CoatedFit, Finish, Misfit, NutGrade, coated_fit};
/// # fn main() -> Result<(), shankline::Error> {
/// let dipped = Finish::HotDipGalvanized;
/// let plated = Finish::ZincPlated { baked: false };
/// let nut = NutGrade::Iso898_2Class8;
/// let fit = coated_fit(dipped, Some(nut), plated, &"M12".parse()?)?;
/// assert_eq!(fit, CoatedFit::NotFit { why: Misfit::DoesNotStart });
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum CoatedFit {
    /// They go together.
    Fits {
        /// Which part makes room for the coats.
        system: ThreadSystem,
        /// The gravest thing to know of it.
        note: Option<FitNote>,
    },
    /// They do not: a fault.
    NotFit {
        /// Why.
        why: Misfit,
    },
}

impl CoatedFit {
    /// What it weighs.
    ///
    /// ```
    /// use shankline::material::{CoatedFit, Misfit, Severity};
    /// assert_eq!(CoatedFit::NotFit { why: Misfit::Loose }.severity(), Severity::Fault);
    /// ```
    #[must_use]
    pub fn severity(self) -> Severity {
        match self {
            Self::Fits { note, .. } => note.map_or(Severity::Fine, FitNote::severity),
            Self::NotFit { .. } => Severity::Fault,
        }
    }
}

/// Whether the thread of a coated bolt and that of a coated nut go together, by the systems of ASTM A563 and
/// ISO 10684. A nut of a class of ISO 10684 is tapped oversize whatever its finish.
///
/// Thick zinc needs room in the thread. Two systems give it, and they must not be crossed:
///
/// | system | bolt | nut | source |
/// |---|---|---|---|
/// | nut oversize | 2A or 6g, the zinc over it | dipped, then tapped oversize; ISO marks 6AZ with Z and 6AX with X | ASTM A563; ISO 10684 6.2.2 (reproduced) |
/// | bolt undersize | 6az, marked U | tapped as usual, 6H or 6G | ISO 10684 6.2.3 (recalled) |
///
/// | bolt | nut tapped as usual | nut tapped oversize |
/// |---|---|---|
/// | bare or thinly coated | fits | loose |
/// | thick zinc over the usual thread | does not start | fits |
/// | thick zinc over a thread cut undersize | fits | too little overlap (ISO 10684 6.2, recalled) |
///
/// # Errors
///
/// [`Error::Mismatch`] for a nut of a class of ISO 10684, which is tapped oversize, with the finish of one for
/// an undersize bolt.
///
/// ```
/// use shankline::material::{Finish, Severity, coated_fit};
/// # fn main() -> Result<(), shankline::Error> {
/// let dipped = Finish::HotDipGalvanized;
/// let fit = coated_fit(dipped, None, dipped, &"3/4-10 UNC".parse()?)?;
/// assert_eq!(fit.severity(), Severity::Fine);
/// # Ok(())
/// # }
/// ```
pub fn coated_fit(
    bolt: Finish,
    nut: Option<NutGrade>,
    nut_finish: Finish,
    thread: &Thread,
) -> Result<CoatedFit, Error> {
    let (bolt, nut_finish) = (bolt.of_coat(), nut_finish.of_coat());
    let oversize_class = nut.filter(|grade| grade.is_oversize());
    if let (Some(grade), Finish::HotDipGalvanizedUndersize) = (oversize_class, nut_finish) {
        return Err(Error::Mismatch(alloc::format!(
            "nuts of {grade} are tapped oversize: they are not for undersize bolts"
        )));
    }
    let tapping = match oversize_class {
        Some(_) => NutTapping::Oversize,
        None => nut_finish.nut_tapping(),
    };
    let system = match (bolt, tapping) {
        (Finish::HotDipGalvanizedUndersize, NutTapping::Usual) => ThreadSystem::BoltUndersize,
        (Finish::HotDipGalvanized | Finish::MechanicalZinc, NutTapping::Oversize) => {
            ThreadSystem::NutOversize
        }
        (Finish::HotDipGalvanizedUndersize, NutTapping::Oversize) => {
            return Ok(not_fit(Misfit::TooLittleOverlap));
        }
        (Finish::HotDipGalvanized | Finish::MechanicalZinc, NutTapping::Usual) => {
            return Ok(not_fit(Misfit::DoesNotStart));
        }
        (_, NutTapping::Oversize) => return Ok(not_fit(Misfit::Loose)),
        (_, NutTapping::Usual) => ThreadSystem::Usual,
    };
    let mixed = bolt != nut_finish
        && bolt.nut_tapping() == NutTapping::Oversize
        && nut_finish.nut_tapping() == NutTapping::Oversize;
    let note = match system {
        ThreadSystem::Usual => None,
        _ if !thread.is_unified() && !in_iso_10684(thread) => Some(FitNote::OutsideIso10684),
        ThreadSystem::BoltUndersize if !thread.is_unified() => {
            Some(if thread.nominal_diameter() < millimetres(12.0) {
                FitNote::WeakUndersize
            } else {
                FitNote::MarkedUndersize
            })
        }
        ThreadSystem::BoltUndersize => None,
        ThreadSystem::NutOversize if mixed => Some(FitNote::MixedProcesses),
        ThreadSystem::NutOversize if !thread.is_unified() => Some(FitNote::MarkedOversize),
        ThreadSystem::NutOversize => {
            (thread.nominal_diameter() > inches(1.5)).then_some(FitNote::LargeInch)
        }
    };
    Ok(CoatedFit::Fits { system, note })
}

const fn not_fit(why: Misfit) -> CoatedFit {
    CoatedFit::NotFit { why }
}

/// Coarse threads M8 to M64 (ISO 10684:2004, clause 1).
pub(super) fn in_iso_10684(thread: &Thread) -> bool {
    let diameter = thread.nominal_diameter();
    thread.metric_row().is_some()
        && thread.is_coarse()
        && diameter >= millimetres(8.0)
        && diameter <= millimetres(64.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::galvanic::Metal;

    const DIPPED: Finish = Finish::HotDipGalvanized;
    const UNDERSIZE: Finish = Finish::HotDipGalvanizedUndersize;
    const PLATED: Finish = Finish::ZincPlated { baked: false };
    const BARE: Finish = Finish::Bare(Metal::Steel);

    fn fit(bolt: Finish, nut: Option<NutGrade>, finish: Finish, thread: &str) -> CoatedFit {
        coated_fit(bolt, nut, finish, &thread.parse().unwrap()).unwrap()
    }

    #[test]
    fn the_two_systems_must_not_be_crossed() {
        for thread in ["M12", "3/4-10 UNC"] {
            let why = |bolt, nut| match fit(bolt, None, nut, thread) {
                CoatedFit::NotFit { why } => Some(why),
                CoatedFit::Fits { .. } => None,
            };
            for thin in [BARE, PLATED, Finish::ZincFlake] {
                assert_eq!(why(DIPPED, thin), Some(Misfit::DoesNotStart));
                assert_eq!(
                    why(Finish::MechanicalZinc, thin),
                    Some(Misfit::DoesNotStart)
                );
                assert_eq!(why(thin, DIPPED), Some(Misfit::Loose));
                assert_eq!(why(thin, UNDERSIZE), None);
                assert_eq!(why(UNDERSIZE, thin), None);
                assert_eq!(why(thin, BARE), None);
            }
            assert_eq!(why(DIPPED, DIPPED), None);
            assert_eq!(why(UNDERSIZE, UNDERSIZE), None);
            assert_eq!(why(UNDERSIZE, DIPPED), Some(Misfit::TooLittleOverlap));
            assert_eq!(why(DIPPED, UNDERSIZE), Some(Misfit::DoesNotStart));
            assert_eq!(
                why(Finish::Bare(Metal::HotDipZinc), BARE),
                Some(Misfit::DoesNotStart)
            );
        }
    }

    #[test]
    fn a_class_with_z_is_oversize_whatever_its_finish() {
        let z = Some(NutGrade::Iso10684Class8z);
        let loose = CoatedFit::NotFit { why: Misfit::Loose };
        assert_eq!(fit(BARE, z, BARE, "M12"), loose);
        let overlap = CoatedFit::NotFit {
            why: Misfit::TooLittleOverlap,
        };
        assert_eq!(fit(UNDERSIZE, z, DIPPED, "M12"), overlap);
        assert!(coated_fit(UNDERSIZE, z, UNDERSIZE, &"M12".parse().unwrap()).is_err());
    }

    #[test]
    fn what_is_not_known_is_told() {
        let note = |bolt, nut, thread| match fit(bolt, None, nut, thread) {
            CoatedFit::Fits { note, .. } => note,
            CoatedFit::NotFit { .. } => None,
        };
        assert_eq!(
            note(UNDERSIZE, UNDERSIZE, "M10"),
            Some(FitNote::WeakUndersize)
        );
        assert_eq!(
            note(UNDERSIZE, UNDERSIZE, "M12"),
            Some(FitNote::MarkedUndersize)
        );
        assert_eq!(
            note(DIPPED, DIPPED, "M12x1.25"),
            Some(FitNote::OutsideIso10684)
        );
        assert_eq!(note(DIPPED, DIPPED, "M6"), Some(FitNote::OutsideIso10684));
        assert_eq!(
            note(DIPPED, DIPPED, "1-3/4-5 UNC"),
            Some(FitNote::LargeInch)
        );
        assert_eq!(
            note(Finish::MechanicalZinc, DIPPED, "3/4-10 UNC"),
            Some(FitNote::MixedProcesses)
        );
    }

    /// ISO 10684 is for M8 to M64, weak below M12; above 1-1/2 in it may be the bolt that is cut.
    #[test]
    fn sizes_at_their_limits() {
        let note = |finish, thread| match fit(finish, None, finish, thread) {
            CoatedFit::Fits { note, .. } => note,
            CoatedFit::NotFit { .. } => None,
        };
        for (finish, thread, told) in [
            (DIPPED, "M8", Some(FitNote::MarkedOversize)),
            (DIPPED, "M7", Some(FitNote::OutsideIso10684)),
            (DIPPED, "M64", Some(FitNote::MarkedOversize)),
            (DIPPED, "M68", Some(FitNote::OutsideIso10684)),
            (UNDERSIZE, "M64", Some(FitNote::MarkedUndersize)),
            (DIPPED, "1-1/2-6 UNC", None),
            (DIPPED, "1-3/4-5 UNC", Some(FitNote::LargeInch)),
            (UNDERSIZE, "3/4-10 UNC", None),
            (UNDERSIZE, "3/8-16 UNC", None),
        ] {
            assert_eq!(note(finish, thread), told, "{thread}");
        }
    }
}
