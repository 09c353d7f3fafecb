//! Statements of which one is not true: the joint is refused, as no verdict would be of it.

use alloc::{format, vec::Vec};

use super::{Joint, Slip};
use crate::catalogue::Key;
use crate::error::{Allowed, Error, at_most, out_of_range, sane_text};
use crate::joint::stack::one_line;
use crate::material::{BoltGrade, BoltStrength};
use crate::parts::{ScrewProduct, WireInsert};
use crate::strength::check::Mode;
use crate::strength::slip::{As4100Faces, Is800Surface, SlipClass, SlipMethod};
use crate::tables::galvanic::Metal;
use crate::units::SAME_LENGTH;

/// Refuses a slip class of blasted steel on a ply whose surface is said to be of another metal: one of the two is not
/// true. Zinc from a bath is of neither such class (AISC 360-16 J3.8 has it in class A, in B also sprayed zinc and aluminium;
/// EN 1090-2:2008 Table 18 has every sprayed or painted surface in B at best; both recalled).
pub(super) fn blasted(joint: &Joint) -> Result<(), Error> {
    let Slip::Resisted(method) = joint.methods.slip else {
        return Ok(());
    };
    let can_be: &[Metal] = match method {
        SlipMethod::Aisc360 {
            class: SlipClass::B,
            ..
        } => &[Metal::Steel, Metal::Zinc, Metal::Aluminium],
        SlipMethod::En1993 {
            class: SlipClass::A,
            ..
        } => &[Metal::Steel],
        _ => return of_other_codes(joint, method),
    };
    match other_metal(joint, can_be) {
        None => Ok(()),
        Some((name, metal)) => Err(Error::Mismatch(format!(
            "the slip class is of blasted steel, and the surface of \"{name}\" is said to be {metal}: say the class that it has"
        ))),
    }
}

/// The first ply whose surface is said to be of a metal that it cannot be.
fn other_metal<'a>(joint: &'a Joint, can_be: &[Metal]) -> Option<(&'a str, Metal)> {
    let said = joint.stack.plies().iter();
    let mut said = said.filter_map(|ply| Some((ply.name.as_str(), ply.metal?)));
    said.find(|(_, metal)| !can_be.contains(metal))
}

/// Refuses faces by IS 800 Table 20, BS 5950-1 Table 35 or AS 4100 on a ply whose surface is said to be of a metal that they are
/// not (all recalled): by IS 800, zinc from a bath has half of the friction of faces that are not treated.
fn of_other_codes(joint: &Joint, method: SlipMethod) -> Result<(), Error> {
    let (can_be, faces): (&[Metal], _) = match method {
        SlipMethod::Is800 { surface, .. } => {
            let can_be: &[Metal] = match surface {
                Is800Surface::SprayedZinc => &[Metal::Zinc],
                Is800Surface::Galvanized => &[Metal::HotDipZinc],
                Is800Surface::SprayedAluminium => &[Metal::Aluminium],
                Is800Surface::ZincSilicate => &[Metal::Steel, Metal::Zinc],
                _ => &[Metal::Steel],
            };
            (can_be, format!("{surface} by IS 800 Table 20"))
        }
        SlipMethod::Bs5950 { class, .. } => {
            let can_be: &[Metal] = match class {
                SlipClass::A => &[Metal::Steel, Metal::Aluminium],
                SlipClass::B => &[Metal::Steel, Metal::Zinc],
                SlipClass::C => &[Metal::Steel],
                SlipClass::D => &[Metal::Steel, Metal::HotDipZinc],
            };
            (can_be, format!("of {class} by BS 5950-1 Table 35"))
        }
        SlipMethod::As4100 {
            faces: As4100Faces::AsRolled,
        } => (&[Metal::Steel], "as rolled by AS 4100".into()),
        _ => return Ok(()),
    };
    match other_metal(joint, can_be) {
        None => Ok(()),
        Some((name, metal)) => Err(Error::Mismatch(format!(
            "the faces are said to be {faces}, and the surface of \"{name}\" to be {metal}: say the faces that it has"
        ))),
    }
}

/// Refuses an insert that lies deeper than the thread which is said to be filled: it is not in the hole, or the screw ends in
/// it (MS51778, a copy of the page, for inserts: the screw goes through all of it). A blind hole is no shallower than what is
/// filled: a length search sees to that. And an insert that nobody makes.
pub(super) fn insert(joint: &Joint) -> Result<Option<WireInsert>, Error> {
    let part = joint.stack.tapped_part();
    let Some((part, length)) = part.and_then(|part| Some((part, part.insert()?))) else {
        return Ok(None);
    };
    let insert = WireInsert::new(joint.bolt.thread, length)?;
    let least = insert.full_thread();
    match part.engagement {
        Some(filled) if filled < least - SAME_LENGTH => Err(out_of_range(
            format!(
                "thread of \"{}\" that is filled, with its insert",
                part.name
            ),
            filled,
            Allowed::AtLeast(least.into()),
        )),
        _ => Ok(Some(insert)),
    }
}

/// As many as plies: nothing is taken for granted more often.
const MOST_GRANTED: usize = 1000;

