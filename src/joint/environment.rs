//! What a joint lives through.

use crate::error::{Allowed, Error, out_of_range, positive};
use crate::tables::galvanic::Exposure;
use crate::units::{ThermodynamicTemperature, celsius};

/// What a joint lives through: heat, vibration, movement, dismantling, corrosion, and what its loss would
/// do.
///
/// In a file every field must be given: what is left out is not taken for harmless.
///
/// ```
/// use shankline::joint::Environment;
/// use shankline::units::celsius;
/// let harrow = Environment { vibration: true, hottest: celsius(60.0), ..Environment::workshop() };
/// assert!(harrow.check().is_ok());
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Environment {
    /// Lowest temperature of the joint.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "crate::schema::Quantity<ThermodynamicTemperature>")
    )]
    pub coldest: ThermodynamicTemperature,
    /// Highest temperature of the joint.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "crate::schema::Quantity<ThermodynamicTemperature>")
    )]
    pub hottest: ThermodynamicTemperature,
    /// Whether the joint is shaken, above all across the axis of the bolt.
    pub vibration: bool,
    /// Whether bolt or nut may be turned by the parts: hinges, pivots, swinging links.
    pub rotates: bool,
    /// Whether the loss of the bolt would endanger somebody.
    pub dangerous_if_lost: bool,
    /// How often the nut is taken off and fitted again.
    pub refits: usize,
    /// How wet it lives, for corrosion of unlike metals in contact. The metals are
    /// those of [`JointPly::metal`](super::JointPly::metal) and of the coatings of bolt and nut.
    pub exposure: Exposure,
}

impl Environment {
    /// A dry workshop at 20 C: nothing shakes, turns or is taken apart, nobody is in danger.
    ///
    /// ```
    /// use shankline::joint::Environment;
    /// assert!(!Environment::workshop().vibration);
    /// ```
    #[must_use]
    pub const fn workshop() -> Self {
        Self {
            coldest: celsius(20.0),
            hottest: celsius(20.0),
            vibration: false,
            rotates: false,
            dangerous_if_lost: false,
            refits: 0,
            exposure: Exposure::Dry,
        }
    }

    /// Whether it stays as warm as where it was assembled: 20 C.
    pub(super) fn is_at_room_temperature(&self) -> bool {
        let room = celsius(20.0);
        self.coldest == room && self.hottest == room
    }

    /// Refuses temperatures that make no sense.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a temperature that is not above absolute zero and finite, or a
    /// hottest one below the coldest.
    ///
    /// ```
    /// use shankline::joint::Environment;
    /// use shankline::units::celsius;
    /// let odd = Environment { hottest: celsius(-5.0), ..Environment::workshop() };
    /// assert_eq!(
    ///     odd.check().unwrap_err().to_string(),
    ///     "highest temperature is -5.0 °C (23.0 °F); it must be at least 20.0 °C (68.0 °F)",
    /// );
    /// ```
    pub fn check(&self) -> Result<(), Error> {
        positive("lowest temperature", self.coldest)?;
        positive("highest temperature", self.hottest)?;
        if self.hottest < self.coldest {
            return Err(out_of_range(
                "highest temperature",
                self.hottest,
                Allowed::AtLeast(self.coldest.into()),
            ));
        }
        Ok(())
    }
}
