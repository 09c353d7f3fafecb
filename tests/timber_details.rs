//! Bolts in timber in their details: outer members that differ, thread in the bearing length, the strength of the
//! bolt, distances, rows, holes and washers.

use proptest::prelude::*;
use shankline::prelude::*;
use shankline::strength::check::Level;
use shankline::strength::timber::{
    BoltRow, Judged, MemberMaterial, MemberOnBolt, NdsRow, TimberConnection, TimberDistances,
    TimberFact, TimberMember, TimberMethod, TimberWasher, Wood, en_axial_capacity,
    en_effective_bolts, nds_bearing_diameter, nds_bending_yield, nds_group_action,
};
use shankline::tables::timber::{Timber, TimberKind};
use shankline::units::{Ratio, degrees, kilograms_per_cubic_metre, pound_force, pounds_force};

const NDS: TimberMethod = TimberMethod::Nds {
    bending_yield: ksi(45.0),
    adjustment: 1.0,
};
const EN: TimberMethod = TimberMethod::En1995 {
    axial: newtons(0.0),
    kmod: 0.8,
    gamma_m: 1.3,
};
const NO_GAP: Length = millimetres(0.0);

fn of(name: &str, thickness: Length, angle: f64) -> TimberMember {
    TimberMember::wood(thickness, Timber::find(name).unwrap(), degrees(angle))
}

fn three(first: TimberMember, main: TimberMember, last: TimberMember) -> TimberConnection {
    TimberConnection {
        diameter: millimetres(16.0),
        main,
        side: first,
        far_side: Some(last),
        gap: NO_GAP,
    }
}

fn bolt() -> BoltStrength {
    PropertyClass::Class8_8.strength(millimetres(16.0)).unwrap()
}

fn ratio(value: f64) -> Ratio {
    Ratio::new::<shankline::uom::si::ratio::ratio>(value)
}

/// A stronger outer member used to switch the check off: 450 % of the load became "holds".
#[test]
fn a_stronger_outer_member_hides_nothing() {
    let t = millimetres(40.0);
    let (c24, gl, hem, pine) = (
        of("C24", t, 0.0),
        of("GL 24h", t, 0.0),
        of("Hem-Fir", t, 0.0),
        of("Southern Pine", t, 0.0),
    );
    for (weak, strong, method) in [(c24, gl, EN), (hem, pine, NDS)] {
        let load = |first, last| {
            let main = TimberMember {
                thickness: 3.0 * t,
                ..weak
            };
            let found = three(first, main, last)
                .resistance(&bolt(), method)
                .unwrap();
            found.derivation().check().unwrap();
            assert!(found.side == weak || first == strong && last == strong);
            found.load
        };
        let alike = load(weak, weak);
        assert_eq!(load(weak, strong), alike);
        assert_eq!(load(strong, weak), alike);
        assert!(load(strong, strong) > alike);
    }
    // NDS 12.3.8: as thin as the thinner, here as weak as the weaker too.
    let (thin, thick) = (of("Southern Pine", millimetres(30.0), 0.0), hem);
    let mixed = three(thin, pine, thick).resistance(&bolt(), NDS).unwrap();
    let both = of("Hem-Fir", millimetres(30.0), 0.0);
    assert_eq!(mixed.side, both);
    assert_eq!(
        mixed.load,
        three(both, pine, both)
            .resistance(&bolt(), NDS)
            .unwrap()
            .load
    );
    mixed.derivation().check().unwrap();
    // Steel on one side, timber on the other: the lesser; steel on steel is no timber joint.
    let plate = TimberMember::steel(millimetres(6.0), megapascals(360.0), millimetres(17.0));
    for method in [EN, NDS] {
        let (side, main) = if method == EN { (c24, c24) } else { (hem, hem) };
        let load = |first, last| {
            let found = three(first, main, last)
                .resistance(&bolt(), method)
                .unwrap();
            found.derivation().check().unwrap();
            found.load
        };
        let mixed = load(side, plate);
        assert!(mixed <= load(side, side) && mixed <= load(plate, plate));
        assert_eq!(mixed, load(plate, side));
        let inside = three(side, plate, plate)
            .resistance(&bolt(), method)
            .unwrap_err();
        assert!(
            inside.to_string().contains("steel lies on steel"),
            "{inside}"
        );
    }
}

