//! Grades and classes of nuts, and how strong a nut is on a thread.

use alloc::{format, vec::Vec};

use super::fit::in_iso_10684;
use super::{NutTapping, Sizes, widest};
use crate::caution::{Caution, Cautions};
use crate::error::{Error, out_of_range, positive};
use crate::names::{Key, NutGrade};
use crate::source::Provenance;
use crate::tables::galvanic::Metal;
use crate::tables::nut_grades::{NutGradeRow, NutShape};
use crate::thread::Thread;
use crate::units::{Area, Force, Stress, millimetres};

#[cfg(test)]
mod tests;
mod threads;

const ISO_3506_2: &str = "ISO 3506-2 class ";

/// Strength of a nut on a thread.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M12".parse()?;
/// let nut = NutGrade::Iso898_2Class8.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
/// assert_eq!(nut.proof_stress, megapascals(880.0));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct NutStrength {
    /// Grade.
    pub grade: NutGrade,
    /// Shape.
    pub shape: NutShape,
    /// The thread it holds for: a nut of another size or pitch may have another proof stress.
    pub thread: Thread,
    /// How its thread is tapped; a class of ISO 10684 is always tapped oversize.
    pub tapping: NutTapping,
    /// Proof stress so tapped: what the nut must bear on a hard mandrel without stripping, over the tensile
    /// stress area of the bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub proof_stress: Stress,
    /// Restrictions of the row.
    pub note: Option<&'static str>,
    /// Source of the proof stress.
    pub provenance: Provenance,
}

impl NutStrength {
    /// Proof load of the nut on its thread: proof stress times [`Thread::tensile_stress_area`].
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] for a thread of another diameter or pitch than the strength was asked for.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::units::pound_force;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // ASTM A194 prints 24 830 lbf, from an area of 0.1419 in2.
    /// let thread: Thread = "1/2-13 UNC".parse()?;
    /// let nut = NutGrade::AstmA194_2h.strength(NutShape::HeavyHex, &thread, NutTapping::Usual)?;
    /// assert!((nut.proof_load(&thread)?.get::<pound_force>() - 24_830.0).abs() < 5.0);
    /// assert!(nut.proof_load(&"3/4-10 UNC".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn proof_load(&self, thread: &Thread) -> Result<Force, Error> {
        let own = &self.thread;
        if !own.is_same_size(thread) {
            return Err(Error::Mismatch(format!(
                "the strength of the nut is that of {own}, not of {thread}"
            )));
        }
        Ok(self.proof_stress * thread.tensile_stress_area())
    }

    /// The same on a given area, such as the printed one.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for an area that is not positive and finite, or so great that the load is not.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M16".parse()?;
    /// let nut = NutGrade::Iso898_2Class10.strength(NutShape::Style1, &thread, NutTapping::Usual)?;
    /// // ISO 898-2 prints 164 900 N.
    /// let load = nut.proof_load_on(square_millimetres(157.0))?;
    /// assert!((load - newtons(164_850.0)).abs() < newtons(1e-6));
    /// # Ok(())
    /// # }
    /// ```
    pub fn proof_load_on(&self, area: Area) -> Result<Force, Error> {
        let area = positive("tensile stress area", area)?;
        positive("proof load of the nut", self.proof_stress * area)
    }

    /// What the user of this strength must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M4".parse()?;
    /// let nut = NutGrade::Iso898_2Class9.strength(NutShape::Style2, &thread, NutTapping::Usual)?;
    /// assert_eq!(nut.cautions().iter().count(), 1); // recalled
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("nut strength", self.provenance))
    }
}

impl NutGrade {
    /// Every grade.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutGrade::all().any(|grade| grade == NutGrade::AstmA194_2h));
    /// ```
    pub fn all() -> impl Iterator<Item = Self> {
        Self::ALL.iter().copied()
    }

