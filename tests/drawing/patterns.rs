//! Plans of chosen and of random connections, as pictures and as DXF.

use std::{fs, path::Path};

use shankline::connection::{Connection, ConnectionVerdict};
use shankline::drawing::{self, Style};
use shankline::joint::Word;
use shankline::prelude::*;
use shankline::units::{Measured as _, shown};

use super::connections::{chosen, random};
use super::dxf::read;
use super::pictures::sound;
use super::svg::{Element, inspect, numbers};

fn units(connection: &Connection) -> UnitSystem {
    if connection.joint.bolt.thread.is_unified() {
        UnitSystem::UsCustomary
    } else {
        UnitSystem::Si
    }
}

/// Bolts stand where they should, and their arrows point where their forces do.
fn places(
    all: &[Element],
    connection: &Connection,
    loads: &[shankline::connection::BoltLoad],
) -> Result<(), String> {
    let bolts = connection.bolts.bolts();
    let circles: Vec<[f64; 3]> = all
        .iter()
        .filter(|own| own.name == "circle" && own.class() == "o W")
        .map(|own| [own.number("cx"), own.number("cy"), own.number("r")])
        .collect();
    // The second ring of the worst bolt is drawn first, marks of loads are drawn last.
    let circles = circles.get(1..=bolts.len()).ok_or("bolts are missing")?;
    let far = |axis: usize| {
        let of = |n: usize| {
            if axis == 0 {
                bolts[n].x.base()
            } else {
                -bolts[n].y.base()
            }
        };
        (1..bolts.len())
            .max_by(|a, b| (of(*a) - of(0)).abs().total_cmp(&(of(*b) - of(0)).abs()))
            .map(|n| (n, of(n) - of(0)))
    };
    let scale = (0..2)
        .filter_map(|axis| {
            far(axis).map(|(n, away)| (away.abs(), (circles[n][axis] - circles[0][axis]) / away))
        })
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map_or(0.0, |own| own.1);
    let arrows: Vec<Vec<f64>> = all
        .iter()
        .filter(|own| own.name == "path" && own.class() == "o")
        .map(|own| numbers(own.get("d").unwrap()))
        .filter(|own| own.len() == 4)
        .collect();
    for (n, ((bolt, [x, y, r]), load)) in bolts.iter().zip(circles).zip(loads).enumerate() {
        let wanted = [
            circles[0][0] + scale * (bolt.x - bolts[0].x).base(),
            circles[0][1] - scale * (bolt.y - bolts[0].y).base(),
        ];
        if (x - wanted[0]).abs() > 0.05 || (y - wanted[1]).abs() > 0.05 {
            return Err(format!("bolt {} is at {x} {y}, not at {wanted:?}", n + 1));
        }
        let size = load.x.base().hypot(load.y.base());
        if size == 0.0 || load.across.base() == 0.0 {
            continue;
        }
        let way = [load.x.base() / size, -load.y.base() / size];
        let is_its = |own: &&Vec<f64>| {
            let (from, to) = ([own[0] - x, own[1] - y], [own[2] - x, own[3] - y]);
            let along = to[0] * way[0] + to[1] * way[1];
            let aside = (to[0] * way[1] - to[1] * way[0]).abs();
            (from[0] - r * way[0]).abs() < 0.02
                && (from[1] - r * way[1]).abs() < 0.02
                && along > *r
                && aside < 0.03
        };
        if !arrows.iter().any(|own| is_its(&own)) {
            return Err(format!("bolt {} has no arrow", n + 1));
        }
    }
    Ok(())
}

