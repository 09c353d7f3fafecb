//! The steps that a joint asks for.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};
use core::fmt::Write;

use super::{SheetStep, SheetWasher};
use crate::error::Error;
use crate::joint::report::length_name;
use crate::joint::whole::{Joint, Pattern, Verdict};
use crate::joint::{JointPly, JointWasher, LeastProtrusion, ScrewLocking, TappedPart, reuse};
use crate::material::Finish;
use crate::parts::{Locking, Nut};
use crate::preload::PreloadTarget;
use crate::thread::Thread;
use crate::units::{Angle, Force, Length, UnitSystem, degrees, shown};

/// A mark that moved so far is plain to see: common practice, no source.
const MARK: Angle = degrees(10.0);

/// What locks the nut, if there is one.
pub(super) fn locking(joint: &Joint) -> Option<Locking> {
    let own = joint.own.nut.as_ref().map(|nut| nut.locking);
    own.or_else(|| joint.nut.map(|nut| nut.style.locking()))
}

/// Bolt and nut as they are ordered: thread, length, product, grade and coating.
pub(in crate::joint) fn bolt_and_nut(
    joint: &Joint,
    length: Length,
) -> Result<(String, Option<String>), Error> {
    let thread = joint.bolt.thread;
    let coat =
        |finish: Option<Finish>| finish.map_or_else(String::new, |finish| format!(", {finish}"));
    let bolt = format!(
        "{thread} x {} {}, {}{}",
        length_name(length, thread.is_unified()),
        joint
            .own
            .screw
            .as_ref()
            .map_or_else(|| joint.bolt.product.to_string(), |own| own.name.clone()),
        joint
            .own
            .strength
            .as_ref()
            .map_or_else(|| joint.bolt.grade.to_string(), |own| own.name.clone()),
        coat(joint.bolt.finish),
    );
    let nut = match joint.nut {
        None => {
            let own = joint.own.nut.as_ref();
            own.map(|nut| format!("{}{}", nut.name, coat(nut.finish)))
        }
        Some(nut) => {
            let grade = nut.grade.map(|grade| format!(", {grade}"));
            let (row, grade) = (Nut::find(nut.style, &thread)?, grade.unwrap_or_default());
            Some(format!("{row}{grade}{}", coat(nut.finish)))
        }
    };
    Ok((bolt, nut))
}

/// A tapped part, and the insert that must be in it.
fn part_name(part: &TappedPart) -> String {
    match part.insert() {
        None => part.name.clone(),
        Some(length) => format!("{} (with an insert of wire, {length})", part.name),
    }
}

/// From which side the bolt goes in, and what goes on it.
pub(super) fn parts(joint: &Joint, verdict: &Verdict) -> Result<[SheetStep; 2], Error> {
    let (thread, stack, candidate) = (joint.bolt.thread, &joint.stack, &verdict.candidate);
    let name = |ply: Option<&JointPly>| ply.map_or_else(String::new, |ply| ply.name.clone());
    let tapped = stack.tapped_part();
    let side = SheetStep::Side {
        head: name(stack.plies().first()),
        end: tapped.map_or_else(|| name(stack.plies().last()), part_name),
        tapped: tapped.is_some(),
    };
    let (bolt, nut) = bolt_and_nut(joint, candidate.screw.nominal)?;
    let washer = |washer: &JointWasher, count: usize| SheetWasher {
        count,
        name: washer_name(washer, &thread),
        thickness: washer.thickness,
    };
    let [under_head, under_nut] = stack.washers_of(candidate);
    let under_head = under_head.map(|(own, count)| washer(own, count)).collect();
    let under_nut = under_nut.map(|(own, count)| washer(own, count)).collect();
    let parts = SheetStep::Parts {
        bolt,
        nut,
        washers_under_head: together(under_head),
        washers_under_nut: together(under_nut),
    };
    Ok([side, parts])
}

/// What is ordered: a hardness that is stated may be what the verdict rests on, and a washer of no style is known by its
/// sizes.
fn washer_name(washer: &JointWasher, thread: &Thread) -> String {
    let mut name = match washer.style {
        Some(style) => format!("{style}, {thread}"),
        None => washer.name.to_string(),
    };
    let system = if thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    if let (None, Some(outside)) = (washer.style, washer.outside) {
        let _ = write!(name, ", {} wide", shown(outside, system));
    }
    if let (None, Some(inside)) = (washer.style, washer.inside) {
        let _ = write!(name, ", hole {}", shown(inside, system));
    }
    if let Some(hardness) = washer.hardness {
        let _ = write!(name, ", {hardness} HV");
    }
    name
}

