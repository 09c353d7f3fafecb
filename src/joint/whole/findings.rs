//! What a check of a joint finds besides numbers.

use crate::joint::{Galling, NutReason, Part, Reason, Reuse, ScrewLockReason};
use crate::material::{FitNote, Hydrogen, Misfit, Severity};
use crate::parts::WasherStyle;
use crate::source::Method;
use crate::strength::check::{Mode, Place};
use crate::strength::ply::DistanceKind;
use crate::strength::timber::TimberFact;
use crate::units::{ElectricPotential, Force, Length, Ratio, ThermodynamicTemperature};

mod text;

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
            serde(serialize_with = "crate::units::quantity::round")
        )]
        limit: ThermodynamicTemperature,
    },
    /// Fault: the joint gets colder than the bolt material is specified for.
    BoltTooCold {
        /// Lowest temperature of its standard.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        limit: ThermodynamicTemperature,
    },
    /// A hole lies nearer to an edge or to the next hole than the code permits, or further: a fault, but where the
    /// code permits it for plies that are strong enough.
    Distance {
        /// Where.
        place: Place,
        /// Which distance.
        kind: DistanceKind,
        /// What it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        distance: Length,
        /// What it must be at least.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        least: Option<Length>,
        /// What it may be at most.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        greatest: Option<Length>,
        /// Whether the code permits it all the same.
        permitted: bool,
        /// Who says so.
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        clause: &'static Method,
    },
    /// Fault: a mode of a ply leaves no resistance at all.
    NothingLeft {
        /// Where.
        place: Place,
        /// Of what.
        mode: Mode,
        /// Why.
        why: &'static str,
    },
    /// Fault: the bolt does not pass the hole.
    HoleTooSmall {
        /// Where.
        place: Place,
        /// What it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
        /// What it must be at least.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        least: Length,
    },
    /// Fault: the hole is wider, or the slot longer, than any that the code or standard has for the bolt.
    HoleTooLarge {
        /// Where.
        place: Place,
        /// What it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
        /// The greatest.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        greatest: Length,
    },
    /// Fault: fewer full threads stay clear between nut and shank than EN 1090-2 wants.
    ClearThreads {
        /// How many do, in pitches, at the least.
        found: f64,
        /// How many must.
        least: f64,
    },
    /// Fault: the code has such a hole only in joints that must not slip, and slip is not asked about.
    HoleWantsSlip {
        /// Where.
        place: Place,
    },
    /// Fault: small bolts in holes with 2 mm clearance are permitted only where bearing governs, and shear does.
    BearingMustGovern {
        /// Load across that the weakest ply bears.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        bears: Force,
        /// Load across that the bolt bears in shear.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        most: Force,
    },
    /// Fault: a detail of a joint in timber is not as the code wants it.
    TimberDetail {
        /// Where.
        place: Place,
        /// What.
        fact: TimberFact,
        /// What it is.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        own: Length,
        /// What it must be at least.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        least: Option<Length>,
        /// What it may be at most.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        greatest: Option<Length>,
        /// Who says so.
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        clause: &'static Method,
    },
    /// Fault: a washer is demanded, and there is none, or a thinner one.
    WasherWanted {
        /// Under the head or the nut.
        place: Place,
        /// How thick it must be, where a rule says so.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        thickness: Option<Length>,
        /// Who says so.
        clause: &'static str,
    },
    /// Fault: the bolt is pulled where its code wants a pretension, and is snug.
    PretensionWanted,
    /// Fault: two metals in contact are further apart than the exposure permits; the anode corrodes.
    Galvanic {
        /// The part that corrodes.
        anode: Part,
        /// The nobler part.
        cathode: Part,
        /// Difference of their anodic indices.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        difference: ElectricPotential,
        /// What the exposure permits.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        permitted: ElectricPotential,
    },
    /// What plating, pickling and dipping may have done to a hard bolt.
    Hydrogen(Hydrogen),
    /// Fault: the threads of bolt and nut do not go together.
    ThreadsDoNotFit {
        /// Why.
        why: Misfit,
    },
    /// To know: how coated threads are marked and ordered.
    Fit(FitNote),
    /// To know: bolt and nut are of metals that seize on each other.
    Galling(Galling),
    /// Whether the bolt may be used again.
    Reuse(Reuse),
    /// What speaks against, or is asked for with, the lock of a screw.
    ScrewLock(ScrewLockReason),
    /// Fault: the bolt may end inside the lock of its nut.
    LockNotFilled {
        /// How far it sticks out of the nut at least.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        protrusion: Length,
        /// How far it must.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        least: Length,
        /// Who says so.
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        source: &'static Method,
    },
    /// Fault: head, nut or washer is not larger than what lies under it.
    FallsThrough {
        /// At the head or the nut.
        place: Place,
        /// Least diameter of the face.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        face: Length,
        /// Greatest diameter of the hole under it.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        hole: Length,
    },
    /// Fault: the washer is too soft for the class of the bolt.
    WasherTooSoft {
        /// Under the head or the nut.
        place: Place,
        /// Its style.
        style: WasherStyle,
    },
    /// Fault: a washer of the caller's own is too soft for the class of the bolt.
    OwnWasherTooSoft {
        /// Under the head or the nut.
        place: Place,
        /// Its least Vickers hardness.
        hardness: f64,
        /// The hardest class of ISO 898-3 that is too soft.
        class: &'static str,
    },
    /// To know: ISO 898-3 has washers as soft as this may be with the class of the bolt only where the design is verified.
    /// No preload is counted on that it would have to bear.
    WasherToVerify {
        /// Under the head or the nut.
        place: Place,
    },
    /// To know: the bolt is weaker at the heat of the joint; what is checked has it in it.
    WeakerWhenHot {
        /// Strength that is left.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_ratio")
        )]
        ratio: Ratio,
    },
    /// Fault: the joint gets hotter than a coating bears.
    CoatingTooHot {
        /// Bolt or nut.
        part: Part,
        /// The lowest limit that any publisher gives.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        limit: ThermodynamicTemperature,
    },
    /// To know: the bolt is smaller than those of the primary structure of an aircraft.
    SmallForStructure,
    /// A lock washer, which has no place in the structure of an aircraft: a fault where the loss of the bolt would endanger
    /// somebody.
    LockWasherInStructure {
        /// Under the head or the nut.
        place: Place,
        /// Whether the loss of the bolt would endanger somebody.
        dangerous: bool,
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
            serde(serialize_with = "crate::units::quantity::round")
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
    /// To do: the running torque of the lock nut, or of the patch of a screw, is measured and added to the torque.
    AddRunningTorque,
    /// To do: the bolt is to be cut.
    Cut {
        /// To this length; none to cut it at fit-up, to the stack in hand.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round_option")
        )]
        to: Option<Length>,
    },
}

