//! Fatigue of the thread by the machine-design system: endurance strength at zero mean stress.

use super::{JointDiagram, JointState, at_most, sane_area, sane_stress};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::material::BoltStrength;
use crate::math;
use crate::source::Provenance;
use crate::tables::fatigue::EnduranceRow;
use crate::units::{Area, Force, Stress, from_base};

/// Fully corrected endurance strength Se of a bolt, at zero mean stress, thread concentration
/// included.
///
/// It is not comparable with a strength of VDI 2230, which belongs to a high mean stress; the types keep
/// them apart:
///
/// ```compile_fail
/// use shankline::{prelude::*, tension::*};
/// fn mixed(vdi: VdiFatigueStrength, sut: Stress, sp: Stress) {
///     let _ = FatigueStrengths::new(vdi, sut, sp); // expects an EnduranceStrength
/// }
/// ```
///
/// ```
/// use shankline::{prelude::*, tension::EnduranceStrength};
/// # fn main() -> Result<(), shankline::Error> {
/// let se = EnduranceStrength::of_table(SaeGrade::Grade5.into(), inches(0.625))?;
/// assert_eq!(se.stress(), ksi(18.6));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct EnduranceStrength {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    stress: Stress,
    provenance: Option<Provenance>,
}

impl EnduranceStrength {
    /// The strength of a grade at a size with rolled threads, from Shigley's table.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-17; see
    /// [`EnduranceRow`].
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a grade or size the table does not have.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::EnduranceStrength};
    /// // The table begins at M16 for class 8.8.
    /// let class = PropertyClass::Class8_8.into();
    /// assert!(EnduranceStrength::of_table(class, millimetres(12.0)).is_err());
    /// ```
    pub fn of_table(
        grade: crate::material::BoltGrade,
        diameter: crate::units::Length,
    ) -> Result<Self, Error> {
        let row = EnduranceRow::find(grade, diameter)?;
        Ok(Self {
            stress: row.endurance_strength,
            provenance: Some(row.provenance),
        })
    }

    /// The caller's own.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress that is none.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::EnduranceStrength};
    /// let own = EnduranceStrength::stated(megapascals(120.0)).unwrap();
    /// assert_eq!(own.provenance(), None);
    /// ```
    pub fn stated(stress: Stress) -> Result<Self, Error> {
        sane_stress("endurance strength", stress)?;
        Ok(Self {
            stress,
            provenance: None,
        })
    }

    /// The strength with cut threads in place of rolled ones: 3.0 / 3.8 of it, the ratio of the
    /// stress concentration factors of SAE grades 4 to 8.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-16.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::EnduranceStrength};
    /// let cut = EnduranceStrength::stated(megapascals(190.0)).unwrap().with_cut_threads();
    /// assert!(((cut.stress() / megapascals(150.0)).value - 1.0).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn with_cut_threads(self) -> Self {
        Self {
            stress: self.stress * (3.0 / 3.8),
            ..self
        }
    }

    /// The stress Se.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnduranceStrength};
    /// assert_eq!(EnduranceStrength::stated(ksi(20.0)).unwrap().stress(), ksi(20.0));
    /// ```
    #[must_use]
    pub const fn stress(&self) -> Stress {
        self.stress
    }

    /// Where it comes from, if from the table.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnduranceStrength};
    /// let se = EnduranceStrength::of_table(SaeGrade::Grade8.into(), inches(0.5)).unwrap();
    /// assert!(se.provenance().is_some());
    /// ```
    #[must_use]
    pub const fn provenance(&self) -> Option<Provenance> {
        self.provenance
    }
}

/// The strengths a fatigue line runs between.
///
/// ```
/// use shankline::{prelude::*, tension::{EnduranceStrength, FatigueStrengths}};
/// # fn main() -> Result<(), shankline::Error> {
/// let se = EnduranceStrength::of_table(SaeGrade::Grade5.into(), inches(0.625))?;
/// assert!(FatigueStrengths::new(se, ksi(120.0), ksi(85.0)).is_ok());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FatigueStrengths {
    /// Endurance strength Se.
    pub endurance: EnduranceStrength,
    /// Tensile strength Sut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile: Stress,
    /// Proof stress Sp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub proof: Stress,
}

impl FatigueStrengths {
    /// Stated strengths.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress that is none, or unless Sp <= Sut and Se <= Sut.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{EnduranceStrength, FatigueStrengths}};
    /// let se = EnduranceStrength::stated(ksi(18.6)).unwrap();
    /// assert!(FatigueStrengths::new(se, ksi(80.0), ksi(85.0)).is_err());
    /// ```
    pub fn new(
        endurance: EnduranceStrength,
        tensile: Stress,
        proof: Stress,
    ) -> Result<Self, Error> {
        sane_stress("tensile strength", tensile)?;
        sane_stress("proof stress", proof)?;
        at_most("proof stress", proof, tensile)?;
        at_most("endurance strength", endurance.stress, tensile)?;
        super::within("proof stress", proof, tensile * 1e-3, tensile)?;
        super::within(
            "endurance strength",
            endurance.stress,
            tensile * 1e-6,
            tensile,
        )?;
        Ok(Self {
            endurance,
            tensile,
            proof,
        })
    }

    /// The strengths of a bolt with rolled threads: Se of Shigley's table, the others of its grade.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where the table has no such grade or size, or the grade no proof stress.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::FatigueStrengths};
    /// let bolt = SaeGrade::Grade8.strength(inches(0.75)).unwrap();
    /// let strengths = FatigueStrengths::of_bolt(&bolt).unwrap();
    /// assert_eq!(strengths.tensile, ksi(150.0));
    /// ```
    pub fn of_bolt(strength: &BoltStrength) -> Result<Self, Error> {
        use alloc::string::ToString;
        let proof = strength.proof_stress.ok_or_else(|| Error::NoValue {
            quantity: "proof stress",
            subject: strength.grade.to_string(),
            reason: "its standard gives none",
        })?;
        let endurance = EnduranceStrength::of_table(strength.grade, strength.nominal_diameter)?;
        Self::new(endurance, strength.tensile_strength, proof)
    }
}

