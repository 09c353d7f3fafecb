//! serde for input types that are objects, and only objects.
//!
//! serde's derive reads a struct from a list too, field after field, and from an empty list where every field
//! has a default: `"load": []` would be no load at all. Input types name this module with
//! `#[serde(crate = "crate::objects")]`. It is serde itself, but for [`de::SeqAccess`], through which the derived code
//! would read a list: here it refuses. `tests/every_input.rs` walks every object of every document.

use core::fmt::Display;

pub use serde::*;

pub mod de {
    //! [`serde::de`], without lists for structs.

    pub use serde::de::*;

    /// Stands before [`serde::de::SeqAccess`] in derived code, and refuses the first field.
    pub trait SeqAccess<'de> {
        /// That of the list.
        type Error: Error;

        /// Never a field.
        fn next_element<T>(&mut self) -> Result<Option<T>, Self::Error> {
            Err(Error::custom(
                "a list stands where an object with named fields belongs",
            ))
        }
    }

    impl<'de, A: serde::de::SeqAccess<'de>> SeqAccess<'de> for A {
        type Error = A::Error;
    }
}

/// Reads what is either named in one word, or said in full as an object.
///
/// # Errors
///
/// Those of the name, and of the object.
pub(crate) fn named_or_full<'de, T: Deserialize<'de>, E: Display, D: Deserializer<'de>>(
    deserializer: D,
    by_name: fn(&str) -> Result<T, E>,
) -> Result<T, D::Error> {
    deserializer.deserialize_any(NamedOrFull(by_name))
}

struct NamedOrFull<T, E>(fn(&str) -> Result<T, E>);

impl<'de, T: Deserialize<'de>, N: Display> serde::de::Visitor<'de> for NamedOrFull<T, N> {
    type Value = T;

    fn expecting(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str("a name, or an object with named fields")
    }

    fn visit_str<E: serde::de::Error>(self, name: &str) -> Result<T, E> {
        (self.0)(name).map_err(E::custom)
    }

    fn visit_map<A: serde::de::MapAccess<'de>>(self, map: A) -> Result<T, A::Error> {
        T::deserialize(serde::de::value::MapAccessDeserializer::new(map))
    }
}
