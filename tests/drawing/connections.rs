//! Connections chosen to be drawn, and random ones: few and many bolts, dense and far apart, every kind of load and of
//! outline. All invented.

#![allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::many_single_char_names
)] // a few bolts at most

use shankline::connection::*;
use shankline::joint::{JointBuilder, Prying, RuleSet};
use shankline::prelude::*;
use shankline::strength::group::{BoltPattern, GroupBolt, Point};
use shankline::units::{degrees, newton_metres};

fn mm(value: f64) -> Length {
    millimetres(value)
}

fn bolt(thread: &str) -> JointBuilder {
    Joint::builder(thread)
        .ply("plate", "10 mm")
        .material("S275 steel")
        .ply("support", "12 mm")
        .material("S275 steel")
        .methods(JointMethods::en_1993())
        .load_factor(1.5)
        .prying(Prying::None)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
}

fn clamped(thread: &str) -> JointBuilder {
    let factor = NutFactor::new(0.16, 0.2, 0.26).unwrap();
    bolt(thread).torque(factor, PreloadTarget::Reusable)
}

fn polygon(corners: &[(f64, f64)]) -> Outline {
    let corners = corners.iter().map(|(x, y)| Point {
        x: mm(*x),
        y: mm(*y),
    });
    Outline::polygon(corners).unwrap()
}

fn at(places: &[(f64, f64)]) -> BoltPattern {
    let places = places.iter();
    BoltPattern::new(places.map(|(x, y)| GroupBolt::new(mm(*x), mm(*y)))).unwrap()
}

/// Forces in kN, the point in mm.
fn load(name: &str, force: [f64; 3], at: [f64; 3]) -> LoadCase {
    LoadCase::new(name, force.map(|own| newtons(1e3 * own)), at.map(mm))
}

fn grid(thread: &str, rows: usize, columns: usize, pitch: f64, gauge: f64) -> ConnectionBuilder {
    let (wide, high) = (
        gauge * (columns - 1) as f64 + 80.0,
        pitch * (rows - 1) as f64 + 80.0,
    );
    Connection::builder(bolt(thread))
        .rows_and_columns(rows, columns, mm(pitch), mm(gauge))
        .plate("plate", Outline::rectangle(mm(wide), mm(high)).unwrap())
        .held(Side::Top)
        .plate(
            "support",
            Outline::rectangle(mm(wide + 60.0), mm(high + 30.0)).unwrap(),
        )
        .held(Side::Bottom)
        .loaded("support")
        .in_plane(InPlane::Elastic)
}

const HOSTILE: &str = "</text><script>alert(\"1\")</script> & \u{202e}\u{0} ]]> 漢字";

