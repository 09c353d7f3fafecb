//! Grades and property classes of bolts and nuts, and how strong they are at a size.
//!
//! | question | begins at |
//! |---|---|
//! | strengths of a grade at a size, or at a size and length | [`BoltGrade::strength`], [`BoltGrade::strength_at_length`] |
//! | proof, yield and tensile load of a bolt | [`BoltStrength::loads`] |
//! | how hot and cold a bolt may be, how strong it is then | [`BoltGrade::service_temperatures`], [`BoltStrength::at_temperature`] |
//! | a material that is not in the tables | [`BoltStrength::stated`] |
//! | proof load of a nut | [`NutGrade::strength`], [`NutStrength::proof_load`] |
//! | which nut a standard names for a bolt | [`NutPairing`](crate::tables::nut_grades::NutPairing) |
//! | whether two coated threads go together | [`coated_fit`] |
//! | what plating or hot dipping does to a hard bolt | [`hydrogen`] |
//! | what the marks on a head mean | [`HeadMark`](crate::tables::head_marks::HeadMark) |
//!
//! Strengths are specified minima. A strength that the standard does not give is `None`: ASTM A307, A193 and F593
//! and ISO 3506-1 state no proof stress.

use alloc::{format, string::ToString};

mod astm;
mod finish;
mod fit;
mod heat;
mod hydrogen;
mod iso;
mod nut;
mod sae;
mod stainless;

pub use crate::names::{AstmGrade, BoltGrade, NutGrade, PropertyClass, SaeGrade, StainlessClass};
pub use finish::{Finish, NutTapping, Severity};
pub use fit::{CoatedFit, FitNote, Misfit, ThreadSystem, coated_fit};
pub use heat::{BoltTemperatures, HotBoltStrength};
pub use hydrogen::{Hydrogen, hydrogen};
pub use nut::NutStrength;

use crate::caution::{Caution, Cautions, StatedPart};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::names::Key;
use crate::source::{Basis, Provenance};
use crate::tables::galvanic::Metal;
use crate::tables::{ONLY_WITNESSES, nanometres};
use crate::thread::Thread;
use crate::units::{Area, Force, Length, Stress};

/// Whether a class of ISO 3506 is one of the martensitic steels with about 12 % of chromium.
fn of_little_chromium(label: &str) -> bool {
    label.contains("class C1") || label.contains("class C4")
}

/// Shigley's substitute for a proof stress that is not given: Sp = 0.85 Sy (Mechanical Engineering Design, 9th ed.,
/// chapter 8).
pub(crate) const PROOF_OF_YIELD: f64 = 0.85;

/// Specified minimum strengths of a grade at a size.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// assert_eq!(strength.proof_stress, Some(megapascals(600.0)));
/// assert_eq!(strength.tensile_strength, megapascals(830.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltStrength {
    /// The grade.
    pub grade: BoltGrade,
    /// The nominal diameter the strengths hold for.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Proof stress Sp: proof load over tensile stress area. None where the standard gives none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub proof_stress: Option<Stress>,
    /// How the proof stress is known, where that is not said by `provenance`.
    pub proof_basis: Option<Basis>,
    /// Minimum yield strength Sy. None where the standard gives none.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yield_strength: Option<Stress>,
    /// Minimum tensile strength Su.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// The longest screw these values hold for, where the standard sets such a limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_limit: Option<Length>,
    /// What the row of the standard warns of.
    pub note: Option<&'static str>,
    /// Whether hexagon bolts or screws are made of the grade, and not only studs, sems, structural
    /// bolts or socket screws.
    pub for_screws: bool,
    /// Source of the values; none where the caller states them.
    pub provenance: Option<Provenance>,
}

/// Axial loads at which a bolt reaches its specified strengths.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::pound_force;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "1/2-13 UNC".parse()?;
/// let loads = SaeGrade::Grade5.strength(thread.nominal_diameter())?.loads(&thread)?;
/// // SAE J429 prints 12 100 lbf, rounded up from 85 ksi x 0.1419 in2
/// assert!((loads.proof.unwrap().get::<pound_force>() - 12_060.0).abs() < 10.0);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltLoads {
    /// The tensile stress area the loads are taken on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_stress_area: Area,
    /// Proof load Sp As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub proof: Option<Force>,
    /// Load at the minimum yield strength, Sy As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub yielding: Option<Force>,
    /// Minimum breaking load Su As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile: Force,
}

