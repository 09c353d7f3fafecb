//! Heights, diameters and areas of a thread at its basic size.

use super::{Form, Thread, area};
use crate::units::{Area, Length};

impl Thread {
    /// Height of the sharp thread triangle, H = (sqrt 3 / 2) P.
    ///
    /// Source: ISO 68-1; ASME B1.1 (basic profile).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::millimeter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let height = "M20".parse::<Thread>()?.sharp_height().get::<millimeter>();
    /// assert!((height - 2.165_06).abs() < 1e-5);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn sharp_height(&self) -> Length {
        area::H_PER_PITCH * self.pitch
    }

    /// Height of the basic profile, 5H/8, of UNJ and MJ 9H/16: the radial overlap of bolt and nut
    /// threads.
    ///
    /// Source: ISO 68-1; ASME B1.1 (basic profile); [`profile`](super::profile) for UNJ and MJ.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let height = "1-8 UNC".parse::<Thread>()?.basic_thread_height().get::<inch>();
    /// assert!((height - 0.067_658).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn basic_thread_height(&self) -> Length {
        self.profile.overlap() * self.sharp_height()
    }

    /// Basic pitch diameter, d2 = d - 3H/4 = d - 0.649519 P.
    ///
    /// Source: ISO 68-1; ASME B1.1 (basic profile).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let d2 = "1/2-13 UNC".parse::<Thread>()?.basic_pitch_diameter().get::<inch>();
    /// assert!((d2 - 0.4500).abs() < 5e-5); // printed 0.4500 in
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn basic_pitch_diameter(&self) -> Length {
        self.diameter - 0.75 * self.sharp_height()
    }

    /// Basic minor diameter of the internal thread, D1 = D - 5H/4 = D - 1.082532 P, of UNJ and MJ
    /// D1 = D - 9H/8 = D - 0.974279 P.
    ///
    /// Source: ISO 68-1; ASME B1.1 (basic profile); [`profile`](super::profile) for UNJ and MJ.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::millimeter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let d1 = "M8".parse::<Thread>()?.basic_minor_diameter().get::<millimeter>();
    /// assert!((d1 - 6.647).abs() < 5e-4); // printed 6.647 mm
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn basic_minor_diameter(&self) -> Length {
        self.diameter - 2.0 * self.profile.overlap() * self.sharp_height()
    }

    /// Minor diameter of the external thread at the design root of ISO 68-1,
    /// d3 = d - 17H/12 = d - 1.226869 P, whatever the profile of the thread;
    /// [`basic_profile`](Self::basic_profile) has the root of its own profile.
    ///
    /// Source: ISO 898-1 (stress area), ISO 68-1 with root truncation H/6.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::length::millimeter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let d3 = "M20".parse::<Thread>()?.rounded_root_diameter().get::<millimeter>();
    /// assert!((d3 - 16.933).abs() < 5e-4); // printed 16.933 mm
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn rounded_root_diameter(&self) -> Length {
        self.diameter - (17.0 / 12.0) * self.sharp_height()
    }

    /// Tensile stress area As by the formula of the thread's own system: [`area::unified`] for
    /// inch threads, [`area::metric`] for metric ones.
    ///
    /// Tables print this value rounded; the printed one is in
    /// [`tabulated_stress_area`](Self::tabulated_stress_area). UNJ and MJ threads take the same
    /// formulas here, which is on the safe side: their roots are less deep, and the areas of their own
    /// standards were not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::area::{square_inch, square_millimeter};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let inch = "3/4-10 UNC".parse::<Thread>()?.tensile_stress_area();
    /// assert!((inch.get::<square_inch>() - 0.334).abs() < 5e-4); // printed 0.334
    /// let metric = "M20".parse::<Thread>()?.tensile_stress_area();
    /// assert!((metric.get::<square_millimeter>() - 244.8).abs() < 0.05); // printed 245
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    #[inline]
    pub fn tensile_stress_area(&self) -> Area {
        let lost = if self.is_unified() {
            area::UNIFIED_LOSS
        } else {
            area::METRIC_LOSS
        };
        area::circle(self.diameter - lost * self.pitch)
    }

    /// Tensile stress area as the standard or handbook prints it, if the thread is a standard one.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let printed = "M10".parse::<Thread>()?.tabulated_stress_area();
    /// assert_eq!(printed, Some(square_millimetres(58.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn tabulated_stress_area(&self) -> Option<Area> {
        match self.form {
            Form::Unified(row) => Some(row.tensile_stress_area),
            Form::Metric(row) => Some(row.tensile_stress_area),
            Form::UnifiedSpecial(_) | Form::MetricSpecial => None,
        }
    }

    /// Area at the root of the thread, Ar: the section a shear plane cuts when it lies in the
    /// thread. [`area::unified_minor`] for inch threads, [`area::metric_minor`] for metric ones.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::area::square_inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let root = "3/4-16 UNF".parse::<Thread>()?.minor_area();
    /// assert!((root.get::<square_inch>() - 0.351).abs() < 5e-4); // printed 0.351
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    #[inline]
    pub fn minor_area(&self) -> Area {
        let lost = if self.is_unified() {
            area::UNIFIED_ROOT_LOSS
        } else {
            area::METRIC_ROOT_LOSS
        };
        area::circle(self.diameter - lost * self.pitch)
    }

    /// Area of the full shank, A = (pi/4) d^2.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::uom::si::area::square_inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let shank = "3/4-10 UNC".parse::<Thread>()?.shank_area();
    /// assert!((shank.get::<square_inch>() - 0.4418).abs() < 5e-5);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    #[inline]
    pub fn shank_area(&self) -> Area {
        area::circle(self.diameter)
    }
}