/// Names of pictures, their connections, and the case that is drawn if it is not the governing one.
// A list.
#[allow(clippy::too_many_lines)]
pub fn chosen() -> Vec<(&'static str, Connection, Option<&'static str>)> {
    let plain = |own: ConnectionBuilder, case: LoadCase| own.cases([case]);
    let down = |kn: f64| load("crowd", [0.0, -kn, 0.0], [0.0; 3]);
    let mut all: Vec<(&'static str, ConnectionBuilder, Option<&'static str>)> = vec![
        (
            "hanger",
            plain(
                grid("M16", 2, 2, 60.0, 60.0).title("Walkway hanger (invented)"),
                down(60.0),
            ),
            None,
        ),
        (
            "bracket",
            grid("M20", 6, 2, 70.0, 90.0)
                .title("Bracket of a hoist beam (invented)")
                .cases([
                    load("trolley out", [3.0, -22.0, 0.0], [310.0, 60.0, 0.0]),
                    load("trolley in", [0.0, -22.0, 0.0], [120.0, 60.0, 0.0]),
                ]),
            None,
        ),
        (
            "other_case",
            grid("M20", 3, 2, 70.0, 90.0)
                .title("The case that does not govern")
                .cases([
                    load("out", [0.0, -22.0, 0.0], [310.0, 60.0, 0.0]),
                    load("in", [0.0, -12.0, 0.0], [120.0, 60.0, 0.0]),
                ]),
            Some("in"),
        ),
        (
            "one_bolt",
            plain(grid("M12", 1, 1, 10.0, 10.0).title("One bolt"), down(6.0)),
            None,
        ),
        (
            "row",
            plain(grid("M12", 1, 5, 10.0, 40.0).title("A row"), down(30.0)),
            None,
        ),
        (
            "column",
            plain(grid("M12", 7, 1, 40.0, 10.0).title("A column"), down(30.0)),
            None,
        ),
        (
            "wide",
            plain(
                grid("M16", 2, 20, 60.0, 60.0).title("Splice of a long rail"),
                load("pull", [80.0, 0.0, 0.0], [0.0; 3]),
            ),
            None,
        ),
        (
            "tall",
            plain(
                grid("M16", 24, 1, 55.0, 60.0).title("Ladder rail"),
                down(90.0),
            ),
            None,
        ),
        (
            "dense",
            plain(
                grid("M16", 12, 16, 40.0, 40.0).title("Very many bolts"),
                load("turn", [30.0, -90.0, 0.0], [200.0, 100.0, 0.0]),
            ),
            None,
        ),
        (
            "most",
            plain(
                grid("M12", 10, 20, 30.0, 30.0).title("As many as there may be"),
                load("turn", [30.0, -90.0, 0.0], [200.0, 100.0, 0.0]),
            ),
            None,
        ),
        (
            "far_load",
            plain(
                grid("M20", 2, 2, 150.0, 120.0).title("Davit arm"),
                load("hook", [0.0, -2.0, 0.0], [2400.0, 30.0, 0.0]),
            ),
            None,
        ),
        (
            "circle",
            Connection::builder(clamped("M16"))
                .title("Foot of a davit (invented)")
                .circle(8, "240 mm")
                .plate("plate", Outline::round("320 mm").unwrap())
                .plate("support", Outline::rectangle("500 mm", "400 mm").unwrap())
                .in_plane(InPlane::Elastic)
                .out_of_plane(OutOfPlane::Clamped)
                .cases([load("lift", [2.0, 1.0, 12.0], [0.0, 0.0, 0.0])
                    .with_moment([900.0, 300.0, 500.0].map(newton_metres))]),
            None,
        ),
        (
            "pull_and_press",
            Connection::builder(clamped("M16"))
                .title("Post of a climbing frame")
                .rows_and_columns(2, 2, "160 mm", "200 mm")
                .plate("plate", Outline::rectangle("300 mm", "260 mm").unwrap())
                .in_plane(InPlane::Elastic)
                .out_of_plane(OutOfPlane::Clamped)
                .cases([load("push", [1.5, 0.0, -2.0], [0.0, 0.0, 0.0])
                    .with_moment([0.0, 1800.0, 0.0].map(newton_metres))]),
            None,
        ),
        (
            "twist",
            grid("M16", 2, 3, 60.0, 70.0)
                .title("A moment alone")
                .cases([LoadCase::of_moment(
                    "twist",
                    [0.0, 0.0, -900.0].map(newton_metres),
                )]),
            None,
        ),
        (
            "gusset",
            Connection::builder(bolt("M16"))
                .title("Gusset of a mezzanine brace")
                .bolts(at(&[(40.0, 40.0), (95.0, 40.0), (40.0, 95.0)]))
                .plate("plate", polygon(&[(0.0, 0.0), (230.0, 0.0), (0.0, 210.0)]))
                .held(Side::Left)
                .plate(
                    "support",
                    polygon(&[
                        (-60.0, -30.0),
                        (260.0, -30.0),
                        (260.0, 120.0),
                        (100.0, 240.0),
                        (-60.0, 240.0),
                    ]),
                )
                .held(Side::Towards(degrees(-90.0)))
                .in_plane(InPlane::Elastic)
                .cases([load("brace", [20.0, 16.0, 0.0], [58.0, 58.0, 0.0])]),
            None,
        ),
        (
            "no_outlines",
            Connection::builder(bolt("M16"))
                .title("Nobody says how large the plates are")
                .rows_and_columns(2, 3, "60 mm", "70 mm")
                .cases([down(20.0)]),
            None,
        ),
        (
            "combination",
            grid("M16", 2, 2, 70.0, 70.0)
                .title("Own weight and wind")
                .cases([
                    load("own weight", [0.0, -8.0, 0.0], [20.0, 0.0, 0.0]),
                    load("wind", [6.0, 0.0, 0.0], [0.0, 90.0, 0.0]),
                    load("snow", [0.0, -9.0, 0.0], [20.0, 0.0, 0.0]),
                ])
                .combination(
                    Combination::new("1.35 G + 1.5 W + 0.75 S")
                        .plus(1.35, "own weight")
                        .plus(1.5, "wind")
                        .plus(0.75, "snow"),
                ),
            None,
        ),
        (
            "alternation",
            grid("M16", 2, 2, 70.0, 70.0)
                .title("A swing goes to and fro")
                .cases([
                    load("fore", [8.0, -2.0, 0.0], [0.0, 0.0, 0.0]),
                    load("back", [-6.0, -2.0, 0.0], [0.0, 0.0, 0.0]),
                ])
                .alternation(Alternation::new("fore", "back").cycles(1e5)),
            Some("fore <> back"),
        ),
        (
            "inch",
            Connection::builder(
                Joint::builder("3/4-10 UNC")
                    .product(ScrewProduct::StructuralBolt)
                    .grade("ASTM F3125 A325 type 1")
                    .nut(NutStyle::HeavyHex)
                    .washers(WasherStyle::F436)
                    .ply("cleat", "0.5 in")
                    .material("ASTM A36 steel")
                    .ply("web", "0.4 in")
                    .material("ASTM A992 steel")
                    .methods(JointMethods::aisc_lrfd(AiscEdition::E2010))
                    .load_factor(1.0),
            )
            .title("Cleat of a mezzanine beam")
            .rows_and_columns(4, 1, "3 in", "3 in")
            .plate("cleat", Outline::rectangle("4 in", "12 in").unwrap())
            .held(Side::Left)
            .plate("web", Outline::rectangle("8 in", "16 in").unwrap())
            .held(Side::Right)
            .in_plane(InPlane::Elastic)
            .case("reaction")
            .force("0 lbf", "-30000 lbf", "0 lbf")
            .at("2 in", "0 in", "0 in"),
            None,
        ),
        (
            "hostile",
            grid("M16", 2, 2, 60.0, 60.0).title(HOSTILE).cases([load(
                HOSTILE,
                [5.0, -6.0, 0.0],
                [80.0, 0.0, 0.0],
            )]),
            None,
        ),
        (
            "long_names",
            grid("M16", 2, 2, 60.0, 60.0)
                .title("A name that nobody can read in one breath ".repeat(6))
                .cases([load(
                    &"as it was copied from an order ".repeat(20),
                    [5.0, -6.0, 0.0],
                    [80.0, 0.0, 0.0],
                )]),
            None,
        ),
        (
            "m3",
            plain(
                grid("M3", 2, 2, 400.0, 900.0).title("Small bolts far apart"),
                down(0.4),
            ),
            None,
        ),
        (
            "uneven",
            Connection::builder(bolt("M10"))
                .title("Uneven places")
                .bolts(at(&[
                    (0.0, 0.0),
                    (13.0, 40.0),
                    (55.0, 7.0),
                    (90.0, 61.0),
                    (140.0, 20.0),
                    (31.0, -44.0),
                ]))
                .plate(
                    "plate",
                    polygon(&[(-30.0, -75.0), (170.0, -75.0), (170.0, 95.0), (-30.0, 95.0)]),
                )
                .in_plane(InPlane::Elastic)
                .cases([load("slant", [7.0, 9.0, 0.0], [150.0, 80.0, 0.0])]),
            None,
        ),
        (
            "many_parts",
            {
                let cases = (0..20).map(|n| {
                    let x = 9.0 * f64::from(n) - 90.0;
                    load(&format!("shelf {n}"), [0.0, -1.0, 0.0], [x, 10.0, 0.0])
                });
                let parts = (0..20).fold(Combination::new("all shelves"), |own, n| {
                    own.plus(1.5, format!("shelf {n}"))
                });
                grid("M16", 2, 3, 70.0, 80.0)
                    .title("Twenty loads at once")
                    .cases(cases)
                    .combination(parts)
            },
            None,
        ),
        (
            "huge_load",
            plain(
                grid("M16", 2, 2, 60.0, 60.0).title("A slip of the unit"),
                load("slip", [9e8, -9e8, 0.0], [50.0, 0.0, 0.0]),
            ),
            None,
        ),
    ];
    // A joint of six leaves, of which each has an outline.
    let leaves = (0..6).fold(Joint::builder("M16").load_factor(1.5), |joint, n| {
        joint
            .ply(format!("leaf {n}"), "5 mm")
            .material("S275 steel")
    });
    let leaves = Connection::builder(leaves)
        .title("Six leaves")
        .rows_and_columns(2, 2, "60 mm", "60 mm");
    let leaves = (0..6).fold(leaves, |own, n| {
        let side = mm(130.0 + 14.0 * f64::from(n));
        own.plate(format!("leaf {n}"), Outline::rectangle(side, side).unwrap())
    });
    all.push(("leaves", leaves.cases([down(30.0)]), None));
    all.into_iter()
        .map(|(name, own, case)| {
            let built = own.build().unwrap_or_else(|why| panic!("{name}: {why}"));
            (name, built, case)
        })
        .collect()
}

