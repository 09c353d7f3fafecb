//! Resistance of a bolt with any number of planes, loaded alike or not.

use alloc::{format, string::ToString, vec::Vec};

use super::ShearMethod;
use super::facts::{ConnectionFacts, ReductionNeeds};
use super::reductions::{AppliedReductions, recalled};
use crate::caution::Cautions;
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::{BoltGrade, BoltStrength};
use crate::parts::Zone;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::code::Factors;
use crate::strength::section::{Origins, Section, StressOf};
use crate::thread::Thread;
use crate::units::{Area, Force, Stress};

/// One shear plane: which it is, what it cuts, and its share of the load on the bolt.
///
/// Shares come from statics: the force in plane k is the sum of the ply loads up to it. In double
/// shear each plane has one half; five plates pulled in turn may load a plane with the whole.
///
/// ```
/// use shankline::{parts::Zone, strength::shear::LoadedPlane};
/// let planes = LoadedPlane::equal(&[Zone::Shank, Zone::Thread]);
/// assert_eq!((planes[1].number, planes[1].share), (2, 0.5));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct LoadedPlane {
    /// Which plane of the joint it is, counted from the head, from 1: the name it has in results.
    pub number: usize,
    /// What the plane cuts; run-out counts as thread.
    pub zone: Zone,
    /// Force in the plane over load on the bolt, without sign.
    pub share: f64,
}

impl LoadedPlane {
    /// All planes of a bolt, from the head, that carry the load in equal shares.
    ///
    /// ```
    /// use shankline::{parts::Zone, strength::shear::LoadedPlane};
    /// assert_eq!(LoadedPlane::equal(&[Zone::Shank])[0].share, 1.0);
    /// ```
    #[must_use]
    pub fn equal(zones: &[Zone]) -> Vec<Self> {
        // At most a few planes: exact in f64.
        #[allow(clippy::cast_precision_loss)]
        let share = 1.0 / zones.len() as f64;
        (1..)
            .zip(zones)
            .map(|(number, &zone)| Self {
                number,
                zone,
                share,
            })
            .collect()
    }
}

/// How the planes of one bolt are put together.
///
/// ```
/// use shankline::strength::shear::PlaneRule;
/// assert_eq!(PlaneRule::default(), PlaneRule::Each);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum PlaneRule {
    /// Every plane carries its share: the first to fail governs.
    #[default]
    Each,
    /// The resistances of the planes are added, as AS 4100, IS 800 and CSA S16 do: once the weaker
    /// plane has yielded the stronger takes more. For planes loaded alike only, whose shares make up
    /// the load: where plates pulled in turn load every plane with the whole, none can take from another.
    Sum,
}

/// Shear resistance of one bolt.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
/// use shankline::uom::si::force::kilonewton;
/// # fn main() -> Result<(), shankline::Error> {
/// // M20 class 8.8, threads in the plane: 94 kN (Steel Buildings in Europe, part 5)
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// let planes = LoadedPlane::equal(&[Zone::Thread]);
/// let none = ConnectionFacts::default();
/// let shear = shear_resistance(&thread, &strength, &planes, PlaneRule::Each, ShearMethod::En1993, &none)?;
/// assert!((shear.resistance.at(Level::Design)?.get::<kilonewton>() - 94.0).abs() < 0.5);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ShearResistance {
    /// The method.
    pub method: ShearMethod,
    /// The bolt material.
    pub grade: BoltGrade,
    /// How the planes were put together.
    pub rule: PlaneRule,
    /// Number of shear planes.
    pub planes: usize,
    /// The number of the plane that fails first.
    pub governing_plane: usize,
    /// What that plane cuts.
    pub governing_zone: Zone,
    /// Its share of the load.
    pub governing_share: f64,
    /// The area that plane is taken on.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    /// The stress the method allows on that area, before reductions.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress: Stress,
    /// The connection as it was described.
    pub facts: ConnectionFacts,
    /// What was taken off.
    pub reductions: AppliedReductions,
    /// Facts of the connection that were not given and for which this method may lower the capacity: until
    /// they are known the resistance is not safe to use.
    pub unknown: ReductionNeeds,
    /// Whether the bolt stands in a hole for which EN 1993-1-8 3.6.1(5) wants
    /// [`bearing_governs`](Self::bearing_governs).
    pub bearing_must_govern: bool,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load.
    pub safety_factor: Option<f64>,
    /// Resistance of the governing plane.
    pub plane: Resistance,
    /// Resistance of the bolt: the load on the bolt as a whole.
    pub resistance: Resistance,
    #[cfg_attr(feature = "serde", serde(skip))]
    any_in_thread: bool,
    #[cfg_attr(feature = "serde", serde(skip))]
    pub(super) origins: Origins,
}

