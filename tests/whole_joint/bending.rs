//! What bends the bolt: gaps, end play, packing and pivots, one ply or several on each side.

use crate::joints::{frame, is_open, mm, near, plate, torque_of, verdict, workings_are_true};
use shankline::joint::{Account, Joint, JointMethods, StackBuilder};
use shankline::prelude::*;
use shankline::strength::check::Mode;

fn ply(thickness: f64) -> JointPly {
    plate("plate", mm(thickness))
}

fn pack(thickness: f64) -> JointPly {
    JointPly::packing("pack", mm(thickness)).hole(millimetres(18.0))
}

/// The frame with these plies, 2 kN across, by EN 1993-1-8, whose answer is a moment. No washers.
fn by_en(stack: StackBuilder) -> Joint {
    let mut joint = frame();
    joint.stack = stack.build().unwrap();
    joint.load.across = newtons(2e3);
    joint.methods = JointMethods::en_1993();
    joint
}

fn turning(mut joint: Joint) -> Joint {
    joint.environment.rotates = true;
    joint
}

fn bends(joint: &Joint) -> bool {
    match verdict(joint).account(Mode::BoltBending) {
        Account::NotConcerned(_) => false,
        Account::Missing | Account::InOrder | Account::Fault => true,
        other => panic!("{other:?}"),
    }
}

/// Two plies of 20 mm and 2 kN: the moment is 2 kN x (20 mm + what keeps them apart).
#[test]
fn all_that_keeps_two_plies_apart_counts() {
    let lap = || Stack::builder().add(ply(20.0));
    let sleeve = |at| lap().add(ply(20.0)).sleeve("bushing", mm(20.5), at, at);
    let packed = || lap().add(pack(6.0)).add(ply(20.0));
    for (name, stack, apart) in [
        (
            "gap",
            lap().gap(mm(1.0)).add(ply(20.0)).shear_planes([1]),
            1.0,
        ),
        // Play of 0.5 mm at the end of the first ply, or at the start of the second.
        ("sleeve before", sleeve(1).shear_planes([1]), 0.5),
        ("sleeve behind", sleeve(2).shear_planes([1]), 0.5),
        // The gap lies on the far side of the packing, as seen from the one plane.
        (
            "gap behind packing",
            lap()
                .add(pack(6.0))
                .gap(mm(1.0))
                .add(ply(20.0))
                .shear_planes([1]),
            7.0,
        ),
        (
            "gap before packing",
            lap()
                .gap(mm(1.0))
                .add(pack(6.0))
                .add(ply(20.0))
                .shear_planes([2]),
            7.0,
        ),
        (
            "gaps on both sides",
            lap()
                .gap(mm(1.0))
                .add(pack(6.0))
                .gap(mm(0.5))
                .add(ply(20.0))
                .shear_planes([1, 2]),
            7.5,
        ),
    ] {
        let joint = by_en(stack);
        assert!(bends(&joint), "{name}");
        let by_hand = newton_metres(2.0 * (20.0 + apart));
        assert!(
            (torque_of(&verdict(&joint), Mode::BoltBending) - by_hand).abs() < newton_metres(1e-9),
            "{name}"
        );
        workings_are_true(&joint);
    }
    assert!(!bends(&by_en(lap().add(ply(20.0)).shear_planes([1]))));
    assert!(!bends(&by_en(packed().shear_planes([1, 2])))); // the code takes it off the shear
    // A sleeve that ends at no plane that is loaded adds nothing: the play is not there.
    let three = Stack::builder()
        .add(ply(20.0))
        .add(ply(20.0))
        .add(pack(20.0))
        .sleeve("bushing", mm(20.5), 3, 3)
        .shear_planes([1]);
    assert!(!bends(&by_en(three)));
}

/// EN 1993-1-8, 3.6.1(12): packing counts where it is thicker than a third of the diameter; M12: 4 mm. A plane that carries
/// nothing is not asked.
#[test]
fn packing_bends_where_the_method_takes_nothing_off() {
    let joint = |stack: StackBuilder| {
        let mut joint = frame();
        joint.bolt.thread = "M12".parse().unwrap();
        joint.stack = stack.build().unwrap();
        joint.load.across = newtons(2e3);
        joint
    };
    let packed = |thickness| {
        let stack = Stack::builder().add(ply(20.0)).add(pack(thickness));
        joint(stack.add(ply(20.0)).shear_planes([1, 2]))
    };
    assert!(!bends(&packed(3.9)));
    assert!(!bends(&packed(4.0)));
    assert!(bends(&packed(4.1)));
    let beside = Stack::builder().add(ply(20.0)).add(ply(20.0));
    assert!(!bends(&joint(beside.add(pack(10.0)).shear_planes([1, 2]))));
}

