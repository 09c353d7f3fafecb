//! Which nuts and screw heads a wrench fits.

use alloc::vec::Vec;
use core::fmt;

use super::nuts::Nut;
use super::screws::{HexCapScrew, HexScrew};
use crate::error::{Error, sane_length};
use crate::math::round;
use crate::source::Provenance;
use crate::units::{Length, inches, millimetres};

/// A hexagon in the tables: a nut or the head of a screw.
///
/// ```
/// use shankline::{tables::wrench::{Hexagon, hexagons_for_wrench}, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let found = hexagons_for_wrench(millimetres(13.0))?;
/// assert!(found.iter().any(|part| matches!(part, Hexagon::HexScrew(screw) if screw.size == "M8")));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum Hexagon {
    /// A nut.
    Nut(&'static Nut),
    /// An inch hex cap screw, ASME B18.2.1.
    HexCapScrew(&'static HexCapScrew),
    /// A metric hexagon screw, ISO 4014 and ISO 4017.
    HexScrew(&'static HexScrew),
}

impl Hexagon {
    /// Name of the thread size: `3/8`, `M12`.
    ///
    /// ```
    /// use shankline::{tables::wrench::hexagons_for_wrench, units::inches};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A 9/16 in wrench is for 3/8 in bolts.
    /// assert!(hexagons_for_wrench(inches(0.5625))?.iter().any(|part| part.size() == "3/8"));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn size(&self) -> &'static str {
        match self {
            Self::Nut(nut) => nut.size,
            Self::HexCapScrew(screw) => screw.size,
            Self::HexScrew(screw) => screw.size,
        }
    }

    /// Size of the wrench: the basic width across flats. Metric standards name the greatest width so;
    /// of an inch nut with limits only it is the nearest 1/32 in to the greatest (0.752 in: 3/4 in).
    /// None for a nut without flats in its table.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::wrench::Hexagon};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = Nut::find(NutStyle::Iso4032, &"M10".parse()?)?;
    /// assert_eq!(Hexagon::Nut(nut).wrench_size(), Some(millimetres(16.0)));
    /// let old = Nut::find(NutStyle::Din934, &"M10".parse()?)?;
    /// assert_eq!(Hexagon::Nut(old).wrench_size(), Some(millimetres(17.0)));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn wrench_size(&self) -> Option<Length> {
        match self {
            Self::Nut(nut) => nut.width_across_flats_basic.or_else(|| {
                let most = nut.width_across_flats_max?;
                Some(if nut.pitch.is_some() {
                    most
                } else {
                    THIRTY_SECOND * round((most / THIRTY_SECOND).value)
                })
            }),
            Self::HexCapScrew(screw) => Some(screw.width_across_flats_basic),
            Self::HexScrew(screw) => Some(screw.width_across_flats_max),
        }
    }

    /// Source of the row.
    ///
    /// ```
    /// use shankline::{tables::wrench::hexagons_for_wrench, units::millimetres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// for part in hexagons_for_wrench(millimetres(24.0))? {
    ///     println!("{part}: {}", part.provenance());
    /// }
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn provenance(&self) -> Provenance {
        match self {
            Self::Nut(nut) => nut.provenance,
            Self::HexCapScrew(screw) => screw.provenance,
            Self::HexScrew(screw) => screw.provenance,
        }
    }

    /// Least and greatest width across flats; a side nobody has read is taken from the wrench size.
    fn flats(&self) -> Option<(Length, Length)> {
        let (least, most) = match self {
            Self::Nut(nut) => (nut.width_across_flats_min, nut.width_across_flats_max),
            Self::HexCapScrew(screw) => (
                Some(screw.width_across_flats_min),
                Some(screw.width_across_flats_max),
            ),
            Self::HexScrew(screw) => (
                Some(screw.width_across_flats_min),
                Some(screw.width_across_flats_max),
            ),
        };
        let size = self.wrench_size();
        least.or(size).zip(most.or(size))
    }
}

impl fmt::Display for Hexagon {
    /// The part and its size.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Nut(nut) => nut.fmt(f),
            Self::HexCapScrew(screw) => write!(f, "ASME B18.2.1 hex cap screw {}", screw.size),
            Self::HexScrew(screw) => write!(f, "ISO 4014 or ISO 4017 screw {}", screw.size),
        }
    }
}

/// The nuts and screw heads a wrench of a nominal size is for. Nuts come first, inch before metric.
///
/// The wrench size of a part may differ by 0.02 mm, for the rounding of inch tables, so 19 mm is not
/// taken for 3/4 in (19.05 mm): a wrench that nearly fits rounds the corners.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a size that is not positive and finite.
///
/// ```
/// use shankline::{tables::wrench::hexagons_for_wrench, units::inches};
/// # fn main() -> Result<(), shankline::Error> {
/// let parts: Vec<String> =
///     hexagons_for_wrench(inches(0.75))?.iter().map(ToString::to_string).collect();
/// assert!(parts.contains(&"ASME B18.2.1 hex cap screw 1/2".to_string()));
/// # Ok(())
/// # }
/// ```
pub fn hexagons_for_wrench(size: Length) -> Result<Vec<Hexagon>, Error> {
    sane_length("wrench size", size)?;
    let fits = |own: Length| (own - size).abs() <= ROUNDING;
    Ok(all()
        .filter(|part| part.wrench_size().is_some_and(fits))
        .collect())
}

