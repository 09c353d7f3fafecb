//! What a ply bears: bearing at the hole, tear-out to its end, its net and gross section; and the bolt in it.
//!
//! | method | bearing | bearing on the bolt | tear-out | net section | gross section |
//! |---|---|---|---|---|---|
//! | [`MachineDesign`](PlyMethod::MachineDesign) | Sy d t | Sy of the bolt d t | 2 x 0.577 Sy Lc t | Sy (w - dh) t | Sy w t |
//! | [`Aisc360`](PlyMethod::Aisc360) | 2.4 Fu d t, or 3.0 where the deformation does not matter | not needed | 1.2 Fu Lc t, or 1.5 | Fu (w - dh - 1/16 in) t | Fy w t |
//! | [`En1993`](PlyMethod::En1993) | k1 ab fu d t | in ab | in ab | 0.9 fu (w - d0) t | fy w t |
//! | [`MilHdbk5`](PlyMethod::MilHdbk5) | Fbru d t; without yield Fbry d t | none | in Fbru, by e / D | none | none |
//! | [`Bs5950`](PlyMethod::Bs5950) | kbs min(d, e1 / 2) t pbs | d t pbb | in the bearing | Ke py (w - dh) t | py w t |
//! | [`Is800`](PlyMethod::Is800) | 2.5 kb d t fu | in kb | in kb | 0.9 fu (w - d0) t | fy w t |
//! | [`As4100`](PlyMethod::As4100) | 3.2 d t fu | not needed | ae t fu | 0.85 fu (w - dh) t | fy w t |
//! | [`CsaS16`](PlyMethod::CsaS16) | 3 d t Fu | not needed | 0.6 (Fy + Fu) / 2 x 2 e1 t | Fu (w - dh - 2 mm) t | Fy w t |
//!
//! d bolt, dh = d0 hole (a slot counts with its length where it lies in the way), t ply, w width that the load of
//! one bolt comes through, e1 from the hole's centre to the end along the load, e2 to the side, p1 and p2 to the
//! next holes along and across, Lc the clear distance: the lesser of e1 - dh/2 at the end and p1 - dh inside.
//!
//! Each mode asks for what it needs and no more: [`Ply::assess`] says of every one of them what it bears, what it
//! misses, or why there is none ([`PlyOutcome`]). [`Ply::distances`] judges distances, [`Hole::classify`] holes,
//! [`Ply::single_lap`] the limit of a single lap, [`shared_resistance`] plies that share a load.
//!
//! Factors: machine design divides by nd; AISC 0.75 and 2.00, gross section 0.90 and 1.67; EN 1.25 and, in the
//! gross section, 1.0; MIL-HDBK-5 divides by the ultimate factor and the fitting factor, its yield in bearing by the
//! fitting factor alone.
//!
//! EN: ab = min(e1 / (3 d0), p1 / (3 d0) - 1/4, fub / fu, 1), k1 = min(2.8 e2 / d0 - 1.7, 1.4 p2 / d0 - 1.7,
//! 2.5), times [`HoleKind::en_bearing_factor`].
//!
//! BS 5950: pbs 460, 550 and 670 N/mm2 of S275, S355 and S460 (Table 32) and of what is as strong, 0.67 (Us + Ys) of other
//! steels; pbb 460, 1000 and 1300 of classes 4.6, 8.8 and 10.9 (Table 31), by the strengths of the bolt; kbs 1, 0.7 in
//! oversize holes and short slots, 0.5 in long ones. In sections py is Ys, at most Us / 1.2, and Ke 1.2, 1.1 and 1.0 up to 275, 355
//! and 460 N/mm2, at most Us / (1.2 py). They are design strengths.
//!
//! IS 800: kb = min(e1 / (3 d0), p1 / (3 d0) - 1/4, fub / fu, 1), in oversize holes and short slots 0.7 of it and in long
//! ones 0.5 (recalled); over 1.25, the gross section over 1.10. AS 4100: ae is the clear distance Lc and half the bolt; times
//! 0.90. CSA S16: times 0.80 in bearing, 0.75 in tear-out and net section, 0.90 in the gross section; Fy in place of the mean
//! above 460 N/mm2 (recalled). AS 4100 and CSA S16 are here for standard holes only.
//!
//! Tear-out in machine design: Shigley's Example 8-6 takes two planes of the length e1 from the *centre* of the
//! hole. There is no metal in the first dh/2 of them, so that overstates the area by e1 / (e1 - dh/2): 1.5 times at
//! e1 = 1.5 dh, 2.25 times at 0.9 dh. Here the planes begin at the edge of the hole, as a course on riveted joints
//! has the margin, (e - d/2) t, and as AISC has Lc.
//!
//! Sources: Shigley, Mechanical Engineering Design, 9th ed., Example 8-6 (bearing of members and bolts, sections);
//! AISC 360 J3.10 and D2 (bearing and tear-out met in a handbook example and its factors read, J3.10 of 2010; J3.11
//! and D2 of 2022 in a copy); EN 1993-1-8:2005 Tables 3.3 and 3.4 (the page of 3.4 itself read, with its
//! factors for oversize holes and slots), 3.6.1(10) in a steelmaker's tables and a bridge textbook, and EN
//! 1993-1-1 6.2.3 in a European design guide; MIL-HDBK-5 as quoted. Block shear is in
//! [`BlockShear`], plates that carry the load in shear in [`PlateShear`].

