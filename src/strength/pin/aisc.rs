//! Plates around a pin by AISC 360.

use alloc::vec::Vec;

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, not_negative, out_of_range, sane_length, sane_stress};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::code::aisc_360::{RUPTURE, YIELDING};
use crate::tables::methods;
use crate::units::{Area, Force, Length, SAME_LENGTH, Stress, inches};

const METHOD: &Method = methods::AISC_360_D5_1;
const DIMENSIONS: &Method = methods::AISC_360_D5_2;
const HOLE: &Method = methods::AISC_360_D5_2_HOLES;

/// Corners of a plate beyond its pin hole.
///
/// ```
/// use shankline::{strength::pin::PlateCorners, units::inches};
/// assert_ne!(PlateCorners::Full, PlateCorners::Cut { beyond: inches(2.5) });
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
pub enum PlateCorners {
    /// Not cut.
    Full,
    /// Cut at 45 degrees to the axis of the plate.
    Cut {
        /// From the edge of the hole to the cut, square to the cut, c.
        #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
        beyond: Length,
    },
}

/// One plate around a pin, its hole midway between its sides: AISC 360 knows no other.
///
/// ```
/// use shankline::strength::pin::{PinPlate, PlateCorners};
/// use shankline::units::{inches, ksi};
/// // AISC, Design Examples, D.7
/// let plate = PinPlate {
///     thickness: inches(0.5),
///     width: inches(4.25),
///     pin: inches(1.0),
///     hole: inches(1.0 + 1.0 / 32.0),
///     end: inches(2.25),
///     corners: PlateCorners::Cut { beyond: inches(2.5) },
///     turns_under_load: true,
///     yield_strength: ksi(36.0),
///     tensile_strength: ksi(58.0),
/// };
/// assert!(plate.hole > plate.pin);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct PinPlate {
    /// Thickness t.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub thickness: Length,
    /// Width w at the hole, across the load.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub width: Length,
    /// Diameter d of the pin.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub pin: Length,
    /// Diameter dh of the hole.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub hole: Length,
    /// From the *edge* of the hole to the end of the plate, along the load, a.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub end: Length,
    /// Its corners beyond the hole.
    pub corners: PlateCorners,
    /// Whether the parts turn against each other under full load: the hole must fit closely then.
    pub turns_under_load: bool,
    /// Yield strength Fy of the plate, or of the pin if that is lower.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub yield_strength: Stress,
    /// Tensile strength Fu of the plate.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub tensile_strength: Stress,
}

/// Resistances of a plate around a pin by AISC 360 D5.
///
/// ```
/// # use shankline::strength::pin::AiscPinPlate;
/// fn tears(plate: &AiscPinPlate) -> bool {
///     plate.rupture.nominal < plate.bearing.nominal
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AiscPinPlate {
    /// The plate.
    pub plate: PinPlate,
    /// From the edge of the hole to the side, (w - dh) / 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub side: Length,
    /// Effective width on each side of the hole, be.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub effective_width: Length,
    /// Area on the paths of shear rupture, Asf.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear_area: Area,
    /// Projected area in bearing, Apb.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing_area: Area,
    /// Gross area Ag.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub gross_area: Area,
    /// Tension rupture beside the hole, Fu (2 t be).
    pub rupture: Resistance,
    /// Shear rupture behind the pin, 0.6 Fu Asf.
    pub shear: Resistance,
    /// Bearing, 1.8 Fy Apb.
    pub bearing: Resistance,
    /// Yielding of the gross section, Fy Ag.
    pub gross: Resistance,
}

