//! What is kept of many checks, and what is said of each ply.

use super::*;
use crate::caution::Cautions;
use crate::connection::tests::{at, bolt, corners, force, rectangle};
use crate::connection::{ConnectionVerdict, LoadCase, Side};
use crate::joint::{JointBuilder, JointMethods, RuleSet, Scope};
use crate::parts::WasherStyle;
use crate::tables::methods;
use crate::units::{UnitSystem, newtons};
use alloc::vec;

fn own(places: &[(f64, f64)]) -> Own {
    let connection = Connection::builder(bolt("10 mm")).bolts(at(places));
    let connection = connection.cases([force([1.0, 0.0, 0.0])]);
    Own::new(&connection.build().unwrap()).unwrap()
}

#[test]
fn each_bolt_has_its_nearest() {
    let millimetres = |places: &[(f64, f64)]| -> Vec<f64> {
        let own = own(places);
        own.apart().iter().map(|far| (far * 1e3).round()).collect()
    };
    assert_eq!(millimetres(&corners(60.0)), [60.0; 4]);
    let three = [(0.0, 0.0), (50.0, 0.0), (50.0, 120.0)];
    assert_eq!(millimetres(&three), [50.0, 50.0, 120.0]);
    assert_eq!(millimetres(&three[..1]), [f64::INFINITY]);
}

/// Of each mode, place and method the worst, and of equals the first.
#[test]
fn the_worst_of_each_mode_is_kept() {
    let check = |mode: Mode, load: f64| {
        let method = methods::WHITMORE_SECTION;
        let check = Check::new(
            mode,
            Place::Ply(1),
            newtons(load),
            newtons(100.0),
            Level::Design,
            method,
        );
        check
            .unwrap()
            .warned(Cautions::default().with(Some(Caution::NominalSizes)))
    };
    let mut own = own(&corners(60.0));
    for (case, load, word) in [
        (0, 50.0, Word::Holds),
        (1, 50.0, Word::Holds),
        (2, 60.0, Word::Holds),
        (3, 40.0, Word::Holds),
        (4, 100.0, Word::Holds),
        (5, 101.0, Word::DoesNotHold),
        (6, 101.0, Word::DoesNotHold),
    ] {
        assert_eq!(own.take(case, check(Mode::NetSection, load)), word);
        let kept = own.done.checks.iter();
        let kept = kept.filter(|own| own.check.mode == Mode::NetSection);
        let kept: Vec<_> = kept.map(|own| own.case).collect();
        assert_eq!(kept, [[0, 0, 2, 2, 4, 5, 5][case]]);
    }
    own.take(7, check(Mode::BlockShear, 150.0));
    let done = own.done();
    let cases: Vec<_> = done.checks.iter().map(|own| own.case).collect();
    assert_eq!(cases, [7, 5]);
    let warned = done
        .cautions
        .iter()
        .filter(|own| **own == Caution::NominalSizes);
    assert_eq!(warned.count(), 1);
    assert!(GENERAL.iter().all(|own| done.cautions.contains(own)));
}

/// Covers of a and c on both sides of a tongue make a moment of (c - a) / 4 about the first face: a twentieth of 8 mm is
/// met at c = a + 1.6 mm.
#[test]
fn plies_lie_in_line_that_are_alike_on_both_sides() {
    let joint = |plies: &[&str]| {
        let names = ["cover", "tongue", "cover"];
        let mut joint = Joint::builder("M16");
        for (name, thickness) in names.iter().zip(plies) {
            joint = joint.ply(*name, *thickness).material("S275 steel");
        }
        joint
            .washers(WasherStyle::Iso7090)
            .methods(JointMethods::en_1993())
            .load_factor(1.5)
            .rules(RuleSet::En1090.rules(UnitSystem::Si))
    };
    for (plies, is_so) in [
        (&["8 mm", "16 mm", "8 mm"][..], true),
        (&["8 mm", "16 mm", "9.5 mm"], true),
        (&["8 mm", "16 mm", "9.7 mm"], false),
        (&["9.5 mm", "16 mm", "8 mm"], true),
        (&["9.7 mm", "16 mm", "8 mm"], false),
        (&["8 mm", "16 mm"], false),
    ] {
        let connection = Connection::builder(joint(plies)).bolts(at(&corners(60.0)));
        let connection = connection.cases([force([0.0, 1.0, 0.0])]);
        let joint = connection.build().unwrap().joint;
        assert_eq!(
            is_in_line(&joint),
            is_so,
            "{plies:?} {:?} {:?}",
            joint.stack.pulls(),
            joint.stack.plies()
        );
    }
}

