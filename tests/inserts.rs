//! Thread inserts of wire against print: the taps of their holes, a maker's table of lengths, and depths.

mod support;

#[cfg(feature = "serde")]
#[path = "support/judged.rs"]
mod judged;
#[cfg(feature = "serde")]
#[path = "support/verdicts.rs"]
mod verdicts;

use std::f64::consts::PI;

use shankline::caution::Caution;
use shankline::parts::{InsertLength, LastTap, WireInsert};
use shankline::prelude::*;
use shankline::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
use shankline::thread::ToleranceClass;
use shankline::thread::strip::EngagedLength;
use shankline::uom::si::area::square_millimeter;
use shankline::uom::si::length::{inch, millimeter};
use support::{csv_rows, number};

fn thread(text: &str) -> Thread {
    text.parse().unwrap_or_else(|e| panic!("{text}: {e}"))
}

fn insert(size: &str, length: InsertLength) -> WireInsert {
    WireInsert::new(thread(size), length).unwrap()
}

fn class(text: &str) -> ToleranceClass {
    text.parse().unwrap()
}

/// A tap of limit H cuts a pitch diameter of at most the basic one and H times 0.0005 in: ASME B94.9, as in its tables for
/// ordinary threads. So its limits are a print of the basic pitch diameter of the hole.
#[test]
fn the_taps_have_the_pitch_diameter_of_the_hole() {
    let (mut inch_rows, mut metric, mut majors, mut exceptions) = (0, 0, 0, 0);
    for row in csv_rows("tests/data/insert_taps.csv") {
        let of = |column| number(&row, column);
        let hole = insert(&row["thread"], InsertLength::One).hole();
        let step = 0.0005;
        let (least, most) = (of("pitch_min_in").unwrap(), of("pitch_max_in").unwrap());
        let basic = hole.pitch_diameter.get::<inch>();
        let limit = of("h_limit").unwrap();
        // The print goes by 0.0001 in. Of inch sizes major diameter and height of the thread are each rounded to that; metric
        // sizes are rounded to a micrometre, and then up.
        let metric_size = row["thread"].starts_with('M');
        let slack = if metric_size {
            -0.00001..=0.0001 + 0.0005 / 25.4
        } else {
            -0.0001..=0.0001
        };
        let is_met = |printed: f64, steps: f64| slack.contains(&(printed - steps * step - basic));
        let agrees = is_met(most, limit) && is_met(least, limit - 1.0);
        assert_eq!(agrees, row["exception"].is_empty(), "{row:?}: {basic}");
        assert_eq!(row["basis"], "published");
        exceptions += usize::from(!agrees);
        if metric_size {
            metric += 1;
        } else {
            inch_rows += 1;
        }
        // Taps are larger than the hole's least, by less than the truncation of a sharp crest.
        if let Some(major) = of("major_min_in") {
            let larger = major - hole.major_diameter.get::<inch>();
            let pitch = thread(&row["thread"]).pitch().get::<inch>();
            assert!(larger > 0.0 && larger < 0.108_253 * pitch, "{row:?}");
            majors += 1;
        }
    }
    assert_eq!((inch_rows, metric, majors, exceptions), (50, 34, 46, 1));
}

/// What holds in the part over what the bolt breaks at, of a coil that the screw fills all the way: by the areas of the
/// insert, and by a third of the cylinder at the pitch diameter of the hole (NASA RP-1228).
fn margins(size: &str, length: InsertLength, bolt: f64, part: f64) -> [f64; 2] {
    let insert = insert(size, length);
    let fit = thread(size).fit(class("6g"), class("5H")).unwrap();
    let engaged = insert.engaged(millimetres(100.0)).unwrap();
    let areas = insert.strip_areas(&fit, engaged).unwrap();
    let bolt = ThreadMaterial::new(megapascals(bolt), None).unwrap();
    let bolt = bolt.with_shear_ratio(0.65).unwrap();
    let part = ThreadMaterial::new(megapascals(part), None).unwrap();
    let part = part.with_shear_ratio(0.65).unwrap();
    let found = stripping(&areas, &bolt, &part, StripMethod::ShearStrength).unwrap();
    let third = PI * (insert.hole().pitch_diameter * areas.engagement) / 3.0;
    let third = third * part.shear_strength().unwrap() / found.breaking_load;
    [(found.nut_threads / found.breaking_load).value, third.value]
}

