//! Chooses the bolt for a joint loaded across its axis, and prints what a workshop needs.
//!
//! ```text
//! cargo run --features serde --example choose_bolt [JOINT.toml]
//! ```
//!
//! Without an argument it works on `examples/data/harrow_clevis.toml`, which is also the template
//! for files of your own. Exit code: 0 with a bolt that holds, 1 if no stock bolt
//! fits or the bolt does not carry the load, 2 for a bad file.

use std::{
    fmt::{self, Write},
    process::ExitCode,
};

use serde::Deserialize;
use shankline::{
    caution,
    joint::{
        Candidate, Environment, Joint, JointBolt, JointCheck, JointLoad, JointMethods, JointNut,
        JointPly, Selection, Sheet,
    },
    parts::Locking,
    preload::TargetBase,
    prelude::*,
    source::Provenance,
    strength::shear::BoltShear,
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
    #[serde(default)]
    environment: Environment,
    /// Material, hole and distances of each ply; left out, the plies are not checked.
    #[serde(default)]
    plies: Vec<JointPly>,
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
    grade: Option<NutGrade>,
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
    #[serde(default = "one")]
    shock_factor: f64,
}

const fn one() -> f64 {
    1.0
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
        .and_then(|file| {
            Answer::find(&file).map(|answer| (answer.report(&file), answer.holds(&file)))
        });
    match answer {
        Ok((report, holds)) => {
            print!("{report}");
            ExitCode::from(u8::from(!holds))
        }
        Err(problem) => {
            eprintln!("{name}: {problem}");
            ExitCode::from(2)
        }
    }
}

/// The joint of the file with the chosen length, checked by machine design.
fn whole_check(
    file: &JointFile,
    stack: &Stack,
    rules: LengthRules,
    best: &Candidate,
) -> Result<(Joint, JointCheck), Problem> {
    let tightening =
        shankline::joint::Tightening::new(file.tightening.nut_factor, file.tightening.target);
    let joint = Joint {
        title: file.title.clone(),
        bolt: JointBolt {
            product: file.bolt.product,
            thread: file.bolt.thread,
            grade: file.bolt.grade,
            length: Some(best.screw.nominal),
        },
        nut: Some(JointNut {
            style: file.nut.style,
            grade: file.nut.grade,
        }),
        tapped: None,
        stack: stack.clone(),
        plies: file.plies.clone(),
        load: JointLoad {
            across: file.load.across,
            shock_factor: file.load.shock_factor,
            ..JointLoad::default()
        },
        environment: file.environment,
        tightening: Some(tightening),
        rules,
        methods: JointMethods::machine_design(file.shear.design_factor),
    };
    let check = about("load", joint.check())?;
    Ok((joint, check))
}

/// Everything that was looked up and worked out.
struct Answer {
    washer: &'static Washer,
    nut: &'static Nut,
    stack: Stack,
    screws: ScrewSeries,
    rules: LengthRules,
    selection: Selection,
    strength: BoltStrength,
    shear: Vec<BoltShear>,
    whole: Option<(Joint, JointCheck)>,
}

