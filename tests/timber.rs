//! Bolts in timber against print, against statics, and the laws every one keeps.

mod support;

use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode};
use shankline::strength::timber::{
    MemberMaterial, TimberConnection, TimberDistances, TimberMember, TimberMethod,
    TimberResistance, Wood,
};
use shankline::tables::timber::{Timber, TimberKind};
use shankline::units::{
    Density, degrees, kilograms_per_cubic_metre, pound_force, pound_force_per_square_inch,
};
use support::{Row, csv_rows, number};

const NDS: TimberMethod = TimberMethod::Nds {
    bending_yield: ksi(45.0),
    adjustment: 1.0,
};
const NO_GAP: Length = millimetres(0.0);
const EN: TimberMethod = TimberMethod::En1995 {
    axial: newtons(0.0),
    kmod: 0.8,
    gamma_m: 1.3,
};

/// A bolt of 400 MPa, and of as much bending yield strength as NDS takes here.
fn bolt() -> BoltStrength {
    bolt_of(megapascals(400.0))
}

fn bolt_of(strength: Stress) -> BoltStrength {
    BoltStrength::stated(millimetres(12.0), None, Some(strength), strength).unwrap()
}

fn member(row: &Row, of: &str, inch: bool) -> TimberMember {
    let cell = |name: &str| number(row, &format!("{of}_{name}"));
    let length: fn(f64) -> Length = if inch { inches } else { millimetres };
    let thickness = length(cell("thickness").unwrap());
    let value = cell("value").unwrap();
    if &*row[&format!("{of}_kind")] == "steel" {
        let stress: fn(f64) -> Stress = if inch { ksi } else { megapascals };
        let hole = length(number(row, "hole").unwrap());
        return TimberMember::steel(thickness, stress(value), hole);
    }
    let hard = &*row[&format!("{of}_kind")] == "hardwood";
    let wood = Wood {
        kind: if hard {
            TimberKind::Hardwood
        } else {
            TimberKind::Softwood
        },
        specific_gravity: inch.then_some(value),
        characteristic_density: (!inch).then_some(kilograms_per_cubic_metre(value)),
        grain_angle: degrees(cell("angle").unwrap()),
        provenance: None,
    };
    TimberMember {
        thickness,
        material: MemberMaterial::Wood(wood),
    }
}

/// Printed values, each to the rounding of its print.
#[test]
fn printed_cases() {
    let mut count = 0;
    for row in csv_rows("tests/data/timber_checks.csv") {
        let inch = &*row["method"] == "nds";
        let n = |column: &str| number(&row, column).unwrap();
        let joint = TimberConnection {
            diameter: if inch {
                inches(n("diameter"))
            } else {
                millimetres(n("diameter"))
            },
            main: member(&row, "main", inch),
            side: member(&row, "side", inch),
            far_side: (&*row["shear"] != "single").then(|| member(&row, "side", inch)),
            gap: NO_GAP,
        };
        let (method, bolt) = if inch {
            let bending_yield = ksi(n("bolt"));
            (
                TimberMethod::Nds {
                    bending_yield,
                    adjustment: 1.0,
                },
                bolt_of(bending_yield),
            )
        } else {
            (EN, bolt_of(megapascals(n("bolt"))))
        };
        let found = joint.resistance(&bolt, method).unwrap();
        found.derivation().check().unwrap();
        let mode = |name: &str| *found.modes().find(|mode| mode.name == name).unwrap();
        let force = match &*row["quantity"] {
            "load" => found.load,
            other => match other.strip_prefix("johansen_") {
                Some(name) => mode(name).johansen,
                None => mode(other).value,
            },
        };
        let value = match &*row["unit"] {
            "lbf" => force.get::<pound_force>(),
            unit => {
                assert_eq!(unit, "N");
                force.value
            }
        };
        let expected = n("expected");
        assert!(
            (value - expected).abs() <= n("tolerance"),
            "{}: {value} for {expected}",
            row["id"]
        );
        assert!(!row["source"].is_empty());
        count += 1;
    }
    assert!(count >= 10, "{count}");
}

