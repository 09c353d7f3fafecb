//! Bolt, nut and bolt strength of the caller's own, in place of those of the tables.

use alloc::{format, string::String};
use core::f64::consts::PI;

use super::Joint;
use crate::error::{Allowed, Error, out_of_range, part_length, within};
use crate::joint::{STRONGEST, own_name, sane_strength};
use crate::material::{BoltGrade, BoltStrength, Finish};
use crate::parts::{ClampFace, Locking, ScrewProduct};
use crate::spread::{Spread, sane_spread};
use crate::thread::Thread;
use crate::units::{
    Area, Force, Length, Stress, TemperatureCoefficient, megapascals, newtons, ppm_per_kelvin,
};

mod screw;

pub(super) use screw::fits_seat;
pub use screw::{CountersunkHead, OwnLength, OwnScrew};

/// What a [`Joint`] has in place of parts of the tables.
///
/// Put in with [`Joint::with_strength`], [`Joint::with_screw`] and [`Joint::with_nut`], which keep the rest of the
/// joint in step. In data files each stands where the name of a listed part would: `bolt.grade`, `bolt.product` and
/// `nut.style` are a name, or an object.
///
/// ```
/// use shankline::joint::OwnParts;
/// assert!(OwnParts::default().is_empty());
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct OwnParts {
    /// The strength of the bolt; its grade is [`BoltGrade::Stated`].
    pub strength: Option<OwnStrength>,
    /// The bolt itself; its product is [`ScrewProduct::Own`].
    pub screw: Option<OwnScrew>,
    /// The nut; the joint has no other.
    pub nut: Option<OwnNut>,
}

impl OwnParts {
    /// Whether every part is one of the tables.
    ///
    /// ```
    /// assert!(shankline::joint::OwnParts::default().is_empty());
    /// ```
    #[must_use]
    pub const fn is_empty(&self) -> bool {
        self.strength.is_none() && self.screw.is_none() && self.nut.is_none()
    }
}

/// Strengths of a bolt by the caller: a certificate, a drawing, a standard that is not held here.
///
/// Machine design and MIL-HDBK-5 work from them; codes, which give their stresses to listed grades, stay undecided. What is not
/// stated is not known.
///
/// ```
/// use shankline::joint::OwnStrength;
/// use shankline::units::megapascals;
/// let mut turned = OwnStrength::new("shop steel 42, turned (invented)", megapascals(900.0));
/// turned.yield_strength = Some(megapascals(700.0));
/// assert_eq!(turned.proof_stress, None); // sheared it may hold; pulled it stays undecided
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OwnStrength {
    /// What the certificate calls it.
    pub name: String,
    /// Least tensile strength; as every strength here at most 5 GPa.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Stress>"))]
    pub tensile_strength: Stress,
    /// Least yield strength.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Stress>>")
    )]
    pub yield_strength: Option<Stress>,
    /// Proof stress.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Stress>>")
    )]
    pub proof_stress: Option<Stress>,
    /// Fully corrected endurance strength at zero mean stress, thread included: at most half of the tensile strength,
    /// which no steel without any notch passes (Shigley, 9th ed., Eq. 6-8).
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Stress>>")
    )]
    pub endurance: Option<Stress>,
    /// Modulus of elasticity, from 1 GPa to 1000 GPa.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Stress>>")
    )]
    pub elastic_modulus: Option<Stress>,
    /// Coefficient of linear expansion.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<TemperatureCoefficient>>")
    )]
    pub expansion: Option<TemperatureCoefficient>,
}

impl OwnStrength {
    /// A bolt of which nothing but the tensile strength is stated.
    ///
    /// ```
    /// use shankline::{joint::OwnStrength, units::megapascals};
    /// assert_eq!(OwnStrength::new("rod", megapascals(600.0)).yield_strength, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, tensile_strength: Stress) -> Self {
        Self {
            name: name.into(),
            tensile_strength,
            yield_strength: None,
            proof_stress: None,
            endurance: None,
            elastic_modulus: None,
            expansion: None,
        }
    }

    /// The strength at a size, if its figures make sense.
    pub(super) fn at(&self, diameter: Length) -> Result<BoltStrength, Error> {
        own_name("bolt strength", &self.name)?;
        for (quantity, stress) in [
            ("tensile strength of the bolt", Some(self.tensile_strength)),
            ("yield strength of the bolt", self.yield_strength),
            ("proof stress of the bolt", self.proof_stress),
            ("endurance strength of the bolt", self.endurance),
        ] {
            if let Some(stress) = stress {
                sane_strength(quantity, stress)?;
            }
        }
        if let Some(modulus) = self.elastic_modulus {
            // From plastics to hard metal.
            let quantity = "modulus of elasticity of the bolt";
            within(quantity, modulus, megapascals(1e3), megapascals(1e6))?;
        }
        if let Some(expansion) = self.expansion {
            within(
                "coefficient of expansion of the bolt",
                expansion,
                ppm_per_kelvin(0.01),
                ppm_per_kelvin(1000.0),
            )?;
        }
        // Without a notch and polished, half of the tensile strength (Shigley, 9th ed., Eq. 6-8).
        let most = 0.5 * self.tensile_strength;
        if let Some(endurance) = self.endurance.filter(|own| *own > most) {
            let allowed = Allowed::AtMost(most.into());
            return Err(out_of_range(
                "endurance strength of the bolt",
                endurance,
                allowed,
            ));
        }
        if let (Some(proof), Some(yields)) = (self.proof_stress, self.yield_strength) {
            if proof > yields {
                let allowed = Allowed::AtMost(yields.into());
                return Err(out_of_range("proof stress of the bolt", proof, allowed));
            }
        }
        BoltStrength::stated(
            diameter,
            self.proof_stress,
            self.yield_strength,
            self.tensile_strength,
        )
    }
}

