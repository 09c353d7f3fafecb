//! Thread inserts of wire: a coil that lines a hole, so that its thread is stronger than that of the bolt in a soft part.

use core::fmt;

use alloc::format;

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::math::powf;
use crate::tables::methods;
use crate::thread::strip::{EngagedLength, StripAreas};
use crate::thread::{Limits, Thread, ThreadFit, ToleranceClass};
use crate::units::{Length, inches, millimetres};

/// Nominal length of a wire insert, in diameters of the bolt.
///
/// Source: ASME B18.29.2M-2005 (an extract).
///
/// ```
/// use shankline::parts::InsertLength;
/// assert_eq!(InsertLength::OneAndAHalf.to_string(), "1.5 D");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum InsertLength {
    /// One diameter.
    #[cfg_attr(feature = "serde", serde(rename = "1 D"))]
    One,
    /// One and a half.
    #[cfg_attr(feature = "serde", serde(rename = "1.5 D"))]
    OneAndAHalf,
    /// Two.
    #[cfg_attr(feature = "serde", serde(rename = "2 D"))]
    Two,
    /// Two and a half.
    #[cfg_attr(feature = "serde", serde(rename = "2.5 D"))]
    TwoAndAHalf,
    /// Three.
    #[cfg_attr(feature = "serde", serde(rename = "3 D"))]
    Three,
}

impl InsertLength {
    /// Every length, the shortest first.
    ///
    /// ```
    /// use shankline::parts::InsertLength;
    /// assert!(InsertLength::ALL.is_sorted());
    /// ```
    pub const ALL: [Self; 5] = [
        Self::One,
        Self::OneAndAHalf,
        Self::Two,
        Self::TwoAndAHalf,
        Self::Three,
    ];

    /// How many diameters of the bolt.
    ///
    /// ```
    /// use shankline::parts::InsertLength;
    /// assert_eq!(InsertLength::Three.diameters(), 3.0);
    /// ```
    #[must_use]
    pub const fn diameters(self) -> f64 {
        match self {
            Self::One => 1.0,
            Self::OneAndAHalf => 1.5,
            Self::Two => 2.0,
            Self::TwoAndAHalf => 2.5,
            Self::Three => 3.0,
        }
    }
}

impl fmt::Display for InsertLength {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::One => "1 D",
            Self::OneAndAHalf => "1.5 D",
            Self::Two => "2 D",
            Self::TwoAndAHalf => "2.5 D",
            Self::Three => "3 D",
        })
    }
}

/// With which tap the thread of a blind hole ends.
///
/// ```
/// use shankline::parts::LastTap;
/// assert_ne!(LastTap::Plug, LastTap::Bottoming);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LastTap {
    /// A plug tap, whose chamfer takes four pitches.
    Plug,
    /// A bottoming tap, whose chamfer takes two.
    Bottoming,
}

/// Least diameters of the thread that receives an insert.
///
/// ```
/// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let hole = WireInsert::new("1/4-20 UNC".parse()?, InsertLength::One)?.hole();
/// assert!((hole.pitch_diameter - inches(0.2825)).abs() < inches(0.00005));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct InsertHole {
    /// Major diameter, D + 1.299038 P.
    pub major_diameter: Length,
    /// Pitch diameter, D + 0.649519 P.
    pub pitch_diameter: Length,
    /// Minor diameter, D + 0.216506 P.
    pub minor_diameter: Length,
}

/// An insert of wire for a thread.
///
/// D and P are diameter and pitch of the bolt's thread. The wire has the height of a thread, 0.649519 P, on both sides: the
/// hole has a thread of the same pitch and of a larger diameter, for which there are taps of their own (STI).
///
/// | value | rule | known |
/// |---|---|---|
/// | hole, least major diameter | D + 1.299038 P | computed: ASME B18.29.1 has the thread of ASME B1.1 on a larger diameter; the taps of ASME B94.9 agree |
/// | hole, least pitch diameter | D + 0.649519 P | the same |
/// | hole, least minor diameter | D + 0.216506 P | the same; no witness |
/// | hole, greatest pitch diameter | that of an ordinary thread so large | computed; the limits of the standard were **not read** |
/// | nominal length L | 1, 1.5, 2, 2.5 or 3 D | published, ASME B18.29.2M; inch ones by practice |
/// | length in the hole | L - 0.75 P to L - 0.5 P | reproduced, ASME B18.29.2M, notes to Table 1 |
/// | first coil below where the thread begins | 0.75 P to 1.5 P | reproduced, the same |
/// | full thread of the hole | L + P | reproduced, the same: just where the deepest coil may end |
/// | depth of the drill, metric | L + 6 P and 0.5 D up to 8 mm, L + 6 P above; L + 4 P with a bottoming tap | reproduced, the same |
///
/// Not read: coils, free diameter and outer crest of the wire, the greatest minor diameter, the drill depths of inch
/// inserts, and what the wire itself bears: the standard asks for 1035 MPa, and nothing here checks it.
///
/// A solid bushing is no wire, and its outer thread is whatever its maker says. It has two pairs of ordinary threads, and
/// each is asked for alone: [`ThreadFit::strip_areas`] of the bolt in the bushing, and of the bushing in the part.
///
/// ```
/// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let insert = WireInsert::new("M8".parse()?, InsertLength::OneAndAHalf)?;
/// assert_eq!(insert.nominal_length(), millimetres(12.0));
/// assert!(WireInsert::new("M48".parse()?, InsertLength::One).is_err());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WireInsert {
    thread: Thread,
    length: InsertLength,
}

