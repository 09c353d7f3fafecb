//! The equations of EN 1995-1-1, 8.2.

use super::result::no_mode;
use super::{MemberMaterial, TimberConnection, TimberMember, TimberMethod, Wood};
use super::{TimberResistance, YieldMode};
use crate::error::{Allowed, Error, out_of_range, positive, sane_stress};
use crate::math::{cos, powf, sin, sqrt};
use crate::strength::check::Resistance;
use crate::tables::timber::TimberKind;
use crate::units::{Force, Length, SAME_LENGTH, Stress, from_base};

/// What the equations are written in; SI base units. For steel to timber, 1 is the timber.
pub(super) struct Terms {
    d: f64,
    t1: f64,
    t2: f64,
    fh1: f64,
    fh2: f64,
    my: f64,
    b: f64,
}

/// One equation for a shear plane, without the pull of the bolt.
pub(super) struct Equation {
    pub(super) name: &'static str,
    /// For the working.
    pub(super) formula: &'static str,
    /// Whether the pull of the bolt adds to it.
    pub(super) rope: bool,
    value: fn(&Terms) -> f64,
}

const fn equation(
    name: &'static str,
    formula: &'static str,
    rope: bool,
    value: fn(&Terms) -> f64,
) -> Equation {
    Equation {
        name,
        formula,
        rope,
        value,
    }
}

fn side_crushed(t: &Terms) -> f64 {
    t.fh1 * t.t1 * t.d
}

fn hinge_in_main(t: &Terms) -> f64 {
    let inner =
        2.0 * t.b * (1.0 + t.b) + 4.0 * t.b * (2.0 + t.b) * t.my / (t.fh1 * t.d * t.t1 * t.t1);
    1.05 * t.fh1 * t.t1 * t.d / (2.0 + t.b) * (sqrt(inner) - t.b)
}

fn two_hinges(t: &Terms) -> f64 {
    1.15 * sqrt(2.0 * t.b / (1.0 + t.b)) * sqrt(2.0 * t.my * t.fh1 * t.d)
}

fn thin_two_hinges(t: &Terms) -> f64 {
    1.15 * sqrt(2.0 * t.my * t.fh1 * t.d)
}

fn hinge_at_plate(t: &Terms) -> f64 {
    t.fh1 * t.t1 * t.d * (sqrt(2.0 + 4.0 * t.my / (t.fh1 * t.d * t.t1 * t.t1)) - 1.0)
}

fn thick_two_hinges(t: &Terms) -> f64 {
    2.3 * sqrt(t.my * t.fh1 * t.d)
}

fn half_crushed(t: &Terms) -> f64 {
    0.5 * t.fh1 * t.t1 * t.d
}

const SIDE_CRUSHED: &str = "fh1 * t1 * d";
const HINGE_IN_MAIN: &str = "1.05 * fh1 * t1 * d / (2 + b) * (sqrt(2 * b * (1 + b) + 4 * b * (2 + b) * My / (fh1 * d * t1 ^ 2)) - b)";
const TWO_HINGES: &str = "1.15 * sqrt(2 * b / (1 + b)) * sqrt(2 * My * fh1 * d)";
const THIN_TWO_HINGES: &str = "1.15 * sqrt(2 * My * fh1 * d)";
const HINGE_AT_PLATE: &str = "fh1 * t1 * d * (sqrt(2 + 4 * My / (fh1 * d * t1 ^ 2)) - 1)";
const THICK_TWO_HINGES: &str = "2.3 * sqrt(My * fh1 * d)";
const HALF_CRUSHED: &str = "0.5 * fh1 * t1 * d";

/// Timber to timber, single shear: Eq. 8.6.
static TIMBER_SINGLE: [Equation; 6] = [
    equation("a", SIDE_CRUSHED, false, side_crushed),
    equation("b", "fh2 * t2 * d", false, |t| t.fh2 * t.t2 * t.d),
    equation(
        "c",
        "fh1 * t1 * d / (1 + b) * (sqrt(b + 2 * b ^ 2 * (1 + t2 / t1 + (t2 / t1) ^ 2) + b ^ 3 * (t2 / t1) ^ 2) - b * (1 + t2 / t1))",
        true,
        |t| {
            let (b, r) = (t.b, t.t2 / t.t1);
            let inner = b + 2.0 * b * b * (1.0 + r + r * r) + b * b * b * r * r;
            t.fh1 * t.t1 * t.d / (1.0 + b) * (sqrt(inner) - b * (1.0 + r))
        },
    ),
    equation("d", HINGE_IN_MAIN, true, hinge_in_main),
    equation(
        "e",
        "1.05 * fh1 * t2 * d / (1 + 2 * b) * (sqrt(2 * b ^ 2 * (1 + b) + 4 * b * (1 + 2 * b) * My / (fh1 * d * t2 ^ 2)) - b)",
        true,
        |t| {
            let b = t.b;
            let inner = 2.0 * b * b * (1.0 + b)
                + 4.0 * b * (1.0 + 2.0 * b) * t.my / (t.fh1 * t.d * t.t2 * t.t2);
            1.05 * t.fh1 * t.t2 * t.d / (1.0 + 2.0 * b) * (sqrt(inner) - b)
        },
    ),
    equation("f", TWO_HINGES, true, two_hinges),
];

