//! What a stack is made of besides plies and washers: gaps, sleeves, the seat of the head, a tapped part.

use alloc::string::String;

use super::JointMaterial;
use crate::joint::ScrewLocking;
use crate::parts::InsertLength;
use crate::spread::Spread;
use crate::tables::galvanic::Metal;
use crate::units::Length;

/// A gap between two plies: a clevis wider than its tongue, a pivot with room to move.
///
/// The bolt carries its load across the gap, so that a shear plane reaches from one face to the other, and
/// it bends. A least width of zero says that tightening may close the gap; an open gap has a least width
/// above zero, and a nut tightened over it clamps nothing but bends the plies.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let ear = Spread::exact(millimetres(10.0));
/// let stack = Stack::builder()
///     .ply("ear", ear)
///     .gap(Spread { min: millimetres(0.0), nominal: millimetres(1.0), max: millimetres(2.0) })
///     .ply("tongue", Spread::exact(millimetres(20.0)))
///     .ply("ear", ear)
///     .shear_planes([1, 2])
///     .build()?;
/// assert_eq!(stack.gaps()[0].after_ply, 1);
/// assert_eq!(stack.plane_positions()[0].max, millimetres(10.0) + millimetres(2.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Gap {
    /// It lies after this ply, counted from 1 at the head.
    pub after_ply: usize,
    /// Its width; the least may be zero.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::serialize")
    )]
    pub width: Spread<Length>,
}

/// A sleeve, bushing or spacer tube that the bolt clamps instead of the plies around it.
///
/// The bolt is cut at its ends only: what moves inside is cut by the sleeve. Where the sleeve is longer
/// than its plies they have end play and turn freely; where it is shorter they are clamped.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let arm = millimetres(10.0).plus_minus(millimetres(0.2));
/// let stack = Stack::builder()
///     .ply("arm", arm)
///     .ply("rocker", millimetres(30.0).plus_minus(millimetres(0.1)))
///     .ply("arm", arm)
///     .sleeve("bushing", millimetres(30.5).plus_minus(millimetres(0.1)), 2, 2)
///     .shear_planes([1, 2])
///     .build()?;
/// let play = stack.sleeves()[0].play;
/// assert!((play.min - millimetres(0.3)).abs() < millimetres(1e-9));
/// assert!((stack.grip().nominal - millimetres(50.5)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct Sleeve {
    /// What a drawing would call it.
    pub name: String,
    /// Its length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::serialize")
    )]
    pub length: Spread<Length>,
    /// The first ply that lies around it, counted from 1 at the head.
    pub first_ply: usize,
    /// The last.
    pub last_ply: usize,
    /// Sleeve less plies and gaps around it: what they can move along it. Below zero they are clamped.
    #[cfg_attr(feature = "serde", serde(skip, default = "flush"))]
    pub play: Spread<Length>,
}

/// How the head sits on the first ply.
///
/// | seat | lengths count from | stack |
/// |---|---|---|
/// | flat | the bearing face | as it is |
/// | recessed: spot-faced or counterbored | the bearing face | the first ply less the depth |
/// | countersunk | the top of the head, as the trade measures such screws | less what the head lies below flush |
///
/// ```
/// use shankline::joint::HeadSeat;
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// // A cast lug, spot-faced 1 to 2 mm deep: the plane is that much nearer to the head.
/// let stack = Stack::builder()
///     .ply("lug", millimetres(20.0).plus_minus(millimetres(1.0)))
///     .ply("plate", Spread::exact(millimetres(10.0)))
///     .head_seat(HeadSeat::Recessed { depth: millimetres(1.5).plus_minus(millimetres(0.5)) })
///     .shear_planes([1])
///     .build()?;
/// let plane = stack.plane_positions()[0];
/// assert_eq!((plane.min, plane.max), (millimetres(17.0), millimetres(20.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum HeadSeat {
    /// On the face of the first ply or on a washer.
    #[default]
    Flat,
    /// In a spot face or counterbore.
    Recessed {
        /// How deep.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::spread::quantity::serialize")
        )]
        depth: Spread<Length>,
    },
    /// In a countersink.
    Countersunk {
        /// How far the top of the head lies below the face; zero for flush.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::spread::quantity::serialize")
        )]
        below_flush: Spread<Length>,
        /// Height of the head: down to here the ply bears on a cone.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
        head_height: Length,
    },
}

