//! The geometry of a joint: every size against the cell it comes from, for every product, nut and washer, and every place
//! against the length search.
#![cfg(feature = "serde")]

use std::collections::BTreeMap;

use shankline::assembly::{Assembly, End, Side};
use shankline::catalogue::Key;
use shankline::joint::*;
use shankline::parts::{Head, HeadForm, Locking, Origin, Size};
use shankline::prelude::*;
use shankline::source::Basis;
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::units::Measured as _;

mod support;
#[path = "support/verdicts.rs"]
mod verdicts;

use support::{Row, csv_rows, number};
use verdicts::for_all;

/// Every thread of the tables.
fn threads() -> Vec<Thread> {
    let unified = UnifiedThread::all().iter();
    let unified = unified.filter_map(|row| Thread::unified(row.nominal_diameter, row.series).ok());
    let metric = MetricThread::all().iter();
    let metric = metric.filter_map(|row| Thread::metric(row.nominal_diameter, row.pitch).ok());
    unified.chain(metric).collect()
}

/// A column of a row in the unit of its name.
fn cell(row: &Row, name: &str) -> Option<Length> {
    for (unit, of) in [("_in", inches as fn(f64) -> Length), ("_mm", millimetres)] {
        let column = format!("{name}{unit}");
        if row.contains_key(&column) {
            return number(row, &column).map(of);
        }
    }
    None
}

fn near(a: Option<Length>, b: Option<Length>) -> bool {
    match (a, b) {
        (None, None) => true,
        (Some(a), Some(b)) => (a - b).abs() < millimetres(1e-7),
        _ => false,
    }
}

/// A size against three cells; where all are empty it must not be read.
fn is_of(size: &Size, row: &Row, [min, nominal, max]: [&str; 3], what: &str) {
    let cell = |name: &str| {
        if name.is_empty() {
            None
        } else {
            cell(row, name)
        }
    };
    let wanted = [cell(min), cell(nominal), cell(max)];
    for (found, wanted) in [size.min, size.nominal, size.max].into_iter().zip(wanted) {
        assert!(near(found, wanted), "{what}: {size:?}, not {wanted:?}");
    }
    let empty = wanted.iter().all(Option::is_none);
    assert_eq!(size.is_read(), !empty, "{what}");
    assert_eq!(empty, size.origin == Origin::NotRead, "{what}");
    match size.origin {
        Origin::Tabled(known) => {
            assert!(!known.source.document.is_empty(), "{what}");
            let drawn = size.drawn().unwrap();
            let within = size.min.is_none_or(|own| own <= drawn)
                && size.max.is_none_or(|own| drawn <= own + millimetres(1e-9));
            // Basic sizes are exact fractions, and limits are rounded.
            assert!(within || size.nominal.is_some(), "{what}");
        }
        Origin::NotRead => assert_eq!(size.drawn(), None, "{what}"),
        _ => panic!("{what}: {:?}", size.origin),
    }
}

/// The rows of a table by diameter, in nanometres, and by another key.
fn rows(file: &str, key: impl Fn(&Row) -> String) -> BTreeMap<(i64, String), Row> {
    let all = csv_rows(&format!("tables/{file}.csv"));
    all.into_iter()
        .map(|row| {
            let diameter = cell(&row, "nominal_diameter").expect("a diameter");
            ((nanometres(diameter), key(&row)), row)
        })
        .collect()
}

#[allow(clippy::cast_possible_truncation)] // far within
fn nanometres(length: Length) -> i64 {
    (length.base() * 1e9).round() as i64
}

const UNREAD: [&str; 3] = ["", "", ""];

