//! Timbers: specific gravities of the US specification, characteristic densities of the European classes, strengths
//! across the grain of both.

use core::{fmt, str::FromStr};

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::Key;
use crate::source::Provenance;
use crate::units::{Density, Stress};

/// Softwood or hardwood: codes give them different factors for bolts.
///
/// ```
/// use shankline::tables::timber::{Timber, TimberKind};
/// assert_eq!(Timber::find("White Oak").unwrap().kind, TimberKind::Hardwood);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum TimberKind {
    /// Of conifers.
    Softwood,
    /// Of broad-leaved trees.
    Hardwood,
}

impl fmt::Display for TimberKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Softwood => "softwood",
            Self::Hardwood => "hardwood",
        })
    }
}

/// A timber of one publisher. Its one number is the one that publisher's equations for bolts start from:
/// a specific gravity is not a density over that of water here, and neither replaces the other.
///
/// ```
/// use shankline::tables::timber::Timber;
/// use shankline::units::kilograms_per_cubic_metre;
/// # fn main() -> Result<(), shankline::Error> {
/// let larch = Timber::find("Douglas Fir-Larch")?;
/// assert_eq!((larch.specific_gravity, larch.characteristic_density), (Some(0.50), None));
/// let c24 = Timber::find("C24")?;
/// assert_eq!(c24.characteristic_density, Some(kilograms_per_cubic_metre(350.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Timber {
    /// Species combination or strength class, unique in the table.
    pub name: &'static str,
    /// Who assigns the value: NDS, EN 338 or EN 14080.
    pub publisher: &'static str,
    /// Softwood or hardwood.
    pub kind: TimberKind,
    /// Assigned specific gravity G, by oven-dry weight and volume.
    pub specific_gravity: Option<f64>,
    /// Characteristic density `rho_k`: 95 % of the timber of the class is heavier.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub characteristic_density: Option<Density>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

/// Codes, in the order of the table.
const CODES: [&str; 29] = [
    "douglas_fir_larch",
    "douglas_fir_south",
    "eastern_softwoods",
    "hem_fir",
    "redwood_close_grain",
    "redwood_open_grain",
    "southern_pine",
    "spruce_pine_fir",
    "spruce_pine_fir_south",
    "western_cedars",
    "western_woods",
    "mixed_maple",
    "red_oak",
    "white_oak",
    "c14",
    "c16",
    "c18",
    "c20",
    "c22",
    "c24",
    "c27",
    "c30",
    "d30",
    "d40",
    "gl_24c",
    "gl_24h",
    "gl_28c",
    "gl_28h",
    "gl_32h",
];

/// Every row, as a key. Filled when the library is built.
#[allow(clippy::indexing_slicing)]
static KEYS: [&Timber; CODES.len()] = {
    let rows = &generated::timber::TIMBER;
    let mut keys = [&rows[0]; CODES.len()];
    let mut index = 0;
    while index < keys.len() {
        keys[index] = &rows[index];
        index += 1;
    }
    keys
};

impl Key for &'static Timber {
    const FAMILY: &'static str = "timber";
    const ALL: &'static [Self] = &KEYS;

    /// Empty for what is not a row of the table.
    fn code(self) -> &'static str {
        let at = Timber::all().iter().position(|row| row.name == self.name);
        at.and_then(|at| CODES.get(at)).copied().unwrap_or_default()
    }

    fn label(self) -> &'static str {
        self.name
    }
}

impl FromStr for &'static Timber {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl Timber {
    /// Every timber.
    ///
    /// ```
    /// assert_eq!(shankline::tables::timber::Timber::all().len(), 29);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::timber::TIMBER
    }

    /// The timber of a name, of a code or of as much of a name as means one timber only ([`Key::read`]).
    ///
    /// # Errors
    ///
    /// [`Error::UnknownName`] for another name; the message gives the nearest.
    ///
    /// ```
    /// use shankline::tables::timber::Timber;
    /// assert!(Timber::find("hem-fir").is_ok());
    /// assert!(Timber::find("C23").is_err());
    /// ```
    pub fn find(name: &str) -> Result<&'static Self, Error> {
        Key::read(name)
    }

    /// How strong it is in compression across the grain, if that is known.
    ///
    /// ```
    /// use shankline::tables::timber::Timber;
    /// assert!(Timber::all().iter().all(|timber| timber.compression().is_some()));
    /// ```
    #[must_use]
    pub fn compression(&self) -> Option<&'static TimberCompression> {
        let mut rows = TimberCompression::all().iter();
        rows.find(|row| row.name == self.name)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::timber::Timber;
    /// assert_eq!(Timber::find("C24").unwrap().cautions().iter().count(), 0);
    /// assert_eq!(Timber::find("Redwood, close grain").unwrap().cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let value = if self.specific_gravity.is_some() {
            "specific gravity"
        } else {
            "characteristic density"
        };
        Cautions::default().with(Caution::from_memory(value, self.provenance))
    }
}

/// How strong a timber is in compression across the grain, by the publisher who names it.
///
/// ```
/// use shankline::tables::timber::Timber;
/// use shankline::units::{ksi, megapascals};
/// # fn main() -> Result<(), shankline::Error> {
/// let c24 = Timber::find("C24")?.compression().unwrap();
/// assert_eq!((c24.characteristic, c24.design_value), (Some(megapascals(2.5)), None));
/// let hem = Timber::find("Hem-Fir")?.compression().unwrap();
/// assert_eq!((hem.characteristic, hem.design_value), (None, Some(ksi(0.405))));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TimberCompression {
    /// Species combination or strength class, as in [`Timber::name`].
    pub name: &'static str,
    /// Reference design value `Fc_perp` of NDS, before adjustment.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub design_value: Option<Stress>,
    /// Characteristic strength `fc,90,k` of EN 338 or EN 14080.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub characteristic: Option<Stress>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl TimberCompression {
    /// Every row.
    ///
    /// ```
    /// use shankline::tables::timber::{Timber, TimberCompression};
    /// assert_eq!(TimberCompression::all().len(), Timber::all().len());
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::timber_compression::TIMBER_COMPRESSION
    }

    /// The strength, of whichever publisher names the timber: what
    /// [`TimberWasher::bearing`](crate::strength::timber::TimberWasher::bearing) asks for.
    ///
    /// ```
    /// use shankline::{tables::timber::Timber, units::megapascals};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let strength = Timber::find("GL 24h")?.compression().and_then(|row| row.strength());
    /// assert_eq!(strength, Some(megapascals(2.5)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn strength(&self) -> Option<Stress> {
        self.design_value.or(self.characteristic)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::timber::Timber;
    /// let row = Timber::find("GL 24c").unwrap().compression().unwrap();
    /// assert_eq!(row.cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let value = "compressive strength across the grain";
        Cautions::default().with(Caution::from_memory(value, self.provenance))
    }
}

impl fmt::Display for Timber {
    /// `C24`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name)
    }
}
