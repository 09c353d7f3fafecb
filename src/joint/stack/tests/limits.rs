//! What is just taken and what is just refused, and what a change of a stack leaves as it was.

use alloc::vec;

use super::*;
use crate::joint::stack::timber::TimberFigures;
use crate::parts::WasherStyle;
use crate::strength::ply::SlotDirection;
use crate::tables::timber::TimberKind;
use crate::thread::Thread;
use crate::units::{
    Angle, degrees, kilograms_per_cubic_metre, megapascals, millimetres, ppm_per_kelvin,
};

/// Each with whether it is taken.
fn judged(cases: impl IntoIterator<Item = (StackBuilder, bool)>) {
    for (number, (builder, right)) in cases.into_iter().enumerate() {
        let built = builder.build();
        assert_eq!(built.is_ok(), right, "{number}: {built:?}");
    }
}

fn bored(hole: f64) -> JointPly {
    JointPly::new("bored", exact(10.0)).hole(mm(hole))
}

#[test]
fn counts_have_limits() {
    let head = |count: usize| (0..count).fold(plate(), |own, _| own.washer_under_head(exact(1.0)));
    let others = |count: usize| (0..count).fold(plate(), |own, _| own.washer_under_nut(exact(1.0)));
    let plies = |count: usize| (0..count).fold(plate(), |own, _| own.ply("more", exact(1.0)));
    judged([
        (head(100), true),
        (head(101), false),
        (others(100), true),
        (others(101), false),
        (plate().washers_under_nut(exact(1.0), 100), true),
        (plate().washers_under_nut(exact(1.0), 101), false),
        (plies(998), true),
        (plies(999), false),
    ]);
}

#[test]
fn details_of_washers_and_plies_have_limits() {
    fn washer() -> JointWasher {
        JointWasher::new("washer", exact(2.0))
    }
    let hard = |vickers| plate().washer_under_head(washer().hardness(vickers));
    let at_nut = |vickers| plate().washers_under_nut(washer().hardness(vickers), 1);
    let added = |vickers| plate().washer_to_add_under_head(washer().hardness(vickers));
    let other = |vickers| plate().washer_under_nut(washer().hardness(vickers));
    for of in [hard, at_nut, added, other] as [fn(f64) -> StackBuilder; 4] {
        judged([
            (of(1.0), true),
            (of(0.99), false),
            (of(3000.0), true),
            (of(3000.1), false),
        ]);
    }
    let wide =
        |outside, inside| plate().washer_under_nut(washer().diameters(mm(outside), mm(inside)));
    let grained =
        |angle: Angle| one().add(JointPly::new("post", exact(40.0)).timber("Southern Pine", angle));
    let slotted = |length| one().add(bored(10.0).slot(mm(10.0), mm(length), SlotDirection::Along));
    // A slot of which nobody knows the width.
    let without_hole = JointPly {
        hole: None,
        ..bored(10.0).slot(mm(10.0), mm(20.0), SlotDirection::Along)
    };
    judged([
        (wide(20.0, 10.0), true),
        (wide(0.0, 10.0), false),
        (wide(20.0, 0.0), false),
        (grained(degrees(0.0)), true),
        (grained(degrees(90.0)), true),
        (grained(degrees(-0.01)), false),
        (grained(degrees(90.01)), false),
        (slotted(10.0), true),
        (slotted(9.99), false),
        (one().add(bored(0.0)), false),
        (one().add(without_hole), false),
        (plate().tapped_part("bed", exact(1e6)), true),
        (plate().tapped_part("bed", exact(1.001e6)), false),
    ]);
}

fn own(name: &str) -> OwnMaterial {
    OwnMaterial::new(name, MaterialKind::CarbonSteel)
}

/// Strengths that are stated for 8 to 10 mm go with 8 and with 10 mm, by the nominal thickness.
#[test]
fn a_material_is_for_its_thicknesses() {
    let of = |thickness: f64| {
        let material = own("steel (invented)").thickness(mm(8.0), mm(10.0));
        one().add(
            JointPly::new("ply", between(thickness - 1.0, thickness, thickness + 1.0))
                .material(material),
        )
    };
    judged([
        (of(7.999), false),
        (of(8.0), true),
        (of(10.0), true),
        (of(10.001), false),
    ]);
    let engaged = |engaged: f64| {
        let mut part = TappedPart::new("bed");
        part.material = Some(own("steel (invented)").thickness(mm(8.0), mm(20.0)).into());
        part.engagement = Some(mm(engaged));
        plate().tapped(part)
    };
    judged([
        (engaged(5.0), true),
        (engaged(20.0), true),
        (engaged(20.001), false),
    ]);
}

