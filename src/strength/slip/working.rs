//! The working behind a slip resistance.

use alloc::format;

use super::{SlipMethod, SlipPreload, SlipResistance};
use crate::derivation::{Derivation, Step};
use crate::tables::methods;

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
        let (kind, symbol, mean) = match self.method {
            SlipMethod::Aisc360 { .. } => ("specified pretension", "Tb", "Du * h * "),
            SlipMethod::En1993 { .. } => ("preload", "FpC", "ks * "),
            SlipMethod::Is800 { .. } => ("proof load", "F0", "Kh * "),
            SlipMethod::Stated { .. } => ("preload", "Fi", ""),
        };
        let known = match (self.method, self.preload) {
            (SlipMethod::Aisc360 { .. }, _) => methods::AISC_360_TABLE_J3_1_SPECIFIED,
            (_, SlipPreload::Least(_)) => methods::LEAST_PRELOAD,
            (SlipMethod::Is800 { .. }, _) => source,
            (_, SlipPreload::Specified(_)) => methods::EN_1993_1_8_2005_3_9_1_SPECIFIED_PRELOAD,
        };
        let force = self.preload.force();
        let mut derivation = Derivation::new("Slip resistance of one bolt")
            .step(Step::given(kind, symbol, force).source(known))
            .step(
                Step::given("tension on the bolt", "T", self.tension)
                    .source(methods::LOAD_ON_THE_JOINT),
            )
            .step(Step::given("friction", "mu", self.friction).source(source));
        match self.method {
            SlipMethod::Aisc360 { .. } => {
                let (mean, joint) = (self.mean_over_specified, self.joint_factor);
                derivation = derivation
                    .step(Step::given("mean over specified pretension", "Du", mean).source(source))
                    .step(Step::given("holes and fillers", "h", joint).source(source));
            }
            SlipMethod::En1993 { .. } => {
                derivation = derivation.step(
                    Step::given("holes", "ks", self.joint_factor)
                        .source(methods::EN_1993_1_8_2005_TABLE_3_6),
                );
            }
            SlipMethod::Is800 { .. } => {
                derivation =
                    derivation.step(Step::given("holes", "Kh", self.joint_factor).source(source));
            }
            SlipMethod::Stated { .. } => (),
        }
        let load = |what, name, before: &str, after: &str, value, left, factor: Option<f64>| {
            let formula = format!("{before}k * {mean}mu * n * {symbol}{after}");
            let mut step = Step::new(what, name, formula, value).with("k", left);
            step = match self.method {
                SlipMethod::Aisc360 { .. } => step
                    .with("Du", self.mean_over_specified)
                    .with("h", self.joint_factor),
                SlipMethod::En1993 { .. } => step.with("ks", self.joint_factor),
                SlipMethod::Is800 { .. } => step.with("Kh", self.joint_factor),
                SlipMethod::Stated { .. } => step,
            };
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
        let (left, reserve) = match self.method {
            SlipMethod::Aisc360 { .. } => ("1 - T / (1.13 * Tb)", "1 - 1.5 * T / (1.13 * Tb)"),
            SlipMethod::En1993 { .. } => ("1 - 0.8 * T / FpC", "1 - 0.8 * T / FpC"),
            // T over Tdf = 0.9 fub Anb / 1.25, and F0 = 0.7 fub Anb.
            SlipMethod::Is800 { .. } => (
                "sqrt(1 - (1.25 * 7 * T / (9 * F0))^2)",
                "sqrt(1 - (1.25 * 7 * T / (9 * F0))^2)",
            ),
            SlipMethod::Stated { .. } => ("1 - T / Fi", "1 - T / Fi"),
        };
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
