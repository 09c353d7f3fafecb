//! What fits what.

use alloc::vec::Vec;

use crate::error::Error;
use crate::material::{BoltGrade, NutGrade, NutTapping};
use crate::names::Key;
use crate::parts::{Nut, NutStyle, ScrewProduct, ScrewSeries, Washer, WasherStyle};
use crate::tables::nut_grades::{BoltCoating, NutPairing, NutStanding};
use crate::tables::threads::{MetricSeries, MetricThread, UnifiedSeries, UnifiedThread};
use crate::thread::Thread;

impl Thread {
    /// Every thread of the tables: Unified ones, then metric ones, by rising diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let mut names = Thread::tabled().map(|thread| thread.to_string());
    /// assert_eq!(names.next().as_deref(), Some("#0-80 UNF"));
    /// assert!(names.any(|name| name == "M12x1.25"));
    /// ```
    pub fn tabled() -> impl Iterator<Item = Self> {
        let unified = UnifiedThread::all().iter().map(Self::from_unified);
        unified.chain(MetricThread::all().iter().map(Self::from_metric))
    }
}

impl UnifiedSeries {
    /// The threads of the series, by rising diameter. A thread of a constant-pitch series that is UNC, UNF or UNEF
    /// as well is among both.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let mut fine = UnifiedSeries::Unf.threads();
    /// assert_eq!(fine.next().unwrap().to_string(), "#0-80 UNF");
    /// ```
    pub fn threads(self) -> impl Iterator<Item = Thread> {
        let of_it = move |row: &&UnifiedThread| {
            row.series == self || row.constant_pitch_series == Some(self)
        };
        let rows = UnifiedThread::all().iter().filter(of_it);
        rows.map(Thread::from_unified)
    }
}

impl MetricSeries {
    /// The threads of the series, by rising diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert_eq!(MetricSeries::Coarse.threads().count(), 40);
    /// ```
    pub fn threads(self) -> impl Iterator<Item = Thread> {
        let rows = MetricThread::all().iter();
        rows.filter(move |row| row.series == self)
            .map(Thread::from_metric)
    }
}

impl ScrewProduct {
    /// The threads it is made with, by rising diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let sizes: Vec<String> = ScrewProduct::En14399_4.threads().map(|t| t.to_string()).collect();
    /// assert_eq!(sizes.first().map(String::as_str), Some("M12"));
    /// ```
    pub fn threads(self) -> impl Iterator<Item = Thread> {
        Thread::tabled().filter(move |thread| ScrewSeries::new(self, thread).is_ok())
    }

    /// The products that are made with a thread. None has left-hand, multi-start, UNJ or MJ threads.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let products: Vec<_> = ScrewProduct::made_with(&"M20x1.5".parse()?).collect();
    /// assert_eq!(products, [ScrewProduct::Iso8765]);
    /// # Ok(())
    /// # }
    /// ```
    pub fn made_with(thread: &Thread) -> impl Iterator<Item = Self> + use<> {
        let (all, thread) = (Self::ALL.iter().copied(), *thread);
        all.filter(move |product| ScrewSeries::new(*product, &thread).is_ok())
    }

    /// The grades that it is made in with a thread: those whose standard covers the size and that belong to the
    /// product. Empty for a thread that the product is not made with.
    ///
    /// Source: ASTM F3125 for structural bolts in inches, EN 14399-3 and -4 for metric ones (the last
    /// recalled), ASTM A574 and ISO 4762 for socket screws; for the others which documents belong to
    /// inch and which to metric parts: common practice, no source.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M16".parse()?;
    /// let grades: Vec<_> = ScrewProduct::En14399_3.grades(&thread).map(|grade| grade.label()).collect();
    /// assert_eq!(grades, ["ISO 898-1 class 8.8", "ISO 898-1 class 10.9"]);
    /// # Ok(())
    /// # }
    /// ```
    pub fn grades(self, thread: &Thread) -> impl Iterator<Item = BoltGrade> + use<> {
        let made = ScrewSeries::new(self, thread).is_ok();
        let diameter = thread.nominal_diameter();
        BoltGrade::ALL.iter().copied().filter(move |grade| {
            let strength = || grade.strength(diameter).ok();
            made && strength().is_some_and(|strength| self.is_made_in(&strength))
        })
    }
}

impl BoltGrade {
    /// The grades that some product with a thread is made in ([`ScrewProduct::grades`]).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mut grades = BoltGrade::made_for(&"M12".parse()?);
    /// assert!(grades.any(|grade| grade == PropertyClass::Class8_8.into()));
    /// assert!(!BoltGrade::made_for(&"M12".parse()?).any(|grade| grade == SaeGrade::Grade8.into()));
    /// # Ok(())
    /// # }
    /// ```
    pub fn made_for(thread: &Thread) -> impl Iterator<Item = Self> + use<> {
        let products: Vec<ScrewProduct> = ScrewProduct::made_with(thread).collect();
        let diameter = thread.nominal_diameter();
        Self::ALL.iter().copied().filter(move |grade| {
            let strength = grade.strength(diameter);
            strength.is_ok_and(|strength| products.iter().any(|own| own.is_made_in(&strength)))
        })
    }

