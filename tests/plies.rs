//! Plies against print, and the laws every ply keeps.

mod support;

use approx::{assert_abs_diff_eq, assert_relative_eq};
use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode};
use shankline::strength::ply::{
    BlockMethod, BlockShear, DistanceConditions, DistanceFinding, DistanceKind, DistanceRule,
    DistanceStanding, EdgeFinish, Exposure, Hole, HoleClass, HoleKind, HoleRule, Ply, PlyBolt,
    PlyMethod, PlyNeed, PlyOutcome, PlyResistance, Slot, SlotDirection, block_shear,
    shared_resistance,
};
use shankline::tables::plies::PlyMaterial;
use shankline::units::kip;
use shankline::uom::si::force::kilonewton;
use support::{csv_rows, number};

fn one(ply: &Ply, d: Length, bolt: PlyBolt, method: PlyMethod, mode: Mode) -> PlyResistance {
    *ply.in_mode(mode, d, bolt, method).unwrap().found().unwrap()
}

fn bolt_of(tensile: f64) -> PlyBolt {
    PlyBolt {
        yield_strength: Some(megapascals(0.8 * tensile)),
        tensile_strength: Some(megapascals(tensile)),
    }
}

#[test]
fn printed_cases() {
    let mut count = 0;
    for row in csv_rows("tests/data/ply_checks.csv") {
        let inch = row["unit_length"] == "in";
        let length = |column: &str| {
            let unit: fn(f64) -> Length = if inch { inches } else { millimetres };
            number(&row, column).map(unit)
        };
        let stress = |column: &str| {
            let unit: fn(f64) -> Stress = if inch { ksi } else { megapascals };
            number(&row, column).map(unit)
        };
        let ply = Ply {
            thickness: length("thickness").unwrap(),
            hole: length("hole").unwrap(),
            hole_kind: HoleKind::Standard,
            slot_length: None,
            yield_strength: stress("yield"),
            tensile_strength: stress("tensile"),
            bearing_strength: Some(ksi(100.0)),
            bearing_yield: None,
            end_distance: length("end"),
            edge_distance: length("edge"),
            pitch: length("pitch"),
            gauge: length("gauge"),
            width: length("width"),
        };
        let factor = number(&row, "factor").unwrap_or(1.0);
        let (method, level) = match &*row["method"] {
            "machine_design" => (
                PlyMethod::MachineDesign {
                    design_factor: factor,
                },
                Level::Allowable,
            ),
            "aisc_360" => (
                PlyMethod::Aisc360 {
                    edition: AiscEdition::E2010,
                    deformation_matters: true,
                },
                Level::Design,
            ),
            "en_1993_1_8" => (PlyMethod::En1993, Level::Design),
            "bs_5950" => (PlyMethod::Bs5950, Level::Design),
            "is_800" => (PlyMethod::Is800, Level::Design),
            "as_4100" => (PlyMethod::As4100, Level::Design),
            "csa_s16" => (PlyMethod::CsaS16, Level::Design),
            _ => (
                PlyMethod::MilHdbk5 {
                    ultimate_factor: factor,
                    fitting_factor: 1.0,
                },
                Level::Allowable,
            ),
        };
        let mode = match &*row["quantity"] {
            "bearing" => Mode::Bearing,
            "bolt_bearing" => Mode::BoltBearing,
            "tear_out" => Mode::TearOut,
            "gross_section" => Mode::GrossSection,
            _ => Mode::NetSection,
        };
        let bolt = PlyBolt {
            yield_strength: stress("bolt_yield"),
            tensile_strength: stress("bolt_tensile"),
        };
        let found = one(&ply, length("diameter").unwrap(), bolt, method, mode);
        found.derivation().check().unwrap();
        let load = found.resistance.at(level).unwrap() * number(&row, "times").unwrap();
        let load = match &*row["expected_unit"] {
            "kip" => load.get::<kip>(),
            "lbf" => 1000.0 * load.get::<kip>(),
            _ => load.get::<kilonewton>(),
        };
        let (expected, tolerance) = (
            number(&row, "expected").unwrap(),
            number(&row, "tolerance").unwrap(),
        );
        assert!(
            (load - expected).abs() <= tolerance,
            "{}: {load} and {expected}",
            row["id"]
        );
        count += 1;
    }
    assert_eq!(count, 38);
}

/// Chen, Structural Engineering Handbook, chapter 4: C8x11.5 web, A36: 88.8 kip. Steel Buildings in
/// Europe, part 5: fin plate, Ant 770 and Anv 2210 mm2: 483 kN.
#[test]
fn printed_blocks() {
    let web = BlockShear {
        yield_strength: ksi(36.0),
        tensile_strength: ksi(58.0),
        gross_shear: square_inches(3.3),
        net_shear: square_inches(2.72),
        gross_tension: square_inches(0.66),
        net_tension: square_inches(0.41),
    };
    let old = block_shear(&web, BlockMethod::AiscLrfd1999).unwrap();
    assert!((old.resistance.at(Level::Design).unwrap().get::<kip>() - 88.8).abs() < 0.1);
    assert!((old.shear.get::<kip>() - 94.7).abs() < 0.1);
    let fin = BlockShear {
        yield_strength: megapascals(275.0),
        tensile_strength: megapascals(430.0),
        gross_shear: square_millimetres(3200.0),
        net_shear: square_millimetres(2210.0),
        gross_tension: square_millimetres(1100.0),
        net_tension: square_millimetres(770.0),
    };
    let eccentric = block_shear(&fin, BlockMethod::En1993 { eccentric: true }).unwrap();
    let design = eccentric
        .resistance
        .at(Level::Design)
        .unwrap()
        .get::<kilonewton>();
    assert!((design - 483.0).abs() < 0.8);
    for method in every_block_method() {
        let block = block_shear(&fin, method).unwrap();
        block.derivation().check().unwrap();
    }
}

fn every_block_method() -> Vec<BlockMethod> {
    let mut all = vec![
        BlockMethod::AiscLrfd1999,
        BlockMethod::Bs5950,
        BlockMethod::Is800,
    ];
    for is_even in [false, true] {
        let uniform_tension = is_even;
        all.extend([
            BlockMethod::Aisc360 { uniform_tension },
            BlockMethod::En1993 {
                eccentric: !is_even,
            },
            BlockMethod::As4100 { uniform_tension },
            BlockMethod::CsaS16 { uniform_tension },
        ]);
    }
    all
}

/// Fin plate of the Steel Designers' Manual, 6th ed. (BS 5950-1, S275, 10 mm): Lv 280, Lt 50, one hole of 22, Ke 1.2:
/// 539.2 kN. A tee of 350W steel in a university course (CSA S16-09 13.11, four M20 in punched holes): two of its blocks with
/// Ut 1, 2059 and 2138 kN. Areas as printed there.
#[test]
fn printed_blocks_of_other_codes() {
    let block = |[fy, fu, agv, anv, agt, ant]: [f64; 6]| BlockShear {
        yield_strength: megapascals(fy),
        tensile_strength: megapascals(fu),
        gross_shear: square_millimetres(agv),
        net_shear: square_millimetres(anv),
        gross_tension: square_millimetres(agt),
        net_tension: square_millimetres(ant),
    };
    let even = BlockMethod::CsaS16 {
        uniform_tension: true,
    };
    for (areas, method, printed, rounding) in [
        (
            [275.0, 410.0, 2800.0, 2030.0, 500.0, 390.0],
            BlockMethod::Bs5950,
            539.2,
            0.1,
        ),
        (
            [350.0, 450.0, 1522.5, 1174.5, 6421.0, 5288.2],
            even,
            2059.0,
            0.5,
        ),
        (
            [350.0, 450.0, 6478.5, 4995.0, 3447.4, 2881.0],
            even,
            2138.0,
            0.5,
        ),
        // By hand, of formulas that were recalled: 250 x 2400 / (sqrt 3 x 1.1) + 0.9 x 410 x 390 / 1.25 against
        // 0.9 x 410 x 1700 / (sqrt 3 x 1.25) + 250 x 500 / 1.1, of which either can be the lesser.
        (
            [250.0, 410.0, 2400.0, 1700.0, 500.0, 390.0],
            BlockMethod::Is800,
            403.374,
            0.001,
        ),
        (
            [250.0, 410.0, 2400.0, 2000.0, 500.0, 390.0],
            BlockMethod::Is800,
            430.046,
            0.001,
        ),
        // 0.75 (0.6 x 400 x 1700 + 0.5 x 400 x 390): the net section breaks before the gross one yields.
        (
            [300.0, 400.0, 2400.0, 1700.0, 500.0, 390.0],
            BlockMethod::As4100 {
                uniform_tension: false,
            },
            364.5,
            1e-9,
        ),
    ] {
        let found = block_shear(&block(areas), method).unwrap();
        let design = found
            .resistance
            .at(Level::Design)
            .unwrap()
            .get::<kilonewton>();
        assert_abs_diff_eq!(design, printed, epsilon = rounding);
    }
    // S355 and a steel with little between yield and tensile strength: Ke 1.1, and py at most Us / 1.2 with Ke 1.
    for (fy, fu, py, ke) in [(355.0, 490.0, 355.0, 1.1), (450.0, 500.0, 500.0 / 1.2, 1.0)] {
        let found = block_shear(
            &block([fy, fu, 2800.0, 2030.0, 500.0, 390.0]),
            BlockMethod::Bs5950,
        );
        let design = found.unwrap().resistance.at(Level::Design).unwrap();
        let hand = 0.6 * py * (2800.0 + ke * 390.0) / 1e3;
        assert_relative_eq!(design.get::<kilonewton>(), hand, max_relative = 1e-12);
    }
}

