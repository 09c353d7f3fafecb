//! What comes out: every mode, the least, and the comparison with a load.

use super::{TimberConnection, TimberMember, TimberMethod};
use crate::caution::Cautions;
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::units::{Force, Ratio, Stress, Torque};

/// One way a bolt fails in timber, by the name its publisher has for it.
///
/// NDS: `Im` and `Is` crush the main or the side member, in `II` the bolt turns stiffly, in `IIIm` and `IIIs` it bends
/// once, in `IV` twice; values are for the bolt. EN 1995-1-1: the letters of its figures 8.2 and 8.3; values are for one shear
/// plane.
///
/// ```
/// use shankline::strength::timber::YieldMode;
/// fn print(mode: &YieldMode) {
///     println!("{}: {:?}", mode.name, mode.value);
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct YieldMode {
    /// Name of the mode.
    pub name: &'static str,
    /// The equation of one shear plane alone: for NDS without reduction term, for EN without the pull of the
    /// bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub johansen: Force,
    /// Its load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub value: Force,
}

impl YieldMode {
    /// Whether no mode so far has a lower load.
    #[inline]
    pub(super) fn governs(&self, least: Option<&Self>) -> bool {
        least.is_none_or(|least| self.value < least.value)
    }
}

/// What one bolt carries in timber.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod};
/// use shankline::tables::timber::Timber;
/// use shankline::units::degrees;
/// # fn main() -> Result<(), shankline::Error> {
/// let pine = Timber::find("Southern Pine")?;
/// let strap = TimberMember::steel(inches(0.25), ksi(58.0), inches(0.6875));
/// let gate = TimberConnection {
///     diameter: inches(0.625),
///     main: TimberMember::wood(inches(5.5), pine, degrees(0.0)),
///     side: strap,
///     far_side: Some(strap),
///     gap: inches(0.0),
/// };
/// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 0.7 }; // wet service
/// let found = gate.resistance(&AstmGrade::A307A.strength(inches(0.625))?, method)?;
/// for mode in found.modes() {
///     println!("{}: {:?}", mode.name, mode.value);
/// }
/// assert_eq!(found.modes().count(), 4);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TimberResistance {
    /// The method.
    pub method: TimberMethod,
    /// Members and bolt.
    pub connection: TimberConnection,
    /// The side member that counts for both: by EN the weaker; by NDS as thin as the thinner, of the material
    /// of the weaker.
    pub side: TimberMember,
    /// Strength of the bolt that is used: bending yield strength Fyb of NDS, tensile strength fu,k of EN.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_strength: Stress,
    /// Bearing strength of the main member under the bolt: Fem, fh2. For a plate by EN, which does not ask for it, its
    /// tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub main_bearing: Stress,
    /// Bearing strength of the side member: Fes, fh1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub side_bearing: Stress,
    /// Moment of a hinge in the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_moment: Torque,
    pub(super) modes: [Option<YieldMode>; 6],
    /// The mode of the lowest load. With a plate between thin and thick, of which EN takes the load
    /// between the two, the lower of the two.
    pub governing: YieldMode,
    /// Load of the bolt, all shear planes together, before adjustment: reference design value Z, characteristic
    /// load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Allowable (NDS), or characteristic and design load (EN) of the bolt, with what was taken off by
    /// [`reduced`](Self::reduced).
    pub resistance: Resistance,
    /// The share that short distances leave: `C_delta` of NDS; 1 if nothing was taken off.
    pub geometry: f64,
    /// The share that a row of bolts leaves each of them: `C_g` of NDS, `n_ef / n` of EN; 1 if nothing was taken off.
    pub group: f64,
    pub(super) cautions: Cautions,
}

impl TimberResistance {
    /// Every mode that applies, in the order of its publisher.
    ///
    /// ```
    /// # use shankline::strength::timber::TimberResistance;
    /// fn spread(found: &TimberResistance) -> bool {
    ///     found.modes().all(|mode| mode.value >= found.governing.value)
    /// }
    /// ```
    pub fn modes(&self) -> impl Iterator<Item = &YieldMode> {
        self.modes.iter().flatten()
    }

    /// The same with what short distances and other bolts in the row take off.
    ///
    /// `geometry` is that of [`DistanceCheck`](super::DistanceCheck), the least of all members; `group` that of
    /// [`BoltRow::factor`](super::BoltRow::factor).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a share that is not above 0 and at most 1.
    ///
    /// ```
    /// use shankline::strength::timber::TimberResistance;
    /// use shankline::units::Ratio;
    /// use shankline::uom::si::ratio::ratio;
    /// fn half(found: TimberResistance) -> Result<TimberResistance, shankline::Error> {
    ///     found.reduced(Ratio::new::<ratio>(0.5), Ratio::new::<ratio>(1.0))
    /// }
    /// ```
    pub fn reduced(&self, geometry: Ratio, group: Ratio) -> Result<Self, Error> {
        for (name, share) in [("geometry factor", geometry), ("group factor", group)] {
            positive(name, share.value)?;
            if share.value > 1.0 {
                return Err(out_of_range(name, share.value, Allowed::AtMost(1.0.into())));
            }
        }
        let resistance = self.resistance.times(geometry.value * group.value);
        Ok(Self {
            resistance: resistance.sound()?,
            geometry: self.geometry * geometry.value,
            group: self.group * group.value,
            ..self.clone()
        })
    }

    /// Checks the load of the bolt across its axis against the resistance.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level: NDS is allowable here, EN
    /// nominal and design. [`Error::OutOfRange`] for a load that is negative or not finite.
    ///
    /// ```
    /// use shankline::strength::check::{Check, Level};
    /// use shankline::strength::timber::TimberResistance;
    /// use shankline::units::Force;
    /// fn service(found: &TimberResistance, load: Force) -> Result<Check, shankline::Error> {
    ///     found.check(load, Level::Allowable)
    /// }
    /// ```
    pub fn check(&self, load: Force, level: Level) -> Result<Check, Error> {
        let resistance = self.resistance.at(level)?;
        let check = Check::new(
            Mode::TimberYield,
            Place::Joint,
            load,
            resistance,
            level,
            self.method.method(),
        )?;
        Ok(check.warned(self.cautions.clone()))
    }

    /// What the user must be told.
    ///
    /// ```
    /// # use shankline::strength::timber::TimberResistance;
    /// fn print(found: &TimberResistance) {
    ///     for caution in found.cautions().iter() {
    ///         println!("{caution}");
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }
}

#[cold]
pub(super) fn no_mode() -> Error {
    Error::Mismatch("no yield mode applies".into())
}
