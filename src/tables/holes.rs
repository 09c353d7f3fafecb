//! Holes: clearance holes for bolts, holes and slots of structural joints, tap drills.

use core::{fmt, str::FromStr};

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::{Basis, Provenance};
use crate::units::{Length, Ratio};

/// How much larger a clearance hole is than its bolt. ISO 273 says fine, medium and coarse for
/// close, normal and loose.
///
/// ```
/// use shankline::{prelude::*, tables::holes::{ClearanceHole, HoleFit}};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let size = |fit| ClearanceHole::find(&thread, fit).map(|hole| hole.diameter_min);
/// assert!(size(HoleFit::Close)? < size(HoleFit::Normal)?);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum HoleFit {
    /// Close (fine), tolerance H12.
    Close,
    /// Normal (medium), tolerance H13: the usual choice.
    Normal,
    /// Loose (coarse), tolerance H14.
    Loose,
}

/// Code and label of every member.
const NAMES: [Named<HoleFit>; 3] = [
    (HoleFit::Close, "close", "close (fine)"),
    (HoleFit::Normal, "normal", "normal (medium)"),
    (HoleFit::Loose, "loose", "loose (coarse)"),
];

impl Key for HoleFit {
    const FAMILY: &'static str = "fit of clearance holes";
    const ALL: &'static [Self] = &keys(&NAMES);

    fn code(self) -> &'static str {
        code_of(&NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&NAMES, self)
    }
}

impl FromStr for HoleFit {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for HoleFit {
    /// The label.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// A clearance hole of one fit for one size of bolt.
///
/// Source: ASME B18.2.8 for inch bolts; ISO 273 for metric bolts, with BS 4186 as a second metric
/// table that differs at M12, M14 and M16.
///
/// ```
/// use shankline::{prelude::*, tables::holes::{ClearanceHole, HoleFit}};
/// # fn main() -> Result<(), shankline::Error> {
/// let hole = ClearanceHole::find(&"1/2-13 UNC".parse()?, HoleFit::Normal)?;
/// assert_eq!((hole.drill, hole.diameter_min), (Some("9/16"), inches(0.562)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ClearanceHole {
    /// The standard.
    pub standard: &'static str,
    /// Name of the bolt size.
    pub size: &'static str,
    /// Nominal diameter of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Fit.
    pub fit: HoleFit,
    /// Drill of that hole, where it has a name: a number, a letter or a fraction.
    pub drill: Option<&'static str>,
    /// Least diameter of the hole: the size of the drill.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_min: Length,
    /// Greatest diameter of the hole. None for metric holes, whose limit is that of the tolerance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub diameter_max: Option<Length>,
    /// How the greatest diameter is known.
    pub diameter_max_basis: Option<Basis>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl ClearanceHole {
    /// Every clearance hole for inch bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::holes::ClearanceHole::all_inch().len(), 59);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::clearance_holes_inch::CLEARANCE_HOLES_INCH
    }

    /// Every clearance hole for metric bolts: ISO 273, then BS 4186.
    ///
    /// ```
    /// use shankline::tables::holes::ClearanceHole;
    /// assert_eq!(ClearanceHole::all_metric().first().unwrap().standard, "ISO 273");
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::clearance_holes_metric::CLEARANCE_HOLES_METRIC
    }

    /// What the user of this hole must be told: limits that were recalled and not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::{ClearanceHole, HoleFit}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = ClearanceHole::find(&"1/2-13 UNC".parse()?, HoleFit::Loose)?;
    /// assert_eq!(hole.cautions().iter().count(), 0); // as of every hole that is held now
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let greatest = Provenance {
            basis: self.diameter_max_basis.unwrap_or(self.provenance.basis),
            ..self.provenance
        };
        Cautions::default().with(
            Caution::from_memory("clearance hole", self.provenance).or_else(|| {
                Caution::from_memory("greatest diameter of the clearance hole", greatest)
            }),
        )
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        standard: "",
        size: "",
        nominal_diameter: crate::units::inches(0.0),
        fit: HoleFit::Normal,
        drill: None,
        diameter_min: crate::units::inches(0.0),
        diameter_max: None,
        diameter_max_basis: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

/// Which editions of AISC 360 a structural hole belongs to.
///
/// ```
/// use shankline::tables::holes::{HoleEditions, StructuralHole};
/// let rows = StructuralHole::all_inch();
/// assert!(rows.iter().any(|hole| hole.editions == Some(HoleEditions::From2016)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum HoleEditions {
    /// All of them.
    All,
    /// 2010 and earlier.
    To2010,
    /// 2016 and later, which enlarged the holes for bolts of 1 in and more.
    From2016,
}

