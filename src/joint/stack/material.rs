//! What a ply or a tapped part is made of: a material of the tables, or one of the caller's own.

use alloc::string::String;
use core::fmt;

use crate::error::{Allowed, Error, out_of_range, sane_length, sane_text, within};
#[cfg(feature = "serde")]
use crate::joint::data::ListedOr;
use crate::units::{Length, Stress, TemperatureCoefficient, megapascals, ppm_per_kelvin};

/// What a [ply](super::JointPly) or a [tapped part](super::TappedPart) is made of.
///
/// In data files a material of the tables is its name, one of the caller's own an object:
/// `"material": "S355 steel"`, or `"material": { "name": "...", "kind": "carbon_steel", "yield_strength": "400 MPa" }`.
///
/// ```
/// use shankline::joint::{JointMaterial, MaterialKind, OwnMaterial};
/// use shankline::units::megapascals;
/// let listed: JointMaterial = "ASTM A36 steel".into();
/// let own: JointMaterial = OwnMaterial::new("shop plate 7 (invented)", MaterialKind::CarbonSteel)
///     .strengths(megapascals(400.0), megapascals(520.0))
///     .into();
/// assert_eq!(listed.to_string(), "ASTM A36 steel");
/// assert_eq!(own.to_string(), "shop plate 7 (invented)");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(untagged, from = "ListedOr<String, OwnMaterial>")
)]
pub enum JointMaterial {
    /// One of [`tables::plies`](crate::tables::plies), by its name there.
    Listed(String),
    /// One that the caller describes.
    Own(OwnMaterial),
}

/// What sort of material one of the caller's own is: rules for plies ask for it.
///
/// ```
/// use shankline::joint::MaterialKind;
/// assert_ne!(MaterialKind::CarbonSteel, MaterialKind::StainlessSteel); // structural codes are written for the former
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum MaterialKind {
    /// Steel that is not stainless, alloyed or not.
    CarbonSteel,
    /// Stainless steel.
    StainlessSteel,
    /// Aluminium and its alloys.
    Aluminium,
    /// Cast iron.
    CastIron,
    /// Anything else, and what nobody knows.
    Other,
}

impl MaterialKind {
    /// Between which the modulus of elasticity of any of the kind lies, wide: what lies beside them has another unit
    /// than was meant (handbook ranges, recalled).
    const fn moduli(self) -> [Stress; 2] {
        match self {
            Self::CarbonSteel | Self::StainlessSteel => [megapascals(150e3), megapascals(250e3)],
            Self::Aluminium => [megapascals(40e3), megapascals(130e3)],
            Self::CastIron => [megapascals(40e3), megapascals(200e3)],
            // From foam to diamond.
            Self::Other => [megapascals(1e-3), megapascals(1.5e6)],
        }
    }

    /// The same of the coefficient of expansion.
    const fn expansions(self) -> [TemperatureCoefficient; 2] {
        match self {
            Self::CarbonSteel | Self::StainlessSteel => [ppm_per_kelvin(8.0), ppm_per_kelvin(21.0)],
            Self::Aluminium => [ppm_per_kelvin(10.0), ppm_per_kelvin(30.0)],
            // From irons with much nickel.
            Self::CastIron => [ppm_per_kelvin(1.0), ppm_per_kelvin(22.0)],
            // Some nickel irons hardly grow; no plastic grows so much.
            Self::Other => [ppm_per_kelvin(0.01), ppm_per_kelvin(1000.0)],
        }
    }
}

/// A material of the caller's own, from a certificate or a data sheet.
///
/// What is not said is not known, and the modes that need it are left undecided: nothing is taken over from a like
/// material of the tables. The verdict cautions that nothing here vouches for it.
///
/// ```
/// use shankline::joint::{MaterialKind, OwnMaterial};
/// use shankline::units::megapascals;
/// let plate = OwnMaterial::new("shop plate 7 (invented)", MaterialKind::CarbonSteel)
///     .strengths(megapascals(400.0), megapascals(520.0))
///     .surface_pressure(megapascals(600.0));
/// assert_eq!(plate.expansion, None); // a preload in the heat stays undecided
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OwnMaterial {
    /// What the certificate calls it.
    pub name: String,
    /// What sort of material it is.
    pub kind: MaterialKind,
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
    /// Least tensile strength; as every strength here at most 5 GPa.
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
    pub tensile_strength: Option<Stress>,
    /// Modulus of elasticity, from 0.1 GPa to 1000 GPa, for the stiffness of the joint.
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
    /// Coefficient of linear expansion, for a preload away from room temperature.
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
    /// Shear strength over tensile strength, for the thread of a tapped part. The method of stripping counts on
    /// no more than one half.
    #[cfg_attr(
        feature = "serde",
        serde(default, skip_serializing_if = "Option::is_none")
    )]
    pub shear_ratio: Option<f64>,
    /// What it bears under a head or nut (pG of VDI 2230).
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
    pub surface_pressure: Option<Stress>,
    /// Least thickness that the strengths hold for; none if they hold for any. A ply outside it is refused.
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
    pub thickness_from: Option<Length>,
    /// Greatest thickness that the strengths hold for.
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
    pub thickness_thru: Option<Length>,
}

