//! The bolts there are: a search over a bin of stock, with counts.

use alloc::{string::String, vec::Vec};

use super::{BoltInHand, BoltTrait, Candidate, CutRule, LengthRules, LengthSearch, NutEnd, Stack};
use crate::caution::Cautions;
use crate::error::{Allowed, Error, at_most, out_of_range, sane_text};
use crate::parts::{AnBolt, ScrewLength, ScrewSeries};
use crate::thread::Thread;
use crate::units::Length;

/// What lies in the bins: parts with their lengths and how many there are.
///
/// ```
/// use shankline::{joint::{Bin, BoltInHand}, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// let found = BoltInHand::new(thread, millimetres(69.6), millimetres(33.0), millimetres(40.0))?;
/// let bin = Bin::new()
///     .product("M12 x 70", &screws, millimetres(70.0), 6)?
///     .measured("coffee tin", &found, 11)?;
/// assert_eq!(bin.items().len(), 2);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[must_use]
pub struct Bin {
    items: Vec<BinItem>,
}

/// Kinds of bolts in a bin: each is looked at for every stack.
const MOST_KINDS: usize = 10_000;

/// One kind of bolt in the bin.
///
/// ```
/// use shankline::{joint::Bin, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M8".parse()?)?;
/// let bin = Bin::new().product("M8 x 30", &screws, millimetres(30.0), 40)?;
/// assert_eq!((bin.items()[0].part.as_str(), bin.items()[0].count), ("M8 x 30", 40));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BinItem {
    /// What it says on the drawer.
    pub part: String,
    /// Its thread.
    pub thread: Thread,
    /// Its lengths.
    pub screw: ScrewLength,
    /// How many there are.
    pub count: usize,
    /// What may speak against cutting it.
    pub traits: Vec<BoltTrait>,
    /// What must be said of its dimensions.
    pub cautions: Cautions,
}

impl Bin {
    /// An empty bin.
    ///
    /// ```
    /// assert!(shankline::joint::Bin::new().items().is_empty());
    /// ```
    pub const fn new() -> Self {
        Self { items: Vec::new() }
    }

    /// The bin with a screw of a product in it.
    ///
    /// # Errors
    ///
    /// Those of [`ScrewSeries::length`]; [`Error::OutOfRange`] for a count beyond a million, or more than 10 000 kinds.
    ///
    /// ```
    /// use shankline::{joint::Bin, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"3/8-16 UNC".parse()?)?;
    /// assert!(Bin::new().product("3/8 x 2", &screws, inches(2.0), 25).is_ok());
    /// # Ok(())
    /// # }
    /// ```
    pub fn product(
        self,
        part: impl Into<String>,
        screws: &ScrewSeries,
        length: Length,
        count: usize,
    ) -> Result<Self, Error> {
        let screw = screws.length(length)?;
        self.with(BinItem {
            part: part.into(),
            thread: screws.thread(),
            screw,
            count,
            traits: Vec::new(),
            cautions: screws.cautions(&screw),
        })
    }

    /// The bin with bolts in it of which one was measured.
    ///
    /// # Errors
    ///
    /// Those of [`BoltInHand::screw`]; [`Error::OutOfRange`] for a count beyond a million, or more than 10 000 kinds.
    ///
    /// ```
    /// use shankline::{joint::{Bin, BoltInHand}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (length, shank, start) = (millimetres(69.6), millimetres(33.0), millimetres(40.0));
    /// let bolt = BoltInHand::new("M12x1.25".parse()?, length, shank, start)?;
    /// assert_eq!(Bin::new().measured("tin", &bolt, 3)?.items()[0].thread.to_string(), "M12x1.25");
    /// # Ok(())
    /// # }
    /// ```
    pub fn measured(
        self,
        part: impl Into<String>,
        bolt: &BoltInHand,
        count: usize,
    ) -> Result<Self, Error> {
        self.with(BinItem {
            part: part.into(),
            thread: bolt.thread,
            screw: bolt.screw()?,
            count,
            traits: Vec::new(),
            cautions: Cautions::default(),
        })
    }

