//! Bolts through timber: yield-limit equations by two publishers, timber to timber and steel to timber.
//!
//! A bolt in timber fails in one of a few ways: the timber is crushed along the whole bolt, the bolt turns
//! stiffly in it, or the bolt bends at one or two hinges. Johansen's statics gives a load for each, and the
//! least one counts. The publishers differ in how strong timber is under a bolt, in what bolt moment is a hinge,
//! and in where the safety lies, so nothing of one may go into the other:
//!
//! | | [`Nds`](TimberMethod::Nds) | [`En1995`](TimberMethod::En1995) |
//! |---|---|---|
//! | timber is known by | specific gravity G | characteristic density `rho_k` |
//! | strength under the bolt, along the grain | 11200 G psi | 0.082 (1 - 0.01 d) `rho_k` N/mm2, d in mm |
//! | across the grain | 6100 G^1.45 / sqrt(D) psi, D in inches | the one along over k90 |
//! | at an angle a | Hankinson | the one along over (k90 sin2 a + cos2 a), which is Hankinson's |
//! | moment of the bolt | Fyb D^3 / 6 | 0.3 fu d^2.6 N mm |
//! | pull of the bolt | not counted | a quarter of it, at most a quarter of the rest |
//! | safety | in the reduction terms 4, 3.6, 3.2 times 1 + a/360 deg; then the caller's factors | caller's kmod / gammaM |
//! | gap between members | general dowel equations of Technical Report 12 | refused |
//! | result | reference design value Z, allowable | characteristic and design |
//! | bolts | 1/4 to 1 in | 6 to 30 mm |
//!
//! k90 = 1.35 + 0.015 d for softwood and 0.90 + 0.015 d for hardwood, d in mm. Steel members: NDS takes a bearing
//! strength of 1.5 Fu (1.375 Fu under 1/4 in); EN has equations of their own, by the plate: thin up to d/2, thick
//! from d with a hole less than 0.1 d wider than the bolt, between them interpolated.
//!
//! Sources. NDS: National Design Specification for Wood Construction 2018, 12.3.1 to 12.3.7 and Tables 12.3.1A, 12.3.1B,
//! 12.3.3, read as quoted in public design notes and scripts (bearing strengths, Hankinson, reduction terms, k1 to k3,
//! the general dowel equations of the American Wood Council's Technical Report 12 for modes `II` and `IIIm`; steel from a
//! course page). Modes `IIIs` and `IV` of the latter follow by symmetry.
//! Without a gap they are the closed forms of the specification, which a test shows. EN 1995-1-1:2004, 8.2.2, 8.2.3
//! and 8.5.1.1, read as reproduced and worked in Porteous and Kermani, Structural Timber Design to Eurocode 5 (2007):
//! double shear, all steel-to-timber equations, the limit of a quarter; the equations of single shear and k90 as quoted
//! in several public scripts, which agree.
//!
//! Not here: group effects (NDS Cg, EN nef), splitting across the grain, block and row shear of the timber,
//! end-grain, shrinkage. The caller's factors and the code in force cover them.

mod distances;
mod en;
mod member;
mod nds;
mod result;
mod working;

pub use distances::{TimberDistances, least_distances};
pub use member::{MemberMaterial, TimberMember, Wood};
pub use result::{TimberResistance, YieldMode};

use core::fmt;

use crate::caution::Cautions;
use crate::error::{
    Allowed, Error, not_negative, out_of_range, part_length, positive, sane_length, sane_stress,
};
use crate::units::{Force, Length, Stress, inches, millimetres};

/// A published method for bolts in timber.
///
/// ```
/// use shankline::strength::timber::TimberMethod;
/// use shankline::units::ksi;
/// // Bolts of ASTM A307: 45 ksi; ten-year load, dry, one bolt: no factor
/// let nds = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.0 };
/// assert_eq!(nds.to_string(), "NDS 2018, 12.3, yield limit equations");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[non_exhaustive]
pub enum TimberMethod {
    /// National Design Specification for Wood Construction, 2018.
    Nds {
        /// Bending yield strength Fyb of the bolt: its publisher gives 45 ksi for common bolts, else the
        /// mean of yield and tensile strength (recalled).
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        bending_yield: Stress,
        /// Product of the adjustment factors that apply: load duration, wet service, temperature, group action,
        /// geometry, end grain.
        adjustment: f64,
    },
    /// EN 1995-1-1:2004.
    #[cfg_attr(feature = "serde", serde(rename = "en_1995_1_1"))]
    En1995 {
        /// Characteristic axial capacity `Fax,Rk` of bolt and washers, the lesser; zero counts no pull.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        axial: Force,
        /// Factor of load duration and service class.
        kmod: f64,
        /// Partial factor of connections, by the national annex (1.3 recommended).
        gamma_m: f64,
    },
}

