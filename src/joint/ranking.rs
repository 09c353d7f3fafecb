//! Which of two lengths is the better one.

use alloc::vec::Vec;

use crate::units::Length;

/// What makes one length of bolt better than another.
///
/// ```
/// use shankline::joint::{Criterion, Ranking};
/// assert_eq!(Ranking::default().criteria()[0], Criterion::PlanesInThread);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Criterion {
    /// Fewer shear planes in thread, in the worst case.
    PlanesInThread,
    /// Fewer shear planes that are not on guaranteed shank, in the worst case.
    PlanesOffShank,
    /// No cut.
    Cut,
    /// Fewer washers added; of equals, fewer of them under the head.
    WashersAdded,
    /// Shorter.
    Length,
}

/// The order in which criteria decide between lengths that fit; a later one decides between equals of the
/// earlier. A length that fits always comes before one that does not.
///
/// Every order is total: criteria that are not named follow in the usual order.
///
/// ```
/// use shankline::joint::{Criterion, Ranking};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// // A clevis: the second plane is on shank only with two more washers. Which is worth more?
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let ear = inches(0.500).plus_minus(inches(0.015));
/// let stack = Stack::builder()
///     .ply("ear", ear)
///     .ply("tongue", inches(1.000).plus_minus(inches(0.020)))
///     .ply("ear", ear)
///     .shear_planes([1, 2])
///     .washers_under_nut(Washer::find(WasherStyle::TypeANarrow, &thread)?.thickness()?, 1)
///     .build()?;
/// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &thread)?;
/// let nut = NutEnd::of(Nut::find(NutStyle::InsertLockNe, &thread)?)?;
/// let search =
///     LengthSearch::new(&stack, &screws, nut, LengthRules::fabrication(UnitSystem::UsCustomary))?;
/// assert_eq!(search.run()?.best().unwrap().screw.nominal, inches(4.0));
/// let few_washers = Ranking::by(&[Criterion::PlanesInThread, Criterion::WashersAdded]);
/// let selection = search.ranked(few_washers).run()?;
/// assert!((selection.best().unwrap().screw.nominal - inches(3.5)).abs() < inches(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        from = "alloc::vec::Vec<Criterion>",
        into = "alloc::vec::Vec<Criterion>"
    )
)]
pub struct Ranking([Criterion; 5]);

impl Default for Ranking {
    fn default() -> Self {
        Self([
            Criterion::PlanesInThread,
            Criterion::PlanesOffShank,
            Criterion::Cut,
            Criterion::WashersAdded,
            Criterion::Length,
        ])
    }
}

impl Ranking {
    /// The criteria given first, then the others in the usual order. One that is given twice counts where
    /// it first stands.
    ///
    /// ```
    /// use shankline::joint::{Criterion, Ranking};
    /// let ranking = Ranking::by(&[Criterion::Cut]);
    /// assert_eq!(ranking.criteria()[..2], [Criterion::Cut, Criterion::PlanesInThread]);
    /// assert_eq!(Ranking::by(&[]), Ranking::default());
    /// ```
    #[must_use]
    pub fn by(first: &[Criterion]) -> Self {
        let usual = Self::default();
        let mut order = usual;
        let mut slots = order.0.iter_mut();
        let mut given = Vec::with_capacity(usual.0.len());
        for &criterion in first.iter().chain(&usual.0) {
            if !given.contains(&criterion) {
                given.push(criterion);
                if let Some(slot) = slots.next() {
                    *slot = criterion;
                }
            }
        }
        order
    }

    /// The criteria, the first deciding first.
    ///
    /// ```
    /// use shankline::joint::Ranking;
    /// assert_eq!(Ranking::default().criteria().len(), 5);
    /// ```
    #[must_use]
    pub const fn criteria(&self) -> &[Criterion] {
        &self.0
    }

    pub(super) fn cut_before_washers(self) -> bool {
        let decides =
            |criterion: &Criterion| matches!(criterion, Criterion::Cut | Criterion::WashersAdded);
        self.0.iter().find(|criterion| decides(criterion)) == Some(&Criterion::Cut)
    }

