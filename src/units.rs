//! Quantities: type names, constructors, exact US customary units, text in and out.
//!
//! Every quantity of this crate is a [`uom`] type over `f64` in SI base units. The
//! constructors here ([`inches`], [`millimetres`], [`ksi`], ...) are `const`, so tables of
//! lengths can be written as constants.
//!
//! uom itself rounds its US customary units of force, pressure and torque in the seventh digit
//! (its `pound_force` is 8.6e-8 too large). The units of the same names in this module are exact
//! by definition: 1 lbf = 0.453 592 37 kg x 9.806 65 m/s2 = 4.448 221 615 260 5 N. Use these with
//! [`new`](uom::si::Quantity) and `get`:
//!
//! ```
//! use shankline::units::{Force, pound_force, kip};
//! let load = Force::new::<kip>(1.0);
//! assert!((load.get::<pound_force>() - 1000.0).abs() < 1e-9);
//! ```
//!
//! Lengths, areas and SI units are exact in uom; those that joints are measured in are here under the spelling of
//! this crate, the rest in uom (`uom::si::length::yard`). So a number in a unit is `length.get::<millimetre>()`:
//!
//! ```
//! use shankline::units::{inch, inches, kilonewton, millimetre, pounds_force};
//! assert!((inches(0.5).get::<millimetre>() - 12.7).abs() < 1e-12);
//! assert!((pounds_force(1000.0).get::<kilonewton>() - 4.448).abs() < 1e-3);
//! assert!((inches(0.5).get::<inch>() - 0.5).abs() < 1e-15);
//! ```
//!
//! | question | begins at |
//! |---|---|
//! | make a quantity | [`inches`], [`millimetres`], [`newtons`], [`ksi`], ... |
//! | its number in a unit | `get` with [`millimetre`], [`inch`], [`kilonewton`], [`kip`], [`megapascal`], [`newton_metre`], ... |
//! | read one from text, `"5/8 in"`, `"75 lbf ft"` | [`parse`]; with a tolerance [`Spread`](crate::Spread), by `parse` of text |
//! | show one to a person, in SI or US customary units | [`shown`], [`UnitSystem`] |
//! | read and write one in data files, always with its unit | the module `quantity` (feature `serde`) |

use core::marker::PhantomData;

mod digits;
mod shown;
pub(crate) mod text;
mod written;

#[cfg(feature = "serde")]
pub mod quantity;

pub(crate) use digits::twelve_digits;
pub use exact_force::{kip, pound_force};
pub use exact_pressure::{kip_per_square_inch, pound_force_per_square_inch};
pub use exact_torque::{pound_force_foot, pound_force_inch};
pub(crate) use shown::{Rounding, decimals_for, plain, rounded};
pub use shown::{Shown, UnitSystem, inch_fraction, shown};
pub use text::{Dimension, Measured, TextError, TextProblem, parse};
pub(crate) use text::{MOST_CHARACTERS, is_too_long, starts_unit, too_long};
pub use uom::si::f64::{
    Angle, Area, ElectricPotential, Force, Length, Mass, Pressure, RadiantExposure, Ratio,
    TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, Torque, Volume,
};
pub(crate) use written::tidy;
#[cfg(feature = "schema")]
pub(crate) use written::written_units;

pub use uom::si::{
    angle::degree,
    area::{square_inch, square_millimeter as square_millimetre},
    force::{kilonewton, newton},
    length::{inch, micrometer as micrometre, millimeter as millimetre},
    mass::kilogram,
    pressure::{gigapascal, megapascal},
    ratio::{percent as per_cent, ratio},
    thermodynamic_temperature::{degree_celsius, degree_fahrenheit},
    torque::newton_meter as newton_metre,
};

/// A density: mass over volume.
pub type Density = uom::si::f64::MassDensity;

/// A stress or a strength: force over area.
pub type Stress = Pressure;

/// A stiffness: force over the length it moves, whatever uom calls that dimension (its surface
/// tension is another kind of quantity, which no quotient is).
pub type Stiffness = RadiantExposure;

/// 1 lbf in newtons, by definition of the avoirdupois pound and of standard gravity.
pub(crate) const POUND_FORCE: f64 = 4.448_221_615_260_5;
/// 1 in in metres, by definition.
pub(crate) const INCH: f64 = 0.0254;
/// 1 lbf/in2 in pascals.
pub(crate) const PSI: f64 = POUND_FORCE / (INCH * INCH);

