//! Heads and bodies of every product, by one accessor.

use super::{Rows, ScrewProduct, ScrewSeries};
use crate::parts::Size;
use crate::parts::size::Origin;
use crate::source::{Basis, Provenance};
use crate::tables::bolts::{HexBolt, HexBoltStyle, StructuralBolt};
use crate::tables::hr_bolts::HrBolt;
use crate::tables::metric_screws::{FineHexScrew, MetricHexCapScrew};
use crate::tables::screws::{HexCapScrew, HexScrew};
use crate::tables::sockets::SocketHeadCapScrew;
use crate::units::{Angle, Length};

/// The width across corners of a hexagon with sharp ones, over that across flats: 2 / sqrt 3.
const SHARP: f64 = 1.154_700_538_379_251_7;

/// What shape a head has.
///
/// ```
/// use shankline::{parts::HeadForm, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let screws = ScrewSeries::new(ScrewProduct::StructuralBolt, &"3/4-10 UNC".parse()?)?;
/// assert_eq!(screws.head(inches(3.0)).form, HeadForm::Hexagon);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum HeadForm {
    /// A hexagon.
    Hexagon,
    /// A cylinder with a hexagon socket.
    Socket,
    /// A cone that sits in a countersink; what drives it is not known.
    Countersunk,
    /// Of a bolt of the caller's own: nobody says which.
    Other,
}

/// The head of a screw. Sizes that a shape does not have, and those that nobody has read, are [`Size::NOT_READ`].
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
/// let head = screws.head(inches(2.0));
/// assert_eq!(head.across_flats.nominal, Some(inches(0.75)));
/// assert_eq!(head.across_corners.max, Some(inches(0.866)));
/// assert!(!head.bearing_diameter.is_read());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Head {
    /// Its shape.
    pub form: HeadForm,
    /// Height, k; of a countersunk head from its top to where the cone ends.
    pub height: Size,
    /// Width across flats, s.
    pub across_flats: Size,
    /// Width across corners, e.
    pub across_corners: Size,
    /// Diameter of a round head, dk; of a countersunk one at its top.
    pub diameter: Size,
    /// Angle of the whole cone of a countersunk head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Angle>>")
    )]
    pub cone_angle: Option<Angle>,
    /// Diameter of the face that bears, dw.
    pub bearing_diameter: Size,
    /// Height of the washer face, c.
    pub washer_face_height: Size,
    /// Height over which the flats can be wrenched, kw.
    pub wrenching_height: Size,
    /// Width across the flats of the socket: the size of the key.
    pub socket_flats: Size,
    /// How deep the key engages, t.
    pub socket_depth: Size,
    /// What is left between the bottom of the socket and the bearing face, w.
    pub socket_wall: Size,
    /// Radius of the fillet under the head.
    pub fillet_radius: Size,
    /// Diameter at which the fillet meets the bearing face, da.
    pub fillet_diameter: Size,
}

impl Head {
    /// A head of which nothing is read.
    pub(crate) const fn unread(form: HeadForm) -> Self {
        Self {
            form,
            height: Size::NOT_READ,
            across_flats: Size::NOT_READ,
            across_corners: Size::NOT_READ,
            diameter: Size::NOT_READ,
            cone_angle: None,
            bearing_diameter: Size::NOT_READ,
            washer_face_height: Size::NOT_READ,
            wrenching_height: Size::NOT_READ,
            socket_flats: Size::NOT_READ,
            socket_depth: Size::NOT_READ,
            socket_wall: Size::NOT_READ,
            fillet_radius: Size::NOT_READ,
            fillet_diameter: Size::NOT_READ,
        }
    }

    /// How wide it can be, for whoever needs room for it: the greatest width across corners, or diameter. Where only the
    /// flats are known, that of a hexagon with sharp corners, which no head exceeds; not read where no greatest size is known.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse()?)?;
    /// let room = screws.head(millimetres(60.0)).greatest_width();
    /// assert!((room.max.unwrap() - millimetres(20.785)).abs() < millimetres(0.001)); // 18 mm across flats
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn greatest_width(&self) -> Size {
        greatest_width(&self.across_flats, &self.across_corners, &self.diameter)
    }

