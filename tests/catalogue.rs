//! Lists to choose from: every member of a family has a code and a label of its own, and both read back. The codes
//! are kept in `tests/data/codes.csv`, so that a changed one is seen:
//! `UPDATE_CODES=1 cargo test --all-features --test catalogue` rewrites it.

use std::collections::{BTreeSet, HashSet};
use std::fmt::Write;

use shankline::Error;
use shankline::joint::RuleSet;
use shankline::prelude::*;
use shankline::strength::check::{Level, Mode};
use shankline::tables::friction::Condition;
use shankline::tables::galvanic::Metal;
use shankline::tables::holes::HoleFit;
use shankline::tables::nut_grades::{BoltCoating, NutGradeRow, NutPairing};
use shankline::tables::plies::PlyMaterial;
use shankline::tables::timber::Timber;
use shankline::units::{Measured, kilonewtons, kips, parse};

/// What a test does with every family.
trait Visit {
    fn family<K: Key + std::fmt::Debug>(&mut self);
}

fn every_family(visit: &mut impl Visit) {
    visit.family::<ScrewProduct>();
    visit.family::<NutStyle>();
    visit.family::<WasherStyle>();
    visit.family::<BoltGrade>();
    visit.family::<NutGrade>();
    visit.family::<Finish>();
    visit.family::<Metal>();
    visit.family::<&'static PlyMaterial>();
    visit.family::<&'static Timber>();
    visit.family::<UnifiedSeries>();
    visit.family::<MetricSeries>();
    visit.family::<Condition>();
    visit.family::<HoleFit>();
    visit.family::<RuleSet>();
    visit.family::<UnitSystem>();
    visit.family::<Mode>();
    visit.family::<Level>();
}

#[test]
fn codes_and_labels_are_of_one_member_and_read_back() {
    struct Look;
    impl Visit for Look {
        fn family<K: Key + std::fmt::Debug>(&mut self) {
            let (mut codes, mut labels) = (BTreeSet::new(), BTreeSet::new());
            for key in K::ALL {
                let (code, label) = (key.code(), key.label());
                let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
                assert!(
                    !code.is_empty() && code.chars().all(plain),
                    "{key:?} {code}"
                );
                assert!(code.len() <= 32, "{code}");
                assert!(codes.insert(code), "{}: {code} twice", K::FAMILY);
                assert!(
                    labels.insert(label.to_lowercase()),
                    "{}: {label} twice",
                    K::FAMILY
                );
                assert_eq!(key.to_string(), label);
                for text in [
                    code.to_owned(),
                    label.to_owned(),
                    code.to_uppercase(),
                    label.to_uppercase(),
                    format!("  {} ", label.replace(' ', "  ")),
                    label.replace(' ', ""),
                ] {
                    match K::read(&text) {
                        Ok(read) => assert!(read == *key, "{text}: {read:?}"),
                        Err(error) => panic!("{error}"),
                    }
                }
            }
            for text in [
                "",
                " ",
                "-",
                "é",
                "x",
                "no such name",
                "''\"\\;",
                "\u{0}",
                "8.8.8.8",
            ] {
                let error = K::read(text)
                    .err()
                    .unwrap_or_else(|| panic!("{text:?} read"));
                assert!(matches!(error, Error::UnknownName { what, .. } if what == K::FAMILY));
                assert!(error.to_string().len() < 700, "{error}");
            }
            assert!(K::read(&"z9".repeat(100_000)).is_err());
        }
    }
    every_family(&mut Look);
}

#[test]
fn codes_are_those_that_are_kept() {
    struct Table(String);
    impl Visit for Table {
        fn family<K: Key + std::fmt::Debug>(&mut self) {
            for key in K::ALL {
                let label = match key.label() {
                    label if label.contains(',') => format!("\"{label}\""),
                    label => label.to_owned(),
                };
                writeln!(self.0, "{},{},{label}", K::FAMILY, key.code()).unwrap();
            }
        }
    }
    let mut table = Table("family,code,label\n".into());
    every_family(&mut table);
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/data/codes.csv");
    if std::env::var_os("UPDATE_CODES").is_some() {
        std::fs::write(path, &table.0).unwrap();
    }
    let kept = std::fs::read_to_string(path).unwrap();
    for (kept, current) in kept.lines().zip(table.0.lines()) {
        assert_eq!(
            kept, current,
            "files of users hold the codes: see the head of this test"
        );
    }
    assert_eq!(kept.lines().count(), table.0.lines().count());
}

