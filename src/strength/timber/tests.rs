//! Limits of both methods for timber, and both sides of them.

use super::*;
use crate::derivation::Derivation;
use crate::tables::timber::TimberKind;
use crate::units::{degrees, from_base, kilograms_per_cubic_metre, ksi, megapascals, newtons};
use alloc::string::{String, ToString};
use alloc::vec::Vec;

const NDS: TimberMethod = TimberMethod::Nds {
    bending_yield: ksi(45.0),
    adjustment: 1.0,
};

fn en(kmod: f64, gamma_m: f64) -> TimberMethod {
    TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod,
        gamma_m,
    }
}

fn bolt() -> BoltStrength {
    BoltStrength::stated(
        millimetres(12.0),
        None,
        Some(megapascals(400.0)),
        megapascals(400.0),
    )
    .unwrap()
}

fn wood(thickness: f64, angle: f64) -> TimberMember {
    TimberMember {
        thickness: millimetres(thickness),
        material: MemberMaterial::Wood(Wood {
            kind: TimberKind::Softwood,
            specific_gravity: Some(0.5),
            characteristic_density: Some(kilograms_per_cubic_metre(350.0)),
            grain_angle: degrees(angle),
            provenance: None,
        }),
    }
}

fn plate(thickness: f64, hole: f64) -> TimberMember {
    TimberMember::steel(
        millimetres(thickness),
        megapascals(400.0),
        millimetres(hole),
    )
}

fn pair(diameter: f64, main: TimberMember, side: TimberMember) -> TimberConnection {
    TimberConnection {
        diameter: millimetres(diameter),
        main,
        side,
        far_side: None,
        gap: millimetres(0.0),
    }
}

fn refusal(joint: &TimberConnection, method: TimberMethod) -> Option<String> {
    joint
        .resistance(&bolt(), method)
        .err()
        .map(|error| error.to_string())
}

/// NDS 2018 12.1.3 and EN 1995-1-1 8.5.1.1: bolts of 1/4 to 1 in, of 6 to 30 mm; kmod 0.1 to 1.1, gammaM from 1, and an adjustment
/// of 0.01 to 1.6.
#[test]
fn sizes_and_factors_at_their_limits() {
    let with = |diameter: f64| pair(diameter, wood(100.0, 0.0), wood(50.0, 0.0));
    let steps = |adjustment| TimberMethod::Nds {
        bending_yield: ksi(45.0),
        adjustment,
    };
    for (diameter, method, refused) in [
        (6.35, NDS, None),
        (6.349, NDS, Some("bolt diameter")),
        (3.0, NDS, Some("bolt diameter")),
        (25.4, NDS, None),
        (25.41, NDS, Some("bolt diameter")),
        (6.0, en(0.8, 1.3), None),
        (5.999, en(0.8, 1.3), Some("bolt diameter")),
        (30.0, en(0.8, 1.3), None),
        (30.001, en(0.8, 1.3), Some("bolt diameter")),
        (12.0, steps(0.01), None),
        (12.0, steps(0.0099), Some("adjustment of the timber joint")),
        (12.0, steps(1.6), None),
        (12.0, steps(1.601), Some("adjustment of the timber joint")),
        (12.0, en(0.1, 1.3), None),
        (12.0, en(0.099, 1.3), Some("kmod")),
        (12.0, en(1.1, 1.3), None),
        (12.0, en(1.101, 1.3), Some("kmod")),
        (12.0, en(0.8, 1.0), None),
        (12.0, en(0.8, 0.999), Some("gammaM")),
        (12.0, en(0.8, 100.0), None),
        (12.0, en(0.8, 100.1), Some("gammaM")),
    ] {
        let found = refusal(&with(diameter), method);
        match refused {
            None => assert_eq!(found, None, "{diameter} {method:?}"),
            Some(name) => assert!(
                found.is_some_and(|text| text.contains(name)),
                "{diameter} {method:?}"
            ),
        }
    }
}

