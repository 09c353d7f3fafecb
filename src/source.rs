//! Where a value comes from.

use core::fmt;

/// How a value is known.
///
/// ```
/// use shankline::source::Basis;
/// assert!(!Basis::Reproduced.is_weak());
/// assert!(Basis::Memory.is_weak());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Basis {
    /// Read in the document itself.
    Published,
    /// Read in a secondary reproduction of the document.
    Reproduced,
    /// Computed from a formula of the document.
    Computed,
    /// Recalled, not read anywhere for this crate. Check it against the standard before a life
    /// depends on it.
    Memory,
}

impl Basis {
    /// Whether nobody has read this value for this crate, so that its user must be told.
    ///
    /// ```
    /// use shankline::source::Basis;
    /// assert!(Basis::Memory.is_weak() && !Basis::Computed.is_weak());
    /// ```
    #[must_use]
    pub const fn is_weak(self) -> bool {
        matches!(self, Self::Memory)
    }
}

impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Published => "published",
            Self::Reproduced => "reproduced",
            Self::Computed => "computed",
            Self::Memory => "from memory",
        })
    }
}

/// A document a value comes from. One row of `tables/sources.csv`.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let source = SaeGrade::Grade5.strength(inches(0.5))?.provenance.unwrap().source;
/// assert_eq!(source.to_string(), "SAE J429, Table 1");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Source {
    /// Short name of this row.
    pub key: &'static str,
    /// The document that fixes the value.
    pub document: &'static str,
    /// Its edition, where known.
    pub edition: Option<&'static str>,
    /// The table, clause or subject within it.
    pub locator: &'static str,
    /// Where it was read for this crate.
    pub read_in: &'static str,
}

// Keys are unique, and no caller can make a source.
impl PartialEq for Source {
    fn eq(&self, other: &Self) -> bool {
        core::ptr::eq(self, other) || self.key == other.key
    }
}

impl core::hash::Hash for Source {
    fn hash<H: core::hash::Hasher>(&self, state: &mut H) {
        self.key.hash(state);
    }
}

impl fmt::Display for Source {
    /// `SAE J429, Table 1`; with `{:#}` also where it was read.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.document)?;
        if let Some(edition) = self.edition {
            write!(f, " ({edition})")?;
        }
        write!(f, ", {}", self.locator)?;
        if f.alternate() {
            write!(f, " [read in: {}]", self.read_in)?;
        }
        Ok(())
    }
}

/// Source and basis of one table row, or of one value.
///
/// ```
/// use shankline::{material::SaeGrade, units::inches};
/// # fn main() -> Result<(), shankline::Error> {
/// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
/// let provenance = strength.provenance.unwrap(); // a grade of the tables has one
/// assert_eq!(provenance.to_string(), "SAE J429, Table 1, reproduced");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Provenance {
    /// The document.
    pub source: &'static Source,
    /// How the value is known.
    pub basis: Basis,
}

impl fmt::Display for Provenance {
    /// One line; `{:#}` adds where the value was read.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if f.alternate() {
            write!(f, "{:#}, {}", self.source, self.basis)
        } else {
            write!(f, "{}, {}", self.source, self.basis)
        }
    }
}
