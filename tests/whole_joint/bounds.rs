//! Bounds of temperature, of pretension that a code wants, of own nuts and tapped parts; and how a verdict is told.

use crate::joints::{
    across, along, faults, lacks, mm, near, plate, stacked, torque, used, verdict,
};
use crate::tapped::foot;
use shankline::joint::{
    Environment, Finding, Joint, JointMethods, JointNut, JointStiffness, MaterialKind, NutProof,
    OwnMaterial, OwnNut, OwnStrength, Repeats, Scope, Slip, Tightening,
};
use shankline::parts::Locking;
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::strength::slip::{As4100Faces, Is800Surface, SlipClass, SlipMethod};
use shankline::strength::timber::TimberMethod;
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::units::{celsius, degrees, ksi, newtons_per_millimetre};

fn between(mut joint: Joint, coldest: f64, hottest: f64) -> Joint {
    joint.environment = Environment {
        coldest: celsius(coldest),
        hottest: celsius(hottest),
        ..joint.environment
    };
    joint
}

fn cautioned(joint: &Joint, part: &str) -> bool {
    let found = verdict(joint);
    let mut cautions = found.cautions.iter();
    cautions.any(|caution| caution.to_string().contains(part))
}

// Heat and frost.

/// Of a nut of one's own nothing is known above 35 C and below -20 C; of a stated strength above 35 C and below 10 C.
#[test]
fn own_parts_in_heat_and_frost() {
    let nut = || across(2.0).with_nut(OwnNut::new("turned nut", mm(16.0), Locking::None));
    let strength = OwnStrength::new("shop steel (invented)", megapascals(800.0));
    let bolt = || across(2.0).with_strength(strength.clone());
    for (coldest, hottest, of_nut, hot, cold) in [
        (20.0, 35.0, false, false, false),
        (20.0, 35.1, true, true, false),
        (10.0, 20.0, false, false, false),
        (9.9, 20.0, false, false, true),
        (-20.0, 20.0, false, false, true),
        (-20.1, 20.0, true, false, true),
    ] {
        let found = lacks(
            &between(nut(), coldest, hottest),
            Mode::Temperature,
            "of a nut of one's own nothing is known",
        );
        assert_eq!(found, of_nut, "{coldest} {hottest}");
        let bolt = between(bolt(), coldest, hottest);
        let found = ["no highest temperature", "no lowest temperature"];
        let found = found.map(|part| lacks(&bolt, Mode::Temperature, part));
        assert_eq!(found, [hot, cold], "{coldest} {hottest}");
    }
}

/// NDS bears less above 100 F and nothing is known above 150 F (65.5 C); EN 1995-1-1 ends at 60 C (both recalled).
#[test]
fn timber_in_heat() {
    let nds = TimberMethod::Nds {
        bending_yield: ksi(45.0),
        adjustment: 1.0,
    };
    let en = TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod: 0.7,
        gamma_m: 1.3,
    };
    let timbered = |method| {
        let mut joint = across(2.0);
        let beam = JointPly::new("beam", mm(60.0)).timber("C24", degrees(0.0));
        joint.stack = stacked([beam, plate("plate", mm(10.0))]);
        joint.methods.timber = Some(method);
        joint
    };
    for (method, hottest, lacking) in [
        (nds, 37.8, [false; 3]),
        (nds, 37.9, [true, false, false]),
        (nds, 65.5, [true, false, false]),
        (nds, 65.6, [false, true, false]),
        (en, 37.9, [false; 3]),
        (en, 60.0, [false; 3]),
        (en, 60.1, [false, false, true]),
    ] {
        let joint = between(timbered(method), 20.0, hottest);
        let parts = [
            "above 100 F",
            "NDS has no factor",
            "EN 1995-1-1 does not cover",
        ];
        let found = parts.map(|part| lacks(&joint, Mode::Temperature, part));
        assert_eq!(found, lacking, "{hottest}");
    }
    // In the weather it bears less: EN 1995-1-1 Table 3.1 has at most 0.9.
    let wet = "in the weather timber bears less";
    let kmod = |kmod| TimberMethod::En1995 {
        axial: newtons(0.0),
        kmod,
        gamma_m: 1.3,
    };
    for (method, exposure, right) in [
        (nds, Exposure::Harsh, true),
        (nds, Exposure::Normal, false),
        (kmod(0.9), Exposure::Harsh, false),
        (kmod(0.91), Exposure::Harsh, true),
    ] {
        let mut joint = timbered(method);
        joint.environment.exposure = exposure;
        assert_eq!(lacks(&joint, Mode::TimberYield, wet), right);
    }
    let mut unsaid = timbered(nds);
    unsaid.methods.timber = None;
    unsaid.environment.exposure = Exposure::Harsh;
    assert!(!lacks(&unsaid, Mode::TimberYield, wet));
}

