use super::*;
use crate::material::AstmGrade;
use crate::units::inches;
use crate::units::ksi;

/// The 2022 edition has a clause more before these: every clause of J3 is one further on.
#[test]
fn clauses_of_2022_are_one_further_on() {
    use crate::strength::ply::PlyMethod;
    use crate::strength::shear::ShearMethod;
    use crate::strength::slip::{SlipClass, SlipMethod};
    let edition = AiscEdition::E2022;
    let slip = SlipMethod::Aisc360 {
        edition,
        class: SlipClass::A,
    };
    let deformation_matters = true;
    let ply = PlyMethod::Aisc360 {
        edition,
        deformation_matters,
    };
    assert_eq!(
        ShearMethod::Aisc360 { edition }.method().citation,
        "AISC 360-22 J3.7"
    );
    assert!(
        TensionMethod::Aisc360 { edition }
            .method()
            .citation
            .starts_with("AISC 360-22 J3.7")
    );
    assert_eq!(slip.method().citation, "AISC 360-22 J3.9");
    assert!(ply.method().citation.starts_with("AISC 360-22 J3.11"));
}

/// A354 BC (125 ksi) is in the 120 ksi group from 2010 on, as it is in shear; in 2005 it was a
/// threaded part.
#[test]
fn a354_bc_gets_no_more_than_its_group() {
    let strength = AstmGrade::A354Bc.strength(inches(0.75)).unwrap();
    let thread = "3/4-10 UNC".parse().unwrap();
    for (edition, expected) in [
        (AiscEdition::E2005, 0.75 * 125.0),
        (AiscEdition::E2010, 90.0),
        (AiscEdition::E2022, 90.0),
    ] {
        let method = TensionMethod::Aisc360 { edition };
        let found = bolt_tension(&thread, &strength, method, HeadShape::OnFace, None);
        assert!((found.unwrap().stress - ksi(expected)).abs() < ksi(1e-9));
    }
}

/// The strengths of every class of EN 1993-1-8 Table 3.1 were read, and so was the page of Table 3.4, countersunk heads and
/// planes in the shank included.
#[test]
fn no_class_of_en_is_recalled() {
    use crate::material::PropertyClass as C;
    use crate::parts::Zone;
    use crate::strength::shear::{
        ConnectionFacts, LoadedPlane, PlaneRule, ShearMethod, shear_resistance,
    };
    let thread = "M12".parse().unwrap();
    for class in [
        C::Class4_6,
        C::Class4_8,
        C::Class5_6,
        C::Class5_8,
        C::Class6_8,
        C::Class8_8,
        C::Class10_9,
    ] {
        let strength = class.strength(crate::units::millimetres(12.0)).unwrap();
        let method = TensionMethod::En1993;
        let tension =
            bolt_tension(&thread, &strength, method, HeadShape::Countersunk, None).unwrap();
        assert_eq!(tension.cautions().iter().count(), 0, "{class}");
        for zone in [Zone::Shank, Zone::Thread] {
            let shear = shear_resistance(
                &thread,
                &strength,
                &LoadedPlane::equal(&[zone]),
                PlaneRule::Each,
                ShearMethod::En1993,
                &ConnectionFacts::default(),
            );
            assert_eq!(shear.unwrap().cautions().iter().count(), 0, "{class}");
        }
    }
}

/// Shear and tension of one bolt by AISC carry the same cautions about its material.
#[test]
fn material_outside_the_code_is_told_as_in_shear() {
    use crate::parts::Zone;
    use crate::strength::shear::{ShearMethod, bolt_shear};
    let edition = AiscEdition::E2010;
    for grade in [AstmGrade::A574, AstmGrade::F593Group1A, AstmGrade::A354Bc] {
        let strength = grade.strength(inches(0.5)).unwrap();
        let thread = "1/2-13 UNC".parse().unwrap();
        let method = TensionMethod::Aisc360 { edition };
        let tension = bolt_tension(&thread, &strength, method, HeadShape::OnFace, None);
        let method = ShearMethod::Aisc360 { edition };
        let shear = bolt_shear(&thread, &strength, &[Zone::Thread], method).unwrap();
        assert_eq!(tension.unwrap().cautions(), shear.cautions(), "{grade}");
    }
}

/// Table J3.2 lowers the stress of A307 bolts over 5 d of grip; from 2010 on whether in tension too was not read.
#[test]
fn only_a_long_grip_of_a307_is_warned_of() {
    let strength = AstmGrade::A307A.strength(inches(0.75)).unwrap();
    let (stronger, thread) = (
        AstmGrade::F3125A325Type1.strength(inches(0.75)).unwrap(),
        "3/4-10 UNC".parse().unwrap(),
    );
    for (strength, edition, grip, factor, warned) in [
        (&strength, AiscEdition::E2010, Some(4.0), 1.0, false),
        (&strength, AiscEdition::E2010, Some(5.0), 1.0, false),
        (
            &strength,
            AiscEdition::E2010,
            Some(5.0 + 1.0 / 3.0),
            0.96,
            true,
        ),
        (
            &strength,
            AiscEdition::E2005,
            Some(5.0 + 1.0 / 3.0),
            0.96,
            false,
        ),
        (&stronger, AiscEdition::E2010, Some(6.0), 1.0, false),
    ] {
        let method = TensionMethod::Aisc360 { edition };
        let grip = grip.map(|in_d: f64| in_d * inches(0.75));
        let found = bolt_tension(&thread, strength, method, HeadShape::OnFace, grip).unwrap();
        assert!((found.grip_factor - factor).abs() < 1e-9, "{found:?}");
        let alone = bolt_tension(
            &thread,
            strength,
            method,
            HeadShape::OnFace,
            Some(inches(1.0)),
        )
        .unwrap();
        let more = found.cautions().iter().count() - alone.cautions().iter().count();
        assert_eq!(more, usize::from(warned), "{edition:?} {grip:?}");
    }
}
