//! What a mode lacks, and why a mode is none of a joint.

use crate::error::Error;
use crate::material::FitNote;
use crate::source::Method;
use crate::strength::check::{Mode, Place};
use crate::strength::strip::NotShown;
use crate::strength::timber::TimberFact;
use crate::tables::methods;
use alloc::boxed::Box;
use core::fmt;

/// Something that a mode needs and does not have: it keeps a verdict undecided.
///
/// ```
/// use shankline::joint::{Missing, Need};
/// use shankline::strength::check::{Mode, Place};
/// let missing = Missing::new(Mode::NetSection, Place::Ply(2), Need::Width);
/// assert_eq!(missing.to_string(), "net section, ply 2: its width is not given");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Missing {
    /// What could not be checked.
    pub mode: Mode,
    /// Where.
    pub place: Place,
    /// For want of what.
    pub need: Need,
}

impl Missing {
    /// What a mode lacks at a place.
    ///
    /// ```
    /// # use shankline::joint::{Missing, Need};
    /// # use shankline::strength::check::{Mode, Place};
    /// assert_eq!(Missing::new(Mode::Bearing, Place::Ply(1), Need::Hole).need, Need::Hole);
    /// ```
    #[must_use]
    pub const fn new(mode: Mode, place: Place, need: Need) -> Self {
        Self { mode, place, need }
    }
}

impl fmt::Display for Missing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.place {
            Place::Joint => write!(f, "{}: {}", self.mode, self.need),
            place => write!(f, "{}, {place}: {}", self.mode, self.need),
        }
    }
}

