//! Rules of the steel codes about plates and groups, each against values that someone printed.

mod support;

use proptest::prelude::*;
use shankline::error::Amount;
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode, Resistance};
use shankline::strength::group::{FastenerResistance, en_1993_fastener_group};
use shankline::strength::interaction::AiscStresses;
use shankline::strength::pin::{PinPlate, PlateCorners, aisc_360_pin_plate};
use shankline::strength::ply::{PlateShear, PlateShearMethod, plate_shear};
use shankline::tension::{EnTStub, TStubBolts};
use shankline::units::{kip, kip_per_square_inch};
use shankline::uom::si::{
    force::kilonewton,
    length::{inch, millimeter},
};
use std::collections::BTreeMap;
use support::{Row, csv_rows, number};

/// Inputs of one row: `name=value` pairs, the unit at the end of the name.
struct Inputs<'a>(&'a str);

impl Inputs<'_> {
    fn text(&self, name: &str) -> Option<&str> {
        self.0
            .split(';')
            .find_map(|pair| pair.strip_prefix(name)?.strip_prefix('='))
    }
    fn maybe(&self, name: &str) -> Option<f64> {
        self.text(name).map(|value| value.parse().unwrap())
    }
    /// How many; none where the row does not say.
    fn count(&self, name: &str) -> usize {
        self.text(name).map_or(0, |value| value.parse().unwrap())
    }
    fn number(&self, name: &str) -> f64 {
        self.maybe(name)
            .unwrap_or_else(|| panic!("no {name} in {}", self.0))
    }
    fn inches(&self, name: &str) -> Length {
        inches(self.number(name))
    }
    fn ksi(&self, name: &str) -> Stress {
        ksi(self.number(name))
    }
}

fn level(row: &Row) -> Level {
    row["level"].parse().unwrap()
}

fn in_unit(row: &Row, load: Force) -> f64 {
    match &*row["unit"] {
        "kip" => load.get::<kip>(),
        "kN" => load.get::<kilonewton>(),
        other => panic!("{other}"),
    }
}

fn of(row: &Row, resistance: &Resistance) -> f64 {
    in_unit(row, resistance.at(level(row)).unwrap())
}

fn pin_plate(row: &Row) -> f64 {
    let inputs = Inputs(&row["inputs"]);
    let plate = PinPlate {
        thickness: inputs.inches("t_in"),
        width: inputs.inches("w_in"),
        pin: inputs.inches("d_in"),
        hole: inputs.inches("dh_in"),
        end: inputs.inches("a_in"),
        corners: inputs
            .maybe("c_in")
            .map_or(PlateCorners::Full, |c| PlateCorners::Cut {
                beyond: inches(c),
            }),
        turns_under_load: false,
        yield_strength: inputs.ksi("fy_ksi"),
        tensile_strength: inputs.ksi("fu_ksi"),
    };
    let found = aisc_360_pin_plate(&plate).unwrap();
    found.derivation().check().unwrap();
    match &*row["quantity"] {
        "effective_width" => found.effective_width.get::<inch>(),
        "rupture" => of(row, &found.rupture),
        "shear" => of(row, &found.shear),
        "bearing" => of(row, &found.bearing),
        "gross" => of(row, &found.gross),
        wanted => {
            let checks = found.checks(newtons(0.0), Level::Design).unwrap();
            let mut dimensions = checks
                .iter()
                .filter(|check| check.mode == Mode::Distances)
                .map(|check| match check.demand {
                    Amount::Length(length) => length.get::<inch>(),
                    other => panic!("{other}"),
                });
            let (end, width) = (dimensions.next().unwrap(), dimensions.next().unwrap());
            match wanted {
                "least_end" => end,
                "least_width" => width,
                other => panic!("{other}"),
            }
        }
    }
}

fn fastener_group(row: &Row) -> f64 {
    let inputs = Inputs(&row["inputs"]);
    let kilonewtons = |name| newtons(1000.0 * inputs.number(name));
    let mut group = Vec::new();
    for (bearing, number) in [("bearing_kN", "bearings"), ("inner_kN", "inners")] {
        for _ in 0..inputs.count(number) {
            group.push(FastenerResistance {
                shear: kilonewtons("shear_kN"),
                bearing: kilonewtons(bearing),
            });
        }
    }
    let found = en_1993_fastener_group(&group).unwrap();
    found.derivation().check().unwrap();
    in_unit(
        row,
        inputs.maybe("factor").unwrap_or(1.0) * found.resistance,
    )
}

