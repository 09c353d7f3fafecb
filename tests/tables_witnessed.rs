//! What second documents say of the tables (`tables/witnesses.csv`), and what other documents have otherwise
//! (`tables/misprints.csv`), against the tables as they are.

mod support;

use std::collections::BTreeMap;

use support::{Table, csv_rows, decimals, tables};

/// The one row that a key such as `class=8.8; size_thru_mm=16` names.
fn row<'a>(table: &'a Table, key: &str) -> &'a [String] {
    let parts: Vec<(usize, &str)> = key
        .split("; ")
        .map(|part| {
            let (column, cell) = part.split_once('=').unwrap_or_else(|| panic!("{key}"));
            (table.column(column), cell)
        })
        .collect();
    let found: Vec<&Vec<String>> = table
        .rows
        .iter()
        .filter(|row| parts.iter().all(|(column, cell)| row[*column] == *cell))
        .collect();
    assert_eq!(found.len(), 1, "{}: {key}", table.name);
    found[0]
}

/// Two prints of one number agree if they do when rounded to the coarser of the two.
fn agree(cell: &str, other: &str) -> bool {
    let (Ok(ours), Ok(theirs)) = (cell.parse::<f64>(), other.parse::<f64>()) else {
        return cell == other;
    };
    let places = i32::try_from(decimals(cell).min(decimals(other))).unwrap();
    (ours - theirs).abs() <= 0.5 * 10_f64.powi(-places) + 1e-9
}

#[test]
fn prints_agree_to_the_last_digit_of_the_coarser() {
    assert!(agree("0.312", "0.3125") && agree("240", "240.0") && agree("A2-70", "A2-70"));
    assert!(!agree("240", "220") && !agree("0.312", "0.314") && !agree("A2-70", "A2-80"));
}

#[test]
fn second_documents_still_agree() {
    let tables: BTreeMap<String, Table> = tables()
        .into_iter()
        .map(|table| (table.name.clone(), table))
        .collect();
    let (mut values, mut said) = (0, 0);
    for witness in csv_rows("tables/witnesses.csv") {
        let table = &tables[&witness["table"]];
        let document = &witness["document"];
        assert!(!document.is_empty(), "{witness:?}");
        let columns: Vec<&str> = witness["columns"].split_whitespace().collect();
        let found: Vec<&str> = witness["values"].split_whitespace().collect();
        assert_eq!(columns.len(), found.len(), "{witness:?}");
        if columns.is_empty() {
            // Only that it agrees was noted, and of what: nothing to compare again.
            assert!(!witness["note"].is_empty(), "{witness:?}");
            said += 1;
            continue;
        }
        let row = row(table, &witness["row"]);
        for (column, other) in columns.iter().zip(found) {
            let cell = &row[table.column(column)];
            assert!(
                agree(cell, other),
                "{} {} {column}: {cell} here, {other} in {document}",
                table.name,
                witness["row"]
            );
            values += 1;
        }
    }
    assert!(values > 900, "{values}");
    assert!(said < 120, "{said}");
}

/// Strengths of bolts by ISO 898-1 are read twice or more, every class.
#[test]
fn every_class_of_iso_898_1_has_a_second_witness() {
    let classes = tables()
        .into_iter()
        .find(|table| table.name == "iso_898_1_classes")
        .unwrap();
    let witnesses = csv_rows("tables/witnesses.csv");
    let class = classes.column("class");
    for row in &classes.rows {
        let count = witnesses
            .iter()
            .filter(|w| w["table"] == classes.name && w["columns"].contains("proof_stress"))
            .filter(|w| w["row"].starts_with(&format!("class={};", row[class])))
            .count();
        // 12.9 underlined has the strengths of 12.9, and no page of its own.
        assert!(count > 0 || row[class] == "12.9U", "{}", row[class]);
    }
}

