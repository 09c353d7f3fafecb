//! What the analysis gives.

use alloc::vec::Vec;

use super::joint::FastenedJoint;
use crate::caution::Cautions;
use crate::derivation::Derivation;
use crate::preload::PreloadRange;
use crate::strength::check::{Check, NotChecked, all_hold};
use crate::strength::interaction::Interaction;
use crate::units::Force;

/// Preloads, loads at which something happens, and margins of safety of one bolt.
///
/// ```
/// use shankline::nasa_std_5020::FastenedCheck;
/// fn word(check: &FastenedCheck) -> &'static str {
///     match check.holds() {
///         Some(true) => "holds",
///         Some(false) => "does not hold",
///         None => "undecided",
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct FastenedCheck {
    /// What it was worked from.
    pub joint: FastenedJoint,
    /// Preload after tightening, and `Pp-min` to `Pp-max` in service.
    pub preload: PreloadRange,
    /// Load `P'sep` at which a joint of the greatest preload parts; none where n phi is 1 and it never does.
    pub separation_load: Option<Force>,
    /// Load `P'tu` at which the bolt of a joint that is still closed breaks; none where n phi is nothing and the bolt feels no
    /// load. Below nothing where tightening breaks it.
    pub rupture_load: Option<Force>,
    /// The same at yield, `P'ty`.
    pub yield_load: Option<Force>,
    /// Tension that counts as the ultimate allowable: `Ptu-allow` where the joint parts first, else `P'tu`.
    pub ultimate: Force,
    /// The same at yield.
    pub yielding: Force,
    /// Shear, tension and bending together; none where only one of shear and tension acts. The tension of a joint that does not
    /// part first is the preload with the share of the load.
    pub combined: Option<Interaction>,
    /// Margins of safety.
    pub margins: Margins,
    /// A check for each of them.
    pub checks: Vec<Check>,
    /// What could not be decided, and why.
    pub missing: Vec<NotChecked>,
}

/// Margins of safety: allowable over factored load, less one; none where there is no such load. A joint holds with margins
/// that are not below nothing.
///
/// ```
/// use shankline::nasa_std_5020::Margins;
/// fn parts(margins: &Margins) -> bool {
///     margins.separation.is_some_and(|margin| margin < 0.0)
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Margins {
    /// Ultimate tension, Eq. 6 or 7; -1 or less where tightening takes all.
    pub ultimate_tension: Option<f64>,
    /// Yield in tension; -1 or less where tightening takes all.
    pub yielding: Option<f64>,
    /// Separation, Eq. 19.
    pub separation: Option<f64>,
    /// Ultimate shear, Eq. 14.
    pub shear: Option<f64>,
    /// Shear, tension and bending together, Eq. 20 or 22: what all three may grow by; of a joint that does not part before its
    /// bolt breaks the preload counts in the tension, and the margin tells no more than whether it holds.
    pub combined: Option<f64>,
    /// Slip of the joint.
    pub slip: Option<f64>,
}

impl FastenedCheck {
    /// Whether no margin is below nothing; `None` where none is but something is [missing](Self::missing).
    ///
    /// ```
    /// use shankline::nasa_std_5020::FastenedCheck;
    /// fn sure(check: &FastenedCheck) -> bool {
    ///     check.holds() == Some(true)
    /// }
    /// ```
    #[must_use]
    pub fn holds(&self) -> Option<bool> {
        all_hold(&self.checks, &self.missing)
    }

    /// The check of the highest utilisation.
    ///
    /// ```
    /// use shankline::nasa_std_5020::FastenedCheck;
    /// use shankline::strength::check::Check;
    /// fn worst(check: &FastenedCheck) -> Option<Check> {
    ///     check.governing()
    /// }
    /// ```
    #[must_use]
    pub fn governing(&self) -> Option<Check> {
        Check::governing(self.checks.iter().cloned())
    }

    /// Whether the joint parts before its bolt breaks.
    ///
    /// ```
    /// use shankline::nasa_std_5020::FastenedCheck;
    /// fn by_equation_6(check: &FastenedCheck) -> bool {
    ///     check.separates_before_rupture()
    /// }
    /// ```
    #[must_use]
    pub fn separates_before_rupture(&self) -> bool {
        super::steps::separates_first(self.separation_load, self.rupture_load)
    }

    /// What the user must be told: of the checks, and of the values they rest on.
    ///
    /// ```
    /// use shankline::nasa_std_5020::FastenedCheck;
    /// fn told(check: &FastenedCheck) -> bool {
    ///     check.cautions().iter().count() > 0
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let mut all = self.preload.cautions().and(self.joint.share.cautions());
        all.extend(&self.joint.factors.cautions());
        for check in &self.checks {
            all.extend(&check.cautions);
        }
        all
    }

    /// The working, in the symbols of the standard.
    ///
    /// ```
    /// use shankline::nasa_std_5020::FastenedCheck;
    /// fn shown(check: &FastenedCheck) -> Result<usize, shankline::Error> {
    ///     check.derivation().check()?;
    ///     Ok(check.derivation().steps().len())
    /// }
    /// ```
    pub fn derivation(&self) -> Derivation {
        super::working::derivation(self)
    }
}
