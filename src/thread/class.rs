//! Tolerance classes of threads.

use alloc::string::String;
use core::{fmt, str::FromStr};

use crate::error::{Error, sane_text};
use crate::names::UnifiedClass;
use crate::tables::thread_tolerances::ThreadKind;

/// Tolerance class of a metric thread: grade and position of the pitch diameter, and of the crest
/// diameter where that differs (`6g`, `4g6g`, `6H`).
///
/// ```
/// use shankline::thread::ToleranceClass;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("4g6g".parse::<ToleranceClass>()?.to_string(), "4g6g");
/// assert_eq!("6g6g".parse::<ToleranceClass>()?.to_string(), "6g");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MetricClass {
    pitch: (u8, u8),
    crest: (u8, u8),
}

impl MetricClass {
    /// Tolerance grade (3 to 9) and position (e, f, g, h; G, H) of the pitch diameter.
    ///
    /// ```
    /// use shankline::thread::ToleranceClass;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ToleranceClass::Metric(class) = "4g6g".parse()? else { unreachable!() };
    /// assert_eq!(class.pitch_diameter(), (4, 'g'));
    /// assert_eq!(class.crest_diameter(), (6, 'g'));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn pitch_diameter(self) -> (u8, char) {
        (self.pitch.0, char::from(self.pitch.1))
    }

    /// Tolerance grade and position of the crest diameter.
    ///
    /// ```
    /// use shankline::thread::ToleranceClass;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ToleranceClass::Metric(class) = "6H".parse()? else { unreachable!() };
    /// assert_eq!(class.crest_diameter(), (6, 'H'));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn crest_diameter(self) -> (u8, char) {
        (self.crest.0, char::from(self.crest.1))
    }
}

/// Tolerance class of a thread.
///
/// ```
/// use shankline::thread::{ToleranceClass, UnifiedClass};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!("2A".parse::<ToleranceClass>()?, ToleranceClass::Unified(UnifiedClass::Class2A));
/// assert!("6g".parse::<ToleranceClass>()?.is_external());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum ToleranceClass {
    /// Of a Unified thread.
    Unified(UnifiedClass),
    /// Of a metric thread.
    Metric(MetricClass),
}

impl ToleranceClass {
    /// Whether the class is of an external thread (a bolt).
    ///
    /// ```
    /// use shankline::thread::ToleranceClass;
    /// assert!(!"2B".parse::<ToleranceClass>().unwrap().is_external());
    /// ```
    #[must_use]
    pub const fn is_external(self) -> bool {
        match self {
            Self::Unified(class) => matches!(
                class,
                UnifiedClass::Class1A | UnifiedClass::Class2A | UnifiedClass::Class3A
            ),
            Self::Metric(class) => class.pitch.1.is_ascii_lowercase(),
        }
    }

    /// Reads a class of Unified threads.
    pub(super) fn unified(text: &[u8]) -> Option<Self> {
        Some(Self::Unified(match text {
            b"1A" => UnifiedClass::Class1A,
            b"2A" => UnifiedClass::Class2A,
            b"3A" => UnifiedClass::Class3A,
            b"1B" => UnifiedClass::Class1B,
            b"2B" => UnifiedClass::Class2B,
            b"3B" => UnifiedClass::Class3B,
            _ => return None,
        }))
    }

    /// Reads a class of metric threads.
    pub(super) fn metric(text: &[u8]) -> Option<Self> {
        let zone = |grade: u8, position: u8| {
            let known = (b'3'..=b'9').contains(&grade) && b"efghGH".contains(&position);
            known.then(|| (grade - b'0', position))
        };
        let (pitch, crest) = match *text {
            [g, p] => (zone(g, p)?, zone(g, p)?),
            [g, p, crest_grade, crest_position] => {
                (zone(g, p)?, zone(crest_grade, crest_position)?)
            }
            _ => return None,
        };
        let same_side = pitch.1.is_ascii_lowercase() == crest.1.is_ascii_lowercase();
        same_side.then_some(Self::Metric(MetricClass { pitch, crest }))
    }
}

impl ThreadKind {
    /// The kind of thread a tolerance class is for.
    ///
    /// ```
    /// use shankline::tables::thread_tolerances::ThreadKind;
    /// assert_eq!(ThreadKind::of("2A".parse().unwrap()), ThreadKind::External);
    /// ```
    #[must_use]
    pub const fn of(class: ToleranceClass) -> Self {
        if class.is_external() {
            Self::External
        } else {
            Self::Internal
        }
    }
}

impl FromStr for ToleranceClass {
    type Err = Error;
    fn from_str(text: &str) -> Result<Self, Error> {
        sane_text("thread tolerance class", text)?;
        let bytes = text.trim().as_bytes();
        Self::unified(bytes)
            .or_else(|| Self::metric(bytes))
            .ok_or_else(|| Error::UnknownName {
                what: "thread tolerance class",
                text: text.into(),
                known: String::from("1A, 2A, 3A, 1B, 2B, 3B, and such as 6g, 6H, 4g6g"),
            })
    }
}

impl fmt::Display for ToleranceClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unified(class) => f.write_str(match class {
                UnifiedClass::Class1A => "1A",
                UnifiedClass::Class2A => "2A",
                UnifiedClass::Class3A => "3A",
                UnifiedClass::Class1B => "1B",
                UnifiedClass::Class2B => "2B",
                UnifiedClass::Class3B => "3B",
            }),
            Self::Metric(class) => {
                let (grade, position) = class.pitch_diameter();
                write!(f, "{grade}{position}")?;
                if class.crest != class.pitch {
                    let (grade, position) = class.crest_diameter();
                    write!(f, "{grade}{position}")?;
                }
                Ok(())
            }
        }
    }
}