impl WireInsert {
    /// The insert for a bolt of this thread.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for sizes whose taps were not read: below #1 and M2.5, above 1-1/2 in and M39.
    /// [`Error::Mismatch`] for special threads, for which no inserts are made.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let special = Thread::metric_special(millimetres(10.0), millimetres(0.9))?;
    /// assert!(WireInsert::new(special, InsertLength::One).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(thread: Thread, length: InsertLength) -> Result<Self, Error> {
        if thread.unified_row().is_none() && thread.metric_row().is_none() {
            return Err(Error::Mismatch(format!(
                "no inserts are made for the special thread {thread}"
            )));
        }
        let (least, most) = if thread.is_unified() {
            (inches(0.073), inches(1.5))
        } else {
            (millimetres(2.5), millimetres(39.0))
        };
        let diameter = thread.nominal_diameter();
        if diameter < least || diameter > most {
            let allowed = Allowed::FromTo(least.into(), most.into());
            return Err(out_of_range("diameter of an insert", diameter, allowed));
        }
        Ok(Self { thread, length })
    }

    /// Nominal length L.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let insert = WireInsert::new("M10".parse()?, InsertLength::Two)?;
    /// assert_eq!(insert.nominal_length(), millimetres(20.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn nominal_length(&self) -> Length {
        self.length.diameters() * self.thread.nominal_diameter()
    }

    /// How long it is in its hole: L - 0.75 P to L - 0.5 P.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let insert = WireInsert::new("M6".parse()?, InsertLength::One)?;
    /// assert_eq!(insert.assembled_length().min, millimetres(5.25));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn assembled_length(&self) -> Limits {
        let (length, pitch) = (self.nominal_length(), self.thread.pitch());
        Limits {
            min: length - 0.75 * pitch,
            max: length - 0.5 * pitch,
        }
    }

    /// How deep its first coil lies below where the thread of the hole begins: 0.75 P to 1.5 P.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let insert = WireInsert::new("M6".parse()?, InsertLength::One)?;
    /// assert_eq!(insert.set_down().max, millimetres(1.5));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn set_down(&self) -> Limits {
        let pitch = self.thread.pitch();
        Limits {
            min: 0.75 * pitch,
            max: 1.5 * pitch,
        }
    }

    /// Least full thread of the hole, L + P: there the last coil ends at the deepest.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let insert = WireInsert::new("M6".parse()?, InsertLength::Two)?;
    /// assert_eq!(insert.full_thread(), millimetres(13.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn full_thread(&self) -> Length {
        self.nominal_length() + self.thread.pitch()
    }

    /// How deep a blind hole is drilled, from where its thread begins.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for inch threads, whose rule was not read.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, LastTap, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Machinery's Handbook, 31st ed.: M8 x 1.25, insert 12.0, drilled 23.5 mm deep.
    /// let insert = WireInsert::new("M8".parse()?, InsertLength::OneAndAHalf)?;
    /// assert_eq!(insert.drill_depth(LastTap::Plug)?, millimetres(23.5));
    /// # Ok(())
    /// # }
    /// ```
    pub fn drill_depth(&self, tap: LastTap) -> Result<Length, Error> {
        if self.thread.is_unified() {
            return Err(Error::NoValue {
                quantity: "depth of the drill",
                subject: format!("an insert for {}", self.thread),
                reason: "the rule for inch inserts was not read",
            });
        }
        let (length, pitch) = (self.nominal_length(), self.thread.pitch());
        let diameter = self.thread.nominal_diameter();
        Ok(match tap {
            LastTap::Plug if diameter > millimetres(8.0) => length + 6.0 * pitch,
            LastTap::Plug => length + 0.5 * diameter + 6.0 * pitch,
            LastTap::Bottoming => length + 4.0 * pitch,
        })
    }

    /// The thread that receives it, at its least.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = WireInsert::new("M6".parse()?, InsertLength::One)?.hole();
    /// assert!((hole.minor_diameter - millimetres(6.2165)).abs() < millimetres(0.0001));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn hole(&self) -> InsertHole {
        let (diameter, height) = (self.thread.nominal_diameter(), self.thread.sharp_height());
        InsertHole {
            major_diameter: diameter + 1.5 * height,
            pitch_diameter: diameter + 0.75 * height,
            minor_diameter: diameter + 0.25 * height,
        }
    }

    /// Greatest pitch diameter of the hole, by the class that the bolt's thread has in the insert afterwards: the tolerance
    /// of an ordinary thread so large, by ASME B1.1 over nine pitches, or by the formula of ISO 965-1,
    /// 90 P^0.4 D^0.1 micrometres times 0.85, 1.06, 1.32, 1.70 or 2.12 for the grades 4 to 8, which comes to within 4 % of its
    /// rounded table. Computed: the limits of ASME B18.29.1 and B18.29.2M were not read.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a class of bolts, of the other system, with an allowance, or of grades 3 and 9.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let insert = WireInsert::new("M10".parse()?, InsertLength::One)?;
    /// let greatest = insert.hole_pitch_diameter_max("6H".parse()?)?;
    /// // ISO 965-1 has 0.180 mm for a thread of 12 x 1.5.
    /// assert!((greatest - insert.hole().pitch_diameter - millimetres(0.180)).abs() < millimetres(0.003));
    /// # Ok(())
    /// # }
    /// ```
    pub fn hole_pitch_diameter_max(&self, class: ToleranceClass) -> Result<Length, Error> {
        let hole = self.hole();
        let other = || {
            Error::Mismatch(format!(
                "the hole of an insert for {} has no class {class}",
                self.thread
            ))
        };
        match class {
            ToleranceClass::Unified(_) if !class.is_external() => {
                let count = self.thread.threads_per_inch().ok_or_else(other)?;
                let ordinary = Thread::unified_special(hole.major_diameter, count)?;
                Ok(ordinary.limits_of(class)?.pitch_diameter.max)
            }
            ToleranceClass::Metric(own) if !self.thread.is_unified() => {
                let factor = match own.pitch_diameter() {
                    (4, 'H') => 0.85,
                    (5, 'H') => 1.06,
                    (6, 'H') => 1.32,
                    (7, 'H') => 1.70,
                    (8, 'H') => 2.12,
                    _ => return Err(other()),
                };
                let count = |length: Length| (length / millimetres(1.0)).value;
                let pitch = powf(count(self.thread.pitch()), 0.4);
                let tolerance = 0.09 * pitch * powf(count(hole.major_diameter), 0.1);
                Ok(hole.pitch_diameter + millimetres(factor * tolerance))
            }
            _ => Err(other()),
        }
    }

    /// Full threads that hold, of a screw that reaches `filled` deep into the thread of the hole: of the shortest coil that is
    /// set down farthest, less a pitch for the point of the screw.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if none is left.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let insert = WireInsert::new("M6".parse()?, InsertLength::Two)?;
    /// let threads = |filled| Ok::<_, shankline::Error>(insert.engaged(millimetres(filled))?.full_threads());
    /// assert!((threads(20.0)? - millimetres(11.25)).abs() < millimetres(1e-9)); // all of the coil
    /// assert!((threads(10.0)? - millimetres(7.5)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn engaged(&self, filled: Length) -> Result<EngagedLength, Error> {
        sane_length("length of thread filled", filled)?;
        let reached = filled - self.set_down().max - self.thread.pitch();
        EngagedLength::new(reached.min(self.assembled_length().min))
    }

    /// Shear areas: of the bolt's threads as in a nut of the fit, and of those of the part around the insert,
    ///
    /// ```text
    /// An = pi Ds (LE/P) [P/2 + 0.57735 (Ds - En)]     Ds major, En greatest pitch diameter of the hole
    /// ```
    ///
    /// which stand as the threads of the nut, with Ds in place of the bolt's major diameter. Ask
    /// [`stripping`](crate::strength::strip::stripping) what they bear.
    ///
    /// Source: the form is that of FED-STD-H28/2. MS51993B (a page of it, for solid inserts) has the pull-out by the same area,
    /// that of the outer thread. NASA RP-1228 (an abstract) is far below: a third of the cylinder at the pitch diameter, less than
    /// half of this; a maker's table of lengths, against which this form was held, is on the side of the form.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a fit of another thread; those of [`ThreadFit::strip_areas`] and of
    /// [`hole_pitch_diameter_max`](Self::hole_pitch_diameter_max).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::parts::{InsertLength, WireInsert};
    /// use shankline::strength::strip::{StripMethod, ThreadFailure, ThreadMaterial, stripping};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A conveyor's motor on a cast aluminium foot of 200 MPa (invented): M10 of class 8.8.
    /// let thread: Thread = "M10".parse()?;
    /// let fit = thread.fit("6g".parse()?, "6H".parse()?)?;
    /// let bolt = ThreadMaterial::new(megapascals(800.0), None)?;
    /// let foot = ThreadMaterial::new(megapascals(200.0), None)?;
    /// let breaks_first = |length| -> Result<bool, shankline::Error> {
    ///     let insert = WireInsert::new(thread, length)?;
    ///     let engaged = insert.engaged(millimetres(40.0))?;
    ///     let areas = insert.strip_areas(&fit, engaged)?;
    ///     let found = stripping(&areas, &bolt, &foot, StripMethod::FedStdH28)?;
    ///     Ok(found.first == ThreadFailure::Bolt)
    /// };
    /// assert!(!breaks_first(InsertLength::One)?);
    /// assert!(breaks_first(InsertLength::Two)?);
    /// # Ok(())
    /// # }
    /// ```
    pub fn strip_areas(
        &self,
        fit: &ThreadFit,
        engaged: EngagedLength,
    ) -> Result<StripAreas, Error> {
        if !fit.bolt.thread.is_same_size(&self.thread) {
            return Err(Error::Mismatch(format!(
                "a bolt of {} does not go into an insert for {}",
                fit.bolt.thread, self.thread
            )));
        }
        let class = fit.nut.thread.class().ok_or_else(|| {
            Error::Mismatch("the fit does not say the class of its internal thread".into())
        })?;
        let greatest = self.hole_pitch_diameter_max(class)?;
        fit.strip_areas(engaged)?
            .around(self.hole().major_diameter, greatest)
    }

    /// The working: every size with its rule and how it is known.
    ///
    /// ```
    /// use shankline::{parts::{InsertLength, WireInsert}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let working = WireInsert::new("M12".parse()?, InsertLength::Two)?.derivation();
    /// working.check()?;
    /// assert_eq!(working.steps().len(), 8);
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (thread, hole) = (&self.thread, self.hole());
        let (lies, coil) = (self.set_down(), self.assembled_length());
        let of_thread = |what, symbol, formula, found: Length| {
            Step::new(what, symbol, formula, found)
                .with("D", thread.nominal_diameter())
                .with("P", thread.pitch())
                .source(methods::ASME_B18_29_1_RECEIVING_THREAD)
        };
        let of_length = |what, symbol, formula, found: Length| {
            Step::new(what, symbol, formula, found)
                .with("L", self.nominal_length())
                .with("P", thread.pitch())
                .source(methods::ASME_B18_29_2M_NOTES_TO_TABLE_1)
        };
        Derivation::new(format!("Insert of {} for {thread}", self.length))
            .step(of_thread(
                "least major diameter of the hole",
                "Ds",
                "D + 3 / 4 * sqrt(3) * P",
                hole.major_diameter,
            ))
            .step(of_thread(
                "least pitch diameter of the hole",
                "Es",
                "D + 3 / 8 * sqrt(3) * P",
                hole.pitch_diameter,
            ))
            .step(of_thread(
                "least minor diameter of the hole",
                "Ks",
                "D + 1 / 8 * sqrt(3) * P",
                hole.minor_diameter,
            ))
            .step(
                Step::new("nominal length", "L", "n * D", self.nominal_length())
                    .with("n", self.length.diameters())
                    .with("D", thread.nominal_diameter())
                    .source(methods::ASME_B18_29_2M_LENGTHS),
            )
            .step(of_length(
                "least length in the hole",
                "La",
                "L - 0.75 * P",
                coil.min,
            ))
            .step(
                Step::new("least set-down", "s", "0.75 * P", lies.min)
                    .with("P", thread.pitch())
                    .source(methods::ASME_B18_29_2M_NOTES_TO_TABLE_1),
            )
            .step(
                Step::new("greatest set-down", "S", "1.5 * P", lies.max)
                    .with("P", thread.pitch())
                    .source(methods::ASME_B18_29_2M_NOTES_TO_TABLE_1),
            )
            .step(of_length(
                "least full thread of the hole",
                "T",
                "L + P",
                self.full_thread(),
            ))
    }
}
