//! In which order the bolts of a group are tightened.

use crate::source::Method;
use alloc::vec::Vec;
use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::math::{hypot, round};
use crate::strength::group::{BoltPattern, Point};
use crate::tables::methods;

/// How the order of a group is found.
///
/// ```
/// use shankline::joint::OrderRule;
/// assert!(OrderRule::Star.source().citation.contains("PCC-1"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum OrderRule {
    /// Crosswise over a flange, so that faces close evenly.
    Star,
    /// From the stiffest part outward, so that plies are not held apart.
    Outward,
}

impl OrderRule {
    /// Who says so.
    ///
    /// ```
    /// use shankline::joint::OrderRule;
    /// assert!(OrderRule::Outward.source().citation.contains("EN 1090-2"));
    /// ```
    #[must_use]
    pub const fn source(self) -> &'static Method {
        match self {
            Self::Star => methods::STAR_PATTERN,
            Self::Outward => methods::OUTWARD_ORDER,
        }
    }
}

/// The order in which the bolts of a group are tightened, and how far in each pass.
///
/// ```
/// use shankline::joint::{OrderRule, tightening_order};
/// use shankline::strength::group::BoltPattern;
/// use shankline::units::millimetres;
/// # fn main() -> Result<(), shankline::Error> {
/// let flange = tightening_order(&BoltPattern::circle(8, millimetres(200.0))?);
/// assert_eq!(flange.rule, OrderRule::Star);
/// assert_eq!(flange.bolts, [1, 5, 3, 7, 2, 6, 4, 8]);
/// assert_eq!(flange.passes, [0.3, 0.7, 1.0]);
///
/// let splice = BoltPattern::rows_and_columns(3, 2, millimetres(70.0), millimetres(60.0))?;
/// assert_eq!(tightening_order(&splice).bolts[..2], [3, 4]); // the middle row first
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TighteningOrder {
    /// By which rule.
    pub rule: OrderRule,
    /// The bolts in order, counted from 1 as in the pattern.
    pub bolts: Vec<usize>,
    /// Share of the full torque in each pass; zero is snug: plies in firm contact, no torque asked.
    pub passes: &'static [f64],
}

/// The order for a group: crosswise if its bolts lie on a circle, else from its centroid outward.
///
/// See [`TighteningOrder::star`] and [`TighteningOrder::outward`], which a caller may ask by name: the
/// four bolts of a square lie on a circle too.
///
/// ```
/// use shankline::joint::tightening_order;
/// use shankline::strength::group::BoltPattern;
/// use shankline::units::inches;
/// let order = tightening_order(&BoltPattern::circle(4, inches(5.0)).unwrap());
/// assert_eq!(order.bolts, [1, 3, 2, 4]);
/// ```
#[must_use]
pub fn tightening_order(pattern: &BoltPattern) -> TighteningOrder {
    let centre = pattern.centroid();
    let radii = || {
        pattern
            .bolts()
            .iter()
            .map(|bolt| distance(centre, at(bolt)))
    };
    let (least, most) = radii().fold((f64::INFINITY, 0.0_f64), |(least, most), radius| {
        (least.min(radius), most.max(radius))
    });
    // A tenth of a per cent: a drawing, not a proof.
    if pattern.bolts().len() > 2 && most - least <= 1e-3 * most {
        TighteningOrder::star(pattern)
    } else {
        TighteningOrder::outward(pattern, centre)
    }
}

