//! Documents come back as they went, to the bit: random joints and their reports.
//!
//! `VERDICT_CASES=10000 cargo test --release --all-features --test documents` for more of them.
#![cfg(feature = "serde")]

use shankline::joint::{FORMAT, Joint, Report, ReportStyle, Sheet};
use shankline::units::UnitSystem;

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::for_all;

#[test]
fn joints_and_reports_come_back_to_the_bit() {
    for_all(600, |joint, dice| {
        let text = serde_json::to_string(joint).unwrap();
        let back: Joint =
            serde_json::from_str(&text).map_err(|error| format!("{error}\n{text}"))?;
        if back != *joint {
            return Err(format!("another joint\n{joint:?}\n{back:?}"));
        }
        let units = if dice.now_and_then(50.0) {
            UnitSystem::Si
        } else {
            UnitSystem::UsCustomary
        };
        // What can be checked can be reported.
        let report = match (joint.check(), joint.report(units)) {
            (Ok(_), Ok(report)) => report,
            (Ok(_), Err(error)) => return Err(format!("checked, and not reported: {error}")),
            (Err(_), _) => return Ok(()),
        };
        let text = serde_json::to_string(&report).unwrap();
        let back: Report =
            serde_json::from_str(&text).map_err(|error| format!("{error}\n{text}"))?;
        if back != report {
            return Err(format!("another report\n{report:?}\n{back:?}"));
        }
        if !back.answers(joint) {
            return Err("the report does not answer its joint".into());
        }
        // What is read back is written and shown alike.
        assert_eq!(serde_json::to_string(&back).unwrap(), text);
        for style in [ReportStyle::Text, ReportStyle::Markdown] {
            assert_eq!(
                back.render(style).to_string(),
                report.render(style).to_string()
            );
        }
        Ok(())
    });
}

/// Every line of a report says what it is by a code, whatever the joint.
#[test]
fn every_line_has_a_code() {
    for_all(300, |joint, _| {
        let Ok(report) = joint.report(UnitSystem::Si) else {
            return Ok(());
        };
        assert_eq!(report.format, FORMAT);
        let steps = report.assembly.iter().chain(&report.inspection);
        let lines = (report.faults.iter())
            .chain(&report.notes)
            .chain(&report.missing)
            .chain(&report.cautions)
            .chain(steps.map(|step| &step.line))
            .chain(report.other_lengths.iter().flat_map(|other| &other.reasons));
        for line in lines {
            let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
            if line.code.is_empty() || !line.code.chars().all(plain) || line.text.is_empty() {
                return Err(format!("{line:?}"));
            }
        }
        Ok(())
    });
}

/// Rules and methods stand by name or in full; a name that is none is told with those there are.
#[test]
fn rules_and_methods_stand_by_name() {
    let text = std::fs::read_to_string("examples/data/davit_socket.json").unwrap();
    let mut joint: serde_json::Value = serde_json::from_str(&text).unwrap();
    for (field, name, wrong) in [
        ("rules", "en_1090_preloaded", "\"rules\""),
        ("methods", "aisc_asd_2016", "aisc_asd_2017"),
    ] {
        joint[field] = name.into();
        let read: Joint = serde_json::from_value(joint.clone()).unwrap();
        let full = serde_json::to_value(&read).unwrap()[field].clone();
        assert!(full.is_object());
        joint[field] = full;
        assert_eq!(
            serde_json::from_value::<Joint>(joint.clone()).unwrap(),
            read
        );
        let mut spoiled = joint.clone();
        for bad in [
            serde_json::json!(wrong),
            serde_json::json!([]),
            serde_json::json!(1),
        ] {
            spoiled[field] = bad;
            assert!(serde_json::from_value::<Joint>(spoiled.clone()).is_err());
        }
    }
}

/// An error is a document too: a code, its sentence, and what stands in it.
#[test]
fn errors_are_documents() {
    use shankline::prelude::*;
    let refused: [(Error, &str); 4] = [
        (SaeGrade::Grade5.strength(inches(2.0)).unwrap_err(), "value"),
        (
            Washer::find(WasherStyle::F436, &"M20".parse().unwrap()).unwrap_err(),
            "wanted",
        ),
        ("N12".parse::<Thread>().unwrap_err(), "given"),
        (JointMethods::named("best").unwrap_err(), "available"),
    ];
    for (error, field) in refused {
        let document = serde_json::to_value(&error).unwrap();
        assert_eq!(document["code"], error.code());
        assert_eq!(document["text"], error.to_string());
        assert!(!document[field].is_null(), "{document}");
    }
}

/// Documents of format 1, as they were first written: read for ever. They are not rewritten; a format that cannot read
/// them has another number.
#[test]
fn the_first_documents_are_read() {
    let kept = |file: &str| std::fs::read_to_string(format!("tests/data/format_1/{file}")).unwrap();
    let joint: Joint = serde_json::from_str(&kept("joint.json")).unwrap();
    assert!(joint.check().unwrap().holds());
    let own: Joint = serde_json::from_str(&kept("joint_of_own_parts.json")).unwrap();
    assert!(own.check().unwrap().holds());
    assert!(own.own.nut.is_some() && !own.granted.is_empty());
    for file in ["report.json", "report_tapped.json"] {
        let report: Report = serde_json::from_str(&kept(file)).unwrap();
        assert_eq!(report.format, 1);
        assert!(report.to_string().contains("HOLDS"));
    }
    let request: serde_json::Value = serde_json::from_str(&kept("design_request.json")).unwrap();
    let _: Joint = serde_json::from_value(request["joint"].clone()).unwrap();
    let _: shankline::joint::DesignSpace =
        serde_json::from_value(request["space"].clone()).unwrap();
}

/// A report that is read back tells which joint it answers, and one of another joint's verdict is not written.
#[test]
fn a_report_belongs_to_its_joint() {
    let lap = |across: &str| {
        let ply = Joint::builder("M12").ply("bracket", "12 mm");
        ply.ply("rail", "20 mm").across(across).build().unwrap()
    };
    let (joint, heavier) = (lap("9 kN"), lap("19 kN"));
    let text = serde_json::to_string(&joint.report(UnitSystem::Si).unwrap()).unwrap();
    let back: Report = serde_json::from_str(&text).unwrap();
    assert!(back.answers(&joint) && !back.answers(&heavier));
    // One of a version that did not write its joint answers none.
    let kept = std::fs::read_to_string("tests/data/format_1/report.json").unwrap();
    let kept: Report = serde_json::from_str(&kept).unwrap();
    assert!(kept.joint.is_none() && !kept.answers(&joint));

    let verdict = joint.check().unwrap();
    let sheet = Sheet::new(&joint, &verdict).unwrap();
    assert!(Report::new(&joint, &verdict, &sheet, UnitSystem::Si).is_ok());
    assert!(Report::new(&heavier, &verdict, &sheet, UnitSystem::Si).is_err());
    assert!(Sheet::new(&heavier, &verdict).is_err());
}
