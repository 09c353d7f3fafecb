//! Grades and classes of nuts: how they print and how they are read.

use core::{fmt, str::FromStr};

use super::{Key, Named, code_of, keys, label_of};
use crate::error::Error;

/// Grades of nuts of SAE J995, ASTM A563, A194 and F594 and ASME B18.16.6, and classes of ISO 898-2,
/// ISO 10684, ISO 3506-2 (stainless) and DIN 267-4 (withdrawn, marked with bars: `|8|`).
///
/// Parses from the name it prints, and without the document where the rest is clear: `"A563 DH"`,
/// `"A194 2H"`, `"A4-70"`.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let grade: NutGrade = "A563 DH".parse()?;
/// assert_eq!(grade.to_string(), "ASTM A563 DH");
/// let thread: Thread = "7/8-9 UNC".parse()?;
/// let nut = |tapping| grade.strength(NutShape::HeavyHex, &thread, tapping);
/// assert_eq!(nut(NutTapping::Usual)?.proof_stress, ksi(175.0));
/// assert_eq!(nut(NutTapping::Oversize)?.proof_stress, ksi(150.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum NutGrade {
    /// SAE J995 grade 2.
    SaeJ995Grade2,
    /// SAE J995 grade 5.
    SaeJ995Grade5,
    /// SAE J995 grade 8.
    SaeJ995Grade8,
    /// ASTM A563 O.
    AstmA563O,
    /// ASTM A563 A.
    AstmA563A,
    /// ASTM A563 B.
    AstmA563B,
    /// ASTM A563 D.
    AstmA563D,
    /// ASTM A563 DH.
    AstmA563Dh,
    /// ASTM A563 DH3: weathering steel.
    AstmA563Dh3,
    /// ASTM A563 C.
    AstmA563C,
    /// ASTM A563 C3: weathering steel.
    AstmA563C3,
    /// ASTM A194 2H.
    AstmA194_2h,
    /// ASTM A194 7.
    AstmA194_7,
    /// ASTM A194 2HM.
    AstmA194_2hm,
    /// ASTM A194 2.
    AstmA194_2,
    /// ASTM A194 1.
    AstmA194_1,
    /// ASTM A194 8 class 1: stainless steel 304.
    AstmA194_8Class1,
    /// ASTM A194 8M class 1: stainless steel 316.
    AstmA194_8mClass1,
    /// ASME B18.16.6 grade N2: insert lock nuts.
    AsmeB18_16_6GradeN2,
    /// ASME B18.16.6 grade N5: insert lock nuts.
    AsmeB18_16_6GradeN5,
    /// ASME B18.16.6 grade N8: insert lock nuts.
    AsmeB18_16_6GradeN8,
    /// ISO 898-2 class 4.
    Iso898_2Class4,
    /// ISO 898-2 class 5.
    Iso898_2Class5,
    /// ISO 898-2 class 6.
    Iso898_2Class6,
    /// ISO 898-2 class 8.
    Iso898_2Class8,
    /// ISO 898-2 class 10.
    Iso898_2Class10,
    /// ISO 898-2 class 12.
    Iso898_2Class12,
    /// ISO 898-2 class 9.
    Iso898_2Class9,
    /// ISO 898-2 class 04: thin nuts.
    Iso898_2Class04,
    /// ISO 898-2 class 05: thin nuts.
    Iso898_2Class05,
    /// ISO 10684 class 5Z: tapped oversize (6AZ or 6AX) for hot-dip galvanized bolts.
    Iso10684Class5z,
    /// ISO 10684 class 6Z: tapped oversize (6AZ or 6AX) for hot-dip galvanized bolts.
    Iso10684Class6z,
    /// ISO 10684 class 8Z: tapped oversize (6AZ or 6AX) for hot-dip galvanized bolts.
    Iso10684Class8z,
    /// ISO 10684 class 9Z: tapped oversize (6AZ or 6AX) for hot-dip galvanized bolts.
    Iso10684Class9z,
    /// ISO 10684 class 10Z: tapped oversize (6AZ or 6AX) for hot-dip galvanized bolts.
    Iso10684Class10z,
    /// ISO 3506-2 class A1-50: austenitic steel, 500 MPa.
    Iso3506_2ClassA1_50,
    /// ISO 3506-2 class A1-70: austenitic steel, 700 MPa.
    Iso3506_2ClassA1_70,
    /// ISO 3506-2 class A1-80: austenitic steel, 800 MPa.
    Iso3506_2ClassA1_80,
    /// ISO 3506-2 class A2-50: austenitic steel, 500 MPa.
    Iso3506_2ClassA2_50,
    /// ISO 3506-2 class A2-70: austenitic steel, 700 MPa.
    Iso3506_2ClassA2_70,
    /// ISO 3506-2 class A2-80: austenitic steel, 800 MPa.
    Iso3506_2ClassA2_80,
    /// ISO 3506-2 class A3-50: austenitic steel, 500 MPa.
    Iso3506_2ClassA3_50,
    /// ISO 3506-2 class A3-70: austenitic steel, 700 MPa.
    Iso3506_2ClassA3_70,
    /// ISO 3506-2 class A3-80: austenitic steel, 800 MPa.
    Iso3506_2ClassA3_80,
    /// ISO 3506-2 class A4-50: austenitic steel, 500 MPa.
    Iso3506_2ClassA4_50,
    /// ISO 3506-2 class A4-70: austenitic steel, 700 MPa.
    Iso3506_2ClassA4_70,
    /// ISO 3506-2 class A4-80: austenitic steel, 800 MPa.
    Iso3506_2ClassA4_80,
    /// ISO 3506-2 class A5-50: austenitic steel, 500 MPa.
    Iso3506_2ClassA5_50,
    /// ISO 3506-2 class A5-70: austenitic steel, 700 MPa.
    Iso3506_2ClassA5_70,
    /// ISO 3506-2 class A5-80: austenitic steel, 800 MPa.
    Iso3506_2ClassA5_80,
    /// ISO 3506-2 class A1-025: thin nuts of austenitic steel.
    Iso3506_2ClassA1_025,
    /// ISO 3506-2 class A1-035: thin nuts of austenitic steel.
    Iso3506_2ClassA1_035,
    /// ISO 3506-2 class A1-040: thin nuts of austenitic steel.
    Iso3506_2ClassA1_040,
    /// ISO 3506-2 class A2-025: thin nuts of austenitic steel.
    Iso3506_2ClassA2_025,
    /// ISO 3506-2 class A2-035: thin nuts of austenitic steel.
    Iso3506_2ClassA2_035,
    /// ISO 3506-2 class A2-040: thin nuts of austenitic steel.
    Iso3506_2ClassA2_040,
    /// ISO 3506-2 class A3-025: thin nuts of austenitic steel.
    Iso3506_2ClassA3_025,
    /// ISO 3506-2 class A3-035: thin nuts of austenitic steel.
    Iso3506_2ClassA3_035,
    /// ISO 3506-2 class A3-040: thin nuts of austenitic steel.
    Iso3506_2ClassA3_040,
    /// ISO 3506-2 class A4-025: thin nuts of austenitic steel.
    Iso3506_2ClassA4_025,
    /// ISO 3506-2 class A4-035: thin nuts of austenitic steel.
    Iso3506_2ClassA4_035,
    /// ISO 3506-2 class A4-040: thin nuts of austenitic steel.
    Iso3506_2ClassA4_040,
    /// ISO 3506-2 class A5-025: thin nuts of austenitic steel.
    Iso3506_2ClassA5_025,
    /// ISO 3506-2 class A5-035: thin nuts of austenitic steel.
    Iso3506_2ClassA5_035,
    /// ISO 3506-2 class A5-040: thin nuts of austenitic steel.
    Iso3506_2ClassA5_040,
    /// ISO 3506-2 class C1-50: martensitic steel.
    Iso3506_2ClassC1_50,
    /// ISO 3506-2 class C1-70: martensitic steel.
    Iso3506_2ClassC1_70,
    /// ISO 3506-2 class C1-110: martensitic steel.
    Iso3506_2ClassC1_110,
    /// ISO 3506-2 class C3-80: martensitic steel.
    Iso3506_2ClassC3_80,
    /// ISO 3506-2 class C4-50: martensitic steel.
    Iso3506_2ClassC4_50,
    /// ISO 3506-2 class C4-70: martensitic steel.
    Iso3506_2ClassC4_70,
    /// ISO 3506-2 class F1-45: ferritic steel.
    Iso3506_2ClassF1_45,
    /// ISO 3506-2 class F1-60: ferritic steel.
    Iso3506_2ClassF1_60,
    /// ASTM F594 alloy group 1 AF: austenitic 304 family, formed and annealed after.
    AstmF594Group1Af,
    /// ASTM F594 alloy group 1 A: austenitic 304 family, machined from annealed stock.
    AstmF594Group1A,
    /// ASTM F594 alloy group 1 CW1: austenitic 304 family, cold worked, to 5/8 in.
    AstmF594Group1Cw1,
    /// ASTM F594 alloy group 1 CW2: austenitic 304 family, cold worked, from 3/4 in.
    AstmF594Group1Cw2,
    /// ASTM F594 alloy group 2 AF: austenitic 316, formed and annealed after.
    AstmF594Group2Af,
    /// ASTM F594 alloy group 2 A: austenitic 316, machined from annealed stock.
    AstmF594Group2A,
    /// ASTM F594 alloy group 2 CW1: austenitic 316, cold worked, to 5/8 in.
    AstmF594Group2Cw1,
    /// ASTM F594 alloy group 2 CW2: austenitic 316, cold worked, from 3/4 in.
    AstmF594Group2Cw2,
    /// DIN 267-4 class 4, marked with bars: full nuts of DIN 934.
    Din267_4_4,
    /// DIN 267-4 class 5, marked with bars: full nuts of DIN 934.
    Din267_4_5,
    /// DIN 267-4 class 6, marked with bars: full nuts of DIN 934.
    Din267_4_6,
    /// DIN 267-4 class 8, marked with bars: full nuts of DIN 934.
    Din267_4_8,
    /// DIN 267-4 class 10, marked with bars: full nuts of DIN 934.
    Din267_4_10,
    /// DIN 267-4 class 12, marked with bars: full nuts of DIN 934.
    Din267_4_12,
}

