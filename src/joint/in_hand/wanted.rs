//! What a bolt must measure.

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range};
use crate::joint::stack::Added;
use crate::joint::{LengthRules, LengthSearch, NutEnd, Stack};
use crate::spread::Spread;
use crate::thread::Thread;
use crate::units::Length;

/// What a bolt must measure to suit a joint with a number of washers: what to look for in a drawer.
///
/// ```
/// use shankline::{joint::WantedBolt, prelude::*};
/// # fn main() -> Result<(), shankline::Error> {
/// let thread: Thread = "M10".parse()?;
/// let ply = millimetres(20.0).plus_minus(millimetres(0.2));
/// let stack = Stack::builder().ply("a", ply).ply("b", ply).shear_planes([1]).build()?;
/// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
/// let rules = LengthRules::fabrication(UnitSystem::Si);
/// let wanted = WantedBolt::of(&stack, &thread, nut, rules, 0)?;
/// assert!((wanted.shank_min - millimetres(20.2)).abs() < millimetres(1e-9));
/// assert!((wanted.thread_start_max - millimetres(39.6)).abs() < millimetres(1e-9));
/// assert!((wanted.length_min - millimetres(40.4 + 8.4 + 3.0)).abs() < millimetres(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct WantedBolt {
    /// Washers under the nut beyond those always there.
    pub washers_added: usize,
    /// Whether it ends in a tapped part: then the engagement wanted there stands for the nut.
    pub ends_in_tapped_part: bool,
    /// Least shank that has every shear plane in it and leaves no more thread in the holes than the rules
    /// permit; zero if neither asks for any.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shank_min: Length,
    /// Latest start of usable thread with which the nut clamps and leaves the clear threads asked
    /// for. Negative if nothing can.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thread_start_max: Length,
    /// Least length.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_min: Length,
    /// Greatest length that needs no cut; none without a limit. It may lie below the least length:
    /// then no length suits every stack, and the end is cut at fit-up.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub length_max: Option<Length>,
    /// Everything between the bearing faces of head and nut, G.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub grip: Spread<Length>,
    /// Nut height, m; of a tapped part, the wanted engagement.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub nut_height: Spread<Length>,
    /// Clear thread wanted under the nut, c P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub clear_thread: Length,
    /// Least wanted protrusion, p req P.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub protrusion_min: Length,
    /// Greatest wanted protrusion, p lim P; none without a limit.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub protrusion_max: Option<Length>,
}

impl WantedBolt {
    /// The measures, from the same inequalities as the search: LB >= x max, LG <= G min - c P,
    /// L >= G max + m max + p P, and L <= G min + m min + p lim P.
    ///
    /// # Errors
    ///
    /// Those of [`LengthSearch::new`]; [`Error::Mismatch`] for washers where the stack names none to add,
    /// [`Error::OutOfRange`] for more than 100 of them.
    ///
    /// ```
    /// use shankline::{joint::WantedBolt, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(30.0))).build()?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// assert_eq!(WantedBolt::of(&stack, &thread, nut, rules, 0)?.shank_min, millimetres(0.0));
    /// # Ok(())
    /// # }
    /// ```
    pub fn of(
        stack: &Stack,
        thread: &Thread,
        nut: NutEnd,
        rules: LengthRules,
        washers_added: usize,
    ) -> Result<Self, Error> {
        LengthSearch::of_thread(stack, thread, &nut, rules)?;
        if washers_added > 0 && stack.washers_under_nut().is_none() {
            return Err(Error::Mismatch(
                "the stack names no washer that could be added under the nut".into(),
            ));
        }
        if washers_added > 100 {
            let allowed = Allowed::AtMost(100_usize.into());
            return Err(out_of_range(
                "number of washers added",
                washers_added,
                allowed,
            ));
        }
        let (height, pitch) = (nut.height(), thread.pitch());
        let grip = stack.grip_with(Added {
            under_head: 0,
            under_nut: washers_added,
        });
        let planes = stack.plane_positions().last();
        let to_planes = planes.map_or(Length::default(), |last| last.max);
        let clear_thread = rules.clear_threads_min * pitch;
        let (protrusion_min, protrusion_max) = nut.window(&rules, pitch);
        Ok(Self {
            washers_added,
            ends_in_tapped_part: nut.is_tapped(),
            shank_min: to_planes.max(Self::shank_in_holes(stack, &rules, pitch)),
            thread_start_max: grip.min - clear_thread,
            length_min: grip.max + height.max + protrusion_min,
            length_max: protrusion_max.map(|limit| grip.min + height.min + limit),
            grip,
            nut_height: height,
            clear_thread,
            protrusion_min,
            protrusion_max,
        })
    }

    /// Least shank that leaves no more thread in the holes than the rules permit.
    pub(in crate::joint) fn shank_in_holes(
        stack: &Stack,
        rules: &LengthRules,
        pitch: Length,
    ) -> Length {
        let most = rules.thread_in_holes_max_pitches;
        most.map_or(Length::default(), |most| {
            (stack.holes_end().max - most * pitch).max(Length::default())
        })
    }

    /// The working.
    ///
    /// ```
    /// use shankline::{joint::WantedBolt, prelude::*};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let thread: Thread = "M10".parse()?;
    /// let stack = Stack::builder().ply("plate", Spread::exact(millimetres(30.0))).build()?;
    /// let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let derivation = WantedBolt::of(&stack, &thread, nut, rules, 0)?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().len(), 4);
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (grip, nut) = (self.grip, self.nut_height);
        let mut derivation = Derivation::new("What the bolt must measure")
            .step(Step::given(
                "least shank: to the last shear plane, or as far as the thread in the holes asks, thickest plies",
                "LB",
                self.shank_min,
            ))
            .step(
                Step::new(
                    "latest start of thread",
                    "LG",
                    "Gmin - c",
                    self.thread_start_max,
                )
                .with("Gmin", grip.min)
                .with("c", self.clear_thread),
            )
            .step(
                Step::new(
                    "least length",
                    "Lmin",
                    "Gmax + mmax + preq",
                    self.length_min,
                )
                .with("Gmax", grip.max)
                .with("mmax", nut.max)
                .with("preq", self.protrusion_min),
            );
        if let (Some(longest), Some(limit)) = (self.length_max, self.protrusion_max) {
            let step = Step::new(
                "greatest length without a cut",
                "Lmax",
                "Gmin + mmin + plim",
                longest,
            );
            derivation = derivation.step(
                step.with("Gmin", grip.min)
                    .with("mmin", nut.min)
                    .with("plim", limit),
            );
        }
        derivation
    }
}