/// The plane is on full shank, the thread begins 1/4 in behind it: 1009 lbf with the full diameter, 834 with
/// the root, both by NDS Table 12.3.1A, computed outside this crate for plies 0.02 in under 2-1/2 and 1-1/2 in.
#[test]
fn thread_in_the_bearing_length_takes_the_root() {
    let bolt = AstmGrade::A307A.strength(inches(0.75)).unwrap();
    let thread: Thread = "3/4-10 UNC".parse().unwrap();
    let rail = of("Douglas Fir-Larch", inches(2.48), 0.0);
    let post = of("Douglas Fir-Larch", inches(1.48), 0.0);
    let load = |diameter| {
        let joint = TimberConnection {
            diameter,
            main: rail,
            side: post,
            far_side: None,
            gap: NO_GAP,
        };
        let found = joint.resistance(&bolt, NDS).unwrap();
        found.load.get::<pound_force>()
    };
    assert!((load(inches(0.75)) - 1009.0).abs() < 0.6);
    // A screw of 5 in: 1.75 in of thread, run-out 0.5 in.
    let body = inches(2.75);
    let members = [
        MemberOnBolt::between(inches(0.0), inches(2.52), body).unwrap(),
        MemberOnBolt::between(inches(2.52), inches(4.04), body).unwrap(),
    ];
    let found = nds_bearing_diameter(&thread, &members).unwrap();
    assert_eq!(found.threaded_member, Some(2));
    assert_eq!(found.cautions().iter().count(), 1);
    assert!(
        (load(found.diameter) - 834.0).abs() < 0.6,
        "{}",
        load(found.diameter)
    );
    // A quarter exactly is still full.
    let quarter = |more: f64| {
        let thread = inches(0.375 + more);
        [MemberOnBolt {
            bearing: inches(1.5),
            thread,
        }]
    };
    let full = |members: &[MemberOnBolt]| {
        nds_bearing_diameter(&thread, members)
            .unwrap()
            .threaded_member
            .is_none()
    };
    assert!(full(&quarter(0.0)) && !full(&quarter(1e-6)));
    assert!(nds_bearing_diameter(&thread, &[]).is_err());
    assert!(MemberOnBolt::between(inches(2.0), inches(2.0), body).is_err());
    assert!(nds_bearing_diameter(&thread, &quarter(1.2)).is_err());
}

/// 300 ksi on a bolt of grade 2 used to be taken as it stood.
#[test]
fn bending_yield_is_held_against_the_grade() {
    let hem = of("Hem-Fir", millimetres(40.0), 0.0);
    let joint = three(hem, hem, hem);
    let of_bolt = |stress| TimberMethod::Nds {
        bending_yield: stress,
        adjustment: 1.0,
    };
    let grade_2 = SaeGrade::Grade2.strength(inches(0.625)).unwrap();
    let refused = joint.resistance(&grade_2, of_bolt(ksi(300.0))).unwrap_err();
    assert!(
        refused.to_string().contains("bending yield strength"),
        "{refused}"
    );
    // 57 and 74 ksi
    let greatest = nds_bending_yield(&grade_2).unwrap();
    assert!((greatest - ksi(65.5)).abs() < ksi(1e-9));
    assert!(joint.resistance(&grade_2, of_bolt(greatest)).is_ok());
    assert!(
        joint
            .resistance(&grade_2, of_bolt(1.001 * greatest))
            .is_err()
    );
    // A307 has no yield strength: 45 ksi, as the specification's own tables.
    let a307 = AstmGrade::A307A.strength(inches(0.625)).unwrap();
    assert!(joint.resistance(&a307, NDS).is_ok());
    assert!(joint.resistance(&a307, of_bolt(ksi(46.0))).is_err());
    let weak = BoltStrength::stated(inches(0.625), None, None, ksi(50.0)).unwrap();
    assert!(matches!(
        joint.resistance(&weak, NDS),
        Err(shankline::Error::NoValue { .. })
    ));
}