impl TimberMethod {
    /// The method, if the numbers in it are in their ranges; a joint checks them too, but only where the method is
    /// used.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive, an axial capacity that is negative, or a factor
    /// outside its range.
    ///
    /// ```
    /// use shankline::{strength::timber::TimberMethod, units::newtons};
    /// let odd = TimberMethod::En1995 { axial: newtons(0.0), kmod: -0.8, gamma_m: 1.3 };
    /// assert!(odd.checked().is_err());
    /// ```
    pub fn checked(self) -> Result<Self, Error> {
        self.check_factors()?;
        Ok(self)
    }

    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::{strength::timber::TimberMethod, units::newtons};
    /// let en = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
    /// assert_eq!(en.name(), "EN 1995-1-1:2004, 8.2");
    /// ```
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Nds { .. } => "NDS 2018, 12.3, yield limit equations",
            Self::En1995 { .. } => "EN 1995-1-1:2004, 8.2",
        }
    }

    /// The diameters it is written for.
    const fn diameters(self) -> (Length, Length) {
        match self {
            Self::Nds { .. } => (inches(0.25), inches(1.0)),
            Self::En1995 { .. } => (millimetres(6.0), millimetres(30.0)),
        }
    }

    /// Whether it is written for bolts of a diameter.
    pub(crate) fn covers(self, diameter: Length) -> bool {
        check_diameter(diameter, self).is_ok()
    }

    fn check_factors(self) -> Result<(), Error> {
        let within = |name, factor: f64, low: f64, high: f64| {
            positive(name, factor)?;
            if factor < low || factor > high {
                let allowed = Allowed::FromTo(low.into(), high.into());
                return Err(out_of_range(name, factor, allowed));
            }
            Ok(())
        };
        match self {
            Self::Nds {
                bending_yield,
                adjustment,
            } => {
                sane_stress("bending yield strength of the bolt", bending_yield)?;
                within("adjustment of the timber joint", adjustment, 0.01, 10.0)
            }
            Self::En1995 {
                axial,
                kmod,
                gamma_m,
            } => {
                not_negative("axial capacity of the bolt", axial)?;
                within("kmod", kmod, 0.1, 1.1)?;
                within("gammaM", gamma_m, 1.0, 100.0)
            }
        }
    }
}

impl fmt::Display for TimberMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.name())
    }
}

/// How many shear planes the bolt of a timber joint has.
///
/// ```
/// use shankline::strength::timber::TimberShear;
/// assert_eq!(TimberShear::Double.planes(), 2);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
pub enum TimberShear {
    /// Two members, one plane.
    Single,
    /// Three members, the outer two alike.
    Double,
}

impl TimberShear {
    /// Number of shear planes.
    ///
    /// ```
    /// use shankline::strength::timber::TimberShear;
    /// assert_eq!(TimberShear::Single.planes(), 1);
    /// ```
    #[must_use]
    pub const fn planes(self) -> u8 {
        match self {
            Self::Single => 1,
            Self::Double => 2,
        }
    }
}

/// One bolt through a timber joint of two members, or of three with the outer two alike.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod, TimberShear};
/// use shankline::tables::timber::Timber;
/// use shankline::units::{degrees, pound_force};
/// # fn main() -> Result<(), shankline::Error> {
/// // Two 2x members, both along the grain, 1/2 in bolt of ASTM A307.
/// let larch = Timber::find("Douglas Fir-Larch")?;
/// let joint = TimberConnection {
///     diameter: inches(0.5),
///     main: TimberMember::wood(inches(1.5), larch, degrees(0.0)),
///     side: TimberMember::wood(inches(1.5), larch, degrees(0.0)),
///     shear: TimberShear::Single,
///     gap: inches(0.0),
/// };
/// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.0 };
/// let found = joint.resistance(None, method)?;
/// assert_eq!(found.governing.name, "II");
/// // Table 12A of the specification prints 480 lbf.
/// assert!((found.resistance.at(Level::Allowable)?.get::<pound_force>() - 480.0).abs() < 5.0);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TimberConnection {
    /// Diameter D = d of the bolt; for NDS the root diameter if thread crosses a shear plane.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub diameter: Length,
    /// The main member, the inner one in double shear: lm, t2.
    pub main: TimberMember,
    /// The side member, each of the two in double shear: ls, t1.
    pub side: TimberMember,
    /// One shear plane or two.
    pub shear: TimberShear,
    /// Gap between the members, at each shear plane; spacers count as gaps.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize")
    )]
    pub gap: Length,
}

