//! Mechanical properties of bolt materials: SAE J429 and ASTM grades, ISO 898-1 and ISO 3506-1
//! property classes.
//!
//! The rows hold what the standards print. For "how strong is this grade at this size", ask
//! [`material::BoltGrade::strength`](crate::material::BoltGrade::strength), which applies the
//! size and length rules.

use super::generated;
use crate::names::{AstmGrade, PropertyClass, SaeGrade, StainlessClass};
use crate::source::{Basis, Provenance};
use crate::units::{Length, Ratio, Stress, ThermodynamicTemperature};

/// Scale of a hardness value.
///
/// ```
/// use shankline::tables::grades::{HardnessScale, SaeGradeRow};
/// assert_eq!(SaeGradeRow::all()[0].core_hardness_scale, HardnessScale::RockwellB);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HardnessScale {
    /// Rockwell B.
    RockwellB,
    /// Rockwell C.
    RockwellC,
    /// Brinell, with a ball of tungsten carbide.
    Brinell,
    /// Vickers.
    Vickers,
}

/// Which yield property ISO 898-1 states for a class.
///
/// ```
/// use shankline::tables::grades::{PropertyClassRow, YieldMeasure};
/// assert_eq!(PropertyClassRow::all()[0].yield_measure, YieldMeasure::LowerYield);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum YieldMeasure {
    /// Lower yield strength ReL, on a machined specimen.
    LowerYield,
    /// Stress at 0.0048 d non-proportional extension Rpf, on the full-size screw. For classes
    /// 4.8, 5.8 and 6.8 the standard gives it for the proof ratio only.
    FullSize,
    /// 0.2 % offset stress Rp0.2, on a machined specimen.
    Offset,
}

/// One row of SAE J429.
///
/// ```
/// use shankline::tables::grades::SaeGradeRow;
/// use shankline::units::ksi;
/// let row = &SaeGradeRow::all()[0];
/// assert_eq!(row.tensile_strength, ksi(60.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
#[allow(clippy::struct_excessive_bools)] // one per kind of product the standard names
pub struct SaeGradeRow {
    /// Grade.
    pub grade: SaeGrade,
    /// Smallest nominal size, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_from: Option<Length>,
    /// Nominal size the row begins above, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_over: Option<Length>,
    /// Largest nominal size, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_thru: Length,
    /// Screw length the row begins above, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_over: Option<Length>,
    /// Longest screw the row holds for, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_thru: Option<Length>,
    /// Proof stress.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_stress: Stress,
    /// Minimum yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Minimum tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// Least core hardness on the scale of `core_hardness_scale`.
    pub core_hardness_min: f64,
    /// Greatest core hardness.
    pub core_hardness_max: f64,
    /// Scale of the core hardness.
    pub core_hardness_scale: HardnessScale,
    /// Greatest surface hardness, Rockwell 30N.
    pub surface_hardness_max_hr30n: Option<f64>,
    /// Least elongation of a machined specimen.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub elongation_min: Option<Ratio>,
    /// Least reduction of area of a machined specimen.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub reduction_of_area_min: Option<Ratio>,
    /// Least tempering temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tempering_min: Option<ThermodynamicTemperature>,
    /// The row holds for bolts.
    pub for_bolts: bool,
    /// The row holds for screws.
    pub for_screws: bool,
    /// The row holds for studs.
    pub for_studs: bool,
    /// The row holds for screw and washer assemblies (sems).
    pub for_sems: bool,
    /// Material and treatment.
    pub material: &'static str,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How hardness, elongation and reduction of area are known.
    pub hardness_basis: Basis,
    /// Source of the row.
    pub provenance: Provenance,
}

impl SaeGradeRow {
    /// Every row, in the order of the standard.
    ///
    /// ```
    /// assert_eq!(shankline::tables::grades::SaeGradeRow::all().len(), 13);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::sae_j429_grades::SAE_J429_GRADES
    }
}

