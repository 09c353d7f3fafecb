//! Socket head cap screws: heads, keys, thread lengths, body and grip gaging lengths.
//!
//! **The body of an inch socket screw is not computed here.** ASME B18.3 tabulates body and grip
//! gaging lengths, nobody has read that table for this crate, and as recalled several neighbouring
//! lengths share one grip gaging length: the thread simply gets longer. L - LT would then promise a
//! body that an in-between length does not have.
//!
//! ISO 4762 screws follow lg = l - b, ls = lg - 5 P in every cell that was read, but a shank is not
//! there as soon as ls is positive: M4 x 25 (1.5 mm by the rule) and three more are threaded to the
//! head. Every cell read fits "a shank only if ls is at least 0.5 d", which is an inference: of
//! M12 x 45 and 50, M16 x 55 and 60, M20 x 65 and 70, M24 x 80 read the standard first.

use alloc::format;
use core::fmt;

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::source::{Basis, Provenance, Source};
use crate::units::{Length, inches};

/// Dimensions of a socket head cap screw of one size: ASME B18.3 (1960 series) or ISO 4762.
///
/// ```
/// use shankline::{prelude::*, tables::sockets::SocketHeadCapScrew};
/// # fn main() -> Result<(), shankline::Error> {
/// let screw = SocketHeadCapScrew::find(&"3/8-16 UNC".parse()?)?;
/// assert_eq!(screw.key_size, Some(inches(0.3125)));
/// assert_eq!(SocketHeadCapScrew::find(&"M8".parse()?)?.key_size, Some(millimetres(6.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SocketHeadCapScrew {
    /// The standard that fixes the dimensions.
    pub standard: &'static str,
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Coarse pitch P, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub pitch: Option<Length>,
    /// Greatest body diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub body_diameter_max: Length,
    /// Least body diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub body_diameter_min: Length,
    /// Greatest head diameter; of a metric screw that of a plain head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_diameter_max: Option<Length>,
    /// Greatest diameter of a knurled head, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_diameter_knurled_max: Option<Length>,
    /// Least head diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_diameter_min: Option<Length>,
    /// Greatest head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_height_max: Option<Length>,
    /// Least head height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub head_height_min: Option<Length>,
    /// Nominal size of the hexagon key.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub key_size: Option<Length>,
    /// Least depth the key engages.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub key_engagement_min: Option<Length>,
    /// Greatest diameter of the transition (fillet) under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub transition_diameter_max: Option<Length>,
    /// Least diameter of the transition under the head, inch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub transition_diameter_min: Option<Length>,
    /// Least diameter of the bearing face, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_diameter_min: Option<Length>,
    /// Least fillet radius under the head, metric.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub fillet_radius_min: Option<Length>,
    /// Least thickness of the wall under the socket.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub wall_thickness_min: Option<Length>,
    /// Thread length LT (b), the same for every length. Of inch screws recalled, and no ground to
    /// compute the body from: see the [module](self).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_length: Length,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the greatest diameter of a plain metric head is known.
    pub plain_head_basis: Option<Basis>,
    /// Source of the greatest diameter of a plain metric head.
    pub plain_head_source: Option<&'static Source>,
    /// How the thread length is known.
    pub thread_length_basis: Basis,
    /// Source of the thread length.
    pub thread_length_source: &'static Source,
    /// Source of the row.
    pub provenance: Provenance,
}

impl SocketHeadCapScrew {
    /// Every inch screw.
    ///
    /// ```
    /// assert_eq!(shankline::tables::sockets::SocketHeadCapScrew::all_inch().len(), 18);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::socket_head_cap_screws_inch::SOCKET_HEAD_CAP_SCREWS_INCH
    }

    /// Every metric screw.
    ///
    /// ```
    /// assert_eq!(shankline::tables::sockets::SocketHeadCapScrew::all_metric().len(), 20);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::socket_head_cap_screws_metric::SOCKET_HEAD_CAP_SCREWS_METRIC
    }

    /// What the user must be told of values that were recalled, not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::sockets::SocketHeadCapScrew};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let inch = SocketHeadCapScrew::find(&"1/2-13 UNC".parse()?)?; // its thread length
    /// assert_eq!(inch.cautions().iter().count(), 1);
    /// assert_eq!(SocketHeadCapScrew::find(&"M12".parse()?)?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let thread_length = super::known(self.thread_length_source, self.thread_length_basis);
        let plain_head = self
            .plain_head_source
            .zip(self.plain_head_basis)
            .map(|(source, basis)| super::known(source, basis));
        Cautions::default()
            .with(Caution::from_memory(
                "set of socket screw dimensions",
                self.provenance,
            ))
            .with(Caution::from_memory(
                "thread length of the socket screw",
                thread_length,
            ))
            .with(plain_head.and_then(|known| {
                Caution::from_memory("greatest diameter of the plain socket head", known)
            }))
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        standard: "",
        size: "",
        nominal_diameter: inches(0.0),
        pitch: None,
        body_diameter_max: inches(0.0),
        body_diameter_min: inches(0.0),
        head_diameter_max: None,
        head_diameter_knurled_max: None,
        head_diameter_min: None,
        head_height_max: None,
        head_height_min: None,
        key_size: None,
        key_engagement_min: None,
        transition_diameter_max: None,
        transition_diameter_min: None,
        bearing_diameter_min: None,
        fillet_radius_min: None,
        wall_thickness_min: None,
        thread_length: inches(0.0),
        note: None,
        plain_head_basis: None,
        plain_head_source: None,
        thread_length_basis: Basis::Memory,
        thread_length_source: generated::sources::SOURCES[0],
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

impl fmt::Display for SocketHeadCapScrew {
    /// `ISO 4762 socket head cap screw M8`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = format!("{} socket head cap screw {}", self.standard, self.size);
        f.pad(&text)
    }
}

/// Body and grip gaging length of an ISO 4762 screw of one size and length, as read.
///
/// ```
/// use shankline::{prelude::*, tables::sockets::SocketHeadGrip};
/// # fn main() -> Result<(), shankline::Error> {
/// let read = SocketHeadGrip::find(&"M6".parse()?, millimetres(35.0))?;
/// assert_eq!(read.body_length_min, Some(millimetres(6.0)));
/// assert!(SocketHeadGrip::find(&"M6".parse()?, millimetres(30.0))?.is_threaded_to_the_head());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SocketHeadGrip {
    /// Name of the size.
    pub size: &'static str,
    /// Nominal diameter d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Nominal length l.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_length: Length,
    /// Least body length ls; none if the screw is threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub body_length_min: Option<Length>,
    /// Greatest grip gaging length lg; none if the screw is threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub grip_gaging_length_max: Option<Length>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl SocketHeadGrip {
    /// Every length that was read, by rising size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::sockets::SocketHeadGrip::all().len(), 10);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::socket_head_grips_metric::SOCKET_HEAD_GRIPS_METRIC
    }

    /// Whether the screw has no shank: its thread runs to within 3 P of the head.
    ///
    /// ```
    /// use shankline::tables::sockets::SocketHeadGrip;
    /// let rows = SocketHeadGrip::all().iter();
    /// assert_eq!(rows.filter(|row| row.is_threaded_to_the_head()).count(), 4);
    /// ```
    #[must_use]
    pub const fn is_threaded_to_the_head(&self) -> bool {
        self.body_length_min.is_none()
    }
}
