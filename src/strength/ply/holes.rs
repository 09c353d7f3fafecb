//! What kind of hole a hole is, by the sizes that codes and standards print.

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::strength::shear::AiscEdition;
use crate::strength::slip::SlipHole;
use crate::tables::en_holes::EnHole;
use crate::tables::holes::{ClearanceHole, HoleFit, StructuralHole};
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH, millimetres};

/// Kinds of hole of structural codes. Along and across: the long axis of a slot, seen from the load.
///
/// ```
/// use shankline::strength::ply::HoleKind;
/// assert_eq!(HoleKind::default(), HoleKind::Standard);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HoleKind {
    /// Standard (normal) holes.
    #[default]
    Standard,
    /// Oversize holes: EN takes 0.8 of the bearing.
    Oversize,
    /// Short slots across the load: EN takes 0.6 of the bearing.
    ShortSlotAcross,
    /// Short slots along the load: EN has no bearing for them.
    ShortSlotAlong,
    /// Long slots across the load: AISC 2.0 and 1.0, recalled; EN 0.6 of the bearing.
    LongSlotAcross,
    /// Long slots along the load: EN has no bearing for them.
    LongSlotAlong,
}

impl HoleKind {
    /// The same hole in the words of a slip-resistant joint, to compare with the hole its method was given.
    ///
    /// ```
    /// use shankline::strength::{ply::HoleKind, slip::SlipHole};
    /// assert_eq!(HoleKind::Oversize.slip_hole(), SlipHole::Oversize);
    /// ```
    #[must_use]
    pub const fn slip_hole(self) -> SlipHole {
        match self {
            Self::Standard => SlipHole::Standard,
            Self::Oversize => SlipHole::Oversize,
            Self::ShortSlotAcross => SlipHole::ShortSlotAcross,
            Self::ShortSlotAlong => SlipHole::ShortSlotAlong,
            Self::LongSlotAcross => SlipHole::LongSlotAcross,
            Self::LongSlotAlong => SlipHole::LongSlotAlong,
        }
    }

    /// Whether AISC 360 J3.2 (a scan of 2005 and 2010) allows the hole in slip-critical joints only: oversize
    /// holes, and slots along the load. A joint in bearing has standard holes or slots across the load.
    ///
    /// ```
    /// use shankline::strength::ply::HoleKind;
    /// assert!(HoleKind::Oversize.needs_slip_critical());
    /// assert!(!HoleKind::LongSlotAcross.needs_slip_critical());
    /// ```
    #[must_use]
    pub const fn needs_slip_critical(self) -> bool {
        matches!(
            self,
            Self::Oversize | Self::ShortSlotAlong | Self::LongSlotAlong
        )
    }

    /// What EN 1993-1-8 Table 3.4, note 1, takes of the bearing in a normal hole: 0.8 in an oversize hole, 0.6 in
    /// a slot across the load. The note does not tell short slots from long ones and is silent on slots along
    /// the load: none.
    ///
    /// ```
    /// use shankline::strength::ply::HoleKind;
    /// assert_eq!(HoleKind::Oversize.en_bearing_factor(), Some(0.8));
    /// assert_eq!(HoleKind::LongSlotAlong.en_bearing_factor(), None);
    /// ```
    #[must_use]
    pub const fn en_bearing_factor(self) -> Option<f64> {
        match self {
            Self::Standard => Some(1.0),
            Self::Oversize => Some(0.8),
            Self::ShortSlotAcross | Self::LongSlotAcross => Some(0.6),
            Self::ShortSlotAlong | Self::LongSlotAlong => None,
        }
    }

    pub(in crate::strength) const fn is_standard(self) -> bool {
        matches!(self, Self::Standard)
    }

    pub(in crate::strength) const fn is_slot_along(self) -> bool {
        matches!(self, Self::ShortSlotAlong | Self::LongSlotAlong)
    }

