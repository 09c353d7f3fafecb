//! What the procedure gives.

use alloc::vec::Vec;

use super::joint::{ConcentricJoint, PressedFace};
use crate::caution::Cautions;
use crate::derivation::Derivation;
use crate::preload::{AssemblyPreload, PreloadRange, ServiceStress, TighteningStress};
use crate::strength::check::{Check, NotChecked, all_hold};
use crate::tension::{LoadShare, VdiFatigue};
use crate::units::{Area, Force, Length, Stress, Torque};

/// The steps R1 to R13 of one joint, with a check for each safety.
///
/// ```
/// use shankline::vdi_2230::ConcentricCheck;
/// fn word(check: &ConcentricCheck) -> &'static str {
///     match check.holds() {
///         Some(true) => "holds",
///         Some(false) => "does not hold",
///         None => "undecided",
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct ConcentricCheck {
    /// What it was worked from.
    pub joint: ConcentricJoint,
    /// R1: tightening factor `alpha_A`.
    pub tightening_factor: f64,
    /// R2: required clamp force `F_Kerf`, the greater of what friction and what sealing needs.
    pub required_clamp: Force,
    /// R3: load factor Phi.
    pub share: LoadShare,
    /// R3: load `F_SAmax = Phi F_Amax` that the bolt takes on top of its preload, while the joint stays closed.
    pub additional: Force,
    /// R3: load `F_PAmax = (1 - Phi) F_Amax` that is taken off the plates.
    pub relief: Force,
    /// R4: embedding `f_Z`.
    pub embedding: Length,
    /// R4: loss `F_Z` by embedding.
    pub embedding_loss: Force,
    /// R5 and R6: the assembly preload that is required.
    pub required: RequiredPreload,
    /// R7: greatest assembly preload `F_Mzul`, at the least friction of the thread (its `preload.nominal`).
    pub permitted: AssemblyPreload,
    /// Greatest assembly preload `F_M` of the tightening.
    pub assembly: Force,
    /// Preload after tightening, and `F_Vmin` to `F_Vmax` in service.
    pub preload: PreloadRange,
    /// R7: stresses at `F_M`, `sigma_red,M` their `equivalent.nominal`, at the least friction of the thread.
    pub assembly_stress: TighteningStress,
    /// R8: greatest force `F_Smax` of the bolt.
    pub bolt_force: Force,
    /// R8: stresses under it with half the torsion, over W = pi d0^3 / 16; `sigma_red,B` their `equivalent`.
    pub working_stress: ServiceStress,
    /// R9; none where the load does not repeat, or fatigue is [missing](Self::missing).
    pub fatigue: Option<VdiFatigue>,
    /// R10, face by face.
    pub pressures: Vec<FacePressure>,
    /// R12: least clamp force `F_KRmin` under the greatest load; nothing where the plates part.
    pub residual_clamp: Force,
    /// R12; none without a load across the bolt.
    pub slip: Option<Slipping>,
    /// R13: assembly torque `M_A` that gives `F_M` at the least friction of thread and face.
    pub torque: Torque,
    /// The safeties of the guideline.
    pub safeties: Safeties,
    /// A check for each of them that could be worked, in the order of the guideline.
    pub checks: Vec<Check>,
    /// What could not be decided, and why.
    pub missing: Vec<NotChecked>,
}

/// Assembly preload that a joint requires.
///
/// ```
/// use shankline::vdi_2230::RequiredPreload;
/// use shankline::units::Ratio;
/// fn scatter(required: &RequiredPreload) -> Ratio {
///     required.greatest / required.least
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct RequiredPreload {
    /// R5: `F_Mmin = F_Kerf + (1 - Phi) F_Amax + F_Z + dF_Vth`.
    pub least: Force,
    /// R6: `F_Mmax = alpha_A F_Mmin`.
    pub greatest: Force,
}

