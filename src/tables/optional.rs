//! Constructors of optional quantities, for the generated tables.
//!
//! `Some(millimetres(1.5))` in their place means the same, but makes the compiler infer the type
//! of a dimension at every one of some nine thousand cells: a quarter of the build time of the crate.
#![allow(clippy::unnecessary_wraps)] // the wrap is what they are for

use crate::units::{
    self, Density, Length, Ratio, Stress, TemperatureCoefficient, ThermodynamicTemperature,
};

pub(super) const fn inches(value: f64) -> Option<Length> {
    Some(units::inches(value))
}

pub(super) const fn millimetres(value: f64) -> Option<Length> {
    Some(units::millimetres(value))
}

pub(super) const fn micrometres(value: f64) -> Option<Length> {
    Some(units::micrometres(value))
}

pub(super) const fn ksi(value: f64) -> Option<Stress> {
    Some(units::ksi(value))
}

pub(super) const fn msi(value: f64) -> Option<Stress> {
    Some(units::msi(value))
}

pub(super) const fn megapascals(value: f64) -> Option<Stress> {
    Some(units::megapascals(value))
}

pub(super) const fn kilograms_per_cubic_metre(value: f64) -> Option<Density> {
    Some(units::kilograms_per_cubic_metre(value))
}

pub(super) const fn percent(value: f64) -> Option<Ratio> {
    Some(units::percent(value))
}

pub(super) const fn celsius(value: f64) -> Option<ThermodynamicTemperature> {
    Some(units::celsius(value))
}

pub(super) const fn fahrenheit(value: f64) -> Option<ThermodynamicTemperature> {
    Some(units::fahrenheit(value))
}

pub(super) const fn ppm_per_fahrenheit(value: f64) -> Option<TemperatureCoefficient> {
    Some(units::ppm_per_fahrenheit(value))
}