/// What is missing.
///
/// ```
/// use shankline::joint::Need;
/// assert!(Need::Hole.is_fact()); // the caller can say it
/// assert!(!Need::Method("nobody has one").is_fact()); // nothing that is said would help
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Need {
    /// Any load.
    Load,
    /// The factor of the code in force, for methods that want factored loads.
    LoadFactor,
    /// Where the load across cuts the bolt.
    ShearPlanes,
    /// Whether the hole of a tapped part is tapped through, or how deep.
    TappedHole,
    /// The material of a ply or part.
    Material,
    /// The yield strength of the material: the tables have none, or its own description.
    YieldStrength,
    /// The tensile strength of the material: the tables have none, or its own description.
    TensileStrength,
    /// Proof stress of a bolt of the caller's own.
    ProofStress,
    /// Shear over tensile strength of a material of the caller's own.
    ShearRatio,
    /// What a material of the caller's own bears under a head or nut.
    SurfacePressure,
    /// Coefficient of expansion of a material of the caller's own.
    Expansion,
    /// The bearing strength of the ply.
    BearingStrength,
    /// The yield strength of the ply in bearing.
    BearingYield,
    /// The hole.
    Hole,
    /// Distance from the hole to the end.
    EndDistance,
    /// Distance from the hole to the side.
    EdgeDistance,
    /// Distance to the next hole along the load.
    Pitch,
    /// Distance to the next hole across the load.
    Gauge,
    /// How the edges of a ply are made: cut smooth or sheared.
    EdgeFinish,
    /// A distance that is long enough only by test, or by the engineer's word; the rule.
    Distance(
        #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
        &'static Method,
    ),
    /// Length of a slot.
    SlotLength,
    /// Width.
    Width,
    /// Outline of a plate in a connection.
    Outline,
    /// On which side a plate in a connection is held.
    HeldSide,
    /// Which of the plies of a connection its loads act on: the others push the other way.
    LoadedPly,
    /// Over which length a plate of a connection can buckle where the load presses it.
    BucklingLength,
    /// What is fixed to a plate of a connection, where bolts that are pulled bend it.
    Footprint,
    /// Angle between load and grain.
    GrainAngle,
    /// Style or diameters of a washer.
    Washer,
    /// Coating of the bolt.
    BoltFinish,
    /// Coating of the nut.
    NutFinish,
    /// Grade of the nut.
    NutGrade,
    /// What a nut of the caller's own is proved to.
    NutProof,
    /// Hardness of a washer of the caller's own.
    WasherHardness,
    /// That a washer is hardened, where a code demands it: another washer, or its hardness.
    HardenedWasher,
    /// A harder washer, or a design that somebody has verified: ISO 898-3 has this one with the class of the bolt only
    /// then. Of a verified design the [mode is set aside](super::SetAside), with what verifies it.
    VerifiedWasher,
    /// Whether plies that bend add to the load along the axis.
    Prying,
    /// How the bolt is tightened.
    Tightening,
    /// A controlled preload.
    ControlledPreload,
    /// How high the head of a bolt of the caller's own is.
    HeadHeight,
    /// What settling and relaxation take off the preload.
    Relaxation,
    /// Stiffness of bolt and members, or the materials of all plies.
    Stiffness,
    /// What keeps a screw from turning in a tapped part.
    ScrewLock,
    /// What a surface is made of.
    Metal,
    /// What a washer is made of.
    WasherMetal,
    /// The method for bolts in timber.
    TimberMethod,
    /// A detail of a joint in timber.
    Timber(TimberFact),
    /// Something that nobody has read of coated threads.
    Fit(FitNote),
    /// A published pair of bolt and nut, or a nut that is proved to the breaking load of the bolt.
    Pair(NotShown),
    /// A method: none is known here, and why.
    Method(&'static str),
    /// What the room of the method says: it has no answer for these parts.
    Refused(#[cfg_attr(feature = "serde", serde(serialize_with = "as_text"))] Box<Error>),
}

#[cfg(feature = "serde")]
fn as_text<S: serde::Serializer>(error: &Error, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(error)
}

impl Need {
    /// Whether the caller can supply it by describing the joint further. Of the others the way out is another
    /// method, another part, or to [set the mode aside](super::SetAside).
    ///
    /// ```
    /// # use shankline::joint::Need;
    /// assert!(Need::NutGrade.is_fact());
    /// ```
    #[must_use]
    pub const fn is_fact(&self) -> bool {
        !matches!(
            self,
            Self::Method(_) | Self::Distance(_) | Self::Refused(_) | Self::Fit(_) | Self::Pair(_)
        )
    }

    /// What a rule of timber lacks.
    pub(super) const fn of_timber(fact: TimberFact) -> Self {
        match fact {
            TimberFact::Hole | TimberFact::PlateHole => Self::Hole,
            TimberFact::EndDistance => Self::EndDistance,
            TimberFact::EdgeDistance => Self::EdgeDistance,
            TimberFact::Pitch => Self::Pitch,
            TimberFact::Gauge => Self::Gauge,
            TimberFact::WasherWidth | TimberFact::WasherThickness => Self::Washer,
            other => Self::Timber(other),
        }
    }

    /// Whether its name says of which part.
    pub(super) const fn names_part(&self) -> bool {
        matches!(
            self,
            Self::BoltFinish
                | Self::NutFinish
                | Self::NutGrade
                | Self::NutProof
                | Self::ProofStress
                | Self::Tightening
        )
    }

    /// What is to be said, in the words of a list: "material", "end distance".
    ///
    /// ```
    /// # use shankline::joint::Need;
    /// assert_eq!(Need::EndDistance.name(), "end distance");
    /// ```
    #[must_use]
    pub const fn name(&self) -> &'static str {
        match self {
            Self::Load => "load",
            Self::LoadFactor => "load factor",
            Self::ShearPlanes => "shear planes",
            Self::TappedHole => "tapped hole",
            Self::Material => "material",
            Self::YieldStrength => "yield strength",
            Self::TensileStrength => "tensile strength",
            Self::ProofStress => "proof stress of the bolt",
            Self::ShearRatio => "shear ratio",
            Self::SurfacePressure => "surface pressure",
            Self::Expansion => "coefficient of expansion",
            Self::BearingStrength => "bearing strength",
            Self::BearingYield => "yield strength in bearing",
            Self::Hole => "hole",
            Self::EndDistance => "end distance",
            Self::EdgeDistance => "edge distance",
            Self::Pitch => "pitch",
            Self::Gauge => "gauge",
            Self::EdgeFinish => "edge finish",
            Self::Distance(_) => "distance that needs no test",
            Self::SlotLength => "slot length",
            Self::Width => "width",
            Self::Outline => "outline",
            Self::HeldSide => "side on which it is held",
            Self::LoadedPly => "ply that is loaded",
            Self::BucklingLength => "buckling length",
            Self::Footprint => "footprint",
            Self::GrainAngle => "grain angle",
            Self::Washer => "washer style",
            Self::BoltFinish => "coating of the bolt",
            Self::NutFinish => "coating of the nut",
            Self::NutGrade => "grade of the nut",
            Self::NutProof => "proof of the nut",
            Self::WasherHardness => "washer hardness",
            Self::HardenedWasher => "hardened washer",
            Self::VerifiedWasher => "harder washer",
            Self::Prying => "prying",
            Self::Tightening => "tightening",
            Self::ControlledPreload => "controlled preload",
            Self::HeadHeight => "head height",
            Self::Relaxation => "relaxation",
            Self::Stiffness => "stiffness",
            Self::ScrewLock => "lock of the screw",
            Self::Metal => "metal",
            Self::WasherMetal => "metal of the washer",
            Self::TimberMethod => "method for timber",
            Self::Timber(fact) => fact.name(),
            Self::Fit(_) => "fit of coated threads",
            Self::Pair(_) => "pair of bolt and nut",
            Self::Method(_) => "method",
            Self::Refused(_) => "value",
        }
    }
}

impl fmt::Display for Need {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Load => "nothing loads the joint",
            Self::LoadFactor => {
                "the methods want factored loads, and the load factor is not given (1 if it is in the loads already)"
            }
            Self::ShearPlanes => "there is a load across the axis, and no shear plane that carries it",
            Self::TappedHole => {
                "whether its hole is tapped through, or how deep its thread is, is not given: a screw that meets the \
                 end clamps nothing"
            }
            Self::Material => "its material is not given",
            Self::YieldStrength => "no yield strength of its material is known",
            Self::TensileStrength => "no tensile strength of its material is known",
            Self::ProofStress => "the proof stress of the bolt is not stated, and its yield strength does not stand in for it",
            Self::ShearRatio => "the shear strength of its material, over the tensile one, is not stated",
            Self::SurfacePressure => "what its material bears under a head or nut is not stated",
            Self::Expansion => "the coefficient of expansion of its material is not stated",
            Self::BearingStrength => "its bearing strength is not given",
            Self::BearingYield => "its yield strength in bearing is not given",
            Self::Hole => "its hole is not given",
            Self::EndDistance => "its end distance is not given",
            Self::EdgeDistance => "its edge distance is not given",
            Self::Pitch => "the distance to the next hole along the load is not given",
            Self::Gauge => "the distance to the next hole across the load is not given",
            Self::EdgeFinish => "whether its edges are cut smooth or sheared is not given, and the distance serves smooth ones only",
            Self::Distance(clause) => {
                return write!(
                    f,
                    "a distance is one that only a test or the engineer can allow: {clause}"
                );
            }
            Self::SlotLength => "the length of its slot is not given",
            Self::Width => "its width is not given",
            Self::Outline => "the outline of the plate is not given",
            Self::HeldSide => "on which side the plate is held is not given",
            Self::LoadedPly => {
                "on which of the plies the loads act is not given, and so not whether they pull this one or press it"
            }
            Self::BucklingLength => {
                "the load presses the plate, and its buckling length from the bolts to where it is held is not given"
            }
            Self::Footprint => {
                "bolts pull at the plate, and what is fixed to it, and so how far it bends between that and them, is not given"
            }
            Self::GrainAngle => "the angle between load and grain is not given",
            Self::Washer => "style or diameters of a washer are not given",
            Self::BoltFinish => "the coating of the bolt is not given",
            Self::NutFinish => "the coating of the nut is not given",
            Self::NutGrade => "the grade of the nut is not given",
            Self::NutProof => "what the nut is proved to is not stated",
            Self::WasherHardness => "how hard the washer is is not stated, and some are too soft for the bolt",
            Self::HardenedWasher => {
                "the code demands a hardened washer: neither its style nor a stated hardness says that it is one"
            }
            Self::VerifiedWasher => {
                return write!(
                    f,
                    "a washer so soft goes with the class of the bolt only where the design is verified [{}]: take a \
                     harder one, or set this aside with what verifies it",
                    methods::ISO_898_3_TABLE_1.citation
                );
            }
            Self::Prying => "nobody says whether plies that bend add to the load along the axis",
            Self::Tightening => "nobody says how the bolt is tightened",
            Self::ControlledPreload => "without a controlled preload there is nothing to count on",
            Self::HeadHeight => "how high the head is is not stated: a low one shears off or bends before the thread breaks",
            Self::Relaxation => "nobody says what relaxation and settling take off the preload",
            Self::Stiffness => "neither the stiffness nor the materials of all plies are given, with the modulus of one of your own",
            Self::ScrewLock => "nothing says what keeps the screw from turning",
            Self::Metal => "what a surface is made of is not given",
            Self::WasherMetal => "what the washer there is made of is not given",
            Self::Fit(note) => return note.fmt(f),
            Self::Pair(why) => return why.fmt(f),
            Self::TimberMethod => "no method for bolts in timber is chosen",
            Self::Method(why) => why,
            Self::Timber(fact) => return write!(f, "the {fact} is not given"),
            Self::Refused(error) => return error.fmt(f),
        })
    }
}

