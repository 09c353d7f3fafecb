//! Threads that are in no list.

use super::{Form, Profile, Thread};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::math::round;
use crate::units::{INCH, Length, from_base, inches, millimetres};

impl Thread {
    /// A Unified thread of special diameter or pitch (UNS), with the Unified profile. The diameter is taken to a
    /// ten-millionth of an inch (1/128 is 0.0078125) and the number of threads per inch to five decimals, as they are printed.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the diameter is positive, at least three pitches and at most
    /// 100 in, and the number of threads per inch lies between 1 and 100.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = Thread::unified_special(inches(0.9), 14.0)?;
    /// assert_eq!(thread.to_string(), "0.9-14 UNS");
    /// assert!(Thread::unified_special(inches(-0.9), 14.0).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn unified_special(diameter: Length, threads_per_inch: f64) -> Result<Self, Error> {
        positive("nominal diameter", diameter)?;
        if diameter > inches(100.0) {
            return Err(out_of_range(
                "nominal diameter of a special thread",
                diameter,
                Allowed::AtMost(inches(100.0).into()),
            ));
        }
        if !(1.0..=100.0).contains(&threads_per_inch) {
            return Err(out_of_range(
                "number of threads per inch",
                threads_per_inch,
                Allowed::FromTo(1.0.into(), 100.0.into()),
            ));
        }
        let threads_per_inch = five_decimals(threads_per_inch);
        let diameter = inches(round(diameter.value / INCH * 1e7) / 1e7);
        let pitch = inches(1.0 / threads_per_inch);
        // Below this the minor diameter of the thread shrinks toward nothing.
        if diameter < 3.0 * pitch {
            return Err(out_of_range(
                "nominal diameter of a special thread",
                diameter,
                Allowed::AtLeast((3.0 * pitch).into()),
            ));
        }
        let form = Form::UnifiedSpecial(threads_per_inch);
        Ok(Self::plain(diameter, pitch, form, Profile::Un))
    }

    /// A metric thread of special diameter or pitch, with the profile of ISO 68-1. Diameter and pitch are taken to 10 nm, as
    /// they are printed.
    ///
    /// It has the areas and basic dimensions of the formulas. What stands in tables by thread (nuts, lengths of
    /// bolts, and tolerances, but for a pitch that ISO 965-1 has at that diameter) it has not.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the diameter is positive, at least three pitches and at most
    /// 2500 mm, and the pitch lies between 0.1 and 25 mm.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::area::square_millimeter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread = Thread::metric_special(millimetres(10.0), millimetres(0.9))?;
    /// assert_eq!(thread.to_string(), "M10x0.9 special");
    /// let area = thread.tensile_stress_area().get::<square_millimeter>();
    /// assert!((area - 65.84).abs() < 0.01); // pi / 4 (10 - 0.938194 x 0.9)^2
    /// assert!(Thread::metric_special(millimetres(10.0), millimetres(9.0)).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn metric_special(diameter: Length, pitch: Length) -> Result<Self, Error> {
        positive("nominal diameter", diameter)?;
        positive("pitch", pitch)?;
        if diameter > millimetres(2500.0) {
            return Err(out_of_range(
                "nominal diameter of a special thread",
                diameter,
                Allowed::AtMost(millimetres(2500.0).into()),
            ));
        }
        if pitch < millimetres(0.1) || pitch > millimetres(25.0) {
            return Err(out_of_range(
                "pitch of a special thread",
                pitch,
                Allowed::FromTo(millimetres(0.1).into(), millimetres(25.0).into()),
            ));
        }
        let printed = |length: Length| from_base(round(length.value * 1e8) / 1e8);
        let (diameter, pitch): (Length, Length) = (printed(diameter), printed(pitch));
        // Below this the minor diameter of the thread shrinks toward nothing.
        if diameter < 3.0 * pitch {
            return Err(out_of_range(
                "nominal diameter of a special thread",
                diameter,
                Allowed::AtLeast((3.0 * pitch).into()),
            ));
        }
        Ok(Self::plain(
            diameter,
            pitch,
            Form::MetricSpecial,
            Profile::M,
        ))
    }
}

/// A number as designations print it: what they say is what the thread has.
pub(super) fn five_decimals(number: f64) -> f64 {
    round(number * 1e5) / 1e5
}
