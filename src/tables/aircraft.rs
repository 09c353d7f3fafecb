//! Aircraft bolts AN3 to AN20 and their grips.
//!
//! The grip of an aircraft bolt is its plain shank. The dash number is neither the grip nor the
//! length: it counts eighths of an inch, tens for whole inches (-13 is 1-3/8 in), so that -8 and -9
//! do not exist, and the grip is that less the offset of the bolt. Close tolerance bolts (NAS, MS) do
//! count their grip, in sixteenths.

use alloc::{format, string::ToString, vec::Vec};
use core::fmt;

use super::{generated, nanometres};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, sane_length, sane_text};
use crate::source::{Basis, Provenance, Source};
use crate::spread::Spread;
use crate::units::{Length, inches};

/// An aircraft bolt of one diameter: AN3 is 3/16 in, AN4 4/16 in, and so on. Threads are of class 3A.
///
/// The limits of the shank were recalled, and so was every value above AN10; the 0.003 in between
/// the limits were read.
///
/// ```
/// use shankline::{tables::aircraft::AircraftBolt, units::inches};
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(AircraftBolt::find("AN4")?.thread_portion, Some(inches(0.469)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AircraftBolt {
    /// Name: `AN4`.
    pub name: &'static str,
    /// Nominal diameter of the thread; #10 (0.190 in) for AN3.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch.
    pub threads_per_inch: f64,
    /// Greatest diameter of the shank.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shank_diameter_max: Length,
    /// Least diameter of the shank.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shank_diameter_min: Length,
    /// Length from the end of the shank to the end of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub thread_portion: Option<Length>,
    /// What the eighths of the dash number exceed the grip by; none if no grip of the bolt was read.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub grip_offset: Option<Length>,
    /// What the length exceeds the eighths of the dash number by.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_offset: Option<Length>,
    /// Tolerance of the grip, either way.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub grip_tolerance: Option<Length>,
    /// How much longer than nominal the bolt may be.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_tolerance_plus: Option<Length>,
    /// How much shorter than nominal the bolt may be.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_tolerance_minus: Option<Length>,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// How the limits of the shank are known.
    pub shank_basis: Basis,
    /// Source of the limits of the shank.
    pub shank_source: &'static Source,
    /// Source of the offsets.
    pub rule_source: Option<&'static Source>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl AircraftBolt {
    /// Every bolt, by rising size.
    ///
    /// ```
    /// assert_eq!(shankline::tables::aircraft::AircraftBolt::all().len(), 13);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::aircraft_bolts::AIRCRAFT_BOLTS
    }

    /// The bolt of a name such as `AN4`.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the names.
    ///
    /// ```
    /// use shankline::tables::aircraft::AircraftBolt;
    /// assert_eq!(
    ///     AircraftBolt::find("AN11").unwrap_err().to_string(),
    ///     "AN11 is not in the table of aircraft bolts; it has AN3, AN4, AN5, AN6, AN7, AN8, AN9, \
    ///      AN10, AN12, AN14, AN16, AN18, AN20",
    /// );
    /// ```
    pub fn find(name: &str) -> Result<&'static Self, Error> {
        sane_text("name of an aircraft bolt", name)?;
        let name = name.trim();
        Self::all()
            .iter()
            .find(|bolt| bolt.name.eq_ignore_ascii_case(name))
            .ok_or_else(|| {
                let names: Vec<&str> = Self::all().iter().map(|bolt| bolt.name).collect();
                Error::NotInTable {
                    table: "the table of aircraft bolts",
                    wanted: name.to_string(),
                    available: format!("it has {}", names.join(", ")),
                }
            })
    }

    /// What the user must be told of values that were recalled, not read.
    ///
    /// ```
    /// use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(AircraftBolt::find("AN4")?.cautions().iter().count(), 1);
    /// assert_eq!(AircraftBolt::find("AN12")?.cautions().iter().count(), 2);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default()
            .with(Caution::from_memory(
                "thread of the aircraft bolt",
                self.provenance,
            ))
            .with(Caution::from_memory(
                "pair of limits of the aircraft bolt's shank",
                super::known(self.shank_source, self.shank_basis),
            ))
    }

    /// The rule for grips, or the refusal of a bolt whose grips were not read.
    fn rule(&self) -> Result<GripRule, Error> {
        let rule = || {
            Some(GripRule {
                grip_offset: self.grip_offset?,
                length_offset: self.length_offset?,
                grip_tolerance: self.grip_tolerance?,
                longer: self.length_tolerance_plus?,
                shorter: self.length_tolerance_minus?,
                source: self.rule_source?,
            })
        };
        rule().ok_or_else(|| Error::NoValue {
            quantity: "grip",
            subject: self.name.to_string(),
            reason: "nobody has read its grips; those of AN3 to AN6 are known",
        })
    }
}

