//! A bolt or pin in single shear that bends: two plies with or without a gap between them.
//!
//! ```text
//!      F <- [ ply 1, t1 ]
//!               gap g
//!           [ ply 2, t2 ] -> F
//! ```

use core::f64::consts::PI;

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_length};
use crate::math;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place};
use crate::strength::code::en_1993::GAMMA_M2;
use crate::tables::methods;
use crate::thread::area::circle;
use crate::units::{Force, Length, Stress, Torque, from_base};

const LOAD: &Method = methods::LOAD_ON_THE_JOINT;
const EN: &Method = methods::EN_1993_1_8_2005_TABLE_3_10_MOMENT_BY_STATICS;
const YIELD: &Method = methods::BENDING_YIELD_STATICS;

/// What is assumed of head and nut of a bolt in single shear.
///
/// Who does not know takes [`Free`](Self::Free).
///
/// ```
/// use shankline::strength::pin::BoltEnds;
/// assert_eq!(BoltEnds::Free.to_string(), "ends free to tilt");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltEnds {
    /// Nothing holds the ends, or only one of them: the bolt may have to carry the whole couple F e.
    Free,
    /// Head and nut hold both ends by a preload that keeps all faces shut under the load: the bolt bends to an
    /// S, with F e / 2 at either end.
    Clamped,
}

impl core::fmt::Display for BoltEnds {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::Free => "ends free to tilt",
            Self::Clamped => "both ends clamped",
        })
    }
}

/// A bolt or pin through two plies.
///
/// ```
/// use shankline::{strength::pin::SingleShear, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0))?;
/// assert!((joint.arm() - mm(16.0)).abs() < mm(1e-9)); // 5 + 5 + 6
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SingleShear {
    /// Diameter d of the section that bends.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// Thickness t1 of the ply under the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub first: Length,
    /// Thickness t2 of the ply under the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub second: Length,
    /// Gap g between them.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub gap: Length,
}

impl SingleShear {
    /// Diameter, thickness of both plies, and gap.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter or thickness that is not positive, a gap that is negative, or any
    /// of them beyond a kilometre.
    ///
    /// ```
    /// use shankline::{strength::pin::SingleShear, units::millimetres};
    /// let mm = millimetres;
    /// assert!(SingleShear::new(mm(20.0), mm(10.0), mm(0.0), mm(5.0)).is_err());
    /// ```
    pub fn new(
        diameter: Length,
        first: Length,
        second: Length,
        gap: Length,
    ) -> Result<Self, Error> {
        not_negative("gap", gap)?;
        if gap.value > 0.0 {
            sane_length("gap", gap)?;
        }
        Ok(Self {
            diameter: sane_length("bolt diameter", diameter)?,
            first: sane_length("first ply", first)?,
            second: sane_length("second ply", second)?,
            gap,
        })
    }

    /// Arm of the couple: e = t1/2 + g + t2/2.
    ///
    /// ```
    /// use shankline::{strength::pin::SingleShear, units::millimetres};
    /// let mm = millimetres;
    /// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(10.0), mm(0.0)).unwrap();
    /// assert!((joint.arm() - mm(10.0)).abs() < mm(1e-9));
    /// ```
    #[must_use]
    pub fn arm(&self) -> Length {
        0.5 * self.first + self.gap + 0.5 * self.second
    }

