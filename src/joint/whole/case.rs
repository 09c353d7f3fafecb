//! A joint with everything looked up: what every mode starts from.

use alloc::{boxed::Box, format, string::ToString, vec::Vec};

use super::material::{CaseMaterial, CaseTimber};
use super::outcome::Outcomes;
use super::own::fits_seat;
use super::{CountersunkHead, Joint, Member, OwnNut, TorqueTightening, contradictions};
use crate::caution::{Caution, Cautions, StatedPart};
use crate::error::{Allowed, Error, out_of_range};
use crate::joint::{
    Candidate, JointMaterial, JointPly, JointTimber, JointWasher, LengthSearch, NutEnd, Stack,
    TappedPart,
};
use crate::material::{
    BoltGrade, BoltLoads, BoltStrength, Finish, HotBoltStrength, NutGrade, NutStrength, NutTapping,
};
use crate::parts::{
    ClampFace, Locking, Nut, NutStyle, ScrewSeries, Washer, WasherFace, WireInsert, Zone,
};
use crate::strength::check::{Level, Place};
use crate::tables::galvanic::Metal;
use crate::tables::nut_grades::NutShape;
use crate::tables::washer_rules::WasherHardness;
use crate::thread::Thread;
use crate::units::{Force, Length, SAME_LENGTH};

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

/// How many times as wide as the thread a washer of the caller's own is at most. The widest of the tables, a type B wide
/// #0, has 4.2 d; square plates on timber have some 6 (common practice, no source). A wider one is a slip of the pen, or
/// bends under its bolt.
const WIDEST_WASHER: f64 = 8.0;

/// Refuses parts that cannot go together: a hexagon head in a countersink, a washer thicker than its style, distances
/// to holes that are not there.
fn fitting(joint: &Joint, has_others: bool) -> Result<(), Error> {
    let stack = &joint.stack;
    fits_seat(
        stack.head_seat(),
        joint.own.screw.as_ref(),
        joint.bolt.product,
    )?;
    let of_bolt =
        (joint.bolt.grade != BoltGrade::Stated).then(|| joint.bolt.grade.stainless_metal());
    let of_nut = joint.nut.and_then(|nut| nut.grade);
    for (part, finish, steel) in [
        ("bolt", joint.bolt.finish, of_bolt),
        (
            "nut",
            joint.nut.and_then(|nut| nut.finish),
            of_nut.map(NutGrade::stainless_metal),
        ),
    ] {
        if let (Some(Finish::Bare(metal)), Some(steel)) = (finish, steel) {
            if is_stainless(metal) != steel.is_some() {
                return Err(Error::Mismatch(format!(
                    "the {part} is bare {metal}, and its grade is of other steel"
                )));
            }
        }
    }
    for washer in washers(stack) {
        let Some(style) = washer.style else {
            if washer
                .inside
                .is_some_and(|inside| inside < joint.bolt.thread.nominal_diameter())
            {
                return Err(Error::Mismatch(format!(
                    "\"{}\" does not go over {}",
                    washer.name, joint.bolt.thread
                )));
            }
            let widest = WIDEST_WASHER * joint.bolt.thread.nominal_diameter();
            if let Some(outside) = washer.outside.filter(|outside| *outside > widest) {
                let quantity = format!("outside diameter of \"{}\"", washer.name);
                return Err(out_of_range(
                    quantity,
                    outside,
                    Allowed::AtMost(widest.into()),
                ));
            }
            continue;
        };
        // A style that is made in one hardness only has it.
        let fixed = WasherHardness::of(style).count() == 1 && washer.hardness.is_some();
        if washer.outside.is_some() || washer.inside.is_some() || fixed {
            return Err(Error::Mismatch(format!(
                "\"{}\" is a {style}, which has its diameters and hardness: give it the style or figures of its own",
                washer.name
            )));
        }
        let row = Washer::find(style, &joint.bolt.thread)?;
        if let Ok(thickness) = row.thickness() {
            if washer.thickness.min > thickness.max + SAME_LENGTH
                || washer.thickness.max < thickness.min - SAME_LENGTH
            {
                return Err(Error::Mismatch(format!(
                    "\"{}\" is not as thick as a {style} for {}",
                    washer.name, joint.bolt.thread
                )));
            }
        }
    }
    for ply in stack.plies() {
        let lone = joint.pattern.along() == 1 && ply.pitch.is_some()
            || joint.pattern.across() == 1 && ply.gauge.is_some();
        if lone && !has_others {
            return Err(Error::Mismatch(format!(
                "\"{}\" has a distance to the next hole, and the pattern has no other bolt in that direction",
                ply.name
            )));
        }
    }
    Ok(())
}

const fn is_stainless(metal: Metal) -> bool {
    matches!(
        metal,
        Metal::Stainless12Chromium | Metal::Stainless18Chromium
    )
}

