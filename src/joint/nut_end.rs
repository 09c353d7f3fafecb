//! What closes the joint at the far end of the bolt.

use super::LengthRules;
use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::spread::{Spread, sane_spread};
use crate::tables::nuts::Nut;
use crate::units::Length;

/// What a bolt ends in as a length search sees it: a nut of some height, or the thread of a tapped part.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let from_table = NutEnd::of(Nut::find(NutStyle::Hex, &"3/4-10 UNC".parse()?)?)?;
/// let measured = NutEnd::with_height(Spread::exact(inches(0.64)))?;
/// assert!(from_table.height().min < measured.height().nominal);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct NutEnd {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    height: Spread<Length>,
    tapped: Option<TappedThread>,
    recalled: Option<Caution>,
}

/// The thread of a tapped hole.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
struct TappedThread {
    /// Depth of full thread from where it begins; none for a hole tapped through.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    depth: Option<Length>,
}

impl NutEnd {
    /// A nut of the tables.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] where the table has only one limit of its height.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso7042, &"M12".parse()?)?)?;
    /// assert_eq!(nut.cautions().iter().count(), 1); // its height was recalled, not read
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(nut: &Nut) -> Result<Self, Error> {
        Ok(Self {
            height: nut.height()?,
            tapped: None,
            recalled: nut.recalled(),
        })
    }

    /// A nut of a stated or measured height.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the height is positive, finite and in order.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// assert!(NutEnd::with_height(Spread::exact(millimetres(0.0))).is_err());
    /// ```
    pub fn with_height(height: Spread<Length>) -> Result<Self, Error> {
        sane_spread("nut height", height)?;
        Ok(Self {
            height,
            tapped: None,
            recalled: None,
        })
    }

    /// The thread of a tapped hole, for a stack that ends in a
    /// [tapped part](super::StackBuilder::tapped_part).
    ///
    /// `engagement` is the least length of thread that must be filled; [`strip`](crate::strength::strip)
    /// tells how much makes the bolt break first. `depth` is how much full thread there is, from where it
    /// begins; none for a hole tapped through. The rules on protrusion do not apply: in their place the
    /// screw must fill the engagement and must not reach the end of the thread. What does not count of its
    /// end ([`LengthRules::end_not_counted_pitches`]) does not engage either.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the engagement is positive and finite and the depth no less.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M12".parse()?;
    /// // A winch base on a cast bed; the thread begins 12 mm below the face, which takes the run-out.
    /// let stack = Stack::builder()
    ///     .ply("base", millimetres(20.0).plus_minus(millimetres(0.3)))
    ///     .tapped_part("bed", millimetres(12.0).plus_minus(millimetres(0.5)))
    ///     .shear_planes([1])
    ///     .build()?;
    /// let hole = NutEnd::tapped(millimetres(15.0), Some(millimetres(25.0)))?;
    /// let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si).with_cut(CutRule::Never);
    /// let selection = LengthSearch::new(&stack, &screws, hole, rules)?.run()?;
    /// let best = selection.best().unwrap();
    /// assert_eq!((best.screw.nominal, best.planes_on_shank), (millimetres(55.0), 0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn tapped(engagement: Length, depth: Option<Length>) -> Result<Self, Error> {
        sane_length("thread engagement", engagement)?;
        if let Some(depth) = depth {
            sane_length("depth of full thread", depth)?;
            if depth < engagement {
                return Err(out_of_range(
                    "depth of full thread",
                    depth,
                    Allowed::AtLeast(engagement.into()),
                ));
            }
        }
        Ok(Self {
            height: Spread::exact(engagement),
            tapped: Some(TappedThread { depth }),
            recalled: None,
        })
    }

    /// Whether the bolt ends in a tapped part.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert!(NutEnd::tapped(millimetres(20.0), None)?.is_tapped());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn is_tapped(&self) -> bool {
        self.tapped.is_some()
    }

    /// What the end of the bolt must reach beyond the nut, or beyond the wanted engagement, at least and at
    /// most.
    pub(super) fn window(&self, rules: &LengthRules, pitch: Length) -> (Length, Option<Length>) {
        match self.tapped {
            None => (
                rules.least_protrusion_pitches() * pitch,
                rules.protrusion_max_pitches.map(|most| most * pitch),
            ),
            Some(TappedThread { depth }) => (
                rules.end_not_counted_pitches * pitch,
                depth.map(|depth| depth - self.height.max),
            ),
        }
    }

    /// Height of the nut; of a tapped part, the wanted engagement.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &"M20".parse()?)?)?;
    /// assert_eq!(nut.height().max, millimetres(18.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn height(&self) -> Spread<Length> {
        self.height
    }

    /// What the user of the nut must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &"M20".parse()?)?)?;
    /// assert_eq!(nut.cautions().iter().count(), 0);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        Cautions::default().with(self.recalled)
    }
}
