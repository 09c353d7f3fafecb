//! Plates in shear: yielding of the gross section and rupture of the net section.

use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive, sane_stress};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::code::aisc_360::RUPTURE;
use crate::strength::code::{aisc_360, en_1993};
use crate::tables::methods;
use crate::units::{Area, Force, Length, Stress, Torque, from_base};

/// A published method for a plate in shear.
///
/// | method | yielding of the gross section | rupture of the net section |
/// |---|---|---|
/// | [`Aisc360`](Self::Aisc360) | 0.6 Fy Agv; 1.00, 1.50 | 0.6 Fu Anv; 0.75, 2.00 |
/// | [`En1993`](Self::En1993) | Agv fy / (sqrt 3 gM0), by 1.27 less in a bent plate | Anv fu / (sqrt 3 gM2) |
///
/// gM0 = 1.0 and gM2 = 1.25 are the recommended values.
///
/// Sources: AISC 360 J4.2, Eq. J4-3 and J4-4, by the institute's Design Examples, II.C-1. Steel Buildings in Europe, Part
/// 5: Joint Design, 2.2.5 and 3.2.2, with its factor 1.27 for end plates, fin plates and cleats; without the factor it is
/// EN 1993-1-1 6.2.6(2), recalled.
///
/// ```
/// use shankline::strength::ply::PlateShearMethod;
/// assert_eq!(PlateShearMethod::Aisc360.to_string(), "AISC 360 J4.2");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
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
pub enum PlateShearMethod {
    /// AISC 360, 2005 on.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360,
    /// EN 1993, by a European design guide.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993"))]
    En1993 {
        /// Whether the shear bends the plate in its plane as well, as in the plates and cleats of simple joints.
        bent: bool,
    },
}

impl PlateShearMethod {
    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::ply::PlateShearMethod;
    /// let method = PlateShearMethod::En1993 { bent: false }.method();
    /// assert_eq!(method.citation, "EN 1993-1-1:2005 6.2.6(2)");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Aisc360 => methods::AISC_360_J4_2,
            Self::En1993 { bent: true } => methods::STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_SHEAR,
            Self::En1993 { bent: false } => methods::EN_1993_1_1_2005_6_2_6_2,
        }
    }

    /// Of the net section: EN 1993-1-1 has none, the guide has.
    const fn rupture_method(self) -> &'static Method {
        match self {
            Self::Aisc360 => methods::AISC_360_J4_2,
            Self::En1993 { .. } => methods::STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_SHEAR,
        }
    }
}

impl fmt::Display for PlateShearMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// The sections of a plate in shear, and its strengths. The net area is thickness times
/// [`Stagger::net_width`](super::Stagger::net_width) of the holes in line with the load.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::ply::{PlateShear, PlateShearMethod, Stagger, StaggerRule, plate_shear};
/// use shankline::uom::si::force::kilonewton;
/// # fn main() -> Result<(), shankline::Error> {
/// // Fin plate of Steel Buildings in Europe, part 5: 360 x 10 mm, five holes of 22 mm: 450 and 497 kN
/// let (height, t) = (millimetres(360.0), millimetres(10.0));
/// let net = Stagger::net_width(StaggerRule::En1993, height, millimetres(22.0), 5, &[])?;
/// let plate = PlateShear {
///     yield_strength: megapascals(275.0),
///     tensile_strength: megapascals(430.0),
///     gross: height * t,
///     net: net * t,
/// };
/// let shear = plate_shear(&plate, PlateShearMethod::En1993 { bent: true })?;
/// let kilonewtons = |resistance: Force| resistance.get::<kilonewton>();
/// assert!((kilonewtons(shear.yielding.at(Level::Design)?) - 450.0).abs() < 0.5);
/// assert!((kilonewtons(shear.rupture.at(Level::Design)?) - 497.0).abs() < 0.5);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct PlateShear {
    /// Yield strength Fy = fy.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub yield_strength: Stress,
    /// Tensile strength Fu = fu.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub tensile_strength: Stress,
    /// Gross area in shear, Agv.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub gross: Area,
    /// Net area in shear, Anv; the gross one where no hole lies in the section.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub net: Area,
}