fn t_stub(row: &Row) -> f64 {
    let inputs = Inputs(&row["inputs"]);
    let mm = |name| millimetres(inputs.number(name));
    let bolts = newtons(1000.0 * inputs.number("bolts_kN"));
    let fy = megapascals(inputs.number("fy_MPa"));
    let mut stub = EnTStub::new(mm("m_mm"), mm("n_mm"), bolts)
        .unwrap()
        .plate(
            mm("l1_mm"),
            mm("l2_mm"),
            mm("t_mm"),
            fy,
            inputs.number("gM"),
        )
        .unwrap();
    stub.n = mm("n_mm");
    if inputs.maybe("washer_mm").is_some() {
        stub = stub.with_washer(mm("washer_mm")).unwrap();
    }
    if inputs.maybe("Lb_mm").is_some() {
        let bolts = TStubBolts {
            elongation: mm("Lb_mm"),
            stress_area: square_millimetres(inputs.number("As_mm2")),
            rows: inputs.count("rows"),
        };
        stub = stub.with_bolts(bolts).unwrap();
    }
    let found = stub.resistance().unwrap();
    found.derivation().check().unwrap();
    match &*row["quantity"] {
        "mode_1" => in_unit(row, found.mode_1),
        "mode_2" => in_unit(row, found.mode_2),
        "mode_3" => in_unit(row, found.mode_3),
        "limit" => found.limit.unwrap().get::<millimeter>(),
        _ => in_unit(row, found.resistance),
    }
}

fn modified_stress(row: &Row) -> f64 {
    let inputs = Inputs(&row["inputs"]);
    let bolt = AiscStresses {
        tension: inputs.ksi("fnt_ksi"),
        shear: inputs.ksi("fnv_ksi"),
    };
    let edition = match inputs.number("edition") {
        2005.0 => AiscEdition::E2005,
        2022.0 => AiscEdition::E2022,
        other => panic!("{other}"),
    };
    let found = bolt
        .modified_tension(inputs.ksi("frv_ksi"), level(row), edition)
        .unwrap();
    found.derivation().check().unwrap();
    match inputs.maybe("area_in2") {
        Some(area) => in_unit(row, found.load(square_inches(area)).unwrap()),
        None => found.modified.get::<kip_per_square_inch>(),
    }
}

fn plate_in_shear(row: &Row) -> f64 {
    let inputs = Inputs(&row["inputs"]);
    let european = inputs.maybe("bent");
    let (plate, method) = if let Some(bent) = european {
        let plate = PlateShear {
            yield_strength: megapascals(inputs.number("fy_MPa")),
            tensile_strength: megapascals(inputs.number("fu_MPa")),
            gross: square_millimetres(inputs.number("gross_mm2")),
            net: square_millimetres(inputs.number("net_mm2")),
        };
        (plate, PlateShearMethod::En1993 { bent: bent > 0.0 })
    } else {
        let plate = PlateShear {
            yield_strength: inputs.ksi("fy_ksi"),
            tensile_strength: inputs.ksi("fu_ksi"),
            gross: square_inches(inputs.number("gross_in2")),
            net: square_inches(inputs.number("net_in2")),
        };
        (plate, PlateShearMethod::Aisc360)
    };
    let found = plate_shear(&plate, method).unwrap();
    found.derivation().check().unwrap();
    match &*row["quantity"] {
        "yielding" => of(row, &found.yielding),
        _ => of(row, &found.rupture),
    }
}

#[test]
fn printed_values() {
    let mut counts = BTreeMap::new();
    for row in csv_rows("tests/data/structural_rules.csv") {
        let found = match &*row["rule"] {
            "aisc_360_d5" => pin_plate(&row),
            "en_1993_3_7" => fastener_group(&row),
            "en_t_stub" => t_stub(&row),
            "plate_shear" => plate_in_shear(&row),
            "aisc_360_j3_7" => modified_stress(&row),
            other => panic!("{other}"),
        };
        let expected = number(&row, "expected").unwrap();
        let tolerance = number(&row, "tolerance").unwrap();
        // The billionth is of a value that lies midway between two that could be printed.
        assert!(
            (found - expected).abs() <= tolerance + 1e-9,
            "{}: {found} and {expected}",
            row["id"]
        );
        *counts.entry(row["rule"].clone()).or_insert(0) += 1;
    }
    let counts: Vec<_> = counts.iter().map(|(rule, n)| (&**rule, *n)).collect();
    assert_eq!(
        counts,
        [
            ("aisc_360_d5", 13),
            ("aisc_360_j3_7", 13),
            ("en_1993_3_7", 4),
            ("en_t_stub", 6),
            ("plate_shear", 12)
        ]
    );
}

fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        1 => any::<f64>(),
        40 => 1e-3..1e3f64,
        1 => Just(0.0),
        1 => Just(f64::MAX),
        1 => Just(f64::MIN_POSITIVE)
    ]
}

proptest! {
    /// No number makes anything panic, or gives a resistance that is not finite and positive.
    #[test]
    fn extremes(x in prop::collection::vec(any_number(), 7), flag: bool, rows in 0..1100_usize) {
        let sound = |resistance: &Resistance| {
            [resistance.nominal, resistance.design, resistance.allowable]
                .into_iter()
                .flatten()
                .all(|load| load.value > 0.0 && load.is_finite())
        };
        let beyond = millimetres(x[5]);
        let plate = PinPlate {
            thickness: millimetres(x[0]),
            width: millimetres(x[1]),
            pin: millimetres(x[2]),
            hole: millimetres(x[3]),
            end: millimetres(x[4]),
            corners: if flag { PlateCorners::Full } else { PlateCorners::Cut { beyond } },
            turns_under_load: flag,
            yield_strength: megapascals(x[5]),
            tensile_strength: megapascals(x[6]),
        };
        if let Ok(found) = aisc_360_pin_plate(&plate) {
            for resistance in [found.rupture, found.shear, found.bearing, found.gross] {
                prop_assert!(sound(&resistance));
            }
            if let Ok(check) = found.governing(newtons(x[0]), Level::Design) {
                prop_assert!(check.utilisation.is_finite());
            }
            let _ = found.derivation().check();
        }
        let plate = PlateShear {
            yield_strength: megapascals(x[0]),
            tensile_strength: megapascals(x[1]),
            gross: square_millimetres(x[2]),
            net: square_millimetres(x[3]),
        };
        for method in [PlateShearMethod::Aisc360, PlateShearMethod::En1993 { bent: flag }] {
            if let Ok(found) = plate_shear(&plate, method) {
                prop_assert!(sound(&found.yielding) && sound(&found.rupture));
                let _ = found.derivation().check();
            }
        }
        let group: Vec<_> = x
            .windows(2)
            .map(|pair| FastenerResistance { shear: newtons(pair[0]), bearing: newtons(pair[1]) })
            .collect();
        for n in 0..group.len() {
            if let Ok(found) = en_1993_fastener_group(&group[..n]) {
                prop_assert!(found.resistance.value > 0.0 && found.resistance.is_finite());
            }
        }
        let bolts = TStubBolts {
            elongation: millimetres(x[0]),
            stress_area: square_millimetres(x[1]),
            rows,
        };
        let found = EnTStub::new(millimetres(x[3]), millimetres(x[4]), newtons(x[5]))
            .and_then(|stub| {
                let length = millimetres(x[6]);
                stub.plate(length, length, millimetres(x[0]), megapascals(x[1]), 1.0)
            })
            .and_then(|stub| stub.with_bolts(bolts))
            .and_then(|stub| stub.resistance());
        if let Ok(found) = found {
            prop_assert!(found.resistance.value > 0.0 && found.resistance.is_finite());
            prop_assert!(found.prying.is_some() && found.limit.is_some());
        }
        let bolt = AiscStresses { tension: megapascals(x[0]), shear: megapascals(x[1]) };
        for level in [Level::Design, Level::Allowable] {
            if let Ok(found) = bolt.modified_tension(megapascals(x[2]), level, AiscEdition::E2016) {
                prop_assert!(found.modified.value > 0.0 && found.modified <= bolt.tension);
            }
            if let Ok(found) = bolt.modified_shear(megapascals(x[2]), level, AiscEdition::E2016) {
                prop_assert!(found.modified.value > 0.0 && found.modified <= bolt.shear);
            }
        }
    }
}
