//! Torques of aircraft nuts by thread, as the FAA prints them.
//!
//! They do not follow from one nut factor: the K that a mid torque implies at the stress of its
//! column goes from 0.13 (5/16-18) to 0.23 (7/16-20). So the table is a look-up, and
//! nothing between its rows is computed.

use super::generated;
use crate::source::Provenance;
use crate::units::{Length, Torque};

/// Torque range and limit of one thread.
///
/// For clean, dry, cadmium-plated threads of steel bolts that are loaded mainly in shear. Tension
/// nuts aim at 40 000 psi in the bolt and may reach 90 000 psi, shear nuts at 24 000 and 54 000 psi.
/// The drag of a self-locking nut is added to the torque (AC 43.13-1B, 7-40). The torque of
/// the maker of the airframe goes before this table.
///
/// Source: FAA AC 43.13-1B (1998), Table 7-1, read on a page copy of the circular.
///
/// ```
/// use shankline::{prelude::*, tables::aircraft_torque::AircraftTorque};
/// use shankline::units::pound_force_inches;
/// # fn main() -> Result<(), shankline::Error> {
/// let row = AircraftTorque::find(&"1/4-28 UNF".parse()?)?;
/// assert_eq!(row.tension_nut_min, pound_force_inches(50.0));
/// assert_eq!(row.tension_nut_max, pound_force_inches(70.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AircraftTorque {
    /// Size: `#10`, `1/4`.
    pub size: &'static str,
    /// Nominal diameter of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch.
    pub threads_per_inch: f64,
    /// Least recommended torque of a nut in tension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension_nut_min: Torque,
    /// Greatest recommended torque of a nut in tension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension_nut_max: Torque,
    /// Least recommended torque of a thin nut in shear.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear_nut_min: Torque,
    /// Greatest recommended torque of a thin nut in shear.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear_nut_max: Torque,
    /// Torque never to be passed with a nut in tension, as when a slot is turned to its cotter hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension_nut_limit: Torque,
    /// Torque never to be passed with a thin nut in shear.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear_nut_limit: Torque,
    /// Whether the FAA marks the recommended torque of the shear nut as estimated.
    pub shear_nut_estimated: bool,
    /// Source of the row.
    pub provenance: Provenance,
}

impl AircraftTorque {
    /// Every row, by rising size, coarse thread first.
    ///
    /// ```
    /// assert_eq!(shankline::tables::aircraft_torque::AircraftTorque::all().len(), 25);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::aircraft_torques::AIRCRAFT_TORQUES
    }
}