/// Fe of A36 and of Douglas Fir-Larch as design notes print them.
#[test]
fn printed_bearing_strengths() {
    let larch = Timber::find("Douglas Fir-Larch").unwrap();
    let joint = TimberConnection {
        diameter: inches(0.75),
        main: TimberMember::wood(inches(5.5), larch, degrees(0.0)),
        side: TimberMember::steel(inches(0.25), ksi(58.0), inches(0.8125)),
        far_side: None,
        gap: NO_GAP,
    };
    let found = joint.resistance(&bolt(), NDS).unwrap();
    let psi = |stress: Stress| stress.get::<pound_force_per_square_inch>();
    assert!((psi(found.main_bearing) - 5600.0).abs() < 1e-6);
    assert!((psi(found.side_bearing) - 87000.0).abs() < 1e-6);
    assert!(((found.main_bearing / found.side_bearing).value - 0.06437).abs() < 5e-6);
}

/// The moment at the face of a member that takes the load z: of a bolt with a hinge in it, or one that
/// turns stiffly in a member of thickness l. By statics, with the bearing load q a length.
fn at_face(z: f64, q: f64, m: f64, l: f64, hinge: bool) -> f64 {
    if hinge {
        m - z * z / (2.0 * q)
    } else {
        0.25 * q * l * l - 0.5 * z * l - z * z / (4.0 * q)
    }
}

/// Every equation is statics: across the gap g the load turns by z g, which the moments at both faces bear.
/// So say the general dowel equations of Technical Report 12 too.
fn follows_from_statics(found: &TimberResistance, names: [&str; 4], factors: [f64; 4]) {
    let joint = &found.connection;
    let d = joint.diameter.value;
    let (qm, qs) = (found.main_bearing.value * d, found.side_bearing.value * d);
    let (lm, ls) = (joint.main.thickness.value, found.side.thickness.value);
    let m = found.yield_moment.value;
    // Whether the bolt has a hinge in the main and in the side member.
    let hinges = [(false, false), (false, true), (true, false), (true, true)];
    for ((name, factor), (in_main, in_side)) in names.iter().zip(factors).zip(hinges) {
        let Some(mode) = found.modes().find(|mode| mode.name == *name) else {
            continue;
        };
        let z = mode.johansen.value / factor;
        let main = at_face(z, qm, m, lm, in_main);
        let side = at_face(z, qs, m, ls, in_side);
        let scale = m + 0.25 * (qm * lm * lm + qs * ls * ls) + z * z / qm.min(qs);
        let off = main + side - z * joint.gap.value;
        assert!(off.abs() < 1e-10 * scale, "{name}: {off} of {scale}");
    }
}

fn wood(g: f64, rho: f64, angle: f64, hard: bool) -> MemberMaterial {
    MemberMaterial::Wood(Wood {
        kind: if hard {
            TimberKind::Hardwood
        } else {
            TimberKind::Softwood
        },
        specific_gravity: Some(g),
        characteristic_density: Some(kilograms_per_cubic_metre(rho)),
        grain_angle: degrees(angle),
        provenance: None,
    })
}

fn any_wood() -> impl Strategy<Value = TimberMember> {
    (
        10.0..300.0f64,
        0.31..0.73f64,
        250.0..1000.0f64,
        0.0..90.0f64,
        any::<bool>(),
    )
        .prop_map(|(t, g, rho, angle, hard)| TimberMember {
            thickness: millimetres(t),
            material: wood(g, rho, angle, hard),
        })
}

fn any_member() -> impl Strategy<Value = TimberMember> {
    let steel = (2.0..30.0f64, 300.0..700.0f64, 25.0..28.0f64).prop_map(|(t, fu, hole)| {
        TimberMember::steel(millimetres(t), megapascals(fu), millimetres(hole))
    });
    prop_oneof![3 => any_wood(), 1 => steel]
}

fn any_joint() -> impl Strategy<Value = TimberConnection> {
    (any_member(), any_wood(), 6.5..25.0f64, any::<[bool; 2]>()).prop_map(
        |(a, b, d, [double, swapped])| {
            let (main, side) = if swapped { (a, b) } else { (b, a) };
            TimberConnection {
                diameter: millimetres(d),
                main,
                side,
                far_side: double.then_some(side),
                gap: NO_GAP,
            }
        },
    )
}

