//! One ply of a stack with everything that is known of it.

use alloc::string::String;

use super::{JointMaterial, JointTimber};
use crate::spread::Spread;
use crate::strength::ply::{EdgeFinish, Slot, SlotDirection};
use crate::tables::galvanic::Metal;
use crate::units::{Angle, Length, Stress};

/// One ply of a [`Stack`](super::Stack): its thickness, and what is known of its material, hole and edges.
///
/// Only the thickness is needed to find a length. What a mode of failure needs and does not find here makes a
/// [verdict](crate::joint::Joint::check) undecided; nothing is taken to be safe because it is not said.
///
/// ```
/// use shankline::joint::JointPly;
/// use shankline::prelude::*;
/// let ear = JointPly::new("clevis ear", inches(0.500).plus_minus(inches(0.015)))
///     .material("ASTM A36 steel")
///     .hole(inches(0.8125))
///     .end_distance(inches(1.5))
///     .edge_distance(inches(1.25))
///     .width(inches(2.5));
/// assert_eq!(ear.material, Some("ASTM A36 steel".into()));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::super::data::RawPly")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(!try_from, deny_unknown_fields))]
#[non_exhaustive]
pub struct JointPly {
    /// What a drawing would call it.
    pub name: String,
    /// Thickness with its tolerance; of a soft ply, before it is clamped.
    pub thickness: Spread<Length>,
    /// By how much a soft ply may give when it is clamped; zero for hard ones.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "super::is_default",
            serialize_with = "crate::units::quantity::serialize"
        )
    )]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    #[cfg_attr(feature = "schema", schemars(default))]
    pub crush: Length,
    /// Its material: the name of one in [`tables::plies`](crate::tables::plies), or one of your own.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub material: Option<JointMaterial>,
    /// Its timber, if it is of timber: the name of one in [`tables::timber`](crate::tables::timber), or one of your
    /// own. Then it has no `material`.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub timber: Option<JointTimber>,
    /// Angle between the load and the grain of the timber, 0 to 90 deg.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Angle>>")
    )]
    pub grain_angle: Option<Angle>,
    /// What its surface is made of, coating included: for corrosion in contact only.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub metal: Option<Metal>,
    /// Diameter of its hole; of a slot, its width.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub hole: Option<Length>,
    /// The slot, where the hole is one; none for a round hole.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub slot: Option<Slot>,
    /// From the centre of the hole to the nearest end of the ply, along the load.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub end_distance: Option<Length>,
    /// From the centre of the hole to the nearest side of the ply, across the load.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub edge_distance: Option<Length>,
    /// How its edges were made; none if nobody says. Some codes ask more of sheared edges.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub edge_finish: Option<EdgeFinish>,
    /// To the next hole along the load. For several bolts only: see
    /// [`Joint::pattern`](crate::joint::Joint::pattern).
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub pitch: Option<Length>,
    /// To the next hole across the load. For several bolts only: see
    /// [`Joint::pattern`](crate::joint::Joint::pattern).
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub gauge: Option<Length>,
    /// Width of the strip that the load of one bolt, or of one row of bolts behind each other, comes through.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Length>>")
    )]
    pub width: Option<Length>,
    /// Ultimate bearing strength at this hole and end distance, for methods that start from it (MIL-HDBK-5). Over 2.5 of the
    /// tensile strength of the material, or beside none, it decides nothing.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Stress>>")
    )]
    pub bearing_strength: Option<Stress>,
    /// Yield strength in bearing at this hole and end distance, for the same methods: without it a stated bearing strength leaves
    /// undecided whether the ply yields at limit load. It is no more than the ultimate one; beside the strengths of a table it
    /// counts if it is less.
    #[cfg_attr(
        feature = "serde",
        serde(
            skip_serializing_if = "Option::is_none",
            serialize_with = "crate::units::quantity::serialize_option"
        )
    )]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<crate::schema::Quantity<Stress>>")
    )]
    pub bearing_yield: Option<Stress>,
    /// What share of the load across the axis this ply pulls: plus one way, minus the other, zero for packing.
    /// None to have the plies on either side of each shear plane pull against each other, with every plane
    /// loaded alike.
    #[cfg_attr(feature = "serde", serde(skip_serializing_if = "Option::is_none"))]
    pub pull: Option<f64>,
}

