//! Quantities as people write them: `"5/8 in"`, `"1-1/2 in"`, `"16 mm"`, `"75 lbf ft"`.

#[cfg(feature = "schema")]
use alloc::vec::Vec;
use alloc::{format, string::String};
use core::fmt;

use super::{
    Angle, Area, Density, ElectricPotential, Force, INCH, Length, POUND_FORCE, PSI, Pressure,
    RadiantExposure, TemperatureCoefficient, ThermodynamicTemperature, Torque,
};

/// The kinds of quantity that have a written form.
///
/// ```
/// use shankline::units::{Dimension, Length, Measured};
/// assert_eq!(Length::DIMENSION, Dimension::Length);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Dimension {
    /// A length, such as a thickness or a diameter.
    Length,
    /// An area, such as a tensile stress area.
    Area,
    /// A force, such as a load or a preload.
    Force,
    /// A stress or strength.
    Stress,
    /// A torque.
    Torque,
    /// An angle.
    Angle,
    /// A stiffness: force over length.
    Stiffness,
    /// An electric potential, such as an anodic index.
    Potential,
    /// A temperature on a scale with a zero, not a difference of two.
    Temperature,
    /// A density, such as that of timber.
    Density,
    /// A coefficient of linear expansion.
    Expansion,
}

impl Dimension {
    /// Two examples of how a quantity of this kind is written, for messages.
    pub(crate) const fn examples(self) -> &'static str {
        match self {
            Self::Length => "\"5/8 in\" or \"16 mm\"",
            Self::Area => "\"0.334 in2\" or \"245 mm2\"",
            Self::Force => "\"9000 lbf\" or \"40 kN\"",
            Self::Stress => "\"85 ksi\" or \"640 MPa\"",
            Self::Torque => "\"75 lbf ft\" or \"100 N m\"",
            Self::Angle => "\"120 deg\" or \"0.5 rad\"",
            Self::Stiffness => "\"900 kN/mm\" or \"5000 kip/in\"",
            Self::Potential => "\"0.85 V\" or \"850 mV\"",
            Self::Temperature => "\"120 C\" or \"250 F\"",
            Self::Density => "\"350 kg/m3\"",
            Self::Expansion => "\"11.5 ppm/K\" or \"6.4 ppm/F\"",
        }
    }
}

impl fmt::Display for Dimension {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Length => "length",
            Self::Area => "area",
            Self::Force => "force",
            Self::Stress => "stress",
            Self::Torque => "torque",
            Self::Angle => "angle",
            Self::Stiffness => "stiffness",
            Self::Potential => "electric potential",
            Self::Temperature => "temperature",
            Self::Density => "density",
            Self::Expansion => "coefficient of expansion",
        })
    }
}

mod sealed {
    pub trait Sealed {}
}

/// A quantity with a written form: [`Length`], [`Area`], [`Force`], [`Stress`](super::Stress),
/// [`Torque`], [`Angle`], [`Stiffness`](super::Stiffness), [`ElectricPotential`],
/// [`ThermodynamicTemperature`], [`Density`] and [`TemperatureCoefficient`].
/// Implemented by this crate only.
///
/// ```
/// use shankline::units::{Force, Measured, newtons};
/// assert_eq!(newtons(5.0).base(), 5.0);
/// assert_eq!(Force::from_base(5.0), newtons(5.0));
/// ```
pub trait Measured: Copy + sealed::Sealed {
    /// What kind of quantity this is.
    const DIMENSION: Dimension;
    /// The value in SI base units.
    #[must_use]
    fn base(self) -> f64;
    /// The quantity of that value in SI base units.
    #[must_use]
    fn from_base(value: f64) -> Self;
}

macro_rules! measured {
    ($($quantity:ident: $dimension:ident),*) => {$(
        impl sealed::Sealed for $quantity {}
        impl Measured for $quantity {
            const DIMENSION: Dimension = Dimension::$dimension;
            fn base(self) -> f64 {
                self.value
            }
            fn from_base(value: f64) -> Self {
                super::from_base(value)
            }
        }
    )*};
}
measured!(Length: Length, Area: Area, Force: Force, Pressure: Stress, Torque: Torque, Angle: Angle, RadiantExposure: Stiffness, ElectricPotential: Potential, ThermodynamicTemperature: Temperature, Density: Density, TemperatureCoefficient: Expansion);

/// One unit a quantity may be written in. The first name is the one written out; names are
/// compared after separators (space, dot, hyphen, star) are taken away.
struct Unit {
    dimension: Dimension,
    names: &'static [&'static str],
    base: f64,
    /// Where its zero lies, in SI base units.
    zero: f64,
}

