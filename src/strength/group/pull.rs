//! Bolt tensions of a pull with moments about any axis in the shear plane.

use alloc::{string::ToString, vec::Vec};

use super::pattern::{BoltPattern, Point, SPOT, coordinate};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, not_negative};
use crate::math::{hypot, sqrt};
use crate::source::Method;
use crate::tables::methods;
use crate::units::{Force, Torque, from_base};

/// How far the tilt may be from a line of symmetry, over the whole second moment: rounding of a drawing.
const SYMMETRIC: f64 = 1e-6;

/// A pull on a group, moved to the centroid of its bolts.
///
/// x points right, y up, z out of the shear plane towards whoever looks at it; moments turn by the right hand. A pull
/// is positive where it parts the plies. A positive moment about x pulls on the upper bolts, one about y on those at
/// the left.
///
/// ```
/// use shankline::strength::group::PullLoad;
/// use shankline::units::{newton_metres, newtons};
/// let lifted = PullLoad { force: newtons(4e3), about_x: newton_metres(0.0), about_y: newton_metres(0.0) };
/// assert_eq!(lifted, PullLoad::force(newtons(4e3)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct PullLoad {
    /// Pull that parts the plies; negative where it presses them together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub force: Force,
    /// Moment about the axis to the right.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub about_x: Torque,
    /// Moment about the axis up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub about_y: Torque,
}

impl PullLoad {
    /// A pull through the centroid.
    ///
    /// ```
    /// use shankline::{strength::group::PullLoad, units::newtons};
    /// assert_eq!(PullLoad::force(newtons(1.0)).about_x.value, 0.0);
    /// ```
    #[must_use]
    pub const fn force(force: Force) -> Self {
        Self {
            force,
            about_x: from_base(0.0),
            about_y: from_base(0.0),
        }
    }
}

/// Where the plate finds its hold while a moment tilts it.
///
/// ```
/// use shankline::strength::group::{Point, Tilting};
/// use shankline::units::millimetres;
/// let corner = |x, y| Point { x: millimetres(x), y: millimetres(y) };
/// let plate = [corner(-80.0, -90.0), corner(80.0, -90.0), corner(80.0, 90.0), corner(-80.0, 90.0)];
/// assert_ne!(Tilting::AboutEdge(&plate), Tilting::Clamped);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Tilting<'a> {
    /// The plies stay pressed together by the preload, and the neutral axis stays in the centroid of the bolts. Bolts
    /// beyond it are relieved, which is written as a negative tension.
    Clamped,
    /// The plate turns as a rigid body about the edge of its outline, whose corners these are, that the moment presses.
    AboutEdge(&'a [Point]),
}

impl Tilting<'_> {
    /// Who says so.
    ///
    /// ```
    /// use shankline::strength::group::Tilting;
    /// assert!(Tilting::Clamped.method().citation.contains("centroid"));
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Clamped => methods::TENSION_ABOUT_CENTROID,
            Self::AboutEdge(_) => methods::TENSION_ABOUT_EDGE,
        }
    }
}

/// Tensions of a pull with moments; see [`BoltPattern::pull`].
///
/// ```
/// use shankline::strength::group::{BoltPattern, PullLoad, Tilting};
/// use shankline::units::{millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let flange = BoltPattern::circle(6, millimetres(200.0))?;
/// let even = flange.pull(PullLoad::force(newtons(6e3)), Tilting::Clamped)?;
/// assert!((even.tensions[4] - newtons(1e3)).abs() < newtons(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GroupPull {
    /// The load at the centroid.
    pub load: PullLoad,
    /// Of each bolt, in the order of the pattern; negative where it is relieved.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "super::pattern::quantities")
    )]
    pub tensions: Vec<Force>,
    /// What the edge of the plate presses; none where nothing tilts it onto one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub edge: Force,
    /// Which bolt has the greatest tension for its area, counted from 0; the first of equals.
    pub governing: usize,
    /// By which method.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub method: &'static Method,
    /// What the user must be told.
    pub cautions: Cautions,
}

/// Second moments of the bolt areas about the centroid.
struct Moments {
    xx: f64,
    xy: f64,
    yy: f64,
}

