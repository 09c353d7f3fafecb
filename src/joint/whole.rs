//! One joint, one verdict.

use alloc::{string::String, vec::Vec};

use super::{Candidate, Environment, LengthRules, NutOption, Stack};
use crate::caution::Caution;
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::material::{BoltGrade, BoltLoads, BoltStrength, NutGrade};
use crate::parts::{NutStyle, ScrewProduct};
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::{Check, Level};
use crate::strength::interaction::InteractionRule;
use crate::strength::ply::PlyMethod;
use crate::strength::shear::ShearMethod;
use crate::strength::slip::SlipMethod;
use crate::strength::timber::TimberMethod;
use crate::tables::galvanic::Metal;
use crate::thread::Thread;
use crate::units::{Angle, Force, Length};

mod axial;
mod bending;
mod checks;
mod corrosion;
mod findings;
mod plies;
mod report;
mod sheet;
mod tapped;
mod tightening;
mod timber;

pub use findings::{Finding, NotChecked, Subject};
pub use report::RenderedCheck;
pub use sheet::{RenderedSheet, Sheet, SheetStep};
pub use tightening::{JointPreload, JointStiffness, Tightening};

/// A joint described once: parts, loads, surroundings, and the methods to check it by.
///
/// Plain data. Everything is per bolt: of a group, take the loads of its most loaded bolt.
///
/// | checked | where this is described |
/// |---|---|
/// | shear of each plane, bearing, tear-out and sections of each ply | shear planes; `plies` |
/// | bending of the bolt | gaps, sleeves with end play, or [`Environment::rotates`], in double shear |
/// | limits of EN 1993-1-8 on bearing: a single lap with one row, oversize holes, pivots | `plies` without a pitch; holes; [`Environment::rotates`] |
/// | tension, separation, fatigue, slip; tension, shear and bending together | loads; `tightening`, `methods.slip` |
/// | over-tightening, with the running torque of a lock nut | [`Tightening`] |
/// | preload lost to settling, what a moved mark means | [`Tightening::settling`]; ply materials or [`Tightening::stiffness`] |
/// | stripping of the nut, or of both threads in a tapped part | its grade; [`Joint::tapped`] |
/// | yielding of timber and bolt together, least distances in timber | [`JointPly::timber`], [`JointMethods::timber`] |
/// | corrosion in contact, brittle plated bolts, hot coatings | [`Environment::contact`], [`JointPly::metal`] |
///
/// What is not described is listed as not checked.
///
/// ```
/// use shankline::joint::{
///     Environment, Joint, JointBolt, JointLoad, JointMethods, JointNut, Tightening,
/// };
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let washer = Washer::find(WasherStyle::TypeANarrow, &thread)?;
/// // A harrow drawbar in its clevis; loads invented.
/// let joint = Joint {
///     title: "harrow drawbar".into(),
///     bolt: JointBolt {
///         product: ScrewProduct::HexCapScrew,
///         thread,
///         grade: BoltGrade::Sae(SaeGrade::Grade8),
///         length: None, // to be found
///     },
///     nut: Some(JointNut { style: NutStyle::InsertLockNe, grade: None }),
///     tapped: None,
///     stack: Stack::builder()
///         .ply("ear", inches(0.500).plus_minus(inches(0.015)))
///         .ply("drawbar", inches(1.000).plus_minus(inches(0.020)))
///         .ply("ear", inches(0.500).plus_minus(inches(0.015)))
///         .shear_planes([1, 2])
///         .washers_under_nut(washer.thickness()?, 1)
///         .build()?,
///     plies: Vec::new(), // nothing known: they are not checked
///     load: JointLoad { across: pounds_force(12000.0), shock_factor: 1.5, ..JointLoad::default() },
///     environment: Environment { vibration: true, ..Environment::default() },
///     tightening: Some(Tightening::new(NutFactor::new(0.15, 0.18, 0.22)?, PreloadTarget::Reusable)),
///     rules: LengthRules::fabrication(UnitSystem::UsCustomary),
///     methods: JointMethods::machine_design(2.0),
/// };
/// let verdict = joint.check()?;
/// assert!(verdict.holds());
/// // The greatest preload uses 90 % of the proof load; shear 54 % of what each plane may carry.
/// assert_eq!(verdict.governing().unwrap().mode.to_string(), "tightening");
/// for missing in &verdict.not_checked {
///     println!("not checked: {missing}");
/// }
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct Joint {
    /// What a drawing would call it.
    pub title: String,
    /// The bolt.
    pub bolt: JointBolt,
    /// Its nut; none where the stack ends in a tapped part.
    #[cfg_attr(feature = "serde", serde(default))]
    pub nut: Option<JointNut>,
    /// The thread of the tapped part, where the stack ends in one; none where there is a nut.
    #[cfg_attr(feature = "serde", serde(default))]
    pub tapped: Option<JointTapped>,
    /// What it goes through.
    pub stack: Stack,
    /// More about each ply of the stack, in the same order; empty if nothing is known.
    #[cfg_attr(feature = "serde", serde(default))]
    pub plies: Vec<JointPly>,
    /// What it carries.
    pub load: JointLoad,
    /// What it lives through.
    #[cfg_attr(feature = "serde", serde(default))]
    pub environment: Environment,
    /// How it is tightened; none if nobody controls it, and then no preload is counted on.
    #[cfg_attr(feature = "serde", serde(default))]
    pub tightening: Option<Tightening>,
    /// Rules for its length.
    pub rules: LengthRules,
    /// By which methods.
    pub methods: JointMethods,
}

