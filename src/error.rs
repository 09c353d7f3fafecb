//! What can be wrong with a question, and how the answer says so.
//!
//! # How much there may be
//!
//! More than this is refused, mostly with [`Error::OutOfRange`], which says how many there are and may be. Below it time and
//! memory grow with what is given, or hardly faster, but where the table says so: there they are little at the limit.
//!
//! | of | at most | where |
//! |---|---|---|
//! | characters of a name, title, reason or designation, and of the text of a quantity | 1000 | every reader; names where they are first checked |
//! | plies | 1000 | [`Stack`](crate::joint::Stack) |
//! | washers under the head, under the nut | 100 each | [`Stack`](crate::joint::Stack) |
//! | bolts along and across a load, friction faces | 1000 each | [`Pattern`](crate::joint::Pattern), [`strength::slip`](crate::strength::slip) |
//! | lengths of a bolt of one's own | 1000, as each is looked up among all | [`OwnScrew`](crate::joint::OwnScrew) |
//! | modes set aside | as many as there are | [`Joint`](crate::joint::Joint) |
//! | things taken for granted, plies of one | 1000 each | [`Joint`](crate::joint::Joint) |
//! | lengths of a chain | 10 000 | [`ToleranceChain`](crate::joint::ToleranceChain) |
//! | kinds of bolts in a bin; bolts of one kind, joints to pick for | 10 000; 1 000 000 | [`Bin`](crate::joint::Bin) |
//! | joints of a shopping list, choices of one, of all | 1000, 1000, 100 000 | [`shopping_list`](crate::joint::shopping_list), which stops its search after 200 000 branches |
//! | combinations of a design, kinds of bolts on hand | 100 000, 10 000 | [`DesignSpace`](crate::joint::DesignSpace) |
//! | bolts of a pattern | 10 000 | [`BoltPattern`](crate::strength::group::BoltPattern) |
//! | bolts of a connection | 200, as blocks grow with the square, and zigzags between holes, once a plate, with the cube | [`Connection`](crate::connection::Connection) |
//! | corners of an outline | 200, as every two sides are held against each other | [`Outline`](crate::connection::Outline) |
//! | plates of a connection | as many as plies | [`Connection`](crate::connection::Connection) |
//! | load cases with combinations and alternations, parts of combinations | 1 000 000 each | [`Connection`](crate::connection::Connection) |
//! | bolts times what is checked of cases, three for one that alternates | 1 000 000 | [`Connection`](crate::connection::Connection) |
//! | patterns of a design | 1000 | [`Connection::design`](crate::connection::Connection::design) |
//!
//! Documents are as deep as their types: none of them holds itself. A method that takes a list and adds it up has no limit, as
//! the list is there already.

use alloc::string::String;
use core::fmt;

use crate::units::{Dimension, Length, Stiffness, Stress, TextError};
use crate::units::{MOST_CHARACTERS, is_too_long};

mod amount;

pub use crate::units::TextProblem;
pub use amount::{Amount, ShownAmount};

