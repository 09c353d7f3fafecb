//! What is taken from a bin, and what a cut leaves, by hand.

use shankline::joint::{Bin, BoltTrait, CutMethod, CutPlan};
use shankline::parts::AnBolt;
use shankline::prelude::*;

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

fn is_near(length: Length, by_hand: f64) -> bool {
    (length - millimetres(by_hand)).abs() < HAIR
}

fn m12() -> Thread {
    "M12".parse().unwrap()
}

fn series(product: ScrewProduct) -> ScrewSeries {
    ScrewSeries::new(product, &m12()).unwrap()
}

fn nut() -> NutEnd {
    NutEnd::with_height(exact(10.0)).unwrap()
}

fn rules() -> LengthRules {
    LengthRules::fabrication(UnitSystem::Si).with_protrusion(2.0, None)
}

/// Planes at 2, 4 and 31 mm of 37.5 mm, M12 by ISO 4014: 60 mm has its shank to 21.25 mm and its thread from 30 mm. The one
/// of 65 mm, shank to 26.25 mm and thread from 35 mm, has the last plane in the run-out.
#[test]
fn washers_and_planes_of_what_is_taken_are_counted() {
    let stack = Stack::builder()
        .ply("a", exact(2.0))
        .ply("b", exact(2.0))
        .ply("c", exact(27.0))
        .ply("d", exact(4.0))
        .shear_planes([1, 2, 3])
        .washers_under_nut(exact(2.5), 1)
        .build()
        .unwrap();
    let bolts = series(ScrewProduct::Iso4014);
    let screws = series(ScrewProduct::Iso4017);
    let mm = millimetres;
    let bin = Bin::new()
        .product("bolt 65", &bolts, mm(65.0), 2)
        .and_then(|bin| bin.product("bolt 60", &bolts, mm(60.0), 3))
        .and_then(|bin| bin.product("screw 60", &screws, mm(60.0), 7))
        .unwrap();
    let pick = |joints| bin.pick(&stack, &m12(), nut(), rules(), joints).unwrap();
    let three = pick(5);
    let taken = |pick: &shankline::joint::BinPick| -> Vec<(usize, usize)> {
        pick.taken.iter().map(|own| (own.item, own.count)).collect()
    };
    assert_eq!(taken(&three), [(0, 2), (1, 3)]);
    assert_eq!((three.washers_under_nut, three.missing), (5, 0));
    assert_eq!(three.planes_not_on_shank, 5);
    // Three planes of each screw that is threaded to its head lie in its thread.
    let seven = pick(6);
    assert_eq!(taken(&seven), [(0, 2), (1, 3), (2, 1)]);
    assert_eq!((seven.planes_not_on_shank, seven.washers_under_nut), (8, 6));
    // All alike: the first kind that has as many as there are joints.
    assert_eq!(pick(2).all_alike, Some(0));
    assert_eq!(taken(&pick(2)), [(0, 2)]);
    assert_eq!(pick(3).all_alike, Some(1));
    assert_eq!(pick(7).all_alike, Some(2));
    assert_eq!(pick(8).all_alike, None);
    assert_eq!(pick(13).missing, 1);
}

/// Two washers under each nut and one under each head.
#[test]
fn washers_are_counted_on_both_sides() {
    let stack = Stack::builder()
        .washer_to_add_under_head(exact(4.0))
        .ply("plate", exact(30.0))
        .washers_under_nut(exact(2.0), 2)
        .build()
        .unwrap();
    let bin = Bin::new()
        .product("bolt", &series(ScrewProduct::Iso4014), millimetres(65.0), 9)
        .unwrap();
    // 65 mm: thread from 35 mm, and 34 mm are there: a washer under the head makes it 38 mm.
    let rules = rules().with_washers_under_nut(2).with_washers_under_head(2);
    let pick = bin.pick(&stack, &m12(), nut(), rules, 3).unwrap();
    assert_eq!(
        (pick.washers_under_nut, pick.washers_added_under_head),
        (6, 3)
    );
}

