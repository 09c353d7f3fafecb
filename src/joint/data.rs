//! Stacks and rules as they stand in data files (feature `serde`).

use alloc::{
    format,
    string::{String, ToString},
    vec::Vec,
};

use core::fmt;
use core::marker::PhantomData;

use serde::de::value::MapAccessDeserializer;
use serde::de::{self, IntoDeserializer, MapAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize};

use super::stack::{NutWashers, OF_STYLE};
use super::{CutRule, JointMaterial, JointPly, JointTimber, JointWasher};
use crate::spread::quantity::RawSpread;
use crate::strength::ply::{EdgeFinish, Slot};
use crate::tables::galvanic::Metal;
use crate::tables::washers::WasherStyle;
use crate::units::Measured;
use crate::units::quantity::RawQuantity;

/// A part as it stands in a file: the name of a listed one as text, or one of the caller's own as an object.
pub(crate) enum ListedOr<L, O> {
    Listed(L),
    Own(O),
}

impl<'de, L: Deserialize<'de>, O: Deserialize<'de>> Deserialize<'de> for ListedOr<L, O> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(ListedOrVisitor(PhantomData))
    }
}

struct ListedOrVisitor<L, O>(PhantomData<(L, O)>);

impl<'de, L: Deserialize<'de>, O: Deserialize<'de>> Visitor<'de> for ListedOrVisitor<L, O> {
    type Value = ListedOr<L, O>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a name of the tables as text, or an object that describes a part of your own")
    }

    fn visit_str<E: de::Error>(self, name: &str) -> Result<Self::Value, E> {
        L::deserialize(name.into_deserializer()).map(ListedOr::Listed)
    }

    fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<Self::Value, A::Error> {
        O::deserialize(MapAccessDeserializer::new(map)).map(ListedOr::Own)
    }
}

#[derive(Clone, Debug, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
pub(crate) struct RawPly {
    name: String,
    thickness: RawSpread,
    #[serde(default)]
    crush: Option<RawQuantity>,
    #[serde(default)]
    material: Option<JointMaterial>,
    #[serde(default)]
    timber: Option<JointTimber>,
    #[serde(default)]
    grain_angle: Option<RawQuantity>,
    #[serde(default)]
    metal: Option<Metal>,
    #[serde(default)]
    hole: Option<RawQuantity>,
    #[serde(default)]
    slot: Option<Slot>,
    #[serde(default)]
    end_distance: Option<RawQuantity>,
    #[serde(default)]
    edge_distance: Option<RawQuantity>,
    #[serde(default)]
    edge_finish: Option<EdgeFinish>,
    #[serde(default)]
    pitch: Option<RawQuantity>,
    #[serde(default)]
    gauge: Option<RawQuantity>,
    #[serde(default)]
    width: Option<RawQuantity>,
    #[serde(default)]
    bearing_strength: Option<RawQuantity>,
    #[serde(default)]
    bearing_yield: Option<RawQuantity>,
    #[serde(default)]
    pull: Option<f64>,
}

/// A quantity that may be left out, with the name of its field and of its part in what is refused.
fn optional<Q: Measured>(
    raw: Option<&RawQuantity>,
    field: &str,
    part: &str,
) -> Result<Option<Q>, String> {
    raw.map(|raw| raw.named(&format!("{field} of \"{part}\"")))
        .transpose()
}

impl TryFrom<RawPly> for JointPly {
    type Error = String;
    fn try_from(raw: RawPly) -> Result<Self, String> {
        let part = raw.name.as_str();
        Ok(Self {
            thickness: raw.thickness.named(&format!("thickness of \"{part}\""))?,
            crush: optional(raw.crush.as_ref(), "crush", part)?.unwrap_or_default(),
            grain_angle: optional(raw.grain_angle.as_ref(), "grain_angle", part)?,
            hole: optional(raw.hole.as_ref(), "hole", part)?,
            end_distance: optional(raw.end_distance.as_ref(), "end_distance", part)?,
            edge_distance: optional(raw.edge_distance.as_ref(), "edge_distance", part)?,
            pitch: optional(raw.pitch.as_ref(), "pitch", part)?,
            gauge: optional(raw.gauge.as_ref(), "gauge", part)?,
            width: optional(raw.width.as_ref(), "width", part)?,
            bearing_strength: optional(raw.bearing_strength.as_ref(), "bearing_strength", part)?,
            bearing_yield: optional(raw.bearing_yield.as_ref(), "bearing_yield", part)?,
            material: raw.material,
            timber: raw.timber,
            metal: raw.metal,
            slot: raw.slot,
            edge_finish: raw.edge_finish,
            pull: raw.pull,
            name: raw.name,
        })
    }
}

#[derive(Clone, Debug, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
pub(crate) struct RawWasher {
    #[serde(default)]
    name: Option<String>,
    /// That of its style, if it is left out and the thread is known.
    #[serde(default)]
    thickness: Option<RawSpread>,
    #[serde(default)]
    style: Option<WasherStyle>,
    #[serde(default)]
    metal: Option<Metal>,
    #[serde(default)]
    outside: Option<RawQuantity>,
    #[serde(default)]
    inside: Option<RawQuantity>,
    #[serde(default)]
    hardness: Option<f64>,
    /// Only for those under the nut that a search may add to.
    #[serde(default)]
    count: Option<usize>,
}

