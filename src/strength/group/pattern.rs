//! Where the bolts of a group are.

use alloc::{format, vec::Vec};

use crate::error::{Allowed, Error, LONGEST, out_of_range, sane_length};
use crate::math::{cos, sin};
use crate::units::{Area, Length, from_base};

/// Enough for any joint, few enough for memory.
const MOST_BOLTS: usize = 10_000;
/// Relative areas: wider than any mix of bolts in one joint, narrow enough that no sum overflows.
const AREAS: (f64, f64) = (1e-3, 1e3);
/// Bolts all within this distance of their centroid are one spot, which holds no moment.
pub(super) const SPOT: f64 = 1e-6;

/// A point of the shear plane.
///
/// ```
/// use shankline::{strength::group::Point, units::millimetres};
/// assert_eq!(Point { x: millimetres(1.0), y: millimetres(2.0) }.x, millimetres(1.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Point {
    /// To the right.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub x: Length,
    /// Up.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub y: Length,
}

/// One bolt of a pattern.
///
/// ```
/// use shankline::{strength::group::GroupBolt, units::millimetres};
/// let bolt = GroupBolt::new(millimetres(40.0), millimetres(0.0)).with_relative_area(1.5);
/// assert_eq!(bolt.relative_area, 1.5);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct GroupBolt {
    /// To the right.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub x: Length,
    /// Up.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub y: Length,
    /// Area over that of the bolt to which resistances refer, from 0.001 to 1000; usually 1.
    #[cfg_attr(feature = "serde", serde(default = "one"))]
    pub relative_area: f64,
}

#[cfg(feature = "serde")]
const fn one() -> f64 {
    1.0
}

impl GroupBolt {
    /// A bolt of relative area 1.
    ///
    /// ```
    /// use shankline::{strength::group::GroupBolt, units::inches};
    /// assert_eq!(GroupBolt::new(inches(1.0), inches(3.0)).relative_area, 1.0);
    /// ```
    #[must_use]
    pub const fn new(x: Length, y: Length) -> Self {
        let relative_area = 1.0;
        Self {
            x,
            y,
            relative_area,
        }
    }

    /// The bolt with another area. Checked when the pattern is made.
    ///
    /// ```
    /// use shankline::{strength::group::GroupBolt, units::inches};
    /// assert_eq!(GroupBolt::new(inches(1.0), inches(3.0)).with_relative_area(2.0).relative_area, 2.0);
    /// ```
    #[must_use]
    pub const fn with_relative_area(mut self, relative_area: f64) -> Self {
        self.relative_area = relative_area;
        self
    }
}

/// The bolts of a group, with their centroid.
///
/// ```
/// use shankline::strength::group::BoltPattern;
/// use shankline::units::millimetres;
/// # fn main() -> Result<(), shankline::Error> {
/// let pattern = BoltPattern::circle(6, millimetres(200.0))?;
/// assert_eq!(pattern.bolts().len(), 6);
/// // 6 bolts at 100 mm
/// assert!((pattern.polar_moment().value - 0.06).abs() < 1e-15);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "Vec<GroupBolt>", into = "Vec<GroupBolt>")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BoltPattern {
    bolts: Vec<GroupBolt>,
    centroid: Point,
    pub(super) total: f64,
    pub(super) polar: f64,
}

