//! What a ply bears, asked mode by mode.

use super::modes::{Asked, MODES};
use super::{Ply, PlyBolt, PlyMethod, PlyMode, PlyOutcome};
use crate::error::{Error, positive};
use crate::strength::check::Mode;
use crate::strength::code::{en_1993, mil_hdbk_5};
use crate::units::Length;
use alloc::vec::Vec;

impl Ply {
    /// Every mode of the ply, and bearing on the bolt, with what became of it. No mode drops another.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a dimension or strength that is not positive and finite, a hole smaller than
    /// the bolt, a distance inside the hole, or a factor that is not from 1 to 100.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod, PlyNeed, PlyOutcome};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let a36 = PlyMaterial::find("ASTM A36 steel")?;
    /// let plate = Ply::of(a36, millimetres(10.0), millimetres(18.0));
    /// let bolt = PlyBolt::of(&PropertyClass::Class8_8.strength(millimetres(16.0))?);
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// let modes = plate.assess(millimetres(16.0), bolt, method)?;
    /// // Bearing of ply and bolt: no distance and no width is known.
    /// assert_eq!(modes.iter().filter(|mode| mode.outcome.found().is_some()).count(), 2);
    /// assert_eq!(modes[2].outcome, PlyOutcome::Missing(vec![PlyNeed::EndDistance]));
    /// # Ok(())
    /// # }
    /// ```
    pub fn assess(
        &self,
        diameter: Length,
        bolt: PlyBolt,
        method: PlyMethod,
    ) -> Result<Vec<PlyMode>, Error> {
        let asked = self.asked(diameter, bolt, method)?;
        let mut modes = Vec::with_capacity(MODES.len());
        for mode in MODES {
            let outcome = asked.in_mode(mode)?;
            modes.push(PlyMode { mode, outcome });
        }
        Ok(modes)
    }

    /// One mode by itself.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::check::{Level, Mode};
    /// use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// // A grade 1 bolt is softer than the sheet it bears on: 36 ksi x 3/4 x 0.18 in / 2.
    /// let sheet = Ply::of(PlyMaterial::find("AISI 4130 steel")?, inches(0.18), inches(0.75));
    /// let bolt = PlyBolt::of(&SaeGrade::Grade1.strength(inches(0.75))?);
    /// let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    /// let outcome = sheet.in_mode(Mode::BoltBearing, inches(0.75), bolt, method)?;
    /// let allowable = outcome.found().unwrap().resistance.at(Level::Allowable)?;
    /// assert!(((allowable / pounds_force(2430.0)).value - 1.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn in_mode(
        &self,
        mode: Mode,
        diameter: Length,
        bolt: PlyBolt,
        method: PlyMethod,
    ) -> Result<PlyOutcome, Error> {
        self.asked(diameter, bolt, method)?.in_mode(mode)
    }

    /// The most the ply bears in a single lap with one row of bolts, which tilts them: EN 1993-1-8, 3.6.1(10), 1.5
    /// fu d t over 1.25. The clause wants washers under head and nut as well, hardened ones for classes 8.8 and
    /// 10.9 (recalled). A row is across the load: with a pitch along it there are two. Other methods have no such
    /// rule.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{check::Level, ply::{Ply, PlyMethod}};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let plate = Ply::of(PlyMaterial::find("S235 steel")?, millimetres(5.0), millimetres(18.0));
    /// let outcome = plate.single_lap(millimetres(16.0), PlyMethod::En1993)?;
    /// let design = outcome.found().unwrap().resistance.at(Level::Design)?;
    /// // 1.5 x 360 x 16 x 5 / 1.25
    /// assert!(((design / newtons(34_560.0)).value - 1.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn single_lap(&self, diameter: Length, method: PlyMethod) -> Result<PlyOutcome, Error> {
        let asked = self.asked(diameter, PlyBolt::default(), method)?;
        en_1993::ply::single_lap(&asked)
    }

    /// The most the net section bears where the joint must not slip at the ultimate limit state, category C of EN
    /// 1993-1-8 3.4.1: it must not yield, (w - d0) t fy over 1.0 (EN 1993-1-1, 6.2.3(4), recalled). Other methods have
    /// no such rule.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{check::Level, ply::{Ply, PlyMethod}};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let mut strap = Ply::of(PlyMaterial::find("S235 steel")?, millimetres(4.0), millimetres(22.0));
    /// strap.width = Some(millimetres(60.0));
    /// let outcome = strap.net_section_without_slip(millimetres(20.0), PlyMethod::En1993)?;
    /// let design = outcome.found().unwrap().resistance.at(Level::Design)?;
    /// // (60 - 22) x 4 x 235
    /// assert!(((design / newtons(35_720.0)).value - 1.0).abs() < 1e-9);
    /// # Ok(())
    /// # }
    /// ```
    pub fn net_section_without_slip(
        &self,
        diameter: Length,
        method: PlyMethod,
    ) -> Result<PlyOutcome, Error> {
        let asked = self.asked(diameter, PlyBolt::default(), method)?;
        en_1993::ply::net_section_without_slip(&asked)
    }

    /// The most the ply bears at limit load without yield, beside the ultimate strength of [`Mode::Bearing`]: MIL-HDBK-5, Fbry d t
    /// over the fitting factor, for 14 CFR 25.305 has no detrimental permanent deformation at limit load (recalled). Other methods
    /// have no such rule.
    ///
    /// # Errors
    ///
    /// As [`assess`](Self::assess).
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::{check::Level, ply::{Ply, PlyMethod}};
    /// use shankline::tables::plies::PlyMaterial;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let sheet = PlyMaterial::find("2024-T3 aluminium")?;
    /// let plain = Ply::of(sheet, inches(0.1), inches(0.25));
    /// let ply = Ply { end_distance: Some(inches(0.5)), ..plain }.with_bearing_of(sheet);
    /// let method = PlyMethod::MilHdbk5 { ultimate_factor: 1.5, fitting_factor: 1.15 };
    /// let outcome = ply.yield_in_bearing(inches(0.25), method)?;
    /// let allowable = outcome.found().unwrap().resistance.at(Level::Allowable)?;
    /// // 88 ksi x 0.25 in x 0.1 in / 1.15
    /// assert!((allowable - pounds_force(1913.0)).abs() < pounds_force(0.1));
    /// # Ok(())
    /// # }
    /// ```
    pub fn yield_in_bearing(
        &self,
        diameter: Length,
        method: PlyMethod,
    ) -> Result<PlyOutcome, Error> {
        let asked = self.asked(diameter, PlyBolt::default(), method)?;
        mil_hdbk_5::yield_in_bearing(&asked)
    }

    /// The question, its inputs looked at once for all modes.
    pub(crate) fn asked(
        &self,
        diameter: Length,
        bolt: PlyBolt,
        method: PlyMethod,
    ) -> Result<Asked<'_>, Error> {
        self.check_inputs(diameter)?;
        for (name, stress) in [
            ("yield strength of the bolt", bolt.yield_strength),
            ("tensile strength of the bolt", bolt.tensile_strength),
        ] {
            if let Some(stress) = stress {
                positive(name, stress)?;
            }
        }
        Ok(Asked {
            ply: self,
            diameter,
            bolt,
            method,
        })
    }
}
