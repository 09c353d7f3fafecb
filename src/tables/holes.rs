//! Holes: clearance holes for bolts, holes and slots of structural joints, tap drills.

use alloc::{format, string::ToString};
use core::{fmt, str::FromStr};

use super::{generated, nanometres, no_row};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::names::AiscEdition;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::{Basis, Provenance};
use crate::thread::Thread;
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

    /// The clearance hole for a bolt: ASME B18.2.8 for an inch thread, ISO 273 for a metric one, and BS 4186
    /// for M7, which ISO 273 does not have.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has no hole of that fit for the size; the message gives
    /// the sizes it has.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::{ClearanceHole, HoleFit}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = ClearanceHole::find(&"M16".parse()?, HoleFit::Normal)?;
    /// assert_eq!(hole.diameter_min, millimetres(17.5)); // BS 4186 says 18
    /// let error = ClearanceHole::find(&"2-4.5 UNC".parse()?, HoleFit::Normal).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "2-4.5 UNC is not in the table of clearance holes of that fit; its sizes run from #0 to 1-1/2, the nearest is 1-1/2",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread, fit: HoleFit) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            // ISO 273 stands first, so BS 4186 adds only the sizes ISO does not have: M7.
            Self::all_metric()
        };
        let of_fit = rows.iter().filter(|hole| hole.fit == fit);
        of_fit
            .clone()
            .find(|hole| nanometres(hole.nominal_diameter) == size)
            .ok_or_else(|| {
                let table = "the table of clearance holes of that fit";
                no_row(table, thread, of_fit, |hole| {
                    (hole.nominal_diameter, hole.size)
                })
            })
    }

    /// What the user of this hole must be told: limits that were recalled and not read.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::{ClearanceHole, HoleFit}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = ClearanceHole::find(&"1/2-13 UNC".parse()?, HoleFit::Close)?;
    /// assert_eq!(hole.cautions().iter().count(), 1); // its greatest diameter
    /// let hole = ClearanceHole::find(&"1/2-13 UNC".parse()?, HoleFit::Loose)?;
    /// assert_eq!(hole.cautions().iter().count(), 0);
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

    /// The holes for a bolt in an edition of AISC 360. Metric holes were read in the 2005 edition
    /// only and are given for all.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is no such row; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::StructuralHole};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let hole = StructuralHole::find(&"M20".parse()?, AiscEdition::E2005)?;
    /// assert_eq!(hole.standard, millimetres(22.0));
    /// assert!(StructuralHole::find(&"M12".parse()?, AiscEdition::E2005).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread, edition: AiscEdition) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let wanted = match edition {
            AiscEdition::E2005 | AiscEdition::E2010 => HoleEditions::To2010,
            AiscEdition::E2016 | AiscEdition::E2022 => HoleEditions::From2016,
        };
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        let of_edition = rows.iter().filter(|hole| {
            hole.editions
                .is_none_or(|editions| editions == HoleEditions::All || editions == wanted)
        });
        of_edition
            .clone()
            .find(|hole| nanometres(hole.nominal_diameter) == size)
            .ok_or_else(|| {
                no_row("AISC 360 Table J3.3", thread, of_edition, |hole| {
                    (hole.nominal_diameter, hole.size)
                })
            })
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
    /// assert_eq!((count(AiscEdition::E2010)?, count(AiscEdition::E2016)?), (0, 1));
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

    /// The tap drill of a thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if no chart that was read has the thread.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::holes::TapDrill};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(TapDrill::find(&"M8".parse()?)?.drill_diameter, millimetres(6.8));
    /// assert!(TapDrill::find(&"1-1/16-8 UN".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let pitch = nanometres(thread.pitch());
        let rows = if thread.is_unified() {
            Self::all_inch()
        } else {
            Self::all_metric()
        };
        rows.iter()
            .find(|row| {
                nanometres(row.nominal_diameter) == size && nanometres(row.thread_pitch()) == pitch
            })
            .ok_or_else(|| Error::NotInTable {
                table: "the table of tap drills",
                wanted: thread.to_string(),
                available: format!(
                    "for about 75 % thread drill {:.2} mm",
                    // (D - drill) / (1.299 P) = 0.75
                    1e3 * (thread.nominal_diameter() - 0.75 * 1.299_038 * thread.pitch()).value
                ),
            })
    }

    fn thread_pitch(&self) -> Length {
        match (self.threads_per_inch, self.pitch) {
            (Some(n), _) => crate::units::inches(1.0 / n),
            (None, Some(pitch)) => pitch,
            (None, None) => crate::units::inches(0.0),
        }
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
    use alloc::string::ToString;

    /// Every recalled row warns, and no other.
    #[test]
    fn recalled_holes_warn() {
        let warns = |cautions: Cautions| cautions.iter().next().is_some();
        let mut recalled = 0;
        for hole in ClearanceHole::all_inch()
            .iter()
            .chain(ClearanceHole::all_metric())
        {
            let weak = [Some(hole.provenance.basis), hole.diameter_max_basis]
                .contains(&Some(Basis::Memory));
            assert_eq!(warns(hole.cautions()), weak, "{hole:?}");
            recalled += usize::from(weak);
        }
        for hole in StructuralHole::all_inch()
            .iter()
            .chain(StructuralHole::all_metric())
        {
            let weak = hole.provenance.basis == Basis::Memory;
            assert_eq!(warns(hole.cautions()), weak, "{hole:?}");
            recalled += usize::from(weak);
        }
        for drill in TapDrill::all_inch().iter().chain(TapDrill::all_metric()) {
            let weak = drill.provenance.basis == Basis::Memory;
            assert_eq!(warns(drill.cautions()), weak, "{drill:?}");
            recalled += usize::from(weak);
        }
        assert!(recalled > 0);
    }

    /// #1 has a loose hole only: the nearest size with a normal one is another size.
    #[test]
    fn the_nearest_size_is_one_that_has_the_fit() {
        let thread = "#1-64 UNC".parse().unwrap();
        assert!(ClearanceHole::find(&thread, HoleFit::Loose).is_ok());
        let error = ClearanceHole::find(&thread, HoleFit::Normal).unwrap_err();
        let message = error.to_string();
        assert!(message.ends_with("the nearest is #0"), "{message}");
    }
}
