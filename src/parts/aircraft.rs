//! Aircraft bolts AN3 to AN20 as parts: designation, drilling, lengths, washers.

use alloc::{format, string::ToString};
use core::{fmt, str::FromStr};

use super::{ScrewLength, Washer, WasherStyle};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::spread::Spread;
use crate::tables::aircraft::{AircraftBolt, AircraftGrip};
use crate::tables::threads::UnifiedSeries;
use crate::tables::{nanometres, size_range};
use crate::thread::Thread;
use crate::units::{Length, inches};

impl AircraftBolt {
    /// The bolt with a thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the thread of the bolt of that
    /// diameter, or the smallest and the largest bolt.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::aircraft::AircraftBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(AircraftBolt::of_thread(&"#10-32 UNF".parse()?)?.name, "AN3");
    /// assert_eq!(
    ///     AircraftBolt::of_thread(&"1/4-20 UNC".parse()?).unwrap_err().to_string(),
    ///     "1/4-20 UNC is not in the table of aircraft bolts; AN4 has 28 threads per inch",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_thread(thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        let near = Self::all()
            .iter()
            .find(|bolt| thread.is_unified() && nanometres(bolt.nominal_diameter) == size);
        near.filter(|bolt| nanometres(inches(1.0 / bolt.threads_per_inch)) == pitch)
            .ok_or_else(|| Error::NotInTable {
                table: "the table of aircraft bolts",
                wanted: thread.to_string(),
                available: near.map_or_else(
                    || {
                        size_range(Self::all(), thread.nominal_diameter(), |bolt| {
                            (bolt.nominal_diameter, bolt.name)
                        })
                    },
                    |bolt| {
                        format!(
                            "{} has {} threads per inch",
                            bolt.name, bolt.threads_per_inch
                        )
                    },
                ),
            })
    }
}

/// An aircraft bolt by its whole designation: `AN4H-7A` is 1/4 in, head drilled for safety wire
/// (`H`), dash number 7, shank not drilled (`A`). Without the `A` the shank has a hole for a
/// cotter pin.
///
/// Source of the letters: a supplier's page on ordering these bolts and a builders' article, which
/// agree. Bolts of other materials (`C`, `DD` in place of the hyphen) are not known here.
///
/// ```
/// use shankline::{parts::AnBolt, units::inches};
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt: AnBolt = "AN5H-27A".parse()?;
/// assert!(bolt.head_drilled && !bolt.shank_drilled);
/// assert!((bolt.grip.grip.nominal - inches(2.4375)).abs() < inches(1e-9));
/// assert_eq!(bolt.to_string(), "AN5H-27A");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct AnBolt {
    /// Bolt and dash number, grip and length.
    pub grip: AircraftGrip,
    /// Whether the head is drilled for safety wire.
    pub head_drilled: bool,
    /// Whether the shank is drilled for a cotter pin.
    pub shank_drilled: bool,
}

impl AnBolt {
    /// A bolt with a plain head and a shank that is not drilled, as self-locking nuts want it.
    ///
    /// ```
    /// use shankline::{parts::AnBolt, tables::aircraft::AircraftGrip};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(AnBolt::plain(AircraftGrip::find("AN4-7")?).to_string(), "AN4-7A");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn plain(grip: AircraftGrip) -> Self {
        Self {
            grip,
            head_drilled: false,
            shank_drilled: false,
        }
    }

    /// The same bolt with its head drilled for safety wire, or not.
    ///
    /// ```
    /// use shankline::parts::AnBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt: AnBolt = "AN4-7A".parse()?;
    /// assert_eq!(bolt.with_drilled_head(true).to_string(), "AN4H-7A");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn with_drilled_head(mut self, drilled: bool) -> Self {
        self.head_drilled = drilled;
        self
    }

    /// The same bolt with its shank drilled for a cotter pin (a castle nut), or not.
    ///
    /// ```
    /// use shankline::parts::AnBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt: AnBolt = "AN4-7A".parse()?;
    /// assert_eq!(bolt.with_drilled_shank(true).to_string(), "AN4-7");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn with_drilled_shank(mut self, drilled: bool) -> Self {
        self.shank_drilled = drilled;
        self
    }

    /// The thread.
    ///
    /// # Errors
    ///
    /// None for a bolt of the table.
    ///
    /// ```
    /// use shankline::parts::AnBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("AN3-5A".parse::<AnBolt>()?.thread()?.to_string(), "#10-32 UNF");
    /// # Ok(())
    /// # }
    /// ```
    pub fn thread(&self) -> Result<Thread, Error> {
        thread_of(self.grip.bolt)
    }

    /// The lengths as a length search sees them. The grip is the plain shank: it ends at LB, the
    /// least grip, and the thread is taken to begin at LG, the greatest grip.
    ///
    /// The run-out of these threads has not been read. The washer that practice puts under the nut
    /// clears it: a supplier's page says the thread is made for one washer under the nut.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the table's lengths were not in order.
    ///
    /// ```
    /// use shankline::{parts::AnBolt, units::inches};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screw = "AN4-7A".parse::<AnBolt>()?.screw_length()?;
    /// assert!((screw.body_length_min - inches(0.438 - 0.016)).abs() < inches(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn screw_length(&self) -> Result<ScrewLength, Error> {
        let AircraftGrip { grip, length, .. } = self.grip;
        let mut screw = ScrewLength::measured(length.nominal, grip.min, grip.max)?;
        (screw.min, screw.max) = (length.min, length.max);
        screw.checked()
    }

    /// What the user must be told of values that were recalled, not read.
    ///
    /// ```
    /// use shankline::parts::AnBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("AN4-7A".parse::<AnBolt>()?.cautions().iter().count(), 1); // the shank limits
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.grip.bolt.cautions()
    }
}