/// A plate around a pin by AISC 360 D5: what it bears in every mode. [`AiscPinPlate::checks`] holds it against a load,
/// and its dimensions against D5.2; without these the resistances stand for nothing.
///
/// | mode | nominal | phi, Omega |
/// |---|---|---|
/// | tension rupture beside the hole, Eq. D5-1 | Fu (2 t be), be = 2 t + 0.63 in (16 mm) and at most (w - dh) / 2 | 0.75, 2.00 |
/// | shear rupture behind the pin, Eq. D5-2 | 0.6 Fu Asf, Asf = 2 t (a + d / 2) | 0.75, 2.00 |
/// | bearing, Eq. J7-1 | 1.8 Fy Apb, Apb = t d | 0.75, 2.00 |
/// | yielding of the gross section, Eq. D2-1 | Fy w t | 0.90, 1.67 |
///
/// The pin itself, in shear and bending, is checked as one: see [`yielding_pin`](super::yielding_pin).
///
/// Sources: AISC LRFD 1999 D3.1, a copy of the page; the commentary of 2010; the institute's Design
/// Examples, D.7, to 2005 and to 2010. The clearance of the hole is that of a copy of 2022 for pins under 3 in. AISC does not say whose yield strength counts in bearing; EN 1993-1-8 takes the
/// lower of pin and plate, and so should the caller.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a length or strength that is not positive or beyond reason, a hole smaller than its pin or
/// not smaller than the plate is wide, or a tensile strength below the yield strength.
///
/// ```
/// use shankline::strength::{check::Level, pin::{PinPlate, PlateCorners, aisc_360_pin_plate}};
/// use shankline::units::{inches, kip, ksi, pounds_force};
/// # fn main() -> Result<(), shankline::Error> {
/// // AISC, Design Examples, D.7: bearing governs with 24.3 kip
/// let plate = PinPlate {
///     thickness: inches(0.5),
///     width: inches(4.25),
///     pin: inches(1.0),
///     hole: inches(1.0 + 1.0 / 32.0),
///     end: inches(2.25),
///     corners: PlateCorners::Cut { beyond: inches(2.5) },
///     turns_under_load: true,
///     yield_strength: ksi(36.0),
///     tensile_strength: ksi(58.0),
/// };
/// let found = aisc_360_pin_plate(&plate)?;
/// assert!((found.bearing.at(Level::Design)?.get::<kip>() - 24.3).abs() < 0.05);
/// assert!(found.governing(pounds_force(24e3), Level::Design)?.holds());
/// assert!(!found.governing(pounds_force(25e3), Level::Design)?.holds());
/// # Ok(())
/// # }
/// ```
pub fn aisc_360_pin_plate(plate: &PinPlate) -> Result<AiscPinPlate, Error> {
    let t = sane_length("thickness of the plate", plate.thickness)?;
    let w = sane_length("width of the plate", plate.width)?;
    let d = sane_length("pin diameter", plate.pin)?;
    let dh = sane_length("hole diameter", plate.hole)?;
    let a = sane_length("end of the plate beyond the hole", plate.end)?;
    if let PlateCorners::Cut { beyond } = plate.corners {
        sane_length("plate between hole and cut corner", beyond)?;
    }
    let fy = sane_stress("yield strength of the plate", plate.yield_strength)?;
    let fu = sane_stress("tensile strength of the plate", plate.tensile_strength)?;
    if dh < d {
        return Err(out_of_range(
            "hole diameter",
            dh,
            Allowed::AtLeast(d.into()),
        ));
    }
    if w <= dh {
        return Err(out_of_range(
            "width of the plate",
            w,
            Allowed::Above(dh.into()),
        ));
    }
    if fu < fy {
        let allowed = Allowed::AtLeast(fy.into());
        return Err(out_of_range("tensile strength of the plate", fu, allowed));
    }
    let side = 0.5 * (w - dh);
    let effective_width = (2.0 * t + inches(0.63)).min(side);
    let shear_area = 2.0 * t * (a + 0.5 * d);
    let (bearing_area, gross_area) = (t * d, w * t);
    Ok(AiscPinPlate {
        plate: *plate,
        side,
        effective_width,
        shear_area,
        bearing_area,
        gross_area,
        rupture: factored(fu * (2.0 * t * effective_width), RUPTURE)?,
        shear: factored(0.6 * fu * shear_area, RUPTURE)?,
        bearing: factored(1.8 * fy * bearing_area, RUPTURE)?,
        gross: factored(fy * gross_area, YIELDING)?,
    })
}

fn factored(nominal: Force, (phi, omega): (f64, f64)) -> Result<Resistance, Error> {
    Resistance::from_levels(Some(nominal), Some(phi * nominal), Some(nominal / omega))
}

