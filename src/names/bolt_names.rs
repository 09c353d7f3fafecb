//! Codes and labels of bolt grades.

use super::{AstmGrade, BoltGrade, Named, PropertyClass, SaeGrade, StainlessClass};

/// Code and label of every grade of the tables.
pub(super) const NAMES: [Named<BoltGrade>; 117] = [
    (
        BoltGrade::Sae(SaeGrade::Grade1),
        "sae_j429_1",
        "SAE J429 grade 1",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade2),
        "sae_j429_2",
        "SAE J429 grade 2",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade4),
        "sae_j429_4",
        "SAE J429 grade 4",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade5),
        "sae_j429_5",
        "SAE J429 grade 5",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade5_1),
        "sae_j429_5_1",
        "SAE J429 grade 5.1",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade5_2),
        "sae_j429_5_2",
        "SAE J429 grade 5.2",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade7),
        "sae_j429_7",
        "SAE J429 grade 7",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade8),
        "sae_j429_8",
        "SAE J429 grade 8",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade8_1),
        "sae_j429_8_1",
        "SAE J429 grade 8.1",
    ),
    (
        BoltGrade::Sae(SaeGrade::Grade8_2),
        "sae_j429_8_2",
        "SAE J429 grade 8.2",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class3_6),
        "iso_898_1_3_6",
        "ISO 898-1 class 3.6",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class4_6),
        "iso_898_1_4_6",
        "ISO 898-1 class 4.6",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class4_8),
        "iso_898_1_4_8",
        "ISO 898-1 class 4.8",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class5_6),
        "iso_898_1_5_6",
        "ISO 898-1 class 5.6",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class5_8),
        "iso_898_1_5_8",
        "ISO 898-1 class 5.8",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class6_8),
        "iso_898_1_6_8",
        "ISO 898-1 class 6.8",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class8_8),
        "iso_898_1_8_8",
        "ISO 898-1 class 8.8",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class9_8),
        "iso_898_1_9_8",
        "ISO 898-1 class 9.8",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class10_9),
        "iso_898_1_10_9",
        "ISO 898-1 class 10.9",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class12_9),
        "iso_898_1_12_9",
        "ISO 898-1 class 12.9",
    ),
    (
        BoltGrade::Iso(PropertyClass::Class12_9Underlined),
        "iso_898_1_12_9_underlined",
        "ISO 898-1 class 12.9 underlined",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A1_50),
        "iso_3506_1_a1_50",
        "ISO 3506-1 class A1-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A1_70),
        "iso_3506_1_a1_70",
        "ISO 3506-1 class A1-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A1_80),
        "iso_3506_1_a1_80",
        "ISO 3506-1 class A1-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A2_50),
        "iso_3506_1_a2_50",
        "ISO 3506-1 class A2-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A2_70),
        "iso_3506_1_a2_70",
        "ISO 3506-1 class A2-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A2_80),
        "iso_3506_1_a2_80",
        "ISO 3506-1 class A2-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A3_50),
        "iso_3506_1_a3_50",
        "ISO 3506-1 class A3-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A3_70),
        "iso_3506_1_a3_70",
        "ISO 3506-1 class A3-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A3_80),
        "iso_3506_1_a3_80",
        "ISO 3506-1 class A3-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A4_50),
        "iso_3506_1_a4_50",
        "ISO 3506-1 class A4-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A4_70),
        "iso_3506_1_a4_70",
        "ISO 3506-1 class A4-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A4_80),
        "iso_3506_1_a4_80",
        "ISO 3506-1 class A4-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A4_100),
        "iso_3506_1_a4_100",
        "ISO 3506-1 class A4-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A5_50),
        "iso_3506_1_a5_50",
        "ISO 3506-1 class A5-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A5_70),
        "iso_3506_1_a5_70",
        "ISO 3506-1 class A5-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A5_80),
        "iso_3506_1_a5_80",
        "ISO 3506-1 class A5-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A5_100),
        "iso_3506_1_a5_100",
        "ISO 3506-1 class A5-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A8_70),
        "iso_3506_1_a8_70",
        "ISO 3506-1 class A8-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A8_80),
        "iso_3506_1_a8_80",
        "ISO 3506-1 class A8-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::A8_100),
        "iso_3506_1_a8_100",
        "ISO 3506-1 class A8-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D2_70),
        "iso_3506_1_d2_70",
        "ISO 3506-1 class D2-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D2_80),
        "iso_3506_1_d2_80",
        "ISO 3506-1 class D2-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D2_100),
        "iso_3506_1_d2_100",
        "ISO 3506-1 class D2-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D4_70),
        "iso_3506_1_d4_70",
        "ISO 3506-1 class D4-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D4_80),
        "iso_3506_1_d4_80",
        "ISO 3506-1 class D4-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D4_100),
        "iso_3506_1_d4_100",
        "ISO 3506-1 class D4-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D6_70),
        "iso_3506_1_d6_70",
        "ISO 3506-1 class D6-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D6_80),
        "iso_3506_1_d6_80",
        "ISO 3506-1 class D6-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D6_100),
        "iso_3506_1_d6_100",
        "ISO 3506-1 class D6-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D8_70),
        "iso_3506_1_d8_70",
        "ISO 3506-1 class D8-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D8_80),
        "iso_3506_1_d8_80",
        "ISO 3506-1 class D8-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::D8_100),
        "iso_3506_1_d8_100",
        "ISO 3506-1 class D8-100",
    ),
    (
        BoltGrade::Stainless(StainlessClass::C1_50),
        "iso_3506_1_c1_50",
        "ISO 3506-1 class C1-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::C1_70),
        "iso_3506_1_c1_70",
        "ISO 3506-1 class C1-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::C1_110),
        "iso_3506_1_c1_110",
        "ISO 3506-1 class C1-110",
    ),
    (
        BoltGrade::Stainless(StainlessClass::C3_80),
        "iso_3506_1_c3_80",
        "ISO 3506-1 class C3-80",
    ),
    (
        BoltGrade::Stainless(StainlessClass::C4_50),
        "iso_3506_1_c4_50",
        "ISO 3506-1 class C4-50",
    ),
    (
        BoltGrade::Stainless(StainlessClass::C4_70),
        "iso_3506_1_c4_70",
        "ISO 3506-1 class C4-70",
    ),
    (
        BoltGrade::Stainless(StainlessClass::F1_45),
        "iso_3506_1_f1_45",
        "ISO 3506-1 class F1-45",
    ),
    (
        BoltGrade::Stainless(StainlessClass::F1_60),
        "iso_3506_1_f1_60",
        "ISO 3506-1 class F1-60",
    ),
    (
        BoltGrade::Astm(AstmGrade::A307A),
        "astm_a307_a",
        "ASTM A307 A",
    ),
    (
        BoltGrade::Astm(AstmGrade::A307B),
        "astm_a307_b",
        "ASTM A307 B",
    ),
    (
        BoltGrade::Astm(AstmGrade::A449Type1),
        "astm_a449_type_1",
        "ASTM A449 type 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::A449Type2),
        "astm_a449_type_2",
        "ASTM A449 type 2",
    ),
    (
        BoltGrade::Astm(AstmGrade::A449Type3),
        "astm_a449_type_3",
        "ASTM A449 type 3",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125A325Type1),
        "astm_f3125_a325_type_1",
        "ASTM F3125 A325 type 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125F1852Type1),
        "astm_f3125_f1852_type_1",
        "ASTM F3125 F1852 type 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125A325Type3),
        "astm_f3125_a325_type_3",
        "ASTM F3125 A325 type 3",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125F1852Type3),
        "astm_f3125_f1852_type_3",
        "ASTM F3125 F1852 type 3",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125A490Type1),
        "astm_f3125_a490_type_1",
        "ASTM F3125 A490 type 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125F2280Type1),
        "astm_f3125_f2280_type_1",
        "ASTM F3125 F2280 type 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125A490Type3),
        "astm_f3125_a490_type_3",
        "ASTM F3125 A490 type 3",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125F2280Type3),
        "astm_f3125_f2280_type_3",
        "ASTM F3125 F2280 type 3",
    ),
    (
        BoltGrade::Astm(AstmGrade::A325To2014),
        "astm_a325_to_2014",
        "ASTM A325 to 2014",
    ),
    (
        BoltGrade::Astm(AstmGrade::A354Bc),
        "astm_a354_bc",
        "ASTM A354 BC",
    ),
    (
        BoltGrade::Astm(AstmGrade::A354BdTo2011),
        "astm_a354_bd_to_2011",
        "ASTM A354 BD to 2011",
    ),
    (
        BoltGrade::Astm(AstmGrade::A354Bd),
        "astm_a354_bd",
        "ASTM A354 BD",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B5),
        "astm_a193_b5",
        "ASTM A193 B5",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B6),
        "astm_a193_b6",
        "ASTM A193 B6",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B7),
        "astm_a193_b7",
        "ASTM A193 B7",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B7m),
        "astm_a193_b7m",
        "ASTM A193 B7M",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B16),
        "astm_a193_b16",
        "ASTM A193 B16",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B8Class1),
        "astm_a193_b8_class_1",
        "ASTM A193 B8 class 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B8mClass1),
        "astm_a193_b8m_class_1",
        "ASTM A193 B8M class 1",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B8Class2),
        "astm_a193_b8_class_2",
        "ASTM A193 B8 class 2",
    ),
    (
        BoltGrade::Astm(AstmGrade::A193B8mClass2),
        "astm_a193_b8m_class_2",
        "ASTM A193 B8M class 2",
    ),
    (BoltGrade::Astm(AstmGrade::A574), "astm_a574", "ASTM A574"),
    (
        BoltGrade::Astm(AstmGrade::F593Group1Af),
        "astm_f593_group_1_af",
        "ASTM F593 group 1 AF",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group1A),
        "astm_f593_group_1_a",
        "ASTM F593 group 1 A",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group1Cw1),
        "astm_f593_group_1_cw1",
        "ASTM F593 group 1 CW1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group1Cw2),
        "astm_f593_group_1_cw2",
        "ASTM F593 group 1 CW2",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group2Af),
        "astm_f593_group_2_af",
        "ASTM F593 group 2 AF",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group2A),
        "astm_f593_group_2_a",
        "ASTM F593 group 2 A",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group2Cw1),
        "astm_f593_group_2_cw1",
        "ASTM F593 group 2 CW1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group2Cw2),
        "astm_f593_group_2_cw2",
        "ASTM F593 group 2 CW2",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group4A),
        "astm_f593_group_4_a",
        "ASTM F593 group 4 A",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group4Cw1),
        "astm_f593_group_4_cw1",
        "ASTM F593 group 4 CW1",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group4Cw2),
        "astm_f593_group_4_cw2",
        "ASTM F593 group 4 CW2",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group5H),
        "astm_f593_group_5_h",
        "ASTM F593 group 5 H",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group5Ht),
        "astm_f593_group_5_ht",
        "ASTM F593 group 5 HT",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group6H),
        "astm_f593_group_6_h",
        "ASTM F593 group 6 H",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group6Ht),
        "astm_f593_group_6_ht",
        "ASTM F593 group 6 HT",
    ),
    (
        BoltGrade::Astm(AstmGrade::F593Group7Ah),
        "astm_f593_group_7_ah",
        "ASTM F593 group 7 AH",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m4_6),
        "astm_f568m_4_6",
        "ASTM F568M 4.6",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m4_8),
        "astm_f568m_4_8",
        "ASTM F568M 4.8",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m5_8),
        "astm_f568m_5_8",
        "ASTM F568M 5.8",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m8_8),
        "astm_f568m_8_8",
        "ASTM F568M 8.8",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m8_8Boron),
        "astm_f568m_8_8_boron",
        "ASTM F568M 8.8 boron",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m8_8_3),
        "astm_f568m_8_8_3",
        "ASTM F568M 8.8.3",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m9_8),
        "astm_f568m_9_8",
        "ASTM F568M 9.8",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m10_9),
        "astm_f568m_10_9",
        "ASTM F568M 10.9",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m10_9Alloy),
        "astm_f568m_10_9_alloy",
        "ASTM F568M 10.9 alloy",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m10_9_3),
        "astm_f568m_10_9_3",
        "ASTM F568M 10.9.3",
    ),
    (
        BoltGrade::Astm(AstmGrade::F568m12_9),
        "astm_f568m_12_9",
        "ASTM F568M 12.9",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125A325m),
        "astm_f3125_a325m",
        "ASTM F3125 A325M",
    ),
    (
        BoltGrade::Astm(AstmGrade::F3125A490m),
        "astm_f3125_a490m",
        "ASTM F3125 A490M",
    ),
];