/// Larger-term rule of 1999 by hand, with its upper limit 0.6 Fu Anv + Fu Ant, for both branches.
#[test]
fn larger_term_is_limited_by_rupture() {
    for (agv, anv, agt, ant) in [
        (3.0, 2.0, 1.5, 1.0),
        (3.0, 2.0, 2.5, 2.0),
        (2.1, 2.0, 2.5, 2.0),
    ] {
        let (fy, fu): (f64, f64) = (50.0, 65.0);
        let block = BlockShear {
            yield_strength: ksi(fy),
            tensile_strength: ksi(fu),
            gross_shear: square_inches(agv),
            net_shear: square_inches(anv),
            gross_tension: square_inches(agt),
            net_tension: square_inches(ant),
        };
        let larger: f64 = if fu * ant >= 0.6 * fu * anv {
            0.6 * fy * agv + fu * ant
        } else {
            0.6 * fu * anv + fy * agt
        };
        let limit = 0.6 * fu * anv + fu * ant;
        let found = block_shear(&block, BlockMethod::AiscLrfd1999).unwrap();
        let nominal = found.resistance.at(Level::Nominal).unwrap().get::<kip>();
        assert!((nominal / larger.min(limit) - 1.0).abs() < 1e-12);
        assert_eq!(found.cautions().iter().count(), usize::from(limit < larger));
        found.derivation().check().unwrap();
    }
}

/// fub / fu is one of the limits of EN's coefficient: a 4.6 bolt in S355 is softer than the plate. Without
/// fub there is no bearing resistance, not one that leaves the limit out.
#[test]
fn en_bearing_asks_for_the_bolt() {
    let s355 = Ply {
        tensile_strength: Some(megapascals(470.0)),
        ..plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0)
    };
    let d = millimetres(20.0);
    let without = s355.in_mode(Mode::Bearing, d, PlyBolt::default(), PlyMethod::En1993);
    assert_eq!(
        without.unwrap(),
        PlyOutcome::Missing(vec![PlyNeed::BoltTensileStrength])
    );
    let bearing = one(&s355, d, bolt_of(400.0), PlyMethod::En1993, Mode::Bearing);
    // 2.5 x 400/470 x 470 x 20 x 10 N
    assert!((bearing.resistance.nominal.unwrap().value / 200e3 - 1.0).abs() < 1e-12);
}

/// Nothing of AISC 360 J3 and D2 is recalled, in no edition.
#[test]
fn read_numbers_of_plies_have_no_caution() {
    let told = |edition, hole_kind, mode| {
        let ply = Ply {
            hole_kind,
            ..plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0)
        };
        let method = PlyMethod::Aisc360 {
            edition,
            deformation_matters: true,
        };
        let found = one(&ply, millimetres(20.0), PlyBolt::default(), method, mode);
        found.cautions().iter().count()
    };
    for mode in [Mode::Bearing, Mode::TearOut, Mode::NetSection] {
        for edition in [AiscEdition::E2010, AiscEdition::E2016, AiscEdition::E2022] {
            assert_eq!(told(edition, HoleKind::Standard, mode), 0, "{edition:?}");
        }
    }
    for mode in [Mode::Bearing, Mode::TearOut] {
        assert_eq!(told(AiscEdition::E2010, HoleKind::LongSlotAcross, mode), 0);
    }
}

/// A distance of exactly the least the code wants is not short, whatever the rounding of its unit.
#[test]
fn a_distance_at_the_limit_is_not_short() {
    for tenths in 60..800 {
        let d0 = f64::from(tenths) / 10.0;
        let at = |factor: f64| Some(millimetres((factor * d0 * 1e4).round() / 1e4));
        let ply = Ply {
            end_distance: at(1.2),
            edge_distance: at(1.2),
            pitch: at(2.2),
            gauge: at(2.4),
            ..plate(10.0, d0, 80.0, 60.0, 120.0, 120.0, 200.0)
        };
        let ply = Ply { width: None, ..ply };
        let conditions = DistanceConditions {
            exposure: Some(Exposure::Sheltered),
            ..DistanceConditions::default()
        };
        let judged = ply.distances(millimetres(0.9 * d0), DistanceRule::En1993, conditions);
        let mut findings = judged.unwrap().findings;
        // The greatest distances of 10 mm plates are another matter.
        findings.retain(|finding| finding.least.is_some());
        assert_eq!(findings, [], "{d0}");
    }
}

/// No mode drops another: what each misses by itself. (Before, an EN ply without an edge distance lost its
/// sections, and a width that was not given was in no list.)
#[test]
fn each_mode_asks_for_what_it_needs() {
    let d = millimetres(20.0);
    let full = plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0);
    let outcomes = |ply: &Ply, method| {
        let modes = ply.assess(d, bolt_of(800.0), method).unwrap();
        modes.into_iter().map(|mode| mode.outcome)
    };
    let missing = |ply: &Ply, method| -> Vec<Vec<PlyNeed>> {
        let of = outcomes(ply, method).map(|outcome| match outcome {
            PlyOutcome::Missing(needs) => needs,
            _ => Vec::new(),
        });
        of.collect()
    };
    let [machine, aisc, en, mil] = methods();
    for method in methods() {
        assert!(missing(&full, method).iter().all(Vec::is_empty));
    }
    // Bearing, bearing on the bolt, tear-out, net section, gross section.
    let no_edge = Ply {
        edge_distance: None,
        gauge: None,
        ..full
    };
    let needs = missing(&no_edge, en);
    assert_eq!(
        needs,
        [vec![PlyNeed::EdgeDistance], vec![], vec![], vec![], vec![]]
    );
    assert_eq!(
        outcomes(&no_edge, en)
            .filter(|o| o.found().is_some())
            .count(),
        2
    );
    let no_width = Ply {
        width: None,
        ..full
    };
    for method in [machine, aisc, en] {
        let needs = missing(&no_width, method);
        assert_eq!(needs[3..], [[PlyNeed::Width], [PlyNeed::Width]]);
        assert!(needs[..3].iter().all(Vec::is_empty));
    }
    let bare = Ply {
        yield_strength: None,
        tensile_strength: None,
        bearing_strength: None,
        bearing_yield: None,
        end_distance: None,
        edge_distance: None,
        pitch: None,
        gauge: None,
        width: None,
        ..full
    };
    let (fy, fu, end) = (
        PlyNeed::YieldStrength,
        PlyNeed::TensileStrength,
        PlyNeed::EndDistance,
    );
    let (edge, width) = (PlyNeed::EdgeDistance, PlyNeed::Width);
    assert_eq!(
        missing(&bare, machine),
        [
            vec![fy],
            vec![],
            vec![fy, end],
            vec![fy, width],
            vec![fy, width]
        ]
    );
    assert_eq!(
        missing(&bare, aisc),
        [
            vec![fu],
            vec![],
            vec![fu, end],
            vec![fu, width],
            vec![fy, width]
        ]
    );
    assert_eq!(
        missing(&bare, en),
        [
            vec![end, edge, fu],
            vec![],
            vec![],
            vec![fu, width],
            vec![fy, width]
        ]
    );
    assert_eq!(missing(&bare, mil)[0], [PlyNeed::BearingStrength, end]);
    let not_given = |outcome: &PlyOutcome| matches!(outcome, PlyOutcome::NotGiven(_));
    assert_eq!(outcomes(&bare, mil).filter(not_given).count(), 3);
    let no_bolt = full.assess(d, PlyBolt::default(), machine).unwrap();
    assert_eq!(
        no_bolt[1].outcome,
        PlyOutcome::Missing(vec![PlyNeed::BoltYieldStrength])
    );
}

