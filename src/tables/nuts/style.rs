//! Styles of nuts and how they keep from turning.

use core::{fmt, str::FromStr};

use super::super::locking::{ServiceTemperature, TemperatureLimited};
use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::units::ThermodynamicTemperature;

/// Styles of nut. Inch styles are named as the trade names them, metric ones by their standard.
///
/// ```
/// use shankline::prelude::*;
/// assert_eq!(Nut::of_style(NutStyle::Iso4032).len(), 29);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum NutStyle {
    /// Hex machine screw nut, ASME B18.2.2.
    HexMachineScrew,
    /// Hex nut, ASME B18.2.2.
    Hex,
    /// Hex jam nut, ASME B18.2.2.
    HexJam,
    /// Heavy hex nut, ASME B18.2.2.
    HeavyHex,
    /// Heavy hex jam nut, ASME B18.2.2.
    HeavyHexJam,
    /// Hex slotted nut, ASME B18.2.2.
    HexSlotted,
    /// Hex thick nut, ASME B18.2.2.
    HexThick,
    /// Hex high nut, SAE J482a.
    HexHigh,
    /// Nonmetallic (nylon) insert lock nut, style NE, ASME B18.16.6.
    InsertLockNe,
    /// Nonmetallic (nylon) insert lock nut, regular hex series, IFI-100/107. Only a maximum
    /// height is tabulated.
    InsertLockRegular,
    /// All-metal prevailing-torque hex nut, grades A, B and C, IFI-100/107.
    AllMetalLock,
    /// All-metal lock nut deformed at its middle, usable either way up; supplier dimensions.
    AllMetalTwoWay,
    /// Serrated hex flange nut, ASME B18.16.4.
    SerratedFlange,
    /// ISO 4032 hexagon nut, style 1.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4032"))]
    Iso4032,
    /// ISO 4033 hexagon nut, style 2 (high).
    #[cfg_attr(feature = "serde", serde(rename = "iso_4033"))]
    Iso4033,
    /// ISO 4034 hexagon nut, product grade C.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4034"))]
    Iso4034,
    /// ISO 4035 hexagon thin nut, chamfered.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4035"))]
    Iso4035,
    /// ISO 4036 hexagon thin nut, unchamfered.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4036"))]
    Iso4036,
    /// DIN 934 hexagon nut (withdrawn; flats differ from ISO 4032 at some sizes).
    #[cfg_attr(feature = "serde", serde(rename = "din_934"))]
    Din934,
    /// ISO 4161 hexagon flange nut.
    #[cfg_attr(feature = "serde", serde(rename = "iso_4161"))]
    Iso4161,
    /// EN 1661 hexagon flange nut.
    #[cfg_attr(feature = "serde", serde(rename = "en_1661"))]
    En1661,
    /// ASME B18.2.4.1M metric hex nut, style 1.
    #[cfg_attr(feature = "serde", serde(rename = "b18_2_4_1m"))]
    B18_2_4_1m,
    /// ASME B18.2.4.2M metric hex nut, style 2.
    #[cfg_attr(feature = "serde", serde(rename = "b18_2_4_2m"))]
    B18_2_4_2m,
    /// ANSI/ASME B18.2.4.3M metric slotted hex nut.
    #[cfg_attr(feature = "serde", serde(rename = "b18_2_4_3m"))]
    B18_2_4_3m,
    /// ANSI/ASME B18.2.4.4M metric hex flange nut.
    #[cfg_attr(feature = "serde", serde(rename = "b18_2_4_4m"))]
    B18_2_4_4m,
    /// ANSI B18.2.4.5M metric hex jam nut.
    #[cfg_attr(feature = "serde", serde(rename = "b18_2_4_5m"))]
    B18_2_4_5m,
    /// ASME B18.2.4.6M metric heavy hex nut.
    #[cfg_attr(feature = "serde", serde(rename = "b18_2_4_6m"))]
    B18_2_4_6m,
    /// ASME B18.16M metric all-metal prevailing-torque flange nut.
    #[cfg_attr(feature = "serde", serde(rename = "b18_16m_all_metal_flange"))]
    B18_16mAllMetalFlange,
    /// ASME B18.16M metric nonmetallic insert flange nut.
    #[cfg_attr(feature = "serde", serde(rename = "b18_16m_insert_flange"))]
    B18_16mInsertFlange,
    /// ASME B18.16.3M metric all-metal prevailing-torque hex nut, classes 5 and 10.
    #[cfg_attr(feature = "serde", serde(rename = "b18_16_3m_all_metal_class_5_10"))]
    B18_16_3mAllMetalClass5_10,
    /// ASME B18.16.3M metric nonmetallic insert hex nut, classes 5 and 10.
    #[cfg_attr(feature = "serde", serde(rename = "b18_16_3m_insert_class_5_10"))]
    B18_16_3mInsertClass5_10,
    /// ASME B18.16.3M metric all-metal prevailing-torque hex nut, class 9.
    #[cfg_attr(feature = "serde", serde(rename = "b18_16_3m_all_metal_class_9"))]
    B18_16_3mAllMetalClass9,
    /// ASME B18.16.3M metric nonmetallic insert hex nut, class 9.
    #[cfg_attr(feature = "serde", serde(rename = "b18_16_3m_insert_class_9"))]
    B18_16_3mInsertClass9,
    /// ISO 7040 nonmetallic insert hexagon nut, style 1.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7040"))]
    Iso7040,
    /// ISO 7041 nonmetallic insert hexagon nut, style 2.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7041"))]
    Iso7041,
    /// ISO 10511 nonmetallic insert hexagon thin nut.
    #[cfg_attr(feature = "serde", serde(rename = "iso_10511"))]
    Iso10511,
    /// ISO 10512 nonmetallic insert hexagon nut, style 1, fine pitch.
    #[cfg_attr(feature = "serde", serde(rename = "iso_10512"))]
    Iso10512,
    /// ISO 7042 all-metal prevailing-torque hexagon nut, style 2.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7042"))]
    Iso7042,
    /// ISO 7719 all-metal prevailing-torque hexagon nut, style 1.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7719"))]
    Iso7719,
    /// ISO 7720 all-metal prevailing-torque hexagon nut, style 2, class 9.
    #[cfg_attr(feature = "serde", serde(rename = "iso_7720"))]
    Iso7720,
    /// DIN 985 nonmetallic insert hexagon nut, low form.
    #[cfg_attr(feature = "serde", serde(rename = "din_985"))]
    Din985,
    /// DIN 980 all-metal prevailing-torque hexagon nut.
    #[cfg_attr(feature = "serde", serde(rename = "din_980"))]
    Din980,
    /// EN 14399-3 nut of system HR, for preloaded structural bolts.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_3"))]
    En14399_3,
    /// EN 14399-4 nut of system HV, for preloaded structural bolts: 0.8 d high.
    #[cfg_attr(feature = "serde", serde(rename = "en_14399_4"))]
    En14399_4,
}

