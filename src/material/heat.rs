//! Bolts in heat and cold: the limits of their service, and how strong they are at a temperature.

use alloc::string::ToString;

use super::{AstmGrade, BoltGrade, BoltStrength, PropertyClass, StainlessClass};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Provenance;
use crate::tables::heat::{HotSteel, HotYield};
use crate::tables::locking::{ServiceTemperature, TemperatureLimited};
use crate::tables::methods;
use crate::units::{Ratio, ThermodynamicTemperature, celsius};

/// The upper end of the ambient temperatures at which ISO 898-1 and ISO 3506-1 test: 10 to 35 C.
const AMBIENT: ThermodynamicTemperature = celsius(35.0);

/// The lowest and highest temperature of service of a bolt grade, each with the row that says so.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::{celsius, fahrenheit};
/// let limits = BoltGrade::from(StainlessClass::A2_70).service_temperatures();
/// assert_eq!((limits.min(), limits.max()), (Some(celsius(-20.0)), Some(celsius(150.0))));
/// let limits = BoltGrade::from(SaeGrade::Grade8).service_temperatures();
/// assert_eq!((limits.min(), limits.max()), (Some(fahrenheit(-65.0)), None)); // no limit in the heat was read
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
#[non_exhaustive]
pub struct BoltTemperatures {
    /// The row with the lowest temperature; none if nothing was read.
    pub coldest: Option<&'static ServiceTemperature>,
    /// The row with the highest temperature; none if nothing was read, which says nothing for the bolt.
    pub hottest: Option<&'static ServiceTemperature>,
}

impl BoltTemperatures {
    /// The lowest temperature of service.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::celsius;
    /// let limits = BoltGrade::from(PropertyClass::Class8_8).service_temperatures();
    /// assert_eq!(limits.min(), Some(celsius(-50.0)));
    /// ```
    #[must_use]
    pub fn min(&self) -> Option<ThermodynamicTemperature> {
        self.coldest.and_then(|row| row.temperature_min)
    }

    /// The highest temperature of service.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::fahrenheit;
    /// let limits = BoltGrade::from(AstmGrade::A193B7).service_temperatures();
    /// assert_eq!(limits.max(), Some(fahrenheit(700.0)));
    /// ```
    #[must_use]
    pub fn max(&self) -> Option<ThermodynamicTemperature> {
        self.hottest.and_then(|row| row.temperature_max)
    }

    fn both(row: Option<&'static ServiceTemperature>) -> Self {
        Self {
            coldest: row,
            hottest: row,
        }
    }
}

/// Whether a grade is of carbon or low-alloy steel; not so for stated strengths, of which nothing is known.
fn is_carbon_or_low_alloy(grade: BoltGrade) -> bool {
    use AstmGrade as A;
    match grade {
        BoltGrade::Sae(_) | BoltGrade::Iso(_) => true,
        BoltGrade::Stainless(_) | BoltGrade::Stated => false,
        BoltGrade::Astm(grade) => !matches!(
            grade,
            A::A193B6
                | A::A193B8Class1
                | A::A193B8mClass1
                | A::A193B8Class2
                | A::A193B8mClass2
                | A::F593Group1Af
                | A::F593Group1A
                | A::F593Group1Cw1
                | A::F593Group1Cw2
                | A::F593Group2Af
                | A::F593Group2A
                | A::F593Group2Cw1
                | A::F593Group2Cw2
                | A::F593Group4A
                | A::F593Group4Cw1
                | A::F593Group4Cw2
                | A::F593Group5H
                | A::F593Group5Ht
                | A::F593Group6H
                | A::F593Group6Ht
                | A::F593Group7Ah
        ),
    }
}

