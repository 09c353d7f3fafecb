//! The engagement at which the bolt breaks first, and that which carries a load.

use super::{ThreadMaterial, handbook_stress_area};
use crate::derivation::{Derivation, Step};
use crate::error::{Error, positive};
use crate::tables::methods;
use crate::thread::ThreadFit;
use crate::thread::strip::{EngagedLength, StripAreas};
use crate::units::{Area, Force, Length, Stress};

/// Engagement at which the bolt breaks before any thread strips, as FED-STD-H28/2 and Machinery's
/// Handbook work it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{ThreadMaterial, minimum_engagement};
/// use shankline::uom::si::length::inch;
/// # fn main() -> Result<(), shankline::Error> {
/// // A 1/2-13 bolt of 90 ksi in cast iron of 30 ksi (strengths invented).
/// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
/// let bolt = ThreadMaterial::new(ksi(90.0), None)?;
/// let iron = ThreadMaterial::new(ksi(30.0), None)?;
/// let least = minimum_engagement(&fit, &bolt, &iron)?;
/// assert!((least.equal_materials.get::<inch>() - 0.3643).abs() < 5e-5);
/// assert!((least.strength_ratio - 2.080).abs() < 5e-4);
/// assert!((least.engagement.get::<inch>() - 0.7578).abs() < 5e-5);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct MinimumEngagement {
    /// Tensile stress area of the bolt At.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_stress_area: Area,
    /// Engagement for materials of equal strength, Le = 2 At / (As for each unit of length).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub equal_materials: Length,
    /// Shear areas over that engagement.
    pub areas: StripAreas,
    /// Tensile strength of the bolt material.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_tensile_strength: Stress,
    /// Tensile strength of the nut material.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_tensile_strength: Stress,
    /// J = (As x tensile strength of the bolt) / (An x tensile strength of the nut).
    pub strength_ratio: f64,
    /// Least engagement of full threads: Le, or Q = J Le where J is above 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub engagement: Length,
}

impl MinimumEngagement {
    /// The working: Le, the areas over it, J and the least engagement.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::{ThreadMaterial, minimum_engagement};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "M10".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
    /// let bolt = ThreadMaterial::new(megapascals(830.0), None)?;
    /// let block = ThreadMaterial::new(megapascals(300.0), None)?;
    /// let derivation = minimum_engagement(&fit, &bolt, &block)?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().len(), 5);
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let source = methods::FED_STD_H28_2_MACHINERYS_HANDBOOK_24TH_ED;
        let areas = &self.areas;
        Derivation::new("Engagement at which the bolt breaks first")
            .step(
                Step::new(
                    "engagement for equal materials",
                    "Le",
                    "2 * At / (pi * K * (1 / 2 + (E - K) / (P * sqrt(3))))",
                    self.equal_materials,
                )
                .with("At", self.tensile_stress_area)
                .with("K", areas.nut_minor_diameter)
                .with("E", areas.bolt_pitch_diameter)
                .with("P", areas.pitch)
                .source(source),
            )
            .and(areas.derivation())
            .step(
                Step::new(
                    "ratio of the threads",
                    "J",
                    "As * Rb / (An * Rn)",
                    self.strength_ratio,
                )
                .with("As", areas.bolt_threads)
                .with("Rb", self.bolt_tensile_strength)
                .with("An", areas.nut_threads)
                .with("Rn", self.nut_tensile_strength)
                .source(source),
            )
            .step(
                Step::new("least engagement", "Q", "max(J, 1) * Le", self.engagement)
                    .with("J", self.strength_ratio)
                    .with("Le", self.equal_materials)
                    .source(source),
            )
    }
}

/// The least engagement of full threads by FED-STD-H28/2 and Machinery's Handbook, formulas 1 to 6:
///
/// ```text
/// Le = 2 At / { pi Kn,max [1/2 + 0.57735 n (Es,min - Kn,max)] }
/// J  = As x tensile strength of the bolt / (An x tensile strength of the nut)
/// least engagement: Le if J <= 1, Q = J Le if J > 1
/// ```
///
/// The 2 takes the shear strength as half of the tensile strength. At is the tensile stress area, for
/// Unified bolts over 100 ksi that at the least pitch diameter.
///
/// Source: Machinery's Handbook, 24th ed., in paraphrase (read); an engineering page on FED-STD-H28/2B
/// (read).
///
/// # Errors
///
/// Those of [`ThreadFit::strip_areas`]; [`Error::OutOfRange`] for lengths that are not finite.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{ThreadMaterial, minimum_engagement};
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M10".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let steel = ThreadMaterial::new(megapascals(830.0), None)?;
/// let least = minimum_engagement(&fit, &steel, &steel)?;
/// assert_eq!(least.engagement, least.equal_materials); // J is below 1: An exceeds As
/// # Ok(())
/// # }
/// ```
pub fn minimum_engagement(
    fit: &ThreadFit,
    bolt: &ThreadMaterial,
    nut: &ThreadMaterial,
) -> Result<MinimumEngagement, Error> {
    let pitch = fit.bolt.thread.pitch();
    let per_pitch = fit.strip_areas(EngagedLength::new(pitch)?)?;
    let tensile_stress_area = handbook_stress_area(&per_pitch, bolt.tensile_strength)?;
    let equal_materials = 2.0 * tensile_stress_area / per_pitch.bolt_rate();
    let areas = per_pitch.over(equal_materials)?;
    let strengths = (bolt.tensile_strength / nut.tensile_strength).value;
    let strength_ratio = (areas.bolt_threads / areas.nut_threads).value * strengths;
    let engagement = strength_ratio.max(1.0) * equal_materials;
    Ok(MinimumEngagement {
        tensile_stress_area,
        equal_materials,
        areas,
        bolt_tensile_strength: bolt.tensile_strength,
        nut_tensile_strength: nut.tensile_strength,
        strength_ratio,
        engagement: positive("least engagement", engagement)?,
    })
}

