//! What a connection may not say.

use alloc::collections::{BTreeMap, BTreeSet};
use alloc::{format, string::String, vec::Vec};

use super::outline::{Vector, dot};
use super::{Combination, Connection, InPlane, OutOfPlane, Plate};
use crate::error::{Allowed, Error, at_most, out_of_range, sane_length, sane_text};
use crate::joint::{Pattern, Repeats};
use crate::math::hypot;
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::group::Point;
use crate::units::{Force, Length, from_base};

/// Enough for any code and any program; few enough for memory.
const MOST_CASES: usize = 1_000_000;
/// So many bolts in so many cases, each a whole check; what comes to each is kept.
const MOST_BOLT_CASES: usize = 1_000_000;
/// More than any connection has, and few enough to try every block of them: blocks grow with the square of their number, what
/// bears between two columns is no sum of what each does, and zigzags between holes, once a plate, with the cube.
const MOST_BOLTS: usize = 200;
/// Factors of combinations: a slip of the pen beyond. Notional loads of codes are two thousandths of others, unit loads are
/// taken a thousand times; less than a thousandth hides a case from the rule that each is in a combination.
const MOST_FACTOR: f64 = 1e3;
const LEAST_FACTOR: f64 = 1e-3;
/// No ends hold a plate so that it buckles over less than this of the way between them.
const STIFFEST_ENDS: f64 = 0.5;
/// Bolts so far out of line are in one row still, in metres.
const IN_ROW: f64 = 1e-5;

/// Refuses a description that contradicts itself.
pub(super) fn checked(connection: &Connection) -> Result<(), Error> {
    texts(connection)?;
    template(connection)?;
    plates(connection)?;
    loaded(connection)?;
    methods(connection)?;
    loads(connection)
}

fn no(why: String) -> Result<(), Error> {
    Err(Error::Mismatch(why))
}

fn texts(connection: &Connection) -> Result<(), Error> {
    sane_text("title of a connection", &connection.title)?;
    at_most(
        "number of plates",
        connection.plates.len(),
        connection.joint.stack.plies().len(),
    )?;
    for plate in &connection.plates {
        sane_text("name of a plate", &plate.ply)?;
    }
    if let Some(name) = &connection.loaded {
        sane_text("name of the loaded ply", name)?;
    }
    Ok(())
}

fn template(connection: &Connection) -> Result<(), Error> {
    let joint = &connection.joint;
    let load = &joint.load;
    if load.across != Force::default() || load.along != Force::default() {
        return no("the template of a connection has loads: say them in its load cases".into());
    }
    if load.repeats != Repeats::Never {
        return no(
            "the template of a connection has loads that repeat: say between which cases they alternate".into(),
        );
    }
    if joint.pattern != Pattern::Single {
        return no("the template of a connection has a pattern: it is one bolt, and the connection says where they stand".into());
    }
    for bolt in connection.bolts.bolts() {
        if bolt.relative_area.to_bits() != 1.0_f64.to_bits() {
            let one = Allowed::FromTo(1.0.into(), 1.0.into());
            return Err(out_of_range(
                "relative area of a bolt of a connection",
                bolt.relative_area,
                one,
            ));
        }
    }
    let several = connection.bolts.bolts().len() > 1;
    stands(connection)?;
    for ply in joint.stack.plies() {
        let name = &ply.name;
        if ply.pitch.or(ply.gauge).is_some() || several && ply.width.is_some() {
            return no(format!(
                "\"{name}\" has a distance to other holes, or a width: in a connection they come from the pattern and the outlines"
            ));
        }
        if several && ply.slot.is_some() {
            return no(format!(
                "\"{name}\" has slots, which lie along or across a load, and here every bolt may have its own"
            ));
        }
        if several && ply.bearing_strength.or(ply.bearing_yield).is_some() {
            return no(format!(
                "\"{name}\" states its bearing strength, which is that at one distance: state that of its material"
            ));
        }
        let stated = ply.end_distance.or(ply.edge_distance).or(ply.width);
        if stated.is_some() && connection.plate_of(&ply.name).is_some() {
            return no(format!(
                "\"{name}\" has an outline and distances of its own: say one of them"
            ));
        }
    }
    Ok(())
}

