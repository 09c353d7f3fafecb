//! The rules of each trade for the length of a bolt, with who states them.

use crate::source::Method;
use crate::tables::methods;
use core::{fmt, str::FromStr};

use super::{CutRule, LengthRules};
use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::units::UnitSystem;

/// A published set of rules for bolt lengths; [`rules`](Self::rules) makes it ready to search with.
///
/// | set | protrusion | clear threads | cutting | known how |
/// |---|---|---|---|---|
/// | [`Fabrication`](Self::Fabrication) | 2 to 5 pitches | 0 | yes | common practice, no source |
/// | [`FaaAc4313`](Self::FaaAc4313) | at least 1 pitch | 0 | no | AC 43.13-1B 7-37, read in two reproductions; at most three washers in all by notes of owners' associations |
/// | [`NavalAviation`](Self::NavalAviation) | at least 2 pitches | 0 | no | NAVEDTRA 14014, chapter 5, read |
/// | [`En1090`](Self::En1090) | at least 1 pitch | 1 | no | EN 1090-2, 8.2.2, reproduced; three washers recalled |
/// | [`En1090Preloaded`](Self::En1090Preloaded) | at least 1 pitch | 4 | no | the same, for EN 14399-3 |
/// | [`Rcsc`](Self::Rcsc) | flush or more | 0 | no | RCSC 2009, 2.3.2, reproduced |
/// | [`NasaStd5020`](Self::NasaStd5020) | at least 2 pitches | 0 | no | recalled: the text could not be read |
///
/// What the sets say besides and a search does not ask: FAA and Navy let at most one or two threads lie in
/// the hole, and then only in the thicker part ([`GripSearch`](super::GripSearch) does); EN 1090-2 has tables
/// of clamp lengths for EN 14399-4; with threads excluded, AISC wants every plane on shank
/// ([`Candidate::planes_on_shank`](super::Candidate)); NASA wants no thread in bearing. Chamfers count as
/// part of the protrusion here. Rules of one's own can ask for both:
/// [`LengthRules::with_thread_in_holes`], [`LengthRules::with_end_not_counted`].
///
/// ```
/// use shankline::joint::RuleSet;
/// use shankline::prelude::*;
/// let rules = RuleSet::En1090.rules(UnitSystem::Si);
/// assert_eq!((rules.protrusion_min_pitches, rules.clear_threads_min), (1.0, 1.0));
/// assert_eq!(RuleSet::En1090.source().citation, "EN 1090-2, 8.2.2, not preloaded");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum RuleSet {
    /// General fabrication, the default.
    Fabrication,
    /// Aircraft by the FAA's circular of acceptable methods.
    #[cfg_attr(feature = "serde", serde(rename = "faa_ac_43_13"))]
    FaaAc4313,
    /// Aircraft by the US Navy's training manual.
    NavalAviation,
    /// Structural steelwork by EN 1090-2, bolts not preloaded.
    #[cfg_attr(feature = "serde", serde(rename = "en_1090"))]
    En1090,
    /// Structural steelwork by EN 1090-2, preloaded bolts of EN 14399-3.
    #[cfg_attr(feature = "serde", serde(rename = "en_1090_preloaded"))]
    En1090Preloaded,
    /// Structural steelwork by the RCSC specification.
    Rcsc,
    /// Space hardware by NASA-STD-5020.
    #[cfg_attr(feature = "serde", serde(rename = "nasa_std_5020"))]
    NasaStd5020,
}

impl RuleSet {
    /// Every set.
    ///
    /// ```
    /// for set in shankline::joint::RuleSet::ALL {
    ///     println!("{set}");
    /// }
    /// ```
    pub const ALL: [Self; 7] = [
        Self::Fabrication,
        Self::FaaAc4313,
        Self::NavalAviation,
        Self::En1090,
        Self::En1090Preloaded,
        Self::Rcsc,
        Self::NasaStd5020,
    ];

