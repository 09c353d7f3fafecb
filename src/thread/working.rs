//! The working behind the areas of a thread.

use alloc::format;

use super::Thread;
use crate::derivation::{Derivation, Step};
use crate::tables::methods;

impl Thread {
    /// The working of the three areas a bolt is checked on: shank, tensile stress area, root.
    ///
    /// The fractions of H are those of [`area`](super::area); inch and metric ones differ.
    ///
    /// ```
    /// use shankline::derivation::Format;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let derivation = "3/4-10 UNC".parse::<Thread>()?.area_derivation();
    /// derivation.check()?;
    /// let text = derivation.render(Format::Text, UnitSystem::UsCustomary).to_string();
    /// assert!(text.contains("At = π / 4 × (d - 9 / 8 × H)^2"));
    /// assert!(text.contains("= 0.3345 in²"));
    /// # Ok(())
    /// # }
    /// ```
    pub fn area_derivation(&self) -> Derivation {
        let (tensile, tensile_source, root, root_source) = if self.is_unified() {
            (
                "pi / 4 * (d - 9 / 8 * H)^2",
                methods::ASME_B1_1_FORMULA_FOR_THE_TENSILE_STRESS_AREA,
                "pi / 4 * (d - 3 / 2 * H)^2",
                methods::MACHINERYS_HANDBOOK_SECTION_AT_MINOR_DIAMETER,
            )
        } else {
            (
                "pi / 4 * (d - 13 / 12 * H)^2",
                methods::ISO_898_1_NOMINAL_STRESS_AREA,
                "pi / 4 * (d - 17 / 12 * H)^2",
                methods::ISO_68_1_ROOT_ROUNDED_AT_H_6,
            )
        };
        let (d, pitch) = (self.nominal_diameter(), self.pitch());
        let height = super::area::H_PER_PITCH * pitch;
        let section = |what, symbol, formula, value, source| {
            Step::new(what, symbol, formula, value)
                .with("d", d)
                .with("H", height)
                .source(source)
        };
        Derivation::new(format!("Areas of {self}"))
            .step(Step::given("nominal diameter", "d", d))
            .step(Step::given("pitch", "P", pitch))
            .step(Step::new("sharp height", "H", "sqrt(3) / 2 * P", height).with("P", pitch))
            .step(Step::new("shank area", "A", "pi / 4 * d^2", self.shank_area()).with("d", d))
            .step(section(
                "tensile stress area",
                "At",
                tensile,
                self.tensile_stress_area(),
                tensile_source,
            ))
            .step(section(
                "area at the root",
                "Ar",
                root,
                self.minor_area(),
                root_source,
            ))
    }
}