/// End and next bolt cost strength before they are faults: 7 D is for the full value, 3.5 D the least.
#[test]
fn short_distances_cost_strength_before_they_are_faults() {
    let d = inches(0.5);
    let judged = |own: TimberDistances, name: &str, angle: f64, slender: f64| {
        let member = of(name, inches(3.5), angle);
        own.judged(&member, d, ratio(slender), NDS).unwrap()
    };
    let end = |times: f64, never: bool| TimberDistances {
        end: Some(times * d),
        edge: Some(4.0 * d),
        end_never_loaded: never,
        ..TimberDistances::default()
    };
    // times D, never loaded, timber, judgement of the end, geometry factor
    let cases = [
        (7.0, false, "Hem-Fir", Judged::Holds, 1.0),
        (5.6, false, "Hem-Fir", Judged::Reduces, 0.8),
        (3.5, false, "Hem-Fir", Judged::Reduces, 0.5),
        (3.4, false, "Hem-Fir", Judged::TooSmall, 3.4 / 7.0),
        (5.0, false, "Red Oak", Judged::Holds, 1.0),
        (2.5, false, "Red Oak", Judged::Reduces, 0.5),
        (2.4, false, "Red Oak", Judged::TooSmall, 0.48),
        (4.0, true, "Hem-Fir", Judged::Holds, 1.0),
        (2.0, true, "Hem-Fir", Judged::Reduces, 0.5),
        (1.9, true, "Hem-Fir", Judged::TooSmall, 0.475),
    ];
    for (times, never, name, judgement, factor) in cases {
        let found = judged(end(times, never), name, 0.0, 3.0);
        assert_eq!(found.rules[0].judged(), judgement, "{times} {name}");
        assert!(
            (found.geometry.value - factor).abs() < 1e-12,
            "{times} {name}"
        );
        assert_eq!(found.missing().count(), 0);
        assert_eq!(found.rules[0].cautions().iter().count(), 1);
    }
    // Across the grain the edge that the load acts towards has no reduction: 4 D or a fault.
    let across = judged(end(3.9, false), "Hem-Fir", 90.0, 3.0);
    assert_eq!(across.faults().count(), 1);
    // The least of all: end 0.8, next bolt 3 D of 4 D.
    let both = TimberDistances {
        pitch: Some(3.0 * d),
        ..end(5.6, false)
    };
    assert!((judged(both, "Hem-Fir", 0.0, 3.0).geometry.value - 0.75).abs() < 1e-12);
    let close = TimberDistances {
        pitch: Some(2.9 * d),
        ..end(7.0, false)
    };
    assert_eq!(
        judged(close, "Hem-Fir", 0.0, 3.0)
            .faults()
            .next()
            .unwrap()
            .fact,
        TimberFact::Pitch
    );
    // Nothing known: end and edge are missing, nothing is taken for good.
    let unknown = judged(TimberDistances::default(), "Hem-Fir", 0.0, 3.0);
    let missing: Vec<TimberFact> = unknown.missing().collect();
    assert_eq!(missing, [TimberFact::EndDistance, TimberFact::EdgeDistance]);
    // It goes into the resistance and its working.
    let hem = of("Hem-Fir", millimetres(40.0), 0.0);
    let whole = three(hem, hem, hem).resistance(&bolt(), NDS).unwrap();
    let half = whole.reduced(ratio(0.5), ratio(0.9)).unwrap();
    let allowable = |found: &shankline::strength::timber::TimberResistance| {
        found.resistance.at(Level::Allowable).unwrap()
    };
    assert!(((allowable(&half) / allowable(&whole)).value - 0.45).abs() < 1e-12);
    half.derivation().check().unwrap();
    assert_eq!(half.load, whole.load);
    for wrong in [0.0, -1.0, 1.1, f64::NAN] {
        assert!(whole.reduced(ratio(wrong), ratio(1.0)).is_err());
        assert!(whole.reduced(ratio(1.0), ratio(wrong)).is_err());
    }
    let c24 = of("C24", millimetres(40.0), 0.0);
    let en = three(c24, c24, c24).resistance(&bolt(), EN).unwrap();
    en.reduced(ratio(1.0), ratio(0.7))
        .unwrap()
        .derivation()
        .check()
        .unwrap();
}

