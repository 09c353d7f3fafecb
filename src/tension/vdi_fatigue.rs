//! Fatigue of the thread by VDI 2230: an amplitude that belongs to a high preload.

use super::fatigue::bolt_range;
use super::{JointDiagram, sane_stress, within};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::math;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Area, Force, Length, Stress, megapascals, millimetres};

/// Cycles of the endurance limit.
const ENDURANCE_CYCLES: f64 = 2e6;

/// When the thread was rolled.
///
/// ```
/// use shankline::tension::VdiThread;
/// let late = VdiThread::RolledAfterHeatTreatment { preload_ratio: 0.7 };
/// assert_ne!(late, VdiThread::RolledBeforeHeatTreatment);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
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
pub enum VdiThread {
    /// Rolled before heat treatment: the usual bolt.
    RolledBeforeHeatTreatment,
    /// Rolled after heat treatment: stronger, and less so with more preload.
    RolledAfterHeatTreatment {
        /// Mean bolt force over the force at 0.2 % proof strain, `FSm / F0.2min`, from 0.3 to below 1.
        preload_ratio: f64,
    },
}

/// Amplitude that a thread bears by VDI 2230, on the stress area, classes 8.8 to 12.9.
///
/// Rolled before heat treatment 0.85 (150 / d + 45) MPa with d in mm; rolled after it `(2 - FSm / F0.2)`
/// times that. Below 2 million cycles N the amplitude is (2e6 / N)^(1/3) times as great, rolled after heat
/// treatment (2e6 / N)^(1/6). All of it was recalled, not read: results carry a [`Caution`]. Its magnitude
/// agrees with what a public engineering page gives as allowable amplitudes of classes 8.8 to 12.9 (notes on
/// the calculation of bolts: 50 MPa from M8 to M12, 40 MPa from M14 to M20; rolled last 90 and 70 MPa),
/// which is no reproduction of the formula.
///
/// It already belongs to a high mean stress. Never hold it beside an
/// [`EnduranceStrength`](super::EnduranceStrength), which is at zero mean stress; the types do not allow it.
///
/// ```
/// use shankline::{prelude::*, tension::{VdiFatigueStrength, VdiThread}};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread = VdiThread::RolledBeforeHeatTreatment;
/// let strength = VdiFatigueStrength::new(millimetres(10.0), thread)?;
/// assert!((strength.amplitude - megapascals(51.0)).abs() < megapascals(0.001));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct VdiFatigueStrength {
    /// Nominal diameter.
    pub diameter: Length,
    /// When the thread was rolled.
    pub thread: VdiThread,
    /// Cycles it holds for.
    pub cycles: f64,
    /// Amplitude `sigma_A`.
    pub amplitude: Stress,
}

impl VdiFatigueStrength {
    /// The amplitude for 2 million cycles and more.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter outside M4 to M39, the scope of the standard as recalled,
    /// or a preload ratio outside 0.3 to 1.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{VdiFatigueStrength, VdiThread}};
    /// let thread = VdiThread::RolledAfterHeatTreatment { preload_ratio: 0.7 };
    /// let late = VdiFatigueStrength::new(millimetres(10.0), thread).unwrap();
    /// assert!((late.amplitude - megapascals(66.3)).abs() < megapascals(0.001));
    /// ```
    pub fn new(diameter: Length, thread: VdiThread) -> Result<Self, Error> {
        within(
            "nominal diameter for fatigue by VDI 2230",
            diameter,
            millimetres(4.0),
            millimetres(39.0),
        )?;
        let factor = match thread {
            VdiThread::RolledBeforeHeatTreatment => 1.0,
            VdiThread::RolledAfterHeatTreatment { preload_ratio } => {
                // NaN is in no range.
                if !(0.3..1.0).contains(&preload_ratio) {
                    return Err(out_of_range(
                        "mean bolt force over yield force",
                        preload_ratio,
                        Allowed::FromTo(0.3.into(), 1.0.into()),
                    ));
                }
                2.0 - preload_ratio
            }
        };
        let base = 0.85 * (150.0 / (diameter / millimetres(1.0)).value + 45.0);
        Ok(Self {
            diameter,
            thread,
            cycles: ENDURANCE_CYCLES,
            amplitude: factor * megapascals(base),
        })
    }

