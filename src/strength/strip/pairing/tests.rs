//! Pairs of the standards, pairs by numbers, and pairs that finishes decide.

use super::*;
use crate::material::{AstmGrade, BoltGrade, PropertyClass, SaeGrade, StainlessClass};
use crate::tables::galvanic::Metal;
use crate::units::ksi;
use alloc::string::ToString;

const DIPPED: Option<Finish> = Some(Finish::HotDipGalvanized);
const UNDERSIZE: Option<Finish> = Some(Finish::HotDipGalvanizedUndersize);
const PLATED: Option<Finish> = Some(Finish::ZincPlated { baked: false });

fn pair(
    (thread, bolt, bolt_finish): (&str, impl Into<BoltGrade>, Option<Finish>),
    (nut, shape, nut_finish): (NutGrade, NutShape, Option<Finish>),
) -> Pairing {
    let thread: Thread = thread.parse().unwrap();
    let bolt = bolt.into().strength(thread.nominal_diameter()).unwrap();
    nut_pairing(&bolt, bolt_finish, nut, nut_finish, shape, &thread).unwrap()
}

fn standing(pairing: Pairing) -> Option<PairStanding> {
    match pairing {
        Pairing::Listed { standing, .. } => Some(standing),
        _ => None,
    }
}

/// ISO 898-2 Table 2; SAE J995: the pairs are right though the nut is proved to less than the bolt breaks at.
#[test]
fn pairs_of_the_standards_are_right_whatever_the_numbers_say() {
    for finish in [None, PLATED] {
        let sae = (NutGrade::SaeJ995Grade5, NutShape::Hex, finish);
        let found = pair(("1/2-20 UNF", SaeGrade::Grade5, finish), sae);
        assert_eq!(standing(found), Some(PairStanding::Named));
        for thread in ["M6", "M12", "M20"] {
            let iso = (NutGrade::Iso898_2Class12, NutShape::Style2, finish);
            let found = pair((thread, PropertyClass::Class12_9, finish), iso);
            assert_eq!(standing(found), Some(PairStanding::Named));
        }
    }
}

#[test]
fn a_stronger_nut_stands_in() {
    let nut = (NutGrade::Iso898_2Class10, NutShape::Style1, None);
    let found = pair(("M12", PropertyClass::Class8_8, None), nut);
    assert_eq!(standing(found), Some(PairStanding::StandsIn));
    // Of the same proof stress as J995 grade 5.
    let nut = (NutGrade::AstmA563B, NutShape::Hex, PLATED);
    let found = pair(("1/2-20 UNF", SaeGrade::Grade5, PLATED), nut);
    assert_eq!(standing(found), Some(PairStanding::StandsIn));
}

#[test]
fn a_weaker_nut_is_not_shown_to_outlast_the_bolt() {
    let nut = (NutGrade::Iso898_2Class8, NutShape::Style1, PLATED);
    let found = pair(("M12", PropertyClass::Class10_9, PLATED), nut);
    let why = match found {
        Pairing::NotShown { why } => why,
        other => panic!("{other:?}"),
    };
    // 880 of 1040 MPa.
    assert!(matches!(why, NotShown::Weaker { ratio } if (ratio.value - 0.846).abs() < 5e-4));
    assert_eq!(found.severity(), Severity::Undecided);
    let thin = (NutGrade::Iso898_2Class05, NutShape::Thin, PLATED);
    let found = pair(("M12", PropertyClass::Class4_6, PLATED), thin);
    assert_eq!(
        found,
        Pairing::NotShown {
            why: NotShown::Thin
        }
    );
}

#[test]
fn a_bolt_of_stated_strength_goes_by_numbers() {
    let thread: Thread = "1/2-13 UNC".parse().unwrap();
    let bolt = |strength| {
        BoltStrength::stated(thread.nominal_diameter(), None, None, ksi(strength)).unwrap()
    };
    let nut = |bolt: &BoltStrength| {
        let grade = NutGrade::SaeJ995Grade5;
        nut_pairing(bolt, PLATED, grade, PLATED, NutShape::Hex, &thread).unwrap()
    };
    assert!(matches!(nut(&bolt(119.0)), Pairing::Outlasts { .. }));
    assert!(matches!(nut(&bolt(121.0)), Pairing::NotShown { .. }));
}

