//! Connections of a few bolts and plates, of figures that are usual and of figures that are not.

use shankline::connection::{
    Alternation, Combination, Connection, InPlane, LoadCase, OutOfPlane, Outline, PlatePrying, Side,
};
use shankline::joint::{Joint, JointBuilder, JointMethods, Prying, RuleSet, Word};
use shankline::preload::{NutFactor, PreloadTarget};
use shankline::prelude::*;
use shankline::strength::group::{BoltPattern, DeformationLaw, GroupBolt, Point};
use shankline::units::{degrees, newton_metres};

use crate::any_joint::Dice;
use crate::{finite, places, row, sound};

pub fn run(input: &[u8]) -> Result<(), String> {
    let numbers = row(input);
    let (change, own) = numbers.split_at(numbers.len().min(16));
    let dice = &mut Dice::new(change);
    let Some(mut connection) = any(own) else {
        return Ok(());
    };
    let mut document =
        serde_json::to_value(&connection).map_err(|why| format!("not written: {why}"))?;
    let usual = dice.below(2) == 0;
    if !usual {
        sound::spoil(&mut document, dice);
        let Ok(spoilt) = serde_json::from_value(document.clone()) else {
            return Ok(());
        };
        connection = spoilt;
        document =
            serde_json::to_value(&connection).map_err(|why| format!("not written: {why}"))?;
    }
    let told = |why: String| format!("{why}\n{document}");
    let again = serde_json::from_value::<Connection>(document.clone());
    let again = again.map_err(|why| told(format!("not read back: {why}")))?;
    let written =
        serde_json::to_value(&again).map_err(|why| told(format!("not written again: {why}")))?;
    if written != document {
        return Err(told(format!("reads back as another: {written}")));
    }
    let Ok(verdict) = connection.check() else {
        return Ok(());
    };
    finite(&format!("{verdict:?}")).map_err(told)?;
    for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
        finite(&verdict.render(system).to_string()).map_err(told)?;
    }
    if again.check().as_ref().map(|own| own.word()) != Ok(verdict.word()) {
        return Err(told("another word after it was read back".into()));
    }
    if verdict.word() == Word::DoesNotHold {
        let times = 1.01 * 100_f64.powf(dice.between(0.0, 0.99));
        let mut more = connection.clone();
        // All at once: of several that act against each other, one alone may well relieve the bolts.
        for case in &mut more.cases {
            for force in [&mut case.force_x, &mut case.force_y, &mut case.force_z] {
                *force *= times;
            }
            for moment in [&mut case.moment_x, &mut case.moment_y, &mut case.moment_z] {
                *moment *= times;
            }
        }
        if let Ok(after) = more.check() {
            if after.word() != Word::DoesNotHold {
                return Err(told(format!(
                    "{times} times the load helps: {}",
                    after.word()
                )));
            }
        }
    }
    if !verdict.holds() {
        silence(&connection, &document, dice).map_err(told)?;
    }
    Ok(())
}

/// Facts that may be left out: each of them leaves a question open, or was none.
const FACTS: [&str; 12] = [
    "material",
    "hole",
    "held",
    "in_plane",
    "out_of_plane",
    "load_factor",
    "prying",
    "tightening",
    "grade",
    "finish",
    "plates",
    "hardness",
];

fn silence(
    connection: &Connection,
    document: &serde_json::Value,
    dice: &mut Dice,
) -> Result<(), String> {
    let all = places::paths(document);
    let facts: Vec<_> = all
        .iter()
        .filter(|place| {
            place
                .last()
                .is_some_and(|last| FACTS.contains(&last.as_str()))
        })
        // A plate of which nothing is said has the distances that the template states, or none.
        .filter(|_| !connection.bolts.bolts().is_empty())
        .collect();
    for _ in 0..3 {
        if facts.is_empty() {
            return Ok(());
        }
        let place = facts[dice.below(facts.len())];
        let mut less = document.clone();
        places::remove(&mut less, place);
        let Ok(less) = serde_json::from_value::<Connection>(less) else {
            continue;
        };
        if less.check().is_ok_and(|after| after.holds()) {
            return Err(format!("it holds without {place:?}"));
        }
    }
    Ok(())
}

fn template(dice: &mut Dice) -> JointBuilder {
    let thread = dice.one(&["M16", "M12", "M20", "M24"]);
    let materials = ["S275 steel", "S355 steel", "6061-T6 aluminium, typical"];
    let methods = dice.one(&[
        JointMethods::en_1993(),
        JointMethods::en_1993(),
        JointMethods::machine_design(2.0),
        JointMethods::aisc_lrfd(AiscEdition::E2016),
        JointMethods::aisc_asd(AiscEdition::E2022),
        JointMethods::bs_5950(),
        JointMethods::is_800(),
        JointMethods::as_4100(),
        JointMethods::csa_s16(),
    ]);
    let mut bolt = Joint::builder(thread)
        .methods(methods)
        .washers(WasherStyle::Iso7090);
    for name in ["plate", "support", "cover"]
        .into_iter()
        .take(2 + dice.below(2))
    {
        bolt = bolt.ply(
            name,
            millimetres(dice.between(4.0, 25.0)).plus_minus(millimetres(0.3)),
        );
        if !dice.now_and_then(4.0) {
            bolt = bolt.material(dice.one(&materials));
        }
    }
    bolt = bolt.rules(RuleSet::En1090.rules(UnitSystem::Si));
    if !dice.now_and_then(5.0) {
        bolt = bolt.load_factor(dice.between(1.0, 1.5));
    }
    if !dice.now_and_then(5.0) {
        bolt = bolt.prying(dice.one(&[Prying::None, Prying::InLoad]));
    }
    if dice.now_and_then(40.0) {
        if let Ok(factor) = NutFactor::new(0.16, 0.2, 0.26) {
            bolt = bolt.torque(factor, PreloadTarget::Reusable);
        }
    }
    bolt
}

