//! How much of an overlap of bolt and nut is full thread.

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::Length;

#[cfg(feature = "serde")]
use {
    crate::units::quantity::RawQuantity,
    alloc::string::{String, ToString},
};

/// What makes a full thread of less than the whole overlap of bolt and nut.
///
/// ```
/// use shankline::{prelude::*, thread::strip::{EndLoss, EngagedLength}};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M10".parse()?;
/// // A bolt cut flush with a nut that is countersunk on both sides.
/// let engaged = EngagedLength::new(millimetres(8.4))?.less(EndLoss::Chamfers(2), &thread)?;
/// assert!((engaged.full_threads() - millimetres(5.4)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum EndLoss {
    /// One pitch for each chamfered or countersunk end, and for the first thread of a point or of a
    /// bolt cut to length, where it lies within the overlap. A bolt that protrudes by a pitch or more
    /// loses nothing at its end. Common practice; a list for structural engineers takes off two
    /// pitches for a tapped hole (read).
    Chamfers(u8),
    /// 0.8 P, with which VDI 2230 covers both ends of a bolt in a nut or a tapped hole; recalled.
    Vdi2230,
    /// A known length.
    Length(Length),
}

/// Length over which bolt and nut overlap, and what of it is not full thread.
///
/// ```
/// use shankline::{prelude::*, thread::strip::EngagedLength};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(EngagedLength::new(inches(0.5))?.full_threads(), inches(0.5));
/// assert!(EngagedLength::new(inches(0.0)).is_err());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawEngagedLength")
)]
pub struct EngagedLength {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    overlap: Length,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    lost: Length,
    // Results list them.
    #[cfg_attr(feature = "serde", serde(skip_serializing))]
    recalled: Option<Caution>,
}

/// As it stands in a file: the overlap, and what is not full thread, if anything.
#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
struct RawEngagedLength {
    overlap: RawQuantity,
    #[serde(default)]
    lost: Option<RawQuantity>,
}

#[cfg(feature = "serde")]
impl TryFrom<RawEngagedLength> for EngagedLength {
    type Error = String;
    fn try_from(raw: RawEngagedLength) -> Result<Self, String> {
        let lost = raw.lost.map(|raw| raw.named("lost")).transpose()?;
        Self::new(raw.overlap.named("overlap")?)
            .and_then(|engaged| engaged.without(lost.unwrap_or_default()))
            .map_err(|error| error.to_string())
    }
}

impl EngagedLength {
    /// An overlap that is all full thread.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite or beyond a kilometre.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// assert!(EngagedLength::new(millimetres(-1.0)).is_err());
    /// ```
    pub fn new(overlap: Length) -> Result<Self, Error> {
        Ok(Self {
            overlap: sane_length("length of engagement", overlap)?,
            lost: Length::default(),
            recalled: None,
        })
    }

    /// The overlap less the threads that are not full at an end. May be called for each end.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a negative loss, and if no full thread is left.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::{EndLoss, EngagedLength}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let engaged = EngagedLength::new(millimetres(8.0))?;
    /// assert!((engaged.less(EndLoss::Vdi2230, &thread)?.full_threads() - millimetres(6.8)).abs()
    ///     < millimetres(1e-9));
    /// assert!(engaged.less(EndLoss::Length(millimetres(8.0)), &thread).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn less(self, end: EndLoss, thread: &Thread) -> Result<Self, Error> {
        let (more, recalled) = match end {
            EndLoss::Chamfers(ends) => (f64::from(ends) * thread.pitch(), None),
            EndLoss::Vdi2230 => {
                let method = methods::THE_EFFECTIVE_LENGTH_OF_ENGAGEMENT_OF_VDI_2230;
                (0.8 * thread.pitch(), Caution::of_method(method))
            }
            EndLoss::Length(length) => (length, None),
        };
        let mut left = self.without(more)?;
        left.recalled = left.recalled.or(recalled);
        Ok(left)
    }

    fn without(self, length: Length) -> Result<Self, Error> {
        let lost = self.lost + not_negative("length without full thread", length)?;
        if lost < self.overlap {
            Ok(Self { lost, ..self })
        } else {
            let allowed = Allowed::Above(lost.into());
            Err(out_of_range("length of engagement", self.overlap, allowed))
        }
    }

    pub(super) fn cautions(&self) -> Cautions {
        Cautions::default().with(self.recalled)
    }

    /// Overlap of bolt and nut.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(EngagedLength::new(inches(0.5))?.overlap(), inches(0.5));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn overlap(&self) -> Length {
        self.overlap
    }

    /// What of the overlap is not full thread.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(EngagedLength::new(inches(0.5))?.lost(), inches(0.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn lost(&self) -> Length {
        self.lost
    }

    /// Engaged length of full threads, LE.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(EngagedLength::new(inches(0.5))?.full_threads(), inches(0.5));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn full_threads(&self) -> Length {
        self.overlap - self.lost
    }
}