/// Timber to timber, double shear: Eq. 8.7.
static TIMBER_DOUBLE: [Equation; 4] = [
    equation("g", SIDE_CRUSHED, false, side_crushed),
    equation("h", "0.5 * fh2 * t2 * d", false, |t| {
        0.5 * t.fh2 * t.t2 * t.d
    }),
    equation("j", HINGE_IN_MAIN, true, hinge_in_main),
    equation("k", TWO_HINGES, true, two_hinges),
];

/// One thin plate: Eq. 8.9.
static THIN_SINGLE: [Equation; 2] = [
    equation("a", "0.4 * fh1 * t1 * d", false, |t| {
        0.4 * t.fh1 * t.t1 * t.d
    }),
    equation("b", THIN_TWO_HINGES, true, thin_two_hinges),
];

/// One thick plate: Eq. 8.10.
static THICK_SINGLE: [Equation; 3] = [
    equation("c", HINGE_AT_PLATE, true, hinge_at_plate),
    equation("d", THICK_TWO_HINGES, true, thick_two_hinges),
    equation("e", SIDE_CRUSHED, false, side_crushed),
];

/// A plate of any thickness between two timbers: Eq. 8.11.
static PLATE_INSIDE: [Equation; 3] = [
    equation("f", SIDE_CRUSHED, false, side_crushed),
    equation("g", HINGE_AT_PLATE, true, hinge_at_plate),
    equation("h", THICK_TWO_HINGES, true, thick_two_hinges),
];

/// Thin plates outside: Eq. 8.12.
static THIN_OUTSIDE: [Equation; 2] = [
    equation("j", HALF_CRUSHED, false, half_crushed),
    equation("k", THIN_TWO_HINGES, true, thin_two_hinges),
];

/// Thick plates outside: Eq. 8.13.
static THICK_OUTSIDE: [Equation; 2] = [
    equation("l", HALF_CRUSHED, false, half_crushed),
    equation("m", THICK_TWO_HINGES, true, thick_two_hinges),
];

/// The equations that apply: those of timber or of thin plates, those of thick plates, and how far from
/// thin (0) to thick (1) the plates are.
pub(super) struct Set {
    pub(super) first: &'static [Equation],
    pub(super) thick: &'static [Equation],
    pub(super) weight: f64,
    /// Whether a plate stands for one member: then the other one is number 1 of the equations.
    pub(super) plate: bool,
}

impl Set {
    /// With `side` as side member, or as both.
    pub(super) fn of(joint: &TimberConnection, side: &TimberMember) -> Self {
        let whole = |first, plate| Self {
            first,
            thick: &[],
            weight: 0.0,
            plate,
        };
        let double = joint.far_side.is_some();
        let (plate, hole) = match (&side.material, &joint.main.material) {
            (MemberMaterial::Wood(_), MemberMaterial::Wood(_)) if double => {
                return whole(&TIMBER_DOUBLE, false);
            }
            (MemberMaterial::Wood(_), MemberMaterial::Wood(_)) => {
                return whole(&TIMBER_SINGLE, false);
            }
            (_, MemberMaterial::Steel { .. }) if double => {
                return whole(&PLATE_INSIDE, true);
            }
            (MemberMaterial::Steel { hole, .. }, _) => (side.thickness, *hole),
            (_, MemberMaterial::Steel { hole, .. }) => (joint.main.thickness, *hole),
        };
        let (thin, thick): (&[Equation], &[Equation]) = if double {
            (&THIN_OUTSIDE, &THICK_OUTSIDE)
        } else {
            (&THIN_SINGLE, &THICK_SINGLE)
        };
        let d = joint.diameter.value;
        // 22 mm over 20 mm is the limit itself, whatever the difference of the two is in binary.
        let loose = hole.value - d >= 0.1 * d - SAME_LENGTH.value;
        let weight = if loose {
            0.0
        } else {
            (2.0 * plate.value / d - 1.0).clamp(0.0, 1.0)
        };
        Self {
            first: thin,
            thick,
            weight,
            plate: true,
        }
    }
}

/// Embedment strength along the grain and k90.
#[inline]
pub(super) fn along_and_k90(wood: &Wood, diameter: Length) -> Result<(f64, f64), Error> {
    // Sawn softwood to heavy hardwood.
    const DENSITY: (f64, f64) = (250.0, 1000.0);
    let density = wood.characteristic_density.ok_or_else(|| Error::NoValue {
        quantity: "characteristic density",
        subject: "the timber".into(),
        reason: "EN 1995-1-1 starts from it, and NDS species have none",
    })?;
    let name = "characteristic density in kg/m3";
    positive(name, density.value)?;
    if density.value < DENSITY.0 || density.value > DENSITY.1 {
        let allowed = Allowed::FromTo(DENSITY.0.into(), DENSITY.1.into());
        return Err(out_of_range(name, density.value, allowed));
    }
    let mm = diameter.value * 1e3;
    let base = match wood.kind {
        TimberKind::Softwood => 1.35,
        TimberKind::Hardwood => 0.90,
    };
    Ok((
        0.082e6 * (1.0 - 0.01 * mm) * density.value,
        base + 0.015 * mm,
    ))
}

