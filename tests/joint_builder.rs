//! A joint from its builder: what is taken for granted is said, what is said is kept, and nothing that matters is
//! made up.

use proptest::prelude::*;
use shankline::joint::{
    Account, Environment, Fact, Finish, Joint, JointBuilder, JointMethods, OwnStrength, Pattern,
    Prying, Repeats, Scope, TappedHole, TappedPart, Tightening,
};
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::tables::galvanic::Exposure;
use shankline::tables::holes::{ClearanceHole, HoleFit};
use shankline::units::celsius;

fn facts(joint: &Joint) -> Vec<Fact> {
    joint.granted.iter().map(|granted| granted.fact).collect()
}

fn described(builder: JointBuilder, name: &str) -> JointBuilder {
    builder
        .ply(name, "12 mm")
        .material("S275 steel")
        .end_distance("40 mm")
        .edge_distance("40 mm")
        .width("80 mm")
}

fn lap(thread: &str) -> JointBuilder {
    unloaded(thread).across("4 kN")
}

fn unloaded(thread: &str) -> JointBuilder {
    described(described(Joint::builder(thread), "bracket"), "rail")
}

/// With nothing said but plies and load, everything else is granted and listed.
#[test]
fn what_nobody_said_is_listed() {
    let joint = lap("M12").build().unwrap();
    let all = [
        Fact::Product,
        Fact::Grade,
        Fact::BoltFinish,
        Fact::Temperature,
        Fact::Exposure,
        Fact::Surroundings,
        Fact::Nut,
        Fact::NutGrade,
        Fact::NutFinish,
        Fact::Repeats,
        Fact::Shock,
        Fact::Washers,
        Fact::Holes,
        Fact::ShearPlanes,
        Fact::Pattern,
        Fact::Tightening,
        Fact::Rules,
        Fact::Methods,
    ];
    assert_eq!(facts(&joint), all);
    let verdict = joint.check().unwrap();
    assert_eq!(verdict.granted, joint.granted);
    let text = verdict.render(UnitSystem::Si).to_string();
    for granted in &joint.granted {
        assert!(text.contains(&granted.to_string()), "{granted}\n{text}");
    }
    assert_eq!(verdict.word(), Word::Holds, "{text}");
    // The word says so itself: what is read first may be all that is read.
    let headline = verdict.headline(UnitSystem::Si);
    assert_eq!(
        headline,
        "HOLDS (the whole joint), with 18 facts taken for granted"
    );
}

/// What is said is not listed, and nothing is.
#[test]
fn what_is_said_is_not_granted() {
    let joint = lap("M12")
        .product(ScrewProduct::Iso4017)
        .grade("10.9")
        .finish(Finish::ZincFlake)
        .environment(Environment::workshop())
        .nut(NutStyle::Iso4032)
        .nut_grade("ISO 898-2 class 10")
        .repeats(Repeats::Never)
        .shock_factor(1.0)
        .washers(WasherStyle::Iso7090)
        .holes(HoleFit::Close)
        .shear_planes([1])
        .pattern(Pattern::Single)
        .snug()
        .rules(LengthRules::fabrication(UnitSystem::Si))
        .design_factor(2.0)
        .build()
        .unwrap();
    assert_eq!(joint.granted, []);
    assert_eq!(joint.stack.plies()[0].hole, Some(millimetres(13.0)));
    assert_eq!(joint.bolt.grade, PropertyClass::Class10_9.into());
    assert_eq!(joint.to_builder().build().unwrap(), joint);
}

/// Nothing is made up where it could hurt: materials, distances, prying, load factors and torque are asked for.
#[test]
fn what_matters_is_asked_for() {
    let bare = Joint::builder("M12").ply("a", "12 mm").ply("b", "12 mm");
    let sheared = bare
        .clone()
        .across("4 kN")
        .build()
        .unwrap()
        .check()
        .unwrap();
    assert_eq!(sheared.word(), Word::Undecided);
    let wanted: Vec<&str> = sheared
        .to_decide()
        .iter()
        .map(|(need, _)| need.name())
        .collect();
    for name in ["material", "end distance", "edge distance"] {
        assert!(wanted.contains(&name), "{name}: {wanted:?}");
    }
    let pulled = bare.along("4 kN").build().unwrap().check().unwrap();
    assert_eq!(pulled.account(Mode::Prying), Account::Missing);
    let factored = lap("M12").methods(JointMethods::en_1993()).build().unwrap();
    let factored = factored.check().unwrap();
    assert_eq!(factored.account(Mode::Loads), Account::Missing);
}

