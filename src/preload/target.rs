//! How much of its strength a bolt is preloaded to.

use alloc::format;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Error, positive};
use crate::spread::{Spread, ordered};
use crate::strength::shear::AiscEdition;
use crate::units::{Force, Ratio, percent};

mod aim;

pub use aim::{PreloadAim, PreloadLimit};

/// What a preload is a share of.
///
/// ```
/// use shankline::preload::{PreloadTarget, TargetBase};
/// assert_eq!(PreloadTarget::En1993.base(), TargetBase::TensileLoad);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum TargetBase {
    /// Proof load: proof stress times stress area, or the load the standard prints. The two differ by
    /// the rounding of the print (9046 and 9075 lbf for 75 % of a 1/2-13 bolt of grade 5).
    ProofLoad,
    /// 85 % of the yield load, in place of a proof load that the standard of the grade does not give.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., text under Eq. 8-32.
    SubstituteProofLoad,
    /// Yield strength times stress area.
    YieldLoad,
    /// Tensile strength times stress area.
    TensileLoad,
}

impl TargetBase {
    const fn name(self) -> &'static str {
        match self {
            Self::ProofLoad => "proof load",
            Self::SubstituteProofLoad => "85 % of the yield load, for want of a proof load",
            Self::YieldLoad => "yield load",
            Self::TensileLoad => "tensile load",
        }
    }
}

impl core::fmt::Display for TargetBase {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(self.name())
    }
}

/// The preload a publisher aims at: [`aim`](Self::aim) gives it for a bolt, with what its code holds the
/// greatest and the least preload against.
///
/// | target | aim | greatest held against | least required |
/// |---|---|---|---|
/// | [`Reusable`](Self::Reusable) | 75 % of the proof load | proof load, or yield load where none is given | |
/// | [`Permanent`](Self::Permanent), [`JuvinallMarshek`](Self::JuvinallMarshek) | 90 % of it | the same | |
/// | [`AiscJ31`](Self::AiscJ31) | as printed | nothing: the pretension is a least, and the check of a joint finds fault only where it breaks the bolt | the aim |
/// | [`En1993`](Self::En1993) | 0.7 fub As | 0.9 fub As | the aim |
/// | [`En1993German`](Self::En1993German) | as printed, else 0.7 fyb As | fyb As | the aim |
/// | [`Is800`](Self::Is800) | 0.7 fub Anb | 0.9 fub As | the aim |
/// | [`Bs4604`](Self::Bs4604), [`As4100`](Self::As4100) | as printed | 0.9 fub As | the aim |
///
/// VDI 2230 aims at 90 % of the yield strength under tension *and* torsion, which depends on the
/// friction: [`FrictionForm::assembly_preload`](super::FrictionForm::assembly_preload). FAA
/// torques are a look-up of their own, [`tables::aircraft_torque`](crate::tables::aircraft_torque).
///
/// ```
/// use shankline::prelude::*;
/// assert!(PreloadTarget::Reusable.fraction() < PreloadTarget::Permanent.fraction());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum PreloadTarget {
    /// 75 % of the proof load, for joints that are taken apart and bolts that are used again.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-31; supplier torque guides.
    Reusable,
    /// 90 % of the proof load, for permanent joints.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-31.
    Permanent,
    /// 90 % of the proof load wherever possible.
    ///
    /// Source: Juvinall and Marshek, Fundamentals of Machine Component Design, in review notes.
    JuvinallMarshek,
    /// The *least* pretension of A325 and A490 bolts, about 70 % of the tensile load. The printed value rules
    /// (A325 7/8 in: 39 kip and not 38.8), and the edition decides it for A325 over 1 in.
    ///
    /// Source: AISC 360, Tables J3.1 and J3.1M: [`Pretension`](crate::tables::pretension::Pretension).
    AiscJ31 {
        /// Edition of AISC 360.
        edition: AiscEdition,
    },
    /// Fp,C = 0.7 fub As, the least preload of classes 8.8 and 10.9 to EN 14399, with the nominal fub of
    /// 800 and 1000 MPa and the tabulated stress area.
    ///
    /// Source: EN 1993-1-8:2005, 3.4.1, 3.6.1, Table 3.1; EN 1090-2.
    En1993,
    /// Fp,C* = 0.7 fyb As of classes 8.8 and 10.9, with the nominal fyb of 640 and 900 MPa. For class 10.9 the
    /// annex prints it rounded to 10 kN, and the print rules. What that annex allows at most was not read: the greatest
    /// preload is held against the nominal yield load.
    ///
    /// Source: German national annex of EN 1993-1-8, as a washer maker's guide reproduces it.
    En1993German,
    /// F0 = 0.70 fub Anb, the least tension at installation of friction grip bolts of classes 8.8 and 10.9 to IS 3757, M16
    /// to M36, with the tensile strength and the stress area of ISO 898-1. IS 4000 tightens by part turn or by a device that
    /// indicates the tension; since 1992 it has torque no more, and the check of a joint says so.
    ///
    /// Source: IS 800:2007, 10.4.3 (a lecture); IS 4000:1992, foreword.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::kilonewtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let aim = PreloadTarget::Is800.aim(&thread, &bolt)?;
    /// // 0.70 x 830 MPa x 244.8 mm2
    /// assert!((aim.preload - kilonewtons(142.2)).abs() < kilonewtons(0.05));
    /// assert_eq!(aim.least_required, Some(aim.preload));
    /// # Ok(())
    /// # }
    /// ```
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// Po, the least shank tension of friction grip bolts of general grade, class 8.8, for joints by BS 5950-1 6.4: as BS 4604-1
    /// prints it, recalled.
    ///
    /// Source: BS 4604-1, [`Pretension::bs_4604`](crate::tables::pretension::Pretension::bs_4604).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::kilonewtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let aim = PreloadTarget::Bs4604.aim(&thread, &bolt)?;
    /// assert_eq!(aim.least_required, Some(kilonewtons(144.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[cfg_attr(feature = "serde", serde(rename = "bs_4604"))]
    Bs4604,
    /// Nti, the least tension of bolts of class 8.8 in the categories TF and TB, as AS 4100 prints it, recalled but for M20. The
    /// code tightens by part turn or by a device that indicates the tension (recalled), and the check of a joint says so.
    ///
    /// Source: AS 4100, Table 15.2.5.1: [`Pretension::as_4100`](crate::tables::pretension::Pretension::as_4100).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::kilonewtons;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M24".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let aim = PreloadTarget::As4100.aim(&thread, &bolt)?;
    /// assert_eq!(aim.least_required, Some(kilonewtons(210.0)));
    /// assert!(aim.cautions().iter().next().is_some()); // recalled
    /// # Ok(())
    /// # }
    /// ```
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
}

