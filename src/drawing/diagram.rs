//! Bolt and members as two springs: forces over elongation and compression.

use alloc::{format, string::String, vec::Vec};

use super::canvas::{Drawing, spread_out};
use super::kinds::{Anchor, Line};
use super::page::{INNER, MARGIN, Table, WIDTH, head};
use super::text::Style;
use crate::joint::{Joint, Verdict};
use crate::tension::{JointDiagram, JointState, LoadShare, LoadedJoint};
use crate::units::{Force, Length, Stiffness, UnitSystem, shown};

/// The joint diagram: bolt and plies as two springs, the preload that they hold each other with, and what a load along the
/// bolt does to both. The lines are drawn for the nominal preload; the table below has the least that is left in service,
/// the nominal one and the greatest.
///
/// None where no torque is controlled, where nobody says how stiff the parts are (the materials of all plies, or the two
/// stiffnesses), or where no preload is left in service. The load is the one stated, without factors.
///
#[cfg_attr(doc, doc = include_str!("pictures/springs.html"))]
///
/// ```
/// use shankline::drawing;
/// use shankline::prelude::*;
#[doc = include_str!("../joint/whole/example.txt")]
/// let verdict = joint.check()?;
/// // The joint is only snug: there is no preload to draw.
/// assert!(drawing::joint_diagram(&joint, &verdict, UnitSystem::Si).is_none());
/// # Ok(())
/// # }
/// ```
#[must_use]
pub fn joint_diagram(joint: &Joint, verdict: &Verdict, system: UnitSystem) -> Option<Drawing> {
    let preload = verdict.preload?;
    let share = preload.load_share()?;
    let load = joint.load.along;
    let cases = [
        ("Least, in service", preload.in_service),
        ("Nominal, as tightened", preload.preload.nominal),
        ("Greatest", preload.greatest),
    ];
    let mut rows = Vec::with_capacity(3);
    let mut drawn = None;
    for (name, force) in cases {
        let diagram = JointDiagram::new(share, force).ok()?;
        let loaded = diagram.under(load).ok()?;
        if drawn.is_none() && force == preload.preload.nominal {
            drawn = Some((diagram, loaded));
        }
        let show = |force: Force| format!("{}", shown(force, system));
        rows.push(Vec::from([
            name.into(),
            show(force),
            show(loaded.bolt),
            show(loaded.clamp),
            show(diagram.separation_load),
            String::from(match loaded.state {
                JointState::Clamped => "clamped",
                JointState::Separated => "OPEN",
                JointState::BoltSlack => "bolt slack",
            }),
        ]));
    }
    let (diagram, loaded) = drawn?;
    let title = format!("Joint diagram: {}", joint.title);
    let mut page = Drawing::new(WIDTH, &title, "");
    let under = if load > Force::default() {
        format!(
            "Under a load along the bolt of {}, as stated.",
            shown(load, system)
        )
    } else {
        "Without a load along the bolt.".into()
    };
    let top = head(&mut page, &title, &[under], Some(verdict), system);
    curves(&mut page, share, &diagram, &loaded, top + 18.0, system)?;
    let table = Table {
        head: [
            "Preload",
            "Force",
            "Bolt carries",
            "Clamp left",
            "Opens at",
            "Plies",
        ]
        .map(String::from)
        .into(),
        rows,
        flexible: 0,
    };
    let columns = table.columns(INNER);
    let y = table.draw(&mut page, [MARGIN, top + 18.0 + HEIGHT + 84.0], &columns);
    page.end_at(y + 10.0);
    page.describe(format!(
        "{} At the nominal preload of {} and a load of {} the bolt carries {} and a clamp of {} is left; the plies open at {}.",
        verdict.headline(system),
        shown(diagram.preload, system),
        shown(load, system),
        shown(loaded.bolt, system),
        shown(loaded.clamp, system),
        shown(diagram.separation_load, system)
    ));
    Some(page)
}

const HEIGHT: f64 = 330.0;
const LEFT: f64 = 96.0;
const RIGHT: f64 = 640.0;

