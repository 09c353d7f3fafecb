//! Every picture of chosen and of random joints.

use std::{fs, path::Path};

use shankline::assembly::{Assembly, End};
use shankline::drawing::{self, Drawing};
use shankline::joint::{Joint, Verdict};
use shankline::prelude::*;
use shankline::units::Measured as _;

use super::joints::chosen;
use super::svg::{Element, inspect, numbers};
use super::verdicts::for_all;

fn units(joint: &Joint) -> UnitSystem {
    if joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    }
}

/// A length as pictures show it.
fn shown(length: Length, system: UnitSystem) -> String {
    let text = match system {
        UnitSystem::Si => format!("{:.2}", length.base() * 1e3),
        UnitSystem::UsCustomary => format!("{:.3}", length.base() / 0.0254),
    };
    // What rounds to zero has no sign.
    match text.strip_prefix('-') {
        Some(plain) if plain.chars().all(|own| matches!(own, '0' | '.')) => plain.into(),
        _ => text,
    }
}

fn spread(of: Spread<Length>, system: UnitSystem) -> String {
    let [min, nominal, max] = [of.min, of.nominal, of.max].map(|own| shown(own, system));
    if min == max {
        nominal
    } else {
        format!("{nominal} ({min} to {max})")
    }
}

pub fn sound(page: &Drawing) -> Result<Vec<Element>, String> {
    if let Some([a, b]) = page.overlaps().first() {
        let [a, b] = [a, b].map(|at| &page.labels()[*at]);
        return Err(format!("the page itself: {a:?} on {b:?}"));
    }
    inspect(&page.svg())
}

/// Left and right of each area of a kind.
fn areas(all: &[Element], class: &str) -> Vec<[f64; 2]> {
    let of = all.iter().filter(|own| own.class() == class);
    of.map(|own| {
        let places = numbers(own.get("d").unwrap());
        let across: Vec<f64> = places.iter().step_by(2).copied().collect();
        let least = across.iter().copied().fold(f64::INFINITY, f64::min);
        [least, across.iter().copied().fold(0.0, f64::max)]
    })
    .collect()
}

/// The numbers and places of a section against its assembly.
fn agrees(all: &[Element], assembly: &Assembly, system: UnitSystem) -> Result<(), String> {
    let texts: Vec<&str> = all
        .iter()
        .filter(|own| own.name == "text")
        .map(|own| own.text.as_str())
        .collect();
    let has = |text: &str| {
        let found = texts.contains(&text);
        found
            .then_some(())
            .ok_or(format!("\"{text}\" is not on the page"))
    };
    let bolt = &assembly.bolt;
    has(&format!("L {}", shown(bolt.length.nominal, system)))?;
    has(&format!("grip {}", shown(assembly.grip.nominal, system)))?;
    if bolt.shank_end > Length::default() {
        has(&format!("LB min {}", shown(bolt.shank_end, system)))?;
    }
    if bolt.thread_start > Length::default() {
        has(&format!("LG max {}", shown(bolt.thread_start, system)))?;
    }
    if let Some(cut) = bolt.cut {
        has(&format!("cut to {}", shown(cut.length, system)))?;
    }
    for layer in &assembly.layers {
        has(&spread(layer.thickness, system))?;
    }
    for plane in &assembly.planes {
        has(&spread(plane.position, system))?;
        has(&plane.worst.to_string())?;
    }
    // The strip: one scale for shank, run-out, thread and planes. `place` is in metres from the head.
    let [shank, run_out, thread] = ["A", "B", "C"].map(|class| areas(all, class));
    let first = shank.iter().chain(&run_out).chain(&thread).next();
    let Some(zero) = first.map(|own| own[0]) else {
        return Err("there is no strip".into());
    };
    let Some(sure) = thread.first() else {
        return Ok(());
    };
    if bolt.thread_start <= Length::default() {
        return Ok(());
    }
    let scale = (sure[0] - zero) / bolt.thread_start.base();
    let near = |found: f64, length: Length, what: &str| {
        // Coordinates have two decimals, and so has what the scale is made from.
        let slack = 0.011 + 0.011 * (length / bolt.thread_start).value.abs();
        let place = (zero + scale * length.base()).clamp(4.0, 956.0);
        if (found - place).abs() < slack {
            Ok(())
        } else {
            Err(format!("{what}: at {found}, not at {place}"))
        }
    };
    if let Some(own) = shank.first() {
        near(own[1], bolt.shank_end, "end of the shank")?;
    }
    near(
        sure[1],
        bolt.end.min.max(bolt.thread_start),
        "end of the thread",
    )?;
    let bands = areas(all, "E");
    if bands.len() != assembly.planes.len() {
        return Err(format!("{} bands of planes", bands.len()));
    }
    for (band, plane) in bands.iter().zip(&assembly.planes) {
        near(band[0], plane.position.min, "least place of a plane")?;
        if band[1] - band[0] > 1.001 {
            near(band[1], plane.position.max, "greatest place of a plane")?;
        }
    }
    Ok(())
}