    /// Strength of a nut of this grade and shape on a thread, tapped as its finish asks for
    /// ([`Finish::nut_tapping`](super::Finish::nut_tapping)).
    ///
    /// Sources: SAE J995, ASTM A563 Tables 3 and 4, ASTM A194, ASTM F594, ISO 898-2, ISO 10684 Annex A, ISO 3506-2
    /// clauses 5.2.3 and 5.2.4 (the number of a class is a tenth of its proof stress in MPa); the row
    /// says which and how it is known. Tapped oversize, ASTM A563 O, A and B lose a quarter and DH heavy hex a
    /// seventh; metric nuts M8 and M10 bear what ISO 10684 gives, and from M12 on all that ISO 898-2 asks
    /// (ISO 10684, clause 7, in an extract of AS/NZS 1214).
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the standard has no such shape in this grade, or not for such threads;
    /// the message lists what it has. [`Error::OutOfRange`] if it does not cover the size. [`Error::NoValue`]
    /// for a nut tapped oversize of a standard that gives no strength for it.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A jam nut carries 60 % of a full one.
    /// let thread: Thread = "5/8-11 UNC".parse()?;
    /// let of = |shape| NutGrade::SaeJ995Grade8.strength(shape, &thread, NutTapping::Usual);
    /// assert_eq!(of(NutShape::HexJam)?.proof_stress, 0.6 * of(NutShape::Hex)?.proof_stress);
    /// assert_eq!(
    ///     of(NutShape::HeavyHex).unwrap_err().to_string(),
    ///     "heavy hex nut of SAE J995 grade 8 is not in the table of nut strengths; \
    ///      shapes of that grade: hex, hex flange, hex jam, heavy hex jam, hex slotted",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn strength(
        self,
        shape: NutShape,
        thread: &Thread,
        tapping: NutTapping,
    ) -> Result<NutStrength, Error> {
        let oversize = self.is_oversize() || tapping == NutTapping::Oversize;
        let (row, proof_stress) = if oversize {
            self.oversize(shape, thread)?
        } else {
            let row = self.row(shape, thread)?;
            (row, row.proof_stress)
        };
        Ok(NutStrength {
            grade: self,
            shape,
            thread: *thread,
            tapping: if oversize {
                NutTapping::Oversize
            } else {
                NutTapping::Usual
            },
            proof_stress,
            note: row.note,
            provenance: row.provenance,
        })
    }

    /// Whether it is a class of nuts that are tapped oversize by definition: those of ISO 10684 with Z.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutGrade::Iso10684Class8z.is_oversize() && !NutGrade::AstmA563Dh.is_oversize());
    /// ```
    #[must_use]
    pub const fn is_oversize(self) -> bool {
        self.usual_class().is_some()
    }

    /// Whether it is a grade of stainless steel: ISO 3506-2, ASTM F594, and ASTM A194 8 and 8M.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutGrade::Iso3506_2ClassA4_70.is_stainless());
    /// assert!(!NutGrade::Iso898_2Class8.is_stainless());
    /// ```
    #[must_use]
    pub fn is_stainless(self) -> bool {
        let name = self.label();
        matches!(self, Self::AstmA194_8Class1 | Self::AstmA194_8mClass1)
            || name.starts_with(ISO_3506_2)
            || name.starts_with("ASTM F594 ")
    }

    /// What a stainless grade is made of, bare; none of others.
    pub(crate) fn stainless_metal(self) -> Option<Metal> {
        self.is_stainless()
            .then_some(if super::of_little_chromium(self.label()) {
                Metal::Stainless12Chromium
            } else {
                Metal::Stainless18Chromium
            })
    }

    /// The class of ISO 898-2 that a class of ISO 10684 is tapped oversize from.
    const fn usual_class(self) -> Option<Self> {
        Some(match self {
            Self::Iso10684Class5z => Self::Iso898_2Class5,
            Self::Iso10684Class6z => Self::Iso898_2Class6,
            Self::Iso10684Class8z => Self::Iso898_2Class8,
            Self::Iso10684Class9z => Self::Iso898_2Class9,
            Self::Iso10684Class10z => Self::Iso898_2Class10,
            _ => return None,
        })
    }

    /// Row and proof stress of a nut tapped oversize.
    fn oversize(
        self,
        shape: NutShape,
        thread: &Thread,
    ) -> Result<(&'static NutGradeRow, Stress), Error> {
        let no_value = |reason| Error::NoValue {
            quantity: "proof stress",
            subject: format!("a {shape} nut of {self}, tapped oversize"),
            reason,
        };
        if self.is_stainless() {
            self.row(shape, thread)?;
            return Err(no_value("nuts of stainless steel are not made so"));
        }
        if thread.is_unified() {
            let row = self.row(shape, thread)?;
            let stress = row.proof_stress_overtapped;
            return match stress {
                Some(stress) => Ok((row, stress)),
                None => Err(no_value("its standard gives none for oversize threads")),
            };
        }
        if !in_iso_10684(thread) {
            return Err(no_value("ISO 10684 is for coarse threads M8 to M64"));
        }
        let usual = self.usual_class().unwrap_or(self);
        let row = if thread.nominal_diameter() < millimetres(12.0) {
            let mut classes = Self::all();
            let marked = classes.find(|class| class.usual_class() == Some(usual));
            marked
                .ok_or_else(|| no_value("ISO 10684 has no such class at that size"))?
                .row(shape, thread)?
        } else {
            usual.row(shape, thread)?
        };
        Ok((row, row.proof_stress))
    }

    /// The row of a shape and thread.
    fn row(self, shape: NutShape, thread: &Thread) -> Result<&'static NutGradeRow, Error> {
        let diameter = thread.nominal_diameter();
        let sizes = |row: &NutGradeRow| Sizes {
            from: row.size_from,
            over: row.size_over,
            thru: Some(row.size_thru),
        };
        let of_all = |row: &&'static NutGradeRow| {
            row.grade == self
                && row.shape == shape
                && row.threads.covers(thread)
                && sizes(row).cover(diameter)
        };
        if let Some(row) = rows().find(of_all) {
            return Ok(row);
        }
        let of_grade = rows().filter(|row| row.grade == self);
        let of_shape = of_grade.clone().filter(|row| row.shape == shape);
        let of_thread = of_shape.clone().filter(|row| row.threads.covers(thread));
        let not_in_table = |what: &str, known: Vec<&str>| Error::NotInTable {
            table: "the table of nut strengths",
            wanted: format!("{shape} nut of {self}"),
            available: format!("{what} of that grade: {}", known.join(", ")),
        };
        if of_shape.clone().next().is_none() {
            let shapes = unique(of_grade.map(|row| row.shape.label()));
            return Err(not_in_table("shapes", shapes));
        }
        if of_thread.clone().next().is_none() {
            let threads = unique(of_shape.map(|row| row.threads.label()));
            return Err(Error::NotInTable {
                table: "the table of nut strengths",
                wanted: format!("{shape} nut of {self} with a thread {thread}"),
                available: format!("its threads are {}", threads.join("; ")),
            });
        }
        Err(out_of_range(
            format!("nominal diameter for a {shape} nut of {self}"),
            diameter,
            widest(of_thread.map(sizes), diameter),
        ))
    }
}

fn rows() -> impl Iterator<Item = &'static NutGradeRow> + Clone {
    NutGradeRow::all_inch()
        .iter()
        .chain(NutGradeRow::all_metric())
}

fn unique<'a>(names: impl Iterator<Item = &'a str>) -> Vec<&'a str> {
    let mut found = Vec::new();
    for name in names {
        if !found.contains(&name) {
            found.push(name);
        }
    }
    found
}
