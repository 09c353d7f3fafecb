//! Holes of plies, their distances, what lies on them, and what a ply is asked for.

use crate::joints::{
    faults, frame, is_open, lacks, mm, near, plate, slips_by_friction, tightened, torque, used,
    verdict,
};
use shankline::joint::{
    Finding, Joint, JointMethods, JointWasher, MaterialKind, OwnMaterial, Pattern, Slip, Tightening,
};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::strength::ply::PlyMethod;
use shankline::strength::slip::{Is800Surface, SlipClass, SlipMethod};

fn ply() -> JointPly {
    plate("plate", mm(20.0))
}

/// Two plies without washers, the first as given; loaded across, or pulled.
fn joint(first: JointPly, across: bool) -> Joint {
    let mut joint = frame();
    let stack = Stack::builder().add(first).add(ply());
    joint.stack = stack.shear_planes([1]).build().unwrap();
    if across {
        joint.load.across = newtons(2e3);
    } else {
        joint.load.along = newtons(2e3);
    }
    joint
}

fn rows(mut joint: Joint, along: usize, across: usize) -> Joint {
    joint.pattern = Pattern::Rows { along, across };
    joint
}

/// Whether nothing is left of the first ply, for this reason.
fn gone(joint: &Joint, part: &str) -> bool {
    faults(joint).iter().any(|fault| {
        matches!(fault, Finding::NothingLeft { place: Place::Ply(1), why, .. } if why.contains(part))
    })
}

fn too_short(joint: &Joint) -> bool {
    let short = |fault: &Finding| {
        matches!(
            fault,
            Finding::Distance {
                place: Place::Ply(1),
                ..
            }
        )
    };
    faults(joint).iter().any(short)
}

/// A hole of 18 mm reaches the end where the end is 9 mm from its centre, whatever loads the joint.
#[test]
fn a_hole_that_reaches_an_edge_leaves_nothing() {
    for across in [true, false] {
        for (at_limit, part) in [
            (ply().end_distance(millimetres(9.0)), "reaches the end"),
            (ply().edge_distance(millimetres(9.0)), "reaches the side"),
            (ply().width(millimetres(18.0)), "takes the whole width"),
        ] {
            assert!(gone(&joint(at_limit, across), part), "{part}");
        }
        for (at_limit, part, along) in [
            (ply().pitch(millimetres(18.0)), "next one along", 2),
            (ply().gauge(millimetres(18.0)), "next one across", 1),
        ] {
            let joint = rows(joint(at_limit, across), along, 3 - along);
            assert!(gone(&joint, part), "{part}");
        }
        let enough = ply()
            .end_distance(millimetres(9.01))
            .edge_distance(millimetres(9.01))
            .width(millimetres(18.02))
            .pitch(millimetres(18.01))
            .gauge(millimetres(18.01));
        let joint = rows(joint(enough, across), 2, 2);
        assert!(!gone(&joint, "hole"), "{:?}", faults(&joint));
    }
}

/// The nut of M16 has a face of 22.5 mm (ISO 4032): closer bolts lie on each other.
#[test]
fn neighbours_must_not_lie_on_each_other() {
    let lie = "would lie on each other";
    for (distance, right) in [(22.4, true), (22.5, false), (22.6, false)] {
        let pitched = rows(joint(ply().pitch(millimetres(distance)), true), 2, 1);
        assert_eq!(gone(&pitched, lie), right, "{distance}");
        let gauged = rows(joint(ply().gauge(millimetres(distance)), true), 1, 2);
        assert_eq!(gone(&gauged, lie), right, "{distance}");
    }
}

/// EN 1993-1-8 Table 3.3: ends from 1.2 d0 = 21.6 mm, also of what is only pulled; where nothing is left, or bolts lie on each
/// other, that is the fault.
#[test]
fn short_ends_of_what_is_pulled() {
    let by_en = |first: JointPly| {
        let mut joint = joint(first, false);
        joint.methods = JointMethods::en_1993();
        joint
    };
    let end = |distance| ply().end_distance(millimetres(distance));
    assert!(!too_short(&by_en(end(21.7))));
    assert!(too_short(&by_en(end(21.5))));
    assert!(!too_short(&by_en(
        end(21.5).edge_distance(millimetres(8.0))
    )));
    let close = rows(by_en(end(21.5).pitch(millimetres(20.0))), 2, 1);
    assert!(gone(&close, "would lie on each other") && !too_short(&close));
    let unsaid = "its end distance is not given";
    let mut open = ply();
    open.end_distance = None;
    assert!(lacks(&by_en(open.clone()), Mode::Distances, unsaid));
    assert!(lacks(&joint(open.clone(), true), Mode::Distances, unsaid));
    assert!(!lacks(&joint(open, false), Mode::Distances, unsaid));
}