impl BoltPattern {
    fn moments(&self) -> Moments {
        let zero = Moments {
            xx: 0.0,
            xy: 0.0,
            yy: 0.0,
        };
        self.offsets().fold(zero, |sum, (x, y, area)| Moments {
            xx: sum.xx + area * x * x,
            xy: sum.xy + area * x * y,
            yy: sum.yy + area * y * y,
        })
    }

    /// Bolt tensions of a pull through the centroid with moments about any axis in the plane. Without prying.
    ///
    /// ```text
    /// clamped     T = a (F / A + g . r)            g from the moments, both at once
    /// about edge  T = a l (M + F d) / sum a l^2    l from the edge, d that of the centroid; where the pull lifts the
    ///                                              edge, T = a (F / A + M c / I) as above
    /// ```
    ///
    /// About an edge a force that presses is not counted on: it takes no tension off. Sources: those of
    /// [`NeutralAxis`](super::NeutralAxis); the pull beside the moment is statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads that are not finite or tensions that overflow; [`Error::Mismatch`] for a moment
    /// about a line on which all bolts stand, a bolt beyond the edge, and a moment whose edge is no line of support that
    /// balances it: the pattern or the plate is not symmetric about the plane of the moment.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, Point, PullLoad, Tilting};
    /// use shankline::units::{millimetres, newton_metres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pattern = BoltPattern::rows_and_columns(2, 2, millimetres(100.0), millimetres(80.0))?;
    /// let load = PullLoad { about_x: newton_metres(1000.0), ..PullLoad::force(newtons(2e3)) };
    /// // 2 kN / 4 and 1000 N m over two pairs at 50 mm
    /// let clamped = pattern.pull(load, Tilting::Clamped)?;
    /// assert!((clamped.tensions[3] - newtons(5.5e3)).abs() < newtons(1e-6));
    /// let corner = |x, y| Point { x: millimetres(x), y: millimetres(y) };
    /// let plate = [corner(-70.0, -80.0), corner(70.0, -80.0), corner(70.0, 80.0), corner(-70.0, 80.0)];
    /// // (1000 + 2000 x 0.08) x 0.13 / (2 x (0.13^2 + 0.03^2)) N
    /// let tilted = pattern.pull(load, Tilting::AboutEdge(&plate))?;
    /// assert!((tilted.tensions[3] - newtons(4235.955)).abs() < newtons(1e-3));
    /// # Ok(())
    /// # }
    /// ```
    pub fn pull(&self, load: PullLoad, tilting: Tilting<'_>) -> Result<GroupPull, Error> {
        not_negative("size of the pull", load.force.abs())?;
        not_negative("size of a moment out of the plane", load.about_x.abs())?;
        not_negative("size of a moment out of the plane", load.about_y.abs())?;
        let size = hypot(load.about_x.value, load.about_y.value);
        // What the tensions, each at its place, must add up to.
        let first = (-load.about_y.value, load.about_x.value);
        let (each, edge): (Vec<f64>, f64) = match tilting {
            Tilting::Clamped => (self.clamped(load.force.value, first)?, 0.0),
            Tilting::AboutEdge(_) if size <= SPOT * load.force.value.abs() => {
                (self.clamped(load.force.value.max(0.0), (0.0, 0.0))?, 0.0)
            }
            Tilting::AboutEdge(corners) => self.tilted(load.force.value, first, size, corners)?,
        };
        let (mut governing, mut greatest) = (0, f64::NEG_INFINITY);
        let mut tensions = Vec::with_capacity(each.len());
        for (n, (share, bolt)) in each.into_iter().zip(self.bolts()).enumerate() {
            let tension: Force = from_base(share * bolt.relative_area);
            crate::error::not_negative("tension of a bolt", tension.abs())?;
            // Equal bolts differ by rounding: the first of them governs.
            if share - greatest > 1e-12 * share.abs() {
                (governing, greatest) = (n, share);
            }
            tensions.push(tension);
        }
        let method = tilting.method();
        let tilts = size > SPOT * load.force.value.abs();
        Ok(GroupPull {
            load,
            tensions,
            edge: from_base(edge),
            governing,
            method,
            cautions: Cautions::default().with(Caution::of_method(method).filter(|_| tilts)),
        })
    }