/// A size that rounding moved off its limit is of the method.
#[test]
fn sizes_at_their_limits_but_for_rounding() {
    let slack = millimetres(1e-7);
    let with = |diameter: Length, method| {
        let joint = TimberConnection {
            diameter,
            ..pair(12.0, wood(100.0, 0.0), wood(50.0, 0.0))
        };
        refusal(&joint, method).is_none()
    };
    let en = en(0.8, 1.3);
    assert!(with(millimetres(6.0) - slack, en) && !with(millimetres(6.0) - 2.0 * slack, en));
    assert!(with(millimetres(30.0) + slack, en) && !with(millimetres(30.0) + 2.0 * slack, en));
    let row = |inch: f64| {
        let diameter: Length = from_base(inch * 0.0254);
        assert!((diameter.value / 0.0254 - inch).abs() <= 0.0);
        nds_group_action(&NdsRow {
            bolts: 6,
            pitch: inches(4.0),
            diameter,
            main_stiffness: newtons(60e6),
            side_stiffness: newtons(30e6),
            metal: false,
        })
    };
    assert!(row(1.0 + 1e-6).is_ok() && row(1.0 + 2e-6).is_err());
    assert!(row(0.25 - 1e-9).unwrap().value < 1.0);
}

/// NDS 2018 Table 12.3.3A has gravities from 0.31 to 0.73; sawn timber to heavy hardwood is 250 to 1000 kg/m3.
#[test]
fn gravities_and_densities_at_their_limits() {
    let of = |gravity, density| {
        let mut member = wood(100.0, 0.0);
        if let MemberMaterial::Wood(wood) = &mut member.material {
            wood.specific_gravity = Some(gravity);
            wood.characteristic_density = Some(kilograms_per_cubic_metre(density));
        }
        pair(12.0, member, member)
    };
    for (gravity, holds) in [
        (0.31, true),
        (0.309, false),
        (0.73, true),
        (0.731, false),
        (0.1, false),
    ] {
        assert_eq!(
            refusal(&of(gravity, 350.0), NDS).is_none(),
            holds,
            "{gravity}"
        );
    }
    for (density, holds) in [
        (250.0, true),
        (249.0, false),
        (1000.0, true),
        (1001.0, false),
    ] {
        assert_eq!(
            refusal(&of(0.5, density), en(0.8, 1.3)).is_none(),
            holds,
            "{density}"
        );
    }
}

/// A load lies at 0 to 90 degrees to the grain, a plate has a hole that the bolt passes.
#[test]
fn members_at_their_limits() {
    for method in [en(0.8, 1.3), NDS] {
        for (angle, holds) in [(0.0, true), (90.0, true), (-0.1, false), (90.1, false)] {
            let joint = pair(12.0, wood(100.0, angle), wood(50.0, 0.0));
            assert_eq!(refusal(&joint, method).is_none(), holds, "{angle}");
            let text = wood(100.0, angle)
                .check(millimetres(12.0))
                .err()
                .map(|error| error.to_string());
            assert_eq!(text.is_none(), holds);
            assert!(text.is_none_or(|text| text.contains("angle of load to grain")));
        }
        for (hole, holds) in [(12.0, true), (11.99, false), (5.0, false)] {
            let joint = pair(12.0, wood(100.0, 0.0), plate(6.0, hole));
            let text = refusal(&joint, method);
            assert_eq!(text.is_none(), holds, "{hole}");
            assert!(text.is_none_or(|text| text.contains("hole of the plate")));
        }
        let mut joint = pair(12.0, wood(100.0, 0.0), wood(50.0, 0.0));
        joint.main.thickness = millimetres(1.1e6);
        assert!(refusal(&joint, method).is_some_and(|text| text.contains("thickness of a member")));
        let mut joint = pair(12.0, wood(100.0, 0.0), wood(50.0, 0.0));
        joint.gap = millimetres(1.1e6);
        assert!(
            refusal(&joint, method).is_some_and(|text| text.contains("gap between the members"))
        );
    }
    let right = degrees(90.0);
    let effective = |angle| en_effective_bolts(4, millimetres(80.0), millimetres(16.0), angle);
    assert!(effective(right).is_ok() && effective(degrees(0.0)).is_ok());
    assert!(effective(degrees(90.1)).is_err() && effective(degrees(-0.1)).is_err());
}

