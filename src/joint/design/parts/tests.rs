//! Which grade a nut gets that is given none.

use super::*;
use crate::material::{AstmGrade, PropertyClass, StainlessClass};
use crate::names::Key;

fn chosen(
    thread: &Thread,
    style: NutStyle,
    bolt: BoltGrade,
    finish: Option<Finish>,
) -> Option<NutGrade> {
    let nut = JointNut {
        style,
        grade: None,
        finish,
    };
    let found = FoundNut::find(nut, thread).ok()?;
    let strength = bolt.strength(thread.nominal_diameter()).ok()?;
    found.grade_for(&strength, finish, thread)
}

/// Of steel like that of its bolt, of weathering steel for weathering bolts only, and tapped oversize only for thick zinc.
#[test]
fn a_nut_that_is_looked_for_goes_with_its_bolt() {
    let zinc = Some(Finish::ZincPlated { baked: false });
    let (mut stainless, mut oversize, mut all) = (0, 0, 0);
    for thread in ["1/2-13 UNC", "M20"] {
        let thread: Thread = thread.parse().unwrap();
        for finish in [None, zinc, Some(Finish::HotDipGalvanized)] {
            let tapping = finish.map_or(NutTapping::Usual, Finish::nut_tapping);
            for &style in NutStyle::ALL {
                for &bolt in BoltGrade::ALL {
                    let Some(nut) = chosen(&thread, style, bolt, finish) else {
                        continue;
                    };
                    let what = || alloc::format!("{bolt}, {style}, {finish:?}: {nut}");
                    assert_eq!(nut.is_stainless(), bolt.is_stainless(), "{}", what());
                    let weathering = matches!(nut, NutGrade::AstmA563C3 | NutGrade::AstmA563Dh3);
                    let of_weathering = matches!(
                        bolt,
                        BoltGrade::Astm(
                            AstmGrade::F3125A325Type3
                                | AstmGrade::F3125A490Type3
                                | AstmGrade::F3125F1852Type3
                                | AstmGrade::F3125F2280Type3
                        )
                    );
                    assert!(!weathering || of_weathering, "{}", what());
                    let thick = tapping != NutTapping::Usual;
                    assert!(!nut.is_oversize() || thick, "{}", what());
                    stainless += usize::from(nut.is_stainless());
                    oversize += usize::from(nut.is_oversize());
                    all += 1;
                }
            }
        }
    }
    assert!(
        stainless > 100 && oversize > 10 && all > 1000,
        "{stainless} {oversize} {all}"
    );
}

/// ISO 898-2 names class 8 for 8.8 and class 10 for 10.9, ISO 3506-2 the class
/// of the bolt.
#[test]
fn the_named_grade_is_taken() {
    let m20: Thread = "M20".parse().unwrap();
    let of = |bolt, finish| chosen(&m20, NutStyle::Iso4032, bolt, finish);
    let class8 = BoltGrade::from(PropertyClass::Class8_8);
    let class10 = BoltGrade::from(PropertyClass::Class10_9);
    assert_eq!(of(class8, None), Some(NutGrade::Iso898_2Class8));
    assert_eq!(of(class10, None), Some(NutGrade::Iso898_2Class10));
    let a4 = BoltGrade::from(StainlessClass::A4_70);
    assert_eq!(of(a4, None), Some(NutGrade::Iso3506_2ClassA4_70));
}

/// Every length on hand in every grade, each once: the same drawer twice, another length in that grade, and another grade.
#[test]
fn what_is_on_hand_is_kept_once() {
    use crate::joint::OnHand;
    use crate::units::millimetres;
    let m12: Thread = "M12".parse().unwrap();
    let joint = Joint::builder("M12").ply("a", "8 mm").build().unwrap();
    let drawer = |length: f64, grade: PropertyClass, count| OnHand {
        bolt: crate::joint::JointBolt {
            length: Some(millimetres(length)),
            grade: grade.into(),
            ..joint.bolt
        },
        count,
    };
    let (weak, strong) = (PropertyClass::Class8_8, PropertyClass::Class10_9);
    let drawers = [
        drawer(60.0, weak, 8),
        drawer(50.0, weak, 8),
        drawer(50.0, strong, 8),
        drawer(50.0, weak, 9),
        drawer(80.0, weak, 7),
        drawer(60.0, weak, 8),
    ];
    let space = DesignSpace::new().on_hand(drawers, 8);
    let screws = Screws::find(joint.bolt.product, &m12, &space, joint.bolt.finish).unwrap();
    let kept: Vec<_> = (screws.on_hand.iter())
        .map(|(screw, grade)| (screw.nominal, *grade))
        .collect();
    let expected = [(50.0, weak), (50.0, strong), (60.0, weak)];
    let expected = expected.map(|(length, grade)| (millimetres(length), BoltGrade::from(grade)));
    assert_eq!(kept, expected);
}

/// Of 3 products and 1 nut, with 1 kind of washer: what a grade that is not made takes away, by hand.
#[test]
fn what_is_not_there_takes_its_combinations_away() {
    // Class 9.8 goes to M16: ISO 898-1.
    let space = DesignSpace::new()
        .threads(["M20".parse().unwrap()])
        .products([
            ScrewProduct::Iso4014,
            ScrewProduct::Iso4017,
            ScrewProduct::Iso8765,
        ])
        .grades([PropertyClass::Class8_8, PropertyClass::Class9_8])
        .nut_styles([NutStyle::Iso4032])
        .washers([WasherStyle::Iso7089]);
    let joint = Joint::builder("M20")
        .ply("a", "8 mm")
        .ply("b", "8 mm")
        .across("1 kN");
    let joint = joint.build().unwrap();
    let designs = joint.design(&space, &[]).unwrap();
    let of = |wanted: fn(&RuledOutReason) -> bool| {
        let found = designs.ruled_out().iter().filter(|own| wanted(&own.reason));
        found.map(|own| own.combinations).collect::<Vec<_>>()
    };
    // ISO 8765 is for fine threads: 1 kind of washer, 1 nut and 2 grades go with it.
    assert_eq!(of(|own| matches!(own, RuledOutReason::NoScrew { .. })), [2]);
    // And with the grade 1 kind of washer, 2 products and 1 nut.
    assert_eq!(of(|own| matches!(own, RuledOutReason::NoGrade { .. })), [2]);
}
