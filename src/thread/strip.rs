//! Shear areas of bolt and nut threads: what must shear off for a thread to strip.
//!
//! The threads of the bolt strip on the cylinder of the nut's minor diameter, those of the nut on the
//! cylinder of the bolt's major diameter. With P the pitch, LE the engaged length of full threads and
//! tan 30 = 1/sqrt 3 = 0.57735:
//!
//! ```text
//! bolt threads  As = pi K (LE/P) [P/2 + 0.57735 (E - K)]     K minor diameter of the nut
//!                                                            E pitch diameter of the bolt
//! nut threads   An = pi D (LE/P) [P/2 + 0.57735 (D - En)]    D major diameter of the bolt
//!                                                            En pitch diameter of the nut
//! ```
//!
//! | form | diameters | from |
//! |---|---|---|
//! | [`MinimumMaterial`](StripForm::MinimumMaterial) | K max, E min, D min, En max of the classes | [`ThreadFit::strip_areas`] |
//! | [`Basic`](StripForm::Basic) | basic ones: As = 0.75 pi D1 LE, An = 0.875 pi D LE (UN, M) | [`Thread::strip_areas_basic`] |
//! | [`HalfPitchCylinder`](StripForm::HalfPitchCylinder) | both areas pi D2 LE / 2 | [`Thread::strip_areas_simplified`] |
//! | [`AroundInsert`](StripForm::AroundInsert) | K max, E min; of the hole of an insert D min, En max | `WireInsert::strip_areas` in `parts` |
//!
//! [`bolt_thread_area`] and [`nut_thread_area`] are the bare formulas for diameters of any origin.
//!
//! The minimum-material form is that of FED-STD-H28/2, of the appendix of ASME B1.1 and of Machinery's
//! Handbook; for metric threads Alexander (SAE 770420), ISO/TR 16224 and VDI 2230 write the same
//! formula with d, d2, D1, D2. It gives the least area that threads within their limits have; the
//! stretching of a nut and the bending of threads make the effective area smaller still
//! ([`strength::strip`](crate::strength::strip) has factors for both), and load is not shared evenly: a
//! thread much longer than 1.5 D gains little.
//!
//! A nut whose hole is bell-mouthed, as formed nuts are, holds fewer bolt threads: Alexander (read) takes
//! the mean diameter of the mouth, which is up to 1.03 times the minor diameter.
//!
//! # Misprints
//!
//! - A widely copied page on ASME B1.1 has the bolt's least major diameter in front of the formula for the
//!   bolt threads, where the nut's greatest minor diameter belongs.
//! - AAMA TIR-A9-14 printed sqrt 3 for 1/sqrt 3 in both formulas; its errata of 2015 (read) correct it.
//! - A worked example for M10-6g in aluminium (Handbook of Bolts and Bolted Joints, abstract of the
//!   chapter read) puts the greatest major diameter, 9.968 mm, where the least, 9.732 mm, belongs: its
//!   21.6 mm of engagement are 13 % too short.
//! - A table of bolt strip areas prints 1.92 for 1-1/8-8, which does not follow from the formula.
//!
//! Sources: Machinery's Handbook, 24th ed., in paraphrase; an engineering page on FED-STD-H28/2; the
//! corrected formulas of AAMA TIR-A9-14. The definition of both areas by Alexander, SAE 770420, was read
//! in a scan of his paper, his equations were not.

use alloc::format;
use core::f64::consts::PI;

use super::{Limits, Thread, ThreadFit};
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, LONGEST, out_of_range, positive, sane_length};
use crate::tables::methods;
use crate::units::{Area, Length, from_base};

mod engaged;

pub use engaged::{EndLoss, EngagedLength};

/// tan 30 degrees, which the publishers round to 0.57735.
const TAN_30: f64 = 0.577_350_269_189_625_8;

