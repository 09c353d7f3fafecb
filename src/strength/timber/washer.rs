//! Washers on timber: their size, what the timber under them bears, and the pull of the bolt that follows.

use alloc::vec::Vec;

use super::rule::Requirement;
use super::{TimberFact, TimberMethod, check_diameter};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::source::Method;
use crate::strength::check::{Level, Resistance};
use crate::tables::methods;
use crate::tables::washers::{Washer, WasherStyle};
use crate::units::{Area, Force, Length, SAME_LENGTH, Stress, inches, millimetres};

const CUT_WASHER: &Method = methods::NDS_2018_12_1_3_STANDARD_CUT_WASHER;

/// A washer between timber and head, or timber and nut.
///
/// ```
/// use shankline::{strength::timber::TimberWasher, units::millimetres};
/// let plate = TimberWasher {
///     width: millimetres(60.0), thickness: millimetres(6.0), hole: millimetres(18.0), square: true,
/// };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TimberWasher {
    /// Diameter, or side of a square one.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub width: Length,
    /// Thickness.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// Diameter of its hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub hole: Length,
    /// Whether it is square.
    pub square: bool,
}

/// What the timber under a washer bears, or what must be known to say so.
///
/// ```
/// # use shankline::strength::timber::WasherBearing;
/// fn known(found: &WasherBearing) -> bool {
///     found.missing.is_empty()
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WasherBearing {
    /// Allowable (NDS), or characteristic and design load (EN). None as long as anything is missing.
    pub resistance: Option<Resistance>,
    /// What is not known.
    pub missing: Vec<TimberFact>,
    /// What the user must be told.
    pub cautions: Cautions,
}

impl TimberWasher {
    /// What a steel plate on the timber is worth as a washer by EN 1995-1-1: a round one of the lesser of 12 times
    /// its thickness and 4 d.
    ///
    /// Source: EN 1995-1-1:2004, 8.5.2(3), recalled; a worked example of a textbook agrees.
    ///
    /// ```
    /// use shankline::{strength::timber::TimberWasher, units::millimetres};
    /// let plate = TimberWasher::of_plate(millimetres(4.0), millimetres(18.0), millimetres(16.0));
    /// assert_eq!(plate.width, millimetres(48.0));
    /// ```
    #[must_use]
    pub fn of_plate(thickness: Length, hole: Length, diameter: Length) -> Self {
        let (wide, most) = (12.0 * thickness, 4.0 * diameter);
        Self {
            width: if wide < most { wide } else { most },
            thickness,
            hole,
            square: false,
        }
    }

    fn check(&self, diameter: Length) -> Result<(), Error> {
        sane_length("side or diameter of the washer", self.width)?;
        sane_length("thickness of the washer", self.thickness)?;
        sane_length("hole of the washer", self.hole)?;
        if self.hole < diameter - SAME_LENGTH || self.hole >= self.width {
            let allowed = Allowed::FromBelow(diameter.into(), self.width.into());
            return Err(out_of_range("hole of the washer", self.hole, allowed));
        }
        Ok(())
    }

