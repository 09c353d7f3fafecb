//! Methods for the tension of a bolt, and what they ask for.

use core::fmt;

use crate::error::{Allowed, Error, out_of_range};
use crate::material::BoltGrade;
use crate::source::Method;
use crate::strength::check::Level;
use crate::strength::code::{aisc_360::is_a307, at_limit_load};
use crate::strength::shear::{AiscEdition, ReductionNeed, ReductionNeeds};
use crate::tables::methods;

/// Shape of the head of a bolt, as far as it changes what the bolt bears in tension.
///
/// ```
/// use shankline::strength::bolt_tension::HeadShape;
/// assert_eq!(HeadShape::default(), HeadShape::OnFace);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HeadShape {
    /// A hexagon or other head that bears on a face.
    #[default]
    OnFace,
    /// A countersunk head, which bears on a cone.
    Countersunk,
}

/// A published method for the tension of a bolt.
///
/// ```
/// use shankline::strength::bolt_tension::TensionMethod;
/// assert_eq!(TensionMethod::Proof { design_factor: 1.2 }.method().citation, "proof load");
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
pub enum TensionMethod {
    /// Machine design: the proof load over a factor.
    Proof {
        /// The factor nd the allowable load is divided by.
        design_factor: f64,
    },
    /// AISC 360, J3.6 (J3.7 in 2022) and Table J3.2.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
    },
    /// EN 1993-1-8:2005 Table 3.4, with the recommended partial factor 1.25.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// BS 5950-1:2000, 6.3.4.2, simple method: the load of the bolt by statics, without prying. Only where
    /// the connected parts do not bend in double curvature and the bolts stand close (recalled).
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950_simple"))]
    Bs5950Simple,
    /// BS 5950-1:2000, 6.3.4.3 (number recalled), more exact method: the load has the prying force in it.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950_exact"))]
    Bs5950Exact,
    /// IS 800:2007, 10.3.5, with its partial factors 1.25 and 1.10.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// AS 4100, 9.3.2.2, capacity factor 0.80.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
    /// CSA S16, 13.12.1.3, resistance factor 0.80.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16,
    /// MIL-HDBK-5 Table 8.1.5(b), recalled: the tensile strength of the bolt on the basic area at the root of its thread. Of bolts
    /// that are made for tension: those with shear heads, and clevis bolts, have none of it.
    #[cfg_attr(feature = "serde", serde(rename = "mil_hdbk_5"))]
    MilHdbk5 {
        /// Ultimate load over limit load, 1.5 for aircraft.
        ultimate_factor: f64,
        /// Fitting factor of 14 CFR 25.625, at least 1; 1.15 in data files that say none, and less only by test.
        #[cfg_attr(
            feature = "serde",
            serde(default = "crate::strength::code::mil_hdbk_5::fitting")
        )]
        fitting_factor: f64,
    },
}

impl TensionMethod {
    /// The method, if the numbers in it are in their ranges; a capacity checks them too, but only where the method
    /// is used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a factor that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// assert!(TensionMethod::Proof { design_factor: -3.0 }.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        match self {
            Self::Proof { design_factor } if !(1.0..=100.0).contains(&design_factor) => {
                let allowed = Allowed::FromTo(1.0.into(), 100.0.into());
                Err(out_of_range("design factor", design_factor, allowed))
            }
            Self::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            } => at_limit_load(ultimate_factor, fitting_factor).map(|_| self),
            _ => Ok(self),
        }
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// assert_eq!(TensionMethod::En1993.to_string(), "EN 1993-1-8:2005 Table 3.4, tension");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Proof { .. } => methods::PROOF_LOAD,
            Self::Aisc360 { edition } => match edition {
                AiscEdition::E2005 => methods::AISC_360_05_J3_6_TENSION,
                AiscEdition::E2010 => methods::AISC_360_10_J3_6_TENSION,
                AiscEdition::E2016 => methods::AISC_360_16_J3_6_TENSION,
                AiscEdition::E2022 => methods::AISC_360_22_J3_7_TENSION,
            },
            Self::En1993 => methods::EN_1993_1_8_2005_TABLE_3_4_TENSION,
            Self::Bs5950Simple => methods::BS_5950_1_2000_6_3_4_2_SIMPLE_METHOD,
            Self::Bs5950Exact => methods::BS_5950_1_2000_6_3_4_3_EXACT_METHOD,
            Self::Is800 => methods::IS_800_2007_10_3_5,
            Self::As4100 => methods::AS_4100_9_3_2_2,
            Self::CsaS16 => methods::CSA_S16_13_12_1_3,
            Self::MilHdbk5 { .. } => methods::MIL_HDBK_5_TABLE_8_1_5_B,
        }
    }

    /// The levels at which the method states a resistance. Which of them want factored loads says
    /// [`Level::wants_factored_loads`].
    ///
    /// ```
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// use shankline::strength::check::Level;
    /// assert_eq!(TensionMethod::Bs5950Exact.levels(), [Level::Design]);
    /// ```
    #[must_use]
    pub const fn levels(self) -> &'static [Level] {
        match self {
            Self::Proof { .. } | Self::MilHdbk5 { .. } => &[Level::Nominal, Level::Allowable],
            Self::Aisc360 { .. } => &[Level::Nominal, Level::Design, Level::Allowable],
            Self::En1993 | Self::Is800 | Self::As4100 | Self::CsaS16 => {
                &[Level::Nominal, Level::Design]
            }
            Self::Bs5950Simple | Self::Bs5950Exact => &[Level::Design],
        }
    }

    /// Whether the prying force belongs into the load: everywhere but in the simple method of BS 5950, which
    /// has it in its 0.8.
    ///
    /// ```
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// assert!(TensionMethod::En1993.wants_prying_in_load());
    /// assert!(!TensionMethod::Bs5950Simple.wants_prying_in_load());
    /// ```
    #[must_use]
    pub const fn wants_prying_in_load(self) -> bool {
        !matches!(self, Self::Bs5950Simple)
    }

    /// The facts of the connection that could lower the capacity of such a bolt by this method.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::TensionMethod;
    /// use shankline::strength::shear::ReductionNeed;
    /// let aisc = TensionMethod::Aisc360 { edition: AiscEdition::E2005 };
    /// assert!(aisc.needs(AstmGrade::A307A.into()).contains(ReductionNeed::Grip));
    /// assert!(aisc.needs(AstmGrade::F3125A325Type1.into()).is_empty());
    /// ```
    #[must_use]
    pub fn needs(self, grade: BoltGrade) -> ReductionNeeds {
        let none = ReductionNeeds::default();
        match self {
            Self::Aisc360 { .. } if is_a307(grade) => none.with(ReductionNeed::Grip),
            _ => none,
        }
    }
}

impl fmt::Display for TensionMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}
