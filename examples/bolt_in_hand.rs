//! Will these bolts do? Three bolts out of a tin, measured with a caliper, for the deck socket of a
//! boat davit (invented).
//!
//! ```text
//! cargo run --example bolt_in_hand
//! ```

use shankline::{
    caution,
    joint::{
        Alternative, Arrangement, BoltInHand, ChainRange, CutMethod, CutPlan, CutStep, Goal,
        HandVerdict, JointTolerances, JointWasher, ToleranceMethod,
    },
    prelude::*,
};

const UNITS: UnitSystem = UnitSystem::Si;

fn main() -> Result<(), shankline::Error> {
    let thread: Thread = "M16".parse()?;
    let washer = JointWasher::find(WasherStyle::Iso7089, &thread)?;
    let stack = Stack::builder()
        .washer_under_head(washer.clone())
        .ply(
            "socket flange",
            millimetres(10.0).plus_minus(millimetres(0.3)),
        )
        .ply(
            "core insert",
            millimetres(25.0).plus_minus(millimetres(0.5)),
        )
        .ply(
            "backing plate",
            millimetres(8.0).plus_minus(millimetres(0.3)),
        )
        .shear_planes([1, 2])
        .washers_under_nut(washer, 1)
        .build()?;
    let nut = NutEnd::of(Nut::find(NutStyle::Iso7040, &thread)?)?;
    let rules = LengthRules::fabrication(UNITS);

    println!("Deck socket of a boat davit: flange 10, core 25, backing plate 8 mm, M16, lock nut.");
    println!("The shear planes lie on both faces of the core. Invented example.\n");

    // Whole length, plain shank, and where a nut run on by hand stops; all from under the head.
    // The third bolt is not marked: its thread comes from caliper and pitch gauge.
    let doubt = millimetres(0.2);
    let mm = millimetres;
    let bolts = [
        (
            "the shiny one",
            BoltInHand::new(thread, mm(89.6), mm(43.5), mm(51.2))?,
        ),
        (
            "the long one",
            BoltInHand::new(thread, mm(99.5), mm(53.0), mm(61.5))?,
        ),
        (
            "the one without marks",
            BoltInHand::by_caliper(mm(15.8), mm(2.0), mm(69.4), mm(22.6), mm(31.4))?,
        ),
    ];
    for (name, bolt) in bolts {
        let bolt = bolt.with_uncertainty(doubt)?;
        let verdict = bolt.verdict(&stack, nut, rules)?;
        print_verdict(name, &verdict);
        if verdict.candidate.fits() && verdict.candidate.needs_cut {
            print_cut(&CutPlan::new(&verdict.candidate, &thread, nut, rules)?);
            let method = ToleranceMethod::RootSumSquare {
                sigmas_per_tolerance: 3.0,
                confidence: 0.9973,
            };
            let likely = JointTolerances::of(&stack, &verdict.candidate, nut, method)?;
            print_likely("grip", &likely.grip);
        }
        println!();
    }

    // And out of the catalogue: what would put both planes on guaranteed shank without any cut?
    let arrangement = Arrangement::new(
        stack,
        ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
        nut,
        rules.with_washers_under_nut(1),
    );
    println!(
        "If the drawing allows one washer under the nut and wants both planes on plain shank:"
    );
    let smaller: Thread = "M12".parse()?;
    let others = [Alternative::new(
        ScrewSeries::new(ScrewProduct::Iso4014, &smaller)?,
        NutEnd::of(Nut::find(NutStyle::Iso7040, &smaller)?)?,
        Some(Washer::find(WasherStyle::Iso7089, &smaller)?.thickness()?),
    )];
    let advice = arrangement.advice(Goal::EveryPlaneOnShank, &others)?;
    if let Some(margin) = advice.margin.filter(|margin| *margin < mm(0.0)) {
        println!(
            "  the last ply and its washer are {} too thin for any ISO 4014 bolt; any one of these helps:",
            shown(-margin, UNITS)
        );
    }
    for advised in advice.advice {
        println!(
            "  - {} (then: {} long)",
            advised.text(UNITS),
            shown(advised.outcome.screw.nominal, UNITS)
        );
    }
    println!();
    for caution in caution::GENERAL {
        println!("* {caution}");
    }
    Ok(())
}

fn print_verdict(name: &str, verdict: &HandVerdict) {
    let bolt = &verdict.bolt;
    let show = |length| shown(length, UNITS);
    println!(
        "{name}: {} {} long, {} plain, thread from {}, all +/- {}",
        bolt.thread,
        show(bolt.length),
        show(bolt.shank),
        show(bolt.thread_start),
        show(bolt.uncertainty)
    );
    let candidate = &verdict.candidate;
    println!(
        "  {}",
        if candidate.fits() {
            "WILL DO"
        } else {
            "WILL NOT DO"
        }
    );
    for reason in candidate.reasons() {
        println!("  - {}", reason.text(UNITS));
    }
    println!(
        "  shear planes in the worst case: {} on shank, {} in the run-out, {} in thread",
        candidate.planes_on_shank, candidate.planes_in_run_out, candidate.planes_in_thread
    );
    for step in &verdict.to_do {
        println!("  > {}", step.text(UNITS));
    }
    if !candidate.fits() {
        let wanted = &verdict.wanted;
        println!(
            "  look for: shank {} or more, thread from {} or sooner, length {} or more",
            show(wanted.shank_min),
            show(wanted.thread_start_max),
            show(wanted.length_min)
        );
    }
    for other in &verdict.look_alikes {
        println!("  beware: {other} looks much the same; the nut must run on by hand");
    }
}

fn print_cut(plan: &CutPlan) {
    println!("  cut: {}", plan.method);
    let Some(cut) = plan.cut() else { return };
    match plan.method {
        CutMethod::AtFitUp => println!(
            "  mark {} from the face of the tightened nut",
            shown(cut.mark_from_nut.nominal, UNITS)
        ),
        _ => println!(
            "  mark {} from under the head, {} from the face of the tightened nut",
            shown(cut.mark_from_head.nominal, UNITS),
            shown(cut.mark_from_nut.nominal, UNITS)
        ),
    }
    println!(
        "  finished {} to {}; {} to {} comes off; {} of thread is left",
        shown(cut.finished.min, UNITS),
        shown(cut.finished.max, UNITS),
        shown(cut.removed.min, UNITS),
        shown(cut.removed.max, UNITS),
        shown(cut.thread_left, UNITS)
    );
    if let Some(margin) = plan
        .window_margin
        .filter(|margin| *margin < millimetres(0.0))
    {
        println!(
            "  (one fixed length will not do: stack, nut and cut vary by {} more than the wanted threads)",
            shown(-margin, UNITS)
        );
    }
    for step in CutStep::ALL {
        println!("    {step}");
    }
}

fn print_likely(what: &str, range: &ChainRange) {
    println!(
        "  {what}, root sum square, 99.73 % of assemblies if tolerances are 3 sigma and independent: {} to {}",
        shown(range.min, UNITS),
        shown(range.max, UNITS)
    );
}