impl BoltStrength {
    /// Strengths the caller states, from a mill certificate or a standard this crate does not hold.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless all values are positive and finite, and neither proof stress nor
    /// yield strength is above the tensile strength.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // From a mill certificate (invented): 85, 92 and 120 ksi.
    /// let bolt = BoltStrength::stated(inches(0.75), Some(ksi(85.0)), Some(ksi(92.0)), ksi(120.0))?;
    /// assert!(bolt.provenance.is_none());
    /// # Ok(())
    /// # }
    /// ```
    pub fn stated(
        nominal_diameter: Length,
        proof_stress: Option<Stress>,
        yield_strength: Option<Stress>,
        tensile_strength: Stress,
    ) -> Result<Self, Error> {
        positive("nominal diameter", nominal_diameter)?;
        positive("tensile strength", tensile_strength)?;
        let named = [
            ("proof stress", proof_stress),
            ("yield strength", yield_strength),
        ];
        for (quantity, stress) in named {
            let Some(stress) = stress else { continue };
            positive(quantity, stress)?;
            if stress > tensile_strength {
                let allowed = Allowed::AtMost(tensile_strength.into());
                return Err(out_of_range(quantity, stress, allowed));
            }
        }
        Ok(Self {
            proof_stress,
            yield_strength,
            ..Self::of(BoltGrade::Stated, nominal_diameter, tensile_strength)
        })
    }

    /// What every grade has; the rest is for the caller to add.
    fn of(grade: impl Into<BoltGrade>, nominal_diameter: Length, tensile_strength: Stress) -> Self {
        Self {
            grade: grade.into(),
            nominal_diameter,
            proof_stress: None,
            proof_basis: None,
            yield_strength: None,
            tensile_strength,
            length_limit: None,
            note: None,
            for_screws: true,
            provenance: None,
        }
    }

    /// Proof, yield and tensile load of a bolt with this thread, on the formula stress area
    /// ([`Thread::tensile_stress_area`]).
    ///
    /// Standards print these loads from the rounded area and round them again, so a printed load
    /// may differ by up to about one per cent.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] if the strengths hold for another nominal diameter; those of
    /// [`loads_on`](Self::loads_on).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let strength = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
    /// let loads = strength.loads(&thread)?;
    /// assert!(loads.proof < loads.yielding && loads.yielding < Some(loads.tensile));
    /// assert!(strength.loads(&"M20".parse()?).is_err()); // class 8.8 is stronger at M20
    /// # Ok(())
    /// # }
    /// ```
    pub fn loads(&self, thread: &Thread) -> Result<BoltLoads, Error> {
        self.matches(thread)?;
        self.loads_on(thread.tensile_stress_area())
    }

    /// The same loads on a given area, such as the printed one.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an area that is not positive and finite, and for stated strengths so
    /// great or small that the load is not.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::pound_force;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let loads = SaeGrade::Grade8.strength(inches(0.75))?.loads_on(square_inches(0.334))?;
    /// assert!((loads.tensile.get::<pound_force>() - 50_100.0).abs() < 1e-6);
    /// # Ok(())
    /// # }
    /// ```
    pub fn loads_on(&self, area: Area) -> Result<BoltLoads, Error> {
        positive("tensile stress area", area)?;
        let load = |quantity, stress: Stress| positive(quantity, stress * area);
        let optional = |quantity, stress: Option<Stress>| {
            stress.map(|stress| load(quantity, stress)).transpose()
        };
        Ok(BoltLoads {
            tensile_stress_area: area,
            proof: optional("proof load", self.proof_stress)?,
            yielding: optional("load at yield", self.yield_strength)?,
            tensile: load("breaking load", self.tensile_strength)?,
        })
    }