const fn unit(dimension: Dimension, names: &'static [&'static str], base: f64) -> Unit {
    Unit {
        dimension,
        names,
        base,
        zero: 0.0,
    }
}

const fn degree(names: &'static [&'static str], base: f64, zero: f64) -> Unit {
    Unit {
        dimension: Dimension::Temperature,
        names,
        base,
        zero,
    }
}

const UNITS: &[Unit] = &[
    unit(Dimension::Length, &["mm"], 1e-3),
    unit(
        Dimension::Length,
        &["in", "inch", "inches", "\"", "″", "”"],
        INCH,
    ),
    unit(Dimension::Length, &["cm"], 1e-2),
    unit(Dimension::Length, &["m"], 1.0),
    unit(Dimension::Length, &["um", "µm"], 1e-6),
    unit(Dimension::Length, &["ft", "foot", "feet"], 12.0 * INCH),
    unit(Dimension::Area, &["mm2", "mm²", "sqmm"], 1e-6),
    unit(Dimension::Area, &["in2", "in²", "sqin"], INCH * INCH),
    unit(Dimension::Area, &["cm2", "cm²"], 1e-4),
    unit(Dimension::Area, &["m2", "m²"], 1.0),
    unit(Dimension::Force, &["N"], 1.0),
    unit(Dimension::Force, &["kN"], 1e3),
    unit(Dimension::Force, &["MN"], 1e6),
    unit(Dimension::Force, &["lbf"], POUND_FORCE),
    unit(
        Dimension::Force,
        &["kip", "kips", "klbf"],
        1e3 * POUND_FORCE,
    ),
    unit(Dimension::Stress, &["MPa", "N/mm2", "N/mm²"], 1e6),
    unit(Dimension::Stress, &["Pa"], 1.0),
    unit(Dimension::Stress, &["kPa"], 1e3),
    unit(Dimension::Stress, &["GPa"], 1e9),
    unit(Dimension::Stress, &["psi", "lbf/in2", "lbf/in²"], PSI),
    unit(Dimension::Stress, &["ksi", "kip/in2", "kip/in²"], 1e3 * PSI),
    unit(Dimension::Torque, &["Nm"], 1.0),
    unit(Dimension::Torque, &["Nmm"], 1e-3),
    unit(Dimension::Torque, &["kNm"], 1e3),
    unit(
        Dimension::Torque,
        &["lbfft", "ftlbf", "ftlb", "lbft", "ftlbs", "lbsft"],
        POUND_FORCE * 12.0 * INCH,
    ),
    unit(
        Dimension::Torque,
        &["lbfin", "inlbf", "inlb", "lbin", "inlbs", "lbsin"],
        POUND_FORCE * INCH,
    ),
    unit(Dimension::Angle, &["deg", "degree", "degrees"], DEGREE),
    unit(Dimension::Angle, &["rad"], 1.0),
    unit(Dimension::Stiffness, &["kN/mm"], 1e6),
    unit(Dimension::Stiffness, &["N/mm"], 1e3),
    unit(Dimension::Stiffness, &["N/m"], 1.0),
    unit(Dimension::Stiffness, &["lbf/in"], POUND_FORCE / INCH),
    unit(
        Dimension::Stiffness,
        &["kip/in", "kips/in"],
        1e3 * POUND_FORCE / INCH,
    ),
    unit(Dimension::Potential, &["V"], 1.0),
    unit(Dimension::Potential, &["mV"], 1e-3),
    degree(&["C", "°C", "degC"], 1.0, CELSIUS_ZERO),
    degree(&["F", "°F", "degF"], 5.0 / 9.0, FAHRENHEIT_ZERO),
    degree(&["K"], 1.0, 0.0),
    unit(Dimension::Density, &["kg/m3", "kg/m³"], 1.0),
    unit(
        Dimension::Expansion,
        &["ppm/K", "ppm/C", "um/mK", "µm/mK"],
        1e-6,
    ),
    unit(Dimension::Expansion, &["ppm/F"], 1.8e-6),
];

pub(super) const CELSIUS_ZERO: f64 = 273.15;
pub(super) const FAHRENHEIT_ZERO: f64 = 459.67 * (5.0 / 9.0);

/// 0.453 592 37 kg over the cube of 0.3048 m.
pub(super) const POUND_PER_CUBIC_FOOT: f64 = 0.453_592_37 / (0.3048 * 0.3048 * 0.3048);

