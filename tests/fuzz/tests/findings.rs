//! What was found once never comes back: every file of `findings/TARGET/` passes its target, and so do the seeds.

use shankline_fuzz::TARGETS;

#[test]
fn past_findings_pass() {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/findings");
    let mut count = 0;
    for target in TARGETS {
        let files = std::fs::read_dir(format!("{root}/{}", target.name));
        for file in files.into_iter().flatten() {
            let path = file.unwrap().path();
            let input = std::fs::read(&path).unwrap();
            if let Err(why) = (target.run)(&input) {
                panic!("{}: {why}", path.display());
            }
            count += 1;
        }
    }
    assert!(count > 0, "no finding was read");
}

#[test]
fn seeds_pass() {
    for target in TARGETS {
        for seed in (target.seeds)() {
            if let Err(why) = (target.run)(&seed) {
                panic!("{}: {why}\n{}", target.name, String::from_utf8_lossy(&seed));
            }
        }
    }
}
