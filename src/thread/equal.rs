//! When two threads are the same, and which comes first.

use core::cmp::{Ordering, Reverse};
use core::hash::{Hash, Hasher};

use super::{Engagement, Form, Hand, Profile, Thread, ToleranceClass};
use crate::tables::nanometres;
use crate::tables::threads::{MetricSeries, UnifiedSeries};

/// What tells threads apart, in the order they are sorted by. Nanometres instead of floating point numbers: every
/// nominal size is a whole number of them.
type Key = (
    bool,
    i64,
    Reverse<i64>,
    Series,
    Profile,
    Option<ToleranceClass>,
    Hand,
    u8,
    Option<Engagement>,
);

#[derive(PartialEq, Eq, PartialOrd, Ord, Hash)]
enum Series {
    Unified(UnifiedSeries),
    Special,
    Metric(MetricSeries),
}

impl Thread {
    fn key(&self) -> Key {
        let series = match self.form {
            Form::Unified(row) => Series::Unified(row.series),
            Form::UnifiedSpecial(_) | Form::MetricSpecial => Series::Special,
            Form::Metric(row) => Series::Metric(row.series),
        };
        (
            !self.is_unified(),
            nanometres(self.diameter),
            Reverse(nanometres(self.pitch)),
            series,
            self.profile,
            self.class,
            self.hand,
            self.starts,
            self.engagement,
        )
    }
}

impl PartialEq for Thread {
    fn eq(&self, other: &Self) -> bool {
        self.key() == other.key()
    }
}

impl Eq for Thread {}

impl Hash for Thread {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.key().hash(state);
    }
}

impl PartialOrd for Thread {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Thread {
    fn cmp(&self, other: &Self) -> Ordering {
        self.key().cmp(&other.key())
    }
}

impl Engagement {
    /// Groups before lengths.
    fn key(
        &self,
    ) -> (
        Option<crate::tables::thread_tolerances::EngagementGroup>,
        i64,
    ) {
        match self {
            Self::Group(group) => (Some(*group), 0),
            Self::Length(length) => (None, nanometres(*length)),
        }
    }
}

impl PartialEq for Engagement {
    fn eq(&self, other: &Self) -> bool {
        self.key() == other.key()
    }
}

impl Eq for Engagement {}

impl Hash for Engagement {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.key().hash(state);
    }
}

impl PartialOrd for Engagement {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Engagement {
    fn cmp(&self, other: &Self) -> Ordering {
        self.key().cmp(&other.key())
    }
}

#[cfg(test)]
mod tests {
    use alloc::{collections::BTreeSet, vec::Vec};

    use super::*;
    use crate::units::{inches, millimetres};

    #[test]
    fn the_same_thread_by_another_way_is_equal() {
        let read: Thread = "3/4-10 UNC".parse().unwrap();
        // 3/4 in and 19.05 mm differ in the last bit of a floating point number.
        let made = Thread::unified(millimetres(19.05), UnifiedSeries::Unc).unwrap();
        assert_eq!(read, made);
        let special = |size| Thread::unified_special(size, 14.0).unwrap();
        assert_eq!(special(inches(0.9)), special(millimetres(22.86)));
        assert_ne!(special(inches(0.9)), special(inches(0.900_001)));
        for (a, b) in [
            ("M12", "M12-6g"),
            ("M12", "M12-LH"),
            ("M12", "MJ12x1.75"),
            ("M12", "M12x1.5"),
            ("M20-6g-L", "M20-6g-S"),
            ("M20-6g-30", "M20-6g-40"),
            ("1/2-13 UNC", "1/2-13 UNS"),
        ] {
            assert_ne!(a.parse::<Thread>().unwrap(), b.parse().unwrap(), "{a} {b}");
        }
    }

    #[test]
    fn every_tabled_thread_is_one_of_its_own_and_in_order() {
        let threads: Vec<Thread> = Thread::tabled().collect();
        let set: BTreeSet<Thread> = threads.iter().copied().collect();
        assert_eq!(set.len(), threads.len());
        let diameters = |unified| {
            let own = set.iter().filter(move |t| t.is_unified() == unified);
            own.map(|t| nanometres(t.nominal_diameter()))
                .collect::<Vec<_>>()
        };
        assert!(diameters(true).is_sorted() && diameters(false).is_sorted());
    }
}
