//! Blocks of several bolts, parts that carry nothing, and what a verdict says of what is missing.

use crate::joints::{
    across, frame, lacks, mm, near, plate, slips_by_friction, stacked, tightened, verdict,
};
use crate::tapped::foot;
use shankline::joint::{
    Environment, Finding, Joint, JointMethods, JointWasher, MaterialKind, OwnMaterial, Pattern,
    Repeats, StackBuilder,
};
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::units::celsius;

/// A group by EN 1993-1-8, 10 kN a bolt, in plates of A36 of 12 mm: holes of 18 mm, 40 mm from the end, 35 mm from the side.
fn group(along: usize, across_count: usize, change: impl Fn(JointPly) -> JointPly) -> Joint {
    let ply = || {
        let mut own = plate("plate", mm(12.0)).edge_distance(millimetres(35.0));
        own.pitch = (along > 1).then(|| millimetres(60.0));
        own.gauge = (across_count > 1).then(|| millimetres(80.0));
        own.width(millimetres(200.0))
    };
    let mut joint = across(10.0);
    joint.stack = stacked([change(ply()), ply()]);
    joint.pattern = Pattern::Rows {
        along,
        across: across_count,
    };
    joint.methods = JointMethods::en_1993();
    joint
}

/// EN 1993-1-8, 3.10.2: fu Ant / 1.25 + fy Anv / sqrt 3, half of the first where it tears to one side; A36 has 399.9 and 248.2
/// MPa. Two by two: the shear is 100 mm less 1.5 holes a row, 73 mm. Between the rows 62 mm, 238.0 + 251.1 = 489.1 kN; to both sides
/// 52 mm, 199.6 + 251.1 = 450.7 kN; to one side 88 mm, 168.9 + 125.5 = 294.4 kN. Four bolts load each with 40 kN.
#[test]
fn blocks_of_two_by_two() {
    let used = |joint: &Joint| {
        let found = verdict(joint);
        let own = |check: &&shankline::strength::check::Check| {
            (check.mode, check.place) == (Mode::BlockShear, Place::Ply(1))
        };
        let used = found.checks.iter().filter(own);
        used.map(|check| check.utilisation.value)
            .collect::<Vec<f64>>()
    };
    let found = used(&group(2, 2, |ply| ply));
    assert_eq!(found.len(), 3, "{found:?}");
    for (found, by_hand) in found.iter().zip([294.4, 450.7, 489.1]) {
        near(*found, 40.0 / by_hand, 3e-4);
    }
    // One row: to one side alone, 35 mm less half a hole: 0.5 x 399.9 x 312 / 1250 + 125.5 = 175.4 kN on two bolts.
    let found = used(&group(2, 1, |ply| ply));
    assert_eq!(found.len(), 1);
    near(found[0], 20.0 / 175.4, 5e-4);
    // Side by side there is no next one along: 40 mm less half a hole, 31 mm: U 238.0 + 106.6, II 199.6 + 106.6 kN.
    let side_by_side = group(1, 2, |ply| ply);
    let found = used(&side_by_side);
    assert_eq!(found.len(), 3);
    near(found[2], 20.0 / 344.6, 5e-4);
    near(found[1], 20.0 / 306.2, 5e-4);
    assert!(!lacks(&side_by_side, Mode::BlockShear, "ply"));
}

#[test]
fn blocks_ask_for_their_material() {
    let own = |breaks| {
        let mut own = OwnMaterial::new("plate (invented)", MaterialKind::CarbonSteel);
        own.yield_strength = Some(megapascals(250.0));
        own.tensile_strength = breaks;
        group(2, 2, move |ply| ply.material(own.clone()))
    };
    let breaks = "ply 1: no tensile strength";
    assert!(lacks(&own(None), Mode::BlockShear, breaks));
    assert!(!lacks(
        &own(Some(megapascals(400.0))),
        Mode::BlockShear,
        breaks
    ));
    let unknown = group(2, 2, |mut ply| {
        ply.material = None;
        ply
    });
    assert!(lacks(&unknown, Mode::BlockShear, "ply 1: its material"));
}