impl Answer {
    fn find(file: &JointFile) -> Result<Self, Problem> {
        let thread = file.bolt.thread;
        let screws = about("bolt", ScrewSeries::new(file.bolt.product, &thread))?;
        let nut = about("nut", Nut::find(file.nut.style, &thread))?;
        let washer = about("washers", Washer::find(file.washers.style, &thread))?;
        let thickness = about("washers", washer.thickness())?;
        let mut builder = Stack::builder()
            .shear_planes(file.stack.shear_planes.iter().copied())
            .washers_under_nut(thickness, file.washers.under_nut);
        // One more than the builder takes is enough for its refusal.
        for _ in 0..file.washers.under_head.min(101) {
            builder = builder.washer_under_head(washer.to_string(), thickness);
        }
        for ply in &file.stack.plies {
            builder = builder.ply(ply.name.clone(), ply.thickness);
        }
        let stack = about("stack", builder.build())?;
        let usual = LengthRules::fabrication(file.units);
        let mut rules = usual
            .with_protrusion(
                file.rules
                    .protrusion_min
                    .unwrap_or(usual.protrusion_min_pitches),
                file.rules.protrusion_max.or(usual.protrusion_max_pitches),
            )
            .with_clear_threads(
                file.rules
                    .clear_threads_min
                    .unwrap_or(usual.clear_threads_min),
            )
            .with_washers_under_nut(
                file.rules
                    .washers_under_nut_max
                    .unwrap_or(usual.washers_under_nut_max),
            );
        if file.rules.may_cut == Some(false) {
            rules = rules.with_cut(CutRule::Never);
        }
        let nut_end = about("nut", NutEnd::of(nut))?;
        let search = about("rules", LengthSearch::new(&stack, &screws, nut_end, rules))?;
        let selection = about("bolt", search.run())?;
        let grade = file.bolt.grade;
        let strength = about(
            "bolt",
            match selection.best() {
                Some(best) => {
                    grade.strength_at_length(thread.nominal_diameter(), best.screw.nominal)
                }
                None => grade.strength(thread.nominal_diameter()),
            },
        )?;
        let zones: Vec<Zone> = match selection.best() {
            Some(best) => stack.planes(&best.screw).map(|plane| plane.worst).collect(),
            None => Vec::new(),
        };
        let design_factor = file.shear.design_factor;
        let edition = file.shear.aisc_edition;
        let methods = [
            ShearMethod::DistortionEnergy {
                basis: ShearBasis::Yield,
                design_factor,
            },
            ShearMethod::Aisc360 { edition },
        ];
        let mut shear = Vec::new();
        for method in methods.into_iter().filter(|_| !zones.is_empty()) {
            shear.push(about(
                "shear",
                bolt_shear(&thread, &strength, &zones, method),
            )?);
        }
        if file.load.across <= newtons(0.0) || !file.load.across.is_finite() {
            return Err(Problem(
                "[load] across: must be finite and greater than zero".into(),
            ));
        }
        let whole = match selection.best() {
            Some(best) => Some(whole_check(file, &stack, rules, best)?),
            None => None,
        };
        let answer = Self {
            washer,
            nut,
            stack,
            screws,
            rules,
            selection,
            strength,
            shear,
            whole,
        };
        // Asked for now, so that no report stops half-way.
        answer.torque_lines(file)?;
        Ok(answer)
    }

