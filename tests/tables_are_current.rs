//! The generator of `src/tables/generated/`, as a test that what is checked in is current.
//!
//! Rewrite the files after an edit of a CSV with
//! `UPDATE_TABLES=1 cargo test --test tables_are_current`.

mod support;

use std::{collections::BTreeSet, fmt::Write, fs};

use support::{Field, Table, csv_rows, repository, tables};

/// Table, row type, and the names of the items its rows use.
const ROW_TYPES: &[(&str, &str, &str)] = &[
    (
        "threads_unified",
        "UnifiedThread",
        "use crate::tables::threads::{SizeChoice, UnifiedSeries, UnifiedThread};",
    ),
    (
        "threads_metric",
        "MetricThread",
        "use crate::tables::threads::{MetricSeries, MetricThread};",
    ),
    (
        "unified_thread_classes",
        "UnifiedClassRow",
        "use crate::tables::thread_tolerances::UnifiedClassRow;\nuse crate::names::UnifiedClass;",
    ),
    (
        "unified_limit_exceptions",
        "UnifiedLimitException",
        "use crate::tables::thread_tolerances::UnifiedLimitException;",
    ),
    (
        "metric_thread_deviations",
        "MetricDeviation",
        "use crate::tables::thread_tolerances::MetricDeviation;",
    ),
    (
        "metric_crest_tolerances",
        "CrestTolerance",
        "use crate::tables::thread_tolerances::{CrestTolerance, ThreadKind};",
    ),
    (
        "metric_pitch_diameter_tolerances",
        "PitchDiameterTolerance",
        "use crate::tables::thread_tolerances::{PitchDiameterTolerance, ThreadKind};",
    ),
    (
        "metric_engagement_lengths",
        "EngagementLength",
        "use crate::tables::thread_tolerances::EngagementLength;",
    ),
    (
        "sae_j429_grades",
        "SaeGradeRow",
        "use crate::names::SaeGrade;\nuse crate::tables::grades::{HardnessScale, SaeGradeRow};",
    ),
    (
        "astm_grades",
        "AstmGradeRow",
        "use crate::names::AstmGrade;\nuse crate::tables::grades::{AstmGradeRow, HardnessScale};",
    ),
    (
        "astm_grades_metric",
        "AstmGradeRow",
        "use crate::names::AstmGrade;\nuse crate::tables::grades::{AstmGradeRow, HardnessScale};",
    ),
    (
        "iso_898_1_classes",
        "PropertyClassRow",
        "use crate::names::PropertyClass;\nuse crate::tables::grades::{PropertyClassRow, YieldMeasure};",
    ),
    (
        "iso_3506_1_classes",
        "StainlessClassRow",
        "use crate::names::StainlessClass;\nuse crate::tables::grades::StainlessClassRow;",
    ),
    (
        "nuts_inch",
        "Nut",
        "use crate::tables::nuts::{Nut, NutStyle};",
    ),
    (
        "nuts_metric",
        "Nut",
        "use crate::tables::nuts::{Nut, NutStyle};",
    ),
    (
        "nut_grades_inch",
        "NutGradeRow",
        "use crate::names::NutGrade;\nuse crate::tables::grades::HardnessScale;\nuse crate::tables::nut_grades::{NutGradeRow, NutShape, NutThreads};",
    ),
    (
        "nut_grades_metric",
        "NutGradeRow",
        "use crate::names::NutGrade;\nuse crate::tables::grades::HardnessScale;\nuse crate::tables::nut_grades::{NutGradeRow, NutShape, NutThreads};",
    ),
    (
        "nut_pairings",
        "NutPairing",
        "use crate::names::{AstmGrade, BoltGrade, NutGrade, PropertyClass, SaeGrade, StainlessClass};\nuse crate::tables::nut_grades::{BoltCoating, NutPairing, NutShape, NutStanding};",
    ),
    (
        "head_marks",
        "HeadMark",
        "use crate::names::{AstmGrade, BoltGrade, PropertyClass, SaeGrade, StainlessClass};\nuse crate::tables::head_marks::HeadMark;",
    ),
    (
        "design_stresses_inch",
        "DesignStress",
        "use crate::tables::strengths::{\n    DesignStress, StressBolts, StressCode, StressPlane, StressQuantity,\n};",
    ),
    (
        "design_stresses_metric",
        "DesignStress",
        "use crate::tables::strengths::{\n    DesignStress, StressBolts, StressCode, StressPlane, StressQuantity,\n};",
    ),
    (
        "endurance_strengths_inch",
        "EnduranceRow",
        "use crate::names::{BoltGrade, SaeGrade};\nuse crate::tables::fatigue::EnduranceRow;",
    ),
    (
        "endurance_strengths_metric",
        "EnduranceRow",
        "use crate::names::{BoltGrade, PropertyClass};\nuse crate::tables::fatigue::EnduranceRow;",
    ),
    (
        "shear_ratios",
        "ShearRatio",
        "use crate::tables::strengths::ShearRatio;",
    ),
    (
        "published_loads",
        "PublishedLoad",
        "use crate::tables::strengths::{LoadQuantity, LoadedPart, PublishedLoad};",
    ),
    (
        "hex_cap_screws_inch",
        "HexCapScrew",
        "use crate::tables::screws::HexCapScrew;",
    ),
    (
        "hex_cap_screw_full_thread_inch",
        "FullThreadLimit",
        "use crate::tables::screws::FullThreadLimit;",
    ),
    (
        "hex_cap_screw_length_tolerances_inch",
        "InchLengthTolerance",
        "use crate::tables::screws::InchLengthTolerance;",
    ),
    (
        "hex_cap_screw_stock_lengths_inch",
        "StockStep",
        "use crate::tables::screws::StockStep;",
    ),
    (
        "hex_screws_metric",
        "HexScrew",
        "use crate::tables::screws::{HexScrew, ProductGrade};",
    ),
    (
        "length_tolerances_metric",
        "LengthTolerance",
        "use crate::tables::screws::{LengthTolerance, ToleranceGrade};",
    ),
    (
        "stock_lengths_metric",
        "StockLength",
        "use crate::tables::screws::StockLength;",
    ),
    (
        "washers_inch",
        "Washer",
        "use crate::tables::washers::{Washer, WasherStyle};",
    ),
    (
        "washers_metric",
        "Washer",
        "use crate::tables::washers::{Washer, WasherStyle};",
    ),
    (
        "clearance_holes_inch",
        "ClearanceHole",
        "use crate::tables::holes::{ClearanceHole, HoleFit};",
    ),
    (
        "clearance_holes_metric",
        "ClearanceHole",
        "use crate::tables::holes::{ClearanceHole, HoleFit};",
    ),
    (
        "structural_holes_inch",
        "StructuralHole",
        "use crate::tables::holes::{HoleEditions, StructuralHole};",
    ),
    (
        "structural_holes_metric",
        "StructuralHole",
        "use crate::tables::holes::StructuralHole;",
    ),
    (
        "edge_distances_inch",
        "EdgeDistance",
        "use crate::tables::edge_distances::{EdgeDistance, EdgeEditions};",
    ),
    (
        "edge_distances_metric",
        "EdgeDistance",
        "use crate::tables::edge_distances::{EdgeDistance, EdgeEditions};",
    ),
    (
        "holes_en_1090",
        "EnHole",
        "use crate::tables::en_holes::EnHole;",
    ),
    (
        "tap_drills_inch",
        "TapDrill",
        "use crate::tables::holes::TapDrill;",
    ),
    (
        "tap_drills_metric",
        "TapDrill",
        "use crate::tables::holes::TapDrill;",
    ),
    (
        "nut_factors",
        "NutFactorRow",
        "use crate::tables::friction::{Condition, NutFactorRow};",
    ),
    (
        "friction_classes",
        "FrictionClassRow",
        "use crate::tables::friction::{FrictionClass, FrictionClassRow};",
    ),
    (
        "friction_surfaces",
        "FrictionSurface",
        "use crate::tables::friction::{FrictionClass, FrictionSurface, Lubrication, Surface};",
    ),
    (
        "tightening_scatter",
        "TighteningScatter",
        "use crate::tables::tightening::{TighteningMethod, TighteningScatter};",
    ),
    (
        "embedments",
        "Embedment",
        "use crate::tables::tightening::{Embedment, LoadDirection};",
    ),
    (
        "turns",
        "NutTurn",
        "use crate::tables::tightening::{NutTurn, OuterFaces, TurnRule};",
    ),
    (
        "aircraft_torques",
        "AircraftTorque",
        "use crate::tables::aircraft_torque::AircraftTorque;",
    ),
    (
        "prevailing_torques_inch",
        "PrevailingTorque",
        "use crate::tables::locking::{PrevailingTorque, PrevailingTorqueKind};\nuse crate::tables::nuts::Locking;",
    ),
    (
        "prevailing_torques_metric",
        "PrevailingTorque",
        "use crate::tables::locking::{PrevailingTorque, PrevailingTorqueKind};\nuse crate::tables::nuts::Locking;",
    ),
    (
        "service_temperatures_c",
        "ServiceTemperature",
        "use crate::tables::locking::{ServiceTemperature, TemperatureLimited};",
    ),
    (
        "service_temperatures_f",
        "ServiceTemperature",
        "use crate::tables::locking::{ServiceTemperature, TemperatureLimited};",
    ),
    (
        "anodic_indices",
        "AnodicIndex",
        "use crate::tables::galvanic::{AnodicIndex, Metal};",
    ),
    (
        "ply_materials",
        "PlyMaterial",
        "use crate::tables::plies::{PlyMaterial, StrengthKind};",
    ),
    (
        "ply_strengths_metric",
        "PlyStrength",
        "use crate::tables::plies::PlyStrength;",
    ),
    (
        "ply_bearing_strengths",
        "PlyBearing",
        "use crate::tables::plies::PlyBearing;",
    ),
    (
        "timber",
        "Timber",
        "use crate::tables::timber::{Timber, TimberKind};",
    ),
    (
        "timber_compression",
        "TimberCompression",
        "use crate::tables::timber::TimberCompression;",
    ),
    (
        "hex_bolts_inch",
        "HexBolt",
        "use crate::tables::bolts::{HexBolt, HexBoltStyle};",
    ),
    (
        "hex_bolt_length_tolerances_inch",
        "InchLengthTolerance",
        "use crate::tables::screws::InchLengthTolerance;",
    ),
    (
        "structural_bolts_inch",
        "StructuralBolt",
        "use crate::tables::bolts::StructuralBolt;",
    ),
    (
        "structural_bolts_metric",
        "StructuralBolt",
        "use crate::tables::bolts::StructuralBolt;",
    ),
    ("hr_bolts", "HrBolt", "use crate::tables::hr_bolts::HrBolt;"),
    (
        "hex_cap_screws_metric",
        "MetricHexCapScrew",
        "use crate::tables::metric_screws::MetricHexCapScrew;",
    ),
    (
        "hex_screws_metric_fine",
        "FineHexScrew",
        "use crate::tables::metric_screws::FineHexScrew;",
    ),
    (
        "socket_head_cap_screws_inch",
        "SocketHeadCapScrew",
        "use crate::tables::sockets::SocketHeadCapScrew;",
    ),
    (
        "socket_head_cap_screws_metric",
        "SocketHeadCapScrew",
        "use crate::tables::sockets::SocketHeadCapScrew;",
    ),
    (
        "socket_head_grips_metric",
        "SocketHeadGrip",
        "use crate::tables::sockets::SocketHeadGrip;",
    ),
    (
        "aircraft_bolts",
        "AircraftBolt",
        "use crate::tables::aircraft::AircraftBolt;",
    ),
    (
        "aircraft_bolt_grips",
        "AircraftGripRow",
        "use crate::tables::aircraft::AircraftGripRow;",
    ),
    (
        "pretensions_inch",
        "Pretension",
        "use crate::tables::pretension::{Pretension, PretensionEditions, PretensionGroup};",
    ),
    (
        "pretensions_metric",
        "Pretension",
        "use crate::tables::pretension::{Pretension, PretensionEditions, PretensionGroup};",
    ),
    (
        "expansions",
        "Expansion",
        "use crate::tables::expansion::{Expansion, ExpandingMetal};",
    ),
    (
        "surface_pressures",
        "SurfacePressure",
        "use crate::tables::surface::{PressureEdition, SurfacePressure};",
    ),
    (
        "ply_surface_pressures",
        "PlySurfacePressure",
        "use crate::tables::surface::{Kinship, PlySurfacePressure, PressureEdition};",
    ),
    (
        "hot_yields",
        "HotYield",
        "use crate::tables::heat::{HotSteel, HotYield};",
    ),
    (
        "ply_temperature_limits",
        "PlyTemperatureLimit",
        "use crate::tables::heat::PlyTemperatureLimit;",
    ),
    (
        "washer_hardnesses",
        "WasherHardness",
        "use crate::tables::grades::HardnessScale;\nuse crate::tables::washer_rules::WasherHardness;\nuse crate::tables::washers::WasherStyle;",
    ),
    (
        "washer_pairings",
        "WasherPairing",
        "use crate::names::{BoltGrade, PropertyClass};\nuse crate::tables::washer_rules::{WasherPairing, WasherStanding};",
    ),
    (
        "washer_rules",
        "WasherRule",
        "use crate::tables::washer_rules::{WasherCase, WasherCode, WasherNeed, WasherRule, WasherSide};",
    ),
];

