//! What people write before they have read anything: guesses noted down before looking, each of them compiles and says
//! what is meant.

use std::collections::{BTreeSet, HashMap};

use shankline::prelude::*;
use shankline::units::{gigapascals, kilonewtons, kips, millimetre, psi};

#[test]
fn first_guesses_are_right() -> Result<(), Error> {
    // 1 to 4: names as they are written on a drawing
    let thread: Thread = "M12".parse()?;
    let inch: Thread = "3/4-10 UNC".parse()?;
    let grade: BoltGrade = "8.8".parse()?;
    let nut: NutGrade = "ISO 898-2 class 8".parse()?;
    // 5 to 7: standards are names
    let product: ScrewProduct = "ISO 4014".parse()?;
    let style: NutStyle = "ISO 4032".parse()?;
    let washer: WasherStyle = "ISO 7089".parse()?;
    assert_eq!(product, ScrewProduct::Iso4014);
    assert_eq!((style, washer), (NutStyle::Iso4032, WasherStyle::Iso7089));
    assert_eq!(nut, NutGrade::Iso898_2Class8);
    // 8 to 11: lists
    for product in ScrewProduct::ALL {
        assert!(!product.to_string().is_empty());
    }
    assert!(NutStyle::ALL.len() > 20 && WasherStyle::ALL.len() > 10);
    assert!(BoltGrade::ALL.contains(&grade));
    // 12 and 13: a joint, and the same with a change
    let joint = Joint::builder("M12")
        .ply("a", "12 mm")
        .ply("b", millimetres(20.0))
        .across(kilonewtons(4.0))
        .build()?;
    let again = joint.to_builder().grade("10.9").build()?;
    assert_ne!(again.bolt.grade, joint.bolt.grade);
    // 14 to 16: the answer
    let verdict = joint.check()?;
    assert!(!verdict.holds());
    assert_eq!(verdict.word(), Word::Undecided);
    assert!(verdict.governing().is_some());
    // 17: a report prints
    let report = joint.report(UnitSystem::Si)?;
    assert!(report.to_string().contains("UNDECIDED"));
    // 18: and goes to JSON and back
    #[cfg(feature = "serde")]
    {
        let text = serde_json::to_string(&report).unwrap();
        assert_eq!(serde_json::from_str::<Report>(&text).unwrap(), report);
    }
    // 19 to 21: units
    assert!((kips(1.0) / kilonewtons(1.0)).value > 4.4);
    assert!((gigapascals(1.0) / psi(1.0)).value > 145e3);
    assert!((thread.nominal_diameter().get::<millimetre>() - 12.0).abs() < 1e-12);
    // 22: tolerances
    let ply: Spread<Length> = "20 +/- 0.3 mm".parse()?;
    assert_eq!(ply, millimetres(20.0).plus_minus(millimetres(0.3)));
    // 23 and 24: what is in the tables
    assert!(thread.tensile_stress_area() < inch.tensile_stress_area());
    assert!(grade.strength(millimetres(12.0))?.proof_stress.is_some());
    // 25 to 27: keys
    let mut stock: HashMap<Thread, usize> = HashMap::new();
    *stock.entry(thread).or_default() += 5;
    let sorted: BTreeSet<Thread> = [inch, thread].into_iter().collect();
    assert_eq!(sorted.len(), 2);
    let by_grade: HashMap<BoltGrade, Length> = [(grade, ply.nominal)].into();
    assert!(by_grade.contains_key(&grade));
    Ok(())
}
