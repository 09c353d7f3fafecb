//! The outcome of a search by grip.

use alloc::{format, string::String, vec::Vec};

use crate::caution::Cautions;
use crate::derivation::{Derivation, Step};
use crate::parts::AnBolt;
use crate::spread::Spread;
use crate::tables::methods;
use crate::units::{Length, UnitSystem, shown};

/// Washers of one bolt.
///
/// ```
/// use shankline::joint::WasherSet;
/// assert_eq!(WasherSet { under_head: 1, under_nut: 1, light_under_nut: 1 }.count(), 3);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct WasherSet {
    /// Regular washers under the head.
    pub under_head: usize,
    /// Regular washers under the nut.
    pub under_nut: usize,
    /// Light washers under the nut.
    pub light_under_nut: usize,
}

impl WasherSet {
    /// All washers.
    ///
    /// ```
    /// use shankline::joint::WasherSet;
    /// assert_eq!(WasherSet { under_head: 0, under_nut: 1, light_under_nut: 0 }.count(), 1);
    /// ```
    #[must_use]
    pub const fn count(&self) -> usize {
        self.under_head
            .saturating_add(self.under_nut)
            .saturating_add(self.light_under_nut)
    }
}

/// Why a dash number will not do.
///
/// ```
/// use shankline::{joint::GripReason, units::{UnitSystem, inches}};
/// let reason = GripReason::NutReachesShank { by: inches(0.047) };
/// assert_eq!(reason.text(UnitSystem::UsCustomary), "nut reaches the shank 0.047 in before it clamps");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum GripReason {
    /// More thread in the hole than the rule permits.
    GripTooShort {
        /// Thread in the hole, in pitches.
        threads_in_hole: f64,
        /// How much grip is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The thread in the hole is permitted only in the thickest ply, and lies in another.
    ThreadInThinPly {
        /// Thread in the hole, in pitches.
        threads_in_hole: f64,
    },
    /// The nut reaches the end of the shank before it clamps.
    NutReachesShank {
        /// How far it is from clamping the thinnest stack.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The bolt does not pass the nut by as much as is asked.
    TooShort {
        /// How much is missing.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
    /// The bolt passes the nut by more than is permitted. Aircraft bolts are not cut.
    TooLong {
        /// How much too far.
        #[cfg_attr(
            feature = "serde",
            serde(serialize_with = "crate::units::quantity::round")
        )]
        by: Length,
    },
}

impl GripReason {
    /// The reason as a sentence, lengths in the reader's units.
    ///
    /// ```
    /// use shankline::{joint::GripReason, units::{UnitSystem, inches}};
    /// let reason = GripReason::TooShort { by: inches(0.01) };
    /// assert_eq!(reason.text(UnitSystem::UsCustomary), "too short by 0.010 in");
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        match *self {
            Self::GripTooShort {
                threads_in_hole,
                by,
            } => format!(
                "grip too short by {}: {threads_in_hole:.1} threads lie in the hole",
                shown(by, system)
            ),
            Self::ThreadInThinPly { threads_in_hole } => {
                format!(
                    "{threads_in_hole:.1} threads lie in the hole of a part that is not the thickest"
                )
            }
            Self::NutReachesShank { by } => {
                format!(
                    "nut reaches the shank {} before it clamps",
                    shown(by, system)
                )
            }
            Self::TooShort { by } => format!("too short by {}", shown(by, system)),
            Self::TooLong { by } => format!("sticks out {} too far", shown(by, system)),
        }
    }
}

/// One dash number with the best washers for it.
///
/// ```
/// use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
/// use shankline::tables::aircraft::AircraftBolt;
/// # fn main() -> Result<(), shankline::Error> {
/// let lug = Spread::exact(inches(0.219));
/// let stack = Stack::builder().ply("lug", lug).ply("lug", lug).shear_planes([1]).build()?;
/// let bolt = AircraftBolt::find("AN4")?;
/// let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?; // measured
/// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
/// let selection = search.run()?;
/// let best = selection.best().unwrap();
/// assert_eq!(best.bolt.to_string(), "AN4-7A"); // grip 0.438 in
/// assert_eq!(best.washers.count(), 1);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct GripCandidate {
    /// The bolt; head and shank not drilled unless asked for.
    pub bolt: AnBolt,
    /// Its washers.
    pub washers: WasherSet,
    /// Thread in the hole in pitches, nominal sizes; 0 if there is none.
    pub threads_in_hole: f64,
    /// The same with the thickest plies and the shortest grip.
    pub threads_in_hole_worst: f64,
    /// How far the nut is from the end of the shank when it clamps the thinnest stack.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub jam_margin: Length,
    /// Bolt length beyond the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub protrusion: Spread<Length>,
    /// Where the hole ends at the nut, from the bearing face of the head: head washers and plies.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub hole_end: Spread<Length>,
    /// Where the nut bears.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub nut_face: Spread<Length>,
    /// Nut height.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::spread::quantity::round")
    )]
    pub nut_height: Spread<Length>,
    /// Pitch of the thread.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub pitch: Length,
    /// Shear planes on guaranteed shank, in the worst case.
    pub planes_on_shank: usize,
    /// Shear planes that may be off it.
    pub planes_off_shank: usize,
    /// Why it will not do; empty if it fits.
    pub reasons: Vec<GripReason>,
}

