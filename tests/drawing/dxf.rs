//! A reader of DXF, release 12, written apart from what writes it.

use std::collections::BTreeSet;

use shankline::assembly::{Assembly, End};
use shankline::drawing::section_dxf;
use shankline::prelude::*;
use shankline::units::Measured as _;

use super::joints::chosen;
use super::verdicts::for_all;

/// An entity: its kind, its layer, the points of it and of what belongs to it.
#[derive(Debug)]
pub struct Entity {
    pub kind: String,
    pub layer: String,
    pub points: Vec<[f64; 2]>,
    /// Of a polyline.
    pub vertices: Vec<[f64; 2]>,
    /// Of a circle.
    pub radius: f64,
}

/// The entities of a document, and the layers that it declares. Panics on what release 12 does not know.
pub fn read(text: &str) -> (Vec<Entity>, BTreeSet<String>) {
    assert!(text.is_ascii());
    let lines: Vec<&str> = text.lines().collect();
    assert!(lines.len() % 2 == 0, "codes and values come in pairs");
    let pairs: Vec<(u16, &str)> = lines
        .chunks(2)
        .map(|two| {
            assert!(two[1].len() <= 256, "a line is too long");
            (two[0].trim().parse().expect("a code"), two[1])
        })
        .collect();
    assert_eq!(pairs.last(), Some(&(0, "EOF")));
    let opened = pairs.iter().filter(|own| **own == (0, "SECTION")).count();
    let closed = pairs.iter().filter(|own| **own == (0, "ENDSEC")).count();
    assert_eq!(opened, closed);
    let (mut layers, mut patterns) = (BTreeSet::new(), BTreeSet::new());
    let mut entities: Vec<Entity> = Vec::new();
    let mut kind = "";
    let mut section = "";
    for (at, &(code, value)) in pairs.iter().enumerate() {
        match (code, value) {
            (0, "ENDSEC") => section = "",
            (0, "SECTION") => section = pairs[at + 1].1,
            (0, _) => {
                kind = value;
                if section == "ENTITIES" && !matches!(kind, "VERTEX" | "SEQEND") {
                    assert!(
                        matches!(kind, "LINE" | "POLYLINE" | "TEXT" | "CIRCLE"),
                        "{kind}"
                    );
                    entities.push(Entity {
                        kind: kind.into(),
                        layer: String::new(),
                        points: Vec::new(),
                        vertices: Vec::new(),
                        radius: 0.0,
                    });
                }
            }
            (2, _) if kind == "LAYER" && section == "TABLES" => {
                layers.insert(value.into());
            }
            (2, _) if kind == "LTYPE" && section == "TABLES" => {
                patterns.insert(value.to_owned());
            }
            (6, _) => assert!(patterns.contains(value), "the pattern {value}"),
            _ => {}
        }
        if section != "ENTITIES" || code == 0 {
            continue;
        }
        let Some(last) = entities.last_mut() else {
            continue;
        };
        match code {
            8 => {
                assert!(layers.contains(value), "the layer {value}");
                last.layer = value.into();
            }
            // The point of a polyline itself is none of its line.
            10 | 11 if kind != "POLYLINE" => {
                let x: f64 = value.parse().unwrap();
                let (next, y) = pairs[at + 1];
                assert_eq!(next, code + 10);
                let y: f64 = y.parse().unwrap();
                assert!(x.is_finite() && y.is_finite());
                last.points.push([x, y]);
                if kind == "VERTEX" {
                    last.vertices.push([x, y]);
                }
            }
            40 if kind == "CIRCLE" => last.radius = value.parse().unwrap(),
            _ => {}
        }
    }
    (entities, layers)
}

fn reach(entities: &[Entity], layers: &[&str]) -> [f64; 2] {
    let of = entities
        .iter()
        .filter(|own| own.kind != "TEXT" && layers.contains(&own.layer.as_str()));
    of.flat_map(|own| &own.points).fold(
        [f64::INFINITY, f64::NEG_INFINITY],
        |[least, most], [x, _]| [least.min(*x), most.max(*x)],
    )
}