fn load(joint: &TimberConnection, method: TimberMethod) -> f64 {
    joint.resistance(&bolt(), method).unwrap().load.value
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn equations_follow_from_statics(joint in any_joint(), gap in 0.001..30.0f64) {
        let nds = joint.resistance(&bolt(), NDS).unwrap();
        follows_from_statics(&nds, ["II", "IIIm", "IIIs", "IV"], [1.0; 4]);
        let apart = TimberConnection { gap: millimetres(gap), ..joint };
        let apart = apart.resistance(&bolt(), NDS).unwrap();
        follows_from_statics(&apart, ["II", "IIIm", "IIIs", "IV"], [1.0; 4]);
        apart.derivation().check().unwrap();
        prop_assert!(apart.load <= nds.load);
        let timber = |member: &TimberMember| matches!(member.material, MemberMaterial::Wood(_));
        if timber(&joint.main) && timber(&joint.side) {
            let en = joint.resistance(&bolt(), EN).unwrap();
            let factors = [1.0, 1.05, 1.05, 1.15];
            if joint.planes() == 1 {
                follows_from_statics(&en, ["c", "e", "d", "f"], factors);
            } else {
                follows_from_statics(&en, ["-", "-", "j", "k"], factors);
            }
        }
    }

    /// Workings give their numbers again, whatever the joint.
    #[test]
    fn workings_are_true(joint in any_joint(), axial in 0.0..40e3f64) {
        joint.resistance(&bolt(), NDS).unwrap().derivation().check().unwrap();
        let en = TimberMethod::En1995 { axial: newtons(axial), kmod: 0.9, gamma_m: 1.3 };
        let found = joint.resistance(&bolt_of(megapascals(800.0)), en).unwrap();
        found.derivation().check().unwrap();
        prop_assert!(found.modes().all(|mode| mode.value >= found.governing.value));
        prop_assert!(found.modes().all(|mode| mode.value <= (1.25 + 1e-9) * mode.johansen));
    }

    /// Two timbers in single shear may change places.
    #[test]
    fn members_of_single_shear_may_swap(a in any_wood(), b in any_wood(), d in 6.5..25.0f64) {
        let joint = TimberConnection {
            diameter: millimetres(d), main: a, side: b, far_side: None, gap: NO_GAP,
        };
        let swapped = TimberConnection { main: b, side: a, ..joint };
        for method in [NDS, EN] {
            prop_assert!((load(&joint, method) / load(&swapped, method) - 1.0).abs() < 1e-9);
        }
    }

    /// Denser timber, a thicker member, a stronger bolt, load nearer the grain: never weaker.
    #[test]
    fn more_is_never_less(joint in any_joint(), more in 1.0..1.25f64) {
        for method in [NDS, EN] {
            let base = load(&joint, method) * (1.0 - 1e-12);
            let mut thick = joint;
            thick.main.thickness = more * joint.main.thickness;
            prop_assert!(load(&thick, method) >= base);
            let mut dense = joint;
            if let MemberMaterial::Wood(wood) = &mut dense.main.material {
                wood.specific_gravity = wood.specific_gravity.map(|g| (more * g).min(0.73));
                wood.characteristic_density = wood.characteristic_density.map(|rho| {
                    Density::min(more * rho, kilograms_per_cubic_metre(1000.0))
                });
                prop_assert!(load(&dense, method) >= base);
            }
            let mut along = joint;
            for member in [&mut along.main, &mut along.side].into_iter().chain(&mut along.far_side) {
                if let MemberMaterial::Wood(wood) = &mut member.material {
                    wood.grain_angle = degrees(0.0);
                }
            }
            // Hardwood is stronger across than along by EN up to 6.7 mm (k90 below 1).
            if joint.diameter > millimetres(6.7) {
                prop_assert!(load(&along, method) >= base);
            }
        }
        let strong = TimberMethod::Nds { bending_yield: more * ksi(45.0), adjustment: 1.0 };
        prop_assert!(load(&joint, strong) >= load(&joint, NDS) * (1.0 - 1e-12));
        let pulled = TimberMethod::En1995 { axial: newtons(4e3), kmod: 0.8, gamma_m: 1.3 };
        prop_assert!(load(&joint, pulled) >= load(&joint, EN));
    }

    /// No number breaks it, and none gets through that is no number.
    #[test]
    fn no_number_breaks_it(numbers in proptest::array::uniform8(any::<f64>()), double: bool) {
        let [d, t1, t2, g, rho, angle, fu, axial] = numbers;
        let joint = TimberConnection {
            diameter: Length::new::<shankline::uom::si::length::meter>(d.abs() % 0.02 + 0.007),
            main: TimberMember { thickness: millimetres(t1), material: wood(g, rho, angle, false) },
            side: TimberMember { thickness: millimetres(t2), material: wood(0.5, 350.0, 0.0, true) },
            far_side: double.then(|| TimberMember { thickness: millimetres(t1), material: wood(g, rho, 0.0, true) }),
            gap: NO_GAP,
        };
        let kind = TimberMethod::En1995 { axial: newtons(axial), kmod: 0.8, gamma_m: 1.3 };
        let bend = TimberMethod::Nds { bending_yield: megapascals(fu), adjustment: 0.9 };
        for method in [kind, bend] {
            let Ok(bolt) = BoltStrength::stated(joint.diameter, None, None, megapascals(fu)) else { continue };
            if let Ok(found) = joint.resistance(&bolt, method) {
                prop_assert!(found.load.value > 0.0 && found.load.value.is_finite());
                prop_assert!(found.modes().all(|mode| mode.value.value.is_finite()));
            }
            let own = TimberDistances { end: Some(millimetres(t2)), ..TimberDistances::default() };
            let slender = joint.main.thickness / millimetres(d);
            prop_assert!(own.judged(&joint.main, millimetres(d), slender, method).is_err() || d > 5.9);
        }
    }
}

