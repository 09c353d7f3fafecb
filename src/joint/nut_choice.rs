//! Which kind of nut for which place, and why.
//!
//! The facts behind each reason, and who says so:
//!
//! | fact | source |
//! |---|---|
//! | nonmetallic inserts stop at 120 C (250 F), all-metal nuts at 150 C; both at -50 C | ISO 2320:2015, scope; FAA AC 43.13-1B 7-64 |
//! | a free-spinning nut has no prevailing torque | IFI-100/107, notes |
//! | movement across the axis is what loosens bolts | Junker, SAE Transactions 1969, in a trade article |
//! | no self-locking nut where the bolt may rotate, unless a non-friction lock is used as well | 14 CFR 25.607(c), 27.607(b) |
//! | two separate locks where the loss of the bolt would endanger | 14 CFR 25.607(a), 27.607(a) |
//! | a used lock nut must still reach a least prevailing torque | FAA AC 43.13-1B Table 7-2; US Army TM 1-1500-204-23-6 Table 2-8 |
//! | all-metal nuts wear plating and thread of the bolt, inserts are kinder | lock-nut supplier sheet |
//! | a new cotter pin at each fitting | helicopter maintenance manual, section 20-70 |
//! | two threads through a locking device in the worst case | US Air Force SMC regulation on locking features |
//! | a thin nut strips before the bolt breaks | ISO 898-2:2012, nuts of style 0 (recalled) |
//! | serrations bite into the bearing face | common practice, no source |

use crate::source::Method;
use crate::tables::methods;
use alloc::vec::Vec;
use core::fmt;

use super::{Environment, LeastProtrusion};
use crate::error::Error;
use crate::parts::{Locking, Nut, NutStyle};
use crate::tables::locking::{PrevailingTorque, ServiceTemperature, TemperatureLimited};
use crate::thread::Thread;
use crate::units::{ThermodynamicTemperature, Torque, UnitSystem, shown};

#[cfg(test)]
mod tests;

/// The kinds of nut for a thread, the suitable ones first.
///
/// Ranking: fewer objections first; between equals plain, insert, all-metal, serrated, slotted, as
/// the simpler part is the better one and serrations have no published limit behind them.
///
/// ```
/// use shankline::joint::{Environment, NutChoice};
/// use shankline::parts::Locking;
/// use shankline::prelude::*;
/// use shankline::units::celsius;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let shaken = Environment { vibration: true, ..Environment::workshop() };
/// let choice = NutChoice::new(&thread, &shaken)?;
/// assert_eq!(choice.best().unwrap().locking, Locking::Insert);
///
/// let hot = Environment { hottest: celsius(140.0), ..shaken };
/// assert_eq!(NutChoice::new(&thread, &hot)?.best().unwrap().locking, Locking::AllMetal);
///
/// let hinge = Environment { rotates: true, ..shaken };
/// assert_eq!(NutChoice::new(&thread, &hinge)?.best().unwrap().locking, Locking::Slotted);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutChoice {
    /// Every kind of nut made with the thread, in order of rank.
    pub options: Vec<NutOption>,
}

/// One kind of nut, with what speaks for and against it.
///
/// ```
/// use shankline::joint::{Environment, NutChoice};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let choice = NutChoice::new(&"1/2-13 UNC".parse()?, &Environment::workshop())?;
/// for option in &choice.options {
///     println!("{}: suitable {}", option.locking, option.is_suitable());
/// }
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutOption {
    /// What locks the nut.
    pub locking: Locking,
    /// The styles of that kind made with the thread, in the order of [`NutStyle`]. Thin ones only where there is
    /// no other, and then with [`NutReason::Thin`].
    pub styles: Vec<NutStyle>,
    /// What speaks against it, is asked for with it, or speaks for it.
    pub reasons: Vec<NutReason>,
}

