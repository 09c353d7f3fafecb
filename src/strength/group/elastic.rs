//! The elastic vector method.

use alloc::vec::Vec;

use super::load::{BoltForce, PlaneLoad, PlaneResultant};
use super::pattern::{BoltPattern, Point};
use crate::error::{Error, LONGEST};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::{Force, Length, from_base};

/// Forces on the bolts by the elastic vector method; see [`BoltPattern::elastic`].
///
/// ```
/// use shankline::strength::check::Level;
/// use shankline::strength::group::{BoltPattern, PlaneLoad};
/// use shankline::units::{millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let pattern = BoltPattern::rows_and_columns(3, 2, millimetres(70.0), millimetres(80.0))?;
/// let load = PlaneLoad::new(newtons(0.0), newtons(-20e3), millimetres(200.0), millimetres(0.0));
/// let group = pattern.elastic(&[load])?;
/// let check = group.check(newtons(30e3), Level::Design)?;
/// assert!(check.holds());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ElasticGroup {
    /// The bolts.
    pub pattern: BoltPattern,
    /// All loads together.
    pub load: PlaneResultant,
    /// On each bolt, in the order of the pattern.
    pub forces: Vec<BoltForce>,
    /// Which bolt has the greatest force for its area, counted from 0; the first of equals.
    pub governing: usize,
    /// About which point the plate turns; `None` if it does not turn, or about a point beyond a kilometre.
    pub centre: Option<Point>,
}

impl BoltPattern {
    /// The elastic vector method: rigid plates, every bolt a spring as stiff as its area.
    ///
    /// ```text
    /// direct     F'  = F a / A          A = sum of a
    /// of moment  F'' = M r a / J        J = sum of a r^2, at right angles to r
    /// ```
    ///
    /// with M about the centroid and r from it; both are added as vectors. Published: Shigley, 9th ed.,
    /// Eq. 8-57; NASA RP-1228; AISC Manual, Part 7. It gives less capacity than
    /// [`BoltPattern::instantaneous_centre`] and needs no ductility of the bolts.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for loads that are not finite, act beyond a kilometre or overflow;
    /// [`Error::Mismatch`] for a moment on bolts that are all in one place.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, PlaneLoad};
    /// use shankline::units::{millimetres, newton_metres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let flange = BoltPattern::circle(8, millimetres(200.0))?;
    /// let twist = PlaneLoad::new(newtons(0.0), newtons(0.0), millimetres(0.0), millimetres(0.0))
    ///     .with_moment(newton_metres(800.0));
    /// // 800 N m / (8 x 0.1 m)
    /// let force = flange.elastic(&[twist])?.forces[3].resultant;
    /// assert!((force - newtons(1000.0)).abs() < newtons(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn elastic(&self, loads: &[PlaneLoad]) -> Result<ElasticGroup, Error> {
        let load = PlaneResultant::of(loads, self)?;
        let (x, y, turn) = self.elastic_motion(&load);
        let mut forces = Vec::with_capacity(self.bolts().len());
        let (mut governing, mut greatest) = (0, -1.0);
        for (n, (px, py, area)) in self.offsets().enumerate() {
            let force = BoltForce::new(area * (x - turn * py), area * (y + turn * px))?;
            let share = force.resultant.value / area;
            // Equal bolts differ by rounding: the first of them governs.
            if share > greatest * (1.0 + 1e-12) {
                (governing, greatest) = (n, share);
            }
            forces.push(force);
        }
        Ok(ElasticGroup {
            centre: centre(self, x, y, turn),
            pattern: self.clone(),
            load,
            forces,
            governing,
        })
    }

    /// Force for each unit of area by the forces, and by the moment and unit of radius.
    fn elastic_motion(&self, load: &PlaneResultant) -> (f64, f64, f64) {
        let turn = match self.gyration() {
            Some(_) => load.moment.value / self.polar,
            None => 0.0,
        };
        (
            load.force_x.value / self.total,
            load.force_y.value / self.total,
            turn,
        )
    }
}

/// The point that a motion from the centroid leaves at rest.
pub(super) fn centre(pattern: &BoltPattern, x: f64, y: f64, turn: f64) -> Option<Point> {
    let from = pattern.centroid();
    let (x, y) = (-y / turn, x / turn);
    let near = |part: f64| part.abs() <= LONGEST.value; // false for NaN
    // Typed here: beside uom's `autoconvert` a sum could be of other units.
    let (dx, dy): (Length, Length) = (from_base(x), from_base(y));
    (near(x) && near(y)).then(|| Point {
        x: from.x + dx,
        y: from.y + dy,
    })
}

impl ElasticGroup {
    /// The governing bolt against the resistance of a bolt of relative area 1.
    ///
    /// # Errors
    ///
    /// Those of [`Check::new`]; [`Error::Mismatch`] if the number of the governing bolt was changed to none there is.
    ///
    /// ```
    /// use shankline::strength::check::{Level, Place};
    /// use shankline::strength::group::{BoltPattern, PlaneLoad};
    /// use shankline::units::{millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pair = BoltPattern::rows_and_columns(1, 2, millimetres(60.0), millimetres(60.0))?;
    /// let load = PlaneLoad::new(newtons(0.0), newtons(-8e3), millimetres(60.0), millimetres(0.0));
    /// let check = pair.elastic(&[load])?.check(newtons(10e3), Level::Allowable)?;
    /// assert_eq!(check.place, Place::Bolt(2));
    /// assert!(!check.holds()); // 4 + 8 kN
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, resistance: Force, level: Level) -> Result<Check, Error> {
        let (bolt, force) = self.pattern.governing(self.governing, &self.forces)?;
        let resistance = bolt.relative_area * resistance;
        let place = Place::Bolt(self.governing.saturating_add(1));
        Check::new(
            Mode::BoltShear,
            place,
            force.resultant,
            resistance,
            level,
            methods::ELASTIC_VECTOR,
        )
    }
}
