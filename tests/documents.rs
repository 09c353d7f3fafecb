//! Documents come back as they went, to the bit: random joints and their reports.
//!
//! `VERDICT_CASES=10000 cargo test --release --all-features --test documents` for more of them.
#![cfg(feature = "serde")]

use std::cell::Cell;

use serde_json::Value;
use shankline::joint::{
    DesignReport, FORMAT, Joint, JointLoad, JointMaterial, JointTimber, LengthReport, Need,
    Objective, Report, ReportLine, ReportStyle, Sheet,
};
use shankline::units::{UnitSystem, newtons};

#[path = "support/verdicts.rs"]
mod verdicts;

use verdicts::{for_all, selection, space};

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

/// The answers to design searches come back as they went, each line with its code.
#[test]
fn design_reports_come_back_to_the_bit() {
    let (feasible, rejected, ruled_out) = (Cell::new(0), Cell::new(0), Cell::new(0));
    for_all(400, |joint, dice| {
        let space = space(joint, dice);
        let objectives = [Objective::Mass, Objective::Utilisation, Objective::Length];
        let units = if dice.now_and_then(50.0) {
            UnitSystem::Si
        } else {
            UnitSystem::UsCustomary
        };
        let Ok(designs) = joint.design(&space, &objectives) else {
            return Ok(());
        };
        // What was found can be told.
        let report = designs.report(units).map_err(|error| error.to_string())?;
        feasible.set(feasible.get() + report.feasible.len());
        rejected.set(rejected.get() + report.rejected.len());
        ruled_out.set(ruled_out.get() + report.ruled_out.len());
        assert_eq!(report.format, FORMAT);
        assert_eq!(report.best.is_some(), designs.best().is_some());
        if let (Some(best), Some(first)) = (&report.best, report.feasible.first()) {
            assert_eq!((&best.bolt, &best.planes), (&first.bolt, &first.planes));
        }
        let reasons = report.rejected.iter().flat_map(|other| &other.reasons);
        for line in reasons.chain(report.ruled_out.iter().map(|group| &group.reason)) {
            if !is_coded(line) {
                return Err(format!("{line:?}"));
            }
        }
        let text = serde_json::to_string(&report).unwrap();
        let back: DesignReport =
            serde_json::from_str(&text).map_err(|error| format!("{error}\n{text}"))?;
        if back != report {
            return Err(format!("another report\n{report:?}\n{back:?}"));
        }
        assert_eq!(serde_json::to_string(&back).unwrap(), text);
        assert_eq!(back.to_string(), report.to_string());
        Ok(())
    });
    // Of each kind there were some.
    let counts = [feasible, rejected, ruled_out].map(Cell::into_inner);
    assert!(counts.iter().all(|&count| count > 20), "{counts:?}");
}

/// The answers to length searches come back as they went, and agree with the report of the joint.
#[test]
fn length_reports_come_back_to_the_bit() {
    let (accepted, rejected) = (Cell::new(0), Cell::new(0));
    for_all(400, |joint, dice| {
        let units = if dice.now_and_then(50.0) {
            UnitSystem::Si
        } else {
            UnitSystem::UsCustomary
        };
        let Some(selection) = selection(joint) else {
            return Ok(());
        };
        let report = selection.report(units);
        accepted.set(accepted.get() + report.accepted.len());
        rejected.set(rejected.get() + report.rejected.len());
        assert!(report.accepted.iter().all(|own| own.reasons.is_empty()));
        for reasons in report.rejected.iter().map(|own| &own.reasons) {
            if reasons.is_empty() || !reasons.iter().all(is_coded) {
                return Err(format!("{reasons:?}"));
            }
        }
        if let (None, Ok(whole)) = (joint.bolt.length, joint.report(units))
            && let Some(best) = report.accepted.first()
        {
            assert_eq!(best.length, whole.bolt.length);
            let cut = best.cut.as_ref().filter(|cut| cut.holds_window);
            assert_eq!(cut.map(|cut| cut.length), whole.bolt.cut_to);
        }
        let text = serde_json::to_string(&report).unwrap();
        let back: LengthReport =
            serde_json::from_str(&text).map_err(|error| format!("{error}\n{text}"))?;
        if back != report {
            return Err(format!("another report\n{report:?}\n{back:?}"));
        }
        assert_eq!(serde_json::to_string(&back).unwrap(), text);
        assert_eq!(back.to_string(), report.to_string());
        Ok(())
    });
    let counts = [accepted, rejected].map(Cell::into_inner);
    assert!(counts.iter().all(|&count| count > 100), "{counts:?}");
}

