//! Bolt tensions of a moment out of the shear plane.

use alloc::{string::ToString, vec::Vec};

use super::load::{BoltForce, PlaneLoad};
use super::pattern::{BoltPattern, coordinate};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::tables::methods;
use crate::units::{Force, Length, Torque, from_base};

/// Where bolts feel nothing of a moment out of the plane.
///
/// ```
/// use shankline::{strength::group::NeutralAxis, units::millimetres};
/// let axis = NeutralAxis::LowestEdge { y: millimetres(-100.0) };
/// assert_ne!(axis, NeutralAxis::Centroid);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        deny_unknown_fields,
        rename_all = "snake_case"
    )
)]
#[non_exhaustive]
pub enum NeutralAxis {
    /// Through the centroid of the bolts, T = M a c / sum of a c^2: for bolts tightened until the plates do
    /// not part (Salmon and Johnson, Steel Structures, "initial tension"; recalled, not read). Below the
    /// axis the bolts get less tension, written as negative.
    Centroid,
    /// The plate tilts as a rigid body about its lowest edge, T = M a l / sum of a l^2 (Bhandari, Design of Machine
    /// Elements, Example 7.6, read in a public solution of it). For plates much stiffer than their bolts, without
    /// prying.
    LowestEdge {
        /// The edge: no bolt may be below it.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        y: Length,
    },
}

impl NeutralAxis {
    pub(super) const fn method(self) -> &'static Method {
        match self {
            Self::Centroid => methods::TENSION_ABOUT_CENTROID,
            Self::LowestEdge { .. } => methods::TENSION_ABOUT_EDGE,
        }
    }
}

/// Tensions of a moment out of the plane, with the direct shear; see [`BoltPattern::tension`].
///
/// ```
/// use shankline::strength::check::Level;
/// use shankline::strength::group::{BoltPattern, NeutralAxis};
/// use shankline::units::{millimetres, newton_metres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let pattern = BoltPattern::rows_and_columns(2, 2, millimetres(100.0), millimetres(80.0))?;
/// let group = pattern.tension(newton_metres(1000.0), NeutralAxis::Centroid, &[])?;
/// // 1000 N m over two pairs at 50 mm
/// assert!((group.tensions[3] - newtons(5000.0)).abs() < newtons(1e-6));
/// assert!(group.check_tension(newtons(6000.0), Level::Allowable)?.holds());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GroupTension {
    /// The bolts.
    pub pattern: BoltPattern,
    /// The moment, about an axis along x; it pulls on the upper bolts.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment: Torque,
    /// Where the neutral axis is taken.
    pub axis: NeutralAxis,
    /// Height of the neutral axis.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub axis_y: Length,
    /// Sum of a c^2 about the neutral axis.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub second_moment: crate::units::Area,
    /// Of each bolt; negative where the moment relieves it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "super::pattern::quantities")
    )]
    pub tensions: Vec<Force>,
    /// Shear of each bolt, by the elastic vector method.
    pub shears: Vec<BoltForce>,
    /// Which bolt has the greatest tension for its area, and of those the greatest shear; counted from 0.
    pub governing: usize,
    /// What the user must be told.
    pub cautions: Cautions,
}

