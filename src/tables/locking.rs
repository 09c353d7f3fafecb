//! Lock nuts: prevailing torques; service temperatures of locking elements, platings and bolt steels.

use super::generated;
use super::nuts::Locking;
use crate::caution::{Caution, Cautions};
use crate::source::{Basis, Provenance};
use crate::units::{Length, ThermodynamicTemperature, Torque};

/// Which torque a prevailing torque is. All are measured without load on the bearing face.
///
/// ```
/// use shankline::tables::locking::PrevailingTorqueKind;
/// assert!(PrevailingTorqueKind::ReuseBreakawayMin.is_for_reuse());
/// assert!(!PrevailingTorqueKind::FirstRemovalMin.is_for_reuse());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PrevailingTorqueKind {
    /// Greatest torque of the first installation of a new nut.
    FirstInstallationMax,
    /// Least torque of the first removal.
    FirstRemovalMin,
    /// Least torque of the fifth removal.
    FifthRemovalMin,
    /// Greatest torque in any of the cycles of the acceptance test.
    AnyCycleMax,
    /// Least torque that keeps a used nut turning, for its reuse.
    ReuseRunningMin,
    /// Least torque that starts a used nut, bolt through the nut, for its reuse.
    ReuseBreakawayMin,
}

impl PrevailingTorqueKind {
    /// Whether it is a limit for using a nut again.
    ///
    /// ```
    /// use shankline::tables::locking::PrevailingTorqueKind;
    /// assert!(PrevailingTorqueKind::ReuseRunningMin.is_for_reuse());
    /// ```
    #[must_use]
    pub const fn is_for_reuse(self) -> bool {
        matches!(self, Self::ReuseRunningMin | Self::ReuseBreakawayMin)
    }
}

/// One prevailing torque of one thread by one publisher.
///
/// Publishers measure different things and disagree: the US Army's breakaway torques for reuse are
/// nearly twice the FAA's running torques. Nothing here blends them.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::locking::{PrevailingTorque, PrevailingTorqueKind};
/// use shankline::units::pound_force_inches;
/// # fn main() -> Result<(), shankline::Error> {
/// let rows = PrevailingTorque::for_thread(&"1/2-13 UNC".parse()?)?;
/// let first = rows.iter().find(|row| row.kind == PrevailingTorqueKind::FirstInstallationMax);
/// assert_eq!(first.unwrap().torque, pound_force_inches(204.0)); // ASME B18.16.6
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PrevailingTorque {
    /// The authority or standard.
    pub publisher: &'static str,
    /// Which torque it is.
    pub kind: PrevailingTorqueKind,
    /// The kind of lock nut it holds for; none if for every kind.
    pub locking: Option<Locking>,
    /// Property classes of the nut, with commas between; none if for every one.
    pub nut_classes: Option<&'static str>,
    /// Name of the thread size.
    pub size: &'static str,
    /// Nominal thread diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch of an inch thread.
    pub threads_per_inch: Option<f64>,
    /// Pitch of a metric thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub pitch: Option<Length>,
    /// The torque.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub torque: Torque,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PrevailingTorque {
    /// Every row for inch threads, by size. 1-14, which the FAA lists, is no thread of
    /// [`tables::threads`](super::threads), so only this list has it.
    ///
    /// ```
    /// assert_eq!(shankline::tables::locking::PrevailingTorque::all_inch().len(), 89);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::prevailing_torques_inch::PREVAILING_TORQUES_INCH
    }

    /// Every row for metric threads, by size and property class.
    ///
    /// ```
    /// assert_eq!(shankline::tables::locking::PrevailingTorque::all_metric().len(), 169);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::prevailing_torques_metric::PREVAILING_TORQUES_METRIC
    }

    /// Whether the row holds for a nut of a property class, or for one that has none.
    ///
    /// ```
    /// use shankline::tables::locking::PrevailingTorque;
    /// let row = PrevailingTorque::all_metric().iter().find(|row| row.nut_classes == Some("5, 6, 8"));
    /// assert!(row.is_some_and(|row| row.is_for_class(Some("8")) && !row.is_for_class(Some("10"))));
    /// ```
    #[must_use]
    pub fn is_for_class(&self, nut_class: Option<&str>) -> bool {
        match (self.nut_classes, nut_class) {
            (Some(classes), Some(class)) => classes.split(", ").any(|one| one == class),
            (None, None) => true,
            _ => false,
        }
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::locking::PrevailingTorque;
    /// let recalled = |row: &&PrevailingTorque| row.provenance.basis.is_weak();
    /// assert_eq!(PrevailingTorque::all_metric().iter().find(recalled).unwrap().cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("prevailing torque", self.provenance))
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        publisher: "",
        kind: PrevailingTorqueKind::FirstInstallationMax,
        locking: None,
        nut_classes: None,
        size: "",
        nominal_diameter: crate::units::inches(0.0),
        threads_per_inch: None,
        pitch: None,
        torque: crate::units::newton_metres(0.0),
        note: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

/// What has a service temperature.
///
/// ```
/// use shankline::tables::locking::{ServiceTemperature, TemperatureLimited};
/// use shankline::units::fahrenheit;
/// let limit = ServiceTemperature::lowest_max(TemperatureLimited::CadmiumPlating);
/// assert_eq!(limit, Some(fahrenheit(446.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TemperatureLimited {
    /// Nylon or fibre insert of a lock nut.
    NonmetallicInsert,
    /// All-metal prevailing-torque nut.
    AllMetalNut,
    /// Aerospace self-locking nut of the 250 F class.
    SelfLockingNut250F,
    /// Aerospace self-locking nut of the 450 F class.
    SelfLockingNut450F,
    /// Aerospace self-locking nut of the 800 F class.
    SelfLockingNut800F,
    /// Anaerobic thread-locking compound of the usual grades.
    AnaerobicCompound,
    /// Cadmium plating.
    CadmiumPlating,
    /// Zinc plating.
    ZincPlating,
    /// Silver plating.
    SilverPlating,
    /// Bolts and nuts of ISO 898.
    Iso898Steel,
    /// Stainless bolts and nuts of ISO 3506.
    Iso3506Stainless,
    /// Carbon and low-alloy bolt steel in the cold.
    LowAlloySteel,
    /// Steel bolts with the strengths of room temperature.
    SteelBoltFullStrength,
    /// Bolted joints computed by VDI 2230.
    #[cfg_attr(feature = "serde", serde(rename = "vdi_2230_joint"))]
    Vdi2230Joint,
    /// Bolts of ASTM A193 B7.
    #[cfg_attr(feature = "serde", serde(rename = "astm_a193_b7"))]
    AstmA193B7,
}

