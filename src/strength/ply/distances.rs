//! Least and greatest distances of holes from edges and from each other.

mod rules;

pub(in crate::strength) use rules::AskedDistance;

use super::{Ply, PlyMethod, PlyNeed};
use crate::caution::Cautions;
use crate::error::Error;
use crate::source::Method;
use crate::strength::shear::AiscEdition;
use crate::units::{Length, SAME_LENGTH};
use alloc::vec::Vec;
use core::fmt;

/// Which distance of a hole.
///
/// ```
/// use shankline::strength::ply::DistanceKind;
/// assert_eq!(DistanceKind::End.to_string(), "end distance");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum DistanceKind {
    /// To the end along the load, e1.
    End,
    /// To the side across the load, e2.
    Edge,
    /// To the next hole along the load, p1.
    Pitch,
    /// To the next hole across the load, p2.
    Gauge,
}

impl DistanceKind {
    pub(crate) const fn is_edge(self) -> bool {
        matches!(self, Self::End | Self::Edge)
    }
}

impl fmt::Display for DistanceKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::End => "end distance",
            Self::Edge => "edge distance",
            Self::Pitch => "pitch of the holes",
            Self::Gauge => "gauge of the holes",
        })
    }
}

/// Whose distances are wanted. d bolt, d0 hole, t the ply (of several the thinnest one rules: judge each).
///
/// | rule | least | greatest |
/// |---|---|---|
/// | [`MachineDesign`](Self::MachineDesign) | end and edge d, else a fault; 1.5 d0, else undecided | none |
/// | [`Aisc360`](Self::Aisc360) | edges: Table J3.4, J3.4M and what J3.5 adds for holes; spacing 2 2/3 d | edges 12 t, 6 in (150 mm); pitch 24 t, 12 in (305 mm), unpainted weathering steel 14 t, 7 in (180 mm) |
/// | [`En1993`](Self::En1993) | e1, e2 1.2 d0 (slots 1.5 d0), p1 2.2 d0, p2 2.4 d0 | e1, e2 4 t + 40 mm where exposed, the larger of 8 t and 125 mm in weathering steel; p1, p2 14 t, 200 mm by the member; p1 28 t, 400 mm |
/// | [`Bs5950`](Self::Bs5950) | end 1.4 d0, edge 1.25 d0, or 1.4 d0 if sheared; pitch 2.5 d | edges 11 t sqrt(275 MPa / py), 4 t + 40 mm if corrosive; pitch 14 t; 16 t, 200 mm if corrosive |
/// | [`MilHdbk5`](Self::MilHdbk5) | end 1.5 d0, below it by test; edges 2 d0 and spacing 3 d as the FAA has them for rivets in a single row, taken for bolts: under 2 d0 a custom, under 3 d undecided | none |
///
/// An AISC edge below the table is a fault to 2010. From 2016 (note a of the table) it is permitted down to one
/// diameter where bearing and tear-out hold. To 2005 sheared edges had a greater distance.
///
/// Sources: 1.5 d0 IS 800:1984 and courses on riveted joints (d there is the gross, the hole's, diameter), one
/// diameter common practice without a source; AISC 360 Tables J3.4 to J3.5M and J3.3, J3.5 (scans and copies of
/// their pages); EN 1993-1-8:2005 Table 3.3 (worked sheets, a copy, a bridge textbook; slots recalled; a staggered
/// row's 1.2 d0 is not taken); BS 5950-1 6.2 (a scan of 1990, a manual); MIL-HDBK-5 (recalled); FAA
/// AC 43.13-1B 4-57, rivets (two reproductions; it has diameters of the shank, here the hole counts at edges), no paragraph of it
/// gives bolts a distance.
///
/// ```
/// use shankline::strength::ply::{DistanceRule, PlyMethod};
/// assert_eq!(DistanceRule::from(PlyMethod::En1993), DistanceRule::En1993);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[non_exhaustive]
pub enum DistanceRule {
    /// Practice of machine design and riveted joints.
    MachineDesign,
    /// AISC 360 J3.3 to J3.5.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Edition.
        edition: AiscEdition,
    },
    /// EN 1993-1-8:2005 Table 3.3.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993,
    /// BS 5950-1:2000 6.2.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950,
    /// MIL-HDBK-5, and FAA AC 43.13-1B for rivets.
    #[cfg_attr(feature = "serde", serde(rename = "mil_hdbk_5"))]
    MilHdbk5,
    /// IS 800:2007, 10.2 (recalled): edges 1.7 d0 sheared and 1.5 d0 smooth, spacing 2.5 d, edges at most 12 t by the root of
    /// 250 over fy, 4 t + 40 mm where it corrodes; spacing over the lesser of 12 t and 200 mm undecided, over 32 t and 300
    /// mm a fault.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// AS 4100, 9.6 (9.5 in 2020): edges 1.75 d sheared, else 1.5 d, below it undecided where the edge may be as rolled, and 1.25 d at
    /// least; spacing 2.5 d. At most 12 t and 150 mm at edges, 15 t and 200 mm between holes, of an outer line along the load 4 t +
    /// 100 mm: between the two undecided. Read in an engineer's summary of the edition of 2020.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100,
    /// CSA S16, 22.3: not read. Under one diameter a fault, all others undecided.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16,
}