    /// Greatest bearing pressure of each ply on a pin that is free to tilt, at the face towards the other ply.
    ///
    /// The plies have to take the couple F e beside the force. With pressure that changes evenly over a
    /// thickness, and plies of one stiffness per depth, ply i takes the part ti^3 / (t1^3 + t2^3) of it:
    /// p = F / (d t) + 6 C / (d t^2). Equal plies without gap: 4 F / (d t), four times the usual number.
    ///
    /// Source: statics and elastic foundation, computed here; no publisher's rule is known for it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, or a pressure that overflows.
    ///
    /// ```
    /// use shankline::{strength::pin::SingleShear, units::{megapascals, millimetres, newtons}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(10.0), mm(0.0))?;
    /// let [first, second] = joint.bearing_peaks(newtons(10e3))?;
    /// // 4 x 10 kN / (20 x 10)
    /// assert!((first - megapascals(200.0)).abs() < megapascals(1e-6));
    /// assert!((second - first).abs() < megapascals(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn bearing_peaks(&self, load: Force) -> Result<[Stress; 2], Error> {
        let load = not_negative("load on the bolt", load)?;
        let cube = |length: Length| {
            let share = (length / self.first.max(self.second)).value;
            share * share * share
        };
        let (one, two) = (cube(self.first), cube(self.second));
        let arm = self.arm();
        let peak = |ply: Length, share: f64| {
            let even: Stress = load / (self.diameter * ply);
            let times = 1.0 + 6.0 * share * (arm / ply).value;
            not_negative("bearing pressure", times * even)
        };
        Ok([
            peak(self.first, one / (one + two))?,
            peak(self.second, two / (one + two))?,
        ])
    }

    fn section_modulus(&self) -> f64 {
        let d = self.diameter.value;
        PI / 32.0 * (d * d * d)
    }
}

/// Bending of a bolt in single shear under a load.
///
/// ```
/// use shankline::strength::pin::{BoltEnds, SingleShear, single_shear_bending};
/// use shankline::units::{millimetres, newtons};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0))?;
/// let free = single_shear_bending(&joint, newtons(10e3), BoltEnds::Free)?;
/// assert!((free.moment.value - 160.0).abs() < 1e-9); // 10 kN x 16 mm
/// let clamped = single_shear_bending(&joint, newtons(10e3), BoltEnds::Clamped)?;
/// assert!((clamped.moment.value - 80.0).abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SingleShearBending {
    /// The joint.
    pub joint: SingleShear,
    /// The load F.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// What is assumed of the ends.
    pub ends: BoltEnds,
    /// Greatest moment in the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment: Torque,
    /// Elastic bending stress of the outer fibre, 32 M / (pi d^3).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
}

/// Moment and bending stress of a bolt in single shear: M = F e with ends free to tilt, F e / 2 with both ends
/// clamped, e = t1/2 + g + t2/2.
///
/// Each ply is taken to press at the middle of its thickness. The couple F e goes into head and nut, or into
/// uneven bearing ([`SingleShear::bearing_peaks`]); where nobody knows which, the bolt carries all of it.
///
/// Source: statics, computed here; no publisher's rule for single shear over a gap is known.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a load that is negative or not finite, or a stress that overflows.
///
/// ```
/// use shankline::strength::pin::{BoltEnds, SingleShear, single_shear_bending};
/// use shankline::units::{millimetres, newtons};
/// let mm = millimetres;
/// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0)).unwrap();
/// assert!(single_shear_bending(&joint, newtons(-1.0), BoltEnds::Free).is_err());
/// ```
pub fn single_shear_bending(
    joint: &SingleShear,
    load: Force,
    ends: BoltEnds,
) -> Result<SingleShearBending, Error> {
    let load = not_negative("load on the bolt", load)?;
    let share = match ends {
        BoltEnds::Free => 1.0,
        BoltEnds::Clamped => 0.5,
    };
    let moment = not_negative(
        "moment in the bolt",
        Torque::from(share * load * joint.arm()),
    )?;
    let stress = not_negative(
        "bending stress",
        from_base(moment.value / joint.section_modulus()),
    )?;
    Ok(SingleShearBending {
        joint: *joint,
        load,
        ends,
        moment,
        stress,
    })
}

