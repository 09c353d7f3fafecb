//! The T-stub of EN 1993-1-8.

use crate::derivation::{Derivation, Step};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::source::Method;
use crate::tables::methods;
use crate::tension::{at_most, part_length, sane_stress, within};
use crate::units::{
    Area, Force, Length, Stress, Torque, from_base, newton_metres, newtons, square_millimetres,
};

const WITHOUT_PRYING: &Method = methods::EN_1993_1_8_2005_TABLE_6_2_NO_PRYING;

/// Failure modes of a T-stub.
///
/// ```
/// use shankline::tension::EnMode;
/// assert_eq!(EnMode::FlangeYields.to_string(), "mode 1, the flange yields");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum EnMode {
    /// Mode 1.
    FlangeYields,
    /// Mode 2.
    BoltsFailAndFlangeYields,
    /// Mode 3.
    BoltsFail,
    /// Modes 1 and 2 in one, where the bolts are too long for prying.
    FlangeYieldsWithoutPrying,
}

impl core::fmt::Display for EnMode {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.pad(match self {
            Self::FlangeYields => "mode 1, the flange yields",
            Self::BoltsFailAndFlangeYields => "mode 2, the bolts fail as the flange yields",
            Self::BoltsFail => "mode 3, the bolts fail",
            Self::FlangeYieldsWithoutPrying => "mode 1-2, the flange yields and does not pry",
        })
    }
}

/// What decides whether a T-stub pries: its bolts stretch before its flange comes down at the edges, or after.
///
/// ```
/// # use shankline::{prelude::*, tension::{EnTStub, TStubBolts}};
/// let anchors = TStubBolts {
///     elongation: millimetres(290.0),
///     stress_area: square_millimetres(353.0),
///     rows: 1,
/// };
/// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
/// assert_eq!(stub.with_bolts(anchors).unwrap().bolts_in_it, Some(anchors));
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct TStubBolts {
    /// Lb: plies and washers between head and nut, and half of the height of both. Of an anchor bolt eight diameters,
    /// grout, plate and washers, and half of the nut.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub elongation: Length,
    /// Tensile stress area As of one bolt.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub stress_area: Area,
    /// Rows of bolts nb, two bolts in each.
    pub rows: usize,
}

/// T-stub by EN 1993-1-8, 6.2.4 and Table 6.2.
///
/// Prying develops while Lb <= Lb* = 8.8 m^3 As nb / (leff,1 t^3), and modes 1 to 3 are looked at. Longer bolts stretch
/// so far that the edges never touch: the flange then yields at 2 Mpl,1 / m, which is less than in mode 1 and than in
/// mode 2 while the bolts hold. So a T-stub with long bolts (anchors, sleeves, thick packs) must be told of them,
/// [`with_bolts`](Self::with_bolts); of one that was not, prying is taken for granted, as a note of the table allows in
/// beam-to-column joints and splices of beams.
///
/// Source: EN 1993-1-8:2005, 6.2.4, by Steel Buildings in Europe, Part 5: Joint Design, 2.3.1, where
/// modes 1 (in the form with the washer), 2 and 3, the plastic moment and n <= 1.25 m were read. Mode 1
/// without washer, 4 Mpl / m, is that form at ew = 0. Without prying: a draft of the standard (December 2000), 6.2.2.3(8),
/// and Lb* = 8.82 m^3 As / (leff t^3) of one row from a European guide to base plates; that the standard rounds to 8.8,
/// multiplies by the rows and has that note is recalled.
///
/// ```
/// use shankline::{prelude::*, tension::{EnMode, EnTStub}};
/// # fn main() -> Result<(), shankline::Error> {
/// // Invented: plate 15 mm of 275 MPa, effective length 150 mm, two M20 8.8 of 141 kN.
/// let stub = EnTStub::new(millimetres(35.0), millimetres(30.0), newtons(282e3))?
///     .plate(millimetres(150.0), millimetres(150.0), millimetres(15.0), megapascals(275.0), 1.0)?;
/// let resistance = stub.resistance()?;
/// assert_eq!(resistance.mode, EnMode::BoltsFailAndFlangeYields);
/// resistance.derivation().check()?;
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnTStub {
    /// m: bolt line to the weld or root of the web, less 0.8 of it.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub m: Length,
    /// n: bolt line to the edge, at most 1.25 m.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub n: Length,
    /// Sum of the tension resistances Ft,Rd of its bolts.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub bolts: Force,
    /// Plastic moment of mode 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment_1: Torque,
    /// Plastic moment of mode 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub moment_2: Torque,
    /// Effective length of mode 1.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_1: Length,
    /// Effective length of mode 2.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub length_2: Length,
    /// Thickness of the plate.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub thickness: Length,
    /// Yield strength of the plate.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub yield_strength: Stress,
    /// gamma M0.
    pub gamma_m0: f64,
    /// ew = dw / 4, zero where the washer is left out.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub washer: Length,
    /// Its bolts, if their length was said.
    pub bolts_in_it: Option<TStubBolts>,
}

