//! Prying: how a flange that bends loads its bolts beyond their share.

use super::{at_most, part_length, sane_load, sane_stress, within};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::math;
use crate::units::{Force, Length, Ratio, Stress, Torque, from_base, newton_metres, newtons};

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
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub load: Force,
    /// Distance b from the bolt to the stem.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub to_stem: Length,
    /// Distance a from the bolt to the prying force.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub to_edge: Length,
    /// delta: net over gross section at the bolt line.
    pub net_ratio: f64,
    /// alpha: 0 for single, 1 for double curvature.
    pub curvature: f64,
    /// Prying force Q per bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub prying: Force,
    /// Force in the bolt, T + Q.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt: Force,
    /// Moment Mc in the flange at the stem, per bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
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
/// [`Error::OutOfRange`] for lengths that are none of a part, or unless 0 <= delta <= 1 and 0 <= alpha <= 1.
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
        const SOURCE: &str = "Thornton, Engineering Journal AISC, 2nd quarter 1985";
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

/// Which strengths a check of the AISC manual compares.
///
/// ```
/// use shankline::tension::AiscBasis;
/// assert_eq!(AiscBasis::Lrfd.resistance(), 0.9);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum AiscBasis {
    /// Factored loads, phi = 0.90; bolt strength phi rn.
    Lrfd,
    /// Service loads, 1 / Omega = 1 / 1.67; bolt strength rn / Omega.
    Asd,
}

impl AiscBasis {
    /// What the flange strength is multiplied by.
    ///
    /// ```
    /// # use shankline::tension::AiscBasis;
    /// assert!((AiscBasis::Asd.resistance() - 0.599).abs() < 0.001);
    /// ```
    #[must_use]
    pub const fn resistance(self) -> f64 {
        match self {
            Self::Lrfd => 0.90,
            Self::Asd => 1.0 / 1.67,
        }
    }
}

/// The flange of a tee or an angle by the AISC Manual, Part 9, 13th edition on (flange strength from
/// Fu).
///
/// b' = b - db / 2, a' = min(a, 1.25 b) + db / 2, rho = b' / a', delta = 1 - d' / p.
///
/// Source: the worked example of Tamboli (ed.), Handbook of Structural Steel Connection Design and
/// Details, 2nd ed. (2009), p. 107, and of Brockenbrough and Merritt, Structural Steel Designer's
/// Handbook, 4th ed., p. 3.62, which follow the manual; both were read, the manual was not.
/// The tests reproduce the example. The required thickness follows from the same equilibrium.
///
/// ```
/// use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
/// # fn main() -> Result<(), shankline::Error> {
/// // The example: 7/8 in bolts of 40.6 kip, flange 0.715 in thick: 23.7 kip per bolt.
/// let flange = AiscFlange::new(
///     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
/// )?;
/// let check = flange.check(pounds_force(6310.0), pounds_force(40.6e3), inches(0.715))?;
/// assert!((check.available - pounds_force(23.7e3)).abs() < pounds_force(50.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AiscFlange {
    /// LRFD or ASD.
    pub basis: AiscBasis,
    /// Tensile strength Fu of the flange.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tensile_strength: Stress,
    /// Diameter db of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_diameter: Length,
    /// Width d' of the hole along the flange.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub hole: Length,
    /// Length p of flange that belongs to one bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub tributary: Length,
    /// b: bolt line to the face of the stem.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub to_stem: Length,
    /// a: bolt line to the edge of the flange.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub to_edge: Length,
}

