//! Several bolts in a row along the load: what each of them still carries.

use alloc::vec::Vec;

use super::{
    MemberMaterial, TimberConnection, TimberFact, TimberMember, TimberMethod, check_diameter,
};
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive, sane_length};
use crate::math::{powf, sqrt};
use crate::source::Method;
use crate::tables::methods;
use crate::units::{Angle, Force, INCH, Length, POUND_FORCE, Ratio, degrees, from_base};

/// No row is longer: the powers of the formulas stay finite.
const MOST_BOLTS: u32 = 1000;

fn check_bolts(bolts: u32) -> Result<f64, Error> {
    if (1..=MOST_BOLTS).contains(&bolts) {
        return Ok(f64::from(bolts));
    }
    let allowed = Allowed::FromTo(1.0.into(), f64::from(MOST_BOLTS).into());
    Err(out_of_range(
        "number of bolts in a row",
        f64::from(bolts),
        allowed,
    ))
}

/// A row of bolts as the group action factor of NDS sees it.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::{NdsRow, nds_group_action};
/// use shankline::units::pounds_force;
/// # fn main() -> Result<(), shankline::Error> {
/// // Two sides of 5 in2 together on a main member of 10 in2, E = 1 400 000 psi
/// let row = NdsRow {
///     bolts: 4,
///     pitch: inches(4.0),
///     diameter: inches(1.0),
///     main_stiffness: pounds_force(14e6),
///     side_stiffness: pounds_force(7e6),
///     metal: false,
/// };
/// // Table 11.3.6A prints 0.84 (recalled).
/// assert!((nds_group_action(&row)?.value - 0.84).abs() < 0.005);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NdsRow {
    /// Number n of bolts in the row, 1 to 1000.
    pub bolts: u32,
    /// Distance s between them.
    pub pitch: Length,
    /// Diameter D, at most 1 in.
    pub diameter: Length,
    /// Modulus of elasticity times gross section of the main member, `Em Am`.
    pub main_stiffness: Force,
    /// The same of the side members together, `Es As`.
    pub side_stiffness: Force,
    /// Whether main or side members are of metal.
    pub metal: bool,
}

/// Group action factor `C_g` of NDS: what share of its value each bolt of a row keeps.
///
/// `C_g` = m (1 - m^2n) / (n ((1 + R m^n) (1 + m) - 1 + m^2n)) (1 + R) / (1 - m), with R the lesser stiffness over the
/// greater, m = u - sqrt(u^2 - 1), u = 1 + g s / 2 (1 / (Em Am) + 1 / (Es As)), and the load/slip modulus g =
/// 180 000 `D^1.5` lbf/in of timber to timber, 270 000 `D^1.5` of timber to metal, D in inches. 1 for D under 1/4 in.
/// Source: NDS 2018 Eq. 11.3-1, recalled; it gives Table 11.3.6A as far as that is remembered.
///
/// # Errors
///
/// [`Error::OutOfRange`] for what is not positive and finite, a diameter over 1 in, or a number of bolts that is not
/// from 1 to 1000.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::{NdsRow, nds_group_action};
/// use shankline::units::pounds_force;
/// # fn main() -> Result<(), shankline::Error> {
/// let single = NdsRow {
///     bolts: 1,
///     pitch: inches(4.0),
///     diameter: inches(0.5),
///     main_stiffness: pounds_force(14e6),
///     side_stiffness: pounds_force(14e6),
///     metal: false,
/// };
/// assert!((nds_group_action(&single)?.value - 1.0).abs() < 1e-12);
/// # Ok(())
/// # }
/// ```
pub fn nds_group_action(row: &NdsRow) -> Result<Ratio, Error> {
    let n = check_bolts(row.bolts)?;
    sane_length("pitch of the bolts", row.pitch)?;
    sane_length("bolt diameter", row.diameter)?;
    let main = positive("stiffness of the main member", row.main_stiffness)?;
    let side = positive("stiffness of the side members", row.side_stiffness)?;
    let inch = row.diameter.value / INCH;
    if inch > 1.0 + 1e-6 {
        let allowed = Allowed::AtMost(crate::units::inches(1.0).into());
        return Err(out_of_range("bolt diameter", row.diameter, allowed));
    }
    if inch < 0.25 - 1e-9 || row.bolts == 1 {
        return Ok(from_base(1.0));
    }
    let slip = if row.metal { 270e3 } else { 180e3 } * powf(inch, 1.5) * POUND_FORCE / INCH;
    // u - 1, so that stiff members lose no digits: m = u - sqrt(u^2 - 1) < 1.
    let over = 0.5 * slip * row.pitch.value * (1.0 / main.value + 1.0 / side.value);
    let root = sqrt(over * (over + 2.0));
    let m = 1.0 / (1.0 + over + root);
    let less = root - over; // 1 - m
    let stiffness = (side / main).value;
    let r = stiffness.min(1.0 / stiffness);
    let (once, twice) = (powf(m, n), powf(m, 2.0 * n));
    let share = m * (1.0 - twice) / (n * ((1.0 + r * once) * (1.0 + m) - 1.0 + twice));
    let factor = share * (1.0 + r) / less;
    positive("group action factor", factor)?;
    Ok(from_base(factor.min(1.0)))
}

