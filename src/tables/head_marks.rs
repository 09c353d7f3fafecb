//! Marks on bolt heads: from grade to mark, and from the mark on a bolt in the hand to the grades
//! that bear it.

use alloc::vec::Vec;
use core::fmt;

use super::generated;
use crate::caution::{Caution, Cautions};
use crate::names::BoltGrade;
use crate::source::Provenance;

/// Mark of one grade, apart from the mark of the maker.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::tables::head_marks::HeadMark;
/// let mark = HeadMark::of(SaeGrade::Grade8.into()).next().unwrap();
/// assert_eq!(mark.lines, 6);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct HeadMark {
    /// Grade.
    pub bolt: BoltGrade,
    /// Number of lines on the head. With none and no letters the grade leaves the head unmarked.
    pub lines: u8,
    /// Letters and numbers.
    pub letters: Option<&'static str>,
    /// The letters are underlined.
    pub underlined: bool,
    /// Restrictions.
    pub note: Option<&'static str>,
    /// Source of the row.
    pub provenance: Provenance,
}

impl HeadMark {
    /// Every mark.
    ///
    /// ```
    /// assert_eq!(shankline::tables::head_marks::HeadMark::all().len(), 116);
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &generated::head_marks::HEAD_MARKS
    }

    /// The marks a grade may bear. None if no mark was read (A574), not if it has none.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::head_marks::HeadMark;
    /// // A354 BD may bear six lines beside its letters.
    /// assert_eq!(HeadMark::of(AstmGrade::A354BdTo2011.into()).count(), 2);
    /// ```
    pub fn of(bolt: BoltGrade) -> impl Iterator<Item = &'static Self> {
        Self::all().iter().filter(move |mark| mark.bolt == bolt)
    }

    /// The grades that bear what is seen on a head: so many lines, and these letters, either case
    /// and with or without spaces and hyphens. An underline is easily worn off or overlooked, so
    /// underlined marks come back too; [`underlined`](Self::underlined) tells them apart.
    ///
    /// More than one grade may come back, and they may differ in strength: take the weakest unless
    /// papers tell more. An unmarked head proves nothing: bolts of no grade are unmarked too.
    /// Marks are also forged. What carries life must be bought with papers.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::head_marks::HeadMark;
    /// let names = |lines, letters| -> Vec<String> {
    ///     HeadMark::seen(lines, letters).iter().map(|mark| mark.bolt.to_string()).collect()
    /// };
    /// assert_eq!(names(3, ""), ["SAE J429 grade 5", "SAE J429 grade 5.2"]);
    /// assert_eq!(names(0, "5.6"), ["ISO 898-1 class 5.6"]);
    /// assert_eq!(names(0, "a2 70"), ["ISO 3506-1 class A2-70"]);
    /// assert_eq!(names(4, "").len(), 0);
    /// ```
    #[must_use]
    pub fn seen(lines: u8, letters: &str) -> Vec<&'static Self> {
        Self::all()
            .iter()
            .filter(|mark| mark.lines == lines && same(mark.letters.unwrap_or(""), letters))
            .collect()
    }

    /// What the user of this mark must be told, if it was recalled, not read.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::tables::head_marks::HeadMark;
    /// let recalled = HeadMark::of(AstmGrade::A354Bc.into()).next().unwrap();
    /// assert_eq!(recalled.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(Caution::from_memory("head mark", self.provenance))
    }
}

/// Whether two marks have the same letters and digits. Points count: 48 is not 4.8.
fn same(a: &str, b: &str) -> bool {
    fn plain(text: &str) -> impl Iterator<Item = char> {
        text.chars()
            .filter(|c| c.is_alphanumeric() || *c == '.')
            .map(|c| c.to_ascii_uppercase())
    }
    plain(a).eq(plain(b))
}

impl fmt::Display for HeadMark {
    /// `A325 underlined`, `3 lines`, `6 lines and BD`, `no mark`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letters = self.letters.unwrap_or("");
        let underlined = if self.underlined { " underlined" } else { "" };
        match (self.lines, letters) {
            (0, "") => f.write_str("no mark"),
            (0, _) => write!(f, "{letters}{underlined}"),
            (lines, "") => write!(f, "{lines} lines"),
            (lines, _) => write!(f, "{lines} lines and {letters}{underlined}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;

    #[test]
    fn marks_print() {
        let print = |lines, letters| HeadMark::seen(lines, letters)[0].to_string();
        assert_eq!(print(0, ""), "no mark");
        assert_eq!(print(6, ""), "6 lines");
        assert_eq!(print(6, "bd"), "6 lines and BD");
        assert_eq!(HeadMark::seen(0, "A449")[1].to_string(), "A449 underlined");
    }

    #[test]
    fn every_mark_leads_back_to_its_grade() {
        for mark in HeadMark::all() {
            let back = HeadMark::seen(mark.lines, mark.letters.unwrap_or(""));
            assert!(back.contains(&mark));
        }
        assert!(HeadMark::seen(0, "48").is_empty());
        assert!(
            HeadMark::seen(0, "-")
                .iter()
                .all(|mark| mark.letters.is_none())
        );
    }
}
