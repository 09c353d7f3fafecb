//! One shopping list for many joints: as few different part numbers as they allow.

// Parts and joints are numbered from 0 by `Problem`, and every list of either is as long as there are of them.
#![allow(clippy::indexing_slicing)]

use alloc::{format, string::String, vec, vec::Vec};

use super::Selection;
use crate::error::{Error, at_most, sane_text};

#[cfg(test)]
mod tests;

/// One joint, or several alike, and the part numbers that would do for it.
///
/// ```
/// use shankline::joint::JointNeed;
/// let need = JointNeed::new("gate hinge", 4, ["M10 x 55", "M10 x 60"]);
/// assert_eq!((need.count, need.choices.len()), (4, 2));
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[non_exhaustive]
pub struct JointNeed {
    /// What a drawing would call it.
    pub name: String,
    /// How many bolts.
    pub count: usize,
    /// Part numbers that will do, the best first.
    pub choices: Vec<String>,
}

impl JointNeed {
    /// A need with its choices by hand, the best first.
    ///
    /// ```
    /// use shankline::joint::JointNeed;
    /// assert_eq!(JointNeed::new("hinge", 2, ["M10 x 55"]).name, "hinge");
    /// ```
    #[must_use]
    pub fn new<S: Into<String>>(
        name: impl Into<String>,
        count: usize,
        choices: impl IntoIterator<Item = S>,
    ) -> Self {
        Self {
            name: name.into(),
            count,
            choices: choices.into_iter().map(Into::into).collect(),
        }
    }

    /// The lengths a search accepts that are as good in shear as its best: no more planes in
    /// thread or in the run-out. `part` writes the part number of a candidate.
    ///
    /// ```
    /// use shankline::{joint::JointNeed, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let thread: Thread = "M10".parse()?;
    /// # let ply = millimetres(20.0).plus_minus(millimetres(0.2));
    /// # let stack = Stack::builder().ply("foot", ply).ply("base", ply).shear_planes([1]).build()?;
    /// # let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// # let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// # let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let selection = LengthSearch::new(&stack, &screws, nut, rules)?.run()?;
    /// let need = JointNeed::from_selection("post foot", 8, &selection, |candidate| {
    ///     format!("{thread} x {:.0}", shown(candidate.screw.nominal, UnitSystem::Si))
    /// });
    /// assert_eq!(need.choices[0], "M10 x 55 mm");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn from_selection(
        name: impl Into<String>,
        count: usize,
        selection: &Selection,
        part: impl Fn(&super::Candidate) -> String,
    ) -> Self {
        let best = selection.best();
        let as_good = selection.accepted().iter().filter(|candidate| {
            best.is_some_and(|best| {
                candidate.planes_in_thread <= best.planes_in_thread
                    && candidate.planes_on_shank >= best.planes_on_shank
            })
        });
        Self::new(name, count, as_good.map(part))
    }
}

/// One line of a shopping list.
///
/// ```
/// use shankline::joint::{JointNeed, shopping_list};
/// # fn main() -> Result<(), shankline::Error> {
/// let list = shopping_list(&[JointNeed::new("hinge", 4, ["M10 x 55"])])?;
/// assert_eq!((list.lines[0].part.as_str(), list.lines[0].count), ("M10 x 55", 4));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShoppingLine {
    /// Part number.
    pub part: String,
    /// How many to buy, over all joints.
    pub count: usize,
    /// Which needs use it, by their position.
    pub joints: Vec<usize>,
}