impl SingleShearBending {
    /// Checks the bending stress against the yield strength, or at the allowable level against the yield strength over a
    /// design factor (service loads).
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eq. 3-24 for the stress; the factor is the
    /// caller's.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite or a factor that is not from 1 to
    /// 100; [`Error::NoValue`] for the design level, which the method does not have.
    ///
    /// ```
    /// use shankline::strength::check::Level;
    /// use shankline::strength::pin::{BoltEnds, SingleShear, single_shear_bending};
    /// use shankline::units::{megapascals, millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0))?;
    /// let free = single_shear_bending(&joint, newtons(10e3), BoltEnds::Free)?;
    /// // 160 N m over pi 20^3 / 32 = 785.4 mm3: 203.7 MPa of 640 / 2
    /// let check = free.yield_check(megapascals(640.0), 2.0, Level::Allowable)?;
    /// assert!((check.utilisation.value - 203.7 / 320.0).abs() < 1e-4);
    /// # Ok(())
    /// # }
    /// ```
    pub fn yield_check(
        &self,
        yield_strength: Stress,
        design_factor: f64,
        level: Level,
    ) -> Result<Check, Error> {
        let strength = positive("yield strength of the bolt", yield_strength)?;
        if !(1.0..=100.0).contains(&design_factor) {
            let allowed = Allowed::FromTo(1.0.into(), 100.0.into());
            return Err(out_of_range("design factor", design_factor, allowed));
        }
        let resistance = match level {
            Level::Nominal => strength,
            Level::Allowable => strength / design_factor,
            Level::Design => {
                return Err(Error::NoValue {
                    quantity: "design resistance",
                    subject: YIELD.citation.into(),
                    reason: "the method compares service loads",
                });
            }
        };
        let place = Place::Bolt(1);
        Check::new(
            Mode::BoltBending,
            place,
            self.stress,
            resistance,
            level,
            YIELD,
        )
    }

    /// Checks moment and shear against the section of a pin by EN 1993-1-8 Table 3.10, design loads: bending
    /// 1.5 Wel fyp / gM0, and with the shear 0.6 A fup / gM2 of the one plane
    /// (M / MRd)^2 + (F / FvRd)^2 <= 1. The plies have checks of their own.
    ///
    /// Source: EN 1993-1-8:2005 Table 3.10, its page read, with gM0 = 1.0 and gM2 = 1.25. Its figure 3.11 is about
    /// double shear: the moment is from statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for strengths that are not positive and finite, or a tensile below the yield
    /// strength.
    ///
    /// ```
    /// use shankline::strength::pin::{BoltEnds, SingleShear, single_shear_bending};
    /// use shankline::units::{megapascals, millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0))?;
    /// let free = single_shear_bending(&joint, newtons(10e3), BoltEnds::Free)?;
    /// // 160 N m of 1.5 x 785.4 mm3 x 640 MPa = 754.0 N m
    /// let [bending, combined] = free.en_checks(megapascals(640.0), megapascals(800.0))?;
    /// assert!((bending.utilisation.value - 160.0 / 754.0).abs() < 1e-4);
    /// assert!(combined.utilisation > bending.utilisation);
    /// # Ok(())
    /// # }
    /// ```
    pub fn en_checks(&self, pin_yield: Stress, pin_tensile: Stress) -> Result<[Check; 2], Error> {
        let (moment, shear) = self.en_resistances(pin_yield, pin_tensile)?;
        let used = math::hypot((self.moment / moment).value, (self.load / shear).value);
        let (place, level) = (Place::Bolt(1), Level::Design);
        Ok([
            Check::new(Mode::BoltBending, place, self.moment, moment, level, EN)?,
            Check::new(Mode::Combined, place, used, 1.0, level, EN)?,
        ])
    }

    fn en_resistances(
        &self,
        pin_yield: Stress,
        pin_tensile: Stress,
    ) -> Result<(Torque, Force), Error> {
        let fyp = positive("yield strength of the pin", pin_yield)?;
        let fup = positive("tensile strength of the pin", pin_tensile)?;
        if fup < fyp {
            let allowed = Allowed::AtLeast(fyp.into());
            return Err(out_of_range("tensile strength of the pin", fup, allowed));
        }
        let moment: Torque = from_base(1.5 * self.joint.section_modulus() * fyp.value);
        Ok((
            positive("moment resistance", moment)?,
            positive(
                "shear resistance",
                0.6 / GAMMA_M2 * (circle(self.joint.diameter) * fup),
            )?,
        ))
    }

