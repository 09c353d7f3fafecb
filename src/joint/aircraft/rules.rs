//! What documents of the trade ask of the grip of an aircraft bolt.

use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::source::Method;
use crate::tables::methods;

/// What a document of the trade asks of the grip of an aircraft bolt.
///
/// | rule set | beyond the nut | thread in the hole | washers |
/// |---|---|---|---|
/// | [`faa`](Self::faa) | 1 thread or more | none | 3 in all |
/// | [`navy`](Self::navy) | 2 threads or more | at most 2, in the thicker part only | as needed, here 3 in all |
/// | [`light_aircraft`](Self::light_aircraft) | 1 thread or more | none | 2 on a side, 4 in all |
/// | [`builders`](Self::builders) | 1 to 3 threads | at most 1 | 3 in all |
///
/// All compare the nominal grip with the thickness of the material. The nut must never reach the
/// shank: that is judged in the worst case whatever the rule.
///
/// ```
/// use shankline::joint::GripRules;
/// assert_eq!(GripRules::navy().protrusion_min_pitches, 2.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GripRules {
    /// Most thread inside the hole, in pitches.
    pub threads_in_hole_max: f64,
    /// Whether thread may lie in the hole only where the ply at the nut is as thick as any other.
    pub threads_only_in_thickest: bool,
    /// Whether thread in the hole is judged with the thickest plies and the shortest grip; otherwise
    /// with nominal sizes, as the documents do.
    pub worst_case_grip: bool,
    /// Least bolt beyond the nut, in pitches, chamfered end included.
    pub protrusion_min_pitches: f64,
    /// Most bolt beyond the nut, in pitches; none for no limit.
    pub protrusion_max_pitches: Option<f64>,
    /// Most washers under the head.
    pub washers_under_head_max: usize,
    /// Fewest washers under the nut.
    pub washers_under_nut_min: usize,
    /// Most washers under the nut.
    pub washers_under_nut_max: usize,
    /// Most washers in all.
    pub washers_max: usize,
    /// The document.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub source: &'static Method,
}

impl GripRules {
    /// FAA AC 43.13-1B, 7-37, and the mechanics' training notes that go with it: grip equal to the
    /// thickness of the material, at least one thread through the nut.
    ///
    /// The end of 7-37 was read on two reproductions; its opening, with the limit on washers, was not.
    /// Three washers are the limit of owners' and builders' associations.
    ///
    /// ```
    /// use shankline::joint::GripRules;
    /// assert_eq!(GripRules::faa().threads_in_hole_max, 0.0);
    /// ```
    #[must_use]
    pub const fn faa() -> Self {
        Self {
            threads_in_hole_max: 0.0,
            threads_only_in_thickest: false,
            worst_case_grip: false,
            protrusion_min_pitches: 1.0,
            protrusion_max_pitches: None,
            washers_under_head_max: 1,
            washers_under_nut_min: 1,
            washers_under_nut_max: 3,
            washers_max: 3,
            source: methods::FAA_GRIP,
        }
    }

    /// Naval training manual NAVEDTRA 14014, chapter 5: grip about equal to the thickness; two full
    /// threads through the nut; at most two threads in the hole, and those only in the thicker
    /// part; a washer where the grip is a little long. The page was read; it sets no limit on
    /// washers, three in all is the limit of others.
    ///
    /// ```
    /// use shankline::joint::GripRules;
    /// assert!(GripRules::navy().threads_only_in_thickest);
    /// ```
    #[must_use]
    pub const fn navy() -> Self {
        Self {
            threads_in_hole_max: 2.0,
            threads_only_in_thickest: true,
            protrusion_min_pitches: 2.0,
            source: methods::NAVY_LENGTH,
            ..Self::faa()
        }
    }

    /// The hardware chapter of a light aircraft's maintenance manual (read): grip right through the
    /// parts that carry load, one thread through the nut, at most two washers on a side and four in
    /// all, thin ones where they are needed.
    ///
    /// ```
    /// use shankline::joint::GripRules;
    /// assert_eq!(GripRules::light_aircraft().washers_max, 4);
    /// ```
    #[must_use]
    pub const fn light_aircraft() -> Self {
        Self {
            washers_under_head_max: 2,
            washers_under_nut_max: 2,
            washers_max: 4,
            source: methods::LIGHT_AIRCRAFT_LENGTH,
            ..Self::faa()
        }
    }

    /// Notes of owners' and builders' associations (reproduced): one to three threads through the
    /// nut, at most one in the hole, three washers at most.
    ///
    /// ```
    /// use shankline::joint::GripRules;
    /// assert_eq!(GripRules::builders().protrusion_max_pitches, Some(3.0));
    /// ```
    #[must_use]
    pub const fn builders() -> Self {
        Self {
            threads_in_hole_max: 1.0,
            protrusion_max_pitches: Some(3.0),
            source: methods::BUILDERS_LENGTH,
            ..Self::faa()
        }
    }

    pub(in crate::joint) fn checked(self) -> Result<Self, Error> {
        not_negative("threads in the hole", self.threads_in_hole_max)?;
        not_negative("least protrusion in pitches", self.protrusion_min_pitches)?;
        if let Some(max) = self.protrusion_max_pitches {
            not_negative("greatest protrusion in pitches", max)?;
            if max < self.protrusion_min_pitches {
                return Err(out_of_range(
                    "greatest protrusion in pitches",
                    max,
                    Allowed::AtLeast(self.protrusion_min_pitches.into()),
                ));
            }
        }
        // Beyond a handful nobody stacks washers, and the combinations stay few.
        for (quantity, count) in [
            ("washers under the head", self.washers_under_head_max),
            ("washers under the nut", self.washers_under_nut_max),
        ] {
            if count > 10 {
                let allowed = Allowed::AtMost(10_usize.into());
                return Err(out_of_range(quantity, count, allowed));
            }
        }
        let most = self.washers_under_nut_max.min(self.washers_max);
        if self.washers_under_nut_min > most {
            return Err(out_of_range(
                "fewest washers under the nut",
                self.washers_under_nut_min,
                Allowed::AtMost(most.into()),
            ));
        }
        Ok(self)
    }
}