/// The strength of a hot bolt is what counts, and the stresses that a code prints are those of room temperature.
#[test]
fn a_hot_bolt_bears_less() {
    let cold = used(&verdict(&across(10.0)), Mode::BoltShear, Place::Plane(1));
    let hot = between(across(10.0), 20.0, 150.0);
    let found = verdict(&hot);
    let mut ratios = found.findings.iter().filter_map(|finding| match finding {
        Finding::WeakerWhenHot { ratio } => Some(ratio.value),
        _ => None,
    });
    let ratio = ratios.next().unwrap();
    assert!((0.8..0.99).contains(&ratio), "{ratio}");
    near(
        used(&found, Mode::BoltShear, Place::Plane(1)),
        cold / ratio,
        1e-9,
    );
    let of_code = "the stresses of the code are those of room temperature";
    assert!(!lacks(&hot, Mode::Temperature, of_code));
    let mut by_en = hot;
    by_en.methods = JointMethods::en_1993();
    assert!(lacks(&by_en, Mode::Temperature, of_code));
}

/// What heat does to the preload is not known where one ply has no expansion, whatever the other has.
#[test]
fn half_of_the_expansions_are_none() {
    let mut joint = between(across(2.0), 20.0, 60.0);
    let mut tight = torque(0.16, 0.2);
    tight.stiffness = Some(JointStiffness {
        bolt: newtons_per_millimetre(300e3),
        members: newtons_per_millimetre(1200e3),
    });
    joint.tightening = Some(Tightening::Torque(tight));
    let mut stuff = OwnMaterial::new("filler (invented)", MaterialKind::Other);
    stuff.yield_strength = Some(megapascals(200.0));
    let other = "6061-T6 aluminium, typical";
    for (second, known) in [
        (plate("b", mm(20.0)).material(other), true),
        (plate("b", mm(20.0)).material(stuff), false),
    ] {
        joint.stack = stacked([plate("a", mm(20.0)).material(other), second]);
        let none = newtons(0.0);
        let thermal = verdict(&joint).preload.unwrap().thermal;
        assert_eq!(thermal.iter().any(|change| *change != none), known);
        assert_eq!(
            lacks(&joint, Mode::Settling, "the coefficient of expansion"),
            !known
        );
    }
}

// Pretension that a code wants.

/// AISC 360 J3.1: A490 in tension always, A325 where it shakes or the pull varies; in shear alone none.
#[test]
fn pretension_is_wanted_for_a_pull_by_aisc() {
    let varies = |least: f64| Repeats::Between {
        across_least: newtons(0.0),
        along_least: newtons(1e3 * least),
        cycles: None,
    };
    let a325 = AstmGrade::F3125A325Type1;
    let a490 = AstmGrade::F3125A490Type1;
    let steady = Repeats::Never;
    for (number, (grade, pull, repeats, shakes, right)) in [
        (a325, 5.0, steady, false, false),
        (a325, 5.0, steady, true, true),
        (a325, 5.0, varies(0.0), false, true),
        (a325, 5.0, varies(4.9), false, true),
        (a325, 5.0, varies(5.0), false, false),
        (a325, 0.0, steady, true, false),
        (a490, 5.0, steady, false, true),
        (a490, 0.0, steady, false, false),
        (AstmGrade::A307A, 5.0, steady, true, false),
    ]
    .into_iter()
    .enumerate()
    {
        let mut joint = along(pull);
        joint.load.across = newtons(1e3);
        joint.bolt.product = if grade == AstmGrade::A307A {
            ScrewProduct::HexCapScrew
        } else {
            ScrewProduct::StructuralBolt
        };
        joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
        joint.bolt.grade = grade.into();
        joint.nut.as_mut().unwrap().style = NutStyle::HeavyHex;
        let ply = |name| plate(name, mm(20.0));
        let stack = Stack::builder()
            .add(ply("a"))
            .add(ply("b"))
            .shear_planes([1]);
        joint.stack = stack.build().unwrap();
        joint.load.repeats = repeats;
        joint.environment.vibration = shakes;
        joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2016);
        let wanted = |joint: &Joint| verdict(joint).findings.contains(&Finding::PretensionWanted);
        assert_eq!(wanted(&joint), right, "{number}");
        joint.methods = JointMethods::machine_design(2.0);
        assert!(!wanted(&joint), "{number}");
    }
}

