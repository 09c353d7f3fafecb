//! Basic profile and the design profiles UN, UNR, UNJ, M and MJ.
//!
//! H = (sqrt 3 / 2) P is the height of the sharp triangle. All profiles share the thread angle of 60
//! degrees, the crest of the bolt (H/8 below the sharp crest, a flat of P/8) and the pitch diameter
//! d2 = d - 3H/4. They differ in the root of the bolt and the crest of the nut:
//!
//! | profile | overlap | nut minor diameter | bolt thread height | bolt root | root radius |
//! |---|---|---|---|---|---|
//! | UN | 5H/8 | D - 5H/4 | 3H/4 | D - 1.299038 P | flat; rounding not bounded |
//! | UNR | 5H/8 | (UN nut) | 11H/16 | D - 1.190785 P | 0.108253 P to 0.144338 P |
//! | M | 5H/8 | D - 5H/4 | 17H/24 | d - 1.226869 P | 0.125 P to 0.144338 P |
//! | UNJ, MJ | 9H/16 | D - 9H/8 | 2H/3 | D - 1.154701 P | 0.15011 P to 0.18042 P |
//!
//! The flat UN root is that of the handbook's "section at minor diameter at D - 2 `h_b`"; the least
//! radius of M holds for property class 8.8 and above, the greatest is that of the design profile.
//!
//! Sources: ISO 68-1 and ASME B1.1 basic profile, Machinery's Handbook, 27th ed. (read in
//! reproductions); the root of UNR in the words of ANSI/ASME B1.1-1989, and of UNJ in the scope of
//! ASME B1.15-1995, both read; heights of UNJ from a comparison by a maker of ring gauges; MJ taken as
//! UNJ (ISO 5855-1 and ASME B1.21M not read).

use alloc::format;

use super::{Limits, Thread, area::H_PER_PITCH};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::units::{Angle, Length};

/// Profile of a thread.
///
/// ```
/// use shankline::{prelude::*, thread::Profile};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("1/2-20 UNRF-2A".parse::<Thread>()?.profile(), Profile::Unr);
/// assert_eq!("M10".parse::<Thread>()?.profile(), Profile::M);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Profile {
    /// Unified, flat root or root rounded by wear of the tool.
    Un,
    /// Unified with a rounded root; bolts only, in UN nuts.
    Unr,
    /// Unified with a root of large controlled radius (aerospace).
    Unj,
    /// ISO metric.
    M,
    /// Metric with a root of large controlled radius (aerospace).
    Mj,
}

impl Profile {
    /// The symbol in a designation.
    ///
    /// ```
    /// use shankline::thread::Profile;
    /// assert_eq!(Profile::Unj.symbol(), "UNJ");
    /// ```
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Un => "UN",
            Self::Unr => "UNR",
            Self::Unj => "UNJ",
            Self::M => "M",
            Self::Mj => "MJ",
        }
    }

    /// Whether the profile is one of inch threads.
    ///
    /// ```
    /// use shankline::thread::Profile;
    /// assert!(Profile::Unr.is_unified() && !Profile::Mj.is_unified());
    /// ```
    #[must_use]
    pub const fn is_unified(self) -> bool {
        matches!(self, Self::Un | Self::Unr | Self::Unj)
    }

    /// Whether the root of the bolt has the large controlled radius: UNJ, MJ.
    ///
    /// ```
    /// use shankline::thread::Profile;
    /// assert!(Profile::Mj.has_large_root() && !Profile::Unr.has_large_root());
    /// ```
    #[must_use]
    pub const fn has_large_root(self) -> bool {
        matches!(self, Self::Unj | Self::Mj)
    }

    /// Radial overlap of bolt and nut threads over H.
    pub(super) const fn overlap(self) -> f64 {
        if self.has_large_root() {
            9.0 / 16.0
        } else {
            5.0 / 8.0
        }
    }

    /// Height of the bolt thread over H.
    const fn bolt_height(self) -> f64 {
        match self {
            Self::Un => 3.0 / 4.0,
            Self::Unr => 11.0 / 16.0,
            Self::M => 17.0 / 24.0,
            Self::Unj | Self::Mj => 2.0 / 3.0,
        }
    }

    /// Least and greatest root radius over P.
    const fn root_radius(self) -> Option<(f64, f64)> {
        match self {
            Self::Un => None,
            Self::Unr => Some((H_PER_PITCH / 8.0, H_PER_PITCH / 6.0)),
            Self::M => Some((0.125, H_PER_PITCH / 6.0)),
            Self::Unj | Self::Mj => Some((0.15011, 0.18042)),
        }
    }
}