/// A square hanger that is pulled up, and the beam that holds it.
fn lap(
    bolt: JointBuilder,
    places: &[(f64, f64)],
    side: f64,
    kilonewtons: f64,
) -> ConnectionVerdict {
    let half = 0.5 * side;
    let plate = || rectangle((-half, -half), (half, half));
    Connection::builder(bolt)
        .bolts(at(places))
        .plate("hanger", plate())
        .held(Side::Bottom)
        .plate("beam", plate())
        .held(Side::Top)
        .loaded("hanger")
        .cases([force([0.0, kilonewtons, 0.0])])
        .build()
        .unwrap()
        .check()
        .unwrap()
}

/// 200 kN x 1.5 on four M16 8.8, each of which bears 77 kN, and 100 x 10 x 275 N = 275 kN of a plate: it yields, and they hold.
#[test]
fn plates_are_in_the_scope_of_the_whole_joint() {
    let thin = |scope| lap(bolt("10 mm").scope(scope), &corners(60.0), 100.0, 200.0);
    let of_plates = |found: &ConnectionVerdict| {
        let checks = found.checks.iter().map(|own| own.check.mode);
        checks.filter(|mode| OF_PLATES.contains(mode)).count()
    };
    let whole = thin(Scope::Joint);
    assert_eq!(whole.word(), Word::DoesNotHold);
    assert!(of_plates(&whole) >= 6, "{:?}", whole.missing);
    for scope in [Scope::Bolt, Scope::BoltAndNut] {
        let found = thin(scope);
        assert_eq!(of_plates(&found), 0);
        assert_ne!(
            found.cases[0].word,
            Word::DoesNotHold,
            "{}",
            found.render(UnitSystem::Si)
        );
    }
    // What is missing of plates, too.
    let bare = |scope| {
        let connection = Connection::builder(bolt("10 mm").scope(scope)).bolts(at(&corners(60.0)));
        let connection = connection.cases([force([0.0, 1.0, 0.0])]).build().unwrap();
        let found = connection.check().unwrap();
        let missing = found.missing.iter();
        missing.filter(|own| OF_PLATES.contains(&own.mode)).count()
    };
    assert_eq!(bare(Scope::Joint), 6);
    assert_eq!(bare(Scope::Bolt), 0);
}

/// Two bolts 17 mm apart in a plate of 34.8 mm: a shear finds two holes of 17.5 mm that leave nothing of it, and says it once
/// a plate, though two cases find it.
#[test]
fn holes_that_take_the_whole_width_are_a_finding() {
    let found = |scope, kilonewtons: [f64; 3]| {
        let plate = || rectangle((-17.4, -60.0), (17.4, 60.0));
        let again = LoadCase {
            name: "again".into(),
            ..force(kilonewtons)
        };
        Connection::builder(bolt("10 mm").scope(scope))
            .bolts(at(&[(-8.5, 0.0), (8.5, 0.0)]))
            .plate("hanger", plate())
            .held(Side::Bottom)
            .plate("beam", plate())
            .held(Side::Top)
            .loaded("hanger")
            .cases([force(kilonewtons), again])
            .build()
            .unwrap()
            .check()
            .unwrap()
    };
    {
        let load = [0.1, 0.0, 0.0];
        let whole = found(Scope::Joint, load);
        assert_eq!(whole.word(), Word::DoesNotHold);
        let places: Vec<Place> = whole
            .findings
            .iter()
            .filter_map(|own| match own {
                Finding::NothingLeft {
                    place,
                    mode: Mode::NetSection,
                    ..
                } => Some(*place),
                _ => None,
            })
            .collect();
        assert_eq!(
            places,
            [Place::Ply(1), Place::Ply(2)],
            "{load:?} {:?} {:?}",
            whole.findings,
            whole.missing
        );
        let missing = whole.missing.iter();
        let mut missing = missing.filter(|own| own.mode == Mode::NetSection);
        assert!(missing.next().is_none(), "{:?}", whole.missing);
        assert!(found(Scope::Bolt, load).findings.is_empty());
    }
}

/// Of bolts in a ring no block is known: that is said once of each ply, and nothing else of blocks.
#[test]
fn each_mode_is_told_once() {
    let ring: Vec<(f64, f64)> = (0..5)
        .map(|n| (f64::from(n) + 1.25) * core::f64::consts::TAU / 5.0)
        .map(|angle| (60.0 * angle.cos(), 60.0 * angle.sin()))
        .collect();
    let found = lap(bolt("10 mm"), &ring, 200.0, 60.0);
    let missing = |mode: Mode| found.missing.iter().filter(move |own| own.mode == mode);
    let places: Vec<_> = missing(Mode::BlockShear).map(|own| own.place).collect();
    assert_eq!(places, [Place::Ply(1), Place::Ply(2)]);
    assert_eq!(missing(Mode::NetSection).count(), 0);
}

