//! What a bolt goes through: plies, washers, shear planes.

use alloc::{string::String, vec::Vec};

use crate::error::{Allowed, Error, not_negative, out_of_range};
use crate::parts::{ScrewLength, Zone};
use crate::spread::{Spread, sane_spread};
use crate::units::{Length, millimetres};

/// One ply or washer of a stack.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::joint::Layer;
/// let web = Layer::new("web", millimetres(12.0).plus_minus(millimetres(0.5)));
/// assert_eq!(web.thickness.nominal, millimetres(12.0));
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::data::RawLayer")
)]
#[non_exhaustive]
pub struct Layer {
    /// What a drawing would call it.
    pub name: String,
    /// Thickness with its tolerance.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub thickness: Spread<Length>,
}

impl Layer {
    /// A ply or washer. Nothing is checked before it becomes part of a [`Stack`].
    ///
    /// ```
    /// use shankline::{joint::Layer, prelude::*};
    /// assert_eq!(Layer::new("web", Spread::exact(millimetres(12.0))).name, "web");
    /// ```
    #[must_use]
    pub fn new(name: impl Into<String>, thickness: Spread<Length>) -> Self {
        Self {
            name: name.into(),
            thickness,
        }
    }
}

/// A stack of plies with the washers that are always there, in order from the head.
///
/// Its invariants hold by construction: at least one ply, every thickness positive and in order,
/// every shear plane between two plies.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = millimetres(10.0).plus_minus(millimetres(0.3));
/// let stack = Stack::builder().ply("left", plate).ply("right", plate).shear_planes([1]).build()?;
/// assert_eq!((stack.plies().len(), stack.shear_planes()), (2, &[1][..]));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::data::RawStack")
)]
pub struct Stack {
    washers_under_head: Vec<Layer>,
    plies: Vec<Layer>,
    shear_planes: Vec<usize>,
    washers_under_nut: Option<NutWashers>,
    /// Head washers, plies and the nut-side washers that are always there.
    #[cfg_attr(feature = "serde", serde(skip))]
    grip: Spread<Length>,
    /// Distance of each shear plane from the bearing face of the head.
    #[cfg_attr(feature = "serde", serde(skip))]
    positions: Vec<Spread<Length>>,
}

/// Washers of one kind under the nut.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
struct NutWashers {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    thickness: Spread<Length>,
    count: usize,
}

/// A shear plane seen against one screw.
///
/// ```
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let plate = Spread::exact(millimetres(10.0));
/// let stack = Stack::builder().ply("left", plate).ply("right", plate).shear_planes([1]).build()?;
/// let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M10".parse()?)?;
/// let plane = stack.planes(&screws.length(millimetres(35.0))?).next().unwrap();
/// assert_eq!((plane.after_ply, plane.worst), (1, Zone::Thread)); // threaded to the head
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Plane {
    /// The plane lies after this ply, counted from 1 at the head.
    pub after_ply: usize,
    /// Distance from the bearing face of the head.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::serialize_spread")
    )]
    pub position: Spread<Length>,
    /// What it cuts if every ply has its nominal thickness.
    pub nominal: Zone,
    /// What it cuts in the worst case: thickest plies, shortest body.
    pub worst: Zone,
}

impl Stack {
    /// A builder that makes this stack again, to change something of it.
    pub(super) fn to_builder(&self) -> StackBuilder {
        // Without `..`, so that no feature of a stack is lost on the way.
        let Self {
            washers_under_head,
            plies,
            shear_planes,
            washers_under_nut,
            grip: _,
            positions: _,
        } = self.clone();
        StackBuilder {
            washers_under_head,
            plies,
            shear_planes,
            washers_under_nut,
        }
    }