/// Shear area of the threads of a bolt, As = pi K (LE/P) [P/2 + 0.57735 (E - K)], from diameters that
/// are measured or taken from a table: K minor diameter of the nut, E pitch diameter of the bolt.
///
/// Source: FED-STD-H28/2: see the [module](self).
///
/// # Errors
///
/// [`Error::OutOfRange`] for a length that is not positive and finite or beyond a kilometre, and for a
/// thread that has no width where it would shear.
///
/// ```
/// use shankline::{thread::strip, units::inches};
/// use shankline::uom::si::area::square_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// let (nut_minor, bolt_pitch, pitch) = (inches(0.4340), inches(0.4435), inches(1.0 / 13.0));
/// let area = strip::bolt_thread_area(nut_minor, bolt_pitch, pitch, inches(1.0))?;
/// assert!((area.get::<square_inch>() - 0.7789).abs() < 5e-5);
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn bolt_thread_area(
    nut_minor_diameter: Length,
    bolt_pitch_diameter: Length,
    pitch: Length,
    engagement: Length,
) -> Result<Area, Error> {
    let width = 0.5 * pitch + TAN_30 * (bolt_pitch_diameter - nut_minor_diameter);
    cylinder(nut_minor_diameter, width, pitch, engagement)
}

/// Shear area of the threads of a nut, An = pi D (LE/P) [P/2 + 0.57735 (D - En)], from diameters that
/// are measured or taken from a table: D major diameter of the bolt, En pitch diameter of the nut.
///
/// Source: FED-STD-H28/2: see the [module](self).
///
/// # Errors
///
/// As [`bolt_thread_area`].
///
/// ```
/// use shankline::{thread::strip, units::inches};
/// use shankline::uom::si::area::square_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// let (bolt_major, nut_pitch, pitch) = (inches(0.4876), inches(0.4565), inches(1.0 / 13.0));
/// let area = strip::nut_thread_area(bolt_major, nut_pitch, pitch, inches(1.0))?;
/// assert!((area.get::<square_inch>() - 1.12).abs() < 5e-3); // printed 1.12
/// # Ok(())
/// # }
/// ```
#[inline]
pub fn nut_thread_area(
    bolt_major_diameter: Length,
    nut_pitch_diameter: Length,
    pitch: Length,
    engagement: Length,
) -> Result<Area, Error> {
    let width = 0.5 * pitch + TAN_30 * (bolt_major_diameter - nut_pitch_diameter);
    cylinder(bolt_major_diameter, width, pitch, engagement)
}

/// A band of a width, once every pitch, on a cylinder.
#[inline]
fn cylinder(
    diameter: Length,
    width: Length,
    pitch: Length,
    engagement: Length,
) -> Result<Area, Error> {
    let zero = Length::default();
    // NaN fails every comparison.
    let sound = diameter > zero && width > zero && pitch > zero && engagement > zero;
    if sound && diameter <= LONGEST && pitch <= LONGEST && engagement <= LONGEST {
        let area = PI * (engagement / pitch) * (diameter * width);
        if area > Area::default() && area.value < f64::INFINITY {
            return Ok(area);
        }
    }
    Err(cylinder_error(diameter, width, pitch, engagement))
}

#[cold]
fn cylinder_error(diameter: Length, width: Length, pitch: Length, engagement: Length) -> Error {
    let named = [
        ("diameter of the threads", diameter),
        ("pitch", pitch),
        ("length of engagement", engagement),
        ("width of the thread where it shears", width),
    ];
    let fault = named
        .into_iter()
        .find_map(|(quantity, length)| sane_length(quantity, length).err());
    // What remains is an area beyond the range of f64.
    fault.unwrap_or_else(|| {
        let allowed = Allowed::Above(Length::default().into());
        out_of_range("length of engagement", engagement, allowed)
    })
}