/// What each code asks for, what it has in another mode, and what it has not: nothing of it is a resistance.
#[test]
fn codes_ask_for_what_they_need() {
    let d = millimetres(20.0);
    let full = plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0);
    let bare = Ply {
        end_distance: None,
        pitch: None,
        width: None,
        tensile_strength: None,
        ..full
    };
    let (fu, end, width) = (
        PlyNeed::TensileStrength,
        PlyNeed::EndDistance,
        PlyNeed::Width,
    );
    let kinds = |ply: &Ply, method| -> String {
        let modes = ply.assess(d, bolt_of(800.0), method).unwrap();
        let letter = |outcome: &PlyOutcome| match outcome {
            PlyOutcome::Found(_) => 'f',
            PlyOutcome::Missing(_) => 'm',
            PlyOutcome::NotNeeded(_) => '-',
            PlyOutcome::NotGiven(_) => 'n',
            _ => '0',
        };
        modes.iter().map(|mode| letter(&mode.outcome)).collect()
    };
    // Bearing, bearing on the bolt, tear-out, net section, gross section.
    for (method, of_full, of_bare) in [
        (PlyMethod::Bs5950, "ff-ff", "mf-mm"),
        (PlyMethod::Is800, "f--ff", "m--mm"),
        (PlyMethod::As4100, "f-fff", "m-mmm"),
        (PlyMethod::CsaS16, "f-fff", "m-mmm"),
    ] {
        assert_eq!(kinds(&full, method), of_full, "{method}");
        assert_eq!(kinds(&bare, method), of_bare, "{method}");
    }
    let needs = |method, mode| match bare.in_mode(mode, d, bolt_of(800.0), method).unwrap() {
        PlyOutcome::Missing(needs) => needs,
        other => panic!("{other:?}"),
    };
    assert_eq!(needs(PlyMethod::Bs5950, Mode::Bearing), [end, fu]);
    assert_eq!(needs(PlyMethod::Is800, Mode::Bearing), [end, fu]);
    assert_eq!(needs(PlyMethod::As4100, Mode::TearOut), [fu, end]);
    assert_eq!(needs(PlyMethod::CsaS16, Mode::TearOut), [fu, end]);
    assert_eq!(needs(PlyMethod::Is800, Mode::GrossSection), [width]);
    // Without the grade of the bolt no bearing that wants it.
    let unknown = PlyBolt::default();
    for (method, mode) in [
        (PlyMethod::Is800, Mode::Bearing),
        (PlyMethod::Bs5950, Mode::BoltBearing),
    ] {
        let found = full.in_mode(mode, d, unknown, method).unwrap();
        assert!(matches!(found, PlyOutcome::Missing(_)));
    }
    let soft = PlyBolt {
        yield_strength: Some(megapascals(200.0)),
        tensile_strength: Some(megapascals(330.0)),
    };
    let found = full.in_mode(Mode::BoltBearing, d, soft, PlyMethod::Bs5950);
    assert!(matches!(found.unwrap(), PlyOutcome::NotGiven(_)));
    // Slots along the load, and all but standard holes where what is taken off was not read.
    for (method, hole_kind, found) in [
        (PlyMethod::Is800, HoleKind::ShortSlotAlong, 'n'),
        (PlyMethod::Is800, HoleKind::LongSlotAcross, 'f'),
        (PlyMethod::As4100, HoleKind::Oversize, 'n'),
        (PlyMethod::CsaS16, HoleKind::LongSlotAcross, 'n'),
    ] {
        let slotted = Ply {
            hole_kind,
            slot_length: Some(millimetres(50.0)),
            ..full
        };
        let kinds = kinds(&slotted, method);
        assert!(kinds.starts_with(found), "{method} {hole_kind:?}: {kinds}");
    }
    // A softer bolt than the ply, fub / fu: 400 / 430.
    let of = |fub| one(&full, d, bolt_of(fub), PlyMethod::Is800, Mode::Bearing).coefficient;
    assert!((of(400.0) / of(800.0) - 400.0 / 430.0).abs() < 1e-12);
}

/// A worked connection by BS 5950-1 (a design office): M24 of class 8.8, 20 mm of S355, short slots, 40 mm from the end: 480 kN on
/// the bolt, the lesser of 185 and 154 kN on the plate. Slots of other lengths by the notes of the designers' manual.
#[test]
fn worked_connection_of_bs_5950() {
    let d = millimetres(24.0);
    let ply = Ply {
        hole_kind: HoleKind::ShortSlotAcross,
        slot_length: Some(millimetres(32.0)),
        yield_strength: Some(megapascals(355.0)),
        tensile_strength: Some(megapascals(470.0)),
        ..plate(20.0, 26.0, 40.0, 60.0, 120.0, 120.0, 200.0)
    };
    let bearing = |ply: &Ply, mode| {
        let found = one(ply, d, bolt_of(800.0), PlyMethod::Bs5950, mode);
        found.derivation().check().unwrap();
        assert_eq!(found.cautions().iter().count(), 0);
        found
            .resistance
            .at(Level::Design)
            .unwrap()
            .get::<kilonewton>()
    };
    assert!((bearing(&ply, Mode::BoltBearing) - 480.0).abs() < 0.5);
    assert!((bearing(&ply, Mode::Bearing) - 154.0).abs() < 0.5);
    let far = Ply {
        end_distance: Some(millimetres(48.0)),
        ..ply
    };
    assert!((bearing(&far, Mode::Bearing) - 0.7 * 24.0 * 20.0 * 0.55).abs() < 1e-9);
    let long = Ply {
        hole_kind: HoleKind::LongSlotAcross,
        ..far
    };
    assert!((bearing(&long, Mode::Bearing) - 0.5 * 24.0 * 20.0 * 0.55).abs() < 1e-9);
    // 0.67 (360 + 235), recalled.
    let other = Ply {
        yield_strength: Some(megapascals(235.0)),
        tensile_strength: Some(megapascals(360.0)),
        hole_kind: HoleKind::Standard,
        ..far
    };
    let found = one(&other, d, bolt_of(800.0), PlyMethod::Bs5950, Mode::Bearing);
    assert!((found.stress - megapascals(398.65)).abs() < megapascals(1e-9));
    assert_eq!(found.cautions().iter().count(), 1);
}

/// Steel Designers' Manual, 6th ed., chapter 14: S355, Ke 1.1, a gross area of 2160 mm2 with one hole of 24 in 10 mm leaves an
/// 1920 mm2; Pt = py Ae, Ae = Ke an. 4.6.1 and 3.4.3 by that, and by hand for steels whose Ke or py is limited by Us / 1.2.
#[test]
fn sections_of_bs_5950() {
    for (fy, fu, py, ke) in [
        (355.0, 470.0, 355.0, 1.1),
        (275.0, 410.0, 275.0, 1.2),
        (250.0, 340.0, 250.0, 340.0 / 300.0),
        (450.0, 510.0, 425.0, 1.0),
    ] {
        let ply = Ply {
            yield_strength: Some(megapascals(fy)),
            tensile_strength: Some(megapascals(fu)),
            ..plate(10.0, 24.0, 60.0, 60.0, 120.0, 120.0, 216.0)
        };
        for (mode, area) in [
            (Mode::NetSection, ke * 1920.0),
            (Mode::GrossSection, 2160.0),
        ] {
            let found = one(
                &ply,
                millimetres(22.0),
                bolt_of(800.0),
                PlyMethod::Bs5950,
                mode,
            );
            found.derivation().check().unwrap();
            assert_eq!(found.cautions().iter().count(), 0);
            assert!(found.resistance.nominal.is_none());
            let design = found
                .resistance
                .at(Level::Design)
                .unwrap()
                .get::<kilonewton>();
            assert_relative_eq!(design, py * area / 1e3, max_relative = 1e-12);
        }
    }
}