/// Why a question was refused.
///
/// Each variant carries the offending value and what would have been permitted, so that a caller
/// can show a message or act on the parts. `Debug` writes the same sentence as `Display`: it is what a `main` that returns
/// the error prints.
///
/// ```
/// use shankline::{Error, material::SaeGrade, units::inches};
/// let error = SaeGrade::Grade5.strength(inches(2.0)).unwrap_err();
/// assert!(matches!(error, Error::OutOfRange { .. }));
/// assert_eq!(
///     error.to_string(),
///     "nominal diameter for SAE J429 grade 5 is 50.800 mm (2.0000 in); \
///      it must be from 6.350 mm (0.2500 in) to 38.100 mm (1.5000 in)",
/// );
/// ```
#[derive(Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Error {
    /// A value lies outside what is meaningful or what the source covers. NaN, infinity, zero and
    /// negative values of a quantity that must be positive come here too.
    #[error("{quantity} is {value}; it must be {allowed}")]
    OutOfRange {
        /// What the value is.
        quantity: String,
        /// The offending value.
        value: Amount,
        /// What would have been accepted.
        allowed: Allowed,
    },
    /// A table has no such row.
    #[error("{wanted} is not in {table}; {available}")]
    NotInTable {
        /// The table that was asked.
        table: &'static str,
        /// What was looked for.
        wanted: String,
        /// What the table has nearby.
        available: String,
    },
    /// The row exists but the source gives no such value, or nobody has read it.
    #[error("no known {quantity} for {subject}: {reason}")]
    NoValue {
        /// The value that is missing.
        quantity: &'static str,
        /// What it was asked of.
        subject: String,
        /// Why there is none.
        reason: &'static str,
    },
    /// A thread designation cannot be read.
    #[error("thread designation \"{text}\": {problem} (at character {position})", position = .position + 1)]
    Designation {
        /// The text as given.
        text: String,
        /// Which character is wrong, counted from zero.
        position: usize,
        /// What is wrong there.
        problem: DesignationProblem,
    },
    /// The name of a grade, a style or a product is not known, or could be that of several.
    #[error("\"{text}\" is not a known {what}; known are {known}")]
    UnknownName {
        /// What kind of name was expected.
        what: &'static str,
        /// The text as given.
        text: String,
        /// The known names; of many, those that the text could mean or that are nearest to it.
        known: String,
    },
    /// The text of a quantity cannot be read.
    #[error("{}", .problem.sentence(.text, *.expected))]
    QuantityText {
        /// The text as given.
        text: String,
        /// The kind of quantity expected.
        expected: Dimension,
        /// What is wrong with it.
        problem: TextProblem,
    },
    /// The parts of a joint do not fit together.
    #[error("{0}")]
    Mismatch(String),
}

impl Error {
    /// What kind of refusal it is, as a stable word for programs.
    ///
    /// ```
    /// use shankline::{material::SaeGrade, units::inches};
    /// assert_eq!(SaeGrade::Grade5.strength(inches(2.0)).unwrap_err().code(), "out_of_range");
    /// ```
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange { .. } => "out_of_range",
            Self::NotInTable { .. } => "not_in_table",
            Self::NoValue { .. } => "no_value",
            Self::Designation { .. } => "designation",
            Self::UnknownName { .. } => "unknown_name",
            Self::QuantityText { .. } => "quantity_text",
            Self::Mismatch(_) => "mismatch",
        }
    }
}

/// As a document: `code`, the sentence as `text`, and what stands in it: `quantity` and `value` of what is out of range,
/// `wanted` and `available` of a table, `subject`, the `given` text with its `position`.
#[cfg(feature = "serde")]
impl serde::Serialize for Error {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use alloc::string::ToString;
        use serde::ser::SerializeMap;
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("code", self.code())?;
        map.serialize_entry("text", &self.to_string())?;
        match self {
            Self::OutOfRange {
                quantity,
                value,
                allowed,
            } => {
                map.serialize_entry("quantity", quantity)?;
                map.serialize_entry("value", value)?;
                map.serialize_entry("allowed", &allowed.to_string())?;
            }
            Self::NotInTable {
                wanted, available, ..
            } => {
                map.serialize_entry("wanted", wanted)?;
                map.serialize_entry("available", available)?;
            }
            Self::NoValue {
                quantity, subject, ..
            } => {
                map.serialize_entry("quantity", quantity)?;
                map.serialize_entry("subject", subject)?;
            }
            Self::Designation { text, position, .. } => {
                map.serialize_entry("given", text)?;
                map.serialize_entry("position", position)?;
            }
            Self::UnknownName { text, known, .. } => {
                map.serialize_entry("given", text)?;
                map.serialize_entry("available", known)?;
            }
            Self::QuantityText { text, .. } => map.serialize_entry("given", text)?,
            Self::Mismatch(_) => {}
        }
        map.end()
    }
}

impl From<TextError> for Error {
    fn from(error: TextError) -> Self {
        Self::QuantityText {
            text: error.text,
            expected: error.expected,
            problem: error.problem,
        }
    }
}

impl fmt::Debug for Error {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Display::fmt(self, f)
    }
}