    pub(in crate::strength) const fn is_slot_across(self) -> bool {
        matches!(self, Self::ShortSlotAcross | Self::LongSlotAcross)
    }
}

/// Whose sizes of holes a hole is compared with.
///
/// | rule | sizes |
/// |---|---|
/// | [`Aisc360`](Self::Aisc360) | Tables J3.3 and J3.3M; a hole between two sizes counts as the next kind (the institute's answer 5.1.1) |
/// | [`En1090`](Self::En1090) | Table 11; M12 and M14 with up to 2 mm clearance are normal holes under EN 1993-1-8 3.6.1(5) |
/// | [`MachineDesign`](Self::MachineDesign) | ISO 273 and ASME B18.2.8, up to the coarse (loose) series |
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::HoleRule;
/// let rule = HoleRule::Aisc360 { edition: AiscEdition::E2016 };
/// assert_ne!(rule, HoleRule::En1090);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[non_exhaustive]
pub enum HoleRule {
    /// AISC 360 Tables J3.3 and J3.3M.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
    },
    /// EN 1090-2 Table 11.
    #[cfg_attr(feature = "serde", serde(rename = "en_1090_2"))]
    En1090,
    /// Clearance holes of ISO 273 and ASME B18.2.8.
    MachineDesign,
    /// Standard holes of BS 5950-1, IS 800, AS 4100 and CSA S16 alike: 1 mm of clearance under 16 mm, 2 mm from there
    /// (recalled; some of them give a little more at either end). Wider ones and slots are not given.
    Steelwork,
}

/// A round hole or a slot, as it is made.
///
/// ```
/// use shankline::strength::ply::{Hole, Slot, SlotDirection};
/// use shankline::units::inches;
/// let slot = Slot { length: inches(1.0), direction: SlotDirection::Across };
/// let hole = Hole { diameter: inches(0.8125), slot: Some(slot) };
/// assert!(hole.slot.is_some());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hole {
    /// Diameter of a round hole, width of a slot.
    pub diameter: Length,
    /// Length of the slot, if it is one.
    pub slot: Option<Slot>,
}

/// How long a slot is, from end to end, and where it points.
///
/// ```
/// use shankline::strength::ply::{Slot, SlotDirection};
/// use shankline::units::millimetres;
/// let slot = Slot { length: millimetres(26.0), direction: SlotDirection::Along };
/// assert_eq!(slot.direction, SlotDirection::Along);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Slot {
    /// Length from end to end.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub length: Length,
    /// Where its long axis points.
    pub direction: SlotDirection,
}

/// Where the long axis of a slot points.
///
/// ```
/// use shankline::strength::ply::SlotDirection;
/// assert_ne!(SlotDirection::Along, SlotDirection::Across);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum SlotDirection {
    /// Along the load, or not within 10 degrees of across.
    Along,
    /// Across the load: 80 to 100 degrees (RCSC, a scan of 1988).
    Across,
}

