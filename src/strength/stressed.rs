//! Plain stresses of bolts and plies under a load: load over area.
//!
//! A [`StressedArea`] is what a load is spread over; it gives the stress under a load, the load at a stress, and the
//! factor of safety. [`sizing`](super::sizing) asks the other way round.
//!
//! | question | area | constructor |
//! |---|---|---|
//! | shear of bolts in n planes | n z A | [`shear`](StressedArea::shear), of pins and rivets [`shear_of_pins`](StressedArea::shear_of_pins) |
//! | tension of bolts | z A | [`tension`](StressedArea::tension), of rods [`tension_of_rods`](StressedArea::tension_of_rods) |
//! | bearing of bolts on a ply | z d t | [`bearing`](StressedArea::bearing) |
//! | net section of a ply | (w - m dh) t | [`net_section`](StressedArea::net_section) |
//! | threads sheared off | pi D b i | [`thread_shear`](StressedArea::thread_shear) |
//! | threads crushed | (pi/4) (d^2 - d1^2) i | [`thread_crushing`](StressedArea::thread_crushing) |
//!
//! z is the number of bolts, n that of shear planes of each, m that of holes across, i that of engaged threads; the
//! other symbols stand with the constructors.
//!
//! These stresses are averages, as textbooks take them: no code, no factor, no stress concentration. A resistance
//! by a published method is in the other modules of [`strength`](super).

use alloc::borrow::Cow;
use core::f64::consts::{FRAC_PI_4, PI};

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, part_length, sane_stress, within};
use crate::tables::methods;
use crate::thread::{Thread, area::circle};
use crate::units::{Area, Force, Length, Stress, newtons, square_millimetres};

mod plain;
mod section;

pub use plain::PlainStress;
pub use section::{BoltSection, Stressing};

/// What a load is spread over.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::stressed::StressedArea;
/// # fn main() -> Result<(), shankline::Error> {
/// // Gere, Mechanics of Materials, 5th ed., 1.6-4: a pin of 20 mm in double shear under 20 kN: 31.8 MPa
/// let pin = StressedArea::shear_of_pins(millimetres(20.0), 1, 2)?;
/// let stress = pin.under(newtons(20e3))?.stress;
/// assert!((stress - megapascals(31.8)).abs() < megapascals(0.05));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct StressedArea {
    /// How it is stressed.
    pub stressing: Stressing,
    /// The area, all bolts and planes together.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub area: Area,
    #[cfg_attr(feature = "serde", serde(skip))]
    working: Derivation,
}

/// Refuses a number of things that is zero or beyond a million.
pub(super) fn count(what: impl Into<Cow<'static, str>>, number: usize) -> Result<f64, Error> {
    const MOST: usize = 1_000_000;
    if (1..=MOST).contains(&number) {
        // At most a million: exact in f64.
        #[allow(clippy::cast_precision_loss)]
        Ok(number as f64)
    } else {
        let allowed = Allowed::FromTo(1_usize.into(), MOST.into());
        Err(out_of_range(what.into(), number, allowed))
    }
}

/// Refuses a load that is no load of a joint.
pub(super) fn sane_force(what: &'static str, force: Force) -> Result<Force, Error> {
    within(what, force, newtons(1e-6), newtons(1e15))
}

impl StressedArea {
    fn new(stressing: Stressing, area: Area, working: Derivation) -> Result<Self, Error> {
        within(
            "stressed area",
            area,
            square_millimetres(1e-12),
            square_millimetres(1e18),
        )?;
        Ok(Self {
            stressing,
            area,
            working,
        })
    }

