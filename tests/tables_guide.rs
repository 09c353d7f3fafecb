//! The descriptor `tables/datapackage.json` says of every column what the crate's documentation says of its field, and
//! `tables/GUIDE.md` is written from it: `UPDATE_TABLES=1 cargo test --test tables_guide`.

mod support;

use std::{
    collections::{BTreeMap, BTreeSet},
    fmt::Write,
    fs,
    path::Path,
};

use support::{ABOUT_TABLES, csv_rows, package, repository, tables};

/// What a column name may end in: its unit.
const UNITS: &[&str] = &[
    "_lbf_in",
    "_ppm_per_f",
    "_ppm_per_k",
    "_kg_m3",
    "_in2",
    "_mm2",
    "_in",
    "_mm",
    "_um",
    "_lbf",
    "_kip",
    "_kn",
    "_ksi",
    "_msi",
    "_mpa",
    "_nm",
    "_deg",
    "_pct",
    "_v",
    "_f",
    "_c",
];

fn update() -> bool {
    std::env::var_os("UPDATE_TABLES").is_some()
}

fn without_unit(column: &str) -> &str {
    UNITS
        .iter()
        .find_map(|unit| column.strip_suffix(unit))
        .unwrap_or(column)
}

/// `body_diameter_max_in` -> `Body diameter, greatest`.
fn title(column: &str) -> String {
    let stem = without_unit(column);
    let (stem, end) = match stem.rsplit_once('_') {
        Some((rest, "max")) => (rest, ", greatest"),
        Some((rest, "min")) => (rest, ", least"),
        Some((rest, "nominal")) => (rest, ", nominal"),
        Some((rest, "basic")) => (rest, ", basic"),
        _ => (stem, ""),
    };
    let words = stem.replace('_', " ");
    let (first, rest) = words.split_at(1);
    format!("{}{rest}{end}", first.to_uppercase())
}

/// Documentation as plain text: no backticks, and links by their text.
fn plain(doc: &str) -> String {
    let mut text = String::new();
    let mut chars = doc.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            '`' | '[' => {}
            ']' => {
                if chars.peek() == Some(&'(') {
                    chars.by_ref().find(|c| *c == ')');
                }
            }
            other => text.push(other),
        }
    }
    text
}

/// Documentation of the fields of every struct below a folder: type, field, text.
fn documented(folder: &Path, found: &mut BTreeMap<(String, String), String>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.ends_with("generated") {
            continue;
        }
        if path.is_dir() {
            documented(&path, found);
            continue;
        }
        let text = fs::read_to_string(&path).unwrap();
        let (mut name, mut doc) = (None::<String>, Vec::new());
        for line in text.lines() {
            if let Some(rest) = line.strip_prefix("pub struct ") {
                name = rest.strip_suffix(" {").map(Into::into);
                doc.clear();
            } else if line == "}" {
                name = None;
            } else if let Some(of) = &name {
                let line = line.trim();
                if let Some(more) = line.strip_prefix("///") {
                    doc.push(more.trim().to_owned());
                } else if let Some((field, _)) = line
                    .strip_prefix("pub ")
                    .and_then(|rest| rest.split_once(':'))
                {
                    doc.retain(|line| !line.is_empty());
                    let text = plain(&doc.join(" "));
                    found.insert((of.clone(), field.into()), text);
                    doc.clear();
                }
            }
        }
    }
}

/// The row type of a table, as its array names it.
fn row_type(table: &str) -> String {
    match table {
        "sources" => return "Source".into(),
        "methods" => return "Method".into(),
        _ => {}
    }
    let path = repository("src/tables/generated").join(format!("{table}.rs"));
    let text = fs::read_to_string(path).unwrap();
    let (_, after) = text.split_once(": [").unwrap();
    after.split_once(';').unwrap().0.into()
}

/// What a column says that no field of its own stands for.
fn without_field(column: &str) -> Option<&'static str> {
    Some(match column {
        "basis" => "How the row is known, but for columns that another basis speaks for.",
        "source" => "Key of the document of the row in sources.csv.",
        "modes" => "The modes that the method decides.",
        "levels" => "The levels of resistance that it gives.",
        _ => return None,
    })
}

