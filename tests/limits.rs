//! What there may be of everything that costs time or memory: so many are taken, one more is refused, and what is taken costs
//! hardly more each where there are many. The limits are listed in the documentation of `shankline::error`.

#![allow(clippy::cast_precision_loss)] // counts below a million

use std::ops::ControlFlow;
use std::time::{Duration, Instant};

use shankline::connection::{
    Alternation, Combination, Connection, InPlane, LoadCase, Outline, Side,
};
use shankline::error::{Amount, Error};
use shankline::joint::{
    Bin, DesignSpace, Fact, Granted, Joint, JointNeed, Objective, OnHand, OwnLength, OwnMaterial,
    OwnScrew, OwnStrength, Pattern, Prying, RuleSet, SetAside, StackBuilder, ToleranceChain,
    ToleranceMethod, shopping_list,
};
use shankline::parts::AnBolt;
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::strength::group::{BoltPattern, DeformationLaw, GroupBolt, PlaneLoad, Point};
use shankline::strength::loads::LoadTerm;
use shankline::strength::slip::{
    SlipClass, SlipFaces, SlipHole, SlipMethod, SlipPreload, slip_resistance,
};
use shankline::tables::plies::PlyMaterial;
use shankline::thread::{ThreadFit, ToleranceClass};
use shankline::units::{Length, TextProblem, parse};

fn mm(value: f64) -> Length {
    millimetres(value)
}

fn stack(plies: usize) -> Result<Stack, Error> {
    let thin = Spread::exact(mm(0.1));
    let own = (0..plies).fold(Stack::builder(), |own, n| {
        own.ply(format!("sheet {n}"), thin)
    });
    own.build()
}

/// Two plates, a bolt through them (figures invented).
fn bolt() -> shankline::joint::JointBuilder {
    Joint::builder("M16")
        .ply("plate", "10 mm")
        .material("S275 steel")
        .ply("support", "12 mm")
        .material("S275 steel")
        .washers(WasherStyle::Iso7090)
        .methods(JointMethods::en_1993())
        .load_factor(1.0)
        .prying(Prying::None)
        .rules(RuleSet::En1090.rules(UnitSystem::Si))
}

fn cases(count: usize) -> impl Iterator<Item = LoadCase> {
    (0..count).map(|n| {
        let force = [500.0 + n as f64, 0.0, 0.0].map(newtons);
        LoadCase::new(format!("case {n}"), force, [0.0; 3].map(mm))
    })
}

/// Bolts in rows and columns at 60 mm, in plates that are held at their right.
fn connection(bolts: BoltPattern, cases: impl IntoIterator<Item = LoadCase>) -> Connection {
    let far = |of: fn(&GroupBolt) -> Length| {
        let most = bolts.bolts().iter().map(|own| of(own).abs());
        2.0 * (most.fold(Length::default(), Length::max) + mm(50.0))
    };
    let (width, height) = (far(|own| own.x), far(|own| own.y));
    let outline = || {
        let half = |side: Length| 0.5 * side;
        let corner = |x: f64, y: f64| Point {
            x: x * half(width),
            y: y * half(height),
        };
        Outline::between(corner(-1.0, -1.0), corner(1.0, 1.0)).unwrap()
    };
    Connection::builder(bolt())
        .bolts(bolts)
        .plate("plate", outline())
        .held(Side::Right)
        .plate("support", outline())
        .held(Side::Left)
        .loaded("plate")
        .in_plane(InPlane::Elastic)
        .cases(cases)
        .build()
        .unwrap()
}

fn grid(rows: usize, columns: usize) -> BoltPattern {
    BoltPattern::rows_and_columns(rows, columns, mm(60.0), mm(60.0)).unwrap()
}

