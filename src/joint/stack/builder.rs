//! Puts a stack together and refuses what cannot be one.

use alloc::{format, string::String, vec::Vec};

use super::statics::Statics;
use super::{
    Gap, HeadSeat, JointMaterial, JointPly, JointTimber, JointWasher, NutWashers, Parts, Sleeve,
    Stack, TappedPart,
};
use crate::error::{
    Allowed, Error, at_most, not_negative, out_of_range, positive, sane_length, sane_text, within,
};
use crate::spread::{Spread, ordered, sane_spread};
use crate::tables::washer_rules::WasherHardness;
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH, degrees};

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
        counts(&parts)?;
        thicknesses(&parts)?;
        sort_planes(&mut parts)?;
        gaps(&mut parts)?;
        sleeves(&mut parts)?;
        recesses(&parts)?;
        tapped(&parts)?;
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
        let washers = washers.filter(|washers| washers.count > 0);
        let grip = washers.map_or(grip, |washers| {
            grip + super::times(washers.count, washers.washer.thickness)
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

fn counts(parts: &Parts) -> Result<(), Error> {
    const MOST_WASHERS: usize = 100;
    const MOST_PLIES: usize = 1000;
    let at_nut = parts
        .washers_under_nut
        .as_ref()
        .map_or(0, |washers| washers.count);
    for (quantity, count, most) in [
        ("number of plies", parts.plies.len(), MOST_PLIES),
        (
            "number of washers under the head",
            parts.washers_under_head.len(),
            MOST_WASHERS,
        ),
        ("number of washers under the nut", at_nut, MOST_WASHERS),
        (
            "number of other washers under the nut",
            parts.other_washers_under_nut.len(),
            MOST_WASHERS,
        ),
    ] {
        at_most(quantity, count, most)?;
    }
    for ply in &parts.plies {
        sane_text("name of a ply", &ply.name)?;
    }
    if parts.plies.is_empty() {
        return Err(out_of_range(
            "number of plies",
            0_usize,
            Allowed::AtLeast(1_usize.into()),
        ));
    }
    Ok(())
}

fn thicknesses(parts: &Parts) -> Result<(), Error> {
    for ply in &parts.plies {
        sane_spread("thickness", ply.thickness).map_err(|error| named(error, &ply.name))?;
        if ply.crush != Length::default() {
            not_negative("crush", ply.crush)
                .and_then(|_| sane_length("thickness when crushed", ply.clamped().min))
                .map_err(|error| named(error, &ply.name))?;
        }
        details(ply)?;
    }
    let washers = parts.washers_under_head.iter();
    for washer in washers.chain(&parts.other_washers_under_nut) {
        sane_spread("thickness", washer.thickness).map_err(|error| named(error, &washer.name))?;
    }
    if let Some(NutWashers { washer, .. }) = &parts.washers_under_nut {
        sane_spread("thickness of the washer under the nut", washer.thickness)?;
    }
    if let Some(washer) = &parts.washer_to_add_under_head {
        sane_spread(
            "thickness of the washer to add under the head",
            washer.thickness,
        )?;
    }
    let all = parts
        .washers_under_head
        .iter()
        .chain(&parts.other_washers_under_nut);
    let all = all.chain(parts.washer_to_add_under_head.as_ref());
    let at_nut = parts
        .washers_under_nut
        .as_ref()
        .map(|washers| &washers.washer);
    for washer in all.chain(at_nut) {
        for (quantity, length) in [
            ("outside diameter", washer.outside),
            ("inside diameter", washer.inside),
        ] {
            if let Some(length) = length {
                sane_length(quantity, length).map_err(|error| named(error, &washer.name))?;
            }
        }
        if let Some(hardness) = washer.hardness {
            within("Vickers hardness", hardness, 1.0, 3000.0)
                .map_err(|error| named(error, &washer.name))?;
        }
    }
    Ok(())
}

/// Lengths of a ply that make no sense, and a ply of two materials.
fn details(ply: &JointPly) -> Result<(), Error> {
    for (quantity, length) in [
        ("hole", ply.hole),
        ("length of the slot", ply.slot.map(|slot| slot.length)),
        ("end distance", ply.end_distance),
        ("edge distance", ply.edge_distance),
        ("pitch", ply.pitch),
        ("gauge", ply.gauge),
        ("width", ply.width),
    ] {
        if let Some(length) = length {
            sane_length(quantity, length).map_err(|error| named(error, &ply.name))?;
        }
    }
    if let Some(strength) = ply.bearing_strength {
        positive("bearing strength", strength).map_err(|error| named(error, &ply.name))?;
    }
    if let Some(angle) = ply.grain_angle {
        let most = degrees(90.0);
        if !(degrees(0.0)..=most).contains(&angle) {
            let allowed = Allowed::FromTo(degrees(0.0).into(), most.into());
            return Err(named(
                out_of_range("grain angle", angle, allowed),
                &ply.name,
            ));
        }
    }
    if let Some(JointMaterial::Own(own)) = &ply.material {
        own.checked().map_err(|error| named(error, &ply.name))?;
        let nominal = ply.thickness.nominal;
        let from = own
            .thickness_from
            .is_some_and(|from| nominal < from - SAME_LENGTH);
        let thru = own
            .thickness_thru
            .is_some_and(|thru| nominal > thru + SAME_LENGTH);
        if from || thru {
            return Err(Error::Mismatch(format!(
                "\"{}\" is outside the thicknesses that the strengths of {} are stated for",
                ply.name, own.name
            )));
        }
    }
    if let Some(JointTimber::Own(own)) = &ply.timber {
        own.checked().map_err(|error| named(error, &ply.name))?;
    }
    if let (Some(material), Some(timber)) = (&ply.material, &ply.timber) {
        return Err(Error::Mismatch(format!(
            "\"{}\" is said to be of {material} and of {timber}",
            ply.name
        )));
    }
    if let (Some(_), Some(material), None) = (ply.grain_angle, &ply.material, &ply.timber) {
        return Err(Error::Mismatch(format!(
            "\"{}\" is said to be of {material}, and to have a grain angle",
            ply.name
        )));
    }
    match (ply.slot, ply.hole) {
        (Some(_), None) => Err(Error::Mismatch(format!(
            "the slot of \"{}\" has a length and no width: give the hole",
            ply.name
        ))),
        (Some(slot), Some(width)) if slot.length < width => Err(Error::Mismatch(format!(
            "the slot of \"{}\" is shorter than it is wide",
            ply.name
        ))),
        _ => Ok(()),
    }
}

/// Brings planes into order, their shares with them, and refuses those that are none.
fn sort_planes(parts: &mut Parts) -> Result<(), Error> {
    parts.shear_planes.sort_unstable();
    let planes = &parts.shear_planes;
    // A plane lies between two plies, or between the last ply and a tapped part.
    let last = parts.plies.len() - usize::from(parts.tapped_part.is_none());
    if let Some(&plane) = planes.iter().find(|plane| !(1..=last).contains(*plane)) {
        return Err(if last == 0 {
            Error::Mismatch(format!(
                "shear plane {plane}: a stack of one ply has no shear plane"
            ))
        } else {
            out_of_range(
                "shear plane",
                plane,
                Allowed::FromTo(1_usize.into(), last.into()),
            )
        });
    }
    if let Some([twice, _]) = planes.windows(2).find(|pair| pair.first() == pair.last()) {
        return Err(Error::Mismatch(format!(
            "shear plane {twice} is given twice"
        )));
    }
    Ok(())
}

fn gaps(parts: &mut Parts) -> Result<(), Error> {
    parts.gaps.sort_by_key(|gap| gap.after_ply);
    let last = parts.plies.len() - usize::from(parts.tapped_part.is_none());
    for gap in &parts.gaps {
        ordered("width of a gap", gap.width)?;
        sane_length("greatest width of a gap", gap.width.max)?;
        if !(1..=last).contains(&gap.after_ply) {
            return Err(Error::Mismatch(format!(
                "gap after ply {}: a gap lies between two plies",
                gap.after_ply
            )));
        }
    }
    let twice = |pair: &&[Gap]| matches!(pair, [one, other] if one.after_ply == other.after_ply);
    if let Some([gap, _]) = parts.gaps.windows(2).find(twice) {
        return Err(Error::Mismatch(format!(
            "gap after ply {} is given twice",
            gap.after_ply
        )));
    }
    Ok(())
}

fn sleeves(parts: &mut Parts) -> Result<(), Error> {
    if parts.sleeves.is_empty() {
        return Ok(());
    }
    parts.sleeves.sort_by_key(|sleeve| sleeve.first_ply);
    let plies = parts.plies.len();
    for sleeve in &parts.sleeves {
        let (first, last) = (sleeve.first_ply, sleeve.last_ply);
        sane_spread("length", sleeve.length).map_err(|error| named(error, &sleeve.name))?;
        if first < 1 || last < first || last > plies {
            return Err(Error::Mismatch(format!(
                "sleeve \"{}\" from ply {first} to ply {last}: the stack has {plies}",
                sleeve.name
            )));
        }
        let inside = |plane: &&usize| (first..last).contains(*plane);
        if let Some(plane) = parts.shear_planes.iter().find(inside) {
            return Err(Error::Mismatch(format!(
                "shear plane {plane} cuts the sleeve \"{}\", not the bolt",
                sleeve.name
            )));
        }
        let recessed = first == 1 && parts.head_seat != HeadSeat::Flat
            || last == plies && parts.spot_face_under_nut.is_some();
        if recessed {
            return Err(Error::Mismatch(format!(
                "head or nut is recessed into a ply around the sleeve \"{}\": it clamps the sleeve",
                sleeve.name
            )));
        }
    }
    let overlap = |pair: &&[Sleeve]| matches!(pair, [one, next] if next.first_ply <= one.last_ply);
    if let Some([one, two]) = parts.sleeves.windows(2).find(overlap) {
        return Err(Error::Mismatch(format!(
            "sleeves \"{}\" and \"{}\" lie in the same ply",
            one.name, two.name
        )));
    }
    let around: Vec<Spread<Length>> = (parts.sleeves.iter())
        .map(|sleeve| parts.around_sleeve(sleeve))
        .collect();
    for (sleeve, around) in parts.sleeves.iter_mut().zip(around) {
        sleeve.play = sleeve.length.less(around);
    }
    Ok(())
}

fn recesses(parts: &Parts) -> Result<(), Error> {
    let at_head = parts.head_seat.depth();
    if parts.head_seat != HeadSeat::Flat {
        ordered("depth of the recess of the head", at_head)?;
    }
    if let HeadSeat::Countersunk { head_height, .. } = parts.head_seat {
        sane_length("height of the countersunk head", head_height)?;
    }
    let at_nut = parts.spot_face_under_nut;
    if let Some(depth) = at_nut {
        ordered("depth of the spot face under the nut", depth)?;
    }
    if let HeadSeat::Countersunk { .. } = parts.head_seat {
        if !parts.washers_under_head.is_empty() || parts.washer_to_add_under_head.is_some() {
            return Err(Error::Mismatch(
                "no washer goes under a countersunk head: it sits in its ply".into(),
            ));
        }
        // Half the height of the head still bears, but its top must lie in the ply.
        if let Some(first) = parts.plies.first() {
            sane_length(
                "thickness left by its recess",
                first.clamped().min - at_head.max,
            )
            .map_err(|error| named(error, &first.name))?;
        }
    }
    for number in [1, parts.plies.len()] {
        let ply = number.checked_sub(1).and_then(|at| parts.plies.get(at));
        if let (Some(left), Some(ply)) = (parts.bearing_thickness(number), ply) {
            sane_length("thickness left by its recess", left)
                .map_err(|error| named(error, &ply.name))?;
        }
    }
    Ok(())
}

fn tapped(parts: &Parts) -> Result<(), Error> {
    let Some(tapped) = &parts.tapped_part else {
        return Ok(());
    };
    if let Some(JointMaterial::Own(own)) = &tapped.material {
        own.checked().map_err(|error| named(error, &tapped.name))?;
        // A part is at least as thick as the thread that it fills.
        if let (Some(thru), Some(engaged)) = (own.thickness_thru, tapped.engagement) {
            if engaged > thru + SAME_LENGTH {
                return Err(Error::Mismatch(format!(
                    "the thread of \"{}\" is longer than the thickness that the strengths of {} are stated for",
                    tapped.name, own.name
                )));
            }
        }
    }
    ordered("depth of the counterbore", tapped.counterbore)?;
    if tapped.counterbore.max > Length::default() {
        sane_length("depth of the counterbore", tapped.counterbore.max)?;
    }
    // Not even washers that a search might add.
    if parts.washers_under_nut.is_some()
        || !parts.other_washers_under_nut.is_empty()
        || parts.spot_face_under_nut.is_some()
    {
        return Err(Error::Mismatch(format!(
            "the screw ends in the thread of \"{}\": there is no nut to put a washer or a spot face under",
            tapped.name
        )));
    }
    Ok(())
}

/// The same error with the name of the layer it is about.
fn named(error: Error, name: &str) -> Error {
    match error {
        Error::OutOfRange {
            quantity,
            value,
            allowed,
        } => Error::OutOfRange {
            quantity: alloc::format!("{quantity} of \"{name}\""),
            value,
            allowed,
        },
        other => other,
    }
}
