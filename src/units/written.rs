//! Quantities as they stand in data files: a number and a unit, in twelve digits or as many as it takes.

use super::digits::twelve_digits;
use super::text::{CELSIUS_ZERO, DEGREE, Dimension, Measured};
#[cfg(feature = "serde")]
use super::text::{TextError, in_unit};
#[cfg(feature = "serde")]
use alloc::format;

/// The units that quantities of a kind are written in.
#[cfg(feature = "schema")]
pub(crate) fn written_units(dimension: Dimension) -> impl Iterator<Item = &'static str> {
    let plain = match dimension {
        Dimension::Temperature => Some("K"),
        _ => plain_unit(dimension),
    };
    core::iter::once(machine_unit(dimension).0).chain(plain)
}

/// Reads the quantity `value` of the unit named `unit`.
#[cfg(feature = "serde")]
pub(super) fn from_value_and_unit<Q: Measured>(value: f64, unit: &str) -> Result<Q, TextError> {
    let refuse = |problem| TextError {
        text: format!("{value} {unit}"),
        expected: Q::DIMENSION,
        problem,
    };
    in_unit(unit, || Some(value)).map_err(refuse)
}

/// The unit that machines read a kind of quantity in, how many SI base units it has, and where it begins.
const fn machine_unit(dimension: Dimension) -> (&'static str, f64, f64) {
    match dimension {
        Dimension::Length => ("mm", 1e-3, 0.0),
        Dimension::Area => ("mm2", 1e-6, 0.0),
        Dimension::Force => ("N", 1.0, 0.0),
        Dimension::Stress => ("MPa", 1e6, 0.0),
        Dimension::Torque => ("N m", 1.0, 0.0),
        Dimension::Angle => ("deg", DEGREE, 0.0),
        Dimension::Stiffness => ("N/mm", 1e3, 0.0),
        Dimension::Potential => ("V", 1.0, 0.0),
        Dimension::Temperature => ("C", 1.0, CELSIUS_ZERO),
        Dimension::Density => ("kg/m3", 1.0, 0.0),
        Dimension::Expansion => ("ppm/K", 1e-6, 0.0),
    }
}

/// The quantity rounded to the twelve digits that it is written with for machines: what is read back is the same.
pub(crate) fn tidy<Q: Measured>(quantity: Q) -> Q {
    let (_, factor, zero) = machine_unit(Q::DIMENSION);
    let value = (quantity.base() - zero) / factor;
    Q::from_base(twelve_digits(value) * factor + zero)
}

/// The value and unit a quantity is written in for machines: mm, mm2, N, MPa, N m, deg, N/mm, C, kg/m3, ppm/K. The value
/// has 12 significant digits, and more only where it would be read as another quantity: a round trip is exact. What
/// would be infinite there is written in m, m2, Pa, rad or N/m, so that it can be read back.
#[cfg(feature = "serde")]
pub(super) fn to_value_and_unit<Q: Measured>(quantity: Q) -> (f64, &'static str) {
    let (rounded, name) = to_rounded_value_and_unit(quantity);
    let (_, factor, zero) = machine_unit(Q::DIMENSION);
    let value = (quantity.base() - zero) / factor;
    if !value.is_finite() {
        return (rounded, name);
    }
    // The fewest digits that are read as the very same quantity.
    let reads_back = |value: f64, name: &str| {
        let back: Result<Q, TextError> = from_value_and_unit(value, name);
        back.is_ok_and(|back| back.base().to_bits() == quantity.base().to_bits())
    };
    let more = (12..=16).filter_map(|digits| format!("{value:.digits$e}").parse().ok());
    let written = core::iter::once(twelve_digits(value)).chain(more);
    let bits = value.to_bits();
    let neighbours = [bits.wrapping_add(1), bits.wrapping_sub(1)].map(f64::from_bits);
    for written in written.chain(neighbours) {
        if reads_back(written, name) {
            return (written, name);
        }
    }
    let plain = match Q::DIMENSION {
        Dimension::Temperature => "K",
        _ => plain_unit(Q::DIMENSION).unwrap_or(name),
    };
    if reads_back(quantity.base(), plain) {
        return (quantity.base(), plain);
    }
    // What is colder than cold.
    (rounded, name)
}

/// The same with twelve digits, whatever is read back.
#[cfg(feature = "serde")]
pub(super) fn to_rounded_value_and_unit<Q: Measured>(quantity: Q) -> (f64, &'static str) {
    let (name, factor, zero) = machine_unit(Q::DIMENSION);
    let value = (quantity.base() - zero) / factor;
    if value.is_infinite() && quantity.base().is_finite() {
        return (quantity.base(), plain_unit(Q::DIMENSION).unwrap_or(name));
    }
    (twelve_digits(value), name)
}

/// The unit in which the number is that of SI base units.
#[cfg(feature = "serde")]
const fn plain_unit(dimension: Dimension) -> Option<&'static str> {
    match dimension {
        Dimension::Length => Some("m"),
        Dimension::Area => Some("m2"),
        Dimension::Stress => Some("Pa"),
        Dimension::Angle => Some("rad"),
        Dimension::Stiffness => Some("N/m"),
        _ => None,
    }
}
