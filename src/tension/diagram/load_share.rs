//! What part of a load the bolt feels.

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::Error;
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
    /// Stiffness kb of the bolt.
    pub bolt: Stiffness,
    /// Stiffness km of the members.
    pub members: Stiffness,
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
        Ok(Self {
            bolt,
            members,
            introduction: 1.0,
            share: bolt / (bolt + members),
        })
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
            share: introduction * (self.bolt / (self.bolt + self.members)),
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
            (self.introduction < 1.0).then_some(Caution::MethodFromMemory {
                method: "the load introduction factor of VDI 2230 and NASA-STD-5020",
            }),
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
        let step = if self.introduction < 1.0 {
            Step::new(what, "Phi", "n * kb / (kb + km)", self.share)
                .with("n", self.introduction)
                .source("VDI 2230 Part 1, recalled")
        } else {
            Step::new(what, "C", "kb / (kb + km)", self.share)
                .source("Shigley, 9th ed., section 8-7")
        };
        Derivation::new("Load share").step(step.with("kb", self.bolt).with("km", self.members))
    }
}