impl HeadSeat {
    /// The shape of the head that sits there, as the tension of the bolt asks for it.
    ///
    /// ```
    /// use shankline::joint::HeadSeat;
    /// use shankline::strength::bolt_tension::HeadShape;
    /// assert_eq!(HeadSeat::Flat.shape(), HeadShape::OnFace);
    /// ```
    #[must_use]
    pub const fn shape(&self) -> crate::strength::bolt_tension::HeadShape {
        use crate::strength::bolt_tension::HeadShape;
        match self {
            Self::Flat | Self::Recessed { .. } => HeadShape::OnFace,
            Self::Countersunk { .. } => HeadShape::Countersunk,
        }
    }

    /// How far the origin of all lengths lies below the face of the first ply.
    pub(crate) fn depth(&self) -> Spread<Length> {
        match *self {
            Self::Flat => Spread::exact(Length::default()),
            Self::Recessed { depth } => depth,
            Self::Countersunk { below_flush, .. } => below_flush,
        }
    }
}

/// A part with a threaded hole at the end of a stack, in place of the nut.
///
/// Its place and counterbore are enough to find a length; the rest is what a [whole check](crate::joint::Joint::check)
/// asks for.
///
/// ```
/// use shankline::joint::{TappedHole, TappedPart};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let bed = TappedPart::new("bed")
///     .thread(millimetres(18.0), TappedHole::Blind { depth: millimetres(25.0) })
///     .material("grey cast iron class 30");
/// let stack = Stack::builder()
///     .ply("cover", millimetres(12.0).plus_minus(millimetres(0.2)))
///     .tapped(bed)
///     .shear_planes([1])
///     .build()?;
/// assert_eq!(stack.tapped_part().unwrap().name, "bed");
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct TappedPart {
    /// What a drawing would call it.
    pub name: String,
    /// How deep the thread of the hole begins below its face: a counterbore that takes the run-out, and
    /// with it the shank across the shear plane at the face. Nothing bears on the screw there, so that a load across bends it, which
    /// is undecided. Zero without one.
    #[cfg_attr(
        feature = "serde",
        serde(
            default = "flush",
            serialize_with = "crate::spread::quantity::serialize"
        )
    )]
    pub counterbore: Spread<Length>,
    /// Least length of thread that must be filled.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub engagement: Option<Length>,
    /// Whether the thread goes through, or how deep it is; none if nobody says.
    #[cfg_attr(feature = "serde", serde(default))]
    pub hole: Option<TappedHole>,
    /// Its material: the name of one in [`tables::plies`](crate::tables::plies), or one of your own.
    #[cfg_attr(feature = "serde", serde(default))]
    pub material: Option<JointMaterial>,
    /// What its surface is made of: for corrosion in contact only.
    #[cfg_attr(feature = "serde", serde(default))]
    pub metal: Option<Metal>,
    /// What keeps the screw from turning in it; none if nobody says.
    #[cfg_attr(feature = "serde", serde(default))]
    pub lock: Option<ScrewLocking>,
    /// From the centre of the thread to the nearest end of the part, along the load.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub end_distance: Option<Length>,
    /// From the centre of the thread to the nearest side of the part, across the load.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub edge_distance: Option<Length>,
    /// Width that the load of one screw comes through.
    #[cfg_attr(
        feature = "serde",
        serde(default, with = "crate::units::quantity::option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub width: Option<Length>,
}

