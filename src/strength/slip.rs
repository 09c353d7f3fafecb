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
mod tests {
    use super::*;
    use crate::error::Amount;
    use crate::strength::shear::AiscEdition;
    use crate::units::{kip, newtons, pounds_force};
    use alloc::string::ToString;
    use proptest::prelude::*;

    fn standard(count: usize) -> SlipFaces {
        SlipFaces::new(count, SlipHole::Standard)
    }

    /// Of the kind that the method takes.
    fn of(method: SlipMethod, force: Force) -> SlipPreload {
        if method.wants_specified_preload() {
            SlipPreload::Specified(force)
        } else {
            SlipPreload::Least(force)
        }
    }

    /// Quimby, A Beginner's Guide to the Steel Construction Manual, 13th ed., Example 4.1 (AISC
    /// 360-05): eleven 3/4 in A325, class A: 11.1 a bolt, 122 in all, 81.2 kip allowable.
    #[test]
    fn published_splice() {
        let method = SlipMethod::Aisc360 {
            edition: AiscEdition::E2005,
            class: SlipClass::A,
        };
        let slip = slip_resistance(
            method,
            SlipPreload::Specified(pounds_force(28e3)),
            standard(1),
            newtons(0.0),
        )
        .unwrap();
        let at = |level| slip.resistance.at(level).unwrap().get::<kip>();
        assert!((at(Level::Nominal) - 11.1).abs() < 0.05);
        assert!((11.0 * at(Level::Design) - 122.0).abs() < 0.5);
        assert!((11.0 * at(Level::Allowable) - 81.2).abs() < 0.05);
    }

    /// Each kind of hole, factor and treatment of IS 800, and what of them was recalled.
    #[test]
    fn holes_and_factors_of_is_800() {
        let of = |surface, serviceability, hole| {
            let method = SlipMethod::Is800 {
                surface,
                serviceability,
            };
            let found = slip_resistance(
                method,
                SlipPreload::Specified(newtons(1e5)),
                SlipFaces::new(2, hole),
                newtons(0.0),
            );
            let found = found.unwrap();
            let design = found.resistance.at(Level::Design).unwrap().value;
            (design / 2e5, found.cautions().iter().count())
        };
        for (hole, kh) in [
            (SlipHole::Standard, 1.0),
            (SlipHole::Oversize, 0.85),
            (SlipHole::ShortSlotAcross, 0.85),
            (SlipHole::ShortSlotAlong, 0.85),
            (SlipHole::LongSlotAcross, 0.85),
            (SlipHole::LongSlotAlong, 0.7),
        ] {
            for (surface, mu, unread) in [
                (Is800Surface::Untreated, 0.20, 0),
                (Is800Surface::CleanMillScale, 0.33, 1),
                (Is800Surface::Blasted, 0.50, 1),
                (Is800Surface::SprayedZinc, 0.25, 1),
                (Is800Surface::SprayedAluminium, 0.50, 1),
                (Is800Surface::ZincSilicate, 0.30, 1),
                (Is800Surface::Galvanized, 0.10, 1),
                (Is800Surface::RedLead, 0.10, 1),
            ] {
                let (ultimate, cautions) = of(surface, false, hole);
                assert!(
                    (ultimate - mu * kh / 1.25).abs() < 1e-12,
                    "{surface} {hole:?}"
                );
                assert_eq!(cautions, unread, "{surface}");
                let (service, cautions) = of(surface, true, hole);
                assert!(
                    (service - mu * kh / 1.10).abs() < 1e-12,
                    "{surface} {hole:?}"
                );
                assert_eq!(cautions, 1, "{surface}");
            }
        }
    }

    /// IS 800 10.4.6 at its ends: without tension all is left, and Tdf = 0.9 fub Anb / 1.25 leaves nothing.
    #[test]
    fn ellipse_of_is_800() {
        let method = SlipMethod::Is800 {
            surface: Is800Surface::Untreated,
            serviceability: false,
        };
        let left = |tension: f64| {
            slip_resistance(
                method,
                of(method, newtons(0.7e5)),
                standard(1),
                newtons(tension),
            )
            .map(|found| found.resistance.at(Level::Design).unwrap().value / (0.2 * 0.7e5 / 1.25))
        };
        let most = 0.9e5 / 1.25;
        for part in [0.0, 0.3, 0.6, 0.8, 0.999] {
            let found = left(part * most).unwrap();
            assert!((found * found + part * part - 1.0).abs() < 1e-12, "{part}");
        }
        assert!(left(1.0001 * most).is_err());
        assert!(left(1.2 * most).is_err());
    }