/// The columns of [`AircraftBolt`] that come together.
struct GripRule {
    grip_offset: Length,
    length_offset: Length,
    grip_tolerance: Length,
    longer: Length,
    shorter: Length,
    source: &'static Source,
}

/// Grip and length of one dash number, as read.
///
/// ```
/// use shankline::tables::aircraft::AircraftGripRow;
/// let first = &AircraftGripRow::all()[0];
/// assert_eq!((first.bolt, first.dash), ("AN3", 3));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AircraftGripRow {
    /// Name of the bolt.
    pub bolt: &'static str,
    /// Dash number.
    pub dash: u8,
    /// Nominal grip.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub grip: Length,
    /// Nominal length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length: Length,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl AircraftGripRow {
    /// Every row.
    ///
    /// ```
    /// assert_eq!(shankline::tables::aircraft::AircraftGripRow::all().len(), 36);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::aircraft_bolt_grips::AIRCRAFT_BOLT_GRIPS
    }
}

/// Grip and length of an aircraft bolt of one dash number.
///
/// ```
/// use shankline::{prelude::*, source::Basis, tables::aircraft::AircraftGrip};
/// # fn main() -> Result<(), shankline::Error> {
/// let read = AircraftGrip::find("AN4-7A")?;
/// assert_eq!((read.grip.nominal, read.provenance.basis), (inches(0.438), Basis::Reproduced));
/// let ruled = AircraftGrip::find("AN4-15")?; // 1-5/8 in less 7/16 in
/// assert!((ruled.grip.nominal - inches(1.1875)).abs() < inches(1e-9));
/// assert_eq!(ruled.provenance.basis, Basis::Computed);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AircraftGrip {
    /// The bolt.
    pub bolt: &'static AircraftBolt,
    /// Dash number.
    pub dash: u8,
    /// Grip: length of the plain shank.
    pub grip: Spread<Length>,
    /// Length from under the head to the end.
    pub length: Spread<Length>,
    /// Source: read in a table, or computed by the rule of eighths.
    pub provenance: Provenance,
}

/// Longest bolt the rule of eighths is used for: 8 in, the end of the drawing as recalled.
const LONGEST_DASH: u8 = 80;

impl AircraftGrip {
    /// The grip of a designation such as `AN4-7`, `AN4-7A` (shank not drilled) or `AN4H-7A` (head
    /// drilled for wire); the letters change neither grip nor length. Other materials than steel
    /// (`C`, `DD` in place of the hyphen) are not known here.
    ///
    /// # Errors
    ///
    /// [`Error::UnknownName`] for other text, [`Error::NotInTable`] for a bolt or dash number that
    /// does not exist, [`Error::NoValue`] for a bolt whose grip was not read.
    ///
    /// ```
    /// use shankline::tables::aircraft::AircraftGrip;
    /// assert_eq!(
    ///     AircraftGrip::find("AN4-8").unwrap_err().to_string(),
    ///     "AN4-8 is not in the table of aircraft bolt grips; \
    ///      the units of a dash number end at 7: its neighbours are AN4-7 and AN4-10",
    /// );
    /// assert!(AircraftGrip::find("AN8-12").is_err());
    /// ```
    pub fn find(designation: &str) -> Result<Self, Error> {
        sane_text("designation of an aircraft bolt", designation)?;
        let (name, dash) = parts(designation).ok_or_else(|| Error::UnknownName {
            what: "designation of an aircraft bolt",
            text: designation.into(),
            known: "forms such as AN4-7, AN4-7A, AN4H-7A".into(),
        })?;
        Self::of(AircraftBolt::find(name)?, dash)
    }