/// Rows across the grain: l/D is the lesser of main and side members (errata of July 2020), so that a slender main member
/// between thin sides wants no more than its sides.
#[test]
fn rows_go_by_the_lesser_slenderness() {
    let d = inches(0.5);
    let side = of("Hem-Fir", inches(0.75), 0.0);
    let main = of("Hem-Fir", inches(5.5), 90.0);
    let joint = TimberConnection {
        diameter: d,
        ..three(side, main, side)
    };
    let slender = joint.slenderness(d).unwrap();
    assert!((slender.value - 3.0).abs() < 1e-12);
    let own = TimberDistances {
        end: Some(4.0 * d),
        edge: Some(4.0 * d),
        gauge: Some(3.2 * d),
        row_spread: Some(3.2 * d),
        ..TimberDistances::default()
    };
    let gauge = |slender| {
        let found = own.judged(&main, d, slender, NDS).unwrap();
        let rule = found
            .rules
            .iter()
            .find(|rule| rule.fact == TimberFact::Gauge);
        (rule.unwrap().least.unwrap(), rule.unwrap().judged())
    };
    let (least, judged) = gauge(slender);
    assert!((least - 3.125 * d).abs() < inches(1e-9)); // (5 x 1.5 + 10 x 0.5) / 8
    assert_eq!(judged, Judged::Holds);
    assert_eq!(gauge(main.thickness / d).1, Judged::TooSmall); // 5 D by its own 11
    // Along the grain slender bolts keep half the gauge from the edge, and outer rows 5 in from each other.
    let post = of("Hem-Fir", inches(5.5), 0.0);
    let wide = TimberDistances {
        end: Some(7.0 * d),
        edge: Some(2.0 * d),
        gauge: Some(inches(3.0)),
        row_spread: Some(inches(6.0)),
        ..TimberDistances::default()
    };
    let faults = |own: TimberDistances, slender| {
        let found = own.judged(&post, d, ratio(slender), NDS).unwrap();
        found.faults().map(|rule| rule.fact).collect::<Vec<_>>()
    };
    assert_eq!(faults(wide, 6.0), [TimberFact::RowSpread]);
    assert_eq!(
        faults(wide, 6.1),
        [TimberFact::EdgeDistance, TimberFact::RowSpread]
    );
    let unknown = TimberDistances {
        row_spread: None,
        ..wide
    };
    let found = unknown.judged(&post, d, ratio(6.0), NDS).unwrap();
    assert_eq!(found.missing().collect::<Vec<_>>(), [TimberFact::RowSpread]);
}

