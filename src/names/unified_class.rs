//! Tolerance classes of Unified threads.

/// Tolerance class of a Unified thread: A external, B internal, a higher number is closer.
///
/// ```
/// use shankline::thread::{ToleranceClass, UnifiedClass};
/// assert!(ToleranceClass::Unified(UnifiedClass::Class3A).is_external());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum UnifiedClass {
    /// Loose external thread.
    #[cfg_attr(feature = "serde", serde(rename = "1A"))]
    Class1A,
    /// External thread of ordinary bolts.
    #[cfg_attr(feature = "serde", serde(rename = "2A"))]
    Class2A,
    /// Close external thread.
    #[cfg_attr(feature = "serde", serde(rename = "3A"))]
    Class3A,
    /// Loose internal thread.
    #[cfg_attr(feature = "serde", serde(rename = "1B"))]
    Class1B,
    /// Internal thread of ordinary nuts.
    #[cfg_attr(feature = "serde", serde(rename = "2B"))]
    Class2B,
    /// Close internal thread.
    #[cfg_attr(feature = "serde", serde(rename = "3B"))]
    Class3B,
}
