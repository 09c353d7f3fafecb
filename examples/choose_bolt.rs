//! Chooses the bolt for a joint loaded across its axis, and prints what a workshop needs.
//!
//! ```text
//! cargo run --features serde --example choose_bolt [JOINT.toml]
//! ```
//!
//! Without an argument it works on `examples/data/harrow_clevis.toml`, which is also the template
//! for files of your own. Exit code: 0 with a bolt, 1 if no stock bolt fits, 2 for a bad file.

use std::{
    fmt::{self, Write},
    process::ExitCode,
};

use serde::Deserialize;
use shankline::{
    caution,
    joint::{Candidate, Selection},
    parts::Locking,
    prelude::*,
    source::Provenance,
    units::inch_fraction,
};

const DEMO: &str = include_str!("data/harrow_clevis.toml");

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct JointFile {
    title: String,
    #[serde(default)]
    units: UnitSystem,
    bolt: Bolt,
    nut: NutChoice,
    washers: Washers,
    stack: Plies,
    load: Load,
    #[serde(default)]
    rules: Rules,
    shear: ShearSection,
    tightening: Tightening,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Bolt {
    product: ScrewProduct,
    thread: Thread,
    grade: BoltGrade,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct NutChoice {
    style: NutStyle,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Washers {
    style: WasherStyle,
    under_head: usize,
    under_nut: usize,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Plies {
    shear_planes: Vec<usize>,
    plies: Vec<shankline::joint::Layer>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Load {
    #[serde(with = "shankline::units::quantity")]
    across: Force,
}

#[derive(Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
struct Rules {
    protrusion_min: Option<f64>,
    protrusion_max: Option<f64>,
    clear_threads_min: Option<f64>,
    washers_under_nut_max: Option<usize>,
    may_cut: Option<bool>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ShearSection {
    design_factor: f64,
    aisc_edition: AiscEdition,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Tightening {
    nut_factor: NutFactor,
    target: PreloadTarget,
}

/// An error and the part of the file it is about.
struct Problem(String);

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

fn about<T>(section: &str, result: Result<T, shankline::Error>) -> Result<T, Problem> {
    result.map_err(|error| Problem(format!("[{section}] {error}")))
}

fn main() -> ExitCode {
    let (name, text) = match std::env::args().nth(1) {
        None => ("the embedded demonstration".to_owned(), DEMO.to_owned()),
        Some(path) => match std::fs::read_to_string(&path) {
            Ok(text) => (path, text),
            Err(error) => {
                eprintln!("{path}: {error}");
                return ExitCode::from(2);
            }
        },
    };
    let answer = toml::from_str::<JointFile>(&text)
        .map_err(|error| Problem(error.to_string()))
        .and_then(|file| Answer::find(&file).map(|answer| (answer.report(&file), answer.found())));
    match answer {
        Ok((report, found)) => {
            print!("{report}");
            ExitCode::from(u8::from(!found))
        }
        Err(problem) => {
            eprintln!("{name}: {problem}");
            ExitCode::from(2)
        }
    }
}

/// Everything that was looked up and worked out.
struct Answer {
    washer: &'static Washer,
    nut: &'static Nut,
    stack: Stack,
    screws: ScrewSeries,
    rules: LengthRules,
    selection: Selection,
}

impl Answer {
    fn find(file: &JointFile) -> Result<Self, Problem> {
        let thread = file.bolt.thread;
        let screws = about("bolt", ScrewSeries::new(file.bolt.product, thread))?;
        about("bolt", file.bolt.grade.strength(thread.nominal_diameter()))?;
        let nut = about("nut", Nut::find(file.nut.style, &thread))?;
        let washer = about("washers", Washer::find(file.washers.style, &thread))?;
        let thickness = about("washers", washer.thickness())?;
        let mut builder = Stack::builder()
            .shear_planes(file.stack.shear_planes.iter().copied())
            .washers_under_nut(thickness, file.washers.under_nut);
        for _ in 0..file.washers.under_head {
            builder = builder.washer_under_head(washer.to_string(), thickness);
        }
        for ply in &file.stack.plies {
            builder = builder.ply(ply.name.clone(), ply.thickness);
        }
        let stack = about("stack", builder.build())?;
        let usual = LengthRules::fabrication(file.units);
        let rules = LengthRules {
            protrusion_min: file.rules.protrusion_min.unwrap_or(usual.protrusion_min),
            protrusion_max: file.rules.protrusion_max.or(usual.protrusion_max),
            clear_threads_min: file
                .rules
                .clear_threads_min
                .unwrap_or(usual.clear_threads_min),
            washers_under_nut_max: file
                .rules
                .washers_under_nut_max
                .unwrap_or(usual.washers_under_nut_max),
            cut: if file.rules.may_cut == Some(false) {
                CutRule::Never
            } else {
                usual.cut
            },
        };
        let height = about("nut", nut.height())?;
        let search = about("rules", LengthSearch::new(&stack, &screws, height, rules))?;
        let selection = about("bolt", search.run())?;
        let answer = Self {
            washer,
            nut,
            stack,
            screws,
            rules,
            selection,
        };
        // Everything the report will need is asked for now, so that no report stops half-way.
        if file.load.across <= newtons(0.0) || !file.load.across.is_finite() {
            return Err(Problem(
                "[load] across: must be finite and greater than zero".into(),
            ));
        }
        answer.shear_lines(file)?;
        answer.torque_lines(file)?;
        Ok(answer)
    }

    fn found(&self) -> bool {
        self.selection.best().is_some()
    }

    fn report(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, &file.title, '=');
        text += &self.stack_lines(file);
        match self.selection.best() {
            Some(best) => {
                text += &self.choice_lines(file, best);
                text += &self.length_lines(file, best);
                text += &self.protrusion_lines(file, best);
                // `find` has asked for both already.
                text += &self.shear_lines(file).unwrap_or_default();
                text += &self.torque_lines(file).unwrap_or_default();
            }
            None => text += &self.nothing_fits_lines(file),
        }
        text += &self.other_lengths_lines(file);
        text += &self.source_lines(file);
        text += &self.caution_lines(file);
        text
    }

    fn stack_lines(&self, file: &JointFile) -> String {
        let units = file.units;
        let mut text = String::new();
        heading(&mut text, "Stack, from the head", '-');
        let mut line = |name: &str, thickness: Spread<Length>| {
            let show = |length| shown(length, units);
            let _ = writeln!(
                text,
                "  {name:<44}{:>10} ({} to {})",
                show(thickness.nominal),
                show(thickness.min),
                show(thickness.max)
            );
        };
        for washer in self.stack.washers_under_head() {
            line(&washer.name, washer.thickness);
        }
        for (index, ply) in self.stack.plies().iter().enumerate() {
            line(&format!("ply {}: {}", index + 1, ply.name), ply.thickness);
            if self.stack.shear_planes().contains(&(index + 1)) {
                line_of_plane(&mut line, &self.stack, index + 1);
            }
        }
        if let Some((washer, count)) = self.stack.washers_under_nut() {
            for _ in 0..count {
                line("washer under the nut", washer);
            }
        }
        text
    }

    fn choice_lines(&self, file: &JointFile, best: &Candidate) -> String {
        let mut text = String::new();
        heading(&mut text, "Choose", '-');
        let _ = writeln!(
            text,
            "  Bolt      {} x {} {}, {}",
            file.bolt.thread,
            length_name(best.screw.nominal, file.units),
            file.bolt.product,
            file.bolt.grade
        );
        let _ = writeln!(text, "  Nut       {}", self.nut);
        let _ = writeln!(
            text,
            "  Washers   {} under the head",
            file.washers.under_head
        );
        let _ = writeln!(
            text,
            "            {} under the nut ({} always there, {} to add): {}",
            best.washers_under_nut, file.washers.under_nut, best.washers_added, self.washer
        );
        text
    }

    fn length_lines(&self, file: &JointFile, best: &Candidate) -> String {
        let show = |length| shown(length, file.units);
        let pitch = file.bolt.thread.pitch();
        let mut text = String::new();
        heading(
            &mut text,
            "Where the shank ends, measured from under the head",
            '-',
        );
        let _ = writeln!(
            text,
            "  full shank at least to   {}",
            show(best.screw.body_length_min)
        );
        let _ = writeln!(
            text,
            "  full thread at latest at {}",
            show(best.screw.grip_gaging_length_max)
        );
        for plane in self.stack.planes(&best.screw) {
            let to_spare = best.screw.body_length_min - plane.position.max;
            let _ = writeln!(
                text,
                "  shear plane after ply {}: nominal at {}, worst case at {}: {}{}",
                plane.after_ply,
                show(plane.position.nominal),
                show(plane.position.max),
                plane.worst,
                if plane.worst == Zone::Shank {
                    format!(", {} to spare", show(to_spare))
                } else {
                    String::from(" (counts as thread for strength)")
                }
            );
        }
        let _ = writeln!(
            text,
            "  the nut still has {} ({:.2} threads) to the run-out when it clamps the thinnest stack",
            show(best.jam_margin),
            best.clear_threads(pitch)
        );
        text
    }

    fn protrusion_lines(&self, file: &JointFile, best: &Candidate) -> String {
        let show = |length| shown(length, file.units);
        let pitch = file.bolt.thread.pitch();
        let pitches = |length: Length| (length / pitch).value;
        let mut text = String::new();
        heading(&mut text, "Past the nut", '-');
        let wanted = match self.rules.protrusion_max {
            Some(max) => format!("{} to {max} threads", self.rules.protrusion_min),
            None => format!("at least {} threads", self.rules.protrusion_min),
        };
        let _ = writeln!(
            text,
            "  as bought  {} to {} ({:.1} to {:.1} threads); wanted: {wanted}",
            show(best.protrusion_min),
            show(best.protrusion_max),
            pitches(best.protrusion_min),
            pitches(best.protrusion_max)
        );
        let Some(cut) = best.cut else {
            let _ = writeln!(text, "  no cut needed");
            return text;
        };
        if cut.removed > millimetres(0.0) {
            let _ = writeln!(
                text,
                "  cut to     {} from under the head: {} comes off, {} of thread is left",
                length_name(cut.length, file.units),
                show(cut.removed),
                show(cut.thread_left)
            );
            let _ = writeln!(
                text,
                "  after it   {} to {} ({:.1} to {:.1} threads)",
                show(cut.protrusion_min),
                show(cut.protrusion_max),
                pitches(cut.protrusion_min),
                pitches(cut.protrusion_max)
            );
        }
        if !cut.holds_window {
            let _ = writeln!(
                text,
                "  No one cut length keeps every stack inside the wanted threads: fit the bolt, then\n  \
                 mark and cut it to the stack in hand."
            );
        }
        let _ = writeln!(
            text,
            "  Run a nut on before cutting, chamfer the end below the thread root, take the burr off by\n  \
             backing the nut off, and coat the bare end again. Strength marks are on the head."
        );
        text
    }

    fn zones(&self) -> Vec<Zone> {
        self.selection
            .best()
            .map(|best| {
                self.stack
                    .planes(&best.screw)
                    .map(|plane| plane.worst)
                    .collect()
            })
            .unwrap_or_default()
    }

    fn shear_lines(&self, file: &JointFile) -> Result<String, Problem> {
        let show = |force| shown(force, file.units);
        let mut text = String::new();
        heading(&mut text, "Strength of the bolt across its axis", '-');
        let zones = self.zones();
        if zones.is_empty() {
            text.push_str("  no shear plane\n");
            return Ok(text);
        }
        let strength = self.strength(file)?;
        let design_factor = file.shear.design_factor;
        let _ = writeln!(
            text,
            "  {:<26}{:>14}{:>14}{:>14}{:>14}",
            "method",
            "single shear",
            match zones.len() {
                1 => "in all".to_owned(),
                2 => "double shear".to_owned(),
                n => format!("{n} planes"),
            },
            "design",
            "allowable"
        );
        let mut used = Vec::new();
        for method in [
            ShearMethod::DistortionEnergy {
                basis: ShearBasis::Yield,
                design_factor,
            },
            ShearMethod::Aisc360 {
                edition: file.shear.aisc_edition,
            },
        ] {
            let shear = about(
                "shear",
                bolt_shear(&file.bolt.thread, &strength, &zones, method),
            )?;
            let _ = writeln!(
                text,
                "  {:<26}{:>14}{:>14}{:>14}{:>14}",
                method.to_string(),
                show(shear.plane_nominal),
                show(shear.nominal),
                shear
                    .design
                    .map_or_else(|| "-".to_owned(), |force| show(force).to_string()),
                show(shear.allowable)
            );
            used.push((method, shear));
        }
        text.push_str("  The first two columns are nominal: no factor is taken off. Run-out counts as thread.\n");
        for (method, shear) in used {
            let divisor = match method {
                ShearMethod::DistortionEnergy { design_factor, .. } => {
                    format!("allowable: divided by your design factor {design_factor}")
                }
                _ => "design: times 0.75 (factored loads); allowable: divided by 2.00".to_owned(),
            };
            let share = 100.0 * (file.load.across / shear.allowable).value;
            let _ = writeln!(
                text,
                "  {method}: nominal is the {}; {divisor}.\n      \
                 weakest plane: {} ({}); service load {} is {share:.0} % of the allowable{}",
                method.nominal_meaning(),
                shear.governing_plane,
                shear.governing_zone,
                show(file.load.across),
                if share > 100.0 { ": TOO MUCH" } else { "" }
            );
        }
        text.push_str(
            "  Not checked here: the plies (bearing, tear-out, net section), bending of the bolt, nut\n  \
             strength, tension, slip, fatigue.\n",
        );
        Ok(text)
    }

    fn torque_lines(&self, file: &JointFile) -> Result<String, Problem> {
        let (force, torque) = (|f| shown(f, file.units), |t| shown(t, file.units));
        let mut text = String::new();
        heading(&mut text, "Tightening", '-');
        let thread = file.bolt.thread;
        let strength = self.strength(file)?;
        let Some(proof) = strength.loads(&thread).proof else {
            text.push_str(
                "  the standard gives no proof load for this grade: no torque can be derived\n",
            );
            return Ok(text);
        };
        let target = file.tightening.target.fraction() * proof;
        let k = file.tightening.nut_factor;
        let form = about("tightening", ShortForm::new(k, thread.nominal_diameter()))?;
        let setting = about("tightening", form.torque(target))?.nominal;
        let preload = about("tightening", form.preload(setting))?;
        let usage = about(
            "tightening",
            proof_use(preload, proof, file.tightening.target),
        )?;
        let percent = |ratio: Ratio| 100.0 * ratio.value;
        let _ = writeln!(
            text,
            "  torque     {:.0}  (T = K F d with K = {}, from {} to {})",
            torque(setting),
            k.nominal(),
            k.min(),
            k.max()
        );
        let _ = writeln!(
            text,
            "  preload    {} nominal, from {} to {}",
            force(preload.nominal),
            force(preload.min),
            force(preload.max)
        );
        let _ = writeln!(
            text,
            "  of proof   {:.0} % nominal, from {:.0} % to {:.0} % of {}",
            percent(usage.fraction.nominal),
            percent(usage.fraction.min),
            percent(usage.fraction.max),
            force(proof)
        );
        if let Some(caution) = usage.caution {
            let _ = writeln!(text, "  {caution}");
        }
        text.push_str("  The range is that of K alone; the wrench adds its own scatter.\n");
        if matches!(
            self.nut.style.locking(),
            Locking::Insert | Locking::AllMetal
        ) {
            text.push_str(
                "  Lock nut: measure its running torque before it seats and add that to the torque above.\n",
            );
        }
        Ok(text)
    }

    fn strength(&self, file: &JointFile) -> Result<shankline::material::BoltStrength, Problem> {
        let diameter = file.bolt.thread.nominal_diameter();
        about(
            "bolt",
            match self.selection.best() {
                Some(best) => file
                    .bolt
                    .grade
                    .strength_at_length(diameter, best.screw.nominal),
                None => file.bolt.grade.strength(diameter),
            },
        )
    }

    fn nothing_fits_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, "No stock length fits", '-');
        text.push_str("  Each length and its reasons stand below. What can be changed: the washers under the\n  nut, the thickness of the last ply, the wanted protrusion, the nut, or the diameter.\n");
        let transition = self
            .selection
            .rejected()
            .first()
            .map(|c| c.screw.grip_gaging_length_max - c.screw.body_length_min);
        let added = self
            .rules
            .washers_under_nut_max
            .saturating_sub(file.washers.under_nut);
        if let Some(margin) = transition.and_then(|y| self.stack.shank_and_clamp_margin(y, added)) {
            if margin < millimetres(0.0) {
                let _ = writeln!(
                    text,
                    "  With {added} more washers the last ply is {} too thin for any length of this product to\n  \
                     have every plane on shank and still clamp.",
                    shown(-margin, file.units)
                );
            }
        }
        text
    }

    fn other_lengths_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, "The other stock lengths", '-');
        for other in self.selection.accepted().iter().skip(1) {
            let mut remarks = vec![match (other.planes_in_thread, other.planes_in_run_out) {
                (0, 0) => "every plane on shank".to_owned(),
                (0, n) => format!("{n} plane{} in the run-out", plural(n)),
                (n, 0) => format!("{n} plane{} in thread", plural(n)),
                (n, m) => format!("{n} plane{} in thread, {m} in the run-out", plural(n)),
            }];
            if other.washers_added > 0 {
                remarks.push(format!(
                    "{} more washer{}",
                    other.washers_added,
                    plural(other.washers_added)
                ));
            }
            if other.cut.is_some() {
                remarks.push("to be cut".to_owned());
            }
            let _ = writeln!(
                text,
                "  {:>8}  fits, but: {}",
                length_name(other.screw.nominal, file.units),
                remarks.join(", ")
            );
        }
        let mut rejected: Vec<&Candidate> = self.selection.rejected().iter().collect();
        rejected.sort_by(|a, b| a.screw.nominal.value.total_cmp(&b.screw.nominal.value));
        // Neighbours rejected for the same kinds of reason make one line, the first and the last
        // with their amounts.
        let kinds = |c: &Candidate| c.reasons().map(std::mem::discriminant).collect::<Vec<_>>();
        let why = |c: &Candidate| {
            let reasons: Vec<String> = c.reasons().map(|r| r.text(file.units)).collect();
            reasons.join("; ")
        };
        for group in rejected.chunk_by(|a, b| kinds(a) == kinds(b)) {
            let (first, last) = (group[0], group[group.len() - 1]);
            let name = |c: &Candidate| length_name(c.screw.nominal, file.units);
            let _ = writeln!(text, "  {:>8}  {}", name(first), why(first));
            if group.len() > 2 {
                let _ = writeln!(
                    text,
                    "       ...  {} lengths between, for the same reason",
                    group.len() - 2
                );
            }
            if group.len() > 1 {
                let _ = writeln!(text, "  {:>8}  {}", name(last), why(last));
            }
        }
        text
    }

    fn provenances(&self, file: &JointFile) -> Vec<(&'static str, Provenance)> {
        let mut all = vec![
            ("screw dimensions", self.screws.provenance()),
            ("nut height", self.nut.provenance),
            ("washer thickness", self.washer.provenance),
        ];
        if let Some(provenance) = file.bolt.thread.provenance() {
            all.insert(0, ("thread", provenance));
        }
        if let Ok(strength) = self.strength(file) {
            all.insert(1, ("bolt strength", strength.provenance));
        }
        all
    }

    fn source_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, "Where the numbers come from", '-');
        for (what, provenance) in self.provenances(file) {
            let _ = writeln!(text, "  {what:<18}{provenance}");
        }
        text.push_str(
            "  body and thread   ASME B18.2.1-2010, 4.7 (inch); ISO 4014, ISO 4017, ISO 888 (metric)\n  \
             shear             Shigley, Mechanical Engineering Design, 9th ed., ch. 8; AISC 360, J3.6\n  \
             torque            Shigley, 9th ed., Eq. 8-27; preload target Eqs. 8-31 and 8-32\n",
        );
        text
    }

    fn caution_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, "Cautions", '-');
        let mut cautions: Vec<String> = caution::GENERAL.iter().map(ToString::to_string).collect();
        let of_screw = self
            .selection
            .best()
            .and_then(|best| self.screws.caution(&best.screw));
        let of_parts = [of_screw, self.nut.caution(), self.washer.caution()];
        cautions.extend(of_parts.iter().flatten().map(ToString::to_string));
        if self.screws.stock_basis().is_weak() {
            cautions.push(
                "The list of stock lengths is common practice or recalled: ask your dealer."
                    .to_owned(),
            );
        }
        if let Ok(strength) = self.strength(file) {
            let method = ShearMethod::Aisc360 {
                edition: file.shear.aisc_edition,
            };
            if let Ok(shear) = bolt_shear(&file.bolt.thread, &strength, &[Zone::Thread], method) {
                cautions.extend(shear.cautions().map(|caution| caution.to_string()));
            }
        }
        if let Some(limit) = self.nut.style.locking().temperature_max() {
            let celsius = limit.value - 273.15;
            cautions.push(format!(
                "This lock nut must stay below {celsius:.0} C ({:.0} F); use a new one where the joint matters.",
                celsius * 1.8 + 32.0
            ));
        }
        for caution in cautions {
            let _ = writeln!(text, "  * {caution}");
        }
        text
    }
}

