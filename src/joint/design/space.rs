//! What a design may choose from.

use alloc::{format, vec::Vec};

use crate::error::{Allowed, Error, out_of_range, positive};
use crate::joint::{HeadSeat, Joint, JointBolt, JointNut};
use crate::material::{BoltGrade, PropertyClass, SaeGrade};
use crate::parts::{NutStyle, ScrewProduct, WasherStyle};
use crate::strength::shear::AiscEdition;
use crate::strength::timber::TimberMethod;
use crate::tables::holes::{ClearanceHole, HoleFit, StructuralHole};
use crate::thread::Thread;
use crate::units::{Length, Ratio, UnitSystem};

use super::order;

/// What [`Joint::design`] may choose from. A list that is left empty is not varied: the joint keeps
/// what it has there.
///
/// ```
/// use shankline::joint::DesignSpace;
/// use shankline::prelude::*;
/// use shankline::tables::holes::HoleFit;
/// # fn main() -> Result<(), shankline::Error> {
/// let space = DesignSpace::new()
///     .threads(["M12".parse()?, "M16".parse()?])
///     .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
///     .washers([WasherStyle::Iso7089])
///     .holes(HoleFit::Normal);
/// assert_eq!(space.threads.len() * space.grades.len(), 4);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", default, deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct DesignSpace {
    /// Threads, and with them the diameters.
    pub threads: Vec<Thread>,
    /// Products.
    pub products: Vec<ScrewProduct>,
    /// Grades of the bolt.
    pub grades: Vec<BoltGrade>,
    /// Nuts. One without a coating has that of the nut of the joint. One without a grade gets the grade that the
    /// standard of the bolt names for it and its coating; where none is named, the weakest one of its shape that
    /// is [shown to outlast the bolt](crate::strength::strip::nut_pairing), of carbon or alloy steel for bolts of
    /// such steel; where none is shown to, the strongest, which is turned down and says why.
    pub nuts: Vec<JointNut>,
    /// Styles of washer, the same under head and nut: under the head as many as the stack has, under
    /// the nut too, and more where a length needs them. Their dimensions come from the tables; metal and hardness
    /// stay those of the washers they take the place of (a style that comes in one hardness has that).
    pub washers: Vec<WasherStyle>,
    /// The holes of the plies.
    pub holes: HoleRule,
    /// The most of each resistance that the loads may use; the whole of it by default. See
    /// [`Objective::Utilisation`](super::Objective::Utilisation) for what is not counted.
    #[cfg_attr(
        feature = "serde",
        serde(
            serialize_with = "crate::units::quantity::serialize_ratio",
            deserialize_with = "crate::units::quantity::deserialize_ratio"
        )
    )]
    #[cfg_attr(feature = "schema", schemars(with = "f64"))]
    pub utilisation_max: Ratio,
    /// Bolts on hand, at most [`MOST_ON_HAND`](Self::MOST_ON_HAND) entries.
    pub on_hand: Vec<OnHand>,
    /// Whether only bolts on hand come into question.
    pub only_on_hand: bool,
    /// How many bolts are wanted, so many must be on hand alike.
    pub bolts: usize,
}

/// Bolts on hand. (A [`Bin`](crate::joint::Bin) is for bolts of unknown make; here the grade counts.)
///
/// ```
/// use shankline::joint::{Finish, JointBolt, OnHand};
/// use shankline::prelude::*;
/// # fn main() -> Result<(), shankline::Error> {
/// let drawer = OnHand {
///     bolt: JointBolt {
///         product: ScrewProduct::Iso4014,
///         thread: "M12".parse()?,
///         grade: PropertyClass::Class8_8.into(),
///         length: Some(millimetres(70.0)),
///         finish: Some(Finish::ZincPlated { baked: false }),
///     },
///     count: 24,
/// };
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct OnHand {
    /// What it is. Its length must be given; its coating too, if that of the joint is, and one of another coating
    /// does not count.
    pub bolt: JointBolt,
    /// How many there are.
    pub count: usize,
}

