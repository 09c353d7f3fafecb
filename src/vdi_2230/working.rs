//! The working, in the symbols of the guideline.

use core::f64::consts::PI;

use super::joint::{BoltSpring, Embedding, PlateSpring, Scatter, Transverse};
use super::result::ConcentricCheck;
use crate::derivation::{Derivation, Step};
use crate::math;
use crate::source::Method;
use crate::tables::methods;
use crate::units::{Force, Length, Stiffness, from_base, kilonewtons, millimetres};

pub(super) fn derivation(check: &ConcentricCheck) -> Derivation {
    let steps = Derivation::new("VDI 2230 Part 1, one bolt, clamped and loaded through its axis");
    let steps = load_factor(check, clamp(check, steps));
    let steps = required(check, changes(check, steps));
    let steps = working_stress(check, assembly(check, steps));
    residual(check, faces(check, steps))
}

/// R1 and R2.
fn clamp(check: &ConcentricCheck, steps: Derivation) -> Derivation {
    let joint = &check.joint;
    let factor = Step::given("R1: tightening factor", "alphaA", check.tightening_factor);
    let factor = match joint.scatter {
        Scatter::Stated(_) => factor.source(methods::STATED_BY_THE_CALLER),
        Scatter::Listed(row) => factor.source(row.provenance),
    };
    let seal = joint.loads.seal;
    let steps = steps.step(factor);
    let (
        Some(slip),
        Transverse::Load {
            force,
            friction,
            interfaces,
            ..
        },
    ) = (&check.slip, joint.loads.transverse)
    else {
        return steps.step(
            Step::new(
                "R2: required clamp force",
                "FKerf",
                "FKP",
                check.required_clamp,
            )
            .with("FKP", seal)
            .source(methods::VDI2230_R2),
        );
    };
    steps
        .step(
            Step::new(
                "R2: clamp force for friction",
                "FKQ",
                "FQmax / (qF * muT)",
                slip.clamp,
            )
            .with("FQmax", force)
            .with("qF", usize::from(interfaces))
            .with("muT", friction)
            .source(methods::VDI2230_R2),
        )
        .step(
            Step::new(
                "R2: required clamp force",
                "FKerf",
                "max(FKQ, FKP)",
                check.required_clamp,
            )
            .with("FKQ", slip.clamp)
            .with("FKP", seal)
            .source(methods::VDI2230_R2),
        )
}

/// A resilience in mm/kN, as no quantity of the crate has its dimension.
fn resilience(stiffness: Stiffness) -> f64 {
    (kilonewtons(1.0).value / millimetres(1.0).value) / stiffness.value
}

/// R3.
fn load_factor(check: &ConcentricCheck, mut steps: Derivation) -> Derivation {
    let joint = &check.joint;
    let of = |what: &'static str, symbol: &'static str, stiffness| {
        Step::new(what, symbol, "kN / (mm * k)", resilience(stiffness))
            .with("kN", kilonewtons(1.0))
            .with("mm", millimetres(1.0))
            .with("k", stiffness)
    };
    if let BoltSpring::Parts(parts) = &joint.bolt {
        steps.append(parts.derivation());
    }
    if let PlateSpring::Parts(parts) = &joint.plates {
        steps.append(parts.derivation());
    }
    let (bolt, plates) = (joint.bolt.stiffness(), joint.plates.stiffness());
    steps
        .step(of("R3: resilience of the bolt in mm/kN", "deltaS", bolt))
        .step(of(
            "R3: resilience of the plates in mm/kN",
            "deltaP",
            plates,
        ))
        .step(
            Step::new(
                "R3: load factor",
                "Phi",
                "n * deltaP / (deltaS + deltaP)",
                check.share.share,
            )
            .with("n", joint.introduction)
            .with("deltaP", resilience(plates))
            .with("deltaS", resilience(bolt))
            .source(methods::VDI2230_R3),
        )
        .step(
            Step::new(
                "R3: load on the bolt",
                "FSAmax",
                "Phi * FAmax",
                check.additional,
            )
            .with("Phi", check.share.share)
            .with("FAmax", joint.loads.axial_greatest)
            .source(methods::VDI2230_R3),
        )
        .step(
            Step::new(
                "R3: load off the plates",
                "FPAmax",
                "(1 - Phi) * FAmax",
                check.relief,
            )
            .with("Phi", check.share.share)
            .with("FAmax", joint.loads.axial_greatest)
            .source(methods::VDI2230_R3),
        )
}

