//! The joints that laws are read from, one for each form.

use super::*;
use crate::joint::whole::{
    CountersunkHead, JointBuilder, JointMethods, OwnLength, OwnScrew, Prying, Repeats, Tightening,
    TorqueTightening,
};
use crate::joint::{HeadSeat, JointWasher};
use crate::material::{AstmGrade, BoltGrade, NutGrade};
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::preload::{NutFactor, PreloadTarget};
use crate::spread::{PlusMinus, Spread};
use crate::strength::interaction::InteractionRule;
use crate::strength::shear::AiscEdition;
use crate::strength::slip::{Is800Surface, SlipClass, SlipMethod};
use crate::strength::timber::TimberMethod;
use crate::units::{degrees, millimetres, newtons, percent};

/// A joint, loads of the kind that its laws are read for, the forms they have, and up to how many times these loads they
/// answer.
pub(super) struct Scenario {
    pub(super) name: &'static str,
    pub(super) joint: Joint,
    pub(super) loads: Loads,
    pub(super) forms: &'static str,
    pub(super) up_to: f64,
}

const EDITION: AiscEdition = AiscEdition::E2016;
const ALL: f64 = 3.0;

/// With loads of both kinds, so that a shear plane is taken for granted; the laws put others in their place.
fn loaded(thread: &str) -> JointBuilder {
    Joint::builder(thread)
        .across("1 kN")
        .along("1 kN")
        .prying(Prying::None)
}

/// A plate with room around its hole.
fn plate(builder: JointBuilder, name: &str, thickness: &str, material: &str) -> JointBuilder {
    let builder = builder.ply(name, thickness).material(material);
    let builder = builder.end_distance("70 mm").edge_distance("60 mm");
    builder.width("120 mm")
}

/// Two plates of a mezzanine.
pub(super) fn lap(thread: &str) -> JointBuilder {
    let builder = plate(loaded(thread), "cleat", "20 mm", "S355 steel");
    plate(builder, "beam", "20 mm", "S355 steel")
}

/// The eye of a davit between two cheeks, of which the first takes more.
fn fork(thread: &str) -> JointBuilder {
    let builder = plate(loaded(thread), "cheek", "12 mm", "S355 steel").pulls(0.6);
    let builder = plate(builder, "eye", "20 mm", "S355 steel").pulls(-1.0);
    plate(builder, "other cheek", "12 mm", "S355 steel").pulls(0.4)
}

fn prying_unsaid() -> JointBuilder {
    let builder = Joint::builder("M20").across("1 kN").along("1 kN");
    let builder = plate(builder, "cleat", "20 mm", "S355 steel");
    tight(plate(builder, "beam", "20 mm", "S355 steel"))
}

/// An eye that turns on its bolt.
fn pivot() -> JointBuilder {
    pivot_with(plate)
}

/// As far to the sides of its plates as to their ends.
fn square_pivot() -> JointBuilder {
    pivot_with(|builder, name, thickness, material| {
        let builder = builder.ply(name, thickness).material(material);
        let builder = builder.end_distance("60 mm").edge_distance("60 mm");
        builder.width("120 mm")
    })
}

fn pivot_with(plate: fn(JointBuilder, &str, &str, &str) -> JointBuilder) -> JointBuilder {
    let plate = |builder, name, thickness| plate(builder, name, thickness, "S355 steel");
    let builder = Joint::builder("M24").across("1 kN");
    let builder = plate(builder, "cheek", "12 mm").hole("25 mm");
    let builder = plate(builder, "eye", "20 mm").hole("25 mm");
    let builder = plate(builder, "other cheek", "12 mm").hole("25 mm");
    let builder = builder.methods(JointMethods::en_1993()).load_factor(1.4);
    builder.rotates(true).snug()
}

