//! What cannot be a stack, and is refused.

use alloc::{format, vec::Vec};

use super::{Gap, HeadSeat, JointMaterial, JointPly, JointTimber, NutWashers, Parts, Sleeve};
use crate::error::{
    Allowed, Error, at_most, not_negative, out_of_range, positive, sane_length, sane_text, within,
};
use crate::spread::{Spread, ordered, sane_spread};
use crate::units::{Length, SAME_LENGTH, degrees};

/// Refuses what contradicts itself, and brings planes, gaps and sleeves into order.
pub(super) fn checked(parts: &mut Parts) -> Result<(), Error> {
    counts(parts)?;
    thicknesses(parts)?;
    sort_planes(parts)?;
    gaps(parts)?;
    sleeves(parts)?;
    recesses(parts)?;
    tapped(parts)
}

fn counts(parts: &Parts) -> Result<(), Error> {
    const MOST_WASHERS: usize = 100;
    const MOST_PLIES: usize = 1000;
    let at_nut = parts
        .washers_under_nut
        .as_ref()
        .map_or(0, |washers| washers.count);
    for (quantity, count, most) in [
        ("number of plies", parts.plies.len(), MOST_PLIES),
        (
            "number of washers under the head",
            parts.washers_under_head.len(),
            MOST_WASHERS,
        ),
        ("number of washers under the nut", at_nut, MOST_WASHERS),
        (
            "number of other washers under the nut",
            parts.other_washers_under_nut.len(),
            MOST_WASHERS,
        ),
    ] {
        at_most(quantity, count, most)?;
    }
    for ply in &parts.plies {
        sane_text("name of a ply", &ply.name)?;
    }
    if parts.plies.is_empty() {
        return Err(out_of_range(
            "number of plies",
            0_usize,
            Allowed::AtLeast(1_usize.into()),
        ));
    }
    Ok(())
}

fn thicknesses(parts: &Parts) -> Result<(), Error> {
    for ply in &parts.plies {
        sane_spread("thickness", ply.thickness).map_err(|error| named(error, &ply.name))?;
        if ply.crush != Length::default() {
            not_negative("crush", ply.crush)
                .and_then(|_| sane_length("thickness when crushed", ply.clamped().min))
                .map_err(|error| named(error, &ply.name))?;
        }
        details(ply)?;
    }
    let washers = parts.washers_under_head.iter();
    for washer in washers.chain(&parts.other_washers_under_nut) {
        sane_spread("thickness", washer.thickness).map_err(|error| named(error, &washer.name))?;
    }
    if let Some(NutWashers { washer, .. }) = &parts.washers_under_nut {
        sane_spread("thickness of the washer under the nut", washer.thickness)?;
    }
    if let Some(washer) = &parts.washer_to_add_under_head {
        sane_spread(
            "thickness of the washer to add under the head",
            washer.thickness,
        )?;
    }
    let all = parts
        .washers_under_head
        .iter()
        .chain(&parts.other_washers_under_nut);
    let all = all.chain(parts.washer_to_add_under_head.as_ref());
    let at_nut = parts
        .washers_under_nut
        .as_ref()
        .map(|washers| &washers.washer);
    for washer in all.chain(at_nut) {
        for (quantity, length) in [
            ("outside diameter", washer.outside),
            ("inside diameter", washer.inside),
        ] {
            if let Some(length) = length {
                sane_length(quantity, length).map_err(|error| named(error, &washer.name))?;
            }
        }
        if let Some(hardness) = washer.hardness {
            within("Vickers hardness", hardness, 1.0, 3000.0)
                .map_err(|error| named(error, &washer.name))?;
        }
    }
    Ok(())
}

