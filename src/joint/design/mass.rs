//! Mass of the parts of a joint, from their geometry.

use alloc::{format, string::String};

use crate::joint::Candidate;
use crate::parts::{Nut, ScrewLength, ScrewProduct, Washer};
use crate::tables::bolts::StructuralBolt;
use crate::tables::screws::{HexCapScrew, HexScrew, ProductGrade};
use crate::tables::sockets::SocketHeadCapScrew;
use crate::thread::Thread;
use crate::units::{Area, Length, Mass, MassDensity, UnitSystem, Volume, from_base};

/// Density of steel, 7850 kg/m3: common practice, no source. Stainless steel is 1 to 2 % heavier.
const STEEL: MassDensity = from_base(7850.0);

/// Mass of one bolt with its nut and washers: an estimate, of steel, from nominal dimensions.
///
/// | part | taken as |
/// |---|---|
/// | head | hexagonal prism, (sqrt 3 / 2) s^2 k; a full cylinder for socket screws |
/// | shank | cylinder of the nominal diameter, to the middle of the run-out |
/// | thread | cylinder of the basic pitch diameter, to the end of the bolt, or of the cut |
/// | nut | hexagonal prism, (sqrt 3 / 2) s^2 m, less a hole of the basic pitch diameter |
/// | washer | ring of its nominal diameters and thickness |
///
/// Chamfers, washer faces, flanges, inserts and key sockets are left out, which is some per cent. Washers
/// that are not from the tables weigh nothing here.
///
/// Source: own geometry.
///
/// ```
/// use shankline::joint::PartsMass;
/// use shankline::units::UnitSystem;
/// fn print(mass: &PartsMass) {
///     println!("{}", mass.text(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct PartsMass {
    /// The bolt, after the cut if there is a fixed one.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize"))]
    pub bolt: Mass,
    /// The nut.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize"))]
    pub nut: Mass,
    /// All washers.
    #[cfg_attr(feature = "serde", serde(serialize_with = "serialize"))]
    pub washers: Mass,
}

// serde's `serialize_with` hands over a reference.
#[cfg(feature = "serde")]
#[allow(clippy::trivially_copy_pass_by_ref)]
fn serialize<S: serde::Serializer>(mass: &Mass, serializer: S) -> Result<S::Ok, S::Error> {
    // To the milligram: it is an estimate.
    let value = crate::math::round(mass.value * 1e6) / 1e6;
    crate::units::quantity::serialize_value_and_unit(value, "kg", serializer)
}

impl PartsMass {
    /// All parts together.
    ///
    /// ```
    /// use shankline::joint::PartsMass;
    /// use shankline::units::Mass;
    /// fn of_a_joint(mass: &PartsMass, bolts: f64) -> Mass {
    ///     bolts * mass.total()
    /// }
    /// ```
    #[must_use]
    pub fn total(&self) -> Mass {
        self.bolt + self.nut + self.washers
    }

    /// In the units of the reader.
    ///
    /// ```
    /// # use shankline::joint::PartsMass;
    /// # use shankline::units::UnitSystem;
    /// fn on_the_label(mass: &PartsMass) -> String {
    ///     mass.text(UnitSystem::UsCustomary)
    /// }
    /// ```
    #[must_use]
    pub fn text(&self, system: UnitSystem) -> String {
        shown_mass(self.total(), system)
    }
}

pub(super) fn shown_mass(mass: Mass, system: UnitSystem) -> String {
    /// 1 lb, by definition.
    const POUND: f64 = 0.453_592_37;
    match system {
        UnitSystem::Si => format!("{:.3} kg", mass.value),
        UnitSystem::UsCustomary => format!("{:.3} lb", mass.value / POUND),
    }
}

/// Width across flats and height of a head; of a socket head its diameter and height.
enum Head {
    Hexagon(Length, Length),
    Cylinder(Length, Length),
}

