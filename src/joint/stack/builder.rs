//! Puts a stack together.

use alloc::{string::String, vec::Vec};

use super::sane;
use super::statics::Statics;
use super::terms::times;
use super::{Gap, HeadSeat, JointPly, JointWasher, NutWashers, Parts, Sleeve, Stack, TappedPart};
use crate::error::Error;
use crate::spread::Spread;
use crate::tables::washer_rules::WasherHardness;
use crate::thread::Thread;
use crate::units::Length;

/// Collects the parts of a [`Stack`]. Made by [`Stack::builder`]; nothing is checked before
/// [`build`](Self::build).
///
/// ```
/// use shankline::prelude::*;
/// let builder = Stack::builder().ply("plate", Spread::exact(millimetres(10.0)));
/// assert!(builder.clone().build().is_ok());
/// assert!(builder.shear_planes([1]).build().is_err()); // one ply has no shear plane
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[must_use]
pub struct StackBuilder {
    parts: Parts,
}

impl StackBuilder {
    pub(super) const fn of(parts: Parts) -> Self {
        Self { parts }
    }

    /// Adds a washer under the head: with its style, or of a thickness only.
    ///
    /// ```
    /// # use shankline::joint::JointWasher;
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .washer_under_head(JointWasher::find(WasherStyle::Iso7089, &"M16".parse()?)?)
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .build()?;
    /// assert_eq!(stack.washers_under_head().len(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn washer_under_head(mut self, washer: impl Into<JointWasher>) -> Self {
        self.parts.washers_under_head.push(washer.into());
        self
    }

    /// Adds the next ply, counted from the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let error = Stack::builder().ply("plate", Spread::exact(millimetres(-1.0))).build();
    /// assert!(error.is_err());
    /// ```
    pub fn ply(mut self, name: impl Into<String>, thickness: Spread<Length>) -> Self {
        self.parts.plies.push(JointPly::new(name, thickness));
        self
    }

    /// Adds the next ply with what is known of it.
    ///
    /// ```
    /// # use shankline::joint::JointPly;
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let lug = JointPly::new("lug", millimetres(20.0).plus_minus(millimetres(0.3)))
    ///     .material("ASTM A36 steel")
    ///     .hole(millimetres(17.5));
    /// let stack = Stack::builder().add(lug).build()?;
    /// assert_eq!(stack.plies()[0].hole, Some(millimetres(17.5)));
    /// # Ok(())
    /// # }
    /// ```
    // Not arithmetic: a builder adds parts.
    #[allow(clippy::should_implement_trait)]
    pub fn add(mut self, ply: JointPly) -> Self {
        self.parts.plies.push(ply);
        self
    }

    /// Adds a ply that gives when it is clamped, by at most `crush`: timber, a gasket, a rubber mat.
    ///
    /// The nut follows, so the least stack is reckoned with the ply fully crushed. It may go on giving
    /// after the nut is tight, and the preload goes with it.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .soft_ply("beam", millimetres(90.0).plus_minus(millimetres(1.0)), millimetres(2.0))
    ///     .build()?;
    /// assert!((stack.grip().min - millimetres(87.0)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn soft_ply(
        mut self,
        name: impl Into<String>,
        thickness: Spread<Length>,
        crush: Length,
    ) -> Self {
        self.parts.plies.push(JointPly {
            crush,
            ..JointPly::new(name, thickness)
        });
        self
    }

    /// Adds a gap after the last ply so far; see [`Gap`] for what its least width means.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let width = Spread { min: millimetres(0.0), nominal: millimetres(1.0), max: millimetres(2.0) };
    /// let ply = Spread::exact(millimetres(10.0));
    /// assert!(Stack::builder().ply("ear", ply).gap(width).ply("tongue", ply).build().is_ok());
    /// assert!(Stack::builder().ply("ear", ply).gap(width).build().is_err()); // between plies only
    /// ```
    pub fn gap(mut self, width: Spread<Length>) -> Self {
        let after_ply = self.parts.plies.len();
        self.parts.gaps.push(Gap { after_ply, width });
        self
    }

    /// Adds a sleeve from the near face of one ply to the far face of another, counted from 1 at the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = Spread::exact(millimetres(10.0));
    /// let builder = Stack::builder().ply("arm", ply).ply("rocker", ply).ply("arm", ply);
    /// let sleeve = Spread::exact(millimetres(10.4));
    /// let pivot = builder.clone().sleeve("bushing", sleeve, 2, 2).shear_planes([1, 2]).build()?;
    /// // The sleeve, not the bolt, would be cut here.
    /// let across = builder.sleeve("tube", Spread::exact(millimetres(30.0)), 1, 3);
    /// assert!(across.shear_planes([1]).build().is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn sleeve(
        mut self,
        name: impl Into<String>,
        length: Spread<Length>,
        first_ply: usize,
        last_ply: usize,
    ) -> Self {
        self.parts.sleeves.push(Sleeve {
            name: name.into(),
            length,
            first_ply,
            last_ply,
            play: Spread::exact(Length::default()),
        });
        self
    }

    /// Sets how the head sits on the first ply; flat unless told.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::joint::HeadSeat;
    /// let ply = Spread::exact(millimetres(5.0));
    /// let through = HeadSeat::Recessed { depth: Spread::exact(millimetres(5.0)) };
    /// assert!(Stack::builder().ply("plate", ply).head_seat(through).build().is_err());
    /// ```
    pub const fn head_seat(mut self, seat: HeadSeat) -> Self {
        self.parts.head_seat = seat;
        self
    }

    /// Sets the depth of a spot face or counterbore under the nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("lug", millimetres(20.0).plus_minus(millimetres(1.0)))
    ///     .spot_face_under_nut(millimetres(1.5).plus_minus(millimetres(0.5)))
    ///     .build()?;
    /// assert_eq!(stack.grip().min, millimetres(17.0));
    /// # Ok(())
    /// # }
    /// ```
    pub const fn spot_face_under_nut(mut self, depth: Spread<Length>) -> Self {
        self.parts.spot_face_under_nut = Some(depth);
        self
    }

    /// Ends the stack in a part with a threaded hole, in place of a nut; `counterbore` is how deep its
    /// thread begins below its face. A shear plane may lie after the last ply, at that face.
    ///
    /// Goes with [`NutEnd::tapped`](crate::joint::NutEnd::tapped).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("cover", Spread::exact(millimetres(12.0)))
    ///     .tapped_part("bed", Spread::exact(millimetres(3.0)))
    ///     .shear_planes([1])
    ///     .build()?;
    /// assert_eq!(stack.grip().nominal, millimetres(15.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn tapped_part(self, name: impl Into<String>, counterbore: Spread<Length>) -> Self {
        self.tapped(TappedPart {
            counterbore,
            ..TappedPart::new(name)
        })
    }

    /// Ends the stack in a part with a threaded hole of which more is known.
    ///
    /// ```
    /// # use shankline::joint::{TappedHole, TappedPart};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bed = TappedPart::new("bed").thread(millimetres(18.0), TappedHole::Through).material("ASTM A36 steel");
    /// let stack = Stack::builder().ply("cover", Spread::exact(millimetres(12.0))).tapped(bed).build()?;
    /// assert!(stack.tapped_part().is_some());
    /// # Ok(())
    /// # }
    /// ```
    pub fn tapped(mut self, part: TappedPart) -> Self {
        self.parts.tapped_part = Some(part);
        self
    }

    /// Adds a washer of another kind under the nut, always there: from the last ply outward.
    ///
    /// ```
    /// # use shankline::joint::JointWasher;
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("beam", Spread::exact(millimetres(90.0)))
    ///     .washer_under_nut(JointWasher::new("square washer", Spread::exact(millimetres(5.0))))
    ///     .washers_under_nut(millimetres(2.5).plus_minus(millimetres(0.3)), 1)
    ///     .build()?;
    /// assert_eq!(stack.grip().nominal, millimetres(97.5));
    /// # Ok(())
    /// # }
    /// ```
    pub fn washer_under_nut(mut self, washer: impl Into<JointWasher>) -> Self {
        self.parts.other_washers_under_nut.push(washer.into());
        self
    }

    /// Lets a search add such washers under the head, as many as its rules permit. They
    /// push every shear plane towards the thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .washer_to_add_under_head(millimetres(2.5).plus_minus(millimetres(0.3)))
    ///     .build()?;
    /// assert_eq!(stack.grip().nominal, millimetres(10.0)); // none is there yet
    /// # Ok(())
    /// # }
    /// ```
    pub fn washer_to_add_under_head(mut self, washer: impl Into<JointWasher>) -> Self {
        self.parts.washer_to_add_under_head = Some(washer.into());
        self
    }

    /// Sets the shear planes: 1 lies between the first and the second ply, and so on.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let plate = Spread::exact(millimetres(10.0));
    /// let error = Stack::builder().ply("only", plate).shear_planes([1]).build().unwrap_err();
    /// assert!(error.to_string().starts_with("shear plane"));
    /// ```
    pub fn shear_planes(mut self, after_plies: impl IntoIterator<Item = usize>) -> Self {
        self.parts.shear_planes = after_plies.into_iter().collect();
        self
    }

    /// Sets the washers under the nut: one with its style or of a thickness only, and how many are always
    /// there. A length search may add more of the same.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let washer = Washer::find(WasherStyle::Iso7089, &"M20".parse()?)?;
    /// let stack = Stack::builder()
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .washers_under_nut(washer.thickness()?, 1)
    ///     .build()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn washers_under_nut(mut self, washer: impl Into<JointWasher>, count: usize) -> Self {
        let washer = washer.into();
        self.parts.washers_under_nut = Some(NutWashers { washer, count });
        self
    }

    /// The bolt put through from the other side; washers stay under head and nut, recesses with their
    /// plies. Only for stacks that [can be turned](Stack::can_be_turned).
    pub(in crate::joint) fn turned(mut self) -> Self {
        let parts = &mut self.parts;
        let plies = parts.plies.len();
        parts.plies.reverse();
        for plane in &mut parts.shear_planes {
            *plane = plies.saturating_sub(*plane);
        }
        parts.gaps.reverse();
        for gap in &mut parts.gaps {
            gap.after_ply = plies.saturating_sub(gap.after_ply);
        }
        for sleeve in &mut parts.sleeves {
            let (first, last) = (sleeve.first_ply, sleeve.last_ply);
            sleeve.first_ply = (plies + 1).saturating_sub(last);
            sleeve.last_ply = (plies + 1).saturating_sub(first);
        }
        let at_head = match parts.head_seat {
            HeadSeat::Recessed { depth } => Some(depth),
            HeadSeat::Flat | HeadSeat::Countersunk { .. } => None,
        };
        let at_nut = parts.spot_face_under_nut;
        parts.head_seat = at_nut.map_or(HeadSeat::Flat, |depth| HeadSeat::Recessed { depth });
        parts.spot_face_under_nut = at_head;
        self
    }

    /// The ply at the nut made thicker.
    pub(in crate::joint) fn thicker_last_ply(mut self, by: Length) -> Self {
        if let Some(last) = self.parts.plies.last_mut() {
            last.thickness = last.thickness + Spread::exact(by);
        }
        self
    }

    /// A spacer between the last ply and the washers under the nut; in the spot face, where there is one.
    pub(in crate::joint) fn spacer_under_nut(mut self, length: Length) -> Self {
        let spacer = JointWasher::new("spacer sleeve", Spread::exact(length));
        self.parts.other_washers_under_nut.insert(0, spacer);
        self
    }

    /// Other washers under head and nut, as many as there are, of the same metal; more may be added where they
    /// might before, and under a nut.
    pub(in crate::joint) fn washers_of(mut self, other: &JointWasher) -> Self {
        // A style that comes in one hardness has that.
        let is_fixed = |style| WasherHardness::of(style).count() == 1;
        let is_fixed = other.style.is_some_and(is_fixed);
        let in_place_of = |washer: &JointWasher| JointWasher {
            metal: washer.metal,
            hardness: washer.hardness.filter(|_| !is_fixed),
            ..other.clone()
        };
        let parts = &mut self.parts;
        for washer in &mut parts.washers_under_head {
            *washer = in_place_of(washer);
        }
        if let Some(washer) = &mut parts.washer_to_add_under_head {
            *washer = in_place_of(washer);
        }
        if parts.tapped_part.is_some() {
            return self;
        }
        match &mut parts.washers_under_nut {
            Some(washers) => {
                washers.washer = in_place_of(&washers.washer);
                self
            }
            None => self.washers_under_nut(other.clone(), 0),
        }
    }

    /// The plies so far.
    pub(in crate::joint) fn plies(&self) -> &[JointPly] {
        &self.parts.plies
    }

    /// Takes the ply added last off again.
    pub(in crate::joint) fn pop_ply(&mut self) -> Option<JointPly> {
        self.parts.plies.pop()
    }

    pub(in crate::joint) const fn has_tapped_part(&self) -> bool {
        self.parts.tapped_part.is_some()
    }

    pub(in crate::joint) const fn head_is_flat(&self) -> bool {
        !matches!(self.parts.head_seat, HeadSeat::Countersunk { .. })
    }

    /// Whether any washer was said.
    pub(in crate::joint) fn has_washers(&self) -> bool {
        let parts = &self.parts;
        !parts.washers_under_head.is_empty()
            || parts.washer_to_add_under_head.is_some()
            || parts.washers_under_nut.is_some()
            || !parts.other_washers_under_nut.is_empty()
    }

    /// The same without any washer.
    pub(in crate::joint) fn without_washers(mut self) -> Self {
        let parts = &mut self.parts;
        parts.washers_under_head.clear();
        parts.washer_to_add_under_head = None;
        parts.washers_under_nut = None;
        parts.other_washers_under_nut.clear();
        self
    }

    /// A hole in every ply that has none.
    pub(in crate::joint) fn missing_holes_of(mut self, diameter: Length) -> Self {
        for ply in &mut self.parts.plies {
            ply.hole.get_or_insert(diameter);
        }
        self
    }

    /// Another hole in every ply that has no slot.
    pub(in crate::joint) fn round_holes_of(mut self, diameter: Length) -> Self {
        for ply in self.parts.plies.iter_mut().filter(|ply| ply.slot.is_none()) {
            ply.hole = Some(diameter);
        }
        self
    }

    /// The same without the holes of some plies, counted from 1.
    pub(in crate::joint) fn without_holes_in(mut self, plies: &[usize]) -> Self {
        for (ply, number) in self.parts.plies.iter_mut().zip(1..) {
            if plies.contains(&number) {
                ply.hole = None;
            }
        }
        self
    }

    /// Washers of the same styles for another thread.
    ///
    /// # Errors
    ///
    /// Those of [`JointWasher::find`].
    pub(in crate::joint) fn washers_for(mut self, thread: &Thread) -> Result<Self, Error> {
        let parts = &mut self.parts;
        let at_nut = parts.washers_under_nut.as_mut().map(|own| &mut own.washer);
        let all = (parts.washers_under_head.iter_mut())
            .chain(&mut parts.washer_to_add_under_head)
            .chain(&mut parts.other_washers_under_nut)
            .chain(at_nut);
        for washer in all {
            let Some(style) = washer.style else { continue };
            washer.thickness = JointWasher::find(style, thread)?.thickness;
        }
        Ok(self)
    }

    /// A change of every ply, as a connection fills in its distances.
    pub(crate) fn each_ply(mut self, change: impl FnMut(&mut JointPly)) -> Self {
        self.parts.plies.iter_mut().for_each(change);
        self
    }

    /// Another hole in every ply.
    pub(in crate::joint) fn holes_of(mut self, diameter: Length) -> Self {
        for ply in &mut self.parts.plies {
            ply.hole = Some(diameter);
        }
        self
    }

    /// So many washers of the kind that may be added under the head, put there for good.
    pub(in crate::joint) fn with_head_washers(mut self, count: usize) -> Self {
        if let Some(washer) = &self.parts.washer_to_add_under_head {
            let added = core::iter::repeat_n(washer, count).cloned();
            self.parts.washers_under_head.extend(added);
        }
        self
    }

    /// Checks the parts and puts them together.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] without plies, for a thickness that is not positive, finite and in
    /// order, for a recess or a crush that leaves nothing of its ply, for a shear plane, gap or sleeve that
    /// does not lie between plies, for a share that is not positive, or for more than 1000 plies or 100
    /// washers; [`Error::Mismatch`] for the same shear plane or gap twice, sleeves that overlap or are cut by
    /// a plane, a sleeve under a recess, shares that do not add up to 1, washers under a countersunk head or
    /// washers that go under a nut where a tapped part takes its place.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// assert!(Stack::builder().build().is_err());
    /// ```
    pub fn build(self) -> Result<Stack, Error> {
        let mut parts = self.parts;
        sane::checked(&mut parts)?;
        let zero = Spread::exact(Length::default());
        let mut x = parts.terms_at_head().fold(zero, |x, term| term.added_to(x));
        let mut positions = Vec::with_capacity(parts.shear_planes.len());
        let mut planes = parts.shear_planes.iter().peekable();
        let mut holes_end = x;
        // One walk from the head: a plane lies where its ply and the gap after it end.
        for (ply, number) in parts.plies.iter().zip(1..) {
            let [clamped, gap] = parts.terms_of(ply, number);
            holes_end = clamped.map_or(x, |term| term.added_to(x));
            x = gap.map_or(holes_end, |term| term.added_to(holes_end));
            if planes.next_if(|&&plane| plane == number).is_some() {
                positions.push(x);
            }
        }
        // The hole ends at the bottom of a spot face.
        if let Some(depth) = parts.spot_face_under_nut {
            holes_end = holes_end.less(depth);
        }
        let at_nut = parts.terms_at_nut();
        let grip = at_nut.fold(x, |x, term| term.added_to(x));
        let washers = parts.washers_under_nut.as_ref();
        let grip = washers.map_or(grip, |washers| {
            grip + times(washers.count, washers.washer.thickness)
        });
        let Statics { pulls, shares } = parts.statics()?;
        Ok(Stack {
            parts,
            grip,
            positions,
            holes_end,
            pulls,
            shares,
        })
    }
}