/// Of the plate of one bolt its joint says what it knows; that nobody looks for more is a caution where no plate is given.
#[test]
fn one_bolt_without_plates_is_warned_of() {
    let with = |places: &[(f64, f64)], plates: bool| {
        let plate = || rectangle((-70.0, -70.0), (70.0, 70.0));
        let mut builder = Connection::builder(bolt("10 mm")).bolts(at(places));
        if plates {
            builder = builder.plate("hanger", plate()).held(Side::Top);
            builder = builder.plate("beam", plate()).held(Side::Bottom);
        }
        let case = |name: &str| LoadCase {
            name: name.into(),
            ..force([0.0, -1.0, 0.0])
        };
        let found = builder
            .loaded("hanger")
            .cases([case("a"), case("b")])
            .build()
            .unwrap()
            .check()
            .unwrap();
        let cautions = found.cautions.iter();
        cautions
            .filter(|own| **own == Caution::PlatesOfConnection)
            .count()
    };
    assert_eq!(with(&[(0.0, 0.0)], false), 1);
    assert_eq!(with(&[(0.0, 0.0)], true), 0);
    assert_eq!(with(&corners(60.0), false), 0);
    assert_eq!(with(&[(0.0, 0.0), (0.0, 60.0)], true), 0);
}

/// What a mode lacks it says, each once; a ply of which all is known lacks nothing.
#[test]
fn what_a_mode_of_a_plate_lacks() {
    let cell = OnceCell::new();
    let plate = Plate::new("hanger", rectangle((-70.0, -70.0), (70.0, 70.0)));
    let lacks = |change: fn(&mut PlyFacts), plate: Option<&Plate>| {
        let own = own(&corners(60.0));
        let mut facts = own.plies.into_iter().next().unwrap();
        change(&mut facts);
        let loaded = Loaded {
            facts: &facts,
            plate,
            places: &own.places,
            forces: vec![(0.0, 0.0); 4],
            sense: None,
            in_line: false,
            level: Level::Design,
            turned: false,
            net_widths: &cell,
        };
        let mut told = vec![Told::NotConcerned(Mode::BlockShear)];
        let lacks = loaded.lacks(Mode::NetSection, &mut told);
        let needs = told.into_iter().skip(1).map(|own| match own {
            Told::Missing(Mode::NetSection, need) => need,
            _ => panic!(),
        });
        (lacks, needs.collect::<Vec<_>>())
    };
    let with = |change| lacks(change, Some(&plate));
    assert_eq!(with(|_| ()), (false, vec![]));
    assert_eq!(lacks(|_| (), None), (true, vec![Need::Outline]));
    assert_eq!(with(|own| own.hole = None), (true, vec![Need::Hole]));
    assert_eq!(
        with(|own| own.yields = None),
        (true, vec![Need::YieldStrength])
    );
    assert_eq!(
        with(|own| own.breaks = None),
        (true, vec![Need::TensileStrength])
    );
    let none = |own: &mut PlyFacts| {
        (own.has_material, own.yields, own.breaks) = (false, None, None);
    };
    assert_eq!(with(none), (true, vec![Need::Material]));
    for unknown in [
        (|own| {
            own.name = None;
        }) as fn(&mut PlyFacts),
        |own| {
            own.thickness = None;
        },
    ] {
        let (lacks, needs) = with(unknown);
        assert!(lacks && matches!(needs[..], [Need::Method(_)]), "{needs:?}");
    }
}

/// A mode of which nothing is said is told of, whatever is said of others.
#[test]
fn no_mode_is_silent() {
    assert_eq!(silent(&[]), OF_PLATES);
    for (n, mode) in OF_PLATES.into_iter().enumerate() {
        let mut others = OF_PLATES.to_vec();
        others.remove(n);
        let (place, why) = (Place::Ply(1), "the holes take the whole width");
        let newton = newtons(1.0);
        let method = methods::WHITMORE_SECTION;
        let check = Check::new(mode, place, newton, newton, Level::Design, method);
        for told in [
            Told::Check(check.unwrap()),
            Told::Find(Finding::NothingLeft { place, mode, why }),
            Told::Missing(mode, Need::HeldSide),
            Told::NotConcerned(mode),
        ] {
            assert_eq!(silent(&[told]), others, "{mode}");
        }
    }
}