#[test]
fn a_material_of_ones_own_has_limits() {
    use MaterialKind::{Aluminium, CarbonSteel, CastIron, Other, StainlessSteel};
    let steel = || own("steel (invented)");
    let kind =
        |kind, modulus: f64| OwnMaterial::new("own", kind).elastic_modulus(megapascals(modulus));
    let grows = |kind, ppm: f64| OwnMaterial::new("own", kind).expansion(ppm_per_kelvin(ppm));
    let strong =
        |yields: f64, breaks: f64| steel().strengths(megapascals(yields), megapascals(breaks));
    let pressed = |pressure: f64| strong(200.0, 400.0).surface_pressure(megapascals(pressure));
    for (number, (material, right)) in [
        (own("  "), false),
        (own("two\nlines"), false),
        (strong(400.0, 400.0), true),
        (strong(400.1, 400.0), false),
        (strong(3000.0, 3000.0), true),
        (strong(3000.0, 3000.1), false),
        (pressed(2000.0), true),
        (pressed(2000.1), false),
        (steel().shear_ratio(2.0), true),
        (steel().shear_ratio(2.01), false),
        (steel().shear_ratio(0.01), true),
        (steel().shear_ratio(0.0), false),
        (steel().thickness(mm(8.0), mm(8.0)), true),
        (steel().thickness(mm(8.01), mm(8.0)), false),
        (kind(CarbonSteel, 150e3), true),
        (kind(CarbonSteel, 149e3), false),
        (kind(StainlessSteel, 250e3), true),
        (kind(StainlessSteel, 251e3), false),
        (kind(Aluminium, 40e3), true),
        (kind(Aluminium, 131e3), false),
        (kind(CastIron, 200e3), true),
        (kind(CastIron, 201e3), false),
        (kind(Other, 1e-3), true),
        (kind(Other, 1.6e6), false),
        (grows(CarbonSteel, 8.0), true),
        (grows(CarbonSteel, 7.9), false),
        (grows(StainlessSteel, 21.1), false),
        (grows(Aluminium, 30.0), true),
        (grows(Aluminium, 30.1), false),
        (grows(CastIron, 1.0), true),
        (grows(CastIron, 22.1), false),
        (grows(Other, 1000.0), true),
        (grows(Other, 1001.0), false),
    ]
    .into_iter()
    .enumerate()
    {
        assert_eq!(material.checked().is_ok(), right, "{number}: {material:?}");
    }
}

#[test]
fn a_timber_of_ones_own_has_limits() {
    let nds = |specific_gravity, pressure: Option<f64>| TimberFigures::Nds {
        specific_gravity,
        compression_across: pressure.map(megapascals),
    };
    let en = |density| TimberFigures::En1995 {
        characteristic_density: kilograms_per_cubic_metre(density),
        compression_across: None,
    };
    for (figures, right) in [
        (nds(0.31, None), true),
        (nds(0.309, None), false),
        (nds(0.73, None), true),
        (nds(0.731, None), false),
        (nds(0.5, Some(1e-3)), true),
        (nds(0.5, Some(0.9e-3)), false),
        (nds(0.5, Some(50.0)), true),
        (nds(0.5, Some(50.1)), false),
        (en(250.0), true),
        (en(249.0), false),
        (en(1000.0), true),
        (en(1001.0), false),
    ] {
        let timber = OwnTimber::new("own", TimberKind::Softwood, figures);
        assert_eq!(timber.checked().is_ok(), right, "{figures:?}");
    }
}

