//! Bolt grades of ASTM standards.

use core::fmt;

use super::name_of;

/// Bolt grades of ASTM A307, A449, F3125 (A325, A490, their twist-off kinds and metric sisters), A354,
/// A193, A574, F593 and F568M (withdrawn 2012).
///
/// Types of a standard that differ in steel and not in strength (weathering steel) are grades of
/// their own here: their marks differ, and they need nuts and washers of their own kind.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let strength = AstmGrade::A449Type1.strength(inches(1.25))?;
/// assert_eq!(strength.tensile_strength, ksi(105.0)); // 120 ksi up to 1 in
/// assert_eq!(AstmGrade::A307A.strength(inches(0.5))?.proof_stress, None); // A307 gives none
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum AstmGrade {
    /// A307 grade A: low carbon bolts for general use. No yield or proof stress is specified.
    A307A,
    /// A307 grade B: for flanged joints of piping.
    A307B,
    /// A449 type 1: as SAE J429 grade 5 to 1-1/2 in, and on to 3 in.
    A449Type1,
    /// A449 type 2: low carbon martensite, withdrawn 2003.
    A449Type2,
    /// A449 type 3: weathering steel.
    A449Type3,
    /// F3125 grade A325 type 1: heavy hex structural bolts.
    F3125A325Type1,
    /// F3125 grade F1852 type 1: twist-off structural assemblies.
    F3125F1852Type1,
    /// F3125 grade A325 type 3: heavy hex structural bolts, weathering steel.
    F3125A325Type3,
    /// F3125 grade F1852 type 3: twist-off structural assemblies, weathering steel.
    F3125F1852Type3,
    /// F3125 grade A490 type 1: heavy hex structural bolts.
    F3125A490Type1,
    /// F3125 grade F2280 type 1: twist-off structural assemblies.
    F3125F2280Type1,
    /// F3125 grade A490 type 3: heavy hex structural bolts, weathering steel.
    F3125A490Type3,
    /// F3125 grade F2280 type 3: twist-off structural assemblies, weathering steel.
    F3125F2280Type3,
    /// A325 as it was before F3125: weaker above 1 in.
    A325To2014,
    /// A354 grade BC.
    A354Bc,
    /// A354 grade BD of editions up to about 2011: weaker above 2-1/2 in.
    A354BdTo2011,
    /// A354 grade BD of later editions.
    A354Bd,
    /// A193 grade B5: 4 to 6 % chromium steel.
    A193B5,
    /// A193 grade B6: 13 % chromium steel (410).
    A193B6,
    /// A193 grade B7: Cr-Mo steel (4140/4142), quenched and tempered.
    A193B7,
    /// A193 grade B7M: Cr-Mo steel, quenched and tempered (hardness limited).
    A193B7m,
    /// A193 grade B16: Cr-Mo-V steel, quenched and tempered.
    A193B16,
    /// A193 grade B8 class 1: austenitic stainless 304, carbide solution treated.
    A193B8Class1,
    /// A193 grade B8M class 1: austenitic stainless 316, carbide solution treated.
    A193B8mClass1,
    /// A193 grade B8 class 2: austenitic stainless 304, carbide solution treated and strain hardened.
    A193B8Class2,
    /// A193 grade B8M class 2: austenitic stainless 316, carbide solution treated and strain hardened.
    A193B8mClass2,
    /// A574 socket head cap screws.
    A574,
    /// F593 alloy group 1 AF: austenitic 304 family, headed and annealed after manufacture.
    F593Group1Af,
    /// F593 alloy group 1 A: austenitic 304 family, machined from annealed stock.
    F593Group1A,
    /// F593 alloy group 1 CW1: austenitic 304 family, cold worked.
    F593Group1Cw1,
    /// F593 alloy group 1 CW2: austenitic 304 family, cold worked.
    F593Group1Cw2,
    /// F593 alloy group 2 AF: austenitic 316, headed and annealed after manufacture.
    F593Group2Af,
    /// F593 alloy group 2 A: austenitic 316, machined from annealed stock.
    F593Group2A,
    /// F593 alloy group 2 CW1: austenitic 316, cold worked.
    F593Group2Cw1,
    /// F593 alloy group 2 CW2: austenitic 316, cold worked.
    F593Group2Cw2,
    /// F593 alloy group 4 A: ferritic 430.
    F593Group4A,
    /// F593 alloy group 4 CW1: ferritic 430.
    F593Group4Cw1,
    /// F593 alloy group 4 CW2: ferritic 430.
    F593Group4Cw2,
    /// F593 alloy group 5 H: martensitic 410.
    F593Group5H,
    /// F593 alloy group 5 HT: martensitic 410.
    F593Group5Ht,
    /// F593 alloy group 6 H: martensitic 431.
    F593Group6H,
    /// F593 alloy group 6 HT: martensitic 431.
    F593Group6Ht,
    /// F593 alloy group 7 AH: precipitation hardening 630.
    F593Group7Ah,
    /// F568M class 4.6.
    F568m4_6,
    /// F568M class 4.8.
    F568m4_8,
    /// F568M class 5.8.
    F568m5_8,
    /// F568M class 8.8, from M16.
    F568m8_8,
    /// F568M class 8.8 of low carbon boron steel.
    F568m8_8Boron,
    /// F568M class 8.8.3: weathering steel.
    F568m8_8_3,
    /// F568M class 9.8.
    F568m9_8,
    /// F568M class 10.9.
    F568m10_9,
    /// F568M class 10.9 of medium carbon alloy steel.
    F568m10_9Alloy,
    /// F568M class 10.9.3: weathering steel.
    F568m10_9_3,
    /// F568M class 12.9.
    F568m12_9,
    /// F3125 grade A325M: metric heavy hex structural bolts, class 8.8.
    F3125A325m,
    /// F3125 grade A490M: metric heavy hex structural bolts, class 10.9.
    F3125A490m,
}

