//! Which nuts and heads a wrench fits, and which socket screws a key.

use alloc::vec::Vec;
use core::fmt;

use super::bolts::{HexBolt, StructuralBolt};
use super::metric_screws::MetricHexCapScrew;
use super::nuts::Nut;
use super::screws::{HexCapScrew, HexScrew};
use super::sockets::SocketHeadCapScrew;
use crate::error::{Error, sane_length};
use crate::math::round;
use crate::source::Provenance;
use crate::units::{Length, inches, millimetres};

/// A hexagon in the tables: a nut or the head of a screw or bolt. Heads of aircraft bolts were not
/// read.
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
    /// A metric hexagon screw, ISO 4014 and ISO 4017; with fine pitch ISO 8765 and ISO 8676.
    HexScrew(&'static HexScrew),
    /// A metric hex cap screw, ASME B18.2.3.1M.
    MetricHexCapScrew(&'static MetricHexCapScrew),
    /// An inch hex bolt or heavy hex bolt, ASME B18.2.1.
    HexBolt(&'static HexBolt),
    /// A structural bolt, ASME B18.2.6 or EN 14399-4.
    StructuralBolt(&'static StructuralBolt),
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
            Self::MetricHexCapScrew(screw) => screw.size,
            Self::HexBolt(bolt) => bolt.size,
            Self::StructuralBolt(bolt) => bolt.size,
        }
    }

    /// Size of the wrench: the basic width across flats. Metric standards name the greatest width so;
    /// of an inch part with limits only it is the nearest 1/32 in to the greatest (0.752 in: 3/4 in).
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
                    nearest_thirty_second(most)
                })
            }),
            Self::HexCapScrew(screw) => Some(screw.width_across_flats_basic),
            Self::HexScrew(screw) => Some(screw.width_across_flats_max),
            Self::MetricHexCapScrew(screw) => Some(screw.width_across_flats_max),
            Self::HexBolt(bolt) => Some(nearest_thirty_second(bolt.width_across_flats_max)),
            Self::StructuralBolt(bolt) => Some(
                bolt.width_across_flats_basic
                    .unwrap_or(bolt.width_across_flats_max),
            ),
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
            Self::MetricHexCapScrew(screw) => screw.provenance,
            Self::HexBolt(bolt) => bolt.provenance,
            Self::StructuralBolt(bolt) => bolt.provenance,
        }
    }

    /// Least and greatest width across flats; a side nobody has read is taken from the wrench size.
    fn flats(&self) -> Option<(Length, Length)> {
        let (least, most) = match self {
            Self::Nut(nut) => {
                let size = self.wrench_size();
                return (nut.width_across_flats_min.or(size))
                    .zip(nut.width_across_flats_max.or(size));
            }
            Self::HexCapScrew(screw) => {
                (screw.width_across_flats_min, screw.width_across_flats_max)
            }
            Self::HexScrew(screw) => (screw.width_across_flats_min, screw.width_across_flats_max),
            Self::MetricHexCapScrew(screw) => {
                (screw.width_across_flats_min, screw.width_across_flats_max)
            }
            Self::HexBolt(bolt) => (bolt.width_across_flats_min, bolt.width_across_flats_max),
            Self::StructuralBolt(bolt) => {
                (bolt.width_across_flats_min, bolt.width_across_flats_max)
            }
        };
        Some((least, most))
    }
}

impl fmt::Display for Hexagon {
    /// The part and its size.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Nut(nut) => nut.fmt(f),
            Self::HexCapScrew(screw) => write!(f, "ASME B18.2.1 hex cap screw {}", screw.size),
            Self::HexScrew(screw) => write!(f, "ISO 4014 or ISO 4017 screw {}", screw.size),
            Self::MetricHexCapScrew(screw) => screw.fmt(f),
            Self::HexBolt(bolt) => bolt.fmt(f),
            Self::StructuralBolt(bolt) => bolt.fmt(f),
        }
    }
}

/// The nuts and heads a wrench of a nominal size is for. Nuts come first, inch before metric; then
/// screws, then bolts.
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

/// The nuts and heads a caliper reading across the flats may be. Nuts come first, inch before metric;
/// then screws, then bolts.
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