impl EnTStub {
    /// Geometry and bolts; n is cut to 1.25 m as the standard does. The plate is still to be given.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for lengths or a bolt resistance outside the [ranges](crate::tension#ranges).
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(70.0), newtons(200e3)).unwrap();
    /// assert_eq!(stub.n, millimetres(50.0));
    /// ```
    pub fn new(m: Length, edge: Length, bolts: Force) -> Result<Self, Error> {
        part_length("m of the T-stub", m)?;
        part_length("edge distance of the T-stub", edge)?;
        within(
            "tension resistance of the bolts",
            bolts,
            newtons(1e-6),
            newtons(1e15),
        )?;
        Ok(Self {
            m,
            n: edge.min(1.25 * m),
            bolts,
            moment_1: newton_metres(0.0),
            moment_2: newton_metres(0.0),
            length_1: from_base(0.0),
            length_2: from_base(0.0),
            thickness: from_base(0.0),
            yield_strength: from_base(0.0),
            gamma_m0: 1.0,
            washer: from_base(0.0),
            bolts_in_it: None,
        })
    }

    /// The plate: effective lengths of modes 1 and 2, thickness, yield strength, gamma M0; Mpl = 0.25 leff t^2
    /// fy / gamma M0.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length or strength outside the [ranges](crate::tension#ranges), or a gamma M0 outside 1 to 2.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
    /// let leff = millimetres(160.0);
    /// let stub = stub.plate(leff, leff, millimetres(10.0), megapascals(250.0), 1.0).unwrap();
    /// assert!((stub.moment_1 - newton_metres(1000.0)).value.abs() < 1e-9);
    /// ```
    pub fn plate(
        self,
        length_1: Length,
        length_2: Length,
        thickness: Length,
        yield_strength: Stress,
        gamma_m0: f64,
    ) -> Result<Self, Error> {
        part_length("effective length of mode 1", length_1)?;
        part_length("effective length of mode 2", length_2)?;
        part_length("thickness of the plate", thickness)?;
        sane_stress("yield strength of the plate", yield_strength)?;
        within("gamma M0", gamma_m0, 1.0, 2.0)?;
        let moment = |length: Length| {
            from_base(
                0.25 * length.value * thickness.value * thickness.value * yield_strength.value
                    / gamma_m0,
            )
        };
        Ok(Self {
            moment_1: moment(length_1),
            moment_2: moment(length_2),
            length_1,
            length_2,
            thickness,
            yield_strength,
            gamma_m0,
            ..self
        })
    }

    /// Mode 1 with the force spread under a washer of this diameter, ew = dw / 4.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a diameter outside the [ranges](crate::tension#ranges), or so wide that the form has no
    /// sense: ew must stay below m and n.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
    /// assert_eq!(stub.with_washer(millimetres(37.0)).unwrap().washer, millimetres(9.25));
    /// ```
    pub fn with_washer(self, diameter: Length) -> Result<Self, Error> {
        part_length("washer diameter", diameter)?;
        at_most("washer diameter", diameter, 3.999 * self.m.min(self.n))?;
        Ok(Self {
            washer: 0.25 * diameter,
            ..self
        })
    }

    /// Its bolts, so that it is seen whether prying develops.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length outside the [ranges](crate::tension#ranges), an area that is not from 1e-3 mm2
    /// to 1 m2, or rows that are not from 1 to 1000.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::{EnMode, EnTStub, TStubBolts}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// // Invented: plate 20 mm, two anchors M24 of 102 kN each
    /// let leff = millimetres(150.0);
    /// let anchors = TStubBolts {
    ///     elongation: millimetres(290.0),
    ///     stress_area: square_millimetres(353.0),
    ///     rows: 1,
    /// };
    /// let stub = EnTStub::new(millimetres(45.0), millimetres(45.0), newtons(204e3))?
    ///     .plate(leff, leff, millimetres(20.0), megapascals(235.0), 1.0)?;
    /// let long = stub.with_bolts(anchors)?.resistance()?;
    /// // Lb* = 8.8 x 45^3 x 353 / (150 x 20^3) = 235.9 mm
    /// assert!((long.limit.unwrap() - millimetres(235.9)).abs() < millimetres(0.1));
    /// assert_eq!((long.prying, long.mode), (Some(false), EnMode::FlangeYieldsWithoutPrying));
    /// // 2 x 3.525 kN m / 45 mm
    /// assert!((long.resistance - newtons(156.7e3)).abs() < newtons(50.0));
    /// assert!(long.resistance < stub.resistance()?.resistance);
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_bolts(self, bolts: TStubBolts) -> Result<Self, Error> {
        part_length("elongation length of the bolts", bolts.elongation)?;
        within(
            "stress area of a bolt",
            bolts.stress_area,
            square_millimetres(1e-3),
            square_millimetres(1e6),
        )?;
        if !(1..=1000).contains(&bolts.rows) {
            let allowed = Allowed::FromTo(1_usize.into(), 1000_usize.into());
            return Err(out_of_range("rows of bolts", bolts.rows, allowed));
        }
        Ok(Self {
            bolts_in_it: Some(bolts),
            ..self
        })
    }

    /// Lb*, the greatest elongation length of bolts with which prying develops.
    fn prying_limit(&self, bolts: &TStubBolts) -> Result<Length, Error> {
        let slender = (self.m / self.thickness).value;
        let cube = slender * slender * slender;
        let limit = 8.8 * cube * bolts.stress_area.value * rows(bolts) / self.length_1.value;
        positive("limit of the elongation length", from_base(limit))
    }

    /// The least of the three modes, or of the two that are left where prying does not develop.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] if no plate has been given.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(200e3)).unwrap();
    /// assert!(stub.resistance().is_err());
    /// ```
    pub fn resistance(&self) -> Result<EnTStubResistance, Error> {
        // A nanonewton metre: less is no plate.
        positive("plastic moment of the flange", self.moment_1)?;
        positive("plastic moment of the flange", self.moment_2)?;
        let (m, n, e) = (self.m.value, self.n.value, self.washer.value);
        let limit = match &self.bolts_in_it {
            Some(bolts) => Some(self.prying_limit(bolts)?),
            None => None,
        };
        let prying = self
            .bolts_in_it
            .zip(limit)
            .map(|(bolts, limit)| bolts.elongation <= limit);
        let (mode_1, mode_2) = if prying == Some(false) {
            let both = 2.0 * self.moment_1.value / m;
            (both, both)
        } else {
            (
                (8.0 * n - 2.0 * e) * self.moment_1.value / (2.0 * m * n - e * (m + n)),
                (2.0 * self.moment_2.value + n * self.bolts.value) / (m + n),
            )
        };
        let mode_3 = self.bolts.value;
        let (mode, least) = if prying == Some(false) && mode_1 <= mode_3 {
            (EnMode::FlangeYieldsWithoutPrying, mode_1)
        } else if mode_1 <= mode_2 && mode_1 <= mode_3 {
            (EnMode::FlangeYields, mode_1)
        } else if mode_2 <= mode_3 {
            (EnMode::BoltsFailAndFlangeYields, mode_2)
        } else {
            (EnMode::BoltsFail, mode_3)
        };
        Ok(EnTStubResistance {
            stub: *self,
            limit,
            prying,
            mode_1: from_base(mode_1),
            mode_2: from_base(mode_2),
            mode_3: self.bolts,
            mode,
            resistance: from_base(least),
        })
    }
}

