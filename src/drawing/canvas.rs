//! A page to draw on: lines of the kinds of a technical drawing, areas, and labels that are laid out before they are drawn.

use alloc::{string::String, vec::Vec};

use super::kinds::{Anchor, Fill, Label, Line};
use super::number::push_number;
use super::text::Style;

/// A page with lines, areas and labels, which becomes an SVG. Lengths are in units of the page, from its upper left corner.
///
/// The pictures of this module are such pages, and whoever needs another one can draw it: the kinds of line, colours for
/// light and dark surroundings, and the rules of text are the same.
///
/// ```
/// use shankline::drawing::{Anchor, Drawing, Line, Style};
/// let mut page = Drawing::new(200.0, "Two holes", "A line from hole to hole.");
/// page.line(Line::Centre, [20.0, 50.0], [180.0, 50.0]);
/// page.circle(Line::Outline, [60.0, 50.0], 10.0);
/// page.circle(Line::Outline, [140.0, 50.0], 10.0);
/// page.label(Style::Plain, Anchor::Middle, [100.0, 30.0], "80 mm & more");
/// page.end_at(100.0);
/// assert!(page.overlaps().is_empty());
/// assert!(page.svg().contains("80 mm &amp; more"));
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    pub(super) title: String,
    pub(super) description: String,
    pub(super) width: f64,
    pub(super) height: f64,
    pub(super) body: String,
    pub(super) labels: Vec<Label>,
}

impl Drawing {
    /// An empty page of a width, with what a screen reader says of it.
    ///
    /// ```
    /// use shankline::drawing::Drawing;
    /// assert_eq!(Drawing::new(300.0, "title", "description").width(), 300.0);
    /// ```
    #[must_use]
    pub fn new(width: f64, title: &str, description: &str) -> Self {
        Self {
            title: title.into(),
            description: description.into(),
            width,
            height: 0.0,
            body: String::with_capacity(16 * 1024),
            labels: Vec::with_capacity(64),
        }
    }

    /// Sets the height of the page.
    ///
    /// ```
    /// # let mut page = shankline::drawing::Drawing::new(300.0, "title", "description");
    /// page.end_at(80.0);
    /// assert_eq!(page.height(), 80.0);
    /// ```
    pub const fn end_at(&mut self, height: f64) {
        self.height = height;
    }

    /// Says anew what a screen reader says of it.
    pub(super) fn describe(&mut self, description: String) {
        self.description = description;
    }

    /// Width of the page.
    ///
    /// ```
    /// assert_eq!(shankline::drawing::Drawing::new(300.0, "", "").width(), 300.0);
    /// ```
    #[must_use]
    pub const fn width(&self) -> f64 {
        self.width
    }

    /// Height of the page.
    ///
    /// ```
    /// assert_eq!(shankline::drawing::Drawing::new(300.0, "", "").height(), 0.0);
    /// ```
    #[must_use]
    pub const fn height(&self) -> f64 {
        self.height
    }

    /// What it is called.
    ///
    /// ```
    /// assert_eq!(shankline::drawing::Drawing::new(300.0, "davit", "").title(), "davit");
    /// ```
    #[must_use]
    pub fn title(&self) -> &str {
        &self.title
    }

    /// The labels on it.
    ///
    /// ```
    /// assert!(shankline::drawing::Drawing::new(300.0, "", "").labels().is_empty());
    /// ```
    #[must_use]
    pub fn labels(&self) -> &[Label] {
        &self.labels
    }

    /// A straight line.
    ///
    /// ```
    /// # use shankline::drawing::{Drawing, Line};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.line(Line::Thin, [0.0, 0.0], [10.0, 10.0]);
    /// assert!(page.svg().contains(r#"<path class="t" d="M0 0L10 10"/>"#));
    /// ```
    pub fn line(&mut self, line: Line, from: [f64; 2], to: [f64; 2]) {
        self.path(line, None, &[from, to], false);
    }

    /// A line through points; closed, and filled, if that is wanted.
    ///
    /// ```
    /// # use shankline::drawing::{Drawing, Fill, Line};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.path(Line::Thin, Some(Fill::Paper), &[[0.0, 0.0], [10.0, 0.0], [5.0, 5.0]], true);
    /// assert!(page.svg().contains(r#"<path class="t W" d="M0 0L10 0L5 5Z"/>"#));
    /// ```
    pub fn path(&mut self, line: Line, fill: Option<Fill>, points: &[[f64; 2]], closed: bool) {
        self.begin_path(line.class(), fill);
        for (at, point) in points.iter().enumerate() {
            self.body.push(if at == 0 { 'M' } else { 'L' });
            self.point(*point);
        }
        self.body
            .push_str(if closed { "Z\"/>\n" } else { "\"/>\n" });
    }