mod assess;
mod block;
mod distances;
mod holes;
mod in_shear;
mod method;
mod modes;
mod pressed;
mod result;
mod shared;
mod stagger;

pub(crate) use block::BlockRule;
pub use block::{BlockMethod, BlockResistance, BlockShear, block_shear};
pub use distances::{
    DistanceConditions, DistanceFinding, DistanceKind, DistanceRule, DistanceStanding, EdgeFinish,
    Exposure, PlyDistances,
};
pub use holes::{Hole, HoleClass, HoleKind, HoleRule, Slot, SlotDirection};
pub use in_shear::{PlateShear, PlateShearMethod, PlateShearResistance, plate_shear};
pub(crate) use in_shear::{plate_bending, shortest_plate_that_buckles};
pub use method::PlyMethod;
pub use modes::{PlyMode, PlyNeed, PlyOutcome};
pub use result::PlyResistance;
pub use shared::{SharedResistance, shared_resistance};
pub use stagger::{Stagger, StaggerRule};

pub(in crate::strength) use distances::{AskedDistance, Limits};
pub(crate) use modes::Asked;
pub(in crate::strength) use modes::{Geometry, NOTHING, OTHER_HOLES, lesser, need};
pub(in crate::strength) use pressed::euler;
pub(crate) use pressed::{Pressed, PressedPlate, length_between, pressed_plate};

use super::code::en_1993;
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::material::BoltStrength;
use crate::tables::plies::PlyMaterial;
use crate::units::{Length, Stress};

/// What a method asks of the bolt in the ply.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::PlyBolt;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = PlyBolt::of(&PropertyClass::Class8_8.strength(millimetres(20.0))?);
/// assert_eq!(bolt.tensile_strength, Some(megapascals(800.0))); // EN's, not the 830 of ISO 898-1
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct PlyBolt {
    /// Yield strength, for machine design.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Tensile strength fub of EN 1993-1-8 Table 3.1, for its bearing.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength: Option<Stress>,
}

impl PlyBolt {
    /// The strengths of a grade: its yield, or its proof stress where no yield is given, and fub if EN 1993-1-8
    /// has the class.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::PlyBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = PlyBolt::of(&SaeGrade::Grade5.strength(inches(0.75))?);
    /// assert_eq!((bolt.yield_strength, bolt.tensile_strength), (Some(ksi(92.0)), None));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of(strength: &BoltStrength) -> Self {
        Self {
            yield_strength: strength.yield_strength.or(strength.proof_stress),
            tensile_strength: en_1993::tensile_strength_if_listed(strength.grade),
        }
    }
}

