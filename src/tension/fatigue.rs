//! Fatigue of the thread by the machine-design system: endurance strength at zero mean stress.

use super::at_most;
use crate::caution::{Caution, Cautions, StatedPart};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::math;
use crate::tables::methods;
use crate::units::{Stress, from_base};

mod strength;
mod stress;

pub use strength::{EnduranceStrength, FatigueStrengths};
pub use stress::FatigueStress;
pub(super) use stress::bolt_range;

/// Share of the proof stress below which a result warns that its system suits preloaded bolts.
const LITTLE_PRELOAD: f64 = 0.5;

/// A line of allowable amplitudes over the mean stress.
///
/// ```
/// use shankline::tension::FatigueCriterion;
/// assert_eq!(FatigueCriterion::AsmeElliptic.to_string(), "ASME-elliptic");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum FatigueCriterion {
    /// Straight from Se to Sut, Shigley Eq. 8-38: the lowest of the first three.
    Goodman,
    /// Parabola from Se to Sut, Shigley Eq. 8-39.
    Gerber,
    /// Ellipse from Se to Sp, Shigley Eq. 8-40.
    AsmeElliptic,
    /// Greatest stress at the proof stress (Langer): yield and not fatigue.
    ProofLine,
}

impl core::fmt::Display for FatigueCriterion {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::Goodman => "Goodman",
            Self::Gerber => "Gerber",
            Self::AsmeElliptic => "ASME-elliptic",
            Self::ProofLine => "proof line",
        })
    }
}

/// Fatigue of a bolt by the machine-design system.
///
/// The strength amplitude Sa is where the load line, which starts at the preload stress, meets the
/// line of the criterion; Sm is the mean stress there.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., section 8-11. Checked against its Example
/// 8-5. Elliptic and Gerber line are solved for any slope of the load line; at slope 1 they are the
/// book's Eqs. 8-39 and 8-40.
///
/// ```
/// use shankline::{prelude::*, tension::*};
/// # fn main() -> Result<(), shankline::Error> {
/// // Example 8-5: Sa = 7.55 ksi, nf = 2.44 by Goodman.
/// let se = EnduranceStrength::of_table(SaeGrade::Grade5.into(), inches(0.625))?;
/// let strengths = FatigueStrengths::new(se, ksi(120.0), ksi(85.0))?;
/// let stress = FatigueStress::new(ksi(63.72), ksi(3.10), ksi(66.82))?;
/// let fatigue = MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Goodman)?;
/// assert!((fatigue.strength_amplitude - ksi(7.55)).abs() < ksi(0.005));
/// assert!((fatigue.factor - 2.44).abs() < 0.005);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct MachineDesignFatigue {
    /// Criterion.
    pub criterion: FatigueCriterion,
    /// Strengths.
    pub strengths: FatigueStrengths,
    /// Stresses.
    pub stress: FatigueStress,
    /// Amplitude Sa on the line.
    pub strength_amplitude: Stress,
    /// Mean stress Sm on the line.
    pub strength_mean: Stress,
    /// nf = Sa / `sigma_a`.
    pub factor: f64,
}