/// A plane may lie where a sleeve ends and not in it; sleeves may follow each other; none lies in a ply that is let in.
#[test]
fn sleeves_and_gaps_lie_between_their_plies() {
    let four = || plate().ply("c", exact(10.0)).ply("d", exact(10.0));
    let sleeve = |own: StackBuilder, first, last| own.sleeve("tube", exact(20.0), first, last);
    let recessed = HeadSeat::Recessed { depth: exact(1.0) };
    judged(vec![
        (sleeve(four(), 2, 3).shear_planes([1]), true),
        (sleeve(four(), 2, 3).shear_planes([2]), false),
        (sleeve(four(), 2, 3).shear_planes([3]), true),
        (sleeve(four(), 0, 1), false),
        (sleeve(four(), 1, 4), true),
        (sleeve(four(), 1, 5), false),
        (sleeve(four(), 3, 2), false),
        (sleeve(sleeve(four(), 1, 2), 3, 4), true),
        (sleeve(sleeve(four(), 3, 4), 1, 2), true),
        (sleeve(sleeve(four(), 1, 3), 3, 4), false),
        (sleeve(four(), 1, 2).head_seat(recessed), false),
        (sleeve(four(), 2, 3).head_seat(recessed), true),
        (sleeve(four(), 3, 4).spot_face_under_nut(exact(1.0)), false),
        (sleeve(four(), 2, 3).spot_face_under_nut(exact(1.0)), true),
        (plate().shear_planes([1]), true),
        (plate().shear_planes([0]), false),
        (plate().shear_planes([2]), false),
        (plate().shear_planes([1, 1]), false),
        (one().shear_planes([1]), false),
        (one().tapped_part("bed", exact(0.0)).shear_planes([1]), true),
        (one().gap(exact(1.0)), false),
        (one().gap(exact(1.0)).tapped_part("bed", exact(0.0)), true),
        (
            one().gap(exact(1.0)).gap(exact(1.0)).ply("b", exact(9.0)),
            false,
        ),
        (plate().tapped_part("bed", exact(2.0)), true),
    ]);
}

/// A gap in a sleeve is closed for the bolt, and one where it ends is open.
#[test]
fn a_sleeve_closes_the_gaps_in_it() {
    let stack = plate()
        .gap(exact(1.0))
        .ply("c", exact(10.0))
        .gap(exact(2.0))
        .ply("d", exact(10.0))
        .sleeve("tube", exact(22.0), 2, 3)
        .build()
        .unwrap();
    let open: Vec<usize> = stack.open_gaps().map(|gap| gap.after_ply).collect();
    assert_eq!(open, [3]);
    assert_eq!(stack.gaps().len(), 2);
    // Of 22 mm around 10 + 1 + 10 mm; the gap of 2 mm lies beyond it.
    same(stack.sleeves()[0].play, 1.0, 1.0, 1.0);
    same(stack.grip(), 44.0, 44.0, 44.0);
}

#[test]
fn what_is_plain_and_what_can_be_turned() {
    let cone = HeadSeat::Countersunk {
        below_flush: exact(0.0),
        head_height: mm(3.0),
    };
    let recessed = HeadSeat::Recessed { depth: exact(1.0) };
    for (number, (builder, plain, turned)) in [
        (plate(), true, true),
        (plate().washers_under_nut(exact(2.0), 1), true, true),
        (one().gap(exact(1.0)).ply("b", exact(9.0)), false, true),
        (plate().sleeve("tube", exact(9.0), 1, 1), false, true),
        (plate().head_seat(recessed), false, true),
        (plate().head_seat(cone), false, false),
        (plate().spot_face_under_nut(exact(1.0)), false, true),
        (plate().tapped_part("bed", exact(0.0)), false, false),
        (plate().soft_ply("mat", exact(5.0), mm(1.0)), false, true),
    ]
    .into_iter()
    .enumerate()
    {
        let stack = builder.build().unwrap();
        assert_eq!(
            (stack.is_plain(), stack.can_be_turned()),
            (plain, turned),
            "{number}"
        );
    }
}

/// Holes: those that are missing, round ones, all of them, and those of some plies taken away.
#[test]
fn holes_are_drilled_where_they_are_asked_for() {
    let stack = || {
        Stack::builder()
            .add(bored(11.0))
            .add(bored(11.0).slot(mm(11.0), mm(20.0), SlotDirection::Along))
            .ply("undrilled", exact(10.0))
    };
    let holes = |builder: StackBuilder| -> Vec<Option<f64>> {
        let holes = builder.plies().iter().map(|ply| ply.hole);
        holes
            .map(|hole| hole.map(|hole| (hole / mm(1.0)).value.round()))
            .collect()
    };
    let (old, new) = (Some(11.0), Some(14.0));
    assert_eq!(holes(stack()), [old, old, None]);
    assert_eq!(holes(stack().missing_holes_of(mm(14.0))), [old, old, new]);
    assert_eq!(holes(stack().round_holes_of(mm(14.0))), [new, old, new]);
    assert_eq!(holes(stack().holes_of(mm(14.0))), [new, new, new]);
    assert_eq!(holes(stack().without_holes_in(&[1, 3])), [None, old, None]);
}