/// How many times as wide as the thread a head or nut is at most. The widest of the tables, a serrated flange nut #4,
/// has 3.45 d; flat heads of belt and plough bolts have nearly 4 (common practice, no source). How thick a wider one is
/// nobody says, and its rim would count in full.
const WIDEST: f64 = 4.0;

/// Refuses a load that no screw of the thread bears, whatever it is made of: on its full section.
fn sane_load(quantity: &'static str, load: Force, thread: &Thread) -> Result<(), Error> {
    let diameter = thread.nominal_diameter();
    let most = 0.25 * PI * diameter * diameter * STRONGEST;
    within(quantity, load, newtons(1e-3), most).map(|_| ())
}

/// The bearing face of a head or nut; what is not as wide as its thread is none.
fn face(
    name: &str,
    bearing_diameter: Option<Length>,
    across_flats: Option<Length>,
) -> Result<ClampFace, Error> {
    let diameter = bearing_diameter.ok_or_else(|| Error::NoValue {
        quantity: "least diameter of the bearing face",
        subject: name.into(),
        reason: "it is not stated",
    })?;
    Ok(ClampFace::stated(diameter, across_flats))
}

/// Refuses widths of a head or nut that are no wider than its thread, or wider than any.
fn head_width(quantity: &'static str, width: Length, thread: &Thread) -> Result<(), Error> {
    part_length(quantity, width)?;
    let (least, most) = (
        thread.nominal_diameter(),
        WIDEST * thread.nominal_diameter(),
    );
    if width <= least || width > most {
        let allowed = Allowed::OverThru(least.into(), most.into());
        return Err(out_of_range(quantity, width, allowed));
    }
    Ok(())
}

/// A nut of the caller's own, on the thread of the bolt.
///
/// No table pairs it with a bolt: the numbers decide. Its proof load must reach the breaking load of the bolt.
///
/// ```
/// use shankline::joint::{NutProof, OwnNut};
/// use shankline::parts::Locking;
/// use shankline::prelude::*;
/// let height = millimetres(16.0).plus_minus(millimetres(0.2));
/// let mut turned = OwnNut::new("turned nut, drawing 13 (invented)", height, Locking::None);
/// turned.proof = Some(NutProof::Stress(megapascals(950.0)));
/// turned.bearing_diameter = Some(millimetres(22.0));
/// assert_eq!(turned.finish, None);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OwnNut {
    /// What a drawing calls it.
    pub name: String,
    /// Its height.
    pub height: Spread<Length>,
    /// What locks it.
    pub locking: Locking,
    /// What it is proved to; none if unknown.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Option::is_none")
    )]
    pub proof: Option<NutProof>,
    /// Least diameter of its bearing face; none if unknown.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub bearing_diameter: Option<Length>,
    /// Least width across flats; none if unknown.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub across_flats: Option<Length>,
    /// Its coating; none if nobody says. In data files it stands beside the style, as that of a listed nut.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub finish: Option<Finish>,
}

/// What a nut of the caller's own is proved to.
///
/// ```
/// use shankline::joint::NutProof;
/// use shankline::units::newtons;
/// assert_ne!(NutProof::Load(newtons(150e3)), NutProof::Load(newtons(140e3)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum NutProof {
    /// A stress on the stress area of the thread.
    Stress(
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Stress>"))]
        Stress,
    ),
    /// A load.
    Load(
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
        Force,
    ),
}

