//! The method of the instantaneous centre of rotation.

use alloc::{format, string::ToString, vec::Vec};

use super::elastic::centre;
use super::load::{BoltForce, PlaneLoad, PlaneResultant};
use super::pattern::{BoltPattern, Point};
use super::solve::{FARTHEST, Solution, Vector, curve, displacement, ultimate};
use crate::error::{Error, positive};
use crate::math::{hypot, sqrt};
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::{Force, INCH, Length, Torque, from_base};

/// The load-deformation curve of a bolt in shear and bearing.
///
/// R = Rult (1 - exp(-10 D / in))^0.55, and the farthest bolt at D = 0.34 in (Crawford and Kulak, from
/// 3/4 in A325 bolts; AISC Manual, Part 7). It gives 0.9815 Rult there, which is read in two ways.
///
/// ```
/// use shankline::strength::group::DeformationLaw;
/// use shankline::units::inches;
/// assert!((DeformationLaw::Aisc.share(inches(0.34)) - 0.9815).abs() < 5e-5);
/// assert_eq!(DeformationLaw::FarthestAtUltimate.share(inches(0.34)), 1.0);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum DeformationLaw {
    /// As the coefficient tables of the AISC Manual have it: the farthest bolt carries 0.9815 of its strength.
    #[default]
    Aisc,
    /// As textbooks have it: the curve is raised until the farthest bolt carries its strength. 1.9 % more.
    FarthestAtUltimate,
}

impl DeformationLaw {
    /// R / Rult at a deformation, which must not be negative (0 is returned for those and NaN).
    ///
    /// ```
    /// use shankline::{strength::group::DeformationLaw, units::inches};
    /// assert_eq!(DeformationLaw::Aisc.share(inches(0.0)), 0.0);
    /// ```
    #[must_use]
    pub fn share(self, deformation: Length) -> f64 {
        self.factor() * curve((10.0 * deformation.value / INCH).max(0.0))
    }

    pub(super) fn factor(self) -> f64 {
        match self {
            Self::Aisc => 1.0,
            Self::FarthestAtUltimate => 1.0 / curve(FARTHEST),
        }
    }
}

/// Forces and capacity by the instantaneous centre; see [`BoltPattern::instantaneous_centre`].
///
/// ```
/// use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
/// use shankline::units::{degrees, inches, pounds_force};
/// # fn main() -> Result<(), shankline::Error> {
/// // AISC Manual, Part 7: one line of 4 bolts, 3 in apart, load at 3 in: C = 2.81.
/// let line = BoltPattern::rows_and_columns(4, 1, inches(3.0), inches(3.0))?;
/// let load = PlaneLoad::eccentric(&line, pounds_force(30e3), inches(3.0), degrees(0.0));
/// let group = line.instantaneous_centre(&[load], DeformationLaw::Aisc)?;
/// assert!((group.coefficient.unwrap() - 2.81).abs() < 0.005);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct InstantaneousCentre {
    /// The bolts.
    pub pattern: BoltPattern,
    /// All loads together.
    pub load: PlaneResultant,
    /// How bolts deform.
    pub law: DeformationLaw,
    /// About which point the plate turns; `None` if it does not turn, or about a point beyond a kilometre.
    pub centre: Option<Point>,
    /// On each bolt under the given loads, if they just reach the capacity. They add up to the loads.
    pub forces: Vec<BoltForce>,
    /// Of each bolt at the capacity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "super::pattern::quantities")
    )]
    pub deformations: Vec<Length>,
    /// Which bolt deforms most, counted from 0; the first of equals.
    pub governing: usize,
    /// Ultimate shear strength Rult that a bolt of relative area 1 needs for these loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub strength_needed: Force,
    /// C = load / Rult at capacity, the number of bolts that count; `None` for a moment alone.
    pub coefficient: Option<f64>,
    /// Steps of the search.
    pub iterations: usize,
    /// Load out of balance over the sum of the bolt forces; at most 1e-10.
    pub residual: f64,
}

impl BoltPattern {
    /// Capacity by the instantaneous centre of rotation: rigid plates, deformations of the bolts in
    /// proportion to their distance from one point and forces at right angles to it by the
    /// [`DeformationLaw`]; the point is where forces and moments balance.
    ///
    /// Published: Crawford and Kulak (1971); AISC Manual of Steel Construction, Part 7. The load may have
    /// any direction, the pattern any shape. The curve is that of bearing-type joints of ductile bolts: not for slip
    /// or brittle plates, and every bolt must be able to carry its force in bearing and tear-out.
    ///
    /// # Errors
    ///
    /// Those of [`BoltPattern::elastic`]; [`Error::OutOfRange`] for no load at all; [`Error::Mismatch`]
    /// if the search does not balance the forces.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
    /// use shankline::units::{degrees, inches, pounds_force};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pattern = BoltPattern::rows_and_columns(3, 2, inches(3.0), inches(5.5))?;
    /// let load = PlaneLoad::eccentric(&pattern, pounds_force(40e3), inches(6.0), degrees(30.0));
    /// let group = pattern.instantaneous_centre(&[load], DeformationLaw::Aisc)?;
    /// let sum = group.forces.iter().map(|force| force.y).fold(pounds_force(0.0), |a, b| a + b);
    /// assert!((sum - load.force_y).abs() < pounds_force(1e-3));
    /// # Ok(())
    /// # }
    /// ```
    pub fn instantaneous_centre(
        &self,
        loads: &[PlaneLoad],
        law: DeformationLaw,
    ) -> Result<InstantaneousCentre, Error> {
        let load = PlaneResultant::of(loads, self)?;
        // In one spot any radius will do: there is no moment.
        let (radius, moment) = match self.gyration() {
            Some(radius) => (radius, load.moment.value / radius),
            None => (1.0, 0.0),
        };
        let size: Force = from_base(hypot(load.force.value, moment));
        let size = positive("load", size)?.value;
        let unit = [
            load.force_x.value / size,
            load.force_y.value / size,
            moment / size,
        ];
        let bolts = self
            .offsets()
            .map(move |(x, y, area)| (x / radius, y / radius, area));
        let found = ultimate(&bolts, unit).map_err(|residual| {
            Error::Mismatch(format!(
                "the search for the instantaneous centre ended {residual:e} of the bolt forces out of balance"
            ))
        })?;
        let needed = size / (found.factor * law.factor());
        self.result(load, law, &found, radius, needed)
    }

