//! Modes of failure, and levels of a resistance.

use core::{fmt, str::FromStr};

use crate::error::Error;
use crate::names::{Key, Named, code_of, keys, label_of};
use crate::source::Method;

/// What a resistance is: how much of the safety is already in it.
///
/// The load has to match: a service load against a design resistance leaves the load factors out, and a
/// factored load against an allowable one counts them twice.
///
/// ```
/// use shankline::strength::check::Level;
/// assert_eq!(Level::Design.to_string(), "design");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Level {
    /// No factor taken off: nominal or characteristic strength, ultimate strength of handbooks. A load
    /// that just equals it is at the limit: the factor is yours to add.
    Nominal,
    /// For factored loads (limit states, LRFD): the resistance or partial factor is in it, the load
    /// factors are in the load.
    Design,
    /// For service loads (ASD, machine design, limit loads of aircraft): the whole safety factor is in it.
    Allowable,
}

impl Level {
    /// Whether loads have to carry their load factors before they are held against this level: so for the
    /// design level of limit-state codes. Service loads belong to the allowable level; at the nominal one a
    /// load that just equals the resistance is at the limit, and the factor is the caller's.
    ///
    /// Source: ASCE 7 (load combinations for strength design and for allowable stress design are not to be
    /// mixed), as told in reproductions.
    ///
    /// ```
    /// use shankline::strength::check::Level;
    /// assert!(Level::Design.wants_factored_loads());
    /// assert!(!Level::Allowable.wants_factored_loads());
    /// ```
    #[must_use]
    pub const fn wants_factored_loads(self) -> bool {
        matches!(self, Self::Design)
    }
}

/// Code and label of every member.
const LEVEL_NAMES: [Named<Level>; 3] = [
    (Level::Nominal, "nominal", "nominal"),
    (Level::Design, "design", "design"),
    (Level::Allowable, "allowable", "allowable"),
];

impl Key for Level {
    const FAMILY: &'static str = "level of a resistance";
    const ALL: &'static [Self] = &keys(&LEVEL_NAMES);

    fn code(self) -> &'static str {
        code_of(&LEVEL_NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&LEVEL_NAMES, self)
    }
}

