use super::*;
use crate::units::{megapascals, millimetres};
use alloc::string::ToString;
use proptest::prelude::*;

proptest! {
    #[test]
    fn no_number_breaks_it(d in any::<f64>(), t in any::<f64>(), n in any::<usize>(), f in any::<f64>()) {
        let (d, t) = (millimetres(d), millimetres(t));
        let areas = [
            StressedArea::shear_of_pins(d, n, 2),
            StressedArea::tension_of_rods(d, n),
            StressedArea::bearing(d, t, n),
            StressedArea::net_section(d, t, t, n),
            StressedArea::thread_shear(d, t, f),
            StressedArea::thread_crushing(d, t, f),
        ];
        for area in areas.into_iter().flatten() {
            prop_assert!(area.area.value > 0.0 && area.area.is_finite());
            if let Ok(stress) = area.under(newtons(f)) {
                prop_assert!(stress.stress.value > 0.0 && stress.stress.is_finite());
                prop_assert!(stress.derivation().check().is_ok());
            }
            if let Ok(load) = area.load_at(megapascals(f), 2.0) {
                prop_assert!(load.is_finite());
            }
        }
    }
}

/// By hand: pi x 20 x 2.5 x 4 = 628.32 mm2; pi / 4 (24^2 - 20^2) 4 = 552.92 mm2; (100 - 2 x 20) 5 = 300 mm2.
#[test]
fn areas_by_hand_and_at_their_limits() {
    let mm = millimetres;
    let area =
        |found: Result<StressedArea, Error>| (found.unwrap().area / square_millimetres(1.0)).value;
    let shear = area(StressedArea::thread_shear(mm(20.0), mm(2.5), 4.0));
    assert!((shear - 628.3185).abs() < 1e-3);
    let crushing = area(StressedArea::thread_crushing(mm(24.0), mm(20.0), 4.0));
    assert!((crushing - 552.9203).abs() < 1e-3);
    let net = |width| StressedArea::net_section(mm(width), mm(5.0), mm(20.0), 2);
    assert!((area(net(100.0)) - 300.0).abs() < 1e-9);
    for refused in [40.0, 39.0] {
        let error = net(refused).unwrap_err();
        assert!(matches!(error, Error::OutOfRange { .. }) && error.to_string().contains("width"));
    }
    assert!(net(40.001).is_ok());
    let error = StressedArea::thread_crushing(mm(20.0), mm(20.0), 4.0).unwrap_err();
    assert!(error.to_string().contains("major diameter"));
}