/// Why a mode is not concerned.
///
/// ```
/// use shankline::joint::NotConcerned;
/// assert_eq!(NotConcerned::NoLoadAcross.to_string(), "no load across the axis");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum NotConcerned {
    /// No load across the axis.
    NoLoadAcross,
    /// No load along the axis.
    NoLoadAlong,
    /// Only one kind of load acts on the bolt.
    OneLoad,
    /// The loads are steady.
    Steady,
    /// The plies touch, and nothing turns: the bolt is not bent.
    PliesTouch,
    /// One bolt alone.
    SingleBolt,
    /// One of several bolts: the connection has it.
    OfConnection,
    /// No ply is of timber.
    NoTimber,
    /// Every ply is of timber, or what is of metal is checked elsewhere.
    TimberElsewhere,
    /// The method has it in another mode, or gives none.
    NotOfMethod,
    /// Tightened by hand: no preload is counted on.
    Snug,
    /// There is no nut.
    NoNut,
    /// The joint may slip into bearing.
    MaySlip,
    /// Neither shaken nor turned, and nobody is in danger.
    Still,
    /// Room temperature.
    RoomTemperature,
    /// Dry for life.
    Dry,
    /// Bolt and nut are not of metals that seize.
    NoGalling,
    /// It is never taken apart.
    NeverRefitted,
    /// No rule demands any.
    NoRule,
    /// The load along the axis has it in it, by the word of the caller.
    StatedInLoad,
    /// The plies are stiff, by the word of the caller.
    NoPrying,
    /// Outside what was asked about.
    OutOfScope,
}

impl fmt::Display for NotConcerned {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::NoLoadAcross => "no load across the axis",
            Self::NoLoadAlong => "no load along the axis",
            Self::OneLoad => "only one kind of load acts on the bolt",
            Self::Steady => "the loads are steady",
            Self::PliesTouch => "the plies touch and nothing turns",
            Self::SingleBolt => "one bolt alone",
            Self::OfConnection => "the connection has it for all its bolts",
            Self::NoTimber => "no ply is of timber",
            Self::TimberElsewhere => "the plies are of timber",
            Self::NotOfMethod => "the method has it in another mode, or none",
            Self::Snug => "no preload is counted on",
            Self::NoNut => "there is no nut",
            Self::MaySlip => "it may slip into bearing",
            Self::Still => "nothing shakes or turns it, and nobody is in danger",
            Self::RoomTemperature => "room temperature",
            Self::Dry => "dry for life",
            Self::NoGalling => "no metals that seize on each other",
            Self::NeverRefitted => "it is never taken apart",
            Self::NoRule => "no rule demands any",
            Self::StatedInLoad => "the load has it in it, by the word of the caller",
            Self::NoPrying => "the plies are stiff, by the word of the caller",
            Self::OutOfScope => "outside what was asked about",
        })
    }
}
