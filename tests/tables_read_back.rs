//! Every number of every table, read back through the public rows in its own unit and printed to
//! the decimals of the CSV, gives the CSV's cell again. Catches a wrong column or unit, which the
//! drift test cannot.

mod support;

use shankline::{
    material::{BoltGrade, NutGrade},
    tables::{
        aircraft::{AircraftBolt, AircraftGripRow},
        aircraft_torque::AircraftTorque,
        bolts::{HexBolt, StructuralBolt},
        edge_distances::EdgeDistance,
        en_holes::EnHole,
        expansion::Expansion,
        fatigue::EnduranceRow,
        friction::{FrictionClassRow, FrictionSurface, NutFactorRow},
        galvanic::AnodicIndex,
        grades::{AstmGradeRow, PropertyClassRow, SaeGradeRow, StainlessClassRow},
        head_marks::HeadMark,
        heat::{HotYield, PlyTemperatureLimit},
        holes::{ClearanceHole, StructuralHole, TapDrill},
        hr_bolts::HrBolt,
        locking::{PrevailingTorque, ServiceTemperature},
        metric_screws::{FineHexScrew, MetricHexCapScrew},
        nut_grades::{NutGradeRow, NutPairing},
        nuts::Nut,
        plies::{PlyBearing, PlyMaterial, PlyStrength},
        pretension::Pretension,
        screws::{
            FullThreadLimit, HexCapScrew, HexScrew, InchLengthTolerance, LengthTolerance,
            StockLength, StockStep,
        },
        sockets::{SocketHeadCapScrew, SocketHeadGrip},
        strengths::{DesignStress, PublishedLoad, ShearRatio},
        surface::{PlySurfacePressure, SurfacePressure},
        thread_tolerances::{
            CrestTolerance, EngagementLength, MetricDeviation, PitchDiameterTolerance,
            UnifiedClassRow, UnifiedLimitException,
        },
        threads::{MetricThread, UnifiedThread},
        tightening::{Embedment, NutTurn, TighteningScatter},
        timber::{Timber, TimberCompression},
        washer_rules::{WasherHardness, WasherPairing, WasherRule},
        washers::Washer,
    },
    units::{
        Angle, Area, Density, ElectricPotential, Force, Length, Ratio, Stress,
        TemperatureCoefficient, ThermodynamicTemperature, Torque, kip, kip_per_square_inch,
        pound_force, pound_force_inch,
    },
    uom::si::{
        angle::degree,
        area::{square_inch, square_millimeter},
        force::kilonewton,
        length::{inch, micrometer, millimeter},
        pressure::megapascal,
        ratio::percent,
        temperature_coefficient::ppm_per_kelvin,
        thermodynamic_temperature::{degree_celsius, degree_fahrenheit},
        torque::newton_meter,
    },
};
use support::{decimals, table};

/// What a row has in one column, as a number in the column's unit.
enum Cell {
    Number(Option<f64>),
    Text(Option<String>),
}

trait IntoCell {
    fn cell(self, column: &str) -> Cell;
}

impl IntoCell for Length {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_in") {
            self.get::<inch>()
        } else if column.ends_with("_um") {
            self.get::<micrometer>()
        } else {
            assert!(column.ends_with("_mm"), "{column}");
            self.get::<millimeter>()
        }))
    }
}

impl IntoCell for Area {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_in2") {
            self.get::<square_inch>()
        } else {
            assert!(column.ends_with("_mm2"), "{column}");
            self.get::<square_millimeter>()
        }))
    }
}

impl IntoCell for Stress {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_ksi") {
            self.get::<kip_per_square_inch>()
        } else if column.ends_with("_msi") {
            self.get::<kip_per_square_inch>() / 1000.0
        } else {
            assert!(column.ends_with("_mpa"), "{column}");
            self.get::<megapascal>()
        }))
    }
}

impl IntoCell for Torque {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_lbf_in") {
            self.get::<pound_force_inch>()
        } else {
            assert!(column.ends_with("_nm"), "{column}");
            self.get::<newton_meter>()
        }))
    }
}

impl IntoCell for ElectricPotential {
    fn cell(self, column: &str) -> Cell {
        assert!(column.ends_with("_v"), "{column}");
        Cell::Number(Some(self.value))
    }
}

impl IntoCell for Angle {
    fn cell(self, column: &str) -> Cell {
        assert!(column.ends_with("_deg"), "{column}");
        Cell::Number(Some(self.get::<degree>()))
    }
}

impl IntoCell for TemperatureCoefficient {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_ppm_per_k") {
            self.get::<ppm_per_kelvin>()
        } else {
            assert!(column.ends_with("_ppm_per_f"), "{column}");
            self.get::<ppm_per_kelvin>() / 1.8
        }))
    }
}

impl IntoCell for Force {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_kip") {
            self.get::<kip>()
        } else if column.ends_with("_kn") {
            self.get::<kilonewton>()
        } else {
            assert!(column.ends_with("_lbf"), "{column}");
            self.get::<pound_force>()
        }))
    }
}

impl IntoCell for Ratio {
    fn cell(self, column: &str) -> Cell {
        assert!(column.ends_with("_pct"), "{column}");
        Cell::Number(Some(self.get::<percent>()))
    }
}

impl IntoCell for ThermodynamicTemperature {
    fn cell(self, column: &str) -> Cell {
        Cell::Number(Some(if column.ends_with("_f") {
            self.get::<degree_fahrenheit>()
        } else {
            assert!(column.ends_with("_c"), "{column}");
            self.get::<degree_celsius>()
        }))
    }
}

impl IntoCell for Density {
    fn cell(self, column: &str) -> Cell {
        assert!(column.ends_with("_kg_m3"), "{column}");
        Cell::Number(Some(self.value))
    }
}

impl IntoCell for f64 {
    fn cell(self, _: &str) -> Cell {
        Cell::Number(Some(self))
    }
}

impl IntoCell for &str {
    fn cell(self, _: &str) -> Cell {
        Cell::Text(Some(self.into()))
    }
}

impl IntoCell for NutGrade {
    fn cell(self, _: &str) -> Cell {
        Cell::Text(Some(self.to_string()))
    }
}

impl IntoCell for BoltGrade {
    fn cell(self, _: &str) -> Cell {
        Cell::Text(Some(self.to_string()))
    }
}