/// ASTM A449, 1.4; ASTM A563 Table 3: overtapped, B heavy hex has 100 ksi, and 120 are wanted.
#[test]
fn overtapped_nuts_are_weaker() {
    let bolt = ("3/4-10 UNC", AstmGrade::A449Type1, DIPPED);
    let heavy = |grade| pair(bolt, (grade, NutShape::HeavyHex, DIPPED));
    let weaker = heavy(NutGrade::AstmA563B);
    let is_5_of_6 = |ratio: Ratio| (ratio.value - 100.0 / 120.0).abs() < 1e-9;
    assert!(matches!(
        weaker,
        Pairing::NotShown { why: NotShown::Weaker { ratio } } if is_5_of_6(ratio)
    ));
    assert_eq!(
        standing(heavy(NutGrade::AstmA563Dh)),
        Some(PairStanding::Named)
    );
    // J995 gives no strength for oversize threads.
    let sae = pair(bolt, (NutGrade::SaeJ995Grade5, NutShape::Hex, DIPPED));
    let why = NotShown::OversizeStrength;
    assert_eq!(sae, Pairing::NotShown { why });
}

/// Plain it is the pair of A449, 1.4; with thick zinc it is none, so the finish must be known.
#[test]
fn where_the_finish_decides_it_is_asked_for() {
    let judge = |finish| {
        let nut = (NutGrade::AstmA563B, NutShape::Hex, finish);
        pair(("3/4-10 UNC", AstmGrade::A449Type1, finish), nut)
    };
    assert_eq!(standing(judge(PLATED)), Some(PairStanding::Named));
    assert_eq!(
        judge(None),
        Pairing::NotShown {
            why: NotShown::Finish
        }
    );
    // A heavy hex nut of grade C has the same strength overtapped.
    let nut = (NutGrade::AstmA563C, NutShape::HeavyHex, None);
    let found = pair(("3/4-10 UNC", AstmGrade::F3125A325Type1, None), nut);
    assert_eq!(found.severity(), Severity::Fine);
}

#[test]
fn dipped_iso_bolts_take_nuts_with_z() {
    for thread in ["M8", "M10", "M12", "M20"] {
        let bolt = (thread, PropertyClass::Class8_8, DIPPED);
        let z = pair(bolt, (NutGrade::Iso10684Class8z, NutShape::Style1, DIPPED));
        assert_eq!(standing(z), Some(PairStanding::Named), "{thread}");
        // The same nut, its class given without the letter.
        let dipped = pair(bolt, (NutGrade::Iso898_2Class8, NutShape::Style1, DIPPED));
        assert_eq!(dipped.severity(), Severity::Fine, "{thread}");
        let plated = pair(bolt, (NutGrade::Iso898_2Class8, NutShape::Style1, PLATED));
        let why = Misfit::DoesNotStart;
        assert_eq!(plated, Pairing::NotFit { why });
        let undersize = (thread, PropertyClass::Class8_8, UNDERSIZE);
        let usual = pair(
            undersize,
            (NutGrade::Iso898_2Class8, NutShape::Style1, PLATED),
        );
        assert_eq!(standing(usual), Some(PairStanding::Named));
        let z = pair(
            undersize,
            (NutGrade::Iso10684Class8z, NutShape::Style1, DIPPED),
        );
        let why = Misfit::TooLittleOverlap;
        assert_eq!(z, Pairing::NotFit { why });
    }
}

#[test]
fn a_class_with_z_tells_its_thread_without_a_finish() {
    let z = (NutGrade::Iso10684Class8z, NutShape::Style1, None);
    let why = Misfit::Loose;
    let found = pair(("M12", PropertyClass::Class8_8, PLATED), z);
    assert_eq!(found, Pairing::NotFit { why });
    let found = pair(("M12", PropertyClass::Class8_8, None), z);
    assert_eq!(found.severity(), Severity::Fine);
}