/// Bolts that can be there, and as many as can be checked.
fn stands(connection: &Connection) -> Result<(), Error> {
    let bolts = connection.bolts.bolts();
    at_most("bolts of a connection", bolts.len(), MOST_BOLTS)?;
    let diameter = connection.joint.bolt.thread.nominal_diameter().value;
    // By squares as wide as a bolt: one that stands in another is in its square or beside it.
    let mut squares: BTreeMap<(i64, i64), Vec<usize>> = BTreeMap::new();
    for (m, bolt) in bolts.iter().enumerate() {
        // At most a kilometre, and no bolt is thinner than a micrometre: it fits.
        #[allow(clippy::cast_possible_truncation)]
        let [x, y] = [bolt.x, bolt.y].map(|at| (at.value / diameter) as i64);
        let beside = (-1..=1)
            .flat_map(|dx| (-1..=1).map(move |dy| (x.saturating_add(dx), y.saturating_add(dy))));
        let near = beside.filter_map(|at| squares.get(&at)).flatten();
        let mut within = near.filter(|n| {
            bolts.get(**n).is_some_and(|other| {
                hypot((bolt.x - other.x).value, (bolt.y - other.y).value) < diameter
            })
        });
        if let Some(n) = within.next() {
            let (n, m) = (n + 1, m + 1);
            return no(format!("bolts {n} and {m} stand in one another"));
        }
        squares.entry((x, y)).or_default().push(m);
    }
    Ok(())
}

fn plates(connection: &Connection) -> Result<(), Error> {
    let plies = connection.joint.stack.plies();
    for (n, plate) in connection.plates.iter().enumerate() {
        let name = &plate.ply;
        if connection
            .plates
            .iter()
            .skip(n + 1)
            .any(|other| other.ply == *name)
        {
            return no(format!("\"{name}\" has two outlines"));
        }
        let mut own = plies.iter().filter(|ply| ply.name == *name).peekable();
        if own.peek().is_none() {
            return Err(Error::UnknownName {
                what: "ply of a plate",
                text: name.clone(),
                known: names(plies.iter().map(|ply| ply.name.as_str())),
            });
        }
        buckling(connection, plate)?;
        footprint(connection, plate)?;
        if plate.grain.is_some() && own.all(|ply| ply.timber.is_none()) {
            return no(format!("\"{name}\" has a grain, and is not of timber"));
        }
        for (n, bolt) in connection.bolts.bolts().iter().enumerate() {
            let at = Point {
                x: bolt.x,
                y: bolt.y,
            };
            if !plate.outline.contains(at) {
                return no(format!(
                    "bolt {} is outside the outline of \"{name}\"",
                    n + 1
                ));
            }
        }
    }
    Ok(())
}

/// The part that the loads act on is one of those that pull, and all plies of its name pull its way.
fn loaded(connection: &Connection) -> Result<(), Error> {
    let Some(name) = &connection.loaded else {
        return Ok(());
    };
    let stack = &connection.joint.stack;
    let plies = stack.plies();
    if plies.iter().all(|ply| ply.name != *name) {
        return Err(Error::UnknownName {
            what: "ply that is loaded",
            text: name.clone(),
            known: names(plies.iter().map(|ply| ply.name.as_str())),
        });
    }
    let own = plies.iter().zip(stack.pulls());
    let mut own = own.filter(|(ply, _)| ply.name == *name);
    let (up, down) = (
        own.clone().any(|(_, pull)| *pull > 0.0),
        own.any(|(_, pull)| *pull < 0.0),
    );
    if up && down {
        return no(format!(
            "the loads act on \"{name}\", and plies of that name pull both ways"
        ));
    }
    let pulls = stack.pulls().iter().any(|pull| *pull != 0.0);
    if pulls && !up && !down {
        return no(format!(
            "the loads act on \"{name}\", which is packing and pulls nothing"
        ));
    }
    Ok(())
}