impl IntoCell for bool {
    fn cell(self, _: &str) -> Cell {
        Cell::Text(Some(self.to_string()))
    }
}

impl IntoCell for u8 {
    fn cell(self, _: &str) -> Cell {
        Cell::Text(Some(self.to_string()))
    }
}

impl<T: IntoCell> IntoCell for Option<T> {
    fn cell(self, column: &str) -> Cell {
        self.map_or(Cell::Text(None), |value| value.cell(column))
    }
}

/// A column of the CSV and how to get its cell from a row.
type Column<'a, R> = (&'a str, &'a dyn Fn(&R) -> Cell);

/// Compares every row in the columns listed; returns how many cells were compared.
fn read_back<R>(name: &str, rows: &[R], columns: &[Column<R>]) -> usize {
    let table = table(name);
    assert_eq!(table.rows.len(), rows.len(), "{name}");
    for field in &table.fields {
        let covered = columns.iter().any(|(column, _)| *column == field.name);
        assert!(
            covered || field.kind == "string",
            "{name}: numeric column {} is not read back",
            field.name
        );
    }
    let mut compared = 0;
    for (row, text) in rows.iter().zip(&table.rows) {
        for (column, get) in columns {
            let expected = &text[table.column(column)];
            let found = match get(row) {
                Cell::Number(None) | Cell::Text(None) => String::new(),
                Cell::Number(Some(value)) => format!("{value:.*}", decimals(expected)),
                Cell::Text(Some(text)) => text,
            };
            assert_eq!(&found, expected, "{name} {column}");
            compared += 1;
        }
    }
    compared
}

/// `columns![Row; field "column_unit", ...]`: the columns of a table and the fields they fill.
macro_rules! columns {
    ($row:ty; $($field:ident $column:literal),* $(,)?) => {
        &[$(($column, &|row: &$row| row.$field.cell($column))),*]
    };
}

#[test]
fn pressures_heat_and_washers() {
    read_back(
        "surface_pressures",
        SurfacePressure::all(),
        columns![SurfacePressure; material "material",
            tensile_strength_min "tensile_strength_min_mpa",
            tensile_strength_max "tensile_strength_max_mpa",
            limiting_pressure "limiting_pressure_mpa", provisional "provisional", note "note"],
    );
    read_back(
        "ply_surface_pressures",
        PlySurfacePressure::all(),
        columns![PlySurfacePressure; ply "ply", material "material", note "note"],
    );
    read_back(
        "hot_yields",
        HotYield::all(),
        columns![HotYield; temperature "temperature_c", yield_strength "yield_strength_mpa",
            yield_ratio "yield_ratio_pct", note "note"],
    );
    read_back(
        "ply_temperature_limits",
        PlyTemperatureLimit::all(),
        columns![PlyTemperatureLimit; ply "ply", full_strength_thru "full_strength_thru_c",
            note "note"],
    );
    read_back(
        "washer_hardnesses",
        WasherHardness::all(),
        columns![WasherHardness; property_class "property_class", hardness_min "hardness_min",
            note "note"],
    );
    read_back(
        "washer_pairings",
        WasherPairing::all(),
        columns![WasherPairing; bolt "bolt", washer_class "washer_class", note "note"],
    );
    read_back(
        "washer_rules",
        WasherRule::all(),
        columns![WasherRule; thickness_min "thickness_min_in",
            width_min_diameters "width_min_diameters",
            thickness_min_diameters "thickness_min_diameters", note "note"],
    );
}

#[test]
fn friction() {
    read_back(
        "nut_factors",
        NutFactorRow::all(),
        columns![NutFactorRow; publisher "publisher", k_min "k_min", k_nominal "k_nominal",
            k_max "k_max", note "note"],
    );
    read_back(
        "friction_classes",
        FrictionClassRow::all(),
        columns![FrictionClassRow; friction_min "friction_min", friction_max "friction_max"],
    );
    read_back(
        "tightening_scatter",
        TighteningScatter::all(),
        columns![TighteningScatter; publisher "publisher", scatter_min "scatter_min_pct",
            scatter_max "scatter_max_pct", tightening_factor_min "tightening_factor_min",
            tightening_factor_max "tightening_factor_max", note "note"],
    );
    read_back(
        "embedments",
        Embedment::all(),
        columns![Embedment; roughness_from "roughness_from_um",
            roughness_below "roughness_below_um", thread "thread_um",
            bearing_face "bearing_face_um", interface "interface_um"],
    );
    read_back(
        "turns",
        NutTurn::all(),
        columns![NutTurn; diameters_from "diameters_from", diameters_to "diameters_to",
            turn "turn_deg"],
    );
    read_back(
        "aircraft_torques",
        AircraftTorque::all(),
        columns![AircraftTorque; size "size", nominal_diameter "nominal_diameter_in",
            threads_per_inch "threads_per_inch", tension_nut_min "tension_nut_min_lbf_in",
            tension_nut_max "tension_nut_max_lbf_in", shear_nut_min "shear_nut_min_lbf_in",
            shear_nut_max "shear_nut_max_lbf_in", tension_nut_limit "tension_nut_limit_lbf_in",
            shear_nut_limit "shear_nut_limit_lbf_in",
            shear_nut_estimated "shear_nut_estimated"],
    );
}

#[test]
fn locking() {
    read_back(
        "prevailing_torques_inch",
        PrevailingTorque::all_inch(),
        columns![PrevailingTorque; publisher "publisher", size "size",
            nominal_diameter "nominal_diameter_in", threads_per_inch "threads_per_inch",
            torque "torque_lbf_in", note "note"],
    );
    read_back(
        "prevailing_torques_metric",
        PrevailingTorque::all_metric(),
        columns![PrevailingTorque; publisher "publisher", nut_classes "nut_classes", size "size",
            nominal_diameter "nominal_diameter_mm", pitch "pitch_mm", torque "torque_nm"],
    );
    read_back(
        "pretensions_inch",
        Pretension::all_inch(),
        columns![Pretension; code "code", size "size", nominal_diameter "nominal_diameter_in",
            pretension "pretension_kip", note "note"],
    );
    read_back(
        "pretensions_metric",
        Pretension::all_metric(),
        columns![Pretension; code "code", size "size", nominal_diameter "nominal_diameter_mm",
            pretension "pretension_kn", note "note"],
    );
    read_back(
        "service_temperatures_c",
        ServiceTemperature::all_celsius(),
        columns![ServiceTemperature; publisher "publisher",
            temperature_min "temperature_min_c", temperature_max "temperature_max_c",
            note "note"],
    );
    read_back(
        "service_temperatures_f",
        ServiceTemperature::all_fahrenheit(),
        columns![ServiceTemperature; publisher "publisher",
            temperature_min "temperature_min_f", temperature_max "temperature_max_f",
            note "note"],
    );
}

