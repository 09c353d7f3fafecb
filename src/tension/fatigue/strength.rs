//! Strengths a fatigue line runs between.

use crate::error::Error;
use crate::material::BoltStrength;
use crate::source::Provenance;
use crate::tables::fatigue::EnduranceRow;
use crate::tension::{at_most, sane_stress, within};
use crate::units::Stress;

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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub(super) stress: Stress,
    pub(super) provenance: Option<Provenance>,
}

impl EnduranceStrength {
    /// The strength of a grade at a size with rolled threads, from Shigley's table.
    ///
    /// For preloaded bolts: without preload [`MachineDesignFatigue`](crate::tension::MachineDesignFatigue) refuses it.
    /// The table has nothing for class 8.8 below M16; there
    /// [`VdiFatigueStrength`](crate::tension::VdiFatigueStrength), from M4, is the only one here.
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

    /// A strength that the caller states.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress outside the [ranges](crate::tension#ranges).
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile: Stress,
    /// Proof stress Sp.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof: Stress,
}

impl FatigueStrengths {
    /// Strengths that the caller states.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress outside the [ranges](crate::tension#ranges), or unless Sp <= Sut and Se <= Sut.
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
        within("proof stress", proof, tensile * 1e-3, tensile)?;
        within(
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
