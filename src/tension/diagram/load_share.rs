//! What part of a load the bolt feels.

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::tables::methods;
use crate::tension::{bolt_stiffness::share, sane_stiffness, within};
use crate::units::{Ratio, Stiffness};

/// The bolt's share of a load that pulls on a clamped joint.
///
/// Phi = n kb / (kb + km). With the load introduction factor n = 1 this is Shigley's joint constant C
/// and the `Phi_K` of VDI 2230: the load acts under head and nut. That is safe for the bolt and not
/// for separation; a load that acts within the plates has n down to about 0.1.
///
/// ```
/// use shankline::tension::LoadShare;
/// use shankline::units::pounds_force_per_inch;
/// // Shigley, 9th ed., Example 8-4: 0.368.
/// let c = LoadShare::new(pounds_force_per_inch(5.21e6), pounds_force_per_inch(8.95e6)).unwrap();
/// assert!((c.share.value - 0.368).abs() < 0.0005);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct LoadShare {
    /// Stiffness kb of the bolt; none where only the constant C was stated.
    pub bolt: Option<Stiffness>,
    /// Stiffness km of the members; none where only the constant C was stated.
    pub members: Option<Stiffness>,
    /// The constant C: the share of a load under head and nut.
    pub constant: Ratio,
    /// Load introduction factor n.
    pub introduction: f64,
    /// The share Phi, or C.
    pub share: Ratio,
}

impl LoadShare {
    /// The share of a load under head and nut: C = kb / (kb + km).
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., section 8-7. Checked against its
    /// Examples 8-3 to 8-5.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stiffness outside the [ranges](crate::tension#ranges), or one that is negligible beside the
    /// other.
    ///
    /// ```
    /// use shankline::{tension::LoadShare, units::newtons_per_millimetre};
    /// let k = newtons_per_millimetre(1e6);
    /// assert_eq!(LoadShare::new(k, k).unwrap().share.value, 0.5);
    /// ```
    #[inline]
    pub fn new(bolt: Stiffness, members: Stiffness) -> Result<Self, Error> {
        sane_stiffness("stiffness of the bolt", bolt)?;
        sane_stiffness("stiffness of the members", members)?;
        // Below a billionth one side carries everything, to rounding.
        within("stiffness of the members", members, bolt * 1e-9, bolt * 1e9)?;
        let constant = bolt / (bolt + members);
        Ok(Self {
            bolt: Some(bolt),
            members: Some(members),
            constant,
            introduction: 1.0,
            share: constant,
        })
    }

