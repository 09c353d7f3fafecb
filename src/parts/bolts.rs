//! Hex bolts and structural bolts for a thread.

use crate::error::Error;
use crate::tables::bolts::{HexBolt, HexBoltStyle, StructuralBolt};
use crate::tables::hr_bolts::HrBolt;
use crate::tables::nanometres;
use crate::thread::{
    Thread,
    rows::{coarse_row, no_row},
};

impl HexBolt {
    /// The bolt of a style for a Unified thread. The pitch does not matter.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if the style does not come in that size; the message gives its sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::bolts::{HexBolt, HexBoltStyle}};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = HexBolt::find(HexBoltStyle::HeavyHex, &"3/8-16 UNC".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "3/8-16 UNC is not in the table of ASME B18.2.1 heavy hex bolts; \
    ///      its sizes run from 1/2 to 2, the nearest is 1/2",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(style: HexBoltStyle, thread: &Thread) -> Result<&'static Self, Error> {
        let size = nanometres(thread.nominal_diameter());
        let rows = Self::of_style(style);
        rows.iter()
            .find(|bolt| thread.is_unified() && nanometres(bolt.nominal_diameter) == size)
            .ok_or_else(|| {
                let table = match style {
                    HexBoltStyle::Hex => "the table of ASME B18.2.1 hex bolts",
                    HexBoltStyle::HeavyHex => "the table of ASME B18.2.1 heavy hex bolts",
                };
                no_row(table, thread, rows, |bolt| {
                    (bolt.nominal_diameter, bolt.size)
                })
            })
    }
}

impl HrBolt {
    /// The bolt with a metric coarse thread.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::hr_bolts::HrBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// assert_eq!(HrBolt::find(&"M22".parse()?)?.width_across_flats_max, millimetres(36.0));
    /// assert!(HrBolt::find(&"M10".parse()?).is_err());
    /// assert!(HrBolt::find(&"M20x1.5".parse()?).is_err());
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        const TABLE: &str = "the table of EN 14399-3 bolts";
        coarse_row(TABLE, thread, Self::all(), |bolt| {
            (bolt.nominal_diameter, bolt.size)
        })
    }
}

impl StructuralBolt {
    /// The structural bolt with a thread; the threads are coarse.
    ///
    /// # Errors
    ///
    /// [`Error::NotInTable`] if there is none; the message gives the sizes.
    ///
    /// ```
    /// use shankline::{prelude::*, tables::bolts::StructuralBolt};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let error = StructuralBolt::find(&"M10".parse()?).unwrap_err();
    /// assert_eq!(
    ///     error.to_string(),
    ///     "M10 is not in the table of EN 14399-4 bolts; its sizes run from M12 to M36, the nearest is M12",
    /// );
    /// # Ok(())
    /// # }
    /// ```
    pub fn find(thread: &Thread) -> Result<&'static Self, Error> {
        let (table, rows) = if thread.is_unified() {
            (
                "the table of ASME B18.2.6 structural bolts",
                Self::all_inch(),
            )
        } else {
            ("the table of EN 14399-4 bolts", Self::all_metric())
        };
        coarse_row(table, thread, rows, |bolt| {
            (bolt.nominal_diameter, bolt.size)
        })
    }
}