    /// The working of the [`loads`](Self::loads) of a thread: its areas, the strengths, the loads.
    ///
    /// # Errors
    ///
    /// Those of [`loads`](Self::loads).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let strength = SaeGrade::Grade8.strength(inches(0.75))?;
    /// let derivation = strength.load_derivation(&"3/4-10 UNC".parse()?)?;
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().last().unwrap().what(), "breaking load");
    /// # Ok(())
    /// # }
    /// ```
    pub fn load_derivation(&self, thread: &Thread) -> Result<Derivation, Error> {
        let loads = self.loads(thread)?;
        let title = alloc::format!("Loads of a {thread} bolt, {}", self.grade);
        let mut derivation = Derivation::new(title).and(thread.area_derivation());
        let source = match self.provenance {
            Some(provenance) => alloc::format!("{provenance}"),
            None => "stated by the caller".into(),
        };
        for (stress, symbol, strength, load, load_symbol, formula, value) in [
            (
                "proof stress",
                "Sp",
                self.proof_stress,
                "proof load",
                "Fp",
                "Sp * At",
                loads.proof,
            ),
            (
                "yield strength",
                "Sy",
                self.yield_strength,
                "load at yield",
                "Fy",
                "Sy * At",
                loads.yielding,
            ),
            (
                "tensile strength",
                "Su",
                Some(self.tensile_strength),
                "breaking load",
                "Fu",
                "Su * At",
                Some(loads.tensile),
            ),
        ] {
            if let (Some(strength), Some(value)) = (strength, value) {
                derivation = derivation
                    .step(Step::given(stress, symbol, strength).source(source.clone()))
                    .step(
                        Step::new(load, load_symbol, formula, value)
                            .with(symbol, strength)
                            .with("At", loads.tensile_stress_area),
                    );
            }
        }
        Ok(derivation)
    }

    /// What the user of these strengths must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(SaeGrade::Grade8.strength(inches(0.5))?.cautions().iter().count(), 0);
    /// // For studs, and read in one document alone.
    /// assert_eq!(SaeGrade::Grade4.strength(inches(0.5))?.cautions().iter().count(), 2);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let stated = self.provenance.is_none().then_some(Caution::Stated {
            part: StatedPart::BoltStrength,
        });
        let product = (!self.for_screws).then_some(Caution::NotForScrews);
        let memory = self
            .provenance
            .and_then(|provenance| Caution::from_memory("bolt strength", provenance));
        let proof = match (self.provenance, self.proof_basis) {
            // Said already of the whole row.
            _ if memory.is_some() => None,
            (Some(Provenance { source, .. }), Some(basis)) => {
                Caution::from_memory("proof stress", Provenance { source, basis })
            }
            _ => None,
        };
        Cautions::default()
            .with(stated)
            .with(product)
            .with(memory)
            .with(proof)
            .with(self.one_witness())
    }

    /// What a grade says whose strengths one document alone has.
    fn one_witness(&self) -> Option<Caution> {
        let provenance = self.provenance?;
        let size = nanometres(self.nominal_diameter);
        let only = ONLY_WITNESSES.iter().any(|(grade, over, thru)| {
            *grade == self.grade
                && over.is_none_or(|over| nanometres(over) < size)
                && size <= nanometres(*thru)
        });
        only.then_some(Caution::OneWitness {
            grade: self.grade.label(),
            provenance,
        })
    }

    /// Refuses a thread of another nominal diameter than the strengths hold for.
    #[inline]
    pub(crate) fn matches(&self, thread: &Thread) -> Result<(), Error> {
        let (own, other) = (self.nominal_diameter, thread.nominal_diameter());
        // Mostly the same bits; otherwise 19.05 mm may stand against 3/4 in.
        if own == other || nanometres(own) == nanometres(other) {
            Ok(())
        } else {
            Err(self.other_size(thread))
        }
    }

    #[cold]
    fn other_size(&self, thread: &Thread) -> Error {
        Error::Mismatch(format!(
            "the strengths are those of a nominal diameter of {}, not of {thread}",
            crate::error::Amount::from(self.nominal_diameter)
        ))
    }
}

impl BoltGrade {
    /// Whether it is a grade of stainless steel: ISO 3506-1, ASTM F593, and ASTM A193 B6, B8 and B8M.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(BoltGrade::from(AstmGrade::A193B8Class1).is_stainless());
    /// assert!(!BoltGrade::from(AstmGrade::A193B7).is_stainless());
    /// ```
    #[must_use]
    pub fn is_stainless(self) -> bool {
        use AstmGrade as G;
        match self {
            Self::Stainless(_)
            | Self::Astm(
                G::A193B6 | G::A193B8Class1 | G::A193B8Class2 | G::A193B8mClass1 | G::A193B8mClass2,
            ) => true,
            Self::Astm(grade) => grade.standard() == "F593",
            _ => false,
        }
    }

    /// What a stainless grade is made of, bare; none of others. ISO 3506-1 C1 and C4 and ASTM A193 B6 have about 12 % of
    /// chromium.
    pub(crate) fn stainless_metal(self) -> Option<Metal> {
        let label = self.to_string();
        let little = self == Self::Astm(AstmGrade::A193B6) || of_little_chromium(&label);
        self.is_stainless().then_some(if little {
            Metal::Stainless12Chromium
        } else {
            Metal::Stainless18Chromium
        })
    }