/// EN 1993-1-8, 3.1.2, preloads sets to EN 14399; the other codes have structural bolts of their own, and against a torque that
/// was worked out.
#[test]
fn preloads_of_codes_want_their_bolts() {
    let by = |slip: Option<SlipMethod>, target| {
        let mut joint = across(2.0);
        joint.tightening = Some(Tightening::Torque(shankline::joint::TorqueTightening {
            target,
            ..torque(0.16, 0.2)
        }));
        joint.methods.slip = slip.map_or(Slip::Permitted, Slip::Resisted);
        joint
    };
    let set = |mut joint: Joint| {
        joint.bolt.product = ScrewProduct::En14399_3;
        joint.nut.as_mut().unwrap().style = NutStyle::En14399_3;
        joint
    };
    let (class, serviceability) = (SlipClass::C, false);
    let stated = SlipMethod::Stated {
        friction: 0.2,
        safety_factor: 1.5,
    };
    let en = SlipMethod::En1993 {
        class,
        serviceability,
    };
    let bs = SlipMethod::Bs5950 {
        class,
        serviceability,
    };
    let is = SlipMethod::Is800 {
        surface: Is800Surface::Untreated,
        serviceability,
    };
    let as_4100 = SlipMethod::As4100 {
        faces: As4100Faces::AsRolled,
    };
    let reusable = PreloadTarget::Reusable;
    let sets = "EN 1993-1-8 3.1.2 preloads sets";
    for (slip, target, right) in [
        (Some(en), reusable, true),
        (None, PreloadTarget::En1993, true),
        (None, PreloadTarget::En1993German, true),
        (Some(stated), reusable, false),
        (None, reusable, false),
    ] {
        assert_eq!(
            lacks(&by(slip, target), Mode::Preload, sets),
            right,
            "{target:?}"
        );
        assert!(
            !lacks(&set(by(slip, target)), Mode::Preload, sets),
            "{target:?}"
        );
    }
    let own = "the code has structural bolts of its own";
    let turn = "part turn from snug";
    for (slip, target, advice, of) in [
        (is, PreloadTarget::Is800, Some(turn), "IS 3757"),
        (bs, PreloadTarget::Bs4604, None, "BS 4395"),
        (as_4100, PreloadTarget::As4100, Some(turn), "AS/NZS 1252"),
    ] {
        let joint = by(Some(slip), reusable);
        assert!(lacks(&joint, Mode::Preload, own), "{of}");
        let joint = set(joint);
        assert!(!lacks(&joint, Mode::Preload, own), "{of}");
        assert!(cautioned(&joint, of), "{of}");
        // What the code counts on is held against what is there; unless the torque aims at it.
        let held = |joint: &Joint| {
            let found = verdict(joint);
            found.checks.iter().any(|check| check.mode == Mode::Preload)
        };
        assert!(held(&joint), "{of}");
        assert!(!held(&set(by(Some(slip), target))), "{of}");
        assert_eq!(cautioned(&joint, turn), advice.is_some(), "{of}");
    }
    let edition = AiscEdition::E2016;
    let aisc = by(
        Some(SlipMethod::Aisc360 {
            edition,
            class: SlipClass::A,
        }),
        reusable,
    );
    assert!(cautioned(&aisc, "pre-installation test of every lot"));
    assert!(!cautioned(
        &by(Some(stated), reusable),
        "pre-installation test of every lot"
    ));
}

