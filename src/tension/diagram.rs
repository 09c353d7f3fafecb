//! Load share of the bolt, the joint diagram, and the factors against proof and separation.

use super::{at_most, sane_load};
use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::math;
use crate::tables::methods;
use crate::units::{Force, Ratio, from_base, newtons};

mod load_share;

pub use load_share::LoadShare;

/// A joint with its preload: what bolt and members carry under any load.
///
#[cfg_attr(doc, doc = include_str!("../drawing/pictures/springs.html"))]
///
/// ```
/// use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
/// use shankline::units::newtons_per_millimetre;
/// # fn main() -> Result<(), shankline::Error> {
/// // Bolt twice as stiff as the members, preload 2250 lbf: at 6075 lbf the clamp load is 225 lbf.
/// let (kb, kc) = (newtons_per_millimetre(2e5), newtons_per_millimetre(1e5));
/// let joint = JointDiagram::new(LoadShare::new(kb, kc)?, pounds_force(2250.0))?;
/// let loaded = joint.under(pounds_force(6075.0))?;
/// assert!((loaded.bolt - pounds_force(6300.0)).value.abs() < 1e-6);
/// assert!((loaded.clamp - pounds_force(225.0)).value.abs() < 1e-6);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct JointDiagram {
    /// The load share.
    pub share: LoadShare,
    /// Preload Fi.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub preload: Force,
    /// Load P0 at which the members part: Fi / (1 - C). Infinite where the bolt feels all of it (C = 1, stated).
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub separation_load: Force,
}

/// Where on the diagram a loaded joint is.
///
/// ```
/// use shankline::tension::JointState;
/// assert_ne!(JointState::Clamped, JointState::Separated);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum JointState {
    /// Bolt and members share the load.
    Clamped,
    /// The members have parted: the bolt carries all.
    Separated,
    /// A compressive load has taken all tension from the bolt: the members carry all.
    BoltSlack,
}

/// Bolt and clamp load of a joint under a load.
///
/// ```
/// # use shankline::{prelude::*, tension::{JointDiagram, JointState, LoadShare}};
/// # use shankline::units::newtons_per_millimetre;
/// # fn main() -> Result<(), shankline::Error> {
/// let k = newtons_per_millimetre(1e5);
/// let joint = JointDiagram::new(LoadShare::new(k, k)?, newtons(10e3))?;
/// assert_eq!(joint.under(newtons(30e3))?.state, JointState::Separated);
/// assert_eq!(joint.under(newtons(30e3))?.bolt, newtons(30e3));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct LoadedJoint {
    /// The load P on this bolt, negative if it presses.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub load: Force,
    /// Force Fb in the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt: Force,
    /// Force Fm that presses the members together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub clamp: Force,
    /// Where on the diagram.
    pub state: JointState,
}

impl JointDiagram {
    /// The joint for a preload; zero for a loose bolt.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a preload that is negative or beyond any bolt.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// let k = newtons_per_millimetre(1e5);
    /// let joint = JointDiagram::new(LoadShare::new(k, k).unwrap(), newtons(10e3)).unwrap();
    /// assert_eq!(joint.separation_load, newtons(20e3));
    /// ```
    #[inline]
    pub fn new(share: LoadShare, preload: Force) -> Result<Self, Error> {
        sane_load("preload", preload)?;
        let clamp = 1.0 - share.share.value;
        Ok(Self {
            share,
            preload,
            separation_load: if clamp > 0.0 {
                preload / clamp
            } else {
                from_base(f64::INFINITY)
            },
        })
    }

    /// What bolt and members carry under a load: Fb = Fi + C P and Fm = Fi - (1 - C) P while
    /// clamped, Fb = P once separated. A load that presses is negative; the bolt gives up C of it until
    /// it is slack.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., Eqs. 8-24 and 8-25.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load beyond any bolt.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{JointDiagram, JointState, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// let k = newtons_per_millimetre(1e5);
    /// let joint = JointDiagram::new(LoadShare::new(k, k).unwrap(), newtons(10e3)).unwrap();
    /// let pressed = joint.under(newtons(-30e3)).unwrap();
    /// assert_eq!((pressed.state, pressed.clamp), (JointState::BoltSlack, newtons(30e3)));
    /// ```
    #[inline]
    pub fn under(&self, load: Force) -> Result<LoadedJoint, Error> {
        sane_load("load on the bolt", load.abs())?;
        let c = self.share.share.value;
        let zero: Force = from_base(0.0);
        let (bolt, clamp, state) = if load > self.separation_load {
            (load, zero, JointState::Separated)
        } else {
            let bolt = self.preload + c * load;
            if bolt < zero {
                (zero, -load, JointState::BoltSlack)
            } else {
                let clamp = self.preload - (1.0 - c) * load;
                (bolt, clamp.max(zero), JointState::Clamped)
            }
        };
        Ok(LoadedJoint {
            load,
            bolt,
            clamp,
            state,
        })
    }