#[test]
fn plies() {
    read_back(
        "ply_materials",
        PlyMaterial::all(),
        columns![PlyMaterial; name "name", condition "condition",
            elastic_modulus_min "elastic_modulus_min_msi",
            elastic_modulus_max "elastic_modulus_max_msi", poisson_ratio "poisson_ratio",
            expansion "expansion_ppm_per_f", expansion_from "expansion_from_f",
            expansion_thru "expansion_thru_f", thickness_from "thickness_from_in",
            thickness_thru "thickness_thru_in", yield_strength "yield_strength_ksi",
            tensile_strength "tensile_strength_ksi",
            tensile_strength_max "tensile_strength_max_ksi",
            shear_strength "shear_strength_ksi", note "note"],
    );
    read_back(
        "expansions",
        Expansion::all(),
        columns![Expansion; expansion "expansion_ppm_per_k", from "from_c", thru "thru_c",
            note "note"],
    );
    read_back(
        "ply_strengths_metric",
        PlyStrength::all(),
        columns![PlyStrength; name "name", thickness_from "thickness_from_mm",
            thickness_thru "thickness_thru_mm", yield_strength "yield_strength_mpa",
            tensile_strength "tensile_strength_mpa",
            tensile_strength_max "tensile_strength_max_mpa", note "note"],
    );
    read_back(
        "ply_bearing_strengths",
        PlyBearing::all(),
        columns![PlyBearing; name "name", edge_distance_ratio "edge_distance_ratio",
            ultimate_strength "ultimate_strength_ksi", yield_strength "yield_strength_ksi"],
    );
    read_back(
        "timber",
        Timber::all(),
        columns![Timber; name "name", publisher "publisher",
            specific_gravity "specific_gravity",
            characteristic_density "characteristic_density_kg_m3", note "note"],
    );
    read_back(
        "timber_compression",
        TimberCompression::all(),
        columns![TimberCompression; name "name", design_value "design_value_ksi",
            characteristic "characteristic_mpa", note "note"],
    );
}

#[test]
fn threads() {
    let cells = read_back(
        "threads_unified",
        UnifiedThread::all(),
        columns![UnifiedThread; size "size", nominal_diameter "nominal_diameter_in",
            threads_per_inch "threads_per_inch", tensile_stress_area "tensile_stress_area_in2",
            minor_area "minor_area_in2"],
    );
    assert_eq!(cells, 281 * 5);
    read_back(
        "threads_metric",
        MetricThread::all(),
        columns![MetricThread; nominal_diameter "nominal_diameter_mm", pitch "pitch_mm",
            iso261_choice "iso261_choice", iso262_selected "iso262_selected",
            tensile_stress_area "tensile_stress_area_mm2", note "note"],
    );
}

#[test]
fn thread_tolerances() {
    read_back(
        "unified_thread_classes",
        UnifiedClassRow::all(),
        columns![UnifiedClassRow; pitch_tolerance_factor "pitch_tolerance_factor",
            allowance_factor "allowance_factor",
            major_tolerance_factor "major_tolerance_factor"],
    );
    read_back(
        "unified_limit_exceptions",
        UnifiedLimitException::all(),
        columns![UnifiedLimitException; size "size", nominal_diameter "nominal_diameter_in",
            threads_per_inch "threads_per_inch", allowance "allowance_in",
            tolerance_diameter "tolerance_diameter_in", note "note"],
    );
    read_back(
        "metric_thread_deviations",
        MetricDeviation::all(),
        columns![MetricDeviation; position "position", pitch "pitch_mm",
            deviation "deviation_um"],
    );
    read_back(
        "metric_crest_tolerances",
        CrestTolerance::all(),
        columns![CrestTolerance; pitch "pitch_mm", grade "grade", tolerance "tolerance_um"],
    );
    read_back(
        "metric_pitch_diameter_tolerances",
        PitchDiameterTolerance::all(),
        columns![PitchDiameterTolerance; diameter_over "diameter_over_mm",
            diameter_thru "diameter_thru_mm", pitch "pitch_mm", grade "grade",
            tolerance "tolerance_um"],
    );
    read_back(
        "metric_engagement_lengths",
        EngagementLength::all(),
        columns![EngagementLength; diameter_over "diameter_over_mm",
            diameter_thru "diameter_thru_mm", pitch "pitch_mm", normal_over "normal_over_mm",
            normal_thru "normal_thru_mm"],
    );
}

