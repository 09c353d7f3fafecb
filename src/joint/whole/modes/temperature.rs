//! Heat and cold beyond what the parts are specified for.

use crate::joint::Part;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::joint::whole::{Finding, Need, NotConcerned};
use crate::material::Finish;
use crate::strength::check::{Mode, Place};
use crate::strength::shear::ShearMethod;
use crate::strength::timber::TimberMethod;
use crate::tables::locking::ServiceTemperature;
use crate::units::celsius;

const MODE: Mode = Mode::Temperature;

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    let environment = &case.joint.environment;
    if environment.is_at_room_temperature() {
        out.not_concerned(MODE, NotConcerned::RoomTemperature);
        return;
    }
    out.in_order(MODE);
    bolt(case, out);
    for ply in &case.plies {
        if let (Some(_), Some(method)) = (ply.timber, case.joint.methods.timber) {
            timber(case, ply.place, method, out);
        }
        let Some(material) = ply.material else {
            // Of timber the caller's factor has it.
            if ply.timber.is_none() && environment.hottest > celsius(35.0) {
                out.missing(MODE, ply.place, Need::Material);
            }
            continue;
        };
        // Common practice, no source: ordinary plate of no stated toughness is not for hard frost.
        if environment.coldest < celsius(-20.0) && material.may_be_brittle() {
            let why = "nothing is known of the toughness of its material in the cold";
            out.missing(MODE, ply.place, Need::Method(why));
        }
        let limit = material.temperature_limit();
        let known = limit.map_or(celsius(35.0), |limit| limit.full_strength_thru);
        if environment.hottest > known {
            let why = "the strength of its material is known up to a lower temperature only";
            out.missing(MODE, ply.place, Need::Method(why));
        }
        if let Some(limit) = limit.filter(|_| environment.hottest > celsius(35.0)) {
            out.warn(&limit.cautions());
        }
    }
    if case.joint.own.nut.is_some()
        && (environment.hottest > celsius(35.0) || environment.coldest < celsius(-20.0))
    {
        let why = "of a nut of one's own nothing is known in heat or frost";
        out.missing(MODE, Place::Nut, Need::Method(why));
    }
    if case.insert.is_some()
        && (environment.hottest > celsius(35.0) || environment.coldest < celsius(-20.0))
    {
        let why = "of the wire of an insert nothing is known in heat or frost";
        out.missing(MODE, Place::TappedPart, Need::Method(why));
    }
    if let Some(finish) = case.joint.bolt.finish {
        coating(case, Part::Bolt, finish, out);
    }
    if let Some(finish) = case.nut().and_then(|nut| nut.finish) {
        coating(case, Part::Nut, finish, out);
    }
}

/// Timber: up to these temperatures the caller's factor has what heat takes off, beyond them the codes have nothing
/// (EN 1995-1-1, 1.1.2; NDS 2018, 2.3.3; both recalled).
fn timber(case: &Case, place: Place, method: TimberMethod, out: &mut Outcomes) {
    let (limit, why) = match method {
        TimberMethod::En1995 { .. } => (
            celsius(60.0),
            "EN 1995-1-1 does not cover timber that is long above 60 C",
        ),
        TimberMethod::Nds { .. } => (
            celsius(65.5),
            "NDS has no factor for timber that is long above 150 F",
        ),
    };
    // NDS 2018, Table 11.3.4.
    if matches!(method, TimberMethod::Nds { .. })
        && case.joint.environment.hottest > celsius(37.8)
        && case.joint.environment.hottest <= limit
    {
        let why = "above 100 F timber bears less: nobody says that the adjustment has that in it";
        out.missing(MODE, place, Need::Method(why));
    }
    if case.joint.environment.hottest > limit {
        out.missing(MODE, place, Need::Method(why));
    }
}

fn bolt(case: &Case, out: &mut Outcomes) {
    let environment = &case.joint.environment;
    let place = Place::Bolt(1);
    let limits = case.joint.bolt.grade.service_temperatures();
    match limits.max() {
        Some(limit) if environment.hottest > limit => out.find(Finding::BoltTooHot { limit }),
        // Where the strength at that heat is known, the bolt may have it.
        None if environment.hottest > celsius(35.0) && !matches!(case.hot, Some(Ok(_))) => {
            let why = "no highest temperature of the grade is known";
            out.missing(MODE, place, Need::Method(why));
        }
        _ => {}
    }
    match limits.min() {
        Some(limit) if environment.coldest < limit => out.find(Finding::BoltTooCold { limit }),
        None if environment.coldest < celsius(10.0) => {
            let why = "no lowest temperature of the grade is known";
            out.missing(MODE, place, Need::Method(why));
        }
        _ => {}
    }
    let Some(hot) = &case.hot else { return };
    match hot {
        Ok(hot) => {
            out.warn(&hot.cautions());
            if hot.ratio.value >= 1.0 {
                return;
            }
            out.work(|| hot.derivation());
            out.find(Finding::WeakerWhenHot { ratio: hot.ratio });
            if case.nut().is_some() {
                let why = "the strength of the nut at that heat is not known";
                out.missing(MODE, Place::Nut, Need::Method(why));
            }
            // Stresses that a code prints for a grade are those of room temperature.
            if !matches!(
                case.joint.methods.shear,
                ShearMethod::DistortionEnergy { .. }
            ) {
                let why = "the stresses of the code are those of room temperature";
                out.missing(MODE, place, Need::Method(why));
            }
        }
        Err(error) => out.missing(MODE, place, Need::Refused(error.clone())),
    }
}

