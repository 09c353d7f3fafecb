//! The parts that go together in random joints, and the methods of their trade.

use shankline::joint::JointMethods;
use shankline::prelude::*;

use super::Dice;

/// The parts that go together, and the methods of their trade.
pub struct Trade {
    pub inch: bool,
    /// Whether bolt and nut are always described, and never of the tables.
    pub own: bool,
    pub threads: &'static [&'static str],
    pub products: &'static [ScrewProduct],
    pub grades: &'static [(BoltGrade, NutGrade)],
    pub nuts: &'static [NutStyle],
    pub washers: &'static [WasherStyle],
    pub materials: &'static [&'static str],
    pub timbers: &'static [&'static str],
}

const fn iso(class: PropertyClass) -> BoltGrade {
    BoltGrade::Iso(class)
}

const METRIC: Trade = Trade {
    inch: false,
    own: false,
    threads: &["M12", "M8", "M10", "M16", "M20", "M24"],
    products: &[
        ScrewProduct::Iso4014,
        ScrewProduct::Iso4014,
        ScrewProduct::Iso4014,
        ScrewProduct::Iso4017,
    ],
    grades: &[
        (iso(PropertyClass::Class8_8), NutGrade::Iso898_2Class8),
        (iso(PropertyClass::Class10_9), NutGrade::Iso898_2Class10),
        (iso(PropertyClass::Class5_6), NutGrade::Iso898_2Class5),
        (iso(PropertyClass::Class12_9), NutGrade::Iso898_2Class12),
    ],
    nuts: &[NutStyle::Iso4032, NutStyle::Iso7040, NutStyle::Iso4033],
    washers: &[
        WasherStyle::Iso7089,
        WasherStyle::Iso7090,
        WasherStyle::Iso7093,
        WasherStyle::Iso7091,
    ],
    materials: &[
        "S355 steel",
        "S235 steel",
        "S275 steel",
        "ASTM A36 steel",
        "6061-T6 aluminium, typical",
        "ductile iron 65-45-12",
    ],
    timbers: &["C24", "GL 24h", "D30"],
};

const INCH: Trade = Trade {
    inch: true,
    own: false,
    threads: &[
        "1/2-13 UNC",
        "3/8-16 UNC",
        "5/8-11 UNC",
        "3/4-10 UNC",
        "1/2-20 UNF",
    ],
    products: &[ScrewProduct::HexCapScrew],
    grades: &[
        (BoltGrade::Sae(SaeGrade::Grade5), NutGrade::SaeJ995Grade5),
        (BoltGrade::Sae(SaeGrade::Grade8), NutGrade::SaeJ995Grade8),
        (BoltGrade::Sae(SaeGrade::Grade2), NutGrade::SaeJ995Grade2),
    ],
    nuts: &[
        NutStyle::Hex,
        NutStyle::InsertLockNe,
        NutStyle::AllMetalLock,
    ],
    washers: &[
        WasherStyle::F436,
        WasherStyle::TypeAWide,
        WasherStyle::TypeANarrow,
    ],
    materials: &[
        "ASTM A36 steel",
        "AISI 1018 steel",
        "ASTM A992 steel",
        "6061-T6 aluminium, typical",
        "grey cast iron class 30",
    ],
    timbers: &["Douglas Fir-Larch", "Southern Pine", "Hem-Fir"],
};

const STRUCTURAL: Trade = Trade {
    threads: &[
        "3/4-10 UNC",
        "1/2-13 UNC",
        "5/8-11 UNC",
        "7/8-9 UNC",
        "1-8 UNC",
    ],
    products: &[ScrewProduct::StructuralBolt],
    grades: &[
        (
            BoltGrade::Astm(AstmGrade::F3125A325Type1),
            NutGrade::AstmA563Dh,
        ),
        (
            BoltGrade::Astm(AstmGrade::F3125A490Type1),
            NutGrade::AstmA563Dh,
        ),
        (
            BoltGrade::Astm(AstmGrade::F3125A325Type1),
            NutGrade::AstmA563C,
        ),
    ],
    nuts: &[NutStyle::HeavyHex],
    washers: &[WasherStyle::F436],
    materials: &["ASTM A36 steel", "ASTM A992 steel"],
    ..INCH
};

/// Sets for preload: bolt, nut and washers of one system.
const SETS: Trade = Trade {
    threads: &["M20", "M12", "M16", "M24"],
    products: &[ScrewProduct::En14399_3],
    grades: &[
        (iso(PropertyClass::Class8_8), NutGrade::Iso898_2Class8),
        (iso(PropertyClass::Class10_9), NutGrade::Iso898_2Class10),
    ],
    nuts: &[NutStyle::En14399_3],
    washers: &[WasherStyle::En14399_6],
    materials: &["S355 steel", "S235 steel", "S275 steel"],
    ..METRIC
};

const THIN_SETS: Trade = Trade {
    products: &[ScrewProduct::En14399_4],
    grades: &[(iso(PropertyClass::Class10_9), NutGrade::Iso898_2Class10)],
    nuts: &[NutStyle::En14399_4],
    ..SETS
};

/// Bolts of aircraft: no table of products has them, so that they state their sizes and strengths.
const AIRCRAFT: Trade = Trade {
    own: true,
    threads: &["1/4-28 UNF", "5/16-24 UNF", "3/8-24 UNF", "1/2-20 UNF"],
    washers: &[WasherStyle::AircraftRegular, WasherStyle::AircraftLight],
    materials: &[
        "2024-T3 aluminium",
        "AISI 4130 steel",
        "6061-T6 aluminium, A-basis",
        "7075-T6 aluminium",
    ],
    ..INCH
};

/// A trade, and methods that it checks by.
pub fn trade(dice: &mut Dice) -> (Trade, JointMethods) {
    let of_sets = |dice: &mut Dice| match dice.below(4) {
        0 | 1 => METRIC,
        2 => SETS,
        _ => THIN_SETS,
    };
    match dice.below(16) {
        0..=2 => (METRIC, JointMethods::machine_design(dice.between(1.2, 3.0))),
        3..=4 => (INCH, JointMethods::machine_design(dice.between(1.2, 3.0))),
        5..=6 => {
            let edition = dice.one(&[AiscEdition::E2016, AiscEdition::E2010, AiscEdition::E2022]);
            if dice.now_and_then(40.0) {
                (STRUCTURAL, JointMethods::aisc_asd(edition))
            } else {
                (STRUCTURAL, JointMethods::aisc_lrfd(edition))
            }
        }
        7..=9 => (of_sets(dice), JointMethods::en_1993()),
        10 => (of_sets(dice), JointMethods::bs_5950()),
        11 => (of_sets(dice), JointMethods::is_800()),
        12 => (of_sets(dice), JointMethods::as_4100()),
        13 => (STRUCTURAL, JointMethods::csa_s16()),
        _ => {
            let shear = dice.one(&[75.0, 75.0, 95.0, 108.0]);
            (AIRCRAFT, JointMethods::mil_hdbk_5(ksi(shear)))
        }
    }
}
