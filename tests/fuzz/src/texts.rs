//! Names and quantities as people type them.

use core::fmt::{Debug, Display};
use core::str::FromStr;

use serde::de::IntoDeserializer;
use serde::de::value::{Error as Refusal, StrDeserializer};
use shankline::error::Error;
use shankline::parts::AnBolt;
use shankline::prelude::*;
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::thread::{ThreadFit, ToleranceClass};
use shankline::units::{self, Measured, quantity};

use crate::{Random, finite};

pub fn run(input: &[u8]) -> Result<(), String> {
    let Ok(text) = core::str::from_utf8(input) else {
        return Ok(());
    };
    name::<Thread>(text)?;
    name::<BoltGrade>(text)?;
    name::<NutGrade>(text)?;
    name::<AnBolt>(text)?;
    name::<ToleranceClass>(text)?;
    if let Ok(fit) = text.parse::<ThreadFit>() {
        finite(&format!("{fit:?}"))?;
    }
    amount::<units::Length>(text)?;
    amount::<units::Area>(text)?;
    amount::<units::Force>(text)?;
    amount::<units::Stress>(text)?;
    amount::<units::Torque>(text)?;
    amount::<units::Angle>(text)?;
    amount::<units::Stiffness>(text)?;
    amount::<units::ThermodynamicTemperature>(text)?;
    if let Ok(spread) = serde_json::from_value::<Spread<units::Length>>(text.into()) {
        let three = [spread.min, spread.nominal, spread.max].map(|own| own.value);
        if !(three[0] <= three[1]
            && three[1] <= three[2]
            && three.iter().all(|own| own.is_finite()))
        {
            return Err(format!("{text:?} is read as {three:?}"));
        }
    }
    Ok(())
}

/// What a name prints is read as the same.
fn name<T>(text: &str) -> Result<(), String>
where
    T: FromStr<Err = Error> + Display + Debug + PartialEq,
{
    let read: T = match text.parse() {
        Ok(read) => read,
        Err(why) => {
            let _ = why.to_string();
            return Ok(());
        }
    };
    finite(&format!("{read:?}"))?;
    let printed = read.to_string();
    match printed.parse::<T>() {
        Ok(again) if again == read => Ok(()),
        Ok(again) => Err(format!(
            "{text:?} prints {printed:?}, which is {again:?} and not {read:?}"
        )),
        Err(why) => Err(format!(
            "{text:?} prints {printed:?}, which is not read: {why}"
        )),
    }
}

/// A quantity is a number, and reads back as the same from what is written.
fn amount<Q: Measured + Debug + PartialEq>(text: &str) -> Result<(), String> {
    let Ok(read) = units::parse::<Q>(text) else {
        return Ok(());
    };
    finite(&format!("{read:?}"))?;
    let same = quantity::deserialize::<Q, StrDeserializer<Refusal>>(text.into_deserializer());
    if same.as_ref() != Ok(&read) {
        return Err(format!("{text:?} is {read:?}, and {same:?} in a document"));
    }
    let written = quantity::serialize(&read, serde_json::value::Serializer)
        .map_err(|why| format!("{text:?}: {why}"))?;
    let again: Q =
        quantity::deserialize(&written).map_err(|why| format!("{text:?}: {written}: {why}"))?;
    if again == read {
        Ok(())
    } else {
        Err(format!(
            "{text:?} is {read:?}, and {again:?} after {written}"
        ))
    }
}

