//! Connections against print: forces on bolts, and what blocks, sections and bolts bear together.

use shankline::connection::{
    Connection, ConnectionBuilder, ConnectionVerdict, InPlane, LoadCase, OutOfPlane, Outline,
    PlatePrying, Side,
};
use shankline::error::Amount;
use shankline::joint::{MaterialKind, OwnMaterial, Prying, Slip};
use shankline::preload::{NutFactor, PreloadTarget};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode};
use shankline::strength::group::{BoltPattern, DeformationLaw, GroupBolt, Point};
use shankline::strength::slip::{SlipClass, SlipMethod};
use shankline::units::{Force, Length, newton_metres};
use std::collections::BTreeMap;

mod support;

use support::{Row, csv_rows, number};

const KIP: f64 = 4_448.221_615_260_5;

fn numbers(text: &str) -> Vec<f64> {
    text.split(':').map(|part| part.parse().unwrap()).collect()
}

struct Printed<'a> {
    row: &'a Row,
    facts: BTreeMap<&'a str, &'a str>,
}

impl<'a> Printed<'a> {
    fn new(row: &'a Row) -> Self {
        let facts = row["facts"]
            .split(';')
            .filter_map(|fact| fact.split_once('='));
        Self {
            row,
            facts: facts.collect(),
        }
    }

    fn is_inch(&self) -> bool {
        self.row["length_unit"] == "in"
    }

    fn length(&self, value: f64) -> Length {
        if self.is_inch() {
            inches(value)
        } else {
            millimetres(value)
        }
    }

    /// Forces of the print: kip beside inches, else kN.
    fn unit(&self) -> f64 {
        if self.is_inch() { KIP } else { 1e3 }
    }

    fn points(&self, column: &str) -> Vec<Point> {
        let places = self.row[column]
            .split(' ')
            .filter(|place| !place.is_empty());
        places
            .map(|place| {
                let at = numbers(place);
                Point {
                    x: self.length(at[0]),
                    y: self.length(at[1]),
                }
            })
            .collect()
    }

    fn fact(&self, name: &str) -> f64 {
        self.facts[name].parse().unwrap()
    }

    fn case(&self, bolts: &BoltPattern) -> LoadCase {
        let force: Vec<f64> = numbers(&self.row["force"]);
        let force: Vec<Force> = force
            .iter()
            .map(|part| newtons(part * self.unit()))
            .collect();
        let force = [force[0], force[1], force[2]];
        let twist = self.facts.get("moment");
        let twist = twist.map_or(0.0, |own| own.parse().unwrap());
        let at = if self.row["at"] == "centroid" {
            let at = bolts.centroid();
            [at.x, at.y, Length::default()]
        } else {
            let at = numbers(&self.row["at"]);
            [at[0], at[1], at[2]].map(|part| self.length(part))
        };
        LoadCase::new("load", force, at).with_moment([0.0, 0.0, 1e3 * twist].map(newton_metres))
    }

    fn methods(&self) -> JointMethods {
        match &*self.row["method"] {
            "en_1993" => JointMethods::en_1993(),
            "aisc_asd" => JointMethods::aisc_asd(AiscEdition::E2005),
            "aisc_lrfd" | "centre" => JointMethods::aisc_lrfd(AiscEdition::E2005),
            _ => JointMethods::machine_design(2.0),
        }
    }

