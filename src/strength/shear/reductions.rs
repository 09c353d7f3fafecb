//! What codes take off the shear capacity for long joints, long grips, packing and wide holes.

use super::ShearMethod;
use super::facts::{ConnectionFacts, JointLength};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length};
use crate::material::BoltGrade;
use crate::source::Method;
use crate::strength::code::{Factor, aisc_360, as_4100, bs_5950, csa_s16, en_1993, is_800};
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

impl Factor {
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

/// So that a hole that is as wide as its bolt is not refused.
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
            clearance: if wide_hole {
                en_1993::wide_hole(grade)
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
        Ok(method == ShearMethod::En1993 && en_1993::is_wide_hole(thread, hole))
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
        ShearMethod::Aisc360 { .. } => aisc_360::REDUCTIONS,
        ShearMethod::Bs5950 => bs_5950::REDUCTIONS,
        ShearMethod::Is800 => is_800::REDUCTIONS,
        ShearMethod::As4100 => as_4100::REDUCTIONS,
        ShearMethod::CsaS16 => csa_s16::REDUCTIONS,
        _ => en_1993::REDUCTIONS,
    }
}

fn long_joint(method: ShearMethod, length: Length, d: Length) -> Result<Factor, Error> {
    Ok(match method {
        ShearMethod::Aisc360 { edition } => aisc_360::long_joint(edition, length),
        ShearMethod::En1993 => en_1993::long_joint(length, d),
        ShearMethod::Bs5950 => bs_5950::long_joint(length)?,
        ShearMethod::Is800 => is_800::long_joint(length, d),
        ShearMethod::As4100 => as_4100::long_joint(length),
        ShearMethod::CsaS16 => csa_s16::long_joint(length),
        _ => Factor::ONE,
    })
}

fn long_grip(
    method: ShearMethod,
    grade: BoltGrade,
    grip: Length,
    joint: Length,
    d: Length,
) -> Result<Factor, Error> {
    Ok(match method {
        ShearMethod::Aisc360 { .. } if aisc_360::is_a307(grade) => aisc_360::grip_of_a307(grip, d)?,
        ShearMethod::Bs5950 => bs_5950::long_grip(grip, d),
        ShearMethod::Is800 => is_800::long_grip(grip, joint, d)?,
        _ => Factor::ONE,
    })
}

fn packed(method: ShearMethod, packing: Length, d: Length) -> Result<Factor, Error> {
    Ok(match method {
        ShearMethod::Aisc360 { edition } => aisc_360::fillers(edition, packing)?,
        ShearMethod::En1993 => en_1993::packing(packing, d),
        ShearMethod::Bs5950 => bs_5950::packing(packing, d)?,
        ShearMethod::Is800 => is_800::packing(packing)?,
        ShearMethod::As4100 => as_4100::packing(packing)?,
        ShearMethod::CsaS16 => csa_s16::packing(packing)?,
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::PropertyClass;
    use crate::strength::shear::AiscEdition;
    use alloc::string::ToString;

    const NONE: AppliedReductions = AppliedReductions {
        long_joint: 1.0,
        long_grip: 1.0,
        packing: 1.0,
        clearance: 1.0,
    };

    /// What was recalled of each code's reductions, told where it took something off and only there.
    #[test]
    fn recalled_reductions_are_told_where_they_count() {
        let joint = AppliedReductions {
            long_joint: 0.9,
            ..NONE
        };
        let grip = AppliedReductions {
            long_grip: 0.9,
            ..NONE
        };
        let packing = AppliedReductions {
            packing: 0.9,
            ..NONE
        };
        let clearance = AppliedReductions {
            clearance: 0.85,
            ..NONE
        };
        let aisc = ShearMethod::Aisc360 {
            edition: AiscEdition::E2022,
        };
        for (method, told) in [
            // joint, grip, packing, clearance
            (aisc, [false; 4]),
            (ShearMethod::En1993, [true, false, false, false]),
            (ShearMethod::Bs5950, [true, true, false, false]),
            (ShearMethod::Is800, [true, false, false, false]),
            (ShearMethod::As4100, [true; 4]),
            (ShearMethod::CsaS16, [true, false, false, false]),
            (ShearMethod::Bs449, [false; 4]),
        ] {
            let count =
                |applied: &AppliedReductions, wide| recalled(method, applied, wide).iter().count();
            assert_eq!(count(&NONE, false), 0, "{method}");
            let found =
                [joint, grip, packing, clearance].map(|applied| count(&applied, false) == 1);
            assert_eq!(found, told, "{method}");
        }
        assert_eq!(recalled(ShearMethod::En1993, &NONE, true).iter().count(), 1);
        assert_eq!(
            recalled(ShearMethod::En1993, &joint, true).iter().count(),
            2
        );
    }

    fn factors(facts: &ConnectionFacts) -> Result<Factors, Error> {
        let grade = BoltGrade::Iso(PropertyClass::Class8_8);
        facts.factors(ShearMethod::En1993, &"M20".parse().unwrap(), grade)
    }

    /// Facts at their limits: packing may be none and no longer than any part, a hole as wide as its bolt but for rounding.
    #[test]
    fn facts_at_their_limits() {
        let packing = |t| ConnectionFacts {
            packing: Some(millimetres(t)),
            ..ConnectionFacts::default()
        };
        assert!(factors(&packing(0.0)).is_ok() && factors(&packing(6.0)).is_ok());
        assert!(factors(&packing(-1.0)).is_err());
        let error = factors(&packing(1.001e6)).unwrap_err().to_string();
        assert!(error.contains("thickness of packing"), "{error}");
        let d = millimetres(20.0);
        let hole = |hole| ConnectionFacts {
            hole: Some(hole),
            ..ConnectionFacts::default()
        };
        assert!(factors(&hole(d)).is_ok());
        let least = d - TOLERANCE;
        assert_eq!(least + TOLERANCE, d);
        assert!(factors(&hole(least)).is_ok());
        assert!(factors(&hole(d - 2.0 * TOLERANCE)).is_err());
    }

    /// The step to a factor has the lengths that its formula names, and no other: EN 1993-1-8 3.8, 500 mm of M20 bolts, 1 -
    /// (500 - 300) / 4000.
    #[test]
    fn steps_name_what_their_formula_names() {
        let facts = ConnectionFacts {
            joint_length: JointLength::Known(millimetres(500.0)),
            packing: Some(millimetres(10.0)),
            ..ConnectionFacts::default()
        };
        let grade = BoltGrade::Iso(PropertyClass::Class8_8);
        let thread = "M20".parse().unwrap();
        let working = facts.steps(Derivation::new(""), ShearMethod::En1993, &thread, grade);
        working.check().unwrap();
        let [joint, packing, all] = working.steps() else {
            panic!("{working:?}")
        };
        let symbols = |step: &Step| -> alloc::vec::Vec<alloc::string::String> {
            step.terms()
                .iter()
                .map(|term| alloc::string::ToString::to_string(&term.symbol))
                .collect()
        };
        assert_eq!(symbols(joint), ["d", "L"]);
        assert_eq!(symbols(packing), ["d", "t"]);
        assert_eq!(symbols(all), ["kj", "kg", "kp", "kc"]);
        let applied = factors(&facts).unwrap().applied();
        assert!((applied.long_joint - 0.95).abs() < 1e-12);
        assert!((applied.packing - 180.0 / 190.0).abs() < 1e-12);
    }
}
