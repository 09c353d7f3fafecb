//! Questions of textbooks and lectures, asked through the public API as a reader would: each arm of `answer` is one
//! kind of question, and no arm does more arithmetic than the statics of the load. Tolerance: the print's own
//! rounding. Prints that are wrong, or round in between, are in a file of their own, each with its reason; the test
//! holds that the crate differs from them.

mod support;

use shankline::joint::LengthSearch;
use shankline::prelude::*;
use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
use shankline::strength::check::Level;
use shankline::strength::combined_stress::{EquivalentTension, StressTheory};
use shankline::strength::cover::{Cover, SpacingRule, Tightness, textbook_initial_tension};
use shankline::strength::group::{BoltPattern, PlaneLoad};
use shankline::strength::interaction::InteractionRule;
use shankline::strength::shear::{
    ConnectionFacts, LoadedPlane, PlaneRule, shear_resistance_on_printed_area,
};
use shankline::strength::sizing::{Demand, ThreadSeries};
use shankline::strength::stressed::{BoltSection, StressedArea};
use shankline::tension::{JointDiagram, LoadShare, bolts_needed, rod_stiffness};
use shankline::uom::si::{area, force, length, pressure};
use support::{Row, csv_rows};

/// What the crate answers: a quantity or the name of a thread.
enum Answer {
    Number(f64),
    Force(Force),
    Length(Length),
    Area(Area),
    Stress(Stress),
    Thread(Thread),
}

struct Asked<'a>(&'a Row);