/// What a hole is by somebody's table.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::{Hole, HoleClass, HoleKind, HoleRule};
/// # fn main() -> Result<(), shankline::Error> {
/// // 15/16 in is the greatest oversize hole for 3/4 in; 7/8 in lies between and counts as oversize too.
/// let rule = HoleRule::Aisc360 { edition: AiscEdition::E2016 };
/// let hole = Hole { diameter: inches(0.875), slot: None };
/// let class = hole.classify(&"3/4-10 UNC".parse()?, rule)?;
/// assert!(matches!(class, HoleClass::Known { kind: HoleKind::Oversize, .. }));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
// Nearly every class is the large one.
#[allow(clippy::large_enum_variant)]
pub enum HoleClass {
    /// A kind of hole the rule has.
    Known {
        /// The kind.
        kind: HoleKind,
        /// A normal hole by EN 1993-1-8 3.6.1(5) only: M12 or M14 with more than 1 and up to 2 mm clearance. The
        /// shear resistance takes 0.85 for classes 4.8 to 10.9
        /// ([`ConnectionFacts`](crate::strength::shear::ConnectionFacts)), and (recalled)
        /// the bearing resistance of the group may not exceed its shear resistance.
        two_millimetre_clearance: bool,
        /// What was recalled and not read.
        cautions: Cautions,
    },
    /// The bolt does not pass: a fault.
    TooSmall {
        /// What the hole must measure at least.
        least: Length,
    },
    /// Larger than every hole the rule has.
    TooLarge {
        /// Diameter of the hole, or width or length of the slot.
        size: Length,
        /// The greatest the rule has.
        greatest: Length,
    },
    /// The rule has no such bolt or no such hole.
    NotGiven(&'static str),
}

impl Hole {
    /// Which kind of hole this is for a thread.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a size that is not positive and finite, or a slot no longer than it is wide.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Hole, HoleClass, HoleRule};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // The medium hole of ISO 273 for M12 is wider than the 1 mm of EN 1090-2.
    /// let hole = Hole { diameter: millimetres(13.5), slot: None };
    /// let class = hole.classify(&"M12".parse()?, HoleRule::En1090)?;
    /// assert!(matches!(class, HoleClass::Known { two_millimetre_clearance: true, .. }));
    /// let tight = Hole { diameter: millimetres(11.5), slot: None };
    /// let class = tight.classify(&"M12".parse()?, HoleRule::En1090)?;
    /// assert!(matches!(class, HoleClass::TooSmall { .. }));
    /// # Ok(())
    /// # }
    /// ```
    pub fn classify(&self, thread: &Thread, rule: HoleRule) -> Result<HoleClass, Error> {
        sane_length("hole diameter", self.diameter)?;
        if let Some(slot) = self.slot {
            sane_length("slot length", slot.length)?;
            if slot.length <= self.diameter {
                let allowed = Allowed::Above(self.diameter.into());
                return Err(out_of_range("slot length", slot.length, allowed));
            }
        }
        let d = thread.nominal_diameter();
        if self.diameter < d - SAME_LENGTH {
            return Ok(HoleClass::TooSmall { least: d });
        }
        Ok(match rule {
            HoleRule::Aisc360 { edition } => match StructuralHole::find(thread, edition) {
                Ok(row) => self.compare(
                    &Sizes {
                        standard: row.standard,
                        oversize: row.oversize,
                        slot_width: row.slot_width,
                        short_slot: row.short_slot_length,
                        long_slot: row.long_slot_length,
                    },
                    row.cautions(),
                ),
                Err(_) => HoleClass::NotGiven("AISC 360 Tables J3.3 and J3.3M have no such bolt"),
            },
            HoleRule::En1090 if thread.is_unified() => {
                HoleClass::NotGiven("EN 1090-2 has no holes for inch bolts")
            }
            HoleRule::En1090 => self.by_en_1090(d),
            HoleRule::MachineDesign if self.slot.is_some() => {
                HoleClass::NotGiven("ISO 273 and ASME B18.2.8 have no slots")
            }
            HoleRule::MachineDesign => self.clearance_hole(thread),
            HoleRule::Steelwork => self.of_steelwork(d),
        })
    }

    /// Compares with the greatest sizes of each kind: between two sizes the next kind counts.
    /// Wider holes and slots are kinds of their own in each code, whose sizes were not read.
    fn of_steelwork(&self, d: Length) -> HoleClass {
        let clearance = if d < millimetres(16.0) - SAME_LENGTH {
            millimetres(1.0)
        } else {
            millimetres(2.0)
        };
        if self.slot.is_some() || self.diameter > d + clearance + SAME_LENGTH {
            return HoleClass::NotGiven(
                "holes of the code that are wider than standard, and slots, were not read",
            );
        }
        HoleClass::Known {
            kind: HoleKind::Standard,
            two_millimetre_clearance: false,
            cautions: Cautions::default()
                .with(Caution::of_method(methods::CLEARANCE_OF_STEELWORK_RECALLED)),
        }
    }

