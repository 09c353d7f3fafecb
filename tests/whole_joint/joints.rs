//! Joints that are described whole, for tests to spoil, and what is asked of their verdicts.

use shankline::error::Amount;
use shankline::joint::{
    Environment, Finding, Finish, Joint, JointBolt, JointLoad, JointMethods, JointNut, JointPly,
    JointWasher, Pattern, Scope, Slip, Tightening, TorqueTightening, Verdict,
};
use shankline::prelude::*;
use shankline::strength::check::{Check, Level, Mode, Place};
use shankline::strength::slip::SlipMethod;
use shankline::tables::galvanic::Metal;
use shankline::units::percent;

pub const BARE: Option<Finish> = Some(Finish::Bare(Metal::Steel));

/// A ply of ASTM A36 steel with an 18 mm hole, all its distances given.
pub fn plate(name: &str, thickness: Spread<Length>) -> JointPly {
    JointPly::new(name, thickness)
        .material("ASTM A36 steel")
        .hole(millimetres(18.0))
        .end_distance(millimetres(40.0))
        .edge_distance(millimetres(40.0))
        .width(millimetres(80.0))
}

pub fn plus_minus(nominal: f64, by: f64) -> Spread<Length> {
    millimetres(nominal).plus_minus(millimetres(by))
}

pub fn mm(length: f64) -> Spread<Length> {
    Spread::exact(millimetres(length))
}

/// The same stack with other plies.
pub fn stacked(plies: impl IntoIterator<Item = JointPly>) -> Stack {
    let washer = JointWasher::find(WasherStyle::Iso7089, &"M16".parse().unwrap()).unwrap();
    let washer = washer.hardness(300.0);
    let plies: Vec<JointPly> = plies.into_iter().collect();
    let planes = 1..plies.len();
    let mut builder = Stack::builder().washer_under_head(washer.clone());
    for ply in plies {
        builder = builder.add(ply);
    }
    let builder = builder.shear_planes(planes);
    builder.washers_under_nut(washer, 1).build().unwrap()
}

/// The joint with one of its plies, counted from 1, changed.
pub fn with_ply(joint: &mut Joint, number: usize, change: impl FnOnce(&mut JointPly)) {
    let mut plies = joint.stack.plies().to_vec();
    change(&mut plies[number - 1]);
    joint.stack = stacked(plies);
}

/// Two plates of a mezzanine frame and one M16 bolt; invented.
pub fn frame() -> Joint {
    let ply = plus_minus(20.0, 0.3);
    Joint {
        title: "frame plate (invented)".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread: "M16".parse().unwrap(),
            grade: BoltGrade::Iso(PropertyClass::Class8_8),
            length: None,
            finish: BARE,
        },
        nut: Some(JointNut {
            style: NutStyle::Iso4032,
            grade: Some(NutGrade::Iso898_2Class8),
            finish: BARE,
        }),
        stack: stacked([plate("plate", ply), plate("bracket", ply)]),
        pattern: Pattern::Single,
        load: JointLoad {
            prying: Some(shankline::joint::Prying::None),
            load_factor: Some(1.0),
            ..JointLoad::none()
        },
        environment: Environment::workshop(),
        tightening: Some(Tightening::Snug),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
        scope: Scope::Joint,
        set_aside: Vec::new(),
        granted: Vec::new(),
        own: OwnParts::default(),
    }
}

/// The frame with so many kN across the axis of its bolt.
pub fn across(kilonewtons: f64) -> Joint {
    let mut joint = frame();
    joint.load.across = newtons(1e3 * kilonewtons);
    joint
}

/// The frame with so many kN along the axis of its bolt.
pub fn along(kilonewtons: f64) -> Joint {
    let mut joint = frame();
    joint.load.along = newtons(1e3 * kilonewtons);
    joint
}

