//! One room a publisher: area, stress, factors and reductions of a bolt as each design code has them.
//!
//! [`shear`](super::shear) and [`bolt_tension`](super::bolt_tension) ask the room of the method that was chosen, and do not
//! know its numbers. Stresses that a code prints are cells of `tables/design_stresses_*.csv`; what it states as a formula
//! stands here, beside the row of `tables/methods.csv` that cites it. What [`ply`](super::ply) asks of BS 5950-1, IS 800, AS
//! 4100 and CSA S16 stands in their rooms too. A new edition of a code is rows and an arm in its room;
//! a new code is rows, a room, and an arm in each of the two.

pub(crate) mod aisc_360;
pub(crate) mod as_4100;
pub(crate) mod bs_449;
pub(crate) mod bs_5950;
pub(crate) mod csa_s16;
pub(crate) mod en_1993;
pub(crate) mod is_800;
pub(crate) mod machine_design;
pub(crate) mod mil_hdbk_5;
pub(crate) mod nasa_std_5020;
#[cfg(test)]
mod tests;

use alloc::string::ToString;

use super::check::{Level, Resistance};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range};
use crate::material::{BoltGrade, PropertyClass};
use crate::source::Method;
use crate::tables::strengths::{
    DesignStress, StressBolts, StressCode, StressPlane, StressQuantity,
};
use crate::units::{Force, Length};

/// How a code turns the load of its stress into resistances.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Factors {
    /// What stress times area is.
    pub(super) of: Level,
    /// Resistance factor on it for the design resistance.
    pub(super) resistance: Option<f64>,
    /// What it is divided by for the allowable load.
    pub(super) safety: Option<f64>,
}

impl Factors {
    /// Of a nominal load.
    pub(super) const fn nominal(resistance: Option<f64>, safety: Option<f64>) -> Self {
        Self {
            of: Level::Nominal,
            resistance,
            safety,
        }
    }

    /// The stress has its factor in it.
    pub(super) const fn within(of: Level) -> Self {
        Self {
            of,
            resistance: None,
            safety: None,
        }
    }

    /// The resistances of a load.
    pub(super) fn resistance(self, load: Force) -> Resistance {
        Resistance {
            nominal: (self.of == Level::Nominal).then_some(load),
            design: match self.of {
                Level::Design => Some(load),
                _ => self.resistance.map(|factor| factor * load),
            },
            allowable: match self.of {
                Level::Allowable => Some(load),
                _ => self.safety.map(|factor| load / factor),
            },
        }
    }
}

/// A factor that takes something off, and its formula: in d, L, G and t, with `mm` and `in` for one of them. Without
/// formula the code prints the number.
#[derive(Clone, Copy, Debug)]
pub(super) struct Factor {
    pub(super) value: f64,
    pub(super) formula: &'static str,
}

impl Factor {
    pub(super) const ONE: Self = Self::printed(1.0);

    pub(super) const fn printed(value: f64) -> Self {
        Self { value, formula: "" }
    }

    pub(super) const fn by(formula: &'static str, value: f64) -> Self {
        Self { value, formula }
    }
}

/// What the faces of a block that could tear out of a ply bear, and the formulas: in Fy, Fu, k and the areas Agv, Anv, Agt, Ant.
pub(in crate::strength) struct BlockFaces {
    pub(in crate::strength) shear: Force,
    pub(in crate::strength) shear_formula: &'static str,
    pub(in crate::strength) tension: Force,
    pub(in crate::strength) tension_formula: &'static str,
    /// k of the tension face.
    pub(in crate::strength) factor: f64,
    pub(in crate::strength) factors: Factors,
}

/// The lesser of two quantities.
fn lesser<T: PartialOrd>(one: T, other: T) -> T {
    if one < other { one } else { other }
}

/// 9 d / (8 d + 3 t) for packing over d / 3, as EN 1993-1-8 and BS 5950-1 have it.
fn packed_over_a_third(packing: Length, d: Length) -> Factor {
    if 3.0 * packing > d {
        Factor::by(
            "9 * d / (8 * d + 3 * t)",
            (9.0 * d / (8.0 * d + 3.0 * packing)).value,
        )
    } else {
        Factor::ONE
    }
}

