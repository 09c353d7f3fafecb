//! The published methods.

use super::HoleKind;
use super::modes::factor;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::code::{aisc_360, as_4100, bs_5950, is_800, mil_hdbk_5};
use crate::strength::shear::AiscEdition;
use crate::tables::methods;
use crate::units::Stress;
use core::fmt;

/// A published method for plies.
///
/// ```
/// use shankline::strength::ply::PlyMethod;
/// assert_eq!(PlyMethod::En1993.to_string(), "EN 1993-1-8:2005 Table 3.4, bearing");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
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
pub enum PlyMethod {
    /// Machine design: onset of yield.
    MachineDesign {
        /// The factor nd the allowable load is divided by.
        design_factor: f64,
    },
    /// AISC 360 J3.10 (J3.11 in 2022) and D2.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
        /// Whether a deformation of about 1/4 in at service load matters.
        deformation_matters: bool,
    },
    /// EN 1993-1-8:2005 Table 3.4 and EN 1993-1-1 6.2.3, recommended partial factors.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// MIL-HDBK-5: bearing strength by edge distance, dry pins; at limit load no yield ([`Ply::yield_in_bearing`](super::Ply::yield_in_bearing)).
    #[cfg_attr(feature = "serde", serde(rename = "mil_hdbk_5"))]
    MilHdbk5 {
        /// Ultimate load over limit load, 1.5 for aircraft.
        ultimate_factor: f64,
        /// Fitting factor of 14 CFR 25.625, at least 1; 1.15 in data files that say none, and less only by test. A larger special
        /// factor of bearing, as for joints that move, stands in its place.
        #[cfg_attr(
            feature = "serde",
            serde(default = "crate::strength::code::mil_hdbk_5::fitting")
        )]
        fitting_factor: f64,
    },
    /// BS 5950-1:2000, 6.3.3: bearing on the bolt and of the ply, design strengths. Sections by 4.6.1 and 3.4.3.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950,
    /// IS 800:2007, 10.3.4 with 6.2 and 6.3, partial factors 1.25 and 1.10.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// AS 4100, 9.3.2.4 and 7.2, capacity factor 0.90.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
    /// CSA S16, 13.12.1.2, 13.11 and 13.2, resistance factors 0.80, 0.75 and, gross, 0.90.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16,
}

impl PlyMethod {
    /// The method, if the numbers in it are in their ranges; a check of a ply checks them too, but only where the
    /// method is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::strength::ply::PlyMethod;
    /// assert!(PlyMethod::MachineDesign { design_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        match self {
            Self::MachineDesign { design_factor } => factor("design factor", design_factor),
            Self::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            } => factor("ultimate factor", ultimate_factor)
                .and_then(|_| factor("fitting factor", fitting_factor)),
            Self::Aisc360 { .. }
            | Self::En1993
            | Self::Bs5950
            | Self::Is800
            | Self::As4100
            | Self::CsaS16 => Ok(1.0),
        }
        .map(|_| self)
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::ply::PlyMethod;
    /// let shop = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// assert_eq!(shop.method().citation, "machine design, yield of the ply");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::MachineDesign { .. } => methods::PLY_YIELD,
            Self::Aisc360 { edition, .. } => match edition {
                AiscEdition::E2005 => methods::AISC_360_05_J3_10_D2,
                AiscEdition::E2010 => methods::AISC_360_10_J3_10_D2,
                AiscEdition::E2016 => methods::AISC_360_16_J3_10_D2,
                AiscEdition::E2022 => methods::AISC_360_22_J3_11_D2,
            },
            Self::En1993 => methods::EN_1993_1_8_2005_TABLE_3_4_BEARING,
            Self::MilHdbk5 { .. } => methods::MIL_HDBK_5_BEARING,
            Self::Bs5950 => methods::BS_5950_1_2000_6_3_3_3,
            Self::Is800 => methods::IS_800_2007_10_3_4,
            Self::As4100 => methods::AS_4100_9_3_2_4,
            Self::CsaS16 => methods::CSA_S16_13_12_1_2_BEARING,
        }
    }

    pub(super) fn cautions(self, mode: Mode, hole: HoleKind, stress: Stress) -> Cautions {
        let recalled = match self {
            Self::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            } => return mil_hdbk_5::low_factors(ultimate_factor, fitting_factor),
            Self::Aisc360 {
                edition,
                deformation_matters,
            } => aisc_360::ply::recalled(edition, deformation_matters, mode, hole),
            Self::Bs5950 => bs_5950::ply::recalled(mode, stress),
            Self::Is800 => is_800::ply::recalled(mode, hole),
            Self::As4100 => as_4100::ply::clause(mode),
            _ => None,
        };
        Cautions::default().with(recalled.and_then(Caution::of_method))
    }
}

impl fmt::Display for PlyMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::megapascals;

    /// What was recalled of a mode: the holes of IS 800 10.3.4 that are not standard, and the sections of AS 4100.
    #[test]
    fn recalled_modes_are_told() {
        let told = |method: PlyMethod, mode, hole| {
            method
                .cautions(mode, hole, megapascals(400.0))
                .iter()
                .count()
        };
        for (method, mode, hole, count) in [
            (PlyMethod::Is800, Mode::Bearing, HoleKind::Standard, 0),
            (PlyMethod::Is800, Mode::Bearing, HoleKind::Oversize, 1),
            (PlyMethod::Is800, Mode::Bearing, HoleKind::LongSlotAcross, 1),
            (PlyMethod::Is800, Mode::NetSection, HoleKind::Oversize, 0),
            (PlyMethod::As4100, Mode::Bearing, HoleKind::Standard, 0),
            (PlyMethod::As4100, Mode::NetSection, HoleKind::Standard, 1),
            (PlyMethod::En1993, Mode::Bearing, HoleKind::Oversize, 0),
        ] {
            assert_eq!(
                told(method, mode, hole),
                count,
                "{method} {mode:?} {hole:?}"
            );
        }
    }
}
