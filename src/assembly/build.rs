//! An assembly from a joint, or from a stack and a length.

use alloc::{format, string::String, string::ToString, vec::Vec};

use super::layer::same;
use super::{Assembly, Bolt, End, Extent, Layer, NutBody, Side, TappedBody, Tube};
use crate::error::Error;
use crate::joint::{Candidate, Joint, OwnNut, OwnScrew, Stack, length_name};
use crate::parts::{Head, HeadForm, Nut, ScrewSeries, Size};
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH, UnitSystem, shown};

/// What closes the joint, before its place is known.
#[derive(Clone, Copy)]
enum Closing<'a> {
    Nut(&'a Nut),
    Own(&'a OwnNut),
    None,
}

impl Joint {
    /// Where every part of this joint is with a length that was found for it: the one of its verdict, or another one of
    /// [`Joint::lengths`].
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a length that was not assessed for this joint: its grip, nut or thread is another one.
    /// [`Error::NotInTable`] for parts that do not exist.
    ///
    /// ```
    /// use shankline::prelude::*;
    #[doc = include_str!("../joint/whole/example.txt")]
    /// let verdict = joint.check()?;
    /// let assembly = joint.assembly(&verdict.candidate)?;
    /// assert_eq!(assembly.grip, verdict.candidate.grip);
    /// // Each part begins where the one before it ends.
    /// assert!(assembly.layers.windows(2).all(|two| two[0].at.to == two[1].at.from));
    /// # Ok(())
    /// # }
    /// ```
    pub fn assembly(&self, candidate: &Candidate) -> Result<Assembly, Error> {
        self.own_in_place()?;
        let thread = &self.bolt.thread;
        let nominal = candidate.screw.nominal;
        let (product, head, body) = if let Some(own) = &self.own.screw {
            (own.name.clone(), own_head(own), Size::NOT_READ)
        } else {
            let screws = ScrewSeries::new(self.bolt.product, thread)?;
            (
                self.bolt.product.to_string(),
                screws.head(nominal),
                screws.body_diameter(nominal),
            )
        };
        let closing = match (&self.own.nut, self.nut) {
            _ if self.stack.tapped_part().is_some() => Closing::None,
            (Some(own), _) => Closing::Own(own),
            (None, Some(nut)) => Closing::Nut(Nut::find(nut.style, thread)?),
            (None, None) => Closing::None,
        };
        let grade = match &self.own.strength {
            Some(own) => own.name.clone(),
            None => self.bolt.grade.to_string(),
        };
        let mut assembly = build(&self.stack, thread, closing, candidate, (head, body))?;
        assembly.title.clone_from(&self.title);
        assembly.bolt.product = product;
        assembly.bolt.grade = Some(grade);
        Ok(assembly)
    }
}

impl Assembly {
    /// Where everything is with a length that a search found in a stack, where there is no whole joint. A stack that ends
    /// in a tapped part has no nut.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a length that was not assessed for this stack, thread and nut.
    ///
    /// ```
    /// use shankline::assembly::Assembly;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = Nut::find(NutStyle::Iso4032, &thread)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let search = LengthSearch::new(&stack, &screws, NutEnd::of(nut)?, rules)?;
    /// let best = search.best()?.expect("a length fits");
    /// let assembly = Assembly::of_length(&stack, &screws, Some(nut), &best)?;
    /// assert_eq!(assembly.bolt.end.nominal, best.cut.unwrap().length);
    /// let other = Nut::find(NutStyle::Iso4033, &thread)?;
    /// assert!(Assembly::of_length(&stack, &screws, Some(other), &best).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_length(
        stack: &Stack,
        screws: &ScrewSeries,
        nut: Option<&Nut>,
        candidate: &Candidate,
    ) -> Result<Self, Error> {
        let nominal = candidate.screw.nominal;
        let sizes = (screws.head(nominal), screws.body_diameter(nominal));
        let closing = nut.map_or(Closing::None, Closing::Nut);
        let mut assembly = build(stack, &screws.thread(), closing, candidate, sizes)?;
        assembly.bolt.product = screws.product().to_string();
        Ok(assembly)
    }

    /// The sizes that a drawing of this assembly needs, and that nobody has read or stated.
    ///
    /// ```
    /// use shankline::prelude::*;
    #[doc = include_str!("../joint/whole/example.txt")]
    /// let assembly = joint.assembly(&joint.check()?.candidate)?;
    /// assert_eq!(assembly.not_read(), ["length of the point"]);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn not_read(&self) -> Vec<String> {
        let bolt = &self.bolt;
        let mut missing = Vec::new();
        let mut need = |name: &str, size: &Size| {
            if !size.is_read() {
                missing.push(name.into());
            }
        };
        need("height of the head", &bolt.head.height);
        match bolt.head.form {
            HeadForm::Hexagon => need("flats of the head", &bolt.head.across_flats),
            HeadForm::Socket => {
                need("diameter of the head", &bolt.head.diameter);
                need("socket of the head", &bolt.head.socket_flats);
            }
            HeadForm::Countersunk => need("diameter of the head", &bolt.head.diameter),
            HeadForm::Other => need("shape of the head", &Size::NOT_READ),
        }
        if bolt.shank_end > Length::default() {
            need("diameter of the shank", &bolt.body_diameter);
        }
        if bolt.cut.is_none() && !bolt.cut_at_fit_up {
            need("length of the point", &bolt.point);
        }
        match &self.end {
            End::Nut(nut) => need("flats of the nut", &nut.across_flats),
            End::Tapped(part) if part.depth.is_none() && !part.through => {
                need("depth of the tapped hole", &Size::NOT_READ);
            }
            End::Tapped(_) => {}
        }
        for layer in &self.layers {
            let name = &layer.name;
            match layer.ply {
                Some(number) => need(&format!("hole in ply {number}"), &layer.hole),
                None if layer.side.is_some() => {
                    need(&format!("diameter of \"{name}\""), &layer.outside);
                }
                None => {}
            }
        }
        for tube in &self.sleeves {
            need(&format!("diameters of \"{}\"", tube.name), &tube.outside);
        }
        missing.dedup();
        missing
    }
}