    /// The bin with aircraft bolts in it. They are not cut, whatever the rules permit.
    ///
    /// # Errors
    ///
    /// Those of [`AnBolt::screw_length`]; [`Error::OutOfRange`] for a count beyond a million, or more than 10 000 kinds.
    ///
    /// ```
    /// use shankline::joint::Bin;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(Bin::new().aircraft(&"AN4-7A".parse()?, 20)?.items()[0].part, "AN4-7A");
    /// # Ok(())
    /// # }
    /// ```
    pub fn aircraft(self, bolt: &AnBolt, count: usize) -> Result<Self, Error> {
        self.with(BinItem {
            part: alloc::string::ToString::to_string(bolt),
            thread: bolt.thread()?,
            screw: bolt.screw_length()?,
            count,
            traits: alloc::vec![BoltTrait::Aircraft],
            cautions: bolt.cautions(),
        })
    }

    /// The bin with traits of the item that was put in last: one that forbids cutting it is kept to,
    /// whatever the rules permit.
    ///
    /// ```
    /// use shankline::{joint::{Bin, BoltTrait}, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let stack = Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// let bin = Bin::new()
    ///     .product("M10 x 60", &screws, millimetres(60.0), 4)?
    ///     .product("M10 x 60, drilled", &screws, millimetres(60.0), 4)?
    ///     .with_traits([BoltTrait::DrilledShank]);
    /// let pick = bin.pick(&stack, &thread, nut, rules, 4)?;
    /// assert!(pick.fitting[0].candidate.needs_cut && pick.fitting.len() == 1);
    /// assert_eq!(pick.rejected[0].item, 1); // too long, and must not be cut
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_traits(mut self, traits: impl IntoIterator<Item = BoltTrait>) -> Self {
        if let Some(last) = self.items.last_mut() {
            last.traits.extend(traits);
        }
        self
    }

    fn with(mut self, item: BinItem) -> Result<Self, Error> {
        const MOST: usize = 1_000_000;
        at_most("number of bolts", item.count, MOST)?;
        at_most("number of kinds of bolts", self.items.len() + 1, MOST_KINDS)?;
        sane_text("name of a bolt in a bin", &item.part)?;
        self.items.push(item);
        Ok(self)
    }

    /// What is in it.
    ///
    /// ```
    /// use shankline::joint::Bin;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(Bin::new().aircraft(&"AN3-5A".parse()?, 8)?.items()[0].count, 8);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn items(&self) -> &[BinItem] {
        &self.items
    }

    /// The best bolts in the bin for a number of joints alike, in the ranking of
    /// [`LengthSearch`]; of equals the one that was put in first.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`]; [`Error::OutOfRange`] for more than a million joints.
    ///
    /// ```
    /// use shankline::{joint::Bin, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let bin = Bin::new()
    ///     .product("M10 x 60", &screws, millimetres(60.0), 20)?
    ///     .product("M10 x 55", &screws, millimetres(55.0), 3)?;
    /// let pick = bin.pick(&stack, &thread, nut, LengthRules::fabrication(UnitSystem::Si), 8)?;
    /// let taken: Vec<(&str, usize)> =
    ///     pick.taken.iter().map(|taken| (bin.items()[taken.item].part.as_str(), taken.count)).collect();
    /// assert_eq!(taken, [("M10 x 55", 3), ("M10 x 60", 5)]);
    /// assert_eq!(pick.missing, 0);
    /// // All alike: the 60 mm ones alone are enough.
    /// assert_eq!(pick.all_alike.map(|found| bin.items()[found].part.as_str()), Some("M10 x 60"));
    /// # Ok(())
    /// # }
    /// ```
    pub fn pick(
        &self,
        stack: &Stack,
        thread: &Thread,
        nut: NutEnd,
        rules: LengthRules,
        joints: usize,
    ) -> Result<BinPick, Error> {
        const MOST: usize = 1_000_000;
        if joints > MOST {
            let allowed = Allowed::AtMost(MOST.into());
            return Err(out_of_range("number of joints", joints, allowed));
        }
        let search = |rules| LengthSearch::of_thread(stack, thread, &nut, rules);
        let (free, uncut) = (search(rules)?, search(rules.with_cut(CutRule::Never))?);
        let (mut assessed, mut other_threads) = (Vec::new(), Vec::new());
        for (item, stocked) in self.items.iter().enumerate() {
            if stocked.thread.is_same_size(thread) {
                let own = BoltTrait::rules_for(&stocked.traits, rules);
                let search = if own.cut == rules.cut { &free } else { &uncut };
                let candidate = search.assess(stocked.screw)?;
                assessed.push(BinCandidate { item, candidate });
            } else {
                other_threads.push(item);
            }
        }
        // Stable: of equals the first stays first.
        assessed.sort_by_key(|found| found.candidate.rank);
        let fit = assessed.partition_point(|found| found.candidate.fits());
        let rejected = assessed.split_off(fit);
        let mut missing = joints;
        let mut taken = Vec::new();
        let mut cautions = nut.cautions();
        let (mut washers, mut at_head, mut planes_not_on_shank) = (0, 0, 0);
        for found in &assessed {
            let Some(stocked) = self.items.get(found.item) else {
                continue;
            };
            let count = missing.min(stocked.count);
            if count > 0 {
                missing -= count;
                washers += count * found.candidate.washers_under_nut;
                at_head += count * found.candidate.washers_added_under_head;
                planes_not_on_shank +=
                    count * (found.candidate.planes_in_run_out + found.candidate.planes_in_thread);
                cautions = cautions.and(stocked.cautions.clone());
                taken.push(Taken {
                    item: found.item,
                    count,
                    candidate: found.candidate,
                });
            }
        }
        let all_alike = assessed
            .iter()
            .map(|found| found.item)
            .find(|&item| self.items.get(item).is_some_and(|own| own.count >= joints));
        Ok(BinPick {
            joints,
            fitting: assessed,
            rejected,
            other_threads,
            taken,
            missing,
            all_alike,
            washers_under_nut: washers,
            washers_added_under_head: at_head,
            planes_not_on_shank,
            cautions,
        })
    }
}

