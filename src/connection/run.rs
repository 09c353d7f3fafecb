//! The check of a connection: every bolt in every case, and what the bolts do together.

use alloc::collections::BTreeSet;
use alloc::{format, string::String, vec::Vec};

use super::forces::{Distribution, Known, Resolved, is_turned, of_known};
use super::modes::{OfCase, Own, group};
use super::verdict::{is_worse, worse};
use super::{
    Alternation, BoltLoad, BoltVerdict, CaseVerdict, Connection, ConnectionVerdict, around,
    check_bolt, prying, sane,
};
use crate::caution::Caution;
use crate::error::Error;
use crate::joint::{
    Joint, JointLoad, Missing, Pattern, Prying, Repeats, Sheet, Verdict, Word, tightening_order,
};
use crate::math::hypot;
use crate::source::Method;
use crate::strength::check::Check;
use crate::strength::group::{FastenerResistance, Point};
use crate::units::{Force, from_base};

/// The load of one bolt, and how it repeats.
struct Asked {
    load: BoltLoad,
    repeats: Repeats,
}

pub(super) fn run(connection: &Connection) -> Result<ConnectionVerdict, Error> {
    sane::checked(connection)?;
    let mut own = Own::new(connection)?;
    let mut bolts: Vec<BoltVerdict> = Vec::with_capacity(connection.bolts.bolts().len());
    let mut cases = Vec::new();
    let mut missing: Vec<Missing> = Vec::new();
    let mut cautions: Vec<Caution> = Vec::new();
    let mut methods: Vec<&'static Method> = Vec::new();
    let known = Known::of(connection);
    for case in every_case(&known, connection)? {
        let Distribution {
            loads,
            methods: by,
            edge,
            ..
        } = of_known(connection, &case)?;
        for method in by.into_iter().flatten() {
            add(&mut methods, method);
        }
        let asked = loads.iter().map(|load| Asked {
            load: *load,
            repeats: Repeats::Never,
        });
        let asked: Vec<Asked> = asked.collect();
        let (mut verdict, fasteners) = one_case(
            connection,
            (case.name.clone(), cases.len()),
            &asked,
            &mut bolts,
            &mut own,
            &mut missing,
            &mut cautions,
        )?;
        let turned = is_turned(&connection.bolts, &case)?;
        if let Some(check) = group::check(connection, &loads, turned, fasteners) {
            verdict.word = worse(verdict.word, own.take(cases.len(), check));
        }
        let (word, used) = own.look(&OfCase {
            connection,
            number: cases.len(),
            loads: &loads,
            turned,
            edge: edge.as_ref(),
        });
        verdict.word = worse(verdict.word, word);
        verdict.utilisation = greater(verdict.utilisation, used);
        cases.push(verdict);
    }
    for alternation in &connection.alternations {
        let asked = alternating(connection, &known, alternation)?;
        let name = format!("{} <> {}", alternation.from, alternation.to);
        let (verdict, _) = one_case(
            connection,
            (name, cases.len()),
            &asked,
            &mut bolts,
            &mut own,
            &mut missing,
            &mut cautions,
        )?;
        cases.push(verdict);
    }
    let comes = |load: &BoltLoad| load.across != Force::default() || load.along != Force::default();
    if !cases.iter().flat_map(|case| &case.loads).any(comes) {
        return Err(Error::Mismatch(
            "the loads cancel each other in every case and combination: none comes to any bolt"
                .into(),
        ));
    }
    let own = own.done();
    for each in own.missing {
        add(&mut missing, each);
    }
    for each in own.cautions {
        add(&mut cautions, each);
    }
    for method in &methods {
        if let Some(each) = Caution::of_method(method) {
            add(&mut cautions, each);
        }
    }
    let order = tightening_order(&connection.bolts);
    for each in order.cautions().iter() {
        add(&mut cautions, *each);
    }
    Ok(ConnectionVerdict {
        title: connection.title.clone(),
        methods,
        bolts,
        cases,
        checks: own.checks,
        findings: own.findings,
        missing,
        set_aside: connection.joint.set_aside.clone(),
        order,
        cautions,
    })
}

fn add<T: PartialEq>(list: &mut Vec<T>, one: T) {
    if !list.contains(&one) {
        list.push(one);
    }
}