/// What is wrong with a thread designation.
///
/// ```
/// use shankline::{Error, error::DesignationProblem, thread::Thread};
/// let error = "M12x".parse::<Thread>().unwrap_err();
/// assert!(matches!(error, Error::Designation { problem: DesignationProblem::Pitch, position: 4, .. }));
/// ```
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum DesignationProblem {
    /// The text is empty.
    #[error("it is empty")]
    Empty,
    /// A diameter was expected.
    #[error("a nominal size is expected, such as #10, 3/8, 1-1/2, .190 or M12")]
    Size,
    /// A pitch was expected.
    #[error("a pitch is expected: threads per inch after a hyphen, or millimetres after an x")]
    Pitch,
    /// The series symbol is not known.
    #[error(
        "the series is not one of UNC, UNF, UNEF, UN, 4-UN, 6-UN, 8-UN, 12-UN, 16-UN, 20-UN, 28-UN, 32-UN, UNS, or these with R or J after UN"
    )]
    Series,
    /// The pitch is missing, and the size has several threads.
    #[error("a size alone does not tell the thread; {available}")]
    NoPitch {
        /// The threads of that diameter, or the nearest sizes.
        available: String,
    },
    /// Lead, pitch and number of starts do not belong together.
    #[error(
        "the lead must be a whole number of pitches from 1 to {most}, and that number the starts", most = MOST_STARTS
    )]
    Starts,
    /// The profile has no such threads.
    #[error("UNR is a profile of external threads only; their nuts are UN")]
    NutOfRoundedRoot,
    /// The length of engagement cannot be read.
    #[error(
        "a length of engagement is expected: inches after SE for Unified, S, N, L or millimetres for metric threads"
    )]
    Engagement,
    /// The tolerance class is not known.
    #[error(
        "the class is not one of 1A, 2A, 3A, 1B, 2B, 3B for Unified, or such as 6g, 6H, 4g6g for metric threads"
    )]
    Class,
    /// There is text after the end of the designation.
    #[error("text follows that is not part of a designation")]
    Trailing,
    /// The size, pitch and series are each readable but no standard thread combines them.
    #[error("no standard thread is that; {available}")]
    NotStandard {
        /// Standard threads of that diameter, or the nearest sizes.
        available: String,
    },
}

/// The range a value would have had to lie in.
///
/// ```
/// use shankline::error::Allowed;
/// assert_eq!(Allowed::FromTo(1.0.into(), 2.0.into()).to_string(), "from 1 to 2");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Allowed {
    /// Finite and greater than zero; nor so small or great (1e-60, 1e60 in SI base units) that no product of it is a number.
    Positive,
    /// Finite and not less than zero, and of a size as for [`Positive`](Self::Positive).
    NotNegative,
    /// From the first to the second, both included.
    FromTo(Amount, Amount),
    /// Greater than the first, up to and including the second.
    OverThru(Amount, Amount),
    /// Not less than this.
    AtLeast(Amount),
    /// More than this.
    Above(Amount),
    /// Not more than this.
    AtMost(Amount),
    /// Greater than zero and less than this.
    Below(Amount),
    /// Not less than the first and less than the second.
    FromBelow(Amount, Amount),
    /// Minimum, nominal and maximum finite and in that order.
    Ordered,
}

impl fmt::Display for Allowed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Positive => f.write_str("finite and greater than zero"),
            Self::NotNegative => f.write_str("finite and not negative"),
            Self::FromTo(low, high) => write!(f, "from {low} to {high}"),
            Self::OverThru(low, high) => write!(f, "over {low} and up to {high}"),
            Self::AtLeast(low) => write!(f, "at least {low}"),
            Self::Above(low) => write!(f, "more than {low}"),
            Self::AtMost(high) => write!(f, "at most {high}"),
            Self::Below(high) => write!(f, "greater than zero and below {high}"),
            Self::FromBelow(low, high) => write!(f, "from {low} to below {high}"),
            Self::Ordered => f.write_str("finite, with minimum <= nominal <= maximum"),
        }
    }
}

/// What no part and no load has, in SI base units. Between these, a product or quotient of several figures stays in the
/// range of numbers: beyond, a square is zero or without end, and results were so too.
const SMALLEST: f64 = 1e-60;
const GREATEST: f64 = 1e60;

