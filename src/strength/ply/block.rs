//! Block shear, and the width left by staggered holes.

use super::PlyMethod;
use crate::caution::{Caution, Cautions};
use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Method;
use crate::strength::check::{Check, Level, Mode, Place, Resistance};
use crate::strength::code::{
    BlockFaces, Factors, aisc_360, as_4100, bs_5950, csa_s16, en_1993, is_800,
};
use crate::tables::methods;
use crate::units::{Area, Force, Length, Stress};
use core::fmt;

/// A published method for block shear.
///
/// | method | nominal | factors |
/// |---|---|---|
/// | [`Aisc360`](Self::Aisc360) | min(0.6 Fu Anv, 0.6 Fy Agv) + Ubs Fu Ant | 0.75, 2.00 |
/// | [`AiscLrfd1999`](Self::AiscLrfd1999) | Fu Ant >= 0.6 Fu Anv: 0.6 Fy Agv + Fu Ant, else 0.6 Fu Anv + Fy Agt, at most 0.6 Fu Anv + Fu Ant (m) | 0.75 |
/// | [`En1993`](Self::En1993) | design: k fu Ant / 1.25 + fy Anv / (sqrt 3 x 1.0), k 1 or 0.5 | in it |
/// | [`Bs5950`](Self::Bs5950) | design: 0.6 py (Agv + Ke Ant), Ke 1.0 to 1.2 by steel | in it |
/// | [`Is800`](Self::Is800) (m) | design: the lesser of fy Agv / (sqrt 3 x 1.10) + 0.9 fu Ant / 1.25 and 0.9 fu Anv / (sqrt 3 x 1.25) + fy Agt / 1.10 | in it |
/// | [`As4100`](Self::As4100) (m) | min(0.6 fu Anv, 0.6 fy Agv) + kbs fu Ant, kbs 1 or 0.5 | 0.75 |
/// | [`CsaS16`](Self::CsaS16) | 0.6 Agv (Fy + Fu) / 2 + Ut Ant Fu, Ut 1 or 0.3; Fy over 460 MPa: 0.6 Agv Fy | 0.75 |
///
/// (m): recalled, not read; a block it was applied to carries a caution.
///
/// Sources: AISC 360-05 on, J4.3 (a lecture sheet); AISC LRFD 1999 J4.3 (handbook example); EN 1993-1-8 3.10.2
/// (European design guide); BS 5950-1:2000 6.2.4 (Steel Designers' Manual, 6th ed.); CSA S16-09 13.11 (a university course).
///
/// ```
/// use shankline::strength::ply::BlockMethod;
/// assert_eq!(BlockMethod::AiscLrfd1999.to_string(), "AISC LRFD 1999 J4.3");
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(
        crate = "crate::objects",
        rename_all = "snake_case",
        deny_unknown_fields
    )
)]
#[non_exhaustive]
pub enum BlockMethod {
    /// AISC 360, 2005 on.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360 {
        /// Whether the tension on the block is uniform: Ubs 1, else 0.5.
        uniform_tension: bool,
    },
    /// AISC LRFD to 1999: the larger term decides.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_lrfd_1999"))]
    AiscLrfd1999,
    /// EN 1993-1-8:2005 3.10.2.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_8"))]
    En1993 {
        /// Whether the load is eccentric: half of the tension term.
        eccentric: bool,
    },
    /// BS 5950-1:2000 6.2.4.
    #[cfg_attr(feature = "serde", serde(rename = "bs_5950"))]
    Bs5950,
    /// IS 800:2007 6.4.1.
    #[cfg_attr(feature = "serde", serde(rename = "is_800"))]
    Is800,
    /// AS 4100 9.1.9.
    #[cfg_attr(feature = "serde", serde(rename = "as_4100"))]
    As4100 {
        /// Whether the tension on the block is uniform: kbs 1, else 0.5.
        uniform_tension: bool,
    },
    /// CSA S16 13.11.
    #[cfg_attr(feature = "serde", serde(rename = "csa_s16"))]
    CsaS16 {
        /// Whether the block is pulled evenly: Ut 1, else the least that the code has, 0.3.
        uniform_tension: bool,
    },
}