impl AiscFlange {
    /// The flange.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are none of a part, a bolt as wide as 2 b, a hole narrower
    /// than the bolt or as long as p, or p beyond 2 b, the most the manual lets a bolt have
    /// without a yield line analysis (recalled).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// let too_long = AiscFlange::new(
    ///     AiscBasis::Asd, ksi(65.0), inches(0.75), inches(0.8125), inches(6.0), inches(2.0), inches(1.5),
    /// );
    /// assert!(too_long.is_err());
    /// ```
    pub fn new(
        basis: AiscBasis,
        tensile_strength: Stress,
        bolt_diameter: Length,
        hole: Length,
        tributary: Length,
        to_stem: Length,
        to_edge: Length,
    ) -> Result<Self, Error> {
        sane_stress("tensile strength of the flange", tensile_strength)?;
        part_length("bolt diameter", bolt_diameter)?;
        part_length("distance from the bolt to the stem", to_stem)?;
        part_length("distance from the bolt to the edge", to_edge)?;
        at_most("bolt diameter", bolt_diameter, 1.999 * to_stem)?;
        part_length("flange length per bolt", tributary)?;
        at_most("flange length per bolt", tributary, 2.0 * to_stem)?;
        within("width of the hole", hole, bolt_diameter, 0.999 * tributary)?;
        Ok(Self {
            basis,
            tensile_strength,
            bolt_diameter,
            hole,
            tributary,
            to_stem,
            to_edge,
        })
    }

    /// b' = b - db / 2.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// assert!((flange.lever_to_stem() - inches(1.598)).abs() < inches(0.0006));
    /// ```
    #[must_use]
    pub fn lever_to_stem(&self) -> Length {
        self.to_stem - 0.5 * self.bolt_diameter
    }

    /// a' = min(a, 1.25 b) + db / 2.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// assert!((flange.lever_to_edge() - inches(1.75)).abs() < inches(0.0001));
    /// ```
    #[must_use]
    pub fn lever_to_edge(&self) -> Length {
        self.to_edge.min(1.25 * self.to_stem) + 0.5 * self.bolt_diameter
    }

    /// rho = b' / a'.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// assert!((flange.rho() - 0.91).abs() < 0.005);
    /// ```
    #[must_use]
    pub fn rho(&self) -> f64 {
        (self.lever_to_stem() / self.lever_to_edge()).value
    }

    /// delta = 1 - d' / p.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// assert!((flange.delta() - 0.6875).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn delta(&self) -> f64 {
        1.0 - (self.hole / self.tributary).value
    }

    /// Thickness sqrt(4 F b' / (phi p Fu)) at which a force F per bolt bends the flange without any prying.
    fn thickness_for(&self, force: Force) -> Length {
        let strength = self.basis.resistance() * self.tributary.value * self.tensile_strength.value;
        from_base(math::sqrt(
            4.0 * force.value * self.lever_to_stem().value / strength,
        ))
    }

    /// Thickness from which there is no prying under a load T per bolt: sqrt(4 T b' / (phi p Fu)).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that does not pull.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// // The example's tc: the thickness without prying at the strength of the bolt.
    /// let thickness = flange.no_prying_thickness(pounds_force(40.6e3)).unwrap();
    /// assert!((thickness - inches(1.215)).abs() < inches(0.001));
    /// ```
    pub fn no_prying_thickness(&self, load: Force) -> Result<Length, Error> {
        within("tension per bolt", load, newtons(1e-6), newtons(1e15))?;
        Ok(self.thickness_for(load))
    }

    /// Least thickness for a load T per bolt with prying up to the bolt strength B:
    /// sqrt(4 T b' / (phi p Fu (1 + delta alpha'))), beta = (B / T - 1) / rho, alpha' = 1 if beta >= 1,
    /// otherwise min(1, beta / (delta (1 - beta))).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that does not pull or exceeds the bolt strength.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// let bolt = pounds_force(40.6e3);
    /// let least = flange.required_thickness(pounds_force(25e3), bolt).unwrap();
    /// let check = flange.check(pounds_force(25e3), bolt, least).unwrap();
    /// assert!((check.available - pounds_force(25e3)).abs() < pounds_force(0.01));
    /// ```
    pub fn required_thickness(&self, load: Force, bolt_strength: Force) -> Result<Length, Error> {
        within("bolt strength", bolt_strength, newtons(1e-6), newtons(1e15))?;
        within("tension per bolt", load, newtons(1e-6), bolt_strength)?;
        let beta = ((bolt_strength / load).value - 1.0) / self.rho();
        let delta = self.delta();
        let alpha = if beta >= 1.0 {
            1.0
        } else {
            (beta / (delta * (1.0 - beta))).min(1.0)
        };
        let whole = self.thickness_for(load);
        Ok(whole / math::sqrt(1.0 + delta * alpha))
    }

    /// What flange and bolt carry together, and the prying force under a load.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load, bolt strength or thickness that is none.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// let thick = flange.check(pounds_force(20e3), pounds_force(40.6e3), inches(1.3)).unwrap();
    /// assert_eq!((thick.prying, thick.available), (newtons(0.0), pounds_force(40.6e3)));
    /// ```
    pub fn check(
        &self,
        load: Force,
        bolt_strength: Force,
        thickness: Length,
    ) -> Result<AiscPrying, Error> {
        within("bolt strength", bolt_strength, newtons(1e-6), newtons(1e15))?;
        within("tension per bolt", load, newtons(1e-6), newtons(1e15))?;
        part_length("thickness of the flange", thickness)?;
        let (rho, delta) = (self.rho(), self.delta());
        let full_thickness = self.thickness_for(bolt_strength);
        let ratio = (full_thickness / thickness).value;
        let square = ratio * ratio;
        let alpha_at_strength = (square - 1.0) / (delta * (1.0 + rho));
        let available = if alpha_at_strength <= 0.0 {
            bolt_strength
        } else {
            bolt_strength * ((1.0 + delta * alpha_at_strength.min(1.0)) / square)
        };
        let alpha = ((square * (load / bolt_strength).value - 1.0) / delta).clamp(0.0, 1.0);
        let prying = bolt_strength * (delta * alpha * rho / square);
        let utilisation = load / available;
        if !(square.is_finite() && utilisation.value.is_finite() && square > 1e-200) {
            return Err(out_of_range(
                "thickness of the flange",
                thickness,
                Allowed::Positive,
            ));
        }
        Ok(AiscPrying {
            flange: *self,
            load,
            bolt_strength,
            thickness,
            full_thickness,
            alpha_at_strength,
            available,
            alpha,
            prying,
            bolt: load + prying,
            utilisation,
        })
    }
}