#[test]
fn washers_are_found_and_taken_away_wherever_they_lie() {
    assert!(!plate().has_washers());
    for builder in [
        plate().washer_under_head(exact(2.0)),
        plate().washer_to_add_under_head(exact(2.0)),
        plate().washer_under_nut(exact(2.0)),
        plate().washers_under_nut(exact(2.0), 0),
    ] {
        assert!(builder.has_washers());
        let bare = builder.without_washers();
        assert!(!bare.has_washers());
        assert_eq!(bare.build(), plate().build());
    }
    assert!(plate().head_is_flat() && !plate().has_tapped_part());
    assert!(plate().tapped_part("bed", exact(0.0)).has_tapped_part());
}

/// Other washers keep metal and hardness of those before, unless their style has a hardness of its own: F436 is hardened,
/// ISO 7089 comes in two.
#[test]
fn washers_of_another_style_keep_what_is_known_of_them() {
    let hardness = |style: Option<WasherStyle>| {
        let thread = if style == Some(WasherStyle::F436) {
            "1/2-13 UNC"
        } else {
            "M12"
        };
        let thread = thread.parse().unwrap();
        let other = style.map_or_else(
            || JointWasher::new("shim", exact(1.0)),
            |style| JointWasher::find(style, &thread).unwrap(),
        );
        let old = || JointWasher::new("old", exact(3.0)).hardness(250.0);
        let stack = plate()
            .washer_under_head(old())
            .washer_to_add_under_head(old())
            .washers_under_nut(old(), 2)
            .washers_of(&other)
            .build()
            .unwrap();
        let (at_nut, count) = stack.washers_under_nut().unwrap();
        let head = &stack.washers_under_head()[0];
        let added = stack.washer_to_add_under_head().unwrap();
        assert_eq!(count, 2);
        for washer in [at_nut, head, added] {
            assert_eq!((washer.style, washer.thickness), (style, other.thickness));
            assert_eq!(washer.hardness, at_nut.hardness);
        }
        at_nut.hardness
    };
    assert_eq!(hardness(Some(WasherStyle::Iso7089)), Some(250.0));
    assert_eq!(hardness(Some(WasherStyle::F436)), None);
    assert_eq!(hardness(None), Some(250.0));
    // None under the nut before: they may be added from then on, but not where there is no nut.
    let shim = JointWasher::new("shim", exact(1.0));
    let through = plate().washers_of(&shim).build().unwrap();
    assert_eq!(through.washers_under_nut(), Some((&shim, 0)));
    let tapped = plate().tapped_part("bed", exact(0.0)).washers_of(&shim);
    assert_eq!(tapped.build().unwrap().washers_under_nut(), None);
}

/// Each washer of a style is as thick as that of the thread.
#[test]
fn washers_follow_their_thread() {
    let [m12, m20]: [Thread; 2] = ["M12", "M20"].map(|name| name.parse().unwrap());
    let of = |thread| JointWasher::find(WasherStyle::Iso7089, thread).unwrap();
    let stack = plate()
        .washer_under_head(of(&m12))
        .washer_to_add_under_head(of(&m12))
        .washer_under_nut(of(&m12))
        .washer_under_nut(exact(7.0))
        .washers_under_nut(of(&m12), 1)
        .washers_for(&m20)
        .unwrap()
        .build()
        .unwrap();
    let thick = of(&m20).thickness;
    assert_ne!(thick, of(&m12).thickness);
    assert_eq!(stack.washers_under_head()[0].thickness, thick);
    assert_eq!(stack.washer_to_add_under_head().unwrap().thickness, thick);
    assert_eq!(stack.other_washers_under_nut()[0].thickness, thick);
    assert_eq!(stack.other_washers_under_nut()[1].thickness, exact(7.0));
    assert_eq!(stack.washers_under_nut().unwrap().0.thickness, thick);
}

