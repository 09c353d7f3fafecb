//! Materials and methods as they stand in data files (feature `serde`).

use alloc::string::{String, ToString};

use serde::Deserialize;

use super::{StripMethod, ThreadMaterial};
use crate::units::quantity::RawQuantity;

#[derive(Clone, Debug, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
pub(super) struct RawThreadMaterial {
    tensile_strength: RawQuantity,
    #[serde(default)]
    shear_strength: Option<RawQuantity>,
}

impl TryFrom<RawThreadMaterial> for ThreadMaterial {
    type Error = String;
    fn try_from(raw: RawThreadMaterial) -> Result<Self, String> {
        let tensile_strength = raw.tensile_strength.named("tensile_strength")?;
        let shear_strength = raw.shear_strength.map(|raw| raw.named("shear_strength"));
        Self::new(tensile_strength, shear_strength.transpose()?).map_err(|error| error.to_string())
    }
}

#[derive(Clone, Debug, Deserialize)]
#[serde(
    crate = "crate::objects",
    rename_all = "snake_case",
    deny_unknown_fields
)]
pub(super) enum RawStripMethod {
    FedStdH28,
    ShearStrength,
    Alexander {
        #[serde(default)]
        width_across_flats: Option<RawQuantity>,
    },
    Vdi2230 {
        #[serde(default)]
        width_across_flats: Option<RawQuantity>,
    },
}

impl TryFrom<RawStripMethod> for StripMethod {
    type Error = String;
    fn try_from(raw: RawStripMethod) -> Result<Self, String> {
        let width = |raw: Option<RawQuantity>| {
            let width = raw.map(|raw| raw.named("width_across_flats"));
            width.transpose()
        };
        Ok(match raw {
            RawStripMethod::FedStdH28 => Self::FedStdH28,
            RawStripMethod::ShearStrength => Self::ShearStrength,
            RawStripMethod::Alexander { width_across_flats } => Self::Alexander {
                width_across_flats: width(width_across_flats)?,
            },
            RawStripMethod::Vdi2230 { width_across_flats } => Self::Vdi2230 {
                width_across_flats: width(width_across_flats)?,
            },
        })
    }
}