/// What keeps a nut from turning, or nothing.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::nuts::Locking;
/// assert_eq!(NutStyle::Iso7042.locking(), Locking::AllMetal);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Locking {
    /// Nothing but the preload.
    None,
    /// A nonmetallic insert that grips the thread.
    Insert,
    /// A deformed metal thread that grips.
    AllMetal,
    /// Slots for a cotter pin.
    Slotted,
    /// Serrations under a flange.
    Serrated,
}

impl fmt::Display for Locking {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::None => "plain nut",
            Self::Insert => "lock nut with nonmetallic insert",
            Self::AllMetal => "all-metal lock nut",
            Self::Slotted => "slotted nut with cotter pin",
            Self::Serrated => "serrated flange nut",
        })
    }
}

impl Locking {
    /// Highest service temperature of the locking element, where ISO 2320 gives one: 120 C for
    /// nonmetallic inserts, 150 C for all-metal nuts.
    ///
    /// Source: ISO 2320 (2015), scope, by
    /// [`ServiceTemperature::latest`](super::super::locking::ServiceTemperature::latest). The edition of
    /// 1997 let all-metal nuts go to 300 C; inserts sold as 250 F nuts (121 C) agree.
    ///
    /// ```
    /// use shankline::{tables::nuts::Locking, units::celsius};
    /// assert_eq!(Locking::Insert.temperature_max(), Some(celsius(120.0)));
    /// assert_eq!(Locking::None.temperature_max(), None);
    /// ```
    #[must_use]
    pub fn temperature_max(self) -> Option<ThermodynamicTemperature> {
        let element = match self {
            Self::Insert => TemperatureLimited::NonmetallicInsert,
            Self::AllMetal => TemperatureLimited::AllMetalNut,
            Self::None | Self::Slotted | Self::Serrated => return None,
        };
        ServiceTemperature::latest(element, "ISO 2320").and_then(|row| row.temperature_max)
    }
}