    fn result(
        &self,
        load: PlaneResultant,
        law: DeformationLaw,
        found: &Solution,
        radius: f64,
        needed: f64,
    ) -> Result<InstantaneousCentre, Error> {
        let motion: Vector = found.motion;
        let count = self.bolts().len();
        let (mut forces, mut deformations) = (Vec::with_capacity(count), Vec::with_capacity(count));
        let (mut governing, mut most) = (0, 0.0);
        for (n, (x, y, area)) in self.offsets().enumerate() {
            let (dx, dy) = displacement(motion, x / radius, y / radius);
            let d = sqrt(dx * dx + dy * dy);
            let chord = if d > 0.0 { curve(d) / d } else { 0.0 };
            let each = area * needed * law.factor() * chord;
            forces.push(BoltForce::new(each * dx, each * dy)?);
            deformations.push(from_base(0.1 * INCH * d));
            if d > most * (1.0 + 1e-9) {
                (governing, most) = (n, d);
            }
        }
        let strength_needed = positive("strength needed", from_base(needed))?;
        // Against the moment, a smaller force is rounding.
        let alone = load.force.value * radius <= 1e-9 * load.moment.value.abs();
        Ok(InstantaneousCentre {
            centre: centre(self, radius * motion[0], radius * motion[1], motion[2]),
            pattern: self.clone(),
            load,
            law,
            forces,
            deformations,
            governing,
            strength_needed,
            coefficient: (!alone).then_some(load.force.value / needed),
            iterations: found.iterations,
            residual: found.residual,
        })
    }
}

impl InstantaneousCentre {
    /// Greatest force in the direction of the load, C Rn, if a bolt of relative area 1 carries `strength`.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite, [`Error::Mismatch`] if
    /// the load is a moment alone.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
    /// use shankline::units::{degrees, inches, pounds_force};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let line = BoltPattern::rows_and_columns(3, 1, inches(3.0), inches(3.0))?;
    /// let load = PlaneLoad::eccentric(&line, pounds_force(1.0), inches(3.0), degrees(0.0));
    /// let group = line.instantaneous_centre(&[load], DeformationLaw::Aisc)?;
    /// assert!((group.capacity(pounds_force(10e3))? - pounds_force(17.5e3)).abs() < pounds_force(60.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn capacity(&self, strength: Force) -> Result<Force, Error> {
        positive("strength of a bolt", strength)?;
        let coefficient = self.coefficient.ok_or_else(|| {
            Error::Mismatch("the load is a moment alone: ask for the moment".to_string())
        })?;
        positive("capacity", coefficient * strength)
    }

    /// Size of the greatest moment about the centroid in the ratio of the loads, if a bolt of relative area 1
    /// carries `strength`.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
    /// use shankline::units::{millimetres, newton_metres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let flange = BoltPattern::circle(8, millimetres(200.0))?;
    /// let twist = PlaneLoad::new(newtons(0.0), newtons(0.0), millimetres(0.0), millimetres(0.0))
    ///     .with_moment(newton_metres(1.0));
    /// let group = flange.instantaneous_centre(&[twist], DeformationLaw::FarthestAtUltimate)?;
    /// let moment = group.moment_capacity(newtons(1000.0))?;
    /// assert!((moment.value - 800.0).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    pub fn moment_capacity(&self, strength: Force) -> Result<Torque, Error> {
        positive("strength of a bolt", strength)?;
        let times = strength.value / self.strength_needed.value;
        crate::error::not_negative("capacity", times * self.load.moment.abs())
    }

    /// The strength needed against the resistance of a bolt of relative area 1.
    ///
    /// # Errors
    ///
    /// Those of [`Check::new`].
    ///
    /// ```
    /// use shankline::strength::check::Level;
    /// use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
    /// use shankline::units::{degrees, inches, pounds_force};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let line = BoltPattern::rows_and_columns(4, 1, inches(3.0), inches(3.0))?;
    /// let load = PlaneLoad::eccentric(&line, pounds_force(30e3), inches(3.0), degrees(0.0));
    /// let group = line.instantaneous_centre(&[load], DeformationLaw::Aisc)?;
    /// // 30 / (2.81 x 17.9)
    /// let check = group.check(pounds_force(17.9e3), Level::Design)?;
    /// assert!((check.utilisation.value - 0.596).abs() < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, resistance: Force, level: Level) -> Result<Check, Error> {
        let place = Place::Bolt(self.governing.saturating_add(1));
        Check::new(
            Mode::BoltShear,
            place,
            self.strength_needed,
            resistance,
            level,
            methods::INSTANTANEOUS_CENTRE,
        )
    }
}
