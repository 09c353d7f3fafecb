//! When a rule is asked and when it is not: each at its limit and on both sides.

use crate::joints::{
    BARE, across, along, check_of, faults, lacks, mm, near, plate, slips_by_friction, stacked,
    tightened, torque, used, verdict,
};
use shankline::error::Amount;
use shankline::joint::{
    Account, Finding, Joint, JointMethods, JointNut, NotConcerned, NutReason, OwnStrength, Repeats,
    Slip, Tightening,
};
use shankline::material::Misfit;
use shankline::prelude::*;
use shankline::strength::check::{Mode, Place};
use shankline::strength::shear::ShearMethod;
use shankline::strength::slip::{SlipClass, SlipMethod};
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::units::percent;

fn by_en(mut joint: Joint) -> Joint {
    joint.methods = JointMethods::en_1993();
    joint
}

// Coatings.

#[test]
fn a_stated_bolt_that_is_plated_may_be_brittle() {
    let unsaid = "how hard the bolt is at most is not known";
    let strength = OwnStrength::new("shop steel (invented)", megapascals(900.0));
    for (finish, right) in [
        (Finish::ZincPlated { baked: true }, true),
        (Finish::CadmiumPlated { baked: true }, true),
        (Finish::Bare(Metal::Nickel), true),
        (Finish::Bare(Metal::Steel), false),
        (Finish::ZincFlake, false),
    ] {
        let mut joint = across(5.0).with_strength(strength.clone());
        joint.bolt.finish = Some(finish);
        assert_eq!(lacks(&joint, Mode::Coating, unsaid), right, "{finish}");
        let mut listed = across(5.0);
        listed.bolt.finish = Some(finish);
        assert!(!lacks(&listed, Mode::Coating, unsaid), "{finish}");
    }
}

/// A hard bolt whose coating nobody names may have hydrogen in it.
#[test]
fn a_hard_bolt_is_asked_for_its_coating() {
    for (class, right) in [
        (PropertyClass::Class8_8, false),
        (PropertyClass::Class12_9, true),
    ] {
        let mut joint = across(5.0);
        joint.bolt.grade = class.into();
        joint.bolt.finish = None;
        let lacks = lacks(&joint, Mode::Coating, "the coating of the bolt");
        assert_eq!(lacks, right, "{class}");
    }
}

/// Threads that do not go together are found whether or not the nut has a grade; undersize threads below M12, whose loads
/// nobody has read, are missing (ISO 10684).
#[test]
fn coated_threads_fit_or_not() {
    let coated = |thread: &str, bolt, nut| {
        let mut joint = across(2.0);
        joint.bolt.thread = thread.parse().unwrap();
        let stack = Stack::builder().add(plate("a", mm(20.0)));
        joint.stack = stack
            .add(plate("b", mm(20.0)))
            .shear_planes([1])
            .build()
            .unwrap();
        joint.bolt.finish = Some(bolt);
        joint.nut = Some(JointNut {
            grade: None,
            finish: Some(nut),
            ..joint.nut.unwrap()
        });
        joint
    };
    let misfit = |joint: &Joint| {
        let found = faults(joint).into_iter();
        let mut found = found.filter_map(|fault| match fault {
            Finding::ThreadsDoNotFit { why } => Some(why),
            _ => None,
        });
        found.next()
    };
    let (steel, dipped) = (Finish::Bare(Metal::Steel), Finish::HotDipGalvanized);
    assert_eq!(misfit(&coated("M16", steel, steel)), None);
    assert_eq!(misfit(&coated("M16", dipped, dipped)), None);
    assert_eq!(
        misfit(&coated("M16", dipped, steel)),
        Some(Misfit::DoesNotStart)
    );
    assert_eq!(misfit(&coated("M16", steel, dipped)), Some(Misfit::Loose));
    let undersize = |thread| {
        let joint = coated(thread, Finish::HotDipGalvanizedUndersize, steel);
        verdict(&joint).account(Mode::ThreadFit)
    };
    assert_eq!(undersize("M10"), Account::Missing);
    assert_eq!(undersize("M12"), Account::InOrder);
}