/// NDS Tables 11.3.6A and C, D = 1 in, s = 4 in, E = 1 400 000 psi (steel 30 000 000), as recalled: two places.
#[test]
fn group_action_gives_the_tables() {
    let wood = |area: f64| pounds_force(1.4e6 * area);
    let steel = |area: f64| pounds_force(30e6 * area);
    let rows: [(Force, Force, bool, [f64; 11]); 4] = [
        (
            wood(10.0),
            wood(5.0),
            false,
            [
                0.98, 0.92, 0.84, 0.75, 0.68, 0.61, 0.55, 0.50, 0.45, 0.41, 0.38,
            ],
        ),
        (
            wood(5.0),
            wood(5.0),
            false,
            [
                1.00, 0.97, 0.91, 0.85, 0.78, 0.71, 0.64, 0.59, 0.54, 0.49, 0.45,
            ],
        ),
        (
            wood(64.0),
            wood(64.0),
            false,
            [
                1.00, 1.00, 0.99, 0.98, 0.97, 0.96, 0.95, 0.93, 0.91, 0.90, 0.88,
            ],
        ),
        (
            wood(5.0),
            steel(5.0 / 12.0),
            true,
            [
                0.97, 0.89, 0.80, 0.70, 0.62, 0.55, 0.49, 0.44, 0.40, 0.37, 0.34,
            ],
        ),
    ];
    for (main_stiffness, side_stiffness, metal, printed) in rows {
        for (bolts, expected) in (2..).zip(printed) {
            let row = NdsRow {
                bolts,
                pitch: inches(4.0),
                diameter: inches(1.0),
                main_stiffness,
                side_stiffness,
                metal,
            };
            let found = nds_group_action(&row).unwrap().value;
            assert!(
                (found - expected).abs() < 0.0056,
                "{bolts}: {found} for {expected}"
            );
            let swapped = NdsRow {
                main_stiffness: side_stiffness,
                side_stiffness: main_stiffness,
                ..row
            };
            assert!((nds_group_action(&swapped).unwrap().value - found).abs() < 1e-12);
        }
    }
}

/// Number, pitch and stiffnesses are asked for, never assumed; one bolt is no row.
#[test]
fn rows_say_what_is_missing() {
    let beam = of("C24", millimetres(60.0), 0.0);
    let post = of("C24", millimetres(60.0), 90.0);
    let m16 = millimetres(16.0);
    let factor =
        |row: BoltRow, joint: &TimberConnection, method| row.factor(joint, m16, method).unwrap();
    let joint = three(beam, post, beam);
    let unknown = factor(BoltRow::default(), &joint, EN);
    assert_eq!(
        (unknown.share, unknown.missing),
        (None, vec![TimberFact::BoltsInRow])
    );
    let one = BoltRow {
        bolts: Some(1),
        ..BoltRow::default()
    };
    for method in [NDS, EN] {
        assert_eq!(factor(one, &joint, method).share, Some(ratio(1.0)));
    }
    let three_bolts = BoltRow {
        bolts: Some(3),
        ..BoltRow::default()
    };
    assert_eq!(
        factor(three_bolts, &joint, NDS).missing,
        [
            TimberFact::Pitch,
            TimberFact::MainStiffness,
            TimberFact::SideStiffness
        ]
    );
    assert_eq!(factor(three_bolts, &joint, EN).missing, [TimberFact::Pitch]);
    // The beam is along the grain: 3^0.9 (112 / 208)^0.25 / 3 = 0.7675.
    let row = BoltRow {
        pitch: Some(millimetres(112.0)),
        ..three_bolts
    };
    let found = factor(row, &joint, EN);
    assert!(
        (found.share.unwrap().value - 0.7675).abs() < 5e-5,
        "{found:?}"
    );
    assert_eq!(found.cautions.iter().count(), 1);
    // Across the grain of all members each counts whole.
    let across = three(post, post, post);
    assert_eq!(factor(row, &across, EN).share, Some(ratio(1.0)));
}

