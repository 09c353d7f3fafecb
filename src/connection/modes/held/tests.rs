//! Cuts through a plate that is held at its top, and net widths, by hand; lengths in metres, forces in newtons.

use super::*;
use crate::connection::tests::bolt;
use crate::connection::tests::{outline, rectangle};
use crate::joint::{Joint, PlyFacts};
use crate::strength::check::Level;
use crate::units::{from_base, megapascals};
use core::cell::OnceCell;

fn near(found: f64, hand: f64) -> bool {
    (found - hand).abs() < 1e-9
}

fn joint() -> Joint {
    bolt("10 mm").build().unwrap()
}

fn seen<T>(places: &[Vector], forces: &[Vector], see: impl FnOnce(&Loaded) -> T) -> T {
    let facts: Vec<PlyFacts> = joint().ply_facts().unwrap();
    see(&Loaded {
        facts: &facts[0],
        plate: None,
        places,
        forces: forces.to_vec(),
        sense: None,
        in_line: false,
        level: Level::Design,
        turned: false,
        net_widths: &OnceCell::new(),
    })
}

fn held(outline: &Outline, hole: f64) -> Held<'_> {
    Held {
        outline,
        to: Side::Top.direction(),
        thickness: from_base(0.01),
        hole: from_base(hole),
        more: Length::default(),
    }
}

#[test]
fn net_sections_count_more_than_the_hole() {
    let plate = Plate::new("hanger", rectangle((-70.0, -70.0), (70.0, 70.0)));
    let more = |method| {
        let held = Held::new(
            &plate,
            Side::Top,
            (from_base(0.01), from_base(0.018)),
            method,
        );
        held.more
    };
    let aisc = crate::joint::JointMethods::aisc_lrfd(crate::names::AiscEdition::E2016).plies;
    // AISC 360 B4.3b; CSA S16 12.3.2; EN 1993-1-1 6.2.2.2 has the hole alone.
    assert_eq!(more(aisc), inches(1.0 / 16.0));
    assert_eq!(more(PlyMethod::CsaS16), millimetres(2.0));
    assert_eq!(more(PlyMethod::En1993), Length::default());
}

/// Structural codes are for structural steel; machine design is for any plate.
#[test]
fn codes_are_for_structural_steel() {
    let plate = rectangle((-70.0, -70.0), (70.0, 70.0));
    let steel = joint().ply_facts().unwrap();
    let other = joint()
        .ply_facts()
        .unwrap()
        .into_iter()
        .map(|own| PlyFacts {
            is_carbon_steel: false,
            yields: Some(megapascals(100.0)),
            ..own
        });
    let other: Vec<PlyFacts> = other.collect();
    let machine = crate::joint::JointMethods::machine_design(2.0).plies;
    for (facts, method, is_known) in [
        (&steel, PlyMethod::En1993, true),
        (&other, PlyMethod::En1993, false),
        (&steel, machine, true),
        (&other, machine, true),
    ] {
        let loaded = Loaded {
            facts: &facts[0],
            plate: None,
            places: &[(0.0, 0.0)],
            forces: alloc::vec![(0.0, 1.0)],
            sense: None,
            in_line: false,
            level: Level::Design,
            turned: false,
            net_widths: &OnceCell::new(),
        };
        let found = held(&plate, 0.018).known_cuts(method, &loaded);
        assert_eq!(found.is_ok(), is_known, "{method:?}");
    }
}

