//! The working behind a slip resistance.

use alloc::format;

use super::{SlipMethod, SlipPreload, SlipResistance};
use crate::derivation::{Derivation, Step};
use crate::source::Method;
use crate::strength::code::{aisc_360, as_4100, bs_5950, en_1993, is_800};
use crate::tables::methods;

/// How a method writes its formula. Each publisher's are in its room.
pub(in crate::strength) struct Symbols {
    /// What it calls the preload, and the symbol.
    pub(in crate::strength) preload: [&'static str; 2],
    /// Where a specified preload is from.
    pub(in crate::strength) specified: &'static Method,
    /// Mean over specified pretension, where the method has it.
    pub(in crate::strength) mean: Option<&'static str>,
    /// What holes leave: name, symbol and source.
    pub(in crate::strength) joint: Option<(&'static str, &'static str, &'static Method)>,
    /// What it calls that which the tension leaves, and where that is from.
    pub(in crate::strength) share: (&'static str, &'static Method),
    /// The formula of it, for design loads and for service loads.
    pub(in crate::strength) left: [&'static str; 2],
}

impl Symbols {
    /// Of a method which writes one formula for all loads, and has no more than holes in it.
    pub(in crate::strength) const fn new(
        preload: [&'static str; 2],
        specified: &'static Method,
        holes: &'static str,
        left: &'static str,
        own: &'static Method,
    ) -> Self {
        Self {
            preload,
            specified,
            mean: None,
            joint: Some(("holes", holes, own)),
            share: (CLAMP_LEFT, own),
            left: [left, left],
        }
    }

    fn of(method: SlipMethod, preload: SlipPreload) -> Self {
        let own = method.method();
        match method {
            SlipMethod::Aisc360 { .. } => aisc_360::slip::symbols(own),
            SlipMethod::En1993 { .. } => en_1993::slip::symbols(own),
            SlipMethod::Is800 { .. } => is_800::slip::symbols(own),
            SlipMethod::Bs5950 { serviceability, .. } => {
                bs_5950::slip::symbols(serviceability, preload, own)
            }
            SlipMethod::As4100 { .. } => as_4100::slip::symbols(own),
            SlipMethod::Stated { .. } => Self {
                joint: None,
                ..Self::new(["preload", "Fi"], own, "", "1 - T / Fi", own)
            },
        }
    }
}

/// What most methods call that which the tension leaves.
pub(in crate::strength) const CLAMP_LEFT: &str = "share of the clamp force left";

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
        let symbols = Symbols::of(self.method, self.preload);
        let [kind, symbol] = symbols.preload;
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
        if let Some(mean) = symbols.mean {
            let value = self.mean_over_specified;
            derivation = derivation
                .step(Step::given("mean over specified pretension", mean, value).source(source));
            before += mean;
            before += " * ";
        }
        if let Some((what, joint, by)) = symbols.joint {
            derivation = derivation.step(Step::given(what, joint, self.joint_factor).source(by));
            before += joint;
            before += " * ";
        }
        let load = |what, name, first: &str, after: &str, value, left, factor: Option<f64>| {
            let formula = format!("{first}k * {before}mu * n * {symbol}{after}");
            let mut step = Step::new(what, name, formula, value).with("k", left);
            if let Some(mean) = symbols.mean {
                step = step.with(mean, self.mean_over_specified);
            }
            if let Some((_, joint, _)) = symbols.joint {
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
            let (what, by) = symbols.share;
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