/// A link of 20 mm between two ears of 10 mm, 2 to 4 mm of play on each side; invented. No washers.
pub fn clevis() -> Joint {
    let mut joint = frame();
    let play = Spread {
        min: millimetres(2.0),
        nominal: millimetres(3.0),
        max: millimetres(4.0),
    };
    let ear = plate("ear", plus_minus(10.0, 0.2));
    joint.stack = Stack::builder()
        .add(ear.clone())
        .gap(play)
        .add(plate("link", plus_minus(20.0, 0.4)))
        .gap(play)
        .add(ear)
        .shear_planes([1, 2])
        .build()
        .unwrap();
    joint.load.across = newtons(10e3);
    joint
}

/// Tightened to 75 % of the proof load, of which nothing is lost.
pub fn torque(min: f64, max: f64) -> TorqueTightening {
    let k = NutFactor::new(min, 0.18, max).unwrap();
    TorqueTightening::new(k, PreloadTarget::Reusable).relaxation(percent(0.0))
}

// What the field of a joint takes.
#[allow(clippy::unnecessary_wraps)]
pub fn tightened(min: f64, max: f64) -> Option<Tightening> {
    Some(Tightening::Torque(torque(min, max)))
}

pub fn slips_by_friction(friction: f64, safety_factor: f64) -> Slip {
    Slip::Resisted(SlipMethod::Stated {
        friction,
        safety_factor,
    })
}

pub fn verdict(joint: &Joint) -> Verdict {
    joint.check().unwrap()
}

/// What governs, with its utilisation.
pub fn governing(joint: &Joint) -> (Mode, Place, Level, f64) {
    let verdict = verdict(joint);
    let worst = verdict.governing().unwrap();
    let used = worst.utilisation.value;
    (worst.mode, worst.place, worst.level, used)
}

/// The one check of a mode at a place.
pub fn check_of(verdict: &Verdict, mode: Mode, place: Place) -> Check {
    let mut found = verdict.checks.iter();
    let found = found.find(|check| check.mode == mode && check.place == place);
    found
        .unwrap_or_else(|| panic!("{mode}, {place}: not checked\n{}", text(verdict)))
        .clone()
}

pub fn used(verdict: &Verdict, mode: Mode, place: Place) -> f64 {
    check_of(verdict, mode, place).utilisation.value
}

pub fn force(amount: Amount) -> f64 {
    match amount {
        Amount::Force(force) => force.value,
        other => panic!("{other:?}"),
    }
}

/// Every line of what keeps the word undecided.
pub fn open(joint: &Joint) -> Vec<String> {
    verdict(joint).open().map(ToString::to_string).collect()
}

pub fn is_open(joint: &Joint, start: &str) -> bool {
    open(joint).iter().any(|line| line.starts_with(start))
}

/// Whether a mode lacks something whose text has this part.
pub fn lacks(joint: &Joint, mode: Mode, part: &str) -> bool {
    let found = verdict(joint);
    let mut missing = found.missing.iter().filter(|missing| missing.mode == mode);
    missing.any(|missing| missing.to_string().contains(part))
}

pub fn faults(joint: &Joint) -> Vec<Finding> {
    verdict(joint).faults().copied().collect()
}

pub fn text(verdict: &Verdict) -> String {
    verdict.render(UnitSystem::Si).to_string()
}

/// Every working gives its numbers again.
pub fn workings_are_true(joint: &Joint) {
    let (with, workings) = joint.check_with_working().unwrap();
    assert_eq!(with, verdict(joint));
    for working in workings {
        working.check().unwrap();
    }
}

pub fn near(found: f64, by_hand: f64, within: f64) {
    assert!(
        (found / by_hand - 1.0).abs() < within,
        "{found}, by hand {by_hand}"
    );
}

/// The moment that a mode is held against.
pub fn torque_of(verdict: &Verdict, mode: Mode) -> Torque {
    match check_of(verdict, mode, Place::Bolt(1)).demand {
        Amount::Torque(moment) => moment,
        other => panic!("{other:?}"),
    }
}