/// Columns whose cells are the variants of an enum: column, table prefix, enum.
const ENUMS: &[(&str, &str, &str)] = &[
    ("series", "threads_unified", "UnifiedSeries"),
    ("constant_pitch_series", "threads_unified", "UnifiedSeries"),
    ("series", "threads_metric", "MetricSeries"),
    ("choice", "threads", "SizeChoice"),
    ("class", "unified_thread", "UnifiedClass"),
    ("kind", "metric_", "ThreadKind"),
    ("grade", "sae", "SaeGrade"),
    ("core_hardness_scale", "sae", "HardnessScale"),
    ("grade", "astm", "AstmGrade"),
    ("core_hardness_min_scale", "astm", "HardnessScale"),
    ("core_hardness_max_scale", "astm", "HardnessScale"),
    ("class", "iso_898", "PropertyClass"),
    ("yield_measure", "iso_898", "YieldMeasure"),
    ("class", "iso_3506", "StainlessClass"),
    ("style", "nuts", "NutStyle"),
    ("grade", "nut_grades", "NutGrade"),
    ("shape", "nut_", "NutShape"),
    ("threads", "nut_grades", "NutThreads"),
    ("hardness_min_scale", "nut_grades", "HardnessScale"),
    ("hardness_max_scale", "nut_grades", "HardnessScale"),
    ("bolt", "nut_pairings", "BoltGrade"),
    ("bolt", "head_marks", "BoltGrade"),
    ("bolt", "endurance_strengths", "BoltGrade"),
    ("code", "design_stresses", "StressCode"),
    ("bolts", "design_stresses", "StressBolts"),
    ("quantity", "design_stresses", "StressQuantity"),
    ("plane", "design_stresses", "StressPlane"),
    ("part", "published_loads", "LoadedPart"),
    ("quantity", "published_loads", "LoadQuantity"),
    ("coating", "nut_pairings", "BoltCoating"),
    ("nut", "nut_pairings", "NutGrade"),
    ("standing", "nut_pairings", "NutStanding"),
    ("style", "washers", "WasherStyle"),
    ("product_grade", "hex_screws", "ProductGrade"),
    ("tolerance_grade", "length_tol", "ToleranceGrade"),
    ("fit", "clearance_holes", "HoleFit"),
    ("editions", "structural_holes", "HoleEditions"),
    ("editions", "edge_distances", "EdgeEditions"),
    ("condition", "nut_factors", "Condition"),
    ("class", "friction", "FrictionClass"),
    ("surface", "friction_surfaces", "Surface"),
    ("lubrication", "friction_surfaces", "Lubrication"),
    ("method", "tightening", "TighteningMethod"),
    ("load", "embedments", "LoadDirection"),
    ("rule", "turns", "TurnRule"),
    ("faces", "turns", "OuterFaces"),
    ("kind", "prevailing", "PrevailingTorqueKind"),
    ("locking", "prevailing", "Locking"),
    ("element", "service_temp", "TemperatureLimited"),
    ("strength_kind", "ply", "StrengthKind"),
    ("metal", "anodic_indices", "Metal"),
    ("style", "hex_bolts", "HexBoltStyle"),
    ("kind", "timber", "TimberKind"),
    ("editions", "pretensions", "PretensionEditions"),
    ("group", "pretensions", "PretensionGroup"),
    ("metal", "expansions", "ExpandingMetal"),
    ("edition", "surface_pressures", "PressureEdition"),
    ("edition", "ply_surface", "PressureEdition"),
    ("kinship", "ply_surface", "Kinship"),
    ("steel", "hot_yields", "HotSteel"),
    ("style", "washer_h", "WasherStyle"),
    ("hardness_scale", "washer_h", "HardnessScale"),
    ("bolt", "washer_pairings", "BoltGrade"),
    ("standing", "washer_pairings", "WasherStanding"),
    ("code", "washer_rules", "WasherCode"),
    ("case", "washer_rules", "WasherCase"),
    ("washer", "washer_rules", "WasherNeed"),
    ("side", "washer_rules", "WasherSide"),
];