/// Numbers that are the same on every machine (splitmix64).
pub struct Numbers(pub u64);

impl Numbers {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    fn below(&mut self, most: u64) -> u64 {
        self.next() % most
    }

    fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }
}

/// Any connection; none if the numbers give one that is refused.
pub fn random(seed: u64) -> Option<Connection> {
    let own = &mut Numbers(seed);
    let thread = ["M5", "M12", "M16", "M24", "1/2-13 UNC"][own.below(5) as usize];
    let is_clamped = own.below(2) == 1;
    let joint = if is_clamped {
        clamped(thread)
    } else {
        bolt(thread)
    };
    let d = joint
        .clone()
        .build()
        .ok()?
        .bolt
        .thread
        .nominal_diameter()
        .value
        * 1e3;
    let pattern = match own.below(4) {
        0 => {
            let count = 3 + own.below(9) as usize;
            BoltPattern::circle(count, mm(d * count as f64 * own.between(0.9, 3.0)))
        }
        1 => {
            let count = 1 + own.below(9);
            let places = (0..count).map(|_| {
                let side = d * 12.0;
                GroupBolt::new(mm(own.between(-side, side)), mm(own.between(-side, side)))
            });
            BoltPattern::new(places.collect::<Vec<_>>())
        }
        _ => {
            let (rows, columns) = (1 + own.below(8) as usize, 1 + own.below(8) as usize);
            let (pitch, gauge) = (own.between(1.2, 6.0), own.between(1.2, 9.0));
            BoltPattern::rows_and_columns(rows, columns, mm(pitch * d), mm(gauge * d))
        }
    }
    .ok()?;
    let reach = pattern.bolts().iter().fold(0.0_f64, |most, own| {
        most.max(own.x.value.abs()).max(own.y.value.abs())
    }) * 1e3;
    let mut builder = Connection::builder(joint.clone())
        .title(format!("random {seed}"))
        .bolts(pattern)
        .in_plane(InPlane::Elastic);
    for name in ["plate", "support"] {
        let (a, b) = (own.between(1.0, 4.0), own.between(1.0, 4.0));
        builder = match own.below(4) {
            0 => builder,
            1 => builder.plate(name, Outline::round(mm(2.0 * (1.5 * reach + a * d))).ok()?),
            2 => {
                let (w, h) = (reach + a * d, reach + b * d);
                let cut = own.between(1.0, 1.6);
                let corners = [(-w, -h), (w * cut, -h), (w, h), (-w, h * cut)];
                builder
                    .plate(name, polygon(&corners))
                    .held(Side::Towards(degrees(own.between(0.0, 360.0))))
            }
            _ => {
                let side =
                    [Side::Left, Side::Right, Side::Top, Side::Bottom][own.below(4) as usize];
                let (w, h) = (2.0 * (reach + a * d), 2.0 * (reach + b * d));
                builder
                    .plate(name, Outline::rectangle(mm(w), mm(h)).ok()?)
                    .held(side)
            }
        };
    }
    let tilted = is_clamped && own.below(2) == 0;
    if tilted {
        builder = builder.out_of_plane(OutOfPlane::Clamped);
    }
    let far = [0.0, 1.0, 3.0, 20.0][own.below(4) as usize] * (reach + d);
    let count = 1 + own.below(3);
    let cases: Vec<LoadCase> = (0..count)
        .map(|n| {
            let size = d * d * [0.001, 0.02, 0.1, 3.0][own.below(4) as usize];
            let mut of = |is: bool| if is { own.between(-size, size) } else { 0.0 };
            let force = [of(true), of(true), of(tilted)];
            let moment = [of(tilted), of(tilted), of(true)].map(|own| newton_metres(own * d));
            let place = [own.between(-far, far), own.between(-far, far), 0.0];
            load(&format!("case {n}"), force, place).with_moment(moment)
        })
        .collect();
    builder.cases(cases).build().ok()
}