/// One row of an ASTM bolt standard.
///
/// ```
/// use shankline::{material::AstmGrade, tables::grades::AstmGradeRow, units::ksi};
/// let b7: Vec<_> = AstmGradeRow::all_inch().iter().filter(|row| row.grade == AstmGrade::A193B7).collect();
/// assert_eq!(b7.len(), 3); // three ranges of size
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AstmGradeRow {
    /// Grade.
    pub grade: AstmGrade,
    /// Smallest nominal size, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_from: Option<Length>,
    /// Nominal sizes over this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_over: Option<Length>,
    /// Nominal sizes up to and including this; none for all sizes.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_thru: Option<Length>,
    /// Proof stress. None where the standard gives none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub proof_stress: Option<Stress>,
    /// Minimum yield strength. None where the standard gives none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Minimum tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// Greatest tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength_max: Option<Stress>,
    /// Least core hardness, on the scale of the next field.
    pub core_hardness_min: Option<f64>,
    /// Scale of the least core hardness.
    pub core_hardness_min_scale: Option<HardnessScale>,
    /// Greatest core hardness, on the scale of the next field.
    pub core_hardness_max: Option<f64>,
    /// Scale of the greatest core hardness.
    pub core_hardness_max_scale: Option<HardnessScale>,
    /// Minimum elongation of a machined specimen.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub elongation_min: Option<Ratio>,
    /// Minimum reduction of area of a machined specimen.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub reduction_of_area_min: Option<Ratio>,
    /// Lowest tempering temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tempering_min: Option<ThermodynamicTemperature>,
    /// What is made of it.
    pub product: &'static str,
    /// Whether hexagon bolts or screws are among them.
    pub for_hex_screws: bool,
    /// Material and treatment.
    pub material: &'static str,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// How the proof stress is known.
    pub proof_basis: Option<Basis>,
    /// How the hardness is known.
    pub hardness_basis: Option<Basis>,
    /// How elongation and reduction of area are known.
    pub ductility_basis: Option<Basis>,
    /// How the tempering temperature is known.
    pub tempering_basis: Option<Basis>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl AstmGradeRow {
    /// Every row of inch sizes, standard by standard.
    ///
    /// ```
    /// assert_eq!(shankline::tables::grades::AstmGradeRow::all_inch().len(), 62);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::astm_grades::ASTM_GRADES
    }

    /// Every row of metric sizes: F568M and the metric grades of F3125.
    ///
    /// ```
    /// assert_eq!(shankline::tables::grades::AstmGradeRow::all_metric().len(), 13);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::astm_grades_metric::ASTM_GRADES_METRIC
    }

    /// A row with every cell empty that the metric table lacks.
    pub(super) const BLANK: Self = Self {
        grade: AstmGrade::A307A,
        size_from: None,
        size_over: None,
        size_thru: None,
        proof_stress: None,
        yield_strength: None,
        tensile_strength: crate::units::ksi(0.0),
        tensile_strength_max: None,
        core_hardness_min: None,
        core_hardness_min_scale: None,
        core_hardness_max: None,
        core_hardness_max_scale: None,
        elongation_min: None,
        reduction_of_area_min: None,
        tempering_min: None,
        product: "",
        for_hex_screws: false,
        material: "",
        note: None,
        proof_basis: None,
        hardness_basis: None,
        ductility_basis: None,
        tempering_basis: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

/// One row of ISO 898-1 Table 3.
///
/// ```
/// use shankline::tables::grades::PropertyClassRow;
/// use shankline::units::megapascals;
/// let row = PropertyClassRow::all().iter().find(|row| row.size_over.is_some()).unwrap();
/// assert_eq!(row.proof_stress, megapascals(600.0)); // 8.8 above 16 mm
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PropertyClassRow {
    /// Property class.
    pub class: PropertyClass,
    /// Smallest nominal diameter, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_from: Option<Length>,
    /// Nominal diameter the row begins above, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_over: Option<Length>,
    /// Largest nominal diameter, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_thru: Length,
    /// Nominal tensile strength, the first number of the class times 100 MPa.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength_nominal: Stress,
    /// Minimum tensile strength Rm,min.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// Which yield property the next two fields are.
    pub yield_measure: YieldMeasure,
    /// Nominal yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength_nominal: Stress,
    /// Minimum yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength: Stress,
    /// Proof stress Sp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_stress: Stress,
    /// Proof stress over minimum yield, as printed.
    pub proof_to_yield_ratio: f64,
    /// Least elongation A of a machined specimen.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub elongation_min: Option<Ratio>,
    /// Least elongation Af of the full-size screw (a ratio of the diameter).
    pub elongation_full_size_min: Option<f64>,
    /// Least reduction of area Z of a machined specimen.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub reduction_of_area_min: Option<Ratio>,
    /// Least Vickers hardness.
    pub vickers_min: f64,
    /// Greatest Vickers hardness.
    pub vickers_max: f64,
    /// Least Brinell hardness.
    pub brinell_min: f64,
    /// Greatest Brinell hardness.
    pub brinell_max: f64,
    /// Least Rockwell B hardness.
    pub rockwell_b_min: Option<f64>,
    /// Greatest Rockwell B hardness.
    pub rockwell_b_max: Option<f64>,
    /// Least Rockwell C hardness.
    pub rockwell_c_min: Option<f64>,
    /// Greatest Rockwell C hardness.
    pub rockwell_c_max: Option<f64>,
    /// Least tempering temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tempering_min: Option<ThermodynamicTemperature>,
    /// How the tempering temperature is known.
    pub tempering_basis: Basis,
    /// Material and treatment.
    pub material: &'static str,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PropertyClassRow {
    /// Every row, in the order of the standard.
    ///
    /// ```
    /// assert_eq!(shankline::tables::grades::PropertyClassRow::all().len(), 12);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::iso_898_1_classes::ISO_898_1_CLASSES
    }
}