impl TappedPart {
    /// A part of which nothing but the place is known, with its thread from the face on.
    ///
    /// ```
    /// assert_eq!(shankline::joint::TappedPart::new("bed").hole, None);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            counterbore: flush(),
            engagement: None,
            hole: None,
            material: None,
            metal: None,
            lock: None,
            end_distance: None,
            edge_distance: None,
            width: None,
        }
    }

    /// The part with the least length of thread to fill, and where the thread ends.
    ///
    /// ```
    /// use shankline::{joint::{TappedHole, TappedPart}, units::millimetres};
    /// let through = TappedPart::new("bracket").thread(millimetres(12.0), TappedHole::Through);
    /// assert_eq!(through.engagement, Some(millimetres(12.0)));
    /// ```
    #[must_use]
    pub const fn thread(mut self, engagement: Length, hole: TappedHole) -> Self {
        self.engagement = Some(engagement);
        self.hole = Some(hole);
        self
    }

    /// Whether its lock drags on the screw all the way in, so that not all of the torque stretches it.
    pub(in crate::joint) fn drags(&self) -> bool {
        self.lock == Some(ScrewLocking::Patch)
    }

    /// Depth of full thread of a blind hole, that of the hole around an insert; none of one tapped through, or if nobody
    /// says.
    ///
    /// ```
    /// use shankline::{joint::{TappedHole, TappedPart}, units::millimetres};
    /// let hole = TappedHole::Blind { depth: millimetres(25.0) };
    /// let bed = TappedPart::new("bed").thread(millimetres(18.0), hole);
    /// assert_eq!(bed.depth(), Some(millimetres(25.0)));
    /// ```
    #[must_use]
    pub const fn depth(&self) -> Option<Length> {
        match self.hole {
            Some(TappedHole::Blind { depth } | TappedHole::BlindWithInsert { depth, .. }) => {
                Some(depth)
            }
            Some(TappedHole::Through | TappedHole::ThroughWithInsert { .. }) | None => None,
        }
    }

    /// Nominal length of the wire insert in the hole; none without one, or if nobody says.
    ///
    /// ```
    /// use shankline::joint::{TappedHole, TappedPart};
    /// use shankline::{parts::InsertLength, units::millimetres};
    /// let hole = TappedHole::ThroughWithInsert { length: InsertLength::Two };
    /// let foot = TappedPart::new("foot").thread(millimetres(25.0), hole);
    /// assert_eq!(foot.insert(), Some(InsertLength::Two));
    /// ```
    #[must_use]
    pub const fn insert(&self) -> Option<InsertLength> {
        match self.hole {
            Some(
                TappedHole::ThroughWithInsert { length }
                | TappedHole::BlindWithInsert { length, .. },
            ) => Some(length),
            Some(TappedHole::Through | TappedHole::Blind { .. }) | None => None,
        }
    }

    /// The part with what keeps the screw from turning in it.
    ///
    /// ```
    /// # use shankline::joint::{ScrewLocking, TappedPart};
    /// assert!(TappedPart::new("bed").lock(ScrewLocking::Adhesive).lock.is_some());
    /// ```
    #[must_use]
    pub const fn lock(mut self, lock: ScrewLocking) -> Self {
        self.lock = Some(lock);
        self
    }

    /// The part with its material: by name, or an [`OwnMaterial`](super::OwnMaterial).
    ///
    /// ```
    /// # use shankline::joint::TappedPart;
    /// assert!(TappedPart::new("bed").material("ASTM A36 steel").material.is_some());
    /// ```
    #[must_use]
    pub fn material(mut self, material: impl Into<JointMaterial>) -> Self {
        self.material = Some(material.into());
        self
    }
}

/// Where the thread of a tapped part ends, and whether it has an insert of wire.
///
/// An [insert](crate::parts::WireInsert) lies in a thread of its own. Then the engagement that must be filled goes at least
/// through all of it, its nominal length and a pitch from where that thread begins, or the joint is refused; the part strips
/// around the insert, and what an insert is not for is undecided: load across, weather, heat and frost.
///
/// ```
/// use shankline::{joint::TappedHole, units::millimetres};
/// let blind = TappedHole::Blind { depth: millimetres(25.0) };
/// assert_ne!(blind, TappedHole::Through);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum TappedHole {
    /// Tapped through.
    Through,
    /// In a blind hole: a screw that is too long meets its end and clamps nothing.
    Blind {
        /// Depth of full thread, from where it begins.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
        depth: Length,
    },
    /// Tapped through for an insert of wire.
    ThroughWithInsert {
        /// Nominal length of the insert.
        length: InsertLength,
    },
    /// In a blind hole, tapped for an insert of wire.
    BlindWithInsert {
        /// Nominal length of the insert.
        length: InsertLength,
        /// Depth of full thread around the insert, from where it begins.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
        depth: Length,
    },
}

const fn flush() -> Spread<Length> {
    Spread::exact(crate::units::millimetres(0.0))
}
