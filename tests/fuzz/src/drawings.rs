//! Pictures and parts lists.

use shankline::connection::Connection;
use shankline::drawing;
use shankline::joint::{Joint, Sheet};
use shankline::units::UnitSystem;

use crate::any_joint::{self, Dice};
use crate::{connections, finite, row, sound};

pub fn run(input: &[u8]) -> Result<(), String> {
    let numbers = row(input);
    let (change, own) = numbers.split_at(numbers.len().min(12));
    let dice = &mut Dice::new(change);
    let system = if dice.below(2) == 0 {
        UnitSystem::Si
    } else {
        UnitSystem::UsCustomary
    };
    if dice.below(4) == 3 {
        let Some(connection) = connections::any(own) else {
            return Ok(());
        };
        return of_connection(&connection, system);
    }
    let Some(joint) = any_joint::joint(own) else {
        return Ok(());
    };
    let mut document = serde_json::to_value(&joint).map_err(|why| why.to_string())?;
    sound::spoil(&mut document, dice);
    match serde_json::from_value(document) {
        Ok(joint) => of_joint(&joint, system),
        Err(_) => Ok(()),
    }
}

fn of_joint(joint: &Joint, system: UnitSystem) -> Result<(), String> {
    let Ok(verdict) = joint.check() else {
        return Ok(());
    };
    let mut texts = vec![drawing::utilisation(&joint.title, &verdict, system).svg()];
    texts.extend(drawing::joint_diagram(joint, &verdict, system).map(|page| page.svg()));
    if let Ok(selection) = joint.lengths() {
        texts.push(drawing::lengths(joint, &selection, system).svg());
    }
    if let Some(assembly) = joint.assembly(&verdict.candidate).ok() {
        texts.push(drawing::section(&assembly, Some(&verdict), system).svg());
        texts.push(drawing::section_dxf(&assembly, system));
        texts.push(format!("{assembly:?}"));
    }
    if let Ok(sheet) = Sheet::new(joint, &verdict) {
        texts.push(sheet.render(system).to_string());
    }
    all_finite(&texts).map_err(|why| {
        format!(
            "{why}\n{}",
            serde_json::to_string(joint).unwrap_or_default()
        )
    })
}

fn of_connection(connection: &Connection, system: UnitSystem) -> Result<(), String> {
    let Ok(verdict) = connection.check() else {
        return Ok(());
    };
    let mut texts = vec![drawing::pattern_dxf(connection, system)];
    for case in [None, Some("a"), Some("of nobody")] {
        if let Ok(page) = drawing::pattern(connection, &verdict, case, system) {
            texts.push(page.svg());
        }
    }
    if let Ok(sheet) = connection.sheet(&verdict) {
        texts.push(sheet.render(system).to_string());
    }
    all_finite(&texts).map_err(|why| {
        format!(
            "{why}\n{}",
            serde_json::to_string(connection).unwrap_or_default()
        )
    })
}

/// In pictures figures stand in quotation marks.
fn all_finite(texts: &[String]) -> Result<(), String> {
    texts
        .iter()
        .try_for_each(|text| finite(&text.replace('"', " ")))
}
