//! Bolted covers under pressure: the force on the cover, the share of a bolt, the spacing of the bolts.
//!
//! | question | begins at |
//! |---|---|
//! | force of the pressure, share of each bolt | [`Cover`] |
//! | size or number of the bolts | [`Cover::demand`], then [`sizing`](super::sizing) |
//! | spacing on the pitch circle | [`Cover::spacing`] |
//! | whether the spacing keeps the joint tight; how many bolts it wants | [`SpacingRule`] |
//! | initial tension for a fluid-tight joint | [`textbook_initial_tension`] |
//!
//! With a preload the bolt feels the initial tension and a part of its share of the pressure:
//! [`JointDiagram::under`](crate::tension::JointDiagram::under) with
//! [`LoadShare::of_constant`](crate::tension::LoadShare::of_constant).
//!
//! These are rules of textbooks of machine design. They are no design of a pressure vessel: codes of vessels and
//! flanges ask for gasket seating, bolt-up and test pressure, which nothing here knows.

use alloc::format;
use core::f64::consts::PI;

use super::sizing::Demand;
use super::stressed::count;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, part_length, within};
use crate::math;
use crate::source::Method;
use crate::tables::methods;
use crate::thread::area::circle;
use crate::units::{Force, Length, Stress, megapascals, millimetres, newtons};

/// A cover held by bolts against a pressure.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::{cover::Cover, sizing::ThreadSeries, stressed::BoltSection};
/// # fn main() -> Result<(), shankline::Error> {
/// // 300 mm, 0.7 MPa, 12 studs at 28 MPa: 147.3 mm2 of core each
/// let cover = Cover::new(megapascals(0.7), millimetres(300.0), 12)?;
/// assert!((cover.force - newtons(49_480.0)).abs() < newtons(1.0));
/// let stud = cover.demand(megapascals(28.0))?.least_thread(ThreadSeries::METRIC_COARSE, BoltSection::Core)?;
/// assert!((stud.needed - square_millimetres(147.26)).abs() < square_millimetres(0.01));
/// assert_eq!(stud.thread.to_string(), "M18");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Cover {
    /// Pressure p, above that outside.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pressure: Stress,
    /// Effective diameter D the pressure acts on: the bore, or the mean diameter of the gasket.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub effective_diameter: Length,
    /// Number of bolts z.
    pub bolts: usize,
    /// Force of the pressure, F = (pi/4) D^2 p.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub force: Force,
    /// Share of a bolt, F / z.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub share: Force,
}

impl Cover {
    /// A cover of an effective diameter under a pressure, its bolts loaded alike.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a pressure that is not from 1 Pa to 1e6 GPa, a diameter that is not from 1 nm to 1 km,
    /// a number of bolts that is not from 1 to a million, or a force that is not from 1e-6 to 1e15 N.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::Cover};
    /// assert!(Cover::new(megapascals(1.0), millimetres(300.0), 0).is_err());
    /// ```
    pub fn new(pressure: Stress, effective_diameter: Length, bolts: usize) -> Result<Self, Error> {
        within("pressure", pressure, megapascals(1e-6), megapascals(1e9))?;
        part_length("effective diameter", effective_diameter)?;
        let number = count("number of bolts", bolts)?;
        let force = circle(effective_diameter) * pressure;
        super::stressed::sane_force("force of the pressure", force)?;
        Ok(Self {
            pressure,
            effective_diameter,
            bolts,
            force,
            share: force / number,
        })
    }

    /// The sizing that follows from an allowable stress of the bolts, no preload: the whole force, shared by the bolts.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress that is not from 1 Pa to 1e6 GPa.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::Cover};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // 350 mm, 8.5 kgf/cm2, 14 bolts at 200 kgf/cm2: 19.3 mm
    /// let cover = Cover::new(megapascals(0.850), millimetres(350.0), 14)?;
    /// let least = cover.demand(megapascals(20.0))?.least_diameter()?;
    /// assert!((least.diameter - millimetres(19.3)).abs() < millimetres(0.05));
    /// # Ok(())
    /// # }
    /// ```
    pub fn demand(&self, allowable: Stress) -> Result<Demand, Error> {
        Demand::new(self.force, allowable)?.shared_by(self.bolts)
    }

    /// The spacing of the bolts along a pitch circle: s = pi Dp / z.
    ///
    /// Source: statics (geometry); textbooks measure it along the circle, not along the chord.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not from 1 nm to 1 km.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::Cover};
    /// let cover = Cover::new(megapascals(1.75), millimetres(200.0), 16).unwrap();
    /// let spacing = cover.spacing(millimetres(320.0)).unwrap();
    /// assert!((spacing - millimetres(62.83)).abs() < millimetres(0.005));
    /// ```
    pub fn spacing(&self, pitch_circle: Length) -> Result<Length, Error> {
        part_length("diameter of the pitch circle", pitch_circle)?;
        Ok(PI * pitch_circle / count("number of bolts", self.bolts)?)
    }