    /// The load held against the bolt's proof load Sp At and against separation.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that does not pull, a preload that is not below the proof
    /// load, or a stated share of 0 or 1, where one of the factors is no number.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
    /// # use shankline::units::pounds_force_per_inch;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Shigley, Example 8-5: np = 1.22, nL = 3.44, n0 = 4.00 (printed with C rounded to 0.280).
    /// let c = LoadShare::new(pounds_force_per_inch(6.78e6), pounds_force_per_inch(17.4e6))?;
    /// let joint = JointDiagram::new(c, pounds_force(14_400.0))?;
    /// let check = joint.check(pounds_force(5000.0), pounds_force(0.226 * 85e3))?;
    /// assert!((check.yield_factor - 1.22).abs() < 0.005);
    /// assert!((check.load_factor - 3.44).abs() < 0.015);
    /// assert!((check.separation_factor - 4.0).abs() < 0.005);
    /// # Ok(())
    /// # }
    /// ```
    #[inline]
    pub fn check(&self, load: Force, proof_load: Force) -> Result<TensionCheck, Error> {
        // Below a micronewton the factors are no numbers anybody can use.
        super::within("load on the bolt", load, newtons(1e-6), newtons(1e15))?;
        super::within("proof load", proof_load, newtons(1e-6), newtons(1e15))?;
        if self.preload >= proof_load {
            return Err(out_of_range(
                "preload",
                self.preload,
                Allowed::AtMost(proof_load.into()),
            ));
        }
        let c = self.share.share.value;
        super::within("share of the bolt", c, 1e-12, 1.0 - 1e-12)?;
        let loaded = self.under(load)?;
        let load_factor = (proof_load - self.preload).value / (c * load.value);
        let separation_factor = self.separation_load.value / load.value;
        let overload_factor = if load_factor <= separation_factor {
            load_factor
        } else {
            proof_load.value / load.value
        };
        Ok(TensionCheck {
            joint: *self,
            loaded,
            proof_load,
            yield_factor: proof_load.value / loaded.bolt.value,
            load_factor,
            separation_factor,
            overload_factor,
        })
    }
}

/// Factors of a preloaded joint that is pulled.
///
/// np is rarely much above 1 in a well-preloaded joint, which does not make it weak: the bolt
/// feels only C of each further load.
///
/// ```
/// # use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
/// # use shankline::units::newtons_per_millimetre;
/// # fn main() -> Result<(), shankline::Error> {
/// let k = newtons_per_millimetre(1e5);
/// let joint = JointDiagram::new(LoadShare::new(k, k)?, newtons(70e3))?;
/// let check = joint.check(newtons(20e3), newtons(90e3))?;
/// assert_eq!((check.load_factor, check.separation_factor), (2.0, 7.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct TensionCheck {
    /// The joint.
    pub joint: JointDiagram,
    /// What bolt and members carry under the load.
    pub loaded: LoadedJoint,
    /// Proof load Sp At.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_load: Force,
    /// np = Sp At / Fb: of a closed joint Sp At / (C P + Fi), Shigley Eq. 8-28; of an open one Sp At / P.
    pub yield_factor: f64,
    /// nL = (Sp At - Fi) / (C P), Shigley Eq. 8-29: as if the joint stayed clamped.
    pub load_factor: f64,
    /// n0 = Fi / (P (1 - C)), Shigley Eq. 8-30.
    pub separation_factor: f64,
    /// How many times the load really brings the bolt to its proof load: nL, but Sp At / P if
    /// the joint separates before.
    pub overload_factor: f64,
}

impl TensionCheck {
    /// Force in the bolt over its proof load: 1 at capacity.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// let k = newtons_per_millimetre(1e5);
    /// let joint = JointDiagram::new(LoadShare::new(k, k).unwrap(), newtons(70e3)).unwrap();
    /// assert_eq!(joint.check(newtons(40e3), newtons(90e3)).unwrap().utilisation().value, 1.0);
    /// ```
    #[must_use]
    pub fn utilisation(&self) -> Ratio {
        self.loaded.bolt / self.proof_load
    }