/// Lengths that print the same are the same: tables and stacks carry rounding residues of 1e-18 m.
pub(crate) const SAME_LENGTH: Length = from_base(1e-10);

// uom's macro defines one quantity's units per module and writes its own short docs. It repeats
// the factor for every storage type that any crate of the build turns on, so the factors are
// literals without a type; a test holds them to the constants above.
#[allow(missing_docs, clippy::doc_markdown)]
mod exact_force {
    unit! {
        system: uom::si;
        quantity: uom::si::force;
        @pound_force: 4.448_221_615_260_5; "lbf", "pound-force", "pounds-force";
        @kip: 4_448.221_615_260_5; "kip", "kip", "kips";
    }
}
#[allow(missing_docs, clippy::doc_markdown)]
mod exact_pressure {
    unit! {
        system: uom::si;
        quantity: uom::si::pressure;
        @pound_force_per_square_inch: 4.448_221_615_260_5 / (0.0254 * 0.0254); "psi", "pound-force per square inch", "pounds-force per square inch";
        @kip_per_square_inch: 4_448.221_615_260_5 / (0.0254 * 0.0254); "ksi", "kip per square inch", "kips per square inch";
    }
}
#[allow(missing_docs, clippy::doc_markdown)]
mod exact_torque {
    unit! {
        system: uom::si;
        quantity: uom::si::torque;
        @pound_force_inch: 4.448_221_615_260_5 * 0.0254; "lbf in", "pound-force inch", "pound-force inches";
        @pound_force_foot: 4.448_221_615_260_5 * 12.0 * 0.0254; "lbf ft", "pound-force foot", "pound-force feet";
    }
}

/// Builds a quantity from its value in SI base units. The only place that names uom's fields.
pub(crate) const fn from_base<D, U>(value: f64) -> uom::si::Quantity<D, U, f64>
where
    D: uom::si::Dimension + ?Sized,
    U: uom::si::Units<f64> + ?Sized,
{
    uom::si::Quantity {
        dimension: PhantomData,
        units: PhantomData,
        value,
    }
}

/// A length in inches. Exact: 1 in = 25.4 mm.
///
/// ```
/// use shankline::units::{inches, millimetres};
/// assert_eq!(inches(0.5), millimetres(12.7));
/// ```
#[must_use]
pub const fn inches(value: f64) -> Length {
    from_base(value * INCH)
}

/// A length in millimetres.
///
/// ```
/// use shankline::uom::si::length::meter;
/// assert_eq!(shankline::units::millimetres(1500.0).get::<meter>(), 1.5);
/// ```
#[must_use]
pub const fn millimetres(value: f64) -> Length {
    from_base(value * 1e-3)
}

/// A length in micrometres.
///
/// ```
/// use shankline::units::{micrometres, millimetres};
/// assert!((micrometres(40.0) - millimetres(0.04)).value.abs() < 1e-18);
/// ```
#[must_use]
pub const fn micrometres(value: f64) -> Length {
    from_base(value * 1e-6)
}

/// An area in square inches.
///
/// ```
/// use shankline::uom::si::area::square_millimeter;
/// let area = shankline::units::square_inches(1.0);
/// assert!((area.get::<square_millimeter>() - 645.16).abs() < 1e-9);
/// ```
#[must_use]
pub const fn square_inches(value: f64) -> Area {
    from_base(value * (INCH * INCH))
}

/// An area in square millimetres.
///
/// ```
/// use shankline::uom::si::area::square_centimeter;
/// let area = shankline::units::square_millimetres(245.0);
/// assert!((area.get::<square_centimeter>() - 2.45).abs() < 1e-12);
/// ```
#[must_use]
pub const fn square_millimetres(value: f64) -> Area {
    from_base(value * 1e-6)
}

/// A force in newtons.
///
/// ```
/// use shankline::uom::si::force::kilonewton;
/// assert_eq!(shankline::units::newtons(2500.0).get::<kilonewton>(), 2.5);
/// ```
#[must_use]
pub const fn newtons(value: f64) -> Force {
    from_base(value)
}

/// A force in pounds-force. Exact: 1 lbf = 4.448 221 615 260 5 N.
///
/// ```
/// use shankline::uom::si::force::newton;
/// assert_eq!(shankline::units::pounds_force(1.0).get::<newton>(), 4.448_221_615_260_5);
/// ```
#[must_use]
pub const fn pounds_force(value: f64) -> Force {
    from_base(value * POUND_FORCE)
}

