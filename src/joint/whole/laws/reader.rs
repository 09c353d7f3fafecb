//! Reading the laws: the whole check at small loads of one kind, and once more at ordinary ones.

use alloc::vec::Vec;

use super::{CLOSE, Forces, Law, Laws, Loads, Together};
use crate::joint::Candidate;
use crate::joint::whole::outcome::Turn;
use crate::joint::whole::{Joint, JointLoad, JointPreload, Slip, Verdict, Word};
use crate::math;
use crate::parts::Zone;
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::{Check, Mode, Place};
use crate::tables::methods;

/// Reads the laws of one kind of load.
pub(super) struct Reader {
    joint: Joint,
    /// The load of the joint as it was given: shock, factors, cycles.
    usual: JointLoad,
    candidate: Candidate,
    forces: Forces,
    /// Small loads of the kind.
    small: Loads,
}

impl Reader {
    pub(super) fn new(
        joint: &Joint,
        candidate: &Candidate,
        preload: Option<&JointPreload>,
        loads: &Loads,
    ) -> Option<Self> {
        // Whether the faces slip counts for locks as well: both must be in what the word speaks of.
        let slips = matches!(joint.methods.slip, Slip::Resisted(_)) && loads.across > 0.0;
        if slips && !joint.scope.covers(Mode::Slip) {
            return None;
        }
        let forces = Forces::of(joint, preload)?;
        // A twentieth of the preload: far from parting, and enough to be told from rounding.
        let pull = match preload {
            Some(preload) if preload.in_service.value > 0.0 => {
                0.05 * preload.in_service.value / forces.margin
            }
            _ => 1.0,
        };
        let given = |acts: bool, load: f64| if acts { load } else { 0.0 };
        let across = given(loads.across > 0.0, 1.0);
        let along = given(loads.along > 0.0, pull);
        let small = Loads {
            across,
            along,
            across_least: if loads.across_least < 0.0 {
                -0.5 * across
            } else if loads.across_least < loads.across {
                0.25 * across
            } else {
                across
            },
            along_least: if loads.along_least < loads.along {
                along - pull
            } else {
                along
            },
        };
        (small.kind() == loads.kind()).then_some(Self {
            usual: joint.load,
            joint: joint.clone(),
            candidate: *candidate,
            forces,
            small,
        })
    }

    /// The whole check under some loads, and at which loads its outcomes change.
    fn run(&mut self, loads: &Loads) -> Option<(Verdict, Vec<Turn>)> {
        self.joint.load = loads.case().of(&self.usual);
        self.joint.turns(&self.candidate).ok()
    }

    pub(super) fn read(mut self) -> Option<Laws> {
        let small = self.small;
        let (verdict, turns) = self.run(&small)?;
        let bolt = self.forces.greatest(&small);
        let mut ranges = [[f64::NEG_INFINITY, f64::INFINITY]; 2];
        for turn in turns {
            let (range, at, turn) = match turn {
                Turn::Bolt(force) => (&mut ranges[0], bolt, force.value),
                Turn::Along(load) => (&mut ranges[1], small.along, load.value),
            };
            if turn <= at {
                range[0] = range[0].max(turn * (1.0 + CLOSE));
            } else {
                range[1] = range[1].min(turn * (1.0 - CLOSE));
            }
        }
        let mut laws = Vec::with_capacity(verdict.checks.len());
        for check in &verdict.checks {
            laws.push((check.mode, self.law(&verdict, check, bolt)?));
        }
        // Which of equals comes first is that of the check.
        let laws = Laws {
            word: without_loads(&verdict),
            of_modes: laws,
            forces: self.forces,
            ranges,
        };
        self.confirms(&laws)?;
        Some(governing_only(laws))
    }

    fn law(&mut self, verdict: &Verdict, check: &Check, bolt: f64) -> Option<Law> {
        let used = check.utilisation.value;
        let Loads { across, along, .. } = self.small;
        let over = |load: f64| (load > 0.0).then(|| used / load);
        Some(match check.mode {
            Mode::Tightening | Mode::Preload | Mode::Distances | Mode::Holes => Law::Fixed(used),
            Mode::Bearing if !check.proportional => Law::AcrossRoot(over(math::sqrt(across))?),
            Mode::TearOut if !check.proportional => self.around_pin(verdict, check)?,
            // A pin has shear and bending together in one check.
            Mode::Combined if check.method == self.joint.methods.interaction.method() => {
                self.together(verdict)
            }
            Mode::Combined
            | Mode::BoltShear
            | Mode::Bearing
            | Mode::TearOut
            | Mode::BoltBearing
            | Mode::BoltBending
            | Mode::NetSection
            | Mode::GrossSection
            | Mode::BlockShear
            | Mode::TimberYield => Law::Across(over(across)?),
            Mode::BoltTension if goes_with_bolt(check) => Law::Bolt(over(bolt)?),
            Mode::BoltTension | Mode::Separation | Mode::PullThrough => Law::Along(over(along)?),
            Mode::Pressure | Mode::Stripping => Law::Bolt(over(bolt)?),
            Mode::Slip => self.slip(check)?,
            Mode::Fatigue => self.fatigue(check)?,
            _ => return None,
        })
    }