    fn hex_cap_screw(row: &HexCapScrew) -> Self {
        let of = |min, nominal, max| Size::tabled(min, nominal, max, row.provenance);
        let known = |basis| Provenance {
            basis,
            ..row.provenance
        };
        Self {
            height: of(
                Some(row.head_height_min),
                Some(row.head_height_basic),
                Some(row.head_height_max),
            ),
            across_flats: of(
                Some(row.width_across_flats_min),
                Some(row.width_across_flats_basic),
                Some(row.width_across_flats_max),
            ),
            across_corners: of(
                Some(row.width_across_corners_min),
                None,
                Some(row.width_across_corners_max),
            ),
            washer_face_height: Size::tabled(
                Some(row.washer_face_thickness_min),
                None,
                Some(row.washer_face_thickness_max),
                known(row.washer_face_basis),
            ),
            wrenching_height: of(row.wrenching_height_min, None, None),
            fillet_radius: Size::tabled(
                row.fillet_radius_min,
                None,
                row.fillet_radius_max,
                known(row.fillet_basis.unwrap_or(row.provenance.basis)),
            ),
            ..Self::unread(HeadForm::Hexagon)
        }
    }

    fn hex_screw(row: &HexScrew, known: impl Fn(Basis) -> Provenance) -> Self {
        let of = |min, nominal, max| Size::tabled(min, nominal, max, known(row.provenance.basis));
        Self {
            height: Size::tabled(
                Some(row.head_height_min),
                Some(row.head_height_nominal),
                Some(row.head_height_max),
                known(row.head_height_basis),
            ),
            across_flats: of(
                Some(row.width_across_flats_min),
                None,
                Some(row.width_across_flats_max),
            ),
            across_corners: of(Some(row.width_across_corners_min), None, None),
            bearing_diameter: of(Some(row.bearing_diameter_min), None, None),
            washer_face_height: of(
                Some(row.washer_face_thickness_min),
                None,
                Some(row.washer_face_thickness_max),
            ),
            fillet_radius: of(Some(row.fillet_radius_min), None, None),
            fillet_diameter: of(None, None, row.transition_diameter_max),
            ..Self::unread(HeadForm::Hexagon)
        }
    }

    fn hex_bolt(row: &HexBolt) -> Self {
        let of = |min, nominal, max| Size::tabled(min, nominal, max, row.provenance);
        Self {
            height: of(
                Some(row.head_height_min),
                row.head_height_basic,
                Some(row.head_height_max),
            ),
            across_flats: of(
                Some(row.width_across_flats_min),
                None,
                Some(row.width_across_flats_max),
            ),
            across_corners: of(
                Some(row.width_across_corners_min),
                None,
                Some(row.width_across_corners_max),
            ),
            fillet_radius: of(row.fillet_radius_min, None, row.fillet_radius_max),
            ..Self::unread(HeadForm::Hexagon)
        }
    }

    fn metric_cap_screw(row: &MetricHexCapScrew) -> Self {
        let of = |min, max| Size::tabled(Some(min), None, max, row.provenance);
        Self {
            height: of(row.head_height_min, Some(row.head_height_max)),
            across_flats: of(row.width_across_flats_min, Some(row.width_across_flats_max)),
            across_corners: of(row.width_across_corners_min, None),
            bearing_diameter: of(row.bearing_diameter_min, None),
            washer_face_height: of(
                row.washer_face_thickness_min,
                Some(row.washer_face_thickness_max),
            ),
            ..Self::unread(HeadForm::Hexagon)
        }
    }