/// Lock nuts are tested for five removals (ASME B18.16.6); a plain nut is not.
#[test]
fn a_lock_nut_is_refitted_five_times() {
    for (style, refits, right) in [
        (NutStyle::Iso7040, 5, false),
        (NutStyle::Iso7040, 6, true),
        (NutStyle::Iso4032, 6, false),
    ] {
        let mut joint = across(5.0);
        joint.nut.as_mut().unwrap().style = style;
        joint.environment.refits = refits;
        let lacks = lacks(
            &joint,
            Mode::Reuse,
            "lock nuts are tested for five removals",
        );
        assert_eq!(lacks, right, "{style} {refits}");
    }
}

/// Steel with nothing on it rusts in the weather, and there alone.
#[test]
fn bare_steel_rusts_in_the_weather() {
    let rusts = "bare steel rusts";
    let mut joint = across(5.0);
    for (exposure, right) in [
        (Exposure::Dry, false),
        (Exposure::Controlled, false),
        (Exposure::Normal, false),
        (Exposure::Harsh, true),
    ] {
        joint.environment.exposure = exposure;
        assert_eq!(lacks(&joint, Mode::Corrosion, rusts), right);
    }
    joint.bolt.finish = Some(Finish::ZincFlake);
    assert!(!lacks(&joint, Mode::Corrosion, rusts));
}

/// Of a ply of steel on one of timber the steel alone is asked what its surface is.
#[test]
fn timber_is_asked_for_no_metal() {
    let beam = JointPly::new("beam", mm(40.0)).timber("C24", shankline::units::degrees(0.0));
    let mut joint = across(2.0);
    joint.environment.exposure = Exposure::Normal;
    for (plies, asked) in [
        ([plate("plate", mm(10.0)), beam.clone()], [true, false]),
        ([beam, plate("plate", mm(10.0))], [false, true]),
    ] {
        joint.stack = stacked(plies);
        let found = ["ply 1: what a surface", "ply 2: what a surface"];
        let found = found.map(|part| lacks(&joint, Mode::Corrosion, part));
        assert_eq!(found, asked);
    }
}

// Shear and tension together.

/// A code for listed grades leaves the shear of a stated strength open; the pull alone does not stand for both.
#[test]
fn shear_that_is_not_known_is_not_taken_for_none() {
    let mut strength = OwnStrength::new("shop steel (invented)", megapascals(800.0));
    strength.yield_strength = Some(megapascals(640.0));
    strength.proof_stress = Some(megapascals(580.0));
    let mut joint = along(5.0).with_strength(strength);
    joint.load.across = newtons(5e3);
    let both = |joint: &Joint| {
        let found = verdict(joint);
        let checked = found
            .checks
            .iter()
            .any(|check| check.mode == Mode::Combined);
        (found.account(Mode::Combined), checked)
    };
    assert_eq!(both(&joint), (Account::InOrder, true));
    joint.methods.shear = ShearMethod::Bs449;
    assert_eq!(both(&joint), (Account::Missing, false));
    joint.load.along = newtons(0.0);
    let one = Account::NotConcerned(NotConcerned::OneLoad);
    assert_eq!(both(&joint), (one, false));
}

// What the clamp force holds.

fn slips_by_en() -> Slip {
    Slip::Resisted(SlipMethod::En1993 {
        class: SlipClass::B,
        serviceability: false,
    })
}

#[test]
fn slip_classes_are_of_steel() {
    let of_steel = "ply 2: the slip classes are of structural steel";
    for (material, by_class, right) in [
        ("S235 steel", true, false),
        ("6061-T6 aluminium, typical", true, true),
        ("6061-T6 aluminium, typical", false, false),
    ] {
        let mut joint = by_en(across(5.0));
        joint.tightening = tightened(0.16, 0.2);
        joint.methods.slip = if by_class {
            slips_by_en()
        } else {
            slips_by_friction(0.2, 1.25)
        };
        let second = plate("second", mm(20.0)).material(material);
        joint.stack = stacked([plate("first", mm(20.0)), second]);
        assert_eq!(lacks(&joint, Mode::Slip, of_steel), right, "{material}");
    }
}

/// Without a load across nothing slips; the preload that is left keeps the nut from spinning off.
#[test]
fn a_preload_holds_the_nut_until_nothing_is_left_of_it() {
    for (lost, spins) in [(0.0, false), (99.0, false), (100.0, true)] {
        let mut joint = along(0.1);
        joint.environment.vibration = true;
        joint.tightening = Some(Tightening::Torque(
            torque(0.16, 0.2).relaxation(percent(lost)),
        ));
        let found = verdict(&joint);
        let none = Account::NotConcerned(NotConcerned::NoLoadAcross);
        assert_eq!(found.account(Mode::Slip), none);
        let spun = found.findings.contains(&Finding::Nut(NutReason::SpinsFree));
        assert_eq!(spun, spins, "{lost} %");
    }
}

