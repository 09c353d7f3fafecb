//! Pins and bolts that bend: plies with gaps between them, in double shear and in single shear.
//!
//! ```text
//!      F/2 <- [ outer ply, a ]
//!                 gap c
//!             [ inner ply, b ] -> F
//!                 gap c
//!      F/2 <- [ outer ply, a ]
//! ```
//!
//! With every ply bearing evenly over its thickness the moment at mid-pin is
//! M = (F/2)(a/2 + b/4 + c) = F (b + 4 c + 2 a) / 8. EN 1993-1-8 Figure 3.11 and the lug method of
//! airframes (Melcon and Hoblit) write the same; the arm of the latter was recalled, the sum follows
//! from statics. A clamped bolt bends less, for the clamp carries the load by friction first; nothing is
//! taken off for it. Single shear has [`SingleShear`], where the ends are to be named.
//!
//! | question | begins at |
//! |---|---|
//! | moment and bending stress in a pin across gaps | [`PinJoint`] |
//! | the pin and its plies in bearing by EN 1993-1-8 | [`en_1993_pin`]; one that comes out again [`EnPin::service_checks`] |
//! | the plate around a pin by AISC 360: rupture, bearing, yielding, dimensions | [`aisc_360_pin_plate`] |
//! | a pin that stays elastic, by machine design | [`yielding_pin`] |
//! | single shear | [`single_shear_bending`] |
//! | lugs with a weak pin | [`weak_pin`] |
//! | a bolt in a loose sleeve | [`share_in_sleeve`] |

use core::f64::consts::PI;

use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::units::{Force, Length, Ratio, Stress, Torque};

mod aisc;
mod en_1993;
mod service;
mod single;
mod weak;
mod yielding;

pub use aisc::{AiscPinPlate, PinPlate, PlateCorners, aisc_360_pin_plate};
pub use en_1993::{EnPin, PinStrengths, en_1993_pin};
pub(crate) use en_1993::{around_pin, en_1993_lug};
pub use single::{BoltEnds, SingleShear, SingleShearBending, single_shear_bending};
pub use weak::{WeakPin, weak_pin};
pub use yielding::{YieldingPin, yielding_pin};

/// Plastic over elastic section modulus of a round bar, 16 / (3 pi).
///
/// ```
/// assert!((shankline::strength::pin::ROUND_SHAPE_FACTOR - 1.70).abs() < 0.005);
/// ```
pub const ROUND_SHAPE_FACTOR: f64 = 16.0 / (3.0 * PI);

/// A solid pin through two outer plies and one inner ply.
///
/// ```
/// use shankline::{strength::pin::PinJoint, units::{millimetres, newtons}};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
/// // 40 kN x (20 + 4 x 1 + 2 x 12) mm / 8
/// assert!((joint.moment(newtons(40e3))?.value - 240.0).abs() < 1e-9);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "RawPinJoint")
)]
#[non_exhaustive]
pub struct PinJoint {
    /// Diameter d of the pin.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// Thickness a of each outer ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub outer: Length,
    /// Thickness b of the inner ply.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub inner: Length,
    /// Gap c on each side; a sleeve in it carries no load across.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub gap: Length,
}

#[cfg(feature = "serde")]
#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a pin joint with diameter, outer, inner and gap"
)]
struct RawPinJoint {
    diameter: crate::units::quantity::RawQuantity,
    outer: crate::units::quantity::RawQuantity,
    inner: crate::units::quantity::RawQuantity,
    gap: crate::units::quantity::RawQuantity,
}

#[cfg(feature = "serde")]
impl TryFrom<RawPinJoint> for PinJoint {
    type Error = alloc::string::String;
    fn try_from(raw: RawPinJoint) -> Result<Self, Self::Error> {
        Self::new(
            raw.diameter.named("diameter")?,
            raw.outer.named("outer")?,
            raw.inner.named("inner")?,
            raw.gap.named("gap")?,
        )
        .map_err(|error| alloc::format!("{error}"))
    }
}

