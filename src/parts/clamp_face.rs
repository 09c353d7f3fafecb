//! The face with which a head, nut or washer clamps: least outer diameter, height, widths.

use alloc::string::ToString;

use super::{Nut, NutStyle, ScrewProduct, ScrewSeries, Washer};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::source::Provenance;
use crate::tables::bolts::{HexBolt, HexBoltStyle, StructuralBolt};
use crate::tables::hr_bolts::HrBolt;
use crate::tables::methods;
use crate::tables::metric_screws::MetricHexCapScrew;
use crate::tables::nanometres;
use crate::tables::screws::{HexCapScrew, HexScrew, ProductGrade};
use crate::tables::sockets::SocketHeadCapScrew;
use crate::thread::Thread;
use crate::units::{Length, millimetres};

/// Share of the width across flats that the washer face of an inch head keeps at least. ASME B18.2.1 and B18.2.6 give the
/// face the greatest width across flats less 10 % (recalled); the least width is taken here, and for nuts too of which no
/// rule was read.
const INCH_FACE: f64 = 0.9;
/// Of hex and heavy hex nuts of ASME B18.2.2, by its notes.
const INCH_NUT_FACE: f64 = 0.95;
/// ISO 4759-1 (recalled; it gives every face that the table of ISO 4014 has): the least width across flats less the
/// tolerance IT16 up to a width of 21 mm, 0.95 of it over that.
const METRIC_FACE: f64 = 0.95;
const METRIC_FACE_OVER: Length = millimetres(21.0);

/// How the outer diameter of a face is known.
///
/// ```
/// use shankline::parts::{ClampFace, FaceRule, ScrewProduct};
/// # fn main() -> Result<(), shankline::Error> {
/// let cap = ClampFace::of_screw(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
/// assert_eq!(cap.rule, FaceRule::InchFlats);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum FaceRule {
    /// The table has the least diameter of the face.
    Tabled,
    /// 0.9 of the least width across flats, or that width less IT16 if it is less, inch heads and the inch nuts without
    /// a rule that was read; recalled.
    InchFlats,
    /// 0.95 of the least width across flats, hex and heavy hex nuts of ASME B18.2.2: the least that its notes allow.
    InchNutFlats,
    /// The least width across flats less IT16 up to 21 mm, 0.95 of it over that, metric; recalled.
    MetricFlats,
    /// 0.9 of the least diameter of a socket head, of which only the diameter is tabled. Metric heads keep 0.94 at least.
    SocketHead,
    /// That of the bolt head of EN 14399-4, for the nuts of it and of EN 14399-3: all have the same widths (recalled).
    OfEn14399_4,
    /// The caller states the diameter.
    Stated,
}

/// The bearing face of a head or a nut.
///
/// ```
/// use shankline::parts::{ClampFace, FaceRule, ScrewProduct};
/// use shankline::units::millimetres;
/// # fn main() -> Result<(), shankline::Error> {
/// let head = ClampFace::of_screw(ScrewProduct::Iso4014, &"M12".parse()?)?;
/// assert_eq!((head.outer_min, head.rule), (millimetres(16.63), FaceRule::Tabled));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct ClampFace {
    /// Least outer diameter dw of the face.
    pub outer_min: Length,
    /// How it is known.
    pub rule: FaceRule,
    /// Greatest diameter da within which it need not bear: of the transition under a head, of the countersink of a nut.
    pub inner_max: Option<Length>,
    /// Least width across flats; none of a socket head.
    pub across_flats_min: Option<Length>,
    /// Least width across corners.
    pub across_corners_min: Option<Length>,
    /// Least diameter of a socket head.
    pub head_diameter_min: Option<Length>,
    /// Least flange diameter.
    pub flange_diameter_min: Option<Length>,
    /// Least height of the head or nut.
    pub height_min: Option<Length>,
    /// Source of the row; none of a face that the caller states.
    pub provenance: Option<Provenance>,
}

impl ClampFace {
    /// A face that the caller states. Corners are not nearer to each other than flats.
    pub(crate) const fn stated(outer_min: Length, across_flats_min: Option<Length>) -> Self {
        Self {
            outer_min,
            rule: FaceRule::Stated,
            inner_max: None,
            across_flats_min,
            across_corners_min: across_flats_min,
            head_diameter_min: None,
            flange_diameter_min: None,
            height_min: None,
            provenance: None,
        }
    }