/// Holes of the four codes: standard ones alone, by the clearance that all of them have; what is wider is not judged by the
/// loose fits of ISO 273. Their distances: IS 800 by its recalled rule, CSA S16 never decided.
#[test]
fn holes_and_distances_of_codes_that_were_not_read() {
    for (thread, hole, known) in [
        ("M12", 13.0, true),
        ("M12", 13.5, false),
        ("M20", 22.0, true),
        ("M20", 24.0, false),
        ("3/4-10 UNC", 20.6, true),
    ] {
        let class = Hole {
            diameter: millimetres(hole),
            slot: None,
        }
        .classify(&thread.parse().unwrap(), HoleRule::Steelwork)
        .unwrap();
        let is_known = matches!(
            class,
            HoleClass::Known {
                kind: HoleKind::Standard,
                ..
            }
        );
        assert_eq!(is_known, known, "{thread} {hole}");
        assert!(is_known || matches!(class, HoleClass::NotGiven(_)));
    }
    let d = millimetres(20.0);
    let sheltered = DistanceConditions {
        finish: Some(EdgeFinish::Sheared),
        exposure: Some(Exposure::Sheltered),
    };
    let standings = |end: f64, rule: DistanceRule| -> Vec<DistanceStanding> {
        let ply = plate(10.0, 22.0, end, 60.0, 60.0, 60.0, 200.0);
        let judged = ply.distances(d, rule, sheltered).unwrap();
        judged.findings.iter().map(|found| found.standing).collect()
    };
    let (fault, open) = (DistanceStanding::Fault, DistanceStanding::Undecided);
    // 1.7 x 22 = 37.4.
    assert_eq!(standings(37.4, DistanceRule::Is800), []);
    assert_eq!(standings(37.3, DistanceRule::Is800), [fault]);
    assert_eq!(standings(60.0, DistanceRule::CsaS16), [open; 4]);
    let near = [fault, open, open, open];
    assert_eq!(standings(19.0, DistanceRule::CsaS16), near);
    assert_eq!(DistanceRule::from(PlyMethod::Bs5950), DistanceRule::Bs5950);
}

/// A mode with nothing left says so and leaves the others alone.
#[test]
fn nothing_left_is_said_by_the_mode() {
    let d = millimetres(20.0);
    let narrow = plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 23.0);
    let aisc = methods()[1];
    let net = narrow.in_mode(Mode::NetSection, d, PlyBolt::default(), aisc);
    assert!(matches!(net.unwrap(), PlyOutcome::Nothing(_)));
    let gross = narrow.in_mode(Mode::GrossSection, d, PlyBolt::default(), aisc);
    assert!(gross.unwrap().found().is_some());
    // 2.8 e2 / d0 - 1.7 is negative below 0.607 d0.
    let near = plate(10.0, 22.0, 80.0, 13.0, 120.0, 120.0, 200.0);
    let bearing = near.in_mode(Mode::Bearing, d, bolt_of(800.0), PlyMethod::En1993);
    assert!(matches!(bearing.unwrap(), PlyOutcome::Nothing(_)));
}

/// k1 of an inner hole comes from the gauge alone, of an outer one from the lesser of both.
#[test]
fn en_k1_from_the_gauge() {
    let d = millimetres(20.0);
    let bearing = |edge: Option<f64>, gauge: Option<f64>| {
        let ply = Ply {
            edge_distance: edge.map(millimetres),
            gauge: gauge.map(millimetres),
            ..plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0)
        };
        let found = one(&ply, d, bolt_of(800.0), PlyMethod::En1993, Mode::Bearing);
        found.derivation().check().unwrap();
        found.coefficient
    };
    // 1.4 x 50 / 22 - 1.7 = 1.4818; 2.8 x 26 / 22 - 1.7 = 1.6091; ab = 1.
    assert!((bearing(None, Some(50.0)) - 1.4818).abs() < 1e-4);
    assert!((bearing(Some(26.0), Some(50.0)) - 1.4818).abs() < 1e-4);
    assert!((bearing(Some(26.0), Some(60.0)) - 1.6091).abs() < 1e-4);
    assert!((bearing(Some(26.0), None) - 1.6091).abs() < 1e-4);
    assert!((bearing(None, Some(80.0)) - 2.5).abs() < 1e-12);
}

/// EN takes 0.8 of the bearing in oversize holes, 0.6 in slots across and nothing is said of slots along; AISC 2.0
/// for 2.4 in long slots across. A slot counts with its length where it lies in the way.
#[test]
fn kinds_of_hole_change_the_modes() {
    let d = millimetres(20.0);
    let with = |hole_kind, slot_length: Option<f64>| Ply {
        hole_kind,
        slot_length: slot_length.map(millimetres),
        ..plate(10.0, 22.0, 80.0, 60.0, 120.0, 120.0, 200.0)
    };
    let [machine, aisc, en, _] = methods();
    let coefficient = |kind, method| {
        let ply = with(kind, Some(50.0));
        let outcome = ply.in_mode(Mode::Bearing, d, bolt_of(800.0), method);
        outcome.unwrap().found().map(|found| found.coefficient)
    };
    for (kind, part, aisc_part) in [
        (HoleKind::Standard, Some(2.5), 3.0),
        (HoleKind::Oversize, Some(2.0), 3.0),
        (HoleKind::ShortSlotAcross, Some(1.5), 3.0),
        (HoleKind::ShortSlotAlong, None, 3.0),
        (HoleKind::LongSlotAcross, Some(1.5), 2.0),
        (HoleKind::LongSlotAlong, None, 3.0),
    ] {
        assert_eq!(coefficient(kind, en), part, "{kind:?}");
        assert_eq!(coefficient(kind, aisc), Some(aisc_part), "{kind:?}");
    }
    let area = |ply: &Ply, method, mode| {
        let found = one(ply, d, bolt_of(800.0), method, mode);
        found.derivation().check().unwrap();
        found
            .area
            .get::<shankline::uom::si::area::square_millimeter>()
    };
    let near = |found: f64, wanted: f64| assert!((found - wanted).abs() < 1e-6, "{found}");
    let along = with(HoleKind::LongSlotAlong, Some(50.0));
    near(
        area(&along, machine, Mode::TearOut),
        2.0 * (80.0 - 25.0) * 10.0,
    );
    near(area(&along, aisc, Mode::TearOut), (80.0 - 25.0) * 10.0);
    near(area(&along, en, Mode::NetSection), (200.0 - 22.0) * 10.0);
    let across = with(HoleKind::ShortSlotAcross, Some(26.0));
    near(
        area(&across, machine, Mode::TearOut),
        2.0 * (80.0 - 11.0) * 10.0,
    );
    near(
        area(&across, machine, Mode::NetSection),
        (200.0 - 26.0) * 10.0,
    );
    let unknown = with(HoleKind::LongSlotAcross, None);
    let net = unknown.in_mode(Mode::NetSection, d, bolt_of(800.0), en);
    assert_eq!(net.unwrap(), PlyOutcome::Missing(vec![PlyNeed::SlotLength]));
}

/// Between two holes there is no more metal than p1 - dh, in machine design too.
#[test]
fn tear_out_counts_from_the_edge_of_the_hole() {
    let d = millimetres(20.0);
    let area = |e1, p1| {
        let ply = plate(10.0, 22.0, e1, 60.0, p1, 120.0, 200.0);
        let found = one(&ply, d, PlyBolt::default(), methods()[0], Mode::TearOut);
        found
            .area
            .get::<shankline::uom::si::area::square_millimeter>()
    };
    assert!((area(30.0, 120.0) - 2.0 * 19.0 * 10.0).abs() < 1e-6);
    assert!((area(80.0, 60.0) - 2.0 * 38.0 * 10.0).abs() < 1e-6);
}