/// What is aimed at, in words.
impl core::fmt::Display for PreloadTarget {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::Reusable => "75 % of the proof load",
            Self::Permanent => "90 % of the proof load, permanent",
            Self::JuvinallMarshek => "90 % of the proof load (Juvinall and Marshek)",
            Self::AiscJ31 { .. } => "at least the pretension of AISC 360 Table J3.1",
            Self::En1993 => "at least 0.7 fub As of EN 1993-1-8",
            Self::En1993German => "0.7 fyb As of the German annex of EN 1993-1-8",
            Self::Is800 => "at least 0.7 fub Anb of IS 800",
            Self::Bs4604 => "at least the tension of BS 4604-1",
            Self::As4100 => "at least the tension of AS 4100 Table 15.2.5.1",
        })
    }
}

impl PreloadTarget {
    /// The share.
    ///
    /// ```
    /// use shankline::preload::PreloadTarget;
    /// use shankline::uom::si::ratio::percent;
    /// assert_eq!(PreloadTarget::Reusable.fraction().get::<percent>(), 75.0);
    /// ```
    #[must_use]
    pub const fn fraction(self) -> Ratio {
        match self {
            Self::Reusable => percent(75.0),
            Self::Permanent | Self::JuvinallMarshek => percent(90.0),
            Self::AiscJ31 { .. }
            | Self::En1993
            | Self::En1993German
            | Self::Is800
            | Self::Bs4604
            | Self::As4100 => percent(70.0),
        }
    }

    /// What it is a share of. Where a grade has no proof load, [`aim`](Self::aim) says what took its place.
    ///
    /// ```
    /// use shankline::preload::{PreloadTarget, TargetBase};
    /// assert_eq!(PreloadTarget::Reusable.base(), TargetBase::ProofLoad);
    /// ```
    #[must_use]
    pub const fn base(self) -> TargetBase {
        match self {
            Self::Reusable | Self::Permanent | Self::JuvinallMarshek => TargetBase::ProofLoad,
            Self::AiscJ31 { .. } | Self::En1993 | Self::Is800 | Self::Bs4604 | Self::As4100 => {
                TargetBase::TensileLoad
            }
            Self::En1993German => TargetBase::YieldLoad,
        }
    }
}

/// A preload beside the proof load of its bolt.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let usage = proof_use(Spread::exact(newtons(80e3)), newtons(100e3), PreloadTarget::Reusable)?;
/// assert!(matches!(usage.cautions().iter().next(), Some(Caution::PreloadAboveTarget { .. })));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ProofUse {
    /// Preload over proof load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::serialize_ratio")
    )]
    pub fraction: Spread<Ratio>,
    /// The target it was held against.
    pub target: PreloadTarget,
    /// Preload.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub preload: Spread<Force>,
    /// Proof load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_load: Force,
    cautions: Cautions,
}