/// What the caller states of the head of an own bolt.
fn own_head(own: &OwnScrew) -> Head {
    match &own.countersunk {
        Some(head) => Head {
            height: Size::at_most(Some(head.height)),
            diameter: Size::at_least(Some(head.diameter)),
            cone_angle: Some(head.angle),
            ..Head::unread(HeadForm::Countersunk)
        },
        None => Head {
            height: Size::at_least(own.head_height),
            across_flats: Size::at_least(own.across_flats),
            bearing_diameter: Size::at_least(own.bearing_diameter),
            ..Head::unread(HeadForm::Other)
        },
    }
}

fn build(
    stack: &Stack,
    thread: &Thread,
    closing: Closing<'_>,
    candidate: &Candidate,
    (head, body_diameter): (Head, Size),
) -> Result<Assembly, Error> {
    let zero = Spread::exact(Length::default());
    let (layers, sleeves, face) = layers(stack, thread, candidate);
    let profile = thread.basic_profile();
    let tapped = stack.tapped_part();
    let counterbore = tapped.map_or(zero, |part| part.counterbore);
    let grip = face + counterbore;
    if !same(grip, candidate.grip) {
        return Err(other("grip", grip.nominal, candidate.grip.nominal));
    }
    if (thread.pitch() - candidate.pitch).abs() > SAME_LENGTH {
        return Err(other("pitch", thread.pitch(), candidate.pitch));
    }
    // The length search has the same sums, rounded in its own order.
    let at = Extent {
        from: candidate.grip,
        to: candidate.grip + candidate.nut_height,
    };
    let height = |own: Spread<Length>| {
        if same(own, candidate.nut_height) {
            Ok(())
        } else {
            Err(other(
                "height of the nut",
                own.nominal,
                candidate.nut_height.nominal,
            ))
        }
    };
    let end = match (tapped, closing) {
        (Some(part), Closing::None) => {
            if let Some(engagement) = part.engagement {
                height(Spread::exact(engagement))?;
            }
            End::Tapped(TappedBody::of(part, face, at, profile.nut_minor_diameter))
        }
        (None, Closing::Nut(nut)) => {
            height(nut.height()?)?;
            End::Nut(NutBody::of_row(nut, at))
        }
        (None, Closing::Own(own)) => {
            height(own.height)?;
            End::Nut(NutBody::of_own(own, at))
        }
        (Some(_), _) => {
            return Err(Error::Mismatch(
                "the stack ends in a tapped part: it has no nut".into(),
            ));
        }
        (None, Closing::None) => {
            return Err(Error::Mismatch(
                "a stack without a tapped part ends in a nut: give it".into(),
            ));
        }
    };
    let screw = &candidate.screw;
    let cut = candidate.cut.filter(|cut| cut.holds_window);
    let length = length_name(screw.nominal, thread.is_unified());
    let bolt = Bolt {
        designation: format!("{thread} x {length}"),
        product: String::new(),
        grade: None,
        thread: *thread,
        pitch: thread.pitch(),
        diameter: thread.nominal_diameter(),
        root_diameter: profile.bolt_root_diameter,
        head,
        body_diameter,
        shank_end: screw.body_length_min,
        thread_start: screw.grip_gaging_length_max,
        length: screw.length(),
        end: cut.map_or(screw.length(), |cut| cut.finished),
        point: Size::NOT_READ,
        cut,
        cut_at_fit_up: candidate.fits() && candidate.needs_cut && cut.is_none(),
        protrusion: cut.map_or(candidate.protrusion, |cut| cut.protrusion),
    };
    Ok(Assembly {
        title: String::new(),
        bolt,
        seat: stack.head_seat(),
        layers,
        sleeves,
        spot_face_under_nut: stack.spot_face_under_nut(),
        end,
        planes: stack.planes_of(candidate).collect(),
        grip: candidate.grip,
        jam_margin: candidate.jam_margin,
    })
}