/// Basic dimensions of a thread, without tolerances: what a drawing needs.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::uom::si::length::millimeter;
/// # fn main() -> Result<(), shankline::Error> {
/// let profile = "M20".parse::<Thread>()?.basic_profile();
/// let printed = |length: Length| format!("{:.3}", length.get::<millimeter>());
/// assert_eq!(printed(profile.pitch_diameter), "18.376");
/// assert_eq!(printed(profile.nut_minor_diameter), "17.294");
/// assert_eq!(printed(profile.bolt_root_diameter), "16.933");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThreadProfile {
    /// The thread.
    pub thread: Thread,
    /// The profile.
    pub profile: Profile,
    /// Major diameter D, d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub major_diameter: Length,
    /// Pitch diameter D2, d2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch_diameter: Length,
    /// Minor diameter of the nut D1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_minor_diameter: Length,
    /// Diameter of the bolt at the root of its profile, d3.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_root_diameter: Length,
    /// Height of the sharp triangle H.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub sharp_height: Length,
    /// Radial overlap of bolt and nut threads, the height of the basic profile.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub overlap: Length,
    /// Height of the bolt thread, crest to root.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_thread_height: Length,
    /// Width of the flat at the crest of the bolt, P/8.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_crest_flat: Length,
    /// Width of the flat at the crest of the nut: P/4, of UNJ and MJ 5P/16.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_crest_flat: Length,
    /// Radius at the root of the bolt; none where it is flat.
    pub bolt_root_radius: Option<Limits<Length>>,
    /// Pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Lead.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub lead: Length,
    /// Lead angle at the pitch diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub lead_angle: Angle,
}

impl ThreadProfile {
    /// The working: the diameters, heights and the lead angle from size and pitch.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let derivation = "1/4-28 UNJF-3A".parse::<Thread>()?.basic_profile().derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps()[2].formula(), "D - 9 / 8 * H");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (nut, height) = match self.profile {
            Profile::Un => ("D - 5 / 4 * H", "3 / 4 * H"),
            Profile::Unr => ("D - 5 / 4 * H", "11 / 16 * H"),
            Profile::M => ("D - 5 / 4 * H", "17 / 24 * H"),
            Profile::Unj | Profile::Mj => ("D - 9 / 8 * H", "2 / 3 * H"),
        };
        let from_height = |what, symbol, formula, value: Length| {
            Step::new(what, symbol, formula, value)
                .with("D", self.major_diameter)
                .with("H", self.sharp_height)
        };
        Derivation::new(format!("Basic dimensions of {}", self.thread))
            .step(
                Step::new("sharp height", "H", "sqrt(3) / 2 * P", self.sharp_height)
                    .with("P", self.pitch),
            )
            .step(from_height(
                "pitch diameter",
                "D2",
                "D - 3 / 4 * H",
                self.pitch_diameter,
            ))
            .step(from_height(
                "minor diameter of the nut",
                "D1",
                nut,
                self.nut_minor_diameter,
            ))
            .step(
                Step::new(
                    "height of the bolt thread",
                    "h3",
                    height,
                    self.bolt_thread_height,
                )
                .with("H", self.sharp_height),
            )
            .step(
                Step::new(
                    "root of the bolt",
                    "d3",
                    "D - 2 * h3",
                    self.bolt_root_diameter,
                )
                .with("D", self.major_diameter)
                .with("h3", self.bolt_thread_height),
            )
            .step(
                Step::new(
                    "lead angle",
                    "lambda",
                    "atan(L / (pi * D2))",
                    self.lead_angle,
                )
                .with("L", self.lead)
                .with("D2", self.pitch_diameter),
            )
    }
}

