//! Whole joints, of figures that are usual and of figures that are not.

use crate::any_joint::{self, Dice};
use crate::{row, sound};

pub fn run(input: &[u8]) -> Result<(), String> {
    let numbers = row(input);
    // What is done to the joint comes first, so that the row of the joint may end anywhere.
    let (change, of_joint) = numbers.split_at(numbers.len().min(24));
    let dice = &mut Dice::new(change);
    let Some(joint) = any_joint::joint(of_joint) else {
        return Ok(());
    };
    if dice.below(2) == 0 {
        return sound::joint(&joint, dice);
    }
    let mut document = serde_json::to_value(&joint).map_err(|why| why.to_string())?;
    sound::spoil(&mut document, dice);
    match serde_json::from_value(document) {
        Ok(joint) => sound::joint(&joint, dice),
        Err(_) => Ok(()),
    }
}