/// Resistances of a plate in shear.
///
/// ```
/// # use shankline::strength::ply::PlateShearResistance;
/// fn ruptures(plate: &PlateShearResistance) -> bool {
///     plate.rupture.design < plate.yielding.design
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PlateShearResistance {
    /// The plate.
    pub plate: PlateShear,
    /// The method.
    pub method: PlateShearMethod,
    /// Yielding of the gross section.
    pub yielding: Resistance,
    /// Rupture of the net section.
    pub rupture: Resistance,
}

/// A plate in shear, by a method: yielding of its gross section and rupture of its net section. Block shear is a mode of
/// its own, [`block_shear`](super::block_shear); bending, buckling and torsion of the plate are not looked at.
///
/// # Errors
///
/// [`Error::OutOfRange`] for an area that is not positive, a net area above the gross one, a strength outside 1 Pa to 1e6
/// GPa, or a tensile strength below the yield strength.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::ply::{PlateShear, PlateShearMethod, plate_shear};
/// use shankline::units::kip;
/// # fn main() -> Result<(), shankline::Error> {
/// // AISC, Design Examples, version 16, II.C-1: two angles, 564 and 366 kip by LRFD
/// let angles = PlateShear {
///     yield_strength: ksi(50.0),
///     tensile_strength: ksi(65.0),
///     gross: square_inches(18.8),
///     net: square_inches(12.5),
/// };
/// let shear = plate_shear(&angles, PlateShearMethod::Aisc360)?;
/// assert!((shear.yielding.at(Level::Design)?.get::<kip>() - 564.0).abs() < 0.5);
/// assert!((shear.rupture.at(Level::Design)?.get::<kip>() - 366.0).abs() < 0.5);
/// # Ok(())
/// # }
/// ```
pub fn plate_shear(
    plate: &PlateShear,
    method: PlateShearMethod,
) -> Result<PlateShearResistance, Error> {
    let fy = sane_stress("yield strength of the plate", plate.yield_strength)?;
    let fu = sane_stress("tensile strength of the plate", plate.tensile_strength)?;
    if fu < fy {
        let allowed = Allowed::AtLeast(fy.into());
        return Err(out_of_range("tensile strength of the plate", fu, allowed));
    }
    positive("gross area in shear", plate.gross)?;
    positive("net area in shear", plate.net)?;
    if plate.net > plate.gross {
        let allowed = Allowed::AtMost(plate.gross.into());
        return Err(out_of_range("net area in shear", plate.net, allowed));
    }
    let (yielding, rupture) = match method {
        PlateShearMethod::Aisc360 => {
            let factored = |nominal: Force, (phi, omega): (f64, f64)| {
                Resistance::from_levels(Some(nominal), Some(phi * nominal), Some(nominal / omega))
            };
            let [yields, tears] = aisc_360::ply::plate_shear(plate);
            (
                factored(yields, aisc_360::ply::SHEAR_YIELDING)?,
                factored(tears, RUPTURE)?,
            )
        }
        PlateShearMethod::En1993 { bent } => {
            let design = |load| Resistance::from_levels(None, Some(load), None);
            let [yields, tears] = en_1993::ply::plate_shear(plate, bent);
            (design(yields)?, design(tears)?)
        }
    };
    Ok(PlateShearResistance {
        plate: *plate,
        method,
        yielding,
        rupture,
    })
}

/// Moment that a plate bears in its plane, W fy by its elastic modulus; with holes in the section by that of what they
/// leave, which is on the safe side of EN 1993-1-1 6.2.5(4). `holes` are their places from the middle of the plate.
///
/// Source: Steel Buildings in Europe, Part 5: Joint Design, 3.2.3.
pub(crate) fn plate_bending(
    yield_strength: Stress,
    width: Length,
    thickness: Length,
    hole: Length,
    holes: impl Iterator<Item = Length>,
) -> Torque {
    let (w, d) = (width.value, hole.value);
    let lost: f64 = holes
        .map(|at| d * at.value * at.value + d * d * d / 12.0)
        .sum();
    let modulus = thickness.value * (w * w * w / 12.0 - lost) / (0.5 * w);
    from_base(modulus * yield_strength.value)
}

