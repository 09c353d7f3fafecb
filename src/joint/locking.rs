//! What keeps nuts and screws on their threads: how far a bolt must pass through a lock nut, and what holds a
//! screw in a tapped part.

use crate::source::Method;
use crate::tables::methods;
use alloc::vec::Vec;
use core::fmt;

use super::Environment;
use crate::material::Severity;
use crate::parts::Locking;
use crate::tables::locking::{ServiceTemperature, TemperatureLimited};
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH, ThermodynamicTemperature, UnitSystem, shown};

/// How far a bolt must at least stick out of a lock nut, in the worst case of all tolerances: less leaves
/// the chamfered end in the locking element. `Display` writes it with its source.
///
/// ```
/// use shankline::joint::LeastProtrusion;
/// use shankline::parts::Locking;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let least = LeastProtrusion::of(Locking::Insert).unwrap();
/// let thread: Thread = "M12".parse()?;
/// assert!(!least.is_met(millimetres(0.2), &thread)); // the end is in the insert
/// assert!(least.is_met(millimetres(3.5), &thread));
/// assert_eq!(LeastProtrusion::of(Locking::None), None);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LeastProtrusion {
    /// Pitches beyond the nut.
    pub pitches: f64,
    /// Who asks for them.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub source: &'static Method,
}

impl LeastProtrusion {
    /// What is asked of a nut with this kind of lock; none where the end of the bolt has nothing to do with
    /// it.
    ///
    /// Source: US Air Force SMC regulation on locking features, 3a (a copy of the text): two threads through
    /// the device in the worst tolerances. FAA AC 43.13-1B 7-64f asks one thread of fibre and nylon nuts
    /// (a forum quotes it).
    ///
    /// ```
    /// use shankline::{joint::LeastProtrusion, parts::Locking};
    /// assert!(LeastProtrusion::of(Locking::AllMetal).is_some_and(|least| least.pitches == 2.0));
    /// ```
    #[must_use]
    pub const fn of(locking: Locking) -> Option<Self> {
        match locking {
            Locking::Insert | Locking::AllMetal => Some(Self {
                pitches: 2.0,
                source: methods::US_AIR_FORCE_SMC_REGULATION_ON_LOCKING_FEATURES,
            }),
            Locking::None | Locking::Slotted | Locking::Serrated => None,
        }
    }

    /// The length on a thread.
    ///
    /// ```
    /// use shankline::{joint::LeastProtrusion, parts::Locking, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let least = LeastProtrusion::of(Locking::Insert).unwrap();
    /// assert_eq!(least.length(&"M12".parse()?), millimetres(3.5));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn length(&self, thread: &Thread) -> Length {
        self.pitches * thread.pitch()
    }

    /// Whether the least protrusion of all tolerances is enough
    /// ([`Candidate::protrusion`](super::Candidate::protrusion), or that after the cut).
    ///
    /// ```
    /// use shankline::{joint::LeastProtrusion, parts::Locking, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let least = LeastProtrusion::of(Locking::Insert).unwrap();
    /// assert!(!least.is_met(millimetres(1.75), &"M12".parse()?));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn is_met(&self, least: Length, thread: &Thread) -> bool {
        least >= self.length(thread) - SAME_LENGTH
    }
}

impl fmt::Display for LeastProtrusion {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { pitches, source } = self;
        write!(
            f,
            "in the worst case the bolt sticks out of the lock nut by at least {pitches} threads [{source}]"
        )
    }
}

/// What keeps a screw from turning in a tapped part.
///
/// Spring and toothed washers are no entry: MIL-STD-2193 C, 5.2.9.3 does not count them, and their DIN
/// standards were withdrawn.
///
/// ```
/// use shankline::joint::ScrewLocking;
/// assert_eq!(ScrewLocking::SafetyWire.to_string(), "safety wire");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum ScrewLocking {
    /// Nothing but preload. It serves where it holds the faces: no slip, no loosening (Junker).
    Preload,
    /// A patch of plastic on the thread, or a locking insert in the hole: friction.
    Patch,
    /// Adhesive on clean threads.
    Adhesive,
    /// A pair of washers with wedges, under preload.
    WedgeWashers,
    /// Wire through the drilled head.
    SafetyWire,
}

impl fmt::Display for ScrewLocking {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Preload => "preload alone",
            Self::Patch => "patch or locking insert",
            Self::Adhesive => "thread-locking adhesive",
            Self::WedgeWashers => "wedge-locking washers",
            Self::SafetyWire => "safety wire",
        })
    }
}