/// Column ending, the constructor of its quantity. The first that fits counts: `_lbf_in` before `_in`.
const UNITS: &[(&str, &str)] = &[
    ("_lbf_in", "pound_force_inches"),
    ("_nm", "newton_metres"),
    ("_deg", "degrees"),
    ("_ppm_per_f", "ppm_per_fahrenheit"),
    ("_ppm_per_k", "ppm_per_kelvin"),
    ("_kip", "kips"),
    ("_kn", "kilonewtons"),
    ("_kg_m3", "kilograms_per_cubic_metre"),
    ("_um", "micrometres"),
    ("_msi", "msi"),
    ("_in2", "square_inches"),
    ("_mm2", "square_millimetres"),
    ("_in", "inches"),
    ("_mm", "millimetres"),
    ("_lbf", "pounds_force"),
    ("_ksi", "ksi"),
    ("_mpa", "megapascals"),
    ("_pct", "percent"),
    ("_v", "volts"),
    ("_f", "fahrenheit"),
    ("_c", "celsius"),
];

fn variant(enumeration: &str, cell: &str) -> String {
    match (enumeration, cell) {
        ("HardnessScale", "HRB") => "RockwellB".into(),
        ("HardnessScale", "HRC") => "RockwellC".into(),
        ("HardnessScale", "HBW") => "Brinell".into(),
        ("HardnessScale", "HV") => "Vickers".into(),
        ("BoltGrade", name) => bolt_grade(name),
        ("NutGrade", name) => pascal(
            &name
                .to_lowercase()
                .replace('|', "")
                .replace([' ', '-', '.'], "_"),
        ),
        ("YieldMeasure", "ReL") => "LowerYield".into(),
        ("YieldMeasure", "Rpf") => "FullSize".into(),
        ("YieldMeasure", "Rp0.2") => "Offset".into(),
        ("SaeGrade", grade) => format!("Grade{}", grade.replace('.', "_")),
        ("AstmGrade", grade) => pascal(&grade.to_lowercase().replace([' ', '.'], "_")),
        ("StainlessClass", class) => pascal(&class.to_lowercase().replace('-', "_")),
        ("PropertyClass", class) => {
            let class = class.replace(" underlined", "U").replace('.', "_");
            format!("Class{}", class.replace('U', "Underlined"))
        }
        ("UnifiedClass", class) => format!("Class{class}"),
        ("UnifiedSeries", series) if series.ends_with("-UN") => {
            format!("Un{}", series.strip_suffix("-UN").unwrap())
        }
        ("UnifiedSeries", series) => {
            let (first, rest) = series.split_at(1);
            format!("{first}{}", rest.to_lowercase())
        }
        _ => pascal(cell),
    }
}