impl TighteningOrder {
    /// Crosswise: each bolt as far as may be from all that are tight, and then from the last one.
    ///
    /// Passes at 30, 70 and 100 % as ASME PCC-1 has them (recalled; a gasket maker's page has at least three,
    /// the first at 30 %), then rounds at the full torque until no nut turns.
    ///
    /// ```
    /// use shankline::joint::TighteningOrder;
    /// use shankline::strength::group::BoltPattern;
    /// use shankline::units::inches;
    /// let order = TighteningOrder::star(&BoltPattern::circle(6, inches(5.0)).unwrap());
    /// assert_eq!(order.bolts[..2], [1, 4]);
    /// ```
    #[must_use]
    pub fn star(pattern: &BoltPattern) -> Self {
        // Bolts still loose, each with its distance from the nearest tight one.
        let mut loose: Vec<(usize, Point, f64)> = (1..)
            .zip(pattern.bolts())
            .map(|(number, bolt)| (number, at(bolt), f64::INFINITY))
            .collect();
        let mut bolts = Vec::with_capacity(loose.len());
        let mut next = 0;
        while next < loose.len() {
            let (number, last, _) = loose.remove(next);
            bolts.push(number);
            let mut best = (0.0, 0.0);
            next = 0;
            for (index, (_, point, nearest)) in loose.iter_mut().enumerate() {
                let away = distance(last, *point);
                *nearest = nearest.min(away);
                // The lowest number of equals.
                if (*nearest, away) > best {
                    best = (*nearest, away);
                    next = index;
                }
            }
        }
        Self {
            rule: OrderRule::Star,
            bolts,
            passes: &[0.3, 0.7, 1.0],
        }
    }

    /// From the stiffest part of the connection outward: first all snug, in as many rounds as firm contact
    /// takes, then all to the full torque.
    ///
    /// ```
    /// use shankline::joint::TighteningOrder;
    /// use shankline::strength::group::{BoltPattern, Point};
    /// use shankline::units::millimetres;
    /// let line = BoltPattern::rows_and_columns(1, 4, millimetres(70.0), millimetres(60.0)).unwrap();
    /// // The plate is welded in at the left.
    /// let weld = Point { x: millimetres(-120.0), y: millimetres(0.0) };
    /// assert_eq!(TighteningOrder::outward(&line, weld).bolts, [1, 2, 3, 4]);
    /// ```
    #[must_use]
    pub fn outward(pattern: &BoltPattern, stiffest: Point) -> Self {
        let away = |number: usize| {
            let bolt = pattern.bolts().get(number - 1);
            bolt.map_or(0.0, |bolt| distance(stiffest, at(bolt)))
        };
        let mut bolts: Vec<usize> = (1..=pattern.bolts().len()).collect();
        bolts.sort_by(|&a, &b| away(a).total_cmp(&away(b)));
        Self {
            rule: OrderRule::Outward,
            bolts,
            passes: &[0.0, 1.0],
        }
    }

    /// What the user must be told: the passes of ASME PCC-1 were recalled.
    ///
    /// ```
    /// use shankline::joint::TighteningOrder;
    /// use shankline::strength::group::BoltPattern;
    /// use shankline::units::inches;
    /// let order = TighteningOrder::star(&BoltPattern::circle(6, inches(5.0)).unwrap());
    /// assert_eq!(order.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let recalled = self.rule == OrderRule::Star;
        Cautions::default().with(
            recalled
                .then_some(methods::ASME_PCC_1_PASSES_OF_THE_LEGACY_PATTERN)
                .and_then(Caution::of_method),
        )
    }
}

impl fmt::Display for TighteningOrder {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("bolts ")?;
        for (index, bolt) in self.bolts.iter().enumerate() {
            let comma = if index == 0 { "" } else { ", " };
            write!(f, "{comma}{bolt}")?;
        }
        match self.rule {
            OrderRule::Star => {
                f.write_str("; all of them to ")?;
                for (index, pass) in self.passes.iter().enumerate() {
                    let then = if index == 0 { "" } else { ", then " };
                    write!(f, "{then}{:.0} %", pass * 100.0)?;
                }
                f.write_str(" of the torque, then round and round at the full torque until no nut turns")
            }
            OrderRule::Outward => f.write_str(
                "; all of them snug, round after round until the plies are in firm contact, then all to the \
                 full torque",
            ),
        }
    }
}

fn at(bolt: &crate::strength::group::GroupBolt) -> Point {
    Point {
        x: bolt.x,
        y: bolt.y,
    }
}

/// In whole micrometres, so that rounding does not decide between equals.
fn distance(a: Point, b: Point) -> f64 {
    round(1e6 * hypot((a.x - b.x).value, (a.y - b.y).value))
}
