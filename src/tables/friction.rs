//! Friction: nut factors and friction classes.
//!
//! Publishers disagree on K more than any tolerance: zinc plated bolts go from 0.17 to 0.295 for
//! the mean, and from 0.075 to 0.53 for single bolts. So nothing here gives one K for a condition.

use core::{fmt, ops::RangeInclusive, str::FromStr};

use super::{generated, rows_of};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::Provenance;

/// Finish and lubrication of bolt and nut, as the publishers of nut factors name them.
///
/// ```
/// use shankline::tables::friction::Condition;
/// assert_eq!(Condition::ZincPlated.to_string(), "zinc plated bolts");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Condition {
    /// Bare steel, dry or as received.
    Plain,
    /// Black oxide or another black finish.
    BlackOxide,
    /// Zinc plated.
    ZincPlated,
    /// Cadmium plated.
    CadmiumPlated,
    /// Plated with a metal the publisher does not name.
    Plated,
    /// Zinc flake coating.
    ZincFlake,
    /// Lubricated with something the publisher does not name.
    Lubricated,
    /// Oiled.
    Oiled,
    /// Phosphated and oiled.
    PhosphateAndOil,
    /// Molybdenum disulphide paste or grease.
    Moly,
    /// Anti-seize paste.
    AntiSeize,
    /// Anti-seize paste with copper.
    CopperAntiSeize,
    /// Waxed.
    Waxed,
    /// Waxed all-metal lock nuts.
    WaxedLockNut,
    /// Grip nuts.
    GripNut,
    /// Stainless steel, lubricated.
    StainlessLubricated,
    /// Stainless steel, dry: it may gall.
    StainlessDry,
    /// Structural assemblies of EN 14399, k-class K1.
    En14399K1,
    /// Structural assemblies of EN 14399, k-class K2.
    En14399K2,
}

impl Condition {
    /// Every condition some publisher gives a nut factor for.
    ///
    /// ```
    /// use shankline::tables::friction::{Condition, NutFactorRow};
    /// for condition in Condition::ALL {
    ///     println!("{condition}: {:?}", NutFactorRow::across_publishers(condition));
    /// }
    /// ```
    pub const ALL: [Self; 19] = [
        Self::Plain,
        Self::BlackOxide,
        Self::ZincPlated,
        Self::CadmiumPlated,
        Self::Plated,
        Self::ZincFlake,
        Self::Lubricated,
        Self::Oiled,
        Self::PhosphateAndOil,
        Self::Moly,
        Self::AntiSeize,
        Self::CopperAntiSeize,
        Self::Waxed,
        Self::WaxedLockNut,
        Self::GripNut,
        Self::StainlessLubricated,
        Self::StainlessDry,
        Self::En14399K1,
        Self::En14399K2,
    ];
}

/// Code and label of every member.
const NAMES: [Named<Condition>; 19] = [
    (Condition::Plain, "plain", "plain steel bolts"),
    (Condition::BlackOxide, "black_oxide", "black oxide bolts"),
    (Condition::ZincPlated, "zinc_plated", "zinc plated bolts"),
    (
        Condition::CadmiumPlated,
        "cadmium_plated",
        "cadmium plated bolts",
    ),
    (Condition::Plated, "plated", "plated bolts"),
    (
        Condition::ZincFlake,
        "zinc_flake",
        "zinc flake coated bolts",
    ),
    (Condition::Lubricated, "lubricated", "lubricated bolts"),
    (Condition::Oiled, "oiled", "oiled bolts"),
    (
        Condition::PhosphateAndOil,
        "phosphate_and_oil",
        "phosphated and oiled bolts",
    ),
    (Condition::Moly, "moly", "bolts with moly paste or grease"),
    (
        Condition::AntiSeize,
        "anti_seize",
        "bolts with anti-seize paste",
    ),
    (
        Condition::CopperAntiSeize,
        "copper_anti_seize",
        "bolts with copper anti-seize paste",
    ),
    (Condition::Waxed, "waxed", "waxed bolts"),
    (
        Condition::WaxedLockNut,
        "waxed_lock_nut",
        "waxed all-metal lock nuts",
    ),
    (Condition::GripNut, "grip_nut", "grip nuts"),
    (
        Condition::StainlessLubricated,
        "stainless_lubricated",
        "lubricated stainless bolts",
    ),
    (
        Condition::StainlessDry,
        "stainless_dry",
        "dry stainless bolts",
    ),
    (
        Condition::En14399K1,
        "en14399_k1",
        "EN 14399 assemblies of k-class K1",
    ),
    (
        Condition::En14399K2,
        "en14399_k2",
        "EN 14399 assemblies of k-class K2",
    ),
];