/// EN 1995-1-1, 8.2.3: a plate as thick as the bolt is a thick one where its hole is less than 0.1 d wider; at 0.1 d the bolt turns
/// in it. Once a hole of 22 mm counted as tight on 20 mm, and one of 17.6 mm on 16 mm did not: their differences in binary.
#[test]
fn a_hole_a_tenth_wider_is_loose() {
    for diameter in [8.0, 10.0, 12.0, 16.0, 20.0, 24.0, 30.0] {
        let bears = |hole| {
            let joint = pair(diameter, wood(200.0, 0.0), plate(diameter, hole));
            joint.resistance(&bolt(), en(0.8, 1.3)).unwrap().load
        };
        let loose = bears(1.2 * diameter);
        assert_eq!(bears(1.1 * diameter), loose, "{diameter}");
        assert!(bears(1.099 * diameter) > loose, "{diameter}");
    }
}

/// A plate is a plate, whether it is called the main or the side member.
#[test]
fn a_plate_in_single_shear_may_be_either_member() {
    for method in [en(0.8, 1.3), NDS] {
        let load = |main, side| {
            pair(12.0, main, side)
                .resistance(&bolt(), method)
                .unwrap()
                .load
        };
        let (one, other) = (
            load(wood(80.0, 0.0), plate(6.0, 13.0)),
            load(plate(6.0, 13.0), wood(80.0, 0.0)),
        );
        assert!(((one - other) / one).value.abs() < 1e-12, "{method}");
    }
}

/// NDS 2018 12.3.2: plates from 1/4 in bear 1.5 Fu, thinner ones 1.375 Fu.
#[test]
fn bearing_of_plates_at_a_quarter_inch() {
    for (thickness, factor) in [
        (inches(0.25), 1.5),
        (from_base(0.25 * 0.0254 - 1e-10), 1.5),
        (inches(0.2499), 1.375),
        (inches(0.1), 1.375),
        (inches(0.5), 1.5),
    ] {
        assert!(
            (nds::steel_factor(thickness) - factor).abs() < 1e-12,
            "{thickness:?}"
        );
    }
}

/// Of modes with the same load the first is named: double shear of 2 in between two of 1 in, 1 in bolt. Im = D lm Fem / 4 = Is.
#[test]
fn the_first_of_equal_modes_governs() {
    let thin = wood(25.4, 0.0);
    let joint = TimberConnection {
        far_side: Some(thin),
        ..pair(25.4, wood(50.8, 0.0), thin)
    };
    let found = joint.resistance(&bolt(), NDS).unwrap();
    assert_eq!(found.governing.name, "Im");
    let loads: Vec<Force> = found
        .modes()
        .filter(|mode| ["Im", "Is"].contains(&mode.name))
        .map(|mode| mode.value)
        .collect();
    assert_eq!(loads[0], loads[1]);
}

/// Of two outer members that bear the same the first stands in the answer.
#[test]
fn the_first_of_equal_sides_counts() {
    let first = wood(40.0, 0.0);
    let mut other = first;
    if let MemberMaterial::Wood(wood) = &mut other.material {
        wood.characteristic_density = Some(kilograms_per_cubic_metre(400.0));
    }
    let joint = TimberConnection {
        far_side: Some(other),
        ..pair(12.0, wood(80.0, 0.0), first)
    };
    assert_eq!(joint.resistance(&bolt(), NDS).unwrap().side, first);
    // Two plates that differ in their holes, both tight.
    let joint = TimberConnection {
        far_side: Some(plate(6.0, 12.6)),
        ..pair(12.0, wood(80.0, 0.0), plate(6.0, 12.5))
    };
    assert_eq!(
        joint.resistance(&bolt(), en(0.8, 1.3)).unwrap().side,
        plate(6.0, 12.5)
    );
}

