//! Fatigue of bolts by EN 1993-1-9: stress ranges, whatever the preload.

use alloc::format;

use super::{sane_load, sane_stress};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::material::{BoltGrade, PropertyClass};
use crate::math;
use crate::parts::Zone;
use crate::source::Method;
use crate::tables::methods;
use crate::thread::{Thread, area};
use crate::units::{Area, Force, Length, Ratio, Stress, megapascals, millimetres};

/// Cycles a detail category is named at.
const REFERENCE_CYCLES: f64 = 2e6;

/// A bolt detail of EN 1993-1-9 Table 8.1.
///
/// | detail | category | slope | constant from | stress on |
/// |---|---|---|---|---|
/// | [`Tension`](Self::Tension) | 50 MPa | 3 | 5 million cycles | stress area |
/// | [`Shear`](Self::Shear) | 100 MPa | 5 | 100 million cycles | shank |
///
/// ```
/// use shankline::{prelude::*, tension::EnFatigueDetail};
/// assert_eq!(EnFatigueDetail::Tension.category(), megapascals(50.0));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum EnFatigueDetail {
    /// Detail 14: bolts and rods in tension, rolled or cut thread.
    Tension,
    /// Detail 15: bolts in shear with no thread in the plane; recalled.
    Shear,
}

impl EnFatigueDetail {
    /// The category: the range that 2 million cycles may have.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::EnFatigueDetail};
    /// assert_eq!(EnFatigueDetail::Shear.category(), megapascals(100.0));
    /// ```
    #[must_use]
    pub const fn category(self) -> Stress {
        match self {
            Self::Tension => megapascals(50.0),
            Self::Shear => megapascals(100.0),
        }
    }

    const fn slope(self) -> f64 {
        match self {
            Self::Tension => 3.0,
            Self::Shear => 5.0,
        }
    }

    /// Fewest cycles, and those from which the resistance falls no more.
    const fn cycles(self) -> (f64, f64) {
        match self {
            Self::Tension => (1e4, 5e6),
            Self::Shear => (1e5, 1e8),
        }
    }

    const fn source(self) -> &'static Method {
        match self {
            Self::Tension => methods::EN_1993_1_9_2005_7_1_AND_TABLE_8_1_DETAIL_14,
            Self::Shear => methods::EN_1993_1_9_2005_7_1_AND_TABLE_8_1_DETAIL_15_RECALLED,
        }
    }
}

/// The partial factor for fatigue strength, `gamma_Mf`, of EN 1993-1-9 Table 3.1; recalled.
///
/// *Damage tolerant* wants inspection and a structure that bears one bolt's failure; without a stated reason take
/// [`GammaMf::default`], safe life with high consequence. A national annex may give others.
///
/// ```
/// use shankline::tension::GammaMf;
/// assert_eq!(GammaMf::default().value().unwrap(), 1.35);
/// assert!(GammaMf::Stated(0.9).value().is_err());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case", deny_unknown_fields)
)]
#[non_exhaustive]
pub enum GammaMf {
    /// Damage tolerant, low consequence of failure: 1.00.
    DamageTolerantLow,
    /// Damage tolerant, high consequence of failure: 1.15.
    DamageTolerantHigh,
    /// Safe life, low consequence of failure: 1.15.
    SafeLifeLow,
    /// Safe life, high consequence of failure: 1.35.
    #[default]
    SafeLifeHigh,
    /// A factor of the caller's own, from 1 to 10.
    Stated(f64),
}

impl GammaMf {
    /// The factor.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stated factor outside 1 to 10.
    ///
    /// ```
    /// use shankline::tension::GammaMf;
    /// assert_eq!(GammaMf::SafeLifeLow.value().unwrap(), 1.15);
    /// ```
    pub fn value(self) -> Result<f64, Error> {
        match self {
            Self::DamageTolerantLow => Ok(1.0),
            Self::DamageTolerantHigh | Self::SafeLifeLow => Ok(1.15),
            Self::SafeLifeHigh => Ok(1.35),
            // NaN is in no range.
            Self::Stated(factor) if (1.0..=10.0).contains(&factor) => Ok(factor),
            Self::Stated(factor) => Err(out_of_range(
                "partial factor for fatigue",
                factor,
                Allowed::FromTo(1.0.into(), 10.0.into()),
            )),
        }
    }
}