/// The parts that are taken go with the thread, the grade and the place.
#[test]
fn what_is_taken_goes_together() {
    let fine = lap("M12x1.25").build().unwrap();
    assert_eq!(fine.bolt.product, ScrewProduct::Iso8765);
    let inch = lap("1/2-13 UNC").build().unwrap();
    assert_eq!(inch.bolt.product, ScrewProduct::HexCapScrew);
    assert_eq!(inch.bolt.grade, SaeGrade::Grade5.into());
    let nut = inch.nut.unwrap();
    assert_eq!(
        (nut.style, nut.grade),
        (NutStyle::Hex, Some(NutGrade::SaeJ995Grade5))
    );
    let shaken = lap("M12").vibration(true).build().unwrap();
    assert_eq!(shaken.nut.unwrap().style, NutStyle::Iso7040);
    let turning = lap("M12").vibration(true).rotates(true).build().unwrap();
    assert_eq!(
        turning.nut.unwrap().style.locking().to_string(),
        "slotted nut with cotter pin"
    );
    let stainless = lap("M12")
        .grade("A4-70")
        .exposure(Exposure::Harsh)
        .build()
        .unwrap();
    let nut = stainless.nut.unwrap();
    assert_eq!(nut.grade, Some(NutGrade::Iso3506_2ClassA4_70));
    assert_eq!(nut.finish, stainless.bolt.finish);
    // A stronger bolt gets a stronger nut, another thread other holes and washers.
    let stronger = lap("M12")
        .build()
        .unwrap()
        .to_builder()
        .grade("10.9")
        .build()
        .unwrap();
    assert_eq!(stronger.nut.unwrap().grade, Some(NutGrade::Iso898_2Class10));
    let larger = stronger.to_builder().thread("M20").build().unwrap();
    assert_eq!(larger.stack.plies()[0].hole, Some(millimetres(22.0)));
    assert_eq!(
        larger.stack.washers_under_head()[0].thickness.nominal,
        millimetres(3.0)
    );
    assert_eq!(larger.bolt.grade, PropertyClass::Class10_9.into());
}

#[test]
fn a_tapped_part_takes_the_place_of_the_nut() {
    let bed = TappedPart::new("bed")
        .thread(
            millimetres(18.0),
            TappedHole::Blind {
                depth: millimetres(30.0),
            },
        )
        .material("ASTM A36 steel");
    let joint = described(Joint::builder("M12"), "foot")
        .tapped(bed)
        .across("2 kN")
        .build()
        .unwrap();
    assert_eq!(joint.nut, None);
    assert_eq!(joint.stack.shear_planes(), [1]);
    assert!(joint.stack.washers_under_nut().is_none());
    assert!(!facts(&joint).contains(&Fact::Nut));
}

type Change = fn(&mut Joint);

/// What was set by hand on the joint is said: making it again keeps it, and no answer calls it granted.
#[test]
fn what_is_set_by_hand_is_kept() {
    let changes: [(Fact, Change); 9] = [
        (Fact::Grade, |joint| {
            joint.bolt.grade = PropertyClass::Class4_6.into();
        }),
        (Fact::Shock, |joint| {
            joint.load.shock_factor = 4.0;
        }),
        (Fact::Temperature, |joint| {
            joint.environment.hottest = celsius(400.0);
        }),
        (Fact::Surroundings, |joint| {
            joint.environment.vibration = true;
        }),
        (Fact::Pattern, |joint| {
            joint.pattern = Pattern::Rows {
                along: 5,
                across: 2,
            }
        }),
        (Fact::Methods, |joint| {
            joint.methods = JointMethods::machine_design(4.0);
        }),
        (Fact::Nut, |joint| {
            joint.nut = joint.nut.map(|nut| JointNut {
                style: NutStyle::Iso4035,
                ..nut
            });
        }),
        (Fact::Tightening, |joint| {
            joint.tightening = None;
        }),
        (Fact::Exposure, |joint| {
            joint.environment.exposure = Exposure::Harsh;
        }),
    ];
    for (fact, change) in changes {
        let mut joint = lap("M12").build().unwrap();
        change(&mut joint);
        let verdict = joint.check();
        let listed = verdict.iter().flat_map(|verdict| &verdict.granted);
        assert!(listed.clone().all(|granted| granted.fact != fact), "{fact}");
        if fact == Fact::Tightening {
            continue; // nobody says how it is tightened: a builder takes that for granted anew
        }
        let again = joint.to_builder().build().unwrap();
        // What goes with it may follow, the thing itself stays.
        let (mut kept, mut wanted) = (again.clone(), joint.clone());
        (kept.granted, wanted.granted) = (Vec::new(), Vec::new());
        kept.nut = wanted.nut;
        assert_eq!(kept, wanted, "{fact}");
        assert!(facts(&again).iter().all(|own| *own != fact), "{fact}");
    }
}

