//! The counts in `tables/README.md` are written by this test, not by hand:
//! `UPDATE_TABLES=1 cargo test --test tables_readme`.

mod support;

use std::{collections::BTreeMap, fmt::Write, fs};

use support::{repository, tables};

const BEGIN: &str = "<!-- counts: written by tests/tables_readme.rs -->\n";
const END: &str = "<!-- end of counts -->\n";

/// Recalled rows and all rows of the collection the tables were begun from.
const AT_FIRST: (u32, u32) = (560, 3437);

fn counts() -> String {
    let mut text = String::from(
        "| table | rows | published | reproduced | computed | memory | other cells from memory |\n\
         |---|---|---|---|---|---|---|\n",
    );
    let mut total = BTreeMap::<&str, usize>::new();
    let mut all_rows = 0;
    let mut recalled_methods = String::new();
    for table in tables() {
        if table.name == "sources" {
            writeln!(text, "| `sources.csv` | {} | | | | | |", table.rows.len()).unwrap();
            continue;
        }
        let basis = table.column("basis");
        let count = |word: &str| table.rows.iter().filter(|row| row[basis] == word).count();
        let mut partly = Vec::new();
        for (index, field) in table.fields.iter().enumerate() {
            if field.name.ends_with("_basis") {
                let weak = table
                    .rows
                    .iter()
                    .filter(|row| row[index] == "memory" && row[basis] != "memory")
                    .count();
                if weak > 0 {
                    let what = field.name.trim_end_matches("_basis").replace('_', " ");
                    partly.push(format!("{what} of {weak} rows"));
                }
            }
        }
        let words = ["published", "reproduced", "computed", "memory"];
        writeln!(
            text,
            "| `{}.csv` | {} | {} | {} |",
            table.name,
            table.rows.len(),
            words.map(|word| count(word).to_string()).join(" | "),
            partly.join(", ")
        )
        .unwrap();
        // Rules are no values: what they are known by is counted by itself.
        if table.name == "methods" {
            recalled_methods = format!(
                "Of the {} rules and formulas of `methods.csv` {} are recalled.",
                table.rows.len(),
                count("memory")
            );
            continue;
        }
        for word in words {
            *total.entry(word).or_default() += count(word);
        }
        all_rows += table.rows.len();
    }
    writeln!(
        text,
        "| **all but sources and methods** | **{all_rows}** | {} | {} | {} | {} | |",
        total["published"], total["reproduced"], total["computed"], total["memory"]
    )
    .unwrap();
    let percent = |part: f64, whole: f64| 100.0 * part / whole;
    let first = percent(AT_FIRST.0.into(), AT_FIRST.1.into());
    #[allow(clippy::cast_precision_loss)] // a few thousand rows
    let now = percent(total["memory"] as f64, all_rows as f64);
    writeln!(
        text,
        "\n{now:.1} % of the rows are recalled; of the {} rows that the tables began with it was {first:.1} %. {recalled_methods}",
        AT_FIRST.1
    )
    .unwrap();
    text
}

#[test]
fn counts_in_the_readme_are_current() {
    let path = repository("tables/README.md");
    let text = fs::read_to_string(&path).unwrap();
    let (before, rest) = text.split_once(BEGIN).expect("no start mark");
    let (old, after) = rest.split_once(END).expect("no end mark");
    let new = counts();
    if old == new {
        return;
    }
    assert!(
        std::env::var_os("UPDATE_TABLES").is_some(),
        "the counts are not current: run UPDATE_TABLES=1 cargo test --test tables_readme"
    );
    fs::write(&path, format!("{before}{BEGIN}{new}{END}{after}")).unwrap();
}
