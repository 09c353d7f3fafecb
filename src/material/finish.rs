//! What lies outermost on a bolt or a nut, and how the nut is tapped for it.

use core::{fmt, str::FromStr};

use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::tables::galvanic::Metal;
use crate::tables::locking::TemperatureLimited;
use crate::tables::nut_grades::BoltCoating;

/// What a judgement weighs in the verdict on a joint.
///
/// ```
/// use shankline::material::Severity;
/// assert!(Severity::Fault > Severity::Undecided && Severity::Undecided > Severity::Caution);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
pub enum Severity {
    /// Nothing speaks against it.
    Fine,
    /// Something to know or to do.
    Caution,
    /// Neither shown to be right nor to be wrong: a fact or a published value is missing.
    Undecided,
    /// It must not be.
    Fault,
}

/// What lies outermost on a bolt or a nut.
///
/// ```
/// use shankline::material::Finish;
/// let finish = Finish::ZincPlated { baked: true };
/// assert!(finish.is_electroplated());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Finish {
    /// The bare metal, oiled, blackened or phosphated.
    Bare(Metal),
    /// Electroplated zinc.
    ZincPlated {
        /// Whether it was baked after plating, to drive hydrogen out.
        baked: bool,
    },
    /// Electroplated cadmium.
    CadmiumPlated {
        /// Whether it was baked after plating, to drive hydrogen out.
        baked: bool,
    },
    /// Hot-dip galvanized in the usual way: the zinc lies over the usual thread of the bolt, and the nut is
    /// tapped oversize after dipping (ASTM A563; ISO 10684 with the mark Z or X).
    HotDipGalvanized,
    /// Hot-dip galvanized with the room for the zinc in the bolt: its thread is cut undersize (ISO 10684
    /// 6az, marked U), and the nut, dipped or not, is tapped as usual (6H or 6G).
    HotDipGalvanizedUndersize,
    /// Mechanically deposited zinc, as thick as a hot-dip coat; the nut is tapped oversize.
    MechanicalZinc,
    /// Zinc flakes in a binder, not electroplated.
    ZincFlake,
}

/// Code and label of every member.
const NAMES: [Named<Finish>; 27] = [
    (Finish::Bare(Metal::Steel), "bare_steel", "bare steel"),
    (
        Finish::ZincPlated { baked: false },
        "zinc_plated",
        "zinc plated",
    ),
    (
        Finish::ZincPlated { baked: true },
        "zinc_plated_baked",
        "zinc plated and baked",
    ),
    (
        Finish::CadmiumPlated { baked: false },
        "cadmium_plated",
        "cadmium plated",
    ),
    (
        Finish::CadmiumPlated { baked: true },
        "cadmium_plated_baked",
        "cadmium plated and baked",
    ),
    (
        Finish::HotDipGalvanized,
        "hot_dip_galvanized",
        "hot-dip galvanized",
    ),
    (
        Finish::HotDipGalvanizedUndersize,
        "hot_dip_galvanized_undersize",
        "hot-dip galvanized, cut undersize (marked U)",
    ),
    (
        Finish::MechanicalZinc,
        "mechanical_zinc",
        "mechanically galvanized",
    ),
    (Finish::ZincFlake, "zinc_flake", "zinc flake"),
    (
        Finish::Bare(Metal::Magnesium),
        "bare_magnesium",
        "bare magnesium",
    ),
    (Finish::Bare(Metal::Zinc), "bare_zinc", "bare zinc"),
    (
        Finish::Bare(Metal::HotDipZinc),
        "bare_hot_dip_zinc",
        "bare hot-dip zinc",
    ),
    (Finish::Bare(Metal::Cadmium), "bare_cadmium", "bare cadmium"),
    (
        Finish::Bare(Metal::Aluminium),
        "bare_aluminium",
        "bare aluminium",
    ),
    (
        Finish::Bare(Metal::Aluminium2000),
        "bare_aluminium_2000",
        "bare aluminium of the 2000 series",
    ),
    (Finish::Bare(Metal::Lead), "bare_lead", "bare lead"),
    (Finish::Bare(Metal::Tin), "bare_tin", "bare tin"),
    (
        Finish::Bare(Metal::Chromium),
        "bare_chromium",
        "bare chromium plate",
    ),
    (
        Finish::Bare(Metal::Stainless12Chromium),
        "bare_stainless_12_chromium",
        "bare stainless steel with 12 % chromium",
    ),
    (
        Finish::Bare(Metal::Stainless18Chromium),
        "bare_stainless_18_chromium",
        "bare stainless steel with 18 % chromium",
    ),
    (
        Finish::Bare(Metal::HighBrass),
        "bare_high_brass",
        "bare high brass",
    ),
    (Finish::Bare(Metal::Brass), "bare_brass", "bare brass"),
    (Finish::Bare(Metal::Copper), "bare_copper", "bare copper"),
    (Finish::Bare(Metal::Nickel), "bare_nickel", "bare nickel"),
    (
        Finish::Bare(Metal::Titanium),
        "bare_titanium",
        "bare titanium",
    ),
    (Finish::Bare(Metal::Silver), "bare_silver", "bare silver"),
    (Finish::Bare(Metal::Gold), "bare_gold", "bare gold"),
];

