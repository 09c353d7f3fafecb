//! Washers: plain, hardened structural, aircraft flat and helical spring lock washers.

use alloc::{format, string::ToString};
use core::{fmt, str::FromStr};

use super::{generated, nanometres, rows_of};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::{Basis, Provenance};
use crate::spread::Spread;
use crate::units::Length;

/// Styles of washer.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(Washer::of_style(WasherStyle::F436).len(), 19);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum WasherStyle {
    /// Plain washer, type A, sizes without narrow and wide series, ASME B18.21.1.
    TypeASingle,
    /// Plain washer, type A narrow, ASME B18.21.1.
    TypeANarrow,
    /// Plain washer, type A wide, ASME B18.21.1.
    TypeAWide,
    /// Plain washer, type B narrow, ASME B18.21.1.
    TypeBNarrow,
    /// Plain washer, type B regular, ASME B18.21.1.
    TypeBRegular,
    /// Plain washer, type B wide, ASME B18.21.1.
    TypeBWide,
    /// Hardened circular washer, ASTM F436.
    F436,
    /// Aircraft flat washer AN960 / NAS1149, full thickness.
    AircraftRegular,
    /// Aircraft flat washer AN960 / NAS1149, light.
    AircraftLight,
    /// Helical spring lock washer, regular, ASME B18.21.1.
    SpringLockRegular,
    /// Helical spring lock washer, heavy, ASME B18.21.1.
    SpringLockHeavy,
    /// Helical spring lock washer, extra duty, ASME B18.21.1.
    SpringLockExtraDuty,
    /// Helical spring lock washer, high collar, ASME B18.21.1.
    SpringLockHighCollar,
    /// ISO 7089 plain washer, normal series.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7089"))]
    Iso7089,
    /// ISO 7090 plain washer, normal series, chamfered.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7090"))]
    Iso7090,
    /// DIN 125 plain washer, form A. Only nominal dimensions are known.
    #[cfg_attr(feature = "serde", serde(rename = "din_125"))]
    Din125,
    /// ISO 7091 plain washer, product grade C.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7091"))]
    Iso7091,
    /// ISO 7092 plain washer, small series.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7092"))]
    Iso7092,
    /// ISO 7093-1 plain washer, large series.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7093"))]
    Iso7093,
    /// ISO 7094 plain washer, extra large series.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7094"))]
    Iso7094,
    /// EN 14399-6 chamfered washer for preloaded structural bolts.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_6"))]
    En14399_6,
}