#[test]
fn grades() {
    read_back(
        "sae_j429_grades",
        SaeGradeRow::all(),
        columns![SaeGradeRow; size_from "size_from_in", size_over "size_over_in",
            size_thru "size_thru_in", length_over "length_over_in", length_thru "length_thru_in",
            proof_stress "proof_stress_ksi", yield_strength "yield_strength_ksi",
            tensile_strength "tensile_strength_ksi", core_hardness_min "core_hardness_min",
            core_hardness_max "core_hardness_max",
            surface_hardness_max_hr30n "surface_hardness_max_hr30n",
            elongation_min "elongation_min_pct",
            reduction_of_area_min "reduction_of_area_min_pct", tempering_min "tempering_min_f",
            for_bolts "for_bolts", for_screws "for_screws", for_studs "for_studs",
            for_sems "for_sems", material "material", note "note"],
    );
    read_back(
        "astm_grades",
        AstmGradeRow::all_inch(),
        columns![AstmGradeRow; size_from "size_from_in", size_over "size_over_in",
            size_thru "size_thru_in", proof_stress "proof_stress_ksi",
            yield_strength "yield_strength_ksi", tensile_strength "tensile_strength_ksi",
            tensile_strength_max "tensile_strength_max_ksi",
            core_hardness_min "core_hardness_min", core_hardness_max "core_hardness_max",
            elongation_min "elongation_min_pct",
            reduction_of_area_min "reduction_of_area_min_pct", tempering_min "tempering_min_f",
            product "product", for_hex_screws "for_hex_screws", material "material",
            note "note"],
    );
    read_back(
        "iso_3506_1_classes",
        StainlessClassRow::all(),
        columns![StainlessClassRow; size_from "size_from_mm", size_over "size_over_mm", size_thru "size_thru_mm",
            tensile_strength "tensile_strength_mpa", yield_strength "yield_strength_mpa",
            elongation_diameters_min "elongation_diameters_min", vickers_min "vickers_min",
            vickers_max "vickers_max", brinell_min "brinell_min", brinell_max "brinell_max",
            rockwell_c_min "rockwell_c_min", rockwell_c_max "rockwell_c_max",
            tempering_min "tempering_min_c", material "material", note "note"],
    );
    let stainless = table("iso_3506_1_classes");
    for (row, cells) in StainlessClassRow::all().iter().zip(&stainless.rows) {
        assert_eq!(row.class.to_string(), cells[stainless.column("class")]);
        // The name of a class is a tenth of its tensile strength.
        let (_, tenth) = cells[0].split_once('-').unwrap();
        let strength = 10.0 * tenth.parse::<f64>().unwrap();
        assert!((row.tensile_strength.get::<megapascal>() - strength).abs() < 1e-9);
        assert!(row.yield_strength < row.tensile_strength);
    }
    let astm = table("astm_grades");
    for (row, cells) in AstmGradeRow::all_inch().iter().zip(&astm.rows) {
        assert_eq!(row.grade.to_string(), cells[astm.column("grade")]);
    }
    read_back(
        "iso_898_1_classes",
        PropertyClassRow::all(),
        columns![PropertyClassRow; size_from "size_from_mm", size_over "size_over_mm",
            size_thru "size_thru_mm", tensile_strength_nominal "tensile_strength_nominal_mpa",
            tensile_strength "tensile_strength_mpa",
            yield_strength_nominal "yield_strength_nominal_mpa",
            yield_strength "yield_strength_mpa", proof_stress "proof_stress_mpa",
            proof_to_yield_ratio "proof_to_yield_ratio", elongation_min "elongation_min_pct",
            elongation_full_size_min "elongation_full_size_min",
            reduction_of_area_min "reduction_of_area_min_pct", vickers_min "vickers_min",
            vickers_max "vickers_max", brinell_min "brinell_min", brinell_max "brinell_max",
            rockwell_b_min "rockwell_b_min", rockwell_b_max "rockwell_b_max",
            rockwell_c_min "rockwell_c_min", rockwell_c_max "rockwell_c_max",
            tempering_min "tempering_min_c", material "material", note "note"],
    );
}

#[test]
fn nuts() {
    read_back(
        "nuts_inch",
        Nut::all_inch(),
        columns![Nut; standard "standard", size "size", nominal_diameter "nominal_diameter_in",
            width_across_flats_basic "width_across_flats_basic_in",
            width_across_flats_max "width_across_flats_max_in",
            width_across_flats_min "width_across_flats_min_in",
            width_across_corners_max "width_across_corners_max_in",
            width_across_corners_min "width_across_corners_min_in",
            height_basic "height_basic_in", height_max "height_max_in",
            height_min "height_min_in", wrenching_height_min "wrenching_height_min_in",
            flange_diameter_max "flange_diameter_max_in",
            flange_diameter_min "flange_diameter_min_in",
            countersink_diameter_max "countersink_diameter_max_in",
            unslotted_height_max "unslotted_height_max_in",
            unslotted_height_min "unslotted_height_min_in", slot_width_max "slot_width_max_in",
            slot_width_min "slot_width_min_in", thread_series "thread_series", note "note"],
    );
    read_back(
        "nuts_metric",
        Nut::all_metric(),
        columns![Nut; standard "standard", size "size", nominal_diameter "nominal_diameter_mm",
            pitch "pitch_mm", height_max "height_max_mm", height_min "height_min_mm",
            thread_height_min "thread_height_min_mm",
            wrenching_height_min "wrenching_height_min_mm",
            width_across_flats_max "width_across_flats_max_mm",
            width_across_flats_min "width_across_flats_min_mm",
            width_across_corners_max "width_across_corners_max_mm",
            width_across_corners_min "width_across_corners_min_mm",
            flange_diameter_max "flange_diameter_max_mm",
            bearing_diameter_min "bearing_diameter_min_mm",
            countersink_diameter_max "countersink_diameter_max_mm",
            countersink_diameter_min "countersink_diameter_min_mm",
            flange_thickness_min "flange_thickness_min_mm",
            unslotted_height_max "unslotted_height_max_mm",
            unslotted_height_min "unslotted_height_min_mm", slot_width_max "slot_width_max_mm",
            slot_width_min "slot_width_min_mm", note "note"],
    );
}

#[test]
fn nut_grades() {
    read_back(
        "nut_grades_inch",
        NutGradeRow::all_inch(),
        columns![NutGradeRow; grade "grade", size_from "size_from_in", size_over "size_over_in",
            size_thru "size_thru_in", proof_stress "proof_stress_ksi",
            proof_stress_overtapped "proof_stress_overtapped_ksi", hardness_min "hardness_min",
            hardness_max "hardness_max", note "note"],
    );
    read_back(
        "nut_grades_metric",
        NutGradeRow::all_metric(),
        columns![NutGradeRow; grade "grade", size_from "size_from_mm", size_over "size_over_mm",
            size_thru "size_thru_mm", proof_stress "proof_stress_mpa", hardness_min "hardness_min",
            hardness_max "hardness_max", note "note"],
    );
    read_back(
        "nut_pairings",
        NutPairing::all(),
        columns![NutPairing; bolt "bolt", size_over "size_over_in", size_thru "size_thru_in",
            nut "nut", note "note"],
    );
}

#[test]
fn astm_grades_metric() {
    read_back(
        "astm_grades_metric",
        AstmGradeRow::all_metric(),
        columns![AstmGradeRow; size_from "size_from_mm", size_thru "size_thru_mm",
            proof_stress "proof_stress_mpa", yield_strength "yield_strength_mpa",
            tensile_strength "tensile_strength_mpa",
            tensile_strength_max "tensile_strength_max_mpa",
            core_hardness_min "core_hardness_min", core_hardness_max "core_hardness_max",
            product "product", for_hex_screws "for_hex_screws", material "material", note "note"],
    );
}