/// The descriptor with title and description of every column as they ought to be.
fn described(text: &str) -> String {
    let mut docs = BTreeMap::new();
    documented(&repository("src/tables"), &mut docs);
    let mut source = BTreeMap::new();
    documented(&repository("src"), &mut source);
    docs.extend(source);
    let (mut out, mut table, mut fields) = (String::new(), String::new(), None::<usize>);
    let mut number = BTreeSet::new();
    for resource in package()["resources"].as_array().unwrap() {
        let path = resource["path"].as_str().unwrap();
        for field in resource["schema"]["fields"].as_array().unwrap() {
            if field["type"] == "number" {
                number.insert((path.to_owned(), field["name"].as_str().unwrap().to_owned()));
            }
        }
    }
    for line in text.lines() {
        let rest = line.trim_start();
        let indent = line.len() - rest.len();
        let quoted = |key: &str| {
            rest.strip_prefix(&format!("\"{key}\": \""))
                .and_then(|rest| rest.split('"').next())
        };
        if let Some(name) = quoted("path").and_then(|path| path.strip_suffix(".csv")) {
            table = name.into();
        }
        if rest == "\"fields\": [" {
            fields = Some(indent);
        } else if fields == Some(indent) && rest.starts_with(']') {
            fields = None;
        }
        let own = fields.is_some_and(|outer| indent == outer + 2)
            && !ABOUT_TABLES.contains(&table.as_str());
        if own && (rest.starts_with("\"title\"") || rest.starts_with("\"description\"")) {
            continue;
        }
        writeln!(out, "{line}").unwrap();
        if let Some(column) = quoted("name").filter(|_| own) {
            let is_number = number.contains(&(format!("{table}.csv"), column.to_owned()));
            let field = if is_number {
                without_unit(column)
            } else {
                column
            };
            let text = without_field(column).map_or_else(
                || {
                    docs.get(&(row_type(&table), field.to_owned()))
                        .unwrap_or_else(|| panic!("{table} {column}: no documentation"))
                        .clone()
                },
                Into::into,
            );
            assert!(!text.is_empty(), "{table} {column}");
            let space = " ".repeat(indent);
            writeln!(out, "{space}\"title\": {:?},", title(column)).unwrap();
            writeln!(out, "{space}\"description\": {text:?},").unwrap();
        }
    }
    out
}

#[test]
fn every_column_is_described_as_the_crate_documents_it() {
    let path = repository("tables/datapackage.json");
    let old = fs::read_to_string(&path).unwrap();
    let new = described(&old);
    if old != new {
        assert!(
            update(),
            "not current: run UPDATE_TABLES=1 cargo test --test tables_guide"
        );
        fs::write(&path, new).unwrap();
    }
}

#[test]
fn the_package_has_the_version_of_the_crate_and_a_licence() {
    let package = package();
    assert_eq!(package["version"], env!("CARGO_PKG_VERSION"));
    assert!(package["title"].is_string() && package["description"].is_string());
    assert!(package["licenses"][0]["path"].is_string());
}

/// A symbol stands for one quantity: columns that differ by the unit alone have the same.
#[test]
fn columns_that_differ_by_the_unit_have_the_same_symbol() {
    let mut symbols = BTreeMap::new();
    let mut count = 0;
    for resource in package()["resources"].as_array().unwrap() {
        for field in resource["schema"]["fields"].as_array().unwrap() {
            let name = field["name"].as_str().unwrap();
            let symbol = field["symbol"].as_str().map(str::to_owned);
            count += usize::from(symbol.is_some());
            let key = (without_unit(name).to_owned(), field["type"].to_string());
            let first = symbols.entry(key).or_insert_with(|| symbol.clone());
            assert_eq!(*first, symbol, "{} {name}", resource["name"]);
        }
    }
    assert!(count > 250, "{count}");
}