    /// What the user of these factors must be told.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// let k = newtons_per_millimetre(1e5);
    /// let joint = JointDiagram::new(LoadShare::new(k, k).unwrap(), newtons(70e3)).unwrap();
    /// let check = joint.check(newtons(40e3), newtons(90e3)).unwrap();
    /// assert_eq!(check.cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.joint.share.cautions()
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{JointDiagram, LoadShare}};
    /// # use shankline::units::newtons_per_millimetre;
    /// let k = newtons_per_millimetre(1e5);
    /// let joint = JointDiagram::new(LoadShare::new(k, k).unwrap(), newtons(70e3)).unwrap();
    /// joint.check(newtons(40e3), newtons(90e3)).unwrap().derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (fi, c, p) = (self.joint.preload, self.joint.share.share, self.loaded.load);
        let with = |step: Step| step.with("Fi", fi).with("C", c);
        let step = |what, symbol, formula, value| {
            with(Step::new(what, symbol, formula, value)).with("P", p)
        };
        let mut derivation = Derivation::new("Joint under a pulling load")
            .and(self.joint.share.derivation())
            .step(with(Step::new(
                "separation load",
                "P0",
                "Fi / (1 - C)",
                self.joint.separation_load,
            )));
        let separated = self.loaded.state == JointState::Separated;
        derivation = derivation.step(if separated {
            Step::new("force in the bolt, separated", "Fb", "P", self.loaded.bolt).with("P", p)
        } else {
            step(
                "force in the bolt",
                "Fb",
                "Fi + C * P",
                crate::error::Amount::from(self.loaded.bolt),
            )
            .source(methods::SHIGLEY_9TH_ED_EQ_8_24)
        });
        if !separated {
            derivation = derivation.step(
                step(
                    "clamp load",
                    "Fm",
                    "max(Fi - (1 - C) * P, 0)",
                    self.loaded.clamp.into(),
                )
                .source(methods::SHIGLEY_9TH_ED_EQ_8_25),
            );
        }
        derivation
            .step(
                Step::new("yield factor", "np", "Fp / Fb", self.yield_factor)
                    .with("Fp", self.proof_load)
                    .with("Fb", self.loaded.bolt)
                    .source(methods::SHIGLEY_9TH_ED_EQ_8_28),
            )
            .step(
                step(
                    "load factor",
                    "nL",
                    "(Fp - Fi) / (C * P)",
                    self.load_factor.into(),
                )
                .with("Fp", self.proof_load)
                .source(methods::SHIGLEY_9TH_ED_EQ_8_29),
            )
            .step(
                step(
                    "separation factor",
                    "n0",
                    "Fi / (P * (1 - C))",
                    self.separation_factor.into(),
                )
                .source(methods::SHIGLEY_9TH_ED_EQ_8_30),
            )
    }
}

/// How many bolts carry a load with a wanted load factor.
///
/// ```
/// # use shankline::{prelude::*, tension::{LoadShare, bolts_needed}};
/// # use shankline::units::pounds_force_per_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// // Shigley, Example 8-4: 5.52, so 6 bolts.
/// let c = LoadShare::new(pounds_force_per_inch(5.21e6), pounds_force_per_inch(8.95e6))?;
/// let proof = pounds_force(0.226 * 85e3);
/// let needed = bolts_needed(c, 2.0, pounds_force(36e3), proof, 0.75 * proof)?;
/// assert!((needed.quotient - 5.52).abs() < 0.005);
/// assert_eq!(needed.bolts, 6);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BoltsNeeded {
    /// N before it is rounded up.
    pub quotient: f64,
    /// Whole bolts.
    pub bolts: usize,
}

/// Number of bolts N = C nL Ptotal / (Sp At - Fi).
///
/// Check separation with the load of each bolt afterwards: it may want more.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., Example 8-4, from Eq. 8-29.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a load factor that is not positive, a load that does not pull, a preload
/// that is not below the proof load, or more than a million bolts.
///
/// ```
/// # use shankline::{prelude::*, tension::{LoadShare, bolts_needed}};
/// # use shankline::units::newtons_per_millimetre;
/// let k = newtons_per_millimetre(1e5);
/// let c = LoadShare::new(k, k).unwrap();
/// assert!(bolts_needed(c, 2.0, newtons(1e4), newtons(5e4), newtons(6e4)).is_err());
/// ```
pub fn bolts_needed(
    share: LoadShare,
    load_factor: f64,
    total_load: Force,
    proof_load: Force,
    preload: Force,
) -> Result<BoltsNeeded, Error> {
    const MOST: f64 = 1e6;
    positive("load factor", load_factor)?;
    positive("total load", total_load)?;
    positive("proof load", proof_load)?;
    not_negative("preload", preload)?;
    if preload >= proof_load {
        return Err(out_of_range(
            "preload",
            preload,
            Allowed::AtMost(proof_load.into()),
        ));
    }
    let quotient =
        share.share.value * load_factor * total_load.value / (proof_load - preload).value;
    at_most("number of bolts", quotient, MOST)?;
    // A millionth of a bolt is rounding. Between 1 and a million the cast is exact.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let bolts = math::ceil(quotient - 1e-6).max(1.0) as usize;
    Ok(BoltsNeeded { quotient, bolts })
}

/// Margin of safety: allowable / (factor x load) - 1; it must not be negative.
///
/// Source: definition; usual factors in aerospace are 1.4 against ultimate, 1.0 to 1.25 against
/// yield, 1.0 to 1.2 against separation (recalled).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a force or factor that is not positive, or a margin that is not finite.
///
/// ```
/// use shankline::{prelude::*, tension::margin_of_safety};
/// assert!(margin_of_safety(newtons(14e3), 1.4, newtons(10e3)).unwrap().abs() < 1e-12);
/// ```
pub fn margin_of_safety(allowable: Force, factor: f64, load: Force) -> Result<f64, Error> {
    positive("allowable load", allowable)?;
    positive("factor of safety", factor)?;
    positive("load", load)?;
    let margin = allowable.value / (factor * load.value) - 1.0;
    if margin.is_finite() {
        Ok(margin)
    } else {
        Err(out_of_range("load", load, Allowed::Positive))
    }
}