/// Prying of a flange by the AISC Manual.
///
/// ```
/// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
/// # let flange = AiscFlange::new(
/// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
/// # ).unwrap();
/// let check = flange.check(pounds_force(20e3), pounds_force(40.6e3), inches(0.8)).unwrap();
/// assert!(check.prying.value > 0.0);
/// check.derivation().check().unwrap();
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AiscPrying {
    /// The flange.
    pub flange: AiscFlange,
    /// Load T per bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub load: Force,
    /// Strength B of the bolt on the same basis.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt_strength: Force,
    /// Thickness t.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thickness: Length,
    /// tc: thickness that makes the bolt's whole strength usable.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub full_thickness: Length,
    /// alpha' = ((tc / t)^2 - 1) / (delta (1 + rho)); 0 to 1 where bolt and flange fail together.
    pub alpha_at_strength: f64,
    /// Strength per bolt with prying.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub available: Force,
    /// alpha under the load, 0 to 1.
    pub alpha: f64,
    /// Prying force Q per bolt under the load.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub prying: Force,
    /// Force in the bolt, T + Q.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolt: Force,
    /// Load over strength: 1 at capacity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
}

impl AiscPrying {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// let check = flange.check(pounds_force(20e3), pounds_force(40.6e3), inches(0.8)).unwrap();
    /// assert_eq!(check.derivation().steps().len(), 9);
    /// ```
    pub fn derivation(&self) -> Derivation {
        const SOURCE: &str = "AISC Manual Part 9, by worked example";
        let flange = &self.flange;
        let (rho, delta) = (flange.rho(), flange.delta());
        let (b, a) = (flange.lever_to_stem(), flange.lever_to_edge());
        Derivation::new("Prying, AISC Manual")
            .step(
                Step::new("lever to the stem", "b'", "b - db / 2", b)
                    .with("b", flange.to_stem)
                    .with("db", flange.bolt_diameter)
                    .source(SOURCE),
            )
            .step(
                Step::new("lever to the edge", "a'", "min(a, 1.25 * b) + db / 2", a)
                    .with("a", flange.to_edge)
                    .with("b", flange.to_stem)
                    .with("db", flange.bolt_diameter)
                    .source(SOURCE),
            )
            .step(
                Step::new("ratio of the levers", "rho", "b' / a'", rho)
                    .with("b'", b)
                    .with("a'", a),
            )
            .step(
                Step::new("net over gross section", "delta", "1 - d' / p", delta)
                    .with("d'", flange.hole)
                    .with("p", flange.tributary)
                    .source(SOURCE),
            )
            .step(
                Step::new(
                    "thickness for the whole bolt strength",
                    "tc",
                    "sqrt(4 * B * b' / (phi * p * Fu))",
                    self.full_thickness,
                )
                .with("B", self.bolt_strength)
                .with("b'", b)
                .with("phi", flange.basis.resistance())
                .with("p", flange.tributary)
                .with("Fu", flange.tensile_strength)
                .source(SOURCE),
            )
            .step(
                Step::new(
                    "alpha at the strength",
                    "alpha'",
                    "((tc / t)^2 - 1) / (delta * (1 + rho))",
                    self.alpha_at_strength,
                )
                .with("tc", self.full_thickness)
                .with("t", self.thickness)
                .with("delta", delta)
                .with("rho", rho)
                .source(SOURCE),
            )
            .step(self.available_step().source(SOURCE))
            .step(
                Step::new(
                    "alpha under the load",
                    "alpha",
                    "min(max(((tc / t)^2 * T / B - 1) / delta, 0), 1)",
                    self.alpha,
                )
                .with("tc", self.full_thickness)
                .with("t", self.thickness)
                .with("T", self.load)
                .with("B", self.bolt_strength)
                .with("delta", delta)
                .source("the same equilibrium"),
            )
            .step(
                Step::new(
                    "prying force",
                    "Q",
                    "B * delta * alpha * rho * (t / tc)^2",
                    self.prying,
                )
                .with("B", self.bolt_strength)
                .with("delta", delta)
                .with("alpha", self.alpha)
                .with("rho", rho)
                .with("t", self.thickness)
                .with("tc", self.full_thickness)
                .source("the same equilibrium"),
            )
    }

