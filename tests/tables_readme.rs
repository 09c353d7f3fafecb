//! The counts in `tables/README.md` are written by this test, not by hand:
//! `UPDATE_TABLES=1 cargo test --test tables_readme`.

mod support;

use std::{collections::BTreeMap, fmt::Write, fs};

use support::{Table, csv_rows, repository, tables};

const BEGIN: &str = "<!-- counts: written by tests/tables_readme.rs -->\n";
const END: &str = "<!-- end of counts -->\n";
const BEGIN_OTHERS: &str = "<!-- disagreements: written by tests/tables_readme.rs -->\n";
const END_OTHERS: &str = "<!-- end of disagreements -->\n";

/// Recalled rows and all rows of the collection the tables were begun from.
const AT_FIRST: (u32, u32) = (560, 3437);

/// Columns that a basis of their own speaks for, where they do not begin with its name: words that they have.
const COLUMNS_OF: &[(&str, &[&str])] = &[
    ("hardness", &["hardness", "vickers", "brinell", "rockwell"]),
    ("ductility", &["elongation", "reduction_of_area"]),
    ("limits", &["_max_", "_min_"]),
    ("additions", &["addition"]),
    ("proof", &["proof_stress"]),
    (
        "length_range",
        &["part_thread_length", "full_thread_length"],
    ),
    ("plain_head", &["head_diameter"]),
];

/// The basis column that speaks for a column; none for keys, notes and sources.
fn basis_of(table: &Table, column: usize) -> Option<usize> {
    let field = &table.fields[column];
    if field.kind != "number" && field.kind != "integer" || is_key(&field.name) {
        return None;
    }
    let own = table.fields.iter().position(|basis| {
        basis.name.strip_suffix("_basis").is_some_and(|stem| {
            let words = COLUMNS_OF.iter().find(|(name, _)| *name == stem);
            words.map_or(field.name.starts_with(stem), |(_, words)| {
                words.iter().any(|word| field.name.contains(word))
            })
        })
    });
    own.or_else(|| Some(table.column("basis")))
}

/// What says which row it is, and not what the part is like.
fn is_key(column: &str) -> bool {
    [
        "nominal_",
        "size_",
        "pitch",
        "threads_per_inch",
        "diameter_over",
        "diameter_thru",
    ]
    .iter()
    .any(|begin| column.starts_with(begin))
}

/// Numbers of the tables by how they are known: published, reproduced, computed, memory.
fn cells(all: &[Table]) -> [usize; 4] {
    let words = ["published", "reproduced", "computed", "memory"];
    let mut count = [0; 4];
    for table in all {
        for column in 0..table.fields.len() {
            let Some(basis) = basis_of(table, column) else {
                continue;
            };
            for row in table.rows.iter().filter(|row| !row[column].is_empty()) {
                let word = if row[basis].is_empty() {
                    &row[table.column("basis")]
                } else {
                    &row[basis]
                };
                count[words.iter().position(|known| known == word).unwrap()] += 1;
            }
        }
    }
    count
}

/// Every basis column speaks for some column, or a count of cells would pass it over.
#[test]
fn every_basis_speaks_for_a_column() {
    for table in tables() {
        let spoken: Vec<Option<usize>> = (0..table.fields.len())
            .map(|column| basis_of(&table, column))
            .collect();
        for (index, field) in table.fields.iter().enumerate() {
            if field.name.ends_with("_basis") {
                assert!(
                    spoken.contains(&Some(index)),
                    "{} {}",
                    table.name,
                    field.name
                );
            }
        }
    }
}

/// How many rows of each table a second document was read for.
fn witnessed() -> String {
    let mut rows = BTreeMap::<String, BTreeMap<String, usize>>::new();
    let witnesses = csv_rows("tables/witnesses.csv");
    for witness in witnesses.iter().filter(|w| w["standing"] == "agrees") {
        *rows
            .entry(witness["table"].clone())
            .or_default()
            .entry(witness["row"].clone())
            .or_default() += witness["values"].split_whitespace().count();
    }
    let all: usize = rows.values().map(BTreeMap::len).sum();
    let values: usize = rows.values().flat_map(BTreeMap::values).sum();
    let list: Vec<String> = rows
        .iter()
        .map(|(table, rows)| format!("`{table}` {}", rows.len()))
        .collect();
    format!(
        "A second document was read for {all} rows, and {values} of its values are compared again by \
         `tests/tables_witnessed.rs`: {}. Of the other rows `sources.csv` says how many pages were read.\n",
        list.join(", ")
    )
}

/// Part of a whole in percent with its 95 % interval (Wilson).
#[allow(clippy::cast_precision_loss)] // some hundred cells
fn share_with_interval(part: usize, whole: usize) -> [f64; 3] {
    let (share, n, z) = (part as f64 / whole as f64, whole as f64, 1.96);
    let middle = (share + z * z / (2.0 * n)) / (1.0 + z * z / n);
    let half = z / (1.0 + z * z / n) * (share * (1.0 - share) / n + z * z / (4.0 * n * n)).sqrt();
    [share, middle - half, middle + half].map(|x| 100.0 * x)
}

