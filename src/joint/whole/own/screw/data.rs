//! A bolt of the caller's own as it stands in a data file.

use alloc::{
    string::{String, ToString},
    vec::Vec,
};

use super::{CountersunkHead, OwnLength, OwnScrew};
use crate::spread::Spread;
use crate::units::Length;

/// One of the lengths of a bolt of one's own.
#[derive(Clone, Debug, serde::Serialize, serde::Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(
    feature = "schema",
    schemars(rename = "OwnLength", extend("anyOf" = [
        { "properties": { "shank": { "not": { "type": "null" } }, "thread_start": { "not": { "type": "null" } }, "thread_length": { "type": "null" }, "run_out": { "type": "null" } }, "required": ["shank", "thread_start"] },
        { "properties": { "shank": { "type": "null" }, "thread_start": { "type": "null" }, "thread_length": { "not": { "type": "null" } }, "run_out": { "not": { "type": "null" } } }, "required": ["thread_length", "run_out"] }
    ]))
)]
pub(super) struct RawLength {
    /// Length from the bearing face of the head to the end.
    length: Spread<Length>,
    /// Least length of full shank; zero if it is threaded to the head.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    shank: Option<Length>,
    /// Where the thread is full at the latest: a nut goes no nearer to the head.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    thread_start: Option<Length>,
    /// Length of full thread from the end, with its run-out in place of shank and thread start.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    thread_length: Option<Spread<Length>>,
    /// Greatest length of the run-out behind the thread.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    run_out: Option<Length>,
}

/// A bolt or screw of one's own: of one length, or of several in `lengths`.
#[derive(Clone, Debug, serde::Serialize, serde::Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(
    feature = "schema",
    schemars(rename = "OwnScrew", extend("anyOf" = [
        { "properties": { "length": { "not": { "type": "null" } }, "lengths": { "type": "null" }, "shank": { "not": { "type": "null" } }, "thread_start": { "not": { "type": "null" } }, "thread_length": { "type": "null" }, "run_out": { "type": "null" } }, "required": ["length", "shank", "thread_start"] },
        { "properties": { "length": { "not": { "type": "null" } }, "lengths": { "type": "null" }, "shank": { "type": "null" }, "thread_start": { "type": "null" }, "thread_length": { "not": { "type": "null" } }, "run_out": { "not": { "type": "null" } } }, "required": ["length", "thread_length", "run_out"] },
        { "properties": { "lengths": { "not": { "type": "null" } }, "length": { "type": "null" }, "shank": { "type": "null" }, "thread_start": { "type": "null" }, "thread_length": { "type": "null" }, "run_out": { "type": "null" } }, "required": ["lengths"] }
    ]))
)]
pub(super) struct RawScrew {
    /// What a drawing calls it.
    name: String,
    /// Length from the bearing face of the head to the end, of a bolt of one length.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    length: Option<Spread<Length>>,
    /// Least length of full shank; zero if it is threaded to the head.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    shank: Option<Length>,
    /// Where the thread is full at the latest: a nut goes no nearer to the head.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    thread_start: Option<Length>,
    /// Length of full thread from the end, with its run-out in place of shank and thread start.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    thread_length: Option<Spread<Length>>,
    /// Greatest length of the run-out behind the thread.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    run_out: Option<Length>,
    /// Every length that it comes in, in place of one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(length(min = 1)))]
    lengths: Option<Vec<OwnLength>>,
    /// Least diameter of the bearing face under the head; none if unknown.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    bearing_diameter: Option<Length>,
    /// Least width of the head across flats; none if unknown.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    across_flats: Option<Length>,
    /// Least height of the head; none if unknown.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        with = "crate::units::quantity::option"
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    head_height: Option<Length>,
    /// Its head, if it is countersunk.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    countersunk: Option<CountersunkHead>,
}

impl TryFrom<RawLength> for OwnLength {
    type Error = String;
    fn try_from(raw: RawLength) -> Result<Self, String> {
        let RawLength {
            length,
            shank,
            thread_start,
            thread_length,
            run_out,
        } = raw;
        match (shank, thread_start, thread_length, run_out) {
            (Some(shank), Some(thread_start), None, None) => {
                Ok(Self::new(length, shank, thread_start))
            }
            (None, None, Some(thread), Some(run_out)) => {
                Self::of_thread(length, thread, run_out).map_err(|error| error.to_string())
            }
            _ => Err(
                "a length goes with shank and thread_start, or with thread_length and run_out"
                    .into(),
            ),
        }
    }
}

impl From<OwnLength> for RawLength {
    fn from(own: OwnLength) -> Self {
        Self {
            length: own.length,
            shank: Some(own.shank),
            thread_start: Some(own.thread_start),
            thread_length: None,
            run_out: None,
        }
    }
}

impl TryFrom<RawScrew> for OwnScrew {
    type Error = String;
    fn try_from(raw: RawScrew) -> Result<Self, String> {
        let of_one = [raw.shank, raw.thread_start, raw.run_out];
        let says_one = raw.thread_length.is_some() || of_one.iter().any(Option::is_some);
        let lengths = match (raw.length, raw.lengths) {
            (Some(length), None) => Vec::from([OwnLength::try_from(RawLength {
                length,
                shank: raw.shank,
                thread_start: raw.thread_start,
                thread_length: raw.thread_length,
                run_out: raw.run_out,
            })?]),
            (None, Some(lengths)) if lengths.is_empty() => {
                return Err("lengths: none is in it".into());
            }
            (None, Some(lengths)) if !says_one => lengths,
            (None, None) => return Err("missing field `length`, or `lengths` of several".into()),
            (_, Some(_)) => {
                return Err(
                    "lengths: each has its own length, shank and thread, and the bolt no other"
                        .into(),
                );
            }
        };
        Ok(Self {
            name: raw.name,
            lengths,
            bearing_diameter: raw.bearing_diameter,
            across_flats: raw.across_flats,
            head_height: raw.head_height,
            countersunk: raw.countersunk,
        })
    }
}

impl From<OwnScrew> for RawScrew {
    fn from(own: OwnScrew) -> Self {
        let (only, lengths) = match <[OwnLength; 1]>::try_from(own.lengths) {
            Ok([only]) => (Some(only), None),
            Err(lengths) => (None, Some(lengths)),
        };
        Self {
            name: own.name,
            length: only.map(|own| own.length),
            shank: only.map(|own| own.shank),
            thread_start: only.map(|own| own.thread_start),
            thread_length: None,
            run_out: None,
            lengths,
            bearing_diameter: own.bearing_diameter,
            across_flats: own.across_flats,
            head_height: own.head_height,
            countersunk: own.countersunk,
        }
    }
}
