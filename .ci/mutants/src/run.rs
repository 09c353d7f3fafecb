//! Which test meets which change, and whether it notices.

use crate::tree::Program;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

/// A test that passes as long as nothing is changed.
pub struct Test {
    pub program: usize,
    pub name: String,
    pub time: Duration,
    pub reached: Vec<usize>,
}

pub enum Outcome {
    Noticed(String),
    Lived,
}

/// Runs every test alone, `jobs` at a time. Those that fail, or take longer than `longest`, notice nothing.
pub fn tests(programs: &[Program], root: &Path, jobs: usize, longest: Duration) -> Vec<Test> {
    let names: Vec<(usize, String)> = programs
        .iter()
        .enumerate()
        .flat_map(|(i, program)| {
            let out = Command::new(&program.path)
                .args(["--list", "--format", "terse"])
                .current_dir(root)
                .output();
            let text = out
                .map(|out| String::from_utf8_lossy(&out.stdout).into_owned())
                .unwrap_or_default();
            text.lines()
                .filter_map(|line| line.strip_suffix(": test"))
                .map(|name| (i, name.to_owned()))
                .collect::<Vec<_>>()
        })
        .collect();
    parallel(&names, jobs, |worker, (program, name)| {
        let list = root.join(format!("../reached{worker}"));
        let _ = std::fs::remove_file(&list);
        let start = Instant::now();
        let passed = run(
            &programs[*program],
            root,
            &[name],
            ("MUTANT_REACHED", &list.to_string_lossy()),
            longest,
        );
        let time = start.elapsed();
        if passed != Some(true) {
            let why = if passed.is_none() {
                "takes too long"
            } else {
                "fails with nothing changed"
            };
            eprintln!("{}: {name} {why}, and is left out", programs[*program].name);
            return None;
        }
        let reached = std::fs::read_to_string(&list)
            .unwrap_or_default()
            .lines()
            .filter_map(|n| n.parse().ok())
            .collect();
        Some(Test {
            program: *program,
            name: name.clone(),
            time,
            reached,
        })
    })
    .into_iter()
    .flatten()
    .collect()
}

/// Runs the tests in their order, in larger and larger groups, until one fails or `budget` is used up.
pub fn outcome(
    number: usize,
    order: &[&Test],
    programs: &[Program],
    root: &Path,
    budget: Duration,
) -> Outcome {
    let (mut spent, mut group, mut rest) = (Duration::ZERO, Duration::from_millis(100), order);
    while !rest.is_empty() && spent < budget {
        let mut time = Duration::ZERO;
        let taken = rest
            .iter()
            .take_while(|test| {
                let fits = time < group;
                time += test.time;
                fits
            })
            .count();
        let (now, later) = rest.split_at(taken);
        for (i, program) in programs.iter().enumerate() {
            let names: Vec<&String> = now
                .iter()
                .filter(|test| test.program == i)
                .map(|test| &test.name)
                .collect();
            if names.is_empty() {
                continue;
            }
            let limit =
                Duration::from_secs(10) + now.iter().map(|test| test.time).sum::<Duration>() * 10;
            match run(
                program,
                root,
                &names,
                ("MUTANT", &number.to_string()),
                limit,
            ) {
                Some(true) => {}
                Some(false) => return Outcome::Noticed(format!("{} {}", program.name, names[0])),
                None => return Outcome::Noticed(format!("{} does not end", program.name)),
            }
        }
        (rest, spent, group) = (later, spent + time, group * 4);
    }
    Outcome::Lived
}

/// Whether the named tests pass; nothing if they are not through in `limit`.
fn run<S: AsRef<str>>(
    program: &Program,
    root: &Path,
    names: &[S],
    variable: (&str, &str),
    limit: Duration,
) -> Option<bool> {
    let child = Command::new(&program.path)
        .args(names.iter().map(AsRef::as_ref))
        .args(["--exact", "--test-threads=1", "--quiet"])
        .env(variable.0, variable.1)
        .env("CARGO_MANIFEST_DIR", root)
        .env("PROPTEST_DISABLE_FAILURE_PERSISTENCE", "1")
        .current_dir(root)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn();
    let Ok(mut child) = child else {
        return Some(false);
    };
    let start = Instant::now();
    loop {
        match child.try_wait() {
            Ok(Some(status)) => return Some(status.success()),
            Ok(None) if start.elapsed() < limit => std::thread::sleep(Duration::from_millis(2)),
            _ => {
                let _ = child.kill();
                let _ = child.wait();
                return None;
            }
        }
    }
}

/// Every one of `items`, `jobs` at a time; answers in the order of the items.
pub fn parallel<T: Sync, A: Send>(
    items: &[T],
    jobs: usize,
    work: impl Fn(usize, &T) -> A + Sync,
) -> Vec<A> {
    let next = std::sync::atomic::AtomicUsize::new(0);
    let answers = std::sync::Mutex::new(Vec::new());
    std::thread::scope(|scope| {
        for worker in 0..jobs {
            let (next, answers, work) = (&next, &answers, &work);
            scope.spawn(move || {
                loop {
                    let i = next.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
                    let Some(item) = items.get(i) else { break };
                    let answer = work(worker, item);
                    answers
                        .lock()
                        .unwrap_or_else(std::sync::PoisonError::into_inner)
                        .push((i, answer));
                }
            });
        }
    });
    let mut answers = answers
        .into_inner()
        .unwrap_or_else(std::sync::PoisonError::into_inner);
    answers.sort_by_key(|(i, _)| *i);
    answers.into_iter().map(|(_, answer)| answer).collect()
}
