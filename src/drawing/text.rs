//! Text on a page: how wide it is, what fits, what XML lets through.

use alloc::{string::String, vec::Vec};

/// Advance widths of the printable ASCII characters of a wide open typeface (`DejaVu` Sans), in hundredths of the size
/// and rounded up. Whatever typeface a reader has is hardly wider.
const WIDTHS: [u8; 95] = [
    32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 54, 100, 69, 69, 70, 77, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75,
    79, 61, 79, 70, 64, 62, 74, 69, 99, 69, 62, 69, 40, 34, 40, 84, 50, 50, 62, 64, 55, 64, 62, 36,
    64, 64, 28, 28, 58, 28, 98, 64, 62, 64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84,
];

/// The same of its bold letters.
const BOLD: [u8; 95] = [
    35, 46, 53, 84, 70, 101, 88, 31, 46, 46, 53, 84, 38, 42, 38, 37, 70, 70, 70, 70, 70, 70, 70,
    70, 70, 70, 40, 40, 84, 84, 84, 58, 100, 78, 77, 74, 83, 69, 69, 83, 84, 38, 38, 78, 64, 100,
    84, 85, 74, 85, 77, 73, 69, 82, 78, 111, 78, 73, 73, 46, 37, 46, 84, 50, 50, 68, 72, 60, 72,
    68, 44, 72, 72, 35, 35, 67, 35, 105, 72, 69, 72, 72, 50, 60, 48, 72, 66, 93, 65, 66, 59, 72,
    37, 72, 84,
];

/// How a text is set.
///
/// ```
/// use shankline::drawing::Style;
/// assert!(Style::Heading.size() > Style::Note.size());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Style {
    /// A title: large and bold.
    Heading,
    /// What must not be overlooked, and the heads of tables: bold.
    Strong,
    /// Everything else.
    Plain,
    /// Notes and the values along an axis.
    Note,
}

impl Style {
    /// Height of its letters, in units of the page.
    ///
    /// ```
    /// assert_eq!(shankline::drawing::Style::Plain.size(), 12.0);
    /// ```
    #[must_use]
    pub const fn size(self) -> f64 {
        match self {
            Self::Heading => 16.0,
            Self::Strong | Self::Plain => 12.0,
            Self::Note => 11.0,
        }
    }

    const fn is_bold(self) -> bool {
        matches!(self, Self::Heading | Self::Strong)
    }

