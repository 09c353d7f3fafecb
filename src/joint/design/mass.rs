//! Mass of the parts of a joint, from their geometry.

use alloc::{format, string::String};

use super::Design;
use crate::derivation::{Derivation, Step};
use crate::joint::Candidate;
use crate::parts::{Nut, ScrewLength, ScrewProduct, Washer};
use crate::tables::bolts::StructuralBolt;
use crate::tables::hr_bolts::HrBolt;
use crate::tables::methods;
use crate::tables::screws::{HexCapScrew, HexScrew, ProductGrade};
use crate::tables::sockets::SocketHeadCapScrew;
use crate::thread::Thread;
use crate::units::{Area, Density, Length, Mass, UnitSystem, Volume, from_base};

/// Density of steel, 7850 kg/m3, as DIN 931 Supplement 1 (1986) takes it for its masses of bolts. Austenitic
/// stainless steel is 1 to 2 % heavier: common practice, no source.
const STEEL: Density = from_base(7850.0);

/// Mass of one bolt with its nut and washers: an estimate, of steel, from nominal dimensions.
///
/// | part | taken as |
/// |---|---|
/// | head | hexagonal prism, (sqrt 3 / 2) s^2 k |
/// | socket head | cylinder of its greatest diameter and height, less the prism of its key, at the least depth |
/// | shank | cylinder of the nominal diameter, to the middle of the run-out |
/// | thread | cylinder of the basic pitch diameter, to the end of the bolt, or of the cut |
/// | nut | hexagonal prism, (sqrt 3 / 2) s^2 m, less a hole of the basic pitch diameter |
/// | washer | ring of its nominal diameters and thickness |
///
/// Chamfers, washer faces, flanges and inserts are left out, which is some per cent. Washers
/// that are not from the tables weigh nothing here.
///
/// Source: own geometry; density of DIN 931 Supplement 1 (1986). A supplier's table of ISO 4762 screws agrees to
/// 3 % from M6, 6 % below.
///
/// ```
/// use shankline::joint::PartsMass;
/// use shankline::units::UnitSystem;
/// fn print(mass: &PartsMass) {
///     println!("{}", mass.text(UnitSystem::Si));
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[non_exhaustive]
pub struct PartsMass {
    /// The bolt, after the cut if there is a fixed one.
    #[cfg_attr(feature = "serde", serde(with = "kilograms"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Kilograms"))]
    pub bolt: Mass,
    /// The nut.
    #[cfg_attr(feature = "serde", serde(with = "kilograms"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Kilograms"))]
    pub nut: Mass,
    /// All washers.
    #[cfg_attr(feature = "serde", serde(with = "kilograms"))]
    #[cfg_attr(feature = "schema", schemars(with = "crate::schema::Kilograms"))]
    pub washers: Mass,
    /// How many washers that is: those of the tables.
    pub washers_weighed: usize,
}

/// Masses in data files, in kg and no other unit: pounds are a force there as often as a mass.
#[cfg(feature = "serde")]
mod kilograms {
    use alloc::string::String;

    use serde::{Deserialize, Deserializer, Serializer, de};

    use crate::units::{Mass, from_base, quantity};

    #[derive(Deserialize)]
    #[serde(crate = "crate::objects", deny_unknown_fields)]
    struct Written {
        value: f64,
        unit: String,
    }

