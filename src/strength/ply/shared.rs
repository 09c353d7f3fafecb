//! Several plies that lie between two shear planes and share one load.

use super::PlyResistance;
use crate::error::Error;
use crate::strength::check::{Level, Mode, Resistance};
use crate::units::Force;

/// Bounds of what plies on one side of a shear plane carry together in one mode.
///
/// Nothing says how such plies divide their load. Whatever it is, they carry no more than the sum of their
/// resistances, and they do carry what the weakest of them carries alone. Between the two it is undecided.
///
/// Source: statics; no publisher's rule was found.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::{check::{Level, Mode}, ply::{Ply, PlyBolt, PlyMethod, shared_resistance}};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let a36 = PlyMaterial::find("ASTM A36 steel")?;
/// let thin = Ply::of(a36, millimetres(2.0), millimetres(13.0));
/// let method = PlyMethod::MachineDesign { design_factor: 1.0 };
/// let outcome = thin.in_mode(Mode::Bearing, millimetres(12.0), PlyBolt::default(), method)?;
/// let one = *outcome.found().unwrap();
/// let pair = shared_resistance(&[one, one])?;
/// // 248 MPa on 2 x 2 x 12 mm2: 11.9 kN together, 5.96 kN alone.
/// assert_eq!(pair.holds(newtons(20e3), Level::Allowable)?, Some(false));
/// assert_eq!(pair.holds(newtons(5e3), Level::Allowable)?, Some(true));
/// assert_eq!(pair.holds(newtons(8e3), Level::Allowable)?, None);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct SharedResistance {
    /// The mode.
    pub mode: Mode,
    /// The weakest ply takes all of the load.
    pub alone: Resistance,
    /// Every ply takes what it can.
    pub together: Resistance,
}

/// The bounds of plies that share one side of a plane: their resistances in one mode by one method.
///
/// # Errors
///
/// [`Error::Mismatch`] if there is no ply, or the modes or methods differ.
///
/// ```
/// use shankline::strength::ply::shared_resistance;
/// assert!(shared_resistance(&[]).is_err());
/// ```
pub fn shared_resistance(plies: &[PlyResistance]) -> Result<SharedResistance, Error> {
    let Some((first, rest)) = plies.split_first() else {
        return Err(Error::Mismatch("no ply to share the load".into()));
    };
    let mut shared = SharedResistance {
        mode: first.mode,
        alone: first.resistance,
        together: first.resistance,
    };
    for ply in rest {
        if (ply.mode, ply.method) != (first.mode, first.method) {
            return Err(Error::Mismatch(
                "plies that share a load are compared in one mode by one method".into(),
            ));
        }
        let both = |a: Option<Force>, b: Option<Force>, with: fn(Force, Force) -> Force| {
            a.zip(b).map(|(a, b)| with(a, b))
        };
        let join = |own: Resistance, with: fn(Force, Force) -> Force| {
            let other = ply.resistance;
            Resistance::from_levels(
                both(own.nominal, other.nominal, with),
                both(own.design, other.design, with),
                both(own.allowable, other.allowable, with),
            )
        };
        shared.alone = join(shared.alone, Force::min)?;
        shared.together = join(shared.together, |a, b| a + b)?;
    }
    Ok(shared)
}

impl SharedResistance {
    /// Whether they hold a load: none if that depends on how they share it.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method has no resistance at that level; [`Error::OutOfRange`] for a load that is
    /// negative or not finite.
    ///
    /// ```
    /// use shankline::{Error, strength::check::Level, strength::ply::SharedResistance, units::newtons};
    /// fn undecided(pair: &SharedResistance) -> Result<bool, Error> {
    ///     Ok(pair.holds(newtons(8e3), Level::Allowable)?.is_none())
    /// }
    /// ```
    pub fn holds(&self, load: Force, level: Level) -> Result<Option<bool>, Error> {
        crate::error::not_negative("load", load)?;
        let (alone, together) = (self.alone.at(level)?, self.together.at(level)?);
        Ok(if load <= alone {
            Some(true)
        } else if load > together {
            Some(false)
        } else {
            None
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::newtons;

    /// Up to what the weakest alone bears it holds however the load is shared, beyond what all bear it does not, and between
    /// the two that is open; both limits belong to the better side.
    #[test]
    fn loads_at_the_bounds() {
        let levels = |load| Resistance::from_levels(None, Some(newtons(load)), None).unwrap();
        let shared = SharedResistance {
            mode: Mode::Bearing,
            alone: levels(10.0),
            together: levels(25.0),
        };
        for (load, holds) in [
            (0.0, Some(true)),
            (10.0, Some(true)),
            (10.001, None),
            (25.0, None),
            (25.001, Some(false)),
        ] {
            assert_eq!(
                shared.holds(newtons(load), Level::Design).unwrap(),
                holds,
                "{load}"
            );
        }
        assert!(shared.holds(newtons(-1.0), Level::Design).is_err());
        assert!(shared.holds(newtons(1.0), Level::Allowable).is_err());
    }
}
