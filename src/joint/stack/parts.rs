//! What a stack is put together from, and how it is written.

use alloc::vec::Vec;

use super::{Gap, HeadSeat, JointPly, JointWasher, Sleeve, TappedPart};
use crate::spread::Spread;
use crate::units::Length;
#[cfg(feature = "serde")]
use {super::Stack, crate::error::Error, crate::parts::Washer, crate::thread::Thread};

/// What a stack is put together from, and how it is written.
#[derive(Clone, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", default, deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(
    feature = "schema",
    schemars(extend("required" = ["plies"]))
)]
pub(in crate::joint) struct Parts {
    /// Washers under the head, from the head on.
    #[cfg_attr(
        feature = "serde",
        serde(deserialize_with = "crate::joint::data::draft_washers")
    )]
    pub(super) washers_under_head: Vec<JointWasher>,
    /// A washer that a search for the length may add under the head.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            deserialize_with = "crate::joint::data::draft_washer"
        )
    )]
    pub(super) washer_to_add_under_head: Option<JointWasher>,
    /// What the head sits on.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "is_default"))]
    pub(super) head_seat: HeadSeat,
    /// What is clamped, from the head.
    #[cfg_attr(feature = "schema", schemars(length(min = 1)))]
    pub(super) plies: Vec<JointPly>,
    /// Gaps between plies.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    pub(super) gaps: Vec<Gap>,
    /// Sleeves around the bolt.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Vec::is_empty"))]
    pub(super) sleeves: Vec<Sleeve>,
    /// Shear planes, each by the number of plies between the head and it.
    pub(super) shear_planes: Vec<usize>,
    /// Washers under the nut, of one kind, that a search for the length may add to.
    pub(super) washers_under_nut: Option<NutWashers>,
    /// Other washers under the nut, that are always there.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Vec::is_empty",
            deserialize_with = "crate::joint::data::draft_washers"
        )
    )]
    pub(super) other_washers_under_nut: Vec<JointWasher>,
    /// Depth of a spot face under the nut.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub(super) spot_face_under_nut: Option<Spread<Length>>,
    /// The part that the bolt is screwed into, in place of a nut.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub(super) tapped_part: Option<TappedPart>,
}

/// The thickness of a washer that has that of its style: a file need not say it, and a stack is not built with it.
pub(in crate::joint) const OF_STYLE: Spread<Length> = Spread::exact(crate::units::millimetres(0.0));

impl Parts {
    /// The stack, with washers of a style as thick as that is for a thread.
    #[cfg(feature = "serde")]
    pub(in crate::joint) fn for_thread(mut self, thread: &Thread) -> Result<Stack, Error> {
        for washer in self.drafts() {
            if let Some(style) = washer.style {
                washer.thickness = Washer::find(style, thread)?.thickness()?;
            }
        }
        self.try_into()
    }

    /// Washers whose thickness was left to their style.
    pub(super) fn drafts(&mut self) -> impl Iterator<Item = &mut JointWasher> {
        let at_nut = self.washers_under_nut.as_mut().map(|own| &mut own.washer);
        self.washers_under_head
            .iter_mut()
            .chain(&mut self.other_washers_under_nut)
            .chain(&mut self.washer_to_add_under_head)
            .chain(at_nut)
            .filter(|washer| washer.style.is_some() && washer.thickness == OF_STYLE)
    }
}

/// Washers of one kind under the nut.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "crate::joint::data::RawWasher")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(!try_from, deny_unknown_fields))]
pub(in crate::joint) struct NutWashers {
    #[cfg_attr(feature = "serde", serde(flatten))]
    pub(in crate::joint) washer: JointWasher,
    pub(in crate::joint) count: usize,
}

/// Washers that a search adds to those always there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(in crate::joint) struct Added {
    pub(in crate::joint) under_head: usize,
    pub(in crate::joint) under_nut: usize,
}

#[cfg(feature = "serde")]
pub(super) fn is_default<T: Default + PartialEq>(value: &T) -> bool {
    *value == T::default()
}