pub(super) const DEGREE: f64 = core::f64::consts::PI / 180.0;

/// What separates the parts of a unit, and does not count.
const SEPARATORS: &str = " ·⋅.*-";

/// The first name of every unit of a kind.
#[cfg(feature = "schema")]
pub(crate) fn unit_names(dimension: Dimension) -> impl Iterator<Item = &'static str> {
    let of_kind = UNITS.iter().filter(move |unit| unit.dimension == dimension);
    of_kind.filter_map(|unit| unit.names.first().copied())
}

/// Every unit of a kind as [`find_unit`] reads it: a regular expression that ECMA-262 and others have in common.
#[cfg(feature = "schema")]
pub(crate) fn unit_pattern(dimension: Dimension) -> String {
    let of_kind = UNITS.iter().filter(|unit| unit.dimension == dimension);
    let names = of_kind.flat_map(|unit| unit.names).map(|name| {
        let letters = name.chars().map(|c| {
            if IN_CAPITALS.contains(name) && c.is_ascii_alphabetic() {
                format!("[{c}{}]", c.to_ascii_uppercase())
            } else {
                c.into()
            }
        });
        letters
            .collect::<Vec<String>>()
            .join(&format!("[{SEPARATORS}]*"))
    });
    let names: Vec<String> = names.collect();
    format!("(?:{})[{SEPARATORS}]*", names.join("|"))
}

fn find_unit(text: &str) -> Option<&'static Unit> {
    let plain: String = text.chars().filter(|c| !SEPARATORS.contains(*c)).collect();
    let named = |is: &dyn Fn(&&str) -> bool| UNITS.iter().find(|unit| unit.names.iter().any(is));
    named(&|name| **name == plain).or_else(|| {
        // Not those of SI: a capital M is a million of what a small m is a thousandth of.
        named(&|name| IN_CAPITALS.contains(name) && name.eq_ignore_ascii_case(&plain))
    })
}

/// Names of units that mean the same in capitals.
const IN_CAPITALS: &[&str] = &[
    "in", "inch", "inches", "ft", "foot", "feet", "in2", "sqin", "lbf", "kip", "kips", "klbf",
    "psi", "ksi", "lbfft", "ftlbf", "ftlb", "lbft", "ftlbs", "lbsft", "lbfin", "inlbf", "inlb",
    "lbin", "inlbs", "lbsin", "deg", "degrees",
];

/// Reads a quantity as a person writes it: a number, a fraction or a mixed number, then a unit.
///
/// Numbers: `0.625`, `5/8`, `1-1/2`, `1 1/2`. Units: mm, cm, m, um, in, ft; mm2, cm2, m2, in2; N, kN,
/// MN, lbf, kip; Pa, kPa, MPa, GPa, N/mm2, psi, ksi; N m, N mm, kN m, lbf ft, ft lbf, lbf in,
/// in lbf; deg, rad; N/m, N/mm, kN/mm, lbf/in, kip/in; V, mV; C, F, K; kg/m3; ppm/K, ppm/F. A bare `lb` is refused: it
/// could be a mass; in a torque it cannot, so that `ft-lb`, `lb-ft` and `in-lb` are read. US customary units are read in
/// capitals too, those of SI are not.
///
/// # Errors
///
/// [`TextError`] tells what is wrong with the text: no unit, an unknown unit, a unit of
/// another kind of quantity, or no readable number. It converts to [`Error`](crate::Error).
///
/// # Examples
///
/// ```
/// use shankline::units::{Force, Length, inches, parse, pounds_force};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(parse::<Length>("1-1/2 in")?, inches(1.5));
/// assert_eq!(parse::<Force>("9000 lbf")?, pounds_force(9000.0));
/// let error = parse::<Length>("75 lbf ft").unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "\"75 lbf ft\" is a torque, not a length (write a length such as \"5/8 in\" or \"16 mm\")",
/// );
/// # Ok(())
/// # }
/// ```
pub fn parse<Q: Measured>(text: &str) -> Result<Q, TextError> {
    let refuse = |problem| TextError {
        text: text.into(),
        expected: Q::DIMENSION,
        problem,
    };
    if is_too_long(text) {
        return Err(too_long(text, Q::DIMENSION));
    }
    let trimmed = text.trim();
    let split = trimmed
        .find(starts_unit)
        .ok_or_else(|| refuse(TextProblem::NoUnit))?;
    let (number, unit_text) = trimmed.split_at(split);
    in_unit(unit_text, || parse_number(number)).map_err(refuse)
}