/// `ASTM A307 A` -> `Astm(AstmGrade::A307A)`.
fn bolt_grade(name: &str) -> String {
    let kinds = [
        ("SAE J429 grade ", "Sae", "SaeGrade"),
        ("ISO 898-1 class ", "Iso", "PropertyClass"),
        ("ISO 3506-1 class ", "Stainless", "StainlessClass"),
        ("ASTM ", "Astm", "AstmGrade"),
    ];
    kinds
        .iter()
        .find_map(|(prefix, kind, enumeration)| {
            let grade = variant(enumeration, name.strip_prefix(prefix)?);
            Some(format!("{kind}({enumeration}::{grade})"))
        })
        .unwrap_or_else(|| panic!("{name} is no bolt grade"))
}

/// `iso_4032` -> `Iso4032`, `b18_2_4_1m` -> `B18_2_4_1m`: an underscore stays between digits.
fn pascal(cell: &str) -> String {
    let mut name = String::new();
    for part in cell.split('_') {
        let (first, rest) = part.split_at(1);
        let digit = |c: Option<char>| c.is_some_and(|c| c.is_ascii_digit());
        if digit(name.chars().last()) && digit(first.chars().next()) {
            name.push('_');
        }
        name.push_str(&first.to_uppercase());
        name.push_str(rest);
    }
    name
}