    /// Specified strengths of this grade at a nominal diameter.
    ///
    /// Where the standard distinguishes lengths (SAE J429 grade 2: over 6 in the strengths of
    /// grade 1) this gives the row for the shorter screws, with its limit in
    /// [`BoltStrength::length_limit`]; [`strength_at_length`](Self::strength_at_length) decides.
    ///
    /// Source: SAE J429 Table 1; ISO 898-1 (2009, 2013) Table 3; ISO 3506-1; the ASTM standards named
    /// in [`AstmGrade`]. Size ranges are "over 1 in through 1-1/2 in", so a special size just over 1 in
    /// is already in the upper range.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if the standard does not cover the size; the message gives the range
    /// of the grade.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let grade = BoltGrade::from(SaeGrade::Grade5);
    /// assert_eq!(grade.strength(inches(1.0))?.proof_stress, Some(ksi(85.0)));
    /// assert_eq!(grade.strength(inches(1.001))?.proof_stress, Some(ksi(74.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(self, diameter: Length) -> Result<BoltStrength, Error> {
        self.look_up(diameter, None)
    }

    /// [`AstmGrade::is_a325`]; no grade of another standard is.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(!BoltGrade::from(PropertyClass::Class8_8).is_a325());
    /// ```
    #[must_use]
    pub const fn is_a325(self) -> bool {
        matches!(self, Self::Astm(grade) if grade.is_a325())
    }

    /// [`AstmGrade::is_a490`]; no grade of another standard is.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(BoltGrade::from(AstmGrade::F3125A490m).is_a490());
    /// ```
    #[must_use]
    pub const fn is_a490(self) -> bool {
        matches!(self, Self::Astm(grade) if grade.is_a490())
    }

    /// Specified strengths of this grade at a nominal diameter and screw length.
    ///
    /// # Errors
    ///
    /// As [`strength`](Self::strength); also for a length that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let grade = BoltGrade::from(SaeGrade::Grade2);
    /// assert_eq!(grade.strength_at_length(inches(0.5), inches(6.0))?.tensile_strength, ksi(74.0));
    /// assert_eq!(grade.strength_at_length(inches(0.5), inches(6.5))?.tensile_strength, ksi(60.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength_at_length(
        self,
        diameter: Length,
        length: Length,
    ) -> Result<BoltStrength, Error> {
        self.look_up(diameter, Some(positive("screw length", length)?))
    }

    fn look_up(self, diameter: Length, length: Option<Length>) -> Result<BoltStrength, Error> {
        positive("nominal diameter", diameter)?;
        match self {
            Self::Sae(grade) => at_size(self, diameter, sae::rows(grade, diameter, length)),
            Self::Iso(class) => at_size(self, diameter, iso::rows(class, diameter)),
            Self::Astm(grade) => at_size(self, diameter, astm::rows(grade, diameter)),
            Self::Stainless(class) => at_size(self, diameter, stainless::rows(class, diameter)),
            Self::Stated => Err(Error::NoValue {
                quantity: "strength",
                subject: self.to_string(),
                reason: "the caller states it",
            }),
        }
    }
}

/// The nominal sizes a row of a grade is for; an open end has no limit.
#[derive(Clone, Copy)]
struct Sizes {
    from: Option<Length>,
    over: Option<Length>,
    thru: Option<Length>,
}

impl Sizes {
    fn cover(&self, diameter: Length) -> bool {
        let size = nanometres(diameter);
        self.from.is_none_or(|from| nanometres(from) <= size)
            && self.over.is_none_or(|over| nanometres(over) < size)
            && self.thru.is_none_or(|thru| size <= nanometres(thru))
    }
}

/// The strengths of the row that covers a size, or an error with the whole range of the grade.
fn at_size(
    grade: BoltGrade,
    diameter: Length,
    rows: impl Iterator<Item = (Sizes, BoltStrength)> + Clone,
) -> Result<BoltStrength, Error> {
    match rows.clone().find(|(sizes, _)| sizes.cover(diameter)) {
        Some((_, strength)) => Ok(strength),
        None => Err(out_of_range(
            format!("nominal diameter for {grade}"),
            diameter,
            widest(rows.map(|(sizes, _)| sizes), diameter),
        )),
    }
}

/// The range all rows cover together, seen from a diameter outside it.
#[cold]
fn widest(rows: impl Iterator<Item = Sizes>, diameter: Length) -> Allowed {
    let (mut from, mut over, mut thru) = (None::<Length>, None::<Length>, None::<Length>);
    let least = |a: Option<Length>, b: Length| Some(a.map_or(b, |a| a.min(b)));
    for sizes in rows {
        from = sizes.from.map_or(from, |low| least(from, low));
        over = sizes.over.map_or(over, |above| least(over, above));
        thru = sizes
            .thru
            .map_or(thru, |high| Some(thru.map_or(high, |t| t.max(high))));
    }
    match (from, over, thru) {
        (Some(low), _, Some(high)) => Allowed::FromTo(low.into(), high.into()),
        // A grade made only above a size, or one whose first row has no lower limit.
        (None, Some(low), Some(high)) if diameter <= low => {
            Allowed::OverThru(low.into(), high.into())
        }
        (None, _, Some(high)) => Allowed::AtMost(high.into()),
        _ => Allowed::Positive,
    }
}

#[cfg(test)]
mod tests;
