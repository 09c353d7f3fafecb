//! What the parts of a joint are coated with, how wet they live, and which of them touch.

use alloc::vec::Vec;
use core::fmt;

use crate::caution::{Caution, Cautions};
use crate::material::{BoltGrade, Finish, NutGrade, Severity};
use crate::tables::galvanic::{AnodicIndex, Exposure, Metal};
use crate::units::{ElectricPotential, volts};

/// A part of a joint, for [`Finding`](super::Finding)s on two of them.
///
/// ```
/// use shankline::joint::Part;
/// assert_eq!(Part::Ply(2).to_string(), "ply 2");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Part {
    /// The bolt.
    Bolt,
    /// The nut.
    Nut,
    /// The washers under the head.
    WasherUnderHead,
    /// The washers under the nut.
    WasherUnderNut,
    /// A ply, counted from 1 at the head.
    Ply(usize),
}

impl fmt::Display for Part {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bolt => f.pad("bolt"),
            Self::Nut => f.pad("nut"),
            Self::WasherUnderHead => f.pad("washer under the head"),
            Self::WasherUnderNut => f.pad("washer under the nut"),
            Self::Ply(number) => write!(f, "ply {number}"),
        }
    }
}

/// Which parts a joint has, for [`parts_in_contact`](Self::parts_in_contact).
///
/// ```
/// use shankline::joint::{JointParts, Part};
/// let parts = JointParts { plies: 2, nut: true, washer_under_nut: true, ..JointParts::default() };
/// let pairs = parts.parts_in_contact();
/// assert!(pairs.contains(&(Part::WasherUnderNut, Part::Ply(2))));
/// assert!(!pairs.contains(&(Part::Nut, Part::Ply(2)))); // the washer is between them
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct JointParts {
    /// How many plies.
    pub plies: usize,
    /// Whether there is a nut; a tapped part is the last ply otherwise.
    pub nut: bool,
    /// Whether there are washers under the head.
    pub washer_under_head: bool,
    /// Whether there are washers under the nut.
    pub washer_under_nut: bool,
}

impl JointParts {
    /// Every two parts that touch: the bolt all others, nut or washers the outer plies, and each ply the next.
    ///
    /// ```
    /// use shankline::joint::{JointParts, Part};
    /// let tapped = JointParts { plies: 1, ..JointParts::default() };
    /// assert_eq!(tapped.parts_in_contact(), [(Part::Bolt, Part::Ply(1))]);
    /// ```
    #[must_use]
    pub fn parts_in_contact(&self) -> Vec<(Part, Part)> {
        let mut pairs = Vec::with_capacity(2 * self.plies + 5);
        let under_nut = self.nut && self.washer_under_nut;
        if self.nut {
            pairs.push((Part::Bolt, Part::Nut));
        }
        if self.washer_under_head {
            pairs.push((Part::Bolt, Part::WasherUnderHead));
            if self.plies > 0 {
                pairs.push((Part::WasherUnderHead, Part::Ply(1)));
            }
        }
        for number in 1..=self.plies {
            pairs.push((Part::Bolt, Part::Ply(number)));
            if number < self.plies {
                pairs.push((Part::Ply(number), Part::Ply(number + 1)));
            }
        }
        let last = if under_nut {
            pairs.push((Part::Bolt, Part::WasherUnderNut));
            pairs.push((Part::Nut, Part::WasherUnderNut));
            Part::WasherUnderNut
        } else {
            Part::Nut
        };
        if self.nut && self.plies > 0 {
            pairs.push((last, Part::Ply(self.plies)));
        }
        pairs
    }
}

/// Two metals in contact.
///
/// ```
/// use shankline::joint::{Part, galvanic_pair};
/// use shankline::material::Severity;
/// use shankline::tables::galvanic::{Exposure, Metal};
/// let washer = (Part::WasherUnderHead, Some(Metal::Copper));
/// let ply = (Part::Ply(1), Some(Metal::Aluminium));
/// let pair = galvanic_pair(Exposure::Harsh, washer, ply);
/// assert_eq!((pair.anode, pair.severity()), (Part::Ply(1), Severity::Fault));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct GalvanicPair {
    /// The part that corrodes; one of the two if the difference is not known.
    pub anode: Part,
    /// The other.
    pub cathode: Part,
    /// Difference of the anodic indices; none if a metal is not given, or its index not known.
    pub difference: Option<ElectricPotential>,
    /// The greatest difference for the exposure.
    pub permitted: ElectricPotential,
    /// What was recalled of the two indices.
    pub(super) recalled: [Option<Caution>; 2],
}

/// Indices have two decimals: half a unit of the third keeps 0.40 - 0.25 at 0.15.
const SLACK: ElectricPotential = volts(5e-4);

