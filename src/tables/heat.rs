//! Heat: how far the yield strength of bolt steels falls, and to which temperature a ply has its full strength.

use super::{generated, rows_of};
use crate::caution::{Caution, Cautions};
use crate::source::Provenance;
use crate::tables::plies::PlyMaterial;
use crate::units::{Ratio, Stress, ThermodynamicTemperature};

/// Groups of bolt steel whose yield strength at higher temperatures a standard guides to.
///
/// ```
/// use shankline::tables::heat::{HotSteel, HotYield};
/// assert_eq!(HotYield::of(HotSteel::Austenitic).len(), 5);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HotSteel {
    /// Class 5.6 of ISO 898-1.
    Class5_6,
    /// Class 8.8.
    Class8_8,
    /// Class 10.9.
    Class10_9,
    /// Class 12.9.
    Class12_9,
    /// A2 to A5 of ISO 3506-1, classes 70 and 80.
    Austenitic,
    /// C1 of ISO 3506-1, class 70.
    MartensiticC1,
    /// C3 of ISO 3506-1, class 80.
    MartensiticC3,
}

/// The yield strength (lower yield or 0.2 % stress) of a bolt steel at a temperature, a guide value of short time.
///
/// ISO 898-1 prints stresses, ISO 3506-1 shares of the value at room temperature. The first row of every steel is room
/// temperature. Relaxation is another matter: a preload falls in the heat long before the bolt yields.
///
/// ```
/// use shankline::tables::heat::{HotSteel, HotYield};
/// use shankline::units::megapascals;
/// let rows = HotYield::of(HotSteel::Class8_8);
/// assert_eq!(rows[2].yield_strength, Some(megapascals(540.0))); // at 200 C
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HotYield {
    /// Steel.
    pub steel: HotSteel,
    /// Temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub temperature: ThermodynamicTemperature,
    /// Yield strength there, where the standard prints a stress.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Its share of the value at room temperature, where the standard prints that.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio_option")
    )]
    pub yield_ratio: Option<Ratio>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl HotYield {
    /// Every row, by steel and rising temperature.
    ///
    /// ```
    /// assert_eq!(shankline::tables::heat::HotYield::all().len(), 35);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::hot_yields::HOT_YIELDS
    }

    /// The rows of a steel, by rising temperature.
    ///
    /// ```
    /// use shankline::tables::heat::{HotSteel, HotYield};
    /// use shankline::units::celsius;
    /// assert_eq!(HotYield::of(HotSteel::Class10_9).last().unwrap().temperature, celsius(300.0));
    /// ```
    #[must_use]
    pub fn of(steel: HotSteel) -> &'static [Self] {
        rows_of(Self::all(), &steel, |row| row.steel)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::heat::{HotSteel, HotYield};
    /// assert_eq!(HotYield::of(HotSteel::Austenitic)[1].cautions().iter().count(), 1);
    /// assert_eq!(HotYield::of(HotSteel::Class8_8)[0].cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "yield strength at the temperature",
            self.provenance,
        ))
    }
}

/// To which temperature a ply material has the strengths of its table.
///
/// A material without a row (stainless steel, iron, titanium) is not vouched for beyond room temperature. Above the limit
/// nothing is known here: the fire parts of the Eurocodes are for minutes and no ratings of a service.
///
/// ```
/// use shankline::tables::heat::PlyTemperatureLimit;
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::celsius;
/// # fn main() -> Result<(), shankline::Error> {
/// let sheet = PlyMaterial::find("6061-T6 aluminium, typical")?;
/// assert_eq!(PlyTemperatureLimit::of(sheet).unwrap().full_strength_thru, celsius(80.0));
/// assert!(PlyTemperatureLimit::of(PlyMaterial::find("304 stainless steel")?).is_none());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyTemperatureLimit {
    /// Name of the ply material.
    pub ply: &'static str,
    /// Highest temperature with the full strength, itself included.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub full_strength_thru: ThermodynamicTemperature,
    /// What is known beyond it.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PlyTemperatureLimit {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::heat::PlyTemperatureLimit::all().len(), 12);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::ply_temperature_limits::PLY_TEMPERATURE_LIMITS
    }

    /// The limit of a material, if one is known.
    ///
    /// ```
    /// use shankline::tables::heat::PlyTemperatureLimit;
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(PlyTemperatureLimit::of(PlyMaterial::find("ASTM A36 steel")?).is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of(ply: &PlyMaterial) -> Option<&'static Self> {
        Self::all().iter().find(|row| row.ply == ply.name)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::heat::PlyTemperatureLimit;
    /// let of = |ply| PlyTemperatureLimit::all().iter().find(|row| row.ply == ply).unwrap().cautions();
    /// assert_eq!(of("ASTM A36 steel").iter().count(), 0);
    /// assert_eq!(of("7075-T6 aluminium").iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "temperature limit of the ply material",
            self.provenance,
        ))
    }
}