    /// Starts a stack.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("foot", millimetres(8.0).plus_minus(millimetres(0.2)))
    ///     .ply("base", millimetres(8.0).plus_minus(millimetres(0.2)))
    ///     .shear_planes([1])
    ///     .build()?;
    /// assert_eq!(stack.grip().nominal, millimetres(8.0) + millimetres(8.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn builder() -> StackBuilder {
        StackBuilder::default()
    }

    /// Washers under the head, from the head. They push every shear plane toward the thread.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert!(stack.washers_under_head().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn washers_under_head(&self) -> &[Layer] {
        &self.washers_under_head
    }

    /// The plies, from the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(10.0))).build()?;
    /// assert_eq!(stack.plies()[0].name, "plate");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn plies(&self) -> &[Layer] {
        &self.plies
    }

    /// The shear planes: after which plies, counted from 1 at the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Spread::exact(millimetres(10.0));
    /// let stack = Stack::builder().ply("a", plate).ply("b", plate).shear_planes([1]).build()?;
    /// assert_eq!(stack.shear_planes(), [1]);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn shear_planes(&self) -> &[usize] {
        &self.shear_planes
    }

    /// Thickness of the washers under the nut, if there are any, and how many are always there.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .washers_under_nut(millimetres(3.0).plus_minus(millimetres(0.3)), 1)
    ///     .build()?;
    /// assert_eq!(stack.washers_under_nut().unwrap().1, 1);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn washers_under_nut(&self) -> Option<(Spread<Length>, usize)> {
        self.washers_under_nut
            .map(|washers| (washers.thickness, washers.count))
    }

    /// Everything between the bearing faces of head and nut.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .ply("plate", millimetres(10.0).plus_minus(millimetres(0.5)))
    ///     .washers_under_nut(millimetres(3.0).plus_minus(millimetres(0.3)), 1)
    ///     .build()?;
    /// assert!((stack.grip().max - millimetres(13.8)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn grip(&self) -> Spread<Length> {
        self.grip
    }

    /// The same with `added` more washers under the nut.
    pub(super) fn grip_with(&self, added: usize) -> Spread<Length> {
        match self.washers_under_nut {
            Some(washers) if added > 0 => {
                // Washer counts are small: exact.
                #[allow(clippy::cast_precision_loss)]
                let count = added as f64;
                self.grip + washers.thickness.map(|thickness| count * thickness)
            }
            _ => self.grip,
        }
    }

    /// Distances of the shear planes from the bearing face of the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = millimetres(10.0).plus_minus(millimetres(0.5));
    /// let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// assert_eq!(stack.plane_positions()[0].nominal, millimetres(10.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn plane_positions(&self) -> &[Spread<Length>] {
        &self.positions
    }

    /// Every shear plane against one screw. Washers under the nut do not move them.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let ply = inches(0.500).plus_minus(inches(0.015));
    /// let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
    /// let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &"1/2-13 UNC".parse()?)?;
    /// let plane = stack.planes(&screws.length(inches(2.0))?).next().unwrap();
    /// assert_eq!((plane.nominal, plane.worst), (Zone::RunOut, Zone::RunOut)); // LB 0.365 in
    /// # Ok(())
    /// # }
    /// ```
    pub fn planes<'a>(&'a self, screw: &ScrewLength) -> impl Iterator<Item = Plane> + use<'a> {
        let screw = *screw;
        self.shear_planes
            .iter()
            .zip(&self.positions)
            .map(move |(&after_ply, &position)| Plane {
                after_ply,
                position,
                nominal: screw.zone_at(position.nominal),
                worst: screw.zone_at(position.max),
            })
    }

    /// By how much the joint can (or, negative, cannot) have every shear plane on guaranteed
    /// shank and still clamp, with any length of a screw whose transition length is `transition`.
    ///
    /// margin = (plies after the last plane + nut-side washers, least thickness) - Y -
    /// (max - min of everything up to the last plane), with Y = LG max - LB min. When it is
    /// negative, no length of the product does both. `None` without shear planes.
    ///
    /// Source: follows from LB >= x max and LG <= G min; own derivation.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a transition length that is negative or not finite.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let leaf = Spread::exact(millimetres(2.0));
    /// let stack = Stack::builder().ply("a", leaf).ply("b", leaf).shear_planes([1]).build()?;
    /// // M10: Y = 5 P = 7.5 mm; a 2 mm ply never suffices
    /// let margin = stack.shank_and_clamp_margin(millimetres(7.5), 0)?.unwrap();
    /// assert!((margin + millimetres(5.5)).abs() < millimetres(1e-9));
    /// # Ok(())
    /// # }
    /// ```
    pub fn shank_and_clamp_margin(
        &self,
        transition: Length,
        washers_added: usize,
    ) -> Result<Option<Length>, Error> {
        not_negative("transition length", transition)?;
        Ok(self.positions.last().map(|last| {
            let beyond = self.grip_with(washers_added).min - last.min;
            beyond - transition - (last.max - last.min)
        }))
    }
}