/// Flats, corners and heights have the same columns everywhere.
fn is_hexagon(head: &Head, row: &Row, basic_flats: &str, basic_height: &str, what: &str) {
    assert_eq!(head.form, HeadForm::Hexagon, "{what}");
    is_of(
        &head.height,
        row,
        ["head_height_min", basic_height, "head_height_max"],
        what,
    );
    let flats = [
        "width_across_flats_min",
        basic_flats,
        "width_across_flats_max",
    ];
    is_of(&head.across_flats, row, flats, what);
    let corners = ["width_across_corners_min", "", "width_across_corners_max"];
    is_of(&head.across_corners, row, corners, what);
    for size in [&head.diameter, &head.socket_flats, &head.socket_depth] {
        is_of(size, row, UNREAD, what);
    }
    let greatest = head.greatest_width().max.expect("flats are always there");
    let least = head.across_corners.min.unwrap();
    assert!(greatest > least, "{what}: {greatest:?}");
    assert!(greatest > head.across_flats.max.unwrap(), "{what}");
}

// A product after the other.
#[allow(clippy::too_many_lines)]
#[test]
fn every_size_of_every_head_is_a_cell() {
    let cap = rows("hex_cap_screws_inch", |_| String::new());
    let metric = rows("hex_screws_metric", |row| row["product_grade"].clone());
    let bolts = rows("hex_bolts_inch", |row| row["style"].clone());
    let structural_inch = rows("structural_bolts_inch", |_| String::new());
    let structural_metric = rows("structural_bolts_metric", |_| String::new());
    let hr_bolts = rows("hr_bolts", |_| String::new());
    let sockets_inch = rows("socket_head_cap_screws_inch", |_| String::new());
    let sockets_metric = rows("socket_head_cap_screws_metric", |_| String::new());
    let metric_cap = rows("hex_cap_screws_metric", |_| String::new());
    let mut seen: BTreeMap<&str, u32> = BTreeMap::new();
    for thread in threads() {
        let d = nanometres(thread.nominal_diameter());
        for &product in ScrewProduct::ALL {
            let Ok(screws) = ScrewSeries::new(product, &thread) else {
                continue;
            };
            *seen.entry(product.code()).or_default() += 1;
            // Short and long: beyond 10 d or 150 mm metric screws are of product grade B.
            for (long, nominal) in [(false, 4.0), (true, 15.0)] {
                let nominal = nominal * thread.nominal_diameter();
                let (head, body) = (screws.head(nominal), screws.body_diameter(nominal));
                let what = format!("{screws}, {}", if long { "long" } else { "short" });
                let body_is = |row: &Row| {
                    is_of(
                        &body,
                        row,
                        ["body_diameter_min", "", "body_diameter_max"],
                        &what,
                    );
                };
                let key = |name: &str| (d, name.to_owned());
                match product {
                    ScrewProduct::HexCapScrew => {
                        let row = &cap[&key("")];
                        is_hexagon(
                            &head,
                            row,
                            "width_across_flats_basic",
                            "head_height_basic",
                            &what,
                        );
                        let face = ["washer_face_thickness_min", "", "washer_face_thickness_max"];
                        is_of(&head.washer_face_height, row, face, &what);
                        is_of(
                            &head.wrenching_height,
                            row,
                            ["wrenching_height_min", "", ""],
                            &what,
                        );
                        let fillet = ["fillet_radius_min", "", "fillet_radius_max"];
                        is_of(&head.fillet_radius, row, fillet, &what);
                        is_of(&head.bearing_diameter, row, UNREAD, &what);
                        body_is(row);
                    }
                    ScrewProduct::HexBolt | ScrewProduct::HeavyHexBolt => {
                        let hex = product == ScrewProduct::HexBolt;
                        let style = bolts.keys().map(|own| own.1.as_str());
                        let mut style = style.filter(|own| own.contains("heavy") != hex);
                        let row = &bolts[&key(style.next().unwrap())];
                        is_hexagon(&head, row, "", "head_height_basic", &what);
                        body_is(row);
                    }
                    ScrewProduct::Iso4014 | ScrewProduct::Iso4017 | ScrewProduct::Iso8765 => {
                        let limit = (10.0 * thread.nominal_diameter()).min(millimetres(150.0));
                        let grades = if nominal > limit {
                            ["B", "A"]
                        } else {
                            ["A", "B"]
                        };
                        let row = grades.iter().find_map(|own| metric.get(&key(own)));
                        let row = row.unwrap();
                        is_hexagon(&head, row, "", "head_height_nominal", &what);
                        is_of(
                            &head.bearing_diameter,
                            row,
                            ["bearing_diameter_min", "", ""],
                            &what,
                        );
                        let face = ["washer_face_thickness_min", "", "washer_face_thickness_max"];
                        is_of(&head.washer_face_height, row, face, &what);
                        is_of(
                            &head.fillet_radius,
                            row,
                            ["fillet_radius_min", "", ""],
                            &what,
                        );
                        let da = ["", "", "transition_diameter_max"];
                        is_of(&head.fillet_diameter, row, da, &what);
                        body_is(row);
                        // The rows are those of ISO 4014; that ISO 8765 has them was read there.
                        if product == ScrewProduct::Iso8765 {
                            for size in [&head.height, &head.fillet_radius, &body] {
                                let Origin::Tabled(known) = size.origin else {
                                    panic!("{what}: {size:?}")
                                };
                                assert_eq!(known.source.document, "ISO 8765", "{what}");
                                assert_eq!(known.basis, Basis::Reproduced, "{what}");
                            }
                        }
                    }
                    ScrewProduct::MetricHexCapScrew => {
                        let row = &metric_cap[&key("")];
                        is_hexagon(&head, row, "", "", &what);
                        is_of(
                            &head.bearing_diameter,
                            row,
                            ["bearing_diameter_min", "", ""],
                            &what,
                        );
                        body_is(row);
                    }
                    ScrewProduct::StructuralBolt | ScrewProduct::En14399_4 => {
                        let rows = if thread.is_unified() {
                            &structural_inch
                        } else {
                            &structural_metric
                        };
                        let row = &rows[&key("")];
                        let basic = |name: &'static str| {
                            let there = row.contains_key(&format!("{name}_in"))
                                || row.contains_key(&format!("{name}_mm"));
                            if there { name } else { "" }
                        };
                        is_hexagon(
                            &head,
                            row,
                            basic("width_across_flats_basic"),
                            basic("head_height_basic"),
                            &what,
                        );
                        let face = ["washer_face_thickness_min", "", "washer_face_thickness_max"];
                        is_of(&head.washer_face_height, row, face, &what);
                        if thread.is_unified() {
                            // Of no cell: by the rule of ASME B18.2.6.
                            let (bears, flats) = (head.bearing_diameter, head.across_flats.max);
                            assert!(matches!(bears.origin, Origin::Follows(_)), "{what}");
                            assert!(near(bears.max, flats), "{what}");
                            assert!(near(bears.min, flats.map(|flats| 0.9 * flats)), "{what}");
                        } else {
                            let face = ["bearing_diameter_min", "", ""];
                            is_of(&head.bearing_diameter, row, face, &what);
                        }
                        body_is(row);
                    }
                    ScrewProduct::En14399_3 => {
                        let row = &hr_bolts[&key("")];
                        is_hexagon(&head, row, "", "head_height_nominal", &what);
                        let bearing = ["bearing_diameter_min", "", ""];
                        is_of(&head.bearing_diameter, row, bearing, &what);
                        body_is(row);
                    }
                    ScrewProduct::SocketHeadCapScrew | ScrewProduct::Iso4762 => {
                        let rows = if thread.is_unified() {
                            &sockets_inch
                        } else {
                            &sockets_metric
                        };
                        let row = &rows[&key("")];
                        assert_eq!(head.form, HeadForm::Socket);
                        is_of(
                            &head.height,
                            row,
                            ["head_height_min", "", "head_height_max"],
                            &what,
                        );
                        let round = ["head_diameter_min", "", "head_diameter_max"];
                        is_of(&head.diameter, row, round, &what);
                        is_of(&head.socket_flats, row, ["", "key_size", ""], &what);
                        is_of(
                            &head.socket_depth,
                            row,
                            ["key_engagement_min", "", ""],
                            &what,
                        );
                        is_of(
                            &head.bearing_diameter,
                            row,
                            ["bearing_diameter_min", "", ""],
                            &what,
                        );
                        let wall = ["wall_thickness_min", "", ""];
                        is_of(&head.socket_wall, row, wall, &what);
                        for size in [&head.across_flats, &head.across_corners] {
                            is_of(size, row, UNREAD, &what);
                        }
                        body_is(row);
                    }
                    other => panic!("{other} is in no table of this test"),
                }
            }
        }
    }
    // Every product was there, and not once only.
    assert_eq!(seen.len(), ScrewProduct::ALL.len(), "{seen:?}");
    assert!(seen.values().all(|&count| count >= 5), "{seen:?}");
}

