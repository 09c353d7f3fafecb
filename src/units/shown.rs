//! Quantities as they are shown to people: unit and decimals of the trade.

use alloc::{format, string::String};
use core::fmt;

use super::digits::with_decimals;
use super::text::{
    CELSIUS_ZERO, DEGREE, Dimension, FAHRENHEIT_ZERO, Measured, POUND_PER_CUBIC_FOOT,
};
use super::{INCH, Length, POUND_FORCE, PSI};

/// The units a reader wants to see.
///
/// ```
/// use shankline::units::{UnitSystem, ksi, shown};
/// assert_eq!(shown(ksi(120.0), UnitSystem::Si).to_string(), "827 MPa");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum UnitSystem {
    /// mm, mm2, kN, MPa, N m, deg, kN/mm, °C.
    #[default]
    Si,
    /// in, in2, lbf, ksi, lbf ft, deg, kip/in, °F.
    UsCustomary,
}

/// A quantity ready for `{}`; made by [`shown`].
///
/// ```
/// use shankline::units::{UnitSystem, inches, shown};
/// assert_eq!(format!("[{:>10.1}]", shown(inches(1.0), UnitSystem::Si)), "[   25.4 mm]");
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Shown {
    dimension: Dimension,
    base: f64,
    system: UnitSystem,
    rounding: Rounding,
    /// No more significant digits than so many.
    figures: Option<usize>,
}

/// Which way a number is rounded when it is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Rounding {
    Nearest,
    Up,
    Down,
}

/// A number with so many decimals, rounded one way. What differs by less than a calculation can (1e-10 of it) is
/// not pushed a whole digit on.
pub(crate) fn rounded(value: f64, decimals: usize, rounding: Rounding) -> String {
    let nearest = with_decimals(value, decimals);
    if rounding == Rounding::Nearest || !value.is_finite() {
        return nearest;
    }
    let Ok(written) = nearest.parse::<f64>() else {
        return nearest;
    };
    let missing = match rounding {
        Rounding::Down => written - value,
        _ => value - written,
    };
    if missing <= 1e-10 * value.abs() {
        return nearest;
    }
    let digit = (0..decimals).fold(1.0, |digit, _| 0.1 * digit);
    let sign = if rounding == Rounding::Up { 1.0 } else { -1.0 };
    with_decimals(written + sign * digit, decimals)
}

/// A bare number for a sentence: at most two decimals, and none that are zero.
pub(crate) fn plain(value: f64) -> String {
    let text = with_decimals(value, 2);
    text.trim_end_matches('0').trim_end_matches('.').into()
}

/// Shows a quantity to a person, in the unit and with the decimals the trade uses.
///
/// Small forces, stresses, torques, areas and stiffnesses get more decimals, so that three digits are left of them;
/// lengths and angles keep the resolution of the workshop. A precision in the format string overrides the decimals;
/// width and alignment work as usual.
///
/// ```
/// use shankline::units::{UnitSystem, inches, newtons, shown};
/// assert_eq!(shown(inches(0.5), UnitSystem::UsCustomary).to_string(), "0.500 in");
/// assert_eq!(shown(inches(0.5), UnitSystem::Si).to_string(), "12.70 mm");
/// assert_eq!(format!("{:.1}", shown(newtons(12345.0), UnitSystem::Si)), "12.3 kN");
/// assert_eq!(shown(newtons(12.0), UnitSystem::Si).to_string(), "0.0120 kN");
/// ```
#[must_use]
pub fn shown<Q: Measured>(quantity: Q, system: UnitSystem) -> Shown {
    Shown {
        dimension: Q::DIMENSION,
        base: quantity.base(),
        system,
        rounding: Rounding::Nearest,
        figures: None,
    }
}

/// Decimals that leave so many significant digits; 0 for zero and for what is not finite.
pub(crate) fn decimals_for(value: f64, digits: usize) -> usize {
    const MOST: usize = 12;
    let mut decimals = digits.saturating_sub(1);
    if value == 0.0 || !value.is_finite() {
        return 0;
    }
    let mut magnitude = value.abs();
    while magnitude < 1.0 && decimals < MOST {
        magnitude *= 10.0;
        decimals += 1;
    }
    while magnitude >= 10.0 && decimals > 0 {
        magnitude /= 10.0;
        decimals -= 1;
    }
    decimals
}