/// A swing hanger whose plates stand apart.
fn apart(interaction: InteractionRule, product: &str) -> JointBuilder {
    let builder = plate(
        loaded("M16").product(product),
        "hanger",
        "12 mm",
        "S355 steel",
    );
    let builder = builder.stack(|stack| stack.gap(Spread::exact(millimetres(2.0))));
    let builder = plate(builder, "beam", "12 mm", "S355 steel").snug();
    builder.methods(JointMethods {
        interaction,
        ..JointMethods::machine_design(2.0)
    })
}

pub(super) fn torque(target: PreloadTarget, lost: f64) -> Tightening {
    let oiled = NutFactor::new(0.17, 0.18, 0.19).unwrap();
    Tightening::Torque(TorqueTightening::new(oiled, target).relaxation(percent(lost)))
}

pub(super) fn tight(builder: JointBuilder) -> JointBuilder {
    builder.tightening(torque(PreloadTarget::Reusable, 5.0))
}

/// With washers of the shop's own, so hard.
pub(super) fn washed(hardness: f64) -> Joint {
    let washer = JointWasher {
        outside: Some(millimetres(30.0)),
        inside: Some(millimetres(17.5)),
        hardness: Some(hardness),
        ..JointWasher::new("washer of the shop", Spread::exact(millimetres(3.0)))
    };
    let washers = |stack: crate::joint::StackBuilder| {
        let stack = stack.washer_under_head(washer.clone());
        stack.washers_under_nut(washer, 1)
    };
    tight(lap("M16").grade("12.9").stack(washers))
        .build()
        .unwrap()
}

/// Aluminium between plates of steel: it is shown only where it is pressed too hard.
fn soft_between() -> JointBuilder {
    let builder = plate(loaded("M16"), "plate", "3 mm", "S355 steel");
    let builder = plate(builder, "pad", "10 mm", "6061-T6 aluminium, typical");
    tight(plate(builder, "beam", "10 mm", "S355 steel"))
}

/// A post of a playground on a plate.
fn timber() -> JointBuilder {
    let builder = Joint::builder("M12").across("1 kN").along("1 kN");
    let builder = plate(
        builder.prying(Prying::InLoad),
        "plate",
        "8 mm",
        "S235 steel",
    );
    let builder = builder.ply("post", "90 mm").timber("C24", "0 deg");
    let builder = builder
        .end_distance("120 mm")
        .edge_distance("70 mm")
        .hole("13 mm");
    let timber = TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod: 0.8,
        gamma_m: 1.3,
    };
    let methods = JointMethods {
        timber: Some(timber),
        ..JointMethods::en_1993()
    };
    builder
        .methods(methods)
        .load_factor(1.4)
        .snug()
        .washers("ISO 7093")
}

/// A countersunk bolt of the shop's own, proved with its head: how bolt and members share a load is not known.
fn sunk() -> JointBuilder {
    let mut head = CountersunkHead::new(degrees(90.0), millimetres(30.0), millimetres(8.0));
    head.proof_load = Some(newtons(100e3));
    let length = millimetres(68.0).plus_minus(millimetres(0.5));
    let only = OwnLength::new(length, millimetres(34.0), millimetres(40.0));
    let mut own = OwnScrew::new("countersunk bolt", [only]);
    own.countersunk = Some(head);
    let seat = HeadSeat::Countersunk {
        below_flush: Spread::exact(millimetres(0.0)),
        head_height: head.height,
    };
    let washer = JointWasher::find(WasherStyle::Iso7089, &"M16".parse().unwrap()).unwrap();
    let builder = loaded("M16").stack(|stack| stack.head_seat(seat));
    let builder = plate(builder, "plate", "20 mm", "S355 steel");
    let builder = plate(builder, "foot", "25 mm", "S355 steel");
    let builder = builder.stack(|stack| stack.washers_under_nut(washer, 1));
    tight(builder.own_bolt(own))
}

