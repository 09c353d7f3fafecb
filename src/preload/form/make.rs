//! The torque forms of each publisher.

use core::f64::consts::FRAC_PI_4;

use super::{FrictionForm, TorqueForm, Way};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::math;
use crate::preload::friction::{FLANK, Friction};
use crate::preload::no_prevailing;
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::{Length, from_base};

impl FrictionForm {
    /// The lead-angle form with the mean thread diameter of Shigley, dm = (d + dr)/2.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a bearing diameter that is not positive and finite, or so great a
    /// friction that the thread seizes: mu tan lambda sec alpha of one and more.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::pound_force_inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.12, 0.15, 0.18)?;
    /// let bearing = inches(1.25 * 0.75);
    /// let form = FrictionForm::lead_angle(&"3/4-16 UNF".parse()?, bearing, friction, friction)?;
    /// let torque = form.torque(pounds_force(25_000.0))?;
    /// assert!((torque.nominal.get::<pound_force_inch>() - 3551.0).abs() < 0.5); // Example 8-3
    /// # Ok(())
    /// # }
    /// ```
    pub fn lead_angle(
        thread: &Thread,
        bearing_diameter: Length,
        thread_friction: Friction,
        bearing_friction: Friction,
    ) -> Result<Self, Error> {
        // Shigley reads Ar in his table; for inch threads the print is kept, rounding and all.
        let root = thread
            .unified_row()
            .map_or_else(|| thread.minor_area(), |row| row.minor_area);
        let root: Length = from_base(math::sqrt(root.value / FRAC_PI_4));
        let mean = 0.5 * (thread.nominal_diameter() + root);
        Self::power_screw(
            thread,
            mean,
            bearing_diameter,
            thread_friction,
            bearing_friction,
        )
    }

    /// The lead-angle form with another mean diameter of the thread, such as the pitch diameter.
    ///
    /// # Errors
    ///
    /// As [`lead_angle`](Self::lead_angle), and for a mean diameter that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let (d2, bearing) = (thread.basic_pitch_diameter(), millimetres(15.07));
    /// let friction = Friction::new(0.12, 0.12, 0.12)?;
    /// let exact = FrictionForm::power_screw(&thread, d2, bearing, friction, friction)?;
    /// let linear = FrictionForm::linear(&thread, bearing, friction, friction)?;
    /// let ratio = exact.nut_factor()?.nominal() / linear.nut_factor()?.nominal();
    /// assert!(ratio > 1.0 && ratio < 1.01); // what the linear form leaves out
    /// # Ok(())
    /// # }
    /// ```
    pub fn power_screw(
        thread: &Thread,
        mean_diameter: Length,
        bearing_diameter: Length,
        thread_friction: Friction,
        bearing_friction: Friction,
    ) -> Result<Self, Error> {
        sane_length("mean diameter of the thread", mean_diameter)?;
        Self::build(
            TorqueForm::LeadAngle,
            thread,
            mean_diameter,
            bearing_diameter,
            thread_friction,
            bearing_friction,
        )
    }

    /// The lead-angle form with Shigley's mean collar diameter of 1.25 d: the mean of d and of a
    /// washer face of 1.5 d.
    ///
    /// # Errors
    ///
    /// As [`lead_angle`](Self::lead_angle).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.15, 0.15, 0.15)?;
    /// let form = FrictionForm::shigley(&"1/2-13 UNC".parse()?, friction, friction)?;
    /// assert!((form.nut_factor()?.nominal() - 0.1972).abs() < 1e-4);
    /// # Ok(())
    /// # }
    /// ```
    pub fn shigley(
        thread: &Thread,
        thread_friction: Friction,
        collar_friction: Friction,
    ) -> Result<Self, Error> {
        let collar = 1.25 * thread.nominal_diameter();
        Self::lead_angle(thread, collar, thread_friction, collar_friction)
    }

    /// The linear form, with the basic pitch diameter d2.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a bearing diameter that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.12, 0.12, 0.12)?;
    /// let form = FrictionForm::linear(&"M12".parse()?, millimetres(15.07), friction, friction)?;
    /// assert!((form.nut_factor()?.nominal() - 0.161).abs() < 5e-4);
    /// # Ok(())
    /// # }
    /// ```
    pub fn linear(
        thread: &Thread,
        bearing_diameter: Length,
        thread_friction: Friction,
        bearing_friction: Friction,
    ) -> Result<Self, Error> {
        let mean = thread.basic_pitch_diameter();
        let form = TorqueForm::Linear;
        Self::build(
            form,
            thread,
            mean,
            bearing_diameter,
            thread_friction,
            bearing_friction,
        )
    }

    /// The three-term form, with the effective contact radii of thread and face.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a radius that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let friction = Friction::new(0.12, 0.12, 0.12)?;
    /// let (rt, rn) = (millimetres(5.43), millimetres(7.53));
    /// let form = FrictionForm::three_term(&"M12".parse()?, rt, rn, friction, friction)?;
    /// assert!((form.nut_factor()?.nominal() - 0.161).abs() < 5e-4);
    /// assert_eq!(form.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn three_term(
        thread: &Thread,
        thread_radius: Length,
        bearing_radius: Length,
        thread_friction: Friction,
        bearing_friction: Friction,
    ) -> Result<Self, Error> {
        sane_length("contact radius of the thread", thread_radius)?;
        sane_length("effective radius of the face", bearing_radius)?;
        Self::build(
            TorqueForm::ThreeTerm,
            thread,
            2.0 * thread_radius,
            2.0 * bearing_radius,
            thread_friction,
            bearing_friction,
        )
    }

    pub(super) fn build(
        form: TorqueForm,
        thread: &Thread,
        thread_diameter: Length,
        bearing_diameter: Length,
        thread_friction: Friction,
        bearing_friction: Friction,
    ) -> Result<Self, Error> {
        sane_length("bearing diameter", bearing_diameter)?;
        let mut this = Self {
            form,
            thread: *thread,
            thread_diameter,
            bearing_diameter,
            thread_friction,
            bearing_friction,
            prevailing: no_prevailing(),
            arm: Spread::exact(Length::default()),
        };
        if form == TorqueForm::LeadAngle {
            let seizes = 1.0 / (this.lead_tangent() * FLANK);
            if thread_friction.max() >= seizes {
                return Err(out_of_range(
                    "coefficient of friction of the thread",
                    thread_friction.max(),
                    Allowed::AtMost(seizes.into()),
                ));
            }
        }
        this.arm = this.arms(Way::On);
        // Only a friction within a few bits of seizing makes the arm infinite.
        positive("coefficient of friction of the thread", this.arm.max)?;
        Ok(this)
    }
}