/// Stresses in the thread under a load that comes and goes.
///
/// ```
/// use shankline::{prelude::*, tension::FatigueStress};
/// // Shigley, Example 8-5.
/// let stress = FatigueStress::new(ksi(63.72), ksi(3.10), ksi(66.82)).unwrap();
/// assert!((stress.slope() - 1.0).abs() < 1e-9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FatigueStress {
    /// Stress of the preload alone, `sigma_i`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub preload: Stress,
    /// Amplitude `sigma_a`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub amplitude: Stress,
    /// Mean stress `sigma_m`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub mean: Stress,
}

impl FatigueStress {
    /// Stated stresses.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an amplitude that is not positive, a negative preload stress, a
    /// mean stress below it, or one a million times the amplitude above it.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::FatigueStress};
    /// assert!(FatigueStress::new(ksi(60.0), ksi(3.0), ksi(50.0)).is_err());
    /// ```
    pub fn new(preload: Stress, amplitude: Stress, mean: Stress) -> Result<Self, Error> {
        not_negative("stress of the preload", preload)?;
        sane_stress("stress amplitude", amplitude)?;
        not_negative("mean stress", mean)?;
        at_most("mean stress", mean, preload + 1e6 * amplitude)?;
        if mean < preload {
            return Err(out_of_range(
                "mean stress",
                mean,
                Allowed::AtLeast(preload.into()),
            ));
        }
        Ok(Self {
            preload,
            amplitude,
            mean,
        })
    }

    /// Stresses of a joint whose load goes between two values: `sigma_i` = Fi / At, `sigma_a` and `sigma_m` half
    /// the difference and half the sum of the bolt forces over At.
    ///
    /// With Fi = 0 the bolt carries the whole load (C = 1).
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eqs. 8-35 to 8-37.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 <= least < greatest load, and if the greatest separates a
    /// preloaded joint: then the load share no longer holds, and the joint fails in fatigue soon.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{FatigueStress, JointDiagram, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let share = LoadShare::new(newtons_per_millimetre(1e5), newtons_per_millimetre(3e5))?;
    /// let joint = JointDiagram::new(share, newtons(60e3))?;
    /// let area = square_millimetres(100.0);
    /// let stress = FatigueStress::of_joint(&joint, area, newtons(0.0), newtons(8e3))?;
    /// assert!((stress.amplitude - megapascals(10.0)).value.abs() < 1e-3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_joint(
        joint: &JointDiagram,
        stress_area: Area,
        least: Force,
        greatest: Force,
    ) -> Result<Self, Error> {
        let (low, high) = bolt_range(joint, stress_area, least, greatest)?;
        Self::new(
            joint.preload / stress_area,
            0.5 * (high - low) / stress_area,
            0.5 * (high + low) / stress_area,
        )
    }

    /// Slope of the load line, `sigma_a` / (`sigma_m` - `sigma_i`); infinite if the mean is that of the
    /// preload. 1 for a load that falls to zero.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::FatigueStress};
    /// let stress = FatigueStress::new(ksi(60.0), ksi(3.0), ksi(66.0)).unwrap();
    /// assert!((stress.slope() - 0.5).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn slope(&self) -> f64 {
        self.amplitude.value / (self.mean - self.preload).value
    }
}

/// Bolt forces at the least and the greatest load, of a joint that stays clamped.
pub(super) fn bolt_range(
    joint: &JointDiagram,
    stress_area: Area,
    least: Force,
    greatest: Force,
) -> Result<(Force, Force), Error> {
    sane_area("stress area", stress_area)?;
    not_negative("least load", least)?;
    let (low, high) = (joint.under(least)?, joint.under(greatest)?);
    if greatest <= least {
        return Err(out_of_range(
            "greatest load",
            greatest,
            Allowed::Above(least.into()),
        ));
    }
    if high.state == JointState::Separated && joint.preload.value > 0.0 {
        return Err(out_of_range(
            "greatest load",
            greatest,
            Allowed::AtMost(joint.separation_load.into()),
        ));
    }
    Ok((low.bolt, high.bolt))
}

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
    /// or Sp for the ellipse and the proof line).
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

    /// What the user of this factor must be told.
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
        Cautions::default().with(match self.strengths.endurance.provenance {
            None => Some(Caution::StatedStrength),
            Some(provenance) => Caution::from_memory("endurance strength", provenance),
        })
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
                .source("Shigley, 9th ed., Eq. 8-38"),
            Gerber => sa("2 * (Sut^2 - si^2) / (2 * s * si + Sut^2 / Se \
                 + sqrt((2 * s * si + Sut^2 / Se)^2 + 4 * s^2 * (Sut^2 - si^2)))")
            .with("Sut", sut)
            .with("Se", se)
            .source("Shigley, 9th ed., Eq. 8-39, for any slope"),
            AsmeElliptic => sa("(Sp^2 - si^2) / (s * si \
                 + sqrt(s^2 * si^2 + (Sp^2 / Se^2 + s^2) * (Sp^2 - si^2)))")
            .with("Sp", sp)
            .with("Se", se)
            .source("Shigley, 9th ed., Eq. 8-40, for any slope"),
            ProofLine => sa("(Sp - si) / (1 + s)")
                .with("Sp", sp)
                .source("Shigley, 9th ed., section 8-11, Langer line"),
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
                    .source("Shigley, 9th ed., section 8-11"),
            )
    }
}
