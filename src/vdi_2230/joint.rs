//! What the procedure starts from.

use alloc::vec::Vec;

use crate::material::BoltStrength;
use crate::preload::{FrictionForm, ThermalRange};
use crate::strength::check::Place;
use crate::strength::strip::StrippingStrength;
use crate::strength::surface::{SurfaceContact, SurfaceLimit};
use crate::tables::tightening::{Embedment, TighteningScatter};
use crate::tension::{BoltStiffness, MemberStiffness};
use crate::units::{Force, Length, Ratio, Stiffness, Stress};

/// One bolt and what it clamps, with the loads along and across its axis. All of it has to be said.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::{BoltHead, BoltStiffness, ClampEnd, GripSections, Layer, ThreadedEnd, VdiPlates};
/// use shankline::units::{micrometres, percent};
/// use shankline::vdi_2230::*;
/// # fn main() -> Result<(), shankline::Error> {
/// // The hinge block of a playground swing beam (invented): M12 class 10.9 through 40 mm of steel.
/// let (thread, steel): (Thread, _) = ("M12".parse()?, megapascals(205e3));
/// let friction = Friction::new(0.10, 0.12, 0.14)?;
/// let sections = GripSections::new(millimetres(25.0), millimetres(15.0))?;
/// let nut = ThreadedEnd::Nut { modulus: steel };
/// let plates = VdiPlates::new(ClampEnd::ThroughBolt, millimetres(13.5), millimetres(16.6), millimetres(50.0))?;
/// let joint = ConcentricJoint {
///     form: FrictionForm::linear(&thread, millimetres(15.05), friction, friction)?,
///     strength: PropertyClass::Class10_9.strength(millimetres(12.0))?,
///     bolt: BoltSpring::Parts(BoltStiffness::vdi_2230(&thread, sections, BoltHead::Hexagon, steel, nut)?),
///     plates: PlateSpring::Parts(plates.stiffness(Layer::new(millimetres(40.0), steel)?)?),
///     introduction: 0.5,
///     scatter: Scatter::Stated(1.6),
///     utilisation: percent(90.0),
///     assembly: Assembly::Permitted,
///     embedding: Embedding::Stated(micrometres(11.0)),
///     thermal: ThermalForces::NONE,
///     loads: WorkingLoads {
///         axial_greatest: newtons(12e3),
///         axial_least: newtons(0.0),
///         cycles: AxialCycles::Repeated { cycles: 2e6, rolled: RolledThread::BeforeHeatTreatment },
///         transverse: Transverse::None,
///         seal: newtons(1e3),
///     },
///     faces: vec![],
///     threads: None,
/// };
/// let check = joint.check()?;
/// assert!(check.safeties.preload > 1.0 && check.safeties.working > 1.0);
/// // Nobody said what the head presses on, nor how deep the thread is engaged: no answer.
/// assert_eq!((check.missing.len(), check.holds()), (2, None));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct ConcentricJoint {
    /// Thread, friction `mu_G` and `mu_K`, effective diameter `D_Km` of the turned face: of
    /// [`FrictionForm::linear`], the form of the guideline.
    pub form: FrictionForm,
    /// Strength of the bolt, for `R_p0.2`.
    pub strength: BoltStrength,
    /// Resilience `delta_S` of the bolt.
    pub bolt: BoltSpring,
    /// Resilience `delta_P` of the plates.
    pub plates: PlateSpring,
    /// Load introduction factor n, above 0 and at most 1: 1 where the load acts under head and nut.
    pub introduction: f64,
    /// Tightening factor `alpha_A`.
    pub scatter: Scatter,
    /// Share nu of `R_p0.2` that tightening may use, above 0 and at most 0.9; the guideline has 0.9.
    pub utilisation: Ratio,
    /// How far it is tightened.
    pub assembly: Assembly,
    /// Embedding `f_Z`.
    pub embedding: Embedding,
    /// Change `dF_Vth` of the preload with the temperature.
    pub thermal: ThermalForces,
    /// Working loads.
    pub loads: WorkingLoads,
    /// Every face that head, nut and washers press on. Without any R10 is missing.
    pub faces: Vec<PressedFace>,
    /// Threads of bolt and nut or tapped hole by [`StripMethod::Vdi2230`](crate::strength::strip::StripMethod::Vdi2230), for R11:
    /// state the greatest tensile strength the bolt may have. Without it R11 is missing.
    pub threads: Option<StrippingStrength>,
}

/// Resilience of the bolt, as its stiffness 1 / `delta_S`.
///
/// ```
/// use shankline::{units::newtons_per_millimetre, vdi_2230::BoltSpring};
/// let spring = BoltSpring::Stated(newtons_per_millimetre(362e3));
/// assert_eq!(spring.stiffness(), newtons_per_millimetre(362e3));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum BoltSpring {
    /// From its parts, of [`BoltStiffness::vdi_2230`].
    Parts(BoltStiffness),
    /// As stated.
    Stated(Stiffness),
}