impl Head {
    fn of(product: ScrewProduct, thread: &Thread) -> Option<Self> {
        let diameter = thread.nominal_diameter();
        Some(match product {
            ScrewProduct::HexCapScrew => {
                let row = HexCapScrew::find(diameter)?;
                Self::Hexagon(row.width_across_flats_basic, row.head_height_basic)
            }
            ScrewProduct::Iso4014 | ScrewProduct::Iso4017 | ScrewProduct::Iso8765 => {
                let row = HexScrew::find(diameter, ProductGrade::A)
                    .or_else(|| HexScrew::find(diameter, ProductGrade::B))?;
                // The nominal width is the greatest.
                Self::Hexagon(row.width_across_flats_max, row.head_height_nominal)
            }
            ScrewProduct::StructuralBolt | ScrewProduct::En14399_3 | ScrewProduct::En14399_4 => {
                let row = StructuralBolt::find(thread).ok()?;
                let height = (row.head_height_min + row.head_height_max) / 2.0;
                Self::Hexagon(
                    row.width_across_flats_basic
                        .unwrap_or(row.width_across_flats_max),
                    row.head_height_basic.unwrap_or(height),
                )
            }
            ScrewProduct::SocketHeadCapScrew | ScrewProduct::Iso4762 => {
                let row = SocketHeadCapScrew::find(thread).ok()?;
                Self::Cylinder(row.head_diameter_max?, row.head_height_max?)
            }
            ScrewProduct::HexBolt
            | ScrewProduct::HeavyHexBolt
            | ScrewProduct::MetricHexCapScrew => return None,
        })
    }

    fn volume(&self) -> Volume {
        match *self {
            Self::Hexagon(width, height) => hexagon(width) * height,
            Self::Cylinder(diameter, height) => circle(diameter) * height,
        }
    }
}

fn hexagon(width_across_flats: Length) -> Area {
    crate::math::sqrt(3.0) / 2.0 * (width_across_flats * width_across_flats)
}

fn circle(diameter: Length) -> Area {
    core::f64::consts::FRAC_PI_4 * (diameter * diameter)
}

/// A bolt of a product and thread, whatever its length.
pub(super) struct BoltMass {
    head: Volume,
    shank: Area,
    thread: Area,
}

impl BoltMass {
    /// None where the head is not known.
    pub(super) fn new(product: ScrewProduct, thread: &Thread) -> Option<Self> {
        Some(Self {
            head: Head::of(product, thread)?.volume(),
            shank: circle(thread.nominal_diameter()),
            thread: circle(thread.basic_pitch_diameter()),
        })
    }

    fn of(&self, screw: &ScrewLength, end: Length) -> Mass {
        let shank = if screw.fully_threaded {
            Length::default()
        } else {
            end.min((screw.body_length_min + screw.grip_gaging_length_max) / 2.0)
        };
        STEEL * (self.head + self.shank * shank + self.thread * (end - shank))
    }
}

/// Mass of a nut; none where its width is not known.
pub(super) fn of_nut(nut: &Nut, thread: &Thread) -> Option<Mass> {
    let limits = || Some((nut.width_across_flats_min? + nut.width_across_flats_max?) / 2.0);
    let width = nut
        .width_across_flats_basic
        .or_else(limits)
        .or(nut.width_across_flats_max)?;
    let height = nut.height().ok()?.nominal;
    Some(STEEL * ((hexagon(width) - circle(thread.basic_pitch_diameter())) * height))
}

/// Mass of a washer; none where its diameters are not known.
pub(super) fn of_washer(washer: &Washer) -> Option<Mass> {
    let outside = washer
        .outside_diameter_nominal
        .or(washer.outside_diameter_max)?;
    let inside = washer
        .inside_diameter_nominal
        .or(washer.inside_diameter_min)?;
    let thickness = washer.thickness().ok()?.nominal;
    Some(STEEL * ((circle(outside) - circle(inside)) * thickness))
}

/// Mass of the parts of one candidate.
pub(super) fn of_parts(
    bolt: &BoltMass,
    nut: Mass,
    washer: Mass,
    washers: usize,
    candidate: &Candidate,
) -> PartsMass {
    let end = candidate
        .cut
        .map_or(candidate.screw.nominal, |cut| cut.length);
    // Counts are small: exact.
    #[allow(clippy::cast_precision_loss)]
    let count = washers as f64;
    PartsMass {
        bolt: bolt.of(&candidate.screw, end),
        nut,
        washers: count * washer,
    }
}
