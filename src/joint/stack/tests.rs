//! Positions and grips by hand, and what is refused.

mod limits;

use super::*;
use crate::joint::{CutRule, LengthRules, LengthSearch, NutEnd, Reason};
use crate::parts::{Nut, NutStyle, ScrewProduct, ScrewSeries};
use crate::spread::PlusMinus;
use crate::units::{UnitSystem, millimetres as mm};
use alloc::string::ToString;

fn between(min: f64, nominal: f64, max: f64) -> Spread<Length> {
    Spread {
        min: mm(min),
        nominal: mm(nominal),
        max: mm(max),
    }
}

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(mm(value))
}

fn same(found: Spread<Length>, min: f64, nominal: f64, max: f64) {
    for (found, wanted) in [(found.min, min), (found.nominal, nominal), (found.max, max)] {
        assert!(
            (found - mm(wanted)).abs() < mm(1e-9),
            "{found:?}, {wanted} mm"
        );
    }
}

/// Ear, gap, tongue with a sleeve in it, gap, ear; recessed at both ends.
///
/// From the head: washer 3, recess 2 +- 0.5, ear 12 +- 0.2, gap 0 to 1, sleeve 21 +- 0.1 around which the
/// tongue of 20 +- 0.3 turns, gap 0 to 1, ear 12 +- 0.2, spot face 1, washer 3 +- 0.3.
#[test]
fn every_length_is_counted_once() {
    let ear = mm(12.0).plus_minus(mm(0.2));
    let gap = between(0.0, 0.4, 1.0);
    let stack = Stack::builder()
        .washer_under_head(exact(3.0))
        .head_seat(HeadSeat::Recessed {
            depth: mm(2.0).plus_minus(mm(0.5)),
        })
        .ply("ear", ear)
        .gap(gap)
        .ply("tongue", mm(20.0).plus_minus(mm(0.3)))
        .gap(gap)
        .ply("ear", ear)
        .sleeve("bushing", mm(21.0).plus_minus(mm(0.1)), 2, 2)
        .spot_face_under_nut(exact(1.0))
        .washers_under_nut(mm(3.0).plus_minus(mm(0.3)), 1)
        .shear_planes([2, 1])
        .build()
        .unwrap();
    // The far side of the first gap: 3 - 2.5 + 11.8 + 0, 3 - 2 + 12 + 0.4, 3 - 1.5 + 12.2 + 1.
    same(stack.plane_positions()[0], 12.3, 13.4, 14.7);
    // And of the second: + 20.9 + 0, + 21 + 0.4, + 21.1 + 1.
    same(stack.plane_positions()[1], 33.2, 34.8, 36.8);
    // Ear, spot face, washer: + 11.8 - 1 + 2.7, + 12 - 1 + 3, + 12.2 - 1 + 3.3.
    same(stack.grip(), 46.7, 48.8, 51.3);
    same(stack.sleeves()[0].play, 0.6, 1.0, 1.4);
    assert!((stack.bearing_thickness(1).unwrap() - mm(9.3)).abs() < mm(1e-9));
    assert_eq!(stack.bearing_thickness(2), None);
    assert!((stack.bearing_thickness(3).unwrap() - mm(10.8)).abs() < mm(1e-9));
    assert_eq!(stack.bearing_thickness(0), None);
    assert_eq!(stack.bearing_thickness(4), None);
}