#[test]
fn strengths() {
    read_back(
        "design_stresses_inch",
        DesignStress::all_inch(),
        columns![DesignStress; stress "stress_ksi",
            share_of_tensile "share_of_tensile", note "note"],
    );
    read_back(
        "design_stresses_metric",
        DesignStress::all_metric(),
        columns![DesignStress; stress "stress_mpa",
            share_of_tensile "share_of_tensile", note "note"],
    );
    read_back(
        "shear_ratios",
        ShearRatio::all(),
        columns![ShearRatio; bolts "bolts", shear_to_tensile "shear_to_tensile"],
    );
    read_back(
        "published_loads",
        PublishedLoad::all(),
        columns![PublishedLoad; size "size", nominal_diameter "nominal_diameter_in",
            threads_per_inch "threads_per_inch", load "load_lbf", note "note"],
    );
}

#[test]
fn anodic_indices() {
    read_back(
        "anodic_indices",
        AnodicIndex::all(),
        columns![AnodicIndex; anodic_index "anodic_index_v", note "note"],
    );
}

#[test]
fn endurance_strengths() {
    read_back(
        "endurance_strengths_inch",
        EnduranceRow::all_inch(),
        columns![EnduranceRow; bolt "bolt", size_from "size_from_in", size_thru "size_thru_in",
            endurance_strength "endurance_strength_ksi"],
    );
    read_back(
        "endurance_strengths_metric",
        EnduranceRow::all_metric(),
        columns![EnduranceRow; bolt "bolt", size_from "size_from_mm", size_thru "size_thru_mm",
            endurance_strength "endurance_strength_mpa"],
    );
}

#[test]
fn head_marks() {
    read_back(
        "head_marks",
        HeadMark::all(),
        columns![HeadMark; bolt "bolt", lines "lines", letters "letters",
            underlined "underlined", note "note"],
    );
}

#[test]
fn washers() {
    read_back(
        "washers_inch",
        Washer::all_inch(),
        columns![Washer; standard "standard", size "size", nominal_diameter "nominal_diameter_in",
            inside_diameter_nominal "inside_diameter_nominal_in",
            inside_diameter_max "inside_diameter_max_in",
            inside_diameter_min "inside_diameter_min_in",
            outside_diameter_nominal "outside_diameter_nominal_in",
            outside_diameter_max "outside_diameter_max_in",
            outside_diameter_min "outside_diameter_min_in",
            thickness_nominal "thickness_nominal_in", thickness_max "thickness_max_in",
            thickness_min "thickness_min_in", section_width_min "section_width_min_in",
            note "note"],
    );
    read_back(
        "washers_metric",
        Washer::all_metric(),
        columns![Washer; standard "standard", size "size", nominal_diameter "nominal_diameter_mm",
            inside_diameter_nominal "inside_diameter_nominal_mm",
            inside_diameter_max "inside_diameter_max_mm",
            inside_diameter_min "inside_diameter_min_mm",
            outside_diameter_nominal "outside_diameter_nominal_mm",
            outside_diameter_max "outside_diameter_max_mm",
            outside_diameter_min "outside_diameter_min_mm",
            thickness_nominal "thickness_nominal_mm", thickness_max "thickness_max_mm",
            thickness_min "thickness_min_mm", note "note"],
    );
}

#[test]
fn holes() {
    read_back(
        "clearance_holes_inch",
        ClearanceHole::all_inch(),
        columns![ClearanceHole; standard "standard", size "size",
            nominal_diameter "nominal_diameter_in", drill "drill",
            diameter_min "diameter_min_in", diameter_max "diameter_max_in"],
    );
    read_back(
        "clearance_holes_metric",
        ClearanceHole::all_metric(),
        columns![ClearanceHole; standard "standard", size "size",
            nominal_diameter "nominal_diameter_mm", diameter_min "diameter_min_mm"],
    );
    read_back(
        "structural_holes_inch",
        StructuralHole::all_inch(),
        columns![StructuralHole; size "size", nominal_diameter "nominal_diameter_in",
            standard "standard_in", oversize "oversize_in", slot_width "slot_width_in",
            short_slot_length "short_slot_length_in", long_slot_length "long_slot_length_in",
            note "note"],
    );
    read_back(
        "structural_holes_metric",
        StructuralHole::all_metric(),
        columns![StructuralHole; size "size", nominal_diameter "nominal_diameter_mm",
            standard "standard_mm", oversize "oversize_mm", slot_width "slot_width_mm",
            short_slot_length "short_slot_length_mm", long_slot_length "long_slot_length_mm",
            note "note"],
    );
    read_back(
        "edge_distances_inch",
        EdgeDistance::all_inch(),
        columns![EdgeDistance; size "size", nominal_diameter "nominal_diameter_in",
            least "least_in", sheared "sheared_in", oversize_addition "oversize_addition_in",
            short_slot_addition "short_slot_addition_in", note "note"],
    );
    read_back(
        "edge_distances_metric",
        EdgeDistance::all_metric(),
        columns![EdgeDistance; size "size", nominal_diameter "nominal_diameter_mm",
            least "least_mm", sheared "sheared_mm", oversize_addition "oversize_addition_mm",
            short_slot_addition "short_slot_addition_mm", note "note"],
    );
    read_back(
        "holes_en_1090",
        EnHole::all(),
        columns![EnHole; diameter_from "diameter_from_mm", diameter_thru "diameter_thru_mm",
            normal_clearance "normal_clearance_mm", oversize_clearance "oversize_clearance_mm",
            short_slot_clearance "short_slot_clearance_mm",
            long_slot_clearance_ratio "long_slot_clearance_ratio", note "note"],
    );
    read_back(
        "tap_drills_inch",
        TapDrill::all_inch(),
        columns![TapDrill; size "size", nominal_diameter "nominal_diameter_in",
            threads_per_inch "threads_per_inch", drill "drill",
            drill_diameter "drill_diameter_in", thread "thread_pct", note "note"],
    );
    read_back(
        "tap_drills_metric",
        TapDrill::all_metric(),
        columns![TapDrill; nominal_diameter "nominal_diameter_mm", pitch "pitch_mm",
            drill_diameter "drill_diameter_mm", thread "thread_pct", note "note"],
    );
}