    fn start(&self) -> ConnectionBuilder {
        let thread = self.facts.get("thread").copied();
        let thread = thread.unwrap_or(if self.is_inch() { "3/4-10 UNC" } else { "M16" });
        let thickness = self.facts.get("t").map_or(10.0, |own| own.parse().unwrap());
        let thickness = if self.facts.contains_key("t") {
            self.length(thickness)
        } else {
            millimetres(thickness)
        };
        let steel = || {
            let mut steel = OwnMaterial::new("steel of the print", MaterialKind::CarbonSteel);
            let stress = |name: &str| {
                let value = self.facts.get(name)?.parse().unwrap();
                Some(if self.is_inch() {
                    ksi(value)
                } else {
                    megapascals(value)
                })
            };
            steel.yield_strength = stress("fy");
            steel.tensile_strength = stress("fu");
            steel
        };
        let mut bolt = Joint::builder(thread);
        // Between two like plates, or on one.
        let stack: &[&str] = if self.facts.contains_key("between") {
            &["other", "plate", "other"]
        } else {
            &["plate", "other"]
        };
        for name in stack {
            bolt = bolt.ply(*name, thickness).material(steel());
            if self.facts.contains_key("hole") {
                bolt = bolt.hole(self.length(self.fact("hole")));
            }
        }
        let mut methods = self.methods();
        if let Some(grade) = self.facts.get("grade").copied() {
            bolt = bolt.grade(grade);
            if grade.contains("A325") {
                bolt = bolt
                    .product(ScrewProduct::StructuralBolt)
                    .nut(NutStyle::HeavyHex)
                    .nut_grade("ASTM A563 DH")
                    .washers(WasherStyle::F436);
            }
        }
        if self.row["quantity"] == "slip" {
            methods.slip = Slip::Resisted(SlipMethod::Aisc360 {
                edition: AiscEdition::E2005,
                class: SlipClass::A,
            });
            let factor = NutFactor::new(0.15, 0.2, 0.25).unwrap();
            let edition = AiscEdition::E2005;
            bolt = bolt.torque(factor, PreloadTarget::AiscJ31 { edition });
        }
        let bolt = bolt.methods(methods).load_factor(1.0).prying(Prying::None);
        let places = self.points("bolts").into_iter();
        let bolts = BoltPattern::new(places.map(|at| GroupBolt::new(at.x, at.y))).unwrap();
        let case = self.case(&bolts);
        let mut connection = Connection::builder(bolt).bolts(bolts);
        let corners = self.points("plate");
        if !corners.is_empty() {
            connection = connection.plate("plate", Outline::polygon(corners).unwrap());
            connection = match &*self.row["held"] {
                "left" => connection.held(Side::Left),
                "bottom" => connection.held(Side::Bottom),
                _ => connection,
            };
            if self.facts.contains_key("lcr") {
                let length = self.length(self.fact("lcr"));
                connection = connection.buckling_length(length).loaded("plate");
            }
        }
        if self.row["method"] == "edge" {
            connection = connection.out_of_plane(OutOfPlane::PressedEdge {
                ply: "plate".into(),
            });
        }
        connection
            .in_plane(match &*self.row["method"] {
                "centre" => InPlane::InstantaneousCentre(DeformationLaw::Aisc),
                _ => InPlane::Elastic,
            })
            .cases([case])
    }

    fn force(&self, amount: &Amount) -> f64 {
        match amount {
            Amount::Force(force) => force.value / self.unit(),
            other => panic!("{other}"),
        }
    }

    fn found(&self) -> f64 {
        let connection = self.start().build().unwrap();
        let forces = connection.forces("load").unwrap();
        let across = || forces.iter().map(|own| own.across.value / self.unit());
        let along = || forces.iter().map(|own| own.along.value / self.unit());
        let load = numbers(&self.row["force"]);
        let size = load.iter().map(|part| part * part).sum::<f64>().sqrt();
        let quantity = &*self.row["quantity"];
        match quantity {
            "across" => return across().fold(0.0, f64::max),
            "least_across" => return across().fold(f64::INFINITY, f64::min),
            "along" => return along().fold(0.0, f64::max),
            "least_along" => return along().fold(f64::INFINITY, f64::min),
            // The bolt that deforms most is held to the strength that is needed.
            "coefficient" => return size / across().fold(0.0, f64::max),
            _ => {}
        }
        let verdict = connection.check().unwrap();
        let place = if self.facts.contains_key("between") {
            "ply 2"
        } else {
            "ply 1"
        };
        let presses = quantity == "pressed";
        let of_plate = |mode: Mode| -> Check {
            let checks = verdict.checks.iter().map(|own| &own.check);
            let mut own = checks.filter(|own| {
                own.mode == mode
                    && own.place.to_string() == place
                    && (own.method.citation == "AISC 360 J4.4") == presses
            });
            own.next()
                .unwrap_or_else(|| panic!("{mode}: {}", verdict.render(UnitSystem::Si)))
                .clone()
        };
        let of_bolt = |bolt: usize, mode: Mode| -> Check {
            let checks = verdict.bolts[bolt - 1].verdict.checks.iter();
            let own = checks.filter(|own| own.mode == mode && own.place.to_string() != "ply 2");
            let worst = own.max_by(|a, b| a.utilisation.value.total_cmp(&b.utilisation.value));
            worst
                .unwrap_or_else(|| panic!("{mode}: {}", verdict.render(UnitSystem::Si)))
                .clone()
        };
        match quantity {
            "block_shear" => bears(&of_plate(Mode::BlockShear), size),
            // phi Fy times thickness and width.
            "spread_width" => {
                let force = self.force(&of_plate(Mode::GrossSection).resistance);
                force / (0.90 * self.fact("fy") * self.fact("t"))
            }
            "gross_section" | "pressed" => bears(&of_plate(Mode::GrossSection), size),
            "net_section" => bears(&of_plate(Mode::NetSection), size),
            "net_width" | "net_area" => {
                // phi Fu An of the specification, with phi 0.75.
                let force = self.force(&of_plate(Mode::NetSection).resistance);
                let area = force / (0.75 * self.fact("fu"));
                if quantity == "net_area" {
                    area
                } else {
                    area / self.fact("t")
                }
            }
            "bearing" => {
                self.force(&of_bolt(self.facts["bolt"].parse().unwrap(), Mode::Bearing).resistance)
            }
            "bolt_shear" => bears(&of_bolt(1, Mode::BoltShear), size),
            "slip" => bears(&of_bolt(1, Mode::Slip), size),
            other => panic!("{other}"),
        }
    }
}