/// One washer: a style at a bolt size.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let washer = Washer::find(WasherStyle::TypeANarrow, &"3/4-10 UNC".parse()?)?;
/// let thickness = washer.thickness()?;
/// assert_eq!((thickness.min, thickness.max), (inches(0.108), inches(0.160)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Washer {
    /// The standard that fixes the dimensions.
    pub standard: &'static str,
    /// Style.
    pub style: WasherStyle,
    /// Name of the bolt size: `#10`, `3/8`, `M12`.
    pub size: &'static str,
    /// Nominal diameter of the bolt.
    pub nominal_diameter: Length,
    /// Nominal inside diameter.
    pub inside_diameter_nominal: Option<Length>,
    /// Greatest inside diameter.
    pub inside_diameter_max: Option<Length>,
    /// Least inside diameter.
    pub inside_diameter_min: Option<Length>,
    /// Nominal outside diameter.
    pub outside_diameter_nominal: Option<Length>,
    /// Greatest outside diameter.
    pub outside_diameter_max: Option<Length>,
    /// Least outside diameter.
    pub outside_diameter_min: Option<Length>,
    /// Nominal thickness.
    pub thickness_nominal: Option<Length>,
    /// Greatest thickness.
    pub thickness_max: Option<Length>,
    /// Least thickness.
    pub thickness_min: Option<Length>,
    /// Least width of the section of a spring lock washer.
    pub section_width_min: Option<Length>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the limits are known; the row's basis is that of the nominal dimensions.
    pub limits_basis: Option<Basis>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl Washer {
    /// Every washer for inch bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::washers::Washer::all_inch().len(), 246);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::washers_inch::WASHERS_INCH
    }

    /// Every washer for metric bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::washers::Washer::all_metric().len(), 132);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::washers_metric::WASHERS_METRIC
    }

    /// Every washer of one style, by rising size.
    ///
    /// ```
    /// use shankline::tables::washers::{Washer, WasherStyle};
    /// assert_eq!(Washer::of_style(WasherStyle::Iso7089).len(), 28);
    /// ```
    #[must_use]
    pub fn of_style(style: WasherStyle) -> &'static [Self] {
        let inch = rows_of(Self::all_inch(), &style, |washer| washer.style);
        if inch.is_empty() {
            rows_of(Self::all_metric(), &style, |washer| washer.style)
        } else {
            inch
        }
    }

    /// The washer of a style by the name of its size, in upper or lower case.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the style has no such size.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(Washer::of_size(WasherStyle::F436, "3/4").is_ok());
    /// assert!(Washer::of_size(WasherStyle::F436, "M20").is_err());
    /// ```
    pub fn of_size(style: WasherStyle, size: &str) -> Result<&'static Self, Error> {
        let wanted = size.trim();
        let rows = Self::of_style(style);
        rows.iter()
            .find(|washer| washer.size.eq_ignore_ascii_case(wanted))
            .ok_or_else(|| Error::NotInTable {
                table: "the washer tables",
                wanted: format!("{} of size \"{wanted}\"", style.label()),
                available: match (rows.first(), rows.last()) {
                    (Some(first), Some(last)) => {
                        format!("its sizes run from {} to {}", first.size, last.size)
                    }
                    _ => "it has no rows".into(),
                },
            })
    }

    /// The smallest washer of a style whose hole passes a bolt of this diameter, whatever thread the
    /// washer is made for: a metric bolt through an inch washer, a body larger than its thread.
    ///
    /// Counted is the least inside diameter; washers of which it is not known are passed over.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if no washer of the style is so large, or for a diameter that is not
    /// positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let washer = Washer::passing(WasherStyle::TypeANarrow, millimetres(16.0))?;
    /// assert_eq!(washer.size, "5/8");
    /// # Ok(())
    /// # }
    /// ```
    pub fn passing(style: WasherStyle, diameter: Length) -> Result<&'static Self, Error> {
        let wanted = nanometres(positive("bolt diameter", diameter)?);
        let holes = || {
            let rows = Self::of_style(style).iter();
            rows.filter_map(|washer| Some((washer, washer.inside_diameter_min?)))
        };
        let fits = holes().filter(|(_, hole)| nanometres(*hole) >= wanted);
        let smallest = fits.min_by_key(|(_, hole)| nanometres(*hole));
        smallest.map(|(washer, _)| washer).ok_or_else(|| {
            let largest = holes().fold(Length::default(), |most, (_, hole)| most.max(hole));
            let quantity = format!("bolt diameter for {}", style.label());
            out_of_range(quantity, diameter, Allowed::AtMost(largest.into()))
        })
    }

    /// Thickness: minimum, nominal (or the mean where none is printed) and maximum.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where the limits are not known.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let washer = Washer::find(WasherStyle::Iso7089, &"M20".parse()?)?;
    /// assert_eq!(washer.thickness()?.max, millimetres(3.3));
    /// # Ok(())
    /// # }
    /// ```
    pub fn thickness(&self) -> Result<Spread<Length>, Error> {
        match (self.thickness_min, self.thickness_max) {
            (Some(min), Some(max)) => Ok(Spread {
                min,
                nominal: self.thickness_nominal.unwrap_or((min + max) / 2.0),
                max,
            }),
            _ => Err(Error::NoValue {
                quantity: "pair of thickness limits",
                subject: self.to_string(),
                reason: "its source prints none that has been read",
            }),
        }
    }

    /// What the user of this washer must be told, if its dimensions or their limits were recalled,
    /// not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(Washer::find(WasherStyle::F436, &"2-4.5 UNC".parse()?)?.cautions().iter().next().is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(self.recalled())
    }

    pub(crate) fn recalled(&self) -> Option<Caution> {
        let limits = Provenance {
            basis: self.limits_basis.unwrap_or(self.provenance.basis),
            ..self.provenance
        };
        Caution::from_memory("set of washer dimensions", self.provenance)
            .or_else(|| Caution::from_memory("thickness range of the washer", limits))
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        standard: "",
        style: WasherStyle::F436,
        size: "",
        nominal_diameter: crate::units::inches(0.0),
        inside_diameter_nominal: None,
        inside_diameter_max: None,
        inside_diameter_min: None,
        outside_diameter_nominal: None,
        outside_diameter_max: None,
        outside_diameter_min: None,
        thickness_nominal: None,
        thickness_max: None,
        thickness_min: None,
        section_width_min: None,
        note: None,
        limits_basis: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

/// A washer is named by its style and size; the rest is in the tables.
#[cfg(feature = "serde")]
impl serde::Serialize for Washer {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut named = serializer.serialize_struct("Washer", 2)?;
        named.serialize_field("style", &self.style)?;
        named.serialize_field("size", self.size)?;
        named.end()
    }
}