impl ShearResistance {
    /// What the user of this resistance must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::shear::{ConnectionFacts, JointLength, LoadedPlane, PlaneRule, shear_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
    /// let long = ConnectionFacts { joint_length: JointLength::Known(millimetres(400.0)), ..ConnectionFacts::default() };
    /// let planes = LoadedPlane::equal(&[Zone::Thread]);
    /// let shear = shear_resistance(&thread, &strength, &planes, PlaneRule::Each, ShearMethod::Is800, &long)?;
    /// assert_eq!(shear.reductions.long_joint, 0.975);
    /// assert_eq!(shear.cautions().iter().count(), 1); // the reduction was recalled
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.method
            .cautions(self.grade, self.any_in_thread)
            .and(recalled(
                self.method,
                &self.reductions,
                self.bearing_must_govern,
            ))
    }

    /// Whether the design bearing resistance of the plies at this bolt does not exceed its design shear
    /// resistance, both for the load on the bolt as a whole. EN 1993-1-8 3.6.1(5) allows M12 and M14 in holes
    /// with 2 mm of clearance only so ([`bearing_must_govern`](Self::bearing_must_govern)); of a group it
    /// compares the sums.
    ///
    /// Source: EN 1993-1-8:2005 3.6.1(5), the condition recalled.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a resistance that is not positive and finite; [`Error::NoValue`] if the method
    /// has no design resistance.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // M12 of class 8.8 in a 14 mm hole, shank in the plane: 36.9 kN
    /// let thread: Thread = "M12".parse()?;
    /// let strength = PropertyClass::Class8_8.strength(millimetres(12.0))?;
    /// let planes = LoadedPlane::equal(&[Zone::Shank]);
    /// let wide = ConnectionFacts::single_bolt(millimetres(35.0), millimetres(14.0));
    /// let shear = shear_resistance(&thread, &strength, &planes, PlaneRule::Each, ShearMethod::En1993, &wide)?;
    /// assert!(shear.bearing_must_govern);
    /// assert!(shear.bearing_governs(newtons(36e3))?);
    /// assert!(!shear.bearing_governs(newtons(60e3))?); // thick plies: this bolt may not stand in that hole
    /// # Ok(())
    /// # }
    /// ```
    pub fn bearing_governs(&self, bearing: Force) -> Result<bool, Error> {
        let bearing = positive("bearing resistance", bearing)?;
        Ok(bearing <= self.resistance.at(Level::Design)?)
    }

    /// Checks a load on the bolt against its resistance.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a
    /// load that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::{Level, Place};
    /// use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M20".parse()?;
    /// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
    /// let planes = LoadedPlane::equal(&[Zone::Shank, Zone::Thread]);
    /// let none = ConnectionFacts::default();
    /// let shear = shear_resistance(&thread, &strength, &planes, PlaneRule::Each, ShearMethod::En1993, &none)?;
    /// let check = shear.check(newtons(150e3), Level::Design)?;
    /// assert_eq!(check.place, Place::Plane(2));
    /// assert!((check.utilisation.value - 0.798).abs() < 0.0005);
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force, level: Level) -> Result<Check, Error> {
        let place = match self.rule {
            PlaneRule::Each => Place::Plane(self.governing_plane),
            PlaneRule::Sum => Place::Bolt(1),
        };
        let resistance = self.resistance.at(level)?;
        let check = Check::new(
            Mode::BoltShear,
            place,
            load,
            resistance,
            level,
            self.method.method(),
        )?;
        Ok(check.warned(self.cautions()))
    }
}

