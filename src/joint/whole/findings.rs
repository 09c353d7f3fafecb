//! What a check of a joint finds besides numbers.

use alloc::{format, string::String};
use core::fmt;

use crate::joint::{NutReason, Part, Reason};
use crate::material::Misfit;
use crate::strength::check::Mode;
use crate::strength::ply::DistanceKind;
use crate::units::{
    ElectricPotential, Length, Ratio, Stress, ThermodynamicTemperature, UnitSystem, shown,
};

/// Something found that is no comparison of a load with a resistance.
///
/// ```
/// use shankline::joint::{Finding, NutReason};
/// use shankline::units::UnitSystem;
/// let finding = Finding::Nut(NutReason::SpinsFree);
/// assert!(finding.is_fault());
/// assert!(finding.text(UnitSystem::Si).starts_with("nut: nothing but preload holds it"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Finding {
    /// Fault: why the length does not fit.
    Length(Reason),
    /// What speaks against, is asked for with, or speaks for the kind of nut.
    Nut(NutReason),
    /// Fault: the coated threads of bolt and nut do not go together.
    ThreadsDoNotFit {
        /// Why.
        why: Misfit,
    },
    /// Fault: no standard lists the pair, and the nut is not shown to outlast the bolt: a thread that strips
    /// nobody sees coming.
    NutWeaker {
        /// Proof load of the nut over the breaking load of the bolt.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        ratio: Ratio,
    },
    /// Fault: the threads of bolt or tapped part strip before the bolt breaks, which nobody would see coming.
    ThreadsWeaker {
        /// Load that strips the weaker thread over the breaking load of the bolt.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        ratio: Ratio,
    },
    /// Fault: the joint gets hotter than the bolt material is specified for.
    BoltTooHot {
        /// Highest temperature of its standard.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Fault: the joint gets colder than the bolt material is specified for.
    BoltTooCold {
        /// Lowest temperature of its standard.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Fault: a hole lies nearer to an edge or to the next hole than the code permits.
    ShortDistance {
        /// Ply, counted from 1 at the head.
        ply: usize,
        /// Which distance.
        kind: DistanceKind,
        /// What it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        distance: Length,
        /// What it must be at least.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        least: Length,
    },
    /// Fault: two metals in contact are further apart than the exposure permits; the anode corrodes.
    Galvanic {
        /// The part that corrodes.
        anode: Part,
        /// The nobler part.
        cathode: Part,
        /// Difference of their anodic indices.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        difference: ElectricPotential,
        /// What the exposure permits.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        permitted: ElectricPotential,
    },
    /// Fault: a bolt so hard is baked after plating, or hydrogen breaks it days after tightening.
    NotBaked {
        /// Greatest hardness of its grade, Rockwell C.
        hardness: f64,
    },
    /// To know: even baked, a bolt so hard is better not electroplated.
    PlatedHard {
        /// Greatest hardness of its grade, Rockwell C.
        hardness: f64,
    },
    /// Fault: the standard of the bolt forbids metallic coatings.
    CoatingForbidden,
    /// Fault: too strong to be hot-dip galvanized.
    GalvanizedTooStrong {
        /// Its tensile strength.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        strength: Stress,
        /// What is galvanized without concern.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        most: Stress,
    },
    /// Fault: the joint gets hotter than a coating bears.
    CoatingTooHot {
        /// Bolt or nut.
        part: Part,
        /// The lowest limit that any publisher gives.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Fault: relaxation and settling leave no preload, so the load along the axis parts the plies.
    NoPreloadLeft,
    /// Fault: the joint must not slip, and the tension leaves no clamp force that would hold it.
    Slips,
    /// To know: the preload first pulls a gap together, and bends the plies with it.
    GapUnderPreload {
        /// The gap lies after this ply, counted from 1 at the head.
        after_ply: usize,
        /// Its greatest width.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize")
        )]
        width: Length,
    },
    /// A shear plane is not on plain shank in the worst case. Capacities are those of the thread.
    PlaneInThread {
        /// The plane lies after this ply, counted from 1 at the head.
        after_ply: usize,
    },
    /// To do: washers to add under the nut.
    AddWashers {
        /// How many.
        count: usize,
    },
    /// To do: washers to add under the head.
    AddWashersUnderHead {
        /// How many.
        count: usize,
    },
    /// To do: the bolt is to be cut.
    Cut {
        /// To this length; none to cut it at fit-up, to the stack in hand.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_option")
        )]
        to: Option<Length>,
    },
}

impl Finding {
    /// Whether it forbids the joint as it is.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// assert!(!Finding::AddWashers { count: 1 }.is_fault());
    /// ```
    #[must_use]
    pub const fn is_fault(&self) -> bool {
        match self {
            Self::Length(_)
            | Self::NutWeaker { .. }
            | Self::ThreadsDoNotFit { .. }
            | Self::ThreadsWeaker { .. }
            | Self::ShortDistance { .. }
            | Self::Galvanic { .. }
            | Self::NotBaked { .. }
            | Self::CoatingForbidden
            | Self::NoPreloadLeft
            | Self::Slips
            | Self::GalvanizedTooStrong { .. }
            | Self::CoatingTooHot { .. }
            | Self::BoltTooHot { .. }
            | Self::BoltTooCold { .. } => true,
            Self::Nut(reason) => reason.is_objection(),
            Self::PlatedHard { .. }
            | Self::GapUnderPreload { .. }
            | Self::PlaneInThread { .. }
            | Self::AddWashers { .. }
            | Self::AddWashersUnderHead { .. }
            | Self::Cut { .. } => false,
        }
    }

