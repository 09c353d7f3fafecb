//! Load cases, their combinations, and loads that alternate.

use alloc::{string::String, vec::Vec};

use crate::units::{Force, Length, Torque, from_base};

/// A force and a moment at a point, by a name.
///
/// x points right and y up in the face between the parts, z out of it, away from the part that holds; moments turn by the
/// right hand. The forces are those on the part that is loaded: positive z parts the plies. z of the point is counted
/// from the face.
///
/// In a file every field must be given: a load that is left out is not taken for none.
///
/// ```
/// use shankline::connection::LoadCase;
/// use shankline::units::{millimetres, newtons};
/// let force = [0.0, -40e3, 0.0].map(newtons);
/// let hoist = LoadCase::new("full hoist", force, [250.0, 0.0, 0.0].map(millimetres));
/// assert_eq!(hoist.force_y, newtons(-40e3));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct LoadCase {
    /// What it is called; unlike all others of its connection.
    pub name: String,
    /// Force to the right.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
    pub force_x: Force,
    /// Force up.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
    pub force_y: Force,
    /// Force that parts the plies; negative where it presses them together.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Force>"))]
    pub force_z: Force,
    /// Moment about x besides; positive pulls on the upper bolts.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Torque>"))]
    pub moment_x: Torque,
    /// Moment about y besides; positive pulls on the left bolts.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Torque>"))]
    pub moment_y: Torque,
    /// Moment about z besides, in the plane, positive anticlockwise.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Torque>"))]
    pub moment_z: Torque,
    /// Where the force acts, to the right.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub x: Length,
    /// Where the force acts, up.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub y: Length,
    /// Where the force acts, out of the face.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Quantity<Length>"))]
    pub z: Length,
}

impl LoadCase {
    /// A force (to the right, up, and parting the plies) and the point where it acts.
    ///
    /// ```
    /// # use shankline::{connection::LoadCase, units::{millimetres, newtons}};
    /// let pull = LoadCase::new("pull", [0.0, 0.0, 9e3].map(newtons), [0.0, 0.0, 40.0].map(millimetres));
    /// assert_eq!((pull.force_z, pull.z), (newtons(9e3), millimetres(40.0)));
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, force: [Force; 3], at: [Length; 3]) -> Self {
        let ([force_x, force_y, force_z], [x, y, z]) = (force, at);
        let none = from_base(0.0);
        Self {
            name: name.into(),
            force_x,
            force_y,
            force_z,
            moment_x: none,
            moment_y: none,
            moment_z: none,
            x,
            y,
            z,
        }
    }

    /// A moment alone: about x, y and z.
    ///
    /// ```
    /// # use shankline::{connection::LoadCase, units::newton_metres};
    /// let twist = LoadCase::of_moment("twist", [0.0, 0.0, 800.0].map(newton_metres));
    /// assert_eq!(twist.moment_z, newton_metres(800.0));
    /// ```
    #[must_use]
    pub fn of_moment(name: impl Into<String>, moment: [Torque; 3]) -> Self {
        Self::new(name, [Force::default(); 3], [Length::default(); 3]).with_moment(moment)
    }

    /// The case with a moment besides its force: about x, y and z.
    ///
    /// ```
    /// # use shankline::{connection::LoadCase, units::{millimetres, newton_metres, newtons}};
    /// let hook = LoadCase::new("hook", [0.0, -9e3, 0.0].map(newtons), [0.0; 3].map(millimetres))
    ///     .with_moment([0.0, 0.0, 70.0].map(newton_metres));
    /// assert_eq!(hook.moment_z, newton_metres(70.0));
    /// ```
    #[must_use]
    pub const fn with_moment(mut self, moment: [Torque; 3]) -> Self {
        [self.moment_x, self.moment_y, self.moment_z] = moment;
        self
    }
}

/// Load cases added up, each with the caller's factor.
///
/// ```
/// use shankline::connection::Combination;
/// let factored = Combination::new("1.35 G + 1.5 Q").plus(1.35, "own weight").plus(1.5, "crowd");
/// assert_eq!(factored.parts.len(), 2);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Combination {
    /// What it is called; unlike all cases and other combinations.
    pub name: String,
    /// The cases and their factors.
    pub parts: Vec<Part>,
}

/// A load case in a [`Combination`].
///
/// ```
/// use shankline::connection::Part;
/// assert_eq!(Part { factor: 1.5, case: "crowd".into() }.factor, 1.5);
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Part {
    /// What the case is multiplied by; negative for one that acts the other way.
    pub factor: f64,
    /// The name of the case.
    pub case: String,
}

impl Combination {
    /// A combination of nothing yet.
    ///
    /// ```
    /// assert!(shankline::connection::Combination::new("none").parts.is_empty());
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            parts: Vec::new(),
        }
    }

    /// The combination with one case more.
    ///
    /// ```
    /// # use shankline::connection::Combination;
    /// let uplift = Combination::new("uplift").plus(0.9, "own weight").plus(1.5, "wind");
    /// assert_eq!(uplift.parts[1].case, "wind");
    /// ```
    #[must_use]
    pub fn plus(mut self, factor: f64, case: impl Into<String>) -> Self {
        let case = case.into();
        self.parts.push(Part { factor, case });
        self
    }
}

/// A load that goes up and down between two cases or combinations for the life of the connection.
///
/// The range of each bolt across its axis is the difference of both forces as arrows, so that a load that turns about
/// counts in full.
///
/// ```
/// use shankline::connection::Alternation;
/// let swing = Alternation::new("arm left", "arm right").cycles(2e5);
/// assert_eq!(swing.cycles, Some(2e5));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Alternation {
    /// One of the two, by its name.
    pub from: String,
    /// The other.
    pub to: String,
    /// How often in the life of the connection; none if nobody counts, and then for ever.
    #[cfg_attr(feature = "serde", serde(default))]
    pub cycles: Option<f64>,
}

impl Alternation {
    /// Between two, for ever.
    ///
    /// ```
    /// assert_eq!(shankline::connection::Alternation::new("empty", "full").cycles, None);
    /// ```
    #[must_use]
    pub fn new(from: impl Into<String>, to: impl Into<String>) -> Self {
        Self {
            from: from.into(),
            to: to.into(),
            cycles: None,
        }
    }

    /// So many times.
    ///
    /// ```
    /// # use shankline::connection::Alternation;
    /// assert_eq!(Alternation::new("empty", "full").cycles(1e6).cycles, Some(1e6));
    /// ```
    #[must_use]
    pub const fn cycles(mut self, cycles: f64) -> Self {
        self.cycles = Some(cycles);
        self
    }
}