    pub(super) const fn class(self) -> &'static str {
        match self {
            Self::Heading => "H",
            Self::Strong => "S",
            Self::Plain => "T",
            Self::Note => "N",
        }
    }

    /// How wide a text is at most, in units of the page: an estimate from above, since nobody knows which typeface the
    /// reader has.
    ///
    /// ```
    /// use shankline::drawing::Style;
    /// assert!(Style::Plain.width("shank") > 30.0);
    /// assert_eq!(Style::Plain.width(""), 0.0);
    /// ```
    #[must_use]
    pub fn width(self, text: &str) -> f64 {
        let table = self.table();
        // Nearly every text is printable ASCII; of any other each character is looked at.
        let ascii = text.bytes().try_fold(0, |sum, byte| {
            let wide = table.get(usize::from(byte.checked_sub(0x20)?))?;
            Some(sum + u32::from(*wide))
        });
        let hundredths =
            ascii.unwrap_or_else(|| text.chars().map(|own| self.hundredths(own)).sum::<u32>());
        f64::from(hundredths) * 0.01 * self.size()
    }

    const fn table(self) -> &'static [u8; 95] {
        if self.is_bold() { &BOLD } else { &WIDTHS }
    }

    /// The width of a character, in hundredths of the size.
    fn hundredths(self, character: char) -> u32 {
        let code = u32::from(shown(character));
        match code {
            0x20..=0x7E => self
                .table()
                .get(code as usize - 0x20)
                .map_or(100, |&wide| u32::from(wide)),
            // Latin, then Greek and Cyrillic, then what may be as wide as anything.
            0xA0..=0x24F => 110,
            0x250..=0x52F | 0x2000..=0x206F => 125,
            _ => 160,
        }
    }

    /// The text, or as much of it as is not wider than that, with an ellipsis.
    ///
    /// ```
    /// use shankline::drawing::Style;
    /// assert_eq!(Style::Plain.fit("ply", 100.0), "ply");
    /// assert!(Style::Plain.fit("a ply with a very long name", 100.0).ends_with('…'));
    /// ```
    #[must_use]
    pub fn fit(self, text: &str, width: f64) -> String {
        if self.width(text) <= width {
            return text.into();
        }
        let scale = 0.01 * self.size();
        let mut left = width - scale * f64::from(self.hundredths('…'));
        let mut fitted = String::new();
        for character in text.chars() {
            left -= scale * f64::from(self.hundredths(character));
            if left < 0.0 {
                break;
            }
            fitted.push(character);
        }
        fitted.truncate(fitted.trim_end().len());
        fitted.push('…');
        fitted
    }

    /// The text in lines of that width, broken between words; of a text that needs more lines than are wanted the last
    /// one ends with an ellipsis.
    ///
    /// ```
    /// use shankline::drawing::Style;
    /// assert_eq!(Style::Plain.wrap("shank thread", 60.0, 9), ["shank", "thread"]);
    /// assert_eq!(Style::Plain.wrap("shank thread", 60.0, 1), ["shank…"]);
    /// ```
    #[must_use]
    pub fn wrap(self, text: &str, width: f64, most: usize) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let mut line = String::new();
        let mut taken = 0.0;
        let blank = self.width(" ");
        for word in text.split_whitespace() {
            let wide = self.width(word);
            if !line.is_empty() && taken + blank + wide > width {
                lines.push(core::mem::take(&mut line));
                taken = 0.0;
            }
            if !line.is_empty() {
                line.push(' ');
                taken += blank;
            }
            line.push_str(word);
            taken += wide;
        }
        if !line.is_empty() {
            lines.push(line);
        }
        if lines.len() > most {
            lines.truncate(most);
            if let Some(last) = lines.last_mut() {
                last.push('…');
            }
        }
        lines.iter().map(|line| self.fit(line, width)).collect()
    }
}

/// The character that is shown for one: XML knows no control characters, not even as references, a text must not change the
/// direction of what stands beside it, and one character of Arabic script is as wide as a line.
fn shown(character: char) -> char {
    match character {
        '\t' | '\n' | '\r' => ' ',
        '\u{202A}'..='\u{202E}'
        | '\u{2066}'..='\u{2069}'
        | '\u{200E}'
        | '\u{200F}'
        | '\u{FDD0}'..='\u{FDEF}'
        | '\u{FDFD}'
        | '\u{FFFE}'
        | '\u{FFFF}' => '\u{FFFD}',
        other if other.is_control() => '\u{FFFD}',
        other => other,
    }
}

/// A printable character of ASCII that XML does not reserve.
const fn is_plain(byte: u8) -> bool {
    matches!(byte, 0x20..=0x7E) && !matches!(byte, b'&' | b'<' | b'>' | b'"' | b'\'')
}

/// Adds a text to a document, with what XML reserves escaped.
pub(super) fn push_escaped(document: &mut String, text: &str) {
    // Nearly every text, in one piece.
    if text.bytes().all(is_plain) {
        document.push_str(text);
        return;
    }
    for character in text.chars() {
        match shown(character) {
            '&' => document.push_str("&amp;"),
            '<' => document.push_str("&lt;"),
            '>' => document.push_str("&gt;"),
            '"' => document.push_str("&quot;"),
            '\'' => document.push_str("&#39;"),
            other => document.push(other),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hostile_text_stays_text() {
        let mut text = String::new();
        push_escaped(&mut text, "<a b='1'>&\"\u{0}\u{1b}\u{202e}\u{FFFF}\n</a>");
        assert_eq!(
            text,
            "&lt;a b=&#39;1&#39;&gt;&amp;&quot;\u{FFFD}\u{FFFD}\u{FFFD}\u{FFFD} &lt;/a&gt;"
        );
    }

    #[test]
    fn fitted_text_fits() {
        for text in ["", "W", "WWWWWWWWWW", "a\u{4E00}\u{4E01}", "ply of steel"] {
            for width in [10.0, 30.0, 60.0] {
                let fitted = Style::Strong.fit(text, width);
                let least = Style::Strong.width("…");
                assert!(Style::Strong.width(&fitted) <= width.max(least), "{text}");
            }
        }
    }
}