/// EN 1993-1-8, 3.6.1(10): 1.5 fu d t / 1.25, for EN only.
#[test]
fn single_lap_of_en() {
    let ply = plate(5.0, 18.0, 40.0, 40.0, 60.0, 60.0, 80.0);
    let d = millimetres(16.0);
    let outcome = ply.single_lap(d, PlyMethod::En1993).unwrap();
    let found = outcome.found().unwrap();
    found.derivation().check().unwrap();
    let check = found.check(kilonewtons(10.0), Level::Design, 1).unwrap();
    assert!(check.method.citation.contains("3.6.1(10)"));
    // 1.5 x 430 x 16 x 5 / 1.25 = 41.28 kN
    assert!((check.utilisation.value - 10.0 / 41.28).abs() < 1e-9);
    let other = ply.single_lap(d, methods()[0]).unwrap();
    assert!(matches!(other, PlyOutcome::NotNeeded(_)));
    let bare = Ply {
        tensile_strength: None,
        ..ply
    };
    let missing = bare.single_lap(d, PlyMethod::En1993).unwrap();
    assert_eq!(missing, PlyOutcome::Missing(vec![PlyNeed::TensileStrength]));
}

fn kilonewtons(value: f64) -> Force {
    newtons(1e3 * value)
}

/// Two plies of 2 mm between two planes: 12 x 2 x 250 N each, whatever they share.
#[test]
fn plies_that_share_a_load() {
    let ply = Ply {
        yield_strength: Some(megapascals(250.0)),
        ..plate(2.0, 13.0, 80.0, 60.0, 120.0, 120.0, 200.0)
    };
    let method = PlyMethod::MachineDesign { design_factor: 1.0 };
    let of = |ply: &Ply, mode| one(ply, millimetres(12.0), bolt_of(800.0), method, mode);
    let thin = of(&ply, Mode::Bearing);
    let thick = of(
        &Ply {
            thickness: millimetres(3.0),
            ..ply
        },
        Mode::Bearing,
    );
    let pair = shared_resistance(&[thick, thin]).unwrap();
    for (load, holds) in [
        (5.9, Some(true)),
        (6.1, None),
        (14.9, None),
        (15.1, Some(false)),
    ] {
        let found = pair.holds(kilonewtons(load), Level::Allowable).unwrap();
        assert_eq!(found, holds, "{load}");
    }
    assert!(pair.holds(kilonewtons(f64::NAN), Level::Allowable).is_err());
    assert!(pair.holds(kilonewtons(1.0), Level::Design).is_err());
    let other = of(&ply, Mode::TearOut);
    assert!(shared_resistance(&[thin, other]).is_err());
    assert!(shared_resistance(&[]).is_err());
}

fn judge(ply: &Ply, d: Length, rule: DistanceRule) -> Vec<DistanceFinding> {
    let judged = ply.distances(d, rule, DistanceConditions::default());
    judged.unwrap().findings
}

fn aisc(edition: AiscEdition) -> DistanceRule {
    DistanceRule::Aisc360 { edition }
}

/// Plate of 1/2 in for a 3/4 in bolt with one distance.
fn inch_plate(kind: DistanceKind, distance: f64) -> Ply {
    let a36 = PlyMaterial::find("ASTM A36 steel").unwrap();
    let mut ply = Ply::of(a36, inches(0.5), inches(0.8125));
    let at = match kind {
        DistanceKind::End => &mut ply.end_distance,
        DistanceKind::Edge => &mut ply.edge_distance,
        DistanceKind::Pitch => &mut ply.pitch,
        _ => &mut ply.gauge,
    };
    *at = Some(inches(distance));
    ply
}

use DistanceStanding::{Fault, Permitted, Undecided};

/// AISC 360 J3.3: 2 2/3 d along and across, 2 in for 3/4 in bolts; J3.5: 24 t = 12 in.
#[test]
fn aisc_spacing() {
    let d = inches(0.75);
    for kind in [DistanceKind::Pitch, DistanceKind::Gauge] {
        for (distance, short) in [(1.99, true), (2.0, false), (2.01, false), (2.25, false)] {
            let found = judge(&inch_plate(kind, distance), d, aisc(AiscEdition::E2016));
            assert_eq!(found.len(), usize::from(short), "{kind} {distance}");
            if let Some(finding) = found.first() {
                assert_eq!((finding.kind, finding.standing), (kind, Fault));
                assert!((finding.least.unwrap() - inches(2.0)).abs() < inches(1e-9));
            }
        }
    }
    let far = judge(
        &inch_plate(DistanceKind::Pitch, 12.01),
        d,
        aisc(AiscEdition::E2016),
    );
    assert_eq!(
        (far[0].standing, far[0].greatest),
        (Fault, Some(inches(12.0)))
    );
    assert!(
        judge(
            &inch_plate(DistanceKind::Pitch, 12.0),
            d,
            aisc(AiscEdition::E2016)
        )
        .is_empty()
    );
    let weathering = DistanceConditions {
        exposure: Some(Exposure::WeatheringSteel),
        ..DistanceConditions::default()
    };
    let ply = inch_plate(DistanceKind::Pitch, 7.01);
    let judged = ply.distances(d, aisc(AiscEdition::E2016), weathering);
    assert_eq!(judged.unwrap().findings[0].greatest, Some(inches(7.0)));
}

/// AISC 360 Table J3.4: 1 in for 3/4 in bolts, 1-1/4 in at sheared edges to 2005; J3.5: 12 t = 6 in.
#[test]
fn aisc_edges_by_edition() {
    let d = inches(0.75);
    let standing = |distance, edition, finish| {
        let conditions = DistanceConditions {
            finish,
            ..DistanceConditions::default()
        };
        let [end, edge] = [DistanceKind::End, DistanceKind::Edge].map(|kind| {
            let judged = inch_plate(kind, distance).distances(d, aisc(edition), conditions);
            let found = judged.unwrap().findings;
            found.first().map(|finding| finding.standing)
        });
        assert_eq!(end, edge);
        end
    };
    for (distance, e2005, e2010, e2016) in [
        (0.74, Some(Fault), Some(Fault), Some(Fault)),
        (0.75, Some(Fault), Some(Fault), Some(Permitted)),
        (0.99, Some(Fault), Some(Fault), Some(Permitted)),
        (1.0, Some(Undecided), None, None),
        (1.24, Some(Undecided), None, None),
        (1.25, None, None, None),
        (6.0, None, None, None),
        (6.01, Some(Fault), Some(Fault), Some(Fault)),
    ] {
        assert_eq!(
            standing(distance, AiscEdition::E2005, None),
            e2005,
            "{distance}"
        );
        assert_eq!(
            standing(distance, AiscEdition::E2010, None),
            e2010,
            "{distance}"
        );
        assert_eq!(
            standing(distance, AiscEdition::E2016, None),
            e2016,
            "{distance}"
        );
        assert_eq!(
            standing(distance, AiscEdition::E2022, None),
            e2016,
            "{distance}"
        );
    }
    let old = AiscEdition::E2005;
    assert_eq!(standing(1.1, old, Some(EdgeFinish::Sheared)), Some(Fault));
    assert_eq!(standing(1.1, old, Some(EdgeFinish::Smooth)), None);
    // M12 has no row: undecided above one diameter.
    let small = plate(10.0, 14.0, 30.0, 30.0, 60.0, 60.0, 80.0);
    let found = judge(&small, millimetres(12.0), aisc(AiscEdition::E2016));
    assert_eq!(found.len(), 2);
    assert!(
        found
            .iter()
            .all(|f| f.standing == Undecided && f.least.is_none())
    );
}

/// Table J3.5, C2: 1/16 in for an oversize hole of 3/4 in, 1/8 in for a short slot that points to the edge, 3/4 d for a
/// long one. M24, J3.5M: 3 mm, 3 mm.
#[test]
fn aisc_edges_of_other_holes() {
    let least = |hole_kind, kind| {
        let ply = Ply {
            hole_kind,
            ..inch_plate(kind, 0.9)
        };
        judge(&ply, inches(0.75), aisc(AiscEdition::E2010))[0]
            .least
            .unwrap()
    };
    for (hole_kind, end, edge) in [
        (HoleKind::Standard, 1.0, 1.0),
        (HoleKind::Oversize, 1.0625, 1.0625),
        (HoleKind::ShortSlotAlong, 1.125, 1.0),
        (HoleKind::ShortSlotAcross, 1.0, 1.125),
        (HoleKind::LongSlotAlong, 1.5625, 1.0),
        (HoleKind::LongSlotAcross, 1.0, 1.5625),
    ] {
        assert_eq!(
            least(hole_kind, DistanceKind::End),
            inches(end),
            "{hole_kind:?}"
        );
        assert_eq!(
            least(hole_kind, DistanceKind::Edge),
            inches(edge),
            "{hole_kind:?}"
        );
    }
    let m24 = Ply {
        hole_kind: HoleKind::Oversize,
        ..plate(20.0, 30.0, 25.0, 60.0, 120.0, 120.0, 200.0)
    };
    let found = judge(&m24, millimetres(24.0), aisc(AiscEdition::E2010));
    assert_eq!(found[0].least, Some(millimetres(33.0)));
}