/// A structural bolt by AISC 360, tightened as it has it.
fn structural() -> JointBuilder {
    let builder = plate(loaded("3/4-10 UNC"), "hanger", "25 mm", "ASTM A36 steel");
    let builder = plate(builder, "beam", "22 mm", "ASTM A36 steel");
    let builder = builder.product(ScrewProduct::StructuralBolt);
    let builder = builder.grade(BoltGrade::Astm(AstmGrade::F3125A325Type1));
    let builder = builder
        .nut(NutStyle::HeavyHex)
        .nut_grade(NutGrade::AstmA563Dh);
    let builder = builder.washers(WasherStyle::F436);
    let builder = builder.methods(JointMethods::aisc_asd(EDITION));
    builder.tightening(torque(PreloadTarget::AiscJ31 { edition: EDITION }, 5.0))
}

/// A bolt by EN 1993-1-8, threaded to its head.
fn eurocode() -> JointBuilder {
    let builder = lap("M20").product("ISO 4017").load_factor(1.4);
    builder.methods(JointMethods::en_1993())
}

/// With its shank in the plane: with thread there the code has no curve for it.
fn sheared_often() -> JointBuilder {
    let builder = lap("M16").product("ISO 4014").load_factor(1.4).snug();
    a_million_times(builder.methods(JointMethods::en_1993()))
}

fn category(serviceability: bool) -> JointBuilder {
    let class = SlipClass::B;
    let slip = SlipMethod::En1993 {
        class,
        serviceability,
    };
    let builder = lap("M20")
        .product("ISO 4017")
        .grade("10.9")
        .load_factor(1.4);
    builder
        .methods(slips(JointMethods::en_1993(), slip))
        .tightening(torque(PreloadTarget::En1993, 5.0))
}

pub(super) fn slips(methods: JointMethods, slip: SlipMethod) -> JointMethods {
    JointMethods {
        slip: Slip::Resisted(slip),
        ..methods
    }
}

pub(super) const STATED: SlipMethod = SlipMethod::Stated {
    friction: 0.5,
    safety_factor: 1.0,
};

/// The eye of the davit, held by so much friction that its bolt would shear before it slips.
fn held() -> JointBuilder {
    tight(fork("M20")).methods(slips(JointMethods::machine_design(3.0), STATED))
}

/// The ellipse of IS 800 for slip beside tension.
pub(super) fn ellipse_of_slip() -> Joint {
    let slip = SlipMethod::Is800 {
        surface: Is800Surface::Untreated,
        serviceability: false,
    };
    let builder = lap("M20").methods(slips(JointMethods::is_800(), slip));
    let builder = builder.tightening(torque(PreloadTarget::Is800, 5.0));
    builder.load_factor(1.5).build().unwrap()
}

fn a_million_times(builder: JointBuilder) -> JointBuilder {
    builder.repeats(Repeats::Between {
        across_least: newtons(0.0),
        along_least: newtons(0.0),
        cycles: Some(1e6),
    })
}

type Row = (&'static str, JointBuilder, Loads, &'static str, f64);

pub(super) fn table() -> Vec<Scenario> {
    let rows = [
        plain(),
        kept_from_slipping(),
        around_a_pin(),
        again_and_again(),
        others(),
    ];
    rows.into_iter().flatten().map(scenario).collect()
}