impl MachineDesignFatigue {
    /// The check.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the preload alone is at or beyond the strength the line ends at (Sut,
    /// or Sp for the ellipse and the proof line); and for an endurance strength of the table without any preload:
    /// it would allow 112 MPa of amplitude for M16 8.8, where EN 1993-1-9 allows 18.4. Take
    /// [`EnFatigue`](super::EnFatigue) or [`AiscFatigue`](super::AiscFatigue) there.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::*};
    /// let se = EnduranceStrength::stated(ksi(18.6)).unwrap();
    /// let strengths = FatigueStrengths::new(se, ksi(120.0), ksi(85.0)).unwrap();
    /// let stress = FatigueStress::new(ksi(90.0), ksi(3.0), ksi(93.0)).unwrap();
    /// assert!(MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Gerber).is_ok());
    /// assert!(MachineDesignFatigue::new(strengths, stress, FatigueCriterion::ProofLine).is_err());
    /// ```
    #[inline]
    pub fn new(
        strengths: FatigueStrengths,
        stress: FatigueStress,
        criterion: FatigueCriterion,
    ) -> Result<Self, Error> {
        use FatigueCriterion::{AsmeElliptic, Gerber, Goodman, ProofLine};
        let end = match criterion {
            Goodman | Gerber => strengths.tensile,
            AsmeElliptic | ProofLine => strengths.proof,
        };
        // So close to the end the amplitude would be all rounding.
        at_most("stress of the preload", stress.preload, end * (1.0 - 1e-9))?;
        if strengths.endurance.provenance.is_some() && stress.preload.value <= 0.0 {
            return Err(out_of_range(
                "stress of the preload with an endurance strength of the table",
                stress.preload,
                Allowed::Above(stress.preload.into()),
            ));
        }
        let (sut, sp) = (strengths.tensile.value, strengths.proof.value);
        let (se, si) = (strengths.endurance.stress.value, stress.preload.value);
        let s = (stress.mean - stress.preload).value / stress.amplitude.value;
        // The root is taken in the form without a difference of nearly equal numbers.
        let sa = match criterion {
            Goodman => (sut - si) / (sut / se + s),
            Gerber => {
                let b = 2.0 * s * si + sut * sut / se;
                let c = sut * sut - si * si;
                2.0 * c / (b + math::sqrt(b * b + 4.0 * s * s * c))
            }
            AsmeElliptic => {
                let a = sp * sp / (se * se) + s * s;
                let c = sp * sp - si * si;
                c / (s * si + math::sqrt(s * s * si * si + a * c))
            }
            ProofLine => (sp - si) / (1.0 + s),
        };
        Ok(Self {
            criterion,
            strengths,
            stress,
            strength_amplitude: from_base(sa),
            strength_mean: from_base(si + s * sa),
            factor: sa / stress.amplitude.value,
        })
    }