/// Holes that were said stay: in another thread, beside others that were not, and when a bolt is chosen.
#[test]
fn holes_that_were_said_stay() {
    let mixed = |hole: &str| {
        described(Joint::builder("M12"), "a")
            .hole(hole)
            .ply("b", "20 mm")
            .material("S275 steel")
            .end_distance("40 mm")
            .edge_distance("40 mm")
            .width("80 mm")
            .across("4 kN")
    };
    let joint = mixed("13.5 mm").build().unwrap(); // as the normal fit has it
    let holes = |joint: &Joint| [0, 1].map(|at| joint.stack.plies()[at].hole.unwrap());
    let smaller = joint.to_builder().thread("M8").build().unwrap();
    assert_eq!(holes(&smaller), [millimetres(13.5), millimetres(9.0)]);
    // A hole of 20 mm is too wide for M12, and no choice makes it smaller.
    let wide = mixed("20 mm").build().unwrap();
    assert!(!wide.check().unwrap().holds());
    assert!(mixed("20 mm").choose().unwrap().best().is_none());
    // A fit that is said of a joint again is that of every ply.
    let close = joint.to_builder().holes(HoleFit::Close).build().unwrap();
    assert_eq!(holes(&close), [millimetres(13.0); 2]);
    // What is chosen is drilled for the thread that is chosen, by the fit that was said.
    let loose = described(described(Joint::any_size(UnitSystem::Si), "a"), "b")
        .across("4 kN")
        .holes(HoleFit::Loose)
        .choose()
        .unwrap();
    let loose = loose.best_joint().unwrap().unwrap();
    let hole = ClearanceHole::find(&loose.bolt.thread, HoleFit::Loose).unwrap();
    assert_eq!(holes(&loose), [hole.diameter_min; 2]);
}

/// A bare nut is of the steel of its grade, not of that of the bolt; a bare metal of another steel is refused.
#[test]
fn a_bare_part_is_of_the_steel_of_its_grade() {
    use shankline::tables::galvanic::Metal;
    let mixed = lap("M12")
        .grade("A2-70")
        .nut_grade("ISO 898-2 class 8")
        .build()
        .unwrap();
    assert_eq!(mixed.nut.unwrap().finish, Some(Finish::Bare(Metal::Steel)));
    let martensitic = lap("M12").grade("C1-70").build().unwrap();
    assert_eq!(
        martensitic.bolt.finish,
        Some(Finish::Bare(Metal::Stainless12Chromium))
    );
    let false_steel = lap("M12")
        .finish(Finish::Bare(Metal::Stainless18Chromium))
        .build();
    assert!(false_steel.unwrap().check().is_err());
}

/// A low nut of one's own is not strong by the word of its proof stress; a bolt of a set wants the nut of the set.
#[test]
fn low_nuts_and_foreign_nuts_are_not_passed_over() {
    use shankline::joint::{NutProof, OwnNut};
    use shankline::parts::Locking;
    let with_height = |height: f64| {
        let height = Spread::exact(millimetres(height));
        let mut nut = OwnNut::new("turned nut (invented)", height, Locking::None);
        nut.proof = Some(NutProof::Stress(megapascals(850.0)));
        nut.bearing_diameter = Some(millimetres(17.0));
        let joint = lap("M12").own_nut(nut).finish(Finish::ZincFlake);
        joint.build().unwrap().check().unwrap()
    };
    assert_eq!(with_height(10.8).word(), Word::Holds);
    let low = with_height(3.0);
    assert_eq!(low.account(Mode::Stripping), Account::Missing);
    assert_ne!(low.word(), Word::Holds);
    let foreign = lap("M16")
        .product("EN 14399-4")
        .grade("10.9")
        .build()
        .unwrap();
    assert_eq!(
        foreign.check().unwrap().account(Mode::Pairing),
        Account::Missing
    );
}

/// Two parts in one place are refused, and details after the tapped part.
#[test]
fn two_parts_in_one_place_are_refused() {
    let bed = || TappedPart::new("bed").thread(millimetres(18.0), TappedHole::Through);
    let foot = || described(Joint::builder("M12"), "foot");
    assert!(foot().tapped(bed()).nut("ISO 7042").build().is_err());
    assert!(foot().tapped(bed()).material("S355 steel").build().is_err());
    assert!(lap("M12").length("60 mm").choose().is_err());
}

