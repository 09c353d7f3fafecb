//! Which dash number: aircraft bolts by their grip.

use alloc::{format, string::String, vec::Vec};

use super::{NutEnd, Stack};
use crate::caution::Cautions;
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::parts::{AnBolt, AnWashers, SAME_LENGTH};
use crate::spread::{Spread, sane_spread};
use crate::tables::aircraft::{AircraftBolt, AircraftGrip};
use crate::units::{Length, UnitSystem, shown};

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
    pub source: &'static str,
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
            source: "FAA AC 43.13-1B (1998), 7-37 (its end); washers: owners' association notes",
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
            source: "NAVEDTRA 14014, chapter 5, bolt length and grip",
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
            source: "maintenance manual of a light aircraft, general hardware",
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
            source: "notes of owners' and builders' associations",
            ..Self::faa()
        }
    }

    fn checked(self) -> Result<Self, Error> {
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
        Ok(self)
    }
}

/// Washers of one bolt.
///
/// ```
/// use shankline::joint::WasherSet;
/// assert_eq!(WasherSet { under_head: 1, under_nut: 1, light_under_nut: 1 }.count(), 3);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct WasherSet {
    /// Regular washers under the head.
    pub under_head: usize,
    /// Regular washers under the nut.
    pub under_nut: usize,
    /// Light washers under the nut.
    pub light_under_nut: usize,
}

impl WasherSet {
    /// All washers.
    ///
    /// ```
    /// use shankline::joint::WasherSet;
    /// assert_eq!(WasherSet { under_head: 0, under_nut: 1, light_under_nut: 0 }.count(), 1);
    /// ```
    #[must_use]
    pub const fn count(&self) -> usize {
        self.under_head
            .saturating_add(self.under_nut)
            .saturating_add(self.light_under_nut)
    }
}

/// Why a dash number will not do.
///
/// ```
/// use shankline::{joint::GripReason, units::{UnitSystem, inches}};
/// let reason = GripReason::NutReachesShank { by: inches(0.047) };
/// assert_eq!(reason.text(UnitSystem::UsCustomary), "nut reaches the shank 0.047 in before it clamps");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum GripReason {
    /// More thread in the hole than the rule permits.
    GripTooShort {
        /// Thread in the hole, in pitches.
        threads_in_hole: f64,
        /// How much grip is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// The thread in the hole is permitted only in the thickest ply, and lies in another.
    ThreadInThinPly {
        /// Thread in the hole, in pitches.
        threads_in_hole: f64,
    },
    /// The nut reaches the end of the shank before it clamps.
    NutReachesShank {
        /// How far it is from clamping the thinnest stack.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// The bolt does not pass the nut by as much as is asked.
    TooShort {
        /// How much is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
    /// The bolt passes the nut by more than is permitted. Aircraft bolts are not cut.
    TooLong {
        /// How much too far.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        by: Length,
    },
}

impl GripReason {
    /// The reason as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// use shankline::{joint::GripReason, units::{UnitSystem, inches}};
    /// let reason = GripReason::TooShort { by: inches(0.01) };
    /// assert_eq!(reason.text(UnitSystem::UsCustomary), "too short by 0.010 in");
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match *self {
            Self::GripTooShort {
                threads_in_hole,
                by,
            } => format!(
                "grip too short by {}: {threads_in_hole:.1} threads lie in the hole",
                shown(by, system)
            ),
            Self::ThreadInThinPly { threads_in_hole } => {
                format!(
                    "{threads_in_hole:.1} threads lie in the hole of a part that is not the thickest"
                )
            }
            Self::NutReachesShank { by } => {
                format!(
                    "nut reaches the shank {} before it clamps",
                    shown(by, system)
                )
            }
            Self::TooShort { by } => format!("too short by {}", shown(by, system)),
            Self::TooLong { by } => format!("sticks out {} too far", shown(by, system)),
        }
    }
}

/// One dash number with the best washers for it.
///
/// ```
/// use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
/// use shankline::tables::aircraft::AircraftBolt;
/// # fn main() -> Result<(), shankline::Error> {
/// let lug = Spread::exact(inches(0.219));
/// let stack = Stack::builder().ply("lug", lug).ply("lug", lug).shear_planes([1]).build()?;
/// let bolt = AircraftBolt::find("AN4")?;
/// let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?; // measured
/// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
/// let selection = search.run()?;
/// let best = selection.best().unwrap();
/// assert_eq!(best.bolt.to_string(), "AN4-7A"); // grip 0.438 in
/// assert_eq!(best.washers.count(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GripCandidate {
    /// The bolt; head and shank not drilled unless asked for.
    pub bolt: AnBolt,
    /// Its washers.
    pub washers: WasherSet,
    /// Thread in the hole in pitches, nominal sizes; 0 if there is none.
    pub threads_in_hole: f64,
    /// The same with the thickest plies and the shortest grip.
    pub threads_in_hole_worst: f64,
    /// How far the nut is from the end of the shank when it clamps the thinnest stack.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub jam_margin: Length,
    /// Bolt length beyond the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub protrusion: Spread<Length>,
    /// Shear planes on guaranteed shank, in the worst case.
    pub planes_on_shank: usize,
    /// Shear planes that may be off it.
    pub planes_off_shank: usize,
    /// Why it will not do; empty if it fits.
    pub reasons: Vec<GripReason>,
}

