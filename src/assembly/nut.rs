//! What closes the joint: a nut, or the thread of a tapped part.

use alloc::string::{String, ToString};

use super::Extent;
use crate::joint::{OwnNut, TappedPart};
use crate::parts::{Locking, Nut, NutStyle, Origin, Size, greatest_width};
use crate::spread::Spread;
use crate::units::Length;

/// What closes an [`Assembly`](super::Assembly).
///
/// ```
/// # use shankline::assembly::End;
/// fn has_nut(end: &End) -> bool {
///     matches!(end, End::Nut(_))
/// }
/// ```
// One of them an assembly: their size does not matter.
#[allow(clippy::large_enum_variant)]
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum End {
    /// A nut.
    Nut(NutBody),
    /// The thread of a part that the bolt is screwed into.
    Tapped(TappedBody),
}

impl End {
    /// From the bearing face of the nut to its outer face; of a tapped part from where its thread begins to where it must
    /// be filled.
    ///
    /// ```
    /// # use shankline::assembly::End;
    /// # use shankline::units::Length;
    /// fn grip(end: &End) -> Length {
    ///     end.at().from.nominal
    /// }
    /// ```
    #[must_use]
    pub const fn at(&self) -> Extent {
        match self {
            Self::Nut(nut) => nut.at,
            Self::Tapped(part) => part.at,
        }
    }
}

/// The nut of an [`Assembly`](super::Assembly). Sizes that its style does not have, and those that nobody has read, are
/// [`Size::NOT_READ`].
///
/// ```
/// # use shankline::assembly::NutBody;
/// # use shankline::units::Length;
/// fn wrench(nut: &NutBody) -> Option<Length> {
///     nut.across_flats.max
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct NutBody {
    /// What it is, as ordered.
    pub name: String,
    /// Its style; none of a nut of the caller's own.
    pub style: Option<NutStyle>,
    /// What keeps it from turning: an insert, slots.
    pub locking: Locking,
    /// From its bearing face to its outer face.
    pub at: Extent,
    /// Height, m, with any collar.
    pub height: Size,
    /// Width across flats, s.
    pub across_flats: Size,
    /// Width across corners, e.
    pub across_corners: Size,
    /// Diameter of the face that bears, dw.
    pub bearing_diameter: Size,
    /// Diameter of the countersink of the thread at that face, da.
    pub countersink_diameter: Size,
    /// Diameter of a flange, dc.
    pub flange_diameter: Size,
    /// Height of a flange at its rim, c.
    pub flange_height: Size,
    /// Height of the thread, without an insert.
    pub thread_height: Size,
    /// Height over which the flats can be wrenched, mw.
    pub wrenching_height: Size,
    /// Width of the slots for a cotter pin.
    pub slot_width: Size,
    /// Height of the part below the slots.
    pub unslotted_height: Size,
}

/// The thread that a bolt is screwed into, in place of a nut.
///
/// ```
/// # use shankline::assembly::TappedBody;
/// fn is_blind(part: &TappedBody) -> bool {
///     part.depth.is_some()
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct TappedBody {
    /// The name of the part.
    pub name: String,
    /// Where the part begins.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub face: Spread<Length>,
    /// Where its thread begins, below any counterbore, and to where it must be filled.
    pub at: Extent,
    /// Depth of full thread of a blind hole, from where the thread begins; none of a hole through, or if nobody says.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub depth: Option<Length>,
    /// Whether the hole goes through.
    pub through: bool,
    /// Minor diameter of its thread, basic.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub minor_diameter: Length,
    /// Material, as it was named.
    pub material: Option<String>,
}

impl NutBody {
    /// How wide it can be, for whoever needs room for it: the flange, or the greatest width across corners. Where only
    /// the flats are known, that of a hexagon with sharp corners, which no nut exceeds.
    ///
    /// ```
    /// use shankline::assembly::End;
    /// # use shankline::prelude::*;
    #[doc = include_str!("../joint/whole/example.txt")]
    /// let assembly = joint.assembly(&joint.check()?.candidate)?;
    /// let End::Nut(nut) = &assembly.end else { panic!("it has a nut") };
    /// assert!(nut.greatest_width().max > nut.across_flats.max);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn greatest_width(&self) -> Size {
        if self.flange_diameter.max.is_some() {
            return self.flange_diameter;
        }
        greatest_width(&self.across_flats, &self.across_corners, &Size::NOT_READ)
    }

    pub(super) fn of_row(row: &Nut, at: Extent) -> Self {
        let of = |min, nominal, max| Size::tabled(min, nominal, max, row.provenance);
        Self {
            name: row.to_string(),
            style: Some(row.style),
            locking: row.style.locking(),
            at,
            height: of(row.height_min, row.height_basic, row.height_max),
            across_flats: of(
                row.width_across_flats_min,
                row.width_across_flats_basic,
                row.width_across_flats_max,
            ),
            across_corners: of(
                row.width_across_corners_min,
                None,
                row.width_across_corners_max,
            ),
            bearing_diameter: of(row.bearing_diameter_min, None, None),
            countersink_diameter: of(
                row.countersink_diameter_min,
                None,
                row.countersink_diameter_max,
            ),
            flange_diameter: of(row.flange_diameter_min, None, row.flange_diameter_max),
            flange_height: of(row.flange_thickness_min, None, None),
            thread_height: of(row.thread_height_min, None, None),
            wrenching_height: of(row.wrenching_height_min, None, None),
            slot_width: of(row.slot_width_min, None, row.slot_width_max),
            unslotted_height: of(row.unslotted_height_min, None, row.unslotted_height_max),
        }
    }

    pub(super) fn of_own(own: &OwnNut, at: Extent) -> Self {
        Self {
            name: own.name.clone(),
            style: None,
            locking: own.locking,
            at,
            height: Size {
                min: Some(own.height.min),
                nominal: Some(own.height.nominal),
                max: Some(own.height.max),
                origin: Origin::Stated,
            },
            across_flats: Size::at_least(own.across_flats),
            across_corners: Size::NOT_READ,
            bearing_diameter: Size::at_least(own.bearing_diameter),
            countersink_diameter: Size::NOT_READ,
            flange_diameter: Size::NOT_READ,
            flange_height: Size::NOT_READ,
            thread_height: Size::NOT_READ,
            wrenching_height: Size::NOT_READ,
            slot_width: Size::NOT_READ,
            unslotted_height: Size::NOT_READ,
        }
    }
}

impl TappedBody {
    pub(super) fn of(
        part: &TappedPart,
        face: Spread<Length>,
        at: Extent,
        minor_diameter: Length,
    ) -> Self {
        use crate::joint::TappedHole;
        Self {
            name: part.name.clone(),
            face,
            at,
            depth: part.depth(),
            through: matches!(
                part.hole,
                Some(TappedHole::Through | TappedHole::ThroughWithInsert { .. })
            ),
            minor_diameter,
            material: part.material.as_ref().map(ToString::to_string),
        }
    }
}