    fn available_step(&self) -> Step {
        if self.alpha_at_strength <= 0.0 {
            Step::new("strength per bolt, no prying", "Ta", "B", self.available)
                .with("B", self.bolt_strength)
        } else {
            Step::new(
                "strength per bolt",
                "Ta",
                "B * (t / tc)^2 * (1 + delta * min(alpha', 1))",
                self.available,
            )
            .with("B", self.bolt_strength)
            .with("t", self.thickness)
            .with("tc", self.full_thickness)
            .with("delta", self.flange.delta())
            .with("alpha'", self.alpha_at_strength)
        }
    }
}

/// Failure modes of a T-stub.
///
/// ```
/// use shankline::tension::EnMode;
/// assert_eq!(EnMode::FlangeYields.to_string(), "mode 1, the flange yields");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum EnMode {
    /// Mode 1.
    FlangeYields,
    /// Mode 2.
    BoltsFailAndFlangeYields,
    /// Mode 3.
    BoltsFail,
}

impl core::fmt::Display for EnMode {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::FlangeYields => "mode 1, the flange yields",
            Self::BoltsFailAndFlangeYields => "mode 2, the bolts fail as the flange yields",
            Self::BoltsFail => "mode 3, the bolts fail",
        })
    }
}

/// T-stub by EN 1993-1-8, 6.2.4 and Table 6.2, where prying forces may develop.
///
/// Source: EN 1993-1-8:2005, 6.2.4, by Steel Buildings in Europe, Part 5: Joint Design, 2.3.1, where
/// modes 1 (in the form with the washer), 2 and 3, the plastic moment and n <= 1.25 m were read. Mode 1
/// without washer, 4 Mpl / m, is that form at ew = 0.
///
/// ```
/// use shankline::{prelude::*, tension::{EnMode, EnTStub}};
/// # fn main() -> Result<(), shankline::Error> {
/// // Invented: plate 15 mm of 275 MPa, effective length 150 mm, two M20 8.8 of 141 kN.
/// let stub = EnTStub::new(millimetres(35.0), millimetres(30.0), newtons(282e3))?
///     .plate(millimetres(150.0), millimetres(150.0), millimetres(15.0), megapascals(275.0), 1.0)?;
/// let resistance = stub.resistance()?;
/// assert_eq!(resistance.mode, EnMode::BoltsFailAndFlangeYields);
/// resistance.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnTStub {
    /// m: bolt line to the weld or root of the web, less 0.8 of it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub m: Length,
    /// n: bolt line to the edge, at most 1.25 m.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub n: Length,
    /// Sum of the tension resistances Ft,Rd of its bolts.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub bolts: Force,
    /// Plastic moment of mode 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub moment_1: Torque,
    /// Plastic moment of mode 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub moment_2: Torque,
    /// Effective length of mode 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub length_1: Length,
    /// Effective length of mode 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub length_2: Length,
    /// Thickness of the plate.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub thickness: Length,
    /// Yield strength of the plate.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub yield_strength: Stress,
    /// gamma M0.
    pub gamma_m0: f64,
    /// ew = dw / 4, zero where the washer is left out.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub washer: Length,
}

