//! Stacks and rules as they stand in data files (feature `serde`).

use alloc::{format, string::String};

use serde::{Deserialize, Serialize};

use super::stack::NutWashers;
use super::{CutRule, Layer};
use crate::units::Length;
use crate::units::quantity::{RawQuantity, RawSpread};

#[derive(Clone, Debug, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
pub(crate) struct RawLayer {
    name: String,
    thickness: RawSpread,
    #[serde(default)]
    crush: Option<RawQuantity>,
}

impl TryFrom<RawLayer> for Layer {
    type Error = String;
    fn try_from(raw: RawLayer) -> Result<Self, String> {
        let field = format!("thickness of \"{}\"", raw.name);
        Ok(Self {
            thickness: raw.thickness.named(&field)?,
            crush: match raw.crush {
                Some(crush) => crush.named(&format!("crush of \"{}\"", raw.name))?,
                None => Length::default(),
            },
            name: raw.name,
        })
    }
}

#[derive(Clone, Debug, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
pub(crate) struct RawNutWashers {
    thickness: RawSpread,
    count: usize,
}

impl TryFrom<RawNutWashers> for NutWashers {
    type Error = String;
    fn try_from(raw: RawNutWashers) -> Result<Self, String> {
        Ok(Self {
            thickness: raw.thickness.named("thickness of washers_under_nut")?,
            count: raw.count,
        })
    }
}

/// `{ "allowed": false }`, or `{ "allowed": true, "tolerance": ..., "step": ... }`.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
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
