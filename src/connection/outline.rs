//! Outlines of plates, and how far it is to their edges.

use alloc::{format, string::ToString, vec::Vec};

use crate::error::{Allowed, Error, LONGEST, out_of_range, sane_length};
use crate::joint::Given;
use crate::math::{cos, hypot, sin, sqrt};
use crate::strength::group::Point;
use crate::units::{Angle, Length, from_base};

/// Enough for any plate.
const MOST_CORNERS: usize = 200;
/// Corners of a round plate: its edge is within 0.06 % of the radius, on the safe side.
const ROUND: usize = 96;

/// A direction or place in the plane, in metres.
pub(super) type Vector = (f64, f64);

pub(super) fn dot(a: Vector, b: Vector) -> f64 {
    a.0 * b.0 + a.1 * b.1
}

/// A quarter turn anticlockwise.
pub(super) const fn turned(a: Vector) -> Vector {
    (-a.1, a.0)
}

pub(super) fn unit(a: Vector) -> Option<Vector> {
    let size = hypot(a.0, a.1);
    (size > 0.0).then(|| (a.0 / size, a.1 / size))
}

/// On which side a plate is held: welded to the rest, or running on into it.
///
/// ```
/// use shankline::connection::Side;
/// assert_ne!(Side::Left, Side::Top);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Side {
    /// Towards negative x.
    Left,
    /// Towards positive x.
    Right,
    /// Towards negative y.
    Bottom,
    /// Towards positive y.
    Top,
    /// In another direction, anticlockwise from x.
    Towards(
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Angle>"))]
        Angle,
    ),
}

impl Side {
    /// From the bolts to where the plate is held.
    pub(crate) fn direction(self) -> Vector {
        match self {
            Self::Left => (-1.0, 0.0),
            Self::Right => (1.0, 0.0),
            Self::Bottom => (0.0, -1.0),
            Self::Top => (0.0, 1.0),
            Self::Towards(angle) => (cos(angle.value), sin(angle.value)),
        }
    }
}

/// The outline of a plate: the corners, in turn, of a polygon that does not cross itself.
///
/// In a file it is the list of its corners.
///
/// ```
/// use shankline::connection::Outline;
/// use shankline::strength::group::Point;
/// use shankline::units::millimetres;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = Outline::rectangle("200 mm", "300 mm")?; // about the origin
/// assert_eq!(plate.corners().len(), 4);
/// let corner = |x, y| Point { x: millimetres(x), y: millimetres(y) };
/// let gusset = Outline::polygon([corner(0.0, 0.0), corner(200.0, 0.0), corner(0.0, 150.0)])?;
/// assert!(gusset.contains(corner(50.0, 50.0)));
/// assert!(!gusset.contains(corner(150.0, 100.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "Vec<Point>", into = "Vec<Point>")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Outline {
    corners: Vec<Point>,
}

impl Outline {
    /// A rectangle about the origin, as wide along x and as high along y.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a side that is not positive, and those of reading text.
    ///
    /// ```
    /// use shankline::connection::Outline;
    /// assert!(Outline::rectangle("0 mm", "300 mm").is_err());
    /// ```
    pub fn rectangle(width: impl Given<Length>, height: impl Given<Length>) -> Result<Self, Error> {
        let half_width = 0.5 * sane_length("width of the plate", width.given()?)?;
        let half_height = 0.5 * sane_length("height of the plate", height.given()?)?;
        Self::between(
            Point {
                x: -half_width,
                y: -half_height,
            },
            Point {
                x: half_width,
                y: half_height,
            },
        )
    }