/// The longest lever arm at which a plate so thick needs no check of its buckling, t / 0.15.
///
/// Source: the same, 3.2.4.
pub(crate) fn shortest_plate_that_buckles(thickness: Length) -> Length {
    thickness / 0.15
}

impl PlateShearResistance {
    /// Checks the shear against both sections of a ply.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a load that is
    /// negative or not finite.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::{check::{Check, Level}, ply::PlateShearResistance};
    /// fn governing(plate: &PlateShearResistance) -> Result<Option<Check>, shankline::Error> {
    ///     Ok(Check::governing(plate.checks(newtons(100e3), Level::Design, 1)?))
    /// }
    /// ```
    pub fn checks(&self, load: Force, level: Level, ply: usize) -> Result<[Check; 2], Error> {
        let check = |mode, resistance: Resistance, method| -> Result<Check, Error> {
            let resistance = resistance.at(level)?;
            let check = Check::new(mode, Place::Ply(ply), load, resistance, level, method)?;
            Ok(check.warned(Cautions::default().with(Caution::of_method(method))))
        };
        let (own, net) = (self.method.method(), self.method.rupture_method());
        Ok([
            check(Mode::GrossSection, self.yielding, own)?,
            check(Mode::NetSection, self.rupture, net)?,
        ])
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::strength::ply::PlateShearResistance;
    /// fn steps(plate: &PlateShearResistance) -> usize {
    ///     plate.derivation().steps().len()
    /// }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let PlateShear {
            yield_strength: fy,
            tensile_strength: fu,
            gross,
            net,
        } = self.plate;
        let (own, other) = (self.method.method(), self.method.rupture_method());
        let title = Derivation::new("Plate in shear");
        let step = |what, formula, level, resistance: Resistance| {
            let load = resistance.at(level).unwrap_or_default();
            let symbol = if level == Level::Design { "VRd" } else { "Rn" };
            Step::new(what, symbol, formula, load)
        };
        let (gross_what, net_what) = (
            "yielding of the gross section",
            "rupture of the net section",
        );
        match self.method {
            PlateShearMethod::Aisc360 => {
                let yielding = step(gross_what, "0.6 * Fy * Agv", Level::Nominal, self.yielding)
                    .with("Fy", fy)
                    .with("Agv", gross)
                    .source(own);
                let rupture = step(net_what, "0.6 * Fu * Anv", Level::Nominal, self.rupture)
                    .with("Fu", fu)
                    .with("Anv", net)
                    .source(other);
                let derivation = title.step(yielding);
                let (phi, omega) = aisc_360::ply::SHEAR_YIELDING;
                let derivation = self.yielding.factored(derivation, Some(phi), Some(omega));
                self.rupture
                    .factored(derivation.step(rupture), Some(RUPTURE.0), Some(RUPTURE.1))
            }
            PlateShearMethod::En1993 { bent } => title
                .step(
                    step(
                        gross_what,
                        "Agv * fy / (k * sqrt(3) * gM0)",
                        Level::Design,
                        self.yielding,
                    )
                    .with("Agv", gross)
                    .with("fy", fy)
                    .with("k", en_1993::ply::bent(bent))
                    .with("gM0", 1.0)
                    .source(own),
                )
                .step(
                    step(
                        net_what,
                        "Anv * fu / (sqrt(3) * gM2)",
                        Level::Design,
                        self.rupture,
                    )
                    .with("Anv", net)
                    .with("fu", fu)
                    .with("gM2", en_1993::GAMMA_M2)
                    .source(other),
                ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{megapascals, newtons, square_millimetres};

    fn plate(gross: f64, net: f64) -> PlateShear {
        PlateShear {
            yield_strength: megapascals(275.0),
            tensile_strength: megapascals(430.0),
            gross: square_millimetres(gross),
            net: square_millimetres(net),
        }
    }

    #[test]
    fn each_method_on_one_plate_by_hand() {
        // 0.6 x 275 x 1000 = 165 kN; 0.6 x 430 x 600 = 154.8 kN
        let aisc = plate_shear(&plate(1000.0, 600.0), PlateShearMethod::Aisc360).unwrap();
        let [gross, net] = aisc.checks(newtons(110e3), Level::Allowable, 2).unwrap();
        assert!((gross.utilisation.value - 1.0).abs() < 1e-12);
        assert!((net.utilisation.value - 110.0 / 77.4).abs() < 1e-12);
        assert_eq!((net.place, net.mode), (Place::Ply(2), Mode::NetSection));
        aisc.derivation().check().unwrap();
        // 275 x 1000 / sqrt 3 = 158.77 kN, bent 125.02 kN; 430 x 600 / sqrt 3 / 1.25 = 119.17 kN
        for (bent, by_hand, warned) in [(false, 158_771.0, 1), (true, 125_016.0, 0)] {
            let en = plate_shear(&plate(1000.0, 600.0), PlateShearMethod::En1993 { bent }).unwrap();
            assert!((en.yielding.design.unwrap().value - by_hand).abs() < 1.0);
            assert!((en.rupture.design.unwrap().value - 119_165.0).abs() < 1.0);
            let [gross, _] = en.checks(newtons(1.0), Level::Design, 1).unwrap();
            assert_eq!(gross.cautions().count(), warned);
            assert!(en.checks(newtons(1.0), Level::Allowable, 1).is_err());
            en.derivation().check().unwrap();
        }
    }

    #[test]
    fn what_no_plate_can_be_is_refused() {
        let good = plate(1000.0, 1000.0);
        let weaker = PlateShear {
            tensile_strength: megapascals(274.0),
            ..good
        };
        for wrong in [
            plate(1000.0, 1000.1),
            plate(0.0, 0.0),
            plate(f64::NAN, 1.0),
            plate(1000.0, -1.0),
            weaker,
        ] {
            for method in [
                PlateShearMethod::Aisc360,
                PlateShearMethod::En1993 { bent: true },
            ] {
                assert!(plate_shear(&wrong, method).is_err(), "{wrong:?}");
            }
        }
        let found = plate_shear(&good, PlateShearMethod::Aisc360).unwrap();
        assert!(found.checks(newtons(f64::NAN), Level::Design, 1).is_err());
    }

    /// 200 x 10 mm of 100 MPa: W = 10 x 200^2 / 6 mm3, 6.667 kN m. Holes of 20 mm at 50 mm to either side take 20 x 50^2 +
    /// 20^3 / 12 each of the moment of 200^3 / 12: 6.667 (1 - 101 333 / 666 667) = 5.653 kN m.
    #[test]
    fn bending_of_a_plate_by_hand() {
        let mm = crate::units::millimetres;
        let bears = |holes: &[f64]| {
            let places = holes.iter().map(|&at| mm(at));
            plate_bending(megapascals(100.0), mm(200.0), mm(10.0), mm(20.0), places).value
        };
        assert!((bears(&[]) - 6666.667).abs() < 0.001);
        assert!((bears(&[50.0, -50.0]) - 5653.333).abs() < 0.001);
        // A hole in the middle costs next to nothing: 20^3 / 12.
        assert!((bears(&[0.0]) - 6660.0).abs() < 0.001);
        assert_eq!(shortest_plate_that_buckles(mm(15.0)), mm(100.0));
    }

    /// A net area may be the gross one and no more, a tensile strength the yield strength and no less.
    #[test]
    fn plates_at_their_limits() {
        let method = PlateShearMethod::Aisc360;
        assert!(plate_shear(&plate(1000.0, 1000.0), method).is_ok());
        assert!(plate_shear(&plate(1000.0, 1000.001), method).is_err());
        let even = PlateShear {
            tensile_strength: megapascals(275.0),
            ..plate(1000.0, 600.0)
        };
        assert!(plate_shear(&even, method).is_ok());
        let less = PlateShear {
            tensile_strength: megapascals(274.999),
            ..even
        };
        assert!(plate_shear(&less, method).is_err());
    }

    /// AISC works from the nominal load, EN from the design load.
    #[test]
    fn workings_name_their_level() {
        let symbols = |method| {
            let working = plate_shear(&plate(1000.0, 600.0), method)
                .unwrap()
                .derivation();
            working.check().unwrap();
            let first = working.steps()[0].symbol();
            alloc::string::String::from(first)
        };
        assert_eq!(symbols(PlateShearMethod::Aisc360), "Rn");
        assert_eq!(symbols(PlateShearMethod::En1993 { bent: true }), "VRd");
    }
}
