//! Pitch diameter by three wires.
//!
//! Two wires lie in neighbouring grooves on one side of a bolt thread and one in the groove opposite; a
//! micrometer reads M over all three. For the thread angle of 60 degrees:
//!
//! ```text
//! M = E + 3 W - 0.866025 P + c      E pitch diameter, W wire diameter, P pitch
//! c = 0.75 W tan^2 lambda           correction for the lead angle lambda
//! best wire   W = 0.577350 P        touches the flanks at the pitch diameter
//! usable      0.505182 P to 1.010363 P
//! ```
//!
//! The formula is W (1 + cosec a) - (P/2) cot a with a = 30 degrees; c is the term
//! (W/2) tan^2 lambda cos a cot a, with lambda at the basic pitch diameter. The smallest usable wire just
//! stands above the crests of the bolt, the largest touches the flanks at the crests. Older textbooks,
//! which measure U.S. Standard threads with their full crests, keep to 0.56 P to 0.90 P.
//!
//! Not corrected for: the squeeze of wires and flanks under the measuring force, errors of lead and
//! flank angle, and the taper of anvils. Gauges need the procedure of ASME B1.2.
//!
//! Sources: a wire maker's sheet of measuring formulas (read): E = M - (3 W - 0.86603 P), for lead
//! angles from 0 to 5 degrees, which shows a thread larger than it is because it leaves the lead angle
//! out; best wire 0.57735/n in a US Army ordnance course (read). FED-STD-H28/6, ASME B1.2 and
//! Machinery's Handbook give the same formulas; the correction c, from the handbook, was recalled.

use alloc::format;

use super::Thread;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::tables::methods;
use crate::thread::area::H_PER_PITCH;
use crate::units::{Angle, Length, degrees};

/// Whether the lead angle is taken into account.
///
/// ```
/// use shankline::{prelude::*, thread::wires::LeadAngle};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "1/4-20 UNC".parse()?;
/// let wire = thread.best_wire();
/// let plain = thread.over_wires(thread.basic_pitch_diameter(), wire, LeadAngle::Neglected)?;
/// let corrected = thread.over_wires(thread.basic_pitch_diameter(), wire, LeadAngle::Corrected)?;
/// assert!(corrected.over_wires > plain.over_wires);
/// assert!(corrected.lead_correction < inches(0.00015));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LeadAngle {
    /// Left out, the usual practice for threads of one start; for lead angles up to 5 degrees.
    Neglected,
    /// By the approximate term of Machinery's Handbook; recalled.
    Corrected,
}

/// The lead angle up to which it may be neglected.
const NEGLIGIBLE: Angle = degrees(5.0);
/// The lead angle up to which the approximate correction is used here, our own limit.
const STEEPEST: Angle = degrees(15.0);

/// A thread measured over wires.
///
/// ```
/// use shankline::{prelude::*, thread::wires::LeadAngle};
/// use shankline::uom::si::length::inch;
/// # fn main() -> Result<(), shankline::Error> {
/// // F. D. Jones, Turning and Boring: 1-1/2 in, 6 threads per inch, wires of 0.140 in: 1.6674 in.
/// let thread: Thread = "1-1/2-6 UNC".parse()?;
/// let measured =
///     thread.over_wires(thread.basic_pitch_diameter(), inches(0.140), LeadAngle::Neglected)?;
/// assert!((measured.over_wires.get::<inch>() - 1.6674).abs() < 5e-5);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WireMeasurement {
    /// The thread.
    pub thread: Thread,
    /// Diameter of the wires W.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub wire: Length,
    /// Pitch diameter E.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch_diameter: Length,
    /// Measurement over the wires M.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub over_wires: Length,
    /// Pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Lead angle at the basic pitch diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub lead_angle: Angle,
    /// The correction c that is in the measurement; zero where the lead angle is neglected.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub lead_correction: Length,
    /// How the lead angle was treated.
    pub lead: LeadAngle,
}

