//! A joint as it stands in a data file (feature `serde`): there a part of the caller's own stands where the name of a
//! listed one would, and a washer of a style need not say its thickness.

use alloc::{
    string::{String, ToString},
    vec::Vec,
};

use serde::{Deserialize, Serialize, Serializer};

use super::{
    Granted, Joint, JointBolt, JointLoad, JointMethods, JointNut, OwnNut, OwnParts, OwnScrew,
    OwnStrength, Pattern, Scope, SetAside, Tightening,
};
use crate::joint::data::ListedOr;
use crate::joint::stack::Parts;
use crate::joint::{Environment, LengthRules, RuleSet, Stack};
use crate::material::{BoltGrade, Finish, NutGrade};
use crate::parts::{NutStyle, ScrewProduct};
use crate::thread::Thread;
use crate::units::{Length, UnitSystem};

#[derive(Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
pub(super) struct RawJoint {
    title: String,
    bolt: RawBolt,
    #[serde(default)]
    nut: Option<RawNut>,
    stack: Parts,
    pattern: Pattern,
    load: JointLoad,
    environment: Environment,
    #[serde(default)]
    tightening: Option<Tightening>,
    rules: Rules,
    #[serde(deserialize_with = "methods_or_their_name")]
    methods: JointMethods,
    #[serde(default)]
    scope: Scope,
    #[serde(default)]
    set_aside: Vec<SetAside>,
    #[serde(default)]
    granted: Vec<Granted>,
}

/// Rules in full, or by the name of their set: how cuts are rounded then follows from the thread.
#[derive(Deserialize)]
#[serde(from = "ListedOr<RuleSet, LengthRules>")]
struct Rules(ListedOr<RuleSet, LengthRules>);

impl From<ListedOr<RuleSet, LengthRules>> for Rules {
    fn from(rules: ListedOr<RuleSet, LengthRules>) -> Self {
        Self(rules)
    }
}

fn methods_or_their_name<'de, D: serde::Deserializer<'de>>(
    deserializer: D,
) -> Result<JointMethods, D::Error> {
    crate::objects::named_or_full(deserializer, JointMethods::named)
}

/// The bolt as it stands in a data file.
#[derive(Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(rename = "Bolt"))]
pub(super) struct RawBolt {
    /// The product, or a screw of one's own.
    product: ListedOr<ScrewProduct, OwnScrew>,
    /// The thread.
    thread: Thread,
    /// The grade, or strengths of one's own.
    grade: ListedOr<BoltGrade, OwnStrength>,
    /// Nominal length; left out to have it found.
    #[serde(default, with = "crate::units::quantity::option")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    length: Option<Length>,
    /// Its coating; none if nobody says.
    #[serde(default)]
    finish: Option<Finish>,
}

/// The nut as it stands in a data file.
#[derive(Deserialize)]
#[serde(crate = "crate::objects", deny_unknown_fields)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(rename = "Nut"))]
pub(super) struct RawNut {
    /// The style, or a nut of one's own.
    style: ListedOr<NutStyle, OwnNut>,
    /// Its grade.
    #[serde(default)]
    grade: Option<NutGrade>,
    /// Its coating; none if nobody says.
    #[serde(default)]
    finish: Option<Finish>,
}

