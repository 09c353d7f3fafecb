//! What comes to each bolt of a load.

use alloc::collections::BTreeMap;
use alloc::{format, string::String, vec::Vec};

use super::outline::{Vector, dot};
use super::{Combination, Connection, InPlane, LoadCase, OutOfPlane};
use crate::error::{Allowed, Error, LONGEST, out_of_range};
use crate::joint::{Slip, Stack};
use crate::math::hypot;
use crate::source::Method;
use crate::strength::group::{BoltPattern, PlaneLoad, Point, PullLoad, Tilting};
use crate::strength::shear::ShearMethod;
use crate::units::{Force, Length, Torque, from_base};

/// An arm below which a force passes through the centroid: rounding of a drawing.
const NO_ARM: f64 = 1e-6;
/// Part of the greatest force on any bolt that is rounding.
const NOTHING: f64 = 1e-9;
/// More than any structure carries, by far: a slip of the unit.
const MOST: f64 = 1e12;

/// What comes to one bolt, as the loaded part puts it there: all bolts together give the load.
///
/// ```
/// # use shankline::connection::Connection;
/// fn pulled(connection: &Connection) -> Result<usize, shankline::Error> {
///     let forces = connection.forces("lift")?;
///     Ok(forces.iter().filter(|own| own.along.value > 0.0).count())
/// }
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltLoad {
    /// Force to the right.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub x: Force,
    /// Force up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub y: Force,
    /// The force across its axis that the bolt is held to: that of x and y together, by an instantaneous centre as much
    /// more as the bolt that deforms most must be able to carry.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub across: Force,
    /// Pull along its axis; negative where the load takes off the clamp force.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub along: Force,
}

/// A case or combination that is ready: forces in the plane, and the rest at the centroid.
pub(super) struct Resolved {
    pub(super) name: String,
    plane: Vec<PlaneLoad>,
    pull: PullLoad,
}

impl Resolved {
    /// Whether there is a load at all.
    fn is_loaded(&self) -> bool {
        let plane = self.plane.iter();
        let mut plane = plane
            .map(|own| own.force_x.value.abs() + own.force_y.value.abs() + own.moment.value.abs());
        let pull = &self.pull;
        plane.any(|size| size > 0.0)
            || pull.force.value != 0.0
            || pull.about_x.value != 0.0
            || pull.about_y.value != 0.0
    }
}

/// Cases and combinations by name, so that many of them are found as soon as one.
pub(super) struct Known<'a> {
    connection: &'a Connection,
    cases: BTreeMap<&'a str, &'a LoadCase>,
    combinations: BTreeMap<&'a str, &'a Combination>,
}

impl<'a> Known<'a> {
    pub(super) fn of(connection: &'a Connection) -> Self {
        let cases = connection.cases.iter();
        let combinations = connection.combinations.iter();
        Self {
            connection,
            cases: cases.map(|own| (own.name.as_str(), own)).collect(),
            combinations: combinations.map(|own| (own.name.as_str(), own)).collect(),
        }
    }

    /// What is checked: every combination, or every case where there are none.
    pub(super) fn resolved(&self) -> Result<Vec<Resolved>, Error> {
        let connection = self.connection;
        let of_case = |case: &LoadCase| resolve(connection, &case.name, &[(1.0, case)]);
        if connection.combinations.is_empty() {
            return connection.cases.iter().map(of_case).collect();
        }
        let combinations = connection.combinations.iter();
        combinations.map(|own| self.by_name(&own.name)).collect()
    }

    /// A case or combination by its name.
    pub(super) fn by_name(&self, name: &str) -> Result<Resolved, Error> {
        let connection = self.connection;
        if let Some(case) = self.cases.get(name) {
            return resolve(connection, name, &[(1.0, case)]);
        }
        let Some(combination) = self.combinations.get(name) else {
            return Err(unknown_case(connection, name));
        };
        let parts = combination.parts.iter();
        let parts: Vec<(f64, &LoadCase)> = parts
            .filter_map(|part| Some((part.factor, *self.cases.get(part.case.as_str())?)))
            .collect();
        resolve(connection, name, &parts)
    }
}

