//! What a design is to be good at.

use alloc::{format, string::String};
use core::cmp::Ordering;

use super::Design;
use crate::units::{Length, Mass, Ratio, UnitSystem, shown};

/// What a design is to be good at. [`Joint::design`](crate::joint::Joint::design) takes a list: the
/// first decides, the next between equals, and so on.
///
/// ```
/// use shankline::joint::Objective;
/// assert_eq!(Objective::DEFAULT[0], Objective::ShankInPlanes);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Objective {
    /// Fewest shear planes that are not on guaranteed shank.
    ShankInPlanes,
    /// No cut.
    NoCut,
    /// Least mass of bolt, nut and washers: [`PartsMass`](super::PartsMass). Those of unknown mass come
    /// last.
    Mass,
    /// Least utilisation of what the loads use most.
    ///
    /// The check of tightening is not counted: the preload is aimed at a share of the proof load, so
    /// that its utilisation is the same at every size and says nothing of the reserve. It must hold all
    /// the same.
    Utilisation,
    /// Smallest thread: the holes weaken the plies least.
    Diameter,
    /// Shortest bolt, as bought.
    Length,
    /// Fewest washers.
    Washers,
    /// Fewest different parts: bolt, nut, and washers if there are any.
    PartNumbers,
    /// Bolts that are on hand in the number wanted.
    OnHand,
}

impl Objective {
    /// What decides if the caller names nothing: shank in the shear planes, no cut, least mass. The first
    /// two are those of [`LengthSearch`](crate::joint::LengthSearch). Between equals the weaker grade
    /// comes first, as always: what holds need not be harder, and hard bolts are the brittle ones.
    pub const DEFAULT: &'static [Self] = &[Self::ShankInPlanes, Self::NoCut, Self::Mass];

    /// What is compared, in words.
    ///
    /// ```
    /// use shankline::joint::Objective;
    /// assert_eq!(Objective::NoCut.label(), "cuts");
    /// ```
    #[must_use]
    pub const fn label(self) -> &'static str {
        match self {
            Self::ShankInPlanes => "shear planes not on shank",
            Self::NoCut => "cuts",
            Self::Mass => "mass",
            Self::Utilisation => "utilisation",
            Self::Diameter => "diameter",
            Self::Length => "length",
            Self::Washers => "washers",
            Self::PartNumbers => "different parts",
            Self::OnHand => "bolts to buy",
        }
    }
}

impl core::fmt::Display for Objective {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(self.label())
    }
}

/// How a design does by an [`Objective`]: less is better.
///
/// ```
/// use shankline::joint::Score;
/// use shankline::units::{UnitSystem, percent};
/// assert_eq!(Score::Utilisation(percent(62.5)).text(UnitSystem::Si), "62.5 %");
/// assert!(Score::Mass(None) > Score::Count(0)); // unknown is worst
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Score {
    /// How many.
    Count(usize),
    /// How much of a resistance.
    Utilisation(Ratio),
    /// How long.
    Length(Length),
    /// How heavy; none if that is not known.
    Mass(Option<Mass>),
}

impl Score {
    fn number(self) -> f64 {
        match self {
            // Counts are small: exact.
            #[allow(clippy::cast_precision_loss)]
            Self::Count(count) => count as f64,
            Self::Utilisation(ratio) => ratio.value,
            Self::Length(length) => length.value,
            Self::Mass(mass) => mass.map_or(f64::INFINITY, |mass| mass.value),
        }
    }

    /// Total order of two scores of one objective.
    pub(super) fn order(self, other: Self) -> Ordering {
        self.number().total_cmp(&other.number())
    }

    /// In the units of the reader.
    ///
    /// ```
    /// use shankline::joint::Score;
    /// use shankline::units::{UnitSystem, inches};
    /// assert_eq!(Score::Length(inches(2.5)).text(UnitSystem::UsCustomary), "2.500 in");
    /// ```
    #[must_use]
    pub fn text(self, system: UnitSystem) -> String {
        match self {
            Self::Count(count) => format!("{count}"),
            Self::Utilisation(ratio) => format!("{:.1} %", ratio.value * 100.0),
            Self::Length(length) => format!("{}", shown(length, system)),
            Self::Mass(None) => "unknown".into(),
            Self::Mass(Some(mass)) => super::mass::shown_mass(mass, system),
        }
    }
}

impl PartialOrd for Score {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.order(*other))
    }
}

impl Design {
    /// How it does by an objective: less is better.
    ///
    /// ```
    /// use shankline::joint::{Design, Objective};
    /// use shankline::units::UnitSystem;
    /// fn print(design: &Design) {
    ///     for &objective in Objective::DEFAULT {
    ///         println!("{objective}: {}", design.score(objective).text(UnitSystem::Si));
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn score(&self, objective: Objective) -> Score {
        let candidate = &self.candidate;
        match objective {
            Objective::ShankInPlanes => {
                let in_run_out = candidate.planes_in_run_out;
                Score::Count(in_run_out.saturating_add(candidate.planes_in_thread))
            }
            Objective::NoCut => Score::Count(usize::from(candidate.needs_cut)),
            Objective::Mass => Score::Mass(self.mass.map(|mass| mass.total())),
            Objective::Utilisation => Score::Utilisation(self.utilisation()),
            Objective::Diameter => Score::Length(self.choice.bolt.thread.nominal_diameter()),
            Objective::Length => Score::Length(candidate.screw.nominal),
            Objective::Washers => Score::Count(self.washers),
            Objective::PartNumbers => Score::Count(2 + usize::from(self.washers > 0)),
            Objective::OnHand => Score::Count(usize::from(!self.on_hand)),
        }
    }
}