    /// Each kind of hole by BS 5950-1 and AS 4100, their factors, and the levels they give.
    #[test]
    fn holes_and_factors_of_bs_5950_and_as_4100() {
        let of = |method: SlipMethod, hole| {
            let preload = SlipPreload::Specified(newtons(1e5));
            let found = slip_resistance(method, preload, SlipFaces::new(2, hole), newtons(0.0));
            let found = found.unwrap();
            // Both have recalled parts always.
            assert_eq!(found.cautions().iter().count(), 1);
            assert_eq!(
                found.resistance.nominal.is_some(),
                method.levels().contains(&Level::Nominal)
            );
            assert!(found.resistance.allowable.is_none());
            found.resistance.at(Level::Design).unwrap().value / 2e5
        };
        for (hole, ks, kh) in [
            (SlipHole::Standard, 1.0, 1.0),
            (SlipHole::Oversize, 0.85, 0.85),
            (SlipHole::ShortSlotAcross, 0.85, 0.85),
            (SlipHole::ShortSlotAlong, 0.85, 0.85),
            (SlipHole::LongSlotAcross, 0.85, 0.7),
            (SlipHole::LongSlotAlong, 0.6, 0.7),
        ] {
            for (class, mu) in [
                (SlipClass::A, 0.5),
                (SlipClass::B, 0.4),
                (SlipClass::C, 0.3),
                (SlipClass::D, 0.2),
            ] {
                for (serviceability, factor) in [(false, 0.9), (true, 1.1)] {
                    let method = SlipMethod::Bs5950 {
                        class,
                        serviceability,
                    };
                    assert!(
                        (of(method, hole) - factor * ks * mu).abs() < 1e-12,
                        "{hole:?}"
                    );
                    assert_eq!(method.wants_factored_loads(Level::Design), !serviceability);
                }
            }
            let rolled = SlipMethod::As4100 {
                faces: As4100Faces::AsRolled,
            };
            assert!(
                (of(rolled, hole) - 0.7 * 0.35 * kh).abs() < 1e-12,
                "{hole:?}"
            );
            assert!(!rolled.wants_factored_loads(Level::Design));
        }
    }

    /// What tension leaves by BS 5950-1 6.4.4 and AS 4100 9.3.3.3 (recalled), and the workings of both.
    #[test]
    fn lines_of_bs_5950_and_as_4100() {
        let bs = |serviceability| SlipMethod::Bs5950 {
            class: SlipClass::C,
            serviceability,
        };
        let rolled = SlipMethod::As4100 {
            faces: As4100Faces::AsRolled,
        };
        for (method, most) in [(bs(false), 0.9), (bs(true), 1.1), (rolled, 0.7)] {
            let left = |tension: f64| {
                let force = SlipPreload::Specified(newtons(1e5));
                slip_resistance(method, force, standard(1), newtons(tension)).map(|found| {
                    found.derivation().check().unwrap();
                    found.resistance.at(Level::Design).unwrap().value
                })
            };
            let whole = left(0.0).unwrap();
            let half = left(0.5e5 * most).unwrap();
            assert!((half / whole - 0.5).abs() < 1e-12, "{method}");
            assert!(left(1.0001e5 * most).is_err(), "{method}");
        }
    }

    #[test]
    fn fillers_that_nobody_read_of_are_refused() {
        let methods = [
            SlipMethod::Is800 {
                surface: Is800Surface::Untreated,
                serviceability: false,
            },
            SlipMethod::Bs5950 {
                class: SlipClass::D,
                serviceability: false,
            },
            SlipMethod::As4100 {
                faces: As4100Faces::AsRolled,
            },
        ];
        for method in methods {
            let faces = SlipFaces {
                fillers: 1,
                ..standard(1)
            };
            let found = slip_resistance(method, of(method, newtons(1e5)), faces, newtons(0.0));
            assert!(matches!(found, Err(Error::NoValue { .. })), "{method}");
        }
    }