    /// The rules for a washer under head or nut on timber: its width and its thickness. Without a washer both are
    /// missing.
    ///
    /// NDS 12.1.3: at least a standard cut washer (read in a handbook); that this is the type A wide of ASME B18.21.1
    /// is common practice, no source, and its least width and thickness are taken. EN 1995-1-1, 10.4.3(2): side or
    /// diameter at least 3 d, thickness at least 0.3 d (recalled).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter outside the method, or a washer with a length that is not positive and
    /// finite or a hole smaller than the bolt or as wide as the washer; [`Error::NoValue`] where the standard
    /// washer of that size is not in the tables.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{Judged, TimberMethod, TimberWasher};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // ISO 7089 for M16: 30 mm wide, 3 mm thick
    /// let plain = TimberWasher {
    ///     width: millimetres(30.0), thickness: millimetres(3.0), hole: millimetres(17.0), square: false,
    /// };
    /// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
    /// let [width, thickness] = TimberWasher::rules(Some(&plain), millimetres(16.0), method)?;
    /// assert_eq!((width.judged(), thickness.judged()), (Judged::TooSmall, Judged::TooSmall));
    /// assert_eq!(width.least, Some(millimetres(48.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn rules(
        washer: Option<&Self>,
        diameter: Length,
        method: TimberMethod,
    ) -> Result<[Requirement; 2], Error> {
        check_diameter(diameter, method)?;
        if let Some(washer) = washer {
            washer.check(diameter)?;
        }
        let (width, thickness) = (
            washer.map(|washer| washer.width),
            washer.map(|washer| washer.thickness),
        );
        let (least_width, least_thickness, clause, cautions) = match method {
            TimberMethod::Nds { .. } => {
                let (width, thickness, cautions) = cut_washer(diameter)?;
                (width, thickness, CUT_WASHER, cautions)
            }
            TimberMethod::En1995 { .. } => (
                3.0 * diameter,
                0.3 * diameter,
                methods::EN_1995_1_1_2004_10_4_3_2,
                Cautions::default(),
            ),
        };
        let rule = |fact, own, least| -> Result<Requirement, Error> {
            let rule = Requirement::new(fact, own, clause)?;
            Ok(rule.at_least(least).warned(cautions.clone()))
        };
        Ok([
            rule(TimberFact::WasherWidth, width, least_width)?,
            rule(TimberFact::WasherThickness, thickness, least_thickness)?,
        ])
    }

    /// What the timber under the washer bears across its grain.
    ///
    /// `compression_across` is `fc,90,k` of EN 338 or EN 14080, or `Fc_perp` of the NDS supplement with its adjustment for
    /// moisture and temperature, as [`Timber::compression`](crate::tables::timber::Timber::compression) has both. EN 1995-1-1,
    /// 8.5.2(2): 3.0 `fc,90,k` on the washer less a hole of d + 1 mm (read in worked examples of a textbook). NDS
    /// 3.10.2: `Fc_perp` on the washer less a hole of D + 1/16 in; its bearing area factor above 1 is not taken
    /// (recalled). A greater hole of the washer counts itself.
    ///
    /// # Errors
    ///
    /// As [`rules`](Self::rules) for diameter and washer; [`Error::OutOfRange`] for a strength that is not positive and
    /// finite, a factor of the method outside its range, or a washer that the hole leaves nothing of.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{TimberFact, TimberMethod, TimberWasher};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let washer = TimberWasher {
    ///     width: millimetres(50.0), thickness: millimetres(5.0), hole: millimetres(17.0), square: false,
    /// };
    /// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
    /// // C24: fc,90,k = 2.5 N/mm2; 3 x 2.5 x pi / 4 (50^2 - 17^2) = 13.024 kN
    /// let found = TimberWasher::bearing(Some(&washer), millimetres(16.0), Some(megapascals(2.5)), method)?;
    /// let bears = found.resistance.and_then(|resistance| resistance.nominal);
    /// assert!((bears.unwrap() - newtons(13_024.0)).abs() < newtons(1.0));
    /// let unknown = TimberWasher::bearing(Some(&washer), millimetres(16.0), None, method)?;
    /// assert_eq!(unknown.missing, [TimberFact::CompressionAcross]);
    /// # Ok(())
    /// # }
    /// ```
    pub fn bearing(
        washer: Option<&Self>,
        diameter: Length,
        compression_across: Option<Stress>,
        method: TimberMethod,
    ) -> Result<WasherBearing, Error> {
        check_diameter(diameter, method)?;
        if let Some(washer) = washer {
            washer.check(diameter)?;
        }
        if let Some(strength) = compression_across {
            positive("compressive strength across the grain", strength)?;
        }
        let (Some(washer), Some(strength)) = (washer, compression_across) else {
            let facts = [
                (TimberFact::WasherWidth, washer.is_none()),
                (TimberFact::CompressionAcross, compression_across.is_none()),
            ];
            let missing = facts.into_iter().filter(|(_, missing)| *missing);
            let missing = missing.map(|(fact, _)| fact).collect();
            return Ok(WasherBearing {
                resistance: None,
                missing,
                cautions: Cautions::default(),
            });
        };
        let over = match method {
            TimberMethod::Nds { .. } => inches(1.0 / 16.0),
            TimberMethod::En1995 { .. } => millimetres(1.0),
        };
        let hole = washer.hole.max(diameter + over);
        let quarter = core::f64::consts::FRAC_PI_4;
        let outer = if washer.square { 1.0 } else { quarter };
        let area: Area = outer * washer.width * washer.width - quarter * hole * hole;
        positive("area of the washer on the timber", area.value)?;
        let load: Force = strength * area;
        let (resistance, method) = match method {
            TimberMethod::Nds { .. } => (
                Resistance::from_levels(None, None, Some(load))?,
                methods::NDS_2018_3_10_2_BEARING_ACROSS_THE_GRAIN,
            ),
            TimberMethod::En1995 { kmod, gamma_m, .. } => {
                method.check_factors()?;
                let load = 3.0 * load;
                let design = kmod / gamma_m * load;
                (
                    Resistance::from_levels(Some(load), Some(design), None)?,
                    methods::EN_1995_1_1_2004_8_5_2,
                )
            }
        };
        // The factor of EN was read in a textbook, its plates and the NDS were not.
        let caution = resistance
            .allowable
            .and_then(|_| Caution::of_method(method));
        Ok(WasherBearing {
            resistance: Some(resistance),
            missing: Vec::new(),
            cautions: Cautions::default().with(caution),
        })
    }
}