    /// The share as stated: a stiffness constant C of a textbook, a table or a test. 0 stands for rigid members, 1 for
    /// a rigid bolt or a very soft gasket.
    ///
    /// Books of machine design call it K or C and give ranges of it by kind of gasket, which are common practice and
    /// no measurement: metal on metal 0 to 0.1, hard copper gasket 0.25 to 0.5, soft copper gasket 0.5 to 0.75, soft
    /// packing 0.75 to 1 (recalled).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 <= C <= 1.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::{JointDiagram, LoadShare};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A soft copper gasket, C = 0.5: 56.8 kN of preload and 13.25 kN of load give 63.4 kN in the bolt.
    /// let joint = JointDiagram::new(LoadShare::of_constant(0.5)?, newtons(56.8e3))?;
    /// assert!((joint.under(newtons(13_253.6))?.bolt - newtons(63_426.8)).abs() < newtons(0.05));
    /// assert!(LoadShare::of_constant(1.5).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_constant(constant: f64) -> Result<Self, Error> {
        if !(0.0..=1.0).contains(&constant) {
            let allowed = Allowed::FromTo(0.0.into(), 1.0.into());
            return Err(out_of_range("stiffness constant C", constant, allowed));
        }
        // A zero has no sign here.
        let constant = Ratio::from(constant.abs());
        Ok(Self {
            bolt: None,
            members: None,
            constant,
            introduction: 1.0,
            share: constant,
        })
    }

    /// The share for rigid members, C = 0: the bolt feels nothing of a load until the members part.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tension::{JointDiagram, JointState, LoadShare};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let joint = JointDiagram::new(LoadShare::rigid_members(), newtons(10e3))?;
    /// assert_eq!(joint.under(newtons(8e3))?.bolt, newtons(10e3));
    /// assert_eq!(joint.under(newtons(12e3))?.state, JointState::Separated);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn rigid_members() -> Self {
        Self {
            bolt: None,
            members: None,
            constant: Ratio::from(0.0),
            introduction: 1.0,
            share: Ratio::from(0.0),
        }
    }

    /// The share of a load introduced within the plates: Phi = n C, by VDI 2230 and NASA-STD-5020.
    ///
    /// That VDI 2230 has such a fraction, and that it is much smaller in real joints than the stiffnesses
    /// alone suggest, was read in the abstract of Centrically loaded bolt joints, Journal of Mechanical
    /// Design 115 (1993) 701; its use in the formula is recalled: the result carries a [`Caution`].
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless 0 < n <= 1.
    ///
    /// ```
    /// use shankline::{tension::LoadShare, units::newtons_per_millimetre};
    /// let k = newtons_per_millimetre(1e6);
    /// let phi = LoadShare::new(k, k).unwrap().introduced_at(0.5).unwrap();
    /// assert_eq!(phi.share.value, 0.25);
    /// assert_eq!(phi.cautions().iter().count(), 1);
    /// ```
    pub fn introduced_at(self, introduction: f64) -> Result<Self, Error> {
        share("load introduction factor", introduction)?;
        Ok(Self {
            introduction,
            share: introduction * self.constant,
            ..self
        })
    }

    /// What the user of this share must be told.
    ///
    /// ```
    /// # use shankline::{tension::LoadShare, units::newtons_per_millimetre};
    /// let k = newtons_per_millimetre(1e6);
    /// assert_eq!(LoadShare::new(k, k).unwrap().cautions().iter().count(), 0);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(
            (self.introduction < 1.0)
                .then_some(methods::LOAD_INTRODUCTION)
                .and_then(Caution::of_method),
        )
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{tension::LoadShare, units::newtons_per_millimetre};
    /// let k = newtons_per_millimetre(1e6);
    /// LoadShare::new(k, k).unwrap().derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let what = "share of the bolt";
        let derivation = Derivation::new("Load share");
        let derivation = match (self.bolt, self.members) {
            (Some(bolt), Some(members)) => derivation.step(
                Step::new(what, "C", "kb / (kb + km)", self.constant)
                    .with("kb", bolt)
                    .with("km", members)
                    .source(methods::SHIGLEY_9TH_ED_SECTION_8_7),
            ),
            _ => derivation
                .step(Step::given(what, "C", self.constant).source(methods::STATED_BY_THE_CALLER)),
        };
        if self.introduction < 1.0 {
            derivation.step(
                Step::new(what, "Phi", "n * C", self.share)
                    .with("n", self.introduction)
                    .with("C", self.constant)
                    .source(methods::VDI2230),
            )
        } else {
            derivation
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tension::{FatigueStress, JointDiagram, JointState, bolts_needed};
    use crate::units::{newtons, newtons_per_millimetre, square_millimetres};
    use proptest::prelude::*;

    #[test]
    fn a_stated_constant_is_that_of_its_springs() {
        let springs = LoadShare::new(newtons_per_millimetre(1e5), newtons_per_millimetre(3e5));
        let (springs, stated) = (springs.unwrap(), LoadShare::of_constant(0.25).unwrap());
        assert_eq!(
            (springs.share, springs.constant),
            (stated.share, stated.constant)
        );
        let half = stated.introduced_at(0.5).unwrap();
        assert_eq!(half.share, springs.introduced_at(0.5).unwrap().share);
        assert_eq!(half.introduced_at(0.5).unwrap().share, half.share);
        half.derivation().check().unwrap();
    }

    /// A soft gasket never lets the members part; rigid members give the bolt nothing until they do.
    #[test]
    fn both_ends_of_the_range() {
        let soft = LoadShare::of_constant(1.0).unwrap();
        let joint = JointDiagram::new(soft, newtons(10e3)).unwrap();
        let loaded = joint.under(newtons(1e6)).unwrap();
        assert_eq!(loaded.state, JointState::Clamped);
        assert_eq!(
            (loaded.bolt, loaded.clamp),
            (newtons(1.01e6), newtons(10e3))
        );
        assert!(joint.check(newtons(1e3), newtons(5e4)).is_err());
        let rigid = JointDiagram::new(LoadShare::rigid_members(), newtons(10e3)).unwrap();
        assert_eq!(rigid.separation_load, newtons(10e3));
        assert!(rigid.check(newtons(1e3), newtons(5e4)).is_err());
        assert_eq!(
            LoadShare::rigid_members(),
            LoadShare::of_constant(0.0).unwrap()
        );
        let needed = bolts_needed(
            LoadShare::rigid_members(),
            2.0,
            newtons(1e5),
            newtons(5e4),
            newtons(1e4),
        );
        assert_eq!(needed.unwrap().bolts, 1);
    }

    proptest! {
        #[test]
        fn no_constant_breaks_the_diagram(c in any::<f64>(), fi in any::<f64>(), p in any::<f64>()) {
            let shares = [LoadShare::of_constant(c), LoadShare::of_constant(1.0), LoadShare::of_constant(0.0)];
            for share in shares.into_iter().flatten() {
                prop_assert!(share.derivation().check().is_ok());
                let Ok(joint) = JointDiagram::new(share, newtons(fi)) else { continue };
                if let Ok(loaded) = joint.under(newtons(p)) {
                    prop_assert!(loaded.bolt.is_finite() && loaded.clamp.is_finite());
                }
                if let Ok(check) = joint.check(newtons(p), newtons(2.0 * fi)) {
                    prop_assert!(check.load_factor.is_finite() && check.separation_factor.is_finite());
                }
                let area = square_millimetres(100.0);
                if let Ok(stress) = FatigueStress::of_joint(&joint, area, newtons(0.0), newtons(p)) {
                    prop_assert!(stress.amplitude.is_finite());
                }
            }
        }
    }
}