impl GripCandidate {
    /// Whether it keeps every rule.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("lug", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.accepted().iter().all(|candidate| candidate.fits()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn fits(&self) -> bool {
        self.reasons.is_empty()
    }
}

/// A search over the dash numbers of one aircraft bolt for one stack of plies.
///
/// For each dash number every permitted set of washers is tried, regular ones under the head,
/// regular and light ones under the nut, and the best kept. Ranking: it fits, or has the fewest
/// reasons against it; fewest planes off the shank; least thread in the hole; fewest washers; no light washers; shortest.
///
/// Grips of AN7 and larger bolts were not read: they are refused.
///
/// ```
/// use shankline::{joint::{GripReason, GripRules, GripSearch}, parts::AnWashers, prelude::*};
/// use shankline::tables::aircraft::AircraftBolt;
/// # fn main() -> Result<(), shankline::Error> {
/// // 17/32 in of material lies between two grips: the next longer one and washers.
/// let stack = Stack::builder().ply("spar", Spread::exact(inches(0.531))).build()?;
/// let bolt = AircraftBolt::find("AN4")?;
/// let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
/// let selection =
///     GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?.run()?;
/// let best = selection.best().unwrap();
/// assert_eq!((best.bolt.to_string().as_str(), best.washers.count()), ("AN4-10A", 1));
/// let short = selection.rejected().iter().find(|c| c.bolt.to_string() == "AN4-7A").unwrap();
/// assert!(matches!(short.reasons[0], GripReason::GripTooShort { .. }));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug)]
pub struct GripSearch<'a> {
    stack: &'a Stack,
    bolt: &'static AircraftBolt,
    pitch: Length,
    nut: NutEnd,
    washers: AnWashers,
    rules: GripRules,
    /// Drilled head, drilled shank.
    drilled: (bool, bool),
}