/// ASTM F3125 Table 1: type 3 takes C3 and DH3.
#[test]
fn weathering_bolts_want_weathering_nuts() {
    let judge = |nut| {
        let bolt = ("7/8-9 UNC", AstmGrade::F3125A325Type3, None);
        pair(bolt, (nut, NutShape::HeavyHex, None))
    };
    let why = NotShown::NotWeathering;
    assert_eq!(judge(NutGrade::AstmA563Dh), Pairing::NotShown { why });
    assert_eq!(
        standing(judge(NutGrade::AstmA563Dh3)),
        Some(PairStanding::Named)
    );
    assert_eq!(
        standing(judge(NutGrade::AstmA563C3)),
        Some(PairStanding::Suitable)
    );
    let a325 = ("7/8-9 UNC", AstmGrade::F3125A325Type1, None);
    let dh3 = pair(a325, (NutGrade::AstmA563Dh3, NutShape::HeavyHex, None));
    assert_eq!(dh3.severity(), Severity::Fine);
}

/// ASTM A325-14, 3.2.2 and 3.2.3: A194 2H stands in, zinc-coated too, if treated as A563 asks.
#[test]
fn a_row_for_thick_zinc_needs_no_number() {
    let bolt = ("7/8-9 UNC", AstmGrade::A325To2014, DIPPED);
    let found = pair(bolt, (NutGrade::AstmA194_2h, NutShape::HeavyHex, DIPPED));
    assert_eq!(standing(found), Some(PairStanding::Suitable));
    assert!(
        found
            .to_string()
            .starts_with("suitable by the standard: ASTM A194 2H for ASTM A325")
    );
}

/// No panic and no silence on any pair of the tables.
#[test]
fn every_pair_gets_an_answer() {
    let finishes = [
        None,
        DIPPED,
        UNDERSIZE,
        PLATED,
        Some(Finish::MechanicalZinc),
    ];
    let shapes = [
        NutShape::Hex,
        NutShape::HeavyHex,
        NutShape::Style1,
        NutShape::Thin,
    ];
    let mut listed = 0;
    for row in NutPairing::all() {
        for size in ["M8", "M12", "M20", "1/2-13 UNC", "1/2-20 UNF", "1-8 UNC"] {
            let thread: Thread = size.parse().unwrap();
            let Ok(bolt) = row.bolt.strength(thread.nominal_diameter()) else {
                continue;
            };
            for shape in shapes {
                for of_bolt in finishes {
                    for of_nut in finishes {
                        match nut_pairing(&bolt, of_bolt, row.nut, of_nut, shape, &thread) {
                            Ok(found) => {
                                assert!(!found.to_string().is_empty());
                                listed += usize::from(standing(found).is_some());
                            }
                            Err(Error::Mismatch(_)) => {
                                assert!(row.nut.is_oversize() && of_nut == UNDERSIZE);
                            }
                            Err(error) => panic!("{error}"),
                        }
                    }
                }
            }
        }
    }
    assert!(listed > 1000, "{listed}");
}

