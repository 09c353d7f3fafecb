//! A joint with everything looked up: what every mode starts from.

use alloc::{boxed::Box, format, vec::Vec};

use super::material::{CaseMaterial, CaseTimber};
use super::outcome::Outcomes;
use super::{CountersunkHead, Joint, Member, OwnNut, TorqueTightening, contradictions};
use crate::error::Error;
use crate::joint::{Candidate, JointPly, JointWasher, TappedPart};
use crate::material::{BoltLoads, BoltStrength, Finish, HotBoltStrength, NutGrade, NutStrength};
use crate::parts::{ClampFace, Locking, Nut, NutStyle, Washer, WasherFace, WireInsert, Zone};
use crate::strength::check::{Level, Place};
use crate::thread::Thread;
use crate::units::{Force, Length};

mod parts;

use parts::{candidate, fitting, planes, plies, stated};
pub(super) use parts::{closing, engaged, length_search, past_the_nut, stock};

/// A joint and every look-up that it needs, done once. Modes read it and change nothing in it.
pub(super) struct Case<'a> {
    pub(super) joint: &'a Joint,
    /// What stands around it in a connection; none of a joint that is described alone.
    pub(super) member: Option<&'a Member>,
    pub(super) thread: &'a Thread,
    pub(super) diameter: Length,
    pub(super) candidate: Candidate,
    /// Strength of the bolt at its size and length, and at the heat of the joint.
    pub(super) strength: BoltStrength,
    pub(super) loads: BoltLoads,
    /// What heat takes off; none at room temperature.
    pub(super) hot: Option<Result<HotBoltStrength, Box<Error>>>,
    pub(super) closing: Closing<'a>,
    /// What lines the hole of the tapped part.
    pub(super) insert: Option<WireInsert>,
    /// The plies from the head; of those of a stack that ends in a tapped part, that part as the last.
    pub(super) plies: Vec<CasePly<'a>>,
    pub(super) planes: Vec<CasePlane>,
    /// What presses on the plies, under the head and under the nut.
    pub(super) seats: [CaseSeat; 2],
    pub(super) level: Level,
    /// The load across the axis at the level of the methods, shock and load factors in it.
    pub(super) across: Force,
    /// The load along the axis at the level of the methods.
    pub(super) along: Force,
    /// What the service loads are multiplied by where the methods have no factor: shock, load factor and margin.
    pub(super) margin: f64,
}

/// What closes the joint at the far end of the bolt.
pub(super) enum Closing<'a> {
    Nut(CaseNut<'a>),
    Tapped(&'a TappedPart),
}

/// The nut with its rows.
pub(super) struct CaseNut<'a> {
    pub(super) of: NutOf<'a>,
    pub(super) grade: Option<NutGrade>,
    pub(super) finish: Option<Finish>,
    pub(super) locking: Locking,
    /// Its strength; none without a grade, or for a shape that has none.
    pub(super) strength: Option<Result<NutStrength, Box<Error>>>,
}

/// Who describes the nut.
#[derive(Clone, Copy)]
pub(super) enum NutOf<'a> {
    Listed(&'static Nut),
    Own(&'a OwnNut),
}

impl CaseNut<'_> {
    /// Its style; none of one of the caller's own.
    pub(super) const fn style(&self) -> Option<NutStyle> {
        match self.of {
            NutOf::Listed(row) => Some(row.style),
            NutOf::Own(_) => None,
        }
    }

    fn face(&self) -> Result<ClampFace, Error> {
        match self.of {
            NutOf::Listed(row) => ClampFace::of_nut(row),
            NutOf::Own(own) => own.face(),
        }
    }
}

/// One ply with its rows.
pub(super) struct CasePly<'a> {
    pub(super) place: Place,
    /// Number from the head; the tapped part counts on.
    pub(super) number: usize,
    pub(super) ply: Option<&'a JointPly>,
    pub(super) tapped: Option<&'a TappedPart>,
    pub(super) material: Option<CaseMaterial<'a>>,
    pub(super) timber: Option<CaseTimber<'a>>,
    /// Least thickness that the bolt bears on; none around a sleeve.
    pub(super) thickness: Option<Length>,
    /// What it pulls, without sign, at the level of the methods.
    pub(super) load: Force,
}

impl CasePly<'_> {
    /// Whether the bolt bears on it at all.
    pub(super) fn pulls(&self) -> bool {
        self.load > Force::default()
    }
}