/// Something to know about a kind of nut in an environment. `Display` writes it as a sentence with
/// its source.
///
/// ```
/// use shankline::joint::NutReason;
/// assert!(NutReason::FrictionLockTurns.is_objection());
/// assert!(NutReason::FrictionLockTurns.to_string().contains("14 CFR 25.607(c)"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum NutReason {
    /// Objection: the joint gets hotter than the locking element may.
    TooHot {
        /// Highest temperature of the element.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Objection: the joint gets colder than the locking element may.
    TooCold {
        /// Lowest temperature of the element.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Objection: nothing holds the nut under vibration once the joint slips.
    SpinsFree,
    /// Objection: a friction lock where the bolt may rotate.
    FrictionLockTurns,
    /// Objection: there is no lock besides the preload, and the loss would endanger.
    NoLock,
    /// Condition: a thin nut takes no more than its own proof load, which is below that of the bolt.
    Thin,
    /// Condition: a second lock, of another kind, because the loss would endanger.
    SecondLock,
    /// Condition: the bolt end must pass this many pitches through the nut in the worst case.
    ThreadsThrough {
        /// Pitches.
        pitches: f64,
    },
    /// Condition: each time the nut is used again its running torque is measured, and the nut thrown
    /// away below the least one.
    MeasureRunningTorque {
        /// The largest of the least torques the authorities give for the thread; none if no authority
        /// lists it.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        least: Option<Torque>,
    },
    /// Condition: the thread of the bolt is looked at too, each time.
    WearsBolt,
    /// Condition: the bolt has a hole for the pin.
    DrilledBolt,
    /// Condition: a new pin at each fitting.
    NewPin,
    /// Condition: the bearing face takes marks, and coatings are cut.
    MarksFace,
    /// Condition: preload is what keeps the nut, so the torque is controlled.
    HeldByPreload,
    /// It locks without preload and without friction.
    PositiveLock,
    /// It keeps turning hard without preload.
    HoldsWithoutPreload,
    /// It is kind to the thread of the bolt.
    KindToThread,
}

impl NutReason {
    /// Whether it speaks against the nut.
    ///
    /// ```
    /// use shankline::joint::NutReason;
    /// assert!(NutReason::SpinsFree.is_objection() && !NutReason::NewPin.is_objection());
    /// ```
    #[must_use]
    pub const fn is_objection(self) -> bool {
        matches!(
            self,
            Self::TooHot { .. }
                | Self::TooCold { .. }
                | Self::SpinsFree
                | Self::FrictionLockTurns
                | Self::NoLock
        )
    }

    /// Whether it asks for something to be done.
    ///
    /// ```
    /// use shankline::joint::NutReason;
    /// assert!(NutReason::NewPin.is_condition() && !NutReason::PositiveLock.is_condition());
    /// ```
    #[must_use]
    pub const fn is_condition(self) -> bool {
        !self.is_objection()
            && !matches!(
                self,
                Self::PositiveLock | Self::HoldsWithoutPreload | Self::KindToThread
            )
    }

    /// Who says so.
    ///
    /// ```
    /// use shankline::joint::NutReason;
    /// assert_eq!(NutReason::MarksFace.source().citation, "common practice, no source");
    /// ```
    #[must_use]
    pub const fn source(self) -> &'static Method {
        match self {
            Self::TooHot { .. } | Self::TooCold { .. } => methods::ISO_2320_2015_SCOPE,
            Self::SpinsFree => methods::SPINS_FREE,
            Self::FrictionLockTurns => methods::CFR_25_607_C,
            Self::NoLock | Self::SecondLock => methods::CFR_25_607_A,
            Self::ThreadsThrough { .. } => methods::US_AIR_FORCE_SMC_REGULATION_ON_LOCKING_FEATURES,
            Self::MeasureRunningTorque { .. } => {
                methods::FAA_AC_43_13_1B_TABLE_7_2_US_ARMY_TM_1_1500_204_23_6_TABLE_2_8
            }
            Self::WearsBolt | Self::KindToThread => methods::LOCK_NUT_SUPPLIER_SHEET,
            Self::Thin => methods::ISO_898_2_2012_NUTS_OF_STYLE_0_RECALLED,
            Self::DrilledBolt | Self::MarksFace => methods::COMMON_PRACTICE,
            Self::NewPin => methods::HELICOPTER_MAINTENANCE_MANUAL_SECTION_20_70,
            Self::HeldByPreload => methods::HELD_BY_PRELOAD,
            Self::PositiveLock => methods::FAA_AC_43_13_1B_7_64,
            Self::HoldsWithoutPreload => methods::IFI_100_107_1_2,
        }
    }
}