#[cfg(feature = "serde")]
#[test]
fn data_files_have_the_codes() {
    use serde::{Serialize, de::DeserializeOwned};

    fn word<K: Key + Serialize + DeserializeOwned + std::fmt::Debug>() {
        for key in K::ALL {
            let written = serde_json::to_value(key).unwrap();
            assert_eq!(written, key.code());
            assert!(serde_json::from_value::<K>(written).unwrap() == *key);
        }
    }
    /// What serde would read is in the list: no member is missing.
    fn complete<K: Key + DeserializeOwned + std::fmt::Debug>() {
        let error = serde_json::from_str::<K>("\"no_such_word\"")
            .unwrap_err()
            .to_string();
        let (_, listed) = error.split_once("expected ").unwrap();
        let count = listed.matches('`').count() / 2;
        assert_eq!(count, K::ALL.len(), "{}: {error}", K::FAMILY);
    }
    word::<ScrewProduct>();
    word::<NutStyle>();
    word::<WasherStyle>();
    word::<BoltGrade>();
    word::<NutGrade>();
    word::<Metal>();
    word::<UnifiedSeries>();
    word::<MetricSeries>();
    word::<Condition>();
    word::<HoleFit>();
    word::<RuleSet>();
    word::<UnitSystem>();
    complete::<ScrewProduct>();
    complete::<NutStyle>();
    complete::<WasherStyle>();
    complete::<Metal>();
    complete::<UnifiedSeries>();
    complete::<MetricSeries>();
    complete::<Condition>();
    complete::<HoleFit>();
    complete::<RuleSet>();
    complete::<UnitSystem>();
    // A finish that says more than its word is an object of that word.
    for finish in Finish::ALL {
        let written = serde_json::to_value(finish).unwrap();
        match written.as_str() {
            Some(word) => assert_eq!(word, finish.code()),
            None => assert!(written.is_object()),
        }
        assert_eq!(serde_json::from_value::<Finish>(written).unwrap(), *finish);
    }
}

#[test]
fn every_grade_of_the_tables_is_listed() {
    for row in NutPairing::all() {
        assert!(BoltGrade::ALL.contains(&row.bolt) && NutGrade::ALL.contains(&row.nut));
    }
    let rows = NutGradeRow::all_inch()
        .iter()
        .chain(NutGradeRow::all_metric());
    for row in rows {
        assert!(NutGrade::ALL.contains(&row.grade));
    }
    assert!(!BoltGrade::ALL.contains(&BoltGrade::Stated));
}

fn reads<T: std::str::FromStr<Err = Error> + PartialEq + std::fmt::Debug>(cases: &[(&str, T)]) {
    for (text, expected) in cases {
        match text.parse::<T>() {
            Ok(read) => assert_eq!(read, *expected, "{text}"),
            Err(error) => panic!("{error}"),
        }
    }
}

/// Texts that are not guessed at, with what the answer must offer.
fn offers<T: std::str::FromStr<Err = Error> + std::fmt::Debug>(cases: &[(&str, &[&str])]) {
    for (text, offered) in cases {
        let error = text.parse::<T>().expect_err(text).to_string();
        for name in *offered {
            assert!(error.contains(name), "{error} lacks {name}");
        }
        assert!(error.len() < 500, "{error}");
    }
}