/// One row of ISO 3506-1: bolts and screws of stainless steel.
///
/// ```
/// use shankline::{material::StainlessClass, tables::grades::StainlessClassRow};
/// let mut rows = StainlessClassRow::all().iter();
/// let row = rows.find(|row| row.class == StainlessClass::A2_70).unwrap();
/// assert_eq!(row.elongation_diameters_min, 0.4);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StainlessClassRow {
    /// Property class: steel and strength.
    pub class: StainlessClass,
    /// Smallest nominal size, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_from: Option<Length>,
    /// Nominal size the row begins above, itself excluded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub size_over: Option<Length>,
    /// Nominal sizes up to and including this.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub size_thru: Length,
    /// Minimum tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// Minimum stress at 0.2 % permanent strain of the full-size screw.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength: Stress,
    /// Minimum elongation of the full-size screw after fracture, in nominal diameters.
    pub elongation_diameters_min: f64,
    /// Least Vickers hardness.
    pub vickers_min: Option<f64>,
    /// Greatest Vickers hardness.
    pub vickers_max: Option<f64>,
    /// Least Brinell hardness.
    pub brinell_min: Option<f64>,
    /// Greatest Brinell hardness.
    pub brinell_max: Option<f64>,
    /// Least Rockwell C hardness.
    pub rockwell_c_min: Option<f64>,
    /// Greatest Rockwell C hardness.
    pub rockwell_c_max: Option<f64>,
    /// Lowest tempering temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tempering_min: Option<ThermodynamicTemperature>,
    /// Kind of steel and its state.
    pub material: &'static str,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// How the hardness is known.
    pub hardness_basis: Option<Basis>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl StainlessClassRow {
    /// Every row, in the order of the standard.
    ///
    /// ```
    /// assert_eq!(shankline::tables::grades::StainlessClassRow::all().len(), 48);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::iso_3506_1_classes::ISO_3506_1_CLASSES
    }
}
