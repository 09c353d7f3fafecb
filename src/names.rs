//! The names that rows are kept under, and how every name is listed, written and read: [`Key`].
//!
//! Each is given on by the room of its subject: `material::BoltGrade`, `thread::UnifiedClass`, `catalogue::Key`. Keys that
//! one table alone needs stand beside its rows.

use core::fmt;

use crate::error::Error;

mod aisc_edition;
mod astm;
mod bolt_grade;
mod bolt_names;
mod iso;
mod nut_grade;
mod read;
mod sae;
mod stainless;
mod unified_class;
mod unit_system;

pub use aisc_edition::AiscEdition;
pub use astm::AstmGrade;
pub use bolt_grade::BoltGrade;
pub use iso::PropertyClass;
pub use nut_grade::NutGrade;
pub use sae::SaeGrade;
pub use stainless::StainlessClass;
pub use unified_class::UnifiedClass;

/// A family of things to choose one of: a list, a code for each, a label for each.
///
/// Within a family no two codes are alike, and no two labels. [`Display`](fmt::Display) writes the label,
/// and [`read`](Self::read) takes both back. Codes are stable: short words of ASCII letters, digits and
/// underscores, those that serde writes. (A [`Finish`](crate::material::Finish) is written as an object where it
/// says whether it was baked.) Members are ordered as [`ALL`](Self::ALL) lists them, which says nothing of their
/// strength. A later version may list more.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(WasherStyle::F436.code(), "f436");
/// assert_eq!(WasherStyle::F436.label(), "hardened washer ASTM F436");
/// ```
pub trait Key: Copy + PartialEq + fmt::Display + 'static {
    /// What one member is, in a sentence: `nut style`.
    const FAMILY: &'static str;

    /// Every member, in the order of a list to choose from.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(UnitSystem::ALL, [UnitSystem::Si, UnitSystem::UsCustomary]);
    /// ```
    const ALL: &'static [Self];

    /// The word it has in data files.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(BoltGrade::from(SaeGrade::Grade5).code(), "sae_j429_5");
    /// ```
    #[must_use]
    fn code(self) -> &'static str;

    /// What it is called, with its standard: unlike that of any other member.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(NutGrade::AstmA194_2h.label(), "ASTM A194 2H");
    /// ```
    #[must_use]
    fn label(self) -> &'static str;

    /// Reads a code, a label, or as much of a label as means one member only; case and blanks do not count.
    ///
    /// A part of a label counts if it has a digit and a letter, as `ISO 4032` and `B7`, or if it is two or three letters
    /// long and ends the label, as `DH`. It cannot begin with a bare number from within the label.
    /// `gr` stands for grade, `cl` for class. What could mean several members is refused, and so is a bare number,
    /// which says nothing of its standard: a nut of `8` is of SAE J995 or of ISO 898-2.
    ///
    /// # Errors
    ///
    /// [`Error::UnknownName`] for any other text, with the members it could mean or whose names are nearest to it.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(NutGrade::read("2h")?, NutGrade::AstmA194_2h);
    /// assert_eq!(NutGrade::read("class 8")?, NutGrade::Iso898_2Class8);
    /// assert!(NutGrade::read("8").unwrap_err().to_string().contains("SAE J995 grade 8; "));
    /// # Ok(())
    /// # }
    /// ```
    fn read(text: &str) -> Result<Self, Error> {
        read::key(text)
    }
}

/// Code and label of a member, in the list of its family.
pub(crate) type Named<K> = (K, &'static str, &'static str);

/// The members of a list. Runs when the library is built.
#[allow(clippy::indexing_slicing)]
pub(crate) const fn keys<K: Copy, const N: usize>(names: &[Named<K>; N]) -> [K; N] {
    let mut keys = [names[0].0; N];
    let mut index = 0;
    while index < N {
        keys[index] = names[index].0;
        index += 1;
    }
    keys
}

/// The code of a member. Every list is complete: `tests/catalogue.rs` looks.
pub(crate) fn code_of<K: Copy + PartialEq>(names: &[Named<K>], key: K) -> &'static str {
    let found = names.iter().find(|(known, ..)| *known == key);
    found.map_or("", |(_, code, _)| code)
}

/// The label of a member.
pub(crate) fn label_of<K: Copy + PartialEq>(names: &[Named<K>], key: K) -> &'static str {
    let found = names.iter().find(|(known, ..)| *known == key);
    found.map_or("", |(.., label)| label)
}

/// The name of a grade among those of its standard.
fn name_of<T: Copy + PartialEq>(names: &[(T, &'static str)], grade: T) -> &'static str {
    let found = names.iter().find(|(known, _)| *known == grade);
    found.map_or("", |(_, name)| name)
}