/// A maker's table of the least lengths at which the bolt breaks first, read thus: the part has the tensile strength at the
/// lower end of its range and 0.65 of that in shear (the maker has 0.6 to 0.7), the hole is of class 5H, the bolt has the nominal
/// strength of its class. Rows below 200 MPa do not follow: the maker's own lengths are below these there, 0.6 to 1.5 of the
/// bolt.
#[test]
fn a_makers_lengths_hold_the_bolt() {
    let (mut holds, mut shorter, mut shorter_fails, mut by_a_third) = (0, 0, 0, 0);
    for row in csv_rows("tests/data/insert_lengths.csv") {
        let of = |column| number(&row, column).unwrap();
        let (part, bolt, diameters) = (of("part_mpa_from"), of("bolt_mpa"), of("diameters"));
        let at = |diameters: f64| {
            let is = |own: &InsertLength| (own.diameters() - diameters).abs() < 1e-9;
            let length = InsertLength::ALL.into_iter().find(is)?;
            let sizes = ["M6", "M10", "M16"].map(|size| margins(size, length, bolt, part));
            let none = [f64::INFINITY; 2];
            Some(
                sizes
                    .iter()
                    .fold(none, |[a, b], [c, d]| [a.min(*c), b.min(*d)]),
            )
        };
        let [least, third] = at(diameters).unwrap();
        assert!(least >= 1.0, "{row:?}: {least}");
        holds += 1;
        by_a_third += usize::from(third >= 1.0);
        if let Some([less, _]) = at(diameters - 0.5) {
            shorter += 1;
            shorter_fails += usize::from(less < 1.0);
        }
    }
    // Of lengths over 1 D the next shorter one is too short by this form too, but for two; a third of the cylinder would refuse
    // nearly all of the table.
    assert_eq!((holds, shorter, shorter_fails), (32, 17, 15));
    assert!(by_a_third <= 4, "{by_a_third}");
}

/// The one worked hole, and the one depth, that were read.
#[test]
fn printed_depths() {
    // Machinery's Handbook, 31st ed., p. 1746: M8 x 1.25, insert 12.0, STI 23.5 deep.
    let metric = insert("M8", InsertLength::OneAndAHalf);
    let depth = metric.drill_depth(LastTap::Plug).unwrap();
    assert!((depth.get::<millimeter>() - 23.5).abs() < 0.05);
    // ASME B18.29.1, an extract: 1/4-20 UNC-2B STI, 0.430 in of thread at least, for 1.5 D: rounded up to 0.01 in.
    let inches_deep = insert("1/4-20 UNC", InsertLength::OneAndAHalf);
    let full = inches_deep.full_thread().get::<inch>();
    assert!((0.0..0.01).contains(&(0.430 - full)), "{full}");
    assert!(inches_deep.drill_depth(LastTap::Plug).is_err());
    // Above 8 mm the drill does not go half a diameter deeper.
    let over = insert("M10", InsertLength::One);
    let below = |tap| over.drill_depth(tap).unwrap().get::<millimeter>();
    assert!((below(LastTap::Plug) - 19.0).abs() < 1e-9);
    assert!((below(LastTap::Bottoming) - 16.0).abs() < 1e-9);
}