#[test]
fn inch_screws() {
    read_back(
        "hex_cap_screws_inch",
        HexCapScrew::all(),
        columns![HexCapScrew; size "size", nominal_diameter "nominal_diameter_in",
            coarse_threads_per_inch "coarse_threads_per_inch",
            body_diameter_max "body_diameter_max_in", body_diameter_min "body_diameter_min_in",
            width_across_flats_basic "width_across_flats_basic_in",
            width_across_flats_max "width_across_flats_max_in",
            width_across_flats_min "width_across_flats_min_in",
            width_across_corners_max "width_across_corners_max_in",
            width_across_corners_min "width_across_corners_min_in",
            head_height_basic "head_height_basic_in", head_height_max "head_height_max_in",
            head_height_min "head_height_min_in",
            wrenching_height_min "wrenching_height_min_in",
            fillet_radius_max "fillet_radius_max_in", fillet_radius_min "fillet_radius_min_in",
            washer_face_thickness_max "washer_face_thickness_max_in",
            washer_face_thickness_min "washer_face_thickness_min_in",
            thread_length_short "thread_length_short_in",
            thread_length_long "thread_length_long_in",
            transition_length "transition_length_in",
            bearing_runout_max "bearing_runout_max_in",
            full_thread_run_out_max_pitches "full_thread_run_out_max_pitches", note "note"],
    );
    read_back(
        "hex_cap_screw_full_thread_inch",
        FullThreadLimit::all(),
        columns![FullThreadLimit; size "size", nominal_diameter "nominal_diameter_in",
            full_thread_length_max "full_thread_length_max_in",
            part_thread_length_min "part_thread_length_min_in",
            thread_length_min "thread_length_min_in", thread_length_max "thread_length_max_in",
            note "note"],
    );
    read_back(
        "hex_cap_screw_length_tolerances_inch",
        InchLengthTolerance::cap_screws(),
        columns![InchLengthTolerance; size_from "size_from_in", size_thru "size_thru_in",
            length_over "length_over_in", length_thru "length_thru_in",
            tolerance_plus "tolerance_plus_in", tolerance_minus "tolerance_minus_in"],
    );
    read_back(
        "hex_cap_screw_stock_lengths_inch",
        StockStep::all(),
        columns![StockStep; size_from "size_from_in", size_thru "size_thru_in",
            length_from "length_from_in", length_thru "length_thru_in",
            increment "increment_in", note "note"],
    );
}

#[test]
fn metric_screws() {
    read_back(
        "hex_screws_metric",
        HexScrew::all(),
        columns![HexScrew; size "size", nominal_diameter "nominal_diameter_mm", pitch "pitch_mm",
            thread_length_short "thread_length_short_mm",
            thread_length_medium "thread_length_medium_mm",
            thread_length_long "thread_length_long_mm",
            body_diameter_max "body_diameter_max_mm", body_diameter_min "body_diameter_min_mm",
            bearing_diameter_min "bearing_diameter_min_mm",
            head_height_nominal "head_height_nominal_mm", head_height_min "head_height_min_mm",
            head_height_max "head_height_max_mm",
            width_across_flats_max "width_across_flats_max_mm",
            width_across_flats_min "width_across_flats_min_mm",
            width_across_corners_min "width_across_corners_min_mm",
            washer_face_thickness_min "washer_face_thickness_min_mm",
            washer_face_thickness_max "washer_face_thickness_max_mm",
            transition_diameter_max "transition_diameter_max_mm",
            fillet_radius_min "fillet_radius_min_mm",
            full_thread_run_out_max "full_thread_run_out_max_mm",
            full_thread_run_out_min "full_thread_run_out_min_mm",
            part_thread_length_from "part_thread_length_from_mm",
            part_thread_length_thru "part_thread_length_thru_mm",
            full_thread_length_from "full_thread_length_from_mm",
            full_thread_length_thru "full_thread_length_thru_mm", note "note"],
    );
    read_back(
        "length_tolerances_metric",
        LengthTolerance::all(),
        columns![LengthTolerance; length_over "length_over_mm", length_thru "length_thru_mm",
            tolerance "tolerance_mm"],
    );
    read_back(
        "stock_lengths_metric",
        StockLength::all(),
        columns![StockLength; nominal_length "nominal_length_mm", preferred "preferred",
            hex_screws "hex_screws", note "note"],
    );
}