/// A force in kilonewtons.
///
/// ```
/// use shankline::units::{kilonewtons, newtons};
/// assert_eq!(kilonewtons(171.5), newtons(171.5e3));
/// ```
#[must_use]
pub const fn kilonewtons(value: f64) -> Force {
    from_base(value * 1e3)
}

/// A force in kips (1000 lbf).
///
/// ```
/// use shankline::units::{kips, pounds_force};
/// assert!((kips(39.0) - pounds_force(39_000.0)).abs() < pounds_force(1e-9));
/// ```
#[must_use]
pub const fn kips(value: f64) -> Force {
    from_base(value * (1000.0 * POUND_FORCE))
}

/// A stress in pounds-force per square inch.
///
/// ```
/// use shankline::units::{ksi, psi};
/// assert!((psi(85_000.0) - ksi(85.0)).abs() < psi(1e-9));
/// ```
#[must_use]
pub const fn psi(value: f64) -> Stress {
    from_base(value * PSI)
}

/// A stress in kips per square inch (1000 lbf/in2).
///
/// ```
/// use shankline::uom::si::pressure::megapascal;
/// assert!((shankline::units::ksi(1.0).get::<megapascal>() - 6.894_757_293_168).abs() < 1e-9);
/// ```
#[must_use]
pub const fn ksi(value: f64) -> Stress {
    from_base(value * (1000.0 * PSI))
}

/// A modulus of elasticity in millions of pounds-force per square inch (1000 ksi).
///
/// ```
/// use shankline::uom::si::pressure::gigapascal;
/// assert!((shankline::units::msi(29.0).get::<gigapascal>() - 199.948).abs() < 1e-3);
/// ```
#[must_use]
pub const fn msi(value: f64) -> Stress {
    from_base(value * (1e6 * PSI))
}

/// A stress in megapascals (N/mm2).
///
/// ```
/// use shankline::uom::si::pressure::pascal;
/// assert_eq!(shankline::units::megapascals(640.0).get::<pascal>(), 640e6);
/// ```
#[must_use]
pub const fn megapascals(value: f64) -> Stress {
    from_base(value * 1e6)
}

/// A modulus of elasticity in gigapascals.
///
/// ```
/// use shankline::units::{gigapascals, megapascals};
/// assert_eq!(gigapascals(205.0), megapascals(205e3));
/// ```
#[must_use]
pub const fn gigapascals(value: f64) -> Stress {
    from_base(value * 1e9)
}

/// A torque in newton metres.
///
/// ```
/// use shankline::uom::si::torque::newton_millimeter;
/// let torque = shankline::units::newton_metres(1.5);
/// assert!((torque.get::<newton_millimeter>() - 1500.0).abs() < 1e-9);
/// ```
#[must_use]
pub const fn newton_metres(value: f64) -> Torque {
    from_base(value)
}

/// A torque in pound-force feet.
///
/// ```
/// use shankline::uom::si::torque::newton_meter;
/// let torque = shankline::units::pound_force_feet(75.0);
/// assert!((torque.get::<newton_meter>() - 101.686_346).abs() < 1e-6);
/// ```
#[must_use]
pub const fn pound_force_feet(value: f64) -> Torque {
    from_base(value * (POUND_FORCE * 12.0 * INCH))
}

/// A torque in pound-force inches, a twelfth of a pound-force foot.
///
/// ```
/// use shankline::units::{pound_force_feet, pound_force_inches};
/// let difference = pound_force_inches(900.0) - pound_force_feet(75.0);
/// assert!(difference.value.abs() < 1e-12);
/// ```
#[must_use]
pub const fn pound_force_inches(value: f64) -> Torque {
    from_base(value * (POUND_FORCE * INCH))
}

/// A ratio in per cent.
///
/// ```
/// use shankline::uom::si::ratio::ratio;
/// assert_eq!(shankline::units::percent(18.0).get::<ratio>(), 0.18);
/// ```
#[must_use]
pub const fn percent(value: f64) -> Ratio {
    from_base(value * 0.01)
}

/// A density in kilograms per cubic metre.
///
/// ```
/// use shankline::units::kilograms_per_cubic_metre;
/// assert_eq!(kilograms_per_cubic_metre(350.0).value, 350.0);
/// ```
#[must_use]
pub const fn kilograms_per_cubic_metre(value: f64) -> Density {
    from_base(value)
}