fn examined(
    connection: &Connection,
    verdict: &ConnectionVerdict,
    case: Option<&str>,
    system: UnitSystem,
) -> Result<drawing::Drawing, String> {
    let page =
        drawing::pattern(connection, verdict, case, system).map_err(|why| why.to_string())?;
    let elements = sound(&page)?;
    let texts: Vec<&str> = elements
        .iter()
        .filter(|own| own.name == "text")
        .map(|own| own.text.as_str())
        .collect();
    let has = |text: &str| texts.contains(&text);
    let word = verdict.word().to_string().to_uppercase();
    if !texts.iter().any(|own| own.starts_with(&word)) {
        return Err(format!("it does not say {word}"));
    }
    if !texts.iter().any(|own| own.starts_with("Governs: ")) {
        return Err("it does not say what governs".into());
    }
    let drawn = texts
        .iter()
        .find(|own| own.starts_with("Load case drawn: \""))
        .ok_or("which case?")?;
    let which = match case {
        Some(name) => verdict.cases.iter().find(|own| own.name == name).unwrap(),
        None => verdict
            .cases
            .iter()
            .find(|own| {
                drawn.contains(
                    &Style::Plain
                        .fit(&own.name, 60.0)
                        .trim_end_matches('…')
                        .replace(['\u{0}', '\u{202e}'], "\u{FFFD}"),
                )
            })
            .ok_or("a case that is none of the verdict")?,
    };
    places(&elements, connection, &which.loads)?;
    let left_out = texts
        .iter()
        .find_map(|own| own.split_once(" labels had no room"))
        .map_or(0, |own| own.0.parse::<usize>().unwrap());
    // Once in the plan, and once in the table.
    let listed = usize::from(verdict.bolts.len() <= 60);
    let (mut wanted, mut found) = (0, 0);
    for (bolt, load) in verdict.bolts.iter().zip(&which.loads) {
        let mark = if bolt.number != which.bolt {
            bolt.number.to_string()
        } else if has(&format!("{}, governs", bolt.number)) {
            format!("{}, governs", bolt.number)
        } else {
            format!("{}, worst", bolt.number)
        };
        let count = |text: &str| texts.iter().filter(|own| **own == text).count();
        wanted += 1;
        found += usize::from(count(&mark) > listed);
        let across = shown(load.across, system).to_string();
        if load.across.base() > 0.0 {
            wanted += 1;
            found += usize::from(count(&across) > listed);
        }
        let sign = if load.along.base() > 0.0 {
            "pull"
        } else {
            "press"
        };
        let along = format!("{sign} {}", shown(load.along.abs(), system));
        if load.along.base() != 0.0 {
            wanted += 1;
            found += usize::from(count(&along) > listed);
        }
        let in_the_table = has(&mark) && has(&across) && (load.along.base() == 0.0 || has(&along));
        if verdict.bolts.len() <= 60 && !in_the_table {
            return Err(format!(
                "bolt {} is not in the table: {mark} {across} {along}",
                bolt.number
            ));
        }
    }
    if found + left_out < wanted {
        return Err(format!(
            "{found} labels of {wanted}, and {left_out} are said to be left out"
        ));
    }
    Ok(page)
}

/// The chosen connections; their pictures are left in `target/tmp/drawing` to be looked at.
#[test]
fn chosen_connections_are_drawn() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("drawing");
    fs::create_dir_all(&folder).unwrap();
    let all = chosen();
    assert!(all.len() >= 25);
    for (name, connection, case) in all {
        let verdict = connection
            .check()
            .unwrap_or_else(|why| panic!("{name}: {why}"));
        for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
            let page = examined(&connection, &verdict, case, system)
                .unwrap_or_else(|why| panic!("{name}: {why}"));
            if system == units(&connection) {
                fs::write(folder.join(format!("plan_{name}.svg")), page.svg()).unwrap();
            }
            let dxf = drawing::pattern_dxf(&connection, system);
            plan_is_read(&connection, &dxf, system).unwrap_or_else(|why| panic!("{name}: {why}"));
            fs::write(folder.join(format!("plan_{name}_{system:?}.dxf")), dxf).unwrap();
        }
    }
}

#[test]
fn random_connections_are_drawn() {
    let mut drawn = 0;
    for seed in 0..600 {
        let Some(connection) = random(seed) else {
            continue;
        };
        let Ok(verdict) = connection.check() else {
            continue;
        };
        let system = units(&connection);
        for case in &verdict.cases {
            examined(&connection, &verdict, Some(&case.name), system)
                .unwrap_or_else(|why| panic!("{seed}: {why}"));
        }
        let dxf = drawing::pattern_dxf(&connection, system);
        plan_is_read(&connection, &dxf, system).unwrap_or_else(|why| panic!("{seed}: {why}"));
        drawn += 1;
        if drawn == 200 {
            return;
        }
    }
    panic!("only {drawn}");
}

