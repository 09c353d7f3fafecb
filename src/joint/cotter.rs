//! Whether the cotter hole of a drilled shank meets the slots of its nut.

use core::fmt;

use crate::error::{Error, not_negative, positive};
use crate::material::Severity;
use crate::parts::Nut;
use crate::spread::Spread;
use crate::units::{Length, SAME_LENGTH};

/// The cotter hole of a drilled shank.
///
/// ```
/// use shankline::joint::CotterHole;
/// use shankline::prelude::*;
/// // Invented: 6 mm before the end of the bolt, for a pin of 3.2 mm.
/// let hole = CotterHole {
///     centre_from_end: millimetres(6.0).plus_minus(millimetres(0.2)),
///     pin: millimetres(3.2),
/// };
/// # let _ = hole;
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CotterHole {
    /// From the end of the bolt to the centre of the hole.
    pub centre_from_end: Spread<Length>,
    /// Diameter of the pin.
    pub pin: Length,
}

/// Whether a pin through the hole lies in the slots of the nut. `Display` says so in a sentence.
///
/// ```
/// use shankline::{joint::CotterFit, material::Severity};
/// assert_eq!(CotterFit::HoleUnknown.severity(), Severity::Undecided);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum CotterFit {
    /// In every case of the tolerances.
    Meets,
    /// In some cases only: choose washers at fit-up.
    Depends,
    /// Never: the hole is below the bottom of the slots.
    BelowSlots,
    /// Never: the hole is above the nut.
    AboveNut,
    /// The pin is thicker than the slots are wide.
    PinTooThick,
    /// Nobody gives the place of the hole, and no table has it.
    HoleUnknown,
    /// No dimensions of the slots of this nut have been read.
    SlotsUnknown,
}

impl CotterFit {
    /// What it weighs.
    ///
    /// ```
    /// use shankline::{joint::CotterFit, material::Severity};
    /// assert_eq!(CotterFit::AboveNut.severity(), Severity::Fault);
    /// ```
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::Meets => Severity::Fine,
            Self::Depends => Severity::Caution,
            Self::BelowSlots | Self::AboveNut | Self::PinTooThick => Severity::Fault,
            Self::HoleUnknown | Self::SlotsUnknown => Severity::Undecided,
        }
    }
}

impl fmt::Display for CotterFit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Meets => "the cotter hole meets the slots of the nut",
            Self::Depends => {
                "the cotter hole meets the slots only in part of the tolerances: choose the washers at fit-up"
            }
            Self::BelowSlots => "the cotter hole lies below the slots of the nut",
            Self::AboveNut => "the cotter hole lies above the nut: the pin does not hold it",
            Self::PinTooThick => "the cotter pin is thicker than the slots are wide",
            Self::HoleUnknown => "the place of the cotter hole is not given, and no table has it",
            Self::SlotsUnknown => "no dimensions of the slots of the nut have been read",
        })
    }
}