/// Which diameters a shear area is computed from.
///
/// ```
/// use shankline::{prelude::*, thread::strip::{EngagedLength, StripForm}};
/// # fn main() -> Result<(), shankline::Error> {
/// let areas = "M12".parse::<Thread>()?.strip_areas_basic(EngagedLength::new(millimetres(10.0))?)?;
/// assert_eq!(areas.form, StripForm::Basic);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StripForm {
    /// Minimum material within the classes of bolt and nut: FED-STD-H28/2 and the others above.
    MinimumMaterial,
    /// The same formula with basic diameters. About 10 to 25 % larger than what a worst pair has.
    Basic,
    /// Half the pitch cylinder for both, a shortcut of handbooks (SAE among them); recalled.
    HalfPitchCylinder,
    /// Around a thread insert of wire: the bolt as at minimum material, and for the threads of the nut those of the part
    /// around the insert.
    AroundInsert,
}

/// Shear areas of the threads of a bolt and of its nut or tapped hole.
///
/// ```
/// use shankline::{prelude::*, thread::strip::EngagedLength};
/// use shankline::uom::si::area::square_inch;
/// # fn main() -> Result<(), shankline::Error> {
/// let fit = "1/4-20 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
/// let areas = fit.strip_areas(EngagedLength::new(inches(1.0))?)?;
/// assert!((areas.nut_threads.get::<square_inch>() - 0.539).abs() < 5e-4); // printed 0.539
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StripAreas {
    /// The thread of the bolt.
    pub thread: Thread,
    /// Which diameters the areas are of.
    pub form: StripForm,
    /// Engaged length of full threads LE.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub engagement: Length,
    /// Pitch P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Major diameter of the bolt D; around an insert, that of its hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_major_diameter: Length,
    /// Pitch diameter of the bolt E.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_pitch_diameter: Length,
    /// Minor diameter of the nut K.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_minor_diameter: Length,
    /// Pitch diameter of the nut En; around an insert, that of its hole.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_pitch_diameter: Length,
    /// Shear area of the bolt threads As.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolt_threads: Area,
    /// Shear area of the nut threads An.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub nut_threads: Area,
    cautions: Cautions,
}

impl StripAreas {
    /// What to be warned of: a form or tolerances that were recalled and not read.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let engaged = EngagedLength::new(millimetres(10.0))?;
    /// let areas = "M12".parse::<Thread>()?.strip_areas_simplified(engaged)?;
    /// assert_eq!(areas.cautions().iter().count(), 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }

    /// The same threads engaged over another length of full threads: the areas grow with it.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite or beyond a kilometre, and where
    /// no area within the range of numbers is left.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let one = "M12".parse::<Thread>()?.strip_areas_basic(EngagedLength::new(millimetres(10.0))?)?;
    /// let two = one.over(millimetres(20.0))?;
    /// assert!(((two.nut_threads / one.nut_threads).value - 2.0).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn over(&self, engagement: Length) -> Result<Self, Error> {
        sane_length("length of engagement", engagement)?;
        let ratio = engagement / self.engagement;
        let area = |quantity, area: Area| positive(quantity, ratio * area);
        Ok(Self {
            engagement,
            bolt_threads: area("shear area of the bolt threads", self.bolt_threads)?,
            nut_threads: area("shear area of the nut threads", self.nut_threads)?,
            ..self.clone()
        })
    }

    /// The working: both areas from the diameters of the form.
    ///
    /// ```
    /// use shankline::{prelude::*, derivation::Format, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "1/2-13 UNC".parse::<Thread>()?.fit("2A".parse()?, "2B".parse()?)?;
    /// let derivation = fit.strip_areas(EngagedLength::new(inches(0.5))?)?.derivation();
    /// derivation.check()?;
    /// let text = derivation.render(Format::Text, UnitSystem::UsCustomary).to_string();
    /// assert!(text.contains("0.3895 in²"), "{text}"); // bolt threads: 0.7789 in2 for each inch
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let title = format!("Shear areas of the threads of {}", self.thread);
        if self.form == StripForm::HalfPitchCylinder {
            let step = |what, symbol, area: Area| {
                Step::new(what, symbol, "pi * D2 * LE / 2", area)
                    .with("D2", self.bolt_pitch_diameter)
                    .with("LE", self.engagement)
                    .source(methods::STRIP_SHORTCUT)
            };
            return Derivation::new(title)
                .step(step(
                    "shear area of the bolt threads",
                    "As",
                    self.bolt_threads,
                ))
                .step(step(
                    "shear area of the nut threads",
                    "An",
                    self.nut_threads,
                ));
        }
        let source = match self.form {
            StripForm::MinimumMaterial => methods::FED_STD_H28_2_AT_MINIMUM_MATERIAL,
            StripForm::AroundInsert => methods::FED_STD_H28_2_AROUND_AN_INSERT_OF_WIRE,
            _ => methods::THE_FORMULA_OF_FED_STD_H28_2_AT_BASIC_SIZE,
        };
        Derivation::new(title)
            .step(
                Step::new(
                    "shear area of the bolt threads",
                    "As",
                    "pi * K * LE / P * (P / 2 + (E - K) / sqrt(3))",
                    self.bolt_threads,
                )
                .with("K", self.nut_minor_diameter)
                .with("LE", self.engagement)
                .with("P", self.pitch)
                .with("E", self.bolt_pitch_diameter)
                .source(source),
            )
            .step(
                Step::new(
                    "shear area of the nut threads",
                    "An",
                    "pi * D * LE / P * (P / 2 + (D - En) / sqrt(3))",
                    self.nut_threads,
                )
                .with("D", self.bolt_major_diameter)
                .with("LE", self.engagement)
                .with("P", self.pitch)
                .with("En", self.nut_pitch_diameter)
                .source(source),
            )
    }

    /// The same bolt in an insert: what holds is the part around the insert, by these diameters of its hole.
    pub(crate) fn around(self, major: Length, pitch_max: Length) -> Result<Self, Error> {
        Ok(Self {
            form: StripForm::AroundInsert,
            bolt_major_diameter: major,
            nut_pitch_diameter: pitch_max,
            nut_threads: nut_thread_area(major, pitch_max, self.pitch, self.engagement)?,
            cautions: self.cautions.with(Some(Caution::InsertSizes)),
            ..self
        })
    }

    /// Both areas of one pair of threads by the full formula.
    fn of(
        thread: Thread,
        form: StripForm,
        engaged: EngagedLength,
        bolt: (Length, Length),
        nut: (Length, Length),
        cautions: Cautions,
    ) -> Result<Self, Error> {
        let ((major, bolt_pitch), (minor, nut_pitch)) = (bolt, nut);
        let (pitch, engagement) = (thread.pitch(), engaged.full_threads());
        // Where a very fine special thread has wide tolerances bolt and nut need not overlap.
        positive("overlap of bolt and nut threads", major - minor)?;
        Ok(Self {
            thread,
            form,
            engagement,
            pitch,
            bolt_major_diameter: major,
            bolt_pitch_diameter: bolt_pitch,
            nut_minor_diameter: minor,
            nut_pitch_diameter: nut_pitch,
            bolt_threads: bolt_thread_area(minor, bolt_pitch, pitch, engagement)?,
            nut_threads: nut_thread_area(major, nut_pitch, pitch, engagement)?,
            cautions: engaged.cautions().and(cautions),
        })
    }
}

impl ThreadFit {
    /// Shear areas of bolt and nut threads at the minimum material of their classes.
    ///
    /// Source: FED-STD-H28/2; ASME B1.1, appendix; Machinery's Handbook: see the [module](self).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if bolt and nut do not overlap within their tolerances, which only a very
    /// fine special thread does.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// use shankline::uom::si::area::square_millimeter;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fit = "M12".parse::<Thread>()?.fit("6g".parse()?, "6H".parse()?)?;
    /// let areas = fit.strip_areas(EngagedLength::new(millimetres(10.0))?)?;
    /// assert!((areas.bolt_threads.get::<square_millimeter>() - 189.76).abs() < 0.01);
    /// assert!((areas.nut_threads.get::<square_millimeter>() - 261.17).abs() < 0.01);
    /// # Ok(())
    /// # }
    /// ```
    pub fn strip_areas(&self, engaged: EngagedLength) -> Result<StripAreas, Error> {
        let Limits { min: major, .. } = self.bolt.crest_diameter;
        let Limits { max: minor, .. } = self.nut.crest_diameter;
        StripAreas::of(
            self.bolt.thread,
            StripForm::MinimumMaterial,
            engaged,
            (major, self.bolt.pitch_diameter.min),
            (minor, self.nut.pitch_diameter.max),
            // One stands for all recalled tolerances; the limits have the whole list.
            Cautions::default().with(
                [self.bolt.cautions(), self.nut.cautions()]
                    .iter()
                    .find_map(|list| list.iter().next().copied()),
            ),
        )
    }
}