// Threads that strip.

/// ISO 898-2: nuts from 0.8 d, M16: 12.8 mm; proved to what breaks the bolt, 800 MPa for class 8.8. Only what pulls strips.
#[test]
fn a_nut_of_ones_own_is_high_and_strong_enough() {
    let joint = |height: f64, proof: f64, pull: f64| {
        let mut nut = OwnNut::new("turned nut", mm(height), Locking::None);
        nut.proof = Some(NutProof::Stress(megapascals(proof)));
        nut.bearing_diameter = Some(millimetres(22.0));
        let mut joint = along(pull).with_nut(nut);
        joint.load.across = newtons(1e3);
        joint
    };
    let low = "the nut is lower than 0.8 diameters";
    for (height, right) in [(12.79, true), (12.81, false)] {
        assert_eq!(
            lacks(&joint(height, 800.0, 5.0), Mode::Stripping, low),
            right
        );
    }
    for (proof, right) in [(799.0, true), (800.0, false), (801.0, false)] {
        let weaker = !verdict(&joint(16.0, proof, 5.0))
            .missing
            .iter()
            .all(|missing| missing.mode != Mode::Pairing);
        assert_eq!(weaker, right, "{proof}");
    }
    // By hand: 10 kN of 800 MPa x 156.67 mm2 = 125.33 kN.
    near(
        used(
            &verdict(&joint(16.0, 800.0, 5.0)),
            Mode::Stripping,
            Place::Nut,
        ),
        10.0 / 125.33,
        1e-4,
    );
    let strips = |joint: &Joint| {
        let found = verdict(joint);
        found
            .checks
            .iter()
            .any(|check| check.mode == Mode::Stripping)
    };
    assert!(!strips(&joint(16.0, 800.0, 0.0)));
    assert!(strips(&along(5.0)) && !strips(&across(5.0)));
}

/// A wall thinner than 1.9 diameters widens under load (E. M. Alexander, SAE 770420): M12, 22.8 mm wide, or half to an edge.
#[test]
fn a_thin_wall_around_a_thread_widens() {
    let thin = "the wall around the thread is thin";
    for (width, edge, right) in [
        (None, None, false),
        (Some(22.7), None, true),
        (Some(22.9), None, false),
        (None, Some(11.3), true),
        (None, Some(11.5), false),
        (Some(40.0), Some(11.3), true),
        (Some(22.7), Some(20.0), true),
        (Some(40.0), Some(20.0), false),
    ] {
        let mut joint = foot();
        let mut part = joint.stack.tapped_part().unwrap().clone();
        part.width = width.map(millimetres);
        part.edge_distance = edge.map(millimetres);
        let first = joint.stack.plies()[0].clone();
        let stack = Stack::builder().add(first).tapped(part).shear_planes([1]);
        joint.stack = stack.build().unwrap();
        assert_eq!(
            lacks(&joint, Mode::Stripping, thin),
            right,
            "{width:?} {edge:?}"
        );
    }
}

/// A nut whose coating nobody says is as strong as the weaker of those tapped as usual and tapped oversize.
#[test]
fn a_nut_that_nobody_describes_is_the_weaker() {
    let bears = |grade: NutGrade, finish| {
        let mut joint = along(5.0);
        joint.nut = Some(JointNut {
            style: NutStyle::HeavyHex,
            grade: Some(grade),
            finish,
        });
        joint.bolt.product = ScrewProduct::StructuralBolt;
        joint.bolt.thread = "5/8-11 UNC".parse().unwrap();
        joint.bolt.grade = AstmGrade::F3125A325Type1.into();
        let stack = Stack::builder().add(plate("a", mm(20.0)));
        joint.stack = stack.add(plate("b", mm(20.0))).build().unwrap();
        1.0 / used(&verdict(&joint), Mode::Stripping, Place::Nut)
    };
    let (bare, dipped) = (Finish::Bare(Metal::Steel), Finish::HotDipGalvanized);
    let mut differ = false;
    for grade in [
        NutGrade::AstmA563A,
        NutGrade::AstmA563C,
        NutGrade::AstmA563Dh,
    ] {
        let (usual, oversize) = (bears(grade, Some(bare)), bears(grade, Some(dipped)));
        differ |= oversize < 0.99 * usual;
        near(bears(grade, None), usual.min(oversize), 1e-12);
    }
    assert!(differ);
}