impl PinJoint {
    /// Pin diameter, thickness of one outer ply, of the inner ply, and gap on each side.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter or thickness that is not positive, a gap that is negative, or
    /// any of them beyond a kilometre.
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::millimetres};
    /// let mm = millimetres;
    /// assert!(PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(-1.0)).is_err());
    /// ```
    pub fn new(diameter: Length, outer: Length, inner: Length, gap: Length) -> Result<Self, Error> {
        not_negative("gap", gap)?;
        if gap.value > 0.0 {
            sane_length("gap", gap)?;
        }
        Ok(Self {
            diameter: sane_length("pin diameter", diameter)?,
            outer: sane_length("outer ply", outer)?,
            inner: sane_length("inner ply", inner)?,
            gap,
        })
    }

    /// Arm of half the load about mid-pin: a/2 + b/4 + c.
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let arm = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?.arm();
    /// assert!((arm - mm(12.0)).abs() < mm(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    #[must_use]
    pub fn arm(&self) -> Length {
        0.5 * self.outer + 0.25 * self.inner + self.gap
    }

    /// Greatest moment in the pin under a load.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, or a moment that overflows.
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::{millimetres, newtons}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(0.0))?;
    /// assert_eq!(joint.moment(newtons(0.0))?.value, 0.0);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn moment(&self, load: Force) -> Result<Torque, Error> {
        let load = not_negative("load on the pin", load)?;
        not_negative("moment in the pin", Torque::from(0.5 * load * self.arm()))
    }

    /// Elastic bending stress 32 M / (pi d^3) under a load.
    ///
    /// # Errors
    ///
    /// As [`moment`](Self::moment).
    ///
    /// ```
    /// use shankline::{strength::pin::PinJoint, units::{millimetres, newtons}};
    /// use shankline::uom::si::pressure::megapascal;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mm = millimetres;
    /// let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0))?;
    /// // 240 N m over pi 30^3 / 32 = 2650.7 mm3
    /// assert!((joint.bending_stress(newtons(40e3))?.get::<megapascal>() - 90.54).abs() < 0.005);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn bending_stress(&self, load: Force) -> Result<Stress, Error> {
        let moment = self.moment(load)?;
        let modulus = self.section_modulus();
        not_negative(
            "bending stress",
            crate::units::from_base(moment.value / modulus),
        )
    }

    /// Elastic section modulus in cubic metres.
    fn section_modulus(&self) -> f64 {
        let d = self.diameter.value;
        PI / 32.0 * (d * d * d)
    }
}