impl Thread {
    /// Shear areas at basic size: As = 0.75 pi D1 LE and An = 0.875 pi D LE for UN and M threads. For
    /// comparison; a worst pair within its classes has less.
    ///
    /// # Errors
    ///
    /// None for an [`EngagedLength`] of this thread; the signature is that of its siblings.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// use std::f64::consts::PI;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let areas = thread.strip_areas_basic(EngagedLength::new(inches(0.5))?)?;
    /// let expected = 0.875 * PI * inches(0.5) * inches(0.5);
    /// assert!(((areas.nut_threads / expected).value - 1.0).abs() < 1e-12);
    /// # Ok(())
    /// # }
    /// ```
    pub fn strip_areas_basic(&self, engaged: EngagedLength) -> Result<StripAreas, Error> {
        let pitch_diameter = self.basic_pitch_diameter();
        StripAreas::of(
            *self,
            StripForm::Basic,
            engaged,
            (self.diameter, pitch_diameter),
            (self.basic_minor_diameter(), pitch_diameter),
            Cautions::default(),
        )
    }

    /// Half the pitch cylinder, pi D2 LE / 2, for bolt and nut threads alike: a shortcut that is 5 to
    /// 15 % off the full formula. Recalled, with a caution.
    ///
    /// # Errors
    ///
    /// None for an [`EngagedLength`] of this thread; the signature is that of its siblings.
    ///
    /// ```
    /// use shankline::{prelude::*, thread::strip::EngagedLength};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let areas = "1/2-13 UNC".parse::<Thread>()?
    ///     .strip_areas_simplified(EngagedLength::new(inches(0.5))?)?;
    /// assert_eq!(areas.nut_threads, areas.bolt_threads);
    /// # Ok(())
    /// # }
    /// ```
    pub fn strip_areas_simplified(&self, engaged: EngagedLength) -> Result<StripAreas, Error> {
        let basic = self.strip_areas_basic(engaged)?;
        let area = 0.5 * PI * (self.basic_pitch_diameter() * basic.engagement);
        Ok(StripAreas {
            form: StripForm::HalfPitchCylinder,
            bolt_threads: area,
            nut_threads: area,
            cautions: basic
                .cautions
                .with(Caution::of_method(methods::HALF_PITCH_CYLINDER)),
            ..basic
        })
    }
}

impl StripAreas {
    /// Shear area of the bolt threads for each unit of engaged length.
    pub(crate) fn bolt_rate(&self) -> Length {
        from_base((self.bolt_threads / self.engagement).value)
    }

    /// Shear area of the nut threads for each unit of engaged length.
    pub(crate) fn nut_rate(&self) -> Length {
        from_base((self.nut_threads / self.engagement).value)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::millimetres;

    #[test]
    fn areas_over_another_length_stay_in_the_range_of_numbers() {
        let of = |length| {
            let thread: Thread = "M12".parse().unwrap();
            thread.strip_areas_basic(EngagedLength::new(length).unwrap())
        };
        let tiny = of(millimetres(1e-50)).unwrap();
        assert!(tiny.over(millimetres(10.0)).is_ok());
        assert!(
            of(millimetres(10.0))
                .unwrap()
                .over(from_base(5e-324))
                .is_err()
        );
    }
}