impl From<PlyMethod> for DistanceRule {
    fn from(method: PlyMethod) -> Self {
        match method {
            PlyMethod::MachineDesign { .. } => Self::MachineDesign,
            PlyMethod::Aisc360 { edition, .. } => Self::Aisc360 { edition },
            PlyMethod::En1993 => Self::En1993,
            PlyMethod::MilHdbk5 { .. } => Self::MilHdbk5,
            PlyMethod::Bs5950 => Self::Bs5950,
            PlyMethod::Is800 => Self::Is800,
            PlyMethod::As4100 => Self::As4100,
            PlyMethod::CsaS16 => Self::CsaS16,
        }
    }
}

/// How an edge was made.
///
/// ```
/// use shankline::strength::ply::EdgeFinish;
/// assert_ne!(EdgeFinish::Sheared, EdgeFinish::Smooth);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum EdgeFinish {
    /// Sheared, or flame cut by hand.
    Sheared,
    /// Rolled, sawn, planed, or flame cut by machine.
    Smooth,
}

/// What the plies are exposed to.
///
/// ```
/// use shankline::strength::ply::Exposure;
/// assert_ne!(Exposure::Sheltered, Exposure::Corrosive);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Exposure {
    /// Neither weather nor other corrosive influences.
    Sheltered,
    /// Weather or other corrosive influences.
    Corrosive,
    /// Weather, on unpainted weathering steel.
    WeatheringSteel,
}

/// What codes ask besides the distances. What is not known leaves undecided what depends on it.
///
/// ```
/// use shankline::strength::ply::DistanceConditions;
/// assert!(DistanceConditions::default().exposure.is_none());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", default, deny_unknown_fields)
)]
pub struct DistanceConditions {
    /// How the edges were made, where the edition tells edges apart.
    pub finish: Option<EdgeFinish>,
    /// What the plies are exposed to. AISC's spacing is that of painted or sheltered plies unless this says
    /// weathering steel.
    pub exposure: Option<Exposure>,
}

/// How a distance stands that is not simply good.
///
/// ```
/// use shankline::strength::ply::DistanceStanding;
/// assert!(DistanceStanding::Fault > DistanceStanding::Permitted);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum DistanceStanding {
    /// Short, but permitted where bearing and tear-out hold: to be said.
    Permitted,
    /// Neither shown good nor bad.
    Undecided,
    /// The rule forbids it.
    Fault,
}

/// A distance that is not simply good, by one clause.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::{DistanceConditions, DistanceKind, DistanceRule, DistanceStanding, Ply};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let s275 = PlyMaterial::find("S275 steel")?;
/// let plate = Ply { end_distance: Some(millimetres(20.0)), ..Ply::of(s275, millimetres(10.0), millimetres(18.0)) };
/// let judged = plate.distances(millimetres(16.0), DistanceRule::En1993, DistanceConditions::default())?;
/// let short = &judged.findings[0]; // 1.2 x 18 = 21.6 mm
/// assert_eq!((short.kind, short.standing), (DistanceKind::End, DistanceStanding::Fault));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct DistanceFinding {
    /// Which distance.
    pub kind: DistanceKind,
    /// What it is.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub distance: Length,
    /// What it falls short of, if it does.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub least: Option<Length>,
    /// What it goes beyond, if it does.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub greatest: Option<Length>,
    /// How it stands.
    pub standing: DistanceStanding,
    /// Document and clause.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub clause: &'static Method,
    /// What was recalled and not read.
    pub cautions: Cautions,
}

/// The distances of a ply by one rule: what is not good, and what is not known.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::{DistanceConditions, DistanceRule, Ply, PlyNeed};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = Ply::of(PlyMaterial::find("ASTM A36 steel")?, inches(0.5), inches(0.8125));
/// let judged = plate.distances(inches(0.75), DistanceRule::MachineDesign, DistanceConditions::default())?;
/// assert_eq!(judged.missing, [PlyNeed::EndDistance, PlyNeed::EdgeDistance]);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlyDistances {
    /// Distances that are short, too great or undecided.
    pub findings: Vec<DistanceFinding>,
    /// What the rule asks for and was not given.
    pub missing: Vec<PlyNeed>,
}