    /// A rectangle between its lower left and its upper right corner.
    ///
    /// # Errors
    ///
    /// Those of [`polygon`](Self::polygon).
    ///
    /// ```
    /// use shankline::connection::Outline;
    /// use shankline::strength::group::Point;
    /// use shankline::units::inches;
    /// let corner = |x, y| Point { x: inches(x), y: inches(y) };
    /// assert!(Outline::between(corner(-2.0, -8.0), corner(4.0, 8.0)).is_ok());
    /// ```
    pub fn between(lower_left: Point, upper_right: Point) -> Result<Self, Error> {
        Self::polygon([
            lower_left,
            Point {
                x: upper_right.x,
                y: lower_left.y,
            },
            upper_right,
            Point {
                x: lower_left.x,
                y: upper_right.y,
            },
        ])
    }

    /// A round plate about the origin, as a polygon within it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not positive, and those of reading text.
    ///
    /// ```
    /// use shankline::connection::Outline;
    /// assert!(Outline::round("240 mm").is_ok());
    /// ```
    #[allow(clippy::cast_precision_loss)] // a hundred corners
    pub fn round(diameter: impl Given<Length>) -> Result<Self, Error> {
        let radius = 0.5 * sane_length("diameter of the plate", diameter.given()?)?;
        Self::polygon((0..ROUND).map(|n| {
            let angle = core::f64::consts::TAU * n as f64 / ROUND as f64;
            Point {
                x: cos(angle) * radius,
                y: sin(angle) * radius,
            }
        }))
    }

    /// Any polygon by its corners, in turn either way.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for fewer than three corners, too many, sides that cross or touch, or no area;
    /// [`Error::OutOfRange`] for a corner beyond a kilometre.
    ///
    /// ```
    /// use shankline::connection::Outline;
    /// use shankline::strength::group::Point;
    /// use shankline::units::inches;
    /// let corner = |x, y| Point { x: inches(x), y: inches(y) };
    /// let crossed = [corner(0.0, 0.0), corner(4.0, 4.0), corner(4.0, 0.0), corner(0.0, 4.0)];
    /// assert!(Outline::polygon(crossed).is_err());
    /// ```
    pub fn polygon(corners: impl IntoIterator<Item = Point>) -> Result<Self, Error> {
        let corners: Vec<Point> = corners.into_iter().take(MOST_CORNERS + 1).collect();
        if !(3..=MOST_CORNERS).contains(&corners.len()) {
            return Err(Error::Mismatch(format!(
                "the outline of a plate has from 3 to {MOST_CORNERS} corners"
            )));
        }
        for part in corners.iter().flat_map(|corner| [corner.x, corner.y]) {
            let near = part.abs() <= LONGEST; // false for NaN
            if !near {
                let allowed = Allowed::FromTo((-LONGEST).into(), LONGEST.into());
                return Err(out_of_range("corner of a plate", part, allowed));
            }
        }
        let outline = Self { corners };
        if outline.area().abs() < 1e-10 || outline.crosses_itself() {
            return Err(Error::Mismatch(
                "the outline of a plate crosses or touches itself, or encloses nothing".to_string(),
            ));
        }
        Ok(outline)
    }

    /// The corners.
    ///
    /// ```
    /// use shankline::connection::Outline;
    /// use shankline::units::millimetres;
    /// let plate = Outline::rectangle("80 mm", "90 mm").unwrap();
    /// assert_eq!(plate.corners()[2].y, millimetres(45.0));
    /// ```
    #[must_use]
    pub fn corners(&self) -> &[Point] {
        &self.corners
    }

    /// Whether a point is within.
    ///
    /// ```
    /// use shankline::connection::Outline;
    /// use shankline::strength::group::Point;
    /// use shankline::units::millimetres;
    /// let plate = Outline::rectangle("80 mm", "90 mm").unwrap();
    /// assert!(!plate.contains(Point { x: millimetres(0.0), y: millimetres(46.0) }));
    /// ```
    #[must_use]
    pub fn contains(&self, point: Point) -> bool {
        let (x, y) = (point.x.value, point.y.value);
        // A ray to the right crosses the sides an odd number of times.
        let crossed = self.sides().filter(|(a, b)| {
            (a.1 > y) != (b.1 > y) && x < a.0 + (y - a.1) / (b.1 - a.1) * (b.0 - a.0)
        });
        crossed.count() % 2 == 1
    }