fn greater(a: Option<f64>, b: Option<f64>) -> Option<f64> {
    a.into_iter().chain(b).reduce(f64::max)
}

/// The load of the bolt that carries most in any case: across the axis, and where nothing acts across, along it.
pub(super) fn most_loaded(connection: &Connection) -> Result<BoltLoad, Error> {
    sane::checked(connection)?;
    let mut most: Option<BoltLoad> = None;
    for case in every_case(&Known::of(connection), connection)? {
        for load in of_known(connection, &case)?.loads {
            let is_more = most.is_none_or(|most| {
                (load.across, load.along)
                    .partial_cmp(&(most.across, most.along))
                    .is_some_and(core::cmp::Ordering::is_gt)
            });
            if is_more {
                most = Some(load);
            }
        }
    }
    most.ok_or_else(|| Error::Mismatch("no load case comes to any bolt".into()))
}

/// What is checked, and the ends of what alternates.
fn every_case(known: &Known, connection: &Connection) -> Result<Vec<Resolved>, Error> {
    let mut cases = known.resolved()?;
    let mut names: BTreeSet<String> = cases.iter().map(|case| case.name.clone()).collect();
    for name in connection
        .alternations
        .iter()
        .flat_map(|own| [&own.from, &own.to])
    {
        if names.insert(name.clone()) {
            cases.push(known.by_name(name)?);
        }
    }
    Ok(cases)
}

/// Every bolt in one case.
fn one_case(
    connection: &Connection,
    (name, number): (String, usize),
    asked: &[Asked],
    bolts: &mut Vec<BoltVerdict>,
    own: &mut Own,
    missing: &mut Vec<Missing>,
    cautions: &mut Vec<Caution>,
) -> Result<(CaseVerdict, Vec<Option<FastenerResistance>>), Error> {
    let (mut word, mut bolt, mut most) = (Word::Holds, 1, None);
    let mut worst = None;
    let mut fasteners = Vec::with_capacity(asked.len());
    for (n, one) in asked.iter().enumerate() {
        let (verdict, pried) = bolt_of(connection, n, one)?;
        let used = verdict.governing().map(|check| check.utilisation.value);
        let rank = (verdict.word(), used);
        word = worse(word, rank.0);
        most = greater(most, used);
        if worst.is_none_or(|worst| is_worse(rank, worst)) {
            (worst, bolt) = (Some(rank), n + 1);
        }
        if let Some(pried) = pried {
            word = worse(word, own.take(number, pried));
        }
        for each in &verdict.missing {
            add(missing, each.clone());
        }
        for each in &verdict.cautions {
            add(cautions, *each);
        }
        fasteners.push(group::fastener(connection, &one.load, &verdict));
        keep(connection, bolts, (n, number), &one.load, verdict);
    }
    let verdict = CaseVerdict {
        name,
        loads: asked.iter().map(|one| one.load).collect(),
        word,
        bolt,
        utilisation: most,
    };
    Ok((verdict, fasteners))
}

/// Keeps the worst of a bolt.
fn keep(
    connection: &Connection,
    bolts: &mut Vec<BoltVerdict>,
    (n, case): (usize, usize),
    load: &BoltLoad,
    verdict: Verdict,
) {
    let used = verdict.governing().map(|check| check.utilisation.value);
    if let Some(known) = bolts.get_mut(n) {
        known.most_across = known.most_across.max(load.across);
        known.most_along = known.most_along.max(load.along);
        known.least_along = known.least_along.min(load.along);
        let so_far = known
            .verdict
            .governing()
            .map(|check| check.utilisation.value);
        if is_worse((verdict.word(), used), (known.verdict.word(), so_far)) {
            (known.case, known.load, known.verdict) = (case, *load, verdict);
        }
        known.utilisation = greater(known.utilisation, used);
        return;
    }
    let at = connection.bolts.bolts().get(n);
    let at = at.map_or(connection.bolts.centroid(), |bolt| Point {
        x: bolt.x,
        y: bolt.y,
    });
    bolts.push(BoltVerdict {
        number: n + 1,
        at,
        case,
        load: *load,
        verdict,
        most_across: load.across,
        most_along: load.along,
        least_along: load.along,
        utilisation: used,
    });
}