/// Under one diameter of the bolt a fault, under 1.5 of the hole not shown; no rule for spacing.
#[test]
fn machine_design_edges() {
    for (distance, standing) in [
        (15.9, Some(Fault)),
        (16.0, Some(Undecided)),
        (26.9, Some(Undecided)),
        (27.0, None),
    ] {
        let ply = plate(10.0, 18.0, distance, distance, 19.0, 19.0, 200.0);
        let found = judge(&ply, millimetres(16.0), DistanceRule::MachineDesign);
        let standings: Vec<_> = found.iter().map(|finding| finding.standing).collect();
        assert_eq!(
            standings,
            vec![standing; 2].into_iter().flatten().collect::<Vec<_>>()
        );
    }
    // A slot that points to the end is measured from the round at its end.
    let slot = Ply {
        hole_kind: HoleKind::LongSlotAlong,
        slot_length: Some(millimetres(40.0)),
        ..plate(10.0, 18.0, 37.0, 37.0, 60.0, 60.0, 200.0)
    };
    let found = judge(&slot, millimetres(16.0), DistanceRule::MachineDesign);
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].kind, DistanceKind::End);
    assert!((found[0].least.unwrap() - millimetres(38.0)).abs() < millimetres(1e-9));
}

/// EN 1993-1-8 Table 3.3 for a hole of 22 mm in 10 mm: 26.4, 26.4, 48.4, 52.8 mm; edges up to 80 mm where exposed,
/// spacing up to 140 mm by the member, 280 mm along.
#[test]
fn en_distances() {
    let d = millimetres(20.0);
    let with = |exposure, [e1, e2, p1, p2]: [f64; 4]| -> Vec<_> {
        let conditions = DistanceConditions {
            exposure,
            ..DistanceConditions::default()
        };
        let ply = plate(10.0, 22.0, e1, e2, p1, p2, 300.0);
        let judged = ply.distances(d, DistanceRule::En1993, conditions).unwrap();
        let of = |finding: &DistanceFinding| (finding.kind, finding.standing);
        judged.findings.iter().map(of).collect()
    };
    let (end, edge) = (DistanceKind::End, DistanceKind::Edge);
    let (pitch, gauge) = (DistanceKind::Pitch, DistanceKind::Gauge);
    assert_eq!(with(None, [26.4, 26.4, 48.4, 52.8]), []);
    let all = [(end, Fault), (edge, Fault), (pitch, Fault), (gauge, Fault)];
    assert_eq!(with(None, [26.3, 26.3, 48.3, 52.7]), all);
    let far = [80.1, 80.1, 140.1, 140.1];
    let spacing = [(pitch, Undecided), (gauge, Undecided)];
    let edges = |standing| [(end, standing), (edge, standing)];
    assert_eq!(with(Some(Exposure::Sheltered), far), spacing);
    assert_eq!(with(None, far), [edges(Undecided), spacing].concat());
    assert_eq!(
        with(Some(Exposure::Corrosive), far),
        [edges(Fault), spacing].concat()
    );
    assert_eq!(with(Some(Exposure::WeatheringSteel), far), spacing);
    assert_eq!(
        with(Some(Exposure::WeatheringSteel), [125.1, 80.0, 100.0, 100.0]),
        [(end, Fault)]
    );
    assert_eq!(with(None, [80.0, 80.0, 280.1, 140.0]), [(pitch, Fault)]);
}

/// BS 5950-1: 1.25 D and 1.4 D of a 20 mm hole are 25 and 28 mm; 2.5 d = 45 mm; 11 t of S275 110 mm.
#[test]
fn bs_5950_distances() {
    let d = millimetres(18.0);
    let with = |finish, exposure, [e1, e2, p1, p2]: [f64; 4]| -> Vec<_> {
        let conditions = DistanceConditions { finish, exposure };
        let ply = plate(10.0, 20.0, e1, e2, p1, p2, 300.0);
        let judged = ply.distances(d, DistanceRule::Bs5950, conditions).unwrap();
        let of = |finding: &DistanceFinding| (finding.kind, finding.standing);
        judged.findings.iter().map(of).collect()
    };
    let (end, edge) = (DistanceKind::End, DistanceKind::Edge);
    let (pitch, gauge) = (DistanceKind::Pitch, DistanceKind::Gauge);
    let smooth = Some(EdgeFinish::Smooth);
    let dry = Some(Exposure::Sheltered);
    assert_eq!(with(smooth, dry, [28.0, 25.0, 45.0, 45.0]), []);
    assert_eq!(
        with(smooth, dry, [27.9, 24.9, 44.9, 30.0]),
        [(end, Fault), (edge, Fault), (pitch, Fault)]
    );
    assert_eq!(
        with(None, dry, [28.0, 27.9, 45.0, 45.0]),
        [(edge, Undecided)]
    );
    assert_eq!(
        with(Some(EdgeFinish::Sheared), dry, [28.0, 27.9, 45.0, 45.0]),
        [(edge, Fault)]
    );
    assert_eq!(
        with(smooth, dry, [110.1, 110.0, 140.1, 200.0]),
        [(end, Fault), (pitch, Fault)]
    );
    let far = [80.1, 80.0, 140.0, 160.1];
    assert_eq!(
        with(smooth, None, far),
        [(end, Undecided), (gauge, Undecided)]
    );
    assert_eq!(
        with(smooth, Some(Exposure::Corrosive), far),
        [(end, Fault), (gauge, Fault)]
    );
}

/// AS 4100: 1.25 d = 22.5 mm, 1.5 d = 27 mm and 1.75 d = 31.5 mm at edges, 2.5 d = 45 mm between holes; at most 12 t = 120 mm at
/// edges, 4 t + 100 = 140 mm in an outer line and 15 t = 150 mm elsewhere.
#[test]
fn as_4100_distances() {
    let d = millimetres(18.0);
    let with = |finish, [e1, e2, p1, p2]: [f64; 4]| -> Vec<_> {
        let exposure = Some(Exposure::Corrosive);
        let conditions = DistanceConditions { finish, exposure };
        let ply = plate(10.0, 20.0, e1, e2, p1, p2, 300.0);
        let judged = ply.distances(d, DistanceRule::As4100, conditions).unwrap();
        let of = |finding: &DistanceFinding| (finding.kind, finding.standing);
        judged.findings.iter().map(of).collect()
    };
    let (end, edge) = (DistanceKind::End, DistanceKind::Edge);
    let (pitch, gauge) = (DistanceKind::Pitch, DistanceKind::Gauge);
    let (smooth, sheared) = (Some(EdgeFinish::Smooth), Some(EdgeFinish::Sheared));
    assert_eq!(with(sheared, [31.5, 31.5, 45.0, 45.0]), []);
    assert_eq!(
        with(sheared, [31.4, 31.4, 44.9, 44.9]),
        [(end, Fault), (edge, Fault), (pitch, Fault), (gauge, Fault)]
    );
    assert_eq!(with(None, [31.4, 31.5, 45.0, 45.0]), [(end, Undecided)]);
    // A rolled edge may be nearer than one that was cut, and nobody tells the two apart.
    assert_eq!(with(smooth, [27.0, 27.0, 45.0, 45.0]), []);
    assert_eq!(
        with(smooth, [22.4, 26.9, 45.0, 45.0]),
        [(end, Fault), (edge, Undecided)]
    );
    assert_eq!(with(smooth, [120.0, 120.0, 140.0, 150.0]), []);
    assert_eq!(
        with(smooth, [120.1, 60.0, 140.1, 150.1]),
        [(end, Fault), (pitch, Undecided), (gauge, Fault)]
    );
    assert_eq!(with(smooth, [60.0, 60.0, 150.1, 60.0]), [(pitch, Fault)]);
}