/// Fatigue of a bolt by EN 1993-1-9: a range of stress, the same at every cycle, against its resistance
/// `ks DC (2e6 / N)^(1/m) / gamma_Mf`.
///
/// N are the cycles, DC the category, m its slope, and ks = (30 mm / d)^0.25 above M30 in tension. The mean stress does
/// not count, so this holds with and without preload. The range is that *in the bolt*, with bending and prying: a
/// preload that is kept lowers it (the share of bolt and members), without preload the bolt bears all of it. Where the
/// range varies, hold the greatest against the resistance at very many cycles, or sum the damage by the code.
///
/// The category 50 and the size of 30 mm were read in papers that reproduce the table; the exponent, the constant limit
/// at 5 million cycles, the partial factors and all of shear were recalled. Above M36 the rule of size is not verified.
///
/// ```
/// use shankline::{prelude::*, tension::*, units::kilonewtons};
/// # fn main() -> Result<(), shankline::Error> {
/// // M16 without preload, 0 to 5 kN for ever: category 50 leaves 36.8 MPa, before the factor.
/// let factor = GammaMf::DamageTolerantLow;
/// let fatigue = EnFatigue::tension(&"M16".parse()?, kilonewtons(5.0), 1e8, factor)?;
/// assert!((fatigue.resistance - megapascals(36.84)).abs() < megapascals(0.01));
/// assert!((fatigue.utilisation.value - 0.866).abs() < 0.001);
/// fatigue.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnFatigue {
    /// The detail.
    pub detail: EnFatigueDetail,
    /// Nominal diameter of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// Cycles.
    pub cycles: f64,
    /// Range of the force and the area it is on, if it was given as a force.
    #[cfg_attr(feature = "serde", serde(skip))]
    pub force: Option<(Force, Area)>,
    /// Range of the stress: greatest less least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub range: Stress,
    /// The factor of size ks.
    pub size_factor: f64,
    /// The partial factor `gamma_Mf`.
    pub partial_factor: f64,
    /// Design resistance: the range these cycles may have.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub resistance: Stress,
    /// Range over resistance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub utilisation: Ratio,
    inch: bool,
}

impl EnFatigue {
    /// A bolt in tension, detail 14, from the range of the force in it, on the stress area.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a range that is not positive and finite, fewer cycles than 10 000, or a stated
    /// factor outside 1 to 10.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::*, units::kilonewtons};
    /// let thread: Thread = "M36".parse().unwrap();
    /// let fatigue = EnFatigue::tension(&thread, kilonewtons(20.0), 2e6, GammaMf::default()).unwrap();
    /// assert!((fatigue.size_factor - 0.9554).abs() < 1e-4);
    /// assert!(EnFatigue::tension(&thread, kilonewtons(20.0), 1e3, GammaMf::default()).is_err());
    /// ```
    pub fn tension(
        thread: &Thread,
        range: Force,
        cycles: f64,
        factor: GammaMf,
    ) -> Result<Self, Error> {
        positive(
            "range of the force",
            sane_load("range of the force", range)?,
        )?;
        let area = thread.tensile_stress_area();
        let detail = EnFatigueDetail::Tension;
        Ok(Self {
            force: Some((range, area)),
            inch: thread.is_unified(),
            ..Self::of_stress(
                detail,
                thread.nominal_diameter(),
                range / area,
                cycles,
                factor,
            )?
        })
    }

