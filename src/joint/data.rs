//! Stacks and rules as they stand in data files (feature `serde`).

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use serde::{Deserialize, Serialize};

use super::{CutRule, Layer, Stack};
use crate::units::quantity::{RawQuantity, RawSpread};

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RawLayer {
    name: String,
    thickness: RawSpread,
}

impl TryFrom<RawLayer> for Layer {
    type Error = String;
    fn try_from(raw: RawLayer) -> Result<Self, String> {
        let field = format!("thickness of \"{}\"", raw.name);
        Ok(Self {
            thickness: raw.thickness.named(&field)?,
            name: raw.name,
        })
    }
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RawStack {
    #[serde(default)]
    washers_under_head: Vec<Layer>,
    plies: Vec<Layer>,
    #[serde(default)]
    shear_planes: Vec<usize>,
    #[serde(default)]
    washers_under_nut: Option<RawNutWashers>,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct RawNutWashers {
    thickness: RawSpread,
    count: usize,
}

impl TryFrom<RawStack> for Stack {
    type Error = String;
    fn try_from(raw: RawStack) -> Result<Self, String> {
        let mut builder = Self::builder().shear_planes(raw.shear_planes);
        for washer in raw.washers_under_head {
            builder = builder.washer_under_head(washer.name, washer.thickness);
        }
        for ply in raw.plies {
            builder = builder.ply(ply.name, ply.thickness);
        }
        if let Some(washers) = raw.washers_under_nut {
            let thickness = washers.thickness.named("thickness of washers_under_nut")?;
            builder = builder.washers_under_nut(thickness, washers.count);
        }
        builder.build().map_err(|error| error.to_string())
    }
}

/// `{ "allowed": false }`, or `{ "allowed": true, "tolerance": ..., "step": ... }`.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct RawCutRule {
    allowed: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tolerance: Option<RawQuantity>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    step: Option<RawQuantity>,
}

impl TryFrom<RawCutRule> for CutRule {
    type Error = String;
    fn try_from(raw: RawCutRule) -> Result<Self, String> {
        match (raw.allowed, raw.tolerance, raw.step) {
            (true, Some(tolerance), Some(step)) => Ok(Self::Allowed {
                tolerance: tolerance.named("tolerance")?,
                step: step.named("step")?,
            }),
            (true, ..) => Err("tolerance and step: needed where cutting is allowed".into()),
            (false, None, None) => Ok(Self::Never),
            (false, ..) => {
                Err("tolerance and step: not wanted where cutting is not allowed".into())
            }
        }
    }
}

impl From<CutRule> for RawCutRule {
    fn from(rule: CutRule) -> Self {
        match rule {
            CutRule::Never => Self {
                allowed: false,
                tolerance: None,
                step: None,
            },
            CutRule::Allowed { tolerance, step } => Self {
                allowed: true,
                tolerance: Some(RawQuantity::of(tolerance)),
                step: Some(RawQuantity::of(step)),
            },
        }
    }
}
