//! Corrosion of unlike metals in contact.

use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::joint::{Finish, Part};
use crate::strength::check::{Mode, Place};
use crate::tables::galvanic::{AnodicIndex, Exposure, Metal};

const MODE: Mode = Mode::Corrosion;

/// A part in contact, with its metal.
struct Surface {
    part: Part,
    place: Place,
    metal: Option<Metal>,
    /// What is to be said of it, if its metal is not known.
    need: Need,
}

/// Every pair of bolt, nut and plies in contact. Timber is no metal.
pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let Some(exposure) = case.joint.environment.exposure else {
        out.not_concerned(MODE, NotConcerned::Dry);
        return;
    };
    let bolt = Surface {
        part: Part::Bolt,
        place: Place::Bolt(1),
        metal: case.joint.bolt.finish.and_then(Finish::metal),
        need: Need::BoltFinish,
    };
    let nut = case.nut().map(|nut| Surface {
        part: Part::Nut,
        place: Place::Nut,
        metal: nut.given.finish.and_then(Finish::metal),
        need: Need::NutFinish,
    });
    if let Some(nut) = &nut {
        touching(exposure, &bolt, nut, out);
    }
    // The shank touches every ply, the nut the last one, and each ply the next.
    let mut before: Option<Surface> = None;
    let count = case.plies.len();
    for ply in &case.plies {
        if ply.timber.is_some() {
            before = None;
            continue;
        }
        let metal = match (ply.ply, ply.tapped) {
            (Some(ply), _) => ply.metal,
            (None, tapped) => tapped.and_then(|part| part.metal),
        };
        let own = Surface {
            part: Part::Ply(ply.number),
            place: ply.place,
            metal,
            need: Need::Metal,
        };
        touching(exposure, &bolt, &own, out);
        if let Some(nut) = nut.as_ref().filter(|_| ply.number == count) {
            touching(exposure, nut, &own, out);
        }
        if let Some(before) = &before {
            touching(exposure, before, &own, out);
        }
        before = Some(own);
    }
    out.in_order(MODE);
}

fn touching(exposure: Exposure, a: &Surface, b: &Surface, out: &mut Outcomes) {
    let mut row = |surface: &Surface| {
        let row = surface.metal.and_then(AnodicIndex::of);
        if row.is_none() {
            out.missing(MODE, surface.place, surface.need.clone());
        }
        row
    };
    let (Some(first), Some(second)) = (row(a), row(b)) else {
        return;
    };
    let (anode, cathode) = if first.anodic_index >= second.anodic_index {
        (a.part, b.part)
    } else {
        (b.part, a.part)
    };
    let permitted = exposure.permitted();
    let difference = (first.anodic_index - second.anodic_index).abs();
    out.warn(first.cautions());
    out.warn(second.cautions());
    // Indices have two decimals: half a unit of the third keeps 0.40 - 0.25 at 0.15.
    if difference.value > permitted.value + 5e-4 {
        out.find(Finding::Galvanic {
            anode,
            cathode,
            difference,
            permitted,
        });
    }
}
