//! One comparison of a load with a resistance, in one shape for every mode of failure.
//!
//! ```
//! use shankline::strength::check::{Check, Level, Mode, Place};
//! use shankline::{source::Method, units::newtons};
//! # fn main() -> Result<(), shankline::Error> {
//! static TEST: Method = Method::own("test of 12 May");
//! let (used, level) = (newtons(40e3), Level::Design);
//! let shear = Check::new(Mode::BoltShear, Place::Plane(1), used, newtons(50e3), level, &TEST)?;
//! let bearing = Check::new(Mode::Bearing, Place::Ply(2), used, newtons(64e3), level, &TEST)?;
//! let governing = Check::governing([shear, bearing]).unwrap();
//! assert_eq!((governing.mode, governing.place), (Mode::BoltShear, Place::Plane(1)));
//! assert!((governing.utilisation.value - 0.8).abs() < 1e-15);
//! # Ok(())
//! # }
//! ```

use alloc::format;
use core::{fmt, mem::discriminant};

mod mode;
mod procedure;

pub use mode::{Level, Mode};
pub use procedure::NotChecked;
pub(crate) use procedure::all_hold;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Amount, Error, not_negative, out_of_range, positive};
use crate::source::Method;
use crate::units::{Force, Ratio};

/// Where in the joint. Counted from 1; planes and plies from the head.
///
/// ```
/// use shankline::strength::check::Place;
/// assert_eq!(Place::Plane(2).to_string(), "shear plane 2");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Place {
    /// The joint as a whole.
    Joint,
    /// One bolt of the group.
    Bolt(usize),
    /// One shear plane.
    Plane(usize),
    /// One ply.
    Ply(usize),
    /// The nut or the threads it holds.
    Nut,
    /// The head of the bolt, or what lies under it.
    Head,
    /// The part with a threaded hole that takes the place of a nut.
    TappedPart,
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Joint => f.pad("joint"),
            Self::Bolt(n) => write!(f, "bolt {n}"),
            Self::Plane(n) => write!(f, "shear plane {n}"),
            Self::Ply(n) => write!(f, "ply {n}"),
            Self::Nut => f.pad("nut"),
            Self::Head => f.pad("head"),
            Self::TappedPart => f.pad("tapped part"),
        }
    }
}

/// The resistance of one mode of failure, at the levels its method defines.
///
/// A level that the method does not define is `None`: a limit-state code states no allowable load,
/// and none is made up here.
///
/// ```
/// use shankline::strength::check::{Level, Resistance};
/// use shankline::units::newtons;
/// let bearing = Resistance::from_levels(None, Some(newtons(64e3)), None).unwrap();
/// assert_eq!(bearing.at(Level::Design).unwrap(), newtons(64e3));
/// assert!(bearing.at(Level::Allowable).is_err());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Resistance {
    /// Nominal or characteristic: no factor taken off.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub nominal: Option<Force>,
    /// Design resistance, for factored loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub design: Option<Force>,
    /// Allowable load, for service loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub allowable: Option<Force>,
}

impl Resistance {
    /// The resistance at a level.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level.
    ///
    /// ```
    /// use shankline::strength::check::{Level, Resistance};
    /// assert!(Resistance::default().at(Level::Nominal).is_err());
    /// ```
    pub fn at(&self, level: Level) -> Result<Force, Error> {
        match level {
            Level::Nominal => self.nominal,
            Level::Design => self.design,
            Level::Allowable => self.allowable,
        }
        .ok_or_else(|| no_level(level))
    }

    /// A resistance from a method or test of the caller's own.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is not positive and finite.
    ///
    /// ```
    /// use shankline::{strength::check::Resistance, units::newtons};
    /// assert!(Resistance::from_levels(None, None, Some(newtons(0.0))).is_err());
    /// ```
    pub fn from_levels(
        nominal: Option<Force>,
        design: Option<Force>,
        allowable: Option<Force>,
    ) -> Result<Self, Error> {
        Self {
            nominal,
            design,
            allowable,
        }
        .sound()
    }

    /// The steps from the nominal resistance Rn to the design and the allowable one.
    pub(crate) fn factored(
        &self,
        mut derivation: Derivation,
        resistance_factor: Option<f64>,
        safety_factor: Option<f64>,
    ) -> Derivation {
        let Some(nominal) = self.nominal else {
            return derivation;
        };
        if let (Some(factor), Some(design)) = (resistance_factor, self.design) {
            derivation = derivation.step(
                Step::new("design resistance", "Rd", "phi * Rn", design)
                    .with("phi", factor)
                    .with("Rn", nominal),
            );
        }
        if let (Some(factor), Some(allowable)) = (safety_factor, self.allowable) {
            derivation = derivation.step(
                Step::new("allowable load", "Ra", "Rn / n", allowable)
                    .with("Rn", nominal)
                    .with("n", factor),
            );
        }
        derivation
    }

