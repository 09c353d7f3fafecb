//! Factors for the stretching of a nut and the bending of threads.

use super::{StripMethod, StrippingStrength};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Method;
use crate::units::Length;

/// Factors of Alexander on the shear areas; all 1 for methods without them.
///
/// ```
/// use shankline::{prelude::*, strength::strip::AlexanderFactors};
/// # fn main() -> Result<(), shankline::Error> {
/// let factors = AlexanderFactors::new(Some(millimetres(24.0)), millimetres(16.0), 1.0)?;
/// assert!((factors.dilation - 0.84).abs() < 1e-12);
/// assert!((factors.nut_bending - 0.897).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AlexanderFactors {
    /// C1, the nut stretches under the wedging of the threads.
    pub dilation: f64,
    /// C2, the bolt threads bend.
    pub bolt_bending: f64,
    /// C3, the nut threads bend.
    pub nut_bending: f64,
}

impl AlexanderFactors {
    pub(super) const NONE: Self = Self {
        dilation: 1.0,
        bolt_bending: 1.0,
        nut_bending: 1.0,
    };

    /// The factors for a nut of a width across flats (none for a tapped block) on a nominal diameter, and
    /// a ratio Rs. Recalled: see the [module](super).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a nut narrower than 1.4 d and for Rs below 0.4 or not finite.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::AlexanderFactors};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let block = AlexanderFactors::new(None, millimetres(16.0), 0.5)?;
    /// assert!((block.dilation - 1.0).abs() < 1e-12 && block.nut_bending > 1.0);
    /// assert!(AlexanderFactors::new(None, millimetres(16.0), 0.3).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(
        width_across_flats: Option<Length>,
        nominal_diameter: Length,
        strength_ratio: f64,
    ) -> Result<Self, Error> {
        positive("nominal diameter", nominal_diameter)?;
        let dilation = match width_across_flats {
            None => 1.0,
            Some(width) => {
                positive("width across flats", width)?;
                let x = (width / nominal_diameter).value;
                if x < 1.4 {
                    let least = 1.4 * nominal_diameter;
                    let allowed = Allowed::AtLeast(least.into());
                    return Err(out_of_range("width across flats", width, allowed));
                }
                let x = x.min(1.9);
                3.8 * x - x * x - 2.61
            }
        };
        if !(0.4..f64::INFINITY).contains(&strength_ratio) {
            let allowed = Allowed::AtLeast(0.4.into());
            let quantity = "ratio Rs of the shear strengths of nut and bolt threads";
            return Err(out_of_range(quantity, strength_ratio, allowed));
        }
        let bolt_bending = if strength_ratio <= 1.0 {
            0.897
        } else {
            let r = strength_ratio.min(2.2);
            5.594 + r * (-13.682 + r * (14.107 + r * (-6.057 + r * 0.9353)))
        };
        let nut_bending = if strength_ratio >= 1.0 {
            0.897
        } else {
            let r = strength_ratio;
            0.728 + r * (1.769 + r * (-2.896 + r * 1.296))
        };
        Ok(Self {
            dilation,
            bolt_bending,
            nut_bending,
        })
    }
}