#[test]
fn grades_are_read_as_people_type_them() {
    let iso = |class| BoltGrade::Iso(class);
    reads(&[
        ("8.8", iso(PropertyClass::Class8_8)),
        ("class 8.8", iso(PropertyClass::Class8_8)),
        ("Cl. 10.9", iso(PropertyClass::Class10_9)),
        ("ISO 8.8", iso(PropertyClass::Class8_8)),
        (
            "iso_898_1_12_9_underlined",
            iso(PropertyClass::Class12_9Underlined),
        ),
        ("B7", AstmGrade::A193B7.into()),
        ("a193 b7", AstmGrade::A193B7.into()),
        ("A193-B7", AstmGrade::A193B7.into()),
        ("BD", AstmGrade::A354Bd.into()),
        ("A354 BD", AstmGrade::A354Bd.into()),
        ("A325M", AstmGrade::F3125A325m.into()),
        ("A325 type 1", AstmGrade::F3125A325Type1.into()),
        ("A574", AstmGrade::A574.into()),
        ("J429 grade 5", SaeGrade::Grade5.into()),
        ("grade 5", SaeGrade::Grade5.into()),
        ("Grade 5", SaeGrade::Grade5.into()),
        ("gr 5", SaeGrade::Grade5.into()),
        ("Gr.8", SaeGrade::Grade8.into()),
        ("gr5.2", SaeGrade::Grade5_2.into()),
        ("SAE 5", SaeGrade::Grade5.into()),
        ("A2-70", StainlessClass::A2_70.into()),
        ("a4 80", StainlessClass::A4_80.into()),
        ("A270", StainlessClass::A2_70.into()),
    ]);
    offers::<BoltGrade>(&[
        (
            "A325",
            &["F3125 A325 type 1", "F3125 A325 type 3", "A325 to 2014"],
        ),
        ("A490", &["F3125 A490 type 1", "F3125 A490 type 3"]),
        ("A449", &["A449 type 1", "A449 type 3"]),
        ("8.2", &["SAE J429 grade 8.2"]),
        ("5", &["SAE J429 grade 5"]),
        ("grade 8.8", &["ISO 898-1 class 8.8"]),
        ("8,8", &["8"]),
        ("A193 B77", &["A193 B7"]),
        ("A2", &["A2-50", "A2-70", "A2-80"]),
        ("type 2", &["A449 type 2"]),
        ("alloy", &["F568M 10.9 alloy"]),
        ("2A", &[]),
        ("boron", &["F568M 8.8 boron"]),
        ("stated strengths", &[]),
        ("stated", &[]),
    ]);
    reads(&[
        ("class 8", NutGrade::Iso898_2Class8),
        ("class 04", NutGrade::Iso898_2Class04),
        ("grade 8", NutGrade::SaeJ995Grade8),
        ("gr. 5", NutGrade::SaeJ995Grade5),
        ("2H", NutGrade::AstmA194_2h),
        ("A194 2H", NutGrade::AstmA194_2h),
        ("a194-2h", NutGrade::AstmA194_2h),
        ("DH", NutGrade::AstmA563Dh),
        ("A563 DH", NutGrade::AstmA563Dh),
        ("A563 A", NutGrade::AstmA563A),
        ("10Z", NutGrade::Iso10684Class10z),
        ("A4-70", NutGrade::Iso3506_2ClassA4_70),
        ("N8", NutGrade::AsmeB18_16_6GradeN8),
    ]);
    offers::<NutGrade>(&[
        ("8", &["ISO 898-2 class 8", "SAE J995 grade 8"]),
        ("10", &["ISO 898-2 class 10"]),
        ("A", &["A563 A"]),
        ("A563 HD", &["A563 D"]),
    ]);
}

#[test]
fn parts_and_materials_are_read_as_people_type_them() {
    reads(&[
        ("ISO 4032", NutStyle::Iso4032),
        ("din934", NutStyle::Din934),
        ("hex nut ISO 4032", NutStyle::Iso4032),
        ("b18.16.6", NutStyle::InsertLockNe),
        ("EN 14399-4", NutStyle::En14399_4),
    ]);
    offers::<NutStyle>(&[
        ("hex nut", &["hex nut ASME B18.2.2", "hex nut ISO 4032"]),
        ("ISO 4023", &["ISO 4032"]),
        ("4032", &["hex nut ISO 4032"]),
    ]);
    reads(&[
        ("ISO 7089", WasherStyle::Iso7089),
        ("F436", WasherStyle::F436),
    ]);
    offers::<WasherStyle>(&[("plain washer", &["ISO 7089", "type A narrow"])]);
    reads(&[
        ("ISO 4014", ScrewProduct::Iso4014),
        ("iso 4017", ScrewProduct::Iso4017),
        ("hex_cap_screw", ScrewProduct::HexCapScrew),
    ]);
    offers::<ScrewProduct>(&[
        ("structural bolt", &["ASME B18.2.6", "EN 14399-3"]),
        ("hex cap screw", &["ASME B18.2.1", "ASME B18.2.3.1M"]),
    ]);
    reads(&[("unc", UnifiedSeries::Unc), ("8 UN", UnifiedSeries::Un8)]);
    reads(&[
        ("SI", UnitSystem::Si),
        ("us_customary", UnitSystem::UsCustomary),
    ]);
    reads(&[("RCSC", RuleSet::Rcsc)]);
    reads(&[("zinc plated", Finish::ZincPlated { baked: false })]);
    offers::<Condition>(&[("dry", &["dry stainless bolts"])]);
    offers::<NutStyle>(&[
        ("SAE", &["SAE J482a"]),
        ("nut", &[]),
        ("class 9", &["class 9"]),
    ]);
    offers::<WasherStyle>(&[("AN960", &["flat washer AN960", "light flat washer"])]);
    assert_eq!(
        PlyMaterial::find("2024-T3").unwrap().name,
        "2024-T3 aluminium"
    );
    assert_eq!(PlyMaterial::find("A36").unwrap().name, "ASTM A36 steel");
    assert_eq!(PlyMaterial::find("s355").unwrap().name, "S355 steel");
    assert!(
        PlyMaterial::find("ASTM A37")
            .unwrap_err()
            .to_string()
            .contains("ASTM A36 steel")
    );
    assert_eq!(Timber::find("gl24h").unwrap().name, "GL 24h");
    assert!(Timber::find("C23").unwrap_err().to_string().contains("C24"));
}