impl GripCandidate {
    /// Whether it keeps every rule.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("lug", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.accepted().iter().all(|candidate| candidate.fits()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn fits(&self) -> bool {
        self.reasons.is_empty()
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("lug", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// let selection = search.run()?;
    /// let derivation = selection.best().unwrap().derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps()[0].formula(), "max(0, (H - g) / P)");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let (grip, length) = (self.bolt.grip.grip, self.bolt.grip.length);
        let (face, nut) = (self.nut_face, self.nut_height);
        Derivation::new(format!("Grip of {}", self.bolt))
            .step(
                Step::new(
                    "threads in the hole, nominal",
                    "n",
                    "max(0, (H - g) / P)",
                    self.threads_in_hole,
                )
                .with("H", self.hole_end.nominal)
                .with("g", grip.nominal)
                .with("P", self.pitch)
                .source(methods::AIRCRAFT_GRIP),
            )
            .step(
                Step::new(
                    "threads in the hole, thickest plies and shortest grip",
                    "nmax",
                    "max(0, (Hmax - gmin) / P)",
                    self.threads_in_hole_worst,
                )
                .with("Hmax", self.hole_end.max)
                .with("gmin", grip.min)
                .with("P", self.pitch),
            )
            .step(
                Step::new(
                    "jam margin, thinnest plies and longest grip",
                    "J",
                    "Gmin - gmax",
                    self.jam_margin,
                )
                .with("Gmin", face.min)
                .with("gmax", grip.max),
            )
            .step(
                Step::new(
                    "least protrusion",
                    "pmin",
                    "Lmin - Gmax - mmax",
                    self.protrusion.min,
                )
                .with("Lmin", length.min)
                .with("Gmax", face.max)
                .with("mmax", nut.max),
            )
            .step(
                Step::new(
                    "greatest protrusion",
                    "pmax",
                    "Lmax - Gmin - mmin",
                    self.protrusion.max,
                )
                .with("Lmax", length.max)
                .with("Gmin", face.min)
                .with("mmin", nut.min),
            )
    }
}

/// Every dash number, best first.
///
/// ```
/// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
/// # use shankline::tables::aircraft::AircraftBolt;
/// # fn main() -> Result<(), shankline::Error> {
/// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
/// # let bolt = AircraftBolt::find("AN4")?;
/// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
/// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
/// let selection = search.run()?;
/// assert_eq!(selection.accepted().first(), selection.best());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct GripSelection {
    pub(super) candidates: Vec<GripCandidate>,
    pub(super) accepted: usize,
    pub(super) cautions: Cautions,
}

impl GripSelection {
    /// The best dash number that fits, if any.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.best().is_some());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn best(&self) -> Option<&GripCandidate> {
        self.accepted().first()
    }

    /// Those that fit, best first.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(!search.run()?.accepted().is_empty());
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn accepted(&self) -> &[GripCandidate] {
        self.candidates.get(..self.accepted).unwrap_or_default()
    }

    /// Those that do not, with their reasons, the least bad first.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.rejected().iter().all(|c| !c.reasons.is_empty()));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn rejected(&self) -> &[GripCandidate] {
        self.candidates.get(self.accepted..).unwrap_or_default()
    }

    /// What the user must be told: values that were recalled, not read.
    ///
    /// ```
    /// # use shankline::{joint::{GripRules, GripSearch}, parts::AnWashers, prelude::*};
    /// # use shankline::tables::aircraft::AircraftBolt;
    /// # fn main() -> Result<(), shankline::Error> {
    /// # let stack = Stack::builder().ply("spar", Spread::exact(inches(0.5))).build()?;
    /// # let bolt = AircraftBolt::find("AN4")?;
    /// # let nut = NutEnd::with_height(Spread::exact(inches(0.22)))?;
    /// let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt)?, GripRules::faa())?;
    /// assert!(search.run()?.cautions().iter().count() >= 2); // shank limits, washers
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        self.cautions.clone()
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for GripSelection {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        use serde::ser::SerializeStruct;
        let mut object = serializer.serialize_struct("GripSelection", 3)?;
        object.serialize_field("accepted", self.accepted())?;
        object.serialize_field("rejected", self.rejected())?;
        object.serialize_field("cautions", &self.cautions)?;
        object.end()
    }
}