/// A ply around one hole. Dimensions that are not known are left out: the modes that need them say so.
///
/// ```
/// use shankline::strength::ply::Ply;
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::inches;
/// # fn main() -> Result<(), shankline::Error> {
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let lug = Ply { end_distance: Some(inches(1.5)), ..Ply::of(a36, inches(0.375), inches(0.9375)) };
/// assert!(lug.width.is_none());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Ply {
    /// Thickness t.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// Hole diameter dh = d0; of a slot the width.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub hole: Length,
    /// Kind of hole.
    pub hole_kind: HoleKind,
    /// Length of the slot from end to end, if the hole is one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub slot_length: Option<Length>,
    /// Yield strength Sy = Fy = fy.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Tensile strength Fu = fu.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub tensile_strength: Option<Stress>,
    /// Ultimate bearing strength Fbru at its edge distance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_strength: Option<Stress>,
    /// Yield bearing strength Fbry at its edge distance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub bearing_yield: Option<Stress>,
    /// From the centre of the hole to the end of the ply, along the load, e1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub end_distance: Option<Length>,
    /// From the centre of the hole to the side of the ply, across the load, e2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub edge_distance: Option<Length>,
    /// To the next hole along the load, p1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub pitch: Option<Length>,
    /// To the next hole across the load, p2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub gauge: Option<Length>,
    /// Width that the load of one bolt comes through, w.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub width: Option<Length>,
}