/// A pull that takes just all of the clamp force leaves nothing against slip.
#[test]
fn a_pull_as_great_as_the_clamp_force_slips() {
    let mut joint = across(1.0);
    joint.tightening = tightened(0.16, 0.2);
    joint.methods = JointMethods::machine_design(1.0);
    joint.methods.slip = slips_by_friction(0.2, 1.0);
    let clamp = verdict(&joint).preload.unwrap().in_service;
    for (share, right) in [(0.5, false), (1.0, true), (1.001, true)] {
        joint.load.along = share * clamp;
        assert_eq!(faults(&joint).contains(&Finding::Slips), right, "{share}");
    }
}

/// Nothing is left of the preload: it slips, whether or not the method knows the bolt.
#[test]
fn what_is_not_clamped_slips() {
    let mut joint = by_en(across(1.0));
    joint.bolt.grade = PropertyClass::Class5_6.into();
    joint.tightening = Some(Tightening::Torque(
        torque(0.16, 0.2).relaxation(percent(100.0)),
    ));
    joint.methods.slip = slips_by_en();
    assert!(faults(&joint).contains(&Finding::Slips));
}

/// One face that slips lets the nut turn, though the other holds; a plane that carries nothing is not held against slip.
#[test]
fn every_face_must_hold() {
    let three = |pulls: [f64; 3]| {
        let ply = |pull| plate("ply", mm(12.0)).pulls(pull);
        stacked(pulls.map(ply))
    };
    let mut joint = across(10.0);
    joint.environment.vibration = true;
    joint.tightening = tightened(0.18, 0.18);
    joint.methods.slip = slips_by_friction(0.1, 1.0);
    // By hand: 0.1 x 68.15 kN = 6.815 kN a face.
    for (pulls, held, faces) in [
        ([0.5, -1.0, 0.5], true, 2),
        ([0.7, -1.0, 0.3], false, 2),
        ([0.3, -1.0, 0.7], false, 2),
        ([0.0, -1.0, 1.0], false, 1),
    ] {
        joint.stack = three(pulls);
        let found = verdict(&joint);
        for mode in [Mode::Slip, Mode::BoltShear] {
            let own = found.checks.iter().filter(|check| check.mode == mode);
            assert_eq!(own.count(), faces, "{pulls:?}");
        }
        let spins = found.findings.contains(&Finding::Nut(NutReason::SpinsFree));
        assert_eq!(spins, !held, "{pulls:?}");
    }
}

/// EN 1090-2, 8.5.1: a tenth of what is tightened by EN 1993-1-8 may be lost; of another aim nothing.
#[test]
fn a_tenth_of_the_preload_may_be_lost() {
    let resists = |target, lost| {
        let mut joint = by_en(across(5.0));
        let tight = torque(0.16, 0.2).relaxation(percent(lost));
        joint.tightening = Some(Tightening::Torque(shankline::joint::TorqueTightening {
            target,
            ..tight
        }));
        joint.methods.slip = slips_by_en();
        let found = verdict(&joint);
        5.0 / used(&found, Mode::Slip, Place::Plane(1))
    };
    let en = PreloadTarget::En1993;
    let whole = resists(en, 0.0);
    // By hand: 0.7 x 800 MPa x 157 mm2 = 87.92 kN, friction 0.4 (class B), gamma 1.25: 28.134 kN.
    near(whole, 28.1344, 1e-6);
    near(resists(en, 5.0), whole, 1e-9);
    near(resists(en, 9.99), whole, 1e-9);
    near(resists(en, 11.0), 0.89 * whole, 1e-9);
}

// What tires.

fn between(across_least: f64, along_least: f64) -> Repeats {
    Repeats::Between {
        across_least: newtons(1e3 * across_least),
        along_least: newtons(1e3 * along_least),
        cycles: Some(2e6),
    }
}