/// No two of them in one row or column.
fn scattered(count: usize) -> BoltPattern {
    let bolts = (0..count).map(|n| {
        let turn = n as f64 * 2.399_963; // the golden angle
        let far = 40.0 * (n as f64).sqrt();
        GroupBolt::new(mm(far * turn.cos()), mm(far * turn.sin()))
    });
    BoltPattern::new(bolts).unwrap()
}

/// So many are taken, and of one more the error says how many there may be.
fn holds(what: &str, most: usize, take: impl Fn(usize) -> Result<(), Error>) {
    assert_eq!(take(most).map_err(|why| why.to_string()), Ok(()), "{what}");
    beyond(what, most + 1, most, take(most + 1));
}

fn beyond(what: &str, count: usize, most: usize, taken: Result<(), Error>) {
    match taken {
        Err(Error::OutOfRange { value, .. }) => {
            assert_eq!(value, Amount::from(count), "{what}");
        }
        Err(Error::Mismatch(text)) => assert!(text.contains(&most.to_string()), "{what}: {text}"),
        other => panic!("{what}: {other:?}"),
    }
}

#[test]
fn numbers_of_things() {
    holds("plies", 1000, |n| stack(n).map(|_| ()));
    let washer = || JointWasher::new("shim", Spread::exact(mm(1.0)));
    let pile = |n: usize| {
        let own = Stack::builder().ply("plate", Spread::exact(mm(5.0)));
        (0..n)
            .fold(own, |own, _| own.washer_under_head(washer()))
            .build()
            .map(|_| ())
    };
    holds("washers under the head", 100, pile);
    holds("bolts of a pattern", 10_000, |n| {
        BoltPattern::rows_and_columns(n, 1, mm(60.0), mm(60.0)).map(|_| ())
    });
    holds("bolts of a pattern one by one", 10_000, |n| {
        let places = (0..n).map(|n| GroupBolt::new(mm(n as f64), mm(0.0)));
        BoltPattern::new(places).map(|_| ())
    });
    holds("corners of an outline", 200, |n| outline(n).map(|_| ()));
    holds("lengths of a chain", 10_000, |n| {
        let exact = Spread::exact(mm(1.0));
        let chain = (0..n).fold(ToleranceChain::new(), |own, _| own.plus("shim", exact));
        chain.range(ToleranceMethod::WorstCase).map(|_| ())
    });
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M8".parse().unwrap()).unwrap();
    let drawer = |bin: Bin, count| bin.product("M8 x 30", &screws, mm(30.0), count);
    holds("bolts in a drawer", 1_000_000, |n| {
        drawer(Bin::new(), n).map(|_| ())
    });
    holds("drawers", 10_000, |n| {
        (0..n)
            .try_fold(Bin::new(), |bin, _| drawer(bin, 1))
            .map(|_| ())
    });
    let need = |choices: usize| JointNeed::new("hinge", 1, (0..choices).map(|n| n.to_string()));
    holds("joints of a shopping list", 1000, |n| {
        shopping_list(&vec![need(1); n]).map(|_| ())
    });
    holds("choices of a joint", 1000, |n| {
        shopping_list(&[need(n)]).map(|_| ())
    });
    holds("bolts along a load", 1000, |along| {
        let joint = bolt().across("5 kN").build().unwrap();
        let pattern = Pattern::Rows { along, across: 1 };
        Joint { pattern, ..joint }.check().map(|_| ())
    });
    holds("lengths of a bolt of one's own", 1000, |n| {
        let lengths = (0..n).map(|n| {
            let length = mm(40.0 + 0.1 * n as f64);
            OwnLength::of_thread(Spread::exact(length), Spread::exact(mm(25.0)), mm(3.0)).unwrap()
        });
        bolt()
            .own_bolt(OwnScrew::new("long series", lengths))
            .across("5 kN")
            .build()?
            .check()
            .map(|_| ())
    });
    holds("modes set aside", Mode::ALL.len(), |n| {
        let joint = bolt().across("5 kN").build().unwrap();
        let aside = SetAside::new(Mode::BlockShear, "by hand");
        Joint {
            set_aside: vec![aside; n],
            ..joint
        }
        .check()
        .map(|_| ())
    });
}