/// Turned, every plane lies as far from the nut as it lay from the head.
#[test]
fn a_turned_stack_is_the_same_from_the_other_end() {
    let stack = Stack::builder()
        .head_seat(HeadSeat::Recessed { depth: exact(2.0) })
        .add(JointPly::new("lug", mm(12.0).plus_minus(mm(0.2))).pulls(0.75))
        .gap(between(0.0, 0.5, 1.0))
        .add(JointPly {
            crush: mm(3.0),
            ..JointPly::new("beam", mm(90.0).plus_minus(mm(1.0))).pulls(-1.0)
        })
        .add(JointPly::new("plate", exact(8.0)).pulls(0.125))
        .add(JointPly::new("strap", exact(6.0)).pulls(0.125))
        .sleeve("tube", exact(15.0), 3, 4)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let turned = stack.to_builder().turned().build().unwrap();
    assert_eq!(turned.shear_planes(), [2, 3]);
    assert_eq!(stack.plane_shares(), [0.75, 0.25]);
    assert_eq!(turned.plane_shares(), [0.25, 0.75]);
    assert_eq!(turned.gap_after(3), stack.gap_after(1));
    assert_eq!(turned.spot_face_under_nut(), Some(exact(2.0)));
    let (grip, x) = (stack.grip(), stack.plane_positions());
    let again = turned.grip();
    same(
        again,
        grip.min.value * 1e3,
        grip.nominal.value * 1e3,
        grip.max.value * 1e3,
    );
    // The first plane lies at the far side of its gap from either end: the gap counts twice.
    let both = x[0].nominal + turned.plane_positions()[1].nominal;
    assert!((both - grip.nominal - mm(0.5)).abs() < mm(1e-9));
    let both = x[1].nominal + turned.plane_positions()[0].nominal;
    assert!((both - grip.nominal).abs() < mm(1e-9));
    // A sleeve is clamped in place of the plies around it.
    same(
        grip,
        11.8 - 2.0 + 86.0 + 15.0,
        12.0 - 2.0 + 0.5 + 90.0 + 15.0,
        12.2 - 2.0 + 1.0 + 91.0 + 15.0,
    );
    let back = turned.to_builder().turned().build().unwrap();
    assert_eq!(back, stack);
}

#[test]
fn a_short_sleeve_clamps_its_plies() {
    let stack = Stack::builder()
        .ply("rocker", mm(20.0).plus_minus(mm(0.5)))
        .sleeve("bushing", mm(20.0).plus_minus(mm(0.1)), 1, 1)
        .build()
        .unwrap();
    same(stack.grip(), 19.9, 20.0, 20.5);
    same(stack.sleeves()[0].play, -0.6, 0.0, 0.6);
}

fn plate() -> StackBuilder {
    Stack::builder().ply("a", exact(10.0)).ply("b", exact(10.0))
}

fn one() -> StackBuilder {
    Stack::builder().ply("a", exact(9.0))
}