    /// The working, to the bending stress.
    ///
    /// ```
    /// # use shankline::strength::pin::{BoltEnds, SingleShear, single_shear_bending};
    /// # use shankline::units::{millimetres, newtons};
    /// # let mm = millimetres;
    /// # let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0)).unwrap();
    /// let bent = single_shear_bending(&joint, newtons(10e3), BoltEnds::Clamped).unwrap();
    /// bent.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let joint = &self.joint;
        let (formula, source) = match self.ends {
            BoltEnds::Free => ("F * e", methods::STATICS_ENDS_FREE_TO_TILT),
            BoltEnds::Clamped => ("F * e / 2", methods::STATICS_BOTH_ENDS_CLAMPED_S_SHAPE),
        };
        Derivation::new("Bolt in single shear, bending")
            .step(Step::given("load on the bolt", "F", self.load).source(LOAD))
            .step(
                Step::new("arm of the couple", "e", "t1 / 2 + g + t2 / 2", joint.arm())
                    .with("t1", joint.first)
                    .with("g", joint.gap)
                    .with("t2", joint.second)
                    .source(methods::STATICS_OF_PLIES_THAT_BEAR_EVENLY),
            )
            .step(
                Step::new("moment in the bolt", "M", formula, self.moment)
                    .with("F", self.load)
                    .with("e", joint.arm())
                    .source(source),
            )
            .step(
                Step::new("bending stress", "sb", "32 * M / (pi * d^3)", self.stress)
                    .with("M", self.moment)
                    .with("d", joint.diameter)
                    .source(methods::SHIGLEY_9TH_ED_EQ_3_24),
            )
    }

    /// The working against the section by EN 1993-1-8 Table 3.10.
    ///
    /// # Errors
    ///
    /// Those of [`en_checks`](Self::en_checks).
    ///
    /// ```
    /// # use shankline::strength::pin::{BoltEnds, SingleShear, single_shear_bending};
    /// # use shankline::units::{megapascals, millimetres, newtons};
    /// # let mm = millimetres;
    /// # let joint = SingleShear::new(mm(20.0), mm(10.0), mm(12.0), mm(5.0)).unwrap();
    /// let bent = single_shear_bending(&joint, newtons(10e3), BoltEnds::Free).unwrap();
    /// bent.en_derivation(megapascals(640.0), megapascals(800.0)).unwrap().check().unwrap();
    /// ```
    pub fn en_derivation(
        &self,
        pin_yield: Stress,
        pin_tensile: Stress,
    ) -> Result<Derivation, Error> {
        let (moment, shear) = self.en_resistances(pin_yield, pin_tensile)?;
        let used = math::hypot((self.moment / moment).value, (self.load / shear).value);
        Ok(self
            .derivation()
            .step(
                Step::new(
                    "moment resistance",
                    "MRd",
                    "1.5 * pi / 32 * d^3 * fyp",
                    moment,
                )
                .with("d", self.joint.diameter)
                .with("fyp", pin_yield)
                .source(methods::EN_1993_1_8_2005_TABLE_3_10),
            )
            .step(
                Step::new(
                    "shear resistance",
                    "FvRd",
                    "0.6 * pi / 4 * d^2 * fup / 1.25",
                    shear,
                )
                .with("d", self.joint.diameter)
                .with("fup", pin_tensile)
                .source(methods::EN_1993_1_8_2005_TABLE_3_10),
            )
            .step(
                Step::new(
                    "both together",
                    "U",
                    "sqrt((M / MRd)^2 + (F / FvRd)^2)",
                    used,
                )
                .with("M", self.moment)
                .with("MRd", moment)
                .with("F", self.load)
                .with("FvRd", shear)
                .source(EN),
            ))
    }
}