impl BoltSpring {
    /// 1 / `delta_S`.
    ///
    /// ```
    /// use shankline::{units::newtons_per_millimetre, vdi_2230::BoltSpring};
    /// let spring = BoltSpring::Stated(newtons_per_millimetre(1.0));
    /// assert_eq!(spring.stiffness(), newtons_per_millimetre(1.0));
    /// ```
    #[must_use]
    pub const fn stiffness(&self) -> Stiffness {
        match self {
            Self::Parts(parts) => parts.stiffness,
            Self::Stated(stiffness) => *stiffness,
        }
    }
}

/// Resilience of the plates, as their stiffness 1 / `delta_P`.
///
/// ```
/// use shankline::{units::newtons_per_millimetre, vdi_2230::PlateSpring};
/// let spring = PlateSpring::Stated(newtons_per_millimetre(858e3));
/// assert_eq!(spring.stiffness(), newtons_per_millimetre(858e3));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum PlateSpring {
    /// From their sizes: of [`VdiPlates`](crate::tension::VdiPlates), or of a sleeve narrower than the head
    /// ([`hollow_cylinder`](crate::tension::hollow_cylinder)).
    Parts(MemberStiffness),
    /// As stated, such as several plates [`in_series`](crate::tension::in_series).
    Stated(Stiffness),
}

impl PlateSpring {
    /// 1 / `delta_P`.
    ///
    /// ```
    /// use shankline::{units::newtons_per_millimetre, vdi_2230::PlateSpring};
    /// let spring = PlateSpring::Stated(newtons_per_millimetre(1.0));
    /// assert_eq!(spring.stiffness(), newtons_per_millimetre(1.0));
    /// ```
    #[must_use]
    pub const fn stiffness(&self) -> Stiffness {
        match self {
            Self::Parts(parts) => parts.stiffness,
            Self::Stated(stiffness) => *stiffness,
        }
    }
}

/// Tightening factor `alpha_A`, greatest over least assembly preload.
///
/// ```
/// use shankline::tables::tightening::{TighteningMethod, TighteningScatter};
/// use shankline::vdi_2230::Scatter;
/// let rows = TighteningScatter::of_method(TighteningMethod::TorqueFromFriction);
/// assert_ne!(Scatter::Listed(&rows[0]), Scatter::Stated(1.6));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Scatter {
    /// As stated, from 1.
    Stated(f64),
    /// The greatest of a row of the table.
    Listed(&'static TighteningScatter),
}

/// How far the bolt is tightened.
///
/// ```
/// use shankline::{units::newtons, vdi_2230::Assembly};
/// assert_ne!(Assembly::Permitted, Assembly::Greatest(newtons(40e3)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Assembly {
    /// As far as R7 permits: the greatest assembly preload is `F_Mzul`.
    Permitted,
    /// The greatest assembly preload `F_M` of the tightening, with its scatter.
    Greatest(Force),
}

/// Embedding `f_Z` after tightening.
///
/// ```
/// use shankline::{units::micrometres, vdi_2230::Embedding};
/// assert_ne!(Embedding::Stated(micrometres(8.0)), Embedding::Stated(micrometres(11.0)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Embedding {
    /// As stated; a measured one, or the sum over the faces.
    Stated(Length),
    /// Guide values of the guideline.
    Faces {
        /// The row for roughness and direction of load.
        row: &'static Embedment,
        /// Faces under head and nut: two of a through bolt, one of a screw in a tapped hole.
        bearing_faces: u16,
        /// Interfaces between plates.
        interfaces: u16,
    },
}

/// Change of the preload with the temperature, either way.
///
/// ```
/// use shankline::{units::newtons, vdi_2230::ThermalForces};
/// assert_eq!(ThermalForces::NONE.gain, newtons(0.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThermalForces {
    /// The most that any service temperature adds.
    pub gain: Force,
    /// The most that any service temperature takes.
    pub loss: Force,
}

impl ThermalForces {
    /// Bolt and plates stay as warm as they were at assembly, or grow alike.
    pub const NONE: Self = Self {
        gain: crate::units::newtons(0.0),
        loss: crate::units::newtons(0.0),
    };

    /// Between the coldest and the hottest service.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::{celsius, newtons_per_millimetre, ppm_per_kelvin};
    /// use shankline::vdi_2230::ThermalForces;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let k = newtons_per_millimetre(500e3);
    /// let range = ElasticJoint::new(millimetres(1.75), k, k)?.thermal_range(
    ///     ppm_per_kelvin(11.5), &[(millimetres(40.0), ppm_per_kelvin(23.0))],
    ///     celsius(20.0), celsius(-20.0), celsius(20.0),
    /// )?;
    /// let thermal = ThermalForces::of_range(&range);
    /// assert!(thermal.loss > newtons(4e3) && thermal.gain == newtons(0.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of_range(range: &ThermalRange) -> Self {
        Self {
            gain: range.greatest(),
            // Not the negative of nothing.
            loss: range.least().abs(),
        }
    }
}

