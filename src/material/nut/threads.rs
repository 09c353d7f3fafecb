//! The threads that a row of nut strengths holds for.

use crate::tables::nanometres;
use crate::tables::nut_grades::NutThreads;
use crate::tables::threads::{MetricThread, UnifiedSeries};
use crate::thread::Thread;

const ONE_INCH: i64 = 25_400_000;

impl NutThreads {
    /// Whether a thread is among them. Special threads are not.
    ///
    /// ```
    /// use shankline::tables::nut_grades::NutThreads;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(NutThreads::MetricFine.covers(&"M12x1.25".parse()?));
    /// assert!(!NutThreads::MetricFine.covers(&"M12".parse()?));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn covers(self, thread: &Thread) -> bool {
        let unified = thread.unified_row().map(|row| row.series);
        let coarse = unified == Some(UnifiedSeries::Unc);
        let is = |series| unified == Some(series);
        match self {
            Self::Unc => coarse,
            Self::Unc8un => coarse || is(UnifiedSeries::Un8),
            Self::Unc8un6un => coarse || is(UnifiedSeries::Un8) || is(UnifiedSeries::Un6),
            Self::UncThen8un => {
                let small = nanometres(thread.nominal_diameter()) <= ONE_INCH;
                (coarse && small) || (is(UnifiedSeries::Un8) && !small)
            }
            Self::Un12AndFiner => {
                let fine = thread.threads_per_inch().is_some_and(|count| count >= 12.0);
                is(UnifiedSeries::Unf) || (unified.is_some() && !coarse && fine)
            }
            Self::MetricCoarse => thread.metric_row().is_some() && thread.is_coarse(),
            Self::Metric => Self::MetricCoarse.covers(thread) || Self::MetricFine.covers(thread),
            Self::MetricFine => {
                thread.metric_row().is_some()
                    && MetricThread::coarse(thread.nominal_diameter()).is_some()
                    && !thread.is_coarse()
            }
        }
    }
}