/// A 1 in hole for a 1/2 in bolt used to hold.
#[test]
fn holes_and_washers_are_judged() {
    let post = of("Hem-Fir", inches(3.5), 0.0);
    let hole = |own: f64, method| {
        let (member, own, d) = if method == NDS {
            (post, inches(own), inches(0.5))
        } else {
            (
                of("C24", millimetres(60.0), 0.0),
                millimetres(own),
                millimetres(12.0),
            )
        };
        member.hole_rule(Some(own), d, method).unwrap().judged()
    };
    assert_eq!(hole(1.0, NDS), Judged::TooGreat);
    assert_eq!(hole(0.5625, NDS), Judged::Holds);
    assert_eq!(hole(0.53125, NDS), Judged::Holds);
    assert_eq!(hole(0.5, NDS), Judged::TooSmall);
    assert_eq!(hole(13.0, EN), Judged::Holds);
    assert_eq!(hole(13.5, EN), Judged::TooGreat); // ISO 273, medium
    assert_eq!(hole(11.9, EN), Judged::TooSmall);
    let plate = |hole: f64, d: f64, method| {
        let plate = TimberMember::steel(millimetres(6.0), megapascals(360.0), millimetres(hole));
        plate
            .hole_rule(None, millimetres(d), method)
            .unwrap()
            .judged()
    };
    assert_eq!(plate(14.0, 12.0, EN), Judged::Holds);
    assert_eq!(plate(14.1, 12.0, EN), Judged::TooGreat);
    assert_eq!(plate(26.4, 24.0, EN), Judged::Holds); // 0.1 d
    assert_eq!(plate(14.0, 12.0, NDS), Judged::TooGreat);
    // The narrow washer of trade catalogues under a 1/2 in bolt: 1-1/16 in.
    let washer = |width: f64, thickness: f64| TimberWasher {
        width: inches(width),
        thickness: inches(thickness),
        hole: inches(0.5625),
        square: false,
    };
    let judged = |washer: Option<TimberWasher>| {
        let rules = TimberWasher::rules(washer.as_ref(), inches(0.5), NDS).unwrap();
        rules.map(|rule| rule.judged())
    };
    assert_eq!(
        judged(Some(washer(1.0625, 0.095))),
        [Judged::TooSmall, Judged::Holds]
    );
    assert_eq!(judged(Some(washer(1.375, 0.109))), [Judged::Holds; 2]);
    assert_eq!(judged(None), [Judged::Missing; 2]);
    // Every size of the method has a standard washer.
    for sixteenths in 4..=16 {
        let d = inches(f64::from(sixteenths) / 16.0);
        assert!(TimberWasher::rules(None, d, NDS).is_ok(), "{sixteenths}");
    }
    let small = TimberWasher {
        hole: inches(0.4),
        ..washer(1.375, 0.109)
    };
    assert!(TimberWasher::rules(Some(&small), inches(0.5), NDS).is_err());
    let ring = TimberWasher {
        hole: inches(1.375),
        ..washer(1.375, 0.109)
    };
    assert!(TimberWasher::bearing(Some(&ring), inches(0.5), None, NDS).is_err());
}

/// Porteous and Kermani (2007), as a web page reproduces the example: M12 of 400 MPa, thick steel plates on C24 with
/// fc,90,k = 2.5 N/mm2: 33.7 kN in the bolt, 12.6 kN under the plate.
#[test]
fn pull_of_the_bolt_as_printed() {
    let m12 = millimetres(12.0);
    let plate = TimberWasher::of_plate(millimetres(12.0), millimetres(13.0), m12);
    assert!((plate.width - millimetres(48.0)).abs() < millimetres(1e-9));
    let across = Timber::find("C24")
        .unwrap()
        .compression()
        .unwrap()
        .strength();
    let under = TimberWasher::bearing(Some(&plate), m12, across, EN).unwrap();
    let nominal = under.resistance.unwrap().nominal.unwrap();
    assert!((nominal - newtons(12.6e3)).abs() < newtons(50.0));
    let design = under.resistance.unwrap().design.unwrap();
    assert!(((design / nominal).value - 0.8 / 1.3).abs() < 1e-12);
    let tension = Some(newtons(33.7e3));
    let found = en_axial_capacity(&under, &under, tension).unwrap();
    assert_eq!(found.axial, nominal);
    // A weak bolt decides; what is not known leaves no pull at all.
    let weak = en_axial_capacity(&under, &under, Some(newtons(5e3))).unwrap();
    assert_eq!(weak.axial, newtons(5e3));
    let bare = TimberWasher::bearing(None, m12, across, EN).unwrap();
    let none = en_axial_capacity(&bare, &bare, None).unwrap();
    assert_eq!(none.axial, newtons(0.0));
    assert_eq!(
        none.missing,
        [TimberFact::WasherWidth, TimberFact::BoltTension]
    );
    // Bearing by the other specification says nothing here.
    let half = inches(0.5);
    let cut = TimberWasher {
        width: inches(1.375),
        thickness: inches(0.109),
        hole: inches(0.5625),
        square: false,
    };
    let nds = TimberWasher::bearing(Some(&cut), half, Some(ksi(0.405)), NDS).unwrap();
    // 405 psi x pi / 4 (1.375^2 - 0.5625^2) = 500.7 lbf
    let allowable = nds.resistance.unwrap().at(Level::Allowable).unwrap();
    assert!((allowable.get::<pound_force>() - 500.7).abs() < 0.1);
    assert!(en_axial_capacity(&nds, &under, tension).is_err());
    // No washer, no rope: the stated pull is lowered to what is left.
    let stated = TimberMethod::En1995 {
        axial: newtons(20e3),
        kmod: 0.8,
        gamma_m: 1.3,
    };
    assert_eq!(stated.with_axial_at_most(none.axial), EN);
    assert_eq!(NDS.with_axial_at_most(none.axial), NDS);
}

