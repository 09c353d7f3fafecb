//! The short form: one bolt, all planes loaded alike.

use super::ShearMethod;
use super::facts::ReductionNeeds;
use alloc::{format, string::ToString};

use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{BoltGrade, BoltStrength};
use crate::parts::Zone;
use crate::strength::check::Resistance;
use crate::strength::section::Origins;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Area, Force, Stress};

/// Capacity of one bolt in shear, all planes loaded alike.
///
/// The load is carried to the planes in equal shares, so n planes carry n times the weakest:
/// `F = n min(R_k)`. Methods of some codes add unequal planes instead; this one does not.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: 2.0 };
/// let shear = bolt_shear(&thread, &strength, &[Zone::Shank, Zone::Thread], method)?;
/// assert_eq!((shear.planes, shear.governing_plane), (2, 2)); // the plane in thread is the weaker
/// assert_eq!(shear.nominal, 2.0 * shear.plane_nominal);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct BoltShear {
    /// The method.
    pub method: ShearMethod,
    /// Number of shear planes.
    pub planes: usize,
    /// The weakest plane, counted from the head, from 1.
    pub governing_plane: usize,
    /// What the weakest plane cuts.
    pub governing_zone: Zone,
    /// Nominal capacity of the weakest plane.
    pub plane_nominal: Force,
    /// Nominal capacity of the bolt: no factor taken off. See
    /// [`ShearMethod::nominal_meaning`].
    pub nominal: Force,
    /// Design resistance (the design strength of AISC), for factored loads. Only for methods that define one.
    pub design: Option<Force>,
    /// Allowable load, for service loads.
    pub allowable: Force,
    /// The area the weakest plane is taken on.
    pub area: Area,
    /// The shear stress the weakest plane is taken to carry: `plane_nominal / area`.
    pub stress: Stress,
    /// What the nominal load is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What the nominal load is divided by for the allowable load.
    pub safety_factor: f64,
    /// The bolt material.
    pub grade: BoltGrade,
    /// Facts of the connection that this method may lower the capacity for: the short form knows none of
    /// them and takes nothing off.
    pub unknown: ReductionNeeds,
    origins: Origins,
}

impl BoltShear {
    /// The same on the tensile stress area as the tables print it, where the method takes that area.
    ///
    /// Planes in the shank and methods on the core stay as they are.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a special thread, which no table has.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC".parse()?;
    /// let strength = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
    /// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// let shear = bolt_shear(&thread, &strength, &[Zone::Thread], method)?;
    /// assert_eq!(shear.on_printed_area()?, shear); // AISC takes the shank
    /// # Ok(())
    /// # }
    /// ```
    pub fn on_printed_area(mut self) -> Result<Self, Error> {
        let section = self.origins.section.as_printed(&self.origins.thread)?;
        let area = section.area(&self.origins.thread);
        let times = (area / self.area).value;
        self.plane_nominal = self.stress * area;
        self.nominal *= times;
        self.design = self.design.map(|design| times * design);
        self.allowable *= times;
        self.area = area;
        self.origins.section = section;
        Ok(self)
    }

    /// What the user of this capacity must be told, beyond the
    /// [general cautions](crate::caution::GENERAL).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC".parse()?;
    /// let strength = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
    /// let method = ShearMethod::Aisc360 { edition: AiscEdition::E2010 };
    /// let shear = bolt_shear(&thread, &strength, &[Zone::Thread], method)?;
    /// assert_eq!(shear.cautions().iter().count(), 1); // AISC 360 names ASTM bolts, not SAE grades
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let in_thread = self.governing_zone != Zone::Shank;
        self.method.cautions(self.grade, in_thread)
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/4-10 UNC".parse()?;
    /// let strength = SaeGrade::Grade8.strength(thread.nominal_diameter())?;
    /// let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Yield, design_factor: 2.0 };
    /// bolt_shear(&thread, &strength, &[Zone::Shank, Zone::Shank], method)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new(format!("Shear of the bolt, {} planes", self.planes));
        let derivation = self
            .origins
            .steps(
                derivation,
                self.method.method(),
                "shear stress of the weakest plane",
                "F",
            )
            .step(
                Step::new(
                    format!("resistance of plane {}", self.governing_plane),
                    "R1",
                    "F * A",
                    self.plane_nominal,
                )
                .with("F", self.stress)
                .with("A", self.area),
            )
            .step(
                Step::new("nominal resistance", "Rn", "n * R1", self.nominal)
                    .with("n", self.planes)
                    .with("R1", self.plane_nominal)
                    .source(methods::STATICS_EQUAL_SHARES),
            );
        let levels = Resistance {
            nominal: Some(self.nominal),
            design: self.design,
            allowable: Some(self.allowable),
        };
        levels.factored(derivation, self.resistance_factor, Some(self.safety_factor))
    }
}

