//! The motion of a group at its ultimate load, in plain numbers.
//!
//! Lengths from the centroid in radii of gyration, displacements times 10/in, forces over the ultimate
//! strength of a bolt. A motion is (shift right, shift up, turn); a wrench (force right, force up,
//! moment).

use crate::math::{exp, powf, sqrt};

/// 10/in times 0.34 in.
pub(super) const FARTHEST: f64 = 3.4;
const LAMBDA: f64 = 0.55;
/// The curve starts with an infinite slope. Below this displacement (1e-12 in of a bolt) it is replaced
/// by its chord: rounding of the displacement would otherwise shake the force. It changes the force on a
/// bolt that sits on the centre of rotation by less than 1e-6 of its strength.
const CHORD: f64 = 1e-11;
/// Unbalanced load over the sum of the bolt forces.
const BALANCED: f64 = 1e-10;
const MOST_STEPS: usize = 400;

pub(super) type Vector = [f64; 3];
type Matrix = [f64; 6]; // xx, xy, yy, xt, yt, tt

/// Force of a bolt, as a share of its ultimate strength.
pub(super) fn curve(x: f64) -> f64 {
    if x > CHORD {
        powf(1.0 - exp(-x), LAMBDA)
    } else {
        x * powf(CHORD, LAMBDA - 1.0)
    }
}

pub(super) fn displacement(motion: Vector, x: f64, y: f64) -> (f64, f64) {
    (motion[0] - motion[2] * y, motion[1] + motion[2] * x)
}

/// A motion scaled so that the farthest bolt is at its limit, and what the bolts do then.
struct State {
    motion: Vector,
    wrench: Vector,
    /// Force over displacement, and slope of force by displacement.
    secant: Matrix,
    tangent: Matrix,
    /// How the displacement of the farthest bolt grows with the motion, to any scale.
    far: Vector,
    factor: f64,
    residual: f64,
}

fn dot(a: Vector, b: Vector) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

/// a + b times c
fn plus(a: Vector, b: Vector, c: f64) -> Vector {
    [a[0] + b[0] * c, a[1] + b[1] * c, a[2] + b[2] * c]
}

fn state(
    bolts: impl Iterator<Item = (f64, f64, f64)> + Clone,
    load: Vector,
    motion: Vector,
) -> Option<State> {
    let (mut most, mut far) = (0.0, [0.0; 3]);
    for (x, y, _) in bolts.clone() {
        let (dx, dy) = displacement(motion, x, y);
        let d = dx * dx + dy * dy;
        if d > most {
            most = d;
            far = [dx, dy, x * dy - y * dx];
        }
    }
    let scale = FARTHEST / sqrt(most);
    if !(scale > 0.0 && scale < f64::INFINITY) {
        return None;
    }
    let motion = motion.map(|part| part * scale);
    let (mut secant, mut tangent, mut wrench, mut sum) = ([0.0; 6], [0.0; 6], [0.0; 3], 0.0);
    for (x, y, area) in bolts {
        let (dx, dy) = displacement(motion, x, y);
        let d = sqrt(dx * dx + dy * dy);
        let force = area * curve(d);
        let (chord, slope) = if d > CHORD {
            let fall = exp(-d);
            (force / d, force * LAMBDA * fall / (1.0 - fall))
        } else {
            let chord = area * powf(CHORD, LAMBDA - 1.0);
            (chord, chord)
        };
        sum += force;
        wrench = plus(wrench, [dx, dy, x * dy - y * dx], chord);
        add(&mut secant, x, y, [chord, 0.0, chord]);
        let (nx, ny) = if d > CHORD {
            (dx / d, dy / d)
        } else {
            (1.0, 0.0)
        };
        let less = slope - chord;
        add(
            &mut tangent,
            x,
            y,
            [
                chord + less * nx * nx,
                less * nx * ny,
                chord + less * ny * ny,
            ],
        );
    }
    let factor = dot(wrench, load);
    let off = plus(wrench, load, -factor);
    Some(State {
        motion,
        wrench,
        secant,
        tangent,
        far,
        factor,
        residual: sqrt(dot(off, off)) / sum,
    })
}

/// Adds the stiffness of one bolt at (x, y).
fn add(to: &mut Matrix, x: f64, y: f64, [xx, xy, yy]: [f64; 3]) {
    to[0] += xx;
    to[1] += xy;
    to[2] += yy;
    to[3] += xy * x - xx * y;
    to[4] += yy * x - xy * y;
    to[5] += xx * y * y - 2.0 * xy * x * y + yy * x * x;
}

/// Solves a positive definite system by Cholesky.
fn solve(m: &Matrix, b: Vector) -> Option<Vector> {
    let l00 = sqrt(m[0]);
    let l10 = m[1] / l00;
    let l11 = sqrt(m[2] - l10 * l10);
    let l20 = m[3] / l00;
    let l21 = (m[4] - l20 * l10) / l11;
    let l22 = sqrt(m[5] - l20 * l20 - l21 * l21);
    let y0 = b[0] / l00;
    let y1 = (b[1] - l10 * y0) / l11;
    let y2 = (b[2] - l20 * y0 - l21 * y1) / l22;
    let z2 = y2 / l22;
    let z1 = (y1 - l21 * z2) / l11;
    let z0 = (y0 - l10 * z1 - l20 * z2) / l00;
    let found = [z0, z1, z2];
    found.iter().all(|part| part.is_finite()).then_some(found)
}

/// What was found.
pub(super) struct Solution {
    pub motion: Vector,
    /// The group carries this many times the load.
    pub factor: f64,
    pub iterations: usize,
    pub residual: f64,
}

/// The motion at which the bolts balance a load of size 1 and the farthest is at its limit.
///
/// Newton's method where it halves the unbalance. Otherwise one step of the elastic method with the
/// chord stiffness of each bolt as its weight, which comes closer from anywhere because the curve is
/// concave. Fails rather than return a motion out of balance.
pub(super) fn ultimate(
    bolts: &(impl Iterator<Item = (f64, f64, f64)> + Clone),
    load: Vector,
) -> Result<Solution, f64> {
    let mut now = state(bolts.clone(), load, load).ok_or(f64::INFINITY)?;
    for iterations in 1..=MOST_STEPS {
        if now.residual <= BALANCED && now.factor > 0.0 {
            return Ok(Solution {
                motion: now.motion,
                factor: now.factor,
                iterations,
                residual: now.residual,
            });
        }
        now = newton(&now, load)
            .and_then(|motion| state(bolts.clone(), load, motion))
            .filter(|next| next.factor > 0.0 && next.residual < 0.5 * now.residual)
            .or_else(|| state(bolts.clone(), load, solve(&now.secant, load)?))
            .ok_or(now.residual)?;
    }
    Err(now.residual)
}

/// Balance to first order, with the displacement of the farthest bolt held.
fn newton(now: &State, load: Vector) -> Option<Vector> {
    let off = plus(load.map(|part| part * now.factor), now.wrench, -1.0);
    let correction = solve(&now.tangent, off)?;
    let along = solve(&now.tangent, load)?;
    let growth = -dot(now.far, correction) / dot(now.far, along);
    let motion = plus(plus(now.motion, correction, 1.0), along, growth);
    motion.iter().all(|part| part.is_finite()).then_some(motion)
}