/// R4.
fn changes(check: &ConcentricCheck, steps: Derivation) -> Derivation {
    let joint = &check.joint;
    let embedding = match joint.embedding {
        Embedding::Stated(_) => Step::given("R4: embedding", "fZ", check.embedding)
            .source(methods::STATED_BY_THE_CALLER),
        Embedding::Faces {
            row,
            bearing_faces,
            interfaces,
        } => Step::new(
            "R4: embedding",
            "fZ",
            "fZG + nA * fZA + nT * fZT",
            check.embedding,
        )
        .with("fZG", row.thread)
        .with("nA", usize::from(bearing_faces))
        .with("fZA", row.bearing_face)
        .with("nT", usize::from(interfaces))
        .with("fZT", row.interface)
        .source(row.provenance),
    };
    steps.step(embedding).step(
        Step::new(
            "R4: loss by embedding",
            "FZ",
            "fZ * kN / (mm * (deltaS + deltaP))",
            check.embedding_loss,
        )
        .with("fZ", check.embedding)
        .with("kN", kilonewtons(1.0))
        .with("mm", millimetres(1.0))
        .with("deltaS", resilience(joint.bolt.stiffness()))
        .with("deltaP", resilience(joint.plates.stiffness()))
        .source(methods::VDI2230_R4),
    )
}

/// R5 and R6.
fn required(check: &ConcentricCheck, steps: Derivation) -> Derivation {
    steps
        .step(
            Step::new(
                "R5: least assembly preload required",
                "FMmin",
                "FKerf + FPAmax + FZ + dFVth",
                check.required.least,
            )
            .with("FKerf", check.required_clamp)
            .with("FPAmax", check.relief)
            .with("FZ", check.embedding_loss)
            .with("dFVth", check.joint.thermal.loss)
            .source(methods::VDI2230_R5),
        )
        .step(
            Step::new(
                "R6: greatest assembly preload required",
                "FMmax",
                "alphaA * FMmin",
                check.required.greatest,
            )
            .with("alphaA", check.tightening_factor)
            .with("FMmin", check.required.least)
            .source(methods::VDI_2230_DEFINITION_OF_THE_TIGHTENING_FACTOR),
        )
}

/// R7, what is permitted.
fn assembly(check: &ConcentricCheck, steps: Derivation) -> Derivation {
    let stress = &check.assembly_stress;
    let form = &stress.form;
    let (friction, pitch) = (form.thread_friction().nominal(), form.thread().pitch());
    let lock = form.prevailing_torque().nominal;
    let arm: Length = from_base(
        pitch.value / (2.0 * PI) + friction * form.thread_diameter().value / math::sqrt(3.0),
    );
    let (area, d0) = (stress.stress_area, stress.stress_diameter);
    let (nu, rp) = (check.permitted.utilisation, check.permitted.yield_strength);
    // The torsion of a preload, and of the drag, as forces that stress the section alike.
    let per_torque = 3.0 * math::sqrt(3.0) / d0.value;
    let drag: Force = from_base(per_torque * lock.value);
    let permitted = if lock.value > 0.0 {
        Step::new(
            "R7: permitted assembly preload",
            "FMzul",
            "(sqrt((1 + c^2) * (nu * Rp02 * AS)^2 - t^2) - c * t) / (1 + c^2)",
            check.permitted.preload.nominal,
        )
        .with("c", per_torque * arm.value)
        .with("t", drag)
    } else {
        Step::new(
            "R7: permitted assembly preload",
            "FMzul",
            "nu * Rp02 * AS / sqrt(1 + 27 * (a / d0)^2)",
            check.permitted.preload.nominal,
        )
        .with("a", arm)
        .with("d0", d0)
    };
    let steps = steps
        .step(Step::given("stress area", "AS", area))
        .step(
            Step::new("diameter of the stress area", "d0", "sqrt(4 * AS / pi)", d0)
                .with("AS", area),
        )
        .step(
            Step::new(
                "R7: torque of the thread over the preload, least friction",
                "a",
                "P / (2 * pi) + muG * d2 / sqrt(3)",
                arm,
            )
            .with("P", pitch)
            .with("muG", friction)
            .with("d2", form.thread_diameter())
            .source(methods::JIS_B_1083_VDI_2230),
        )
        .step(
            permitted
                .with("nu", nu)
                .with("Rp02", rp)
                .with("AS", area)
                .source(methods::VDI2230_PLASTIC_TORSION_LOAD),
        );
    tightened(check, arm, steps)
}

