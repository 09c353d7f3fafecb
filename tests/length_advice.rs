//! Advice on joints with limits on all washers, spot faces, sleeves and thread in the holes, by hand.

use shankline::joint::{Alternative, Arrangement, Change, Goal, StackBuilder};
use shankline::prelude::*;

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

/// ISO 4014 M12 bolts in a stack, a nut exactly 10 mm high, no upper limit of protrusion.
fn arrangement(stack: StackBuilder, rules: LengthRules) -> Arrangement {
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse().unwrap()).unwrap();
    let nut = NutEnd::with_height(exact(10.0)).unwrap();
    Arrangement::new(stack.build().unwrap(), screws, nut, rules)
}

fn rules() -> LengthRules {
    LengthRules::fabrication(UnitSystem::Si).with_protrusion(2.0, None)
}

fn changes(arrangement: &Arrangement, goal: Goal) -> Vec<Change> {
    let list = arrangement.advice(goal, &[]).unwrap();
    list.advice
        .iter()
        .flat_map(|advice| advice.changes.clone())
        .collect()
}

/// Two washers in all, one of them under the head: one is all there may be under the nut. The plane at
/// 2.5 + 30 mm asks for an 80 mm bolt, 41.25 mm of shank and thread from 50 mm; 44.5 mm and three washers
/// reach that.
#[test]
fn a_limit_on_all_washers_is_advised_upon() {
    let stack = Stack::builder()
        .washer_under_head(exact(2.5))
        .ply("thick", exact(30.0))
        .ply("thin", exact(12.0))
        .shear_planes([1])
        .washers_under_nut(exact(2.5), 1);
    let joint = arrangement(stack, rules().with_washers_in_all(2));
    assert_eq!(joint.best(Goal::EveryPlaneOnShank).unwrap(), None);
    let found = changes(&joint, Goal::EveryPlaneOnShank);
    let washers = found.iter().find_map(|change| match change {
        Change::AddWashers { count, permitted } => Some((*count, *permitted)),
        _ => None,
    });
    assert_eq!(washers, Some((3, 1)));
}

/// A spot face of 8 mm takes a spacer of 8 mm, and thread in the spacer is not thread in a hole.
#[test]
fn a_spacer_stands_in_a_spot_face_and_is_no_hole() {
    let stack = Stack::builder()
        .ply("lug", exact(33.0))
        .ply("lug", exact(14.0))
        .shear_planes([1])
        .spot_face_under_nut(exact(8.0));
    let joint = arrangement(stack, rules().with_thread_in_holes(3.0));
    let found = changes(&joint, Goal::EveryPlaneOnShank);
    assert!(
        found
            .iter()
            .any(|change| matches!(change, Change::Spacer { .. }))
    );
}

/// A hub thicker than the bushing in it would be clamped in its place, and no longer turn.
#[test]
fn a_ply_around_a_sleeve_is_not_made_thicker() {
    let stack = Stack::builder()
        .ply("arm", exact(32.0))
        .ply("hub", exact(8.0))
        .sleeve("bushing", exact(8.0), 2, 2)
        .shear_planes([1]);
    let joint = arrangement(stack, rules());
    let found = changes(&joint, Goal::EveryPlaneOnShank);
    assert!(
        found
            .iter()
            .any(|change| matches!(change, Change::Spacer { .. }))
    );
    let thicker = |change: &Change| matches!(change, Change::ThickerLastPly { .. });
    assert!(!found.iter().any(thicker), "{found:?}");
}

/// A made bolt keeps the thread out of the holes also where no plane asks for shank.
#[test]
fn a_special_bolt_has_the_shank_that_the_holes_ask_for() {
    let stack = Stack::builder().ply("plate", exact(37.0));
    let joint = arrangement(stack, rules().with_thread_in_holes(1.0));
    assert_eq!(joint.best(Goal::Fits).unwrap(), None);
    let found = changes(&joint, Goal::Fits);
    let special = found.iter().find_map(|change| match change {
        Change::SpecialBolt(wanted) => Some(*wanted),
        _ => None,
    });
    // 37 - 1.75
    let wanted = special.expect("a special bolt does");
    assert!((wanted.shank_min - millimetres(35.25)).abs() < HAIR);
    let text = Change::SpecialBolt(wanted).text(UnitSystem::Si);
    assert_eq!(
        text,
        "find or have made a bolt with 35.25 mm of plain shank, thread from 37.00 mm and a length of 50.50 mm"
    );
}

/// Two threads wanted beyond a chamfer of two: less protrusion is still advised, in what counts.
#[test]
fn less_protrusion_leaves_out_the_chamfer() {
    let stack = Stack::builder().ply("plate", exact(45.0));
    let rules = rules().with_end_not_counted(2.0);
    // Of the lengths that clamp 70 mm is the longest, 69.4 mm at least: 69.4 - 45 - 10 = 14.4 mm.
    let strict = rules.with_protrusion(9.5, None);
    let joint = arrangement(stack, strict);
    let found = changes(&joint, Goal::Fits);
    let pitches = found.iter().find_map(|change| match change {
        Change::LessProtrusion { pitches, .. } => Some(*pitches),
        _ => None,
    });
    let expected = 14.4 / 1.75 - 2.0;
    assert!(
        (pitches.unwrap() - expected).abs() < 1e-6,
        "{pitches:?} {expected}"
    );
}

/// A washer of another diameter goes under the head as well, and none under a nut that is not there.
#[test]
fn an_alternative_brings_its_washer_for_the_head() {
    let stack = Stack::builder()
        .ply("cover", exact(20.0))
        .tapped_part("bed", exact(0.0))
        .washer_to_add_under_head(exact(2.5))
        .build()
        .unwrap();
    let hole = NutEnd::tapped(millimetres(14.0), Some(millimetres(18.0))).unwrap();
    let screws =
        |thread: &str| ScrewSeries::new(ScrewProduct::Iso4017, &thread.parse().unwrap()).unwrap();
    let joint = Arrangement::new(stack, screws("M12"), hole, rules());
    let other = Alternative::new(screws("M16"), hole, Some(exact(3.0)));
    let changed = Change::OtherDiameter(other).applied(&joint).unwrap();
    let washer = changed.stack.washer_to_add_under_head().unwrap();
    assert_eq!(washer.thickness, exact(3.0));
    assert_eq!(changed.stack.washers_under_nut(), None);
}