/// EN 1993-1-8, 3.4.2 and 2.6: preload for a pull that varies, no slip for shear that reverses.
#[test]
fn what_varies_wants_preload_and_no_slip() {
    let preloaded = "EN 1993-1-8 3.4.2 wants preloaded bolts";
    let tight = tightened(0.16, 0.2);
    for (joint, least, tightening, right) in [
        (by_en(along(10.0)), 0.0, Some(Tightening::Snug), true),
        (by_en(along(10.0)), 10.0, Some(Tightening::Snug), false),
        (by_en(along(10.0)), 0.0, tight, false),
        (along(10.0), 0.0, Some(Tightening::Snug), false),
        (by_en(across(10.0)), -1.0, Some(Tightening::Snug), false),
    ] {
        let mut joint = joint;
        joint.load.repeats = between(0.0, least);
        joint.tightening = tightening;
        assert_eq!(lacks(&joint, Mode::Preload, preloaded), right, "{least}");
    }
    let reverses = "EN 1993-1-8 2.6 wants joints that do not slip";
    for (joint, least, slip, rotates, right) in [
        (by_en(across(10.0)), -1.0, Slip::Permitted, false, true),
        (by_en(across(10.0)), 0.0, Slip::Permitted, false, false),
        (by_en(across(10.0)), 1.0, Slip::Permitted, false, false),
        (by_en(across(10.0)), -1.0, slips_by_en(), false, false),
        (by_en(across(10.0)), -1.0, Slip::Permitted, true, false),
        (across(10.0), -1.0, Slip::Permitted, false, false),
    ] {
        let mut joint = joint;
        joint.load.repeats = between(least, 0.0);
        joint.tightening = tight_if(slip);
        joint.methods.slip = slip;
        joint.environment.rotates = rotates;
        assert_eq!(
            lacks(&joint, Mode::Slip, reverses),
            right,
            "{least} {slip:?}"
        );
    }
}

fn tight_if(slip: Slip) -> Option<Tightening> {
    if slip == Slip::Permitted {
        Some(Tightening::Snug)
    } else {
        tightened(0.16, 0.2)
    }
}

fn range(joint: &Joint, place: Place) -> f64 {
    match check_of(&verdict(joint), Mode::Fatigue, place).demand {
        Amount::Stress(stress) => stress.value / 1e6,
        other => panic!("{other:?}"),
    }
}

/// The range of the stress, by hand: of shear what shock and share make of the load, on 201.06 mm2 of shank; of tension
/// greatest less least on 156.67 mm2.
#[test]
fn ranges_are_greatest_less_least() {
    let mut joint = by_en(across(10.0));
    joint.load.repeats = between(2.0, 0.0);
    joint.load.shock_factor = 2.0;
    let ply = |pull| plate("ply", mm(12.0)).pulls(pull);
    joint.stack = stacked([ply(0.5), ply(-1.0), ply(0.5)]);
    let one = range(&joint, Place::Plane(1));
    near(one, 2.0 * 0.5 * 8e3 / 201.06, 1e-4);
    joint.stack = stacked([ply(0.0), ply(-1.0), ply(1.0)]);
    let found = verdict(&joint);
    let tired = found
        .checks
        .iter()
        .filter(|check| check.mode == Mode::Fatigue);
    let places: Vec<Place> = tired.map(|check| check.place).collect();
    assert_eq!(places, [Place::Plane(2)]);

    for methods in [
        JointMethods::en_1993(),
        JointMethods::machine_design(2.0),
        JointMethods::aisc_asd(AiscEdition::E2016),
    ] {
        let mut joint = along(10.0);
        joint.methods = methods;
        joint.load.repeats = between(0.0, 4.0);
        near(range(&joint, Place::Bolt(1)), 6e3 / 156.67, 1e-4);
        // What only presses takes nothing off, for there is nothing.
        joint.load.repeats = between(0.0, -4.0);
        near(range(&joint, Place::Bolt(1)), 10e3 / 156.67, 1e-4);
        joint.load.along = newtons(0.0);
        let account = verdict(&joint).account(Mode::Fatigue);
        assert_eq!(account, Account::NotConcerned(NotConcerned::Steady));
    }
}

/// A preloaded bolt by EN 1993-1-8 goes by the curve of EN 1993-1-9, for its share of the range; by machine design by the
/// line of Goodman.
#[test]
fn a_preloaded_bolt_tires_by_its_code() {
    let mut joint = along(10.0);
    joint.load.repeats = between(0.0, 4.0);
    joint.tightening = tightened(0.16, 0.2);
    for (methods, part) in [
        (JointMethods::en_1993(), "EN 1993-1-9"),
        (JointMethods::machine_design(2.0), "Goodman"),
    ] {
        joint.methods = methods;
        let check = check_of(&verdict(&joint), Mode::Fatigue, Place::Bolt(1));
        assert!(
            check.method.citation.contains(part),
            "{}",
            check.method.citation
        );
    }
    // C of bolt and plates is some 0.2 to 0.3: the range is that much of 6 kN.
    joint.methods = JointMethods::en_1993();
    let whole = 6e3 / 156.67;
    let found = range(&joint, Place::Bolt(1));
    assert!(
        (0.1 * whole..0.4 * whole).contains(&found),
        "{found} of {whole}"
    );
}