/// The whole load that a check would just allow.
fn bears(check: &Check, of: f64) -> f64 {
    of / check.utilisation.value
}

#[test]
fn printed_values() {
    let rows = csv_rows("tests/data/connections.csv");
    let readme = std::fs::read_to_string("README.md").unwrap();
    let counted = format!("{} of connections", rows.len());
    assert!(
        readme.contains(&counted),
        "the README does not say: {counted}"
    );
    let mut wrong = Vec::new();
    for row in &rows {
        let found = Printed::new(row).found();
        let (printed, tolerance) = (
            number(row, "printed").unwrap(),
            number(row, "tolerance").unwrap(),
        );
        assert!(!row["source"].is_empty() && !row["basis"].is_empty());
        if (found - printed).abs() > tolerance {
            wrong.push(format!(
                "{} {printed}: {found} ({})",
                row["quantity"], row["source"]
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert_eq!(rows.len(), 26);
}

/// Tamboli (ed.), Handbook of Structural Steel Connection Design and Details, 2nd ed., end plate with prying: bolts of
/// 40.6 kip, flange 0.715 in thick, b 2.035 in, a 1.3125 in, p 3 in: 23.7 kip a bolt.
#[test]
fn an_end_plate_pries_as_printed() {
    let checked = |pull: f64| -> ConnectionVerdict {
        let mut plate = OwnMaterial::new("A992 of the print", MaterialKind::CarbonSteel);
        plate.yield_strength = Some(ksi(50.0));
        plate.tensile_strength = Some(ksi(65.0));
        let bolt = Joint::builder("7/8-9 UNC")
            .product(ScrewProduct::StructuralBolt)
            .grade("ASTM F3125 A325 type 1")
            .nut(NutStyle::HeavyHex)
            .nut_grade("ASTM A563 DH")
            .washers(WasherStyle::F436)
            .ply("end plate", inches(0.715))
            .material(plate.clone())
            .hole(inches(0.9375))
            .ply("column flange", inches(1.5))
            .material(plate)
            .hole(inches(0.9375))
            .methods(JointMethods::aisc_lrfd(AiscEdition::E2005))
            .load_factor(1.0);
        let force = [0.0, 0.0, 8.0 * pull * KIP].map(newtons);
        Connection::builder(bolt)
            .rows_and_columns(4, 2, inches(3.0), inches(5.5))
            .prying(PlatePrying::new(
                "end plate",
                inches(3.0),
                inches(2.035),
                inches(1.3125),
            ))
            .cases([LoadCase::new("pull", force, [0.0; 3].map(inches))])
            .build()
            .unwrap()
            .check()
            .unwrap()
    };
    let prying = |verdict: &ConnectionVerdict| {
        let mut checks = verdict.checks.iter();
        let own = checks.find(|own| own.check.mode == Mode::Prying).unwrap();
        let Amount::Force(available) = own.check.resistance else {
            panic!()
        };
        (available.value / KIP, own.check.holds())
    };
    let (available, holds) = prying(&checked(23.5));
    assert!((available - 23.7).abs() < 0.05, "{available}");
    assert!(holds);
    assert!(!prying(&checked(23.8)).1);
    // The flange bends first (alpha' 1.44 in the print): Q = 40.6 x 0.6875 x 0.91 / (1.215 / 0.715)^2 = 8.80 kip,
    // and the bolt carries (23.7 + 8.8) / 40.6 of its strength.
    let verdict = checked(available);
    let tension = verdict.bolts[0].verdict.checks.iter();
    let tension = tension.filter(|own| own.mode == Mode::BoltTension && own.level == Level::Design);
    let used = tension.map(|own| own.utilisation.value).fold(0.0, f64::max);
    assert!((used - 0.8005).abs() < 2e-3, "{used}");
}