/// More characters than any name or quantity has: a file pasted by mistake. Shown in a report or a picture, a text costs as
/// often as it stands there.
pub(crate) const MOST_CHARACTERS: usize = 1000;

pub(crate) fn is_too_long(text: &str) -> bool {
    text.len() > MOST_CHARACTERS && text.chars().nth(MOST_CHARACTERS).is_some()
}

#[cold]
pub(crate) fn too_long(text: &str, expected: Dimension) -> TextError {
    TextError {
        text: text.chars().take(20).collect(),
        expected,
        problem: TextProblem::TooLong,
    }
}

/// The text of a quantity that cannot be read, and why. [`Error::QuantityText`](crate::Error::QuantityText) is made of it.
///
/// ```
/// use shankline::{Error, units::{Length, TextProblem, parse}};
/// let error = parse::<Length>("12").unwrap_err();
/// assert_eq!(error.problem, TextProblem::NoUnit);
/// assert_eq!(Error::from(error).code(), "quantity_text");
/// ```
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
#[error("{}", .problem.sentence(.text, *.expected))]
pub struct TextError {
    /// The text as given.
    pub text: String,
    /// The kind of quantity expected.
    pub expected: Dimension,
    /// What is wrong with it.
    pub problem: TextProblem,
}

/// What is wrong with the text of a quantity.
///
/// ```
/// use shankline::units::{Length, TextProblem, parse};
/// assert_eq!(parse::<Length>("0.5 parsec").unwrap_err().problem, TextProblem::UnknownUnit);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum TextProblem {
    /// There is no unit.
    NoUnit,
    /// The unit is not one of those [`parse`] lists.
    UnknownUnit,
    /// The unit belongs to another kind of quantity.
    OtherDimension(Dimension),
    /// The number cannot be read, or is not finite.
    Number,
    /// The temperature does not exist.
    BelowAbsoluteZero,
    /// The tolerance is negative, or one of its sides is missing.
    Tolerance,
    /// It has more than 1000 characters, of which the error keeps the first.
    TooLong,
}

impl TextProblem {
    /// What is told of a text.
    pub(crate) fn sentence(self, text: &str, expected: Dimension) -> String {
        let hint = format!("(write a {expected} such as {})", expected.examples());
        match self {
            Self::NoUnit => format!("\"{text}\" has no unit {hint}"),
            Self::UnknownUnit => format!("\"{text}\" has no unit known here {hint}"),
            Self::OtherDimension(found) => {
                format!("\"{text}\" is a {found}, not a {expected} {hint}")
            }
            Self::Number => format!("\"{text}\" has no readable number {hint}"),
            Self::Tolerance => format!(
                "\"{text}\" has no readable tolerance (write it as in \"20 mm +/- 0.3 mm\" or \"20 mm +0.1/-0.2\")"
            ),
            Self::TooLong => {
                format!("\"{text} ...\" has more than 1000 characters {hint}")
            }
            Self::BelowAbsoluteZero => format!("\"{text}\" is below absolute zero {hint}"),
        }
    }
}

/// Whether a unit begins with it.
pub(crate) fn starts_unit(c: char) -> bool {
    c.is_alphabetic() || "\"″”°".contains(c)
}

/// The quantity of a number of units, or what is wrong with either.
pub(super) fn in_unit<Q: Measured>(
    unit: &str,
    value: impl Fn() -> Option<f64>,
) -> Result<Q, TextProblem> {
    let unit = find_unit(unit).ok_or(TextProblem::UnknownUnit)?;
    if unit.dimension != Q::DIMENSION {
        return Err(TextProblem::OtherDimension(unit.dimension));
    }
    let base = value().ok_or(TextProblem::Number)? * unit.base + unit.zero;
    if !base.is_finite() {
        Err(TextProblem::Number)
    } else if base < 0.0 && Q::DIMENSION == Dimension::Temperature {
        Err(TextProblem::BelowAbsoluteZero)
    } else {
        Ok(Q::from_base(base))
    }
}

/// What kind of quantity a unit measures.
#[cfg(feature = "serde")]
pub(crate) fn dimension_of(unit: &str) -> Option<Dimension> {
    find_unit(unit).map(|unit| unit.dimension)
}

/// A decimal, a fraction or a mixed number.
fn parse_number(text: &str) -> Option<f64> {
    let text = text.trim();
    let Some((before, denominator)) = text.split_once('/') else {
        return plain_decimal(text);
    };
    let (whole, numerator) = match before.rsplit_once(['-', ' ']) {
        Some(("", _)) | None => (0.0, before),
        Some((whole, numerator)) => (whole_number(whole.trim())?, numerator),
    };
    let numerator = whole_number(numerator.trim())?;
    let denominator = whole_number(denominator.trim())?;
    (denominator > 0.0).then(|| whole + numerator / denominator)
}