#[cold]
fn unknown_case(connection: &Connection, name: &str) -> Error {
    let cases = connection.cases.iter().map(|case| case.name.as_str());
    let combined = connection.combinations.iter().map(|own| own.name.as_str());
    let known: Vec<&str> = cases.chain(combined).take(20).collect();
    Error::UnknownName {
        what: "load case",
        text: name.into(),
        known: known.join(", "),
    }
}

fn resolve(
    connection: &Connection,
    name: &str,
    parts: &[(f64, &LoadCase)],
) -> Result<Resolved, Error> {
    let centroid = connection.bolts.centroid();
    let mut plane = Vec::with_capacity(parts.len());
    let (mut force, mut about_x, mut about_y) = (0.0, 0.0, 0.0);
    for (factor, case) in parts {
        sane(case)?;
        let load = PlaneLoad::new(
            *factor * case.force_x,
            *factor * case.force_y,
            case.x,
            case.y,
        );
        plane.push(load.with_moment(*factor * case.moment_z));
        let (x, y, z) = (
            (case.x - centroid.x).value,
            (case.y - centroid.y).value,
            case.z.value,
        );
        let [fx, fy, fz] = [case.force_x, case.force_y, case.force_z].map(|own| own.value);
        force += factor * fz;
        about_x += factor * (case.moment_x.value + y * fz - z * fy);
        about_y += factor * (case.moment_y.value + z * fx - x * fz);
    }
    let resolved = Resolved {
        name: name.into(),
        plane,
        pull: PullLoad {
            force: from_base(force),
            about_x: from_base(about_x),
            about_y: from_base(about_y),
        },
    };
    if resolved.is_loaded() {
        return Ok(resolved);
    }
    Err(Error::Mismatch(format!("\"{name}\" is no load at all")))
}

fn sane(case: &LoadCase) -> Result<(), Error> {
    let most: Force = from_base(MOST);
    for force in [case.force_x, case.force_y, case.force_z] {
        let near = force.abs() <= most; // false for NaN
        if !near {
            let allowed = Allowed::FromTo((-most).into(), most.into());
            return Err(out_of_range(
                format!("force of \"{}\"", case.name),
                force,
                allowed,
            ));
        }
    }
    let most: Torque = from_base(MOST);
    for moment in [case.moment_x, case.moment_y, case.moment_z] {
        let near = moment.abs() <= most;
        if !near {
            let allowed = Allowed::FromTo((-most).into(), most.into());
            return Err(out_of_range(
                format!("moment of \"{}\"", case.name),
                moment,
                allowed,
            ));
        }
    }
    for place in [case.x, case.y, case.z] {
        let near = place.abs() <= LONGEST;
        if !near {
            let allowed = Allowed::FromTo((-LONGEST).into(), LONGEST.into());
            let what = format!("coordinate of \"{}\"", case.name);
            return Err(out_of_range(what, place, allowed));
        }
    }
    Ok(())
}

