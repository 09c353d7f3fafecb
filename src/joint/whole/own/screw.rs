//! A bolt or screw of the caller's own: the lengths that it comes in, and its head.

use alloc::{format, string::String, vec::Vec};
use core::fmt::Write as _;

use super::{face, head_width, sane_load};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length, within};
use crate::joint::{HeadSeat, own_name};
use crate::math::tan;
use crate::parts::{ClampFace, ScrewLength};
use crate::spread::{Spread, sane_spread};
use crate::thread::Thread;
use crate::units::{Angle, Force, Length, SAME_LENGTH, UnitSystem, degrees, shown};

#[cfg(feature = "serde")]
mod data;

/// No drawer has more lengths. Each is looked up among all of them.
const MOST_LENGTHS: usize = 1000;

/// In diameters. Those of the standards have 1 at most (socket heads): a slip of the pen.
const HIGHEST_HEAD: f64 = 3.0;

/// A bolt or screw of the caller's own: the lengths that it comes in, and the head.
///
/// The thread is that of [`JointBolt`](super::super::JointBolt). The shank has its full diameter as far as each length
/// says: a waisted or otherwise reduced one is not modelled, since tension, torsion, springs and bearing would each want
/// its section in place of that of the thread. Do not describe such a bolt here.
///
/// In data files a bolt of one length has `length`, `shank` and `thread_start` itself, one of several a list `lengths` of
/// them; `thread_length` and `run_out` may stand in place of the last two, see [`OwnLength::of_thread`].
///
/// ```
/// use shankline::joint::{OwnLength, OwnScrew};
/// use shankline::prelude::*;
/// let long = |length: f64| {
///     let tolerance = millimetres(0.5);
///     OwnLength::new(millimetres(length).plus_minus(tolerance), millimetres(length - 34.0), millimetres(length - 28.0))
/// };
/// let mut drawer = OwnScrew::new("turned bolt, drawing 12 (invented)", [60.0, 70.0, 80.0].map(long));
/// drawer.bearing_diameter = Some(millimetres(22.0));
/// assert_eq!(drawer.lengths.len(), 3);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "data::RawScrew", into = "data::RawScrew")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OwnScrew {
    /// What a drawing calls it.
    pub name: String,
    /// The lengths that it comes in, in any order, each once; 1 to 1000 of them.
    pub lengths: Vec<OwnLength>,
    /// Least diameter of the bearing face under the head; none if unknown.
    pub bearing_diameter: Option<Length>,
    /// Least width of the head across flats; none if unknown.
    pub across_flats: Option<Length>,
    /// Least height of the head; none if unknown. One of 0.6 diameters is as high as those of ISO 4014; what a lower one
    /// bears no rule here says.
    pub head_height: Option<Length>,
    /// Its head, if it is countersunk; it then has no bearing face and no flats.
    pub countersunk: Option<CountersunkHead>,
}

/// One length of a bolt of the caller's own. Every length counts from the bearing face of the head; of a countersunk one
/// from its top.
///
/// ```
/// use shankline::joint::OwnLength;
/// use shankline::prelude::*;
/// let length = millimetres(80.0).plus_minus(millimetres(0.5));
/// let turned = OwnLength::new(length, millimetres(44.0), millimetres(50.0));
/// assert!(turned.shank < turned.thread_start);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "data::RawLength", into = "data::RawLength")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OwnLength {
    /// Length to the end.
    pub length: Spread<Length>,
    /// Least length of full shank, LB; zero if it is threaded to the head.
    pub shank: Length,
    /// Where the thread is full at the latest, LG: a nut goes no nearer to the head.
    pub thread_start: Length,
}

impl OwnLength {
    /// A length, with its least length of full shank, and where the thread is full at the latest.
    ///
    /// ```
    /// use shankline::{joint::OwnLength, prelude::*};
    /// let threaded = OwnLength::new(Spread::exact(millimetres(40.0)), millimetres(0.0), millimetres(3.0));
    /// assert_eq!(threaded.shank, millimetres(0.0)); // to the head
    /// ```
    #[must_use]
    pub const fn new(length: Spread<Length>, shank: Length, thread_start: Length) -> Self {
        Self {
            length,
            shank,
            thread_start,
        }
    }

