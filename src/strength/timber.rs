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
//! | question | begins at |
//! |---|---|
//! | load of one bolt | [`TimberConnection::resistance`] |
//! | thread in the timber, bending yield strength (NDS) | [`nds_bearing_diameter`], [`nds_bending_yield`] |
//! | end, edge, spacing; what a short one costs | [`TimberDistances::judged`], [`TimberResistance::reduced`] |
//! | several bolts in a row | [`BoltRow::factor`], [`nds_group_action`], [`en_effective_bolts`] |
//! | hole, washer | [`TimberMember::hole_rule`], [`TimberWasher::rules`] |
//! | pressure under a washer, pull of the bolt (EN) | [`TimberWasher::bearing`], [`en_axial_capacity`] |
//!
//! A rule of detail answers with a [`Requirement`]: what it is about, what it is, what it must be, and by its
//! [`Judged`] whether it holds, fails, costs strength or is not known. What is not known is never taken as good.
//!
//! Not here: splitting across the grain, block and row shear of the timber, end grain, shrinkage. The code in force
//! covers them.

mod bolt;
mod distances;
mod en;
mod member;
mod nds;
mod result;
mod row;
mod rule;
mod washer;
mod working;

pub use bolt::{BearingDiameter, MemberOnBolt, nds_bearing_diameter, nds_bending_yield};
pub use distances::{DistanceCheck, TimberDistances};
pub use member::{MemberMaterial, TimberMember, Wood};
pub use result::{TimberResistance, YieldMode};
pub use row::{BoltRow, NdsRow, RowFactor, en_effective_bolts, nds_group_action};
pub use rule::{Judged, Requirement, TimberFact};
pub use washer::{AxialCapacity, TimberWasher, WasherBearing, en_axial_capacity};

use core::fmt;

use crate::caution::Cautions;
use crate::error::{
    Allowed, Error, not_negative, out_of_range, part_length, positive, sane_length, sane_stress,
};
use crate::material::BoltStrength;
use crate::source::Method;
use crate::strength::code::en_1993;
use crate::tables::methods;
use crate::units::{Force, Length, Ratio, Stress, inches, millimetres};

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
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum TimberMethod {
    /// National Design Specification for Wood Construction, 2018.
    Nds {
        /// Bending yield strength Fyb of the bolt: its publisher gives 45 ksi for common bolts; at most what
        /// [`nds_bending_yield`] says.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Stress>"))]
        bending_yield: Stress,
        /// Product of the adjustment factors that apply, up to 1.6: load duration, wet service, temperature, end grain. Group
        /// action and geometry have [`TimberResistance::reduced`].
        adjustment: f64,
    },
    /// EN 1995-1-1:2004.
    #[cfg_attr(feature = "serde", serde(rename = "en_1995_1_1"))]
    En1995 {
        /// Characteristic axial capacity `Fax,Rk` of bolt and washers, the lesser, as [`en_axial_capacity`] has it;
        /// zero counts no pull.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
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
    /// assert_eq!(en.method().citation, "EN 1995-1-1:2004, 8.2");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Nds { .. } => methods::NDS_2018_12_3_YIELD_LIMIT_EQUATIONS,
            Self::En1995 { .. } => methods::EN_1995_1_1_2004_8_2,
        }
    }

    /// The same with no more pull of the bolt than `axial`, by [`en_axial_capacity`]; NDS counts none.
    ///
    /// ```
    /// use shankline::{strength::timber::TimberMethod, units::newtons};
    /// let stated = TimberMethod::En1995 { axial: newtons(20e3), kmod: 0.8, gamma_m: 1.3 };
    /// let held = stated.with_axial_at_most(newtons(13e3));
    /// assert_eq!(held, TimberMethod::En1995 { axial: newtons(13e3), kmod: 0.8, gamma_m: 1.3 });
    /// ```
    #[must_use]
    pub fn with_axial_at_most(self, most: Force) -> Self {
        match self {
            Self::En1995 {
                axial,
                kmod,
                gamma_m,
            } => Self::En1995 {
                axial: if axial > most { most } else { axial },
                kmod,
                gamma_m,
            },
            nds @ Self::Nds { .. } => nds,
        }
    }

    /// The diameters it is written for.
    const fn diameters(self) -> (Length, Length) {
        match self {
            Self::Nds { .. } => (inches(0.25), inches(1.0)),
            Self::En1995 { .. } => (millimetres(6.0), millimetres(30.0)),
        }
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
                // The load duration is at most 1.6 in connections; for bolts nothing else exceeds 1 (NDS 2018, 11.3.1 and
                // 11.3.2, recalled).
                within("adjustment of the timber joint", adjustment, 0.01, 1.6)
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
        f.pad(self.method().citation)
    }
}