/// An angle in degrees.
///
/// ```
/// use shankline::uom::si::angle::radian;
/// let half_turn = shankline::units::degrees(180.0);
/// assert!((half_turn.get::<radian>() - core::f64::consts::PI).abs() < 1e-15);
/// ```
#[must_use]
pub const fn degrees(value: f64) -> Angle {
    from_base(value * (core::f64::consts::PI / 180.0))
}

/// A stiffness in newtons per millimetre.
///
/// ```
/// use shankline::units::{millimetres, newtons, newtons_per_millimetre};
/// let stiffness = newtons(500.0) / millimetres(2.0);
/// assert!((stiffness - newtons_per_millimetre(250.0)).value.abs() < 1e-6);
/// ```
#[must_use]
pub const fn newtons_per_millimetre(value: f64) -> Stiffness {
    from_base(value * 1e3)
}

/// A stiffness in pounds-force per inch.
///
/// ```
/// use shankline::units::{inches, pounds_force, pounds_force_per_inch};
/// let stiffness = pounds_force(500.0) / inches(2.0);
/// assert!((stiffness - pounds_force_per_inch(250.0)).value.abs() < 1e-6);
/// ```
#[must_use]
pub const fn pounds_force_per_inch(value: f64) -> Stiffness {
    from_base(value * (POUND_FORCE / INCH))
}

/// An electric potential in volts.
///
/// ```
/// use shankline::units::volts;
/// assert_eq!((volts(0.85) - volts(0.35)).value, 0.5);
/// ```
#[must_use]
pub const fn volts(value: f64) -> ElectricPotential {
    from_base(value)
}

/// A change of temperature in kelvin (degrees Celsius).
///
/// ```
/// use shankline::units::{celsius, kelvins};
/// let hot = celsius(20.0) + kelvins(100.0);
/// assert!((hot.value - celsius(120.0).value).abs() < 1e-9);
/// ```
#[must_use]
pub const fn kelvins(value: f64) -> TemperatureInterval {
    from_base(value)
}

/// A temperature in degrees Celsius.
///
/// ```
/// use shankline::uom::si::thermodynamic_temperature::kelvin;
/// assert_eq!(shankline::units::celsius(0.0).get::<kelvin>(), 273.15);
/// ```
#[must_use]
pub const fn celsius(value: f64) -> ThermodynamicTemperature {
    from_base(value + 273.15)
}

/// A temperature in degrees Fahrenheit.
///
/// ```
/// use shankline::uom::si::thermodynamic_temperature::degree_celsius;
/// let limit = shankline::units::fahrenheit(248.0);
/// assert!((limit.get::<degree_celsius>() - 120.0).abs() < 1e-9);
/// ```
#[must_use]
pub const fn fahrenheit(value: f64) -> ThermodynamicTemperature {
    from_base((value + 459.67) * (5.0 / 9.0))
}

/// An expansion in millionths per degree Fahrenheit (microinches per inch and degree).
///
/// ```
/// use shankline::uom::si::temperature_coefficient::ppm_per_kelvin;
/// let steel = shankline::units::ppm_per_fahrenheit(6.5);
/// assert!((steel.get::<ppm_per_kelvin>() - 11.7).abs() < 1e-9);
/// ```
#[must_use]
pub const fn ppm_per_fahrenheit(value: f64) -> TemperatureCoefficient {
    from_base(value * 1.8e-6)
}

/// An expansion in millionths per kelvin.
///
/// ```
/// use shankline::units::{ppm_per_fahrenheit, ppm_per_kelvin};
/// assert!(((ppm_per_kelvin(11.7) / ppm_per_fahrenheit(6.5)).value - 1.0).abs() < 1e-12);
/// ```
#[must_use]
pub const fn ppm_per_kelvin(value: f64) -> TemperatureCoefficient {
    from_base(value * 1e-6)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_and_constructors_agree() {
        let same = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 1e-15, "{a} {b}");
        same(
            Force::new::<pound_force>(1.0).value,
            pounds_force(1.0).value,
        );
        same(Force::new::<kip>(1.0).value, 1000.0 * POUND_FORCE);
        same(Pressure::new::<pound_force_per_square_inch>(1.0).value, PSI);
        same(
            Pressure::new::<kip_per_square_inch>(1.0).value,
            ksi(1.0).value,
        );
        same(
            Torque::new::<pound_force_inch>(12.0).value,
            pound_force_feet(1.0).value,
        );
        same(
            Torque::new::<pound_force_inch>(1.0).value,
            pound_force_inches(1.0).value,
        );
        same(
            Torque::new::<pound_force_foot>(1.0).value,
            pound_force_feet(1.0).value,
        );
    }
}