/// Greatest hole and slot sizes for structural bolts.
///
/// Source: AISC 360, Table J3.3 (inch) and J3.3M (metric). They are maxima; RCSC allows 1/32 in more.
///
/// ```
/// use shankline::{prelude::*, tables::holes::StructuralHole};
/// # fn main() -> Result<(), shankline::Error> {
/// let inch: Thread = "1-8 UNC".parse()?;
/// let hole = |edition| StructuralHole::find(&inch, edition).map(|hole| hole.standard);
/// assert_eq!(hole(AiscEdition::E2010)?, inches(1.0625));
/// assert_eq!(hole(AiscEdition::E2022)?, inches(1.125));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StructuralHole {
    /// The editions the row belongs to; none for metric holes, read in the 2005 edition.
    pub editions: Option<HoleEditions>,
    /// Name of the bolt size.
    pub size: &'static str,
    /// Nominal diameter of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Standard hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub standard: Length,
    /// Oversize hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub oversize: Length,
    /// Width of a slot.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub slot_width: Length,
    /// Length of a short slot.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub short_slot_length: Length,
    /// Length of a long slot.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub long_slot_length: Length,
    /// Restrictions and disagreements.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl StructuralHole {
    /// Every row for inch bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::holes::StructuralHole::all_inch().len(), 14);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::structural_holes_inch::STRUCTURAL_HOLES_INCH
    }

    /// Every row for metric bolts.
    ///
    /// ```
    /// assert_eq!(shankline::tables::holes::StructuralHole::all_metric().len(), 7);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::structural_holes_metric::STRUCTURAL_HOLES_METRIC
    }

    /// What the user of this hole must be told: sizes that were recalled and not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::StructuralHole};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1-8 UNC".parse()?;
    /// let count = |edition| -> Result<usize, shankline::Error> {
    ///     Ok(StructuralHole::find(&thread, edition)?.cautions().iter().count())
    /// };
    /// assert_eq!((count(AiscEdition::E2010)?, count(AiscEdition::E2016)?), (0, 0)); // all were read
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("structural hole", self.provenance))
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        editions: None,
        size: "",
        nominal_diameter: crate::units::inches(0.0),
        standard: crate::units::inches(0.0),
        oversize: crate::units::inches(0.0),
        slot_width: crate::units::inches(0.0),
        short_slot_length: crate::units::inches(0.0),
        long_slot_length: crate::units::inches(0.0),
        note: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

/// The drill for tapping a thread: common practice of charts that aim at about 75 per cent thread.
///
/// ```
/// use shankline::{prelude::*, tables::holes::TapDrill};
/// # fn main() -> Result<(), shankline::Error> {
/// let drill = TapDrill::find(&"3/8-16 UNC".parse()?)?;
/// assert_eq!((drill.drill, drill.drill_diameter), (Some("5/16"), inches(0.3125)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TapDrill {
    /// Name of the thread size, for inch threads.
    pub size: Option<&'static str>,
    /// Nominal diameter of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nominal_diameter: Length,
    /// Threads per inch of an inch thread.
    pub threads_per_inch: Option<f64>,
    /// Pitch of a metric thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub pitch: Option<Length>,
    /// Name of the drill: a number, a letter or a fraction. Metric drills go by their diameter.
    pub drill: Option<&'static str>,
    /// Diameter of the drill.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub drill_diameter: Length,
    /// Thread height left, as the chart prints it: (D - drill) / (1.299 P), in whole per cent.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub thread: Ratio,
    /// What other charts print.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl TapDrill {
    /// Every tap drill for Unified threads.
    ///
    /// ```
    /// assert_eq!(shankline::tables::holes::TapDrill::all_inch().len(), 44);
    /// ```
    #[must_use]
    pub fn all_inch() -> &'static [Self] {
        &generated::tap_drills_inch::TAP_DRILLS_INCH
    }

    /// Every tap drill for metric threads.
    ///
    /// ```
    /// assert_eq!(shankline::tables::holes::TapDrill::all_metric().len(), 41);
    /// ```
    #[must_use]
    pub fn all_metric() -> &'static [Self] {
        &generated::tap_drills_metric::TAP_DRILLS_METRIC
    }

    /// What the user of this drill must be told: a size that was recalled and not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::TapDrill};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(TapDrill::find(&"M8".parse()?)?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("tap drill", self.provenance))
    }

    /// A row with every optional cell empty, which the generated arrays complete.
    pub(super) const BLANK: Self = Self {
        size: None,
        nominal_diameter: crate::units::inches(0.0),
        threads_per_inch: None,
        pitch: None,
        drill: None,
        drill_diameter: crate::units::inches(0.0),
        thread: crate::units::percent(0.0),
        note: None,
        provenance: super::known(generated::sources::SOURCES[0], Basis::Memory),
    };
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every recalled row warns, and no other. All holes were read or computed by now: of each table one is made recalled.
    #[test]
    fn recalled_holes_warn() {
        let warns = |cautions: Cautions| cautions.iter().next().is_some();
        let recalled = |provenance: Provenance| Provenance {
            basis: Basis::Memory,
            ..provenance
        };
        let holes = ClearanceHole::all_inch()
            .iter()
            .chain(ClearanceHole::all_metric());
        for hole in holes {
            let weak = [Some(hole.provenance.basis), hole.diameter_max_basis]
                .contains(&Some(Basis::Memory));
            assert_eq!(warns(hole.cautions()), weak, "{hole:?}");
        }
        let hole = ClearanceHole::all_inch()[0];
        let whole = recalled(hole.provenance);
        assert!(warns(
            ClearanceHole {
                provenance: whole,
                ..hole
            }
            .cautions()
        ));
        let limit = Some(Basis::Memory);
        assert!(warns(
            ClearanceHole {
                diameter_max_basis: limit,
                ..hole
            }
            .cautions()
        ));
        let holes = StructuralHole::all_inch()
            .iter()
            .chain(StructuralHole::all_metric());
        for hole in holes {
            let weak = hole.provenance.basis == Basis::Memory;
            assert_eq!(warns(hole.cautions()), weak, "{hole:?}");
        }
        let hole = StructuralHole::all_inch()[0];
        let provenance = recalled(hole.provenance);
        assert!(warns(StructuralHole { provenance, ..hole }.cautions()));
        for drill in TapDrill::all_inch().iter().chain(TapDrill::all_metric()) {
            let weak = drill.provenance.basis == Basis::Memory;
            assert_eq!(warns(drill.cautions()), weak, "{drill:?}");
        }
        let drill = TapDrill::all_inch()[0];
        let provenance = recalled(drill.provenance);
        assert!(warns(
            TapDrill {
                provenance,
                ..drill
            }
            .cautions()
        ));
    }
}