/// Lengths of a ply that make no sense, and a ply of two materials.
fn details(ply: &JointPly) -> Result<(), Error> {
    for (quantity, length) in [
        ("hole", ply.hole),
        ("length of the slot", ply.slot.map(|slot| slot.length)),
        ("end distance", ply.end_distance),
        ("edge distance", ply.edge_distance),
        ("pitch", ply.pitch),
        ("gauge", ply.gauge),
        ("width", ply.width),
    ] {
        if let Some(length) = length {
            sane_length(quantity, length).map_err(|error| named(error, &ply.name))?;
        }
    }
    for (quantity, strength) in [
        ("bearing strength", ply.bearing_strength),
        ("yield strength in bearing", ply.bearing_yield),
    ] {
        if let Some(strength) = strength {
            positive(quantity, strength).map_err(|error| named(error, &ply.name))?;
        }
    }
    if let (Some(breaks), Some(yields)) = (ply.bearing_strength, ply.bearing_yield) {
        if yields > breaks {
            let allowed = Allowed::AtMost(breaks.into());
            return Err(named(
                out_of_range("yield strength in bearing", yields, allowed),
                &ply.name,
            ));
        }
    }
    if let Some(angle) = ply.grain_angle {
        let most = degrees(90.0);
        if !(degrees(0.0)..=most).contains(&angle) {
            let allowed = Allowed::FromTo(degrees(0.0).into(), most.into());
            return Err(named(
                out_of_range("grain angle", angle, allowed),
                &ply.name,
            ));
        }
    }
    if let Some(JointMaterial::Own(own)) = &ply.material {
        own.checked().map_err(|error| named(error, &ply.name))?;
        let nominal = ply.thickness.nominal;
        let from = own
            .thickness_from
            .is_some_and(|from| nominal < from - SAME_LENGTH);
        let thru = own
            .thickness_thru
            .is_some_and(|thru| nominal > thru + SAME_LENGTH);
        if from || thru {
            return Err(Error::Mismatch(format!(
                "\"{}\" is outside the thicknesses that the strengths of {} are stated for",
                ply.name, own.name
            )));
        }
    }
    if let Some(JointTimber::Own(own)) = &ply.timber {
        own.checked().map_err(|error| named(error, &ply.name))?;
    }
    if let (Some(material), Some(timber)) = (&ply.material, &ply.timber) {
        return Err(Error::Mismatch(format!(
            "\"{}\" is said to be of {material} and of {timber}",
            ply.name
        )));
    }
    if let (Some(_), Some(material), None) = (ply.grain_angle, &ply.material, &ply.timber) {
        return Err(Error::Mismatch(format!(
            "\"{}\" is said to be of {material}, and to have a grain angle",
            ply.name
        )));
    }
    match (ply.slot, ply.hole) {
        (Some(_), None) => Err(Error::Mismatch(format!(
            "the slot of \"{}\" has a length and no width: give the hole",
            ply.name
        ))),
        (Some(slot), Some(width)) if slot.length < width => Err(Error::Mismatch(format!(
            "the slot of \"{}\" is shorter than it is wide",
            ply.name
        ))),
        _ => Ok(()),
    }
}

/// Brings planes into order, their shares with them, and refuses those that are none.
fn sort_planes(parts: &mut Parts) -> Result<(), Error> {
    parts.shear_planes.sort_unstable();
    let planes = &parts.shear_planes;
    // A plane lies between two plies, or between the last ply and a tapped part.
    let last = parts.plies.len() - usize::from(parts.tapped_part.is_none());
    if let Some(&plane) = planes.iter().find(|plane| !(1..=last).contains(*plane)) {
        return Err(if last == 0 {
            Error::Mismatch(format!(
                "shear plane {plane}: a stack of one ply has no shear plane"
            ))
        } else {
            out_of_range(
                "shear plane",
                plane,
                Allowed::FromTo(1_usize.into(), last.into()),
            )
        });
    }
    if let Some([twice, _]) = planes.windows(2).find(|pair| pair.first() == pair.last()) {
        return Err(Error::Mismatch(format!(
            "shear plane {twice} is given twice"
        )));
    }
    Ok(())
}

fn gaps(parts: &mut Parts) -> Result<(), Error> {
    parts.gaps.sort_by_key(|gap| gap.after_ply);
    let last = parts.plies.len() - usize::from(parts.tapped_part.is_none());
    for gap in &parts.gaps {
        ordered("width of a gap", gap.width)?;
        sane_length("greatest width of a gap", gap.width.max)?;
        if !(1..=last).contains(&gap.after_ply) {
            return Err(Error::Mismatch(format!(
                "gap after ply {}: a gap lies between two plies",
                gap.after_ply
            )));
        }
    }
    let twice = |pair: &&[Gap]| matches!(pair, [one, other] if one.after_ply == other.after_ply);
    if let Some([gap, _]) = parts.gaps.windows(2).find(twice) {
        return Err(Error::Mismatch(format!(
            "gap after ply {} is given twice",
            gap.after_ply
        )));
    }
    Ok(())
}

