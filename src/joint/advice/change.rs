//! Single changes to an arrangement.

use alloc::{
    format,
    string::{String, ToString},
};

use super::{Arrangement, Goal};
use crate::error::Error;
use crate::joint::{Candidate, CutRule, NutEnd, WantedBolt};
use crate::parts::{ScrewLength, ScrewSeries};
use crate::spread::Spread;
use crate::units::{Length, Rounding, UnitSystem, plain, rounded, shown};

#[cfg(feature = "serde")]
pub(super) fn serialize_screws<S: serde::Serializer>(
    screws: &ScrewSeries,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serializer.collect_str(screws)
}

/// Another product, of the same diameter or another, with the nut and washer that go with it.
///
/// ```
/// use shankline::{joint::Alternative, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let alternative = Alternative::new(
///     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
///     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
///     Some(Washer::find(WasherStyle::Iso7089, &thread)?.thickness()?),
/// );
/// assert_eq!(alternative.screws.thread(), thread);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Alternative {
    /// The product.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize_screws"))]
    pub screws: ScrewSeries,
    /// Its nut.
    pub nut: NutEnd,
    /// Thickness of the washer that goes under that nut, and under the head where one is or may be added;
    /// none to keep those of the stack.
    pub washer: Option<Spread<Length>>,
}

impl Alternative {
    /// A product with its nut and washer.
    ///
    /// ```
    /// use shankline::{joint::Alternative, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M10".parse()?)?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &"M10".parse()?)?)?;
    /// assert_eq!(Alternative::new(screws, nut, None).washer, None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn new(screws: ScrewSeries, nut: NutEnd, washer: Option<Spread<Length>>) -> Self {
        Self {
            screws,
            nut,
            washer,
        }
    }
}

/// One change to an arrangement. The order of the variants is the order of effort: what the fitter
/// does on the spot, what whoever is responsible must permit, what must be made or bought, what
/// changes the parts. It is common practice, no source.
///
/// ```
/// use shankline::{joint::Change, prelude::*};
/// let change = Change::AddWashers { count: 4, permitted: 3 };
/// assert_eq!(change.text(UnitSystem::Si), "put 4 washers under the nut (3 permitted)");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Change {
    /// Put the bolt in from the other side.
    TurnBolt,
    /// Put more washers under the nut than the rules permit.
    AddWashers {
        /// All washers under the nut.
        count: usize,
        /// Most that the rules permit now.
        permitted: usize,
    },
    /// Put more washers under the head than the rules permit.
    AddWashersUnderHead {
        /// All washers under the head.
        count: usize,
        /// Most that the rules permit now.
        permitted: usize,
    },
    /// Let the bolt be cut.
    AllowCut {
        /// How.
        rule: CutRule,
    },
    /// Ask for fewer clear threads under the nut. Never below none: the nut must clamp.
    FewerClearThreads {
        /// How many there can be, in pitches.
        threads: f64,
        /// How many are asked for now.
        wanted: f64,
    },
    /// Ask for less bolt beyond the nut. Never below flush: the nut must be filled.
    LessProtrusion {
        /// How much there can be, in pitches.
        pitches: f64,
        /// How much is asked for now.
        wanted: f64,
    },
    /// Let the bolt stick out farther.
    MoreProtrusion {
        /// How far it does, in pitches.
        pitches: f64,
        /// How far it may now.
        permitted: f64,
    },
    /// Put a spacer sleeve under the nut, between the last ply and the washers.
    Spacer {
        /// Its least length.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        at_least: Length,
        /// Its greatest length, for the bolt that then does.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        at_most: Length,
    },
    /// Take another product of the same diameter, such as one with a shorter transition.
    OtherProduct(Alternative),
    /// Make the ply at the nut thicker.
    ThickerLastPly {
        /// By at least so much.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        at_least: Length,
        /// By at most so much, for the bolt that then does.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        at_most: Length,
    },
    /// Take another diameter: the holes change, and so does the strength.
    OtherDiameter(Alternative),
    /// Find or have made a bolt of these measures.
    SpecialBolt(WantedBolt),
}