/// ISO 965-1 has 0.118, 0.140 and 0.170 mm (5H) for threads of 7.3 x 1, 12 x 1.5 and 18.6 x 2: the formula comes to within 4 %.
#[test]
fn tolerances_of_the_hole() {
    for (size, printed) in [("M6", 0.118), ("M10", 0.140), ("M16", 0.170)] {
        let insert = insert(size, InsertLength::One);
        let of = |text: &str| insert.hole_pitch_diameter_max(class(text)).unwrap();
        let tolerance = (of("5H") - insert.hole().pitch_diameter).get::<millimeter>();
        assert!(
            (tolerance / printed - 1.0).abs() < 0.04,
            "{size}: {tolerance}"
        );
        assert!(of("4H") < of("5H") && of("5H") < of("6H") && of("6H") < of("7H"));
        assert!(of("7H") < of("8H"));
        for bad in ["6g", "6G", "3H", "2B"] {
            assert!(insert.hole_pitch_diameter_max(class(bad)).is_err(), "{bad}");
        }
    }
    let inch_size = insert("1/2-13 UNC", InsertLength::One);
    let of = |text: &str| inch_size.hole_pitch_diameter_max(class(text)).unwrap();
    assert!(inch_size.hole().pitch_diameter < of("3B") && of("3B") < of("2B"));
    for bad in ["2A", "6H"] {
        assert!(
            inch_size.hole_pitch_diameter_max(class(bad)).is_err(),
            "{bad}"
        );
    }
}

/// Both areas by the formula of FED-STD-H28/2, written out, for M12 of 1.5 D: Ds = 14.2733, En = 13.1367 + 0.1942 mm.
#[test]
fn areas_around_an_insert() {
    let insert = insert("M12", InsertLength::OneAndAHalf);
    let fit = thread("M12").fit(class("6g"), class("6H")).unwrap();
    let engaged = insert.engaged(millimetres(60.0)).unwrap();
    assert!((engaged.full_threads().get::<millimeter>() - (18.0 - 0.75 * 1.75)).abs() < 1e-9);
    let areas = insert.strip_areas(&fit, engaged).unwrap();
    let (outer, pitch): (f64, f64) = (12.0 + 1.299_038 * 1.75, 1.75);
    let greatest = 12.0 + 0.649_519 * 1.75 + 1.32 * 0.09 * pitch.powf(0.4) * outer.powf(0.1);
    let per_pitch = pitch / 2.0 + (outer - greatest) / 3.0_f64.sqrt();
    let length = engaged.full_threads().get::<millimeter>();
    let around = PI * outer * length / pitch * per_pitch;
    assert!((areas.nut_threads.get::<square_millimeter>() / around - 1.0).abs() < 1e-6);
    // The bolt in the insert is as in a nut.
    let plain = fit.strip_areas(engaged).unwrap();
    assert_eq!(areas.bolt_threads, plain.bolt_threads);
    assert!(areas.nut_threads > 1.15 * plain.nut_threads);
    areas.derivation().check().unwrap();
    let told = |caution: &Caution| *caution == Caution::InsertSizes;
    assert!(areas.cautions().iter().any(told) && !plain.cautions().iter().any(told));
    // At the least material of the classes the breaking load of a strong inch bolt is at its least area too.
    let strong = ThreadMaterial::new(ksi(150.0), None).unwrap();
    let bolt = thread("1/2-13 UNC").fit(class("2A"), class("2B")).unwrap();
    let own = WireInsert::new(thread("1/2-13 UNC"), InsertLength::Two).unwrap();
    let engaged = own.engaged(inches(2.0)).unwrap();
    let of = |areas| stripping(&areas, &strong, &strong, StripMethod::FedStdH28).unwrap();
    let (in_insert, in_nut) = (
        of(own.strip_areas(&bolt, engaged).unwrap()),
        of(bolt.strip_areas(engaged).unwrap()),
    );
    assert_eq!(in_insert.breaking_load, in_nut.breaking_load);
    assert_eq!(in_insert.first, ThreadFailure::Bolt);
}