/// A gravity or density that nobody read warns where it is used; once, if both members have it.
#[test]
fn recalled_timbers_warn() {
    let count = |main: &str, side: &str, method| {
        let of =
            |name| TimberMember::wood(millimetres(60.0), Timber::find(name).unwrap(), degrees(0.0));
        let joint = TimberConnection {
            diameter: millimetres(12.0),
            main: of(main),
            side: of(side),
            far_side: Some(of(side)),
            gap: NO_GAP,
        };
        let found = joint.resistance(&bolt(), method).unwrap();
        let check = found.check(newtons(1.0), found_level(method)).unwrap();
        assert_eq!(check.cautions, found.cautions());
        found.cautions().iter().count()
    };
    assert_eq!(count("Hem-Fir", "Southern Pine", NDS), 0);
    assert_eq!(count("Red Oak", "Southern Pine", NDS), 0);
    let redwood = "Redwood, close grain";
    assert_eq!(count(redwood, "Southern Pine", NDS), 1);
    assert_eq!(count(redwood, redwood, NDS), 1);
    assert_eq!(count("C24", "D30", EN), 0);
}

fn found_level(method: TimberMethod) -> Level {
    match method {
        TimberMethod::En1995 { .. } => Level::Design,
        _ => Level::Allowable,
    }
}

/// Whole multiples of the diameter are not short by the last digit of a product.
#[test]
fn distances_at_the_limit_are_not_short() {
    let c24 = Timber::find("C24").unwrap();
    let judged = |own: TimberDistances, d: f64, angle: f64| {
        let member = TimberMember::wood(millimetres(90.0), c24, degrees(angle));
        let slender = member.thickness / millimetres(d);
        own.judged(&member, millimetres(d), slender, EN).unwrap()
    };
    for d in 12..=30 {
        let d = f64::from(d);
        let at = |times: f64, less: f64| Some(millimetres(times * d - less));
        let own = |less: f64| TimberDistances {
            end: at(7.0, less),
            edge: at(3.0, less),
            pitch: at(5.0, less),
            gauge: at(4.0, less),
            ..TimberDistances::default()
        };
        let short = |less| judged(own(less), d, 0.0).faults().count();
        assert_eq!([short(0.0), short(0.001)], [0, 4], "{d}");
    }
    // Small bolts across the grain keep 80 mm from the end too: Table 8.4 has a3,t from -90 to 90 deg.
    for angle in [45.0, 90.0] {
        let found = judged(TimberDistances::default(), 8.0, angle);
        assert_eq!(found.rules[1].least, Some(millimetres(80.0)), "{angle}");
    }
}