/// One bolt through a timber joint of two members, or of three: one in the middle and one on either side of it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod};
/// use shankline::tables::timber::Timber;
/// use shankline::units::{degrees, pound_force};
/// # fn main() -> Result<(), shankline::Error> {
/// // Two 2x members, both along the grain, 1/2 in bolt of ASTM A307.
/// let larch = Timber::find("Douglas Fir-Larch")?;
/// let joint = TimberConnection {
///     diameter: inches(0.5),
///     main: TimberMember::wood(inches(1.5), larch, degrees(0.0)),
///     side: TimberMember::wood(inches(1.5), larch, degrees(0.0)),
///     far_side: None,
///     gap: inches(0.0),
/// };
/// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.0 };
/// let found = joint.resistance(&AstmGrade::A307A.strength(inches(0.5))?, method)?;
/// assert_eq!(found.governing.name, "II");
/// // Table 12A of the specification prints 480 lbf.
/// assert!((found.resistance.at(Level::Allowable)?.get::<pound_force>() - 480.0).abs() < 5.0);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TimberConnection {
    /// Diameter D = d of the bolt; for NDS that of [`nds_bearing_diameter`].
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// The main member, the inner one in double shear: lm, t2.
    pub main: TimberMember,
    /// The side member, one of the two in double shear: ls, t1.
    pub side: TimberMember,
    /// The other side member: then there are two shear planes, and the weaker side counts for both.
    pub far_side: Option<TimberMember>,
    /// Gap between the members, at each shear plane; spacers count as gaps.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub gap: Length,
}

impl TimberConnection {
    /// The load of the bolt in every yield mode, and the least of them.
    ///
    /// Of two outer members that differ the weaker one counts for both. NDS: the lesser thickness of the two and the
    /// lesser bearing strength; EN 1995-1-1: the lesser of both resistances. So no member is better than
    /// what is beside it, and none that is stronger or thicker makes the joint weaker.
    ///
    /// EN takes the tensile strength fu,k of the bolt (the nominal one of EN 1993-1-8 where that names the grade). NDS
    /// takes the bending yield strength of the method, at most that of [`nds_bending_yield`].
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for what is not positive and finite, a negative gap, a diameter, specific
    /// gravity, density or angle outside the method, a hole smaller than the bolt, kmod not from 0.1 to 1.1,
    /// gammaM below 1, an adjustment not from 0.01 to 1.6, a bending yield strength above that of the bolt;
    /// [`Error::NoValue`] if timber or bolt lack the number of the method, or for a gap by EN 1995-1-1;
    /// [`Error::Mismatch`] if no member is timber, or steel lies on steel at a shear plane.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod};
    /// use shankline::tables::timber::Timber;
    /// use shankline::units::degrees;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A pier beam of C24 between two steel plates, M16 of class 4.6.
    /// let plate = TimberMember::steel(millimetres(8.0), megapascals(360.0), millimetres(17.0));
    /// let pier = TimberConnection {
    ///     diameter: millimetres(16.0),
    ///     main: TimberMember::wood(millimetres(120.0), Timber::find("C24")?, degrees(0.0)),
    ///     side: plate,
    ///     far_side: Some(plate),
    ///     gap: millimetres(0.0),
    /// };
    /// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.7, gamma_m: 1.3 };
    /// let bolt = PropertyClass::Class4_6.strength(millimetres(16.0))?;
    /// let found = pier.resistance(&bolt, method)?;
    /// assert_eq!(found.governing.name, "k"); // thin plates, two hinges in the timber
    /// // A stronger plate on one side only helps nothing: the weaker one counts for both.
    /// let thick = TimberMember::steel(millimetres(16.0), megapascals(360.0), millimetres(17.0));
    /// let mixed = TimberConnection { far_side: Some(thick), ..pier };
    /// assert_eq!(mixed.resistance(&bolt, method)?.load, found.load);
    /// # Ok(())
    /// # }
    /// ```
    pub fn resistance(
        &self,
        bolt: &BoltStrength,
        method: TimberMethod,
    ) -> Result<TimberResistance, Error> {
        check_diameter(self.diameter, method)?;
        method.check_factors()?;
        for member in self.members() {
            member.check(self.diameter)?;
        }
        not_negative("gap between the members", self.gap)?;
        if self.gap.value > 0.0 {
            sane_length("gap between the members", self.gap)?;
        }
        if self.main.is_steel() && self.sides().any(TimberMember::is_steel) {
            let problem = if self.members().all(TimberMember::is_steel) {
                "no member of the joint is timber"
            } else {
                "steel lies on steel at a shear plane of the timber joint"
            };
            return Err(Error::Mismatch(problem.into()));
        }
        match method {
            TimberMethod::Nds {
                bending_yield,
                adjustment,
            } => {
                let greatest = nds_bending_yield(bolt)?;
                // Stresses come from ksi or MPa: the same one may differ in the last digit.
                if bending_yield > greatest * (1.0 + 1e-9) {
                    let allowed = Allowed::AtMost(greatest.into());
                    let name = "bending yield strength of the bolt";
                    return Err(out_of_range(name, bending_yield, allowed));
                }
                nds::resistance(self, bending_yield, adjustment)
            }
            TimberMethod::En1995 {
                axial,
                kmod,
                gamma_m,
            } => {
                // The nominal strength of the steel code, as its sister takes it; other bolts have but their own.
                let tensile = en_1993::tensile_strength_if_listed(bolt.grade)
                    .unwrap_or(bolt.tensile_strength);
                en::resistance(self, tensile, axial, kmod / gamma_m, method)
            }
        }
    }

