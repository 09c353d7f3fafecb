// Written by tests/tables_are_current.rs from tables/sources.csv. Not edited by hand.

use crate::source::Source;

pub(in crate::tables) static MH27_4A: Source = Source { key: "mh27-4a", document: "Machinery's Handbook", edition: Some("27th ed."), locator: "Table 4a, coarse series", read_in: "handbook table; supplier reproductions of the ANSI B1.1 coarse table agree" };
pub(in crate::tables) static MH_4B: Source = Source { key: "mh-4b", document: "Machinery's Handbook", edition: None, locator: "Table 4b, fine series (ASME B1.1)", read_in: "two supplier reproductions; ANSI B1.1-1974 values in Shigley, Mechanical Engineering Design, 9th ed., Table 8-2" };
pub(in crate::tables) static MH27_4C: Source = Source { key: "mh27-4c", document: "Machinery's Handbook", edition: Some("27th ed."), locator: "Table 4c, extra-fine series", read_in: "handbook table" };
pub(in crate::tables) static MH27_5B: Source = Source { key: "mh27-5b", document: "Machinery's Handbook", edition: Some("27th ed."), locator: "Table 5b, 6-thread series", read_in: "handbook table" };
pub(in crate::tables) static MH31_5C: Source = Source { key: "mh31-5c", document: "Machinery's Handbook", edition: Some("31st ed."), locator: "Table 5c, 8-thread series", read_in: "handbook table; Bickford, Introduction to the Design and Behavior of Bolted Joints, 4th ed., 8-thread area table agrees" };
pub(in crate::tables) static MH27_5G: Source = Source { key: "mh27-5g", document: "Machinery's Handbook", edition: Some("27th ed."), locator: "Table 5g, 28-thread series", read_in: "handbook table" };
pub(in crate::tables) static B1_1_AREA_FORMULA: Source = Source { key: "b1.1-area-formula", document: "ASME B1.1", edition: None, locator: "formula for the tensile stress area", read_in: "computed; formula read in two reproductions, rounded as the handbook tables round" };
pub(in crate::tables) static ISO898_1_AREA_FORMULA: Source = Source { key: "iso898-1-area-formula", document: "ISO 898-1", edition: None, locator: "formula for the nominal stress area", read_in: "computed with exact constants, 3 significant figures, whole square millimetres from 100 up" };
pub(in crate::tables) static GBT16823_1: Source = Source { key: "gbt16823.1", document: "GB/T 16823.1", edition: Some("1997"), locator: "stress area table", read_in: "two supplier reproductions" };
pub(in crate::tables) static ISO898_1_AREA_COARSE: Source = Source { key: "iso898-1-area-coarse", document: "ISO 898-1", edition: None, locator: "nominal stress area table, coarse threads", read_in: "two supplier reproductions" };
pub(in crate::tables) static B1_13M_AREA: Source = Source { key: "b1.13m-area", document: "ASME B1.13M", edition: None, locator: "tensile stress area table on the sizes of the standard", read_in: "training page printing four figures, rounded here to the three figures of ISO 898-1" };
pub(in crate::tables) static BICKFORD4_METRIC_AREA: Source = Source { key: "bickford4-metric-area", document: "Bickford, Introduction to the Design and Behavior of Bolted Joints", edition: Some("4th ed."), locator: "metric stress and shear area table", read_in: "read in the book" };
pub(in crate::tables) static J429_1: Source = Source { key: "j429-1", document: "SAE J429", edition: None, locator: "Table 1", read_in: "supplier grade tables and Shigley & Mischke, Mechanical Engineering Design, 5th ed., p. 341; three or more agree" };
pub(in crate::tables) static J429_1_SHIGLEY5: Source = Source { key: "j429-1-shigley5", document: "SAE J429", edition: None, locator: "Table 1", read_in: "strengths in Shigley & Mischke, Mechanical Engineering Design, 5th ed., p. 341" };
pub(in crate::tables) static J429_1_TWO: Source = Source { key: "j429-1-two", document: "SAE J429", edition: None, locator: "Table 1", read_in: "two secondary pages" };
pub(in crate::tables) static J429_OLD: Source = Source { key: "j429-old", document: "SAE J429", edition: Some("editions before 2011"), locator: "Table 1", read_in: "Shigley & Mischke 5th ed., p. 341; Machine Design fastening reference issue, November 1977" };
pub(in crate::tables) static J429_8_1: Source = Source { key: "j429-8.1", document: "SAE J429", edition: None, locator: "grade 8.1", read_in: "two secondary pages" };
pub(in crate::tables) static ISO898_1_3: Source = Source { key: "iso898-1-3", document: "ISO 898-1", edition: Some("2009 and 2013"), locator: "Table 3", read_in: "two full reproductions and one with footnotes; the 1999 table has the same Rm, Sp and HV; least tempering temperatures in Table 2, of which two copies have the underlined class" };
pub(in crate::tables) static ISO898_1_1999_3: Source = Source { key: "iso898-1-1999-3", document: "ISO 898-1", edition: Some("1999"), locator: "Table 3", read_in: "reproduction of EN ISO 898-1:1999" };
pub(in crate::tables) static B18_2_1_HCS: Source = Source { key: "b18.2.1-hcs", document: "ASME B18.2.1", edition: Some("1996 and 2010"), locator: "hex cap screw dimensions", read_in: "supplier reproductions" };
pub(in crate::tables) static ISO4014_A: Source = Source { key: "iso4014-a", document: "ISO 4014", edition: None, locator: "product grade A table", read_in: "reproduction; fillet radius from an IS 1364/ISO 4014/DIN 931 supplier table; a = 3P from a BS/DIN 933 reproduction" };
pub(in crate::tables) static ISO4014_B: Source = Source { key: "iso4014-b", document: "ISO 4014", edition: None, locator: "product grade B table", read_in: "M16 read; the larger sizes partly recalled (basis tells)" };
pub(in crate::tables) static ISO4014_SHEET: Source = Source { key: "iso4014-sheet", document: "ISO 4014", edition: None, locator: "product grades A and B", read_in: "supplier sheet of EN ISO 4014" };
pub(in crate::tables) static STOCK_PRACTICE_INCH: Source = Source { key: "stock-practice-inch", document: "common practice, no source", edition: None, locator: "stock length steps of inch screws", read_in: "a fastener page confirms 1/8 or 1/4 in steps for small and short, 1/2 in for large and long; a stock list of 1-1/2-6 grade 8 shows 5, 5-1/2, 6, 6-1/2, 7, 8, 8-1/2, 10, 11 in" };
pub(in crate::tables) static ISO888: Source = Source { key: "iso888", document: "ISO 888", edition: None, locator: "nominal lengths", read_in: "list to 80 mm read in a reproduction of ISO 1207; longer lengths recalled" };
pub(in crate::tables) static ISO4759_1_LENGTH: Source = Source { key: "iso4759-1-length", document: "ISO 4759-1", edition: None, locator: "length tolerances js15 and js17", read_in: "length columns of ISO 4014 and EN 14399-4 reproductions; the rest from IT15 and IT17 of ISO 286-1" };
pub(in crate::tables) static B18_2_1_LENGTH: Source = Source { key: "b18.2.1-length", document: "ASME B18.2.1", edition: None, locator: "length tolerances", read_in: "supplier reproductions" };
pub(in crate::tables) static B18_2_1_FULL_THREAD: Source = Source { key: "b18.2.1-full-thread", document: "ASME B18.2.1", edition: None, locator: "Table 11, screws threaded full length", read_in: "trade reproduction (distributor page)" };
pub(in crate::tables) static B18_2_2_MACHINE_SCREW: Source = Source { key: "b18.2.2-machine-screw", document: "ASME B18.2.2", edition: None, locator: "hex machine screw nuts", read_in: "two supplier reproductions agree" };
pub(in crate::tables) static B18_2_2_HEX: Source = Source { key: "b18.2.2-hex", document: "ASME B18.2.2", edition: Some("2015"), locator: "hex nuts and hex jam nuts", read_in: "Machinery's Handbook, 31st ed., Table 7" };
pub(in crate::tables) static B18_2_2_HEX_LARGE: Source = Source { key: "b18.2.2-hex-large", document: "ASME B18.2.2", edition: Some("2010 and later"), locator: "hex nuts above 1-1/2 in", read_in: "distributor data sheet compared with a reference page" };
pub(in crate::tables) static B18_2_2_JAM_LARGE: Source = Source { key: "b18.2.2-jam-large", document: "ASME B18.2.2", edition: Some("2010 and later"), locator: "hex jam nut 1-5/8 in", read_in: "one secondary reproduction" };
pub(in crate::tables) static B18_2_2_HEAVY: Source = Source { key: "b18.2.2-heavy", document: "ASME B18.2.2", edition: None, locator: "heavy hex nuts", read_in: "four supplier reproductions compared" };
pub(in crate::tables) static B18_2_2_HEAVY_JAM: Source = Source { key: "b18.2.2-heavy-jam", document: "ASME B18.2.2", edition: Some("2015"), locator: "heavy hex jam nuts", read_in: "Machinery's Handbook, 31st ed., Table 7" };
pub(in crate::tables) static B18_2_2_SLOTTED: Source = Source { key: "b18.2.2-slotted", document: "ASME B18.2.2", edition: None, locator: "hex slotted nuts", read_in: "two supplier reproductions agree" };
pub(in crate::tables) static J482A: Source = Source { key: "j482a", document: "SAE J482a", edition: None, locator: "hex high nuts", read_in: "Machinery's Handbook, 31st ed., p. 1682" };
pub(in crate::tables) static B18_16_6_NE: Source = Source { key: "b18.16.6-ne", document: "ASME B18.16.6", edition: None, locator: "nonmetallic insert lock nuts, style NE", read_in: "two reproductions agree on flats, height and hex height" };
pub(in crate::tables) static IFI100_INSERT: Source = Source { key: "ifi100-insert", document: "IFI-100/107", edition: Some("superseded by ASME B18.16.6"), locator: "nonmetallic insert lock nuts, regular hex series", read_in: "supplier reproduction" };
pub(in crate::tables) static IFI100_METAL_SMALL: Source = Source { key: "ifi100-metal-small", document: "IFI-100/107", edition: Some("superseded by ASME B18.16.6"), locator: "all-metal prevailing-torque hex nuts", read_in: "supplier reproduction" };
pub(in crate::tables) static IFI100_METAL: Source = Source { key: "ifi100-metal", document: "IFI-100/107", edition: Some("superseded by ASME B18.16.6"), locator: "all-metal prevailing-torque hex nuts", read_in: "supplier reproduction; a second supplier bulletin agrees on heights" };
pub(in crate::tables) static IFI100_METAL_BULLETIN: Source = Source { key: "ifi100-metal-bulletin", document: "IFI-100/107", edition: Some("superseded by ASME B18.16.6"), locator: "all-metal top-lock hex nuts, grade C", read_in: "supplier technical bulletin, 2010-02-22" };
pub(in crate::tables) static IFI100_METAL_RECALLED: Source = Source { key: "ifi100-metal-recalled", document: "IFI-100/107", edition: Some("superseded by ASME B18.16.6"), locator: "all-metal prevailing-torque hex nuts above 1 in", read_in: "recalled, not read" };
pub(in crate::tables) static TWO_WAY_LOCKNUT: Source = Source { key: "two-way-locknut", document: "supplier dimensions, no consensus standard", edition: None, locator: "all-metal centre-lock two-way hex nuts", read_in: "one supplier lock-nut sheet" };
pub(in crate::tables) static B18_16_4: Source = Source { key: "b18.16.4", document: "ASME B18.16.4", edition: Some("2008"), locator: "serrated hex flange nuts", read_in: "supplier technical page" };
pub(in crate::tables) static ISO4032: Source = Source { key: "iso4032", document: "ISO 4032", edition: Some("2001"), locator: "Tables 1 and 2", read_in: "four reproductions compared (one is BS EN ISO 4032:2001)" };
pub(in crate::tables) static ISO4033: Source = Source { key: "iso4033", document: "ISO 4033", edition: None, locator: "Table 1", read_in: "reproduction; heights agree with the ANSI B18.2.4.3M slotted nut table" };
pub(in crate::tables) static ISO4035: Source = Source { key: "iso4035", document: "ISO 4035", edition: None, locator: "dimension tables", read_in: "two reproductions compared" };
pub(in crate::tables) static ISO4035_DIN439: Source = Source { key: "iso4035-din439", document: "ISO 4035", edition: None, locator: "dimension tables", read_in: "heights, s and e read in a reproduction of DIN 439-2, identical by class" };
pub(in crate::tables) static ISO4036: Source = Source { key: "iso4036", document: "ISO 4036", edition: None, locator: "dimension table", read_in: "reproduction of EN ISO 4036" };
pub(in crate::tables) static ISO4034: Source = Source { key: "iso4034", document: "ISO 4034", edition: Some("not later than 2020"), locator: "heights and flats", read_in: "DIN-ISO comparison table in a fastener catalogue, 2020" };
pub(in crate::tables) static ISO7093_GBT96_1: Source = Source { key: "iso7093-gbt96.1", document: "ISO 7093-1", edition: Some("2000 (GB/T 96.1-2002)"), locator: "hardness classes", read_in: "foreword of the Chinese adoption GB/T 96.1-2002, on a document site" };
pub(in crate::tables) static ISO7094_GBT5287: Source = Source { key: "iso7094-gbt5287", document: "ISO 7094", edition: Some("2000 (GB/T 5287-2002)"), locator: "hardness class", read_in: "scope of the Chinese adoption GB/T 5287-2002, in translation on a page of standards" };
pub(in crate::tables) static B18_2_8_3A: Source = Source { key: "b18.2.8-3a", document: "ASME B18.2.8", edition: Some("1999 (R2017)"), locator: "Table 3a, metric drills for inch fasteners", read_in: "Machinery's Handbook, 31st ed., p. 1743: the metric drill of each fit; the inch drill is the nearest on thirty-seconds of an inch, as all that were read of close and normal fits from 1/2 in are" };
pub(in crate::tables) static ISO4034_2000: Source = Source { key: "iso4034-2000", document: "ISO 4034", edition: Some("GB/T 41-2000"), locator: "heights and flats", read_in: "two copies of a Chinese handbook table of GB/T 41-2000; greatest and least heights of M6 and M36 in a DIN-ISO comparison table of a fastener catalogue, 2020" };
pub(in crate::tables) static ISO4034_2000_IT17: Source = Source { key: "iso4034-2000-it17", document: "ISO 4034", edition: Some("GB/T 41-2000"), locator: "greatest heights and flats", read_in: "two copies of a Chinese handbook table of GB/T 41-2000; least heights by IT17 of ISO 286-1" };
pub(in crate::tables) static ISO4034_RECALLED: Source = Source { key: "iso4034-recalled", document: "ISO 4034", edition: Some("2012"), locator: "dimension table", read_in: "recalled, not read" };
pub(in crate::tables) static DIN934: Source = Source { key: "din934", document: "DIN 934", edition: Some("withdrawn"), locator: "dimension table", read_in: "reproduction; nominal heights agree with a second page" };
pub(in crate::tables) static B18_2_4_4M: Source = Source { key: "b18.2.4.4m", document: "ANSI/ASME B18.2.4.4M", edition: Some("1982, withdrawn"), locator: "hex flange nuts", read_in: "Machinery's Handbook, 31st ed., Table 26" };
pub(in crate::tables) static B18_2_4_1M: Source = Source { key: "b18.2.4.1m", document: "ASME B18.2.4.1M", edition: None, locator: "hex nuts, style 1", read_in: "Machinery's Handbook, 31st ed., Table 25" };
pub(in crate::tables) static B18_2_4_2M: Source = Source { key: "b18.2.4.2m", document: "ASME B18.2.4.2M", edition: None, locator: "hex nuts, style 2", read_in: "Machinery's Handbook, 31st ed., Table 25" };
pub(in crate::tables) static B18_2_4_3M: Source = Source { key: "b18.2.4.3m", document: "ANSI/ASME B18.2.4.3M", edition: Some("1979 (R2017)"), locator: "slotted hex nuts", read_in: "Machinery's Handbook, 31st ed., Table 24, and the text of the standard" };
pub(in crate::tables) static B18_2_4_5M: Source = Source { key: "b18.2.4.5m", document: "ANSI B18.2.4.5M", edition: Some("1979 (R1998)"), locator: "hex jam nuts", read_in: "reproduction" };
pub(in crate::tables) static B18_2_4_6M: Source = Source { key: "b18.2.4.6m", document: "ASME B18.2.4.6M", edition: None, locator: "heavy hex nuts", read_in: "a sheet of dimensions of ASTM A563M heavy hex nuts to this standard, on a document page; the values recalled before agree with it" };
pub(in crate::tables) static B18_16M: Source = Source { key: "b18.16m", document: "ASME B18.16M", edition: Some("2004 (R2016)"), locator: "prevailing-torque hex flange nuts", read_in: "Machinery's Handbook, 31st ed., Table 27" };
pub(in crate::tables) static B18_16_3M: Source = Source { key: "b18.16.3m", document: "ASME B18.16.3M", edition: None, locator: "prevailing-torque hex nuts", read_in: "reproduction" };
pub(in crate::tables) static ISO7041: Source = Source { key: "iso7041", document: "ISO 7041", edition: Some("2002"), locator: "dimension table", read_in: "JIS B 1199-1:2008 Amendment 1, Table 3.1 (text of the national standard)" };
pub(in crate::tables) static ISO7042: Source = Source { key: "iso7042", document: "ISO 7042", edition: None, locator: "dimension table", read_in: "heights recalled; s and e of ISO 4033 (read)" };
pub(in crate::tables) static DIN985: Source = Source { key: "din985", document: "DIN 985", edition: Some("1987"), locator: "dimension table", read_in: "reproduction; e min M3 to M16 from the text of DIN 985:1987" };
pub(in crate::tables) static DIN980: Source = Source { key: "din980", document: "DIN 980", edition: None, locator: "dimension table", read_in: "reproduction" };
pub(in crate::tables) static B18_21_1_A: Source = Source { key: "b18.21.1-a", document: "ASME B18.21.1", edition: Some("2009 (R2016)"), locator: "plain washers, type A preferred sizes", read_in: "Machinery's Handbook, 31st ed., Table 1a" };
pub(in crate::tables) static B18_21_1_B: Source = Source { key: "b18.21.1-b", document: "ASME B18.21.1", edition: None, locator: "plain washers, type B", read_in: "two reproductions (B18.21.1 and the earlier B18.22.1)" };
pub(in crate::tables) static F436_RECALLED: Source = Source { key: "f436-recalled", document: "ASTM F436", edition: None, locator: "hardened circular washers", read_in: "recalled, not read" };
pub(in crate::tables) static F436_B18_2_6: Source = Source { key: "f436-b18.2.6", document: "ASTM F436", edition: None, locator: "circular washers, ASME B18.2.6-2019 Table 4.1.1-1", read_in: "one supplier reproduction" };
pub(in crate::tables) static AN960: Source = Source { key: "an960", document: "AN960 / NAS1149", edition: None, locator: "flat washers", read_in: "recalled, not read" };
pub(in crate::tables) static B18_21_1_SPRING_REGULAR: Source = Source { key: "b18.21.1-spring-regular", document: "ASME B18.21.1", edition: Some("1999"), locator: "helical spring lock washers, regular", read_in: "two reproductions agree to 7/16 in, one above" };
pub(in crate::tables) static B18_21_1_SPRING_HEAVY: Source = Source { key: "b18.21.1-spring-heavy", document: "ASME B18.21.1", edition: Some("2009"), locator: "helical spring lock washers, heavy", read_in: "two reproductions" };
pub(in crate::tables) static B18_21_1_SPRING_EXTRA: Source = Source { key: "b18.21.1-spring-extra", document: "ASME B18.21.1", edition: None, locator: "helical spring lock washers, extra duty", read_in: "one reproduction (two at 3/8 in)" };
pub(in crate::tables) static B18_21_1_SPRING_COLLAR: Source = Source { key: "b18.21.1-spring-collar", document: "ASME B18.21.1", edition: Some("2009 (R2016)"), locator: "helical spring lock washers, high collar", read_in: "Machinery's Handbook, 31st ed., Table 1; a second reproduction agrees" };
pub(in crate::tables) static ISO7089_RECALLED: Source = Source { key: "iso7089-recalled", document: "ISO 7089", edition: None, locator: "dimension table", read_in: "nominals recalled; limits computed from the tolerance grades" };
pub(in crate::tables) static ISO7089_JIS_CHART: Source = Source { key: "iso7089-jis-chart", document: "ISO 7089", edition: None, locator: "dimension table", read_in: "outside diameter and thickness in a JIS B 1256:2008 table; inside diameter in a chart of ISO sizes" };
pub(in crate::tables) static ISO7089: Source = Source { key: "iso7089", document: "ISO 7089", edition: None, locator: "dimension table", read_in: "nominals in two reproductions; limits computed by the tolerances of ISO 4759-3 (a page of its table: id H13, od h14 to M30; id H14, od h15 above)" };
pub(in crate::tables) static ISO7089_JIS_DIN: Source = Source { key: "iso7089-jis-din", document: "ISO 7089", edition: None, locator: "dimension table", read_in: "outside diameter and thickness in a JIS B 1256:2008 table; inside diameter in a DIN 125 table (same)" };
pub(in crate::tables) static ISO7090: Source = Source { key: "iso7090", document: "ISO 7090", edition: None, locator: "dimension table", read_in: "nominals recalled" };
pub(in crate::tables) static DIN125: Source = Source { key: "din125", document: "DIN 125", edition: None, locator: "form A", read_in: "supplier table" };
pub(in crate::tables) static ISO7092_M10: Source = Source { key: "iso7092-m10", document: "ISO 7092", edition: None, locator: "M10", read_in: "one reference page" };
pub(in crate::tables) static ISO7093_M10: Source = Source { key: "iso7093-m10", document: "ISO 7093-1", edition: None, locator: "M10", read_in: "one reference page" };
pub(in crate::tables) static ISO4014_4017_RANGE: Source = Source { key: "iso4014-4017-range", document: "ISO 4014 and ISO 4017", edition: None, locator: "ranges of nominal length", read_in: "recalled, not read" };
pub(in crate::tables) static PCC1_H1: Source = Source { key: "pcc1-h1", document: "ASME PCC-1", edition: None, locator: "Table H-1, bolt root and tensile stress areas (SI)", read_in: "online copy of the table printing four figures, rounded here to the three figures of ISO 898-1" };
pub(in crate::tables) static B18_2_1_UNTHREADED: Source = Source { key: "b18.2.1-unthreaded", document: "ASME B18.2.1", edition: None, locator: "unthreaded length under the head of screws threaded full length", read_in: "recalled, not read" };
pub(in crate::tables) static ISO4017_A: Source = Source { key: "iso4017-a", document: "ISO 4017", edition: None, locator: "distance from the head to the first full thread, a max = 3 P", read_in: "a BS/DIN 933 reproduction; rows of basis memory were recalled" };
pub(in crate::tables) static ISO888_HANDBOOK: Source = Source { key: "iso888-handbook", document: "ISO 888", edition: None, locator: "nominal lengths", read_in: "standard lengths of metric precision bolts and screws, Mechanical Engineer's Data Handbook, section 8.2.4, p. 299" };
pub(in crate::tables) static ISO7092_GB848: Source = Source { key: "iso7092-gb848", document: "ISO 7092", edition: None, locator: "dimension table", read_in: "online reproduction of GB 848-85, its Chinese adoption; outside diameter and thickness of M2 to M20 also in a reproduction of GOST 10450-78" };
pub(in crate::tables) static ISO7093_GOST: Source = Source { key: "iso7093-gost", document: "ISO 7093", edition: None, locator: "dimension table", read_in: "GOST ISO 7093-2-2016, Tables 1 and 2, online copy: nominal dimensions; limits computed by the tolerances of ISO 4759-3 (a page of its table)" };
pub(in crate::tables) static ISO4161_GOST: Source = Source { key: "iso4161-gost", document: "ISO 4161", edition: Some("1983"), locator: "dimension table", read_in: "GOST R 50592-93, Table 1, its counterpart, online copy" };
pub(in crate::tables) static F436_11: Source = Source { key: "f436-11", document: "ASTM F436", edition: Some("2011"), locator: "Table 2", read_in: "supplier page" };
pub(in crate::tables) static B18_21_1_A_SUPPLIER: Source = Source { key: "b18.21.1-a-supplier", document: "ASME B18.21.1", edition: None, locator: "plain washers, type A", read_in: "supplier page printing the type A table (its least thickness of narrow 7/8, .180, is taken as a misprint of .108)" };
pub(in crate::tables) static ISO7090_AS_7089: Source = Source { key: "iso7090-as-7089", document: "ISO 7090", edition: None, locator: "dimension table", read_in: "computed: the dimensions of ISO 7089, from which it differs by the chamfer only (supplier page)" };
pub(in crate::tables) static B18_2_8_1: Source = Source { key: "b18.2.8-1", document: "ASME B18.2.8", edition: Some("1999 (R2017)"), locator: "Table 1, clearance holes for inch fasteners", read_in: "Machinery's Handbook, 31st ed., p. 1741 (loose fit, some normal drills, and the classes H12, H13 and H14), and a distributor table; close drills of #4 to #6 in an open data file transcribed from two public charts; greatest diameters that are computed add the grade 12 or 13 of ANSI B4.1 in inches, whose table was read" };
pub(in crate::tables) static ISO273: Source = Source { key: "iso273", document: "ISO 273", edition: Some("1979"), locator: "clearance holes", read_in: "three tables compared; one page for M60" };
pub(in crate::tables) static BS4186: Source = Source { key: "bs4186", document: "BS 4186", edition: Some("1967"), locator: "clearance holes", read_in: "Machinery's Handbook, 31st ed., p. 2173, Table 8" };
pub(in crate::tables) static AISC360_J3_3: Source = Source { key: "aisc360-j3.3", document: "AISC 360", edition: Some("all editions"), locator: "Table J3.3, bolts under 1 in", read_in: "RCSC Table 3.1 and AISC tables as reproduced" };
pub(in crate::tables) static AISC360_J3_3_2010: Source = Source { key: "aisc360-j3.3-2010", document: "AISC 360", edition: Some("2010 and earlier"), locator: "Table J3.3, bolts of 1 in and more", read_in: "reproduction of the older values" };
pub(in crate::tables) static AISC360_J3_3_2016: Source = Source { key: "aisc360-j3.3-2016", document: "AISC 360", edition: Some("2016 and 2022"), locator: "Table J3.3, bolts of 1 in and more", read_in: "1 in: a copy of the table of 2022, and an open data file of that of 2016; larger bolts: the formula row of the table of 2022" };
pub(in crate::tables) static AISC360_05_J3_3M: Source = Source { key: "aisc360-05-j3.3m", document: "AISC 360", edition: Some("2005"), locator: "Table J3.3M", read_in: "Brockenbrough, Structural Steel Designer's Handbook, Table 5.11, p. 5.47" };
pub(in crate::tables) static TAP_DRILL_INCH: Source = Source { key: "tap-drill-inch", document: "common practice, no source", edition: None, locator: "tap drill charts, about 75 per cent thread", read_in: "two or more charts agree unless noted" };
pub(in crate::tables) static TAP_DRILL_MH31: Source = Source { key: "tap-drill-mh31", document: "Machinery's Handbook", edition: Some("31st ed."), locator: "p. 2168, Table 4, tap drills of American National threads", read_in: "a page of the handbook; the share of thread is computed" };
pub(in crate::tables) static TAP_DRILL_METRIC: Source = Source { key: "tap-drill-metric", document: "common practice, no source", edition: None, locator: "metric tap drill charts", read_in: "charts read" };
pub(in crate::tables) static TAP_DRILL_RULE: Source = Source { key: "tap-drill-rule", document: "common practice, no source", edition: None, locator: "rule: drill = diameter less pitch", read_in: "computed" };
pub(in crate::tables) static A307: Source = Source { key: "a307", document: "ASTM A307", edition: None, locator: "Tables 2 to 4", read_in: "two secondary reproductions that agree" };
pub(in crate::tables) static A449: Source = Source { key: "a449", document: "ASTM A449", edition: Some("2014"), locator: "mechanical requirements", read_in: "supplier reproduction dated 2016; three pages agree on strengths; scope text read in the 2004 edition" };
pub(in crate::tables) static A449_1993: Source = Source { key: "a449-1993", document: "ASTM A449", edition: Some("1993"), locator: "scope, type 2 (withdrawn 2003)", read_in: "scope text and supplier pages" };
pub(in crate::tables) static F3125_2015: Source = Source { key: "f3125-2015", document: "ASTM F3125", edition: Some("2015"), locator: "mechanical requirements", read_in: "four secondary reproductions that agree; proof and hardness in a supplier reproduction dated 2016" };
pub(in crate::tables) static A325_OLD: Source = Source { key: "a325-old", document: "ASTM A325", edition: Some("before 2015"), locator: "mechanical requirements", read_in: "Shigley & Mischke, Mechanical Engineering Design, 5th ed., p. 341; hardness, elongation and reduction of area in a distributor's chart of marks and strengths" };
pub(in crate::tables) static A354: Source = Source { key: "a354", document: "ASTM A354", edition: Some("before 2012"), locator: "mechanical requirements", read_in: "three secondary pages that agree on hardness and strengths" };
pub(in crate::tables) static A354_CURRENT: Source = Source { key: "a354-current", document: "ASTM A354", edition: Some("after 2011"), locator: "grade BD, mechanical requirements", read_in: "two supplier pages" };
pub(in crate::tables) static A193_2: Source = Source { key: "a193-2", document: "ASTM A193/A193M", edition: None, locator: "Table 2, inch products", read_in: "two to three secondary pages that agree" };
pub(in crate::tables) static A574: Source = Source { key: "a574", document: "ASTM A574", edition: None, locator: "Tables 1 and 3", read_in: "four secondary reproductions that agree" };
pub(in crate::tables) static F593: Source = Source { key: "f593", document: "ASTM F593", edition: None, locator: "mechanical properties, alloy groups 1 and 2", read_in: "five secondary pages that agree" };
pub(in crate::tables) static F593_RECALLED: Source = Source { key: "f593-recalled", document: "ASTM F593", edition: None, locator: "mechanical properties, alloy groups 4 to 7", read_in: "recalled, not read" };
pub(in crate::tables) static ISO3506_1_OLD: Source = Source { key: "iso3506-1-old", document: "ISO 3506-1", edition: Some("before 2020"), locator: "table of mechanical properties, grades A1 to A5", read_in: "an extract of JIS B 1054, which adopts it" };
pub(in crate::tables) static ISO3506_1_2020: Source = Source { key: "iso3506-1-2020", document: "ISO 3506-1", edition: Some("2020"), locator: "Table 3, grade A2", read_in: "a reproduction; three pages agree on classes 50, 70 and 80" };
pub(in crate::tables) static ISO3506_1_OLD_A4: Source = Source { key: "iso3506-1-old-a4", document: "ISO 3506-1", edition: Some("before 2020"), locator: "table of mechanical properties, grade A4", read_in: "an extract of JIS B 1054, which adopts it, and two supplier pages" };
pub(in crate::tables) static ISO3506_1_RECALLED: Source = Source { key: "iso3506-1-recalled", document: "ISO 3506-1", edition: Some("2020"), locator: "tables of mechanical properties", read_in: "recalled, not read" };
pub(in crate::tables) static ISO3506_1_OLD_C: Source = Source { key: "iso3506-1-old-c", document: "ISO 3506-1", edition: Some("before 2020"), locator: "table of mechanical properties, martensitic grades", read_in: "an extract of JIS B 1054, which adopts it" };
pub(in crate::tables) static ISO3506_1_OLD_F: Source = Source { key: "iso3506-1-old-f", document: "ISO 3506-1", edition: Some("before 2020"), locator: "table of mechanical properties, ferritic grade", read_in: "an extract of JIS B 1054, which adopts it" };
pub(in crate::tables) static J995: Source = Source { key: "j995", document: "SAE J995", edition: None, locator: "Tables 2 and 3", read_in: "four pages agree on hex coarse; fine, jam and slotted from one scanned reproduction" };
pub(in crate::tables) static A563_3: Source = Source { key: "a563-3", document: "ASTM A563", edition: None, locator: "Table 3, coarse threads", read_in: "a supplier reproduction; hex and heavy hex confirmed by four pages" };
pub(in crate::tables) static A194: Source = Source { key: "a194", document: "ASTM A194/A194M", edition: None, locator: "proof stress and hardness", read_in: "two supplier reproductions; stresses stated in the footnotes of the table" };
pub(in crate::tables) static A194_HEX: Source = Source { key: "a194-hex", document: "ASTM A194/A194M", edition: None, locator: "proof stress, hex nuts of grades 2 and 2HM", read_in: "recalled, not read" };
pub(in crate::tables) static A194_8: Source = Source { key: "a194-8", document: "ASTM A194/A194M", edition: None, locator: "proof stress of grades 8 and 8M", read_in: "recalled, not read" };
pub(in crate::tables) static ISO898_2: Source = Source { key: "iso898-2", document: "ISO 898-2", edition: Some("1992"), locator: "table of proof loads", read_in: "proof load over stress area of the load table, the same for every size of a band within rounding; hardness of class 6 on a distributor's sheet of hex nuts" };
pub(in crate::tables) static ISO898_2_RECALLED: Source = Source { key: "iso898-2-recalled", document: "ISO 898-2", edition: Some("2012"), locator: "Table 5, classes 04, 05 and 9", read_in: "recalled, not read" };
pub(in crate::tables) static ISO898_6: Source = Source { key: "iso898-6", document: "ISO 898-6", edition: None, locator: "proof stress and hardness", read_in: "one page; the boundary at 16 mm is hard to read there" };
pub(in crate::tables) static ISO10684: Source = Source { key: "iso10684", document: "ISO 10684", edition: Some("2004"), locator: "Annex A, M8 and M10", read_in: "one page" };
pub(in crate::tables) static B18166_STRENGTH: Source = Source { key: "b18166-strength", document: "ASME B18.16.6", edition: Some("2017 and before"), locator: "proof loads of insert nuts, UNC", read_in: "30 cells of one reproduction give these stresses on the stress area" };
pub(in crate::tables) static ISO898_2_PAIR_8: Source = Source { key: "iso898-2-pair-8", document: "ISO 898-2", edition: None, locator: "which bolt class goes with which nut class", read_in: "two pages that agree and an extract of DIN EN 20898-2" };
pub(in crate::tables) static J995_PAIRS: Source = Source { key: "j995-pairs", document: "SAE J995", edition: None, locator: "nuts of grade 2 for bolts of grades 1 and 2", read_in: "recalled, not read" };
pub(in crate::tables) static PAIRS_CHART: Source = Source { key: "pairs-chart", document: "SAE J995, ASTM A563", edition: None, locator: "suitable nuts", read_in: "a supplier strength chart of January 2016" };
pub(in crate::tables) static A307_NUTS: Source = Source { key: "a307-nuts", document: "ASTM A307", edition: None, locator: "recommended hardware", read_in: "two pages" };
pub(in crate::tables) static A449_NUTS: Source = Source { key: "a449-nuts", document: "ASTM A449", edition: Some("1993"), locator: "1.4", read_in: "scope text" };
pub(in crate::tables) static A354_NUTS: Source = Source { key: "a354-nuts", document: "ASTM A354", edition: Some("2000 and 2003"), locator: "1.3", read_in: "scope texts; they allow any nut of higher proof stress" };
pub(in crate::tables) static F3125_NUTS: Source = Source { key: "f3125-nuts", document: "ASTM F3125", edition: Some("2015"), locator: "Table 1", read_in: "two pages" };
pub(in crate::tables) static A193_NUTS: Source = Source { key: "a193-nuts", document: "ASTM A193/A193M", edition: None, locator: "nuts for grade B7", read_in: "a supplier product page" };
pub(in crate::tables) static BOLT_MARKS_CHART: Source = Source { key: "bolt-marks-chart", document: "SAE J429", edition: None, locator: "head marks", read_in: "a laboratory page of bolt head marks (grades 5, 5.2, 7, 8, 8.2); three trade pages agree on 5 and 8" };
pub(in crate::tables) static BOLT_MARKS_NONE: Source = Source { key: "bolt-marks-none", document: "SAE J429", edition: None, locator: "head marks", read_in: "a grade mark chart (1, 2, 4: none) and the reproduction the grades were read in" };
pub(in crate::tables) static A193_MARKS: Source = Source { key: "a193-marks", document: "ASTM A193/A193M", edition: None, locator: "grade symbols", read_in: "a grade mark chart reprinted by an engineering office" };
pub(in crate::tables) static MARKS_RECALLED: Source = Source { key: "marks-recalled", document: "ASTM A193, A325, A354, A449, A490, F593", edition: None, locator: "head marks", read_in: "recalled, not read" };
pub(in crate::tables) static F3125_MARKS: Source = Source { key: "f3125-marks", document: "ASTM F3125", edition: Some("2015"), locator: "head marks", read_in: "four secondary reproductions that agree" };
pub(in crate::tables) static A307_MARKS: Source = Source { key: "a307-marks", document: "ASTM A307", edition: None, locator: "head marks", read_in: "two secondary reproductions that agree" };
pub(in crate::tables) static F593_MARKS: Source = Source { key: "f593-marks", document: "ASTM F593", edition: None, locator: "marks, alloy groups 1 and 2", read_in: "five secondary pages that agree" };
pub(in crate::tables) static ISO898_1_MARKS: Source = Source { key: "iso898-1-marks", document: "ISO 898-1", edition: Some("2009 and 2013"), locator: "property class as mark", read_in: "two full reproductions; the mark is the class symbol" };
pub(in crate::tables) static ISO898_1_1999_MARKS: Source = Source { key: "iso898-1-1999-marks", document: "EN ISO 898-1", edition: Some("1999"), locator: "property class as mark", read_in: "a reproduction" };
pub(in crate::tables) static ISO3506_1_MARKS: Source = Source { key: "iso3506-1-marks", document: "ISO 3506-1", edition: None, locator: "steel group and class as mark", read_in: "an extract of JIS B 1054, which adopts it" };
pub(in crate::tables) static F568M: Source = Source { key: "f568m", document: "ASTM F568M", edition: Some("2002 and 2007"), locator: "Table 3", read_in: "three secondary pages; withdrawn 2012, ISO 898-1 recommended instead" };
pub(in crate::tables) static F3125M_A325M: Source = Source { key: "f3125m-a325m", document: "ASTM A325M", edition: None, locator: "proof stress, yield and tensile strength", read_in: "a sheet of metric bolt classes on a document site and a chart of A325M" };
pub(in crate::tables) static A490M_SCOPE: Source = Source { key: "a490m-scope", document: "ASTM A490M", edition: Some("2003"), locator: "title and scope", read_in: "first page of a copy; classes 10.9 and 10.9.3 as read for ASTM F568M" };
pub(in crate::tables) static F3125M_MARKS: Source = Source { key: "f3125m-marks", document: "ASTM F3125", edition: Some("2015"), locator: "head marks of the metric grades", read_in: "two suppliers' pages that agree" };
pub(in crate::tables) static AISC_ASD_1989: Source = Source { key: "aisc-asd-1989", document: "AISC ASD Specification", edition: Some("1989"), locator: "Table J3.2", read_in: "a scan of the page" };
pub(in crate::tables) static AISC360_05_J32: Source = Source { key: "aisc360-05-j32", document: "AISC 360", edition: Some("2005"), locator: "Table J3.2", read_in: "Brockenbrough & Merritt, Structural Steel Designers Handbook, Table 5.16" };
pub(in crate::tables) static AISC360_10_J32: Source = Source { key: "aisc360-10-j32", document: "AISC 360", edition: Some("2010"), locator: "Table J3.2", read_in: "a scan of the page" };
pub(in crate::tables) static AISC360_16_J32: Source = Source { key: "aisc360-16-j32", document: "AISC 360", edition: Some("2016"), locator: "Table J3.2", read_in: "0.75, 0.450 and 0.563 of the tensile strengths 60, 120, 150 and 200 ksi, to the nearest ksi: a primer on chapter J of the edition of 2016 states the rule and the strengths of A307, groups A and B; the prints of 2010 and 2022, which were read, have the same figures" };
pub(in crate::tables) static AISC360_22_J32: Source = Source { key: "aisc360-22-j32", document: "AISC 360", edition: Some("2022"), locator: "Table J3.2", read_in: "a copy of the specification, machine-read from the page: all figures of the table and its notes; group 200 of 2022 is group C of 2016" };
pub(in crate::tables) static RCSC_1988: Source = Source { key: "rcsc-1988", document: "RCSC Specification for Structural Joints, LRFD", edition: Some("1988"), locator: "Table 2", read_in: "a reproduction of the specification" };
pub(in crate::tables) static BS5950: Source = Source { key: "bs5950", document: "BS 5950-1", edition: Some("2000"), locator: "Tables 30 and 34", read_in: "a design office sheet" };
pub(in crate::tables) static EN1993_31: Source = Source { key: "en1993-31", document: "EN 1993-1-8", edition: Some("2005"), locator: "Table 3.1", read_in: "a steel design lecture; 400 and 800 MPa also follow from published resistances" };
pub(in crate::tables) static EN1993_34: Source = Source { key: "en1993-34", document: "EN 1993-1-8", edition: Some("2005"), locator: "Table 3.4", read_in: "a European design guide on joints of steel buildings" };
pub(in crate::tables) static EN1993_34_PAGE: Source = Source { key: "en1993-34-page", document: "EN 1993-1-8", edition: Some("2005"), locator: "Table 3.4", read_in: "the page with the table, reproduced on a public document host" };
pub(in crate::tables) static RATIO_TRADE: Source = Source { key: "ratio-trade", document: "Industrial Fasteners Institute", edition: None, locator: "shear strength as a share of tensile strength", read_in: "three reference pages" };
pub(in crate::tables) static RATIO_TESTS: Source = Source { key: "ratio-tests", document: "Guide to Design Criteria for Bolted and Riveted Joints", edition: None, locator: "mean of tests", read_in: "recalled, not read" };
pub(in crate::tables) static RATIO_MISES: Source = Source { key: "ratio-mises", document: "Shigley, Mechanical Engineering Design", edition: None, locator: "1/sqrt(3)", read_in: "computed" };
pub(in crate::tables) static RATIO_SOCKET: Source = Source { key: "ratio-socket", document: "makers of socket screws to ASTM A574", edition: None, locator: "108/180 and 102/170 ksi", read_in: "maker tables" };
pub(in crate::tables) static RATIO_AN: Source = Source { key: "ratio-an", document: "MIL-HDBK-5J", edition: None, locator: "75 ksi shear of 125 ksi bolts", read_in: "an aviation technical page that cites it" };
pub(in crate::tables) static RATIO_160: Source = Source { key: "ratio-160", document: "NAS bolt standards", edition: None, locator: "95 ksi shear of 160 ksi bolts", read_in: "a recreational aviation page (95 ksi for the NAS 6200 series); MIL-B-7838C has 96" };
pub(in crate::tables) static RATIO_8831: Source = Source { key: "ratio-8831", document: "MIL-B-8831B", edition: Some("1982"), locator: "title and 1.1", read_in: "the document" };
pub(in crate::tables) static RATIO_7838: Source = Source { key: "ratio-7838", document: "MIL-B-7838C", edition: Some("1989"), locator: "scope", read_in: "the document" };
pub(in crate::tables) static AN_LOADS: Source = Source { key: "an-loads", document: "AN3 to AN20 drawing", edition: None, locator: "tension and shear of alloy steel bolts", read_in: "recalled, not read" };
pub(in crate::tables) static AN4_SHEAR: Source = Source { key: "an4-shear", document: "AN3 to AN20 drawing", edition: None, locator: "shear of AN4", read_in: "an aviation technical page" };
pub(in crate::tables) static F835_MAKER: Source = Source { key: "f835-maker", document: "ASTM F835", edition: None, locator: "tension and shear of flat head socket screws", read_in: "a maker table" };
pub(in crate::tables) static F835_SUPPLIER: Source = Source { key: "f835-supplier", document: "ASTM F835", edition: None, locator: "shear of flat head socket screws", read_in: "a second supplier table; differs from the first by up to 3 %" };
pub(in crate::tables) static MIL_N_25027_LOADS: Source = Source { key: "mil-n-25027-loads", document: "MIL-N-25027", edition: Some("class II"), locator: "least axial strength of self-locking nuts", read_in: "NASA TM-106943 (1995), Table VI" };
pub(in crate::tables) static SHIGLEY_8_15: Source = Source { key: "shigley-8-15", document: "Shigley, Mechanical Engineering Design", edition: Some("9th ed. (2011)"), locator: "Table 8-15, nut factors", read_in: "reproduction of the table in the text of the book" };
pub(in crate::tables) static K_TRADE_GUIDES: Source = Source { key: "k-trade-guides", document: "fastener trade guides", edition: None, locator: "nut factor of plain bolts", read_in: "four torque guides of fastener suppliers" };
pub(in crate::tables) static K_DISTRIBUTOR: Source = Source { key: "k-distributor", document: "torque guide of a fastener distributor", edition: Some("2009 to 2014"), locator: "nut factors by finish", read_in: "the guide on the distributor's page; a coating newsletter repeats the zinc value" };
pub(in crate::tables) static K_IFI: Source = Source { key: "k-ifi", document: "IFI Fastener Standards", edition: Some("5th ed."), locator: "technical data, tightening torques", read_in: "distributor's reproduction of the torque guide" };
pub(in crate::tables) static K_NOTES: Source = Source { key: "k-notes", document: "machine design notes", edition: None, locator: "torque and preload", read_in: "one course page" };
pub(in crate::tables) static K_SUPPLIER: Source = Source { key: "k-supplier", document: "nut factor chart of a fastener maker", edition: None, locator: "finishes, bolt on steel joint", read_in: "the maker's engineering data page" };
pub(in crate::tables) static K_BICKFORD: Source = Source { key: "k-bickford", document: "Bickford, An Introduction to the Design and Behavior of Bolted Joints", edition: None, locator: "table of nut factors", read_in: "recalled, not read" };
pub(in crate::tables) static K_BICKFORD_NASSAR: Source = Source { key: "k-bickford-nassar", document: "Bickford and Nassar, Handbook of Bolts and Bolted Joints", edition: Some("1998"), locator: "chapter 2, Table 1, mean nut factors", read_in: "quoted in an engineers' forum" };
pub(in crate::tables) static EN14399_1: Source = Source { key: "en14399-1", document: "EN 14399-1", edition: None, locator: "k-classes K1 and K2", read_in: "recalled, not read" };
pub(in crate::tables) static VDI2230_FRICTION: Source = Source { key: "vdi2230-friction", document: "VDI 2230 Part 1", edition: None, locator: "friction classes of threads and bearing faces", read_in: "three reproductions that agree" };
pub(in crate::tables) static MH_SCATTER: Source = Source { key: "mh-scatter", document: "Machinery's Handbook", edition: None, locator: "accuracy of bolt preload application methods", read_in: "reproduction" };
pub(in crate::tables) static NSTS_08307_SCATTER: Source = Source { key: "nsts-08307-scatter", document: "NSTS 08307", edition: None, locator: "preload uncertainty by method", read_in: "reproduction of the uncertainties used in NASA practice" };
pub(in crate::tables) static VDI2230_1986_SCATTER: Source = Source { key: "vdi2230-1986-scatter", document: "VDI 2230", edition: Some("1986"), locator: "scatter of tightening methods", read_in: "supplier's page in the wording of that edition" };
pub(in crate::tables) static VDI2230_2003_A8: Source = Source { key: "vdi2230-2003-a8", document: "VDI 2230 Part 1", edition: Some("2003"), locator: "Table A8, tightening factors", read_in: "recalled, not read" };
pub(in crate::tables) static VDI2230_2015_SCATTER: Source = Source { key: "vdi2230-2015-scatter", document: "VDI 2230 Part 1", edition: Some("2015"), locator: "tightening factor, torque from estimated friction", read_in: "supplier's page" };
pub(in crate::tables) static VDI2230_T5: Source = Source { key: "vdi2230-t5", document: "VDI 2230 Part 1", edition: None, locator: "Table 5, embedment", read_in: "recalled, not read" };
pub(in crate::tables) static AC43_13_7_2: Source = Source { key: "ac43.13-7-2", document: "FAA AC 43.13-1B", edition: Some("1998"), locator: "Table 7-2, prevailing torque for reuse of self-locking nuts", read_in: "page copy of the circular" };
pub(in crate::tables) static TM1_1500_204_23_6: Source = Source { key: "tm1-1500-204-23-6", document: "US Army TM 1-1500-204-23-6", edition: None, locator: "Table 2-8, breakaway torque of used self-locking nuts", read_in: "page copy of the manual; the fine sizes to 1-1/8 repeat in three other manuals" };
pub(in crate::tables) static TM10_SERIES: Source = Source { key: "tm10-series", document: "US Army TM 10-4320-346-12&P", edition: None, locator: "Table H-2, locknut breakaway torque", read_in: "page copy of the manual; two other manuals of the series agree" };
pub(in crate::tables) static TM55_1520_240_23_1: Source = Source { key: "tm55-1520-240-23-1", document: "US Army TM 55-1520-240-23-1", edition: None, locator: "1-13, friction torque of threaded fasteners", read_in: "page copy of the manual" };
pub(in crate::tables) static MIL_N_25027_RECALLED: Source = Source { key: "mil-n-25027-recalled", document: "MIL-N-25027", edition: None, locator: "maximum locking torque, fine threads", read_in: "recalled, not read" };
pub(in crate::tables) static B18_16_6_TORQUE: Source = Source { key: "b18.16.6-torque", document: "ASME B18.16.6", edition: None, locator: "prevailing torque of nonmetallic insert nuts, UNC", read_in: "reproduction read in full" };
pub(in crate::tables) static ISO2320_RECALLED: Source = Source { key: "iso2320-recalled", document: "ISO 2320", edition: Some("1997"), locator: "prevailing torque of property classes 5, 6, 8 and 10", read_in: "recalled, not read" };
pub(in crate::tables) static ISO2320_1997: Source = Source { key: "iso2320-1997", document: "ISO 2320", edition: Some("1997"), locator: "scope", read_in: "scope note of the edition" };
pub(in crate::tables) static ISO2320_2008: Source = Source { key: "iso2320-2008", document: "ISO 2320", edition: Some("2008"), locator: "scope", read_in: "scope note of the edition" };
pub(in crate::tables) static ISO2320_2015: Source = Source { key: "iso2320-2015", document: "ISO 2320", edition: Some("2015"), locator: "scope", read_in: "scope note of the edition" };
pub(in crate::tables) static DIN985_SCOPE: Source = Source { key: "din985-scope", document: "DIN 985", edition: Some("1987"), locator: "clause 1", read_in: "text of the standard" };
pub(in crate::tables) static AC43_13_7_64: Source = Source { key: "ac43.13-7-64", document: "FAA AC 43.13-1B", edition: Some("1998"), locator: "paragraph 7-64f", read_in: "page copy of the circular" };
pub(in crate::tables) static AC43_13_PLATING: Source = Source { key: "ac43.13-plating", document: "FAA AC 43.13-1B", edition: Some("1998"), locator: "chapter 7, section 4, nut plating", read_in: "page copy of the circular" };
pub(in crate::tables) static NASM25027_SCOPE: Source = Source { key: "nasm25027-scope", document: "NASM25027", edition: Some("2012"), locator: "1.1, scope", read_in: "first pages of the standard; the text of MIL-DTL-25027H (1997) says the same" };
pub(in crate::tables) static RP1228: Source = Source { key: "rp1228", document: "NASA RP-1228, Fastener Design Manual", edition: Some("1990"), locator: "platings", read_in: "reproduction of the text" };
pub(in crate::tables) static RP1228_RECALLED: Source = Source { key: "rp1228-recalled", document: "NASA RP-1228, Fastener Design Manual", edition: Some("1990"), locator: "platings", read_in: "recalled, not read" };
pub(in crate::tables) static TM106943_CADMIUM: Source = Source { key: "tm106943-cadmium", document: "NASA TM-106943", edition: Some("1995"), locator: "lubricated and cadmium plated fasteners", read_in: "the report" };
pub(in crate::tables) static TM10_3930_643_20: Source = Source { key: "tm10-3930-643-20", document: "US Army TM 10-3930-643-20", edition: None, locator: "2-12, adhesives", read_in: "page copy of the manual" };
pub(in crate::tables) static ISO898_SCOPE: Source = Source { key: "iso898-scope", document: "ISO 898-1 and ISO 898-2", edition: None, locator: "scope", read_in: "reproductions of the scope text" };
pub(in crate::tables) static ISO3506_SCOPE: Source = Source { key: "iso3506-scope", document: "ISO 3506-1", edition: None, locator: "scope and notes on temperature", read_in: "reproduction of the scope text" };
pub(in crate::tables) static BEER_JOHNSTON_B: Source = Source { key: "beer-johnston-b", document: "Beer and Johnston, Mechanics of Materials", edition: None, locator: "Appendix B, typical properties", read_in: "reproduction of the table" };
pub(in crate::tables) static CALLISTER_B2: Source = Source { key: "callister-b2", document: "Callister, Materials Science and Engineering", edition: None, locator: "Table B.2, modulus of elasticity", read_in: "reproduction of the table" };
pub(in crate::tables) static UGURAL_D1: Source = Source { key: "ugural-d1", document: "Ugural, Mechanical Design of Machine Components", edition: None, locator: "Table D.1", read_in: "reproduction of the table" };
pub(in crate::tables) static HANDBOOK_PROPERTIES: Source = Source { key: "handbook-properties", document: "common handbook values", edition: None, locator: "modulus and expansion of steels", read_in: "recalled, not read" };
pub(in crate::tables) static AS1442_200: Source = Source { key: "as1442-200", document: "AS 1442", edition: None, locator: "design table, hot rolled 1020", read_in: "one page giving 200 and 400 MPa" };
pub(in crate::tables) static A500: Source = Source { key: "a500", document: "ASTM A500", edition: None, locator: "tensile requirements, grade B", read_in: "four supplier reproductions that agree" };
pub(in crate::tables) static HDBK5_2_3_1_C1: Source = Source { key: "hdbk5-2.3.1-c1", document: "MIL-HDBK-5", edition: None, locator: "Table 2.3.1.0(c1), 4130 normalized", read_in: "recalled, not read" };
pub(in crate::tables) static HDBK5_3_6_2_B1: Source = Source { key: "hdbk5-3.6.2-b1", document: "MIL-HDBK-5", edition: None, locator: "Table 3.6.2.0(b1), 6061-T6 sheet", read_in: "recalled, not read" };
pub(in crate::tables) static HDBK5_3_2_3_B1: Source = Source { key: "hdbk5-3.2.3-b1", document: "MIL-HDBK-5H", edition: Some("1998"), locator: "Table 3.2.3.0(b1), 2024-T3 bare sheet, LT", read_in: "recalled, not read" };
pub(in crate::tables) static HDBK5_3_7_6_B1: Source = Source { key: "hdbk5-3.7.6-b1", document: "MIL-HDBK-5J", edition: Some("2003"), locator: "Table 3.7.6.0(b1), 7075-T6 sheet", read_in: "aviation page that cites the table" };
pub(in crate::tables) static HDBK5_5_4_1_B: Source = Source { key: "hdbk5-5.4.1-b", document: "MIL-HDBK-5", edition: None, locator: "Table 5.4.1.0(b), Ti-6Al-4V annealed sheet", read_in: "recalled, not read" };
pub(in crate::tables) static AA_TYPICAL: Source = Source { key: "aa-typical", document: "Aluminum Association data", edition: None, locator: "typical properties of 6061-T6", read_in: "three pages that agree" };
pub(in crate::tables) static A193_B8_1: Source = Source { key: "a193-b8-1", document: "ASTM A193", edition: None, locator: "grade B8 class 1", read_in: "reproduction of the strengths (30 and 75 ksi)" };
pub(in crate::tables) static DUCTILE_NAMES: Source = Source { key: "ductile-names", document: "ASTM A536", edition: None, locator: "grade names: tensile and yield strength in ksi, elongation in per cent", read_in: "the names themselves" };
pub(in crate::tables) static GREY_CLASS_30: Source = Source { key: "grey-class-30", document: "ASTM A48", edition: None, locator: "class 30: the class is the tensile strength in ksi", read_in: "recalled, not read" };
pub(in crate::tables) static TM106943_BOLTS: Source = Source { key: "tm106943-bolts", document: "NASA TM-106943", edition: Some("1995"), locator: "Tables IV, VII and VIII", read_in: "the report" };
pub(in crate::tables) static ISO965_1_RECALLED: Source = Source { key: "iso965-1-recalled", document: "ISO 965-1", edition: Some("1998"), locator: "tolerance tables (1, 3 to 6), lengths of engagement (2)", read_in: "recalled, not read; the tables give 468 of 471 limits printed in reproductions" };
pub(in crate::tables) static B1_13M_7: Source = Source { key: "b1.13m-7", document: "ASME B1.13M", edition: Some("1983 (R1995)"), locator: "length of engagement (ISO 965-1 values; first range from 1.5 mm, 1.4 mm in ISO)", read_in: "Machinery's Handbook, 27th ed., p. 1792" };
pub(in crate::tables) static B1_13M_8: Source = Source { key: "b1.13m-8", document: "ASME B1.13M", edition: Some("1983 (R1995)"), locator: "minor diameter tolerances of internal threads (ISO 965-1 values)", read_in: "Machinery's Handbook, 27th ed., p. 1794, to the pitch of 0.7 mm" };
pub(in crate::tables) static B1_13M_10: Source = Source { key: "b1.13m-10", document: "ASME B1.13M", edition: Some("2005"), locator: "pitch-diameter tolerances of internal threads, 90 to 180 mm (ISO 965-1 values)", read_in: "Machinery's Handbook, 31st ed., Table 10" };
pub(in crate::tables) static B1_13M_11: Source = Source { key: "b1.13m-11", document: "ASME B1.13M", edition: Some("2005"), locator: "pitch-diameter tolerances of external threads, 1.5 to 45 mm (ISO 965-1 values)", read_in: "Machinery's Handbook, 31st ed., Table 11, to the pitch of 3 mm" };
pub(in crate::tables) static B1_13M_EXTERNAL_CHART: Source = Source { key: "b1.13m-external-chart", document: "ASME B1.13M", edition: Some("2005"), locator: "limits of external threads", read_in: "a chart page; the value is the difference of printed limits" };
pub(in crate::tables) static MH_B1_13M_EXTERNAL: Source = Source { key: "mh-b1.13m-external", document: "ASME B1.13M", edition: None, locator: "limits of external threads", read_in: "Machinery's Handbook in an online copy; the value is the difference of printed limits" };
pub(in crate::tables) static B1_13M_6G_CHART: Source = Source { key: "b1.13m-6g-chart", document: "ASME B1.13M", edition: None, locator: "limits of class 6g", read_in: "three supplier pages; the value is the difference of printed limits" };
pub(in crate::tables) static B1_13M_ROLL: Source = Source { key: "b1.13m-roll", document: "ASME B1.13M", edition: None, locator: "limits of classes 6g and 4g6g", read_in: "a table of rolled threads; the value is the difference of printed limits" };
pub(in crate::tables) static B1_13M_INTERNAL_PAGE: Source = Source { key: "b1.13m-internal-page", document: "ASME B1.13M", edition: Some("1995"), locator: "limits of internal threads", read_in: "an engineering-reference page; the value is the difference of printed limits" };
pub(in crate::tables) static ISO965_1_DEVIATIONS: Source = Source { key: "iso965-1-deviations", document: "ISO 965-1", edition: None, locator: "Table 1, deviations e, f and g", read_in: "an open inspection code file that names the table; its g agrees with every value read in print, its other e and f with the values computed" };
pub(in crate::tables) static ISO965_1_TAP_CHART: Source = Source { key: "iso965-1-tap-chart", document: "ISO 965-1", edition: None, locator: "pitch-diameter tolerances of classes 4H to 6H and deviation G", read_in: "tap makers' charts" };
pub(in crate::tables) static ISO965_1_TAP_LIMITS: Source = Source { key: "iso965-1-tap-limits", document: "ISO 965-1", edition: None, locator: "limits of the pitch diameter of class 6H", read_in: "a tap maker's table; the value is the difference of printed limits" };
pub(in crate::tables) static ISO965_6H_PAGE: Source = Source { key: "iso965-6h-page", document: "ISO 965-2", edition: None, locator: "limits of class 6h below M1.6 and lengths of engagement", read_in: "a tool maker's page; the value is the difference of printed limits" };
pub(in crate::tables) static B1_1_TOLERANCE_FORMULAS: Source = Source { key: "b1.1-tolerance-formulas", document: "ASME B1.1", edition: None, locator: "formulas for allowances and tolerances", read_in: "two reproductions that agree; 615 of 632 limits printed elsewhere follow from them" };
pub(in crate::tables) static B1_1_FIVE_EIGHTHS: Source = Source { key: "b1.1-five-eighths", document: "ASME B1.1", edition: None, locator: "limits of 5/8 in threads", read_in: "an online document copy" };
pub(in crate::tables) static B1_1_LIMITS_PAGE: Source = Source { key: "b1.1-limits-page", document: "ASME B1.1", edition: None, locator: "limits of standard series", read_in: "an engineering-reference page" };
pub(in crate::tables) static MH27_3: Source = Source { key: "mh27-3", document: "Machinery's Handbook", edition: Some("27th ed."), locator: "Table 3, limits of size (ASME B1.1)", read_in: "handbook table" };
pub(in crate::tables) static B18_2_1_HEX_BOLT: Source = Source { key: "b18.2.1-hex-bolt", document: "ASME B18.2.1", edition: None, locator: "hex bolt table", read_in: "reproduction; its thread lengths to 2-1/4 in agree with 2 D + 1/4 in, from which the rest is computed" };
pub(in crate::tables) static B18_2_1_HEAVY_HEX_BOLT: Source = Source { key: "b18.2.1-heavy-hex-bolt", document: "ASME B18.2.1", edition: None, locator: "heavy hex bolt table", read_in: "reproduction" };
pub(in crate::tables) static B18_2_6_2019: Source = Source { key: "b18.2.6-2019", document: "ASME B18.2.6", edition: Some("2019"), locator: "heavy hex structural bolt tables and length tolerance", read_in: "supplier reproductions; the shortest part-threaded length is the first with a body length in the table of grip gaging and body lengths; washer face in Machinery's Handbook, 31st ed., p. 1704" };
pub(in crate::tables) static EN14399_4: Source = Source { key: "en14399-4", document: "EN 14399-4", edition: None, locator: "bolt dimension and length tables", read_in: "two supplier reproductions that agree" };
pub(in crate::tables) static B18_2_3_1M: Source = Source { key: "b18.2.3.1m", document: "ASME B18.2.3.1M", edition: None, locator: "metric hex cap screw table", read_in: "reproduction; thread lengths by rule" };
pub(in crate::tables) static B18_3_2003: Source = Source { key: "b18.3-2003", document: "ASME B18.3", edition: Some("2003"), locator: "socket head cap screw table, 1960 series", read_in: "supplier reproductions; the 1998 edition prints fillet diameters 0.001 in larger at several sizes" };
pub(in crate::tables) static B18_3_RECALLED: Source = Source { key: "b18.3-recalled", document: "ASME B18.3", edition: None, locator: "socket head cap screw table, thread lengths and the 1 in size", read_in: "recalled, not read" };
pub(in crate::tables) static ISO4762: Source = Source { key: "iso4762", document: "ISO 4762", edition: None, locator: "dimension table", read_in: "reproduction; thread lengths above M36 by its rule, 2 d + 12 mm" };
pub(in crate::tables) static B18_3_1M_HEAD: Source = Source { key: "b18.3.1m-head", document: "ASME B18.3.1M", edition: None, locator: "head diameters of metric socket head cap screws", read_in: "reproduction" };
pub(in crate::tables) static ISO4762_LENGTHS: Source = Source { key: "iso4762-lengths", document: "ISO 4762", edition: None, locator: "table of body and grip gaging lengths, lengths up to 40 mm", read_in: "JIS B 1176:2014, which adopts it, on a reference page" };
pub(in crate::tables) static AN3_AN20: Source = Source { key: "an3-an20", document: "AN3 to AN20", edition: None, locator: "bolt drawing", read_in: "aircraft builder manual and hardware guides" };
pub(in crate::tables) static AN3_AN20_RECALLED: Source = Source { key: "an3-an20-recalled", document: "AN3 to AN20", edition: None, locator: "bolt drawing", read_in: "recalled, not read; the 0.003 in between the limits of the shank was read in an aircraft builder manual" };
pub(in crate::tables) static AN_GRIP_TABLE: Source = Source { key: "an-grip-table", document: "AN3 to AN20", edition: None, locator: "grip and length by dash number", read_in: "aircraft builder manual; an aircraft supplier table agrees for the shortest AN3" };
pub(in crate::tables) static AN_GRIP_RULE: Source = Source { key: "an-grip-rule", document: "AN3 to AN20", edition: None, locator: "rule of eighths for grip and length", read_in: "computed from the rows read in an aircraft builder manual, which states the rule for length; grips of AN4-15, AN5-27 and AN6-20 on a supplier page agree" };
pub(in crate::tables) static A563_FINE: Source = Source { key: "a563-fine", document: "ASTM A563", edition: Some("2015"), locator: "Table 3, fine threads", read_in: "a scan of the table and a maker page that agree" };
pub(in crate::tables) static ISO898_2_2012: Source = Source { key: "iso898-2-2012", document: "ISO 898-2", edition: Some("2012"), locator: "table of proof loads, coarse threads", read_in: "proof load over stress area of the table in GOST ISO 898-2-2015" };
pub(in crate::tables) static ISO7040_CAD: Source = Source { key: "iso7040-cad", document: "ISO 7040", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO10512_CAD: Source = Source { key: "iso10512-cad", document: "ISO 10512", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO7719_CAD: Source = Source { key: "iso7719-cad", document: "ISO 7719", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO7720_CAD: Source = Source { key: "iso7720-cad", document: "ISO 7720", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static EN1661_CAD: Source = Source { key: "en1661-cad", document: "EN 1661", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO4161_CAD: Source = Source { key: "iso4161-cad", document: "ISO 4161", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO4035_CAD: Source = Source { key: "iso4035-cad", document: "ISO 4035", edition: None, locator: "dimension table", read_in: "dimension tables of two open CAD parts libraries" };
pub(in crate::tables) static B18_2_2_HEAVY_JAM_CAD: Source = Source { key: "b18.2.2-heavy-jam-cad", document: "ASME B18.2.2", edition: None, locator: "heavy hex jam nuts", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static B18_2_2_THICK_CAD: Source = Source { key: "b18.2.2-thick-cad", document: "ASME B18.2.2", edition: None, locator: "hex thick nuts", read_in: "dimension table of an open CAD parts library, table of the slotted thick nut, whose body is the same" };
pub(in crate::tables) static B18_2_2_HEAVY_CAD: Source = Source { key: "b18.2.2-heavy-cad", document: "ASME B18.2.2", edition: None, locator: "heavy hex nuts", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO7091_CAD: Source = Source { key: "iso7091-cad", document: "ISO 7091", edition: None, locator: "dimension table", read_in: "dimension tables of two open CAD parts libraries" };
pub(in crate::tables) static ISO7093_CAD: Source = Source { key: "iso7093-cad", document: "ISO 7093-1", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library; limits computed by the tolerances of ISO 4759-3 (a page of its table)" };
pub(in crate::tables) static ISO7094_CAD: Source = Source { key: "iso7094-cad", document: "ISO 7094", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO7089_CAD: Source = Source { key: "iso7089-cad", document: "ISO 7089", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library; limits computed by the tolerances of ISO 4759-3 (a page of its table)" };
pub(in crate::tables) static ISO7090_CAD: Source = Source { key: "iso7090-cad", document: "ISO 7090", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library; limits computed by the tolerances of ISO 4759-3 (a page of its table)" };
pub(in crate::tables) static B18_21_1_A_CAD: Source = Source { key: "b18.21.1-a-cad", document: "ASME B18.21.1", edition: None, locator: "plain washers, type A", read_in: "dimension table of an open CAD parts library; limits that are computed are those of the basic thickness, of which each has one pair in Machinery's Handbook, 31st ed., pp. 1694 to 1697" };
pub(in crate::tables) static B18_21_1_B_CAD: Source = Source { key: "b18.21.1-b-cad", document: "ASME B18.21.1", edition: None, locator: "plain washers, type B", read_in: "dimension table of an open CAD parts library; limits that are computed are those of the basic thickness, of which each has one pair in Machinery's Handbook, 31st ed., pp. 1694 to 1697" };
pub(in crate::tables) static ISO8765_CAD: Source = Source { key: "iso8765-cad", document: "ISO 8765", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO4014_4017_RANGE_CAD: Source = Source { key: "iso4014-4017-range-cad", document: "ISO 4014 and ISO 4017", edition: None, locator: "ranges of nominal length", read_in: "range tables of two open CAD parts libraries, which differ at the other sizes" };
pub(in crate::tables) static ISO8765_LENGTHS_CAD: Source = Source { key: "iso8765-lengths-cad", document: "ISO 8765", edition: None, locator: "nominal lengths 30 to 500 mm", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static ISO965_1_FORMULAE: Source = Source { key: "iso965-1-formulae", document: "ISO 965-1", edition: Some("1998"), locator: "clause 13, formulae", read_in: "an open engineering code file; the rounding to R40 numbers and the factors of the pitch diameter grades are recalled; with them the formulas give all but 18 of the 310 values read" };
pub(in crate::tables) static ISO965_LIMITS_CAD: Source = Source { key: "iso965-limits-cad", document: "ISO 965-2", edition: None, locator: "limits of 6g and 6H threads", read_in: "limits table of an open CAD thread library; the value is the difference of printed limits" };
pub(in crate::tables) static F568M_3: Source = Source { key: "f568m-3", document: "ASTM F568M", edition: None, locator: "Table 3", read_in: "a page copied from the standard" };
pub(in crate::tables) static A563_15_3: Source = Source { key: "a563-15-3", document: "ASTM A563", edition: Some("2015"), locator: "Table 3", read_in: "a page copied from the standard" };
pub(in crate::tables) static ISO898_2_MATING: Source = Source { key: "iso898-2-mating", document: "ISO 898-2", edition: Some("2012"), locator: "mating bolts", read_in: "supplier page: nut class 5 for bolts up to class 5.8" };
pub(in crate::tables) static EN1993_34_SHEET: Source = Source { key: "en1993-34-sheet", document: "EN 1993-1-8", edition: Some("2005"), locator: "Table 3.4", read_in: "worked calculation sheet of a bolt in shear" };
pub(in crate::tables) static ISO10511_CAD: Source = Source { key: "iso10511-cad", document: "ISO 10511", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static AC43_13_7_1: Source = Source { key: "ac43.13-7-1", document: "FAA AC 43.13-1B", edition: Some("1998"), locator: "Table 7-1, recommended torque values for nut-bolt combinations (without lubrication)", read_in: "page copy of the circular" };
pub(in crate::tables) static AC43_13_4_9: Source = Source { key: "ac43.13-4-9", document: "FAA AC 43.13-1B", edition: Some("1998"), locator: "Tables 4-9 and 4-10, engineering notes: single shear of an AN-3 bolt", read_in: "two page copies of the circular" };
pub(in crate::tables) static RCSC_TURN: Source = Source { key: "rcsc-turn", document: "RCSC Specification", edition: Some("2014"), locator: "Table 8.2, nut rotation from snug-tight", read_in: "two independent pages; a supplier page agrees for faces normal to the axis" };
pub(in crate::tables) static EN1090_COMBINED: Source = Source { key: "en1090-combined", document: "EN 1090-2", edition: Some("2008+A1:2011"), locator: "combined method, angle of the second step", read_in: "supplier pages" };
pub(in crate::tables) static SHIGLEY_8_17: Source = Source { key: "shigley-8-17", document: "Shigley, Mechanical Engineering Design", edition: Some("9th ed. (2011)"), locator: "Table 8-17, fully corrected endurance strengths", read_in: "two reproductions of the table in the text of the book; they agree" };
pub(in crate::tables) static ANODIC_INDEX: Source = Source { key: "anodic-index", document: "anodic index of metals", edition: None, locator: "list of metallurgical categories, after MIL-F-14072", read_in: "a page that prints the list down to the aluminium alloys of the 2000 series; a second page showed no more than its head" };
pub(in crate::tables) static ANODIC_INDEX_LOW: Source = Source { key: "anodic-index-low", document: "anodic index of metals", edition: None, locator: "list of metallurgical categories, after MIL-F-14072", read_in: "an open corrosion screening file that names the republished list (steel, aluminium, cadmium, zinc and magnesium); an engineering reference sheet has steel, aluminium and zinc alike and cadmium at 0.80" };
pub(in crate::tables) static ANODIC_INDEX_RECALLED: Source = Source { key: "anodic-index-recalled", document: "anodic index of metals", edition: None, locator: "list of metallurgical categories, after MIL-F-14072", read_in: "recalled; the order and the groups were read in a connector maker's catalogue" };
pub(in crate::tables) static EN14399_6: Source = Source { key: "en14399-6", document: "EN 14399-6", edition: None, locator: "dimension table of chamfered washers", read_in: "a supplier page" };
pub(in crate::tables) static EN14399_3_NUT: Source = Source { key: "en14399-3-nut", document: "EN 14399-3", edition: None, locator: "scope: regular nut height according to ISO 4032 (style 1)", read_in: "the same sentence in the scopes of parts 7 and 10 on a standards page; heights from the table of ISO 4032" };
pub(in crate::tables) static EN14399_4_NUT: Source = Source { key: "en14399-4-nut", document: "EN 14399-4", edition: None, locator: "dimension table of nuts, system HV", read_in: "recalled, not read" };
pub(in crate::tables) static NDS_G: Source = Source { key: "nds-g", document: "National Design Specification for Wood Construction", edition: Some("2018"), locator: "Table 12.3.3A, assigned specific gravities", read_in: "recalled" };
pub(in crate::tables) static NDS_G_READ: Source = Source { key: "nds-g-read", document: "National Design Specification for Wood Construction", edition: Some("2018"), locator: "Table 12.3.3A, assigned specific gravities", read_in: "worked design notes on bolts and a list of the table in a public source, which agree" };
pub(in crate::tables) static EN338_READ: Source = Source { key: "en338-read", document: "EN 338", edition: Some("2016"), locator: "Table 1, characteristic density", read_in: "four public lists of the classes; they agree in these" };
pub(in crate::tables) static EN338_C18: Source = Source { key: "en338-c18", document: "EN 338", edition: Some("2016"), locator: "Table 1, characteristic density", read_in: "page of an association of makers of structural timber; its columns for C24 and C30 repeat the mean and are not used" };
pub(in crate::tables) static PORTEOUS_DENSITY: Source = Source { key: "porteous-density", document: "Porteous and Kermani, Structural Timber Design to Eurocode 5", edition: Some("2007"), locator: "Table 1.3, EN 338:2003, characteristic density", read_in: "web reproduction of the worked examples: C22 and C24" };
pub(in crate::tables) static EN14080: Source = Source { key: "en14080", document: "EN 14080", edition: Some("2013"), locator: "Tables 4 and 5, characteristic density", read_in: "public lists of the classes: all in one, the homogeneous classes in three" };
pub(in crate::tables) static NDS_FC_PERP: Source = Source { key: "nds-fc-perp", document: "National Design Specification for Wood Construction, Supplement", edition: Some("2015"), locator: "Table 4A, compression perpendicular to grain", read_in: "an open data file of the table, all species and grades; five species again in open data files of 2018" };
pub(in crate::tables) static EN338_COMPRESSION: Source = Source { key: "en338-compression", document: "EN 338", edition: Some("2016"), locator: "Table 1, characteristic compression perpendicular to grain", read_in: "lecture notes of a Dutch university of technology on building materials; C14 to C30 again in an open library of material data, and 0.007 times the density of the class, to the nearest 0.1" };
pub(in crate::tables) static PORTEOUS_COMPRESSION: Source = Source { key: "porteous-compression", document: "Porteous and Kermani, Structural Timber Design to Eurocode 5", edition: Some("2007"), locator: "Table 1.3, EN 338:2003, characteristic compression perpendicular to grain", read_in: "web reproduction of the worked examples: C24" };
pub(in crate::tables) static EN14080_COMPRESSION: Source = Source { key: "en14080-compression", document: "EN 14080", edition: Some("2013"), locator: "Table 4, characteristic compression perpendicular to grain", read_in: "a teaching page on timber design: all combined classes, GL 20c to GL 32c" };
pub(in crate::tables) static AISC360_05_J3_1: Source = Source { key: "aisc360-05-j3.1", document: "AISC 360", edition: Some("2005"), locator: "Table J3.1", read_in: "a copy of the page (16.1-103)" };
pub(in crate::tables) static AISC360_05_J3_1M: Source = Source { key: "aisc360-05-j3.1m", document: "AISC 360", edition: Some("2005"), locator: "Table J3.1M", read_in: "a copy of the page (16.1-103)" };
pub(in crate::tables) static AISC360_16_J3_1: Source = Source { key: "aisc360-16-j3.1", document: "AISC 360", edition: Some("2016 and 2022"), locator: "Tables J3.1 and J3.1M", read_in: "0.70 times the least tensile strength and the stress area, to the nearest kip or kN: the footnote of the tables of 2005, whose page was read; that bolts of grade A325 over 1 in have a higher strength and pretension from 2016: R. E. Shaw, New Twists and Turns in Structural Bolting, Structure magazine, November 2015. A490M M20 is recalled" };
pub(in crate::tables) static EN1993_NA_FPC: Source = Source { key: "en1993-na-fpc", document: "EN 1993-1-8/NA (Germany)", edition: Some("2010"), locator: "NA to 3.4, reduced preload of class 10.9", read_in: "a washer maker's guide" };
pub(in crate::tables) static BS4604_1: Source = Source { key: "bs4604-1", document: "BS 4604-1", edition: Some("1970"), locator: "least tensions of general grade bolts", read_in: "recalled, not read" };
pub(in crate::tables) static AS4100_15_2_5_1: Source = Source { key: "as4100-15.2.5.1", document: "AS 4100", edition: Some("1998"), locator: "Table 15.2.5.1", read_in: "a maker's page (design value of M20, 8.8/TF); rows of basis memory were recalled" };
pub(in crate::tables) static EN1993_1_1_EXPANSION: Source = Source { key: "en1993-1-1-expansion", document: "EN 1993-1-1", edition: Some("2005"), locator: "3.2.6", read_in: "a design aid on structural steel that names the clause: 210 GPa, 0.30 and 12 ppm/K; a part of a European design guide has the modulus" };
pub(in crate::tables) static EN1999_1_1_EXPANSION: Source = Source { key: "en1999-1-1-expansion", document: "EN 1999-1-1", edition: Some("draft of May 2004"), locator: "3.2.5", read_in: "a page of the draft prEN 1999-1-1 on a document site" };
pub(in crate::tables) static EN10088_EXPANSION: Source = Source { key: "en10088-expansion", document: "EN 10088-1", edition: Some("2005"), locator: "coefficients of expansion, 20 to 100 degC", read_in: "a table of a stainless steel association after the standard, on three pages: 304, 2205, 430, 410 and 630" };
pub(in crate::tables) static ISO2320_INSERT_RECALLED: Source = Source { key: "iso2320-insert-recalled", document: "ISO 2320", edition: Some("2008"), locator: "first installation of nuts with non-metallic insert", read_in: "half of the recalled value of all-metal nuts, a rule read in the Chinese adoption GB/T 3098.9" };
pub(in crate::tables) static AISC360_05_J3_4: Source = Source { key: "aisc360-05-j3.4", document: "AISC 360", edition: Some("2005"), locator: "Tables J3.4, J3.4M, J3.5 and J3.5M", read_in: "metric: a structural designers' handbook, Table 5.13, both kinds of edge; inch: a drafting page of the table from 5/8 in, the other edges of 1/2 in as in 2016; additions in a copy of the page" };
pub(in crate::tables) static AISC360_16_J3_4: Source = Source { key: "aisc360-16-j3.4", document: "AISC 360", edition: Some("2016"), locator: "Tables J3.4 and J3.4M", read_in: "a copy of the page" };
pub(in crate::tables) static EN1090_2_11: Source = Source { key: "en1090-2-11", document: "EN 1090-2", edition: Some("2008 and 2018"), locator: "Table 11, nominal clearances", read_in: "a holing procedure and a Spanish rule that agree" };
pub(in crate::tables) static EN10025_2_7: Source = Source { key: "en10025-2-7", document: "EN 10025-2", edition: Some("2004"), locator: "Table 7", read_in: "a reference page; a page of EN 10025:1993 agrees in the yield strengths of S235 and S275 to 250 mm" };
pub(in crate::tables) static EN1993_1_1_3_2_6: Source = Source { key: "en1993-1-1-3.2.6", document: "EN 1993-1-1", edition: Some("2005"), locator: "3.2.6", read_in: "a design aid on structural steel that names the clause: 210 GPa, 0.30 and 12 ppm/K; a part of a European design guide has the modulus" };
pub(in crate::tables) static ISO10684_PAIRS: Source = Source { key: "iso10684-pairs", document: "ISO 10684", edition: Some("2004"), locator: "nuts with Z or X for hot-dip galvanized bolts", read_in: "marks read on a page that reproduces Annex A; from M12 these nuts meet ISO 898-2 (clause 7, read in the Australian adoption of 2016), so that its pairs hold; M8 and M10 carry the smaller loads of Annex A" };
pub(in crate::tables) static A325_14_NUTS: Source = Source { key: "a325-14-nuts", document: "ASTM A325", edition: Some("2014"), locator: "3.2", read_in: "a page copied from the standard" };
pub(in crate::tables) static ISO898_2_PAIR_12U: Source = Source { key: "iso898-2-pair-12u", document: "ISO 898-2", edition: Some("2012"), locator: "nuts of class 12 for bolts of class 12.9 underlined", read_in: "by the pair read for 12.9, whose strengths the underlined class has" };
pub(in crate::tables) static VDI2230_2003_A9: Source = Source { key: "vdi2230-2003-a9", document: "VDI 2230 Part 1", edition: Some("2003"), locator: "Table A9, limiting surface pressure", read_in: "supplier's technical page that prints both editions side by side" };
pub(in crate::tables) static VDI2230_1986_SURFACE: Source = Source { key: "vdi2230-1986-surface", document: "VDI 2230", edition: Some("1986"), locator: "table of limiting surface pressures", read_in: "supplier's technical page that prints both editions side by side" };
pub(in crate::tables) static VDI2230_1986_SURFACE_RECALLED: Source = Source { key: "vdi2230-1986-surface-recalled", document: "VDI 2230", edition: Some("1986"), locator: "table of limiting surface pressures", read_in: "recalled" };
pub(in crate::tables) static SURFACE_KIN: Source = Source { key: "surface-kin", document: "VDI 2230 Part 1", edition: Some("1986; 2003"), locator: "tables of limiting surface pressures, read for a kindred material", read_in: "own comparison: the strongest listed material of the same kind with no higher tensile strength" };
pub(in crate::tables) static VDI2230_SCOPE: Source = Source { key: "vdi2230-scope", document: "VDI 2230 Part 1", edition: None, locator: "range of temperatures", read_in: "publisher's abstract" };
pub(in crate::tables) static ISO898_1_1999_HOT: Source = Source { key: "iso898-1-1999-hot", document: "ISO 898-1", edition: Some("1999"), locator: "Annex A (informative), lower yield stress or 0.2 % stress at higher temperatures", read_in: "a supplier's technical page, which calls them guide values; all 20 recalled before agree" };
pub(in crate::tables) static ISO3506_1_HOT: Source = Source { key: "iso3506-1-hot", document: "ISO 3506-1", edition: Some("1997"), locator: "Annex F (informative), 0.2 % stress at higher temperatures", read_in: "recalled" };
pub(in crate::tables) static B31_1_A10: Source = Source { key: "b31.1-a10", document: "ASME B31.1", edition: Some("2012"), locator: "Table A-10, allowable stress of A193 B7", read_in: "supplier's copy" };
pub(in crate::tables) static EN1999_1_1_HEAT: Source = Source { key: "en1999-1-1-heat", document: "EN 1999-1-1", edition: Some("2007"), locator: "3.2, service temperatures", read_in: "recalled" };
pub(in crate::tables) static EN1993_1_2_31: Source = Source { key: "en1993-1-2-31", document: "EN 1993-1-2", edition: Some("2005"), locator: "Table 3.1, proportional limit", read_in: "open code of two research groups, both with 1.0 at 100 C, 0.807 at 200 C and 0.613 at 300 C; that steel 4130 is as structural steel is recalled" };
pub(in crate::tables) static F436_HARDNESS: Source = Source { key: "f436-hardness", document: "ASTM F436", edition: None, locator: "hardness", read_in: "a maker's page" };
pub(in crate::tables) static ISO7090_HARDNESS: Source = Source { key: "iso7090-hardness", document: "ISO 7090", edition: None, locator: "hardness classes", read_in: "supplier's product page" };
pub(in crate::tables) static WASHER_HARDNESS_RECALLED: Source = Source { key: "washer-hardness-recalled", document: "ISO 7092, 7093-1, 7094; DIN 125", edition: None, locator: "hardness classes", read_in: "recalled" };
pub(in crate::tables) static ISO898_3_PAIRS: Source = Source { key: "iso898-3-pairs", document: "ISO 898-3", edition: Some("2018"), locator: "Table 1, washers for bolts", read_in: "page that reproduces the table; a note of a steelwork association agrees for 8.8 and 10.9" };
pub(in crate::tables) static RCSC_6: Source = Source { key: "rcsc-6", document: "RCSC Specification for Structural Joints", edition: Some("2009 or 2014"), locator: "section 6, use of washers", read_in: "copy of the text of the section" };
pub(in crate::tables) static AISC360_05_J31_WASHERS: Source = Source { key: "aisc360-05-j31-washers", document: "AISC 360", edition: Some("2005"), locator: "J3.1, washers of A490 bolts over 1 in", read_in: "copy of the page" };
pub(in crate::tables) static AISC360_05_J32_WASHERS: Source = Source { key: "aisc360-05-j32-washers", document: "AISC 360", edition: Some("2005"), locator: "J3.2, washers over holes and slots", read_in: "scan of the page" };
pub(in crate::tables) static EN1993_36110: Source = Source { key: "en1993-36110", document: "EN 1993-1-8", edition: Some("2005"), locator: "3.6.1(10), single lap joints with one bolt row", read_in: "steelmakers' tables and a textbook; EN 1090-2:2018 says the same in an extract" };
pub(in crate::tables) static EN1090_824_RECALLED: Source = Source { key: "en1090-824-recalled", document: "EN 1090-2", edition: Some("2018"), locator: "8.2.4, washers of preloaded bolts", read_in: "recalled" };
pub(in crate::tables) static NDS_12_1_3: Source = Source { key: "nds-12.1.3", document: "NDS", edition: Some("to 2018"), locator: "12.1.3, bolts", read_in: "handbook chapter" };
pub(in crate::tables) static EN1995_10432_RECALLED: Source = Source { key: "en1995-10432-recalled", document: "EN 1995-1-1", edition: Some("2004"), locator: "10.4.3(2), washers", read_in: "recalled" };
pub(in crate::tables) static ISO3506_2_2020: Source = Source { key: "iso3506-2-2020", document: "ISO 3506-2", edition: Some("2020"), locator: "clause 5.2.3: the number of the class is a tenth of the stress under proof load in MPa, styles 1 and 2", read_in: "an extract of the clause; a supplier sheet prints 500, 700 and 800 MPa for nuts of A2 and A4; M1.6 is the least size of the 1979 edition, M39 the greatest of those of 1979, 2009 and 2020 (M5 the least of 2020)" };
pub(in crate::tables) static ISO3506_2_LARGE: Source = Source { key: "iso3506-2-large", document: "ISO 3506-2", edition: Some("2020"), locator: "clause 5.2.3, classes 70 and 80 above M24", read_in: "the rule as for smaller sizes; that the limit of M24 is gone was read of part 1 alone, and ASTM F836M has these classes of A1, A2 and A4 to M36" };
pub(in crate::tables) static ISO3506_2_THIN: Source = Source { key: "iso3506-2-thin", document: "ISO 3506-2", edition: Some("2020"), locator: "clause 5.2.4: the number after the 0 is a tenth of the stress under proof load in MPa, thin nuts", read_in: "an extract of the clause; classes 025, 035 and 040 in a supplier catalogue" };
pub(in crate::tables) static ISO3506_2_CF: Source = Source { key: "iso3506-2-cf", document: "ISO 3506-2", edition: Some("2020"), locator: "clause 5.2.3, martensitic and ferritic steels", read_in: "an extract of the clause, with C1-110 for example; the other classes in a supplier catalogue; the greatest size of F1 as in part 1" };
pub(in crate::tables) static ISO3506_2_MATING: Source = Source { key: "iso3506-2-mating", document: "ISO 3506-2", edition: Some("2020"), locator: "clause 5.2.3: the class of the nut is that of the bolt it should be mated with", read_in: "an extract of the clause; that the steel is the same too, on two supplier pages" };
pub(in crate::tables) static F594: Source = Source { key: "f594", document: "ASTM F594", edition: None, locator: "mechanical properties, alloy groups 1 and 2", read_in: "two supplier pages that agree" };
pub(in crate::tables) static F594_BOLTS: Source = Source { key: "f594-bolts", document: "ASTM F594", edition: None, locator: "bolts of ASTM F593 of the same alloy group", read_in: "a supplier page" };
pub(in crate::tables) static BS449_LOADS: Source = Source { key: "bs449-loads", document: "BS 449-2", edition: Some("1969"), locator: "allowable stresses of bolts", read_in: "printed tables of bolt loads, which follow from them" };
pub(in crate::tables) static EN14399_6_HARDNESS: Source = Source { key: "en14399-6-hardness", document: "EN 14399-6", edition: None, locator: "hardness of chamfered washers", read_in: "a supplier page: 300 to 370 HV" };
pub(in crate::tables) static EN1993_31_PAGE: Source = Source { key: "en1993-31-page", document: "EN 1993-1-8", edition: Some("2005"), locator: "Table 3.1, classes 4.8, 5.8 and 6.8", read_in: "an engineering page of the property classes of ISO 898-1 with the strengths of EN 1993" };
pub(in crate::tables) static ISO3506_1_LARGE: Source = Source { key: "iso3506-1-large", document: "ISO 3506-1", edition: Some("2020"), locator: "classes 70 and 80 above M24", read_in: "a page on stainless steel fasteners after a note of a stainless steel association: the latest revision removed the limit of M24, M39 stands" };
pub(in crate::tables) static MARKS_CHART: Source = Source { key: "marks-chart", document: "ASTM A325, A354", edition: None, locator: "marks of A325 and A354 BD", read_in: "notes 4 and 5 of a distributor's chart of strengths and marks" };
pub(in crate::tables) static MARKS_A325_3: Source = Source { key: "marks-a325-3", document: "ASTM A325", edition: None, locator: "mark of type 3", read_in: "a question-and-answer page on structural bolts: A325, underlined" };
pub(in crate::tables) static ISO3506_1_MARKS_RULE: Source = Source { key: "iso3506-1-marks-rule", document: "ISO 3506-1", edition: Some("2020"), locator: "designation: steel grade, hyphen, class", read_in: "the rule of the designation on two pages, one of which lists grades A1 to A8, C1 to C4, D2 to D8, F1 and classes 50 to 100" };
pub(in crate::tables) static J995_PAIR_2: Source = Source { key: "j995-pair-2", document: "SAE J995", edition: None, locator: "nuts of grade 2 for bolts of grade 2", read_in: "two supplier guides" };
pub(in crate::tables) static STEEL_1018: Source = Source { key: "steel-1018", document: "AISI 1018", edition: None, locator: "cold drawn bars, estimated least values", read_in: "a metals supplier's sheet; another steel house agrees in the yield strength; Poisson's ratio from a pipe maker's page" };
pub(in crate::tables) static TI_6_4_MAKER: Source = Source { key: "ti-6-4-maker", document: "Ti-6Al-4V", edition: None, locator: "annealed, specification minimum", read_in: "a maker's data sheet" };
pub(in crate::tables) static ISO2320_04: Source = Source { key: "iso2320-04", document: "ISO 2320", edition: Some("1997"), locator: "prevailing torque of nuts of class 04, M3 to M39", read_in: "a translated copy of the table on a personal page; the first four rows again on a maker's page after GB/T 3098.9-2020" };
pub(in crate::tables) static ISO2320_INSERT_04: Source = Source { key: "iso2320-insert-04", document: "ISO 2320", edition: Some("1997"), locator: "first installation of nuts of class 04 with non-metallic insert", read_in: "half of the printed value of all-metal nuts, a rule read in the Chinese adoption GB/T 3098.9" };
pub(in crate::tables) static ISO2320_05: Source = Source { key: "iso2320-05", document: "ISO 2320", edition: Some("2008"), locator: "Table 2, prevailing torque of nuts of class 05, M3 to M6", read_in: "a page of the Russian adoption GOST R ISO 2320-2009, which breaks off at M7" };
pub(in crate::tables) static ISO2320_INSERT_05: Source = Source { key: "iso2320-insert-05", document: "ISO 2320", edition: Some("2008"), locator: "first installation of nuts of class 05 with non-metallic insert", read_in: "half of the printed value of all-metal nuts, a rule read in the Chinese adoption GB/T 3098.9" };
pub(in crate::tables) static ISO2320_10_REMOVAL: Source = Source { key: "iso2320-10-removal", document: "ISO 2320", edition: None, locator: "least removal torque, M10 to M39", read_in: "an engineering reference page, which has one column for nuts of classes 8 and 10; to M24 its values are those recalled as the fifth removal of class 10" };
pub(in crate::tables) static EN14399_3: Source = Source { key: "en14399-3", document: "EN 14399-3", edition: None, locator: "bolt dimension table, system HR", read_in: "two UK suppliers of preloaded bolts; its thread lengths are those of ISO 4014" };
pub(in crate::tables) static EN1999_1_1_32B: Source = Source { key: "en1999-1-1-32b", document: "EN 1999-1-1", edition: Some("2007"), locator: "Table 3.2b, extruded profiles, tube and bar", read_in: "a copy of the table on a page of translated standards; it ends before alloy 6082" };
pub(in crate::tables) static EN1999_1_1_325: Source = Source { key: "en1999-1-1-325", document: "EN 1999-1-1", edition: Some("draft of May 2004"), locator: "clause 3.2.5, modulus of 70 GPa", read_in: "a page of the draft prEN 1999-1-1 on a document site; a guide to structural aluminium names the modulus as that of EN 1999" };
pub(in crate::tables) static NDS_FC_PERP_4B: Source = Source { key: "nds-fc-perp-4b", document: "National Design Specification for Wood Construction, Supplement", edition: Some("2018"), locator: "Table 4B, compression perpendicular to grain", read_in: "an open data file of the table, visual grades" };
pub(in crate::tables) static EN338_COURSE: Source = Source { key: "en338-course", document: "EN 338", edition: Some("2016"), locator: "Table 1, characteristic density", read_in: "lecture notes of a Dutch university of technology on building materials; a Danish design script has the same" };
pub(in crate::tables) static EN14080_COURSE: Source = Source { key: "en14080-course", document: "EN 14080", edition: Some("2013"), locator: "Table 5, characteristic compression perpendicular to grain", read_in: "lecture notes of a Dutch university of technology on building materials" };
pub(in crate::tables) static AISC360_22_J3_1M: Source = Source { key: "aisc360-22-j3.1m", document: "AISC 360", edition: Some("2022"), locator: "Table J3.1M", read_in: "a copy of the specification, machine-read from the page" };
pub(in crate::tables) static B18_2_1_2012_T6: Source = Source { key: "b18.2.1-2012-t6", document: "ASME B18.2.1", edition: Some("2012"), locator: "Table 6, hex cap screws", read_in: "a page of drawing dimensions after the table; its thread lengths over 6 in are 2 D + 0.50 in" };
pub(in crate::tables) static AN_SHEAR: Source = Source { key: "an-shear", document: "AN3 to AN20 drawing", edition: None, locator: "shear of alloy steel bolts", read_in: "75 ksi on the nominal area, whole pounds-force: what the load of AN4, which was read, gives, and what MIL-HDBK-5 has for bolts of 125 ksi; the recalled loads of the drawing are 0.2 % lower to 0.3 % higher" };
pub(in crate::tables) static DIN267_4: Source = Source { key: "din267-4", document: "DIN 267-4", edition: Some("withdrawn"), locator: "proof stress and hardness of nuts, classes marked with bars", read_in: "a page of a British supplier; its proof loads of M4 to M39 are the stresses times the stress areas, within 2 per cent, but for class 4 and 5, of which it has none" };
pub(in crate::tables) static EN1563_1997: Source = Source { key: "en1563-1997", document: "EN 1563", edition: Some("1997"), locator: "Table 1, separately cast samples", read_in: "a foundry's page of the table, in MPa; it calls the grade of 400 and 250 MPa 450-15, where the number is that of 400-15" };
pub(in crate::tables) static NDS_G_FILE: Source = Source { key: "nds-g-file", document: "National Design Specification for Wood Construction", edition: Some("2018"), locator: "Table 12.3.3A, assigned specific gravities", read_in: "an open code file of the table; it has one redwood alone" };
pub(in crate::tables) static WASHER_CLASSES: Source = Source { key: "washer-classes", document: "ISO 7089, ISO 7091 and DIN 125", edition: None, locator: "hardness classes", read_in: "pages of washer makers and of ISO 898-3, whose class is the least hardness: 7089 in 200HV and 300HV, 7091 in 100HV; DIN 125 had 140 HV" };
pub(in crate::tables) static ISO4017_A_EN15048: Source = Source { key: "iso4017-a-en15048", document: "ISO 4017", edition: None, locator: "distance from the head to the first full thread, a max, M12 to M36", read_in: "a maker's table of fully threaded screws to EN 15048" };
pub(in crate::tables) static ISO4014_4017_RANGE_CAD_ONE: Source = Source { key: "iso4014-4017-range-cad-one", document: "ISO 4014 and ISO 4017", edition: None, locator: "ranges of nominal length, M48", read_in: "range tables of one open CAD parts library; of the other sizes it has stock lengths, or another range" };
pub(in crate::tables) static STRUCTURAL_STEEL_DESIGNERS: Source = Source { key: "structural-steel-designers", document: "Structural Steel Designer's Handbook (Brockenbrough and Merritt)", edition: Some("2005"), locator: "page 1.4, Table 1.1: modulus 29 000 ksi, Poisson's ratio 0.30, expansion 6.5 ppm per degF from -50 to 150 degF, of all the structural steels", read_in: "page of the handbook" };
pub(in crate::tables) static EN1563_PHYSICAL: Source = Source { key: "en1563-physical", document: "EN 1563", edition: Some("1997"), locator: "physical properties: modulus of elasticity, in GN/m2", read_in: "a foundry's page of the table: 169 (400-18, 450-10, 500-7), 174 (600-3), 176 (700-2)" };
pub(in crate::tables) static NAS1149_10: Source = Source { key: "nas1149-10", document: "AN960 / NAS1149", edition: None, locator: "flat washer of size #10", read_in: "parts list of an aircraft drawing, quoted in an open repository: NAS1149V0332H, .203 x .438 x .032 in" };
pub(in crate::tables) static ISO4762_CAD: Source = Source { key: "iso4762-cad", document: "ISO 4762", edition: None, locator: "dimension table", read_in: "dimension table of an open CAD parts library" };
pub(in crate::tables) static B18_3_LARGE: Source = Source { key: "b18.3-large", document: "ASME B18.3", edition: None, locator: "hexagon socket head cap screws, 7/8 and 1 in", read_in: "a supplier's page: body and head; key and its engagement in an open CAD parts library. From #6 on its least head diameters are smaller than those of 2003" };

pub(in crate::tables) static SOURCES: [&Source; 395] = [
    &MH27_4A,
    &MH_4B,
    &MH27_4C,
    &MH27_5B,
    &MH31_5C,
    &MH27_5G,
    &B1_1_AREA_FORMULA,
    &ISO898_1_AREA_FORMULA,
    &GBT16823_1,
    &ISO898_1_AREA_COARSE,
    &B1_13M_AREA,
    &BICKFORD4_METRIC_AREA,
    &J429_1,
    &J429_1_SHIGLEY5,
    &J429_1_TWO,
    &J429_OLD,
    &J429_8_1,
    &ISO898_1_3,
    &ISO898_1_1999_3,
    &B18_2_1_HCS,
    &ISO4014_A,
    &ISO4014_B,
    &ISO4014_SHEET,
    &STOCK_PRACTICE_INCH,
    &ISO888,
    &ISO4759_1_LENGTH,
    &B18_2_1_LENGTH,
    &B18_2_1_FULL_THREAD,
    &B18_2_2_MACHINE_SCREW,
    &B18_2_2_HEX,
    &B18_2_2_HEX_LARGE,
    &B18_2_2_JAM_LARGE,
    &B18_2_2_HEAVY,
    &B18_2_2_HEAVY_JAM,
    &B18_2_2_SLOTTED,
    &J482A,
    &B18_16_6_NE,
    &IFI100_INSERT,
    &IFI100_METAL_SMALL,
    &IFI100_METAL,
    &IFI100_METAL_BULLETIN,
    &IFI100_METAL_RECALLED,
    &TWO_WAY_LOCKNUT,
    &B18_16_4,
    &ISO4032,
    &ISO4033,
    &ISO4035,
    &ISO4035_DIN439,
    &ISO4036,
    &ISO4034,
    &ISO7093_GBT96_1,
    &ISO7094_GBT5287,
    &B18_2_8_3A,
    &ISO4034_2000,
    &ISO4034_2000_IT17,
    &ISO4034_RECALLED,
    &DIN934,
    &B18_2_4_4M,
    &B18_2_4_1M,
    &B18_2_4_2M,
    &B18_2_4_3M,
    &B18_2_4_5M,
    &B18_2_4_6M,
    &B18_16M,
    &B18_16_3M,
    &ISO7041,
    &ISO7042,
    &DIN985,
    &DIN980,
    &B18_21_1_A,
    &B18_21_1_B,
    &F436_RECALLED,
    &F436_B18_2_6,
    &AN960,
    &B18_21_1_SPRING_REGULAR,
    &B18_21_1_SPRING_HEAVY,
    &B18_21_1_SPRING_EXTRA,
    &B18_21_1_SPRING_COLLAR,
    &ISO7089_RECALLED,
    &ISO7089_JIS_CHART,
    &ISO7089,
    &ISO7089_JIS_DIN,
    &ISO7090,
    &DIN125,
    &ISO7092_M10,
    &ISO7093_M10,
    &ISO4014_4017_RANGE,
    &PCC1_H1,
    &B18_2_1_UNTHREADED,
    &ISO4017_A,
    &ISO888_HANDBOOK,
    &ISO7092_GB848,
    &ISO7093_GOST,
    &ISO4161_GOST,
    &F436_11,
    &B18_21_1_A_SUPPLIER,
    &ISO7090_AS_7089,
    &B18_2_8_1,
    &ISO273,
    &BS4186,
    &AISC360_J3_3,
    &AISC360_J3_3_2010,
    &AISC360_J3_3_2016,
    &AISC360_05_J3_3M,
    &TAP_DRILL_INCH,
    &TAP_DRILL_MH31,
    &TAP_DRILL_METRIC,
    &TAP_DRILL_RULE,
    &A307,
    &A449,
    &A449_1993,
    &F3125_2015,
    &A325_OLD,
    &A354,
    &A354_CURRENT,
    &A193_2,
    &A574,
    &F593,
    &F593_RECALLED,
    &ISO3506_1_OLD,
    &ISO3506_1_2020,
    &ISO3506_1_OLD_A4,
    &ISO3506_1_RECALLED,
    &ISO3506_1_OLD_C,
    &ISO3506_1_OLD_F,
    &J995,
    &A563_3,
    &A194,
    &A194_HEX,
    &A194_8,
    &ISO898_2,
    &ISO898_2_RECALLED,
    &ISO898_6,
    &ISO10684,
    &B18166_STRENGTH,
    &ISO898_2_PAIR_8,
    &J995_PAIRS,
    &PAIRS_CHART,
    &A307_NUTS,
    &A449_NUTS,
    &A354_NUTS,
    &F3125_NUTS,
    &A193_NUTS,
    &BOLT_MARKS_CHART,
    &BOLT_MARKS_NONE,
    &A193_MARKS,
    &MARKS_RECALLED,
    &F3125_MARKS,
    &A307_MARKS,
    &F593_MARKS,
    &ISO898_1_MARKS,
    &ISO898_1_1999_MARKS,
    &ISO3506_1_MARKS,
    &F568M,
    &F3125M_A325M,
    &A490M_SCOPE,
    &F3125M_MARKS,
    &AISC_ASD_1989,
    &AISC360_05_J32,
    &AISC360_10_J32,
    &AISC360_16_J32,
    &AISC360_22_J32,
    &RCSC_1988,
    &BS5950,
    &EN1993_31,
    &EN1993_34,
    &EN1993_34_PAGE,
    &RATIO_TRADE,
    &RATIO_TESTS,
    &RATIO_MISES,
    &RATIO_SOCKET,
    &RATIO_AN,
    &RATIO_160,
    &RATIO_8831,
    &RATIO_7838,
    &AN_LOADS,
    &AN4_SHEAR,
    &F835_MAKER,
    &F835_SUPPLIER,
    &MIL_N_25027_LOADS,
    &SHIGLEY_8_15,
    &K_TRADE_GUIDES,
    &K_DISTRIBUTOR,
    &K_IFI,
    &K_NOTES,
    &K_SUPPLIER,
    &K_BICKFORD,
    &K_BICKFORD_NASSAR,
    &EN14399_1,
    &VDI2230_FRICTION,
    &MH_SCATTER,
    &NSTS_08307_SCATTER,
    &VDI2230_1986_SCATTER,
    &VDI2230_2003_A8,
    &VDI2230_2015_SCATTER,
    &VDI2230_T5,
    &AC43_13_7_2,
    &TM1_1500_204_23_6,
    &TM10_SERIES,
    &TM55_1520_240_23_1,
    &MIL_N_25027_RECALLED,
    &B18_16_6_TORQUE,
    &ISO2320_RECALLED,
    &ISO2320_1997,
    &ISO2320_2008,
    &ISO2320_2015,
    &DIN985_SCOPE,
    &AC43_13_7_64,
    &AC43_13_PLATING,
    &NASM25027_SCOPE,
    &RP1228,
    &RP1228_RECALLED,
    &TM106943_CADMIUM,
    &TM10_3930_643_20,
    &ISO898_SCOPE,
    &ISO3506_SCOPE,
    &BEER_JOHNSTON_B,
    &CALLISTER_B2,
    &UGURAL_D1,
    &HANDBOOK_PROPERTIES,
    &AS1442_200,
    &A500,
    &HDBK5_2_3_1_C1,
    &HDBK5_3_6_2_B1,
    &HDBK5_3_2_3_B1,
    &HDBK5_3_7_6_B1,
    &HDBK5_5_4_1_B,
    &AA_TYPICAL,
    &A193_B8_1,
    &DUCTILE_NAMES,
    &GREY_CLASS_30,
    &TM106943_BOLTS,
    &ISO965_1_RECALLED,
    &B1_13M_7,
    &B1_13M_8,
    &B1_13M_10,
    &B1_13M_11,
    &B1_13M_EXTERNAL_CHART,
    &MH_B1_13M_EXTERNAL,
    &B1_13M_6G_CHART,
    &B1_13M_ROLL,
    &B1_13M_INTERNAL_PAGE,
    &ISO965_1_DEVIATIONS,
    &ISO965_1_TAP_CHART,
    &ISO965_1_TAP_LIMITS,
    &ISO965_6H_PAGE,
    &B1_1_TOLERANCE_FORMULAS,
    &B1_1_FIVE_EIGHTHS,
    &B1_1_LIMITS_PAGE,
    &MH27_3,
    &B18_2_1_HEX_BOLT,
    &B18_2_1_HEAVY_HEX_BOLT,
    &B18_2_6_2019,
    &EN14399_4,
    &B18_2_3_1M,
    &B18_3_2003,
    &B18_3_RECALLED,
    &ISO4762,
    &B18_3_1M_HEAD,
    &ISO4762_LENGTHS,
    &AN3_AN20,
    &AN3_AN20_RECALLED,
    &AN_GRIP_TABLE,
    &AN_GRIP_RULE,
    &A563_FINE,
    &ISO898_2_2012,
    &ISO7040_CAD,
    &ISO10512_CAD,
    &ISO7719_CAD,
    &ISO7720_CAD,
    &EN1661_CAD,
    &ISO4161_CAD,
    &ISO4035_CAD,
    &B18_2_2_HEAVY_JAM_CAD,
    &B18_2_2_THICK_CAD,
    &B18_2_2_HEAVY_CAD,
    &ISO7091_CAD,
    &ISO7093_CAD,
    &ISO7094_CAD,
    &ISO7089_CAD,
    &ISO7090_CAD,
    &B18_21_1_A_CAD,
    &B18_21_1_B_CAD,
    &ISO8765_CAD,
    &ISO4014_4017_RANGE_CAD,
    &ISO8765_LENGTHS_CAD,
    &ISO965_1_FORMULAE,
    &ISO965_LIMITS_CAD,
    &F568M_3,
    &A563_15_3,
    &ISO898_2_MATING,
    &EN1993_34_SHEET,
    &ISO10511_CAD,
    &AC43_13_7_1,
    &AC43_13_4_9,
    &RCSC_TURN,
    &EN1090_COMBINED,
    &SHIGLEY_8_17,
    &ANODIC_INDEX,
    &ANODIC_INDEX_LOW,
    &ANODIC_INDEX_RECALLED,
    &EN14399_6,
    &EN14399_3_NUT,
    &EN14399_4_NUT,
    &NDS_G,
    &NDS_G_READ,
    &EN338_READ,
    &EN338_C18,
    &PORTEOUS_DENSITY,
    &EN14080,
    &NDS_FC_PERP,
    &EN338_COMPRESSION,
    &PORTEOUS_COMPRESSION,
    &EN14080_COMPRESSION,
    &AISC360_05_J3_1,
    &AISC360_05_J3_1M,
    &AISC360_16_J3_1,
    &EN1993_NA_FPC,
    &BS4604_1,
    &AS4100_15_2_5_1,
    &EN1993_1_1_EXPANSION,
    &EN1999_1_1_EXPANSION,
    &EN10088_EXPANSION,
    &ISO2320_INSERT_RECALLED,
    &AISC360_05_J3_4,
    &AISC360_16_J3_4,
    &EN1090_2_11,
    &EN10025_2_7,
    &EN1993_1_1_3_2_6,
    &ISO10684_PAIRS,
    &A325_14_NUTS,
    &ISO898_2_PAIR_12U,
    &VDI2230_2003_A9,
    &VDI2230_1986_SURFACE,
    &VDI2230_1986_SURFACE_RECALLED,
    &SURFACE_KIN,
    &VDI2230_SCOPE,
    &ISO898_1_1999_HOT,
    &ISO3506_1_HOT,
    &B31_1_A10,
    &EN1999_1_1_HEAT,
    &EN1993_1_2_31,
    &F436_HARDNESS,
    &ISO7090_HARDNESS,
    &WASHER_HARDNESS_RECALLED,
    &ISO898_3_PAIRS,
    &RCSC_6,
    &AISC360_05_J31_WASHERS,
    &AISC360_05_J32_WASHERS,
    &EN1993_36110,
    &EN1090_824_RECALLED,
    &NDS_12_1_3,
    &EN1995_10432_RECALLED,
    &ISO3506_2_2020,
    &ISO3506_2_LARGE,
    &ISO3506_2_THIN,
    &ISO3506_2_CF,
    &ISO3506_2_MATING,
    &F594,
    &F594_BOLTS,
    &BS449_LOADS,
    &EN14399_6_HARDNESS,
    &EN1993_31_PAGE,
    &ISO3506_1_LARGE,
    &MARKS_CHART,
    &MARKS_A325_3,
    &ISO3506_1_MARKS_RULE,
    &J995_PAIR_2,
    &STEEL_1018,
    &TI_6_4_MAKER,
    &ISO2320_04,
    &ISO2320_INSERT_04,
    &ISO2320_05,
    &ISO2320_INSERT_05,
    &ISO2320_10_REMOVAL,
    &EN14399_3,
    &EN1999_1_1_32B,
    &EN1999_1_1_325,
    &NDS_FC_PERP_4B,
    &EN338_COURSE,
    &EN14080_COURSE,
    &AISC360_22_J3_1M,
    &B18_2_1_2012_T6,
    &AN_SHEAR,
    &DIN267_4,
    &EN1563_1997,
    &NDS_G_FILE,
    &WASHER_CLASSES,
    &ISO4017_A_EN15048,
    &ISO4014_4017_RANGE_CAD_ONE,
    &STRUCTURAL_STEEL_DESIGNERS,
    &EN1563_PHYSICAL,
    &NAS1149_10,
    &ISO4762_CAD,
    &B18_3_LARGE,
];
