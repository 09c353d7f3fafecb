//! The text of a designation, read from left to right.

/// Bytes of a designation and where reading stands.
pub(super) struct Cursor<'a> {
    pub(super) bytes: &'a [u8],
    pub(super) at: usize,
}

impl Cursor<'_> {
    #[inline]
    pub(super) fn peek(&self) -> Option<u8> {
        self.bytes.get(self.at).copied()
    }

    #[inline]
    pub(super) fn skip_spaces(&mut self) {
        while self.peek() == Some(b' ') {
            self.at += 1;
        }
    }

    #[inline]
    pub(super) fn take(&mut self, wanted: u8) -> bool {
        let found = self.peek() == Some(wanted);
        if found {
            self.at += 1;
        }
        found
    }

    /// Takes a letter in upper or lower case.
    #[inline]
    pub(super) fn take_letter(&mut self, upper: u8) -> bool {
        self.take(upper) || self.take(upper.to_ascii_lowercase())
    }

    /// Takes a text in upper or lower case.
    #[inline]
    pub(super) fn take_text(&mut self, upper: &str) -> bool {
        let end = self.at + upper.len();
        let found = self
            .bytes
            .get(self.at..end)
            .is_some_and(|text| same(text, upper));
        if found {
            self.at = end;
        }
        found
    }

    /// What is not read yet.
    #[inline]
    pub(super) fn rest(&self) -> &[u8] {
        self.bytes.get(self.at..).unwrap_or_default()
    }

    /// Digits as a whole number; `None` without digits or beyond a million.
    #[inline]
    pub(super) fn whole(&mut self) -> Option<u32> {
        let start = self.at;
        let mut value = Some(0_u32);
        while let Some(digit @ b'0'..=b'9') = self.peek() {
            let place = value.and_then(|value| value.checked_mul(10));
            value = place.and_then(|value| value.checked_add(u32::from(digit - b'0')));
            self.at += 1;
        }
        if value.is_none() {
            self.at = start;
        }
        value.filter(|_| self.at > start)
    }

    /// A decimal number with at most nine digits in all.
    #[inline]
    pub(super) fn decimal(&mut self) -> Option<f64> {
        self.decimal_and_places().map(|(value, _)| value)
    }

    /// The same with the number of its decimals.
    #[inline]
    pub(super) fn decimal_and_places(&mut self) -> Option<(f64, usize)> {
        const POWERS: [f64; 10] = [1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];
        let mut mantissa: u32 = 0;
        let mut digits = 0;
        let mut decimals = None;
        loop {
            match self.peek() {
                Some(digit @ b'0'..=b'9') if digits < 9 => {
                    mantissa = mantissa * 10 + u32::from(digit - b'0');
                    digits += 1;
                    if let Some(count) = decimals.as_mut() {
                        *count += 1;
                    }
                }
                Some(b'.') if decimals.is_none() => decimals = Some(0),
                _ => break,
            }
            self.at += 1;
        }
        let ends_cleanly = !matches!(self.peek(), Some(b'0'..=b'9' | b'.'));
        let places = decimals.unwrap_or(0_usize);
        let power = POWERS.get(places).filter(|_| digits > 0 && ends_cleanly)?;
        Some((f64::from(mantissa) / power, places))
    }

    /// The rest up to a space, a hyphen or the end.
    #[inline]
    pub(super) fn word(&mut self) -> &[u8] {
        let start = self.at;
        while self.peek().is_some_and(|b| b != b' ' && b != b'-') {
            self.at += 1;
        }
        self.bytes.get(start..self.at).unwrap_or_default()
    }
}

/// Whether a word is a symbol, in upper or lower case.
#[inline]
pub(super) fn same(word: &[u8], upper: &str) -> bool {
    word.eq_ignore_ascii_case(upper.as_bytes())
}