impl AiscPinPlate {
    /// Every check of the plate: the four resistances, and the dimensions that D5.2 wants.
    ///
    /// | of D5.2 | wants |
    /// |---|---|
    /// | end beyond the hole | a >= 1.33 be |
    /// | width | w >= 2 be + d: met by any plate whose be is cut to its sides |
    /// | cut corners | c >= a |
    /// | hole, if the parts turn under full load | dh - d <= 1/32 in; the SI figure beside it is 1 mm, which is 0.2 mm more and is not used here |
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is negative or not finite.
    ///
    /// ```
    /// # use shankline::strength::{check::{Check, Level, Mode}, pin::AiscPinPlate};
    /// # use shankline::units::newtons;
    /// fn short(plate: &AiscPinPlate) -> Result<bool, shankline::Error> {
    ///     let checks = plate.checks(newtons(0.0), Level::Design)?;
    ///     Ok(checks.iter().any(|check| check.mode == Mode::Distances && !check.holds()))
    /// }
    /// ```
    pub fn checks(&self, load: Force, level: Level) -> Result<Vec<Check>, Error> {
        not_negative("load of the plate", load)?;
        let ply = Place::Ply(1);
        let mut checks = Vec::with_capacity(8);
        for (mode, resistance, method) in [
            (Mode::NetSection, self.rupture, METHOD),
            (Mode::TearOut, self.shear, METHOD),
            (Mode::Bearing, self.bearing, methods::AISC_360_J7),
            (Mode::GrossSection, self.gross, METHOD),
        ] {
            let resistance = resistance.at(level)?;
            checks.push(Check::new(mode, ply, load, resistance, level, method)?);
        }
        let plate = &self.plate;
        let be = self.effective_width;
        let corners = match plate.corners {
            PlateCorners::Full => None,
            PlateCorners::Cut { beyond } => Some((plate.end, beyond)),
        };
        let width = (2.0 * be + plate.pin, plate.width + SAME_LENGTH);
        for (wanted, is) in [Some((1.33 * be, plate.end)), Some(width), corners]
            .into_iter()
            .flatten()
        {
            let check = Check::new(Mode::Distances, ply, wanted, is, level, DIMENSIONS)?;
            checks.push(check.not_proportional());
        }
        if plate.turns_under_load {
            // A hole that just fits is wider by a rounding of both diameters at most.
            let clearance = (plate.hole - plate.pin - SAME_LENGTH).max(Length::default());
            let check = Check::new(Mode::Holes, ply, clearance, inches(1.0 / 32.0), level, HOLE)?;
            checks.push(check.not_proportional());
        }
        Ok(checks)
    }

    /// Of all checks the one that governs: a plate that is too short for D5.2 does not hold, whatever its load.
    ///
    /// # Errors
    ///
    /// As [`checks`](Self::checks).
    ///
    /// ```
    /// # use shankline::strength::{check::{Check, Level}, pin::AiscPinPlate};
    /// # use shankline::units::newtons;
    /// fn used(plate: &AiscPinPlate) -> Result<f64, shankline::Error> {
    ///     Ok(plate.governing(newtons(20e3), Level::Allowable)?.utilisation.value)
    /// }
    /// ```
    pub fn governing(&self, load: Force, level: Level) -> Result<Check, Error> {
        Check::governing(self.checks(load, level)?).ok_or_else(|| Error::NoValue {
            quantity: "check",
            subject: METHOD.citation.into(),
            reason: "there is none",
        })
    }

