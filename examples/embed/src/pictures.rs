//! The pictures of a joint.

use serde::Deserialize;
use shankline::drawing::{self, Drawing};
use shankline::joint::Joint;
use shankline::units::UnitSystem;

use crate::questions::{units_for, unwritten};
use crate::refusal::{Refusal, read};

#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Ink {
    Svg,
    Dxf,
}

fn not_drawn(text: &str) -> Refusal {
    Refusal::new("not_drawn", text)
}

pub fn draw(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Clone, Copy, Deserialize)]
    #[serde(rename_all = "snake_case")]
    enum Picture {
        Section,
        Checks,
        Lengths,
        Springs,
    }
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        joint: Joint,
        picture: Picture,
        format: Ink,
        units: Option<UnitSystem>,
    }
    let Asked {
        joint,
        picture,
        format,
        units,
    } = read(request)?;
    let units = units_for(units, &joint);
    let svg = |page: Drawing| Ok(page.svg().into_bytes());
    match (picture, format) {
        (Picture::Lengths, Ink::Svg) => svg(drawing::lengths(&joint, &joint.lengths()?, units)),
        (Picture::Section, format) => {
            let verdict = joint.check()?;
            let assembly = joint.assembly(&verdict.candidate)?;
            match format {
                Ink::Svg => svg(drawing::section(&assembly, Some(&verdict), units)),
                Ink::Dxf => Ok(drawing::section_dxf(&assembly, units).into_bytes()),
            }
        }
        (Picture::Checks, Ink::Svg) => {
            svg(drawing::utilisation(&joint.title, &joint.check()?, units))
        }
        (Picture::Springs, Ink::Svg) => {
            match drawing::joint_diagram(&joint, &joint.check()?, units) {
                Some(page) => svg(page),
                None => Err(not_drawn(
                    "no preload is known, or not how stiff the parts are",
                )),
            }
        }
        (_, Ink::Dxf) => Err(unwritten("only the section is drawn as dxf")),
    }
}
