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
/// Besides, rules may limit the washers at each end and in all, leave the chamfer out of the protrusion, and
/// limit the thread that lies in the holes.
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
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
    /// Most washers under the head, those always there included; none for no limit on those always there,
    /// and then none is added.
    #[cfg_attr(feature = "serde", serde(default))]
    pub washers_under_head_max: Option<usize>,
    /// Most washers at both ends together; none for no limit but those of each end.
    #[cfg_attr(feature = "serde", serde(default))]
    pub washers_max: Option<usize>,
    /// How much of the end of the bolt does not count against the least protrusion, in pitches: its
    /// chamfer, up to 2 by ISO 4753. Zero where the chamfer counts.
    #[cfg_attr(feature = "serde", serde(default))]
    pub end_not_counted_pitches: f64,
    /// Most thread and run-out that may lie in the holes of the plies, in pitches; none for no limit.
    /// Counted from the end of the sure shank to the far face of the last ply, or to the bottom of a spot
    /// face in it.
    #[cfg_attr(feature = "serde", serde(default))]
    pub thread_in_holes_max_pitches: Option<f64>,
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
            washers_under_head_max: None,
            washers_max: None,
            end_not_counted_pitches: 0.0,
            thread_in_holes_max_pitches: None,
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

    /// The same rules with a limit on the washers under the head, all of them counted: a search may add up
    /// to it, of the kind that [`StackBuilder::washer_to_add_under_head`](super::StackBuilder) gives.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let two = LengthRules::fabrication(UnitSystem::Si).with_washers_under_head(2);
    /// assert_eq!(two.washers_under_head_max, Some(2));
    /// ```
    #[must_use]
    pub const fn with_washers_under_head(mut self, most: usize) -> Self {
        self.washers_under_head_max = Some(most);
        self
    }

    /// The same rules with a limit on the washers at both ends together.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let three = LengthRules::fabrication(UnitSystem::Si).with_washers_in_all(3);
    /// assert_eq!(three.washers_max, Some(3));
    /// ```
    #[must_use]
    pub const fn with_washers_in_all(mut self, most: usize) -> Self {
        self.washers_max = Some(most);
        self
    }

    /// The same rules with so much of the end of the bolt not counted as protrusion, in pitches.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// // Two full threads beyond the nut, the chamfer not counted.
    /// let full = LengthRules::fabrication(UnitSystem::Si).with_end_not_counted(2.0);
    /// assert_eq!(full.least_protrusion_pitches(), 4.0);
    /// ```
    #[must_use]
    pub const fn with_end_not_counted(mut self, pitches: f64) -> Self {
        self.end_not_counted_pitches = pitches;
        self
    }

    /// The same rules with a limit on the thread in the holes of the plies, in pitches.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let none = LengthRules::fabrication(UnitSystem::Si).with_thread_in_holes(0.0);
    /// assert_eq!(none.thread_in_holes_max_pitches, Some(0.0));
    /// ```
    #[must_use]
    pub const fn with_thread_in_holes(mut self, most_pitches: f64) -> Self {
        self.thread_in_holes_max_pitches = Some(most_pitches);
        self
    }

    /// What the end of the bolt must stand beyond the nut, its chamfer included where that does not count.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(LengthRules::fabrication(UnitSystem::Si).least_protrusion_pitches(), 2.0);
    /// ```
    #[must_use]
    pub fn least_protrusion_pitches(&self) -> f64 {
        self.protrusion_min_pitches + self.end_not_counted_pitches
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
        pitches(
            "end not counted as protrusion",
            self.end_not_counted_pitches,
        )?;
        pitches("clear threads under the nut", self.clear_threads_min)?;
        if let Some(most) = self.thread_in_holes_max_pitches {
            pitches("thread in the holes in pitches", most)?;
        }
        if let Some(max) = self.protrusion_max_pitches {
            pitches("greatest protrusion in pitches", max)?;
            if max < self.least_protrusion_pitches() {
                return Err(out_of_range(
                    "greatest protrusion in pitches",
                    max,
                    Allowed::AtLeast(self.least_protrusion_pitches().into()),
                ));
            }
        }
        for (quantity, count, most) in [
            (
                "most washers under the nut",
                Some(self.washers_under_nut_max),
                100,
            ),
            (
                "most washers under the head",
                self.washers_under_head_max,
                100,
            ),
            ("most washers in all", self.washers_max, 200_usize),
        ] {
            if let Some(count) = count.filter(|&count| count > most) {
                return Err(out_of_range(quantity, count, Allowed::AtMost(most.into())));
            }
        }
        if let CutRule::Allowed { tolerance, step } = self.cut {
            not_negative("cut tolerance", tolerance)?;
            // No saw is worse.
            let most = millimetres(25.0);
            if tolerance > most {
                let allowed = Allowed::AtMost(most.into());
                return Err(out_of_range("cut tolerance", tolerance, allowed));
            }
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