/// Shear resistance of one bolt by any method.
///
/// [`PlaneRule::Each`]: F = min(Rk / sk), Rk the resistance of plane k by what it cuts, sk its share.
/// [`PlaneRule::Sum`]: F = sum of Rk. For a plane in the thread and one in the shank the sum
/// is R1 + R2, the check of each 2 min(R1, R2).
///
/// Sources: see [`ShearMethod`] and [`ConnectionFacts`].
///
/// # Errors
///
/// [`Error::OutOfRange`] without planes, for a share that is not from 0 to 1 or planes that are all
/// without load, for a factor of the method below 1, for a length that makes no sense or lies beyond what
/// the code covers, for a hole smaller than the bolt; [`Error::NoValue`] if the method lists no such bolt; [`Error::Mismatch`] if the
/// strengths hold for another diameter, or if planes are to be added that are not loaded alike,
/// whose shares do not make up the load, or not by a code that adds them.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::shear::{ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class4_6.strength(millimetres(20.0))?;
/// let planes = LoadedPlane::equal(&[Zone::Thread, Zone::Shank]);
/// let load = |rule| {
///     shear_resistance(&thread, &strength, &planes, rule, ShearMethod::As4100, &ConnectionFacts::default())?
///         .resistance
///         .at(Level::Design)
/// };
/// // AS 4100 adds 44.6 and 62.3 kN; the check of each plane gives twice 44.6 kN.
/// assert!(load(PlaneRule::Sum)? > load(PlaneRule::Each)?);
/// # Ok(())
/// # }
/// ```
pub fn shear_resistance(
    thread: &Thread,
    strength: &BoltStrength,
    planes: &[LoadedPlane],
    rule: PlaneRule,
    method: ShearMethod,
    facts: &ConnectionFacts,
) -> Result<ShearResistance, Error> {
    resistance(thread, strength, planes, rule, method, facts, Ok)
}

/// The same on the tensile stress area as the tables print it (M20 245 mm2, by the formula 244.79 mm2), as the
/// printed resistances of codes and handbooks are worked out.
///
/// Planes in the shank, and methods on the shank or the core, come out as by [`shear_resistance`].
///
/// Source of the areas: [`Thread::provenance`].
///
/// # Errors
///
/// As [`shear_resistance`]; [`Error::NoValue`] for a special thread, which no table has.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::shear::{
///     ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance_on_printed_area,
/// };
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M20".parse()?;
/// let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
/// let planes = LoadedPlane::equal(&[Zone::Thread]);
/// let (each, none) = (PlaneRule::Each, ConnectionFacts::default());
/// let method = ShearMethod::En1993;
/// let shear = shear_resistance_on_printed_area(&thread, &strength, &planes, each, method, &none)?;
/// let printed = shear.resistance.at(Level::Design)?;
/// assert!((printed - newtons(94_080.0)).abs() < newtons(0.5)); // 0.6 x 800 x 245 / 1.25
/// # Ok(())
/// # }
/// ```
pub fn shear_resistance_on_printed_area(
    thread: &Thread,
    strength: &BoltStrength,
    planes: &[LoadedPlane],
    rule: PlaneRule,
    method: ShearMethod,
    facts: &ConnectionFacts,
) -> Result<ShearResistance, Error> {
    let printed = |section: Section| section.as_printed(thread);
    resistance(thread, strength, planes, rule, method, facts, printed)
}