impl Finding {
    /// The mode that found it.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// use shankline::strength::check::Mode;
    /// assert_eq!(Finding::AddWashers { count: 1 }.mode(), Mode::Length);
    /// ```
    #[must_use]
    pub const fn mode(&self) -> Mode {
        match self {
            Self::Length(_)
            | Self::PlaneInThread { .. }
            | Self::AddWashers { .. }
            | Self::AddWashersUnderHead { .. }
            | Self::ClearThreads { .. }
            | Self::Cut { .. } => Mode::Length,
            Self::Nut(_)
            | Self::ScrewLock(_)
            | Self::LockNotFilled { .. }
            | Self::LockWasherInStructure { .. } => Mode::Locking,
            Self::SmallForStructure => Mode::BoltShear,
            Self::ThreadsWeaker { .. } => Mode::Stripping,
            Self::BoltTooHot { .. }
            | Self::BoltTooCold { .. }
            | Self::CoatingTooHot { .. }
            | Self::WeakerWhenHot { .. } => Mode::Temperature,
            Self::Distance { .. } => Mode::Distances,
            Self::NothingLeft { mode, .. } => *mode,
            Self::HoleTooSmall { .. }
            | Self::HoleTooLarge { .. }
            | Self::HoleWantsSlip { .. }
            | Self::BearingMustGovern { .. } => Mode::Holes,
            Self::TimberDetail { fact, .. } => match fact {
                TimberFact::Hole | TimberFact::PlateHole => Mode::Holes,
                TimberFact::WasherWidth | TimberFact::WasherThickness => Mode::Washers,
                _ => Mode::Distances,
            },
            Self::WasherWanted { .. }
            | Self::WasherTooSoft { .. }
            | Self::OwnWasherTooSoft { .. }
            | Self::WasherToVerify { .. } => Mode::Washers,
            Self::PretensionWanted => Mode::Preload,
            Self::Galvanic { .. } => Mode::Corrosion,
            Self::Hydrogen(_) => Mode::Coating,
            Self::ThreadsDoNotFit { .. } | Self::Fit(_) => Mode::ThreadFit,
            Self::Galling(_) => Mode::Galling,
            Self::Reuse(_) => Mode::Reuse,
            Self::FallsThrough { .. } => Mode::Pressure,
            Self::NoPreloadLeft => Mode::Separation,
            Self::Slips => Mode::Slip,
            Self::GapUnderPreload { .. } | Self::AddRunningTorque => Mode::Tightening,
        }
    }

    /// Whether it forbids the joint as it is.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// assert!(!Finding::AddWashers { count: 1 }.is_fault());
    /// ```
    #[must_use]
    pub fn is_fault(&self) -> bool {
        match self {
            Self::Length(_)
            | Self::ThreadsWeaker { .. }
            | Self::NothingLeft { .. }
            | Self::ClearThreads { .. }
            | Self::HoleTooSmall { .. }
            | Self::HoleTooLarge { .. }
            | Self::HoleWantsSlip { .. }
            | Self::BearingMustGovern { .. }
            | Self::TimberDetail { .. }
            | Self::WasherWanted { .. }
            | Self::PretensionWanted
            | Self::WasherTooSoft { .. }
            | Self::OwnWasherTooSoft { .. }
            | Self::FallsThrough { .. }
            | Self::LockNotFilled { .. }
            | Self::ThreadsDoNotFit { .. }
            | Self::Galvanic { .. }
            | Self::NoPreloadLeft
            | Self::Slips
            | Self::CoatingTooHot { .. }
            | Self::BoltTooHot { .. }
            | Self::BoltTooCold { .. } => true,
            Self::Hydrogen(found) => is_fault(found.severity()),
            Self::Reuse(found) => is_fault(found.severity()),
            Self::ScrewLock(reason) => is_fault(reason.severity()),
            Self::Nut(reason) => reason.is_objection(),
            Self::Distance { permitted, .. } => !*permitted,
            Self::LockWasherInStructure { dangerous, .. } => *dangerous,
            Self::SmallForStructure
            | Self::GapUnderPreload { .. }
            | Self::Fit(_)
            | Self::Galling(_)
            | Self::WasherToVerify { .. }
            | Self::WeakerWhenHot { .. }
            | Self::PlaneInThread { .. }
            | Self::AddWashers { .. }
            | Self::AddWashersUnderHead { .. }
            | Self::AddRunningTorque
            | Self::Cut { .. } => false,
        }
    }
}

fn is_fault(severity: Severity) -> bool {
    severity == Severity::Fault
}