#[test]
fn numbers_of_washers_and_friction_faces() {
    let washer = || JointWasher::new("shim", Spread::exact(mm(1.0)));
    let plate = || Stack::builder().ply("plate", Spread::exact(mm(5.0)));
    holds("washers under the nut", 100, |n| {
        plate().washers_under_nut(washer(), n).build().map(|_| ())
    });
    holds("other washers under the nut", 100, |n| {
        let all = (0..n).fold(plate(), |own, _| own.washer_under_nut(washer()));
        all.build().map(|_| ())
    });
    holds("friction faces", 1000, |n| {
        let method = SlipMethod::En1993 {
            class: SlipClass::B,
            serviceability: false,
        };
        let faces = SlipFaces::new(n, SlipHole::Standard);
        let preload = SlipPreload::Specified(newtons(1e5));
        slip_resistance(method, preload, faces, newtons(0.0)).map(|_| ())
    });
    holds("bolts across a load", 1000, |across| {
        let joint = bolt().across("5 kN").build().unwrap();
        let pattern = Pattern::Rows { along: 1, across };
        Joint { pattern, ..joint }.check().map(|_| ())
    });
    holds("things taken for granted", 1000, |n| {
        let joint = bolt().across("5 kN").build().unwrap();
        let granted = vec![Granted::new(Fact::Nut, "none of these"); n];
        Joint { granted, ..joint }.check().map(|_| ())
    });
    holds("plies of a thing taken for granted", 1000, |n| {
        let mut joint = bolt().across("5 kN").build().unwrap();
        joint.granted.truncate(1);
        joint.granted[0].plies = vec![1; n];
        joint.check().map(|_| ())
    });
}

#[test]
fn numbers_of_what_is_bought() {
    // A hundred joints with a thousand choices each, and one more with one.
    let names: Vec<String> = (0..1000).map(|n| n.to_string()).collect();
    let most = vec![JointNeed::new("hinge", 1, names); 100];
    shopping_list(&most).unwrap();
    let mut beyond_it = most;
    beyond_it.push(JointNeed::new("latch", 1, ["one more"]));
    let taken = shopping_list(&beyond_it).map(|_| ());
    beyond("choices of all joints", 100_001, 100_000, taken);
    holds("bolts of a joint to buy for", 1_000_000, |n| {
        shopping_list(&[JointNeed::new("hinge", n, ["a"])]).map(|_| ())
    });
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M8".parse().unwrap()).unwrap();
    let drawer = Bin::new().product("M8 x 30", &screws, mm(30.0), 5).unwrap();
    let thread: Thread = "M8".parse().unwrap();
    holds("joints to pick for", 1_000_000, |joints| {
        let plate = Stack::builder().ply("plate", Spread::exact(mm(18.0)));
        let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread)?)?;
        let rules = LengthRules::fabrication(UnitSystem::Si);
        let picked = drawer.pick(&plate.build()?, &thread, nut, rules, joints);
        picked.map(|_| ())
    });
}

