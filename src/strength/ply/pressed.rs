//! Plates that are pressed along their plane: yielding, or buckling out of it, whichever comes first.

use super::PlyMethod;
use crate::error::{Error, sane_length, sane_stress};
use crate::math::sqrt;
use crate::source::Method;
use crate::strength::check::Resistance;
use crate::strength::code::{aisc_360, en_1993};
use crate::tables::methods;
use crate::units::{Force, Length, Stress, from_base};

/// A strip of a plate that stands for itself as a column: what lies beside it does not help it.
pub(crate) struct PressedPlate {
    pub(crate) yield_strength: Stress,
    /// Of the material; codes have their own.
    pub(crate) elastic_modulus: Option<Stress>,
    pub(crate) thickness: Length,
    pub(crate) width: Length,
    /// Buckling length out of the plane, K L.
    pub(crate) length: Length,
}

/// What becomes of the question.
pub(crate) enum Pressed {
    Found(Resistance, &'static Method),
    /// The modulus of elasticity is not known.
    NoModulus,
    /// No method here; why.
    None(&'static str),
}

/// The buckling length between two rows of bolts so far apart; none where nothing buckles between them.
///
/// Source: EN 1993-1-8 Table 3.3, notes, for EN 1993. Other publishers bound the pitch: with them the whole of it counts.
pub(crate) fn length_between(
    pitch: Length,
    thickness: Length,
    yields: Stress,
    method: PlyMethod,
) -> Option<Length> {
    if method != PlyMethod::En1993 {
        return Some(pitch);
    }
    en_1993::ply::length_between(pitch, thickness, yields)
}

/// The resistance of a strip that is pressed.
///
/// | method | stress | factors |
/// |---|---|---|
/// | AISC 360 J4.4 | Fy to KL/r 25, then E3: 0.658^(Fy / Fe) Fy to 4.71 sqrt(E / Fy), 0.877 Fe beyond | 0.90, 1.67 |
/// | EN 1993-1-1 6.3.1 | chi fy by curve c | gM1 = 1.0 |
/// | machine design | Johnson's parabola to Sy / 2, Euler beyond | nd |
pub(crate) fn pressed_plate(plate: &PressedPlate, method: PlyMethod) -> Result<Pressed, Error> {
    let yields = sane_stress("yield strength of the plate", plate.yield_strength)?;
    let thickness = sane_length("thickness of the plate", plate.thickness)?;
    let width = sane_length("width of the plate", plate.width)?;
    let length = sane_length("buckling length of the plate", plate.length)?;
    let slender = (length / thickness).value * sqrt(12.0);
    let bears = |stress: Stress| -> Force { stress * (width * thickness) };
    let (resistance, method) = match method {
        PlyMethod::Aisc360 { .. } => {
            let nominal = bears(aisc_360::ply::pressed(yields, slender));
            let (phi, omega) = aisc_360::YIELDING;
            let levels = (Some(nominal), Some(phi * nominal), Some(nominal / omega));
            (levels, methods::AISC_360_J4_4)
        }
        PlyMethod::En1993 => {
            let design = bears(en_1993::ply::pressed(yields, slender));
            (
                (None, Some(design), None),
                methods::EN_1993_1_1_2005_6_3_1_CURVE_C,
            )
        }
        PlyMethod::MachineDesign { design_factor } => {
            let Some(modulus) = plate.elastic_modulus else {
                return Ok(Pressed::NoModulus);
            };
            let nominal = bears(johnson_stress(yields, modulus, slender));
            let levels = (Some(nominal), None, Some(nominal / design_factor));
            (levels, methods::JOHNSON_EULER_COLUMNS)
        }
        _ => {
            return Ok(Pressed::None(
                "the load presses the plate, and the buckling of the publisher of its method is not built here",
            ));
        }
    };
    let (nominal, design, allowable) = resistance;
    let resistance = Resistance::from_levels(nominal, design, allowable)?;
    Ok(Pressed::Found(resistance, method))
}

/// Euler's stress.
pub(in crate::strength) fn euler(modulus: Stress, slender: f64) -> Stress {
    let pi = core::f64::consts::PI;
    pi * pi * modulus / (slender * slender)
}

fn johnson_stress(yields: Stress, modulus: Stress, slender: f64) -> Stress {
    let elastic = euler(modulus, slender);
    let half: Stress = from_base(0.5 * yields.value);
    if elastic < half {
        return elastic;
    }
    // The parabola that meets Euler's curve at half the yield strength.
    yields - yields * (yields / (4.0 * elastic)).value
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::strength::code::aisc_360::ply::pressed as aisc_stress;
    use crate::strength::code::en_1993::ply::pressed as en_1993_stress;
    use crate::units::{inches, ksi, megapascals, millimetres};

    /// Design stresses of the LRFD Manual, 2nd ed., Table 3-36 (36 ksi), which has 0.85 in them: the curve is that of E3.
    #[test]
    fn critical_stresses_as_printed() {
        for (slender, printed) in [
            (31.0, 29.09),
            (41.0, 28.01),
            (60.0, 25.32),
            (81.0, 21.66),
            (100.0, 18.08),
            (121.0, 14.16),
            (134.0, 11.88),
            (150.0, 9.48),
            (180.0, 6.59),
            (199.0, 5.39),
        ] {
            let found = 0.85 * (aisc_stress(ksi(36.0), slender) / ksi(1.0)).value;
            assert!((found - printed).abs() < 0.0051, "{slender}: {found}");
        }
        assert_eq!(aisc_stress(ksi(36.0), 25.0), ksi(36.0));
    }

    /// Shigley, 8th ed., instructor's solutions: a rod of 0.875 in, l/k 82.3, 37.5 kpsi, 30 Mpsi, bears 17 714 lbf by Johnson;
    /// 9th ed., Example 4-17: 88 kN on 37.48 mm, 1.5 m long, by Euler.
    #[test]
    fn columns_of_machine_design_as_printed() {
        let area = core::f64::consts::FRAC_PI_4 * 0.875 * 0.875;
        let found = johnson_stress(ksi(37.5), ksi(30e3), 82.3);
        assert!(((found / ksi(1.0)).value * 1e3 * area - 17_714.0).abs() < 2.0);
        let area = core::f64::consts::FRAC_PI_4 * 37.48 * 37.48;
        let found = johnson_stress(
            megapascals(500.0),
            megapascals(207e3),
            1500.0 / (37.48 / 4.0),
        );
        assert!(((found / megapascals(1.0)).value * area - 88e3).abs() < 50.0);
    }

    /// By hand at a slenderness ratio of 1: phi = 0.5 (1 + 0.49 x 0.8 + 1) = 1.196, chi = 1 / (1.196 + sqrt(0.430416)) =
    /// 0.53994; at 0.2 nothing is lost.
    #[test]
    fn curve_c_by_hand() {
        let yields = megapascals(275.0);
        let unit = core::f64::consts::PI * sqrt(210e3 / 275.0);
        let chi = |times: f64| (en_1993::ply::pressed(yields, times * unit) / yields).value;
        assert!((chi(1.0) - 0.539_94).abs() < 1e-5);
        assert!((chi(0.2) - 1.0).abs() < 1e-12 && (chi(0.199) - 1.0).abs() < 1e-12);
        assert!((chi(0.201) - 1.0).abs() < 1e-3);
    }

    #[test]
    fn between_bolts_of_en_1993() {
        let t = millimetres(10.0);
        let between =
            |pitch| length_between(millimetres(pitch), t, megapascals(235.0), PlyMethod::En1993);
        assert_eq!(between(90.0), None);
        assert!((between(100.0).unwrap() - millimetres(60.0)).abs() < millimetres(1e-9));
        let machine = PlyMethod::MachineDesign { design_factor: 2.0 };
        assert_eq!(
            length_between(inches(1.0), t, ksi(36.0), machine),
            Some(inches(1.0))
        );
    }

    #[test]
    fn a_longer_plate_never_bears_more() {
        for n in 1..400 {
            let slender = f64::from(n);
            let fy = megapascals(355.0);
            for stress in [aisc_stress, en_1993_stress, |y, s| {
                johnson_stress(y, megapascals(207e3), s)
            }] {
                let (near, far) = (stress(fy, slender), stress(fy, slender + 1.0));
                assert!(far <= near * (1.0 + 1e-12) && near <= fy, "{slender}");
            }
        }
    }

    /// By hand, at 200 GPa and 250 MPa: the two curves meet at half the yield strength, where pi^2 E / s^2 = 125 MPa, s = 125.66.
    #[test]
    fn johnson_and_euler_meet_at_half_the_yield_strength() {
        let stress = |slender| {
            (johnson_stress(megapascals(250.0), megapascals(200e3), slender) / megapascals(1.0))
                .value
        };
        for (slender, by_hand) in [
            (50.0, 230.2106), // 250 - 250^2 / (4 x 789.568)
            (125.0, 126.3162),
            (126.0, 124.3337), // pi^2 x 200e3 / 126^2
            (250.0, 31.5827),
        ] {
            let found = stress(slender);
            assert!((found - by_hand).abs() < 1e-3, "{slender}: {found}");
        }
    }

    /// Which levels a method gives, with its factors, for a stub of 10 x 50 mm that does not buckle: 275 x 500 N.
    #[test]
    fn levels_of_each_method() {
        let stub = |elastic_modulus| PressedPlate {
            yield_strength: megapascals(275.0),
            elastic_modulus,
            thickness: millimetres(10.0),
            width: millimetres(50.0),
            length: millimetres(10.0),
        };
        let levels = |method| match pressed_plate(&stub(Some(megapascals(1e9))), method) {
            Ok(Pressed::Found(found, _)) => [found.nominal, found.design, found.allowable]
                .map(|load| load.map(|load| (load.value / 10.0).round() * 10.0)),
            _ => [None; 3],
        };
        let aisc = PlyMethod::Aisc360 {
            edition: crate::strength::shear::AiscEdition::E2016,
            deformation_matters: true,
        };
        assert_eq!(
            levels(aisc),
            [Some(137_500.0), Some(123_750.0), Some(82_340.0)]
        );
        assert_eq!(levels(PlyMethod::En1993), [None, Some(137_500.0), None]);
        let machine = PlyMethod::MachineDesign { design_factor: 2.0 };
        assert_eq!(levels(machine), [Some(137_500.0), None, Some(68_750.0)]);
        assert!(matches!(
            pressed_plate(&stub(None), machine),
            Ok(Pressed::NoModulus)
        ));
        assert!(matches!(
            pressed_plate(&stub(None), PlyMethod::Bs5950),
            Ok(Pressed::None(_))
        ));
    }

    /// EN 1993-1-8 Table 3.3, note 2: nothing buckles between bolts up to 9 epsilon t, 90 mm of 10 mm S235.
    #[test]
    fn pitch_at_nine_epsilon_t() {
        let between = |pitch, yields| {
            length_between(
                millimetres(pitch),
                millimetres(10.0),
                megapascals(yields),
                PlyMethod::En1993,
            )
        };
        assert_eq!(between(90.0, 235.0), None);
        assert!(between(90.001, 235.0).is_some());
        // epsilon 0.5 of 940 MPa: 45 mm
        assert_eq!(between(45.0, 940.0), None);
        assert!((between(45.001, 940.0).unwrap() - millimetres(27.0006)).abs() < millimetres(1e-9));
    }
}