impl Ply {
    /// A ply of a material of the tables, without any distance. Its strengths are those of its thickness; outside
    /// the thicknesses they were published for it has none, and
    /// [`PlyMaterial::at_thickness`] says why.
    ///
    /// ```
    /// use shankline::strength::ply::Ply;
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::units::millimetres;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, millimetres(10.0), millimetres(18.0));
    /// assert!(plate.yield_strength.is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of(material: &PlyMaterial, thickness: Length, hole: Length) -> Self {
        let material = material.at_thickness(thickness).ok();
        Self {
            yield_strength: material.and_then(|material| material.yield_strength),
            tensile_strength: material.and_then(|material| material.tensile_strength),
            ..Self::without_strengths(thickness, hole)
        }
    }

    /// A ply whose material is not known: the modes that want a strength say so.
    ///
    /// ```
    /// use shankline::{strength::ply::Ply, units::millimetres};
    /// assert_eq!(Ply::without_strengths(millimetres(10.0), millimetres(14.0)).yield_strength, None);
    /// ```
    #[must_use]
    pub const fn without_strengths(thickness: Length, hole: Length) -> Self {
        Self {
            thickness,
            hole,
            hole_kind: HoleKind::Standard,
            slot_length: None,
            yield_strength: None,
            tensile_strength: None,
            bearing_strength: None,
            bearing_yield: None,
            end_distance: None,
            edge_distance: None,
            pitch: None,
            gauge: None,
            width: None,
        }
    }

    /// The ply with the ultimate and yield bearing strengths of a material at its end distance over the hole, for
    /// [`PlyMethod::MilHdbk5`]. It gets none where the table has none, or the end distance is not given.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::Ply;
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = PlyMaterial::find("2024-T3 aluminium")?;
    /// let plain = Ply::of(sheet, inches(0.1), inches(0.25));
    /// let ply = Ply { end_distance: Some(inches(0.5)), ..plain }.with_bearing_of(sheet);
    /// assert_eq!(ply.bearing_strength, Some(ksi(129.0))); // e = 2 D
    /// assert_eq!(plain.with_bearing_of(sheet).bearing_strength, None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn with_bearing_of(self, material: &PlyMaterial) -> Self {
        let in_range = material.at_thickness(self.thickness).is_ok();
        let row = self
            .end_distance
            .filter(|_| in_range)
            .and_then(|end| material.bearing_at((end / self.hole).value).ok());
        Self {
            bearing_strength: row.map(|row| row.ultimate_strength),
            bearing_yield: row.and_then(|row| row.yield_strength),
            ..self
        }
    }

    /// How far the hole reaches along the load; none for a slot of unknown length.
    fn hole_along(&self) -> Option<Length> {
        if self.hole_kind.is_slot_along() {
            self.slot_length
        } else {
            Some(self.hole)
        }
    }

    /// How far the hole reaches across the load; none for a slot of unknown length.
    pub(in crate::strength) fn hole_across(&self) -> Option<Length> {
        if self.hole_kind.is_slot_across() {
            self.slot_length
        } else {
            Some(self.hole)
        }
    }

    fn check_inputs(&self, diameter: Length) -> Result<(), Error> {
        sane_length("bolt diameter", diameter)?;
        sane_length("ply thickness", self.thickness)?;
        sane_length("hole diameter", self.hole)?;
        if self.hole < diameter {
            return Err(out_of_range(
                "hole diameter",
                self.hole,
                Allowed::AtLeast(diameter.into()),
            ));
        }
        for (name, stress) in [
            ("yield strength of the ply", self.yield_strength),
            ("tensile strength of the ply", self.tensile_strength),
            ("bearing strength of the ply", self.bearing_strength),
            ("yield strength of the ply in bearing", self.bearing_yield),
        ] {
            if let Some(stress) = stress {
                positive(name, stress)?;
            }
        }
        if let Some(slot) = self.slot_length {
            sane_length("slot length", slot)?;
            if slot < self.hole {
                let allowed = Allowed::AtLeast(self.hole.into());
                return Err(out_of_range("slot length", slot, allowed));
            }
        }
        let half = 0.5 * self.hole;
        for (name, distance, least) in [
            ("end distance", self.end_distance, half),
            ("edge distance", self.edge_distance, half),
            ("pitch of the holes", self.pitch, self.hole),
            ("gauge of the holes", self.gauge, self.hole),
            ("width of the ply", self.width, self.hole),
        ] {
            if let Some(distance) = distance {
                sane_length(name, distance)?;
                if distance <= least {
                    return Err(out_of_range(name, distance, Allowed::Above(least.into())));
                }
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres};
    use alloc::string::ToString;

    const METHOD: PlyMethod = PlyMethod::MachineDesign { design_factor: 2.0 };

    /// A bolt of 16 mm fits a hole of 16 mm; nothing else of a ply may lie within the hole, and a slot is no shorter than wide.
    #[test]
    fn dimensions_at_their_limits() {
        type Set = fn(&mut Ply, Length);
        let parts: [(&str, Set, f64, bool); 7] = [
            ("hole diameter", |ply, own| ply.hole = own, 16.0, true),
            (
                "slot length",
                |ply, own| ply.slot_length = Some(own),
                18.0,
                true,
            ),
            (
                "end distance",
                |ply, own| ply.end_distance = Some(own),
                9.0,
                false,
            ),
            (
                "edge distance",
                |ply, own| ply.edge_distance = Some(own),
                9.0,
                false,
            ),
            (
                "pitch of the holes",
                |ply, own| ply.pitch = Some(own),
                18.0,
                false,
            ),
            (
                "gauge of the holes",
                |ply, own| ply.gauge = Some(own),
                18.0,
                false,
            ),
            (
                "width of the ply",
                |ply, own| ply.width = Some(own),
                18.0,
                false,
            ),
        ];
        for (what, set, limit, itself) in parts {
            for (off, fits) in [(-0.001, false), (0.0, itself), (0.001, true)] {
                let mut ply = Ply::without_strengths(millimetres(10.0), millimetres(18.0));
                set(&mut ply, millimetres(limit + off));
                let found = ply.assess(millimetres(16.0), PlyBolt::default(), METHOD);
                match found {
                    Ok(_) => assert!(fits, "{what} {off}"),
                    Err(error) => assert!(!fits && error.to_string().contains(what), "{error}"),
                }
            }
        }
    }

    /// A strength is known or not; none is zero.
    #[test]
    fn strengths_are_positive_where_given() {
        let plain = Ply::without_strengths(millimetres(10.0), millimetres(18.0));
        let none = Some(megapascals(0.0));
        for ply in [
            Ply {
                yield_strength: none,
                ..plain
            },
            Ply {
                tensile_strength: none,
                ..plain
            },
            Ply {
                bearing_strength: none,
                ..plain
            },
        ] {
            assert!(
                ply.assess(millimetres(16.0), PlyBolt::default(), METHOD)
                    .is_err()
            );
        }
        for bolt in [
            PlyBolt {
                yield_strength: none,
                ..PlyBolt::default()
            },
            PlyBolt {
                tensile_strength: none,
                ..PlyBolt::default()
            },
        ] {
            assert!(plain.assess(millimetres(16.0), bolt, METHOD).is_err());
        }
        assert!(
            plain
                .assess(millimetres(16.0), PlyBolt::default(), METHOD)
                .is_ok()
        );
    }
}
