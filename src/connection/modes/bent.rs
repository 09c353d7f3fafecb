//! Plates that tilt about an edge, and bend out of their plane between it and their bolts.
//!
//! What tilts as a rigid body is straight. No method here has its bending: beyond a part of its yield nothing is said.

use alloc::vec::Vec;

use super::{Own, Told};
use crate::connection::Connection;
use crate::connection::forces::Edge;
use crate::connection::outline::dot;
use crate::joint::Need;
use crate::strength::check::{Mode, Place};

const MODE: Mode = Mode::GrossSection;
/// Part of its yield at which a plate may be taken for straight: common practice, no source.
const STRAIGHT: f64 = 0.6;

/// What is not known of a plate whose edge presses. The part that is fixed to it may lie farther from the edge than the
/// bolts next to it, but hardly nearer.
pub(super) fn look(
    connection: &Connection,
    own: &Own,
    edge: &Edge,
    told: &mut Vec<(Place, Vec<Told>)>,
) {
    let Some(facts) = own
        .plies
        .iter()
        .find(|facts| facts.name.as_deref() == Some(&edge.ply))
    else {
        return;
    };
    if facts.is_timber {
        let why =
            "the edge that presses bends a ply of timber across its plane: no method here has that";
        told.push((
            facts.place,
            alloc::vec![Told::Missing(MODE, Need::Method(why))],
        ));
        return;
    }
    let plate = connection.plates.iter().find(|plate| plate.ply == edge.ply);
    let nearest = own
        .places
        .iter()
        .copied()
        .min_by(|a, b| dot(*a, edge.up).total_cmp(&dot(*b, edge.up)));
    let (Some(plate), Some(nearest)) = (plate, nearest) else {
        return;
    };
    let need = match (facts.thickness, facts.yields) {
        (Some(thickness), Some(yields)) => {
            let corners = plate.outline.levels(edge.up);
            let arm = dot(nearest, edge.up) - corners.fold(f64::INFINITY, f64::min);
            let factor = connection.joint.load_factor(connection.joint.methods.level);
            let moment = factor * edge.force.value * arm;
            let width = plate
                .outline
                .cut(nearest, edge.up)
                .map(|(from, to)| to - from);
            let bears = width.map(|width| {
                STRAIGHT * yields.value * width * thickness.value * thickness.value / 6.0
            });
            if bears.is_some_and(|bears| moment <= bears) {
                return;
            }
            Need::Method(
                "the edge that presses bends the plate out of its plane by more than it takes to yield, or nearly: no method here \
                 has that",
            )
        }
        (_, None) if facts.has_material => Need::YieldStrength,
        (_, None) => Need::Material,
        (None, _) => {
            Need::Method("plates of a tapped part, or around a sleeve, are not known here")
        }
    };
    told.push((facts.place, alloc::vec![Told::Missing(MODE, need)]));
}