impl ScrewLocking {
    /// What has a service temperature in it. The limit of a patch is taken as that of an insert of a lock nut:
    /// common practice, no source.
    const fn temperature_limited(self) -> Option<TemperatureLimited> {
        match self {
            Self::Patch => Some(TemperatureLimited::NonmetallicInsert),
            Self::Adhesive => Some(TemperatureLimited::AnaerobicCompound),
            Self::Preload | Self::WedgeWashers | Self::SafetyWire => None,
        }
    }
}

/// Something to know of what holds a screw. `Display` writes it with its source.
///
/// ```
/// use shankline::joint::ScrewLockReason;
/// assert!(ScrewLockReason::NoLock.to_string().contains("14 CFR 25.607(a)"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum ScrewLockReason {
    /// Nobody says what holds the screw.
    NotDescribed,
    /// Preload alone under vibration, and nobody shows that it holds the faces.
    FacesNotShown,
    /// Preload alone under vibration, and it does not hold the faces.
    FacesSlip,
    /// Friction or preload where parts may turn the screw.
    MayTurn,
    /// Preload alone where the loss would endanger somebody.
    NoLock,
    /// A second lock, of another kind, because the loss would endanger somebody.
    SecondLock,
    /// Hotter than the lock may get.
    TooHot {
        /// Highest temperature of it.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Clean threads, and the maker's data for aluminium and blind holes.
    AdhesiveData,
    /// New adhesive, patch or wire at each fitting.
    RenewEachTime,
    /// The head must be drilled.
    DrilledHead,
}

impl ScrewLockReason {
    /// What it weighs.
    ///
    /// ```
    /// use shankline::{joint::ScrewLockReason, material::Severity};
    /// assert_eq!(ScrewLockReason::NotDescribed.severity(), Severity::Undecided);
    /// ```
    #[must_use]
    pub const fn severity(self) -> Severity {
        match self {
            Self::NotDescribed | Self::FacesNotShown => Severity::Undecided,
            Self::FacesSlip | Self::MayTurn | Self::NoLock | Self::TooHot { .. } => Severity::Fault,
            Self::SecondLock | Self::AdhesiveData | Self::RenewEachTime | Self::DrilledHead => {
                Severity::Caution
            }
        }
    }

    /// Who says so.
    ///
    /// ```
    /// use shankline::joint::ScrewLockReason;
    /// assert_eq!(ScrewLockReason::DrilledHead.source().citation, "common practice, no source");
    /// ```
    #[must_use]
    pub const fn source(self) -> &'static Method {
        match self {
            Self::NotDescribed | Self::FacesNotShown | Self::FacesSlip => {
                methods::JUNKER_SAE_TRANSACTIONS_1969_IN_A_TRADE_ARTICLE
            }
            Self::MayTurn => methods::CFR_25_607_C,
            Self::NoLock | Self::SecondLock => methods::CFR_25_607_A,
            Self::TooHot { .. } => methods::SERVICE_TEMPERATURES_OF_THE_TABLES,
            Self::AdhesiveData => methods::SUPPLIERS_CHAPTERS_ON_LOCKING,
            Self::RenewEachTime | Self::DrilledHead => methods::COMMON_PRACTICE,
        }
    }
}

impl fmt::Display for ScrewLockReason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::NotDescribed => {
                f.write_str("nothing here says what keeps the screw from turning in the tapped part")?;
            }
            Self::FacesNotShown => f.write_str(
                "preload alone holds the screw, and it is not shown that it keeps the faces from slipping",
            )?,
            Self::FacesSlip => f.write_str(
                "preload alone holds the screw, and the faces slip: it may loosen under vibration",
            )?,
            Self::MayTurn => f.write_str(
                "where parts may turn the screw, friction is not enough: wire it",
            )?,
            Self::NoLock => f.write_str(
                "preload is its only lock, and the loss of the screw would endanger somebody",
            )?,
            Self::SecondLock => f.write_str(
                "two separate locks are needed, because the loss of the screw would endanger somebody",
            )?,
            Self::TooHot { limit } => write!(
                f,
                "its lock is for at most {} ({})",
                shown(limit, UnitSystem::Si),
                shown(limit, UnitSystem::UsCustomary)
            )?,
            Self::AdhesiveData => f.write_str(
                "clean both threads; for aluminium and blind holes take the maker's data",
            )?,
            Self::RenewEachTime => {
                f.write_str("take new adhesive, a new patched screw or new wire at each fitting")?;
            }
            Self::DrilledHead => f.write_str("the head must be drilled for the wire")?,
        }
        write!(f, " [{}]", self.source())
    }
}

