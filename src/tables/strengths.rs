//! Printed strengths of bolts: stresses of design codes, shear as a share of tension, and loads of
//! parts that no formula of this crate gives.
//!
//! Each number is one publisher's in one edition: a nominal stress of one code does not go with the
//! area or the factor of another. [`strength::shear`](crate::strength::shear) and
//! [`strength::bolt_tension`](crate::strength::bolt_tension) keep them together.

use alloc::string::ToString;
use core::{fmt, str::FromStr};

use super::{generated, nanometres};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::Provenance;
use crate::units::{Force, Length, Stress};

/// What a stress of a design code is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressQuantity {
    /// Nominal shear stress: the factor of the code comes on top.
    ShearNominal,
    /// Allowable shear stress: the factor is in it.
    ShearAllowable,
    /// Design shear strength: the factor is in it.
    ShearDesign,
    /// Nominal tensile stress.
    TensionNominal,
    /// Allowable tensile stress.
    TensionAllowable,
    /// Design tensile strength.
    TensionDesign,
    /// Nominal yield strength the code counts with.
    YieldStrength,
    /// Nominal tensile strength the code counts with.
    TensileStrength,
}

/// Where the shear plane of a stress lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressPlane {
    /// Across the thread.
    Thread,
    /// Across the plain shank.
    Shank,
    /// Either; the code makes no difference in the stress.
    Either,
}

/// A design code in one edition, as far as it has stresses for bolts.
///
/// ```
/// use shankline::{catalogue::Key, tables::strengths::StressCode};
/// assert_eq!(StressCode::Aisc360_10.label(), "AISC 360-10");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressCode {
    /// AISC ASD 1989.
    AiscAsd1989,
    /// AISC 360-05.
    Aisc360_05,
    /// AISC 360-10.
    Aisc360_10,
    /// AISC 360-16.
    Aisc360_16,
    /// AISC 360-22.
    Aisc360_22,
    /// RCSC 1988.
    Rcsc1988,
    /// EN 1993-1-8:2005.
    En1993_1_8,
    /// BS 5950-1:2000.
    Bs5950_1,
    /// BS 449-2.
    Bs449_2,
}

/// Code and label of every member.
const CODE_NAMES: [Named<StressCode>; 9] = [
    (StressCode::AiscAsd1989, "aisc_asd_1989", "AISC ASD 1989"),
    (StressCode::Aisc360_05, "aisc_360_05", "AISC 360-05"),
    (StressCode::Aisc360_10, "aisc_360_10", "AISC 360-10"),
    (StressCode::Aisc360_16, "aisc_360_16", "AISC 360-16"),
    (StressCode::Aisc360_22, "aisc_360_22", "AISC 360-22"),
    (StressCode::Rcsc1988, "rcsc_1988", "RCSC 1988"),
    (StressCode::En1993_1_8, "en_1993_1_8", "EN 1993-1-8:2005"),
    (StressCode::Bs5950_1, "bs_5950_1", "BS 5950-1:2000"),
    (StressCode::Bs449_2, "bs_449_2", "BS 449-2"),
];

impl Key for StressCode {
    const FAMILY: &'static str = "design code of stresses";
    const ALL: &'static [Self] = &keys(&CODE_NAMES);

    fn code(self) -> &'static str {
        code_of(&CODE_NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&CODE_NAMES, self)
    }
}