fn agrees(assembly: &Assembly, system: UnitSystem) -> Result<(), String> {
    let (entities, _) = read(&section_dxf(assembly, system));
    let unit = match system {
        UnitSystem::Si => 1e-3,
        UnitSystem::UsCustomary => 0.0254,
    };
    let near = |found: f64, length: Length, what: &str| {
        let wanted = length.base() / unit;
        if (found - wanted).abs() < 2e-6 {
            Ok(())
        } else {
            Err(format!("{what}: {found}, not {wanted}"))
        }
    };
    let planes: Vec<f64> = entities
        .iter()
        .filter(|own| own.layer == "PLANES")
        .map(|own| own.points[0][0])
        .collect();
    if planes.len() != assembly.planes.len() {
        return Err("planes are missing".into());
    }
    for (x, plane) in planes.iter().zip(&assembly.planes) {
        near(*x, plane.position.nominal, "plane")?;
    }
    let bolt = &assembly.bolt;
    let [start, end] = reach(&entities, &["BOLT", "UNREAD", "CUT"]);
    let read = |size: &shankline::parts::Size| size.is_read();
    if bolt.cut.is_some() && read(&bolt.head.height) {
        let [_, end] = reach(&entities, &["CUT"]);
        near(end, bolt.length.nominal, "bolt as bought")?;
    }
    let [_, thread] = reach(&entities, &["BOLT"]);
    near(thread, bolt.end.nominal, "end of the bolt").or_else(|why| {
        // A head beyond it, where the bolt is dotted.
        if thread > end { Err(why) } else { Ok(()) }
    })?;
    if bolt.head.form == shankline::parts::HeadForm::Hexagon && read(&bolt.head.height) {
        let height = bolt.head.height.drawn().unwrap();
        near(-start, height, "height of the head")?;
    }
    if let End::Nut(nut) = &assembly.end
        && read(&nut.across_flats)
    {
        let [from, to] = reach(&entities, &["NUT"]);
        near(from, nut.at.from.nominal, "bearing face of the nut")?;
        near(to, nut.at.to.nominal, "outer face of the nut")?;
    }
    // Every face of every part is there.
    for layer in &assembly.layers {
        if layer.kind == shankline::joint::LayerKind::Gap {
            continue;
        }
        for face in [layer.at.from.nominal, layer.at.to.nominal] {
            let wanted = face.base() / unit;
            let layers = ["PLIES", "WASHERS", "UNREAD"];
            let there = entities
                .iter()
                .filter(|own| layers.contains(&own.layer.as_str()))
                .any(|own| own.points.iter().any(|[x, _]| (x - wanted).abs() < 2e-6));
            if !there {
                return Err(format!("no face of \"{}\" at {wanted}", layer.name));
            }
        }
    }
    Ok(())
}

/// They are left beside the pictures, for other readers.
#[test]
fn sections_are_read_one_to_one() {
    let folder = std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join("drawing");
    std::fs::create_dir_all(&folder).unwrap();
    for (name, joint) in chosen() {
        let assembly = joint.assembly(&joint.check().unwrap().candidate).unwrap();
        for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
            agrees(&assembly, system).unwrap_or_else(|why| panic!("{name}: {why}"));
            let file = folder.join(format!("{name}_{system:?}.dxf"));
            std::fs::write(file, section_dxf(&assembly, system)).unwrap();
        }
    }
}

#[test]
fn sections_of_random_joints_are_read_one_to_one() {
    for_all(500, |joint, _| {
        let Ok(verdict) = joint.check() else {
            return Ok(());
        };
        let assembly = joint.assembly(&verdict.candidate);
        agrees(
            &assembly.map_err(|error| error.to_string())?,
            UnitSystem::Si,
        )
    });
}