/// A stack of two plies for a thread, with washers if there are any, and any length that was assessed for it.
fn any_assembly(
    thread: &Thread,
    nut: &Nut,
    washer: Option<&JointWasher>,
) -> Option<(Assembly, Candidate)> {
    let ply = (1.5 * thread.nominal_diameter()).plus_minus(0.02 * thread.nominal_diameter());
    let mut builder = Stack::builder()
        .ply("a", ply)
        .ply("b", ply)
        .shear_planes([1]);
    if let Some(washer) = washer {
        builder = builder
            .washer_under_head(washer.clone())
            .washers_under_nut(washer.clone(), 1);
    }
    let stack = builder.build().unwrap();
    let end = NutEnd::of(nut).ok()?;
    let rules = LengthRules::fabrication(UnitSystem::Si);
    ScrewProduct::ALL.iter().find_map(|&product| {
        let screws = ScrewSeries::new(product, thread).ok()?;
        let selection = LengthSearch::new(&stack, &screws, end, rules)
            .ok()?
            .run()
            .ok()?;
        let candidate = *selection.best().or(selection.rejected().first())?;
        let assembly = Assembly::of_length(&stack, &screws, Some(nut), &candidate);
        Some((assembly.unwrap(), candidate))
    })
}

#[test]
fn every_size_of_every_nut_is_a_cell() {
    let mut cells: BTreeMap<(String, String, i64), Row> = BTreeMap::new();
    for file in ["nuts_inch", "nuts_metric"] {
        for row in csv_rows(&format!("tables/{file}.csv")) {
            let pitch = cell(&row, "pitch").map_or(0, nanometres);
            // Some sizes are made in two widths: the first one is found.
            cells
                .entry((row["style"].clone(), row["size"].clone(), pitch))
                .or_insert(row);
        }
    }
    let all = threads();
    let (mut checked, mut styles) = (0, BTreeMap::<&str, u32>::new());
    for nut in Nut::all_inch().iter().chain(Nut::all_metric()) {
        let fits = |thread: &&Thread| Nut::find(nut.style, thread).is_ok_and(|own| own == nut);
        let assembled = all
            .iter()
            .filter(fits)
            .find_map(|thread| any_assembly(thread, nut, None));
        let Some((assembly, candidate)) = assembled else {
            continue;
        };
        let End::Nut(body) = &assembly.end else {
            panic!("{nut}")
        };
        checked += 1;
        *styles.entry(nut.style.code()).or_default() += 1;
        let pitch = nut.pitch.map_or(0, nanometres);
        let row = &cells[&(nut.style.code().into(), nut.size.into(), pitch)];
        let what = nut.to_string();
        let has = |name: &'static str| {
            let there = ["_in", "_mm"]
                .iter()
                .any(|unit| row.contains_key(&format!("{name}{unit}")));
            if there { name } else { "" }
        };
        let of = |size: &Size, columns: [&'static str; 3]| {
            is_of(size, row, columns.map(has), &what);
        };
        of(&body.height, ["height_min", "height_basic", "height_max"]);
        of(
            &body.across_flats,
            [
                "width_across_flats_min",
                "width_across_flats_basic",
                "width_across_flats_max",
            ],
        );
        of(
            &body.across_corners,
            ["width_across_corners_min", "", "width_across_corners_max"],
        );
        of(&body.bearing_diameter, ["bearing_diameter_min", "", ""]);
        let countersink = ["countersink_diameter_min", "", "countersink_diameter_max"];
        of(&body.countersink_diameter, countersink);
        of(
            &body.flange_diameter,
            ["flange_diameter_min", "", "flange_diameter_max"],
        );
        of(&body.flange_height, ["flange_thickness_min", "", ""]);
        of(&body.thread_height, ["thread_height_min", "", ""]);
        of(&body.wrenching_height, ["wrenching_height_min", "", ""]);
        of(&body.slot_width, ["slot_width_min", "", "slot_width_max"]);
        of(
            &body.unslotted_height,
            ["unslotted_height_min", "", "unslotted_height_max"],
        );
        assert_eq!(body.locking, nut.style.locking(), "{what}");
        // The place is that of the length search, and as high as the row has it.
        assert_eq!(body.at.from, candidate.grip, "{what}");
        assert!(near(
            Some(body.at.to.max - body.at.from.max),
            body.height.max
        ));
        assert!(near(
            Some(body.at.to.min - body.at.from.min),
            body.height.min
        ));
    }
    assert!(checked > 350 && styles.len() > 35, "{checked} {styles:?}");
}