    /// What the user of this factor must be told: where the strength comes from, and that the preload is below half
    /// the proof stress. There Goodman's line allows half as much again as VDI 2230 and more (M16 8.8 at half of
    /// proof: 71 against 46 MPa); the half is a limit of this crate.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::*};
    /// let se = EnduranceStrength::stated(ksi(18.6)).unwrap();
    /// let strengths = FatigueStrengths::new(se, ksi(120.0), ksi(85.0)).unwrap();
    /// let stress = FatigueStress::new(ksi(63.72), ksi(3.1), ksi(66.82)).unwrap();
    /// let fatigue = MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Gerber).unwrap();
    /// assert_eq!(fatigue.cautions().iter().count(), 1); // the strength was stated
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let fraction = self.stress.preload / self.strengths.proof;
        let low = self.criterion != FatigueCriterion::ProofLine && fraction.value < LITTLE_PRELOAD;
        Cautions::default()
            .with(match self.strengths.endurance.provenance {
                None => Some(Caution::Stated {
                    part: StatedPart::BoltStrength,
                }),
                Some(provenance) => Caution::from_memory("endurance strength", provenance),
            })
            .with(low.then_some(Caution::EnduranceAtLowPreload { fraction }))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::*};
    /// let se = EnduranceStrength::stated(ksi(18.6)).unwrap();
    /// let strengths = FatigueStrengths::new(se, ksi(120.0), ksi(85.0)).unwrap();
    /// let stress = FatigueStress::new(ksi(63.72), ksi(3.1), ksi(66.82)).unwrap();
    /// let fatigue = MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Gerber).unwrap();
    /// fatigue.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        use FatigueCriterion::{AsmeElliptic, Gerber, Goodman, ProofLine};
        let stress = self.stress;
        let s = (stress.mean - stress.preload) / stress.amplitude;
        let sa = |formula| {
            Step::new("strength amplitude", "Sa", formula, self.strength_amplitude)
                .with("si", stress.preload)
                .with("s", s)
        };
        let se = self.strengths.endurance.stress;
        let (sut, sp) = (self.strengths.tensile, self.strengths.proof);
        let amplitude = match self.criterion {
            Goodman => sa("(Sut - si) / (Sut / Se + s)")
                .with("Sut", sut)
                .with("Se", se)
                .source(methods::SHIGLEY_9TH_ED_EQ_8_38),
            Gerber => sa("2 * (Sut^2 - si^2) / (2 * s * si + Sut^2 / Se \
                 + sqrt((2 * s * si + Sut^2 / Se)^2 + 4 * s^2 * (Sut^2 - si^2)))")
            .with("Sut", sut)
            .with("Se", se)
            .source(methods::SHIGLEY_9TH_ED_EQ_8_39_FOR_ANY_SLOPE),
            AsmeElliptic => sa("(Sp^2 - si^2) / (s * si \
                 + sqrt(s^2 * si^2 + (Sp^2 / Se^2 + s^2) * (Sp^2 - si^2)))")
            .with("Sp", sp)
            .with("Se", se)
            .source(methods::SHIGLEY_9TH_ED_EQ_8_40_FOR_ANY_SLOPE),
            ProofLine => sa("(Sp - si) / (1 + s)")
                .with("Sp", sp)
                .source(methods::SHIGLEY_9TH_ED_SECTION_8_11_LANGER_LINE),
        };
        Derivation::new("Fatigue, machine design")
            .step(
                Step::new(
                    "mean over amplitude beyond the preload",
                    "s",
                    "(sm - si) / sa",
                    s,
                )
                .with("sm", stress.mean)
                .with("si", stress.preload)
                .with("sa", stress.amplitude),
            )
            .step(amplitude)
            .step(
                Step::new("fatigue factor", "nf", "Sa / sa", self.factor)
                    .with("Sa", self.strength_amplitude)
                    .with("sa", stress.amplitude)
                    .source(methods::SHIGLEY_9TH_ED_SECTION_8_11),
            )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::PropertyClass;
    use crate::units::{megapascals, millimetres};

    fn m16(preload: f64, amplitude: f64) -> Result<MachineDesignFatigue, Error> {
        let bolt = PropertyClass::Class8_8.strength(millimetres(16.0))?;
        let strengths = FatigueStrengths::of_bolt(&bolt)?;
        let (preload, amplitude) = (megapascals(preload), megapascals(amplitude));
        let stress = FatigueStress::new(preload, amplitude, preload + amplitude)?;
        MachineDesignFatigue::new(strengths, stress, FatigueCriterion::Goodman)
    }

    /// M16 8.8 at 75 % of proof: 51 MPa by Goodman; without preload it would be 112.
    #[test]
    fn the_table_is_not_for_bolts_without_preload() {
        let tight = m16(0.75 * 580.0, 10.0).unwrap();
        assert!((tight.strength_amplitude - megapascals(51.0)).abs() < megapascals(2.5));
        assert_eq!(tight.cautions().iter().count(), 0);
        assert!(m16(0.0, 10.0).is_err());
        let loose = m16(0.1 * 580.0, 10.0).unwrap();
        assert!(matches!(
            loose.cautions().iter().next(),
            Some(Caution::EnduranceAtLowPreload { fraction }) if fraction.value < 0.11
        ));
        // A stated strength is the caller's own, and warned of twice.
        let own = FatigueStrengths::new(
            EnduranceStrength::stated(megapascals(40.0)).unwrap(),
            megapascals(830.0),
            megapascals(580.0),
        )
        .unwrap();
        let zero = megapascals(0.0);
        let stress = FatigueStress::new(zero, megapascals(10.0), megapascals(10.0)).unwrap();
        let own = MachineDesignFatigue::new(own, stress, FatigueCriterion::Goodman).unwrap();
        assert_eq!(own.cautions().iter().count(), 2);
    }

    #[test]
    fn negative_stresses_are_refused() {
        assert!(m16(-1.0, 10.0).is_err());
        assert!(m16(400.0, -1.0).is_err());
        let (preload, amplitude) = (megapascals(400.0), megapascals(10.0));
        assert!(FatigueStress::new(preload, amplitude, megapascals(-1.0)).is_err());
        assert!(EnduranceStrength::stated(megapascals(-1.0)).is_err());
    }
}