    /// AISC 360-05 J3.8 (recalled): slip in oversize holes and along slots is excluded at the required strength
    /// level, 0.85 and 1.76, beside the hole factor.
    #[test]
    fn strength_level_of_2005() {
        for (hole, hsc, phi, omega, cautions) in [
            (SlipHole::Standard, 1.00, 1.00, 1.50, 0),
            (SlipHole::Oversize, 0.85, 0.85, 1.76, 1),
            (SlipHole::ShortSlotAcross, 0.85, 1.00, 1.50, 0),
            (SlipHole::ShortSlotAlong, 0.85, 0.85, 1.76, 1),
            (SlipHole::LongSlotAcross, 0.70, 1.00, 1.50, 0),
            (SlipHole::LongSlotAlong, 0.70, 0.85, 1.76, 1),
        ] {
            let method = SlipMethod::Aisc360 {
                edition: AiscEdition::E2005,
                class: SlipClass::A,
            };
            let slip = slip_resistance(
                method,
                of(method, newtons(1e5)),
                SlipFaces::new(2, hole),
                newtons(0.0),
            )
            .unwrap();
            let nominal = 0.35 * 1.13 * hsc * 2.0 * 1e5;
            for (level, expected) in [
                (Level::Nominal, nominal),
                (Level::Design, phi * nominal),
                (Level::Allowable, nominal / omega),
            ] {
                let found = slip.resistance.at(level).unwrap().value;
                assert!((found / expected - 1.0).abs() < 1e-12, "{hole:?} {level}");
            }
            assert_eq!(slip.cautions().iter().count(), cautions, "{hole:?}");
        }
    }

    /// The greatest tension a refusal names is the one at which the clamp force is gone.
    #[test]
    fn refusal_names_the_tension_that_opens_the_joint() {
        let aisc = SlipMethod::Aisc360 {
            edition: AiscEdition::E2010,
            class: SlipClass::A,
        };
        let en = SlipMethod::En1993 {
            class: SlipClass::A,
            serviceability: false,
        };
        let stated = SlipMethod::Stated {
            friction: 0.2,
            safety_factor: 1.5,
        };
        let limit = |error| match error {
            Error::OutOfRange {
                allowed: Allowed::AtMost(Amount::Force(most)),
                ..
            } => most.value,
            other => panic!("{other}"),
        };
        for (method, share) in [(aisc, 1.13), (en, 1.25), (stated, 1.0)] {
            for tension in [3e5, 1e60] {
                let error = slip_resistance(
                    method,
                    of(method, newtons(1e5)),
                    standard(1),
                    newtons(tension),
                );
                assert!((limit(error.unwrap_err()) / (share * 1e5) - 1.0).abs() < 1e-12);
            }
        }
        // 0.9 of the preload leaves clamp force for design loads and none for service loads.
        let slip =
            slip_resistance(aisc, of(aisc, newtons(1e5)), standard(1), newtons(9e4)).unwrap();
        assert!(slip.check(newtons(1.0), Level::Design).is_ok());
        let error = slip.check(newtons(1.0), Level::Allowable).unwrap_err();
        assert!((limit(error) / (1.13 / 1.5 * 1e5) - 1.0).abs() < 1e-12);
    }

    proptest! {
        #[test]
        fn grows_with_preload_and_falls_with_tension(
            preload in 1.0..1e6f64, tension in 0.0..1e6f64, faces in 1..9usize, mu in 0.05..0.8f64,
        ) {
            let methods = [
                SlipMethod::Stated { friction: mu, safety_factor: 1.5 },
                SlipMethod::En1993 { class: SlipClass::C, serviceability: true },
                SlipMethod::Is800 { surface: Is800Surface::Untreated, serviceability: false },
                SlipMethod::As4100 { faces: As4100Faces::Tested { slip_factor: mu } },
                SlipMethod::Aisc360 {
                    edition: AiscEdition::E2016, class: SlipClass::B,
                },
            ];
            for method in methods {
                let nominal = |preload: f64, tension: f64| {
                    slip_resistance(method, of(method, newtons(preload)), standard(faces), newtons(tension))
                        .map(|slip| slip.resistance.nominal.unwrap().value)
                };
                let whole = nominal(preload, 0.0).unwrap();
                prop_assert!(nominal(2.0 * preload, 0.0).unwrap() > whole);
                if let Ok(less) = nominal(preload, tension) {
                    prop_assert!(less <= whole);
                    let slip = slip_resistance(method, of(method, newtons(preload)), standard(faces), newtons(tension)).unwrap();
                    prop_assert!(slip.derivation().check().is_ok());
                    let load = slip.resistance.nominal.unwrap();
                    let check = slip.check(load, Level::Nominal).unwrap();
                    prop_assert!((check.utilisation.value - 1.0).abs() < 1e-15);
                }
            }
        }

        #[test]
        fn no_number_breaks_it(p in any::<f64>(), t in any::<f64>(), mu in any::<f64>(), n in any::<f64>(), faces: usize) {
            let method = SlipMethod::Stated { friction: mu, safety_factor: n };
            if let Ok(slip) = slip_resistance(method, SlipPreload::Least(newtons(p)), standard(faces), newtons(t)) {
                prop_assert!(slip.resistance.nominal.unwrap().value > 0.0);
            }
        }
    }

