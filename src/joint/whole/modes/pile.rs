//! Washers on each other: whether each bears on the next, and how hard it is pressed.

use super::seat::Side;
use super::washers::least_hardness;
use crate::caution::{Caution, Cautions};
use crate::joint::JointWasher;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::{Outcomes, Turn};
use crate::joint::whole::{Finding, Need};
use crate::parts::ClampFace;
use crate::strength::check::{Check, Level, Mode};
use crate::strength::surface::{SurfaceContact, spread};
use crate::tables::methods;
use crate::units::{Area, Force, Stress, megapascals};

/// What a washer bears for each unit of its Vickers hardness, as far as anything says so.
///
/// An M12 head at the yield of its bolt presses with 773 MPa on 200 HV (class 8.8), 1135 on 300 (10.9) and 1328 on 380
/// (12.9): 3.5 to 3.9 MPa for each HV in the pairs of ISO 898-3 table 1. It is 1.25 times the tensile strength, some 3.2
/// MPa for each HV (ISO 18265, recalled); VDI 2230 has limits from 0.9 to 1.5 times that of a steel.
const BEARS: Stress = megapascals(4.0);

/// At this a washer gives way for certain: HV is the mean pressure, in kgf/mm2, with which the test makes its dent.
const DENTS: Stress = megapascals(9.806_65);

/// The softest that washers are (ISO 898-3): what one bears of which nobody says how hard it is.
const SOFTEST: f64 = 100.0;

/// The face that presses on what lies under the pile, or on its last washer: no wider than the pile lets it be. None if
/// it is not known, or if something falls into the hole of the next.
pub(super) fn last_face(
    case: &Case,
    side: &Side,
    force: Force,
    out: &mut Outcomes,
) -> Option<ClampFace> {
    const MODE: Mode = Mode::Pressure;
    let place = side.place;
    let face = match side.face {
        Ok(face) => *face,
        Err(error) => {
            out.missing(MODE, place, Need::Refused(error.clone().into()));
            return None;
        }
    };
    let pile = case.washers_at(place);
    let mut presses = face;
    let mut narrowest = face;
    let mut upper = None;
    for (number, &own) in (1..).zip(&pile) {
        let Some(washer) = case.washer_face(own) else {
            // Of the one on the ply its own check says so.
            if number < pile.len() {
                out.missing(MODE, place, Need::Washer);
            }
            break;
        };
        let over = ClampFace {
            outer_min: presses.outer_min.min(washer.outer_min),
            ..presses
        };
        let contact = SurfaceContact::under(&over, washer.inner_max);
        let contact = out.attempt(MODE, place, contact)?;
        let Some(area) = contact.area() else {
            out.find(Finding::FallsThrough {
                place,
                face: contact.outer,
                hole: contact.inner,
            });
            return None;
        };
        for pressed in [upper, Some(own)].into_iter().flatten() {
            pressed_washer(side, pressed, force, area, out);
        }
        narrowest.outer_min = face.outer_min.min(presses.outer_min);
        presses = ClampFace {
            outer_min: spread(&presses, &washer),
            inner_max: Some(washer.inner_max),
            ..face
        };
        upper = Some(own);
    }
    Some(narrowest)
}

/// Whether a washer bears what presses on it. Only a washer that does not is shown: the limits are too rough to stand
/// beside others as a share of them.
fn pressed_washer(side: &Side, washer: &JointWasher, force: Force, area: Area, out: &mut Outcomes) {
    const MODE: Mode = Mode::Pressure;
    let place = side.place;
    let pressure = Stress::from(force / area);
    let least = least_hardness(washer).unwrap_or(SOFTEST);
    out.turns_at(Turn::Bolt(least * BEARS * area));
    if let Some(hardness) = washer.hardness {
        out.turns_at(Turn::Bolt(hardness * DENTS * area));
    }
    if pressure <= least * BEARS {
        return;
    }
    let Some(hardness) = washer.hardness else {
        // It may be harder than what its style has at least.
        out.missing(MODE, place, Need::WasherHardness);
        return;
    };
    if pressure <= hardness * DENTS {
        let why = "its washer is pressed harder, for its hardness, than in any pair of ISO 898-3: no rule here says that \
                   it bears that";
        out.missing(MODE, place, Need::Method(why));
        return;
    }
    let method = methods::PRESSURE_OF_THE_HARDNESS_TEST;
    let check = Check::new(
        MODE,
        place,
        pressure,
        hardness * DENTS,
        Level::Nominal,
        method,
    );
    let check =
        check.map(|check| check.warned(Cautions::default().with(Caution::of_method(method))));
    out.try_check(MODE, place, check);
}