    /// The working.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::Cover};
    /// let cover = Cover::new(megapascals(1.75), millimetres(200.0), 16).unwrap();
    /// cover.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        Derivation::new("Cover under pressure")
            .step(
                Step::new("force of the pressure", "F", "pi / 4 * D^2 * p", self.force)
                    .with("D", self.effective_diameter)
                    .with("p", self.pressure)
                    .source(methods::STATICS),
            )
            .step(
                Step::new("share of a bolt", "F1", "F / z", self.share)
                    .with("F", self.force)
                    .with("z", self.bolts)
                    .source(methods::STATICS_EQUAL_SHARES),
            )
    }
}

/// A textbook rule for the spacing of bolts on the pitch circle of a tight joint.
///
/// | rule | spacing | known how |
/// |---|---|---|
/// | [`Khurmi`](SpacingRule::Khurmi) | 20 sqrt(d1) to 30 sqrt(d1), d1 and spacing in mm | Khurmi and Gupta, A Textbook of Machine Design, cylinder covers; read as quoted in worked exercises |
/// | [`KhurmiEngine`](SpacingRule::KhurmiEngine) | 19 sqrt(d) to 28.5 sqrt(d), d and spacing in mm | the same, chapter on engine parts; read in an extract, which lost the root signs |
/// | [`Shigley`](SpacingRule::Shigley) | 3 d to 6 d | Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-34, recalled; the limits read in a design exercise that names no book |
///
/// ```
/// use shankline::{prelude::*, strength::cover::SpacingRule};
/// # fn main() -> Result<(), shankline::Error> {
/// let (least, greatest) = SpacingRule::Khurmi { hole: millimetres(25.0) }.limits()?;
/// assert!((least - millimetres(100.0)).abs() < millimetres(1e-9));
/// assert!((greatest - millimetres(150.0)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum SpacingRule {
    /// Khurmi and Gupta, cylinder covers.
    Khurmi {
        /// Diameter d1 of the hole.
        hole: Length,
    },
    /// Khurmi and Gupta, cylinder heads of engines.
    KhurmiEngine {
        /// Nominal diameter d of the stud.
        diameter: Length,
    },
    /// Shigley.
    Shigley {
        /// Nominal diameter d of the bolt.
        diameter: Length,
    },
}

/// Whether bolts stand as a rule wants them.
///
/// ```
/// use shankline::{prelude::*, strength::cover::{SpacingRule, SpacingVerdict}};
/// let rule = SpacingRule::Shigley { diameter: millimetres(20.0) };
/// assert_eq!(rule.judge(millimetres(70.0)).unwrap(), SpacingVerdict::Within);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum SpacingVerdict {
    /// Closer than the rule wants: more bolts than it takes, or no room for the wrench.
    TooClose,
    /// Within both limits.
    Within,
    /// Wider than the rule allows: the joint may leak between the bolts.
    TooWide,
}

impl SpacingRule {
    fn diameter(self) -> Length {
        match self {
            Self::Khurmi { hole } => hole,
            Self::KhurmiEngine { diameter } | Self::Shigley { diameter } => diameter,
        }
    }