/// What becomes of the holes of the plies when the diameter changes.
///
/// ```
/// use shankline::joint::HoleRule;
/// use shankline::tables::holes::HoleFit;
/// assert_eq!(HoleRule::from(HoleFit::Close), HoleRule::Fit(HoleFit::Close));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum HoleRule {
    /// They are there already. A thread that does not pass through one is ruled out, and so is one of
    /// another diameter than the given one for which a hole is larger than a loose clearance hole.
    #[default]
    Keep,
    /// They are drilled for the bolt: [`ClearanceHole`], its least diameter.
    Fit(HoleFit),
    /// They are drilled for the bolt where none is said; the others are there already, as with
    /// [`Keep`](Self::Keep).
    Missing(HoleFit),
    /// They are the standard holes of AISC 360 Table J3.3: [`StructuralHole`].
    Structural(AiscEdition),
}

impl From<HoleFit> for HoleRule {
    fn from(fit: HoleFit) -> Self {
        Self::Fit(fit)
    }
}

impl HoleRule {
    /// Diameter of the hole drilled for a thread; none if holes are kept.
    pub(super) fn drilled(self, thread: &Thread) -> Result<Option<Length>, Error> {
        match self {
            Self::Keep => Ok(None),
            Self::Fit(fit) | Self::Missing(fit) => {
                ClearanceHole::find(thread, fit).map(|hole| Some(hole.diameter_min))
            }
            Self::Structural(edition) => {
                StructuralHole::find(thread, edition).map(|hole| Some(hole.standard))
            }
        }
    }
}

impl Default for DesignSpace {
    fn default() -> Self {
        Self {
            threads: Vec::new(),
            products: Vec::new(),
            grades: Vec::new(),
            nuts: Vec::new(),
            washers: Vec::new(),
            holes: HoleRule::Keep,
            utilisation_max: Ratio::from(1.0),
            on_hand: Vec::new(),
            only_on_hand: false,
            bolts: 1,
        }
    }
}

impl DesignSpace {
    /// No more combinations are tried: about a second, and some hundred megabytes of reasons.
    pub const MOST_COMBINATIONS: usize = 100_000;
    /// No more entries of bolts on hand are taken.
    pub const MOST_ON_HAND: usize = 10_000;

