//! Changes the library in small ways, one at a time, and looks whether a test notices.
//!
//! All changes are compiled at once, each behind a switch, so that there is one build and not one a change; every test
//! is run alone once, which tells the changes that it meets, and a change is then shown to those tests only. Seconds a
//! change become hundredths.
//!
//! ```text
//! cargo run --release --manifest-path .ci/mutants/Cargo.toml -- src/strength src/thread.rs
//! ```
//!
//! | argument | meaning |
//! |---|---|
//! | a path | files and folders of `src` that are changed |
//! | `--changed BASE` | the files that differ from BASE |
//! | `--every N` | one change in N, to try |
//! | `--again` | those that lived the last time, and new ones |
//! | `--budget S` | seconds of tests a change at most (60) |
//! | `--longest S` | tests that take longer notice nothing (60) |
//! | `--jobs N` | so many at a time (2) |
//! | `--least P` | fails if fewer than P % are noticed |
//!
//! What lives is in `target/mutants/lived.tsv`: write the test that says when it appears and when not. What no test can
//! tell, as the answer is the same, stands in `.ci/mutants/equivalent.tsv` with the reason.

mod places;
mod run;
mod tree;

use run::Outcome;
use std::collections::{BTreeMap, HashMap, HashSet};
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};
use std::time::Duration;
use tree::Tree;

struct Wish {
    paths: Vec<String>,
    every: usize,
    again: bool,
    budget: Duration,
    longest: Duration,
    jobs: usize,
    least: f64,
}

fn wish(root: &Path) -> Result<Wish, String> {
    let mut wish = Wish {
        paths: Vec::new(),
        every: 1,
        again: false,
        budget: Duration::from_secs(60),
        longest: Duration::from_secs(60),
        jobs: 2,
        least: 0.0,
    };
    let mut words = std::env::args().skip(1);
    while let Some(word) = words.next() {
        let mut number = || {
            words
                .next()
                .and_then(|w| w.parse::<f64>().ok())
                .ok_or(format!("{word} wants a number"))
        };
        match word.as_str() {
            "--every" => wish.every = (number()? as usize).max(1),
            "--budget" => wish.budget = Duration::from_secs_f64(number()?),
            "--longest" => wish.longest = Duration::from_secs_f64(number()?),
            "--jobs" => wish.jobs = (number()? as usize).max(1),
            "--least" => wish.least = number()?,
            "--again" => wish.again = true,
            "--changed" => {
                let base = words.next().ok_or("--changed wants a base")?;
                let out = Command::new("git")
                    .args(["diff", "--name-only", "--diff-filter=d", &base, "--", "src"])
                    .current_dir(root)
                    .output();
                let text =
                    String::from_utf8_lossy(&out.map_err(|e| e.to_string())?.stdout).into_owned();
                wish.paths.extend(text.lines().map(str::to_owned));
            }
            _ if word.starts_with('-') => return Err(format!("{word} is not known")),
            _ => wish.paths.push(word.trim_end_matches('/').to_owned()),
        }
    }
    Ok(wish)
}

/// File, function and change: what tells a change apart as long as its function stays as it is.
type Name = (String, String, String);

fn main() -> ExitCode {
    match work() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}