impl Thread {
    /// The profile.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::Profile};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!("MJ6x1-4h6h".parse::<Thread>()?.profile(), Profile::Mj);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn profile(&self) -> Profile {
        self.profile
    }

    /// The same thread with another profile of its system.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a profile of the other system, and for UNR with a class of internal
    /// threads.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::Profile};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/4-28 UNF-3A".parse()?;
    /// assert_eq!(thread.with_profile(Profile::Unj)?.to_string(), "1/4-28 UNJF-3A");
    /// assert!(thread.with_profile(Profile::Mj).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_profile(self, profile: Profile) -> Result<Self, Error> {
        let symbol = profile.symbol();
        if profile.is_unified() != self.is_unified() {
            return Err(Error::Mismatch(format!(
                "{self} cannot have the profile {symbol} of the other system"
            )));
        }
        if profile == Profile::Unr && self.class.is_some_and(|class| !class.is_external()) {
            return Err(Error::Mismatch(format!(
                "{self} is an internal thread: UNR is a profile of external ones, their nuts are UN"
            )));
        }
        Ok(Self { profile, ..self })
    }

    /// Basic dimensions of the profile: diameters, heights, flats, root radius, lead.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A UNJ bolt keeps more at its root than a UN bolt.
    /// let root = |text: &str| -> Result<f64, shankline::Error> {
    ///     Ok(text.parse::<Thread>()?.basic_profile().bolt_root_diameter.get::<inch>())
    /// };
    /// assert!((root("1/4-28 UNJF-3A")? - 0.2088).abs() < 5e-5); // D - 1.154701 P
    /// assert!(root("1/4-28 UNF-3A")? < root("1/4-28 UNRF-3A")?);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn basic_profile(&self) -> ThreadProfile {
        let (profile, pitch, height) = (self.profile, self.pitch, self.sharp_height());
        let bolt_thread_height = profile.bolt_height() * height;
        // A crest cut x below the sharp crest is 2 x tan 30 = x P/H wide.
        let nut_crest_flat = (7.0 / 8.0 - profile.overlap()) * pitch;
        ThreadProfile {
            thread: *self,
            profile,
            major_diameter: self.diameter,
            pitch_diameter: self.basic_pitch_diameter(),
            nut_minor_diameter: self.basic_minor_diameter(),
            bolt_root_diameter: self.diameter - 2.0 * bolt_thread_height,
            sharp_height: height,
            overlap: self.basic_thread_height(),
            bolt_thread_height,
            bolt_crest_flat: 0.125 * pitch,
            nut_crest_flat,
            bolt_root_radius: profile.root_radius().map(|(min, max)| Limits {
                min: min * pitch,
                max: max * pitch,
            }),
            pitch,
            lead: self.lead(),
            lead_angle: self.lead_angle(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::millimetres;

    fn profile(text: &str) -> ThreadProfile {
        text.parse::<Thread>().unwrap().basic_profile()
    }

    /// Multiples of P that the tables of the standards print, for P = 1.
    #[test]
    fn multiples_of_the_pitch() {
        let of = |text: &str| {
            let p = profile(text);
            let over = |length: Length| length.value / p.pitch.value;
            (
                over(p.major_diameter - p.bolt_root_diameter),
                over(p.major_diameter - p.nut_minor_diameter),
                over(p.bolt_thread_height),
                over(p.overlap),
                over(p.nut_crest_flat),
            )
        };
        let close = |found: (f64, f64, f64, f64, f64), printed: [f64; 5]| {
            let found = [found.0, found.1, found.2, found.3, found.4];
            for (found, printed) in found.into_iter().zip(printed) {
                assert!((found - printed).abs() < 5e-6, "{found} {printed}");
            }
        };
        let basic = [1.082_53, 0.541_27, 0.25];
        close(
            of("1/2-13 UNC"),
            [1.299_04, basic[0], 0.649_52, basic[1], basic[2]],
        );
        close(
            of("1/2-13 UNRC"),
            [1.190_78, basic[0], 0.595_39, basic[1], basic[2]],
        );
        close(
            of("M12"),
            [1.226_87, basic[0], 0.613_43, basic[1], basic[2]],
        );
        close(
            of("MJ12x1.75"),
            [1.154_70, 0.974_28, 0.577_35, 0.487_14, 0.3125],
        );
    }

    /// An arc of radius r tangent to both flanks ends r above the sharp root: the greatest radius of
    /// M, UNJ and MJ just reaches the root of its profile, that of UNR stays above it.
    #[test]
    fn root_radii_lie_within_the_root() {
        assert_eq!(profile("1/2-13 UNC").bolt_root_radius, None);
        for (text, reaches) in [
            ("1/2-13 UNRC", false),
            ("1/2-13 UNJC", true),
            ("M12", true),
            ("MJ12x1.75", true),
        ] {
            let p = profile(text);
            let radius = p.bolt_root_radius.unwrap();
            assert!(millimetres(0.0) < radius.min && radius.min < radius.max);
            let room = 0.875 * p.sharp_height - p.bolt_thread_height;
            let spare = (room - radius.max) / p.pitch;
            assert_eq!(spare.value.abs() < 1e-5, reaches, "{text} {spare:?}");
            assert!(spare.value > -1e-5, "{text}");
        }
    }
}
