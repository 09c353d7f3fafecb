//! What codes take off the shear capacity for long joints, long grips, packing and wide holes.

use super::facts::{ConnectionFacts, JointLength};
use super::stress::is_a307;
use super::{AiscEdition, ShearMethod};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::material::{BoltGrade, PropertyClass};
use crate::source::Method;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Length, inches, millimetres};

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

/// A factor and its formula: in d, L, G and t, with `mm` and `in` for one of them. Without formula the code
/// prints the number.
#[derive(Clone, Copy, Debug)]
pub(in crate::strength) struct Factor {
    pub(in crate::strength) value: f64,
    formula: &'static str,
}

impl Factor {
    const ONE: Self = Self::printed(1.0);

    const fn printed(value: f64) -> Self {
        Self { value, formula: "" }
    }

    const fn by(formula: &'static str, value: f64) -> Self {
        Self { value, formula }
    }

    /// The step to it, none if it takes nothing off.
    pub(in crate::strength) fn step(
        self,
        derivation: Derivation,
        what: &'static str,
        symbol: &'static str,
        source: Option<&'static Method>,
        terms: &[(&'static str, Length)],
    ) -> Derivation {
        if self.value >= 1.0 {
            return derivation;
        }
        let mut step = Step::new(what, symbol, self.formula, self.value);
        for &(symbol, length) in terms {
            let mut words = self.formula.split(|c: char| !c.is_ascii_alphabetic());
            if words.any(|word| word == symbol) {
                step = step.with(symbol, length);
            }
        }
        if let Some(source) = source {
            step = step.source(source);
        }
        derivation.step(step)
    }
}

const D_5: f64 = 5.0;
/// EN 1090-2, Table 11: clearance of normal holes for M12 and M14.
const SMALL_CLEARANCE: Length = millimetres(1.0);
/// So that a sum of lengths stands on the near side of its limit.
const TOLERANCE: Length = millimetres(1e-6);

/// The factors of a method for one bolt.
#[derive(Clone, Copy, Debug)]
pub(super) struct Factors {
    long_joint: Factor,
    long_grip: Factor,
    packing: Factor,
    clearance: Factor,
    /// The hole is wider than EN 1993-1-8 wants it for that size.
    pub(super) wide_hole: bool,
}

impl Factors {
    pub(super) const fn applied(&self) -> AppliedReductions {
        AppliedReductions {
            long_joint: self.long_joint.value,
            long_grip: self.long_grip.value,
            packing: self.packing.value,
            clearance: self.clearance.value,
        }
    }
}

impl ConnectionFacts {
    /// The factors of a method.
    pub(super) fn factors(
        &self,
        method: ShearMethod,
        thread: &Thread,
        grade: BoltGrade,
    ) -> Result<Factors, Error> {
        let d = thread.nominal_diameter();
        let none = millimetres(0.0);
        let length = match self.joint_length {
            JointLength::Known(length) => sane_length("length of the joint", length)?,
            JointLength::Unknown | JointLength::SingleBolt | JointLength::LoadedAlong => none,
        };
        let grip = self
            .grip
            .map_or(Ok(none), |grip| sane_length("grip", grip))?;
        let packing = not_negative("thickness of packing", self.packing.unwrap_or(none))?;
        if packing > none {
            sane_length("thickness of packing", packing)?;
        }
        let wide_hole = self.wide_hole(method, thread)?;
        Ok(Factors {
            long_joint: long_joint(method, length, d)?,
            long_grip: long_grip(method, grade, grip, length, d)?,
            packing: packed(method, packing, d)?,
            clearance: if wide_hole && !is_soft(grade) {
                Factor::printed(0.85)
            } else {
                Factor::ONE
            },
            wide_hole,
        })
    }

    /// Whether the hole is one of EN 1993-1-8 3.6.1(5).
    fn wide_hole(&self, method: ShearMethod, thread: &Thread) -> Result<bool, Error> {
        let Some(hole) = self.hole else {
            return Ok(false);
        };
        let d = thread.nominal_diameter();
        sane_length("hole diameter", hole)?;
        if hole + TOLERANCE < d {
            return Err(out_of_range(
                "hole diameter",
                hole,
                Allowed::AtLeast(d.into()),
            ));
        }
        let en = method == ShearMethod::En1993 && small_hole_of_en(thread);
        Ok(en && hole > d + SMALL_CLEARANCE + TOLERANCE)
    }

    /// The steps to the factors that took something off, and to their product.
    pub(super) fn steps(
        &self,
        mut derivation: Derivation,
        method: ShearMethod,
        thread: &Thread,
        grade: BoltGrade,
    ) -> Derivation {
        let Ok(factors) = self.factors(method, thread, grade) else {
            return derivation;
        };
        let applied = factors.applied();
        if applied.product() >= 1.0 {
            return derivation;
        }
        let none = millimetres(0.0);
        let length = match self.joint_length {
            JointLength::Known(length) => length,
            _ => none,
        };
        let terms = [
            ("d", thread.nominal_diameter()),
            ("L", length),
            ("G", self.grip.unwrap_or(none)),
            ("t", self.packing.unwrap_or(none)),
            ("mm", millimetres(1.0)),
            ("in", inches(1.0)),
        ];
        let [joint, grip, packing] = clauses(method);
        for (factor, what, symbol, source) in [
            (
                factors.long_joint,
                "for the length of the joint",
                "kj",
                joint,
            ),
            (factors.long_grip, "for the grip", "kg", grip),
            (factors.packing, "for packing", "kp", packing),
            (
                factors.clearance,
                "for the wide hole",
                "kc",
                Some(methods::EN_1993_1_8_2005_3_6_1_5),
            ),
        ] {
            derivation = factor.step(derivation, what, symbol, source, &terms);
        }
        derivation.step(
            Step::new(
                "reductions together",
                "k",
                "kj * kg * kp * kc",
                applied.product(),
            )
            .with("kj", applied.long_joint)
            .with("kg", applied.long_grip)
            .with("kp", applied.packing)
            .with("kc", applied.clearance),
        )
    }
}

/// Where a method speaks of long joints, grips and packing.
const fn clauses(method: ShearMethod) -> [Option<&'static Method>; 3] {
    match method {
        ShearMethod::Aisc360 { .. } => [
            Some(methods::AISC_360_TABLE_J3_2_END_LOADED_JOINTS),
            Some(methods::AISC_360_TABLE_J3_2_A307_BOLTS),
            Some(methods::AISC_360_J5_FILLERS),
        ],
        ShearMethod::Bs5950 => [
            Some(methods::BS_5950_1_2000_6_3_2_4),
            Some(methods::BS_5950_1_2000_6_3_2_3),
            Some(methods::BS_5950_1_2000_6_3_2_2),
        ],
        ShearMethod::Is800 => [
            Some(methods::IS_800_2007_10_3_3_1),
            Some(methods::IS_800_2007_10_3_3_2),
            Some(methods::IS_800_2007_10_3_3_3),
        ],
        ShearMethod::As4100 => [
            Some(methods::AS_4100_TABLE_9_3_2_1),
            None,
            Some(methods::AS_4100_9_3_2_5),
        ],
        ShearMethod::CsaS16 => [Some(methods::CSA_S16_13_12_1_2), None, None],
        _ => [
            Some(methods::EN_1993_1_8_2005_3_8),
            None,
            Some(methods::EN_1993_1_8_2005_3_6_1_12),
        ],
    }
}

/// Sizes whose normal hole has 1 mm of clearance in EN 1090-2, Table 11.
pub(super) fn small_hole_of_en(thread: &Thread) -> bool {
    let d = thread.nominal_diameter();
    [millimetres(12.0), millimetres(14.0)]
        .iter()
        .any(|size| (*size - d).abs() < TOLERANCE)
}

fn is_soft(grade: BoltGrade) -> bool {
    matches!(
        grade,
        BoltGrade::Iso(PropertyClass::Class4_6 | PropertyClass::Class5_6)
    )
}

fn long_joint(method: ShearMethod, length: Length, d: Length) -> Result<Factor, Error> {
    let in_d = (length / d).value;
    Ok(match method {
        ShearMethod::Aisc360 {
            edition: AiscEdition::E2005,
        } if length > inches(50.0) => Factor::printed(0.8),
        ShearMethod::Aisc360 { edition }
            if edition != AiscEdition::E2005 && length > inches(38.0) =>
        {
            Factor::printed(0.833)
        }
        ShearMethod::En1993 if in_d > 15.0 => Factor::by(
            "max(1 - (L - 15 * d) / (200 * d), 0.75)",
            (1.0 - (in_d - 15.0) / 200.0).max(0.75),
        ),
        ShearMethod::Bs5950 if length > millimetres(500.0) => {
            let most = millimetres(5500.0);
            if length >= most {
                return Err(out_of_range(
                    "length of the joint for BS 5950-1",
                    length,
                    Allowed::Below(most.into()),
                ));
            }
            Factor::by(
                "(5500 * mm - L) / (5000 * mm)",
                ((most - length) / millimetres(5000.0)).value,
            )
        }
        ShearMethod::Is800 if in_d > 15.0 => Factor::by(
            "min(max(1.075 - L / (200 * d), 0.75), 1)",
            (1.075 - in_d / 200.0).clamp(0.75, 1.0),
        ),
        ShearMethod::As4100 if length > millimetres(300.0) => Factor::by(
            "max(1.075 - L / (4000 * mm), 0.75)",
            (1.075 - (length / millimetres(4000.0)).value).max(0.75),
        ),
        ShearMethod::CsaS16 if length >= millimetres(760.0) => Factor::printed(0.833),
        _ => Factor::ONE,
    })
}

/// 1 % less for each 1/16 in of grip over 5 d: AISC 360 Table J3.2, A307 bolts.
pub(in crate::strength) fn grip_of_a307(grip: Length, d: Length) -> Result<Factor, Error> {
    if grip <= D_5 * d {
        return Ok(Factor::ONE);
    }
    let sixteenths = ((grip - D_5 * d) / inches(1.0 / 16.0)).value;
    let factor = 1.0 - 0.01 * sixteenths;
    if factor > 0.0 {
        return Ok(Factor::by("1 - 0.01 * (G - 5 * d) / (in / 16)", factor));
    }
    let most = D_5 * d + inches(100.0 / 16.0);
    let allowed = Allowed::Below(most.into());
    Err(out_of_range("grip of an A307 bolt", grip, allowed))
}

fn long_grip(
    method: ShearMethod,
    grade: BoltGrade,
    grip: Length,
    joint: Length,
    d: Length,
) -> Result<Factor, Error> {
    let in_d = (grip / d).value;
    if in_d <= D_5 {
        return Ok(Factor::ONE);
    }
    let stiff = Factor::by("8 * d / (3 * d + G)", 8.0 / (3.0 + in_d));
    match method {
        ShearMethod::Aisc360 { .. } if is_a307(grade) => grip_of_a307(grip, d),
        ShearMethod::Bs5950 => Ok(stiff),
        ShearMethod::Is800 if in_d > 8.0 => {
            let allowed = Allowed::AtMost((8.0 * d).into());
            Err(out_of_range("grip for IS 800", grip, allowed))
        }
        // Never above the factor of the long joint.
        ShearMethod::Is800 => {
            let long = long_joint(method, joint, d)?;
            Ok(if long.value < stiff.value {
                long
            } else {
                stiff
            })
        }
        _ => Ok(Factor::ONE),
    }
}

fn packed(method: ShearMethod, packing: Length, d: Length) -> Result<Factor, Error> {
    Ok(match method {
        ShearMethod::Aisc360 { edition } if packing > inches(0.25) => {
            let factor = 1.0 - 0.4 * ((packing - inches(0.25)) / inches(1.0)).value;
            if edition != AiscEdition::E2005 {
                Factor::by("max(1 - 0.4 * (t / in - 0.25), 0.85)", factor.max(0.85))
            } else if packing <= inches(0.75) {
                Factor::by("1 - 0.4 * (t / in - 0.25)", factor)
            } else {
                let allowed = Allowed::AtMost(inches(0.75).into());
                return Err(out_of_range("fillers for AISC 360-05", packing, allowed));
            }
        }
        ShearMethod::Bs5950 if 3.0 * packing > 4.0 * d => {
            let allowed = Allowed::AtMost((4.0 / 3.0 * d).into());
            return Err(out_of_range("packing for BS 5950-1", packing, allowed));
        }
        ShearMethod::En1993 | ShearMethod::Bs5950 if 3.0 * packing > d => Factor::by(
            "9 * d / (8 * d + 3 * t)",
            (9.0 * d / (8.0 * d + 3.0 * packing)).value,
        ),
        ShearMethod::Is800 if packing > millimetres(6.0) => {
            let factor = 1.0 - 0.0125 * (packing / millimetres(1.0)).value;
            if factor <= 0.0 {
                let allowed = Allowed::Below(millimetres(80.0).into());
                return Err(out_of_range("packing for IS 800", packing, allowed));
            }
            Factor::by("1 - 0.0125 * t / mm", factor)
        }
        ShearMethod::As4100 if packing > millimetres(20.0) => {
            let allowed = Allowed::AtMost(millimetres(20.0).into());
            return Err(out_of_range("packing for AS 4100", packing, allowed));
        }
        ShearMethod::As4100 if packing > millimetres(6.0) => Factor::printed(0.85),
        // Thicker fillers are to be extended beyond the joint and fastened there.
        ShearMethod::CsaS16 if packing > millimetres(6.4) => {
            let allowed = Allowed::AtMost(millimetres(6.4).into());
            let what = "fillers for CSA S16 that are not fastened beyond the joint";
            return Err(out_of_range(what, packing, allowed));
        }
        _ => Factor::ONE,
    })
}

/// A method's reductions that were recalled, if any of them took something off.
pub(super) fn recalled(
    method: ShearMethod,
    applied: &AppliedReductions,
    wide_hole: bool,
) -> Cautions {
    let AppliedReductions {
        long_joint,
        long_grip,
        packing,
        ..
    } = *applied;
    let (name, rests_on_memory) = match method {
        ShearMethod::Aisc360 { .. } => (methods::AISC_360_J5_2_FILLERS, packing < 1.0),
        ShearMethod::En1993 => (methods::EN_1993_1_8_3_8_LONG_JOINTS, long_joint < 1.0),
        ShearMethod::Bs5950 => (
            methods::BS_5950_1_6_3_2_LONG_JOINTS_AND_LARGE_GRIPS,
            long_joint < 1.0 || long_grip < 1.0,
        ),
        ShearMethod::Is800 => (methods::IS_800_2007_10_3_3_1_LONG_JOINTS, long_joint < 1.0),
        ShearMethod::As4100 => (methods::AS_4100_9_3_2_REDUCTIONS, applied.product() < 1.0),
        ShearMethod::CsaS16 => (methods::CSA_S16_13_12_1_2_LONG_JOINTS, long_joint < 1.0),
        _ => return Cautions::default(),
    };
    let caution = rests_on_memory.then_some(name).and_then(Caution::of_method);
    let bearing = wide_hole
        .then_some(methods::EN_1993_1_8_3_6_1_5_BEARING_IN_WIDE_HOLES)
        .and_then(Caution::of_method);
    Cautions::default().with(caution).with(bearing)
}
