//! The working, in the symbols of the standard.

use super::joint::{Factors, JointSlip, SlipFriction};
use super::result::FastenedCheck;
use crate::derivation::{Derivation, Step};
use crate::source::Method;
use crate::tables::methods;
use crate::units::Force;

pub(super) fn derivation(check: &FastenedCheck) -> Derivation {
    let joint = &check.joint;
    let steps = Derivation::new("NASA-STD-5020, one bolt")
        .and(check.preload.derivation())
        .and(joint.share.derivation());
    let steps = tension(check, first(check, steps));
    let steps = separation(check, steps);
    slip(check, shear(check, steps))
}

/// Eq. 10 and 11.
fn first(check: &FastenedCheck, mut steps: Derivation) -> Derivation {
    const FIRST: &Method = methods::NASA_STD_5020_EQ_10_AND_11;
    let greatest = check.preload.service_max;
    let felt = check.joint.share.share;
    let allowable = &check.joint.allowable;
    if let Some(load) = check.separation_load {
        steps = steps.step(
            Step::new(
                "load that parts the joint",
                "P'sep",
                "Ppmax / (1 - nphi)",
                load,
            )
            .with("Ppmax", greatest)
            .with("nphi", felt)
            .source(FIRST),
        );
    }
    for (what, symbol, formula, load, name, bears) in [
        (
            "load that breaks the bolt of a closed joint",
            "P'tu",
            "(Ptuallow - Ppmax) / nphi",
            check.rupture_load,
            "Ptuallow",
            allowable.ultimate_tension,
        ),
        (
            "load that makes the bolt of a closed joint yield",
            "P'ty",
            "(Ptyallow - Ppmax) / nphi",
            check.yield_load,
            "Ptyallow",
            allowable.yield_tension,
        ),
    ] {
        if let Some(load) = load {
            steps = steps.step(
                Step::new(what, symbol, formula, load)
                    .with(name, bears)
                    .with("Ppmax", greatest)
                    .with("nphi", felt)
                    .source(FIRST),
            );
        }
    }
    steps
}

/// Eq. 6 and 7.
fn tension(check: &FastenedCheck, mut steps: Derivation) -> Derivation {
    let joint = &check.joint;
    let Factors {
        fitting,
        ultimate,
        yielding,
        ..
    } = joint.factors;
    let load = joint.loads.tension;
    for (what, symbol, formula, margin, name, bears, factor, by) in [
        (
            "margin of safety, ultimate tension",
            "MSu",
            "Pu / (FF * FSu * PtL) - 1",
            check.margins.ultimate_tension,
            ("Pu", "FSu"),
            check.ultimate,
            ultimate,
            methods::NASA_STD_5020_EQ_6_AND_7,
        ),
        (
            "margin of safety, yield",
            "MSy",
            "Py / (FF * FSy * PtL) - 1",
            check.margins.yielding,
            ("Py", "FSy"),
            check.yielding,
            yielding,
            methods::NASA_STD_5020_EQ_6_AND_7_AT_YIELD,
        ),
    ] {
        if let Some(margin) = margin {
            steps = steps
                .step(Step::given("tension that counts", name.0, bears).source(by))
                .step(
                    Step::new(what, symbol, formula, margin)
                        .with(name.0, bears)
                        .with("FF", fitting)
                        .with(name.1, factor)
                        .with("PtL", load)
                        .source(by),
                );
        }
    }
    steps
}

/// Figure 1 and Eq. 19.
fn separation(check: &FastenedCheck, steps: Derivation) -> Derivation {
    let factors = &check.joint.factors;
    let steps = steps
        .step(
            Step::given("fitting factor", "FF", factors.fitting)
                .source(methods::NASA_STD_5020_FITTING_FACTOR),
        )
        .step(
            Step::given("factor against separation", "FSsep", factors.separation())
                .source(methods::NASA_STD_5020_FIGURE_1),
        );
    let Some(margin) = check.margins.separation else {
        return steps;
    };
    steps.step(
        Step::new(
            "margin of safety, separation",
            "MSsep",
            "Ppmin / (FF * FSsep * PtL) - 1",
            margin,
        )
        .with("Ppmin", check.preload.service_min)
        .with("FF", factors.fitting)
        .with("FSsep", factors.separation())
        .with("PtL", check.joint.loads.tension)
        .source(methods::NASA_STD_5020_EQ_19),
    )
}

/// Eq. 12 to 14, 20 and 22.
fn shear(check: &FastenedCheck, mut steps: Derivation) -> Derivation {
    let joint = &check.joint;
    if let Some(margin) = check.margins.shear {
        steps = steps.step(
            Step::new(
                "margin of safety, ultimate shear",
                "MSs",
                "Psuallow / (FF * FSu * PsL) - 1",
                margin,
            )
            .with("Psuallow", joint.allowable.ultimate_shear)
            .with("FF", joint.factors.fitting)
            .with("FSu", joint.factors.ultimate)
            .with("PsL", joint.loads.shear)
            .source(methods::NASA_STD_5020B_EQ_12_TO_14),
        );
    }
    if let Some(both) = &check.combined {
        steps = steps.and(both.derivation());
    }
    steps
}

fn slip(check: &FastenedCheck, steps: Derivation) -> Derivation {
    let JointSlip::Resisted {
        bolts,
        tension,
        shear,
        friction,
        factor,
    } = check.joint.slip
    else {
        return steps;
    };
    let by = match friction {
        SlipFriction::Tested(_) => methods::STATED_BY_THE_CALLER,
        _ => methods::NASA_STD_5020_FRICTION,
    };
    let steps = steps.step(Step::given("friction of the faces", "mu", friction.value()).source(by));
    let none = Force::default();
    let Some(margin) = check
        .margins
        .slip
        .filter(|_| tension > none || shear > none)
    else {
        return steps;
    };
    steps.step(
        Step::new(
            "margin of safety, slip of the joint",
            "MSslip",
            "nf * mu * Ppmin / (FF * FSs * (PsJ + mu * PtJ)) - 1",
            margin,
        )
        .with("nf", f64::from(bolts.get()))
        .with("mu", friction.value())
        .with("Ppmin", check.preload.service_min)
        .with("FF", check.joint.factors.fitting)
        .with("FSs", factor)
        .with("PsJ", shear)
        .with("PtJ", tension)
        .source(methods::NASA_STD_5020_JOINT_SLIP),
    )
}