    fn structural(row: &StructuralBolt) -> Self {
        let of = |min, nominal, max| Size::tabled(min, nominal, max, row.provenance);
        Self {
            height: of(
                Some(row.head_height_min),
                row.head_height_basic,
                Some(row.head_height_max),
            ),
            across_flats: of(
                Some(row.width_across_flats_min),
                row.width_across_flats_basic,
                Some(row.width_across_flats_max),
            ),
            across_corners: of(
                Some(row.width_across_corners_min),
                None,
                row.width_across_corners_max,
            ),
            bearing_diameter: match row.bearing_diameter_min {
                Some(least) => of(Some(least), None, None),
                None => inch_washer_face(row.width_across_flats_max),
            },
            washer_face_height: of(
                row.washer_face_thickness_min,
                None,
                row.washer_face_thickness_max,
            ),
            fillet_radius: of(Some(row.fillet_radius_min), None, row.fillet_radius_max),
            fillet_diameter: of(None, None, row.transition_diameter_max),
            ..Self::unread(HeadForm::Hexagon)
        }
    }

    fn hr(row: &HrBolt) -> Self {
        let of = |min, nominal, max| Size::tabled(Some(min), nominal, max, row.provenance);
        Self {
            height: of(
                row.head_height_min,
                Some(row.head_height_nominal),
                Some(row.head_height_max),
            ),
            across_flats: of(
                row.width_across_flats_min,
                None,
                Some(row.width_across_flats_max),
            ),
            across_corners: of(row.width_across_corners_min, None, None),
            bearing_diameter: of(row.bearing_diameter_min, None, None),
            washer_face_height: of(
                row.washer_face_thickness_min,
                None,
                Some(row.washer_face_thickness_max),
            ),
            fillet_radius: of(row.fillet_radius_min, None, None),
            fillet_diameter: Size::tabled(
                None,
                None,
                Some(row.transition_diameter_max),
                row.provenance,
            ),
            ..Self::unread(HeadForm::Hexagon)
        }
    }

    fn socket(row: &SocketHeadCapScrew) -> Self {
        let of = |min, nominal, max| Size::tabled(min, nominal, max, row.provenance);
        let plain = row.plain_head_source.zip(row.plain_head_basis);
        let plain = plain.map_or(row.provenance, |(source, basis)| Provenance {
            source,
            basis,
        });
        Self {
            height: of(row.head_height_min, None, row.head_height_max),
            diameter: Size::tabled(row.head_diameter_min, None, row.head_diameter_max, plain),
            bearing_diameter: of(row.bearing_diameter_min, None, None),
            socket_flats: of(None, row.key_size, None),
            socket_depth: of(row.key_engagement_min, None, None),
            socket_wall: of(row.wall_thickness_min, None, None),
            fillet_radius: of(row.fillet_radius_min, None, None),
            fillet_diameter: of(
                row.transition_diameter_min,
                None,
                row.transition_diameter_max,
            ),
            ..Self::unread(HeadForm::Socket)
        }
    }
}

/// The washer face of an inch structural bolt: as wide as its greatest flats, up to a tenth less (ASME B18.2.6, as
/// Machinery's Handbook, 31st ed., p. 1704 has it).
fn inch_washer_face(flats_max: Length) -> Size {
    Size {
        min: Some(0.9 * flats_max),
        nominal: None,
        max: Some(flats_max),
        origin: Origin::Follows("the greatest width across flats, less a tenth at most"),
    }
}

/// The greatest width of a head or nut.
pub(crate) fn greatest_width(flats: &Size, corners: &Size, diameter: &Size) -> Size {
    for own in [corners, diameter] {
        if own.max.is_some() {
            return Size {
                min: None,
                nominal: None,
                ..*own
            };
        }
    }
    match flats.max {
        Some(flats) => Size {
            max: Some(SHARP * flats),
            origin: Origin::Follows("sharp corners over the greatest width across flats"),
            ..Size::NOT_READ
        },
        None => Size::NOT_READ,
    }
}