fn float(cell: &str) -> String {
    assert!(cell.parse::<f64>().is_ok_and(f64::is_finite), "{cell}");
    if cell.contains('.') {
        cell.into()
    } else {
        format!("{cell}.0")
    }
}

fn static_name(key: &str) -> String {
    key.to_uppercase().replace(['.', '-'], "_")
}

/// Field name and expression of one cell; `None` for the columns that make up `provenance`.
fn field(
    table: &Table,
    field: &Field,
    cell: &str,
    optional: bool,
    used: &mut BTreeSet<String>,
) -> Option<(String, String)> {
    let column = field.name.as_str();
    if column == "basis" || column == "source" {
        return None;
    }
    let unit = (field.kind == "number")
        .then(|| UNITS.iter().find(|(ending, _)| column.ends_with(ending)))
        .flatten();
    let name = unit.map_or(column, |(ending, _)| column.strip_suffix(ending).unwrap());
    let enumeration = ENUMS
        .iter()
        .find(|(c, prefix, _)| *c == column && table.name.starts_with(prefix))
        .map(|(_, _, e)| *e);
    if cell.is_empty() {
        assert!(
            optional,
            "{} {column}: empty cell in a required column",
            table.name
        );
        return Some((name.into(), "None".into()));
    }
    if let Some((_, constructor)) = unit
        && optional
    {
        used.insert("optional".into());
        return Some((
            name.into(),
            format!("optional::{constructor}({})", float(cell)),
        ));
    }
    let value = if let Some((_, constructor)) = unit {
        used.insert((*constructor).into());
        format!("{constructor}({})", float(cell))
    } else if let Some(enumeration) = enumeration {
        format!("{enumeration}::{}", variant(enumeration, cell))
    } else if column.ends_with("_basis") {
        format!("Basis::{}", pascal(cell))
    } else if column.ends_with("_source") {
        format!("&sources::{}", static_name(cell))
    } else {
        match field.kind.as_str() {
            "number" => float(cell),
            "integer" | "boolean" => cell.into(),
            "string" => format!("{cell:?}"),
            other => panic!("{column}: unknown type {other}"),
        }
    };
    Some((
        name.into(),
        if optional {
            format!("Some({value})")
        } else {
            value
        },
    ))
}