    /// A space of the given joint alone: its best length.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// assert!(DesignSpace::new().threads.is_empty());
    /// ```
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// What a dealer has: coarse threads from M6 to M30 or 1/4 to 1-1/4 in, bolts and screws with hexagon heads in two
    /// grades, plain and lock nuts, plain washers, holes of normal fit. What is common is common practice, no source.
    ///
    /// # Errors
    ///
    /// Never, but for threads that are not in the tables.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// use shankline::units::UnitSystem;
    /// assert_eq!(DesignSpace::common(UnitSystem::Si).unwrap().threads.len(), 8);
    /// ```
    pub fn common(units: UnitSystem) -> Result<Self, Error> {
        let read = |names: [&str; 8]| -> Result<Vec<Thread>, Error> {
            names.into_iter().map(str::parse).collect()
        };
        Ok(match units {
            UnitSystem::Si => Self::new()
                .threads(read([
                    "M6", "M8", "M10", "M12", "M16", "M20", "M24", "M30",
                ])?)
                .products([ScrewProduct::Iso4014, ScrewProduct::Iso4017])
                .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
                .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040, NutStyle::Iso7042])
                .washers([WasherStyle::Iso7089])
                .holes(HoleFit::Normal),
            UnitSystem::UsCustomary => Self::new()
                .threads(read([
                    "1/4-20 UNC",
                    "5/16-18 UNC",
                    "3/8-16 UNC",
                    "1/2-13 UNC",
                    "5/8-11 UNC",
                    "3/4-10 UNC",
                    "1-8 UNC",
                    "1-1/4-7 UNC",
                ])?)
                .products([ScrewProduct::HexCapScrew])
                .grades([SaeGrade::Grade5, SaeGrade::Grade8])
                .nut_styles([
                    NutStyle::Hex,
                    NutStyle::InsertLockNe,
                    NutStyle::AllMetalLock,
                    NutStyle::HexSlotted,
                ])
                .washers([WasherStyle::TypeANarrow])
                .holes(HoleFit::Normal),
        })
    }

    /// With these threads.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let space = DesignSpace::new().threads(["1/2-13 UNC".parse()?, "5/8-11 UNC".parse()?]);
    /// assert_eq!(space.threads.len(), 2);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn threads(mut self, threads: impl IntoIterator<Item = Thread>) -> Self {
        self.threads = threads.into_iter().collect();
        self
    }

    /// With these products.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// use shankline::prelude::*;
    /// let space = DesignSpace::new().products([ScrewProduct::Iso4014, ScrewProduct::Iso4017]);
    /// assert!(space.grades.is_empty()); // not varied: the grade of the joint is kept
    /// ```
    #[must_use]
    pub fn products(mut self, products: impl IntoIterator<Item = ScrewProduct>) -> Self {
        self.products = products.into_iter().collect();
        self
    }

    /// With these grades of bolt.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// use shankline::prelude::*;
    /// let space = DesignSpace::new().grades([SaeGrade::Grade5, SaeGrade::Grade8]);
    /// assert_eq!(space.grades[1].to_string(), "SAE J429 grade 8");
    /// ```
    #[must_use]
    pub fn grades<G: Into<BoltGrade>>(mut self, grades: impl IntoIterator<Item = G>) -> Self {
        self.grades = grades.into_iter().map(Into::into).collect();
        self
    }

    /// With these nuts.
    ///
    /// ```
    /// use shankline::joint::{DesignSpace, JointNut};
    /// use shankline::prelude::*;
    /// let space = DesignSpace::new()
    ///     .nuts([JointNut {
    ///         style: NutStyle::Iso4032,
    ///         grade: Some(NutGrade::Iso898_2Class8),
    ///         finish: None, // that of the nut of the joint
    ///     }]);
    /// ```
    #[must_use]
    pub fn nuts(mut self, nuts: impl IntoIterator<Item = JointNut>) -> Self {
        self.nuts = nuts.into_iter().collect();
        self
    }

    /// With nuts of these styles, each in the grade that its bolt asks for, coated as the nut of the joint is.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// use shankline::prelude::*;
    /// let space = DesignSpace::new().nut_styles([NutStyle::Iso4032, NutStyle::Iso7040]);
    /// assert!(space.nuts.iter().all(|nut| nut.grade.is_none()));
    /// ```
    #[must_use]
    pub fn nut_styles(self, styles: impl IntoIterator<Item = NutStyle>) -> Self {
        let grade = None;
        self.nuts(styles.into_iter().map(|style| JointNut {
            style,
            grade,
            finish: None,
        }))
    }

    /// With washers of these styles.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// use shankline::prelude::*;
    /// let space = DesignSpace::new().washers([WasherStyle::TypeANarrow, WasherStyle::F436]);
    /// assert_eq!(space.washers.len(), 2);
    /// ```
    #[must_use]
    pub fn washers(mut self, styles: impl IntoIterator<Item = WasherStyle>) -> Self {
        self.washers = styles.into_iter().collect();
        self
    }

    /// With holes by this rule.
    ///
    /// ```
    /// use shankline::joint::{DesignSpace, HoleRule};
    /// use shankline::prelude::*;
    /// let space = DesignSpace::new().holes(HoleRule::Structural(AiscEdition::E2022));
    /// assert_ne!(space.holes, HoleRule::Keep); // the holes follow the thread
    /// ```
    #[must_use]
    pub fn holes(mut self, rule: impl Into<HoleRule>) -> Self {
        self.holes = rule.into();
        self
    }

    /// With so much of each resistance used at most.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// use shankline::units::percent;
    /// let space = DesignSpace::new().utilisation_at_most(percent(80.0));
    /// assert_eq!(space.utilisation_max, percent(80.0));
    /// ```
    #[must_use]
    pub const fn utilisation_at_most(mut self, most: Ratio) -> Self {
        self.utilisation_max = most;
        self
    }

    /// With bolts on hand, of which so many alike are wanted for the joints.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// let empty_shelf = DesignSpace::new().on_hand([], 4);
    /// ```
    #[must_use]
    pub fn on_hand(mut self, on_hand: impl IntoIterator<Item = OnHand>, wanted: usize) -> Self {
        self.on_hand = on_hand.into_iter().collect();
        self.bolts = wanted;
        self
    }

    /// With nothing but the bolts on hand.
    ///
    /// ```
    /// use shankline::joint::DesignSpace;
    /// assert!(DesignSpace::new().only_on_hand().only_on_hand);
    /// ```
    #[must_use]
    pub const fn only_on_hand(mut self) -> Self {
        self.only_on_hand = true;
        self
    }

    /// The space in a fixed order and without repetition, with what the joint has in empty lists.
    pub(super) fn of(&self, joint: &Joint) -> Result<Ordered, Error> {
        positive("greatest utilisation", self.utilisation_max)?;
        if self.utilisation_max > Ratio::from(1.0) {
            return Err(out_of_range(
                "greatest utilisation",
                self.utilisation_max,
                Allowed::AtMost(1.0.into()),
            ));
        }
        if self.bolts == 0 {
            let allowed = Allowed::AtLeast(1_usize.into());
            return Err(out_of_range("number of bolts wanted", 0_usize, allowed));
        }
        for on_hand in &self.on_hand {
            let Some(length) = on_hand.bolt.length else {
                return Err(Error::Mismatch(format!(
                    "the length of a {} {} on hand is not given",
                    on_hand.bolt.thread, on_hand.bolt.product
                )));
            };
            positive("length of a bolt on hand", length)?;
            if on_hand.bolt.finish.is_none() && joint.bolt.finish.is_some() {
                return Err(Error::Mismatch(format!(
                    "the coating of a {} {} on hand is not given, and that of the joint is",
                    on_hand.bolt.thread, on_hand.bolt.product
                )));
            }
        }
        if self.only_on_hand && self.on_hand.is_empty() {
            return Err(Error::Mismatch(
                "only bolts on hand come into question, and there are none".into(),
            ));
        }
        let threads = filled(&self.threads, joint.bolt.thread, order::threads);
        self.made_for_other_parts(joint)?;
        let own = joint.bolt.thread.nominal_diameter();
        let other = threads
            .iter()
            .find(|thread| thread.nominal_diameter() != own);
        if let Some(other) = other {
            if let Some(what) = self.made_for_one_diameter(joint) {
                return Err(Error::Mismatch(format!(
                    "{what} that of {}: it does not go with {other}",
                    joint.bolt.thread
                )));
            }
        }
        if self.on_hand.len() > Self::MOST_ON_HAND {
            return Err(out_of_range(
                "number of bolts on hand",
                self.on_hand.len(),
                Allowed::AtMost(Self::MOST_ON_HAND.into()),
            ));
        }
        let washers = if self.washers.is_empty() {
            alloc::vec![None]
        } else {
            let styles: Vec<_> = self.washers.iter().copied().map(Some).collect();
            filled(&styles, None, |a, b| {
                order::washer(*a).cmp(&order::washer(*b))
            })
        };
        let Some(nut) = joint.nut else {
            return Err(Error::Mismatch(
                "a joint that ends in a tapped part has no nut to choose: check it as it is".into(),
            ));
        };
        // Coatings are not varied: what is not said of a nut is as in the joint.
        let coated = self.nuts.iter().map(|own| JointNut {
            finish: own.finish.or(nut.finish),
            ..*own
        });
        let nuts: Vec<JointNut> = coated.collect();
        let ordered = Ordered {
            threads,
            products: filled(&self.products, joint.bolt.product, |a, b| {
                order::product(*a).cmp(&order::product(*b))
            }),
            grades: filled(&self.grades, joint.bolt.grade, |a, b| {
                order::grade(*a).cmp(&order::grade(*b))
            }),
            nuts: filled(&nuts, nut, |a, b| order::nut(*a).cmp(&order::nut(*b))),
            washers,
        };
        let combinations = ordered.combinations();
        if combinations > Self::MOST_COMBINATIONS {
            return Err(out_of_range(
                "number of combinations",
                combinations,
                Allowed::AtMost(Self::MOST_COMBINATIONS.into()),
            ));
        }
        Ok(ordered)
    }
}

