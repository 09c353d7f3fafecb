//! Lists to choose from, and names as people type them.
//!
//! | question | begins at |
//! |---|---|
//! | every member of a family, for a drop-down list | [`Key::ALL`] |
//! | the word to store in a file or a database | [`Key::code`] |
//! | the text to show | [`Key::label`] |
//! | read what somebody typed | [`Key::read`], or `parse` |
//! | every thread of the tables, or of a series | [`Thread::tabled`], [`UnifiedSeries::threads`], [`MetricSeries::threads`] |
//! | the threads of a product or a style | [`ScrewProduct::threads`], [`NutStyle::threads`], [`WasherStyle::threads`] |
//! | products, nuts, washers for a thread | [`ScrewProduct::made_with`], [`NutStyle::made_with`], [`WasherStyle::made_for`] |
//! | grades a product is made in | [`ScrewProduct::grades`], [`BoltGrade::made_for`] |
//! | grades of a nut; the nuts that a bolt standard names | [`NutStyle::grades`], [`BoltGrade::named_nuts`] |
//!
//! [`Thread::tabled`]: crate::thread::Thread::tabled
//! [`UnifiedSeries::threads`]: crate::tables::threads::UnifiedSeries::threads
//! [`MetricSeries::threads`]: crate::tables::threads::MetricSeries::threads
//! [`ScrewProduct::threads`]: crate::parts::ScrewProduct::threads
//! [`ScrewProduct::made_with`]: crate::parts::ScrewProduct::made_with
//! [`ScrewProduct::grades`]: crate::parts::ScrewProduct::grades
//! [`NutStyle::threads`]: crate::parts::NutStyle::threads
//! [`NutStyle::made_with`]: crate::parts::NutStyle::made_with
//! [`NutStyle::grades`]: crate::parts::NutStyle::grades
//! [`WasherStyle::threads`]: crate::parts::WasherStyle::threads
//! [`WasherStyle::made_for`]: crate::parts::WasherStyle::made_for
//! [`BoltGrade::made_for`]: crate::material::BoltGrade::made_for
//! [`BoltGrade::named_nuts`]: crate::material::BoltGrade::named_nuts
//!
//! Families: [`ScrewProduct`](crate::parts::ScrewProduct), [`NutStyle`](crate::parts::NutStyle),
//! [`WasherStyle`](crate::parts::WasherStyle), [`BoltGrade`](crate::material::BoltGrade),
//! [`NutGrade`](crate::material::NutGrade), [`Finish`](crate::material::Finish),
//! [`Metal`](crate::tables::galvanic::Metal), `&'static` [`PlyMaterial`](crate::tables::plies::PlyMaterial),
//! `&'static` [`Timber`](crate::tables::timber::Timber), [`UnifiedSeries`](crate::tables::threads::UnifiedSeries),
//! [`MetricSeries`](crate::tables::threads::MetricSeries), [`HoleFit`](crate::tables::holes::HoleFit),
//! [`Condition`](crate::tables::friction::Condition), [`RuleSet`](crate::joint::RuleSet),
//! [`UnitSystem`](crate::units::UnitSystem).
//!
//! ```
//! use shankline::prelude::*;
//! # fn main() -> Result<(), shankline::Error> {
//! // A list for a window: what is stored, what is shown.
//! fn choices<K: Key>() -> Vec<(&'static str, &'static str)> {
//!     K::ALL.iter().map(|key| (key.code(), key.label())).collect()
//! }
//! assert!(choices::<NutStyle>().contains(&("iso_4032", "hex nut ISO 4032")));
//!
//! // Code, label and what people type read back.
//! for text in ["iso_4032", "hex nut ISO 4032", "ISO 4032", "iso4032"] {
//!     assert_eq!(text.parse::<NutStyle>()?, NutStyle::Iso4032);
//! }
//! // What could be several is not guessed.
//! assert_eq!(
//!     "A490".parse::<BoltGrade>().unwrap_err().to_string(),
//!     "\"A490\" is not a known bolt grade; known are ASTM F3125 A490 type 1; \
//!      ASTM F3125 A490 type 3 (the nearest of 117)",
//! );
//! # Ok(())
//! # }
//! ```

use core::fmt;

use crate::error::Error;

mod fits;
mod read;

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

/// The members of a list.
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
