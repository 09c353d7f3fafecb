//! Anything that serializes, as a small tree: for the values of a line.

use alloc::{
    string::{String, ToString},
    vec::Vec,
};
use core::fmt;

use serde::de::{Deserialize, Deserializer, MapAccess, SeqAccess, Visitor};
use serde::ser::{
    self, Serialize, SerializeMap, SerializeSeq, SerializeStruct, SerializeStructVariant,
    SerializeTuple, SerializeTupleStruct, SerializeTupleVariant, Serializer,
};

use crate::units::twelve_digits;

/// A value of a [`ReportLine`](super::ReportLine): as JSON has them.
///
/// ```
/// use shankline::joint::Datum;
/// let count = Datum::Number(2.0);
/// assert_eq!(serde_json::to_string(&count).unwrap(), "2.0");
/// assert_eq!(serde_json::from_str::<Datum>("2").unwrap(), count);
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[non_exhaustive]
pub enum Datum {
    /// Nothing.
    #[default]
    Nothing,
    /// Yes or no.
    Flag(bool),
    /// A number.
    Number(f64),
    /// Text.
    Text(String),
    /// Several.
    List(Vec<Datum>),
    /// Named ones.
    Fields(Vec<(String, Datum)>),
}

/// The name of the variant, and what is in it.
pub(super) fn coded<T: Serialize>(value: &T) -> (String, Datum) {
    match value.serialize(ToDatum) {
        Ok(Datum::Text(code)) => (code, Datum::Nothing),
        Ok(Datum::Fields(mut fields)) if fields.len() == 1 => fields.pop().unwrap_or_default(),
        Ok(other) => (String::new(), other),
        Err(NoDatum(why)) => (String::new(), Datum::Text(why)),
    }
}

impl Serialize for Datum {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Nothing => serializer.serialize_unit(),
            Self::Flag(flag) => serializer.serialize_bool(*flag),
            Self::Number(number) => serializer.serialize_f64(*number),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(list) => serializer.collect_seq(list),
            Self::Fields(fields) => serializer.collect_map(fields.iter().map(|(k, v)| (k, v))),
        }
    }
}

impl<'de> Deserialize<'de> for Datum {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(DatumVisitor)
    }
}

struct DatumVisitor;