/// What a design chooses from; the search is stopped as soon as it begins.
#[test]
fn numbers_of_a_design() {
    let stop = |_: usize, _: usize| ControlFlow::Break(());
    let joint = bolt().across("5 kN").build().unwrap();
    let begins = |space: &DesignSpace| {
        let begun = joint.design_watched(space, &[Objective::Mass], stop);
        begun.map(|begun| assert!(begun.is_break()))
    };
    let threads = [
        "M6", "M8", "M10", "M12", "M14", "M16", "M20", "M24", "M30", "M36",
    ];
    let of_threads = |count: usize| {
        let threads = threads.iter().take(count);
        DesignSpace::new()
            .threads(threads.map(|thread| thread.parse::<Thread>().unwrap()))
            .products(
                ScrewProduct::ALL
                    .iter()
                    .copied()
                    .filter(|own| *own != ScrewProduct::Own)
                    .take(10),
            )
            .grades(
                BoltGrade::ALL
                    .iter()
                    .copied()
                    .filter(|own| *own != BoltGrade::Stated)
                    .take(10),
            )
            .nut_styles(NutStyle::ALL.iter().copied().take(10))
            .washers(WasherStyle::ALL.iter().copied().take(10))
    };
    let ten = of_threads(10);
    begins(&ten).unwrap();
    let eleven = ten
        .clone()
        .washers(WasherStyle::ALL.iter().copied().take(11));
    beyond("combinations", 110_000, 100_000, begins(&eleven));
    let mut bolt = joint.bolt;
    bolt.length = Some(mm(50.0));
    holds("bolts on hand", 10_000, |n| {
        begins(&DesignSpace::new().on_hand(vec![OnHand { bolt, count: 1 }; n], 1))
    });
    let whole = connection(grid(1, 2), cases(1));
    holds("patterns", 1000, |n| {
        let begun = whole.design_watched(
            &DesignSpace::new(),
            &vec![grid(1, 2); n],
            &[Objective::Mass],
            stop,
        );
        begun.map(|begun| assert!(begun.is_break()))
    });
}

/// Load cases are looked over as a whole before any of them is worked out.
#[test]
fn numbers_of_bolts_and_cases_of_a_connection() {
    let taken = |own: &Connection| own.forces("case 0").map(|_| ());
    holds("bolts of a connection", 200, |n| {
        taken(&connection(grid(1, n), cases(1)))
    });
    let many = connection(grid(2, 100), cases(5000));
    taken(&many).unwrap();
    let one_more = connection(grid(2, 100), cases(5001));
    beyond("bolts times cases", 1_000_200, 1_000_000, taken(&one_more));
    let alternating = |count| Connection {
        alternations: vec![Alternation::new("case 0", "case 1"); count],
        ..connection(grid(2, 100), cases(3500))
    };
    taken(&alternating(500)).unwrap();
    beyond(
        "ends of what alternates",
        1_000_600,
        1_000_000,
        taken(&alternating(501)),
    );
    let mut most = connection(grid(1, 1), cases(1_000_000));
    taken(&most).unwrap();
    most.cases.extend(cases(1_000_001).skip(1_000_000));
    beyond("load cases", 1_000_001, 1_000_000, taken(&most));
    let combined = |parts: usize| {
        let own = (0..parts).map(|n| format!("case {n}"));
        let all = own.fold(Combination::new("all"), |all, name| all.plus(1.0, name));
        let last = Combination::new("last").plus(1.0, "case 0");
        Connection {
            combinations: vec![all, last],
            ..connection(grid(1, 1), cases(parts))
        }
    };
    // With the two names of the combinations the cases are two fewer than a million.
    taken(&combined(999_000)).unwrap();
    let plates = |more: usize| {
        let mut own = connection(grid(1, 2), cases(1));
        let plate = own.plates[0].clone();
        own.plates.extend(vec![plate; more]);
        own
    };
    taken(&plates(0)).unwrap();
    // Two plies.
    beyond("plates", 3, 2, taken(&plates(1)));
    let parts = |count: usize| {
        let all = (0..count).fold(Combination::new("all"), |all, n| {
            all.plus(1.0, format!("case {}", n % 2))
        });
        let mut own = connection(grid(1, 1), cases(2));
        own.combinations = vec![all];
        own
    };
    beyond(
        "parts of combinations",
        1_000_001,
        1_000_000,
        taken(&parts(1_000_001)),
    );
}