    /// The face under the head of a screw of any length: of two product grades the smaller face counts.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the product does not come with the thread; [`Error::NoValue`] if of a socket
    /// head cap screw only the body was read.
    ///
    /// ```
    /// use shankline::parts::{ClampFace, ScrewProduct};
    /// use shankline::units::millimetres;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let socket = ClampFace::of_screw(ScrewProduct::Iso4762, &"M12".parse()?)?;
    /// assert_eq!(socket.outer_min, millimetres(17.23));
    /// assert!(ClampFace::of_screw(ScrewProduct::Iso4762, &"M12x1.25".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_screw(product: ScrewProduct, thread: &Thread) -> Result<Self, Error> {
        // It knows which threads a product is made with.
        ScrewSeries::new(product, thread)?;
        let diameter = thread.nominal_diameter();
        let missing = || Error::NotInTable {
            table: "the tables of heads",
            wanted: alloc::format!("{product} {thread}"),
            available: "the product is not made with that thread".into(),
        };
        match product {
            ScrewProduct::Own => Err(missing()),
            ScrewProduct::HexCapScrew => {
                let row = HexCapScrew::get(diameter).ok_or_else(missing)?;
                Ok(Self::of_inch_flats(
                    row.width_across_flats_min,
                    row.width_across_corners_min,
                    row.head_height_min,
                    row.provenance,
                ))
            }
            ScrewProduct::HexBolt | ScrewProduct::HeavyHexBolt => {
                let style = match product {
                    ScrewProduct::HexBolt => HexBoltStyle::Hex,
                    _ => HexBoltStyle::HeavyHex,
                };
                let row = HexBolt::find(style, thread)?;
                Ok(Self::of_inch_flats(
                    row.width_across_flats_min,
                    row.width_across_corners_min,
                    row.head_height_min,
                    row.provenance,
                ))
            }
            ScrewProduct::Iso4014 | ScrewProduct::Iso4017 | ScrewProduct::Iso8765 => {
                let faces = [ProductGrade::A, ProductGrade::B]
                    .into_iter()
                    .filter_map(|grade| HexScrew::get(diameter, grade))
                    .map(Self::of_hex_screw);
                let smaller = |a: Self, b: Self| if b.outer_min < a.outer_min { b } else { a };
                faces.reduce(smaller).ok_or_else(missing)
            }
            ScrewProduct::MetricHexCapScrew => {
                let row = MetricHexCapScrew::find(thread)?;
                Ok(Self {
                    across_flats_min: Some(row.width_across_flats_min),
                    across_corners_min: Some(row.width_across_corners_min),
                    height_min: Some(row.head_height_min),
                    ..Self::tabled(row.bearing_diameter_min, row.provenance)
                })
            }
            ScrewProduct::En14399_3 => Ok(Self::of_hr(HrBolt::find(thread)?)),
            ScrewProduct::StructuralBolt | ScrewProduct::En14399_4 => {
                Ok(Self::of_structural(StructuralBolt::find(thread)?))
            }
            ScrewProduct::SocketHeadCapScrew | ScrewProduct::Iso4762 => {
                Self::of_socket(SocketHeadCapScrew::find(thread)?)
            }
        }
    }

    fn of_structural(row: &StructuralBolt) -> Self {
        let face = Self::of_inch_flats(
            row.width_across_flats_min,
            row.width_across_corners_min,
            row.head_height_min,
            row.provenance,
        );
        let Some(outer_min) = row.bearing_diameter_min else {
            return face;
        };
        Self {
            outer_min,
            rule: FaceRule::Tabled,
            inner_max: row.transition_diameter_max,
            ..face
        }
    }

    fn of_hr(row: &HrBolt) -> Self {
        Self {
            inner_max: Some(row.transition_diameter_max),
            across_flats_min: Some(row.width_across_flats_min),
            across_corners_min: Some(row.width_across_corners_min),
            height_min: Some(row.head_height_min),
            ..Self::tabled(row.bearing_diameter_min, row.provenance)
        }
    }

    fn of_socket(row: &SocketHeadCapScrew) -> Result<Self, Error> {
        let own = row.bearing_diameter_min.map(|dw| (dw, FaceRule::Tabled));
        let of_head = row
            .head_diameter_min
            .map(|dk| (0.9 * dk, FaceRule::SocketHead));
        let (outer_min, rule) = own.or(of_head).ok_or_else(|| Error::NoValue {
            quantity: "least diameter of the bearing face",
            subject: alloc::format!("{} socket head cap screw {}", row.standard, row.size),
            reason: "its row has neither the face nor the least head diameter",
        })?;
        Ok(Self {
            rule,
            inner_max: row.transition_diameter_max,
            head_diameter_min: row.head_diameter_min,
            height_min: row.head_height_min,
            ..Self::tabled(outer_min, row.provenance)
        })
    }

    /// The face of a nut.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where the row has neither the face nor the least width across flats: nuts of
    /// DIN 985, and the all-metal lock nuts of which only the basic width was read.
    ///
    /// ```
    /// use shankline::parts::ClampFace;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = ClampFace::of_nut(Nut::find(NutStyle::Iso4032, &"M12".parse()?)?)?;
    /// assert_eq!(nut.outer_min, millimetres(16.6));
    /// let hole = ClampFace::of_nut(Nut::find(NutStyle::Din985, &"M12".parse()?)?);
    /// assert!(hole.unwrap_err().to_string().contains("width across flats"));
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_nut(nut: &Nut) -> Result<Self, Error> {
        if matches!(nut.style, NutStyle::En14399_3 | NutStyle::En14399_4) {
            return Self::of_hv_nut(nut);
        }
        let face = match (nut.bearing_diameter_min, nut.width_across_flats_min) {
            (Some(outer), _) => Self::tabled(outer, nut.provenance),
            (None, Some(flats)) if matches!(nut.style, NutStyle::Hex | NutStyle::HeavyHex) => {
                Self {
                    rule: FaceRule::InchNutFlats,
                    ..Self::tabled(INCH_NUT_FACE * flats, nut.provenance)
                }
            }
            (None, Some(flats)) if nut.pitch.is_none() => Self {
                rule: FaceRule::InchFlats,
                ..Self::tabled(inch_face(flats), nut.provenance)
            },
            (None, Some(flats)) => Self {
                rule: FaceRule::MetricFlats,
                ..Self::tabled(
                    metric_face(nut.width_across_flats_max.unwrap_or(flats), flats),
                    nut.provenance,
                )
            },
            (None, None) => {
                return Err(Error::NoValue {
                    quantity: "least diameter of the bearing face",
                    subject: nut.to_string(),
                    reason: "its row has neither the face nor the least width across flats",
                });
            }
        };
        Ok(Self {
            inner_max: nut.countersink_diameter_max,
            across_flats_min: nut.width_across_flats_min,
            across_corners_min: nut.width_across_corners_min,
            flange_diameter_min: nut.flange_diameter_min,
            height_min: nut.height_min,
            ..face
        })
    }

    /// The nuts of EN 14399-3 and -4, of which only the heights were read, have the widths of the bolts' heads.
    fn of_hv_nut(nut: &Nut) -> Result<Self, Error> {
        let mut rows = StructuralBolt::all_metric().iter();
        let row =
            rows.find(|row| nanometres(row.nominal_diameter) == nanometres(nut.nominal_diameter));
        let face = row.and_then(|row| Some((row, row.bearing_diameter_min?)));
        let (row, outer_min) = face.ok_or_else(|| Error::NoValue {
            quantity: "least diameter of the bearing face",
            subject: nut.to_string(),
            reason: "no bolt of EN 14399-4 has that size",
        })?;
        Ok(Self {
            rule: FaceRule::OfEn14399_4,
            across_flats_min: Some(row.width_across_flats_min),
            across_corners_min: Some(row.width_across_corners_min),
            height_min: nut.height_min,
            ..Self::tabled(outer_min, nut.provenance)
        })
    }

    /// Mean of the least widths across flats and corners, dm of EN 1993-1-8 Table 3.4; of a socket head its least
    /// diameter. None where the row has no corners.
    ///
    /// EN 1993-1-8 wants the smaller of head and nut. That it means nominal or least widths was not read: the least
    /// are the safe ones.
    ///
    /// ```
    /// use shankline::parts::{ClampFace, ScrewProduct};
    /// use shankline::units::millimetres;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let head = ClampFace::of_screw(ScrewProduct::En14399_4, &"M20".parse()?)?;
    /// // (31.00 + 35.03) / 2
    /// assert!((head.mean_width_min().unwrap() - millimetres(33.015)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn mean_width_min(&self) -> Option<Length> {
        match (self.across_flats_min, self.across_corners_min) {
            (Some(flats), Some(corners)) => Some((flats + corners) / 2.0),
            _ => self.head_diameter_min,
        }
    }

    /// What the user of this face must be told: the diameter follows from a recalled rule.
    ///
    /// ```
    /// use shankline::parts::{ClampFace, ScrewProduct};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let cap = ClampFace::of_screw(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
    /// assert_eq!(cap.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let method = match self.rule {
            FaceRule::Tabled | FaceRule::Stated => None,
            FaceRule::InchFlats => {
                Some(methods::THE_WASHER_FACES_OF_ASME_B18_2_1_AND_B18_2_6_AND_OF_OTHER_INCH_NUTS)
            }
            FaceRule::InchNutFlats => {
                Some(methods::THE_BEARING_FACES_OF_ASME_B18_2_2_HEX_AND_HEAVY_HEX_NUTS)
            }
            FaceRule::MetricFlats => Some(methods::THE_BEARING_FACES_OF_ISO_4759_1),
            FaceRule::SocketHead => Some(methods::THE_BEARING_FACE_OF_ASME_B18_3_SOCKET_HEADS),
            FaceRule::OfEn14399_4 => {
                Some(methods::THE_WIDTHS_OF_EN_14399_3_AND_OF_THE_NUTS_OF_EN_14399_4)
            }
        };
        Cautions::default()
            .with(method.and_then(Caution::of_method))
            .with(self.provenance.and_then(|provenance| {
                Caution::from_memory("set of head or nut dimensions", provenance)
            }))
    }

    fn tabled(outer_min: Length, provenance: Provenance) -> Self {
        Self {
            outer_min,
            rule: FaceRule::Tabled,
            inner_max: None,
            across_flats_min: None,
            across_corners_min: None,
            head_diameter_min: None,
            flange_diameter_min: None,
            height_min: None,
            provenance: Some(provenance),
        }
    }

    fn of_hex_screw(row: &HexScrew) -> Self {
        Self {
            inner_max: row.transition_diameter_max,
            across_flats_min: Some(row.width_across_flats_min),
            across_corners_min: Some(row.width_across_corners_min),
            height_min: Some(row.head_height_min),
            ..Self::tabled(row.bearing_diameter_min, row.provenance)
        }
    }

    fn of_inch_flats(
        flats: Length,
        corners: Length,
        height: Length,
        provenance: Provenance,
    ) -> Self {
        Self {
            rule: FaceRule::InchFlats,
            across_flats_min: Some(flats),
            across_corners_min: Some(corners),
            height_min: Some(height),
            ..Self::tabled(inch_face(flats), provenance)
        }
    }
}