/// Effective number of bolts of a row by EN 1995-1-1: along the grain `n_ef` = min(n, `n^0.9` (a1 / (13 d))^(1/4)), across it n,
/// between them in proportion to the angle.
///
/// `pitch` is a1, the distance along the grain; 0 to 90 deg between load and grain. Source: EN 1995-1-1:2004 Eq. 8.34 and
/// 8.5.1.1(4), (5), recalled.
///
/// # Errors
///
/// [`Error::OutOfRange`] for lengths that are not positive and finite, an angle that is not from 0 to 90 deg, or a
/// number of bolts that is not from 1 to 1000.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::en_effective_bolts;
/// use shankline::units::degrees;
/// # fn main() -> Result<(), shankline::Error> {
/// let four = |angle| en_effective_bolts(4, millimetres(100.0), millimetres(16.0), degrees(angle));
/// assert!((four(0.0)? - 2.8997).abs() < 1e-4); // 4^0.9 (100 / 208)^0.25
/// assert_eq!(four(90.0)?, 4.0);
/// # Ok(())
/// # }
/// ```
pub fn en_effective_bolts(
    bolts: u32,
    pitch: Length,
    diameter: Length,
    grain_angle: Angle,
) -> Result<f64, Error> {
    let n = check_bolts(bolts)?;
    sane_length("pitch of the bolts", pitch)?;
    sane_length("bolt diameter", diameter)?;
    let right = degrees(90.0);
    if !(grain_angle.value >= 0.0 && grain_angle <= right) {
        let allowed = Allowed::FromTo(Angle::default().into(), right.into());
        return Err(out_of_range("angle of load to grain", grain_angle, allowed));
    }
    let along = n.min(powf(n, 0.9) * powf((pitch / (13.0 * diameter)).value, 0.25));
    // One bolt is one bolt, however near the end.
    let along = if bolts == 1 { 1.0 } else { along };
    let turned = (grain_angle / right).value;
    let effective = along + turned * (n - along);
    Ok(if turned >= 1.0 { n } else { effective })
}

/// What is known of a row of bolts along the load; none for what is not.
///
/// ```
/// use shankline::{strength::timber::BoltRow, units::millimetres};
/// let row = BoltRow { bolts: Some(3), pitch: Some(millimetres(120.0)), ..BoltRow::default() };
/// assert!(row.main_stiffness.is_none());
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct BoltRow {
    /// Number of bolts in the row.
    pub bolts: Option<u32>,
    /// Distance between them.
    pub pitch: Option<Length>,
    /// NDS: modulus of elasticity times gross section of the main member.
    pub main_stiffness: Option<Force>,
    /// NDS: the same of the side members together.
    pub side_stiffness: Option<Force>,
}

/// What a row leaves each of its bolts, or what must be known to say so.
///
/// ```
/// # use shankline::strength::timber::RowFactor;
/// fn told(found: &RowFactor) -> String {
///     match found.share {
///         Some(share) => format!("{:.2}", share.value),
///         None => format!("not known: {:?}", found.missing),
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct RowFactor {
    /// The share of its load that each bolt keeps, at most 1: `C_g` of NDS, `n_ef / n` of EN 1995-1-1. None as long as
    /// anything is missing.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize_share"))]
    pub share: Option<Ratio>,
    /// What is not known.
    pub missing: Vec<TimberFact>,
    /// What the user must be told.
    pub cautions: Cautions,
}

