//! Lengths of structural bolts: ASME B18.2.6 (ASTM F3125) and EN 14399-4.

use alloc::format;

use super::{ScrewLength, ScrewSeries};
use crate::error::Error;
use crate::math;
use crate::source::Basis;
use crate::tables::bolts::StructuralBolt;
use crate::units::{Length, SAME_LENGTH, UnitSystem, inches, millimetres, shown};

/// Inch structural bolts are ordered in these steps: the specifications round lengths up to them.
pub(super) const STEP: Length = inches(0.25);
/// Longer ones are made to order.
const LONGEST_STOCKED: Length = inches(8.0);

impl ScrewSeries {
    /// LG = L - LT, LB = LG - Y. Lengths too short for a body are refused: they are threaded further than
    /// the standard's thread length.
    pub(super) fn structural_length(
        &self,
        bolt: &StructuralBolt,
        nominal: Length,
    ) -> Result<ScrewLength, Error> {
        let (thread_length, transition_length) = exact_lengths(bolt);
        let grip_gaging_length_max = nominal - thread_length;
        let body_length_min = grip_gaging_length_max - transition_length;
        let shortest = shortest(bolt);
        if nominal < shortest - SAME_LENGTH {
            let system = if bolt.pitch.is_some() {
                UnitSystem::Si
            } else {
                UnitSystem::UsCustomary
            };
            return Err(Error::NotInTable {
                table: "the table of structural bolts",
                wanted: format!("{self} {} long", shown(nominal, system)),
                available: format!("bolts with a body begin at {}", shown(shortest, system)),
            });
        }
        let limits = bolt.length_limits(nominal)?;
        ScrewLength {
            nominal,
            min: limits.min,
            max: limits.max,
            body_length_min,
            grip_gaging_length_max,
            fully_threaded: false,
        }
        .checked()
    }
}

/// Thread and transition length. ASME B18.2.6 prints eighths and thirty-seconds of an inch in two decimals
/// (1-3/8 in as 1.38): LG would be 0.005 in too small, on the unsafe side for the nut.
fn exact_lengths(bolt: &StructuralBolt) -> (Length, Length) {
    let nearest = |length: Length, step: Length| math::round((length / step).value) * step;
    if bolt.pitch.is_some() {
        (bolt.thread_length, bolt.transition_length)
    } else {
        (
            nearest(bolt.thread_length, inches(0.125)),
            nearest(bolt.transition_length, inches(1.0 / 32.0)),
        )
    }
}

/// The shortest bolt with a body: printed for inch bolts, for metric ones the first with ls above zero.
fn shortest(bolt: &StructuralBolt) -> Length {
    bolt.part_thread_length_min
        .unwrap_or(bolt.thread_length + bolt.transition_length + millimetres(1.0))
}

/// From where to where a dealer may have them: trade practice for inch bolts, the preferred lengths for metric ones.
pub(super) fn stock_range(bolt: &StructuralBolt) -> (Length, Length) {
    let longest = if bolt.pitch.is_some() {
        millimetres(200.0)
    } else {
        LONGEST_STOCKED
    };
    (shortest(bolt), longest)
}

/// No list of stock lengths of structural bolts has been read.
pub(super) const STOCK_BASIS: Basis = Basis::Memory;

#[cfg(test)]
mod tests {
    use super::exact_lengths;
    use crate::parts::{ScrewProduct, ScrewSeries};
    use crate::tables::bolts::StructuralBolt;
    use crate::units::{inches, millimetres};

    #[test]
    fn bodies_of_both_standards() {
        let inch = ScrewSeries::new(ScrewProduct::StructuralBolt, &"3/4-10 UNC".parse().unwrap());
        let bolt = inch.unwrap().length(inches(2.5)).unwrap();
        // Own example: LG = 2.500 - 1.375, LB = LG - 0.250.
        assert!((bolt.grip_gaging_length_max - inches(1.125)).abs() < inches(1e-9));
        assert!((bolt.body_length_min - inches(0.875)).abs() < inches(1e-9));
        let metric = ScrewSeries::new(ScrewProduct::En14399_4, &"M20".parse().unwrap()).unwrap();
        let bolt = metric.length(millimetres(80.0)).unwrap();
        assert!(bolt.transition_length() < millimetres(7.6)); // 3 P
        assert!(metric.length(millimetres(20.0)).is_err());
    }

    /// The fractions are those that were printed, to the print's own rounding.
    #[test]
    fn fractions_are_the_printed_lengths() {
        for bolt in StructuralBolt::all_inch() {
            let (thread, transition) = exact_lengths(bolt);
            assert!(
                (thread - bolt.thread_length).abs() <= inches(0.005_001),
                "{bolt}"
            );
            assert!(
                (transition - bolt.transition_length).abs() <= inches(0.007),
                "{bolt}"
            );
        }
    }

    #[test]
    fn stock_lengths_have_a_body_and_rise() {
        for (product, thread) in [
            (ScrewProduct::StructuralBolt, "1/2-13 UNC"),
            (ScrewProduct::StructuralBolt, "1-1/2-6 UNC"),
            (ScrewProduct::En14399_4, "M12"),
            (ScrewProduct::En14399_4, "M36"),
        ] {
            let series = ScrewSeries::new(product, &thread.parse().unwrap()).unwrap();
            let lengths: alloc::vec::Vec<_> = series.stock_lengths().collect();
            assert!(lengths.len() > 5, "{thread}");
            assert!(lengths.windows(2).all(|pair| pair[0] < pair[1]), "{thread}");
            for length in lengths {
                assert!(series.length(length).unwrap().body_length_min.value >= 0.0);
            }
        }
    }

    #[test]
    fn other_threads_are_refused() {
        for (product, thread) in [
            (ScrewProduct::StructuralBolt, "3/4-16 UNF"),
            (ScrewProduct::StructuralBolt, "M20"),
            (ScrewProduct::En14399_4, "M20x1.5"),
            (ScrewProduct::En14399_4, "3/4-10 UNC"),
        ] {
            assert!(
                ScrewSeries::new(product, &thread.parse().unwrap()).is_err(),
                "{thread}"
            );
        }
    }
}
