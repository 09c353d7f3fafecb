//! Least distances of bolts in timber.

use alloc::vec::Vec;

use super::{MemberMaterial, TimberMember, TimberMethod};
use crate::error::Error;
use crate::parts::SAME_LENGTH;
use crate::strength::ply::{DistanceKind, ShortDistance};
use crate::tables::timber::TimberKind;
use crate::units::{Length, millimetres};

/// Distances of one bolt in a timber; by the load, as those of a steel ply. Unknown ones are left out.
///
/// ```
/// use shankline::{strength::timber::TimberDistances, units::inches};
/// let ends = TimberDistances { end: Some(inches(3.5)), ..TimberDistances::default() };
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct TimberDistances {
    /// To the end or edge that the load acts along, or towards.
    pub end: Option<Length>,
    /// To the edge or end across the load.
    pub edge: Option<Length>,
    /// To the next bolt along the load.
    pub pitch: Option<Length>,
    /// To the next bolt across the load.
    pub gauge: Option<Length>,
}

impl TimberDistances {
    /// The distances that are less than the least ones.
    ///
    /// # Errors
    ///
    /// As [`least_distances`].
    ///
    /// ```
    /// use shankline::strength::timber::{TimberDistances, TimberMember, TimberMethod};
    /// use shankline::{tables::timber::Timber, units::{degrees, inches, ksi}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let post = TimberMember::wood(inches(3.5), Timber::find("Hem-Fir")?, degrees(0.0));
    /// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.0 };
    /// let own = TimberDistances { end: Some(inches(3.0)), ..TimberDistances::default() };
    /// let short = own.short(&post, inches(0.5), method)?;
    /// assert_eq!(short[0].least, 7.0 * inches(0.5));
    /// # Ok(())
    /// # }
    /// ```
    pub fn short(
        &self,
        member: &TimberMember,
        diameter: Length,
        method: TimberMethod,
    ) -> Result<Vec<ShortDistance>, Error> {
        let least = least_distances(member, diameter, method)?;
        let pairs = [
            (DistanceKind::End, self.end, least.end),
            (DistanceKind::Edge, self.edge, least.edge),
            (DistanceKind::Pitch, self.pitch, least.pitch),
            (DistanceKind::Gauge, self.gauge, least.gauge),
        ];
        Ok(pairs
            .into_iter()
            .filter_map(|(kind, own, least)| {
                let (own, least) = (own?, least?);
                // A distance that was rounded to the limit is not short of it.
                (own < least - SAME_LENGTH).then(|| ShortDistance::new(kind, own, least))
            })
            .collect())
    }
}

/// Least distances of bolts in a timber member, for a load that may act towards its end; none of a plate.
///
/// NDS, for the full design value (a geometry factor of 1), load along the grain: end 7 D in softwood and 5 D in hardwood,
/// edge 1.5 D, next bolt 4 D along and 1.5 D across. Across the grain: loaded edge 4 D, end 4 D, next bolt 4 D along
/// the load; across it 2.5 D up to l/D = 2, 5 D from 6, (5 l + 10 D) / 8 between, l the thickness. EN 1995-1-1
/// Table 8.4, along: end max(7 d, 80 mm), edge 3 d, next bolt 5 d and 4 d. Across: loaded edge 4 d, end
/// max(7 d, 80 mm), next bolt 4 d. At an angle the greater of the two.
///
/// Sources: NDS 2018 Tables 12.5.1A to 12.5.1D and EN 1995-1-1:2004 Table 8.4, as quoted in public design notes and
/// scripts. NDS besides wants half the distance of rows as edge distance where l/D is above 6, and shear areas of angled
/// members; neither is here.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a diameter outside the method, a thickness that is not positive or an angle that is
/// not from 0 to 90 deg.
///
/// ```
/// use shankline::strength::timber::{TimberMember, TimberMethod, least_distances};
/// use shankline::{tables::timber::Timber, units::{degrees, millimetres, newtons}};
/// # fn main() -> Result<(), shankline::Error> {
/// let beam = TimberMember::wood(millimetres(75.0), Timber::find("C24")?, degrees(0.0));
/// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
/// let least = least_distances(&beam, millimetres(10.0), method)?;
/// assert_eq!(least.end, Some(millimetres(80.0))); // 7 d would be 70 mm
/// # Ok(())
/// # }
/// ```
pub fn least_distances(
    member: &TimberMember,
    diameter: Length,
    method: TimberMethod,
) -> Result<TimberDistances, Error> {
    super::check_diameter(diameter, method)?;
    member.check(diameter)?;
    let MemberMaterial::Wood(wood) = member.material else {
        return Ok(TimberDistances::default());
    };
    let d = diameter;
    // End, edge, pitch, gauge.
    let (along, across) = match method {
        TimberMethod::Nds { .. } => {
            let end = match wood.kind {
                TimberKind::Softwood => 7.0 * d,
                TimberKind::Hardwood => 5.0 * d,
            };
            let slender = (member.thickness / d).value;
            let rows = (5.0 * slender + 10.0) / 8.0;
            (
                [end, 1.5 * d, 4.0 * d, 1.5 * d],
                [4.0 * d, 4.0 * d, 4.0 * d, rows.clamp(2.5, 5.0) * d],
            )
        }
        TimberMethod::En1995 { .. } => {
            let seven = 7.0 * d;
            let least = millimetres(80.0);
            let end = if seven > least { seven } else { least };
            (
                [end, 3.0 * d, 5.0 * d, 4.0 * d],
                [4.0 * d, end, 4.0 * d, 4.0 * d],
            )
        }
    };
    let angle = wood.grain_angle;
    let of = |index: usize| {
        let (along, across) = (along.get(index).copied()?, across.get(index).copied()?);
        if angle.value <= 0.0 {
            Some(along)
        } else if angle >= crate::units::degrees(90.0) || across > along {
            Some(across)
        } else {
            Some(along)
        }
    };
    Ok(TimberDistances {
        end: of(0),
        edge: of(1),
        pitch: of(2),
        gauge: of(3),
    })
}