fn refused(cases: impl IntoIterator<Item = (&'static str, StackBuilder)>) {
    for (what, builder) in cases {
        let error = builder.build().unwrap_err().to_string();
        assert!(error.contains(what), "{error}: {what}");
    }
}

#[test]
fn gaps_and_soft_plies_that_are_none_are_refused() {
    let mat = |crush: f64| Stack::builder().soft_ply("mat", exact(5.0), mm(crush));
    let gap = |width| one().gap(width).ply("b", exact(9.0));
    refused([
        ("crush", mat(5.0)),
        ("crush", mat(-1.0)),
        ("crush", mat(f64::NAN)),
        ("a gap lies between", plate().gap(exact(1.0))),
        (
            "a gap lies between",
            Stack::builder().gap(exact(1.0)).ply("a", exact(9.0)),
        ),
        (
            "twice",
            one().gap(exact(1.0)).gap(exact(1.0)).ply("b", exact(9.0)),
        ),
        ("width of a gap", gap(exact(f64::NAN))),
        ("width of a gap", gap(exact(f64::INFINITY))),
        ("width of a gap", gap(exact(-1.0))),
        ("width of a gap", gap(between(1.0, 0.5, 2.0))),
    ]);
    assert!(
        gap(between(0.0, 0.0, 0.0)).build().is_err(),
        "that is no gap"
    );
}

#[test]
fn sleeves_that_are_none_are_refused() {
    let sleeved = |first, last| plate().sleeve("s", exact(20.0), first, last);
    let recess = HeadSeat::Recessed { depth: exact(1.0) };
    refused([
        ("the stack has 2", sleeved(2, 3)),
        ("the stack has 2", sleeved(0, 1)),
        ("the stack has 2", sleeved(2, 1)),
        ("same ply", sleeved(1, 2).sleeve("t", exact(10.0), 2, 2)),
        ("cuts the sleeve", sleeved(1, 2).shear_planes([1])),
        ("clamps the sleeve", sleeved(1, 1).head_seat(recess)),
        (
            "clamps the sleeve",
            sleeved(2, 2).spot_face_under_nut(exact(1.0)),
        ),
        ("length of \"s\"", plate().sleeve("s", exact(0.0), 1, 1)),
    ]);
    assert!(sleeved(1, 1).shear_planes([1]).build().is_ok());
}

#[test]
fn recesses_and_tapped_parts_that_are_none_are_refused() {
    let nan = exact(f64::NAN);
    let deep = |depth| plate().head_seat(HeadSeat::Recessed { depth });
    let cone = |head_height| {
        plate().head_seat(HeadSeat::Countersunk {
            below_flush: exact(0.0),
            head_height,
        })
    };
    let bed = |counterbore| plate().tapped_part("bed", counterbore);
    refused([
        ("left by its recess", deep(exact(10.0))),
        ("recess of the head", deep(nan)),
        ("left by its recess", cone(mm(20.0))),
        ("countersunk head", cone(mm(0.0))),
        (
            "left by its recess",
            plate().spot_face_under_nut(exact(10.0)),
        ),
        ("no nut", bed(exact(0.0)).washers_under_nut(exact(2.0), 1)),
        // Not even none yet, or a search would add some under a nut that is not there.
        ("no nut", bed(exact(0.0)).washers_under_nut(exact(2.0), 0)),
        ("no nut", bed(exact(0.0)).washer_under_nut(exact(2.0))),
        ("no nut", bed(exact(0.0)).spot_face_under_nut(exact(2.0))),
        ("counterbore", bed(nan)),
        ("counterbore", bed(exact(f64::MAX))),
        (
            "countersunk head",
            cone(mm(3.0)).washer_under_head(exact(2.0)),
        ),
        (
            "countersunk head",
            cone(mm(3.0)).washer_to_add_under_head(exact(2.0)),
        ),
        // Its top 15 mm below the face of a ply of 10 mm.
        (
            "left by its recess",
            plate().head_seat(HeadSeat::Countersunk {
                below_flush: exact(15.0),
                head_height: mm(1.0),
            }),
        ),
        ("shear plane", plate().shear_planes([2])),
        ("shear plane", bed(exact(0.0)).shear_planes([3])),
        (
            "to add under the head",
            plate().washer_to_add_under_head(exact(0.0)),
        ),
    ]);
    assert!(bed(exact(0.0)).shear_planes([2]).build().is_ok());
}

/// A countersunk head 10 mm below the face of 20 mm, and 8 mm high: of the bolt that lies in the ply half of the head
/// bears at most, and nothing above it.
#[test]
fn what_a_countersunk_head_lies_below_flush_does_not_bear() {
    let seat = |below_flush| HeadSeat::Countersunk {
        below_flush: exact(below_flush),
        head_height: mm(8.0),
    };
    let left = |below_flush| {
        let stack = Stack::builder().ply("cover", exact(20.0));
        let stack = stack.head_seat(seat(below_flush)).build().unwrap();
        stack.bearing_thickness(1).unwrap()
    };
    assert!((left(0.0) - mm(16.0)).abs() < mm(1e-9));
    assert!((left(10.0) - mm(6.0)).abs() < mm(1e-9));
}

/// A cover of 20 mm on a bed tapped 25 mm deep, M12: engagement 15 mm at least. ISO 4014 from 50 mm.
#[test]
fn a_tapped_part_wants_engagement_and_depth() {
    let thread = "M12".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread).unwrap();
    let stack = Stack::builder()
        .ply("cover", mm(20.0).plus_minus(mm(0.2)))
        .tapped_part("bed", exact(0.0))
        .shear_planes([1])
        .washer_to_add_under_head(mm(2.5).plus_minus(mm(0.2)))
        .build()
        .unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si).with_cut(CutRule::Never);
    let hole = NutEnd::tapped(mm(15.0), Some(mm(25.0))).unwrap();
    let search = LengthSearch::new(&stack, &screws, hole, rules).unwrap();
    // 40 mm: 40.5 - 19.8 = 20.7 mm at most in the thread; 39.5 - 20.2 = 19.3 at least.
    assert_eq!(
        search.run().unwrap().best().unwrap().screw.nominal,
        mm(40.0)
    );
    let assess = |rules, length: f64| {
        let search = LengthSearch::new(&stack, &screws, hole, rules).unwrap();
        search.assess(screws.length(mm(length)).unwrap()).unwrap()
    };
    let long = assess(rules, 45.0);
    // 45.5 - 19.8 = 25.7: 0.7 mm deeper than the thread.
    let Some(Reason::Bottoms { by }) = long.reasons().next() else {
        panic!("{long:?}")
    };
    assert!((*by - mm(0.7)).abs() < mm(1e-9));
    // One washer under the head takes it out again, where it is permitted.
    let helped = assess(rules.with_washers_under_head(1), 45.0);
    assert!(helped.fits());
    assert_eq!(
        (helped.washers_added_under_head, helped.washers_added),
        (1, 0)
    );
    let short = assess(rules, 35.0);
    // 34.5 - 20.2 = 14.3: 0.7 mm less than wanted.
    let Some(Reason::TooShort { by }) = short.reasons().next() else {
        panic!("{short:?}")
    };
    assert!((*by - mm(0.7)).abs() < mm(1e-9));
    // The chamfer does not engage: 2 P = 3.5 mm of 4.3.
    assert!(assess(rules.with_end_not_counted(2.0), 40.0).fits());
    assert!(!assess(rules.with_end_not_counted(2.5), 40.0).fits());
}