/// MIL-HDBK-5, recalled: below 1.5 D by test; two diameters by custom, as of rivets.
#[test]
fn aircraft_edges() {
    for (distance, standing, recalled) in [
        (9.4, Some(Undecided), 1),
        (9.6, Some(Permitted), 0),
        (12.7, None, 0),
    ] {
        let ply = plate(2.0, 6.35, distance, 20.0, 30.0, 30.0, 40.0);
        let found = judge(&ply, millimetres(6.35), DistanceRule::MilHdbk5);
        assert_eq!(found.first().map(|finding| finding.standing), standing);
        let cautions = found.iter().map(|finding| finding.cautions.iter().count());
        assert_eq!(cautions.sum::<usize>(), recalled);
    }
}

/// Three diameters of the bolt between holes, as of rivets in a single row.
#[test]
fn aircraft_spacing() {
    for (pitch, gauge, short) in [(19.1, 19.1, 0), (19.0, 19.1, 1), (19.1, 19.0, 1)] {
        let ply = plate(2.0, 6.5, 20.0, 20.0, pitch, gauge, 40.0);
        let found = judge(&ply, millimetres(6.35), DistanceRule::MilHdbk5);
        assert_eq!(found.len(), short);
        assert!(found.iter().all(|own| own.standing == Undecided));
    }
}

/// What a rule needs and was not told is data, and nothing that was told drops out for it.
#[test]
fn missing_distances_are_told() {
    let only_end = Ply {
        edge_distance: None,
        pitch: None,
        gauge: None,
        ..plate(10.0, 22.0, 20.0, 60.0, 60.0, 60.0, 200.0)
    };
    let judged = only_end
        .distances(
            millimetres(20.0),
            DistanceRule::En1993,
            DistanceConditions::default(),
        )
        .unwrap();
    assert_eq!(judged.missing, [PlyNeed::EdgeDistance]);
    assert_eq!(judged.findings.len(), 1);
    let slot = Ply {
        hole_kind: HoleKind::ShortSlotAlong,
        ..only_end
    };
    let judged = slot
        .distances(
            millimetres(20.0),
            DistanceRule::En1993,
            DistanceConditions::default(),
        )
        .unwrap();
    assert_eq!(judged.missing, [PlyNeed::EdgeDistance, PlyNeed::SlotLength]);
}

/// AISC 360 Table J3.3, 3/4 in: 13/16, 15/16, 13/16 x 1, 13/16 x 1-7/8; between two sizes the next kind counts
/// (the institute's answer 5.1.1: 13/16 x 1-1/4 is a long slot).
#[test]
fn holes_by_aisc() {
    let class = |diameter, slot: Option<(f64, SlotDirection)>| {
        let hole = Hole {
            diameter: inches(diameter),
            slot: slot.map(|(length, direction)| Slot {
                length: inches(length),
                direction,
            }),
        };
        let rule = HoleRule::Aisc360 {
            edition: AiscEdition::E2016,
        };
        hole.classify(&"3/4-10 UNC".parse().unwrap(), rule)
    };
    let kind = |diameter, slot| match class(diameter, slot).unwrap() {
        HoleClass::Known { kind, .. } => Some(kind),
        _ => None,
    };
    let (across, along) = (SlotDirection::Across, SlotDirection::Along);
    assert_eq!(kind(0.8125, None), Some(HoleKind::Standard));
    assert_eq!(kind(0.82, None), Some(HoleKind::Oversize));
    assert_eq!(kind(0.9375, None), Some(HoleKind::Oversize));
    assert_eq!(
        kind(0.8125, Some((1.0, across))),
        Some(HoleKind::ShortSlotAcross)
    );
    assert_eq!(
        kind(0.8125, Some((1.0, along))),
        Some(HoleKind::ShortSlotAlong)
    );
    assert_eq!(
        kind(0.8125, Some((1.25, across))),
        Some(HoleKind::LongSlotAcross)
    );
    assert_eq!(
        kind(0.8125, Some((1.875, along))),
        Some(HoleKind::LongSlotAlong)
    );
    let too_large = |diameter, slot| match class(diameter, slot).unwrap() {
        HoleClass::TooLarge { greatest, .. } => Some(greatest),
        _ => None,
    };
    assert_eq!(too_large(0.94, None), Some(inches(0.9375)));
    assert_eq!(too_large(0.82, Some((1.0, across))), Some(inches(0.8125)));
    assert_eq!(too_large(0.8125, Some((1.9, across))), Some(inches(1.875)));
    assert_eq!(
        class(0.74, None),
        Ok(HoleClass::TooSmall {
            least: inches(0.75)
        })
    );
    assert!(class(0.8125, Some((0.8125, across))).is_err());
    assert!(class(f64::NAN, None).is_err());
}

/// EN 1090-2 Table 11: M12 13, 15, 13 x 16, 13 x 30; M24 26, 30, 26 x 32; M12 and M14 with 2 mm by EN 1993-1-8 3.6.1(5).
#[test]
fn holes_by_en_1090() {
    let class = |thread: &str, diameter, length: Option<f64>| {
        let slot = length.map(|length| Slot {
            length: millimetres(length),
            direction: SlotDirection::Across,
        });
        let hole = Hole {
            diameter: millimetres(diameter),
            slot,
        };
        match hole.classify(&thread.parse().unwrap(), HoleRule::En1090) {
            Ok(HoleClass::Known {
                kind,
                two_millimetre_clearance,
                ..
            }) => Some((kind, two_millimetre_clearance)),
            _ => None,
        }
    };
    for (thread, diameter, length, wanted) in [
        ("M12", 13.0, None, Some((HoleKind::Standard, false))),
        ("M12", 13.5, None, Some((HoleKind::Standard, true))),
        ("M12", 14.0, None, Some((HoleKind::Standard, true))),
        ("M12", 14.5, None, Some((HoleKind::Oversize, false))),
        ("M12", 15.1, None, None),
        ("M10", 11.0, None, Some((HoleKind::Standard, false))),
        ("M10", 12.0, None, Some((HoleKind::Oversize, false))),
        ("M16", 18.0, None, Some((HoleKind::Standard, false))),
        ("M16", 18.1, None, Some((HoleKind::Oversize, false))),
        ("M20", 24.1, None, None),
        ("M24", 30.0, None, Some((HoleKind::Oversize, false))),
        ("M27", 30.0, None, Some((HoleKind::Standard, false))),
        (
            "M24",
            26.0,
            Some(32.0),
            Some((HoleKind::ShortSlotAcross, false)),
        ),
        (
            "M24",
            26.0,
            Some(60.0),
            Some((HoleKind::LongSlotAcross, false)),
        ),
        ("M24", 26.0, Some(60.1), None),
        (
            "M12",
            13.0,
            Some(30.0),
            Some((HoleKind::LongSlotAcross, false)),
        ),
        ("3/4-10 UNC", 21.0, None, None),
    ] {
        assert_eq!(
            class(thread, diameter, length),
            wanted,
            "{thread} {diameter}"
        );
    }
}

/// ISO 273 for M12: 13, 13.5, 14.5 mm; H14 lets the coarse one grow. A slot is in no such standard.
#[test]
fn holes_of_machine_design() {
    let class = |diameter| {
        let hole = Hole {
            diameter: millimetres(diameter),
            slot: None,
        };
        hole.classify(&"M12".parse().unwrap(), HoleRule::MachineDesign)
            .unwrap()
    };
    let standard = |class| {
        matches!(
            class,
            HoleClass::Known {
                kind: HoleKind::Standard,
                ..
            }
        )
    };
    assert!(standard(class(12.0)) && standard(class(14.5)));
    assert!(matches!(class(16.0), HoleClass::TooLarge { .. }));
    assert!(matches!(class(11.9), HoleClass::TooSmall { .. }));
}