#[cfg(feature = "serde")]
mod serde_fields {
    use super::BoltShear;
    use crate::units::quantity::AsRounded;
    use serde::{Serialize, Serializer, ser::SerializeStruct};

    impl Serialize for BoltShear {
        /// The fields, and the cautions, which are worked out only when asked for.
        fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            let mut object = serializer.serialize_struct("BoltShear", 15)?;
            object.serialize_field("method", &self.method)?;
            object.serialize_field("grade", &self.grade)?;
            object.serialize_field("planes", &self.planes)?;
            object.serialize_field("governing_plane", &self.governing_plane)?;
            object.serialize_field("governing_zone", &self.governing_zone)?;
            object.serialize_field("area", &AsRounded(self.area))?;
            object.serialize_field("stress", &AsRounded(self.stress))?;
            object.serialize_field("plane_nominal", &AsRounded(self.plane_nominal))?;
            object.serialize_field("nominal", &AsRounded(self.nominal))?;
            object.serialize_field("resistance_factor", &self.resistance_factor)?;
            object.serialize_field("design", &self.design.map(AsRounded))?;
            object.serialize_field("safety_factor", &self.safety_factor)?;
            object.serialize_field("allowable", &AsRounded(self.allowable))?;
            object.serialize_field("unknown", &self.unknown)?;
            object.serialize_field("cautions", &self.cautions())?;
            object.end()
        }
    }
}

/// Shear capacity of one bolt: single shear with one plane, double shear with two, or more.
///
/// `planes` tells what each plane cuts, from the head; run-out counts as thread. The zones come
/// from a length search, from [`ScrewLength::zone_at`](crate::parts::ScrewLength::zone_at), or are
/// simply stated.
///
/// Sources: see [`ShearMethod`]. Checked against Shigley's Example 8-6 and problems of its chapter 8,
/// the AISC 360-05 example of a structural steel primer, and the 17.9 kip cell of the AISC manual.
///
/// # Errors
///
/// [`Error::OutOfRange`] without planes, for a design factor below 1 or not finite, or a resistance that
/// vanishes or overflows;
/// [`Error::NoValue`] where the grade has no yield or proof strength, or the method defines no allowable
/// load ([`shear_resistance`](super::shear_resistance) serves limit-state codes too); [`Error::Mismatch`]
/// if the strengths hold for another nominal diameter than the thread has.
///
/// # Examples
///
/// Shigley, Mechanical Engineering Design, 9th ed., Example 8-6: two 3/4-16 grade 5 bolts on each
/// side of a splice, two planes each, threads not in the planes, design factor 1.5. Printed:
/// 57.8 kip.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-16 UNF".parse()?;
/// let strength = SaeGrade::Grade5.strength(thread.nominal_diameter())?;
/// let method = ShearMethod::DistortionEnergy { basis: ShearBasis::Proof, design_factor: 1.5 };
/// let shear = bolt_shear(&thread, &strength, &[Zone::Shank, Zone::Shank], method)?;
/// assert!((2.0 * shear.allowable.get::<kip>() - 57.8).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn bolt_shear(
    thread: &Thread,
    strength: &BoltStrength,
    planes: &[Zone],
    method: ShearMethod,
) -> Result<BoltShear, Error> {
    let factors = method.factors()?;
    let Some(divisor) = factors.safety else {
        return Err(no_allowable(method));
    };
    let phi = factors.resistance;
    // A plane in thread is never stronger than one in shank, so the first of the worst governs.
    let governing = planes
        .iter()
        .position(|zone| *zone != Zone::Shank)
        .unwrap_or(0);
    let Some(&governing_zone) = planes.get(governing) else {
        return Err(out_of_range(
            "number of shear planes",
            planes.len(),
            Allowed::AtLeast(1_usize.into()),
        ));
    };
    strength.matches(thread)?;
    let (of, section) = method.plane(strength, governing_zone)?;
    let (stress, area) = (of.stress, section.area(thread));
    let plane_nominal = stress * area;
    // At most a few planes: exact in f64.
    #[allow(clippy::cast_precision_loss)]
    let nominal = positive("resistance", planes.len() as f64 * plane_nominal)?;
    Ok(BoltShear {
        method,
        planes: planes.len(),
        governing_plane: governing + 1,
        governing_zone,
        plane_nominal,
        nominal,
        design: phi.map(|phi| phi * nominal),
        allowable: nominal / divisor,
        area,
        stress,
        resistance_factor: phi,
        safety_factor: divisor,
        grade: strength.grade,
        unknown: method.needs(thread, strength.grade),
        origins: Origins {
            thread: *thread,
            section,
            stress: of,
            strengths: strength.provenance,
        },
    })
}

#[cold]
fn no_allowable(method: ShearMethod) -> Error {
    Error::NoValue {
        quantity: "allowable load",
        subject: method.to_string(),
        reason: "its code defines none; ask for the resistance of the shear planes",
    }
}