/// A plate from -300 to 300 mm: two bolts 60 mm apart at a level of 0 and two at 100 mm. At the last row a load spreads by 100
/// tan 30 degrees, 57.7 mm, from those of the first, which is more than 2.5 holes of 18 mm from the others: 2 x 87.7 mm.
#[test]
fn what_counts_of_a_cut() {
    let plate = rectangle((-300.0, -100.0), (300.0, 300.0));
    let places = [(-0.03, 0.0), (0.03, 0.0), (-0.03, 0.1), (0.03, 0.1)];
    let forces = [(1.0, 10.0), (2.0, 20.0), (4.0, 40.0), (8.0, 80.0)];
    seen(&places, &forces, |loaded| {
        let held = held(&plate, 0.018);
        let cuts = held.cuts(loaded).unwrap();
        let [first, last, ..] = &cuts[..] else {
            panic!()
        };
        // Of the first row the plate counts whole, in shear 30 + 45 mm either way.
        assert!(near(first.level, 0.0) && near(first.width(), 0.6));
        assert!(near(first.spread, 0.6) && !first.is_wider());
        assert!(near(first.sheared.0, -0.075) && near(first.sheared.1, 0.075));
        // Turned from up is to the left, so that the shear is of that sense.
        assert!(near(first.pull, 30.0) && near(first.shear, -3.0));
        assert!(near(first.size(), hypot(30.0, 3.0)));
        assert!(near(last.level, 0.1) && near(last.pull, 150.0) && near(last.shear, -15.0));
        let far = 0.03 + 0.1 * SPREAD;
        assert!(
            near(last.spread, 2.0 * far) && last.is_wider(),
            "{}",
            last.spread
        );
        assert!(near(last.sheared.0, -0.075) && near(last.sheared.1, 0.075));
        // About the middle of the plate: the pulls of 20 - 10 and 80 - 40 N at 30 mm, and 3 N to the right, 100 mm below the last row.
        assert!(near(first.moment.abs(), 0.3), "{}", first.moment);
        assert!(
            near(last.moment.abs(), 0.03 * 50.0 + 0.3),
            "{}",
            last.moment
        );
        assert!(first.is_bent() && last.is_bent());
    });
    // Level with the middle and alike: no moment, and a micrometre's share of one is none.
    for (pulls, is_bent) in [
        ([10.0, 10.0], false),
        ([10.0, 10.000_1], false),
        ([10.0, 11.0], true),
    ] {
        let forces = [(0.0, pulls[0]), (0.0, pulls[1])];
        seen(&places[..2], &forces, |loaded| {
            let cuts = held(&plate, 0.018).cuts(loaded).unwrap();
            assert_eq!(cuts[0].is_bent(), is_bent);
            // One row: 2.5 holes beside the bolts.
            assert!(near(cuts[0].spread, 0.15) && cuts[0].is_wider());
        });
    }
    // As wide as what counts, or narrower, it is not wider.
    for (half, is_wider) in [(70.0, false), (75.0, false), (75.1, true)] {
        let plate = rectangle((-half, -100.0), (half, 300.0));
        seen(&places[..2], &[(0.0, 1.0), (0.0, 1.0)], |loaded| {
            let cuts = held(&plate, 0.018).cuts(loaded).unwrap();
            assert_eq!(cuts[0].is_wider(), is_wider, "{half}");
        });
    }
    // Off the middle of the plate by 50 mm, what counts lies evenly about the middle: 2 x (75 - 50).
    let aside = rectangle((-350.0, -100.0), (250.0, 300.0));
    seen(&places[..2], &[(0.0, 1.0), (0.0, 1.0)], |loaded| {
        let cuts = held(&aside, 0.018).cuts(loaded).unwrap();
        assert!(near(cuts[0].spread, 0.05), "{}", cuts[0].spread);
    });
}

/// Just before and beyond each corner between the first row and where the plate is held, and at each row.
#[test]
fn corners_are_cut_on_both_sides() {
    let waist = outline(&[
        (-70.0, -70.0),
        (70.0, -70.0),
        (70.0, 40.0),
        (50.0, 40.0),
        (50.0, 90.0),
        (-50.0, 90.0),
        (-50.0, 40.0),
        (-70.0, 40.0),
    ]);
    seen(&[(-0.03, 0.0), (0.03, 0.0)], &[(0.0, 1.0); 2], |loaded| {
        let cuts = held(&waist, 0.018).cuts(loaded).unwrap();
        let levels: Vec<f64> = cuts.iter().map(|own| own.level).collect();
        let hand = [0.0, 0.04 - IN_LINE, 0.04 + IN_LINE, 0.09 - IN_LINE];
        // The row, twice four corners at 40 mm, and twice before where it is held.
        assert_eq!(levels.len(), 1 + 8 + 2, "{levels:?}");
        for level in hand {
            assert!(levels.iter().any(|own| near(*own, level)), "{level}");
        }
        let widths = |from: f64, to: f64| {
            let own = cuts
                .iter()
                .filter(move |own| own.level > from && own.level < to);
            own.map(Cut::width).collect::<Vec<_>>()
        };
        assert!(widths(0.02, 0.04).iter().all(|own| near(*own, 0.14)));
        assert!(widths(0.04, 0.05).iter().all(|own| near(*own, 0.1)));
    });
}