impl NutStyle {
    /// Whether the nut is thin (a jam nut, style 0): its thread strips before the bolt breaks.
    ///
    /// ```
    /// use shankline::parts::NutStyle;
    /// assert!(NutStyle::Iso4035.is_thin() && !NutStyle::Iso4032.is_thin());
    /// ```
    #[must_use]
    pub const fn is_thin(self) -> bool {
        matches!(
            self,
            Self::HexJam
                | Self::HeavyHexJam
                | Self::Iso4035
                | Self::Iso4036
                | Self::B18_2_4_5m
                | Self::Iso10511
        )
    }

    /// What locks nuts of this style.
    ///
    /// ```
    /// use shankline::tables::nuts::{Locking, NutStyle};
    /// assert_eq!(NutStyle::InsertLockNe.locking(), Locking::Insert);
    /// assert_eq!(NutStyle::Iso4032.locking(), Locking::None);
    /// ```
    #[must_use]
    pub const fn locking(self) -> Locking {
        match self {
            Self::InsertLockNe
            | Self::InsertLockRegular
            | Self::B18_16mInsertFlange
            | Self::B18_16_3mInsertClass5_10
            | Self::B18_16_3mInsertClass9
            | Self::Iso7040
            | Self::Iso7041
            | Self::Iso10511
            | Self::Iso10512
            | Self::Din985 => Locking::Insert,
            Self::AllMetalLock
            | Self::AllMetalTwoWay
            | Self::B18_16mAllMetalFlange
            | Self::B18_16_3mAllMetalClass5_10
            | Self::B18_16_3mAllMetalClass9
            | Self::Iso7042
            | Self::Iso7719
            | Self::Iso7720
            | Self::Din980 => Locking::AllMetal,
            Self::HexSlotted | Self::B18_2_4_3m => Locking::Slotted,
            Self::SerratedFlange => Locking::Serrated,
            _ => Locking::None,
        }
    }
}