    fn together(&self, verdict: &Verdict) -> Law {
        let Loads { across, along, .. } = self.small;
        let most = |mode: Mode| {
            let of_mode = verdict.checks.iter().filter(move |check| {
                check.mode == mode && !(mode == Mode::BoltTension && goes_with_bolt(check))
            });
            of_mode
                .map(|check| check.utilisation.value)
                .fold(0.0, f64::max)
        };
        let each = |used: f64, load: f64| if load > 0.0 { used / load } else { 0.0 };
        let mut planes = self.joint.stack.planes_of(&self.candidate);
        Law::Together(Together {
            rule: self.joint.methods.interaction,
            zone: if planes.any(|plane| plane.worst != Zone::Shank) {
                Zone::Thread
            } else {
                Zone::Shank
            },
            shear: each(most(Mode::BoltShear), across),
            tension: each(most(Mode::BoltTension), along),
            bending: each(most(Mode::BoltBending), across),
        })
    }

    /// The end or side of a plate around a pin: a part for the hole, and one for the load.
    fn around_pin(&mut self, verdict: &Verdict, check: &Check) -> Option<Law> {
        let small = self.small;
        let most = verdict.checks.iter();
        let most = most.filter(|own| own.mode == Mode::BoltShear || own.mode == Mode::Bearing);
        let most = most.filter(|own| own.proportional);
        let most = most.map(|own| own.utilisation.value).fold(1e-12, f64::max);
        let times = 0.5 / most;
        let large = Loads {
            across: times * small.across,
            across_least: times * small.across_least,
            ..small
        };
        let (other, _) = self.run(&large)?;
        let is_alike = |own: &&Check| {
            own.mode == check.mode
                && own.place == check.place
                && own.method == check.method
                && own.resistance == check.resistance
        };
        // Where the side is as far as the end, the two are alike in all of this; their order stays.
        let before = verdict.checks.iter();
        let before = before.take_while(|own| !core::ptr::eq(*own, check));
        let place = before.filter(is_alike).count();
        let own = other.checks.iter().filter(is_alike).nth(place)?;
        let used = check.utilisation.value;
        let per = (own.utilisation.value - used) / (large.across - small.across);
        Some(Law::AcrossFrom {
            start: used - per * small.across,
            per,
        })
    }

    fn slip(&mut self, check: &Check) -> Option<Law> {
        let small = self.small;
        let used = check.utilisation.value;
        if small.along <= 0.0 {
            return Some(Law::Slip {
                across: used / small.across,
                along: 0.0,
            });
        }
        // An ellipse is flat at small loads, and looks like a line.
        if matches!(self.joint.methods.slip, Slip::Resisted(method) if method.is_ellipse()) {
            return None;
        }
        let free = Loads {
            along: 0.0,
            along_least: (small.along_least - small.along).min(0.0),
            ..small
        };
        let (other, _) = self.run(&free)?;
        let mut alike = other.checks.iter();
        let alike = alike.find(|own| own.mode == Mode::Slip && own.place == check.place)?;
        let free = alike.utilisation.value;
        Some(Law::Slip {
            across: free / small.across,
            along: (1.0 - free / used) / small.along,
        })
    }