/// Every washer of a stack, and those that may be added.
fn washers(stack: &Stack) -> impl Iterator<Item = &JointWasher> {
    let at_nut = stack.washers_under_nut().map(|(washer, _)| washer);
    stack
        .washers_under_head()
        .iter()
        .chain(stack.other_washers_under_nut())
        .chain(stack.washer_to_add_under_head())
        .chain(at_nut)
}

const fn is_own_washer(washer: &JointWasher) -> bool {
    washer.outside.is_some() || washer.inside.is_some() || washer.hardness.is_some()
}

/// What the caller states of parts that no table has: nothing here vouches for it.
fn stated(joint: &Joint, out: &mut Outcomes) {
    let stack = &joint.stack;
    let plies = stack.plies().iter().map(|ply| ply.material.as_ref());
    let mut materials = plies.chain(stack.tapped_part().map(|part| part.material.as_ref()));
    let mut timbers = stack.plies().iter().map(|ply| ply.timber.as_ref());
    for (part, is_own) in [
        (
            StatedPart::Material,
            materials.any(|own| matches!(own, Some(JointMaterial::Own(_)))),
        ),
        (
            StatedPart::Timber,
            timbers.any(|own| matches!(own, Some(JointTimber::Own(_)))),
        ),
        (StatedPart::Washer, washers(stack).any(is_own_washer)),
        (StatedPart::Nut, joint.own.nut.is_some()),
    ] {
        out.warn(&Cautions::default().with(is_own.then_some(Caution::Stated { part })));
    }
}

/// The nut or the tapped thread, whichever the stack goes with.
pub(super) fn closing(joint: &Joint) -> Result<Closing<'_>, Error> {
    if let (None, Some(own)) = (joint.stack.tapped_part(), &joint.own.nut) {
        own.checked(&joint.bolt.thread)?;
        return Ok(Closing::Nut(CaseNut {
            of: NutOf::Own(own),
            grade: None,
            finish: own.finish,
            locking: own.locking,
            strength: None,
        }));
    }
    if let (Some(part), Some(own)) = (joint.stack.tapped_part(), &joint.own.nut) {
        return Err(Error::Mismatch(format!(
            "the stack ends in the thread of \"{}\": it has no nut, and \"{}\" is one",
            part.name, own.name
        )));
    }
    match (joint.stack.tapped_part(), joint.nut) {
        (None, Some(given)) => {
            let row = Nut::find(given.style, &joint.bolt.thread)?;
            let strength = given.grade.zip(given.style.shape()).map(|(grade, shape)| {
                weaker_nut(grade, shape, &joint.bolt.thread, given.finish).map_err(Box::new)
            });
            Ok(Closing::Nut(CaseNut {
                of: NutOf::Listed(row),
                grade: given.grade,
                finish: given.finish,
                locking: given.style.locking(),
                strength,
            }))
        }
        (Some(part), None) => Ok(Closing::Tapped(part)),
        (None, None) => Err(Error::Mismatch(
            "a stack without a tapped part ends in a nut: give it".into(),
        )),
        (Some(part), Some(_)) => Err(Error::Mismatch(format!(
            "the stack ends in the thread of \"{}\": it has no nut",
            part.name
        ))),
    }
}

/// The strength of the nut as its coating has it tapped; of one whose coating nobody says, the weaker.
fn weaker_nut(
    grade: NutGrade,
    shape: NutShape,
    thread: &Thread,
    finish: Option<Finish>,
) -> Result<NutStrength, Error> {
    if let Some(finish) = finish {
        return grade.strength(shape, thread, finish.nut_tapping());
    }
    let usual = grade.strength(shape, thread, NutTapping::Usual)?;
    match grade.strength(shape, thread, NutTapping::Oversize) {
        Ok(oversize) if oversize.proof_stress < usual.proof_stress => Ok(oversize),
        _ => Ok(usual),
    }
}

impl Closing<'_> {
    /// The same as a length search sees it.
    pub(super) fn end(&self) -> Result<NutEnd, Error> {
        match self {
            Self::Nut(nut) => match nut.of {
                NutOf::Listed(row) => NutEnd::of(row),
                NutOf::Own(own) => NutEnd::with_height(own.height),
            },
            Self::Tapped(part) => {
                let Some(engagement) = part.engagement else {
                    return Err(Error::Mismatch(format!(
                        "\"{}\" does not say how much of its thread must be filled",
                        part.name
                    )));
                };
                NutEnd::tapped(engagement, part.depth())
            }
        }
    }
}

/// The length given, or the best one; if nothing fits, the nearest, with the reasons against it.
fn candidate(joint: &Joint, closing: &Closing<'_>, out: &mut Outcomes) -> Result<Candidate, Error> {
    let end = closing.end()?;
    out.warn(&end.cautions());
    let screws = stock(joint)?;
    let search = length_search(joint, screws.as_ref(), end)?;
    let candidate = if let Some(length) = joint.bolt.length {
        search.of_length(length)?
    } else {
        match search.best()? {
            Some(best) => best,
            // Of those that do not fit, the nearest tells why.
            None => *search
                .run()?
                .rejected()
                .first()
                .ok_or_else(|| Error::NoValue {
                    quantity: "stock length",
                    subject: joint.bolt.product.to_string(),
                    reason: "none has been read at that size",
                })?,
        }
    };
    out.warn(&search.cautions(&candidate));
    Ok(candidate)
}