/// The two lines and what lies between them.
fn curves(
    page: &mut Drawing,
    share: LoadShare,
    diagram: &JointDiagram,
    loaded: &LoadedJoint,
    top: f64,
    system: UnitSystem,
) -> Option<()> {
    let (bolt, members) = (share.bolt?, share.members?);
    let length = |force: Force, stiffness: Stiffness| -> Length {
        crate::units::Measured::from_base(force.value / stiffness.value)
    };
    let preload = diagram.preload;
    let (stretched, pressed) = (length(preload, bolt), length(preload, members));
    let longer = length(loaded.bolt, bolt);
    // What axes reach to, in the unit of the reader.
    let forces = Axis::new(loaded.bolt.max(preload), system, 1.12);
    let lengths = Axis::new((stretched + pressed).max(longer), system, 1.06);
    let bottom = top + HEIGHT;
    let x = |own: Length| LEFT + (RIGHT - LEFT) * lengths.share(own, system);
    let y = |own: Force| bottom - HEIGHT * forces.share(own, system);
    page.line(Line::Outline, [LEFT, bottom], [RIGHT, bottom]);
    page.line(Line::Outline, [LEFT, bottom], [LEFT, top]);
    for (value, text) in forces.ticks() {
        let at = bottom - HEIGHT * value / forces.most;
        page.line(Line::Thin, [LEFT - 4.0, at], [LEFT, at]);
        page.label(Style::Note, Anchor::End, [LEFT - 7.0, at + 4.0], &text);
    }
    for (value, text) in lengths.ticks() {
        let at = LEFT + (RIGHT - LEFT) * value / lengths.most;
        page.line(Line::Thin, [at, bottom], [at, bottom + 4.0]);
        page.label(Style::Note, Anchor::Middle, [at, bottom + 16.0], &text);
    }
    let (force_unit, length_unit) = match system {
        UnitSystem::Si => ("kN", "mm"),
        UnitSystem::UsCustomary => ("lbf", "in"),
    };
    let axis = format!("Force, {force_unit}");
    page.label(Style::Plain, Anchor::Start, [MARGIN, top - 10.0], &axis);
    let axis = format!("Elongation of the bolt, then compression of the plies, {length_unit}");
    page.label(Style::Plain, Anchor::End, [RIGHT, bottom + 36.0], &axis);
    // The springs: the bolt pulls from the left, the plies press from the right.
    let zero = Force::default();
    let apex = [x(stretched), y(preload)];
    page.path(
        Line::First,
        None,
        &[
            [x(Length::default()), y(zero)],
            apex,
            [x(longer), y(loaded.bolt)],
        ],
        false,
    );
    page.path(
        Line::Second,
        None,
        &[apex, [x(stretched + pressed), y(zero)]],
        false,
    );
    page.line(Line::Thin, [LEFT, apex[1]], apex);
    // Under the load the bolt is longer, and the plies are less pressed.
    let (up, down) = ([x(longer), y(loaded.bolt)], [x(longer), y(loaded.clamp)]);
    if (up[1] - down[1]).abs() > 0.5 {
        page.line(Line::Outline, up, down);
        for tip in [up, down] {
            page.dot(tip, 3.0);
        }
    }
    page.dot(apex, 3.5);
    let opens = diagram.separation_load;
    let show = |name: &str, force: Force| format!("{name} {}", shown(force, system));
    let mut labels = Vec::from([(show("preload", preload), apex)]);
    if loaded.load > zero {
        labels.push((show("bolt carries", loaded.bolt), up));
        labels.push((show("clamp left", loaded.clamp), down));
        let middle = [up[0], 0.5 * (up[1] + down[1])];
        labels.push((show("load", loaded.load), middle));
    }
    labels.sort_by(|a, b| a.1[1].total_cmp(&b.1[1]));
    let places: Vec<f64> = labels.iter().map(|own| own.1[1]).collect();
    let halves: Vec<f64> = labels.iter().map(|_| 9.0).collect();
    let apart = spread_out(&places, &halves, 0.0, [top, bottom]);
    for ((text, [px, py]), at) in labels.iter().zip(&apart) {
        page.line(Line::Thin, [RIGHT + 14.0, *at], [px + 5.0, *py]);
        page.label(Style::Plain, Anchor::Start, [RIGHT + 18.0, at + 4.0], text);
    }
    let opens = format!("The plies open at {}.", shown(opens, system));
    page.label(
        Style::Plain,
        Anchor::Start,
        [RIGHT + 18.0, bottom + 36.0],
        &opens,
    );
    // Which line is which, below the axis.
    let key = bottom + 58.0;
    for (line, left, name) in [
        (Line::First, LEFT, "bolt"),
        (Line::Second, LEFT + 260.0, "plies"),
    ] {
        page.line(line, [left, key - 4.0], [left + 40.0, key - 4.0]);
        let stiffness = if line == Line::First { bolt } else { members };
        let text = format!("{name}, {}", shown(stiffness, system));
        page.label(Style::Plain, Anchor::Start, [left + 46.0, key], &text);
    }
    Some(())
}

/// An axis in the unit of the reader, with steps of 1, 2 or 5.
struct Axis {
    most: f64,
    step: f64,
    decimals: usize,
}

impl Axis {
    fn new<Q: crate::units::Measured>(most: Q, system: UnitSystem, room: f64) -> Self {
        let most = (shown(most, system).value() * room).clamp(1e-12, 1e15);
        let mut power = 1.0;
        let raw = most / 5.0;
        while power > raw {
            power *= 0.1;
        }
        while power * 10.0 <= raw {
            power *= 10.0;
        }
        let times = raw / power;
        let factor = if times < 1.5 {
            1.0
        } else if times < 3.5 {
            2.0
        } else if times < 7.5 {
            5.0
        } else {
            10.0
        };
        let step = factor * power;
        let mut decimals = 0;
        let mut whole = step;
        while whole < 0.999 && decimals < 12 {
            whole *= 10.0;
            decimals += 1;
        }
        Self {
            most,
            step,
            decimals,
        }
    }

    fn share<Q: crate::units::Measured>(&self, own: Q, system: UnitSystem) -> f64 {
        shown(own, system).value() / self.most
    }

    fn ticks(&self) -> impl Iterator<Item = (f64, String)> {
        let (most, step, decimals) = (self.most, self.step, self.decimals);
        (0..=12_u8)
            .map(move |count| f64::from(count) * step)
            .take_while(move |value| *value <= most)
            .map(move |value| (value, format!("{value:.decimals$}")))
    }
}