    /// Every level times a factor.
    #[inline]
    pub(crate) fn times(self, factor: f64) -> Self {
        let scale = |load: Option<Force>| load.map(|load| factor * load);
        Self {
            nominal: scale(self.nominal),
            design: scale(self.design),
            allowable: scale(self.allowable),
        }
    }

    /// Refuses loads that overflowed.
    #[inline]
    pub(crate) fn sound(self) -> Result<Self, Error> {
        for load in [self.nominal, self.design, self.allowable]
            .into_iter()
            .flatten()
        {
            positive("resistance", load)?;
        }
        Ok(self)
    }
}

#[cold]
fn no_level(level: Level) -> Error {
    Error::NoValue {
        quantity: match level {
            Level::Nominal => "nominal resistance",
            Level::Design => "design resistance",
            Level::Allowable => "allowable load",
        },
        subject: "this method".into(),
        reason: "its publisher defines none",
    }
}

/// A load held against a resistance.
///
/// The load must be of the level of the resistance: factored loads against a design resistance,
/// service loads against an allowable one.
///
/// ```
/// use shankline::strength::check::{Check, Level, Mode, Place};
/// use shankline::{source::Method, units::newton_metres};
/// # fn main() -> Result<(), shankline::Error> {
/// static TEST: Method = Method::own("test of 12 May");
/// let (moment, resistance) = (newton_metres(90.0), newton_metres(120.0));
/// let pin = Check::new(Mode::BoltBending, Place::Bolt(1), moment, resistance, Level::Design, &TEST)?;
/// assert_eq!(pin.utilisation.value, 0.75);
/// assert!(pin.holds());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Check {
    /// What would fail.
    pub mode: Mode,
    /// Where.
    pub place: Place,
    /// The load, moment, or sum of an interaction.
    pub demand: Amount,
    /// What it is compared with: 1 for an interaction.
    pub resistance: Amount,
    /// What the resistance is.
    pub level: Level,
    /// Share of the resistance in use. For a combination of loads: by how much all of them together
    /// would have to be divided to be just carried.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
    /// Whether the resistance over the demand is a factor on the load. It is none of a distance, of a pressure that
    /// grows with the root of the load, or of friction that a pull takes away as it grows.
    pub proportional: bool,
    /// The method: publisher, edition, clause.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub method: &'static Method,
    /// What the user must be told.
    pub cautions: Cautions,
}

impl Check {
    /// The utilisation demand / resistance.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a demand that is negative or not finite, a resistance that is not positive
    /// and finite, or a utilisation that overflows; [`Error::Mismatch`] for amounts of two kinds.
    ///
    /// ```
    /// use shankline::strength::check::{Check, Level, Mode, Place};
    /// use shankline::{source::Method, units::newtons};
    /// static TEST: Method = Method::own("test of 12 May");
    /// let (load, resistance) = (newtons(5.0), newtons(5.0));
    /// let check = Check::new(Mode::Slip, Place::Joint, load, resistance, Level::Design, &TEST).unwrap();
    /// assert_eq!(check.utilisation.value, 1.0); // exactly, at capacity
    /// ```
    pub fn new<Q: Into<Amount>>(
        mode: Mode,
        place: Place,
        demand: Q,
        resistance: Q,
        level: Level,
        method: &'static Method,
    ) -> Result<Self, Error> {
        let (demand, resistance) = (demand.into(), resistance.into());
        if discriminant(&demand) != discriminant(&resistance) {
            return Err(Error::Mismatch(format!(
                "the demand ({demand}) and the resistance ({resistance}) are not of one kind"
            )));
        }
        let (load, strength) = (demand.base(), resistance.base());
        if !(0.0..f64::INFINITY).contains(&load) {
            return Err(out_of_range("demand", demand, Allowed::NotNegative));
        }
        if !(strength > 0.0 && strength < f64::INFINITY) {
            return Err(out_of_range("resistance", resistance, Allowed::Positive));
        }
        Ok(Self {
            mode,
            place,
            demand,
            resistance,
            level,
            utilisation: not_negative("utilisation", Ratio::from(load / strength))?,
            proportional: true,
            method,
            cautions: Cautions::default(),
        })
    }