#[test]
fn tapped_parts_and_nuts_do_not_go_together() {
    let thread = "M12".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let hole = NutEnd::tapped(mm(15.0), None).unwrap();
    let builder = Stack::builder().ply("cover", exact(20.0));
    let through = builder.clone().build().unwrap();
    let into = builder.tapped_part("bed", exact(0.0)).build().unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si);
    assert!(LengthSearch::new(&through, &screws, hole, rules).is_err());
    assert!(LengthSearch::new(&into, &screws, nut, rules).is_err());
    assert!(LengthSearch::new(&into, &screws, hole, rules).is_ok());
    assert!(NutEnd::tapped(mm(15.0), Some(mm(14.0))).is_err());
    assert!(NutEnd::tapped(mm(f64::NAN), None).is_err());
    assert!(NutEnd::tapped(mm(0.0), None).is_err());
}

#[test]
fn washers_in_all_are_limited() {
    let thread = "M10".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let washer = mm(2.0).plus_minus(mm(0.2));
    let builder = Stack::builder()
        .washer_under_head(washer)
        .ply("rail foot", mm(8.0).plus_minus(mm(0.2)))
        .ply("base plate", mm(8.0).plus_minus(mm(0.2)))
        .washers_under_nut(washer, 1)
        .washer_under_nut(JointWasher::new("other", washer))
        .shear_planes([1]);
    let stack = builder.build().unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let assess = |rules: LengthRules| {
        let search = LengthSearch::new(&stack, &screws, nut, rules)?;
        search.assess(screws.length(mm(50.0))?)
    };
    // G min = 3 x 1.8 + 2 x 7.8 = 21.0, LG = 50 - 26 = 24: two more of 1.8 mm clear it.
    let free = assess(rules.with_washers_under_nut(4)).unwrap();
    assert!(free.fits());
    assert_eq!((free.washers_added, free.washers_under_nut), (2, 3));
    // The other washer counts.
    assert!(!assess(rules.with_washers_under_nut(3)).unwrap().fits());
    assert!(assess(rules.with_washers_under_nut(1)).is_err());
    assert!(
        assess(rules.with_washers_under_nut(4).with_washers_in_all(5))
            .unwrap()
            .fits()
    );
    assert!(
        !assess(rules.with_washers_under_nut(4).with_washers_in_all(4))
            .unwrap()
            .fits()
    );
    assert!(assess(rules.with_washers_under_nut(4).with_washers_in_all(2)).is_err());
    assert!(assess(rules.with_washers_under_head(0)).is_err());
}

