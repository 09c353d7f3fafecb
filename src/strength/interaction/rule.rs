//! The rules, and the two shapes that they have.

use super::divisor;
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range};
use crate::parts::Zone;
use crate::source::Method;
use crate::strength::code::{
    aisc_360, as_4100, bs_5950, csa_s16, en_1993, is_800, mil_hdbk_5, nasa_std_5020,
};
use crate::tables::methods;
use core::fmt;

/// A published rule for tension and shear at once.
///
/// ```
/// use shankline::strength::interaction::InteractionRule;
/// assert_eq!(InteractionRule::En1993.method().citation, "EN 1993-1-8:2005 Table 3.4");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        deny_unknown_fields,
        rename_all = "snake_case"
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum InteractionRule {
    /// AISC 360 J3.7 (J3.8 in 2022), bearing type: F'nt = 1.3 Fnt - (Fnt / (phi Fnv)) frv <= Fnt. The specification
    /// lets it be left out where either ratio is at most 0.30 (0.20 in 2005); the rule gives the same there.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360,
    /// EN 1993-1-8:2005 Table 3.4.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// BS 5950-1, 6.3.4.4, for non-preloaded bolts.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950,
    /// IS 800:2007, 10.3.6: the ellipse, without a place for bending.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// AS 4100, 9.3.2.3: the ellipse, without a place for bending.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
    /// CSA S16, 13.12.1.4: the ellipse, without a place for bending.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16,
    /// The ellipse: von Mises stress where one section carries both.
    Ellipse,
    /// Steel aircraft bolts, shank in the plane.
    AircraftSteel,
    /// Space shuttle criteria for preloaded bolts.
    #[cfg_attr(feature = "serde", serde(rename = "nsts_08307"))]
    Nsts08307 {
        /// Plastic bending factor K: 1 at the least preload; at the greatest from the stress-strain
        /// curve, with a permanent strain of at most 0.2 %.
        plastic_bending_factor: f64,
    },
    /// NASA-STD-5020 Eq. 20 and 22, exponents by what lies in the shear plane; bending without plastic
    /// reserve. Read as quoted, not in the standard itself.
    #[cfg_attr(feature = "serde", serde(rename = "nasa_std_5020"))]
    NasaStd5020,
}

impl InteractionRule {
    /// The rule, if the numbers in it are in their ranges; [`interaction`](super::interaction()) checks them too, but only where the rule
    /// is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a plastic bending factor that is not from 1 to 2.
    ///
    /// ```
    /// use shankline::strength::interaction::InteractionRule;
    /// assert!(InteractionRule::Nsts08307 { plastic_bending_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        match self {
            Self::Nsts08307 {
                plastic_bending_factor: factor,
            } if !(1.0..=2.0).contains(&factor) => {
                let allowed = Allowed::FromTo(1.0.into(), 2.0.into());
                Err(out_of_range("plastic bending factor", factor, allowed))
            }
            _ => Ok(self),
        }
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::interaction::InteractionRule;
    /// assert_eq!(InteractionRule::Ellipse.method().citation, "ellipse (von Mises on one section)");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Aisc360 => methods::AISC_360_J3_7,
            Self::En1993 => methods::EN_1993_1_8_2005_TABLE_3_4,
            Self::Bs5950 => methods::BS_5950_1_2000_6_3_4_4,
            Self::Is800 => methods::IS_800_2007_10_3_6,
            Self::As4100 => methods::AS_4100_9_3_2_3,
            Self::CsaS16 => methods::CSA_S16_13_12_1_4,
            Self::Ellipse => methods::ELLIPSE,
            Self::AircraftSteel => methods::MIL_HDBK_5_STEEL_AIRCRAFT_BOLTS,
            Self::Nsts08307 { .. } => methods::NSTS_08307_REVISION_A,
            Self::NasaStd5020 => methods::NASA_STD_5020_EQ_20_AND_22,
        }
    }

    /// Its form for what lies in the shear plane.
    pub(crate) const fn form(self, zone: Zone) -> Form {
        match self {
            Self::Aisc360 => aisc_360::INTERACTION,
            Self::En1993 => en_1993::INTERACTION,
            Self::Bs5950 => bs_5950::INTERACTION,
            Self::Is800 => is_800::INTERACTION,
            Self::As4100 => as_4100::INTERACTION,
            Self::CsaS16 => csa_s16::INTERACTION,
            Self::Ellipse => Form::ELLIPSE,
            Self::AircraftSteel => mil_hdbk_5::INTERACTION,
            Self::Nsts08307 {
                plastic_bending_factor,
            } => nasa_std_5020::nsts_08307(plastic_bending_factor),
            Self::NasaStd5020 => nasa_std_5020::interaction(zone),
        }
    }

    /// Whether the rule has a place for bending of the bolt.
    pub(super) const fn takes_bending(self) -> bool {
        matches!(
            self,
            Self::Ellipse | Self::AircraftSteel | Self::Nsts08307 { .. } | Self::NasaStd5020
        )
    }

    pub(super) fn cautions(self) -> Cautions {
        let recalled = match self {
            Self::Aisc360
            | Self::En1993
            | Self::Ellipse
            | Self::Nsts08307 { .. }
            | Self::NasaStd5020 => None,
            Self::Is800 | Self::As4100 | Self::CsaS16 => Some(self.method()),
            Self::Bs5950 => Some(methods::THE_LIMITS_OF_BS_5950_1_6_3_4_4),
            Self::AircraftSteel => Some(methods::THE_EXPONENTS_OF_MIL_HDBK_5),
        };
        Cautions::default().with(recalled.and_then(Caution::of_method))
    }
}

impl fmt::Display for InteractionRule {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// The two shapes the rules have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Form {
    /// S + T / tension <= sum, with S <= 1 and T <= 1.
    Corner { sum: f64, tension: f64 },
    /// S^shear + (T + B / bending)^tension <= 1.
    Powers {
        shear: f64,
        tension: f64,
        bending: f64,
    },
}

impl Form {
    /// The ellipse.
    pub(crate) const ELLIPSE: Self = Self::powers(2.0, 2.0, 1.0);

    pub(crate) const fn powers(shear: f64, tension: f64, bending: f64) -> Self {
        Self::Powers {
            shear,
            tension,
            bending,
        }
    }

    /// What ratios of shear, tension and bending come to together.
    #[inline]
    pub(crate) fn utilisation(self, s: f64, t: f64, b: f64) -> f64 {
        match self {
            Self::Corner { sum, tension } => s.max(t).max((s + t / tension) / sum),
            Self::Powers {
                shear,
                tension,
                bending,
            } => divisor(s, shear, t + b / bending, tension),
        }
    }
}
