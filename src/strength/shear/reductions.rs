//! What codes take off the shear capacity for long joints, long grips, packing and wide holes.

use alloc::{format, string::ToString};

use super::stress::is_a307;
use super::{AiscEdition, ShearMethod};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::material::{BoltGrade, PropertyClass};
use crate::thread::Thread;
use crate::units::{Length, inches, millimetres};

/// What a code may lower the shear capacity for. Left empty, a field lowers nothing.
///
/// | method | long joint | long grip | packing | wide holes |
/// |---|---|---|---|---|
/// | AISC 360-05 | 0.8 above 50 in | A307: 1 % for each 1/16 in above 5 d | 1 - 0.4 (t - 0.25) to 3/4 in (m; read for 1999) | none |
/// | AISC 360-10 on | 0.833 above 38 in | the same | the same, at least 0.85 (m) | none |
/// | EN 1993-1-8 3.8, 3.6.1 | 1 - (L - 15 d) / (200 d), 0.75 to 1 (m) | none | 9 d / (8 d + 3 t) for t over d/3 | 0.85 |
/// | BS 5950-1 6.3.2 | (5500 - L) / 5000 above 500 mm (m) | 8 d / (3 d + G) above 5 d (m) | 9 d / (8 d + 3 t) for t over d/3, at most 4 d / 3 (m) | none |
/// | IS 800 10.3.3 | 1.075 - L / (200 d), 0.75 to 1, above 15 d (m) | 8 d / (3 d + G) above 5 d, at most 8 d (m) | 1 - 0.0125 t for t over 6 mm (m) | none |
/// | AS 4100 9.3.2.1 | 1.075 - L / 4000 above 300 mm, at least 0.75 (m) | none | 0.85 for t over 6 to 20 mm (m) | none |
/// | CSA S16 13.12.1.2 | 0.833 from 760 mm (m) | none | over 6.4 mm refused | none |
/// | others | none | none | none | none |
///
/// L and t in the unit of the numbers beside them, mm or in. (m): recalled, not read; a capacity it was
/// applied to carries a caution. Several reductions multiply.
///
/// ```
/// use shankline::{strength::shear::ShearReductions, units::millimetres};
/// let packed = ShearReductions { packing: Some(millimetres(10.0)), ..ShearReductions::default() };
/// assert!(packed.joint_length.is_none());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct ShearReductions {
    /// Length of the joint between the end bolts, along the force. Only for joints loaded from their
    /// ends, such as splices; a beam's web cleat takes its load bolt by bolt and is not one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub joint_length: Option<Length>,
    /// Grip: thickness of all plies together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub grip: Option<Length>,
    /// Thickness of packing (fillers) at the shear plane that is not developed beyond the joint.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_option")
    )]
    pub packing: Option<Length>,
    /// M12 or M14 in holes with 2 mm clearance (EN 1993-1-8, 3.6.1(5)).
    pub two_millimetre_clearance: bool,
}

/// The factors a method took off, each 1 where it took nothing.
///
/// ```
/// assert_eq!(shankline::strength::shear::AppliedReductions::default().product(), 1.0);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AppliedReductions {
    /// For a long joint.
    pub long_joint: f64,
    /// For a long grip.
    pub long_grip: f64,
    /// For packing.
    pub packing: f64,
    /// For wide holes.
    pub clearance: f64,
}

impl Default for AppliedReductions {
    fn default() -> Self {
        Self {
            long_joint: 1.0,
            long_grip: 1.0,
            packing: 1.0,
            clearance: 1.0,
        }
    }
}

impl AppliedReductions {
    /// All factors together.
    ///
    /// ```
    /// # use shankline::strength::shear::AppliedReductions;
    /// assert_eq!(AppliedReductions::default().product(), 1.0);
    /// ```
    #[must_use]
    pub fn product(&self) -> f64 {
        self.long_joint * self.long_grip * self.packing * self.clearance
    }
}

const D_5: f64 = 5.0;

impl ShearReductions {
    /// The factors of a method.
    pub(super) fn factors(
        &self,
        method: ShearMethod,
        thread: &Thread,
        grade: BoltGrade,
    ) -> Result<AppliedReductions, Error> {
        let d = thread.nominal_diameter();
        let length = checked("length of the joint", self.joint_length)?;
        let grip = checked("grip", self.grip)?;
        let packing = checked("thickness of packing", self.packing)?;
        Ok(AppliedReductions {
            long_joint: long_joint(method, length, d)?,
            long_grip: long_grip(method, grade, grip, length, d)?,
            packing: packed(method, packing, d)?,
            clearance: self.clearance(method, thread, grade)?,
        })
    }

    fn clearance(
        &self,
        method: ShearMethod,
        thread: &Thread,
        grade: BoltGrade,
    ) -> Result<f64, Error> {
        if !self.two_millimetre_clearance || method != ShearMethod::En1993 {
            return Ok(1.0);
        }
        let d = thread.nominal_diameter();
        let listed = [millimetres(12.0), millimetres(14.0)];
        if !listed
            .iter()
            .any(|size| (*size - d).abs() < millimetres(1e-6))
        {
            return Err(Error::Mismatch(format!(
                "EN 1993-1-8 3.6.1(5) is about M12 and M14 bolts in holes with 2 mm clearance, not {thread}"
            )));
        }
        let soft = matches!(
            grade,
            BoltGrade::Iso(PropertyClass::Class4_6 | PropertyClass::Class5_6)
        );
        Ok(if soft { 1.0 } else { 0.85 })
    }
}

fn checked(name: &'static str, length: Option<Length>) -> Result<Length, Error> {
    length.map_or(Ok(millimetres(0.0)), |length| sane_length(name, length))
}