#[test]
fn thread_in_the_holes_is_limited() {
    let thread = "M10".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let stack = Stack::builder()
        .ply("a", exact(20.0))
        .ply("b", exact(20.0))
        .shear_planes([1])
        .build()
        .unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let reason = |pitches| {
        let rules = rules.with_thread_in_holes(pitches);
        let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
        let candidate = search.assess(screws.length(mm(60.0)).unwrap()).unwrap();
        candidate.reasons().next().copied()
    };
    // LB = 60 - 26 - 7.5 = 26.5: 13.5 mm or 9 pitches of the holes have no sure shank.
    assert_eq!(reason(9.0), None);
    let Some(Reason::ThreadInHoles { by }) = reason(8.0) else {
        panic!("{:?}", reason(8.0))
    };
    assert!((by - mm(1.5)).abs() < mm(1e-9));
}

/// The chains of tolerances add up the same lengths as the search, whatever the stack has.
#[test]
fn tolerance_chains_have_every_length() {
    use crate::joint::{JointTolerances, ToleranceMethod};
    let thread = "M10".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let washer = mm(2.0).plus_minus(mm(0.2));
    let stack = Stack::builder()
        .head_seat(HeadSeat::Recessed {
            depth: between(1.0, 1.5, 2.5),
        })
        .washer_to_add_under_head(washer)
        .ply("lug", mm(15.0).plus_minus(mm(0.3)))
        .gap(between(0.0, 0.5, 1.5))
        .soft_ply("mat", mm(8.0).plus_minus(mm(0.3)), mm(2.0))
        .ply("arm", mm(12.0).plus_minus(mm(0.3)))
        .sleeve("bushing", mm(12.5).plus_minus(mm(0.1)), 3, 3)
        .washer_under_nut(JointWasher::new("cup", washer))
        .washers_under_nut(washer, 1)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si)
        .with_protrusion(2.0, None)
        .with_washers_under_nut(4)
        .with_washers_under_head(1);
    let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
    let candidate = search.assess(screws.length(mm(65.0)).unwrap()).unwrap();
    assert_eq!(candidate.washers_added_under_head, 1, "{candidate:?}");
    let worst = JointTolerances::of(&stack, &candidate, nut, ToleranceMethod::WorstCase).unwrap();
    let near = |a: Length, b: Length| assert!((a - b).abs() < mm(1e-9), "{a:?} {b:?}");
    near(worst.grip.min, candidate.grip.min);
    near(worst.grip.max, candidate.grip.max);
    near(worst.jam_margin.min, candidate.jam_margin);
    near(worst.protrusion.min, candidate.protrusion.min);
    near(worst.protrusion.max, candidate.protrusion.max);
    let body = candidate.screw.body_length_min;
    for (range, position) in worst.planes_to_run_out.iter().zip(stack.plane_positions()) {
        near(range.min, body - position.max - washer.max);
        near(range.max, body - position.min - washer.min);
    }
}

/// Thread in a spot face lies in no hole. ISO 4014 M12 x 60: 18.75 mm of sure shank; the hole ends at
/// 40 - 5 = 35 mm, which leaves 16.25 mm, 9.3 pitches, of thread in it.
#[test]
fn a_spot_face_is_no_hole() {
    let thread = "M12".parse().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
    let screw = screws.length(mm(60.0)).unwrap();
    let stack = Stack::builder()
        .ply("lug", exact(40.0))
        .spot_face_under_nut(exact(5.0))
        .build()
        .unwrap();
    let fits = |most| {
        let rules = LengthRules::fabrication(UnitSystem::Si).with_thread_in_holes(most);
        let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
        search.assess(screw).unwrap().fits()
    };
    let threads = (mm(35.0) - screw.body_length_min).value / mm(1.75).value;
    assert!(fits(threads + 0.01) && !fits(threads - 0.01));
}