impl GalvanicPair {
    /// What it weighs: a fault beyond the permitted difference, undecided without one.
    ///
    /// ```
    /// use shankline::joint::{Part, galvanic_pair};
    /// use shankline::material::Severity;
    /// use shankline::tables::galvanic::{Exposure, Metal};
    /// let steel = Some(Metal::Steel);
    /// let pair = galvanic_pair(Exposure::Harsh, (Part::Bolt, steel), (Part::Nut, steel));
    /// assert_eq!(pair.severity(), Severity::Fine);
    /// ```
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self.difference {
            Some(difference) if difference > self.permitted + SLACK => Severity::Fault,
            Some(_) => Severity::Fine,
            None => Severity::Undecided,
        }
    }

    /// What the user must be told of the indices.
    ///
    /// ```
    /// use shankline::joint::{Part, galvanic_pair};
    /// use shankline::tables::galvanic::{Exposure, Metal};
    /// let zinc = Some(Metal::HotDipZinc); // recalled
    /// let pair = galvanic_pair(Exposure::Harsh, (Part::Bolt, zinc), (Part::Nut, zinc));
    /// assert_eq!(pair.cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let [first, second] = self.recalled;
        Cautions::default().with(first).with(second)
    }
}

/// Judges two parts in contact, each with the metal that lies outermost ([`Finish::metal`]); none where
/// nobody gives it.
///
/// Source: the anodic indices and the limits of [`Exposure`].
///
/// ```
/// use shankline::joint::{Part, galvanic_pair};
/// use shankline::material::Severity;
/// use shankline::tables::galvanic::{Exposure, Metal};
/// let bolt = (Part::Bolt, Some(Metal::Zinc));
/// let pair = galvanic_pair(Exposure::Normal, bolt, (Part::WasherUnderNut, None));
/// assert_eq!(pair.severity(), Severity::Undecided);
/// ```
#[must_use]
pub fn galvanic_pair(
    exposure: Exposure,
    a: (Part, Option<Metal>),
    b: (Part, Option<Metal>),
) -> GalvanicPair {
    let permitted = exposure.permitted();
    let row = |metal: Option<Metal>| metal.and_then(AnodicIndex::of);
    let (Some(first), Some(second)) = (row(a.1), row(b.1)) else {
        return GalvanicPair {
            anode: a.0,
            cathode: b.0,
            difference: None,
            permitted,
            recalled: [None; 2],
        };
    };
    let (anode, cathode) = if first.anodic_index >= second.anodic_index {
        (a.0, b.0)
    } else {
        (b.0, a.0)
    };
    GalvanicPair {
        anode,
        cathode,
        difference: Some((first.anodic_index - second.anodic_index).abs()),
        permitted,
        recalled: [first, second].map(AnodicIndex::recalled),
    }
}

/// Whether the threads of bolt and nut may gall, that is weld to each other while they are turned.
///
/// ```
/// use shankline::joint::Galling;
/// assert!(Galling::Dry.to_string().contains("lubricant"));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum Galling {
    /// Metals that gall, without a lubricant.
    Dry,
    /// Metals that gall, and nobody says whether there is a lubricant.
    LubricantUnknown,
}

impl Galling {
    /// What it weighs. No standard read has a number or a rule, so it stays a caution.
    ///
    /// ```
    /// use shankline::{joint::Galling, material::Severity};
    /// assert_eq!(Galling::Dry.severity(), Severity::Caution);
    /// ```
    #[must_use]
    pub const fn severity(self) -> Severity {
        Severity::Caution
    }
}

impl fmt::Display for Galling {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(match self {
            Self::Dry => {
                "bolt and nut are of metals that gall: use a lubricant, such as molybdenum disulphide or \
                 wax, clean threads and slow turns, or unlike steels [makers' articles, 2015 to 2023]"
            }
            Self::LubricantUnknown => {
                "bolt and nut are of metals that gall, and no lubricant is named: use one, such as \
                 molybdenum disulphide or wax, and turn slowly [makers' articles, 2015 to 2023]"
            }
        })
    }
}

/// Whether the threads of bolt and nut may gall: stainless steel, aluminium and titanium on each other,
/// without a lubricant. A grade of stainless steel whose finish nobody gives is taken as bare.
///
/// Source: articles of makers, 2015 to 2023; ISO 3506 gives no number.
///
/// ```
/// use shankline::joint::{Galling, galling};
/// use shankline::prelude::*;
/// let bolt = BoltGrade::from(StainlessClass::A4_70);
/// let nut = Some(NutGrade::Iso3506_2ClassA4_70);
/// assert_eq!(galling((bolt, None), (nut, None), None), Some(Galling::LubricantUnknown));
/// assert_eq!(galling((bolt, None), (nut, None), Some(true)), None);
/// ```
#[must_use]
pub fn galling(
    (bolt, bolt_finish): (BoltGrade, Option<Finish>),
    (nut, nut_finish): (Option<NutGrade>, Option<Finish>),
    lubricated: Option<bool>,
) -> Option<Galling> {
    let of_nut = nut.is_some_and(NutGrade::is_stainless);
    let both = galls(bolt_finish, bolt.is_stainless()) && galls(nut_finish, of_nut);
    match lubricated {
        _ if !both => None,
        Some(true) => None,
        Some(false) => Some(Galling::Dry),
        None => Some(Galling::LubricantUnknown),
    }
}

