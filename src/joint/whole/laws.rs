//! How each check of a joint goes with its loads.
//!
//! Read from the whole check, run at small loads of one kind, and held against another run of it. Within one kind of
//! load (what acts at all, what comes and goes) each utilisation is one of a few forms:
//!
//! ```text
//!   across      a V          a V^0.5 (contact of a pin)      c + a V (plates around a pin)
//!   along       a F          a P(F), P the greatest force of the bolt: the larger of Fi + C m F and m F once parted
//!   together    the rule for tension and shear, of the two above
//!   slip        a V / (1 - k F)
//!   fatigue     a (V - Vmin)   a (F - Fmin)   a (B(F) - B(Fmin)), B the force of the bolt   a amplitude + b mean
//! ```
//!
//! A check of no form here, or one that the second run does not confirm, leaves the kind of load to the whole check.

// Lanes are counted from 0 to below N, and every array of theirs has N places: loops over them become vector instructions.
#![allow(clippy::indexing_slicing)]

use alloc::vec::Vec;

mod reader;

use reader::Reader;

use super::{BoltCase, CaseAnswer, Joint, JointPreload, Word};
use crate::joint::Candidate;
use crate::math;
use crate::parts::Zone;
use crate::strength::check::Mode;
use crate::strength::interaction::{Form, InteractionRule};
use crate::tension::JointDiagram;
use crate::units::{Ratio, newtons};

/// Loads of one bolt in newtons.
#[derive(Clone, Copy, Debug)]
pub(super) struct Loads {
    pub(super) across: f64,
    pub(super) along: f64,
    pub(super) across_least: f64,
    pub(super) along_least: f64,
}

impl Loads {
    /// Which kind of load it is: below 16.
    #[inline]
    pub(super) fn kind(&self) -> usize {
        let across = usize::from(self.across > 0.0)
            + usize::from(self.across_least < self.across)
            + usize::from(self.across_least < 0.0);
        4 * across + 2 * usize::from(self.along > 0.0) + usize::from(self.along_least < self.along)
    }

    fn case(&self) -> BoltCase {
        BoltCase {
            across: newtons(self.across),
            along: newtons(self.along),
            across_least: newtons(self.across_least),
            along_least: newtons(self.along_least),
        }
    }
}

/// The checks of one kind of load.
#[derive(Clone, Debug)]
pub(super) struct Laws {
    /// The word as long as no utilisation is above 1.
    word: Word,
    of_modes: Vec<(Mode, Law)>,
    forces: Forces,
    /// Between which greatest forces of the bolt, and which loads along it, the outcomes are these: pressures that are
    /// only shown where they are too high lie outside, and pulls that leave no clamp force.
    ranges: [[f64; 2]; 2],
}

/// How a utilisation goes with the load.
#[derive(Clone, Copy, Debug)]
enum Law {
    Fixed(f64),
    Across(f64),
    AcrossRoot(f64),
    AcrossFrom { start: f64, per: f64 },
    Along(f64),
    Bolt(f64),
    Together(Together),
    Slip { across: f64, along: f64 },
    AcrossSwing(f64),
    AlongSwing(f64),
    BoltSwing(f64),
    Goodman { amplitude: f64, mean: f64 },
}

/// Shear, tension and bending of the bolt for each newton, and the rule for them together.
#[derive(Clone, Copy, Debug)]
struct Together {
    rule: InteractionRule,
    zone: Zone,
    shear: f64,
    tension: f64,
    bending: f64,
}

/// The force of the bolt under a load along it.
#[derive(Clone, Copy, Debug)]
struct Forces {
    /// What the load is multiplied by for the greatest force.
    margin: f64,
    greatest: Spring,
    /// What it is multiplied by for fatigue.
    shock: f64,
    /// Whether there is a preload that a least load below zero takes something from.
    preloaded: bool,
    least: Spring,
}

/// A preload and the share of the load that comes on top of it.
#[derive(Clone, Copy, Debug)]
struct Spring {
    preload: f64,
    share: f64,
    separation: f64,
}

