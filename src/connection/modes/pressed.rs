//! Plates that the load presses between their bolts and the side on which they are held.
//!
//! The strip that counts against a pull is a column that stands for itself: its buckling length from the last row to the held
//! side is said by the caller, and between rows it follows from their distance. No method here has the bending that comes
//! with plates that lap on one side only.

use alloc::vec::Vec;

use super::held::{Cut, Held, IN_LINE};
use super::{Loaded, Told};
use crate::caution::{Caution, Cautions};
use crate::connection::outline::metres;
use crate::connection::{Connection, Plate};
use crate::joint::Need;
use crate::strength::check::{Check, Mode};
use crate::strength::ply::{Pressed, PressedPlate, length_between, pressed_plate};
use crate::units::{Force, Length, from_base};

const MODE: Mode = Mode::GrossSection;

/// What a strip of the plate carries, how wide it is and over which length it may buckle.
struct Strip {
    force: f64,
    width: f64,
    length: Length,
}

pub(super) fn look(
    connection: &Connection,
    loaded: &Loaded,
    plate: &Plate,
    held: &Held,
    cuts: &[Cut],
    told: &mut Vec<Told>,
) {
    let pressed = |cut: &Cut| match loaded.sense {
        Some(sense) => (-sense * cut.pull).max(0.0),
        None => cut.pull.abs(),
    };
    if cuts.iter().all(|cut| pressed(cut) <= 0.0) {
        return;
    }
    let mut lacks = |need: Need| told.push(Told::Missing(MODE, need));
    if loaded.sense.is_none() {
        return lacks(Need::LoadedPly);
    }
    if !loaded.in_line {
        return lacks(Need::Method(
            "the load presses plates that do not lie evenly on both sides of each other, which bends them out of their plane: \
             no method here has that",
        ));
    }
    let (Some(length), Some(yields)) = (plate.buckling_length, loaded.facts.yields) else {
        return lacks(Need::BucklingLength);
    };
    let method = connection.joint.methods.plies;
    let rows = held.rows(loaded);
    let Some(&last) = rows.last() else { return };
    let gaps = rows.iter().zip(rows.iter().skip(1)).map(|(a, b)| b - a);
    let between = gaps
        .reduce(f64::max)
        .and_then(|gap| length_between(metres(gap), held.thickness, yields, method));
    // Between rows the stress is taken for that behind the last of them.
    let most = cuts.iter().map(pressed).fold(0.0, f64::max);
    let behind = cuts.iter().filter(|cut| cut.level >= last - IN_LINE);
    let strips: Vec<Strip> = behind
        .flat_map(|cut| {
            let at_row = cut.level <= last + IN_LINE;
            let lengths = [
                Some((pressed(cut), length)),
                between.filter(|_| at_row).map(|gap| (most, gap)),
            ];
            let width = cut.spread;
            lengths
                .into_iter()
                .flatten()
                .map(move |(force, length)| Strip {
                    force,
                    width,
                    length,
                })
        })
        .collect();
    for strip in strips.iter().filter(|strip| strip.force > 0.0) {
        let column = PressedPlate {
            yield_strength: yields,
            elastic_modulus: loaded.facts.elastic_modulus,
            thickness: held.thickness,
            width: metres(strip.width),
            length: strip.length,
        };
        let force: Force = from_base(strip.force);
        told.push(match pressed_plate(&column, method) {
            Ok(Pressed::Found(resistance, method)) => {
                let checked = resistance.at(loaded.level).and_then(|bears| {
                    Check::new(MODE, loaded.facts.place, force, bears, loaded.level, method)
                });
                match checked {
                    Ok(check) => Told::Check(
                        check.warned(Cautions::default().with(Caution::of_method(method))),
                    ),
                    Err(error) => Told::Missing(MODE, Need::Refused(error.into())),
                }
            }
            Ok(Pressed::NoModulus) => Told::Missing(MODE, Need::Stiffness),
            Ok(Pressed::None(why)) => Told::Missing(MODE, Need::Method(why)),
            Err(error) => Told::Missing(MODE, Need::Refused(error.into())),
        });
    }
}

#[cfg(test)]
mod tests;
