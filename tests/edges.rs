//! Faults found at the edges of the tables, of the choices and of the workings, each held by a test that fails
//! without its repair.

use proptest::prelude::*;
use shankline::derivation::Format;
use shankline::joint::{
    Arrangement, BoltInHand, Change, CutRule, Environment, Goal, NutChoice, Reason, ToDo,
    ToleranceChain, ToleranceMethod, WantedBolt,
};
use shankline::preload::ElasticJoint;
use shankline::prelude::*;
use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin, share_in_sleeve};
use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
use shankline::strength::timber::TimberMethod;
use shankline::tables::plies::PlyMaterial;
use shankline::tables::screws::HexCapScrew;
use shankline::tension::{AiscBasis, AiscFlange, Cones, Layer};
use shankline::units::{Length, newtons_per_millimetre, shown};

const HAIR: Length = millimetres(1e-6);

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

fn thread(text: &str) -> Thread {
    text.parse().unwrap()
}

// --- Hex cap screws -------------------------------------------------------------------------------------

/// ASME B18.2.1 threads a screw to the head where less than 2.5 pitches of body would be left: the limits of 14 of
/// the 17 printed sizes follow from it. Where the read limits say otherwise (1, 2, 2-1/4 and 2-1/2 in), no shank
/// is claimed, and the thread is taken to begin no nearer to the head for it.
#[test]
fn no_hex_cap_screw_claims_a_shank_that_the_rule_threads_to_the_head() {
    let mut without = Vec::new();
    for row in HexCapScrew::all() {
        let name = format!("{}-{}", row.size, row.coarse_threads_per_inch);
        // 1-5/8 and 1-7/8 have no coarse thread in the standard, nor a limit that was read.
        let Ok(coarse) = name.parse() else { continue };
        let screws = ScrewSeries::new(ScrewProduct::HexCapScrew, &coarse).unwrap();
        let pitch = inches(1.0 / row.coarse_threads_per_inch);
        for eighths in 2..=96 {
            let nominal = inches(f64::from(eighths) / 8.0);
            let Ok(screw) = screws.length(nominal) else {
                continue;
            };
            let body = screw.body_length_min;
            assert!(
                body == inches(0.0) || body >= 2.5 * pitch - HAIR,
                "{name} x {:.3}: {:.3} of shank",
                shown(nominal, UnitSystem::UsCustomary),
                shown(body, UnitSystem::UsCustomary),
            );
            if body == inches(0.0) && !screw.fully_threaded {
                // The nut is not let nearer to the head than the thread length says.
                assert!(screw.grip_gaging_length_max > 5.0 * pitch);
                without.push(format!("{} x {}", row.size, f64::from(eighths) / 8.0));
            }
        }
    }
    assert_eq!(
        without,
        [
            "1 x 3.125",
            "2 x 5.875",
            "2 x 6.125",
            "2-1/4 x 6.625",
            "2-1/2 x 7.25",
            "2-1/2 x 7.375"
        ]
    );
}

/// Whoever asks for a size that is not there is told the nearest.
#[test]
fn the_nearest_size_of_a_screw_is_named() {
    for (product, name, nearest) in [
        (ScrewProduct::Iso4014, "M18", "the nearest is M16"),
        (ScrewProduct::Iso4017, "M7", "the nearest is M6"),
        (
            ScrewProduct::HexCapScrew,
            "#10-24 UNC",
            "the nearest is 1/4",
        ),
        (ScrewProduct::HexCapScrew, "3-1/2-4 UNC", "the nearest is 3"),
    ] {
        let error = ScrewSeries::new(product, &thread(name))
            .unwrap_err()
            .to_string();
        assert!(error.ends_with(nearest), "{error}");
    }
}

// --- Which thread is it ---------------------------------------------------------------------------------

/// A caliper reads to 0.05 mm and a gauge to two in the hundred: within that a common thread comes before one
/// that nobody stocks.
#[test]
fn a_common_thread_comes_before_an_exotic_one_within_the_uncertainty() {
    let found = Thread::identify(millimetres(7.80), inches(1.0 / 20.0)).unwrap();
    let names: Vec<_> = found.iter().map(|found| found.thread.to_string()).collect();
    assert_eq!(names[0], "M8", "{names:?}");
    assert!(names.contains(&"5/16-20 UN".to_string()), "{names:?}");
    let mm = millimetres;
    let bolt =
        BoltInHand::by_caliper(mm(7.80), inches(0.05), mm(60.0), mm(30.0), mm(36.0)).unwrap();
    assert_eq!(bolt.thread, thread("M8"));
}

