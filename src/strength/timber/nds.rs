//! The yield limit equations of the National Design Specification.

use super::result::no_mode;
use super::{MemberMaterial, TimberConnection, TimberMember, TimberMethod, Wood};
use super::{TimberResistance, YieldMode};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::math::{cos, powf, sin, sqrt};
use crate::strength::check::Resistance;
use crate::units::{INCH, Length, PSI, Stress, from_base};

/// What the equations are written in; SI base units.
pub(super) struct Terms {
    d: f64,
    lm: f64,
    ls: f64,
    fem: f64,
    fes: f64,
    fyb: f64,
    g: f64,
    re: f64,
    pub(super) k1: f64,
    pub(super) k2: f64,
    pub(super) k3: f64,
}

impl Terms {
    /// `side` is the side member that counts.
    pub(super) fn new(
        joint: &TimberConnection,
        side: &TimberMember,
        [fem, fes]: [Stress; 2],
        fyb: Stress,
    ) -> Self {
        let (d, g) = (joint.diameter.value, joint.gap.value);
        let (lm, ls) = (joint.main.thickness.value, side.thickness.value);
        let (fem, fes, fyb) = (fem.value, fes.value, fyb.value);
        let (re, rt) = (fem / fes, lm / ls);
        let root = sqrt(re + 2.0 * re * re * (1.0 + rt + rt * rt) + rt * rt * re * re * re);
        let k1 = (root - re * (1.0 + rt)) / (1.0 + re);
        let hinge = |share: f64, l: f64| 2.0 * fyb * share * d * d / (3.0 * fem * l * l);
        let k2 = sqrt(2.0 * (1.0 + re) + hinge(1.0 + 2.0 * re, lm)) - 1.0;
        let k3 = sqrt(2.0 * (1.0 + re) / re + hinge(2.0 + re, ls)) - 1.0;
        Self {
            d,
            lm,
            ls,
            fem,
            fes,
            fyb,
            g,
            re,
            k1,
            k2,
            k3,
        }
    }
}

/// A general dowel equation, for members with a gap g between them: A Z^2 + B Z = C, with qm = Fem D,
/// qs = Fes D and the moment M = Fyb D^3 / 6.
pub(super) struct General {
    /// A, B and C, for the working.
    pub(super) formulas: [&'static str; 3],
    coefficients: fn(&Terms) -> [f64; 3],
}

impl General {
    #[inline]
    fn load(&self, terms: &Terms) -> f64 {
        let [a, b, c] = (self.coefficients)(terms);
        // The root of the quadratic in the form that loses no digits.
        2.0 * c / (b + sqrt(b * b + 4.0 * a * c))
    }
}

impl Terms {
    fn qm(&self) -> f64 {
        self.fem * self.d
    }

    fn qs(&self) -> f64 {
        self.fes * self.d
    }

