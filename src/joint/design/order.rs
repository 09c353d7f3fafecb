//! Orders of parts that have none of their own: that of the variants in their types.

use alloc::string::ToString;
use core::cmp::Ordering;

use super::DesignChoice;
use crate::joint::JointNut;
use crate::material::{BoltGrade, Finish};
use crate::parts::{ScrewProduct, WasherStyle};
use crate::thread::Thread;

pub(super) fn threads(a: &Thread, b: &Thread) -> Ordering {
    let diameter = |thread: &Thread| thread.nominal_diameter().value;
    let pitch = |thread: &Thread| thread.pitch().value;
    diameter(a)
        .total_cmp(&diameter(b))
        .then(pitch(a).total_cmp(&pitch(b)))
        .then_with(|| {
            // Most of those compared are of one thread: no text is written for them.
            if a == b {
                Ordering::Equal
            } else {
                a.to_string().cmp(&b.to_string())
            }
        })
}

pub(super) fn product(product: ScrewProduct) -> u32 {
    product as u32
}

pub(super) fn grade(grade: BoltGrade) -> (u32, u32) {
    match grade {
        BoltGrade::Stated => (0, 0),
        BoltGrade::Sae(grade) => (1, grade as u32),
        BoltGrade::Iso(class) => (2, class as u32),
        BoltGrade::Astm(grade) => (3, grade as u32),
        BoltGrade::Stainless(class) => (4, class as u32),
    }
}

pub(super) fn nut(nut: JointNut) -> (u32, Option<u32>, Option<(u32, u32)>) {
    let grade = nut.grade.map(|grade| grade as u32);
    (nut.style as u32, grade, nut.finish.map(finish))
}

fn finish(finish: Finish) -> (u32, u32) {
    match finish {
        Finish::Bare(metal) => (0, metal as u32),
        Finish::ZincPlated { baked } => (1, u32::from(baked)),
        Finish::CadmiumPlated { baked } => (2, u32::from(baked)),
        Finish::HotDipGalvanized => (3, 0),
        Finish::HotDipGalvanizedUndersize => (4, 0),
        Finish::MechanicalZinc => (5, 0),
        Finish::ZincFlake => (6, 0),
    }
}

pub(super) fn washer(style: Option<WasherStyle>) -> Option<u32> {
    style.map(|style| style as u32)
}

pub(super) fn choices(a: &DesignChoice, b: &DesignChoice) -> Ordering {
    let key = |choice: &DesignChoice| {
        (
            product(choice.bolt.product),
            grade(choice.bolt.grade),
            nut(choice.nut),
            washer(choice.washers),
        )
    };
    let length = |choice: &DesignChoice| choice.bolt.length.map_or(0.0, |length| length.value);
    threads(&a.bolt.thread, &b.bolt.thread)
        .then_with(|| key(a).cmp(&key(b)))
        .then_with(|| length(a).total_cmp(&length(b)))
}