    fn fatigue(&mut self, check: &Check) -> Option<Law> {
        let small = self.small;
        let used = check.utilisation.value;
        let over = |load: f64| (load > 0.0).then(|| used / load);
        if matches!(check.place, Place::Plane(_)) {
            return Some(Law::AcrossSwing(over(small.across - small.across_least)?));
        }
        let [least, greatest] = self.forces.swing(&small);
        let springs = self.forces.preloaded;
        if check.method != methods::GOODMAN {
            let whole = matches!(self.joint.methods.tension, TensionMethod::Aisc360 { .. });
            if !springs || whole {
                return Some(Law::AlongSwing(over(greatest - least)?));
            }
            let spring = &self.forces.least;
            let change = spring.bolt(greatest) - spring.bolt(least);
            return Some(Law::BoltSwing(over(change)?));
        }
        // With as much pressure as pull the mean is the preload: what is left is the amplitude.
        let even = Loads {
            along_least: -small.along.max(small.along - small.along_least),
            ..small
        };
        let (other, _) = self.run(&even)?;
        let mut alike = other.checks.iter();
        let alike = alike.find(|own| own.method == check.method)?;
        let forces = &self.forces;
        let parts = |loads: &Loads| forces.greatest.half_and_above(forces.swing(loads));
        let [half, _] = parts(&even);
        let amplitude = alike.utilisation.value / half;
        let [half, above] = parts(&small);
        Some(Law::Goodman {
            amplitude,
            mean: if above > 0.0 {
                (used - amplitude * half) / above
            } else {
                0.0
            },
        })
    }

    /// Whether other loads of the kind, of ordinary size, give what the laws say of them: every utilisation, and the
    /// word.
    fn confirms(&mut self, laws: &Laws) -> Option<()> {
        let small = self.small;
        let most = |family: fn(&Law) -> Option<f64>| {
            let all = laws.of_modes.iter().filter_map(|(_, law)| family(law));
            all.fold(0.0, f64::max)
        };
        let across = most(|law| match law {
            Law::Across(per) => Some(*per),
            Law::Slip { across, .. } => Some(*across),
            _ => None,
        });
        let along = most(|law| match law {
            Law::Along(per) => Some(*per),
            _ => None,
        });
        // Somewhat below what is borne, and within what the preload holds together.
        let times = [
            if across > 0.0 {
                0.55 / across / small.across
            } else {
                3.0
            },
            if self.forces.preloaded || along <= 0.0 {
                2.3
            } else {
                0.55 / along / small.along
            },
        ];
        let usual = Loads {
            across: times[0] * small.across,
            across_least: 0.9 * times[0] * small.across_least.min(small.across),
            along: times[1] * small.along,
            along_least: times[1] * (small.along_least + 0.2 * (small.along - small.along_least)),
        };
        let usual = Loads {
            across_least: if small.across_least < small.across {
                usual.across_least
            } else {
                usual.across
            },
            ..usual
        };
        if usual.kind() != small.kind() {
            return None;
        }
        let (verdict, _) = self.run(&usual)?;
        let bolt = self.forces.greatest(&usual);
        let mut used = Vec::with_capacity(laws.of_modes.len());
        for (_, law) in &laws.of_modes {
            used.push(law.at(&usual, &self.forces)?);
        }
        used.sort_by(|a, b| b.total_cmp(a));
        let checks = verdict.checks.iter().map(|check| check.utilisation.value);
        let agree = used.len() == verdict.checks.len()
            && used
                .iter()
                .zip(checks)
                .all(|(law, check)| (law - check).abs() <= CLOSE * check);
        let inside = [bolt, usual.along]
            .iter()
            .zip(laws.ranges)
            .all(|(force, [from, to])| (from..=to).contains(force));
        (!inside || agree && without_loads(&verdict) == laws.word).then_some(())
    }
}

/// Whether a check of the bolt in tension holds the greatest force of it against something, not the load alone.
fn goes_with_bolt(check: &Check) -> bool {
    [
        methods::JOINT_DIAGRAM,
        methods::JOINT_DIAGRAM_BOUNDS,
        methods::HEAD_PROOF_STATED,
    ]
    .contains(&check.method)
}

/// The word, had every load been borne.
fn without_loads(verdict: &Verdict) -> Word {
    if verdict.faults().next().is_some() {
        Word::DoesNotHold
    } else if verdict.open().next().is_some() {
        Word::Undecided
    } else {
        Word::Holds
    }
}

/// Of those that go alike with the load, the one that governs: the first of equals.
fn governing_only(all: Laws) -> Laws {
    let mut kept: Vec<(Mode, Law)> = Vec::with_capacity(8);
    for (mode, law) in all.of_modes {
        let alike = kept.iter_mut().find(|(_, own)| own.is_like(&law));
        match (alike, law.per()) {
            (Some(own), Some(per)) => {
                if own.1.per().is_some_and(|own| per > own) {
                    *own = (mode, law);
                }
            }
            _ => kept.push((mode, law)),
        }
    }
    Laws {
        of_modes: kept,
        ..all
    }
}

#[cfg(test)]
mod tests;