impl BoltGrade {
    /// The lowest and highest temperature of service, as far as they were read.
    ///
    /// | grade | lowest | highest |
    /// |---|---|---|
    /// | ISO 898-1 | -50 C, ISO 898 | 150 C; to 300 C with the advice of a specialist |
    /// | ISO 3506-1 | -20 C, ISO 3506 | 150 C; -196 to 300 C are in use, by steel |
    /// | SAE, ASTM of carbon and low-alloy steel | -65 F, NASA RP-1228 | none read; A193 B7 700 F, ASME B31.1 |
    /// | A193 B6, B8, B8M, F593; stated strengths | none read | none read |
    ///
    /// The preload has limits of its own: it relaxes, and parts that expand unlike change it.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let limits = BoltGrade::from(AstmGrade::A193B8Class2).service_temperatures();
    /// assert!(limits.min().is_none() && limits.max().is_none());
    /// ```
    #[must_use]
    pub fn service_temperatures(self) -> BoltTemperatures {
        let latest = ServiceTemperature::latest;
        match self {
            Self::Iso(_) => {
                BoltTemperatures::both(latest(TemperatureLimited::Iso898Steel, "ISO 898"))
            }
            Self::Stainless(_) => {
                BoltTemperatures::both(latest(TemperatureLimited::Iso3506Stainless, "ISO 3506"))
            }
            _ if is_carbon_or_low_alloy(self) => BoltTemperatures {
                coldest: latest(TemperatureLimited::LowAlloySteel, "NASA RP-1228"),
                hottest: (self == AstmGrade::A193B7.into())
                    .then(|| latest(TemperatureLimited::AstmA193B7, "ASME B31.1"))
                    .flatten(),
            },
            _ => BoltTemperatures::default(),
        }
    }

    /// The steel of the hot yield strengths; none where they were not read for the grade.
    const fn hot_steel(self) -> Option<HotSteel> {
        use StainlessClass as S;
        match self {
            Self::Iso(PropertyClass::Class5_6) => Some(HotSteel::Class5_6),
            Self::Iso(PropertyClass::Class8_8) => Some(HotSteel::Class8_8),
            Self::Iso(PropertyClass::Class10_9) => Some(HotSteel::Class10_9),
            Self::Iso(PropertyClass::Class12_9) => Some(HotSteel::Class12_9),
            Self::Stainless(
                S::A2_70
                | S::A2_80
                | S::A3_70
                | S::A3_80
                | S::A4_70
                | S::A4_80
                | S::A5_70
                | S::A5_80,
            ) => Some(HotSteel::Austenitic),
            Self::Stainless(S::C1_70) => Some(HotSteel::MartensiticC1),
            Self::Stainless(S::C3_80) => Some(HotSteel::MartensiticC3),
            _ => None,
        }
    }

    /// Whether VDI 2230 is written for the grade: classes 8.8 to 12.9.
    const fn is_of_vdi_2230(self) -> bool {
        use PropertyClass as P;
        matches!(
            self,
            Self::Iso(
                P::Class8_8 | P::Class9_8 | P::Class10_9 | P::Class12_9 | P::Class12_9Underlined
            )
        )
    }
}

/// The strengths of a bolt at a temperature.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::units::celsius;
/// # fn main() -> Result<(), shankline::Error> {
/// let hot = PropertyClass::Class8_8.strength(millimetres(12.0))?.at_temperature(celsius(200.0))?;
/// assert_eq!(hot.ratio.value, 540.0 / 640.0);
/// assert_eq!(hot.strength.yield_strength, Some(megapascals(540.0)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct HotBoltStrength {
    /// The temperature.
    pub temperature: ThermodynamicTemperature,
    /// Yield strength there over that at room temperature.
    pub ratio: Ratio,
    /// The strengths there: all of them times the ratio. The tensile strength of steel falls later than that, so that it
    /// is on the safe side.
    pub strength: BoltStrength,
    /// The guide values the ratio lies between; none where nothing is taken off.
    pub between: Option<(&'static HotYield, &'static HotYield)>,
    /// What says that nothing is taken off, VDI 2230 for steel up to 120 C; none at ambient temperature.
    pub full_by: Option<Provenance>,
}