    fn sections(
        stressing: Stressing,
        (one, step): (Area, Step),
        bolts: usize,
        planes: usize,
    ) -> Result<Self, Error> {
        let area =
            count("number of bolts", bolts)? * count("number of shear planes", planes)? * one;
        let step = match stressing {
            Stressing::Shear => Derivation::new(stressing.name()).step(step).step(
                Step::new("area of all bolts and planes", "Az", "z * n * A", area)
                    .with("z", bolts)
                    .with("n", planes)
                    .with("A", one)
                    .source(methods::STATICS_EQUAL_SHARES),
            ),
            _ => Derivation::new(stressing.name()).step(step).step(
                Step::new("area of all bolts", "Az", "z * A", area)
                    .with("z", bolts)
                    .with("A", one)
                    .source(methods::STATICS_EQUAL_SHARES),
            ),
        };
        Self::new(stressing, area, step)
    }

    fn of_circle(diameter: Length) -> Result<(Area, Step), Error> {
        let area = circle(part_length("diameter", diameter)?);
        let step = Step::new("area of the section", "A", "pi / 4 * d^2", area).with("d", diameter);
        Ok((area, step))
    }

    /// Shear across a section of bolts that share the load alike: z n A, with the area A of the section of one bolt,
    /// the number of bolts z and the shear planes n of each (1 single, 2 double shear).
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a number that is not from 1 to a million; [`Error::NoValue`] as
    /// [`BoltSection::area`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::{BoltSection, StressedArea};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolts = StressedArea::shear(&"5/8-11 UNC".parse()?, BoltSection::Shank, 3, 2)?;
    /// // Gere, Mechanics of Materials, 5th ed., 1.6-3: 4350 psi
    /// let stress = bolts.under(pounds_force(8000.0))?.stress;
    /// assert!((stress - ksi(4.35)).abs() < ksi(0.005));
    /// # Ok(())
    /// # }
    /// ```
    pub fn shear(
        thread: &Thread,
        section: BoltSection,
        bolts: usize,
        planes: usize,
    ) -> Result<Self, Error> {
        let section = section.section(thread)?;
        let one = (section.area(thread), section.step(thread));
        Self::sections(Stressing::Shear, one, bolts, planes)
    }

    /// Shear across pins, rivets or plain bolts of diameter d: z n (pi/4) d^2.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter that is not from 1 nm to 1 km, or a number that is not from 1 to a million.
    ///
    /// ```
    /// use shankline::{strength::stressed::StressedArea, units::millimetres};
    /// assert!(StressedArea::shear_of_pins(millimetres(20.0), 0, 1).is_err());
    /// ```
    pub fn shear_of_pins(diameter: Length, pins: usize, planes: usize) -> Result<Self, Error> {
        Self::sections(Stressing::Shear, Self::of_circle(diameter)?, pins, planes)
    }

