//! The methods, and what fails first.

use crate::source::Method;
use crate::tables::methods;
use crate::units::Length;
use core::fmt;

/// A published method for the stripping strength of threads.
///
/// ```
/// use shankline::{prelude::*, strength::strip::StripMethod};
/// let nut = StripMethod::Alexander { width_across_flats: Some(millimetres(18.0)) };
/// assert_eq!(nut.to_string(), "Alexander, SAE 770420");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case", try_from = "super::data::RawStripMethod")
)]
#[non_exhaustive]
pub enum StripMethod {
    /// FED-STD-H28/2 and Machinery's Handbook: shear strength half of the tensile strength, areas as
    /// they are. On the safe side for steel.
    FedStdH28,
    /// Shear strengths as stated, areas as they are: handbooks of fasteners and of airframes.
    ShearStrength,
    /// Alexander, SAE 770420, as in ISO/TR 16224: 0.6 of the tensile strength, and factors for the
    /// stretching of the nut and the bending of the threads. Recalled.
    Alexander {
        /// Width across flats of the nut; none for a tapped hole in a block.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        width_across_flats: Option<Length>,
    },
    /// VDI 2230-1: stated shear strengths with the factors of Alexander. Take 0.8 P off the
    /// engagement ([`EndLoss::Vdi2230`](crate::thread::strip::EndLoss::Vdi2230)). Recalled.
    Vdi2230 {
        /// Width across flats of the nut; none for a tapped hole in a block.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        width_across_flats: Option<Length>,
    },
}

impl StripMethod {
    /// The method: publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::strip::StripMethod;
    /// assert_eq!(StripMethod::FedStdH28.method().citation, "FED-STD-H28/2");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::FedStdH28 => methods::FED_STD_H28_2,
            Self::ShearStrength => methods::STRIP_STATED_STRENGTHS,
            Self::Alexander { .. } => methods::ALEXANDER_SAE_770420,
            Self::Vdi2230 { .. } => methods::VDI2230_STRIPPING,
        }
    }
}

impl fmt::Display for StripMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// What fails first when a bolt is pulled until something does.
///
/// ```
/// use shankline::strength::strip::ThreadFailure;
/// assert_eq!(ThreadFailure::NutThreads.to_string(), "the nut threads strip");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum ThreadFailure {
    /// The bolt breaks, outside the nut.
    Bolt,
    /// The bolt threads strip.
    BoltThreads,
    /// The threads of the nut or tapped hole strip.
    NutThreads,
}

impl fmt::Display for ThreadFailure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Bolt => "the bolt breaks",
            Self::BoltThreads => "the bolt threads strip",
            Self::NutThreads => "the nut threads strip",
        })
    }
}
