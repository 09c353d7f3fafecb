//! Least distances of holes from edges and from each other.

use super::{Ply, PlyMethod};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::parts::SAME_LENGTH;
use crate::units::Length;
use alloc::vec::Vec;
use core::fmt;

/// Which distance of a hole.
///
/// ```
/// use shankline::strength::ply::DistanceKind;
/// assert_eq!(DistanceKind::End.to_string(), "end distance");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum DistanceKind {
    /// To the end along the load, e1.
    End,
    /// To the side across the load, e2.
    Edge,
    /// To the next hole along the load, p1.
    Pitch,
    /// To the next hole across the load, p2.
    Gauge,
}

impl fmt::Display for DistanceKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::End => "end distance",
            Self::Edge => "edge distance",
            Self::Pitch => "pitch of the holes",
            Self::Gauge => "gauge of the holes",
        })
    }
}

/// A distance that is less than a code wants.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::{DistanceKind, Ply, PlyMethod};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let plate = Ply { end_distance: Some(millimetres(20.0)), ..Ply::of(a36, millimetres(10.0), millimetres(18.0)) };
/// let short = plate.short_distances(millimetres(16.0), PlyMethod::En1993)?;
/// assert_eq!(short[0].kind, DistanceKind::End); // 1.2 x 18 = 21.6 mm
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShortDistance {
    /// Which distance.
    pub kind: DistanceKind,
    /// What it is.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub distance: Length,
    /// What it must be at least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub least: Length,
    cautions: Cautions,
}

impl ShortDistance {
    /// What the user must be told.
    ///
    /// ```
    /// # use shankline::strength::ply::ShortDistance;
    /// fn recalled(short: &ShortDistance) -> bool {
    ///     short.cautions().iter().next().is_some()
    /// }
    /// ```
    #[must_use]
    pub const fn cautions(&self) -> Cautions {
        self.cautions
    }
}

impl Ply {
    /// The known distances that are less than the method's code wants.
    ///
    /// EN 1993-1-8 Table 3.3 (read in a worked example and a design sheet): e1 and e2 at least 1.2 d0, p1 2.2 d0,
    /// p2 2.4 d0. AISC 360 J3.3 (recalled): p1 and p2 at least 2 2/3 d. MIL-HDBK-5: e1 at least 1.5 d,
    /// below that by test. Machine design has none; an edge of two diameters is FAA AC 43.13-1B's
    /// (recalled).
    ///
    /// # Errors
    ///
    /// As [`resistances`](Self::resistances) for the dimensions.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Ply, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let a36 = PlyMaterial::find("ASTM A36 steel")?;
    /// let plate = Ply { pitch: Some(inches(2.25)), ..Ply::of(a36, inches(0.5), inches(0.8125)) };
    /// let method = PlyMethod::Aisc360 { edition: AiscEdition::E2016, deformation_matters: true };
    /// assert!(plate.short_distances(inches(0.75), method)?.is_empty()); // 3 d
    /// # Ok(())
    /// # }
    /// ```
    pub fn short_distances(
        &self,
        diameter: Length,
        method: PlyMethod,
    ) -> Result<Vec<ShortDistance>, Error> {
        self.check_inputs(diameter)?;
        let (d, d0) = (diameter, self.hole);
        let recalled = |method| Some(Caution::MethodFromMemory { method });
        let (limits, caution) = match method {
            PlyMethod::En1993 => (
                [
                    Some(1.2 * d0),
                    Some(1.2 * d0),
                    Some(2.2 * d0),
                    Some(2.4 * d0),
                ],
                None,
            ),
            PlyMethod::Aisc360 { .. } => (
                [None, None, Some(8.0 / 3.0 * d), Some(8.0 / 3.0 * d)],
                recalled("AISC 360 J3.3"),
            ),
            PlyMethod::MilHdbk5 { .. } => ([Some(1.5 * d), None, None, None], None),
            PlyMethod::MachineDesign { .. } => ([None; 4], None),
        };
        let own = [
            self.end_distance,
            self.edge_distance,
            self.pitch,
            self.gauge,
        ];
        let kinds = [
            DistanceKind::End,
            DistanceKind::Edge,
            DistanceKind::Pitch,
            DistanceKind::Gauge,
        ];
        let short = kinds.into_iter().zip(own).zip(limits);
        Ok(short
            .filter_map(|((kind, distance), least)| {
                let (distance, least) = (distance?, least?);
                // A distance that was rounded to the limit is not short of it.
                (distance < least - SAME_LENGTH).then_some(ShortDistance {
                    kind,
                    distance,
                    least,
                    cautions: Cautions::default().with(caution),
                })
            })
            .collect())
    }
}