/// Engagement that carries a load.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::engagement_for_load;
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M10".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(millimetres(10.0))?)?;
/// let least =
///     engagement_for_load(&areas, newtons(20_000.0), megapascals(400.0), megapascals(130.0))?;
/// assert_eq!(least.engagement, least.nut_threads);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EngagementForLoad {
    /// The load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Shear stress the bolt threads may have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_shear_stress: Stress,
    /// Shear stress the nut threads may have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_shear_stress: Stress,
    /// The shear areas the lengths follow from.
    pub areas: StripAreas,
    /// Engagement the bolt threads need.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_threads: Length,
    /// Engagement the nut threads need.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_threads: Length,
    /// The longer of the two, of full threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub engagement: Length,
}

impl EngagementForLoad {
    /// The working: the areas, and the engagement each thread needs.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::engagement_for_load;
    /// use shankline::thread::strip::EngagedLength;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "M10".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(millimetres(10.0))?)?;
    /// let (bolt, block) = (megapascals(400.0), megapascals(130.0));
    /// engagement_for_load(&areas, newtons(20_000.0), bolt, block)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let areas = &self.areas;
        Derivation::new("Engagement that carries a load")
            .and(areas.derivation())
            .step(
                Step::new(
                    "engagement of the bolt threads",
                    "Lb",
                    "F * LE / (taub * As)",
                    self.bolt_threads,
                )
                .with("F", self.load)
                .with("LE", areas.engagement)
                .with("taub", self.bolt_shear_stress)
                .with("As", areas.bolt_threads),
            )
            .step(
                Step::new(
                    "engagement of the nut threads",
                    "Ln",
                    "F * LE / (taun * An)",
                    self.nut_threads,
                )
                .with("F", self.load)
                .with("LE", areas.engagement)
                .with("taun", self.nut_shear_stress)
                .with("An", areas.nut_threads),
            )
            .step(
                Step::new("engagement", "L", "max(Lb, Ln)", self.engagement)
                    .with("Lb", self.bolt_threads)
                    .with("Ln", self.nut_threads),
            )
    }
}

/// Engagement of full threads that carries a load at given shear stresses, ultimate or allowable:
/// LE = load / (stress x area for each unit of length), for bolt and nut.
///
/// Source: the general form of the formulas above; Handbook of Bolts and Bolted Joints (abstract of
/// the chapter on stripping, read).
///
/// # Errors
///
/// [`Error::OutOfRange`] unless load and stresses are positive and finite and so is the length.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::engagement_for_load;
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "3/8-16 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(inches(0.5))?)?;
/// assert!(engagement_for_load(&areas, pounds_force(0.0), ksi(60.0), ksi(20.0)).is_err());
/// # Ok(())
/// # }
/// ```
pub fn engagement_for_load(
    areas: &StripAreas,
    load: Force,
    bolt_shear_stress: Stress,
    nut_shear_stress: Stress,
) -> Result<EngagementForLoad, Error> {
    positive("axial load", load)?;
    positive("shear stress of the bolt threads", bolt_shear_stress)?;
    positive("shear stress of the nut threads", nut_shear_stress)?;
    let bolt_threads: Length = load / bolt_shear_stress / areas.bolt_rate();
    let nut_threads: Length = load / nut_shear_stress / areas.nut_rate();
    Ok(EngagementForLoad {
        load,
        bolt_shear_stress,
        nut_shear_stress,
        areas: areas.clone(),
        bolt_threads: positive("engagement of the bolt threads", bolt_threads)?,
        nut_threads: positive("engagement of the nut threads", nut_threads)?,
        engagement: bolt_threads.max(nut_threads),
    })
}
