//! The few functions of `f64` that `core` lacks.

#[cfg(not(any(feature = "std", feature = "libm")))]
compile_error!("shankline needs one of its features `std` (the default) and `libm`");

#[cfg(feature = "std")]
mod with {
    pub(crate) fn round(x: f64) -> f64 {
        x.round()
    }
    pub(crate) fn ceil(x: f64) -> f64 {
        x.ceil()
    }
    pub(crate) fn sqrt(x: f64) -> f64 {
        x.sqrt()
    }
    pub(crate) fn cbrt(x: f64) -> f64 {
        x.cbrt()
    }
}

#[cfg(all(feature = "libm", not(feature = "std")))]
mod with {
    pub(crate) fn round(x: f64) -> f64 {
        libm::round(x)
    }
    pub(crate) fn ceil(x: f64) -> f64 {
        libm::ceil(x)
    }
    pub(crate) fn sqrt(x: f64) -> f64 {
        libm::sqrt(x)
    }
    pub(crate) fn cbrt(x: f64) -> f64 {
        libm::cbrt(x)
    }
}

#[cfg(any(feature = "std", feature = "libm"))]
pub(crate) use with::{cbrt, ceil, round, sqrt};