fn whole_number(text: &str) -> Option<f64> {
    let digits = !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    if digits { text.parse().ok() } else { None }
}

/// A decimal without exponent, infinity or NaN, which Rust's own parser would take.
fn plain_decimal(text: &str) -> Option<f64> {
    let unsigned = text.strip_prefix(['-', '+']).unwrap_or(text);
    let plain = unsigned.bytes().any(|b| b.is_ascii_digit())
        && unsigned.bytes().all(|b| b.is_ascii_digit() || b == b'.');
    if plain { text.parse().ok() } else { None }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{UnitSystem, inches, ksi, millimetres, newton_metres, newtons, shown};
    use alloc::{format, string::ToString};

    #[test]
    fn reads_what_people_write() {
        let cases = [
            ("5/8 in", inches(0.625)),
            ("1-1/2in", inches(1.5)),
            ("1 1/2 inches", inches(1.5)),
            ("0.375\"", inches(0.375)),
            (".5 in", inches(0.5)),
            ("16 mm", millimetres(16.0)),
            (" 1.6cm ", millimetres(16.0)),
        ];
        for (text, expected) in cases {
            let found: Length = parse(text).unwrap();
            assert!((found - expected).value.abs() < 1e-15, "{text}");
        }
        assert_eq!(parse::<Torque>("100 N·m").unwrap(), newton_metres(100.0));
        assert_eq!(parse::<Force>("2 kN").unwrap(), newtons(2000.0));
        assert_eq!(parse::<Pressure>("85 ksi").unwrap(), ksi(85.0));
    }

    #[test]
    fn temperatures_have_a_zero() {
        let read = |text: &str| parse::<ThermodynamicTemperature>(text).unwrap().value;
        assert!((read("120 C") - 393.15).abs() < 1e-9);
        assert!((read("-40 °F") - read("-40 degC")).abs() < 1e-9);
        assert!((read("300 K") - 300.0).abs() < 1e-12);
        let hot = crate::units::celsius(121.0);
        assert_eq!(shown(hot, UnitSystem::Si).to_string(), "121 °C");
        assert_eq!(shown(hot, UnitSystem::UsCustomary).to_string(), "250 °F");
        assert!(parse::<Length>("12 C").is_err());
        assert!(parse::<ThermodynamicTemperature>("-459.6 F").is_ok());
        for text in ["-273.2 C", "-460 F", "-1 K"] {
            let error = parse::<ThermodynamicTemperature>(text).unwrap_err();
            assert!(error.to_string().contains("below absolute zero"), "{error}");
        }
    }

    #[test]
    fn refuses_what_it_cannot_read() {
        let problem = |text: &str| parse::<Length>(text).unwrap_err().problem;
        assert_eq!(problem("0.5"), TextProblem::NoUnit);
        assert_eq!(problem(""), TextProblem::NoUnit);
        assert_eq!(problem("0.5 furlong"), TextProblem::UnknownUnit);
        assert_eq!(problem("5 lb"), TextProblem::UnknownUnit);
        assert_eq!(
            problem("5 ksi"),
            TextProblem::OtherDimension(Dimension::Stress)
        );
        for text in [
            "in", "1/0 in", "NaN mm", "inf mm", "1e400 mm", "1//2 in", "- in", "1-2 in",
        ] {
            assert!(
                matches!(
                    problem(text),
                    TextProblem::Number | TextProblem::UnknownUnit
                ),
                "{text}"
            );
        }
    }

    #[test]
    fn shows_no_minus_zero_and_pads() {
        assert_eq!(
            shown(inches(-1e-15), UnitSystem::UsCustomary).to_string(),
            "0.000 in"
        );
        // Not a residue, but nothing at the decimals that are shown.
        assert_eq!(
            shown(inches(-0.0004), UnitSystem::UsCustomary).to_string(),
            "0.000 in"
        );
        assert_eq!(
            shown(inches(-0.0006), UnitSystem::UsCustomary).to_string(),
            "-0.001 in"
        );
        assert_eq!(
            shown(newtons(f64::NEG_INFINITY), UnitSystem::Si).to_string(),
            "-inf kN"
        );
        assert_eq!(
            format!("[{:>12}]", shown(newtons(1e3), UnitSystem::Si)),
            "[     1.00 kN]"
        );
    }
}