impl DesignSpace {
    /// Refuses other grades where the strength of the bolt is given by hand, and other locks of nuts where
    /// their running torque is.
    fn made_for_other_parts(&self, joint: &Joint) -> Result<(), Error> {
        let given = matches!(joint.methods.timber, Some(TimberMethod::Nds { .. }));
        if let Some(other) = self.grades.iter().find(|&&grade| grade != joint.bolt.grade) {
            if given {
                return Err(Error::Mismatch(format!(
                    "the bending yield strength given is that of {}: it does not go with {other}",
                    joint.bolt.grade
                )));
            }
        }
        let running = joint.torque().and_then(|torque| torque.prevailing);
        if let (Some(own), Some(_)) = (joint.nut, running) {
            let locking = own.style.locking();
            let mut nuts = self.nuts.iter().map(|nut| nut.style);
            if let Some(other) = nuts.find(|style| style.locking() != locking) {
                return Err(Error::Mismatch(format!(
                    "the running torque given is that of {}: it does not go with {other}",
                    own.style
                )));
            }
        }
        Ok(())
    }

    /// What of a joint belongs to its own diameter and to no other.
    fn made_for_one_diameter(&self, joint: &Joint) -> Option<&'static str> {
        let stack = &joint.stack;
        let has_washers = !stack.washers_under_head().is_empty()
            || stack.washer_to_add_under_head().is_some()
            || stack.washers_under_nut().is_some();
        if self.washers.is_empty() && has_washers {
            Some("no style of washer is named, and the thickness of the washers in the stack is")
        } else if !stack.other_washers_under_nut().is_empty() {
            Some("the size of the special washer under the nut is")
        } else if !stack.sleeves().is_empty() {
            Some("the bore of the sleeve is")
        } else if stack
            .plies()
            .iter()
            .any(|ply| ply.bearing_strength.or(ply.bearing_yield).is_some())
        {
            Some("the bearing strength given of a ply is")
        } else if !matches!(self.holes, HoleRule::Keep | HoleRule::Missing(_))
            && stack.plies().iter().any(|ply| ply.slot.is_some())
        {
            Some("the slot of a ply is")
        } else if matches!(stack.head_seat(), HeadSeat::Countersunk { .. }) {
            Some("the countersink is")
        } else if stack.head_seat() != HeadSeat::Flat {
            Some("the counterbore of the head is")
        } else if stack.spot_face_under_nut().is_some() {
            Some("the spot face under the nut is")
        } else if matches!(joint.methods.timber, Some(TimberMethod::En1995 { axial, .. }) if axial.value > 0.0)
        {
            Some("the axial capacity given for the method of timber is")
        } else {
            let torque = joint.torque()?;
            let running = torque.prevailing.map(|_| "the running torque given is");
            running.or(torque.stiffness.map(|_| "the stiffness given is"))
        }
    }
}

/// The lists of a space, none of them empty.
pub(super) struct Ordered {
    pub(super) threads: Vec<Thread>,
    pub(super) products: Vec<ScrewProduct>,
    pub(super) grades: Vec<BoltGrade>,
    pub(super) nuts: Vec<JointNut>,
    pub(super) washers: Vec<Option<WasherStyle>>,
}

impl Ordered {
    pub(super) fn combinations(&self) -> usize {
        [
            self.products.len(),
            self.grades.len(),
            self.nuts.len(),
            self.washers.len(),
        ]
        .into_iter()
        .fold(self.threads.len(), usize::saturating_mul)
    }
}

fn filled<T: Copy + PartialEq>(
    list: &[T],
    own: T,
    order: impl Fn(&T, &T) -> core::cmp::Ordering,
) -> Vec<T> {
    let mut filled = if list.is_empty() {
        alloc::vec![own]
    } else {
        list.to_vec()
    };
    filled.sort_by(order);
    filled.dedup();
    filled
}
