//! Nuts by the proof load of their standard.

use super::ThreadMaterial;
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Error, positive};
use crate::material::{BoltStrength, NutStrength};
use crate::thread::Thread;
use crate::units::{Area, Force, Ratio, Stress};

/// A nut by its proof load against the bolt it is put on.
///
/// Nut standards state what a nut bears without stripping on a hard mandrel. That is no stripping load: a
/// nut whose proof load reaches the breaking load of the bolt lets it break, and of one that stays below nothing
/// is shown. Standards pair such nuts too (class 12 with 12.9, J995 grade 5 with SAE grade 5 in fine
/// threads), so ask [`nut_pairing`](super::nut_pairing) first. Nuts tapped oversize bear less: the strength of
/// the nut is asked for with its [`NutTapping`](crate::material::NutTapping).
///
/// ```
/// use shankline::{prelude::*, strength::strip::nut_proof};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "5/8-11 UNC".parse()?;
/// let bolt = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
/// let nut = NutGrade::SaeJ995Grade5.strength(NutShape::Hex, &thread, NutTapping::Usual)?;
/// let proof = nut_proof(&thread, &bolt, &nut)?;
/// assert!(proof.outlasts_bolt());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutProof {
    /// Proof stress of the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_proof_stress: Stress,
    /// Minimum tensile strength of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_tensile_strength: Stress,
    /// Tensile stress area of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_stress_area: Area,
    /// Proof load of the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_proof_load: Force,
    /// Breaking load of the bolt, of its minimum tensile strength.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_breaking_load: Force,
    /// Proof load of the nut over breaking load of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub ratio: Ratio,
    cautions: Cautions,
}

impl NutProof {
    /// Whether the nut is shown to bear the breaking load of a bolt of minimum tensile strength. If not, it
    /// may still: see [`nut_pairing`](super::nut_pairing).
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::nut_proof};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Of a jam nut it is not shown.
    /// let thread: Thread = "5/8-11 UNC".parse()?;
    /// let bolt = SaeGrade::Grade8.strength(thread.nominal_diameter())?;
    /// let nut = NutGrade::SaeJ995Grade8.strength(NutShape::HexJam, &thread, NutTapping::Usual)?;
    /// assert!(!nut_proof(&thread, &bolt, &nut)?.outlasts_bolt());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn outlasts_bolt(&self) -> bool {
        self.nut_proof_load >= self.bolt_breaking_load
    }

    /// The working: both loads and their ratio.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::nut_proof};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let nut = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
    /// nut_proof(&thread, &bolt, &nut)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let load = |what, symbol, formula, load: Force, (name, stress): (&'static str, Stress)| {
            Step::new(what, symbol, formula, load)
                .with(name, stress)
                .with("At", self.tensile_stress_area)
        };
        Derivation::new("Nut against bolt")
            .step(load(
                "proof load of the nut",
                "Fp",
                "Sn * At",
                self.nut_proof_load,
                ("Sn", self.nut_proof_stress),
            ))
            .step(load(
                "breaking load of the bolt",
                "Fb",
                "Rb * At",
                self.bolt_breaking_load,
                ("Rb", self.bolt_tensile_strength),
            ))
            .step(
                Step::new("ratio", "r", "Fp / Fb", self.ratio)
                    .with("Fp", self.nut_proof_load)
                    .with("Fb", self.bolt_breaking_load),
            )
    }

    /// What to be warned of: strengths that were recalled or stated.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::nut_proof};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let bolt = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let nut = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
    /// assert_eq!(nut_proof(&thread, &bolt, &nut)?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }
}

/// Compares the proof load of a nut with the breaking load of a bolt on the same thread.
///
/// Source: proof stresses of SAE J995, ASTM A563, ASTM A194 and ISO 898-2, by the row of the nut.
///
/// # Errors
///
/// [`Error::OutOfRange`] if a load is not positive and finite; [`Error::Mismatch`] if the strengths of
/// bolt or nut hold for another size than the thread has.
///
/// ```
/// use shankline::{prelude::*, strength::strip::nut_proof};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M16".parse()?;
/// let bolt = PropertyClass::Class10_9.strength(thread.nominal_diameter())?;
/// let soft = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
/// assert!(nut_proof(&thread, &bolt, &soft)?.ratio.value < 1.0);
/// # Ok(())
/// # }
/// ```
pub fn nut_proof(
    thread: &Thread,
    bolt: &BoltStrength,
    nut: &NutStrength,
) -> Result<NutProof, Error> {
    bolt.matches(thread)?;
    let tensile_stress_area = thread.tensile_stress_area();
    let bolt_breaking_load = bolt.tensile_strength * tensile_stress_area;
    positive("breaking load of the bolt", bolt_breaking_load)?;
    let nut_proof_load = positive("proof load of the nut", nut.proof_load(thread)?)?;
    Ok(NutProof {
        nut_proof_stress: nut.proof_stress,
        bolt_tensile_strength: bolt.tensile_strength,
        tensile_stress_area,
        nut_proof_load,
        bolt_breaking_load,
        ratio: nut_proof_load / bolt_breaking_load,
        cautions: ThreadMaterial::of_bolt(bolt).cautions.and(nut.cautions()),
    })
}