    /// The same by what drawings dimension from the other end: length of full thread b with its tolerance, point
    /// included, and greatest length of the run-out u behind it.
    ///
    /// In the worst case the thread is full from L max - b min, and the shank from the head to L min - b max - u.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are not finite and in order, a thread longer than the bolt, or a run-out
    /// longer than what the thread leaves.
    ///
    /// ```
    /// use shankline::{joint::OwnLength, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let length = millimetres(70.0).plus_minus(millimetres(0.5));
    /// let turned = OwnLength::of_thread(length, millimetres(30.0).plus_minus(millimetres(1.0)), millimetres(4.0))?;
    /// let hair = millimetres(1e-9);
    /// assert!((turned.shank - millimetres(34.5)).abs() < hair); // 69.5 - 31 - 4
    /// assert!((turned.thread_start - millimetres(41.5)).abs() < hair); // 70.5 - 29
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_thread(
        length: Spread<Length>,
        thread: Spread<Length>,
        run_out: Length,
    ) -> Result<Self, Error> {
        sane_spread("length of the bolt", length)?;
        sane_spread("length of its thread", thread)?;
        not_negative("length of its run-out", run_out)?;
        let left = length.min - thread.max;
        if left < -SAME_LENGTH {
            let allowed = Allowed::AtMost(length.min.into());
            return Err(out_of_range("length of its thread", thread.max, allowed));
        }
        if run_out > left + SAME_LENGTH {
            let allowed = Allowed::AtMost(left.max(Length::default()).into());
            return Err(out_of_range("length of its run-out", run_out, allowed));
        }
        let shank = (left - run_out).max(Length::default());
        Ok(Self::new(length, shank, length.max - thread.min))
    }

    /// The screw as a length search sees it.
    fn screw(&self) -> Result<ScrewLength, Error> {
        sane_spread("length of the bolt", self.length)?;
        let mut screw = ScrewLength::measured(self.length.nominal, self.shank, self.thread_start)?;
        (screw.min, screw.max) = (self.length.min, self.length.max);
        screw.checked()
    }
}

/// The countersunk head of a screw of the caller's own.
///
/// What its cone bears is that on the ring between its top and the hole: in line with the bolt, a cone without friction
/// presses with the force over that area, whatever its angle (statics). The ply loses half of its height for bearing, see
/// [`Stack::bearing_thickness`](crate::joint::Stack::bearing_thickness). That it is pulled through a ply, or lies in
/// timber, no rule here has.
///
/// ```
/// use shankline::joint::CountersunkHead;
/// use shankline::prelude::*;
/// use shankline::units::degrees;
/// let mut head = CountersunkHead::new(degrees(90.0), millimetres(29.0), millimetres(8.0));
/// head.proof_load = Some(newtons(90e3)); // of a test: such heads may tear off before the thread breaks
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct CountersunkHead {
    /// Angle of the whole cone, 60 to 120 deg.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Angle>"))]
    pub angle: Angle,
    /// Least diameter of its top.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub diameter: Length,
    /// Greatest height, from its top to where the cone ends; that of the [seat](HeadSeat::Countersunk) in the stack.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub height: Length,
    /// The load that the screw is proved to with its head, which may tear off before the thread breaks; none if unknown:
    /// sheared the screw may hold, pulled it stays undecided.
    #[cfg_attr(
        feature = "serde",
        serde(
            default,
            skip_serializing_if = "Option::is_none",
            with = "crate::units::quantity::option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Force>>")
    )]
    pub proof_load: Option<Force>,
}

impl CountersunkHead {
    /// A head that nobody has proved: angle of the whole cone, least diameter of the top, greatest height.
    ///
    /// ```
    /// use shankline::{joint::CountersunkHead, prelude::*, units::degrees};
    /// assert_eq!(CountersunkHead::new(degrees(90.0), millimetres(29.0), millimetres(8.0)).proof_load, None);
    /// ```
    #[must_use]
    pub const fn new(angle: Angle, diameter: Length, height: Length) -> Self {
        Self {
            angle,
            diameter,
            height,
            proof_load: None,
        }
    }