impl NutStyle {
    /// What the style is called where its standard stands beside it.
    pub(crate) const fn noun(self) -> &'static str {
        match self {
            Self::HexMachineScrew => "hex machine screw nut",
            Self::Hex => "hex nut",
            Self::HexJam => "hex jam nut",
            Self::HeavyHex | Self::B18_2_4_6m => "heavy hex nut",
            Self::HeavyHexJam => "heavy hex jam nut",
            Self::HexSlotted => "hex slotted nut",
            Self::HexThick => "hex thick nut",
            Self::HexHigh => "hex high nut",
            Self::InsertLockNe => "nylon-insert lock nut NE",
            Self::InsertLockRegular => "nylon-insert lock nut, regular hex",
            Self::AllMetalLock => "all-metal lock nut",
            Self::AllMetalTwoWay => "all-metal two-way lock nut",
            Self::SerratedFlange => "serrated hex flange nut",
            Self::Iso4161 | Self::En1661 | Self::B18_2_4_4m => "hex flange nut",
            Self::Iso4035 | Self::Iso4036 | Self::B18_2_4_5m => "thin hex nut",
            Self::B18_2_4_3m => "slotted hex nut",
            Self::B18_16mAllMetalFlange => "all-metal lock flange nut",
            Self::B18_16mInsertFlange => "nylon-insert lock flange nut",
            Self::Iso10511 => "thin nylon-insert lock nut",
            _ => match self.locking() {
                Locking::Insert => "nylon-insert lock nut",
                Locking::AllMetal => "all-metal lock nut",
                _ => "hex nut",
            },
        }
    }

    pub(crate) const fn table(self) -> &'static str {
        match self {
            Self::HexMachineScrew => "the table of ASME B18.2.2 hex machine screw nuts",
            Self::Hex => "the table of ASME B18.2.2 hex nuts",
            Self::HexJam => "the table of ASME B18.2.2 hex jam nuts",
            Self::HeavyHex => "the table of ASME B18.2.2 heavy hex nuts",
            Self::HeavyHexJam => "the table of ASME B18.2.2 heavy hex jam nuts",
            Self::HexSlotted => "the table of ASME B18.2.2 hex slotted nuts",
            Self::HexThick => "the table of ASME B18.2.2 hex thick nuts",
            Self::HexHigh => "the table of SAE J482a hex high nuts",
            Self::InsertLockNe => "the table of ASME B18.16.6 style NE lock nuts",
            Self::InsertLockRegular => "the table of IFI-100/107 insert lock nuts",
            Self::AllMetalLock => "the table of IFI-100/107 all-metal lock nuts",
            Self::AllMetalTwoWay => "the table of two-way lock nuts",
            Self::SerratedFlange => "the table of ASME B18.16.4 serrated flange nuts",
            Self::Iso4032 => "the table of ISO 4032 nuts",
            Self::Iso4033 => "the table of ISO 4033 nuts",
            Self::Iso4034 => "the table of ISO 4034 nuts",
            Self::Iso4035 => "the table of ISO 4035 nuts",
            Self::Iso4036 => "the table of ISO 4036 nuts",
            Self::Din934 => "the table of DIN 934 nuts",
            Self::Iso4161 => "the table of ISO 4161 nuts",
            Self::En1661 => "the table of EN 1661 nuts",
            Self::Iso7040 => "the table of ISO 7040 nuts",
            Self::Iso7041 => "the table of ISO 7041 nuts",
            Self::Iso10511 => "the table of ISO 10511 nuts",
            Self::Iso10512 => "the table of ISO 10512 nuts",
            Self::Iso7042 => "the table of ISO 7042 nuts",
            Self::Iso7719 => "the table of ISO 7719 nuts",
            Self::Iso7720 => "the table of ISO 7720 nuts",
            Self::Din985 => "the table of DIN 985 nuts",
            Self::Din980 => "the table of DIN 980 nuts",
            Self::En14399_3 => "the table of EN 14399-3 nuts",
            Self::En14399_4 => "the table of EN 14399-4 nuts",
            _ => "the table of ASME metric nuts of that style",
        }
    }
}