    /// Whether a length fits and the bolt carries the load by every method.
    fn holds(&self, file: &JointFile) -> bool {
        self.whole.as_ref().is_some_and(|(_, check)| check.holds())
            && self
                .shear
                .iter()
                .all(|shear| file.load.across <= shear.allowable)
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
                text += &self.shear_lines(file);
                // `find` has asked for it already.
                text += &self.torque_lines(file).unwrap_or_default();
                text += &self.whole_lines(file);
            }
            None => text += &self.nothing_fits_lines(file),
        }
        text += &self.other_lengths_lines(file);
        text += &self.source_lines(file);
        text += &self.caution_lines();
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
        let mut planes = self
            .stack
            .shear_planes()
            .iter()
            .zip(self.stack.plane_positions())
            .peekable();
        for (number, ply) in (1..).zip(self.stack.plies()) {
            line(&format!("ply {number}: {}", ply.name), ply.thickness);
            if let Some((_, position)) = planes.next_if(|(after, _)| **after == number) {
                line("    ~ shear plane, from under the head", *position);
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
        if !self.holds(file) {
            text.push_str(
                "  THIS BOLT DOES NOT CARRY THE LOAD (see below): take a larger one, a stronger grade, more\n  \
                 bolts or more shear planes.\n",
            );
        }
        text
    }

    fn length_lines(&self, file: &JointFile, best: &Candidate) -> String {
        let show = |length| shown(length, file.units);
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
            best.clear_threads
        );
        text
    }

    fn protrusion_lines(&self, file: &JointFile, best: &Candidate) -> String {
        let show = |length| shown(length, file.units);
        let pitch = file.bolt.thread.pitch();
        let range = |protrusion: Spread<Length>| {
            let pitches = |length: Length| (length / pitch).value;
            let Spread { min, max, .. } = protrusion;
            format!(
                "{} to {} ({:.1} to {:.1} threads)",
                show(min),
                show(max),
                pitches(min),
                pitches(max)
            )
        };
        let mut text = String::new();
        heading(&mut text, "Past the nut", '-');
        let wanted = match self.rules.protrusion_max_pitches {
            Some(max) => format!("{} to {max} threads", self.rules.protrusion_min_pitches),
            None => format!("at least {} threads", self.rules.protrusion_min_pitches),
        };
        let _ = writeln!(
            text,
            "  as bought  {}; wanted: {wanted}",
            range(best.protrusion)
        );
        if !best.needs_cut {
            let _ = writeln!(text, "  no cut needed");
            return text;
        }
        if let Some(cut) = best.cut {
            let _ = writeln!(
                text,
                "  cut to     {} from under the head: {} comes off, {} of thread is left",
                length_name(cut.length, file.units),
                show(cut.removed),
                show(cut.thread_left)
            );
            let _ = writeln!(text, "  after it   {}", range(cut.protrusion));
        }
        if !best.holds_window() {
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

    fn shear_lines(&self, file: &JointFile) -> String {
        let show = |force| shown(force, file.units);
        let mut text = String::new();
        heading(&mut text, "Strength of the bolt across its axis", '-');
        let Some(planes) = self.shear.first().map(|shear| shear.planes) else {
            text.push_str("  no shear plane\n");
            return text;
        };
        let _ = writeln!(
            text,
            "  {:<26}{:>14}{:>14}{:>14}{:>14}",
            "method",
            "single shear",
            match planes {
                1 => "in all".to_owned(),
                2 => "double shear".to_owned(),
                n => format!("{n} planes"),
            },
            "design",
            "allowable"
        );
        for shear in &self.shear {
            let design = shear.design.map(|force| show(force).to_string());
            let _ = writeln!(
                text,
                "  {:<26}{:>14}{:>14}{:>14}{:>14}",
                shear.method,
                show(shear.plane_nominal),
                show(shear.nominal),
                design.as_deref().unwrap_or("-"),
                show(shear.allowable)
            );
        }
        text.push_str(
            "  The first two columns are nominal: no factor is taken off. Run-out counts as thread.\n",
        );
        for shear in &self.shear {
            let design = match shear.resistance_factor {
                Some(factor) => format!("design: times {factor} (factored loads); "),
                None => String::new(),
            };
            let share = 100.0 * (file.load.across / shear.allowable).value;
            let _ = writeln!(
                text,
                "  {}: nominal is the {};\n      {design}allowable: divided by {} (service loads).\n      \
                 weakest plane: {} ({}), {} on {}; service load {} is {share:.0} % of the allowable{}",
                shear.method,
                shear.method.nominal_meaning(),
                shear.safety_factor,
                shear.governing_plane,
                shear.governing_zone,
                shown(shear.stress, file.units),
                shown(shear.area, file.units),
                show(file.load.across),
                if share > 100.0 { ": TOO MUCH" } else { "" }
            );
        }
        text
    }

    fn torque_lines(&self, file: &JointFile) -> Result<String, Problem> {
        let (force, torque) = (|f| shown(f, file.units), |t| shown(t, file.units));
        let mut text = String::new();
        heading(&mut text, "Tightening", '-');
        let thread = file.bolt.thread;
        let target = file.tightening.target;
        let aim = match target.aim(&thread, &self.strength) {
            Ok(aim) => aim,
            Err(error) => {
                let _ = writeln!(text, "  no torque can be derived: {error}");
                return Ok(text);
            }
        };
        let k = file.tightening.nut_factor;
        let form = about("tightening", ShortForm::new(k, thread.nominal_diameter()))?;
        let setting = about("tightening", form.torque(aim.preload))?.nominal;
        let preload = about("tightening", form.preload(setting))?;
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
        if aim.base == TargetBase::ProofLoad {
            let proof = aim.base_load;
            let usage = about("tightening", proof_use(preload, proof, target))?;
            let _ = writeln!(
                text,
                "  of proof   {:.0} % nominal, from {:.0} % to {:.0} % of {}",
                percent(usage.fraction.nominal),
                percent(usage.fraction.min),
                percent(usage.fraction.max),
                force(proof)
            );
            for caution in usage.cautions().iter() {
                let _ = writeln!(text, "  {caution}");
            }
        } else if let Some(most) = aim.limit.load() {
            let share = percent(preload.max / most);
            let warning = if share > 100.0 { ": TOO MUCH" } else { "" };
            let _ = writeln!(
                text,
                "  greatest   {share:.0} % of the {} of {}{warning}",
                aim.limit,
                force(most)
            );
        }
        for caution in aim.cautions().iter() {
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

    fn whole_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        let Some((joint, check)) = &self.whole else {
            return text;
        };
        heading(&mut text, "The whole check", '-');
        let _ = write!(text, "{}", check.render(file.units));
        heading(&mut text, "To build and inspect by", '-');
        // Its parts have been found already.
        if let Ok(sheet) = Sheet::new(joint, check) {
            let _ = write!(text, "{}", sheet.render(file.units));
        }
        text
    }

    fn nothing_fits_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, "No stock length fits", '-');
        text.push_str(
            "  Each length and its reasons stand below. What can be changed: the washers under the\n  \
             nut, the thickness of the last ply, the wanted protrusion, the nut, or the diameter.\n",
        );
        let added = self
            .rules
            .washers_under_nut_max
            .saturating_sub(file.washers.under_nut);
        // Only screws with a body can have a plane on shank.
        let with_body = self
            .selection
            .rejected()
            .iter()
            .find(|c| !c.screw.fully_threaded);
        let margin = with_body.and_then(|c| {
            let transition = c.screw.transition_length();
            self.stack
                .shank_and_clamp_margin(transition, added)
                .ok()
                .flatten()
        });
        if let Some(margin) = margin.filter(|margin| *margin < millimetres(0.0)) {
            let _ = writeln!(
                text,
                "  Even with {added} more washer{} the last ply is {} too thin for any screw of this product to\n  \
                 have every plane on shank and still clamp.",
                plural(added),
                shown(-margin, file.units)
            );
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
            if other.needs_cut {
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
                    "       ...  {} more between, for the same reason",
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
        let screw = self
            .selection
            .best()
            .map(|best| self.screws.provenance(&best.screw));
        [
            ("thread", file.bolt.thread.provenance()),
            ("bolt strength", self.strength.provenance),
            ("screw dimensions", screw),
            ("nut height", Some(self.nut.provenance)),
            ("washer thickness", Some(self.washer.provenance)),
        ]
        .into_iter()
        .filter_map(|(what, provenance)| Some((what, provenance?)))
        .collect()
    }

    fn source_lines(&self, file: &JointFile) -> String {
        let mut text = String::new();
        heading(&mut text, "Where the numbers come from", '-');
        for (what, provenance) in self.provenances(file) {
            let _ = writeln!(text, "  {what:<18}{provenance}");
        }
        text.push_str(
            "  body and thread   ASME B18.2.1-2010, 4.7 (inch); ISO 4014, ISO 4017, ISO 888 (metric)\n  \
             shear             Shigley, Mechanical Engineering Design, 9th ed., ch. 8; AISC 360-22, J3.7\n  \
             torque            Shigley, 9th ed., Eq. 8-27; preload target Eqs. 8-31 and 8-32\n",
        );
        text
    }

    fn caution_lines(&self) -> String {
        let mut text = String::new();
        heading(&mut text, "Cautions", '-');
        let lists = [
            self.strength.cautions(),
            self.selection.cautions(),
            self.washer.cautions(),
        ];
        let of_shear = self.shear.iter().map(BoltShear::cautions);
        let mut cautions: Vec<String> = caution::GENERAL.iter().map(ToString::to_string).collect();
        for list in lists.into_iter().chain(of_shear) {
            cautions.extend(list.iter().map(ToString::to_string));
        }
        if let Some(note) = self.strength.note {
            cautions.push(format!("{}: {note}.", self.strength.grade));
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