/// The product as it is sold; none for a bolt of the caller's own.
pub(super) fn stock(joint: &Joint) -> Result<Option<ScrewSeries>, Error> {
    match joint.own.screw {
        Some(_) => Ok(None),
        None => ScrewSeries::new(joint.bolt.product, &joint.bolt.thread).map(Some),
    }
}

/// The search among the lengths of the bolt: those in stock, or those of the caller's own.
pub(super) fn length_search<'a>(
    joint: &'a Joint,
    screws: Option<&'a ScrewSeries>,
    end: NutEnd,
) -> Result<LengthSearch<'a>, Error> {
    let (stack, thread, rules) = (&joint.stack, &joint.bolt.thread, joint.rules);
    match (&joint.own.screw, screws) {
        (Some(own), _) => LengthSearch::of_own(stack, own, thread, end, rules),
        (None, Some(screws)) => LengthSearch::new(stack, screws, end, rules),
        (None, None) => LengthSearch::of_thread(stack, thread, &end, rules),
    }
}

fn plies<'a>(
    joint: &'a Joint,
    closing: &Closing<'a>,
    candidate: &Candidate,
    across: Force,
) -> Result<Vec<CasePly<'a>>, Error> {
    let stack = &joint.stack;
    let mut pulls = stack.pulls().iter();
    let mut load = || pulls.next().map_or(0.0, |pull| pull.abs()) * across;
    let mut plies = Vec::with_capacity(stack.plies().len() + 1);
    for (ply, number) in stack.plies().iter().zip(1..) {
        let material = ply.material.as_ref().map(CaseMaterial::of).transpose()?;
        let timber = ply.timber.as_ref().map(CaseTimber::of).transpose()?;
        plies.push(CasePly {
            place: Place::Ply(number),
            number,
            ply: Some(ply),
            tapped: None,
            material,
            timber,
            thickness: stack.bearing_thickness(number),
            load: load(),
        });
    }
    if let Closing::Tapped(part) = closing {
        let material = part.material.as_ref().map(CaseMaterial::of).transpose()?;
        plies.push(CasePly {
            place: Place::TappedPart,
            number: plies.len() + 1,
            ply: None,
            tapped: Some(part),
            material,
            timber: None,
            thickness: engaged(part, candidate),
            load: load(),
        });
    }
    Ok(plies)
}

/// How far the bolt sticks out of the nut at least: of the shortest screw in the thickest stack, or as cut. Cut to the
/// stack in hand, by what the rules want and no more.
pub(super) fn past_the_nut(case: &Case) -> Length {
    let wanted = case.joint.rules.least_protrusion_pitches() * case.thread.pitch();
    past_the_end(&case.candidate, wanted)
}

/// The same past any end of the joint.
fn past_the_end(candidate: &Candidate, wanted: Length) -> Length {
    let fixed = candidate.cut.filter(|cut| cut.holds_window);
    match (candidate.needs_cut, fixed) {
        (false, _) => candidate.protrusion.min,
        (true, Some(cut)) => cut.protrusion.min,
        (true, None) => wanted,
    }
}

/// Least length of thread that the screw fills: of the shortest screw in the thickest stack. Cut to the stack in
/// hand, it fills what is wanted and no more; so it does in a hole tapped through, of which only the engagement is
/// known to be there.
pub(super) fn engaged(part: &TappedPart, candidate: &Candidate) -> Option<Length> {
    let reached = part.engagement? + past_the_end(candidate, Length::default());
    Some(reached.min(part.depth().unwrap_or(part.engagement?)))
}

fn planes(joint: &Joint, candidate: &Candidate, across: Force) -> Vec<CasePlane> {
    let stack = &joint.stack;
    let plies = stack.plies();
    let packing = |after_ply: usize| {
        let packs = |ply: &&JointPly| ply.pull == Some(0.0);
        let thickness = |sum: Length, ply: &JointPly| sum + ply.thickness.max;
        let before = plies.iter().take(after_ply).rev().take_while(packs);
        let after = plies.iter().skip(after_ply).take_while(packs);
        let beside = before.chain(after);
        (
            beside.clone().fold(Length::default(), thickness),
            beside.count(),
        )
    };
    let planes = stack.planes_of(candidate);
    (1..)
        .zip(planes.zip(stack.plane_shares()))
        .map(|(number, (plane, &share))| {
            let (packing, packings) = packing(plane.after_ply);
            CasePlane {
                number,
                after_ply: plane.after_ply,
                zone: plane.worst,
                load: share * across,
                share,
                packing,
                packings,
            }
        })
        .collect()
}