impl ProofUse {
    /// A warning, if the nominal preload passes the target or the greatest passes the proof load.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let usage = proof_use(Spread::exact(newtons(70e3)), newtons(100e3), PreloadTarget::Reusable)?;
    /// assert_eq!(usage.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let usage = proof_use(Spread::exact(newtons(70e3)), newtons(100e3), PreloadTarget::Reusable)?;
    /// usage.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let step = |what: &'static str, symbol: &'static str, share: Ratio, preload: Force| {
            Step::new(what, symbol, "Fi / Fp", share)
                .with("Fi", preload)
                .with("Fp", self.proof_load)
        };
        Derivation::new("Preload over proof load")
            .step(step(
                "nominal share",
                "u",
                self.fraction.nominal,
                self.preload.nominal,
            ))
            .step(step(
                "greatest share",
                "umax",
                self.fraction.max,
                self.preload.max,
            ))
            .step(Step::given("share aimed at", "ut", self.target.fraction()))
    }
}

/// Holds a preload against the proof load of the bolt.
///
/// Warns if the *nominal* preload is above the target, and more strongly if the *greatest* one is
/// above the proof load itself.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a preload or proof load that is not finite, or a proof load that is
/// not positive; [`Error::Mismatch`] for a target that is no share of the proof load.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "1/2-13 UNC".parse()?;
/// let proof = SaeGrade::Grade5.strength(thread.nominal_diameter())?.loads(&thread)?.proof.unwrap();
/// let form = ShortForm::new(NutFactor::new(0.18, 0.20, 0.22)?, thread.nominal_diameter())?;
/// let gentle = proof_use(form.preload(pound_force_feet(70.0))?, proof, PreloadTarget::Reusable)?;
/// assert_eq!(gentle.cautions().iter().count(), 0);
/// let heavy = proof_use(form.preload(pound_force_feet(100.0))?, proof, PreloadTarget::Reusable)?;
/// assert!(matches!(heavy.cautions().iter().next(), Some(Caution::PreloadAboveProof { .. })));
/// # Ok(())
/// # }
/// ```
pub fn proof_use(
    preload: Spread<Force>,
    proof_load: Force,
    target: PreloadTarget,
) -> Result<ProofUse, Error> {
    let preload = ordered("preload", preload)?;
    positive("proof load", proof_load)?;
    if target.base() != TargetBase::ProofLoad {
        return Err(Error::Mismatch(format!(
            "the target is a share of the {} and not of the proof load",
            target.base()
        )));
    }
    let fraction = preload.map(|force| force / proof_load);
    // Aiming at the target exactly must not warn: leave the last bits of T = K F d and back.
    let above = |value: Ratio, limit: Ratio| value.value > limit.value * (1.0 + 1e-9);
    let caution = if above(fraction.max, percent(100.0)) {
        Some(Caution::PreloadAboveProof {
            fraction: fraction.max,
        })
    } else if above(fraction.nominal, target.fraction()) {
        Some(Caution::PreloadAboveTarget {
            fraction: fraction.max,
            target: target.fraction(),
        })
    } else {
        None
    };
    Ok(ProofUse {
        fraction,
        target,
        preload,
        proof_load,
        cautions: Cautions::default().with(caution),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::preload::{NutFactor, ShortForm};
    use crate::units::{inches, newton_metres, newtons, pounds_force};

    #[test]
    fn refuses_nonsense_at_the_door() {
        for bad in [0.0, -0.1, 1.1, f64::NAN, f64::INFINITY] {
            assert!(NutFactor::new(bad, bad, bad).is_err(), "{bad}");
        }
        let form = ShortForm::new(NutFactor::new(0.1, 0.2, 0.3).unwrap(), inches(0.5)).unwrap();
        for bad in [-1.0, f64::NAN, f64::INFINITY] {
            assert!(form.preload(newton_metres(bad)).is_err(), "{bad}");
            assert!(form.torque(newtons(bad)).is_err(), "{bad}");
        }
        // Finite, but the preload would not be.
        assert!(form.preload(newton_metres(f64::MAX)).is_err());
        let exact = Spread::exact(pounds_force(100.0));
        assert!(proof_use(exact, pounds_force(0.0), PreloadTarget::Reusable).is_err());
    }

    #[test]
    fn target_torque_does_not_warn_at_its_own_nominal() {
        let form = ShortForm::new(NutFactor::new(0.19, 0.2, 0.21).unwrap(), inches(0.75)).unwrap();
        let proof = pounds_force(40_080.0);
        let torque = form.torque(0.75 * proof).unwrap().nominal;
        let result = proof_use(
            form.preload(torque).unwrap(),
            proof,
            PreloadTarget::Reusable,
        )
        .unwrap();
        assert_eq!(result.cautions().iter().count(), 0);
    }
}
