use super::*;
use crate::units::{megapascals, millimetres};

fn anchors(elongation: f64) -> TStubBolts {
    TStubBolts {
        elongation: millimetres(elongation),
        stress_area: square_millimetres(353.0),
        rows: 1,
    }
}

/// Lb* = 8.8 x 45^3 x 353 / (150 x 20^3) = 235.89 mm by hand.
#[test]
fn prying_ends_where_the_bolts_are_too_long() {
    let leff = millimetres(150.0);
    let stub = EnTStub::new(millimetres(45.0), millimetres(45.0), newtons(300e3))
        .unwrap()
        .plate(leff, leff, millimetres(20.0), megapascals(235.0), 1.0)
        .unwrap();
    let silent = stub.resistance().unwrap();
    let short = stub
        .with_bolts(anchors(235.8))
        .unwrap()
        .resistance()
        .unwrap();
    let long = stub
        .with_bolts(anchors(236.0))
        .unwrap()
        .resistance()
        .unwrap();
    assert_eq!(
        [silent.prying, short.prying, long.prying],
        [None, Some(true), Some(false)]
    );
    assert_eq!(silent.resistance, short.resistance);
    // Mpl = 0.25 x 150 x 400 x 235 = 3.525 kN m; 2 Mpl / m = 156.67 kN, with prying 228.3 kN
    assert!((long.resistance.value - 156_666.7).abs() < 0.1);
    assert!((short.resistance.value - 228_333.3).abs() < 0.1);
    for found in [silent, short, long] {
        found.derivation().check().unwrap();
    }
    // Bolts that are weaker than the flange fail, prying or not.
    let weak = EnTStub {
        bolts: newtons(100e3),
        ..stub
    };
    let weak = weak
        .with_bolts(anchors(236.0))
        .unwrap()
        .resistance()
        .unwrap();
    assert_eq!(weak.mode, EnMode::BoltsFail);
    weak.derivation().check().unwrap();
}

#[test]
fn bolts_of_a_t_stub_are_refused() {
    let stub = EnTStub::new(millimetres(45.0), millimetres(45.0), newtons(1e5)).unwrap();
    let good = anchors(200.0);
    for wrong in [
        anchors(0.0),
        anchors(f64::NAN),
        TStubBolts { rows: 0, ..good },
        TStubBolts { rows: 1001, ..good },
        TStubBolts {
            stress_area: square_millimetres(-1.0),
            ..good
        },
    ] {
        assert!(stub.with_bolts(wrong).is_err(), "{wrong:?}");
    }
    // No plate, no limit.
    assert!(stub.with_bolts(good).unwrap().resistance().is_err());
}