impl Spring {
    /// The bolt bears the whole load.
    const NONE: Self = Self {
        preload: 0.0,
        share: 1.0,
        separation: f64::INFINITY,
    };

    fn of(diagram: &JointDiagram) -> Self {
        Self {
            preload: diagram.preload.value,
            share: diagram.share.share.value,
            separation: diagram.separation_load.value,
        }
    }

    #[inline]
    fn bolt(&self, load: f64) -> f64 {
        if load > self.separation {
            load
        } else {
            (self.preload + self.share * load).max(0.0)
        }
    }

    /// Half of what the force of the bolt changes by, and how far its mean is above the preload.
    #[inline]
    fn half_and_above(&self, [least, greatest]: [f64; 2]) -> [f64; 2] {
        let (low, high) = (self.bolt(least), self.bolt(greatest));
        let above = 0.5 * (high + low) - self.preload;
        [0.5 * (high - low), above.max(0.0)]
    }
}

impl Forces {
    fn of(joint: &Joint, preload: Option<&JointPreload>) -> Option<Self> {
        let load = &joint.load;
        let margin = load.factor(joint.methods.level) * joint.methods.margin;
        let share = preload.and_then(JointPreload::load_share);
        let spring = |force| match share {
            Some(share) => Some(Spring::of(&JointDiagram::new(share, force).ok()?)),
            // Where the share is not known the whole load comes on top.
            None => Some(Spring {
                preload: force.value,
                ..Spring::NONE
            }),
        };
        Some(Self {
            margin,
            greatest: match preload {
                Some(preload) => spring(preload.greatest)?,
                None => Spring::NONE,
            },
            shock: load.shock_factor,
            preloaded: preload.is_some(),
            least: match preload {
                Some(preload) => spring(preload.in_service)?,
                None => Spring::NONE,
            },
        })
    }

    /// The greatest force of the bolt.
    #[inline]
    fn greatest(&self, loads: &Loads) -> f64 {
        self.greatest.bolt(self.margin * loads.along)
    }

    /// What fatigue takes as the least and the greatest load along.
    #[inline]
    fn swing(&self, loads: &Loads) -> [f64; 2] {
        let least = if self.preloaded {
            loads.along_least
        } else {
            loads.along_least.max(0.0)
        };
        [self.shock * least, self.shock * loads.along]
    }
}

/// Loads of several cases of one kind, side by side, so that one law is worked out for all of them at once.
#[derive(Clone, Copy, Debug)]
pub(super) struct Lanes<const N: usize> {
    across: [f64; N],
    along: [f64; N],
    across_least: [f64; N],
    along_least: [f64; N],
}

impl<const N: usize> Lanes<N> {
    #[inline]
    pub(super) fn new() -> Self {
        Self {
            across: [0.0; N],
            along: [0.0; N],
            across_least: [0.0; N],
            along_least: [0.0; N],
        }
    }

    #[inline]
    pub(super) fn put(&mut self, lane: usize, loads: &Loads) {
        let slots = [
            (&mut self.across, loads.across),
            (&mut self.along, loads.along),
            (&mut self.across_least, loads.across_least),
            (&mut self.along_least, loads.along_least),
        ];
        for (slots, load) in slots {
            if let Some(slot) = slots.get_mut(lane) {
                *slot = load;
            }
        }
    }

    #[inline]
    fn one(&self, lane: usize) -> Loads {
        Loads {
            across: self.across[lane],
            along: self.along[lane],
            across_least: self.across_least[lane],
            along_least: self.along_least[lane],
        }
    }
}

impl Loads {
    fn lanes(&self) -> Lanes<1> {
        let mut lanes = Lanes::new();
        lanes.put(0, self);
        lanes
    }
}

/// The highest utilisation of each lane so far.
struct Most<const N: usize> {
    used: [f64; N],
    /// Which law it is of, counted from 1.
    law: [u64; N],
    /// Where a law has no answer: 1.
    open: [u64; N],
}

