//! Resistance of a bolt to a load along its axis, thread in tension.
//!
//! | method | load | factors | known how |
//! |---|---|---|---|
//! | [`Proof`](TensionMethod::Proof) | Sp At; 0.85 Sy At for grades without a proof stress | allowable = nominal / nd | Shigley, Mechanical Engineering Design, 9th ed., chapter 8 |
//! | [`Aisc360`](TensionMethod::Aisc360) | Fnt A, with Fnt of Table J3.2: A325 90 ksi, A490 113 ksi, A307 45 ksi, other material 0.75 Fu | design = 0.75 nominal, allowable = nominal / 2.00 | 2005, 2010 and 2022 read, 2016 by its rule |
//! | [`En1993`](TensionMethod::En1993) | 0.9 fub As, countersunk 0.63 fub As | design = nominal / 1.25 | EN 1993-1-8:2005 Table 3.4, its page read |
//! | [`Bs5950Simple`](TensionMethod::Bs5950Simple) | 0.8 pt At, for the load without prying | pt is a design strength | reproduced: a table of a designers' manual |
//! | [`Bs5950Exact`](TensionMethod::Bs5950Exact) | pt At, for the load with prying counted | pt is a design strength | reproduced |
//! | [`Is800`](TensionMethod::Is800) | 0.9 fub At, at most fyb A x 1.25 / 1.10 | design = nominal / 1.25 | reproduced: a worked hanger, a table of bolts |
//! | [`As4100`](TensionMethod::As4100) | fuf At | design = 0.80 nominal | reproduced: a table of a maker's handbook |
//! | [`CsaS16`](TensionMethod::CsaS16) | 0.75 Fu A | design = 0.80 nominal | reproduced: two public calculations that cite the clause |
//! | [`MilHdbk5`](TensionMethod::MilHdbk5) | Ftu Ar | allowable at limit load = nominal / (ultimate factor x fitting factor) | recalled; the loads of AN bolts, recalled too, are it within 1 % |
//!
//! A is the shank area, At = As the tensile stress area, Ar the area at the thread root: AISC puts the threads into its stress, the
//! others into the area. Preload is not taken off: in a joint that stays closed the bolt feels only a
//! part of the load; these resistances are for the whole load on the bolt, prying included, except that of
//! the simple method of BS 5950, which has prying in its 0.8.
//!
//! The second limit of IS 800 is the yield of the shank: it governs class 4.6 from about M14 on. The shank is taken as full
//! also of screws that are threaded to the head, where the code names no other section.
//!
//! A307 bolts by AISC lose 1 % for each 1/16 in of grip over 5 diameters, in tension as in shear.

use super::check::{Check, Level, Mode, Place, Resistance};
use super::code::{
    aisc_360, as_4100, at_limit_load, bs_5950, csa_s16, en_1993, is_800, machine_design, mil_hdbk_5,
};
use super::section::{Base, Origins, Section, StressOf};
use super::shear::{AiscEdition, ReductionNeed, ReductionNeeds};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step, StepSource};
use crate::error::{Error, sane_length};
use crate::material::{BoltGrade, BoltStrength, PROOF_OF_YIELD};
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Area, Force, Length, Stress, inches};

mod method;

pub use method::{HeadShape, TensionMethod};

/// Resistance of one bolt to tension.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
/// use shankline::strength::check::Level;
/// use shankline::uom::si::force::kilonewton;
/// # fn main() -> Result<(), shankline::Error> {
/// // M20 class 8.8: 0.9 x 800 x 245 / 1.25 = 141 kN, as tension tables print it
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// let method = TensionMethod::En1993;
/// let tension = bolt_tension(&thread, &strength, method, HeadShape::OnFace, None)?;
/// assert!((tension.resistance.at(Level::Design)?.get::<kilonewton>() - 141.0).abs() < 0.5);
/// // With a countersunk head 0.63 takes the place of 0.9.
/// let sunk = bolt_tension(&thread, &strength, method, HeadShape::Countersunk, None)?;
/// assert!(((sunk.resistance.at(Level::Design)? / tension.resistance.at(Level::Design)?).value - 0.7).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltTension {
    /// The method.
    pub method: TensionMethod,
    /// The bolt material.
    pub grade: BoltGrade,
    /// The area the stress is taken on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// The stress of the method on that area. By IS 800 the shank may yield before: then the resistance is less than stress
    /// times area.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
    /// Shape of the head.
    pub head: HeadShape,
    /// Grip, if it is known.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub grip: Option<Length>,
    /// What was taken off for a long grip: 1 where nothing was.
    pub grip_factor: f64,
    /// Facts of the connection that were not given and for which this method may lower the capacity: until
    /// they are known the resistance is not safe to use.
    pub unknown: ReductionNeeds,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load.
    pub safety_factor: Option<f64>,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
    /// Whether the yield strength stands in for a proof stress.
    #[cfg_attr(feature = "serde", serde(skip))]
    by_yield: bool,
    #[cfg_attr(feature = "serde", serde(skip))]
    origins: Origins,
    /// What the shank bears at yield, where the method limits the resistance by it.
    #[cfg_attr(feature = "serde", serde(skip))]
    shank: Option<Shank>,
}