    /// The check of a resistance that does not stay, or of a demand that does not grow as the load does.
    #[must_use]
    #[inline]
    pub(crate) const fn not_proportional(mut self) -> Self {
        self.proportional = false;
        self
    }

    /// The check with more cautions.
    #[must_use]
    #[inline]
    pub(crate) fn warned(mut self, cautions: Cautions) -> Self {
        self.cautions = self.cautions.and(cautions);
        self
    }

    /// The check with the caution of its method, if that was recalled.
    #[must_use]
    pub(crate) fn warned_of_method(self) -> Self {
        let recalled = Caution::of_method(self.method);
        self.warned(Cautions::default().with(recalled))
    }

    /// Whether the resistance is not exceeded.
    ///
    /// ```
    /// use shankline::strength::check::{Check, Level, Mode, Place};
    /// use shankline::{source::Method, units::newtons};
    /// static TEST: Method = Method::own("test of 12 May");
    /// let (load, resistance) = (newtons(6.0), newtons(5.0));
    /// let check = Check::new(Mode::Slip, Place::Joint, load, resistance, Level::Design, &TEST).unwrap();
    /// assert!(!check.holds());
    /// ```
    #[must_use]
    pub fn holds(&self) -> bool {
        self.utilisation.value <= 1.0
    }

    /// The check with the highest utilisation; the first of equals.
    ///
    /// ```
    /// use shankline::strength::check::Check;
    /// assert_eq!(Check::governing([]), None);
    /// ```
    #[must_use]
    pub fn governing(checks: impl IntoIterator<Item = Self>) -> Option<Self> {
        checks.into_iter().reduce(|worst, next| {
            if next.utilisation > worst.utilisation {
                next
            } else {
                worst
            }
        })
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::strength::check::{Check, Level, Mode, Place};
    /// use shankline::{source::Method, units::newtons};
    /// static TEST: Method = Method::own("test of 12 May");
    /// let (load, resistance) = (newtons(6.0), newtons(5.0));
    /// let check = Check::new(Mode::Slip, Place::Joint, load, resistance, Level::Design, &TEST).unwrap();
    /// assert_eq!(check.cautions().count(), 0);
    /// ```
    pub fn cautions(&self) -> impl Iterator<Item = &Caution> {
        self.cautions.iter()
    }
}

impl fmt::Display for Check {
    /// `bolt shear, shear plane 1: 80.0 % of the design resistance`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self {
            mode, place, level, ..
        } = self;
        let used = self.utilisation.value * 100.0;
        write!(f, "{mode}, {place}: {used:.1} % of the {level} resistance")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::newtons;
    use alloc::string::ToString;

    fn check(load: f64, resistance: f64, place: Place) -> Result<Check, Error> {
        static TEST: Method = Method::own("invented");
        let (load, resistance) = (newtons(load), newtons(resistance));
        Check::new(Mode::Slip, place, load, resistance, Level::Design, &TEST)
    }

    #[test]
    fn a_resistance_is_more_than_nothing_and_less_than_endless() {
        for (load, resistance, good) in [
            (1.0, 1.0, true),
            (0.0, 1.0, true),
            (0.0, 0.0, false),
            (1.0, 0.0, false),
            (0.0, -1.0, false),
            (0.0, f64::INFINITY, false),
            (1.0, f64::INFINITY, false),
            (0.0, f64::NAN, false),
            (f64::INFINITY, 1.0, false),
            (-1.0, 1.0, false),
        ] {
            let made = check(load, resistance, Place::Joint);
            assert_eq!(made.is_ok(), good, "{load} of {resistance}");
            if let (0.0, Err(error)) = (load, made) {
                assert!(error.to_string().starts_with("resistance "), "{error}");
            }
        }
        assert!(check(1.0, 1.0, Place::Joint).unwrap().holds());
        assert!(!check(1.000_001, 1.0, Place::Joint).unwrap().holds());
    }

    #[test]
    fn of_equal_checks_the_first_governs() {
        let of = |loads: [f64; 3]| {
            let checks = (1..)
                .zip(loads)
                .map(|(n, load)| check(load, 2.0, Place::Bolt(n)).unwrap());
            Check::governing(checks).unwrap().place
        };
        assert_eq!(of([1.0, 1.0, 1.0]), Place::Bolt(1));
        assert_eq!(of([1.0, 1.5, 1.5]), Place::Bolt(2));
        assert_eq!(of([1.0, 0.5, 1.5]), Place::Bolt(3));
    }
}
