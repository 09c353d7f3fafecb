//! Torque forms as they stand in data files (feature `serde`).

use alloc::{format, string::String};

use super::{FrictionForm, TorqueForm};
use crate::error::sane_length;
use crate::preload::friction::Friction;
use crate::preload::no_prevailing;
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::quantity::RawQuantity;
use crate::units::{Length, Torque};

#[derive(serde::Deserialize)]
#[serde(
    crate = "crate::objects",
    deny_unknown_fields,
    expecting = "a torque form with form, thread, diameters and frictions"
)]
pub(super) struct RawFrictionForm {
    form: TorqueForm,
    thread: Thread,
    #[serde(default)]
    thread_diameter: Option<RawQuantity>,
    bearing_diameter: RawQuantity,
    thread_friction: Friction,
    bearing_friction: Friction,
    #[serde(default)]
    prevailing: Option<Spread<Torque>>,
    /// Written out, and computed again.
    #[serde(default, rename = "arm")]
    _arm: Option<serde::de::IgnoredAny>,
}

impl TryFrom<RawFrictionForm> for FrictionForm {
    type Error = String;
    fn try_from(raw: RawFrictionForm) -> Result<Self, Self::Error> {
        let bearing: Length = raw.bearing_diameter.named("bearing_diameter")?;
        let (thread, on_thread, on_face) = (&raw.thread, raw.thread_friction, raw.bearing_friction);
        let form = match (raw.form, raw.thread_diameter) {
            (form, Some(diameter)) => {
                let diameter = diameter.named("thread_diameter")?;
                sane_length("mean diameter of the thread", diameter)
                    .and_then(|mean| Self::build(form, thread, mean, bearing, on_thread, on_face))
            }
            (TorqueForm::LeadAngle, None) => Self::lead_angle(thread, bearing, on_thread, on_face),
            (TorqueForm::Linear, None) => Self::linear(thread, bearing, on_thread, on_face),
            (TorqueForm::ThreeTerm, None) => {
                return Err("thread_diameter: the three-term form has no usual one".into());
            }
        };
        let prevailing = raw.prevailing.unwrap_or_else(no_prevailing);
        form.and_then(|form| form.with_prevailing(prevailing))
            .map_err(|error| format!("{error}"))
    }
}