impl OwnMaterial {
    /// A material of which nothing but its kind is known.
    ///
    /// ```
    /// use shankline::joint::{MaterialKind, OwnMaterial};
    /// assert_eq!(OwnMaterial::new("salvaged beam", MaterialKind::Other).yield_strength, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, kind: MaterialKind) -> Self {
        Self {
            name: name.into(),
            kind,
            yield_strength: None,
            tensile_strength: None,
            elastic_modulus: None,
            expansion: None,
            shear_ratio: None,
            surface_pressure: None,
            thickness_from: None,
            thickness_thru: None,
        }
    }

    /// The material with its least yield and tensile strength. Of one that has no yield strength, such as grey iron,
    /// set the field [`tensile_strength`](Self::tensile_strength) alone.
    ///
    /// ```
    /// # use shankline::{joint::{MaterialKind, OwnMaterial}, units::megapascals};
    /// # let plate = OwnMaterial::new("plate", MaterialKind::CarbonSteel);
    /// let plate = plate.strengths(megapascals(400.0), megapascals(520.0));
    /// assert_eq!(plate.tensile_strength, Some(megapascals(520.0)));
    /// ```
    #[must_use]
    pub const fn strengths(mut self, yield_strength: Stress, tensile_strength: Stress) -> Self {
        self.yield_strength = Some(yield_strength);
        self.tensile_strength = Some(tensile_strength);
        self
    }

    /// The material with its modulus of elasticity.
    ///
    /// ```
    /// # use shankline::{joint::{MaterialKind, OwnMaterial}, units::megapascals};
    /// # let plate = OwnMaterial::new("plate", MaterialKind::CarbonSteel);
    /// assert!(plate.elastic_modulus(megapascals(205e3)).elastic_modulus.is_some());
    /// ```
    #[must_use]
    pub const fn elastic_modulus(mut self, modulus: Stress) -> Self {
        self.elastic_modulus = Some(modulus);
        self
    }

    /// The material with its coefficient of linear expansion.
    ///
    /// ```
    /// # use shankline::{joint::{MaterialKind, OwnMaterial}, units::ppm_per_kelvin};
    /// # let plate = OwnMaterial::new("plate", MaterialKind::CarbonSteel);
    /// assert!(plate.expansion(ppm_per_kelvin(12.0)).expansion.is_some());
    /// ```
    #[must_use]
    pub const fn expansion(mut self, expansion: TemperatureCoefficient) -> Self {
        self.expansion = Some(expansion);
        self
    }

    /// The material with its shear strength over its tensile strength.
    ///
    /// ```
    /// # use shankline::joint::{MaterialKind, OwnMaterial};
    /// # let plate = OwnMaterial::new("plate", MaterialKind::CarbonSteel);
    /// assert_eq!(plate.shear_ratio(0.6).shear_ratio, Some(0.6));
    /// ```
    #[must_use]
    pub const fn shear_ratio(mut self, ratio: f64) -> Self {
        self.shear_ratio = Some(ratio);
        self
    }

    /// The material with what it bears under a head or nut.
    ///
    /// ```
    /// # use shankline::{joint::{MaterialKind, OwnMaterial}, units::megapascals};
    /// # let plate = OwnMaterial::new("plate", MaterialKind::CarbonSteel);
    /// assert!(plate.surface_pressure(megapascals(600.0)).surface_pressure.is_some());
    /// ```
    #[must_use]
    pub const fn surface_pressure(mut self, pressure: Stress) -> Self {
        self.surface_pressure = Some(pressure);
        self
    }

    /// The material with the thicknesses that its strengths hold for.
    ///
    /// ```
    /// # use shankline::{joint::{MaterialKind, OwnMaterial}, units::millimetres};
    /// # let plate = OwnMaterial::new("plate", MaterialKind::CarbonSteel);
    /// let plate = plate.thickness(millimetres(3.0), millimetres(16.0));
    /// assert_eq!(plate.thickness_thru, Some(millimetres(16.0)));
    /// ```
    #[must_use]
    pub const fn thickness(mut self, from: Length, thru: Length) -> Self {
        self.thickness_from = Some(from);
        self.thickness_thru = Some(thru);
        self
    }

    /// Refuses figures that are none.
    pub(in crate::joint) fn checked(&self) -> Result<(), Error> {
        own_name("material", &self.name)?;
        for (quantity, stress) in [
            ("yield strength", self.yield_strength),
            ("tensile strength", self.tensile_strength),
            ("limiting surface pressure", self.surface_pressure),
        ] {
            if let Some(stress) = stress {
                sane_strength(quantity, stress)?;
            }
        }
        if let Some(modulus) = self.elastic_modulus {
            let [least, most] = self.kind.moduli();
            within("modulus of elasticity", modulus, least, most)?;
        }
        if let (Some(yields), Some(breaks)) = (self.yield_strength, self.tensile_strength) {
            if yields > breaks {
                let allowed = Allowed::AtMost(breaks.into());
                return Err(out_of_range("yield strength", yields, allowed));
            }
        }
        // Grey cast iron bears some 3.6 times its tensile strength (VDI 2230, Table A9); nothing bears five times.
        if let (Some(pressure), Some(breaks)) = (self.surface_pressure, self.tensile_strength) {
            if pressure > 5.0 * breaks {
                let allowed = Allowed::AtMost((5.0 * breaks).into());
                return Err(out_of_range("limiting surface pressure", pressure, allowed));
            }
        }
        if let Some(expansion) = self.expansion {
            let [least, most] = self.kind.expansions();
            within("coefficient of expansion", expansion, least, most)?;
        }
        if let Some(ratio) = self.shear_ratio {
            if !(ratio > 0.0 && ratio <= 2.0) {
                let allowed = Allowed::OverThru(0.0.into(), 2.0.into());
                return Err(out_of_range("shear over tensile strength", ratio, allowed));
            }
        }
        for (quantity, length) in [
            ("least thickness", self.thickness_from),
            ("greatest thickness", self.thickness_thru),
        ] {
            if let Some(length) = length {
                sane_length(quantity, length)?;
            }
        }
        if let (Some(from), Some(thru)) = (self.thickness_from, self.thickness_thru) {
            if from > thru {
                let allowed = Allowed::AtMost(thru.into());
                return Err(out_of_range("least thickness", from, allowed));
            }
        }
        Ok(())
    }
}

