//! The working of a cut plan.

use alloc::format;

use super::{CutPlan, PlannedCut};
use crate::derivation::{Derivation, Step};
use crate::tables::methods;

impl CutPlan {
    /// The working: whether one length can hold the window, and where the marks go.
    ///
    /// ```
    /// use shankline::{joint::CutPlan, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let plan = CutPlan::new(selection.best().unwrap(), &thread, nut, rules)?;
    /// let derivation = plan.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps()[0].symbol(), "W");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (grip, nut, u) = (self.grip, self.nut_height, self.cut_tolerance);
        let (mark_label, greatest) = if self.ends_in_tapped_part {
            (
                "mark on the measured stack, beyond the wanted engagement",
                "greatest length beyond the wanted engagement after that cut",
            )
        } else {
            (
                "mark at fit-up, from the face of the nut",
                "greatest protrusion after the cut at fit-up",
            )
        };
        let mut derivation = Derivation::new(format!("Cut: {}", self.method));
        if let (Some(margin), Some(limit)) = (self.window_margin, self.protrusion_max) {
            derivation = derivation.step(
                Step::new(
                    "window left for one fixed length",
                    "W",
                    "(plim - preq) - (Gmax - Gmin) - (mmax - mmin) - 2 * u",
                    margin,
                )
                .with("plim", limit)
                .with("preq", self.protrusion_min)
                .with("Gmax", grip.max)
                .with("Gmin", grip.min)
                .with("mmax", nut.max)
                .with("mmin", nut.min)
                .with("u", u)
                .source(methods::WORST_CASE_ARITHMETIC),
            );
        }
        if let Some(cut) = self.fixed {
            derivation.append(self.derivation_of_fixed(&cut));
        }
        if let Some(cut) = self.at_fit_up {
            let mark = cut.mark_from_nut.nominal;
            derivation = derivation
                .step(
                    Step::new(mark_label, "a", "preq + u", mark)
                        .with("preq", self.protrusion_min)
                        .with("u", u),
                )
                .step(
                    Step::new(greatest, "pmax", "a + u", cut.protrusion.max)
                        .with("a", mark)
                        .with("u", u),
                );
        }
        derivation.step(Step::given(
            "chamfer, half of nominal diameter less root diameter",
            "c",
            self.chamfer,
        ))
    }

    fn derivation_of_fixed(&self, cut: &PlannedCut) -> Derivation {
        let (grip, nut) = (self.grip, self.nut_height);
        let (mark_label, least_label, greatest) = if self.ends_in_tapped_part {
            (
                "mark beyond the wanted engagement, nominal stack",
                "least length beyond the wanted engagement after the cut",
                "greatest length beyond the wanted engagement after the cut",
            )
        } else {
            (
                "mark from the face of the nut, nominal stack",
                "least protrusion after the cut",
                "greatest protrusion after the cut",
            )
        };
        let length = cut.mark_from_head.nominal;
        let least = grip.max + nut.max + self.protrusion_min + self.cut_tolerance;
        Derivation::new("Fixed cut")
            .step(
                Step::new("least cut length", "Lw", "Gmax + mmax + preq + u", least)
                    .with("Gmax", grip.max)
                    .with("mmax", nut.max)
                    .with("preq", self.protrusion_min)
                    .with("u", self.cut_tolerance),
            )
            .step(Step::given(
                "cut length, rounded up to the next step of the rule",
                "Lc",
                length,
            ))
            .step(
                Step::new(mark_label, "a", "Lc - G - m", cut.mark_from_nut.nominal)
                    .with("Lc", length)
                    .with("G", grip.nominal)
                    .with("m", nut.nominal),
            )
            .step(
                Step::new(
                    least_label,
                    "pmin",
                    "Lmin - Gmax - mmax",
                    cut.protrusion.min,
                )
                .with("Lmin", cut.finished.min)
                .with("Gmax", grip.max)
                .with("mmax", nut.max),
            )
            .step(
                Step::new(greatest, "pmax", "Lmax - Gmin - mmin", cut.protrusion.max)
                    .with("Lmax", cut.finished.max)
                    .with("Gmin", grip.min)
                    .with("mmin", nut.min),
            )
            .step(
                Step::new("thread left", "Lt", "Lmin - LG", cut.thread_left)
                    .with("Lmin", cut.finished.min)
                    .with("LG", self.thread_start),
            )
    }
}