#[test]
fn several_bolts_say_how_far_apart_they_are() {
    for (along, across, needs) in [
        (1, 1, [false, false]),
        (2, 1, [true, false]),
        (1, 2, [false, true]),
        (2, 2, [true, true]),
    ] {
        let joint = rows(joint(ply(), true), along, across);
        let found = ["along the load", "across the load"].map(|way| {
            let text = format!("ply 1: the distance to the next hole {way}");
            lacks(&joint, Mode::Distances, &text)
        });
        assert_eq!(found, needs, "{along} {across}");
    }
    // The same bolts stand in every ply.
    for (second, right) in [(60.0, false), (61.0, true)] {
        let mut joint = rows(joint(ply().pitch(millimetres(60.0)), true), 2, 1);
        let stack = Stack::builder().add(ply().pitch(millimetres(60.0)));
        let stack = stack
            .add(ply().pitch(millimetres(second)))
            .shear_planes([1]);
        joint.stack = stack.build().unwrap();
        let other = "the same bolts stand at other distances";
        assert_eq!(lacks(&joint, Mode::Distances, other), right, "{second}");
    }
}

/// The bolt must go through every hole: of packing too, and of what is only pulled.
#[test]
fn a_hole_smaller_than_the_bolt() {
    let small = |joint: &Joint, number| {
        faults(joint).iter().any(|fault| {
            matches!(fault, Finding::HoleTooSmall { place, .. } if *place == Place::Ply(number))
        })
    };
    for across in [true, false] {
        assert!(small(&joint(ply().hole(millimetres(15.0)), across), 1));
        assert!(!small(&joint(ply(), across), 1));
    }
    let mut packed = joint(ply(), true);
    let packing = JointPly::packing("pack", mm(4.0)).hole(millimetres(15.0));
    let stack = Stack::builder().add(ply()).add(packing).add(ply());
    packed.stack = stack.shear_planes([1, 2]).build().unwrap();
    assert!(small(&packed, 2));
}

/// AISC 360 J3.2: oversize holes are for joints that must not slip. By EN 1090-2 nothing of the kind, nor of standard holes.
#[test]
fn oversize_holes_want_slip_by_aisc_alone() {
    let wants = |methods: JointMethods, hole: f64| {
        let mut joint = joint(ply().hole(millimetres(hole)), true);
        joint.methods = methods;
        faults(&joint)
            .iter()
            .any(|fault| matches!(fault, Finding::HoleWantsSlip { .. }))
    };
    let aisc = JointMethods::aisc_lrfd(AiscEdition::E2016);
    assert!(wants(aisc, 20.0));
    assert!(!wants(aisc, 18.0));
    assert!(!wants(JointMethods::en_1993(), 20.0));
    let mut held = aisc;
    held.slip = slips_by_friction(0.2, 1.5);
    assert!(!wants(held, 20.0));
}

/// A slip method goes by the holes of its own code, whatever the plies go by: 0.85 for oversize ones (EN 1993-1-8 Table 3.6;
/// AISC 360 in its resistance factor, 1.00 to 0.85); those of IS 800 were not read.
#[test]
fn slip_goes_by_the_holes_of_its_code() {
    let (class, serviceability) = (SlipClass::B, false);
    let slips = |method, hole: f64| {
        let mut joint = joint(ply(), true);
        let own = || ply().hole(millimetres(hole));
        let stack = Stack::builder().add(own()).add(own()).shear_planes([1]);
        joint.stack = stack.build().unwrap();
        joint.methods = JointMethods::en_1993();
        joint.methods.plies = PlyMethod::MachineDesign { design_factor: 2.0 };
        joint.methods.slip = Slip::Resisted(method);
        joint.tightening = tightened(0.16, 0.2);
        joint
    };
    let used = |joint: &Joint| used(&verdict(joint), Mode::Slip, Place::Plane(1));
    // M16: 18 mm is standard, 20 mm is oversize.
    let en = SlipMethod::En1993 {
        class,
        serviceability,
    };
    near(
        used(&slips(en, 20.0)) / used(&slips(en, 18.0)),
        1.0 / 0.85,
        1e-9,
    );
    // 5/8 in: 11/16 in (17.46 mm) is standard, 13/16 in (20.64 mm) oversize.
    let by_aisc = |hole| {
        let edition = AiscEdition::E2016;
        let mut joint = slips(SlipMethod::Aisc360 { edition, class }, hole);
        joint.bolt.product = ScrewProduct::StructuralBolt;
        joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
        joint.bolt.grade = BoltGrade::Astm(AstmGrade::F3125A325Type1);
        joint.nut.as_mut().unwrap().style = NutStyle::HeavyHex;
        let mut tight = torque(0.16, 0.2);
        tight.target = PreloadTarget::AiscJ31 { edition };
        joint.tightening = Some(Tightening::Torque(tight));
        used(&joint)
    };
    near(by_aisc(20.0) / by_aisc(17.4), 1.0 / 0.85, 1e-9);
    let surface = Is800Surface::Untreated;
    let is_800 = SlipMethod::Is800 {
        surface,
        serviceability,
    };
    for (hole, right) in [(18.0, false), (20.0, true)] {
        let unread = "wider than standard, and slots, were not read";
        assert_eq!(lacks(&slips(is_800, hole), Mode::Slip, unread), right);
    }
}