/// ISO 965-2 lets the crest of an M5-6g bolt lie between 4.826 and 4.976 mm: 4.83 mm is M5 and #10-32 (4.826 mm)
/// alike, and the measures cannot tell.
#[test]
fn two_common_threads_are_not_guessed_between() {
    let mm = millimetres;
    let error =
        BoltInHand::by_caliper(mm(4.83), mm(0.8), mm(60.0), mm(30.0), mm(36.0)).unwrap_err();
    let text = error.to_string();
    assert!(text.contains("M5") && text.contains("#10-32 UNF"), "{text}");
}

#[test]
fn look_alikes_that_start_are_named() {
    for (one, other) in [
        ("M6", "1/4-20 UNC"),
        ("M12", "1/2-13 UNC"),
        ("M24", "1-8 UNC"),
    ] {
        assert!(thread(one).look_alikes().contains(&thread(other)), "{one}");
        assert!(
            thread(other).look_alikes().contains(&thread(one)),
            "{other}"
        );
    }
    // Nor is everything alike.
    assert!(
        thread("M10")
            .look_alikes()
            .iter()
            .all(|other| other.to_string().starts_with("3/8"))
    );
}

/// Machinery's Handbook, 27th edition, Table 3, prints limits for 5-3/4 and 6 in with 12 and 16 threads.
#[test]
fn the_largest_printed_constant_pitch_threads_are_there() {
    for text in ["5-3/4-12 UN", "5-3/4-16 UN", "6-12 UN", "6-16 UN"] {
        assert_eq!(text.parse::<Thread>().unwrap().to_string(), text);
    }
}

#[test]
fn improper_fractions_are_no_size() {
    for text in [
        "8/6-18 UNS",
        "9/8-7 UNC",
        "4/4-8 UNC",
        "1-8/6-12 UNS",
        "1 9/8-6 UN",
        "1-4/4-6 UN",
    ] {
        assert!(
            text.parse::<Thread>().is_err(),
            "{text} reads as {}",
            text.parse::<Thread>().unwrap()
        );
    }
}

// --- Nuts -----------------------------------------------------------------------------------------------

/// A thin nut strips before the bolt breaks: none is offered without a word.
#[test]
fn no_thin_nut_is_offered_among_full_ones() {
    for name in ["M12", "1/2-13 UNC", "3/8-16 UNC", "M20"] {
        let choice = NutChoice::new(&thread(name), &Environment::workshop()).unwrap();
        for option in &choice.options {
            for style in &option.styles {
                let label = style.to_string();
                let thin = label.contains("thin") || label.contains("jam");
                assert!(!thin, "{name}: {label}");
            }
        }
    }
}

// --- Prying ---------------------------------------------------------------------------------------------

/// The Manual advises against counting more flange than 2 b per bolt, it does not forbid it.
#[test]
fn a_long_tributary_length_is_cautioned_not_refused() {
    let flange = |p: f64| {
        AiscFlange::new(
            AiscBasis::Lrfd,
            ksi(65.0),
            inches(0.75),
            inches(0.8125),
            inches(p),
            inches(2.0),
            inches(1.5),
        )
    };
    assert!(flange(4.0).is_ok());
    assert!(flange(6.0).is_ok());
}

// --- Frusta ---------------------------------------------------------------------------------------------

/// Half the grip on a boundary of layers: no sliver of 1e-18 m, no stiffness without end in the working.
#[test]
fn no_sliver_where_half_the_grip_is_a_boundary() {
    let cones = Cones::shigley(millimetres(12.0)).unwrap();
    let layer = |t: f64| Layer::new(millimetres(t), megapascals(205e3)).unwrap();
    for a in 1..40 {
        for b in 1..a {
            for washer in [0.5, 1.6, 2.5, 3.0] {
                let (a, b) = (f64::from(a), f64::from(b));
                let rest = a - b - washer;
                if rest <= 0.0 {
                    continue;
                }
                let layers = [layer(a), layer(b), layer(rest), layer(washer)];
                let frusta = cones.frusta(&layers).unwrap();
                assert_eq!(frusta.pieces.len(), 4, "{a} {b} {washer}");
                let text = frusta
                    .derivation()
                    .render(Format::Text, UnitSystem::Si)
                    .to_string();
                assert!(!text.contains("inf"), "{text}");
            }
        }
    }
}

#[test]
fn the_working_of_200_layers_can_be_read() {
    let cones = Cones::shigley(millimetres(12.0)).unwrap();
    for count in [1, 2, 39, 40, 41, 81, 200, 1000] {
        let layers = vec![Layer::new(millimetres(0.3), megapascals(205e3)).unwrap(); count];
        cones.frusta(&layers).unwrap().derivation().check().unwrap();
    }
}