impl TryFrom<RawJoint> for Joint {
    type Error = String;
    fn try_from(raw: RawJoint) -> Result<Self, String> {
        let mut own = OwnParts::default();
        let product = match raw.bolt.product {
            ListedOr::Listed(product) => product,
            ListedOr::Own(screw) => {
                own.screw = Some(screw);
                ScrewProduct::Own
            }
        };
        let grade = match raw.bolt.grade {
            ListedOr::Listed(grade) => grade,
            ListedOr::Own(strength) => {
                own.strength = Some(strength);
                BoltGrade::Stated
            }
        };
        let nut = match raw.nut {
            None => None,
            Some(RawNut {
                style: ListedOr::Listed(style),
                grade,
                finish,
            }) => Some(JointNut {
                style,
                grade,
                finish,
            }),
            Some(RawNut {
                style: ListedOr::Own(nut),
                grade,
                finish,
            }) => {
                if grade.is_some() {
                    return Err("nut: one of your own has no grade of the tables: state its proof stress or load".into());
                }
                own.nut = Some(OwnNut { finish, ..nut });
                None
            }
        };
        let thread = raw.bolt.thread;
        let stack = raw.stack.for_thread(&thread);
        Ok(Self {
            title: raw.title,
            bolt: JointBolt {
                product,
                thread,
                grade,
                length: raw.bolt.length,
                finish: raw.bolt.finish,
            },
            nut,
            stack: stack.map_err(|error| error.to_string())?,
            pattern: raw.pattern,
            load: raw.load,
            environment: raw.environment,
            tightening: raw.tightening,
            rules: match raw.rules.0 {
                ListedOr::Own(rules) => rules,
                ListedOr::Listed(set) if thread.is_unified() => set.rules(UnitSystem::UsCustomary),
                ListedOr::Listed(set) => set.rules(UnitSystem::Si),
            },
            methods: raw.methods,
            scope: raw.scope,
            set_aside: raw.set_aside,
            granted: raw.granted,
            own,
        })
    }
}

#[derive(Serialize)]
struct WrittenJoint<'a> {
    title: &'a str,
    bolt: WrittenBolt<'a>,
    nut: Option<WrittenNut<'a>>,
    stack: &'a Stack,
    pattern: &'a Pattern,
    load: &'a JointLoad,
    environment: &'a Environment,
    tightening: &'a Option<Tightening>,
    rules: &'a LengthRules,
    methods: &'a JointMethods,
    scope: Scope,
    set_aside: &'a [SetAside],
    #[serde(skip_serializing_if = "<[Granted]>::is_empty")]
    granted: &'a [Granted],
}

#[derive(Serialize)]
struct WrittenBolt<'a> {
    product: Written<'a, ScrewProduct, OwnScrew>,
    thread: Thread,
    grade: Written<'a, BoltGrade, OwnStrength>,
    #[serde(with = "crate::units::quantity::option")]
    length: Option<Length>,
    finish: Option<Finish>,
}

#[derive(Serialize)]
struct WrittenNut<'a> {
    style: Written<'a, NutStyle, OwnNut>,
    grade: Option<NutGrade>,
    finish: Option<Finish>,
}

/// A listed part, or one of the caller's own.
#[derive(Serialize)]
#[serde(untagged)]
enum Written<'a, L, O> {
    Listed(L),
    Own(&'a O),
}

fn written<L, O>(own: Option<&O>, listed: L) -> Written<'_, L, O> {
    own.map_or(Written::Listed(listed), Written::Own)
}

impl Serialize for Joint {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let own = &self.own;
        let listed = self.nut.map(|nut| WrittenNut {
            style: Written::Listed(nut.style),
            grade: nut.grade,
            finish: nut.finish,
        });
        let of_own = own.nut.as_ref().map(|nut| WrittenNut {
            style: Written::Own(nut),
            grade: None,
            finish: nut.finish,
        });
        WrittenJoint {
            title: &self.title,
            bolt: WrittenBolt {
                product: written(own.screw.as_ref(), self.bolt.product),
                thread: self.bolt.thread,
                grade: written(own.strength.as_ref(), self.bolt.grade),
                length: self.bolt.length,
                finish: self.bolt.finish,
            },
            nut: of_own.or(listed),
            stack: &self.stack,
            pattern: &self.pattern,
            load: &self.load,
            environment: &self.environment,
            tightening: &self.tightening,
            rules: &self.rules,
            methods: &self.methods,
            scope: self.scope,
            set_aside: &self.set_aside,
            granted: &self.granted,
        }
        .serialize(serializer)
    }
}
