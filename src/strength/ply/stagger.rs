//! Holes in zigzag: the width that is left between them.

use crate::caution::{Caution, Cautions};
use crate::error::{Allowed, Error, out_of_range, sane_length};
use crate::tables::methods;
use crate::units::Length;

/// Rule for the width left by staggered holes.
///
/// ```
/// use shankline::strength::ply::StaggerRule;
/// assert_ne!(StaggerRule::Aisc360, StaggerRule::En1993);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(rename_all = "snake_case")
)]
#[non_exhaustive]
pub enum StaggerRule {
    /// AISC 360 B4.3: holes 1/16 in wider, s^2 / (4 g) back for each diagonal.
    #[cfg_attr(feature = "serde", serde(rename = "aisc_360"))]
    Aisc360,
    /// EN 1993-1-1 6.2.2.2: s^2 / (4 p) back for each diagonal. Recalled; the same form.
    #[cfg_attr(feature = "serde", serde(rename = "en_1993_1_1"))]
    En1993,
}

/// One diagonal of a zigzag path through staggered holes.
///
/// ```
/// use shankline::prelude::*;
/// use shankline::strength::ply::{Stagger, StaggerRule};
/// # fn main() -> Result<(), shankline::Error> {
/// let diagonal = Stagger { along: inches(2.0), across: inches(2.5) };
/// let holes = inches(0.875);
/// let width = Stagger::net_width(StaggerRule::En1993, inches(8.0), holes, 3, &[diagonal; 2])?;
/// assert!((width - inches(8.0 - 3.0 * 0.875 + 2.0 * 0.4)).abs() < inches(1e-9));
/// # Ok(())
/// # }
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize, serde::Deserialize),
    serde(crate = "crate::objects", deny_unknown_fields)
)]
pub struct Stagger {
    /// Distance between the two holes along the load, s.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub along: Length,
    /// Distance between the two holes across the load, g = p.
    #[cfg_attr(feature = "serde", serde(with = "crate::units::quantity"))]
    pub across: Length,
}

impl Stagger {
    /// Net width of one path: gross width less its holes, and s^2 / (4 g) back for each diagonal.
    ///
    /// `width` is the gross width, `hole` the diameter of the `holes` that the path crosses. The path with the
    /// least net width counts.
    ///
    /// # Errors
    ///
    /// [`Error::OutOfRange`] for a length that is not positive and finite, more diagonals than there are
    /// between the holes, or a path that leaves no width or more than the gross one.
    ///
    /// ```
    /// # use shankline::prelude::*;
    /// # use shankline::strength::ply::{Stagger, StaggerRule};
    /// // Straight across: no diagonal.
    /// let width = Stagger::net_width(StaggerRule::Aisc360, inches(4.0), inches(0.8125), 2, &[]);
    /// assert!((width.unwrap() - inches(2.25)).abs() < inches(1e-9));
    /// ```
    pub fn net_width(
        rule: StaggerRule,
        width: Length,
        hole: Length,
        holes: usize,
        diagonals: &[Self],
    ) -> Result<Length, Error> {
        sane_length("width of the ply", width)?;
        sane_length("hole diameter", hole)?;
        let most = holes.saturating_sub(1);
        if diagonals.len() > most {
            let allowed = Allowed::AtMost(most.into());
            return Err(out_of_range(
                "number of diagonals",
                diagonals.len(),
                allowed,
            ));
        }
        let lost = match rule {
            StaggerRule::Aisc360 => hole + crate::units::inches(1.0 / 16.0),
            StaggerRule::En1993 => hole,
        };
        // Beyond a million holes no width is left in any case.
        #[allow(clippy::cast_precision_loss)]
        let mut net = width - holes as f64 * lost;
        for diagonal in diagonals {
            sane_length("stagger of the holes", diagonal.along)?;
            sane_length("gauge of the holes", diagonal.across)?;
            net += diagonal.along * (diagonal.along / diagonal.across).value / 4.0;
        }
        if net.value > 0.0 && net <= width {
            Ok(net)
        } else {
            let allowed = Allowed::OverThru(Length::default().into(), width.into());
            Err(out_of_range("net width of the path", net, allowed))
        }
    }

    /// What the user of either rule must be told.
    ///
    /// ```
    /// use shankline::strength::ply::Stagger;
    /// assert_eq!(Stagger::cautions().iter().count(), 1);
    /// ```
    #[must_use]
    pub fn cautions() -> Cautions {
        Cautions::default().with(Caution::of_method(methods::STAGGER))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::inches;

    /// Two holes of 13/16 in, by AISC 1/16 in wider, across 8 in, on the skew: 2 in along at 3 in apart gives 1/3 in back.
    #[test]
    fn widths_across_holes_by_hand() {
        let skew = Stagger {
            along: inches(2.0),
            across: inches(3.0),
        };
        let width = |rule, gross, holes, diagonals: &[Stagger]| {
            Stagger::net_width(rule, inches(gross), inches(0.8125), holes, diagonals)
        };
        for (rule, by_hand) in [
            (StaggerRule::Aisc360, 8.0 - 1.75 + 1.0 / 3.0),
            (StaggerRule::En1993, 8.0 - 1.625 + 1.0 / 3.0),
        ] {
            let found = width(rule, 8.0, 2, &[skew]).unwrap();
            assert!((found - inches(by_hand)).abs() < inches(1e-9));
        }
        // One diagonal at most between two holes, and none at one.
        assert!(width(StaggerRule::En1993, 8.0, 2, &[skew; 2]).is_err());
        assert!(width(StaggerRule::En1993, 8.0, 1, &[skew]).is_err());
        // Nothing is lost without holes; nothing is left where holes take all of it.
        assert_eq!(
            width(StaggerRule::En1993, 8.0, 0, &[]).unwrap(),
            inches(8.0)
        );
        assert!(width(StaggerRule::En1993, 1.625, 2, &[]).is_err());
        assert!(width(StaggerRule::En1993, 1.626, 2, &[]).is_ok());
        // A path cannot gain over the gross width: 8 in along at 1 in apart would give 16 in back.
        let steep = Stagger {
            along: inches(8.0),
            across: inches(1.0),
        };
        assert!(width(StaggerRule::En1993, 8.0, 2, &[steep]).is_err());
    }
}
