//! What is done with the resistance of a ply: compared with a load, worked out in steps.

use super::{Ply, PlyBolt, PlyMethod};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::code::{en_1993, is_800};
use crate::units::{Area, Force, Length, Stress, inches, millimetres};

/// Resistance of a ply in one mode, for the load of one bolt: coefficient x stress x area.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::{Level, Mode};
/// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// // 7/8 in bolt, 3/8 in A36 plate, 1.5 in from the end: 20.2 kip in a handbook example
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let plate = Ply { end_distance: Some(inches(1.5)), ..Ply::of(a36, inches(0.375), inches(0.9375)) };
/// let method = PlyMethod::Aisc360 { edition: AiscEdition::E2010, deformation_matters: true };
/// let outcome = plate.in_mode(Mode::TearOut, inches(0.875), PlyBolt::default(), method)?;
/// let tear_out = outcome.found().unwrap();
/// assert!((tear_out.resistance.at(Level::Design)?.get::<kip>() - 20.2).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyResistance {
    /// Mode of failure.
    pub mode: Mode,
    /// The method.
    pub method: PlyMethod,
    /// The ply.
    pub ply: Ply,
    /// Bolt diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// The bolt.
    pub bolt: PlyBolt,
    /// What multiplies stress and area.
    pub coefficient: f64,
    /// The strength that is used: of the ply, or of the bolt where the ply bears on it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
    /// The area it acts on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load.
    pub safety_factor: Option<f64>,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
    /// Clause of the method the resistance follows.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub clause: &'static Method,
    /// How the area follows from the ply, for the working.
    pub(in crate::strength) area_formula: &'static str,
    /// The size of the hole that stands in the way, for the working.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub(in crate::strength) hole_size: Length,
}

impl PlyResistance {
    /// Checks the load of one bolt against the resistance of ply number `ply`, counted from 1 at the head.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a load
    /// that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::{Level, Mode, Place};
    /// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, inches(0.5), inches(0.8125));
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// let outcome = plate.in_mode(Mode::Bearing, inches(0.75), PlyBolt::default(), method)?;
    /// let check = outcome.found().unwrap().check(pounds_force(5000.0), Level::Allowable, 2)?;
    /// assert_eq!(check.place, Place::Ply(2));
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force, level: Level, ply: usize) -> Result<Check, Error> {
        let check = Check::new(
            self.mode,
            Place::Ply(ply),
            load,
            self.resistance.at(level)?,
            level,
            self.clause,
        )?;
        Ok(check.warned(self.cautions()))
    }

    /// What the user must be told.
    ///
    /// ```
    /// # use shankline::strength::ply::PlyResistance;
    /// fn print(resistance: &PlyResistance) {
    ///     for caution in resistance.cautions().iter() {
    ///         println!("{caution}");
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.method
            .cautions(self.mode, self.ply.hole_kind, self.stress)
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, inches(0.5), inches(0.8125));
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// for mode in plate.assess(inches(0.75), PlyBolt::default(), method)? {
    ///     if let Some(found) = mode.outcome.found() {
    ///         found.derivation().check()?;
    ///     }
    /// }
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let ply = &self.ply;
        let mut area = Step::new("area", "A", self.area_formula, self.area)
            .with("t", ply.thickness)
            .with("d", self.diameter)
            .with("dh", self.hole_size)
            .with("in", inches(1.0))
            .with("mm", millimetres(1.0));
        for (symbol, length) in [
            ("e1", ply.end_distance),
            ("p1", ply.pitch),
            ("w", ply.width),
        ] {
            if let Some(length) = length {
                area = area.with(symbol, length);
            }
        }
        let coefficient = if en_1993::ply::is_by_table_3_4(self) {
            en_1993::ply::bearing_working(self)
        } else if self.method == PlyMethod::Is800 && self.mode == Mode::Bearing {
            is_800::ply::bearing_working(self)
        } else {
            Derivation::new("")
                .step(Step::given("coefficient", "c", self.coefficient).source(self.clause))
        };
        let mut derivation = Derivation::new(alloc::format!("Ply: {}", self.mode))
            .and(coefficient)
            .step(self.strength_step())
            .step(area);
        let (what, symbol, load) = match (self.resistance.nominal, self.resistance.design) {
            (Some(nominal), _) => ("nominal resistance", "Rn", nominal),
            (None, Some(design)) => ("design resistance", "Rd", design),
            (None, None) => return derivation,
        };
        derivation = derivation.step(
            Step::new(what, symbol, "c * F * A", load)
                .with("c", self.coefficient)
                .with("F", self.stress)
                .with("A", self.area),
        );
        self.resistance
            .factored(derivation, self.resistance_factor, self.safety_factor)
    }

    /// The strength, by its formula where it has one.
    fn strength_step(&self) -> Step {
        let tears = self.method == PlyMethod::CsaS16 && self.mode == Mode::TearOut;
        match (self.ply.yield_strength, self.ply.tensile_strength) {
            (Some(fy), Some(fu)) if tears && self.stress > fy => {
                Step::new("strength", "F", "(fy + fu) / 2", self.stress)
                    .with("fy", fy)
                    .with("fu", fu)
            }
            _ => Step::given("strength", "F", self.stress),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::strength::ply::{Ply, PlyBolt};
    use crate::units::megapascals;

    /// CSA S16 13.11: the mean of yield and tensile strength tears out up to 460 MPa, the yield strength alone above it; the working
    /// says which.
    #[test]
    fn strengths_of_csa_s16_in_the_working() {
        for (fy, fu, mean) in [
            (350.0, 450.0, true),
            (460.0, 570.0, true),
            (480.0, 590.0, false),
        ] {
            let ply = Ply {
                yield_strength: Some(megapascals(fy)),
                tensile_strength: Some(megapascals(fu)),
                end_distance: Some(millimetres(40.0)),
                ..Ply::without_strengths(millimetres(10.0), millimetres(22.0))
            };
            let outcome = ply.in_mode(
                Mode::TearOut,
                millimetres(20.0),
                PlyBolt::default(),
                PlyMethod::CsaS16,
            );
            let outcome = outcome.unwrap();
            let working = outcome.found().unwrap().derivation();
            working.check().unwrap();
            let step = working
                .steps()
                .iter()
                .find(|step| step.symbol() == "F")
                .unwrap();
            assert_eq!(step.formula() == "(fy + fu) / 2", mean, "{fy}");
        }
    }
}