/// The nuts and screw heads a caliper reading across the flats may be. Nuts come first, inch before
/// metric.
///
/// A reading matches from the least to the greatest width across flats of the part, give or take
/// 0.02 mm; a worn or painted part may lie outside. The ranges of a metric and an inch part can
/// overlap: 18.9 mm is a 3/4 in or a 19 mm hexagon, which [`Hexagon::wrench_size`] tells apart.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a width that is not positive and finite.
///
/// ```
/// use shankline::{tables::wrench::hexagons_measuring, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let found = hexagons_measuring(millimetres(12.8))?;
/// assert!(found.iter().any(|part| part.wrench_size() == Some(millimetres(13.0))));
/// # Ok(())
/// # }
/// ```
pub fn hexagons_measuring(across_flats: Length) -> Result<Vec<Hexagon>, Error> {
    sane_length("width across flats", across_flats)?;
    let fits = |(least, most): (Length, Length)| {
        least - ROUNDING <= across_flats && across_flats <= most + ROUNDING
    };
    Ok(all()
        .filter(|part| part.flats().is_some_and(fits))
        .collect())
}

/// Step of inch wrench sizes.
const THIRTY_SECOND: Length = inches(1.0 / 32.0);

/// Of the inch tables, which print three decimals, and of a caliper.
const ROUNDING: Length = millimetres(0.02);

fn all() -> impl Iterator<Item = Hexagon> {
    let nuts = Nut::all_inch().iter().chain(Nut::all_metric());
    nuts.map(Hexagon::Nut)
        .chain(HexCapScrew::all().iter().map(Hexagon::HexCapScrew))
        .chain(HexScrew::all().iter().map(Hexagon::HexScrew))
}

#[cfg(test)]
mod tests {
    use alloc::string::{String, ToString};

    use super::*;

    fn names(across_flats: Length) -> Vec<String> {
        let found = hexagons_for_wrench(across_flats).unwrap();
        found.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn every_part_is_found_by_its_wrench_and_by_its_flats() {
        let mut parts = 0;
        for part in all() {
            let Some(size) = part.wrench_size() else {
                continue;
            };
            parts += 1;
            assert!(hexagons_for_wrench(size).unwrap().contains(&part), "{part}");
            let (least, most) = part.flats().unwrap();
            for width in [least, most] {
                assert!(hexagons_measuring(width).unwrap().contains(&part), "{part}");
            }
        }
        assert!(parts > 450, "{parts}");
    }

    /// Widths across flats of ISO 272, product grades A and B: 10, 13, 16, 18, 24, 30 mm.
    #[test]
    fn metric_wrenches_of_iso_272() {
        for (size, flats) in [
            ("M6", 10.0),
            ("M8", 13.0),
            ("M10", 16.0),
            ("M12", 18.0),
            ("M16", 24.0),
            ("M20", 30.0),
        ] {
            let found = hexagons_for_wrench(millimetres(flats)).unwrap();
            let screws = found
                .iter()
                .filter(|part| matches!(part, Hexagon::HexScrew(_)));
            assert!(
                screws.into_iter().all(|part| part.size() == size),
                "{flats}"
            );
            assert!(found.iter().any(|part| part.size() == size), "{flats}");
        }
    }

    #[test]
    fn a_near_wrench_of_the_other_system_is_no_match() {
        // 19 mm is the DIN 934 nut of M12, 3/4 in the head of 1/2 in.
        assert!(
            names(millimetres(19.0))
                .iter()
                .any(|name| name == "DIN 934 hex nut, M12")
        );
        assert!(
            !names(millimetres(19.0))
                .iter()
                .any(|name| name.ends_with("1/2"))
        );
        assert!(!names(inches(0.75)).iter().any(|name| name.contains("M12")));
        assert!(
            names(inches(0.75))
                .iter()
                .any(|name| name.ends_with("lock nut NE, 1/2"))
        );
        // A caliper cannot tell.
        let sizes = |found: Vec<Hexagon>| found.iter().map(Hexagon::size).collect::<Vec<_>>();
        let measured = sizes(hexagons_measuring(millimetres(18.9)).unwrap());
        assert!(measured.contains(&"M12") && measured.contains(&"1/2"));
    }

    #[test]
    fn nonsense_is_refused() {
        for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
            assert!(hexagons_for_wrench(millimetres(bad)).is_err());
            assert!(hexagons_measuring(millimetres(bad)).is_err());
        }
        assert!(hexagons_for_wrench(millimetres(500.0)).unwrap().is_empty());
    }
}
