//! The stress that a load comes to on its area.

use super::StressedArea;
use crate::derivation::{Derivation, Step};
use crate::error::{Error, sane_stress};
use crate::tables::methods;
use crate::units::{Force, Stress};

/// A stress under a load.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::stressed::StressedArea;
/// # fn main() -> Result<(), shankline::Error> {
/// let pin = StressedArea::shear_of_pins(millimetres(10.0), 1, 1)?.under(newtons(10e3))?;
/// assert!((pin.factor(megapascals(382.0))? - 3.0).abs() < 0.001);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlainStress {
    /// What the load is spread over.
    pub stressed: StressedArea,
    /// The load F, all bolts together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// The stress F / A.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
}

impl PlainStress {
    /// The factor of safety against a strength: n = S / (F / A).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not from 1 Pa to 1e6 GPa.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// let stress = StressedArea::tension_of_rods(inches(0.5), 2).unwrap().under(pounds_force(8000.0));
    /// assert!((stress.unwrap().factor(ksi(36.0)).unwrap() - 1.767).abs() < 0.001);
    /// ```
    pub fn factor(&self, strength: Stress) -> Result<f64, Error> {
        sane_stress("strength", strength)?;
        Ok((strength / self.stress).value)
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::{BoltSection, StressedArea};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = StressedArea::shear(&"M16".parse()?, BoltSection::Core, 2, 1)?;
    /// bolt.under(newtons(21e3))?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let name = self.stressed.stressing.name();
        self.stressed.derivation().step(
            Step::new(name, "s", "F / Az", self.stress)
                .with("F", self.load)
                .with("Az", self.stressed.area)
                .source(methods::STATICS_AVERAGE_STRESS),
        )
    }
}