/// The shank at yield, IS 800.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Shank {
    yield_strength: Stress,
    stress: Stress,
    load: Force,
}

/// The proof stress, or Shigley's substitute for one.
fn proof_stress(strength: &BoltStrength) -> Result<StressOf, Error> {
    let base = |what, symbol, value| Base {
        what,
        symbol,
        value,
        table: None,
    };
    match (strength.proof_stress, strength.yield_strength) {
        (Some(proof), _) => {
            let base = base("proof stress", "Sp", proof);
            Ok(StressOf::share(1.0, base, "Sp"))
        }
        (None, Some(yielding)) => {
            let base = base("yield strength", "Sy", yielding);
            Ok(StressOf::share(PROOF_OF_YIELD, base, "0.85 * Sy"))
        }
        (None, None) => Err(Error::NoValue {
            quantity: "proof stress",
            subject: alloc::format!("{}", strength.grade),
            reason: "its standard gives neither that nor a yield strength",
        }),
    }
}

/// Resistance of one bolt to tension by a method.
///
/// `head` follows from the seat of the bolt; only EN 1993-1-8 takes less for a countersunk one. `grip` is the
/// thickness of all plies together; where it is not given and the method would ask for it,
/// [`unknown`](BoltTension::unknown) says so.
///
/// AISC takes 1 % off A307 bolts for each 1/16 in of grip over 5 d. In the table of 2005 the mark stands at
/// tension and shear (reproduced); where it stands later was not read, and the less is taken.
///
/// # Errors
///
/// [`Error::NoValue`] if the grade has neither proof stress nor yield strength, or the code lists no such bolt;
/// [`Error::OutOfRange`] for a design factor that is not from 1 to 100, a grip that is not positive and finite
/// or leaves an A307 bolt nothing; [`Error::Mismatch`] if the strengths hold for another diameter.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let strength = AstmGrade::A307A.strength(inches(0.75))?;
/// // A307 has no proof load and no yield strength: none is made up
/// let proof = TensionMethod::Proof { design_factor: 2.0 };
/// assert!(bolt_tension(&thread, &strength, proof, HeadShape::OnFace, None).is_err());
/// # Ok(())
/// # }
/// ```
pub fn bolt_tension(
    thread: &Thread,
    strength: &BoltStrength,
    method: TensionMethod,
    head: HeadShape,
    grip: Option<Length>,
) -> Result<BoltTension, Error> {
    strength.matches(thread)?;
    let grade = strength.grade;
    let grip = grip.map(|grip| sane_length("grip", grip)).transpose()?;
    let (stress, section, factors) = match method {
        TensionMethod::Proof { design_factor } => (
            proof_stress(strength)?,
            Section::Stress,
            machine_design::factors(design_factor)?,
        ),
        TensionMethod::Aisc360 { edition } => (
            aisc_360::tension(edition, strength)?,
            Section::Shank,
            aisc_360::FACTORS,
        ),
        TensionMethod::En1993 => (
            en_1993::tension(grade, head == HeadShape::Countersunk)?,
            Section::Stress,
            en_1993::FACTORS,
        ),
        TensionMethod::Bs5950Simple | TensionMethod::Bs5950Exact => (
            bs_5950::tension(grade, method == TensionMethod::Bs5950Simple)?,
            Section::Stress,
            bs_5950::FACTORS,
        ),
        TensionMethod::Is800 => (is_800::tension(strength), Section::Stress, is_800::FACTORS),
        TensionMethod::As4100 => (
            as_4100::tension(strength),
            Section::Stress,
            as_4100::FACTORS,
        ),
        TensionMethod::CsaS16 => (csa_s16::tension(strength), Section::Shank, csa_s16::FACTORS),
        TensionMethod::MilHdbk5 {
            ultimate_factor,
            fitting_factor,
        } => (
            mil_hdbk_5::tension(strength),
            Section::Root,
            at_limit_load(ultimate_factor, fitting_factor)?,
        ),
    };
    let shank = match method {
        TensionMethod::Is800 => Some(Shank::of(thread, strength)?),
        _ => None,
    };
    let needs = method.needs(grade);
    let asked = needs.contains(ReductionNeed::Grip);
    let grip_factor = match grip {
        Some(grip) if asked => aisc_360::grip_of_a307(grip, thread.nominal_diameter())?.value,
        _ => 1.0,
    };
    let area = section.area(thread);
    let load = grip_factor * (stress.stress * area);
    let load = shank.map_or(load, |shank| load.min(shank.load));
    let resistance = factors.resistance(load).sound()?;
    Ok(BoltTension {
        method,
        grade,
        area,
        stress: stress.stress,
        head,
        grip,
        grip_factor,
        unknown: if grip.is_none() {
            needs
        } else {
            ReductionNeeds::default()
        },
        resistance_factor: factors.resistance,
        safety_factor: factors.safety,
        resistance,
        by_yield: matches!(method, TensionMethod::Proof { .. }) && strength.proof_stress.is_none(),
        origins: Origins {
            thread: *thread,
            section,
            stress,
            strengths: strength.provenance,
        },
        shank,
    })
}