fn base_name(field: &Field) -> &str {
    let column = field.name.as_str();
    UNITS
        .iter()
        .filter(|_| field.kind == "number")
        .find_map(|(ending, _)| column.strip_suffix(ending))
        .unwrap_or(column)
}

fn header(table: &Table) -> String {
    format!(
        "// Written by tests/tables_are_current.rs from tables/{}.csv. Not edited by hand.\n\n",
        table.name
    )
}

fn rows_file(table: &Table, row_type: &str, imports: &str, same_type: &[&Table]) -> String {
    // A field is plain only where every table of its row type has a value in every row.
    let plain = |name: &str| {
        same_type
            .iter()
            .all(|t| t.fields.iter().any(|f| base_name(f) == name && f.required))
    };
    // A row type whose tables differ in columns has a `BLANK`; its rows leave out what is empty.
    let lacks = |t: &Table| {
        same_type
            .iter()
            .flat_map(|other| &other.fields)
            .any(|f| !t.fields.iter().any(|own| base_name(own) == base_name(f)))
    };
    let (missing, has_blank) = (lacks(table), same_type.iter().any(|t| lacks(t)));
    let mut used = BTreeSet::new();
    let mut body = String::new();
    let (basis, source) = (table.column("basis"), table.column("source"));
    for row in &table.rows {
        body.push_str("    ");
        write!(body, "{row_type} {{ ").unwrap();
        let mut blank = missing;
        for (definition, cell) in table.fields.iter().zip(row) {
            let optional = !plain(base_name(definition));
            if let Some((name, value)) = field(table, definition, cell, optional, &mut used) {
                if has_blank && value == "None" {
                    blank = true;
                } else {
                    write!(body, "{name}: {value}, ").unwrap();
                }
            }
        }
        write!(
            body,
            "provenance: known(&sources::{}, Basis::{})",
            static_name(&row[source]),
            pascal(&row[basis])
        )
        .unwrap();
        if blank {
            write!(body, ", ..{row_type}::BLANK").unwrap();
        }
        body.push_str(" },\n");
    }
    let optional = if used.remove("optional") {
        "use crate::tables::optional;\n"
    } else {
        ""
    };
    let units: Vec<String> = used.into_iter().collect();
    let units = if units.is_empty() {
        String::new()
    } else {
        format!("use crate::units::{{{}}};\n", units.join(", "))
    };
    let constant = table.name.to_uppercase();
    format!(
        "{}use super::sources;\nuse crate::source::Basis;\nuse crate::tables::known;\n{optional}{imports}\n{units}\npub(in crate::tables) static {constant}: [{row_type}; {}] = [\n{body}];\n",
        header(table),
        table.rows.len(),
    )
}