impl BoltPattern {
    /// Bolt tensions of a moment out of the shear plane that pulls on the upper bolts, linear from a
    /// [`NeutralAxis`], together with the shear of loads in the plane. Without prying and without the preload.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a moment that is not positive and finite or tensions that overflow;
    /// [`Error::Mismatch`] for a bolt below the edge, or bolts that are all on the neutral axis; those of
    /// [`BoltPattern::elastic`].
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, NeutralAxis, PlaneLoad};
    /// use shankline::units::{millimetres, newton_metres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pattern = BoltPattern::rows_and_columns(2, 2, millimetres(100.0), millimetres(80.0))?;
    /// let edge = NeutralAxis::LowestEdge { y: millimetres(-80.0) };
    /// let weight = PlaneLoad::new(newtons(0.0), newtons(-4e3), millimetres(0.0), millimetres(0.0));
    /// let group = pattern.tension(newton_metres(1000.0), edge, &[weight])?;
    /// // 1000 x 0.13 / (2 x (0.13^2 + 0.03^2)) N, with 1 kN of shear
    /// assert!((group.tensions[group.governing] - newtons(3651.685)).abs() < newtons(1e-3));
    /// assert!((group.shears[group.governing].resultant - newtons(1000.0)).abs() < newtons(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn tension(
        &self,
        moment: Torque,
        axis: NeutralAxis,
        loads: &[PlaneLoad],
    ) -> Result<GroupTension, Error> {
        positive("moment out of the plane", moment)?;
        let shears = self.elastic(loads)?.forces;
        let (axis_y, caution) = match axis {
            NeutralAxis::Centroid => (self.centroid().y, Caution::of_method(axis.method())),
            NeutralAxis::LowestEdge { y } => (coordinate("height of the edge", y)?, None),
        };
        if matches!(axis, NeutralAxis::LowestEdge { .. })
            && self.bolts().iter().any(|b| b.y < axis_y)
        {
            return Err(Error::Mismatch("a bolt is below the edge".to_string()));
        }
        let arm = |y: Length| (y - axis_y).value;
        let second: f64 = self
            .bolts()
            .iter()
            .map(|b| b.relative_area * arm(b.y) * arm(b.y))
            .sum();
        // One micrometre, as for bolts in one spot. Coordinates are finite, so this is a number.
        if second <= 1e-12 * self.total {
            return Err(Error::Mismatch(
                "the bolts are all on the neutral axis and carry no moment".to_string(),
            ));
        }
        let each = moment.value / second;
        let mut tensions = Vec::with_capacity(self.bolts().len());
        let (mut governing, mut greatest, mut sheared) = (0, -1.0, -1.0);
        for (n, (bolt, shear)) in self.bolts().iter().zip(&shears).enumerate() {
            let tension: Force = from_base(each * bolt.relative_area * arm(bolt.y));
            crate::error::not_negative("tension of a bolt", tension.abs())?;
            let pull = tension.value / bolt.relative_area;
            let push = shear.resultant.value / bolt.relative_area;
            let equal = (pull - greatest).abs() <= 1e-12 * pull.abs();
            if (equal && push > sheared * (1.0 + 1e-12)) || (!equal && pull > greatest) {
                (governing, greatest, sheared) = (n, pull, push);
            }
            tensions.push(tension);
        }
        Ok(GroupTension {
            pattern: self.clone(),
            moment,
            axis,
            axis_y,
            second_moment: from_base(second),
            tensions,
            shears,
            governing,
            cautions: Cautions::default().with(caution),
        })
    }
}

impl GroupTension {
    /// The tension of the governing bolt against the resistance of a bolt of relative area 1. Tension and
    /// shear together need an interaction of their own.
    ///
    /// # Errors
    ///
    /// Those of [`Check::new`]; [`Error::Mismatch`] if the number of the governing bolt was changed to none there is.
    ///
    /// ```
    /// use shankline::strength::check::{Level, Mode};
    /// use shankline::strength::group::{BoltPattern, NeutralAxis};
    /// use shankline::units::{millimetres, newton_metres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pattern = BoltPattern::rows_and_columns(2, 1, millimetres(100.0), millimetres(80.0))?;
    /// let group = pattern.tension(newton_metres(1000.0), NeutralAxis::Centroid, &[])?;
    /// let check = group.check_tension(newtons(20e3), Level::Allowable)?;
    /// assert_eq!((check.mode, check.utilisation.value), (Mode::BoltTension, 0.5));
    /// assert_eq!(check.cautions().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn check_tension(&self, resistance: Force, level: Level) -> Result<Check, Error> {
        let (bolt, tension) = self.pattern.governing(self.governing, &self.tensions)?;
        let resistance = bolt.relative_area * resistance;
        let place = Place::Bolt(self.governing.saturating_add(1));
        let check = Check::new(
            Mode::BoltTension,
            place,
            tension,
            resistance,
            level,
            self.axis.method(),
        )?;
        Ok(check.warned(self.cautions.clone()))
    }
}