/// 8 d / (3 d + G) for a grip over 5 d, as BS 5950-1 and IS 800 have it.
fn gripped_over_five(grip: Length, d: Length) -> Factor {
    let in_d = (grip / d).value;
    if in_d > 5.0 {
        Factor::by("8 * d / (3 * d + G)", 8.0 / (3.0 + in_d))
    } else {
        Factor::ONE
    }
}

/// The bolts of a property class, as codes for metric bolts name them.
fn class(grade: BoltGrade) -> Option<StressBolts> {
    let BoltGrade::Iso(class) = grade else {
        return None;
    };
    Some(match class {
        PropertyClass::Class4_6 => StressBolts::Class4_6,
        PropertyClass::Class4_8 => StressBolts::Class4_8,
        PropertyClass::Class5_6 => StressBolts::Class5_6,
        PropertyClass::Class5_8 => StressBolts::Class5_8,
        PropertyClass::Class6_8 => StressBolts::Class6_8,
        PropertyClass::Class8_8 => StressBolts::Class8_8,
        PropertyClass::Class10_9 => StressBolts::Class10_9,
        _ => return None,
    })
}

/// The row of a code for one property class.
fn row_for_class(
    code: StressCode,
    grade: BoltGrade,
    quantity: StressQuantity,
    plane: Option<StressPlane>,
) -> Option<&'static DesignStress> {
    DesignStress::get(code, class(grade)?, quantity, plane)
}

/// The caution of a bolt that a method was not written for, and that of a method that was recalled.
pub(super) fn cautions_of(
    method: &'static Method,
    grade: BoltGrade,
    written_for: &'static str,
    covers: fn(BoltGrade) -> bool,
) -> Cautions {
    // Of stated strengths the caller has been told already.
    let by_analogy = grade != BoltGrade::Stated && !covers(grade);
    let outside = by_analogy.then_some(Caution::MaterialOutsideMethod {
        method,
        written_for,
    });
    Cautions::default()
        .with(outside)
        .with(Caution::of_method(method))
}

/// Of codes that are written for metric bolts.
pub(super) fn cautions_of_metric(method: &'static Method, grade: BoltGrade) -> Cautions {
    cautions_of(method, grade, "ISO metric bolts", |grade| {
        matches!(grade, BoltGrade::Iso(_))
    })
}

/// The plane of a stress.
const fn plane(in_shank: bool) -> StressPlane {
    if in_shank {
        StressPlane::Shank
    } else {
        StressPlane::Thread
    }
}

/// The one way in which a method refuses a grade that it does not list.
#[cold]
pub(super) fn not_listed(quantity: &'static str, grade: BoltGrade, reason: &'static str) -> Error {
    Error::NoValue {
        quantity,
        subject: grade.to_string(),
        reason,
    }
}

/// Refuses a grade that a code does not cover.
pub(super) fn covered(
    is_covered: bool,
    quantity: &'static str,
    grade: BoltGrade,
    reason: &'static str,
) -> Result<(), Error> {
    if is_covered {
        Ok(())
    } else {
        Err(not_listed(quantity, grade, reason))
    }
}

/// Of ultimate strengths held against limit loads: nominal over the ultimate factor and the fitting factor.
pub(super) fn at_limit_load(ultimate_factor: f64, fitting_factor: f64) -> Result<Factors, Error> {
    let factor = sane_factor("ultimate factor", ultimate_factor)?
        * sane_factor("fitting factor", fitting_factor)?;
    Ok(Factors::nominal(None, Some(factor)))
}

/// A factor of the caller's.
#[inline]
pub(super) fn sane_factor(name: &'static str, factor: f64) -> Result<f64, Error> {
    if (1.0..=100.0).contains(&factor) {
        Ok(factor)
    } else {
        Err(out_of_range(
            name,
            factor,
            Allowed::FromTo(1.0.into(), 100.0.into()),
        ))
    }
}