/// Every picture of one joint, by name.
fn pictures(
    joint: &Joint,
    verdict: &Verdict,
    assembly: &Assembly,
    system: UnitSystem,
) -> Vec<(&'static str, Drawing)> {
    let mut all = vec![
        ("section", drawing::section(assembly, Some(verdict), system)),
        (
            "checks",
            drawing::utilisation(&joint.title, verdict, system),
        ),
    ];
    if let Ok(selection) = joint.lengths() {
        let page = drawing::lengths(joint, &selection, system);
        all.push(("lengths", page));
    }
    if let Some(page) = drawing::joint_diagram(joint, verdict, system) {
        all.push(("springs", page));
    }
    all
}

fn examined(joint: &Joint) -> Result<Vec<(&'static str, Drawing)>, String> {
    let Ok(verdict) = joint.check() else {
        return Ok(Vec::new());
    };
    let system = units(joint);
    let assembly = joint
        .assembly(&verdict.candidate)
        .map_err(|error| error.to_string())?;
    let all = pictures(joint, &verdict, &assembly, system);
    for (name, page) in &all {
        let elements = sound(page).map_err(|why| format!("{name}: {why}"))?;
        if *name == "section" {
            agrees(&elements, &assembly, system).map_err(|why| format!("{name}: {why}"))?;
        }
        // Whoever sees a picture sees the word. (Lengths are compared without one.)
        let word = verdict.headline(system);
        let word = word.split(' ').next().unwrap_or_default().to_owned();
        let speaks = elements.iter().any(|own| own.text.starts_with(&word));
        if *name != "lengths" && !speaks {
            return Err(format!("{name}: it does not say {word}"));
        }
    }
    // In the other units everything is longer or shorter.
    let other = match system {
        UnitSystem::Si => UnitSystem::UsCustomary,
        UnitSystem::UsCustomary => UnitSystem::Si,
    };
    let page = drawing::section(&assembly, None, other);
    let elements = sound(&page).map_err(|why| format!("other units: {why}"))?;
    agrees(&elements, &assembly, other).map_err(|why| format!("other units: {why}"))?;
    if !elements
        .iter()
        .any(|own| own.text.starts_with("No verdict"))
    {
        return Err("a section without a verdict does not say so".into());
    }
    Ok(all)
}

/// The chosen joints; their pictures are left in `target/tmp/drawing` to be looked at.
#[test]
fn chosen_joints_are_drawn() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("drawing");
    fs::create_dir_all(&folder).unwrap();
    let (mut joints, mut count) = (0, 0);
    for (name, joint) in chosen() {
        let all = examined(&joint).unwrap_or_else(|why| panic!("{name}: {why}"));
        assert!(!all.is_empty(), "{name}: {}", joint.check().unwrap_err());
        joints += 1;
        count += all.len();
        for (picture, page) in all {
            let file = folder.join(format!("{name}_{picture}.svg"));
            fs::write(file, page.svg()).unwrap();
        }
    }
    assert!(
        joints >= 30 && count >= 90,
        "{joints} joints, {count} pictures"
    );
}

#[test]
fn random_joints_are_drawn() {
    for_all(1000, |joint, _| examined(joint).map(|_| ()));
}

/// A name is a name, whatever is in it.
#[test]
fn hostile_names_stay_text() {
    let all = chosen();
    let (_, joint) = all.iter().find(|(name, _)| *name == "hostile").unwrap();
    let verdict = joint.check().unwrap();
    let assembly = joint.assembly(&verdict.candidate).unwrap();
    let svg = drawing::section(&assembly, Some(&verdict), UnitSystem::Si).svg();
    assert!(!svg.contains("<script") && !svg.contains("<b>"));
    let elements = inspect(&svg).unwrap();
    let title = &elements[1];
    assert!(title.text.contains("</svg><script>alert(1)</script> &"));
    assert!(
        elements
            .iter()
            .any(|own| own.text.starts_with("<b>&amp;</b>"))
    );
}

/// A part that nobody has read is dotted and named; nothing dotted stands without a word.
#[test]
fn what_is_not_read_is_said() {
    for (name, joint) in chosen() {
        let Ok(verdict) = joint.check() else { continue };
        let assembly = joint.assembly(&verdict.candidate).unwrap();
        let svg = drawing::section(&assembly, Some(&verdict), units(&joint)).svg();
        let elements = inspect(&svg).unwrap();
        let dotted = elements
            .iter()
            .any(|own| own.class().split(' ').any(|class| class == "u"));
        let said = elements
            .iter()
            .any(|own| own.text.starts_with("Dotted outlines"));
        let counterbore = matches!(&assembly.end, End::Tapped(part) if part.face != part.at.from);
        assert!(dotted == said || counterbore, "{name}: {dotted} {said}");
    }
}