impl WasherStyle {
    /// What the style is called where its standard stands beside it.
    const fn noun(self) -> &'static str {
        match self {
            Self::TypeASingle => "plain washer, type A",
            Self::TypeANarrow => "plain washer, type A narrow",
            Self::TypeAWide => "plain washer, type A wide",
            Self::TypeBNarrow => "plain washer, type B narrow",
            Self::TypeBRegular => "plain washer, type B regular",
            Self::TypeBWide => "plain washer, type B wide",
            Self::F436 => "hardened washer",
            Self::AircraftRegular => "flat washer",
            Self::AircraftLight => "light flat washer",
            Self::SpringLockRegular
            | Self::SpringLockHeavy
            | Self::SpringLockExtraDuty
            | Self::SpringLockHighCollar => "helical spring lock washer",
            _ => "plain washer",
        }
    }
}

/// Code and label of every member.
const NAMES: [Named<WasherStyle>; 21] = [
    (
        WasherStyle::TypeASingle,
        "type_a_single",
        "plain washer, type A ASME B18.21.1",
    ),
    (
        WasherStyle::TypeANarrow,
        "type_a_narrow",
        "plain washer, type A narrow ASME B18.21.1",
    ),
    (
        WasherStyle::TypeAWide,
        "type_a_wide",
        "plain washer, type A wide ASME B18.21.1",
    ),
    (
        WasherStyle::TypeBNarrow,
        "type_b_narrow",
        "plain washer, type B narrow ASME B18.21.1",
    ),
    (
        WasherStyle::TypeBRegular,
        "type_b_regular",
        "plain washer, type B regular ASME B18.21.1",
    ),
    (
        WasherStyle::TypeBWide,
        "type_b_wide",
        "plain washer, type B wide ASME B18.21.1",
    ),
    (WasherStyle::F436, "f436", "hardened washer ASTM F436"),
    (
        WasherStyle::AircraftRegular,
        "aircraft_regular",
        "flat washer AN960, NAS1149",
    ),
    (
        WasherStyle::AircraftLight,
        "aircraft_light",
        "light flat washer AN960, NAS1149",
    ),
    (
        WasherStyle::SpringLockRegular,
        "spring_lock_regular",
        "helical spring lock washer, regular ASME B18.21.1",
    ),
    (
        WasherStyle::SpringLockHeavy,
        "spring_lock_heavy",
        "helical spring lock washer, heavy ASME B18.21.1",
    ),
    (
        WasherStyle::SpringLockExtraDuty,
        "spring_lock_extra_duty",
        "helical spring lock washer, extra duty ASME B18.21.1",
    ),
    (
        WasherStyle::SpringLockHighCollar,
        "spring_lock_high_collar",
        "helical spring lock washer, high collar ASME B18.21.1",
    ),
    (WasherStyle::Iso7089, "iso_7089", "plain washer ISO 7089"),
    (WasherStyle::Iso7090, "iso_7090", "plain washer ISO 7090"),
    (WasherStyle::Din125, "din_125", "plain washer DIN 125"),
    (WasherStyle::Iso7091, "iso_7091", "plain washer ISO 7091"),
    (WasherStyle::Iso7092, "iso_7092", "plain washer ISO 7092"),
    (WasherStyle::Iso7093, "iso_7093", "plain washer ISO 7093"),
    (WasherStyle::Iso7094, "iso_7094", "plain washer ISO 7094"),
    (
        WasherStyle::En14399_6,
        "en_14399_6",
        "plain washer EN 14399-6",
    ),
];

impl Key for WasherStyle {
    const FAMILY: &'static str = "washer style";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for WasherStyle {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for WasherStyle {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

impl fmt::Display for Washer {
    /// `ASME B18.21.1 plain washer, type A narrow, 3/4`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = format!("{} {}, {}", self.standard, self.style.noun(), self.size);
        f.pad(&text)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Of some inch washers the dimensions were read and the limits were not; no metric washer that was read has
    /// recalled limits.
    #[test]
    fn recalled_thickness_limits_warn() {
        let half_read = |washer: &&Washer| {
            washer.provenance.basis != Basis::Memory && washer.limits_basis == Some(Basis::Memory)
        };
        let mut inch = Washer::all_inch().iter().filter(half_read);
        assert!(inch.clone().count() > 0);
        assert!(inch.all(|washer| washer.cautions().iter().count() == 1));
        assert_eq!(Washer::all_metric().iter().find(half_read), None);
    }
}