/// Sheared and pulled.
fn plain() -> Vec<Row> {
    vec![
        (
            "snug in single shear",
            lap("M12").snug(),
            steady(15e3, 0.0),
            "Across",
            ALL,
        ),
        (
            "snug, no load",
            lap("M12").snug(),
            steady(0.0, 0.0),
            "",
            ALL,
        ),
        (
            "tight, no load",
            tight(lap("M12")),
            steady(0.0, 0.0),
            "Bolt Fixed",
            ALL,
        ),
        (
            "tight in double shear",
            tight(fork("M16")),
            steady(40e3, 0.0),
            "Across Bolt Fixed",
            ALL,
        ),
        // From 107 kN on the washers are pressed harder, for their hardness, than any of ISO 898-3: 88 kN and 160 kN.
        (
            "tight in tension",
            tight(lap("M16")),
            steady(0.0, 40e3),
            "Along Bolt Fixed",
            1.1,
        ),
        (
            "snug in both",
            lap("M16").snug(),
            steady(20e3, 45e3),
            "Across Along Bolt Together",
            1.1,
        ),
        (
            "AISC, both",
            structural(),
            steady(30e3, 40e3),
            "Across Along Bolt Together",
            2.0,
        ),
        (
            "soft between",
            soft_between(),
            steady(0.0, 10e3),
            "Along Bolt Fixed",
            ALL,
        ),
        (
            "sunk",
            sunk(),
            steady(5e3, 10e3),
            "Across Along Bolt Fixed Together",
            2.0,
        ),
        (
            "nothing left of the preload",
            lap("M16").tightening(torque(PreloadTarget::Reusable, 100.0)),
            steady(5e3, 20e3),
            "Across Along Bolt Fixed Together",
            2.0,
        ),
        (
            "prying unsaid",
            prying_unsaid(),
            steady(10e3, 25e3),
            "Across Along Bolt Fixed Together",
            ALL,
        ),
        (
            "margin of ten",
            tight(lap("M16")).design_factor(10.0),
            steady(2e3, 2e3),
            "Across Along Bolt Fixed Together",
            ALL,
        ),
    ]
}

/// Where the faces must not slip.
fn kept_from_slipping() -> Vec<Row> {
    vec![
        (
            "category B",
            category(true),
            steady(30e3, 40e3),
            "Across Along Bolt Fixed Slip Together",
            ALL,
        ),
        // With shock and factor the clamp force holds 102 kN apart: 80 kN are answered, 120 kN are not.
        (
            "category C",
            category(false).shock_factor(1.2),
            steady(30e3, 40e3),
            "Across Along Bolt Fixed Slip Together",
            2.0,
        ),
        (
            "slip, no pull",
            category(false),
            steady(60e3, 0.0),
            "Across Bolt Fixed Slip",
            ALL,
        ),
        (
            "slip by friction",
            held(),
            steady(30e3, 20e3),
            "Across Along Bolt Fixed Slip Together",
            2.0,
        ),
        (
            "slip, all loads swing",
            a_million_times(held()),
            loads(30e3, 20e3, 10e3, 5e3),
            "Across Along Bolt Fixed Goodman Slip Together",
            2.0,
        ),
        (
            "slip, pressed",
            a_million_times(held()),
            loads(30e3, 0.0, -10e3, -9e3),
            "Across Bolt Fixed Goodman Slip",
            ALL,
        ),
    ]
}

/// Turning on the bolt.
fn around_a_pin() -> Vec<Row> {
    vec![
        ("pivot", pivot(), steady(50e3, 0.0), PIVOT, ALL),
        (
            "pivot, down to less",
            a_million_times(pivot()),
            loads(50e3, 0.0, 20e3, 0.0),
            PIVOT_SWINGS,
            ALL,
        ),
        (
            "pivot, reversing",
            a_million_times(pivot()),
            loads(50e3, 0.0, -20e3, 0.0),
            PIVOT,
            ALL,
        ),
        (
            "pivot, square",
            square_pivot(),
            steady(50e3, 0.0),
            PIVOT,
            ALL,
        ),
    ]
}

