//! Stacks that are more than plates on plates: a pivot with a bushing and play, a soft mat under a
//! recessed head, a foot screwed into a casting. Which length does, by whose order of preference.
//!
//! ```text
//! cargo run --example odd_stacks
//! ```
//!
//! Invented joints; an example of choosing lengths, not a design.

use shankline::{
    caution,
    joint::{Arrangement, Candidate, Criterion, Goal, HeadSeat, Ranking},
    prelude::*,
};

const UNITS: UnitSystem = UnitSystem::Si;

fn show(length: Length) -> String {
    format!("{:.1}", shown(length, UNITS))
}

fn range(spread: Spread<Length>) -> String {
    format!("{} to {}", show(spread.min), show(spread.max))
}

fn print_stack(title: &str, stack: &Stack) {
    println!("{title}\n");
    for (index, ply) in stack.plies().iter().enumerate() {
        let clamped = ply.clamped();
        println!("  {:<12} {}", ply.name, range(clamped));
        if let Some(gap) = stack.gap_after(index + 1) {
            println!("  {:<12} {}", "gap", range(gap));
        }
    }
    for sleeve in stack.sleeves() {
        println!(
            "  around the {} of {} there is {} of play",
            sleeve.name,
            range(sleeve.length),
            range(sleeve.play)
        );
    }
    println!("  grip         {}", range(stack.grip()));
    for (plane, share) in stack.plane_positions().iter().zip(stack.plane_shares()) {
        println!(
            "  shear plane  {} from the head, {:.0} % of the load",
            range(*plane),
            100.0 * share
        );
    }
    println!();
}

fn print_choice(why: &str, best: Option<&Candidate>) {
    let Some(best) = best else {
        println!("  {why}: no stock length does");
        return;
    };
    println!(
        "  {why}: {} long, washers to add: {} under the nut, {} under the head;\n    planes on shank {}, \
         in the run-out {}, in thread {}; {} left before the run-out{}",
        show(best.screw.nominal),
        best.washers_added,
        best.washers_added_under_head,
        best.planes_on_shank,
        best.planes_in_run_out,
        best.planes_in_thread,
        show(best.jam_margin),
        if best.needs_cut { "; to be cut" } else { "" }
    );
}

/// A gate pivot: the rocker turns on a bushing that the bolt clamps between two arms.
fn pivot() -> Result<(), Error> {
    let thread: Thread = "M12".parse()?;
    let arm = millimetres(12.0).plus_minus(millimetres(0.2));
    let free = Spread {
        min: millimetres(0.0),
        nominal: millimetres(0.3),
        max: millimetres(0.6),
    };
    let washer = Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?;
    let stack = Stack::builder()
        .add(JointPly::new("arm", arm).pulls(0.6))
        .gap(free)
        .add(JointPly::new("rocker", millimetres(30.0).plus_minus(millimetres(0.1))).pulls(-1.0))
        .gap(free)
        .add(JointPly::new("arm", arm).pulls(0.4))
        .sleeve(
            "bushing",
            millimetres(30.6).plus_minus(millimetres(0.1)),
            2,
            2,
        )
        .shear_planes([1, 2])
        .washers_under_nut(washer, 1)
        .build()?;
    print_stack("Pivot of a farm gate, M12", &stack);
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    let nut = NutEnd::of(Nut::find(NutStyle::Iso7040, &thread)?)?;
    let rules = LengthRules::fabrication(UNITS);
    let search = LengthSearch::new(&stack, &screws, nut, rules)?;
    let usual = search.run()?;
    print_choice("strength first", usual.best());
    let plain = Ranking::by(&[Criterion::WashersAdded, Criterion::Cut, Criterion::Length]);
    print_choice(
        "fewest parts, no cut, short",
        search.ranked(plain).run()?.best(),
    );
    println!();
    Ok(())
}

/// A bench seat: a timber slat on a mat, the head in a counterbore.
fn slat() -> Result<(), Error> {
    let thread: Thread = "M10".parse()?;
    let stack = Stack::builder()
        .head_seat(HeadSeat::Recessed {
            depth: millimetres(8.0).plus_minus(millimetres(1.0)),
        })
        .soft_ply(
            "slat",
            millimetres(42.0).plus_minus(millimetres(1.0)),
            millimetres(1.0),
        )
        .soft_ply(
            "rubber mat",
            millimetres(5.0).plus_minus(millimetres(0.3)),
            millimetres(2.0),
        )
        .ply("bracket", millimetres(8.0).plus_minus(millimetres(0.2)))
        .shear_planes([2])
        .washers_under_nut(Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?, 1)
        .build()?;
    print_stack("Slat of a playground bench on its bracket, M10", &stack);
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    let nut = NutEnd::of(Nut::find(NutStyle::Iso7040, &thread)?)?;
    let rules = LengthRules::fabrication(UNITS);
    let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    print_choice("usual order", selection.best());
    println!();
    Ok(())
}

/// The foot of a mezzanine rail on a casting that is tapped 20 mm deep.
fn foot() -> Result<(), Error> {
    let thread: Thread = "M12".parse()?;
    let washer = Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?;
    let stack = Stack::builder()
        .ply("foot", millimetres(17.0).plus_minus(millimetres(0.3)))
        .tapped_part("casting", Spread::exact(millimetres(0.0)))
        .washer_to_add_under_head(washer)
        .shear_planes([1])
        .build()?;
    print_stack(
        "Foot of a rail, screwed into a casting: 14 of its 18 mm of thread wanted, M12",
        &stack,
    );
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread)?;
    let hole = NutEnd::tapped(millimetres(14.0), Some(millimetres(18.0)))?;
    let rules = LengthRules::fabrication(UNITS).with_cut(CutRule::Never);
    let arrangement = Arrangement::new(stack, screws, hole, rules);
    let selection = arrangement.search()?.run()?;
    print_choice("usual order", selection.best());
    for candidate in selection.rejected().iter().take(2) {
        for reason in candidate.reasons() {
            let length = show(candidate.screw.nominal);
            println!("    {length}: {}", reason.text(UNITS));
        }
    }
    for advice in arrangement.advice(Goal::Fits, &[])?.advice {
        println!("    would do: {}", advice.text(UNITS));
    }
    println!();
    Ok(())
}

fn main() -> Result<(), Error> {
    println!("Lengths for stacks of every kind. Invented joints; lengths in mm, worst case.\n");
    pivot()?;
    slat()?;
    foot()?;
    for caution in caution::GENERAL {
        println!("{caution}");
    }
    Ok(())
}