impl FromStr for Level {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for Level {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// A mode of failure of a bolted joint, or something else that it must satisfy.
///
/// ```
/// use shankline::strength::check::Mode;
/// assert_eq!(Mode::TearOut.to_string(), "tear-out");
/// assert!(Mode::ALL.contains(&Mode::Locking));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub enum Mode {
    /// The loads themselves: whether they can be held against the resistances.
    Loads,
    /// The length: shear planes on shank, a nut that clamps, protrusion.
    Length,
    /// Shear of the bolt.
    BoltShear,
    /// Tension of the bolt.
    BoltTension,
    /// Bending of the bolt or pin.
    BoltBending,
    /// Tension, shear and bending of the bolt at once, those that act.
    Combined,
    /// Failure under repeated load.
    Fatigue,
    /// Heat and cold beyond what bolt, nut, coating or ply is specified for.
    Temperature,
    /// What its coating does to the bolt: hydrogen, forbidden coatings.
    Coating,
    /// The bolt is stretched permanently while it is tightened.
    Tightening,
    /// The least preload reaches what its code requires.
    Preload,
    /// Bolt and nut belong together.
    Pairing,
    /// Stripping of the threads.
    Stripping,
    /// Coated threads start, and overlap enough.
    ThreadFit,
    /// Nut or screw stays where it is.
    Locking,
    /// Threads seize while they are turned.
    Galling,
    /// Whether bolt and nut may be used again.
    Reuse,
    /// Bearing of the bolt on the ply, by the strength of the ply.
    Bearing,
    /// Bearing of the ply on the bolt, by the strength of the bolt.
    BoltBearing,
    /// The ply shears out between the hole and its end, or the next hole.
    TearOut,
    /// The ply breaks across its holes.
    NetSection,
    /// The ply yields away from its holes.
    GrossSection,
    /// A block of the ply tears out.
    BlockShear,
    /// Yielding in timber: it is crushed under the bolt, or the bolt bends in it, whichever comes first.
    TimberYield,
    /// Distances of holes from edges and from each other.
    Distances,
    /// Kind and width of the holes.
    Holes,
    /// Washers that a rule demands.
    Washers,
    /// Pressure under head, nut and washers.
    Pressure,
    /// Head or nut is pulled through a ply.
    PullThrough,
    /// Plies that bend add to the load along the bolt.
    Prying,
    /// The plies part under the head or the nut, or the clamp force is gone.
    Separation,
    /// The joint slips.
    Slip,
    /// Preload lost to settling, relaxation and creep.
    Settling,
    /// Corrosion between unlike metals.
    Corrosion,
}

impl Mode {
    /// Every mode, in the order of a report.
    ///
    /// ```
    /// use shankline::strength::check::Mode;
    /// assert_eq!(Mode::ALL[2], Mode::BoltShear);
    /// ```
    pub const ALL: [Self; 34] = [
        Self::Loads,
        Self::Length,
        Self::BoltShear,
        Self::BoltTension,
        Self::BoltBending,
        Self::Combined,
        Self::Fatigue,
        Self::Temperature,
        Self::Coating,
        Self::Tightening,
        Self::Preload,
        Self::Pairing,
        Self::Stripping,
        Self::ThreadFit,
        Self::Locking,
        Self::Galling,
        Self::Reuse,
        Self::Bearing,
        Self::BoltBearing,
        Self::TearOut,
        Self::NetSection,
        Self::GrossSection,
        Self::BlockShear,
        Self::TimberYield,
        Self::Distances,
        Self::Holes,
        Self::Washers,
        Self::Pressure,
        Self::PullThrough,
        Self::Prying,
        Self::Separation,
        Self::Slip,
        Self::Settling,
        Self::Corrosion,
    ];
}

/// Code and label of every member.
const MODE_NAMES: [Named<Mode>; 34] = [
    (Mode::Loads, "loads", "loads"),
    (Mode::Length, "length", "length"),
    (Mode::BoltShear, "bolt_shear", "bolt shear"),
    (Mode::BoltTension, "bolt_tension", "bolt tension"),
    (Mode::BoltBending, "bolt_bending", "bolt bending"),
    (Mode::Combined, "combined", "combined loads"),
    (Mode::Fatigue, "fatigue", "fatigue"),
    (Mode::Temperature, "temperature", "temperature"),
    (Mode::Coating, "coating", "coating of the bolt"),
    (Mode::Tightening, "tightening", "tightening"),
    (Mode::Preload, "preload", "least preload"),
    (Mode::Pairing, "pairing", "pair of bolt and nut"),
    (Mode::Stripping, "stripping", "thread stripping"),
    (Mode::ThreadFit, "thread_fit", "fit of the threads"),
    (Mode::Locking, "locking", "locking"),
    (Mode::Galling, "galling", "galling"),
    (Mode::Reuse, "reuse", "reuse"),
    (Mode::Bearing, "bearing", "bearing"),
    (Mode::BoltBearing, "bolt_bearing", "bearing on the bolt"),
    (Mode::TearOut, "tear_out", "tear-out"),
    (Mode::NetSection, "net_section", "net section"),
    (Mode::GrossSection, "gross_section", "gross section"),
    (Mode::BlockShear, "block_shear", "block shear"),
    (Mode::TimberYield, "timber_yield", "yield in timber"),
    (Mode::Distances, "distances", "distances of holes"),
    (Mode::Holes, "holes", "holes"),
    (Mode::Washers, "washers", "washers"),
    (Mode::Pressure, "pressure", "pressure under head and nut"),
    (Mode::PullThrough, "pull_through", "pull-through"),
    (Mode::Prying, "prying", "prying"),
    (Mode::Separation, "separation", "separation"),
    (Mode::Slip, "slip", "slip"),
    (Mode::Settling, "settling", "preload lost"),
    (Mode::Corrosion, "corrosion", "corrosion"),
];

impl Key for Mode {
    const FAMILY: &'static str = "mode of failure";
    const ALL: &'static [Self] = &Self::ALL;

    fn code(self) -> &'static str {
        code_of(&MODE_NAMES, self)
    }

    fn label(self) -> &'static str {
        label_of(&MODE_NAMES, self)
    }
}

impl FromStr for Mode {
    type Err = Error;

    /// [`Key::read`].
    fn from_str(text: &str) -> Result<Self, Error> {
        Self::read(text)
    }
}

impl fmt::Display for Mode {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.label())
    }
}

/// What a row of the methods decides, by its codes.
fn read_all<K: Key>(codes: Option<&'static str>) -> impl Iterator<Item = K> {
    codes
        .unwrap_or_default()
        .split_ascii_whitespace()
        .filter_map(|code| K::ALL.iter().copied().find(|key| key.code() == code))
}

impl Method {
    /// The modes of failure that the method decides; none for a formula on the way.
    ///
    /// ```
    /// use shankline::{source::Method, strength::check::Mode};
    /// let bearing = Method::get("en-1993-1-8-2005-table-3.4-bearing").unwrap();
    /// assert!(bearing.decides().eq([Mode::Bearing]));
    /// ```
    pub fn decides(&self) -> impl Iterator<Item = Mode> {
        read_all(self.modes)
    }

    /// The levels its resistances have; none for a rule that has none.
    ///
    /// ```
    /// use shankline::{source::Method, strength::check::Level};
    /// let bearing = Method::get("en-1993-1-8-2005-table-3.4-bearing").unwrap();
    /// assert!(bearing.levels().eq([Level::Nominal, Level::Design]));
    /// ```
    pub fn levels(&self) -> impl Iterator<Item = Level> {
        read_all(self.levels)
    }
}