/// What to buy for many joints.
///
/// ```
/// use shankline::joint::{JointNeed, shopping_list};
/// # fn main() -> Result<(), shankline::Error> {
/// // Each joint has its own best bolt, but one length does for all three.
/// let list = shopping_list(&[
///     JointNeed::new("slide foot", 4, ["M10 x 50", "M10 x 55"]),
///     JointNeed::new("ladder foot", 4, ["M10 x 60", "M10 x 55"]),
///     JointNeed::new("tower foot", 8, ["M10 x 55"]),
/// ])?;
/// assert_eq!(list.lines.len(), 1);
/// assert_eq!((list.lines[0].part.as_str(), list.lines[0].count), ("M10 x 55", 16));
/// assert!(list.proven_fewest);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShoppingList {
    /// What to buy, in the order in which the needs first name the parts.
    pub lines: Vec<ShoppingLine>,
    /// For each need the line that serves it; none if it has no choice at all.
    pub line_of_joint: Vec<Option<usize>>,
    /// Whether no list with fewer part numbers exists, and of those with as many none gives the
    /// bolts a better rank. Otherwise the search was stopped and the list is the best found.
    pub proven_fewest: bool,
    /// No list can have fewer part numbers than this.
    pub fewest_possible: usize,
    /// How far below their best choice the bolts are in all: the sum over bolts of the position of
    /// their part in the list of choices.
    pub steps_below_best: usize,
}

/// Most branches, and most looks at a choice, before the search settles for the best list so far:
/// a fraction of a second.
const BRANCHES: usize = 200_000;
const LOOKS: usize = 50_000_000;

/// The shortest shopping list: fewest different part numbers such that every joint gets one of its
/// choices; of those the list whose bolts are, in all, nearest to their first choices.
///
/// An exact search by branch and bound: branch on the joint with the fewest choices left; no list
/// can be shorter than the number of joints no two of which share a part. Joints that share no part,
/// not even through others, are worked apart. Where more than 200000
/// branches would be needed it stops, says so, and returns its best list, never worse than that of
/// the greedy rule (the part that serves most joints first). Long lists of choices lower that number.
///
/// Source: minimum set cover; own formulation.
///
/// # Errors
///
/// [`Error::OutOfRange`] for more than 1000 needs, more than 1000 choices of one need or 100000 of
/// all, or a count beyond a million; [`Error::Mismatch`] for a part that is named twice in one need.
///
/// ```
/// use shankline::joint::{JointNeed, shopping_list};
/// # fn main() -> Result<(), shankline::Error> {
/// let unserved = shopping_list(&[JointNeed::new("odd one", 1, Vec::<String>::new())])?;
/// assert_eq!(unserved.line_of_joint, [None]);
/// # Ok(())
/// # }
/// ```
pub fn shopping_list(needs: &[JointNeed]) -> Result<ShoppingList, Error> {
    let choices: usize = needs.iter().map(|need| 1 + need.choices.len()).sum();
    shopping_list_within(needs, branches_for(choices))
}

/// The branches that so many choices have time for.
const fn branches_for(choices: usize) -> usize {
    let looks = LOOKS / if choices == 0 { 1 } else { choices };
    if looks < BRANCHES { looks } else { BRANCHES }
}

fn shopping_list_within(needs: &[JointNeed], branches: usize) -> Result<ShoppingList, Error> {
    let (parts, problem) = Problem::of(needs)?;
    let mut is_chosen = vec![false; parts.len()];
    let mut branches_left = branches;
    let (mut proven_fewest, mut fewest_possible, mut steps_below_best) = (true, 0, 0);
    // Joints that share no part, not even through others, are lists of their own.
    for (group, numbers) in problem.groups() {
        let mut search = Search {
            problem: &group,
            best: group.greedy(),
            branches_left,
            chosen: Vec::new(),
            is_chosen: vec![false; group.parts],
            excluded: vec![0; group.parts],
        };
        let at_least = search.lower_bound();
        search.branch();
        branches_left = search.branches_left;
        let proven = branches_left > 0;
        proven_fewest &= proven;
        fewest_possible += if proven {
            search.best.parts.len()
        } else {
            at_least
        };
        steps_below_best += search.best.cost;
        for part in search.best.parts {
            is_chosen[numbers[part]] = true;
        }
    }
    let mut lines: Vec<ShoppingLine> = Vec::new();
    let mut line_of_part = vec![None; parts.len()];
    let mut line_of_joint = Vec::with_capacity(needs.len());
    for (joint, own) in problem.choices.iter().enumerate() {
        let part = own.iter().copied().find(|&part| is_chosen[part]);
        let line = part.map(|part| {
            *line_of_part[part].get_or_insert_with(|| {
                lines.push(ShoppingLine {
                    part: parts[part].into(),
                    count: 0,
                    joints: Vec::new(),
                });
                lines.len() - 1
            })
        });
        if let Some(line) = line.and_then(|line| lines.get_mut(line)) {
            line.count += problem.counts[joint];
            line.joints.push(joint);
        }
        line_of_joint.push(line);
    }
    Ok(ShoppingList {
        lines,
        line_of_joint,
        proven_fewest,
        fewest_possible,
        steps_below_best,
    })
}

