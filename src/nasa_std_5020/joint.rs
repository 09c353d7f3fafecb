//! What the analysis starts from.

use core::num::NonZeroU32;

use crate::error::{Allowed, Error, out_of_range, sane_stress};
use crate::parts::Zone;
use crate::preload::NasaPreload;
use crate::tension::LoadShare;
use crate::thread::Thread;
use crate::units::{Force, Stress};

/// One bolt of a joint, with its limit loads. All of it has to be said.
///
/// ```
/// use shankline::nasa_std_5020::*;
/// use shankline::parts::Zone;
/// use shankline::prelude::*;
/// use shankline::tension::LoadShare;
/// use shankline::units::percent;
/// # fn main() -> Result<(), shankline::Error> {
/// // The slewing ring of a davit (invented): M10 of 1100 MPa, tightened to 30 kN give or take a quarter.
/// let thread: Thread = "M10".parse()?;
/// let joint = FastenedJoint {
///     preload: NasaPreload::new(newtons(30e3), percent(25.0))?
///         .with_torque_tolerance(percent(95.0), percent(105.0))?
///         .with_creep(newtons(0.0))?
///         .with_thermal(newtons(1.5e3), newtons(2e3))?,
///     share: LoadShare::of_constant(0.30)?.introduced_at(0.5)?,
///     allowable: Allowable {
///         of: AllowableOf::WeakestPart,
///         ..Allowable::of_strengths(
///             &thread, megapascals(1100.0), megapascals(830.0), megapascals(650.0), Zone::Thread,
///         )?
///     },
///     factors: Factors { fitting: 1.15, ultimate: 1.4, yielding: 1.25, hazard: SeparationHazard::Critical },
///     loads: LimitLoads {
///         tension: newtons(9e3),
///         shear: newtons(6e3),
///         bending: megapascals(60.0),
///         cycles: LoadCycles::Static,
///     },
///     slip: JointSlip::Permitted,
/// };
/// let check = joint.check()?;
/// assert_eq!(check.holds(), Some(true));
/// assert!((check.margins.separation.unwrap() - 0.415).abs() < 0.001);
/// // The preload was said to be uncertain by a third in place of a quarter, and the gap opens.
/// let rougher = FastenedJoint { preload: NasaPreload::new(newtons(20e3), percent(35.0))?, ..joint };
/// assert_eq!(rougher.check()?.holds(), Some(false));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct FastenedJoint {
    /// Nominal initial preload `Ppi-nom` and everything that moves it: uncertainty Gamma, tolerance of the torque, relaxation,
    /// creep, heat and cold. Tolerance, creep and heat that nobody stated are missing: say that there is none.
    pub preload: NasaPreload,
    /// n phi, the share of a load that the bolt feels: stiffness factor phi and load introduction factor n.
    pub share: LoadShare,
    /// What the bolt bears.
    pub allowable: Allowable,
    /// Factors on the limit loads.
    pub factors: Factors,
    /// Limit loads of the bolt.
    pub loads: LimitLoads,
    /// Whether the joint may slip.
    pub slip: JointSlip,
}

/// What a bolt bears.
///
/// ```
/// use shankline::nasa_std_5020::{Allowable, AllowableOf};
/// use shankline::parts::Zone;
/// use shankline::prelude::*;
/// // As the specification of the bolt prints them; the nut is stronger.
/// let bolt = Allowable {
///     of: AllowableOf::WeakestPart,
///     ultimate_tension: newtons(62e3),
///     yield_tension: newtons(48e3),
///     ultimate_shear: newtons(44e3),
///     plane: Zone::Thread,
///     bending: megapascals(1100.0),
/// };
/// assert!(bolt.yield_tension < bolt.ultimate_tension);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Allowable {
    /// Whose tension it is.
    pub of: AllowableOf,
    /// `Ptu-allow`.
    pub ultimate_tension: Force,
    /// `Pty-allow`, at most `Ptu-allow`.
    pub yield_tension: Force,
    /// `Psu-allow`, for what lies in the plane.
    pub ultimate_shear: Force,
    /// What of the bolt lies in the shear plane; run-out counts as thread.
    pub plane: Zone,
    /// Ultimate bending stress: `Ftu`, for without a plastic allowance.
    pub bending: Stress,
}