/// R10 at one face.
///
/// ```
/// use shankline::vdi_2230::FacePressure;
/// fn grows(face: &FacePressure) -> bool {
///     face.working >= face.assembly
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct FacePressure {
    /// The face.
    pub face: PressedFace,
    /// Its area `A_p`.
    pub area: Area,
    /// Pressure `p_M` at `F_M`.
    pub assembly: Stress,
    /// Pressure `p_B` at `F_Smax`.
    pub working: Stress,
    /// `S_P` = `p_G` over the greater of them.
    pub safety: f64,
}

/// R12 of a load across the bolt.
///
/// ```
/// use shankline::vdi_2230::Slipping;
/// fn enough(slip: &Slipping) -> bool {
///     slip.safety >= slip.least_safety
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Slipping {
    /// Clamp force `F_KQerf = F_Qmax / (q_F mu_Tmin)` that friction needs.
    pub clamp: Force,
    /// `S_G = F_KRmin / F_KQerf`.
    pub safety: f64,
    /// The `S_G` that the guideline wants.
    pub least_safety: f64,
    /// Section `A_tau` of the bolt in the interface.
    pub area: Area,
    /// Stress `tau = F_Qmax / A_tau` if it slips.
    pub stress: Stress,
    /// `S_A = tau_B / tau`; the guideline wants 1.1 (recalled).
    pub shear_safety: f64,
}

/// Safeties of the guideline: what is there over what is needed, without the margin that the guideline wants.
///
/// ```
/// use shankline::vdi_2230::Safeties;
/// fn yields(safeties: &Safeties) -> bool {
///     safeties.working < 1.0
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Safeties {
    /// Least assembly preload `F_M` / `alpha_A` over `F_Mmin`; infinite where nothing is required.
    pub preload: f64,
    /// `F_Mzul` over `F_M`.
    pub tightening: f64,
    /// `S_F = R_p0.2 / sigma_red,B`.
    pub working: f64,
    /// `S_D = sigma_A / sigma_a`; the guideline wants 1.2 (recalled).
    pub fatigue: Option<f64>,
    /// `S_P`, the least of all faces.
    pub pressure: Option<f64>,
    /// R11: load of the weaker thread over the breaking load of the bolt.
    pub threads: Option<f64>,
    /// `S_G`; the guideline wants 1.2, alternating 1.8 (recalled).
    pub slip: Option<f64>,
    /// `S_A`; the guideline wants 1.1 (recalled).
    pub shear: Option<f64>,
}

impl ConcentricCheck {
    /// Whether every safety is reached; `None` where nothing fails but something is [missing](Self::missing).
    ///
    /// ```
    /// use shankline::vdi_2230::ConcentricCheck;
    /// fn sure(check: &ConcentricCheck) -> bool {
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
    /// use shankline::strength::check::Check;
    /// use shankline::vdi_2230::ConcentricCheck;
    /// fn worst(check: &ConcentricCheck) -> Option<Check> {
    ///     check.governing()
    /// }
    /// ```
    #[must_use]
    pub fn governing(&self) -> Option<Check> {
        Check::governing(self.checks.iter().cloned())
    }

    /// What the user must be told: of the checks, and of the values they rest on.
    ///
    /// ```
    /// use shankline::vdi_2230::ConcentricCheck;
    /// fn told(check: &ConcentricCheck) -> bool {
    ///     check.cautions().iter().count() > 0
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let mut all = self.joint.cautions();
        all.extend(&self.share.cautions());
        for check in &self.checks {
            all.extend(&check.cautions);
        }
        all
    }

    /// The working, in the symbols of the guideline.
    ///
    /// ```
    /// use shankline::vdi_2230::ConcentricCheck;
    /// fn shown(check: &ConcentricCheck) -> Result<usize, shankline::Error> {
    ///     check.derivation().check()?;
    ///     Ok(check.derivation().steps().len())
    /// }
    /// ```
    pub fn derivation(&self) -> Derivation {
        super::working::derivation(self)
    }
}
