//! Materials of threads.

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, positive};
use crate::material::BoltStrength;
use crate::source::Provenance;
use crate::tables::plies::{PlyMaterial, StrengthKind};
use crate::units::Stress;

/// Material of a thread.
///
/// ```
/// use shankline::{prelude::*, strength::strip::ThreadMaterial};
/// use shankline::tables::plies::PlyMaterial;
/// # fn main() -> Result<(), shankline::Error> {
/// let bolt = ThreadMaterial::of_bolt(&PropertyClass::Class8_8.strength(millimetres(12.0))?);
/// let hole = ThreadMaterial::of_ply(PlyMaterial::find("ASTM A36 steel")?)?;
/// assert!(bolt.tensile_strength() > hole.tensile_strength());
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(try_from = "super::data::RawThreadMaterial")
)]
pub struct ThreadMaterial {
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round")
    )]
    pub(super) tensile_strength: Stress,
    #[cfg_attr(
        feature = "serde",
        serde(serialize_with = "crate::units::quantity::round_option")
    )]
    shear_strength: Option<Stress>,
    // Of the tables a strength is from; results list them.
    #[cfg_attr(feature = "serde", serde(skip_serializing))]
    pub(super) cautions: Cautions,
}

impl ThreadMaterial {
    /// A material of a tensile strength and, if known, a shear strength, both ultimate.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless both are positive and finite and the shear strength is not above
    /// the tensile strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let aluminium = ThreadMaterial::new(megapascals(240.0), Some(megapascals(130.0)))?;
    /// assert_eq!(aluminium.shear_strength(), Some(megapascals(130.0)));
    /// assert!(ThreadMaterial::new(megapascals(0.0), None).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn new(tensile_strength: Stress, shear_strength: Option<Stress>) -> Result<Self, Error> {
        positive("tensile strength", tensile_strength)?;
        if let Some(stress) = shear_strength {
            positive("shear strength", stress)?;
            if stress > tensile_strength {
                let allowed = Allowed::AtMost(tensile_strength.into());
                return Err(out_of_range("shear strength", stress, allowed));
            }
        }
        Ok(Self {
            tensile_strength,
            shear_strength,
            cautions: Cautions::default(),
        })
    }

    /// The material of a bolt: its minimum tensile strength, no shear strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = ThreadMaterial::of_bolt(&SaeGrade::Grade5.strength(inches(0.5))?);
    /// assert_eq!(bolt.tensile_strength(), ksi(120.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub fn of_bolt(bolt: &BoltStrength) -> Self {
        let of_tensile_strength = bolt.cautions().iter().copied().find(|caution| {
            matches!(
                caution,
                Caution::Stated { .. }
                    | Caution::FromMemory {
                        value: "bolt strength",
                        ..
                    }
            )
        });
        Self {
            tensile_strength: bolt.tensile_strength,
            shear_strength: None,
            cautions: Cautions::default().with(of_tensile_strength),
        }
    }

    /// The material of a tapped hole: tensile and shear strength of a ply material.
    ///
    /// # Errors
    ///
    /// [`Error::NoValue`] if the table has no tensile strength of it.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = ThreadMaterial::of_ply(PlyMaterial::find("6061-T6 aluminium, A-basis")?)?;
    /// assert!(sheet.shear_strength().is_some());
    /// # Ok(())
    /// # }
    /// ```
    pub fn of_ply(material: &PlyMaterial) -> Result<Self, Error> {
        let tensile_strength = material.tensile_strength.ok_or_else(|| Error::NoValue {
            quantity: "tensile strength",
            subject: material.name.into(),
            reason: "the table of ply materials has none",
        })?;
        let typical = material.strength_kind == StrengthKind::Typical;
        let recalled =
            Caution::from_memory("set of strengths", material.provenance).or_else(|| {
                let basis = material.shear_strength_basis?;
                let provenance = Provenance {
                    basis,
                    ..material.provenance
                };
                Caution::from_memory("shear strength", provenance)
            });
        Ok(Self {
            tensile_strength,
            shear_strength: material.shear_strength,
            cautions: Cautions::default()
                .with(typical.then_some(Caution::TypicalStrength))
                .with(recalled),
        })
    }

    /// The same with a shear strength that is a share of the tensile strength. VDI 2230 has 0.65 for
    /// class 8.8, 0.62 for 10.9 and 0.60 for 12.9 (recalled).
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] unless the share is above 0 and at most 1.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let bolt = ThreadMaterial::new(megapascals(800.0), None)?.with_shear_ratio(0.65)?;
    /// assert_eq!(bolt.shear_strength(), Some(megapascals(520.0)));
    /// # Ok(())
    /// # }
    /// ```
    pub fn with_shear_ratio(self, ratio: f64) -> Result<Self, Error> {
        if ratio > 0.0 && ratio <= 1.0 {
            let stress = positive("shear strength", ratio * self.tensile_strength)?;
            Ok(Self {
                shear_strength: Some(stress),
                ..self
            })
        } else {
            let allowed = Allowed::OverThru(0.0.into(), 1.0.into());
            Err(out_of_range("shear over tensile strength", ratio, allowed))
        }
    }

    /// Tensile strength.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(ThreadMaterial::new(ksi(60.0), None)?.tensile_strength(), ksi(60.0));
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn tensile_strength(&self) -> Stress {
        self.tensile_strength
    }

    /// Shear strength, if known.
    ///
    /// ```
    /// use shankline::{prelude::*, strength::strip::ThreadMaterial};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(ThreadMaterial::new(ksi(60.0), None)?.shear_strength(), None);
    /// # Ok(())
    /// # }
    /// ```
    #[must_use]
    pub const fn shear_strength(&self) -> Option<Stress> {
        self.shear_strength
    }

    pub(super) fn known_shear_strength(&self, of: &'static str) -> Result<Stress, Error> {
        self.shear_strength.ok_or_else(|| Error::NoValue {
            quantity: "shear strength",
            subject: of.into(),
            reason: "the method needs one: state it, or its ratio to the tensile strength",
        })
    }
}