impl Asked<'_> {
    fn text(&self, name: &str) -> &str {
        let cell = &self.0["inputs"];
        let found = cell.split(';').find_map(|pair| {
            let (key, value) = pair.split_once('=')?;
            (key == name).then_some(value)
        });
        found.unwrap_or_else(|| panic!("{}: no {name} in {cell}", self.0["id"]))
    }

    fn has(&self, name: &str) -> bool {
        self.0["inputs"]
            .split(';')
            .any(|pair| pair.starts_with(name))
    }

    fn number(&self, name: &str) -> f64 {
        self.text(name).parse().unwrap()
    }

    fn count(&self, name: &str) -> usize {
        self.text(name).parse().unwrap()
    }

    fn numbers(&self, name: &str) -> Vec<f64> {
        let words = self.text(name).split(' ');
        words.map(|word| word.parse().unwrap()).collect()
    }

    fn mm(&self, name: &str) -> Length {
        millimetres(self.number(name))
    }

    fn n(&self, name: &str) -> Force {
        newtons(self.number(name))
    }

    fn mpa(&self, name: &str) -> Stress {
        megapascals(self.number(name))
    }

    fn thread(&self) -> Thread {
        self.text("thread").parse().unwrap()
    }

    fn theory(&self) -> StressTheory {
        match self.text("theory") {
            "principal" => StressTheory::GreatestPrincipal,
            "shear" => StressTheory::GreatestShear,
            other => panic!("{other}"),
        }
    }

    fn section(&self) -> BoltSection {
        match self.text("section") {
            "shank" => BoltSection::Shank,
            "stress" => BoltSection::StressArea,
            "printed" => BoltSection::PrintedStressArea,
            "core" => BoltSection::Core,
            other => panic!("{other}"),
        }
    }

    fn series(&self) -> ThreadSeries {
        match self.text("series") {
            "metric" => ThreadSeries::METRIC_COARSE,
            "metric first" => ThreadSeries::METRIC_COARSE.first_choice(),
            "unc" => ThreadSeries::UNC,
            other => panic!("{other}"),
        }
    }

    fn demand(&self) -> Result<Demand, Error> {
        Demand::new(self.n("load_n"), self.mpa("strength_mpa"))?
            .with_factor(self.number("factor"))?
            .shared_by(self.count("bolts"))?
            .in_planes(self.count("planes"))
    }

    fn allowed(&self) -> Result<Demand, Error> {
        Demand::new(self.n("load_n"), self.mpa("allowable_mpa"))
    }

    fn cover(&self) -> Result<Cover, Error> {
        let (pressure, diameter) = (self.mpa("pressure_mpa"), self.mm("diameter_mm"));
        Cover::new(pressure, diameter, self.count("bolts"))
    }

    fn spacing_rule(&self) -> SpacingRule {
        let hole = self.mm("diameter_mm");
        SpacingRule::Khurmi { hole }
    }

    /// Statics: rows of bolts at distances l from the heel; the farthest of each row carries M l / (n sum l^2).
    fn tilting(&self, arm: &str) -> Force {
        let far = self.number("far_mm");
        let rows = self.numbers("near_mm").into_iter().chain([far]);
        let squares: f64 = rows.map(|row| row * row).sum();
        let per_row = if self.has("per_row") {
            self.number("per_row")
        } else {
            2.0
        };
        let mut moment = self.number("load_n") * self.number(arm);
        if self.has("other_nmm") {
            moment += self.number("other_nmm");
        }
        newtons(moment * far / (per_row * squares))
    }

    /// The shear of the worst bolt of a group under a load beside it.
    fn group(&self, rows: usize, columns: usize) -> Result<Force, Error> {
        let (row, column) = (self.mm("rows_mm"), self.mm("columns_mm"));
        let pattern = BoltPattern::rows_and_columns(rows, columns, row, column)?;
        let (none, arm) = (newtons(0.0), self.mm("arm_mm"));
        let group = pattern.elastic(&[PlaneLoad::new(none, -self.n("load_n"), arm, none_mm())])?;
        Ok(group.forces[group.governing].resultant)
    }

    /// The force in the bolt after a preload and a share of a load.
    fn bolt_force(&self, share: LoadShare) -> Result<Force, Error> {
        let joint = JointDiagram::new(share, self.n("preload_n"))?;
        Ok(joint.under(self.n("load_n"))?.bolt)
    }

    fn length(&self) -> Result<shankline::joint::TextbookLength, Error> {
        let (thread, inch) = (self.thread(), self.has("plies_in"));
        let plies = self.numbers(if inch { "plies_in" } else { "plies_mm" });
        let unit = if inch { inches(1.0) } else { millimetres(1.0) };
        let mut stack = Stack::builder();
        for ply in plies {
            stack = stack.ply("ply", Spread::exact(ply * unit));
        }
        let stack = stack.build()?;
        let (product, style, system) = if inch {
            let product = ScrewProduct::HexCapScrew;
            (product, NutStyle::Hex, UnitSystem::UsCustomary)
        } else {
            (ScrewProduct::Iso4014, NutStyle::Iso4032, UnitSystem::Si)
        };
        let screws = ScrewSeries::new(product, &thread)?;
        let nut = NutEnd::of(Nut::find(style, &thread)?)?;
        let search = LengthSearch::new(&stack, &screws, nut, LengthRules::fabrication(system))?;
        let threads = if self.has("threads") {
            self.number("threads")
        } else {
            0.0
        };
        search.textbook_length_without_tolerances(threads)
    }
}

fn none_mm() -> Length {
    millimetres(0.0)
}

