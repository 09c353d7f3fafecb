//! Twelve worked length selections, row by row: lengths, zones, jam margin, protrusion, verdict, cut.

#![cfg(feature = "serde")]

mod support;

use serde::Deserialize;
use shankline::{
    joint::{Candidate, Reason, Selection},
    prelude::*,
    uom::si::length::{inch, millimeter},
};
use support::{Row, csv_rows, decimals, number, repository};

#[derive(Deserialize)]
struct File {
    joint: Vec<Joint>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Joint {
    example: u32,
    title: String,
    product: ScrewProduct,
    thread: Thread,
    nut: NutStyle,
    washer: WasherStyle,
    /// Of a washer that is not in the tables, or has no nominal thickness there.
    washer_thickness: Option<Spread<Length>>,
    washers_under_head: usize,
    plies: Vec<Spread<Length>>,
    shear_planes: Vec<usize>,
    protrusion: Vec<f64>,
    clear_threads: f64,
    washers_max: usize,
}

impl Joint {
    fn stack(&self) -> Stack {
        let washer = self.washer_thickness.unwrap_or_else(|| {
            let washer = Washer::find(self.washer, &self.thread).unwrap();
            washer.thickness().unwrap()
        });
        let mut builder = Stack::builder().shear_planes(self.shear_planes.iter().copied());
        for _ in 0..self.washers_under_head {
            builder = builder.washer_under_head(washer);
        }
        for (index, ply) in self.plies.iter().enumerate() {
            builder = builder.ply(format!("ply {}", index + 1), *ply);
        }
        builder.washers_under_nut(washer, 1).build().unwrap()
    }

    fn select(&self, stack: &Stack) -> Selection {
        let system = if self.thread.is_unified() {
            UnitSystem::UsCustomary
        } else {
            UnitSystem::Si
        };
        let rules = LengthRules::fabrication(system)
            .with_protrusion(self.protrusion[0], self.protrusion.get(1).copied())
            .with_clear_threads(self.clear_threads)
            .with_washers_under_nut(self.washers_max);
        let screws = ScrewSeries::new(self.product, &self.thread).unwrap();
        let nut = NutEnd::of(Nut::find(self.nut, &self.thread).unwrap()).unwrap();
        LengthSearch::new(stack, &screws, nut, rules)
            .unwrap()
            .run()
            .unwrap()
    }
}

fn joints() -> Vec<Joint> {
    let text = std::fs::read_to_string(repository("tests/data/worked_joints.toml")).unwrap();
    toml::from_str::<File>(&text).unwrap().joint
}

fn in_unit(length: Length, unit: &str) -> f64 {
    if unit == "in" {
        length.get::<inch>()
    } else {
        length.get::<millimeter>()
    }
}

/// A printed cell: equal within half a unit of its last place.
fn same(row: &Row, column: &str, found: Length) {
    let printed = &row[column];
    // Inch body lengths were written from a Y of four decimals: half a unit of that comes on top.
    let extra = if column == "body_length" {
        0.000_05
    } else {
        0.0
    };
    let half = 0.5 * 10f64.powi(-i32::try_from(decimals(printed)).unwrap()) + extra;
    let (expected, found) = (number(row, column).unwrap(), in_unit(found, &row["unit"]));
    assert!(
        (found - expected).abs() <= half + 1e-9,
        "example {} length {} {column}: {printed}, found {found}",
        row["example"],
        row["length"]
    );
}

fn find<'a>(selection: &'a Selection, row: &Row) -> &'a Candidate {
    let length = number(row, "length").unwrap();
    selection
        .accepted()
        .iter()
        .chain(selection.rejected())
        .find(|c| (in_unit(c.screw.nominal, &row["unit"]) - length).abs() < 1e-6)
        .unwrap_or_else(|| panic!("no length {length}"))
}

