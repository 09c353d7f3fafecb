//! Materials of plies and members: modulus of elasticity, expansion, strengths, bearing strengths.

use alloc::{format, string::String};
use core::{fmt, str::FromStr};

use super::{generated, known, rows_of};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::names::Key;
use crate::source::{Basis, Provenance, Source};
use crate::units::{Length, SAME_LENGTH, Stress, TemperatureCoefficient, ThermodynamicTemperature};

/// What the strengths of a ply material are. Only some are minima that a design may rest on.
///
/// ```
/// use shankline::tables::plies::{PlyMaterial, StrengthKind};
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = PlyMaterial::find("ASTM A36 steel")?;
/// assert_eq!(plate.strength_kind, StrengthKind::SpecifiedMinimum);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StrengthKind {
    /// Minima of a material standard.
    SpecifiedMinimum,
    /// Minima estimated by a textbook.
    EstimatedMinimum,
    /// Values of a design table.
    DesignTable,
    /// A-basis or S-basis design values.
    AOrSBasis,
    /// A-basis design values: 99 % of the material is stronger, with 95 % confidence.
    ABasis,
    /// Design values of a report.
    DesignValue,
    /// Minima that the name of the grade states.
    GradeName,
    /// Typical values, not for design.
    Typical,
}

/// A material of plies, or of bolts as members.
///
/// The provenance of the row speaks for the yield and tensile strength; the other groups of values
/// have their own. Values at room temperature.
///
/// ```
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::{ksi, msi};
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = PlyMaterial::find("ASTM A36 steel")?;
/// assert_eq!((plate.elastic_modulus_min, plate.yield_strength), (msi(29.0), Some(ksi(36.0))));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyMaterial {
    /// Name, unique in the table.
    pub name: &'static str,
    /// Form and treatment.
    pub condition: Option<&'static str>,
    /// Modulus of elasticity, or the least where the source gives a range.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub elastic_modulus_min: Stress,
    /// Greatest modulus of elasticity, where the source gives a range.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub elastic_modulus_max: Option<Stress>,
    /// How the modulus of elasticity is known.
    pub elastic_modulus_basis: Basis,
    /// Source of the modulus of elasticity.
    pub elastic_modulus_source: &'static Source,
    /// Poisson's ratio.
    pub poisson_ratio: Option<f64>,
    /// How Poisson's ratio is known.
    pub poisson_ratio_basis: Option<Basis>,
    /// Coefficient of linear expansion.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub expansion: Option<TemperatureCoefficient>,
    /// Lower end of the temperatures it is the mean for.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub expansion_from: Option<ThermodynamicTemperature>,
    /// Upper end of the temperatures it is the mean for.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub expansion_thru: Option<ThermodynamicTemperature>,
    /// How the expansion is known.
    pub expansion_basis: Option<Basis>,
    /// Source of the expansion.
    pub expansion_source: Option<&'static Source>,
    /// Least thickness the strengths hold for, where one is known.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thickness_from: Option<Length>,
    /// Greatest thickness the strengths hold for, where one is known.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thickness_thru: Option<Length>,
    /// Yield strength; none where it goes by thickness: see [`at_thickness`](Self::at_thickness).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength: Option<Stress>,
    /// Greatest tensile strength the standard allows.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength_max: Option<Stress>,
    /// Ultimate strength in shear.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub shear_strength: Option<Stress>,
    /// How the shear strength is known.
    pub shear_strength_basis: Option<Basis>,
    /// What the strengths are.
    pub strength_kind: StrengthKind,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the strengths.
    pub provenance: Provenance,
}

/// Codes, in the order of the table.
const CODES: [&str; 34] = [
    "astm_a36_steel",
    "astm_a992_steel",
    "aisi_1018_steel",
    "aisi_1020_steel",
    "astm_a500_grade_b_steel_shaped",
    "astm_a500_grade_b_steel_round",
    "aisi_4130_steel",
    "s235_steel",
    "s275_steel",
    "s355_steel",
    "6061_t6_aluminium_typical",
    "6061_t6_aluminium_a_basis",
    "2024_t3_aluminium",
    "2024_t4_aluminium",
    "7075_t6_aluminium",
    "304_stainless_steel",
    "ductile_iron_60_40_18",
    "ductile_iron_65_45_12",
    "ductile_iron_80_55_06",
    "grey_cast_iron_class_30",
    "ti_6al_4v",
    "a_286_bolt_alloy",
    "300_series_stainless_bolts",
    "alloy_steel_bolts",
    "en_aw_5083_extruded",
    "en_aw_6005a_t6_extruded",
    "en_aw_6060_t6_extruded",
    "en_aw_6061_t6_extruded",
    "en_aw_6063_t6_extruded",
    "en_gjs_400_15",
    "en_gjs_450_10",
    "en_gjs_500_7",
    "en_gjs_600_3",
    "en_gjs_700_2",
];