impl<const N: usize> Most<N> {
    /// Raises it to what a law comes to in each lane; NaN is no answer.
    #[inline]
    fn raise(&mut self, law: u64, used: impl Fn(usize) -> f64) {
        for lane in 0..N {
            let own = used(lane);
            let is_more = own > self.used[lane];
            self.used[lane] = if is_more { own } else { self.used[lane] };
            self.law[lane] = if is_more { law } else { self.law[lane] };
            self.open[lane] |= u64::from(own.is_nan());
        }
    }
}

/// What a force changes by, if it is no mere rounding of the force itself, which methods refuse.
#[inline]
fn change(change: f64, force: f64) -> f64 {
    if change > 1e-6 * force.abs() && change > SMALLEST_CHANGE {
        change
    } else {
        f64::NAN
    }
}

/// In newtons; nothing tires of less.
const SMALLEST_CHANGE: f64 = 0.1;

impl Law {
    /// Raises the highest utilisation to that of this law; NaN where the whole check has to say.
    #[inline]
    fn raise<const N: usize>(
        &self,
        law: u64,
        lanes: &Lanes<N>,
        forces: &Forces,
        bolt: &[f64; N],
        most: &mut Most<N>,
    ) {
        match *self {
            Self::Fixed(used) => most.raise(law, |_| used),
            Self::Across(per) => most.raise(law, |lane| per * lanes.across[lane]),
            Self::AcrossRoot(per) => most.raise(law, |lane| per * math::sqrt(lanes.across[lane])),
            Self::AcrossFrom { start, per } => {
                most.raise(law, |lane| start + per * lanes.across[lane]);
            }
            Self::Along(per) => most.raise(law, |lane| per * lanes.along[lane]),
            Self::Bolt(per) => most.raise(law, |lane| per * bolt[lane]),
            Self::Together(together) => together.raise(law, lanes, most),
            Self::Slip { across, along } => most.raise(law, |lane| {
                let left = 1.0 - along * lanes.along[lane];
                // Further on a method may find nothing left to hold the plies.
                let left = if left < 0.25 { f64::NAN } else { left };
                across * lanes.across[lane] / left
            }),
            Self::AcrossSwing(per) => most.raise(law, |lane| {
                let (least, greatest) = (lanes.across_least[lane], lanes.across[lane]);
                per * change(greatest - least, greatest)
            }),
            Self::AlongSwing(per) => most.raise(law, |lane| {
                let [least, greatest] = forces.swing(&lanes.one(lane));
                per * change(greatest - least, greatest)
            }),
            Self::BoltSwing(per) => most.raise(law, |lane| {
                let [least, greatest] = forces.swing(&lanes.one(lane));
                let (low, high) = (forces.least.bolt(least), forces.least.bolt(greatest));
                per * change(high - low, high)
            }),
            Self::Goodman { amplitude, mean } => most.raise(law, |lane| {
                let swing = forces.swing(&lanes.one(lane));
                let [half, above] = forces.greatest.half_and_above(swing);
                // Parted plies have no answer.
                let preload = forces.greatest.preload;
                let preload = if swing[1] > forces.greatest.separation {
                    f64::NAN
                } else {
                    preload
                };
                amplitude * change(half, preload + above) + mean * above
            }),
        }
    }

    /// The utilisation under one load.
    fn at(&self, loads: &Loads, forces: &Forces) -> Option<f64> {
        let mut most = Most {
            used: [0.0],
            law: [0],
            open: [0],
        };
        let bolt = [forces.greatest(loads)];
        self.raise(1, &loads.lanes(), forces, &bolt, &mut most);
        (most.open == [0]).then_some(most.used[0])
    }

    /// The number by which two of one form compare, if the larger one always governs.
    fn per(&self) -> Option<f64> {
        match *self {
            Self::Fixed(per)
            | Self::Across(per)
            | Self::AcrossRoot(per)
            | Self::Along(per)
            | Self::Bolt(per)
            | Self::AcrossSwing(per)
            | Self::AlongSwing(per)
            | Self::BoltSwing(per) => Some(per),
            Self::Slip { across, .. } => Some(across),
            _ => None,
        }
    }