/// The codes are written for structural steel, and those that were read in part say nothing above 460 N/mm2.
#[test]
fn plies_outside_of_a_code() {
    let of = |yields: f64| {
        OwnMaterial::new("plate (invented)", MaterialKind::CarbonSteel)
            .strengths(megapascals(yields), megapascals(600.0))
    };
    let aluminium = "6061-T6 aluminium, typical";
    let edition = AiscEdition::E2016;
    let (steel, above, en) = ("structural steel", "above 460 N/mm2", "up to S460");
    let (aisc, by_en, bs) = (
        JointMethods::aisc_lrfd(edition),
        JointMethods::en_1993(),
        JointMethods::bs_5950(),
    );
    let machine = JointMethods::machine_design(2.0);
    for (methods, first, lacking) in [
        (aisc, ply(), [false; 3]),
        (aisc, ply().material(aluminium), [true, false, false]),
        (aisc, ply().material(of(461.0)), [false; 3]),
        (by_en, ply(), [false; 3]),
        (by_en, ply().material(aluminium), [true, false, false]),
        (by_en, ply().material(of(460.0)), [false; 3]),
        (by_en, ply().material(of(461.0)), [false, false, true]),
        (bs, ply(), [false; 3]),
        (bs, ply().material(of(460.0)), [false; 3]),
        (bs, ply().material(of(461.0)), [false, true, false]),
        (machine, ply().material(aluminium), [false; 3]),
    ] {
        let mut joint = joint(first, true);
        joint.methods = methods;
        for mode in [Mode::Bearing, Mode::NetSection] {
            let found = [steel, above, en].map(|part| lacks(&joint, mode, part));
            assert_eq!(found, lacking, "{} {mode}", methods.plies);
        }
    }
}

/// What a mode of a ply cannot do without: the hole, or the material, and nothing that it does not want.
#[test]
fn what_a_ply_is_asked_for() {
    let machine = JointMethods::machine_design(2.0);
    let (hole, material) = ("ply 1: its hole", "ply 1: its material");
    let mut bare = ply();
    bare.hole = None;
    for (methods, mode, wants) in [
        (machine, Mode::Bearing, false),
        (machine, Mode::TearOut, true),
        (machine, Mode::NetSection, true),
        (machine, Mode::GrossSection, false),
        (JointMethods::en_1993(), Mode::Bearing, true),
        (JointMethods::en_1993(), Mode::NetSection, true),
        (JointMethods::en_1993(), Mode::TearOut, false),
        (JointMethods::is_800(), Mode::Bearing, true),
        (JointMethods::as_4100(), Mode::TearOut, true),
        (JointMethods::as_4100(), Mode::Bearing, false),
    ] {
        let mut joint = joint(bare.clone(), true);
        joint.methods = methods;
        assert_eq!(lacks(&joint, mode, hole), wants, "{} {mode}", methods.plies);
        assert!(!lacks(&joint, mode, material), "{} {mode}", methods.plies);
    }
    // Neither is said: both are asked for, and of what the material would have nothing more.
    let unknown = JointPly::new("plate", mm(20.0));
    let joint = joint(unknown, true);
    assert!(lacks(&joint, Mode::TearOut, hole) && lacks(&joint, Mode::TearOut, material));
    assert!(lacks(&joint, Mode::TearOut, "ply 1: its end distance"));
    assert!(lacks(&joint, Mode::NetSection, "ply 1: its width"));
    assert!(!lacks(&joint, Mode::TearOut, "ply 1: no yield strength"));
    assert!(!lacks(&joint, Mode::BoltBearing, material));
}