/// A shear plane as a line of the stack.
fn line_of_plane(line: &mut impl FnMut(&str, Spread<Length>), stack: &Stack, after: usize) {
    // The position does not depend on the screw; any serves to ask for the planes.
    let any = ScrewLength {
        nominal: millimetres(1.0),
        min: millimetres(1.0),
        max: millimetres(1.0),
        body_length_min: millimetres(0.0),
        grip_gaging_length_max: millimetres(0.0),
        fully_threaded: true,
    };
    for plane in stack.planes(&any).filter(|plane| plane.after_ply == after) {
        line("    ~ shear plane, from under the head", plane.position);
    }
}

fn heading(text: &mut String, title: &str, rule: char) {
    if !text.is_empty() || rule == '-' {
        text.push('\n');
    }
    let _ = writeln!(text, "{title}");
    let _ = writeln!(text, "{}", rule.to_string().repeat(title.chars().count()));
}

/// `4 in`, `3-11/16 in`, `110 mm`.
fn length_name(length: Length, units: UnitSystem) -> String {
    match units {
        UnitSystem::UsCustomary => match inch_fraction(length) {
            Some(fraction) => format!("{fraction} in"),
            None => shown(length, units).to_string(),
        },
        UnitSystem::Si => {
            let text = format!("{:.2}", 1e3 * length.value);
            format!("{} mm", text.trim_end_matches('0').trim_end_matches('.'))
        }
    }
}

fn plural(count: usize) -> &'static str {
    if count == 1 { "" } else { "s" }
}
