// Written by tests/tables_are_current.rs from tables/methods.csv. Not edited by hand.

use crate::source::{Basis, Method, Publisher};

pub(crate) const DISTORTION_ENERGY_YIELD: &Method = &Method { key: "distortion-energy-yield", citation: "distortion energy, yield", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("0.577 of the yield strength"), modes: Some("bolt_shear"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "Shigley's Mechanical Engineering Design, 9th ed., problems of chapter 8" };
pub(crate) const DISTORTION_ENERGY_PROOF: &Method = &Method { key: "distortion-energy-proof", citation: "distortion energy, proof", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("0.577 of the proof strength"), modes: Some("bolt_shear"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "Shigley's Mechanical Engineering Design, 9th ed., Example 8-6" };
pub(crate) const AISC_360_05_J3_6: &Method = &Method { key: "aisc-360-05-j3.6", citation: "AISC 360-05 J3.6", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("J3.6, Table J3.2"), modes: Some("bolt_shear"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a structural designers' handbook, Table 5.16" };
pub(crate) const AISC_360_10_J3_6: &Method = &Method { key: "aisc-360-10-j3.6", citation: "AISC 360-10 J3.6", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2010"), clause: Some("J3.6, Table J3.2"), modes: Some("bolt_shear"), levels: Some("nominal design allowable"), basis: Basis::Published, read_in: "a scan of the page" };
pub(crate) const AISC_360_16_J3_6: &Method = &Method { key: "aisc-360-16-j3.6", citation: "AISC 360-16 J3.6", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("J3.6, Table J3.2"), modes: Some("bolt_shear"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a primer on chapter J of the edition of 2016; a designer's sheet to it has the safety factor" };
pub(crate) const AISC_360_22_J3_7: &Method = &Method { key: "aisc-360-22-j3.7", citation: "AISC 360-22 J3.7", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("J3.7, Table J3.2"), modes: Some("bolt_shear"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_4: &Method = &Method { key: "en-1993-1-8-2005-table-3.4", citation: "EN 1993-1-8:2005 Table 3.4", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.4, shear; and shear with tension"), modes: Some("bolt_shear combined"), levels: Some("nominal design"), basis: Basis::Published, read_in: "copies of the page; a European design guide" };
pub(crate) const BS_5950_1_2000_6_3_2_1: &Method = &Method { key: "bs-5950-1-2000-6.3.2.1", citation: "BS 5950-1:2000 6.3.2.1", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.2.1, Table 30"), modes: Some("bolt_shear"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a designers' manual" };
pub(crate) const BS_449_2: &Method = &Method { key: "bs-449-2", citation: "BS 449-2", publisher: Publisher::Bsi, document: "BS 449-2", edition: None, clause: Some("allowable stresses of bolts"), modes: Some("bolt_shear"), levels: Some("allowable"), basis: Basis::Reproduced, read_in: "printed tables of bolt loads" };
pub(crate) const AS_4100_9_3_2_1: &Method = &Method { key: "as-4100-9.3.2.1", citation: "AS 4100 9.3.2.1", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.2.1"), modes: Some("bolt_shear"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "several pages; NZS 3404 says the same; krd: an engineer's summary of the edition of 2020 in a public repository, 9.2.2.1" };
pub(crate) const IS_800_2007_10_3_3: &Method = &Method { key: "is-800-2007-10.3.3", citation: "IS 800:2007 10.3.3", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.3"), modes: Some("bolt_shear"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a course page and worked examples" };
pub(crate) const CSA_S16_13_12_1_2: &Method = &Method { key: "csa-s16-13.12.1.2", citation: "CSA S16 13.12.1.2", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.12.1.2"), modes: Some("bolt_shear"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "several pages" };
pub(crate) const MIL_HDBK_5_TABLE_8_1_5_A: &Method = &Method { key: "mil-hdbk-5-table-8.1.5-a", citation: "MIL-HDBK-5 Table 8.1.5(a)", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("Table 8.1.5(a)"), modes: Some("bolt_shear"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "an aviation technical page that cites the table" };
pub(crate) const MIL_HDBK_5_TABLE_8_1_5_B: &Method = &Method { key: "mil-hdbk-5-table-8.1.5-b", citation: "MIL-HDBK-5 Table 8.1.5(b), tension", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("Table 8.1.5(b)"), modes: Some("bolt_tension"), levels: Some("nominal allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const CFR_25_303: &Method = &Method { key: "cfr-25.303", citation: "14 CFR 25.303, factor of safety", publisher: Publisher::Faa, document: "14 CFR 25.303", edition: None, clause: Some("factor of safety"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled; the factor of 1.5 stands in many reproductions" };
pub(crate) const CFR_25_625: &Method = &Method { key: "cfr-25.625", citation: "14 CFR 25.625, fitting factor", publisher: Publisher::Faa, document: "14 CFR 25.625", edition: None, clause: Some("fitting factor"), modes: None, levels: None, basis: Basis::Published, read_in: "the regulation" };
pub(crate) const NASA_STD_5020B_EQ_12_TO_14: &Method = &Method { key: "nasa-std-5020b-eq-12-to-14", citation: "NASA-STD-5020B Eq. 12 to 14", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: Some("B"), clause: Some("Eq. 12 to 14"), modes: Some("bolt_shear"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "quoted with their numbers in public engineering notes" };
pub(crate) const IS800_NET_AREA: &Method = &Method { key: "is800-net-area", citation: "IS 800:2007, design office tables", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("thread area of 0.78 A"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a course page" };
pub(crate) const EN_1993_1_8_2005_3_6_1_5: &Method = &Method { key: "en-1993-1-8-2005-3.6.1-5", citation: "EN 1993-1-8:2005 3.6.1(5)", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.6.1(5), M12 and M14 in 2 mm of clearance"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "an advisory note and tables of two steelmakers" };
pub(crate) const EN_1993_1_8_3_6_1_5_BEARING_IN_WIDE_HOLES: &Method = &Method { key: "en-1993-1-8-3.6.1-5-bearing-in-wide-holes", citation: "EN 1993-1-8 3.6.1(5), bearing in wide holes", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.6.1(5), bearing of the group"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AISC_360_TABLE_J3_2_END_LOADED_JOINTS: &Method = &Method { key: "aisc-360-table-j3.2-end-loaded-joints", citation: "AISC 360 Table J3.2, end-loaded joints", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.2, note b"), modes: None, levels: None, basis: Basis::Published, read_in: "a scan of the table (2010)" };
pub(crate) const AISC_360_TABLE_J3_2_A307_BOLTS: &Method = &Method { key: "aisc-360-table-j3.2-a307-bolts", citation: "AISC 360 Table J3.2, A307 bolts", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.2, note c"), modes: None, levels: None, basis: Basis::Published, read_in: "a scan of the table (2010)" };
pub(crate) const AISC_360_TABLE_J3_2_LONG_GRIP_OF_A307_BOLTS_IN_TENSION: &Method = &Method { key: "aisc-360-table-j3.2-long-grip-of-a307-bolts-in-tension", citation: "AISC 360 Table J3.2, long grip of A307 bolts in tension", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.2, note c, tension"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled; in a copy of 2022 the note stands at the shear stresses alone" };
pub(crate) const AISC_360_J5_FILLERS: &Method = &Method { key: "aisc-360-j5-fillers", citation: "AISC 360 J5, fillers", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J5.2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the page (1999); a worked figure of 2016" };
pub(crate) const AISC_360_J5_2_FILLERS: &Method = &Method { key: "aisc-360-j5.2-fillers", citation: "AISC 360 J5.2, fillers", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J5.2, least 0.85 for every thickness"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const BS_5950_1_2000_6_3_2_2: &Method = &Method { key: "bs-5950-1-2000-6.3.2.2", citation: "BS 5950-1:2000 6.3.2.2", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.2.2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a designers' manual" };
pub(crate) const BS_5950_1_2000_6_3_2_3: &Method = &Method { key: "bs-5950-1-2000-6.3.2.3", citation: "BS 5950-1:2000 6.3.2.3", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.2.3"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BS_5950_1_2000_6_3_2_4: &Method = &Method { key: "bs-5950-1-2000-6.3.2.4", citation: "BS 5950-1:2000 6.3.2.4", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.2.4"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BS_5950_1_6_3_2_LONG_JOINTS_AND_LARGE_GRIPS: &Method = &Method { key: "bs-5950-1-6.3.2-long-joints-and-large-grips", citation: "BS 5950-1 6.3.2, long joints and large grips", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.2.3 and 6.3.2.4"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const IS_800_2007_10_3_3_1: &Method = &Method { key: "is-800-2007-10.3.3.1", citation: "IS 800:2007 10.3.3.1", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.3.1"), modes: None, levels: None, basis: Basis::Memory, read_in: "the condition was read in a course page, the formula recalled" };
pub(crate) const IS_800_2007_10_3_3_1_LONG_JOINTS: &Method = &Method { key: "is-800-2007-10.3.3.1-long-joints", citation: "IS 800:2007 10.3.3.1, long joints", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.3.1, formula"), modes: None, levels: None, basis: Basis::Memory, read_in: "the condition was read in a course page, the formula recalled" };
pub(crate) const IS_800_2007_10_3_3_2: &Method = &Method { key: "is-800-2007-10.3.3.2", citation: "IS 800:2007 10.3.3.2", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.3.2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a maker's help page" };
pub(crate) const IS_800_2007_10_3_3_3: &Method = &Method { key: "is-800-2007-10.3.3.3", citation: "IS 800:2007 10.3.3.3", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.3.3"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a maker's help page" };
pub(crate) const AS_4100_TABLE_9_3_2_1: &Method = &Method { key: "as-4100-table-9.3.2.1", citation: "AS 4100 Table 9.3.2.1", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("Table 9.3.2.1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "an engineer's summary of the edition of 2020 in a public repository, Table 9.2.2.1" };
pub(crate) const AS_4100_9_3_2_5: &Method = &Method { key: "as-4100-9.3.2.5", citation: "AS 4100 9.3.2.5", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.2.5"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "an engineer's summary of the edition of 2020 in a public repository, 9.2.2.5; the 0.85 of 1998 recalled" };
pub(crate) const AS_4100_9_3_2_REDUCTIONS: &Method = &Method { key: "as-4100-9.3.2-reductions", citation: "AS 4100 9.3.2, reductions", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.2, long joints and fillers"), modes: None, levels: None, basis: Basis::Memory, read_in: "the 0.85 of fillers in 1998 recalled; the rest in one engineer's summary of the edition of 2020" };
pub(crate) const CSA_S16_13_12_1_2_LONG_JOINTS: &Method = &Method { key: "csa-s16-13.12.1.2-long-joints", citation: "CSA S16 13.12.1.2, long joints", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.12.1.2, long joints"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_8_2005_3_8: &Method = &Method { key: "en-1993-1-8-2005-3.8", citation: "EN 1993-1-8:2005 3.8", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.8(1)"), modes: None, levels: None, basis: Basis::Memory, read_in: "the factor was read on a page after a British design manual, that it is at least 0.75 is recalled" };
pub(crate) const EN_1993_1_8_3_8_LONG_JOINTS: &Method = &Method { key: "en-1993-1-8-3.8-long-joints", citation: "EN 1993-1-8 3.8, long joints", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.8(1), formula"), modes: None, levels: None, basis: Basis::Memory, read_in: "the factor was read on a page after a British design manual, that it is at least 0.75 is recalled" };
pub(crate) const EN_1993_1_8_2005_3_6_1_12: &Method = &Method { key: "en-1993-1-8-2005-3.6.1-12", citation: "EN 1993-1-8:2005 3.6.1(12)", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.6.1(12)"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a page after an institution's manual" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_1: &Method = &Method { key: "en-1993-1-8-2005-table-3.1", citation: "EN 1993-1-8:2005 Table 3.1", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a steel design lecture; published resistances" };
pub(crate) const AISC_360_TABLE_J3_2: &Method = &Method { key: "aisc-360-table-j3.2", citation: "AISC 360 Table J3.2", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.2"), modes: None, levels: None, basis: Basis::Published, read_in: "a scan of the page (2010)" };
pub(crate) const AISC_360_16_TABLE_J3_2: &Method = &Method { key: "aisc-360-16-table-j3.2", citation: "AISC 360-16 Table J3.2", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("Table J3.2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a primer on chapter J of the edition of 2016, and the tables of 2010 and 2022" };
pub(crate) const AISC_360_22_TABLE_J3_2: &Method = &Method { key: "aisc-360-22-table-j3.2", citation: "AISC 360-22 Table J3.2", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("Table J3.2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const STATICS_THE_PLANE_CARRIES_THE_SHARE_S_OF_THE_LOAD: &Method = &Method { key: "statics-the-plane-carries-the-share-s-of-the-load", citation: "statics: the plane carries the share s of the load", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium of the plies" };
pub(crate) const SAME_PLANE: &Method = &Method { key: "same-plane", citation: "worked as that of this plane", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: Some("another plane of the same working"), modes: None, levels: None, basis: Basis::Computed, read_in: "the working it belongs to" };
pub(crate) const PROOF_LOAD: &Method = &Method { key: "proof-load", citation: "proof load", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("proof stress on the tensile stress area"), modes: Some("bolt_tension"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "Shigley's Mechanical Engineering Design, 9th ed., 8-8" };
pub(crate) const SUBSTITUTE_PROOF_LOAD: &Method = &Method { key: "substitute-proof-load", citation: "85 % of the yield load, for want of a proof load (Shigley)", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("8-8, text after Eq. 8-32"), modes: Some("bolt_tension"), levels: Some("nominal allowable"), basis: Basis::Published, read_in: "the page of the book" };
pub(crate) const AISC_360_05_J3_6_TENSION: &Method = &Method { key: "aisc-360-05-j3.6-tension", citation: "AISC 360-05 J3.6, tension", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("J3.6, tension"), modes: Some("bolt_tension"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a structural designers' handbook, Table 5.16" };
pub(crate) const AISC_360_10_J3_6_TENSION: &Method = &Method { key: "aisc-360-10-j3.6-tension", citation: "AISC 360-10 J3.6, tension", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2010"), clause: Some("J3.6, tension"), modes: Some("bolt_tension"), levels: Some("nominal design allowable"), basis: Basis::Published, read_in: "a scan of the page" };
pub(crate) const AISC_360_16_J3_6_TENSION: &Method = &Method { key: "aisc-360-16-j3.6-tension", citation: "AISC 360-16 J3.6, tension", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("J3.6, tension"), modes: Some("bolt_tension"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a primer on chapter J of the edition of 2016; a designer's sheet to it has the safety factor" };
pub(crate) const AISC_360_22_J3_7_TENSION: &Method = &Method { key: "aisc-360-22-j3.7-tension", citation: "AISC 360-22 J3.7, tension", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("J3.7, tension"), modes: Some("bolt_tension"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_4_TENSION: &Method = &Method { key: "en-1993-1-8-2005-table-3.4-tension", citation: "EN 1993-1-8:2005 Table 3.4, tension", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.4, tension"), modes: Some("bolt_tension"), levels: Some("nominal design"), basis: Basis::Published, read_in: "copies of the page; a European design guide" };
pub(crate) const BS_5950_1_2000_6_3_4_2_SIMPLE_METHOD: &Method = &Method { key: "bs-5950-1-2000-6.3.4.2-simple-method", citation: "BS 5950-1:2000 6.3.4.2, simple method", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.4.2"), modes: Some("bolt_tension"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a designers' manual" };
pub(crate) const BS_5950_1_2000_6_3_4_3_EXACT_METHOD: &Method = &Method { key: "bs-5950-1-2000-6.3.4.3-exact-method", citation: "BS 5950-1:2000 6.3.4.3, exact method", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.4.3"), modes: Some("bolt_tension"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a designers' manual" };
pub(crate) const IS_800_2007_10_3_5: &Method = &Method { key: "is-800-2007-10.3.5", citation: "IS 800:2007 10.3.5", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.5"), modes: Some("bolt_tension"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a worked hanger and a table of bolt capacities" };
pub(crate) const AS_4100_9_3_2_2: &Method = &Method { key: "as-4100-9.3.2.2", citation: "AS 4100 9.3.2.2", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.2.2"), modes: Some("bolt_tension"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a maker's handbook of structural bolts, Table 27" };
pub(crate) const CSA_S16_13_12_1_3: &Method = &Method { key: "csa-s16-13.12.1.3", citation: "CSA S16 13.12.1.3", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.12.1.3"), modes: Some("bolt_tension"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "two public calculations that cite the clause" };
pub(crate) const BS_5950_1_6_3_4_2_WHERE_THE_SIMPLE_METHOD_MAY_BE_USED: &Method = &Method { key: "bs-5950-1-6.3.4.2-where-the-simple-method-may-be-used", citation: "BS 5950-1 6.3.4.2, where the simple method may be used", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.4.2, conditions"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AISC_360_J3_7: &Method = &Method { key: "aisc-360-j3.7", citation: "AISC 360 J3.7", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.7, Eq. J3-3a and J3-3b"), modes: Some("combined"), levels: Some("nominal design allowable"), basis: Basis::Published, read_in: "a scan of the page (2010)" };
pub(crate) const BS_5950_1_2000_6_3_4_4: &Method = &Method { key: "bs-5950-1-2000-6.3.4.4", citation: "BS 5950-1:2000 6.3.4.4", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.4.4"), modes: Some("combined"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a designers' manual" };
pub(crate) const THE_LIMITS_OF_BS_5950_1_6_3_4_4: &Method = &Method { key: "the-limits-of-bs-5950-1-6.3.4.4", citation: "the limits of BS 5950-1 6.3.4.4", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.4.4, each part at most 1"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const IS_800_2007_10_3_6: &Method = &Method { key: "is-800-2007-10.3.6", citation: "IS 800:2007 10.3.6", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.6"), modes: Some("combined"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a course book of an institute of technology, Eq. 3.13" };
pub(crate) const AS_4100_9_3_2_3: &Method = &Method { key: "as-4100-9.3.2.3", citation: "AS 4100 9.3.2.3", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.2.3"), modes: Some("combined"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "an engineer's summary of the edition of 2020 in a public repository, 9.2.2.3; a worked bracket of a handbook, as summarised there" };
pub(crate) const CSA_S16_13_12_1_4: &Method = &Method { key: "csa-s16-13.12.1.4", citation: "CSA S16 13.12.1.4", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.12.1.4"), modes: Some("combined"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "three reference pages" };
pub(crate) const BS_5950_1_2000_6_3_3_2: &Method = &Method { key: "bs-5950-1-2000-6.3.3.2", citation: "BS 5950-1:2000 6.3.3.2", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.3.2, Table 31"), modes: Some("bolt_bearing"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a designers' manual; a worked connection" };
pub(crate) const BS_5950_1_2000_6_3_3_3: &Method = &Method { key: "bs-5950-1-2000-6.3.3.3", citation: "BS 5950-1:2000 6.3.3.3", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.3.3.3, Table 32"), modes: Some("bearing"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a designers' manual; a worked connection" };
pub(crate) const BS_5950_1_2000_TABLES_31_AND_32_RECALLED: &Method = &Method { key: "bs-5950-1-2000-tables-31-and-32-recalled", citation: "BS 5950-1:2000 Tables 31 and 32, recalled", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("Tables 31 and 32: class 10.9, S460, other steels"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const IS_800_2007_10_3_4: &Method = &Method { key: "is-800-2007-10.3.4", citation: "IS 800:2007 10.3.4", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.4"), modes: Some("bearing"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "tables and sheets of design offices; a course" };
pub(crate) const IS_800_2007_10_3_4_HOLES: &Method = &Method { key: "is-800-2007-10.3.4-holes", citation: "IS 800:2007 10.3.4, holes other than standard", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.3.4, oversize holes and slots"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const IS_800_2007_6_2: &Method = &Method { key: "is-800-2007-6.2", citation: "IS 800:2007 6.2", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("6.2"), modes: Some("gross_section"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a course page with the factors of Table 5" };
pub(crate) const IS_800_2007_6_3: &Method = &Method { key: "is-800-2007-6.3", citation: "IS 800:2007 6.3", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("6.3.1"), modes: Some("net_section"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a sheet of a design office" };
pub(crate) const IS_800_2007_10_2: &Method = &Method { key: "is-800-2007-10.2", citation: "IS 800:2007 10.2, distances", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.2"), modes: Some("distances"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const IS_800_2007_10_4_3: &Method = &Method { key: "is-800-2007-10.4.3", citation: "IS 800:2007 10.4.3", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.4.3 and 10.4.5"), modes: Some("slip"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a lecture of an institute of technology (IIT Kharagpur); a design office's table of bolts" };
pub(crate) const IS_800_2007_10_4_6: &Method = &Method { key: "is-800-2007-10.4.6", citation: "IS 800:2007 10.4.6", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.4.6"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a course book of an institute of technology (IIT Madras), Eq. 3.14" };
pub(crate) const IS_800_2007_10_4_3_SURFACES_AND_SERVICE: &Method = &Method { key: "is-800-2007-10.4.3-surfaces-and-service", citation: "IS 800:2007 10.4.3, surfaces of Table 20 and the factor in service", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("Table 20 but untreated surfaces; Table 5, 1.10"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BS_5950_1_2000_6_4_2: &Method = &Method { key: "bs-5950-1-2000-6.4.2", citation: "BS 5950-1:2000 6.4.2", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.4.2"), modes: Some("slip"), levels: Some("design"), basis: Basis::Reproduced, read_in: "the Steel Designers' Manual, 6th ed., pages 680 and 1162" };
pub(crate) const BS_5950_1_2000_TABLE_35_RECALLED: &Method = &Method { key: "bs-5950-1-2000-table-35-recalled", citation: "BS 5950-1:2000 6.4, Table 35, tension and the bolts of BS 4604", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("Table 35, 6.4.4, long slots; BS 4604"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AS_4100_9_3_3: &Method = &Method { key: "as-4100-9.3.3", citation: "AS 4100 9.3.3", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.3.1"), modes: Some("slip"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a maker's pages of bolted joints; NZS 3404 Table 3.3(2) for the factor" };
pub(crate) const AS_4100_9_3_3_RECALLED: &Method = &Method { key: "as-4100-9.3.3-recalled", citation: "AS 4100 9.3.3, holes, tension and Table 15.2.5.1", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.3.1, kh; 9.3.3.3; Table 15.2.5.1"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AS_4100_9_3_2_4: &Method = &Method { key: "as-4100-9.3.2.4", citation: "AS 4100 9.3.2.4", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.3.2.4"), modes: Some("bearing tear_out"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a maker's table of bolts in purlins by NZS 3404, which says the same" };
pub(crate) const AS_4100_7_2: &Method = &Method { key: "as-4100-7.2", citation: "AS 4100 7.2", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("7.2"), modes: Some("net_section gross_section"), levels: Some("nominal design"), basis: Basis::Memory, read_in: "the formulas were read in public calculations, the factor recalled" };
pub(crate) const AS_4100_9_6: &Method = &Method { key: "as-4100-9.6", citation: "AS 4100 9.6, distances", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: Some("1998"), clause: Some("9.6"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "an engineer's summary of the edition of 2020 in a public repository, 9.5" };
pub(crate) const CSA_S16_13_12_1_2_BEARING: &Method = &Method { key: "csa-s16-13.12.1.2-bearing", citation: "CSA S16 13.12.1.2, bearing", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.12.1.2 a)"), modes: Some("bearing"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a worked lap splice of a course" };
pub(crate) const CSA_S16_13_11_TEAR_OUT: &Method = &Method { key: "csa-s16-13.11-tear-out", citation: "CSA S16 13.11, tear-out", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.11"), modes: Some("tear_out"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a worked lap splice of a course" };
pub(crate) const CSA_S16_13_2: &Method = &Method { key: "csa-s16-13.2", citation: "CSA S16 13.2", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("13.2 a)"), modes: Some("net_section gross_section"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a worked lap splice of a course" };
pub(crate) const CSA_S16_22_3_NOT_READ: &Method = &Method { key: "csa-s16-22.3-not-read", citation: "CSA S16 22.3, distances", publisher: Publisher::Csa, document: "CSA S16", edition: None, clause: Some("22.3"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled that there is one, not read" };
pub(crate) const CLEARANCE_OF_STEELWORK_RECALLED: &Method = &Method { key: "clearance-of-steelwork-recalled", citation: "standard clearance of holes in steelwork, recalled", publisher: Publisher::Practice, document: "practice of steelwork", edition: None, clause: Some("1 mm under 16 mm and 2 mm from there"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ELLIPSE: &Method = &Method { key: "ellipse", citation: "ellipse (von Mises on one section)", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("von Mises on one section"), modes: Some("combined"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "textbooks of machine design" };
pub(crate) const MIL_HDBK_5_STEEL_AIRCRAFT_BOLTS: &Method = &Method { key: "mil-hdbk-5-steel-aircraft-bolts", citation: "MIL-HDBK-5, steel aircraft bolts", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("shear and tension of steel bolts"), modes: Some("combined"), levels: Some("nominal allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_EXPONENTS_OF_MIL_HDBK_5: &Method = &Method { key: "the-exponents-of-mil-hdbk-5", citation: "the exponents of MIL-HDBK-5", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("shear and tension of steel bolts, exponents 3 and 2"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NSTS_08307_REVISION_A: &Method = &Method { key: "nsts-08307-revision-a", citation: "NSTS 08307 Revision A", publisher: Publisher::Nasa, document: "NSTS 08307", edition: Some("A"), clause: Some("interaction"), modes: Some("combined"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "reproduction of the criteria" };
pub(crate) const NASA_STD_5020_EQ_20_AND_22: &Method = &Method { key: "nasa-std-5020-eq-20-and-22", citation: "NASA-STD-5020 Eq. 20 and 22", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("Eq. 20 and 22"), modes: Some("combined"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "quoted with their numbers in a published comparison of methods" };
pub(crate) const CHECKED_ALONE: &Method = &Method { key: "checked-alone", citation: "check of it alone", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: Some("another check of the same joint"), modes: None, levels: None, basis: Basis::Computed, read_in: "the check it names" };
pub(crate) const SHEAR_ALONE: &Method = &Method { key: "shear-alone", citation: "check in shear alone", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: Some("another check of the same joint"), modes: None, levels: None, basis: Basis::Computed, read_in: "the check it names" };
pub(crate) const TENSION_ALONE: &Method = &Method { key: "tension-alone", citation: "check in tension alone", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: Some("another check of the same joint"), modes: None, levels: None, basis: Basis::Computed, read_in: "the check it names" };
pub(crate) const BENDING_ALONE: &Method = &Method { key: "bending-alone", citation: "check in bending alone", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: Some("another check of the same joint"), modes: None, levels: None, basis: Basis::Computed, read_in: "the check it names" };
pub(crate) const PLY_YIELD: &Method = &Method { key: "ply-yield", citation: "machine design, yield of the ply", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("stress on the projected area or section against yield"), modes: Some("bearing tear_out net_section gross_section"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "Shigley's Mechanical Engineering Design, 9th ed., chapter 8" };
pub(crate) const BOLT_BEARING_YIELD: &Method = &Method { key: "bolt-bearing-yield", citation: "machine design, yield of the bolt", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("stress on the projected area against yield"), modes: Some("bolt_bearing"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "Shigley's Mechanical Engineering Design, 9th ed., chapter 8" };
pub(crate) const AISC_360_05_J3_10_D2: &Method = &Method { key: "aisc-360-05-j3.10-d2", citation: "AISC 360-05 J3.10, D2", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("J3.10, D2"), modes: Some("bearing tear_out net_section gross_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "worked examples" };
pub(crate) const AISC_360_10_J3_10_D2: &Method = &Method { key: "aisc-360-10-j3.10-d2", citation: "AISC 360-10 J3.10, D2", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2010"), clause: Some("J3.10, D2"), modes: Some("bearing tear_out net_section gross_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "J3.10 on a scan of the page; D2 in a lecturer's notes to the manual of 2010" };
pub(crate) const AISC_360_16_J3_10_D2: &Method = &Method { key: "aisc-360-16-j3.10-d2", citation: "AISC 360-16 J3.10, D2", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("J3.10, D2"), modes: Some("bearing tear_out net_section gross_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a primer on chapter J of the edition of 2016; safety factors as in the notes to 2010 and a copy of 2022" };
pub(crate) const AISC_360_22_J3_11_D2: &Method = &Method { key: "aisc-360-22-j3.11-d2", citation: "AISC 360-22 J3.11, D2", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("J3.11, D2"), modes: Some("bearing tear_out net_section gross_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const AISC_360_D2: &Method = &Method { key: "aisc-360-d2", citation: "AISC 360 D2", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("D2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page; a lecturer's notes to the manuals of 2005 and 2010" };
pub(crate) const AISC_360_J3_10_2_0_AND_1_0_OF_LONG_SLOTS: &Method = &Method { key: "aisc-360-j3.10-2.0-and-1.0-of-long-slots", citation: "AISC 360 J3.10, 2.0 and 1.0 of long slots", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.10, long slots"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const AISC_360_J3_10_3_0_AND_1_5: &Method = &Method { key: "aisc-360-j3.10-3.0-and-1.5", citation: "AISC 360 J3.10, 3.0 and 1.5", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.10, where deformation does not matter"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const AISC_360_16_J3_10: &Method = &Method { key: "aisc-360-16-j3.10", citation: "AISC 360-16 J3.10", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("J3.10"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a primer on chapter J of the edition of 2016; safety factor as in the notes to 2010 and a copy of 2022" };
pub(crate) const AISC_360_22_J3_11: &Method = &Method { key: "aisc-360-22-j3.11", citation: "AISC 360-22 J3.11", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("J3.11"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_4_BEARING: &Method = &Method { key: "en-1993-1-8-2005-table-3.4-bearing", citation: "EN 1993-1-8:2005 Table 3.4, bearing", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.4, bearing"), modes: Some("bearing"), levels: Some("nominal design"), basis: Basis::Published, read_in: "copies of the page; a European design guide" };
pub(crate) const EN_1993_1_8_2005_3_6_1_10_SINGLE_LAP_ONE_ROW_OF_BOLTS: &Method = &Method { key: "en-1993-1-8-2005-3.6.1-10-single-lap-one-row-of-bolts", citation: "EN 1993-1-8:2005 3.6.1(10), single lap, one row of bolts", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.6.1(10)"), modes: Some("bearing"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "steelmakers' tables and a textbook of bridges" };
pub(crate) const EN_1993_1_1_2005_6_2_3_4_CATEGORY_C_RECALLED: &Method = &Method { key: "en-1993-1-1-2005-6.2.3-4-category-c-recalled", citation: "EN 1993-1-1:2005 6.2.3(4), category C, recalled", publisher: Publisher::Cen, document: "EN 1993-1-1", edition: Some("2005"), clause: Some("6.2.3(4)"), modes: Some("net_section"), levels: Some("nominal design"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_1_2005_6_2_3: &Method = &Method { key: "en-1993-1-1-2005-6.2.3", citation: "EN 1993-1-1:2005 6.2.3", publisher: Publisher::Cen, document: "EN 1993-1-1", edition: Some("2005"), clause: Some("6.2.3"), modes: Some("net_section gross_section"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a European design guide" };
pub(crate) const MIL_HDBK_5_BEARING: &Method = &Method { key: "mil-hdbk-5-bearing", citation: "MIL-HDBK-5, bearing", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("bearing of sheet"), modes: Some("bearing"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "an aviation technical page that cites the tables" };
pub(crate) const MIL_HDBK_5_BEARING_YIELD: &Method = &Method { key: "mil-hdbk-5-bearing-yield", citation: "MIL-HDBK-5, bearing without yield at limit load (14 CFR 25.305)", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("yield bearing strength of sheet"), modes: Some("bearing"), levels: Some("nominal allowable"), basis: Basis::Memory, read_in: "columns of the table reproduced in a forum of engineers; that limit load must not yield recalled, not read" };
pub(crate) const AISC_360_J4_3: &Method = &Method { key: "aisc-360-j4.3", citation: "AISC 360 J4.3", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J4.3"), modes: Some("block_shear"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a lecture sheet and worked examples" };
pub(crate) const AISC_LRFD_1999_J4_3: &Method = &Method { key: "aisc-lrfd-1999-j4.3", citation: "AISC LRFD 1999 J4.3", publisher: Publisher::Aisc, document: "AISC LRFD Specification", edition: Some("1999"), clause: Some("J4.3"), modes: Some("block_shear"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "worked examples" };
pub(crate) const AISC_LRFD_1999_J4_3_AT_MOST_0_6_FU_ANV_FU_ANT: &Method = &Method { key: "aisc-lrfd-1999-j4.3-at-most-0.6-fu-anv-fu-ant", citation: "AISC LRFD 1999 J4.3, at most 0.6 Fu Anv + Fu Ant", publisher: Publisher::Aisc, document: "AISC LRFD Specification", edition: Some("1999"), clause: Some("J4.3, limit"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_8_2005_3_10_2: &Method = &Method { key: "en-1993-1-8-2005-3.10.2", citation: "EN 1993-1-8:2005 3.10.2", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.10.2"), modes: Some("block_shear"), levels: Some("design"), basis: Basis::Reproduced, read_in: "worked examples of a European guide" };
pub(crate) const BS_5950_1_2000_6_2_4_BLOCK_SHEAR: &Method = &Method { key: "bs-5950-1-2000-6.2.4-block-shear", citation: "BS 5950-1:2000 6.2.4, block shear", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.2.4"), modes: Some("block_shear"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a worked fin plate of the Steel Designers' Manual, 6th ed." };
pub(crate) const BS_5950_1_2000_6_2_4_TWO_LINES: &Method = &Method { key: "bs-5950-1-2000-6.2.4-two-lines", citation: "BS 5950-1:2000 6.2.4, holes of two lines of bolts", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.2.4, two lines"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BS_5950_1_2000_4_6_1: &Method = &Method { key: "bs-5950-1-2000-4.6.1", citation: "BS 5950-1:2000 4.6.1", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("4.6.1 and 3.4.3"), modes: Some("net_section gross_section"), levels: Some("design"), basis: Basis::Reproduced, read_in: "the Steel Designers' Manual, 6th ed., chapter 14, and a lecture" };
pub(crate) const IS_800_2007_6_4_1: &Method = &Method { key: "is-800-2007-6.4.1", citation: "IS 800:2007 6.4.1", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("6.4.1"), modes: Some("block_shear"), levels: Some("design"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AS_4100_9_1_9: &Method = &Method { key: "as-4100-9.1.9", citation: "AS 4100 9.1.9", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: None, clause: Some("9.1.9, amendment of 2012"), modes: Some("block_shear"), levels: Some("nominal design"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const CSA_S16_13_11_BLOCK_SHEAR: &Method = &Method { key: "csa-s16-13.11-block-shear", citation: "CSA S16 13.11, block shear", publisher: Publisher::Csa, document: "CSA S16", edition: Some("2009"), clause: Some("13.11"), modes: Some("block_shear"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a worked tension member of a university course in steel design" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_3: &Method = &Method { key: "en-1993-1-8-2005-table-3.3", citation: "EN 1993-1-8:2005 Table 3.3", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.3"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a textbook's figure, a worked example" };
pub(crate) const EN_1993_1_8_TABLE_3_3_SLOTS: &Method = &Method { key: "en-1993-1-8-table-3.3-slots", citation: "EN 1993-1-8 Table 3.3, slots", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.3, slots"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BS_5950_1_2000_6_2_3_TABLE_29: &Method = &Method { key: "bs-5950-1-2000-6.2.3-table-29", citation: "BS 5950-1:2000 6.2.3, Table 29", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.2.3, Table 29"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a scan of the page of 1990" };
pub(crate) const BS_5950_1_2000_6_2_4: &Method = &Method { key: "bs-5950-1-2000-6.2.4", citation: "BS 5950-1:2000 6.2.4", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.2.4"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a scan of the page of 1990" };
pub(crate) const BS_5950_1_2000_6_2_2: &Method = &Method { key: "bs-5950-1-2000-6.2.2", citation: "BS 5950-1:2000 6.2.2", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.2.2"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a scan of the page of 1990; a designers' manual" };
pub(crate) const BS_5950_1_2000_6_2_1: &Method = &Method { key: "bs-5950-1-2000-6.2.1", citation: "BS 5950-1:2000 6.2.1", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("6.2.1"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a table of an engineer's page" };
pub(crate) const DISTANCE_ONE_DIAMETER: &Method = &Method { key: "distance-one-diameter", citation: "machine design: one diameter of the bolt, common practice, no source", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: None, modes: Some("distances"), levels: None, basis: Basis::Memory, read_in: "common practice" };
pub(crate) const DISTANCE_RIVETED: &Method = &Method { key: "distance-riveted", citation: "IS 800:1984 and practice of riveted joints: 1.5 diameters of the hole", publisher: Publisher::Bis, document: "IS 800", edition: Some("1984"), clause: Some("edge distances"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a course page and two question banks" };
pub(crate) const AISC_360_J3_5: &Method = &Method { key: "aisc-360-j3.5", citation: "AISC 360 J3.5", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.5"), modes: Some("distances"), levels: None, basis: Basis::Published, read_in: "copies of the pages of 2005 and 2016" };
pub(crate) const AISC_360_J3_3: &Method = &Method { key: "aisc-360-j3.3", citation: "AISC 360 J3.3", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.3"), modes: Some("distances"), levels: None, basis: Basis::Published, read_in: "a scan of the page" };
pub(crate) const AISC_360_J3_5_B: &Method = &Method { key: "aisc-360-j3.5-b", citation: "AISC 360 J3.5(b)", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.5(b)"), modes: Some("distances"), levels: None, basis: Basis::Published, read_in: "copies of the pages" };
pub(crate) const AISC_360_J3_5_A: &Method = &Method { key: "aisc-360-j3.5-a", citation: "AISC 360 J3.5(a)", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.5(a)"), modes: Some("distances"), levels: None, basis: Basis::Published, read_in: "copies of the pages" };
pub(crate) const AISC_360_05_TABLE_J3_4: &Method = &Method { key: "aisc-360-05-table-j3.4", citation: "AISC 360-05 Table J3.4", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("Table J3.4"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a copy of the page, a handbook and a drafting page" };
pub(crate) const AISC_360_10_TABLE_J3_4: &Method = &Method { key: "aisc-360-10-table-j3.4", citation: "AISC 360-10 Table J3.4", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2010"), clause: Some("Table J3.4"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a copy of the page of 2016" };
pub(crate) const AISC_360_16_TABLE_J3_4_NOTE_A: &Method = &Method { key: "aisc-360-16-table-j3.4-note-a", citation: "AISC 360-16 Table J3.4, note a", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("Table J3.4, note a"), modes: Some("distances"), levels: None, basis: Basis::Published, read_in: "a copy of the page" };
pub(crate) const AISC_360_22_TABLE_J3_4_NOTE_A: &Method = &Method { key: "aisc-360-22-table-j3.4-note-a", citation: "AISC 360-22 Table J3.4, note a", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("Table J3.4, note a"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a copy of the page of 2016" };
pub(crate) const FAA_AC_43_13_1B_TWO_DIAMETERS: &Method = &Method { key: "faa-ac-43.13-1b-two-diameters", citation: "FAA AC 43.13-1B 4-57, two diameters of rivets in a single row, taken for bolts", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("4-57, edge distance of rivets"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "two reproductions of the paragraph; none gives bolts a distance" };
pub(crate) const FAA_AC_43_13_1B_THREE_DIAMETERS: &Method = &Method { key: "faa-ac-43.13-1b-three-diameters", citation: "FAA AC 43.13-1B 4-57, spacing of three diameters of rivets in a single row, taken for bolts", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("4-57, spacing of rivets"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "two reproductions of the paragraph; none gives bolts a distance" };
pub(crate) const MIL_HDBK_5_BELOW_1_5_DIAMETERS_BY_TEST: &Method = &Method { key: "mil-hdbk-5-below-1.5-diameters-by-test", citation: "MIL-HDBK-5: below 1.5 diameters by test", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("chapter 8, edge distance"), modes: Some("distances"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const MIL_HDBK_5_LEAST_EDGE_DISTANCE: &Method = &Method { key: "mil-hdbk-5-least-edge-distance", citation: "MIL-HDBK-5, least edge distance", publisher: Publisher::UsDefense, document: "MIL-HDBK-5", edition: None, clause: Some("chapter 8, edge distance"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1090_2_TABLE_11_BOLTS_UNDER_M12: &Method = &Method { key: "en-1090-2-table-11-bolts-under-m12", citation: "EN 1090-2 Table 11, bolts under M12", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("Table 11, bolts under M12"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_57: &Method = &Method { key: "shigley-9th-ed-eq-8-57", citation: "Shigley, 9th ed., Eq. 8-57", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-57"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const ELASTIC_VECTOR: &Method = &Method { key: "elastic-vector", citation: "elastic vector method (Shigley, 9th ed., Eq. 8-57)", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-57"), modes: Some("bolt_shear"), levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const CRAWFORD_AND_KULAK_AISC_MANUAL_PART_7: &Method = &Method { key: "crawford-and-kulak-aisc-manual-part-7", citation: "Crawford and Kulak; AISC Manual, Part 7", publisher: Publisher::Aisc, document: "Crawford and Kulak; AISC Manual, Part 7", edition: None, clause: None, modes: None, levels: None, basis: Basis::Reproduced, read_in: "course notes and printed coefficients" };
pub(crate) const INSTANTANEOUS_CENTRE: &Method = &Method { key: "instantaneous-centre", citation: "instantaneous centre (Crawford and Kulak; AISC Manual, Part 7)", publisher: Publisher::Aisc, document: "Crawford and Kulak; AISC Manual, Part 7", edition: None, clause: None, modes: Some("bolt_shear"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "course notes and printed coefficients" };
pub(crate) const TENSION_ABOUT_CENTROID: &Method = &Method { key: "tension-about-centroid", citation: "bolt tension about the centroid (Salmon and Johnson)", publisher: Publisher::Textbook, document: "Salmon and Johnson, Steel Structures", edition: None, clause: Some("initial tension"), modes: Some("bolt_tension"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const TENSION_ABOUT_EDGE: &Method = &Method { key: "tension-about-edge", citation: "bolt tension about the lowest edge (Bhandari, Example 7.6)", publisher: Publisher::Textbook, document: "Bhandari, Design of Machine Elements", edition: None, clause: Some("Example 7.6"), modes: Some("bolt_tension"), levels: None, basis: Basis::Reproduced, read_in: "the worked example" };
pub(crate) const VDI2230_2003_A9: &Method = &Method { key: "vdi2230-2003-a9", citation: "VDI 2230 Part 1:2003 Table A9", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: Some("2003"), clause: Some("Table A9"), modes: Some("pressure"), levels: None, basis: Basis::Reproduced, read_in: "a supplier's technical page that prints both editions side by side" };
pub(crate) const VDI2230_1986_PRESSURE: &Method = &Method { key: "vdi2230-1986-pressure", citation: "VDI 2230:1986", publisher: Publisher::Vdi, document: "VDI 2230", edition: Some("1986"), clause: Some("table of limiting surface pressures"), modes: Some("pressure"), levels: None, basis: Basis::Reproduced, read_in: "a supplier's technical page that prints both editions side by side" };
pub(crate) const PRESSURE_YIELD: &Method = &Method { key: "pressure-yield", citation: "yield strength of the ply, common practice", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: None, modes: Some("pressure"), levels: Some("nominal allowable"), basis: Basis::Memory, read_in: "common practice" };
pub(crate) const PRESSURE_OF_THE_HARDNESS_TEST: &Method = &Method { key: "pressure-of-the-hardness-test", citation: "pressure of the Vickers test, ISO 6507-1, recalled", publisher: Publisher::Iso, document: "ISO 6507-1", edition: None, clause: Some("definition of HV"), modes: Some("pressure"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const PRESSURE_STATED: &Method = &Method { key: "pressure-stated", citation: "stated surface pressure", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: Some("pressure"), levels: None, basis: Basis::Computed, read_in: "the caller" };
pub(crate) const AREAS_OF_CIRCLES: &Method = &Method { key: "areas-of-circles", citation: "areas of circles", publisher: Publisher::Mechanics, document: "geometry", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "geometry" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_4_PUNCHING_SHEAR: &Method = &Method { key: "en-1993-1-8-2005-table-3.4-punching-shear", citation: "EN 1993-1-8:2005 Table 3.4, punching shear", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.4, punching shear"), modes: Some("pull_through"), levels: Some("nominal design"), basis: Basis::Published, read_in: "copies of the page; a worked sheet" };
pub(crate) const PUNCHING_STATICS: &Method = &Method { key: "punching-statics", citation: "punching shear at yield, by statics", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("shear at yield on the cylinder under the head"), modes: Some("pull_through"), levels: Some("nominal allowable"), basis: Basis::Computed, read_in: "statics and distortion energy" };
pub(crate) const AISC_360_05_J3_8: &Method = &Method { key: "aisc-360-05-j3.8", citation: "AISC 360-05 J3.8", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("J3.8"), modes: Some("slip"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a teaching example and a copy of the page" };
pub(crate) const AISC_360_10_J3_8: &Method = &Method { key: "aisc-360-10-j3.8", citation: "AISC 360-10 J3.8", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2010"), clause: Some("J3.8"), modes: Some("slip"), levels: Some("nominal design allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AISC_360_16_J3_8: &Method = &Method { key: "aisc-360-16-j3.8", citation: "AISC 360-16 J3.8", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2016"), clause: Some("J3.8"), modes: Some("slip"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a primer on chapter J of the edition of 2016; safety factors as in a copy of 2022" };
pub(crate) const AISC_360_22_J3_9: &Method = &Method { key: "aisc-360-22-j3.9", citation: "AISC 360-22 J3.9", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2022"), clause: Some("J3.9"), modes: Some("slip"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page" };
pub(crate) const EN_1993_1_8_2005_3_9: &Method = &Method { key: "en-1993-1-8-2005-3.9", citation: "EN 1993-1-8:2005 3.9", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.9"), modes: Some("slip"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "worked examples of a European guide" };
pub(crate) const FRICTION_STATED: &Method = &Method { key: "friction-stated", citation: "friction as stated", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: Some("slip"), levels: Some("nominal allowable"), basis: Basis::Computed, read_in: "the caller" };
pub(crate) const AISC_360_05_J3_8_FACTORS_FOR_THE_REQUIRED_STRENGTH_LEVEL: &Method = &Method { key: "aisc-360-05-j3.8-factors-for-the-required-strength-level", citation: "AISC 360-05 J3.8, factors for the required strength level", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("J3.8, required strength level"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_8_3_9_CLASSES_SLOTS_AND_TENSION: &Method = &Method { key: "en-1993-1-8-3.9-classes-slots-and-tension", citation: "EN 1993-1-8 3.9, classes, slots and tension", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.9, Tables 3.6 and 3.7"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_8_2005_3_9_1_SPECIFIED_PRELOAD: &Method = &Method { key: "en-1993-1-8-2005-3.9.1-specified-preload", citation: "EN 1993-1-8:2005 3.9.1, specified preload", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.9.1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a textbook of bridges" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_6: &Method = &Method { key: "en-1993-1-8-2005-table-3.6", citation: "EN 1993-1-8:2005 Table 3.6", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.6"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const LOAD_ON_THE_JOINT: &Method = &Method { key: "load-on-the-joint", citation: "load on the joint", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the caller" };
pub(crate) const LOAD_ON_THE_JOINT_WITHOUT_LOAD_FACTORS: &Method = &Method { key: "load-on-the-joint-without-load-factors", citation: "load on the joint, without load factors", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the caller" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_10: &Method = &Method { key: "en-1993-1-8-2005-table-3.10", citation: "EN 1993-1-8:2005 Table 3.10", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.10"), modes: Some("bolt_shear bearing bolt_bending combined"), levels: Some("nominal design"), basis: Basis::Published, read_in: "a copy of the page" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_10_MOMENT_BY_STATICS: &Method = &Method { key: "en-1993-1-8-2005-table-3.10-moment-by-statics", citation: "EN 1993-1-8:2005 Table 3.10, moment by statics", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.10, with a moment by statics"), modes: Some("bolt_bending"), levels: Some("nominal design"), basis: Basis::Published, read_in: "a copy of the page" };
pub(crate) const EN_1993_1_8_2005_TABLE_3_9_TYPE_A: &Method = &Method { key: "en-1993-1-8-2005-table-3.9-type-a", citation: "EN 1993-1-8:2005 Table 3.9, type A", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.9, type A"), modes: Some("distances"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a textbook of bridges" };
pub(crate) const EN_1993_1_8_2005_FIGURE_3_11: &Method = &Method { key: "en-1993-1-8-2005-figure-3.11", citation: "EN 1993-1-8:2005 Figure 3.11", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Figure 3.11"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a worked sheet" };
pub(crate) const EN_1993_1_8_2005_EQ_3_14_TO_3_16: &Method = &Method { key: "en-1993-1-8-2005-eq-3.14-to-3.16", citation: "EN 1993-1-8:2005 Eq. 3.14 to 3.16", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Eq. 3.14 to 3.16"), modes: Some("bearing"), levels: None, basis: Basis::Published, read_in: "a copy of the page" };
pub(crate) const BENDING_YIELD: &Method = &Method { key: "bending-yield", citation: "machine design, yield of the outer fibre", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("bending stress against yield"), modes: Some("bolt_bending"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "Shigley's Mechanical Engineering Design, 9th ed., Eq. 3-24" };
pub(crate) const BENDING_YIELD_STATICS: &Method = &Method { key: "bending-yield-statics", citation: "machine design, yield of the outer fibre, moment by statics", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("bending stress against yield"), modes: Some("bolt_bending"), levels: Some("nominal allowable"), basis: Basis::Computed, read_in: "statics; bending stress of textbooks" };
pub(crate) const STATICS_ENDS_FREE_TO_TILT: &Method = &Method { key: "statics-ends-free-to-tilt", citation: "statics: ends free to tilt", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const STATICS_BOTH_ENDS_CLAMPED_S_SHAPE: &Method = &Method { key: "statics-both-ends-clamped-s-shape", citation: "statics: both ends clamped, S shape", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium, beam fixed at both ends" };
pub(crate) const STATICS_OF_PLIES_THAT_BEAR_EVENLY: &Method = &Method { key: "statics-of-plies-that-bear-evenly", citation: "statics of plies that bear evenly", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const EQUILIBRIUM_OF_BEARING_BLOCKS_AT_THE_SHEAR_FACES: &Method = &Method { key: "equilibrium-of-bearing-blocks-at-the-shear-faces", citation: "equilibrium of bearing blocks at the shear faces", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium; the same form was recalled from an Air Force lug manual" };
pub(crate) const SHIGLEY_9TH_ED_EQ_3_24: &Method = &Method { key: "shigley-9th-ed-eq-3-24", citation: "Shigley, 9th ed., Eq. 3-24", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 3-24"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const NDS_2018_12_3_YIELD_LIMIT_EQUATIONS: &Method = &Method { key: "nds-2018-12.3-yield-limit-equations", citation: "NDS 2018, 12.3, yield limit equations", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.3"), modes: Some("timber_yield"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "worked design notes that print the equations" };
pub(crate) const EN_1995_1_1_2004_8_2: &Method = &Method { key: "en-1995-1-1-2004-8.2", citation: "EN 1995-1-1:2004, 8.2", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("8.2"), modes: Some("timber_yield"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "a textbook and worked examples" };
pub(crate) const NDS_2018_12_3_7_THREAD_IN_THE_BEARING_LENGTH: &Method = &Method { key: "nds-2018-12.3.7-thread-in-the-bearing-length", citation: "NDS 2018, 12.3.7 (thread in the bearing length)", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.3.7"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_12_5_1_AND_ITS_TABLES: &Method = &Method { key: "nds-2018-12.5.1-and-its-tables", citation: "NDS 2018, 12.5.1 and its tables", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.5.1"), modes: Some("distances"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_12_5_1_OUTER_ROWS_OF_SAWN_TIMBER_IF_IT_MAY_SHRINK: &Method = &Method { key: "nds-2018-12.5.1-outer-rows-of-sawn-timber-if-it-may-shrink", citation: "NDS 2018, 12.5.1 (outer rows of sawn timber, if it may shrink)", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.5.1.3"), modes: Some("distances"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1995_1_1_2004_TABLE_8_4: &Method = &Method { key: "en-1995-1-1-2004-table-8.4", citation: "EN 1995-1-1:2004, Table 8.4", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("Table 8.4"), modes: Some("distances"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_EQ_11_3_1_GROUP_ACTION: &Method = &Method { key: "nds-2018-eq-11.3-1-group-action", citation: "NDS 2018, Eq. 11.3-1 (group action)", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("11.3.6"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1995_1_1_2004_8_5_1_1_4: &Method = &Method { key: "en-1995-1-1-2004-8.5.1.1-4", citation: "EN 1995-1-1:2004, 8.5.1.1(4)", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("8.5.1.1(4)"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_12_1_3: &Method = &Method { key: "nds-2018-12.1.3", citation: "NDS 2018, 12.1.3", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.1.3"), modes: Some("holes"), levels: None, basis: Basis::Reproduced, read_in: "a handbook and a trade magazine" };
pub(crate) const EN_1995_1_1_2004_10_4_3_1: &Method = &Method { key: "en-1995-1-1-2004-10.4.3-1", citation: "EN 1995-1-1:2004, 10.4.3(1)", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("10.4.3(1)"), modes: Some("holes"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_12_1_3_STANDARD_CUT_WASHER: &Method = &Method { key: "nds-2018-12.1.3-standard-cut-washer", citation: "NDS 2018, 12.1.3 (standard cut washer)", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.1.3"), modes: Some("washers"), levels: None, basis: Basis::Reproduced, read_in: "a handbook chapter" };
pub(crate) const EN_1995_1_1_2004_10_4_3_2: &Method = &Method { key: "en-1995-1-1-2004-10.4.3-2", citation: "EN 1995-1-1:2004, 10.4.3(2)", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("10.4.3(2)"), modes: Some("washers"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_3_10_2_BEARING_ACROSS_THE_GRAIN: &Method = &Method { key: "nds-2018-3.10.2-bearing-across-the-grain", citation: "NDS 2018, 3.10.2 (bearing across the grain)", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("3.10.2"), modes: Some("pressure"), levels: Some("allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1995_1_1_2004_8_5_2: &Method = &Method { key: "en-1995-1-1-2004-8.5.2", citation: "EN 1995-1-1:2004, 8.5.2", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("8.5.2"), modes: Some("pressure"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "worked examples of a textbook" };
pub(crate) const EN_1995_1_1_2004_8_5_2_1: &Method = &Method { key: "en-1995-1-1-2004-8.5.2-1", citation: "EN 1995-1-1:2004, 8.5.2(1)", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("8.5.2(1), axial capacity"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NDS_2018_TABLE_12_3_1B: &Method = &Method { key: "nds-2018-table-12.3.1b", citation: "NDS 2018 Table 12.3.1B", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("Table 12.3.1B"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked design notes that print the table" };
pub(crate) const NDS_2018_TABLE_12_3_1A: &Method = &Method { key: "nds-2018-table-12.3.1a", citation: "NDS 2018 Table 12.3.1A", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("Table 12.3.1A"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked design notes that print the table" };
pub(crate) const NDS_2018_TABLES_12_3_1A_AND_12_3_1B: &Method = &Method { key: "nds-2018-tables-12.3.1a-and-12.3.1b", citation: "NDS 2018 Tables 12.3.1A and 12.3.1B", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("Tables 12.3.1A and 12.3.1B"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked design notes that print the tables" };
pub(crate) const NDS_2018_11_3_6_12_5_1: &Method = &Method { key: "nds-2018-11.3.6-12.5.1", citation: "NDS 2018, 11.3.6, 12.5.1", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("11.3.6, 12.5.1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked design notes" };
pub(crate) const NDS_2018_TABLE_12_3_3_EQ_12_3_11: &Method = &Method { key: "nds-2018-table-12.3.3-eq-12.3-11", citation: "NDS 2018 Table 12.3.3, Eq. 12.3-11", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("Table 12.3.3, Eq. 12.3-11"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked design notes" };
pub(crate) const NDS_2018_APPENDIX_I: &Method = &Method { key: "nds-2018-appendix-i", citation: "NDS 2018 Appendix I", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("Appendix I"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked design notes" };
pub(crate) const EN_1995_1_1_2004_EQ_8_30: &Method = &Method { key: "en-1995-1-1-2004-eq-8.30", citation: "EN 1995-1-1:2004 Eq. 8.30", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("Eq. 8.30"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a textbook and worked examples" };
pub(crate) const EN_1995_1_1_2004_8_2_2_2: &Method = &Method { key: "en-1995-1-1-2004-8.2.2-2", citation: "EN 1995-1-1:2004, 8.2.2(2)", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("8.2.2(2)"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a textbook and worked examples" };
pub(crate) const EN_1995_1_1_2004_EQ_2_17: &Method = &Method { key: "en-1995-1-1-2004-eq-2.17", citation: "EN 1995-1-1:2004 Eq. 2.17", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("Eq. 2.17"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a textbook and worked examples" };
pub(crate) const EN_1995_1_1_2004_EQS_8_31_TO_8_33: &Method = &Method { key: "en-1995-1-1-2004-eqs-8.31-to-8.33", citation: "EN 1995-1-1:2004 Eqs. 8.31 to 8.33", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("Eqs. 8.31 to 8.33"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a textbook and worked examples" };
pub(crate) const FED_STD_H28_2: &Method = &Method { key: "fed-std-h28-2", citation: "FED-STD-H28/2", publisher: Publisher::UsDefense, document: "FED-STD-H28/2", edition: None, clause: Some("areas of the threads in shear"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "a page of the standard and a handbook" };
pub(crate) const FED_STD_H28_2_AT_MINIMUM_MATERIAL: &Method = &Method { key: "fed-std-h28-2-at-minimum-material", citation: "FED-STD-H28/2, at minimum material", publisher: Publisher::UsDefense, document: "FED-STD-H28/2", edition: None, clause: Some("areas of the threads in shear, limits of size"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a page of the standard and a handbook" };
pub(crate) const FED_STD_H28_2_MACHINERYS_HANDBOOK_24TH_ED: &Method = &Method { key: "fed-std-h28-2-machinerys-handbook-24th-ed", citation: "FED-STD-H28/2; Machinery's Handbook, 24th ed.", publisher: Publisher::UsDefense, document: "FED-STD-H28/2", edition: None, clause: Some("length of engagement"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a handbook" };
pub(crate) const FED_STD_H28_2_HALF_OF_THE_TENSILE_STRENGTH: &Method = &Method { key: "fed-std-h28-2-half-of-the-tensile-strength", citation: "FED-STD-H28/2, half of the tensile strength", publisher: Publisher::UsDefense, document: "FED-STD-H28/2", edition: None, clause: Some("shear strength of threads"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "a page of the standard and a handbook" };
pub(crate) const ALEXANDER_SAE_770420: &Method = &Method { key: "alexander-sae-770420", citation: "Alexander, SAE 770420", publisher: Publisher::Sae, document: "SAE 770420 (Alexander)", edition: Some("1977"), clause: Some("stripping strength"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ALEXANDER_FACTORS: &Method = &Method { key: "alexander-factors", citation: "Alexander, SAE 770420, recalled", publisher: Publisher::Sae, document: "SAE 770420 (Alexander)", edition: Some("1977"), clause: Some("factors C1 to C3"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ALEXANDER_STRENGTH: &Method = &Method { key: "alexander-strength", citation: "the stripping strength of Alexander, SAE 770420", publisher: Publisher::Sae, document: "SAE 770420 (Alexander)", edition: Some("1977"), clause: Some("stripping strength"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_STRIPPING: &Method = &Method { key: "vdi2230-stripping", citation: "VDI 2230", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("stripping strength"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_STRIPPING_FACTORS: &Method = &Method { key: "vdi2230-stripping-factors", citation: "VDI 2230, recalled", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("factors of the stripping strength"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_STRIPPING_STRENGTH: &Method = &Method { key: "vdi2230-stripping-strength", citation: "the stripping strength of VDI 2230", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("stripping strength"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_EFFECTIVE_LENGTH_OF_ENGAGEMENT_OF_VDI_2230: &Method = &Method { key: "the-effective-length-of-engagement-of-vdi-2230", citation: "the effective length of engagement of VDI 2230", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("effective length of engagement, 0.8 P less"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const STRIP_SHORTCUT: &Method = &Method { key: "strip-shortcut", citation: "handbook shortcut, recalled", publisher: Publisher::Textbook, document: "Machinery's Handbook", edition: None, clause: Some("half of the cylinder at pitch diameter"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THREE_WIRES: &Method = &Method { key: "three-wires", citation: "Machinery's Handbook, recalled", publisher: Publisher::Textbook, document: "Machinery's Handbook", edition: None, clause: Some("measurement over three wires"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const FED_STD_H28_6_WIRE_MAKERS_FORMULAS: &Method = &Method { key: "fed-std-h28-6-wire-makers-formulas", citation: "FED-STD-H28/6; wire maker's formulas", publisher: Publisher::UsDefense, document: "FED-STD-H28/6", edition: None, clause: Some("measurement over three wires"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a wire maker's page" };
pub(crate) const THREE_WIRES_LEAD_ANGLE: &Method = &Method { key: "three-wires-lead-angle", citation: "the lead angle correction of wire measurement in Machinery's Handbook", publisher: Publisher::Textbook, document: "Machinery's Handbook", edition: None, clause: Some("measurement over three wires, lead angle"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ASME_B1_1_FORMULA_FOR_THE_TENSILE_STRESS_AREA: &Method = &Method { key: "asme-b1.1-formula-for-the-tensile-stress-area", citation: "ASME B1.1, formula for the tensile stress area", publisher: Publisher::Asme, document: "ASME B1.1", edition: None, clause: Some("tensile stress area"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "handbook tables" };
pub(crate) const MACHINERYS_HANDBOOK_SECTION_AT_MINOR_DIAMETER: &Method = &Method { key: "machinerys-handbook-section-at-minor-diameter", citation: "Machinery's Handbook, section at minor diameter", publisher: Publisher::Textbook, document: "Machinery's Handbook", edition: None, clause: Some("section at minor diameter"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "handbook tables" };
pub(crate) const ISO_898_1_NOMINAL_STRESS_AREA: &Method = &Method { key: "iso-898-1-nominal-stress-area", citation: "ISO 898-1, nominal stress area", publisher: Publisher::Iso, document: "ISO 898-1", edition: None, clause: Some("nominal stress area"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "reproductions of the table" };
pub(crate) const ISO_68_1_ROOT_ROUNDED_AT_H_6: &Method = &Method { key: "iso-68-1-root-rounded-at-h-6", citation: "ISO 68-1, root rounded at H/6", publisher: Publisher::Iso, document: "ISO 68-1", edition: None, clause: Some("root rounded at H/6"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "handbook tables" };
pub(crate) const STATICS: &Method = &Method { key: "statics", citation: "statics", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const STATICS_EQUAL_SHARES: &Method = &Method { key: "statics-equal-shares", citation: "statics: equal shares", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium of equal bolts" };
pub(crate) const STATICS_PROJECTED_AREA: &Method = &Method { key: "statics-projected-area", citation: "statics, projected area", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const STATICS_ALL_THREADS_ALIKE: &Method = &Method { key: "statics-all-threads-alike", citation: "statics, all threads alike", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const STATICS_AVERAGE_STRESS: &Method = &Method { key: "statics-average-stress", citation: "statics, average stress", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const STATICS_MOHRS_CIRCLE: &Method = &Method { key: "statics-mohrs-circle", citation: "statics, Mohr's circle", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const KHURMI_AND_GUPTA_CYLINDER_COVERS: &Method = &Method { key: "khurmi-and-gupta-cylinder-covers", citation: "Khurmi and Gupta, cylinder covers", publisher: Publisher::Textbook, document: "Khurmi and Gupta, A Textbook of Machine Design", edition: None, clause: Some("pitch of the studs of covers"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const KHURMI_AND_GUPTA_CYLINDER_HEADS_OF_ENGINES: &Method = &Method { key: "khurmi-and-gupta-cylinder-heads-of-engines", citation: "Khurmi and Gupta, cylinder heads of engines", publisher: Publisher::Textbook, document: "Khurmi and Gupta, A Textbook of Machine Design", edition: None, clause: Some("pitch of the studs of cylinder heads"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const KHURMI_AND_GUPTA_A_TEXTBOOK_OF_MACHINE_DESIGN: &Method = &Method { key: "khurmi-and-gupta-a-textbook-of-machine-design", citation: "Khurmi and Gupta, A Textbook of Machine Design", publisher: Publisher::Textbook, document: "Khurmi and Gupta, A Textbook of Machine Design", edition: None, clause: Some("thickness of covers"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_34: &Method = &Method { key: "shigley-9th-ed-eq-8-34", citation: "Shigley, 9th ed., Eq. 8-34", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-34"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const GREATEST_PRINCIPAL_STRESS_RANKINE: &Method = &Method { key: "greatest-principal-stress-rankine", citation: "greatest principal stress (Rankine)", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const GREATEST_SHEAR_STRESS_TRESCA: &Method = &Method { key: "greatest-shear-stress-tresca", citation: "greatest shear stress (Tresca)", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const DISTORTION_ENERGY_VON_MISES: &Method = &Method { key: "distortion-energy-von-mises", citation: "distortion energy (von Mises)", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const DISTORTION_ENERGY: &Method = &Method { key: "distortion-energy", citation: "distortion energy", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const VON_MISES: &Method = &Method { key: "von-mises", citation: "von Mises", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const STATED_BY_THE_CALLER: &Method = &Method { key: "stated-by-the-caller", citation: "stated by the caller", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the caller" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_17: &Method = &Method { key: "shigley-9th-ed-eq-8-17", citation: "Shigley, 9th ed., Eq. 8-17", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-17"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_18: &Method = &Method { key: "shigley-9th-ed-eq-8-18", citation: "Shigley, 9th ed., Eq. 8-18", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-18"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_20: &Method = &Method { key: "shigley-9th-ed-eq-8-20", citation: "Shigley, 9th ed., Eq. 8-20", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-20"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_22: &Method = &Method { key: "shigley-9th-ed-eq-8-22", citation: "Shigley, 9th ed., Eq. 8-22", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-22"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_23: &Method = &Method { key: "shigley-9th-ed-eq-8-23", citation: "Shigley, 9th ed., Eq. 8-23", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-23"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_24: &Method = &Method { key: "shigley-9th-ed-eq-8-24", citation: "Shigley, 9th ed., Eq. 8-24", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-24"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_25: &Method = &Method { key: "shigley-9th-ed-eq-8-25", citation: "Shigley, 9th ed., Eq. 8-25", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-25"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_28: &Method = &Method { key: "shigley-9th-ed-eq-8-28", citation: "Shigley, 9th ed., Eq. 8-28", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-28"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_29: &Method = &Method { key: "shigley-9th-ed-eq-8-29", citation: "Shigley, 9th ed., Eq. 8-29", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-29"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_30: &Method = &Method { key: "shigley-9th-ed-eq-8-30", citation: "Shigley, 9th ed., Eq. 8-30", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-30"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const JOINT_DIAGRAM: &Method = &Method { key: "joint-diagram", citation: "joint diagram (Shigley, 9th ed., Eqs. 8-24 to 8-30)", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eqs. 8-24 to 8-30"), modes: Some("bolt_tension separation"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_SECTION_8_7: &Method = &Method { key: "shigley-9th-ed-section-8-7", citation: "Shigley, 9th ed., section 8-7", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("8-7"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const SHIGLEY_9TH_ED_8_8: &Method = &Method { key: "shigley-9th-ed-8-8", citation: "Shigley, 9th ed., 8-8", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("8-8"), modes: Some("tightening"), levels: None, basis: Basis::Published, read_in: "the page of the book" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_38: &Method = &Method { key: "shigley-9th-ed-eq-8-38", citation: "Shigley, 9th ed., Eq. 8-38", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-38"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_39_FOR_ANY_SLOPE: &Method = &Method { key: "shigley-9th-ed-eq-8-39-for-any-slope", citation: "Shigley, 9th ed., Eq. 8-39, for any slope", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-39"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; solved for the slope of the load line" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_40_FOR_ANY_SLOPE: &Method = &Method { key: "shigley-9th-ed-eq-8-40-for-any-slope", citation: "Shigley, 9th ed., Eq. 8-40, for any slope", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-40"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; solved for the slope of the load line" };
pub(crate) const SHIGLEY_9TH_ED_SECTION_8_11_LANGER_LINE: &Method = &Method { key: "shigley-9th-ed-section-8-11-langer-line", citation: "Shigley, 9th ed., section 8-11, Langer line", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("8-11"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const SHIGLEY_9TH_ED_SECTION_8_11: &Method = &Method { key: "shigley-9th-ed-section-8-11", citation: "Shigley, 9th ed., section 8-11", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("8-11"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const GOODMAN: &Method = &Method { key: "goodman", citation: "Goodman (Shigley, 9th ed., 8-11), rolled threads", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("8-11"), modes: Some("fatigue"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "the text of the book; printed answers" };
pub(crate) const VDI2230: &Method = &Method { key: "vdi2230", citation: "VDI 2230 Part 1, recalled", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: None, modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI_2230_PART_1_RESILIENCE_OF_THE_BOLT: &Method = &Method { key: "vdi-2230-part-1-resilience-of-the-bolt", citation: "VDI 2230 Part 1, resilience of the bolt", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("resilience of the bolt"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI_2230_PART_1_RESILIENCE_OF_THE_PLATES: &Method = &Method { key: "vdi-2230-part-1-resilience-of-the-plates", citation: "VDI 2230 Part 1, resilience of the plates", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("resilience of the plates"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI_2230_PART_1_FATIGUE: &Method = &Method { key: "vdi-2230-part-1-fatigue", citation: "VDI 2230 Part 1, fatigue", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R9, fatigue strength"), modes: Some("fatigue"), levels: Some("nominal allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const LOAD_INTRODUCTION: &Method = &Method { key: "load-introduction", citation: "the load introduction factor of VDI 2230 and NASA-STD-5020", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("load introduction factor"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BAR_STIFFNESS: &Method = &Method { key: "bar-stiffness", citation: "E A / l", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("bar in tension"), modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const EN_1993_1_9_2005_7_1_AND_TABLE_8_1_DETAIL_14: &Method = &Method { key: "en-1993-1-9-2005-7.1-and-table-8.1-detail-14", citation: "EN 1993-1-9:2005, 7.1 and Table 8.1, detail 14", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("7.1, Table 8.1, detail 14"), modes: Some("fatigue"), levels: Some("design"), basis: Basis::Reproduced, read_in: "three papers; the limits recalled" };
pub(crate) const EN_1993_1_9_2005_7_1_AND_TABLE_8_1_DETAIL_15_RECALLED: &Method = &Method { key: "en-1993-1-9-2005-7.1-and-table-8.1-detail-15-recalled", citation: "EN 1993-1-9:2005, 7.1 and Table 8.1, detail 15, recalled", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("7.1, Table 8.1, detail 15"), modes: Some("fatigue"), levels: Some("design"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_9_2005_TABLE_8_1_PARTIAL_FACTOR_1_35: &Method = &Method { key: "en-1993-1-9-2005-table-8.1-partial-factor-1.35", citation: "EN 1993-1-9:2005, Table 8.1, partial factor 1.35", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("Table 8.1"), modes: Some("fatigue"), levels: Some("design"), basis: Basis::Memory, read_in: "category 50 was read in papers, the partial factor recalled" };
pub(crate) const EN_1993_1_9_BESIDE_ITS_CATEGORY_50_LIMITS_FACTOR_OF_SIZE_PARTIAL_FACTORS: &Method = &Method { key: "en-1993-1-9-beside-its-category-50-limits-factor-of-size-partial-factors", citation: "EN 1993-1-9 beside its category 50 (limits, factor of size, partial factors)", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("7.1, Table 8.1, Table 3.1"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1993_1_9_BOLTS_IN_SHEAR: &Method = &Method { key: "en-1993-1-9-bolts-in-shear", citation: "EN 1993-1-9, bolts in shear", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("Table 8.1, detail 15"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN1993_1_9_CUT_OFF: &Method = &Method { key: "en1993-1-9-cut-off", citation: "the resistance falls no more beyond NL; recalled", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("7.1"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AISC_LRFD_1999_K3_4_AISC_360_APP_3_4: &Method = &Method { key: "aisc-lrfd-1999-k3.4-aisc-360-app-3.4", citation: "AISC LRFD 1999, K3.4; AISC 360 App. 3.4", publisher: Publisher::Aisc, document: "AISC LRFD Specification", edition: Some("1999"), clause: Some("K3.4"), modes: None, levels: None, basis: Basis::Published, read_in: "a copy of the page" };
pub(crate) const AISC_360_APPENDIX_3_BOLTS_IN_TENSION: &Method = &Method { key: "aisc-360-appendix-3-bolts-in-tension", citation: "AISC 360 Appendix 3, bolts in tension", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Appendix 3.4"), modes: Some("fatigue"), levels: Some("allowable"), basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page; a copy of the page of 1999" };
pub(crate) const AISC_MANUAL_PART_9_PRYING: &Method = &Method { key: "aisc-manual-part-9-prying", citation: "AISC Manual Part 9, prying", publisher: Publisher::Aisc, document: "AISC Steel Construction Manual", edition: None, clause: Some("Part 9"), modes: Some("prying"), levels: Some("nominal design"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AISC_MANUAL_PART_9_BY_WORKED_EXAMPLE: &Method = &Method { key: "aisc-manual-part-9-by-worked-example", citation: "AISC Manual Part 9, by worked example", publisher: Publisher::Aisc, document: "AISC Steel Construction Manual", edition: None, clause: Some("Part 9"), modes: Some("prying"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "worked examples of the institute" };
pub(crate) const THE_SAME_EQUILIBRIUM: &Method = &Method { key: "the-same-equilibrium", citation: "the same equilibrium", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "equilibrium" };
pub(crate) const EN_1993_1_8_2005_TABLE_6_2: &Method = &Method { key: "en-1993-1-8-2005-table-6.2", citation: "EN 1993-1-8:2005, Table 6.2", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 6.2"), modes: Some("prying"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "worked examples" };
pub(crate) const THORNTON_ENGINEERING_JOURNAL_AISC_2ND_QUARTER_1985: &Method = &Method { key: "thornton-engineering-journal-aisc-2nd-quarter-1985", citation: "Thornton, Engineering Journal AISC, 2nd quarter 1985", publisher: Publisher::Aisc, document: "Thornton, Engineering Journal AISC", edition: Some("2nd quarter 1985"), clause: None, modes: Some("prying"), levels: Some("nominal design"), basis: Basis::Reproduced, read_in: "the article" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_26: &Method = &Method { key: "shigley-9th-ed-eq-8-26", citation: "Shigley, 9th ed., Eq. 8-26", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-26"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; Example 8-3" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_27: &Method = &Method { key: "shigley-9th-ed-eq-8-27", citation: "Shigley, 9th ed., Eq. 8-27", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-27"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_27_FAA_AC_43_13_1B_7_40_FOR_TP: &Method = &Method { key: "shigley-9th-ed-eq-8-27-faa-ac-43.13-1b-7-40-for-tp", citation: "Shigley, 9th ed., Eq. 8-27; FAA AC 43.13-1B, 7-40 for Tp", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-27"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book; the circular" };
pub(crate) const SHIGLEY_9TH_ED_EQ_8_31: &Method = &Method { key: "shigley-9th-ed-eq-8-31", citation: "Shigley, 9th ed., Eq. 8-31", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-31"), modes: Some("tightening"), levels: None, basis: Basis::Published, read_in: "the page of the book" };
pub(crate) const JUVINALL_AND_MARSHEK: &Method = &Method { key: "juvinall-and-marshek", citation: "Juvinall and Marshek", publisher: Publisher::Textbook, document: "Juvinall and Marshek, Fundamentals of Machine Component Design", edition: None, clause: Some("preload of bolts"), modes: Some("tightening"), levels: None, basis: Basis::Reproduced, read_in: "review notes" };
pub(crate) const JIS_B_1083_VDI_2230: &Method = &Method { key: "jis-b-1083-vdi-2230", citation: "JIS B 1083; VDI 2230", publisher: Publisher::Jis, document: "JIS B 1083", edition: None, clause: Some("linear form of the torque"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "162 printed cells follow it" };
pub(crate) const JIS_B_1083_ELASTIC_TORSION: &Method = &Method { key: "jis-b-1083-elastic-torsion", citation: "JIS B 1083, elastic torsion", publisher: Publisher::Jis, document: "JIS B 1083", edition: None, clause: Some("torsion while tightening"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a page on the standard" };
pub(crate) const JIS_B_1083_SOLVED_FOR_THE_FRICTION: &Method = &Method { key: "jis-b-1083-solved-for-the-friction", citation: "JIS B 1083, solved for the friction", publisher: Publisher::Jis, document: "JIS B 1083", edition: None, clause: Some("torsion while tightening"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a page on the standard" };
pub(crate) const MOTOSH_RECALLED: &Method = &Method { key: "motosh-recalled", citation: "Motosh (recalled)", publisher: Publisher::Textbook, document: "Bickford (Motosh)", edition: None, clause: Some("torque equation"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1090_2_TORQUE_METHOD: &Method = &Method { key: "en-1090-2-torque-method", citation: "EN 1090-2, torque method", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("torque method"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "makers' notes" };
pub(crate) const EN1090_2_PRELOAD: &Method = &Method { key: "en1090-2-preload", citation: "EN 1090-2", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("preloading"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "makers' notes" };
pub(crate) const VDI2230_PLASTIC_TORSION: &Method = &Method { key: "vdi2230-plastic-torsion", citation: "VDI 2230 (2001 and later), plastic torsion", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R7, assembly stress"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "36 printed loads of a supplier's table follow it" };
pub(crate) const VDI2230_PLASTIC_TORSION_LOAD: &Method = &Method { key: "vdi2230-plastic-torsion-load", citation: "VDI 2230; the root of FM^2 + (c FM + t)^2 = Fa^2", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R7, solved for the load"), modes: None, levels: None, basis: Basis::Computed, read_in: "algebra" };
pub(crate) const VDI2230_SERVICE_TORSION: &Method = &Method { key: "vdi2230-service-torsion", citation: "VDI 2230, half the torsion left in service", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R8"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI_2230_DEFINITION_OF_THE_TIGHTENING_FACTOR: &Method = &Method { key: "vdi-2230-definition-of-the-tightening-factor", citation: "VDI 2230, definition of the tightening factor", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R1, tightening factor"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "reproductions" };
pub(crate) const TIGHTENING_TORSION: &Method = &Method { key: "tightening-torsion", citation: "tension and torsion at the wrench against the yield strength (VDI 2230)", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R7"), modes: Some("tightening"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "36 printed loads of a supplier's table follow it" };
pub(crate) const AISC_360_TABLE_J3_1: &Method = &Method { key: "aisc-360-table-j3.1", citation: "AISC 360, Table J3.1", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.1"), modes: None, levels: None, basis: Basis::Published, read_in: "a copy of the page (2005)" };
pub(crate) const AISC_360_TABLE_J3_1_LEAST_PRETENSION: &Method = &Method { key: "aisc-360-table-j3.1-least-pretension", citation: "AISC 360 Table J3.1, least pretension", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.1"), modes: Some("preload"), levels: None, basis: Basis::Published, read_in: "a copy of the page (2005)" };
pub(crate) const EN_1993_1_8_2005_3_6_1_AND_TABLE_3_1: &Method = &Method { key: "en-1993-1-8-2005-3.6.1-and-table-3.1", citation: "EN 1993-1-8:2005, 3.6.1 and Table 3.1", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.6.1, Table 3.1"), modes: Some("preload"), levels: None, basis: Basis::Published, read_in: "a copied text of section 3" };
pub(crate) const GERMAN_NATIONAL_ANNEX_OF_EN_1993_1_8: &Method = &Method { key: "german-national-annex-of-en-1993-1-8", citation: "German national annex of EN 1993-1-8", publisher: Publisher::Din, document: "EN 1993-1-8/NA (Germany)", edition: Some("2010"), clause: Some("NA to 3.4"), modes: Some("preload"), levels: None, basis: Basis::Reproduced, read_in: "a washer maker's guide" };
pub(crate) const IS_800_2007_10_4_3_LEAST_TENSION: &Method = &Method { key: "is-800-2007-10.4.3-least-tension", citation: "IS 800:2007 10.4.3, least tension of the bolt", publisher: Publisher::Bis, document: "IS 800", edition: Some("2007"), clause: Some("10.4.3, F0"), modes: Some("preload"), levels: None, basis: Basis::Reproduced, read_in: "a lecture of an institute of technology (IIT Kharagpur)" };
pub(crate) const BS_4604_1_LEAST_TENSION: &Method = &Method { key: "bs-4604-1-least-tension", citation: "BS 4604-1, least tension of the bolt", publisher: Publisher::Bsi, document: "BS 4604-1", edition: None, clause: Some("least shank tension"), modes: Some("preload"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const AS_4100_15_2_5_LEAST_TENSION: &Method = &Method { key: "as-4100-15.2.5-least-tension", citation: "AS 4100 15.2.5, least tension of the bolt", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: None, clause: Some("15.2.5.1, Table 15.2.5.1"), modes: Some("preload"), levels: None, basis: Basis::Memory, read_in: "the value of M20 was read, the rule and the others are recalled" };
pub(crate) const IS_4000_1992_TIGHTENING: &Method = &Method { key: "is-4000-1992-tightening", citation: "IS 4000:1992, tightening", publisher: Publisher::Bis, document: "IS 4000", edition: Some("1992"), clause: Some("foreword (iii)"), modes: None, levels: None, basis: Basis::Published, read_in: "a copy of the code" };
pub(crate) const AS_4100_15_2_5_TIGHTENING: &Method = &Method { key: "as-4100-15.2.5-tightening", citation: "AS 4100 15.2.5, tightening", publisher: Publisher::StandardsAustralia, document: "AS 4100", edition: None, clause: Some("15.2.5.2 and 15.2.5.3"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NASA_STD_5020_MAXIMUM_AND_MINIMUM_PRELOAD: &Method = &Method { key: "nasa-std-5020-maximum-and-minimum-preload", citation: "NASA-STD-5020, maximum and minimum preload", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("maximum and minimum preload"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NASA_STD_5020_PRELOAD: &Method = &Method { key: "nasa-std-5020-preload", citation: "NASA-STD-5020 (recalled)", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("maximum and minimum preload"), modes: Some("preload"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NASA_STD_5020_EQ_10_AND_11: &Method = &Method { key: "nasa-std-5020-eq-10-and-11", citation: "NASA-STD-5020 Eq. 10 and 11", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("Eq. 10 and 11"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a published comparison of methods (2022), Revision A or newer" };
pub(crate) const NASA_STD_5020_EQ_6_AND_7: &Method = &Method { key: "nasa-std-5020-eq-6-and-7", citation: "NASA-STD-5020 Eq. 6 and 7", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("Eq. 6 and 7"), modes: Some("bolt_tension"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "a published comparison of methods (2022), Revision A or newer" };
pub(crate) const NASA_STD_5020_EQ_6_AND_7_AT_YIELD: &Method = &Method { key: "nasa-std-5020-eq-6-and-7-at-yield", citation: "NASA-STD-5020 Eq. 6 and 7, at yield", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("Eq. 6 and 7, with the allowables and the factor of yield"), modes: Some("bolt_tension"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "a published comparison of methods (2022), Revision A or newer" };
pub(crate) const NASA_STD_5020_EQ_19: &Method = &Method { key: "nasa-std-5020-eq-19", citation: "NASA-STD-5020 Eq. 19", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("Eq. 19"), modes: Some("separation"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "a published comparison of methods (2022); a question in a forum of engineers, with its number of 2012" };
pub(crate) const NASA_STD_5020_FIGURE_1: &Method = &Method { key: "nasa-std-5020-figure-1", citation: "NASA-STD-5020 Figure 1, factor against separation", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("Figure 1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a published comparison of methods (2022), Revision A or newer" };
pub(crate) const NASA_STD_5020_FITTING_FACTOR: &Method = &Method { key: "nasa-std-5020-fitting-factor", citation: "NASA-STD-5020, fitting factor", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("fitting factor"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a published comparison of methods (2022), Revision A or newer" };
pub(crate) const NASA_STD_5020_JOINT_SLIP: &Method = &Method { key: "nasa-std-5020-joint-slip", citation: "NASA-STD-5020, slip of the joint", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("joint slip"), modes: Some("slip"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "Eq. 81 to 86 of Revision B in an engineer's transcription, in a public repository" };
pub(crate) const NASA_STD_5020_FRICTION: &Method = &Method { key: "nasa-std-5020-friction", citation: "NASA-STD-5020, friction against slip", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("TFSR 14, friction without a test"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "an engineer's transcription of Revision B, as comments in a public repository; its wording in two more places" };
pub(crate) const RCSC_2014_SECTIONS_7_AND_8_2_RECALLED: &Method = &Method { key: "rcsc-2014-sections-7-and-8.2-recalled", citation: "RCSC 2014 (sections 7 and 8.2, recalled)", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: Some("2014"), clause: Some("7 and 8.2"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const WORST_CASE_ARITHMETIC: &Method = &Method { key: "worst-case-arithmetic", citation: "worst-case arithmetic", publisher: Publisher::Mechanics, document: "statics", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "arithmetic of limits" };
pub(crate) const SHIGLEY_9TH_ED_TABLE_8_7: &Method = &Method { key: "shigley-9th-ed-table-8-7", citation: "Shigley, 9th ed., Table 8-7", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Table 8-7"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const SCREW_THREAD_LENGTH: &Method = &Method { key: "screw-thread-length", citation: "standard of the screw, L less thread length", publisher: Publisher::Mechanics, document: "geometry", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the standard of the screw" };
pub(crate) const DIN_931_SUPPLEMENT_1_1986: &Method = &Method { key: "din-931-supplement-1-1986", citation: "DIN 931 Supplement 1:1986", publisher: Publisher::Din, document: "DIN 931 Supplement 1", edition: Some("1986"), clause: Some("masses"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a reproduction" };
pub(crate) const AIRCRAFT_GRIP: &Method = &Method { key: "aircraft-grip", citation: "grip equal to the thickness of the material: FAA AC 43.13-1B, NAVEDTRA 14014", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-37"), modes: Some("length"), levels: None, basis: Basis::Published, read_in: "the circular" };
pub(crate) const NUT_PROOF: &Method = &Method { key: "nut-proof", citation: "proof load of the nut", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("proof stress of the nut on the tensile stress area"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "ISO 898-2 and ASTM A563 as reproduced" };
pub(crate) const NUT_PROOF_STATED: &Method = &Method { key: "nut-proof-stated", citation: "proof load of the nut, as stated", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Computed, read_in: "the caller" };
pub(crate) const PRESSURE_OF_THE_WASHER_ACROSS_THE_GRAIN: &Method = &Method { key: "pressure-of-the-washer-across-the-grain", citation: "pressure of the washer across the grain", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("load over the area of the washer"), modes: Some("pressure"), levels: Some("nominal allowable"), basis: Basis::Computed, read_in: "mechanics of materials; strength of the timber" };
pub(crate) const ASME_PCC_1_PASSES_OF_THE_LEGACY_PATTERN: &Method = &Method { key: "asme-pcc-1-passes-of-the-legacy-pattern", citation: "ASME PCC-1, passes of the legacy pattern", publisher: Publisher::Asme, document: "ASME PCC-1", edition: None, clause: Some("legacy pattern"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const JOINT_DIAGRAM_BOUNDS: &Method = &Method { key: "joint-diagram-bounds", citation: "bounds of the joint diagram for any stiffness", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("load over preload, whatever the stiffness"), modes: Some("bolt_tension separation"), levels: Some("nominal allowable"), basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const GREATEST_PRELOAD_PROOF: &Method = &Method { key: "greatest-preload-proof", citation: "T = K F d, greatest preload against the proof load", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-27"), modes: Some("tightening"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const GREATEST_PRELOAD_YIELD: &Method = &Method { key: "greatest-preload-yield", citation: "T = K F d, greatest preload against the yield load", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-27"), modes: Some("tightening"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const GREATEST_PRELOAD_CODE: &Method = &Method { key: "greatest-preload-code", citation: "T = K F d, greatest preload against the limit of its code", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-27"), modes: Some("tightening"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const GREATEST_PRELOAD_TENSILE: &Method = &Method { key: "greatest-preload-tensile", citation: "T = K F d, greatest preload against the load that breaks the bolt", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("tensile strength on the tensile stress area"), modes: Some("tightening"), levels: Some("nominal"), basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const EN_14399_SETS_OF_BOLT_AND_NUT: &Method = &Method { key: "en-14399-sets-of-bolt-and-nut", citation: "EN 14399, sets of bolt and nut", publisher: Publisher::Cen, document: "EN 14399", edition: None, clause: Some("sets"), modes: Some("pairing"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_120_C: &Method = &Method { key: "vdi2230-120-c", citation: "That nothing is taken off up to 120 °C (VDI 2230)", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("range of temperatures"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the publisher's abstract" };
pub(crate) const VDI2230_R2: &Method = &Method { key: "vdi2230-r2", citation: "VDI 2230 Part 1, R2", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R2, required clamp force"), modes: Some("separation"), levels: Some("nominal"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_R3: &Method = &Method { key: "vdi2230-r3", citation: "VDI 2230 Part 1, R3", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R3, load factor"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "public study notes after a university script on aircraft elements (2025), chapter 9; the number of the step recalled" };
pub(crate) const VDI2230_R4: &Method = &Method { key: "vdi2230-r4", citation: "VDI 2230 Part 1, R4", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R4, changes of the preload"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "public study notes after a university script on aircraft elements (2025), chapter 9; the number of the step recalled" };
pub(crate) const VDI2230_R5: &Method = &Method { key: "vdi2230-r5", citation: "VDI 2230 Part 1, R5", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R5, least assembly preload"), modes: Some("preload"), levels: Some("nominal"), basis: Basis::Reproduced, read_in: "public study notes after a university script on aircraft elements (2025), chapter 9; the number of the step recalled" };
pub(crate) const VDI2230_R8: &Method = &Method { key: "vdi2230-r8", citation: "VDI 2230 Part 1, R8", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R8, working stress"), modes: Some("bolt_tension"), levels: Some("nominal"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_R10: &Method = &Method { key: "vdi2230-r10", citation: "VDI 2230 Part 1, R10", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R10, surface pressure"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "public study notes after a university script on aircraft elements (2025), chapter 9; the number of the step recalled" };
pub(crate) const VDI2230_R12_SLIP: &Method = &Method { key: "vdi2230-r12-slip", citation: "VDI 2230 Part 1, R12, slipping", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R12, safety against slipping"), modes: Some("slip"), levels: Some("allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const VDI2230_R12_SHEAR: &Method = &Method { key: "vdi2230-r12-shear", citation: "VDI 2230 Part 1, R12, shearing", publisher: Publisher::Vdi, document: "VDI 2230 Part 1", edition: None, clause: Some("R12, shear stress"), modes: Some("bolt_shear"), levels: Some("allowable"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_WASHER_FACES_OF_ASME_B18_2_1_AND_B18_2_6_AND_OF_OTHER_INCH_NUTS: &Method = &Method { key: "the-washer-faces-of-asme-b18.2.1-and-b18.2.6-and-of-other-inch-nuts", citation: "the washer faces of ASME B18.2.1 and B18.2.6, and of other inch nuts", publisher: Publisher::Asme, document: "ASME B18.2.1, B18.2.6", edition: None, clause: Some("washer faces"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_BEARING_FACES_OF_ASME_B18_2_2_HEX_AND_HEAVY_HEX_NUTS: &Method = &Method { key: "the-bearing-faces-of-asme-b18.2.2-hex-and-heavy-hex-nuts", citation: "the bearing faces of ASME B18.2.2 hex and heavy hex nuts", publisher: Publisher::Asme, document: "ASME B18.2.2", edition: None, clause: Some("notes to the tables of nuts"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a supplier's catalogue with the notes of a fastener institute's book, to hex nuts and to heavy hex nuts of structural bolts: at least 95 % of the least width across flats" };
pub(crate) const THE_BEARING_FACES_OF_ISO_4759_1: &Method = &Method { key: "the-bearing-faces-of-iso-4759-1", citation: "the bearing faces of ISO 4759-1", publisher: Publisher::Iso, document: "ISO 4759-1", edition: None, clause: Some("bearing faces"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_BEARING_FACE_OF_ASME_B18_3_SOCKET_HEADS: &Method = &Method { key: "the-bearing-face-of-asme-b18.3-socket-heads", citation: "the bearing face of ASME B18.3 socket heads", publisher: Publisher::Asme, document: "ASME B18.3", edition: None, clause: Some("bearing face"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_WIDTHS_OF_EN_14399_3_AND_OF_THE_NUTS_OF_EN_14399_4: &Method = &Method { key: "the-widths-of-en-14399-3-and-of-the-nuts-of-en-14399-4", citation: "the widths of EN 14399-3 and of the nuts of EN 14399-4", publisher: Publisher::Cen, document: "EN 14399-3, EN 14399-4", edition: None, clause: Some("widths across flats"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const MOTOSH: &Method = &Method { key: "motosh", citation: "the three-term torque form (Motosh)", publisher: Publisher::Textbook, document: "Bickford (Motosh)", edition: None, clause: Some("three-term torque"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const WEAK_PIN: &Method = &Method { key: "weak-pin", citation: "the lug method for weak pins", publisher: Publisher::UsDefense, document: "AFFDL-TR-69-42", edition: Some("1969"), clause: Some("weak pins"), modes: None, levels: None, basis: Basis::Memory, read_in: "derived from equilibrium; the form was recalled" };
pub(crate) const STAGGER: &Method = &Method { key: "stagger", citation: "s^2 / (4 g) for staggered holes", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: Some("staggered holes"), modes: None, levels: None, basis: Basis::Memory, read_in: "AISC 360 B4.3b was read in a copy of 2022, machine-read from the page; EN 1993-1-1 is recalled" };
pub(crate) const AISC_360_TABLE_J3_1_SPECIFIED: &Method = &Method { key: "aisc-360-table-j3.1-specified", citation: "AISC 360 Table J3.1", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Table J3.1, specified pretension"), modes: None, levels: None, basis: Basis::Published, read_in: "a copy of the page (2005)" };
pub(crate) const LEAST_PRELOAD: &Method = &Method { key: "least-preload", citation: "least preload of the joint", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the caller" };
pub(crate) const STRIP_STATED_STRENGTHS: &Method = &Method { key: "strip-stated-strengths", citation: "stated shear strengths", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: Some("shear strength of each material on the area of its threads"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const AREA_TIMES_SHEAR_STRENGTH: &Method = &Method { key: "area-times-shear-strength", citation: "area times shear strength", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const AWC_TECHNICAL_REPORT_12_GENERAL_DOWEL_EQUATIONS: &Method = &Method { key: "awc-technical-report-12-general-dowel-equations", citation: "AWC Technical Report 12, general dowel equations", publisher: Publisher::Awc, document: "AWC Technical Report 12", edition: None, clause: Some("general dowel equations"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "public scripts that print the equations" };
pub(crate) const EN1993_1_9_DETAIL_14: &Method = &Method { key: "en1993-1-9-detail-14", citation: "EN 1993-1-9, detail 14", publisher: Publisher::Cen, document: "EN 1993-1-9", edition: Some("2005"), clause: Some("Table 8.1, detail 14"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "three papers" };
pub(crate) const WILEMAN_RECALLED: &Method = &Method { key: "wileman-recalled", citation: "the exponential fit of member stiffness for aluminium and copper", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-23, aluminium and copper"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const THE_FORMULA_OF_FED_STD_H28_2_AT_BASIC_SIZE: &Method = &Method { key: "the-formula-of-fed-std-h28-2-at-basic-size", citation: "the formula of FED-STD-H28/2 at basic size", publisher: Publisher::UsDefense, document: "FED-STD-H28/2", edition: None, clause: Some("areas of the threads in shear, basic sizes"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a page of the standard and a handbook" };
pub(crate) const HALF_PITCH_CYLINDER: &Method = &Method { key: "half-pitch-cylinder", citation: "the thread shear area of half the pitch cylinder", publisher: Publisher::Textbook, document: "Machinery's Handbook", edition: None, clause: Some("half of the cylinder at pitch diameter"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const TABLE_OF_THREADS: &Method = &Method { key: "table-of-threads", citation: "table of threads", publisher: Publisher::Mechanics, document: "geometry", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the table of threads of this crate" };
pub(crate) const NDS_2018_12_1_3_HOLES_IN_STEEL: &Method = &Method { key: "nds-2018-12.1.3-holes-in-steel", citation: "NDS 2018, 12.1.3, holes in steel", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.1.3, steel plates"), modes: Some("holes"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const BS_5950_1_2000: &Method = &Method { key: "bs-5950-1-2000", citation: "BS 5950-1:2000", publisher: Publisher::Bsi, document: "BS 5950-1", edition: Some("2000"), clause: Some("Tables 30 to 34"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a designers' manual" };
pub(crate) const AISC_360_J3_4_NONE: &Method = &Method { key: "aisc-360-j3.4-none", citation: "AISC 360 Tables J3.4 and J3.4M have no such bolt", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("Tables J3.4 and J3.4M"), modes: None, levels: None, basis: Basis::Published, read_in: "copies of the pages" };
pub(crate) const COMMON_PRACTICE: &Method = &Method { key: "common-practice", citation: "common practice, no source", publisher: Publisher::Practice, document: "common practice, no source", edition: None, clause: None, modes: None, levels: None, basis: Basis::Memory, read_in: "no source was found" };
pub(crate) const STAR_PATTERN: &Method = &Method { key: "star-pattern", citation: "star pattern, the legacy one of ASME PCC-1, percentages recalled; at least three passes, a gasket maker's page", publisher: Publisher::Asme, document: "ASME PCC-1", edition: None, clause: Some("legacy pattern"), modes: None, levels: None, basis: Basis::Memory, read_in: "percentages recalled; passes on a gasket maker's page" };
pub(crate) const OUTWARD_ORDER: &Method = &Method { key: "outward-order", citation: "EN 1090-2, 8.3, quoted by a supplier; AISC's answer on RCSC 8.2.1", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("8.3"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a supplier quotes it; the institute's page of answers" };
pub(crate) const FAA_LENGTH: &Method = &Method { key: "faa-length", citation: "FAA AC 43.13-1B (1998), 7-37; washers by owners' association notes", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-37"), modes: Some("length"), levels: None, basis: Basis::Reproduced, read_in: "two reproductions of the end of the paragraph" };
pub(crate) const FAA_GRIP: &Method = &Method { key: "faa-grip", citation: "FAA AC 43.13-1B (1998), 7-37 (its end); washers: owners' association notes", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-37"), modes: Some("length"), levels: None, basis: Basis::Reproduced, read_in: "two reproductions of the end of the paragraph" };
pub(crate) const NAVY_LENGTH: &Method = &Method { key: "navy-length", citation: "NAVEDTRA 14014, chapter 5, bolt length and grip", publisher: Publisher::UsDefense, document: "NAVEDTRA 14014", edition: None, clause: Some("chapter 5"), modes: Some("length"), levels: None, basis: Basis::Published, read_in: "the page" };
pub(crate) const EN_1090_2_8_2_2_NOT_PRELOADED: &Method = &Method { key: "en-1090-2-8.2.2-not-preloaded", citation: "EN 1090-2, 8.2.2, not preloaded", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("8.2.2"), modes: Some("length"), levels: None, basis: Basis::Published, read_in: "a scan of the page" };
pub(crate) const EN_1090_2_8_2_2_PRELOADED_EN_14399_3: &Method = &Method { key: "en-1090-2-8.2.2-preloaded-en-14399-3", citation: "EN 1090-2, 8.2.2, preloaded EN 14399-3", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("8.2.2"), modes: Some("length"), levels: None, basis: Basis::Published, read_in: "a scan of the page" };
pub(crate) const RCSC_LENGTH: &Method = &Method { key: "rcsc-length", citation: "RCSC specification (2009), 2.3.2", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: Some("2009"), clause: Some("2.3.2"), modes: Some("length"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NASA_LENGTH: &Method = &Method { key: "nasa-length", citation: "NASA-STD-5020, recalled and not read", publisher: Publisher::Nasa, document: "NASA-STD-5020", edition: None, clause: Some("protrusion"), modes: Some("length"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const LIGHT_AIRCRAFT_LENGTH: &Method = &Method { key: "light-aircraft-length", citation: "maintenance manual of a light aircraft, general hardware", publisher: Publisher::Faa, document: "maintenance manual of a light aircraft", edition: None, clause: Some("general hardware"), modes: Some("length"), levels: None, basis: Basis::Published, read_in: "the chapter" };
pub(crate) const BUILDERS_LENGTH: &Method = &Method { key: "builders-length", citation: "notes of owners' and builders' associations", publisher: Publisher::Practice, document: "notes of owners' and builders' associations", edition: None, clause: None, modes: Some("length"), levels: None, basis: Basis::Reproduced, read_in: "two pages" };
pub(crate) const VERDICT_ON_THIS_JOINT: &Method = &Method { key: "verdict-on-this-joint", citation: "verdict on this joint", publisher: Publisher::Mechanics, document: "this joint", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "this joint" };
pub(crate) const LENGTH_SELECTION_UNDER_THE_RULES_OF_THIS_JOINT: &Method = &Method { key: "length-selection-under-the-rules-of-this-joint", citation: "length selection under the rules of this joint", publisher: Publisher::Mechanics, document: "this joint", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "this joint" };
pub(crate) const LENGTH_SELECTION_LOCK: &Method = &Method { key: "length-selection-lock", citation: "length selection under the rules of this joint; for lock nuts US Air Force SMC regulation on locking features", publisher: Publisher::Mechanics, document: "this joint", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "this joint; a copy of the text" };
pub(crate) const TORQUE_OF_THIS_JOINT: &Method = &Method { key: "torque-of-this-joint", citation: "T = K F d (Shigley, 9th ed., Eq. 8-27) with the nut factor of this joint", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 8-27"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the text of the book" };
pub(crate) const BOLT_AND_PLIES_AS_TWO_SPRINGS_STIFFNESS_OF_THIS_JOINT: &Method = &Method { key: "bolt-and-plies-as-two-springs-stiffness-of-this-joint", citation: "bolt and plies as two springs, stiffness of this joint", publisher: Publisher::Mechanics, document: "strength of materials", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "mechanics of materials" };
pub(crate) const FAA_AC_43_13_1B_7_40: &Method = &Method { key: "faa-ac-43.13-1b-7-40", citation: "FAA AC 43.13-1B 7-40", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-40"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "the circular" };
pub(crate) const FAA_AC_43_13_1B_TABLE_7_2_NAVEDTRA_14014_FOR_CRITICAL_PLACES: &Method = &Method { key: "faa-ac-43.13-1b-table-7-2-navedtra-14014-for-critical-places", citation: "FAA AC 43.13-1B Table 7-2; NAVEDTRA 14014 for critical places", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("Table 7-2"), modes: Some("reuse"), levels: None, basis: Basis::Reproduced, read_in: "the circular and the manual" };
pub(crate) const TIGHTENING_TWICE: &Method = &Method { key: "tightening-twice", citation: "RCSC Specification 2.3.3 and EN 14399 on tightening twice; common practice, no source, for the rest", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: None, clause: Some("2.3.3"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a supplier quotes the clause" };
pub(crate) const FAYING_SURFACES: &Method = &Method { key: "faying-surfaces", citation: "RCSC Specification 3.2 and EN 1090-2 8.4, recalled", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: None, clause: Some("3.2"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const RCSC_SPECIFICATION_7_AND_8_2_2_RECALLED: &Method = &Method { key: "rcsc-specification-7-and-8.2.2-recalled", citation: "RCSC Specification 7 and 8.2.2, recalled", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: None, clause: Some("7 and 8.2.2"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const TWO_ROUNDS: &Method = &Method { key: "two-rounds", citation: "RCSC Specification 8.2, recalled; common practice, no source, for the last round", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: None, clause: Some("8.2"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const EN_1995_1_1_10_4_3_RECALLED: &Method = &Method { key: "en-1995-1-1-10.4.3-recalled", citation: "EN 1995-1-1 10.4.3, recalled", publisher: Publisher::Cen, document: "EN 1995-1-1", edition: Some("2004"), clause: Some("10.4.3"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const NAMED_IN_THE_LINE: &Method = &Method { key: "named-in-the-line", citation: "named in the line", publisher: Publisher::Mechanics, document: "this joint", edition: None, clause: None, modes: None, levels: None, basis: Basis::Computed, read_in: "the line it stands in" };
pub(crate) const CUT_STRUCTURAL: &Method = &Method { key: "cut-structural", citation: "a bolt maker's page on cutting in the field (structural bolts have thread lengths of their own); tested assembly: from memory", publisher: Publisher::Practice, document: "makers' and suppliers' pages", edition: None, clause: None, modes: None, levels: None, basis: Basis::Memory, read_in: "the assembly as tested was recalled" };
pub(crate) const CUT_AIRCRAFT: &Method = &Method { key: "cut-aircraft", citation: "NAVEDTRA 14014, chapter 5; that it is never cut: common practice, no source", publisher: Publisher::UsDefense, document: "NAVEDTRA 14014", edition: None, clause: Some("chapter 5"), modes: None, levels: None, basis: Basis::Published, read_in: "the page" };
pub(crate) const CUT_MARKED: &Method = &Method { key: "cut-marked", citation: "a bolt maker's page on cutting in the field", publisher: Publisher::Practice, document: "makers' and suppliers' pages", edition: None, clause: None, modes: None, levels: None, basis: Basis::Reproduced, read_in: "the page" };
pub(crate) const CUT_GALVANIZED: &Method = &Method { key: "cut-galvanized", citation: "ASTM A780, on pages of galvanizers' associations", publisher: Publisher::Astm, document: "ASTM A780", edition: None, clause: None, modes: None, levels: None, basis: Basis::Reproduced, read_in: "pages of galvanizers' associations" };
pub(crate) const US_AIR_FORCE_SMC_REGULATION_ON_LOCKING_FEATURES: &Method = &Method { key: "us-air-force-smc-regulation-on-locking-features", citation: "US Air Force SMC regulation on locking features", publisher: Publisher::UsDefense, document: "US Air Force SMC regulation on locking features", edition: Some("1990s"), clause: Some("3a"), modes: Some("locking length"), levels: None, basis: Basis::Published, read_in: "a copy of the text" };
pub(crate) const ISO_2320_2015_SCOPE: &Method = &Method { key: "iso-2320-2015-scope", citation: "ISO 2320:2015, scope", publisher: Publisher::Iso, document: "ISO 2320", edition: Some("2015"), clause: Some("1"), modes: Some("temperature"), levels: None, basis: Basis::Reproduced, read_in: "the scope as reproduced" };
pub(crate) const SPINS_FREE: &Method = &Method { key: "spins-free", citation: "IFI-100/107, notes; Junker, SAE Transactions 1969, in a trade article", publisher: Publisher::Practice, document: "IFI-100/107", edition: None, clause: Some("notes"), modes: Some("locking"), levels: None, basis: Basis::Reproduced, read_in: "reproductions" };
pub(crate) const CFR_25_607_C: &Method = &Method { key: "cfr-25.607-c", citation: "14 CFR 25.607(c)", publisher: Publisher::Faa, document: "14 CFR 25.607", edition: None, clause: Some("25.607(c)"), modes: Some("locking"), levels: None, basis: Basis::Published, read_in: "the regulation" };
pub(crate) const CFR_25_607_A: &Method = &Method { key: "cfr-25.607-a", citation: "14 CFR 25.607(a)", publisher: Publisher::Faa, document: "14 CFR 25.607", edition: None, clause: Some("25.607(a)"), modes: Some("locking"), levels: None, basis: Basis::Published, read_in: "the regulation" };
pub(crate) const FAA_AC_43_13_1B_TABLE_7_2_US_ARMY_TM_1_1500_204_23_6_TABLE_2_8: &Method = &Method { key: "faa-ac-43.13-1b-table-7-2-us-army-tm-1-1500-204-23-6-table-2-8", citation: "FAA AC 43.13-1B Table 7-2; US Army TM 1-1500-204-23-6 Table 2-8", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("Table 7-2"), modes: Some("reuse"), levels: None, basis: Basis::Reproduced, read_in: "the circular and the manual" };
pub(crate) const LOCK_NUT_SUPPLIER_SHEET: &Method = &Method { key: "lock-nut-supplier-sheet", citation: "lock-nut supplier sheet", publisher: Publisher::Practice, document: "makers' and suppliers' pages", edition: None, clause: None, modes: None, levels: None, basis: Basis::Reproduced, read_in: "the sheet" };
pub(crate) const ISO_898_2_2012_NUTS_OF_STYLE_0_RECALLED: &Method = &Method { key: "iso-898-2-2012-nuts-of-style-0-recalled", citation: "ISO 898-2:2012, nuts of style 0 (recalled)", publisher: Publisher::Iso, document: "ISO 898-2", edition: Some("2012"), clause: Some("nuts of style 0"), modes: Some("pairing"), levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const HELICOPTER_MAINTENANCE_MANUAL_SECTION_20_70: &Method = &Method { key: "helicopter-maintenance-manual-section-20-70", citation: "helicopter maintenance manual, section 20-70", publisher: Publisher::Faa, document: "maintenance manual of a helicopter", edition: None, clause: Some("section 20-70"), modes: None, levels: None, basis: Basis::Published, read_in: "the section" };
pub(crate) const HELD_BY_PRELOAD: &Method = &Method { key: "held-by-preload", citation: "summary of Eccles, Sherrington and Arnell, Proc. IMechE C 2010", publisher: Publisher::Textbook, document: "Proc. IMechE C (Eccles, Sherrington and Arnell)", edition: Some("2010"), clause: None, modes: Some("locking"), levels: None, basis: Basis::Reproduced, read_in: "a summary of the paper" };
pub(crate) const FAA_AC_43_13_1B_7_64: &Method = &Method { key: "faa-ac-43.13-1b-7-64", citation: "FAA AC 43.13-1B 7-64", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-64"), modes: Some("locking"), levels: None, basis: Basis::Reproduced, read_in: "a forum quotes the paragraph" };
pub(crate) const FAA_AC_43_13_1B_7_41: &Method = &Method { key: "faa-ac-43.13-1b-7-41", citation: "FAA AC 43.13-1B 7-41", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-41"), modes: None, levels: None, basis: Basis::Published, read_in: "a page copy of the circular" };
pub(crate) const FAA_AC_43_13_1B_7_87: &Method = &Method { key: "faa-ac-43.13-1b-7-87", citation: "FAA AC 43.13-1B 7-87", publisher: Publisher::Faa, document: "FAA AC 43.13-1B", edition: Some("1998"), clause: Some("7-87"), modes: None, levels: None, basis: Basis::Published, read_in: "a page copy of the circular" };
pub(crate) const IFI_100_107_1_2: &Method = &Method { key: "ifi-100-107-1.2", citation: "IFI-100/107, 1.2", publisher: Publisher::Practice, document: "IFI-100/107", edition: None, clause: Some("1.2"), modes: Some("locking"), levels: None, basis: Basis::Reproduced, read_in: "reproductions" };
pub(crate) const JUNKER_SAE_TRANSACTIONS_1969_IN_A_TRADE_ARTICLE: &Method = &Method { key: "junker-sae-transactions-1969-in-a-trade-article", citation: "Junker, SAE Transactions 1969, in a trade article", publisher: Publisher::Sae, document: "SAE Transactions (Junker)", edition: Some("1969"), clause: None, modes: Some("locking"), levels: None, basis: Basis::Reproduced, read_in: "a trade article" };
pub(crate) const SERVICE_TEMPERATURES_OF_THE_TABLES: &Method = &Method { key: "service-temperatures-of-the-tables", citation: "service temperatures of the tables", publisher: Publisher::Mechanics, document: "tables of this crate", edition: None, clause: None, modes: Some("temperature"), levels: None, basis: Basis::Computed, read_in: "rows of this crate" };
pub(crate) const SUPPLIERS_CHAPTERS_ON_LOCKING: &Method = &Method { key: "suppliers-chapters-on-locking", citation: "suppliers' chapters on locking", publisher: Publisher::Practice, document: "makers' and suppliers' pages", edition: None, clause: None, modes: Some("locking"), levels: None, basis: Basis::Reproduced, read_in: "two suppliers' chapters" };
pub(crate) const TIMBER_WASHERS: &Method = &Method { key: "timber-washers", citation: "NDS 2018, 12.1.3; EN 1995-1-1, 10.4.3", publisher: Publisher::Awc, document: "NDS", edition: Some("2018"), clause: Some("12.1.3"), modes: Some("washers"), levels: None, basis: Basis::Reproduced, read_in: "a handbook chapter" };
pub(crate) const EN_1993_1_8_TABLE_3_4_COUNTERSUNK: &Method = &Method { key: "en-1993-1-8-table-3.4-countersunk", citation: "EN 1993-1-8, Table 3.4, for countersunk bolts", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 3.4, half of the countersink off the thickness"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const HEAD_PROOF_STATED: &Method = &Method { key: "head-proof-stated", citation: "greatest force in the bolt against the proof load of its countersunk head, as stated", publisher: Publisher::Caller, document: "stated by the caller", edition: None, clause: None, modes: Some("bolt_tension"), levels: Some("nominal"), basis: Basis::Computed, read_in: "the caller" };
pub(crate) const AISC_360_D5_1: &Method = &Method { key: "aisc-360-d5.1", citation: "AISC 360 D5.1", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("D5.1, D2"), modes: Some("net_section tear_out gross_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "a copy of the page of 1999, worked examples of the institute to 2005 and 2010" };
pub(crate) const AISC_360_D5_2: &Method = &Method { key: "aisc-360-d5.2", citation: "AISC 360 D5.2", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("D5.2"), modes: Some("distances"), levels: None, basis: Basis::Reproduced, read_in: "a copy of the page of 1999, the commentary of 2010, worked examples of the institute" };
pub(crate) const AISC_360_D5_2_HOLES: &Method = &Method { key: "aisc-360-d5.2-holes", citation: "AISC 360 D5.2, holes of pins that turn", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("D5.2, hole"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of the specification of 2022, machine-read from the page: 1/32 in for pins under 3 in, 1/16 in above; 1/32 in for all here" };
pub(crate) const AISC_360_J7: &Method = &Method { key: "aisc-360-j7", citation: "AISC 360 J7", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J7, Eq. J7-1"), modes: Some("bearing"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "worked examples of the institute to 2005 and 2010" };
pub(crate) const EN_1993_1_8_2005_3_7_1: &Method = &Method { key: "en-1993-1-8-2005-3.7-1", citation: "EN 1993-1-8:2005 3.7(1)", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("3.7(1)"), modes: Some("bolt_shear bearing"), levels: Some("design"), basis: Basis::Reproduced, read_in: "the text and two worked examples of a European guide" };
pub(crate) const EN_1993_1_8_2005_TABLE_6_2_NO_PRYING: &Method = &Method { key: "en-1993-1-8-2005-table-6.2-no-prying", citation: "EN 1993-1-8:2005, Table 6.2, without prying", publisher: Publisher::Cen, document: "EN 1993-1-8", edition: Some("2005"), clause: Some("Table 6.2, Lb > Lb*"), modes: Some("prying"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a draft of the standard of 2000; a European guide to base plates" };
pub(crate) const AISC_360_05_J3_7_USER_NOTE: &Method = &Method { key: "aisc-360-05-j3.7-user-note", citation: "AISC 360-05 J3.7, user note, at most 20 %", publisher: Publisher::Aisc, document: "AISC 360", edition: Some("2005"), clause: Some("J3.7, user note"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a discussion of engineers that quotes it" };
pub(crate) const AISC_360_J3_7_USER_NOTE: &Method = &Method { key: "aisc-360-j3.7-user-note", citation: "AISC 360 J3.7, user note, at most 30 %", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.7 (J3.8 in 2022), user note"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "worked examples of the institute to 2010 and 2022" };
pub(crate) const AISC_360_J4_2: &Method = &Method { key: "aisc-360-j4.2", citation: "AISC 360 J4.2", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J4.2, Eq. J4-3 and J4-4"), modes: Some("gross_section net_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "worked examples of the institute to 2022" };
pub(crate) const STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_SHEAR: &Method = &Method { key: "steel-buildings-in-europe-plates-in-shear", citation: "plates in shear (Steel Buildings in Europe, part 5)", publisher: Publisher::Cen, document: "Steel Buildings in Europe, Part 5: Joint Design", edition: Some("2008"), clause: Some("2.2.5, 3.2.2"), modes: Some("gross_section net_section"), levels: Some("design"), basis: Basis::Published, read_in: "copies of the pages" };
pub(crate) const STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_BENDING: &Method = &Method { key: "steel-buildings-in-europe-plates-in-bending", citation: "plates in bending (Steel Buildings in Europe, part 5)", publisher: Publisher::Cen, document: "Steel Buildings in Europe, Part 5: Joint Design", edition: Some("2008"), clause: Some("3.2.3, 3.2.4"), modes: Some("gross_section net_section"), levels: Some("design"), basis: Basis::Published, read_in: "copies of the pages" };
pub(crate) const EN_1993_1_1_2005_6_2_6_2: &Method = &Method { key: "en-1993-1-1-2005-6.2.6-2", citation: "EN 1993-1-1:2005 6.2.6(2)", publisher: Publisher::Cen, document: "EN 1993-1-1", edition: Some("2005"), clause: Some("6.2.6(2), plastic shear resistance"), modes: Some("gross_section"), levels: Some("design"), basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const RCSC_SPECIFICATION_2_3_3: &Method = &Method { key: "rcsc-specification-2.3.3", citation: "RCSC Specification, 2.3.3", publisher: Publisher::Rcsc, document: "RCSC Specification", edition: None, clause: Some("2.3.3"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a supplier quotes the clause" };
pub(crate) const EN_14399_USED_ONCE: &Method = &Method { key: "en-14399-used-once", citation: "EN 14399, BS 4604-1, in a maker's note", publisher: Publisher::Cen, document: "EN 14399", edition: None, clause: Some("used once"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a maker's note" };
pub(crate) const OVERSIZE_TAPS_A563_ISO_10684: &Method = &Method { key: "oversize-taps-a563-iso-10684", citation: "ASTM A563; ISO 10684, 6.2", publisher: Publisher::Astm, document: "ASTM A563", edition: None, clause: Some("oversize tapping"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "suppliers' pages; a scan of ISO 10684" };
pub(crate) const LOOSE_OVERSIZE_NUTS: &Method = &Method { key: "loose-oversize-nuts", citation: "a supplier's page on ASTM A563 nuts", publisher: Publisher::Astm, document: "ASTM A563", edition: None, clause: Some("oversize tapping"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a supplier's page" };
pub(crate) const ISO_10684_6_2_OVERLAP: &Method = &Method { key: "iso-10684-6.2-overlap", citation: "ISO 10684, 6.2, recalled", publisher: Publisher::Iso, document: "ISO 10684", edition: None, clause: Some("6.2"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ISO_10684_MARKS_OVERSIZE: &Method = &Method { key: "iso-10684-marks-oversize", citation: "ISO 10684, 6.2.2 and 6.3", publisher: Publisher::Iso, document: "ISO 10684", edition: None, clause: Some("6.2.2 and 6.3"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a scan of the standard" };
pub(crate) const ISO_10684_MARKS_UNDERSIZE: &Method = &Method { key: "iso-10684-marks-undersize", citation: "ISO 10684, 6.2.3, recalled", publisher: Publisher::Iso, document: "ISO 10684", edition: None, clause: Some("6.2.3"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ISO_10684_ANNEX_A: &Method = &Method { key: "iso-10684-annex-a", citation: "ISO 10684, Annex A", publisher: Publisher::Iso, document: "ISO 10684", edition: None, clause: Some("Annex A"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const LARGE_INCH_UNDERSIZE: &Method = &Method { key: "large-inch-undersize", citation: "a galvanizers' association", publisher: Publisher::Astm, document: "ASTM A563", edition: None, clause: Some("above 1-1/2 in"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a galvanizers' association" };
pub(crate) const ASTM_A490_COATINGS: &Method = &Method { key: "astm-a490-coatings", citation: "ASTM A490-00, 5.4; F3125", publisher: Publisher::Astm, document: "ASTM A490", edition: Some("2000"), clause: Some("5.4"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a copy of A490-00" };
pub(crate) const ASTM_F2329_A143_HARD_BOLTS: &Method = &Method { key: "astm-f2329-a143-hard-bolts", citation: "ASTM F2329, 7.2.2: 33 HRC; ASTM A143: 150 ksi", publisher: Publisher::Astm, document: "ASTM F2329", edition: None, clause: Some("7.2.2"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "suppliers' and a galvanizers' association's pages" };
pub(crate) const ISO_10684_CLASS_10_9: &Method = &Method { key: "iso-10684-class-10.9", citation: "ISO 10684, recalled", publisher: Publisher::Iso, document: "ISO 10684", edition: None, clause: Some("class 10.9"), modes: None, levels: None, basis: Basis::Memory, read_in: "recalled, not read" };
pub(crate) const ASTM_F1941_ISO_4042_BAKING: &Method = &Method { key: "astm-f1941-iso-4042-baking", citation: "ASTM F1941: 40 HRC; ISO 4042:2018: 390 HV", publisher: Publisher::Astm, document: "ASTM F1941", edition: None, clause: Some("40 HRC; ISO 4042:2018, 390 HV"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "platers' pages" };
pub(crate) const ISO_4042_HARD_PARTS: &Method = &Method { key: "iso-4042-hard-parts", citation: "ISO 4042", publisher: Publisher::Iso, document: "ISO 4042", edition: None, clause: Some("hard parts"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "platers' pages" };
pub(crate) const EN_1090_2_8_2_2_CLEAR_THREADS: &Method = &Method { key: "en-1090-2-8.2.2-clear-threads", citation: "EN 1090-2 8.2.2", publisher: Publisher::Cen, document: "EN 1090-2", edition: None, clause: Some("8.2.2"), modes: None, levels: None, basis: Basis::Published, read_in: "a scan of the page" };
pub(crate) const AISC_360_J3_2_OVERSIZE: &Method = &Method { key: "aisc-360-j3.2-oversize", citation: "AISC 360 J3.2", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.2, oversize holes and slots along the load"), modes: None, levels: None, basis: Basis::Published, read_in: "a copy of the page (2010)" };
pub(crate) const AISC_360_J3_1_PULLED: &Method = &Method { key: "aisc-360-j3.1-pulled", citation: "AISC 360 J3.1", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J3.1, snug bolts in tension"), modes: None, levels: None, basis: Basis::Published, read_in: "a copy of the page (2010)" };
pub(crate) const ISO_898_3_HARDNESS: &Method = &Method { key: "iso-898-3-hardness", citation: "ISO 898-3", publisher: Publisher::Iso, document: "ISO 898-3", edition: None, clause: Some("hardness beside property classes"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "reproductions of the table" };
pub(crate) const ISO_898_3_TABLE_1: &Method = &Method { key: "iso-898-3-table-1", citation: "ISO 898-3 table 1", publisher: Publisher::Iso, document: "ISO 898-3", edition: None, clause: Some("table 1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "reproductions of the table" };
pub(crate) const ANODIC_INDEX_GUIDE: &Method = &Method { key: "anodic-index-guide", citation: "anodic index, guide of the trade", publisher: Publisher::Practice, document: "anodic index", edition: None, clause: None, modes: None, levels: None, basis: Basis::Memory, read_in: "guides of the trade" };
pub(crate) const ISO_898_2_THIN_NUTS: &Method = &Method { key: "iso-898-2-thin-nuts", citation: "ISO 898-2", publisher: Publisher::Iso, document: "ISO 898-2", edition: None, clause: Some("thin nuts"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "reproductions of the text" };
pub(crate) const ASTM_F3125_TABLE_1_WEATHERING: &Method = &Method { key: "astm-f3125-table-1-weathering", citation: "ASTM F3125, Table 1", publisher: Publisher::Astm, document: "ASTM F3125", edition: None, clause: Some("Table 1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "suppliers' pages" };
pub(crate) const AISC_360_J4_4: &Method = &Method { key: "aisc-360-j4.4", citation: "AISC 360 J4.4", publisher: Publisher::Aisc, document: "AISC 360", edition: None, clause: Some("J4.4, Eq. J4-6; E3, Eq. E3-2 to E3-4"), modes: Some("gross_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "AISC Design Guide 29, Example 5.1; a structural designers' handbook; Table 3-36 of the LRFD Manual, 2nd ed." };
pub(crate) const EN_1993_1_1_2005_6_3_1_CURVE_C: &Method = &Method { key: "en-1993-1-1-2005-6.3.1-curve-c", citation: "EN 1993-1-1:2005 6.3.1, curve c", publisher: Publisher::Cen, document: "EN 1993-1-1", edition: Some("2005"), clause: Some("6.3.1.2, 6.3.1.3, Tables 6.1 and 6.2"), modes: Some("gross_section"), levels: Some("design"), basis: Basis::Reproduced, read_in: "a copy of the page of 6.3.1.3; public courses with formula and imperfections" };
pub(crate) const JOHNSON_EULER_COLUMNS: &Method = &Method { key: "johnson-euler-columns", citation: "columns by Johnson and Euler", publisher: Publisher::Textbook, document: "Shigley's Mechanical Engineering Design", edition: Some("9th ed."), clause: Some("Eq. 4-43, 4-45 and 4-46"), modes: Some("gross_section"), levels: Some("nominal allowable"), basis: Basis::Reproduced, read_in: "copies of pages 184 and 187; the instructor's solutions" };
pub(crate) const WHITMORE_SECTION: &Method = &Method { key: "whitmore-section", citation: "Whitmore section (AISC Manual, part 9)", publisher: Publisher::Aisc, document: "AISC Steel Construction Manual", edition: None, clause: Some("part 9, Whitmore section: 30 degrees"), modes: Some("gross_section net_section"), levels: Some("nominal design allowable"), basis: Basis::Reproduced, read_in: "AISC Design Guide 29, Example 5.1; an answer of the institute of 2006" };
pub(crate) const LOAD_SPREAD_AT_30_DEGREES: &Method = &Method { key: "load-spread-at-30-degrees", citation: "the load spread at 30 degrees (no clause of this code)", publisher: Publisher::Practice, document: "practice of gusset plates", edition: None, clause: Some("the Whitmore section, taken over"), modes: None, levels: None, basis: Basis::Memory, read_in: "no clause for bolted gussets was found in this publisher's code; the spread of AISC is taken over as the careful choice" };
pub(crate) const FED_STD_H28_2_AROUND_AN_INSERT_OF_WIRE: &Method = &Method { key: "fed-std-h28-2-around-an-insert-of-wire", citation: "FED-STD-H28/2, around an insert of wire", publisher: Publisher::UsDefense, document: "FED-STD-H28/2", edition: None, clause: Some("areas of the threads in shear, at the outer thread of an insert"), modes: Some("stripping"), levels: Some("nominal"), basis: Basis::Computed, read_in: "the form of the standard at the hole of the insert, as MS51993B has it for solid ones (a page of it), held against a maker's table of lengths" };
pub(crate) const ASME_B18_29_1_RECEIVING_THREAD: &Method = &Method { key: "asme-b18.29.1-receiving-thread", citation: "ASME B18.29.1, receiving thread", publisher: Publisher::Asme, document: "ASME B18.29.1", edition: Some("2010"), clause: Some("hole of the insert: the thread of ASME B1.1 on a larger diameter"), modes: None, levels: None, basis: Basis::Computed, read_in: "an extract of the standard; the formulas agree with the taps of ASME B94.9 in Machinery's Handbook, 31st ed., Tables 25 and 26a" };
pub(crate) const ASME_B18_29_2M_LENGTHS: &Method = &Method { key: "asme-b18.29.2m-lengths", citation: "ASME B18.29.2M, lengths of inserts", publisher: Publisher::Asme, document: "ASME B18.29.2M", edition: Some("2005"), clause: Some("1, 1.5, 2, 2.5 and 3 diameters"), modes: None, levels: None, basis: Basis::Published, read_in: "an extract of the standard" };
pub(crate) const ASME_B18_29_2M_NOTES_TO_TABLE_1: &Method = &Method { key: "asme-b18.29.2m-notes-to-table-1", citation: "ASME B18.29.2M, notes to Table 1", publisher: Publisher::Asme, document: "ASME B18.29.2M", edition: Some("2005"), clause: Some("notes to Table 1"), modes: None, levels: None, basis: Basis::Reproduced, read_in: "a reference page with the notes" };

pub(in crate::tables) static METHODS: [&Method; 454] = [
    DISTORTION_ENERGY_YIELD,
    DISTORTION_ENERGY_PROOF,
    AISC_360_05_J3_6,
    AISC_360_10_J3_6,
    AISC_360_16_J3_6,
    AISC_360_22_J3_7,
    EN_1993_1_8_2005_TABLE_3_4,
    BS_5950_1_2000_6_3_2_1,
    BS_449_2,
    AS_4100_9_3_2_1,
    IS_800_2007_10_3_3,
    CSA_S16_13_12_1_2,
    MIL_HDBK_5_TABLE_8_1_5_A,
    MIL_HDBK_5_TABLE_8_1_5_B,
    CFR_25_303,
    CFR_25_625,
    NASA_STD_5020B_EQ_12_TO_14,
    IS800_NET_AREA,
    EN_1993_1_8_2005_3_6_1_5,
    EN_1993_1_8_3_6_1_5_BEARING_IN_WIDE_HOLES,
    AISC_360_TABLE_J3_2_END_LOADED_JOINTS,
    AISC_360_TABLE_J3_2_A307_BOLTS,
    AISC_360_TABLE_J3_2_LONG_GRIP_OF_A307_BOLTS_IN_TENSION,
    AISC_360_J5_FILLERS,
    AISC_360_J5_2_FILLERS,
    BS_5950_1_2000_6_3_2_2,
    BS_5950_1_2000_6_3_2_3,
    BS_5950_1_2000_6_3_2_4,
    BS_5950_1_6_3_2_LONG_JOINTS_AND_LARGE_GRIPS,
    IS_800_2007_10_3_3_1,
    IS_800_2007_10_3_3_1_LONG_JOINTS,
    IS_800_2007_10_3_3_2,
    IS_800_2007_10_3_3_3,
    AS_4100_TABLE_9_3_2_1,
    AS_4100_9_3_2_5,
    AS_4100_9_3_2_REDUCTIONS,
    CSA_S16_13_12_1_2_LONG_JOINTS,
    EN_1993_1_8_2005_3_8,
    EN_1993_1_8_3_8_LONG_JOINTS,
    EN_1993_1_8_2005_3_6_1_12,
    EN_1993_1_8_2005_TABLE_3_1,
    AISC_360_TABLE_J3_2,
    AISC_360_16_TABLE_J3_2,
    AISC_360_22_TABLE_J3_2,
    STATICS_THE_PLANE_CARRIES_THE_SHARE_S_OF_THE_LOAD,
    SAME_PLANE,
    PROOF_LOAD,
    SUBSTITUTE_PROOF_LOAD,
    AISC_360_05_J3_6_TENSION,
    AISC_360_10_J3_6_TENSION,
    AISC_360_16_J3_6_TENSION,
    AISC_360_22_J3_7_TENSION,
    EN_1993_1_8_2005_TABLE_3_4_TENSION,
    BS_5950_1_2000_6_3_4_2_SIMPLE_METHOD,
    BS_5950_1_2000_6_3_4_3_EXACT_METHOD,
    IS_800_2007_10_3_5,
    AS_4100_9_3_2_2,
    CSA_S16_13_12_1_3,
    BS_5950_1_6_3_4_2_WHERE_THE_SIMPLE_METHOD_MAY_BE_USED,
    AISC_360_J3_7,
    BS_5950_1_2000_6_3_4_4,
    THE_LIMITS_OF_BS_5950_1_6_3_4_4,
    IS_800_2007_10_3_6,
    AS_4100_9_3_2_3,
    CSA_S16_13_12_1_4,
    BS_5950_1_2000_6_3_3_2,
    BS_5950_1_2000_6_3_3_3,
    BS_5950_1_2000_TABLES_31_AND_32_RECALLED,
    IS_800_2007_10_3_4,
    IS_800_2007_10_3_4_HOLES,
    IS_800_2007_6_2,
    IS_800_2007_6_3,
    IS_800_2007_10_2,
    IS_800_2007_10_4_3,
    IS_800_2007_10_4_6,
    IS_800_2007_10_4_3_SURFACES_AND_SERVICE,
    BS_5950_1_2000_6_4_2,
    BS_5950_1_2000_TABLE_35_RECALLED,
    AS_4100_9_3_3,
    AS_4100_9_3_3_RECALLED,
    AS_4100_9_3_2_4,
    AS_4100_7_2,
    AS_4100_9_6,
    CSA_S16_13_12_1_2_BEARING,
    CSA_S16_13_11_TEAR_OUT,
    CSA_S16_13_2,
    CSA_S16_22_3_NOT_READ,
    CLEARANCE_OF_STEELWORK_RECALLED,
    ELLIPSE,
    MIL_HDBK_5_STEEL_AIRCRAFT_BOLTS,
    THE_EXPONENTS_OF_MIL_HDBK_5,
    NSTS_08307_REVISION_A,
    NASA_STD_5020_EQ_20_AND_22,
    CHECKED_ALONE,
    SHEAR_ALONE,
    TENSION_ALONE,
    BENDING_ALONE,
    PLY_YIELD,
    BOLT_BEARING_YIELD,
    AISC_360_05_J3_10_D2,
    AISC_360_10_J3_10_D2,
    AISC_360_16_J3_10_D2,
    AISC_360_22_J3_11_D2,
    AISC_360_D2,
    AISC_360_J3_10_2_0_AND_1_0_OF_LONG_SLOTS,
    AISC_360_J3_10_3_0_AND_1_5,
    AISC_360_16_J3_10,
    AISC_360_22_J3_11,
    EN_1993_1_8_2005_TABLE_3_4_BEARING,
    EN_1993_1_8_2005_3_6_1_10_SINGLE_LAP_ONE_ROW_OF_BOLTS,
    EN_1993_1_1_2005_6_2_3_4_CATEGORY_C_RECALLED,
    EN_1993_1_1_2005_6_2_3,
    MIL_HDBK_5_BEARING,
    MIL_HDBK_5_BEARING_YIELD,
    AISC_360_J4_3,
    AISC_LRFD_1999_J4_3,
    AISC_LRFD_1999_J4_3_AT_MOST_0_6_FU_ANV_FU_ANT,
    EN_1993_1_8_2005_3_10_2,
    BS_5950_1_2000_6_2_4_BLOCK_SHEAR,
    BS_5950_1_2000_6_2_4_TWO_LINES,
    BS_5950_1_2000_4_6_1,
    IS_800_2007_6_4_1,
    AS_4100_9_1_9,
    CSA_S16_13_11_BLOCK_SHEAR,
    EN_1993_1_8_2005_TABLE_3_3,
    EN_1993_1_8_TABLE_3_3_SLOTS,
    BS_5950_1_2000_6_2_3_TABLE_29,
    BS_5950_1_2000_6_2_4,
    BS_5950_1_2000_6_2_2,
    BS_5950_1_2000_6_2_1,
    DISTANCE_ONE_DIAMETER,
    DISTANCE_RIVETED,
    AISC_360_J3_5,
    AISC_360_J3_3,
    AISC_360_J3_5_B,
    AISC_360_J3_5_A,
    AISC_360_05_TABLE_J3_4,
    AISC_360_10_TABLE_J3_4,
    AISC_360_16_TABLE_J3_4_NOTE_A,
    AISC_360_22_TABLE_J3_4_NOTE_A,
    FAA_AC_43_13_1B_TWO_DIAMETERS,
    FAA_AC_43_13_1B_THREE_DIAMETERS,
    MIL_HDBK_5_BELOW_1_5_DIAMETERS_BY_TEST,
    MIL_HDBK_5_LEAST_EDGE_DISTANCE,
    EN_1090_2_TABLE_11_BOLTS_UNDER_M12,
    SHIGLEY_9TH_ED_EQ_8_57,
    ELASTIC_VECTOR,
    CRAWFORD_AND_KULAK_AISC_MANUAL_PART_7,
    INSTANTANEOUS_CENTRE,
    TENSION_ABOUT_CENTROID,
    TENSION_ABOUT_EDGE,
    VDI2230_2003_A9,
    VDI2230_1986_PRESSURE,
    PRESSURE_YIELD,
    PRESSURE_OF_THE_HARDNESS_TEST,
    PRESSURE_STATED,
    AREAS_OF_CIRCLES,
    EN_1993_1_8_2005_TABLE_3_4_PUNCHING_SHEAR,
    PUNCHING_STATICS,
    AISC_360_05_J3_8,
    AISC_360_10_J3_8,
    AISC_360_16_J3_8,
    AISC_360_22_J3_9,
    EN_1993_1_8_2005_3_9,
    FRICTION_STATED,
    AISC_360_05_J3_8_FACTORS_FOR_THE_REQUIRED_STRENGTH_LEVEL,
    EN_1993_1_8_3_9_CLASSES_SLOTS_AND_TENSION,
    EN_1993_1_8_2005_3_9_1_SPECIFIED_PRELOAD,
    EN_1993_1_8_2005_TABLE_3_6,
    LOAD_ON_THE_JOINT,
    LOAD_ON_THE_JOINT_WITHOUT_LOAD_FACTORS,
    EN_1993_1_8_2005_TABLE_3_10,
    EN_1993_1_8_2005_TABLE_3_10_MOMENT_BY_STATICS,
    EN_1993_1_8_2005_TABLE_3_9_TYPE_A,
    EN_1993_1_8_2005_FIGURE_3_11,
    EN_1993_1_8_2005_EQ_3_14_TO_3_16,
    BENDING_YIELD,
    BENDING_YIELD_STATICS,
    STATICS_ENDS_FREE_TO_TILT,
    STATICS_BOTH_ENDS_CLAMPED_S_SHAPE,
    STATICS_OF_PLIES_THAT_BEAR_EVENLY,
    EQUILIBRIUM_OF_BEARING_BLOCKS_AT_THE_SHEAR_FACES,
    SHIGLEY_9TH_ED_EQ_3_24,
    NDS_2018_12_3_YIELD_LIMIT_EQUATIONS,
    EN_1995_1_1_2004_8_2,
    NDS_2018_12_3_7_THREAD_IN_THE_BEARING_LENGTH,
    NDS_2018_12_5_1_AND_ITS_TABLES,
    NDS_2018_12_5_1_OUTER_ROWS_OF_SAWN_TIMBER_IF_IT_MAY_SHRINK,
    EN_1995_1_1_2004_TABLE_8_4,
    NDS_2018_EQ_11_3_1_GROUP_ACTION,
    EN_1995_1_1_2004_8_5_1_1_4,
    NDS_2018_12_1_3,
    EN_1995_1_1_2004_10_4_3_1,
    NDS_2018_12_1_3_STANDARD_CUT_WASHER,
    EN_1995_1_1_2004_10_4_3_2,
    NDS_2018_3_10_2_BEARING_ACROSS_THE_GRAIN,
    EN_1995_1_1_2004_8_5_2,
    EN_1995_1_1_2004_8_5_2_1,
    NDS_2018_TABLE_12_3_1B,
    NDS_2018_TABLE_12_3_1A,
    NDS_2018_TABLES_12_3_1A_AND_12_3_1B,
    NDS_2018_11_3_6_12_5_1,
    NDS_2018_TABLE_12_3_3_EQ_12_3_11,
    NDS_2018_APPENDIX_I,
    EN_1995_1_1_2004_EQ_8_30,
    EN_1995_1_1_2004_8_2_2_2,
    EN_1995_1_1_2004_EQ_2_17,
    EN_1995_1_1_2004_EQS_8_31_TO_8_33,
    FED_STD_H28_2,
    FED_STD_H28_2_AT_MINIMUM_MATERIAL,
    FED_STD_H28_2_MACHINERYS_HANDBOOK_24TH_ED,
    FED_STD_H28_2_HALF_OF_THE_TENSILE_STRENGTH,
    ALEXANDER_SAE_770420,
    ALEXANDER_FACTORS,
    ALEXANDER_STRENGTH,
    VDI2230_STRIPPING,
    VDI2230_STRIPPING_FACTORS,
    VDI2230_STRIPPING_STRENGTH,
    THE_EFFECTIVE_LENGTH_OF_ENGAGEMENT_OF_VDI_2230,
    STRIP_SHORTCUT,
    THREE_WIRES,
    FED_STD_H28_6_WIRE_MAKERS_FORMULAS,
    THREE_WIRES_LEAD_ANGLE,
    ASME_B1_1_FORMULA_FOR_THE_TENSILE_STRESS_AREA,
    MACHINERYS_HANDBOOK_SECTION_AT_MINOR_DIAMETER,
    ISO_898_1_NOMINAL_STRESS_AREA,
    ISO_68_1_ROOT_ROUNDED_AT_H_6,
    STATICS,
    STATICS_EQUAL_SHARES,
    STATICS_PROJECTED_AREA,
    STATICS_ALL_THREADS_ALIKE,
    STATICS_AVERAGE_STRESS,
    STATICS_MOHRS_CIRCLE,
    KHURMI_AND_GUPTA_CYLINDER_COVERS,
    KHURMI_AND_GUPTA_CYLINDER_HEADS_OF_ENGINES,
    KHURMI_AND_GUPTA_A_TEXTBOOK_OF_MACHINE_DESIGN,
    SHIGLEY_9TH_ED_EQ_8_34,
    GREATEST_PRINCIPAL_STRESS_RANKINE,
    GREATEST_SHEAR_STRESS_TRESCA,
    DISTORTION_ENERGY_VON_MISES,
    DISTORTION_ENERGY,
    VON_MISES,
    STATED_BY_THE_CALLER,
    SHIGLEY_9TH_ED_EQ_8_17,
    SHIGLEY_9TH_ED_EQ_8_18,
    SHIGLEY_9TH_ED_EQ_8_20,
    SHIGLEY_9TH_ED_EQ_8_22,
    SHIGLEY_9TH_ED_EQ_8_23,
    SHIGLEY_9TH_ED_EQ_8_24,
    SHIGLEY_9TH_ED_EQ_8_25,
    SHIGLEY_9TH_ED_EQ_8_28,
    SHIGLEY_9TH_ED_EQ_8_29,
    SHIGLEY_9TH_ED_EQ_8_30,
    JOINT_DIAGRAM,
    SHIGLEY_9TH_ED_SECTION_8_7,
    SHIGLEY_9TH_ED_8_8,
    SHIGLEY_9TH_ED_EQ_8_38,
    SHIGLEY_9TH_ED_EQ_8_39_FOR_ANY_SLOPE,
    SHIGLEY_9TH_ED_EQ_8_40_FOR_ANY_SLOPE,
    SHIGLEY_9TH_ED_SECTION_8_11_LANGER_LINE,
    SHIGLEY_9TH_ED_SECTION_8_11,
    GOODMAN,
    VDI2230,
    VDI_2230_PART_1_RESILIENCE_OF_THE_BOLT,
    VDI_2230_PART_1_RESILIENCE_OF_THE_PLATES,
    VDI_2230_PART_1_FATIGUE,
    LOAD_INTRODUCTION,
    BAR_STIFFNESS,
    EN_1993_1_9_2005_7_1_AND_TABLE_8_1_DETAIL_14,
    EN_1993_1_9_2005_7_1_AND_TABLE_8_1_DETAIL_15_RECALLED,
    EN_1993_1_9_2005_TABLE_8_1_PARTIAL_FACTOR_1_35,
    EN_1993_1_9_BESIDE_ITS_CATEGORY_50_LIMITS_FACTOR_OF_SIZE_PARTIAL_FACTORS,
    EN_1993_1_9_BOLTS_IN_SHEAR,
    EN1993_1_9_CUT_OFF,
    AISC_LRFD_1999_K3_4_AISC_360_APP_3_4,
    AISC_360_APPENDIX_3_BOLTS_IN_TENSION,
    AISC_MANUAL_PART_9_PRYING,
    AISC_MANUAL_PART_9_BY_WORKED_EXAMPLE,
    THE_SAME_EQUILIBRIUM,
    EN_1993_1_8_2005_TABLE_6_2,
    THORNTON_ENGINEERING_JOURNAL_AISC_2ND_QUARTER_1985,
    SHIGLEY_9TH_ED_EQ_8_26,
    SHIGLEY_9TH_ED_EQ_8_27,
    SHIGLEY_9TH_ED_EQ_8_27_FAA_AC_43_13_1B_7_40_FOR_TP,
    SHIGLEY_9TH_ED_EQ_8_31,
    JUVINALL_AND_MARSHEK,
    JIS_B_1083_VDI_2230,
    JIS_B_1083_ELASTIC_TORSION,
    JIS_B_1083_SOLVED_FOR_THE_FRICTION,
    MOTOSH_RECALLED,
    EN_1090_2_TORQUE_METHOD,
    EN1090_2_PRELOAD,
    VDI2230_PLASTIC_TORSION,
    VDI2230_PLASTIC_TORSION_LOAD,
    VDI2230_SERVICE_TORSION,
    VDI_2230_DEFINITION_OF_THE_TIGHTENING_FACTOR,
    TIGHTENING_TORSION,
    AISC_360_TABLE_J3_1,
    AISC_360_TABLE_J3_1_LEAST_PRETENSION,
    EN_1993_1_8_2005_3_6_1_AND_TABLE_3_1,
    GERMAN_NATIONAL_ANNEX_OF_EN_1993_1_8,
    IS_800_2007_10_4_3_LEAST_TENSION,
    BS_4604_1_LEAST_TENSION,
    AS_4100_15_2_5_LEAST_TENSION,
    IS_4000_1992_TIGHTENING,
    AS_4100_15_2_5_TIGHTENING,
    NASA_STD_5020_MAXIMUM_AND_MINIMUM_PRELOAD,
    NASA_STD_5020_PRELOAD,
    NASA_STD_5020_EQ_10_AND_11,
    NASA_STD_5020_EQ_6_AND_7,
    NASA_STD_5020_EQ_6_AND_7_AT_YIELD,
    NASA_STD_5020_EQ_19,
    NASA_STD_5020_FIGURE_1,
    NASA_STD_5020_FITTING_FACTOR,
    NASA_STD_5020_JOINT_SLIP,
    NASA_STD_5020_FRICTION,
    RCSC_2014_SECTIONS_7_AND_8_2_RECALLED,
    WORST_CASE_ARITHMETIC,
    SHIGLEY_9TH_ED_TABLE_8_7,
    SCREW_THREAD_LENGTH,
    DIN_931_SUPPLEMENT_1_1986,
    AIRCRAFT_GRIP,
    NUT_PROOF,
    NUT_PROOF_STATED,
    PRESSURE_OF_THE_WASHER_ACROSS_THE_GRAIN,
    ASME_PCC_1_PASSES_OF_THE_LEGACY_PATTERN,
    JOINT_DIAGRAM_BOUNDS,
    GREATEST_PRELOAD_PROOF,
    GREATEST_PRELOAD_YIELD,
    GREATEST_PRELOAD_CODE,
    GREATEST_PRELOAD_TENSILE,
    EN_14399_SETS_OF_BOLT_AND_NUT,
    VDI2230_120_C,
    VDI2230_R2,
    VDI2230_R3,
    VDI2230_R4,
    VDI2230_R5,
    VDI2230_R8,
    VDI2230_R10,
    VDI2230_R12_SLIP,
    VDI2230_R12_SHEAR,
    THE_WASHER_FACES_OF_ASME_B18_2_1_AND_B18_2_6_AND_OF_OTHER_INCH_NUTS,
    THE_BEARING_FACES_OF_ASME_B18_2_2_HEX_AND_HEAVY_HEX_NUTS,
    THE_BEARING_FACES_OF_ISO_4759_1,
    THE_BEARING_FACE_OF_ASME_B18_3_SOCKET_HEADS,
    THE_WIDTHS_OF_EN_14399_3_AND_OF_THE_NUTS_OF_EN_14399_4,
    MOTOSH,
    WEAK_PIN,
    STAGGER,
    AISC_360_TABLE_J3_1_SPECIFIED,
    LEAST_PRELOAD,
    STRIP_STATED_STRENGTHS,
    AREA_TIMES_SHEAR_STRENGTH,
    AWC_TECHNICAL_REPORT_12_GENERAL_DOWEL_EQUATIONS,
    EN1993_1_9_DETAIL_14,
    WILEMAN_RECALLED,
    THE_FORMULA_OF_FED_STD_H28_2_AT_BASIC_SIZE,
    HALF_PITCH_CYLINDER,
    TABLE_OF_THREADS,
    NDS_2018_12_1_3_HOLES_IN_STEEL,
    BS_5950_1_2000,
    AISC_360_J3_4_NONE,
    COMMON_PRACTICE,
    STAR_PATTERN,
    OUTWARD_ORDER,
    FAA_LENGTH,
    FAA_GRIP,
    NAVY_LENGTH,
    EN_1090_2_8_2_2_NOT_PRELOADED,
    EN_1090_2_8_2_2_PRELOADED_EN_14399_3,
    RCSC_LENGTH,
    NASA_LENGTH,
    LIGHT_AIRCRAFT_LENGTH,
    BUILDERS_LENGTH,
    VERDICT_ON_THIS_JOINT,
    LENGTH_SELECTION_UNDER_THE_RULES_OF_THIS_JOINT,
    LENGTH_SELECTION_LOCK,
    TORQUE_OF_THIS_JOINT,
    BOLT_AND_PLIES_AS_TWO_SPRINGS_STIFFNESS_OF_THIS_JOINT,
    FAA_AC_43_13_1B_7_40,
    FAA_AC_43_13_1B_TABLE_7_2_NAVEDTRA_14014_FOR_CRITICAL_PLACES,
    TIGHTENING_TWICE,
    FAYING_SURFACES,
    RCSC_SPECIFICATION_7_AND_8_2_2_RECALLED,
    TWO_ROUNDS,
    EN_1995_1_1_10_4_3_RECALLED,
    NAMED_IN_THE_LINE,
    CUT_STRUCTURAL,
    CUT_AIRCRAFT,
    CUT_MARKED,
    CUT_GALVANIZED,
    US_AIR_FORCE_SMC_REGULATION_ON_LOCKING_FEATURES,
    ISO_2320_2015_SCOPE,
    SPINS_FREE,
    CFR_25_607_C,
    CFR_25_607_A,
    FAA_AC_43_13_1B_TABLE_7_2_US_ARMY_TM_1_1500_204_23_6_TABLE_2_8,
    LOCK_NUT_SUPPLIER_SHEET,
    ISO_898_2_2012_NUTS_OF_STYLE_0_RECALLED,
    HELICOPTER_MAINTENANCE_MANUAL_SECTION_20_70,
    HELD_BY_PRELOAD,
    FAA_AC_43_13_1B_7_64,
    FAA_AC_43_13_1B_7_41,
    FAA_AC_43_13_1B_7_87,
    IFI_100_107_1_2,
    JUNKER_SAE_TRANSACTIONS_1969_IN_A_TRADE_ARTICLE,
    SERVICE_TEMPERATURES_OF_THE_TABLES,
    SUPPLIERS_CHAPTERS_ON_LOCKING,
    TIMBER_WASHERS,
    EN_1993_1_8_TABLE_3_4_COUNTERSUNK,
    HEAD_PROOF_STATED,
    AISC_360_D5_1,
    AISC_360_D5_2,
    AISC_360_D5_2_HOLES,
    AISC_360_J7,
    EN_1993_1_8_2005_3_7_1,
    EN_1993_1_8_2005_TABLE_6_2_NO_PRYING,
    AISC_360_05_J3_7_USER_NOTE,
    AISC_360_J3_7_USER_NOTE,
    AISC_360_J4_2,
    STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_SHEAR,
    STEEL_BUILDINGS_IN_EUROPE_PLATES_IN_BENDING,
    EN_1993_1_1_2005_6_2_6_2,
    RCSC_SPECIFICATION_2_3_3,
    EN_14399_USED_ONCE,
    OVERSIZE_TAPS_A563_ISO_10684,
    LOOSE_OVERSIZE_NUTS,
    ISO_10684_6_2_OVERLAP,
    ISO_10684_MARKS_OVERSIZE,
    ISO_10684_MARKS_UNDERSIZE,
    ISO_10684_ANNEX_A,
    LARGE_INCH_UNDERSIZE,
    ASTM_A490_COATINGS,
    ASTM_F2329_A143_HARD_BOLTS,
    ISO_10684_CLASS_10_9,
    ASTM_F1941_ISO_4042_BAKING,
    ISO_4042_HARD_PARTS,
    EN_1090_2_8_2_2_CLEAR_THREADS,
    AISC_360_J3_2_OVERSIZE,
    AISC_360_J3_1_PULLED,
    ISO_898_3_HARDNESS,
    ISO_898_3_TABLE_1,
    ANODIC_INDEX_GUIDE,
    ISO_898_2_THIN_NUTS,
    ASTM_F3125_TABLE_1_WEATHERING,
    AISC_360_J4_4,
    EN_1993_1_1_2005_6_3_1_CURVE_C,
    JOHNSON_EULER_COLUMNS,
    WHITMORE_SECTION,
    LOAD_SPREAD_AT_30_DEGREES,
    FED_STD_H28_2_AROUND_AN_INSERT_OF_WIRE,
    ASME_B18_29_1_RECEIVING_THREAD,
    ASME_B18_29_2M_LENGTHS,
    ASME_B18_29_2M_NOTES_TO_TABLE_1,
];
