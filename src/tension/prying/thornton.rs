//! A bolted tee by Thornton's equilibrium.

use crate::derivation::{Derivation, Step};
use crate::error::{Error, not_negative};
use crate::source::Method;
use crate::tables::methods;
use crate::tension::{at_most, part_length, sane_load};
use crate::units::{Force, Length, Torque, from_base};

/// Forces and moments in a bolted tee by Thornton's equilibrium.
///
/// ```
/// use shankline::{prelude::*, tension::thornton_prying};
/// let none = thornton_prying(newtons(10e3), millimetres(40.0), millimetres(40.0), 0.7, 0.0).unwrap();
/// assert_eq!(none.prying, newtons(0.0)); // single curvature
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThorntonPrying {
    /// Applied tension T per bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Distance b from the bolt to the stem.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub to_stem: Length,
    /// Distance a from the bolt to the prying force.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub to_edge: Length,
    /// delta: net over gross section at the bolt line.
    pub net_ratio: f64,
    /// alpha: 0 for single, 1 for double curvature.
    pub curvature: f64,
    /// Prying force Q per bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub prying: Force,
    /// Force in the bolt, T + Q.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt: Force,
    /// Moment Mc in the flange at the stem, per bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stem_moment: Torque,
}

/// Equilibrium of a tee flange: Mc - T b + Q a = 0 and Q a = delta alpha Mc, so that
/// Q = T (b / a) delta alpha / (1 + delta alpha).
///
/// Source: Thornton, Prying action, a general treatment, Engineering Journal AISC, second quarter
/// 1985; the equations of its general development were read.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths outside the [ranges](crate::tension#ranges), or unless 0 <= delta <= 1 and 0 <= alpha <= 1.
///
/// ```
/// use shankline::{prelude::*, tension::thornton_prying};
/// let tee = thornton_prying(newtons(10e3), millimetres(40.0), millimetres(40.0), 1.0, 1.0).unwrap();
/// assert_eq!(tee.bolt, newtons(15e3));
/// tee.derivation().check().unwrap();
/// ```
pub fn thornton_prying(
    load: Force,
    to_stem: Length,
    to_edge: Length,
    net_ratio: f64,
    curvature: f64,
) -> Result<ThorntonPrying, Error> {
    sane_load("tension per bolt", load)?;
    part_length("distance from the bolt to the stem", to_stem)?;
    part_length("distance from the bolt to the edge", to_edge)?;
    not_negative("net over gross section", net_ratio)?;
    at_most("net over gross section", net_ratio, 1.0)?;
    not_negative("alpha", curvature)?;
    at_most("alpha", curvature, 1.0)?;
    let shared = net_ratio * curvature;
    let prying = load * (to_stem / to_edge).value * (shared / (1.0 + shared));
    Ok(ThorntonPrying {
        load,
        to_stem,
        to_edge,
        net_ratio,
        curvature,
        prying,
        bolt: load + prying,
        stem_moment: from_base((load * to_stem).value / (1.0 + shared)),
    })
}

impl ThorntonPrying {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::thornton_prying};
    /// let tee = thornton_prying(newtons(1e4), millimetres(40.0), millimetres(30.0), 0.7, 0.5).unwrap();
    /// assert_eq!(tee.derivation().steps().len(), 3);
    /// ```
    pub fn derivation(&self) -> Derivation {
        const SOURCE: &Method = methods::THORNTON_ENGINEERING_JOURNAL_AISC_2ND_QUARTER_1985;
        let step = |what, symbol, formula, value: crate::error::Amount| {
            Step::new(what, symbol, formula, value)
                .with("T", self.load)
                .with("b", self.to_stem)
                .with("delta", self.net_ratio)
                .with("alpha", self.curvature)
                .source(SOURCE)
        };
        Derivation::new("Prying of a tee")
            .step(
                step(
                    "prying force",
                    "Q",
                    "T * b / a * delta * alpha / (1 + delta * alpha)",
                    self.prying.into(),
                )
                .with("a", self.to_edge),
            )
            .step(
                Step::new("force in the bolt", "Bc", "T + Q", self.bolt)
                    .with("T", self.load)
                    .with("Q", self.prying)
                    .source(SOURCE),
            )
            .step(step(
                "moment at the stem",
                "Mc",
                "T * b / (1 + delta * alpha)",
                self.stem_moment.into(),
            ))
    }
}