/// Washers follow the thread, and another style takes their place.
#[test]
fn washers_follow() {
    let joint = lap("M12").washers("ISO 7090").build().unwrap();
    let larger = joint.to_builder().thread("M16").build().unwrap();
    let thickness = |joint: &Joint| joint.stack.washers_under_head()[0].thickness.nominal;
    assert_eq!(
        (thickness(&joint), thickness(&larger)),
        (millimetres(2.5), millimetres(3.0))
    );
    let wide = joint.to_builder().washers("ISO 7093").build().unwrap();
    assert_eq!(wide.stack.washers_under_head().len(), 1);
    let none = joint.to_builder().no_washers().build().unwrap();
    assert!(none.stack.washers_under_head().is_empty() && none.stack.washers_under_nut().is_none());
}

/// The planes between more than two plies say what they mean for the load; a load that comes later gets its planes.
#[test]
fn planes_say_how_the_plies_pull() {
    let three = described(lap("M12"), "cover").build().unwrap();
    let planes = three
        .granted
        .iter()
        .find(|own| own.fact == Fact::ShearPlanes);
    assert!(planes.unwrap().value.contains("in turn"));
    let pulled = described(described(Joint::builder("M12"), "a"), "b").along("4 kN");
    let both = pulled
        .build()
        .unwrap()
        .to_builder()
        .across("2 kN")
        .build()
        .unwrap();
    assert_eq!(both.stack.shear_planes(), [1]);
}

/// A title of several lines does not put a word above the word.
#[test]
fn a_title_is_one_line() {
    let joint = Joint::builder("M12")
        .title("a\n\nHOLDS")
        .ply("a", "12 mm")
        .ply("b", "12 mm");
    let report = joint
        .across("2 kN")
        .build()
        .unwrap()
        .report(UnitSystem::Si)
        .unwrap();
    assert!(report.to_string().starts_with("a  HOLDS\n"));
}

/// The first thing that cannot be read is what is refused.
#[test]
fn what_cannot_be_read_is_refused() {
    let refused = |builder: JointBuilder| builder.build().unwrap_err().to_string();
    for (builder, named) in vec![
        (Joint::builder("M12").ply("a", "12"), "\"12\""),
        (Joint::builder("N12").ply("a", "12 mm"), "N12"),
        (lap("M12").grade("super"), "super"),
        (lap("M12").across("4 mm"), "4 mm"),
        (lap("M12").hole("wide"), "wide"),
        (Joint::builder("M12").material("S275 steel"), "before"),
        (Joint::builder("M12"), "plies"),
        (unloaded("M12").across("-4 kN"), "load"),
        (lap("M13"), "M13"),
    ] {
        let checked = match builder.clone().build() {
            Ok(joint) => joint.check().unwrap_err().to_string(),
            Err(_) => refused(builder),
        };
        assert!(checked.contains(named), "{named}: {checked}");
    }
    // NaN and infinity go no further.
    let nan = unloaded("M12").across(newtons(f64::NAN)).build().unwrap();
    assert!(nan.check().is_err());
}

/// An error in `main` reads as a sentence.
#[test]
fn an_error_prints_as_a_sentence() {
    let error = Joint::builder("M12").ply("a", "12").build().unwrap_err();
    assert_eq!(format!("{error:?}"), error.to_string());
}

proptest! {
    /// A joint of a builder is made again by its builder, whatever was said; only what was not said is granted.
    #[test]
    fn a_joint_is_made_again(said in 0_u32..1 << 14, load in 0.0..20.0_f64) {
        let is = |bit: u32| said & (1 << bit) != 0;
        let mut builder = described(described(Joint::builder("M16"), "a"), "b").across(newtons(1e3 * load));
        if is(0) { builder = builder.grade("10.9"); }
        if is(1) { builder = builder.product(ScrewProduct::Iso4017); }
        if is(2) { builder = builder.finish(Finish::ZincPlated { baked: true }); }
        if is(3) { builder = builder.nut(NutStyle::Iso7042); }
        if is(4) { builder = builder.washers(WasherStyle::Iso7090); }
        if is(5) { builder = builder.holes(HoleFit::Loose); }
        if is(6) { builder = builder.rows(2, 1).pitch("60 mm"); }
        if is(7) { builder = builder.vibration(true); }
        if is(8) { builder = builder.refits(2); }
        if is(9) { builder = builder.temperatures("-10 C", "60 C"); }
        if is(10) { builder = builder.tightening(Tightening::Snug); }
        if is(11) { builder = builder.along("3 kN").prying(Prying::None); }
        if is(12) { builder = builder.design_factor(1.5); }
        if is(13) && !is(4) { builder = builder.no_washers(); }
        let joint = builder.build().unwrap();
        prop_assert_eq!(&joint.to_builder().build().unwrap(), &joint);
        let granted = facts(&joint);
        for (bit, fact) in [(0, Fact::Grade), (1, Fact::Product), (2, Fact::BoltFinish), (3, Fact::Nut),
            (5, Fact::Holes), (6, Fact::Pattern), (9, Fact::Temperature), (10, Fact::Tightening), (12, Fact::Methods)] {
            prop_assert_eq!(granted.contains(&fact), !is(bit), "{:?}", fact);
        }
        prop_assert!(joint.check().is_ok());
    }
}