#[test]
fn every_size_of_every_washer_is_a_cell() {
    let mut cells: BTreeMap<(String, String), Row> = BTreeMap::new();
    for file in ["washers_inch", "washers_metric"] {
        for row in csv_rows(&format!("tables/{file}.csv")) {
            cells.insert((row["style"].clone(), row["size"].clone()), row);
        }
    }
    let mut checked = 0;
    for thread in threads() {
        let style = if thread.is_unified() {
            NutStyle::Hex
        } else {
            NutStyle::Iso4032
        };
        let Ok(nut) = Nut::find(style, &thread) else {
            continue;
        };
        for &style in WasherStyle::ALL {
            let Ok(washer) = JointWasher::find(style, &thread) else {
                continue;
            };
            let Some((assembly, _)) = any_assembly(&thread, nut, Some(&washer)) else {
                continue;
            };
            let size = Washer::find(style, &thread).unwrap().size;
            let row = &cells[&(style.code().into(), size.into())];
            let what = format!("{style}, {size}");
            let own = assembly
                .layers
                .iter()
                .filter(|own| own.style == Some(style));
            let own: Vec<_> = own.collect();
            assert!(own.len() >= 2, "{what}");
            for layer in own {
                let of = |size: &Size, name: &str| {
                    let names = ["min", "nominal", "max"].map(|end| format!("{name}_{end}"));
                    let there = |name: &String| {
                        ["_in", "_mm"]
                            .iter()
                            .any(|unit| row.contains_key(&format!("{name}{unit}")))
                    };
                    let names: Vec<&str> = names
                        .iter()
                        .map(|name| if there(name) { name.as_str() } else { "" })
                        .collect();
                    is_of(size, row, [names[0], names[1], names[2]], &what);
                };
                of(&layer.hole, "inside_diameter");
                of(&layer.outside, "outside_diameter");
                assert!(
                    matches!(layer.thickness_origin, Origin::Tabled(_)),
                    "{what}"
                );
                assert!(
                    near(Some(layer.thickness.min), cell(row, "thickness_min")),
                    "{what}"
                );
                assert!(
                    near(Some(layer.thickness.max), cell(row, "thickness_max")),
                    "{what}"
                );
            }
            checked += 1;
        }
    }
    assert!(checked > 250, "{checked}");
}

