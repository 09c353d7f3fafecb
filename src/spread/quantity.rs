//! Quantities with a tolerance in data files (feature `serde`).

use alloc::{
    format,
    string::{String, ToString},
};
use core::ops::{Add, Sub};

use serde::{Deserialize, Deserializer, Serialize, Serializer, de, ser::SerializeStruct};

use super::Spread;
use crate::error::Error;
use crate::units::quantity::{AsObject, AsRounded, Raw, RawQuantity, SpreadParts};
use crate::units::{Length, Measured, Ratio};

/// Writes a spread of an answer, to twelve digits.
pub(crate) fn round<Q: Measured, S: Serializer>(
    spread: &Spread<Q>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let mut object = serializer.serialize_struct("Spread", 3)?;
    object.serialize_field("min", &AsRounded(spread.min))?;
    object.serialize_field("nominal", &AsRounded(spread.nominal))?;
    object.serialize_field("max", &AsRounded(spread.max))?;
    object.end()
}

/// Writes a spread of a request, exactly.
pub(crate) fn serialize<Q: Measured, S: Serializer>(
    spread: &Spread<Q>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let mut object = serializer.serialize_struct("Spread", 3)?;
    object.serialize_field("min", &AsObject(spread.min))?;
    object.serialize_field("nominal", &AsObject(spread.nominal))?;
    object.serialize_field("max", &AsObject(spread.max))?;
    object.end()
}

pub(crate) fn serialize_ratio<S: Serializer>(
    spread: &Spread<Ratio>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    let mut object = serializer.serialize_struct("Spread", 3)?;
    object.serialize_field("min", &spread.min.value)?;
    object.serialize_field("nominal", &spread.nominal.value)?;
    object.serialize_field("max", &spread.max.value)?;
    object.end()
}

impl<Q: Measured> Serialize for Spread<Q> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serialize(self, serializer)
    }
}

impl<'de, Q: Measured + Add<Output = Q> + Sub<Output = Q>> Deserialize<'de> for Spread<Q> {
    /// From text (`"12 mm"`, `"0.500 +/- 0.015 in"`, `"12 mm +0.1/-0.2"`), or from an object with `min`, `nominal` and
    /// `max`, or with `nominal` and `plus_minus`.
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        RawSpread::deserialize(deserializer)?
            .spread()
            .map_err(de::Error::custom)
    }
}

/// A length with tolerance as it stands in a file.
#[derive(Clone, Debug)]
pub(crate) struct RawSpread(Raw);

impl<'de> Deserialize<'de> for RawSpread {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Raw::deserialize(deserializer).map(Self)
    }
}

impl RawSpread {
    fn spread<Q: Measured + Add<Output = Q> + Sub<Output = Q>>(&self) -> Result<Spread<Q>, String> {
        match &self.0 {
            Raw::One(RawQuantity::Text(text)) => text.parse().map_err(|e: Error| e.to_string()),
            Raw::One(quantity) => Ok(Spread::exact(
                quantity.quantity().map_err(|e| e.to_string())?,
            )),
            Raw::Spread(SpreadParts::Limits { min, nominal, max }) => Ok(Spread {
                min: min.named("min")?,
                nominal: nominal.named("nominal")?,
                max: max.named("max")?,
            }),
            Raw::Spread(SpreadParts::PlusMinus {
                nominal,
                plus_minus,
            }) => {
                let (nominal, tolerance): (Q, Q) =
                    (nominal.named("nominal")?, plus_minus.named("plus_minus")?);
                Ok(Spread {
                    min: nominal - tolerance,
                    nominal,
                    max: nominal + tolerance,
                })
            }
        }
    }

    /// The lengths, or what is wrong with them after the name of their field.
    pub(crate) fn named(&self, field: &str) -> Result<Spread<Length>, String> {
        self.spread().map_err(|error| format!("{field}: {error}"))
    }
}