    fn moment(&self) -> f64 {
        self.fyb * self.d * self.d * self.d / 6.0
    }
}

static GENERAL_II: General = General {
    formulas: [
        "1 / (4 * qs) + 1 / (4 * qm)",
        "ls / 2 + g + lm / 2",
        "qs * ls ^ 2 / 4 + qm * lm ^ 2 / 4",
    ],
    coefficients: |t| {
        let (qm, qs) = (t.qm(), t.qs());
        [
            0.25 / qs + 0.25 / qm,
            0.5 * (t.ls + t.lm) + t.g,
            0.25 * (qs * t.ls * t.ls + qm * t.lm * t.lm),
        ]
    },
};

static GENERAL_IIIM: General = General {
    formulas: [
        "1 / (2 * qs) + 1 / (4 * qm)",
        "g + lm / 2",
        "M + qm * lm ^ 2 / 4",
    ],
    coefficients: |t| {
        let (qm, qs) = (t.qm(), t.qs());
        [
            0.5 / qs + 0.25 / qm,
            t.g + 0.5 * t.lm,
            t.moment() + 0.25 * qm * t.lm * t.lm,
        ]
    },
};

static GENERAL_IIIS: General = General {
    formulas: [
        "1 / (4 * qs) + 1 / (2 * qm)",
        "ls / 2 + g",
        "qs * ls ^ 2 / 4 + M",
    ],
    coefficients: |t| {
        let (qm, qs) = (t.qm(), t.qs());
        [
            0.25 / qs + 0.5 / qm,
            0.5 * t.ls + t.g,
            0.25 * qs * t.ls * t.ls + t.moment(),
        ]
    },
};

static GENERAL_IV: General = General {
    formulas: ["1 / (2 * qs) + 1 / (2 * qm)", "g", "2 * M"],
    coefficients: |t| [0.5 / t.qs() + 0.5 / t.qm(), t.g, 2.0 * t.moment()],
};

/// One yield limit equation, without its reduction term.
pub(super) struct Equation {
    pub(super) name: &'static str,
    /// For the working.
    pub(super) formula: &'static str,
    /// Reduction term over `K_theta`.
    pub(super) reduction: f64,
    /// Shear planes that count in double shear; none if the mode does not exist there.
    pub(super) double: Option<f64>,
    value: fn(&Terms) -> f64,
    /// What takes its place where there is a gap; none if a gap changes nothing.
    pub(super) general: Option<&'static General>,
}

impl Equation {
    /// The load of one shear plane.
    #[inline]
    fn load(&self, terms: &Terms) -> f64 {
        match self.general {
            Some(general) if terms.g > 0.0 => general.load(terms),
            _ => (self.value)(terms),
        }
    }
}

/// NDS 2018 Tables 12.3.1A and 12.3.1B.
pub(super) static EQUATIONS: [Equation; 6] = [
    Equation {
        name: "Im",
        formula: "D * lm * Fem",
        reduction: 4.0,
        double: Some(1.0),
        value: |t| t.d * t.lm * t.fem,
        general: None,
    },
    Equation {
        name: "Is",
        formula: "D * ls * Fes",
        reduction: 4.0,
        double: Some(2.0),
        value: |t| t.d * t.ls * t.fes,
        general: None,
    },
    Equation {
        name: "II",
        formula: "k1 * D * ls * Fes",
        reduction: 3.6,
        double: None,
        value: |t| t.k1 * t.d * t.ls * t.fes,
        general: Some(&GENERAL_II),
    },
    Equation {
        name: "IIIm",
        formula: "k2 * D * lm * Fem / (1 + 2 * Re)",
        reduction: 3.2,
        double: None,
        value: |t| t.k2 * t.d * t.lm * t.fem / (1.0 + 2.0 * t.re),
        general: Some(&GENERAL_IIIM),
    },
    Equation {
        name: "IIIs",
        formula: "k3 * D * ls * Fem / (2 + Re)",
        reduction: 3.2,
        double: Some(2.0),
        value: |t| t.k3 * t.d * t.ls * t.fem / (2.0 + t.re),
        general: Some(&GENERAL_IIIS),
    },
    Equation {
        name: "IV",
        formula: "D ^ 2 * sqrt(2 * Fem * Fyb / (3 * (1 + Re)))",
        reduction: 3.2,
        double: Some(2.0),
        value: |t| t.d * t.d * sqrt(2.0 * t.fem * t.fyb / (3.0 * (1.0 + t.re))),
        general: Some(&GENERAL_IV),
    },
];

/// Dowel bearing strength along and across the grain, in pascals.
#[inline]
pub(super) fn along_and_across(wood: &Wood, diameter: Length) -> Result<(f64, f64), Error> {
    // The range of the specification's own table of species.
    const GRAVITY: (f64, f64) = (0.31, 0.73);
    let g = wood.specific_gravity.ok_or_else(|| Error::NoValue {
        quantity: "specific gravity",
        subject: "the timber".into(),
        reason: "NDS starts from it, and European classes have none",
    })?;
    positive("specific gravity", g)?;
    if g < GRAVITY.0 || g > GRAVITY.1 {
        let allowed = Allowed::FromTo(GRAVITY.0.into(), GRAVITY.1.into());
        return Err(out_of_range("specific gravity", g, allowed));
    }
    let across = 6100.0 * powf(g, 1.45) / sqrt(diameter.value / INCH) * PSI;
    Ok((11200.0 * g * PSI, across))
}

/// Dowel bearing strength at the angle of the grain, in pascals.
#[inline]
pub(super) fn bearing(wood: &Wood, diameter: Length) -> Result<f64, Error> {
    wood.check_angle()?;
    let (along, across) = along_and_across(wood, diameter)?;
    let (sine, cosine) = (sin(wood.grain_angle.value), cos(wood.grain_angle.value));
    Ok(along * across / (along * sine * sine + across * cosine * cosine))
}

/// Bearing strength of steel over its tensile strength: by thickness, hot or cold formed.
pub(super) fn steel_factor(thickness: Length) -> f64 {
    if thickness.value < 0.25 * INCH - 1e-10 {
        1.375
    } else {
        1.5
    }
}

#[inline]
fn member_bearing(member: &TimberMember, diameter: Length) -> Result<f64, Error> {
    match &member.material {
        MemberMaterial::Wood(wood) => bearing(wood, diameter),
        MemberMaterial::Steel {
            tensile_strength, ..
        } => Ok(steel_factor(member.thickness) * tensile_strength.value),
    }
}

/// The greatest angle to the grain of any member, in radians.
pub(super) fn greatest_angle(joint: &TimberConnection) -> f64 {
    let angles = joint.members().map(|member| match member.material {
        MemberMaterial::Wood(wood) => wood.grain_angle.value,
        MemberMaterial::Steel { .. } => 0.0,
    });
    angles.fold(0.0, f64::max)
}

/// The side member that counts for both and its bearing strength: as thin as the thinner, as weak as the weaker.
#[inline]
fn least_side(joint: &TimberConnection) -> Result<(TimberMember, f64), Error> {
    let (mut side, mut bears) = (joint.side, member_bearing(&joint.side, joint.diameter)?);
    if let Some(far) = &joint.far_side {
        let far_bears = member_bearing(far, joint.diameter)?;
        if far_bears < bears {
            (side.material, bears) = (far.material, far_bears);
        }
        if far.thickness < side.thickness {
            side.thickness = far.thickness;
        }
    }
    Ok((side, bears))
}

#[inline]
pub(super) fn resistance(
    joint: &TimberConnection,
    bending_yield: Stress,
    adjustment: f64,
) -> Result<TimberResistance, Error> {
    let fem: Stress = from_base(member_bearing(&joint.main, joint.diameter)?);
    let (side, fes) = least_side(joint)?;
    let fes: Stress = from_base(fes);
    let terms = Terms::new(joint, &side, [fem, fes], bending_yield);
    let factor = 1.0 + greatest_angle(joint) / core::f64::consts::TAU;
    let mut modes = [None; 6];
    let mut governing: Option<YieldMode> = None;
    for (slot, equation) in modes.iter_mut().zip(&EQUATIONS) {
        let planes = if joint.far_side.is_some() {
            equation.double
        } else {
            Some(1.0)
        };
        if let Some(planes) = planes {
            let yields = equation.load(&terms);
            let value = planes * yields / (equation.reduction * factor);
            let mode = YieldMode {
                name: equation.name,
                johansen: from_base(yields),
                value: positive("load of a yield mode", from_base(value))?,
            };
            if mode.governs(governing.as_ref()) {
                governing = Some(mode);
            }
            *slot = Some(mode);
        }
    }
    let governing = governing.ok_or_else(no_mode)?;
    let resistance = Resistance::from_levels(None, None, Some(adjustment * governing.value))?;
    Ok(TimberResistance {
        method: TimberMethod::Nds {
            bending_yield,
            adjustment,
        },
        connection: *joint,
        side,
        bolt_strength: bending_yield,
        main_bearing: fem,
        side_bearing: fes,
        yield_moment: from_base(terms.moment()),
        modes,
        governing,
        load: governing.value,
        resistance,
        geometry: 1.0,
        group: 1.0,
        cautions: joint.cautions(),
    })
}