fn sources_file(table: &Table) -> String {
    let mut statics = String::new();
    let mut list = String::new();
    for row in &table.rows {
        let [key, document, edition, locator, read_in] = row.as_slice() else {
            panic!()
        };
        let name = static_name(key);
        let edition = if edition.is_empty() {
            "None".into()
        } else {
            format!("Some({edition:?})")
        };
        writeln!(
            statics,
            "pub(in crate::tables) static {name}: Source = Source {{ key: {key:?}, document: {document:?}, edition: {edition}, locator: {locator:?}, read_in: {read_in:?} }};"
        )
        .unwrap();
        writeln!(list, "    &{name},").unwrap();
    }
    format!(
        "{}use crate::source::Source;\n\n{statics}\npub(in crate::tables) static SOURCES: [&Source; {}] = [\n{list}];\n",
        header(table),
        table.rows.len(),
    )
}

/// Constants and not rows: a method is named where it is used, and a name that is gone does not compile.
fn methods_file(table: &Table) -> String {
    let mut constants = String::new();
    let mut list = String::new();
    for row in &table.rows {
        let cell = |name: &str| row[table.column(name)].as_str();
        let name = static_name(cell("key"));
        write!(constants, "pub(crate) const {name}: &Method = &Method {{ ").unwrap();
        for field in &table.fields {
            let (column, text) = (field.name.as_str(), cell(&field.name));
            let value = match column {
                "publisher" => format!("Publisher::{}", pascal(text)),
                "basis" => format!("Basis::{}", pascal(text)),
                _ if field.required => format!("{text:?}"),
                _ if text.is_empty() => "None".into(),
                _ => format!("Some({text:?})"),
            };
            write!(constants, "{column}: {value}, ").unwrap();
        }
        constants.truncate(constants.len() - 2);
        constants.push_str(" };\n");
        writeln!(list, "    {name},").unwrap();
    }
    format!(
        "{}use crate::source::{{Basis, Method, Publisher}};\n\n{constants}\npub(in crate::tables) static METHODS: [&Method; {}] = [\n{list}];\n",
        header(table),
        table.rows.len(),
    )
}