    // serde's `with` hands over a reference.
    #[allow(clippy::trivially_copy_pass_by_ref)]
    pub(super) fn serialize<S: Serializer>(mass: &Mass, serializer: S) -> Result<S::Ok, S::Error> {
        quantity::serialize_value_and_unit(mass.value, "kg", serializer)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(
        deserializer: D,
    ) -> Result<Mass, D::Error> {
        let Written { value, unit } = Written::deserialize(deserializer)?;
        if unit == "kg" {
            Ok(from_base(value))
        } else {
            let why = alloc::format!("\"{unit}\" is not kg, in which masses are written");
            Err(de::Error::custom(why))
        }
    }
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

    /// As it is written: it is an estimate.
    pub(in crate::joint) fn to_the_milligram(self) -> Self {
        let round = |mass: Mass| from_base(crate::math::round(mass.value * 1e6) / 1e6);
        Self {
            bolt: round(self.bolt),
            nut: round(self.nut),
            washers: round(self.washers),
            ..self
        }
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

/// The head of a bolt.
#[derive(Clone, Copy)]
enum Head {
    Hexagon {
        width: Length,
        height: Length,
    },
    Socket {
        diameter: Length,
        height: Length,
        key: Length,
        depth: Length,
    },
}

impl Head {
    fn of(product: ScrewProduct, thread: &Thread) -> Option<Self> {
        let diameter = thread.nominal_diameter();
        Some(match product {
            ScrewProduct::HexCapScrew => {
                let row = HexCapScrew::get(diameter)?;
                Self::Hexagon {
                    width: row.width_across_flats_basic,
                    height: row.head_height_basic,
                }
            }
            ScrewProduct::Iso4014 | ScrewProduct::Iso4017 | ScrewProduct::Iso8765 => {
                let row = HexScrew::get(diameter, ProductGrade::A)
                    .or_else(|| HexScrew::get(diameter, ProductGrade::B))?;
                // The nominal width is the greatest.
                Self::Hexagon {
                    width: row.width_across_flats_max,
                    height: row.head_height_nominal,
                }
            }
            ScrewProduct::En14399_3 => {
                let row = HrBolt::find(thread).ok()?;
                // The nominal width is the greatest.
                Self::Hexagon {
                    width: row.width_across_flats_max,
                    height: row.head_height_nominal,
                }
            }
            ScrewProduct::StructuralBolt | ScrewProduct::En14399_4 => {
                let row = StructuralBolt::find(thread).ok()?;
                let height = (row.head_height_min + row.head_height_max) / 2.0;
                Self::Hexagon {
                    width: row
                        .width_across_flats_basic
                        .unwrap_or(row.width_across_flats_max),
                    height: row.head_height_basic.unwrap_or(height),
                }
            }
            ScrewProduct::SocketHeadCapScrew | ScrewProduct::Iso4762 => {
                let row = SocketHeadCapScrew::find(thread).ok()?;
                Self::Socket {
                    diameter: row.head_diameter_max?,
                    height: row.head_height_max?,
                    key: row.key_size?,
                    depth: row.key_engagement_min?,
                }
            }
            ScrewProduct::HexBolt
            | ScrewProduct::HeavyHexBolt
            | ScrewProduct::MetricHexCapScrew
            | ScrewProduct::Own => return None,
        })
    }

    fn volume(&self) -> Volume {
        match *self {
            Self::Hexagon { width, height } => hexagon(width) * height,
            Self::Socket {
                diameter,
                height,
                key,
                depth,
            } => circle(diameter) * height - hexagon(key) * depth,
        }
    }
}

fn hexagon(width_across_flats: Length) -> Area {
    crate::math::sqrt(3.0) / 2.0 * (width_across_flats * width_across_flats)
}

fn circle(diameter: Length) -> Area {
    core::f64::consts::FRAC_PI_4 * (diameter * diameter)
}

/// How much of a screw that ends there is shank: to the middle of the run-out.
fn shank(screw: &ScrewLength, end: Length) -> Length {
    if screw.fully_threaded {
        Length::default()
    } else {
        end.min((screw.body_length_min + screw.grip_gaging_length_max) / 2.0)
    }
}

/// Where a bolt ends, after the cut if there is a fixed one.
fn end(candidate: &Candidate) -> Length {
    candidate
        .cut
        .map_or(candidate.screw.nominal, |cut| cut.length)
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
        let shank = shank(screw, end);
        STEEL * (self.head + self.shank * shank + self.thread * (end - shank))
    }
}

/// Width across flats and height of a nut.
fn nut_size(nut: &Nut) -> Option<(Length, Length)> {
    let limits = || Some((nut.width_across_flats_min? + nut.width_across_flats_max?) / 2.0);
    let width = nut
        .width_across_flats_basic
        .or_else(limits)
        .or(nut.width_across_flats_max)?;
    Some((width, nut.height().ok()?.nominal))
}

/// Mass of a nut; none where its width is not known.
pub(super) fn of_nut(nut: &Nut, thread: &Thread) -> Option<Mass> {
    let (width, height) = nut_size(nut)?;
    Some(STEEL * ((hexagon(width) - circle(thread.basic_pitch_diameter())) * height))
}

/// Outside and inside diameter and thickness of a washer.
fn washer_size(washer: &Washer) -> Option<[Length; 3]> {
    let outside = washer.outside_diameter_nominal;
    let inside = washer.inside_diameter_nominal;
    Some([
        outside.or(washer.outside_diameter_max)?,
        inside.or(washer.inside_diameter_min)?,
        washer.thickness().ok()?.nominal,
    ])
}

/// Mass of a washer; none where its diameters are not known.
pub(super) fn of_washer(washer: &Washer) -> Option<Mass> {
    let [outside, inside, thickness] = washer_size(washer)?;
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
    // Counts are small: exact.
    #[allow(clippy::cast_precision_loss)]
    let count = washers as f64;
    PartsMass {
        bolt: bolt.of(&candidate.screw, end(candidate)),
        nut,
        washers: count * washer,
        washers_weighed: washers,
    }
}

impl Design {
    /// The working of its mass, in kilograms; none where the mass is not known.
    ///
    /// ```
    /// use shankline::derivation::Format;
    /// use shankline::joint::Design;
    /// use shankline::units::UnitSystem;
    /// fn print(design: &Design) {
    ///     if let Some(working) = design.mass_derivation() {
    ///         println!("{}", working.render(Format::Text, UnitSystem::Si));
    ///     }
    /// }
    /// ```
    #[must_use]
    pub fn mass_derivation(&self) -> Option<Derivation> {
        let mass = self.mass?;
        let bolt = self.choice.bolt;
        let d2 = bolt.thread.basic_pitch_diameter();
        let end = end(&self.candidate);
        let density = Step::given("density of steel in kg/m3", "rho", STEEL.value)
            .source(methods::DIN_931_SUPPLEMENT_1_1986);
        let body = "pi / 4 * (d^2 * ls + d2^2 * (l - ls))";
        let of_bolt = |head: &str| {
            Step::new(
                "mass of the bolt in kg",
                "mb",
                format!("rho * ({head} + {body})"),
                mass.bolt.value,
            )
            .with("rho", STEEL.value)
            .with("d", bolt.thread.nominal_diameter())
            .with("ls", shank(&self.candidate.screw, end))
            .with("d2", d2)
            .with("l", end)
        };
        let of_bolt = match Head::of(bolt.product, &bolt.thread)? {
            Head::Hexagon { width, height } => of_bolt("sqrt(3) / 2 * s^2 * k")
                .with("s", width)
                .with("k", height),
            Head::Socket {
                diameter,
                height,
                key,
                depth,
            } => of_bolt("pi / 4 * dk^2 * k - sqrt(3) / 2 * s^2 * t")
                .with("dk", diameter)
                .with("k", height)
                .with("s", key)
                .with("t", depth),
        };
        let (width, height) = nut_size(Nut::find(self.choice.nut.style, &bolt.thread).ok()?)?;
        let of_nut = Step::new(
            "mass of the nut in kg",
            "mn",
            "rho * (sqrt(3) / 2 * sn^2 - pi / 4 * d2^2) * m",
            mass.nut.value,
        )
        .with("rho", STEEL.value)
        .with("sn", width)
        .with("d2", d2)
        .with("m", height);
        let mut derivation =
            Derivation::new("Mass of bolt, nut and washers, estimated from their geometry")
                .step(density)
                .step(of_bolt)
                .step(of_nut);
        if let Some(style) = self.choice.washers {
            let [outside, inside, thickness] =
                washer_size(Washer::find(style, &bolt.thread).ok()?)?;
            derivation = derivation.step(
                Step::new(
                    "mass of the washers in kg",
                    "mw",
                    "n * rho * pi / 4 * (Do^2 - Di^2) * h",
                    mass.washers.value,
                )
                .with("n", mass.washers_weighed)
                .with("rho", STEEL.value)
                .with("Do", outside)
                .with("Di", inside)
                .with("h", thickness),
            );
        }
        Some(
            derivation.step(
                Step::new(
                    "mass of the parts in kg",
                    "mt",
                    "mb + mn + mw",
                    mass.total().value,
                )
                .with("mb", mass.bolt.value)
                .with("mn", mass.nut.value)
                .with("mw", mass.washers.value),
            ),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::parts::ScrewSeries;
    use crate::units::millimetres;

    /// HR bolts have a table of their own, with M14 and M18, which HV bolts lack. Their heads differ in height, too.
    #[test]
    fn every_hr_bolt_has_a_mass() {
        for (size, flats, head) in [("M14", 24.0, 8.8), ("M18", 30.0, 11.5), ("M20", 32.0, 12.5)] {
            let thread: Thread = size.parse().unwrap();
            let mass = BoltMass::new(ScrewProduct::En14399_3, &thread).map(|mass| mass.head);
            let hexagon = hexagon(millimetres(flats)) * millimetres(head);
            let by_hand = mass.map(|head| (head / hexagon).value);
            assert!(
                by_hand.is_some_and(|ratio| (ratio - 1.0).abs() < 1e-9),
                "{size}: {by_hand:?}"
            );
        }
    }

    /// Kilograms per 1000 ISO 4762 screws, as a supplier's table of weights prints them: every length
    /// whose body is known. Keys and fillets of small screws are what differs most.
    #[test]
    fn socket_screws_weigh_what_a_supplier_says() {
        for (thread, length, printed, within) in [
            ("M4", 25.0, 3.2, 0.06),
            ("M5", 30.0, 5.6, 0.06),
            ("M5", 35.0, 6.3, 0.06),
            ("M5", 40.0, 7.1, 0.06),
            ("M6", 30.0, 8.3, 0.03),
            ("M6", 35.0, 9.9, 0.03),
            ("M6", 40.0, 11.0, 0.03),
            ("M8", 35.0, 18.9, 0.03),
            ("M8", 40.0, 20.9, 0.03),
            ("M10", 40.0, 32.9, 0.03),
        ] {
            let thread: Thread = thread.parse().unwrap();
            let series = ScrewSeries::new(ScrewProduct::Iso4762, &thread).unwrap();
            let screw = series.length(millimetres(length)).unwrap();
            let mass = BoltMass::new(ScrewProduct::Iso4762, &thread).unwrap();
            let of_1000 = 1000.0 * mass.of(&screw, screw.nominal).value;
            assert!(
                (of_1000 / printed - 1.0).abs() < within,
                "{thread} x {length}: {of_1000}"
            );
        }
    }

    /// EN 14399-4, M20: head of 32 mm over its flats, 12.1 to 13.9 mm high, of which no nominal height is read; 13 mm lie
    /// midway.
    #[test]
    fn a_head_without_a_nominal_height_is_as_high_as_the_middle_of_its_limits() {
        let thread: Thread = "M20".parse().unwrap();
        let mass = BoltMass::new(ScrewProduct::En14399_4, &thread).unwrap();
        let by_hand = hexagon(millimetres(32.0)) * millimetres(13.0);
        assert!(((mass.head / by_hand).value - 1.0).abs() < 1e-9);
    }

    #[test]
    fn the_mass_of_all_parts_is_shown() {
        let kilograms = |value: f64| -> Mass { from_base(value) };
        let mass = PartsMass {
            bolt: kilograms(0.25),
            nut: kilograms(0.06),
            washers: kilograms(0.014),
            washers_weighed: 2,
        };
        assert_eq!(mass.text(UnitSystem::Si), "0.324 kg");
        // 0.324 / 0.45359237
        assert_eq!(mass.text(UnitSystem::UsCustomary), "0.714 lb");
    }
}
