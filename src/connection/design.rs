//! Which bolt, and how many: the search over parts and patterns of a connection.

use alloc::{format, vec::Vec};
use core::ops::ControlFlow;

use super::{BoltLoad, Connection, ConnectionVerdict, run};
use crate::error::{Allowed, Error, out_of_range};
use crate::joint::{DesignChoice, DesignSpace, Joint, JointLoad, Objective, Repeats, Scope, Word};
use crate::strength::group::BoltPattern;
use crate::units::{Force, Mass};

/// A connection with bolts of a kind in a pattern that holds: [`Connection::design`].
///
/// ```
/// # use shankline::connection::ConnectionDesign;
/// # use shankline::units::UnitSystem;
/// fn print(design: &ConnectionDesign) {
///     println!("{} x {}", design.connection.bolts.bolts().len(), design.choice.text(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct ConnectionDesign {
    /// The connection with these parts in this pattern.
    pub connection: Connection,
    /// Its verdict: it holds.
    pub verdict: ConnectionVerdict,
    /// The parts of each bolt.
    pub choice: DesignChoice,
    /// What bolts, nuts and washers weigh together; none where a mass is not known.
    pub mass: Option<Mass>,
    /// Which of the patterns that were tried, counted from 0.
    pub pattern: usize,
}

/// At most so many patterns in one search.
const MOST_PATTERNS: usize = 1000;

impl Connection {
    /// The best parts for this connection in each of several patterns; where none is given, in its own. The same bolt
    /// throughout.
    ///
    /// Of each pattern the first parts, in the order of the objectives of [`Joint::design`], with which the whole
    /// connection [holds](ConnectionVerdict::holds). Designing is checking: nothing is estimated, and only parts are left
    /// out whose bolt alone, with its nut, already fails under what comes to the most loaded one. The answers come by the
    /// mass of all bolts, the lightest first, and those whose mass is not known last; a pattern in which nothing holds is
    /// not among them.
    ///
    /// # Errors
    ///
    /// Those of [`Joint::design`] and of [`check`](Self::check) for the pattern (a bolt that stands outside its plate, loads
    /// that no chosen method covers); [`Error::OutOfRange`] for more than 1000 patterns.
    ///
    /// ```
    /// use shankline::connection::{Connection, Outline, Side};
    /// use shankline::joint::{DesignSpace, RuleSet};
    /// use shankline::prelude::*;
    /// use shankline::strength::group::BoltPattern;
    /// use shankline::tables::holes::HoleFit;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = Joint::builder("M20")
    ///     .ply("hanger", "10 mm").material("S275 steel")
    ///     .ply("beam tab", "12 mm").material("S275 steel")
    ///     .washers(WasherStyle::Iso7090)
    ///     .methods(JointMethods::en_1993()).load_factor(1.5)
    ///     .rules(RuleSet::En1090.rules(UnitSystem::Si));
    /// let hanger = Connection::builder(bolt)
    ///     .rows_and_columns(2, 2, "60 mm", "60 mm")
    ///     .plate("hanger", Outline::rectangle("150 mm", "150 mm")?).held(Side::Bottom)
    ///     .plate("beam tab", Outline::rectangle("160 mm", "160 mm")?).held(Side::Top)
    ///     .loaded("hanger")
    ///     .case("crowd").force("0 kN", "-60 kN", "0 kN").at("0 mm", "0 mm", "0 mm")
    ///     .build()?;
    /// let space = DesignSpace::new()
    ///     .threads(["M12".parse()?, "M16".parse()?, "M20".parse()?])
    ///     .washers([WasherStyle::Iso7090])
    ///     .holes(HoleFit::Normal);
    /// let designs = hanger.design(&space, &[], &[])?;
    /// let best = designs.first().expect("something holds");
    /// assert!(best.verdict.holds());
    /// assert!(best.choice.bolt.thread.nominal_diameter() < millimetres(20.0)); // lighter than the template
    /// # Ok(())
    /// # }
    /// ```
    pub fn design(
        &self,
        space: &DesignSpace,
        patterns: &[BoltPattern],
        objectives: &[Objective],
    ) -> Result<Vec<ConnectionDesign>, Error> {
        match self.design_watched(
            space,
            patterns,
            objectives,
            |_, _| ControlFlow::Continue(()),
        )? {
            ControlFlow::Continue(designs) => Ok(designs),
            // Nobody stops it.
            ControlFlow::Break(()) => Err(Error::Mismatch("the search was stopped".into())),
        }
    }