/// What comes to each bolt, and by which methods.
pub(super) struct Distribution {
    pub(super) loads: Vec<BoltLoad>,
    /// In the plane and out of it, as far as the load needs them.
    pub(super) methods: [Option<&'static Method>; 2],
    /// A ply that an edge presses on, of which nobody says how far it reaches.
    unknown: Option<String>,
    /// The edge that a plate is tilted onto.
    pub(super) edge: Option<Edge>,
}

/// An edge of a plate that presses.
pub(super) struct Edge {
    pub(super) ply: String,
    /// From it to the bolts.
    pub(super) up: Vector,
    pub(super) force: Force,
    /// What presses beside the moment, and where both meet, along `up`.
    pub(super) pressed: Option<(Force, f64)>,
}

/// What comes to each bolt, where a word may be said of it.
pub(super) fn of_known(connection: &Connection, case: &Resolved) -> Result<Distribution, Error> {
    let found = of(connection, case)?;
    match &found.unknown {
        None => Ok(found),
        Some(ply) => Err(Error::Mismatch(format!(
            "\"{}\" tilts the connection onto \"{ply}\", whose outline is not given",
            case.name
        ))),
    }
}

/// What comes to each bolt.
pub(super) fn of(connection: &Connection, case: &Resolved) -> Result<Distribution, Error> {
    let Pulled {
        tensions,
        method: out_of_plane,
        unknown,
        edge,
    } = along(connection, case)?;
    let pulled = tensions.iter().any(|tension| tension.value != 0.0);
    let (mut loads, in_plane) = across(connection, case, pulled)?;
    let most = loads
        .iter()
        .zip(&tensions)
        .map(|(load, tension)| load.across.value.max(tension.value.abs()))
        .fold(0.0, f64::max);
    for (load, tension) in loads.iter_mut().zip(tensions) {
        load.along = tension;
        // What is left of forces that cancel is no load.
        if load.across.value <= NOTHING * most {
            *load = BoltLoad {
                along: tension,
                ..BoltLoad::default()
            };
        }
        if load.along.value.abs() <= NOTHING * most {
            load.along = Force::default();
        }
    }
    Ok(Distribution {
        loads,
        methods: [in_plane, out_of_plane],
        unknown,
        edge,
    })
}

/// Whether the load in the plane turns the connection.
pub(super) fn is_turned(bolts: &BoltPattern, case: &Resolved) -> Result<bool, Error> {
    let load = bolts.elastic(&case.plane)?.load;
    Ok(load.moment.value.abs() > NO_ARM * load.force.value)
}

type Found<T> = Result<(Vec<T>, Option<&'static Method>), Error>;

fn across(connection: &Connection, case: &Resolved, pulled: bool) -> Found<BoltLoad> {
    let bolts = &connection.bolts;
    let elastic = bolts.elastic(&case.plane)?;
    let turned = elastic.load.moment.value.abs() > NO_ARM * elastic.load.force.value;
    let unloaded = elastic.load.force.value == 0.0 && !turned;
    let held_to = |force: &crate::strength::group::BoltForce, times: f64| BoltLoad {
        x: force.x,
        y: force.y,
        across: times * force.resultant,
        along: Force::default(),
    };
    match connection.in_plane {
        None if turned => Err(Error::Mismatch(format!(
            "\"{}\" turns the connection in its plane: say by which method that comes to the bolts",
            case.name
        ))),
        Some(method @ InPlane::InstantaneousCentre(law)) if !unloaded => {
            let methods = &connection.joint.methods;
            if !matches!(methods.shear, ShearMethod::Aisc360 { .. }) {
                return Err(Error::Mismatch(
                    "the instantaneous centre is the method of AISC for its own bolts: take the elastic method with another code".into(),
                ));
            }
            if methods.slip != Slip::Permitted {
                return Err(Error::Mismatch(
                    "the instantaneous centre is for joints that bear: take the elastic method for one that must not slip".into(),
                ));
            }
            if pulled {
                return Err(Error::Mismatch(format!(
                    "\"{}\" pulls along the bolts, and the instantaneous centre knows bolts in shear alone: take the elastic method",
                    case.name
                )));
            }
            let found = bolts.instantaneous_centre(&case.plane, law)?;
            let most = found.forces.get(found.governing);
            let times = most.map_or(1.0, |most| (found.strength_needed / most.resultant).value);
            let loads = found.forces.iter().map(|force| held_to(force, times));
            Ok((loads.collect(), Some(method.source())))
        }
        _ => {
            let loads = elastic.forces.iter().map(|force| held_to(force, 1.0));
            let by = (!unloaded).then_some(InPlane::Elastic.source());
            Ok((loads.collect(), by))
        }
    }
}

/// What pulls along the bolts.
struct Pulled {
    tensions: Vec<Force>,
    method: Option<&'static Method>,
    unknown: Option<String>,
    edge: Option<Edge>,
}

fn along(connection: &Connection, case: &Resolved) -> Result<Pulled, Error> {
    let bolts = &connection.bolts;
    let pull = case.pull;
    let size = hypot(pull.about_x.value, pull.about_y.value);
    // Beside a force in the plane, too, a micrometre is no arm.
    let beside = case.plane.iter();
    let beside: f64 = beside
        .map(|own| own.force_x.value.abs() + own.force_y.value.abs())
        .sum();
    let tilts = size > NO_ARM * (pull.force.value.abs() + beside);
    if !tilts {
        let even = bolts.pull(PullLoad::force(pull.force), Tilting::Clamped)?;
        return Ok(Pulled {
            tensions: even.tensions,
            method: None,
            unknown: None,
            edge: None,
        });
    }
    let (mut unknown, mut edge) = (None, None);
    let found = match &connection.out_of_plane {
        None => {
            return Err(Error::Mismatch(format!(
                "\"{}\" tilts the connection out of its plane: say by which method that comes to the bolts",
                case.name
            )));
        }
        Some(OutOfPlane::Clamped) => bolts.pull(pull, Tilting::Clamped),
        Some(OutOfPlane::PressedEdge { ply }) => {
            let plate = connection.plate_of(ply);
            let corners = plate.map_or(&[][..], |plate| plate.outline.corners());
            let found = bolts.pull(pull, Tilting::AboutEdge(corners))?;
            if found.edge > Force::default() {
                unknown = on_something(connection, case, ply, corners)?;
                let up = away_from_edge(case);
                let centroid = bolts.centroid();
                let middle = dot((centroid.x.value, centroid.y.value), up);
                let press = -pull.force;
                edge = Some(Edge {
                    ply: ply.clone(),
                    up,
                    force: found.edge,
                    pressed: (press.value > 0.0).then(|| (press, middle - size / press.value)),
                });
            }
            Ok(found)
        }
    };
    let found = found?;
    Ok(Pulled {
        tensions: found.tensions,
        method: Some(found.method),
        unknown,
        edge,
    })
}

/// From the edge that a moment presses to the bolts.
fn away_from_edge(case: &Resolved) -> Vector {
    let size = hypot(case.pull.about_x.value, case.pull.about_y.value);
    (
        -case.pull.about_y.value / size,
        case.pull.about_x.value / size,
    )
}

/// Refuses an edge that hangs over what it is to press on, and would make the arms of the bolts longer than they are. A ply
/// whose outline is not given comes back.
fn on_something(
    connection: &Connection,
    case: &Resolved,
    ply: &str,
    corners: &[Point],
) -> Result<Option<String>, Error> {
    let centroid = connection.bolts.centroid();
    let up = away_from_edge(case);
    let from = |corner: &Point| {
        dot(
            ((corner.x - centroid.x).value, (corner.y - centroid.y).value),
            up,
        )
    };
    let edge = corners.iter().map(from).fold(f64::INFINITY, f64::min);
    // The method wants bolts that are symmetric about the plane of the moment, so that the edge presses in it.
    let (right, above): (Length, Length) = (from_base(edge * up.0), from_base(edge * up.1));
    let at = Point {
        x: centroid.x + right,
        y: centroid.y + above,
    };
    let mut unknown = None;
    for name in beside(&connection.joint.stack, ply) {
        let Some(plate) = connection.plate_of(name) else {
            unknown.get_or_insert_with(|| name.into());
            continue;
        };
        let outline = &plate.outline;
        let touches = outline.nearest_at_all((at.x.value, at.y.value)) <= NO_ARM;
        if !touches && !outline.contains(at) {
            return Err(Error::Mismatch(format!(
                "\"{}\" tilts \"{ply}\" about an edge that hangs over \"{name}\": what presses is the edge of that",
                case.name
            )));
        }
    }
    Ok(unknown)
}

/// The plies that one of this name may press on: from it to the first beyond the face between the parts; where no face is
/// said, its neighbours.
fn beside<'a>(stack: &'a Stack, ply: &'a str) -> Vec<&'a str> {
    let plies = stack.plies();
    let faces = stack.shear_planes();
    let mut found = Vec::new();
    let named = plies.iter().enumerate().filter(|(_, own)| own.name == ply);
    for (at, _) in named {
        // A face after ply n, counted from 1, lies before that of index n.
        let above = match faces.iter().filter(|face| **face <= at).max() {
            Some(face) => face.saturating_sub(1)..at,
            None if faces.is_empty() => at.saturating_sub(1)..at,
            None => at..at,
        };
        let below = match faces.iter().filter(|face| **face > at).min() {
            Some(face) => at + 1..face.saturating_add(1),
            None if faces.is_empty() => at + 1..at + 2,
            None => at..at,
        };
        for n in above.chain(below) {
            let name = plies.get(n).map(|own| own.name.as_str());
            found.extend(name.filter(|name| *name != ply && !found.contains(name)));
        }
    }
    found
}

#[cfg(test)]
mod tests;