/// The bolt of a [`Joint`].
///
/// ```
/// use shankline::joint::JointBolt;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = JointBolt {
///     product: ScrewProduct::Iso4014,
///     thread: "M16".parse()?,
///     grade: BoltGrade::Iso(PropertyClass::Class8_8),
///     length: Some(millimetres(80.0)),
/// };
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct JointBolt {
    /// The product.
    pub product: ScrewProduct,
    /// Its thread.
    pub thread: Thread,
    /// Its grade.
    pub grade: BoltGrade,
    /// Its nominal length; none to have the best stock length found.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub length: Option<Length>,
}

/// The nut of a [`Joint`].
///
/// ```
/// use shankline::joint::JointNut;
/// use shankline::prelude::*;
/// let nut = JointNut { style: NutStyle::Iso4032, grade: Some(NutGrade::Iso898_2Class8) };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct JointNut {
    /// Its style.
    pub style: NutStyle,
    /// Its grade; none if unknown, and then its strength is not checked.
    #[cfg_attr(feature = "serde", serde(default))]
    pub grade: Option<NutGrade>,
}

/// The thread of the tapped part that a [`Joint`] ends in, in place of a nut.
///
/// ```
/// use shankline::joint::JointTapped;
/// use shankline::units::millimetres;
/// let bed = JointTapped {
///     engagement: millimetres(18.0),
///     depth: Some(millimetres(25.0)),
///     material: Some("grey cast iron class 30".into()),
/// };
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct JointTapped {
    /// Least length of thread that must be filled.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub engagement: Length,
    /// Depth of full thread, from where it begins; none for a hole tapped through.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub depth: Option<Length>,
    /// Name of its material in [`tables::plies`](crate::tables::plies); none if unknown, and then its thread
    /// is not checked.
    #[cfg_attr(feature = "serde", serde(default))]
    pub material: Option<String>,
}

/// What is known of one ply of a [`Joint`].
///
/// ```
/// use shankline::joint::JointPly;
/// use shankline::units::inches;
/// let ear = JointPly {
///     material: Some("ASTM A36 steel".into()),
///     hole: Some(inches(0.8125)),
///     end_distance: Some(inches(1.5)),
///     ..JointPly::default()
/// };
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", default, deny_unknown_fields)
)]
pub struct JointPly {
    /// Name of its material in [`tables::plies`](crate::tables::plies).
    pub material: Option<String>,
    /// Name of its timber in [`tables::timber`](crate::tables::timber), if it is of timber: then it has no
    /// `material`, and is checked by [`JointMethods::timber`].
    pub timber: Option<String>,
    /// Angle between the load and the grain of the timber, 0 to 90 deg; none for a load along the grain.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub grain_angle: Option<Angle>,
    /// What its surface is made of, coating included: for corrosion in contact only.
    pub metal: Option<Metal>,
    /// Diameter of its hole.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub hole: Option<Length>,
    /// From the centre of the hole to the end of the ply, along the load.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub end_distance: Option<Length>,
    /// From the centre of the hole to the side of the ply, across the load.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub edge_distance: Option<Length>,
    /// To the next hole along the load; none if there is one row of bolts.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub pitch: Option<Length>,
    /// To the next hole across the load.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub gauge: Option<Length>,
    /// Width that the load of one bolt comes through.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_option",
            deserialize_with = "crate::units::quantity::deserialize_option"
        )
    )]
    pub width: Option<Length>,
}

