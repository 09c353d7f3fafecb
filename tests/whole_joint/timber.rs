//! Bolts in timber between steel, and between timbers.

use crate::joints::{frame, is_open, near, open, plate, plus_minus, text, verdict};
use shankline::joint::{Joint, JointMethods, JointPly, JointWasher, SetAside, Tightening, Word};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode, Place};
use shankline::strength::timber::TimberMethod;
use shankline::units::{degrees, ksi};

const EN: TimberMethod = TimberMethod::En1995 {
    axial: newtons(0.0),
    kmod: 0.7,
    gamma_m: 1.3,
};
const NDS: TimberMethod = TimberMethod::Nds {
    bending_yield: ksi(45.0),
    adjustment: 1.0,
};

fn beam(timber: &str, thickness: f64) -> JointPly {
    JointPly::new("beam", plus_minus(thickness, 0.0))
        .timber(timber, degrees(0.0))
        .hole(millimetres(17.0))
        .end_distance(millimetres(120.0))
        .edge_distance(millimetres(70.0))
}

fn steel() -> JointPly {
    plate("plate", plus_minus(8.0, 0.0)).hole(millimetres(17.0))
}

/// A beam of C24 between two plates; M16 bolt of class 8.8, EN 1995; 20 kN. The timber's own sections are
/// checked elsewhere.
fn timbered() -> Joint {
    let mut joint = frame();
    joint.stack = crate::joints::stacked([steel(), beam("C24", 100.0), steel()]);
    joint.load.across = newtons(20e3);
    joint.methods = JointMethods::en_1993();
    joint.methods.timber = Some(EN);
    joint.set_aside = [Mode::NetSection, Mode::TearOut]
        .map(|mode| SetAside::new(mode, "the carpenter's own check of the beam (invented)"))
        .to_vec();
    joint
}

fn yields(joint: &Joint) -> Check {
    let found = verdict(joint);
    let mut checks = found.checks.iter();
    let yielding = checks.find(|check| check.mode == Mode::TimberYield);
    yielding
        .unwrap_or_else(|| panic!("{}", text(&found)))
        .clone()
}

#[test]
fn yield_in_timber_governs() {
    let mut joint = timbered();
    let found = verdict(&joint);
    let worst = found.governing().unwrap();
    assert_eq!(
        (worst.mode, worst.level),
        (Mode::TimberYield, Level::Design)
    );
    // By hand: fh = 0.082 (1 - 0.16) 350 = 24.108 MPa; My = 0.3 x 800 x 16^2.6 = 324 283 N mm; thin plates:
    // 0.5 x 24.108 x 100 x 16 = 19 286 N, 1.15 sqrt(2 x 324 283 x 24.108 x 16) = 18 189 N a plane;
    // 2 x 18 189 x 0.7 / 1.3 = 19 588 N.
    near(worst.utilisation.value, 20.0 / 19.588, 1e-4);
    assert_eq!(found.word(), Word::DoesNotHold);
    // The steel plates are checked as before, the timber is not taken for one.
    let places: Vec<Place> = found.checks.iter().map(|check| check.place).collect();
    assert!(places.contains(&Place::Ply(1)) && !places.contains(&Place::Ply(2)));
    joint.load.across = newtons(19e3);
    assert_eq!(verdict(&joint).word(), Word::Holds, "{:?}", open(&joint));
    // Unless somebody sets its sections aside, the timber keeps the word open.
    joint.set_aside.clear();
    assert!(is_open(&joint, "net section, ply 2: no method here knows"));
    assert!(is_open(&joint, "tear-out, ply 2: row shear"));
    assert_eq!(verdict(&joint).word(), Word::Undecided);
}

#[test]
fn timber_without_a_method_or_of_another_build_is_not_checked() {
    let reason = |joint: &Joint| {
        let found = open(joint);
        found
            .into_iter()
            .find(|line| line.starts_with("yield in timber"))
    };
    assert_eq!(reason(&timbered()), None);
    let mut joint = timbered();
    joint.methods = JointMethods::machine_design(2.0);
    joint.methods.timber = Some(EN);
    let why = reason(&joint).unwrap();
    assert!(why.contains("allowable"), "{why}");
    joint.methods.timber = None;
    assert_eq!(
        reason(&joint).unwrap(),
        "yield in timber: no method for bolts in timber is chosen"
    );
    // Nor is a gap in the equations of EN.
    let mut joint = timbered();
    joint.stack = Stack::builder()
        .add(steel())
        .gap(plus_minus(2.0, 1.0))
        .add(beam("C24", 100.0))
        .add(steel())
        .shear_planes([1, 2])
        .build()
        .unwrap();
    let why = reason(&joint).unwrap();
    assert!(why.contains("gap"), "{why}");
    // An American timber has no European density.
    joint.stack = crate::joints::stacked([steel(), beam("Hem-Fir", 100.0), steel()]);
    let why = reason(&joint).unwrap();
    assert!(why.contains("EN 1995-1-1 starts from it"), "{why}");
}

