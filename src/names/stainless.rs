//! Property classes of stainless steel bolts and screws.

use core::fmt;

use super::name_of;

/// Property classes of ISO 3506-1, stainless steel: the steel, then a tenth of the tensile strength
/// in MPa.
///
/// Classes 70 and 80 of A1, A3, A4 and A5 were read in an edition that ends at M24; larger sizes are recalled
/// and warn. The standard gives no proof stress; its yield strength is the stress at 0.2 % permanent strain
/// of the full-size screw. Stainless threads gall: lubricate them.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let strength = StainlessClass::A4_70.strength(millimetres(12.0))?;
/// assert_eq!(strength.yield_strength, Some(megapascals(450.0)));
/// assert_eq!(strength.proof_stress, None);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[non_exhaustive]
pub enum StainlessClass {
    /// A1-50: austenitic steel, 500 MPa.
    A1_50,
    /// A1-70: austenitic steel, 700 MPa.
    A1_70,
    /// A1-80: austenitic steel, 800 MPa.
    A1_80,
    /// A2-50: austenitic steel, 500 MPa.
    A2_50,
    /// A2-70: austenitic steel, 700 MPa.
    A2_70,
    /// A2-80: austenitic steel, 800 MPa.
    A2_80,
    /// A3-50: austenitic steel, 500 MPa.
    A3_50,
    /// A3-70: austenitic steel, 700 MPa.
    A3_70,
    /// A3-80: austenitic steel, 800 MPa.
    A3_80,
    /// A4-50: austenitic steel, 500 MPa.
    A4_50,
    /// A4-70: austenitic steel, 700 MPa.
    A4_70,
    /// A4-80: austenitic steel, 800 MPa.
    A4_80,
    /// A4-100: austenitic steel, 1000 MPa.
    A4_100,
    /// A5-50: austenitic steel, 500 MPa.
    A5_50,
    /// A5-70: austenitic steel, 700 MPa.
    A5_70,
    /// A5-80: austenitic steel, 800 MPa.
    A5_80,
    /// A5-100: austenitic steel, 1000 MPa.
    A5_100,
    /// A8-70: austenitic steel, 700 MPa.
    A8_70,
    /// A8-80: austenitic steel, 800 MPa.
    A8_80,
    /// A8-100: austenitic steel, 1000 MPa.
    A8_100,
    /// D2-70: duplex steel, 700 MPa.
    D2_70,
    /// D2-80: duplex steel, 800 MPa.
    D2_80,
    /// D2-100: duplex steel, 1000 MPa.
    D2_100,
    /// D4-70: duplex steel, 700 MPa.
    D4_70,
    /// D4-80: duplex steel, 800 MPa.
    D4_80,
    /// D4-100: duplex steel, 1000 MPa.
    D4_100,
    /// D6-70: duplex steel, 700 MPa.
    D6_70,
    /// D6-80: duplex steel, 800 MPa.
    D6_80,
    /// D6-100: duplex steel, 1000 MPa.
    D6_100,
    /// D8-70: duplex steel, 700 MPa.
    D8_70,
    /// D8-80: duplex steel, 800 MPa.
    D8_80,
    /// D8-100: duplex steel, 1000 MPa.
    D8_100,
    /// C1-50: martensitic steel, soft, 500 MPa.
    C1_50,
    /// C1-70: martensitic steel, hardened and tempered, 700 MPa.
    C1_70,
    /// C1-110: martensitic steel, hardened and tempered, 1100 MPa.
    C1_110,
    /// C3-80: martensitic steel, hardened and tempered, 800 MPa.
    C3_80,
    /// C4-50: martensitic steel, soft, 500 MPa.
    C4_50,
    /// C4-70: martensitic steel, hardened and tempered, 700 MPa.
    C4_70,
    /// F1-45: ferritic steel, soft, 450 MPa.
    F1_45,
    /// F1-60: ferritic steel, cold worked, 600 MPa.
    F1_60,
}

/// The names as the standard writes them; the table has the same.
pub(super) const NAMES: [(StainlessClass, &str); 40] = [
    (StainlessClass::A1_50, "A1-50"),
    (StainlessClass::A1_70, "A1-70"),
    (StainlessClass::A1_80, "A1-80"),
    (StainlessClass::A2_50, "A2-50"),
    (StainlessClass::A2_70, "A2-70"),
    (StainlessClass::A2_80, "A2-80"),
    (StainlessClass::A3_50, "A3-50"),
    (StainlessClass::A3_70, "A3-70"),
    (StainlessClass::A3_80, "A3-80"),
    (StainlessClass::A4_50, "A4-50"),
    (StainlessClass::A4_70, "A4-70"),
    (StainlessClass::A4_80, "A4-80"),
    (StainlessClass::A4_100, "A4-100"),
    (StainlessClass::A5_50, "A5-50"),
    (StainlessClass::A5_70, "A5-70"),
    (StainlessClass::A5_80, "A5-80"),
    (StainlessClass::A5_100, "A5-100"),
    (StainlessClass::A8_70, "A8-70"),
    (StainlessClass::A8_80, "A8-80"),
    (StainlessClass::A8_100, "A8-100"),
    (StainlessClass::D2_70, "D2-70"),
    (StainlessClass::D2_80, "D2-80"),
    (StainlessClass::D2_100, "D2-100"),
    (StainlessClass::D4_70, "D4-70"),
    (StainlessClass::D4_80, "D4-80"),
    (StainlessClass::D4_100, "D4-100"),
    (StainlessClass::D6_70, "D6-70"),
    (StainlessClass::D6_80, "D6-80"),
    (StainlessClass::D6_100, "D6-100"),
    (StainlessClass::D8_70, "D8-70"),
    (StainlessClass::D8_80, "D8-80"),
    (StainlessClass::D8_100, "D8-100"),
    (StainlessClass::C1_50, "C1-50"),
    (StainlessClass::C1_70, "C1-70"),
    (StainlessClass::C1_110, "C1-110"),
    (StainlessClass::C3_80, "C3-80"),
    (StainlessClass::C4_50, "C4-50"),
    (StainlessClass::C4_70, "C4-70"),
    (StainlessClass::F1_45, "F1-45"),
    (StainlessClass::F1_60, "F1-60"),
];

impl fmt::Display for StainlessClass {
    /// The name alone: `A2-70`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(name_of(&NAMES, *self))
    }
}