/// ISO 3506-2, 5.2.3: the class of the nut is that of the bolt. No other steel or class is listed; whether one lets the
/// bolt break first, its proof stress says.
#[test]
fn stainless_nuts_go_with_stainless_bolts_of_their_class() {
    let bare = Some(Finish::Bare(Metal::Stainless18Chromium));
    let steel = Some(Finish::Bare(Metal::Steel));
    let nut = |class: &str| class.parse::<NutGrade>().unwrap();
    for finish in [None, bare] {
        for thread in ["M5", "M8", "M12", "M12x1.25", "M24", "M30"] {
            for shape in [NutShape::Style1, NutShape::Style2] {
                for class in [
                    "A1-50", "A2-50", "A2-70", "A2-80", "A4-70", "A4-80", "C1-110",
                ] {
                    let bolt: BoltGrade = class.parse().unwrap();
                    let found = pair((thread, bolt, finish), (nut(class), shape, finish));
                    assert_eq!(standing(found), Some(PairStanding::Named), "{class}");
                }
            }
        }
    }
    let a2 = StainlessClass::A2_70;
    let of = |grade, finish| (grade, NutShape::Style1, finish);
    for other in ["A4-70", "A2-80", "C1-70", "C3-80"] {
        let found = pair(("M12", a2, bare), of(nut(other), bare));
        assert!(
            matches!(found, Pairing::Outlasts { .. }),
            "{other}: {found}"
        );
    }
    let weaker = pair(("M12", a2, bare), of(nut("A2-50"), bare));
    let Pairing::NotShown {
        why: NotShown::Weaker { ratio },
    } = weaker
    else {
        panic!("{weaker}");
    };
    assert!((ratio.value - 500.0 / 700.0).abs() < 1e-12);
    // A4-100 has no nut of its class here.
    let found = pair(
        ("M12", StainlessClass::A4_100, bare),
        of(nut("A4-80"), bare),
    );
    assert_eq!(found.severity(), Severity::Undecided);
    // Carbon steel on stainless and the other way about: never a pair of a standard.
    let carbon = pair(("M12", a2, bare), of(NutGrade::Iso898_2Class8, steel));
    assert!(matches!(carbon, Pairing::Outlasts { .. }), "{carbon}");
    let carbon = pair(("M12", a2, bare), of(NutGrade::Iso898_2Class6, steel));
    assert!(matches!(carbon, Pairing::Outlasts { .. }), "{carbon}");
    let carbon = pair(("M12", a2, bare), of(NutGrade::Iso898_2Class5, steel));
    assert_eq!(carbon.severity(), Severity::Undecided);
    let stainless = pair(
        ("M12", PropertyClass::Class8_8, steel),
        of(nut("A4-80"), bare),
    );
    assert!(matches!(stainless, Pairing::Outlasts { .. }), "{stainless}");
    let stainless = pair(
        ("M12", PropertyClass::Class8_8, steel),
        of(nut("A2-70"), bare),
    );
    assert_eq!(stainless.severity(), Severity::Undecided);
    for row in NutPairing::all() {
        assert_eq!(row.bolt.is_stainless(), row.nut.is_stainless(), "{row:?}");
    }
    // A thin nut may strip.
    let thin = pair(("M12", a2, bare), (nut("A2-035"), NutShape::Thin, bare));
    assert_eq!(
        thin,
        Pairing::NotShown {
            why: NotShown::Thin
        }
    );
}

/// ASTM F594: bolts of F593 of the same alloy group.
#[test]
fn inch_stainless_nuts_go_with_bolts_of_their_group() {
    for (thread, bolt, nut) in [
        (
            "1/2-13 UNC",
            AstmGrade::F593Group1Cw1,
            NutGrade::AstmF594Group1Cw1,
        ),
        (
            "1-8 UNC",
            AstmGrade::F593Group2Cw2,
            NutGrade::AstmF594Group2Cw2,
        ),
        (
            "3/8-24 UNF",
            AstmGrade::F593Group2Af,
            NutGrade::AstmF594Group2Af,
        ),
    ] {
        let found = pair((thread, bolt, None), (nut, NutShape::HeavyHex, None));
        assert_eq!(standing(found), Some(PairStanding::Named), "{thread}");
    }
}

/// What was recalled of a row is told with the pair that rests on it.
#[test]
fn recalled_pairs_are_told() {
    let mut told = 0;
    for row in NutPairing::all() {
        let pairing = Pairing::Listed {
            row,
            standing: PairStanding::Named,
        };
        let recalled = row.provenance.basis == crate::source::Basis::Memory;
        assert_eq!(
            pairing.cautions().iter().count(),
            usize::from(recalled),
            "{row:?}"
        );
        told += usize::from(recalled);
    }
    assert!(told > 0);
    let other = Pairing::NotShown {
        why: NotShown::Thin,
    };
    assert_eq!(other.cautions().iter().count(), 0);
}
