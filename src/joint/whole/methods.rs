//! By which methods a joint is checked.

use crate::error::{Allowed, Error, out_of_range, sane_text};
use crate::strength::bolt_tension::TensionMethod;
use crate::strength::check::Level;
use crate::strength::code::mil_hdbk_5;
use crate::strength::interaction::InteractionRule;
use crate::strength::ply::PlyMethod;
use crate::strength::shear::{AiscEdition, ShearBasis, ShearMethod};
use crate::strength::slip::SlipMethod;
use crate::strength::timber::TimberMethod;
use crate::units::{Stress, ksi};

/// By which methods a [`Joint`](super::Joint) is checked.
///
/// ```
/// use shankline::joint::JointMethods;
/// use shankline::strength::check::Level;
/// assert_eq!(JointMethods::machine_design(2.0).level, Level::Allowable);
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct JointMethods {
    /// Shear of the bolt.
    pub shear: ShearMethod,
    /// Tension of the bolt, for the whole load along it.
    pub tension: TensionMethod,
    /// Tension and shear together.
    pub interaction: InteractionRule,
    /// Bearing, tear-out and sections of the plies.
    pub plies: PlyMethod,
    /// Bolts in timber, if plies are of timber.
    #[cfg_attr(feature = "serde", serde(default))]
    pub timber: Option<TimberMethod>,
    /// Whether the joint may slip.
    pub slip: Slip,
    /// Which resistance the loads are held against: design for factored loads, allowable for service
    /// loads.
    pub level: Level,
    /// What the loads are multiplied by in the modes for which the publisher of the methods above has no factor:
    /// the joint diagram, stripping, fatigue, pressure under the head. At [`Level::Design`] the load factor comes
    /// on top of it.
    pub margin: f64,
}

/// Whether a joint may slip into bearing.
///
/// ```
/// use shankline::joint::{JointMethods, Slip};
/// use shankline::strength::slip::SlipMethod;
/// let clamped = JointMethods {
///     slip: Slip::Resisted(SlipMethod::Stated { friction: 0.2, safety_factor: 1.5 }),
///     ..JointMethods::machine_design(2.0)
/// };
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Slip {
    /// It may: the bolt bears.
    Permitted,
    /// It must not, by this method.
    Resisted(SlipMethod),
}

impl Slip {
    /// Whether it may not slip at the limit by EN 1993-1-8: category C, of which more is asked.
    pub(crate) const fn is_category_c(&self) -> bool {
        matches!(
            self,
            Self::Resisted(SlipMethod::En1993 {
                serviceability: false,
                ..
            })
        )
    }
}

impl JointMethods {
    /// Machine design: onset of yield by distortion energy over a design factor, service loads. The factor holds
    /// for every mode.
    ///
    /// Source: Shigley, Mechanical Engineering Design, 9th ed., chapter 8.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::machine_design(2.0).shear.to_string(), "distortion energy, yield");
    /// ```
    #[must_use]
    pub const fn machine_design(design_factor: f64) -> Self {
        Self {
            shear: ShearMethod::DistortionEnergy {
                basis: ShearBasis::Yield,
                design_factor,
            },
            tension: TensionMethod::Proof { design_factor },
            plies: PlyMethod::MachineDesign { design_factor },
            interaction: InteractionRule::Ellipse,
            timber: None,
            slip: Slip::Permitted,
            level: Level::Allowable,
            margin: design_factor,
        }
    }

    /// AISC 360 with factored loads (LRFD).
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// use shankline::prelude::*;
    /// let methods = JointMethods::aisc_lrfd(AiscEdition::E2010);
    /// assert_eq!(methods.shear.to_string(), "AISC 360-10 J3.6");
    /// ```
    #[must_use]
    pub const fn aisc_lrfd(edition: AiscEdition) -> Self {
        Self {
            shear: ShearMethod::Aisc360 { edition },
            tension: TensionMethod::Aisc360 { edition },
            plies: PlyMethod::Aisc360 {
                edition,
                deformation_matters: true,
            },
            interaction: InteractionRule::Aisc360,
            timber: None,
            slip: Slip::Permitted,
            level: Level::Design,
            margin: 1.0,
        }
    }

    /// AISC 360 with service loads (ASD). Where it gives no safety factor, its 2.00 of bolts is taken.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// use shankline::prelude::*;
    /// use shankline::strength::check::Level;
    /// assert_eq!(JointMethods::aisc_asd(AiscEdition::E2010).level, Level::Allowable);
    /// ```
    #[must_use]
    pub const fn aisc_asd(edition: AiscEdition) -> Self {
        Self {
            level: Level::Allowable,
            margin: 2.0,
            ..Self::aisc_lrfd(edition)
        }
    }