/// R7 and R13 at the preload of the tightening.
fn tightened(check: &ConcentricCheck, arm: Length, steps: Derivation) -> Derivation {
    let stress = &check.assembly_stress;
    let form = &stress.form;
    let (area, d0) = (stress.stress_area, stress.stress_diameter);
    let lock = form.prevailing_torque().nominal;
    steps
        .step(Step::given(
            "greatest assembly preload of the tightening",
            "FM",
            check.assembly,
        ))
        .step(
            Step::new(
                "R7: torque of the thread",
                "MG",
                "FM * a + MU",
                stress.thread_torque.nominal,
            )
            .with("FM", check.assembly)
            .with("a", arm)
            .with("MU", lock),
        )
        .step(
            Step::new("R7: tension", "sigmaM", "FM / AS", stress.tension)
                .with("FM", check.assembly)
                .with("AS", area),
        )
        .step(
            Step::new(
                "R7: torsion",
                "tauM",
                "12 * MG / (pi * d0^3)",
                stress.torsion.nominal,
            )
            .with("MG", stress.thread_torque.nominal)
            .with("d0", d0)
            .source(methods::VDI2230_PLASTIC_TORSION),
        )
        .step(
            Step::new(
                "R7: reduced stress",
                "sigmaredM",
                "sqrt(sigmaM^2 + 3 * tauM^2)",
                stress.equivalent.nominal,
            )
            .with("sigmaM", stress.tension)
            .with("tauM", stress.torsion.nominal)
            .source(methods::VON_MISES),
        )
        .step(
            Step::new(
                "R13: assembly torque",
                "MA",
                "FM * (a + muK * DKm / 2) + MUmin",
                check.torque,
            )
            .with("FM", check.assembly)
            .with("a", arm)
            .with("muK", form.bearing_friction().nominal())
            .with("DKm", form.bearing_diameter())
            .with("MUmin", check.joint.form.prevailing_torque().min)
            .source(methods::JIS_B_1083_VDI_2230),
        )
}

/// R8 and R9.
fn working_stress(check: &ConcentricCheck, steps: Derivation) -> Derivation {
    let (stress, loads) = (&check.working_stress, &check.joint.loads);
    let before = &stress.tightening;
    let mut steps = steps
        .step(
            Step::new(
                "greatest preload in service",
                "FVmax",
                "FM + dFVg",
                check.preload.service_max,
            )
            .with("FM", check.assembly)
            .with("dFVg", check.joint.thermal.gain)
            .source(methods::VDI2230_R4),
        )
        .step(
            Step::new(
                "R8: greatest force of the bolt",
                "FSmax",
                "max(FVmax + Phi * FAmax, FAmax)",
                check.bolt_force,
            )
            .with("FVmax", check.preload.service_max)
            .with("Phi", check.share.share)
            .with("FAmax", loads.axial_greatest)
            .source(methods::VDI2230_R8),
        )
        .step(
            Step::new("R8: tension", "sigmaz", "FSmax / AS", stress.tension)
                .with("FSmax", check.bolt_force)
                .with("AS", before.stress_area),
        )
        .step(
            Step::new(
                "R8: torsion of the tightening",
                "tau",
                "16 * MG / (pi * d0^3)",
                before.torsion.nominal,
            )
            .with("MG", before.thread_torque.nominal)
            .with("d0", before.stress_diameter)
            .source(methods::VDI2230_R8),
        )
        .step(
            Step::new(
                "R8: reduced stress",
                "sigmaredB",
                "sqrt(sigmaz^2 + 3 * (ktau * tau)^2)",
                stress.equivalent,
            )
            .with("sigmaz", stress.tension)
            .with("ktau", stress.torsion_left)
            .with("tau", before.torsion.nominal)
            .source(methods::VDI2230_R8),
        )
        .step(
            Step::new(
                "R8: safety against yield",
                "SF",
                "Rp02 / sigmaredB",
                check.safeties.working,
            )
            .with("Rp02", check.permitted.yield_strength)
            .with("sigmaredB", stress.equivalent)
            .source(methods::VDI2230_R8),
        );
    if let Some(fatigue) = &check.fatigue {
        steps.append(fatigue.derivation());
    }
    steps
}