fn any_timber() -> impl Strategy<Value = TimberMember> {
    (
        10.0..200.0f64,
        0.31..0.6f64,
        250.0..800.0f64,
        0.0..90.0f64,
        any::<bool>(),
    )
        .prop_map(|(t, g, rho, angle, hard)| TimberMember {
            thickness: millimetres(t),
            material: MemberMaterial::Wood(Wood {
                kind: if hard {
                    TimberKind::Hardwood
                } else {
                    TimberKind::Softwood
                },
                specific_gravity: Some(g),
                characteristic_density: Some(kilograms_per_cubic_metre(rho)),
                grain_angle: degrees(angle),
                provenance: None,
            }),
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// Thicker or denser on one side: never weaker, and never better than with the other side on both.
    #[test]
    fn a_better_outer_member_never_costs_strength(
        first in any_timber(), main in any_timber(), last in any_timber(), more in 1.0..1.2f64,
    ) {
        for method in [NDS, EN] {
            let load = |first, last| {
                three(first, main, last).resistance(&bolt(), method).unwrap().load.value
            };
            let base = load(first, last);
            prop_assert!((load(last, first) / base - 1.0).abs() < 1e-12);
            prop_assert!(base <= load(first, first) * (1.0 + 1e-12));
            prop_assert!(base <= load(last, last) * (1.0 + 1e-12));
            let mut better = last;
            better.thickness = more * last.thickness;
            prop_assert!(load(first, better) >= base * (1.0 - 1e-12));
            let mut better = last;
            if let MemberMaterial::Wood(wood) = &mut better.material {
                wood.specific_gravity = wood.specific_gravity.map(|g| more * g);
                wood.characteristic_density = wood.characteristic_density.map(|rho| more * rho);
            }
            prop_assert!(load(first, better) >= base * (1.0 - 1e-12));
        }
    }

    /// More bolts, farther apart or on stiffer members: each keeps at most as much, or at least.
    #[test]
    fn rows_behave(bolts in 1u32..40, pitch in 30.0..400.0f64, d in 6.5..25.0f64, ea in 1e6..1e10f64, r in 0.05..1.0f64) {
        let row = NdsRow {
            bolts,
            pitch: millimetres(pitch),
            diameter: millimetres(d),
            main_stiffness: newtons(ea),
            side_stiffness: newtons(r * ea),
            metal: false,
        };
        let share = |row: &NdsRow| nds_group_action(row).unwrap().value;
        let base = share(&row);
        prop_assert!(base > 0.0 && base <= 1.0);
        let longer = NdsRow { bolts: bolts + 1, ..row };
        prop_assert!(share(&longer) <= base + 1e-9);
        let stiffer = NdsRow { main_stiffness: newtons(2.0 * ea), side_stiffness: newtons(2.0 * r * ea), ..row };
        prop_assert!(share(&stiffer) >= base - 1e-9);
        let effective = |angle| en_effective_bolts(bolts, millimetres(pitch), millimetres(d), degrees(angle)).unwrap();
        prop_assert!(effective(0.0) <= f64::from(bolts) && effective(0.0) <= effective(45.0));
        prop_assert!((effective(90.0) - f64::from(bolts)).abs() < 1e-9);
    }

    /// No number breaks them, and none gets through that is no number.
    #[test]
    fn no_number_breaks_the_details(numbers in proptest::array::uniform6(any::<f64>()), bolts: u32) {
        let [a, b, c, d, e, f] = numbers;
        let (a, b, c) = (millimetres(a), millimetres(b), millimetres(c));
        if let Ok(member) = MemberOnBolt::between(a, b, c) {
            prop_assert!(member.thread >= NO_GAP && member.thread <= member.bearing);
        }
        let thread: Thread = "M12".parse().unwrap();
        let _ = nds_bearing_diameter(&thread, &[MemberOnBolt { bearing: a, thread: b }]);
        let row = NdsRow {
            bolts, pitch: a, diameter: b, main_stiffness: newtons(d), side_stiffness: newtons(e), metal: true,
        };
        if let Ok(share) = nds_group_action(&row) {
            prop_assert!(share.value > 0.0 && share.value <= 1.0);
        }
        if let Ok(effective) = en_effective_bolts(bolts, a, b, degrees(f)) {
            prop_assert!(effective > 0.0 && effective <= f64::from(bolts));
        }
        let washer = TimberWasher { width: a, thickness: b, hole: c, square: true };
        let m12 = millimetres(12.0);
        for method in [NDS, EN] {
            let _ = TimberWasher::rules(Some(&washer), m12, method);
            let _ = TimberWasher::rules(None, a, method);
            if let Ok(found) = TimberWasher::bearing(Some(&washer), m12, Some(megapascals(d)), method) {
                prop_assert!(found.resistance.is_some());
            }
            let _ = of("C24", a, f).hole_rule(Some(b), c, method);
            let own = TimberDistances { end: Some(a), edge: Some(b), pitch: Some(c), ..TimberDistances::default() };
            if let Ok(found) = own.judged(&of("C24", millimetres(60.0), 0.0), m12, ratio(d), method) {
                prop_assert!(found.geometry.value > 0.0 && found.geometry.value <= 1.0);
            }
        }
    }
}

/// Judgements go out as JSON, as data.
#[cfg(feature = "serde")]
#[test]
fn judgements_are_data() {
    let post = of("Hem-Fir", inches(3.5), 0.0);
    let rule = post.hole_rule(Some(inches(1.0)), inches(0.5), NDS).unwrap();
    let json = serde_json::to_value((&rule, rule.judged())).unwrap();
    assert_eq!(json[0]["fact"], "hole");
    assert_eq!(json[1], "too_great");
    let row = BoltRow {
        bolts: Some(3),
        ..BoltRow::default()
    };
    let found = row
        .factor(&three(post, post, post), millimetres(16.0), NDS)
        .unwrap();
    let json = serde_json::to_value(found).unwrap();
    assert_eq!(json["missing"][0], "pitch");
    assert!(json["share"].is_null());
}

/// Every timber has the strength across the grain of the publisher who names it.
#[test]
fn timbers_have_their_own_strength_across_the_grain() {
    for timber in Timber::all() {
        let row = timber.compression().unwrap();
        assert_eq!(
            row.design_value.is_some(),
            timber.specific_gravity.is_some(),
            "{timber}"
        );
        assert_eq!(
            row.characteristic.is_some(),
            timber.characteristic_density.is_some(),
            "{timber}"
        );
    }
}
