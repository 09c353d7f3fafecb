//! Whether a bolt may be used again once it has been tightened.

use crate::source::cite;
use crate::tables::methods;
use core::fmt;

use crate::material::{AstmGrade, BoltGrade, Finish, Severity};
use crate::preload::PreloadTarget;

/// Whether a bolt may be used again. `Display` writes it with its source.
///
/// Tightening a bolt again that came loose while its neighbours were tightened is no second use (RCSC
/// 2.3.3, as a supplier quotes it).
///
/// ```
/// use shankline::joint::Reuse;
/// assert!(Reuse::Never.to_string().contains("RCSC"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Reuse {
    /// Never: A490 and twist-off bolts, and coated A325.
    Never,
    /// Bare A325, if the engineer of record approves.
    WithApproval,
    /// A325 of which nobody says whether they are coated.
    FinishUnknown,
    /// Once tightened to the preload of EN 1993, IS 800, BS 4604 or AS 4100 and slackened, bolt, nut and washer are thrown away.
    ScrapWhenSlackened,
    /// Below three quarters of the proof load: meant to be used again.
    Reusable,
    /// No rule has been read.
    NoRule,
}

impl Reuse {
    /// What a second use weighs.
    ///
    /// ```
    /// use shankline::{joint::Reuse, material::Severity};
    /// assert_eq!(Reuse::Never.severity(), Severity::Fault);
    /// assert_eq!(Reuse::NoRule.severity(), Severity::Undecided);
    /// ```
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::Never | Self::ScrapWhenSlackened => Severity::Fault,
            Self::FinishUnknown | Self::NoRule => Severity::Undecided,
            Self::WithApproval => Severity::Caution,
            Self::Reusable => Severity::Fine,
        }
    }

    /// Whether a sheet may tell to slacken the bolt and tighten it again.
    ///
    /// ```
    /// use shankline::joint::Reuse;
    /// assert!(!Reuse::ScrapWhenSlackened.may_be_slackened() && Reuse::Reusable.may_be_slackened());
    /// ```
    #[must_use]
    pub const fn may_be_slackened(self) -> bool {
        matches!(self, Self::Reusable | Self::NoRule)
    }
}

impl fmt::Display for Reuse {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (words, source) = match self {
            Self::Never => (
                "once tightened never to be used again: A490, twist-off and coated A325 bolts",
                Some(methods::RCSC_SPECIFICATION_2_3_3),
            ),
            Self::WithApproval => (
                "to be used again only if the engineer of record approves and the nut still runs up the \
                 threads by hand",
                Some(methods::RCSC_SPECIFICATION_2_3_3),
            ),
            Self::FinishUnknown => (
                "bare ones may be used again with approval, coated ones never: the finish is not described",
                Some(methods::RCSC_SPECIFICATION_2_3_3),
            ),
            Self::ScrapWhenSlackened => (
                "once tightened to its preload and slackened, throw bolt, nut and washer away",
                Some(methods::EN_14399_USED_ONCE),
            ),
            Self::Reusable => (
                "tightened to at most three quarters of its proof load, it may be used again",
                Some(methods::SHIGLEY_9TH_ED_EQ_8_31),
            ),
            Self::NoRule => ("no rule for using it again has been read", None),
        };
        cite(f, words, source)
    }
}

/// Whether a bolt of a grade and finish may be used again, tightened to a target; none if not tightened by one.
///
/// Sources: RCSC Specification, 2000 to 2014, 2.3.3 (a supplier quotes it; that twist-off bolts and zinc-flake
/// coats are in it is recalled); BS 4604-1 and EN 14399 (a maker's note); Shigley, 9th ed., Eq. 8-31.
///
/// ```
/// use shankline::joint::{Reuse, reuse};
/// use shankline::material::Finish;
/// use shankline::prelude::*;
/// let a325 = BoltGrade::from(AstmGrade::F3125A325Type1);
/// assert_eq!(reuse(a325, Some(Finish::HotDipGalvanized), None), Reuse::Never);
/// let class = BoltGrade::from(PropertyClass::Class8_8);
/// assert_eq!(reuse(class, None, Some(PreloadTarget::Reusable)), Reuse::Reusable);
/// ```
#[must_use]
pub fn reuse(grade: BoltGrade, finish: Option<Finish>, target: Option<PreloadTarget>) -> Reuse {
    use AstmGrade::{F3125F1852Type1, F3125F1852Type3};
    let twist_off = matches!(grade, BoltGrade::Astm(F3125F1852Type1 | F3125F1852Type3));
    if grade.is_a490() || twist_off {
        return Reuse::Never;
    }
    if grade.is_a325() {
        let coat = finish.map(Finish::is_metallic_coat);
        return match coat {
            Some(true) => Reuse::Never,
            Some(false) => Reuse::WithApproval,
            None => Reuse::FinishUnknown,
        };
    }
    match target {
        Some(
            PreloadTarget::En1993
            | PreloadTarget::En1993German
            | PreloadTarget::Is800
            | PreloadTarget::Bs4604
            | PreloadTarget::As4100,
        ) => Reuse::ScrapWhenSlackened,
        Some(PreloadTarget::Reusable) => Reuse::Reusable,
        _ => Reuse::NoRule,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::PropertyClass;
    use crate::strength::shear::AiscEdition;
    use crate::tables::galvanic::Metal;

    /// RCSC 2.3.3.
    #[test]
    fn structural_bolts_go_by_their_specification() {
        let aisc = PreloadTarget::AiscJ31 {
            edition: AiscEdition::E2016,
        };
        let of = |grade: AstmGrade, finish| reuse(grade.into(), finish, Some(aisc));
        let bare = Some(Finish::Bare(Metal::Steel));
        for grade in [
            AstmGrade::F3125A490Type1,
            AstmGrade::F3125A490m,
            AstmGrade::F3125F1852Type1,
        ] {
            assert_eq!(of(grade, bare), Reuse::Never, "{grade}");
        }
        let a325 = AstmGrade::F3125A325Type1;
        assert_eq!(of(a325, bare), Reuse::WithApproval);
        assert_eq!(of(a325, None), Reuse::FinishUnknown);
        for coat in [
            Finish::HotDipGalvanized,
            Finish::MechanicalZinc,
            Finish::ZincFlake,
            Finish::Bare(Metal::HotDipZinc),
        ] {
            assert_eq!(of(a325, Some(coat)), Reuse::Never, "{coat:?}");
        }
    }

    #[test]
    fn preloads_of_en_1993_are_for_one_use() {
        let of = |target| reuse(PropertyClass::Class10_9.into(), None, target);
        for target in [PreloadTarget::En1993, PreloadTarget::En1993German] {
            assert_eq!(of(Some(target)), Reuse::ScrapWhenSlackened);
            assert!(!of(Some(target)).may_be_slackened());
        }
        for target in [
            PreloadTarget::Is800,
            PreloadTarget::Bs4604,
            PreloadTarget::As4100,
        ] {
            assert_eq!(of(Some(target)), Reuse::ScrapWhenSlackened);
        }
        // Shigley: a bolt that is to be used again is tightened to three quarters of its proof load.
        assert_eq!(of(Some(PreloadTarget::Reusable)), Reuse::Reusable);
        assert_eq!(Reuse::Reusable.severity(), Severity::Fine);
        assert_eq!(Reuse::NoRule.severity(), Severity::Undecided);
        assert!(Reuse::Reusable.may_be_slackened() && Reuse::NoRule.may_be_slackened());
        assert_eq!(of(Some(PreloadTarget::Permanent)), Reuse::NoRule);
        assert_eq!(of(None), Reuse::NoRule);
    }
}