fn galls(finish: Option<Finish>, stainless: bool) -> bool {
    match finish {
        None => stainless,
        Some(Finish::Bare(metal)) => matches!(
            metal,
            Metal::Stainless12Chromium
                | Metal::Stainless18Chromium
                | Metal::Aluminium
                | Metal::Aluminium2000
                | Metal::Titanium
        ),
        Some(_) => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::material::{AstmGrade, PropertyClass, StainlessClass};

    #[test]
    fn washers_touch_what_they_lie_between() {
        let bare = JointParts {
            plies: 2,
            nut: true,
            ..JointParts::default()
        };
        assert_eq!(
            bare.parts_in_contact(),
            [
                (Part::Bolt, Part::Nut),
                (Part::Bolt, Part::Ply(1)),
                (Part::Ply(1), Part::Ply(2)),
                (Part::Bolt, Part::Ply(2)),
                (Part::Nut, Part::Ply(2)),
            ]
        );
        let washered = JointParts {
            washer_under_head: true,
            washer_under_nut: true,
            ..bare
        };
        let pairs = washered.parts_in_contact();
        for pair in [
            (Part::Bolt, Part::WasherUnderHead),
            (Part::WasherUnderHead, Part::Ply(1)),
            (Part::Bolt, Part::WasherUnderNut),
            (Part::Nut, Part::WasherUnderNut),
            (Part::WasherUnderNut, Part::Ply(2)),
        ] {
            assert!(pairs.contains(&pair), "{pair:?}");
        }
        assert!(!pairs.contains(&(Part::Nut, Part::Ply(2))));
        let tapped = JointParts {
            nut: false,
            ..washered
        };
        assert!(
            !tapped
                .parts_in_contact()
                .iter()
                .any(|pair| pair.0 == Part::Nut || pair.1 == Part::WasherUnderNut)
        );
        assert!(JointParts::default().parts_in_contact().is_empty());
    }

    #[test]
    fn the_permitted_difference_is_permitted() {
        // 0.85 - 0.70 by the table, which is 0.15.
        let of = |exposure, a, b| galvanic_pair(exposure, (Part::Bolt, a), (Part::Ply(1), b));
        let steel = Some(Metal::Steel);
        let same = of(Exposure::Harsh, steel, steel);
        assert_eq!(same.severity(), Severity::Fine);
        let stainless = of(Exposure::Harsh, Some(Metal::Stainless18Chromium), steel);
        assert_eq!(stainless.anode, Part::Ply(1));
        assert_eq!(stainless.severity(), Severity::Fault);
        assert_eq!(
            of(Exposure::Harsh, None, steel).severity(),
            Severity::Undecided
        );
    }

    /// The index of hot-dip zinc was recalled, that of steel was read.
    #[test]
    fn recalled_indices_are_told() {
        let told = |a, b| {
            let pair = galvanic_pair(Exposure::Harsh, (Part::Bolt, Some(a)), (Part::Nut, Some(b)));
            pair.cautions().iter().count()
        };
        for (a, b) in [
            (Metal::HotDipZinc, Metal::Steel),
            (Metal::Steel, Metal::HotDipZinc),
            (Metal::HotDipZinc, Metal::HotDipZinc),
        ] {
            assert_eq!(told(a, b), 1, "{a:?} {b:?}");
        }
        assert_eq!(told(Metal::Steel, Metal::Steel), 0);
    }

    #[test]
    fn stainless_on_stainless_galls() {
        let bare = Some(Finish::Bare(Metal::Stainless18Chromium));
        let steel = Some(Finish::Bare(Metal::Steel));
        let a4 = BoltGrade::from(StainlessClass::A4_70);
        let judge = |bolt, nut, lubricated| galling(bolt, (None, nut), lubricated);
        assert_eq!(judge((a4, None), bare, Some(false)), Some(Galling::Dry));
        assert_eq!(
            judge((a4, bare), bare, None),
            Some(Galling::LubricantUnknown)
        );
        assert_eq!(judge((a4, bare), bare, Some(true)), None);
        assert_eq!(judge((a4, bare), steel, None), None);
        let class = BoltGrade::from(PropertyClass::Class8_8);
        assert_eq!(judge((class, None), bare, None), None);
        let f593 = BoltGrade::from(AstmGrade::F593Group2Cw1);
        assert!(judge((f593, None), bare, None).is_some());
    }
}
