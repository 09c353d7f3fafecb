//! The working of a candidate length.

use super::Candidate;
use crate::derivation::{Derivation, Step};
use crate::tables::methods;

impl Candidate {
    /// The working: whether the bolt clamps, and how far it comes through the nut, or beyond the engagement
    /// wanted in a tapped part, in the worst case.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let derivation = selection.best().unwrap().derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps()[1].formula(), "Gmin - LG");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (grip, nut, screw) = (self.grip, self.nut_height, self.screw);
        // A tapped part has one wanted engagement for the heights of a nut.
        let (clear, least, greatest) = if self.ends_in_tapped_part {
            (
                "clear threads before the run-out",
                "least length beyond the wanted engagement: shortest bolt, thickest stack",
                "greatest length beyond the wanted engagement: longest bolt, thinnest stack",
            )
        } else {
            (
                "clear threads under the nut",
                "least protrusion: shortest bolt, thickest stack, highest nut",
                "greatest protrusion: longest bolt, thinnest stack, lowest nut",
            )
        };
        let mut derivation = Derivation::new("Length of the bolt")
            .step(
                Step::new(
                    "transition between sure shank and sure thread",
                    "Y",
                    "LG - LB",
                    screw.transition_length(),
                )
                .with("LG", screw.grip_gaging_length_max)
                .with("LB", screw.body_length_min),
            )
            .step(
                Step::new(
                    "jam margin: thinnest stack beyond the latest start of thread",
                    "J",
                    "Gmin - LG",
                    self.jam_margin,
                )
                .with("Gmin", grip.min)
                .with("LG", screw.grip_gaging_length_max)
                .source(methods::WORST_CASE_ARITHMETIC),
            )
            .step(
                Step::new(clear, "c", "J / P", self.clear_threads)
                    .with("J", self.jam_margin)
                    .with("P", self.pitch),
            )
            .step(
                Step::new(least, "pmin", "Lmin - Gmax - mmax", self.protrusion.min)
                    .with("Lmin", screw.min)
                    .with("Gmax", grip.max)
                    .with("mmax", nut.max),
            )
            .step(
                Step::new(greatest, "pmax", "Lmax - Gmin - mmin", self.protrusion.max)
                    .with("Lmax", screw.max)
                    .with("Gmin", grip.min)
                    .with("mmin", nut.min),
            );
        if let Some(cut) = self.cut {
            derivation = derivation
                .step(
                    Step::new("removed by the cut", "r", "L - Lc", cut.removed)
                        .with("L", screw.nominal)
                        .with("Lc", cut.length),
                )
                .step(
                    Step::new("thread left by the cut", "b", "Lc - LG", cut.thread_left)
                        .with("Lc", cut.length)
                        .with("LG", screw.grip_gaging_length_max),
                );
        }
        derivation
    }
}

#[cfg(test)]
mod tests {
    use crate::joint::{LengthRules, LengthSearch, NutEnd, Stack};
    use crate::parts::{Nut, NutStyle, ScrewProduct, ScrewSeries};
    use crate::spread::PlusMinus;
    use crate::units::{UnitSystem, inches};

    /// Every candidate of a clevis, accepted or not, cut or not: the working gives its numbers again.
    #[test]
    fn every_working_evaluates() {
        let thread = "3/4-10 UNC".parse().unwrap();
        let ear = inches(0.5).plus_minus(inches(0.015));
        let washer = inches(0.134).plus_minus(inches(0.026));
        let stack = Stack::builder()
            .ply("ear", ear)
            .ply("tongue", inches(1.0).plus_minus(inches(0.02)))
            .ply("ear", ear)
            .shear_planes([1, 2])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap();
        let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread).unwrap();
        let nut = NutEnd::of(Nut::find(NutStyle::InsertLockNe, &thread).unwrap()).unwrap();
        let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
        let selection = LengthSearch::new(&stack, &screws, nut, rules)
            .unwrap()
            .run()
            .unwrap();
        let mut with_cut = 0;
        for candidate in selection.accepted().iter().chain(selection.rejected()) {
            let derivation = candidate.derivation();
            derivation.check().unwrap();
            assert_eq!(
                derivation.steps().len(),
                if candidate.cut.is_some() { 7 } else { 5 }
            );
            with_cut += usize::from(candidate.cut.is_some());
        }
        assert!(with_cut > 0);
    }
}