impl BlockMethod {
    /// Publisher, edition and clause.
    ///
    /// ```
    /// use shankline::strength::ply::BlockMethod;
    /// assert_eq!(BlockMethod::En1993 { eccentric: true }.method().citation, "EN 1993-1-8:2005 3.10.2");
    /// ```
    #[must_use]
    pub const fn method(self) -> &'static Method {
        match self {
            Self::Aisc360 { .. } => methods::AISC_360_J4_3,
            Self::AiscLrfd1999 => methods::AISC_LRFD_1999_J4_3,
            Self::En1993 { .. } => methods::EN_1993_1_8_2005_3_10_2,
            Self::Bs5950 => methods::BS_5950_1_2000_6_2_4_BLOCK_SHEAR,
            Self::Is800 => methods::IS_800_2007_6_4_1,
            Self::As4100 { .. } => methods::AS_4100_9_1_9,
            Self::CsaS16 { .. } => methods::CSA_S16_13_11_BLOCK_SHEAR,
        }
    }

    fn faces(self, block: &BlockShear) -> BlockFaces {
        match self {
            Self::Aisc360 { uniform_tension } => aisc_360::block(block, uniform_tension),
            Self::AiscLrfd1999 => aisc_360::block_of_1999(block),
            Self::En1993 { eccentric } => en_1993::block(block, eccentric),
            Self::Bs5950 => bs_5950::block(block),
            Self::Is800 => is_800::block(block),
            Self::As4100 { uniform_tension } => as_4100::block(block, uniform_tension),
            Self::CsaS16 { uniform_tension } => csa_s16::block(block, uniform_tension),
        }
    }
}

/// Block shear by the publisher of a method for plies.
pub(crate) struct BlockRule {
    /// Where the tension on the block is even.
    pub(crate) even: BlockMethod,
    /// Where it is not.
    pub(crate) uneven: BlockMethod,
    /// What net areas count more than the hole.
    pub(crate) oversize: Length,
}

impl BlockRule {
    /// The rule, or why there is none.
    pub(crate) fn of(method: PlyMethod) -> Result<Self, &'static str> {
        match method {
            // Net areas of AISC count 1/16 in more than the hole (B4.3b).
            PlyMethod::Aisc360 { .. } => Ok(Self {
                even: BlockMethod::Aisc360 {
                    uniform_tension: true,
                },
                uneven: BlockMethod::Aisc360 {
                    uniform_tension: false,
                },
                oversize: crate::units::inches(1.0 / 16.0),
            }),
            PlyMethod::En1993 => Ok(Self {
                even: BlockMethod::En1993 { eccentric: false },
                uneven: BlockMethod::En1993 { eccentric: true },
                oversize: Length::default(),
            }),
            PlyMethod::Bs5950 => Ok(Self {
                even: BlockMethod::Bs5950,
                uneven: BlockMethod::Bs5950,
                oversize: Length::default(),
            }),
            PlyMethod::Is800 => Ok(Self {
                even: BlockMethod::Is800,
                uneven: BlockMethod::Is800,
                oversize: Length::default(),
            }),
            PlyMethod::As4100 => Ok(Self {
                even: BlockMethod::As4100 {
                    uniform_tension: true,
                },
                uneven: BlockMethod::As4100 {
                    uniform_tension: false,
                },
                oversize: Length::default(),
            }),
            // Holes may be punched: 2 mm more than the hole (12.3.2).
            PlyMethod::CsaS16 => Ok(Self {
                even: BlockMethod::CsaS16 {
                    uniform_tension: true,
                },
                uneven: BlockMethod::CsaS16 {
                    uniform_tension: false,
                },
                oversize: crate::units::millimetres(2.0),
            }),
            PlyMethod::MachineDesign { .. } | PlyMethod::MilHdbk5 { .. } => {
                Err("the publisher of the method for plies gives no block shear")
            }
        }
    }
}

impl BlockRule {
    /// Holes that lie in the tension face of a block torn to one side, by its lines of bolts along the shear.
    #[allow(clippy::cast_precision_loss)] // at most some hundreds
    pub(crate) fn holes_to_one_side(&self, lines: usize) -> f64 {
        match self.even {
            // k of 6.2.4 is 0.5 of one line and 2.5 of two (recalled): a hole more than there are, of more lines too, of which
            // the clause has nothing.
            BlockMethod::Bs5950 if lines > 1 => lines as f64 + 0.5,
            _ => lines as f64 - 0.5,
        }
    }

