//! Limits of metric threads from the tables of ISO 965-1.

use super::{Limits, MetricClass, ThreadLimits, ToleranceClass};
use crate::caution::{Caution, Cautions};
use crate::error::Error;
use crate::tables::thread_tolerances::{
    CrestTolerance, MetricDeviation, PitchDiameterTolerance, ThreadKind,
};
use crate::thread::Thread;
use crate::thread::area::H_PER_PITCH;
use crate::units::{Length, millimetres};

/// A length in micrometres, which every limit is a whole number of.
type Count = i32;

/// To the nearest whole micrometre, halves up.
fn count(length: Length) -> Count {
    // Metric threads of the table end at 100 mm; `as` saturates anyway.
    #[allow(clippy::cast_possible_truncation)]
    let count = (length.value * 1e6 + 0.5) as Count;
    count
}

fn length(count: Count) -> Length {
    millimetres(f64::from(count) / 1e3)
}

/// How much smaller than the pitch diameter the root diameter d3 is where the root is an arc of
/// radius 0.125 P tangent to both flanks: H - 2 r = 0.616025 P.
pub(super) fn root_depth(pitch: Length) -> Length {
    (H_PER_PITCH - 0.25) * pitch
}

pub(super) fn limits(thread: Thread, class: MetricClass) -> Result<ThreadLimits, Error> {
    let (d, pitch) = (thread.diameter, thread.pitch);
    let (pitch_grade, pitch_position) = class.pitch_diameter();
    let (crest_grade, crest_position) = class.crest_diameter();
    let kind = ThreadKind::of(ToleranceClass::Metric(class));
    let pitch_row = PitchDiameterTolerance::find(kind, d, pitch, pitch_grade)?;
    let crest_row = CrestTolerance::find(kind, pitch, crest_grade)?;
    let pitch_deviation = deviation(pitch_position, pitch)?;
    let crest_deviation = if crest_position == pitch_position {
        pitch_deviation
    } else {
        deviation(crest_position, pitch)?
    };
    let allowance = |row: Option<&MetricDeviation>| row.map_or(0, |row| count(row.deviation.abs()));
    let (allowance, crest_allowance) = (allowance(pitch_deviation), allowance(crest_deviation));
    let (pitch_tolerance, crest_tolerance) =
        (count(pitch_row.tolerance), count(crest_row.tolerance));
    let (major, basic_pitch, minor) = (
        count(d),
        count(thread.basic_pitch_diameter()),
        count(thread.basic_minor_diameter()),
    );

    let (pitch_diameter, crest_diameter, root_diameter) = match kind {
        ThreadKind::External => {
            let pitch_max = basic_pitch - allowance;
            let crest_max = major - crest_allowance;
            let pitch_min = pitch_max - pitch_tolerance;
            let root = Limits {
                min: Some(length(count(length(pitch_min) - root_depth(pitch)))),
                max: Some(length(minor - allowance)),
            };
            (
                between(pitch_min, pitch_max),
                between(crest_max - crest_tolerance, crest_max),
                root,
            )
        }
        ThreadKind::Internal => {
            let pitch_min = basic_pitch + allowance;
            let crest_min = minor + crest_allowance;
            let root = Limits {
                min: Some(length(major + allowance)),
                max: None,
            };
            (
                between(pitch_min, pitch_min + pitch_tolerance),
                between(crest_min, crest_min + crest_tolerance),
                root,
            )
        }
    };
    // What the limits rest on, by name; a value that nobody has read becomes a caution.
    let values = [
        ("pitch diameter tolerance", Some(pitch_row.provenance)),
        ("crest diameter tolerance", Some(crest_row.provenance)),
        (
            "fundamental deviation",
            pitch_deviation.map(|row| row.provenance),
        ),
        (
            "fundamental deviation",
            crest_deviation.map(|row| row.provenance),
        ),
    ];
    let known = || {
        values
            .iter()
            .filter_map(|(name, from)| Some((*name, (*from)?)))
    };
    let cautions = known().fold(Cautions::default(), |list, (name, provenance)| {
        list.with(Caution::from_memory(name, provenance))
    });
    let weakest = known().find(|(_, provenance)| provenance.basis.is_weak());
    Ok(ThreadLimits {
        thread,
        pitch_diameter,
        crest_diameter,
        root_diameter,
        allowance: length(allowance),
        unfinished_major_min: None,
        length_of_engagement: None,
        provenance: weakest.map_or(pitch_row.provenance, |(_, provenance)| provenance),
        cautions,
    })
}

/// The deviation of a position; none for h and H, which sit on the basic profile.
fn deviation(position: char, pitch: Length) -> Result<Option<&'static MetricDeviation>, Error> {
    if matches!(position, 'h' | 'H') {
        Ok(None)
    } else {
        MetricDeviation::find(position, pitch).map(Some)
    }
}

fn between(min: Count, max: Count) -> Limits<Length> {
    Limits {
        min: length(min),
        max: length(max),
    }
}