impl EnTStub {
    /// Geometry and bolts; n is cut to 1.25 m as the standard does. The plate is still to be given.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are none of a part or bolts that carry nothing.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(70.0), newtons(200e3)).unwrap();
    /// assert_eq!(stub.n, millimetres(50.0));
    /// ```
    pub fn new(m: Length, edge: Length, bolts: Force) -> Result<Self, Error> {
        part_length("m of the T-stub", m)?;
        part_length("edge distance of the T-stub", edge)?;
        within(
            "tension resistance of the bolts",
            bolts,
            newtons(1e-6),
            newtons(1e15),
        )?;
        Ok(Self {
            m,
            n: edge.min(1.25 * m),
            bolts,
            moment_1: newton_metres(0.0),
            moment_2: newton_metres(0.0),
            length_1: from_base(0.0),
            length_2: from_base(0.0),
            thickness: from_base(0.0),
            yield_strength: from_base(0.0),
            gamma_m0: 1.0,
            washer: from_base(0.0),
        })
    }

    /// The plate: effective lengths of modes 1 and 2, thickness, yield strength, gamma M0; Mpl = 0.25 leff t^2
    /// fy / gamma M0.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length or strength that is none, or a gamma M0 outside 1 to 2.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
    /// let leff = millimetres(160.0);
    /// let stub = stub.plate(leff, leff, millimetres(10.0), megapascals(250.0), 1.0).unwrap();
    /// assert!((stub.moment_1 - newton_metres(1000.0)).value.abs() < 1e-9);
    /// ```
    pub fn plate(
        self,
        length_1: Length,
        length_2: Length,
        thickness: Length,
        yield_strength: Stress,
        gamma_m0: f64,
    ) -> Result<Self, Error> {
        part_length("effective length of mode 1", length_1)?;
        part_length("effective length of mode 2", length_2)?;
        part_length("thickness of the plate", thickness)?;
        sane_stress("yield strength of the plate", yield_strength)?;
        within("gamma M0", gamma_m0, 1.0, 2.0)?;
        let moment = |length: Length| {
            from_base(
                0.25 * length.value * thickness.value * thickness.value * yield_strength.value
                    / gamma_m0,
            )
        };
        Ok(Self {
            moment_1: moment(length_1),
            moment_2: moment(length_2),
            length_1,
            length_2,
            thickness,
            yield_strength,
            gamma_m0,
            ..self
        })
    }

    /// Mode 1 with the force spread under a washer of this diameter, ew = dw / 4.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is none of a part, or so wide that the form has no
    /// sense: ew must stay below m and n.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
    /// assert_eq!(stub.with_washer(millimetres(37.0)).unwrap().washer, millimetres(9.25));
    /// ```
    pub fn with_washer(self, diameter: Length) -> Result<Self, Error> {
        part_length("washer diameter", diameter)?;
        at_most("washer diameter", diameter, 3.999 * self.m.min(self.n))?;
        Ok(Self {
            washer: 0.25 * diameter,
            ..self
        })
    }

