//! AISC 360, J3.10 (J3.11 in 2022), D2 and J4.4: what plies bear.

use crate::math::{powf, sqrt};
use crate::source::Method;
use crate::strength::check::Mode;
use crate::strength::ply::{HoleKind, PlateShear, euler};
use crate::strength::shear::AiscEdition;
use crate::tables::methods;
use crate::units::{Force, Length, Stress, inches, ksi};

/// What a hole counts more in the net section (B4.3b).
pub(in crate::strength) const MORE_OF_HOLE: Length = inches(1.0 / 16.0);
/// The net area with it.
pub(in crate::strength) const NET_AREA: &str = "(w - dh - in / 16) * t";

/// J3.10: times Fu d t.
pub(in crate::strength) const fn bearing(hole: HoleKind, deformation_matters: bool) -> f64 {
    match (hole, deformation_matters) {
        (HoleKind::LongSlotAcross, _) => 2.0,
        (_, true) => 2.4,
        (_, false) => 3.0,
    }
}

/// J3.10: times Fu Lc t, of both planes together.
pub(in crate::strength) const fn tear_out(hole: HoleKind, deformation_matters: bool) -> f64 {
    match (hole, deformation_matters) {
        (HoleKind::LongSlotAcross, _) => 1.0,
        (_, true) => 1.2,
        (_, false) => 1.5,
    }
}

/// What of it was recalled.
pub(in crate::strength) fn recalled(
    edition: AiscEdition,
    deformation_matters: bool,
    mode: Mode,
    hole: HoleKind,
) -> Option<&'static Method> {
    if matches!(mode, Mode::NetSection | Mode::GrossSection) {
        return Some(methods::AISC_360_D2);
    }
    if hole == HoleKind::LongSlotAcross {
        return Some(methods::AISC_360_J3_10_2_0_AND_1_0_OF_LONG_SLOTS);
    }
    if !deformation_matters {
        return Some(methods::AISC_360_J3_10_3_0_AND_1_5);
    }
    match edition {
        AiscEdition::E2016 => Some(methods::AISC_360_16_J3_10),
        AiscEdition::E2022 => Some(methods::AISC_360_22_J3_11),
        AiscEdition::E2005 | AiscEdition::E2010 => None,
    }
}

/// J4.2(a): phi and omega of yielding in shear.
pub(in crate::strength) const SHEAR_YIELDING: (f64, f64) = (1.00, 1.50);

/// J4.2: nominal yielding of the gross section in shear, and rupture of the net section.
pub(in crate::strength) fn plate_shear(plate: &PlateShear) -> [Force; 2] {
    [
        0.6 * plate.yield_strength * plate.gross,
        0.6 * plate.tensile_strength * plate.net,
    ]
}

/// Below this slenderness J4.4 has yielding alone.
const STOCKY: f64 = 25.0;

/// J4.4: Fy to KL/r 25, then E3: 0.658^(Fy / Fe) Fy to 4.71 sqrt(E / Fy), 0.877 Fe beyond.
pub(in crate::strength) fn pressed(yields: Stress, slender: f64) -> Stress {
    if slender <= STOCKY {
        return yields;
    }
    let modulus = ksi(29_000.0);
    let elastic = euler(modulus, slender);
    if slender <= 4.71 * sqrt((modulus / yields).value) {
        powf(0.658, (yields / elastic).value) * yields
    } else {
        0.877 * elastic
    }
}
