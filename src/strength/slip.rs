//! Resistance of a preloaded joint to slip: friction between the plies.
//!
//! | method | nominal | factors | known how |
//! |---|---|---|---|
//! | [`Aisc360`](SlipMethod::Aisc360), 2005 | mu 1.13 hsc Tb ns, mu 0.35 (A), 0.50 (B), hsc 1.00 / 0.85 / 0.70 | 1.0 and 1.5 (serviceability); oversize holes and slots along the load 0.85 and 1.76 (required strength) | worked example and hsc read, the second pair of factors recalled |
//! | [`Aisc360`](SlipMethod::Aisc360), 2010 on | mu 1.13 hf Tb ns, mu 0.30 (A), 0.50 (B) | by hole 1.00 / 0.85 / 0.70 and 1.50 / 1.76 / 2.14 | 2016 and 2022 read, 2010 recalled |
//! | [`En1993`](SlipMethod::En1993) | ks n mu Fp,C, mu 0.5 (A), 0.4 (B), 0.3 (C), 0.2 (D) | 1 / 1.25, in serviceability 1 / 1.1 | reproduced; ks of slots and classes recalled |
//! | [`Is800`](SlipMethod::Is800) | mu n Kh F0, mu by the treatment of the faces, Kh 1.0 / 0.85 / 0.7 | 1 / 1.25, at service loads 1 / 1.10 | reproduced; slip factors but that of untreated faces, and 1.10, recalled |
//! | [`Bs5950`](SlipMethod::Bs5950) | none: Ks mu n Po has its factor, mu 0.5 (A), 0.4 (B), 0.3 (C), 0.2 (D), Ks 1.0 / 0.85 / 0.6 | 0.9, in service 1.1 on Po and 1.0 on less | reproduced; mu, the last Ks and Po of BS 4604 recalled |
//! | [`As4100`](SlipMethod::As4100) | mu n kh Nti, mu 0.35 or by test, kh 1.0 / 0.85 / 0.7 | 0.7, in service only | reproduced; kh and Nti but of M20 recalled |
//! | [`Stated`](SlipMethod::Stated) | mu n Fi, mu the caller's | the caller's | machine design: statics |
//!
//! Tb, Fp,C and Fi are preloads per bolt, n = ns the number of friction faces. Tb is the specified pretension of
//! AISC Table J3.1, and no other: 1.13 is the mean of installed pretensions over it. Fp,C is that of EN 1993-1-8
//! or, where it is not reached, what is known to be there at least, as F0 = 0.70 fub Anb of IS 800, Po of BS 4604 and Nti of AS 4100; Fi is the least preload. Holes and fillers
//! come with [`SlipFaces`], for they are facts of the plies. Tension T on the bolt takes
//! from the clamp force: AISC multiplies by 1 - T / (1.13 Tb) for design loads and 1 - 1.5 T / (1.13 Tb)
//! for service loads (one bolt; read for 2005 and 2010), EN puts Fp,C - 0.8 T, machine design Fi - T, which holds for any
//! stiffness and is the cautious end. IS 800 10.4.6 has the ellipse of V over Vdf and T over Tdf, which allows more than the
//! clamp force that statics leaves: the check of a joint says nothing there. BS 5950-1 6.4.4 goes along a line to 1.1 Po (to what is there, where that is less than Po; 0.9 of either under
//! factored loads), AS 4100 9.3.3.3 to 0.7 Nti; both recalled.

use super::check::{Check, Level, Mode, Place, Resistance};
use alloc::format;

use crate::caution::Cautions;
use crate::error::{Allowed, Error, not_negative, out_of_range, positive};
use crate::units::Force;

mod faces;
mod method;
mod working;

pub use faces::{As4100Faces, Is800Surface};
pub(crate) use method::BEST_CLASS;
pub(in crate::strength) use method::{Numbers, fillers_unread, stated_friction};
pub use method::{SlipClass, SlipFaces, SlipHole, SlipMethod};
pub(in crate::strength) use working::{CLAMP_LEFT, Symbols};

/// The preload that a slip resistance is worked out from.
///
/// ```
/// use shankline::{strength::slip::SlipPreload, units::newtons};
/// let table = SlipPreload::Specified(newtons(125e3));
/// assert!(table.reached_by(newtons(130e3)) && !table.reached_by(newtons(120e3)));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum SlipPreload {
    /// The pretension that the code specifies: Tb of AISC Table J3.1, Fp,C of EN 1993-1-8. The least preload
    /// of the joint has to reach it.
    Specified(
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        Force,
    ),
    /// The least preload that the joint is known to have.
    Least(
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        Force,
    ),
}

