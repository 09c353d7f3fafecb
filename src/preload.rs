//! From the wrench to the clamp force, and what becomes of it.
//!
//! ```
//! use shankline::prelude::*;
//! use shankline::units::pound_force;
//! # fn main() -> Result<(), shankline::Error> {
//! // 1/2-13 bolt, as received: K = 0.2 nominal, from 0.16 to 0.27
//! let form = ShortForm::new(NutFactor::new(0.16, 0.20, 0.27)?, inches(0.5))?;
//! let preload = form.preload(pound_force_feet(75.0))?;
//! assert!((preload.nominal.get::<pound_force>() - 9000.0).abs() < 1e-6);
//! assert!(preload.min < preload.nominal && preload.nominal < preload.max);
//! # Ok(())
//! # }
//! ```
//!
//! # Torque and preload
//!
//! | form | T / F | friction |
//! |---|---|---|
//! | [`ShortForm`] | K d | lumped in the [`NutFactor`] |
//! | [`FrictionForm::lead_angle`] (Shigley Eq. 8-26) | (dm/2) (tan lambda + mu sec alpha) / (1 - mu tan lambda sec alpha) + muc Db/2 | thread, face |
//! | [`FrictionForm::linear`] (JIS B 1083, VDI 2230) | P/(2 pi) + mu d2/(2 cos 30) + muk Db/2 | thread, face |
//! | [`FrictionForm::three_term`] (Motosh) | P/(2 pi) + mu rt/cos 30 + muk rn | thread, face, own radii |
//!
//! T is the torque, F the preload, d the nominal and d2 the pitch diameter, dm the mean thread diameter, P the
//! pitch, lambda the lead angle, alpha = 30 degrees half the thread angle, Db the effective diameter of the
//! turned face; mu is the friction of the thread, muc and muk that of the face; rt and rn are contact radii of
//! thread and face.
//!
//! All of them take friction with its range, add the prevailing torque of a lock nut, and go both ways.
//! [`BearingFace`] gives Db, [`FrictionForm::split`] where the torque goes, and
//! [`FrictionForm::loosening_torque`] what turns the nut off again.
//!
//! # From torque to what is left in service
//!
//! | question | begins at |
//! |---|---|
//! | how much preload to aim at | [`PreloadTarget::aim`], [`FrictionForm::assembly_preload`] |
//! | how far it scatters | [`scattered`], [`NasaPreload`], [`VdiPreload`], [`PreloadSample`] |
//! | what the bolt feels while it is tightened | [`FrictionForm::tightening_stress`], of a nut factor [`ShortForm::tightening_stress`] |
//! | what the coldest and the hottest service make of it | [`ElasticJoint::thermal_range`] |
//! | how far to turn the nut, what loosening, embedment and heat take | [`ElasticJoint`] |
//!
//! The *prevailing torque* of a lock nut is what it takes to turn the nut before it seats; a workshop reads it
//! as the *running torque*. *Embedment* is how far surfaces settle into each other after tightening;
//! [`joint::Tightening`](crate::joint::Tightening) calls it settling. *Members* are plies and washers as one spring.
//!
//! These are estimates. Where a failure can hurt someone the preload is verified on the joint itself,
//! local codes and the maker's torque rule, and a licensed engineer checks.

use crate::error::{Allowed, Error, out_of_range};
use crate::spread::Spread;
use crate::units::{Force, Length, Torque, from_base};

mod bearing;
mod elastic;
mod form;
mod friction;
mod nut_factor;
mod pretension;
mod range;
mod sample;
mod short_form;
mod stress;
mod target;

pub use bearing::{BearingFace, BearingPressure};
pub use elastic::{ElasticJoint, Loosened, ThermalChange, ThermalLayer, ThermalRange};
pub use form::{FrictionForm, TorqueForm, TorqueSplit};
pub use friction::{Friction, bearing_friction, thread_friction, total_friction};
pub use nut_factor::NutFactor;
pub use range::{
    NasaPreload, PreloadMethod, PreloadRange, VdiPreload, scatter_of, scattered, tightening_factor,
};
pub use sample::PreloadSample;
pub use short_form::{EnTorque, ShortForm};
pub use stress::{AssemblyPreload, LumpedStress, ServiceStress, TighteningStress, TorsionModel};
pub use target::{PreloadAim, PreloadLimit, PreloadTarget, ProofUse, TargetBase, proof_use};

/// Prevailing torque of a nut that runs freely.
const fn no_prevailing() -> Spread<Torque> {
    Spread::exact(from_base(0.0))
}

/// F = (T - Tp) / arm, where least goes with greatest.
#[inline]
fn preload_of(
    torque: Spread<Torque>,
    arm: Spread<Length>,
    prevailing: Spread<Torque>,
) -> Result<Spread<Force>, Error> {
    let force = |torque: Torque, prevailing: Torque, arm: Length| -> Force {
        from_base((torque.value - prevailing.value) / arm.value)
    };
    let preload = Spread {
        min: force(torque.min, prevailing.max, arm.max),
        nominal: force(torque.nominal, prevailing.nominal, arm.nominal),
        max: force(torque.max, prevailing.min, arm.min),
    };
    // The torque itself, for a tiny negative one may vanish in the division.
    if torque.min.value >= prevailing.max.value && preload.max.value < f64::INFINITY {
        Ok(preload)
    } else {
        Err(bad_torque(torque.min, prevailing.max))
    }
}

#[cold]
fn bad_torque(torque: Torque, prevailing: Torque) -> Error {
    let allowed = if prevailing.value > 0.0 {
        Allowed::AtLeast(prevailing.into())
    } else {
        Allowed::NotNegative
    };
    out_of_range("tightening torque", torque, allowed)
}

/// T = F arm + Tp.
#[inline]
fn torque_of(
    preload: Force,
    arm: Spread<Length>,
    prevailing: Spread<Torque>,
) -> Result<Spread<Torque>, Error> {
    let torque = |arm: Length, prevailing: Torque| -> Torque {
        from_base(preload.value * arm.value + prevailing.value)
    };
    let torques = Spread {
        min: torque(arm.min, prevailing.min),
        nominal: torque(arm.nominal, prevailing.nominal),
        max: torque(arm.max, prevailing.max),
    };
    if preload.value >= 0.0 && torques.max.value < f64::INFINITY {
        Ok(torques)
    } else {
        Err(out_of_range("preload", preload, Allowed::NotNegative))
    }
}

#[cfg(test)]
mod tests;