    /// Number of shear planes.
    ///
    /// ```
    /// # use shankline::strength::timber::TimberConnection;
    /// fn double(joint: &TimberConnection) -> bool {
    ///     joint.planes() == 2
    /// }
    /// ```
    #[must_use]
    pub const fn planes(&self) -> u8 {
        if self.far_side.is_some() { 2 } else { 1 }
    }

    /// The slenderness l/D by which NDS 12.5.1 spaces rows of bolts: the lesser of the main member's and of the
    /// side members', the latter two together. Plates have none.
    ///
    /// `diameter` is the nominal one. Source: errata to the NDS 2018 and prior, July 2020, read in a reproduction.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are not positive and finite; [`Error::Mismatch`] if no member is timber.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{TimberConnection, TimberMember};
    /// use shankline::{tables::timber::Timber, units::degrees};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pine = Timber::find("Southern Pine")?;
    /// let rail = TimberMember::wood(inches(1.5), pine, degrees(0.0));
    /// let fence = TimberConnection {
    ///     diameter: inches(0.5),
    ///     main: TimberMember::wood(inches(3.5), pine, degrees(90.0)),
    ///     side: rail,
    ///     far_side: Some(rail),
    ///     gap: inches(0.0),
    /// };
    /// assert!((fence.slenderness(inches(0.5))?.value - 6.0).abs() < 1e-12); // 2 x 1.5 in, not 3.5 in
    /// # Ok(())
    /// # }
    /// ```
    pub fn slenderness(&self, diameter: Length) -> Result<Ratio, Error> {
        sane_length("bolt diameter", diameter)?;
        for member in self.members() {
            sane_length("thickness of a member", member.thickness)?;
        }
        let timber = |member: &&TimberMember| !member.is_steel();
        let sides = self.sides().filter(timber).map(|side| side.thickness);
        let sides = sides.reduce(|sum, side| sum + side);
        let main = Some(&self.main).filter(timber).map(|main| main.thickness);
        [main, sides]
            .into_iter()
            .flatten()
            .reduce(|least, length| if length < least { length } else { least })
            .map(|length| length / diameter)
            .ok_or_else(|| Error::Mismatch("no member of the joint is timber".into()))
    }

    /// The outer members.
    fn sides(&self) -> impl Iterator<Item = &TimberMember> {
        core::iter::once(&self.side).chain(&self.far_side)
    }

    fn members(&self) -> impl Iterator<Item = &TimberMember> {
        core::iter::once(&self.main).chain(self.sides())
    }

    /// Of gravities and densities that were recalled.
    fn cautions(&self) -> Cautions {
        self.members().fold(Cautions::default(), |all, member| {
            all.with(member.caution())
        })
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

#[cfg(test)]
mod tests;
