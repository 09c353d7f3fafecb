//! Property classes of ISO 898-1.

use core::fmt;

use super::name_of;

/// Property classes of ISO 898-1.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(PropertyClass::Class10_9.strength(millimetres(12.0))?.proof_stress, Some(megapascals(830.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum PropertyClass {
    /// Class 3.6, dropped from the 2009 edition.
    Class3_6,
    /// Class 4.6.
    Class4_6,
    /// Class 4.8.
    Class4_8,
    /// Class 5.6.
    Class5_6,
    /// Class 5.8.
    Class5_8,
    /// Class 6.8.
    Class6_8,
    /// Class 8.8.
    Class8_8,
    /// Class 9.8, up to 16 mm.
    Class9_8,
    /// Class 10.9.
    Class10_9,
    /// Class 12.9.
    Class12_9,
    /// Class 12.9 with the underlined marking: leaner steel, lower tempering temperature.
    Class12_9Underlined,
}

/// The numbers as the standard writes them.
pub(super) const NAMES: [(PropertyClass, &str); 11] = [
    (PropertyClass::Class3_6, "3.6"),
    (PropertyClass::Class4_6, "4.6"),
    (PropertyClass::Class4_8, "4.8"),
    (PropertyClass::Class5_6, "5.6"),
    (PropertyClass::Class5_8, "5.8"),
    (PropertyClass::Class6_8, "6.8"),
    (PropertyClass::Class8_8, "8.8"),
    (PropertyClass::Class9_8, "9.8"),
    (PropertyClass::Class10_9, "10.9"),
    (PropertyClass::Class12_9, "12.9"),
    (PropertyClass::Class12_9Underlined, "12.9 underlined"),
];

impl fmt::Display for PropertyClass {
    /// The number alone: `8.8`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(name_of(&NAMES, *self))
    }
}
