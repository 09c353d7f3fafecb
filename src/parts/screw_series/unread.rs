//! Products whose heads and threads were read, but not what fixes their lengths.

use alloc::string::ToString;

use super::{ScrewProduct, ScrewSeries};
use crate::error::Error;
use crate::source::Provenance;
use crate::tables::bolts::{HexBolt, HexBoltStyle};
use crate::tables::metric_screws::MetricHexCapScrew;
use crate::thread::Thread;

/// The row that shows that the product is made with a thread.
pub(super) fn provenance(product: ScrewProduct, thread: &Thread) -> Result<Provenance, Error> {
    let style = match product {
        ScrewProduct::MetricHexCapScrew => return Ok(MetricHexCapScrew::find(thread)?.provenance),
        ScrewProduct::HeavyHexBolt => HexBoltStyle::HeavyHex,
        _ => HexBoltStyle::Hex,
    };
    let bolt = HexBolt::find(style, thread)?;
    if thread.is_of_cap_screws() {
        return Ok(bolt.provenance);
    }
    Err(Error::NotInTable {
        table: "the tables of ASME B18.2.1 bolts",
        wanted: thread.to_string(),
        available: "they have UNC, UNF or 8-UN threads".into(),
    })
}

impl ScrewSeries {
    pub(super) fn unread_length(&self) -> Error {
        let (quantity, reason) = if self.product == ScrewProduct::MetricHexCapScrew {
            (
                "length tolerance",
                "the table of ASME B18.2.3.1M has not been read, and that of ISO is another standard's",
            )
        } else {
            // Every limit of a cap screw lies inside those of the bolt (notes to ASME B18.2.1-1996): its
            // body may be longer than the bolt's, and its grip gaging length smaller.
            (
                "body length",
                "the rule of ASME B18.2.1 is stated for screws; bolts are made to wider limits",
            )
        };
        Error::NoValue {
            quantity,
            subject: self.to_string(),
            reason,
        }
    }
}

#[cfg(all(test, feature = "joint"))]
mod tests {
    use super::*;
    use crate::joint::{LengthRules, LengthSearch, NutEnd, Stack};
    use crate::parts::{Nut, NutStyle};
    use crate::spread::Spread;
    use crate::units::{UnitSystem, inches, millimetres};

    const PRODUCTS: [(ScrewProduct, &str, NutStyle); 3] = [
        (ScrewProduct::HexBolt, "3/4-10 UNC", NutStyle::Hex),
        (ScrewProduct::HeavyHexBolt, "3/4-10 UNC", NutStyle::HeavyHex),
        (ScrewProduct::MetricHexCapScrew, "M20", NutStyle::Iso4032),
    ];

    #[test]
    fn lengths_and_searches_are_refused() {
        for (product, thread, nut) in PRODUCTS {
            let thread = thread.parse().unwrap();
            let series = ScrewSeries::new(product, &thread).unwrap();
            for length in [inches(1.0), inches(4.0), inches(10.0)] {
                let error = series.length(length).unwrap_err();
                assert!(matches!(error, Error::NoValue { .. }), "{error}");
            }
            let error = series.length(millimetres(f64::NAN)).unwrap_err();
            assert!(matches!(error, Error::OutOfRange { .. }), "{error}");
            assert_eq!(series.stock_lengths().count(), 0);
            let stack = Stack::builder()
                .ply("a", Spread::exact(millimetres(20.0)))
                .ply("b", Spread::exact(millimetres(20.0)))
                .build()
                .unwrap();
            let nut = NutEnd::of(Nut::find(nut, &thread).unwrap()).unwrap();
            let rules = LengthRules::fabrication(UnitSystem::Si);
            let search = LengthSearch::new(&stack, &series, nut, rules).unwrap();
            assert!(matches!(search.run(), Err(Error::NoValue { .. })));
        }
    }

    #[test]
    fn sizes_are_those_of_the_tables() {
        for (product, thread) in [
            (ScrewProduct::HexBolt, "M20"),
            (ScrewProduct::HexBolt, "3/4-20 UNEF"),
            (ScrewProduct::HeavyHexBolt, "3/4-12 UN"),
            (ScrewProduct::HexBolt, "3/4-14 UNS"),
            (ScrewProduct::HeavyHexBolt, "3/8-16 UNC"),
            (ScrewProduct::MetricHexCapScrew, "M20x1.5"),
            (ScrewProduct::MetricHexCapScrew, "3/4-10 UNC"),
        ] {
            let error = ScrewSeries::new(product, &thread.parse().unwrap()).unwrap_err();
            assert!(matches!(error, Error::NotInTable { .. }), "{error}");
        }
        let small = ScrewSeries::new(ScrewProduct::HexBolt, &"3/8-16 UNC".parse().unwrap());
        assert!(small.is_ok());
    }
}