    /// The least of the three modes.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if no plate has been given.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
    /// assert!(stub.resistance().is_err());
    /// ```
    pub fn resistance(&self) -> Result<EnTStubResistance, Error> {
        // A nanonewton metre: less is no plate.
        super::positive("plastic moment of the flange", self.moment_1)?;
        super::positive("plastic moment of the flange", self.moment_2)?;
        let (m, n, e) = (self.m.value, self.n.value, self.washer.value);
        let mode_1 = (8.0 * n - 2.0 * e) * self.moment_1.value / (2.0 * m * n - e * (m + n));
        let mode_2 = (2.0 * self.moment_2.value + n * self.bolts.value) / (m + n);
        let mode_3 = self.bolts.value;
        let (mode, least) = if mode_1 <= mode_2 && mode_1 <= mode_3 {
            (EnMode::FlangeYields, mode_1)
        } else if mode_2 <= mode_3 {
            (EnMode::BoltsFailAndFlangeYields, mode_2)
        } else {
            (EnMode::BoltsFail, mode_3)
        };
        Ok(EnTStubResistance {
            stub: *self,
            mode_1: from_base(mode_1),
            mode_2: from_base(mode_2),
            mode_3: self.bolts,
            mode,
            resistance: from_base(least),
        })
    }
}

/// Resistance of a T-stub.
///
/// ```
/// # use shankline::{prelude::*, tension::EnTStub};
/// # fn main() -> Result<(), shankline::Error> {
/// let leff = millimetres(160.0);
/// let thin = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(300e3))?
///     .plate(leff, leff, millimetres(10.0), megapascals(250.0), 1.0)?
///     .resistance()?;
/// assert!((thin.resistance - newtons(100e3)).abs() < newtons(1e-6)); // 4 Mpl / m
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnTStubResistance {
    /// The T-stub.
    pub stub: EnTStub,
    /// FT,1,Rd.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub mode_1: Force,
    /// FT,2,Rd.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub mode_2: Force,
    /// FT,3,Rd.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub mode_3: Force,
    /// The mode that governs.
    pub mode: EnMode,
    /// Design resistance FT,Rd, the least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub resistance: Force,
}

impl EnTStubResistance {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let leff = millimetres(160.0);
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(300e3))?
    ///     .plate(leff, leff, millimetres(10.0), megapascals(250.0), 1.0)?
    ///     .with_washer(millimetres(37.0))?;
    /// stub.resistance()?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        const SOURCE: &str = "EN 1993-1-8:2005, Table 6.2";
        let stub = &self.stub;
        let mode_1 = if stub.washer.value > 0.0 {
            Step::new(
                "mode 1",
                "FT1",
                "(8 * n - 2 * ew) * Mpl1 / (2 * m * n - ew * (m + n))",
                self.mode_1,
            )
            .with("n", stub.n)
            .with("ew", stub.washer)
        } else {
            Step::new("mode 1", "FT1", "4 * Mpl1 / m", self.mode_1)
        };
        let moment = |symbol, length_name, length, value| {
            Step::new(
                "plastic moment",
                symbol,
                alloc::format!("0.25 * {length_name} * t^2 * fy / gM0"),
                value,
            )
            .with(length_name, length)
            .with("t", stub.thickness)
            .with("fy", stub.yield_strength)
            .with("gM0", stub.gamma_m0)
            .source(SOURCE)
        };
        Derivation::new("T-stub in tension")
            .step(moment("Mpl1", "leff1", stub.length_1, stub.moment_1))
            .step(moment("Mpl2", "leff2", stub.length_2, stub.moment_2))
            .step(
                mode_1
                    .with("Mpl1", stub.moment_1)
                    .with("m", stub.m)
                    .source(SOURCE),
            )
            .step(
                Step::new(
                    "mode 2",
                    "FT2",
                    "(2 * Mpl2 + n * sFt) / (m + n)",
                    self.mode_2,
                )
                .with("Mpl2", stub.moment_2)
                .with("n", stub.n)
                .with("sFt", stub.bolts)
                .with("m", stub.m)
                .source(SOURCE),
            )
            .step(
                Step::new(
                    "resistance",
                    "FT",
                    "min(FT1, min(FT2, sFt))",
                    self.resistance,
                )
                .with("FT1", self.mode_1)
                .with("FT2", self.mode_2)
                .with("sFt", self.mode_3)
                .source(SOURCE),
            )
    }
}
