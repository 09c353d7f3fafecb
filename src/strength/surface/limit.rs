//! The pressure a part bears under a head.

use alloc::string::ToString;

use crate::caution::{Caution, Cautions};
use crate::error::{Error, positive};
use crate::source::Method;
use crate::tables::methods;
use crate::tables::plies::{PlyMaterial, StrengthKind};
use crate::tables::surface::{Kinship, PlySurfacePressure, PressureEdition, SurfacePressure};
use crate::units::Stress;

/// The pressure a ply or washer bears under a head.
///
/// ```
/// use shankline::strength::surface::SurfaceLimit;
/// use shankline::tables::plies::PlyMaterial;
/// use shankline::tables::surface::PressureEdition;
/// use shankline::units::{ksi, megapascals};
/// # fn main() -> Result<(), shankline::Error> {
/// let edition = PressureEdition::Vdi2230_2003;
/// let plate = SurfaceLimit::of_ply(PlyMaterial::find("ASTM A36 steel")?, edition)?;
/// assert_eq!(plate.stress, megapascals(490.0)); // that of S235
/// let bar = SurfaceLimit::of_ply(PlyMaterial::find("AISI 1018 steel")?, edition)?;
/// assert_eq!(bar.stress, ksi(54.0)); // not listed: its yield strength
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct SurfaceLimit {
    /// The pressure.
    pub stress: Stress,
    /// Where it comes from.
    pub kind: SurfaceLimitKind,
}

/// Where the limit of a pressure comes from.
///
/// ```
/// use shankline::strength::surface::{SurfaceLimit, SurfaceLimitKind};
/// use shankline::units::megapascals;
/// # fn main() -> Result<(), shankline::Error> {
/// assert_eq!(SurfaceLimit::stated(megapascals(300.0))?.kind, SurfaceLimitKind::Stated);
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum SurfaceLimitKind {
    /// A limiting surface pressure of VDI 2230.
    Listed {
        /// The row.
        row: &'static SurfacePressure,
        /// Whether it is that of the material itself.
        kinship: Kinship,
    },
    /// The yield strength of the material.
    Yield {
        /// Whether it is a typical value and no minimum.
        typical: bool,
    },
    /// Stated by the caller.
    Stated,
}

impl SurfaceLimit {
    /// The limit for a ply: the pG of an edition for it or its kin; where there is none its yield strength.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] for a material with neither.
    ///
    /// ```
    /// use shankline::strength::surface::SurfaceLimit;
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::tables::surface::PressureEdition;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let iron = PlyMaterial::find("grey cast iron class 30")?;
    /// assert!(SurfaceLimit::of_ply(iron, PressureEdition::Vdi2230_1986).is_ok());
    /// assert!(SurfaceLimit::of_ply(iron, PressureEdition::Vdi2230_2003).is_err()); // it has no yield strength
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_ply(ply: &PlyMaterial, edition: PressureEdition) -> Result<Self, Error> {
        if let Some(kin) = PlySurfacePressure::of(ply, edition) {
            let row = kin.pressure()?;
            return Ok(Self {
                stress: row.limiting_pressure,
                kind: SurfaceLimitKind::Listed {
                    row,
                    kinship: kin.kinship,
                },
            });
        }
        let stress = ply.yield_strength.ok_or_else(|| Error::NoValue {
            quantity: "limiting surface pressure",
            subject: ply.to_string(),
            reason: "VDI 2230 lists no kindred material in that edition, and no yield strength was read",
        })?;
        Ok(Self {
            stress,
            kind: SurfaceLimitKind::Yield {
                typical: ply.strength_kind == StrengthKind::Typical,
            },
        })
    }

    /// The limit of a material of VDI 2230 that the part is made of.
    ///
    /// ```
    /// use shankline::strength::surface::SurfaceLimit;
    /// use shankline::tables::surface::{PressureEdition, SurfacePressure};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let s355 = SurfacePressure::find("S355J0 (St 52-3 U, 1.0553)", PressureEdition::Vdi2230_2003)?;
    /// assert_eq!(SurfaceLimit::listed(s355).stress, s355.limiting_pressure);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn listed(row: &'static SurfacePressure) -> Self {
        Self {
            stress: row.limiting_pressure,
            kind: SurfaceLimitKind::Listed {
                row,
                kinship: Kinship::Same,
            },
        }
    }

    /// The least yield strength of the part as its limit: common practice of machine design, no source.
    ///
    /// No design factor is taken off: the greatest force of the bolt is held against it, and of the steel, iron and titanium
    /// plies that VDI 2230 lists in 2003 pG is above the yield strength. It is no upper limit for other editions and
    /// materials: 260 MPa for mild steel in 1986; 230 MPa for 6061-T6, by a kin in a weaker condition.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a strength that is not positive and finite.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceLimit, units::ksi};
    /// assert!(SurfaceLimit::yielding(ksi(50.0)).is_ok());
    /// assert!(SurfaceLimit::yielding(ksi(f64::NAN)).is_err());
    /// ```
    pub fn yielding(strength: Stress) -> Result<Self, Error> {
        Ok(Self {
            stress: positive("yield strength of the ply", strength)?,
            kind: SurfaceLimitKind::Yield { typical: false },
        })
    }

    /// A limit of the caller's, from a test or a data sheet.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a pressure that is not positive and finite.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceLimit, units::megapascals};
    /// assert!(SurfaceLimit::stated(megapascals(0.0)).is_err());
    /// ```
    pub fn stated(pressure: Stress) -> Result<Self, Error> {
        Ok(Self {
            stress: positive("limiting surface pressure", pressure)?,
            kind: SurfaceLimitKind::Stated,
        })
    }

    /// The method: publisher, edition and clause.
    ///
    /// ```
    /// use shankline::{strength::surface::SurfaceLimit, units::ksi};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(SurfaceLimit::yielding(ksi(36.0))?.method().citation, "yield strength of the ply, common practice");
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn method(&self) -> &'static Method {
        match self.kind {
            SurfaceLimitKind::Listed { row, .. } => row.edition.method(),
            SurfaceLimitKind::Yield { .. } => methods::PRESSURE_YIELD,
            SurfaceLimitKind::Stated => methods::PRESSURE_STATED,
        }
    }

    /// What the user must be told.
    ///
    /// ```
    /// use shankline::strength::surface::SurfaceLimit;
    /// use shankline::tables::plies::PlyMaterial;
    /// use shankline::tables::surface::PressureEdition;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = PlyMaterial::find("6061-T6 aluminium, A-basis")?;
    /// let limit = SurfaceLimit::of_ply(sheet, PressureEdition::Vdi2230_2003)?;
    /// assert_eq!(limit.cautions().iter().count(), 2); // by its kin; which the guideline has not checked
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Cautions {
        match self.kind {
            SurfaceLimitKind::Listed { row, kinship } => {
                let kin = (kinship == Kinship::Kin).then_some(Caution::MaterialOutsideMethod {
                    method: row.edition.method(),
                    written_for: row.material,
                });
                Cautions::default().with(kin).and(row.cautions())
            }
            SurfaceLimitKind::Yield { typical } => Cautions::default()
                .with(Some(Caution::CommonPractice {
                    rule: "the pressure under a head is held below the yield strength of the ply",
                }))
                .with(typical.then_some(Caution::TypicalStrength)),
            SurfaceLimitKind::Stated => Cautions::default(),
        }
    }
}