impl BoltRow {
    /// The share of its load that each bolt of the row keeps, by the method.
    ///
    /// `diameter` is the nominal one. A row of one bolt keeps all; where the number of bolts is not known, that is
    /// what is missing. EN asks for number and pitch, and takes the timber that the load is nearest to the grain
    /// of; NDS asks for stiffnesses too. [`TimberResistance::reduced`](super::TimberResistance::reduced) takes it off.
    ///
    /// # Errors
    ///
    /// Those of [`nds_group_action`] and [`en_effective_bolts`], and for a diameter outside the method.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{BoltRow, TimberConnection, TimberFact, TimberMember, TimberMethod};
    /// use shankline::{tables::timber::Timber, units::degrees};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let beam = TimberMember::wood(millimetres(60.0), Timber::find("C24")?, degrees(0.0));
    /// let splice = TimberConnection {
    ///     diameter: millimetres(16.0), main: beam, side: beam, far_side: None, gap: millimetres(0.0),
    /// };
    /// let method = TimberMethod::En1995 { axial: newtons(0.0), kmod: 0.8, gamma_m: 1.3 };
    /// let row = BoltRow { bolts: Some(4), ..BoltRow::default() };
    /// let found = row.factor(&splice, millimetres(16.0), method)?;
    /// assert_eq!((found.share, found.missing), (None, vec![TimberFact::Pitch]));
    /// # Ok(())
    /// # }
    /// ```
    pub fn factor(
        &self,
        joint: &TimberConnection,
        diameter: Length,
        method: TimberMethod,
    ) -> Result<RowFactor, Error> {
        check_diameter(diameter, method)?;
        let lacks = |missing: Vec<TimberFact>| RowFactor {
            share: None,
            missing,
            cautions: Cautions::default(),
        };
        let known = |share, method: Option<&'static Method>| RowFactor {
            share: Some(share),
            missing: Vec::new(),
            cautions: Cautions::default().with(method.and_then(Caution::of_method)),
        };
        let Some(bolts) = self.bolts else {
            return Ok(lacks(Vec::from([TimberFact::BoltsInRow])));
        };
        check_bolts(bolts)?;
        if bolts == 1 {
            return Ok(known(from_base(1.0), None));
        }
        match method {
            TimberMethod::Nds { .. } => {
                let (Some(pitch), Some(main_stiffness), Some(side_stiffness)) =
                    (self.pitch, self.main_stiffness, self.side_stiffness)
                else {
                    let facts = [
                        (TimberFact::Pitch, self.pitch.is_none()),
                        (TimberFact::MainStiffness, self.main_stiffness.is_none()),
                        (TimberFact::SideStiffness, self.side_stiffness.is_none()),
                    ];
                    let missing = facts.into_iter().filter(|(_, missing)| *missing);
                    return Ok(lacks(missing.map(|(fact, _)| fact).collect()));
                };
                let share = nds_group_action(&NdsRow {
                    bolts,
                    pitch,
                    diameter,
                    main_stiffness,
                    side_stiffness,
                    metal: joint.members().any(TimberMember::is_steel),
                })?;
                let clause = methods::NDS_2018_EQ_11_3_1_GROUP_ACTION;
                Ok(known(share, Some(clause)))
            }
            TimberMethod::En1995 { .. } => {
                let Some(pitch) = self.pitch else {
                    return Ok(lacks(Vec::from([TimberFact::Pitch])));
                };
                let angles = joint.members().filter_map(|member| match member.material {
                    MemberMaterial::Wood(wood) => Some(wood.grain_angle),
                    MemberMaterial::Steel { .. } => None,
                });
                let least = angles.reduce(|least, angle| if angle < least { angle } else { least });
                let angle = least.unwrap_or_default();
                let effective = en_effective_bolts(bolts, pitch, diameter, angle)?;
                let share = from_base(effective / f64::from(bolts));
                Ok(known(share, Some(methods::EN_1995_1_1_2004_8_5_1_1_4)))
            }
        }
    }
}

// serde hands over the field as it is.
#[cfg(feature = "serde")]
#[allow(clippy::ref_option)]
fn serialize_share<S: serde::Serializer>(
    share: &Option<Ratio>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serde::Serialize::serialize(&share.map(|share| share.value), serializer)
}