/// Holes of 18 mm in a plate of 140 mm. A step of s along and g across gives s^2 / 4 g back for each hole that is taken.
#[test]
fn paths_through_holes() {
    let plate = rectangle((-70.0, -100.0), (70.0, 100.0));
    let net = |places: &[Vector]| {
        let forces = alloc::vec![(0.0, 1.0); places.len()];
        seen(places, &forces, |loaded| {
            let held = held(&plate, 0.018);
            // All of the width counts here.
            let cuts: Vec<Cut> = held.cuts(loaded).unwrap();
            let cuts = cuts.into_iter().map(|own| Cut {
                spread: 0.14,
                ..own
            });
            let cuts: Vec<Cut> = cuts.collect();
            let found = held.net_widths(loaded, &cuts);
            let found = found
                .into_iter()
                .map(|own| own.map(|own| (own.width, own.zigzag)));
            found.collect::<Vec<_>>()
        })
    };
    let one = |found: &Option<(f64, bool)>, width: f64, zigzag: bool| {
        let own = found.unwrap();
        assert!(near(own.0, width) && own.1 == zigzag, "{own:?} {width}");
    };
    one(&net(&[(0.0, 0.0)])[0], 0.122, false);
    one(&net(&[(-0.03, 0.0), (0.03, 0.0)])[0], 0.104, false);
    // Staggered by 20 mm over 30: 140 - 2 x 18 + 400 / 120 = 107.33, less than 122. The row before has its own hole alone.
    let near_by = net(&[(-0.015, 0.0), (0.015, 0.02)]);
    one(&near_by[0], 0.122, false);
    one(&near_by[1], 0.140 - 0.036 + 0.0004 / 0.12, true);
    // By 50 mm over 30: 2500 / 120 = 20.8 mm given back is more than the hole.
    let far = net(&[(-0.015, 0.0), (0.015, 0.05)]);
    one(&far[1], 0.122, false);
    // Three: down and up again, 140 - 54 + 2 x 400 / 120 = 92.67; straight through two 104.
    let three = net(&[(-0.03, 0.02), (0.0, 0.0), (0.03, 0.02)]);
    one(&three[1], 0.140 - 0.054 + 2.0 * 0.0004 / 0.12, true);
    // A row that has none of its own at a corner goes on with nothing.
    let narrowing = outline(&[
        (-70.0, -100.0),
        (70.0, -100.0),
        (70.0, 50.0),
        (60.0, 100.0),
        (-60.0, 100.0),
        (-70.0, 50.0),
    ]);
    seen(&[(0.0, 0.0)], &[(0.0, 1.0)], |loaded| {
        let held = held(&narrowing, 0.018);
        let cuts = held.cuts(loaded).unwrap();
        let found = held.net_widths(loaded, &cuts);
        assert!(found[0].is_some());
        assert!(found[1..].iter().all(Option::is_none) && found.len() > 1);
    });
}

/// A millionth of the force at the width of the plate is rounding, and what is more bends it.
#[test]
fn a_millionth_of_a_moment_is_rounding() {
    for (pull, shear, moment, is_bent) in [
        (1e4, 0.0, 0.9e-3, false),
        (1e4, 0.0, 1.1e-3, true),
        (-6e3, 8e3, -1.1e-3, true),
        (-6e3, 8e3, -0.9e-3, false),
        (0.0, 0.0, 0.0, false),
        (0.0, 0.0, 1e-9, true),
    ] {
        let cut = Cut {
            level: 0.0,
            from: -0.05,
            to: 0.05,
            spread: 0.1,
            sheared: (-0.05, 0.05),
            pull,
            shear,
            moment,
        };
        assert_eq!(cut.is_bent(), is_bent, "{pull} {shear} {moment}");
    }
}
