//! Which thread is this: from what a caliper and a pitch gauge say.

use alloc::vec::Vec;

use super::Thread;
use crate::error::{Error, sane_length};
use crate::tables::threads::{MetricSeries, MetricThread, UnifiedSeries, UnifiedThread};
use crate::units::{Length, Ratio, millimetres};

/// A standard thread that a measured one may be.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let found = Thread::identify(millimetres(11.85), millimetres(1.75))?[0];
/// assert_eq!(found.thread.to_string(), "M12");
/// assert!((found.diameter_deviation - millimetres(-0.15)).abs() < millimetres(1e-9));
/// assert!(found.distance.value < 0.3);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct ThreadMatch {
    /// The standard thread.
    pub thread: Thread,
    /// Measured less nominal diameter. Bolts measure a little under their nominal diameter.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub diameter_deviation: Length,
    /// Measured less standard pitch.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch_deviation: Length,
    /// How far off the measurement is: 0 is a bolt in the middle of its usual tolerance with the very
    /// pitch, 1 is the limit of what is listed at all.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_ratio")
    )]
    pub distance: Ratio,
    /// Whether the measures fit it within the uncertainty of a caliper (0.05 mm beyond a bolt of class 2A or 6g)
    /// and of a pitch gauge (2 %): threads of which all do cannot be told apart by them.
    pub within_uncertainty: bool,
}

impl Thread {
    /// The standard threads a bolt may have, the closest first, from its major diameter by caliper
    /// and its pitch by gauge or by counting over a length.
    ///
    /// Listed are threads whose pitch is within 5 % and whose nominal diameter is at most a quarter of
    /// a pitch above, or 0.1 mm below, the measured one: bolts are made under their nominal diameter by
    /// up to about 0.2 P (classes 2A, 6g), and crests wear. Inch and metric threads are ranked
    /// together. Those that the measures fit [within their uncertainty](ThreadMatch::within_uncertainty) come
    /// first, and of these coarse and fine threads before constant pitches, which hardly any shop stocks. Then
    /// the closest; of threads equally close, sizes a standard prefers. The limits are common practice, no source.
    ///
    /// Ask [`look_alikes`](Self::look_alikes) of the best one before forcing a nut on.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter or pitch that is not positive and finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A bolt measures 7.85 mm over its crests; 18 threads lie on an inch.
    /// let found = Thread::identify(millimetres(7.85), inches(1.0 / 18.0))?;
    /// assert_eq!(found[0].thread.to_string(), "5/16-18 UNC");
    /// // M8x1.25 is not that, but a hurried hand takes it for that.
    /// let alike = found[0].thread.look_alikes();
    /// assert!(alike.iter().any(|thread| thread.to_string() == "M8"));
    /// # Ok(())
    /// # }
    /// ```
    pub fn identify(major_diameter: Length, pitch: Length) -> Result<Vec<ThreadMatch>, Error> {
        sane_length("measured major diameter", major_diameter)?;
        sane_length("measured pitch", pitch)?;
        let mut matches: Vec<ThreadMatch> = all_threads()
            .filter_map(|thread| compare(thread, major_diameter, pitch))
            .collect();
        // Common practice before closeness only where the measures cannot tell.
        let group = |found: &ThreadMatch| match (found.within_uncertainty, is_common(&found.thread))
        {
            (true, true) => 0_u8,
            (true, false) => 1,
            (false, _) => 2,
        };
        matches.sort_by(|a, b| {
            group(a)
                .cmp(&group(b))
                .then(a.distance.value.total_cmp(&b.distance.value))
                .then(preference(&a.thread).cmp(&preference(&b.thread)))
        });
        Ok(matches)
    }

    /// Standard coarse and fine threads of the other system that this one is easily taken for: within
    /// 6 % in diameter and 15 % in pitch, and coarse threads within 22 % in pitch (M6 and 1/4-20). A nut of one may
    /// start on the other and seize or strip. The limits are common practice, no source.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let names = |text: &str| -> Result<Vec<String>, shankline::Error> {
    ///     Ok(text.parse::<Thread>()?.look_alikes().iter().map(ToString::to_string).collect())
    /// };
    /// assert_eq!(names("#10-32 UNF")?, ["M5"]);
    /// assert_eq!(names("M8")?, ["5/16-18 UNC"]);
    /// assert!(names("M20")?.contains(&"3/4-10 UNC".to_string()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn look_alikes(&self) -> Vec<Self> {
        // Of the larger of the two, so that the relation holds both ways.
        let near =
            |a: Length, b: Length, share: f64| (a - b).abs() <= share * if a > b { a } else { b };
        all_threads()
            .filter(|other| other.is_unified() != self.is_unified() && is_common(other))
            .filter(|other| {
                let both_coarse = is_coarse(self) && is_coarse(other);
                let pitch = if both_coarse { 0.22 } else { 0.15 };
                near(self.diameter, other.diameter, 0.06) && near(self.pitch, other.pitch, pitch)
            })
            .collect()
    }
}