    /// EN 1993-1-8:2005 with design loads.
    ///
    /// Its categories of bolted joints (3.4, recalled) are no methods of their own, but how a joint is tightened and held:
    ///
    /// | category | of bolts | said by | checked against it |
    /// |---|---|---|---|
    /// | A | in shear, bearing | [`Slip::Permitted`], any tightening | shear, bearing |
    /// | B | in shear, no slip in service | [`Slip::Resisted`] with [`SlipMethod::En1993`] and `serviceability` | slip at the loads without their factor; shear, bearing |
    /// | C | in shear, no slip at the limit | the same without it | slip, bearing, the net section at yield |
    /// | D | in tension, no preload | [`Tightening::Snug`](super::Tightening::Snug) | tension, pull-through; a pull that varies is undecided |
    /// | E | in tension, preloaded | [`PreloadTarget::En1993`](crate::preload::PreloadTarget::En1993) | tension, pull-through; beyond the category that the plies do not part |
    ///
    /// B, C and E ask for sets to EN 14399 of classes 8.8 and 10.9, or the joint is undecided.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::en_1993().shear.to_string(), "EN 1993-1-8:2005 Table 3.4");
    /// ```
    #[must_use]
    pub const fn en_1993() -> Self {
        Self {
            shear: ShearMethod::En1993,
            tension: TensionMethod::En1993,
            plies: PlyMethod::En1993,
            interaction: InteractionRule::En1993,
            timber: None,
            slip: Slip::Permitted,
            level: Level::Design,
            margin: 1.0,
        }
    }

    /// BS 5950-1:2000, with factored loads.
    ///
    /// Without what it has of fatigue and pins (6.5): such modes are undecided where they are concerned. A joint that must not
    /// slip says so: [`SlipMethod::Bs5950`], and is tightened to
    /// [`PreloadTarget::Bs4604`](crate::preload::PreloadTarget::Bs4604), or its least preload is held against that. Its simple method for tension (6.3.4.2) has prying in it.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::bs_5950().shear.to_string(), "BS 5950-1:2000 6.3.2.1");
    /// ```
    #[must_use]
    pub const fn bs_5950() -> Self {
        Self {
            shear: ShearMethod::Bs5950,
            tension: TensionMethod::Bs5950Simple,
            plies: PlyMethod::Bs5950,
            interaction: InteractionRule::Bs5950,
            ..Self::en_1993()
        }
    }

    /// IS 800:2007, with factored loads.
    ///
    /// Without what it has of fatigue (section 13) and prying (10.4.7): such modes are undecided where they are concerned. A
    /// joint that must not slip says so: [`SlipMethod::Is800`], and is tightened to
    /// [`PreloadTarget::Is800`](crate::preload::PreloadTarget::Is800), or its least preload is held against that.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::is_800().shear.to_string(), "IS 800:2007 10.3.3");
    /// ```
    #[must_use]
    pub const fn is_800() -> Self {
        Self {
            shear: ShearMethod::Is800,
            tension: TensionMethod::Is800,
            plies: PlyMethod::Is800,
            interaction: InteractionRule::Is800,
            ..Self::en_1993()
        }
    }

    /// AS 4100, with factored loads.
    ///
    /// Without what it has of fatigue (section 11) and pins (9.5): such modes are undecided where they are concerned. A joint
    /// that must not slip says so: [`SlipMethod::As4100`], and is tightened to
    /// [`PreloadTarget::As4100`](crate::preload::PreloadTarget::As4100), or its least preload is held against that.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::as_4100().shear.to_string(), "AS 4100 9.3.2.1");
    /// ```
    #[must_use]
    pub const fn as_4100() -> Self {
        Self {
            shear: ShearMethod::As4100,
            tension: TensionMethod::As4100,
            plies: PlyMethod::As4100,
            interaction: InteractionRule::As4100,
            ..Self::en_1993()
        }
    }

    /// CSA S16, with factored loads.
    ///
    /// Without what it has of fatigue (section 26), slip (13.12.2), prying (13.12.1.3), distances and
    /// pretension (sections 22 and 23): such modes are undecided where they are concerned.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert_eq!(JointMethods::csa_s16().shear.to_string(), "CSA S16 13.12.1.2");
    /// ```
    #[must_use]
    pub const fn csa_s16() -> Self {
        Self {
            shear: ShearMethod::CsaS16,
            tension: TensionMethod::CsaS16,
            plies: PlyMethod::CsaS16,
            interaction: InteractionRule::CsaS16,
            ..Self::en_1993()
        }
    }