    /// Tension for each unit of area, linear about the centroid.
    fn clamped(&self, force: f64, first: (f64, f64)) -> Result<Vec<f64>, Error> {
        let Moments { xx, xy, yy } = self.moments();
        let (determinant, trace) = (xx * yy - xy * xy, xx + yy);
        let gradient = if determinant > 1e-12 * trace * trace {
            (
                (first.0 * yy - first.1 * xy) / determinant,
                (first.1 * xx - first.0 * xy) / determinant,
            )
        } else {
            // All bolts on one line, or in one spot: a moment along the line finds no arm.
            let (ux, uy) = if xx > yy { (xx, xy) } else { (xy, yy) };
            let long = hypot(ux, uy);
            let size = hypot(first.0, first.1);
            let (along, beside) = if long > 0.0 {
                (
                    (first.0 * ux + first.1 * uy) / long,
                    (first.0 * uy - first.1 * ux).abs() / long,
                )
            } else {
                (0.0, size)
            };
            let has_arm = sqrt(trace / self.total) > SPOT;
            if beside > 1e-9 * size + SPOT * force.abs() || (!has_arm && size > SPOT * force.abs())
            {
                return Err(on_the_axis());
            }
            if has_arm {
                let slope = along / trace / long;
                (slope * ux, slope * uy)
            } else {
                (0.0, 0.0)
            }
        };
        let mean = force / self.total;
        let offsets = self.offsets();
        Ok(offsets
            .map(|(x, y, _)| mean + gradient.0 * x + gradient.1 * y)
            .collect())
    }

    /// Tension for each unit of area about the edge that is pressed, and what presses it.
    fn tilted(
        &self,
        force: f64,
        first: (f64, f64),
        moment: f64,
        corners: &[Point],
    ) -> Result<(Vec<f64>, f64), Error> {
        let (nx, ny) = (first.0 / moment, first.1 / moment);
        let centroid = self.centroid();
        let mut support = f64::INFINITY;
        for corner in corners {
            coordinate("corner of the plate", corner.x)?;
            coordinate("corner of the plate", corner.y)?;
        }
        let from = |corner: &Point| {
            let (x, y) = ((corner.x - centroid.x).value, (corner.y - centroid.y).value);
            (x * nx + y * ny, y * nx - x * ny)
        };
        for corner in corners {
            support = support.min(from(corner).0);
        }
        if !support.is_finite() {
            return Err(Error::Mismatch(
                "the plate has no corners, so that no edge is pressed".to_string(),
            ));
        }
        let depth = -support;
        let (mut second, mut crossed, mut about) = (0.0, 0.0, 0.0);
        for (x, y, area) in self.offsets() {
            let (up, side) = (x * nx + y * ny, y * nx - x * ny);
            let arm = up + depth;
            if arm < -1e-9 {
                return Err(Error::Mismatch(
                    "a bolt is beyond the edge of the plate that is pressed".to_string(),
                ));
            }
            second += area * arm * arm;
            crossed += area * arm * side;
            about += area * up * up;
        }
        if second <= SPOT * SPOT * self.total {
            return Err(on_the_axis());
        }
        // The edge can press only where it is, and balances nothing aside of the plane of the moment.
        let slack = 1e-6 * depth.abs().max(SPOT);
        let pressed = corners
            .iter()
            .map(from)
            .filter(|(up, _)| *up <= support + slack);
        let (least, most) = pressed.fold(
            (f64::INFINITY, f64::NEG_INFINITY),
            |(least, most), (_, side)| (least.min(side), most.max(side)),
        );
        if crossed.abs() > SYMMETRIC * second || least > slack || most < -slack {
            return Err(Error::Mismatch(
                "the moment tilts the plate onto a corner, or the bolts are not symmetric about its plane: the method \
                 of a pressed edge has no answer"
                    .to_string(),
            ));
        }
        let pull = force.max(0.0);
        if pull * about >= self.total * moment * depth {
            return Ok((self.clamped(pull, first)?, 0.0));
        }
        let each = (moment + pull * depth) / second;
        let tensions: Vec<f64> = self
            .offsets()
            .map(|(x, y, _)| each * (x * nx + y * ny + depth))
            .collect();
        let sum: f64 = tensions
            .iter()
            .zip(self.offsets())
            .map(|(tension, (.., area))| tension * area)
            .sum();
        Ok((tensions, sum - pull))
    }
}

fn on_the_axis() -> Error {
    Error::Mismatch("the bolts are all on the neutral axis and carry no moment".to_string())
}