/// Codes, and the names as the table has them.
const NAMES: [Named<NutGrade>; 87] = [
    (NutGrade::SaeJ995Grade2, "sae_j995_2", "SAE J995 grade 2"),
    (NutGrade::SaeJ995Grade5, "sae_j995_5", "SAE J995 grade 5"),
    (NutGrade::SaeJ995Grade8, "sae_j995_8", "SAE J995 grade 8"),
    (NutGrade::AstmA563O, "astm_a563_o", "ASTM A563 O"),
    (NutGrade::AstmA563A, "astm_a563_a", "ASTM A563 A"),
    (NutGrade::AstmA563B, "astm_a563_b", "ASTM A563 B"),
    (NutGrade::AstmA563D, "astm_a563_d", "ASTM A563 D"),
    (NutGrade::AstmA563Dh, "astm_a563_dh", "ASTM A563 DH"),
    (NutGrade::AstmA563Dh3, "astm_a563_dh3", "ASTM A563 DH3"),
    (NutGrade::AstmA563C, "astm_a563_c", "ASTM A563 C"),
    (NutGrade::AstmA563C3, "astm_a563_c3", "ASTM A563 C3"),
    (NutGrade::AstmA194_2h, "astm_a194_2h", "ASTM A194 2H"),
    (NutGrade::AstmA194_7, "astm_a194_7", "ASTM A194 7"),
    (NutGrade::AstmA194_2hm, "astm_a194_2hm", "ASTM A194 2HM"),
    (NutGrade::AstmA194_2, "astm_a194_2", "ASTM A194 2"),
    (NutGrade::AstmA194_1, "astm_a194_1", "ASTM A194 1"),
    (
        NutGrade::AstmA194_8Class1,
        "astm_a194_8_class_1",
        "ASTM A194 8 class 1",
    ),
    (
        NutGrade::AstmA194_8mClass1,
        "astm_a194_8m_class_1",
        "ASTM A194 8M class 1",
    ),
    (
        NutGrade::AsmeB18_16_6GradeN2,
        "asme_b18_16_6_n2",
        "ASME B18.16.6 grade N2",
    ),
    (
        NutGrade::AsmeB18_16_6GradeN5,
        "asme_b18_16_6_n5",
        "ASME B18.16.6 grade N5",
    ),
    (
        NutGrade::AsmeB18_16_6GradeN8,
        "asme_b18_16_6_n8",
        "ASME B18.16.6 grade N8",
    ),
    (NutGrade::Iso898_2Class4, "iso_898_2_4", "ISO 898-2 class 4"),
    (NutGrade::Iso898_2Class5, "iso_898_2_5", "ISO 898-2 class 5"),
    (NutGrade::Iso898_2Class6, "iso_898_2_6", "ISO 898-2 class 6"),
    (NutGrade::Iso898_2Class8, "iso_898_2_8", "ISO 898-2 class 8"),
    (
        NutGrade::Iso898_2Class10,
        "iso_898_2_10",
        "ISO 898-2 class 10",
    ),
    (
        NutGrade::Iso898_2Class12,
        "iso_898_2_12",
        "ISO 898-2 class 12",
    ),
    (NutGrade::Iso898_2Class9, "iso_898_2_9", "ISO 898-2 class 9"),
    (
        NutGrade::Iso898_2Class04,
        "iso_898_2_04",
        "ISO 898-2 class 04",
    ),
    (
        NutGrade::Iso898_2Class05,
        "iso_898_2_05",
        "ISO 898-2 class 05",
    ),
    (
        NutGrade::Iso10684Class5z,
        "iso_10684_5z",
        "ISO 10684 class 5Z",
    ),
    (
        NutGrade::Iso10684Class6z,
        "iso_10684_6z",
        "ISO 10684 class 6Z",
    ),
    (
        NutGrade::Iso10684Class8z,
        "iso_10684_8z",
        "ISO 10684 class 8Z",
    ),
    (
        NutGrade::Iso10684Class9z,
        "iso_10684_9z",
        "ISO 10684 class 9Z",
    ),
    (
        NutGrade::Iso10684Class10z,
        "iso_10684_10z",
        "ISO 10684 class 10Z",
    ),
    (
        NutGrade::Iso3506_2ClassA1_50,
        "iso_3506_2_a1_50",
        "ISO 3506-2 class A1-50",
    ),
    (
        NutGrade::Iso3506_2ClassA1_70,
        "iso_3506_2_a1_70",
        "ISO 3506-2 class A1-70",
    ),
    (
        NutGrade::Iso3506_2ClassA1_80,
        "iso_3506_2_a1_80",
        "ISO 3506-2 class A1-80",
    ),
    (
        NutGrade::Iso3506_2ClassA2_50,
        "iso_3506_2_a2_50",
        "ISO 3506-2 class A2-50",
    ),
    (
        NutGrade::Iso3506_2ClassA2_70,
        "iso_3506_2_a2_70",
        "ISO 3506-2 class A2-70",
    ),
    (
        NutGrade::Iso3506_2ClassA2_80,
        "iso_3506_2_a2_80",
        "ISO 3506-2 class A2-80",
    ),
    (
        NutGrade::Iso3506_2ClassA3_50,
        "iso_3506_2_a3_50",
        "ISO 3506-2 class A3-50",
    ),
    (
        NutGrade::Iso3506_2ClassA3_70,
        "iso_3506_2_a3_70",
        "ISO 3506-2 class A3-70",
    ),
    (
        NutGrade::Iso3506_2ClassA3_80,
        "iso_3506_2_a3_80",
        "ISO 3506-2 class A3-80",
    ),
    (
        NutGrade::Iso3506_2ClassA4_50,
        "iso_3506_2_a4_50",
        "ISO 3506-2 class A4-50",
    ),
    (
        NutGrade::Iso3506_2ClassA4_70,
        "iso_3506_2_a4_70",
        "ISO 3506-2 class A4-70",
    ),
    (
        NutGrade::Iso3506_2ClassA4_80,
        "iso_3506_2_a4_80",
        "ISO 3506-2 class A4-80",
    ),
    (
        NutGrade::Iso3506_2ClassA5_50,
        "iso_3506_2_a5_50",
        "ISO 3506-2 class A5-50",
    ),
    (
        NutGrade::Iso3506_2ClassA5_70,
        "iso_3506_2_a5_70",
        "ISO 3506-2 class A5-70",
    ),
    (
        NutGrade::Iso3506_2ClassA5_80,
        "iso_3506_2_a5_80",
        "ISO 3506-2 class A5-80",
    ),
    (
        NutGrade::Iso3506_2ClassA1_025,
        "iso_3506_2_a1_025",
        "ISO 3506-2 class A1-025",
    ),
    (
        NutGrade::Iso3506_2ClassA1_035,
        "iso_3506_2_a1_035",
        "ISO 3506-2 class A1-035",
    ),
    (
        NutGrade::Iso3506_2ClassA1_040,
        "iso_3506_2_a1_040",
        "ISO 3506-2 class A1-040",
    ),
    (
        NutGrade::Iso3506_2ClassA2_025,
        "iso_3506_2_a2_025",
        "ISO 3506-2 class A2-025",
    ),
    (
        NutGrade::Iso3506_2ClassA2_035,
        "iso_3506_2_a2_035",
        "ISO 3506-2 class A2-035",
    ),
    (
        NutGrade::Iso3506_2ClassA2_040,
        "iso_3506_2_a2_040",
        "ISO 3506-2 class A2-040",
    ),
    (
        NutGrade::Iso3506_2ClassA3_025,
        "iso_3506_2_a3_025",
        "ISO 3506-2 class A3-025",
    ),
    (
        NutGrade::Iso3506_2ClassA3_035,
        "iso_3506_2_a3_035",
        "ISO 3506-2 class A3-035",
    ),
    (
        NutGrade::Iso3506_2ClassA3_040,
        "iso_3506_2_a3_040",
        "ISO 3506-2 class A3-040",
    ),
    (
        NutGrade::Iso3506_2ClassA4_025,
        "iso_3506_2_a4_025",
        "ISO 3506-2 class A4-025",
    ),
    (
        NutGrade::Iso3506_2ClassA4_035,
        "iso_3506_2_a4_035",
        "ISO 3506-2 class A4-035",
    ),
    (
        NutGrade::Iso3506_2ClassA4_040,
        "iso_3506_2_a4_040",
        "ISO 3506-2 class A4-040",
    ),
    (
        NutGrade::Iso3506_2ClassA5_025,
        "iso_3506_2_a5_025",
        "ISO 3506-2 class A5-025",
    ),
    (
        NutGrade::Iso3506_2ClassA5_035,
        "iso_3506_2_a5_035",
        "ISO 3506-2 class A5-035",
    ),
    (
        NutGrade::Iso3506_2ClassA5_040,
        "iso_3506_2_a5_040",
        "ISO 3506-2 class A5-040",
    ),
    (
        NutGrade::Iso3506_2ClassC1_50,
        "iso_3506_2_c1_50",
        "ISO 3506-2 class C1-50",
    ),
    (
        NutGrade::Iso3506_2ClassC1_70,
        "iso_3506_2_c1_70",
        "ISO 3506-2 class C1-70",
    ),
    (
        NutGrade::Iso3506_2ClassC1_110,
        "iso_3506_2_c1_110",
        "ISO 3506-2 class C1-110",
    ),
    (
        NutGrade::Iso3506_2ClassC3_80,
        "iso_3506_2_c3_80",
        "ISO 3506-2 class C3-80",
    ),
    (
        NutGrade::Iso3506_2ClassC4_50,
        "iso_3506_2_c4_50",
        "ISO 3506-2 class C4-50",
    ),
    (
        NutGrade::Iso3506_2ClassC4_70,
        "iso_3506_2_c4_70",
        "ISO 3506-2 class C4-70",
    ),
    (
        NutGrade::Iso3506_2ClassF1_45,
        "iso_3506_2_f1_45",
        "ISO 3506-2 class F1-45",
    ),
    (
        NutGrade::Iso3506_2ClassF1_60,
        "iso_3506_2_f1_60",
        "ISO 3506-2 class F1-60",
    ),
    (
        NutGrade::AstmF594Group1Af,
        "astm_f594_group_1_af",
        "ASTM F594 group 1 AF",
    ),
    (
        NutGrade::AstmF594Group1A,
        "astm_f594_group_1_a",
        "ASTM F594 group 1 A",
    ),
    (
        NutGrade::AstmF594Group1Cw1,
        "astm_f594_group_1_cw1",
        "ASTM F594 group 1 CW1",
    ),
    (
        NutGrade::AstmF594Group1Cw2,
        "astm_f594_group_1_cw2",
        "ASTM F594 group 1 CW2",
    ),
    (
        NutGrade::AstmF594Group2Af,
        "astm_f594_group_2_af",
        "ASTM F594 group 2 AF",
    ),
    (
        NutGrade::AstmF594Group2A,
        "astm_f594_group_2_a",
        "ASTM F594 group 2 A",
    ),
    (
        NutGrade::AstmF594Group2Cw1,
        "astm_f594_group_2_cw1",
        "ASTM F594 group 2 CW1",
    ),
    (
        NutGrade::AstmF594Group2Cw2,
        "astm_f594_group_2_cw2",
        "ASTM F594 group 2 CW2",
    ),
    (NutGrade::Din267_4_4, "din_267_4_4", "DIN 267-4 |4|"),
    (NutGrade::Din267_4_5, "din_267_4_5", "DIN 267-4 |5|"),
    (NutGrade::Din267_4_6, "din_267_4_6", "DIN 267-4 |6|"),
    (NutGrade::Din267_4_8, "din_267_4_8", "DIN 267-4 |8|"),
    (NutGrade::Din267_4_10, "din_267_4_10", "DIN 267-4 |10|"),
    (NutGrade::Din267_4_12, "din_267_4_12", "DIN 267-4 |12|"),
];

impl Key for NutGrade {
    const FAMILY: &'static str = "nut grade";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for NutGrade {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for NutGrade {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

#[cfg(feature = "serde")]
mod serde_text {
    use super::{Key, NutGrade};
    use alloc::string::String;

    impl serde::Serialize for NutGrade {
        fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
            serializer.serialize_str(self.code())
        }
    }

    impl<'de> serde::Deserialize<'de> for NutGrade {
        fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
            String::deserialize(deserializer)?
                .parse()
                .map_err(serde::de::Error::custom)
        }
    }
}