impl BoltPattern {
    /// A pattern of any bolts, at most 10 000. Two bolts in one place are allowed.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a coordinate that is not finite or beyond a kilometre, or a relative area
    /// outside 0.001 to 1000; [`Error::Mismatch`] for no bolts or too many.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, GroupBolt};
    /// use shankline::units::millimetres;
    /// let bolt = |x, y| GroupBolt::new(millimetres(x), millimetres(y));
    /// let pattern = BoltPattern::new([bolt(0.0, 0.0), bolt(30.0, 0.0), bolt(0.0, 60.0)]).unwrap();
    /// assert!((pattern.centroid().y - millimetres(20.0)).abs() < millimetres(1e-9));
    /// assert!(BoltPattern::new([]).is_err());
    /// ```
    pub fn new(bolts: impl IntoIterator<Item = GroupBolt>) -> Result<Self, Error> {
        let bolts: Vec<GroupBolt> = bolts.into_iter().take(MOST_BOLTS + 1).collect();
        counted(bolts.len())?;
        for bolt in &bolts {
            coordinate("coordinate of a bolt", bolt.x)?;
            coordinate("coordinate of a bolt", bolt.y)?;
            if !(bolt.relative_area >= AREAS.0 && bolt.relative_area <= AREAS.1) {
                let allowed = Allowed::FromTo(AREAS.0.into(), AREAS.1.into());
                return Err(out_of_range("relative area", bolt.relative_area, allowed));
            }
        }
        let sum = |part: &dyn Fn(&GroupBolt) -> f64| -> f64 {
            bolts
                .iter()
                .map(|bolt| bolt.relative_area * part(bolt))
                .sum()
        };
        let total = sum(&|_| 1.0);
        let (x, y) = (sum(&|b| b.x.value) / total, sum(&|b| b.y.value) / total);
        let polar = sum(&|b| {
            let (x, y) = (b.x.value - x, b.y.value - y);
            x * x + y * y
        });
        Ok(Self {
            bolts,
            centroid: Point {
                x: from_base(x),
                y: from_base(y),
            },
            total,
            polar,
        })
    }

    /// Rows one above the other and columns side by side, centred on the origin. Bolts are numbered from
    /// the lower left along each row. `pitch` is the distance between rows, `gauge` that between columns; neither
    /// counts where there is but one.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a distance that is not positive, [`Error::Mismatch`] for no bolts or too many.
    ///
    /// ```
    /// use shankline::strength::group::BoltPattern;
    /// use shankline::units::inches;
    /// let line = BoltPattern::rows_and_columns(4, 1, inches(3.0), inches(3.0)).unwrap();
    /// assert!((line.bolts()[3].y - inches(4.5)).abs() < inches(1e-12));
    /// ```
    #[allow(clippy::cast_precision_loss)] // counts are at most 10 000
    pub fn rows_and_columns(
        rows: usize,
        columns: usize,
        pitch: Length,
        gauge: Length,
    ) -> Result<Self, Error> {
        counted(rows.saturating_mul(columns))?;
        sane_length("pitch", pitch)?;
        sane_length("gauge", gauge)?;
        let place = |n: usize, of: usize| n as f64 - 0.5 * (of - 1) as f64;
        Self::new((0..rows).flat_map(|row| {
            (0..columns).map(move |column| {
                GroupBolt::new(place(column, columns) * gauge, place(row, rows) * pitch)
            })
        }))
    }

    /// Bolts evenly on a circle about the origin, the first at its right, then anticlockwise.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive, [`Error::Mismatch`] for no bolts or too many.
    ///
    /// ```
    /// use shankline::strength::group::BoltPattern;
    /// use shankline::units::millimetres;
    /// let flange = BoltPattern::circle(4, millimetres(100.0)).unwrap();
    /// assert!((flange.bolts()[1].y - millimetres(50.0)).abs() < millimetres(1e-9));
    /// ```
    #[allow(clippy::cast_precision_loss)] // counts are at most 10 000
    pub fn circle(count: usize, diameter: Length) -> Result<Self, Error> {
        counted(count)?;
        let radius = 0.5 * sane_length("diameter of the bolt circle", diameter)?;
        Self::new((0..count).map(|n| {
            let angle = core::f64::consts::TAU * n as f64 / count as f64;
            GroupBolt::new(cos(angle) * radius, sin(angle) * radius)
        }))
    }

