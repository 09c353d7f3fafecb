//! A preloaded joint loaded along its bolt: stiffness, load share, separation, fatigue, prying.
//!
//! | question | by | marked |
//! |---|---|---|
//! | bolt stiffness | [`BoltStiffness::shigley`] (sections in the grip only), [`BoltStiffness::vdi_2230`] (with head, engaged thread and nut) | the second from memory |
//! | member stiffness | [`Cones`] (frusta in layers), [`wileman`], [`hollow_cylinder`], [`VdiPlates`] | the last, and two materials of the fit, from memory |
//! | load share, separation | [`LoadShare`], [`JointDiagram`], [`TensionCheck`] | load introduction from memory |
//! | fatigue, machine design | [`MachineDesignFatigue`] | read |
//! | fatigue, VDI 2230 | [`VdiFatigue`] | from memory |
//! | prying | [`thornton_prying`], [`AiscFlange`], [`EnTStub`] | read |
//!
//! The two systems of bolt stiffness differ: for a 5/8-11 bolt of 1.5 in grip the VDI form is about
//! 40 % softer than Shigley's. Take bolt and members of one system. The two systems of fatigue have
//! types of their own and cannot be mixed.
//!
//! Not covered: eccentric clamping or load, bending of the bolt, change of temperature, slip.

mod bolt_stiffness;
mod diagram;
mod fatigue;
mod member_stiffness;
mod prying;
#[cfg(feature = "serde")]
mod serialize;
mod vdi_fatigue;

pub use bolt_stiffness::{
    BoltHead, BoltPart, BoltSegment, BoltStiffness, BoltStiffnessMethod, GripSections, ThreadedEnd,
    cap_screw_grip,
};
pub use diagram::{
    BoltsNeeded, JointDiagram, JointState, LoadShare, LoadedJoint, TensionCheck, bolts_needed,
    margin_of_safety,
};
pub use fatigue::{
    EnduranceStrength, FatigueCriterion, FatigueStrengths, FatigueStress, MachineDesignFatigue,
};
pub use member_stiffness::{
    ClampEnd, Cones, Frusta, FrustumPiece, Layer, MemberStiffness, MembersMethod, VdiPlates,
    WilemanMaterial, hollow_cylinder, in_series, wileman,
};
pub use prying::{
    AiscBasis, AiscFlange, AiscPrying, EnMode, EnTStub, EnTStubResistance, ThorntonPrying,
    thornton_prying,
};
pub use vdi_fatigue::{VdiFatigue, VdiFatigueStrength, VdiThread};

use crate::error::{Error, not_negative, positive};
use crate::units::{Area, Force, Stiffness};

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

#[inline]
fn sane_stiffness(quantity: &'static str, stiffness: Stiffness) -> Result<Stiffness, Error> {
    within(
        quantity,
        stiffness,
        crate::units::newtons_per_millimetre(1e-6),
        crate::units::newtons_per_millimetre(1e18),
    )
}

/// A modulus of elasticity or a strength, from a pascal to a million GPa.
#[inline]
fn sane_stress(
    quantity: &'static str,
    stress: crate::units::Stress,
) -> Result<crate::units::Stress, Error> {
    within(
        quantity,
        stress,
        crate::units::megapascals(1e-6),
        crate::units::megapascals(1e9),
    )
}

/// A length of a part, from a nanometre to a kilometre.
#[inline]
fn part_length(
    quantity: &'static str,
    length: crate::units::Length,
) -> Result<crate::units::Length, Error> {
    within(
        quantity,
        length,
        crate::units::millimetres(1e-6),
        crate::error::LONGEST,
    )
}

#[inline]
fn within<Q>(quantity: &'static str, value: Q, least: Q, greatest: Q) -> Result<Q, Error>
where
    Q: Copy + PartialOrd + Into<crate::error::Amount> + crate::error::Finite,
{
    positive(quantity, value)?;
    if least <= value && value <= greatest {
        Ok(value)
    } else {
        Err(crate::error::out_of_range(
            quantity,
            value,
            crate::error::Allowed::FromTo(least.into(), greatest.into()),
        ))
    }
}
