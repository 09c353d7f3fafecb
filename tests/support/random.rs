//! Random numbers for tests.
#![allow(dead_code)] // each test file uses its own part

/// Random numbers, the same on every machine (splitmix64).
pub struct Random(pub u64);

impl Random {
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    pub fn below(&mut self, count: usize) -> usize {
        usize::try_from(self.bits() % count as u64).unwrap()
    }

    pub fn byte(&mut self) -> u8 {
        self.bits().to_le_bytes()[0]
    }

    pub fn one<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[self.below(of.len())]
    }

    /// True once in so many times.
    pub fn once_in(&mut self, count: usize) -> bool {
        self.below(count) == 0
    }

    /// A number of hundredths between two, so that exact ties come up.
    pub fn hundredths(&mut self, from: usize, thru: usize) -> f64 {
        f64::from(u32::try_from(from + self.below(thru - from + 1)).unwrap()) / 100.0
    }
}
