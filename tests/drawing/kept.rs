//! The pictures in the documentation: made by the crate, kept as files, and rewritten by
//! `UPDATE_PICTURES=1 cargo test --all-features --test drawing kept`. They also hold that a picture is the same text on every
//! machine.

use std::fmt::Write as _;
use std::{env, fs, path::PathBuf};

use shankline::connection::{Connection, InPlane, Outline, Side};
use shankline::drawing::{self, Drawing};
use shankline::joint::{JointBuilder, Prying, RuleSet};
use shankline::prelude::*;

/// Two plates and a plate between them; invented.
fn swing() -> JointBuilder {
    Joint::builder("M16")
        .title("Swing beam in its fork (invented)")
        .ply("fork", "12 +/- 0.3 mm")
        .material("S355 steel")
        .hole("17.5 mm")
        .end_distance("45 mm")
        .edge_distance("40 mm")
        .width("80 mm")
        .ply("beam", "25 +/- 0.5 mm")
        .material("S355 steel")
        .hole("17.5 mm")
        .end_distance("45 mm")
        .edge_distance("40 mm")
        .width("80 mm")
        .ply("fork", "12 +/- 0.3 mm")
        .material("S355 steel")
        .hole("17.5 mm")
        .end_distance("45 mm")
        .edge_distance("40 mm")
        .width("80 mm")
}

/// A plate that hangs on a beam; invented.
fn hanger() -> JointBuilder {
    let factor = NutFactor::new(0.14, 0.18, 0.22).unwrap();
    let mut torque = TorqueTightening::new(factor, PreloadTarget::Reusable);
    torque.relaxation = Some(shankline::units::percent(5.0));
    Joint::builder("M16")
        .title("Plate under a beam (invented)")
        .ply("beam flange", "20 +/- 0.3 mm")
        .material("S355 steel")
        .hole("17.5 mm")
        .ply("plate", "25 +/- 0.3 mm")
        .material("S355 steel")
        .hole("17.5 mm")
        .along("20 kN")
        .prying(Prying::None)
        .tightening(Tightening::Torque(torque))
}

/// The page in one line of HTML, as an image: its style stays its own.
fn image(page: &Drawing, alt: &str) -> String {
    let mut html = format!("<img alt=\"{alt}\" src=\"data:image/svg+xml,");
    for own in page.svg().trim_end().chars() {
        match own {
            '\n' => {}
            '"' => html.push('\''),
            // What HTML, Markdown or a URL would take for its own.
            '<' | '>' | '#' | '%' | '&' | '\'' | '`' | '[' | ']' | '*' | '_' | '\\' | '~' | '|' => {
                write!(html, "%{:02X}", u32::from(own)).unwrap();
            }
            own if own.is_ascii() => html.push(own),
            own => {
                let mut bytes = [0; 4];
                for byte in own.encode_utf8(&mut bytes).bytes() {
                    write!(html, "%{byte:02X}").unwrap();
                }
            }
        }
    }
    html.push_str("\">\n");
    html
}

/// Two by three bolts that a load beside them turns; invented.
fn bracket() -> Connection {
    let bolt = Joint::builder("M16")
        .ply("bracket", "12 mm")
        .material("S275 steel")
        .ply("post", "12 mm")
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.5)
        .rules(RuleSet::En1090.rules(UnitSystem::Si));
    Connection::builder(bolt)
        .title("Bracket of a playground roof (invented)")
        .rows_and_columns(3, 2, "70 mm", "80 mm")
        .plate("bracket", Outline::rectangle("180 mm", "230 mm").unwrap())
        .held(Side::Right)
        .in_plane(InPlane::Elastic)
        .case("snow")
        .force("0 kN", "-14 kN", "0 kN")
        .at("190 mm", "0 mm", "0 mm")
        .build()
        .unwrap()
}

fn kept() -> Vec<(&'static str, String)> {
    let swing = swing().across("9 kN").build().unwrap();
    let hanger = hanger().build().unwrap();
    let si = UnitSystem::Si;
    let bracket = bracket();
    let bracket_verdict = bracket.check().unwrap();
    let verdict = swing.check().unwrap();
    let assembly = swing.assembly(&verdict.candidate).unwrap();
    let hung = hanger.check().unwrap();
    vec![
        (
            "section.html",
            image(
                &drawing::section(&assembly, Some(&verdict), si),
                "section of a bolted joint with shank, run-out and thread in the worst case",
            ),
        ),
        (
            "checks.html",
            image(
                &drawing::utilisation(&swing.title, &verdict, si),
                "how far each check of a joint is used",
            ),
        ),
        (
            "lengths.html",
            image(
                &drawing::lengths(&swing, &swing.lengths().unwrap(), si),
                "stock lengths against what a joint asks of them",
            ),
        ),
        (
            "springs.html",
            image(
                &drawing::joint_diagram(&hanger, &hung, si).unwrap(),
                "joint diagram: bolt and plies as two springs",
            ),
        ),
        (
            "pattern.html",
            image(
                &drawing::pattern(&bracket, &bracket_verdict, None, si).unwrap(),
                "plan of a connection with the force on each bolt",
            ),
        ),
    ]
}

#[test]
fn kept_pictures_are_current() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("src/drawing/pictures");
    let update = env::var_os("UPDATE_PICTURES").is_some();
    for (name, html) in kept() {
        let file = folder.join(name);
        if update {
            fs::create_dir_all(&folder).unwrap();
            fs::write(&file, &html).unwrap();
        }
        let old = fs::read_to_string(&file).unwrap_or_default();
        assert!(
            old == html,
            "{name} is another picture now: look at it, then UPDATE_PICTURES=1"
        );
    }
}