/// R10 and R11.
fn faces(check: &ConcentricCheck, mut steps: Derivation) -> Derivation {
    for face in &check.pressures {
        let limit = face.face.limit;
        steps = steps
            .step(
                Step::new(
                    "R10: area that bears",
                    "Ap",
                    "pi / 4 * (dw^2 - dh^2)",
                    face.area,
                )
                .with("dw", face.face.contact.outer)
                .with("dh", face.face.contact.inner)
                .source(methods::VDI2230_R10),
            )
            .step(
                pressure("R10: pressure at assembly", "pM", "FM / Ap", face.assembly)
                    .with("FM", check.assembly)
                    .with("Ap", face.area),
            )
            .step(
                pressure("R10: pressure in service", "pB", "FSmax / Ap", face.working)
                    .with("FSmax", check.bolt_force)
                    .with("Ap", face.area),
            )
            .step(
                Step::new(
                    "R10: safety of the pressure",
                    "SP",
                    "pG / max(pM, pB)",
                    face.safety,
                )
                .with("pG", limit.stress)
                .with("pM", face.assembly)
                .with("pB", face.working)
                .source(limit.method()),
            );
    }
    if let (Some(threads), Some(safety)) = (&check.joint.threads, check.safeties.threads) {
        steps.append(threads.derivation());
        steps = steps.step(
            Step::new(
                "R11: weaker thread over the bolt",
                "ST",
                "min(Fs, Fn) / Fb",
                safety,
            )
            .with("Fs", threads.bolt_threads)
            .with("Fn", threads.nut_threads)
            .with("Fb", threads.breaking_load)
            .source(methods::VDI2230_STRIPPING),
        );
    }
    steps
}

fn pressure(
    what: &'static str,
    symbol: &'static str,
    formula: &'static str,
    value: crate::units::Stress,
) -> Step {
    const R10: &Method = methods::VDI2230_R10;
    Step::new(what, symbol, formula, value).source(R10)
}

/// R12.
fn residual(check: &ConcentricCheck, steps: Derivation) -> Derivation {
    let steps = steps
        .step(
            Step::new(
                "least preload in service",
                "FVmin",
                "FM / alphaA - (FZ + dFVth)",
                check.preload.service_min,
            )
            .with("FM", check.assembly)
            .with("alphaA", check.tightening_factor)
            .with("FZ", check.embedding_loss)
            .with("dFVth", check.joint.thermal.loss)
            .source(methods::VDI2230_R4),
        )
        .step(
            Step::new(
                "least clamp force",
                "FKRmin",
                "max(FVmin - FPAmax, 0)",
                check.residual_clamp,
            )
            .with("FVmin", check.preload.service_min)
            .with("FPAmax", check.relief)
            .source(methods::VDI2230_R5),
        );
    let (
        Some(slip),
        Transverse::Load {
            force,
            shear_strength,
            ..
        },
    ) = (&check.slip, check.joint.loads.transverse)
    else {
        return steps;
    };
    steps
        .step(
            Step::new(
                "R12: safety against slipping",
                "SG",
                "FKRmin / FKQ",
                slip.safety,
            )
            .with("FKRmin", check.residual_clamp)
            .with("FKQ", slip.clamp)
            .source(methods::VDI2230_R12_SLIP),
        )
        .step(
            Step::new(
                "R12: shear stress if it slips",
                "tauQ",
                "FQmax / Atau",
                slip.stress,
            )
            .with("FQmax", force)
            .with("Atau", slip.area)
            .source(methods::VDI2230_R12_SHEAR),
        )
        .step(
            Step::new(
                "R12: safety against shear",
                "SA",
                "tauB / tauQ",
                slip.shear_safety,
            )
            .with("tauB", shear_strength)
            .with("tauQ", slip.stress)
            .source(methods::VDI2230_R12_SHEAR),
        )
}