/// MIL-HDBK-5 wants the bearing strength of the ply: of one without a material that is asked for and no more, of one of A36, for
/// which the handbook has none, the strength. It has no net section, so that no hole is wanted.
#[test]
fn the_handbook_of_aircraft_asks_for_the_bearing_strength() {
    let of = |material: bool| {
        let mut first = ply();
        first.hole = None;
        if !material {
            first.material = None;
        }
        let mut joint = joint(first, true);
        joint.methods.plies = PlyMethod::MilHdbk5 {
            ultimate_factor: 1.5,
            fitting_factor: 1.15,
        };
        let asked = ["its material", "its bearing strength"];
        let asked = asked.map(|part| lacks(&joint, Mode::Bearing, &format!("ply 1: {part}")));
        (asked, lacks(&joint, Mode::NetSection, "ply 1: its hole"))
    };
    assert_eq!(of(true), ([false, true], false));
    assert_eq!(of(false), ([true, false], false));
}

/// A washer under the face of the head, 22 mm over 17.7 mm (ISO 4014): 134.1 mm2. 4 MPa for each HV are 53.6 kN of 100 HV, the
/// dent of the test 9.80665 MPa for each, 131.5 kN. Half of that is the load, for the factor of 2.
#[test]
fn a_washer_bears_what_its_hardness_says() {
    let washer = |hardness: Option<f64>| {
        let mut washer = JointWasher::new("washer", mm(3.0));
        washer.outside = Some(millimetres(30.0));
        washer.inside = Some(millimetres(17.0));
        washer.hardness = hardness;
        washer
    };
    let said = |hardness, kilonewtons: f64| {
        let mut joint = frame();
        let stack = Stack::builder().washer_under_head(washer(hardness));
        joint.stack = stack.add(ply()).add(ply()).build().unwrap();
        joint.load.along = newtons(1e3 * kilonewtons);
        let found = verdict(&joint);
        let mut checks = found.checks.iter();
        let dents = checks.any(|check| check.method.citation.contains("Vickers"));
        let beyond = "pressure under head and nut, head: its washer is pressed harder";
        let unsaid = "pressure under head and nut, head: how hard the washer is";
        [is_open(&joint, beyond), is_open(&joint, unsaid), dents]
    };
    let hard = Some(100.0);
    assert_eq!(said(hard, 26.7), [false; 3]);
    assert_eq!(said(hard, 26.9), [true, false, false]);
    assert_eq!(said(hard, 65.6), [true, false, false]);
    assert_eq!(said(hard, 65.9), [false, false, true]);
    assert_eq!(said(None, 26.7), [false; 3]);
    assert_eq!(said(None, 26.9), [false, true, false]);
    assert_eq!(said(Some(300.0), 65.9), [false; 3]);
}

/// A washer of which nothing is known under the head, on one that is known: what it bears on is asked for.
#[test]
fn an_unknown_washer_in_a_pile_is_asked_for() {
    let thread: Thread = "M16".parse().unwrap();
    let known = || JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
    let unknown = || JointWasher::new("packing", mm(3.0));
    for (pile, right) in [
        ([known(), known()], false),
        ([unknown(), known()], true),
        ([known(), unknown()], true),
    ] {
        let mut joint = frame();
        let mut stack = Stack::builder();
        for washer in pile {
            stack = stack.washer_under_head(washer);
        }
        joint.stack = stack.add(ply()).add(ply()).build().unwrap();
        joint.load.along = newtons(1e3);
        let asked = is_open(
            &joint,
            "pressure under head and nut, head: style or diameters",
        );
        assert_eq!(asked, right);
    }
}

/// A torque wrench scatters by some 25 %: a nut factor with less than 5 % of range is cautioned of.
#[test]
fn a_nut_factor_without_scatter_is_cautioned_of() {
    for (min, max, right) in [
        (0.18, 0.18, true),
        (0.176, 0.1845, true),
        (0.175, 0.1845, false),
        (0.16, 0.20, false),
    ] {
        let mut joint = joint(ply(), true);
        joint.tightening = tightened(min, max);
        let found = verdict(&joint);
        let mut cautions = found.cautions.iter().map(ToString::to_string);
        assert_eq!(
            cautions.any(|text| text.contains("scatter")),
            right,
            "{min} {max}"
        );
    }
}