    fn is_like(&self, other: &Self) -> bool {
        core::mem::discriminant(self) == core::mem::discriminant(other)
    }
}

impl Together {
    #[inline]
    fn raise<const N: usize>(&self, law: u64, lanes: &Lanes<N>, most: &mut Most<N>) {
        let shear = |lane: usize| self.shear * lanes.across[lane];
        let tension = |lane: usize| self.tension * lanes.along[lane];
        let bending = |lane: usize| self.bending * lanes.across[lane];
        let form = self.rule.form(self.zone);
        // The ellipse by far the most often: without the detour over logarithms or what guards against overflow.
        if form == Form::ELLIPSE {
            most.raise(law, |lane| {
                let (shear, along) = (shear(lane), tension(lane) + bending(lane));
                math::sqrt(shear * shear + along * along)
            });
        } else {
            most.raise(law, |lane| {
                form.utilisation(shear(lane), tension(lane), bending(lane))
            });
        }
    }
}

/// Utilisations so close to 1 are left to the whole check, whose rounding decides.
const CLOSE: f64 = 1e-9;

impl Laws {
    /// The answer, if these loads are among those that the laws were read for.
    #[inline]
    pub(super) fn answer(&self, loads: &Loads) -> Option<CaseAnswer> {
        let mut answer = [CaseAnswer::default()];
        self.answers(&loads.lanes(), &mut answer)
            .then_some(answer[0])
    }

    /// The answers for loads of their kind; false if the whole check has to say of any, and they do not count.
    #[inline]
    pub(super) fn answers<const N: usize>(
        &self,
        lanes: &Lanes<N>,
        answers: &mut [CaseAnswer; N],
    ) -> bool {
        let mut most = Most {
            used: [0.0; N],
            law: [0; N],
            open: [0; N],
        };
        let mut bolt = [0.0; N];
        for (bolt, along) in bolt.iter_mut().zip(lanes.along) {
            *bolt = self.forces.greatest.bolt(self.forces.margin * along);
        }
        for (law, (_, own)) in (1..).zip(&self.of_modes) {
            own.raise(law, lanes, &self.forces, &bolt, &mut most);
        }
        let [of_bolt, of_load] = self.ranges;
        let is_within = |[from, to]: [f64; 2], force: f64| force >= from && force <= to;
        let none_expected = self.of_modes.is_empty();
        let mut open = 0;
        for lane in 0..N {
            let (bolt, used, law) = (bolt[lane], most.used[lane], most.law[lane]);
            // So far above, methods refuse to compare; at nothing, and at the limit, rounding decides.
            let is_plain = is_within(of_bolt, bolt)
                && is_within(of_load, lanes.along[lane])
                && used < 1e5
                && (used - 1.0).abs() > CLOSE
                && (law == 0) == none_expected;
            open |= most.open[lane] | u64::from(!is_plain);
            answers[lane] = CaseAnswer {
                word: if used > 1.0 {
                    Word::DoesNotHold
                } else {
                    self.word
                },
                mode: self.mode_of(law),
                utilisation: Ratio::from(used),
            };
        }
        open == 0
    }

    /// The mode of a law, counted from 1.
    #[inline]
    fn mode_of(&self, law: u64) -> Option<Mode> {
        let place = usize::try_from(law).ok()?.checked_sub(1)?;
        self.of_modes.get(place).map(|(mode, _)| *mode)
    }

    /// The laws of a joint for the kind that these loads are of.
    pub(super) fn of(
        joint: &Joint,
        candidate: &Candidate,
        preload: Option<&JointPreload>,
        loads: &Loads,
    ) -> Option<Self> {
        Reader::new(joint, candidate, preload, loads)?.read()
    }
}

#[cfg(test)]
mod tests;