/// A plate that would buckle over less than its ends can make of the way from its bolts to where it is held.
fn buckling(connection: &Connection, plate: &Plate) -> Result<(), Error> {
    let Some(length) = plate.buckling_length else {
        return Ok(());
    };
    sane_length("buckling length of a plate", length)?;
    let Some(side) = plate.held else {
        return no(format!(
            "\"{}\" has a buckling length, and is held nowhere",
            plate.ply
        ));
    };
    let to = side.direction();
    let bolts = connection.bolts.bolts().iter();
    let places: Vec<Vector> = bolts.map(|own| (own.x.value, own.y.value)).collect();
    let levels = places.iter().map(|at| dot(*at, to));
    let nearest = levels.fold(f64::NEG_INFINITY, f64::max);
    let row = places.iter().filter(|at| dot(**at, to) >= nearest - IN_ROW);
    let ways: Vec<f64> = row.filter_map(|at| plate.outline.reach(*at, to)).collect();
    // At most some hundreds: exact.
    #[allow(clippy::cast_precision_loss)]
    let mean = ways.iter().sum::<f64>() / ways.len().max(1) as f64;
    let least = STIFFEST_ENDS * mean;
    if length.value < least * (1.0 - 1e-6) {
        let least: Length = from_base(least);
        let allowed = Allowed::AtLeast(least.into());
        return Err(out_of_range(
            format!("buckling length of \"{}\"", plate.ply),
            length,
            allowed,
        ));
    }
    Ok(())
}

/// What is fixed to a plate lies on it, and its edge beside the bolts.
fn footprint(connection: &Connection, plate: &Plate) -> Result<(), Error> {
    let Some(footprint) = &plate.footprint else {
        return Ok(());
    };
    let outline = &plate.outline;
    let is_on = |corner: &Point| {
        outline.contains(*corner)
            || outline.nearest_at_all((corner.x.value, corner.y.value)) <= IN_ROW
    };
    if !footprint.corners().iter().all(is_on) {
        return no(format!(
            "what is fixed to \"{}\" reaches beyond its outline",
            plate.ply
        ));
    }
    let diameter = connection.joint.bolt.thread.nominal_diameter();
    let mut bolts = connection.bolts.bolts().iter().enumerate();
    let in_edge = bolts.find(|(_, bolt)| {
        footprint.nearest_at_all((bolt.x.value, bolt.y.value)) < 0.5 * diameter.value
    });
    match in_edge {
        None => Ok(()),
        Some((n, _)) => no(format!(
            "bolt {} stands in the edge of what is fixed to \"{}\"",
            n + 1,
            plate.ply
        )),
    }
}

fn names<'a>(list: impl Iterator<Item = &'a str>) -> String {
    list.collect::<Vec<_>>().join(", ")
}

fn methods(connection: &Connection) -> Result<(), Error> {
    let has_plate = |name: &str| connection.plate_of(name).is_some();
    if let Some(OutOfPlane::PressedEdge { ply }) = &connection.out_of_plane {
        if !has_plate(ply) {
            return no(format!(
                "moments are to tilt \"{ply}\" about its edge, and its outline is not given"
            ));
        }
        if is_packing(connection, ply) {
            return no(format!(
                "moments are to tilt \"{ply}\" about its edge, and it is packing that pulls nothing"
            ));
        }
    }
    if let Some(OutOfPlane::Clamped) = connection.out_of_plane {
        if connection.joint.torque().is_none() {
            return no(
            "moments are to be carried with the plies clamped, and no torque is controlled that clamps them".into(),
        );
        }
    }
    if let (Some(InPlane::InstantaneousCentre(_)), [_, ..]) =
        (connection.in_plane, connection.alternations.as_slice())
    {
        return no("the instantaneous centre is of loads that come once: take the elastic method for loads that alternate".into());
    }
    let Some(prying) = &connection.prying else {
        return Ok(());
    };
    if connection.joint.load.prying.is_some() {
        return no(
            "the template says what prying adds, and the connection works it out: say one of them"
                .into(),
        );
    }
    if !matches!(
        connection.joint.methods.tension,
        TensionMethod::Aisc360 { .. }
    ) {
        return no("prying is worked out here for connections by AISC 360 only: for others say in the template whether the load has it in it".into());
    }
    if is_packing(connection, &prying.ply) {
        return no(format!(
            "\"{}\" is to pry, and is packing that pulls nothing",
            prying.ply
        ));
    }
    let plies = connection.joint.stack.plies();
    if plies.iter().filter(|ply| ply.name == prying.ply).count() == 1 {
        return super::prying::fits(connection, prying);
    }
    Err(Error::UnknownName {
        what: "ply that pries",
        text: prying.ply.clone(),
        known: names(plies.iter().map(|ply| ply.name.as_str())),
    })
}

