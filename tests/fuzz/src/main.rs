//! Throws mutated seeds at the targets: `shankline-fuzz TARGET|all SECONDS [SEED]`, or `shankline-fuzz replay TARGET FILE`.
//!
//! Exit code 1 if anything was found; each finding is made short and written to `found/TARGET/`.

use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::process::ExitCode;
use std::sync::Mutex;
use std::time::{Duration, Instant};

use shankline_fuzz::{Random, TARGETS, Target, target};

/// Where the last panic was: what a finding is called by.
static PANIC: Mutex<String> = Mutex::new(String::new());

fn main() -> ExitCode {
    std::panic::set_hook(Box::new(|panic| {
        if let Ok(mut last) = PANIC.lock() {
            *last = panic.to_string();
        }
    }));
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let found = match arguments.as_slice() {
        ["replay", name, file] => {
            let input = std::fs::read(file).expect("a file to replay");
            let why = fails(target(name), &input);
            println!("{}", why.as_deref().unwrap_or("passes"));
            usize::from(why.is_some())
        }
        [name, seconds, rest @ ..] => {
            let time = Duration::from_secs_f64(seconds.parse().expect("seconds"));
            let seed = rest.first().map_or(1, |seed| seed.parse().expect("a seed"));
            let all = TARGETS
                .into_iter()
                .filter(|own| *name == "all" || own.name == *name);
            all.map(|own| fuzz(own, time, seed)).sum()
        }
        _ => {
            eprintln!("shankline-fuzz TARGET|all SECONDS [SEED], or replay TARGET FILE");
            return ExitCode::from(2);
        }
    };
    if found == 0 {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

fn fails(target: Target, input: &[u8]) -> Option<String> {
    match catch_unwind(AssertUnwindSafe(|| (target.run)(input))) {
        Ok(Ok(())) => None,
        Ok(Err(why)) => Some(why),
        Err(_) => Some(PANIC.lock().map(|last| last.clone()).unwrap_or_default()),
    }
}

/// What findings are told apart by: the first words without their figures.
fn kind(why: &str) -> String {
    let line = why.lines().next().unwrap_or_default();
    line.chars()
        .filter(|c| !c.is_ascii_digit())
        .take(50)
        .collect()
}

fn fuzz(target: Target, time: Duration, seed: u64) -> usize {
    /// Inputs that are kept to go on from: the seeds, and the last few that came of them.
    const KEPT: usize = 64;
    let seeds = (target.seeds)();
    let mut kept = seeds.clone();
    let mut random = Random(seed);
    let mut found: BTreeMap<String, (u64, Vec<u8>, String)> = BTreeMap::new();
    let (start, mut runs, mut slowest) = (Instant::now(), 0_u64, Duration::ZERO);
    while start.elapsed() < time {
        let from = if random.once_in(3) {
            random.one(&kept)
        } else {
            random.one(&seeds)
        };
        let input = (target.mutate)(from, &seeds, &mut random);
        let begun = Instant::now();
        let why = fails(target, &input);
        slowest = slowest.max(begun.elapsed());
        runs += 1;
        if let Some(why) = why {
            let entry = found
                .entry(kind(&why))
                .or_insert_with(|| (0, input.clone(), why));
            entry.0 += 1;
        } else if kept.len() < seeds.len() + KEPT {
            kept.push(input);
        } else if random.once_in(16) {
            let at = seeds.len() + random.below(KEPT);
            kept[at] = input;
        }
    }
    println!(
        "{}: {runs} runs in {:.0} s, slowest {:.4} s, {} findings",
        target.name,
        start.elapsed().as_secs_f64(),
        slowest.as_secs_f64(),
        found.len()
    );
    for (number, (kind, (times, input, _))) in found.iter().enumerate() {
        let input = shortened(target, input.clone(), kind);
        let folder = format!("{}/found/{}", env!("CARGO_MANIFEST_DIR"), target.name);
        let file = format!("{folder}/{seed}_{number}");
        std::fs::create_dir_all(&folder).expect("a folder for findings");
        std::fs::write(&file, &input).expect("a file for a finding");
        let why = fails(target, &input).unwrap_or_default();
        println!(
            "FOUND {times} times, {file}: {}",
            why.chars().take(3000).collect::<String>()
        );
    }
    found.len()
}

/// A shorter and plainer input that fails in the same way.
fn shortened(target: Target, mut input: Vec<u8>, own: &str) -> Vec<u8> {
    let same = |input: &[u8]| fails(target, input).is_some_and(|why| kind(&why) == own);
    let mut step = input.len() / 2;
    let begun = Instant::now();
    while step > 0 && begun.elapsed() < Duration::from_secs(20) {
        let mut at = 0;
        while at + step <= input.len() {
            let mut less = input.clone();
            less.drain(at..at + step);
            let mut plain = input.clone();
            plain[at..at + step].fill(0);
            if same(&less) {
                input = less;
            } else {
                if plain != input && same(&plain) {
                    input = plain;
                }
                at += step;
            }
        }
        step /= 2;
    }
    input
}