    /// Bolts of aircraft by MIL-HDBK-5, with limit loads: 1.5 of 14 CFR 25.303 and a fitting factor of 1.15 (25.625), as of a
    /// fitting that no test has proved.
    ///
    /// `shear_strength` is the ultimate shear strength of the bolt: 75 ksi of AN bolts of 125 ksi, 95 of 160, 108 of 180. Where it
    /// is over 0.6 of the tensile strength that the joint states, it is that of another bolt, and shear is undecided. This is how
    /// the fasteners of aircraft are sized, and says nothing of airworthiness: FAA AC 43.13-1B, 7-35, has no strengths of
    /// its own and sends its reader to the handbook.
    ///
    /// | mode | rule | known how |
    /// |---|---|---|
    /// | shear | Fsu of the shank, Table 8.1.5(a); a plane in the thread is undecided | reproduced |
    /// | tension | Ftu at the root of the thread, Table 8.1.5(b); under a low nut undecided | recalled |
    /// | both | S^3 + T^2 | recalled |
    /// | bearing | Fbru of the ply over both factors, Fbry over the fitting factor | reproduced; that limit load must not yield it recalled |
    /// | distances | end 1.5 diameters of the hole; edges 2 and spacing 3, of rivets in a single row | recalled; reproduced |
    /// | limit load | no yield of the bolt: undecided if its yield strength is not stated, or less than Ftu / 1.5 | recalled |
    ///
    /// Bolt and plies bring their figures: a strength [of one's own](super::OwnStrength) is taken, and a ply states its bearing
    /// strengths where its material has none in the tables. Beside the set stand
    /// [`RuleSet::FaaAc4313`](crate::joint::RuleSet::FaaAc4313) for lengths and
    /// [`AircraftTorque`](crate::tables::aircraft_torque::AircraftTorque).
    ///
    /// Without net and gross section, block shear, bearing on the bolt and tear-out below 1.5 diameters, which the handbook
    /// leaves to analysis; bearing of sheet thinner than the diameter over 5.5, which it leaves to tests; bending of the bolt, which
    /// it has plastic, fatigue (25.571), prying, slip, heat above that of a room, and bearing factors (25.623 has no number): such
    /// modes are undecided where they are concerned, and [set aside](super::SetAside) with the analysis that shows them. Its tables of joints in thin sheet and its bolts with
    /// shear heads are not here.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// use shankline::units::ksi;
    /// let an = JointMethods::mil_hdbk_5(ksi(75.0));
    /// assert_eq!(an.tension.to_string(), "MIL-HDBK-5 Table 8.1.5(b), tension");
    /// assert!((an.margin - 1.725).abs() < 1e-12);
    /// ```
    #[must_use]
    pub const fn mil_hdbk_5(shear_strength: Stress) -> Self {
        let (ultimate_factor, fitting_factor) = (mil_hdbk_5::ULTIMATE, mil_hdbk_5::FITTING);
        Self {
            shear: ShearMethod::MilHdbk5 {
                shear_strength,
                ultimate_factor,
                fitting_factor,
            },
            tension: TensionMethod::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            },
            plies: PlyMethod::MilHdbk5 {
                ultimate_factor,
                fitting_factor,
            },
            interaction: InteractionRule::AircraftSteel,
            timber: None,
            slip: Slip::Permitted,
            level: Level::Allowable,
            margin: ultimate_factor * fitting_factor,
        }
    }

    /// The names of [`named`](Self::named).
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert!(JointMethods::NAMES.iter().all(|name| JointMethods::named(name).is_ok()));
    /// ```
    pub const NAMES: [&'static str; 15] = [
        "machine_design",
        "en_1993",
        "bs_5950",
        "is_800",
        "as_4100",
        "csa_s16",
        "mil_hdbk_5",
        "aisc_lrfd_2005",
        "aisc_lrfd_2010",
        "aisc_lrfd_2016",
        "aisc_lrfd_2022",
        "aisc_asd_2005",
        "aisc_asd_2010",
        "aisc_asd_2016",
        "aisc_asd_2022",
    ];

    /// A set of methods by its name, as a file may have it: machine design with a factor of 2, EN 1993-1-8, BS 5950-1, IS
    /// 800, AS 4100, CSA S16, MIL-HDBK-5 for AN bolts (75 ksi in shear), or AISC 360 with factored (LRFD) or service loads (ASD) in an edition.
    ///
    /// # Errors
    ///
    /// [`Error::UnknownName`] with the names there are.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// use shankline::strength::shear::AiscEdition;
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(JointMethods::named("aisc_asd_2016")?, JointMethods::aisc_asd(AiscEdition::E2016));
    /// assert!(JointMethods::named("aisc").is_err()); // which edition, which loads?
    /// # Ok(())
    /// # }
    /// ```
    pub fn named(name: &str) -> Result<Self, Error> {
        sane_text("name of the methods", name)?;
        let name = name.trim();
        let edition = match name.rsplit_once('_') {
            Some((_, "2005")) => Some(AiscEdition::E2005),
            Some((_, "2010")) => Some(AiscEdition::E2010),
            Some((_, "2016")) => Some(AiscEdition::E2016),
            Some((_, "2022")) => Some(AiscEdition::E2022),
            _ => None,
        };
        match (name, edition) {
            ("machine_design", _) => Ok(Self::machine_design(2.0)),
            ("en_1993", _) => Ok(Self::en_1993()),
            ("bs_5950", _) => Ok(Self::bs_5950()),
            ("is_800", _) => Ok(Self::is_800()),
            ("as_4100", _) => Ok(Self::as_4100()),
            ("csa_s16", _) => Ok(Self::csa_s16()),
            ("mil_hdbk_5", _) => Ok(Self::mil_hdbk_5(ksi(75.0))),
            (name, Some(edition)) if name.starts_with("aisc_lrfd_") && name.len() == 14 => {
                Ok(Self::aisc_lrfd(edition))
            }
            (name, Some(edition)) if name.starts_with("aisc_asd_") && name.len() == 13 => {
                Ok(Self::aisc_asd(edition))
            }
            _ => Err(Error::UnknownName {
                what: "set of methods",
                text: name.into(),
                known: Self::NAMES.join(", "),
            }),
        }
    }

    /// The methods, if the numbers in every one are in their ranges: also in those that the loads do not need.
    ///
    /// # Errors
    ///
    /// Those of the `checked` of each method; [`Error::Mismatch`] for an interaction of another publisher than that of the shear, where
    /// the two belong together, and for ultimate factors of MIL-HDBK-5 that differ; and [`Error::OutOfRange`] for a margin that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::joint::JointMethods;
    /// assert!(JointMethods::machine_design(2.0).checked().is_ok());
    /// assert!(JointMethods::machine_design(-3.0).checked().is_err());
    /// ```
    pub fn checked(&self) -> Result<(), Error> {
        self.shear.checked()?;
        self.tension.checked()?;
        self.interaction.checked()?;
        self.plies.checked()?;
        self.timber.map(TimberMethod::checked).transpose()?;
        if let Slip::Resisted(method) = self.slip {
            method.checked()?;
        }
        let of_code = match self.shear {
            ShearMethod::En1993 => Some(InteractionRule::En1993),
            ShearMethod::Aisc360 { .. } => Some(InteractionRule::Aisc360),
            ShearMethod::MilHdbk5 { .. } => Some(InteractionRule::AircraftSteel),
            _ => None,
        };
        // These have the ellipse itself.
        let by_ellipse = match self.shear {
            ShearMethod::Is800 => Some(InteractionRule::Is800),
            ShearMethod::As4100 => Some(InteractionRule::As4100),
            ShearMethod::CsaS16 => Some(InteractionRule::CsaS16),
            _ => None,
        }
        .filter(|_| self.interaction != InteractionRule::Ellipse);
        let of_code = of_code.or(by_ellipse);
        if let Some(rule) = of_code.filter(|rule| *rule != self.interaction) {
            return Err(Error::Mismatch(alloc::format!(
                "shear by {} goes with the interaction of the same code, {rule}",
                self.shear
            )));
        }
        self.same_loads()?;
        // Its exponents are of ultimate strengths, shank in the plane.
        let is_aircraft = matches!(self.shear, ShearMethod::MilHdbk5 { .. });
        if self.interaction == InteractionRule::AircraftSteel && !is_aircraft {
            return Err(Error::Mismatch(alloc::format!(
                "the interaction by {} goes with the shear of the same handbook, and not with {}",
                self.interaction,
                self.shear
            )));
        }
        if (1.0..=100.0).contains(&self.margin) {
            return Ok(());
        }
        let allowed = Allowed::FromTo(1.0.into(), 100.0.into());
        Err(out_of_range("margin of the methods", self.margin, allowed))
    }

    /// Refuses loads that are limit loads for one part and ultimate loads for another.
    fn same_loads(&self) -> Result<(), Error> {
        let shear = match self.shear {
            ShearMethod::MilHdbk5 {
                ultimate_factor, ..
            } => Some(ultimate_factor),
            _ => None,
        };
        let tension = match self.tension {
            TensionMethod::MilHdbk5 {
                ultimate_factor, ..
            } => Some(ultimate_factor),
            _ => None,
        };
        let plies = match self.plies {
            PlyMethod::MilHdbk5 {
                ultimate_factor, ..
            } => Some(ultimate_factor),
            _ => None,
        };
        let mut factors = [shear, tension, plies].into_iter().flatten();
        let first = factors.next();
        if factors.any(|other| first.is_some_and(|first| (first - other).abs() > 1e-9)) {
            return Err(Error::Mismatch(
                "the ultimate factor of shear, tension and plies is not the same, and they have the same loads"
                    .into(),
            ));
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests;
