//! The length a textbook takes: nominal sizes, no tolerances.

use alloc::{format, vec::Vec};

use super::LengthSearch;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::parts::{ScrewLength, Zone};
use crate::tables::methods;
use crate::units::{Length, SAME_LENGTH};

/// The stock length that a textbook takes, on nominal sizes without tolerances.
///
/// It is for homework and for comparing with it. A length to buy comes from [`LengthSearch::run`], which is worst
/// case: a plane that lies on the shank here may lie in the thread of a real joint, and the nut may run onto the
/// shank.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// // Two plates of 1/2 and 5/8 in, 1/2-13: L > 1.125 + 7/16 = 1.5625 in, so 1-3/4 in, 2.4 threads beyond the nut
/// let thread: Thread = "1/2-13 UNC".parse()?;
/// let stack = Stack::builder()
///     .ply("a", Spread::exact(inches(0.5)))
///     .ply("b", Spread::exact(inches(0.625)))
///     .shear_planes([1])
///     .build()?;
/// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?;
/// let nut = NutEnd::of(Nut::find(NutStyle::Hex, &thread)?)?;
/// let rules = LengthRules::fabrication(UnitSystem::UsCustomary);
/// let taken = LengthSearch::new(&stack, &screws, nut, rules)?.textbook_length_without_tolerances(0.0)?;
/// assert_eq!(taken.screw.nominal, inches(1.75));
/// assert!(taken.protruding_threads > 2.0);
/// assert_eq!(taken.threads_in_planes(), 1); // LT = 1.25 in: the shank ends at 0.5 in, at the plane
/// assert_eq!(taken.cautions().iter().count(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TextbookLength {
    /// Grip l: washers and plies of the stack, nominal.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub grip: Length,
    /// Height H of the nut, nominal.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut: Length,
    /// Pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Threads i that were to stand beyond the nut.
    pub wanted_threads: f64,
    /// Least length, l + H + i P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub least_length: Length,
    /// The next stock length.
    pub screw: ScrewLength,
    /// Threads that stand beyond the nut: (L - l - H) / P.
    pub protruding_threads: f64,
    /// Shank in the grip, ld = L - LT, from the head; zero for a screw threaded to the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shank: Length,
    /// What each shear plane cuts on nominal sizes: shank up to ld, thread beyond.
    pub planes: Vec<Zone>,
    /// Whether the nut clamps before it reaches the shank: ld < l.
    pub clamps: bool,
}

impl TextbookLength {
    /// Number of shear planes that cut thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = Spread::exact(millimetres(20.0));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let search = LengthSearch::new(&stack, &screws, nut, LengthRules::fabrication(UnitSystem::Si))?;
    /// assert_eq!(search.textbook_length_without_tolerances(2.0)?.threads_in_planes(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn threads_in_planes(&self) -> usize {
        self.planes
            .iter()
            .filter(|zone| **zone != Zone::Shank)
            .count()
    }

    /// What the user must be told: that this is no length to buy by.
    ///
    /// ```
    /// use shankline::caution::Caution;
    /// assert!(Caution::NominalSizes.to_string().contains("without tolerances"));
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Some(Caution::NominalSizes))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = Spread::exact(millimetres(20.0));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let search = LengthSearch::new(&stack, &screws, nut, LengthRules::fabrication(UnitSystem::Si))?;
    /// search.textbook_length_without_tolerances(2.0)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        Derivation::new("Length by nominal sizes, without tolerances")
            .step(
                Step::new("least length", "Lmin", "l + H + i * P", self.least_length)
                    .with("l", self.grip)
                    .with("H", self.nut)
                    .with("i", self.wanted_threads)
                    .with("P", self.pitch)
                    .source(methods::SHIGLEY_9TH_ED_TABLE_8_7),
            )
            .step(Step::given("next stock length", "L", self.screw.nominal))
            .step(
                Step::new(
                    "threads beyond the nut",
                    "n",
                    "(L - l - H) / P",
                    self.protruding_threads,
                )
                .with("L", self.screw.nominal)
                .with("l", self.grip)
                .with("H", self.nut)
                .with("P", self.pitch),
            )
            .step(
                Step::given("shank in the grip", "ld", self.shank)
                    .source(methods::SCREW_THREAD_LENGTH),
            )
    }
}

impl LengthSearch<'_> {
    /// The length a textbook takes: nominal thicknesses, the next stock length above grip and nut and a number of
    /// threads beyond it, no tolerances. **It is not the safe one**: see [`TextbookLength`]; washers are those of the
    /// stack, none is added, and the rules of the search do not enter.
    ///
    /// Among the lengths the shortest is taken that is long enough; where it leaves thread in a shear plane or runs
    /// the nut onto the shank the result says so.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-7: L > l + H, rounded up.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a number of threads that is negative or above 1000; [`Error::Mismatch`] for a tapped
    /// part, which has no nut; [`Error::NotInTable`] if no stock length is long enough; [`Error::NoValue`] for a
    /// search without a product.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let ply = Spread::exact(millimetres(20.0));
    /// let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let search = LengthSearch::new(&stack, &screws, nut, LengthRules::fabrication(UnitSystem::Si))?;
    /// let taken = search.textbook_length_without_tolerances(2.0)?;
    /// assert_eq!(taken.screw.nominal, millimetres(55.0)); // 40 + 8.4 + 3 mm
    /// # Ok(())
    /// # }
    /// ```
    pub fn textbook_length_without_tolerances(
        &self,
        threads_beyond_nut: f64,
    ) -> Result<TextbookLength, Error> {
        let lengths = self.lengths.nominal()?;
        if !(0.0..=1000.0).contains(&threads_beyond_nut) {
            let allowed = super::Allowed::FromTo(0.0.into(), 1000.0.into());
            let what = "number of threads beyond the nut";
            return Err(super::out_of_range(what, threads_beyond_nut, allowed));
        }
        if self.nut.is_tapped() {
            return Err(Error::Mismatch(
                "a tapped part has no nut: the length follows from its engagement".into(),
            ));
        }
        let (grip, nut) = (self.stack.grip().nominal, self.nut.height().nominal);
        let least_length = grip + nut + threads_beyond_nut * self.pitch;
        let next = lengths
            .filter(|length| *length >= least_length - SAME_LENGTH)
            .min_by(|a, b| a.value.total_cmp(&b.value));
        let Some(next) = next else {
            return Err(Error::NotInTable {
                table: "the list of lengths",
                wanted: format!("a length of {}", crate::error::Amount::from(least_length)),
                available: "all of them are shorter".into(),
            });
        };
        let screw = self.lengths.screw(next)?;
        let shank = if screw.fully_threaded {
            Length::default()
        } else {
            screw.grip_gaging_length_max
        };
        let planes = self.stack.plane_positions().iter().map(|position| {
            if position.nominal < shank - SAME_LENGTH {
                Zone::Shank
            } else {
                Zone::Thread
            }
        });
        Ok(TextbookLength {
            grip,
            nut,
            pitch: self.pitch,
            wanted_threads: threads_beyond_nut,
            least_length,
            screw,
            protruding_threads: ((screw.nominal - grip - nut) / self.pitch).value,
            shank,
            planes: planes.collect(),
            clamps: shank < grip - SAME_LENGTH,
        })
    }
}