const ONLY_WITNESSES: &str = "only_witnesses";

/// The grades and sizes of bolts whose strengths one document alone has: rows of `tables/witnesses.csv`.
fn only_witnesses_file() -> String {
    let mut body = String::new();
    let witnesses = csv_rows("tables/witnesses.csv");
    let only = witnesses.iter().filter(|w| w["standing"] == "only");
    for witness in only.clone() {
        let prefix = match witness["table"].as_str() {
            "sae_j429_grades" => "SAE J429 grade ",
            "astm_grades" | "astm_grades_metric" => "ASTM ",
            "iso_3506_1_classes" => "ISO 3506-1 class ",
            _ => panic!("no strengths of bolts: {witness:?}"),
        };
        let mut grade = String::new();
        let mut limits = ["None".to_string(), String::new()];
        for part in witness["row"].split("; ") {
            let (column, cell) = part.split_once('=').unwrap();
            let unit = if column.ends_with("_in") {
                "inches"
            } else {
                "millimetres"
            };
            let length = format!(
                "{unit}({})",
                cell.parse::<f64>().map_or(String::new(), |_| float(cell))
            );
            match column {
                "grade" | "class" => grade = bolt_grade(&format!("{prefix}{cell}")),
                "size_over_in" | "size_over_mm" => limits[0] = format!("Some({length})"),
                "size_thru_in" | "size_thru_mm" => limits[1] = length,
                _ => panic!("{witness:?}"),
            }
        }
        writeln!(
            body,
            "    (BoltGrade::{grade}, {}, {}),",
            limits[0], limits[1]
        )
        .unwrap();
    }
    format!(
        "// Written by tests/tables_are_current.rs from tables/witnesses.csv. Not edited by hand.\n\n\
         use crate::names::{{AstmGrade, BoltGrade, SaeGrade, StainlessClass}};\n\
         use crate::units::{{Length, inches, millimetres}};\n\n\
         pub(crate) static ONLY_WITNESSES: [(BoltGrade, Option<Length>, Length); {}] = [\n{body}];\n",
        only.count(),
    )
}

#[test]
fn generated_files_are_current() {
    let tables = tables();
    let update = std::env::var_os("UPDATE_TABLES").is_some();
    let mut stale = Vec::new();
    let mut current = |name: &str, text: String| {
        let path = repository("src/tables/generated").join(format!("{name}.rs"));
        if fs::read_to_string(&path).unwrap_or_default() != text {
            if update {
                fs::write(&path, text).unwrap();
            } else {
                stale.push(name.to_string());
            }
        }
    };
    current(ONLY_WITNESSES, only_witnesses_file());
    for table in &tables {
        let text = if table.name == "sources" {
            sources_file(table)
        } else if table.name == "methods" {
            methods_file(table)
        } else {
            let (_, row_type, imports) = ROW_TYPES
                .iter()
                .find(|(name, ..)| *name == table.name)
                .unwrap_or_else(|| panic!("{} has no row type", table.name));
            let same_type: Vec<&Table> = tables
                .iter()
                .filter(|t| {
                    ROW_TYPES
                        .iter()
                        .any(|(name, ty, _)| *name == t.name && ty == row_type)
                })
                .collect();
            rows_file(table, row_type, imports, &same_type)
        };
        current(&table.name, text);
    }
    assert!(
        stale.is_empty(),
        "not current: {stale:?}; run UPDATE_TABLES=1 cargo test --test tables_are_current"
    );
}

#[test]
fn no_generated_file_is_left_over() {
    let names: BTreeSet<String> = tables().into_iter().map(|table| table.name).collect();
    for entry in fs::read_dir(repository("src/tables/generated")).unwrap() {
        let file = entry.unwrap().file_name().into_string().unwrap();
        let name = file.strip_suffix(".rs").unwrap();
        assert!(
            names.contains(name) || name == ONLY_WITNESSES,
            "{file} has no table"
        );
    }
}