/// Washers of one kind that lie on each other are counted together.
fn together(washers: Vec<SheetWasher>) -> Vec<SheetWasher> {
    let mut counted: Vec<SheetWasher> = Vec::with_capacity(washers.len());
    for washer in washers {
        match counted.last_mut() {
            Some(last) if last.name == washer.name && last.thickness == washer.thickness => {
                last.count += washer.count;
            }
            _ => counted.push(washer),
        }
    }
    counted
}

pub(super) fn tightening(
    joint: &Joint,
    verdict: &Verdict,
    locking: Option<Locking>,
    assembly: &mut Vec<SheetStep>,
) {
    let prevailing = verdict.preload.and_then(|preload| preload.prevailing);
    match prevailing {
        Some(torque) => assembly.push(SheetStep::CheckRunningTorque { torque }),
        None if verdict.preload.is_some()
            && (matches!(locking, Some(Locking::Insert | Locking::AllMetal))
                || joint.stack.tapped_part().is_some_and(TappedPart::drags)) =>
        {
            assembly.push(SheetStep::AddRunningTorque);
        }
        None => {}
    }
    match (joint.torque(), verdict.preload) {
        (Some(torque), Some(preload)) => {
            let k = torque.nut_factor;
            if matches!(torque.target, PreloadTarget::AiscJ31 { .. }) {
                assembly.push(SheetStep::ProveTorque);
            }
            if joint.pattern != Pattern::Single {
                assembly.push(SheetStep::InTwoRounds);
            }
            assembly.push(SheetStep::Tighten {
                torque: preload.torque,
                preload: preload.preload,
                nut_factor: [k.min(), k.nominal(), k.max()],
                nut_is_turned: joint.nut.is_some(),
            });
            assembly.push(SheetStep::WrenchRange);
        }
        _ if joint.tightening.is_none() => assembly.push(SheetStep::AskForTightening),
        _ if joint.stack.open_gaps().next().is_some() => {
            assembly.push(SheetStep::TightenOverGap);
        }
        _ => assembly.push(SheetStep::TightenSnug),
    }
    if locking == Some(Locking::Slotted) {
        assembly.push(match verdict.preload {
            Some(_) => SheetStep::FitPin,
            None => SheetStep::FitPinByHand,
        });
    }
}

/// The play that a joint keeps which nothing clamps: at the fit-up its plies are pulled together, and the nut goes back
/// as far afterwards.
pub(super) fn play_kept(joint: &Joint) -> Length {
    let none = Length::default();
    if joint.torque().is_some() && !joint.environment.rotates {
        return none;
    }
    let gaps = joint.stack.gaps().iter();
    gaps.fold(none, |sum, gap| sum + gap.width.max)
}

/// How far the end must reach; none in a tapped part of which nobody says how much thread is to be filled.
pub(super) fn protrusion(joint: &Joint) -> Option<SheetStep> {
    if let Some(part) = joint.stack.tapped_part() {
        return Some(SheetStep::Engagement {
            least: part.engagement?,
            depth: part.depth(),
        });
    }
    let pitch = joint.bolt.thread.pitch();
    let by_rules = joint.rules.least_protrusion_pitches() * pitch;
    let lock = locking(joint).and_then(LeastProtrusion::of);
    let by_lock = lock.map(|lock| lock.length(&joint.bolt.thread));
    Some(SheetStep::Protrusion {
        least: by_lock.map_or(by_rules, |length| length.max(by_rules)),
        most: joint.rules.protrusion_max_pitches.map(|most| most * pitch),
        pitch,
    })
}

/// What a mark shows of the preload, if there is one.
pub(super) fn preload_inspection(
    joint: &Joint,
    verdict: &Verdict,
) -> Result<Vec<SheetStep>, Error> {
    let Some(preload) = verdict.preload else {
        return Ok(Vec::new());
    };
    let first = if is_glued(joint) {
        SheetStep::FirstLookAtMarks
    } else {
        SheetStep::FirstLook
    };
    let mut steps = Vec::from([first, SheetStep::MovedMark]);
    if let Some(springs) = preload.springs {
        // The least preload is gone first.
        let loosened = springs.loosened(preload.preload.min, MARK)?;
        steps.push(SheetStep::MarkMeans { loosened });
    }
    if preload.settling_loss > Force::default() {
        let loss = preload.settling_loss;
        steps.push(SheetStep::Settling { loss });
    }
    let target = joint.torque().map(|torque| torque.target);
    let again = reuse(joint.bolt.grade, joint.bolt.finish, target).may_be_slackened();
    steps.extend([
        SheetStep::MarkShowsRotationOnly,
        if is_glued(joint) {
            SheetStep::LeaveGlued
        } else if again {
            SheetStep::Retorque
        } else {
            SheetStep::TorqueWithoutSlackening
        },
    ]);
    Ok(steps)
}

pub(super) fn is_glued(joint: &Joint) -> bool {
    let part = joint.stack.tapped_part();
    part.is_some_and(|part| part.lock == Some(ScrewLocking::Adhesive))
}