/// How the factors of a result follow from its nut and its ratio.
pub(super) fn derivation(result: &StrippingStrength, source: &'static Method) -> Derivation {
    let (factors, areas) = (result.factors, &result.areas);
    let ratio = result.strength_ratio;
    let width = match result.method {
        StripMethod::Alexander { width_across_flats }
        | StripMethod::Vdi2230 { width_across_flats } => width_across_flats,
        _ => None,
    };
    let mut derivation = Derivation::new("Factors").step(
        Step::new(
            "ratio of nut to bolt threads",
            "Rs",
            "taun * An / (taub * As)",
            ratio,
        )
        .with("taun", result.nut_shear_strength)
        .with("An", areas.nut_threads)
        .with("taub", result.bolt_shear_strength)
        .with("As", areas.bolt_threads)
        .source(source),
    );
    if let Some(width) = width {
        derivation = derivation.step(
            Step::new(
                "stretching of the nut",
                "C1",
                "3.8 * min(s / d, 1.9) - min(s / d, 1.9)^2 - 2.61",
                factors.dilation,
            )
            .with("s", width)
            .with("d", areas.thread.nominal_diameter())
            .source(source),
        );
    }
    let bolt = if ratio <= 1.0 {
        Step::given("bending of the bolt threads", "C2", factors.bolt_bending)
    } else {
        Step::new(
            "bending of the bolt threads",
            "C2",
            "5.594 - 13.682 * r + 14.107 * r^2 - 6.057 * r^3 + 0.9353 * r^4",
            factors.bolt_bending,
        )
        .with("r", ratio.min(2.2))
    };
    let nut = if ratio >= 1.0 {
        Step::given("bending of the nut threads", "C3", factors.nut_bending)
    } else {
        Step::new(
            "bending of the nut threads",
            "C3",
            "0.728 + 1.769 * Rs - 2.896 * Rs^2 + 1.296 * Rs^3",
            factors.nut_bending,
        )
        .with("Rs", ratio)
    };
    derivation
        .step(bolt.source(source))
        .step(nut.source(source))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::millimetres;

    /// Where the polynomials hand over to constants they agree to the digits the constants have.
    #[test]
    fn factors_are_continuous() {
        let at = |ratio| AlexanderFactors::new(None, millimetres(10.0), ratio).unwrap();
        assert!((at(1.0 + 1e-9).bolt_bending - 0.897).abs() < 5e-4);
        assert!((at(1.0 - 1e-9).nut_bending - 0.897).abs() < 5e-4);
        assert!((at(2.2).bolt_bending - 1.187).abs() < 5e-4);
        assert!((at(9.0).bolt_bending - at(2.2).bolt_bending).abs() < 1e-12);
        let wide = |share: f64| {
            let width = Some(millimetres(10.0 * share));
            AlexanderFactors::new(width, millimetres(10.0), 1.0)
        };
        assert!((wide(1.9).unwrap().dilation - 1.0).abs() < 1e-12);
        assert!((wide(3.0).unwrap().dilation - 1.0).abs() < 1e-12);
        assert!((wide(1.4).unwrap().dilation - 0.75).abs() < 1e-12);
        assert!(wide(1.39).is_err());
    }

    /// At a ratio of exactly 1 both factors are the constant 0.897, not what the polynomials give there, 0.8973 and 0.897.
    #[test]
    fn the_constants_hold_at_one() {
        let found = AlexanderFactors::new(None, millimetres(10.0), 1.0).unwrap();
        assert!((found.bolt_bending - 0.897).abs() < 1e-12);
        assert!((found.nut_bending - 0.897).abs() < 1e-12);
    }

    /// The working has the stretching of the nut where a width across flats is given, a constant on the side of 1 where the factor
    /// is constant, and the polynomial on the other.
    #[test]
    fn workings_on_both_sides_of_one() {
        use crate::strength::strip::{ThreadMaterial, stripping};
        use crate::thread::{Thread, strip::EngagedLength};
        use crate::units::megapascals;
        let thread: Thread = "M12".parse().unwrap();
        let areas = thread
            .strip_areas_basic(EngagedLength::new(millimetres(10.0)).unwrap())
            .unwrap();
        let bolt = ThreadMaterial::new(megapascals(800.0), None).unwrap();
        let source = crate::tables::methods::STATICS;
        for width_across_flats in [None, Some(millimetres(18.0))] {
            for method in [
                StripMethod::Alexander { width_across_flats },
                StripMethod::Vdi2230 { width_across_flats },
            ] {
                let bolt = bolt.clone().with_shear_ratio(0.6).unwrap();
                let mut found = stripping(&areas, &bolt, &bolt, method).unwrap();
                for (ratio, polynomials) in [
                    (0.9, [false, true]),
                    (1.0, [false, false]),
                    (1.1, [true, false]),
                ] {
                    found.strength_ratio = ratio;
                    let working = derivation(&found, source);
                    let symbols: alloc::vec::Vec<&str> =
                        working.steps().iter().map(Step::symbol).collect();
                    let wanted: &[&str] = if width_across_flats.is_some() {
                        &["Rs", "C1", "C2", "C3"]
                    } else {
                        &["Rs", "C2", "C3"]
                    };
                    assert_eq!(symbols, wanted);
                    let of = |symbol| {
                        let step = working.steps().iter().find(|step| step.symbol() == symbol);
                        step.is_some_and(|step| !step.terms().is_empty())
                    };
                    assert_eq!([of("C2"), of("C3")], polynomials, "{ratio}");
                }
            }
        }
    }
}
