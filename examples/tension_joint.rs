//! A joint that is pulled along its bolts, worked from bolt and plates to every factor.
//!
//! The scenario and its numbers are invented: the base of a boat davit, a cast iron socket on a steel
//! plate, pulled up on one side by the hanging boat. `cargo run --example tension_joint`; add `si` or
//! `us` for the units.
//!
//! An example of calculating, not a design: a davit lifts loads over people and needs a licensed
//! engineer and the rules of its authority.

use std::env;
use std::process::ExitCode;

use shankline::caution::GENERAL;
use shankline::derivation::{Derivation, Format};
use shankline::prelude::*;
use shankline::tension::{
    AiscBasis, AiscFlange, AiscPrying, BoltStiffness, Cones, FatigueCriterion, FatigueStrengths,
    FatigueStress, GripSections, JointDiagram, Layer, LoadShare, MachineDesignFatigue,
    bolts_needed,
};
use shankline::units::msi;

fn show(title: &str, derivation: &Derivation, system: UnitSystem) {
    println!("{title}\n");
    println!("{}", derivation.render(Format::Text, system));
}

fn worked(system: UnitSystem) -> Result<(), Error> {
    // Given, all invented.
    let thread: Thread = "3/4-10 UNC".parse()?;
    let grade = SaeGrade::Grade5;
    let plate = inches(0.75);
    let flange = inches(1.0);
    let pull = pounds_force(28_000.0); // greatest upward pull on the side in tension
    let bolts = 4;
    let load = pull / 4.0;

    println!(
        "Base of a davit (invented): {bolts} bolts {thread}, {}, share a pull of",
        shankline::material::BoltGrade::from(grade)
    );
    println!(
        "{:.0}; it comes and goes with every launch.",
        shown(pull, system)
    );
    println!("Plate {:.3} of steel under a flange", shown(plate, system));
    println!(
        "{:.3} thick of gray cast iron, plain washers under head and nut.\n",
        shown(flange, system)
    );

    // The bolt: the stock length whose shank is sure, with a washer at either end.
    let washer = Washer::find(WasherStyle::TypeANarrow, &thread)?;
    let thick = washer.thickness()?.nominal;
    let grip = plate + flange + 2.0 * thick;
    let screw = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?.length(inches(3.0))?;
    let sections = GripSections::of_screw(&screw, grip)?;
    let bolt = BoltStiffness::shigley(&thread, sections, msi(30.0))?;
    show("1. The bolt", &bolt.derivation(), system);

    // The members, from the head on.
    let steel = msi(30.0);
    let iron = msi(14.5);
    let layers = [
        Layer::new(thick, steel)?,
        Layer::new(flange, iron)?,
        Layer::new(plate, steel)?,
        Layer::new(thick, steel)?,
    ];
    let cones = Cones::shigley(thread.nominal_diameter())?;
    let members = cones.frusta(&layers)?;
    show(
        "2. The members, as pressure cones",
        &members.derivation(),
        system,
    );

    // Preload and load.
    let strength = grade.strength(thread.nominal_diameter())?;
    let loads = strength.loads(&thread)?;
    let proof = loads
        .proof
        .ok_or_else(|| Error::Mismatch("the grade has no proof load".into()))?;
    let preload = PreloadTarget::Reusable.fraction() * proof;
    let share = LoadShare::new(bolt.stiffness, members.stiffness)?;
    let joint = JointDiagram::new(share, preload)?;
    let check = joint.check(load, proof)?;
    println!(
        "Preload: 75 % of the proof load {:.0}, {:.0}\n",
        shown(proof, system),
        shown(preload, system)
    );
    show("3. The joint under its load", &check.derivation(), system);
    let needed = bolts_needed(share, 2.0, pull, proof, preload)?;
    println!(
        "   For a load factor of 2: {:.2}, so {} bolts.\n",
        needed.quotient, needed.bolts
    );

    let least = fatigue(&joint, &strength, loads.tensile_stress_area, load, system)?;
    let prying = prying(&thread, plate, load, system)?;

    println!("Summary\n");
    println!("   yield factor       np {:>6.2}", check.yield_factor);
    println!("   load factor        nL {:>6.2}", check.load_factor);
    println!("   separation factor  n0 {:>6.2}", check.separation_factor);
    println!("   fatigue, least     nf {least:>6.2}");
    println!(
        "   strength with prying used {:>3.0} %",
        100.0 * prying.utilisation.value
    );
    println!();
    for caution in GENERAL.iter().chain(check.cautions().iter()) {
        println!("   {caution}");
    }
    Ok(())
}

/// Fatigue by the machine-design system; the least factor of all lines.
fn fatigue(
    joint: &JointDiagram,
    strength: &BoltStrength,
    stress_area: Area,
    load: Force,
    system: UnitSystem,
) -> Result<f64, Error> {
    let stress = FatigueStress::of_joint(joint, stress_area, newtons(0.0), load)?;
    let strengths = FatigueStrengths::of_bolt(strength)?;
    let goodman = MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Goodman)?;
    show("4. Fatigue by Goodman", &goodman.derivation(), system);
    let mut least = goodman.factor;
    for criterion in [
        FatigueCriterion::Gerber,
        FatigueCriterion::AsmeElliptic,
        FatigueCriterion::ProofLine,
    ] {
        let other = MachineDesignFatigue::new(strengths, stress, criterion)?;
        println!("   {:<14} {:.2}", criterion.to_string(), other.factor);
        least = least.min(other.factor);
    }
    Ok(least)
}

fn prying(
    thread: &Thread,
    plate: Length,
    load: Force,
    system: UnitSystem,
) -> Result<AiscPrying, Error> {
    // Prying: the plate taken as a tee of A36 steel, bolts at strength 0.75 x 90 ksi x area.
    let bolt_strength = 0.75 * (ksi(90.0) * thread.shank_area());
    let tee = AiscFlange::new(
        AiscBasis::Lrfd,
        ksi(58.0),
        thread.nominal_diameter(),
        inches(0.8125),
        inches(3.0),
        inches(2.0),
        inches(1.5),
    )?;
    let prying = tee.check(1.6 * load, bolt_strength, plate)?;
    println!();
    show(
        "5. Prying of the plate, load times 1.6",
        &prying.derivation(),
        system,
    );
    Ok(prying)
}

fn main() -> ExitCode {
    let system = match env::args().nth(1).as_deref() {
        Some("si") => UnitSystem::Si,
        None | Some("us") => UnitSystem::UsCustomary,
        Some(other) => {
            eprintln!("\"{other}\" is not a system of units: write si or us");
            return ExitCode::from(2);
        }
    };
    match worked(system) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}