/// What is not cut by its kind is not cut from a bin either, though the rules permit it.
#[test]
fn the_traits_of_the_last_bolt_decide_whether_it_is_cut() {
    let stack = Stack::builder().ply("plate", exact(30.0)).build().unwrap();
    let screws = series(ScrewProduct::Iso4017);
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let bin = |traits: &[BoltTrait]| {
        let bin = Bin::new().product("screw", &screws, millimetres(70.0), 4);
        bin.unwrap().with_traits(traits.iter().copied())
    };
    let fits = |bin: Bin| {
        let pick = bin.pick(&stack, &m12(), nut(), rules, 1).unwrap();
        (pick.fitting.len(), pick.rejected.len())
    };
    assert_eq!(fits(bin(&[])), (1, 0));
    assert_eq!(fits(bin(&[BoltTrait::Galvanized])), (1, 0));
    assert_eq!(fits(bin(&[BoltTrait::MarkedEnd])), (0, 1));
    let own = bin(&[BoltTrait::Galvanized, BoltTrait::MarkedEnd]);
    assert_eq!(
        own.items()[0].traits,
        [BoltTrait::Galvanized, BoltTrait::MarkedEnd]
    );
}

/// AN4-7A: 0.906 in long, grip 0.422 to 0.454 in, not to be cut; its shank limits were recalled.
#[test]
fn an_aircraft_bolt_lies_in_the_bin_as_one() {
    let bolt: AnBolt = "AN4-7A".parse().unwrap();
    let bin = Bin::new().aircraft(&bolt, 12).unwrap();
    let [item] = bin.items() else {
        panic!("one kind")
    };
    assert_eq!((item.part.as_str(), item.count), ("AN4-7A", 12));
    assert_eq!(item.thread, "1/4-28 UNF".parse().unwrap());
    assert_eq!(item.traits, [BoltTrait::Aircraft]);
    assert!((item.screw.nominal - inches(0.906)).abs() < HAIR);
    assert!((item.screw.grip_gaging_length_max - inches(0.454)).abs() < HAIR);
    assert!(item.cautions.iter().count() > 0);
}

/// Grip 30 mm within 2 mm either way, nut exactly 10 mm, 3.5 to 8.75 mm beyond it, cut within 0.5 mm to whole
/// millimetres: 32 + 10 + 3.5 + 0.5 = 46 mm. The greatest protrusion is 46.5 - 28 - 10 = 8.5 mm, and holds; with 2.5 mm either
/// way 46.5 goes to 47 mm, and 47.5 - 27.5 - 10 = 10 mm does not.
#[test]
fn a_fixed_cut_holds_the_window_or_not() {
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let plan = |spread: f64| {
        let plate = millimetres(30.0).plus_minus(millimetres(spread));
        let stack = Stack::builder().ply("plate", plate).build().unwrap();
        let screws = series(ScrewProduct::Iso4014);
        let search = shankline::joint::LengthSearch::new(&stack, &screws, nut(), rules).unwrap();
        // 55 mm: thread from 25 mm.
        let screw = screws.length(millimetres(55.0)).unwrap();
        let candidate = search.assess(screw).unwrap();
        assert!(candidate.fits() && candidate.needs_cut);
        let plan = CutPlan::new(&candidate, &m12(), nut(), rules).unwrap();
        (candidate, plan)
    };
    let (candidate, fixed) = plan(2.0);
    assert!(candidate.holds_window());
    assert_eq!(fixed.method, CutMethod::ToFixedLength);
    let cut = fixed.cut().unwrap();
    assert!(is_near(cut.finished.nominal, 46.0) && is_near(cut.protrusion.max, 8.5));
    assert!(is_near(cut.thread_left, 45.5 - 25.0));
    // The chamfer goes to the root: (12 - d3) / 2 with d3 = 12 - 1.22687 x 1.75 (ISO 724).
    let full = fixed.full_thread_beyond_nut().unwrap();
    let chamfer = 0.5 * 1.226_87 * 1.75;
    assert!((full - millimetres(45.5 - 32.0 - 10.0 - chamfer)).abs() < millimetres(1e-4));

    let (candidate, at_fit_up) = plan(2.5);
    assert!(!candidate.holds_window());
    assert_eq!(at_fit_up.method, CutMethod::AtFitUp);
    let cut = at_fit_up.cut().unwrap();
    // 27.5 + 10 + 4 - 0.5 mm for the thinnest stack, thread from 25 mm.
    assert!(is_near(cut.thread_left, 41.0 - 25.0));
    assert!(is_near(cut.mark_from_nut.nominal, 4.0));
    // 3.5 mm beyond the nut, less the chamfer.
    let full = at_fit_up.full_thread_beyond_nut().unwrap();
    assert!((full - millimetres(3.5 - chamfer)).abs() < millimetres(1e-4));
}