fn same(a: Spread<Length>, b: Spread<Length>) -> bool {
    [(a.min, b.min), (a.nominal, b.nominal), (a.max, b.max)]
        .iter()
        .all(|(a, b)| near(Some(*a), Some(*b)))
}

fn less(a: Spread<Length>, b: Spread<Length>) -> Spread<Length> {
    Spread {
        min: a.min - b.max,
        nominal: a.nominal - b.nominal,
        max: a.max - b.min,
    }
}

/// The places of an assembly against the length search, and against each other.
fn places(joint: &Joint, assembly: &Assembly, candidate: &Candidate) -> Result<(), String> {
    let must = |holds: bool, what: &str| {
        if holds { Ok(()) } else { Err(what.to_owned()) }
    };
    must(assembly.grip == candidate.grip, "grip")?;
    must(assembly.jam_margin == candidate.jam_margin, "jam margin")?;
    let at = assembly.end.at();
    must(
        at.from == candidate.grip,
        "the nut begins where the grip ends",
    )?;
    must(
        same(at.to, candidate.grip + candidate.nut_height),
        "outer face of the nut",
    )?;
    let bolt = &assembly.bolt;
    let past = less(bolt.length, candidate.grip);
    must(
        same(less(past, candidate.nut_height), candidate.protrusion),
        "protrusion as bought",
    )?;
    match candidate.cut.filter(|own| own.holds_window) {
        Some(cut) => must(
            bolt.end == cut.finished && bolt.protrusion == cut.protrusion,
            "cut",
        )?,
        None => must(
            bolt.end == bolt.length && bolt.protrusion == candidate.protrusion,
            "not cut",
        )?,
    }
    must(bolt.shank_end == candidate.screw.body_length_min, "LB")?;
    must(
        bolt.thread_start == candidate.screw.grip_gaging_length_max,
        "LG",
    )?;
    // Planes, counted as the search counts them, and where the plies after them begin.
    let mut counts = [0; 3];
    for plane in &assembly.planes {
        counts[plane.worst as usize] += 1;
        // Inside of a sleeve a ply may lie anywhere.
        let sleeved = assembly
            .sleeves
            .iter()
            .any(|own| (own.first_ply..=own.last_ply).contains(&(plane.after_ply + 1)));
        let next = assembly
            .layers
            .iter()
            .find(|own| own.ply == Some(plane.after_ply + 1));
        match (next, &assembly.end) {
            (Some(next), _) if !sleeved => must(same(next.at.from, plane.position), "a plane")?,
            (None, End::Tapped(body)) => {
                // Packing washers and gaps may lie between the plies and the part.
                must(
                    body.face.nominal >= plane.position.nominal,
                    "a plane at the tapped part",
                )?;
            }
            _ => {}
        }
    }
    must(
        counts
            == [
                candidate.planes_on_shank,
                candidate.planes_in_run_out,
                candidate.planes_in_thread,
            ],
        "zones of planes",
    )?;
    layers(joint, assembly, candidate)
}

