//! What a check of a joint finds besides numbers.

use alloc::{format, string::String};

use crate::joint::{Galling, NutReason, Part, Reason, Reuse, ScrewLockReason};
use crate::material::{FitNote, Hydrogen, Misfit, Severity};
use crate::parts::WasherStyle;
use crate::source::Method;
use crate::strength::check::{Mode, Place};
use crate::strength::ply::DistanceKind;
use crate::strength::timber::TimberFact;
use crate::tables::methods;
use crate::units::{
    ElectricPotential, Force, Length, Ratio, ThermodynamicTemperature, UnitSystem, shown,
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
    /// To do: the running torque of the lock nut is measured and added to the torque.
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

    /// One line for a person.
    ///
    /// ```
    /// use shankline::joint::Finding;
    /// use shankline::units::UnitSystem;
    /// let line = Finding::AddWashers { count: 2 }.text(UnitSystem::Si);
    /// assert_eq!(line, "add 2 washers under the nut");
    /// ```
    #[must_use]
    #[allow(clippy::too_many_lines)] // one line a finding
    pub fn text(&self, system: UnitSystem) -> String {
        match *self {
            Self::Length(reason) => format!("length: {}", reason.text(system)),
            Self::Nut(reason) => format!("nut: {reason}"),
            Self::ThreadsWeaker { ratio } => format!(
                "the threads engaged hold {:.0} % of the breaking load of the bolt: they may strip before it breaks",
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
            Self::Distance {
                place,
                kind,
                distance,
                least,
                greatest,
                permitted,
                clause,
            } => {
                let bounds = bounds(least, greatest, system);
                let verb = if permitted { "should be" } else { "must be" };
                let distance = shown(distance, system);
                format!("{place}: {kind} {distance}, {verb} {bounds} [{clause}]")
            }
            Self::NothingLeft { place, mode, why } => format!("{place}, {mode}: {why}"),
            Self::HoleTooSmall { place, hole, least } => format!(
                "{place}: the bolt does not pass the hole of {}, it needs {}",
                shown(hole, system),
                shown(least, system)
            ),
            Self::HoleTooLarge {
                place,
                hole,
                greatest,
            } => format!(
                "{place}: hole or slot of {}, the greatest of its code or standard for this bolt is {}",
                shown(hole, system),
                shown(greatest, system)
            ),
            Self::ClearThreads { found, least } => format!(
                "{:.1} threads stay clear between nut and shank, at least {least:.0} must: take a longer bolt, a thicker \
                 washer, or the length rules of EN 1090-2 [{}]",
                found.max(0.0),
                methods::EN_1090_2_8_2_2_CLEAR_THREADS.citation
            ),
            Self::HoleWantsSlip { place } => format!(
                "{place}: oversize holes and slots along the load are for joints that must not slip, and no slip \
                 method is chosen [{}]",
                methods::AISC_360_J3_2_OVERSIZE.citation
            ),
            Self::BearingMustGovern { bears, most } => format!(
                "the plies bear {} and the bolt {} in shear: in holes with 2 mm clearance bearing must be the weaker \
                 [{}]",
                shown(bears, system),
                shown(most, system),
                methods::EN_1993_1_8_2005_3_6_1_5.citation
            ),
            Self::TimberDetail {
                place,
                fact,
                own,
                least,
                greatest,
                clause,
            } => {
                let bounds = bounds(least, greatest, system);
                let own = shown(own, system);
                format!("{place}: {fact} {own}, must be {bounds} [{clause}]")
            }
            Self::WasherWanted {
                place,
                thickness: None,
                clause,
            } => format!("a washer is needed under the {place} [{clause}]"),
            Self::WasherWanted {
                place,
                thickness: Some(least),
                clause,
            } => format!(
                "a washer at least {} thick is needed under the {place} [{clause}]",
                shown(least, system)
            ),
            Self::PretensionWanted => format!(
                "pulled, this bolt needs the pretension of its code: snug is for A325 in tension only, where neither \
                 vibration nor fatigue counts [{}]",
                methods::AISC_360_J3_1_PULLED.citation
            ),
            Self::Galvanic {
                anode,
                cathode,
                difference,
                permitted,
            } => format!(
                "corrosion: {anode} corrodes on {cathode}, {} apart, at most {} is permitted: insulate, seal \
                 or choose metals nearer to each other [{}]",
                shown(difference, system),
                shown(permitted, system),
                methods::ANODIC_INDEX_GUIDE.citation
            ),
            Self::Hydrogen(found) => format!("{found}"),
            Self::ThreadsDoNotFit { why } => format!("{why}"),
            Self::Fit(note) => format!("{note}"),
            Self::Galling(found) => format!("{found}"),
            Self::Reuse(found) => format!("reuse: {found}"),
            Self::ScrewLock(reason) => format!("screw: {reason}"),
            Self::LockNotFilled {
                protrusion,
                least,
                source,
            } => {
                let end = if protrusion < Length::default() {
                    format!("{} inside the nut", shown(-protrusion, system))
                } else {
                    format!("{} past the nut", shown(protrusion, system))
                };
                let least = shown(least, system);
                format!(
                    "the bolt may end {end}: its lock is filled from {least} past the nut [{source}]"
                )
            }
            Self::FallsThrough { place, face, hole } => format!(
                "{place}: a face of {} over a hole of {} bears nothing: a larger washer is needed",
                shown(face, system),
                shown(hole, system)
            ),
            Self::WasherTooSoft { place, style } => {
                format!(
                    "{place}: {style} is too soft for the class of the bolt [{}]",
                    methods::ISO_898_3_HARDNESS.citation
                )
            }
            Self::OwnWasherTooSoft {
                place,
                hardness,
                class,
            } => format!(
                "{place}: a washer of {hardness:.0} HV is too soft for the class of the bolt, as all of {class} are \
                 [{}]",
                methods::ISO_898_3_HARDNESS.citation
            ),
            Self::WasherToVerify { place } => format!(
                "{place}: a washer that may be so soft goes with the class of the bolt only where the design is \
                 verified: order it harder before any preload is counted on [{}]",
                methods::ISO_898_3_TABLE_1.citation
            ),
            Self::WeakerWhenHot { ratio } => format!(
                "at its highest temperature the bolt has {:.0} % of its strength, and is checked with that",
                100.0 * ratio.value
            ),
            Self::NoPreloadLeft => {
                "relaxation and settling leave no preload in service: the plies part under the load"
                    .into()
            }
            Self::SmallForStructure => format!(
                "steel bolts smaller than No. 10-32, and aluminium bolts smaller than 1/4 in, are not for primary \
                 structure [{}]",
                methods::FAA_AC_43_13_1B_7_41.citation
            ),
            Self::LockWasherInStructure { place, .. } => format!(
                "{place}: lock washers are not for primary or secondary structure, nor where a failure endangers \
                 somebody [{}]",
                methods::FAA_AC_43_13_1B_7_87.citation
            ),
            Self::GapUnderPreload { after_ply, width } => format!(
                "the gap of up to {} after ply {after_ply} takes preload to close: shim it, or keep it open \
                 with a sleeve [{}]",
                shown(width, system),
                methods::COMMON_PRACTICE.citation
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
            Self::AddRunningTorque => {
                "the running torque of the lock nut is not in the torque: measure it and add it"
                    .into()
            }
            Self::Cut { to: Some(length) } => format!("cut to {}", shown(length, system)),
            Self::Cut { to: None } => "mark and cut at fit-up, to the stack in hand".into(),
        }
    }
}

fn is_fault(severity: Severity) -> bool {
    severity == Severity::Fault
}

/// "at least 3 mm", "from 3 mm to 5 mm".
fn bounds(least: Option<Length>, greatest: Option<Length>, system: UnitSystem) -> String {
    match (least, greatest) {
        (Some(least), Some(most)) => {
            format!("from {} to {}", shown(least, system), shown(most, system))
        }
        (Some(least), None) => format!("at least {}", shown(least, system)),
        (None, Some(most)) => format!("at most {}", shown(most, system)),
        (None, None) => "otherwise".into(),
    }
}
