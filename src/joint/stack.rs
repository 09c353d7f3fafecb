//! What a bolt goes through: plies, washers, gaps, sleeves, shear planes.

use alloc::vec::Vec;

use super::Candidate;
use crate::error::Error;
use crate::spread::Spread;
use crate::units::Length;

mod builder;
mod features;
mod material;
mod parts;
mod planes;
mod ply;
mod sane;
mod statics;
mod terms;
#[cfg(test)]
mod tests;
mod timber;
mod washer;

pub use builder::StackBuilder;
pub use features::{Gap, HeadSeat, Sleeve, TappedHole, TappedPart};
pub(in crate::joint) use material::one_line;
pub use material::{JointMaterial, MaterialKind, OwnMaterial};
pub(crate) use material::{STRONGEST, own_name, sane_strength};
#[cfg(feature = "serde")]
pub(super) use parts::OF_STYLE;
#[cfg(feature = "serde")]
use parts::is_default;
pub(super) use parts::{Added, NutWashers, Parts};
pub use planes::Plane;
pub use ply::JointPly;
pub(super) use terms::Term;
use terms::times;
pub use timber::{JointTimber, OwnTimber, TimberFigures};
pub use washer::JointWasher;

/// A stack of plies with the washers that are always there, in order from the head.
///
/// Its invariants hold by construction: at least one ply, every thickness positive and in order,
/// every shear plane between two plies, no sleeve cut by one.
///
/// | a stack may have | and then |
/// |---|---|
/// | soft plies ([`StackBuilder::soft_ply`]) | the nut follows as they are crushed: G min is less |
/// | gaps ([`Gap`]) | planes reach across them, and the bolt bends |
/// | sleeves ([`Sleeve`]) | the sleeve is clamped, not the plies around it |
/// | a recessed or countersunk head ([`HeadSeat`]) | every plane is nearer to the head |
/// | a spot face under the nut ([`StackBuilder::spot_face_under_nut`]) | the nut is nearer to the head |
/// | a tapped part ([`TappedPart`]) | the bolt ends in a thread, not in a nut |
/// | packing, plies pulled unequally or in turn ([`JointPly::pull`]) | each plane has its own load |
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = millimetres(10.0).plus_minus(millimetres(0.3));
/// let stack = Stack::builder().ply("left", plate).ply("right", plate).shear_planes([1]).build()?;
/// assert_eq!((stack.plies().len(), stack.shear_planes()), (2, &[1][..]));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Deserialize),
    serde(try_from = "Parts")
)]
pub struct Stack {
    parts: Parts,
    /// Head washers, plies and the nut-side washers that are always there.
    grip: Spread<Length>,
    /// Distance of each shear plane from the bearing face of the head.
    positions: Vec<Spread<Length>>,
    /// Where the hole of the last ply ends: at its far face or at the bottom of the spot face in it.
    holes_end: Spread<Length>,
    /// What each ply, and after them a tapped part, pulls of the load across.
    pulls: Vec<f64>,
    /// What each shear plane carries of it.
    shares: Vec<f64>,
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Stack {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        "Stack".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        Parts::json_schema(generator)
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for Stack {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.parts.serialize(serializer)
    }
}

impl TryFrom<Parts> for Stack {
    type Error = Error;
    fn try_from(mut parts: Parts) -> Result<Self, Error> {
        if let Some(washer) = parts.drafts().next() {
            return Err(Error::Mismatch(alloc::format!(
                "the thickness of \"{}\" is not given: a stack alone has no thread to look it up for",
                washer.name
            )));
        }
        StackBuilder::of(parts).build()
    }
}

impl Stack {
    /// A builder that makes this stack again, to add to it.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("a", Spread::exact(millimetres(8.0))).build()?;
    /// let two = stack.to_builder().ply("b", Spread::exact(millimetres(5.0))).shear_planes([1]).build()?;
    /// assert_eq!(two.plies().len(), 2);
    /// # Ok(())
    /// # }
    /// ```
    pub fn to_builder(&self) -> StackBuilder {
        StackBuilder::of(self.parts.clone())
    }

    /// Starts a stack.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("foot", millimetres(8.0).plus_minus(millimetres(0.2)))
    ///     .ply("base", millimetres(8.0).plus_minus(millimetres(0.2)))
    ///     .shear_planes([1])
    ///     .build()?;
    /// assert_eq!(stack.grip().nominal, millimetres(8.0) + millimetres(8.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn builder() -> StackBuilder {
        StackBuilder::default()
    }

