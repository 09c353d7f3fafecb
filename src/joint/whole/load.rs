//! What one bolt of a joint carries.

use crate::error::{Allowed, Error, Finite, not_negative, out_of_range, positive};
use crate::strength::check::Level;
use crate::units::Force;

/// More than any bolt of the tables carries, by far: a slip of the unit.
pub(super) const MOST: Force = crate::units::newtons(1e12);

/// The loads of one bolt, in service.
///
/// In a file every field but the load factor must be given: a load that is left out is not taken for none.
///
/// ```
/// use shankline::joint::JointLoad;
/// use shankline::prelude::*;
/// let steady = JointLoad::across(newtons(8e3));
/// let jerked = JointLoad { shock_factor: 2.0, ..steady };
/// assert!(jerked.validate().is_ok());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct JointLoad {
    /// Load across the axis: what the [pulls](super::super::JointPly::pull) of the plies are shares of.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
    pub across: Force,
    /// Load along the axis that pulls the plies apart.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
    pub along: Force,
    /// Whether plies that bend add to the load along the axis; none if nobody says.
    #[cfg_attr(feature = "serde", serde(default))]
    pub prying: Option<Prying>,
    /// Whether loads come and go for the whole life of the joint, and between what.
    pub repeats: Repeats,
    /// What the loads are multiplied by for shock, 1 for none.
    pub shock_factor: f64,
    /// What the loads are multiplied by where the methods want factored loads ([`Level::Design`]), by the code in
    /// force; 1 for loads that have it in them already. Without it such methods decide nothing.
    #[cfg_attr(feature = "serde", serde(default))]
    pub load_factor: Option<f64>,
}

/// What plies that bend add to the load along the axis: they pry the bolt up with the far edge as a fulcrum.
///
/// ```
/// use shankline::joint::{JointLoad, Prying};
/// use shankline::units::newtons;
/// let stiff = JointLoad { prying: Some(Prying::None), ..JointLoad::along(newtons(5e3)) };
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Prying {
    /// Nothing: the plies are stiff, or the load passes straight through them.
    None,
    /// It is in the load already, by [`tension`](crate::tension) or another method.
    InLoad,
}

/// Whether loads come and go for the whole life of a joint.
///
/// ```
/// use shankline::joint::Repeats;
/// use shankline::units::newtons;
/// let swells = Repeats::Between { across_least: newtons(0.0), along_least: newtons(1e3), cycles: Some(1e6) };
/// assert_ne!(swells, Repeats::Never);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Repeats {
    /// Steady, or so few changes that nothing tires.
    Never,
    /// Up and down between the loads of [`JointLoad`] and these.
    Between {
        /// The least load across the axis; below zero for one that reverses, down to as much the other way as
        /// [`JointLoad::across`].
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
        across_least: Force,
        /// The least load along the axis; below zero for one that presses the plies together.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
        along_least: Force,
        /// How often in the life of the joint; none if nobody counts, and then for ever.
        #[cfg_attr(feature = "serde", serde(default))]
        cycles: Option<f64>,
    },
}

impl JointLoad {
    /// No load at all.
    ///
    /// ```
    /// assert_eq!(shankline::joint::JointLoad::none().shock_factor, 1.0);
    /// ```
    #[must_use]
    pub const fn none() -> Self {
        Self {
            across: crate::units::newtons(0.0),
            along: crate::units::newtons(0.0),
            prying: None,
            repeats: Repeats::Never,
            shock_factor: 1.0,
            load_factor: None,
        }
    }

    /// A steady load across the axis, without shock.
    ///
    /// ```
    /// use shankline::{joint::JointLoad, units::newtons};
    /// assert_eq!(JointLoad::across(newtons(5.0)).along, newtons(0.0));
    /// ```
    #[must_use]
    pub const fn across(load: Force) -> Self {
        Self {
            across: load,
            ..Self::none()
        }
    }

    /// A steady load along the axis, without shock.
    ///
    /// ```
    /// use shankline::{joint::JointLoad, units::newtons};
    /// assert_eq!(JointLoad::along(newtons(5.0)).across, newtons(0.0));
    /// ```
    #[must_use]
    pub const fn along(load: Force) -> Self {
        Self {
            along: load,
            ..Self::none()
        }
    }

    /// Refuses loads and factors that make no sense.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, a least load above the
    /// greatest or further below zero than it is above, a factor below 1 or above 100, or cycles that are not at least 1.
    ///
    /// ```
    /// use shankline::joint::JointLoad;
    /// let load = JointLoad { shock_factor: 0.5, ..JointLoad::none() };
    /// assert_eq!(load.validate().unwrap_err().to_string(), "shock factor is 0.5; it must be from 1 to 100");
    /// ```
    pub fn validate(&self) -> Result<(), Error> {
        for (name, load) in [
            ("load across the axis", self.across),
            ("load along the axis", self.along),
        ] {
            not_negative(name, load)?;
            if load > MOST {
                return Err(out_of_range(name, load, Allowed::AtMost(MOST.into())));
            }
        }
        for (name, factor) in [
            ("shock factor", Some(self.shock_factor)),
            ("load factor", self.load_factor),
        ] {
            if let Some(factor) = factor.filter(|factor| !(1.0..=100.0).contains(factor)) {
                let allowed = Allowed::FromTo(1.0.into(), 100.0.into());
                return Err(out_of_range(name, factor, allowed));
            }
        }
        let Repeats::Between {
            across_least,
            along_least,
            cycles,
        } = self.repeats
        else {
            return Ok(());
        };
        for (name, least, greatest) in [
            ("least load across the axis", across_least, self.across),
            ("least load along the axis", along_least, self.along),
        ] {
            let finite = least.raw().is_finite();
            if !finite || least > greatest {
                return Err(out_of_range(name, least, Allowed::AtMost(greatest.into())));
            }
        }
        if along_least < -MOST {
            let allowed = Allowed::AtLeast((-MOST).into());
            let name = "least load along the axis";
            return Err(out_of_range(name, along_least, allowed));
        }
        // The load across is the greatest, whichever way it acts: everything but fatigue goes by it.
        if across_least < -self.across {
            let allowed = Allowed::AtLeast((-self.across).into());
            return Err(out_of_range(
                "least load across the axis",
                across_least,
                allowed,
            ));
        }
        if let Some(cycles) = cycles {
            positive("number of load cycles", cycles)?;
            if cycles < 1.0 {
                let allowed = Allowed::AtLeast(1.0.into());
                return Err(out_of_range("number of load cycles", cycles, allowed));
            }
        }
        Ok(())
    }

    /// What the service loads are multiplied by at a level of resistance.
    pub(super) fn factor(&self, level: Level) -> f64 {
        match level {
            Level::Design => self.shock_factor * self.load_factor.unwrap_or(1.0),
            Level::Nominal | Level::Allowable => self.shock_factor,
        }
    }
}