impl Allowable {
    /// From strengths, for want of loads in the specification of the bolt: `Ptu-allow = Ftu At`, `Pty-allow = Ptu-allow Fty / Ftu`
    /// (both recalled), `Psu-allow` of the full diameter (Eq. 12) or of the minor area (Eq. 13). They are of
    /// [the bolt alone](AllowableOf::Bolt).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive, or beyond any material, and for one in shear or at yield that is
    /// above the tensile strength.
    ///
    /// ```
    /// use shankline::nasa_std_5020::Allowable;
    /// use shankline::parts::Zone;
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let (ftu, fty, fsu) = (megapascals(1100.0), megapascals(830.0), megapascals(650.0));
    /// let bolt = Allowable::of_strengths(&thread, ftu, fty, fsu, Zone::Shank)?;
    /// assert!((bolt.ultimate_tension - newtons(63_788.0)).abs() < newtons(1.0)); // 57.99 mm2
    /// assert!((bolt.ultimate_shear - newtons(51_051.0)).abs() < newtons(1.0)); // 78.54 mm2
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_strengths(
        thread: &Thread,
        tensile: Stress,
        yielding: Stress,
        shear: Stress,
        plane: Zone,
    ) -> Result<Self, Error> {
        sane_stress("tensile strength of the bolt", tensile)?;
        sane_stress("yield strength of the bolt", yielding)?;
        sane_stress("shear strength of the bolt", shear)?;
        // No metal yields after it breaks or bears more in shear: two of them were swapped.
        for (quantity, strength) in [
            ("yield strength of the bolt", yielding),
            ("shear strength of the bolt", shear),
        ] {
            if strength > tensile {
                let allowed = Allowed::AtMost(tensile.into());
                return Err(out_of_range(quantity, strength, allowed));
            }
        }
        let in_plane = match plane {
            Zone::Shank => thread.shank_area(),
            Zone::RunOut | Zone::Thread => thread.minor_area(),
        };
        Ok(Self {
            of: AllowableOf::Bolt,
            ultimate_tension: tensile * thread.tensile_stress_area(),
            yield_tension: yielding * thread.tensile_stress_area(),
            ultimate_shear: shear * in_plane,
            plane,
            bending: tensile,
        })
    }
}

/// Whose allowable tension is stated. The standard wants that of the weakest part of the fastening system.
///
/// ```
/// use shankline::nasa_std_5020::AllowableOf;
/// assert_ne!(AllowableOf::Bolt, AllowableOf::WeakestPart);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum AllowableOf {
    /// Of the bolt alone: what nut, insert or tapped thread bear is then missing.
    Bolt,
    /// Of the weakest of bolt, nut, insert and engaged thread.
    WeakestPart,
}

/// Factors on the limit loads.
///
/// ```
/// use shankline::nasa_std_5020::{Factors, SeparationHazard};
/// let usual = Factors { fitting: 1.15, ultimate: 1.4, yielding: 1.1, hazard: SeparationHazard::Critical };
/// assert_eq!(usual.separation(), 1.2);
/// assert_eq!(Factors { hazard: SeparationHazard::Catastrophic, ..usual }.separation(), 1.4);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factors {
    /// Fitting factor FF, from 1: 1.15, and 1 only for joints that are tested to their ultimate load.
    pub fitting: f64,
    /// Ultimate factor of safety `FSu` of the project, from 1.
    pub ultimate: f64,
    /// Yield factor of safety `FSy` of the project, from 1 to the ultimate factor.
    pub yielding: f64,
    /// What a separation of the joint would do.
    pub hazard: SeparationHazard,
}

impl Factors {
    /// `FSsep` of Figure 1: the greater of 1 and the factor of the test where nothing hangs on the separation, of 1.2 and `FSy` for
    /// a critical hazard, `FSu` for a catastrophic one, and never less there than for a critical one.
    ///
    /// ```
    /// use shankline::nasa_std_5020::{Factors, SeparationHazard};
    /// let tested = SeparationHazard::None { test: 1.2 };
    /// let factors = Factors { fitting: 1.15, ultimate: 2.0, yielding: 1.5, hazard: tested };
    /// assert_eq!(factors.separation(), 1.2);
    /// ```
    #[must_use]
    pub const fn separation(&self) -> f64 {
        let critical = if self.yielding > 1.2 {
            self.yielding
        } else {
            1.2
        };
        match self.hazard {
            SeparationHazard::None { test } if test > 1.0 => test,
            SeparationHazard::None { .. } => 1.0,
            SeparationHazard::Catastrophic if self.ultimate > critical => self.ultimate,
            SeparationHazard::Critical | SeparationHazard::Catastrophic => critical,
        }
    }
}