    /// Several straight lines of one kind.
    pub(super) fn lines(&mut self, line: Line, all: impl Iterator<Item = [[f64; 2]; 2]>) {
        self.begin_path(line.class(), None);
        for [from, to] in all {
            self.body.push('M');
            self.point(from);
            self.body.push('L');
            self.point(to);
        }
        self.body.push_str("\"/>\n");
    }

    fn begin_path(&mut self, class: &str, fill: Option<Fill>) {
        self.body.push_str("<path class=\"");
        self.body.push_str(class);
        if let Some(fill) = fill {
            if !class.is_empty() {
                self.body.push(' ');
            }
            self.body.push_str(fill.class());
        }
        self.body.push_str("\" d=\"");
    }

    fn point(&mut self, [x, y]: [f64; 2]) {
        push_number(&mut self.body, x);
        self.body.push(' ');
        push_number(&mut self.body, y);
    }

    /// An area without an edge, through points.
    ///
    /// ```
    /// # use shankline::drawing::{Drawing, Fill};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.area(Fill::Ink, &[[0.0, 0.0], [10.0, 0.0], [5.0, 5.0]]);
    /// assert!(page.svg().contains(r#"<path class="I" d="M0 0L10 0L5 5Z"/>"#));
    /// ```
    pub fn area(&mut self, fill: Fill, points: &[[f64; 2]]) {
        self.begin_path("", Some(fill));
        for (at, point) in points.iter().enumerate() {
            self.body.push(if at == 0 { 'M' } else { 'L' });
            self.point(*point);
        }
        self.body.push_str("Z\"/>\n");
    }

    /// A rectangle without an edge: left, top, right, bottom.
    ///
    /// ```
    /// # use shankline::drawing::{Drawing, Fill};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.rectangle(Fill::Bar, [0.0, 0.0, 10.0, 5.0]);
    /// assert!(page.svg().contains(r#"d="M0 0L10 0L10 5L0 5Z""#));
    /// ```
    pub fn rectangle(&mut self, fill: Fill, [left, top, right, bottom]: [f64; 4]) {
        self.area(
            fill,
            &[[left, top], [right, top], [right, bottom], [left, bottom]],
        );
    }

    /// A circle, on paper.
    ///
    /// ```
    /// # use shankline::drawing::{Drawing, Line};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.circle(Line::Thin, [10.0, 10.0], 5.0);
    /// assert!(page.svg().contains(r#"<circle class="t W" cx="10" cy="10" r="5"/>"#));
    /// ```
    pub fn circle(&mut self, line: Line, centre: [f64; 2], radius: f64) {
        self.round(line.class(), Fill::Paper, centre, radius);
    }

    /// A dot.
    ///
    /// ```
    /// # use shankline::drawing::Drawing;
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.dot([10.0, 10.0], 2.0);
    /// assert!(page.svg().contains(r#"<circle class="I" cx="10" cy="10" r="2"/>"#));
    /// ```
    pub fn dot(&mut self, centre: [f64; 2], radius: f64) {
        self.round("", Fill::Ink, centre, radius);
    }

    fn round(&mut self, class: &str, fill: Fill, [x, y]: [f64; 2], radius: f64) {
        self.body.push_str("<circle class=\"");
        self.body.push_str(class);
        if !class.is_empty() {
            self.body.push(' ');
        }
        self.body.push_str(fill.class());
        for (name, value) in [("\" cx=\"", x), ("\" cy=\"", y), ("\" r=\"", radius)] {
            self.body.push_str(name);
            push_number(&mut self.body, value);
        }
        self.body.push_str("\"/>\n");
    }

    /// Hatching at 45 degrees in a rectangle (left, top, right, bottom), rising to the right or falling, with lines so far
    /// apart. The lines end at the edges by arithmetic, not by a clip: every reader of SVG shows them.
    ///
    /// ```
    /// # use shankline::drawing::Drawing;
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.hatch([0.0, 0.0, 20.0, 10.0], true, 7.0);
    /// assert!(page.svg().contains("<path class=\"x\""));
    /// ```
    pub fn hatch(&mut self, area: [f64; 4], rising: bool, step: f64) {
        self.hatch_all(Line::Hatch, &[area], rising, step);
    }