/// A thousand plies, each with its sleeve, a gap and a plane between all of them.
#[test]
fn the_largest_stack_is_put_together() {
    let plies: usize = 1000;
    let mut builder = Stack::builder().shear_planes(1..plies);
    for number in 1..=plies {
        builder = builder
            .ply("ply", exact(1.0))
            .sleeve("s", exact(2.0), number, number);
        if number < plies {
            builder = builder.gap(exact(1.0));
        }
    }
    let stack = builder.build().unwrap();
    same(stack.grip(), 2999.0, 2999.0, 2999.0);
    for (position, plane) in stack.plane_positions().iter().zip(1_u32..) {
        let x = 3.0 * f64::from(plane);
        same(*position, x, x, x);
    }
}

/// A lap of plies with what each is said to pull, sheared after the plies of these numbers.
fn lap(pulls: &[Option<f64>], planes: &[usize]) -> StackBuilder {
    let plies = pulls.iter().map(|&pull| JointPly {
        pull,
        ..JointPly::new("ply", exact(10.0))
    });
    plies
        .fold(Stack::builder(), StackBuilder::add)
        .shear_planes(planes.iter().copied())
}

/// Statics by hand: a plane carries the sum of what lies on one side of it.
#[test]
fn planes_carry_what_the_plies_pull() {
    let of = |builder: StackBuilder| {
        let stack = builder.build().unwrap();
        (stack.pulls().to_vec(), stack.plane_shares().to_vec())
    };
    // Nothing said: in turn, every plane alike.
    let free = [None; 5];
    assert_eq!(
        of(lap(&free[..2], &[1])),
        ([1.0, -1.0].into(), [1.0].into())
    );
    assert_eq!(
        of(lap(&free, &[1, 2, 3, 4])),
        ([0.25, -0.5, 0.5, -0.5, 0.25].into(), [0.25; 4].into())
    );
    // Two plies on one side of the plane share by thickness, the least one of soft plies.
    let doubled = Stack::builder()
        .ply("thick", exact(15.0))
        .soft_ply("thin", exact(10.0), mm(5.0))
        .ply("tongue", exact(30.0))
        .shear_planes([2]);
    assert_eq!(of(doubled), ([0.75, 0.25, -1.0].into(), [1.0].into()));
    // Packing on both sides of a plane passes the load on, and pulls nothing.
    let packed = lap(&[None, Some(0.0), None], &[1, 2]);
    assert_eq!(of(packed), ([1.0, 0.0, -1.0].into(), [1.0; 2].into()));
    // A tapped part holds against all plies.
    let bed = Stack::builder()
        .ply("flange", exact(10.0))
        .shear_planes([1])
        .tapped_part("bed", exact(0.0));
    assert_eq!(of(bed), ([1.0, -1.0].into(), [1.0].into()));
    // Said: 0.75 one way, then 0.25 the other way beyond the middle; and all of it over two planes.
    let said = lap(&[Some(0.75), Some(-1.0), Some(0.25)], &[1, 2]);
    assert_eq!(of(said).1, [0.75, 0.25]);
    let ladder = lap(&[Some(0.5), Some(0.5), Some(-1.0)], &[1, 2]);
    assert_eq!(of(ladder).1, [0.5, 1.0]);
}

#[test]
fn pulls_out_of_balance_are_refused() {
    let two = |first: f64, second: f64| lap(&[Some(first), Some(second)], &[1]);
    refused([
        ("not in balance", two(1.0, -0.9)),
        ("not in balance", two(0.5, 0.5)),
        ("pull of \"ply\"", two(f64::NAN, -1.0)),
        ("pull of \"ply\"", two(1.5, -1.5)),
        ("does not say what it pulls", lap(&[Some(1.0), None], &[1])),
        ("no two plies pull", lap(&[Some(0.0), None], &[1])),
        // The bolt is cut between the first two plies as well.
        (
            "no shear plane lies between",
            lap(&[Some(0.5), Some(-1.0), Some(0.5)], &[2]),
        ),
    ]);
    // Thirds as people write them.
    assert!(
        lap(&[Some(0.333), Some(-1.0), Some(0.667)], &[1, 2])
            .build()
            .is_ok()
    );
}