/// No steel is stronger: the strongest of bolts have some 2000 MPa, and maraging steels 2500 (recalled). A figure beyond
/// that has another unit than was meant.
pub(crate) const STRONGEST: Stress = megapascals(3000.0);

/// Refuses a strength that no part has.
pub(crate) fn sane_strength(quantity: &'static str, stress: Stress) -> Result<(), Error> {
    within(quantity, stress, megapascals(1e-6), STRONGEST).map(|_| ())
}

/// A part of the caller's own has a name, for reports.
pub(crate) fn own_name(part: &str, name: &str) -> Result<(), Error> {
    if name.trim().is_empty() {
        return Err(Error::Mismatch(alloc::format!(
            "a {part} of your own wants a name"
        )));
    }
    one_line(part, name)
}

/// A name of several lines could pass for lines of a report, and one without end fills it.
pub(in crate::joint) fn one_line(what: &str, text: &str) -> Result<(), Error> {
    sane_text(&alloc::format!("name of a {what}"), text)?;
    if text.contains(char::is_control) {
        return Err(Error::Mismatch(alloc::format!(
            "the name of a {what} is one line of text: {text:?} is not"
        )));
    }
    Ok(())
}

impl From<OwnMaterial> for JointMaterial {
    fn from(own: OwnMaterial) -> Self {
        Self::Own(own)
    }
}

impl From<&str> for JointMaterial {
    fn from(name: &str) -> Self {
        Self::Listed(name.into())
    }
}

impl From<String> for JointMaterial {
    fn from(name: String) -> Self {
        Self::Listed(name)
    }
}

impl fmt::Display for JointMaterial {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Listed(name) => name,
            Self::Own(own) => &own.name,
        })
    }
}

#[cfg(feature = "serde")]
impl From<ListedOr<String, OwnMaterial>> for JointMaterial {
    fn from(part: ListedOr<String, OwnMaterial>) -> Self {
        match part {
            ListedOr::Listed(name) => Self::Listed(name),
            ListedOr::Own(own) => Self::Own(own),
        }
    }
}