/// The verdict of one bolt, and what prying adds to it.
fn bolt_of(
    connection: &Connection,
    bolt: usize,
    asked: &Asked,
) -> Result<(Verdict, Option<Check>), Error> {
    let (joint, member) = around::joint_of(connection, bolt, &asked.load)?;
    let load = JointLoad {
        across: asked.load.across,
        along: asked.load.along.max(Force::default()),
        repeats: asked.repeats,
        ..connection.joint.load
    };
    let Some(plate) = connection
        .prying
        .as_ref()
        .filter(|_| load.along > Force::default())
    else {
        return Ok((check_bolt(&joint, &load, member.as_ref())?, None));
    };
    // First without it, for what the bolt bears along its axis beside its load across.
    let alone = JointLoad {
        prying: Some(Prying::InLoad),
        ..load
    };
    let before = check_bolt(&joint, &alone, member.as_ref())?;
    let Some(found) = prying::pried(connection, plate, &joint, &alone, &before)? else {
        // What is not known of the ply or the bolt leaves the prying unsaid.
        return Ok((check_bolt(&joint, &load, member.as_ref())?, None));
    };
    let pried = JointLoad {
        along: found.along,
        repeats: match alone.repeats {
            // The prying comes and goes with the load.
            Repeats::Between {
                across_least,
                along_least,
                cycles,
            } => Repeats::Between {
                across_least,
                along_least: along_least.min(found.along),
                cycles,
            },
            other => other,
        },
        ..alone
    };
    let verdict = check_bolt(&joint, &pried, member.as_ref())?;
    Ok((verdict, Some(found.check)))
}

/// Each bolt between two loads.
fn alternating(
    connection: &Connection,
    known: &Known,
    own: &Alternation,
) -> Result<Vec<Asked>, Error> {
    let [from, to] = [&own.from, &own.to].map(|name| {
        let case = known.by_name(name)?;
        of_known(connection, &case).map(|found| found.loads)
    });
    let (from, to) = (from?, to?);
    let asked = from.iter().zip(&to).map(|(a, b)| {
        let (great, small) = if a.across < b.across { (b, a) } else { (a, b) };
        let range: Force = from_base(hypot((great.x - small.x).value, (great.y - small.y).value));
        // By the instantaneous centre a bolt is held to more than its force; there no load alternates (see `forces`).
        let least = (great.across - range).max(-great.across);
        let along = a.along.max(b.along);
        Asked {
            load: BoltLoad { along, ..*great },
            repeats: Repeats::Between {
                across_least: least,
                along_least: a.along.min(b.along).min(along.max(Force::default())),
                cycles: own.cycles,
            },
        }
    });
    Ok(asked.collect())
}

/// The verdict of one bolt, counted from 1, in a case or combination by its name.
pub(super) fn one_bolt(connection: &Connection, name: &str, bolt: usize) -> Result<Verdict, Error> {
    let case = Known::of(connection).by_name(name)?;
    let loads = of_known(connection, &case)?.loads;
    let Some((n, load)) = loads.iter().enumerate().find(|(n, _)| n + 1 == bolt) else {
        return Err(Error::Mismatch(format!("there is no bolt {bolt}")));
    };
    let asked = Asked {
        load: *load,
        repeats: Repeats::Never,
    };
    bolt_of(connection, n, &asked).map(|(verdict, _)| verdict)
}

pub(super) fn sheet(connection: &Connection, verdict: &ConnectionVerdict) -> Result<Sheet, Error> {
    let worst = run(connection)?;
    if worst != *verdict {
        return Err(Error::Mismatch(format!(
            "the verdict is not that of the connection \"{}\": check it again",
            connection.title
        )));
    }
    let Some(bolt) = worst.governing_bolt() else {
        return Err(Error::Mismatch("there is no bolt".into()));
    };
    let along = connection.bolts.bolts().len();
    let joint = Joint {
        pattern: if along > 1 {
            Pattern::Rows { along, across: 1 }
        } else {
            Pattern::Single
        },
        ..connection.joint.clone()
    };
    let sheet = Sheet::of_word(&joint, &bolt.verdict, worst.word())?;
    Ok(if along > 1 {
        sheet.for_group(worst.order)
    } else {
        sheet
    })
}

#[cfg(test)]
mod tests;