    /// The nut grades that the standard of the bolt names for a thread, those it lets stand in after those it
    /// names; each once, in the order of the table. Empty where no standard that was read names one.
    ///
    /// Source: [`NutPairing`], row by row.
    ///
    /// # Errors
    ///
    /// Those of [`NutPairing::for_bolt`].
    ///
    /// ```
    /// use shankline::{prelude::*, tables::nut_grades::BoltCoating};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = BoltGrade::from(PropertyClass::Class8_8);
    /// let nuts = bolt.named_nuts(&"M12".parse()?, BoltCoating::Plain)?;
    /// assert_eq!(nuts, [NutGrade::Iso898_2Class8]);
    /// # Ok(())
    /// # }
    /// ```
    pub fn named_nuts(self, thread: &Thread, coating: BoltCoating) -> Result<Vec<NutGrade>, Error> {
        let rows = NutPairing::for_bolt(self, thread.nominal_diameter(), coating)?;
        let rows: Vec<&NutPairing> = rows.collect();
        let mut nuts = Vec::new();
        for standing in [NutStanding::Named, NutStanding::Suitable] {
            for row in rows.iter().filter(|row| row.standing == standing) {
                if !nuts.contains(&row.nut) {
                    nuts.push(row.nut);
                }
            }
        }
        Ok(nuts)
    }
}

impl NutStyle {
    /// The threads it is made with, by rising diameter.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let first = NutStyle::Iso7042.threads().next().unwrap();
    /// assert_eq!(first.to_string(), "M5");
    /// ```
    pub fn threads(self) -> impl Iterator<Item = Thread> {
        Thread::tabled().filter(move |thread| Nut::find(self, thread).is_ok())
    }

    /// The styles that are made with a thread. None has left-hand, multi-start, UNJ or MJ threads.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let styles: Vec<_> = NutStyle::made_with(&"M12".parse()?).collect();
    /// assert!(styles.contains(&NutStyle::Iso4032) && !styles.contains(&NutStyle::Iso10512)); // fine pitch
    /// # Ok(())
    /// # }
    /// ```
    pub fn made_with(thread: &Thread) -> impl Iterator<Item = Self> + use<> {
        let (all, thread) = (Self::ALL.iter().copied(), *thread);
        all.filter(move |style| Nut::find(*style, &thread).is_ok())
    }

    /// The grades whose standard gives a strength to nuts of this style with a thread and so tapped. Empty for
    /// a style of no [`shape`](Self::shape), and for a thread that the style is not made with.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// let mut grades = NutStyle::Iso4032.grades(&thread, NutTapping::Usual);
    /// assert!(grades.any(|grade| grade == NutGrade::Iso898_2Class8));
    /// # Ok(())
    /// # }
    /// ```
    pub fn grades(
        self,
        thread: &Thread,
        tapping: NutTapping,
    ) -> impl Iterator<Item = NutGrade> + use<> {
        let thread = *thread;
        let shape = self.shape().filter(|_| Nut::find(self, &thread).is_ok());
        NutGrade::ALL.iter().copied().filter(move |grade| {
            shape.is_some_and(|shape| grade.strength(shape, &thread, tapping).is_ok())
        })
    }
}

impl WasherStyle {
    /// The threads of the bolts it is made for, by rising diameter: of each size all pitches. Its sizes by name are
    /// the rows of [`Washer::of_style`].
    ///
    /// ```
    /// use shankline::prelude::*;
    /// let coarse = WasherStyle::En14399_6.threads().find(Thread::is_coarse).unwrap();
    /// assert_eq!(coarse.to_string(), "M12");
    /// ```
    pub fn threads(self) -> impl Iterator<Item = Thread> {
        Thread::tabled().filter(move |thread| Washer::find(self, thread).is_ok())
    }

    /// The styles that are made for bolts of a thread.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let styles: Vec<_> = WasherStyle::made_for(&"M12".parse()?).collect();
    /// assert!(styles.contains(&WasherStyle::Iso7089) && !styles.contains(&WasherStyle::F436));
    /// # Ok(())
    /// # }
    /// ```
    pub fn made_for(thread: &Thread) -> impl Iterator<Item = Self> + use<> {
        let (all, thread) = (Self::ALL.iter().copied(), *thread);
        all.filter(move |style| Washer::find(*style, &thread).is_ok())
    }
}