#[allow(clippy::too_many_lines)]
fn answer(row: &Row) -> Result<Answer, Error> {
    let q = Asked(row);
    Ok(match row["question"].as_str() {
        "equivalent_diameter" => {
            let both = EquivalentTension::new(q.theory(), q.n("tension_n"), q.n("shear_n"))?;
            both.derivation().check()?;
            let demand = both.demand(q.mpa("allowable_mpa"))?;
            let demand = demand.with_factor(q.number("factor"))?;
            Answer::Length(demand.least_diameter()?.diameter)
        }
        "equivalent_load" => {
            let both = EquivalentTension::new(q.theory(), q.n("tension_n"), q.n("shear_n"))?;
            Answer::Force(both.load)
        }
        "tilt_tension" => Answer::Force(q.tilting("arm_mm")),
        "tilt_area" => {
            let tension = q.tilting("arm_mm") + q.n("direct_n");
            let both = EquivalentTension::new(q.theory(), tension, q.n("shear_n"))?;
            Answer::Area(both.demand(q.mpa("allowable_mpa"))?.area())
        }
        "bracket_area" => {
            let (tension, shear) = (q.tilting("tilt_arm_mm"), q.group(2, 2)?);
            let both = EquivalentTension::new(StressTheory::GreatestShear, tension, shear)?;
            Answer::Area(both.shear_demand(q.mpa("shear_allowable_mpa"))?.area())
        }
        "group_thread" => {
            let shear = q.group(q.count("rows"), q.count("columns"))?;
            let demand = Demand::new(shear, q.mpa("shear_allowable_mpa"))?;
            let series = ThreadSeries::METRIC_COARSE.first_choice();
            Answer::Thread(demand.least_thread(series, BoltSection::Core)?.thread)
        }
        "least_thread" => {
            let found = q.demand()?.least_thread(q.series(), q.section())?;
            found.derivation().check()?;
            Answer::Thread(found.thread)
        }
        "least_diameter" => {
            let found = q.demand()?.least_diameter()?;
            found.derivation().check()?;
            Answer::Length(found.diameter)
        }
        "stated_springs_area" => {
            let (area, length) = (square_millimetres(1.0), q.mm("length_mm"));
            let bolt = rod_stiffness(area, q.mpa("bolt_modulus_mpa"), length)?;
            let area = q.number("members_over_bolt") * area;
            let members = rod_stiffness(area, q.mpa("member_modulus_mpa"), length)?;
            let force = q.bolt_force(LoadShare::new(bolt, members)?)?;
            let demand = Demand::new(force, q.mpa("strength_mpa"))?;
            Answer::Area(demand.with_factor(q.number("factor"))?.area())
        }
        "constant_area" => {
            let force = q.bolt_force(LoadShare::of_constant(q.number("constant"))?)?;
            let demand = Demand::new(force, q.mpa("strength_mpa"))?;
            Answer::Area(demand.with_factor(q.number("factor"))?.area())
        }
        "constant_bolts" => {
            let share = LoadShare::of_constant(q.number("constant"))?;
            let section = StressedArea::tension(&q.thread(), BoltSection::PrintedStressArea, 1)?;
            let proof = section.load_at(q.mpa("proof_mpa"), 1.0)?;
            let preload = q.number("preload_share") * proof;
            let needed = bolts_needed(share, q.number("factor"), q.n("total_n"), proof, preload)?;
            Answer::Number(needed.quotient)
        }
        "least_bolts" => {
            let pin = StressedArea::shear_of_pins(q.mm("diameter_mm"), 1, q.count("planes"))?;
            let least = q.allowed()?.least_bolts(&pin)?;
            Answer::Number(f64::from(u32::try_from(least.number).unwrap()))
        }
        "constant_bolt_force" => {
            Answer::Force(q.bolt_force(LoadShare::of_constant(q.number("constant"))?)?)
        }
        "initial_tension" => {
            let tension = textbook_initial_tension(q.mm("diameter_mm"), Tightness::Fluid)?;
            Answer::Force(tension.tension)
        }
        "least_threads" => {
            let one = StressedArea::thread_crushing(q.mm("major_mm"), q.mm("minor_mm"), 1.0)?;
            let least = q.allowed()?.least_threads(&one)?;
            Answer::Number(f64::from(u32::try_from(least.number).unwrap()))
        }
        "thread_crushing" => {
            let (major, minor) = (q.mm("major_mm"), q.mm("minor_mm"));
            let flanks = StressedArea::thread_crushing(major, minor, q.number("threads"))?;
            Answer::Stress(flanks.under(q.n("load_n"))?.stress)
        }
        "least_width" => {
            let (ply, hole) = (q.mm("thickness_mm"), q.mm("hole_mm"));
            Answer::Length(
                q.allowed()?
                    .least_width(ply, hole, q.count("holes"))?
                    .length,
            )
        }
        "least_net_thickness" => {
            let (width, hole) = (q.mm("width_mm"), q.mm("hole_mm"));
            let least = q
                .allowed()?
                .least_net_thickness(width, hole, q.count("holes"));
            Answer::Length(least?.length)
        }
        "net_load" => {
            let (width, ply, hole) = (q.mm("width_mm"), q.mm("thickness_mm"), q.mm("hole_mm"));
            let net = StressedArea::net_section(width, ply, hole, q.count("holes"))?;
            Answer::Force(net.load_at(q.mpa("allowable_mpa"), 1.0)?)
        }
        "shear_load" => {
            let (bolts, planes) = (q.count("bolts"), q.count("planes"));
            let pins = StressedArea::shear_of_pins(q.mm("diameter_mm"), bolts, planes)?;
            Answer::Force(pins.load_at(q.mpa("allowable_mpa"), 1.0)?)
        }
        "shear_stress" => {
            let (bolts, planes) = (q.count("bolts"), q.count("planes"));
            let pins = StressedArea::shear_of_pins(q.mm("diameter_mm"), bolts, planes)?;
            Answer::Stress(pins.under(q.n("load_n"))?.stress)
        }
        "bearing_load" => {
            let (bolt, ply) = (q.mm("diameter_mm"), q.mm("thickness_mm"));
            let bearing = StressedArea::bearing(bolt, ply, q.count("bolts"))?;
            Answer::Force(bearing.load_at(q.mpa("allowable_mpa"), 1.0)?)
        }
        "bearing_stress" => {
            let (bolt, ply) = (q.mm("diameter_mm"), q.mm("thickness_mm"));
            let bearing = StressedArea::bearing(bolt, ply, q.count("bolts"))?;
            Answer::Stress(bearing.under(q.n("load_n"))?.stress)
        }
        "section_shear_stress" => {
            let bolt = StressedArea::shear(&q.thread(), q.section(), 1, 1)?;
            Answer::Stress(bolt.under(q.n("load_n"))?.stress)
        }
        "section_shear_load" => {
            let (bolts, planes) = (q.count("bolts"), q.count("planes"));
            let bolts = StressedArea::shear(&q.thread(), q.section(), bolts, planes)?;
            Answer::Force(bolts.load_at(ksi(q.number("allowable_ksi")), 1.0)?)
        }
        "section_tension_load" => {
            let bolts = StressedArea::tension(&q.thread(), q.section(), q.count("bolts"))?;
            Answer::Force(bolts.load_at(q.mpa("allowable_mpa"), 1.0)?)
        }
        "section_tension_stress" => {
            let bolts = StressedArea::tension(&q.thread(), q.section(), q.count("bolts"))?;
            Answer::Stress(bolts.under(q.n("load_n"))?.stress)
        }
        // F'nt of AISC 360: the tension left beside the shear, on the area of one bolt.
        "aisc_tension_left" => {
            let area = square_inches(q.number("area_in2"));
            let shear = pounds_force(1e3 * q.number("shear_kip") / q.number("bolts"));
            let (rv, rt) = (0.5 * ksi(48.0) * area, 0.5 * ksi(90.0) * area);
            let left = InteractionRule::Aisc360.tension_beside(shear, rv, rt, Zone::Thread)?;
            left.derivation().check()?;
            Answer::Stress(2.0 * left.load / area)
        }
        "cover_force" => Answer::Force(q.cover()?.force),
        "cover_share" => Answer::Force(q.cover()?.share),
        "cover_area" => Answer::Area(q.cover()?.demand(q.mpa("allowable_mpa"))?.area()),
        "cover_thread" => {
            let demand = q.cover()?.demand(q.mpa("allowable_mpa"))?;
            let least = demand.least_thread(q.series(), BoltSection::PrintedStressArea)?;
            Answer::Thread(least.thread)
        }
        "cover_spacing" => Answer::Length(q.cover()?.spacing(q.mm("circle_mm"))?),
        "rule_of_thumb" => {
            let least = q
                .cover()?
                .demand(q.mpa("allowable_mpa"))?
                .least_diameter()?;
            Answer::Length(least.nominal_by_rule_of_thumb())
        }
        "spacing_least" => Answer::Length(q.spacing_rule().limits()?.0),
        "spacing_greatest" => Answer::Length(q.spacing_rule().limits()?.1),
        "length" => Answer::Length(q.length()?.screw.nominal),
        "length_threads" => Answer::Number(q.length()?.protruding_threads),
        "en_shear" | "bs_shear" => {
            let (thread, english) = (q.thread(), row["question"] == "bs_shear");
            let class = if english { "8.8" } else { q.text("class") };
            let grade: BoltGrade = class.parse()?;
            let strength = grade.strength(thread.nominal_diameter())?;
            let planes = if english { 1 } else { q.count("planes") };
            let planes = LoadedPlane::equal(&vec![Zone::Thread; planes]);
            let method = if english {
                ShearMethod::Bs5950
            } else {
                ShearMethod::En1993
            };
            let (each, none) = (PlaneRule::Each, ConnectionFacts::default());
            let shear =
                shear_resistance_on_printed_area(&thread, &strength, &planes, each, method, &none)?;
            Answer::Force(shear.resistance.at(Level::Design)?)
        }
        "en_tension" | "bs_tension" => {
            let (thread, english) = (q.thread(), row["question"] == "bs_tension");
            let strength = PropertyClass::Class8_8.strength(thread.nominal_diameter())?;
            let (method, head) = if english {
                (TensionMethod::Bs5950Exact, HeadShape::OnFace)
            } else {
                (TensionMethod::En1993, HeadShape::Countersunk)
            };
            let tension = bolt_tension(&thread, &strength, method, head, None)?;
            let printed = tension.on_printed_area()?;
            printed.derivation().check()?;
            Answer::Force(printed.resistance.at(Level::Design)?)
        }
        other => panic!("{other}"),
    })
}

