//! The working behind a slip resistance.

use alloc::format;

use super::{SlipMethod, SlipPreload, SlipResistance};
use crate::derivation::{Derivation, Step};
use crate::source::Method;
use crate::tables::methods;

/// How a method writes its formula.
struct Symbols {
    /// What it calls the preload, and the symbol.
    preload: [&'static str; 2],
    /// Where a specified preload is from.
    specified: &'static Method,
    /// Holes, and for AISC fillers.
    joint: Option<&'static str>,
    /// What the tension leaves, for design loads and for service loads.
    left: [&'static str; 2],
}

impl Symbols {
    fn of(method: SlipMethod) -> Self {
        let own = method.method();
        let symbols = |name, symbol, specified, joint, left| Self {
            preload: [name, symbol],
            specified,
            joint,
            left: [left, left],
        };
        match method {
            SlipMethod::Aisc360 { .. } => Self {
                preload: ["specified pretension", "Tb"],
                specified: methods::AISC_360_TABLE_J3_1_SPECIFIED,
                joint: Some("h"),
                left: ["1 - T / (1.13 * Tb)", "1 - 1.5 * T / (1.13 * Tb)"],
            },
            SlipMethod::En1993 { .. } => {
                let specified = methods::EN_1993_1_8_2005_3_9_1_SPECIFIED_PRELOAD;
                let left = "1 - 0.8 * T / FpC";
                symbols("preload", "FpC", specified, Some("ks"), left)
            }
            // T over Tdf = 0.9 fub Anb / 1.25, and F0 = 0.7 fub Anb.
            SlipMethod::Is800 { .. } => {
                let left = "sqrt(1 - (1.25 * 7 * T / (9 * F0))^2)";
                symbols("proof load", "F0", own, Some("Kh"), left)
            }
            SlipMethod::Bs5950 { serviceability, .. } => {
                let specified = methods::BS_5950_1_2000_TABLE_35_RECALLED;
                let left = if serviceability {
                    "1 - T / (1.1 * Po)"
                } else {
                    "1 - T / (0.9 * Po)"
                };
                let name = "least tension of the bolt";
                symbols(name, "Po", specified, Some("Ks"), left)
            }
            SlipMethod::As4100 { .. } => {
                let (name, left) = ("least tension of the bolt", "1 - T / (0.7 * Nti)");
                let specified = methods::AS_4100_9_3_3_RECALLED;
                symbols(name, "Nti", specified, Some("kh"), left)
            }
            SlipMethod::Stated { .. } => symbols("preload", "Fi", own, None, "1 - T / Fi"),
        }
    }
}

impl SlipResistance {
    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::slip::{SlipFaces, SlipHole, SlipMethod, SlipPreload, slip_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = SlipMethod::Stated { friction: 0.15, safety_factor: 1.5 };
    /// let (least, faces) = (SlipPreload::Least(newtons(40e3)), SlipFaces::new(2, SlipHole::Standard));
    /// slip_resistance(dry, least, faces, newtons(5e3))?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let [design, service] = self.left;
        let source = self.method.method();
        let symbols = Symbols::of(self.method);
        let [kind, symbol] = symbols.preload;
        let is_aisc = matches!(self.method, SlipMethod::Aisc360 { .. });
        let known = match self.preload {
            SlipPreload::Specified(_) => symbols.specified,
            SlipPreload::Least(_) => methods::LEAST_PRELOAD,
        };
        let force = self.preload.force();
        let mut derivation = Derivation::new("Slip resistance of one bolt")
            .step(Step::given(kind, symbol, force).source(known))
            .step(
                Step::given("tension on the bolt", "T", self.tension)
                    .source(methods::LOAD_ON_THE_JOINT),
            )
            .step(Step::given("friction", "mu", self.friction).source(source));
        let mut before = alloc::string::String::new();
        if is_aisc {
            let mean = self.mean_over_specified;
            derivation = derivation
                .step(Step::given("mean over specified pretension", "Du", mean).source(source));
            before += "Du * ";
        }
        if let Some(joint) = symbols.joint {
            let (what, by) = match self.method {
                SlipMethod::Aisc360 { .. } => ("holes and fillers", source),
                SlipMethod::En1993 { .. } => ("holes", methods::EN_1993_1_8_2005_TABLE_3_6),
                _ => ("holes", source),
            };
            derivation = derivation.step(Step::given(what, joint, self.joint_factor).source(by));
            before += joint;
            before += " * ";
        }
        let load = |what, name, first: &str, after: &str, value, left, factor: Option<f64>| {
            let formula = format!("{first}k * {before}mu * n * {symbol}{after}");
            let mut step = Step::new(what, name, formula, value).with("k", left);
            if is_aisc {
                step = step.with("Du", self.mean_over_specified);
            }
            if let Some(joint) = symbols.joint {
                step = step.with(joint, self.joint_factor);
            }
            step = step
                .with("mu", self.friction)
                .with("n", self.faces.count)
                .with(symbol, force)
                .source(source);
            match factor {
                Some(factor) => step.with("f", factor),
                None => step,
            }
        };
        let [left, reserve] = symbols.left;
        let clamp = |formula, value: f64| {
            let (what, by) = match self.method {
                SlipMethod::Is800 { .. } => {
                    ("share that the tension leaves", methods::IS_800_2007_10_4_6)
                }
                _ => ("share of the clamp force left", source),
            };
            Step::new(what, "k", formula, value)
                .with("T", self.tension)
                .with(symbol, force)
                .source(by)
        };
        derivation = derivation.step(clamp(left, design));
        if let Some(nominal) = self.resistance.nominal {
            let step = load("nominal resistance", "Rn", "", "", nominal, design, None);
            derivation = derivation.step(step);
        }
        if let (Some(factor), Some(value)) = (self.resistance_factor, self.resistance.design) {
            let factor = Some(factor);
            let step = load("design resistance", "Rd", "f * ", "", value, design, factor);
            derivation = derivation.step(step);
        }
        if let (Some(factor), Some(value)) = (self.safety_factor, self.resistance.allowable) {
            let factor = Some(factor);
            let step = load("allowable load", "Ra", "", " / f", value, service, factor);
            derivation = derivation.step(clamp(reserve, service)).step(step);
        }
        derivation
    }
}