/// Collects the parts of a [`Stack`]. Made by [`Stack::builder`]; nothing is checked before
/// [`build`](Self::build).
///
/// ```
/// use shankline::prelude::*;
/// let builder = Stack::builder().ply("plate", Spread::exact(millimetres(10.0)));
/// assert!(builder.clone().build().is_ok());
/// assert!(builder.shear_planes([1]).build().is_err()); // one ply has no shear plane
/// ```
#[derive(Clone, Debug, Default, PartialEq)]
#[must_use]
pub struct StackBuilder {
    washers_under_head: Vec<Layer>,
    plies: Vec<Layer>,
    shear_planes: Vec<usize>,
    washers_under_nut: Option<NutWashers>,
}

impl StackBuilder {
    /// Adds a washer under the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let stack = Stack::builder()
    ///     .washer_under_head("plain washer", Spread::exact(millimetres(3.0)))
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .build()?;
    /// assert_eq!(stack.washers_under_head().len(), 1);
    /// # Ok(())
    /// # }
    /// ```
    pub fn washer_under_head(mut self, name: impl Into<String>, thickness: Spread<Length>) -> Self {
        self.washers_under_head.push(Layer {
            name: name.into(),
            thickness,
        });
        self
    }

    /// Adds the next ply, counted from the head.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let error = Stack::builder().ply("plate", Spread::exact(millimetres(-1.0))).build();
    /// assert!(error.is_err());
    /// ```
    pub fn ply(mut self, name: impl Into<String>, thickness: Spread<Length>) -> Self {
        self.plies.push(Layer {
            name: name.into(),
            thickness,
        });
        self
    }

    /// Sets the shear planes: 1 lies between the first and the second ply, and so on.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// let plate = Spread::exact(millimetres(10.0));
    /// let error = Stack::builder().ply("only", plate).shear_planes([1]).build().unwrap_err();
    /// assert!(error.to_string().starts_with("shear plane"));
    /// ```
    pub fn shear_planes(mut self, after_plies: impl IntoIterator<Item = usize>) -> Self {
        self.shear_planes = after_plies.into_iter().collect();
        self
    }