/// How many of everything there is, and each where the one before it ends, but for recesses and sleeves.
fn layers(joint: &Joint, assembly: &Assembly, candidate: &Candidate) -> Result<(), String> {
    let stack = &joint.stack;
    let must = |holds: bool, what: &str| {
        if holds { Ok(()) } else { Err(what.to_owned()) }
    };
    let washers = |side: Side| {
        let own = assembly.layers.iter().filter(|own| own.side == Some(side));
        own.count()
    };
    must(
        washers(Side::Head)
            == stack.washers_under_head().len() + candidate.washers_added_under_head,
        "washers under the head",
    )?;
    must(
        washers(Side::Nut) == stack.other_washers_under_nut().len() + candidate.washers_under_nut,
        "washers under the nut",
    )?;
    let plies = assembly.layers.iter().filter(|own| own.ply.is_some());
    must(plies.count() == stack.plies().len(), "plies")?;
    let plain = assembly.sleeves.is_empty()
        && assembly.seat == HeadSeat::Flat
        && assembly.spot_face_under_nut.is_none();
    let mut sum = Spread::exact(Length::default());
    for layer in &assembly.layers {
        if plain {
            must(
                same(layer.at.from, sum),
                "begins where the one before it ends",
            )?;
        }
        let crush = layer
            .ply
            .map_or(Length::default(), |number| stack.plies()[number - 1].crush);
        let clamped = Spread {
            min: layer.thickness.min - crush,
            ..layer.thickness
        };
        must(same(layer.at.to, layer.at.from + clamped), "thickness")?;
        sum = sum + clamped;
    }
    if plain && matches!(assembly.end, End::Nut(_)) {
        must(same(sum, candidate.grip), "the sum of all is the grip")?;
    }
    Ok(())
}