/// The socket head cap screws a hexagon key of a nominal size is for, inch before metric.
///
/// A size matches within half a thousandth of an inch, so that 0.078 in finds 5/64 in sockets, and
/// 2 mm, which is 0.0006 in larger, does not: a key that nearly fits rounds the socket.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a size that is not positive and finite.
///
/// ```
/// use shankline::{tables::wrench::socket_screws_for_key, units::millimetres};
/// # fn main() -> Result<(), shankline::Error> {
/// let found = socket_screws_for_key(millimetres(6.0))?;
/// assert_eq!(found.iter().map(|screw| screw.size).collect::<Vec<_>>(), ["M8"]);
/// # Ok(())
/// # }
/// ```
pub fn socket_screws_for_key(size: Length) -> Result<Vec<&'static SocketHeadCapScrew>, Error> {
    sane_length("key size", size)?;
    // Half of the last place, and a hair for the sum.
    let fits = |own: Length| (own - size).abs() <= inches(0.000_501);
    Ok(SocketHeadCapScrew::all_inch()
        .iter()
        .chain(SocketHeadCapScrew::all_metric())
        .filter(|screw| screw.key_size.is_some_and(fits))
        .collect())
}

/// Inch wrench sizes go by thirty-seconds.
fn nearest_thirty_second(width: Length) -> Length {
    const STEP: Length = inches(1.0 / 32.0);
    STEP * round((width / STEP).value)
}

/// Of the inch tables, which print three decimals, and of a caliper.
const ROUNDING: Length = millimetres(0.02);

fn all() -> impl Iterator<Item = Hexagon> {
    let nuts = Nut::all_inch().iter().chain(Nut::all_metric());
    let structural = StructuralBolt::all_inch()
        .iter()
        .chain(StructuralBolt::all_metric());
    nuts.map(Hexagon::Nut)
        .chain(HexCapScrew::all().iter().map(Hexagon::HexCapScrew))
        .chain(HexScrew::all().iter().map(Hexagon::HexScrew))
        .chain(
            MetricHexCapScrew::all()
                .iter()
                .map(Hexagon::MetricHexCapScrew),
        )
        .chain(HexBolt::all().iter().map(Hexagon::HexBolt))
        .chain(structural.map(Hexagon::StructuralBolt))
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

    /// Flats of ASME B18.2.1 and B18.2.6: a 15/16 in wrench is for 5/8 in hex, a 1-1/16 in wrench for
    /// 5/8 in heavy hex and structural heads.
    #[test]
    fn inch_bolts_by_their_wrench() {
        let found = names(inches(15.0 / 16.0));
        for name in ["hex cap screw 5/8", "hex bolt 5/8"] {
            assert!(
                found.contains(&alloc::format!("ASME B18.2.1 {name}")),
                "{name}"
            );
        }
        let found = names(inches(1.0625));
        for name in ["B18.2.1 heavy hex bolt 5/8", "B18.2.6 structural bolt 5/8"] {
            assert!(found.contains(&alloc::format!("ASME {name}")), "{name}");
        }
        assert!(names(millimetres(32.0)).contains(&"EN 14399-4 structural bolt M20".into()));
    }

    #[test]
    fn every_socket_screw_is_found_by_its_key_and_near_keys_are_not() {
        let all = SocketHeadCapScrew::all_inch()
            .iter()
            .chain(SocketHeadCapScrew::all_metric());
        let keyed: Vec<_> = all
            .filter_map(|screw| Some((screw, screw.key_size?)))
            .collect();
        assert_eq!(keyed.len(), 38);
        for (screw, key) in keyed {
            assert!(
                socket_screws_for_key(key).unwrap().contains(&screw),
                "{screw}"
            );
        }
        let sizes = |key| -> Vec<_> {
            let found = socket_screws_for_key(key).unwrap();
            found.iter().map(|screw| screw.size).collect()
        };
        assert_eq!(sizes(inches(0.078)), ["#2", "#3"]);
        assert_eq!(sizes(millimetres(2.0)), ["M2.5"]);
        assert_eq!(sizes(millimetres(4.0)), ["M5"]); // 5/32 in is 3.97 mm
    }

    #[test]
    fn nonsense_is_refused() {
        for bad in [f64::NAN, f64::INFINITY, 0.0, -1.0] {
            assert!(socket_screws_for_key(millimetres(bad)).is_err());
            assert!(hexagons_for_wrench(millimetres(bad)).is_err());
            assert!(hexagons_measuring(millimetres(bad)).is_err());
        }
        assert!(hexagons_for_wrench(millimetres(500.0)).unwrap().is_empty());
    }
}