impl ScrewSeries {
    /// How a size of a metric row is known: the rows are those of ISO 4014, and the heads and bodies of ISO 8765 were
    /// compared with them where its thread lengths were read.
    fn of_product(&self, row: &HexScrew, basis: Basis) -> Provenance {
        match FineHexScrew::find(&self.thread) {
            Ok(fine) if self.product == ScrewProduct::Iso8765 => fine.provenance,
            _ => Provenance {
                basis,
                ..row.provenance
            },
        }
    }

    /// The head that a screw of this product has at a nominal length. (Long metric screws may have another one than
    /// short ones.) This asks for no length that is made: of products whose lengths were not read the heads are known.
    ///
    /// Source: the row of the product. Of ISO 8765 that of ISO 4014: its own table has the same heads, cell by cell.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4762, &"M8".parse()?)?;
    /// let head = screws.head(millimetres(40.0));
    /// assert_eq!(head.diameter.max, Some(millimetres(13.0)));
    /// assert_eq!(head.height.max, Some(millimetres(8.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn head(&self, nominal: Length) -> Head {
        let unread = Head::unread(HeadForm::Hexagon);
        match self.rows {
            Rows::Inch { dimensions, .. } => Head::hex_cap_screw(dimensions),
            Rows::Metric { small, .. } => {
                let row = self.metric_row(nominal).unwrap_or(small);
                Head::hex_screw(row, |basis| self.of_product(row, basis))
            }
            Rows::Structural(bolt) => Head::structural(bolt),
            Rows::Hr(bolt) => Head::hr(bolt),
            Rows::Socket(screw) => Head::socket(screw),
            Rows::Unread(_) => match self.product {
                ScrewProduct::MetricHexCapScrew => {
                    MetricHexCapScrew::find(&self.thread).map_or(unread, Head::metric_cap_screw)
                }
                _ => self.hex_bolt().map_or(unread, Head::hex_bolt),
            },
        }
    }

    /// The diameter of the plain shank, ds, of a screw of this product at a nominal length. A screw that is threaded to
    /// the head has none; the size is that of its product all the same.
    ///
    /// Source: the row of the product; of ISO 8765 that of ISO 4014, which has the same bodies.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse()?)?;
    /// let body = screws.body_diameter(millimetres(60.0));
    /// assert_eq!((body.min, body.max), (Some(millimetres(11.73)), Some(millimetres(12.0))));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn body_diameter(&self, nominal: Length) -> Size {
        let between = |min, max, known| Size::tabled(min, None, Some(max), known);
        match self.rows {
            Rows::Inch {
                dimensions: row, ..
            } => between(
                Some(row.body_diameter_min),
                row.body_diameter_max,
                row.provenance,
            ),
            Rows::Metric { small, .. } => {
                let row = self.metric_row(nominal).unwrap_or(small);
                let known = self.of_product(row, row.body_diameter_basis);
                between(Some(row.body_diameter_min), row.body_diameter_max, known)
            }
            Rows::Structural(row) => between(
                Some(row.body_diameter_min),
                row.body_diameter_max,
                row.provenance,
            ),
            Rows::Hr(row) => between(
                Some(row.body_diameter_min),
                row.body_diameter_max,
                row.provenance,
            ),
            Rows::Socket(row) => between(
                Some(row.body_diameter_min),
                row.body_diameter_max,
                row.provenance,
            ),
            Rows::Unread(_) => match self.product {
                ScrewProduct::MetricHexCapScrew => {
                    MetricHexCapScrew::find(&self.thread).map_or(Size::NOT_READ, |row| {
                        between(
                            Some(row.body_diameter_min),
                            row.body_diameter_max,
                            row.provenance,
                        )
                    })
                }
                _ => self.hex_bolt().map_or(Size::NOT_READ, |row| {
                    between(row.body_diameter_min, row.body_diameter_max, row.provenance)
                }),
            },
        }
    }

    fn hex_bolt(&self) -> Option<&'static HexBolt> {
        let style = match self.product {
            ScrewProduct::HeavyHexBolt => HexBoltStyle::HeavyHex,
            _ => HexBoltStyle::Hex,
        };
        HexBolt::find(style, &self.thread).ok()
    }
}