/// Resistance of a T-stub.
///
/// ```
/// # use shankline::{prelude::*, tension::EnTStub};
/// # fn main() -> Result<(), shankline::Error> {
/// let leff = millimetres(160.0);
/// let thin = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(300e3))?
///     .plate(leff, leff, millimetres(10.0), megapascals(250.0), 1.0)?
///     .resistance()?;
/// assert!((thin.resistance - newtons(100e3)).abs() < newtons(1e-6)); // 4 Mpl / m
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct EnTStubResistance {
    /// The T-stub.
    pub stub: EnTStub,
    /// Lb*, up to which prying develops, if the bolts are known.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    pub limit: Option<Length>,
    /// Whether prying develops; none where nobody said how long the bolts are, and it was taken for granted.
    pub prying: Option<bool>,
    /// FT,1,Rd; without prying FT,1-2,Rd.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub mode_1: Force,
    /// FT,2,Rd; without prying FT,1-2,Rd.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub mode_2: Force,
    /// FT,3,Rd.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub mode_3: Force,
    /// The mode that governs.
    pub mode: EnMode,
    /// Design resistance FT,Rd, the least.
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub resistance: Force,
}

impl EnTStubResistance {
    /// The working.
    ///
    /// ```
    /// # use shankline::{prelude::*, tension::EnTStub};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let leff = millimetres(160.0);
    /// let stub = EnTStub::new(millimetres(40.0), millimetres(40.0), newtons(300e3))?
    ///     .plate(leff, leff, millimetres(10.0), megapascals(250.0), 1.0)?
    ///     .with_washer(millimetres(37.0))?;
    /// stub.resistance()?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        const SOURCE: &Method = methods::EN_1993_1_8_2005_TABLE_6_2;
        let stub = &self.stub;
        let mode_1 = if stub.washer.value > 0.0 {
            Step::new(
                "mode 1",
                "FT1",
                "(8 * n - 2 * ew) * Mpl1 / (2 * m * n - ew * (m + n))",
                self.mode_1,
            )
            .with("n", stub.n)
            .with("ew", stub.washer)
        } else {
            Step::new("mode 1", "FT1", "4 * Mpl1 / m", self.mode_1)
        };
        let moment = |symbol, length_name, length, value| {
            Step::new(
                "plastic moment",
                symbol,
                alloc::format!("0.25 * {length_name} * t^2 * fy / gM0"),
                value,
            )
            .with(length_name, length)
            .with("t", stub.thickness)
            .with("fy", stub.yield_strength)
            .with("gM0", stub.gamma_m0)
            .source(SOURCE)
        };
        let mut derivation = Derivation::new("T-stub in tension").step(moment(
            "Mpl1",
            "leff1",
            stub.length_1,
            stub.moment_1,
        ));
        if let Some((bolts, limit)) = stub.bolts_in_it.zip(self.limit) {
            derivation = derivation.step(
                Step::new(
                    "elongation length up to which prying develops",
                    "Lb'",
                    "8.8 * m^3 * As * nb / (leff1 * t^3)",
                    limit,
                )
                .with("m", stub.m)
                .with("As", bolts.stress_area)
                .with("nb", rows(&bolts))
                .with("leff1", stub.length_1)
                .with("t", stub.thickness)
                .source(WITHOUT_PRYING),
            );
        }
        if self.prying == Some(false) {
            return derivation
                .step(
                    Step::new("modes 1 and 2", "FT12", "2 * Mpl1 / m", self.mode_1)
                        .with("Mpl1", stub.moment_1)
                        .with("m", stub.m)
                        .source(WITHOUT_PRYING),
                )
                .step(
                    Step::new("resistance", "FT", "min(FT12, sFt)", self.resistance)
                        .with("FT12", self.mode_1)
                        .with("sFt", self.mode_3)
                        .source(WITHOUT_PRYING),
                );
        }
        derivation
            .step(moment("Mpl2", "leff2", stub.length_2, stub.moment_2))
            .step(
                mode_1
                    .with("Mpl1", stub.moment_1)
                    .with("m", stub.m)
                    .source(SOURCE),
            )
            .step(
                Step::new(
                    "mode 2",
                    "FT2",
                    "(2 * Mpl2 + n * sFt) / (m + n)",
                    self.mode_2,
                )
                .with("Mpl2", stub.moment_2)
                .with("n", stub.n)
                .with("sFt", stub.bolts)
                .with("m", stub.m)
                .source(SOURCE),
            )
            .step(
                Step::new(
                    "resistance",
                    "FT",
                    "min(FT1, min(FT2, sFt))",
                    self.resistance,
                )
                .with("FT1", self.mode_1)
                .with("FT2", self.mode_2)
                .with("sFt", self.mode_3)
                .source(SOURCE),
            )
    }
}

/// Rows as a factor; at most a thousand.
#[allow(clippy::cast_precision_loss)]
fn rows(bolts: &TStubBolts) -> f64 {
    bolts.rows as f64
}

#[cfg(test)]
mod tests;