    /// Refuses figures that are none, or that make no cone together.
    fn checked(&self, thread: &Thread) -> Result<(), Error> {
        // From 60 deg, of steep heads in steel, to 120 deg, of rivets and thin sheet (common practice, no source).
        within(
            "angle of the countersunk head",
            self.angle,
            degrees(60.0),
            degrees(120.0),
        )?;
        head_width("diameter of the countersunk head", self.diameter, thread)?;
        sane_length("height of the countersunk head", self.height)?;
        let half = 0.5 * self.angle.value;
        let cone = 0.5 * (self.diameter - thread.nominal_diameter()) / tan(half);
        if self.height < cone - SAME_LENGTH {
            let allowed = Allowed::AtLeast(cone.into());
            return Err(out_of_range(
                "height of the countersunk head",
                self.height,
                allowed,
            ));
        }
        if let Some(load) = self.proof_load {
            sane_load("proof load of the countersunk head", load, thread)?;
        }
        Ok(())
    }
}

impl OwnScrew {
    /// A bolt of which nothing but the lengths is known.
    ///
    /// ```
    /// use shankline::{joint::{OwnLength, OwnScrew}, prelude::*};
    /// let only = OwnLength::new(Spread::exact(millimetres(80.0)), millimetres(44.0), millimetres(50.0));
    /// assert_eq!(OwnScrew::new("bolt", [only]).bearing_diameter, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, lengths: impl IntoIterator<Item = OwnLength>) -> Self {
        Self {
            name: name.into(),
            lengths: lengths.into_iter().collect(),
            bearing_diameter: None,
            across_flats: None,
            head_height: None,
            countersunk: None,
        }
    }

    /// Refuses figures that are none, and lengths that contradict each other.
    pub(in crate::joint) fn checked(&self, thread: &Thread) -> Result<(), Error> {
        own_name("bolt", &self.name)?;
        if self.lengths.is_empty() {
            return Err(Error::Mismatch(format!(
                "\"{}\" has no length: describe one at least",
                self.name
            )));
        }
        if self.lengths.len() > MOST_LENGTHS {
            let allowed = Allowed::AtMost(MOST_LENGTHS.into());
            let count = self.lengths.len();
            return Err(out_of_range(
                "number of lengths of the bolt",
                count,
                allowed,
            ));
        }
        for own in &self.lengths {
            own.screw()?;
        }
        let mut nominal: Vec<Length> = self.nominal_lengths().collect();
        nominal.sort_by(|a, b| a.value.total_cmp(&b.value));
        for pair in nominal.windows(2) {
            if let [shorter, longer] = pair {
                if *longer - *shorter <= SAME_LENGTH {
                    return Err(Error::Mismatch(format!(
                        "\"{}\" has two lengths of {}: which of them is meant?",
                        self.name,
                        in_its_units(*longer, thread)
                    )));
                }
            }
        }
        for (quantity, width) in [
            ("bearing diameter", self.bearing_diameter),
            ("width across flats", self.across_flats),
        ] {
            if let Some(width) = width {
                head_width(quantity, width, thread)?;
            }
        }
        if let Some(height) = self.head_height {
            let most = HIGHEST_HEAD * thread.nominal_diameter();
            within("height of the head", height, SAME_LENGTH, most)?;
        }
        match &self.countersunk {
            Some(head) => self.in_countersink(head, thread),
            None => Ok(()),
        }
    }

    /// Refuses a countersunk head that has a face as well, or that the shank or the thread reaches into.
    fn in_countersink(&self, head: &CountersunkHead, thread: &Thread) -> Result<(), Error> {
        let plain = [self.bearing_diameter, self.across_flats, self.head_height];
        if plain.iter().any(Option::is_some) {
            return Err(Error::Mismatch(format!(
                "\"{}\" is countersunk: it has no bearing face, no flats, and its own height in its place",
                self.name
            )));
        }
        head.checked(thread)?;
        for own in &self.lengths {
            let ends = [("shank", own.shank), ("thread start", own.thread_start)];
            for (quantity, end) in ends {
                let to_the_head = quantity == "shank" && end <= Length::default();
                if end < head.height - SAME_LENGTH && !to_the_head {
                    let allowed = Allowed::AtLeast(head.height.into());
                    let quantity =
                        format!("{quantity} of the bolt, from the top of its countersunk head");
                    return Err(out_of_range(quantity, end, allowed));
                }
            }
        }
        Ok(())
    }

    /// Every nominal length.
    pub(in crate::joint) fn nominal_lengths(&self) -> impl Iterator<Item = Length> + '_ {
        self.lengths.iter().map(|own| own.length.nominal)
    }

    /// The screw of one of its lengths.
    pub(in crate::joint) fn length(
        &self,
        nominal: Length,
        thread: &Thread,
    ) -> Result<ScrewLength, Error> {
        let same = |own: &&OwnLength| (own.length.nominal - nominal).abs() <= SAME_LENGTH;
        if let Some(own) = self.lengths.iter().find(same) {
            return own.screw();
        }
        let mut text = format!(
            "\"{}\" is not described {} long, only",
            self.name,
            in_its_units(nominal, thread)
        );
        for (at, own) in self.nominal_lengths().enumerate() {
            let comma = if at > 0 { "," } else { "" };
            // Writing to a string does not fail.
            let _ = write!(text, "{comma} {}", in_its_units(own, thread));
        }
        Err(Error::Mismatch(text))
    }

    /// What presses on the first ply; of a countersunk head the ring that its cone covers.
    pub(in crate::joint::whole) fn face(&self) -> Result<ClampFace, Error> {
        match &self.countersunk {
            Some(head) => Ok(ClampFace::stated(head.diameter, None)),
            None => face(&self.name, self.bearing_diameter, self.across_flats),
        }
    }

    /// Least width of its head, if anybody says it.
    pub(in crate::joint::whole) fn width(&self) -> Option<Length> {
        let head = self.countersunk.map(|head| head.diameter);
        head.or(self.bearing_diameter)
    }

    /// Whether its head is known to be as high as those that break after the thread: 0.6 diameters, the least of ISO 4014
    /// (M36: 22.08 mm or 0.61 d). None if nobody says how high it is.
    pub(in crate::joint::whole) fn has_full_head(&self, thread: &Thread) -> Option<bool> {
        let full = 0.6 * thread.nominal_diameter() - SAME_LENGTH;
        self.head_height.map(|height| height >= full)
    }

    /// What a countersunk head is proved to.
    pub(in crate::joint::whole) fn head_proof(&self) -> Result<Force, Error> {
        let proof = self.countersunk.and_then(|head| head.proof_load);
        proof.ok_or_else(|| Error::NoValue {
            quantity: "proof load of the countersunk head",
            subject: self.name.clone(),
            reason: "it is not stated, and such heads may tear off before the thread breaks",
        })
    }
}