    /// The same in several rectangles, which are parts of one, with lines of any kind.
    pub(super) fn hatch_all(&mut self, line: Line, areas: &[[f64; 4]], rising: bool, step: f64) {
        self.begin_path(line.class(), None);
        for area in areas {
            self.hatch_lines(*area, rising, step);
        }
        self.body.push_str("\"/>\n");
    }

    fn hatch_lines(&mut self, [left, top, right, bottom]: [f64; 4], rising: bool, step: f64) {
        let (wide, high) = (right - left, bottom - top);
        // Nothing to see, or nothing that ends.
        if !(wide > 0.5 && high > 0.5 && step >= 1.0 && wide < 1e5 && high < 1e5) {
            return;
        }
        let step = step * core::f64::consts::SQRT_2;
        // Lines of all areas lie in one raster, so that halves of a part match.
        let raster = if rising { left + top } else { left - bottom };
        let cells = raster / step;
        let mut along = (crate::math::ceil(cells) - cells) * step;
        while along < wide + high {
            let (from, to) = if along <= high {
                (
                    [0.0, along],
                    if along <= wide {
                        [along, 0.0]
                    } else {
                        [wide, along - wide]
                    },
                )
            } else {
                (
                    [along - high, high],
                    if along <= wide {
                        [along, 0.0]
                    } else {
                        [wide, along - wide]
                    },
                )
            };
            let place = |[x, y]: [f64; 2]| [left + x, if rising { top + y } else { bottom - y }];
            self.body.push('M');
            self.point(place(from));
            self.body.push('L');
            self.point(place(to));
            along += step;
        }
    }

    /// A filled head of an arrow with its tip at a point, pointing right or left.
    ///
    /// ```
    /// # use shankline::drawing::Drawing;
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.arrow([10.0, 10.0], true);
    /// assert!(page.svg().contains(r#"<path class="I" d="M10 10"#));
    /// ```
    pub fn arrow(&mut self, [x, y]: [f64; 2], to_the_right: bool) {
        let back = if to_the_right { x - 8.0 } else { x + 8.0 };
        self.area(Fill::Ink, &[[x, y], [back, y - 2.2], [back, y + 2.2]]);
    }

    /// A dimension between two places across the page, with its value above the line; beside it where it does not fit
    /// between the arrows.
    ///
    /// ```
    /// # use shankline::drawing::Drawing;
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.dimension(20.0, 200.0, 30.0, "80.00");
    /// assert_eq!(page.labels()[0].at, [110.0, 27.0]);
    /// ```
    pub fn dimension(&mut self, from: f64, to: f64, at: f64, value: &str) {
        self.dimension_beside(from, to, at, value, false);
    }

    /// The same, with the side on which the value stands if it does not fit, as long as there is room.
    pub(super) fn dimension_beside(
        &mut self,
        from: f64,
        to: f64,
        at: f64,
        value: &str,
        left_first: bool,
    ) {
        let wide = Style::Plain.width(value);
        let (left, right) = (from.min(to), from.max(to));
        let inside = right - left >= 22.0;
        self.line(
            Line::Thin,
            [if inside { left } else { left - 14.0 }, at],
            [if inside { right } else { right + 14.0 }, at],
        );
        self.arrow([left, at], !inside);
        self.arrow([right, at], inside);
        if right - left >= wide + 12.0 {
            let middle = 0.5 * (left + right);
            self.label_on_lines(Style::Plain, Anchor::Middle, [middle, at - 3.0], value);
            return;
        }
        let gap = if inside { 6.0 } else { 18.0 };
        let has_room = |is_left: bool| {
            if is_left {
                left - gap - wide > 4.0
            } else {
                right + gap + wide < self.width - 4.0
            }
        };
        if !(left_first && has_room(true)) && (has_room(false) || !has_room(true)) {
            self.label_on_lines(Style::Plain, Anchor::Start, [right + gap, at + 4.0], value);
        } else {
            self.label_on_lines(Style::Plain, Anchor::End, [left - gap, at + 4.0], value);
        }
    }