fn same<Q: Measured + std::fmt::Debug>(text: &str, expected: Q) {
    let read: Q = parse(text).unwrap();
    let off = (read.base() - expected.base()).abs();
    assert!(off <= 1e-12 * expected.base().abs(), "{text}: {read:?}");
}

#[test]
fn threads_and_quantities_are_read_as_people_type_them() {
    for (text, expected) in [
        ("M12-1.75", "M12"),
        ("M12x1.75", "M12"),
        ("m12", "M12"),
        ("5/16 UNF", "5/16-24 UNF"),
        ("1/2-13", "1/2-13 UNC"),
        ("#10-32", "#10-32 UNF"),
    ] {
        assert_eq!(text.parse::<Thread>().unwrap().to_string(), expected);
    }
    offers::<Thread>(&[
        ("1/2", &["1/2-13 UNC or 1/2-20 UNF"]),
        ("#4", &["#4-40 UNC or #4-48 UNF"]),
        ("10", &["#10-24 UNC or #10-32 UNF"]),
    ]);
    for text in [
        "60 ft-lb",
        "60 lb-ft",
        "60 lbf ft",
        "60 ft·lbf",
        "60 FT-LBS",
    ] {
        same(text, pound_force_feet(60.0));
    }
    same("720 in-lb", pound_force_feet(60.0));
    same("5 kip", kips(5.0));
    same("5 kips", kips(5.0));
    same("5 KIPS", kips(5.0));
    same("12 N", newtons(12.0));
    same("12kN", kilonewtons(12.0));
    same("3-1/2 in", inches(3.5));
    same("3 1/2\"", inches(3.5));
    same("3 1/2″", inches(3.5));
    same("3.5 IN", inches(3.5));
    same("20mm", millimetres(20.0));
    for text in ["12 mN", "12 KN", "12 n", "5 lb", "20 MM", "20 Mm"] {
        assert!(
            parse::<Force>(text).is_err() && parse::<Length>(text).is_err(),
            "{text}"
        );
    }
}

#[test]
fn tolerances_are_read_as_drawings_have_them() {
    let mm = |min, nominal, max| Spread {
        min: millimetres(min),
        nominal: millimetres(nominal),
        max: millimetres(max),
    };
    let same = |a: Spread<Length>, b: Spread<Length>| {
        let near = |a: Length, b: Length| (a - b).abs() < millimetres(1e-9);
        near(a.min, b.min) && near(a.nominal, b.nominal) && near(a.max, b.max)
    };
    for (text, expected) in [
        ("20 mm", mm(20.0, 20.0, 20.0)),
        ("+20 mm", mm(20.0, 20.0, 20.0)),
        ("20 +/- 0.3 mm", mm(19.7, 20.0, 20.3)),
        ("20mm±0.3mm", mm(19.7, 20.0, 20.3)),
        ("20 mm +/- 0.3", mm(19.7, 20.0, 20.3)),
        ("20 mm +0.1/-0.2", mm(19.8, 20.0, 20.1)),
        ("20 +0.1/-0.2 mm", mm(19.8, 20.0, 20.1)),
        ("20 mm +0.1 -0.2", mm(19.8, 20.0, 20.1)),
        ("20 mm + 0.1 / - 0.2", mm(19.8, 20.0, 20.1)),
        ("20 mm +0.1 mm/-0.2 mm", mm(19.8, 20.0, 20.1)),
        ("20 mm +0.1/−0.2", mm(19.8, 20.0, 20.1)),
        ("20 mm +0.3/-0", mm(20.0, 20.0, 20.3)),
        ("1-1/2 in +1/16/-0", mm(38.1, 38.1, 39.6875)),
        ("1/2\" +/- 1/64\"", mm(12.303_125, 12.7, 13.096_875)),
        ("20 mm +/- 1/64 in", mm(19.603_125, 20.0, 20.396_875)),
    ] {
        match text.parse::<Spread<Length>>() {
            Ok(read) => assert!(same(read, expected), "{text}: {read:?}"),
            Err(error) => panic!("{error}"),
        }
    }
    for text in [
        "",
        "20",
        "20 +/- 0.3",
        "20 mm +/-",
        "20 mm +/- -0.3",
        "20 mm +0.1",
        "20 mm +0.1/-",
        "20 mm +0.1/--0.2",
        "20 mm +0.1/-0.2/-0.3",
        "20 kN +/- 1 kN",
        "mm",
        "+",
        "+/-",
        "+/-0.1 mm",
        "20 mm +0.1/-0.2 N",
        "± ±",
    ] {
        assert!(text.parse::<Spread<Length>>().is_err(), "{text}");
    }
    let force: Spread<Force> = "10 +/- 1 kN".parse().unwrap();
    assert!((force.max - newtons(11e3)).abs() < newtons(1e-6));
}