#[test]
fn places_are_those_of_the_length_search() {
    for_all(10_000, |joint, _| {
        let Ok(verdict) = joint.check() else {
            return Ok(());
        };
        let assembly = joint
            .assembly(&verdict.candidate)
            .map_err(|error| error.to_string())?;
        places(joint, &assembly, &verdict.candidate)
    });
}

/// Not the length of the verdict alone: all that were looked at.
#[test]
fn places_of_all_other_lengths_too() {
    for_all(300, |joint, _| {
        let Ok(selection) = joint.lengths() else {
            return Ok(());
        };
        for own in selection.accepted().iter().chain(selection.rejected()) {
            let assembly = joint.assembly(own).map_err(|error| error.to_string())?;
            places(joint, &assembly, own)?;
        }
        Ok(())
    });
}

/// Washers that the search adds under the head push every plane towards the nut: in the assembly, and in the report that is
/// read in place of a picture.
#[test]
fn washers_added_under_the_head_move_the_planes() {
    let mut moved = 0;
    for step in 0..160 {
        let ply = millimetres(12.0 + 0.125 * f64::from(step)).plus_minus(millimetres(0.1));
        let mut rules = LengthRules::fabrication(UnitSystem::Si);
        rules.washers_under_nut_max = 0;
        rules.washers_under_head_max = Some(3);
        let thread: Thread = "M12".parse().unwrap();
        let washer = JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
        let joint = Joint::builder("M12")
            .no_washers()
            .add(JointPly::new("a", ply))
            .add(JointPly::new("b", ply))
            .stack(move |stack| stack.washer_to_add_under_head(washer))
            .rules(rules)
            .across("2 kN")
            .build()
            .unwrap();
        let verdict = joint.check().unwrap();
        let candidate = &verdict.candidate;
        let assembly = joint.assembly(candidate).unwrap();
        places(&joint, &assembly, candidate).unwrap();
        if candidate.washers_added_under_head == 0 {
            continue;
        }
        moved += 1;
        let report = Report::new(&joint, &verdict, None, UnitSystem::Si).unwrap();
        let (own, plane) = (&report.planes[0], &assembly.planes[0]);
        assert!(same(own.position, plane.position), "{own:?}, {plane:?}");
        assert_eq!(own.worst, plane.worst);
    }
    assert!(moved > 20, "{moved}");
}

/// A length of another joint is refused, not drawn.
#[test]
fn lengths_of_other_joints_are_refused() {
    let joint = |thickness: &str, nut: NutStyle| {
        Joint::builder("M12")
            .ply("a", thickness)
            .ply("b", "20 mm")
            .nut(nut)
            .across("2 kN")
            .build()
            .unwrap()
    };
    let own = joint("20 mm", NutStyle::Iso4032);
    let candidate = own.check().unwrap().candidate;
    assert!(own.assembly(&candidate).is_ok());
    for other in [
        joint("21 mm", NutStyle::Iso4032),
        joint("20 mm", NutStyle::Iso4033),
        Joint::builder("M12x1.25")
            .product(ScrewProduct::Iso8765)
            .ply("a", "20 mm")
            .ply("b", "20 mm")
            .across("2 kN")
            .build()
            .unwrap(),
    ] {
        let error = other.assembly(&candidate).unwrap_err();
        assert!(matches!(error, Error::Mismatch(_)), "{error}");
    }
}