/// The bending yield strength may be what NDS takes of the bolt, but for the last digit; 45 ksi of bolts of 60 ksi and more.
#[test]
fn bending_yield_at_its_limit() {
    let greatest = nds_bending_yield(&bolt()).unwrap();
    let with = |bending_yield| {
        let method = TimberMethod::Nds {
            bending_yield,
            adjustment: 1.0,
        };
        refusal(&pair(12.0, wood(100.0, 0.0), wood(50.0, 0.0)), method)
    };
    assert_eq!(with(greatest), None);
    assert_eq!(with(greatest * (1.0 + 1e-9)), None);
    assert!(
        with(greatest * (1.0 + 2e-9)).is_some_and(|text| text.contains("bending yield strength"))
    );
    let of = |tensile| {
        let bolt = BoltStrength::stated(inches(0.5), Some(ksi(30.0)), None, tensile);
        bolt.map(|bolt| {
            nds_bending_yield(&BoltStrength {
                yield_strength: None,
                ..bolt
            })
        })
    };
    assert_eq!(of(ksi(60.0)).unwrap(), Ok(ksi(45.0)));
    assert_eq!(of(ksi(60.0) * (1.0 - 1e-9)).unwrap(), Ok(ksi(45.0)));
    assert!(of(ksi(59.99)).unwrap().is_err());
}

/// NDS 12.3.7: the nominal diameter bears as long as thread lies in no more than a quarter of the member.
#[test]
fn thread_in_a_quarter_of_a_member() {
    let bearing = millimetres(40.0);
    let thread = "1/2-13 UNC".parse().unwrap();
    let quarter = 0.25 * bearing;
    for (own, counts) in [
        (quarter, false),
        (quarter + crate::units::SAME_LENGTH, false),
        (quarter + 2.0 * crate::units::SAME_LENGTH, true),
        (bearing + crate::units::SAME_LENGTH, true),
    ] {
        let member = MemberOnBolt {
            bearing,
            thread: own,
        };
        let found = nds_bearing_diameter(&thread, &[member]).unwrap();
        assert_eq!(found.threaded_member, counts.then_some(1), "{own:?}");
    }
    let over = bearing + 2.0 * crate::units::SAME_LENGTH;
    assert!(
        nds_bearing_diameter(
            &thread,
            &[MemberOnBolt {
                bearing,
                thread: over
            }]
        )
        .is_err()
    );
}

fn distances(angle: f64, of: TimberDistances, method: TimberMethod) -> DistanceCheck {
    of.judged(
        &wood(100.0, angle),
        millimetres(12.0),
        from_base(4.0),
        method,
    )
    .unwrap()
}

fn least(check: &DistanceCheck, fact: TimberFact) -> Option<f64> {
    let rule = check.rules.iter().find(|rule| rule.fact == fact)?;
    rule.least.map(|least| least.value * 1e3)
}

/// EN 1995-1-1 Table 8.4: an end that is never loaded wants (1 + 6 sin a) d, at least 4 d: from 30 degrees on the former.
#[test]
fn unloaded_ends_by_angle() {
    let of = TimberDistances {
        end_never_loaded: true,
        ..TimberDistances::default()
    };
    for (angle, in_d) in [
        (10.0, 4.0),
        (30.0, 4.0),
        (45.0, 5.242_641),
        (60.0, 6.196_152),
    ] {
        let found = least(&distances(angle, of, en(0.8, 1.3)), TimberFact::EndDistance).unwrap();
        assert!((found - 12.0 * in_d).abs() < 1e-4, "{angle}: {found}");
    }
}

