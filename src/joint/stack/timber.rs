//! What a ply of timber is: a timber of the tables, or one of the caller's own.

use alloc::string::String;
use core::fmt;

use super::material::own_name;
use crate::error::{Error, within};
#[cfg(feature = "serde")]
use crate::joint::data::ListedOr;
use crate::tables::timber::TimberKind;
use crate::units::{Density, Stress, kilograms_per_cubic_metre, megapascals};

/// The timber of a [ply](super::JointPly): in data files its name in the tables, or an object.
///
/// ```
/// use shankline::joint::{JointTimber, OwnTimber, TimberFigures};
/// use shankline::tables::timber::TimberKind;
/// let listed: JointTimber = "C24".into();
/// let figures = TimberFigures::Nds { specific_gravity: 0.44, compression_across: None };
/// let own: JointTimber = OwnTimber::new("sawmill larch (invented)", TimberKind::Softwood, figures).into();
/// assert_eq!(own.to_string(), "sawmill larch (invented)");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(untagged, from = "ListedOr<String, OwnTimber>")
)]
pub enum JointTimber {
    /// One of [`tables::timber`](crate::tables::timber), by its name there.
    Listed(String),
    /// One that the caller describes.
    Own(OwnTimber),
}

/// A timber of the caller's own. The verdict cautions that nothing here vouches for it.
///
/// ```
/// use shankline::joint::{OwnTimber, TimberFigures};
/// use shankline::tables::timber::TimberKind;
/// use shankline::units::{kilograms_per_cubic_metre, megapascals};
/// let sleeper = OwnTimber::new("sleeper oak (invented)", TimberKind::Hardwood, TimberFigures::En1995 {
///     characteristic_density: kilograms_per_cubic_metre(560.0),
///     compression_across: Some(megapascals(7.0)),
/// });
/// assert_eq!(sleeper.kind, TimberKind::Hardwood);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct OwnTimber {
    /// What its grader calls it.
    pub name: String,
    /// Softwood or hardwood.
    pub kind: TimberKind,
    /// Its figures.
    pub figures: TimberFigures,
}

/// Figures of a timber, with the method that they belong to: a specific gravity is no density here, and neither
/// serves the other method.
///
/// ```
/// use shankline::joint::TimberFigures;
/// let figures = TimberFigures::Nds { specific_gravity: 0.5, compression_across: None };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
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
pub enum TimberFigures {
    /// For the National Design Specification.
    Nds {
        /// Assigned specific gravity G, by oven-dry weight and volume.
        specific_gravity: f64,
        /// Reference design value `Fc_perp`, before adjustment; none if unknown.
        #[cfg_attr(
            feature = "serde",
            serde(
                default,
                skip_serializing_if = "Option::is_none",
                with = "crate::units::quantity::option"
            )
        )]
        #[cfg_attr(
            feature = "schema",
            schemars(with = "Option<crate::schema::Quantity<Stress>>")
        )]
        compression_across: Option<Stress>,
    },
    /// For EN 1995-1-1.
    #[cfg_attr(feature = "serde", serde(rename = "en_1995_1_1"))]
    En1995 {
        /// Characteristic density: 95 % of the timber is heavier.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(
            feature = "schema",
            schemars(with = "crate::schema::Quantity<Density>")
        )]
        characteristic_density: Density,
        /// Characteristic strength `fc,90,k`; none if unknown.
        #[cfg_attr(
            feature = "serde",
            serde(
                default,
                skip_serializing_if = "Option::is_none",
                with = "crate::units::quantity::option"
            )
        )]
        #[cfg_attr(
            feature = "schema",
            schemars(with = "Option<crate::schema::Quantity<Stress>>")
        )]
        compression_across: Option<Stress>,
    },
}

impl OwnTimber {
    /// A timber with its figures.
    ///
    /// ```
    /// use shankline::joint::{OwnTimber, TimberFigures};
    /// use shankline::tables::timber::TimberKind;
    /// let figures = TimberFigures::Nds { specific_gravity: 0.44, compression_across: None };
    /// assert_eq!(OwnTimber::new("larch", TimberKind::Softwood, figures).figures, figures);
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, kind: TimberKind, figures: TimberFigures) -> Self {
        Self {
            name: name.into(),
            kind,
            figures,
        }
    }

    /// Refuses figures that are none: the ranges are those of the methods' own tables.
    pub(in crate::joint) fn checked(&self) -> Result<(), Error> {
        own_name("timber", &self.name)?;
        let (TimberFigures::Nds {
            compression_across, ..
        }
        | TimberFigures::En1995 {
            compression_across, ..
        }) = self.figures;
        if let Some(stress) = compression_across {
            // The hardest timber of EN 338, D70, has 13.5 MPa (recalled).
            let quantity = "compressive strength across the grain";
            within(quantity, stress, megapascals(1e-3), megapascals(50.0))?;
        }
        match self.figures {
            TimberFigures::Nds {
                specific_gravity, ..
            } => within("specific gravity", specific_gravity, 0.31, 0.73).map(|_| ()),
            TimberFigures::En1995 {
                characteristic_density,
                ..
            } => within(
                "characteristic density",
                characteristic_density,
                kilograms_per_cubic_metre(250.0),
                kilograms_per_cubic_metre(1000.0),
            )
            .map(|_| ()),
        }
    }
}

impl From<OwnTimber> for JointTimber {
    fn from(own: OwnTimber) -> Self {
        Self::Own(own)
    }
}

impl From<&str> for JointTimber {
    fn from(name: &str) -> Self {
        Self::Listed(name.into())
    }
}

impl From<String> for JointTimber {
    fn from(name: String) -> Self {
        Self::Listed(name)
    }
}

impl fmt::Display for JointTimber {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Listed(name) => name,
            Self::Own(own) => &own.name,
        })
    }
}

#[cfg(feature = "serde")]
impl From<ListedOr<String, OwnTimber>> for JointTimber {
    fn from(part: ListedOr<String, OwnTimber>) -> Self {
        match part {
            ListedOr::Listed(name) => Self::Listed(name),
            ListedOr::Own(own) => Self::Own(own),
        }
    }
}