/// Whether the answer is farther from the print than its rounding, or another thread.
fn differs(row: &Row, printed: &str) -> bool {
    let found = match answer(row).unwrap_or_else(|error| panic!("{}: {error}", row["id"])) {
        Answer::Thread(thread) => return thread.to_string() != printed,
        Answer::Number(number) => number,
        Answer::Force(found) => match row["unit"].as_str() {
            "N" => found.get::<force::newton>(),
            "kN" => found.get::<force::kilonewton>(),
            "kip" => found.get::<shankline::units::kip>(),
            other => panic!("{other}"),
        },
        Answer::Length(found) => match row["unit"].as_str() {
            "mm" => found.get::<length::millimeter>(),
            "in" => found.get::<length::inch>(),
            other => panic!("{other}"),
        },
        Answer::Area(found) => found.get::<area::square_millimeter>(),
        Answer::Stress(found) => match row["unit"].as_str() {
            "MPa" => found.get::<pressure::megapascal>(),
            "psi" => found.get::<shankline::units::pound_force_per_square_inch>(),
            "ksi" => found.get::<shankline::units::kip_per_square_inch>(),
            other => panic!("{other}"),
        },
    };
    let (printed, tolerance): (f64, f64) =
        (printed.parse().unwrap(), row["tolerance"].parse().unwrap());
    let apart = (found - printed).abs();
    // Half a digit of a decimal fraction is no binary one.
    let tolerance = tolerance * (1.0 + 1e-6);
    if apart > tolerance {
        eprintln!(
            "{} {}: {found}, printed {printed}",
            row["id"], row["question"]
        );
    }
    apart > tolerance
}

#[test]
fn prints_are_met_within_their_rounding() {
    let rows = csv_rows("tests/data/textbook_questions.csv");
    let wrong: Vec<_> = rows
        .iter()
        .filter(|row| differs(row, &row["expected"]))
        .map(|row| {
            format!(
                "{} {} printed {}",
                row["id"], row["question"], row["expected"]
            )
        })
        .collect();
    assert!(
        wrong.is_empty(),
        "{} of {}: {wrong:#?}",
        wrong.len(),
        rows.len()
    );
    assert!(rows.len() >= 60, "only {}", rows.len());
}

/// Prints that are wrong or round in between, each with a reason: the crate gives what is right, and not them.
#[test]
fn exceptions_are_exceptions() {
    for row in csv_rows("tests/data/textbook_exceptions.csv") {
        assert!(!row["reason"].is_empty());
        assert!(differs(&row, &row["printed"]), "{} is met", row["id"]);
        assert!(
            !differs(&row, &row["right"]),
            "{} {}",
            row["id"],
            row["right"]
        );
    }
}