/// The names as the trade writes them, without "ASTM"; the table has the same.
pub(super) const NAMES: [(AstmGrade, &str); 56] = [
    (AstmGrade::A307A, "A307 A"),
    (AstmGrade::A307B, "A307 B"),
    (AstmGrade::A449Type1, "A449 type 1"),
    (AstmGrade::A449Type2, "A449 type 2"),
    (AstmGrade::A449Type3, "A449 type 3"),
    (AstmGrade::F3125A325Type1, "F3125 A325 type 1"),
    (AstmGrade::F3125F1852Type1, "F3125 F1852 type 1"),
    (AstmGrade::F3125A325Type3, "F3125 A325 type 3"),
    (AstmGrade::F3125F1852Type3, "F3125 F1852 type 3"),
    (AstmGrade::F3125A490Type1, "F3125 A490 type 1"),
    (AstmGrade::F3125F2280Type1, "F3125 F2280 type 1"),
    (AstmGrade::F3125A490Type3, "F3125 A490 type 3"),
    (AstmGrade::F3125F2280Type3, "F3125 F2280 type 3"),
    (AstmGrade::A325To2014, "A325 to 2014"),
    (AstmGrade::A354Bc, "A354 BC"),
    (AstmGrade::A354BdTo2011, "A354 BD to 2011"),
    (AstmGrade::A354Bd, "A354 BD"),
    (AstmGrade::A193B5, "A193 B5"),
    (AstmGrade::A193B6, "A193 B6"),
    (AstmGrade::A193B7, "A193 B7"),
    (AstmGrade::A193B7m, "A193 B7M"),
    (AstmGrade::A193B16, "A193 B16"),
    (AstmGrade::A193B8Class1, "A193 B8 class 1"),
    (AstmGrade::A193B8mClass1, "A193 B8M class 1"),
    (AstmGrade::A193B8Class2, "A193 B8 class 2"),
    (AstmGrade::A193B8mClass2, "A193 B8M class 2"),
    (AstmGrade::A574, "A574"),
    (AstmGrade::F593Group1Af, "F593 group 1 AF"),
    (AstmGrade::F593Group1A, "F593 group 1 A"),
    (AstmGrade::F593Group1Cw1, "F593 group 1 CW1"),
    (AstmGrade::F593Group1Cw2, "F593 group 1 CW2"),
    (AstmGrade::F593Group2Af, "F593 group 2 AF"),
    (AstmGrade::F593Group2A, "F593 group 2 A"),
    (AstmGrade::F593Group2Cw1, "F593 group 2 CW1"),
    (AstmGrade::F593Group2Cw2, "F593 group 2 CW2"),
    (AstmGrade::F593Group4A, "F593 group 4 A"),
    (AstmGrade::F593Group4Cw1, "F593 group 4 CW1"),
    (AstmGrade::F593Group4Cw2, "F593 group 4 CW2"),
    (AstmGrade::F593Group5H, "F593 group 5 H"),
    (AstmGrade::F593Group5Ht, "F593 group 5 HT"),
    (AstmGrade::F593Group6H, "F593 group 6 H"),
    (AstmGrade::F593Group6Ht, "F593 group 6 HT"),
    (AstmGrade::F593Group7Ah, "F593 group 7 AH"),
    (AstmGrade::F568m4_6, "F568M 4.6"),
    (AstmGrade::F568m4_8, "F568M 4.8"),
    (AstmGrade::F568m5_8, "F568M 5.8"),
    (AstmGrade::F568m8_8, "F568M 8.8"),
    (AstmGrade::F568m8_8Boron, "F568M 8.8 boron"),
    (AstmGrade::F568m8_8_3, "F568M 8.8.3"),
    (AstmGrade::F568m9_8, "F568M 9.8"),
    (AstmGrade::F568m10_9, "F568M 10.9"),
    (AstmGrade::F568m10_9Alloy, "F568M 10.9 alloy"),
    (AstmGrade::F568m10_9_3, "F568M 10.9.3"),
    (AstmGrade::F568m12_9, "F568M 12.9"),
    (AstmGrade::F3125A325m, "F3125 A325M"),
    (AstmGrade::F3125A490m, "F3125 A490M"),
];

