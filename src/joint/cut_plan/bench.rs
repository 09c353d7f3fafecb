//! At the bench: how a bolt is cut and dressed, and which bolts are not.

use crate::source::Method;
use crate::tables::methods;
use core::fmt;

use crate::joint::{CutRule, LengthRules};

/// One step of cutting and dressing a bolt; `Display` writes it as a sentence.
///
/// ```
/// use shankline::joint::CutStep;
/// assert!(CutStep::ALL[0].to_string().starts_with("Wear eye protection"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum CutStep {
    /// Eyes, hands, fire.
    Protect,
    /// Nuts below the mark.
    RunNutsOn,
    /// Hold it without harm.
    Hold,
    /// Saw, not torch.
    Saw,
    /// Chamfer.
    Chamfer,
    /// Back the nuts off over the end.
    BackNutsOff,
    /// Coat the bare end again.
    Coat,
    /// Look at it.
    Check,
}

impl CutStep {
    /// All steps in their order.
    ///
    /// Nuts run on before the cut and backed off over its end: read on a supplier's page and two
    /// workshop pages. No torch on heat-treated bolts: read on a bolt maker's page. Coating of cut
    /// galvanized ends by ASTM A780: read on pages of galvanizers' associations. The rest is common
    /// practice, no source.
    ///
    /// ```
    /// for step in shankline::joint::CutStep::ALL {
    ///     println!("{step}");
    /// }
    /// ```
    pub const ALL: [Self; 8] = [
        Self::Protect,
        Self::RunNutsOn,
        Self::Hold,
        Self::Saw,
        Self::Chamfer,
        Self::BackNutsOff,
        Self::Coat,
        Self::Check,
    ];
}

impl fmt::Display for CutStep {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Protect => {
                "Wear eye protection and keep sparks from what burns; fumes of cadmium and zinc are poisonous."
            }
            Self::RunNutsOn => "Run two nuts on past the mark before cutting.",
            Self::Hold => "Hold the head or the nuts in the vice with soft jaws, never the shank or bare thread.",
            Self::Saw => {
                "Saw, or use a cut-off wheel and keep the bolt cool; never a torch on a heat-treated bolt."
            }
            Self::Chamfer => "Chamfer the end at about 45 degrees to just below the root of the thread.",
            Self::BackNutsOff => "Back the nuts off over the end to clear the burr; dress with a thread file.",
            Self::Coat => {
                "Clean the bare end and coat it again: zinc-rich paint on galvanized bolts (ASTM A780)."
            }
            Self::Check => "A nut must run on by hand; a lock nut needs full thread past its locking part.",
        })
    }
}

/// What may speak against cutting a bolt.
///
/// ```
/// use shankline::joint::BoltTrait;
/// assert!(BoltTrait::DrilledShank.cut_objection().forbids);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum BoltTrait {
    /// Structural bolt that is to be preloaded (ASTM F3125, EN 14399).
    PreloadedStructural,
    /// Tension-control bolt with a spline at its end.
    SplineEnd,
    /// Shank drilled for a cotter pin.
    DrilledShank,
    /// Aircraft bolt (AN, NAS, MS).
    Aircraft,
    /// Grade or maker's mark stamped on the end: anchor rods, studs.
    MarkedEnd,
    /// Electroplated, in wet or salty service.
    PlatedInCorrosiveService,
    /// Hot-dip galvanized.
    Galvanized,
    /// Point that leads into a blind or captive thread: dog, cone, pilot.
    SpecialPoint,
}

/// What is to be said against cutting one kind of bolt.
///
/// ```
/// use shankline::joint::BoltTrait;
/// let objection = BoltTrait::Galvanized.cut_objection();
/// assert!(!objection.forbids && objection.source.citation.contains("A780"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct CutObjection {
    /// The kind of bolt.
    pub of: BoltTrait,
    /// Whether it must not be cut at all; otherwise only with the care that is named.
    pub forbids: bool,
    /// Why, and what to do.
    pub why: &'static str,
    /// Where that is from.
    #[cfg_attr(feature = "serde", serde(serialize_with = "crate::source::citation"))]
    pub source: &'static Method,
}

impl BoltTrait {
    /// Every trait.
    ///
    /// ```
    /// assert_eq!(shankline::joint::BoltTrait::ALL.len(), 8);
    /// ```
    pub const ALL: [Self; 8] = [
        Self::PreloadedStructural,
        Self::SplineEnd,
        Self::DrilledShank,
        Self::Aircraft,
        Self::MarkedEnd,
        Self::PlatedInCorrosiveService,
        Self::Galvanized,
        Self::SpecialPoint,
    ];

    /// What speaks against cutting such a bolt.
    ///
    /// ```
    /// use shankline::joint::BoltTrait;
    /// for of in BoltTrait::ALL {
    ///     let objection = of.cut_objection();
    ///     println!("{}: {}", if objection.forbids { "never" } else { "with care" }, objection.why);
    /// }
    /// ```
    #[must_use]
    pub const fn cut_objection(self) -> CutObjection {
        const PRACTICE: &Method = methods::COMMON_PRACTICE;
        let (forbids, why, source) = match self {
            Self::PreloadedStructural => (
                true,
                "its thread length belongs to its standard and its assembly was tested as supplied: buy the right length",
                methods::CUT_STRUCTURAL,
            ),
            Self::SplineEnd => (
                true,
                "the wrench holds the bolt by the spline and tears it off at the right torque",
                PRACTICE,
            ),
            Self::DrilledShank => (
                true,
                "the hole for the cotter pin is where the castle nut needs it: the cut would open or lose it",
                PRACTICE,
            ),
            Self::Aircraft => (
                true,
                "grips come in steps of 1/8 in and washers make up the rest; a bolt too long is replaced by a shorter one",
                methods::CUT_AIRCRAFT,
            ),
            Self::MarkedEnd => (
                true,
                "the mark that shows its grade or maker would be lost: cut the other end, or mark it again as its standard says",
                methods::CUT_MARKED,
            ),
            Self::PlatedInCorrosiveService => (
                true,
                "thin plating cannot be made good in the shop, and rust starts at the bare thread: buy the right length",
                PRACTICE,
            ),
            Self::Galvanized => (
                false,
                "coat the bare end with zinc-rich paint",
                methods::CUT_GALVANIZED,
            ),
            Self::SpecialPoint => (true, "its point is part of its function", PRACTICE),
        };
        CutObjection {
            of: self,
            forbids,
            why,
            source,
        }
    }

    /// The rules for a bolt with these traits: with [`CutRule::Never`] if any of them forbids it.
    ///
    /// ```
    /// use shankline::{joint::BoltTrait, prelude::*};
    /// let rules = LengthRules::fabrication(UnitSystem::Si);
    /// let drilled = BoltTrait::rules_for(&[BoltTrait::DrilledShank], rules);
    /// assert_eq!(drilled.cut, CutRule::Never);
    /// assert_eq!(BoltTrait::rules_for(&[BoltTrait::Galvanized], rules), rules);
    /// ```
    #[must_use]
    pub fn rules_for(traits: &[Self], rules: LengthRules) -> LengthRules {
        if traits.iter().any(|of| of.cut_objection().forbids) {
            rules.with_cut(CutRule::Never)
        } else {
            rules
        }
    }
}