/// One limit of a distance.
#[derive(Clone)]
pub(in crate::strength) struct Limit {
    pub(in crate::strength) length: Length,
    standing: DistanceStanding,
    clause: &'static Method,
    cautions: Cautions,
}

/// The limits of one kind of distance. Of several broken ones on one side the worst counts, of equal ones the
/// one that is broken furthest.
#[derive(Default)]
pub(in crate::strength) struct Limits {
    pub(in crate::strength) least: Vec<Limit>,
    pub(in crate::strength) greatest: Vec<Limit>,
    /// No limit is known: undecided by this clause.
    pub(in crate::strength) unknown: Option<&'static Method>,
}

impl Ply {
    /// Judges the known distances by a rule. What is good is not listed.
    ///
    /// An end distance may be left out for an inner hole that has a pitch, an edge distance for one that has a
    /// gauge.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess) for the dimensions.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{DistanceConditions, DistanceRule, DistanceStanding, Ply};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let a36 = PlyMaterial::find("ASTM A36 steel")?;
    /// let plate = Ply { end_distance: Some(inches(0.875)), ..Ply::of(a36, inches(0.5), inches(0.8125)) };
    /// let standing = |edition| -> Result<DistanceStanding, shankline::Error> {
    ///     let rule = DistanceRule::Aisc360 { edition };
    ///     Ok(plate.distances(inches(0.75), rule, DistanceConditions::default())?.findings[0].standing)
    /// };
    /// // Table J3.4 wants 1 in.
    /// assert_eq!(standing(AiscEdition::E2010)?, DistanceStanding::Fault);
    /// assert_eq!(standing(AiscEdition::E2016)?, DistanceStanding::Permitted);
    /// # Ok(())
    /// # }
    /// ```
    pub fn distances(
        &self,
        diameter: Length,
        rule: DistanceRule,
        conditions: DistanceConditions,
    ) -> Result<PlyDistances, Error> {
        self.check_inputs(diameter)?;
        let mut judged = PlyDistances::default();
        let (end, edge) = (self.end_distance, self.edge_distance);
        if end.or(self.pitch).is_none() {
            judged.missing.push(PlyNeed::EndDistance);
        }
        if edge.or(self.gauge).is_none() {
            judged.missing.push(PlyNeed::EdgeDistance);
        }
        for (kind, distance) in [
            (DistanceKind::End, end),
            (DistanceKind::Edge, edge),
            (DistanceKind::Pitch, self.pitch),
            (DistanceKind::Gauge, self.gauge),
        ] {
            let Some(distance) = distance else {
                continue;
            };
            let asked = AskedDistance {
                ply: self,
                diameter,
                conditions,
                kind,
            };
            let limits = asked.limits(rule, &mut judged.missing);
            judged.findings.extend(limits.judge(kind, distance));
        }
        Ok(judged)
    }
}

impl Limits {
    fn judge(&self, kind: DistanceKind, distance: Length) -> Vec<DistanceFinding> {
        // A distance that was rounded to the limit does not break it.
        let short = self
            .least
            .iter()
            .filter(|limit| distance < limit.length - SAME_LENGTH);
        let far = self
            .greatest
            .iter()
            .filter(|limit| distance > limit.length + SAME_LENGTH);
        let finding = |standing, clause, cautions| DistanceFinding {
            kind,
            distance,
            least: None,
            greatest: None,
            standing,
            clause,
            cautions,
        };
        let mut findings = Vec::new();
        if let Some(limit) = short.reduce(|a, b| worse(a, b, a.length < b.length)) {
            findings.push(DistanceFinding {
                least: Some(limit.length),
                ..finding(limit.standing, limit.clause, limit.cautions.clone())
            });
        }
        if let Some(limit) = far.reduce(|a, b| worse(a, b, a.length > b.length)) {
            findings.push(DistanceFinding {
                greatest: Some(limit.length),
                ..finding(limit.standing, limit.clause, limit.cautions.clone())
            });
        }
        if let (Some(clause), true) = (self.unknown, findings.is_empty()) {
            findings.push(finding(
                DistanceStanding::Undecided,
                clause,
                Cautions::default(),
            ));
        }
        findings
    }
}