    /// What the user must be told of them.
    pub(crate) fn cautions_to_one_side(&self, lines: Option<usize>) -> Cautions {
        let recalled = self.even == BlockMethod::Bs5950 && lines.is_some_and(|lines| lines > 1);
        Cautions::default().with(
            recalled
                .then_some(methods::BS_5950_1_2000_6_2_4_TWO_LINES)
                .and_then(Caution::of_method),
        )
    }
}

impl fmt::Display for BlockMethod {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.method().citation)
    }
}

/// The areas of a block that could tear out, and the strengths of its ply.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::check::Level;
/// use shankline::strength::ply::{BlockMethod, BlockShear, block_shear};
/// use shankline::uom::si::force::kilonewton;
/// # fn main() -> Result<(), shankline::Error> {
/// // Fin plate of Steel Buildings in Europe, part 5: 483 kN
/// let block = BlockShear {
///     yield_strength: megapascals(275.0),
///     tensile_strength: megapascals(430.0),
///     gross_shear: square_millimetres(3200.0),
///     net_shear: square_millimetres(2210.0),
///     gross_tension: square_millimetres(1100.0),
///     net_tension: square_millimetres(770.0),
/// };
/// let torn = block_shear(&block, BlockMethod::En1993 { eccentric: true })?;
/// assert!((torn.resistance.at(Level::Design)?.get::<kilonewton>() - 483.0).abs() < 0.8);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct BlockShear {
    /// Yield strength Fy = fy.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub yield_strength: Stress,
    /// Tensile strength Fu = fu.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub tensile_strength: Stress,
    /// Gross area in shear, Agv.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub gross_shear: Area,
    /// Net area in shear, Anv.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub net_shear: Area,
    /// Gross area in tension, Agt.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub gross_tension: Area,
    /// Net area in tension, Ant.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub net_tension: Area,
}

/// Resistance of a block to tearing out.
///
/// ```
/// # use shankline::strength::ply::BlockResistance;
/// fn cited(path: &BlockResistance) -> &'static str {
///     path.method.method().citation
/// }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct BlockResistance {
    /// The block.
    pub block: BlockShear,
    /// The method.
    pub method: BlockMethod,
    /// What the shear faces bear.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub shear: Force,
    /// What the tension face bears.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub tension: Force,
    /// Nominal, design and allowable load, as far as the method defines them.
    pub resistance: Resistance,
    shear_formula: &'static str,
    tension_formula: &'static str,
    tension_factor: f64,
    #[cfg_attr(feature = "serde", serde(skip))]
    factors: Factors,
}

/// Resistance of a block to tearing out, by a method.
///
/// # Errors
///
/// [`Error::OutOfRange`] for an area or strength that is not positive and finite, or a net area greater
/// than its gross area.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::{BlockMethod, BlockShear, block_shear};
/// let area = square_inches(1.0);
/// let block = BlockShear {
///     yield_strength: ksi(36.0),
///     tensile_strength: ksi(58.0),
///     gross_shear: area,
///     net_shear: 2.0 * area, // more than the gross area
///     gross_tension: area,
///     net_tension: area,
/// };
/// assert!(block_shear(&block, BlockMethod::AiscLrfd1999).is_err());
/// ```
pub fn block_shear(block: &BlockShear, method: BlockMethod) -> Result<BlockResistance, Error> {
    positive("yield strength of the ply", block.yield_strength)?;
    positive("tensile strength of the ply", block.tensile_strength)?;
    for (name, net, gross) in [
        ("net area in shear", block.net_shear, block.gross_shear),
        (
            "net area in tension",
            block.net_tension,
            block.gross_tension,
        ),
    ] {
        positive(name, net)?;
        positive("gross area", gross)?;
        if net > gross {
            return Err(out_of_range(name, net, Allowed::AtMost(gross.into())));
        }
    }
    let faces = method.faces(block);
    let sum = faces.shear + faces.tension;
    positive("resistance of the block", sum)?;
    Ok(BlockResistance {
        block: *block,
        method,
        shear: faces.shear,
        tension: faces.tension,
        resistance: faces.factors.resistance(sum),
        shear_formula: faces.shear_formula,
        tension_formula: faces.tension_formula,
        tension_factor: faces.factor,
        factors: faces.factors,
    })
}