/// Embedment strength at the angle of the grain, in pascals.
#[inline]
pub(super) fn embedment(wood: &Wood, diameter: Length) -> Result<f64, Error> {
    wood.check_angle()?;
    let (along, k90) = along_and_k90(wood, diameter)?;
    let (sine, cosine) = (sin(wood.grain_angle.value), cos(wood.grain_angle.value));
    Ok(along / (k90 * sine * sine + cosine * cosine))
}

/// What the pull of the bolt adds to a mode: a quarter of it, at most a quarter of the mode.
fn rope(axial: f64, johansen: f64) -> f64 {
    0.25 * axial.min(johansen)
}

/// The lesser of the resistances with the one and with the other side member on both sides.
#[inline]
pub(super) fn resistance(
    joint: &TimberConnection,
    tensile: Stress,
    axial: Force,
    factor: f64,
    method: TimberMethod,
) -> Result<TimberResistance, Error> {
    let of = |side| resistance_of(joint, side, tensile, axial, factor, method);
    let found = of(joint.side)?;
    match joint.far_side {
        Some(far) if far != joint.side => {
            let other = of(far)?;
            Ok(if other.load < found.load {
                other
            } else {
                found
            })
        }
        _ => Ok(found),
    }
}

fn resistance_of(
    joint: &TimberConnection,
    side: TimberMember,
    tensile: Stress,
    axial: Force,
    factor: f64,
    method: TimberMethod,
) -> Result<TimberResistance, Error> {
    sane_stress("tensile strength of the bolt", tensile)?;
    if joint.gap.value > 0.0 {
        return Err(Error::NoValue {
            quantity: "load of a yield mode",
            subject: "members with a gap between them".into(),
            reason: "the equations of EN 1995-1-1 have no gap",
        });
    }
    let diameter = joint.diameter;
    let member_bearing = |material: &MemberMaterial| match material {
        MemberMaterial::Wood(wood) => embedment(wood, diameter),
        // Not asked for: the plate stands in the equations.
        MemberMaterial::Steel {
            tensile_strength, ..
        } => Ok(tensile_strength.value),
    };
    let main = member_bearing(&joint.main.material)?;
    let side_bearing = member_bearing(&side.material)?;
    let d = diameter.value;
    let my = 0.3e-3 * (tensile.value * 1e-6) * powf(d * 1e3, 2.6);
    let set = Set::of(joint, &side);
    let (t1, t2) = (side.thickness.value, joint.main.thickness.value);
    let terms = match side.material {
        MemberMaterial::Wood(_) => Terms {
            d,
            t1,
            t2,
            fh1: side_bearing,
            fh2: main,
            my,
            b: main / side_bearing,
        },
        MemberMaterial::Steel { .. } => Terms {
            d,
            t1: t2,
            t2: t1,
            fh1: main,
            fh2: side_bearing,
            my,
            b: 1.0,
        },
    };
    let mut modes = [None; 6];
    let mut governing: Option<YieldMode> = None;
    let mut slots = modes.iter_mut();
    let mut least = |equations: &[Equation]| -> Result<f64, Error> {
        let mut least = f64::INFINITY;
        for (equation, slot) in equations.iter().zip(&mut slots) {
            let johansen = (equation.value)(&terms);
            let pull = if equation.rope {
                rope(axial.value, johansen)
            } else {
                0.0
            };
            let value = positive("load of a yield mode", from_base(johansen + pull))?;
            let mode = YieldMode {
                name: equation.name,
                johansen: from_base(johansen),
                value,
            };
            if mode.governs(governing.as_ref()) {
                governing = Some(mode);
            }
            *slot = Some(mode);
            least = least.min(value.value);
        }
        Ok(least)
    };
    let per_plane = if set.weight <= 0.0 {
        least(set.first)?
    } else if set.weight >= 1.0 {
        least(set.thick)?
    } else {
        let (thin, thick) = (least(set.first)?, least(set.thick)?);
        thin + set.weight * (thick - thin)
    };
    let governing = governing.ok_or_else(no_mode)?;
    let load: Force = from_base(f64::from(joint.planes()) * per_plane);
    Ok(TimberResistance {
        method,
        connection: *joint,
        side,
        bolt_strength: tensile,
        main_bearing: from_base(main),
        side_bearing: from_base(side_bearing),
        yield_moment: from_base(my),
        modes,
        governing,
        load,
        resistance: Resistance::from_levels(Some(load), Some(factor * load), None)?,
        geometry: 1.0,
        group: 1.0,
        cautions: joint.cautions(),
    })
}