impl Shown {
    /// The unit, its size in SI base units, and the decimals the trade writes with it.
    const fn unit(&self) -> (&'static str, f64, usize) {
        match (self.dimension, self.system) {
            (Dimension::Length, UnitSystem::Si) => ("mm", 1e-3, 2),
            (Dimension::Length, UnitSystem::UsCustomary) => ("in", INCH, 3),
            (Dimension::Area, UnitSystem::Si) => ("mm²", 1e-6, 1),
            (Dimension::Area, UnitSystem::UsCustomary) => ("in²", INCH * INCH, 4),
            (Dimension::Force, UnitSystem::Si) => ("kN", 1e3, 2),
            (Dimension::Force, UnitSystem::UsCustomary) => ("lbf", POUND_FORCE, 0),
            (Dimension::Stress, UnitSystem::Si) => ("MPa", 1e6, 0),
            (Dimension::Stress, UnitSystem::UsCustomary) => ("ksi", 1e3 * PSI, 1),
            (Dimension::Torque, UnitSystem::Si) => ("N m", 1.0, 1),
            (Dimension::Torque, UnitSystem::UsCustomary) => {
                ("lbf ft", POUND_FORCE * 12.0 * INCH, 1)
            }
            (Dimension::Angle, _) => ("deg", DEGREE, 1),
            (Dimension::Stiffness, UnitSystem::Si) => ("kN/mm", 1e6, 1),
            (Dimension::Stiffness, UnitSystem::UsCustomary) => {
                ("kip/in", 1e3 * POUND_FORCE / INCH, 1)
            }
            (Dimension::Potential, _) => ("V", 1.0, 2),
            (Dimension::Temperature, UnitSystem::Si) => ("°C", 1.0, 0),
            (Dimension::Temperature, UnitSystem::UsCustomary) => ("°F", 5.0 / 9.0, 0),
            (Dimension::Density, UnitSystem::Si) => ("kg/m³", 1.0, 0),
            (Dimension::Density, UnitSystem::UsCustomary) => ("lb/ft³", POUND_PER_CUBIC_FOOT, 1),
            (Dimension::Expansion, UnitSystem::Si) => ("ppm/K", 1e-6, 1),
            (Dimension::Expansion, UnitSystem::UsCustomary) => ("ppm/°F", 1.8e-6, 2),
        }
    }

    /// Rounded up, for what must be at least so much: whoever enters what is shown has enough.
    ///
    /// ```
    /// use shankline::units::{UnitSystem, millimetres, shown};
    /// let least = shown(millimetres(5.8442), UnitSystem::Si).rounded_up();
    /// assert_eq!(least.to_string(), "5.85 mm");
    /// ```
    #[must_use]
    pub const fn rounded_up(mut self) -> Self {
        self.rounding = Rounding::Up;
        self
    }

    /// Rounded down, for what must be at most so much.
    ///
    /// ```
    /// use shankline::units::{UnitSystem, inches, shown};
    /// let most = shown(inches(0.3937), UnitSystem::UsCustomary).rounded_down();
    /// assert_eq!(most.to_string(), "0.393 in");
    /// ```
    #[must_use]
    pub const fn rounded_down(mut self) -> Self {
        self.rounding = Rounding::Down;
        self
    }

    /// With no more significant digits than so many: what a wrench can be set to, or what a scattered value is worth.
    ///
    /// ```
    /// use shankline::units::{UnitSystem, newton_metres, newtons, shown};
    /// assert_eq!(shown(newton_metres(338.64), UnitSystem::Si).figures(3).to_string(), "339 N m");
    /// let most = shown(newtons(80_580.0), UnitSystem::UsCustomary).figures(3).rounded_up();
    /// assert_eq!(most.to_string(), "18200 lbf"); // 18115
    /// ```
    #[must_use]
    pub const fn figures(mut self, digits: usize) -> Self {
        self.figures = Some(digits);
        self
    }

