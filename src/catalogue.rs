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

pub use crate::names::Key;

mod fits;