/// The rule for inch heads and nuts; of small ones the metric rule takes more off, and counts.
fn inch_face(flats_min: Length) -> Length {
    (INCH_FACE * flats_min).min(flats_min - it_16(flats_min))
}

/// The rule of ISO 4759-1 for the face of a hexagon with a greatest (nominal) and a least width across flats.
fn metric_face(flats_max: Length, flats_min: Length) -> Length {
    if flats_max > METRIC_FACE_OVER {
        METRIC_FACE * flats_min
    } else {
        flats_min - it_16(flats_max)
    }
}

/// Tolerance IT16 of a length up to 30 mm (ISO 286-1).
fn it_16(length: Length) -> Length {
    let steps = [(3.0, 0.6), (6.0, 0.75), (10.0, 0.9), (18.0, 1.1)];
    let step = steps
        .iter()
        .find(|(thru, _)| length <= millimetres(*thru))
        .map_or(1.3, |(_, tolerance)| *tolerance);
    millimetres(step)
}

/// The faces of a washer.
///
/// ```
/// use shankline::parts::WasherFace;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let face = WasherFace::of(Washer::find(WasherStyle::Iso7089, &"M12".parse()?)?)?;
/// assert_eq!(face.outer_min, millimetres(23.48));
/// assert_eq!(face.inner_max, millimetres(13.27));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct WasherFace {
    /// Least outside diameter.
    pub outer_min: Length,
    /// Greatest inside diameter.
    pub inner_max: Length,
    /// Least thickness h.
    pub thickness_min: Length,
    /// Source of the row; none for a washer whose diameters are stated.
    pub provenance: Option<Provenance>,
}