// --- Numbers --------------------------------------------------------------------------------------------

#[test]
fn a_share_is_a_number() {
    let m = |value| millimetres(1e3 * value);
    assert!(share_in_sleeve(m(1e-302), m(0.02), m(0.01)).is_err());
    let share = share_in_sleeve(m(1e-59), m(0.02), m(0.01)).unwrap();
    assert!((0.0..=1.0).contains(&share.value), "{share:?}");
    let thin = share_in_sleeve(m(0.01), m(0.010_000_000_000_000_002), m(0.01)).unwrap();
    assert!((thin.value - 1.0).abs() < 1e-12);
    let chain = ToleranceChain::new().plus("gap", millimetres(6.0).plus_minus(millimetres(1.5)));
    let none = ToleranceChain::new().plus("gap", exact(6.0));
    let method = ToleranceMethod::RootSumSquare {
        sigmas_per_tolerance: 3.0,
        confidence: 0.95,
    };
    for chain in [chain, none] {
        let range = chain.range(method).unwrap();
        assert_eq!(range.share_below(millimetres(f64::NAN)), None);
        assert_eq!(range.share_above(millimetres(f64::NAN)), None);
        let all = range.share_below(millimetres(f64::INFINITY)).unwrap();
        assert!(all.value > 0.999_999);
    }
}

/// What no part can have is refused at the door: at the ends of the range of numbers results kept infinities,
/// and workings gave another number than they showed.
#[test]
fn absurd_strengths_and_sizes_are_refused_at_the_door() {
    let mm = millimetres;
    let joint = PinJoint::new(mm(98.0), mm(6.4), mm(50.0), mm(3.9)).unwrap();
    let strengths = |pin_yield: f64| PinStrengths {
        pin_yield: megapascals(pin_yield),
        pin_tensile: megapascals(680.0),
        ply_yield: megapascals(125.0),
    };
    assert!(en_1993_pin(&joint, &strengths(640.0)).is_ok());
    assert!(en_1993_pin(&joint, &strengths(2.6e-201)).is_err());
    let stiff = newtons_per_millimetre(5e5);
    assert!(ElasticJoint::new(mm(1.75), stiff, newtons_per_millimetre(5e-318)).is_err());
    let ply = Ply::of(
        PlyMaterial::find("ASTM A36 steel").unwrap(),
        mm(10.0),
        mm(18.0),
    );
    let method = PlyMethod::MachineDesign { design_factor: 2.0 };
    for strength in [f64::NAN, f64::INFINITY, -1.0, 0.0] {
        let strength = Some(megapascals(strength));
        for bolt in [
            PlyBolt {
                yield_strength: strength,
                ..PlyBolt::default()
            },
            PlyBolt {
                tensile_strength: strength,
                ..PlyBolt::default()
            },
        ] {
            assert!(ply.assess(mm(16.0), bolt, method).is_err(), "{strength:?}");
        }
    }
    let nds = TimberMethod::Nds {
        bending_yield: megapascals(1e-300),
        adjustment: 1.0,
    };
    assert!(nds.checked().is_err());
}

/// Small forces keep three digits.
#[test]
fn small_values_are_not_lost() {
    let si = |force| shown(force, UnitSystem::Si).to_string();
    assert_eq!(si(newtons(12.0)), "0.0120 kN");
    assert_eq!(si(newtons(1.0)), "0.00100 kN");
    assert_eq!(si(newtons(999.6)), "1.000 kN");
    assert_eq!(si(newtons(-345.0)), "-0.345 kN");
    assert_eq!(si(newtons(12345.0)), "12.35 kN");
    assert_eq!(si(newtons(0.0)), "0.00 kN");
    assert_eq!(si(newtons(1e-9)), "0.00 kN");
    assert_eq!(
        shown(megapascals(0.4), UnitSystem::Si).to_string(),
        "0.400 MPa"
    );
    assert_eq!(
        shown(megapascals(640.0), UnitSystem::Si).to_string(),
        "640 MPa"
    );
    assert_eq!(
        shown(pounds_force(2.5), UnitSystem::UsCustomary).to_string(),
        "2.50 lbf"
    );
    assert_eq!(
        shown(newton_metres(0.04), UnitSystem::Si).to_string(),
        "0.0400 N m"
    );
    // Lengths have the resolution of the trade.
    assert_eq!(
        shown(millimetres(0.012), UnitSystem::Si).to_string(),
        "0.01 mm"
    );
}

// --- Advice whose figures work --------------------------------------------------------------------------

