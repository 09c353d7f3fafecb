//! What random joints live through: loads, surroundings, tightening, rules.

use shankline::joint::*;
use shankline::prelude::*;
use shankline::strength::check::Level;
use shankline::tables::galvanic::Exposure;
use shankline::units::{celsius, percent};

use super::Dice;

pub fn load(dice: &mut Dice, d: Length, level: Level, silent: f64) -> JointLoad {
    let square: Area = d * d;
    let mut force = |percent: f64| {
        let is_there = !dice.unsaid(100.0 - percent);
        let most = if dice.mild { -0.7 } else { 0.3 };
        let stress = megapascals(300.0 * 10_f64.powf(dice.between(-2.0, most)));
        if is_there {
            square * stress
        } else {
            newtons(0.0)
        }
    };
    let (across, along) = (force(85.0), force(35.0));
    let mut load = JointLoad {
        across,
        along,
        ..JointLoad::none()
    };
    if !dice.unsaid(silent) {
        load.prying = Some(dice.one(&[Prying::None, Prying::InLoad]));
    }
    if level == Level::Design && !dice.unsaid(silent)
        || level != Level::Design && dice.now_and_then(10.0)
    {
        load.load_factor = Some(dice.between(1.0, 1.6));
    }
    if dice.now_and_then(30.0) {
        load.shock_factor = dice.between(1.0, 3.0);
    }
    if dice.now_and_then(15.0) {
        load.repeats = Repeats::Between {
            across_least: if dice.now_and_then(30.0) {
                0.2 * across
            } else {
                across
            },
            along_least: dice.between(-0.5, 1.0) * along,
            cycles: Some(10_f64.powf(dice.between(3.0, 8.0))).filter(|_| !dice.now_and_then(20.0)),
        };
    }
    load
}

pub fn environment(dice: &mut Dice, exposure: Exposure) -> Environment {
    let heat = dice.now_and_then(12.0);
    Environment {
        coldest: celsius(if heat {
            dice.between(20.0, -60.0)
        } else {
            20.0
        }),
        hottest: celsius(if heat {
            dice.between(20.0, 350.0)
        } else {
            20.0
        }),
        vibration: dice.now_and_then(10.0),
        rotates: dice.now_and_then(3.0),
        dangerous_if_lost: dice.now_and_then(4.0),
        refits: usize::from(dice.now_and_then(15.0)) * 3,
        exposure,
    }
}

pub fn tightening(dice: &mut Dice, silent: f64, shear: ShearMethod) -> Option<Tightening> {
    if dice.unsaid(silent) {
        return None;
    }
    if !dice.unsaid(40.0) {
        return Some(Tightening::Snug);
    }
    let k = dice.between(0.12, 0.2);
    let nut_factor = NutFactor::new(0.9 * k, k, dice.between(1.05, 1.3) * k).unwrap();
    let target = match (shear, dice.below(8)) {
        (ShearMethod::En1993, 4..) => PreloadTarget::En1993,
        (ShearMethod::Aisc360 { edition }, 4..) => PreloadTarget::AiscJ31 { edition },
        (ShearMethod::Is800, 4..) => PreloadTarget::Is800,
        (ShearMethod::Bs5950, 4..) => PreloadTarget::Bs4604,
        (ShearMethod::As4100, 4..) => PreloadTarget::As4100,
        (_, 7) => dice.one(&[
            PreloadTarget::Permanent,
            PreloadTarget::JuvinallMarshek,
            PreloadTarget::En1993,
        ]),
        _ => PreloadTarget::Reusable,
    };
    let mut torque = TorqueTightening::new(nut_factor, target);
    if !dice.unsaid(silent) {
        torque = torque.relaxation(percent(dice.between(5.0, 30.0)));
    }
    if dice.now_and_then(15.0) {
        torque.settling = Some(millimetres(dice.between(0.0, 0.03)));
    }
    if dice.now_and_then(20.0) {
        let running = newton_metres(dice.between(1.0, 8.0));
        torque = torque.prevailing(Spread {
            min: 0.6 * running,
            nominal: running,
            max: 1.4 * running,
        });
    }
    if dice.now_and_then(10.0) {
        torque.stiffness = Some(JointStiffness {
            bolt: shankline::units::newtons_per_millimetre(dice.between(100e3, 400e3)),
            members: shankline::units::newtons_per_millimetre(dice.between(400e3, 2e6)),
        });
    }
    Some(Tightening::Torque(torque))
}

pub fn rules(dice: &mut Dice, inch: bool) -> LengthRules {
    let system = if inch {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    let rules = LengthRules::fabrication(system);
    match dice.below(4) {
        0 | 1 => rules.with_protrusion(2.0, None),
        2 => rules,
        _ => rules.with_cut(CutRule::Never).with_protrusion(1.0, None),
    }
}