    fn vectors(&self) -> impl Iterator<Item = Vector> + Clone + '_ {
        let corners = self.corners.iter();
        corners.map(|corner| (corner.x.value, corner.y.value))
    }

    pub(super) fn sides(&self) -> impl Iterator<Item = (Vector, Vector)> + Clone + '_ {
        self.vectors().zip(self.vectors().cycle().skip(1))
    }

    /// Positive anticlockwise.
    fn area(&self) -> f64 {
        let sides = self.sides();
        0.5 * sides.map(|(a, b)| a.0 * b.1 - a.1 * b.0).sum::<f64>()
    }

    fn crosses_itself(&self) -> bool {
        let count = self.corners.len();
        let sides: Vec<(Vector, Vector)> = self.sides().collect();
        sides.iter().enumerate().any(|(n, first)| {
            let others = sides.iter().enumerate().skip(n + 1);
            let mut others = others.filter(|(m, _)| *m != n + 1 && !(n == 0 && *m == count - 1));
            first.0 == first.1 || others.any(|(_, second)| meet(*first, *second))
        })
    }

    /// How far it is to the ends that lie in a direction or its opposite: to sides that face it within 45 degrees, and
    /// straight to whatever side is there.
    pub(super) fn nearest(&self, from: Vector, direction: Vector) -> Option<f64> {
        let faces = |(a, b): &(Vector, Vector)| {
            let side = unit((b.0 - a.0, b.1 - a.1));
            side.is_some_and(|side| dot(turned(side), direction).abs() >= (1.0 - 1e-9) / sqrt(2.0))
        };
        let facing = self.sides().filter(faces);
        let back = (-direction.0, -direction.1);
        facing
            .map(|side| away(from, side))
            .chain(self.reach(from, direction))
            .chain(self.reach(from, back))
            .reduce(f64::min)
    }

    /// The point of the outline that is nearest.
    pub(super) fn nearest_point(&self, from: Vector) -> Vector {
        let far = |at: &Vector| hypot(from.0 - at.0, from.1 - at.1);
        let feet = self.sides().map(|side| foot(from, side));
        let nearest = feet.min_by(|a, b| far(a).total_cmp(&far(b)));
        // An outline has three sides at least.
        nearest.unwrap_or((f64::INFINITY, f64::INFINITY))
    }

    /// How far it is to the outline in any direction.
    pub(super) fn nearest_at_all(&self, from: Vector) -> f64 {
        let sides = self.sides().map(|side| away(from, side));
        sides.fold(f64::INFINITY, f64::min)
    }

    /// How far it is to the outline straight in a direction.
    pub(super) fn reach(&self, from: Vector, direction: Vector) -> Option<f64> {
        let across = turned(direction);
        let crossed = self.sides().filter_map(|(a, b)| {
            let (side_a, side_b) = (
                dot((a.0 - from.0, a.1 - from.1), across),
                dot((b.0 - from.0, b.1 - from.1), across),
            );
            if (side_a > 0.0) == (side_b > 0.0) {
                return None;
            }
            let share = side_a / (side_a - side_b);
            let at = (a.0 + share * (b.0 - a.0), a.1 + share * (b.1 - a.1));
            let far = dot((at.0 - from.0, at.1 - from.1), direction);
            (far >= 0.0).then_some(far)
        });
        crossed.reduce(f64::min)
    }

    /// The cut at right angles to a direction through a point: from where to where along the turned direction. None if
    /// the line does not cut the plate in just two places.
    pub(super) fn cut(&self, through: Vector, direction: Vector) -> Option<(f64, f64)> {
        let across = turned(direction);
        let level = dot(through, direction);
        let mut crossed: Vec<f64> = self
            .sides()
            .filter_map(|(a, b)| {
                let (up_a, up_b) = (dot(a, direction) - level, dot(b, direction) - level);
                ((up_a > 0.0) != (up_b > 0.0)).then(|| {
                    let share = up_a / (up_a - up_b);
                    dot(a, across) + share * (dot(b, across) - dot(a, across))
                })
            })
            .collect();
        crossed.sort_by(f64::total_cmp);
        match crossed.as_slice() {
            [from, to] => Some((*from, *to)),
            _ => None,
        }
    }

    /// Levels of the corners along a direction.
    pub(super) fn levels(&self, direction: Vector) -> impl Iterator<Item = f64> + '_ {
        self.vectors().map(move |corner| dot(corner, direction))
    }
}

