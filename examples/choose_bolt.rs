//! From a stack of plies and a load to bolt, length, washers, torque and verdict, described in one file.
//!
//! ```text
//! cargo run --features serde --example choose_bolt [JOINT.toml] [--si | --us]
//! ```
//!
//! Without a file it takes `examples/data/harrow_clevis.toml`, which is also the template for joints of your own; a
//! joint in JSON, as `check_joint` takes it, is read as well. The file has every fact that decides: what is left out
//! is asked for. Exit code: 0 if the joint holds, 1 if it does not or is undecided, 2 for a bad file.

use std::fmt::Write as _;
use std::process::ExitCode;

use shankline::joint::{Candidate, Joint, LengthSearch, NutEnd, Selection, Sheet, Verdict};
use shankline::prelude::*;

const DEMO: &str = include_str!("data/harrow_clevis.toml");

fn main() -> ExitCode {
    let (mut text, mut system) = (DEMO.to_owned(), None);
    for argument in std::env::args().skip(1) {
        match argument.as_str() {
            "--si" => system = Some(UnitSystem::Si),
            "--us" => system = Some(UnitSystem::UsCustomary),
            path => match std::fs::read_to_string(path) {
                Ok(read) => text = read,
                Err(error) => {
                    eprintln!("{path}: {error}");
                    return ExitCode::from(2);
                }
            },
        }
    }
    match report(&text, system) {
        Ok((report, holds)) => {
            print!("{report}");
            ExitCode::from(u8::from(!holds))
        }
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::from(2)
        }
    }
}

fn read(text: &str) -> Result<Joint, Box<dyn std::error::Error>> {
    if text.trim_start().starts_with('{') {
        return Ok(serde_json::from_str(text)?);
    }
    Ok(toml::from_str(text)?)
}

/// The whole report, and whether the joint holds.
fn report(
    text: &str,
    system: Option<UnitSystem>,
) -> Result<(String, bool), Box<dyn std::error::Error>> {
    let joint = read(text)?;
    let own = if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    let system = system.unwrap_or(own);
    let verdict = joint.check()?;
    let screws = ScrewSeries::new(joint.bolt.product, &joint.bolt.thread)?;
    let selection = LengthSearch::new(&joint.stack, &screws, end(&joint)?, joint.rules)?.run()?;

    let mut out = format!(
        "{}\n{}\n",
        joint.title,
        "=".repeat(joint.title.chars().count())
    );
    stack(&mut out, &joint, system)?;
    length(&mut out, &joint, &verdict, system)?;
    others(&mut out, &verdict.candidate, &selection, system)?;
    heading(&mut out, "Verdict")?;
    writeln!(out, "{}", verdict.render(system))?;
    heading(&mut out, "For the workshop")?;
    writeln!(out, "{}", Sheet::new(&joint, &verdict)?.render(system))?;
    heading(&mut out, "Where the numbers come from")?;
    writeln!(
        out,
        "  length     {}",
        screws.provenance(&verdict.candidate.screw)
    )?;
    if let Some(provenance) = verdict.strength.provenance {
        writeln!(out, "  strength   {provenance}")?;
    }
    heading(&mut out, "Cautions")?;
    for caution in &verdict.cautions {
        writeln!(out, "  * {caution}")?;
    }
    Ok((out, verdict.holds()))
}

/// What closes the joint, as a length search sees it.
fn end(joint: &Joint) -> Result<NutEnd, shankline::Error> {
    if let Some(own) = &joint.own.nut {
        return NutEnd::with_height(own.height);
    }
    match (joint.nut, joint.stack.tapped_part()) {
        (Some(nut), _) => NutEnd::of(Nut::find(nut.style, &joint.bolt.thread)?),
        (None, part) => {
            let (engagement, depth) =
                part.map_or((None, None), |part| (part.engagement, part.depth()));
            NutEnd::tapped(engagement.unwrap_or_default(), depth)
        }
    }
}

fn heading(out: &mut String, text: &str) -> std::fmt::Result {
    writeln!(out, "\n{text}\n{}", "-".repeat(text.len()))
}

fn stack(out: &mut String, joint: &Joint, system: UnitSystem) -> std::fmt::Result {
    heading(out, "Stack, from the head")?;
    let mut line = |name: &str, thickness: Spread<Length>| {
        writeln!(
            out,
            "  {name:<28}{:>12} ({} to {})",
            shown(thickness.nominal, system).to_string(),
            shown(thickness.min, system),
            shown(thickness.max, system)
        )
    };
    for washer in joint.stack.washers_under_head() {
        line(&washer.name, washer.thickness)?;
    }
    for (ply, number) in joint.stack.plies().iter().zip(1..) {
        line(&ply.name, ply.thickness)?;
        if let Some(gap) = joint.stack.gap_after(number) {
            line("gap", gap)?;
        }
    }
    if let Some((washer, count)) = joint.stack.washers_under_nut() {
        line(&format!("{count} x {}", washer.name), washer.thickness)?;
    }
    Ok(())
}

/// The chosen length: where its shank ends against every plane, and how far it sticks out.
fn length(
    out: &mut String,
    joint: &Joint,
    verdict: &Verdict,
    system: UnitSystem,
) -> std::fmt::Result {
    let best = &verdict.candidate;
    let show = |length| shown(length, system);
    heading(out, "Bolt")?;
    writeln!(
        out,
        "  {} x {} {}, {}; {} washers under the nut ({} added)",
        joint.bolt.thread,
        name(best.screw.nominal, system),
        joint.bolt.product,
        joint.bolt.grade,
        best.washers_under_nut,
        best.washers_added
    )?;
    writeln!(
        out,
        "  full shank at least to {}, full thread at latest at {}, from under the head",
        show(best.screw.body_length_min),
        show(best.screw.grip_gaging_length_max)
    )?;
    for plane in joint.stack.planes(&best.screw) {
        writeln!(
            out,
            "  shear plane after ply {}: worst case at {}, on {}",
            plane.after_ply,
            show(plane.position.max),
            plane.worst
        )?;
    }
    let pitch = joint.bolt.thread.pitch();
    writeln!(
        out,
        "  sticks out {} to {} ({:.1} to {:.1} threads) as bought",
        show(best.protrusion.min),
        show(best.protrusion.max),
        (best.protrusion.min / pitch).value,
        (best.protrusion.max / pitch).value
    )?;
    writeln!(
        out,
        "  the nut has {:.2} threads to the run-out when it clamps the thinnest stack",
        best.clear_threads
    )
}

fn others(
    out: &mut String,
    chosen: &Candidate,
    selection: &Selection,
    system: UnitSystem,
) -> std::fmt::Result {
    heading(out, "Why not the other stock lengths")?;
    for other in selection.accepted() {
        if other.screw.nominal != chosen.screw.nominal {
            writeln!(
                out,
                "  {:>9}  fits, but ranks behind",
                name(other.screw.nominal, system)
            )?;
        }
    }
    for other in selection.rejected() {
        let reasons: Vec<String> = other.reasons().map(|reason| reason.text(system)).collect();
        writeln!(
            out,
            "  {:>9}  {}",
            name(other.screw.nominal, system),
            reasons.join("; ")
        )?;
    }
    Ok(())
}

/// A length as its product is sold: `4 in`, `80 mm`.
fn name(length: Length, system: UnitSystem) -> String {
    match shankline::units::inch_fraction(length) {
        Some(fraction) if system == UnitSystem::UsCustomary => format!("{fraction} in"),
        _ if system == UnitSystem::Si => format!("{:.0}", shown(length, system)),
        _ => shown(length, system).to_string(),
    }
}