fn plan_is_read(connection: &Connection, dxf: &str, system: UnitSystem) -> Result<(), String> {
    let (entities, layers) = read(dxf);
    let unit = match system {
        UnitSystem::Si => 1e-3,
        UnitSystem::UsCustomary => 0.0254,
    };
    let near = |found: &[f64; 2], x: Length, y: Length| {
        (found[0] - x.base() / unit).abs() < 2e-6 && (found[1] - y.base() / unit).abs() < 2e-6
    };
    let circles: Vec<_> = entities
        .iter()
        .filter(|own| own.kind == "CIRCLE" && own.layer == "BOLTS")
        .collect();
    let bolts = connection.bolts.bolts();
    if circles.len() != bolts.len() {
        return Err(format!("{} circles", circles.len()));
    }
    let radius = 0.5 * connection.joint.bolt.thread.nominal_diameter().base() / unit;
    for (circle, bolt) in circles.iter().zip(bolts) {
        if !near(&circle.points[0], bolt.x, bolt.y) || (circle.radius - radius).abs() > 2e-6 {
            return Err(format!("{circle:?}"));
        }
    }
    for (n, plate) in connection.plates.iter().enumerate() {
        let layer = format!("PLATE_{}", n + 1);
        let outline = entities
            .iter()
            .find(|own| own.kind == "POLYLINE" && own.layer == layer)
            .ok_or("no outline")?;
        let corners = plate.outline.corners();
        if outline.vertices.len() != corners.len()
            || !outline
                .vertices
                .iter()
                .zip(corners)
                .all(|(own, corner)| near(own, corner.x, corner.y))
        {
            return Err(format!("another outline on {layer}"));
        }
    }
    if layers.len() != 4 + connection.plates.len() {
        return Err(format!("{layers:?}"));
    }
    let names = entities
        .iter()
        .filter(|own| own.kind == "TEXT" && own.layer == "NUMBERS")
        .count();
    if names != bolts.len() {
        return Err(format!("{names} numbers"));
    }
    Ok(())
}

/// A name is a name, whatever is in it.
#[test]
fn hostile_names_stay_text() {
    let (_, connection, _) = chosen().into_iter().find(|own| own.0 == "hostile").unwrap();
    let verdict = connection.check().unwrap();
    let svg = drawing::pattern(&connection, &verdict, None, UnitSystem::Si)
        .unwrap()
        .svg();
    assert!(!svg.contains("<script"));
    let elements = inspect(&svg).unwrap();
    assert!(
        elements[1]
            .text
            .starts_with("</text><script>alert(\"1\")</script> &")
    );
}

/// A verdict of other bolts, loads or a case that is not there gives no picture.
#[test]
fn other_verdicts_are_refused() {
    let of = |name: &str| chosen().into_iter().find(|own| own.0 == name).unwrap().1;
    let connection = of("other_case");
    let verdict = connection.check().unwrap();
    let draw = |connection: &Connection, case| {
        drawing::pattern(connection, &verdict, case, UnitSystem::Si)
    };
    assert!(draw(&connection, None).is_ok());
    assert!(
        draw(&connection, Some("IN"))
            .unwrap_err()
            .to_string()
            .contains("out, in")
    );
    let changed = |change: &dyn Fn(&mut Connection)| {
        let mut other = connection.clone();
        change(&mut other);
        draw(&other, Some("in")).unwrap_err().to_string()
    };
    assert!(changed(&|own| own.title.push('!')).contains("check it again"));
    assert!(changed(&|own| own.cases[1].force_y = newtons(-13e3)).contains("check it again"));
    assert!(changed(&|own| own.bolts = of("hanger").bolts).contains("check it again"));
    assert!(
        changed(&|own| {
            own.cases.remove(1);
        })
        .contains("check it again")
    );
}

/// The worst bolt is marked by a ring and a word, and the governing case is the one drawn if nobody says another.
#[test]
fn what_governs_is_marked() {
    let mut words = std::collections::BTreeSet::new();
    for (name, connection, case) in chosen() {
        let verdict = connection.check().unwrap();
        let page = drawing::pattern(&connection, &verdict, case, UnitSystem::Si).unwrap();
        let texts: Vec<&str> = page.labels().iter().map(|own| own.text.as_str()).collect();
        let worst = texts
            .iter()
            .filter(|own| own.ends_with(", governs") || own.ends_with(", worst"))
            .count();
        assert!(worst >= 1, "{name}");
        words.insert(match verdict.word() {
            Word::Holds => "holds",
            Word::DoesNotHold => "does not hold",
            Word::Undecided => "undecided",
        });
    }
    assert_eq!(words.len(), 3, "{words:?}");
    let (_, bracket, _) = chosen().into_iter().find(|own| own.0 == "bracket").unwrap();
    let page = drawing::pattern(&bracket, &bracket.check().unwrap(), None, UnitSystem::Si).unwrap();
    let starts = |text: &str| page.labels().iter().any(|own| own.text.starts_with(text));
    assert!(starts("Load case drawn: \"trolley out\""));
    for size in ["70.00", "90.00", "40.00", "55.00"] {
        assert!(starts(size), "{size}");
    }
}
