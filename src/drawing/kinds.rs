//! The kinds of lines, areas and labels.

use alloc::string::String;

use super::text::Style;

/// The kinds of line, as technical drawings use them (ISO 128-2; a third of the names is recalled, the use is that of
/// the trade).
///
/// ```
/// use shankline::drawing::Line;
/// assert_ne!(Line::Outline, Line::Thin);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Line {
    /// Visible edges, crests of threads: continuous wide.
    Outline,
    /// Dimensions, leaders, roots of threads, broken-off ends: continuous narrow.
    Thin,
    /// Hidden edges: dashed narrow.
    Hidden,
    /// Hatching of parts in section: continuous narrow, grey.
    Hatch,
    /// Axes: long-dashed dotted narrow.
    Centre,
    /// What is taken away: long-dashed double-dotted narrow.
    Removed,
    /// Edges whose place nobody has read or stated: dotted wide.
    Unread,
    /// A shear plane: dashed wide, in colour.
    Plane,
    /// The first of two curves in a diagram: continuous, in colour.
    First,
    /// The second of two curves: dashed, in another colour.
    Second,
}

impl Line {
    pub(super) const fn class(self) -> &'static str {
        match self {
            Self::Outline => "o",
            Self::Thin => "t",
            Self::Hidden => "h",
            Self::Hatch => "x",
            Self::Centre => "c",
            Self::Removed => "r",
            Self::Unread => "u",
            Self::Plane => "p",
            Self::First => "f",
            Self::Second => "s",
        }
    }
}

/// How an area is filled. No two that mean different things differ by colour alone.
///
/// ```
/// use shankline::drawing::Fill;
/// assert_ne!(Fill::Shank, Fill::RunOut);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Fill {
    /// The colour of the paper: hides what is behind.
    Paper,
    /// The colour of the ink: thin parts in section, arrows.
    Ink,
    /// Sure to be plain shank: dark.
    Shank,
    /// Shank, run-out or thread: hatched by whoever draws it.
    RunOut,
    /// Sure to be thread: light.
    Thread,
    /// Where something may lie.
    Doubt,
    /// Where a shear plane may lie.
    PlaneDoubt,
    /// What is left of a bar.
    Rail,
    /// A bar that is within its limit.
    Bar,
    /// A bar that is over it.
    Over,
}

impl Fill {
    pub(super) const fn class(self) -> &'static str {
        match self {
            Self::Paper => "W",
            Self::Ink => "I",
            Self::Shank => "A",
            Self::RunOut => "B",
            Self::Thread => "C",
            Self::Doubt => "D",
            Self::PlaneDoubt => "E",
            Self::Rail => "R",
            Self::Bar => "F",
            Self::Over => "G",
        }
    }
}

/// Where a label stands from its point.
///
/// ```
/// use shankline::drawing::Anchor;
/// assert_ne!(Anchor::Start, Anchor::End);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Anchor {
    /// It begins there.
    Start,
    /// Its middle is there.
    Middle,
    /// It ends there.
    End,
}

/// One text of a [`Drawing`](super::Drawing).
///
/// ```
/// # use shankline::drawing::Drawing;
/// fn longest(drawing: &Drawing) -> Option<&str> {
///     drawing.labels().iter().map(|label| &*label.text).max_by_key(|text| text.len())
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct Label {
    /// What it says.
    pub text: String,
    /// How it is set.
    pub style: Style,
    /// Its point: across the page from the left, down the page from the top, at the foot of its letters.
    pub at: [f64; 2],
    /// Where it stands from there.
    pub anchor: Anchor,
    /// Whether it lies on paper of its own, over the lines that pass behind it.
    pub on_lines: bool,
}

impl Label {
    /// The area that it takes at most: left, top, right, bottom.
    ///
    /// ```
    /// # use shankline::drawing::{Drawing, Label};
    /// fn is_on_page(label: &Label, page: &Drawing) -> bool {
    ///     let [left, top, right, bottom] = label.bounds();
    ///     left >= 0.0 && top >= 0.0 && right <= page.width() && bottom <= page.height()
    /// }
    /// ```
    #[must_use]
    pub fn bounds(&self) -> [f64; 4] {
        let (wide, size) = (self.style.width(&self.text), self.style.size());
        let [x, y] = self.at;
        let left = match self.anchor {
            Anchor::Start => x,
            Anchor::Middle => x - 0.5 * wide,
            Anchor::End => x - wide,
        };
        [left, y - 0.8 * size, left + wide, y + 0.22 * size]
    }
}
