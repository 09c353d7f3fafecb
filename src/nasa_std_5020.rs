//! The analysis of one bolt by NASA-STD-5020, Revision A or newer: from the preload to the margins of safety.
//!
//! | what the standard asks for | its equation | here | known how |
//! |---|---|---|---|
//! | greatest preload `Pp-max` | cmax (1 + G) Ppi-nom + PdT-max | [`FastenedCheck::preload`] | reproduced; its caution stays |
//! | least preload `Pp-min` | cmin (1 - G) Ppi-nom - Ppr - Ppc - PdT-min; G over the root of nf where nothing hangs on the separation | the same | reproduced; root and 5 % recalled |
//! | load that parts the joint | Eq. 11: `P'sep = Pp-max / (1 - n phi)` | [`FastenedCheck::separation_load`] | reproduced |
//! | load that breaks the bolt of a joint that is still closed | Eq. 10: `P'tu = (Ptu-allow - Pp-max) / (n phi)` | [`FastenedCheck::rupture_load`] | reproduced |
//! | ultimate tension | Eq. 6, 7: `MS = P / (FF FSu PtL) - 1`, P `Ptu-allow` where the joint parts first, else `P'tu` | [`Margins::ultimate_tension`] | reproduced |
//! | yield | the same with `Pty-allow` and `FSy` | [`Margins::yielding`] | reproduced |
//! | separation | Eq. 19: `MS = Pp-min / (FF FSsep PtL) - 1` | [`Margins::separation`] | reproduced |
//! | factor against separation | Figure 1: [`SeparationHazard`] | [`Factors::separation`] | reproduced |
//! | ultimate shear | Eq. 12 to 14: `MS = Psu-allow / (FF FSu PsL) - 1` | [`Margins::shear`] | reproduced |
//! | tension, shear and bending | Eq. 20 (shank in the plane) and 22 (thread); the tension of a joint that does not part first is `Pp-max + n phi FF FSu PtL` | [`Margins::combined`] | reproduced; that the preload counts there is statics |
//! | slip of the joint | Eq. 81 to 86: `MS = nf mu Pp-min / (FF FSs (PsL + mu PtL)) - 1` | [`Margins::slip`] | reproduced |
//! | fatigue | left to fracture control and its own analysis (NASA-STD-5019) | [`FastenedCheck::missing`] | recalled |
//!
//! Begin at [`FastenedJoint::check`]. Every field of [`FastenedJoint`] has to be said, and of the preload its tolerance, creep and heat; what cannot be decided is listed in
//! [`FastenedCheck::missing`], and then [`FastenedCheck::holds`] gives no answer. A margin of safety is allowable over factored
//! load, less one: not below nothing where it holds. No factor stands on the preload, for its range has its own.
//!
//! Three requirements on slip (of Revision B, as transcribed) and what is done with them:
//!
//! | requirement | here |
//! |---|---|
//! | TFSR 8: friction counts for nothing in the analysis of ultimate | shear and combined loads never ask whether the joint may slip |
//! | TFSR 13: friction may carry shear at limit or yield load only | slip is a margin of its own under limit loads; a factor of 1 is limit load, the yield factor yield load |
//! | Eq. 5: the least preload against slip has G over the root of nf, Eq. 4 of a separation-critical joint all of G | one least preload for both, as the joint was said to be: of a separation-critical one slip is judged with that of Eq. 4, on the careful side |
//!
//! Nobody has read the standard for this crate: of its text only the pages before the contents could be seen. What is called
//! reproduced was read in a comparison of methods by an engineer (2022), which gives these equations with their numbers, and in
//! a question on Eq. 19 in a forum of engineers; the requirements by number (TFSR), Eq. 4 and 5, the two frictions, the factor of
//! the test in `FSsep`, and slip in an engineer's transcription of Revision B, in a public repository, where the fitting factor
//! stands on the loads of slip too (of Eq. 86, which is for one bolt; Eq. 83, for the joint, was read without it, Eq. 84 not at all). No worked example by the standard was found: `tests/data/nasa_std_5020_steps.csv`
//! has a calculation from the equations that was made outside the crate before the two were compared.
//!
//! Lacking of the document: bending with a plastic allowance (Eq. 21 and 23), brittle bolts, shear pins, fatigue of low
//! risk (Appendix C), the conditions by which Figure 8 does without the stiffnesses, threads that strip, inserts, plies (bearing and
//! edges belong to other standards), locking features and their verification, lengths and thread engagement, quality assurance;
//! and how a load comes to several bolts, which is outside the standard too: [`strength::group`](crate::strength::group).
//!
//! It stands above [`preload`](crate::preload) and [`tension`](crate::tension), which do not know each other, and puts them
//! and [`strength`](crate::strength) together.
//!
//! These are estimates: the rules of the project rule, and where a failure can hurt someone a licensed engineer must check.

mod joint;
mod result;
mod steps;
mod working;

pub use crate::strength::check::NotChecked;
pub use joint::{
    Allowable, AllowableOf, Factors, FastenedJoint, JointSlip, LimitLoads, LoadCycles,
    SeparationHazard, SlipFriction,
};
pub use result::{FastenedCheck, Margins};