impl SlipPreload {
    /// The force.
    ///
    /// ```
    /// use shankline::{strength::slip::SlipPreload, units::newtons};
    /// assert_eq!(SlipPreload::Least(newtons(5e3)).force(), newtons(5e3));
    /// ```
    #[must_use]
    pub const fn force(self) -> Force {
        match self {
            Self::Specified(force) | Self::Least(force) => force,
        }
    }

    /// Whether a joint with this least preload may count on it; what is not a number reaches nothing.
    ///
    /// ```
    /// use shankline::{strength::slip::SlipPreload, units::newtons};
    /// assert!(!SlipPreload::Specified(newtons(125e3)).reached_by(newtons(f64::NAN)));
    /// ```
    #[must_use]
    pub fn reached_by(self, least: Force) -> bool {
        least >= self.force()
    }
}

/// Slip resistance of one bolt.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::slip::{
///     SlipClass, SlipFaces, SlipHole, SlipMethod, SlipPreload, slip_resistance,
/// };
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// // 3/4 in A325, class A, one face, AISC 360-05: 11.1 kip in a published example
/// let method = SlipMethod::Aisc360 { edition: AiscEdition::E2005, class: SlipClass::A };
/// let lap = SlipFaces::new(1, SlipHole::Standard);
/// let table = SlipPreload::Specified(pounds_force(28e3)); // Table J3.1
/// let slip = slip_resistance(method, table, lap, newtons(0.0))?;
/// assert!((slip.resistance.at(Level::Nominal)?.get::<kip>() - 11.1).abs() < 0.05);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SlipResistance {
    /// The method.
    pub method: SlipMethod,
    /// Preload of the bolt.
    pub preload: SlipPreload,
    /// The friction faces.
    pub faces: SlipFaces,
    /// Tension on the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension: Force,
    /// Coefficient of friction.
    pub friction: f64,
    /// Mean installed over specified pretension: 1.13 for AISC, 1 for others.
    pub mean_over_specified: f64,
    /// What holes and fillers leave.
    pub joint_factor: f64,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
    /// What nominal resistance is multiplied by for the design resistance.
    pub resistance_factor: Option<f64>,
    /// What nominal resistance is divided by for the allowable load, beside its own share of clamp force.
    pub safety_factor: Option<f64>,
    /// Share of the clamp force that tension leaves, for design loads and for service loads.
    left: [f64; 2],
}

/// Slip resistance of one preloaded bolt.
///
/// `tension` is at the level the load will be: factored for design, service for allowable.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a preload that is not positive and finite, no friction face or more than
/// 1000, tension that is negative or leaves no clamp force; [`Error::NoValue`] for a class the code does
/// not have; [`Error::Mismatch`] for the least preload of a joint where the method takes the specified one, and
/// for a specified one beside friction as stated.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::slip::{SlipFaces, SlipHole, SlipMethod, SlipPreload, slip_resistance};
/// # fn main() -> Result<(), shankline::Error> {
/// let dry = SlipMethod::Stated { friction: 0.15, safety_factor: 1.5 };
/// let (least, faces) = (SlipPreload::Least(newtons(40e3)), SlipFaces::new(2, SlipHole::Standard));
/// let slip = slip_resistance(dry, least, faces, newtons(0.0))?;
/// assert!((slip.resistance.at(Level::Allowable)? - newtons(8e3)).abs() < newtons(1e-6));
/// assert!(slip_resistance(dry, least, faces, newtons(40e3)).is_err());
/// # Ok(())
/// # }
/// ```
pub fn slip_resistance(
    method: SlipMethod,
    preload: SlipPreload,
    faces: SlipFaces,
    tension: Force,
) -> Result<SlipResistance, Error> {
    const MOST_FACES: usize = 1000;
    let force = positive("preload", preload.force())?;
    not_negative("tension on the bolt", tension)?;
    if !(1..=MOST_FACES).contains(&faces.count) {
        let allowed = Allowed::FromTo(1_usize.into(), MOST_FACES.into());
        return Err(out_of_range(
            "number of friction faces",
            faces.count,
            allowed,
        ));
    }
    match (method, preload) {
        (SlipMethod::Aisc360 { .. }, SlipPreload::Least(_)) => {
            return Err(Error::Mismatch(format!(
                "{method} multiplies the specified pretension of Table J3.1 by 1.13, not the least preload of a joint"
            )));
        }
        (SlipMethod::Stated { .. }, SlipPreload::Specified(_)) => {
            return Err(Error::Mismatch(
                "friction as stated goes with the least preload that the joint is known to have"
                    .into(),
            ));
        }
        _ => (),
    }
    let numbers = method.numbers(faces, preload)?;
    let used = (tension / force).value;
    let [design, service] = method.left(used, preload);
    if design <= 0.0 {
        return Err(no_clamp_left(tension, force / method.taken_off(preload)[0]));
    }
    // At most 1000: exact.
    #[allow(clippy::cast_precision_loss)]
    let count = faces.count as f64;
    let whole = numbers.mean * numbers.joint * numbers.friction * count * force;
    let resistance = Resistance::from_levels(
        method
            .levels()
            .contains(&Level::Nominal)
            .then(|| design * whole),
        numbers.resistance.map(|factor| factor * design * whole),
        numbers
            .safety
            .filter(|_| service > 0.0)
            .map(|factor| service * whole / factor),
    )?;
    Ok(SlipResistance {
        method,
        preload,
        faces,
        tension,
        friction: numbers.friction,
        mean_over_specified: numbers.mean,
        joint_factor: numbers.joint,
        resistance,
        resistance_factor: numbers.resistance,
        safety_factor: numbers.safety,
        left: [design, service],
    })
}