/// One item of a bin against the joint.
///
/// ```
/// use shankline::{joint::Bin, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let stack = Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let bin = Bin::new().product("M10 x 45", &screws, millimetres(45.0), 9)?;
/// let pick = bin.pick(&stack, &thread, nut, rules, 1)?;
/// for found in &pick.rejected {
///     for reason in found.candidate.reasons() {
///         println!("{}: {}", bin.items()[found.item].part, reason.text(UnitSystem::Si));
///     }
/// }
/// # assert_eq!(pick.rejected.len(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BinCandidate {
    /// Position of the item in the bin.
    pub item: usize,
    /// How it does in the joint.
    pub candidate: Candidate,
}

/// How many of an item to take.
///
/// ```
/// use shankline::{joint::Bin, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let stack = Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let bin = Bin::new().product("M10 x 55", &screws, millimetres(55.0), 9)?;
/// assert_eq!(bin.pick(&stack, &thread, nut, rules, 4)?.taken[0].count, 4);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Taken {
    /// Position of the item in the bin.
    pub item: usize,
    /// How many.
    pub count: usize,
    /// How it does in the joint: washers to add, cut.
    pub candidate: Candidate,
}

/// What a bin has for a number of joints alike.
///
/// ```
/// use shankline::{joint::Bin, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// # let thread: Thread = "M10".parse()?;
/// # let stack = Stack::builder().ply("plate", Spread::exact(millimetres(40.0))).build()?;
/// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
/// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// # let rules = LengthRules::fabrication(UnitSystem::Si);
/// let pick = Bin::new().pick(&stack, &thread, nut, rules, 4)?;
/// assert_eq!((pick.missing, pick.all_alike), (4, None));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BinPick {
    /// How many joints.
    pub joints: usize,
    /// Items that fit, the best first.
    pub fitting: Vec<BinCandidate>,
    /// Items that do not, with their reasons; the least bad first.
    pub rejected: Vec<BinCandidate>,
    /// Items of another thread, by their position.
    pub other_threads: Vec<usize>,
    /// What to take, the best first.
    pub taken: Vec<Taken>,
    /// How many joints are left without a bolt.
    pub missing: usize,
    /// The best item of which there are enough for all joints, by its position, if there is one:
    /// joints alike are better with bolts alike.
    pub all_alike: Option<usize>,
    /// How many washers under the nuts all that is taken needs, of the kind that may be added.
    pub washers_under_nut: usize,
    /// How many washers under the heads all that is taken needs, beyond those always there.
    pub washers_added_under_head: usize,
    /// How many shear planes, over all joints, are not on guaranteed shank.
    pub planes_not_on_shank: usize,
    /// What must be told of what is taken.
    pub cautions: Cautions,
}
