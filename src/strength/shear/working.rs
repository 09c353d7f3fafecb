//! The working behind a shear resistance.

use alloc::format;

use super::planes::{PlaneRule, ShearResistance};
use crate::derivation::{Derivation, Step};
use crate::strength::check::{Level, Resistance};
use crate::tables::methods;

impl ShearResistance {
    /// The working: stress, area, what is taken off, the plane that governs, the factors.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
    /// let planes = LoadedPlane::equal(&[Zone::Shank, Zone::Thread]);
    /// let packed = ConnectionFacts { packing: Some(millimetres(10.0)), ..ConnectionFacts::default() };
    /// let aisc = ShearMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// for method in [ShearMethod::En1993, ShearMethod::Bs5950, ShearMethod::Bs449, aisc] {
    ///     shear_resistance(&thread, &strength, &planes, PlaneRule::Each, method, &packed)?
    ///         .derivation()
    ///         .check()?;
    /// }
    /// let sum = shear_resistance(
    ///     &thread, &strength, &planes, PlaneRule::Sum, ShearMethod::As4100, &packed,
    /// )?;
    /// sum.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let source = self.method.method();
        let product = self.reductions.product();
        let level = if self.plane.nominal.is_some() {
            Level::Nominal
        } else if self.plane.design.is_some() {
            Level::Design
        } else {
            Level::Allowable
        };
        let load = |resistance: &Resistance| resistance.at(level).unwrap_or_default();
        let (plane, whole) = (load(&self.plane), load(&self.resistance));
        let mut derivation = self.origins.steps(
            Derivation::new(format!("Bolt in shear by {source}")),
            source,
            format!("{level} shear stress"),
            "tau",
        );
        derivation = self
            .facts
            .steps(derivation, self.method, &self.origins.thread, self.grade);
        let reduced = product < 1.0;
        let formula = if reduced { "tau * A * k" } else { "tau * A" };
        let what = format!("{level} resistance of plane {}", self.governing_plane);
        let mut step = Step::new(what, "V", formula, plane)
            .with("tau", self.stress)
            .with("A", self.area);
        if reduced {
            step = step.with("k", product);
        }
        derivation = derivation.step(step);
        derivation = match self.rule {
            PlaneRule::Each => derivation.step(
                Step::new(format!("{level} resistance"), "F", "V / s", whole)
                    .with("V", plane)
                    .with("s", self.governing_share)
                    .source(methods::STATICS_THE_PLANE_CARRIES_THE_SHARE_S_OF_THE_LOAD),
            ),
            PlaneRule::Sum => derivation
                .step(
                    Step::given("resistance of the other planes", "V'", whole - plane)
                        .source(methods::SAME_PLANE),
                )
                .step(
                    Step::new(format!("{level} resistance"), "F", "V + V'", whole)
                        .with("V", plane)
                        .with("V'", whole - plane)
                        .source(source),
                ),
        };
        if let (Some(design), Some(phi)) = (self.resistance.design, self.resistance_factor) {
            derivation = derivation.step(
                Step::new("design resistance", "Fd", "phi * F", design)
                    .with("phi", phi)
                    .with("F", whole)
                    .source(source),
            );
        }
        if let (Some(allowable), Some(omega)) = (self.resistance.allowable, self.safety_factor) {
            derivation = derivation.step(
                Step::new("allowable load", "Fa", "F / n", allowable)
                    .with("n", omega)
                    .with("F", whole)
                    .source(source),
            );
        }
        derivation
    }
}