fn resistance(
    thread: &Thread,
    strength: &BoltStrength,
    planes: &[LoadedPlane],
    rule: PlaneRule,
    method: ShearMethod,
    facts: &ConnectionFacts,
    taken: impl Fn(Section) -> Result<Section, Error>,
) -> Result<ShearResistance, Error> {
    let factors = method.factors()?;
    strength.matches(thread)?;
    let mut sum = 0.0;
    let mut worst: Option<Plane> = None;
    for plane in planes {
        if !(0.0..=1.0).contains(&plane.share) {
            let name = format!("share of shear plane {}", plane.number);
            let allowed = Allowed::FromTo(0.0.into(), 1.0.into());
            return Err(out_of_range(name, plane.share, allowed));
        }
        let (stress, section) = method.plane(strength, plane.zone)?;
        let section = taken(section)?;
        let area = section.area(thread);
        let load = stress.stress * area;
        sum += load.value;
        // A plane without load never gives; times the other's share, so as not to divide by it.
        let weaker =
            worst.is_none_or(|worst| worst.cut.share * load.value < plane.share * worst.load.value);
        if weaker {
            worst = Some(Plane {
                cut: *plane,
                stress,
                section,
                area,
                load,
            });
        }
    }
    let worst = governing(worst, planes.len())?;
    let taken_off = facts.factors(method, thread, strength.grade)?;
    let reductions = taken_off.applied();
    let plane = factors.resistance(worst.load).times(reductions.product());
    let times = match rule {
        PlaneRule::Each => 1.0 / worst.cut.share,
        PlaneRule::Sum => {
            may_add(method, planes)?;
            sum / worst.load.value
        }
    };
    let Factors {
        resistance, safety, ..
    } = factors;
    Ok(ShearResistance {
        method,
        grade: strength.grade,
        rule,
        planes: planes.len(),
        governing_plane: worst.cut.number,
        governing_zone: worst.cut.zone,
        governing_share: worst.cut.share,
        area: worst.area,
        stress: worst.stress.stress,
        facts: *facts,
        reductions,
        unknown: facts.unknown(method.needs(thread, strength.grade)),
        bearing_must_govern: taken_off.wide_hole,
        resistance_factor: resistance,
        safety_factor: safety,
        plane: plane.sound()?,
        resistance: plane.times(times).sound()?,
        any_in_thread: planes.iter().any(|plane| plane.zone != Zone::Shank),
        origins: Origins {
            thread: *thread,
            section: worst.section,
            stress: worst.stress,
            strengths: strength.provenance,
        },
    })
}

#[derive(Clone, Copy)]
struct Plane {
    cut: LoadedPlane,
    stress: StressOf,
    section: Section,
    area: Area,
    load: Force,
}

fn governing(worst: Option<Plane>, planes: usize) -> Result<Plane, Error> {
    let Some(worst) = worst else {
        let allowed = Allowed::AtLeast(1_usize.into());
        return Err(out_of_range("number of shear planes", planes, allowed));
    };
    if worst.cut.share > 0.0 {
        Ok(worst)
    } else {
        let share = worst.cut.share;
        Err(out_of_range(
            "greatest share of a shear plane",
            share,
            Allowed::Positive,
        ))
    }
}

fn may_add(method: ShearMethod, planes: &[LoadedPlane]) -> Result<(), Error> {
    if !method.adds_planes() {
        return Err(Error::Mismatch(format!(
            "{method} checks every shear plane and does not add them"
        )));
    }
    let first = planes.first().map_or(0.0, |plane| plane.share);
    let total: f64 = planes.iter().map(|plane| plane.share).sum();
    if planes
        .iter()
        .any(|plane| (plane.share - first).abs() > 1e-9)
        || (total - 1.0).abs() > 1e-6
    {
        return Err(Error::Mismatch(
            "shear planes are added only if they are loaded alike and share the load between them"
                .to_string(),
        ));
    }
    Ok(())
}

#[cfg(test)]
mod tests;
