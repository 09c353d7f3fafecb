//! A spring from a stated area.

use super::{part_length, sane_area, sane_stiffness, sane_stress};
use crate::error::Error;
use crate::units::{Area, Length, Stiffness, Stress};

/// Stiffness of a rod or tube of one area along its length: k = A E / l.
///
/// For a bolt of which a book states an area, or for members that are a tube or a solid block of stated area: both
/// go into [`LoadShare::new`](super::LoadShare::new).
///
/// Source: statics (Hooke's law).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a value outside the [ranges](crate::tension#ranges).
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tension::{LoadShare, rod_stiffness};
/// # fn main() -> Result<(), shankline::Error> {
/// // A steel bolt in an aluminium tube of three times its area: C = 207 / (207 + 3 x 71) = 0.493
/// let length = millimetres(50.0);
/// let bolt = rod_stiffness(square_millimetres(100.0), megapascals(207e3), length)?;
/// let tube = rod_stiffness(square_millimetres(300.0), megapascals(71e3), length)?;
/// assert!((LoadShare::new(bolt, tube)?.share.value - 0.493).abs() < 0.0005);
/// # Ok(())
/// # }
/// ```
pub fn rod_stiffness(area: Area, modulus: Stress, length: Length) -> Result<Stiffness, Error> {
    sane_area("area", area)?;
    sane_stress("modulus of elasticity", modulus)?;
    part_length("length", length)?;
    sane_stiffness("stiffness", area * modulus / length)
}
