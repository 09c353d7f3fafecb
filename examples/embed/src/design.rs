//! The best bolts, nuts and washers of a joint.

use serde::Deserialize;
use shankline::joint::{DesignSpace, Joint, Objective};
use shankline::units::UnitSystem;

use crate::questions::{units_for, written};
use crate::refusal::{Refusal, read};

pub fn design(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
        space: DesignSpace,
        #[serde(default)]
        objectives: Vec<Objective>,
        units: Option<UnitSystem>,
    }
    let asked: Asked = read(request)?;
    let units = units_for(asked.units, &asked.joint);
    let designs = asked.joint.design(&asked.space, &asked.objectives)?;
    written(&designs.report(units)?)
}
