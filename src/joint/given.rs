//! Values that a builder takes as such or as text.

use crate::error::Error;
use crate::material::{BoltGrade, NutGrade, PropertyClass, SaeGrade};
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::{Length, Measured};

/// A value, or text that says it: `millimetres(20.0)` or `"20 mm"`, a [`Spread`] or `"20 +/- 0.3 mm"`.
///
/// What a [`JointBuilder`](super::JointBuilder) takes everywhere. Text needs its unit.
///
/// ```
/// use shankline::joint::Given;
/// use shankline::prelude::*;
/// use shankline::units::Length;
/// fn twice(length: impl Given<Length>) -> Result<Length, shankline::Error> {
///     Ok(2.0 * length.given()?)
/// }
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(twice("10 mm")?, twice(millimetres(10.0))?);
/// assert!(twice("10").is_err());
/// # Ok(())
/// # }
/// ```
pub trait Given<T> {
    /// The value.
    ///
    /// # Errors
    ///
    /// Those of reading the text.
    ///
    /// ```
    /// use shankline::{joint::Given, thread::Thread};
    /// let thread: Result<Thread, _> = "M12".given();
    /// assert_eq!(thread.unwrap().to_string(), "M12");
    /// ```
    fn given(self) -> Result<T, Error>;
}

impl<T> Given<T> for T {
    fn given(self) -> Result<T, Error> {
        Ok(self)
    }
}

impl<Q: Measured> Given<Q> for &str {
    fn given(self) -> Result<Q, Error> {
        Ok(crate::units::parse(self)?)
    }
}

impl Given<Spread<Length>> for &str {
    fn given(self) -> Result<Spread<Length>, Error> {
        self.parse()
    }
}

impl Given<Spread<Length>> for Length {
    fn given(self) -> Result<Spread<Length>, Error> {
        Ok(Spread::exact(self))
    }
}

impl Given<Thread> for &str {
    fn given(self) -> Result<Thread, Error> {
        self.parse()
    }
}

impl Given<BoltGrade> for &str {
    fn given(self) -> Result<BoltGrade, Error> {
        self.parse()
    }
}

impl Given<BoltGrade> for PropertyClass {
    fn given(self) -> Result<BoltGrade, Error> {
        Ok(self.into())
    }
}

impl Given<BoltGrade> for SaeGrade {
    fn given(self) -> Result<BoltGrade, Error> {
        Ok(self.into())
    }
}

impl Given<NutGrade> for &str {
    fn given(self) -> Result<NutGrade, Error> {
        self.parse()
    }
}

impl Given<ScrewProduct> for &str {
    fn given(self) -> Result<ScrewProduct, Error> {
        self.parse()
    }
}

impl Given<NutStyle> for &str {
    fn given(self) -> Result<NutStyle, Error> {
        self.parse()
    }
}

impl Given<WasherStyle> for &str {
    fn given(self) -> Result<WasherStyle, Error> {
        self.parse()
    }
}