/// Refuses a value that is not finite and greater than zero.
#[inline]
pub(crate) fn positive<Q>(quantity: &'static str, value: Q) -> Result<Q, Error>
where
    Q: Copy + Into<Amount> + Finite,
{
    if (SMALLEST..=GREATEST).contains(&value.raw()) {
        Ok(value)
    } else {
        Err(out_of_range(quantity, value, Allowed::Positive))
    }
}

/// Refuses a value that is negative or not finite.
#[inline]
pub(crate) fn not_negative<Q>(quantity: &'static str, value: Q) -> Result<Q, Error>
where
    Q: Copy + Into<Amount> + Finite,
{
    // Zero is right, next to it is not.
    if value.raw() == 0.0 || (SMALLEST..=GREATEST).contains(&value.raw()) {
        Ok(value)
    } else {
        Err(out_of_range(quantity, value, Allowed::NotNegative))
    }
}

/// Refuses a text of the caller that is longer than any name.
pub(crate) fn sane_text(what: &str, text: &str) -> Result<(), Error> {
    if !is_too_long(text) {
        return Ok(());
    }
    at_most(
        alloc::format!("number of characters of the {what}"),
        text.chars().count(),
        MOST_CHARACTERS,
    )
}

/// Refuses more of something than there may be.
pub(crate) fn at_most(quantity: impl Into<String>, count: usize, most: usize) -> Result<(), Error> {
    if count <= most {
        Ok(())
    } else {
        Err(out_of_range(quantity, count, Allowed::AtMost(most.into())))
    }
}

/// The most starts a thread may have here.
pub(crate) const MOST_STARTS: u8 = 20;

/// No part of a joint is longer. The limit keeps every sum and product of lengths finite.
pub(crate) const LONGEST: Length = crate::units::millimetres(1e6);

/// Refuses a length that is not finite, not greater than zero, or beyond a kilometre.
pub(crate) fn sane_length(quantity: &'static str, value: Length) -> Result<Length, Error> {
    positive(quantity, value)?;
    if value <= LONGEST {
        Ok(value)
    } else {
        Err(out_of_range(
            quantity,
            value,
            Allowed::AtMost(LONGEST.into()),
        ))
    }
}

#[inline]
pub(crate) fn sane_stiffness(
    quantity: &'static str,
    stiffness: Stiffness,
) -> Result<Stiffness, Error> {
    within(
        quantity,
        stiffness,
        crate::units::newtons_per_millimetre(1e-6),
        crate::units::newtons_per_millimetre(1e18),
    )
}

/// A modulus of elasticity or a strength, from a pascal to a million GPa.
#[inline]
pub(crate) fn sane_stress(quantity: &'static str, stress: Stress) -> Result<Stress, Error> {
    within(
        quantity,
        stress,
        crate::units::megapascals(1e-6),
        crate::units::megapascals(1e9),
    )
}

/// A length of a part, from a nanometre to a kilometre.
#[inline]
pub(crate) fn part_length(quantity: &'static str, length: Length) -> Result<Length, Error> {
    within(quantity, length, crate::units::millimetres(1e-6), LONGEST)
}

#[inline]
pub(crate) fn within<Q>(quantity: &'static str, value: Q, least: Q, greatest: Q) -> Result<Q, Error>
where
    Q: Copy + PartialOrd + Into<Amount> + Finite,
{
    positive(quantity, value)?;
    if least <= value && value <= greatest {
        Ok(value)
    } else {
        Err(out_of_range(
            quantity,
            value,
            Allowed::FromTo(least.into(), greatest.into()),
        ))
    }
}

#[cold]
pub(crate) fn out_of_range(
    quantity: impl Into<String>,
    value: impl Into<Amount>,
    allowed: Allowed,
) -> Error {
    Error::OutOfRange {
        quantity: quantity.into(),
        value: value.into(),
        allowed,
    }
}

/// The number inside a quantity, for the range checks above.
pub(crate) trait Finite {
    fn raw(self) -> f64;
}

impl<D, U> Finite for uom::si::Quantity<D, U, f64>
where
    D: uom::si::Dimension + ?Sized,
    U: uom::si::Units<f64> + ?Sized,
{
    fn raw(self) -> f64 {
        self.value
    }
}

impl Finite for f64 {
    fn raw(self) -> f64 {
        self
    }
}