/// A fact is said once: another value later in the same breath is a slip, and neither of the two wins.
#[test]
fn what_is_said_twice_and_not_alike_is_refused() {
    type Says = fn(JointBuilder) -> JointBuilder;
    let lap = || {
        let first = Joint::builder("M12")
            .ply("a", "10 mm")
            .material("S235 steel");
        first.ply("b", "10 mm").across("2 kN")
    };
    let twice: [(&str, Says, Says); 23] = [
        ("grade of the bolt", |b| b.grade("8.8"), |b| b.grade("10.9")),
        (
            "product",
            |b| b.product("ISO 4014"),
            |b| b.product("ISO 4017"),
        ),
        ("length", |b| b.length("50 mm"), |b| b.length("60 mm")),
        (
            "coating of the nut",
            |b| b.finish(Finish::ZincFlake),
            |b| b.nut_finish(Finish::HotDipGalvanized),
        ),
        ("the nut", |b| b.nut("ISO 4032"), |b| b.nut("ISO 7040")),
        (
            "washers",
            |b| b.washers("ISO 7090"),
            JointBuilder::no_washers,
        ),
        ("material", |b| b.material("S235"), |b| b.material("S355")),
        ("hole", |b| b.hole("13 mm"), |b| b.hole("14 mm")),
        ("width", |b| b.width("50 mm"), |b| b.width("500 mm")),
        (
            "end distance",
            |b| b.end_distance("30 mm"),
            |b| b.end_distance("3 mm"),
        ),
        ("load across", |b| b, |b| b.across("20 kN")),
        ("load along", |b| b.along("1 kN"), |b| b.along("2 kN")),
        (
            "shock factor",
            |b| b.shock_factor(2.0),
            |b| b.shock_factor(1.0),
        ),
        (
            "load factor",
            |b| b.load_factor(1.5),
            |b| b.load_factor(1.0),
        ),
        (
            "shaken",
            |b| b.environment(Environment::workshop()),
            |b| b.vibration(true),
        ),
        (
            "temperatures",
            |b| b.temperatures("0 C", "60 C"),
            |b| b.temperatures("0 C", "20 C"),
        ),
        ("taken apart", |b| b.refits(3), |b| b.refits(0)),
        (
            "methods",
            |b| b.design_factor(3.0),
            |b| b.design_factor(2.0),
        ),
        ("pattern", |b| b.rows(2, 1), |b| b.pattern(Pattern::Single)),
        (
            "shear planes",
            |b| b.shear_planes([1]),
            |b| b.shear_planes([]),
        ),
        ("scope", |b| b.scope(Scope::Joint), |b| b.scope(Scope::Bolt)),
        ("the thread", |b| b, |b| b.thread("M16")),
        (
            "grade of the bolt",
            |b| b.grade("8.8"),
            |b| b.own_strength(OwnStrength::new("shop steel", megapascals(900.0))),
        ),
    ];
    for (what, first, second) in twice {
        let error = second(first(lap())).build().expect_err(what).to_string();
        assert!(error.contains("said twice"), "{what}: {error}");
        assert!(error.contains(what), "{what}: {error}");
        // Said alike, it is said once.
        assert_eq!(
            first(first(lap())).build().unwrap(),
            first(lap()).build().unwrap(),
            "{what}"
        );
        // A joint that is made again may be changed.
        let joint = first(lap()).build().unwrap();
        let changed = second(joint.to_builder());
        assert!(
            changed.clone().build().is_ok(),
            "{what}: {:?}",
            changed.build()
        );
        let back_and_forth = first(second(joint.to_builder()));
        let is_back = back_and_forth.build();
        assert!(is_back.is_err() || first(lap()) == lap(), "{what}");
    }
    // Of another ply it is another fact.
    let two = Joint::builder("M12").ply("a", "10 mm").material("S235");
    assert!(two.ply("b", "10 mm").material("S355").build().is_ok());
}
