//! Preloads measured on a sample of bolts.

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::math;
use crate::units::{Force, Ratio, from_base};

/// Mean and scatter of the preloads that one torque gave in a test.
///
/// A test on the real parts is worth more than any table of scatter.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let sample = PreloadSample::of(&[newtons(34e3), newtons(36e3), newtons(38e3)])?;
/// assert_eq!(sample.count, 3);
/// assert!((sample.mean - newtons(36e3)).abs() < newtons(1e-6));
/// assert!((sample.standard_deviation - newtons(2e3)).abs() < newtons(1e-6));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PreloadSample {
    /// Number of bolts.
    pub count: usize,
    /// Sum of the preloads.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub sum: Force,
    /// Mean preload.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub mean: Force,
    /// Standard deviation of the sample, with n - 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub standard_deviation: Force,
}

impl PreloadSample {
    /// Mean and standard deviation of at least two preloads.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for less than two preloads, one that is negative or not finite, or none
    /// above zero.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(PreloadSample::of(&[newtons(34e3)]).is_err());
    /// ```
    #[allow(clippy::cast_precision_loss)] // a count of bolts
    pub fn of(preloads: &[Force]) -> Result<Self, Error> {
        let count = preloads.len();
        if count < 2 {
            return Err(out_of_range(
                "number of preloads",
                count,
                Allowed::AtLeast(2_usize.into()),
            ));
        }
        for &preload in preloads {
            not_negative("preload", preload)?;
        }
        let sum = preloads.iter().map(|preload| preload.value).sum::<f64>();
        let mean = sum / count as f64;
        positive("mean preload", mean)?;
        // As shares of the mean, whose squares stay finite.
        let squares = preloads
            .iter()
            .map(|preload| (preload.value / mean - 1.0) * (preload.value / mean - 1.0))
            .sum::<f64>();
        let deviation = mean * math::sqrt(squares / (count - 1) as f64);
        Ok(Self {
            count,
            sum: from_base(sum),
            mean: from_base(mean),
            standard_deviation: from_base(not_negative("standard deviation", deviation)?),
        })
    }

    /// Coefficient of variation: standard deviation over mean.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let sample = PreloadSample::of(&[newtons(9.0), newtons(10.0), newtons(11.0)]).unwrap();
    /// assert!((sample.variation().value - 0.1).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn variation(&self) -> Ratio {
        self.standard_deviation / self.mean
    }

    /// The working, as far as the sample itself is not needed.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let sample = PreloadSample::of(&[newtons(9.0), newtons(10.0), newtons(11.0)]).unwrap();
    /// assert!(sample.derivation().check().is_ok());
    /// ```
    pub fn derivation(&self) -> Derivation {
        Derivation::new("Preloads of a test")
            .step(
                Step::new("mean preload", "Fm", "S / n", self.mean)
                    .with("S", self.sum)
                    .with("n", self.count),
            )
            .step(Step::given(
                "standard deviation",
                "s",
                self.standard_deviation,
            ))
            .step(
                Step::new("coefficient of variation", "V", "s / Fm", self.variation())
                    .with("s", self.standard_deviation)
                    .with("Fm", self.mean),
            )
    }
}
