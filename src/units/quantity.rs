//! Quantities in data files (feature `serde`): always with their unit.
//!
//! Written as an object, `{ "value": 12.7, "unit": "mm" }`, in mm, mm2, N, MPa, N m, deg, N/mm, C or ppm/K. Read from
//! that object in any unit [`parse`](super::parse) knows, or from text such as `"5/8 in"`. A bare
//! number is refused, and so is a unit of another kind of quantity.
//!
//! Use it for fields of your own types with `#[serde(with = "shankline::units::quantity")]`:
//!
//! ```
//! use shankline::units::{Length, inches};
//!
//! #[derive(serde::Serialize, serde::Deserialize)]
//! struct Hole {
//!     #[serde(with = "shankline::units::quantity")]
//!     diameter: Length,
//! }
//!
//! let hole: Hole = serde_json::from_str(r#"{ "diameter": "13/16 in" }"#).unwrap();
//! assert_eq!(hole.diameter, inches(0.8125));
//! let text = serde_json::to_string(&hole).unwrap();
//! assert_eq!(text, r#"{"diameter":{"value":20.6375,"unit":"mm"}}"#);
//! let error = serde_json::from_str::<Hole>(r#"{ "diameter": 20.6375 }"#).err().unwrap();
//! assert!(error.to_string().contains("has no unit"));
//! ```

use alloc::{
    format,
    string::{String, ToString},
};
use core::fmt;

use serde::{
    Deserialize, Deserializer, Serialize, Serializer,
    de::{self, MapAccess, Visitor},
    ser::SerializeStruct,
};

use super::{Length, Measured, Ratio, TextError, written};

/// Writes a quantity as an object of value and unit.
///
/// # Errors
///
/// Those of the serializer.
pub fn serialize<Q: Measured, S: Serializer>(
    quantity: &Q,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let (value, unit) = written::to_value_and_unit(*quantity);
    serialize_value_and_unit(value, unit, serializer)
}

/// Writes a quantity of an answer, to twelve digits: answers are read by people too, and nothing is computed from the
/// last bits of a sum.
pub(crate) fn round<Q: Measured, S: Serializer>(
    quantity: &Q,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let (value, unit) = written::to_rounded_value_and_unit(*quantity);
    serialize_value_and_unit(value, unit, serializer)
}

// serde's `serialize_with` hands over a reference to the field, whatever its type.
#[allow(clippy::ref_option)]
pub(crate) fn round_option<Q: Measured, S: Serializer>(
    quantity: &Option<Q>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    quantity.map(AsRounded).serialize(serializer)
}

/// A quantity of an answer on its way out.
pub(crate) struct AsRounded<Q>(pub(crate) Q);

impl<Q: Measured> Serialize for AsRounded<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        round(&self.0, serializer)
    }
}

pub(crate) fn serialize_value_and_unit<S: Serializer>(
    value: f64,
    unit: &str,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let mut object = serializer.serialize_struct("Quantity", 2)?;
    // Nothing has no sign: -0.0 reads back as 0.0.
    object.serialize_field("value", &(value + 0.0))?;
    object.serialize_field("unit", unit)?;
    object.end()
}

/// Reads a quantity from an object of value and unit, or from text with a unit.
///
/// # Errors
///
/// Those of the deserializer; a missing or unknown unit, or one of another kind of quantity.
pub fn deserialize<'de, Q: Measured, D: Deserializer<'de>>(deserializer: D) -> Result<Q, D::Error> {
    RawQuantity::deserialize(deserializer)?
        .quantity()
        .map_err(de::Error::custom)
}

/// A quantity on its way out.
pub(crate) struct AsObject<Q>(pub(crate) Q);

impl<Q: Measured> Serialize for AsObject<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize(&self.0, serializer)
    }
}

// serde's `serialize_with` hands over a reference to the field, whatever its type.
#[allow(clippy::ref_option)]
pub(crate) fn serialize_option<Q: Measured, S: Serializer>(
    quantity: &Option<Q>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    quantity.map(AsObject).serialize(serializer)
}

pub(crate) fn deserialize_option<'de, Q: Measured, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Option<Q>, D::Error> {
    Option::<RawQuantity>::deserialize(deserializer)?
        .map(|raw| raw.quantity().map_err(de::Error::custom))
        .transpose()
}

/// For fields that may be left out: `#[serde(default, with = "crate::units::quantity::option")]`.
pub(crate) mod option {
    pub(crate) use super::{deserialize_option as deserialize, serialize_option as serialize};
}

// serde's `serialize_with` hands over a reference.
#[allow(clippy::trivially_copy_pass_by_ref)]
pub(crate) fn serialize_ratio<S: Serializer>(
    ratio: &Ratio,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serializer.serialize_f64(ratio.value)
}

pub(crate) fn deserialize_ratio<'de, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Ratio, D::Error> {
    f64::deserialize(deserializer).map(Ratio::from)
}

// serde's `serialize_with` hands over a reference to the field, whatever its type.
#[allow(clippy::ref_option)]
pub(crate) fn serialize_ratio_option<S: Serializer>(
    ratio: &Option<Ratio>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    ratio.map(|ratio| ratio.value).serialize(serializer)
}

