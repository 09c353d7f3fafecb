//! Anodic index of metals: which of two in contact corrodes, and whether an environment permits it.
//!
//! The index is the potential below that of gold; of two metals the one with the higher index corrodes.
//! Contact counts, so a plated part is its plating, and a chromate on zinc or cadmium does not count
//! (MIL-DTL-14072F, 3.13.1, read). Small parts should be the cathode: a bolt nobler than its plates does
//! less harm than the reverse (MIL-STD-1250A, 5.6 e and f, read).

use core::{fmt, str::FromStr};

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::Provenance;
use crate::units::{ElectricPotential, volts};

/// A metal or plating, as far as galvanic corrosion goes.
///
/// ```
/// use shankline::tables::galvanic::Metal;
/// assert_eq!(Metal::Stainless18Chromium.to_string(), "stainless steel with 18 % chromium");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Metal {
    /// Magnesium and its alloys.
    Magnesium,
    /// Zinc: wrought, die cast or plated.
    Zinc,
    /// Hot-dip zinc: galvanized steel.
    HotDipZinc,
    /// Cadmium plate.
    Cadmium,
    /// Wrought aluminium alloys other than the 2000 series.
    Aluminium,
    /// Plain carbon and low-alloy steel, and iron.
    Steel,
    /// Wrought aluminium alloys of the 2000 series.
    #[cfg_attr(feature = "serde", serde(rename = "aluminium_2000"))]
    Aluminium2000,
    /// Lead.
    Lead,
    /// Tin plate and tin-lead solder.
    Tin,
    /// Chromium plate.
    Chromium,
    /// Stainless steel with 12 % chromium.
    #[cfg_attr(feature = "serde", serde(rename = "stainless_12_chromium"))]
    Stainless12Chromium,
    /// Stainless steel with 18 % chromium, as A2 and A4.
    #[cfg_attr(feature = "serde", serde(rename = "stainless_18_chromium"))]
    Stainless18Chromium,
    /// High brasses and bronzes.
    HighBrass,
    /// Brasses and bronzes.
    Brass,
    /// Copper, low brasses and bronzes, high copper-nickel alloys.
    Copper,
    /// Nickel.
    Nickel,
    /// Titanium and its alloys.
    Titanium,
    /// Silver.
    Silver,
    /// Gold.
    Gold,
}

/// Code and label of every member.
const NAMES: [Named<Metal>; 19] = [
    (Metal::Magnesium, "magnesium", "magnesium"),
    (Metal::Zinc, "zinc", "zinc"),
    (Metal::HotDipZinc, "hot_dip_zinc", "hot-dip zinc"),
    (Metal::Cadmium, "cadmium", "cadmium"),
    (Metal::Aluminium, "aluminium", "aluminium"),
    (Metal::Steel, "steel", "steel"),
    (
        Metal::Aluminium2000,
        "aluminium_2000",
        "aluminium of the 2000 series",
    ),
    (Metal::Lead, "lead", "lead"),
    (Metal::Tin, "tin", "tin"),
    (Metal::Chromium, "chromium", "chromium plate"),
    (
        Metal::Stainless12Chromium,
        "stainless_12_chromium",
        "stainless steel with 12 % chromium",
    ),
    (
        Metal::Stainless18Chromium,
        "stainless_18_chromium",
        "stainless steel with 18 % chromium",
    ),
    (Metal::HighBrass, "high_brass", "high brass"),
    (Metal::Brass, "brass", "brass"),
    (Metal::Copper, "copper", "copper"),
    (Metal::Nickel, "nickel", "nickel"),
    (Metal::Titanium, "titanium", "titanium"),
    (Metal::Silver, "silver", "silver"),
    (Metal::Gold, "gold", "gold"),
];

impl Key for Metal {
    const FAMILY: &'static str = "metal";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for Metal {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for Metal {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// The anodic index of a metal.
///
/// ```
/// use shankline::tables::galvanic::{AnodicIndex, Metal};
/// use shankline::units::volts;
/// assert_eq!(AnodicIndex::of(Metal::Steel).unwrap().anodic_index, volts(0.85));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AnodicIndex {
    /// The metal.
    pub metal: Metal,
    /// Its potential below gold.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub anodic_index: ElectricPotential,
    /// What it holds for.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl AnodicIndex {
    /// Every row, the most anodic first.
    ///
    /// ```
    /// use shankline::tables::galvanic::{AnodicIndex, Metal};
    /// assert_eq!(AnodicIndex::all()[0].metal, Metal::Magnesium);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::anodic_indices::ANODIC_INDICES
    }

    /// The row of a metal; none if nobody has read or recalled one.
    ///
    /// ```
    /// use shankline::tables::galvanic::{AnodicIndex, Metal};
    /// assert!(AnodicIndex::of(Metal::Titanium).is_some());
    /// ```
    #[must_use]
    pub fn of(metal: Metal) -> Option<&'static Self> {
        Self::all().iter().find(|row| row.metal == metal)
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::galvanic::{AnodicIndex, Metal};
    /// assert_eq!(AnodicIndex::of(Metal::HotDipZinc).unwrap().cautions().iter().count(), 1);
    /// assert_eq!(AnodicIndex::of(Metal::Copper).unwrap().cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(self.recalled())
    }

    pub(crate) fn recalled(&self) -> Option<Caution> {
        Caution::from_memory("anodic index", self.provenance)
    }
}

/// How hard surroundings are on metals in contact.
///
/// Source: the guide that goes with lists of the anodic index, read on two pages: 0.15, 0.25 and 0.50 V. It
/// is a guide of the trade, not a clause of a standard.
///
/// ```
/// use shankline::tables::galvanic::Exposure;
/// use shankline::units::volts;
/// assert_eq!(Exposure::Harsh.permitted(), volts(0.15));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Exposure {
    /// Outdoors, high humidity, salt.
    Harsh,
    /// Stores and halls whose temperature and humidity nobody controls.
    Normal,
    /// Controlled temperature and humidity.
    Controlled,
    /// Dry for life: nothing corrodes in contact.
    Dry,
}

impl Exposure {
    /// The greatest difference of two indices it permits.
    ///
    /// ```
    /// use shankline::tables::galvanic::Exposure;
    /// assert!(Exposure::Normal.permitted() < Exposure::Controlled.permitted());
    /// ```
    #[must_use]
    pub const fn permitted(self) -> ElectricPotential {
        match self {
            Self::Harsh => volts(0.15),
            Self::Normal => volts(0.25),
            Self::Controlled => volts(0.50),
            // More than any two metals are apart.
            Self::Dry => volts(2.0),
        }
    }
}