/// The numbers of a sentence, in their order.
fn figures(text: &str) -> Vec<f64> {
    let is_part = |c: char| c.is_ascii_digit() || c == '.';
    text.split(|c: char| !is_part(c))
        .map(|part| part.trim_matches('.'))
        .filter_map(|part| part.parse().ok())
        .collect()
}

/// The change that a reader enters who has only its sentence.
fn as_read(change: &Change, system: UnitSystem) -> Vec<Change> {
    let unit = |value: f64| match system {
        UnitSystem::Si => millimetres(value),
        UnitSystem::UsCustomary => inches(value),
    };
    let figures = figures(&change.text(system));
    match *change {
        Change::FewerClearThreads { wanted, .. } => {
            vec![Change::FewerClearThreads {
                threads: figures[0],
                wanted,
            }]
        }
        Change::LessProtrusion { wanted, .. } => {
            vec![Change::LessProtrusion {
                pitches: figures[0],
                wanted,
            }]
        }
        Change::MoreProtrusion { permitted, .. } => {
            vec![Change::MoreProtrusion {
                pitches: figures[0],
                permitted,
            }]
        }
        Change::Spacer { .. } | Change::ThickerLastPly { .. } => {
            let (low, high) = (unit(figures[0]), unit(figures[1]));
            assert!(low <= high + HAIR);
            [low, high]
                .map(|at_least| match change {
                    Change::Spacer { .. } => Change::Spacer {
                        at_least,
                        at_most: high,
                    },
                    _ => Change::ThickerLastPly {
                        at_least,
                        at_most: high,
                    },
                })
                .to_vec()
        }
        Change::SpecialBolt(mut wanted) => {
            let mut figures = figures.into_iter().map(unit);
            if wanted.shank_min > millimetres(0.0) {
                wanted.shank_min = figures.next().unwrap();
            }
            wanted.thread_start_max = figures.next().unwrap();
            let mut lengths = Vec::new();
            for length in figures {
                wanted.length_min = length;
                lengths.push(Change::SpecialBolt(wanted));
            }
            lengths
        }
        _ => Vec::new(),
    }
}

fn random_arrangement() -> impl Strategy<Value = Arrangement> {
    let layers = (5.0..60.0, 5.0..60.0, 0.0..1.0, 0.0..0.6);
    let rules = (
        prop_oneof![Just(0.0), 0.1..6.0],
        0.0..4.0,
        proptest::option::of(0.3..8.0),
        0usize..4,
        any::<bool>(),
        proptest::option::of(0.2..8.0),
    );
    (layers, rules).prop_map(
        |((a, b, first, second), (clear, least, window, washers, cut, holes))| {
            let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread("M12")).unwrap();
            let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread("M12")).unwrap()).unwrap();
            let ply = |t: f64, tolerance: f64| millimetres(t).plus_minus(millimetres(tolerance));
            let stack = Stack::builder()
                .ply("a", ply(a, first))
                .ply("b", ply(b, second))
                .shear_planes([1])
                .washers_under_nut(exact(2.5), 0)
                .build()
                .unwrap();
            let mut rules = LengthRules::fabrication(UnitSystem::Si)
                .with_clear_threads(clear)
                .with_protrusion(least, window.map(|window| least + window))
                .with_washers_under_nut(washers);
            if !cut {
                rules = rules.with_cut(CutRule::Never);
            }
            if let Some(holes) = holes {
                rules = rules.with_thread_in_holes(holes);
            }
            Arrangement::new(stack, screws, nut, rules)
        },
    )
}