/// A length of which no table has the tolerance is told as such.
#[test]
fn lengths_that_nobody_judged_are_in_the_document() {
    use shankline::prelude::*;
    let thread: Thread = "1-8 UNC".parse().unwrap();
    let plate = Spread::exact(inches(2.0));
    let stack = Stack::builder().ply("plate", plate).build().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Hex, &thread).unwrap()).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
    let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
    let report = search.run().unwrap().report(UnitSystem::UsCustomary);
    let [one] = report.not_assessed.as_slice() else {
        panic!("{report}");
    };
    assert_eq!(
        (one.name.as_str(), one.reasons[0].code.as_str()),
        ("1 in", "not_read")
    );
    let text = serde_json::to_string(&report).unwrap();
    assert_eq!(serde_json::from_str::<LengthReport>(&text).unwrap(), report);
}

/// A report names who printed each part that is listed, and of the others that the caller states them; each source once.
#[test]
fn every_part_has_its_source() {
    for_all(400, |joint, _| {
        let Ok(report) = joint.report(UnitSystem::Si) else {
            return Ok(());
        };
        let told = |what: &str, stated: bool| {
            let mut lines = report.sources.iter();
            lines.any(|line| {
                let (whats, from) = line.split_once(": ").unwrap();
                // Names with a comma in them stand between the others.
                let whats = format!(", {whats}, ");
                whats.contains(&format!(", {what}, ")) && (from == "stated by the caller") == stated
            })
        };
        let mut wanted = vec![
            (String::from("length"), joint.own.screw.is_some()),
            ("strength".into(), joint.own.strength.is_some()),
        ];
        if joint.bolt.thread.provenance().is_some() {
            wanted.push(("thread".into(), false));
        }
        if joint.nut.is_some() || joint.own.nut.is_some() {
            wanted.push(("nut".into(), joint.nut.is_none()));
        }
        for washer in joint.stack.washers_under_head() {
            wanted.push(match washer.style {
                Some(style) => (style.to_string(), false),
                None => (format!("washer \"{}\"", washer.name), true),
            });
        }
        for ply in joint.stack.plies() {
            wanted.extend(ply.material.as_ref().map(|own| match own {
                JointMaterial::Listed(name) => (name.clone(), false),
                JointMaterial::Own(own) => (format!("\"{}\"", own.name), true),
            }));
            wanted.extend(ply.timber.as_ref().map(|own| match own {
                JointTimber::Listed(name) => (name.clone(), false),
                JointTimber::Own(own) => (format!("\"{}\"", own.name), true),
            }));
        }
        for (what, stated) in wanted {
            if !told(&what, stated) {
                return Err(format!("{what}, {stated}: {:#?}", report.sources));
            }
        }
        let holes = report.layers.iter().filter(|layer| layer.hole.is_some());
        let told = report
            .sources
            .iter()
            .filter(|line| line.contains("hole of"));
        assert_eq!(holes.count() > 0, told.count() > 0);
        let from = |line: &str| line.split_once(": ").map(|(_, from)| from.to_string());
        let mut from: Vec<_> = report.sources.iter().map(|line| from(line)).collect();
        from.sort();
        let lines = from.len();
        from.dedup();
        if from.len() < lines {
            return Err(format!("twice: {:#?}", report.sources));
        }
        Ok(())
    });
}