impl FromStr for StressCode {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for StressCode {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// Bolts that a design code gives one stress: a grade, a group of grades, or a property class.
///
/// ```
/// use shankline::{catalogue::Key, tables::strengths::StressBolts};
/// assert_eq!(StressBolts::Class8_8.label(), "class 8.8");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StressBolts {
    /// A307.
    A307,
    /// A325, group A, group 120.
    A325,
    /// A490, group B, group 150.
    A490,
    /// threaded parts of other material.
    ThreadedParts,
    /// group C (F3043, F3111).
    GroupC,
    /// group 144.
    Group144,
    /// group 200.
    Group200,
    /// class 4.6.
    Class4_6,
    /// class 4.8.
    Class4_8,
    /// class 5.6.
    Class5_6,
    /// class 5.8.
    Class5_8,
    /// class 6.8.
    Class6_8,
    /// class 8.8.
    Class8_8,
    /// class 10.9.
    Class10_9,
}

/// Code and label of every member.
const BOLT_NAMES: [Named<StressBolts>; 14] = [
    (StressBolts::A307, "a307", "A307"),
    (StressBolts::A325, "a325", "A325, group A, group 120"),
    (StressBolts::A490, "a490", "A490, group B, group 150"),
    (
        StressBolts::ThreadedParts,
        "threaded_parts",
        "threaded parts of other material",
    ),
    (StressBolts::GroupC, "group_c", "group C (F3043, F3111)"),
    (StressBolts::Group144, "group_144", "group 144"),
    (StressBolts::Group200, "group_200", "group 200"),
    (StressBolts::Class4_6, "class_4_6", "class 4.6"),
    (StressBolts::Class4_8, "class_4_8", "class 4.8"),
    (StressBolts::Class5_6, "class_5_6", "class 5.6"),
    (StressBolts::Class5_8, "class_5_8", "class 5.8"),
    (StressBolts::Class6_8, "class_6_8", "class 6.8"),
    (StressBolts::Class8_8, "class_8_8", "class 8.8"),
    (StressBolts::Class10_9, "class_10_9", "class 10.9"),
];

impl Key for StressBolts {
    const FAMILY: &'static str = "bolts of a design stress";
    const ALL: &'static [Self] = &keys(&BOLT_NAMES);

    fn code(self) -> &'static str {
        code_of(&BOLT_NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&BOLT_NAMES, self)
    }
}

impl FromStr for StressBolts {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for StressBolts {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// A stress, or a share of the tensile strength, that a design code gives for bolts.
///
/// ```
/// use shankline::tables::strengths::{DesignStress, StressBolts, StressCode, StressPlane, StressQuantity};
/// use shankline::units::ksi;
/// let (code, shear) = (StressCode::Aisc360_10, StressQuantity::ShearNominal);
/// let row = DesignStress::get(code, StressBolts::A325, shear, Some(StressPlane::Shank)).unwrap();
/// assert_eq!(row.stress, Some(ksi(68.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DesignStress {
    /// Design code, with its edition where there are several.
    pub code: StressCode,
    /// The bolts it is for, as the code calls them.
    pub bolts: StressBolts,
    /// What it is.
    pub quantity: StressQuantity,
    /// Where the shear plane lies; none for tension.
    pub plane: Option<StressPlane>,
    /// The stress, where the code gives one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub stress: Option<Stress>,
    /// Share of the tensile strength, where the code gives that.
    pub share_of_tensile: Option<f64>,
    /// Reductions and meaning.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl DesignStress {
    /// Every row of US codes: AISC and RCSC.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::DesignStress::all_inch().len(), 67);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::design_stresses_inch::DESIGN_STRESSES_INCH
    }

    /// Every row of European codes: EN 1993-1-8 and BS 5950-1.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::DesignStress::all_metric().len(), 37);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::design_stresses_metric::DESIGN_STRESSES_METRIC
    }

    /// The rows of one code.
    ///
    /// ```
    /// use shankline::tables::strengths::{DesignStress, StressCode};
    /// assert_eq!(DesignStress::of_code(StressCode::Rcsc1988).count(), 6);
    /// ```
    pub fn of_code(code: StressCode) -> impl Iterator<Item = &'static Self> {
        Self::all_inch()
            .iter()
            .chain(Self::all_metric())
            .filter(move |row| row.code == code)
    }

    /// The row of a code for some bolts. A stress that holds in either plane is found by each of them.
    ///
    /// ```
    /// use shankline::tables::strengths::{DesignStress, StressBolts, StressCode, StressPlane, StressQuantity};
    /// let of = |plane| DesignStress::get(
    ///     StressCode::Bs449_2, StressBolts::Class8_8, StressQuantity::ShearAllowable, Some(plane),
    /// );
    /// assert_eq!(of(StressPlane::Shank), of(StressPlane::Thread));
    /// ```
    #[must_use]
    pub fn get(
        code: StressCode,
        bolts: StressBolts,
        quantity: StressQuantity,
        plane: Option<StressPlane>,
    ) -> Option<&'static Self> {
        // Each code stands in one of the two tables; those for property classes in the metric one.
        let rows = match code {
            StressCode::En1993_1_8 | StressCode::Bs5950_1 | StressCode::Bs449_2 => {
                Self::all_metric()
            }
            _ => Self::all_inch(),
        };
        rows.iter().find(|row| {
            let there =
                row.plane == plane || plane.is_some() && row.plane == Some(StressPlane::Either);
            row.code == code && row.bolts == bolts && row.quantity == quantity && there
        })
    }

    /// What the user of this stress must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::strengths::{DesignStress, StressCode};
    /// let read = DesignStress::of_code(StressCode::Aisc360_22).next().unwrap();
    /// assert_eq!(read.cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("design stress", self.provenance))
    }
}