impl<'a> GripSearch<'a> {
    /// Prepares a search.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a stack with washers of its own: the search places them;
    /// [`Error::OutOfRange`] for rules or washers that make no sense; [`Error::NoValue`] for a bolt
    /// no grip was read of.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// let nut = NutEnd::with_height(Spread::exact(inches(0.3)))?;
    /// let bolt = AircraftBolt::find("AN8")?;
    /// assert!(GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa()).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        stack: &'a Stack,
        bolt: &'static AircraftBolt,
        nut: NutEnd,
        washers: AnWashers,
        rules: GripRules,
    ) -> Result<Self, Error> {
        let rules = rules.checked()?;
        let placed = stack
            .washers_under_nut()
            .is_some_and(|(_, count)| count > 0);
        if placed || !stack.washers_under_head().is_empty() {
            return Err(Error::Mismatch(
                "the stack has washers of its own: give the plies alone, the search places washers"
                    .into(),
            ));
        }
        sane_spread("thickness of the regular washer", washers.regular)?;
        if let Some(light) = washers.light {
            sane_spread("thickness of the light washer", light)?;
        }
        // A bolt without grips is refused here, not as an empty list.
        AircraftGrip::of(bolt, 10)?;
        Ok(Self {
            stack,
            bolt,
            pitch: crate::units::inches(1.0 / bolt.threads_per_inch),
            nut,
            washers,
            rules,
            drilled: (false, false),
        })
    }

    /// The same search for bolts with a drilled head (safety wire) or a drilled shank (castle nut
    /// and cotter pin).
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// let hinge = search.drilled(false, true).run()?;
    /// assert_eq!(hinge.best().unwrap().bolt.to_string(), "AN4-10");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn drilled(mut self, head: bool, shank: bool) -> Self {
        self.drilled = (head, shank);
        self
    }

    /// Tries every dash number.
    ///
    /// # Errors
    ///
    /// None beyond those of [`new`](Self::new).
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let bolt = AircraftBolt::find("AN3")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.19)))?;
    /// let beam = Stack::builder().ply("beam", Spread::exact(inches(20.0))).build()?;
    /// let search = GripSearch::new(&beam, bolt, nut, AnWashers::of(bolt)?, GripRules::navy())?;
    /// assert!(search.run()?.best().is_none());
    /// # Ok(())
    /// # }
    /// ```
    pub fn run(&self) -> Result<GripSelection, Error> {
        let mut candidates: Vec<GripCandidate> = (1..=u8::MAX)
            .filter_map(|dash| AircraftGrip::of(self.bolt, dash).ok())
            .map(|grip| self.candidate(grip))
            .collect();
        candidates.sort_by(|a, b| {
            order(a)
                .partial_cmp(&order(b))
                .unwrap_or(core::cmp::Ordering::Equal)
        });
        let accepted = candidates.partition_point(GripCandidate::fits);
        Ok(GripSelection {
            candidates,
            accepted,
            cautions: (self.bolt.cautions())
                .and(self.washers.cautions)
                .and(self.nut.cautions()),
        })
    }

    fn candidate(&self, grip: AircraftGrip) -> GripCandidate {
        let rules = self.rules;
        let light_max = match self.washers.light {
            Some(_) => rules.washers_under_nut_max,
            None => 0,
        };
        let mut best: Option<GripCandidate> = None;
        for under_head in 0..=rules.washers_under_head_max {
            for under_nut in 0..=rules.washers_under_nut_max {
                for light_under_nut in 0..=light_max {
                    let washers = WasherSet {
                        under_head,
                        under_nut,
                        light_under_nut,
                    };
                    let at_nut = under_nut + light_under_nut;
                    let permitted = at_nut >= rules.washers_under_nut_min
                        && at_nut <= rules.washers_under_nut_max
                        && washers.count() <= rules.washers_max;
                    if permitted {
                        let next = self.with_washers(grip, washers);
                        if best.as_ref().is_none_or(|best| order(&next) < order(best)) {
                            best = Some(next);
                        }
                    }
                }
            }
        }
        // Rules that permit no set at all: as few as they ask for under the nut.
        best.unwrap_or_else(|| {
            self.with_washers(
                grip,
                WasherSet {
                    under_head: 0,
                    under_nut: rules.washers_under_nut_min.min(10),
                    light_under_nut: 0,
                },
            )
        })
    }

    fn with_washers(&self, grip: AircraftGrip, washers: WasherSet) -> GripCandidate {
        let (rules, pitch) = (self.rules, self.pitch);
        // Washer counts are small: exact.
        #[allow(clippy::cast_precision_loss)]
        let times = |thickness: Spread<Length>, count: usize| thickness.map(|t| count as f64 * t);
        let head = times(self.washers.regular, washers.under_head);
        let light = self.washers.light.unwrap_or(self.washers.regular);
        let nut_side =
            times(self.washers.regular, washers.under_nut) + times(light, washers.light_under_nut);
        let material_end = head + self.stack.grip();
        let clamped = material_end + nut_side;
        let in_hole = |end: Length, shank: Length| ((end - shank).value / pitch.value).max(0.0);
        let threads_in_hole = in_hole(material_end.nominal, grip.grip.nominal);
        let threads_in_hole_worst = in_hole(material_end.max, grip.grip.min);
        let jam_margin = clamped.min - grip.grip.max;
        let nut = self.nut.height();
        let protrusion = Spread {
            min: grip.length.min - clamped.max - nut.max,
            nominal: grip.length.nominal - clamped.nominal - nut.nominal,
            max: grip.length.max - clamped.min - nut.min,
        };
        let positions = self.stack.plane_positions().iter();
        let planes_on_shank = positions
            .filter(|position| position.max + head.max <= grip.grip.min + SAME_LENGTH)
            .count();
        let mut reasons = Vec::new();
        let judged = if rules.worst_case_grip {
            threads_in_hole_worst
        } else {
            threads_in_hole
        };
        let too_many = judged - rules.threads_in_hole_max;
        if too_many * pitch > ROUNDED_GRIP {
            reasons.push(GripReason::GripTooShort {
                threads_in_hole: judged,
                by: too_many * pitch,
            });
        } else if rules.threads_only_in_thickest
            && judged * pitch > ROUNDED_GRIP
            && !self.thread_lies_in_thickest(judged * pitch)
        {
            reasons.push(GripReason::ThreadInThinPly {
                threads_in_hole: judged,
            });
        }
        if jam_margin < -SAME_LENGTH {
            reasons.push(GripReason::NutReachesShank { by: -jam_margin });
        }
        let short = rules.protrusion_min_pitches * pitch - protrusion.min;
        if short > SAME_LENGTH {
            reasons.push(GripReason::TooShort { by: short });
        }
        let far = rules
            .protrusion_max_pitches
            .map(|max| protrusion.max - max * pitch);
        if let Some(by) = far.filter(|far| *far > SAME_LENGTH) {
            reasons.push(GripReason::TooLong { by });
        }
        GripCandidate {
            bolt: AnBolt::plain(grip)
                .with_drilled_head(self.drilled.0)
                .with_drilled_shank(self.drilled.1),
            washers,
            threads_in_hole,
            threads_in_hole_worst,
            jam_margin,
            protrusion,
            planes_on_shank,
            planes_off_shank: self.stack.plane_positions().len() - planes_on_shank,
            reasons,
        }
    }

    /// Whether thread that reaches so far into the hole stays in the ply at the nut, and that ply is
    /// as thick as any other.
    fn thread_lies_in_thickest(&self, depth: Length) -> bool {
        let plies = self.stack.plies();
        plies.last().is_some_and(|last| {
            let thickness = last.thickness.nominal;
            depth <= thickness + SAME_LENGTH
                && plies
                    .iter()
                    .all(|ply| ply.thickness.nominal <= thickness + SAME_LENGTH)
        })
    }
}