    /// The number as it is written.
    fn number(&self, precision: Option<usize>) -> String {
        let value = self.value();
        let Some(digits) = self.figures.filter(|_| precision.is_none()) else {
            let decimals = precision.unwrap_or_else(|| self.decimals());
            return rounded(value, decimals, self.rounding);
        };
        // Digits before the point beyond those wanted become zeros.
        let (mut size, mut zeros) = (value.abs(), 0);
        while size >= 10.0 && size.is_finite() {
            size /= 10.0;
            zeros += 1;
        }
        let zeros = (zeros + 1_usize).saturating_sub(digits.max(1));
        let decimals = decimals_for(value, digits).min(self.decimals());
        let scale = (0..zeros).fold(1.0, |scale, _| 10.0 * scale);
        let number = rounded(value / scale, decimals, self.rounding);
        if zeros == 0 {
            number
        } else {
            format!("{number}{}", "0".repeat(zeros))
        }
    }

    /// The number that is shown, before rounding.
    pub(crate) const fn value(&self) -> f64 {
        let zero = match (self.dimension, self.system) {
            (Dimension::Temperature, UnitSystem::Si) => CELSIUS_ZERO,
            (Dimension::Temperature, UnitSystem::UsCustomary) => FAHRENHEIT_ZERO,
            _ => 0.0,
        };
        (self.base - zero) / self.unit().1
    }

    /// The decimals it is shown with: those of the trade, or as many as leave three digits of a small value.
    pub(crate) fn decimals(&self) -> usize {
        /// Of the unit: smaller than any load or strength, and shown as nothing.
        const RESIDUE: f64 = 1e-6;
        let (trade, value) = (self.unit().2, self.value());
        match self.dimension {
            Dimension::Length
            | Dimension::Angle
            | Dimension::Potential
            | Dimension::Temperature => trade,
            _ if value.abs() < RESIDUE => trade,
            _ => trade.max(decimals_for(value, 3)),
        }
    }
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let unit = self.unit().0;
        let number = self.number(f.precision());
        // What rounds to zero must not print as minus zero.
        let number = match number.strip_prefix('-') {
            Some(plain) if !plain.contains(|c: char| c != '0' && c != '.') => plain,
            _ => &number,
        };
        let Some(width) = f.width() else {
            return write!(f, "{number} {unit}");
        };
        let text = format!("{number} {unit}");
        let padding = width.saturating_sub(text.chars().count());
        let (left, right) = match f.align() {
            Some(fmt::Alignment::Right) => (padding, 0),
            Some(fmt::Alignment::Center) => (padding / 2, padding - padding / 2),
            Some(fmt::Alignment::Left) | None => (0, padding),
        };
        write!(f, "{:left$}{text}{:right$}", "", "")
    }
}

/// The name of a length as a fraction of an inch, if it is a whole number of sixty-fourths.
///
/// ```
/// use shankline::units::{inch_fraction, inches, millimetres};
/// assert_eq!(inch_fraction(inches(1.5)).as_deref(), Some("1-1/2"));
/// assert_eq!(inch_fraction(inches(0.625)).as_deref(), Some("5/8"));
/// assert_eq!(inch_fraction(inches(4.0)).as_deref(), Some("4"));
/// assert_eq!(inch_fraction(millimetres(20.0)), None);
/// ```
#[must_use]
pub fn inch_fraction(length: Length) -> Option<String> {
    let sixty_fourths = length.value / (INCH / 64.0);
    let rounded = crate::math::round(sixty_fourths);
    if !(0.0..1e6).contains(&rounded) || (sixty_fourths - rounded).abs() > 1e-6 {
        return None;
    }
    // Within 0..1e6 and whole, so the cast loses nothing.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = rounded as u32;
    let (whole, mut numerator, mut denominator) = (count / 64, count % 64, 64);
    if numerator == 0 {
        return Some(format!("{whole}"));
    }
    while numerator % 2 == 0 {
        numerator /= 2;
        denominator /= 2;
    }
    Some(if whole == 0 {
        format!("{numerator}/{denominator}")
    } else {
        format!("{whole}-{numerator}/{denominator}")
    })
}