impl Change {
    /// The arrangement with the change made. A special bolt changes nothing of it: it is assessed.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an amount that the stack or the rules cannot take.
    ///
    /// ```
    /// use shankline::{joint::{Arrangement, Change}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let arrangement = Arrangement::new(
    /// #     Stack::builder()
    /// #         .ply("thick", Spread::exact(millimetres(30.0)))
    /// #         .ply("thin", Spread::exact(millimetres(5.0)))
    /// #         .shear_planes([1])
    /// #         .build()?,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// assert_eq!(arrangement.stack.plies()[0].name, "thick");
    /// let turned = Change::TurnBolt.applied(&arrangement)?;
    /// assert_eq!(turned.stack.plies()[0].name, "thin");
    /// # Ok(())
    /// # }
    /// ```
    pub fn applied(&self, arrangement: &Arrangement) -> Result<Arrangement, Error> {
        let mut changed = arrangement.clone();
        let rules = arrangement.rules;
        let builder = || arrangement.stack.to_builder();
        match *self {
            Self::TurnBolt => changed.stack = builder().turned().build()?,
            Self::AddWashers { count, .. } => {
                let in_all = count.saturating_add(arrangement.washers_there().1);
                changed.rules = rules.with_washers_under_nut(count);
                changed.rules.washers_max = rules.washers_max.map(|most| most.max(in_all));
            }
            Self::AddWashersUnderHead { count, .. } => {
                let in_all = count.saturating_add(arrangement.washers_there().0);
                changed.rules = rules.with_washers_under_head(count);
                changed.rules.washers_max = rules.washers_max.map(|most| most.max(in_all));
            }
            Self::AllowCut { rule } => changed.rules = rules.with_cut(rule),
            Self::FewerClearThreads { threads, .. } => {
                changed.rules = rules.with_clear_threads(threads);
            }
            Self::LessProtrusion { pitches, .. } => {
                changed.rules = rules.with_protrusion(pitches, rules.protrusion_max_pitches);
            }
            Self::MoreProtrusion { pitches, .. } => {
                changed.rules = rules.with_protrusion(rules.protrusion_min_pitches, Some(pitches));
            }
            Self::Spacer { at_least, .. } => {
                changed.stack = builder().spacer_under_nut(at_least).build()?;
                // The rules count washers, and it is none.
                let one_more = |most: usize| most.saturating_add(1);
                changed.rules.washers_under_nut_max =
                    one_more(rules.washers_under_nut_max).min(100);
                changed.rules.washers_max = rules.washers_max.map(|most| one_more(most).min(200));
            }
            Self::ThickerLastPly { at_least, .. } => {
                changed.stack = builder().thicker_last_ply(at_least).build()?;
            }
            Self::OtherProduct(other) | Self::OtherDiameter(other) => {
                (changed.screws, changed.nut) = (other.screws, other.nut);
                if let Some(washer) = other.washer {
                    changed.stack = builder().washers_of(&washer.into()).build()?;
                }
            }
            Self::SpecialBolt(_) => {}
        }
        Ok(changed)
    }

    /// What the search finds with the change made, if that does what is wanted.
    ///
    /// # Errors
    ///
    /// Those of [`applied`](Self::applied) and of [`LengthSearch::new`](crate::joint::LengthSearch::new).
    ///
    /// ```
    /// use shankline::{joint::{Arrangement, Change, Goal}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let arrangement = Arrangement::new(
    /// #     Stack::builder()
    /// #         .ply("thick", Spread::exact(millimetres(30.0)))
    /// #         .ply("thin", Spread::exact(millimetres(5.0)))
    /// #         .shear_planes([1])
    /// #         .build()?,
    /// #     ScrewSeries::new(ScrewProduct::Iso4014, &thread)?,
    /// #     NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?,
    /// #     LengthRules::fabrication(UnitSystem::Si),
    /// # );
    /// assert!(Change::TurnBolt.outcome(&arrangement, Goal::EveryPlaneOnShank)?.is_some());
    /// # Ok(())
    /// # }
    /// ```
    pub fn outcome(
        &self,
        arrangement: &Arrangement,
        goal: Goal,
    ) -> Result<Option<Candidate>, Error> {
        let Self::SpecialBolt(wanted) = self else {
            return self.applied(arrangement)?.best(goal);
        };
        let measures =
            ScrewLength::measured(wanted.length_min, wanted.shank_min, wanted.thread_start_max);
        // Measures that contradict each other are no bolt.
        let Ok(screw) = measures else {
            return Ok(None);
        };
        let candidate = arrangement.search()?.assess(screw)?;
        Ok(goal.is_met_by(&candidate).then_some(candidate))
    }

