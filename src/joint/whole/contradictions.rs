//! Statements of which one is not true: the joint is refused, as no verdict would be of it.

use alloc::{format, vec::Vec};

use super::{Joint, Slip};
use crate::catalogue::Key;
use crate::error::{Error, at_most, sane_text};
use crate::joint::stack::one_line;
use crate::material::{BoltGrade, BoltStrength};
use crate::parts::ScrewProduct;
use crate::strength::check::Mode;
use crate::strength::slip::{SlipClass, SlipMethod};
use crate::tables::galvanic::Metal;

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
        _ => return Ok(()),
    };
    for ply in joint.stack.plies() {
        if let Some(metal) = ply.metal.filter(|metal| !can_be.contains(metal)) {
            return Err(Error::Mismatch(format!(
                "the slip class is of blasted steel, and the surface of \"{}\" is said to be {metal}: say the class that it has",
                ply.name
            )));
        }
    }
    Ok(())
}

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
