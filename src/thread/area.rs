//! Areas of threaded sections, each by the formula of one publisher.
//!
//! The inch and the metric tensile stress areas are not the same formula: the inch one averages
//! the pitch diameter with the flat root, the metric one with the rounded root. Using one for the
//! other is a common error of about one per cent.
//!
//! | function | formula | used for |
//! |---|---|---|
//! | [`unified`] | As = (pi/4) (D - 0.974279/n)^2 | inch threads of steel up to 100 ksi |
//! | [`unified_high_strength`] | As = pi (d2min/2 - 0.162380/n)^2 | inch threads of steel over 100 ksi |
//! | [`metric`] | As = (pi/4) (d - 0.938194 P)^2 | metric threads |
//! | [`unified_minor`] | Ar = (pi/4) (D - 1.299038/n)^2 | inch threads in shear |
//! | [`metric_minor`] | Ar = (pi/4) (d - 1.226869 P)^2 | metric threads in shear |

use core::f64::consts::FRAC_PI_4;

use crate::error::{Allowed, Error, LONGEST, out_of_range, sane_length};
use crate::units::{Area, Length};

/// H / P = sqrt(3) / 2.
pub(crate) const H_PER_PITCH: f64 = 0.866_025_403_784_438_6;
/// Inch tensile stress area: D less 9H/8.
pub(crate) const UNIFIED_LOSS: f64 = 9.0 / 8.0 * H_PER_PITCH;
/// Metric tensile stress area: d less 13H/12.
pub(crate) const METRIC_LOSS: f64 = 13.0 / 12.0 * H_PER_PITCH;
/// Inch minor-diameter area: D less 3H/2.
pub(crate) const UNIFIED_ROOT_LOSS: f64 = 1.5 * H_PER_PITCH;
/// Metric root area: d less 17H/12.
pub(crate) const METRIC_ROOT_LOSS: f64 = 17.0 / 12.0 * H_PER_PITCH;

/// Area of a circle, (pi/4) d^2.
#[inline]
pub(crate) fn circle(diameter: Length) -> Area {
    FRAC_PI_4 * (diameter * diameter)
}

/// Less than this is nothing left, in metres; its square is still above zero.
const NOTHING_LEFT: f64 = 1e-12;

/// The circle left inside the thread. Refuses a diameter and pitch that leave none.
#[inline]
fn section(diameter: Length, pitch: Length, loss: f64) -> Result<Area, Error> {
    let effective = diameter - loss * pitch;
    // With a positive pitch and section the diameter is positive too; NaN fails every comparison.
    let sound = pitch.value > 0.0 && effective.value > NOTHING_LEFT;
    if sound && diameter <= LONGEST && pitch <= LONGEST {
        Ok(circle(effective))
    } else {
        Err(section_error(diameter, pitch, loss))
    }
}

#[cold]
fn section_error(diameter: Length, pitch: Length, loss: f64) -> Error {
    let sane = sane_length("pitch", pitch).and(sane_length("nominal diameter", diameter));
    if let Err(error) = sane {
        return error;
    }
    let allowed = Allowed::Above((loss * pitch).into());
    out_of_range("nominal diameter", diameter, allowed)
}

/// Tensile stress area of a Unified thread of steel with a tensile strength up to 100 ksi.
///
/// As = (pi/4) (D - 9H/8)^2 = 0.7854 (D - 0.9743/n)^2, with D the basic major diameter and
/// n = 1/P the threads per inch.
///
/// Source: ASME B1.1, appendix on design formulas; FED-STD-H28/2, appendix; Machinery's Handbook,
/// formula 2a (read in two reproductions).
///
/// # Errors
///
/// [`Error::OutOfRange`] if a value is not positive and finite, or the diameter not greater than
/// 0.9743 P.
///
/// ```
/// use shankline::{thread::area, units::inches};
/// use shankline::uom::si::area::square_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// let area = area::unified(inches(0.5), inches(1.0 / 13.0))?;
/// assert!((area.get::<square_inch>() - 0.1419).abs() < 5e-5); // printed 0.1419
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn unified(diameter: Length, pitch: Length) -> Result<Area, Error> {
    section(diameter, pitch, UNIFIED_LOSS)
}