    fn compare(&self, sizes: &Sizes, cautions: Cautions) -> HoleClass {
        let within = |size: Length, greatest: Length| size <= greatest + SAME_LENGTH;
        let known = |kind| HoleClass::Known {
            kind,
            two_millimetre_clearance: false,
            cautions,
        };
        let Some(slot) = self.slot else {
            return if within(self.diameter, sizes.standard) {
                known(HoleKind::Standard)
            } else if within(self.diameter, sizes.oversize) {
                known(HoleKind::Oversize)
            } else {
                HoleClass::TooLarge {
                    size: self.diameter,
                    greatest: sizes.oversize,
                }
            };
        };
        if !within(self.diameter, sizes.slot_width) {
            return HoleClass::TooLarge {
                size: self.diameter,
                greatest: sizes.slot_width,
            };
        }
        let across = slot.direction == SlotDirection::Across;
        if within(slot.length, sizes.short_slot) {
            known(if across {
                HoleKind::ShortSlotAcross
            } else {
                HoleKind::ShortSlotAlong
            })
        } else if within(slot.length, sizes.long_slot) {
            known(if across {
                HoleKind::LongSlotAcross
            } else {
                HoleKind::LongSlotAlong
            })
        } else {
            HoleClass::TooLarge {
                size: slot.length,
                greatest: sizes.long_slot,
            }
        }
    }

    fn by_en_1090(&self, d: Length) -> HoleClass {
        let least = EnHole::all().first();
        let small = least.is_some_and(|row| d < row.diameter_from - SAME_LENGTH);
        let row = match (EnHole::at(d), least) {
            (Ok(row), _) => row,
            (Err(_), Some(row)) if small => row,
            _ => return HoleClass::NotGiven("EN 1090-2 Table 11 has no such bolt"),
        };
        let recalled = small.then_some(methods::EN_1090_2_TABLE_11_BOLTS_UNDER_M12);
        let cautions = row.cautions().with(recalled.and_then(Caution::of_method));
        // EN 1993-1-8 3.6.1(5): M12 and M14 may have 2 mm.
        let two = d + millimetres(2.0);
        let normal = d + row.normal_clearance;
        let wide =
            !small && normal + SAME_LENGTH < self.diameter && self.diameter <= two + SAME_LENGTH;
        let normal = if wide { two } else { normal };
        let sizes = Sizes {
            standard: normal,
            oversize: d + row.oversize_clearance,
            slot_width: normal,
            short_slot: d + row.short_slot_clearance,
            long_slot: (1.0 + row.long_slot_clearance_ratio) * d,
        };
        match self.compare(&sizes, cautions) {
            HoleClass::Known { kind, cautions, .. } => HoleClass::Known {
                kind,
                two_millimetre_clearance: wide,
                cautions,
            },
            other => other,
        }
    }

    fn clearance_hole(&self, thread: &Thread) -> HoleClass {
        let fits = [HoleFit::Loose, HoleFit::Normal, HoleFit::Close];
        let widest = fits
            .into_iter()
            .find_map(|fit| ClearanceHole::find(thread, fit).ok());
        let Some(row) = widest else {
            return HoleClass::NotGiven("ISO 273 and ASME B18.2.8 have no such bolt");
        };
        let greatest = row.diameter_max.unwrap_or(row.diameter_min);
        if self.diameter <= greatest + SAME_LENGTH {
            HoleClass::Known {
                kind: HoleKind::Standard,
                two_millimetre_clearance: false,
                cautions: row.cautions(),
            }
        } else {
            HoleClass::TooLarge {
                size: self.diameter,
                greatest,
            }
        }
    }
}

/// Greatest sizes of each kind of hole for one bolt.
struct Sizes {
    standard: Length,
    oversize: Length,
    slot_width: Length,
    short_slot: Length,
    long_slot: Length,
}

#[cfg(test)]
mod tests;
