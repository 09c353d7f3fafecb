//! The flange of a tee or an angle by the AISC Manual.

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
use crate::math;
use crate::source::Method;
use crate::tables::methods;
use crate::tension::{at_most, part_length, sane_stress, within};
use crate::units::{Force, Length, Ratio, Stress, from_base, newtons};

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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tensile_strength: Stress,
    /// Diameter db of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_diameter: Length,
    /// Width d' of the hole along the flange.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub hole: Length,
    /// Length p of flange that belongs to one bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tributary: Length,
    /// b: bolt line to the face of the stem.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub to_stem: Length,
    /// a: bolt line to the edge of the flange.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub to_edge: Length,
}

impl AiscFlange {
    /// The flange.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths outside the [ranges](crate::tension#ranges), a bolt as wide as 2 b,
    /// a hole narrower than the bolt or as long as p. For p beyond 2 b see [`cautions`](Self::cautions).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// let thick_bolt = AiscFlange::new(
    ///     AiscBasis::Asd, ksi(65.0), inches(0.75), inches(0.8125), inches(3.0), inches(0.25), inches(1.5),
    /// );
    /// assert!(thick_bolt.is_err());
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

    /// What goes with it: a flange length per bolt beyond 2 b, which the Manual advises against unless tests or a
    /// yield line analysis bear it out (recalled). More length makes the flange reckon stronger.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// let long = AiscFlange::new(
    ///     AiscBasis::Asd, ksi(65.0), inches(0.75), inches(0.8125), inches(6.0), inches(2.0), inches(1.5),
    /// ).unwrap();
    /// assert_eq!(long.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let beyond = self.tributary > 2.0 * self.to_stem * (1.0 + 1e-9);
        Cautions::default().with(beyond.then_some(Caution::AgainstAdvice {
            method: methods::AISC_MANUAL_PART_9_PRYING,
            advice: "a length of flange per bolt of at most 2 b",
        }))
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
    /// [`Error::OutOfRange`] for a load, bolt strength or thickness outside the [ranges](crate::tension#ranges).
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
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Strength B of the bolt on the same basis.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_strength: Force,
    /// Thickness t.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// tc: thickness that makes the bolt's whole strength usable.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub full_thickness: Length,
    /// alpha' = ((tc / t)^2 - 1) / (delta (1 + rho)); 0 to 1 where bolt and flange fail together.
    pub alpha_at_strength: f64,
    /// Strength per bolt with prying.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub available: Force,
    /// alpha under the load, 0 to 1.
    pub alpha: f64,
    /// Prying force Q per bolt under the load.
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
    /// Load over strength: 1 at capacity.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
}

impl AiscPrying {
    /// Those of the [flange](AiscFlange::cautions).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{AiscBasis, AiscFlange}};
    /// # let flange = AiscFlange::new(
    /// #     AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(3.0), inches(2.035), inches(1.3125),
    /// # ).unwrap();
    /// let check = flange.check(pounds_force(20e3), pounds_force(40.6e3), inches(0.8)).unwrap();
    /// assert!(check.cautions().iter().next().is_none());
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.flange.cautions()
    }

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
        const SOURCE: &Method = methods::AISC_MANUAL_PART_9_BY_WORKED_EXAMPLE;
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
                .source(methods::THE_SAME_EQUILIBRIUM),
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
                .source(methods::THE_SAME_EQUILIBRIUM),
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