    /// A bolt in shear, detail 15, from the forces in one shear plane, on the shank.
    ///
    /// Forces of the other way are negative. The detail holds for classes 5.6, 8.8 and 10.9, with no thread in the
    /// plane, and either fitted holes or a force that does not change its way: all else has no category.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a thread in the plane, and for a force that changes its way in a hole that is not
    /// fitted; [`Error::NoValue`] for another class; [`Error::OutOfRange`] unless the least force is below the
    /// greatest, for fewer cycles than 100 000, and as [`tension`](Self::tension).
    ///
    /// ```
    /// use shankline::{prelude::*, tension::*, units::kilonewtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let (d, class) = (millimetres(20.0), PropertyClass::Class8_8.into());
    /// let of = |zone, fitted, least: f64| {
    ///     let forces = (kilonewtons(least), kilonewtons(15.0));
    ///     EnFatigue::shear(d, class, zone, fitted, forces, 2e6, GammaMf::default())
    /// };
    /// assert!((of(Zone::Shank, false, 0.0)?.resistance - megapascals(74.07)).abs() < megapascals(0.01));
    /// assert!(of(Zone::Thread, true, 0.0).is_err());
    /// assert!(of(Zone::Shank, false, -5.0).is_err() && of(Zone::Shank, true, -5.0).is_ok());
    /// # Ok(())
    /// # }
    /// ```
    pub fn shear(
        diameter: Length,
        grade: BoltGrade,
        zone: Zone,
        fitted: bool,
        forces: (Force, Force),
        cycles: f64,
        factor: GammaMf,
    ) -> Result<Self, Error> {
        sane_length("nominal diameter", diameter)?;
        if zone != Zone::Shank {
            return Err(Error::Mismatch(
                "EN 1993-1-9 has no category for a shear plane across the thread".into(),
            ));
        }
        let covered = matches!(
            grade,
            BoltGrade::Iso(
                PropertyClass::Class5_6 | PropertyClass::Class8_8 | PropertyClass::Class10_9
            )
        );
        if !covered {
            return Err(Error::NoValue {
                quantity: "fatigue category in shear",
                subject: format!("{grade}"),
                reason: "EN 1993-1-9 detail 15 has classes 5.6, 8.8 and 10.9",
            });
        }
        let (least, greatest) = forces;
        sane_load("least force across", least.abs())?;
        sane_load("greatest force across", greatest.abs())?;
        if least >= greatest {
            return Err(out_of_range(
                "greatest force across",
                greatest,
                Allowed::Above(least.into()),
            ));
        }
        if !fitted && least.value < 0.0 && greatest.value > 0.0 {
            return Err(Error::Mismatch(
                "the force across changes its way: EN 1993-1-9 detail 15 allows that in fitted holes only"
                    .into(),
            ));
        }
        let (range, area) = (greatest - least, area::circle(diameter));
        let detail = EnFatigueDetail::Shear;
        Ok(Self {
            force: Some((range, area)),
            ..Self::of_stress(detail, diameter, range / area, cycles, factor)?
        })
    }

    /// A detail from the range of the stress. That the detail fits (see [`shear`](Self::shear)) is for the caller to
    /// know.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter or a range that is not positive and finite, fewer cycles than 10 000 in
    /// tension or 100 000 in shear, or a stated factor outside 1 to 10.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::*};
    /// let fatigue = EnFatigue::of_stress(
    ///     EnFatigueDetail::Tension, millimetres(16.0), megapascals(30.0), 2e6, GammaMf::DamageTolerantLow,
    /// ).unwrap();
    /// assert!((fatigue.utilisation.value - 0.6).abs() < 1e-12);
    /// ```
    pub fn of_stress(
        detail: EnFatigueDetail,
        diameter: Length,
        range: Stress,
        cycles: f64,
        factor: GammaMf,
    ) -> Result<Self, Error> {
        sane_length("nominal diameter", diameter)?;
        sane_stress("range of the stress", range)?;
        let (fewest, _) = detail.cycles();
        if !(cycles >= fewest && cycles.is_finite()) {
            return Err(out_of_range(
                "number of cycles",
                cycles,
                Allowed::AtLeast(fewest.into()),
            ));
        }
        let partial_factor = factor.value()?;
        let large = millimetres(30.0) / diameter;
        let size_factor = if detail == EnFatigueDetail::Tension && large.value < 1.0 {
            math::powf(large.value, 0.25)
        } else {
            1.0
        };
        let more = math::powf(
            REFERENCE_CYCLES / counted(detail, cycles),
            1.0 / detail.slope(),
        );
        let resistance = detail.category() * (size_factor * more / partial_factor);
        Ok(Self {
            detail,
            diameter,
            cycles,
            force: None,
            range,
            size_factor,
            partial_factor,
            resistance,
            utilisation: range / resistance,
            inch: false,
        })
    }