fn goal() -> impl Strategy<Value = Goal> {
    prop_oneof![
        Just(Goal::Fits),
        Just(Goal::NoPlaneInThread),
        Just(Goal::EveryPlaneOnShank)
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    /// Whoever enters the figures of an advice as they are printed gets a joint that does what is wanted.
    #[test]
    fn printed_figures_work_when_entered(arrangement in random_arrangement(), goal in goal()) {
        let list = arrangement.advice(goal, &[]).unwrap();
        for advice in &list.advice {
            let (last, before) = advice.changes.split_last().unwrap();
            let mut changed = arrangement.clone();
            for change in before {
                changed = change.applied(&changed).unwrap();
            }
            for system in [UnitSystem::Si, UnitSystem::UsCustomary] {
                for entered in as_read(last, system) {
                    prop_assert!(
                        entered.outcome(&changed, goal).unwrap().is_some(),
                        "\"{}\" is entered as {entered:?}, and does not do; it was {last:?}",
                        last.text(system),
                    );
                }
                let text = last.text(system);
                let longest = text.split(' ').filter(|word| word.contains('.')).map(str::len).max();
                prop_assert!(longest.unwrap_or(0) <= 9, "{text}");
            }
        }
    }

    /// A bolt in the hand that will not do: with the measures named it does, or no bolt can and that is said.
    #[test]
    fn what_to_do_can_be_done(
        arrangement in random_arrangement(),
        length in 30.0..160.0,
        shank in 0.0..1.0,
        start in 0.0..1.0,
    ) {
        let start = (0.2 + 0.7 * start) * length;
        let bolt = BoltInHand::new(
            thread("M12"),
            millimetres(length),
            millimetres(shank * start),
            millimetres(start),
        )
        .unwrap();
        let found = bolt.verdict(&arrangement.stack, arrangement.nut, arrangement.rules).unwrap();
        if !found.candidate.fits() {
            let helps = any_bolt_does(&arrangement);
            let says_no = found.to_do.iter().any(|to_do| to_do.text(UnitSystem::Si).contains("no bolt"));
            prop_assert_eq!(helps, !says_no, "{:?} {:?}", found.to_do, found.wanted);
        }
    }
}

/// Whether any bolt at all does: the shortest that reaches with each number of washers, its thread from the last
/// place it may be, its shank to there.
fn any_bolt_does(arrangement: &Arrangement) -> bool {
    let rules = arrangement.rules;
    (0..=rules.washers_under_nut_max).any(|washers| {
        let wanted = WantedBolt::of(
            &arrangement.stack,
            &thread("M12"),
            arrangement.nut,
            rules,
            washers,
        )
        .unwrap();
        let (length, start) = (wanted.length_min, wanted.thread_start_max);
        let bolt = BoltInHand::new(thread("M12"), length, start, start);
        bolt.is_ok_and(|bolt| {
            let found = bolt
                .verdict(&arrangement.stack, arrangement.nut, rules)
                .unwrap();
            found.candidate.fits()
        })
    })
}

/// "At least so much" is rounded up, in what to do and in the reasons.
#[test]
fn at_least_is_rounded_up() {
    let by = millimetres(5.8442);
    assert!(
        ToDo::LongerBolt { by }
            .text(UnitSystem::Si)
            .contains("5.85 mm")
    );
    assert!(
        ToDo::ShorterBolt { by }
            .text(UnitSystem::UsCustomary)
            .contains("0.231 in")
    ); // 0.23009
    assert!(
        Reason::TooShort { by }
            .text(UnitSystem::Si)
            .contains("5.85 mm")
    );
    // What is whole in the decimals shown stays so, whatever the sum before it lost.
    let whole = millimetres(0.1 + 0.2);
    assert!(
        ToDo::LongerBolt { by: whole }
            .text(UnitSystem::Si)
            .contains("0.30 mm")
    );
    let wanted = 1.884_966_000_000_000_1;
    let text = Change::LessProtrusion {
        pitches: 0.337,
        wanted,
    }
    .text(UnitSystem::Si);
    assert_eq!(
        text,
        "settle for 0.33 threads beyond the nut in place of 1.88"
    );
}

// --- Mutants that lived ---------------------------------------------------------------------------------

/// No cut is needed, so the window holds though there is none.
#[test]
fn a_window_holds_without_a_cut() {
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread("M10")).unwrap();
    let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread("M10")).unwrap()).unwrap();
    let stack = |ply| Stack::builder().ply("plate", exact(ply)).build().unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si).with_protrusion(1.0, Some(10.0));
    let selection = LengthSearch::new(&stack(50.0), &screws, nut, rules)
        .unwrap()
        .run()
        .unwrap();
    let best = selection.best().unwrap();
    assert!(!best.needs_cut && best.cut.is_none() && best.holds_window());
}

/// Two negative lengths would multiply to a positive area.
#[test]
fn two_negative_lengths_are_no_area() {
    let mm = millimetres;
    for (diameter, pitch, engagement) in [
        (-12.0, 1.75, -10.0),
        (12.0, -1.75, -10.0),
        (-12.0, -1.75, 10.0),
        (-12.0, -1.75, -10.0),
    ] {
        let area = shankline::thread::strip::nut_thread_area(
            mm(diameter),
            mm(-20.0),
            mm(pitch),
            mm(engagement),
        );
        assert!(area.is_err(), "{diameter} {pitch} {engagement}");
    }
    for (pitch, engagement) in [(-1.75, 10.0), (1.75, -10.0), (-1.75, -10.0)] {
        let area = shankline::thread::strip::nut_thread_area(
            mm(12.0),
            mm(10.8),
            mm(pitch),
            mm(engagement),
        );
        assert!(area.is_err(), "{pitch} {engagement}");
    }
}