/// Limits of the service temperature by one publisher.
///
/// ```
/// use shankline::tables::locking::{ServiceTemperature, TemperatureLimited};
/// for row in ServiceTemperature::of(TemperatureLimited::AllMetalNut) {
///     println!("{}: {:?}", row.provenance.source, row.temperature_max);
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ServiceTemperature {
    /// What is limited.
    pub element: TemperatureLimited,
    /// Who limits it; the edition is in the source.
    pub publisher: &'static str,
    /// Lowest temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub temperature_min: Option<ThermodynamicTemperature>,
    /// Highest temperature.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub temperature_max: Option<ThermodynamicTemperature>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl ServiceTemperature {
    /// Rows printed in degrees Celsius.
    ///
    /// ```
    /// assert_eq!(shankline::tables::locking::ServiceTemperature::all_celsius().len(), 11);
    /// ```
    #[must_use]
    pub fn all_celsius() -> &'static [Self] {
        &generated::service_temperatures_c::SERVICE_TEMPERATURES_C
    }

    /// Rows printed in degrees Fahrenheit.
    ///
    /// ```
    /// assert_eq!(shankline::tables::locking::ServiceTemperature::all_fahrenheit().len(), 12);
    /// ```
    #[must_use]
    pub fn all_fahrenheit() -> &'static [Self] {
        &generated::service_temperatures_f::SERVICE_TEMPERATURES_F
    }

    /// What every publisher and edition gives for an element.
    ///
    /// ```
    /// use shankline::tables::locking::{ServiceTemperature, TemperatureLimited};
    /// assert_eq!(ServiceTemperature::of(TemperatureLimited::NonmetallicInsert).count(), 5);
    /// ```
    pub fn of(element: TemperatureLimited) -> impl Iterator<Item = &'static Self> {
        let rows = Self::all_celsius().iter().chain(Self::all_fahrenheit());
        rows.filter(move |row| row.element == element)
    }

    /// The latest edition of one publisher's limits.
    ///
    /// ```
    /// use shankline::tables::locking::{ServiceTemperature, TemperatureLimited};
    /// use shankline::units::celsius;
    /// let row = ServiceTemperature::latest(TemperatureLimited::AllMetalNut, "ISO 2320").unwrap();
    /// assert_eq!(row.temperature_max, Some(celsius(150.0))); // 300 C in 1997
    /// ```
    #[must_use]
    pub fn latest(element: TemperatureLimited, publisher: &str) -> Option<&'static Self> {
        Self::of(element)
            .filter(|row| row.publisher == publisher)
            .max_by_key(|row| row.provenance.source.edition)
    }

    /// The lowest of the highest temperatures any publisher or edition gives.
    ///
    /// ```
    /// use shankline::tables::locking::{ServiceTemperature, TemperatureLimited};
    /// use shankline::units::celsius;
    /// let limit = ServiceTemperature::lowest_max(TemperatureLimited::NonmetallicInsert);
    /// assert_eq!(limit, Some(celsius(120.0)));
    /// assert_eq!(ServiceTemperature::lowest_max(TemperatureLimited::LowAlloySteel), None);
    /// ```
    #[must_use]
    pub fn lowest_max(element: TemperatureLimited) -> Option<ThermodynamicTemperature> {
        Self::of(element)
            .filter_map(|row| row.temperature_max)
            .reduce(|a, b| if b < a { b } else { a })
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::locking::{ServiceTemperature, TemperatureLimited};
    /// let mut rows = ServiceTemperature::of(TemperatureLimited::ZincPlating);
    /// assert_eq!(rows.next().unwrap().cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("service temperature", self.provenance))
    }
}