/// Every row, as a key. Filled when the library is built.
#[allow(clippy::indexing_slicing)]
static KEYS: [&PlyMaterial; CODES.len()] = {
    let rows = &generated::ply_materials::PLY_MATERIALS;
    let mut keys = [&rows[0]; CODES.len()];
    let mut index = 0;
    while index < keys.len() {
        keys[index] = &rows[index];
        index += 1;
    }
    keys
};

impl Key for &'static PlyMaterial {
    const FAMILY: &'static str = "ply material";
    const ALL: &'static [Self] = &KEYS;

    /// Empty for what is not a row of the table.
    fn code(self) -> &'static str {
        let at = PlyMaterial::all()
            .iter()
            .position(|row| row.name == self.name);
        at.and_then(|at| CODES.get(at)).copied().unwrap_or_default()
    }

    fn label(self) -> &'static str {
        self.name
    }
}

impl FromStr for &'static PlyMaterial {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl PlyMaterial {
    /// Whether it is a steel such as the structural codes are written for: none that is stainless.
    pub(crate) fn is_carbon_steel(&self) -> bool {
        self.name.contains("steel") && !self.name.contains("stainless")
    }

    /// Every material.
    ///
    /// ```
    /// assert_eq!(shankline::tables::plies::PlyMaterial::all().len(), 34);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::ply_materials::PLY_MATERIALS
    }

    /// The material of a name, of a code or of as much of a name as means one material only ([`Key::read`]).
    ///
    /// # Errors
    ///
    /// [`Error::UnknownName`] for another name; the message gives the names that have its words, or the nearest.
    ///
    /// ```
    /// use shankline::tables::plies::PlyMaterial;
    /// assert!(PlyMaterial::find("ti-6al-4v").is_ok());
    /// assert_eq!(
    ///     PlyMaterial::find("6061-T6").unwrap_err().to_string(),
    ///     "\"6061-T6\" is not a known ply material; \
    ///      known are 6061-T6 aluminium, typical; 6061-T6 aluminium, A-basis (the nearest of 34)",
    /// );
    /// ```
    pub fn find(name: &str) -> Result<&'static Self, Error> {
        Key::read(name)
    }

    /// Bearing strengths, by rising edge distance; empty where none was read.
    ///
    /// ```
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(PlyMaterial::find("2024-T3 aluminium")?.bearing().len(), 2);
    /// assert!(PlyMaterial::find("ASTM A36 steel")?.bearing().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn bearing(&self) -> &'static [PlyBearing] {
        rows_of(PlyBearing::all(), &self.name, |row| row.name)
    }

    /// The bearing strength at an edge distance e (hole centre to edge) of e/D, D the hole: the row of the greatest
    /// tabled ratio that e/D reaches. Nothing is interpolated.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the material has no row, or e/D lies below the least of them, where the strength is
    /// found by test.
    ///
    /// ```
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::units::ksi;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = PlyMaterial::find("2024-T3 aluminium")?;
    /// assert_eq!(sheet.bearing_at(1.8)?.ultimate_strength, ksi(104.0));
    /// assert!(sheet.bearing_at(1.4).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn bearing_at(&self, edge_distance_ratio: f64) -> Result<&'static PlyBearing, Error> {
        // A ratio that was rounded to 1.5 reaches it.
        let reached = |row: &&PlyBearing| edge_distance_ratio >= row.edge_distance_ratio - 1e-9;
        let rows = self.bearing();
        rows.iter().rev().find(reached).ok_or_else(|| {
            let (subject, reason) = if rows.is_empty() {
                (
                    String::from(self.name),
                    "the table has none of this material",
                )
            } else {
                (
                    format!(
                        "{} at an edge distance of {edge_distance_ratio} D",
                        self.name
                    ),
                    "the table begins at a greater edge distance",
                )
            };
            Error::NoValue {
                quantity: "bearing strength",
                subject,
                reason,
            }
        })
    }

    /// The material with the strengths that hold at a thickness. At the border of two ranges the thinner one
    /// counts, as their standards print "up to and including".
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a thickness that is not positive and finite, or outside the range the strengths
    /// were published for.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let s355 = PlyMaterial::find("S355 steel")?;
    /// assert_eq!(s355.at_thickness(millimetres(16.0))?.yield_strength, Some(megapascals(355.0)));
    /// assert_eq!(s355.at_thickness(millimetres(20.0))?.yield_strength, Some(megapascals(345.0)));
    /// assert!(PlyMaterial::find("ASTM A36 steel")?.at_thickness(inches(9.0)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn at_thickness(&self, thickness: Length) -> Result<Self, Error> {
        sane_length("thickness", thickness)?;
        let rows = rows_of(PlyStrength::all(), &self.name, |row| row.name);
        let (from, thru) = match (rows.first(), rows.last()) {
            (Some(first), Some(last)) => (Some(first.thickness_from), Some(last.thickness_thru)),
            _ => (self.thickness_from, self.thickness_thru),
        };
        if from.is_some_and(|from| thickness < from - SAME_LENGTH)
            || thru.is_some_and(|thru| thickness > thru + SAME_LENGTH)
        {
            let allowed = match (from, thru) {
                (Some(from), Some(thru)) => Allowed::FromTo(from.into(), thru.into()),
                (Some(from), None) => Allowed::AtLeast(from.into()),
                (None, Some(thru)) => Allowed::AtMost(thru.into()),
                (None, None) => Allowed::Positive,
            };
            let quantity = format!("thickness of {}", self.name);
            return Err(out_of_range(quantity, thickness, allowed));
        }
        let row = rows
            .iter()
            .find(|row| thickness <= row.thickness_thru + SAME_LENGTH);
        Ok(row.map_or(*self, |row| Self {
            thickness_from: Some(row.thickness_from),
            thickness_thru: Some(row.thickness_thru),
            yield_strength: Some(row.yield_strength),
            tensile_strength: Some(row.tensile_strength),
            tensile_strength_max: row.tensile_strength_max,
            note: row.note,
            provenance: row.provenance,
            ..*self
        }))
    }

    /// What the user of this material must be told: that its strengths, modulus or expansion were
    /// recalled, not read, or that its strengths are typical and not for design.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let cautions = PlyMaterial::find("6061-T6 aluminium, typical")?.cautions();
    /// assert!(cautions.iter().any(|caution| *caution == Caution::TypicalStrength));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let modulus = known(self.elastic_modulus_source, self.elastic_modulus_basis);
        let expansion = self.expansion_source.zip(self.expansion_basis);
        self.strength_cautions()
            .with(Caution::from_memory("modulus of elasticity", modulus))
            .with(expansion.and_then(|(source, basis)| {
                Caution::from_memory("coefficient of expansion", known(source, basis))
            }))
    }

    /// What is to be told of its strengths alone.
    pub(crate) fn strength_cautions(&self) -> Cautions {
        let typical = self.strength_kind == StrengthKind::Typical;
        let strengths = [self.yield_strength, self.tensile_strength];
        let has_strength = strengths.iter().any(Option::is_some);
        Cautions::default()
            .with((typical && has_strength).then_some(Caution::TypicalStrength))
            .with(Caution::from_memory("set of strengths", self.provenance))
    }
}

