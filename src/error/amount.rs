//! One type for quantities of different kinds.

use core::fmt;

use crate::units::{
    Angle, Area, Density, Force, Length, Ratio, Shown, Stiffness, Stress, TemperatureCoefficient,
    TemperatureInterval, ThermodynamicTemperature, Torque, UnitSystem, decimals_for, shown,
};

/// A value of any kind, for messages and derivations.
///
/// ```
/// use shankline::{error::Amount, units::inches};
/// assert_eq!(Amount::from(inches(0.5)).to_string(), "12.700 mm (0.5000 in)");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Amount {
    /// A length.
    Length(Length),
    /// An area.
    Area(Area),
    /// A force.
    Force(Force),
    /// A stress.
    Stress(Stress),
    /// A torque or a moment.
    Torque(Torque),
    /// An angle.
    Angle(Angle),
    /// A stiffness.
    Stiffness(Stiffness),
    /// A temperature.
    Temperature(ThermodynamicTemperature),
    /// A change of temperature.
    TemperatureChange(TemperatureInterval),
    /// A density.
    Density(Density),
    /// A coefficient of expansion.
    Expansion(TemperatureCoefficient),
    /// A number without unit.
    Number(f64),
    /// A count of things.
    Count(usize),
}

impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        use UnitSystem::{Si, UsCustomary};
        match *self {
            Self::Length(v) => write!(f, "{:.3} ({:.4})", shown(v, Si), shown(v, UsCustomary)),
            Self::Area(v) => write!(f, "{:.3} ({:.5})", shown(v, Si), shown(v, UsCustomary)),
            Self::Force(v) => write!(f, "{:.3} ({:.1})", shown(v, Si), shown(v, UsCustomary)),
            Self::Stress(v) => write!(f, "{:.1} ({:.2})", shown(v, Si), shown(v, UsCustomary)),
            Self::Torque(v) => write!(f, "{:.2} ({:.2})", shown(v, Si), shown(v, UsCustomary)),
            Self::Angle(v) => write!(f, "{:.2}", shown(v, Si)),
            Self::Stiffness(v) => write!(f, "{:.2} ({:.2})", shown(v, Si), shown(v, UsCustomary)),
            Self::Temperature(v) => write!(f, "{:.1} ({:.1})", shown(v, Si), shown(v, UsCustomary)),
            Self::TemperatureChange(v) => write!(f, "{:.1} K ({:.1} °F)", v.value, v.value * 1.8),
            Self::Density(v) => write!(f, "{:.1}", shown(v, Si)),
            Self::Expansion(v) => write!(f, "{:.2} ({:.2})", shown(v, Si), shown(v, UsCustomary)),
            Self::Number(v) => write!(f, "{v}"),
            Self::Count(v) => write!(f, "{v}"),
        }
    }
}

macro_rules! amount_from {
    ($($quantity:ty => $variant:ident),*) => {$(
        impl From<$quantity> for Amount {
            fn from(value: $quantity) -> Self {
                Self::$variant(value)
            }
        }
    )*};
}
amount_from!(
    Length => Length, Area => Area, Force => Force, Stress => Stress, Torque => Torque,
    Angle => Angle, Stiffness => Stiffness, ThermodynamicTemperature => Temperature,
    TemperatureInterval => TemperatureChange, Density => Density, TemperatureCoefficient => Expansion, f64 => Number, usize => Count
);

impl From<Ratio> for Amount {
    fn from(value: Ratio) -> Self {
        Self::Number(value.value)
    }
}

impl Amount {
    /// The value in SI base units (a temperature in kelvin).
    pub(crate) const fn base(self) -> f64 {
        match self {
            Self::Length(v) => v.value,
            Self::Area(v) => v.value,
            Self::Force(v) => v.value,
            Self::Stress(v) => v.value,
            Self::Torque(v) => v.value,
            Self::Angle(v) => v.value,
            Self::Stiffness(v) => v.value,
            Self::Temperature(v) => v.value,
            Self::TemperatureChange(v) => v.value,
            Self::Density(v) => v.value,
            Self::Expansion(v) => v.value,
            Self::Number(v) => v,
            // Counts are small: exact.
            #[allow(clippy::cast_precision_loss)]
            Self::Count(v) => v as f64,
        }
    }

    /// The value in the units of one reader, with the decimals the trade uses, or more where fewer
    /// than three digits would be left.
    ///
    /// ```
    /// use shankline::{error::Amount, units::{UnitSystem, inches}};
    /// let amount = Amount::from(inches(0.5));
    /// assert_eq!(amount.shown(UnitSystem::UsCustomary).to_string(), "0.500 in");
    /// assert_eq!(Amount::from(inches(0.0005)).shown(UnitSystem::Si).to_string(), "0.0127 mm");
    /// ```
    #[must_use]
    pub const fn shown(self, system: UnitSystem) -> ShownAmount {
        ShownAmount {
            amount: self,
            system,
        }
    }
}