/// NDS 12.5.1: outer rows of bolts along the grain lie at most 5 in apart; across the grain they may lie further. A distance that
/// is short or not, with nothing between, has no length from which it counts in full.
#[test]
fn what_nds_asks_by_angle() {
    let of = TimberDistances {
        edge: Some(millimetres(40.0)),
        gauge: Some(millimetres(60.0)),
        row_spread: Some(inches(5.1)),
        ..TimberDistances::default()
    };
    for (angle, asked) in [(0.0, true), (89.9, true), (90.0, false)] {
        let check = distances(angle, of, NDS);
        let spread = check
            .rules
            .iter()
            .find(|rule| rule.fact == TimberFact::RowSpread);
        assert_eq!(
            spread.map(Requirement::judged),
            asked.then_some(Judged::TooGreat),
            "{angle}"
        );
    }
    let along = distances(0.0, of, NDS);
    let full = |fact| {
        along
            .rules
            .iter()
            .find(|rule| rule.fact == fact)
            .and_then(|rule| rule.full)
    };
    assert!(full(TimberFact::EndDistance).is_some());
    assert_eq!(full(TimberFact::EdgeDistance), None);
    assert_eq!(full(TimberFact::Gauge), None);
}

/// A length that rounding moved off its limit is judged as the limit is.
#[test]
fn requirements_at_their_limits() {
    use crate::units::SAME_LENGTH;
    let clause = crate::tables::methods::STATICS;
    let (least, full, most) = (millimetres(20.0), millimetres(40.0), millimetres(60.0));
    for (own, judged) in [
        (least - 2.0 * SAME_LENGTH, Judged::TooSmall),
        (least - SAME_LENGTH, Judged::Reduces),
        (full - 2.0 * SAME_LENGTH, Judged::Reduces),
        (full - SAME_LENGTH, Judged::Holds),
        (most + SAME_LENGTH, Judged::Holds),
        (most + 2.0 * SAME_LENGTH, Judged::TooGreat),
    ] {
        let rule = Requirement::new(TimberFact::Pitch, Some(own), clause).unwrap();
        let rule = rule.at_least(least).full_from(full).at_most(most);
        assert_eq!(rule.judged(), judged, "{own:?}");
        let share = if own < full - SAME_LENGTH {
            (own / full).value
        } else {
            1.0
        };
        assert!((rule.share().value - share).abs() < 1e-12, "{own:?}");
    }
}

/// NDS 2018 Eq. 11.3-1 by hand: six bolts at 4 in, E A of 14e6 and 7e6 lbf; gamma = 180 000 D^1.5 in timber on timber, 270 000
/// D^1.5 on steel. Under 1/4 in and of one bolt nothing is taken off; over 1 in there is no number.
#[test]
fn group_action_by_hand() {
    let row = |diameter: f64, bolts, metal| {
        let pound = crate::units::pounds_force;
        nds_group_action(&NdsRow {
            bolts,
            pitch: inches(4.0),
            diameter: inches(diameter),
            main_stiffness: pound(14e6),
            side_stiffness: pound(7e6),
            metal,
        })
        .map(|share| share.value)
    };
    for (diameter, bolts, metal, by_hand) in [
        (0.5, 6, false, 0.832_486_4),
        (0.5, 6, true, 0.777_428_5),
        (0.25, 6, false, 0.928_719_4),
        (0.2499, 6, false, 1.0),
        (0.1, 6, true, 1.0),
        (0.5, 1, false, 1.0),
    ] {
        let found = row(diameter, bolts, metal).unwrap();
        assert!(
            (found - by_hand).abs() < 1e-6,
            "{diameter} {bolts}: {found}"
        );
    }
    assert!(row(1.0, 6, false).is_ok());
    assert!(row(1.01, 6, false).is_err() && row(1.5, 6, false).is_err());
}

/// EN 1995-1-1, 8.5.1.1(4): four bolts at 80 mm of 16 mm along the grain count as 4^0.9 (80 / 208)^0.25 = 2.742; between along and
/// across in proportion to the angle.
#[test]
fn effective_bolts_by_hand() {
    for (angle, by_hand) in [(0.0, 2.742_273), (45.0, 3.371_136), (90.0, 4.0)] {
        let found =
            en_effective_bolts(4, millimetres(80.0), millimetres(16.0), degrees(angle)).unwrap();
        assert!((found - by_hand).abs() < 1e-5, "{angle}: {found}");
    }
}

fn symbols(working: &Derivation) -> Vec<String> {
    working
        .steps()
        .iter()
        .map(|step| step.symbol().to_string())
        .collect()
}

