//! Where the shear planes of a stack lie, and what they cut of a screw.

use super::{Added, Stack};
use crate::error::{Error, not_negative};
use crate::joint::Candidate;
use crate::parts::{ScrewLength, Zone};
use crate::spread::Spread;
use crate::units::Length;

/// A shear plane seen against one screw.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = Spread::exact(millimetres(10.0));
/// let stack = Stack::builder().ply("left", plate).ply("right", plate).shear_planes([1]).build()?;
/// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M10".parse()?)?;
/// let plane = stack.planes(&screws.length(millimetres(35.0))?).next().unwrap();
/// assert_eq!((plane.after_ply, plane.worst), (1, Zone::Thread)); // threaded to the head
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Plane {
    /// The plane lies after this ply, counted from 1 at the head.
    pub after_ply: usize,
    /// Distance from the bearing face of the head; across a gap, of the far side of the gap.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::serialize")
    )]
    pub position: Spread<Length>,
    /// What it cuts if every ply has its nominal thickness.
    pub nominal: Zone,
    /// What it cuts in the worst case: thickest plies, shortest body.
    pub worst: Zone,
}

impl Stack {
    /// Distances of the shear planes from the bearing face of the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = millimetres(10.0).plus_minus(millimetres(0.5));
    /// let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// assert_eq!(stack.plane_positions()[0].nominal, millimetres(10.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn plane_positions(&self) -> &[Spread<Length>] {
        &self.positions
    }

    /// Every shear plane against one screw. Washers under the nut do not move them.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = inches(0.500).plus_minus(inches(0.015));
    /// let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
    /// let plane = stack.planes(&screws.length(inches(2.0))?).next().unwrap();
    /// assert_eq!((plane.nominal, plane.worst), (Zone::RunOut, Zone::RunOut)); // LB 0.365 in
    /// # Ok(())
    /// # }
    /// ```
    pub fn planes<'a>(&'a self, screw: &ScrewLength) -> impl Iterator<Item = Plane> + use<'a> {
        self.planes_moved(screw, Spread::exact(Length::default()))
    }

    /// The same against a candidate, with everything pushed towards the nut by the washers that it adds under
    /// the head.
    pub(crate) fn planes_of<'a>(
        &'a self,
        candidate: &Candidate,
    ) -> impl Iterator<Item = Plane> + use<'a> {
        let moved = self.head_washers(candidate.washers_added_under_head);
        self.planes_moved(&candidate.screw, moved)
    }

    fn planes_moved<'a>(
        &'a self,
        screw: &ScrewLength,
        moved: Spread<Length>,
    ) -> impl Iterator<Item = Plane> + use<'a> {
        let screw = *screw;
        let planes = self.parts.shear_planes.iter();
        planes
            .zip(&self.positions)
            .map(move |(&after_ply, &position)| {
                let position = position + moved;
                Plane {
                    after_ply,
                    position,
                    nominal: screw.zone_at(position.nominal),
                    worst: screw.zone_at(position.max),
                }
            })
    }

    /// By how much the joint can (or, negative, cannot) have every shear plane on guaranteed
    /// shank and still clamp, with any length of a screw whose transition length is `transition`.
    ///
    /// margin = (plies after the last plane + nut-side washers, least thickness) - Y -
    /// (max - min of everything up to the last plane), with Y = LG max - LB min. When it is
    /// negative, no length of the product does both. `None` without shear planes.
    ///
    /// Source: follows from LB >= x max and LG <= G min; own derivation.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a transition length that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let leaf = Spread::exact(millimetres(2.0));
    /// let stack = Stack::builder().ply("a", leaf).ply("b", leaf).shear_planes([1]).build()?;
    /// // M10: Y = 5 P = 7.5 mm; a 2 mm ply never suffices
    /// let margin = stack.shank_and_clamp_margin(millimetres(7.5), 0)?.unwrap();
    /// assert!((margin + millimetres(5.5)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn shank_and_clamp_margin(
        &self,
        transition: Length,
        washers_added: usize,
    ) -> Result<Option<Length>, Error> {
        not_negative("transition length", transition)?;
        let added = Added {
            under_nut: washers_added,
            under_head: 0,
        };
        Ok(self.positions.last().map(|last| {
            let beyond = self.grip_with(added).min - last.min;
            beyond - transition - (last.max - last.min)
        }))
    }
}
