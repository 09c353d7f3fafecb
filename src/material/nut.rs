//! Grades and classes of nuts, and how strong a nut is on a thread.

use alloc::{format, vec::Vec};
use core::{fmt, str::FromStr};

use super::fit::in_iso_10684;
use super::{NutTapping, Sizes, widest};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, out_of_range, positive};
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::Provenance;
use crate::tables::galvanic::Metal;
use crate::tables::nut_grades::{NutGradeRow, NutShape};
use crate::thread::Thread;
use crate::units::{Area, Force, Stress, millimetres};

#[cfg(test)]
mod tests;

/// Grades of nuts of SAE J995, ASTM A563, A194 and F594 and ASME B18.16.6, and classes of ISO 898-2,
/// ISO 10684 and ISO 3506-2 (stainless).
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
}

const ISO_3506_2: &str = "ISO 3506-2 class ";

/// Codes, and the names as the table has them.
const NAMES: [Named<NutGrade>; 81] = [
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
];

/// Strength of a nut on a thread.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let nut = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
/// assert_eq!(nut.proof_stress, megapascals(880.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutStrength {
    /// Grade.
    pub grade: NutGrade,
    /// Shape.
    pub shape: NutShape,
    /// The thread it holds for: a nut of another size or pitch may have another proof stress.
    pub thread: Thread,
    /// How its thread is tapped; a class of ISO 10684 is always tapped oversize.
    pub tapping: NutTapping,
    /// Proof stress so tapped: what the nut must bear on a hard mandrel without stripping, over the tensile
    /// stress area of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_stress: Stress,
    /// Restrictions of the row.
    pub note: Option<&'static str>,
    /// Source of the proof stress.
    pub provenance: Provenance,
}

impl NutStrength {
    /// Proof load of the nut on its thread: proof stress times [`Thread::tensile_stress_area`].
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a thread of another diameter or pitch than the strength was asked for.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::pound_force;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // ASTM A194 prints 24 830 lbf, from an area of 0.1419 in2.
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let nut = NutGrade::AstmA194_2h.strength(NutShape::HeavyHex, &thread, NutTapping::Usual)?;
    /// assert!((nut.proof_load(&thread)?.get::<pound_force>() - 24_830.0).abs() < 5.0);
    /// assert!(nut.proof_load(&"3/4-10 UNC".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn proof_load(&self, thread: &Thread) -> Result<Force, Error> {
        let own = &self.thread;
        if !own.is_same_size(thread) {
            return Err(Error::Mismatch(format!(
                "the strength of the nut is that of {own}, not of {thread}"
            )));
        }
        Ok(self.proof_stress * thread.tensile_stress_area())
    }

    /// The same on a given area, such as the printed one.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an area that is not positive and finite, or so great that the load is not.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M16".parse()?;
    /// let nut = NutGrade::Iso898_2Class10.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
    /// // ISO 898-2 prints 164 900 N.
    /// let load = nut.proof_load_on(square_millimetres(157.0))?;
    /// assert!((load - newtons(164_850.0)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn proof_load_on(&self, area: Area) -> Result<Force, Error> {
        let area = positive("tensile stress area", area)?;
        positive("proof load of the nut", self.proof_stress * area)
    }

    /// What the user of this strength must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M4".parse()?;
    /// let nut = NutGrade::Iso898_2Class9.strength(NutShape::Style2, &thread, NutTapping::Usual)?;
    /// assert_eq!(nut.cautions().iter().count(), 1); // recalled
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("nut strength", self.provenance))
    }
}

impl NutGrade {
    /// Every grade.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutGrade::all().any(|grade| grade == NutGrade::AstmA194_2h));
    /// ```
    pub fn all() -> impl Iterator<Item = Self> {
        Self::ALL.iter().copied()
    }