    /// The amplitude for fewer cycles, from 10 000 to 2 million.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for other numbers of cycles.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{VdiFatigueStrength, VdiThread}};
    /// let thread = VdiThread::RolledBeforeHeatTreatment;
    /// let strength = VdiFatigueStrength::new(millimetres(10.0), thread).unwrap();
    /// let short = strength.for_cycles(250e3).unwrap();
    /// assert!(((short.amplitude / strength.amplitude).value - 2.0).abs() < 1e-12);
    /// ```
    pub fn for_cycles(self, cycles: f64) -> Result<Self, Error> {
        if !(1e4..=ENDURANCE_CYCLES).contains(&cycles) {
            return Err(out_of_range(
                "number of cycles",
                cycles,
                Allowed::FromTo(1e4.into(), ENDURANCE_CYCLES.into()),
            ));
        }
        let whole = Self::new(self.diameter, self.thread)?;
        let factor = math::powf(ENDURANCE_CYCLES / cycles, whole.exponent());
        Ok(Self {
            cycles,
            amplitude: factor * whole.amplitude,
            ..whole
        })
    }

    const fn exponent(&self) -> f64 {
        match self.thread {
            VdiThread::RolledBeforeHeatTreatment => 1.0 / 3.0,
            VdiThread::RolledAfterHeatTreatment { .. } => 1.0 / 6.0,
        }
    }

    /// What the user of this strength must be told.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{VdiFatigueStrength, VdiThread}};
    /// let thread = VdiThread::RolledBeforeHeatTreatment;
    /// let strength = VdiFatigueStrength::new(millimetres(10.0), thread).unwrap();
    /// assert_eq!(strength.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::of_method(methods::VDI_2230_PART_1_FATIGUE))
    }

    fn step(&self) -> Step {
        let rolled_late = "(2 - q) * ";
        let formula = alloc::format!(
            "{}0.85 * (150 * mm / d + 45) * MPa * (ND / N)^x",
            match self.thread {
                VdiThread::RolledBeforeHeatTreatment => "",
                VdiThread::RolledAfterHeatTreatment { .. } => rolled_late,
            }
        );
        let step = Step::new("amplitude the thread bears", "sA", formula, self.amplitude)
            .with("mm", millimetres(1.0))
            .with("d", self.diameter)
            .with("MPa", megapascals(1.0))
            .with("ND", ENDURANCE_CYCLES)
            .with("N", self.cycles)
            .with("x", self.exponent())
            .source(methods::VDI2230);
        match self.thread {
            VdiThread::RolledBeforeHeatTreatment => step,
            VdiThread::RolledAfterHeatTreatment { preload_ratio } => step.with("q", preload_ratio),
        }
    }
}

/// Fatigue of a bolt by VDI 2230: `sigma_a` = (FSA,max - FSA,min) / (2 A0), SD = `sigma_A` / `sigma_a`, which
/// should be 1.2 at least (recalled).
///
/// ```
/// use shankline::{prelude::*, tension::*, units::newtons_per_millimetre};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let share = LoadShare::new(newtons_per_millimetre(2e5), newtons_per_millimetre(8e5))?;
/// let joint = JointDiagram::new(share, newtons(38e3))?;
/// let made = VdiThread::RolledBeforeHeatTreatment;
/// let strength = VdiFatigueStrength::new(thread.nominal_diameter(), made)?;
/// let fatigue = VdiFatigue::new(strength, &joint, &thread, newtons(0.0), newtons(20e3))?;
/// assert!(fatigue.safety > 1.2);
/// fatigue.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct VdiFatigue {
    /// What the thread bears.
    pub strength: VdiFatigueStrength,
    /// Greatest force in the bolt less the least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub range: Force,
    /// Stress area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// Amplitude `sigma_a`.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub amplitude: Stress,
    /// SD.
    pub safety: f64,
}

