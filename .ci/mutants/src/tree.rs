//! The copy of the library that holds every change at once, and its build.

use crate::places::{self, File, Mutant};
use std::collections::{BTreeMap, HashSet};
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

pub struct Tree {
    root: PathBuf,
    build: PathBuf,
    /// Path below the root, and the text as it is, of the files that are changed.
    sources: BTreeMap<String, String>,
    /// What does not compile, by file and number in the file.
    pub unviable: HashSet<(String, usize)>,
    pub files: BTreeMap<String, File>,
    pub count: usize,
}

/// A built program of tests.
pub struct Program {
    pub path: PathBuf,
    pub name: String,
}

impl Tree {
    /// Copies what git knows of below `from`.
    pub fn new(from: &Path, chosen: &dyn Fn(&str) -> bool) -> Result<Self, String> {
        let (root, build) = (
            from.join("target/mutants/tree"),
            from.join("target/mutants/build"),
        );
        let listed = Command::new("git")
            .args(["ls-files", "-co", "--exclude-standard"])
            .current_dir(from)
            .output();
        let listed = String::from_utf8(listed.map_err(|e| e.to_string())?.stdout)
            .map_err(|e| e.to_string())?;
        let mut sources = BTreeMap::new();
        for name in listed
            .lines()
            .filter(|name| !name.starts_with(".ci/mutants/") && from.join(name).is_file())
        {
            let bytes = std::fs::read(from.join(name)).map_err(|e| e.to_string())?;
            if name.starts_with("src/") && name.ends_with(".rs") && chosen(name) {
                sources.insert(
                    name.to_owned(),
                    String::from_utf8(bytes).map_err(|e| e.to_string())?,
                );
            } else if name == "src/lib.rs" {
                let mut text = String::from_utf8(bytes).map_err(|e| e.to_string())?;
                text.push_str(
                    "\n#[doc(hidden)]\n#[allow(missing_docs, dead_code)]\npub mod mutant;\n",
                );
                write(&root.join(name), text.as_bytes())?;
            } else {
                write(&root.join(name), &bytes)?;
            }
        }
        Ok(Tree {
            root,
            build,
            sources,
            unviable: HashSet::new(),
            files: BTreeMap::new(),
            count: 0,
        })
    }

    pub fn root(&self) -> &Path {
        &self.root
    }

    /// Writes the files with their changes.
    pub fn change(&mut self, skip: &dyn Fn(&str, &Mutant) -> bool) -> Result<(), String> {
        let mut first = 0;
        for (name, source) in &self.sources {
            let number = std::cell::Cell::new(0);
            let unviable = &self.unviable;
            let file = places::of(source, first, &|mutant| {
                let n = number.replace(number.get() + 1);
                unviable.contains(&(name.clone(), n)) || skip(name, mutant)
            })
            .map_err(|error| format!("{name}: {error}"))?;
            first += file.mutants.len();
            write(&self.root.join(name), file.text.as_bytes())?;
            self.files.insert(name.clone(), file);
        }
        self.count = first;
        let switch = include_str!("switch.rs").replace("COUNT", &first.max(1).to_string());
        write(&self.root.join("src/mutant.rs"), switch.as_bytes())
    }

    /// Compiles, takes out what does not, and again, until all does.
    pub fn settle(&mut self, skip: &dyn Fn(&str, &Mutant) -> bool) -> Result<(), String> {
        for _ in 0..60 {
            self.change(skip)?;
            let errors = self.errors()?;
            if errors.is_empty() {
                return Ok(());
            }
            let before = self.unviable.len();
            for (name, span, text) in &errors {
                if !self.blame(name, span) {
                    eprintln!("no change is to blame for this:\n{text}");
                }
            }
            eprintln!(
                "{} errors, {} changes do not compile",
                errors.len(),
                self.unviable.len()
            );
            if self.unviable.len() == before {
                return Err("the changed library does not compile".into());
            }
        }
        Err("the changed library does not compile after 60 rounds".into())
    }