    /// Strength of a nut of this grade and shape on a thread, tapped as its finish asks for
    /// ([`Finish::nut_tapping`](super::Finish::nut_tapping)).
    ///
    /// Sources: SAE J995, ASTM A563 Tables 3 and 4, ASTM A194, ASTM F594, ISO 898-2, ISO 10684 Annex A, ISO 3506-2
    /// clauses 5.2.3 and 5.2.4 (the number of a class is a tenth of its proof stress in MPa); the row
    /// says which and how it is known. Tapped oversize, ASTM A563 O, A and B lose a quarter and DH heavy hex a
    /// seventh; metric nuts M8 and M10 bear what ISO 10684 gives, and from M12 on all that ISO 898-2 asks
    /// (ISO 10684, clause 7, in an extract of AS/NZS 1214).
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has no such shape in this grade, or not for such threads;
    /// the message lists what it has. [`Error::OutOfRange`] if it does not cover the size. [`Error::NoValue`]
    /// for a nut tapped oversize of a standard that gives no strength for it.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A jam nut carries 60 % of a full one.
    /// let thread: Thread = "5/8-11 UNC".parse()?;
    /// let of = |shape| NutGrade::SaeJ995Grade8.strength(shape, &thread, NutTapping::Usual);
    /// assert_eq!(of(NutShape::HexJam)?.proof_stress, 0.6 * of(NutShape::Hex)?.proof_stress);
    /// assert_eq!(
    ///     of(NutShape::HeavyHex).unwrap_err().to_string(),
    ///     "heavy hex nut of SAE J995 grade 8 is not in the table of nut strengths; \
    ///      shapes of that grade: hex, hex flange, hex jam, heavy hex jam, hex slotted",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(
        self,
        shape: NutShape,
        thread: &Thread,
        tapping: NutTapping,
    ) -> Result<NutStrength, Error> {
        let oversize = self.is_oversize() || tapping == NutTapping::Oversize;
        let (row, proof_stress) = if oversize {
            self.oversize(shape, thread)?
        } else {
            let row = self.row(shape, thread)?;
            (row, row.proof_stress)
        };
        Ok(NutStrength {
            grade: self,
            shape,
            thread: *thread,
            tapping: if oversize {
                NutTapping::Oversize
            } else {
                NutTapping::Usual
            },
            proof_stress,
            note: row.note,
            provenance: row.provenance,
        })
    }

    /// Whether it is a class of nuts that are tapped oversize by definition: those of ISO 10684 with Z.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutGrade::Iso10684Class8z.is_oversize() && !NutGrade::AstmA563Dh.is_oversize());
    /// ```
    #[must_use]
    pub const fn is_oversize(self) -> bool {
        self.usual_class().is_some()
    }

    /// Whether it is a grade of stainless steel: ISO 3506-2, ASTM F594, and ASTM A194 8 and 8M.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutGrade::Iso3506_2ClassA4_70.is_stainless());
    /// assert!(!NutGrade::Iso898_2Class8.is_stainless());
    /// ```
    #[must_use]
    pub fn is_stainless(self) -> bool {
        let name = self.label();
        matches!(self, Self::AstmA194_8Class1 | Self::AstmA194_8mClass1)
            || name.starts_with(ISO_3506_2)
            || name.starts_with("ASTM F594 ")
    }

    /// What a stainless grade is made of, bare; none of others.
    pub(crate) fn stainless_metal(self) -> Option<Metal> {
        self.is_stainless()
            .then_some(if super::of_little_chromium(self.label()) {
                Metal::Stainless12Chromium
            } else {
                Metal::Stainless18Chromium
            })
    }

    /// The class of ISO 898-2 that a class of ISO 10684 is tapped oversize from.
    const fn usual_class(self) -> Option<Self> {
        Some(match self {
            Self::Iso10684Class5z => Self::Iso898_2Class5,
            Self::Iso10684Class6z => Self::Iso898_2Class6,
            Self::Iso10684Class8z => Self::Iso898_2Class8,
            Self::Iso10684Class9z => Self::Iso898_2Class9,
            Self::Iso10684Class10z => Self::Iso898_2Class10,
            _ => return None,
        })
    }

    /// Row and proof stress of a nut tapped oversize.
    fn oversize(
        self,
        shape: NutShape,
        thread: &Thread,
    ) -> Result<(&'static NutGradeRow, Stress), Error> {
        let no_value = |reason| Error::NoValue {
            quantity: "proof stress",
            subject: format!("a {shape} nut of {self}, tapped oversize"),
            reason,
        };
        if self.is_stainless() {
            self.row(shape, thread)?;
            return Err(no_value("nuts of stainless steel are not made so"));
        }
        if thread.is_unified() {
            let row = self.row(shape, thread)?;
            let stress = row.proof_stress_overtapped;
            return match stress {
                Some(stress) => Ok((row, stress)),
                None => Err(no_value("its standard gives none for oversize threads")),
            };
        }
        if !in_iso_10684(thread) {
            return Err(no_value("ISO 10684 is for coarse threads M8 to M64"));
        }
        let usual = self.usual_class().unwrap_or(self);
        let row = if thread.nominal_diameter() < millimetres(12.0) {
            let mut classes = Self::all();
            let marked = classes.find(|class| class.usual_class() == Some(usual));
            marked
                .ok_or_else(|| no_value("ISO 10684 has no such class at that size"))?
                .row(shape, thread)?
        } else {
            usual.row(shape, thread)?
        };
        Ok((row, row.proof_stress))
    }

    /// The row of a shape and thread.
    fn row(self, shape: NutShape, thread: &Thread) -> Result<&'static NutGradeRow, Error> {
        let diameter = thread.nominal_diameter();
        let sizes = |row: &NutGradeRow| Sizes {
            from: row.size_from,
            over: row.size_over,
            thru: Some(row.size_thru),
        };
        let of_all = |row: &&'static NutGradeRow| {
            row.grade == self
                && row.shape == shape
                && row.threads.covers(thread)
                && sizes(row).cover(diameter)
        };
        if let Some(row) = rows().find(of_all) {
            return Ok(row);
        }
        let of_grade = rows().filter(|row| row.grade == self);
        let of_shape = of_grade.clone().filter(|row| row.shape == shape);
        let of_thread = of_shape.clone().filter(|row| row.threads.covers(thread));
        let not_in_table = |what: &str, known: Vec<&str>| Error::NotInTable {
            table: "the table of nut strengths",
            wanted: format!("{shape} nut of {self}"),
            available: format!("{what} of that grade: {}", known.join(", ")),
        };
        if of_shape.clone().next().is_none() {
            let shapes = unique(of_grade.map(|row| row.shape.label()));
            return Err(not_in_table("shapes", shapes));
        }
        if of_thread.clone().next().is_none() {
            let threads = unique(of_shape.map(|row| row.threads.label()));
            return Err(Error::NotInTable {
                table: "the table of nut strengths",
                wanted: format!("{shape} nut of {self} with a thread {thread}"),
                available: format!("its threads are {}", threads.join("; ")),
            });
        }
        Err(out_of_range(
            format!("nominal diameter for a {shape} nut of {self}"),
            diameter,
            widest(of_thread.map(sizes), diameter),
        ))
    }
}

fn rows() -> impl Iterator<Item = &'static NutGradeRow> + Clone {
    NutGradeRow::all_inch()
        .iter()
        .chain(NutGradeRow::all_metric())
}

fn unique<'a>(names: impl Iterator<Item = &'a str>) -> Vec<&'a str> {
    let mut found = Vec::new();
    for name in names {
        if !found.contains(&name) {
            found.push(name);
        }
    }
    found
}

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
    use super::NutGrade;
    use crate::names::Key;
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