/// Needs with their parts as numbers.
struct Problem {
    /// How many parts there are.
    parts: usize,
    /// For each joint its parts, the best first.
    choices: Vec<Vec<usize>>,
    /// How many bolts each joint takes.
    counts: Vec<usize>,
}

#[derive(Clone, Debug)]
struct Cover {
    parts: Vec<usize>,
    cost: usize,
}

impl Problem {
    /// The part names, in the order in which the needs first name them, and the problem.
    fn of(needs: &[JointNeed]) -> Result<(Vec<&str>, Self), Error> {
        at_most("number of joints", needs.len(), 1000)?;
        let all = needs.iter().map(|need| need.choices.len()).sum();
        at_most("number of choices of all joints", all, 100_000)?;
        let mut parts: Vec<&str> = Vec::new();
        let mut by_name = alloc::collections::BTreeMap::new();
        let mut choices = Vec::with_capacity(needs.len());
        // The joint that last named each part.
        let mut named_by: Vec<usize> = Vec::new();
        for (number, need) in needs.iter().enumerate() {
            sane_text("name of a joint", &need.name)?;
            at_most("number of choices of a joint", need.choices.len(), 1000)?;
            at_most("number of bolts of a joint", need.count, 1_000_000)?;
            let mut own: Vec<usize> = Vec::with_capacity(need.choices.len());
            for choice in &need.choices {
                sane_text("part number", choice)?;
                let part = *by_name.entry(choice.as_str()).or_insert_with(|| {
                    parts.push(choice);
                    named_by.push(usize::MAX);
                    parts.len() - 1
                });
                let last = named_by.get_mut(part);
                if last.is_some_and(|last| core::mem::replace(last, number) == number) {
                    return Err(Error::Mismatch(format!(
                        "\"{}\" has \"{choice}\" twice among its choices",
                        need.name
                    )));
                }
                own.push(part);
            }
            choices.push(own);
        }
        let problem = Self {
            parts: parts.len(),
            choices,
            counts: needs.iter().map(|need| need.count).collect(),
        };
        Ok((parts, problem))
    }

    /// Groups of joints that share parts, each as a problem of its own with the numbers that its parts
    /// have here. Joints without a choice are in none.
    fn groups(&self) -> Vec<(Self, Vec<usize>)> {
        // The group of a part is that of the joint that first named it; joints point to an earlier
        // joint of their group.
        let mut first_joint: Vec<Option<usize>> = vec![None; self.parts];
        let mut leader: Vec<usize> = (0..self.choices.len()).collect();
        let find = |leader: &[usize], mut joint: usize| {
            while leader[joint] != joint {
                joint = leader[joint];
            }
            joint
        };
        for (joint, own) in self.choices.iter().enumerate() {
            for &part in own {
                let other = *first_joint[part].get_or_insert(joint);
                let (a, b) = (find(&leader, joint), find(&leader, other));
                leader[a.max(b)] = a.min(b);
            }
        }
        let mut groups: Vec<(Self, Vec<usize>)> = Vec::new();
        let mut group_of: Vec<Option<usize>> = vec![None; self.choices.len()];
        let mut number_in_group: Vec<Option<usize>> = vec![None; self.parts];
        for (joint, own) in self.choices.iter().enumerate() {
            if own.is_empty() {
                continue;
            }
            let group = *group_of[find(&leader, joint)].get_or_insert_with(|| {
                let empty = Self {
                    parts: 0,
                    choices: Vec::new(),
                    counts: Vec::new(),
                };
                groups.push((empty, Vec::new()));
                groups.len() - 1
            });
            let (problem, numbers) = &mut groups[group];
            let own = own.iter().map(|&part| {
                *number_in_group[part].get_or_insert_with(|| {
                    numbers.push(part);
                    numbers.len() - 1
                })
            });
            problem.choices.push(own.collect());
            problem.counts.push(self.counts[joint]);
            problem.parts = numbers.len();
        }
        groups
    }