/// What is marked as having one document has no second one, and every class and grade is marked or has one, or its
/// source says that more than one was read.
#[test]
fn strengths_with_one_document_are_marked() {
    let witnesses = csv_rows("tables/witnesses.csv");
    let (only, agree): (Vec<_>, Vec<_>) = witnesses.iter().partition(|w| w["standing"] == "only");
    assert!(only.len() > 20);
    let sources: BTreeMap<String, String> = csv_rows("tables/sources.csv")
        .into_iter()
        .map(|source| (source["key"].clone(), source["read_in"].clone()))
        .collect();
    let mut marked = 0;
    for table in tables() {
        let (Some(name), Some(source)) = (
            ["class", "grade"]
                .into_iter()
                .find(|name| table.fields.iter().any(|field| field.name == *name)),
            table.fields.iter().position(|field| field.name == "source"),
        ) else {
            continue;
        };
        let strengths = [
            "sae_j429_grades",
            "astm_grades",
            "astm_grades_metric",
            "iso_3506_1_classes",
        ];
        if !strengths.contains(&table.name.as_str()) {
            continue;
        }
        let of = |list: &[&BTreeMap<String, String>], row: &[String]| {
            list.iter().any(|w| {
                w["table"] == table.name
                    && w["row"].split("; ").all(|part| {
                        let (column, cell) = part.split_once('=').unwrap();
                        row[table.column(column)] == cell
                    })
            })
        };
        for row in &table.rows {
            let grade = &row[table.column(name)];
            let (one, two) = (of(&only, row), of(&agree, row));
            assert!(!(one && two), "{grade} has a second document now");
            marked += usize::from(one);
            // "two pages", "supplier grade tables", "Shigley; Machine Design": more than one document.
            let read_in = &sources[&row[source]];
            let several = ["two", "three", "four", "five", "tables", "pages", ";"];
            let several = several.iter().any(|word| read_in.contains(word));
            let recalled = row[table.column("basis")] == "memory";
            assert!(one || two || several || recalled, "{grade}: {read_in}");
        }
    }
    assert_eq!(marked, only.len());
}

#[test]
fn every_misprint_and_disagreement_is_still_one() {
    let tables = tables();
    for entry in csv_rows("tables/misprints.csv") {
        let table = tables
            .iter()
            .find(|table| table.name == entry["table"])
            .unwrap_or_else(|| panic!("{entry:?}"));
        let cell = &row(table, &entry["row"])[table.column(&entry["column"])];
        assert!(
            !cell.is_empty() && !entry["document"].is_empty(),
            "{entry:?}"
        );
        let same = match (cell.parse::<f64>(), entry["other"].parse::<f64>()) {
            (Ok(ours), Ok(theirs)) => (ours - theirs).abs() < 1e-9,
            _ => *cell == entry["other"],
        };
        assert!(!same, "the table has {cell} now: {entry:?}");
    }
}

/// What the audit found is still in the tables, and what differs is told as a disagreement.
#[test]
fn what_the_audit_found_still_stands() {
    let tables = tables();
    let misprints = csv_rows("tables/misprints.csv");
    let drawn = csv_rows("tables/audit.csv");
    assert_eq!(drawn.len(), 200);
    let mut found = 0;
    for number in &drawn {
        if number["outcome"] == "not_found" {
            assert!(number["other"].is_empty() && number["document"].is_empty());
            continue;
        }
        found += 1;
        assert!(!number["document"].is_empty() && !number["independent"].is_empty());
        let table = tables
            .iter()
            .find(|table| table.name == number["table"])
            .unwrap_or_else(|| panic!("{number:?}"));
        let cell = &row(table, &number["row"])[table.column(&number["column"])];
        let same = agree(cell, &number["other"]);
        assert_eq!(same, number["outcome"] == "found", "{cell}: {number:?}");
        let told = ["table", "row", "column", "other"].map(|field| &number[field]);
        assert!(
            same || misprints
                .iter()
                .any(|m| ["table", "row", "column", "other"].map(|field| &m[field]) == told),
            "{number:?}"
        );
    }
    assert!(found > 90, "{found}");
}

/// Every print that was compared whole and has a number otherwise is told of as often as it has one.
#[test]
fn prints_that_differ_are_among_the_misprints() {
    let misprints = csv_rows("tables/misprints.csv");
    let mut numbers = 0;
    for print in csv_rows("tables/audit_prints.csv") {
        let differ: usize = print["differ"].parse().unwrap();
        numbers += print["numbers"].parse::<usize>().unwrap();
        let part = &print["part"];
        let told = misprints
            .iter()
            .filter(|m| m["table"] == print["table"] && m["document"] == print["document"])
            .filter(|m| !part.contains('=') || m["row"].starts_with(part.as_str()))
            .count();
        assert_eq!(told, differ, "{print:?}");
    }
    assert!(numbers > 5_000, "{numbers}");
}