/// What a pull may be, and how far off balance: thirds in three digits, not a hundredth.
#[test]
fn pulls_are_shares_of_the_load() {
    let two = |one: f64, other: f64| lap(&[Some(one), Some(other)], &[1]);
    let three = |a: f64, b: f64, c: f64| lap(&[Some(a), Some(b), Some(c)], &[1, 2]);
    judged([
        (two(1.0, -1.0), true),
        (two(1.001, -1.001), false),
        (two(-1.0, 1.0), true),
        (two(0.9, -0.9), false),
        (two(0.999, -0.999), true),
        (three(0.333, -1.0, 0.666), true),
        (three(0.333, -1.0, 0.66), false),
        (three(0.5, 0.5, -1.0), true),
        (lap(&[Some(0.5), Some(-0.5)], &[1]), false),
        // Nothing at all is pulled, and every ply says so: packing beside no load.
        (lap(&[Some(0.0), Some(0.0)], &[]), true),
    ]);
    // Both plies of a side pull the same way, in two planes what lies between is pulled by both.
    let shares = |builder: StackBuilder| builder.build().unwrap().plane_shares().to_vec();
    assert_eq!(shares(three(0.5, 0.5, -1.0)), [0.5, 1.0]);
    let four = lap(&[Some(0.5), Some(-0.5), Some(0.5), Some(-0.5)], &[1, 2, 3]);
    assert_eq!(shares(four), [0.5, 0.0, 0.5]);
    // 0.1 + 0.2 - 0.3 is 5.6e-17 in binary numbers, and no load.
    let tenths = [0.1, 0.2, -0.3, 0.7, -0.7].map(Some);
    assert!(shares(lap(&tenths, &[2, 3, 4]))[1] <= 0.0);
    // Below 1 on either side, as the message says.
    let error = two(1.001, -1.0).build().unwrap_err().to_string();
    assert!(error.contains("-1") && error.contains("1.001"), "{error}");
    // In turn: of four plies the inner two pull twice.
    assert_eq!(shares(lap(&[None; 4], &[1, 2, 3])), [1.0 / 3.0; 3]);
    let pulls = lap(&[None; 4], &[1, 2, 3])
        .build()
        .unwrap()
        .pulls()
        .to_vec();
    for (found, expected) in pulls.iter().zip([1.0, -2.0, 2.0, -1.0]) {
        assert!((found - expected / 3.0).abs() < 1e-12);
    }
    // A tapped part takes what is left, and pulls in turn where a plane lies at its face.
    let bed = lap(&[Some(0.25), Some(0.75)], &[1, 2]).tapped_part("bed", exact(0.0));
    let bed = bed.build().unwrap();
    assert_eq!(
        (bed.pulls(), bed.plane_shares()),
        (&[0.25, 0.75, -1.0][..], &[0.25, 1.0][..])
    );
    let between = lap(&[None; 2], &[1])
        .tapped_part("bed", exact(0.0))
        .build()
        .unwrap();
    assert_eq!(between.pulls(), [1.0, -1.0, 0.0]);
    let at_face = lap(&[None; 2], &[1, 2])
        .tapped_part("bed", exact(0.0))
        .build()
        .unwrap();
    assert_eq!(at_face.pulls(), [0.5, -1.0, 0.5]);
    // A shim at the bed takes nothing over: the plane at the bed is missing. With it the load goes through the shim.
    let shim = |planes: &[usize]| lap(&[None, Some(0.0)], planes).tapped_part("bed", exact(0.0));
    assert!(shim(&[1]).build().is_err());
    assert_eq!(shares(shim(&[1, 2])), [1.0, 1.0]);
}

/// Of a screw with its shank to 11 mm at least and its thread from 16 mm at most, planes at 10 +- 2 mm and at 20 +- 2 mm.
#[test]
fn planes_lie_in_zones() {
    use crate::parts::{ScrewLength, Zone};
    let stack = Stack::builder()
        .ply("a", between(8.0, 10.0, 12.0))
        .ply("b", exact(5.0))
        .ply("c", exact(9.0))
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let screw = ScrewLength::measured(mm(50.0), mm(11.0), mm(16.0)).unwrap();
    let planes: Vec<_> = stack.planes(&screw).collect();
    assert_eq!(
        (planes[0].nominal, planes[0].worst),
        (Zone::Shank, Zone::RunOut)
    );
    assert_eq!(
        (planes[1].nominal, planes[1].worst),
        (Zone::RunOut, Zone::Thread)
    );
    assert_eq!((planes[0].after_ply, planes[1].after_ply), (1, 2));
    // After the last plane 9 mm, less 5 mm of run-out, less the 4 mm by which the plane varies.
    let margin = |transition: f64, washers| {
        let margin = stack.shank_and_clamp_margin(mm(transition), washers);
        margin.unwrap().unwrap()
    };
    assert!((margin(5.0, 0) - mm(0.0)).abs() < mm(1e-9));
    let washered = stack
        .to_builder()
        .washers_under_nut(exact(2.0), 0)
        .build()
        .unwrap();
    let more = washered
        .shank_and_clamp_margin(mm(5.0), 2)
        .unwrap()
        .unwrap();
    assert!((more - mm(4.0)).abs() < mm(1e-9));
    assert!(stack.shank_and_clamp_margin(millimetres(-1.0), 0).is_err());
    assert_eq!(
        plate().build().unwrap().shank_and_clamp_margin(mm(5.0), 0),
        Ok(None)
    );
}