    /// The rules of the set; the unit system decides how cuts are rounded, where cutting is allowed.
    ///
    /// ```
    /// use shankline::joint::{CutRule, RuleSet};
    /// use shankline::units::UnitSystem;
    /// assert_eq!(RuleSet::Rcsc.rules(UnitSystem::UsCustomary).cut, CutRule::Never);
    /// ```
    #[must_use]
    pub const fn rules(self, system: UnitSystem) -> LengthRules {
        let rules = LengthRules::fabrication(system);
        match self {
            Self::Fabrication => rules,
            Self::FaaAc4313 => rules
                .with_protrusion(1.0, None)
                .with_washers_in_all(3)
                .with_cut(CutRule::Never),
            Self::NavalAviation | Self::NasaStd5020 => {
                rules.with_protrusion(2.0, None).with_cut(CutRule::Never)
            }
            Self::En1090 => rules
                .with_protrusion(1.0, None)
                .with_clear_threads(1.0)
                .with_cut(CutRule::Never),
            Self::En1090Preloaded => rules
                .with_protrusion(1.0, None)
                .with_clear_threads(4.0)
                .with_cut(CutRule::Never),
            Self::Rcsc => rules.with_protrusion(0.0, None).with_cut(CutRule::Never),
        }
    }

    /// Who states the rules.
    ///
    /// ```
    /// use shankline::joint::RuleSet;
    /// assert_eq!(RuleSet::Fabrication.source().citation, "common practice, no source");
    /// ```
    #[must_use]
    pub const fn source(self) -> &'static Method {
        match self {
            Self::Fabrication => methods::COMMON_PRACTICE,
            Self::FaaAc4313 => methods::FAA_LENGTH,
            Self::NavalAviation => methods::NAVY_LENGTH,
            Self::En1090 => methods::EN_1090_2_8_2_2_NOT_PRELOADED,
            Self::En1090Preloaded => methods::EN_1090_2_8_2_2_PRELOADED_EN_14399_3,
            Self::Rcsc => methods::RCSC_LENGTH,
            Self::NasaStd5020 => methods::NASA_LENGTH,
        }
    }
}

/// Code and label of every member.
const NAMES: [Named<RuleSet>; 7] = [
    (
        RuleSet::Fabrication,
        "fabrication",
        "general fabrication, common practice",
    ),
    (
        RuleSet::FaaAc4313,
        "faa_ac_43_13",
        "aircraft, FAA AC 43.13-1B",
    ),
    (
        RuleSet::NavalAviation,
        "naval_aviation",
        "naval aviation, NAVEDTRA 14014",
    ),
    (
        RuleSet::En1090,
        "en_1090",
        "steelwork not preloaded, EN 1090-2",
    ),
    (
        RuleSet::En1090Preloaded,
        "en_1090_preloaded",
        "steelwork with preloaded EN 14399-3 bolts, EN 1090-2",
    ),
    (RuleSet::Rcsc, "rcsc", "steelwork, RCSC specification"),
    (
        RuleSet::NasaStd5020,
        "nasa_std_5020",
        "space hardware, NASA-STD-5020",
    ),
];

impl Key for RuleSet {
    const FAMILY: &'static str = "set of rules";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for RuleSet {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for RuleSet {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::joint::{LengthSearch, NutEnd, Stack};
    use crate::parts::{Nut, NutStyle, ScrewProduct, ScrewSeries};
    use crate::spread::PlusMinus;
    use crate::units::millimetres;

    /// A stricter set never takes a shorter bolt: flush, one pitch, two pitches beyond the nut.
    #[test]
    fn stricter_protrusion_takes_no_shorter_bolt() {
        let ply = millimetres(14.0).plus_minus(millimetres(0.4));
        let stack = Stack::builder()
            .ply("a", ply)
            .ply("b", ply)
            .shear_planes([1]);
        let stack = stack.build().unwrap();
        let thread = "M16".parse().unwrap();
        let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread).unwrap();
        let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
        let chosen = |set: RuleSet| {
            let rules = set.rules(UnitSystem::Si);
            let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
            search.run().unwrap().best().unwrap().screw.nominal
        };
        let sets = [RuleSet::Rcsc, RuleSet::En1090, RuleSet::NavalAviation];
        let lengths = sets.map(chosen);
        assert!(
            lengths.windows(2).all(|pair| pair[0] <= pair[1]),
            "{lengths:?}"
        );
        for set in RuleSet::ALL {
            assert!(set.rules(UnitSystem::Si).checked().is_ok(), "{set}");
        }
    }
}
