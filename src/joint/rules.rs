//! What a trade asks of a bolt length.

use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::units::{Length, UnitSystem, inches, millimetres};

/// Rules a bolt length must meet.
///
/// | document | protrusion | clear threads under the nut | basis |
/// |---|---|---|---|
/// | Naval aviation training manual; machine-design textbooks | at least 2 pitches | | reproduced |
/// | FAA AC 43.13-1B, 7-37 | at least 1 thread | | reproduced |
/// | EN 1090-2, 8.2.2, not preloaded | at least 1 pitch | 1 | reproduced |
/// | EN 1090-2, 8.2.2, preloaded EN 14399-3 | at least 1 pitch | 4 | reproduced |
/// | "three threads" of the trade | | | common practice, no source |
///
/// ```
/// use shankline::prelude::*;
/// let en = LengthRules::fabrication(UnitSystem::Si)
///     .with_protrusion(1.0, None)
///     .with_clear_threads(1.0);
/// assert_eq!(en.washers_under_nut_max, 3);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(deny_unknown_fields)
)]
#[non_exhaustive]
pub struct LengthRules {
    /// Least length of bolt beyond the nut, in pitches, chamfered end included.
    pub protrusion_min_pitches: f64,
    /// Greatest length of bolt beyond the nut, in pitches; none for no limit.
    #[cfg_attr(feature = "serde", serde(default))]
    pub protrusion_max_pitches: Option<f64>,
    /// Full threads there must be between the nut face and the run-out when clamped, in pitches.
    pub clear_threads_min: f64,
    /// Most washers under the nut, those always there included.
    pub washers_under_nut_max: usize,
    /// Whether and how a bolt may be cut to length.
    pub cut: CutRule,
}

/// Whether and how a bolt may be cut to length.
///
/// ```
/// use shankline::prelude::*;
/// let drilled = LengthRules::fabrication(UnitSystem::Si).with_cut(CutRule::Never);
/// assert_ne!(drilled.cut, CutRule::usual(UnitSystem::Si));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::data::RawCutRule", into = "super::data::RawCutRule")
)]
#[non_exhaustive]
pub enum CutRule {
    /// Never: drilled, splined or coated bolts, or a code that forbids it.
    Never,
    /// To a length on a given step, held within a tolerance either way.
    Allowed {
        /// How exactly a cut is made, either way.
        tolerance: Length,
        /// Cut lengths are whole multiples of this.
        step: Length,
    },
}

impl LengthRules {
    /// General fabrication: 2 to 5 pitches past the nut, at most three washers under the nut, cuts
    /// to 1/16 in or 1 mm held within 1/64 in or 0.5 mm.
    ///
    /// The least protrusion is that of the naval aviation training manual and of machine-design
    /// textbooks (Shigley, Table 8-7). The upper limit, the washer limit and the cutting figures
    /// are common practice, no source.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(LengthRules::fabrication(UnitSystem::Si).protrusion_min_pitches, 2.0);
    /// ```
    #[must_use]
    pub const fn fabrication(system: UnitSystem) -> Self {
        Self {
            protrusion_min_pitches: 2.0,
            protrusion_max_pitches: Some(5.0),
            clear_threads_min: 0.0,
            washers_under_nut_max: 3,
            cut: CutRule::usual(system),
        }
    }

    /// The same rules with another protrusion, in pitches; no upper limit with `None`.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let faa = LengthRules::fabrication(UnitSystem::UsCustomary).with_protrusion(1.0, None);
    /// assert_eq!(faa.protrusion_min_pitches, 1.0);
    /// ```
    #[must_use]
    pub const fn with_protrusion(mut self, min_pitches: f64, max_pitches: Option<f64>) -> Self {
        self.protrusion_min_pitches = min_pitches;
        self.protrusion_max_pitches = max_pitches;
        self
    }

    /// The same rules with another number of clear threads under the nut.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let preloaded = LengthRules::fabrication(UnitSystem::Si).with_clear_threads(4.0);
    /// assert_eq!(preloaded.clear_threads_min, 4.0);
    /// ```
    #[must_use]
    pub const fn with_clear_threads(mut self, threads: f64) -> Self {
        self.clear_threads_min = threads;
        self
    }

    /// The same rules with another limit on the washers under the nut, all of them counted.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let one = LengthRules::fabrication(UnitSystem::Si).with_washers_under_nut(1);
    /// assert_eq!(one.washers_under_nut_max, 1);
    /// ```
    #[must_use]
    pub const fn with_washers_under_nut(mut self, most: usize) -> Self {
        self.washers_under_nut_max = most;
        self
    }

    /// The same rules with another rule on cutting.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let drilled = LengthRules::fabrication(UnitSystem::Si).with_cut(CutRule::Never);
    /// assert_eq!(drilled.cut, CutRule::Never);
    /// ```
    #[must_use]
    pub const fn with_cut(mut self, rule: CutRule) -> Self {
        self.cut = rule;
        self
    }

    /// Refuses rules that no bolt can be held against.
    pub(super) fn checked(self) -> Result<Self, Error> {
        pitches("least protrusion in pitches", self.protrusion_min_pitches)?;
        pitches("clear threads under the nut", self.clear_threads_min)?;
        if let Some(max) = self.protrusion_max_pitches {
            pitches("greatest protrusion in pitches", max)?;
            if max < self.protrusion_min_pitches {
                return Err(out_of_range(
                    "greatest protrusion in pitches",
                    max,
                    Allowed::AtLeast(self.protrusion_min_pitches.into()),
                ));
            }
        }
        if self.washers_under_nut_max > 100 {
            return Err(out_of_range(
                "most washers under the nut",
                self.washers_under_nut_max,
                Allowed::AtMost(100_usize.into()),
            ));
        }
        if let CutRule::Allowed { tolerance, step } = self.cut {
            not_negative("cut tolerance", tolerance)?;
            sane_length("cut step", step)?;
        }
        Ok(self)
    }
}

impl CutRule {
    /// Cuts as a workshop makes them: common practice, no source.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let CutRule::Allowed { step, .. } = CutRule::usual(UnitSystem::Si) else { panic!() };
    /// assert_eq!(step, millimetres(1.0));
    /// ```
    #[must_use]
    pub const fn usual(system: UnitSystem) -> Self {
        match system {
            UnitSystem::Si => Self::Allowed {
                tolerance: millimetres(0.5),
                step: millimetres(1.0),
            },
            UnitSystem::UsCustomary => Self::Allowed {
                tolerance: inches(1.0 / 64.0),
                step: inches(1.0 / 16.0),
            },
        }
    }
}

/// Refuses a number of pitches that is negative, not finite or beyond reason.
fn pitches(quantity: &'static str, value: f64) -> Result<f64, Error> {
    const MOST: f64 = 1e6;
    not_negative(quantity, value)?;
    if value <= MOST {
        Ok(value)
    } else {
        Err(out_of_range(quantity, value, Allowed::AtMost(MOST.into())))
    }
}