/// Whether a line says what it is by a code.
fn is_coded(line: &ReportLine) -> bool {
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
    !line.code.is_empty() && line.code.chars().all(plain) && !line.text.is_empty()
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
            if !is_coded(line) {
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
    // Nobody asked then how high the head is.
    let open = own.check().unwrap();
    assert!(
        open.open().all(|open| open.need == Need::HeadHeight),
        "{}",
        open.render(UnitSystem::Si)
    );
    assert!(own.own.nut.is_some() && !own.granted.is_empty());
    for file in ["report.json", "report_tapped.json"] {
        let report: Report = serde_json::from_str(&kept(file)).unwrap();
        assert_eq!(report.format, 1);
        assert!(report.to_string().contains("HOLDS"));
    }
    let lengths: LengthReport = serde_json::from_str(&kept("length_report.json")).unwrap();
    assert_eq!(
        (lengths.format, lengths.accepted[0].name.as_str()),
        (1, "65 mm")
    );
    assert!(lengths.rejected.iter().all(|own| !own.reasons.is_empty()));
    let designs: DesignReport = serde_json::from_str(&kept("design_report.json")).unwrap();
    assert_eq!(designs.format, 1);
    let best = designs.best.as_ref().unwrap();
    assert!(best.bolt == designs.feasible[0].bolt && !designs.rejected.is_empty());
    assert!(designs.to_string().contains("HOLDS"));
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

    let mut verdict = joint.check().unwrap();
    assert!(Report::new(&heavier, &verdict, None, UnitSystem::Si).is_err());
    // Whoever drops the cautions of a verdict does not drop those of its report.
    let report = Report::new(&joint, &verdict, None, UnitSystem::Si).unwrap();
    verdict.cautions.clear();
    let again = Report::new(&joint, &verdict, None, UnitSystem::Si).unwrap();
    assert_eq!(report, again);
    assert!(again.cautions.len() >= 2);
    assert!(Sheet::new(&heavier, &verdict).is_err());
}

/// The headline counts modes, not how often they are named.
#[test]
fn a_mode_set_aside_twice_is_one_mode() {
    let text = std::fs::read_to_string("examples/data/davit_socket.json").unwrap();
    let mut joint: Joint = serde_json::from_str(&text).unwrap();
    let once = joint.check().unwrap().headline(UnitSystem::Si);
    assert!(once.ends_with("with 1 mode set aside"), "{once}");
    joint.set_aside.extend(joint.set_aside.clone());
    assert_eq!(joint.check().unwrap().headline(UnitSystem::Si), once);
}

/// A report whose word or figures were changed by hand, or that was cut short, is refused: it would say what nobody found.
#[test]
fn a_report_that_contradicts_itself_is_refused() {
    let joint = Joint::builder("M12")
        .ply("bracket", "12 mm")
        .material("S275 steel")
        .end_distance("35 mm")
        .edge_distance("30 mm")
        .width("60 mm")
        .ply("rail", "20 mm")
        .material("S275 steel")
        .end_distance("35 mm")
        .edge_distance("30 mm")
        .width("60 mm")
        .across("9 kN")
        .build()
        .unwrap();
    let overloaded = Joint {
        load: JointLoad::across(newtons(90e3)),
        ..joint.clone()
    };
    let undecided = Joint {
        tightening: None,
        ..joint.clone()
    };
    for (joint, word, other) in [
        (&joint, "holds", "undecided"),
        (&overloaded, "does_not_hold", "holds"),
        (&undecided, "undecided", "holds"),
    ] {
        let report = serde_json::to_value(joint.report(UnitSystem::Si).unwrap()).unwrap();
        assert_eq!(report["word"], word);
        assert!(serde_json::from_value::<Report>(report.clone()).is_ok());
        let refused = |change: &dyn Fn(&mut Value)| {
            let mut spoiled = report.clone();
            change(&mut spoiled);
            serde_json::from_value::<Report>(spoiled).is_err()
        };
        assert!(refused(&|report| report["word"] = other.into()));
        assert!(refused(
            &|report| report["checks"][0]["utilisation"] = 0.5.into()
        ));
        assert!(refused(&|report| {
            let holds = report["checks"][0]["holds"].as_bool().unwrap();
            report["checks"][0]["holds"] = (!holds).into();
        }));
        if word == "undecided" {
            assert!(refused(
                &|report| report["missing"] = Value::Array(Vec::new())
            ));
        }
        if word == "does_not_hold" {
            assert!(refused(
                &|report| report["checks"] = Value::Array(Vec::new())
            ));
        }
    }
}

/// A heading where Markdown has one, and no mark-up in what somebody named a part.
#[test]
fn markdown_has_headings_and_no_foreign_mark_up() {
    let text = std::fs::read_to_string("tests/data/format_1/joint.json").unwrap();
    let mut joint: Joint = serde_json::from_str(&text).unwrap();
    joint.title = "a_b *c*".into();
    let report = joint.report(UnitSystem::Si).unwrap();
    let shown = |style| report.render(style).to_string();
    let (text, markdown) = (shown(ReportStyle::Text), shown(ReportStyle::Markdown));
    assert!(markdown.starts_with("# a\\_b \\*c\\*\n"), "{markdown}");
    assert!(text.starts_with("a_b *c*\n=======\n"), "{text}");
    assert!(markdown.contains("\n## Checks\n") && markdown.contains("| used | n |"));
    assert!(text.contains("\nChecks\n------\n") && !text.contains("| used |"));
}
