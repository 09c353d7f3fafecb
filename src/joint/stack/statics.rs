//! What each ply pulls, and what each shear plane carries for it.

use alloc::{format, string::String, vec::Vec};

use super::{JointPly, Parts};
use crate::error::{Allowed, Error, out_of_range};
use crate::units::Length;

/// Pulls that add up to less than this are in balance: shares such as 0.333 are rounded by whoever writes them.
const ROUNDING: f64 = 2e-3;

/// The shares of the load across the axis.
pub(super) struct Statics {
    /// What each ply pulls, and after the plies the tapped part, if there is one: plus one way, minus the other.
    pub(super) pulls: Vec<f64>,
    /// What each shear plane carries, without sign.
    pub(super) shares: Vec<f64>,
}

impl Parts {
    /// What each ply pulls and each plane carries.
    ///
    /// The force that a cut through the bolt carries is the sum of all pulls on one side of it. Without pulls of
    /// their own the plies between two planes pull against those beyond, and all planes between them are loaded
    /// alike; plies on the same side of a plane share by thickness, so that their bearing stresses are equal.
    pub(super) fn statics(&self) -> Result<Statics, Error> {
        let mut pulls: Vec<f64> = if self.plies.iter().any(|ply| !is_free(ply)) {
            self.stated_pulls()?
        } else {
            self.alternate_pulls()?
        };
        let sum: f64 = pulls.iter().sum();
        if self.tapped_part.is_some() {
            pulls.push(-sum);
        } else if sum.abs() > ROUNDING {
            return Err(Error::Mismatch(format!(
                "what the plies pull adds up to {sum:.3} of the load, not to nothing: they are not in balance"
            )));
        }
        // Shares of the load across: one way all of it is pulled, or the rest would go nowhere.
        let one_way: f64 = pulls.iter().filter(|pull| **pull > 0.0).sum();
        if pulls.iter().any(|pull| *pull != 0.0) && one_way < 1.0 - ROUNDING {
            return Err(Error::Mismatch(format!(
                "the plies pull {one_way:.3} of the load one way, not all of it"
            )));
        }
        self.one_way_between_planes(&pulls)?;
        let mut at = 0.0;
        let mut sums = pulls.iter().map(|pull| {
            at += pull;
            at
        });
        let (mut shares, mut done) = (Vec::with_capacity(self.shear_planes.len()), 0);
        for &plane in &self.shear_planes {
            let cut = sums.nth(plane - done - 1).unwrap_or(0.0);
            done = plane;
            // What is left of rounded shares is no load.
            shares.push(if cut.abs() < 1e-12 { 0.0 } else { cut.abs() });
        }
        Ok(Statics { pulls, shares })
    }

    /// The pulls as they stand on the plies, all of them.
    fn stated_pulls(&self) -> Result<Vec<f64>, Error> {
        let mut pulls = Vec::with_capacity(self.plies.len() + 1);
        for ply in &self.plies {
            let Some(pull) = ply.pull else {
                return Err(Error::Mismatch(format!(
                    "\"{}\" does not say what it pulls, and others do: each ply says it, or none but packing",
                    ply.name
                )));
            };
            if !(-1.0..=1.0).contains(&pull) {
                let name: String = format!("pull of \"{}\"", ply.name);
                return Err(out_of_range(
                    name,
                    pull,
                    Allowed::FromTo((-1.0).into(), 1.0.into()),
                ));
            }
            pulls.push(pull);
        }
        Ok(pulls)
    }

    /// Groups of plies between planes pull in turn; packing pulls nothing and passes the load on.
    fn alternate_pulls(&self) -> Result<Vec<f64>, Error> {
        let groups = self.groups();
        let thickness = |group: &core::ops::Range<usize>| {
            let plies = self.plies.get(group.clone()).unwrap_or_default();
            let pulling = plies.iter().filter(|ply| ply.pull.is_none());
            pulling.fold(Length::default(), |sum, ply| sum + ply.clamped().min)
        };
        // The tapped part pulls where a plane lies at its face: then its group has no plies, as no other has.
        let pulling: Vec<bool> = (groups.iter())
            .map(|group| thickness(group) > Length::default() || group.is_empty())
            .collect();
        let mut pulls = alloc::vec![0.0; self.plies.len()];
        if self.shear_planes.is_empty() {
            return Ok(pulls);
        }
        let count = pulling.iter().filter(|&&pulls| pulls).count();
        if count < 2 {
            return Err(Error::Mismatch(
                "no two plies pull against each other: the plies on one side of every shear plane are packing".into(),
            ));
        }
        // Every pair of neighbours that pull has one plane's share between them.
        // At most 1000 plies: exact.
        #[allow(clippy::cast_precision_loss)]
        let share = 1.0 / (count - 1) as f64;
        let (mut sign, mut number) = (1.0, 0);
        for (group, pulls_at_all) in groups.iter().zip(pulling) {
            if !pulls_at_all {
                continue;
            }
            number += 1;
            let planes = if number == 1 || number == count {
                1.0
            } else {
                2.0
            };
            let whole = thickness(group);
            for index in group.clone() {
                if let (Some(ply), Some(pull)) = (self.plies.get(index), pulls.get_mut(index)) {
                    if ply.pull.is_none() {
                        *pull = sign * planes * share * (ply.clamped().min / whole).value;
                    }
                }
            }
            sign = -sign;
        }
        Ok(pulls)
    }

    /// The plies between planes, as ranges of their indices; behind the last plane none if it lies at the face of
    /// a tapped part.
    fn groups(&self) -> Vec<core::ops::Range<usize>> {
        let mut groups = Vec::with_capacity(self.shear_planes.len() + 1);
        let mut from = 0;
        for &plane in &self.shear_planes {
            groups.push(from..plane);
            from = plane;
        }
        groups.push(from..self.plies.len());
        groups
    }

    /// Plies that pull against each other have a plane between them, or the bolt is cut where nobody looks.
    fn one_way_between_planes(&self, pulls: &[f64]) -> Result<(), Error> {
        for group in self.groups() {
            let mut inside = group.filter_map(|at| Some((at, *pulls.get(at)?)));
            let Some((_, first)) = inside.find(|(_, pull)| *pull != 0.0) else {
                continue;
            };
            if let Some((at, _)) = inside.find(|(_, pull)| pull * first < 0.0) {
                let name = self.plies.get(at).map_or("", |ply| ply.name.as_str());
                return Err(Error::Mismatch(format!(
                    "\"{name}\" pulls against a ply before it, and no shear plane lies between them"
                )));
            }
        }
        Ok(())
    }
}

/// Whether a ply leaves its pull to the order of the stack, or is packing in it.
fn is_free(ply: &JointPly) -> bool {
    ply.pull.is_none_or(|pull| pull == 0.0)
}