#[test]
fn bolts() {
    read_back(
        "hex_bolts_inch",
        HexBolt::all(),
        columns![HexBolt; size "size", nominal_diameter "nominal_diameter_in",
            body_diameter_max "body_diameter_max_in", body_diameter_min "body_diameter_min_in",
            width_across_flats_max "width_across_flats_max_in",
            width_across_flats_min "width_across_flats_min_in",
            width_across_corners_max "width_across_corners_max_in",
            width_across_corners_min "width_across_corners_min_in",
            head_height_basic "head_height_basic_in", head_height_max "head_height_max_in",
            head_height_min "head_height_min_in", fillet_radius_max "fillet_radius_max_in",
            fillet_radius_min "fillet_radius_min_in", thread_length_short "thread_length_short_in",
            thread_length_long "thread_length_long_in", note "note"],
    );
    read_back(
        "hex_bolt_length_tolerances_inch",
        InchLengthTolerance::hex_bolts(),
        columns![InchLengthTolerance; size_from "size_from_in", size_thru "size_thru_in",
            length_over "length_over_in", length_thru "length_thru_in",
            tolerance_plus "tolerance_plus_in", tolerance_minus "tolerance_minus_in"],
    );
    read_back(
        "structural_bolts_inch",
        StructuralBolt::all_inch(),
        columns![StructuralBolt; standard "standard", size "size",
            nominal_diameter "nominal_diameter_in", threads_per_inch "threads_per_inch",
            body_diameter_max "body_diameter_max_in", body_diameter_min "body_diameter_min_in",
            width_across_flats_basic "width_across_flats_basic_in",
            width_across_flats_max "width_across_flats_max_in",
            width_across_flats_min "width_across_flats_min_in",
            width_across_corners_max "width_across_corners_max_in",
            width_across_corners_min "width_across_corners_min_in",
            head_height_basic "head_height_basic_in", head_height_max "head_height_max_in",
            head_height_min "head_height_min_in",
            washer_face_thickness_max "washer_face_thickness_max_in",
            washer_face_thickness_min "washer_face_thickness_min_in",
            fillet_radius_max "fillet_radius_max_in",
            fillet_radius_min "fillet_radius_min_in", bearing_runout_max "bearing_runout_max_in",
            thread_length "thread_length_in", transition_length "transition_length_in",
            part_thread_length_min "part_thread_length_min_in",
            length_minus_short "length_minus_short_in", length_minus_long "length_minus_long_in",
            note "note"],
    );
    read_back(
        "hr_bolts",
        HrBolt::all(),
        columns![HrBolt; size "size", nominal_diameter "nominal_diameter_mm", pitch "pitch_mm", thread_length_short "thread_length_short_mm", thread_length_medium "thread_length_medium_mm", thread_length_long "thread_length_long_mm", body_diameter_max "body_diameter_max_mm", body_diameter_min "body_diameter_min_mm", bearing_diameter_min "bearing_diameter_min_mm", head_height_nominal "head_height_nominal_mm", head_height_max "head_height_max_mm", head_height_min "head_height_min_mm", wrenching_height_min "wrenching_height_min_mm", width_across_flats_max "width_across_flats_max_mm", width_across_flats_min "width_across_flats_min_mm", width_across_corners_min "width_across_corners_min_mm", washer_face_thickness_max "washer_face_thickness_max_mm", washer_face_thickness_min "washer_face_thickness_min_mm", transition_diameter_max "transition_diameter_max_mm", fillet_radius_min "fillet_radius_min_mm"],
    );
    read_back(
        "structural_bolts_metric",
        StructuralBolt::all_metric(),
        columns![StructuralBolt; standard "standard", size "size",
            nominal_diameter "nominal_diameter_mm", pitch "pitch_mm",
            body_diameter_max "body_diameter_max_mm", body_diameter_min "body_diameter_min_mm",
            bearing_diameter_min "bearing_diameter_min_mm", head_height_max "head_height_max_mm",
            head_height_min "head_height_min_mm",
            width_across_flats_max "width_across_flats_max_mm",
            width_across_flats_min "width_across_flats_min_mm",
            width_across_corners_min "width_across_corners_min_mm",
            washer_face_thickness_max "washer_face_thickness_max_mm",
            washer_face_thickness_min "washer_face_thickness_min_mm",
            transition_diameter_max "transition_diameter_max_mm",
            fillet_radius_min "fillet_radius_min_mm", thread_length "thread_length_mm",
            transition_length "transition_length_mm"],
    );
}

#[test]
fn other_metric_screws() {
    read_back(
        "hex_cap_screws_metric",
        MetricHexCapScrew::all(),
        columns![MetricHexCapScrew; size "size", nominal_diameter "nominal_diameter_mm",
            pitch "pitch_mm", thread_length_short "thread_length_short_mm",
            thread_length_medium "thread_length_medium_mm",
            thread_length_long "thread_length_long_mm", body_diameter_max "body_diameter_max_mm",
            body_diameter_min "body_diameter_min_mm",
            bearing_diameter_min "bearing_diameter_min_mm", head_height_max "head_height_max_mm",
            head_height_min "head_height_min_mm",
            width_across_flats_max "width_across_flats_max_mm",
            width_across_flats_min "width_across_flats_min_mm",
            width_across_corners_min "width_across_corners_min_mm",
            washer_face_thickness_max "washer_face_thickness_max_mm",
            washer_face_thickness_min "washer_face_thickness_min_mm", note "note"],
    );
    read_back(
        "hex_screws_metric_fine",
        FineHexScrew::all(),
        columns![FineHexScrew; size "size", nominal_diameter "nominal_diameter_mm",
            pitch "pitch_mm", thread_length_short "thread_length_short_mm",
            thread_length_medium "thread_length_medium_mm",
            thread_length_long "thread_length_long_mm"],
    );
}

#[test]
fn socket_screws() {
    read_back(
        "socket_head_cap_screws_inch",
        SocketHeadCapScrew::all_inch(),
        columns![SocketHeadCapScrew; standard "standard", size "size",
            nominal_diameter "nominal_diameter_in", body_diameter_max "body_diameter_max_in",
            body_diameter_min "body_diameter_min_in", head_diameter_max "head_diameter_max_in",
            head_diameter_min "head_diameter_min_in", head_height_max "head_height_max_in",
            head_height_min "head_height_min_in", key_size "key_size_in",
            key_engagement_min "key_engagement_min_in",
            transition_diameter_max "transition_diameter_max_in",
            transition_diameter_min "transition_diameter_min_in",
            wall_thickness_min "wall_thickness_min_in", thread_length "thread_length_in",
            note "note"],
    );
    read_back(
        "socket_head_cap_screws_metric",
        SocketHeadCapScrew::all_metric(),
        columns![SocketHeadCapScrew; standard "standard", size "size",
            nominal_diameter "nominal_diameter_mm", pitch "pitch_mm",
            body_diameter_max "body_diameter_max_mm", body_diameter_min "body_diameter_min_mm",
            head_diameter_max "head_diameter_max_mm",
            head_diameter_knurled_max "head_diameter_knurled_max_mm",
            head_diameter_min "head_diameter_min_mm", head_height_max "head_height_max_mm",
            head_height_min "head_height_min_mm", key_size "key_size_mm",
            key_engagement_min "key_engagement_min_mm",
            transition_diameter_max "transition_diameter_max_mm",
            bearing_diameter_min "bearing_diameter_min_mm",
            fillet_radius_min "fillet_radius_min_mm", wall_thickness_min "wall_thickness_min_mm",
            thread_length "thread_length_mm"],
    );
    read_back(
        "socket_head_grips_metric",
        SocketHeadGrip::all(),
        columns![SocketHeadGrip; size "size", nominal_diameter "nominal_diameter_mm",
            nominal_length "nominal_length_mm", body_length_min "body_length_min_mm",
            grip_gaging_length_max "grip_gaging_length_max_mm"],
    );
}

#[test]
fn aircraft_bolts() {
    read_back(
        "aircraft_bolts",
        AircraftBolt::all(),
        columns![AircraftBolt; name "name", nominal_diameter "nominal_diameter_in",
            threads_per_inch "threads_per_inch", shank_diameter_max "shank_diameter_max_in",
            shank_diameter_min "shank_diameter_min_in", thread_portion "thread_portion_in",
            grip_offset "grip_offset_in", length_offset "length_offset_in",
            grip_tolerance "grip_tolerance_in", length_tolerance_plus "length_tolerance_plus_in",
            length_tolerance_minus "length_tolerance_minus_in", note "note"],
    );
    read_back(
        "aircraft_bolt_grips",
        AircraftGripRow::all(),
        columns![AircraftGripRow; bolt "bolt", dash "dash", grip "grip_in", length "length_in",
            note "note"],
    );
}