/// An amount ready for `{}`; made by [`Amount::shown`].
///
/// ```
/// use shankline::{error::Amount, units::UnitSystem};
/// assert_eq!(Amount::from(2.0 / 3.0).shown(UnitSystem::Si).to_string(), "0.6667");
/// ```
#[derive(Clone, Copy, Debug)]
pub struct ShownAmount {
    amount: Amount,
    system: UnitSystem,
}

impl fmt::Display for ShownAmount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let quantity = match self.amount {
            Amount::Length(v) => shown(v, self.system),
            Amount::Area(v) => shown(v, self.system),
            Amount::Force(v) => shown(v, self.system),
            Amount::Stress(v) => shown(v, self.system),
            Amount::Torque(v) => shown(v, self.system),
            Amount::Angle(v) => shown(v, self.system),
            Amount::Stiffness(v) => shown(v, self.system),
            Amount::Temperature(v) => return write!(f, "{:.1}", shown(v, self.system)),
            Amount::TemperatureChange(v) => {
                return match self.system {
                    UnitSystem::Si => write!(f, "{:.1} K", v.value),
                    UnitSystem::UsCustomary => write!(f, "{:.1} °F", v.value * 1.8),
                };
            }
            Amount::Density(v) => shown(v, self.system),
            Amount::Expansion(v) => shown(v, self.system),
            Amount::Number(v) => return write_number(f, v),
            Amount::Count(v) => return write!(f, "{v}"),
        };
        write_quantity(f, quantity)
    }
}

/// Writes a quantity in the decimals of its unit, or in three digits if it would have fewer.
fn write_quantity(f: &mut fmt::Formatter<'_>, quantity: Shown) -> fmt::Result {
    let decimals = decimals_for(quantity.value(), 3);
    if decimals > quantity.decimals() {
        write!(f, "{quantity:.decimals$}")
    } else {
        write!(f, "{quantity}")
    }
}

/// Writes a number in four digits, whole numbers without decimals.
fn write_number(f: &mut fmt::Formatter<'_>, value: f64) -> fmt::Result {
    let decimals = decimals_for(value, 4);
    let text = alloc::format!("{value:.decimals$}");
    let text = if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.')
    } else {
        &text
    };
    f.write_str(text)
}

#[cfg(feature = "serde")]
impl<'de> serde::Deserialize<'de> for Amount {
    /// What kind of amount it is, its unit says; without one it is a number.
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        use crate::units::{Dimension as Kind, quantity::RawQuantity, text};
        use serde::de::Error;
        let raw = RawQuantity::deserialize(deserializer)?;
        let unit = match &raw {
            RawQuantity::Bare(number) => return Ok(Self::Number(*number)),
            RawQuantity::Object { unit, .. } => unit,
            RawQuantity::Text(_) => {
                let why = "an amount is an object of value and unit, or a number";
                return Err(Error::custom(why));
            }
        };
        let amount = match text::dimension_of(unit) {
            Some(Kind::Length) => raw.quantity().map(Self::Length),
            Some(Kind::Area) => raw.quantity().map(Self::Area),
            Some(Kind::Force) => raw.quantity().map(Self::Force),
            Some(Kind::Stress) => raw.quantity().map(Self::Stress),
            Some(Kind::Torque) => raw.quantity().map(Self::Torque),
            Some(Kind::Angle) => raw.quantity().map(Self::Angle),
            Some(Kind::Stiffness) => raw.quantity().map(Self::Stiffness),
            Some(Kind::Temperature) => raw.quantity().map(Self::Temperature),
            _ => return Err(Error::custom(alloc::format!("unknown unit \"{unit}\""))),
        };
        amount.map_err(Error::custom)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Amount {
    /// A quantity as value and unit, a number or count as a number.
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use crate::units::quantity::{round as serialize, serialize_value_and_unit};
        match self {
            Self::Length(v) => serialize(v, serializer),
            Self::Area(v) => serialize(v, serializer),
            Self::Force(v) => serialize(v, serializer),
            Self::Stress(v) => serialize(v, serializer),
            Self::Torque(v) => serialize(v, serializer),
            Self::Angle(v) => serialize(v, serializer),
            Self::Stiffness(v) => serialize(v, serializer),
            Self::Temperature(v) => serialize(v, serializer),
            Self::TemperatureChange(v) => serialize_value_and_unit(v.value, "K", serializer),
            Self::Density(v) => serialize(v, serializer),
            Self::Expansion(v) => serialize(v, serializer),
            Self::Number(v) => serializer.serialize_f64(*v),
            Self::Count(v) => v.serialize(serializer),
        }
    }
}
