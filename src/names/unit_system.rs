//! The names of systems of units.

use core::{fmt, str::FromStr};

use super::{Key, Named, code_of, keys, label_of};
use crate::error::Error;
use crate::units::UnitSystem;

/// Code and label of every member.
const NAMES: [Named<UnitSystem>; 2] = [
    (UnitSystem::Si, "si", "SI (mm, kN, MPa, N m)"),
    (
        UnitSystem::UsCustomary,
        "us_customary",
        "US customary (in, lbf, ksi, lbf ft)",
    ),
];

impl Key for UnitSystem {
    const FAMILY: &'static str = "system of units";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for UnitSystem {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for UnitSystem {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}
