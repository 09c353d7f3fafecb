//! Stripping of bolt and nut threads, and the engagement at which the bolt breaks first.
//!
//! Three ways to fail share the engaged length: the bolt breaks in the thread outside the nut, its
//! threads strip, or those of the nut or tapped hole do. The first is wanted: a broken bolt is seen.
//!
//! | method | shear strength | factors on the areas |
//! |---|---|---|
//! | [`FedStdH28`](StripMethod::FedStdH28) | half the tensile strength | none |
//! | [`ShearStrength`](StripMethod::ShearStrength) | stated, of each material | none |
//! | [`Alexander`](StripMethod::Alexander) | 0.6 of the tensile strength | C1 C2 (bolt), C1 C3 (nut) |
//! | [`Vdi2230`](StripMethod::Vdi2230) | stated, of each material | the same |
//!
//! The factors of E. M. Alexander (SAE 770420, 1977; ISO/TR 16224): s is the width across flats of a nut
//! (none for a tapped block), d the nominal diameter, Rs the ratio of the shear strengths of nut and
//! bolt threads, (strength x area of the nut) / (strength x area of the bolt):
//!
//! ```text
//! C1 = 3.8 s/d - (s/d)^2 - 2.61                       1.4 <= s/d <= 1.9; 1 beyond, and in a block
//! C2 = 0.897                                          Rs <= 1
//!      5.594 - 13.682 Rs + 14.107 Rs^2 - 6.057 Rs^3 + 0.9353 Rs^4      1 < Rs < 2.2
//! C3 = 0.728 + 1.769 Rs - 2.896 Rs^2 + 1.296 Rs^3     0.4 < Rs < 1; 0.897 for Rs >= 1
//! ```
//!
//! C1 has its top, 1.00, at s/d = 1.9. Beyond Rs = 2.2 the value there, 1.187, is kept: a stronger nut
//! cannot weaken the bolt. Below Rs = 0.4 nothing is known and the method refuses; FED-STD-H28 serves. The
//! polynomials were recalled and not read, so both methods carry a caution; they meet at Rs = 1.
//!
//! Strengths of materials are usually minima. That is right for the threads and wrong for the bolt that
//! should break first: state the greatest tensile strength it may have (a handbook example takes the
//! nominal strength of the next class). Fatigue, bending, worn, coated or oversize-tapped threads and
//! heat are not covered.
//!
//! Around a thread insert of wire the threads of the part shear on a larger cylinder: `parts::WireInsert` has their area, and
//! the first two methods take it.

use alloc::format;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Error, positive};
use crate::tables::methods;
use crate::thread::area;
use crate::thread::strip::{StripAreas, StripForm};
use crate::units::{Area, Force, Length, Stress, ksi};

#[cfg(feature = "serde")]
mod data;
mod engagement;
mod factors;
mod material;
mod method;
mod nut;
mod pairing;

pub use engagement::{
    EngagementForLoad, MinimumEngagement, engagement_for_load, minimum_engagement,
};
pub use factors::AlexanderFactors;
pub use material::ThreadMaterial;
pub use method::{StripMethod, ThreadFailure};
pub use nut::{NutProof, nut_proof};
pub use pairing::{NotShown, PairStanding, Pairing, nut_pairing};

/// Ultimate axial loads of a bolt and of the threads that hold it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// // A davit foot: M16 class 8.8 in an aluminium block, 20 mm of full threads (strengths invented).
/// let fit = "M16".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(millimetres(20.0))?)?;
/// let bolt = ThreadMaterial::new(megapascals(1000.0), None)?; // the most a class 8.8 bolt may have
/// let block = ThreadMaterial::new(megapascals(260.0), None)?;
/// let result = stripping(&areas, &bolt, &block, StripMethod::FedStdH28)?;
/// assert_eq!(result.first, ThreadFailure::NutThreads);
/// assert!(result.minimum_engagement() > millimetres(28.0)); // longer, or a softer bolt
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StrippingStrength {
    /// The method.
    pub method: StripMethod,
    /// Shear areas and engagement.
    pub areas: StripAreas,
    /// Material of the bolt.
    pub bolt: ThreadMaterial,
    /// Material of the nut or tapped part.
    pub nut: ThreadMaterial,
    /// Shear strength of the bolt threads, by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_shear_strength: Stress,
    /// Shear strength of the nut threads, by the method.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_shear_strength: Stress,
    /// Shear strength times area of the nut over that of the bolt, Rs.
    pub strength_ratio: f64,
    /// Factors on the areas.
    pub factors: AlexanderFactors,
    /// Ultimate load of the bolt threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_threads: Force,
    /// Ultimate load of the nut threads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_threads: Force,
    /// Tensile stress area of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_stress_area: Area,
    /// Breaking load of the bolt: tensile strength times tensile stress area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub breaking_load: Force,
    /// The least of the three ultimate loads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub ultimate: Force,
    /// What fails at that load.
    pub first: ThreadFailure,
    cautions: Cautions,
}