/// The loads of one bolt. All zero by default.
///
/// ```
/// use shankline::joint::JointLoad;
/// use shankline::prelude::*;
/// let load = JointLoad { across: newtons(8e3), shock_factor: 2.0, ..JointLoad::default() };
/// assert!(load.check().is_ok());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", default, deny_unknown_fields)
)]
pub struct JointLoad {
    /// Load across the axis in service, all shear planes together.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub across: Force,
    /// Load along the axis in service that pulls the plies apart.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub along: Force,
    /// Least load along the axis, where it changes between this and `along`; with `alternates` false
    /// it does not change.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub along_least: Force,
    /// Whether the load along the axis goes up and down for the whole life of the joint.
    pub alternates: bool,
    /// What service loads are multiplied by for shock, 1 for none.
    pub shock_factor: f64,
    /// What service loads are multiplied by where the methods want factored loads
    /// ([`Level::Design`]), by the code in force. Not used otherwise.
    pub load_factor: f64,
}

impl Default for JointLoad {
    fn default() -> Self {
        let none = Force::default();
        Self {
            across: none,
            along: none,
            along_least: none,
            alternates: false,
            shock_factor: 1.0,
            load_factor: 1.0,
        }
    }
}

impl JointLoad {
    /// Refuses loads and factors that make no sense.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite, a least load above the
    /// greatest, or a factor below 1.
    ///
    /// ```
    /// use shankline::joint::JointLoad;
    /// let load = JointLoad { shock_factor: 0.5, ..JointLoad::default() };
    /// assert_eq!(load.check().unwrap_err().to_string(), "shock factor is 0.5; it must be at least 1");
    /// ```
    pub fn check(&self) -> Result<(), Error> {
        not_negative("load across the axis", self.across)?;
        not_negative("load along the axis", self.along)?;
        not_negative("least load along the axis", self.along_least)?;
        if self.along_least > self.along {
            return Err(out_of_range(
                "least load along the axis",
                self.along_least,
                Allowed::AtMost(self.along.into()),
            ));
        }
        for (name, factor) in [
            ("shock factor", self.shock_factor),
            ("load factor", self.load_factor),
        ] {
            positive(name, factor)?;
            if factor < 1.0 {
                return Err(out_of_range(name, factor, Allowed::AtLeast(1.0.into())));
            }
        }
        Ok(())
    }

    /// What the service loads are multiplied by at a level of resistance.
    fn factor(&self, level: Level) -> f64 {
        match level {
            Level::Design => self.shock_factor * self.load_factor,
            Level::Nominal | Level::Allowable => self.shock_factor,
        }
    }
}

/// By which methods a [`Joint`] is checked.
///
/// ```
/// use shankline::joint::JointMethods;
/// use shankline::strength::check::Level;
/// assert_eq!(JointMethods::machine_design(2.0).level, Level::Allowable);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct JointMethods {
    /// Shear of the bolt.
    pub shear: ShearMethod,
    /// Tension of the bolt, for the whole load along it.
    pub tension: TensionMethod,
    /// Tension and shear together.
    pub interaction: InteractionRule,
    /// Bearing, tear-out and sections of the plies.
    pub plies: PlyMethod,
    /// Bolts in timber, if plies are of timber.
    #[cfg_attr(feature = "serde", serde(default))]
    pub timber: Option<TimberMethod>,
    /// Slip, if the joint must not slip.
    #[cfg_attr(feature = "serde", serde(default))]
    pub slip: Option<SlipMethod>,
    /// Which resistance the loads are held against: design for factored loads, allowable for service
    /// loads.
    pub level: Level,
}

impl JointMethods {
    /// The methods, if the numbers in every one are in their ranges: also in those that the loads do not need.
    ///
    /// # Errors
    ///
    /// Those of the `checked` of each method.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert!(JointMethods::machine_design(2.0).checked().is_ok());
    /// assert!(JointMethods::machine_design(-3.0).checked().is_err());
    /// ```
    pub fn checked(&self) -> Result<(), Error> {
        self.shear.checked()?;
        self.tension.checked()?;
        self.interaction.checked()?;
        self.plies.checked()?;
        self.timber.map(TimberMethod::checked).transpose()?;
        self.slip.map(SlipMethod::checked).transpose()?;
        Ok(())
    }

    /// Machine design: onset of yield by distortion energy over a design factor, service loads.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., chapter 8.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::machine_design(2.0).shear.to_string(), "distortion energy, yield");
    /// ```
    #[must_use]
    pub const fn machine_design(design_factor: f64) -> Self {
        Self {
            shear: ShearMethod::DistortionEnergy {
                basis: crate::strength::shear::ShearBasis::Yield,
                design_factor,
            },
            tension: TensionMethod::Proof { design_factor },
            plies: PlyMethod::MachineDesign { design_factor },
            interaction: InteractionRule::Ellipse,
            timber: None,
            slip: None,
            level: Level::Allowable,
        }
    }