/// The working shows what the load came from: coefficients of the table without a gap, bearing loads a length with one; the factors
/// of distances and rows where they take something off; and of every formula the symbols in it.
#[test]
fn workings_show_what_counted() {
    let joint = pair(12.0, wood(100.0, 0.0), wood(50.0, 0.0));
    let of = |joint: &TimberConnection, method| joint.resistance(&bolt(), method).unwrap();
    let without = symbols(&of(&joint, NDS).derivation());
    let apart = TimberConnection {
        gap: millimetres(5.0),
        ..joint
    };
    let with = of(&apart, NDS).derivation();
    let shows = |all: &[String], one: &str| all.iter().any(|own| own == one);
    assert!(shows(&without, "k1") && !shows(&without, "qm"));
    assert!(!shows(&symbols(&with), "k1") && shows(&symbols(&with), "qm"));
    let source = |working: &Derivation| {
        let step = working.steps().iter().find(|step| step.symbol() == "ZIV");
        step.map(|step| step.formula().contains("sqrt((g)"))
            .unwrap()
    };
    assert!(source(&with) && !source(&of(&joint, NDS).derivation()));
    let ratio = |value: f64| -> Ratio { from_base(value) };
    for (geometry, group, reduced) in [
        (1.0, 1.0, false),
        (0.8, 1.0, true),
        (1.0, 0.9, true),
        (0.8, 0.9, true),
    ] {
        let found = of(&joint, NDS)
            .reduced(ratio(geometry), ratio(group))
            .unwrap();
        let working = found.derivation();
        working.check().unwrap();
        let last = working.steps().last().unwrap();
        assert_eq!(last.formula().contains("Cg"), reduced, "{geometry} {group}");
        assert_eq!(last.terms().len(), if reduced { 4 } else { 2 });
        let found = of(&joint, en(0.8, 1.3))
            .reduced(ratio(geometry), ratio(group))
            .unwrap();
        let working = found.derivation();
        working.check().unwrap();
        assert_eq!(
            shows(&symbols(&working), "kn"),
            reduced,
            "{geometry} {group}"
        );
        assert!(shows(&symbols(&working), "b"));
    }
    // A plate has no embedment strength, and no ratio of two.
    let plated = pair(12.0, wood(100.0, 0.0), plate(6.0, 13.0));
    assert!(!shows(
        &symbols(&of(&plated, en(0.8, 1.3)).derivation()),
        "b"
    ));
    for step in of(&joint, NDS).derivation().steps() {
        for term in step.terms() {
            let mut words = step.formula().split(|c: char| !c.is_ascii_alphanumeric());
            assert!(
                words.any(|word| *word == *term.symbol),
                "{} {}",
                step.formula(),
                term.symbol
            );
        }
    }
}

/// A washer's hole is as wide as the bolt but for rounding, and narrower than the washer. A cut washer is that of the size.
#[test]
fn washers_at_their_limits() {
    use crate::units::SAME_LENGTH;
    let d = millimetres(12.0);
    let of = |hole| TimberWasher {
        width: millimetres(40.0),
        thickness: millimetres(4.0),
        hole,
        square: false,
    };
    let bears =
        |hole| TimberWasher::bearing(Some(&of(hole)), d, Some(megapascals(2.5)), en(0.8, 1.3));
    assert!(bears(d).is_ok() && bears(d - SAME_LENGTH).is_ok());
    assert!(bears(d - 2.0 * SAME_LENGTH).is_err());
    assert!(bears(millimetres(40.0)).is_err() && bears(millimetres(39.9)).is_ok());
    // Type A wide of ASME B18.21.1 for 1/2 in, and the next one where the bolt is larger.
    let width = |diameter| {
        let [width, _] = TimberWasher::rules(None, diameter, NDS).unwrap();
        width.least.unwrap()
    };
    let own = width(inches(0.5));
    assert_eq!(width(inches(0.5) + SAME_LENGTH), own);
    assert!(width(inches(0.51)) > own);
}
