//! The preload of a target for one bolt, and what its code holds it against.

use alloc::{format, string::ToString};

use super::{PreloadTarget, TargetBase};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Error, positive};
use crate::material::{BoltGrade, BoltStrength, PROOF_OF_YIELD, PropertyClass};
use crate::source::Method;
use crate::source::Provenance;
use crate::strength::code::{aisc_360, as_4100, bs_5950, en_1993, is_800};
use crate::tables::methods;
use crate::tables::pretension::Pretension;
use crate::thread::Thread;
use crate::units::{Force, Ratio};

/// What the greatest preload, the top of its scatter, is held against by the code of its target.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// let bolt = PropertyClass::Class10_9.strength(thread.nominal_diameter())?;
/// // EN 1090-2 accepts 0.9 fub As, above the proof load.
/// let aim = PreloadTarget::En1993.aim(&thread, &bolt)?;
/// assert!(aim.limit.load() > bolt.loads(&thread)?.proof);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PreloadLimit {
    /// The proof load.
    ///
    /// Source: common practice, no source; Shigley, 9th ed., section 8-8 describes the proof load as the greatest
    /// a bolt takes without a permanent set.
    Proof {
        /// Sp As.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        load: Force,
    },
    /// The load at the yield strength, which is the stress at 0.2 % permanent strain where the standard of the grade
    /// has that.
    ///
    /// Source: ISO 3506-1, which gives this stress and no proof load.
    Yield {
        /// Sy As.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        load: Force,
    },
    /// A share of the tensile load.
    ///
    /// Source: EN 1090-2:2008, 8.5: the upper fractile of its methods is 0.9 fub As, as read in a report for its
    /// committee (2012). It stands in for IS 800, BS 4604 and AS 4100, of which no greatest preload was read.
    TensileFraction {
        /// The share.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        fraction: Ratio,
        /// The share times fub As.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        load: Force,
    },
    /// Nothing: the pretension is a least, and no greatest is given.
    ///
    /// Source: RCSC Specification for Structural Joints (2014), section 8, as an article of AISC's journal (2018) has
    /// it.
    NoGreatest,
}

impl PreloadLimit {
    /// That of EN 1090-2.
    fn upper_fractile(tensile: Force) -> Self {
        let fraction = en_1993::pretension::UPPER;
        Self::TensileFraction {
            fraction,
            load: fraction * tensile,
        }
    }

    /// The load; none where the code gives no greatest preload.
    ///
    /// ```
    /// use shankline::preload::PreloadLimit;
    /// use shankline::units::newtons;
    /// assert_eq!(PreloadLimit::Proof { load: newtons(9e3) }.load(), Some(newtons(9e3)));
    /// assert_eq!(PreloadLimit::NoGreatest.load(), None);
    /// ```
    #[must_use]
    pub const fn load(&self) -> Option<Force> {
        match *self {
            Self::Proof { load } | Self::Yield { load } | Self::TensileFraction { load, .. } => {
                Some(load)
            }
            Self::NoGreatest => None,
        }
    }
}

impl core::fmt::Display for PreloadLimit {
    /// `proof load`, `0.9 of the tensile load`.
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Proof { .. } => f.pad("proof load"),
            Self::Yield { .. } => f.pad("yield load"),
            Self::TensileFraction { fraction, .. } => {
                f.pad(&format!("{} of the tensile load", fraction.value))
            }
            Self::NoGreatest => f.pad("no greatest preload"),
        }
    }
}

/// The preload a [`PreloadTarget`] aims at for one bolt.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::kilonewtons;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
/// let aim = PreloadTarget::En1993.aim(&thread, &bolt)?;
/// assert!((aim.preload - kilonewtons(137.2)).abs() < newtons(1e-6)); // 0.7 x 800 MPa x 245 mm2
/// assert_eq!(aim.least_required, Some(aim.preload));
/// aim.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PreloadAim {
    /// The target.
    pub target: PreloadTarget,
    /// The preload to aim at.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Force,
    /// What it is a share of.
    pub base: TargetBase,
    /// The load of that name.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub base_load: Force,
    /// The share. A printed preload is this share rounded.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub fraction: Ratio,
    /// Where the preload is printed, if it is: then the print rules and not the share.
    pub printed: Option<Provenance>,
    /// What the greatest preload is held against.
    pub limit: PreloadLimit,
    /// What the least preload must reach if the joint counts on it by that code; none where the target has no such
    /// rule.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub least_required: Option<Force>,
    cautions: Cautions,
}