#[cold]
fn no_clamp_left(tension: Force, limit: Force) -> Error {
    out_of_range(
        "tension on the bolt, which must leave clamp force,",
        tension,
        Allowed::AtMost(limit.into()),
    )
}

impl SlipResistance {
    /// Checks a load on the bolt against its slip resistance.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a
    /// load that is negative or not finite, or a tension that leaves no clamp force at that level.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::{Level, Mode};
    /// use shankline::strength::slip::{SlipFaces, SlipHole, SlipMethod, SlipPreload, slip_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = SlipMethod::Stated { friction: 0.15, safety_factor: 1.5 };
    /// let (least, faces) = (SlipPreload::Least(newtons(40e3)), SlipFaces::new(2, SlipHole::Standard));
    /// let slip = slip_resistance(dry, least, faces, newtons(0.0))?;
    /// let check = slip.check(newtons(4e3), Level::Allowable)?;
    /// assert_eq!(check.mode, Mode::Slip);
    /// assert!((check.utilisation.value - 0.5).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn check(&self, load: Force, level: Level) -> Result<Check, Error> {
        let [_, service] = self.left;
        if level == Level::Allowable && self.safety_factor.is_some() && service <= 0.0 {
            let most = self.preload.force() / self.method.taken_off(self.preload)[1];
            return Err(no_clamp_left(self.tension, most));
        }
        let resistance = self.resistance.at(level)?;
        let check = Check::new(
            Mode::Slip,
            Place::Joint,
            load,
            resistance,
            level,
            self.method.method(),
        )?;
        let check = check.warned(self.cautions());
        // A pull that grows with the load leaves less to hold it.
        Ok(if self.tension > Force::default() {
            check.not_proportional()
        } else {
            check
        })
    }

    /// Whether a load is more than the clamp force would hold that statics leaves, the preload less the tension: where an
    /// ellipse allows it all the same.
    pub(crate) fn is_beyond_statics(&self, load: Force, level: Level) -> Result<bool, Error> {
        // The ellipse has no allowable loads.
        let [left, _] = self.left;
        let whole = self.resistance.at(level)? / left;
        let by_statics = 1.0 - (self.tension / self.preload.force()).value;
        Ok(self.method.is_ellipse() && load > by_statics * whole)
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::slip::{SlipFaces, SlipHole, SlipMethod, SlipPreload, slip_resistance};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let dry = SlipMethod::Stated { friction: 0.15, safety_factor: 1.5 };
    /// let (least, faces) = (SlipPreload::Least(newtons(40e3)), SlipFaces::new(1, SlipHole::Standard));
    /// assert_eq!(slip_resistance(dry, least, faces, newtons(0.0))?.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.method
            .cautions(self.faces.hole, self.tension > Force::default())
    }
}

#[cfg(test)]
mod tests;