    /// The working.
    ///
    /// ```
    /// use shankline::strength::pin::{PinPlate, PlateCorners, aisc_360_pin_plate};
    /// use shankline::units::{inches, ksi};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Invented: the arm of a davit
    /// let plate = PinPlate {
    ///     thickness: inches(0.75),
    ///     width: inches(8.0),
    ///     pin: inches(1.5),
    ///     hole: inches(1.5625),
    ///     end: inches(3.0),
    ///     corners: PlateCorners::Full,
    ///     turns_under_load: false,
    ///     yield_strength: ksi(50.0),
    ///     tensile_strength: ksi(65.0),
    /// };
    /// aisc_360_pin_plate(&plate)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let PinPlate {
            thickness: t,
            width: w,
            pin: d,
            hole: dh,
            end: a,
            yield_strength: fy,
            tensile_strength: fu,
            ..
        } = self.plate;
        let step = |what, symbol, formula, resistance: Resistance, method| {
            let nominal = resistance.nominal.unwrap_or_default();
            Step::new(what, symbol, formula, nominal).source(method)
        };
        let mut derivation = Derivation::new("Plate around a pin").step(
            Step::new(
                "effective width",
                "be",
                "min(2 * t + c, (w - dh) / 2)",
                self.effective_width,
            )
            .with("t", t)
            .with("c", inches(0.63))
            .with("w", w)
            .with("dh", dh)
            .source(METHOD),
        );
        let rupture = step(
            "tension rupture",
            "Rn",
            "Fu * 2 * t * be",
            self.rupture,
            METHOD,
        )
        .with("Fu", fu)
        .with("t", t)
        .with("be", self.effective_width);
        let shear_area = Step::new(
            "area in shear",
            "Asf",
            "2 * t * (a + d / 2)",
            self.shear_area,
        )
        .with("t", t)
        .with("a", a)
        .with("d", d)
        .source(METHOD);
        let shear = step("shear rupture", "Rn", "0.6 * Fu * Asf", self.shear, METHOD)
            .with("Fu", fu)
            .with("Asf", self.shear_area);
        let j7 = methods::AISC_360_J7;
        let bearing = step("bearing", "Rn", "1.8 * Fy * t * d", self.bearing, j7)
            .with("Fy", fy)
            .with("t", t)
            .with("d", d);
        let gross = step(
            "yielding of the gross section",
            "Rn",
            "Fy * w * t",
            self.gross,
            METHOD,
        )
        .with("Fy", fy)
        .with("w", w)
        .with("t", t);
        for (steps, resistance, (phi, omega)) in [
            ([Some(rupture), None], self.rupture, RUPTURE),
            ([Some(shear_area), Some(shear)], self.shear, RUPTURE),
            ([Some(bearing), None], self.bearing, RUPTURE),
            ([Some(gross), None], self.gross, YIELDING),
        ] {
            for step in steps.into_iter().flatten() {
                derivation = derivation.step(step);
            }
            derivation = resistance.factored(derivation, Some(phi), Some(omega));
        }
        derivation
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{ksi, megapascals, millimetres, newtons};

    fn example() -> PinPlate {
        PinPlate {
            thickness: inches(0.5),
            width: inches(4.25),
            pin: inches(1.0),
            hole: inches(1.0 + 1.0 / 32.0),
            end: inches(2.25),
            corners: PlateCorners::Cut {
                beyond: inches(2.5),
            },
            turns_under_load: true,
            yield_strength: ksi(36.0),
            tensile_strength: ksi(58.0),
        }
    }

    fn short(plate: &PinPlate) -> usize {
        let found = aisc_360_pin_plate(plate).unwrap();
        let checks = found.checks(newtons(1.0), Level::Allowable).unwrap();
        found.derivation().check().unwrap();
        let short = checks.iter().filter(|check| !check.holds()).count();
        let governing = found.governing(newtons(1.0), Level::Allowable).unwrap();
        assert_eq!(governing.holds(), short == 0);
        short
    }

    #[test]
    fn dimensions_of_d5_2_on_both_sides_of_their_limits() {
        let good = example();
        assert_eq!(short(&good), 0);
        // 1.33 x 1.609375 = 2.1405
        let end = |end| PinPlate {
            end: inches(end),
            ..good
        };
        assert_eq!((short(&end(2.141)), short(&end(2.140))), (0, 1));
        let cut = |beyond| PinPlate {
            corners: PlateCorners::Cut {
                beyond: inches(beyond),
            },
            ..good
        };
        assert_eq!((short(&cut(2.25)), short(&cut(2.249))), (0, 1));
        let hole = |hole, turns_under_load| PinPlate {
            hole: inches(hole),
            turns_under_load,
            ..good
        };
        assert_eq!(short(&hole(1.032, true)), 1);
        assert_eq!(
            (short(&hole(1.032, false)), short(&hole(1.0, true))),
            (0, 0)
        );
    }

    #[test]
    fn a_wide_plate_counts_only_beside_its_pin() {
        let wide = PinPlate {
            width: inches(12.0),
            ..example()
        };
        let found = aisc_360_pin_plate(&wide).unwrap();
        assert!((found.effective_width - inches(1.63)).abs() < inches(1e-9));
        assert!(found.gross.nominal > found.rupture.nominal);
    }

    #[test]
    fn what_no_plate_can_be_is_refused() {
        let good = example();
        for wrong in [
            PinPlate {
                hole: inches(0.99),
                ..good
            },
            PinPlate {
                width: good.hole,
                ..good
            },
            PinPlate {
                tensile_strength: ksi(35.0),
                ..good
            },
            PinPlate {
                end: inches(f64::NAN),
                ..good
            },
            PinPlate {
                thickness: millimetres(0.0),
                ..good
            },
            PinPlate {
                yield_strength: megapascals(-1.0),
                ..good
            },
            PinPlate {
                corners: PlateCorners::Cut {
                    beyond: inches(-1.0),
                },
                ..good
            },
        ] {
            assert!(aisc_360_pin_plate(&wrong).is_err(), "{wrong:?}");
        }
        // A steel that breaks as soon as it yields is one.
        let brittle = PinPlate {
            tensile_strength: good.yield_strength,
            ..good
        };
        assert!(aisc_360_pin_plate(&brittle).is_ok());
        let found = aisc_360_pin_plate(&good).unwrap();
        assert!(found.checks(newtons(f64::NAN), Level::Design).is_err());
        assert!(found.governing(newtons(-1.0), Level::Design).is_err());
    }
}