/// Least width and thickness of the standard cut washer for a bolt.
fn cut_washer(diameter: Length) -> Result<(Length, Length, Cautions), Error> {
    let wide = Washer::of_style(WasherStyle::TypeAWide).iter();
    let fits = wide.filter(|washer| washer.nominal_diameter >= diameter - SAME_LENGTH);
    let smallest = fits.min_by(|a, b| {
        let (a, b) = (a.nominal_diameter.value, b.nominal_diameter.value);
        a.total_cmp(&b)
    });
    let found = smallest.and_then(|washer| {
        let width = washer
            .outside_diameter_min
            .or(washer.outside_diameter_nominal)?;
        let thickness = washer.thickness_min.or(washer.thickness_nominal)?;
        Some((width, thickness, washer.cautions()))
    });
    found.ok_or_else(|| Error::NoValue {
        quantity: "standard cut washer",
        subject: alloc::format!("a bolt of {}", crate::error::Amount::from(diameter)),
        reason: "the tables of washers have none of type A wide",
    })
}

/// The pull of the bolt that EN 1995-1-1 may count, and what must be known to count any.
///
/// ```
/// # use shankline::strength::timber::AxialCapacity;
/// fn counts(found: &AxialCapacity) -> bool {
///     found.missing.is_empty()
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct AxialCapacity {
    /// Characteristic axial capacity `Fax,Rk`: zero as long as anything is missing.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub axial: Force,
    /// What is not known.
    pub missing: Vec<TimberFact>,
    /// What the user must be told.
    pub cautions: Cautions,
}

/// The characteristic axial capacity of a bolt through timber by EN 1995-1-1: the least of its own in tension and of what
/// lies under head and nut. Without washers that are known there is none, so no pull adds to a yield mode.
///
/// `under_head` and `under_nut` are of [`TimberWasher::bearing`]; `bolt_tension` is the characteristic resistance in
/// tension, 0.9 fub As of EN 1993-1-8. Source: EN 1995-1-1:2004, 8.5.2(1), recalled.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a tension that is not positive and finite; [`Error::NoValue`] for a bearing by another
/// method.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::{TimberMethod, TimberWasher, en_axial_capacity};
/// # fn main() -> Result<(), shankline::Error> {
/// let washer = TimberWasher {
///     width: millimetres(50.0), thickness: millimetres(5.0), hole: millimetres(17.0), square: false,
/// };
/// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
/// let m16 = millimetres(16.0);
/// let known = TimberWasher::bearing(Some(&washer), m16, Some(megapascals(2.5)), method)?;
/// let none = TimberWasher::bearing(None, m16, Some(megapascals(2.5)), method)?;
/// let tension = Some(newtons(56.5e3)); // class 4.6
/// assert!(en_axial_capacity(&known, &known, tension)?.axial > newtons(13e3));
/// assert_eq!(en_axial_capacity(&known, &none, tension)?.axial, newtons(0.0));
/// # Ok(())
/// # }
/// ```
pub fn en_axial_capacity(
    under_head: &WasherBearing,
    under_nut: &WasherBearing,
    bolt_tension: Option<Force>,
) -> Result<AxialCapacity, Error> {
    let caution = Caution::of_method(methods::EN_1995_1_1_2004_8_5_2_1);
    let mut cautions = Cautions::default().with(caution);
    let mut missing = Vec::new();
    let mut least: Option<Force> = None;
    let mut lower = |load: Force| {
        least = Some(least.map_or(load, |least| if load < least { load } else { least }));
    };
    for bearing in [under_head, under_nut] {
        if let Some(resistance) = bearing.resistance {
            lower(resistance.at(Level::Nominal)?);
        }
        missing.extend(&bearing.missing);
        cautions = cautions.and(bearing.cautions.clone());
    }
    match bolt_tension {
        Some(tension) => lower(positive("resistance of the bolt in tension", tension)?),
        None => missing.push(TimberFact::BoltTension),
    }
    let mut seen = Vec::new();
    missing.retain(|fact| {
        let new = !seen.contains(fact);
        seen.push(*fact);
        new
    });
    Ok(AxialCapacity {
        axial: least.filter(|_| missing.is_empty()).unwrap_or_default(),
        missing,
        cautions,
    })
}