impl VdiFatigue {
    /// The check, for a load on the bolt that goes between two values.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a Unified thread, and if strength and thread are of different diameters;
    /// [`Error::OutOfRange`]
    /// unless 0 <= least < greatest load, and if the greatest separates the joint.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::*, units::newtons_per_millimetre};
    /// let share = LoadShare::new(newtons_per_millimetre(2e5), newtons_per_millimetre(8e5)).unwrap();
    /// let joint = JointDiagram::new(share, newtons(38e3)).unwrap();
    /// let made = VdiThread::RolledBeforeHeatTreatment;
    /// let strength = VdiFatigueStrength::new(millimetres(12.0), made).unwrap();
    /// let other: Thread = "M16".parse().unwrap();
    /// assert!(VdiFatigue::new(strength, &joint, &other, newtons(0.0), newtons(20e3)).is_err());
    /// let inch: Thread = "1/2-13 UNC".parse().unwrap();
    /// let strength = VdiFatigueStrength::new(inches(0.5), made).unwrap();
    /// assert!(VdiFatigue::new(strength, &joint, &inch, newtons(0.0), newtons(20e3)).is_err());
    /// ```
    pub fn new(
        strength: VdiFatigueStrength,
        joint: &JointDiagram,
        thread: &Thread,
        least: Force,
        greatest: Force,
    ) -> Result<Self, Error> {
        if thread.is_unified() {
            return Err(Error::Mismatch(alloc::format!(
                "{thread} is no metric thread: the fatigue strengths of VDI 2230 are for those"
            )));
        }
        if (strength.diameter - thread.nominal_diameter()).abs() > crate::units::SAME_LENGTH {
            return Err(Error::Mismatch(alloc::format!(
                "the fatigue strength is not that of {thread}: it is for another diameter"
            )));
        }
        let area = thread.tensile_stress_area();
        let (low, high) = bolt_range(joint, area, least, greatest)?;
        let range = high - low;
        let amplitude = sane_stress("stress amplitude", 0.5 * range / area)?;
        Ok(Self {
            strength,
            range,
            area,
            amplitude,
            safety: (strength.amplitude / amplitude).value,
        })
    }

    /// What the user of this safety must be told.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::*, units::newtons_per_millimetre};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let share = LoadShare::new(newtons_per_millimetre(2e5), newtons_per_millimetre(8e5))?;
    /// # let joint = JointDiagram::new(share, newtons(38e3))?;
    /// # let made = VdiThread::RolledBeforeHeatTreatment;
    /// let strength = VdiFatigueStrength::new(millimetres(12.0), made)?;
    /// let fatigue = VdiFatigue::new(strength, &joint, &"M12".parse()?, newtons(0.0), newtons(20e3))?;
    /// assert_eq!(fatigue.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.strength.cautions()
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::*, units::newtons_per_millimetre};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let share = LoadShare::new(newtons_per_millimetre(2e5), newtons_per_millimetre(8e5))?;
    /// # let joint = JointDiagram::new(share, newtons(38e3))?;
    /// # let made = VdiThread::RolledBeforeHeatTreatment;
    /// let strength = VdiFatigueStrength::new(millimetres(12.0), made)?.for_cycles(1e5)?;
    /// let fatigue = VdiFatigue::new(strength, &joint, &"M12".parse()?, newtons(0.0), newtons(20e3))?;
    /// fatigue.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        Derivation::new("Fatigue, VDI 2230")
            .step(
                Step::new("stress amplitude", "sa", "dF / (2 * A0)", self.amplitude)
                    .with("dF", self.range)
                    .with("A0", self.area)
                    .source(methods::VDI2230),
            )
            .step(self.strength.step())
            .step(
                Step::new("safety against fatigue", "SD", "sA / sa", self.safety)
                    .with("sA", self.strength.amplitude)
                    .with("sa", self.amplitude)
                    .source(methods::VDI2230),
            )
    }
}