impl fmt::Display for NutReason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let si = |temperature| shown(temperature, UnitSystem::Si);
        let us = |temperature| shown(temperature, UnitSystem::UsCustomary);
        match *self {
            Self::TooHot { limit } => write!(
                f,
                "its locking element is for at most {} ({})",
                si(limit),
                us(limit)
            )?,
            Self::TooCold { limit } => write!(
                f,
                "its locking element is for at least {} ({})",
                si(limit),
                us(limit)
            )?,
            Self::SpinsFree => f.write_str(
                "nothing but preload holds it; once the joint slips sideways it may spin off",
            )?,
            Self::FrictionLockTurns => f.write_str(
                "where the bolt may rotate a lock by friction is not enough: a pin or wire is needed",
            )?,
            Self::NoLock => f.write_str(
                "preload is its only lock, and the loss of the bolt would endanger somebody",
            )?,
            Self::SecondLock => f.write_str(
                "two separate locks are needed, because the loss of the bolt would endanger somebody",
            )?,
            Self::ThreadsThrough { pitches } => write!(
                f,
                "the bolt passes at least {pitches} pitches through the nut in the worst case"
            )?,
            Self::MeasureRunningTorque { least: Some(least) } => write!(
                f,
                "measure the running torque at each refit; below {:.1} ({:.0} lbf in) take a new nut",
                shown(least, UnitSystem::Si),
                least.get::<crate::units::pound_force_inch>()
            )?,
            Self::MeasureRunningTorque { least: None } => f.write_str(
                "measure the running torque at each refit; no authority lists this thread, so ask the \
                 maker for the least one",
            )?,
            Self::WearsBolt => {
                f.write_str("it wears the thread of the bolt: look at the bolt at each refit")?;
            }
            Self::Thin => f.write_str(
                "it is a thin nut: its thread strips before the bolt breaks, so hold the tension against the proof \
                 load of the nut",
            )?,
            Self::DrilledBolt => f.write_str("the bolt must be drilled for the pin")?,
            Self::NewPin => f.write_str("fit a new cotter pin each time")?,
            Self::MarksFace => f.write_str("its teeth mark the bearing face and cut its coating")?,
            Self::HeldByPreload => {
                f.write_str("preload is what holds it: control the torque, and let nothing slip")?;
            }
            Self::PositiveLock => f.write_str("a pin holds it without preload or friction")?,
            Self::HoldsWithoutPreload => f.write_str("it resists turning without preload")?,
            Self::KindToThread => f.write_str("its insert is kind to the thread of the bolt")?,
        }
        write!(f, " [{}]", self.source())
    }
}

impl NutChoice {
    /// Ranks the kinds of nut that are made with a thread.
    ///
    /// # Errors
    ///
    /// Those of [`Environment::check`]; [`Error::NotInTable`] if no nut of the tables has the thread.
    ///
    /// ```
    /// use shankline::joint::{Environment, NutChoice};
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "3/8-16 UNC".parse()?;
    /// let choice = NutChoice::new(&thread, &Environment::workshop())?;
    /// assert!(choice.best().unwrap().styles.contains(&NutStyle::Hex));
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(thread: &Thread, environment: &Environment) -> Result<Self, Error> {
        environment.check()?;
        let mut options = Vec::new();
        for locking in [
            Locking::None,
            Locking::Insert,
            Locking::AllMetal,
            Locking::Serrated,
            Locking::Slotted,
        ] {
            let mut styles = styles_made(locking, thread);
            let all_thin = styles.iter().all(|style| style.is_thin());
            if !all_thin {
                styles.retain(|style| !style.is_thin());
            }
            if !styles.is_empty() {
                options.push(NutOption {
                    locking,
                    styles,
                    reasons: reasons(locking, all_thin, thread, environment),
                });
            }
        }
        if options.is_empty() {
            // Any style tells what sizes there are.
            let style = if thread.is_unified() {
                NutStyle::Hex
            } else {
                NutStyle::Iso4032
            };
            Nut::find(style, thread)?;
        }
        // The sort is stable: the order above decides between equals.
        options.sort_by_key(NutOption::objections);
        Ok(Self { options })
    }

    /// The first choice, if any kind has no objection against it.
    ///
    /// ```
    /// use shankline::joint::{Environment, NutChoice};
    /// use shankline::prelude::*;
    /// use shankline::units::celsius;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let furnace = Environment { hottest: celsius(400.0), vibration: true, ..Environment::workshop() };
    /// let choice = NutChoice::new(&"5/8-11 UNC".parse()?, &furnace)?;
    /// assert_eq!(choice.best().unwrap().locking.to_string(), "slotted nut with cotter pin");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn best(&self) -> Option<&NutOption> {
        self.options.first().filter(|option| option.is_suitable())
    }
}