/// Pulled and sheared again and again.
fn again_and_again() -> Vec<Row> {
    let en_tight = || {
        let builder = a_million_times(eurocode().grade("10.9"));
        builder.tightening(torque(PreloadTarget::En1993, 5.0))
    };
    let machine = || tight(a_million_times(lap("M16")));
    vec![
        (
            "sheared again and again",
            sheared_often(),
            loads(30e3, 0.0, 10e3, 0.0),
            "Across AcrossSwing",
            ALL,
        ),
        (
            "sheared down to nothing",
            sheared_often(),
            loads(30e3, 0.0, 0.0, 0.0),
            "Across AcrossSwing",
            ALL,
        ),
        (
            "sheared both ways",
            sheared_often(),
            loads(80e3, 0.0, -10e3, 0.0),
            "Across",
            ALL,
        ),
        (
            "EN, loose",
            a_million_times(eurocode()).shock_factor(1.5).snug(),
            loads(0.0, 10e3, 0.0, -5e3),
            "Along AlongSwing Bolt",
            ALL,
        ),
        (
            "EN, loose, never unloaded",
            a_million_times(eurocode()).snug(),
            loads(0.0, 10e3, 0.0, 5e3),
            "Along AlongSwing Bolt",
            ALL,
        ),
        (
            "EN, tight",
            en_tight(),
            loads(0.0, 50e3, 0.0, -20e3),
            "Along Bolt BoltSwing Fixed",
            ALL,
        ),
        (
            "EN, pressed",
            en_tight(),
            loads(0.0, 0.0, 0.0, -50e3),
            "Bolt BoltSwing Fixed",
            ALL,
        ),
        (
            "AISC, tight",
            a_million_times(structural()),
            loads(0.0, 50e3, 0.0, 10e3),
            "Along AlongSwing Bolt",
            2.0,
        ),
        (
            "AISC, pressed",
            a_million_times(structural()),
            loads(0.0, 0.0, 0.0, -40e3),
            "AlongSwing Bolt",
            ALL,
        ),
        // Three times are 120 kN with the margin: again more than the washers are held to bear.
        (
            "Goodman",
            machine(),
            loads(0.0, 20e3, 0.0, 5e3),
            "Along Bolt Fixed Goodman",
            2.0,
        ),
        (
            "Goodman, pressed",
            machine(),
            loads(0.0, 0.0, 0.0, -25e3),
            "Bolt Fixed Goodman",
            ALL,
        ),
        (
            "Goodman, shocks",
            tight(a_million_times(lap("M30"))).shock_factor(1.5),
            loads(0.0, 60e3, 0.0, -5e3),
            "Along Bolt Fixed Goodman",
            2.0,
        ),
    ]
}

/// Bending beside the others, and timber.
fn others() -> Vec<Row> {
    let nasa = InteractionRule::NasaStd5020;
    vec![
        (
            "NASA, thread, bent",
            apart(nasa, "ISO 4017"),
            steady(5e3, 0.0),
            "Across Together",
            ALL,
        ),
        (
            "NASA, thread, all",
            apart(nasa, "ISO 4017"),
            steady(3e3, 10e3),
            "Across Along Bolt Together",
            ALL,
        ),
        (
            "NASA, shank, all",
            apart(nasa, "ISO 4014"),
            steady(5e3, 10e3),
            "Across Along Bolt Together",
            ALL,
        ),
        (
            "ellipse, all",
            apart(InteractionRule::Ellipse, "ISO 4014"),
            steady(5e3, 10e3),
            "Across Along Bolt Together",
            ALL,
        ),
        ("timber", timber(), steady(3e3, 0.0), "Across", ALL),
        (
            "timber, prying in the load",
            timber(),
            steady(3e3, 1e3),
            "Across Along Bolt Together",
            ALL,
        ),
    ]
}

fn scenario((name, joint, loads, forms, up_to): Row) -> Scenario {
    Scenario {
        name,
        joint: joint.build().unwrap(),
        loads,
        forms,
        up_to,
    }
}

const PIVOT: &str =
    "Across AcrossFrom AcrossFrom AcrossFrom AcrossFrom AcrossFrom AcrossFrom AcrossRoot";
const PIVOT_SWINGS: &str = "Across AcrossFrom AcrossFrom AcrossFrom AcrossFrom AcrossFrom AcrossFrom AcrossRoot AcrossSwing";
