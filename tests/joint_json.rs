//! The requests and their answers in `examples/data` stay what the library reads and writes.
//!
//! `UPDATE_EXAMPLES=1 cargo test --all-features --test joint_json` rewrites the answers.
#![cfg(feature = "serde")]

use shankline::derivation::Format;
use shankline::joint::{Account, Joint, Report, ReportStyle};
use shankline::strength::check::Mode;
use shankline::units::UnitSystem;

const REQUEST: &str = "examples/data/davit_socket.json";
const REQUESTS: [&str; 3] = [
    REQUEST,
    "examples/data/seesaw_pivot.json",
    "examples/data/winch_foot.json",
];

fn request(path: &str) -> Joint {
    let text = std::fs::read_to_string(path).unwrap();
    serde_json::from_str(&text).unwrap()
}

#[test]
fn the_answers_are_current() {
    for path in REQUESTS {
        let answer = path.replace(".json", "_report.json");
        let report = request(path).report(UnitSystem::Si).unwrap();
        let mut current = serde_json::to_string_pretty(&report).unwrap();
        current.push('\n');
        if std::env::var_os("UPDATE_EXAMPLES").is_some() {
            std::fs::write(&answer, &current).unwrap();
        }
        let kept = std::fs::read_to_string(&answer).unwrap();
        assert!(
            kept == current,
            "{answer}: run this test with UPDATE_EXAMPLES=1"
        );
        assert_eq!(serde_json::from_str::<Report>(&kept).unwrap(), report);
    }
}

/// The report, the sheet and the whole working of each request, as a person reads them: kept so that a change
/// of wording or of a figure is seen and read by someone.
#[test]
fn the_reports_are_current() {
    for path in REQUESTS {
        let joint = request(path);
        let (verdict, workings) = joint.check_with_working().unwrap();
        let report = joint.report(UnitSystem::Si).unwrap();
        let report = report.render(ReportStyle::Text).to_string();
        let list = verdict
            .cautions
            .iter()
            .map(|caution| format!("- {caution}"));
        let cautions = format!("\nCautions\n{}\n", list.collect::<Vec<_>>().join("\n"));
        let mut working = format!("# {}\n", joint.title);
        for steps in workings {
            steps.check().unwrap();
            working.push('\n');
            working.push_str(&steps.render(Format::Markdown, UnitSystem::Si).to_string());
        }
        working.push_str(&cautions.replace("\nCautions\n", "\n### Cautions\n\n"));
        for (ending, current) in [("_report.txt", report), ("_working.md", working)] {
            let file = path.replace(".json", ending);
            if std::env::var_os("UPDATE_EXAMPLES").is_some() {
                std::fs::write(&file, &current).unwrap();
            }
            let kept = std::fs::read_to_string(&file).unwrap();
            let same = kept == current;
            assert!(
                same,
                "{file} changed: run this test with UPDATE_EXAMPLES=1, and read the difference"
            );
        }
    }
}

#[test]
fn joints_come_back_as_they_went() {
    for path in REQUESTS {
        let joint = request(path);
        let text = serde_json::to_string(&joint).unwrap();
        let back: Joint = serde_json::from_str(&text).unwrap();
        assert_eq!(back, joint);
        assert_eq!(
            back.check().unwrap().holds(),
            joint.check().unwrap().holds()
        );
    }
}

/// The demonstrations are joints that one would build.
#[test]
fn the_demonstrations_hold() {
    for path in REQUESTS {
        let verdict = request(path).check().unwrap();
        let report = verdict.render(UnitSystem::Si).to_string();
        assert!(verdict.holds(), "{path}\n{report}");
        let used = verdict.governing().unwrap().utilisation.value;
        assert!(used < 0.95, "{path}: {used}");
    }
}

/// The pivot with play and described metals is checked for bending and corrosion.
#[test]
fn the_pivot_is_checked_for_bending_and_corrosion() {
    let verdict = request(REQUESTS[1]).check().unwrap();
    let modes = verdict.checks.iter().map(|check| check.mode.to_string());
    assert!(modes.take(2).eq(["combined loads", "bolt bending"]));
    assert_eq!(verdict.account(Mode::Corrosion), Account::InOrder);
}

/// The joints in TOML, for `choose_bolt`, are the same documents.
#[test]
fn joints_in_toml_hold() {
    for file in ["harrow_clevis", "mezzanine_cleat"] {
        let text = std::fs::read_to_string(format!("examples/data/{file}.toml")).unwrap();
        let joint: Joint = toml::from_str(&text).unwrap();
        let verdict = joint.check().unwrap();
        let report = verdict.render(UnitSystem::Si).to_string();
        assert!(verdict.holds(), "{file}\n{report}");
        let again = toml::to_string(&joint).unwrap();
        let back: Joint = toml::from_str(&again).unwrap();
        assert_eq!(back.check().unwrap().word(), verdict.word());
    }
}

#[test]
fn the_group_is_read() {
    use shankline::joint::tightening_order;
    use shankline::strength::group::BoltPattern;
    let text = std::fs::read_to_string("examples/data/davit_group.json").unwrap();
    let group: BoltPattern = serde_json::from_str(&text).unwrap();
    assert_eq!(tightening_order(&group).bolts, [1, 3, 2, 4]);
}

#[test]
fn bad_requests_name_the_field() {
    let text = std::fs::read_to_string(REQUEST).unwrap();
    for (right, wrong, named) in [
        ("\"across\": \"4 kN\"", "\"across\": \"4 mm\"", "4 mm"),
        ("\"across\"", "\"acros\"", "acros"),
        ("\"M16\"", "\"M16.3\"", "M16.3"),
        ("iso_4032", "iso_403", "iso_403"),
        ("\"-15 C\"", "\"-15\"", "no unit"),
        (
            "\"shear_planes\": [\n      1",
            "\"shear_planes\": [\n      3",
            "shear plane",
        ),
    ] {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        let error = serde_json::from_str::<Joint>(&spoiled).unwrap_err();
        assert!(error.to_string().contains(named), "{named}: {error}");
    }
    for (right, wrong, named) in [
        (
            "\"hottest\": \"45 C\"",
            "\"hottest\": \"-45 C\"",
            "highest temperature",
        ),
        (
            "\"across\": \"4 kN\"",
            "\"across\": \"-4 kN\"",
            "load across the axis",
        ),
        (
            "\"shock_factor\": 1.5",
            "\"shock_factor\": 0.5",
            "shock factor",
        ),
    ] {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        let joint: Joint = serde_json::from_str(&spoiled).unwrap();
        let error = joint.check().unwrap_err().to_string();
        assert!(error.contains(named), "{named}: {error}");
    }
}