    /// A label. Labels are drawn last, over all lines.
    ///
    /// ```
    /// # use shankline::drawing::{Anchor, Drawing, Style};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.label(Style::Plain, Anchor::Start, [10.0, 20.0], "<nut>");
    /// assert!(page.svg().contains("&lt;nut&gt;</text>"));
    /// ```
    pub fn label(&mut self, style: Style, anchor: Anchor, at: [f64; 2], text: &str) {
        self.write(style, anchor, at, text, false);
    }

    /// A label where lines pass: it lies on paper of its own. (A seam around the letters would be finer, but not every
    /// reader of SVG paints it below them.)
    ///
    /// ```
    /// # use shankline::drawing::{Anchor, Drawing, Style};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.label_on_lines(Style::Plain, Anchor::Start, [10.0, 20.0], "80.00");
    /// assert!(page.labels()[0].on_lines);
    /// ```
    pub fn label_on_lines(&mut self, style: Style, anchor: Anchor, at: [f64; 2], text: &str) {
        self.write(style, anchor, at, text, true);
    }

    fn write(&mut self, style: Style, anchor: Anchor, at: [f64; 2], text: &str, on_lines: bool) {
        if !text.is_empty() {
            self.labels.push(Label {
                text: text.into(),
                style,
                at,
                anchor,
                on_lines,
            });
        }
    }

    /// A text in lines below each other, of a width; returns where the next line would stand.
    pub(super) fn paragraph(
        &mut self,
        style: Style,
        [x, mut y]: [f64; 2],
        text: &str,
        width: f64,
        most: usize,
    ) -> f64 {
        for line in style.wrap(text, width, most) {
            self.label(style, Anchor::Start, [x, y], &line);
            y += style.size() + 4.0;
        }
        y
    }

    /// How much is drawn so far, for what is to lie under it.
    pub(super) fn mark(&self) -> usize {
        self.body.len()
    }

    /// Draws under everything that was drawn since a mark.
    pub(super) fn under(&mut self, mark: usize, draw: impl FnOnce(&mut Self)) {
        if !self.body.is_char_boundary(mark) || mark > self.body.len() {
            return;
        }
        let above = self.body.split_off(mark);
        draw(self);
        self.body.push_str(&above);
    }

    /// Which labels lie on each other, and which do not lie on the page (those with themselves).
    ///
    /// ```
    /// # use shankline::drawing::{Anchor, Drawing, Style};
    /// let mut page = Drawing::new(300.0, "title", "description");
    /// page.end_at(100.0);
    /// page.label(Style::Plain, Anchor::Start, [10.0, 20.0], "nut");
    /// page.label(Style::Plain, Anchor::Start, [15.0, 25.0], "washer");
    /// assert_eq!(page.overlaps(), [[0, 1]]);
    /// ```
    #[must_use]
    pub fn overlaps(&self) -> Vec<[usize; 2]> {
        let bounds: Vec<[f64; 4]> = self.labels.iter().map(Label::bounds).collect();
        let mut found = Vec::new();
        for (at, a) in bounds.iter().enumerate() {
            if a[0] < 0.0 || a[1] < 0.0 || a[2] > self.width || a[3] > self.height {
                found.push([at, at]);
            }
            for (other, b) in bounds.iter().enumerate().skip(at + 1) {
                if a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3] {
                    found.push([at, other]);
                }
            }
        }
        found
    }
}

/// Moves places apart, in their order, so that each has its half-width on both sides and a gap to the next, within
/// bounds if there is room.
///
/// ```
/// use shankline::drawing::spread_out;
/// assert_eq!(spread_out(&[10.0, 12.0], &[5.0, 5.0], 2.0, [0.0, 100.0]), [10.0, 22.0]);
/// assert_eq!(spread_out(&[97.0, 99.0], &[5.0, 5.0], 2.0, [0.0, 100.0]), [83.0, 95.0]);
/// ```
#[must_use]
pub fn spread_out(
    places: &[f64],
    halves: &[f64],
    gap: f64,
    [least, greatest]: [f64; 2],
) -> Vec<f64> {
    let mut apart: Vec<f64> = places.to_vec();
    let mut taken = least;
    for (place, half) in apart.iter_mut().zip(halves) {
        *place = place.max(taken + half);
        taken = *place + half + gap;
    }
    let mut left = greatest;
    for (place, half) in apart.iter_mut().zip(halves).rev() {
        *place = place.min(left - half);
        left = *place - half - gap;
    }
    apart
}
