//! Tightening: how far the preload scatters by each method, how much the surfaces embed after it.

use super::{generated, rows_of};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::{Basis, Provenance};
use crate::units::{Length, Ratio, micrometres};

/// How a bolt is tightened.
///
/// ```
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// assert_eq!(TighteningScatter::of_method(TighteningMethod::Ultrasonic).len(), 2);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TighteningMethod {
    /// By feel.
    Feel,
    /// Torque wrench, threads not described.
    TorqueWrench,
    /// Torque wrench, unlubricated threads.
    TorqueWrenchUnlubricated,
    /// Torque wrench, cadmium plated threads.
    TorqueWrenchCadmium,
    /// Torque wrench, lubricated threads.
    TorqueWrenchLubricated,
    /// Torque wrench, the torque found by tests on the original joint.
    TorqueFromTests,
    /// Torque wrench, the torque computed from estimated friction.
    TorqueFromFriction,
    /// Precision power driver.
    PrecisionPowerDriver,
    /// Impact wrench.
    ImpactWrench,
    /// Turn of the nut.
    TurnOfNut,
    /// Computer-controlled wrench.
    ComputerWrench,
    /// Angle-controlled beyond yield.
    AngleControlled,
    /// Yield-point controlled.
    YieldControlled,
    /// Washer that indicates the preload.
    PreloadIndicatingWasher,
    /// Hydraulic tensioner.
    HydraulicTensioner,
    /// Measured elongation of the bolt.
    BoltElongation,
    /// Ultrasonic measurement.
    Ultrasonic,
    /// Bolt with strain gauges.
    InstrumentedBolt,
}

/// Scatter of the preload of one method by one publisher.
///
/// Scatter is plus or minus a percentage of the mean; the tightening factor of VDI 2230 is the
/// greatest preload over the least, so that scatter = (factor - 1) / (factor + 1).
///
/// ```
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// use shankline::units::percent;
/// let rows = TighteningScatter::of_method(TighteningMethod::TorqueWrench);
/// assert_eq!(rows[0].scatter_max, Some(percent(25.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct TighteningScatter {
    /// Method.
    pub method: TighteningMethod,
    /// Publisher and, where they differ, edition.
    pub publisher: &'static str,
    /// Least scatter, where the publisher gives a range.
    pub scatter_min: Option<Ratio>,
    /// Greatest or only scatter.
    pub scatter_max: Option<Ratio>,
    /// Least tightening factor.
    pub tightening_factor_min: Option<f64>,
    /// Greatest tightening factor.
    pub tightening_factor_max: Option<f64>,
    /// How the tightening factor is known: where computed, from the scatter.
    pub tightening_factor_basis: Option<Basis>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl TighteningScatter {
    /// Every row, by method.
    ///
    /// ```
    /// assert_eq!(shankline::tables::tightening::TighteningScatter::all().len(), 27);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::tightening_scatter::TIGHTENING_SCATTER
    }

    /// What every publisher gives for a method.
    ///
    /// ```
    /// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
    /// let rows = TighteningScatter::of_method(TighteningMethod::YieldControlled);
    /// assert_eq!(rows.len(), 3);
    /// ```
    #[must_use]
    pub fn of_method(method: TighteningMethod) -> &'static [Self] {
        rows_of(Self::all(), &method, |row| row.method)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
    /// let rows = TighteningScatter::of_method(TighteningMethod::ImpactWrench);
    /// assert_eq!(rows[0].cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "scatter of the preload",
            self.provenance,
        ))
    }
}

/// Direction of the service load on a joint.
///
/// ```
/// use shankline::tables::tightening::{Embedment, LoadDirection};
/// assert_eq!(Embedment::all()[0].load, LoadDirection::Axial);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LoadDirection {
    /// Along the bolt.
    Axial,
    /// Across the bolt.
    Shear,
}

/// How much each pair of surfaces embeds after tightening, by VDI 2230 Part 1 Table 5.
///
/// ```
/// use shankline::tables::tightening::{Embedment, LoadDirection};
/// use shankline::units::micrometres;
/// # fn main() -> Result<(), shankline::Error> {
/// let row = Embedment::find(micrometres(25.0), LoadDirection::Shear)?;
/// assert_eq!(row.bearing_face, micrometres(4.5));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Embedment {
    /// Least roughness Rz, itself included.
    pub roughness_from: Option<Length>,
    /// Roughness Rz the row ends below, itself excluded.
    pub roughness_below: Length,
    /// Direction of the load.
    pub load: LoadDirection,
    /// Embedment of the thread.
    pub thread: Length,
    /// Embedment of the head's or the nut's bearing face, each.
    pub bearing_face: Length,
    /// Embedment of an interface between plies, each.
    pub interface: Length,
    /// Source of the row.
    pub provenance: Provenance,
}

impl Embedment {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::tightening::Embedment::all().len(), 6);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::embedments::EMBEDMENTS
    }

    /// The row for a mean roughness depth Rz and a direction of load.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a roughness that is not positive and finite, or of 160 micrometres
    /// and more.
    ///
    /// ```
    /// use shankline::tables::tightening::{Embedment, LoadDirection};
    /// use shankline::units::micrometres;
    /// assert!(Embedment::find(micrometres(160.0), LoadDirection::Axial).is_err());
    /// ```
    pub fn find(roughness: Length, load: LoadDirection) -> Result<&'static Self, Error> {
        positive("roughness Rz", roughness)?;
        Self::all()
            .iter()
            .find(|row| row.load == load && roughness < row.roughness_below)
            .ok_or_else(|| {
                let greatest = micrometres(160.0);
                out_of_range("roughness Rz", roughness, Allowed::AtMost(greatest.into()))
            })
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::tightening::Embedment;
    /// assert_eq!(Embedment::all()[0].cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("embedment", self.provenance))
    }
}