fn guide() -> String {
    let package = package();
    let mut text = format!(
        "# Guide to the tables\n\n\
         Written by `tests/tables_guide.rs` from `datapackage.json`. Version {}, {} licence. {}\n\n\
         ## Tables\n\n| table | what | rows | key | refers to |\n|---|---|---|---|---|\n",
        package["version"].as_str().unwrap(),
        package["licenses"][0]["name"].as_str().unwrap(),
        package["description"].as_str().unwrap(),
    );
    let mut quantities = BTreeMap::<String, (BTreeSet<String>, BTreeSet<String>)>::new();
    for resource in package["resources"].as_array().unwrap() {
        let path = resource["path"].as_str().unwrap();
        let schema = &resource["schema"];
        let key: Vec<&str> = match &schema["primaryKey"] {
            serde_json::Value::String(one) => vec![one],
            serde_json::Value::Array(all) => all.iter().filter_map(|k| k.as_str()).collect(),
            _ => Vec::new(),
        };
        let links: BTreeSet<String> = schema["foreignKeys"]
            .as_array()
            .into_iter()
            .flatten()
            .map(|key| {
                key["reference"]["resource"]
                    .as_str()
                    .unwrap()
                    .replace('-', "_")
            })
            .filter(|to| to != "sources")
            .collect();
        writeln!(
            text,
            "| `{path}` | {} | {} | {} | {} |",
            resource["title"].as_str().unwrap(),
            csv_rows(&format!("tables/{path}")).len(),
            key.join(", "),
            links.into_iter().collect::<Vec<_>>().join(", ")
        )
        .unwrap();
        for field in schema["fields"].as_array().unwrap() {
            let name = field["name"].as_str().unwrap();
            if field["type"] != "number" {
                continue;
            }
            let (units, symbols) = quantities.entry(title(name)).or_default();
            units.extend(field["unit"].as_str().map(Into::into));
            symbols.extend(field["symbol"].as_str().map(Into::into));
        }
    }
    text.push_str(
        "\nEvery table but `sources.csv` refers to `sources.csv` by its columns `source`.\n\n\
         ## Quantities\n\nThe description of each column is in `datapackage.json`.\n\n\
         | quantity | symbol | units |\n|---|---|---|\n",
    );
    let list = |set: BTreeSet<String>| set.into_iter().collect::<Vec<_>>().join(", ");
    for (quantity, (units, symbols)) in quantities {
        writeln!(text, "| {quantity} | {} | {} |", list(symbols), list(units)).unwrap();
    }
    text + &coverage()
}

/// Sizes of each standard, held and missing.
fn coverage() -> String {
    let tables = tables();
    let mut text = String::from(
        "\n## Sizes of the standards\n\n\
         The lists of sizes are in `coverage.csv`; most are recalled, not read. A missing size is one nobody has read.\n\n\
         | family | standard | sizes | held | missing |\n|---|---|---|---|---|\n",
    );
    for family in csv_rows("tables/coverage.csv") {
        let table = tables.iter().find(|t| t.name == family["table"]).unwrap();
        let size = table.column("size");
        let held: BTreeSet<&str> = table
            .rows
            .iter()
            .filter(|row| match family["rows"].split_once('=') {
                Some((column, cell)) => row[table.column(column)] == cell,
                None => true,
            })
            .map(|row| row[size].as_str())
            .collect();
        let sizes: Vec<&str> = family["sizes"].split_whitespace().collect();
        for extra in &held {
            assert!(
                sizes.contains(extra),
                "{} {extra}: not in the list",
                family["standard"]
            );
        }
        let missing: Vec<&str> = sizes
            .iter()
            .filter(|s| !held.contains(*s))
            .copied()
            .collect();
        writeln!(
            text,
            "| {} | {} | {} | {} | {} |",
            family["family"],
            family["standard"],
            sizes.len(),
            held.len(),
            missing.join(", ")
        )
        .unwrap();
    }
    text
}

#[test]
fn the_guide_is_current() {
    let path = repository("tables/GUIDE.md");
    let new = guide();
    if fs::read_to_string(&path).unwrap_or_default() != new {
        assert!(
            update(),
            "not current: run UPDATE_TABLES=1 cargo test --test tables_guide"
        );
        fs::write(&path, new).unwrap();
    }
}