/// Of many blocks that no rule takes, here as the holes leave nothing between them, the first is told of each plate.
#[test]
fn blocks_that_are_refused_are_told_once() {
    let places = (0..40).map(|n| GroupBolt::new(mm(0.0), mm(17.0 * f64::from(n))));
    let own = connection(BoltPattern::new(places).unwrap(), cases(2));
    let verdict = own.check().unwrap();
    let of_blocks = verdict.missing.iter();
    let of_blocks = of_blocks.filter(|own| own.mode == Mode::BlockShear);
    assert_eq!(of_blocks.count(), 2, "{:?}", verdict.missing);
}

fn named(count: usize) -> String {
    "n".repeat(count)
}

#[test]
fn characters_of_names() {
    const MOST: usize = 1000;
    let exact = Spread::exact(mm(5.0));
    let joint = || bolt().across("5 kN").build().unwrap();
    let whole = || connection(grid(1, 2), cases(2));
    holds("ply", MOST, |n| {
        Stack::builder().ply(named(n), exact).build().map(|_| ())
    });
    holds("title", MOST, |n| {
        Joint {
            title: named(n),
            ..joint()
        }
        .check()
        .map(|_| ())
    });
    holds("reason", MOST, |n| {
        let set_aside = vec![SetAside::new(Mode::BlockShear, named(n))];
        Joint {
            set_aside,
            ..joint()
        }
        .check()
        .map(|_| ())
    });
    holds("own material", MOST, |n| {
        let own = OwnMaterial::new(named(n), shankline::joint::MaterialKind::CarbonSteel);
        let ply = bolt().ply("third", "5 mm").material(own).shear_planes([1]);
        ply.across("5 kN").build()?.check().map(|_| ())
    });
    holds("title of a connection", MOST, |n| {
        Connection {
            title: named(n),
            ..whole()
        }
        .forces("case 0")
        .map(|_| ())
    });
    holds("load case", MOST, |n| {
        let mut own = whole();
        own.cases[1].name = named(n);
        own.forces("case 0").map(|_| ())
    });
    holds("load", MOST, |n| {
        LoadTerm::new(named(n), newtons(5.0), 1.0).map(|_| ())
    });
    holds("joint to buy for", MOST, |n| {
        shopping_list(&[JointNeed::new(named(n), 1, ["a"])]).map(|_| ())
    });
    // As many letters of several bytes.
    holds("ply in Greek", MOST, |n| {
        Stack::builder()
            .ply("\u{3bb}".repeat(n), exact)
            .build()
            .map(|_| ())
    });
    for count in [MOST, MOST + 1] {
        let known = |found: Result<(), Error>| {
            let refused = matches!(found, Err(Error::OutOfRange { .. }));
            assert_eq!(refused, count > MOST, "{found:?}");
            assert!(found.is_err(), "it is no name of anything");
        };
        let text = named(count);
        known(text.parse::<Thread>().map(|_| ()));
        known(text.parse::<ThreadFit>().map(|_| ()));
        known(text.parse::<ToleranceClass>().map(|_| ()));
        known(text.parse::<BoltGrade>().map(|_| ()));
        known(text.parse::<NutGrade>().map(|_| ()));
        known(text.parse::<WasherStyle>().map(|_| ()));
        known(text.parse::<AnBolt>().map(|_| ()));
        known(PlyMaterial::find(&text).map(|_| ()));
        known(JointMethods::named(&text).map(|_| ()));
    }
}

/// Adds a washer to a stack.
type Adds = fn(StackBuilder, JointWasher) -> StackBuilder;