/// The bolt does not bear on packing, which is asked for no hole to bear on.
#[test]
fn packing_is_asked_for_nothing_that_bears() {
    let mut joint = across(5.0);
    joint.methods = JointMethods::en_1993();
    let pack = JointPly::packing("pack", mm(4.0));
    joint.stack = stacked([plate("a", mm(12.0)), pack, plate("b", mm(12.0))]);
    for mode in [Mode::Bearing, Mode::NetSection, Mode::TearOut, Mode::Holes] {
        assert!(!lacks(&joint, mode, "ply 2"), "{mode}");
    }
}

/// A washer that may be added and is not, and a count of none, are no washers.
#[test]
fn washers_that_are_not_there() {
    let washer = || JointWasher::find(WasherStyle::Iso7089, &"M16".parse().unwrap()).unwrap();
    let none = "where the code of the plies wants washers was not read";
    let lacking = |stack: StackBuilder, most: usize| {
        let mut joint = across(5.0);
        let stack = stack.add(plate("a", mm(12.0))).add(plate("b", mm(12.0)));
        joint.stack = stack.shear_planes([1]).build().unwrap();
        joint.rules.washers_under_nut_max = most;
        joint.methods = JointMethods::bs_5950();
        let found = verdict(&joint);
        assert_eq!(found.candidate.washers_added_under_head, 0);
        [format!("head: {none}"), format!("nut: {none}")]
            .map(|part| lacks(&joint, Mode::Washers, &part))
    };
    let bare = Stack::builder;
    assert_eq!(lacking(bare(), 0), [true; 2]);
    assert_eq!(
        lacking(bare().washer_under_head(washer()), 0),
        [false, true]
    );
    let to_add = bare().washer_to_add_under_head(washer());
    assert_eq!(lacking(to_add, 0), [true; 2]);
    assert_eq!(lacking(bare().washers_under_nut(washer(), 0), 0), [true; 2]);
    assert_eq!(lacking(bare().washer_under_nut(washer()), 1), [true, false]);
}

/// The tapped part touches the last ply: its surface is asked for as its own.
#[test]
fn the_surface_of_a_tapped_part_is_asked_for() {
    let mut joint = foot();
    joint.environment.exposure = Exposure::Normal;
    let at_part = |joint: &Joint| {
        let found = verdict(joint);
        let mut missing = found
            .missing
            .iter()
            .filter(|own| own.mode == Mode::Corrosion);
        missing.any(|own| own.place == Place::TappedPart)
    };
    assert!(at_part(&joint));
    let mut part = joint.stack.tapped_part().unwrap().clone();
    part.metal = Some(Metal::Steel);
    let first = joint.stack.plies()[0].clone();
    let stack = Stack::builder().add(first).tapped(part).shear_planes([1]);
    joint.stack = stack.build().unwrap();
    assert!(!at_part(&joint));
}

/// Steel and iron of no stated toughness are not for hard frost (common practice, no source); stainless steel and aluminium are.
#[test]
fn own_materials_in_frost() {
    use MaterialKind::{Aluminium, CarbonSteel, Other, StainlessSteel};
    for (kind, right) in [
        (CarbonSteel, true),
        (Other, true),
        (StainlessSteel, false),
        (Aluminium, false),
    ] {
        let own = OwnMaterial::new("plate (invented)", kind);
        let own = own.strengths(megapascals(250.0), megapascals(400.0));
        let mut joint = across(2.0);
        joint.stack = stacked([plate("a", mm(12.0)).material(own), plate("b", mm(12.0))]);
        joint.environment = Environment {
            coldest: celsius(-20.1),
            ..Environment::workshop()
        };
        let frost = "ply 1: nothing is known of the toughness";
        assert_eq!(lacks(&joint, Mode::Temperature, frost), right, "{kind:?}");
    }
}