/// The equations have hinges on both sides of the middle member: where one plane takes more, nobody knows. A share that
/// is said and half is the same as none.
#[test]
fn unequal_planes_of_timber_are_undecided() {
    let mut joint = timbered();
    let even = yields(&joint).utilisation.value;
    for (first, alike) in [(0.7, false), (0.501, false), (0.5, true)] {
        let plies = [
            steel().pulls(first),
            beam("C24", 100.0).pulls(-1.0),
            steel().pulls(1.0 - first),
        ];
        joint.stack = crate::joints::stacked(plies);
        let open = is_open(
            &joint,
            "yield in timber: timber of which one plane takes more",
        );
        assert_eq!(open, !alike, "{first}");
        if alike {
            near(yields(&joint).utilisation.value, even, 1e-12);
        }
    }
}

#[test]
fn short_ends_of_timber_are_faults() {
    let mut joint = timbered();
    let short = beam("C24", 100.0).end_distance(millimetres(100.0));
    joint.stack = crate::joints::stacked([steel(), short, steel()]);
    let text = text(&verdict(&joint));
    // By hand: EN 1995-1-1 Table 8.4, 7 d.
    assert!(
        text.contains("FAULT  ply 2: end distance 100.00 mm, must be at least 112.00 mm"),
        "{text}"
    );
}

/// Two timbers of 38 mm by NDS: the joist, what lies between, the post, with ISO 7093 washers.
fn joists(product: ScrewProduct, length: f64, gap: Option<Spread<Length>>) -> Joint {
    let mut joint = frame();
    joint.bolt.product = product;
    joint.bolt.length = Some(millimetres(length));
    joint.load.across = newtons(2e3);
    joint.tightening = Some(Tightening::Snug);
    let wide = JointWasher::find(WasherStyle::Iso7093, &joint.bolt.thread).unwrap();
    let mut stack = Stack::builder()
        .washer_under_head(wide.clone())
        .add(beam("Southern Pine", 38.0));
    if let Some(gap) = gap {
        stack = stack.gap(gap);
    }
    let stack = stack.add(beam("Southern Pine", 38.0)).shear_planes([1]);
    joint.stack = stack.washers_under_nut(wide, 1).build().unwrap();
    joint.methods.timber = Some(NDS);
    joint
}

/// Southern pine bears 6160 psi = 42.472 MPa along the grain on a bolt.
#[test]
fn thread_in_a_member_takes_the_root_by_nds() {
    let allowable =
        |product, length| 2e3 / yields(&joists(product, length, None)).utilisation.value;
    // By hand, mode II of equal members: k1 = sqrt(2) - 1, k1 D l Fe / 3.6; D = 16 mm on the shank, 16 - 1.226869 x 2
    // = 13.546 mm at the root. The post begins at most 3.3 + 38 = 41.3 mm from the head and ends at 79.3 mm; of a bolt
    // of 120 mm the body ends at 120 - 38 - 10 = 72 mm, and 7.3 mm of thread are less than a quarter of 38 mm
    // (NDS 12.3.7.2); of one of 110 mm they are 17.3 mm.
    let on = |d: f64| (2_f64.sqrt() - 1.0) * d * 38.0 * 6160.0 * 6.894_757e-3 / 3.6;
    near(
        allowable(ScrewProduct::Iso4017, 100.0),
        on(13.546_262),
        1e-5,
    );
    near(
        allowable(ScrewProduct::Iso4014, 110.0),
        on(13.546_262),
        1e-5,
    );
    near(allowable(ScrewProduct::Iso4014, 120.0), on(16.0), 1e-5);
}

