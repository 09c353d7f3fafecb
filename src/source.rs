//! Where a value comes from, and who published a rule.
//!
//! | what | type |
//! |---|---|
//! | the document a row of a table was read in | [`Source`], with its [`Basis`] a [`Provenance`] |
//! | the rule or formula behind a check, a step of a working or a caution | [`Method`] |

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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Provenance {
    /// The document.
    pub source: &'static Source,
    /// How the value is known.
    pub basis: Basis,
}

impl Provenance {
    /// The edition of the document that the row is of, as far as it is known: many were read in tables that name none.
    /// Where the numbers of several editions are held, the look-up takes it by this name.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = Nut::find_edition(NutStyle::Iso4034, &"M36".parse()?, "GB/T 41-2000")?;
    /// assert_eq!(nut.provenance.edition(), Some("GB/T 41-2000"));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn edition(&self) -> Option<&'static str> {
        self.source.edition
    }
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

/// Who published a rule.
///
/// ```
/// use shankline::source::{Method, Publisher};
/// let method = Method::get("en-1993-1-8-2005-3.9").unwrap();
/// assert_eq!(method.publisher, Publisher::Cen);
/// assert_eq!(method.publisher.to_string(), "CEN");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Publisher {
    /// What follows from equilibrium, geometry and strength of materials; nobody's code.
    Mechanics,
    /// Textbooks and handbooks.
    Textbook,
    /// American Institute of Steel Construction.
    Aisc,
    /// Research Council on Structural Connections.
    Rcsc,
    /// European Committee for Standardization.
    Cen,
    /// German Institute for Standardization, and the German annexes.
    Din,
    /// British Standards Institution.
    Bsi,
    /// Bureau of Indian Standards.
    Bis,
    /// Standards Australia.
    StandardsAustralia,
    /// Canadian Standards Association.
    Csa,
    /// American Wood Council.
    Awc,
    /// Association of German Engineers.
    Vdi,
    /// Japanese Industrial Standards.
    Jis,
    /// International Organization for Standardization.
    Iso,
    /// American Society of Mechanical Engineers.
    Asme,
    /// ASTM International.
    Astm,
    /// SAE International.
    Sae,
    /// United States Department of Defense, its handbooks and the federal standards of threads.
    UsDefense,
    /// National Aeronautics and Space Administration.
    Nasa,
    /// Federal Aviation Administration.
    Faa,
    /// A rule of the trade of which no source was found.
    Practice,
    /// The caller, who stated it.
    Caller,
}

impl fmt::Display for Publisher {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Mechanics => "mechanics",
            Self::Textbook => "textbooks",
            Self::Aisc => "AISC",
            Self::Rcsc => "RCSC",
            Self::Cen => "CEN",
            Self::Din => "DIN",
            Self::Bsi => "BSI",
            Self::Bis => "BIS",
            Self::StandardsAustralia => "Standards Australia",
            Self::Csa => "CSA",
            Self::Awc => "AWC",
            Self::Vdi => "VDI",
            Self::Jis => "JIS",
            Self::Iso => "ISO",
            Self::Asme => "ASME",
            Self::Astm => "ASTM",
            Self::Sae => "SAE",
            Self::UsDefense => "US Department of Defense",
            Self::Nasa => "NASA",
            Self::Faa => "FAA",
            Self::Practice => "common practice",
            Self::Caller => "the caller",
        })
    }
}

/// A rule or formula: who published it, where it stands, and how it is known. One row of
/// `tables/methods.csv`, or the caller's own.
///
/// A formula is known no better than a cell of a table: one that was recalled and not read says so by its
/// [`basis`](Self::basis), and every result that rests on it brings a
/// [`Caution::MethodFromMemory`](crate::caution::Caution::MethodFromMemory).
///
/// ```
/// use shankline::source::{Basis, Method};
/// let shear = Method::get("aisc-360-10-j3.6").unwrap();
/// assert_eq!(shear.to_string(), "AISC 360-10 J3.6");
/// assert_eq!((shear.document, shear.edition), ("AISC 360", Some("2010")));
/// assert_eq!(shear.basis, Basis::Published);
/// // Recalled.
/// assert!(Method::get("is-800-2007-6.4.1").unwrap().basis.is_weak());
/// ```
#[derive(Clone, Copy, Debug, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Method {
    /// Key in `tables/methods.csv`; empty for one of the caller's own.
    pub key: &'static str,
    /// As it is cited in checks, workings and cautions.
    pub citation: &'static str,
    /// Who published it.
    pub publisher: Publisher,
    /// Document.
    pub document: &'static str,
    /// Edition, where one is meant.
    pub edition: Option<&'static str>,
    /// Clause, table or equation, and what it is about.
    pub clause: Option<&'static str>,
    /// Codes of the modes of failure it decides, with blanks between: read by
    /// [`Method::decides`].
    pub(crate) modes: Option<&'static str>,
    /// Codes of the levels of its resistances, with blanks between.
    pub(crate) levels: Option<&'static str>,
    /// How it is known.
    pub basis: Basis,
    /// Where it was read.
    pub read_in: &'static str,
}

// Keys and citations are unique; a caller's own methods have no key and differ by what they are called.
impl PartialEq for Method {
    fn eq(&self, other: &Self) -> bool {
        self.citation == other.citation
    }
}

impl core::hash::Hash for Method {
    fn hash<H: core::hash::Hasher>(&self, state: &mut H) {
        self.citation.hash(state);
    }
}

impl Method {
    /// A rule of the caller's own, as a check or a working shall cite it.
    ///
    /// ```
    /// use shankline::source::{Method, Publisher};
    /// static TEST: Method = Method::own("test on own parts, report 12");
    /// assert_eq!(TEST.to_string(), "test on own parts, report 12");
    /// assert_eq!(TEST.publisher, Publisher::Caller);
    /// ```
    #[must_use]
    pub const fn own(citation: &'static str) -> Self {
        Self {
            key: "",
            citation,
            publisher: Publisher::Caller,
            document: "stated by the caller",
            edition: None,
            clause: None,
            modes: None,
            levels: None,
            basis: Basis::Computed,
            read_in: "the caller",
        }
    }
}

/// Writes words with their source behind them, where they have one.
pub(crate) fn cite(
    f: &mut fmt::Formatter<'_>,
    words: &str,
    source: Option<&Method>,
) -> fmt::Result {
    f.write_str(words)?;
    match source {
        Some(method) => write!(f, " [{}]", method.citation),
        None => Ok(()),
    }
}

impl fmt::Display for Method {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.citation)
    }
}

/// A method stands in a document as it is cited.
#[cfg(feature = "serde")]
#[allow(clippy::trivially_copy_pass_by_ref)] // the signature is that of serde
pub(crate) fn citation<S: serde::Serializer>(
    method: &&'static Method,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(method.citation)
}
