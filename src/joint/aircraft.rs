//! Which dash number: aircraft bolts by their grip.

use alloc::vec::Vec;

use super::{HeadSeat, NutEnd, Stack};
use crate::error::Error;
use crate::parts::{AnBolt, AnWashers};
use crate::spread::{Spread, sane_spread};
use crate::tables::aircraft::{AircraftBolt, AircraftGrip};
use crate::units::{Length, SAME_LENGTH};

mod candidate;
mod rules;

pub use candidate::{GripCandidate, GripReason, GripSelection, WasherSet};
pub use rules::GripRules;

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
    /// [`Error::Mismatch`] for a stack with washers of its own, since the search places them, with a countersunk
    /// head or a tapped part, which these bolts do not go with;
    /// [`Error::OutOfRange`] for rules or washers that make no sense; [`Error::NoValue`] for a bolt
    /// whose grip was not read.
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
        let others = !stack.other_washers_under_nut().is_empty();
        if placed || others || !stack.washers_under_head().is_empty() {
            return Err(Error::Mismatch(
                "the stack has washers of its own: give the plies alone, the search places washers"
                    .into(),
            ));
        }
        if nut.is_tapped() || stack.tapped_part().is_some() {
            return Err(Error::Mismatch(
                "grips of these bolts are chosen for a nut, not for a tapped part".into(),
            ));
        }
        if let HeadSeat::Countersunk { .. } = stack.head_seat() {
            return Err(Error::Mismatch(
                "these bolts have a hexagon head: it sits in no countersink".into(),
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
                .and(self.washers.cautions())
                .and(self.nut.cautions()),
        })
    }

    fn candidate(&self, grip: AircraftGrip) -> GripCandidate {
        let rules = self.rules;
        let light_max = match self.washers.light {
            Some(_) => rules.washers_under_nut_max,
            None => 0,
        };
        // The rules permit as many as they ask for.
        let fewest = WasherSet {
            under_head: 0,
            under_nut: rules.washers_under_nut_min,
            light_under_nut: 0,
        };
        let mut best = self.with_washers(grip, fewest);
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
                        if order(&next) < order(&best) {
                            best = next;
                        }
                    }
                }
            }
        }
        best
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
        let protrusion = grip.length.less(clamped).less(nut);
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
            hole_end: material_end,
            nut_face: clamped,
            nut_height: nut,
            pitch,
            planes_on_shank,
            planes_off_shank: self.stack.plane_positions().len() - planes_on_shank,
            reasons,
        }
    }

    /// Whether thread that reaches so far into the hole stays in the ply at the nut, and that ply is
    /// as thick as any other.
    fn thread_lies_in_thickest(&self, depth: Length) -> bool {
        let plies = self.stack.plies().len();
        // Thread in a sleeve bears on no ply, but no document speaks of sleeves: then it is not permitted.
        let Some(last) = self.bearing_thickness(plies) else {
            return false;
        };
        let mut others = (1..=plies).filter_map(|ply| self.bearing_thickness(ply));
        depth <= last + SAME_LENGTH && others.all(|ply| ply <= last + SAME_LENGTH)
    }

    /// Nominal thickness of a ply, counted from 1, less the recesses in it; none with a sleeve in it.
    fn bearing_thickness(&self, ply: usize) -> Option<Length> {
        let stack = self.stack;
        stack.bearing_thickness(ply)?;
        let mut thickness = stack.plies().get(ply.checked_sub(1)?)?.thickness.nominal;
        if ply == 1 {
            thickness -= stack.head_seat().depth().nominal;
        }
        if let (true, Some(depth)) = (ply == stack.plies().len(), stack.spot_face_under_nut()) {
            thickness -= depth.nominal;
        }
        Some(thickness)
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