// How it is told.

/// A bare stainless finish belongs to a stainless grade, and of a stated one nobody knows.
#[test]
fn a_finish_belongs_to_its_steel() {
    let finish = Some(Finish::Bare(Metal::Stainless18Chromium));
    let mut joint = across(2.0);
    joint.bolt.finish = finish;
    assert!(joint.check().is_err());
    let strength = OwnStrength::new("shop steel (invented)", megapascals(800.0));
    let stated = joint.clone().with_strength(strength);
    assert!(stated.check().is_ok());
    joint.bolt.grade = BoltGrade::Stainless(StainlessClass::A2_70);
    assert!(joint.check().is_ok());
    joint.bolt.finish = Some(Finish::Bare(Metal::Steel));
    assert!(joint.check().is_err());
}

/// The fact that most modes wait for comes first, each once, with its places once.
#[test]
fn what_decides_most_is_asked_first() {
    let mut joint = across(2.0);
    joint.nut.as_mut().unwrap().grade = None;
    // The load factor is missed first, and once.
    joint.methods = JointMethods::en_1993();
    joint.load.load_factor = None;
    let unknown = |name: &str| JointPly::new(name, mm(20.0));
    joint.stack = stacked([unknown("a"), unknown("b")]);
    let found = verdict(&joint);
    let asked = found.to_decide();
    let waits = |need: &shankline::joint::Need| {
        found.open().filter(|missing| missing.need == *need).count()
    };
    assert_eq!(waits(&shankline::joint::Need::LoadFactor), 1);
    let counts: Vec<usize> = asked.iter().map(|(need, _)| waits(need)).collect();
    assert!(
        counts.len() > 3 && counts[0] > counts[counts.len() - 1],
        "{counts:?}"
    );
    assert!(
        counts.windows(2).all(|pair| pair[0] >= pair[1]),
        "{counts:?}"
    );
    for (need, places) in asked {
        let mut seen = places.clone();
        seen.sort();
        seen.dedup();
        assert_eq!(seen.len(), places.len(), "{need}");
        for missing in found.open().filter(|missing| missing.need == *need) {
            assert!(places.contains(&missing.place), "{missing}");
        }
    }
}

/// The headline counts the other reasons; the answer of the bolt alone has no fault of a ply, and keeps what is to be done.
#[test]
fn the_headline_counts_the_reasons() {
    let end = |joint: &Joint| {
        let text = verdict(joint).headline(UnitSystem::Si);
        let more = text.rsplit_once("; and ").map(|(_, more)| more.to_owned());
        (text.starts_with("DOES NOT HOLD"), more)
    };
    let mut joint = across(2.0);
    joint.environment.vibration = true;
    assert_eq!(faults(&joint).len(), 1);
    assert_eq!(end(&joint), (true, None));
    let short = |name: &str| plate(name, mm(20.0)).edge_distance(millimetres(9.0));
    joint.stack = stacked([short("a"), plate("b", mm(20.0))]);
    assert_eq!(end(&joint), (true, Some("1 reason more".into())));
    joint.stack = stacked([short("a"), short("b")]);
    assert_eq!(end(&joint), (true, Some("2 reasons more".into())));
    let cut = |joint: &Joint| {
        let found = verdict(joint).findings;
        found
            .iter()
            .any(|finding| matches!(finding, Finding::Cut { .. } | Finding::AddWashers { .. }))
    };
    assert!(cut(&joint));
    joint.scope = Scope::Bolt;
    assert!(cut(&joint) && faults(&joint).is_empty());
}