#[test]
fn what_fits_can_be_found_in_the_tables() {
    for thread in Thread::tabled() {
        for style in NutStyle::made_with(&thread) {
            assert!(Nut::find(style, &thread).is_ok());
            for grade in style.grades(&thread, NutTapping::Usual) {
                let shape = style.shape().unwrap();
                assert!(grade.strength(shape, &thread, NutTapping::Usual).is_ok());
            }
        }
        for product in ScrewProduct::made_with(&thread) {
            assert!(ScrewSeries::new(product, &thread).is_ok());
            for grade in product.grades(&thread) {
                assert!(grade.strength(thread.nominal_diameter()).is_ok());
                let named = grade.named_nuts(&thread, BoltCoating::Any).unwrap();
                assert_eq!(named.iter().collect::<HashSet<_>>().len(), named.len());
            }
        }
    }
    for product in ScrewProduct::ALL {
        assert!(product.threads().next().is_some(), "{product}");
        assert!(
            product
                .threads()
                .any(|thread| product.grades(&thread).next().is_some()),
            "{product}"
        );
    }
    for style in NutStyle::ALL {
        assert!(style.threads().next().is_some(), "{style}");
    }
    for style in WasherStyle::ALL {
        assert!(style.threads().next().is_some(), "{style}");
    }
}

/// Rows are written with their units, their source and the codes of their keys.
#[cfg(feature = "serde")]
#[test]
fn table_rows_are_written_to_data_files() {
    use serde_json::{json, to_value};
    use shankline::tables::{
        expansion::Expansion, grades::SaeGradeRow, holes::ClearanceHole, threads::MetricThread,
    };
    use shankline::units::{TemperatureCoefficient, quantity};

    let row = to_value(MetricThread::coarse(millimetres(12.0)).unwrap()).unwrap();
    assert_eq!(row["pitch"], json!({"value": 1.75, "unit": "mm"}));
    assert_eq!(row["series"], "coarse");
    assert_eq!(row["tensile_stress_area"]["unit"], "mm2");
    assert!(row["provenance"]["source"]["document"].is_string());

    let row = to_value(SaeGradeRow::all()[0]).unwrap();
    assert_eq!(row["grade"], "sae_j429_1");
    assert_eq!(row["proof_stress"]["unit"], "MPa");
    assert!(row["length_over"].is_null() || row["length_over"]["unit"] == "mm");

    let row = to_value(PlyMaterial::find("A36").unwrap()).unwrap();
    assert_eq!(row["elastic_modulus_min"]["unit"], "MPa");
    assert!(row["expansion"].is_null() || row["expansion"]["unit"] == "ppm/K");
    let row = to_value(Timber::find("C24").unwrap()).unwrap();
    assert_eq!(
        row["characteristic_density"],
        json!({"value": 350.0, "unit": "kg/m3"})
    );
    let row = to_value(Expansion::all()[0]).unwrap();
    // In the unit that is read back.
    assert_eq!(row["expansion"]["unit"], "ppm/K");
    let back: TemperatureCoefficient = quantity::deserialize(&row["expansion"]).unwrap();
    let expansion = Expansion::all()[0].expansion;
    assert!((back.value - expansion.value).abs() < 1e-11 * expansion.value);
    for row in ClearanceHole::all_inch() {
        assert_eq!(to_value(row).unwrap()["diameter_min"]["unit"], "mm");
    }
    let nut = Nut::find(NutStyle::Iso4032, &"M12".parse().unwrap()).unwrap();
    assert_eq!(to_value(nut).unwrap()["style"], "iso_4032");
}