    /// The change as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// use shankline::{joint::Change, prelude::*};
    /// assert_eq!(
    ///     Change::TurnBolt.text(UnitSystem::Si),
    ///     "put the bolt in from the other side, head and nut changed over",
    /// );
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        // Whoever enters a figure as it is printed must get what was promised.
        let up = |length: Length| shown(length, system).rounded_up();
        let down = |length: Length| shown(length, system).rounded_down();
        let at_most = |pitches: f64| rounded(pitches, 2, Rounding::Down);
        match self {
            Self::TurnBolt => {
                "put the bolt in from the other side, head and nut changed over".into()
            }
            Self::AddWashers { count, permitted } => {
                format!("put {count} washers under the nut ({permitted} permitted)")
            }
            Self::AddWashersUnderHead { count, permitted } => {
                let plural = if *count == 1 { "" } else { "s" };
                format!("put {count} washer{plural} under the head ({permitted} permitted)")
            }
            Self::AllowCut { .. } => "let the bolt be cut to length".into(),
            Self::FewerClearThreads { threads, wanted } => {
                format!(
                    "settle for {} clear threads before the run-out in place of {}",
                    at_most(*threads),
                    plain(*wanted)
                )
            }
            Self::LessProtrusion { pitches, wanted } => {
                format!(
                    "settle for {} threads beyond the nut in place of {}",
                    at_most(*pitches),
                    plain(*wanted)
                )
            }
            Self::MoreProtrusion { pitches, permitted } => format!(
                "let up to {} threads stand beyond the nut in place of {}",
                rounded(*pitches, 2, Rounding::Up),
                plain(*permitted)
            ),
            Self::Spacer { at_least, at_most } => {
                let (least, most) = between(*at_least, *at_most, system);
                format!("put a spacer sleeve of {least} to {most} under the nut")
            }
            Self::OtherProduct(other) | Self::OtherDiameter(other) => {
                format!("take a {}", other.screws)
            }
            Self::ThickerLastPly { at_least, at_most } => {
                let (least, most) = between(*at_least, *at_most, system);
                format!("make the part at the nut {least} to {most} thicker")
            }
            Self::SpecialBolt(wanted) => {
                let (shank, start) = if wanted.shank_min > Length::default() {
                    let (shank, start) = between(wanted.shank_min, wanted.thread_start_max, system);
                    (format!("{shank} of plain shank, "), start)
                } else {
                    (String::new(), down(wanted.thread_start_max).to_string())
                };
                let length = match wanted.length_max.filter(|&most| most > wanted.length_min) {
                    Some(longest) => {
                        let (least, most) = between(wanted.length_min, longest, system);
                        format!("{least} to {most}")
                    }
                    None => up(wanted.length_min).to_string(),
                };
                format!(
                    "find or have made a bolt with {shank}thread from {start} and a length of {length}"
                )
            }
        }
    }
}

/// Two limits as text: the lower rounded up, the upper down, in as many decimals as leave room between them.
fn between(least: Length, most: Length, system: UnitSystem) -> (String, String) {
    const MOST_DECIMALS: usize = 6;
    let (low, high) = (shown(least, system), shown(most, system));
    let usual = low.decimals();
    let read = |text: &str| {
        text.split(' ')
            .next()
            .and_then(|number| number.parse::<f64>().ok())
    };
    let mut texts = (String::new(), String::new());
    for decimals in usual..=MOST_DECIMALS {
        texts = (
            format!("{:.decimals$}", low.rounded_up()),
            format!("{:.decimals$}", high.rounded_down()),
        );
        if read(&texts.0) <= read(&texts.1) {
            break;
        }
    }
    texts
}