impl WireMeasurement {
    /// The working: lead angle, correction and measurement from the pitch diameter.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::wires::LeadAngle};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let (d2, wire) = (thread.basic_pitch_diameter(), thread.best_wire());
    /// let derivation = thread.over_wires(d2, wire, LeadAngle::Corrected)?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().len(), 3);
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let lead = Step::new(
            "lead angle",
            "lambda",
            "atan(L / (pi * D2))",
            self.lead_angle,
        )
        .with("L", self.thread.lead())
        .with("D2", self.thread.basic_pitch_diameter());
        let correction = match self.lead {
            LeadAngle::Neglected => Step::given(
                "correction for the lead angle, neglected",
                "c",
                self.lead_correction,
            ),
            LeadAngle::Corrected => Step::new(
                "correction for the lead angle",
                "c",
                "0.75 * W * tan(lambda)^2",
                self.lead_correction,
            )
            .with("W", self.wire)
            .with("lambda", self.lead_angle)
            .source(methods::THREE_WIRES),
        };
        Derivation::new(format!("{} over three wires", self.thread))
            .step(lead)
            .step(correction)
            .step(
                Step::new(
                    "measurement over wires",
                    "M",
                    "E + 3 * W - sqrt(3) / 2 * P + c",
                    self.over_wires,
                )
                .with("E", self.pitch_diameter)
                .with("W", self.wire)
                .with("P", self.pitch)
                .with("c", self.lead_correction)
                .source(methods::FED_STD_H28_6_WIRE_MAKERS_FORMULAS),
            )
    }

    /// What to be warned of: the correction for the lead angle was recalled.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::wires::LeadAngle};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let measured =
    ///     thread.pitch_diameter_by_wires(millimetres(20.54), millimetres(1.45), LeadAngle::Corrected)?;
    /// assert_eq!(measured.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let recalled = (self.lead == LeadAngle::Corrected)
            .then_some(methods::THREE_WIRES_LEAD_ANGLE)
            .and_then(Caution::of_method);
        Cautions::default().with(recalled)
    }
}