#[test]
fn characters_of_names_of_parts() {
    const MOST: usize = 1000;
    let exact = Spread::exact(mm(5.0));
    let joint = || bolt().across("5 kN").build().unwrap();
    let whole = || connection(grid(1, 2), cases(2));
    let washer = |n: usize| JointWasher::new(named(n), Spread::exact(mm(3.0)));
    let places: [(&str, Adds); 3] = [
        ("washer under the head", StackBuilder::washer_under_head),
        ("washer under the nut", StackBuilder::washer_under_nut),
        ("washers under the nut", |own, washer| {
            own.washers_under_nut(washer, 1)
        }),
    ];
    for (what, add) in places {
        holds(what, MOST, |n| {
            let mut joint = joint();
            joint.stack = add(joint.stack.to_builder(), washer(n)).build()?;
            joint.check().map(|_| ())
        });
    }
    holds("thing taken for granted", MOST, |n| {
        let granted = vec![Granted::new(Fact::Nut, named(n))];
        Joint { granted, ..joint() }.check().map(|_| ())
    });
    holds("own bolt", MOST, |n| {
        let length =
            OwnLength::of_thread(Spread::exact(mm(50.0)), Spread::exact(mm(40.0)), mm(3.0));
        let own = bolt().own_bolt(OwnScrew::new(named(n), [length?]));
        own.across("5 kN").build()?.check().map(|_| ())
    });
    holds("own strength", MOST, |n| {
        let own = bolt().own_strength(OwnStrength::new(named(n), megapascals(800.0)));
        own.across("5 kN").build()?.check().map(|_| ())
    });
    holds("bolt in a bin", MOST, |n| {
        let screws = ScrewSeries::new(ScrewProduct::Iso4017, &"M8".parse()?)?;
        Bin::new()
            .product(named(n), &screws, mm(30.0), 1)
            .map(|_| ())
    });
    holds("part to buy", MOST, |n| {
        shopping_list(&[JointNeed::new("hinge", 1, [named(n)])]).map(|_| ())
    });
    holds("length of a chain", MOST, |n| {
        let chain = ToleranceChain::new().plus(named(n), exact);
        chain.range(ToleranceMethod::WorstCase).map(|_| ())
    });
    holds("combination", MOST, |n| {
        let mut own = whole();
        let all = Combination::new(named(n)).plus(1.0, "case 0");
        own.combinations = vec![all.plus(1.0, "case 1")];
        own.forces("case 0").map(|_| ())
    });
    // A plate is named as a ply is, and what has too long a name is none.
    let mut plate = whole();
    plate.plates[0].ply = named(MOST + 1);
    let taken = plate.forces("case 0").map(|_| ());
    beyond("plate", MOST + 1, MOST, taken);
    let loaded = Some(named(MOST + 1));
    let whole = Connection { loaded, ..whole() };
    let taken = whole.forces("case 0").map(|_| ());
    beyond("loaded ply", MOST + 1, MOST, taken);
}

/// A quantity keeps the start of what was too long.
#[test]
fn characters_of_quantities() {
    let padded = |count: usize| format!("{}16 mm", " ".repeat(count - 5));
    assert_eq!(
        parse::<Length>(&padded(1000)).unwrap(),
        parse::<Length>("16 mm").unwrap()
    );
    let error = parse::<Length>(&padded(1001)).unwrap_err();
    assert_eq!(
        (error.problem, error.text.len()),
        (TextProblem::TooLong, 20)
    );
    assert!(padded(1000).parse::<Spread<Length>>().is_ok());
    let error = padded(1001).parse::<Spread<Length>>().unwrap_err();
    assert!(matches!(
        error,
        Error::QuantityText {
            problem: TextProblem::TooLong,
            ..
        }
    ));
}

fn outline(corners: usize) -> Result<Outline, Error> {
    let corner = |n: usize| {
        let (sin, cos) = (std::f64::consts::TAU * n as f64 / corners as f64).sin_cos();
        Point {
            x: 500.0 * cos * mm(1.0),
            y: 500.0 * sin * mm(1.0),
        }
    };
    Outline::polygon((0..corners).map(corner))
}