    /// Book and place.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::SpacingRule};
    /// let rule = SpacingRule::Shigley { diameter: millimetres(20.0) };
    /// assert_eq!(rule.method().citation, "Shigley, 9th ed., Eq. 8-34");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Khurmi { .. } => methods::KHURMI_AND_GUPTA_CYLINDER_COVERS,
            Self::KhurmiEngine { .. } => methods::KHURMI_AND_GUPTA_CYLINDER_HEADS_OF_ENGINES,
            Self::Shigley { .. } => methods::SHIGLEY_9TH_ED_EQ_8_34,
        }
    }

    /// Least and greatest spacing along the pitch circle.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not from 1 nm to 1 km.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::SpacingRule};
    /// // Khurmi and Gupta, studs of 14 mm: 71.1 to 106.6 mm
    /// let (least, greatest) = SpacingRule::KhurmiEngine { diameter: millimetres(14.0) }.limits().unwrap();
    /// assert!((least - millimetres(71.1)).abs() < millimetres(0.05));
    /// assert!((greatest - millimetres(106.6)).abs() < millimetres(0.05));
    /// ```
    pub fn limits(self) -> Result<(Length, Length), Error> {
        let diameter = part_length("diameter of the bolt or its hole", self.diameter())?;
        // A rule for numbers in millimetres.
        let root = millimetres(math::sqrt((diameter / millimetres(1.0)).value));
        Ok(match self {
            Self::Khurmi { .. } => (20.0 * root, 30.0 * root),
            Self::KhurmiEngine { .. } => (19.0 * root, 28.5 * root),
            Self::Shigley { .. } => (3.0 * diameter, 6.0 * diameter),
        })
    }

    /// Holds a spacing against the limits.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::{SpacingRule, SpacingVerdict}};
    /// let rule = SpacingRule::Khurmi { hole: millimetres(17.0) };
    /// assert_eq!(rule.judge(millimetres(62.8)).unwrap(), SpacingVerdict::TooClose);
    /// ```
    pub fn judge(self, spacing: Length) -> Result<SpacingVerdict, Error> {
        part_length("spacing of the bolts", spacing)?;
        let (least, greatest) = self.limits()?;
        Ok(if spacing < least {
            SpacingVerdict::TooClose
        } else if spacing > greatest {
            SpacingVerdict::TooWide
        } else {
            SpacingVerdict::Within
        })
    }

    /// The fewest bolts on a pitch circle that are not wider apart than the rule allows: n = pi Dp / greatest, rounded up.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km, or more than a million bolts.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::SpacingRule};
    /// let rule = SpacingRule::Khurmi { hole: millimetres(25.0) };
    /// assert_eq!(rule.fewest_bolts(millimetres(500.0)).unwrap(), 11); // 10.5
    /// ```
    pub fn fewest_bolts(self, pitch_circle: Length) -> Result<usize, Error> {
        part_length("diameter of the pitch circle", pitch_circle)?;
        let (_, greatest) = self.limits()?;
        let quotient = (PI * pitch_circle / greatest).value;
        if quotient > 1e6 {
            let allowed = Allowed::AtMost(1e6.into());
            return Err(out_of_range("number of bolts", quotient, allowed));
        }
        // Between 1 and a million the cast is exact.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        Ok(math::ceil(quotient - 1e-9).max(1.0) as usize)
    }

    /// What the user must be told: which of the rules were recalled.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::SpacingRule};
    /// let rule = SpacingRule::Shigley { diameter: millimetres(20.0) };
    /// assert_eq!(rule.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(self) -> Cautions {
        Cautions::default().with(match self {
            Self::Shigley { .. } => Caution::of_method(methods::SHIGLEY_9TH_ED_EQ_8_34),
            Self::Khurmi { .. } | Self::KhurmiEngine { .. } => None,
        })
    }

    /// The working of the limits.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::cover::SpacingRule};
    /// let rule = SpacingRule::Khurmi { hole: millimetres(25.0) };
    /// rule.derivation().unwrap().check().unwrap();
    /// ```
    ///
    /// # Errors
    ///
    /// As [`limits`](Self::limits).
    pub fn derivation(self) -> Result<Derivation, Error> {
        let (least, greatest) = self.limits()?;
        let (low, high) = match self {
            Self::Khurmi { .. } => (20.0, 30.0),
            Self::KhurmiEngine { .. } => (19.0, 28.5),
            Self::Shigley { .. } => (3.0, 6.0),
        };
        let step = |what, symbol, factor: f64, value| {
            let step = match self {
                Self::Shigley { .. } => Step::new(what, symbol, format!("{factor} * d"), value),
                _ => Step::new(what, symbol, format!("{factor} * sqrt(d / mm) * mm"), value)
                    .with("mm", millimetres(1.0)),
            };
            step.with("d", self.diameter())
                .source(self.method().citation)
        };
        Ok(Derivation::new("Spacing of bolts")
            .step(step("least spacing", "smin", low, least))
            .step(step("greatest spacing", "smax", high, greatest)))
    }
}

/// How tight a joint has to be, for [`textbook_initial_tension`].
///
/// ```
/// use shankline::strength::cover::Tightness;
/// assert_ne!(Tightness::Fluid, Tightness::Plain);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum Tightness {
    /// Fluid-tight, such as the cover of a steam cylinder.
    Fluid,
    /// Not as tight as that.
    Plain,
}

/// The initial tension that hand tightening is taken to leave in a bolt: 2840 d for a fluid-tight joint, half of it
/// otherwise, in newtons with d in millimetres.
///
/// It says what a fitter leaves in the bolt, not what is good for it: on the stress area it is 232 MPa in an M20 and
/// 289 MPa in an M16, where class 4.6 yields at 240 MPa. The books want no bolts below M16 or M18 in such joints for
/// that reason. By torque: [`preload`](crate::preload).
///
/// Source: Khurmi and Gupta, A Textbook of Machine Design, chapter on screwed joints; read as quoted in lecture slides.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a diameter that is not from 1 nm to 1 km.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::cover::{Tightness, textbook_initial_tension};
/// # fn main() -> Result<(), shankline::Error> {
/// let tension = textbook_initial_tension(millimetres(20.0), Tightness::Fluid)?;
/// assert!((tension.tension - newtons(56.8e3)).abs() < newtons(1e-6));
/// tension.derivation().check()?;
/// # Ok(())
/// # }
/// ```
pub fn textbook_initial_tension(
    diameter: Length,
    tightness: Tightness,
) -> Result<InitialTension, Error> {
    part_length("nominal diameter", diameter)?;
    let factor = match tightness {
        Tightness::Fluid => 2840.0,
        Tightness::Plain => 1420.0,
    };
    Ok(InitialTension {
        diameter,
        tightness,
        tension: newtons(factor * (diameter / millimetres(1.0)).value),
    })
}