/// The point of a side that is nearest to another.
fn foot(from: Vector, (a, b): (Vector, Vector)) -> Vector {
    let along = (b.0 - a.0, b.1 - a.1);
    let offset = (from.0 - a.0, from.1 - a.1);
    let square = dot(along, along);
    let foot = if square > 0.0 {
        (dot(offset, along) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (a.0 + foot * along.0, a.1 + foot * along.1)
}

/// From a point to the nearest of a side.
pub(super) fn away(from: Vector, side: (Vector, Vector)) -> f64 {
    let foot = foot(from, side);
    hypot(from.0 - foot.0, from.1 - foot.1)
}

/// Whether two sides have a point in common.
fn meet(first: (Vector, Vector), second: (Vector, Vector)) -> bool {
    let side =
        |(a, b): (Vector, Vector), p: Vector| (b.0 - a.0) * (p.1 - a.1) - (b.1 - a.1) * (p.0 - a.0);
    let apart = |line, (a, b): (Vector, Vector)| side(line, a) * side(line, b) > 0.0;
    let clear =
        |a: (f64, f64), b: (f64, f64)| a.0.max(a.1) < b.0.min(b.1) || b.0.max(b.1) < a.0.min(a.1);
    let boxes_apart = clear((first.0.0, first.1.0), (second.0.0, second.1.0))
        || clear((first.0.1, first.1.1), (second.0.1, second.1.1));
    !boxes_apart && !apart(first, second) && !apart(second, first)
}

impl TryFrom<Vec<Point>> for Outline {
    type Error = Error;

    fn try_from(corners: Vec<Point>) -> Result<Self, Error> {
        Self::polygon(corners)
    }
}

impl From<Outline> for Vec<Point> {
    fn from(outline: Outline) -> Self {
        outline.corners
    }
}

/// A length from metres.
pub(super) fn metres(value: f64) -> Length {
    from_base(value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn distances_of_a_rectangle() {
        let plate = Outline::rectangle("200 mm", "300 mm").unwrap();
        let near = |from, direction| plate.nearest(from, direction).unwrap();
        // 60 mm right of the middle: 40 to the right edge, 160 to the left; 150 up and down.
        let from = (0.06, 0.0);
        assert!((near(from, (1.0, 0.0)) - 0.04).abs() < 1e-12);
        assert!((near(from, (0.0, 1.0)) - 0.15).abs() < 1e-12);
        assert!((near(from, (-1.0, 0.0)) - 0.04).abs() < 1e-12);
        assert!((plate.reach(from, (-1.0, 0.0)).unwrap() - 0.16).abs() < 1e-12);
        assert_eq!(plate.cut((0.0, 0.1), (0.0, 1.0)), Some((-0.1, 0.1)));
        // In a corner, 30 mm from both edges, a slanting load is no farther from them.
        let corner = (0.07, 0.12);
        let slant = (0.5_f64.sqrt(), 0.5_f64.sqrt());
        assert!((near(corner, slant) - 0.03).abs() < 1e-12);
        assert!((near(corner, turned(slant)) - 0.03).abs() < 1e-12);
    }

    #[test]
    fn outlines_that_are_none() {
        let corner = |x: f64, y: f64| Point {
            x: metres(x),
            y: metres(y),
        };
        assert!(Outline::polygon([corner(0.0, 0.0), corner(1.0, 0.0)]).is_err());
        assert!(Outline::polygon([corner(0.0, 0.0), corner(1.0, 0.0), corner(2.0, 0.0)]).is_err());
        let nan = corner(f64::NAN, 0.0);
        assert!(Outline::polygon([nan, corner(1.0, 0.0), corner(0.0, 1.0)]).is_err());
        let bow = [
            corner(0.0, 0.0),
            corner(1.0, 1.0),
            corner(1.0, 0.0),
            corner(0.0, 1.0),
        ];
        assert!(Outline::polygon(bow).is_err());
        let touched = [
            corner(0.0, 0.0),
            corner(2.0, 0.0),
            corner(2.0, 1.0),
            corner(1.0, 0.0),
            corner(0.0, 1.0),
        ];
        assert!(Outline::polygon(touched).is_err());
    }

    /// A plate from 0 to 200 and 0 to 100 mm with a slanting end: from (200, 0) to (140, 100).
    #[test]
    fn slanting_sides() {
        let mm = |x: f64, y: f64| Point {
            x: metres(1e-3 * x),
            y: metres(1e-3 * y),
        };
        let plate = [
            mm(0.0, 0.0),
            mm(200.0, 0.0),
            mm(140.0, 100.0),
            mm(0.0, 100.0),
        ];
        let back = plate.iter().rev().copied();
        for plate in [Outline::polygon(plate), Outline::polygon(back)] {
            let plate = plate.unwrap();
            // At a height of 50 mm it ends at 170, at 20 mm at 188.
            for (x, y, within) in [
                (169.9, 50.0, true),
                (170.1, 50.0, false),
                (187.9, 20.0, true),
                (188.1, 20.0, false),
                (0.1, 50.0, true),
                (-0.1, 50.0, false),
                (50.0, 99.9, true),
                (50.0, 100.1, false),
                (50.0, -0.1, false),
                (250.0, 50.0, false),
            ] {
                assert_eq!(plate.contains(mm(x, y)), within, "{x} {y}");
            }
            let reach = |x: f64, y: f64, way| plate.reach((1e-3 * x, 1e-3 * y), way);
            let near = |found: Option<f64>, hand: f64| (found.unwrap() * 1e3 - hand).abs() < 1e-9;
            assert!(near(reach(100.0, 50.0, (1.0, 0.0)), 70.0));
            assert!(near(reach(100.0, 20.0, (1.0, 0.0)), 88.0));
            assert!(near(reach(100.0, 20.0, (-1.0, 0.0)), 100.0));
            assert!(near(reach(170.0, 10.0, (0.0, 1.0)), 40.0));
            assert!(near(reach(170.0, 10.0, (0.0, -1.0)), 10.0));
            // At 45 degrees from 10 mm up: 200 - 0.6 y = 50 + y at 93.75 mm.
            let slant = 0.5_f64.sqrt();
            let far = plate.reach((0.06, 0.01), (slant, slant)).unwrap();
            assert!((far * slant - 0.083_75).abs() < 1e-12, "{far}");
            assert_eq!(reach(300.0, 50.0, (1.0, 0.0)), None);
            // Beside it, of a plate that is not symmetric, either end counts.
            let nearest = |x: f64, y: f64, way| plate.nearest((1e-3 * x, 1e-3 * y), way);
            for way in [(1.0, 0.0), (-1.0, 0.0)] {
                assert!(near(nearest(20.0, 50.0, way), 20.0), "{way:?}");
            }
            for way in [(0.0, 1.0), (0.0, -1.0)] {
                assert!(near(nearest(20.0, 70.0, way), 30.0), "{way:?}");
                assert!(near(nearest(20.0, 30.0, way), 30.0), "{way:?}");
            }
        }
        // No side of a triangle faces the way within 45 degrees where it is steep on both sides: straight on and straight back.
        let needle = [mm(0.0, 0.0), mm(30.0, 200.0), mm(-30.0, 200.0)];
        let needle = Outline::polygon(needle).unwrap();
        // 160 mm above its point it is 24 mm to both sides, and 40 to its end.
        let down = needle.nearest((0.0, 0.16), (0.0, -1.0)).unwrap();
        assert!((down - 0.04).abs() < 1e-12, "{down}");
        // Lying down, from beside its point: that lies straight back, and straight on.
        let lying = [mm(0.0, 0.0), mm(200.0, -30.0), mm(200.0, 30.0)];
        let lying = Outline::polygon(lying).unwrap();
        for way in [(1.0, 0.0), (-1.0, 0.0)] {
            let point = lying.nearest((0.012, 0.0), way).unwrap();
            assert!((point - 0.012).abs() < 1e-12, "{way:?}: {point}");
        }
        // Straight to a corner, whichever way round the corners are given.
        let mut diamond = [mm(-0.1, 0.0), mm(0.0, -0.1), mm(0.1, 0.0), mm(0.0, 0.1)];
        for _ in 0..2 {
            let own = Outline::polygon(diamond).unwrap();
            for way in [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.0, -1.0)] {
                let far = own.reach((0.0, 0.0), way).unwrap();
                assert!((far - 1e-4).abs() < 1e-12, "{way:?}: {far}");
            }
            diamond.reverse();
        }
        // Seen from 12 mm above the point that lies straight below.
        let point = needle.nearest((0.0, 0.012), (0.0, 1.0)).unwrap();
        assert!((point - 0.012).abs() < 1e-12, "{point}");
    }

    /// At most a kilometre from the origin.
    #[test]
    fn corners_lie_within_a_kilometre() {
        let with = |x: f64| {
            Outline::polygon([[0.0, 0.0], [x, 0.0], [x, 1.0]].map(|[x, y]| Point {
                x: metres(x),
                y: metres(y),
            }))
        };
        assert!(with(1000.0).is_ok() && with(-1000.0).is_ok());
        for beyond in [1000.1, -1000.1] {
            match with(beyond) {
                Err(Error::OutOfRange { allowed, .. }) => {
                    assert_eq!(allowed, Allowed::FromTo((-LONGEST).into(), LONGEST.into()));
                }
                other => panic!("{other:?}"),
            }
        }
    }

    /// Sides that share no point, a crossing, an end, or a line.
    #[test]
    fn sides_that_meet() {
        let base = ((0.0, 0.0), (2.0, 0.0));
        for (other, meets) in [
            (((1.0, -1.0), (1.0, 1.0)), true),
            (((1.0, 0.0), (1.0, 1.0)), true),
            (((1.0, 0.1), (1.0, 1.0)), false),
            (((2.0, 0.0), (3.0, 1.0)), true),
            (((2.1, -1.0), (2.1, 1.0)), false),
            (((-0.1, -1.0), (-0.1, 1.0)), false),
            (((1.5, 1.0), (3.0, -0.5)), false),
            (((1.5, 1.0), (2.0, -1.0)), true),
            (((1.0, 0.0), (3.0, 0.0)), true),
            (((2.1, 0.0), (3.0, 0.0)), false),
            (((0.0, 1.0), (2.0, 1.0)), false),
        ] {
            // The same wherever it lies, however it is turned, and in any order.
            for (c, s) in [(1.0, 0.0), (0.0, 1.0), (-1.0, 0.0), (0.6, 0.8)] {
                let at = |p: Vector| (7.0 + c * p.0 - s * p.1, -3.0 + s * p.0 + c * p.1);
                let (one, two) = ((at(base.0), at(base.1)), (at(other.0), at(other.1)));
                if (c, s) == (0.6, 0.8) && meets && other.0.1 == 0.0 {
                    continue; // on the line but for rounding
                }
                assert_eq!(meet(one, two), meets, "{other:?} {c} {s}");
                assert_eq!(meet(two, one), meets, "{other:?} {c} {s}");
                assert_eq!(meet((one.1, one.0), two), meets, "{other:?} {c} {s}");
            }
        }
    }
}