/// What there is to know of what holds a screw in a tapped part. `faces_held` tells whether the least
/// preload keeps the faces from slipping (least clamp force at least transverse load over friction); none if
/// that is not worked out.
///
/// Nothing is asked of a screw that nothing shakes or turns and whose loss endangers nobody.
///
/// ```
/// use shankline::joint::{Environment, ScrewLocking, screw_locking};
/// use shankline::material::Severity;
/// let shaken = Environment { vibration: true, ..Environment::workshop() };
/// let worst = |locking, held| {
///     screw_locking(locking, &shaken, held).iter().map(|reason| reason.severity()).max()
/// };
/// assert_eq!(worst(None, None), Some(Severity::Undecided));
/// assert_eq!(worst(Some(ScrewLocking::Preload), None), Some(Severity::Undecided));
/// assert_eq!(worst(Some(ScrewLocking::Preload), Some(true)), None);
/// assert_eq!(worst(Some(ScrewLocking::Preload), Some(false)), Some(Severity::Fault));
/// ```
#[must_use]
pub fn screw_locking(
    locking: Option<ScrewLocking>,
    environment: &Environment,
    faces_held: Option<bool>,
) -> Vec<ScrewLockReason> {
    let mut reasons = Vec::new();
    let Environment {
        vibration,
        rotates,
        dangerous_if_lost,
        ..
    } = *environment;
    let Some(locking) = locking else {
        let shaken_loose = vibration && faces_held != Some(true);
        if shaken_loose || rotates || dangerous_if_lost {
            reasons.push(ScrewLockReason::NotDescribed);
        }
        return reasons;
    };
    let limit = locking
        .temperature_limited()
        .and_then(ServiceTemperature::lowest_max);
    reasons.extend(
        limit
            .filter(|&limit| environment.hottest > limit)
            .map(|limit| ScrewLockReason::TooHot { limit }),
    );
    if rotates && locking != ScrewLocking::SafetyWire {
        reasons.push(ScrewLockReason::MayTurn);
    }
    if locking == ScrewLocking::Preload {
        if vibration {
            reasons.extend(match faces_held {
                Some(true) => None,
                Some(false) => Some(ScrewLockReason::FacesSlip),
                None => Some(ScrewLockReason::FacesNotShown),
            });
        }
        if dangerous_if_lost {
            reasons.push(ScrewLockReason::NoLock);
        }
        return reasons;
    }
    if dangerous_if_lost {
        reasons.push(ScrewLockReason::SecondLock);
    }
    match locking {
        ScrewLocking::Adhesive => reasons.push(ScrewLockReason::AdhesiveData),
        ScrewLocking::SafetyWire => reasons.push(ScrewLockReason::DrilledHead),
        _ => {}
    }
    if environment.refits > 0 && locking != ScrewLocking::WedgeWashers {
        reasons.push(ScrewLockReason::RenewEachTime);
    }
    reasons
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{celsius, inches, millimetres};

    #[test]
    fn the_end_of_the_bolt_must_leave_the_lock() {
        let thread: Thread = "M12".parse().unwrap();
        for locking in [Locking::Insert, Locking::AllMetal] {
            let least = LeastProtrusion::of(locking).unwrap();
            // 0.11 of a pitch: the end is in the insert.
            assert!(!least.is_met(0.11 * thread.pitch(), &thread));
            assert!(!least.is_met(millimetres(-1.0), &thread));
            assert!(!least.is_met(millimetres(f64::NAN), &thread));
            assert!(least.is_met(2.0 * thread.pitch(), &thread));
        }
        for locking in [Locking::None, Locking::Slotted, Locking::Serrated] {
            assert!(LeastProtrusion::of(locking).is_none());
        }
        let inch: Thread = "1/2-13 UNC".parse().unwrap();
        let least = LeastProtrusion::of(Locking::Insert).unwrap();
        assert!((least.length(&inch) - inches(2.0 / 13.0)).abs() < inches(1e-9));
    }

    fn worst(locking: Option<ScrewLocking>, environment: Environment) -> Severity {
        let reasons = screw_locking(locking, &environment, None);
        let severities = reasons.into_iter().map(ScrewLockReason::severity);
        severities.max().unwrap_or(Severity::Fine)
    }

    #[test]
    fn a_tapped_screw_needs_its_lock() {
        let calm = Environment::workshop();
        let shaken = Environment {
            vibration: true,
            ..calm
        };
        let hinge = Environment {
            rotates: true,
            ..calm
        };
        let danger = Environment {
            dangerous_if_lost: true,
            ..calm
        };
        assert_eq!(worst(None, calm), Severity::Fine);
        for environment in [shaken, hinge, danger] {
            assert_eq!(worst(None, environment), Severity::Undecided);
        }
        let locks = [
            ScrewLocking::Patch,
            ScrewLocking::Adhesive,
            ScrewLocking::WedgeWashers,
        ];
        for lock in locks {
            assert!(worst(Some(lock), shaken) <= Severity::Caution, "{lock}");
            assert_eq!(worst(Some(lock), hinge), Severity::Fault, "{lock}");
            assert_eq!(worst(Some(lock), danger), Severity::Caution, "{lock}");
        }
        let wire = Some(ScrewLocking::SafetyWire);
        assert_eq!(worst(wire, hinge), Severity::Caution);
        assert_eq!(worst(Some(ScrewLocking::Preload), danger), Severity::Fault);
        let hot = Environment {
            hottest: celsius(160.0),
            ..shaken
        };
        for lock in [ScrewLocking::Patch, ScrewLocking::Adhesive] {
            assert_eq!(worst(Some(lock), hot), Severity::Fault, "{lock}");
        }
        assert_eq!(worst(wire, hot), Severity::Caution);
    }

    /// Each lock with all that is said of it, where it is asked for and where it is not.
    #[test]
    fn each_lock_is_told_what_it_lacks() {
        use ScrewLockReason as Said;
        let calm = Environment::workshop();
        let refitted = Environment { refits: 1, ..calm };
        let lost = Environment {
            dangerous_if_lost: true,
            ..calm
        };
        let hinge = Environment {
            rotates: true,
            ..calm
        };
        let of = |lock, environment| screw_locking(Some(lock), &environment, None);
        let renewed = Said::RenewEachTime;
        for (lock, own) in [
            (ScrewLocking::Preload, None),
            (ScrewLocking::Patch, None),
            (ScrewLocking::Adhesive, Some(Said::AdhesiveData)),
            (ScrewLocking::WedgeWashers, None),
            (ScrewLocking::SafetyWire, Some(Said::DrilledHead)),
        ] {
            let own = || own.into_iter();
            let said = |before: Option<Said>, after: Option<Said>| -> Vec<Said> {
                before.into_iter().chain(own()).chain(after).collect()
            };
            assert_eq!(of(lock, calm), said(None, None), "{lock}");
            let is_worn = !matches!(lock, ScrewLocking::Preload | ScrewLocking::WedgeWashers);
            let worn = is_worn.then_some(renewed);
            assert_eq!(of(lock, refitted), said(None, worn), "{lock}");
            let danger = if lock == ScrewLocking::Preload {
                Said::NoLock
            } else {
                Said::SecondLock
            };
            assert_eq!(of(lock, lost), said(Some(danger), None), "{lock}");
            let turns = (lock != ScrewLocking::SafetyWire).then_some(Said::MayTurn);
            assert_eq!(of(lock, hinge), said(turns, None), "{lock}");
        }
    }

    /// At the limit of its lock a screw is still held, and a hundredth of a degree above it is not.
    #[test]
    fn a_lock_holds_up_to_its_limit() {
        for lock in [ScrewLocking::Patch, ScrewLocking::Adhesive] {
            let element = lock.temperature_limited().unwrap();
            let limit = ServiceTemperature::lowest_max(element).unwrap();
            let too_hot = |hottest| {
                let environment = Environment {
                    hottest,
                    ..Environment::workshop()
                };
                let reasons = screw_locking(Some(lock), &environment, None);
                reasons.contains(&ScrewLockReason::TooHot { limit })
            };
            assert!(!too_hot(limit), "{lock}");
            assert!(too_hot(limit * 1.000_03), "{lock}");
        }
    }

    #[test]
    fn preload_alone_is_judged_by_the_faces() {
        let shaken = Environment {
            vibration: true,
            ..Environment::workshop()
        };
        let of = |lock, faces| screw_locking(lock, &shaken, faces);
        let preload = Some(ScrewLocking::Preload);
        assert_eq!(of(preload, Some(true)), []);
        assert_eq!(of(preload, Some(false)), [ScrewLockReason::FacesSlip]);
        assert_eq!(of(preload, None), [ScrewLockReason::FacesNotShown]);
        assert_eq!(of(None, Some(true)), []);
        assert_eq!(of(None, Some(false)), [ScrewLockReason::NotDescribed]);
        assert_eq!(of(None, None), [ScrewLockReason::NotDescribed]);
    }
}
