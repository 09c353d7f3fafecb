//! Printed strengths of bolts: stresses of design codes, shear as a share of tension, and loads of
//! parts that no formula of this crate gives.
//!
//! Each number is one publisher's in one edition: a nominal stress of one code does not go with the
//! area or the factor of another. [`strength::shear`](crate::strength::shear) keeps them together; these
//! rows are for those who look a number up.

use alloc::string::ToString;

use super::{generated, nanometres};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::source::Provenance;
use crate::units::{Force, Length, Stress};

/// What a stress of a design code is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressQuantity {
    /// Nominal shear stress: the factor of the code comes on top.
    ShearNominal,
    /// Allowable shear stress: the factor is in it.
    ShearAllowable,
    /// Design shear strength: the factor is in it.
    ShearDesign,
    /// Nominal tensile stress.
    TensionNominal,
    /// Allowable tensile stress.
    TensionAllowable,
    /// Design tensile strength.
    TensionDesign,
    /// Nominal yield strength the code counts with.
    YieldStrength,
    /// Nominal tensile strength the code counts with.
    TensileStrength,
}

/// Where the shear plane of a stress lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressPlane {
    /// Across the thread.
    Thread,
    /// Across the plain shank.
    Shank,
    /// Either; the code makes no difference in the stress.
    Either,
}

/// A stress, or a share of the tensile strength, that a design code gives for bolts.
///
/// ```
/// use shankline::{tables::strengths::{DesignStress, StressPlane, StressQuantity}, units::ksi};
/// let row = DesignStress::of_code("AISC 360-10")
///     .find(|row| row.bolts == "group A (A325)" && row.plane == Some(StressPlane::Shank))
///     .unwrap();
/// assert_eq!(row.quantity, StressQuantity::ShearNominal);
/// assert_eq!(row.stress, Some(ksi(68.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DesignStress {
    /// Design code, with its edition where there are several.
    pub code: &'static str,
    /// The bolts it is for, as the code calls them.
    pub bolts: &'static str,
    /// What it is.
    pub quantity: StressQuantity,
    /// Where the shear plane lies; none for tension.
    pub plane: Option<StressPlane>,
    /// The stress, where the code gives one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub stress: Option<Stress>,
    /// Share of the tensile strength, where the code gives that.
    pub share_of_tensile: Option<f64>,
    /// Reductions and meaning.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl DesignStress {
    /// Every row of US codes: AISC and RCSC.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::DesignStress::all_inch().len(), 56);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::design_stresses_inch::DESIGN_STRESSES_INCH
    }

    /// Every row of European codes: EN 1993-1-8 and BS 5950-1.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::DesignStress::all_metric().len(), 34);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::design_stresses_metric::DESIGN_STRESSES_METRIC
    }

    /// The rows of one code: `"AISC ASD 1989"`, `"AISC 360-05"` to `"AISC 360-22"`, `"RCSC 1988"`,
    /// `"EN 1993-1-8"`, `"BS 5950-1:2000"`.
    ///
    /// ```
    /// use shankline::tables::strengths::DesignStress;
    /// assert_eq!(DesignStress::of_code("RCSC 1988").count(), 6);
    /// ```
    pub fn of_code(code: &str) -> impl Iterator<Item = &'static Self> {
        Self::all_inch()
            .iter()
            .chain(Self::all_metric())
            .filter(move |row| row.code == code)
    }

    /// What the user of this stress must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::strengths::DesignStress;
    /// let recalled = DesignStress::of_code("AISC 360-22").next().unwrap();
    /// assert_eq!(recalled.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("design stress", self.provenance))
    }
}

/// Shear strength as a share of the tensile strength, by publisher. A rule of thumb for ultimate
/// strength, apart from the row of the distortion energy, which is about yielding.
///
/// ```
/// use shankline::tables::strengths::ShearRatio;
/// let most = ShearRatio::all().iter().map(|row| row.shear_to_tensile).fold(0.0, f64::max);
/// assert_eq!(most, 0.62);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShearRatio {
    /// What it was said of.
    pub bolts: &'static str,
    /// Shear strength over tensile strength.
    pub shear_to_tensile: f64,
    /// Source of the row.
    pub provenance: Provenance,
}

impl ShearRatio {
    /// Every ratio.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::ShearRatio::all().len(), 8);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::shear_ratios::SHEAR_RATIOS
    }

    /// What the user of this ratio must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::{source::Basis, tables::strengths::ShearRatio};
    /// for ratio in ShearRatio::all() {
    ///     let recalled = ratio.provenance.basis == Basis::Memory;
    ///     assert_eq!(ratio.cautions().iter().count(), usize::from(recalled));
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "ratio of shear to tension",
            self.provenance,
        ))
    }
}

/// A kind of part with printed loads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LoadedPart {
    /// Alloy steel aircraft bolt, AN3 to AN16.
    AircraftBolt,
    /// Flat countersunk head socket screw of alloy steel, ASTM F835: its head fails first.
    FlatSocketScrew,
    /// Self-locking nut, MIL-N-25027, for bolts of 125 ksi.
    SelfLockingNut,
}

/// What a printed load is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LoadQuantity {
    /// Least ultimate load along the axis.
    Tension,
    /// Least ultimate load of one shear plane through the shank.
    SingleShear,
}

/// Printed ultimate load of a part.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::strengths::{LoadQuantity, LoadedPart, PublishedLoad};
/// # fn main() -> Result<(), shankline::Error> {
/// let rows = PublishedLoad::of(LoadedPart::AircraftBolt, inches(0.25))?;
/// let shear = rows.iter().find(|row| row.quantity == LoadQuantity::SingleShear).unwrap();
/// assert_eq!(shear.load, pounds_force(3680.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PublishedLoad {
    /// The part.
    pub part: LoadedPart,
    /// Its size or number.
    pub size: &'static str,
    /// Nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch, where the load depends on the thread.
    pub threads_per_inch: Option<f64>,
    /// What the load is.
    pub quantity: LoadQuantity,
    /// The load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Meaning and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PublishedLoad {
    /// Every load.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::PublishedLoad::all().len(), 63);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::published_loads::PUBLISHED_LOADS
    }

    /// The loads of a part of one nominal diameter. Two publishers may give one load.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] names the sizes there are; [`Error::OutOfRange`] for a diameter that is not
    /// positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::strengths::{LoadedPart, PublishedLoad};
    /// let error = PublishedLoad::of(LoadedPart::AircraftBolt, inches(2.0)).unwrap_err();
    /// assert!(error.to_string().ends_with("its sizes run from AN3 to AN16, the nearest is AN16"));
    /// ```
    pub fn of(part: LoadedPart, diameter: Length) -> Result<&'static [Self], Error> {
        let wanted = positive("nominal diameter", diameter)?;
        let rows = super::rows_of(Self::all(), &part, |row| row.part);
        let found = super::rows_of(rows, &nanometres(wanted), |row| {
            nanometres(row.nominal_diameter)
        });
        if found.is_empty() {
            return Err(Error::NotInTable {
                table: "the table of published loads",
                wanted: crate::error::Amount::from(diameter).to_string(),
                available: super::size_range(rows, diameter, |row| {
                    (row.nominal_diameter, row.size)
                }),
            });
        }
        Ok(found)
    }

    /// What the user of this load must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::strengths::PublishedLoad;
    /// assert_eq!(PublishedLoad::all()[0].cautions().iter().count(), 1); // AN3, recalled
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("load", self.provenance))
    }
}