pub(crate) fn deserialize_ratio_option<'de, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Option<Ratio>, D::Error> {
    Ok(Option::<f64>::deserialize(deserializer)?.map(Ratio::from))
}

/// A quantity as it stands in a file, before it is known what it should be.
#[derive(Clone, Debug)]
pub(crate) enum RawQuantity {
    Text(String),
    Object { value: f64, unit: String },
    Bare(f64),
}

impl RawQuantity {
    /// The object a length is written as.
    pub(crate) fn of(length: Length) -> Self {
        let (value, unit) = written::to_value_and_unit(length);
        Self::Object {
            value,
            unit: unit.into(),
        }
    }

    pub(crate) fn quantity<Q: Measured>(&self) -> Result<Q, TextError> {
        match self {
            Self::Text(text) => super::parse(text),
            Self::Object { value, unit } => written::from_value_and_unit(*value, unit),
            Self::Bare(value) => super::parse(&value.to_string()),
        }
    }

    /// The quantity, or what is wrong with it after the name of its field.
    pub(crate) fn named<Q: Measured>(&self, field: &str) -> Result<Q, String> {
        self.quantity().map_err(|error| format!("{field}: {error}"))
    }
}

impl Serialize for RawQuantity {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Text(text) => serializer.serialize_str(text),
            Self::Bare(value) => serializer.serialize_f64(*value),
            Self::Object { value, unit } => {
                let mut object = serializer.serialize_struct("Quantity", 2)?;
                object.serialize_field("value", value)?;
                object.serialize_field("unit", unit)?;
                object.end()
            }
        }
    }
}

impl<'de> Deserialize<'de> for RawQuantity {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        match Raw::deserialize(deserializer)? {
            Raw::One(quantity) => Ok(quantity),
            Raw::Spread(_) => Err(de::Error::custom(
                "one quantity is expected, not one with minimum and maximum",
            )),
        }
    }
}

/// What stands where a quantity may, or one with its tolerance.
#[derive(Clone, Debug)]
pub(crate) enum Raw {
    One(RawQuantity),
    Spread(SpreadParts),
}

/// The objects that a quantity with its tolerance is written as.
#[derive(Clone, Debug)]
pub(crate) enum SpreadParts {
    Limits {
        min: RawQuantity,
        nominal: RawQuantity,
        max: RawQuantity,
    },
    PlusMinus {
        nominal: RawQuantity,
        plus_minus: RawQuantity,
    },
}

impl<'de> Deserialize<'de> for Raw {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(RawVisitor)
    }
}

struct RawVisitor;

impl<'de> Visitor<'de> for RawVisitor {
    type Value = Raw;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("text with a unit such as \"5/8 in\", or an object with value and unit")
    }

    fn visit_str<E: de::Error>(self, text: &str) -> Result<Raw, E> {
        Ok(Raw::One(RawQuantity::Text(text.into())))
    }

    fn visit_f64<E: de::Error>(self, value: f64) -> Result<Raw, E> {
        Ok(Raw::One(RawQuantity::Bare(value)))
    }

    // A bare number is refused for want of a unit; its exact value does not matter.
    #[allow(clippy::cast_precision_loss)]
    fn visit_i64<E: de::Error>(self, value: i64) -> Result<Raw, E> {
        self.visit_f64(value as f64)
    }

    #[allow(clippy::cast_precision_loss)]
    fn visit_u64<E: de::Error>(self, value: u64) -> Result<Raw, E> {
        self.visit_f64(value as f64)
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Raw, A::Error> {
        const FIELDS: &[&str] = &["value", "unit", "min", "nominal", "max", "plus_minus"];
        let (mut value, mut unit) = (None, None);
        let mut parts: [Option<RawQuantity>; 4] = [const { None }; 4];
        while let Some(key) = map.next_key::<String>()? {
            match key.as_str() {
                "value" if value.is_some() => return Err(de::Error::duplicate_field("value")),
                "unit" if unit.is_some() => return Err(de::Error::duplicate_field("unit")),
                "value" => value = Some(map.next_value::<f64>()?),
                "unit" => unit = Some(map.next_value::<String>()?),
                other => {
                    let mut slots = FIELDS.iter().skip(2).zip(&mut parts);
                    match slots.find(|(field, _)| **field == other) {
                        Some((field, Some(_))) => return Err(de::Error::duplicate_field(field)),
                        Some((_, slot)) => *slot = Some(map.next_value()?),
                        None => return Err(de::Error::unknown_field(other, FIELDS)),
                    }
                }
            }
        }
        match (value, unit, parts) {
            (Some(value), Some(unit), [None, None, None, None]) => {
                Ok(Raw::One(RawQuantity::Object { value, unit }))
            }
            (None, None, [Some(min), Some(nominal), Some(max), None]) => {
                Ok(Raw::Spread(SpreadParts::Limits { min, nominal, max }))
            }
            (None, None, [None, Some(nominal), None, Some(plus_minus)]) => {
                Ok(Raw::Spread(SpreadParts::PlusMinus {
                    nominal,
                    plus_minus,
                }))
            }
            _ => Err(de::Error::custom(
                "expected value and unit, or min, nominal and max, or nominal and plus_minus",
            )),
        }
    }
}