/// Initial tension by [`textbook_initial_tension`].
///
/// ```
/// # use shankline::prelude::*;
/// # use shankline::strength::cover::{Tightness, textbook_initial_tension};
/// let plain = textbook_initial_tension(millimetres(24.0), Tightness::Plain).unwrap();
/// assert!((plain.tension - newtons(34_080.0)).abs() < newtons(1e-6));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct InitialTension {
    /// Nominal diameter d.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// How tight the joint has to be.
    pub tightness: Tightness,
    /// The tension.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension: Force,
}

impl InitialTension {
    /// The working.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::cover::{Tightness, textbook_initial_tension};
    /// let plain = textbook_initial_tension(millimetres(24.0), Tightness::Plain).unwrap();
    /// plain.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let formula = match self.tightness {
            Tightness::Fluid => "2840 * N * d / mm",
            Tightness::Plain => "1420 * N * d / mm",
        };
        Derivation::new("Initial tension").step(
            Step::new("initial tension", "P1", formula, self.tension)
                .with("N", newtons(1.0))
                .with("d", self.diameter)
                .with("mm", millimetres(1.0))
                .source(methods::KHURMI_AND_GUPTA_A_TEXTBOOK_OF_MACHINE_DESIGN),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn no_number_breaks_it(p in any::<f64>(), d in any::<f64>(), n in any::<usize>()) {
            let length = millimetres(d);
            if let Ok(cover) = Cover::new(megapascals(p), length, n) {
                prop_assert!(cover.share.is_finite() && cover.derivation().check().is_ok());
                let _ = cover.spacing(millimetres(p));
                let _ = cover.demand(megapascals(d)).map(|demand| demand.least_diameter());
            }
            for rule in [
                SpacingRule::Khurmi { hole: length },
                SpacingRule::KhurmiEngine { diameter: length },
                SpacingRule::Shigley { diameter: length },
            ] {
                if let Ok((least, greatest)) = rule.limits() {
                    prop_assert!(least < greatest);
                    prop_assert!(rule.derivation().unwrap().check().is_ok());
                }
                let _ = (rule.judge(millimetres(p)), rule.fewest_bolts(millimetres(p)));
            }
            let _ = textbook_initial_tension(length, Tightness::Fluid);
        }
    }

    #[test]
    fn spacings_on_a_limit_are_within() {
        // Shigley Eq. 8-34: 3 to 6 diameters.
        let rule = SpacingRule::Shigley {
            diameter: millimetres(20.0),
        };
        let (least, greatest) = rule.limits().unwrap();
        assert!((least - millimetres(60.0)).abs() < millimetres(1e-9));
        assert!((greatest - millimetres(120.0)).abs() < millimetres(1e-9));
        for (spacing, verdict) in [
            (millimetres(59.9), SpacingVerdict::TooClose),
            (least, SpacingVerdict::Within),
            (millimetres(90.0), SpacingVerdict::Within),
            (greatest, SpacingVerdict::Within),
            (millimetres(120.1), SpacingVerdict::TooWide),
        ] {
            assert_eq!(rule.judge(spacing).unwrap(), verdict, "{spacing:?}");
        }
    }

    #[test]
    fn as_many_bolts_as_the_circle_needs_and_no_more() {
        // pi Dp / (6 d): bolts of 20 mm stand on a circle of n 120 / pi mm.
        let rule = SpacingRule::Shigley {
            diameter: millimetres(20.0),
        };
        let on = |n: f64| rule.fewest_bolts(millimetres(n * 120.0 / PI));
        for n in 1..60_u32 {
            let count = f64::from(n);
            assert_eq!(on(count).unwrap(), n as usize);
            assert_eq!(on(count + 1e-6).unwrap(), n as usize + 1);
        }
        assert_eq!(on(0.2).unwrap(), 1);
        // More than a million are refused.
        let tiny = SpacingRule::Shigley {
            diameter: millimetres(0.001),
        };
        assert_eq!(
            tiny.fewest_bolts(millimetres(0.006 * 999_999.5 / PI))
                .unwrap(),
            1_000_000
        );
        assert!(
            tiny.fewest_bolts(millimetres(0.006 * 1_000_001.0 / PI))
                .is_err()
        );
    }
}
