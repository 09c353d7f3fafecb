//! When the clause is asked, and what a bolt brings to it.

use super::*;
use crate::connection::tests::{at, bolt_by, corners, force};
use crate::joint::JointMethods;
use crate::names::AiscEdition;
use crate::units::newtons;
use alloc::vec;

fn lap(methods: JointMethods) -> Connection {
    let lap = Connection::builder(bolt_by(methods, "10 mm")).bolts(at(&corners(60.0)));
    lap.cases([force([40.0, 0.0, 0.0])]).build().unwrap()
}

/// The clause is of EN 1993 for both, in design, for several bolts that nothing turns or pulls.
#[test]
fn the_group_is_asked_where_the_clause_is_of_the_methods() {
    let aisc = JointMethods::aisc_lrfd(AiscEdition::E2016);
    let en = JointMethods::en_1993;
    let fastener = FastenerResistance {
        shear: newtons(60e3),
        bearing: newtons(50e3),
    };
    let across = BoltLoad {
        x: newtons(10e3),
        across: newtons(10e3),
        ..BoltLoad::default()
    };
    let pulled = BoltLoad {
        along: newtons(1.0),
        ..across
    };
    let pressed = BoltLoad {
        along: newtons(-1.0),
        ..across
    };
    let with = |own: JointMethods, plies: PlyMethod, shear: ShearMethod| JointMethods {
        shear,
        plies,
        ..own
    };
    for (methods, loads, turned, is_asked) in [
        (en(), vec![across; 2], false, true),
        (en(), vec![across; 3], false, true),
        (en(), vec![across; 1], false, false),
        (en(), vec![across; 2], true, false),
        (en(), vec![across, pulled], false, false),
        (en(), vec![across, pressed], false, true),
        (aisc, vec![across; 2], false, false),
        (
            with(en(), aisc.plies, en().shear),
            vec![across; 2],
            false,
            false,
        ),
        (
            with(en(), en().plies, aisc.shear),
            vec![across; 2],
            false,
            false,
        ),
    ] {
        let mut connection = lap(en());
        connection.joint.methods = methods;
        let fasteners = vec![Some(fastener); loads.len()];
        let count = loads.len();
        let found = check(&connection, &loads, turned, fasteners);
        assert_eq!(found.is_some(), is_asked, "{count} {turned}");
        if let Some(found) = found {
            // All alike: 1.5 x 10 kN on each, of 50 in bearing.
            assert!((found.utilisation.value - 0.3).abs() < 1e-9, "{found:?}");
        }
    }
    // One of which nothing is known leaves all unknown.
    assert!(check(&lap(en()), &[across; 2], false, vec![Some(fastener), None]).is_none());
}

/// 10 kN x 1.5 over what its own check of a mode says is used of it.
#[test]
fn a_bolt_bears_what_its_checks_say() {
    let connection = lap(JointMethods::en_1993());
    let load = BoltLoad {
        x: newtons(10e3),
        across: newtons(10e3),
        ..BoltLoad::default()
    };
    let (joint, member) = crate::connection::around::joint_of(&connection, 0, &load).unwrap();
    let joint = crate::joint::Joint {
        stack: joint
            .stack
            .to_builder()
            .each_ply(|ply| {
                ply.end_distance = Some(crate::units::millimetres(40.0));
                ply.edge_distance = Some(crate::units::millimetres(40.0));
            })
            .build()
            .unwrap(),
        ..joint
    };
    let asked = crate::joint::JointLoad {
        across: load.across,
        ..joint.load
    };
    let verdict = crate::connection::check_bolt(&joint, &asked, member.as_ref()).unwrap();
    let found = fastener(&connection, &load, &verdict).unwrap();
    let of = |mode: Mode| {
        let own = verdict.checks.iter().filter(|own| own.mode == mode);
        own.map(|own| own.utilisation.value).fold(0.0, f64::max)
    };
    let near = |found: Force, used: f64| (found.value * used - 15e3).abs() < 1e-6;
    assert!(near(found.shear, of(Mode::BoltShear)), "{:?}", found.shear);
    assert!(
        near(found.bearing, of(Mode::Bearing)),
        "{:?}",
        found.bearing
    );
    assert!((of(Mode::BoltShear) - of(Mode::Bearing)).abs() > 1e-3);
    // Without a load nothing is borne.
    let idle = crate::joint::JointLoad {
        across: newtons(0.0),
        ..asked
    };
    let idle = crate::connection::check_bolt(&joint, &idle, member.as_ref()).unwrap();
    assert!(fastener(&connection, &BoltLoad::default(), &idle).is_none());
}
