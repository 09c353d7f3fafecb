//! Area, stress and factor of each method: asked of the rooms of the codes.

use super::ShearMethod;
use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::material::{BoltGrade, BoltStrength};
use crate::parts::Zone;
use crate::strength::code::{
    Factors, aisc_360, as_4100, at_limit_load, bs_449, bs_5950, csa_s16, en_1993, is_800,
    machine_design, mil_hdbk_5, nasa_std_5020,
};
use crate::strength::section::{Section, StressOf};
use crate::tables::methods;

impl ShearMethod {
    /// The method, if the numbers in it are in their ranges; a capacity checks them too, but only where the method
    /// is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not from 1 to 100, or a shear strength that is not positive.
    ///
    /// ```
    /// use shankline::strength::shear::{ShearBasis, ShearMethod};
    /// let odd = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: -3.0 };
    /// assert!(odd.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        self.factors()?;
        if let Self::MilHdbk5 { shear_strength, .. } | Self::NasaStd5020 { shear_strength, .. } =
            self
        {
            positive("shear strength", shear_strength)?;
        }
        Ok(self)
    }

    #[inline]
    pub(super) fn factors(self) -> Result<Factors, Error> {
        Ok(match self {
            Self::DistortionEnergy { design_factor, .. } => machine_design::factors(design_factor)?,
            Self::Aisc360 { .. } => aisc_360::FACTORS,
            Self::En1993 => en_1993::FACTORS,
            Self::Is800 => is_800::FACTORS,
            Self::As4100 => as_4100::FACTORS,
            Self::CsaS16 => csa_s16::FACTORS,
            Self::Bs5950 => bs_5950::FACTORS,
            Self::Bs449 => bs_449::FACTORS,
            Self::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
                ..
            }
            | Self::NasaStd5020 {
                ultimate_factor,
                fitting_factor,
                ..
            } => at_limit_load(ultimate_factor, fitting_factor)?,
        })
    }

    /// Stress, and the section its area is that of.
    #[inline]
    pub(super) fn plane(
        self,
        strength: &BoltStrength,
        zone: Zone,
    ) -> Result<(StressOf, Section), Error> {
        let in_shank = zone == Zone::Shank;
        let grade = strength.grade;
        let stress = match self {
            Self::DistortionEnergy { basis, .. } => machine_design::shear(basis, strength)?,
            Self::Aisc360 { edition } => aisc_360::shear(edition, strength, in_shank)?,
            Self::En1993 => en_1993::shear(grade, in_shank)?,
            Self::Bs5950 => bs_5950::shear(grade)?,
            Self::Bs449 => bs_449::shear(grade)?,
            Self::As4100 => as_4100::shear(strength, in_shank),
            Self::Is800 => is_800::shear(strength),
            Self::CsaS16 => csa_s16::shear(strength, in_shank),
            Self::MilHdbk5 { shear_strength, .. } => {
                mil_hdbk_5::shear(shear_strength, grade, in_shank)?
            }
            Self::NasaStd5020 { shear_strength, .. } => nasa_std_5020::shear(shear_strength)?,
        };
        let section = match self {
            _ if in_shank => Section::Shank,
            // These lower the stress for threads, or make no difference, and keep the area of the shank.
            Self::Aisc360 { .. } | Self::CsaS16 | Self::Bs449 | Self::MilHdbk5 { .. } => {
                Section::Shank
            }
            Self::En1993 | Self::Bs5950 => Section::Stress,
            Self::DistortionEnergy { .. } | Self::As4100 | Self::NasaStd5020 { .. } => {
                Section::Root
            }
            Self::Is800 => Section::Net,
        };
        Ok((stress, section))
    }

    /// What goes with a capacity by this method. The stresses of AISC 360-05 were read in a
    /// reproduction of its table, those of 360-10 in the table; those of later editions were recalled.
    pub(super) fn cautions(self, grade: BoltGrade, any_in_thread: bool) -> Cautions {
        match self {
            Self::Aisc360 { edition } => aisc_360::cautions(edition, grade),
            Self::En1993 => en_1993::cautions(grade),
            Self::As4100 => as_4100::cautions(methods::AS_4100_9_3_2_1, grade),
            Self::Is800 => is_800::cautions(methods::IS_800_2007_10_3_3, grade),
            Self::CsaS16 => csa_s16::cautions(methods::CSA_S16_13_12_1_2, grade),
            Self::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
                ..
            } => mil_hdbk_5::low_factors(ultimate_factor, fitting_factor),
            Self::NasaStd5020 { .. } if any_in_thread => {
                Cautions::default().with(Some(Caution::BasicMinorArea))
            }
            _ => Cautions::default(),
        }
    }
}