/// A lock nut that the bolt ends in, or reaches through too little.
#[test]
fn where_the_bolt_ends_is_said() {
    let text = |thickness: f64| {
        let mut joint = across(2.0);
        joint.nut.as_mut().unwrap().style = NutStyle::Iso7040;
        joint.bolt.length = Some(millimetres(65.0));
        joint.stack = stacked(["a", "b"].map(|name| plate(name, mm(thickness))));
        let found = verdict(&joint).findings;
        let found = found.iter().find_map(|finding| match finding {
            Finding::LockNotFilled { protrusion, .. } => {
                Some((*protrusion < millimetres(0.0), finding.text(UnitSystem::Si)))
            }
            _ => None,
        });
        found.unwrap()
    };
    // M16 x 65: two plies of 22 mm leave it in the nut, two of 18 mm let it pass, by less than two pitches.
    let (inside, short) = text(22.0);
    assert!(
        inside && short.contains("inside the nut: its lock"),
        "{short}"
    );
    let (inside, long) = text(18.0);
    assert!(!inside && long.contains("past the nut: its lock"), "{long}");
    let flush = Finding::LockNotFilled {
        protrusion: millimetres(0.0),
        least: millimetres(4.0),
        source: shankline::source::Method::get("common-practice").unwrap(),
    };
    let flush = flush.text(UnitSystem::Si);
    assert!(flush.contains("may end 0.00 mm past the nut"), "{flush}");
}

/// What is to be said, of which plies; the name of a fact that names its part needs no place. Then how many checks have no answer.
#[test]
fn the_headline_asks_for_what_is_missing() {
    let headline = |joint: &Joint| verdict(joint).headline(UnitSystem::Si);
    let unknown = || {
        let mut own = plate("plate", mm(20.0));
        own.material = None;
        own
    };
    let mut joint = across(2.0);
    joint.stack = stacked([unknown(), plate("b", mm(20.0))]);
    assert!(
        headline(&joint).contains("say the material of ply 1"),
        "{}",
        headline(&joint)
    );
    joint.stack = stacked([unknown(), unknown()]);
    assert!(headline(&joint).contains("say the material of plies 1 and 2"));
    let mut joint = across(2.0);
    joint.nut.as_mut().unwrap().grade = None;
    assert_eq!(
        headline(&joint),
        "UNDECIDED (the whole joint): say the grade of the nut"
    );
    let mut joint = across(2.0);
    joint.environment.exposure = Exposure::Normal;
    joint.stack = stacked(["a", "b"].map(|name| plate(name, mm(20.0)).metal(Metal::Steel)));
    let asked = headline(&joint);
    assert!(
        asked.contains("the metal of the washer of head and nut"),
        "{asked}"
    );

    let mut tired = across(2.0);
    tired.load.repeats = Repeats::Between {
        across_least: newtons(0.0),
        along_least: newtons(0.0),
        cycles: None,
    };
    let two = headline(&tired);
    assert!(
        two.ends_with(": 2 checks have no answer here (see below)"),
        "{two}"
    );
    tired.tightening = tightened(0.16, 0.2);
    tired.methods.slip = slips_by_friction(0.1, 1.0);
    let one = headline(&tired);
    assert!(
        one.ends_with(": 1 check has no answer here (see below)"),
        "{one}"
    );
}

/// Modes in order and modes that are not concerned stand in lines of their own, each reason once.
#[test]
fn the_report_lists_what_is_in_order() {
    let text = crate::joints::text(&verdict(&across(2.0)));
    let lines = |start: &str| {
        text.lines()
            .filter(|line| line.trim().starts_with(start))
            .count()
    };
    assert_eq!(lines("in order: "), 1, "{text}");
    assert_eq!(
        lines("not concerned (no load along the axis): "),
        1,
        "{text}"
    );
    assert!(text.contains("used      n  of"), "{text}");
    assert!(text.contains("n is resistance over load"), "{text}");
    let still = frame();
    let text = crate::joints::text(&verdict(&still));
    assert!(
        !text.contains("n is resistance over load") && !text.contains("used  "),
        "{text}"
    );
}
