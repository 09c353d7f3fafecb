//! Put into the library that is changed: which change is on (`MUTANT`), and, into the file `MUTANT_REACHED`, which were met.

extern crate std;

use std::io::Write;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Mutex, OnceLock};

static ON: OnceLock<Option<usize>> = OnceLock::new();
static REACHED: OnceLock<Option<Mutex<std::fs::File>>> = OnceLock::new();
static SEEN: [AtomicBool; COUNT] = [const { AtomicBool::new(false) }; COUNT];

pub fn on(number: usize) -> bool {
    if let Some(chosen) = *ON.get_or_init(|| std::env::var("MUTANT").ok()?.parse().ok()) {
        return chosen == number;
    }
    let file = REACHED.get_or_init(|| Some(Mutex::new(std::fs::File::create(std::env::var_os("MUTANT_REACHED")?).ok()?)));
    if let Some(file) = file {
        if !SEEN[number].swap(true, Ordering::Relaxed) {
            if let Ok(mut file) = file.lock() {
                let _ = std::writeln!(file, "{number}");
            }
        }
    }
    false
}