#[test]
fn plates_between_thin_and_thick_are_interpolated() {
    let c24 = Timber::find("C24").unwrap();
    let at = |thickness: f64, hole: f64| {
        let plate = TimberMember::steel(
            millimetres(thickness),
            megapascals(360.0),
            millimetres(hole),
        );
        let joint = TimberConnection {
            diameter: millimetres(16.0),
            main: TimberMember::wood(millimetres(120.0), c24, degrees(0.0)),
            side: plate,
            far_side: Some(plate),
            gap: NO_GAP,
        };
        load(&joint, EN)
    };
    let (thin, thick) = (at(8.0, 17.0), at(16.0, 17.0));
    assert!(thick > thin);
    assert!((at(12.0, 17.0) - 0.5 * (thin + thick)).abs() < 1e-6);
    // A hole 0.1 d wider, or more: the bolt turns in it, as in a thin plate.
    assert!((at(16.0, 18.0) - thin).abs() < 1e-6);
}

#[test]
fn what_a_method_lacks_is_refused() {
    let (larch, c24) = (
        Timber::find("Douglas Fir-Larch").unwrap(),
        Timber::find("C24").unwrap(),
    );
    let joint = |timber, d: Length| TimberConnection {
        diameter: d,
        main: TimberMember::wood(millimetres(100.0), timber, degrees(0.0)),
        side: TimberMember::wood(millimetres(50.0), timber, degrees(0.0)),
        far_side: Some(TimberMember::wood(millimetres(50.0), timber, degrees(0.0))),
        gap: NO_GAP,
    };
    let message = |joint: &TimberConnection, method| joint.resistance(&bolt(), method).unwrap_err();
    let no_gravity = message(&joint(c24, millimetres(12.0)), NDS);
    assert!(
        matches!(no_gravity, shankline::Error::NoValue { .. }),
        "{no_gravity}"
    );
    let no_density = message(&joint(larch, millimetres(12.0)), EN);
    assert!(
        no_density.to_string().contains("characteristic density"),
        "{no_density}"
    );
    assert!(
        message(&joint(larch, millimetres(30.0)), NDS)
            .to_string()
            .contains("bolt diameter")
    );
    let found = joint(larch, millimetres(12.0)).resistance(&bolt(), NDS);
    let check = found
        .unwrap()
        .check(newtons(1e3), Level::Allowable)
        .unwrap();
    assert_eq!(check.mode, Mode::TimberYield);
    assert!(found_is_allowable_only(&joint(larch, millimetres(12.0))));
    let mut apart = joint(c24, millimetres(12.0));
    apart.gap = millimetres(5.0);
    assert!(message(&apart, EN).to_string().contains("no gap"));
    apart.gap = millimetres(-5.0);
    assert!(message(&apart, EN).to_string().contains("gap between"));
    let plate = TimberMember::steel(millimetres(5.0), megapascals(360.0), millimetres(13.0));
    let mut steel = joint(larch, millimetres(12.0));
    (steel.main, steel.side, steel.far_side) = (plate, plate, Some(plate));
    assert!(message(&steel, NDS).to_string().contains("timber"));
}

fn found_is_allowable_only(joint: &TimberConnection) -> bool {
    let found = joint.resistance(&bolt(), NDS).unwrap();
    found.resistance.at(Level::Design).is_err() && found.resistance.at(Level::Nominal).is_err()
}

/// Methods and joints of timber go through JSON; the result keeps what it was asked.
#[cfg(feature = "serde")]
#[test]
fn json_in_and_out() {
    let text = r#"{"en_1995_1_1":{"axial":"5 kN","kmod":0.8,"gamma_m":1.3}}"#;
    let method: TimberMethod = serde_json::from_str(text).unwrap();
    let again = serde_json::to_string(&method).unwrap();
    assert_eq!(
        serde_json::from_str::<TimberMethod>(&again).unwrap(),
        method
    );
    assert!(serde_json::from_str::<TimberMethod>(r#"{"nds":{"adjustment":1.0}}"#).is_err());
    let c24 = Timber::find("C24").unwrap();
    let joint = TimberConnection {
        diameter: millimetres(12.0),
        main: TimberMember::wood(millimetres(90.0), c24, degrees(90.0)),
        side: TimberMember::wood(millimetres(45.0), c24, degrees(0.0)),
        far_side: Some(TimberMember::wood(millimetres(45.0), c24, degrees(0.0))),
        gap: NO_GAP,
    };
    let found = joint.resistance(&bolt(), method).unwrap();
    let json = serde_json::to_value(&found).unwrap();
    assert_eq!(json["governing"]["name"], found.governing.name);
    let density = &json["connection"]["main"]["material"]["wood"]["characteristic_density"];
    assert_eq!(density["unit"], "kg/m3");
}
