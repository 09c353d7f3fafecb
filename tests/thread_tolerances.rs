//! The tables of ISO 965-1 against the formulas of its clause 13 (1998 edition).
//!
//! Grade 6 comes from a formula, every other grade from a factor on the tabulated grade 6; both are
//! rounded to the preferred numbers R40 and then to whole micrometres. The standard smooths some
//! values; those differ here by name, and none of them may be of basis `computed`.

use shankline::source::Basis;
use shankline::tables::thread_tolerances::{
    CrestTolerance, MetricDeviation, PitchDiameterTolerance, ThreadKind,
};
use shankline::units::Length;
use shankline::uom::si::length::{micrometer, millimeter};

/// Kind, diameter over (pitch diameters only), pitch, grade; table and formula.
const SMOOTHED: &[(&str, f64, f64)] = &[
    ("d2 over 2.8, P 0.5, grade 6", 75.0, 80.0),
    ("d2 over 5.6, P 1.5, grade 7", 170.0, 160.0),
    ("d2 over 11.2, P 1.25, grade 7", 170.0, 160.0),
    ("d2 over 11.2, P 1.5, grade 7", 180.0, 170.0),
    ("d2 over 45, P 5, grade 6", 250.0, 265.0),
    ("D2 over 5.6, P 1.5, grade 6", 180.0, 170.0),
    ("D2 over 11.2, P 1.25, grade 6", 180.0, 170.0),
    ("D2 over 11.2, P 1.5, grade 6", 190.0, 180.0),
    ("D2 over 22.4, P 1, grade 6", 170.0, 160.0),
    ("d, P 4, grade 6", 475.0, 450.0),
    ("d, P 8, grade 8", 1180.0, 1120.0),
    ("D1, P 0.25, grade 4", 45.0, 48.0),
    ("D1, P 0.25, grade 5", 56.0, 60.0),
    ("D1, P 0.5, grade 6", 140.0, 132.0),
    ("D1, P 0.5, grade 7", 180.0, 170.0),
    ("D1, P 1, grade 6", 236.0, 224.0),
    ("D1, P 2.5, grade 6", 450.0, 425.0),
    ("e, P 0.5", -50.0, -56.0),
    ("e, P 0.6", -53.0, -56.0),
    ("e, P 0.75", -56.0, -60.0),
    ("e, P 2.5", -80.0, -75.0),
    ("f, P 0.45", -35.0, -36.0),
    ("f, P 0.6", -36.0, -38.0),
    ("f, P 0.8", -38.0, -40.0),
    ("f, P 1.5", -45.0, -48.0),
    ("f, P 1.75", -48.0, -50.0),
    ("f, P 2", -52.0, -53.0),
    ("f, P 2.5", -58.0, -56.0),
    ("f, P 3.5", -70.0, -67.0),
    ("g, P 0.75", -22.0, -24.0),
    ("G, P 0.75", 22.0, 24.0),
];

/// The preferred numbers of one decade.
const R40: [f64; 41] = [
    1.0, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2.0, 2.12, 2.24, 2.36, 2.5,
    2.65, 2.8, 3.0, 3.15, 3.35, 3.55, 3.75, 4.0, 4.25, 4.5, 4.75, 5.0, 5.3, 5.6, 6.0, 6.3, 6.7,
    7.1, 7.5, 8.0, 8.5, 9.0, 9.5, 10.0,
];

/// The nearest preferred number in whole micrometres.
fn preferred(value: f64) -> f64 {
    let decade = 10f64.powf(value.log10().floor());
    let nearest = R40
        .iter()
        .map(|number| number * decade)
        .min_by(|a, b| (a - value).abs().total_cmp(&(b - value).abs()))
        .unwrap();
    // Products such as 4.25 times ten are cleared of noise before halves go to the even number.
    ((nearest * 1e6).round() / 1e6).round_ties_even()
}

fn mm(length: Length) -> f64 {
    (length.get::<millimeter>() * 1e6).round() / 1e6
}