    /// Sets the washers under the nut: thickness of one, and how many are always there. A length
    /// search may add more of the same.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let washer = Washer::find(WasherStyle::Iso7089, &"M20".parse()?)?;
    /// let stack = Stack::builder()
    ///     .ply("plate", Spread::exact(millimetres(10.0)))
    ///     .washers_under_nut(washer.thickness()?, 1)
    ///     .build()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn washers_under_nut(mut self, thickness: Spread<Length>, count: usize) -> Self {
        self.washers_under_nut = Some(NutWashers { thickness, count });
        self
    }

    /// The bolt put through from the other side; washers stay under head and nut.
    pub(super) fn turned(mut self) -> Self {
        let plies = self.plies.len();
        self.plies.reverse();
        for plane in &mut self.shear_planes {
            *plane = plies.saturating_sub(*plane);
        }
        self
    }

    /// Washers of another thickness under head and nut, as many as there are; more may be added under
    /// the nut.
    pub(super) fn washers_of(mut self, thickness: Spread<Length>) -> Self {
        for washer in &mut self.washers_under_head {
            washer.thickness = thickness;
        }
        let count = self.washers_under_nut.map_or(0, |washers| washers.count);
        self.washers_under_nut(thickness, count)
    }

    /// The ply at the nut made thicker.
    pub(super) fn thicker_last_ply(mut self, by: Length) -> Self {
        if let Some(last) = self.plies.last_mut() {
            last.thickness = last.thickness + Spread::exact(by);
        }
        self
    }

    /// Checks the parts and puts them together.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] without plies, for a thickness that is not positive, finite and in
    /// order, for a shear plane that does not lie between two plies, or for more than 1000 plies or
    /// 100 washers;
    /// [`Error::Mismatch`] for the same shear plane twice.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// assert!(Stack::builder().build().is_err());
    /// ```
    pub fn build(self) -> Result<Stack, Error> {
        const MOST_WASHERS: usize = 100;
        const MOST_PLIES: usize = 1000;
        let mut planes = self.shear_planes;
        planes.sort_unstable();
        for (quantity, count, most) in [
            ("number of plies", self.plies.len(), MOST_PLIES),
            (
                "number of washers under the head",
                self.washers_under_head.len(),
                MOST_WASHERS,
            ),
        ] {
            if count > most {
                return Err(out_of_range(quantity, count, Allowed::AtMost(most.into())));
            }
        }
        if self.plies.is_empty() {
            return Err(out_of_range(
                "number of plies",
                0_usize,
                Allowed::AtLeast(1_usize.into()),
            ));
        }
        if let Some(&plane) = planes
            .iter()
            .find(|plane| !(1..self.plies.len()).contains(*plane))
        {
            return Err(if self.plies.len() == 1 {
                Error::Mismatch(alloc::format!(
                    "shear plane {plane}: a stack of one ply has no shear plane"
                ))
            } else {
                out_of_range(
                    "shear plane",
                    plane,
                    Allowed::FromTo(1_usize.into(), (self.plies.len() - 1).into()),
                )
            });
        }
        if let Some([twice, _]) = planes.windows(2).find(|pair| pair[0] == pair[1]) {
            return Err(Error::Mismatch(alloc::format!(
                "shear plane {twice} is given twice"
            )));
        }
        for layer in self.washers_under_head.iter().chain(&self.plies) {
            sane_spread("thickness", layer.thickness).map_err(|error| named(error, &layer.name))?;
        }
        if let Some(NutWashers { thickness, count }) = self.washers_under_nut {
            sane_spread("thickness of the washer under the nut", thickness)?;
            if count > MOST_WASHERS {
                return Err(out_of_range(
                    "number of washers under the nut",
                    count,
                    Allowed::AtMost(MOST_WASHERS.into()),
                ));
            }
        }
        let zero = Spread::exact(millimetres(0.0));
        let mut x = self
            .washers_under_head
            .iter()
            .fold(zero, |sum, washer| sum + washer.thickness);
        let mut positions = Vec::with_capacity(planes.len());
        let mut next_plane = planes.iter().copied().peekable();
        for (index, ply) in self.plies.iter().enumerate() {
            x = x + ply.thickness;
            if next_plane.next_if_eq(&(index + 1)).is_some() {
                positions.push(x);
            }
        }
        let mut stack = Stack {
            washers_under_head: self.washers_under_head,
            plies: self.plies,
            shear_planes: planes,
            washers_under_nut: self.washers_under_nut,
            grip: x,
            positions,
        };
        stack.grip = stack.grip_with(self.washers_under_nut.map_or(0, |washers| washers.count));
        Ok(stack)
    }
}

/// The same error with the name of the layer it is about.
fn named(error: Error, name: &str) -> Error {
    match error {
        Error::OutOfRange {
            quantity,
            value,
            allowed,
        } => Error::OutOfRange {
            quantity: alloc::format!("{quantity} of \"{name}\""),
            value,
            allowed,
        },
        other => other,
    }
}