fn sleeves(parts: &mut Parts) -> Result<(), Error> {
    if parts.sleeves.is_empty() {
        return Ok(());
    }
    parts.sleeves.sort_by_key(|sleeve| sleeve.first_ply);
    let plies = parts.plies.len();
    for sleeve in &parts.sleeves {
        let (first, last) = (sleeve.first_ply, sleeve.last_ply);
        sane_spread("length", sleeve.length).map_err(|error| named(error, &sleeve.name))?;
        if first < 1 || last < first || last > plies {
            return Err(Error::Mismatch(format!(
                "sleeve \"{}\" from ply {first} to ply {last}: the stack has {plies}",
                sleeve.name
            )));
        }
        let inside = |plane: &&usize| (first..last).contains(*plane);
        if let Some(plane) = parts.shear_planes.iter().find(inside) {
            return Err(Error::Mismatch(format!(
                "shear plane {plane} cuts the sleeve \"{}\", not the bolt",
                sleeve.name
            )));
        }
        let recessed = first == 1 && parts.head_seat != HeadSeat::Flat
            || last == plies && parts.spot_face_under_nut.is_some();
        if recessed {
            return Err(Error::Mismatch(format!(
                "head or nut is recessed into a ply around the sleeve \"{}\": it clamps the sleeve",
                sleeve.name
            )));
        }
    }
    let overlap = |pair: &&[Sleeve]| matches!(pair, [one, next] if next.first_ply <= one.last_ply);
    if let Some([one, two]) = parts.sleeves.windows(2).find(overlap) {
        return Err(Error::Mismatch(format!(
            "sleeves \"{}\" and \"{}\" lie in the same ply",
            one.name, two.name
        )));
    }
    let around: Vec<Spread<Length>> = (parts.sleeves.iter())
        .map(|sleeve| parts.around_sleeve(sleeve))
        .collect();
    for (sleeve, around) in parts.sleeves.iter_mut().zip(around) {
        sleeve.play = sleeve.length.less(around);
    }
    Ok(())
}

fn recesses(parts: &Parts) -> Result<(), Error> {
    let at_head = parts.head_seat.depth();
    if parts.head_seat != HeadSeat::Flat {
        ordered("depth of the recess of the head", at_head)?;
    }
    if let HeadSeat::Countersunk { head_height, .. } = parts.head_seat {
        sane_length("height of the countersunk head", head_height)?;
    }
    let at_nut = parts.spot_face_under_nut;
    if let Some(depth) = at_nut {
        ordered("depth of the spot face under the nut", depth)?;
    }
    if let HeadSeat::Countersunk { .. } = parts.head_seat {
        if !parts.washers_under_head.is_empty() || parts.washer_to_add_under_head.is_some() {
            return Err(Error::Mismatch(
                "no washer goes under a countersunk head: it sits in its ply".into(),
            ));
        }
    }
    for number in [1, parts.plies.len()] {
        let ply = number.checked_sub(1).and_then(|at| parts.plies.get(at));
        if let (Some(left), Some(ply)) = (parts.bearing_thickness(number), ply) {
            sane_length("thickness left by its recess", left)
                .map_err(|error| named(error, &ply.name))?;
        }
    }
    Ok(())
}

fn tapped(parts: &Parts) -> Result<(), Error> {
    let Some(tapped) = &parts.tapped_part else {
        return Ok(());
    };
    if let Some(JointMaterial::Own(own)) = &tapped.material {
        own.checked().map_err(|error| named(error, &tapped.name))?;
        // A part is at least as thick as the thread that it fills.
        if let (Some(thru), Some(engaged)) = (own.thickness_thru, tapped.engagement) {
            if engaged > thru + SAME_LENGTH {
                return Err(Error::Mismatch(format!(
                    "the thread of \"{}\" is longer than the thickness that the strengths of {} are stated for",
                    tapped.name, own.name
                )));
            }
        }
    }
    ordered("depth of the counterbore", tapped.counterbore)?;
    if tapped.counterbore.max > Length::default() {
        sane_length("depth of the counterbore", tapped.counterbore.max)?;
    }
    // Not even washers that a search might add.
    if parts.washers_under_nut.is_some()
        || !parts.other_washers_under_nut.is_empty()
        || parts.spot_face_under_nut.is_some()
    {
        return Err(Error::Mismatch(format!(
            "the screw ends in the thread of \"{}\": there is no nut to put a washer or a spot face under",
            tapped.name
        )));
    }
    Ok(())
}

/// The same error with the name of the layer it is about.
fn named(error: Error, name: &str) -> Error {
    match error {
        Error::OutOfRange {
            quantity,
            value,
            allowed,
        } => Error::OutOfRange {
            quantity: alloc::format!("{quantity} of \"{name}\""),
            value,
            allowed,
        },
        other => other,
    }
}
