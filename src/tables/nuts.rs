//! Nuts: width across flats and corners, height, for inch and metric threads.

use alloc::{format, string::ToString};
use core::fmt;

use super::{generated, rows_of};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::source::{Basis, Provenance};
use crate::spread::Spread;
use crate::units::Length;

mod style;

pub use style::{Locking, NutStyle};

/// One nut: a style at a size.
///
/// Heights are overall: where a locking element or a flange stands above the wrenching part,
/// `thread_height_*` and `wrenching_height_min` give the rest.
///
/// Sources: per row; inch nuts mostly ASME B18.2.2 and B18.16.6, metric nuts by the standard in
/// the style's name.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let nut = Nut::find(NutStyle::InsertLockNe, &"3/4-10 UNC".parse()?)?;
/// assert_eq!(nut.height()?.max, inches(0.890));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Nut {
    /// The standard that fixes the dimensions.
    pub standard: &'static str,
    /// Style.
    pub style: NutStyle,
    /// Name of the size: `#10`, `3/8`, `M12`.
    pub size: &'static str,
    /// Nominal thread diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Thread pitch; none for inch nuts, which come in several series of one size.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub pitch: Option<Length>,
    /// Basic width across flats.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_flats_basic: Option<Length>,
    /// Greatest width across flats.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_flats_max: Option<Length>,
    /// Least width across flats.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_flats_min: Option<Length>,
    /// Greatest width across corners.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_corners_max: Option<Length>,
    /// Least width across corners.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width_across_corners_min: Option<Length>,
    /// Basic height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub height_basic: Option<Length>,
    /// Greatest overall height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub height_max: Option<Length>,
    /// Least overall height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub height_min: Option<Length>,
    /// Least height of the threaded part.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_height_min: Option<Length>,
    /// Least height a wrench can grip.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub wrenching_height_min: Option<Length>,
    /// Greatest flange diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub flange_diameter_max: Option<Length>,
    /// Least flange diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub flange_diameter_min: Option<Length>,
    /// Least diameter of the bearing face.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_diameter_min: Option<Length>,
    /// Greatest diameter of the countersink of the thread at the bearing face; of inch nuts by the rule of ASME B18.2.2,
    /// 0.030 in over the thread up to 3/8 in and 1.08 times it above.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub countersink_diameter_max: Option<Length>,
    /// Least diameter of the countersink of the thread at the bearing face, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub countersink_diameter_min: Option<Length>,
    /// Least flange thickness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub flange_thickness_min: Option<Length>,
    /// Greatest height of the part below the slots.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub unslotted_height_max: Option<Length>,
    /// Least height of the part below the slots.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub unslotted_height_min: Option<Length>,
    /// Greatest slot width.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub slot_width_max: Option<Length>,
    /// Least slot width.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub slot_width_min: Option<Length>,
    /// Thread series the nut is made in.
    pub thread_series: Option<&'static str>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl Nut {
    /// Every inch nut.
    ///
    /// ```
    /// assert_eq!(shankline::tables::nuts::Nut::all_inch().len(), 195);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::nuts_inch::NUTS_INCH
    }

    /// Every metric nut.
    ///
    /// ```
    /// assert_eq!(shankline::tables::nuts::Nut::all_metric().len(), 394);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::nuts_metric::NUTS_METRIC
    }

    /// Every nut of one style, by rising size.
    ///
    /// ```
    /// use shankline::tables::nuts::{Nut, NutStyle};
    /// assert_eq!(Nut::of_style(NutStyle::Iso7040).first().unwrap().size, "M3");
    /// ```
    #[must_use]
    pub fn of_style(style: NutStyle) -> &'static [Self] {
        let inch = rows_of(Self::all_inch(), &style, |nut| nut.style);
        if inch.is_empty() {
            rows_of(Self::all_metric(), &style, |nut| nut.style)
        } else {
            inch
        }
    }

    /// Overall height: minimum, basic (or the mean where none is printed) and maximum.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where the source prints only one limit.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = Nut::find(NutStyle::Iso4032, &"M20".parse()?)?;
    /// assert_eq!(nut.height()?.min, millimetres(16.9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn height(&self) -> Result<Spread<Length>, Error> {
        match (self.height_min, self.height_max) {
            (Some(min), Some(max)) => Ok(Spread {
                min,
                nominal: match self.height_basic {
                    // The basic height is an exact fraction, the limits are rounded: a basic height
                    // of 13/64 in stands beside a maximum of 0.203 in.
                    Some(basic) if basic > max => max,
                    Some(basic) if basic < min => min,
                    Some(basic) => basic,
                    None => (min + max) / 2.0,
                },
                max,
            }),
            _ => Err(Error::NoValue {
                quantity: "pair of height limits",
                subject: self.to_string(),
                reason: "its source prints only one of them",
            }),
        }
    }

    /// What the user of this nut must be told, if its dimensions were recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(Nut::find(NutStyle::Iso4032, &"M12".parse()?)?.cautions().iter().count(), 0);
    /// assert_eq!(Nut::find(NutStyle::Iso7042, &"M12".parse()?)?.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(self.recalled())
    }

    pub(crate) fn recalled(&self) -> Option<Caution> {
        Caution::from_memory("set of nut dimensions", self.provenance)
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        standard: "",
        style: NutStyle::Hex,
        size: "",
        nominal_diameter: crate::units::inches(0.0),
        pitch: None,
        width_across_flats_basic: None,
        width_across_flats_max: None,
        width_across_flats_min: None,
        width_across_corners_max: None,
        width_across_corners_min: None,
        height_basic: None,
        height_max: None,
        height_min: None,
        thread_height_min: None,
        wrenching_height_min: None,
        flange_diameter_max: None,
        flange_diameter_min: None,
        bearing_diameter_min: None,
        countersink_diameter_max: None,
        countersink_diameter_min: None,
        flange_thickness_min: None,
        unslotted_height_max: None,
        unslotted_height_min: None,
        slot_width_max: None,
        slot_width_min: None,
        thread_series: None,
        note: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

impl fmt::Display for Nut {
    /// `ASME B18.16.6 nylon-insert lock nut NE, 3/4`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = format!("{} {}, {}", self.standard, self.style.noun(), self.size);
        f.pad(&text)
    }
}