/// The thread of an aircraft bolt: UNF where the table of threads has it, special otherwise (1-14).
pub(crate) fn thread_of(bolt: &AircraftBolt) -> Result<Thread, Error> {
    let fine = Thread::unified(bolt.nominal_diameter, UnifiedSeries::Unf).ok();
    fine.filter(|thread| thread.threads_per_inch() == Some(bolt.threads_per_inch))
        .map_or_else(
            || Thread::unified_special(bolt.nominal_diameter, bolt.threads_per_inch),
            Ok,
        )
}

impl FromStr for AnBolt {
    type Err = Error;

    /// Reads `AN4-7`, `AN4-7A`, `AN4H-7A`, in either case.
    fn from_str(text: &str) -> Result<Self, Error> {
        let grip = AircraftGrip::find(text)?;
        // What `find` accepts has no other H than the one for the head and no other A at its end.
        let upper = text.trim().to_ascii_uppercase();
        Ok(Self {
            grip,
            head_drilled: upper.contains('H'),
            shank_drilled: !upper.ends_with('A'),
        })
    }
}

impl fmt::Display for AnBolt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let head = if self.head_drilled { "H" } else { "" };
        let shank = if self.shank_drilled { "" } else { "A" };
        let AircraftGrip { bolt, dash, .. } = self.grip;
        f.pad(&format!("{}{head}-{dash}{shank}", bolt.name))
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for AnBolt {
    /// As its designation.
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

#[cfg(feature = "serde")]
impl<'de> serde::Deserialize<'de> for AnBolt {
    fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = alloc::string::String::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

/// Thicknesses of the flat washers that go with aircraft bolts.
///
/// ```
/// use shankline::{parts::AnWashers, tables::aircraft::AircraftBolt, units::inches};
/// # fn main() -> Result<(), shankline::Error> {
/// let washers = AnWashers::of(AircraftBolt::find("AN4")?)?;
/// assert_eq!(washers.regular.nominal, inches(0.063));
/// assert_eq!(washers.light.map(|light| light.nominal), Some(inches(0.032)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AnWashers {
    /// The regular washer.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub regular: Spread<Length>,
    /// The light one, about half as thick.
    pub light: Option<Spread<Length>>,
    recalled: Option<Caution>,
}

impl AnWashers {
    /// The washers of the tables, AN960. Their thicknesses were recalled, not read (a supplier's page
    /// has 1/16 in and 1/32 in for them), and are taken without tolerance: none is known.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] or [`Error::NoValue`] if the table has no regular washer of the size.
    ///
    /// ```
    /// use shankline::{parts::AnWashers, tables::aircraft::AircraftBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(AnWashers::of(AircraftBolt::find("AN6")?)?.cautions().iter().count() > 0);
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(bolt: &AircraftBolt) -> Result<Self, Error> {
        let thread = thread_of(bolt)?;
        let regular = Washer::find(WasherStyle::AircraftRegular, &thread)?;
        let light = Washer::find(WasherStyle::AircraftLight, &thread).ok();
        let thickness = regular.thickness_nominal.ok_or_else(|| Error::NoValue {
            quantity: "thickness",
            subject: regular.to_string(),
            reason: "its source prints none that has been read",
        })?;
        Ok(Self {
            regular: Spread::exact(thickness),
            light: light
                .and_then(|washer| washer.thickness_nominal)
                .map(Spread::exact),
            recalled: regular.recalled(),
        })
    }

    /// What the user must be told of them.
    ///
    /// ```
    /// use shankline::{parts::AnWashers, tables::aircraft::AircraftBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(AnWashers::of(AircraftBolt::find("AN6")?)?.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(self.recalled)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::String;

    #[test]
    fn designations_read_back() {
        for bolt in AircraftBolt::all() {
            assert!(thread_of(bolt).is_ok(), "{}", bolt.name);
            for grip in (0..=u8::MAX).filter_map(|dash| AircraftGrip::of(bolt, dash).ok()) {
                for (head, shank) in [(false, false), (false, true), (true, false), (true, true)] {
                    let made = AnBolt::plain(grip)
                        .with_drilled_head(head)
                        .with_drilled_shank(shank);
                    assert_eq!(made.to_string().parse(), Ok(made), "{made}");
                    assert_eq!(made.to_string().to_lowercase().parse(), Ok(made), "{made}");
                    assert!(made.screw_length().is_ok(), "{made}");
                }
            }
        }
    }

    #[test]
    fn what_is_not_a_designation_is_refused() {
        for text in [
            "",
            "AN",
            "AN4",
            "AN4-",
            "AN4-8",
            "AN4C-7",
            "AN4-7B",
            "NAS1104-7",
            "\u{e9}",
        ] {
            assert!(text.parse::<AnBolt>().is_err(), "{text}");
        }
        assert!("A".repeat(9999).parse::<AnBolt>().is_err());
        assert_eq!(
            String::from("AN4-7"),
            "AN4-7".parse::<AnBolt>().unwrap().to_string()
        );
    }
}