impl<'de> Visitor<'de> for DatumVisitor {
    type Value = Datum;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value")
    }

    fn visit_unit<E>(self) -> Result<Datum, E> {
        Ok(Datum::Nothing)
    }

    fn visit_none<E>(self) -> Result<Datum, E> {
        Ok(Datum::Nothing)
    }

    fn visit_bool<E>(self, flag: bool) -> Result<Datum, E> {
        Ok(Datum::Flag(flag))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Datum, E> {
        Ok(Datum::Number(number))
    }

    // Counts of a report are small.
    #[allow(clippy::cast_precision_loss)]
    fn visit_i64<E>(self, number: i64) -> Result<Datum, E> {
        Ok(Datum::Number(number as f64))
    }

    #[allow(clippy::cast_precision_loss)]
    fn visit_u64<E>(self, number: u64) -> Result<Datum, E> {
        Ok(Datum::Number(number as f64))
    }

    fn visit_str<E>(self, text: &str) -> Result<Datum, E> {
        Ok(Datum::Text(text.into()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Datum, A::Error> {
        let mut all = Vec::new();
        while let Some(item) = list.next_element()? {
            all.push(item);
        }
        Ok(Datum::List(all))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Datum, A::Error> {
        let mut fields = Vec::new();
        while let Some(field) = map.next_entry()? {
            fields.push(field);
        }
        Ok(Datum::Fields(fields))
    }
}

/// Why something is no tree.
#[derive(Debug)]
pub(super) struct NoDatum(String);

impl fmt::Display for NoDatum {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl core::error::Error for NoDatum {}

impl ser::Error for NoDatum {
    fn custom<T: fmt::Display>(why: T) -> Self {
        Self(why.to_string())
    }
}

struct ToDatum;

/// What is under way: a list or named fields, inside a variant or not.
struct Growing {
    variant: Option<&'static str>,
    list: Vec<Datum>,
    fields: Vec<(String, Datum)>,
    key: Option<String>,
}

impl Growing {
    const fn new(variant: Option<&'static str>) -> Self {
        Self {
            variant,
            list: Vec::new(),
            fields: Vec::new(),
            key: None,
        }
    }

    fn done(self, datum: fn(Self) -> Datum) -> Datum {
        let variant = self.variant;
        let inner = datum(self);
        match variant {
            Some(name) => Datum::Fields(Vec::from([(name.into(), inner)])),
            None => inner,
        }
    }

    fn push<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoDatum> {
        self.list.push(value.serialize(ToDatum)?);
        Ok(())
    }

    fn field<T: Serialize + ?Sized>(&mut self, name: &str, value: &T) -> Result<(), NoDatum> {
        self.fields.push((name.into(), value.serialize(ToDatum)?));
        Ok(())
    }

    fn list(self) -> Datum {
        Datum::List(self.list)
    }

    fn fields(self) -> Datum {
        Datum::Fields(self.fields)
    }
}

impl Serializer for ToDatum {
    type Ok = Datum;
    type Error = NoDatum;
    type SerializeSeq = Growing;
    type SerializeTuple = Growing;
    type SerializeTupleStruct = Growing;
    type SerializeTupleVariant = Growing;
    type SerializeMap = Growing;
    type SerializeStruct = Growing;
    type SerializeStructVariant = Growing;

    fn serialize_bool(self, v: bool) -> Result<Datum, NoDatum> {
        Ok(Datum::Flag(v))
    }

    fn serialize_i8(self, v: i8) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v.into()))
    }

    fn serialize_i16(self, v: i16) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v.into()))
    }

    fn serialize_i32(self, v: i32) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v.into()))
    }

    #[allow(clippy::cast_precision_loss)]
    fn serialize_i64(self, v: i64) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v as f64))
    }

    fn serialize_u8(self, v: u8) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v.into()))
    }

    fn serialize_u16(self, v: u16) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v.into()))
    }

    fn serialize_u32(self, v: u32) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v.into()))
    }

    #[allow(clippy::cast_precision_loss)]
    fn serialize_u64(self, v: u64) -> Result<Datum, NoDatum> {
        Ok(Datum::Number(v as f64))
    }

    fn serialize_f32(self, v: f32) -> Result<Datum, NoDatum> {
        self.serialize_f64(v.into())
    }

    fn serialize_f64(self, v: f64) -> Result<Datum, NoDatum> {
        // As the quantities of a report.
        Ok(if v.is_finite() {
            Datum::Number(twelve_digits(v))
        } else {
            Datum::Nothing
        })
    }

    fn serialize_char(self, v: char) -> Result<Datum, NoDatum> {
        Ok(Datum::Text(v.into()))
    }

    fn serialize_str(self, v: &str) -> Result<Datum, NoDatum> {
        Ok(Datum::Text(v.into()))
    }

    fn serialize_bytes(self, v: &[u8]) -> Result<Datum, NoDatum> {
        self.collect_seq(v)
    }

    fn serialize_none(self) -> Result<Datum, NoDatum> {
        Ok(Datum::Nothing)
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<Datum, NoDatum> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<Datum, NoDatum> {
        Ok(Datum::Nothing)
    }

    fn serialize_unit_struct(self, _: &'static str) -> Result<Datum, NoDatum> {
        Ok(Datum::Nothing)
    }

    fn serialize_unit_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
    ) -> Result<Datum, NoDatum> {
        Ok(Datum::Text(variant.into()))
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        value: &T,
    ) -> Result<Datum, NoDatum> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Result<Datum, NoDatum> {
        let inner = value.serialize(self)?;
        Ok(Datum::Fields(Vec::from([(variant.into(), inner)])))
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Growing, NoDatum> {
        Ok(Growing::new(None))
    }

    fn serialize_tuple(self, _: usize) -> Result<Growing, NoDatum> {
        Ok(Growing::new(None))
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Growing, NoDatum> {
        Ok(Growing::new(None))
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<Growing, NoDatum> {
        Ok(Growing::new(Some(variant)))
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Growing, NoDatum> {
        Ok(Growing::new(None))
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Growing, NoDatum> {
        Ok(Growing::new(None))
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<Growing, NoDatum> {
        Ok(Growing::new(Some(variant)))
    }
}

impl SerializeSeq for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoDatum> {
        self.push(value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::list))
    }
}

impl SerializeTuple for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoDatum> {
        self.push(value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::list))
    }
}

impl SerializeTupleStruct for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoDatum> {
        self.push(value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::list))
    }
}

impl SerializeTupleVariant for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoDatum> {
        self.push(value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::list))
    }
}

impl SerializeMap for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), NoDatum> {
        let Datum::Text(key) = key.serialize(ToDatum)? else {
            return Err(NoDatum("a key that is no text".into()));
        };
        self.key = Some(key);
        Ok(())
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoDatum> {
        let key = self.key.take().unwrap_or_default();
        self.field(&key, value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::fields))
    }
}

impl SerializeStruct for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_field<T: Serialize + ?Sized>(
        &mut self,
        name: &'static str,
        value: &T,
    ) -> Result<(), NoDatum> {
        self.field(name, value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::fields))
    }
}

impl SerializeStructVariant for Growing {
    type Ok = Datum;
    type Error = NoDatum;

    fn serialize_field<T: Serialize + ?Sized>(
        &mut self,
        name: &'static str,
        value: &T,
    ) -> Result<(), NoDatum> {
        self.field(name, value)
    }

    fn end(self) -> Result<Datum, NoDatum> {
        Ok(self.done(Self::fields))
    }
}

#[cfg(test)]
mod tests;
