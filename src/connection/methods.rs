//! How the load of a connection comes to its bolts.

use alloc::string::String;

use crate::source::Method;
use crate::strength::group::DeformationLaw;
use crate::tables::methods;
use crate::units::Length;

/// How a force and moment in the plane come to the bolts.
///
/// | method | for | not for |
/// |---|---|---|
/// | [`Elastic`](Self::Elastic) | any load, any code | |
/// | [`InstantaneousCentre`](Self::InstantaneousCentre) | bearing joints by AISC 360, loads in the plane | joints that must not slip, loads along the axis, loads that alternate |
///
/// ```
/// use shankline::connection::InPlane;
/// assert!(InPlane::Elastic.source().citation.contains("elastic"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum InPlane {
    /// Rigid plates, bolts as springs: [`BoltPattern::elastic`](crate::strength::group::BoltPattern::elastic).
    Elastic,
    /// Bolts by their load-deformation curve:
    /// [`BoltPattern::instantaneous_centre`](crate::strength::group::BoltPattern::instantaneous_centre). The bolt that
    /// deforms most is held to the strength that the method wants of it, the others to as much more than their force.
    InstantaneousCentre(DeformationLaw),
}

impl InPlane {
    /// Who says so.
    ///
    /// ```
    /// # use shankline::{connection::InPlane, strength::group::DeformationLaw};
    /// let centre = InPlane::InstantaneousCentre(DeformationLaw::Aisc);
    /// assert!(centre.source().citation.contains("instantaneous"));
    /// ```
    #[must_use]
    pub const fn source(self) -> &'static Method {
        match self {
            Self::Elastic => methods::ELASTIC_VECTOR,
            Self::InstantaneousCentre(_) => methods::INSTANTANEOUS_CENTRE,
        }
    }
}

/// How moments out of the plane come to the bolts. A pull through their centroid needs none: all get the same.
///
/// | method | for | not for |
/// |---|---|---|
/// | [`Clamped`](Self::Clamped) | bolts with a controlled preload, any moment | hand-tight bolts |
/// | [`PressedEdge`](Self::PressedEdge) | plates much stiffer than their bolts, on something as stiff | moments that tilt the plate onto a corner; soft grounds |
///
/// Both leave out what plates that bend add: that is [`PlatePrying`], or the word of the caller in
/// [`JointLoad::prying`](crate::joint::JointLoad::prying). Of several bolts the plates must be shown to be stiff beside that
/// word: between bolts that are pulled and the [footprint](super::Plate::footprint) of what is fixed to a plate it is bent to
/// at most 0.6 of its yield, each bolt spreading its force at 45 degrees (common practice, no source), as far as plate and
/// footprint are so wide; what comes to the same place of rows behind or of bolts beside is added up. Other plates leave the
/// word undecided.
///
/// ```
/// use shankline::connection::OutOfPlane;
/// assert_ne!(OutOfPlane::Clamped, OutOfPlane::PressedEdge { ply: "foot".into() });
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum OutOfPlane {
    /// The preload keeps the plies together: neutral axis through the centroid of the bolts.
    Clamped,
    /// The plate tilts about the edge of its outline that the moment presses. A force that presses takes nothing off. The
    /// plies on which the edge lies want outlines too, and it may not hang over them. A plate on either side that this bends to
    /// more than 0.6 of its yield, between the edge and the bolts next to it or what is fixed to it, leaves the word undecided:
    /// no method here has that. Where a force that presses meets the moment beyond what is fixed, all of it presses the edge too.
    PressedEdge {
        /// The ply whose outline has the edge; no packing.
        ply: String,
    },
}

/// What a flange that bends adds to the load along its bolts, for connections by AISC 360: the flange of a tee or an end
/// plate, with a stem that pulls midway between two lines of bolts.
///
/// See [`AiscFlange`](crate::tension::AiscFlange), whose lengths these are; thickness, hole and strength are those of the
/// ply. Where the ply has a footprint, the stem is no nearer than that. The other side of the joint is asked like any plate that
/// bolts pull at.
///
/// ```
/// use shankline::connection::PlatePrying;
/// use shankline::units::inches;
/// let tee = PlatePrying::new("flange of the tee", inches(3.5), inches(1.97), inches(1.25));
/// assert_eq!(tee.to_edge, inches(1.25));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct PlatePrying {
    /// The ply that bends; no packing. Without its outline the word stays undecided.
    pub ply: String,
    /// Length p of flange that belongs to one bolt: at most the pitch, and what belongs to the bolt that has least, half the
    /// way to the next and at the ends what is there.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub tributary: Length,
    /// b: bolt line to the face of the stem.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub to_stem: Length,
    /// a: bolt line to the edge of the flange.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub to_edge: Length,
}

impl PlatePrying {
    /// The flange by its lengths p, b and a.
    ///
    /// ```
    /// # use shankline::{connection::PlatePrying, units::inches};
    /// assert_eq!(PlatePrying::new("flange", inches(3.0), inches(2.0), inches(1.5)).ply, "flange");
    /// ```
    #[must_use]
    pub fn new(
        ply: impl Into<String>,
        tributary: Length,
        to_stem: Length,
        to_edge: Length,
    ) -> Self {
        Self {
            ply: ply.into(),
            tributary,
            to_stem,
            to_edge,
        }
    }
}
