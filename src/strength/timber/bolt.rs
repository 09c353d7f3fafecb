//! What NDS takes of the bolt: which diameter bears, how strong it is in bending.

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, not_negative, out_of_range, positive, sane_length};
use crate::material::BoltStrength;
use crate::math::sqrt;
use crate::source::Method;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Length, SAME_LENGTH, Stress, from_base, ksi};

const THREAD_RULE: &Method = methods::NDS_2018_12_3_7_THREAD_IN_THE_BEARING_LENGTH;

/// The greatest bending yield strength Fyb that NDS lets a bolt have: the mean of its least yield and tensile
/// strength; 45 ksi where its standard has no yield strength but at least 60 ksi of tensile strength, as ASTM
/// A307.
///
/// Source: NDS 2018 Appendix I, recalled.
///
/// # Errors
///
/// [`Error::NoValue`] for a bolt without yield strength and under 60 ksi of tensile strength.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::nds_bending_yield;
/// # fn main() -> Result<(), shankline::Error> {
/// let a307 = nds_bending_yield(&AstmGrade::A307A.strength(inches(0.5))?)?;
/// assert_eq!(a307, ksi(45.0));
/// // SAE J429 grade 5: (92 + 120) / 2
/// let grade_5 = nds_bending_yield(&SaeGrade::Grade5.strength(inches(0.5))?)?;
/// assert!((grade_5 - ksi(106.0)).abs() < ksi(1e-9));
/// # Ok(())
/// # }
/// ```
pub fn nds_bending_yield(bolt: &BoltStrength) -> Result<Stress, Error> {
    match bolt.yield_strength {
        Some(yields) => positive(
            "bending yield strength of the bolt",
            0.5 * (yields + bolt.tensile_strength),
        ),
        None if bolt.tensile_strength >= ksi(60.0) * (1.0 - 1e-9) => Ok(ksi(45.0)),
        None => Err(Error::NoValue {
            quantity: "bending yield strength of the bolt",
            subject: alloc::string::String::from("a bolt without yield strength under 60 ksi"),
            reason: "NDS takes the mean of yield and tensile strength, or 45 ksi for bolts as of ASTM A307",
        }),
    }
}

/// How a member lies on the bolt: the length that bears, and how much of it may be thread.
///
/// ```
/// use shankline::{strength::timber::MemberOnBolt, units::inches};
/// # fn main() -> Result<(), shankline::Error> {
/// // 2.5 to 4 in from the head, the full shank is sure to reach 2.75 in
/// let post = MemberOnBolt::between(inches(2.5), inches(4.0), inches(2.75))?;
/// assert_eq!((post.bearing, post.thread), (inches(1.5), inches(1.25)));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct MemberOnBolt {
    /// Length that bears on the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bearing: Length,
    /// How much of it may be thread or its run-out, in the worst case.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread: Length,
}

impl MemberOnBolt {
    /// A member that lies from `start` to `end` from the bearing face of the head, on a bolt whose body is sure to
    /// be full up to `body`: beyond that all counts as thread.
    ///
    /// The worst case is where the member lies farthest from the head and is thickest.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths that are negative or not finite, or an end that is not beyond the start.
    ///
    /// ```
    /// use shankline::{strength::timber::MemberOnBolt, units::inches};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rail = MemberOnBolt::between(inches(0.0), inches(2.5), inches(2.75))?;
    /// assert_eq!(rail.thread, inches(0.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn between(start: Length, end: Length, body: Length) -> Result<Self, Error> {
        not_negative("start of the member", start)?;
        sane_length("end of the member", end)?;
        not_negative("body length", body)?;
        if end <= start {
            let allowed = Allowed::Above(start.into());
            return Err(out_of_range("end of the member", end, allowed));
        }
        let from = if body > start { body } else { start };
        Ok(Self {
            bearing: end - start,
            thread: if end > from {
                end - from
            } else {
                Length::default()
            },
        })
    }

    fn check(&self) -> Result<(), Error> {
        sane_length("bearing length of the member", self.bearing)?;
        not_negative("thread in the member", self.thread)?;
        if self.thread > self.bearing + SAME_LENGTH {
            let allowed = Allowed::AtMost(self.bearing.into());
            return Err(out_of_range("thread in the member", self.thread, allowed));
        }
        Ok(())
    }
}

/// The diameter that NDS puts into its equations, and why.
///
/// ```
/// # use shankline::strength::timber::BearingDiameter;
/// fn told(found: &BearingDiameter) -> String {
///     match found.threaded_member {
///         Some(member) => format!("root diameter: thread bears in member {member}"),
///         None => "full diameter".into(),
///     }
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BearingDiameter {
    /// The full diameter D, or the root diameter Dr.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter: Length,
    /// The first member, counted from 1, in which thread bears on more than a quarter of the length: for it the root
    /// diameter counts. None if the full diameter counts.
    pub threaded_member: Option<usize>,
    cautions: Cautions,
}

impl BearingDiameter {
    /// What the user must be told.
    ///
    /// ```
    /// # use shankline::strength::timber::BearingDiameter;
    /// fn recalled(found: &BearingDiameter) -> bool {
    ///     found.cautions().iter().next().is_some()
    /// }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }
}

/// Which diameter of the bolt NDS counts in a joint: the full one if thread bears on no more than a quarter of the
/// length of every member it reaches into, else the root diameter, as by the area at the root of the thread.
///
/// The shear plane alone does not decide: thread that begins behind it bears in the member all the same.
/// Source: NDS 2018, 12.3.7, recalled.
///
/// # Errors
///
/// [`Error::OutOfRange`] for a bearing length that is not positive and finite, or thread that is negative or
/// longer; [`Error::Mismatch`] without members.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::timber::{MemberOnBolt, nds_bearing_diameter};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "3/4-10 UNC".parse()?;
/// let rail = MemberOnBolt { bearing: inches(2.5), thread: inches(0.0) };
/// let post = |thread| MemberOnBolt { bearing: inches(1.5), thread: inches(thread) };
/// // The plane is on full shank both times.
/// let full = nds_bearing_diameter(&thread, &[rail, post(0.375)])?;
/// let root = nds_bearing_diameter(&thread, &[rail, post(0.376)])?;
/// assert_eq!((full.diameter, full.threaded_member), (inches(0.75), None));
/// assert_eq!(root.threaded_member, Some(2));
/// assert!((root.diameter - inches(0.6201)).abs() < inches(1e-4));
/// # Ok(())
/// # }
/// ```
pub fn nds_bearing_diameter(
    thread: &Thread,
    members: &[MemberOnBolt],
) -> Result<BearingDiameter, Error> {
    if members.is_empty() {
        return Err(Error::Mismatch("no member bears on the bolt".into()));
    }
    let mut threaded_member = None;
    for (number, member) in (1..).zip(members) {
        member.check()?;
        if threaded_member.is_none() && member.thread > 0.25 * member.bearing + SAME_LENGTH {
            threaded_member = Some(number);
        }
    }
    let diameter = if threaded_member.is_some() {
        from_base(sqrt(
            4.0 / core::f64::consts::PI * thread.minor_area().value,
        ))
    } else {
        thread.nominal_diameter()
    };
    let caution = Caution::of_method(THREAD_RULE);
    Ok(BearingDiameter {
        diameter,
        threaded_member,
        cautions: Cautions::default().with(caution),
    })
}
