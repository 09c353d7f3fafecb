//! What a builder is told of the stack: plies with their details, planes, a tapped part.

use alloc::string::String;

use super::JointBuilder;
use crate::joint::{Given, JointMaterial, JointPly, JointTimber, StackBuilder, TappedPart};
use crate::spread::Spread;
use crate::strength::ply::SlotDirection;
use crate::tables::galvanic::Metal;
use crate::tables::holes::HoleFit;
use crate::units::{Angle, Length};

impl JointBuilder {
    /// Adds the next ply, counted from the head, with its thickness.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = Joint::builder("M8").ply("lug", "0.500 +/- 0.015 in").build()?;
    /// assert_eq!(joint.stack.plies()[0].thickness, inches(0.5).plus_minus(inches(0.015)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn ply(mut self, name: impl Into<String>, thickness: impl Given<Spread<Length>>) -> Self {
        if let Some(thickness) = self.keep(thickness.given()) {
            self.stack = self.stack.ply(name, thickness);
            self.new_ply();
        }
        self
    }

    /// Adds a ply that is described elsewhere.
    ///
    /// ```
    /// # use shankline::joint::JointPly;
    /// # use shankline::prelude::*;
    /// let shim = JointPly::packing("shim", Spread::exact(millimetres(2.0)));
    /// let packed = Joint::builder("M8").ply("a", "5 mm").add(shim).ply("b", "5 mm");
    /// ```
    #[allow(clippy::should_implement_trait)] // as on a stack
    pub fn add(mut self, ply: JointPly) -> Self {
        self.stack = self.stack.add(ply);
        self.new_ply();
        self
    }

    fn say_of_stack(
        mut self,
        what: &'static str,
        change: impl FnOnce(StackBuilder) -> StackBuilder,
    ) -> Self {
        let changed = change(self.stack.clone());
        if self.said.contains(&what) && changed != self.stack {
            return self.twice(what);
        }
        self.stack = changed;
        self.said.push(what);
        self
    }

    /// What is said next speaks of a ply that was added here.
    fn new_ply(&mut self) {
        self.said_of_ply.clear();
        self.ply_is_new = true;
    }

    /// Anything else of the stack: gaps, sleeves, recesses, washers of other kinds.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let clevis = Joint::builder("M8")
    ///     .ply("ear", "6 mm")
    ///     .stack(|stack| stack.gap(Spread::exact(millimetres(1.0))))
    ///     .ply("tongue", "10 mm")
    ///     .build()?;
    /// assert_eq!(clevis.stack.gaps().len(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn stack(mut self, change: impl FnOnce(StackBuilder) -> StackBuilder) -> Self {
        let before = self.stack.plies().len();
        self.stack = change(self.stack);
        if self.stack.plies().len() > before {
            self.new_ply();
        }
        self
    }

    /// Ends the stack in a part with a threaded hole, in place of the nut.
    ///
    /// ```
    /// # use shankline::joint::{TappedHole, TappedPart};
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bed = TappedPart::new("bed").thread(millimetres(12.0), TappedHole::Through);
    /// let joint = Joint::builder("M8").ply("cover", "5 mm").tapped(bed).build()?;
    /// assert_eq!(joint.nut, None);
    /// # Ok(())
    /// # }
    /// ```
    pub fn tapped(self, part: TappedPart) -> Self {
        self.say_of_stack("the tapped part", |stack| stack.tapped(part))
    }

    /// The material of the ply added last: by name, or [one's own](crate::joint::OwnMaterial).
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").material("S235 steel");
    /// ```
    pub fn material(self, material: impl Into<JointMaterial>) -> Self {
        self.say_of_ply("a material", |ply| &mut ply.material, material.into())
    }

    /// The timber of the ply added last, by name or [one's own](crate::joint::OwnTimber), and the angle from the load to its grain.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let post = Joint::builder("M12").ply("post", "60 mm").timber("C24", "0 deg");
    /// ```
    pub fn timber(
        mut self,
        timber: impl Into<JointTimber>,
        grain_angle: impl Given<Angle>,
    ) -> Self {
        match self.keep(grain_angle.given()) {
            Some(angle) => self
                .say_of_ply("a timber", |ply| &mut ply.timber, timber.into())
                .say_of_ply("an angle to the grain", |ply| &mut ply.grain_angle, angle),
            None => self,
        }
    }

    /// What the surface of the ply added last is made of, for corrosion.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::galvanic::Metal;
    /// let rail = Joint::builder("M8").ply("rail", "6 mm").metal(Metal::Zinc);
    /// ```
    pub fn metal(self, metal: Metal) -> Self {
        self.say_of_ply("a metal", |ply| &mut ply.metal, metal)
    }

    /// The diameter of the hole in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").hole("9 mm");
    /// ```
    pub fn hole(self, diameter: impl Given<Length>) -> Self {
        self.length_of_ply("a hole", diameter, |ply| &mut ply.hole)
    }

    /// A slot in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::ply::SlotDirection;
    /// let slotted = Joint::builder("M8").ply("bracket", "6 mm").slot("9 mm", "20 mm", SlotDirection::Across);
    /// ```
    pub fn slot(
        mut self,
        width: impl Given<Length>,
        length: impl Given<Length>,
        direction: SlotDirection,
    ) -> Self {
        let (width, length) = (self.keep(width.given()), self.keep(length.given()));
        let Some((width, length)) = width.zip(length) else {
            return self;
        };
        let slotted = JointPly::new("", Spread::exact(width)).slot(width, length, direction);
        let Some(slot) = slotted.slot else {
            return self;
        };
        self.say_of_ply("a hole", |ply| &mut ply.hole, width)
            .say_of_ply("a slot", |ply| &mut ply.slot, slot)
    }

    /// The holes of all plies of which none is said: drilled to a fit for the thread. Where a joint is made again, those
    /// of every ply.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::tables::holes::HoleFit;
    /// let close = Joint::builder("M8").holes(HoleFit::Close);
    /// ```
    pub fn holes(self, fit: HoleFit) -> Self {
        self.say("the fit of the holes", |own| &mut own.fit, Some(fit))
    }

    /// From the centre of the hole to the end of the ply added last, along the load.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").end_distance("20 mm");
    /// ```
    pub fn end_distance(self, distance: impl Given<Length>) -> Self {
        self.length_of_ply("an end distance", distance, |ply| &mut ply.end_distance)
    }

    /// From the centre of the hole to the side of the ply added last, across the load.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").edge_distance("15 mm");
    /// ```
    pub fn edge_distance(self, distance: impl Given<Length>) -> Self {
        self.length_of_ply("an edge distance", distance, |ply| &mut ply.edge_distance)
    }

    /// From hole to hole along the load, in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let splice = Joint::builder("M8").ply("plate", "6 mm").pitch("30 mm");
    /// ```
    pub fn pitch(self, pitch: impl Given<Length>) -> Self {
        self.length_of_ply("a pitch", pitch, |ply| &mut ply.pitch)
    }

    /// From hole to hole across the load, in the ply added last.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let splice = Joint::builder("M8").ply("plate", "6 mm").gauge("30 mm");
    /// ```
    pub fn gauge(self, gauge: impl Given<Length>) -> Self {
        self.length_of_ply("a gauge", gauge, |ply| &mut ply.gauge)
    }

    /// The width of the ply added last that the load of one bolt comes through.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let bracket = Joint::builder("M8").ply("bracket", "6 mm").width("40 mm");
    /// ```
    pub fn width(self, width: impl Given<Length>) -> Self {
        self.length_of_ply("a width", width, |ply| &mut ply.width)
    }

    /// What the ply added last pulls, as a share of the load across; against the others where it is negative.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let packing = Joint::builder("M8").ply("shim", "2 mm").pulls(0.0);
    /// ```
    pub fn pulls(self, share: f64) -> Self {
        self.say_of_ply("a pull", |ply| &mut ply.pull, share)
    }

    /// After which plies the load across cuts the bolt.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let joint = Joint::builder("M8").ply("a", "5 mm").ply("b", "5 mm").shear_planes([1]);
    /// ```
    pub fn shear_planes(self, after_plies: impl IntoIterator<Item = usize>) -> Self {
        let mut told =
            self.say_of_stack("the shear planes", |stack| stack.shear_planes(after_plies));
        told.planes_said = true;
        told
    }
}