/// Compares rows with the formula; gives how many of them rest on it.
fn compare(rows: Vec<(String, Length, f64, Basis)>, used: &mut Vec<&str>) -> usize {
    let mut computed = 0;
    for (name, table, formula, basis) in rows {
        let table = table.get::<micrometer>().round();
        computed += usize::from(basis == Basis::Computed);
        if (table - formula).abs() < 0.5 {
            continue;
        }
        assert!(basis != Basis::Computed, "{name}: {table}, not {formula}");
        let smoothed = SMOOTHED
            .iter()
            .find(|known| (known.0, known.1, known.2) == (name.as_str(), table, formula));
        used.push(
            smoothed
                .unwrap_or_else(|| panic!("{name}: {table}, not {formula}"))
                .0,
        );
    }
    computed
}

fn pitch_diameter(row: &PitchDiameterTolerance) -> f64 {
    let grade_6 = preferred(
        90.0 * mm(row.pitch).powf(0.4) * (mm(row.diameter_over) * mm(row.diameter_thru)).powf(0.05),
    );
    let bolt_6 = PitchDiameterTolerance::all()
        .iter()
        .find(|other| {
            other.kind == ThreadKind::External
                && other.grade == 6
                && other.pitch == row.pitch
                && other.diameter_over == row.diameter_over
        })
        .map_or(grade_6, |other| other.tolerance.get::<micrometer>());
    let factor = match (row.kind, row.grade) {
        (ThreadKind::External, 6) => return grade_6,
        (ThreadKind::External, grade) => [0.5, 0.63, 0.8, 1.0, 1.25, 1.6, 2.0][grade as usize - 3],
        (ThreadKind::Internal, grade) => [0.85, 1.06, 1.32, 1.7, 2.12][grade as usize - 4],
    };
    preferred(factor * bolt_6)
}

fn crest(row: &CrestTolerance) -> f64 {
    let p = mm(row.pitch);
    let grade_6 = preferred(match row.kind {
        ThreadKind::External => 180.0 * p.powf(2.0 / 3.0) - 3.15 / p.sqrt(),
        ThreadKind::Internal if p >= 1.0 => 230.0 * p.powf(0.7),
        ThreadKind::Internal => 433.0 * p - 190.0 * p.powf(1.22),
    });
    if row.grade == 6 {
        return grade_6;
    }
    let tabulated = CrestTolerance::all()
        .iter()
        .find(|other| other.kind == row.kind && other.grade == 6 && other.pitch == row.pitch)
        .map_or(grade_6, |other| other.tolerance.get::<micrometer>());
    preferred([0.63, 0.8, 1.0, 1.25, 1.6][row.grade as usize - 4] * tabulated)
}

fn deviation(row: &MetricDeviation) -> f64 {
    let (sign, least) = match row.position {
        "e" => (-1.0, 50.0),
        "f" => (-1.0, 30.0),
        "g" => (-1.0, 15.0),
        "G" => (1.0, 15.0),
        other => panic!("no formula for position {other}"),
    };
    sign * preferred(least + 11.0 * mm(row.pitch))
}

#[test]
fn tolerances_and_deviations_are_those_of_the_formulas() {
    let mut used = Vec::new();
    let pitch = compare(
        PitchDiameterTolerance::all()
            .iter()
            .map(|row| {
                let symbol = if row.kind == ThreadKind::External {
                    "d2"
                } else {
                    "D2"
                };
                let (over, p) = (mm(row.diameter_over), mm(row.pitch));
                let name = format!("{symbol} over {over}, P {p}, grade {}", row.grade);
                (
                    name,
                    row.tolerance,
                    pitch_diameter(row),
                    row.provenance.basis,
                )
            })
            .collect(),
        &mut used,
    );
    let crests = compare(
        CrestTolerance::all()
            .iter()
            .map(|row| {
                let symbol = if row.kind == ThreadKind::External {
                    "d"
                } else {
                    "D1"
                };
                let name = format!("{symbol}, P {}, grade {}", mm(row.pitch), row.grade);
                (name, row.tolerance, crest(row), row.provenance.basis)
            })
            .collect(),
        &mut used,
    );
    let deviations = compare(
        MetricDeviation::all()
            .iter()
            .map(|row| {
                let name = format!("{}, P {}", row.position, mm(row.pitch));
                (name, row.deviation, deviation(row), row.provenance.basis)
            })
            .collect(),
        &mut used,
    );
    assert_eq!((pitch, crests, deviations), (210, 112, 58));
    let named: Vec<&str> = SMOOTHED.iter().map(|known| known.0).collect();
    assert_eq!(used, named, "exceptions that are not needed");
}
