use super::*;
use crate::caution::Caution;
use crate::material::PropertyClass;
use crate::strength::shear::shear_resistance;
use crate::units::{ksi, millimetres};

fn of(
    method: ShearMethod,
    rule: PlaneRule,
    planes: &[(Zone, f64)],
) -> Result<ShearResistance, Error> {
    let strength = PropertyClass::Class8_8.strength(millimetres(20.0))?;
    let planes: Vec<LoadedPlane> = (1..)
        .zip(planes)
        .map(|(number, &(zone, share))| LoadedPlane {
            number,
            zone,
            share,
        })
        .collect();
    let facts = ConnectionFacts::default();
    shear_resistance(&"M20".parse()?, &strength, &planes, rule, method, &facts)
}

/// Planes are added only where they are loaded alike and their shares make up the load.
#[test]
fn planes_that_may_be_added() {
    for (shares, may) in [
        ([0.5, 0.5], true),
        ([0.6, 0.4], false),
        ([0.4, 0.6], false),
        ([0.4, 0.4], false),
        ([1.0, 1.0], false),
        ([0.5 + 2e-9, 0.5 - 2e-9], false),
    ] {
        let planes = shares.map(|share| (Zone::Shank, share));
        let found = of(ShearMethod::As4100, PlaneRule::Sum, &planes);
        assert_eq!(found.is_ok(), may, "{shares:?}");
    }
    let thirds = [(Zone::Shank, 1.0 / 3.0); 3];
    assert!(of(ShearMethod::Is800, PlaneRule::Sum, &thirds).is_ok());
    assert!(of(ShearMethod::En1993, PlaneRule::Sum, &[(Zone::Shank, 1.0)]).is_err());
}

/// Of planes that are equally weak the first from the head is named; one with less load and less metal can be the weaker.
#[test]
fn the_first_of_equal_planes_governs() {
    let governs = |planes: &[(Zone, f64)]| {
        of(ShearMethod::En1993, PlaneRule::Each, planes)
            .unwrap()
            .governing_plane
    };
    assert_eq!(governs(&[(Zone::Thread, 0.5), (Zone::Thread, 0.5)]), 1);
    assert_eq!(governs(&[(Zone::Thread, 0.4), (Zone::Thread, 0.6)]), 2);
    // 245 of 314 mm2: a plane in thread with 0.78 of the load of one in shank.
    assert_eq!(governs(&[(Zone::Shank, 1.0), (Zone::Thread, 0.77)]), 1);
    assert_eq!(governs(&[(Zone::Shank, 1.0), (Zone::Thread, 0.79)]), 2);
}

#[test]
fn planes_without_load_are_refused_by_name() {
    let refused = of(ShearMethod::En1993, PlaneRule::Each, &[(Zone::Shank, 0.0)]);
    assert!(
        refused
            .unwrap_err()
            .to_string()
            .contains("greatest share of a shear plane")
    );
    for share in [-0.001, 1.001, f64::NAN] {
        let refused = of(
            ShearMethod::En1993,
            PlaneRule::Each,
            &[(Zone::Shank, share)],
        );
        assert!(
            refused
                .unwrap_err()
                .to_string()
                .contains("share of shear plane 1"),
            "{share}"
        );
    }
}

/// NASA-STD-5020 takes the minimum minor diameter; here it is the basic one, which is said wherever any plane cuts a thread.
#[test]
fn any_plane_in_thread_is_told() {
    let method = ShearMethod::NasaStd5020 {
        shear_strength: ksi(95.0),
        ultimate_factor: 1.4,
        fitting_factor: 1.15,
    };
    for (planes, told) in [
        ([(Zone::Shank, 1.0), (Zone::Shank, 1.0)], false),
        ([(Zone::Shank, 1.0), (Zone::Thread, 0.1)], true),
        ([(Zone::Thread, 1.0), (Zone::Thread, 1.0)], true),
    ] {
        let cautions = of(method, PlaneRule::Each, &planes).unwrap().cautions();
        let found = cautions.iter().any(|own| *own == Caution::BasicMinorArea);
        assert_eq!(found, told, "{planes:?}");
    }
}