    pub(super) fn rank(self, merits: &Merits) -> Rank {
        // No stack has more than a thousand planes, no rule more than a few hundred washers.
        let word = |count: usize| u128::from(u16::try_from(count).unwrap_or(u16::MAX));
        let mut rank = 0;
        for criterion in self.0 {
            let (bits, value) = match criterion {
                Criterion::PlanesInThread => (16, word(merits.planes_in_thread)),
                Criterion::PlanesOffShank => (16, word(merits.planes_off_shank)),
                Criterion::Cut => (1, u128::from(merits.needs_cut)),
                Criterion::WashersAdded => {
                    let (head, nut) = (merits.added_under_head, merits.added_under_nut);
                    (32, word(head.saturating_add(nut)) << 16 | word(head))
                }
                Criterion::Length => (48, u128::from(length_rank(merits.length))),
            };
            rank = rank << bits | value;
        }
        Rank(rank)
    }
}

#[cfg(feature = "serde")]
impl From<alloc::vec::Vec<Criterion>> for Ranking {
    fn from(first: alloc::vec::Vec<Criterion>) -> Self {
        Self::by(&first)
    }
}

#[cfg(feature = "serde")]
impl From<Ranking> for alloc::vec::Vec<Criterion> {
    fn from(ranking: Ranking) -> Self {
        ranking.0.into()
    }
}

/// What a ranking looks at: of lengths that fit.
pub(super) struct Merits {
    pub(super) planes_in_thread: usize,
    pub(super) planes_off_shank: usize,
    pub(super) needs_cut: bool,
    pub(super) added_under_head: usize,
    pub(super) added_under_nut: usize,
    pub(super) length: Length,
}

/// Place in a ranking: the smaller, the better.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Rank(u128);

impl Rank {
    /// Behind every length that fits: the one that misses by least first, and the shortest of equals.
    pub(super) fn of_misfit(misses: Length, length: Length) -> Self {
        let [misses, length] = [misses, length].map(|length| u128::from(length_rank(length)));
        Self(1 << 127 | misses << 48 | length)
    }
}

/// A length in nanometres, as far as 48 bits go; lengths of bolts are positive and finite.
fn length_rank(length: Length) -> u64 {
    const MOST: u64 = (1 << 48) - 1;
    // `as` saturates; a few nanometres more or less decide nothing.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let nanometres = (length.value * 1e9 + 0.5) as u64;
    nanometres.min(MOST)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::millimetres;

    /// Nothing fits: the nearest is spoken of, not the shortest.
    #[test]
    fn of_misfits_the_nearest_comes_first() {
        let misfit = |misses, length| Rank::of_misfit(millimetres(misses), millimetres(length));
        assert!(misfit(2.0, 300.0) < misfit(270.0, 30.0));
        assert!(misfit(2.0, 30.0) < misfit(2.0, 300.0));
    }

    /// A stack may have a thousand plies.
    #[test]
    fn hundreds_of_planes_rank_apart() {
        let rank = |planes_in_thread, length: f64| {
            Ranking::default().rank(&Merits {
                planes_in_thread,
                planes_off_shank: planes_in_thread,
                needs_cut: false,
                added_under_head: 0,
                added_under_nut: 0,
                length: millimetres(length),
            })
        };
        assert!(rank(260, 200.0) < rank(300, 100.0));
        assert!(rank(998, 200.0) < rank(999, 100.0));
    }

    /// Fewer washers go first, and of as many those with fewer under the head; only then the length decides.
    #[test]
    fn washers_rank_by_their_number() {
        let rank = |head, nut, length| {
            Ranking::default().rank(&Merits {
                planes_in_thread: 0,
                planes_off_shank: 0,
                needs_cut: false,
                added_under_head: head,
                added_under_nut: nut,
                length: millimetres(length),
            })
        };
        let ordered = [
            rank(0, 0, 90.0),
            rank(0, 1, 20.0),
            rank(0, 1, 90.0),
            rank(1, 0, 10.0),
            rank(0, 2, 80.0),
            rank(1, 1, 70.0),
            rank(2, 0, 60.0),
            rank(0, 3, 50.0),
        ];
        assert!(ordered.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