#[test]
fn every_row_of_the_twelve_examples() {
    let rows = csv_rows("tests/data/worked_lengths.csv");
    let cuts = csv_rows("tests/data/worked_cuts.csv");
    let (mut checked, mut cuts_checked) = (0, 0);
    for joint in joints() {
        let stack = joint.stack();
        let selection = joint.select(&stack);
        let example = joint.example.to_string();
        for row in rows.iter().filter(|row| row["example"] == example) {
            checked += 1;
            let candidate = find(&selection, row);
            check_row(&joint, &stack, &selection, candidate, row);
        }
        for row in cuts.iter().filter(|row| row["example"] == example) {
            cuts_checked += 1;
            let cut = selection.best().unwrap().cut.unwrap();
            same(row, "length", cut.length);
            same(row, "removed", cut.removed);
            same(row, "thread_left", cut.thread_left);
            assert_eq!(
                cut.holds_window,
                row["holds_window"] == "yes",
                "{}",
                joint.title
            );
            for (column, found) in [
                ("protrusion_min_pitches", cut.protrusion.min),
                ("protrusion_max_pitches", cut.protrusion.max),
            ] {
                let pitches = found.value / joint.thread.pitch().value;
                let expected = number(row, column).unwrap();
                assert!(
                    (pitches - expected).abs() <= 0.005 + 1e-9,
                    "{} {column} {pitches}",
                    joint.title
                );
            }
        }
    }
    assert_eq!((checked, cuts_checked), (rows.len(), cuts.len()));
    assert_eq!((checked, cuts_checked), (48, 8));
}

fn check_row(joint: &Joint, stack: &Stack, selection: &Selection, found: &Candidate, row: &Row) {
    let name = format!(
        "example {} ({}) length {}",
        joint.example, joint.title, row["length"]
    );
    assert_eq!(
        found.washers_under_nut.to_string(),
        row["washers_under_nut"],
        "{name}"
    );
    same(row, "body_length", found.screw.body_length_min);
    same(
        row,
        "grip_gaging_length",
        found.screw.grip_gaging_length_max,
    );
    same(row, "grip_min", found.grip.min);
    same(row, "grip_nominal", found.grip.nominal);
    same(row, "grip_max", found.grip.max);
    same(row, "jam_margin", found.jam_margin);
    same(row, "protrusion_min", found.protrusion.min);
    same(row, "protrusion_max", found.protrusion.max);
    let planes: Vec<_> = stack.planes(&found.screw).collect();
    let zones = |pick: fn(&shankline::joint::Plane) -> Zone| {
        planes
            .iter()
            .map(|p| pick(p).to_string())
            .collect::<Vec<_>>()
            .join(";")
    };
    assert_eq!(zones(|p| p.nominal), row["zone_nominal"], "{name}");
    assert_eq!(zones(|p| p.worst), row["zone_worst"], "{name}");
    match row["verdict"].as_str() {
        "ok" => {
            assert!(found.fits(), "{name}");
            assert_eq!(found.needs_cut, row["cut"] == "yes", "{name}");
        }
        "short" => assert!(
            found
                .reasons()
                .any(|r| matches!(r, Reason::TooShort { .. })),
            "{name}"
        ),
        "jam" => assert!(
            found.reasons().any(|r| matches!(r, Reason::NutJams { .. })),
            "{name}"
        ),
        "threads" => assert!(
            found
                .reasons()
                .any(|r| matches!(r, Reason::TooFewClearThreads { .. })),
            "{name}"
        ),
        other => panic!("{other}"),
    }
    let chosen = selection.best().unwrap().screw.nominal == found.screw.nominal;
    assert_eq!(chosen, row["chosen"] == "yes", "{name}");
}

#[test]
fn shank_and_clamp_identity_explains_the_thin_joints() {
    // Example 6: two 3/16 in angles on a 1/2-13 bolt, Y = 5/13 in: no length can do both.
    let joints = joints();
    let thin = joints.iter().find(|joint| joint.example == 6).unwrap();
    let margin = thin
        .stack()
        .shank_and_clamp_margin(inches(5.0 / 13.0), 1)
        .unwrap()
        .unwrap();
    assert!(margin < inches(0.0));
}