impl BoltStrength {
    /// The strengths at a temperature, for short times: relaxation of the preload is not in it.
    ///
    /// | grade | up to | beyond |
    /// |---|---|---|
    /// | every one | 35 C: full, the ambient temperature of the tests | |
    /// | 8.8 to 12.9 | 120 C: full, VDI 2230 | to 300 C by ISO 898-1:1999 Annex A (8.8, 10.9, 12.9), recalled |
    /// | 5.6 | | to 300 C by the same |
    /// | other carbon and low-alloy steel | 120 C: full, VDI 2230 by analogy | nothing read |
    /// | A2 to A5 of 70 and 80, C1-70, C3-80 | | to 400 C by ISO 3506-1:1997 Annex F, recalled |
    /// | other stainless steel, stated strengths | | nothing read |
    ///
    /// Between two values the ratio is interpolated. ASME B31.1 holds the allowable stress of A193 B7 to 700 F; that is a
    /// fraction of the tensile strength and no yield strength.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a temperature that is not positive and finite, below the lowest of the service
    /// ([`BoltGrade::service_temperatures`]), or beyond the last value; [`Error::NoValue`] where nothing was read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::celsius;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = SaeGrade::Grade8.strength(inches(0.5))?;
    /// assert_eq!(bolt.at_temperature(celsius(100.0))?.ratio.value, 1.0);
    /// assert!(bolt.at_temperature(celsius(150.0)).is_err());
    /// assert!(bolt.at_temperature(celsius(-60.0)).is_err()); // brittle below -65 F
    /// # Ok(())
    /// # }
    /// ```
    pub fn at_temperature(
        &self,
        temperature: ThermodynamicTemperature,
    ) -> Result<HotBoltStrength, Error> {
        positive("temperature of the bolt", temperature)?;
        if let Some(limit) = self.grade.service_temperatures().min() {
            if temperature < limit {
                let allowed = Allowed::AtLeast(limit.into());
                return Err(out_of_range(
                    "temperature of the bolt",
                    temperature,
                    allowed,
                ));
            }
        }
        if temperature <= AMBIENT {
            return Ok(self.in_full(temperature, None));
        }
        let vdi = ServiceTemperature::latest(TemperatureLimited::SteelBoltFullStrength, "VDI 2230");
        let within = |row: &&ServiceTemperature| {
            row.temperature_max
                .is_some_and(|limit| temperature <= limit)
        };
        // Class 5.6 has guide values that fall from the start, and VDI 2230 is not written for it.
        let guided = self.grade.is_of_vdi_2230() || self.grade.hot_steel().is_none();
        if let Some(row) = vdi
            .filter(within)
            .filter(|_| guided && is_carbon_or_low_alloy(self.grade))
        {
            return Ok(self.in_full(temperature, Some(row.provenance)));
        }
        let steel = self.grade.hot_steel().ok_or_else(|| Error::NoValue {
            quantity: "strength at that temperature",
            subject: self.grade.to_string(),
            reason: "no guide value has been read; ask the maker",
        })?;
        self.interpolated(temperature, HotYield::of(steel))
    }

    fn in_full(
        &self,
        temperature: ThermodynamicTemperature,
        full_by: Option<Provenance>,
    ) -> HotBoltStrength {
        HotBoltStrength {
            temperature,
            ratio: Ratio::from(1.0),
            strength: *self,
            between: None,
            full_by,
        }
    }