/// Whether a ply of a name pulls nothing where others do.
fn is_packing(connection: &Connection, name: &str) -> bool {
    let stack = &connection.joint.stack;
    let some = stack.pulls().iter().any(|pull| *pull != 0.0);
    let mut plies = stack.plies().iter().zip(stack.pulls());
    some && plies.any(|(ply, pull)| ply.name == name && *pull == 0.0)
}

fn loads(connection: &Connection) -> Result<(), Error> {
    let cases = connection.cases.iter().map(|case| case.name.as_str());
    let combined = connection.combinations.iter().map(|own| own.name.as_str());
    let mut names: Vec<&str> = cases.chain(combined).collect();
    let alternations = connection.alternations.len();
    at_most(
        "number of load cases",
        names.len().saturating_add(alternations),
        MOST_CASES,
    )?;
    let parts = connection.combinations.iter().map(|own| own.parts.len());
    let parts = parts.fold(0, usize::saturating_add);
    at_most("number of parts of combinations", parts, MOST_CASES)?;
    let checked = if connection.combinations.is_empty() {
        connection.cases.len()
    } else {
        connection.combinations.len()
    };
    // An end of what alternates is a case that is checked too.
    let checked = checked.saturating_add(alternations.saturating_mul(3));
    let each = connection.bolts.bolts().len();
    at_most(
        "number of bolts times that of load cases",
        checked.saturating_mul(each),
        MOST_BOLT_CASES,
    )?;
    for name in &names {
        sane_text("name of a load case", name)?;
    }
    if connection.cases.is_empty() {
        return no("a connection without a load case".into());
    }
    names.sort_unstable();
    let mut pairs = names.iter().zip(names.iter().skip(1));
    if let Some((name, _)) = pairs.find(|(a, b)| a == b) {
        return no(format!(
            "two load cases or combinations are called \"{name}\""
        ));
    }
    if names.iter().any(|name| name.trim().is_empty()) {
        return no("a load case without a name".into());
    }
    for alternation in &connection.alternations {
        if alternation.from == alternation.to {
            return no(format!("\"{}\" alternates with itself", alternation.from));
        }
        for name in [&alternation.from, &alternation.to] {
            if names.binary_search(&name.as_str()).is_err() {
                return no(format!(
                    "\"{name}\" alternates, and is no load case or combination"
                ));
            }
        }
    }
    let mut cases: Vec<&str> = connection
        .cases
        .iter()
        .map(|case| case.name.as_str())
        .collect();
    cases.sort_unstable();
    for combination in &connection.combinations {
        combination_is_sane(&cases, combination)?;
    }
    if connection.combinations.is_empty() {
        return Ok(());
    }
    // A factor of 0 leaves a case out as well as silence does.
    let parts = connection.combinations.iter().flat_map(|own| &own.parts);
    let parts = parts.filter(|part| part.factor != 0.0);
    let mut used: Vec<&str> = parts.map(|part| part.case.as_str()).collect();
    used.sort_unstable();
    match connection
        .cases
        .iter()
        .find(|case| used.binary_search(&case.name.as_str()).is_err())
    {
        None => Ok(()),
        Some(case) => no(format!(
            "\"{}\" is in no combination, and where there are combinations they alone are checked",
            case.name
        )),
    }
}

/// By the names of the cases, in order.
fn combination_is_sane(cases: &[&str], combination: &Combination) -> Result<(), Error> {
    let name = &combination.name;
    if combination.parts.is_empty() {
        return no(format!("the combination \"{name}\" has no load cases"));
    }
    let mut once: BTreeSet<&str> = BTreeSet::new();
    for part in &combination.parts {
        let near = part.factor.abs() <= MOST_FACTOR; // false for NaN
        if !near {
            let allowed = Allowed::FromTo((-MOST_FACTOR).into(), MOST_FACTOR.into());
            return Err(out_of_range("factor of a load case", part.factor, allowed));
        }
        let size = part.factor.abs();
        if size > 0.0 && size < LEAST_FACTOR {
            let allowed = Allowed::FromTo(LEAST_FACTOR.into(), MOST_FACTOR.into());
            return Err(out_of_range(
                "size of the factor of a load case",
                size,
                allowed,
            ));
        }
        if !once.insert(&part.case) {
            return no(format!(
                "the combination \"{name}\" has \"{}\" twice",
                part.case
            ));
        }
        if cases.binary_search(&part.case.as_str()).is_err() {
            return no(format!(
                "the combination \"{name}\" has \"{}\", which is no load case",
                part.case
            ));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests;