impl TimberConnection {
    /// The load of the bolt in every yield mode, and the least of them.
    ///
    /// `bolt_tensile_strength` is fu,k of EN 1995-1-1; NDS does not ask for it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for what is not positive and finite, a negative gap, a diameter, specific
    /// gravity, density or angle outside the method, a hole smaller than the bolt, kmod not from 0.1 to 1.1,
    /// gammaM below 1, an adjustment not from 0.01 to 10; [`Error::NoValue`] if timber or bolt lack the
    /// number of the method, or for a gap by EN 1995-1-1; [`Error::Mismatch`] if no member is timber.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod, TimberShear};
    /// use shankline::tables::timber::Timber;
    /// use shankline::units::degrees;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A pier beam of C24 between two steel plates, M16 of class 4.6.
    /// let pier = TimberConnection {
    ///     diameter: millimetres(16.0),
    ///     main: TimberMember::wood(millimetres(120.0), Timber::find("C24")?, degrees(0.0)),
    ///     side: TimberMember::steel(millimetres(8.0), megapascals(360.0), millimetres(17.0)),
    ///     shear: TimberShear::Double,
    ///     gap: millimetres(0.0),
    /// };
    /// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.7, gamma_m: 1.3 };
    /// let found = pier.resistance(Some(megapascals(400.0)), method)?;
    /// assert_eq!(found.governing.name, "k"); // thin plates, two hinges in the timber
    /// assert!(pier.resistance(None, method).is_err()); // fu of the bolt is missing
    /// # Ok(())
    /// # }
    /// ```
    pub fn resistance(
        &self,
        bolt_tensile_strength: Option<Stress>,
        method: TimberMethod,
    ) -> Result<TimberResistance, Error> {
        check_diameter(self.diameter, method)?;
        method.check_factors()?;
        self.main.check(self.diameter)?;
        self.side.check(self.diameter)?;
        not_negative("gap between the members", self.gap)?;
        if self.gap.value > 0.0 {
            sane_length("gap between the members", self.gap)?;
        }
        let steel = |member: &TimberMember| matches!(member.material, MemberMaterial::Steel { .. });
        if steel(&self.main) && steel(&self.side) {
            return Err(Error::Mismatch("no member of the joint is timber".into()));
        }
        match method {
            TimberMethod::Nds {
                bending_yield,
                adjustment,
            } => nds::resistance(self, bending_yield, adjustment),
            TimberMethod::En1995 {
                axial,
                kmod,
                gamma_m,
            } => {
                let tensile = bolt_tensile_strength.ok_or_else(|| Error::NoValue {
                    quantity: "tensile strength of the bolt",
                    subject: alloc::string::String::new(),
                    reason: "EN 1995-1-1 asks for it",
                })?;
                en::resistance(self, tensile, axial, kmod / gamma_m, method)
            }
        }
    }
}

impl TimberConnection {
    /// Of gravities and densities that were recalled.
    fn cautions(&self) -> Cautions {
        let (main, side) = (self.main.caution(), self.side.caution());
        Cautions::default()
            .with(main)
            .with(side.filter(|side| main != Some(*side)))
    }
}

fn check_diameter(diameter: Length, method: TimberMethod) -> Result<(), Error> {
    part_length("bolt diameter", diameter)?;
    let (low, high) = method.diameters();
    // Sizes come from nanometres or inches: the same one may differ in the last digit.
    let slack = millimetres(1e-7);
    if diameter < low - slack || diameter > high + slack {
        let allowed = Allowed::FromTo(low.into(), high.into());
        return Err(out_of_range("bolt diameter", diameter, allowed));
    }
    Ok(())
}