/// The processor time of this thread: what others do on the machine meanwhile does not count. Where there is none, that of
/// the wall.
fn clock() -> Duration {
    #[cfg(unix)]
    {
        use rustix::time::{ClockId, clock_gettime};
        let now = clock_gettime(ClockId::ThreadCPUTime);
        let parts = (u64::try_from(now.tv_sec), u32::try_from(now.tv_nsec));
        if let (Ok(seconds), Ok(nanoseconds)) = parts {
            return Duration::new(seconds, nanoseconds);
        }
    }
    std::time::SystemTime::UNIX_EPOCH
        .elapsed()
        .unwrap_or_default()
}

fn time(run: &mut dyn FnMut()) -> Duration {
    let start = clock();
    run();
    clock().saturating_sub(start)
}

/// How what there is makes time grow.
#[derive(Clone, Copy)]
enum Order {
    /// n log n.
    Line,
    /// n squared: below its limit it must be little.
    Square,
}

/// The least times of several runs at an eighth and at the whole, by turns. Twice what the order gives is allowed for what does not
/// fit into caches any more: the next order is eight times as much.
fn grows(what: &str, order: Order, most: usize, run: &dyn Fn(usize) -> Box<dyn FnMut()>) {
    let (mut of_eighth, mut of_all) = (run(most / 8), run(most));
    let (mut small, mut great) = (Duration::MAX, Duration::MAX);
    let begun = Instant::now();
    for turn in 0..20 {
        small = small.min(time(&mut of_eighth));
        great = great.min(time(&mut of_all));
        if turn >= 4 && begun.elapsed() > Duration::from_millis(500) {
            break;
        }
    }
    let times = match order {
        Order::Line => 8.0 * (most as f64).ln() / (most as f64 / 8.0).ln(),
        Order::Square => 64.0,
    };
    println!(
        "| {what} | {most} | {:.2} ms | {:.1} of {times:.1} |",
        great.as_secs_f64() * 1e3,
        great.as_secs_f64() / small.as_secs_f64()
    );
    let allowed = small.mul_f64(2.0 * times) + Duration::from_micros(50);
    assert!(
        great <= allowed,
        "{what}: {small:?} at {}, {great:?} at {most}",
        most / 8
    );
}

/// A pattern of so many bolts.
type Bolts = fn(usize) -> BoltPattern;