impl NutOption {
    /// What there is to know of one style of nut in an environment.
    ///
    /// # Errors
    ///
    /// Those of [`Environment::check`].
    ///
    /// ```
    /// # use shankline::joint::{Environment, NutOption};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let shaken = Environment { vibration: true, ..Environment::workshop() };
    /// let plain = NutOption::of(NutStyle::Iso4032, &"M10".parse()?, &shaken)?;
    /// assert!(!plain.is_suitable());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(style: NutStyle, thread: &Thread, environment: &Environment) -> Result<Self, Error> {
        environment.check()?;
        let locking = style.locking();
        Ok(Self {
            locking,
            styles: Vec::from([style]),
            reasons: reasons(locking, style.is_thin(), thread, environment),
        })
    }

    /// A nut of the caller's own, of which the lock is known and no style.
    pub(super) fn of_own(
        locking: Locking,
        thread: &Thread,
        environment: &Environment,
    ) -> Result<Self, Error> {
        environment.check()?;
        Ok(Self {
            locking,
            styles: Vec::new(),
            reasons: reasons(locking, false, thread, environment),
        })
    }

    /// Whether nothing speaks against it.
    ///
    /// ```
    /// # use shankline::joint::{Environment, NutChoice};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let choice = NutChoice::new(&"M10".parse()?, &Environment::workshop())?;
    /// assert!(choice.options.iter().all(|option| option.is_suitable()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn is_suitable(&self) -> bool {
        !self.reasons.iter().any(|reason| reason.is_objection())
    }

    fn objections(&self) -> usize {
        let reasons = self.reasons.iter();
        reasons.filter(|reason| reason.is_objection()).count()
    }
}

/// The styles of one kind that are made with a thread.
fn styles_made(locking: Locking, thread: &Thread) -> Vec<NutStyle> {
    let all = if thread.is_unified() {
        Nut::all_inch()
    } else {
        Nut::all_metric()
    };
    let mut styles: Vec<NutStyle> = Vec::new();
    for style in all.iter().map(|nut| nut.style) {
        let known = styles.last() == Some(&style);
        if !known && style.locking() == locking && Nut::find(style, thread).is_ok() {
            styles.push(style);
        }
    }
    styles
}

fn reasons(
    locking: Locking,
    thin: bool,
    thread: &Thread,
    environment: &Environment,
) -> Vec<NutReason> {
    let mut reasons = Vec::new();
    if thin {
        reasons.push(NutReason::Thin);
    }
    let by_friction = matches!(locking, Locking::Insert | Locking::AllMetal);
    reasons.extend(temperature_objections(locking, environment));
    match locking {
        Locking::None | Locking::Serrated => {
            if environment.vibration {
                reasons.push(NutReason::SpinsFree);
            }
            if environment.rotates {
                reasons.push(NutReason::FrictionLockTurns);
            }
            if environment.dangerous_if_lost {
                reasons.push(NutReason::NoLock);
            }
            if locking == Locking::Serrated {
                reasons.push(NutReason::MarksFace);
            }
            reasons.push(NutReason::HeldByPreload);
        }
        Locking::Insert | Locking::AllMetal => {
            if environment.rotates {
                reasons.push(NutReason::FrictionLockTurns);
            }
            reasons.extend(
                LeastProtrusion::of(locking).map(|least| NutReason::ThreadsThrough {
                    pitches: least.pitches,
                }),
            );
            if environment.refits > 0 {
                let least = PrevailingTorque::greatest_reuse_minimum(thread);
                reasons.push(NutReason::MeasureRunningTorque { least });
                if locking == Locking::AllMetal {
                    reasons.push(NutReason::WearsBolt);
                }
            }
        }
        Locking::Slotted => {
            reasons.push(NutReason::DrilledBolt);
            if environment.refits > 0 {
                reasons.push(NutReason::NewPin);
            }
        }
    }
    if environment.dangerous_if_lost && (by_friction || locking == Locking::Slotted) {
        reasons.push(NutReason::SecondLock);
    }
    match locking {
        Locking::Slotted => reasons.push(NutReason::PositiveLock),
        Locking::Insert => {
            reasons.extend([NutReason::HoldsWithoutPreload, NutReason::KindToThread]);
        }
        Locking::AllMetal => reasons.push(NutReason::HoldsWithoutPreload),
        Locking::None | Locking::Serrated => {}
    }
    reasons
}

fn temperature_objections(
    locking: Locking,
    environment: &Environment,
) -> impl Iterator<Item = NutReason> + use<> {
    let element = match locking {
        Locking::Insert => Some(TemperatureLimited::NonmetallicInsert),
        Locking::AllMetal => Some(TemperatureLimited::AllMetalNut),
        Locking::None | Locking::Slotted | Locking::Serrated => None,
    };
    let row = element.and_then(|element| ServiceTemperature::latest(element, "ISO 2320"));
    let (coldest, hottest) = (environment.coldest, environment.hottest);
    let too_hot = row
        .and_then(|row| row.temperature_max)
        .filter(|&limit| hottest > limit)
        .map(|limit| NutReason::TooHot { limit });
    let too_cold = row
        .and_then(|row| row.temperature_min)
        .filter(|&limit| coldest < limit)
        .map(|limit| NutReason::TooCold { limit });
    too_hot.into_iter().chain(too_cold)
}
