//! What several test files share: the tables as text, and data files of checks.
#![allow(dead_code)] // each test file uses its own part

use std::{collections::BTreeMap, fs, path::PathBuf};

#[path = "random.rs"]
mod random;

#[allow(unused_imports)] // not every test has a use for it
pub use random::Random;

pub fn repository(path: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(path)
}

/// One row of a CSV file by column name.
pub type Row = BTreeMap<String, String>;

/// Every row of a CSV file of this repository. Fails if there is none.
pub fn csv_rows(path: &str) -> Vec<Row> {
    let mut reader =
        csv::Reader::from_path(repository(path)).unwrap_or_else(|e| panic!("{path}: {e}"));
    let rows: Vec<Row> = reader
        .deserialize()
        .map(|row| row.unwrap_or_else(|e| panic!("{path}: {e}")))
        .collect();
    assert!(!rows.is_empty(), "{path} has no rows");
    rows
}

/// A column as a number; empty cells are `None`.
pub fn number(row: &Row, column: &str) -> Option<f64> {
    let cell = &row[column];
    if cell.is_empty() {
        None
    } else {
        Some(
            cell.parse()
                .unwrap_or_else(|e| panic!("{column} {cell}: {e}")),
        )
    }
}

/// Decimals of a printed number.
pub fn decimals(cell: &str) -> usize {
    cell.split_once('.')
        .map_or(0, |(_, fraction)| fraction.len())
}

/// One column of the data package descriptor.
#[derive(Debug)]
pub struct Field {
    pub name: String,
    pub kind: String,
    pub required: bool,
}

/// One table: its descriptor and its cells.
#[derive(Debug)]
pub struct Table {
    /// File name without `.csv`.
    pub name: String,
    pub fields: Vec<Field>,
    pub rows: Vec<Vec<String>>,
}

impl Table {
    pub fn column(&self, name: &str) -> usize {
        self.fields
            .iter()
            .position(|field| field.name == name)
            .unwrap_or_else(|| panic!("{} has no column {name}", self.name))
    }
}

/// Tables about the other tables: no row of theirs is in the crate.
pub const ABOUT_TABLES: [&str; 5] = [
    "witnesses",
    "misprints",
    "coverage",
    "audit",
    "audit_prints",
];

/// The descriptor of the data package.
pub fn package() -> serde_json::Value {
    let text = fs::read_to_string(repository("tables/datapackage.json")).unwrap();
    serde_json::from_str(&text).unwrap()
}

/// Every table of `tables/` whose rows are in the crate, as the descriptor lists them.
pub fn tables() -> Vec<Table> {
    let package = package();
    let resources = package["resources"].as_array().unwrap();
    assert!(!resources.is_empty());
    let tables = resources.iter().map(read_table);
    tables
        .filter(|table| !ABOUT_TABLES.contains(&table.name.as_str()))
        .collect()
}

pub fn table(name: &str) -> Table {
    tables()
        .into_iter()
        .find(|table| table.name == name)
        .unwrap()
}

fn read_table(resource: &serde_json::Value) -> Table {
    let path = resource["path"].as_str().unwrap();
    let fields: Vec<Field> = resource["schema"]["fields"]
        .as_array()
        .unwrap()
        .iter()
        .map(|field| Field {
            name: field["name"].as_str().unwrap().into(),
            kind: field["type"].as_str().unwrap().into(),
            required: field["constraints"]["required"].as_bool().unwrap_or(false),
        })
        .collect();
    let mut reader = csv::Reader::from_path(repository("tables").join(path)).unwrap();
    let header: Vec<String> = reader.headers().unwrap().iter().map(Into::into).collect();
    let named: Vec<&str> = fields.iter().map(|field| field.name.as_str()).collect();
    assert_eq!(header, named, "{path}: header and descriptor differ");
    let rows: Vec<Vec<String>> = reader
        .records()
        .map(|record| record.unwrap().iter().map(Into::into).collect())
        .collect();
    Table {
        name: path.strip_suffix(".csv").unwrap().into(),
        fields,
        rows,
    }
}