/// What presses on the ply under the head or the nut.
#[derive(Default)]
pub(super) struct CaseSeat {
    /// Its own face, of a countersunk head the ring that its cone covers; none where there is no nut.
    pub(super) face: Option<Result<ClampFace, Error>>,
    /// The washer that lies on the ply: none where there is none, and of one nothing but its thickness may be known.
    #[allow(clippy::option_option)] // whether there is one, and whether it is known
    pub(super) washer: Option<Option<WasherFace>>,
}

/// One shear plane.
#[derive(Clone, Copy)]
pub(super) struct CasePlane {
    pub(super) number: usize,
    pub(super) after_ply: usize,
    /// What the bolt has there in the worst case.
    pub(super) zone: Zone,
    /// What it carries, at the level of the methods.
    pub(super) load: Force,
    /// Its share of the load across.
    pub(super) share: f64,
    /// Packing beside it, on both sides together: how thick, and how many.
    pub(super) packing: Length,
    pub(super) packings: usize,
}

impl<'a> Case<'a> {
    /// Looks everything up; the length too, unless it is known.
    ///
    /// # Errors
    ///
    /// Loads, temperatures, factors or rules that make no sense, and parts that do not exist: questions that have
    /// no answer, as against answers that are not known.
    pub(super) fn new(
        joint: &'a Joint,
        known: Option<&Candidate>,
        member: Option<&'a Member>,
        out: &mut Outcomes,
    ) -> Result<Self, Error> {
        joint.load.validate()?;
        joint.environment.check()?;
        joint.methods.checked()?;
        joint.pattern.validate()?;
        if let Some(torque) = joint.torque() {
            torque.validate()?;
        }
        for aside in &joint.set_aside {
            if !aside.reason.chars().any(char::is_alphanumeric) {
                let mode = aside.mode;
                return Err(Error::Mismatch(format!(
                    "{mode} is set aside without a reason"
                )));
            }
        }
        let thread = &joint.bolt.thread;
        joint.own_in_place()?;
        let closing = closing(joint)?;
        fitting(joint, member.is_some())?;
        contradictions::texts(joint)?;
        contradictions::blasted(joint)?;
        let insert = contradictions::insert(joint)?;
        let candidate = match known {
            Some(candidate) => *candidate,
            None => candidate(joint, &closing, out)?,
        };
        let diameter = thread.nominal_diameter();
        let strength = joint.bolt_strength(candidate.screw.nominal)?;
        contradictions::made(joint, &strength)?;
        let environment = &joint.environment;
        let hot = (!environment.is_at_room_temperature()).then(|| {
            strength
                .at_temperature(environment.hottest)
                .map_err(Box::new)
        });
        let strength = match &hot {
            Some(Ok(hot)) => hot.strength,
            _ => strength,
        };
        let loads = strength.loads(thread)?;
        out.warn(&strength.cautions());
        stated(joint, out);
        out.work(|| candidate.derivation());
        if out.works() {
            let working = strength.load_derivation(thread)?;
            out.work(|| working);
        }
        let level = joint.methods.level;
        let factor = joint.load.factor(level);
        let across = factor * joint.load.across;
        let plies = plies(joint, &closing, &candidate, across)?;
        for ply in &plies {
            if let Some(CaseMaterial::Listed(row)) = ply.material {
                out.warn(&row.strength_cautions());
            }
        }
        let planes = planes(joint, &candidate, across);
        let mut case = Self {
            joint,
            member,
            thread,
            diameter,
            candidate,
            strength,
            loads,
            hot,
            closing,
            insert,
            plies,
            planes,
            seats: <[CaseSeat; 2]>::default(),
            level,
            across,
            along: factor * joint.load.along,
            margin: factor * joint.methods.margin,
        };
        case.seats = [Place::Head, Place::Nut].map(|place| case.seat(place));
        Ok(case)
    }

    fn seat(&self, place: Place) -> CaseSeat {
        let face = match (place, self.nut()) {
            (Place::Head, _) => Some(match &self.joint.own.screw {
                Some(own) => own.face(),
                None => ClampFace::of_screw(self.joint.bolt.product, self.thread),
            }),
            (_, nut) => nut.map(CaseNut::face),
        };
        let washer = self.washer_at(place).map(|washer| self.washer_face(washer));
        CaseSeat { face, washer }
    }

    /// The faces of a washer; none if neither diameters nor a style with them are given.
    pub(super) fn washer_face(&self, washer: &JointWasher) -> Option<WasherFace> {
        if let (Some(outer_min), Some(inner_max)) = (washer.outside, washer.inside) {
            return Some(WasherFace {
                outer_min,
                inner_max,
                thickness_min: washer.thickness.min,
                provenance: None,
            });
        }
        let row = Washer::find(washer.style?, self.thread).ok()?;
        WasherFace::of(row).ok()
    }