fn in_its_units(length: Length, thread: &Thread) -> String {
    let system = if thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    };
    format!("{}", shown(length, system))
}

/// Refuses a head in a seat of another shape.
pub(in crate::joint::whole) fn fits_seat(
    seat: HeadSeat,
    own: Option<&OwnScrew>,
    listed: impl core::fmt::Display,
) -> Result<(), Error> {
    let head = own.and_then(|own| Some((own, own.countersunk?)));
    match (seat, head) {
        (HeadSeat::Countersunk { head_height, .. }, Some((own, head))) => {
            if (head_height - head.height).abs() > SAME_LENGTH {
                return Err(Error::Mismatch(format!(
                    "the head is {} high in the stack, and that of \"{}\" is {}",
                    shown(head_height, UnitSystem::Si),
                    own.name,
                    shown(head.height, UnitSystem::Si)
                )));
            }
            Ok(())
        }
        (HeadSeat::Countersunk { .. }, None) => Err(Error::Mismatch(match own {
            Some(own) => format!(
                "the stack is countersunk, and \"{}\" has no countersunk head",
                own.name
            ),
            None => format!("the stack is countersunk, and {listed} has no countersunk head"),
        })),
        (HeadSeat::Flat | HeadSeat::Recessed { .. }, Some((own, _))) => {
            Err(Error::Mismatch(format!(
                "\"{}\" has a countersunk head, and the stack no countersink for it",
                own.name
            )))
        }
        (HeadSeat::Flat | HeadSeat::Recessed { .. }, None) => Ok(()),
    }
}