/// Source and basis, which make up `provenance`, read back as text.
#[test]
#[allow(clippy::too_many_lines)] // one line a table
fn provenance_of_every_row() {
    use shankline::source::{Basis, Provenance, Source};
    fn check(name: &str, found: Vec<Provenance>) {
        let table = table(name);
        let (basis, source) = (table.column("basis"), table.column("source"));
        assert_eq!(table.rows.len(), found.len(), "{name}");
        for (text, found) in table.rows.iter().zip(found) {
            let word = match found.basis {
                Basis::Published => "published",
                Basis::Reproduced => "reproduced",
                Basis::Computed => "computed",
                Basis::Memory => "memory",
                _ => "unknown",
            };
            assert_eq!(
                (word, found.source.key),
                (text[basis].as_str(), text[source].as_str())
            );
        }
    }
    check(
        "threads_unified",
        UnifiedThread::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "threads_metric",
        MetricThread::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "unified_thread_classes",
        UnifiedClassRow::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "unified_limit_exceptions",
        UnifiedLimitException::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "metric_thread_deviations",
        MetricDeviation::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "metric_crest_tolerances",
        CrestTolerance::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "metric_pitch_diameter_tolerances",
        PitchDiameterTolerance::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "metric_engagement_lengths",
        EngagementLength::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "sae_j429_grades",
        SaeGradeRow::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "astm_grades",
        AstmGradeRow::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "iso_3506_1_classes",
        StainlessClassRow::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "iso_898_1_classes",
        PropertyClassRow::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "nuts_inch",
        Nut::all_inch().iter().map(|r| r.provenance).collect(),
    );
    check(
        "nuts_metric",
        Nut::all_metric().iter().map(|r| r.provenance).collect(),
    );
    check(
        "nut_grades_inch",
        NutGradeRow::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "nut_grades_metric",
        NutGradeRow::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "nut_pairings",
        NutPairing::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "astm_grades_metric",
        AstmGradeRow::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "design_stresses_inch",
        DesignStress::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "design_stresses_metric",
        DesignStress::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "shear_ratios",
        ShearRatio::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "published_loads",
        PublishedLoad::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "head_marks",
        HeadMark::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "endurance_strengths_inch",
        EnduranceRow::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "endurance_strengths_metric",
        EnduranceRow::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "washers_inch",
        Washer::all_inch().iter().map(|r| r.provenance).collect(),
    );
    check(
        "washers_metric",
        Washer::all_metric().iter().map(|r| r.provenance).collect(),
    );
    check(
        "hex_cap_screws_inch",
        HexCapScrew::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "hex_cap_screw_full_thread_inch",
        FullThreadLimit::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hex_cap_screw_length_tolerances_inch",
        InchLengthTolerance::cap_screws()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hex_cap_screw_stock_lengths_inch",
        StockStep::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "hex_screws_metric",
        HexScrew::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "length_tolerances_metric",
        LengthTolerance::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "stock_lengths_metric",
        StockLength::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "clearance_holes_inch",
        ClearanceHole::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "clearance_holes_metric",
        ClearanceHole::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "structural_holes_inch",
        StructuralHole::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "structural_holes_metric",
        StructuralHole::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "edge_distances_inch",
        EdgeDistance::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "edge_distances_metric",
        EdgeDistance::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "holes_en_1090",
        EnHole::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "tap_drills_inch",
        TapDrill::all_inch().iter().map(|r| r.provenance).collect(),
    );
    check(
        "tap_drills_metric",
        TapDrill::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "nut_factors",
        NutFactorRow::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "friction_classes",
        FrictionClassRow::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "friction_surfaces",
        FrictionSurface::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "tightening_scatter",
        TighteningScatter::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "embedments",
        Embedment::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "turns",
        NutTurn::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "aircraft_torques",
        AircraftTorque::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "prevailing_torques_inch",
        PrevailingTorque::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "prevailing_torques_metric",
        PrevailingTorque::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "pretensions_inch",
        Pretension::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "pretensions_metric",
        Pretension::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "expansions",
        Expansion::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "service_temperatures_c",
        ServiceTemperature::all_celsius()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "service_temperatures_f",
        ServiceTemperature::all_fahrenheit()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "anodic_indices",
        AnodicIndex::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "ply_materials",
        PlyMaterial::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "ply_strengths_metric",
        PlyStrength::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "ply_bearing_strengths",
        PlyBearing::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "timber",
        Timber::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "timber_compression",
        TimberCompression::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hex_bolts_inch",
        HexBolt::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "hex_bolt_length_tolerances_inch",
        InchLengthTolerance::hex_bolts()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "structural_bolts_inch",
        StructuralBolt::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hr_bolts",
        HrBolt::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "structural_bolts_metric",
        StructuralBolt::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hex_cap_screws_metric",
        MetricHexCapScrew::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hex_screws_metric_fine",
        FineHexScrew::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "socket_head_cap_screws_inch",
        SocketHeadCapScrew::all_inch()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "socket_head_cap_screws_metric",
        SocketHeadCapScrew::all_metric()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "socket_head_grips_metric",
        SocketHeadGrip::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "aircraft_bolts",
        AircraftBolt::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "aircraft_bolt_grips",
        AircraftGripRow::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "surface_pressures",
        SurfacePressure::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "ply_surface_pressures",
        PlySurfacePressure::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "hot_yields",
        HotYield::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "ply_temperature_limits",
        PlyTemperatureLimit::all()
            .iter()
            .map(|r| r.provenance)
            .collect(),
    );
    check(
        "washer_hardnesses",
        WasherHardness::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "washer_pairings",
        WasherPairing::all().iter().map(|r| r.provenance).collect(),
    );
    check(
        "washer_rules",
        WasherRule::all().iter().map(|r| r.provenance).collect(),
    );
    let table = table("sources");
    for (text, source) in table.rows.iter().zip(Source::all()) {
        let found = [
            source.key,
            source.document,
            source.edition.unwrap_or(""),
            source.locator,
            source.read_in,
        ];
        assert_eq!(text.as_slice(), found);
    }
}