/// Tensile stress area of a Unified thread of steel with a tensile strength over 100 ksi.
///
/// As = pi (d2min/2 - 3H/16)^2 = pi (d2min/2 - 0.16238/n)^2, with d2min the minimum pitch
/// diameter of the class of the external thread. It is smaller than [`unified`] by the allowance
/// and tolerance of the pitch diameter.
/// [`ThreadLimits::tensile_stress_area`](super::ThreadLimits::tensile_stress_area) takes d2min from a
/// class.
///
/// Source: FED-STD-H28/2, appendix; Machinery's Handbook, formula 2b (the threshold of 100 ksi is
/// that of the handbook; one engineering page prints 180 ksi).
///
/// # Errors
///
/// [`Error::OutOfRange`] if a value is not positive and finite, or the pitch diameter not greater
/// than 0.3248 P.
///
/// ```
/// use shankline::{thread::area, units::inches};
/// use shankline::uom::si::area::square_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// // 1/2-13 UNC-2A: minimum pitch diameter 0.4435 in
/// let area = area::unified_high_strength(inches(0.4435), inches(1.0 / 13.0))?;
/// assert!((area.get::<square_inch>() - 0.1376).abs() < 5e-5);
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn unified_high_strength(minimum_pitch_diameter: Length, pitch: Length) -> Result<Area, Error> {
    // pi (d2/2 - 3H/16)^2 = (pi/4) (d2 - 3H/8)^2
    section(minimum_pitch_diameter, pitch, 0.375 * H_PER_PITCH)
}

/// Nominal stress area of an ISO metric thread.
///
/// As = (pi/4) ((d2 + d3)/2)^2 = (pi/4) (d - 13H/12)^2 = 0.7854 (d - 0.9382 P)^2, with
/// d2 = d - 3H/4 and d3 = d - 17H/12.
///
/// Source: ISO 898-1, clause on the nominal stress area; DIN 13-28; GB/T 16823.1.
///
/// # Errors
///
/// [`Error::OutOfRange`] if a value is not positive and finite, or the diameter not greater than
/// 0.9382 P.
///
/// ```
/// use shankline::{thread::area, units::millimetres};
/// use shankline::uom::si::area::square_millimeter;
/// # fn main() -> Result<(), shankline::Error> {
/// let area = area::metric(millimetres(12.0), millimetres(1.75))?;
/// assert!((area.get::<square_millimeter>() - 84.27).abs() < 5e-3); // printed 84.3
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn metric(diameter: Length, pitch: Length) -> Result<Area, Error> {
    section(diameter, pitch, METRIC_LOSS)
}

/// Area of a Unified thread at the minor diameter, Ar = (pi/4) (D - 1.299038/n)^2.
///
/// This is the "section at minor diameter at `D - 2 h_b`" of the handbook tables, `h_b = 3H/4`.
///
/// Source: Machinery's Handbook, thread tables; Shigley, Mechanical Engineering Design, 9th ed.,
/// Table 8-2.
///
/// # Errors
///
/// [`Error::OutOfRange`] if a value is not positive and finite, or the diameter not greater than
/// 1.2990 P.
///
/// ```
/// use shankline::{thread::area, units::inches};
/// use shankline::uom::si::area::square_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// let area = area::unified_minor(inches(0.5), inches(1.0 / 13.0))?;
/// assert!((area.get::<square_inch>() - 0.1257).abs() < 5e-5); // printed 0.1257
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn unified_minor(diameter: Length, pitch: Length) -> Result<Area, Error> {
    section(diameter, pitch, UNIFIED_ROOT_LOSS)
}

/// Area of an ISO metric thread at the rounded root, Ar = (pi/4) d3^2,
/// d3 = d - 17H/12 = d - 1.226869 P.
///
/// Source: Shigley, Mechanical Engineering Design, 9th ed., Table 8-1 (same constant); ISO 68-1
/// with root truncation H/6.
///
/// # Errors
///
/// [`Error::OutOfRange`] if a value is not positive and finite, or the diameter not greater than
/// 1.2269 P.
///
/// ```
/// use shankline::{thread::area, units::millimetres};
/// use shankline::uom::si::area::square_millimeter;
/// # fn main() -> Result<(), shankline::Error> {
/// let area = area::metric_minor(millimetres(16.0), millimetres(2.0))?;
/// assert!((area.get::<square_millimeter>() - 144.0).abs() < 0.5); // Shigley prints 144
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn metric_minor(diameter: Length, pitch: Length) -> Result<Area, Error> {
    section(diameter, pitch, METRIC_ROOT_LOSS)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{inches, millimetres};

    #[test]
    fn constants_are_those_of_the_standards() {
        assert!((UNIFIED_LOSS - 0.974_278_58).abs() < 1e-8);
        assert!((METRIC_LOSS - 0.938_194_19).abs() < 1e-8);
        assert!((UNIFIED_ROOT_LOSS - 1.299_038_11).abs() < 1e-8);
        assert!((METRIC_ROOT_LOSS - 1.226_869_32).abs() < 1e-8);
    }

    #[test]
    fn refuses_nonsense() {
        // The square of such a diameter is zero in f64.
        assert!(unified(millimetres(2.3e-308), millimetres(1.9e-308)).is_err());
        for bad in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(metric(millimetres(bad), millimetres(1.0)).is_err(), "{bad}");
            assert!(
                metric(millimetres(10.0), millimetres(bad)).is_err(),
                "{bad}"
            );
            assert!(
                unified_high_strength(inches(bad), inches(0.1)).is_err(),
                "{bad}"
            );
        }
        assert!(unified(inches(0.05), inches(0.1)).is_err());
    }
}