impl RawWasher {
    fn washer(self) -> Result<(JointWasher, Option<usize>), String> {
        let name = match (self.name, self.style) {
            (Some(name), _) => name,
            (None, Some(style)) => style.to_string(),
            (None, None) => "washer".into(),
        };
        let thickness = match (&self.thickness, self.style) {
            (Some(raw), _) => {
                let what = format!("thickness of \"{name}\"");
                let said = raw.named(&what)?;
                // That would be taken for a thickness that was left out.
                if said == OF_STYLE {
                    return Err(format!("{what} is nothing"));
                }
                said
            }
            (None, Some(_)) => OF_STYLE,
            (None, None) => return Err(format!("missing field `thickness` of \"{name}\"")),
        };
        let washer = JointWasher {
            thickness,
            outside: optional(self.outside.as_ref(), "outside", &name)?,
            inside: optional(self.inside.as_ref(), "inside", &name)?,
            style: self.style,
            hardness: self.hardness,
            metal: self.metal,
            name: name.into(),
        };
        Ok((washer, self.count))
    }
}

impl TryFrom<RawWasher> for JointWasher {
    type Error = String;
    fn try_from(raw: RawWasher) -> Result<Self, String> {
        match raw.washer()? {
            (washer, None) if washer.thickness == OF_STYLE => Err(format!(
                "missing field `thickness` of \"{}\": only a joint has a thread to look it up for",
                washer.name
            )),
            (washer, None) => Ok(washer),
            (_, Some(_)) => Err("unknown field `count`: only `washers_under_nut` has one".into()),
        }
    }
}

/// A washer whose thickness may still have to be looked up.
#[derive(Deserialize)]
#[serde(try_from = "RawWasher")]
struct Draft(JointWasher);

impl TryFrom<RawWasher> for Draft {
    type Error = String;
    fn try_from(raw: RawWasher) -> Result<Self, String> {
        if raw.count.is_some() {
            return JointWasher::try_from(raw).map(Self);
        }
        raw.washer().map(|(washer, _)| Self(washer))
    }
}

pub(crate) fn draft_washers<'de, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Vec<JointWasher>, D::Error> {
    let drafts = Vec::<Draft>::deserialize(deserializer)?;
    Ok(drafts.into_iter().map(|draft| draft.0).collect())
}

pub(crate) fn draft_washer<'de, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Option<JointWasher>, D::Error> {
    let draft = Option::<Draft>::deserialize(deserializer)?;
    Ok(draft.map(|draft| draft.0))
}

impl TryFrom<RawWasher> for NutWashers {
    type Error = String;
    fn try_from(raw: RawWasher) -> Result<Self, String> {
        // Most washers have no name of their own: the key says which one is meant.
        let named = raw
            .washer()
            .map_err(|error| format!("washers_under_nut: {error}"));
        match named? {
            (washer, Some(count)) => Ok(Self { washer, count }),
            (_, None) => Err("missing field `count` of washers_under_nut".into()),
        }
    }
}

/// `{ "allowed": false }`, or `{ "allowed": true, "tolerance": ..., "step": ... }`.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(
    feature = "schema",
    schemars(extend("anyOf" = [
        {
            "properties": { "allowed": { "const": false }, "tolerance": { "type": "null" }, "step": { "type": "null" } }
        },
        {
            "properties": {
                "allowed": { "const": true },
                "tolerance": { "not": { "type": "null" } },
                "step": { "not": { "type": "null" } }
            },
            "required": ["tolerance", "step"]
        }
    ]))
)]
pub(crate) struct RawCutRule {
    /// Whether a bolt may be cut.
    allowed: bool,
    /// How exactly a cut is made, either way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<crate::units::Length>>")
    )]
    tolerance: Option<RawQuantity>,
    /// Cut lengths are whole multiples of this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<crate::units::Length>>")
    )]
    step: Option<RawQuantity>,
}

impl TryFrom<RawCutRule> for CutRule {
    type Error = String;
    fn try_from(raw: RawCutRule) -> Result<Self, String> {
        match (raw.allowed, raw.tolerance, raw.step) {
            (true, Some(tolerance), Some(step)) => Ok(Self::Allowed {
                tolerance: tolerance.named("tolerance")?,
                step: step.named("step")?,
            }),
            (true, ..) => Err("tolerance and step: needed where cutting is allowed".into()),
            (false, None, None) => Ok(Self::Never),
            (false, ..) => {
                Err("tolerance and step: not wanted where cutting is not allowed".into())
            }
        }
    }
}

impl From<CutRule> for RawCutRule {
    fn from(rule: CutRule) -> Self {
        match rule {
            CutRule::Never => Self {
                allowed: false,
                tolerance: None,
                step: None,
            },
            CutRule::Allowed { tolerance, step } => Self {
                allowed: true,
                tolerance: Some(RawQuantity::of(tolerance)),
                step: Some(RawQuantity::of(step)),
            },
        }
    }
}