impl Key for Condition {
    const FAMILY: &'static str = "condition of bolts";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for Condition {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for Condition {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// The nut factor K of T = K F d that one publisher gives for one condition.
///
/// Some give one value, some a range, some both. A value that is not given is `None`.
/// [`NutFactor::from_row`](crate::preload::NutFactor::from_row) makes a nut factor of a row with
/// a range.
///
/// ```
/// use shankline::tables::friction::{Condition, NutFactorRow};
/// for row in NutFactorRow::for_condition(Condition::ZincPlated) {
///     println!("{row}: {:?} {:?} {:?}", row.k_min, row.k_nominal, row.k_max);
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutFactorRow {
    /// Finish and lubrication.
    pub condition: Condition,
    /// Who gives the value.
    pub publisher: &'static str,
    /// Least K.
    pub k_min: Option<f64>,
    /// Nominal or mean K.
    pub k_nominal: Option<f64>,
    /// Greatest K.
    pub k_max: Option<f64>,
    /// State of the bolts, and what the limits are limits of.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl NutFactorRow {
    /// Every row, by condition.
    ///
    /// ```
    /// assert_eq!(shankline::tables::friction::NutFactorRow::all().len(), 37);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::nut_factors::NUT_FACTORS
    }

    /// What every publisher gives for a condition.
    ///
    /// ```
    /// use shankline::tables::friction::{Condition, NutFactorRow};
    /// let rows = NutFactorRow::for_condition(Condition::BlackOxide);
    /// assert_eq!((rows[0].publisher, rows[0].k_nominal), ("Shigley", Some(0.30)));
    /// assert_eq!((rows[1].publisher, rows[1].k_nominal), ("Bickford", Some(0.179)));
    /// ```
    #[must_use]
    pub fn for_condition(condition: Condition) -> &'static [Self] {
        rows_of(Self::all(), &condition, |row| row.condition)
    }

    /// Smallest and largest K that any publisher gives for a condition.
    ///
    /// Where only one publisher gives one value both are that value: a sign of few sources, not of
    /// little scatter.
    ///
    /// ```
    /// use shankline::tables::friction::{Condition, NutFactorRow};
    /// assert_eq!(NutFactorRow::across_publishers(Condition::ZincPlated), 0.075..=0.53);
    /// ```
    #[must_use]
    pub fn across_publishers(condition: Condition) -> RangeInclusive<f64> {
        let values = Self::for_condition(condition)
            .iter()
            .flat_map(|row| [row.k_min, row.k_nominal, row.k_max])
            .flatten();
        let (least, greatest) = values.fold((f64::INFINITY, 0.0), |(least, greatest), k| {
            (f64::min(least, k), f64::max(greatest, k))
        });
        least..=greatest
    }

    /// What the user of this row must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::friction::{Condition, NutFactorRow};
    /// assert_eq!(NutFactorRow::for_condition(Condition::Moly)[0].cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("nut factor", self.provenance))
    }
}

impl fmt::Display for NutFactorRow {
    /// `zinc plated bolts by Shigley`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} by {}", self.condition, self.publisher)
    }
}

/// Friction class of VDI 2230: a range of the coefficient of friction in thread and bearing face.
///
/// ```
/// use shankline::tables::friction::FrictionClass;
/// assert!(FrictionClass::A < FrictionClass::E);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum FrictionClass {
    /// Lowest friction: solid lubricants and waxes.
    A,
    /// The class VDI 2230 recommends.
    B,
    /// As delivered or lightly oiled.
    C,
    /// Some dry coatings, oiled stainless steel.
    D,
    /// Dry and scattering widely; no upper limit.
    E,
}