    /// The bolts.
    ///
    /// ```
    /// # use shankline::{strength::group::BoltPattern, units::millimetres};
    /// assert_eq!(BoltPattern::circle(5, millimetres(90.0)).unwrap().bolts().len(), 5);
    /// ```
    #[must_use]
    pub fn bolts(&self) -> &[GroupBolt] {
        &self.bolts
    }

    /// The centroid of the bolt areas.
    ///
    /// ```
    /// # use shankline::{strength::group::BoltPattern, units::millimetres};
    /// let circle = BoltPattern::circle(5, millimetres(90.0)).unwrap();
    /// assert!(circle.centroid().x.abs() < millimetres(1e-9));
    /// ```
    #[must_use]
    pub const fn centroid(&self) -> Point {
        self.centroid
    }

    /// J = sum of a r^2 about the centroid, with the relative areas a.
    ///
    /// ```
    /// # use shankline::{strength::group::BoltPattern, units::inches};
    /// let line = BoltPattern::rows_and_columns(2, 1, inches(3.0), inches(3.0)).unwrap();
    /// assert!((line.polar_moment() - 2.0 * inches(1.5) * inches(1.5)).value.abs() < 1e-15);
    /// ```
    #[must_use]
    pub const fn polar_moment(&self) -> Area {
        from_base(self.polar)
    }

    /// The governing bolt beside its own value. Fields of results are public, so they may have been changed.
    pub(super) fn governing<T: Copy>(
        &self,
        n: usize,
        values: &[T],
    ) -> Result<(GroupBolt, T), Error> {
        match (self.bolts.get(n), values.get(n)) {
            (Some(bolt), Some(value)) => Ok((*bolt, *value)),
            _ => Err(Error::Mismatch(format!(
                "there is no bolt {n}, counted from 0"
            ))),
        }
    }

    /// Places of the bolts from the centroid, in metres, and their relative areas.
    pub(super) fn offsets(&self) -> impl Iterator<Item = (f64, f64, f64)> + Clone + '_ {
        let Point { x, y } = self.centroid;
        self.bolts
            .iter()
            .map(move |b| ((b.x - x).value, (b.y - y).value, b.relative_area))
    }

    /// Radius of gyration in metres; `None` if the bolts are all in one spot.
    pub(super) fn gyration(&self) -> Option<f64> {
        let radius = crate::math::sqrt(self.polar / self.total);
        (radius > SPOT).then_some(radius)
    }
}

impl TryFrom<Vec<GroupBolt>> for BoltPattern {
    type Error = Error;

    fn try_from(bolts: Vec<GroupBolt>) -> Result<Self, Error> {
        Self::new(bolts)
    }
}

impl From<BoltPattern> for Vec<GroupBolt> {
    fn from(pattern: BoltPattern) -> Self {
        pattern.bolts
    }
}

/// Refuses coordinates that are not finite or beyond a kilometre.
pub(super) fn coordinate(what: &'static str, value: Length) -> Result<Length, Error> {
    if value.abs() <= LONGEST {
        Ok(value)
    } else {
        let allowed = Allowed::FromTo((-LONGEST).into(), LONGEST.into());
        Err(out_of_range(what, value, allowed))
    }
}

fn counted(count: usize) -> Result<(), Error> {
    if (1..=MOST_BOLTS).contains(&count) {
        Ok(())
    } else {
        Err(Error::Mismatch(format!(
            "a bolt group has from 1 to {MOST_BOLTS} bolts"
        )))
    }
}

/// Serializes a list of quantities, each with its unit.
#[cfg(feature = "serde")]
pub(super) fn quantities<Q: crate::units::Measured, S: serde::Serializer>(
    list: &[Q],
    serializer: S,
) -> Result<S::Ok, S::Error> {
    struct One<Q>(Q);
    impl<Q: crate::units::Measured> serde::Serialize for One<Q> {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            crate::units::quantity::serialize(&self.0, serializer)
        }
    }
    serializer.collect_seq(list.iter().map(|quantity| One(*quantity)))
}