impl PreloadAim {
    /// What the user must be told: a printed preload that was recalled.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC".parse()?;
    /// let bolt = AstmGrade::F3125A325Type1.strength(thread.nominal_diameter())?;
    /// let target = PreloadTarget::AiscJ31 { edition: AiscEdition::E2022 };
    /// assert_eq!(target.aim(&thread, &bolt)?.cautions().iter().count(), 0); // by the rule of its table
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
    /// let thread: Thread = "M12".parse()?;
    /// let bolt = StainlessClass::A2_50.strength(thread.nominal_diameter())?;
    /// PreloadTarget::Reusable.aim(&thread, &bolt)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let base = Step::given(self.base.name(), "Fb", self.base_load);
        let derivation = Derivation::new("Preload aimed at");
        let derivation = match self.printed {
            Some(printed) => derivation.step(
                Step::given("preload as the code prints it", "F", self.preload)
                    .source(printed.source.to_string()),
            ),
            None => derivation.step(base).step(
                Step::new("preload aimed at", "F", "u * Fb", self.preload)
                    .with("u", self.fraction)
                    .with("Fb", self.base_load)
                    .source(self.target.source()),
            ),
        };
        match self.limit.load() {
            Some(load) => derivation.step(Step::given(
                format!("greatest preload allowed: {}", self.limit),
                "Fmax",
                load,
            )),
            None => derivation,
        }
    }
}

