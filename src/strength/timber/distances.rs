//! Distances of bolts in timber: the least ones, and what it costs to be short of the full ones.

use alloc::vec::Vec;

use super::rule::{Judged, Requirement};
use super::{MemberMaterial, TimberFact, TimberMember, TimberMethod};
use crate::error::Error;
use crate::source::Method;
use crate::tables::methods;
use crate::tables::timber::TimberKind;
use crate::units::{Length, Ratio, degrees, from_base, inches, millimetres};

const NDS_TABLES: &Method = methods::NDS_2018_12_5_1_AND_ITS_TABLES;
const EN_TABLE: &Method = methods::EN_1995_1_1_2004_TABLE_8_4;

/// Distances of one bolt in a timber; by the load, as those of a steel ply. Unknown ones are left out.
///
/// ```
/// use shankline::{strength::timber::TimberDistances, units::inches};
/// let ends = TimberDistances { end: Some(inches(3.5)), ..TimberDistances::default() };
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TimberDistances {
    /// To the end or edge that the load acts along, or towards.
    pub end: Option<Length>,
    /// To the edge or end across the load.
    pub edge: Option<Length>,
    /// To the next bolt along the load; none if there is none: [`BoltRow`](super::BoltRow) asks for it.
    pub pitch: Option<Length>,
    /// To the next bolt across the load; none if there is one row only.
    pub gauge: Option<Length>,
    /// Between the outer rows, if there are rows.
    pub row_spread: Option<Length>,
    /// Whether the load never acts towards `end`: compression, or a load that always goes the other way.
    pub end_never_loaded: bool,
}

/// What the rules say of the distances of a bolt.
///
/// ```
/// # use shankline::strength::timber::DistanceCheck;
/// fn print(found: &DistanceCheck) {
///     for rule in &found.rules {
///         println!("{}: {:?}, {:?} of at least {:?}", rule.fact, rule.judged(), rule.own, rule.least);
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DistanceCheck {
    /// One rule for each distance: end and edge always, pitch, gauge and spread of rows if there are other bolts.
    pub rules: Vec<Requirement>,
    /// The share of its load that the bolt keeps, by the known distances: the geometry factor `C_delta` of NDS, 1 by EN.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub geometry: Ratio,
}

impl DistanceCheck {
    /// The rules that are broken.
    ///
    /// ```
    /// # use shankline::strength::timber::DistanceCheck;
    /// fn sound(found: &DistanceCheck) -> bool {
    ///     found.faults().next().is_none()
    /// }
    /// ```
    pub fn faults(&self) -> impl Iterator<Item = &Requirement> {
        self.rules.iter().filter(|rule| rule.judged().is_fault())
    }

    /// The distances that are not known.
    ///
    /// ```
    /// # use shankline::strength::timber::DistanceCheck;
    /// fn complete(found: &DistanceCheck) -> bool {
    ///     found.missing().next().is_none()
    /// }
    /// ```
    pub fn missing(&self) -> impl Iterator<Item = TimberFact> {
        let missing = |rule: &&Requirement| rule.judged() == Judged::Missing;
        self.rules.iter().filter(missing).map(|rule| rule.fact)
    }
}

/// Least distance, and the one from which on nothing is taken off.
#[derive(Clone, Copy)]
struct Limits {
    least: Length,
    full: Length,
}

impl Limits {
    const fn only(least: Length) -> Self {
        Self { least, full: least }
    }

    fn greater(self, other: Self) -> Self {
        Self {
            least: self.least.max(other.least),
            full: self.full.max(other.full),
        }
    }
}