fn long_joint(method: ShearMethod, length: Length, d: Length) -> Result<f64, Error> {
    let in_d = (length / d).value;
    Ok(match method {
        ShearMethod::Aisc360 {
            edition: AiscEdition::E2005,
        } if length > inches(50.0) => 0.8,
        ShearMethod::Aisc360 { edition }
            if edition != AiscEdition::E2005 && length > inches(38.0) =>
        {
            0.833
        }
        ShearMethod::En1993 if in_d > 15.0 => (1.0 - (in_d - 15.0) / 200.0).max(0.75),
        ShearMethod::Bs5950 if length > millimetres(500.0) => {
            let most = millimetres(5500.0);
            if length >= most {
                return Err(out_of_range(
                    "length of the joint for BS 5950-1",
                    length,
                    Allowed::AtMost(most.into()),
                ));
            }
            ((most - length) / millimetres(5000.0)).value
        }
        ShearMethod::Is800 if in_d > 15.0 => (1.075 - in_d / 200.0).clamp(0.75, 1.0),
        ShearMethod::As4100 if length > millimetres(300.0) => {
            (1.075 - (length / millimetres(4000.0)).value).max(0.75)
        }
        ShearMethod::CsaS16 if length >= millimetres(760.0) => 0.833,
        _ => 1.0,
    })
}

fn long_grip(
    method: ShearMethod,
    grade: BoltGrade,
    grip: Length,
    joint: Length,
    d: Length,
) -> Result<f64, Error> {
    let in_d = (grip / d).value;
    if in_d <= D_5 {
        return Ok(1.0);
    }
    let stiff = 8.0 / (3.0 + in_d);
    match method {
        ShearMethod::Aisc360 { .. } if is_a307(grade) => {
            let sixteenths = ((grip - D_5 * d) / inches(1.0 / 16.0)).value;
            let factor = 1.0 - 0.01 * sixteenths;
            if factor > 0.0 {
                Ok(factor)
            } else {
                let most = D_5 * d + inches(100.0 / 16.0);
                let allowed = Allowed::AtMost(most.into());
                Err(out_of_range("grip of an A307 bolt", grip, allowed))
            }
        }
        ShearMethod::Bs5950 => Ok(stiff),
        ShearMethod::Is800 if in_d > 8.0 => {
            let allowed = Allowed::AtMost((8.0 * d).into());
            Err(out_of_range("grip for IS 800", grip, allowed))
        }
        // Never above the factor of the long joint.
        ShearMethod::Is800 => Ok(stiff.min(long_joint(method, joint, d)?)),
        _ => Ok(1.0),
    }
}

fn packed(method: ShearMethod, packing: Length, d: Length) -> Result<f64, Error> {
    Ok(match method {
        ShearMethod::Aisc360 { edition } if packing > inches(0.25) => {
            let factor = 1.0 - 0.4 * ((packing - inches(0.25)) / inches(1.0)).value;
            if edition != AiscEdition::E2005 {
                factor.max(0.85)
            } else if packing <= inches(0.75) {
                factor
            } else {
                let allowed = Allowed::AtMost(inches(0.75).into());
                return Err(out_of_range("fillers for AISC 360-05", packing, allowed));
            }
        }
        ShearMethod::Bs5950 if 3.0 * packing > 4.0 * d => {
            let allowed = Allowed::AtMost((4.0 / 3.0 * d).into());
            return Err(out_of_range("packing for BS 5950-1", packing, allowed));
        }
        ShearMethod::En1993 | ShearMethod::Bs5950 if 3.0 * packing > d => {
            (9.0 * d / (8.0 * d + 3.0 * packing)).value
        }
        ShearMethod::Is800 if packing > millimetres(6.0) => {
            let factor = 1.0 - 0.0125 * (packing / millimetres(1.0)).value;
            if factor <= 0.0 {
                let allowed = Allowed::AtMost(millimetres(80.0).into());
                return Err(out_of_range("packing for IS 800", packing, allowed));
            }
            factor
        }
        ShearMethod::As4100 if packing > millimetres(20.0) => {
            let allowed = Allowed::AtMost(millimetres(20.0).into());
            return Err(out_of_range("packing for AS 4100", packing, allowed));
        }
        ShearMethod::As4100 if packing > millimetres(6.0) => 0.85,
        ShearMethod::CsaS16 if packing > millimetres(6.4) => {
            return Err(Error::Mismatch(
                "CSA S16 wants fillers over 6.4 mm extended beyond the joint and fastened there; \
                 it gives no reduction"
                    .to_string(),
            ));
        }
        _ => 1.0,
    })
}

/// A method's reductions that were recalled, if any of them took something off.
pub(super) fn recalled(method: ShearMethod, applied: &AppliedReductions) -> Cautions {
    let AppliedReductions {
        long_joint,
        long_grip,
        packing,
        ..
    } = *applied;
    let (name, rests_on_memory) = match method {
        ShearMethod::Aisc360 { .. } => ("AISC 360 J5.2, fillers", packing < 1.0),
        ShearMethod::En1993 => ("EN 1993-1-8 3.8, long joints", long_joint < 1.0),
        ShearMethod::Bs5950 => (
            "BS 5950-1 6.3.2, long joints and large grips",
            long_joint < 1.0 || long_grip < 1.0,
        ),
        ShearMethod::Is800 => ("IS 800:2007 10.3.3, reductions", applied.product() < 1.0),
        ShearMethod::As4100 => ("AS 4100 9.3.2, reductions", applied.product() < 1.0),
        ShearMethod::CsaS16 => ("CSA S16 13.12.1.2, long joints", long_joint < 1.0),
        _ => ("", false),
    };
    let caution = rests_on_memory.then_some(Caution::MethodFromMemory { method: name });
    Cautions::default().with(caution)
}