/// Working loads of one bolt.
///
/// ```
/// use shankline::{units::newtons, vdi_2230::*};
/// let steady = WorkingLoads {
///     axial_greatest: newtons(8e3),
///     axial_least: newtons(8e3),
///     cycles: AxialCycles::Static,
///     transverse: Transverse::None,
///     seal: newtons(0.0),
/// };
/// assert_eq!(steady.axial_greatest, steady.axial_least);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WorkingLoads {
    /// Greatest load `F_Amax` along the bolt, which pulls.
    pub axial_greatest: Force,
    /// Least load `F_Amin` along the bolt, not below nothing.
    pub axial_least: Force,
    /// How often it goes from one to the other.
    pub cycles: AxialCycles,
    /// Load across the bolt.
    pub transverse: Transverse,
    /// Clamp force `F_KP` that sealing needs; nothing where nothing is sealed.
    pub seal: Force,
}

/// How often the load along the bolt repeats.
///
/// ```
/// use shankline::vdi_2230::{AxialCycles, RolledThread};
/// let pump = AxialCycles::Repeated { cycles: 1e7, rolled: RolledThread::BeforeHeatTreatment };
/// assert_ne!(pump, AxialCycles::Static);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum AxialCycles {
    /// It does not repeat: fatigue is no concern.
    Static,
    /// It repeats.
    Repeated {
        /// How often; from 2 million on the endurance limit counts, and below 10 000 nothing is known.
        cycles: f64,
        /// When the thread was rolled.
        rolled: RolledThread,
    },
}

/// When the thread was rolled.
///
/// ```
/// use shankline::vdi_2230::RolledThread;
/// assert_ne!(RolledThread::BeforeHeatTreatment, RolledThread::AfterHeatTreatment);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum RolledThread {
    /// Before heat treatment: the usual bolt.
    BeforeHeatTreatment,
    /// After heat treatment.
    AfterHeatTreatment,
}

/// Load across the bolt.
///
/// ```
/// use shankline::vdi_2230::{ShearSection, Transverse, TransverseKind};
/// use shankline::units::{megapascals, newtons};
/// let load = Transverse::Load {
///     force: newtons(2e3), kind: TransverseKind::Static, friction: 0.15, interfaces: 1,
///     section: ShearSection::Thread, shear_strength: megapascals(620.0),
/// };
/// assert_ne!(load, Transverse::None);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Transverse {
    /// None.
    None,
    /// Friction is to carry it.
    Load {
        /// `F_Qmax`.
        force: Force,
        /// Whether it changes its direction.
        kind: TransverseKind,
        /// Least friction `mu_Tmin` of the interfaces.
        friction: f64,
        /// Interfaces `q_F` that slip together, at least one.
        interfaces: u16,
        /// What of the bolt lies in the interface.
        section: ShearSection,
        /// Shear strength `tau_B` of the bolt: 0.65, 0.62 and 0.60 of the tensile strength in classes 8.8, 10.9 and 12.9
        /// (recalled).
        shear_strength: Stress,
    },
}

/// Whether a load across the bolt changes its direction, which decides the safety against slipping.
///
/// ```
/// use shankline::vdi_2230::TransverseKind;
/// assert_eq!(TransverseKind::Alternating.least_safety(), 1.8);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum TransverseKind {
    /// One way only.
    Static,
    /// To and fro.
    Alternating,
}

impl TransverseKind {
    /// The safety `S_G` that the guideline wants: 1.2, alternating 1.8 (recalled).
    ///
    /// ```
    /// use shankline::vdi_2230::TransverseKind;
    /// assert_eq!(TransverseKind::Static.least_safety(), 1.2);
    /// ```
    #[must_use]
    pub const fn least_safety(self) -> f64 {
        match self {
            Self::Static => 1.2,
            Self::Alternating => 1.8,
        }
    }
}

/// What of the bolt a load across it would cut.
///
/// ```
/// use shankline::vdi_2230::ShearSection;
/// assert_ne!(ShearSection::Shank, ShearSection::Thread);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum ShearSection {
    /// The plain shank: pi d^2 / 4.
    Shank,
    /// The thread: at its root, pi d3^2 / 4.
    Thread,
}

/// A face under head, nut or washer.
///
/// ```
/// use shankline::strength::{check::Place, surface::{SurfaceContact, SurfaceLimit}};
/// use shankline::units::{megapascals, millimetres};
/// use shankline::vdi_2230::PressedFace;
/// # fn main() -> Result<(), shankline::Error> {
/// let head = PressedFace {
///     place: Place::Head,
///     contact: SurfaceContact::new(millimetres(16.0), millimetres(10.5))?,
///     limit: SurfaceLimit::stated(megapascals(370.0))?,
/// };
/// assert_eq!(head.place, Place::Head);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PressedFace {
    /// Where.
    pub place: Place,
    /// The ring that bears.
    pub contact: SurfaceContact,
    /// The limit `p_G`.
    pub limit: SurfaceLimit,
}