    /// Bolts times steps below their first choice, with each joint on the best part that is left.
    fn cost(&self, usable: impl Fn(usize) -> bool) -> usize {
        let position = |own: &Vec<usize>| own.iter().position(|&part| usable(part)).unwrap_or(0);
        self.choices
            .iter()
            .zip(&self.counts)
            .map(|(own, count)| position(own) * count)
            .sum()
    }

    /// The part that serves most joints, again and again.
    fn greedy(&self) -> Cover {
        let mut left: Vec<&Vec<usize>> =
            self.choices.iter().filter(|own| !own.is_empty()).collect();
        let mut parts = Vec::new();
        while !left.is_empty() {
            let mut served = vec![0_usize; self.parts];
            for part in left.iter().flat_map(|own| own.iter()) {
                served[*part] += 1;
            }
            // Of equals the first named.
            let most = (0..served.len()).rev().max_by_key(|&part| served[part]);
            let Some(most) = most else { break };
            parts.push(most);
            left.retain(|own| !own.contains(&most));
        }
        let cost = self.cost(|part| parts.contains(&part));
        Cover { parts, cost }
    }
}

struct Search<'a> {
    problem: &'a Problem,
    best: Cover,
    branches_left: usize,
    chosen: Vec<usize>,
    is_chosen: Vec<bool>,
    /// How often each part has been ruled out above this branch.
    excluded: Vec<usize>,
}

impl Search<'_> {
    fn is_served(&self, own: &[usize]) -> bool {
        own.is_empty() || own.iter().any(|&part| self.is_chosen[part])
    }

    /// Joints that are not served yet, each with the parts it may still have.
    fn open(&self) -> Vec<Vec<usize>> {
        let usable = |own: &Vec<usize>| {
            let parts = own.iter().copied();
            parts.filter(|&part| self.excluded[part] == 0).collect()
        };
        let choices = self.problem.choices.iter();
        choices
            .filter(|own| !self.is_served(own))
            .map(usable)
            .collect()
    }

    /// Parts chosen, and one more for each of a set of open joints no two of which share a part.
    fn lower_bound(&self) -> usize {
        let mut open = self.open();
        open.sort_by_key(Vec::len);
        self.chosen.len() + apart(&open, self.problem.parts)
    }

    fn branch(&mut self) {
        if self.branches_left == 0 {
            return;
        }
        self.branches_left -= 1;
        let mut open = self.open();
        open.sort_by_key(Vec::len);
        let Some(tightest) = open.first() else {
            let cost = self.problem.cost(|part| self.is_chosen[part]);
            if (self.chosen.len(), cost) < (self.best.parts.len(), self.best.cost) {
                self.best = Cover {
                    parts: self.chosen.clone(),
                    cost,
                };
            }
            return;
        };
        let size = self.chosen.len() + apart(&open, self.problem.parts);
        if size > self.best.parts.len() {
            return;
        }
        if size == self.best.parts.len() {
            let usable = |part: usize| self.excluded[part] == 0 || self.is_chosen[part];
            let cost = self.problem.cost(usable);
            if cost >= self.best.cost {
                return;
            }
        }
        // Each list is looked at once: after a branch with a part come only lists without it.
        let tightest = tightest.clone();
        for &part in &tightest {
            self.chosen.push(part);
            self.is_chosen[part] = true;
            self.branch();
            self.chosen.pop();
            self.is_chosen[part] = false;
            self.excluded[part] += 1;
        }
        for &part in &tightest {
            self.excluded[part] -= 1;
        }
    }
}

/// How many of these sets, taken in their order, share nothing with those taken before.
fn apart(sets: &[Vec<usize>], parts: usize) -> usize {
    let mut used = vec![false; parts];
    let mut count = 0;
    for set in sets {
        if set.iter().all(|&part| !used[part]) {
            count += 1;
            for &part in set {
                used[part] = true;
            }
        }
    }
    count
}
