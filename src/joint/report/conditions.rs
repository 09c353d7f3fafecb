//! What a joint was checked for, in words: loads, place, tightening, methods. What was said stands here as well as what
//! was taken for granted: who signs must see it.

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use crate::joint::{Joint, Pattern, Prying, Repeats, Slip, Tightening};
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::ply::PlyMethod;
use crate::strength::shear::ShearMethod;
use crate::tables::galvanic::Exposure;
use crate::units::{UnitSystem, shown};

pub(super) fn lines(joint: &Joint, units: UnitSystem) -> Vec<String> {
    let mut lines = Vec::from([loads(joint, units), place(joint, units)]);
    lines.push(match joint.pattern {
        Pattern::Single => "one bolt alone".into(),
        Pattern::Rows { along, across } => {
            format!("{along} bolts in a row along the load, {across} rows beside each other")
        }
    });
    lines.push(tightening(joint));
    lines.extend(methods(joint));
    lines
}

fn loads(joint: &Joint, units: UnitSystem) -> String {
    let load = &joint.load;
    let repeats = if let Repeats::Between {
        across_least,
        along_least,
        cycles,
    } = load.repeats
    {
        let least = [across_least, along_least].map(|least| shown(least, units));
        let often = cycles.map_or_else(|| "without end".into(), |cycles| format!("{cycles} times"));
        format!("down to {} and {} again, {often}", least[0], least[1])
    } else {
        "steady".into()
    };
    let greatest = [load.across, load.along].map(|load| shown(load, units));
    let mut parts = Vec::from([
        format!(
            "each bolt: {} across its axis, {} along it, {repeats}",
            greatest[0], greatest[1]
        ),
        format!("shock factor {}", load.shock_factor),
    ]);
    let factor = load.load_factor;
    parts.extend(factor.map(|factor| format!("load factor {factor}")));
    parts.extend(load.prying.map(|prying| {
        let words = match prying {
            Prying::None => "plies too stiff to pry",
            Prying::InLoad => "prying is in the load",
        };
        words.to_string()
    }));
    parts.join("; ")
}

fn place(joint: &Joint, units: UnitSystem) -> String {
    let place = &joint.environment;
    let mut words = Vec::from([
        format!(
            "{} to {}",
            shown(place.coldest, units),
            shown(place.hottest, units)
        ),
        match place.exposure {
            Exposure::Dry => "dry for life",
            Exposure::Controlled => "controlled air",
            Exposure::Normal => "in stores and halls",
            Exposure::Harsh => "outdoors, damp or salt",
        }
        .to_string(),
    ]);
    let yes_or_no = [
        (place.vibration, "shaken", "not shaken"),
        (
            place.rotates,
            "something turns on it",
            "nothing turns on it",
        ),
        (
            place.dangerous_if_lost,
            "its loss endangers people",
            "its loss endangers nobody",
        ),
    ];
    words.extend(yes_or_no.map(|(is, yes, no)| if is { yes } else { no }.to_string()));
    words.push(match place.refits {
        0 => "never taken apart".into(),
        count => format!("refitted {count} times"),
    });
    words.join(", ")
}

fn tightening(joint: &Joint) -> String {
    match &joint.tightening {
        None => "how it is tightened is not said".into(),
        Some(Tightening::Snug) => "tightened snug".into(),
        Some(Tightening::Torque(torque)) => {
            let k = torque.nut_factor;
            format!(
                "tightened by torque to {}, nut factor {} ({} to {})",
                torque.target,
                k.nominal(),
                k.min(),
                k.max()
            )
        }
    }
}

/// The methods with the factors that are in them.
fn methods(joint: &Joint) -> Vec<String> {
    let methods = &joint.methods;
    let factor = |factor: f64| format!(", design factor {factor}");
    let factors = |ultimate: f64, fitting: f64| {
        format!(", ultimate factor {ultimate}, fitting factor {fitting}")
    };
    let shear = match methods.shear {
        ShearMethod::DistortionEnergy { design_factor, .. } => factor(design_factor),
        ShearMethod::MilHdbk5 {
            ultimate_factor,
            fitting_factor,
            ..
        } => factors(ultimate_factor, fitting_factor),
        _ => String::new(),
    };
    let tension = match methods.tension {
        TensionMethod::Proof { design_factor } => factor(design_factor),
        TensionMethod::MilHdbk5 {
            ultimate_factor,
            fitting_factor,
        } => factors(ultimate_factor, fitting_factor),
        _ => String::new(),
    };
    let plies = match methods.plies {
        PlyMethod::MachineDesign { design_factor } => factor(design_factor),
        PlyMethod::MilHdbk5 {
            ultimate_factor,
            fitting_factor,
        } => factors(ultimate_factor, fitting_factor),
        _ => String::new(),
    };
    let mut lines = Vec::from([
        format!("shear of the bolt: {}{shear}", methods.shear),
        format!("tension of the bolt: {}{tension}", methods.tension),
        format!("plies: {}{plies}", methods.plies),
        format!(
            "loads against {} resistances; margin {} where the publisher has no factor",
            methods.level, methods.margin
        ),
    ]);
    lines.extend(methods.timber.map(|timber| format!("timber: {timber}")));
    lines.push(match methods.slip {
        Slip::Permitted => "it may slip into bearing".into(),
        Slip::Resisted(method) => format!("it must not slip: {method}"),
    });
    lines
}