    fn interpolated(
        &self,
        temperature: ThermodynamicTemperature,
        rows: &'static [HotYield],
    ) -> Result<HotBoltStrength, Error> {
        let beyond = || {
            let last = rows.last().map_or(AMBIENT, |row| row.temperature);
            out_of_range(
                "temperature of the bolt",
                temperature,
                Allowed::AtMost(last.into()),
            )
        };
        let (Some(room), Some(next)) = (
            rows.first(),
            rows.iter().position(|row| row.temperature >= temperature),
        ) else {
            return Err(beyond());
        };
        let (Some(low), Some(high)) = (rows.get(next.saturating_sub(1)), rows.get(next)) else {
            return Err(beyond());
        };
        let (Some(from), Some(to)) = (share(low, room), share(high, room)) else {
            return Err(beyond());
        };
        let width = high.temperature.value - low.temperature.value;
        let part = if width > 0.0 {
            (temperature.value - low.temperature.value) / width
        } else {
            0.0
        };
        let ratio = from + (to - from) * part;
        Ok(HotBoltStrength {
            temperature,
            ratio: Ratio::from(ratio),
            strength: Self {
                proof_stress: self.proof_stress.map(|stress| ratio * stress),
                yield_strength: self.yield_strength.map(|stress| ratio * stress),
                tensile_strength: ratio * self.tensile_strength,
                provenance: Some(high.provenance),
                ..*self
            },
            between: Some((low, high)),
            full_by: None,
        })
    }
}

/// A hot yield strength over the one at room temperature.
fn share(row: &HotYield, room: &HotYield) -> Option<f64> {
    let by_stress = || Some((row.yield_strength? / room.yield_strength?).value);
    row.yield_ratio.map(|ratio| ratio.value).or_else(by_stress)
}

impl HotBoltStrength {
    /// What the user must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::celsius;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = PropertyClass::Class8_8.strength(millimetres(12.0))?;
    /// assert_eq!(bolt.at_temperature(celsius(120.0))?.cautions().iter().count(), 0);
    /// assert_eq!(bolt.at_temperature(celsius(121.0))?.cautions().iter().count(), 0);
    /// let bolt = StainlessClass::A2_70.strength(millimetres(12.0))?;
    /// assert_eq!(bolt.at_temperature(celsius(200.0))?.cautions().iter().count(), 1); // recalled
    /// let bolt = SaeGrade::Grade8.strength(inches(0.5))?;
    /// assert_eq!(bolt.at_temperature(celsius(100.0))?.cautions().iter().count(), 1); // by analogy
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let by_analogy = self.full_by.is_some() && !self.strength.grade.is_of_vdi_2230();
        let written = Caution::MaterialOutsideMethod {
            method: methods::VDI2230_120_C,
            written_for: "classes 8.8 to 12.9",
        };
        let values = self.between.map(|(_, high)| high.cautions());
        Cautions::default()
            .with(by_analogy.then_some(written))
            .and(values.unwrap_or_default())
    }

    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::celsius;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = PropertyClass::Class10_9.strength(millimetres(16.0))?;
    /// bolt.at_temperature(celsius(150.0))?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let derivation = Derivation::new("Strength of the bolt at the temperature");
        let Some((low, high)) = self.between else {
            let step = Step::given("share of the strength at room temperature", "r", self.ratio);
            return derivation.step(match self.full_by {
                Some(provenance) => step.source(provenance.to_string()),
                None => step,
            });
        };
        let rows = HotYield::of(low.steel);
        let room = rows.first().unwrap_or(low);
        let step = |formula: &'static str| {
            Step::new(
                "share of the strength at room temperature",
                "r",
                formula,
                self.ratio,
            )
            .with("T", self.temperature)
            .with("T1", low.temperature)
            .with("T2", high.temperature)
            .source(high.provenance.to_string())
        };
        let step = match (low.yield_strength, high.yield_strength, room.yield_strength) {
            (Some(one), Some(two), Some(full)) => {
                step("(S1 + (S2 - S1) * (T - T1) / (T2 - T1)) / S0")
                    .with("S1", one)
                    .with("S2", two)
                    .with("S0", full)
            }
            _ => step("r1 + (r2 - r1) * (T - T1) / (T2 - T1)")
                .with("r1", low.yield_ratio.unwrap_or_default())
                .with("r2", high.yield_ratio.unwrap_or_default()),
        };
        derivation.step(step)
    }
}

#[cfg(test)]
mod tests;