/// Code and label of every member.
const NAMES: [Named<NutStyle>; 44] = [
    (
        NutStyle::HexMachineScrew,
        "hex_machine_screw",
        "hex machine screw nut ASME B18.2.2",
    ),
    (NutStyle::Hex, "hex", "hex nut ASME B18.2.2"),
    (NutStyle::HexJam, "hex_jam", "hex jam nut ASME B18.2.2"),
    (
        NutStyle::HeavyHex,
        "heavy_hex",
        "heavy hex nut ASME B18.2.2",
    ),
    (
        NutStyle::HeavyHexJam,
        "heavy_hex_jam",
        "heavy hex jam nut ASME B18.2.2",
    ),
    (
        NutStyle::HexSlotted,
        "hex_slotted",
        "hex slotted nut ASME B18.2.2",
    ),
    (
        NutStyle::HexThick,
        "hex_thick",
        "hex thick nut ASME B18.2.2",
    ),
    (NutStyle::HexHigh, "hex_high", "hex high nut SAE J482a"),
    (
        NutStyle::InsertLockNe,
        "insert_lock_ne",
        "nylon-insert lock nut NE ASME B18.16.6",
    ),
    (
        NutStyle::InsertLockRegular,
        "insert_lock_regular",
        "nylon-insert lock nut, regular hex IFI-100/107",
    ),
    (
        NutStyle::AllMetalLock,
        "all_metal_lock",
        "all-metal lock nut IFI-100/107",
    ),
    (
        NutStyle::AllMetalTwoWay,
        "all_metal_two_way",
        "all-metal two-way lock nut, supplier dimensions",
    ),
    (
        NutStyle::SerratedFlange,
        "serrated_flange",
        "serrated hex flange nut ASME B18.16.4",
    ),
    (NutStyle::Iso4032, "iso_4032", "hex nut ISO 4032"),
    (NutStyle::Iso4033, "iso_4033", "hex nut ISO 4033"),
    (NutStyle::Iso4034, "iso_4034", "hex nut ISO 4034"),
    (NutStyle::Iso4035, "iso_4035", "thin hex nut ISO 4035"),
    (NutStyle::Iso4036, "iso_4036", "thin hex nut ISO 4036"),
    (NutStyle::Din934, "din_934", "hex nut DIN 934"),
    (NutStyle::Iso4161, "iso_4161", "hex flange nut ISO 4161"),
    (NutStyle::En1661, "en_1661", "hex flange nut EN 1661"),
    (
        NutStyle::B18_2_4_1m,
        "b18_2_4_1m",
        "hex nut ASME B18.2.4.1M",
    ),
    (
        NutStyle::B18_2_4_2m,
        "b18_2_4_2m",
        "hex nut ASME B18.2.4.2M",
    ),
    (
        NutStyle::B18_2_4_3m,
        "b18_2_4_3m",
        "slotted hex nut ASME B18.2.4.3M",
    ),
    (
        NutStyle::B18_2_4_4m,
        "b18_2_4_4m",
        "hex flange nut ASME B18.2.4.4M",
    ),
    (
        NutStyle::B18_2_4_5m,
        "b18_2_4_5m",
        "thin hex nut ASME B18.2.4.5M",
    ),
    (
        NutStyle::B18_2_4_6m,
        "b18_2_4_6m",
        "heavy hex nut ASME B18.2.4.6M",
    ),
    (
        NutStyle::B18_16mAllMetalFlange,
        "b18_16m_all_metal_flange",
        "all-metal lock flange nut ASME B18.16M",
    ),
    (
        NutStyle::B18_16mInsertFlange,
        "b18_16m_insert_flange",
        "nylon-insert lock flange nut ASME B18.16M",
    ),
    (
        NutStyle::B18_16_3mAllMetalClass5_10,
        "b18_16_3m_all_metal_class_5_10",
        "all-metal lock nut ASME B18.16.3M, classes 5 and 10",
    ),
    (
        NutStyle::B18_16_3mInsertClass5_10,
        "b18_16_3m_insert_class_5_10",
        "nylon-insert lock nut ASME B18.16.3M, classes 5 and 10",
    ),
    (
        NutStyle::B18_16_3mAllMetalClass9,
        "b18_16_3m_all_metal_class_9",
        "all-metal lock nut ASME B18.16.3M, class 9",
    ),
    (
        NutStyle::B18_16_3mInsertClass9,
        "b18_16_3m_insert_class_9",
        "nylon-insert lock nut ASME B18.16.3M, class 9",
    ),
    (
        NutStyle::Iso7040,
        "iso_7040",
        "nylon-insert lock nut ISO 7040",
    ),
    (
        NutStyle::Iso7041,
        "iso_7041",
        "nylon-insert lock nut ISO 7041",
    ),
    (
        NutStyle::Iso10511,
        "iso_10511",
        "thin nylon-insert lock nut ISO 10511",
    ),
    (
        NutStyle::Iso10512,
        "iso_10512",
        "nylon-insert lock nut ISO 10512",
    ),
    (NutStyle::Iso7042, "iso_7042", "all-metal lock nut ISO 7042"),
    (NutStyle::Iso7719, "iso_7719", "all-metal lock nut ISO 7719"),
    (NutStyle::Iso7720, "iso_7720", "all-metal lock nut ISO 7720"),
    (NutStyle::Din985, "din_985", "nylon-insert lock nut DIN 985"),
    (NutStyle::Din980, "din_980", "all-metal lock nut DIN 980"),
    (NutStyle::En14399_3, "en_14399_3", "hex nut EN 14399-3"),
    (NutStyle::En14399_4, "en_14399_4", "hex nut EN 14399-4"),
];

impl Key for NutStyle {
    const FAMILY: &'static str = "nut style";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for NutStyle {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for NutStyle {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}