    /// One line for a person.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// use shankline::units::UnitSystem;
    /// let line = Finding::AddWashers { count: 2 }.text(UnitSystem::Si);
    /// assert_eq!(line, "add 2 washers under the nut");
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match *self {
            Self::Length(reason) => format!("length: {}", reason.text(system)),
            Self::Nut(reason) => format!("nut: {reason}"),
            Self::ThreadsDoNotFit { why } => format!("nut: {why}"),
            Self::NutWeaker { ratio } => format!(
                "the nut is proved to {:.0} % of the breaking load of the bolt: it is not shown to outlast it",
                ratio.value * 100.0
            ),
            Self::ThreadsWeaker { ratio } => format!(
                "the threads engaged hold {:.0} % of the breaking load of the bolt: they strip first",
                ratio.value * 100.0
            ),
            Self::BoltTooHot { limit } => {
                format!("the bolt is specified up to {} only", shown(limit, system))
            }
            Self::BoltTooCold { limit } => {
                format!(
                    "the bolt is specified down to {} only",
                    shown(limit, system)
                )
            }
            Self::ShortDistance {
                ply,
                kind,
                distance,
                least,
            } => format!(
                "ply {ply}: {kind} {}, must be at least {}",
                shown(distance, system),
                shown(least, system)
            ),
            Self::Galvanic {
                anode,
                cathode,
                difference,
                permitted,
            } => format!(
                "corrosion: {anode} corrodes on {cathode}, {} apart, at most {} is permitted: insulate, seal \
                 or choose metals nearer to each other [anodic index, guide of the trade]",
                shown(difference, system),
                shown(permitted, system)
            ),
            Self::NotBaked { hardness } => format!(
                "the bolt may be {hardness:.0} HRC hard and is plated without baking: hydrogen may break it \
                 [ASTM F1941 from 40 HRC; ISO 4042:2018 above 390 HV]"
            ),
            Self::PlatedHard { hardness } => format!(
                "the bolt may be {hardness:.0} HRC hard: baking does not take every risk of hydrogen away, \
                 plating is not recommended [ASTM F1941-15, introduction]"
            ),
            Self::CoatingForbidden => {
                "the standard of the bolt forbids zinc and other metallic coatings [ASTM A490-00, 5.4]"
                    .into()
            }
            Self::GalvanizedTooStrong { strength, most } => format!(
                "the bolt of {} is hot-dip galvanized: above about {} hydrogen is a concern [ASTM A143]",
                shown(strength, system),
                shown(most, system)
            ),
            Self::NoPreloadLeft => {
                "relaxation and settling leave no preload in service: the plies part under the load".into()
            }
            Self::GapUnderPreload { after_ply, width } => format!(
                "the gap of up to {} after ply {after_ply} takes preload to close: shim it, or keep it open \
                 with a sleeve [common practice, no source]",
                shown(width, system)
            ),
            Self::Slips => "the tension leaves no clamp force: the joint slips".into(),
            Self::CoatingTooHot { part, limit } => format!(
                "the coating of the {part} is for at most {}",
                shown(limit, system)
            ),
            Self::PlaneInThread { after_ply } => format!(
                "the shear plane after ply {after_ply} may cut thread: its capacity is that of thread"
            ),
            Self::AddWashers { count: 1 } => "add 1 washer under the nut".into(),
            Self::AddWashers { count } => format!("add {count} washers under the nut"),
            Self::AddWashersUnderHead { count: 1 } => "add 1 washer under the head".into(),
            Self::AddWashersUnderHead { count } => format!("add {count} washers under the head"),
            Self::Cut { to: Some(length) } => format!("cut to {}", shown(length, system)),
            Self::Cut { to: None } => "mark and cut at fit-up, to the stack in hand".into(),
        }
    }
}

/// Something a check of a joint may be about.
///
/// ```
/// use shankline::joint::Subject;
/// assert_eq!(Subject::Corrosion.to_string(), "corrosion between unlike metals");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Subject {
    /// A mode of failure.
    Mode(Mode),
    /// Corrosion between bolt, nut and plies of unlike metals.
    Corrosion,
    /// What the running torque of a lock nut takes off the preload.
    RunningTorque,
    /// What keeps a screw from turning in a tapped part.
    Locking,
    /// Preload lost to settling.
    Settling,
    /// Preload lost to the creep and the shrinkage of soft plies and timber.
    Creep,
    /// Load that plies which bend add to the load along the bolt.
    Prying,
    /// Head or nut pulled through a ply.
    PullThrough,
    /// Embrittlement of hard bolts by hydrogen of plating and pickling.
    Embrittlement,
}

impl fmt::Display for Subject {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Mode(mode) => mode.fmt(f),
            Self::Corrosion => f.pad("corrosion between unlike metals"),
            Self::RunningTorque => f.pad("running torque of the lock nut"),
            Self::Locking => f.pad("locking of the screw"),
            Self::Settling => f.pad("preload lost to settling"),
            Self::Creep => f.pad("preload lost to creep of soft plies and timber"),
            Self::Prying => f.pad("prying"),
            Self::PullThrough => f.pad("pull-through of head or nut"),
            Self::Embrittlement => f.pad("hydrogen embrittlement of plated bolts"),
        }
    }
}

/// What was not checked, and why.
///
/// ```
/// use shankline::joint::NotChecked;
/// fn print(missing: &NotChecked) {
///     println!("{missing}");
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NotChecked {
    /// What.
    pub subject: Subject,
    /// Why.
    pub reason: &'static str,
    /// Whether the size or the grade of the bolt is why, so that another bolt could be checked:
    /// [`Joint::design`](crate::joint::Joint::design) turns such a bolt down.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "core::ops::Not::not"))]
    pub of_bolt: bool,
}

impl fmt::Display for NotChecked {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.subject, self.reason)
    }
}