/// The limit of the worse standing; of two alike the second if it is broken further.
fn worse<'a>(a: &'a Limit, b: &'a Limit, b_further: bool) -> &'a Limit {
    if b.standing > a.standing || (b.standing == a.standing && b_further) {
        b
    } else {
        a
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::methods;
    use crate::units::{from_base, millimetres};
    use alloc::vec;

    const TENTH: f64 = 0.1; // of SAME_LENGTH, 1e-10 m

    fn judged(
        limits: &Limits,
        distance: Length,
    ) -> Vec<(Option<Length>, Option<Length>, DistanceStanding)> {
        let findings = limits.judge(DistanceKind::End, distance);
        findings
            .iter()
            .map(|found| (found.least, found.greatest, found.standing))
            .collect()
    }

    /// What differs from a limit by less than what rounding leaves does not break it, on either side.
    #[test]
    fn a_limit_is_broken_beyond_rounding_only() {
        let (least, greatest) = (millimetres(20.0), millimetres(50.0));
        let clause = methods::DISTANCE_ONE_DIAMETER;
        let limits = Limits::default()
            .least(least, DistanceStanding::Fault, clause)
            .greatest(greatest, DistanceStanding::Undecided, clause);
        let off = |times: f64| -> Length { from_base(times * SAME_LENGTH.value) };
        let short = vec![(Some(least), None, DistanceStanding::Fault)];
        let far = vec![(None, Some(greatest), DistanceStanding::Undecided)];
        assert_eq!(judged(&limits, least - off(1.0 + TENTH)), short);
        assert_eq!(judged(&limits, least - off(1.0 - TENTH)), []);
        assert_eq!(judged(&limits, least - SAME_LENGTH), []);
        assert_eq!(judged(&limits, least), []);
        assert_eq!(judged(&limits, greatest), []);
        assert_eq!(judged(&limits, greatest + SAME_LENGTH), []);
        assert_eq!(judged(&limits, greatest + off(1.0 - TENTH)), []);
        assert_eq!(judged(&limits, greatest + off(1.0 + TENTH)), far);
    }

    /// The worst standing is told, whichever comes first; of two alike the limit that is broken furthest.
    #[test]
    fn the_worst_of_several_limits_is_told() {
        use DistanceStanding::{Fault, Permitted, Undecided};
        let clause = methods::DISTANCE_ONE_DIAMETER;
        let at = millimetres(10.0);
        for (limits, told) in [
            ([(20.0, Fault), (30.0, Undecided)], (20.0, Fault)),
            ([(30.0, Undecided), (20.0, Fault)], (20.0, Fault)),
            ([(20.0, Undecided), (30.0, Undecided)], (30.0, Undecided)),
            ([(30.0, Permitted), (20.0, Permitted)], (30.0, Permitted)),
            ([(5.0, Fault), (30.0, Permitted)], (30.0, Permitted)),
        ] {
            let mut least = Limits::default();
            let mut greatest = Limits::default();
            for (length, standing) in limits {
                least = least.least(millimetres(length), standing, clause);
                // The same on the other side: as far below 10 mm as the other lies above.
                greatest = greatest.greatest(millimetres(20.0 - length), standing, clause);
            }
            let (length, standing) = told;
            assert_eq!(
                judged(&least, at),
                [(Some(millimetres(length)), None, standing)]
            );
            let other = Some(millimetres(20.0 - length));
            assert_eq!(judged(&greatest, at), [(None, other, standing)]);
        }
    }

    /// Of two limits that are the same in all but their clause the first is told.
    #[test]
    fn the_first_of_equal_limits_is_told() {
        let at = millimetres(20.0);
        let (first, second) = (methods::DISTANCE_ONE_DIAMETER, methods::AS_4100_9_6);
        let limits = Limits::default()
            .least(at, DistanceStanding::Fault, first)
            .least(at, DistanceStanding::Fault, second)
            .greatest(at, DistanceStanding::Fault, first)
            .greatest(at, DistanceStanding::Fault, second);
        for distance in [19.0, 21.0] {
            let found = limits.judge(DistanceKind::Edge, millimetres(distance));
            assert_eq!(found.len(), 1);
            assert_eq!(
                (found[0].kind, found[0].clause),
                (DistanceKind::Edge, first)
            );
        }
    }

    /// What has no limit known is undecided, unless a limit that is known is broken.
    #[test]
    fn the_unknown_is_undecided() {
        let clause = methods::DISTANCE_ONE_DIAMETER;
        let limits = Limits {
            unknown: Some(clause),
            ..Limits::default().least(millimetres(20.0), DistanceStanding::Fault, clause)
        };
        let undecided = (None, None, DistanceStanding::Undecided);
        assert_eq!(judged(&limits, millimetres(20.0)), [undecided]);
        let short = (Some(millimetres(20.0)), None, DistanceStanding::Fault);
        assert_eq!(judged(&limits, millimetres(19.0)), [short]);
    }
}