impl OwnNut {
    /// A nut of which nothing but its height and its lock are known.
    ///
    /// ```
    /// use shankline::{joint::OwnNut, parts::Locking, prelude::*};
    /// let nut = OwnNut::new("nut", Spread::exact(millimetres(16.0)), Locking::None);
    /// assert_eq!(nut.proof, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, height: Spread<Length>, locking: Locking) -> Self {
        Self {
            name: name.into(),
            height,
            locking,
            proof: None,
            bearing_diameter: None,
            across_flats: None,
            finish: None,
        }
    }

    /// Refuses figures that are none.
    pub(super) fn checked(&self, thread: &Thread) -> Result<(), Error> {
        own_name("nut", &self.name)?;
        sane_spread("nut height", self.height)?;
        match self.proof {
            Some(NutProof::Stress(stress)) => {
                sane_strength("proof stress of the nut", stress)?;
            }
            Some(NutProof::Load(load)) => sane_load("proof load of the nut", load, thread)?,
            None => {}
        }
        for (quantity, width) in [
            ("bearing diameter of the nut", self.bearing_diameter),
            ("width of the nut across flats", self.across_flats),
        ] {
            if let Some(width) = width {
                head_width(quantity, width, thread)?;
            }
        }
        Ok(())
    }

    pub(super) fn face(&self) -> Result<ClampFace, Error> {
        face(&self.name, self.bearing_diameter, self.across_flats)
    }

    /// What it is proved to on a stress area.
    pub(super) fn proof_load(&self, area: Area) -> Option<Force> {
        self.proof.map(|proof| match proof {
            NutProof::Stress(stress) => stress * area,
            NutProof::Load(load) => load,
        })
    }
}

impl Joint {
    /// The joint with a strength of the bolt that the caller states.
    ///
    /// ```
    /// use shankline::joint::{Joint, OwnStrength};
    /// use shankline::units::megapascals;
    /// fn turned(joint: Joint) -> Joint {
    ///     joint.with_strength(OwnStrength::new("shop steel 42 (invented)", megapascals(900.0)))
    /// }
    /// ```
    #[must_use]
    pub fn with_strength(mut self, strength: OwnStrength) -> Self {
        self.bolt.grade = BoltGrade::Stated;
        self.own.strength = Some(strength);
        self
    }

    /// The joint with a bolt of the caller's own: the best of its lengths, unless [`JointBolt::length`](super::JointBolt)
    /// is set to one of them afterwards.
    ///
    /// ```
    /// use shankline::joint::{Joint, OwnLength, OwnScrew};
    /// use shankline::prelude::*;
    /// fn turned(joint: Joint) -> Joint {
    ///     let only = OwnLength::new(Spread::exact(millimetres(80.0)), millimetres(44.0), millimetres(50.0));
    ///     joint.with_screw(OwnScrew::new("turned bolt", [only]))
    /// }
    /// ```
    #[must_use]
    pub fn with_screw(mut self, screw: OwnScrew) -> Self {
        self.bolt.product = ScrewProduct::Own;
        self.bolt.length = None;
        self.own.screw = Some(screw);
        self
    }

    /// The joint with a nut of the caller's own.
    ///
    /// ```
    /// use shankline::joint::{Joint, OwnNut};
    /// use shankline::{parts::Locking, prelude::*};
    /// fn turned(joint: Joint) -> Joint {
    ///     joint.with_nut(OwnNut::new("turned nut", Spread::exact(millimetres(16.0)), Locking::None))
    /// }
    /// ```
    #[must_use]
    pub fn with_nut(mut self, nut: OwnNut) -> Self {
        self.nut = None;
        self.own.nut = Some(nut);
        self
    }

    /// Refuses a joint that has a part of the tables and one of the caller's own in the same place.
    pub(crate) fn own_in_place(&self) -> Result<(), Error> {
        let two = |part: &str| Err(Error::Mismatch(format!("the joint has two {part}")));
        let none = |part: &str| {
            Err(Error::Mismatch(format!(
                "the {part} of your own is not described"
            )))
        };
        let own = &self.own;
        match (&own.strength, self.bolt.grade) {
            (Some(_), BoltGrade::Stated) => {}
            (Some(_), _) => return two("strengths of the bolt: a grade, and one of your own"),
            (None, BoltGrade::Stated) => return none("bolt strength"),
            (None, _) => {}
        }
        match (&own.screw, self.bolt.product) {
            (Some(_), ScrewProduct::Own) => {}
            (Some(_), _) => return two("bolts: a product, and one of your own"),
            (None, ScrewProduct::Own) => return none("bolt"),
            (None, _) => {}
        }
        if own.nut.is_some() && self.nut.is_some() {
            return two("nuts: a listed one, and one of your own");
        }
        Ok(())
    }

    /// The strength of the bolt at its size and length.
    pub(super) fn bolt_strength(&self, length: Length) -> Result<BoltStrength, Error> {
        let diameter = self.bolt.thread.nominal_diameter();
        match &self.own.strength {
            Some(own) => own.at(diameter),
            None => self.bolt.grade.strength_at_length(diameter, length),
        }
    }
}