    /// AISC 360 with factored loads (LRFD).
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// use shankline::prelude::*;
    /// let methods = JointMethods::aisc_lrfd(AiscEdition::E2010);
    /// assert_eq!(methods.shear.to_string(), "AISC 360-10 J3.6");
    /// ```
    #[must_use]
    pub const fn aisc_lrfd(edition: crate::strength::shear::AiscEdition) -> Self {
        Self {
            shear: ShearMethod::Aisc360 { edition },
            tension: TensionMethod::Aisc360 { edition },
            plies: PlyMethod::Aisc360 {
                edition,
                deformation_matters: true,
            },
            interaction: InteractionRule::Aisc360,
            timber: None,
            slip: None,
            level: Level::Design,
        }
    }
}

impl JointMethods {
    /// EN 1993-1-8:2005 with design loads.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::en_1993().shear.to_string(), "EN 1993-1-8:2005 Table 3.4");
    /// ```
    #[must_use]
    pub const fn en_1993() -> Self {
        Self {
            shear: ShearMethod::En1993,
            tension: TensionMethod::En1993 { countersunk: false },
            plies: PlyMethod::En1993,
            interaction: InteractionRule::En1993,
            timber: None,
            slip: None,
            level: Level::Design,
        }
    }
}

/// The verdict on a [`Joint`]: what was chosen, every comparison of a load with a resistance, what
/// else was found, and what was not checked.
///
/// ```
/// # use shankline::joint::{Environment, Joint, JointBolt, JointLoad, JointMethods, JointNut, Tightening};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// # let ply = millimetres(20.0).plus_minus(millimetres(0.3));
/// # let joint = Joint {
/// #     title: "swing hanger (invented)".into(),
/// #     bolt: JointBolt {
/// #         product: ScrewProduct::Iso4014,
/// #         thread: "M12".parse()?,
/// #         grade: BoltGrade::Iso(PropertyClass::Class8_8),
/// #         length: None,
/// #     },
/// #     nut: Some(JointNut { style: NutStyle::Iso7040, grade: None }),
/// #     tapped: None,
/// #     stack: Stack::builder().ply("beam", ply).ply("plate", ply).shear_planes([1]).build()?,
/// #     plies: Vec::new(),
/// #     load: JointLoad { across: newtons(4e3), shock_factor: 2.0, ..JointLoad::default() },
/// #     environment: Environment { vibration: true, ..Environment::default() },
/// #     tightening: Some(Tightening::new(NutFactor::new(0.16, 0.18, 0.21)?, PreloadTarget::Reusable)),
/// #     rules: LengthRules::fabrication(UnitSystem::Si),
/// #     methods: JointMethods::machine_design(2.0),
/// # };
/// let verdict = joint.check()?; // the joint of the README, tightened
/// assert!(verdict.holds());
/// assert_eq!(verdict.candidate.screw.nominal, millimetres(60.0));
/// // The checks stand in order: the first one governs.
/// let governing = verdict.governing().expect("something was compared");
/// assert_eq!(*governing, verdict.checks[0]);
/// // What was not checked, and what the user must be told, belong in every report.
/// assert!(verdict.not_checked.iter().any(|missing| missing.to_string().starts_with("bearing")));
/// assert!(verdict.cautions.starts_with(shankline::caution::GENERAL));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct JointCheck {
    /// The bolt length with its washers, cut and shear planes.
    pub candidate: Candidate,
    /// Strength of the bolt at its size and length.
    pub strength: BoltStrength,
    /// Its proof, yield and tensile load.
    pub loads: BoltLoads,
    /// Torque and preload; none if nobody controls the tightening.
    pub preload: Option<JointPreload>,
    /// Every comparison of a load with a resistance, the highest utilisation first.
    pub checks: Vec<Check>,
    /// What else was found: what is wrong, and what is to be done.
    pub findings: Vec<Finding>,
    /// What was not checked, and why.
    pub not_checked: Vec<NotChecked>,
    /// What speaks for and against the kind of nut in this environment; none in a tapped part.
    pub nut: Option<NutOption>,
    /// What the user must be told.
    pub cautions: Vec<Caution>,
}

impl JointCheck {
    /// The check with the highest utilisation.
    ///
    /// ```
    /// # use shankline::joint::JointCheck;
    /// fn worst(verdict: &JointCheck) -> Option<String> {
    ///     verdict.governing().map(|check| check.to_string())
    /// }
    /// ```
    #[must_use]
    pub fn governing(&self) -> Option<&Check> {
        self.checks.first()
    }

    /// Whether every check holds and nothing found forbids the joint. What was not checked is not in
    /// it.
    ///
    /// ```
    /// # use shankline::joint::JointCheck;
    /// fn verdict(check: &JointCheck) -> &'static str {
    ///     if check.holds() { "holds, as far as it was checked" } else { "does not hold" }
    /// }
    /// ```
    #[must_use]
    pub fn holds(&self) -> bool {
        self.checks.iter().all(Check::holds) && !self.findings.iter().any(Finding::is_fault)
    }
}