/// What is refused: sizes without taps, special threads, another bolt, the factors of nuts, a screw that does not reach.
#[test]
fn what_is_no_insert() {
    for size in ["M2", "M42", "#0-80 UNF", "1 3/4-5 UNC"] {
        assert!(
            WireInsert::new(thread(size), InsertLength::One).is_err(),
            "{size}"
        );
    }
    for size in ["M2.5", "M39", "#1-64 UNC", "1 1/2-6 UNC"] {
        assert!(
            WireInsert::new(thread(size), InsertLength::One).is_ok(),
            "{size}"
        );
    }
    let own = insert("M12", InsertLength::One);
    // 1.5 pitches of set-down and one of the point.
    assert!(own.engaged(millimetres(2.4 * 1.75)).is_err());
    assert!(own.engaged(millimetres(2.6 * 1.75)).is_ok());
    let full = |length| EngagedLength::new(millimetres(length)).unwrap();
    let other = thread("M10").fit(class("6g"), class("6H")).unwrap();
    assert!(own.strip_areas(&other, full(10.0)).is_err());
    let fit = thread("M12").fit(class("6g"), class("6H")).unwrap();
    let areas = own.strip_areas(&fit, full(10.0)).unwrap();
    let steel = ThreadMaterial::new(megapascals(800.0), Some(megapascals(480.0))).unwrap();
    let width_across_flats = None;
    for method in [
        StripMethod::Alexander { width_across_flats },
        StripMethod::Vdi2230 { width_across_flats },
    ] {
        let refused = stripping(&areas, &steel, &steel, method).unwrap_err();
        assert!(refused.to_string().contains("not of inserts"), "{refused}");
    }
    assert!(stripping(&areas, &steel, &steel, StripMethod::ShearStrength).is_ok());
}

/// Joints with inserts: judged ones, and random ones whose tapped part is given an insert.
#[cfg(feature = "serde")]
mod joints {
    use std::cell::Cell;
    use std::collections::BTreeSet;

    use super::judged;
    use super::verdicts::{Dice, for_all};
    use serde_json::{Value, json, to_value};
    use shankline::joint::{BoltCase, Joint, Verdict, Word};
    use shankline::parts::{InsertLength, WireInsert};
    use shankline::prelude::*;
    use shankline::strength::check::Mode;

    fn verdict(joint: &Value) -> Option<Verdict> {
        let joint: Joint = serde_json::from_value(joint.clone()).ok()?;
        joint.check().ok()
    }

    /// Every path below a value.
    fn paths(value: &Value, at: &str, found: &mut Vec<String>) {
        for (key, below) in value.as_object().into_iter().flatten() {
            let path = format!("{at}/{key}");
            paths(below, &path, found);
            found.push(path);
        }
    }

    /// The joint without one fact of its tapped part at a time, and the word that it has then; none if it is refused.
    fn without_one_fact(joint: &Value) -> Vec<(String, Option<Word>)> {
        let mut of_part = Vec::new();
        paths(&joint["stack"]["tapped_part"], "", &mut of_part);
        let words = of_part.into_iter().map(|path| {
            let (parent, key) = path.rsplit_once('/').unwrap();
            let mut less = joint.clone();
            let parent = less["stack"]["tapped_part"].pointer_mut(parent).unwrap();
            parent.as_object_mut().unwrap().remove(key).unwrap();
            let word = verdict(&less).map(|found| found.word());
            (path, word)
        });
        words.collect()
    }

    #[test]
    fn what_is_not_said_of_an_insert_does_not_help() {
        let (mut tried, mut undecided, mut refused) = (0, 0, 0);
        for (name, file) in judged::files() {
            for case in &file.case {
                let joint = judged::document(&file, case);
                if !joint["stack"]["tapped_part"]
                    .to_string()
                    .contains("with_insert")
                {
                    continue;
                }
                let before = verdict(&joint).map(|found| found.word());
                for (path, after) in without_one_fact(&joint) {
                    let about_hole = path.starts_with("/hole");
                    let may_hold = before == Some(Word::Holds) && !about_hole;
                    let told = format!("{name}, {}: {path}", case.name);
                    assert!(after != Some(Word::Holds) || may_hold, "{told}");
                    tried += 1;
                    undecided += usize::from(after == Some(Word::Undecided));
                    refused += usize::from(after.is_none());
                }
            }
        }
        assert!(
            tried > 100 && undecided > 20 && refused > 20,
            "{tried} {undecided} {refused}"
        );
    }