impl Shank {
    fn of(thread: &Thread, strength: &BoltStrength) -> Result<Self, Error> {
        let (yield_strength, stress) = is_800::yield_of_shank(strength)?;
        Ok(Self {
            yield_strength,
            stress,
            load: stress * thread.shank_area(),
        })
    }
}

impl BoltTension {
    /// The same on the tensile stress area as the tables print it (M20 245 mm2, by the formula 244.79 mm2), as the
    /// printed resistances of codes and handbooks are worked out.
    ///
    /// Methods on the shank stay as they are.
    ///
    /// Source of the areas: [`Thread::provenance`].
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a special thread, which no table has.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
    /// use shankline::strength::check::Level;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M14".parse()?;
    /// let strength = PropertyClass::Class8_8.strength(millimetres(14.0))?;
    /// let tension = bolt_tension(&thread, &strength, TensionMethod::En1993, HeadShape::OnFace, None)?;
    /// let printed = tension.on_printed_area()?;
    /// // 0.9 x 800 x 115 / 1.25; the formula has 115.44 mm2
    /// assert!((printed.resistance.at(Level::Design)? - newtons(66_240.0)).abs() < newtons(0.5));
    /// printed.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn on_printed_area(mut self) -> Result<Self, Error> {
        let section = self.origins.section.as_printed(&self.origins.thread)?;
        let area = section.area(&self.origins.thread);
        self.resistance = match (self.shank, self.resistance_factor) {
            (Some(shank), Some(factor)) => {
                let load = (self.stress * area).min(shank.load);
                Resistance::from_levels(Some(load), Some(factor * load), None)?
            }
            _ => self.resistance.times((area / self.area).value).sound()?,
        };
        self.area = area;
        self.origins.section = section;
        Ok(self)
    }

    /// Checks a load on the bolt against its resistance.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a
    /// load that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
    /// use shankline::strength::check::Level;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
    /// let method = TensionMethod::Proof { design_factor: 2.0 };
    /// let tension = bolt_tension(&thread, &strength, method, HeadShape::OnFace, None)?;
    /// let check = tension.check(pounds_force(3000.0), Level::Allowable)?;
    /// assert!((check.utilisation.value - 0.497).abs() < 0.001); // 85 ksi x 0.1419 in2 / 2
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force, level: Level) -> Result<Check, Error> {
        let resistance = self.resistance.at(level)?;
        let method = if self.by_yield {
            methods::SUBSTITUTE_PROOF_LOAD
        } else {
            self.method.method()
        };
        let place = Place::Bolt(1);
        let check = Check::new(Mode::BoltTension, place, load, resistance, level, method)?;
        Ok(check.warned(self.cautions()))
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
    /// let method = TensionMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// let tension = bolt_tension(&"1/2-13 UNC".parse()?, &strength, method, HeadShape::OnFace, None)?;
    /// assert_eq!(tension.cautions().iter().count(), 1); // written for ASTM bolts
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        match self.method {
            TensionMethod::Aisc360 { edition } => {
                let long = self.grip_factor < 1.0 && edition != AiscEdition::E2005;
                aisc_360::cautions(edition, self.grade).with(
                    long.then_some(methods::AISC_360_TABLE_J3_2_LONG_GRIP_OF_A307_BOLTS_IN_TENSION)
                        .and_then(Caution::of_method),
                )
            }
            TensionMethod::En1993 => en_1993::cautions(self.grade),
            TensionMethod::Bs5950Simple => Cautions::default().with(Caution::of_method(
                methods::BS_5950_1_6_3_4_2_WHERE_THE_SIMPLE_METHOD_MAY_BE_USED,
            )),
            TensionMethod::Bs5950Exact | TensionMethod::Proof { .. } => Cautions::default(),
            TensionMethod::Is800 => is_800::cautions(self.method.method(), self.grade),
            TensionMethod::As4100 => as_4100::cautions(self.method.method(), self.grade),
            TensionMethod::CsaS16 => csa_s16::cautions(self.method.method(), self.grade),
            TensionMethod::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            } => Cautions::default()
                .with(Caution::of_method(self.method.method()))
                .and(mil_hdbk_5::low_factors(ultimate_factor, fitting_factor)),
        }
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let strength = SaeGrade::Grade5.strength(inches(0.5))?;
    /// let method = TensionMethod::Proof { design_factor: 2.0 };
    /// let tension = bolt_tension(&"1/2-13 UNC".parse()?, &strength, method, HeadShape::OnFace, None)?;
    /// tension.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new("Tension of the bolt");
        let mut derivation = self
            .origins
            .steps(derivation, self.method.method(), "stress", "F");
        let reduced = self.grip_factor < 1.0;
        if let (true, Some(grip)) = (reduced, self.grip) {
            let terms = [
                ("G", grip),
                ("d", self.origins.thread.nominal_diameter()),
                ("in", inches(1.0)),
            ];
            if let Ok(factor) = aisc_360::grip_of_a307(grip, self.origins.thread.nominal_diameter())
            {
                let source = Some(methods::AISC_360_TABLE_J3_2_A307_BOLTS);
                derivation = factor.step(derivation, "for the grip", "kg", source, &terms);
            }
        }
        if let Some(shank) = self.shank {
            let known: StepSource = match self.origins.strengths {
                Some(provenance) => provenance.into(),
                None => methods::STATED_BY_THE_CALLER.into(),
            };
            derivation = derivation
                .step(Step::given("yield strength", "fyb", shank.yield_strength).source(known))
                .step(
                    Step::new(
                        "strength of the shank at yield",
                        "Fy",
                        "1.25 / 1.10 * fyb",
                        shank.stress,
                    )
                    .with("fyb", shank.yield_strength)
                    .source(self.method.method()),
                )
                .step(
                    Step::new(
                        "shank area",
                        "Asb",
                        "pi / 4 * d^2",
                        self.origins.thread.shank_area(),
                    )
                    .with("d", self.origins.thread.nominal_diameter()),
                );
        }
        let (what, symbol, load) = match (self.resistance.nominal, self.resistance.design) {
            (Some(nominal), _) => ("nominal resistance", "Rn", nominal),
            (None, Some(design)) => ("design resistance", "Rd", design),
            (None, None) => return derivation,
        };
        let formula = match (reduced, self.shank) {
            (true, _) => "F * A * kg",
            (false, Some(_)) => "min(F * A, Fy * Asb)",
            (false, None) => "F * A",
        };
        let mut step = Step::new(what, symbol, formula, load)
            .with("F", self.stress)
            .with("A", self.area);
        if reduced {
            step = step.with("kg", self.grip_factor);
        }
        if let Some(shank) = self.shank {
            step = step
                .with("Fy", shank.stress)
                .with("Asb", self.origins.thread.shank_area());
        }
        self.resistance.factored(
            derivation.step(step),
            self.resistance_factor,
            self.safety_factor,
        )
    }
}

#[cfg(test)]
mod tests;