    /// What the user must be told: what was recalled, and that inch threads are used by analogy.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::*, units::kilonewtons};
    /// let thread: Thread = "M16".parse().unwrap();
    /// let fatigue = EnFatigue::tension(&thread, kilonewtons(2.0), 2e6, GammaMf::default()).unwrap();
    /// assert_eq!(fatigue.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let method = match self.detail {
            EnFatigueDetail::Tension => {
                methods::EN_1993_1_9_BESIDE_ITS_CATEGORY_50_LIMITS_FACTOR_OF_SIZE_PARTIAL_FACTORS
            }
            EnFatigueDetail::Shear => methods::EN_1993_1_9_BOLTS_IN_SHEAR,
        };
        Cautions::default()
            .with(Caution::of_method(method))
            .with(self.inch.then_some(Caution::MaterialOutsideMethod {
                method: methods::EN1993_1_9_DETAIL_14,
                written_for: "metric bolts",
            }))
    }

    /// The working.
    ///
    /// ```
    /// use shankline::{prelude::*, tension::*, units::kilonewtons};
    /// let thread: Thread = "M36".parse().unwrap();
    /// let fatigue = EnFatigue::tension(&thread, kilonewtons(2.0), 1e9, GammaMf::default()).unwrap();
    /// fatigue.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        let detail = self.detail;
        let (title, symbol) = match detail {
            EnFatigueDetail::Tension => ("Fatigue in tension, EN 1993-1-9", "ds"),
            EnFatigueDetail::Shear => ("Fatigue in shear, EN 1993-1-9", "dt"),
        };
        let (_, constant) = detail.cycles();
        let counted = counted(detail, self.cycles);
        let range = match self.force {
            Some((force, area)) => Step::new("range of the stress", symbol, "dF / A", self.range)
                .with("dF", force)
                .with("A", area),
            None => Step::given("range of the stress", symbol, self.range),
        };
        let derivation = Derivation::new(title).step(range);
        let derivation = if detail == EnFatigueDetail::Tension {
            derivation.step(
                Step::new(
                    "factor of size",
                    "ks",
                    "min(1, (dr / d)^0.25)",
                    self.size_factor,
                )
                .with("dr", millimetres(30.0))
                .with("d", self.diameter)
                .source(detail.source()),
            )
        } else {
            derivation.step(Step::given("factor of size", "ks", self.size_factor))
        };
        derivation
            .step(
                Step::new("cycles that count", "Nc", "min(N, NL)", counted)
                    .with("N", self.cycles)
                    .with("NL", constant)
                    .source(methods::EN1993_1_9_CUT_OFF),
            )
            .step(
                Step::new(
                    "range these cycles may have",
                    "dR",
                    "ks * DC * (NR / Nc)^(1 / m) / gM",
                    self.resistance,
                )
                .with("ks", self.size_factor)
                .with("DC", detail.category())
                .with("NR", REFERENCE_CYCLES)
                .with("Nc", counted)
                .with("m", detail.slope())
                .with("gM", self.partial_factor)
                .source(detail.source()),
            )
            .step(
                Step::new("utilisation", "u", "dS / dR", self.utilisation)
                    .with("dS", self.range)
                    .with("dR", self.resistance),
            )
    }
}