impl Thread {
    /// Best wire: the one that touches the flanks at the pitch diameter, W = P / (2 cos 30).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let wire = "1-8 UNC".parse::<Thread>()?.best_wire();
    /// assert!((wire.get::<inch>() - 0.577_35 / 8.0).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn best_wire(&self) -> Length {
        // 2 cos 30 = sqrt 3 = 2 H/P.
        self.pitch / (2.0 * H_PER_PITCH)
    }

    /// Measurement over three wires of a thread with a pitch diameter.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a wire outside 0.5052 P to 1.0104 P, for a pitch diameter that is not
    /// that of the thread within a quarter of the pitch, and for a lead angle above 5 degrees if
    /// neglected, above 15 degrees if corrected.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::wires::LeadAngle};
    /// use shankline::uom::si::length::millimeter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10-6g".parse()?;
    /// let limits = thread.limits()?.pitch_diameter;
    /// let (wire, lead) = (millimetres(0.9), LeadAngle::Neglected);
    /// let go = thread.over_wires(limits.max, wire, lead)?.over_wires;
    /// assert!((go.get::<millimeter>() - (8.994 + 2.7 - 1.299)).abs() < 5e-4);
    /// assert!(thread.over_wires(limits.max, millimetres(0.5), lead).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn over_wires(
        &self,
        pitch_diameter: Length,
        wire: Length,
        lead: LeadAngle,
    ) -> Result<WireMeasurement, Error> {
        let (constant, correction) = self.wire_constant(wire, lead)?;
        self.near_pitch_diameter(pitch_diameter)?;
        let over_wires = pitch_diameter + constant + correction;
        Ok(self.measurement(pitch_diameter, over_wires, wire, lead, correction))
    }

    /// Pitch diameter of a thread measured over three wires, the inverse of
    /// [`over_wires`](Self::over_wires).
    ///
    /// # Errors
    ///
    /// Those of [`over_wires`](Self::over_wires), of the pitch diameter that the measurement gives.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::wires::LeadAngle};
    /// use shankline::uom::si::length::inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let found =
    ///     thread.pitch_diameter_by_wires(inches(0.5150), inches(0.0450), LeadAngle::Neglected)?;
    /// assert!((found.pitch_diameter.get::<inch>() - 0.4466).abs() < 5e-5);
    /// # Ok(())
    /// # }
    /// ```
    pub fn pitch_diameter_by_wires(
        &self,
        over_wires: Length,
        wire: Length,
        lead: LeadAngle,
    ) -> Result<WireMeasurement, Error> {
        let (constant, correction) = self.wire_constant(wire, lead)?;
        sane_length("measurement over wires", over_wires)?;
        let pitch_diameter = over_wires - constant - correction;
        self.near_pitch_diameter(pitch_diameter)?;
        Ok(self.measurement(pitch_diameter, over_wires, wire, lead, correction))
    }

    /// What to add to the pitch diameter, without and for the lead angle.
    fn wire_constant(&self, wire: Length, lead: LeadAngle) -> Result<(Length, Length), Error> {
        let pitch = self.pitch;
        // The top of the wire, and where it touches the flank, above the pitch line: 3 W/2 - H/2 and
        // 3 W/4 - H/2. The crest is 3H/8 above it.
        let (least, most) = (7.0 / 12.0 * H_PER_PITCH, 7.0 / 6.0 * H_PER_PITCH);
        if !(wire >= least * pitch && wire <= most * pitch) {
            let allowed = Allowed::FromTo((least * pitch).into(), (most * pitch).into());
            return Err(out_of_range("diameter of measuring wires", wire, allowed));
        }
        let (steepest, slope) = match lead {
            LeadAngle::Neglected => (NEGLIGIBLE, 0.0),
            LeadAngle::Corrected => (STEEPEST, self.lead_slope()),
        };
        let angle = self.lead_angle();
        if angle > steepest {
            let allowed = Allowed::AtMost(steepest.into());
            return Err(out_of_range("lead angle", angle, allowed));
        }
        Ok((
            3.0 * wire - H_PER_PITCH * pitch,
            0.75 * slope * slope * wire,
        ))
    }

    /// Refuses what cannot be the pitch diameter of this thread: a wrong thread, wire or unit.
    fn near_pitch_diameter(&self, found: Length) -> Result<(), Error> {
        let (basic, slack) = (self.basic_pitch_diameter(), 0.25 * self.pitch);
        if (found - basic).abs() <= slack {
            Ok(())
        } else {
            let allowed = Allowed::FromTo((basic - slack).into(), (basic + slack).into());
            Err(out_of_range("pitch diameter", found, allowed))
        }
    }

    fn measurement(
        &self,
        pitch_diameter: Length,
        over_wires: Length,
        wire: Length,
        lead: LeadAngle,
        lead_correction: Length,
    ) -> WireMeasurement {
        WireMeasurement {
            thread: *self,
            wire,
            pitch_diameter,
            over_wires,
            pitch: self.pitch,
            lead_angle: self.lead_angle(),
            lead_correction,
            lead,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, millimetres};

    /// Machinery's Handbook prints the usable wires as 0.505182 P and 1.010363 P (recalled); they follow
    /// from the geometry.
    #[test]
    fn usable_wires() {
        let thread: Thread = "1-8 UNC".parse().unwrap();
        let d2 = thread.basic_pitch_diameter();
        let ok = |share: f64| {
            let wire = inches(share / 8.0);
            thread.over_wires(d2, wire, LeadAngle::Neglected).is_ok()
        };
        assert!(!ok(0.505_18) && ok(0.505_19) && ok(1.010_36) && !ok(1.010_37));
    }

    #[test]
    fn refuses_what_it_cannot_measure() {
        let thread: Thread = "M20".parse().unwrap();
        let (d2, wire) = (thread.basic_pitch_diameter(), thread.best_wire());
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e300] {
            let bad = millimetres(bad);
            assert!(thread.over_wires(bad, wire, LeadAngle::Neglected).is_err());
            assert!(thread.over_wires(d2, bad, LeadAngle::Corrected).is_err());
            assert!(
                thread
                    .pitch_diameter_by_wires(bad, wire, LeadAngle::Neglected)
                    .is_err()
            );
        }
        // Three starts of M20 climb at 7.4 degrees, nine at 21.
        let steep = thread.with_starts(3).unwrap();
        assert!(steep.over_wires(d2, wire, LeadAngle::Neglected).is_err());
        assert!(steep.over_wires(d2, wire, LeadAngle::Corrected).is_ok());
        let steeper = thread.with_starts(9).unwrap();
        assert!(steeper.over_wires(d2, wire, LeadAngle::Corrected).is_err());
    }
}
