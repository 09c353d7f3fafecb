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

mod block;
mod distances;
mod holes;
mod in_shear;
mod method;
mod modes;
mod pressed;
mod result;
mod shared;

pub(crate) use block::BlockRule;
pub use block::{BlockMethod, BlockResistance, BlockShear, Stagger, StaggerRule, block_shear};
pub use distances::{
    DistanceConditions, DistanceFinding, DistanceKind, DistanceRule, DistanceStanding, EdgeFinish,
    Exposure, PlyDistances,
};
pub use holes::{Hole, HoleClass, HoleKind, HoleRule, Slot, SlotDirection};
pub use in_shear::{PlateShear, PlateShearMethod, PlateShearResistance, plate_shear};
pub(crate) use in_shear::{plate_bending, shortest_plate_that_buckles};
pub use method::PlyMethod;
pub use modes::{PlyMode, PlyNeed, PlyOutcome};
pub use shared::{SharedResistance, shared_resistance};

use super::check::{Mode, Resistance};
pub(in crate::strength) use distances::{AskedDistance, Limits};
pub(crate) use modes::Asked;
use modes::MODES;
pub(in crate::strength) use modes::{Geometry, NOTHING, OTHER_HOLES, lesser, need};
pub(in crate::strength) use pressed::euler;
pub(crate) use pressed::{Pressed, PressedPlate, length_between, pressed_plate};

use super::code::{en_1993, mil_hdbk_5};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::material::BoltStrength;
use crate::source::Method;
use crate::tables::plies::PlyMaterial;
use crate::units::{Area, Length, Stress};
use alloc::vec::Vec;

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

/// Resistance of a ply in one mode, for the load of one bolt: coefficient x stress x area.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::{Level, Mode};
/// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// // 7/8 in bolt, 3/8 in A36 plate, 1.5 in from the end: 20.2 kip in a handbook example
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let plate = Ply { end_distance: Some(inches(1.5)), ..Ply::of(a36, inches(0.375), inches(0.9375)) };
/// let method = PlyMethod::Aisc360 { edition: AiscEdition::E2010, deformation_matters: true };
/// let outcome = plate.in_mode(Mode::TearOut, inches(0.875), PlyBolt::default(), method)?;
/// let tear_out = outcome.found().unwrap();
/// assert!((tear_out.resistance.at(Level::Design)?.get::<kip>() - 20.2).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyResistance {
    /// Mode of failure.
    pub mode: Mode,
    /// The method.
    pub method: PlyMethod,
    /// The ply.
    pub ply: Ply,
    /// Bolt diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// The bolt.
    pub bolt: PlyBolt,
    /// What multiplies stress and area.
    pub coefficient: f64,
    /// The strength that is used: of the ply, or of the bolt where the ply bears on it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
    /// The area it acts on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load.
    pub safety_factor: Option<f64>,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
    /// Clause of the method the resistance follows.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub clause: &'static Method,
    /// How the area follows from the ply, for the working.
    area_formula: &'static str,
    /// The size of the hole that stands in the way, for the working.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    hole_size: Length,
}

impl Ply {
    /// Every mode of the ply, and bearing on the bolt, with what became of it. No mode drops another.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a dimension or strength that is not positive and finite, a hole smaller than
    /// the bolt, a distance inside the hole, or a factor that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let a36 = PlyMaterial::find("ASTM A36 steel")?;
    /// let plate = Ply::of(a36, millimetres(10.0), millimetres(18.0));
    /// let bolt = PlyBolt::of(&PropertyClass::Class8_8.strength(millimetres(16.0))?);
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// let modes = plate.assess(millimetres(16.0), bolt, method)?;
    /// // Bearing of ply and bolt: no distance and no width is known.
    /// assert_eq!(modes.iter().filter(|mode| mode.outcome.found().is_some()).count(), 2);
    /// assert_eq!(modes[2].outcome, PlyOutcome::Missing(vec![PlyNeed::EndDistance]));
    /// # Ok(())
    /// # }
    /// ```
    pub fn assess(
        &self,
        diameter: Length,
        bolt: PlyBolt,
        method: PlyMethod,
    ) -> Result<Vec<PlyMode>, Error> {
        let asked = self.asked(diameter, bolt, method)?;
        let mut modes = Vec::with_capacity(MODES.len());
        for mode in MODES {
            let outcome = asked.in_mode(mode)?;
            modes.push(PlyMode { mode, outcome });
        }
        Ok(modes)
    }