/// Strengths hold for a range of thickness: EN 10025-2 Table 7, A36 up to 8 in. Outside a ply has none.
#[test]
fn strengths_by_thickness() {
    let steel = |name: &str, t| {
        let material = PlyMaterial::find(name).unwrap();
        let ply = Ply::of(material, millimetres(t), millimetres(18.0));
        let stress =
            |stress: Option<Stress>| stress.map(|stress| (stress / megapascals(1.0)).value.round());
        (stress(ply.yield_strength), stress(ply.tensile_strength))
    };
    for (name, t, strengths) in [
        ("S235 steel", 16.0, (235.0, 360.0)),
        ("S235 steel", 16.1, (225.0, 360.0)),
        ("S275 steel", 100.0, (235.0, 410.0)),
        ("S355 steel", 10.0, (355.0, 470.0)),
        ("S355 steel", 120.0, (295.0, 450.0)),
        ("ASTM A36 steel", 203.2, (248.0, 400.0)),
    ] {
        assert_eq!(
            steel(name, t),
            (Some(strengths.0), Some(strengths.1)),
            "{name} {t}"
        );
    }
    for (name, t) in [
        ("S355 steel", 2.9),
        ("S355 steel", 401.0),
        ("ASTM A36 steel", 203.3),
        ("6061-T6 aluminium, A-basis", 10.0),
    ] {
        assert_eq!(steel(name, t), (None, None), "{name} {t}");
    }
}

const HOLES: [HoleKind; 6] = [
    HoleKind::Standard,
    HoleKind::Oversize,
    HoleKind::ShortSlotAcross,
    HoleKind::ShortSlotAlong,
    HoleKind::LongSlotAcross,
    HoleKind::LongSlotAlong,
];

fn methods() -> [PlyMethod; 4] {
    [
        PlyMethod::MachineDesign { design_factor: 2.0 },
        PlyMethod::Aisc360 {
            edition: AiscEdition::E2016,
            deformation_matters: false,
        },
        PlyMethod::En1993,
        PlyMethod::MilHdbk5 {
            ultimate_factor: 1.5,
            fitting_factor: 1.0,
        },
    ]
}

fn codes() -> [PlyMethod; 4] {
    [
        PlyMethod::Bs5950,
        PlyMethod::Is800,
        PlyMethod::As4100,
        PlyMethod::CsaS16,
    ]
}

fn plate(t: f64, hole: f64, e1: f64, e2: f64, p1: f64, p2: f64, w: f64) -> Ply {
    Ply {
        thickness: millimetres(t),
        hole: millimetres(hole),
        hole_kind: HoleKind::Standard,
        slot_length: None,
        yield_strength: Some(megapascals(275.0)),
        tensile_strength: Some(megapascals(430.0)),
        bearing_strength: Some(megapascals(700.0)),
        bearing_yield: None,
        end_distance: Some(millimetres(e1)),
        edge_distance: Some(millimetres(e2)),
        pitch: Some(millimetres(p1)),
        gauge: Some(millimetres(p2)),
        width: Some(millimetres(w)),
    }
}

proptest! {
    /// More ply never bears less, and the load at capacity uses exactly all of it.
    #[test]
    fn grows_with_thickness_distance_and_width(
        t in 2.0..40.0f64, e1 in 24.0..80.0f64, e2 in 24.0..80.0f64, p1 in 45.0..120.0f64,
        p2 in 45.0..120.0f64, w in 40.0..200.0f64, more in 0.1..20.0f64,
    ) {
        let d = millimetres(20.0);
        let bolt = bolt_of(800.0);
        let base = plate(t, 22.0, e1, e2, p1, p2, w);
        for method in methods() {
            let nominal = |ply: &Ply| -> Vec<_> {
                let modes = ply.assess(d, bolt, method).unwrap();
                let found = modes.iter().map(|mode| mode.outcome.found().copied());
                found.collect()
            };
            let modes = nominal(&base);
            for larger in [
                plate(t + more, 22.0, e1, e2, p1, p2, w),
                plate(t, 22.0, e1 + more, e2, p1, p2, w),
                plate(t, 22.0, e1, e2 + more, p1, p2, w),
                plate(t, 22.0, e1, e2, p1 + more, p2, w),
                plate(t, 22.0, e1, e2, p1, p2 + more, w),
                plate(t, 22.0, e1, e2, p1, p2, w + more),
            ] {
                for (a, b) in modes.iter().zip(nominal(&larger)) {
                    // Of sheet too thin for its bearing strengths MIL-HDBK-5 knows nothing, until it is thicker.
                    prop_assert!(a.is_none() || b.is_some());
                    let load = |found: &PlyResistance| found.resistance.nominal;
                    prop_assert!(b.as_ref().map(load) >= a.as_ref().map(load));
                }
            }
            for mode in modes.into_iter().flatten() {
                prop_assert!(mode.derivation().check().is_ok());
                let load = mode.resistance.at(Level::Nominal).unwrap();
                let check = mode.check(load, Level::Nominal, 1).unwrap();
                prop_assert!((check.utilisation.value - 1.0).abs() < 1e-15);
            }
        }
    }

    /// The same of the codes with a design resistance only, or with one beside the nominal.
    #[test]
    fn codes_grow_with_thickness_distance_and_width(
        t in 2.0..40.0f64, e1 in 24.0..80.0f64, p1 in 45.0..120.0f64, w in 40.0..200.0f64, more in 0.1..20.0f64,
    ) {
        let d = millimetres(20.0);
        let base = plate(t, 22.0, e1, 60.0, p1, 80.0, w);
        for method in codes() {
            let modes = |ply: &Ply| ply.assess(d, bolt_of(800.0), method).unwrap();
            for larger in [
                plate(t + more, 22.0, e1, 60.0, p1, 80.0, w),
                plate(t, 22.0, e1 + more, 60.0, p1, 80.0, w),
                plate(t, 22.0, e1, 60.0, p1 + more, 80.0, w),
                plate(t, 22.0, e1, 60.0, p1, 80.0, w + more),
            ] {
                for (a, b) in modes(&base).iter().zip(modes(&larger)) {
                    let load = |outcome: &PlyOutcome| outcome.found().map(|found| found.resistance.design);
                    prop_assert_eq!(load(&a.outcome).is_some(), load(&b.outcome).is_some());
                    prop_assert!(load(&b.outcome) >= load(&a.outcome));
                }
            }
            for mode in modes(&base) {
                if let Some(found) = mode.outcome.found() {
                    prop_assert!(found.derivation().check().is_ok(), "{:?}", found.derivation().check());
                    let load = found.resistance.at(Level::Design).unwrap();
                    let check = found.check(load, Level::Design, 1).unwrap();
                    prop_assert!((check.utilisation.value - 1.0).abs() < 1e-15);
                    prop_assert_eq!(found.resistance.at(Level::Nominal).is_err(), method == PlyMethod::Bs5950);
                }
            }
        }
    }

    #[test]
    fn no_number_breaks_it(n in proptest::array::uniform8(any::<f64>()), d in any::<f64>(), fub in any::<f64>()) {
        let odd = plate(n[0], n[1], n[2], n[3], n[4], n[5], n[6]);
        let odd = Ply { tensile_strength: Some(megapascals(n[7])), ..odd };
        let odd = Ply { slot_length: Some(millimetres(n[0])), ..odd };
        let bolt = PlyBolt { yield_strength: Some(megapascals(d)), tensile_strength: Some(megapascals(fub)) };
        for (method, hole_kind) in methods().into_iter().chain(codes()).flat_map(|method| HOLES.map(|hole| (method, hole))) {
            for odd in [odd, Ply { hole_kind, slot_length: None, ..odd }, Ply { hole_kind, ..odd }] {
                let _ = odd.distances(millimetres(d), method.into(), DistanceConditions::default());
                let _ = odd.distances(millimetres(d), DistanceRule::Bs5950, DistanceConditions::default());
                if let Ok(modes) = odd.assess(millimetres(d), bolt, method) {
                    for found in modes.iter().filter_map(|mode| mode.outcome.found()) {
                        let load = found.resistance.nominal.or(found.resistance.design);
                        prop_assert!(load.unwrap().value.is_finite());
                    }
                }
            }
        }
        let slot = Some(Slot { length: millimetres(n[1]), direction: SlotDirection::Along });
        for hole in [Hole { diameter: millimetres(n[2]), slot }, Hole { diameter: millimetres(n[3]), slot: None }] {
            for thread in ["M12", "M39", "3/4-10 UNC", "#1-64 UNC"] {
                for rule in [HoleRule::En1090, HoleRule::Steelwork, HoleRule::MachineDesign, HoleRule::Aisc360 { edition: AiscEdition::E2016 }] {
                    let _ = hole.classify(&thread.parse().unwrap(), rule);
                }
            }
        }
    }
}