    /// A pull that takes all of the clamp force leaves no resistance, at the limit itself: Fi of machine design, 1.13 Tb of AISC,
    /// of which service loads take 1.5 times as much.
    #[test]
    fn pulls_that_leave_no_clamp_force() {
        let stated = SlipMethod::Stated {
            friction: 0.2,
            safety_factor: 2.0,
        };
        let left =
            |method, preload, pull| slip_resistance(method, preload, standard(1), newtons(pull));
        let preload = SlipPreload::Least(newtons(1000.0));
        assert!(left(stated, preload, 999.0).is_ok());
        let error = left(stated, preload, 1000.0).unwrap_err().to_string();
        assert!(error.contains("which must leave clamp force"), "{error}");
        let aisc = SlipMethod::Aisc360 {
            edition: AiscEdition::E2022,
            class: SlipClass::A,
        };
        let preload = SlipPreload::Specified(newtons(1500.0));
        for (pull, holds) in [(1129.0, true), (1130.0, false), (1131.0, false)] {
            let found = left(aisc, preload, pull).unwrap();
            assert_eq!(found.resistance.allowable.is_some(), holds, "{pull}");
            assert!(found.check(newtons(0.1), Level::Design).is_ok());
            match found.check(newtons(0.1), Level::Allowable) {
                Ok(_) => assert!(holds, "{pull}"),
                Err(error) => {
                    let text = error.to_string();
                    assert!(
                        !holds && text.contains("which must leave clamp force"),
                        "{pull}: {text}"
                    );
                }
            }
        }
    }

    /// A check under a pull does not grow in proportion with the load; the interplay of EN 1993-1-8 was recalled.
    #[test]
    fn a_pull_is_told() {
        let en = SlipMethod::En1993 {
            class: SlipClass::A,
            serviceability: false,
        };
        for (pull, proportional, cautions) in [(0.0, true, 0), (1.0, false, 1)] {
            let preload = of(en, newtons(1e5));
            let found = slip_resistance(en, preload, standard(1), newtons(pull)).unwrap();
            assert_eq!(found.cautions().iter().count(), cautions);
            let check = found.check(newtons(1.0), Level::Design).unwrap();
            assert_eq!(check.proportional, proportional);
            assert_eq!(check.cautions().count(), cautions);
        }
    }

    /// IS 800 10.4.6: without a pull the ellipse and statics are one, and a load at the resistance is not beyond it; half of what
    /// the ellipse ends at, 0.9 / (1.25 x 0.7) of the preload, leaves 0.866 by it and 0.486 by statics.
    #[test]
    fn the_ellipse_goes_beyond_statics() {
        let is = SlipMethod::Is800 {
            surface: Is800Surface::Untreated,
            serviceability: false,
        };
        let found =
            |pull| slip_resistance(is, of(is, newtons(70e3)), standard(1), newtons(pull)).unwrap();
        let alone = found(0.0);
        let whole = alone.resistance.at(Level::Design).unwrap();
        assert!(!alone.is_beyond_statics(whole, Level::Design).unwrap());
        assert!(
            alone
                .is_beyond_statics(1.001 * whole, Level::Design)
                .unwrap()
        );
        let half = found(36e3);
        let by_statics = 1.0 - 36.0 / 70.0;
        assert!(
            !half
                .is_beyond_statics((by_statics - 1e-9) * whole, Level::Design)
                .unwrap()
        );
        assert!(
            half.is_beyond_statics((by_statics + 1e-9) * whole, Level::Design)
                .unwrap()
        );
        assert!(half.resistance.at(Level::Design).unwrap() > 0.866 * whole);
        // Other methods have no ellipse.
        let bs = SlipMethod::Bs5950 {
            class: SlipClass::A,
            serviceability: false,
        };
        let other = slip_resistance(bs, of(bs, newtons(70e3)), standard(1), newtons(36e3)).unwrap();
        assert!(
            !other
                .is_beyond_statics(newtons(1e6), Level::Design)
                .unwrap()
        );
    }

    /// Of holes that take as much off the first is named.
    #[test]
    fn the_worst_of_holes() {
        use SlipHole::{LongSlotAlong, Oversize, ShortSlotAlong, Standard};
        let is = SlipMethod::Is800 {
            surface: Is800Surface::Untreated,
            serviceability: false,
        };
        for (holes, worst) in [
            (&[][..], Standard),
            (&[Oversize, ShortSlotAlong], Oversize),
            (&[ShortSlotAlong, Oversize], ShortSlotAlong),
            (&[Oversize, LongSlotAlong, Standard], LongSlotAlong),
        ] {
            assert_eq!(is.worst_hole(holes.iter().copied()), worst, "{holes:?}");
        }
    }
}