/// Refuses texts of the caller that could pass for lines of a report.
pub(super) fn texts(joint: &Joint) -> Result<(), Error> {
    sane_text("title of a joint", &joint.title)?;
    at_most(
        "number of modes set aside",
        joint.set_aside.len(),
        Mode::ALL.len(),
    )?;
    let stack = &joint.stack;
    for ply in stack.plies() {
        one_line("ply", &ply.name)?;
    }
    let washers = stack.washers_under_head().iter();
    let washers = washers.chain(stack.other_washers_under_nut());
    let to_add = stack.washer_to_add_under_head();
    let usual = stack.washers_under_nut().map(|(own, _)| own);
    for washer in washers.chain(to_add).chain(usual) {
        one_line("washer", &washer.name)?;
    }
    for sleeve in stack.sleeves() {
        one_line("sleeve", &sleeve.name)?;
    }
    if let Some(part) = stack.tapped_part() {
        one_line("tapped part", &part.name)?;
    }
    for aside in &joint.set_aside {
        one_line("reason for setting aside", &aside.reason)?;
    }
    at_most(
        "number of things taken for granted",
        joint.granted.len(),
        MOST_GRANTED,
    )?;
    for granted in &joint.granted {
        one_line("thing taken for granted", &granted.value)?;
        at_most(
            "number of plies of a thing taken for granted",
            granted.plies.len(),
            MOST_GRANTED,
        )?;
    }
    Ok(())
}

/// Refuses a listed product in a listed grade that it is not made in: what the tables say of the two is true of no bolt.
/// One made to order has strengths of the caller's own, or lengths of the caller's own.
pub(super) fn made(joint: &Joint, strength: &BoltStrength) -> Result<(), Error> {
    let (product, grade) = (joint.bolt.product, joint.bolt.grade);
    let is_own = product == ScrewProduct::Own || grade == BoltGrade::Stated;
    if is_own || product.is_made_in(strength) {
        return Ok(());
    }
    let grades: Vec<&str> = product.grades(&joint.bolt.thread).map(Key::label).collect();
    let list = if grades.is_empty() {
        "no grade of the tables".into()
    } else {
        grades.join(", ")
    };
    Err(Error::Mismatch(format!(
        "{product} is not made in {grade}, but in {list}: of one made to order state the strengths as your own"
    )))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::joint::{JointPly, Stack};
    use crate::names::AiscEdition;
    use crate::spread::PlusMinus;
    use crate::units::millimetres;

    /// A joint whose second ply has this surface, and what of its slip method contradicts it.
    fn contradicts(slip: SlipMethod, metal: Option<Metal>) -> bool {
        let ply = |name: &str| {
            JointPly::new(name, millimetres(20.0).plus_minus(millimetres(0.3)))
                .material("S235 steel")
                .hole(millimetres(13.5))
        };
        let mut plate = ply("plate");
        plate.metal = metal;
        let stack = Stack::builder()
            .add(ply("beam"))
            .add(plate)
            .build()
            .unwrap();
        let said = Joint::builder("M12")
            .ply("a", "20 mm")
            .ply("b", "20 mm")
            .across("2 kN");
        let mut joint = said.build().unwrap();
        joint.stack = stack;
        joint.methods.slip = Slip::Resisted(slip);
        blasted(&joint).is_err()
    }

    /// The surfaces each code has its slip factor for, as its table names them.
    #[test]
    fn a_slip_factor_is_of_its_surface() {
        use Metal::{Aluminium, HotDipZinc, Steel, Zinc};
        let serviceability = false;
        let aisc = |class| SlipMethod::Aisc360 {
            edition: AiscEdition::E2016,
            class,
        };
        let en = |class| SlipMethod::En1993 {
            class,
            serviceability,
        };
        let bs = |class| SlipMethod::Bs5950 {
            class,
            serviceability,
        };
        let is = |surface| SlipMethod::Is800 {
            surface,
            serviceability,
        };
        let as_rolled = SlipMethod::As4100 {
            faces: As4100Faces::AsRolled,
        };
        let tested = SlipMethod::As4100 {
            faces: As4100Faces::Tested { slip_factor: 0.3 },
        };
        let all = [Steel, Zinc, HotDipZinc, Aluminium];
        for (method, right) in [
            (aisc(SlipClass::A), &all[..]),
            (aisc(SlipClass::B), &[Steel, Zinc, Aluminium]),
            (en(SlipClass::A), &[Steel]),
            (en(SlipClass::B), &all),
            (is(Is800Surface::Untreated), &[Steel]),
            (is(Is800Surface::Blasted), &[Steel]),
            (is(Is800Surface::SprayedZinc), &[Zinc]),
            (is(Is800Surface::Galvanized), &[HotDipZinc]),
            (is(Is800Surface::SprayedAluminium), &[Aluminium]),
            (is(Is800Surface::ZincSilicate), &[Steel, Zinc]),
            (bs(SlipClass::A), &[Steel, Aluminium]),
            (bs(SlipClass::B), &[Steel, Zinc]),
            (bs(SlipClass::C), &[Steel]),
            (bs(SlipClass::D), &[Steel, HotDipZinc]),
            (as_rolled, &[Steel]),
            (tested, &all),
        ] {
            assert!(!contradicts(method, None), "{method:?}");
            for metal in all {
                assert_eq!(
                    contradicts(method, Some(metal)),
                    !right.contains(&metal),
                    "{method:?} {metal}"
                );
            }
        }
    }
}