impl WasherFace {
    /// The faces of a washer of the tables.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where limits of the outside diameter, the inside diameter or the thickness were not read
    /// (DIN 125, ISO 7091, ISO 7094, aircraft washers, large sizes of plain inch washers), and for spring lock washers,
    /// which are no flat face.
    ///
    /// ```
    /// use shankline::parts::WasherFace;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(WasherFace::of(Washer::find(WasherStyle::Din125, &"M12".parse()?)?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(washer: &Washer) -> Result<Self, Error> {
        let missing = |quantity| Error::NoValue {
            quantity,
            subject: washer.to_string(),
            reason: "its row has none that was read",
        };
        if washer.section_width_min.is_some() {
            return Err(Error::NoValue {
                quantity: "flat bearing face",
                subject: washer.to_string(),
                reason: "it is a spring",
            });
        }
        Ok(Self {
            outer_min: washer
                .outside_diameter_min
                .ok_or_else(|| missing("least outside diameter"))?,
            inner_max: washer
                .inside_diameter_max
                .ok_or_else(|| missing("greatest inside diameter"))?,
            thickness_min: washer
                .thickness_min
                .ok_or_else(|| missing("least thickness"))?,
            provenance: Some(washer.provenance),
        })
    }
}

#[cfg(test)]
mod tests;
