//! What a stack is made of besides plies: soft layers, gaps, sleeves, and the seat of the head.

use alloc::string::String;

use crate::spread::Spread;
use crate::units::Length;

/// One ply or washer of a stack.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::joint::Layer;
/// let web = Layer::new("web", millimetres(12.0).plus_minus(millimetres(0.5)));
/// assert_eq!(web.thickness.nominal, millimetres(12.0));
/// assert_eq!(web.clamped(), web.thickness);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::super::data::RawLayer")
)]
#[non_exhaustive]
pub struct Layer {
    /// What a drawing would call it.
    pub name: String,
    /// Thickness with its tolerance, before it is clamped.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub thickness: Spread<Length>,
    /// How much thinner it may become when it is clamped; zero for metal.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "super::is_default",
            serialize_with = "crate::units::quantity::serialize"
        )
    )]
    pub crush: Length,
}

impl Layer {
    /// A ply or washer. Nothing is checked before it becomes part of a [`Stack`](super::Stack).
    ///
    /// ```
    /// use shankline::{joint::Layer, prelude::*};
    /// assert_eq!(Layer::new("web", Spread::exact(millimetres(12.0))).name, "web");
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, thickness: Spread<Length>) -> Self {
        Self {
            name: name.into(),
            thickness,
            crush: Length::default(),
        }
    }

    /// Thickness between head and nut: the least is that of the thinnest piece fully crushed, since the
    /// nut follows; the greatest that of the thickest piece that does not give at all.
    ///
    /// ```
    /// use shankline::{joint::Layer, prelude::*};
    /// let mut mat = Layer::new("rubber mat", millimetres(6.0).plus_minus(millimetres(0.5)));
    /// mat.crush = millimetres(2.0);
    /// assert_eq!(mat.clamped().min, millimetres(5.5) - millimetres(2.0));
    /// assert_eq!(mat.clamped().max, mat.thickness.max);
    /// ```
    #[must_use]
    pub fn clamped(&self) -> Spread<Length> {
        Spread {
            min: self.thickness.min - self.crush,
            ..self.thickness
        }
    }
}

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
#[non_exhaustive]
pub struct Gap {
    /// It lies after this ply, counted from 1 at the head.
    pub after_ply: usize,
    /// Its width; the least may be zero.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
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
#[non_exhaustive]
pub struct Sleeve {
    /// What a drawing would call it.
    pub name: String,
    /// Its length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
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
            serde(serialize_with = "crate::units::quantity::serialize_spread")
        )]
        depth: Spread<Length>,
    },
    /// In a countersink.
    Countersunk {
        /// How far the top of the head lies below the face; zero for flush.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::serialize_spread")
        )]
        below_flush: Spread<Length>,
        /// Height of the head: down to here the ply bears on a cone.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        head_height: Length,
    },
}

impl HeadSeat {
    /// How far the origin of all lengths lies below the face of the first ply.
    pub(in crate::joint) fn depth(&self) -> Spread<Length> {
        match *self {
            Self::Flat => Spread::exact(Length::default()),
            Self::Recessed { depth } => depth,
            Self::Countersunk { below_flush, .. } => below_flush,
        }
    }
}

/// A part with a threaded hole at the end of a stack, in place of the nut.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let stack = Stack::builder()
///     .ply("cover", millimetres(12.0).plus_minus(millimetres(0.2)))
///     .tapped_part("bed", Spread::exact(millimetres(0.0)))
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
#[non_exhaustive]
pub struct TappedPart {
    /// What a drawing would call it.
    pub name: String,
    /// How deep the thread of the hole begins below its face: a counterbore that takes the run-out, and
    /// with it the shank across the shear plane at the face. Zero without one.
    #[cfg_attr(
        feature = "serde",
        serde(
            default = "flush",
            serialize_with = "crate::units::quantity::serialize_spread"
        )
    )]
    pub counterbore: Spread<Length>,
}

#[cfg(feature = "serde")]
fn flush() -> Spread<Length> {
    Spread::exact(Length::default())
}