/// `cargo test --release --all-features --test limits -- --nocapture growth` prints the table of DEVELOPERS.md.
#[test]
#[allow(clippy::too_many_lines)] // one list
fn growth() {
    grows("plies of a joint: check", Order::Line, 1000, &|n| {
        let sheets = (0..n).fold(Joint::builder("M16"), |own, n| {
            own.ply(format!("sheet {n}"), "0.1 mm")
                .material("S275 steel")
        });
        let joint = sheets
            .washers(WasherStyle::Iso7090)
            .methods(JointMethods::en_1993())
            .load_factor(1.0)
            .across("5 kN")
            .build()
            .unwrap();
        Box::new(move || drop(joint.check().unwrap()))
    });
    grows("bolts of a pattern: elastic", Order::Line, 10_000, &|n| {
        let (bolts, load) = (
            grid(n / 10, 10),
            PlaneLoad::new(newtons(1e4), newtons(1e4), mm(900.0), mm(0.0)),
        );
        Box::new(move || drop(bolts.elastic(&[load]).unwrap()))
    });
    grows(
        "bolts of a pattern: instantaneous centre",
        Order::Line,
        10_000,
        &|n| {
            let (bolts, load) = (
                grid(n / 10, 10),
                PlaneLoad::new(newtons(1e4), newtons(1e4), mm(900.0), mm(0.0)),
            );
            let law = DeformationLaw::Aisc;
            Box::new(move || drop(bolts.instantaneous_centre(&[load], law).unwrap()))
        },
    );
    let circle: Bolts = |n| BoltPattern::circle(n, mm(20.0 * n as f64)).unwrap();
    let square: Bolts = |n| grid(n.isqrt(), n.isqrt());
    let patterns: [(&str, usize, Bolts); 6] = [
        ("in rows", 1, square),
        ("one row across", 1, |n| grid(n, 1)),
        ("one row along", 1, |n| grid(1, n)),
        ("in a circle", 1, circle),
        ("in a circle, a hundred cases", 100, circle),
        ("scattered", 1, scattered),
    ];
    for (how, of_load, bolts) in patterns {
        let what = format!("bolts of a connection, {how}: check");
        grows(&what, Order::Square, 200, &|n| {
            let own = connection(bolts(n), cases(of_load));
            Box::new(move || drop(own.check().unwrap()))
        });
    }
    grows(
        "load cases of a connection of two bolts: check",
        Order::Line,
        2000,
        &|n| {
            let own = connection(grid(1, 2), cases(n));
            Box::new(move || drop(own.check().unwrap()))
        },
    );
    grows(
        "load cases, each in a combination: forces",
        Order::Line,
        100_000,
        &|n| {
            let combinations =
                (0..n).map(|n| Combination::new(format!("{n}")).plus(1.5, format!("case {n}")));
            let combinations = combinations.collect();
            let own = Connection {
                combinations,
                ..connection(grid(1, 1), cases(n))
            };
            Box::new(move || drop(own.forces("0").unwrap()))
        },
    );
    grows(
        "load cases in combinations: check",
        Order::Line,
        2000,
        &|n| {
            let combinations =
                (0..n).map(|n| Combination::new(format!("{n}")).plus(1.5, format!("case {n}")));
            let combinations = combinations.collect();
            let own = Connection {
                combinations,
                ..connection(grid(1, 1), cases(n))
            };
            Box::new(move || drop(own.check().unwrap()))
        },
    );
    grows(
        "parts of one combination: forces",
        Order::Line,
        100_000,
        &|n| {
            let all = (0..n).fold(Combination::new("all"), |all, n| {
                all.plus(1.0, format!("case {n}"))
            });
            let own = Connection {
                combinations: vec![all],
                ..connection(grid(1, 1), cases(n))
            };
            Box::new(move || drop(own.forces("all").unwrap()))
        },
    );
    grows("corners of an outline: made", Order::Square, 200, &|n| {
        Box::new(move || drop(outline(n).unwrap()))
    });
    grows(
        "lengths of a bolt of one's own: search",
        Order::Square,
        1000,
        &|n| {
            let lengths = (0..n).map(|n| {
                OwnLength::of_thread(
                    Spread::exact(mm(40.0 + 0.1 * n as f64)),
                    Spread::exact(mm(25.0)),
                    mm(3.0),
                )
                .unwrap()
            });
            let joint = bolt()
                .own_bolt(OwnScrew::new("long series", lengths))
                .across("5 kN")
                .build()
                .unwrap();
            Box::new(move || drop(joint.check().unwrap()))
        },
    );
    grows(
        "characters of the name of a grade",
        Order::Line,
        1000,
        &|n| {
            let text = "grade 8 ".repeat(n / 8);
            Box::new(move || assert!(text.parse::<BoltGrade>().is_err()))
        },
    );
    grows("drawers of a bin: pick", Order::Line, 10_000, &|n| {
        let thread: Thread = "M8".parse().unwrap();
        let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread).unwrap();
        let bin = (0..n).fold(Bin::new(), |bin, _| {
            bin.product("M8 x 30", &screws, mm(30.0), 1).unwrap()
        });
        let stack = Stack::builder()
            .ply("a", Spread::exact(mm(10.0)))
            .ply("b", Spread::exact(mm(8.0)))
            .build()
            .unwrap();
        Box::new(move || {
            let nut = NutEnd::of(Nut::find(NutStyle::Iso4032, &thread).unwrap()).unwrap();
            drop(
                bin.pick(
                    &stack,
                    &thread,
                    nut,
                    LengthRules::fabrication(UnitSystem::Si),
                    1,
                )
                .unwrap(),
            );
        })
    });
}