/// Grips are printed to 0.001 in: 0.438 is 7/16 in, and a stack of 7/16 in is equal to it.
const ROUNDED_GRIP: Length = crate::units::inches(0.000_55);

/// Order of preference, see [`GripSearch`].
fn order(candidate: &GripCandidate) -> (usize, usize, f64, usize, usize, u8) {
    (
        candidate.reasons.len(),
        candidate.planes_off_shank,
        candidate.threads_in_hole,
        candidate.washers.count(),
        candidate.washers.light_under_nut,
        candidate.bolt.grip.dash,
    )
}

/// Every dash number, best first.
///
/// ```
/// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
/// # use shankline::tables::aircraft::AircraftBolt;
/// # fn main() -> Result<(), shankline::Error> {
/// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
/// # let bolt = AircraftBolt::find("AN4")?;
/// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
/// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
/// let selection = search.run()?;
/// assert_eq!(selection.accepted().first(), selection.best());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct GripSelection {
    candidates: Vec<GripCandidate>,
    accepted: usize,
    cautions: Cautions,
}

impl GripSelection {
    /// The best dash number that fits, if any.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.best().is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn best(&self) -> Option<&GripCandidate> {
        self.accepted().first()
    }

    /// Those that fit, best first.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(!search.run()?.accepted().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn accepted(&self) -> &[GripCandidate] {
        self.candidates.get(..self.accepted).unwrap_or_default()
    }

    /// Those that do not, with their reasons, the least bad first.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.rejected().iter().all(|c| !c.reasons.is_empty()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn rejected(&self) -> &[GripCandidate] {
        self.candidates.get(self.accepted..).unwrap_or_default()
    }

    /// What the user must be told: values that were recalled, not read.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.cautions().iter().count() >= 2); // shank limits, washers
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }
}
