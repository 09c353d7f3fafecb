//! The whole procedure of VDI 2230 Part 1 for one bolt that is clamped and loaded through its axis.
//!
//! | step of the guideline | what | here |
//! |---|---|---|
//! | R0 | a first diameter | not built: the bolt is given |
//! | R1 | tightening factor `alpha_A` | [`Scatter`] |
//! | R2 | required clamp force `F_Kerf` | [`ConcentricCheck::required_clamp`] |
//! | R3 | load factor `Phi = n delta_P / (delta_S + delta_P)` | [`ConcentricCheck::share`] |
//! | R4 | losses `F_Z`, `dF_Vth` | [`ConcentricCheck::embedding_loss`], [`ThermalForces`] |
//! | R5, R6 | `F_Mmin = F_Kerf + (1 - Phi) F_A + F_Z + dF_Vth`; `F_Mmax = alpha_A F_Mmin` | [`ConcentricCheck::required`] |
//! | R7 | assembly stress, `F_Mzul` | [`ConcentricCheck::permitted`] |
//! | R8 | working stress `sigma_red,B` | [`ConcentricCheck::working_stress`] |
//! | R9 | amplitude `sigma_a` against `sigma_A` | [`ConcentricCheck::fatigue`] |
//! | R10 | pressures `p_M`, `p_B` against `p_G` | [`ConcentricCheck::pressures`] |
//! | R11 | threads that outlast the bolt | [`ConcentricJoint::threads`] |
//! | R12 | slipping, shear of the bolt | [`ConcentricCheck::slip`] |
//! | R13 | assembly torque `M_A` | [`ConcentricCheck::torque`] |
//!
//! Begin at [`ConcentricJoint::check`]. Every field of [`ConcentricJoint`] has to be said; what it cannot decide is listed in
//! [`ConcentricCheck::missing`], and then [`ConcentricCheck::holds`] gives no answer.
//!
//! Nobody has read the guideline for this crate. The resiliences, R1, R3 to R6 and the amplitude of R9 were read in notes to
//! a university script, with a worked example that is reproduced; R7 reproduces a supplier's table; the rest is recalled, and
//! each check says so by its cautions.
//!
//! Covered is tightening by torque below yield: a bolt tightened by angle or into yield presses with more than R10 has
//! here ([`YIELD_CONTROLLED`](crate::strength::surface::YIELD_CONTROLLED)). Not covered: eccentric clamping or load, bending,
//! loads that press, a moment about the axis of the bolt, bearing on the wall of the hole, waisted and hollow bolts,
//! several bolts, other than room temperature but for the change of the preload.
//!
//! It stands above [`preload`](crate::preload) and [`tension`](crate::tension), which do not know each other, and puts
//! them and [`strength`](crate::strength) together.
//!
//! These are estimates: local codes rule, and where a failure can hurt someone a licensed engineer must check.

mod joint;
mod result;
mod steps;
mod working;

pub use crate::strength::check::NotChecked;
pub use joint::{
    Assembly, AxialCycles, BoltSpring, ConcentricJoint, Embedding, PlateSpring, PressedFace,
    RolledThread, Scatter, ShearSection, ThermalForces, Transverse, TransverseKind, WorkingLoads,
};
pub use result::{ConcentricCheck, FacePressure, RequiredPreload, Safeties, Slipping};

/// Safety `S_D` against fatigue that the guideline wants: recalled.
pub(crate) const LEAST_FATIGUE: f64 = 1.2;
/// Safety against shear of the bolt that the guideline wants: recalled.
pub(crate) const LEAST_SHEAR: f64 = 1.1;
