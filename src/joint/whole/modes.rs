//! The modes: one function each, from the case and what earlier ones worked out, to outcomes.
//!
//! Every mode says something in every verdict: figures, a fault, that it is in order, what is missing, or why it is
//! not concerned. It asks only for what it needs, for each ply and plane by itself.

use super::JointPreload;
use super::case::Case;
use super::outcome::Outcomes;
use crate::error::Error;
use crate::joint::NutOption;

mod aircraft;
mod bending;
mod between;
mod block;
mod clamp;
mod coating;
mod combined;
mod corrosion;
mod fatigue;
mod holes;
mod length;
mod loads;
mod nut;
mod pile;
mod plies;
mod preload;
mod seat;
mod shear;
mod springs;
mod strip;
mod temperature;
mod tension;
mod timber;
mod washers;

/// Codes give their stresses to grades that they list.
const CODE_OF_LISTED: &str = "the code gives its stresses to listed grades, and the strengths of the bolt are stated: machine design takes them";

/// What modes hand on to later ones.
pub(super) struct Worked {
    pub(super) preload: Option<JointPreload>,
    pub(super) nut: Option<NutOption>,
}

/// Every mode in its order.
pub(super) fn run(case: &Case, out: &mut Outcomes) -> Result<Worked, Error> {
    loads::check(case, out);
    length::check(case, out);
    let shear = shear::check(case, out);
    let bending = bending::check(case, out);
    let springs = springs::springs(case, out)?;
    let preload = preload::check(case, springs.as_ref(), out);
    let tension = tension::check(case, springs.as_ref(), preload.as_ref(), out);
    combined::check(case, &shear, &bending, &tension, out);
    fatigue::check(case, springs.as_ref(), preload.as_ref(), out);
    let faces_held = clamp::check(case, springs.as_ref(), preload.as_ref(), out);
    plies::check(case, &shear, out);
    block::check(case, out);
    timber::check(case, out);
    seat::check(case, &tension, out);
    strip::check(case, &tension, out);
    let nut = nut::check(case, faces_held, out)?;
    temperature::check(case, out);
    coating::check(case, out);
    corrosion::check(case, out);
    aircraft::check(case, out);
    Ok(Worked { preload, nut })
}