impl BlockResistance {
    /// Checks the load on the block against its resistance.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the method defines no resistance at that level; [`Error::OutOfRange`] for a
    /// load that is negative or not finite.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::{check::{Check, Level}, ply::BlockResistance};
    /// fn check(path: &BlockResistance) -> Result<Check, shankline::Error> {
    ///     path.check(newtons(100e3), Level::Design, 1)
    /// }
    /// ```
    pub fn check(&self, load: Force, level: Level, ply: usize) -> Result<Check, Error> {
        let resistance = self.resistance.at(level)?;
        let check = Check::new(
            Mode::BlockShear,
            Place::Ply(ply),
            load,
            resistance,
            level,
            self.method.method(),
        )?;
        Ok(check.warned(self.cautions()))
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{BlockMethod, BlockShear, block_shear};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let block = BlockShear {
    ///     yield_strength: ksi(50.0),
    ///     tensile_strength: ksi(65.0),
    ///     gross_shear: square_inches(3.0),
    ///     net_shear: square_inches(2.0),
    ///     gross_tension: square_inches(1.5),
    ///     net_tension: square_inches(1.0),
    /// };
    /// // 0.6 Fu Anv + Fy Agt = 78 + 75 kip is above rupture of both faces, 78 + 65 kip.
    /// let old = block_shear(&block, BlockMethod::AiscLrfd1999)?;
    /// assert!((old.tension - 1000.0 * pounds_force(65.0)).abs() < pounds_force(1e-6));
    /// assert_eq!(old.cautions().iter().count(), 1); // that limit was recalled
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        let block = &self.block;
        let gross_yield = 0.6 * block.yield_strength * block.gross_shear;
        let net_rupture = 0.6 * block.tensile_strength * block.net_shear;
        let net_tension = block.tensile_strength * block.net_tension;
        let unlimited = if net_tension >= net_rupture {
            gross_yield + net_tension
        } else {
            net_rupture + block.yield_strength * block.gross_tension
        };
        let limited =
            self.method == BlockMethod::AiscLrfd1999 && self.shear + self.tension < unlimited;
        Cautions::default()
            .with(
                limited
                    .then_some(methods::AISC_LRFD_1999_J4_3_AT_MOST_0_6_FU_ANV_FU_ANT)
                    .and_then(Caution::of_method),
            )
            .with(Caution::of_method(self.method.method()))
    }

    /// The working.
    ///
    /// ```
    /// # use shankline::strength::ply::BlockResistance;
    /// fn steps(path: &BlockResistance) -> usize {
    ///     path.derivation().steps().len()
    /// }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let BlockShear {
            yield_strength: fy,
            tensile_strength: fu,
            gross_shear,
            net_shear,
            gross_tension,
            net_tension,
        } = self.block;
        let mut derivation = Derivation::new("Block shear")
            .step(
                Step::new("shear faces", "V", self.shear_formula, self.shear)
                    .with("Fu", fu)
                    .with("Fy", fy)
                    .with("Anv", net_shear)
                    .with("Agv", gross_shear)
                    .source(self.method.method()),
            )
            .step(
                Step::new("tension face", "T", self.tension_formula, self.tension)
                    .with("k", self.tension_factor)
                    .with("Fu", fu)
                    .with("Fy", fy)
                    .with("Ant", net_tension)
                    .with("Agt", gross_tension),
            );
        let [phi, omega] = [self.factors.resistance, self.factors.safety];
        for (what, symbol, formula, value, factor) in [
            (
                "nominal resistance",
                "Rn",
                "V + T",
                self.resistance.nominal,
                None,
            ),
            (
                "design resistance",
                "Rd",
                if phi.is_some() {
                    "phi * (V + T)"
                } else {
                    "V + T"
                },
                self.resistance.design,
                phi.map(|phi| ("phi", phi)),
            ),
            (
                "allowable load",
                "Ra",
                "(V + T) / Omega",
                self.resistance.allowable,
                omega.map(|omega| ("Omega", omega)),
            ),
        ] {
            if let Some(value) = value {
                let mut step = Step::new(what, symbol, formula, value)
                    .with("V", self.shear)
                    .with("T", self.tension);
                if let Some((symbol, factor)) = factor {
                    step = step.with(symbol, factor);
                }
                derivation = derivation.step(step);
            }
        }
        derivation
    }
}

#[cfg(test)]
mod tests;
