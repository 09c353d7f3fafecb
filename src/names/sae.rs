//! Grades of SAE J429.

use core::fmt;

use super::name_of;

/// Grades of SAE J429.
///
/// Grade 4 and 8.1 are studs only, 5.1 is for screw and washer assemblies, 7 is withdrawn.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(SaeGrade::Grade8.strength(inches(0.5))?.proof_stress, Some(ksi(120.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum SaeGrade {
    /// Grade 1.
    Grade1,
    /// Grade 2. Bolts and screws over 6 in long take the strengths of grade 1.
    Grade2,
    /// Grade 4 (studs).
    Grade4,
    /// Grade 5.
    Grade5,
    /// Grade 5.1 (screw and washer assemblies).
    Grade5_1,
    /// Grade 5.2.
    Grade5_2,
    /// Grade 7 (withdrawn).
    Grade7,
    /// Grade 8.
    Grade8,
    /// Grade 8.1 (studs).
    Grade8_1,
    /// Grade 8.2.
    Grade8_2,
}

/// The numbers as the standard writes them.
pub(super) const NAMES: [(SaeGrade, &str); 10] = [
    (SaeGrade::Grade1, "1"),
    (SaeGrade::Grade2, "2"),
    (SaeGrade::Grade4, "4"),
    (SaeGrade::Grade5, "5"),
    (SaeGrade::Grade5_1, "5.1"),
    (SaeGrade::Grade5_2, "5.2"),
    (SaeGrade::Grade7, "7"),
    (SaeGrade::Grade8, "8"),
    (SaeGrade::Grade8_1, "8.1"),
    (SaeGrade::Grade8_2, "8.2"),
];

impl fmt::Display for SaeGrade {
    /// The number alone: `5.2`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(name_of(&NAMES, *self))
    }
}