    /// Washers under the head, from the head. They push every shear plane toward the thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert!(stack.washers_under_head().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn washers_under_head(&self) -> &[JointWasher] {
        &self.parts.washers_under_head
    }

    /// The plies, from the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert_eq!(stack.plies()[0].name, "plate");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn plies(&self) -> &[JointPly] {
        &self.parts.plies
    }

    /// The shear planes: after which plies, counted from 1 at the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Spread::exact(millimetres(10.0));
    /// let stack = Stack::builder().ply("a", plate).ply("b", plate).shear_planes([1]).build()?;
    /// assert_eq!(stack.shear_planes(), [1]);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn shear_planes(&self) -> &[usize] {
        &self.parts.shear_planes
    }

    /// The washer under the nut, if there is one, and how many of it are always there.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .washers_under_nut(millimetres(3.0).plus_minus(millimetres(0.3)), 1)
    ///     .build()?;
    /// assert_eq!(stack.washers_under_nut().unwrap().1, 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn washers_under_nut(&self) -> Option<(&JointWasher, usize)> {
        self.parts
            .washers_under_nut
            .as_ref()
            .map(|washers| (&washers.washer, washers.count))
    }

    /// Everything between the bearing faces of head and nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("plate", millimetres(10.0).plus_minus(millimetres(0.5)))
    ///     .washers_under_nut(millimetres(3.0).plus_minus(millimetres(0.3)), 1)
    ///     .build()?;
    /// assert!((stack.grip().max - millimetres(13.8)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn grip(&self) -> Spread<Length> {
        self.grip
    }

    /// The same with more washers.
    pub(super) fn grip_with(&self, added: Added) -> Spread<Length> {
        self.grip + self.head_washers(added.under_head) + self.nut_washers(added.under_nut)
    }

    /// What so many more washers under the nut add.
    pub(super) fn nut_washers(&self, added: usize) -> Spread<Length> {
        let washers = self.parts.washers_under_nut.as_ref();
        let none = Spread::exact(Length::default());
        washers.map_or(none, |own| times(added, own.washer.thickness))
    }

    /// By how much so many more washers under the head push everything towards the nut.
    pub(super) fn head_washers(&self, added: usize) -> Spread<Length> {
        let washer = self.parts.washer_to_add_under_head.as_ref();
        let none = Spread::exact(Length::default());
        washer.map_or(none, |own| times(added, own.thickness))
    }

    /// Where the hole of the last ply ends: at its far face or at the bottom of the spot face in it.
    pub(super) const fn holes_end(&self) -> Spread<Length> {
        self.holes_end
    }

    /// The lengths from the bearing face of the head to the end of a ply and of the gap after it.
    pub(super) fn terms(&self, thru_ply: usize) -> impl Iterator<Item = Term<'_>> {
        self.parts.terms(thru_ply)
    }

    /// The lengths between the last ply and the bearing face of the nut, but for the washers that
    /// [`washers_under_nut`](Self::washers_under_nut) counts.
    pub(super) fn terms_at_nut(&self) -> impl Iterator<Item = Term<'_>> {
        self.parts.terms_at_nut()
    }

    /// The gaps between plies, from the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert!(stack.gaps().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn gaps(&self) -> &[Gap] {
        &self.parts.gaps
    }

    /// The gaps that nothing keeps open: no sleeve goes past them.
    pub(crate) fn open_gaps(&self) -> impl Iterator<Item = &Gap> {
        self.gaps().iter().filter(|gap| {
            let past =
                |sleeve: &Sleeve| (sleeve.first_ply..sleeve.last_ply).contains(&gap.after_ply);
            !self.sleeves().iter().any(past)
        })
    }

    /// The gap after a ply, if there is one.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = Spread::exact(millimetres(10.0));
    /// let play = Spread { min: millimetres(0.0), nominal: millimetres(0.5), max: millimetres(1.0) };
    /// let stack = Stack::builder().ply("a", ply).gap(play).ply("b", ply).build()?;
    /// assert_eq!(stack.gap_after(1), Some(play));
    /// assert_eq!(stack.gap_after(2), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn gap_after(&self, ply: usize) -> Option<Spread<Length>> {
        self.parts.gap_after(ply)
    }

    /// The sleeves, from the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert!(stack.sleeves().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn sleeves(&self) -> &[Sleeve] {
        &self.parts.sleeves
    }

    /// How the head sits.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::joint::HeadSeat;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert_eq!(stack.head_seat(), HeadSeat::Flat);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn head_seat(&self) -> HeadSeat {
        self.parts.head_seat
    }

    /// Depth of the spot face under the nut, if there is one.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert_eq!(stack.spot_face_under_nut(), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn spot_face_under_nut(&self) -> Option<Spread<Length>> {
        self.parts.spot_face_under_nut
    }

    /// The part whose thread takes the place of a nut, if there is one.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert_eq!(stack.tapped_part(), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn tapped_part(&self) -> Option<&TappedPart> {
        self.parts.tapped_part.as_ref()
    }

    /// Washers of other kinds that are always under the nut, from the last ply: a hardened one below, a
    /// spring washer. A search adds none of them.
    ///
    /// ```
    /// # use shankline::joint::JointWasher;
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .washer_under_nut(JointWasher::new("square washer", Spread::exact(millimetres(5.0))))
    ///     .build()?;
    /// assert_eq!(stack.other_washers_under_nut().len(), 1);
    /// assert_eq!(stack.grip().nominal, millimetres(15.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn other_washers_under_nut(&self) -> &[JointWasher] {
        &self.parts.other_washers_under_nut
    }

    /// The washer that a search may add under the head, if it may.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert_eq!(stack.washer_to_add_under_head(), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn washer_to_add_under_head(&self) -> Option<&JointWasher> {
        self.parts.washer_to_add_under_head.as_ref()
    }

    /// The washers that a candidate has under head and nut, from the head on, each kind with its number.
    pub(crate) fn washers_of(
        &self,
        candidate: &Candidate,
    ) -> [impl DoubleEndedIterator<Item = (&JointWasher, usize)>; 2] {
        let added = candidate.washers_added_under_head;
        let added = self.washer_to_add_under_head().map(|own| (own, added));
        let usual = candidate.washers_under_nut;
        let usual = self.washers_under_nut().map(|(own, _)| (own, usual));
        let one = |own| (own, 1);
        [
            (added, self.washers_under_head(), None),
            (None, self.other_washers_under_nut(), usual),
        ]
        .map(|(before, own, after)| {
            let all = before.into_iter().chain(own.iter().map(one)).chain(after);
            all.filter(|(_, count)| *count > 0)
        })
    }

    /// The share of the load across the axis that each shear plane carries, from the head: the sum of all
    /// [pulls](JointPly::pull) on one side of it.
    ///
    /// ```
    /// # use shankline::joint::JointPly;
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = Spread::exact(millimetres(10.0));
    /// let alike = Stack::builder().ply("a", ply).ply("b", ply).ply("c", ply).shear_planes([1, 2]).build()?;
    /// assert_eq!(alike.plane_shares(), [0.5, 0.5]);
    /// // Packing passes the whole load on.
    /// let packed = Stack::builder()
    ///     .ply("a", ply)
    ///     .add(JointPly::packing("shim", ply))
    ///     .ply("c", ply)
    ///     .shear_planes([1, 2])
    ///     .build()?;
    /// assert_eq!(packed.plane_shares(), [1.0, 1.0]);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn plane_shares(&self) -> &[f64] {
        &self.shares
    }

    /// What each ply pulls of the load across the axis, from the head: plus one way, minus the other. After
    /// the plies a tapped part, if there is one.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = Spread::exact(millimetres(10.0));
    /// let clevis = Stack::builder().ply("ear", ply).ply("eye", ply).ply("ear", ply).shear_planes([1, 2]).build()?;
    /// assert_eq!(clevis.pulls(), [0.5, -1.0, 0.5]);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn pulls(&self) -> &[f64] {
        &self.pulls
    }

    /// The least thickness of a ply that the bolt bears on; none for a ply around a sleeve, or for a
    /// number that no ply has.
    ///
    /// A recess takes its depth off, a countersunk head half of its height and what it lies below flush.
    ///
    /// Source: BS 5950-1, 6.3.3.2, reproduced in a note on countersunk bolts, for the half; EN 1993-1-8, Table
    /// 3.4, says the same (recalled). A recess is arithmetic, and so is what lies above a head.
    ///
    /// ```
    /// use shankline::joint::HeadSeat;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let flush = Spread::exact(millimetres(0.0));
    /// let stack = Stack::builder()
    ///     .ply("cladding", Spread::exact(millimetres(10.0)))
    ///     .ply("post", Spread::exact(millimetres(12.0)))
    ///     .head_seat(HeadSeat::Countersunk { below_flush: flush, head_height: millimetres(6.0) })
    ///     .shear_planes([1])
    ///     .build()?;
    /// assert_eq!(stack.bearing_thickness(1), Some(millimetres(7.0)));
    /// assert_eq!(stack.bearing_thickness(2), Some(millimetres(12.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn bearing_thickness(&self, ply: usize) -> Option<Length> {
        self.parts.bearing_thickness(ply)
    }

    /// What a sleeve and the plies around it are together: whichever is longer is clamped.
    pub(crate) fn clamped_sleeve(&self, sleeve: &Sleeve) -> Spread<Length> {
        self.parts.clamped_sleeve(sleeve)
    }

    /// Whether it is nothing but hard plies and washers on each other, between a flat head and a nut.
    pub(super) fn is_plain(&self) -> bool {
        let parts = &self.parts;
        parts.gaps.is_empty()
            && parts.sleeves.is_empty()
            && parts.head_seat == HeadSeat::Flat
            && parts.spot_face_under_nut.is_none()
            && parts.tapped_part.is_none()
            && parts.plies.iter().all(|ply| ply.crush == Length::default())
    }

    /// Whether the bolt can be put in from the other side: not with a countersunk head or a tapped part.
    pub(super) const fn can_be_turned(&self) -> bool {
        self.parts.tapped_part.is_none()
            && !matches!(self.parts.head_seat, HeadSeat::Countersunk { .. })
    }
}