/// AISC 360 appendix 3: a fifth of the range comes to a pretensioned bolt between plies of steel, else all of it.
#[test]
fn a_fifth_of_the_range_between_steel_alone() {
    let edition = AiscEdition::E2016;
    let joint = |material: &str, pretensioned: bool| {
        let mut joint = along(10.0);
        joint.bolt.product = ScrewProduct::StructuralBolt;
        joint.bolt.thread = "3/4-10 UNC".parse().unwrap();
        joint.bolt.grade = AstmGrade::F3125A325Type1.into();
        joint.nut = Some(JointNut {
            style: NutStyle::HeavyHex,
            grade: Some(NutGrade::AstmA563Dh),
            finish: BARE,
        });
        let ply = |name| plate(name, mm(20.0)).hole(millimetres(20.6));
        let stack = Stack::builder()
            .add(ply("a"))
            .add(ply("b").material(material));
        joint.stack = stack.build().unwrap();
        joint.load.repeats = between(0.0, 0.0);
        joint.methods = JointMethods::aisc_lrfd(edition);
        if pretensioned {
            let mut tight = torque(0.17, 0.21);
            tight.target = PreloadTarget::AiscJ31 { edition };
            joint.tightening = Some(Tightening::Torque(tight));
        }
        range(&joint, Place::Bolt(1))
    };
    let steel = "ASTM A36 steel";
    let whole = joint(steel, false);
    near(joint(steel, true), 0.2 * whole, 1e-9);
    near(joint("6061-T6 aluminium, typical", true), whole, 1e-9);
}

// Length and loads.

/// EN 1090-2, 8.2.2: one full thread clear between nut and shank. M16 x 80 has 38 mm of thread (2 d + 6) and six pitches at
/// most are not full: 80 - 38 = 42 mm of shank, and what is clamped beyond it is thread.
#[test]
fn a_full_thread_stays_clear() {
    let clear = |joint: &Joint| {
        let found = faults(joint).into_iter();
        let mut found = found.filter_map(|fault| match fault {
            Finding::ClearThreads { found, least } => Some((found, least)),
            _ => None,
        });
        found.next()
    };
    let joint = |grip: f64| {
        let mut joint = by_en(across(5.0));
        joint.bolt.length = Some(millimetres(80.0));
        let half = mm(0.5 * grip);
        let stack = Stack::builder().add(plate("a", half)).add(plate("b", half));
        joint.stack = stack.shear_planes([1]).build().unwrap();
        joint
    };
    let clears = |joint: &Joint| joint.check().unwrap().candidate.clear_threads;
    let mut seen = [false; 3];
    for tenths in 400..600 {
        let joint = joint(0.1 * f64::from(tenths));
        let full = clears(&joint);
        let expected = (full < 1.0).then_some((full, 1.0));
        assert_eq!(clear(&joint), expected);
        seen[usize::from(full < 1.0)] = true;
        if (0.0..1.0).contains(&full) {
            seen[2] = true;
            let mut other = joint.clone();
            other.methods = JointMethods::machine_design(2.0);
            assert_eq!(clear(&other), None);
            let mut pivot = joint.clone();
            pivot.environment.rotates = true;
            assert_eq!(clear(&pivot), None);
        } else if (1.0..4.0).contains(&full) {
            let mut tight = joint.clone();
            tight.tightening = tightened(0.16, 0.2);
            assert_eq!(clear(&tight), Some((full, 4.0)));
        }
    }
    assert_eq!(seen, [true; 3]);
}

#[test]
fn loads_are_asked_for() {
    for (joint, planes, right) in [
        (across(5.0), false, true),
        (across(5.0), true, false),
        (along(5.0), false, false),
    ] {
        let mut joint = joint;
        if !planes {
            let stack = Stack::builder().add(plate("a", mm(20.0)));
            joint.stack = stack.add(plate("b", mm(20.0))).build().unwrap();
        }
        assert_eq!(
            lacks(&joint, Mode::Loads, "no shear plane that carries it"),
            right
        );
    }
}