    /// One mode by itself.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::{Level, Mode};
    /// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A grade 1 bolt is softer than the sheet it bears on: 36 ksi x 3/4 x 0.18 in / 2.
    /// let sheet = Ply::of(PlyMaterial::find("AISI 4130 steel")?, inches(0.18), inches(0.75));
    /// let bolt = PlyBolt::of(&SaeGrade::Grade1.strength(inches(0.75))?);
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// let outcome = sheet.in_mode(Mode::BoltBearing, inches(0.75), bolt, method)?;
    /// let allowable = outcome.found().unwrap().resistance.at(Level::Allowable)?;
    /// assert!(((allowable / pounds_force(2430.0)).value - 1.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn in_mode(
        &self,
        mode: Mode,
        diameter: Length,
        bolt: PlyBolt,
        method: PlyMethod,
    ) -> Result<PlyOutcome, Error> {
        self.asked(diameter, bolt, method)?.in_mode(mode)
    }

    /// The most the ply bears in a single lap with one row of bolts, which tilts them: EN 1993-1-8, 3.6.1(10), 1.5
    /// fu d t over 1.25. The clause wants washers under head and nut as well, hardened ones for classes 8.8 and
    /// 10.9 (recalled). A row is across the load: with a pitch along it there are two. Other methods have no such
    /// rule.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{check::Level, ply::{Ply, PlyMethod}};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("S235 steel")?, millimetres(5.0), millimetres(18.0));
    /// let outcome = plate.single_lap(millimetres(16.0), PlyMethod::En1993)?;
    /// let design = outcome.found().unwrap().resistance.at(Level::Design)?;
    /// // 1.5 x 360 x 16 x 5 / 1.25
    /// assert!(((design / newtons(34_560.0)).value - 1.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn single_lap(&self, diameter: Length, method: PlyMethod) -> Result<PlyOutcome, Error> {
        let asked = self.asked(diameter, PlyBolt::default(), method)?;
        en_1993::ply::single_lap(&asked)
    }

    /// The most the net section bears where the joint must not slip at the ultimate limit state, category C of EN
    /// 1993-1-8 3.4.1: it must not yield, (w - d0) t fy over 1.0 (EN 1993-1-1, 6.2.3(4), recalled). Other methods have
    /// no such rule.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{check::Level, ply::{Ply, PlyMethod}};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mut strap = Ply::of(PlyMaterial::find("S235 steel")?, millimetres(4.0), millimetres(22.0));
    /// strap.width = Some(millimetres(60.0));
    /// let outcome = strap.net_section_without_slip(millimetres(20.0), PlyMethod::En1993)?;
    /// let design = outcome.found().unwrap().resistance.at(Level::Design)?;
    /// // (60 - 22) x 4 x 235
    /// assert!(((design / newtons(35_720.0)).value - 1.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn net_section_without_slip(
        &self,
        diameter: Length,
        method: PlyMethod,
    ) -> Result<PlyOutcome, Error> {
        let asked = self.asked(diameter, PlyBolt::default(), method)?;
        en_1993::ply::net_section_without_slip(&asked)
    }

    /// The most the ply bears at limit load without yield, beside the ultimate strength of [`Mode::Bearing`]: MIL-HDBK-5, Fbry d t
    /// over the fitting factor, for 14 CFR 25.305 has no detrimental permanent deformation at limit load (recalled). Other methods
    /// have no such rule.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{check::Level, ply::{Ply, PlyMethod}};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = PlyMaterial::find("2024-T3 aluminium")?;
    /// let plain = Ply::of(sheet, inches(0.1), inches(0.25));
    /// let ply = Ply { end_distance: Some(inches(0.5)), ..plain }.with_bearing_of(sheet);
    /// let method = PlyMethod::MilHdbk5 { ultimate_factor: 1.5, fitting_factor: 1.15 };
    /// let outcome = ply.yield_in_bearing(inches(0.25), method)?;
    /// let allowable = outcome.found().unwrap().resistance.at(Level::Allowable)?;
    /// // 88 ksi x 0.25 in x 0.1 in / 1.15
    /// assert!((allowable - pounds_force(1913.0)).abs() < pounds_force(0.1));
    /// # Ok(())
    /// # }
    /// ```
    pub fn yield_in_bearing(
        &self,
        diameter: Length,
        method: PlyMethod,
    ) -> Result<PlyOutcome, Error> {
        let asked = self.asked(diameter, PlyBolt::default(), method)?;
        mil_hdbk_5::yield_in_bearing(&asked)
    }

    /// The question, its inputs looked at once for all modes.
    pub(crate) fn asked(
        &self,
        diameter: Length,
        bolt: PlyBolt,
        method: PlyMethod,
    ) -> Result<Asked<'_>, Error> {
        self.check_inputs(diameter)?;
        for (name, stress) in [
            ("yield strength of the bolt", bolt.yield_strength),
            ("tensile strength of the bolt", bolt.tensile_strength),
        ] {
            if let Some(stress) = stress {
                positive(name, stress)?;
            }
        }
        Ok(Asked {
            ply: self,
            diameter,
            bolt,
            method,
        })
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