/// As data: quantities carry their unit, and a hole in the tables is there as such.
#[test]
fn written_as_data_a_hole_stays_a_hole() {
    let joint = Joint::builder("M24")
        .product(ScrewProduct::En14399_3)
        .ply("a", "20 mm")
        .ply("b", "20 mm")
        .nut(NutStyle::En14399_3)
        .washers(WasherStyle::En14399_6)
        .across("2 kN")
        .build()
        .unwrap();
    let candidate = joint.check().unwrap().candidate;
    let assembly = joint.assembly(&candidate).unwrap();
    let data = serde_json::to_value(&assembly).unwrap();
    let head = &data["bolt"]["head"];
    assert_eq!(head["diameter"]["origin"], "not_read");
    assert!(head["diameter"]["max"].is_null());
    assert_eq!(head["form"], "hexagon");
    let flats = &head["across_flats"]["origin"]["tabled"];
    assert_eq!(flats["basis"], "reproduced");
    assert_eq!(data["end"]["nut"]["across_flats"]["origin"], "not_read");
    let shank = &data["bolt"]["shank_end"];
    assert_eq!(shank["unit"], "mm");
    let found = shank["value"].as_f64().unwrap();
    assert!((found - assembly.bolt.shank_end.base() * 1e3).abs() < 1e-9);
    let plane = &data["planes"][0]["position"]["max"]["value"];
    let wanted = assembly.planes[0].position.max.base() * 1e3;
    assert!((plane.as_f64().unwrap() - wanted).abs() < 1e-9);
    let names = assembly.not_read();
    assert_eq!(names, ["flats of the nut"]);
}

/// An own nut and bolt have what is stated, and nothing of a listed part stands in for the rest.
#[test]
fn own_parts_have_what_is_stated() {
    let only = OwnLength::new(
        millimetres(68.0).plus_minus(millimetres(0.5)),
        millimetres(34.0),
        millimetres(38.0),
    );
    let mut bolt = OwnScrew::new("turned bolt (invented)", [only]);
    bolt.bearing_diameter = Some(millimetres(22.0));
    bolt.head_height = Some(millimetres(10.0));
    let height = millimetres(16.0).plus_minus(millimetres(0.2));
    let nut = OwnNut::new("turned nut (invented)", height, Locking::Insert);
    let joint = Joint::builder("M16")
        .own_bolt(bolt)
        .own_nut(nut)
        .no_washers()
        .ply("a", "20 mm")
        .ply("b", "20 mm")
        .across("2 kN")
        .build()
        .unwrap();
    let assembly = joint.assembly(&joint.check().unwrap().candidate).unwrap();
    let head = &assembly.bolt.head;
    assert_eq!(head.form, HeadForm::Other);
    assert_eq!(head.height.min, Some(millimetres(10.0)));
    assert_eq!(head.bearing_diameter.min, Some(millimetres(22.0)));
    assert_eq!(head.bearing_diameter.origin, Origin::Stated);
    assert!(!head.across_flats.is_read());
    assert!(!assembly.bolt.body_diameter.is_read());
    let End::Nut(nut) = &assembly.end else {
        panic!("it has a nut")
    };
    assert_eq!(nut.height.max, Some(millimetres(16.2)));
    assert!(!nut.across_flats.is_read() && nut.style.is_none());
    assert_eq!(nut.locking, Locking::Insert);
    let hole = &assembly.layers[0].hole;
    assert_eq!((hole.origin, hole.min), (Origin::Stated, None));
}