impl fmt::Display for PlyMaterial {
    /// `ASTM A36 steel`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name)
    }
}

/// Strengths of a ply material in one range of thickness.
///
/// Over [`thickness_from`](Self::thickness_from), up to and including [`thickness_thru`](Self::thickness_thru);
/// the first range begins with its least thickness. [`PlyMaterial::at_thickness`] looks them up.
///
/// ```
/// use shankline::tables::plies::PlyStrength;
/// use shankline::units::{megapascals, millimetres};
/// let first = &PlyStrength::all()[0];
/// assert_eq!((first.name, first.thickness_thru), ("S235 steel", millimetres(16.0)));
/// assert_eq!((first.yield_strength, first.tensile_strength), (megapascals(235.0), megapascals(360.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyStrength {
    /// Name of the material.
    pub name: &'static str,
    /// Lower end of the thicknesses.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness_from: Length,
    /// Upper end of the thicknesses, included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness_thru: Length,
    /// Yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength: Stress,
    /// Least tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// Greatest tensile strength; none if the standard sets no limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength_max: Option<Stress>,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PlyStrength {
    /// Every row, by material and rising thickness.
    ///
    /// ```
    /// assert_eq!(shankline::tables::plies::PlyStrength::all().len(), 34);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::ply_strengths_metric::PLY_STRENGTHS_METRIC
    }
}

/// Bearing strength of a ply material at one edge distance, on bolt diameter times thickness.
///
/// ```
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::ksi;
/// # fn main() -> Result<(), shankline::Error> {
/// let sheet = PlyMaterial::find("6061-T6 aluminium, A-basis")?;
/// let near = &sheet.bearing()[0];
/// assert_eq!((near.edge_distance_ratio, near.ultimate_strength), (1.5, ksi(67.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyBearing {
    /// Name of the material.
    pub name: &'static str,
    /// Edge distance, hole centre to edge, over hole diameter.
    pub edge_distance_ratio: f64,
    /// Ultimate bearing strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub ultimate_strength: Stress,
    /// Bearing yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PlyBearing {
    /// Every row, by material.
    ///
    /// ```
    /// assert_eq!(shankline::tables::plies::PlyBearing::all().len(), 7);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::ply_bearing_strengths::PLY_BEARING_STRENGTHS
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::plies::PlyBearing;
    /// assert_eq!(PlyBearing::all()[0].cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("bearing strength", self.provenance))
    }
}
