//! What a procedure of one document, with many checks, comes to.

use super::{Check, Mode};
use crate::error::Error;

/// What a procedure could not decide.
///
/// ```
/// use shankline::strength::check::NotChecked;
/// fn line(missing: &NotChecked) -> String {
///     format!("{}: {}", missing.mode, missing.why)
/// }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub struct NotChecked {
    /// The mode of failure.
    pub mode: Mode,
    /// Why.
    pub why: Error,
}

impl NotChecked {
    pub(crate) const fn new(mode: Mode, why: Error) -> Self {
        Self { mode, why }
    }
}

/// Whether all checks hold; `None` where none fails but something is missing.
pub(crate) fn all_hold(checks: &[Check], missing: &[NotChecked]) -> Option<bool> {
    if checks.iter().any(|check| !check.holds()) {
        Some(false)
    } else {
        missing.is_empty().then_some(true)
    }
}