#[cold]
fn other(what: &str, own: Length, candidate: Length) -> Error {
    Error::Mismatch(format!(
        "the length was assessed for another joint: its {what} is {}, and that of this one is {}",
        shown(candidate, UnitSystem::Si),
        shown(own, UnitSystem::Si)
    ))
}

/// Everything between the head and the face of the nut, or of the tapped part, and where that face is.
fn layers(
    stack: &Stack,
    thread: &Thread,
    candidate: &Candidate,
) -> (Vec<Layer>, Vec<Tube>, Spread<Length>) {
    let mut x = Spread::exact(Length::default());
    let (mut layers, mut sleeves) = (Vec::with_capacity(16), Vec::new());
    // What a part takes from where the one before it ends.
    let next = |x: &mut Spread<Length>, size: Spread<Length>| {
        let at = Extent {
            from: *x,
            to: *x + size,
        };
        *x = at.to;
        at
    };
    let [under_head, under_nut] = stack.washers_of(candidate);
    let washers = |washers: &mut dyn Iterator<Item = (&crate::joint::JointWasher, usize)>,
                   side,
                   x: &mut Spread<Length>,
                   layers: &mut Vec<Layer>| {
        for (washer, count) in washers {
            for _ in 0..count {
                let at = next(x, washer.thickness);
                layers.push(Layer::washer(washer, thread, side, at));
            }
        }
    };
    washers(&mut { under_head }, Side::Head, &mut x, &mut layers);
    x = x.less(stack.head_seat().depth());
    // Where the sleeve that is open now ends.
    let mut sleeve_end = None;
    for (ply, number) in stack.plies().iter().zip(1..) {
        if let Some(sleeve) = stack.sleeves().iter().find(|own| own.first_ply == number) {
            let at = Extent {
                from: x,
                to: x + stack.clamped_sleeve(sleeve),
            };
            sleeve_end = Some((sleeve.last_ply, at.to));
            sleeves.push(Tube {
                name: sleeve.name.clone(),
                first_ply: sleeve.first_ply,
                last_ply: sleeve.last_ply,
                length: sleeve.length,
                at,
                outside: Size::NOT_READ,
                inside: Size::NOT_READ,
            });
        }
        let at = next(&mut x, ply.clamped());
        layers.push(Layer::ply(ply, number, at));
        if let Some((last, end)) = sleeve_end {
            if last == number {
                (x, sleeve_end) = (end, None);
            }
        }
        if let Some(gap) = stack.gap_after(number) {
            let at = next(&mut x, gap);
            layers.push(Layer::gap(gap, at));
        }
    }
    if let Some(depth) = stack.spot_face_under_nut() {
        x = x.less(depth);
    }
    washers(&mut { under_nut }, Side::Nut, &mut x, &mut layers);
    (layers, sleeves, x)
}