/// The connection of a row of numbers; none where a builder refuses it.
pub fn any(numbers: &[u16]) -> Option<Connection> {
    let dice = &mut Dice::new(numbers);
    let bolt = template(dice);
    let (rows, columns) = (1 + dice.below(4), 1 + dice.below(3));
    let (pitch, gauge) = (dice.between(30.0, 120.0), dice.between(30.0, 120.0));
    let pattern = match dice.below(6) {
        0 => BoltPattern::circle(3 + dice.below(6), millimetres(2.0 * pitch)).ok()?,
        1 => BoltPattern::new((0..1 + dice.below(5)).map(|_| {
            GroupBolt::new(
                millimetres(dice.between(-200.0, 200.0)),
                millimetres(dice.between(-200.0, 200.0)),
            )
        }))
        .ok()?,
        _ => BoltPattern::rows_and_columns(rows, columns, millimetres(pitch), millimetres(gauge))
            .ok()?,
    };
    #[allow(clippy::cast_precision_loss)] // a few bolts
    let half = (0.5 * pitch * columns.max(rows) as f64 + 60.0)
        .max(220.0 * f64::from(u8::from(dice.now_and_then(30.0))));
    let mut connection = Connection::builder(bolt)
        .title("connection of the dice (invented)")
        .bolts(pattern);
    for name in ["plate", "support"] {
        if dice.now_and_then(10.0) {
            continue;
        }
        let outline = match dice.below(4) {
            0 => Outline::round(millimetres(2.6 * half)),
            1 => {
                let corners = [
                    (-1.0, -1.0),
                    (1.0, -1.0),
                    (dice.between(0.5, 2.0), 1.0),
                    (-1.0, 1.0),
                ];
                let point = |(x, y): (f64, f64)| Point {
                    x: millimetres(half * x),
                    y: millimetres(half * y),
                };
                Outline::polygon(corners.map(point))
            }
            _ => Outline::rectangle(millimetres(2.0 * half), millimetres(2.0 * half)),
        };
        connection = connection.plate(name, outline.ok()?);
        if !dice.now_and_then(20.0) {
            let slanting = Side::Towards(degrees(dice.between(0.0, 360.0)));
            connection = connection.held(dice.one(&[
                Side::Bottom,
                Side::Top,
                Side::Left,
                Side::Right,
                slanting,
            ]));
        }
    }
    connection = match dice.below(4) {
        0 => connection.in_plane(InPlane::InstantaneousCentre(DeformationLaw::Aisc)),
        _ => connection.in_plane(InPlane::Elastic),
    };
    connection = match dice.below(3) {
        0 => connection,
        1 => connection.out_of_plane(OutOfPlane::Clamped),
        _ => connection.out_of_plane(OutOfPlane::PressedEdge {
            ply: "support".into(),
        }),
    };
    if dice.now_and_then(15.0) {
        let [tributary, stem, edge] =
            [60.0, 40.0, 35.0].map(|own| millimetres(own * dice.between(0.5, 2.0)));
        connection = connection.prying(PlatePrying::new("plate", tributary, stem, edge));
    }
    let most = 10_f64.powf(dice.between(0.0, 2.3));
    for name in ["a", "b", "c"].into_iter().take(1 + dice.below(3)) {
        let pulled = dice.now_and_then(40.0);
        let force = [(); 3].map(|()| newtons(1e3 * dice.between(-most, most)));
        let force = if pulled {
            force
        } else {
            [force[0], force[1], newtons(0.0)]
        };
        let at = [(); 3].map(|()| millimetres(dice.between(-150.0, 150.0)));
        let mut case = LoadCase::new(
            name,
            force,
            if pulled {
                at
            } else {
                [at[0], at[1], millimetres(0.0)]
            },
        );
        if dice.now_and_then(20.0) {
            let about = [(); 3].map(|()| newton_metres(10.0 * dice.between(-most, most)));
            case = case.with_moment(if pulled {
                about
            } else {
                [newton_metres(0.0), newton_metres(0.0), about[2]]
            });
        }
        connection = connection.cases([case]);
    }
    if dice.now_and_then(15.0) {
        connection = connection.combination(
            Combination::new("both")
                .plus(dice.between(-1.0, 1.5), "a")
                .plus(1.2, "b"),
        );
    }
    if dice.now_and_then(10.0) {
        connection = connection.alternation(Alternation::new("a", "b"));
    }
    connection.build().ok()
}