/// The hazard if the joint separates.
///
/// ```
/// use shankline::nasa_std_5020::SeparationHazard;
/// assert_ne!(SeparationHazard::Critical, SeparationHazard::Catastrophic);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum SeparationHazard {
    /// None: the joint is not separation-critical.
    None {
        /// Greatest factor over the limit load that the joint is tested with, under which it must not part either; 1 where
        /// no test goes beyond the limit load.
        test: f64,
    },
    /// Critical.
    Critical,
    /// Catastrophic.
    Catastrophic,
}

/// Limit loads of one bolt: the greatest that are expected, without factors.
///
/// ```
/// use shankline::nasa_std_5020::{LimitLoads, LoadCycles};
/// use shankline::prelude::*;
/// let pull = LimitLoads {
///     tension: newtons(9e3),
///     shear: newtons(0.0),
///     bending: megapascals(0.0),
///     cycles: LoadCycles::Static,
/// };
/// assert_eq!(pull.shear, newtons(0.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LimitLoads {
    /// Tension `PtL` from outside, without the preload and with what prying adds.
    pub tension: Force,
    /// Shear `PsL`. Friction carries none of it here.
    pub shear: Force,
    /// Bending stress `fb` of the bolt.
    pub bending: Stress,
    /// Whether they come and go.
    pub cycles: LoadCycles,
}

/// Whether loads come and go.
///
/// ```
/// use shankline::nasa_std_5020::LoadCycles;
/// assert_ne!(LoadCycles::Static, LoadCycles::Repeated);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum LoadCycles {
    /// They do not: fatigue is no concern.
    Static,
    /// They do: fatigue is missing, for the standard leaves it to fracture control and its own analysis.
    Repeated,
}

/// Whether the joint, all its bolts together, may slip.
///
/// ```
/// use core::num::NonZeroU32;
/// use shankline::nasa_std_5020::{JointSlip, SlipFriction};
/// use shankline::prelude::*;
/// let held = JointSlip::Resisted {
///     bolts: NonZeroU32::new(4).unwrap(),
///     tension: newtons(12e3),
///     shear: newtons(4e3),
///     friction: SlipFriction::Other,
///     factor: 1.0,
/// };
/// assert_ne!(held, JointSlip::Permitted);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum JointSlip {
    /// It may.
    Permitted,
    /// It must not, under these limit loads of the whole joint. Friction may carry shear at limit load only, as where a joint
    /// must keep its place or a fatigue analysis counts on it, or at yield load (TFSR 13); in the analysis of ultimate it counts for
    /// nothing (TFSR 8), so that [ultimate shear](super::Margins::shear) is the same whether the joint may slip or not. The formula of the standard is a sum over bolts that are loaded
    /// alike: where the [loads of the bolt](LimitLoads) say that it has more than its part of the shear, as beside a moment in
    /// the plane, slip is missing; stated as bolts times the shear of the most loaded one, it is decided on the safe side.
    Resisted {
        /// Bolts nf that hold it, all tightened alike.
        bolts: NonZeroU32,
        /// Tension of the joint.
        tension: Force,
        /// Shear of the joint.
        shear: Force,
        /// Friction of the faces.
        friction: SlipFriction,
        /// Factor of safety `FSs` of the project, from 1: that is slip at limit load, the yield factor is slip at yield load. A
        /// greater one is careful and no requirement.
        factor: f64,
    },
}

/// Friction of faces that must not slip.
///
/// ```
/// use shankline::nasa_std_5020::SlipFriction;
/// assert_eq!((SlipFriction::Bare.value(), SlipFriction::Other.value()), (0.2, 0.1));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum SlipFriction {
    /// Metal without coating or lubricant, cleaned by a qualified process and visibly clean when it is assembled: at most 0.2
    /// counts without a test (TFSR 14). Metal that is merely bare is [other](Self::Other).
    Bare,
    /// All other faces: 0.1 (TFSR 14).
    Other,
    /// Least value of tests on faces like these.
    Tested(f64),
}

impl SlipFriction {
    /// The coefficient mu.
    ///
    /// ```
    /// use shankline::nasa_std_5020::SlipFriction;
    /// assert_eq!(SlipFriction::Tested(0.35).value(), 0.35);
    /// ```
    #[must_use]
    pub const fn value(self) -> f64 {
        match self {
            Self::Bare => 0.2,
            Self::Other => 0.1,
            Self::Tested(friction) => friction,
        }
    }
}