/// Shear strength as a share of the tensile strength, by publisher. A rule of thumb for ultimate
/// strength, apart from the row of the distortion energy, which is about yielding.
///
/// ```
/// use shankline::tables::strengths::ShearRatio;
/// let most = ShearRatio::all().iter().map(|row| row.shear_to_tensile).fold(0.0, f64::max);
/// assert_eq!(most, 0.62);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShearRatio {
    /// What it was said of.
    pub bolts: &'static str,
    /// Shear strength over tensile strength.
    pub shear_to_tensile: f64,
    /// Source of the row.
    pub provenance: Provenance,
}

impl ShearRatio {
    /// Every ratio.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::ShearRatio::all().len(), 8);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::shear_ratios::SHEAR_RATIOS
    }

    /// What the user of this ratio must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::{source::Basis, tables::strengths::ShearRatio};
    /// for ratio in ShearRatio::all() {
    ///     let recalled = ratio.provenance.basis == Basis::Memory;
    ///     assert_eq!(ratio.cautions().iter().count(), usize::from(recalled));
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory(
            "ratio of shear to tension",
            self.provenance,
        ))
    }
}

/// A kind of part with printed loads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LoadedPart {
    /// Alloy steel aircraft bolt, AN3 to AN16.
    AircraftBolt,
    /// Flat countersunk head socket screw of alloy steel, ASTM F835: its head fails first.
    FlatSocketScrew,
    /// Self-locking nut, MIL-N-25027, for bolts of 125 ksi.
    SelfLockingNut,
}

/// What a printed load is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum LoadQuantity {
    /// Least ultimate load along the axis.
    Tension,
    /// Least ultimate load of one shear plane through the shank.
    SingleShear,
}

/// Printed ultimate load of a part.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::strengths::{LoadQuantity, LoadedPart, PublishedLoad};
/// # fn main() -> Result<(), shankline::Error> {
/// let rows = PublishedLoad::of(LoadedPart::AircraftBolt, inches(0.25))?;
/// let shear = rows.iter().find(|row| row.quantity == LoadQuantity::SingleShear).unwrap();
/// assert_eq!(shear.load, pounds_force(3680.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PublishedLoad {
    /// The part.
    pub part: LoadedPart,
    /// Its size or number.
    pub size: &'static str,
    /// Nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch, where the load depends on the thread.
    pub threads_per_inch: Option<f64>,
    /// What the load is.
    pub quantity: LoadQuantity,
    /// The load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Meaning and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl PublishedLoad {
    /// Every load.
    ///
    /// ```
    /// assert_eq!(shankline::tables::strengths::PublishedLoad::all().len(), 63);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::published_loads::PUBLISHED_LOADS
    }

    /// The loads of a part of one nominal diameter. Two publishers may give one load.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] names the sizes there are; [`Error::OutOfRange`] for a diameter that is not
    /// positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::strengths::{LoadedPart, PublishedLoad};
    /// let error = PublishedLoad::of(LoadedPart::AircraftBolt, inches(2.0)).unwrap_err();
    /// assert!(error.to_string().ends_with("its sizes run from AN3 to AN16, the nearest is AN16"));
    /// ```
    pub fn of(part: LoadedPart, diameter: Length) -> Result<&'static [Self], Error> {
        let wanted = positive("nominal diameter", diameter)?;
        let rows = super::rows_of(Self::all(), &part, |row| row.part);
        let found = super::rows_of(rows, &nanometres(wanted), |row| {
            nanometres(row.nominal_diameter)
        });
        if found.is_empty() {
            return Err(Error::NotInTable {
                table: "the table of published loads",
                wanted: crate::error::Amount::from(diameter).to_string(),
                available: super::size_range(rows, diameter, |row| {
                    (row.nominal_diameter, row.size)
                }),
            });
        }
        Ok(found)
    }

    /// What the user of this load must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::tables::strengths::PublishedLoad;
    /// assert_eq!(PublishedLoad::all()[0].cautions().iter().count(), 0); // AN3 in shear, computed
    /// assert_eq!(PublishedLoad::all()[1].cautions().iter().count(), 1); // AN3 in tension, recalled
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("load", self.provenance))
    }
}