    /// What presses on the ply under the head or the nut.
    pub(super) const fn seat_at(&self, place: Place) -> &CaseSeat {
        let [head, nut] = &self.seats;
        match place {
            Place::Head => head,
            _ => nut,
        }
    }

    /// The washer that lies on the ply under the head or the nut, if there is one.
    pub(super) fn washer_at(&self, place: Place) -> Option<&'a JointWasher> {
        let stack = &self.joint.stack;
        if place == Place::Head {
            let added = stack
                .washer_to_add_under_head()
                .filter(|_| self.candidate.washers_added_under_head > 0);
            return stack.washers_under_head().last().or(added);
        }
        let usual = stack.washers_under_nut().map(|(washer, _)| washer);
        let usual = usual.filter(|_| self.candidate.washers_under_nut > 0);
        stack.other_washers_under_nut().first().or(usual)
    }

    /// Every washer under the head or the nut, each kind once, from there to the ply.
    pub(super) fn washers_at(&self, place: Place) -> Vec<&'a JointWasher> {
        let [under_head, under_nut] = self.joint.stack.washers_of(&self.candidate);
        if place == Place::Head {
            under_head.map(|(washer, _)| washer).collect()
        } else {
            under_nut.rev().map(|(washer, _)| washer).collect()
        }
    }

    /// The nut, if there is one.
    pub(super) const fn nut(&self) -> Option<&CaseNut<'a>> {
        match &self.closing {
            Closing::Nut(nut) => Some(nut),
            Closing::Tapped(_) => None,
        }
    }

    /// The tapped part, if there is one.
    pub(super) const fn tapped(&self) -> Option<&'a TappedPart> {
        match &self.closing {
            Closing::Nut(_) => None,
            Closing::Tapped(part) => Some(part),
        }
    }

    /// How the torque is controlled, if it is.
    pub(super) const fn torque(&self) -> Option<&'a TorqueTightening> {
        self.joint.torque()
    }

    /// Whether the load across reaches the bolt.
    pub(super) fn is_sheared(&self) -> bool {
        self.across > Force::default() && !self.planes.is_empty()
    }

    /// Whether two plies alone pull on the bolt, whatever packing lies between them, and it stands in one row.
    pub(super) fn is_single_lap(&self) -> bool {
        let pulls = self.joint.stack.pulls().iter();
        let pulling = pulls.filter(|pull| pull.abs() > 0.0).count();
        pulling == 2 && !self.planes.is_empty() && self.along() == 1
    }

    /// How many bolts stand behind each other, along the load.
    pub(super) fn along(&self) -> usize {
        self.member
            .map_or(self.joint.pattern.along(), |member| member.along)
    }

    /// How many bolts stand beside each other, across the load.
    pub(super) fn across_count(&self) -> usize {
        self.member
            .map_or(self.joint.pattern.across(), |member| member.across)
    }

    /// Whether a load pulls along the bolt.
    pub(super) fn is_pulled(&self) -> bool {
        self.along > Force::default()
    }

    pub(super) fn has_timber(&self) -> bool {
        self.plies.iter().any(|ply| ply.timber.is_some())
    }

    /// Whether any plane may cut thread.
    pub(super) fn thread_in_planes(&self) -> bool {
        self.planes.iter().any(|plane| plane.zone != Zone::Shank)
    }

    /// Greatest grip of the plies and washers in hand.
    pub(super) fn grip(&self) -> Length {
        self.candidate.grip.max
    }

    /// The head, if it is countersunk.
    pub(super) fn countersunk(&self) -> Option<&'a CountersunkHead> {
        self.joint.own.screw.as_ref()?.countersunk.as_ref()
    }

    pub(super) fn is_countersunk(&self) -> bool {
        self.countersunk().is_some()
    }

    /// Length of the joint along the load, from the first to the last of several bolts; none if a pitch is missing.
    pub(super) fn joint_length(&self) -> Option<Length> {
        if let Some(member) = self.member {
            return Some(member.length);
        }
        let along = self.joint.pattern.along();
        let pitches = self.joint.stack.plies().iter().filter_map(|ply| ply.pitch);
        let pitch = pitches.reduce(Length::max)?;
        // At most 1000: exact.
        #[allow(clippy::cast_precision_loss)]
        let spaces = (along - 1) as f64;
        Some(spaces * pitch)
    }
}