impl StrippingStrength {
    /// What to be warned of: methods, strengths and tolerances that were recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::{StripMethod, ThreadMaterial, stripping};
    /// use shankline::thread::strip::EngagedLength;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(inches(0.4375))?)?;
    /// let steel = ThreadMaterial::new(ksi(120.0), None)?;
    /// let method = StripMethod::Alexander { width_across_flats: Some(inches(0.75)) };
    /// let result = stripping(&areas, &steel, &steel, method)?;
    /// assert_eq!(result.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }

    /// The working: shear areas, shear strengths, factors, the three loads and the least of them.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::{StripMethod, ThreadMaterial, stripping};
    /// use shankline::thread::strip::EngagedLength;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "M16".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(millimetres(12.0))?)?;
    /// let steel = ThreadMaterial::new(megapascals(800.0), None)?;
    /// let method = StripMethod::Alexander { width_across_flats: Some(millimetres(24.0)) };
    /// let derivation = stripping(&areas, &steel, &steel, method)?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().last().unwrap().what(), "ultimate load");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let mut derivation = self.areas.derivation();
        let (c1, c2, c3) = (
            self.factors.dilation,
            self.factors.bolt_bending,
            self.factors.nut_bending,
        );
        let (bolt, nut) = (self.bolt_shear_strength, self.nut_shear_strength);
        let method = match self.method {
            StripMethod::FedStdH28 => {
                derivation.append(shear_strengths(self, "Rb / 2", "Rn / 2"));
                methods::FED_STD_H28_2
            }
            StripMethod::Alexander { .. } => {
                derivation.append(shear_strengths(self, "0.6 * Rb", "0.6 * Rn"));
                methods::ALEXANDER_FACTORS
            }
            StripMethod::ShearStrength => methods::AREA_TIMES_SHEAR_STRENGTH,
            StripMethod::Vdi2230 { .. } => methods::VDI2230_STRIPPING_FACTORS,
        };
        let Self { areas, .. } = self;
        if matches!(
            self.method,
            StripMethod::Alexander { .. } | StripMethod::Vdi2230 { .. }
        ) {
            derivation.append(factors::derivation(self, method));
        }
        derivation
            .step(
                Step::new(
                    "load of the bolt threads",
                    "Fs",
                    "C1 * C2 * taub * As",
                    self.bolt_threads,
                )
                .with("C1", c1)
                .with("C2", c2)
                .with("taub", bolt)
                .with("As", areas.bolt_threads)
                .source(method),
            )
            .step(
                Step::new(
                    "load of the nut threads",
                    "Fn",
                    "C1 * C3 * taun * An",
                    self.nut_threads,
                )
                .with("C1", c1)
                .with("C3", c3)
                .with("taun", nut)
                .with("An", areas.nut_threads)
                .source(method),
            )
            .step(
                Step::new(
                    "breaking load of the bolt",
                    "Fb",
                    "Rb * At",
                    self.breaking_load,
                )
                .with("Rb", self.bolt.tensile_strength)
                .with("At", self.tensile_stress_area),
            )
            .step(
                Step::new("ultimate load", "F", "min(Fb, Fs, Fn)", self.ultimate)
                    .with("Fb", self.breaking_load)
                    .with("Fs", self.bolt_threads)
                    .with("Fn", self.nut_threads),
            )
    }

    /// Engaged length of full threads at which both threads hold the breaking load of the bolt, all else
    /// as here. Add what the ends lose.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::strip::{StripMethod, ThreadMaterial, stripping};
    /// use shankline::thread::strip::EngagedLength;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(inches(1.0))?)?;
    /// let steel = ThreadMaterial::new(ksi(90.0), None)?;
    /// let least = stripping(&areas, &steel, &steel, StripMethod::FedStdH28)?.minimum_engagement();
    /// assert!(inches(0.36) < least && least < inches(0.38)); // a nut is 7/16 in high
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn minimum_engagement(&self) -> Length {
        let weaker = self.bolt_threads.min(self.nut_threads);
        (self.breaking_load / weaker) * self.areas.engagement
    }
}