impl TimberDistances {
    /// Judges the distances of a bolt in a member; of a plate there is nothing to judge.
    ///
    /// `diameter` is the nominal one; `slenderness` is l/D by [`TimberConnection::slenderness`](super::TimberConnection::slenderness),
    /// or the member's own thickness over D, which is never less. NDS counts it, EN does not.
    ///
    /// NDS, least to full: along the grain end 3.5 to 7 D in softwood and 2.5 to 5 D in hardwood, never loaded 2 to 4 D;
    /// edge 1.5 D, over l/D = 6 at least half the gauge; next bolt 3 to 4 D along, 1.5 D across, outer rows at most
    /// 5 in apart. Across the grain: loaded edge 4 D, never loaded 1.5 D; end 2 to 4 D; next bolt 3 to 4 D along the load,
    /// across it 2.5 D up to l/D = 2, 5 D from 6, (5 l + 10 D) / 8 between. Between least and full the load falls in
    /// proportion, to the least of all: [`DistanceCheck::geometry`]. EN 1995-1-1 Table 8.4, along: end max(7 d, 80 mm),
    /// never loaded 4 d, edge 3 d, next bolt 5 d and 4 d. Across: loaded edge 4 d, never loaded 3 d, end max(7 d, 80 mm), next
    /// bolt 4 d. At an angle the greater of both (never loaded end at least (1 + 6 sin a) d).
    ///
    /// Sources: NDS 2018 Tables 12.5.1A to 12.5.1D, EN 1995-1-1:2004 Table 8.4, recalled, in part as quoted in public
    /// design notes and scripts. The shear areas that NDS wants of members at an angle are not here.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter outside the method, lengths or a slenderness that are not positive and
    /// finite, or an angle that is not from 0 to 90 deg.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{Judged, TimberDistances, TimberFact, TimberMember, TimberMethod};
    /// use shankline::{tables::timber::Timber, units::degrees};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let post = TimberMember::wood(inches(3.5), Timber::find("Hem-Fir")?, degrees(0.0));
    /// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.0 };
    /// let own = TimberDistances { end: Some(inches(2.1)), ..TimberDistances::default() };
    /// let found = own.judged(&post, inches(0.5), post.thickness / inches(0.5), method)?;
    /// // 4.2 D: short of 7 D, not of 3.5 D
    /// assert_eq!(found.rules[0].judged(), Judged::Reduces);
    /// assert!((found.geometry.value - 0.6).abs() < 1e-12);
    /// assert_eq!(found.missing().collect::<Vec<_>>(), [TimberFact::EdgeDistance]);
    /// # Ok(())
    /// # }
    /// ```
    pub fn judged(
        &self,
        member: &TimberMember,
        diameter: Length,
        slenderness: Ratio,
        method: TimberMethod,
    ) -> Result<DistanceCheck, Error> {
        super::check_diameter(diameter, method)?;
        member.check(diameter)?;
        crate::error::positive("slenderness of the bolt", slenderness.value)?;
        let mut rules = Vec::new();
        let mut geometry: Ratio = from_base(1.0);
        let MemberMaterial::Wood(wood) = member.material else {
            return Ok(DistanceCheck { rules, geometry });
        };
        let (along, across) = match method {
            TimberMethod::Nds { .. } => self.nds(wood.kind, diameter, slenderness.value),
            TimberMethod::En1995 { .. } => self.en(wood.grain_angle.value, diameter),
        };
        let clause = match method {
            TimberMethod::Nds { .. } => NDS_TABLES,
            TimberMethod::En1995 { .. } => EN_TABLE,
        };
        let angle = wood.grain_angle;
        let own = [
            (TimberFact::EndDistance, self.end, true),
            (TimberFact::EdgeDistance, self.edge, true),
            (TimberFact::Pitch, self.pitch, false),
            (TimberFact::Gauge, self.gauge, false),
        ];
        for ((fact, own, always), (along, across)) in
            own.into_iter().zip(along.into_iter().zip(across))
        {
            if own.is_none() && !always {
                continue;
            }
            let limits = if angle.value <= 0.0 {
                along
            } else if angle >= degrees(90.0) {
                across
            } else {
                along.greater(across)
            };
            let mut rule = Requirement::new(fact, own, clause)?.at_least(limits.least);
            if limits.full > limits.least {
                rule = rule.full_from(limits.full);
            }
            let share = rule.share();
            if share < geometry {
                geometry = share;
            }
            rules.push(rule);
        }
        let rows = self.gauge.is_some() || self.row_spread.is_some();
        let nds = matches!(method, TimberMethod::Nds { .. });
        if nds && rows && angle < degrees(90.0) {
            let clause = methods::NDS_2018_12_5_1_OUTER_ROWS_OF_SAWN_TIMBER_IF_IT_MAY_SHRINK;
            let rule = Requirement::new(TimberFact::RowSpread, self.row_spread, clause)?;
            rules.push(rule.at_most(inches(5.0)));
        }
        Ok(DistanceCheck { rules, geometry })
    }

    /// End, edge, pitch, gauge, along and across the grain.
    fn nds(&self, kind: TimberKind, d: Length, slenderness: f64) -> ([Limits; 4], [Limits; 4]) {
        let halved = |full: Length| Limits {
            least: 0.5 * full,
            full,
        };
        let end = match kind {
            _ if self.end_never_loaded => 4.0 * d,
            TimberKind::Softwood => 7.0 * d,
            TimberKind::Hardwood => 5.0 * d,
        };
        let edge = match self.gauge {
            Some(gauge) if slenderness > 6.0 => (1.5 * d).max(0.5 * gauge),
            _ => 1.5 * d,
        };
        let pitch = Limits {
            least: 3.0 * d,
            full: 4.0 * d,
        };
        let loaded_edge = if self.end_never_loaded { 1.5 } else { 4.0 };
        let rows = (5.0 * slenderness + 10.0) / 8.0;
        let along = [
            halved(end),
            Limits::only(edge),
            pitch,
            Limits::only(1.5 * d),
        ];
        let across = [
            Limits::only(loaded_edge * d),
            halved(4.0 * d),
            pitch,
            Limits::only(rows.clamp(2.5, 5.0) * d),
        ];
        (along, across)
    }

    fn en(&self, angle: f64, d: Length) -> ([Limits; 4], [Limits; 4]) {
        let loaded = (7.0 * d).max(millimetres(80.0));
        let (end, edge) = if self.end_never_loaded {
            let turned = (1.0 + 6.0 * crate::math::sin(angle)) * d;
            (turned.max(4.0 * d), 3.0 * d)
        } else {
            (loaded, 4.0 * d)
        };
        let along = [end, 3.0 * d, 5.0 * d, 4.0 * d].map(Limits::only);
        let across = [edge, loaded, 4.0 * d, 4.0 * d].map(Limits::only);
        (along, across)
    }
}