    /// The grip of a bolt and a dash number: read, or by the rule of eighths up to -80.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] for a dash number that does not exist, [`Error::NoValue`] for a bolt
    /// whose grip was not read.
    ///
    /// ```
    /// use shankline::tables::aircraft::{AircraftBolt, AircraftGrip};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(
    ///     AircraftGrip::of(AircraftBolt::find("AN6")?, 4).unwrap_err().to_string(),
    ///     "AN6-4 is not in the table of aircraft bolt grips; it goes from AN6-5 to AN6-80",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(bolt: &'static AircraftBolt, dash: u8) -> Result<Self, Error> {
        let refuse = |available| Error::NotInTable {
            table: "the table of aircraft bolt grips",
            wanted: format!("{}-{dash}", bolt.name),
            available,
        };
        let (inch, units) = (dash / 10, dash % 10);
        if units > 7 && dash < LONGEST_DASH {
            return Err(refuse(format!(
                "the units of a dash number end at 7: its neighbours are {0}-{1} and {0}-{2}",
                bolt.name,
                dash - units + 7,
                10 * (u16::from(inch) + 1),
            )));
        }
        let rule = bolt.rule()?;
        let mut rows = AircraftGripRow::all()
            .iter()
            .filter(|row| row.bolt == bolt.name)
            .peekable();
        let shortest = rows.peek().map_or(dash, |row| row.dash);
        if dash < shortest || dash > LONGEST_DASH {
            return Err(refuse(format!(
                "it goes from {0}-{shortest} to {0}-{LONGEST_DASH}",
                bolt.name
            )));
        }
        let eighths = inches(f64::from(inch) + f64::from(units) / 8.0);
        let (grip, length, provenance) = rows.find(|row| row.dash == dash).map_or_else(
            || {
                (
                    eighths - rule.grip_offset,
                    eighths + rule.length_offset,
                    super::known(rule.source, Basis::Computed),
                )
            },
            |row| (row.grip, row.length, row.provenance),
        );
        Ok(Self {
            bolt,
            dash,
            grip: Spread {
                min: grip - rule.grip_tolerance,
                nominal: grip,
                max: grip + rule.grip_tolerance,
            },
            length: Spread {
                min: length - rule.shorter,
                nominal: length,
                max: length + rule.longer,
            },
            provenance,
        })
    }

    /// The shortest bolt whose nominal grip is at least a length. Its grip may be 0.016 in less, and
    /// the next step is 1/8 in: washers make up the difference.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, or longer than the
    /// longest grip; [`Error::NoValue`] for a bolt whose grip was not read.
    ///
    /// ```
    /// use shankline::{tables::aircraft::{AircraftBolt, AircraftGrip}, units::inches};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = AircraftBolt::find("AN5")?;
    /// assert_eq!(AircraftGrip::at_least(bolt, inches(0.6))?.to_string(), "AN5-11");
    /// # Ok(())
    /// # }
    /// ```
    pub fn at_least(bolt: &'static AircraftBolt, grip: Length) -> Result<Self, Error> {
        sane_length("grip", grip)?;
        let longest = Self::of(bolt, LONGEST_DASH)?;
        let reaches = |found: &Self| nanometres(found.grip.nominal) >= nanometres(grip);
        if !reaches(&longest) {
            return Err(out_of_range(
                format!("grip of {}", bolt.name),
                grip,
                Allowed::AtMost(longest.grip.nominal.into()),
            ));
        }
        Ok((1..LONGEST_DASH)
            .filter_map(|dash| Self::of(bolt, dash).ok())
            .find(reaches)
            .unwrap_or(longest))
    }
}

impl fmt::Display for AircraftGrip {
    /// `AN4-7`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&format!("{}-{}", self.bolt.name, self.dash))
    }
}

/// `AN4` and 7 of `AN4-7`, `AN4H-7A` and the like.
fn parts(designation: &str) -> Option<(&str, u8)> {
    let text = designation.trim();
    let name_end = 2 + text
        .get(2..)?
        .find(|c: char| !c.is_ascii_digit())
        .filter(|&digits| digits > 0)?;
    let (name, rest) = text.split_at(name_end);
    if !name.get(..2)?.eq_ignore_ascii_case("AN") {
        return None;
    }
    let rest = ["-H", "-h", "H-", "h-", "H", "h", "-"]
        .iter()
        .find_map(|mark| rest.strip_prefix(mark))?;
    let dash = rest.strip_suffix(['A', 'a']).unwrap_or(rest);
    let digits = dash.bytes().all(|byte| byte.is_ascii_digit());
    Some((name, dash.parse().ok().filter(|_| digits)?))
}