fn counted(detail: EnFatigueDetail, cycles: f64) -> f64 {
    let (_, constant) = detail.cycles();
    cycles.min(constant)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, kilonewtons};

    const ONE: GammaMf = GammaMf::DamageTolerantLow;

    fn of(detail: EnFatigueDetail, d: f64, cycles: f64) -> f64 {
        let fatigue =
            EnFatigue::of_stress(detail, millimetres(d), megapascals(10.0), cycles, ONE).unwrap();
        fatigue.derivation().check().unwrap();
        (fatigue.resistance / megapascals(1.0)).value
    }

    /// Category 50: limit 36.8 MPa at 5 million (0.737); category 100 in shear: cut-off 45.7 MPa at 100 million (0.457).
    #[test]
    fn curves_pass_their_known_points() {
        use EnFatigueDetail::{Shear, Tension};
        assert!((of(Tension, 16.0, 2e6) - 50.0).abs() < 1e-9);
        assert!((of(Tension, 16.0, 5e6) - 36.84).abs() < 0.005);
        assert!((of(Tension, 16.0, 1e9) - of(Tension, 16.0, 5e6)).abs() < 1e-9);
        assert!((of(Tension, 16.0, 2.5e5) - 100.0).abs() < 1e-9);
        assert!((of(Shear, 20.0, 2e6) - 100.0).abs() < 1e-9);
        assert!((of(Shear, 20.0, 1e8) - 45.7).abs() < 0.05);
        assert!((of(Shear, 20.0, 1e12) - of(Shear, 20.0, 1e8)).abs() < 1e-9);
        // Size counts above M30, in tension only.
        assert!((of(Tension, 30.0, 2e6) - 50.0).abs() < 1e-9);
        assert!((of(Tension, 48.0, 2e6) - 50.0 * 0.889_14).abs() < 1e-3);
        assert!((of(Shear, 48.0, 2e6) - 100.0).abs() < 1e-9);
    }

    #[test]
    fn the_factor_divides() {
        let thread: Thread = "M16".parse().unwrap();
        let of = |factor| {
            let fatigue = EnFatigue::tension(&thread, kilonewtons(3.0), 2e6, factor).unwrap();
            (fatigue.resistance / megapascals(1.0)).value
        };
        assert!((of(GammaMf::default()) - 50.0 / 1.35).abs() < 1e-9);
        assert!((of(GammaMf::DamageTolerantHigh) - 50.0 / 1.15).abs() < 1e-9);
        assert!((of(GammaMf::Stated(2.0)) - 25.0).abs() < 1e-9);
    }

    #[test]
    fn refuses_nonsense_at_the_door() {
        let thread: Thread = "M16".parse().unwrap();
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(EnFatigue::tension(&thread, kilonewtons(bad), 2e6, ONE).is_err());
            assert!(EnFatigue::tension(&thread, kilonewtons(1.0), bad, ONE).is_err());
            assert!(
                EnFatigue::tension(&thread, kilonewtons(1.0), 2e6, GammaMf::Stated(bad)).is_err()
            );
        }
        let shear = |class: PropertyClass, least: f64, greatest: f64, cycles| {
            let forces = (kilonewtons(least), kilonewtons(greatest));
            let d = millimetres(20.0);
            EnFatigue::shear(d, class.into(), Zone::Shank, true, forces, cycles, ONE)
        };
        assert!(shear(PropertyClass::Class8_8, -5.0, 5.0, 2e6).is_ok());
        assert!(shear(PropertyClass::Class8_8, 5.0, 5.0, 2e6).is_err());
        assert!(shear(PropertyClass::Class8_8, 5.0, -5.0, 2e6).is_err());
        assert!(shear(PropertyClass::Class8_8, f64::NAN, 5.0, 2e6).is_err());
        assert!(shear(PropertyClass::Class8_8, 0.0, f64::INFINITY, 2e6).is_err());
        assert!(shear(PropertyClass::Class8_8, 0.0, 5.0, 9e4).is_err());
        assert!(shear(PropertyClass::Class4_6, 0.0, 5.0, 2e6).is_err());
        let inch: Thread = "1/2-13 UNC".parse().unwrap();
        let fatigue = EnFatigue::tension(&inch, kilonewtons(1.0), 2e6, ONE).unwrap();
        assert_eq!(fatigue.cautions().iter().count(), 2);
        assert_eq!(fatigue.diameter, inches(0.5));
    }
}