fn coating(case: &Case, part: Part, finish: Finish, out: &mut Outcomes) {
    let Some(element) = finish.temperature_limited() else {
        return;
    };
    let limits = ServiceTemperature::of(element)
        .filter_map(|row| row.temperature_max.map(|limit| (row, limit)));
    let Some((row, limit)) = limits.reduce(|a, b| if b.1 < a.1 { b } else { a }) else {
        return;
    };
    if case.joint.environment.hottest > limit {
        out.warn(&row.cautions());
        out.find(Finding::CoatingTooHot { part, limit });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::joint::whole::{Joint, Verdict};

    fn verdict(material: &str, coldest: f64, hottest: f64) -> Verdict {
        let mut said = Joint::builder("M12").grade("8.8");
        for name in ["beam", "plate"] {
            said = said.ply(name, "20 mm");
            if !material.is_empty() {
                said = said.material(material);
            }
        }
        let mut joint = said.across("2 kN").build().unwrap();
        joint.environment.coldest = celsius(coldest);
        joint.environment.hottest = celsius(hottest);
        joint.check().unwrap()
    }

    fn lacks(found: &Verdict, place: Place) -> bool {
        let mut missing = found.missing.iter();
        missing.any(|missing| missing.mode == MODE && missing.place == place)
    }

    /// A36 keeps its strength to 100 C (EN 1993-1-2) and may be brittle below -20 C (common practice, no source); of a ply
    /// of which nothing is said nothing is known above 35 C.
    #[test]
    fn plies_in_heat_and_frost() {
        for (material, coldest, hottest, right) in [
            ("ASTM A36 steel", -20.0, 100.0, false),
            ("ASTM A36 steel", -20.1, 20.0, true),
            ("ASTM A36 steel", 20.0, 100.1, true),
            ("6061-T6 aluminium, typical", -20.1, 35.0, false),
            ("", -20.1, 35.0, false),
            ("", 20.0, 35.1, true),
        ] {
            let found = verdict(material, coldest, hottest);
            assert_eq!(
                lacks(&found, Place::Ply(1)),
                right,
                "{material} {coldest} {hottest}"
            );
        }
    }

    /// ISO 898-1: from -50 to 150 C; above room temperature the nut is asked for as soon as the bolt is weaker.
    #[test]
    fn bolts_in_heat_and_frost() {
        for (coldest, hottest, cold, hot) in [
            (-50.0, 20.0, false, false),
            (-50.1, 20.0, true, false),
            (20.0, 150.0, false, false),
            (20.0, 150.1, false, true),
        ] {
            let found = verdict("ASTM A36 steel", coldest, hottest);
            let any = |wanted: fn(&Finding) -> bool| found.findings.iter().any(wanted);
            assert_eq!(
                any(|finding| matches!(finding, Finding::BoltTooCold { .. })),
                cold,
                "{coldest}"
            );
            assert_eq!(
                any(|finding| matches!(finding, Finding::BoltTooHot { .. })),
                hot,
                "{hottest}"
            );
            let weaker = any(|finding| matches!(finding, Finding::WeakerWhenHot { .. }));
            assert_eq!(weaker, lacks(&found, Place::Nut), "{hottest}");
        }
    }
    /// From 35 C on it is told by which rule a material keeps its strength, and below nothing is counted on.
    #[test]
    fn the_rule_for_heat_is_told_in_heat() {
        let of = "6061-T6 aluminium, typical"; // its limit was recalled
        let cautions = |hottest: f64| verdict(of, 20.0, hottest).cautions.len();
        assert_eq!(cautions(35.0), cautions(20.0));
        assert!(cautions(35.1) > cautions(35.0));
        assert_eq!(cautions(79.0), cautions(35.1));
    }

    /// Of an insert, and of a nut of one's own, nothing is known above 35 C and below -20 C.
    #[test]
    fn inserts_and_own_nuts_in_heat_and_frost() {
        use crate::joint::{OwnNut, TappedHole, TappedPart};
        use crate::parts::{InsertLength, Locking};
        use crate::spread::Spread;
        use crate::units::millimetres;
        let said = || Joint::builder("M12").grade("8.8").ply("beam", "20 mm");
        let hole = |length| match length {
            Some(length) => TappedHole::ThroughWithInsert { length },
            None => TappedHole::Through,
        };
        let tapped = |length| {
            let bed = TappedPart::new("bed").thread(millimetres(26.0), hole(length));
            said().tapped(bed).along("1 kN").build().unwrap()
        };
        let nut = OwnNut::new(
            "nut (invented)",
            Spread::exact(millimetres(10.0)),
            Locking::None,
        );
        let (insert, bare) = (tapped(Some(InsertLength::Two)), tapped(None));
        let own = said().own_nut(nut).along("1 kN").build().unwrap();
        for (coldest, hottest, is_open) in [
            (20.0, 20.0, false),
            (-20.0, 35.0, false),
            (-20.1, 20.0, true),
            (-30.0, 20.0, true),
            (20.0, 35.1, true),
            (20.0, 60.0, true),
        ] {
            let told = |joint: &Joint, part: &str| {
                let mut joint = joint.clone();
                joint.environment.coldest = celsius(coldest);
                joint.environment.hottest = celsius(hottest);
                let missing = joint.check().unwrap().missing;
                missing.iter().any(|own| match &own.need {
                    Need::Method(why) => own.mode == MODE && why.contains(part),
                    _ => false,
                })
            };
            let (wire, of_nut) = ("wire of an insert", "nut of one's own");
            assert_eq!(told(&insert, wire), is_open, "{coldest} {hottest}");
            assert_eq!(told(&own, of_nut), is_open, "{coldest} {hottest}");
            assert!(!told(&bare, wire) && !told(&bare, of_nut));
        }
    }
}