impl AstmGrade {
    /// The standard without "ASTM": `A193`, `F3125`.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(AstmGrade::F3125A325Type1.standard(), "F3125");
    /// ```
    #[must_use]
    pub fn standard(self) -> &'static str {
        name_of(&NAMES, self).split(' ').next().unwrap_or_default()
    }

    /// Whether it is one of the structural bolts of 120 ksi (A325 with its twist-off and metric kinds).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(AstmGrade::F3125F1852Type1.is_a325() && !AstmGrade::A449Type1.is_a325());
    /// ```
    #[must_use]
    pub const fn is_a325(self) -> bool {
        matches!(
            self,
            Self::A325To2014
                | Self::F3125A325Type1
                | Self::F3125A325Type3
                | Self::F3125A325m
                | Self::F3125F1852Type1
                | Self::F3125F1852Type3
        )
    }

    /// Whether it is one of the structural bolts of 150 ksi (A490 with its twist-off and metric kinds), which
    /// take no metallic coating but zinc flake and are used once. That F2280 are the same bolts with a splined
    /// end and A490M their metric twins is common practice, no source.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(AstmGrade::F3125A490m.is_a490() && AstmGrade::F3125F2280Type1.is_a490());
    /// assert!(!AstmGrade::F3125A325Type1.is_a490());
    /// ```
    #[must_use]
    pub const fn is_a490(self) -> bool {
        matches!(
            self,
            Self::F3125A490Type1
                | Self::F3125A490Type3
                | Self::F3125A490m
                | Self::F3125F2280Type1
                | Self::F3125F2280Type3
        )
    }
}

impl fmt::Display for AstmGrade {
    /// The name without "ASTM": `A193 B7`, `F3125 A325 type 1`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(name_of(&NAMES, *self))
    }
}
