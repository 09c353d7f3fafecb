//! What findings say.

use alloc::{format, string::String};

use super::Finding;
use crate::tables::methods;
use crate::units::{Length, UnitSystem, shown};

impl Finding {
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
                "the running torque of the lock is not in the torque: measure it and add it".into()
            }
            Self::Cut { to: Some(length) } => format!("cut to {}", shown(length, system)),
            Self::Cut { to: None } => "mark and cut at fit-up, to the stack in hand".into(),
        }
    }
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