    /// The same, for a search that somebody watches: told how many patterns are done of how many, before each, before
    /// every connection that is checked, and at the end; it may stop the search.
    ///
    /// # Errors
    ///
    /// Those of [`design`](Self::design).
    ///
    /// ```
    /// use core::ops::ControlFlow;
    /// use shankline::connection::{Connection, ConnectionDesign};
    /// use shankline::joint::DesignSpace;
    /// fn first(connection: &Connection, space: &DesignSpace) -> Result<Option<Vec<ConnectionDesign>>, shankline::Error> {
    ///     let mut left = 1000;
    ///     let found = connection.design_watched(space, &[], &[], |_, _| {
    ///         left -= 1;
    ///         if left > 0 { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
    ///     })?;
    ///     Ok(match found {
    ///         ControlFlow::Continue(designs) => Some(designs),
    ///         ControlFlow::Break(()) => None,
    ///     })
    /// }
    /// ```
    pub fn design_watched(
        &self,
        space: &DesignSpace,
        patterns: &[BoltPattern],
        objectives: &[Objective],
        mut watch: impl FnMut(usize, usize) -> ControlFlow<()>,
    ) -> Result<ControlFlow<(), Vec<ConnectionDesign>>, Error> {
        let own = [self.bolts.clone()];
        let patterns = if patterns.is_empty() { &own } else { patterns };
        if patterns.len() > MOST_PATTERNS {
            let allowed = Allowed::AtMost(MOST_PATTERNS.into());
            return Err(out_of_range("number of patterns", patterns.len(), allowed));
        }
        let mut designs = Vec::new();
        for (number, bolts) in patterns.iter().enumerate() {
            let connection = Self {
                bolts: bolts.clone(),
                ..self.clone()
            };
            let mut report = || watch(number, patterns.len());
            match connection.in_its_pattern(space, objectives, &mut report) {
                Ok(ControlFlow::Break(())) => return Ok(ControlFlow::Break(())),
                Ok(ControlFlow::Continue(None)) => {}
                Ok(ControlFlow::Continue(Some(design))) => designs.push(ConnectionDesign {
                    pattern: number,
                    ..design
                }),
                Err(error) if patterns.len() > 1 => {
                    return Err(Error::Mismatch(format!("pattern {}: {error}", number + 1)));
                }
                Err(error) => return Err(error),
            }
        }
        if watch(patterns.len(), patterns.len()).is_break() {
            return Ok(ControlFlow::Break(()));
        }
        let weight =
            |design: &ConnectionDesign| design.mass.map_or(f64::INFINITY, |mass| mass.value);
        designs.sort_by(|a, b| weight(a).total_cmp(&weight(b)));
        Ok(ControlFlow::Continue(designs))
    }

    /// The first parts that hold in the pattern of the connection.
    fn in_its_pattern(
        &self,
        space: &DesignSpace,
        objectives: &[Objective],
        watch: &mut impl FnMut() -> ControlFlow<()>,
    ) -> Result<ControlFlow<(), Option<ConnectionDesign>>, Error> {
        let most = run::most_loaded(self)?;
        let alone = self.alone(&most);
        let ControlFlow::Continue(designs) =
            alone.design_watched(space, objectives, |_, _| watch())?
        else {
            return Ok(ControlFlow::Break(()));
        };
        for design in designs.feasible() {
            if watch().is_break() {
                return Ok(ControlFlow::Break(()));
            }
            let chosen = designs.joint(&design.choice)?;
            let connection = Self {
                joint: Joint {
                    load: self.joint.load,
                    scope: self.joint.scope,
                    ..chosen
                },
                ..self.clone()
            };
            // A hole that is too wide for its place in the plates rules out this bolt, not the pattern.
            let Ok(verdict) = connection.check() else {
                continue;
            };
            if verdict.word() == Word::Holds {
                let count = connection.bolts.bolts().len();
                // At most some hundreds: exact.
                #[allow(clippy::cast_precision_loss)]
                let mass = design.mass.map(|each| count as f64 * each.total());
                return Ok(ControlFlow::Continue(Some(ConnectionDesign {
                    connection,
                    verdict,
                    choice: design.choice,
                    mass,
                    pattern: 0,
                })));
            }
        }
        Ok(ControlFlow::Continue(None))
    }

    /// The template as one bolt with its nut, under what comes to the most loaded one. What its plies bear is left to the
    /// check of the connection, which knows how far it is to their edges.
    fn alone(&self, most: &BoltLoad) -> Joint {
        Joint {
            load: JointLoad {
                across: most.across,
                along: most.along.max(Force::default()),
                repeats: Repeats::Never,
                ..self.joint.load
            },
            scope: Scope::BoltAndNut,
            ..self.joint.clone()
        }
    }
}