/// Range of the coefficient of friction of a class, at room temperature.
///
/// Use the lowest credible friction for the limit of the torque, the highest for the least preload.
///
/// ```
/// use shankline::tables::friction::{FrictionClass, FrictionClassRow};
/// let row = FrictionClassRow::all().iter().find(|row| row.class == FrictionClass::B).unwrap();
/// assert_eq!((row.friction_min, row.friction_max), (0.08, Some(0.16)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FrictionClassRow {
    /// Class.
    pub class: FrictionClass,
    /// Least coefficient of friction.
    pub friction_min: f64,
    /// Greatest coefficient of friction; none for class E, which is open.
    pub friction_max: Option<f64>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl FrictionClassRow {
    /// The five classes.
    ///
    /// ```
    /// use shankline::tables::friction::FrictionClassRow;
    /// assert_eq!(FrictionClassRow::all()[4].friction_max, None);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::friction_classes::FRICTION_CLASSES
    }
}

/// Surface of bolt or nut in the friction classes of VDI 2230.
///
/// ```
/// use shankline::tables::friction::{FrictionSurface, Surface};
/// assert_eq!(FrictionSurface::all()[0].surface, Surface::Bare);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Surface {
    /// Bare steel.
    Bare,
    /// Black oxide.
    BlackOxide,
    /// Phosphated.
    Phosphated,
    /// Zinc, electroplated.
    Zinc,
    /// Zinc-iron alloy, electroplated.
    ZincIron,
    /// Zinc-nickel alloy, electroplated.
    ZincNickel,
    /// Zinc flake.
    ZincFlake,
    /// Hot-dip galvanized.
    HotDipGalvanized,
    /// Organic coating.
    OrganicCoating,
    /// Austenitic steel.
    AusteniticSteel,
    /// Aluminium and magnesium alloys.
    AluminiumMagnesium,
}

/// Lubrication in the friction classes of VDI 2230.
///
/// ```
/// use shankline::tables::friction::{FrictionSurface, Lubrication};
/// assert_eq!(FrictionSurface::all()[0].lubrication, Lubrication::SolidLubricant);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Lubrication {
    /// Solid lubricant (molybdenum disulphide, graphite, polymers) in varnish, top coat or paste.
    SolidLubricant,
    /// Wax melt.
    WaxMelt,
    /// Wax dispersion.
    WaxDispersion,
    /// Grease.
    Grease,
    /// Oil, also light oil.
    Oil,
    /// As delivered.
    AsDelivered,
    /// Solid lubricant or wax built into the coating.
    BuiltIn,
    /// Paste.
    Paste,
    /// None.
    None,
    /// Adhesive.
    Adhesive,
}

/// A surface and lubrication that belongs to a friction class.
///
/// A pair may belong to several classes: the ranges overlap, and a test decides.
///
/// ```
/// use shankline::tables::friction::{FrictionClass, FrictionSurface, Lubrication, Surface};
/// let classes: Vec<_> = FrictionSurface::of(Surface::Bare, Lubrication::Oil)
///     .map(|row| row.class)
///     .collect();
/// assert_eq!(classes, [FrictionClass::B, FrictionClass::C]);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct FrictionSurface {
    /// Class.
    pub class: FrictionClass,
    /// Surface.
    pub surface: Surface,
    /// Lubrication.
    pub lubrication: Lubrication,
    /// Source of the row.
    pub provenance: Provenance,
}

impl FrictionSurface {
    /// Every row, by class.
    ///
    /// ```
    /// assert_eq!(shankline::tables::friction::FrictionSurface::all().len(), 97);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::friction_surfaces::FRICTION_SURFACES
    }

    /// Surfaces and lubrications of a class.
    ///
    /// ```
    /// use shankline::tables::friction::{FrictionClass, FrictionSurface, Lubrication};
    /// let dry = FrictionSurface::of_class(FrictionClass::E);
    /// assert!(dry.iter().all(|row| row.lubrication == Lubrication::None));
    /// ```
    #[must_use]
    pub fn of_class(class: FrictionClass) -> &'static [Self] {
        rows_of(Self::all(), &class, |row| row.class)
    }

    /// Rows of a surface with a lubrication, lowest class first; none if VDI 2230 lists no such pair.
    ///
    /// ```
    /// use shankline::tables::friction::{FrictionSurface, Lubrication, Surface};
    /// let mut rows = FrictionSurface::of(Surface::OrganicCoating, Lubrication::Grease);
    /// assert!(rows.next().is_none());
    /// ```
    pub fn of(surface: Surface, lubrication: Lubrication) -> impl Iterator<Item = &'static Self> {
        Self::all()
            .iter()
            .filter(move |row| row.surface == surface && row.lubrication == lubrication)
    }
}