impl Key for Finish {
    const FAMILY: &'static str = "finish";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for Finish {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for Finish {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

impl Finish {
    /// The metal that touches other parts; none where no index is known for it.
    ///
    /// ```
    /// use shankline::{material::Finish, tables::galvanic::Metal};
    /// assert_eq!(Finish::HotDipGalvanized.metal(), Some(Metal::HotDipZinc));
    /// assert_eq!(Finish::ZincFlake.metal(), None);
    /// ```
    #[must_use]
    pub const fn metal(self) -> Option<Metal> {
        match self {
            Self::Bare(metal) => Some(metal),
            Self::ZincPlated { .. } | Self::MechanicalZinc => Some(Metal::Zinc),
            Self::CadmiumPlated { .. } => Some(Metal::Cadmium),
            Self::HotDipGalvanized | Self::HotDipGalvanizedUndersize => Some(Metal::HotDipZinc),
            Self::ZincFlake => None,
        }
    }

    /// Whether it was put on electrolytically, which charges hard steel with hydrogen.
    ///
    /// ```
    /// use shankline::material::Finish;
    /// assert!(!Finish::ZincFlake.is_electroplated());
    /// ```
    #[must_use]
    pub const fn is_electroplated(self) -> bool {
        matches!(
            self.of_coat(),
            Self::ZincPlated { .. } | Self::CadmiumPlated { .. }
        )
    }

    /// Whether it was dipped in molten zinc, over a usual or an undersize thread.
    ///
    /// ```
    /// use shankline::{material::Finish, tables::galvanic::Metal};
    /// assert!(Finish::HotDipGalvanizedUndersize.is_hot_dipped());
    /// assert!(Finish::Bare(Metal::HotDipZinc).is_hot_dipped()); // named by its metal
    /// ```
    #[must_use]
    pub const fn is_hot_dipped(self) -> bool {
        matches!(
            self.of_coat(),
            Self::HotDipGalvanized | Self::HotDipGalvanizedUndersize
        )
    }

    /// Whether it is a coat of metal, zinc flake among them.
    ///
    /// ```
    /// use shankline::{material::Finish, tables::galvanic::Metal};
    /// assert!(Finish::ZincFlake.is_metallic_coat() && !Finish::Bare(Metal::Steel).is_metallic_coat());
    /// ```
    #[must_use]
    pub const fn is_metallic_coat(self) -> bool {
        !matches!(self.of_coat(), Self::Bare(_))
    }

    /// How the thread of a nut with this finish is tapped.
    ///
    /// Sources: ASTM A563, overtapping of hot-dip and mechanically galvanized nuts (a supplier's table); ISO 10684.
    ///
    /// ```
    /// use shankline::material::{Finish, NutTapping};
    /// assert_eq!(Finish::MechanicalZinc.nut_tapping(), NutTapping::Oversize);
    /// assert_eq!(Finish::HotDipGalvanizedUndersize.nut_tapping(), NutTapping::Usual);
    /// ```
    #[must_use]
    pub const fn nut_tapping(self) -> NutTapping {
        match self.of_coat() {
            Self::HotDipGalvanized | Self::MechanicalZinc => NutTapping::Oversize,
            _ => NutTapping::Usual,
        }
    }

    /// The coating of a bolt, as far as the tables of suitable nuts tell coatings apart: an undersize bolt
    /// takes the nuts of a plain one.
    ///
    /// ```
    /// use shankline::{material::Finish, tables::nut_grades::BoltCoating};
    /// assert_eq!(Finish::HotDipGalvanized.bolt_coating(), BoltCoating::ZincCoated);
    /// assert_eq!(Finish::ZincPlated { baked: false }.bolt_coating(), BoltCoating::Plain);
    /// ```
    #[must_use]
    pub const fn bolt_coating(self) -> BoltCoating {
        match self.nut_tapping() {
            NutTapping::Oversize => BoltCoating::ZincCoated,
            NutTapping::Usual => BoltCoating::Plain,
        }
    }

    /// What limits its temperature, if a limit is known.
    pub(crate) const fn temperature_limited(self) -> Option<TemperatureLimited> {
        match self {
            Self::ZincPlated { .. } => Some(TemperatureLimited::ZincPlating),
            Self::CadmiumPlated { .. } => Some(TemperatureLimited::CadmiumPlating),
            _ => None,
        }
    }

    /// The coat, where somebody names a coated part by the metal of its coat. Not baked, as nobody said so.
    pub(super) const fn of_coat(self) -> Self {
        match self {
            Self::Bare(Metal::HotDipZinc) => Self::HotDipGalvanized,
            Self::Bare(Metal::Zinc) => Self::ZincPlated { baked: false },
            Self::Bare(Metal::Cadmium) => Self::CadmiumPlated { baked: false },
            other => other,
        }
    }
}

/// How the thread of a nut is tapped.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let strength = |tapping| {
///     NutGrade::AstmA563B.strength(NutShape::HeavyHex, &"3/4-10 UNC".parse()?, tapping)
/// };
/// assert_eq!(strength(NutTapping::Usual)?.proof_stress, ksi(133.0));
/// assert_eq!(strength(NutTapping::Oversize)?.proof_stress, ksi(100.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum NutTapping {
    /// To the usual class: 2B, 6H or 6G.
    Usual,
    /// Oversize, for bolts with thick zinc: overtapped by ASTM A563, or 6AZ or 6AX by ISO 10684.
    Oversize,
}