/// What the audit found, from `audit.csv` and `audit_prints.csv`.
fn audited() -> String {
    let drawn = csv_rows("tables/audit.csv");
    let of = |outcome: &str| drawn.iter().filter(|x| x["outcome"] == outcome).count();
    let (differ, found) = (of("differs"), of("found") + of("differs"));
    let sure = drawn.iter().filter(|x| x["independent"] == "yes").count();
    let [share, least, greatest] = share_with_interval(differ, found);
    let prints = csv_rows("tables/audit_prints.csv");
    let sum = |column: &str| -> usize {
        prints
            .iter()
            .map(|x| x[column].parse::<usize>().unwrap())
            .sum()
    };
    format!(
        "A person who entered none of them drew {} numbers at random (`audit.csv`) and looked for each in a print other than the \
         one its row names. For {found} one was found ({sure} surely another; the rest may be one of the reproductions that the row \
         rests on and does not name): {differ} differ ({share:.1} %, 95 % interval {least:.1} to {greatest:.1} %), and stand among the disagreements \
         below. In {} comparisons of a whole table or range of sizes with a print (`audit_prints.csv`) {} \
         numbers of {} differ; each is below, with the reason.\n",
        drawn.len(),
        prints.len(),
        sum("differ"),
        sum("numbers"),
    )
}

/// What other documents have otherwise, from `misprints.csv`.
fn disagreements() -> String {
    let mut text = String::from(
        "| table | row | column | elsewhere | kind | in | why not here |\n|---|---|---|---|---|---|---|\n",
    );
    for entry in csv_rows("tables/misprints.csv") {
        let of = |column: &str| entry[column].as_str();
        writeln!(
            text,
            "| `{}` | {} | `{}` | {} | {} | {} | {} |",
            of("table"),
            of("row"),
            of("column"),
            of("other"),
            of("kind"),
            of("document"),
            of("reason")
        )
        .unwrap();
    }
    text
}

fn counts() -> String {
    let mut text = String::from(
        "| table | rows | published | reproduced | computed | memory | other cells from memory |\n\
         |---|---|---|---|---|---|---|\n",
    );
    let mut total = BTreeMap::<&str, usize>::new();
    let mut all_rows = 0;
    let mut recalled_methods = String::new();
    let mut partly_recalled = 0;
    let mut values = Vec::new();
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
        partly_recalled += table
            .rows
            .iter()
            .filter(|row| {
                table.fields.iter().zip(row.iter()).any(|(field, cell)| {
                    (field.name == "basis" || field.name.ends_with("_basis")) && cell == "memory"
                })
            })
            .count();
        values.push(table);
    }
    writeln!(
        text,
        "| **all but sources and methods** | **{all_rows}** | {} | {} | {} | {} | |",
        total["published"], total["reproduced"], total["computed"], total["memory"]
    )
    .unwrap();
    let percent = |part: f64, whole: f64| 100.0 * part / whole;
    let first = percent(AT_FIRST.0.into(), AT_FIRST.1.into());
    #[allow(clippy::cast_precision_loss)] // some ten thousand cells
    let share = |part: usize, whole: usize| percent(part as f64, whole as f64);
    let [published, reproduced, computed, memory] = cells(&values);
    let all_cells = published + reproduced + computed + memory;
    writeln!(
        text,
        "\n{:.1} % of the rows are recalled, and {:.1} % ({partly_recalled}) have a recalled cell; of the {} rows that the \
         tables began with {first:.1} % were recalled. Of {all_cells} numbers, keys not counted, {published} are published, \
         {reproduced} reproduced, {computed} computed and {memory} recalled ({:.1} %). {recalled_methods}\n\n{}\n{}",
        share(total["memory"], all_rows),
        share(partly_recalled, all_rows),
        AT_FIRST.1,
        share(memory, all_cells),
        witnessed(),
        audited()
    )
    .unwrap();
    text
}

#[test]
fn counts_in_the_readme_are_current() {
    let path = repository("tables/README.md");
    let text = fs::read_to_string(&path).unwrap();
    let new = between(&text, BEGIN, END, &counts());
    let new = between(&new, BEGIN_OTHERS, END_OTHERS, &disagreements());
    if text == new {
        return;
    }
    assert!(
        std::env::var_os("UPDATE_TABLES").is_some(),
        "the counts are not current: run UPDATE_TABLES=1 cargo test --test tables_readme"
    );
    fs::write(&path, new).unwrap();
}

/// A text with what stands between two marks replaced.
fn between(text: &str, begin: &str, end: &str, new: &str) -> String {
    let (before, rest) = text.split_once(begin).expect("no start mark");
    let (_, after) = rest.split_once(end).expect("no end mark");
    format!("{before}{begin}{new}{end}{after}")
}