#[test]
fn a_gap_between_timbers_costs_strength() {
    let apart = joists(ScrewProduct::Iso4014, 140.0, Some(plus_minus(10.0, 2.0)));
    // Bending is in the yield of the timber.
    assert!(
        !verdict(&apart)
            .checks
            .iter()
            .any(|check| check.mode == Mode::BoltBending)
    );
    // By hand, mode II by the general equations: q = 42.472 x 16 = 679.55 N/mm; A = 1/(2 q), B = 38 + 12 mm,
    // C = q 38^2 / 2 N mm; Z = (sqrt(B^2 + 4 A C) - B) / (2 A) = q (sqrt(50^2 + 38^2) - 50) = 8 700 N; over 3.6.
    let q: f64 = 6160.0 * 6.894_757e-3 * 16.0;
    let by_hand = q * ((50_f64.powi(2) + 38_f64.powi(2)).sqrt() - 50.0) / 3.6;
    near(2e3 / yields(&apart).utilisation.value, by_hand, 1e-5);
}

/// Whatever loads it: what is steel cannot be timber.
#[test]
fn a_ply_is_of_one_material() {
    for (across, along) in [(1e3, 0.0), (0.0, 1e3), (0.0, 0.0)] {
        let built = Stack::builder()
            .add(beam("C24", 100.0).material("ASTM A36 steel"))
            .add(steel())
            .shear_planes([1])
            .build();
        let refused = built.and_then(|stack| {
            let mut joint = timbered();
            joint.stack = stack;
            joint.load.across = newtons(across);
            joint.load.along = newtons(along);
            joint.check()
        });
        let error = refused.unwrap_err().to_string();
        assert!(error.contains("beam"), "{error}");
    }
}

/// The equations are for members that all carry: packing between two timbers, or outside of them, is none of them. The
/// bolt turns in a lap otherwise than in a member that is held on both sides (EN 1995-1-1, 8.2.2: 8.6 and 8.7).
#[test]
fn packing_is_no_member() {
    let mut joint = timbered();
    let ply = |pull| beam("C24", 60.0).pulls(pull);
    for (pulls, right) in [
        ([0.5, -1.0, 0.5], false),
        ([1.0, 0.0, -1.0], true),
        ([1.0, -1.0, 0.0], true),
        ([0.0, 1.0, -1.0], true),
    ] {
        joint.stack = crate::joints::stacked(pulls.map(ply));
        let packed = is_open(&joint, "yield in timber: packing");
        assert_eq!(packed, right, "{pulls:?}: {:?}", open(&joint));
    }
}

/// Net section and tear-out of the timber are not known here; those of the steel are.
#[test]
fn sections_of_the_steel_are_known() {
    let joint = timbered();
    let found = verdict(&joint);
    for missing in &found.missing {
        if matches!(missing.mode, Mode::NetSection | Mode::TearOut) {
            assert_eq!(missing.place, Place::Ply(2), "{missing}");
        }
    }
    assert_eq!(found.missing.len(), 2);
}

/// Several bolts say how far they stand from each other, in timber as in steel.
#[test]
fn bolts_in_timber_say_how_far_apart_they_are() {
    use shankline::joint::Pattern;
    for (along, across, needs) in [
        (1, 1, [false, false]),
        (2, 1, [true, false]),
        (1, 2, [false, true]),
    ] {
        let mut joint = timbered();
        joint.pattern = Pattern::Rows { along, across };
        let found = ["along", "across"].map(|way| {
            let start = "distances of holes, ply 2: the distance to the next hole";
            is_open(&joint, &format!("{start} {way} the load"))
        });
        assert_eq!(found, needs, "{along} {across}");
    }
}

/// EN 1995-1-1, 8.2.2(2): the pull of the bolt adds what the washers bear at most; one that is pulled adds nothing, and of none
/// nothing is asked.
#[test]
fn the_pull_of_the_bolt_counts_once() {
    let with = |axial: f64, pull: f64| {
        let mut joint = timbered();
        joint.stack = crate::joints::stacked([beam("C24", 60.0), beam("C24", 60.0)]);
        joint.methods.timber = Some(TimberMethod::En1995 {
            axial: newtons(axial),
            kmod: 0.7,
            gamma_m: 1.3,
        });
        joint.load.along = newtons(pull);
        20.0 / yields(&joint).utilisation.value
    };
    let none = with(0.0, 0.0);
    // By hand: a quarter of 2 kN, 0.7 / 1.3 of it.
    assert!((with(2e3, 0.0) - none - 0.25 * 2.0 * 0.7 / 1.3).abs() < 1e-6);
    assert!((with(2e3, 1e3) - none).abs() < 1e-9);
    assert!((with(0.0, 1e3) - none).abs() < 1e-9);
    // The washer of 30 mm bears less than any pull.
    assert!(with(1e9, 0.0) < with(1e6, 0.0) + 1e-9);
}