/// Every designation, and other names and quantities.
pub fn seeds() -> Vec<Vec<u8>> {
    let mut seeds: Vec<String> = Vec::new();
    for row in UnifiedThread::all() {
        seeds.extend(
            Thread::unified(row.nominal_diameter, row.series)
                .ok()
                .map(|own| own.to_string()),
        );
    }
    for row in MetricThread::all() {
        seeds.extend(
            Thread::metric(row.nominal_diameter, row.pitch)
                .ok()
                .map(|own| own.to_string()),
        );
    }
    for text in [
        "SAE J429 grade 8",
        "ISO 898-1 class 10.9",
        "8.8",
        "A325",
        "ASTM F3125 A490 type 1",
        "A2-70",
        "A4-80",
        "ASTM A193 B7",
        "ISO 898-2 class 8",
        "SAE J995 grade 5",
        "ASTM A563 DH",
        "ASTM A194 2H",
        "AN4-7A",
        "AN5H-10A",
        "AN6DD12",
        "5/8 in",
        "1-1/2 in",
        "1 1/2 in",
        "16 mm",
        "75 lbf ft",
        "100 N m",
        "12 mm \u{b1} 0.5 mm",
        "0.500 +/- 0.015 in",
        "20 mm +0.1/-0.2",
        "120 deg",
        "-459.67 F",
        "-273.15 C",
        "900 kN/mm",
        "245 mm2",
        "1/2-13 UNC-2A",
        "M12x1.25-6g",
        "M12x1.25-6H/6g",
        "1/2-13 UNC-2A/2B",
        "M16xL6-P2-LH",
        "1/2-0.1P-0.3L-UNS",
        "4g6g",
        "2A",
        "3B",
        "6H",
        "#10-24",
        "0.190-24 UNS",
        "1-1/4-7 UNC-3A-LH",
        "M6-S",
        "12-UN",
        "M1e3",
        "8/6-18 UNS",
        "99999999999999999999-1 UN",
        "1/0 in",
        "0/1 in",
        "1e308 mm",
        "0.000000000001 in",
    ] {
        seeds.push(text.into());
    }
    seeds.into_iter().map(String::into_bytes).collect()
}

const LETTERS: &str = "0123456789/-. xXMUNCFESRPLJHABGgh#'\"\u{b0}\u{b5}\u{b2}\u{b1}+ineftkmpsaKVC\u{d7}\u{2013}\u{bd}\u{0}\u{1F600}\u{e9}\u{202E}\t\n";

const WORDS: [&str; 12] = [
    "1e308",
    "0.000000000001",
    "18446744073709551616",
    "--",
    "//",
    "..",
    "-LH",
    "UNS",
    "mm",
    " in",
    "+/-",
    "e-320",
];

pub fn mutate(own: &[u8], others: &[Vec<u8>], random: &mut Random) -> Vec<u8> {
    let mut text: Vec<char> = String::from_utf8_lossy(own).chars().collect();
    let letters: Vec<char> = LETTERS.chars().collect();
    for _ in 0..=random.below(4) {
        let at = random.below(text.len() + 1);
        match random.below(8) {
            0 if at < text.len() => text[at] = *random.one(&letters),
            1 => text.insert(at, *random.one(&letters)),
            2 if at < text.len() => {
                text.remove(at);
            }
            3 => {
                let other: Vec<char> = String::from_utf8_lossy(random.one::<Vec<u8>>(others))
                    .chars()
                    .collect();
                text.truncate(at);
                text.extend(&other[random.below(other.len() + 1)..]);
            }
            4 => {
                let digit = letters[random.below(10)];
                let many = random.below(40);
                text.splice(at..at, std::iter::repeat_n(digit, many));
            }
            5 => {
                text.splice(at..at, random.one(&WORDS).chars());
            }
            6 if random.once_in(400) => {
                let once = text.clone();
                (0..200).for_each(|_| text.extend(&once));
            }
            _ => {}
        }
    }
    // As long as what a person may paste, and longer now and then; what is much longer says nothing new.
    text.truncate(4000);
    text.into_iter().collect::<String>().into_bytes()
}

/// Bytes changed without a thought of what they mean.
pub fn change_bytes(own: &[u8], others: &[Vec<u8>], random: &mut Random) -> Vec<u8> {
    let mut bytes = own.to_vec();
    for _ in 0..=random.below(3) {
        let at = random.below(bytes.len() + 1);
        match random.below(4) {
            0 if at < bytes.len() => bytes[at] = random.byte(),
            1 => bytes.insert(at, random.byte()),
            2 if at < bytes.len() => {
                let end = (at + random.below(9)).min(bytes.len());
                bytes.drain(at..end);
            }
            _ => {
                let other = random.one(others);
                bytes.truncate(at);
                bytes.extend(&other[random.below(other.len() + 1)..]);
            }
        }
    }
    bytes
}
