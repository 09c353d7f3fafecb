//! The lengths of a stack one by one, from the head to the nut.

use super::{HeadSeat, JointPly, Parts, Sleeve};
use crate::spread::Spread;
use crate::units::Length;

/// One length of a stack, counted from the head.
#[derive(Clone, Copy, Debug)]
pub(in crate::joint) struct Term<'a> {
    pub(in crate::joint) name: &'a str,
    pub(in crate::joint) size: Spread<Length>,
    /// Whether it adds to the distance; a recess takes it off.
    pub(in crate::joint) adds: bool,
}

impl<'a> Term<'a> {
    const fn plus(name: &'a str, size: Spread<Length>) -> Self {
        let adds = true;
        Self { name, size, adds }
    }

    const fn minus(name: &'a str, size: Spread<Length>) -> Self {
        let adds = false;
        Self { name, size, adds }
    }

    pub(super) fn added_to(self, x: Spread<Length>) -> Spread<Length> {
        if self.adds {
            x + self.size
        } else {
            x.less(self.size)
        }
    }
}

impl Parts {
    /// The sleeve that lies in a ply, counted from 1.
    pub(super) fn sleeve_in(&self, ply: usize) -> Option<&Sleeve> {
        let around = |sleeve: &&Sleeve| (sleeve.first_ply..=sleeve.last_ply).contains(&ply);
        self.sleeves.iter().find(around)
    }

    pub(super) fn gap_after(&self, ply: usize) -> Option<Spread<Length>> {
        let found = self.gaps.iter().find(|gap| gap.after_ply == ply);
        found.map(|gap| gap.width)
    }

    pub(super) fn terms(&self, thru_ply: usize) -> impl Iterator<Item = Term<'_>> {
        let plies = self.plies.iter().take(thru_ply).zip(1..);
        let plies = plies.flat_map(|(ply, number)| self.terms_of(ply, number));
        self.terms_at_head().chain(plies.flatten())
    }

    /// What lies between the bearing face of the head and the first ply.
    pub(super) fn terms_at_head(&self) -> impl Iterator<Item = Term<'_>> {
        let recess = match self.head_seat {
            HeadSeat::Flat => None,
            seat => Some(Term::minus("recess of the head", seat.depth())),
        };
        let washers = self.washers_under_head.iter();
        washers
            .map(|washer| Term::plus(&washer.name, washer.thickness))
            .chain(recess)
    }

    /// A ply and the gap after it; a sleeve stands for the plies and gaps around it, at the last of them.
    pub(super) fn terms_of<'a>(
        &'a self,
        ply: &'a JointPly,
        number: usize,
    ) -> [Option<Term<'a>>; 2] {
        match self.sleeve_in(number) {
            Some(sleeve) if number == sleeve.last_ply => {
                let clamped = self.clamped_sleeve(sleeve);
                [
                    Some(Term::plus(&sleeve.name, clamped)),
                    self.gap_term(number),
                ]
            }
            Some(_) => [None, None],
            None => [
                Some(Term::plus(&ply.name, ply.clamped())),
                self.gap_term(number),
            ],
        }
    }

    pub(super) fn gap_term(&self, after_ply: usize) -> Option<Term<'_>> {
        let width = self.gap_after(after_ply)?;
        Some(Term::plus("gap", width))
    }

    pub(super) fn terms_at_nut(&self) -> impl Iterator<Item = Term<'_>> {
        let tapped = self.tapped_part.as_ref();
        let washers = self.other_washers_under_nut.iter();
        washers
            .map(|washer| Term::plus(&washer.name, washer.thickness))
            .chain(
                self.spot_face_under_nut
                    .map(|depth| Term::minus("spot face under the nut", depth)),
            )
            .chain(tapped.map(|part| Term::plus("counterbore of the thread", part.counterbore)))
    }

    /// The plies and gaps around a sleeve.
    pub(super) fn around_sleeve(&self, sleeve: &Sleeve) -> Spread<Length> {
        let zero = Spread::exact(Length::default());
        (sleeve.first_ply..=sleeve.last_ply).fold(zero, |sum, number| {
            let ply = number
                .checked_sub(1)
                .and_then(|index| self.plies.get(index));
            let gap = self.gap_after(number).filter(|_| number < sleeve.last_ply);
            sum + ply.map_or(zero, JointPly::clamped) + gap.unwrap_or(zero)
        })
    }

    /// What a sleeve and the plies around it are together: whichever is longer is clamped.
    pub(super) fn clamped_sleeve(&self, sleeve: &Sleeve) -> Spread<Length> {
        let (tube, plies) = (sleeve.length, self.around_sleeve(sleeve));
        Spread {
            min: tube.min.max(plies.min),
            nominal: tube.nominal.max(plies.nominal),
            max: tube.max.max(plies.max),
        }
    }

    pub(super) fn bearing_thickness(&self, ply: usize) -> Option<Length> {
        let layer = self.plies.get(ply.checked_sub(1)?)?;
        if self.sleeve_in(ply).is_some() {
            return None;
        }
        let mut thickness = layer.clamped().min;
        if ply == 1 {
            thickness -= match self.head_seat {
                HeadSeat::Flat => Length::default(),
                HeadSeat::Recessed { depth } => depth.max,
                HeadSeat::Countersunk {
                    below_flush,
                    head_height,
                } => below_flush.max + 0.5 * head_height,
            };
        }
        if ply == self.plies.len() {
            let depth = self.spot_face_under_nut;
            thickness -= depth.map_or(Length::default(), |depth| depth.max);
        }
        Some(thickness)
    }
}

pub(super) fn times(count: usize, thickness: Spread<Length>) -> Spread<Length> {
    // Washer counts are small: exact.
    #[allow(clippy::cast_precision_loss)]
    let count = count as f64;
    thickness.map(|thickness| count * thickness)
}