    /// The same joint with an insert in its hole, which the screw is to fill; and with the bare thread as deep.
    fn with_insert(joint: &Joint, dice: &mut Dice) -> Option<[Value; 2]> {
        let part = joint.stack.tapped_part()?;
        let length = dice.one(&InsertLength::ALL);
        let insert = WireInsert::new(joint.bolt.thread, length).ok()?;
        let filled = insert.full_thread() + dice.between(0.0, 1.0) * joint.bolt.thread.pitch();
        let millimetres = |length: Length| json!({ "value": length.value * 1e3, "unit": "mm" });
        let mut bare = to_value(joint).unwrap();
        let own = &mut bare["stack"]["tapped_part"];
        own["engagement"] = millimetres(filled);
        let wall = millimetres(dice.between(1.2, 4.0) * joint.bolt.thread.nominal_diameter());
        own["edge_distance"] = wall.clone();
        // Most without what an insert is not for, so that some hold.
        if dice.now_and_then(80.0) {
            own["end_distance"] = wall.clone();
            own["width"] = millimetres(6.0 * joint.bolt.thread.nominal_diameter());
            // No code has parts with threads.
            bare["methods"] = to_value(JointMethods::machine_design(1.5)).unwrap();
            bare["load"]["across"] = json!("0 N");
            bare["load"]["along"] = json!("2 kN");
            bare["load"]["prying"] = json!("none");
            bare["load"]["repeats"] = json!("never");
            bare["environment"]["exposure"] = json!("dry");
            for end in ["coldest", "hottest"] {
                bare["environment"][end] = json!("20 C");
            }
        }
        let mut lined = bare.clone();
        let [bare_hole, lined_hole] = if part.depth().is_none() {
            let lined = json!({ "through_with_insert": { "length": length.to_string() } });
            [json!("through"), lined]
        } else {
            let depth = millimetres(filled + dice.between(0.0, 1.0) * filled);
            let lined = json!({ "length": length.to_string(), "depth": depth });
            [
                json!({ "blind": { "depth": depth } }),
                json!({ "blind_with_insert": lined }),
            ]
        };
        bare["stack"]["tapped_part"]["hole"] = bare_hole;
        lined["stack"]["tapped_part"]["hole"] = lined_hole;
        Some([bare, lined])
    }

    /// The modes that miss something.
    fn against(verdict: &Verdict) -> BTreeSet<Mode> {
        verdict.missing.iter().map(|missing| missing.mode).collect()
    }

    /// An insert changes the stripping of the part and adds what it is not for: no other mode is settled by saying that there is
    /// one, no silence about it helps, and a prepared joint answers as the whole check does.
    #[test]
    fn an_insert_settles_nothing_but_stripping() {
        let (tried, held) = (Cell::new(0), Cell::new(0));
        for_all(9000, |joint, dice| {
            let Some([bare, lined]) = with_insert(joint, dice) else {
                return Ok(());
            };
            let (Some(bare), Some(found)) = (verdict(&bare), verdict(&lined)) else {
                return Ok(());
            };
            tried.set(tried.get() + 1);
            held.set(held.get() + usize::from(found.word() == Word::Holds));
            let settled: Vec<Mode> = against(&bare)
                .difference(&against(&found))
                .copied()
                .collect();
            if settled.iter().any(|mode| *mode != Mode::Stripping) {
                return Err(format!("an insert settles {settled:?}"));
            }
            for (path, after) in without_one_fact(&lined) {
                let may_hold = found.word() == Word::Holds && !path.starts_with("/hole");
                if after == Some(Word::Holds) && !may_hold {
                    return Err(format!("holds without {path}"));
                }
            }
            let lined: Joint = serde_json::from_value(lined).unwrap();
            let mut prepared = lined.prepare().map_err(|error| error.to_string())?;
            for times in [0.0, 0.3, 1.0, 3.0] {
                let case = BoltCase::steady(times * lined.load.across, times * lined.load.along);
                let own = Joint {
                    load: case.of(&lined.load),
                    ..lined.clone()
                };
                let (answer, whole) = (prepared.answer(&case), own.check());
                let words = (
                    answer.map(|answer| answer.word),
                    whole.map(|found| found.word()),
                );
                if words.0 != words.1 {
                    return Err(format!("{words:?} at {times}"));
                }
            }
            Ok(())
        });
        let (tried, held) = (tried.get(), held.get());
        println!("{held} of {tried} joints with inserts hold");
        assert!(tried > 100 && held > 10, "{held} of {tried}");
    }
}