    /// Takes out the narrowest change around an error, or all changes of the narrowest expression around it, or of its line.
    fn blame(&mut self, name: &str, span: &Range<usize>) -> bool {
        let Some(file) = self.files.get(name) else {
            return false;
        };
        let holds = |range: &Range<usize>| {
            !range.is_empty() && range.start <= span.start && span.end <= range.end
        };
        // What was taken out before has no place in the text; what another error of this round took out is blamed again.
        let narrow = |ranges: &[Range<usize>]| {
            (0..ranges.len())
                .filter(|&n| holds(&ranges[n]))
                .min_by_key(|&n| ranges[n].len())
        };
        let found: Vec<usize> = if let Some(n) = narrow(&file.changed) {
            vec![n]
        } else if let Some(n) = narrow(&file.around) {
            (0..file.mutants.len())
                .filter(|&m| file.mutants[m].place == file.mutants[n].place)
                .collect()
        } else {
            let start = file.text[..span.start].rfind('\n').unwrap_or(0);
            let end = file.text[span.end..]
                .find('\n')
                .map_or(file.text.len(), |i| span.end + i);
            (0..file.mutants.len())
                .filter(|&n| file.around[n].start < end && file.around[n].end > start)
                .collect()
        };
        let any = !found.is_empty();
        self.unviable
            .extend(found.into_iter().map(|n| (name.to_owned(), n)));
        any
    }

    fn cargo(&self, args: &[&str]) -> Result<Vec<serde_json::Value>, String> {
        let out = Command::new("cargo")
            .args(args)
            .args(["--all-features", "--message-format=json", "--target-dir"])
            .arg(&self.build)
            .current_dir(&self.root)
            // The changed text breaks many a lint.
            .env("RUSTFLAGS", "--cap-lints=allow")
            .env("CARGO_PROFILE_DEV_DEBUG", "0")
            .env("CARGO_PROFILE_TEST_DEBUG", "0")
            .stderr(Stdio::inherit())
            .output()
            .map_err(|e| e.to_string())?;
        let text = String::from_utf8_lossy(&out.stdout);
        Ok(text
            .lines()
            .filter_map(|line| serde_json::from_str(line).ok())
            .collect())
    }

    fn errors(&self) -> Result<Vec<(String, Range<usize>, String)>, String> {
        let mut errors = Vec::new();
        for message in self.cargo(&["check", "--quiet", "--lib", "--profile", "test"])? {
            let message = &message["message"];
            if message["level"] != "error" {
                continue;
            }
            let rendered = message["rendered"].as_str().unwrap_or_default();
            for span in message["spans"]
                .as_array()
                .into_iter()
                .flatten()
                .filter(|span| span["is_primary"] == true)
            {
                let place =
                    |key: &str| usize::try_from(span[key].as_u64().unwrap_or(0)).unwrap_or(0);
                let name = span["file_name"].as_str().unwrap_or_default().to_owned();
                errors.push((
                    name,
                    place("byte_start")..place("byte_end"),
                    rendered.to_owned(),
                ));
            }
        }
        Ok(errors)
    }

    /// Builds the tests of the library and of `tests/`.
    pub fn programs(&self) -> Result<Vec<Program>, String> {
        let mut programs = Vec::new();
        let mut built = false;
        for message in self.cargo(&["test", "--quiet", "--no-run", "--lib", "--tests"])? {
            built |= message["reason"] == "build-finished" && message["success"] == true;
            if let (Some(path), true) = (
                message["executable"].as_str(),
                message["profile"]["test"] == true,
            ) {
                let name = message["target"]["name"]
                    .as_str()
                    .unwrap_or_default()
                    .to_owned();
                programs.push(Program {
                    path: path.into(),
                    name,
                });
            }
        }
        if built {
            Ok(programs)
        } else {
            Err("the tests do not build".into())
        }
    }
}

/// Writes what is not there already, so that nothing is compiled twice.
fn write(path: &Path, bytes: &[u8]) -> Result<(), String> {
    if std::fs::read(path).is_ok_and(|there| there == bytes) {
        return Ok(());
    }
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder).map_err(|e| e.to_string())?;
    }
    std::fs::write(path, bytes).map_err(|e| format!("{}: {e}", path.display()))
}