/// Share of a bending moment that a bolt takes inside a loose sleeve of the same modulus of elasticity.
///
/// Both bend to one curvature, so they share by their second moments:
/// d^4 / (d^4 + D^4 - Di^4), D and Di the diameters of the sleeve. Source: beam theory. It holds where
/// the sleeve is continuous over the bent length.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths that are not positive, a bore smaller than the bolt or not smaller
/// than the sleeve.
///
/// ```
/// use shankline::{strength::pin::share_in_sleeve, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let mm = millimetres;
/// let share = share_in_sleeve(mm(12.0), mm(20.0), mm(12.0))?;
/// assert!((share.value - 0.6_f64.powi(4)).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
pub fn share_in_sleeve(bolt: Length, sleeve: Length, bore: Length) -> Result<Ratio, Error> {
    let bolt = sane_length("bolt diameter", bolt)?;
    let sleeve = sane_length("sleeve diameter", sleeve)?;
    let bore = sane_length("bore of the sleeve", bore)?;
    if bore < bolt {
        let allowed = Allowed::AtLeast(bolt.into());
        return Err(out_of_range("bore of the sleeve", bore, allowed));
    }
    if sleeve <= bore {
        let allowed = Allowed::Above(bore.into());
        return Err(out_of_range("sleeve diameter", sleeve, allowed));
    }
    // Relative to the sleeve, and D^4 - Di^4 in factors: neither overflows or becomes nothing.
    let relative = |length: Length| (length / sleeve).value;
    let (d, inner, wall) = (relative(bolt), relative(bore), relative(sleeve - bore));
    let of_bolt = (d * d) * (d * d);
    let of_sleeve = wall * (1.0 + inner) * (1.0 + inner * inner);
    Ok(Ratio::from(of_bolt / (of_bolt + of_sleeve)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, millimetres, newton_metres};

    #[test]
    fn extremes_are_errors_not_numbers() {
        let mm = millimetres;
        let (mut answers, mut refusals) = (0, 0);
        for d in [1e-300, 1e-3, 1.0, 1e6] {
            for length in [1e-3, 1.0, 1e6] {
                let Ok(joint) = PinJoint::new(mm(d), mm(length), mm(length), mm(length)) else {
                    refusals += 1;
                    continue;
                };
                for stress in [1e-300, 1e-6, 1.0, 1e9, 1e300, f64::MAX * 1e-6] {
                    let strengths = PinStrengths {
                        pin_yield: megapascals(stress),
                        pin_tensile: megapascals(stress),
                        ply_yield: megapascals(stress),
                    };
                    let pin = en_1993_pin(&joint, &strengths).map(|pin| pin.combined);
                    let weak = weak_pin(
                        &joint,
                        newton_metres(stress),
                        megapascals(stress),
                        megapascals(1.0),
                    );
                    for load in [pin, weak.map(|weak| weak.load)] {
                        match load {
                            Ok(load) => {
                                assert!(load.value > 0.0 && load.value.is_finite());
                                answers += 1;
                            }
                            Err(_) => refusals += 1,
                        }
                    }
                }
            }
        }
        assert!(answers > 20 && refusals > 3, "{answers} {refusals}");
    }

    #[test]
    fn a_gap_is_nothing_or_a_length() {
        let mm = millimetres;
        for (gap, good) in [
            (0.0, true),
            (1.0, true),
            (1e6, true),
            (2e6, false),
            (-1.0, false),
        ] {
            let pin = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(gap));
            let single = SingleShear::new(mm(20.0), mm(10.0), mm(10.0), mm(gap));
            assert_eq!((pin.is_ok(), single.is_ok()), (good, good), "{gap}");
        }
    }

    #[test]
    fn a_sleeve_is_wider_than_its_bore() {
        let mm = millimetres;
        // d^4 / (d^4 + D^4 - Di^4) = 20736 / (20736 + 160000 - 38416).
        let share = share_in_sleeve(mm(12.0), mm(20.0), mm(14.0)).unwrap();
        assert!((share.value - 20_736.0 / 142_320.0).abs() < 1e-12);
        assert!(share_in_sleeve(mm(12.0), mm(14.1), mm(14.0)).is_ok());
        for [bolt, sleeve, bore] in [[12.0, 14.0, 14.0], [12.0, 13.0, 14.0], [12.1, 20.0, 12.0]] {
            assert!(share_in_sleeve(mm(bolt), mm(sleeve), mm(bore)).is_err());
        }
    }

    #[test]
    fn strengths_holes_and_factors_on_their_limits() {
        let mm = millimetres;
        let joint = PinJoint::new(mm(30.0), mm(12.0), mm(20.0), mm(1.0)).unwrap();
        // A pin that breaks as soon as it yields is taken, one that breaks before is not.
        let single = SingleShear::new(mm(20.0), mm(10.0), mm(10.0), mm(0.0)).unwrap();
        let load = crate::units::newtons(1e3);
        let bent = single_shear_bending(&single, load, BoltEnds::Free).unwrap();
        for (breaks, good) in [(639.0, false), (640.0, true), (800.0, true)] {
            let checks = bent.en_checks(megapascals(640.0), megapascals(breaks));
            assert_eq!(checks.is_ok(), good);
        }
        for (factor, good) in [(0.99, false), (1.0, true), (2.0, true)] {
            assert_eq!(
                yielding_pin(&joint, megapascals(355.0), factor).is_ok(),
                good
            );
        }
        // Steel on steel: no clearance, no pressure; a hole smaller than the pin is none.
        let strengths = PinStrengths {
            pin_yield: megapascals(355.0),
            pin_tensile: megapascals(490.0),
            ply_yield: megapascals(275.0),
        };
        let pin = en_1993_pin(&joint, &strengths).unwrap();
        let contact = |hole| pin.contact_check(crate::units::newtons(50e3), mm(hole));
        assert!(contact(29.9).is_err());
        assert_eq!(contact(30.0).unwrap().utilisation, Ratio::from(0.0));
        assert!(contact(31.0).unwrap().utilisation.value > 0.0);
        // Where all checks are equally used, as without load, the first governs.
        let none = crate::units::newtons(0.0);
        assert_eq!(pin.governing(none).unwrap(), pin.checks(none).unwrap()[0]);
    }

    #[test]
    fn the_thicker_ply_takes_more_of_the_couple() {
        let mm = millimetres;
        // 20 and 10 mm: shares 8/9 and 1/9; e = 15 mm; F / (d t) = 25 and 50 MPa; 1 + 6 x 8/9 x 15/20 = 5, 1 + 6 / 9 x 15/10 = 2.
        let joint = SingleShear::new(mm(20.0), mm(20.0), mm(10.0), mm(0.0)).unwrap();
        let peaks = joint.bearing_peaks(crate::units::newtons(10e3)).unwrap();
        for (peak, expected) in peaks.into_iter().zip([125.0, 100.0]) {
            assert!(
                (peak - megapascals(expected)).abs() < megapascals(1e-6),
                "{peaks:?}"
            );
        }
    }
}
