//! Limiting surface pressures: what a material bears under a bolt head or a nut before it gives way.

use core::fmt;

use super::generated;
use super::methods;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::source::Method;
use crate::source::Provenance;
use crate::tables::plies::PlyMaterial;
use crate::units::Stress;

/// Editions of VDI 2230 whose tables of limiting surface pressures were read.
///
/// For mild steel they differ by nearly two (260 and 490 MPa), so that a value without its edition says nothing.
///
/// ```
/// use shankline::tables::surface::PressureEdition;
/// assert_eq!(PressureEdition::Vdi2230_2003.to_string(), "VDI 2230 Part 1:2003 Table A9");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PressureEdition {
    /// VDI 2230 of 1986.
    #[cfg_attr(feature = "serde", serde(rename = "vdi_2230_1986"))]
    Vdi2230_1986,
    /// VDI 2230 Part 1 of 2003, Table A9.
    #[cfg_attr(feature = "serde", serde(rename = "vdi_2230_2003"))]
    Vdi2230_2003,
}

impl PressureEdition {
    /// The document, for reports.
    ///
    /// ```
    /// use shankline::tables::surface::PressureEdition;
    /// assert_eq!(PressureEdition::Vdi2230_1986.method().citation, "VDI 2230:1986");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Vdi2230_1986 => methods::VDI2230_1986_PRESSURE,
            Self::Vdi2230_2003 => methods::VDI2230_2003_A9,
        }
    }
}

impl fmt::Display for PressureEdition {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// The limiting surface pressure pG of one material in one edition.
///
/// At room temperature, for a hole without chamfer in a part that is large and thick enough; a chamfer takes from the
/// area, a thin or narrow part from the pressure, and hot parts creep: for those there is no value.
///
/// ```
/// use shankline::tables::surface::{PressureEdition, SurfacePressure};
/// use shankline::units::megapascals;
/// # fn main() -> Result<(), shankline::Error> {
/// let iron = SurfacePressure::find("GJL-250 (GG-25)", PressureEdition::Vdi2230_2003)?;
/// assert_eq!(iron.limiting_pressure, megapascals(900.0)); // more than many steels
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SurfacePressure {
    /// Name of the material, as the guideline writes it.
    pub material: &'static str,
    /// Edition.
    pub edition: PressureEdition,
    /// Least tensile strength the row is for.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength_min: Option<Stress>,
    /// Greatest tensile strength the row is for, where it has a range.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength_max: Option<Stress>,
    /// Limiting surface pressure pG.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub limiting_pressure: Stress,
    /// Whether the guideline itself marks the value as not yet checked against newer research.
    pub provisional: bool,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl SurfacePressure {
    /// Every row, by edition.
    ///
    /// ```
    /// assert_eq!(shankline::tables::surface::SurfacePressure::all().len(), 40);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::surface_pressures::SURFACE_PRESSURES
    }

    /// The row of a material by the name the guideline gives it, in upper or lower case.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] for another name.
    ///
    /// ```
    /// use shankline::tables::surface::{PressureEdition, SurfacePressure};
    /// assert!(SurfacePressure::find("st 37", PressureEdition::Vdi2230_1986).is_ok());
    /// assert!(SurfacePressure::find("oak", PressureEdition::Vdi2230_2003).is_err());
    /// ```
    pub fn find(material: &str, edition: PressureEdition) -> Result<&'static Self, Error> {
        let wanted = material.trim();
        Self::all()
            .iter()
            .find(|row| row.edition == edition && row.material.eq_ignore_ascii_case(wanted))
            .ok_or_else(|| Error::NotInTable {
                table: "the table of limiting surface pressures",
                wanted: wanted.into(),
                available: "it names materials as VDI 2230 does".into(),
            })
    }

    /// What the user of this row must be told.
    ///
    /// ```
    /// use shankline::tables::surface::{PressureEdition, SurfacePressure};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let alloy = SurfacePressure::find("TiAl6V4 (3.7165.10)", PressureEdition::Vdi2230_2003)?;
    /// assert_eq!(alloy.cautions().iter().count(), 1); // unchecked, says the guideline
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default()
            .with(
                self.provisional
                    .then_some(Caution::ProvisionalSurfacePressure),
            )
            .with(Caution::from_memory(
                "limiting surface pressure",
                self.provenance,
            ))
    }
}

/// How near the material of a row is to the ply.
///
/// ```
/// use shankline::tables::surface::{Kinship, PlySurfacePressure};
/// let rows = PlySurfacePressure::all().iter();
/// assert_eq!(rows.filter(|row| row.kinship == Kinship::Same).count(), 5);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Kinship {
    /// The same material.
    Same,
    /// Kindred: the strongest material of the same kind in the table with no higher tensile strength.
    Kin,
}

/// Which row of an edition serves for a ply material.
///
/// Plies of which the edition lists no kindred material have none: cold-drawn and normalized bars, tubes (too thin for
/// the values) and stainless 304, whose values differ by three between the editions (210 and 630 MPa).
///
/// ```
/// use shankline::tables::surface::{Kinship, PlySurfacePressure, PressureEdition};
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::megapascals;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = PlyMaterial::find("ASTM A36 steel")?;
/// let row = PlySurfacePressure::of(plate, PressureEdition::Vdi2230_2003).unwrap();
/// assert_eq!((row.kinship, row.pressure()?.limiting_pressure), (Kinship::Kin, megapascals(490.0)));
/// let sheet = PlyMaterial::find("304 stainless steel")?;
/// assert!(PlySurfacePressure::of(sheet, PressureEdition::Vdi2230_2003).is_none());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlySurfacePressure {
    /// Name of the ply material.
    pub ply: &'static str,
    /// Name of the material in the table of limiting surface pressures.
    pub material: &'static str,
    /// Edition.
    pub edition: PressureEdition,
    /// How near the two are.
    pub kinship: Kinship,
    /// Why this row.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PlySurfacePressure {
    /// Every row, by ply material.
    ///
    /// ```
    /// assert_eq!(shankline::tables::surface::PlySurfacePressure::all().len(), 20);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::ply_surface_pressures::PLY_SURFACE_PRESSURES
    }

    /// The row of an edition that serves for a ply material, if there is one.
    ///
    /// ```
    /// use shankline::tables::surface::{PlySurfacePressure, PressureEdition};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let iron = PlyMaterial::find("grey cast iron class 30")?;
    /// assert!(PlySurfacePressure::of(iron, PressureEdition::Vdi2230_1986).is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of(ply: &PlyMaterial, edition: PressureEdition) -> Option<&'static Self> {
        let mut rows = Self::all().iter();
        rows.find(|row| row.edition == edition && row.ply == ply.name)
    }

    /// The limiting surface pressure itself.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] never for a row of the tables.
    ///
    /// ```
    /// use shankline::tables::surface::PlySurfacePressure;
    /// assert!(PlySurfacePressure::all().iter().all(|row| row.pressure().is_ok()));
    /// ```
    pub fn pressure(&self) -> Result<&'static SurfacePressure, Error> {
        SurfacePressure::find(self.material, self.edition)
    }
}