/// Whether a pin through the cotter hole of a bolt lies in the slots of its nut, with the bolt end so far
/// beyond the nut: `h = height of nut + protrusion - centre of hole from the end` is the height of the hole above
/// the bearing face, and the pin lies in a slot if `h` is at least a pin radius above its bottom and its
/// upper edge not above the nut.
///
/// No table of this crate has the place of the holes of drilled shanks; it is on the drawing of the bolt.
///
/// Source: geometry.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths that are not finite, a hole before the end or a pin without a diameter.
///
/// ```
/// use shankline::joint::{CotterFit, CotterHole, cotter_fit};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let nut = Nut::find(NutStyle::HexSlotted, &"1/2-20 UNF".parse()?)?;
/// let end = Spread::exact(inches(0.1)); // beyond a nut 0.43 in high, slots from 0.28 in
/// assert_eq!(cotter_fit(nut, None, end)?, CotterFit::HoleUnknown);
/// let hole = |from_end| CotterHole { centre_from_end: Spread::exact(inches(from_end)), pin: inches(0.09) };
/// assert_eq!(cotter_fit(nut, Some(hole(0.16)), end)?, CotterFit::Meets);
/// assert_eq!(cotter_fit(nut, Some(hole(0.35)), end)?, CotterFit::BelowSlots);
/// # Ok(())
/// # }
/// ```
pub fn cotter_fit(
    nut: &Nut,
    hole: Option<CotterHole>,
    protrusion: Spread<Length>,
) -> Result<CotterFit, Error> {
    let Some(hole) = hole else {
        return Ok(CotterFit::HoleUnknown);
    };
    let pin = positive("diameter of the cotter pin", hole.pin)?;
    let from_end = crate::spread::ordered("place of the cotter hole", hole.centre_from_end)?;
    for end in [protrusion.min, protrusion.max] {
        // A bolt that does not fill the nut has a negative one: only its size must make sense.
        not_negative("protrusion of the bolt", end.abs())?;
    }
    let (Some(bottom_max), Some(bottom_min), Some(width), Some(height_max), Some(height_min)) = (
        nut.unslotted_height_max,
        nut.unslotted_height_min,
        nut.slot_width_min,
        nut.height_max,
        nut.height_min,
    ) else {
        return Ok(CotterFit::SlotsUnknown);
    };
    if pin > width {
        return Ok(CotterFit::PinTooThick);
    }
    // Above the top of the nut: the height of the nut plays no part, as the protrusion is counted from there.
    let above = |end: Length, from_end: Length| end - from_end + 0.5 * pin;
    let (top_max, top_min) = (
        above(protrusion.max, from_end.min),
        above(protrusion.min, from_end.max),
    );
    // From the bottom of the slots up to the top, at most and at least.
    let (deepest, shallowest) = (height_max - bottom_min, height_min - bottom_max);
    let (lower_max, lower_min) = (top_max - pin, top_min - pin);
    Ok(if top_min > SAME_LENGTH {
        CotterFit::AboveNut
    } else if lower_max < -deepest - SAME_LENGTH {
        CotterFit::BelowSlots
    } else if top_max <= SAME_LENGTH && lower_min >= -shallowest - SAME_LENGTH {
        CotterFit::Meets
    } else {
        CotterFit::Depends
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::parts::NutStyle;
    use crate::spread::PlusMinus;
    use crate::units::inches;

    fn judge(from_end: f64, tolerance: f64, end: f64) -> CotterFit {
        let nut = Nut::find(NutStyle::HexSlotted, &"1/2-20 UNF".parse().unwrap()).unwrap();
        let hole = CotterHole {
            centre_from_end: inches(from_end).plus_minus(inches(tolerance)),
            pin: inches(0.09),
        };
        cotter_fit(nut, Some(hole), Spread::exact(inches(end))).unwrap()
    }

    /// ASME B18.2.2 slotted nut 1/2: 0.427 to 0.448 in high, slots from 0.27 to 0.29 in up, 0.15 in wide at least.
    #[test]
    fn the_pin_must_lie_between_bottom_and_top() {
        // By hand: at least 0.427 - 0.29 = 0.137 in of slot for a pin of 0.09 in, so that its centre lies 0.045 to
        // 0.092 in below the top.
        assert_eq!(judge(0.145, 0.0, 0.1), CotterFit::Meets);
        assert_eq!(judge(0.192, 0.0, 0.1), CotterFit::Meets);
        assert_eq!(judge(0.193, 0.0, 0.1), CotterFit::Depends);
        assert_eq!(judge(0.144, 0.0, 0.1), CotterFit::AboveNut);
        assert_eq!(judge(0.145, 0.01, 0.1), CotterFit::Depends);
        assert_eq!(judge(0.3, 0.0, 0.1), CotterFit::BelowSlots);
    }

    /// A pin as thick as the slot is wide goes in, and one that is a hair thicker does not.
    #[test]
    fn the_pin_must_go_into_the_slot() {
        let nut = Nut::find(NutStyle::HexSlotted, &"1/2-20 UNF".parse().unwrap()).unwrap();
        let width = nut.slot_width_min.unwrap();
        let fit = |pin: Length| {
            let hole = CotterHole {
                centre_from_end: Spread::exact(inches(0.15)),
                pin,
            };
            cotter_fit(nut, Some(hole), Spread::exact(inches(0.1))).unwrap()
        };
        assert_ne!(fit(width), CotterFit::PinTooThick);
        assert_eq!(fit(1.000_01 * width), CotterFit::PinTooThick);
    }

    /// On the bolt as it comes, 0.02 in of its end more or less: the pin meets the slots in every case, in some, or in none.
    #[test]
    fn the_end_of_the_bolt_varies_too() {
        let nut = Nut::find(NutStyle::HexSlotted, &"1/2-20 UNF".parse().unwrap()).unwrap();
        let fit = |from_end: f64, end: f64, within: f64| {
            let hole = CotterHole {
                centre_from_end: Spread::exact(inches(from_end)),
                pin: inches(0.09),
            };
            let end = inches(end).plus_minus(inches(within));
            cotter_fit(nut, Some(hole), end).unwrap()
        };
        // Its centre 0.045 to 0.092 in below the top of the nut: from 0.16 to 0.18 in from an end 0.1 in beyond it.
        assert_eq!(fit(0.168, 0.1, 0.02), CotterFit::Meets);
        assert_eq!(fit(0.168, 0.1, 0.03), CotterFit::Depends);
        // Above the nut with the shorter end too: 0.1 - 0.05 - 0.03 = 0.02 in above its top.
        assert_eq!(fit(0.05, 0.1, 0.03), CotterFit::AboveNut);
        // The slot is at most 0.442 - 0.26 in deep or so: 0.4 in below the top it is far from any.
        assert_eq!(fit(0.5, 0.1, 0.03), CotterFit::BelowSlots);
    }

    #[test]
    fn what_is_missing_is_told() {
        let hole = CotterHole {
            centre_from_end: Spread::exact(inches(0.2)),
            pin: inches(0.09),
        };
        let plain = Nut::find(NutStyle::Hex, &"1/2-20 UNF".parse().unwrap()).unwrap();
        let end = Spread::exact(inches(0.1));
        assert_eq!(
            cotter_fit(plain, Some(hole), end),
            Ok(CotterFit::SlotsUnknown)
        );
        assert_eq!(cotter_fit(plain, None, end), Ok(CotterFit::HoleUnknown));
        let slotted = Nut::find(NutStyle::HexSlotted, &"1/2-20 UNF".parse().unwrap()).unwrap();
        let thick = CotterHole {
            pin: inches(0.2),
            ..hole
        };
        assert_eq!(
            cotter_fit(slotted, Some(thick), end),
            Ok(CotterFit::PinTooThick)
        );
        for bad in [f64::NAN, f64::INFINITY] {
            let odd = CotterHole {
                pin: inches(bad),
                ..hole
            };
            assert!(cotter_fit(slotted, Some(odd), end).is_err());
            assert!(cotter_fit(slotted, Some(hole), Spread::exact(inches(bad))).is_err());
        }
    }
}