/// Ultimate loads of a bolt and of the threads of bolt and nut, by one method.
///
/// The breaking load is taken on the tensile stress area of the thread; by
/// [`StripMethod::FedStdH28`], for Unified bolts stronger than 100 ksi at minimum material, on the area at
/// the least pitch diameter, as Machinery's Handbook does.
///
/// # Errors
///
/// [`Error::NoValue`] if the method needs a shear strength that is not stated; [`Error::OutOfRange`] for
/// what [`AlexanderFactors::new`] refuses and for loads that are not finite; [`Error::Mismatch`] for its factors around an
/// insert.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
/// use shankline::thread::strip::EngagedLength;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "M12".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(millimetres(9.0))?)?;
/// let bolt = ThreadMaterial::of_bolt(&PropertyClass::Class8_8.strength(millimetres(12.0))?);
/// let nut = ThreadMaterial::new(megapascals(800.0), None)?;
/// let method = StripMethod::Alexander { width_across_flats: Some(millimetres(18.0)) };
/// let result = stripping(&areas, &bolt, &nut, method)?;
/// assert_eq!(result.first, ThreadFailure::Bolt);
/// # Ok(())
/// # }
/// ```
pub fn stripping(
    areas: &StripAreas,
    bolt: &ThreadMaterial,
    nut: &ThreadMaterial,
    method: StripMethod,
) -> Result<StrippingStrength, Error> {
    let has_factors = matches!(
        method,
        StripMethod::Alexander { .. } | StripMethod::Vdi2230 { .. }
    );
    if has_factors && areas.form == StripForm::AroundInsert {
        return Err(Error::Mismatch(format!(
            "the factors of {method} are those of nuts and tapped holes, not of inserts"
        )));
    }
    let (bolt_shear_strength, nut_shear_strength) = match method {
        StripMethod::FedStdH28 => (0.5 * bolt.tensile_strength, 0.5 * nut.tensile_strength),
        StripMethod::Alexander { .. } => (0.6 * bolt.tensile_strength, 0.6 * nut.tensile_strength),
        StripMethod::ShearStrength | StripMethod::Vdi2230 { .. } => (
            bolt.known_shear_strength("the bolt")?,
            nut.known_shear_strength("the nut or tapped part")?,
        ),
    };
    let bolt_plain = positive(
        "load of the bolt threads",
        bolt_shear_strength * areas.bolt_threads,
    )?;
    let nut_plain = positive(
        "load of the nut threads",
        nut_shear_strength * areas.nut_threads,
    )?;
    let strength_ratio = (nut_plain / bolt_plain).value;
    let factors = match method {
        StripMethod::Alexander { width_across_flats }
        | StripMethod::Vdi2230 { width_across_flats } => {
            let diameter = areas.thread.nominal_diameter();
            AlexanderFactors::new(width_across_flats, diameter, strength_ratio)?
        }
        StripMethod::FedStdH28 | StripMethod::ShearStrength => AlexanderFactors::NONE,
    };
    let bolt_threads = factors.dilation * factors.bolt_bending * bolt_plain;
    let nut_threads = factors.dilation * factors.nut_bending * nut_plain;
    let tensile_stress_area = match method {
        StripMethod::FedStdH28 => handbook_stress_area(areas, bolt.tensile_strength)?,
        _ => areas.thread.tensile_stress_area(),
    };
    let breaking_load = bolt.tensile_strength * tensile_stress_area;
    positive("breaking load of the bolt", breaking_load)?;
    let ultimate = breaking_load.min(bolt_threads).min(nut_threads);
    let first = if breaking_load <= ultimate {
        ThreadFailure::Bolt
    } else if bolt_threads <= ultimate {
        ThreadFailure::BoltThreads
    } else {
        ThreadFailure::NutThreads
    };
    let recalled = match method {
        StripMethod::Alexander { .. } => Some(methods::ALEXANDER_STRENGTH),
        StripMethod::Vdi2230 { .. } => Some(methods::VDI2230_STRIPPING_STRENGTH),
        StripMethod::FedStdH28 | StripMethod::ShearStrength => None,
    };
    let cautions = Cautions::default()
        .with(recalled.and_then(Caution::of_method))
        .and(bolt.cautions.clone())
        .and(nut.cautions.clone())
        .and(areas.cautions());
    Ok(StrippingStrength {
        method,
        areas: areas.clone(),
        bolt: bolt.clone(),
        nut: nut.clone(),
        bolt_shear_strength,
        nut_shear_strength,
        strength_ratio,
        factors,
        bolt_threads,
        nut_threads,
        tensile_stress_area,
        breaking_load,
        ultimate,
        first,
        cautions,
    })
}

/// Shear strengths as shares of tensile strengths.
fn shear_strengths(
    result: &StrippingStrength,
    of_bolt: &'static str,
    of_nut: &'static str,
) -> Derivation {
    Derivation::new("Shear strengths")
        .step(
            Step::new(
                "shear strength of the bolt threads",
                "taub",
                of_bolt,
                result.bolt_shear_strength,
            )
            .with("Rb", result.bolt.tensile_strength),
        )
        .step(
            Step::new(
                "shear strength of the nut threads",
                "taun",
                of_nut,
                result.nut_shear_strength,
            )
            .with("Rn", result.nut.tensile_strength),
        )
}

/// Formula 2a or 2b of Machinery's Handbook for Unified threads, the nominal stress area for metric ones.
fn handbook_stress_area(areas: &StripAreas, tensile_strength: Stress) -> Result<Area, Error> {
    let thread = &areas.thread;
    let strong = thread.is_unified() && tensile_strength > ksi(100.0);
    let least = matches!(
        areas.form,
        StripForm::MinimumMaterial | StripForm::AroundInsert
    );
    if strong && least {
        area::unified_high_strength(areas.bolt_pitch_diameter, thread.pitch())
    } else {
        Ok(thread.tensile_stress_area())
    }
}

#[cfg(test)]
mod tests;