    /// Tension along bolts that share the load alike: z A.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// As [`shear`](Self::shear).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::{BoltSection, StressedArea};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // The core of an M30 bolt at 42 MPa
    /// let core = StressedArea::tension(&"M30".parse()?, BoltSection::Core, 1)?;
    /// assert!((core.load_at(megapascals(42.0), 1.0)? - newtons(21.8e3)).abs() < newtons(50.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn tension(thread: &Thread, section: BoltSection, bolts: usize) -> Result<Self, Error> {
        let section = section.section(thread)?;
        let one = (section.area(thread), section.step(thread));
        Self::sections(Stressing::Tension, one, bolts, 1)
    }

    /// Tension along rods of diameter d: z (pi/4) d^2.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// As [`shear_of_pins`](Self::shear_of_pins).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// let rod = StressedArea::tension_of_rods(inches(1.0), 1).unwrap();
    /// assert!((rod.area - square_inches(0.7854)).abs() < square_inches(5e-5));
    /// ```
    pub fn tension_of_rods(diameter: Length, rods: usize) -> Result<Self, Error> {
        Self::sections(Stressing::Tension, Self::of_circle(diameter)?, rods, 1)
    }

    /// Bearing of z bolts of diameter d on a ply of thickness t, on the projected area: z d t.
    ///
    /// Source: statics; the projected area is the convention of textbooks and codes alike.
    ///
    /// # Errors
    ///
    /// As [`shear_of_pins`](Self::shear_of_pins), for the thickness too.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bearing = StressedArea::bearing(millimetres(16.0), millimetres(10.0), 1)?;
    /// assert!((bearing.under(newtons(21e3))?.stress - megapascals(131.25)).abs() < megapascals(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn bearing(diameter: Length, thickness: Length, bolts: usize) -> Result<Self, Error> {
        part_length("diameter", diameter)?;
        part_length("thickness", thickness)?;
        let area = count("number of bolts", bolts)? * (diameter * thickness);
        let stressing = Stressing::Bearing;
        let step = Step::new("projected area", "Az", "z * d * t", area)
            .with("z", bolts)
            .with("d", diameter)
            .with("t", thickness)
            .source(methods::STATICS_PROJECTED_AREA);
        Self::new(
            stressing,
            area,
            Derivation::new(stressing.name()).step(step),
        )
    }

    /// The net section of a ply of width w and thickness t across m holes of diameter dh: (w - m dh) t. With no
    /// holes it is the gross section.
    ///
    /// Source: statics.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km, more than a million holes, or holes that
    /// leave nothing.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let net = StressedArea::net_section(millimetres(110.0), millimetres(7.0), millimetres(20.0), 1)?;
    /// assert!((net.area - square_millimetres(630.0)).abs() < square_millimetres(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn net_section(
        width: Length,
        thickness: Length,
        hole: Length,
        holes: usize,
    ) -> Result<Self, Error> {
        part_length("width", width)?;
        part_length("thickness", thickness)?;
        part_length("diameter of the hole", hole)?;
        let across = if holes == 0 {
            0.0
        } else {
            count("number of holes", holes)?
        };
        let net = width - across * hole;
        if net <= Length::default() {
            let allowed = Allowed::Above((across * hole).into());
            return Err(out_of_range("width", width, allowed));
        }
        let stressing = Stressing::NetSection;
        let step = Step::new("net area", "Az", "(w - m * dh) * t", net * thickness)
            .with("w", width)
            .with("m", holes)
            .with("dh", hole)
            .with("t", thickness)
            .source(methods::STATICS);
        Self::new(
            stressing,
            net * thickness,
            Derivation::new(stressing.name()).step(step),
        )
    }

    /// The cylinder at the root of i engaged threads: pi D b i.
    ///
    /// D is the diameter at the root: of the screw its core diameter, of the nut the nominal diameter. b is the
    /// width of a thread there: P/2 of a square thread of pitch P; of a V thread textbooks take up to P. The load is
    /// taken as spread alike over all threads, which it is not: a real nut strips from its first thread on, and
    /// [`strip`](super::strip) has the methods for it.
    ///
    /// Source: statics; as in Khurmi and Gupta, A Textbook of Machine Design, chapter on screwed joints (recalled),
    /// and in Shigley, Mechanical Engineering Design, 9th ed., section 8-2 for square threads.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not from 1 nm to 1 km, or a number of threads that is not from
    /// 0.001 to a million.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // One square thread of 4 mm pitch on a root of 28 mm, under 6.4 kN x 0.38
    /// let root = StressedArea::thread_shear(millimetres(28.0), millimetres(2.0), 1.0)?;
    /// assert!((root.under(newtons(2432.0))?.stress - megapascals(13.8)).abs() < megapascals(0.05));
    /// # Ok(())
    /// # }
    /// ```
    pub fn thread_shear(diameter: Length, width: Length, threads: f64) -> Result<Self, Error> {
        part_length("diameter at the root of the thread", diameter)?;
        part_length("width of the thread", width)?;
        within("number of engaged threads", threads, 1e-3, 1e6)?;
        let area = PI * threads * (diameter * width);
        let stressing = Stressing::ThreadShear;
        let step = Step::new(
            "area at the root of the threads",
            "Az",
            "pi * D * b * i",
            area,
        )
        .with("D", diameter)
        .with("b", width)
        .with("i", threads)
        .source(methods::STATICS_ALL_THREADS_ALIKE);
        Self::new(
            stressing,
            area,
            Derivation::new(stressing.name()).step(step),
        )
    }

    /// The flanks of i engaged threads, seen along the axis: (pi/4) (d^2 - d1^2) i, with the major diameter d and the
    /// minor diameter d1 of the overlap. For a square thread of pitch P that is pi dm (P/2) i.
    ///
    /// The load is taken as spread alike over all threads, which it is not.
    ///
    /// Source: statics; as in Shigley, Mechanical Engineering Design, 9th ed., Eq. 8-10 for square threads.
    ///
    /// # Errors
    ///
    /// As [`thread_shear`](Self::thread_shear); [`Error::OutOfRange`] if d is not greater than d1.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Shigley, 9th ed., Example 8-1: 0.38 of 6.4 kN on the first thread, 32 mm, pitch 4 mm: 12.9 MPa
    /// let flank = StressedArea::thread_crushing(millimetres(32.0), millimetres(28.0), 1.0)?;
    /// assert!((flank.under(newtons(2432.0))?.stress - megapascals(12.9)).abs() < megapascals(0.05));
    /// # Ok(())
    /// # }
    /// ```
    pub fn thread_crushing(major: Length, minor: Length, threads: f64) -> Result<Self, Error> {
        part_length("major diameter", major)?;
        part_length("minor diameter", minor)?;
        within("number of engaged threads", threads, 1e-3, 1e6)?;
        if major <= minor {
            let allowed = Allowed::Above(minor.into());
            return Err(out_of_range("major diameter", major, allowed));
        }
        let area = FRAC_PI_4 * threads * (major * major - minor * minor);
        let stressing = Stressing::ThreadCrushing;
        let step = Step::new(
            "area of the flanks along the axis",
            "Az",
            "pi / 4 * (d^2 - d1^2) * i",
            area,
        )
        .with("d", major)
        .with("d1", minor)
        .with("i", threads)
        .source(methods::STATICS_ALL_THREADS_ALIKE);
        Self::new(
            stressing,
            area,
            Derivation::new(stressing.name()).step(step),
        )
    }

    /// The stress under a load: F / A.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a load that is not from 1e-6 to 1e15 N.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let rivets = StressedArea::shear_of_pins(millimetres(20.0), 3, 1)?;
    /// let stress = rivets.under(newtons(50e3))?.stress;
    /// assert!((stress - megapascals(53.1)).abs() < megapascals(0.05));
    /// # Ok(())
    /// # }
    /// ```
    pub fn under(&self, load: Force) -> Result<PlainStress, Error> {
        sane_force("load", load)?;
        Ok(PlainStress {
            stressed: self.clone(),
            load,
            stress: load / self.area,
        })
    }

    /// The load at which the stress is `strength / factor`: F = A S / n. With an allowable stress the factor is 1.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a stress that is not from 1 Pa to 1e6 GPa, or a factor that is not from 0.01 to 1000.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::stressed::StressedArea;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pin = StressedArea::shear_of_pins(millimetres(20.0), 1, 1)?;
    /// let load = pin.load_at(megapascals(750.0), 3.0)?;
    /// assert!((load - newtons(78.5e3)).abs() < newtons(50.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn load_at(&self, strength: Stress, factor: f64) -> Result<Force, Error> {
        sane_stress("strength", strength)?;
        sane_factor(factor)?;
        Ok(self.area * strength / factor)
    }

    /// The working of the area.
    ///
    /// ```
    /// use shankline::{strength::stressed::StressedArea, units::millimetres};
    /// let pin = StressedArea::shear_of_pins(millimetres(20.0), 1, 2).unwrap();
    /// pin.derivation().check().unwrap();
    /// ```
    pub fn derivation(&self) -> Derivation {
        self.working.clone()
    }
}

/// Refuses a factor of safety that is none.
pub(super) fn sane_factor(factor: f64) -> Result<f64, Error> {
    within("factor of safety", factor, 0.01, 1000.0)
}

#[cfg(test)]
mod tests;