impl Thread {
    /// Whether it is a coarse or fine thread that shops stock.
    pub(crate) fn is_common(&self) -> bool {
        is_common(self)
    }
}

fn all_threads() -> impl Iterator<Item = Thread> {
    let unified = UnifiedThread::all().iter().map(Thread::from_unified);
    unified.chain(MetricThread::all().iter().map(Thread::from_metric))
}

fn is_coarse(thread: &Thread) -> bool {
    match (thread.unified_row(), thread.metric_row()) {
        (Some(row), _) => row.series == UnifiedSeries::Unc,
        (_, Some(row)) => row.series == MetricSeries::Coarse,
        (None, None) => false,
    }
}

/// Coarse and fine threads that are in the shops.
fn is_common(thread: &Thread) -> bool {
    match (thread.unified_row(), thread.metric_row()) {
        (Some(row), _) => matches!(row.series, UnifiedSeries::Unc | UnifiedSeries::Unf),
        (_, Some(row)) => row.series == MetricSeries::Coarse || row.iso262_selected,
        (None, None) => false,
    }
}

/// Lower is likelier: common threads first, then threads of preferred sizes.
fn preference(thread: &Thread) -> u8 {
    let preferred = match (thread.unified_row(), thread.metric_row()) {
        (Some(row), _) => row.choice == crate::tables::threads::SizeChoice::Primary,
        (_, Some(row)) => row.iso261_choice == 1,
        (None, None) => false,
    };
    2 * u8::from(!is_common(thread)) + u8::from(!preferred)
}

fn compare(thread: Thread, diameter: Length, pitch: Length) -> Option<ThreadMatch> {
    let diameter_deviation = diameter - thread.diameter;
    let pitch_deviation = pitch - thread.pitch;
    let (least, most) = (-0.25 * thread.pitch, millimetres(0.1));
    if diameter_deviation < least || diameter_deviation > most {
        return None;
    }
    // A bolt of class 2A or 6g is about 0.1 P under its nominal diameter on average.
    let expected = -0.1 * thread.pitch;
    let off = diameter_deviation - expected;
    let reach = if off > millimetres(0.0) {
        most - expected
    } else {
        expected - least
    };
    let by_diameter = (off / reach).value;
    let by_pitch = (pitch_deviation / (0.05 * thread.pitch)).value;
    if by_pitch.abs() > 1.0 {
        return None;
    }
    let caliper = millimetres(0.05);
    let within_uncertainty = diameter_deviation >= -0.2 * thread.pitch - caliper
        && diameter_deviation <= caliper
        && pitch_deviation.abs() <= 0.02 * thread.pitch;
    // The larger of the two shares: 1 at either limit.
    let distance = by_diameter.abs().max(by_pitch.abs());
    Some(ThreadMatch {
        thread,
        diameter_deviation,
        pitch_deviation,
        distance: crate::units::from_base(distance),
        within_uncertainty,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;

    /// A bolt in the middle of its tolerance is found first whatever thread it has, unless a thread
    /// of the other system is as close (a few constant-pitch sizes are).
    #[test]
    fn common_threads_find_themselves() {
        for thread in all_threads().filter(is_common) {
            let measured = thread.nominal_diameter() - 0.1 * thread.pitch();
            let found = Thread::identify(measured, thread.pitch()).unwrap();
            assert_eq!(found[0].thread.to_string(), thread.to_string());
            assert!(found[0].distance.value < 1e-9);
        }
    }

    #[test]
    fn rough_measurements_still_find_the_thread() {
        let (d, p) = (millimetres(11.8), millimetres(1.72));
        let found = Thread::identify(d, p).unwrap();
        assert_eq!(found[0].thread.to_string(), "M12");
        assert!(found.iter().all(|m| m.distance.value <= 1.0));
        assert!(Thread::identify(millimetres(f64::NAN), p).is_err());
        assert!(Thread::identify(d, millimetres(0.0)).is_err());
        assert!(Thread::identify(millimetres(500.0), p).unwrap().is_empty());
    }

    #[test]
    fn preferred_sizes_come_before_others() {
        for (text, right) in [
            ("M12", 0),
            ("M14", 1),
            ("M11", 1),
            ("M12x1", 2),
            ("M14x1", 3),
            ("1/2-13 UNC", 0),
            ("#1-64 UNC", 1),
            ("1/2-28 UNEF", 2),
            ("13/16-28 UN", 3),
        ] {
            let thread: Thread = text.parse().unwrap();
            assert_eq!(preference(&thread), right, "{text}");
        }
    }

    #[test]
    fn look_alikes_are_mutual_where_both_are_common() {
        for thread in all_threads().filter(is_common) {
            for other in thread.look_alikes() {
                assert!(other.is_unified() != thread.is_unified());
                assert!(other.look_alikes().contains(&thread), "{thread} {other}");
            }
        }
        assert!(
            "4-4 UNC"
                .parse::<Thread>()
                .unwrap()
                .look_alikes()
                .is_empty()
        );
    }
}