impl PreloadTarget {
    const fn source(self) -> &'static Method {
        match self {
            Self::Reusable | Self::Permanent => methods::SHIGLEY_9TH_ED_EQ_8_31,
            Self::JuvinallMarshek => methods::JUVINALL_AND_MARSHEK,
            Self::AiscJ31 { .. } => methods::AISC_360_TABLE_J3_1,
            Self::En1993 => methods::EN_1993_1_8_2005_3_6_1_AND_TABLE_3_1,
            Self::En1993German => methods::GERMAN_NATIONAL_ANNEX_OF_EN_1993_1_8,
            Self::Is800 => methods::IS_800_2007_10_4_3_LEAST_TENSION,
            Self::Bs4604 => methods::BS_4604_1_LEAST_TENSION,
            Self::As4100 => methods::AS_4100_15_2_5_LEAST_TENSION,
        }
    }

    /// Where the code says that a bolt has to have this preload at least.
    pub(crate) const fn rule(self) -> &'static Method {
        match self {
            Self::AiscJ31 { .. } => methods::AISC_360_TABLE_J3_1_LEAST_PRETENSION,
            _ => self.source(),
        }
    }

    /// The preload for a bolt, and what its code holds the greatest and the least preload against.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] if the strengths are those of another diameter. [`Error::NoValue`] for a machine
    /// target where the grade has neither proof stress nor yield strength (ASTM A307), for an EN target of any
    /// grade but classes 8.8 and 10.9 or any thread but M12 to M36 coarse, and for AISC of any grade but A325 and A490
    /// with their sisters, or of A325 to 2014 over 1 in with an edition that counts on 120 ksi, for IS 800 of any grade but
    /// classes 8.8 and 10.9 or any thread but M16 to M36 coarse, for BS 4604 and AS 4100 of any grade but class 8.8;
    /// [`Error::NotInTable`] for sizes that AISC, the German annex, BS 4604 or AS 4100 does not print.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::preload::{PreloadLimit, TargetBase};
    /// use shankline::units::kip;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "5/8-11 UNC".parse()?;
    /// let bolt = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
    /// let aim = PreloadTarget::Reusable.aim(&thread, &bolt)?;
    /// assert!((aim.preload.get::<kip>() - 14.4).abs() < 0.05); // Shigley, Example 8-4
    ///
    /// // Stainless steel has no proof load: 0.75 x 0.85 of the yield load, held against that load.
    /// let thread: Thread = "M12".parse()?;
    /// let bolt = StainlessClass::A2_50.strength(thread.nominal_diameter())?;
    /// let aim = PreloadTarget::Reusable.aim(&thread, &bolt)?;
    /// assert_eq!(aim.base, TargetBase::SubstituteProofLoad);
    /// assert!(matches!(aim.limit, PreloadLimit::Yield { .. }));
    /// assert!(PreloadTarget::En1993.aim(&thread, &bolt).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn aim(self, thread: &Thread, strength: &BoltStrength) -> Result<PreloadAim, Error> {
        // Refuses strengths of another diameter, whatever the target takes of them.
        let loads = strength.loads(thread)?;
        match self {
            Self::Reusable | Self::Permanent | Self::JuvinallMarshek => {
                let (base, base_load, limit) = match (loads.proof, loads.yielding) {
                    (Some(proof), _) => (
                        TargetBase::ProofLoad,
                        proof,
                        PreloadLimit::Proof { load: proof },
                    ),
                    (None, Some(load)) => (
                        TargetBase::SubstituteProofLoad,
                        PROOF_OF_YIELD * load,
                        PreloadLimit::Yield { load },
                    ),
                    (None, None) => {
                        return Err(Error::NoValue {
                            quantity: "proof load or yield load",
                            subject: strength.grade.to_string(),
                            reason: "its standard gives neither, so nothing limits the preload",
                        });
                    }
                };
                self.share_of(base, base_load, limit, None)
            }
            Self::AiscJ31 { edition } => {
                let row = aisc_360::pretension::pretension(thread, strength, edition)?;
                let limit = PreloadLimit::NoGreatest;
                self.as_printed(TargetBase::TensileLoad, loads.tensile, limit, row)
            }
            Self::En1993 => {
                let area = en_1993::pretension::stress_area(thread, strength.grade)?;
                let tensile = en_1993::tensile_strength(strength.grade)? * area;
                let limit = PreloadLimit::upper_fractile(tensile);
                let least = Some(self.fraction() * tensile);
                self.share_of(TargetBase::TensileLoad, tensile, limit, least)
            }
            Self::En1993German => {
                let area = en_1993::pretension::stress_area(thread, strength.grade)?;
                let load = en_1993::yield_strength(strength.grade)? * area;
                let limit = PreloadLimit::Yield { load };
                if strength.grade == BoltGrade::Iso(PropertyClass::Class10_9) {
                    let row = Pretension::german(thread)?;
                    return self.as_printed(TargetBase::YieldLoad, load, limit, row);
                }
                let least = Some(self.fraction() * load);
                self.share_of(TargetBase::YieldLoad, load, limit, least)
            }
            Self::Is800 => {
                let least = is_800::slip::least_tension(thread, strength)?;
                let limit = PreloadLimit::upper_fractile(loads.tensile);
                let base = TargetBase::TensileLoad;
                Ok(PreloadAim {
                    preload: least,
                    ..self.share_of(base, loads.tensile, limit, Some(least))?
                })
            }
            Self::Bs4604 => {
                let row = bs_5950::slip::least_tension(thread, strength)?;
                let limit = PreloadLimit::upper_fractile(loads.tensile);
                self.as_printed(TargetBase::TensileLoad, loads.tensile, limit, row)
            }
            Self::As4100 => {
                let row = as_4100::slip::least_tension(thread, strength)?;
                let limit = PreloadLimit::upper_fractile(loads.tensile);
                self.as_printed(TargetBase::TensileLoad, loads.tensile, limit, row)
            }
        }
    }

    fn share_of(
        self,
        base: TargetBase,
        base_load: Force,
        limit: PreloadLimit,
        least_required: Option<Force>,
    ) -> Result<PreloadAim, Error> {
        positive(base.name(), base_load)?;
        Ok(PreloadAim {
            target: self,
            preload: positive("preload aimed at", self.fraction() * base_load)?,
            base,
            base_load,
            fraction: self.fraction(),
            printed: None,
            limit,
            least_required,
            cautions: Cautions::default(),
        })
    }

    fn as_printed(
        self,
        base: TargetBase,
        base_load: Force,
        limit: PreloadLimit,
        row: &Pretension,
    ) -> Result<PreloadAim, Error> {
        let least = Some(row.pretension);
        Ok(PreloadAim {
            preload: row.pretension,
            printed: Some(row.provenance),
            cautions: row.cautions(),
            ..self.share_of(base, base_load, limit, least)?
        })
    }
}

#[cfg(test)]
mod tests;