/// Packing outside of the plies that pull, at the head or at the nut, is no arm.
#[test]
fn packing_outside_bends_nothing() {
    let head = Stack::builder().add(pack(8.0)).add(ply(20.0));
    let head = head.add(ply(20.0)).shear_planes([2]);
    let nut = Stack::builder().add(ply(20.0)).add(ply(20.0));
    let nut = nut.add(pack(8.0)).shear_planes([1]);
    for stack in [head, nut] {
        let joint = turning(by_en(stack));
        near(
            torque_of(&verdict(&joint), Mode::BoltBending).value,
            40.0,
            1e-9,
        );
    }
}

/// A link of two plies, of which each loads the plane beside it; the thicker one counts. 1 times or 2 times the load
/// of 2 kN comes to it, as the pulls say.
#[test]
fn half_of_a_link_loads_each_plane() {
    for times in [1.0, 2.0] {
        let ear = || ply(10.0).pulls(0.5 * times);
        let link = |thickness| ply(thickness).pulls(-0.5 * times);
        let stack = Stack::builder().add(ear()).add(link(8.0)).add(link(12.0));
        let joint = turning(by_en(stack.add(ear()).shear_planes([1, 3])));
        // By hand: e = 10 / 2 + 12 / 2 = 11 mm; 1 kN at each plane, or 2 kN.
        let moment = torque_of(&verdict(&joint), Mode::BoltBending);
        near(moment.value, 11.0 * times, 1e-9);
    }
}

/// Two plies on each side of one plane, all of which pull the whole load: the plane carries 4 kN.
#[test]
fn pulls_beyond_the_load_count_as_often() {
    let stack = Stack::builder()
        .add(ply(10.0).pulls(1.0))
        .add(ply(10.0).pulls(1.0))
        .add(ply(10.0).pulls(-1.0))
        .add(ply(10.0).pulls(-1.0))
        .shear_planes([2]);
    let joint = turning(by_en(stack));
    // By hand: 4 kN x (10 + 10) mm = 80 N m.
    near(
        torque_of(&verdict(&joint), Mode::BoltBending).value,
        80.0,
        1e-9,
    );
}

/// Planes that do not carry alike, and plies that pull this way and that between the outer ones, have no method.
#[test]
fn other_patterns_of_planes_are_not_guessed() {
    for (pulls, planes, known) in [
        (vec![0.5, -1.0, 0.5], vec![1, 2], true),
        (vec![0.7, -1.0, 0.3], vec![1, 2], false),
        (vec![1.0, 0.0, -1.0], vec![1, 2], true),
        (vec![1.0, -1.0, 1.0, -1.0], vec![1, 2, 3], false),
        (vec![1.0, -0.5, 0.5, -1.0], vec![1, 2, 3], false),
    ] {
        let mut stack = Stack::builder();
        for pull in &pulls {
            stack = stack.add(ply(10.0).pulls(*pull));
        }
        let joint = turning(by_en(stack.shear_planes(planes)));
        let open = is_open(
            &joint,
            "bolt bending, bolt 1: a method is known for one plane",
        );
        assert_eq!(open, !known, "{pulls:?}");
    }
}

/// EN 1993-1-8 Table 3.10: the working of a pivot in service shows the pressure of contact once, with the thinnest plies.
#[test]
fn the_contact_of_a_pivot_is_worked_out_once() {
    let stack = Stack::builder()
        .add(ply(10.0))
        .add(ply(20.0))
        .add(ply(10.0));
    let joint = turning(by_en(stack.shear_planes([1, 2])));
    let (_, workings) = joint.check_with_working().unwrap();
    let of = |end: &str| {
        let mut workings = workings.iter();
        let working = workings.find(|working| working.title().ends_with(end));
        working.unwrap().steps().len()
    };
    // One has the stress in contact and its limit as well.
    assert!(of("thinnest plies") > of("thickest plies"));
}

/// Twice the load is twice the load, whether the load is twice as great or comes with a shock: in every check, those of a pivot in
/// service too.
#[test]
fn a_shock_is_a_greater_load() {
    let used = |times: f64, shock: f64| {
        let stack = Stack::builder()
            .add(ply(10.0))
            .add(ply(20.0))
            .add(ply(10.0));
        let mut joint = turning(by_en(stack.shear_planes([1, 2])));
        joint.load.across *= times;
        joint.load.shock_factor *= shock;
        let checks = verdict(&joint).checks;
        let mut checks: Vec<(String, f64)> = (checks.iter())
            .map(|own| {
                let what = format!("{} {} {}", own.mode, own.place, own.method);
                (what, own.utilisation.value)
            })
            .collect();
        checks.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        checks
    };
    let (usual, load, shock) = (used(1.0, 1.0), used(2.0, 1.0), used(1.0, 2.0));
    assert!(usual.len() > 3 && usual.len() == load.len() && load.len() == shock.len());
    for ((one, great), shaken) in usual.iter().zip(&load).zip(&shock) {
        assert_eq!(great.0, shaken.0);
        near(shaken.1, great.1, 1e-9);
        assert!(great.1 > one.1, "{}", one.0);
    }
}
