//! A preloaded joint loaded along its bolt: stiffness, load share, separation, fatigue, prying.
//!
//! | question | begins at | known how |
//! |---|---|---|
//! | bolt stiffness | [`BoltStiffness::shigley`] (sections in the grip only), [`BoltStiffness::vdi_2230`] (with head, engaged thread and nut) | first read, second recalled |
//! | member stiffness | [`Cones`] (frusta in layers), [`wileman`], [`hollow_cylinder`], [`VdiPlates`] | read; the last, and two materials of the fit, recalled |
//! | springs as stated: a constant C, an area, rigid members | [`LoadShare::of_constant`], [`rod_stiffness`], [`LoadShare::rigid_members`] | statics |
//! | load share, separation | [`LoadShare`], [`JointDiagram`], [`TensionCheck`] | read; load introduction recalled |
//! | how many bolts | [`bolts_needed`] | read |
//! | fatigue, machine design | [`MachineDesignFatigue`] | read |
//! | fatigue, VDI 2230 | [`VdiFatigue`] | recalled |
//! | fatigue, EN 1993-1-9: bolts without preload, shear | [`EnFatigue`] | tension category read, the rest recalled |
//! | fatigue, AISC | [`AiscFatigue`] | read |
//! | all steps of VDI 2230 Part 1, one bolt clamped and loaded through its axis | [`vdi_2230`](crate::vdi_2230) | partly read, partly recalled |
//! | prying | [`thornton_prying`], [`AiscFlange`], [`EnTStub`]; bolts too long for prying [`EnTStub::with_bolts`] | read |
//!
//! The two systems of bolt stiffness differ: for a 5/8-11 bolt of 1.5 in grip the VDI form is about
//! 40 % softer than Shigley's. Take bolt and members of one system. The systems of fatigue have
//! types of their own and cannot be mixed. Two of them want a preload: endurance strengths at zero mean stress, and VDI
//! 2230; the codes EN and AISC do without.
//!
//! Not covered here: eccentric clamping or load and bending of the bolt. Change of temperature is in
//! [`preload`](crate::preload), slip in [`strength::slip`](crate::strength::slip).
//!
//! *Members* are the plies and washers that the bolt clamps, as one spring.
//!
//! # Ranges
//!
//! Lengths of parts are taken from 1 nm to 1 km, stresses and moduli from 1 Pa to 1e6 GPa, stiffnesses from
//! 1e-6 to 1e18 N/mm, loads up to 1e15 N: wider than any joint, narrow enough that nothing overflows. Values
//! outside, and NaN, are refused with [`Error::OutOfRange`](crate::Error).
//!
//! These are estimates: local codes rule, and where a failure can hurt someone a licensed engineer must check.

mod aisc_fatigue;
mod bolt_stiffness;
mod diagram;
mod en_fatigue;
mod fatigue;
mod member_stiffness;
mod prying;
mod rod;
#[cfg(feature = "serde")]
mod serialize;
mod vdi_fatigue;

pub use aisc_fatigue::{AiscClamping, AiscFatigue};
pub use bolt_stiffness::{
    BoltHead, BoltPart, BoltSegment, BoltStiffness, BoltStiffnessMethod, GripSections, ThreadedEnd,
    cap_screw_grip,
};
pub use diagram::{
    BoltsNeeded, JointDiagram, JointState, LoadShare, LoadedJoint, TensionCheck, bolts_needed,
    margin_of_safety,
};
pub use en_fatigue::{EnFatigue, EnFatigueDetail, GammaMf};
pub use fatigue::{
    EnduranceStrength, FatigueCriterion, FatigueStrengths, FatigueStress, MachineDesignFatigue,
};
pub use member_stiffness::{
    ClampEnd, Cones, Frusta, FrustumPiece, Layer, MemberStiffness, MembersMethod, VdiPlates,
    WilemanMaterial, hollow_cylinder, in_series, wileman,
};
pub use prying::{
    AiscBasis, AiscFlange, AiscPrying, EnMode, EnTStub, EnTStubResistance, TStubBolts,
    ThorntonPrying, thornton_prying,
};
pub use rod::rod_stiffness;
pub use vdi_fatigue::{VdiFatigue, VdiFatigueStrength, VdiThread};

use crate::error::{Error, not_negative, part_length, sane_stiffness, sane_stress, within};
use crate::units::{Area, Force};

/// Refuses a force beyond what any joint can have, so that sums and quotients stay finite.
#[inline]
fn sane_load(quantity: &'static str, force: Force) -> Result<Force, Error> {
    not_negative(quantity, force)?;
    at_most(quantity, force, crate::units::newtons(1e15))
}

#[inline]
fn at_most<Q>(quantity: &'static str, value: Q, limit: Q) -> Result<Q, Error>
where
    Q: Copy + PartialOrd + Into<crate::error::Amount>,
{
    if value <= limit {
        Ok(value)
    } else {
        Err(crate::error::out_of_range(
            quantity,
            value,
            crate::error::Allowed::AtMost(limit.into()),
        ))
    }
}

#[inline]
fn sane_area(quantity: &'static str, area: Area) -> Result<Area, Error> {
    within(
        quantity,
        area,
        crate::units::square_millimetres(1e-6),
        crate::units::square_millimetres(1e12),
    )
}

#[cfg(test)]
mod tests;