impl JointPly {
    /// A hard ply of which nothing but the thickness is known.
    ///
    /// ```
    /// use shankline::{joint::JointPly, prelude::*};
    /// assert_eq!(JointPly::new("web", Spread::exact(millimetres(12.0))).name, "web");
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, thickness: Spread<Length>) -> Self {
        Self {
            name: name.into(),
            thickness,
            crush: Length::default(),
            material: None,
            timber: None,
            grain_angle: None,
            metal: None,
            hole: None,
            slot: None,
            end_distance: None,
            edge_distance: None,
            edge_finish: None,
            pitch: None,
            gauge: None,
            width: None,
            bearing_strength: None,
            bearing_yield: None,
            pull: None,
        }
    }

    /// Packing: it fills, and pulls nothing.
    ///
    /// ```
    /// use shankline::{joint::JointPly, prelude::*};
    /// assert_eq!(JointPly::packing("shim", Spread::exact(millimetres(4.0))).pull, Some(0.0));
    /// ```
    #[must_use]
    pub fn packing(name: impl Into<String>, thickness: Spread<Length>) -> Self {
        Self::new(name, thickness).pulls(0.0)
    }

    /// Thickness once it is clamped: a soft ply may be thinner by what it gives.
    ///
    /// ```
    /// use shankline::{joint::JointPly, prelude::*};
    /// let mut mat = JointPly::new("rubber mat", millimetres(6.0).plus_minus(millimetres(0.5)));
    /// mat.crush = millimetres(1.5);
    /// assert_eq!(mat.clamped().min, millimetres(4.0));
    /// ```
    #[must_use]
    pub fn clamped(&self) -> Spread<Length> {
        Spread {
            min: self.thickness.min - self.crush,
            ..self.thickness
        }
    }

    /// The ply with its material: by name, or an [`OwnMaterial`](super::OwnMaterial).
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert!(ply.material("6061-T6 aluminium, sheet and plate").material.is_some());
    /// ```
    #[must_use]
    pub fn material(mut self, material: impl Into<JointMaterial>) -> Self {
        self.material = Some(material.into());
        self
    }

    /// The ply as timber, by name or an [`OwnTimber`](super::OwnTimber), with the angle between load and grain.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*, units::degrees};
    /// # let ply = JointPly::new("post", Spread::exact(millimetres(90.0)));
    /// assert!(ply.timber("C24", degrees(90.0)).timber.is_some());
    /// ```
    #[must_use]
    pub fn timber(mut self, timber: impl Into<JointTimber>, grain_angle: Angle) -> Self {
        self.timber = Some(timber.into());
        self.grain_angle = Some(grain_angle);
        self
    }

    /// The ply with what its surface is made of.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*, tables::galvanic::Metal};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert_eq!(ply.metal(Metal::HotDipZinc).metal, Some(Metal::HotDipZinc));
    /// ```
    #[must_use]
    pub const fn metal(mut self, metal: Metal) -> Self {
        self.metal = Some(metal);
        self
    }

    /// The ply with a round hole.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert_eq!(ply.hole(millimetres(18.0)).hole, Some(millimetres(18.0)));
    /// ```
    #[must_use]
    pub const fn hole(mut self, diameter: Length) -> Self {
        self.hole = Some(diameter);
        self
    }

    /// The ply with a slot, as wide as `width`.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*, strength::ply::SlotDirection};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// let slotted = ply.slot(millimetres(18.0), millimetres(22.0), SlotDirection::Across);
    /// assert!(slotted.slot.is_some());
    /// ```
    #[must_use]
    pub const fn slot(mut self, width: Length, length: Length, direction: SlotDirection) -> Self {
        self.hole = Some(width);
        self.slot = Some(Slot { length, direction });
        self
    }

    /// The ply with the distance from the hole's centre to its nearest end, along the load.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert!(ply.end_distance(millimetres(30.0)).end_distance.is_some());
    /// ```
    #[must_use]
    pub const fn end_distance(mut self, distance: Length) -> Self {
        self.end_distance = Some(distance);
        self
    }

    /// The ply with the distance from the hole's centre to its nearest side, across the load.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert!(ply.edge_distance(millimetres(30.0)).edge_distance.is_some());
    /// ```
    #[must_use]
    pub const fn edge_distance(mut self, distance: Length) -> Self {
        self.edge_distance = Some(distance);
        self
    }

    /// The ply with the distance to the next hole along the load.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert!(ply.pitch(millimetres(60.0)).pitch.is_some());
    /// ```
    #[must_use]
    pub const fn pitch(mut self, pitch: Length) -> Self {
        self.pitch = Some(pitch);
        self
    }

    /// The ply with the distance to the next hole across the load.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert!(ply.gauge(millimetres(60.0)).gauge.is_some());
    /// ```
    #[must_use]
    pub const fn gauge(mut self, gauge: Length) -> Self {
        self.gauge = Some(gauge);
        self
    }

    /// The ply with the width that the load of one bolt comes through.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert!(ply.width(millimetres(60.0)).width.is_some());
    /// ```
    #[must_use]
    pub const fn width(mut self, width: Length) -> Self {
        self.width = Some(width);
        self
    }

    /// The ply with what share of the load it pulls: plus one way, minus the other, zero for packing.
    ///
    /// ```
    /// # use shankline::{joint::JointPly, prelude::*};
    /// # let ply = JointPly::new("web", Spread::exact(millimetres(12.0)));
    /// assert_eq!(ply.pulls(-0.5).pull, Some(-0.5));
    /// ```
    #[must_use]
    pub const fn pulls(mut self, share: f64) -> Self {
        self.pull = Some(share);
        self
    }
}
