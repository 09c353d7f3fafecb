//! What stands beside size, pitch and series: starts, class, hand, length of engagement.

use super::Failure;
use super::cursor::{Cursor, same};
use crate::error::DesignationProblem;
use crate::math::round;
use crate::tables::thread_tolerances::EngagementGroup;
use crate::thread::special::five_decimals;
use crate::thread::{Engagement, Hand, Profile, Thread, ToleranceClass};
use crate::units::{inches, millimetres};

/// How many pitches make the lead; each is a length with the number of its decimals. Four decimals or
/// more are rounded, fewer are exact.
pub(super) fn starts_of(lead: (f64, usize), pitch: (f64, usize)) -> Option<u8> {
    let slack = |places: usize| match places {
        0..=3 => 1e-9,
        4 => 5e-5,
        5 => 5e-6,
        _ => 5e-7,
    };
    let count = round(lead.0 / pitch.0);
    // Where both are rounded the full half of their last decimal, f64 may fall on either side.
    let noise = 1e-9;
    let fits = (1.0..=f64::from(Thread::MOST_STARTS)).contains(&count)
        && (count * pitch.0 - lead.0).abs() <= slack(lead.1) + count * slack(pitch.1) + noise;
    // In 1 to 20.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    fits.then_some(count as u8)
}

/// `(3 STARTS)` or `(THREE STARTS)`, which must say what lead and pitch say; it may be missing.
pub(super) fn read_starts(cursor: &mut Cursor<'_>, starts: u8) -> Result<(), Failure> {
    const WORDS: [&str; 6] = ["ONE", "TWO", "THREE", "FOUR", "FIVE", "SIX"];
    cursor.skip_spaces();
    if !cursor.take(b'(') {
        return Ok(());
    }
    cursor.skip_spaces();
    let at = cursor.at;
    let wrong = |at| (at, DesignationProblem::Starts);
    let count = cursor.whole().or_else(|| {
        let word = cursor.word();
        let place = WORDS.iter().position(|known| same(word, known))?;
        u32::try_from(place + 1).ok()
    });
    if count != Some(u32::from(starts)) {
        return Err(wrong(at));
    }
    cursor.skip_spaces();
    let at = cursor.at;
    let word = cursor.word();
    if same(word, "STARTS)") || same(word, "START)") {
        Ok(())
    } else {
        Err(wrong(at))
    }
}

/// What may follow the series or the pitch.
#[derive(Default)]
pub(super) struct Marks {
    pub(super) class: Option<ToleranceClass>,
    pub(super) hand: Hand,
    pub(super) engagement: Option<Engagement>,
}

/// Class, length of engagement and hand, each at most once. The class comes first, after a hyphen.
pub(super) fn read_marks(cursor: &mut Cursor<'_>, profile: Profile) -> Result<Marks, Failure> {
    let mut marks = Marks::default();
    let (mut first, mut has_engagement) = (true, false);
    loop {
        cursor.skip_spaces();
        if cursor.peek().is_none() {
            return Ok(marks);
        }
        let hyphen = cursor.take(b'-');
        cursor.skip_spaces();
        let at = cursor.at;
        let word = cursor.word();
        if first && hyphen {
            let class = if profile.is_unified() {
                ToleranceClass::unified(word)
            } else {
                ToleranceClass::metric(word)
            };
            if class.is_some_and(|class| profile == Profile::Unr && !class.is_external()) {
                return Err((at, DesignationProblem::NutOfRoundedRoot));
            }
            if class.is_some() {
                marks.class = class;
                first = false;
                continue;
            }
        }
        if same(word, "LH") && marks.hand == Hand::Right {
            marks.hand = Hand::Left;
        } else if profile.is_unified() && same(word, "SE") && !has_engagement {
            cursor.skip_spaces();
            let at = cursor.at;
            let length = cursor.decimal().map(five_decimals);
            let length = length.filter(|length| *length > 0.0);
            let length = length.ok_or((at, DesignationProblem::Engagement))?;
            marks.engagement = Some(Engagement::Length(inches(length)));
            has_engagement = true;
        } else if !profile.is_unified() && hyphen && marks.class.is_some() && !has_engagement {
            cursor.at = at;
            marks.engagement = read_metric_engagement(cursor)?;
            has_engagement = true;
        } else if first && hyphen {
            return Err((at, DesignationProblem::Class));
        } else {
            return Err((at, DesignationProblem::Trailing));
        }
        first = false;
    }
}

/// `S`, `N`, `L` or millimetres.
fn read_metric_engagement(cursor: &mut Cursor<'_>) -> Result<Option<Engagement>, Failure> {
    let at = cursor.at;
    let word = cursor.word();
    if same(word, "N") {
        return Ok(None);
    }
    if same(word, "S") {
        return Ok(Some(Engagement::Group(EngagementGroup::Short)));
    }
    if same(word, "L") {
        return Ok(Some(Engagement::Group(EngagementGroup::Long)));
    }
    let end = cursor.at;
    cursor.at = at;
    let length = cursor
        .decimal()
        .map(five_decimals)
        .filter(|length| *length > 0.0 && cursor.at == end);
    let length = length.ok_or((at, DesignationProblem::Engagement))?;
    Ok(Some(Engagement::Length(millimetres(length))))
}