fn work() -> Result<bool, String> {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("../..")
        .canonicalize()
        .map_err(|e| e.to_string())?;
    let wish = wish(&root)?;
    if wish.paths.is_empty() {
        println!("nothing of src is to be changed");
        return Ok(true);
    }
    let chosen = |name: &str| {
        !name.starts_with("src/tables/generated")
            && name != "src/lib.rs"
            && !name.ends_with("/tests.rs")
            && wish.paths.iter().any(|path| {
                name == path
                    || name
                        .strip_prefix(path.as_str())
                        .is_some_and(|rest| rest.starts_with('/'))
            })
    };
    let equivalent = rows(&root.join(".ci/mutants/equivalent.tsv"));
    let kept = root.join("target/mutants/results.tsv");
    let before: HashMap<Name, Vec<String>> = rows(&kept)
        .into_iter()
        .filter_map(|row| Some((name_of(&row)?, row)))
        .collect();
    let equal: HashSet<Name> = equivalent.iter().filter_map(|row| name_of(row)).collect();

    let mut tree = Tree::new(&root, &chosen)?;
    let known = root.join("target/mutants/unviable.tsv");
    let unviable: HashSet<Name> = rows(&known).iter().filter_map(|row| name_of(row)).collect();
    tree.settle(&|file, mutant| unviable.contains(&named(file, mutant)))?;
    let unviable = |file: &String, n: usize, mutant: &places::Mutant| {
        tree.unviable.contains(&(file.clone(), n)) || unviable.contains(&named(file, mutant))
    };
    let text: Vec<String> = tree
        .files
        .iter()
        .flat_map(|(file, of)| {
            of.mutants
                .iter()
                .enumerate()
                .map(move |(n, mutant)| (file, n, mutant))
        })
        .filter(|(file, n, mutant)| unviable(file, *n, mutant))
        .map(|(file, _, mutant)| line(&<[String; 3]>::from(named(file, mutant))))
        .collect();
    std::fs::write(&known, text.join("\n") + "\n").map_err(|e| e.to_string())?;
    let programs = tree.programs()?;
    eprintln!(
        "{} places for changes, {} do not compile; running every test alone",
        tree.count,
        text.len()
    );
    let tests = run::tests(&programs, tree.root(), wish.jobs, wish.longest);
    let mut meets: Vec<Vec<usize>> = vec![Vec::new(); tree.count];
    for (t, test) in tests.iter().enumerate() {
        for &n in &test.reached {
            if let Some(list) = meets.get_mut(n) {
                list.push(t);
            }
        }
    }
    eprintln!(
        "{} tests, {:.0} s",
        tests.len(),
        tests
            .iter()
            .map(|test| test.time.as_secs_f64())
            .sum::<f64>()
    );

    let mut all = Vec::new();
    let mut number = 0;
    for (name, file) in &tree.files {
        for (n, mutant) in file.mutants.iter().enumerate() {
            if !unviable(name, n, mutant) {
                all.push((number, name.clone(), mutant.clone()));
            }
            number += 1;
        }
    }
    for row in &equivalent {
        let gone = name_of(row).is_some_and(|name| {
            chosen(&name.0) && !all.iter().any(|(_, file, m)| named(file, m) == name)
        });
        if gone {
            eprintln!(
                "equivalent.tsv has a change that is no more: {}",
                row.join(", ")
            );
        }
    }
    let place = |file: &str| {
        wish.paths
            .iter()
            .position(|path| file.starts_with(path.as_str()))
    };
    all.sort_by_key(|(number, file, _)| (place(file), *number));
    let todo: Vec<_> = all
        .iter()
        .enumerate()
        .filter(|(i, _)| i % wish.every == 0)
        .map(|(_, one)| one)
        .collect();
    let total = todo.len();
    let done = std::sync::atomic::AtomicUsize::new(0);
    let journal = std::fs::OpenOptions::new()
        .append(true)
        .create(true)
        .open(&kept)
        .map_err(|e| e.to_string())?;
    let journal = std::sync::Mutex::new(journal);
    let results = run::parallel(&todo, wish.jobs, |_, (number, file, mutant)| {
        let name = named(file, mutant);
        let known = before
            .get(&name)
            .filter(|row| wish.again && row.get(3).is_some_and(|r| r == "noticed"));
        let (result, by) = if equal.contains(&name) {
            ("equivalent".to_owned(), String::new())
        } else if let Some(row) = known {
            (row[3].clone(), row.get(4).cloned().unwrap_or_default())
        } else {
            let own = file
                .trim_start_matches("src/")
                .trim_end_matches(".rs")
                .replace('/', "::");
            let mut order: Vec<_> = meets[*number].iter().map(|&t| &tests[t]).collect();
            // Unit tests of the file first, then whatever is quick.
            order.sort_by_key(|test| {
                (
                    !(programs[test.program].name == "shankline" && test.name.starts_with(&own)),
                    test.time,
                )
            });
            match run::outcome(*number, &order, &programs, tree.root(), wish.budget) {
                _ if order.is_empty() => ("unmet".to_owned(), String::new()),
                Outcome::Noticed(by) => ("noticed".to_owned(), by),
                Outcome::Lived => ("lived".to_owned(), format!("{} tests meet it", order.len())),
            }
        };
        let row = [name.0, name.1, name.2, result, by, mutant.line.to_string()]
            .map(|cell| cell.to_string());
        if let Ok(mut journal) = journal.lock() {
            use std::io::Write;
            let _ = writeln!(journal, "{}", line(&row));
            let n = done.fetch_add(1, std::sync::atomic::Ordering::Relaxed) + 1;
            if n.is_multiple_of(200) {
                eprintln!("{n} of {total}");
            }
        }
        row
    });
    // What was written on the way stands in order now, without what is no more.
    let now: HashSet<Name> = results.iter().filter_map(|row| name_of(row)).collect();
    let others = before
        .into_iter()
        .filter(|(name, _)| !now.contains(name) && !chosen(&name.0))
        .map(|(_, row)| line(&row));
    let mut text: Vec<String> = others.chain(results.iter().map(|row| line(row))).collect();
    text.sort();
    std::fs::write(&kept, text.join("\n") + "\n").map_err(|e| e.to_string())?;
    let lived: Vec<String> = results
        .iter()
        .filter(|row| row[3] == "lived" || row[3] == "unmet")
        .map(|row| line(row))
        .collect();
    std::fs::write(
        root.join("target/mutants/lived.tsv"),
        lived.join("\n") + "\n",
    )
    .map_err(|e| e.to_string())?;

    let mut table: BTreeMap<String, [usize; 4]> = BTreeMap::new();
    for row in &results {
        let module = row[0]
            .trim_start_matches("src/")
            .split(['/', '.'])
            .next()
            .unwrap_or_default()
            .to_owned();
        let column = ["noticed", "lived", "unmet", "equivalent"]
            .iter()
            .position(|&r| r == row[3])
            .unwrap_or(1);
        for key in [module, "all".to_owned()] {
            table.entry(key).or_default()[column] += 1;
        }
    }
    println!(
        "| module | changes | noticed | lived | met by no test | equivalent | noticed of those that are not |\n|---|---|---|---|---|---|---|"
    );
    let mut enough = true;
    for (module, [noticed, lived, unmet, equivalent]) in &table {
        let share = 100.0 * *noticed as f64 / ((noticed + lived + unmet).max(1)) as f64;
        println!(
            "| `{module}` | {} | {noticed} | {lived} | {unmet} | {equivalent} | {share:.1} % |",
            noticed + lived + unmet + equivalent
        );
        enough &= share >= wish.least;
    }
    Ok(enough)
}

fn named(file: &str, mutant: &places::Mutant) -> Name {
    (
        file.to_owned(),
        mutant.function.clone(),
        mutant.change.clone(),
    )
}

fn name_of(row: &[String]) -> Option<Name> {
    Some((
        row.first()?.clone(),
        row.get(1)?.clone(),
        row.get(2)?.clone(),
    ))
}

/// The rows of a file of tab-separated cells; a change may hold commas and quotes.
fn rows(path: &Path) -> Vec<Vec<String>> {
    let text = std::fs::read_to_string(path).unwrap_or_default();
    text.lines()
        .filter(|line| !line.is_empty() && !line.starts_with('#'))
        .map(|line| line.split('\t').map(str::to_owned).collect())
        .collect()
}

fn line(row: &[String]) -> String {
    row.iter()
        .map(|cell| cell.replace(['\t', '\n'], " "))
        .collect::<Vec<_>>()
        .join("\t")
}
