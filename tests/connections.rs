//! Connections: what must not change, what must never make one hold, and statics.

#![allow(clippy::cast_precision_loss)] // a few bolts at most

use proptest::prelude::*;
use shankline::connection::{
    Alternation, Combination, Connection, ConnectionBuilder, ConnectionVerdict, InPlane, LoadCase,
    OutOfPlane, Outline, Side,
};
use shankline::error::Amount;
use shankline::joint::{JointBuilder, Need, Prying, RuleSet, StackBuilder, Word};
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::strength::group::{BoltPattern, DeformationLaw, GroupBolt, Point};
use shankline::units::{Length, newton_metres};

fn mm(value: f64) -> Length {
    millimetres(value)
}

fn bolt() -> JointBuilder {
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

/// A force in newtons through the origin.
fn at_origin(name: &str, force: [f64; 3]) -> LoadCase {
    LoadCase::new(name, force.map(newtons), [0.0; 3].map(mm))
}

/// Places turned about the origin and mirrored first, if asked.
#[derive(Clone, Copy, Debug)]
struct Turn {
    angle: f64,
    mirror: bool,
}

impl Turn {
    const NONE: Self = Self {
        angle: 0.0,
        mirror: false,
    };

    fn of(self, x: f64, y: f64) -> (f64, f64) {
        let x = if self.mirror { -x } else { x };
        let (sin, cos) = self.angle.sin_cos();
        (x * cos - y * sin, x * sin + y * cos)
    }

    /// Moments about axes in the plane turn as arrows do, and change their sign in a mirror.
    fn of_moment(self, x: f64, y: f64) -> (f64, f64) {
        let (x, y) = if self.mirror { (x, -y) } else { (x, y) };
        Self {
            mirror: false,
            ..self
        }
        .of(x, y)
    }

    fn side(self, angle: f64) -> Side {
        let (x, y) = self.of(angle.cos(), angle.sin());
        Side::Towards(shankline::units::degrees(y.atan2(x).to_degrees()))
    }
}

#[derive(Clone, Debug)]
struct Loads {
    force: [f64; 3],
    moment: [f64; 3],
    at: [f64; 3],
}

impl Loads {
    fn case(&self, name: &str, turn: Turn, times: f64) -> LoadCase {
        let kn = |value: f64| newtons(1e3 * times * value);
        let nm = |value: f64| newton_metres(times * value);
        let (fx, fy) = turn.of(self.force[0], self.force[1]);
        let (mx, my) = turn.of_moment(self.moment[0], self.moment[1]);
        let mz = if turn.mirror {
            -self.moment[2]
        } else {
            self.moment[2]
        };
        let (x, y) = turn.of(self.at[0], self.at[1]);
        LoadCase::new(
            name,
            [fx, fy, self.force[2]].map(kn),
            [x, y, self.at[2]].map(mm),
        )
        .with_moment([mx, my, mz].map(nm))
    }
}

fn loads() -> impl Strategy<Value = Loads> {
    let three = |most: f64| [-most..most, -most..most, -most..most];
    (three(20.0), three(800.0), three(150.0)).prop_map(|(force, moment, at)| Loads {
        force,
        moment,
        at,
    })
}

/// In the plane only.
fn plane_loads() -> impl Strategy<Value = Loads> {
    (
        -40.0..40.0,
        -40.0..40.0,
        -1500.0..1500.0,
        -150.0..150.0,
        -150.0..150.0,
    )
        .prop_map(|(fx, fy, m, x, y)| Loads {
            force: [fx, fy, 0.0],
            moment: [0.0, 0.0, m],
            at: [x, y, 0.0],
        })
}

/// Numbers of every size and kind.
fn odd() -> impl Strategy<Value = f64> {
    prop_oneof![
        6 => -200.0..200.0_f64,
        2 => -5.0..5.0_f64,
        1 => any::<f64>(),
        1 => prop::sample::select(vec![0.0, f64::NAN, f64::INFINITY, -1e300, 1e-300, 60.0, -60.0]),
    ]
}

fn grid(rows: usize, columns: usize, turn: Turn) -> BoltPattern {
    let place = |n: usize, of: usize, pitch: f64| (n as f64 - 0.5 * (of - 1) as f64) * pitch;
    BoltPattern::new((0..rows).flat_map(|row| {
        (0..columns).map(move |column| {
            let (x, y) = turn.of(place(column, columns, 60.0), place(row, rows, 50.0));
            GroupBolt::new(mm(x), mm(y))
        })
    }))
    .unwrap()
}

fn plate(width: f64, height: f64, turn: Turn) -> Outline {
    let (w, h) = (0.5 * width, 0.5 * height);
    let corners = [(-w, -h), (w, -h), (w, h), (-w, h)].map(|(x, y)| turn.of(x, y));
    Outline::polygon(corners.map(|(x, y)| Point { x: mm(x), y: mm(y) })).unwrap()
}

fn start(rows: usize, columns: usize, turn: Turn) -> ConnectionBuilder {
    let (width, height) = (60.0 * columns as f64 + 40.0, 50.0 * rows as f64 + 50.0);
    Connection::builder(bolt())
        .bolts(grid(rows, columns, turn))
        .plate("plate", plate(width, height, turn))
        .held(turn.side(std::f64::consts::FRAC_PI_2))
        .plate("support", plate(width + 20.0, height + 40.0, turn))
        .held(turn.side(-std::f64::consts::FRAC_PI_2))
        .loaded("support")
        .in_plane(InPlane::Elastic)
}

/// The same with a torque, so that moments may be carried clamped.
fn clamped(rows: usize, columns: usize, turn: Turn) -> ConnectionBuilder {
    let torque = bolt().torque(
        shankline::preload::NutFactor::new(0.16, 0.2, 0.26).unwrap(),
        shankline::preload::PreloadTarget::Reusable,
    );
    Connection::builder(torque)
        .bolts(grid(rows, columns, turn))
        .in_plane(InPlane::Elastic)
        .out_of_plane(OutOfPlane::Clamped)
}

fn checked(connection: ConnectionBuilder, case: LoadCase) -> ConnectionVerdict {
    connection.cases([case]).build().unwrap().check().unwrap()
}

fn used(verdict: &ConnectionVerdict) -> f64 {
    verdict.utilisation().unwrap_or(0.0)
}

/// In newtons.
fn force(amount: &Amount) -> f64 {
    match amount {
        Amount::Force(force) => force.value,
        other => panic!("{other}"),
    }
}

fn rank(word: Word) -> u8 {
    match word {
        Word::Holds => 0,
        Word::Undecided => 1,
        Word::DoesNotHold => 2,
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// All bolts together give the load back: forces and moments in three directions.
    #[test]
    fn statics(loads in loads(), rows in 2..5_usize, columns in 2..4_usize, angle in 0.0..6.3_f64) {
        let turn = Turn { angle, mirror: false };
        let case = loads.case("load", turn, 1.0);
        let connection = clamped(rows, columns, turn).cases([case.clone()]).build().unwrap();
        let forces = connection.forces("load").unwrap();
        let (mut force, mut moment) = ([0.0; 3], [0.0; 3]);
        for (own, at) in forces.iter().zip(connection.bolts.bolts()) {
            let (x, y) = (at.x.value, at.y.value);
            let [fx, fy, fz] = [own.x.value, own.y.value, own.along.value];
            for (sum, part) in force.iter_mut().zip([fx, fy, fz]) { *sum += part; }
            for (sum, part) in moment.iter_mut().zip([y * fz, -x * fz, x * fy - y * fx]) { *sum += part; }
        }
        let [x, y, z] = [case.x.value, case.y.value, case.z.value];
        let [fx, fy, fz] = [case.force_x.value, case.force_y.value, case.force_z.value];
        let [mx, my, mz] = [case.moment_x.value, case.moment_y.value, case.moment_z.value];
        let wanted = [mx + y * fz - z * fy, my + z * fx - x * fz, mz + x * fy - y * fx];
        for (found, wanted) in force.into_iter().zip([fx, fy, fz]) {
            prop_assert!((found - wanted).abs() < 1e-3, "{found} {wanted}");
        }
        for (found, wanted) in moment.into_iter().zip(wanted) {
            prop_assert!((found - wanted).abs() < 1e-3, "{found} {wanted}");
        }
    }

    /// A pressed edge takes what the bolts pull more than the load: forces and the moment about the edge are in balance.
    #[test]
    fn statics_about_an_edge(moment in 1.0..5000.0_f64, pull in -20.0..60.0_f64, rows in 1..5_usize) {
        let case = at_origin("tilt", [0.0, 0.0, 1e3 * pull]).with_moment([moment, 0.0, 0.0].map(newton_metres));
        let connection = start(rows, 2, Turn::NONE);
        let mut connection = connection.cases([case]).build().unwrap();
        connection.out_of_plane = Some(OutOfPlane::PressedEdge { ply: "plate".into() });
        let forces = connection.forces("tilt").unwrap();
        let edge = 0.5e-3 * (50.0 * rows as f64 + 50.0);
        let sum: f64 = forces.iter().map(|own| own.along.value).sum();
        let about: f64 = forces.iter().zip(connection.bolts.bolts())
            .map(|(own, at)| own.along.value * at.y.value).sum();
        // What presses at the edge; a force that presses is met where it acts.
        let edge_force = sum - (1e3 * pull).max(0.0);
        prop_assert!(edge_force > -1e-6);
        prop_assert!((about + edge_force * edge - moment).abs() < 1e-6 * moment, "{about} {edge_force} {moment}");
        prop_assert!(forces.iter().all(|own| own.along.value > -1e-9));
    }

    /// Turning the pattern, its plates and its loads changes nothing; nor does a mirror.
    #[test]
    fn turned_and_mirrored(
        loads in plane_loads(), rows in 1..4_usize, columns in 1..3_usize, angle in 0.0..6.3_f64, mirror in any::<bool>()
    ) {
        prop_assume!(rows * columns > 1);
        let turn = Turn { angle, mirror };
        let plain = checked(start(rows, columns, Turn::NONE), loads.case("load", Turn::NONE, 1.0));
        let turned = checked(start(rows, columns, turn), loads.case("load", turn, 1.0));
        prop_assert_eq!(plain.word(), turned.word());
        prop_assert!((used(&plain) - used(&turned)).abs() < 1e-6 * used(&plain).max(1.0));
        for (a, b) in plain.bolts.iter().zip(&turned.bolts) {
            prop_assert_eq!(a.verdict.word(), b.verdict.word());
            let (a, b) = (a.utilisation.unwrap_or(0.0), b.utilisation.unwrap_or(0.0));
            prop_assert!((a - b).abs() < 1e-6 * a.max(1.0), "{} {}", a, b);
        }
        prop_assert_eq!(plain.missing.len(), turned.missing.len());
    }

    /// Moments out of the plane and pulls turn and mirror with their pattern, too.
    #[test]
    fn forces_turn_with_the_load(
        loads in loads(), rows in 1..5_usize, columns in 2..4_usize, angle in 0.0..6.3_f64, mirror in any::<bool>()
    ) {
        let turn = Turn { angle, mirror };
        let forces = |turn: Turn| {
            let case = loads.case("load", turn, 1.0);
            clamped(rows, columns, turn).cases([case]).build().unwrap().forces("load")
        };
        match (forces(Turn::NONE), forces(turn)) {
            (Ok(plain), Ok(turned)) => for (a, b) in plain.iter().zip(&turned) {
                prop_assert!((a.across - b.across).value.abs() < 1e-3);
                prop_assert!((a.along - b.along).value.abs() < 1e-3);
                let (x, y) = turn.of(a.x.value, a.y.value);
                prop_assert!((x - b.x.value).abs() < 1e-3 && (y - b.y.value).abs() < 1e-3);
            },
            (plain, turned) => prop_assert_eq!(plain.is_err(), turned.is_err()),
        }
    }

    /// Whatever numbers stand in it, a connection is checked or refused, and never panics; what holds has a load and
    /// figures that are numbers.
    #[test]
    fn any_numbers_are_answered(
        places in prop::collection::vec((odd(), odd()), 0..5),
        corners in prop::collection::vec((odd(), odd()), 0..6),
        force in [odd(), odd(), odd()], moment in [odd(), odd(), odd()], at in [odd(), odd(), odd()],
        factor in odd(), which in 0..4_usize, held in odd(),
    ) {
        let pattern = BoltPattern::new(places.iter().map(|(x, y)| GroupBolt::new(mm(*x), mm(*y))));
        let points = corners.iter().map(|(x, y)| Point { x: mm(*x), y: mm(*y) });
        let outline = Outline::polygon(points);
        let Ok(pattern) = pattern else { return Ok(()) };
        let mut connection = start(2, 2, Turn::NONE).cases([
            LoadCase::new("odd", force.map(newtons), at.map(mm)).with_moment(moment.map(newton_metres)),
        ]).build().unwrap();
        connection.bolts = pattern;
        if let Ok(outline) = outline {
            connection.plates[0].outline = outline;
            connection.plates[0].held = Some(Side::Towards(shankline::units::degrees(held)));
        } else {
            connection.plates.remove(0);
        }
        connection.out_of_plane = match which {
            0 => None,
            1 => Some(OutOfPlane::Clamped),
            _ => Some(OutOfPlane::PressedEdge { ply: "support".into() }),
        };
        if which == 3 {
            connection.in_plane = Some(InPlane::InstantaneousCentre(DeformationLaw::Aisc));
            connection.joint.methods = JointMethods::aisc_lrfd(AiscEdition::E2016);
        }
        connection.combinations.push(Combination::new("times").plus(factor, "odd"));
        if let Ok(verdict) = connection.check() {
            prop_assert!(verdict.utilisation().is_none_or(f64::is_finite));
            prop_assert!(!verdict.headline(UnitSystem::Si).is_empty());
            prop_assert!(connection.sheet(&verdict).is_ok());
        }
    }

    /// More of the same load never makes a connection hold.
    #[test]
    fn more_load_is_never_better(loads in plane_loads(), rows in 1..4_usize, times in 1.0..4.0_f64) {
        let less = checked(start(rows, 2, Turn::NONE), loads.case("load", Turn::NONE, 1.0));
        let more = checked(start(rows, 2, Turn::NONE), loads.case("load", Turn::NONE, times));
        prop_assert!(rank(more.word()) >= rank(less.word()));
        prop_assert!(used(&more) >= used(&less) * (1.0 - 1e-9));
    }

    /// Taking away what is known never makes a connection hold: a plate, where it is held, a material, a hole, a method,
    /// the load factor, a word on prying.
    #[test]
    fn silence_is_never_better(loads in plane_loads(), rows in 1..4_usize, pulled in any::<bool>()) {
        let mut case = loads.case("load", Turn::NONE, 1.0);
        if pulled {
            case.force_z = newtons(20e3);
            (case.x, case.y) = (mm(0.0), mm(0.0));
        }
        let told = start(rows, 2, Turn::NONE).cases([case]).build().unwrap();
        let word = told.check().unwrap().word();
        let silent: [&dyn Fn(&mut Connection); 10] = [
            &|own| { own.plates.remove(0); },
            &|own| own.plates.clear(),
            &|own| own.plates[1].held = None,
            &|own| own.loaded = None,
            &|own| own.in_plane = None,
            &|own| own.joint.load.load_factor = None,
            &|own| own.joint.load.prying = None,
            &|own| own.joint.tightening = None,
            &|own| change_ply(own, |ply| ply.material = None),
            &|own| change_ply(own, |ply| ply.hole = None),
        ];
        for (n, silent) in silent.iter().enumerate() {
            let mut less = told.clone();
            silent(&mut less);
            if let Ok(verdict) = less.check() {
                prop_assert!(
                    verdict.word() != Word::Holds || word == Word::Holds,
                    "{}: {} {}", n, word, verdict.render(UnitSystem::Si)
                );
            }
        }
    }

    /// The verdict of many cases is the worst of each alone: words, utilisations and envelopes.
    #[test]
    fn the_envelope_is_the_maximum(all in prop::collection::vec(plane_loads(), 2..5), rows in 1..4_usize) {
        let cases = all.iter().enumerate().map(|(n, own)| own.case(&format!("case {n}"), Turn::NONE, 1.0));
        let cases: Vec<LoadCase> = cases.collect();
        let together = start(rows, 2, Turn::NONE).cases(cases.clone()).build().unwrap().check().unwrap();
        let alone: Vec<ConnectionVerdict> = cases.into_iter().map(|case| checked(start(rows, 2, Turn::NONE), case)).collect();
        let worst = alone.iter().map(|own| rank(own.word())).max().unwrap();
        prop_assert_eq!(rank(together.word()), worst);
        let most = alone.iter().map(used).fold(0.0, f64::max);
        prop_assert!((used(&together) - most).abs() <= 0.0);
        for (n, bolt) in together.bolts.iter().enumerate() {
            let across = alone.iter().map(|own| own.bolts[n].load.across.value).fold(0.0, f64::max);
            prop_assert!((bolt.most_across.value - across).abs() <= 0.0);
            let used = alone.iter().filter_map(|own| own.bolts[n].utilisation).fold(0.0, f64::max);
            prop_assert!((bolt.utilisation.unwrap_or(0.0) - used).abs() <= 0.0);
        }
        for (case, own) in together.cases.iter().zip(&alone) {
            prop_assert_eq!(case.word, own.word());
            prop_assert_eq!(case.utilisation, own.utilisation());
        }
    }

    /// A connection of one bolt is the joint.
    #[test]
    fn one_bolt_is_the_joint(across in 0.0..90.0_f64, along in 0.0..90.0_f64, width in 40.0..120.0_f64, end in 20.0..60.0_f64) {
        prop_assume!(across + along > 0.1);
        let distances = |builder: JointBuilder| builder
            .ply("plate", "10 mm").material("S275 steel")
            .end_distance(mm(end)).edge_distance(mm(0.5 * width)).width(mm(width))
            .ply("support", "12 mm").material("S355 steel")
            .end_distance(mm(end)).edge_distance(mm(0.5 * width)).width(mm(width));
        let bare = || Joint::builder("M16").washers(WasherStyle::Iso7090).methods(JointMethods::en_1993())
            .load_factor(1.0).prying(Prying::None).rules(RuleSet::En1090.rules(UnitSystem::Si));
        let (across, along) = (newtons(1e3 * across), newtons(1e3 * along));
        let joint = distances(bare()).pattern(shankline::joint::Pattern::Single).across(across).along(along).build().unwrap().check().unwrap();
        let case = LoadCase::new("load", [across, newtons(0.0), along], [0.0; 3].map(mm));
        let alone = |builder| Connection::builder(builder).bolts(grid(1, 1, Turn::NONE));
        let stated = checked(alone(distances(bare())), case.clone());
        prop_assert_eq!(&stated.bolts[0].verdict, &joint);
        prop_assert_eq!(stated.word(), joint.word());
        // The same from outlines: the bolt stands `end` from the right and the left.
        let outline = || plate(2.0 * end, width, Turn::NONE);
        let drawn = bare().ply("plate", "10 mm").material("S275 steel").ply("support", "12 mm").material("S355 steel");
        let drawn = checked(
            alone(drawn).plate("plate", outline()).held(Side::Right).plate("support", outline()).held(Side::Left).loaded("plate"),
            case,
        );
        prop_assert_eq!(drawn.word(), joint.word());
        let (a, b) = (drawn.bolts[0].utilisation, joint.governing().map(|check| check.utilisation.value));
        prop_assert!((a.unwrap_or(0.0) - b.unwrap_or(0.0)).abs() < 1e-9);
    }
}

/// The same with its first ply changed.
fn change_ply(connection: &mut Connection, change: impl Fn(&mut shankline::joint::JointPly)) {
    let mut plies = connection.joint.stack.plies().to_vec();
    change(&mut plies[0]);
    let washer = connection.joint.stack.washers_under_head()[0].clone();
    let stack = Stack::builder().washer_under_head(washer.clone());
    let stack = plies.into_iter().fold(stack, StackBuilder::add);
    let stack = stack.washers_under_nut(washer, 1).shear_planes([1]);
    connection.joint.stack = stack.build().unwrap();
}

#[test]
fn what_is_not_said_leaves_it_undecided() {
    let case = || at_origin("pull", [0.0, -40e3, 0.0]);
    let whole = checked(start(2, 2, Turn::NONE), case());
    assert_eq!(
        whole.word(),
        Word::Holds,
        "{}",
        whole.render(UnitSystem::Si)
    );

    // No outline of a ply: its ends, its blocks and its sections are not known.
    let start = || {
        Connection::builder(bolt())
            .bolts(grid(2, 2, Turn::NONE))
            .plate("support", plate(180.0, 190.0, Turn::NONE))
            .held(Side::Top)
            .loaded("plate")
    };
    let bare = checked(start(), case());
    assert_eq!(bare.word(), Word::Undecided);
    for (mode, need) in [
        (Mode::Bearing, Need::EndDistance),
        (Mode::Distances, Need::EndDistance),
        (Mode::Distances, Need::EdgeDistance),
        (Mode::BlockShear, Need::Outline),
        (Mode::NetSection, Need::Outline),
        (Mode::GrossSection, Need::Outline),
    ] {
        let mut missing = bare.missing.iter();
        assert!(
            missing.any(|own| (own.mode, &own.need) == (mode, &need)),
            "{mode}: {need}"
        );
    }
    // Held nowhere: its sections are not known.
    let adrift = start().plate("plate", plate(160.0, 150.0, Turn::NONE));
    let adrift = checked(adrift, case());
    assert_eq!(adrift.word(), Word::Undecided);
    let mut modes: Vec<Mode> = adrift.open().iter().map(|own| own.mode).collect();
    modes.sort();
    assert_eq!(modes, [Mode::NetSection, Mode::GrossSection]);
    assert!(adrift.open().iter().all(|own| own.need == Need::HeldSide));
}

#[test]
fn bolts_in_a_ring_leave_their_blocks_open() {
    let ring = Connection::builder(bolt())
        .circle(6, "160 mm")
        .plate("plate", Outline::round("240 mm").unwrap())
        .plate("support", Outline::round("240 mm").unwrap())
        .in_plane(InPlane::Elastic);
    let twist = LoadCase::of_moment("twist", [0.0, 0.0, 900.0].map(newton_metres));
    let verdict = checked(ring, twist);
    assert_eq!(verdict.word(), Word::Undecided);
    let blocks = verdict
        .missing
        .iter()
        .filter(|own| own.mode == Mode::BlockShear);
    assert_eq!(blocks.count(), 2);
}

/// Loads that a method does not cover are refused, with what to say.
#[test]
fn loads_without_a_method_are_refused() {
    let eccentric = || {
        LoadCase::new(
            "load",
            [0.0, 5e3, 0.0].map(newtons),
            [200.0, 0.0, 0.0].map(mm),
        )
    };
    let bare = || Connection::builder(bolt()).bolts(grid(2, 2, Turn::NONE));
    let refused = |connection: ConnectionBuilder, case: LoadCase| {
        let connection = connection.cases([case]).build().unwrap();
        connection.check().unwrap_err().to_string()
    };
    assert!(refused(bare(), eccentric()).contains("by which method"));
    let tilted = || {
        LoadCase::new(
            "load",
            [0.0, 5e3, 0.0].map(newtons),
            [0.0, 0.0, 90.0].map(mm),
        )
    };
    assert!(refused(bare(), tilted()).contains("out of its plane"));
    // Nothing clamps hand-tight bolts.
    let snug = bare().out_of_plane(OutOfPlane::Clamped);
    assert!(refused(snug, tilted()).contains("no torque"));
    let edge = OutOfPlane::PressedEdge {
        ply: "plate".into(),
    };
    assert!(refused(bare().out_of_plane(edge.clone()), tilted()).contains("outline"));
    let centre = InPlane::InstantaneousCentre(DeformationLaw::Aisc);
    assert!(refused(bare().in_plane(centre), eccentric()).contains("AISC"));
    assert!(refused(bare(), at_origin("nothing", [0.0; 3])).contains("no load"));
    // Onto a corner of the plate there is no line to tilt about.
    let corner = bare()
        .plate("plate", plate(200.0, 200.0, Turn::NONE))
        .out_of_plane(edge);
    let both = LoadCase::of_moment("load", [100.0, 80.0, 0.0].map(newton_metres));
    assert!(refused(corner, both).contains("corner"));
}

/// A good connection that a change spoils.
fn refused(change: &dyn Fn(&mut Connection), words: &str) {
    let case = at_origin("load", [1e3, 0.0, 0.0]);
    let mut connection = start(2, 2, Turn::NONE).cases([case]).build().unwrap();
    assert!(connection.check().is_ok());
    change(&mut connection);
    let error = connection.check().unwrap_err().to_string();
    assert!(error.contains(words), "{words}: {error}");
    assert!(connection.forces("load").is_err(), "{words}");
}

#[test]
fn descriptions_that_contradict_themselves_are_refused() {
    refused(&|own| own.joint.load.across = newtons(1.0), "loads");
    refused(
        &|own| {
            own.joint.pattern = shankline::joint::Pattern::Rows {
                along: 2,
                across: 1,
            }
        },
        "pattern",
    );
    refused(&|own| own.plates[0].ply = "plte".into(), "plte");
    refused(&|own| own.plates[1].ply = "plate".into(), "two outlines");
    refused(
        &|own| own.plates[0].outline = plate(40.0, 40.0, Turn::NONE),
        "outside",
    );
    refused(
        &|own| own.plates[0].grain = Some(shankline::units::degrees(0.0)),
        "grain",
    );
    refused(
        &|own| own.cases.push(at_origin("load", [1e3, 0.0, 0.0])),
        "two load cases",
    );
    refused(&|own| own.cases.clear(), "without a load case");
    refused(&|own| own.cases[0].force_x = newtons(f64::NAN), "force of");
    refused(&|own| own.cases[0].x = mm(f64::INFINITY), "coordinate");
    refused(
        &|own| own.combinations.push(Combination::new("none")),
        "no load cases",
    );
    refused(
        &|own| {
            own.combinations
                .push(Combination::new("gone").plus(1.0, "wind"));
        },
        "no load case",
    );
    refused(
        &|own| {
            own.combinations
                .push(Combination::new("mad").plus(f64::NAN, "load"));
        },
        "factor",
    );
    refused(
        &|own| own.alternations.push(Alternation::new("load", "gone")),
        "gone",
    );
    refused(
        &|own| own.alternations.push(Alternation::new("load", "load")),
        "itself",
    );
}

#[test]
fn templates_that_contradict_the_connection_are_refused() {
    let unused = |own: &mut Connection| {
        own.cases.push(at_origin("wind", [1e3, 0.0, 0.0]));
        own.combinations
            .push(Combination::new("1.5 load").plus(1.5, "load"));
    };
    refused(&unused, "in no combination");
    let pair = [1.0, 9.0].map(|x| GroupBolt::new(mm(x), mm(0.0)));
    refused(
        &|own| own.bolts = BoltPattern::new(pair).unwrap(),
        "stand in one another",
    );
    let slotted = |own: &mut Connection| {
        let mut plies = own.joint.stack.plies().to_vec();
        plies[0] = plies[0].clone().slot(
            mm(17.5),
            mm(22.0),
            shankline::strength::ply::SlotDirection::Across,
        );
        let stack = plies.into_iter().fold(Stack::builder(), StackBuilder::add);
        own.joint.stack = stack.shear_planes([1]).build().unwrap();
    };
    refused(&slotted, "slots");
    let heavier = GroupBolt::new(mm(0.0), mm(0.0)).with_relative_area(2.0);
    refused(
        &|own| own.bolts = BoltPattern::new([heavier]).unwrap(),
        "relative area",
    );
    let edges = |own: &mut Connection| {
        let stack = own.joint.stack.to_builder();
        let ply = own.joint.stack.plies()[0].clone().end_distance(mm(30.0));
        let mut plain = stack.build().unwrap();
        let rest = plain.plies()[1].clone();
        plain = Stack::builder()
            .add(ply)
            .add(rest)
            .shear_planes([1])
            .build()
            .unwrap();
        own.joint.stack = plain;
    };
    refused(&edges, "outline and distances");
}

/// By hand: two by two bolts at 30 mm and 25 mm from the centroid, 60 kN down, 100 mm to the right.
#[test]
fn an_eccentric_bracket_by_hand() {
    let case = LoadCase::new(
        "load",
        [0.0, -60e3, 0.0].map(newtons),
        [100.0, 0.0, 0.0].map(mm),
    );
    let connection = start(2, 2, Turn::NONE).cases([case]).build().unwrap();
    // J = 4 (30^2 + 25^2) = 6100 mm2; M = -6e6 N mm; the right bolts: 15 + 6e6 x 30 / 6100 N down, 6e6 x 25 / 6100 N aside.
    let (down, aside) = (-15e3 - 6e6 * 30.0 / 6100.0, 6e6 * 25.0 / 6100.0);
    let forces = connection.forces("load").unwrap();
    assert!((forces[3].y.value - down).abs() < 1e-6);
    assert!((forces[3].x.value - aside).abs() < 1e-6);
    assert!((forces[1].x.value + aside).abs() < 1e-6);
    let verdict = connection.check().unwrap();
    // 0.6 x 800 x 157 / 1.25 N with thread or 0.6 x 800 x 201 / 1.25 N with shank in the plane: 51.02 kN hold no less than 60 kN.
    let most = down.hypot(aside);
    let shear = verdict.bolts[3]
        .verdict
        .checks
        .iter()
        .find(|check| check.mode == Mode::BoltShear)
        .unwrap();
    assert!((force(&shear.demand) - most).abs() < 1e-6);
}

/// By hand, EN 1993-1-8 3.8 (recalled): nine rows 50 mm apart are 400 mm long, 25 d of M16, and each bolt bears
/// 1 - (400 - 15 x 16) / (200 x 16) = 0.95 of one in a short joint.
#[test]
fn a_long_joint_by_hand() {
    let shear = |rows: usize| {
        let verdict = checked(
            start(rows, 1, Turn::NONE),
            at_origin("pull", [0.0, -10e3, 0.0]),
        );
        let checks = verdict.bolts[0].verdict.checks.iter();
        let shear = checks.clone().find(|check| check.mode == Mode::BoltShear);
        force(&shear.unwrap().resistance)
    };
    assert!((shear(9) / shear(3) - 0.95).abs() < 1e-12);
    // Along y only: across the rows the same joint is short.
    let across = checked(
        start(9, 1, Turn::NONE),
        at_origin("push", [-10e3, 0.0, 0.0]),
    );
    let checks = across.bolts[0].verdict.checks.iter();
    let mut short = checks.filter(|check| check.mode == Mode::BoltShear);
    assert!((force(&short.next().unwrap().resistance) - shear(3)).abs() < 1e-6);
}

/// By hand, EN 1993-1-8 3.10.2, plate 160 x 150 x 10 mm of S275 (fu 410), four bolts in holes of 17.5 mm, 60 mm across and
/// 50 mm along, 50 mm from the end and 50 mm from the sides. Shear along one column, tension to the far side:
/// Anv = 10 (100 - 1.5 x 17.5) = 737.5 mm2, Ant = 10 (60 + 50 - 1.5 x 17.5) = 837.5 mm2, uneven:
/// 0.5 x 410 x 837.5 / 1.25 + 275 x 737.5 / sqrt 3 = 254.44 kN.
#[test]
fn block_shear_by_hand_on_both_sides_of_its_limit() {
    let block = 0.5 * 410.0 * 837.5 / 1.25 + 275.0 * 737.5 / 3.0_f64.sqrt();
    for (load, holds) in [(block - 1.0, true), (block + 1.0, false)] {
        let verdict = checked(
            start(2, 2, Turn::NONE),
            at_origin("pull", [0.0, -load, 0.0]),
        );
        let checks = verdict.checks.iter().map(|own| &own.check);
        let mut torn = checks.filter(|own| own.mode == Mode::BlockShear);
        let torn = torn.next().unwrap();
        assert_eq!(torn.place.to_string(), "ply 1");
        assert!(
            (torn.utilisation.value - load / block).abs() < 1e-9,
            "{torn}"
        );
        assert_eq!(verdict.holds(), holds, "{}", verdict.render(UnitSystem::Si));
    }
}

/// By hand: a plate that is waisted to 70 mm between its two rows carries half of the load there, and one that is narrower
/// beyond a zigzag is no wider than that.
#[test]
fn waists_and_tapers_count() {
    let outline = |corners: &[(f64, f64)]| {
        Outline::polygon(corners.iter().map(|(x, y)| Point {
            x: mm(*x),
            y: mm(*y),
        }))
        .unwrap()
    };
    let section = |bolts: &[(f64, f64)], corners: &[(f64, f64)], mode: Mode| {
        let bolts =
            BoltPattern::new(bolts.iter().map(|(x, y)| GroupBolt::new(mm(*x), mm(*y)))).unwrap();
        let connection = Connection::builder(bolt())
            .bolts(bolts)
            .plate("plate", outline(corners))
            .held(Side::Top);
        let verdict = checked(connection, at_origin("pull", [0.0, -10e3, 0.0]));
        let own = verdict.checks.iter().map(|own| own.check.clone());
        own.filter(|own| own.mode == mode)
            .map(|own| own.utilisation.value)
            .fold(0.0, f64::max)
    };
    // 10 kN on 200 mm, or 5 kN on 70 mm: 10 mm of S275.
    let waisted = [
        (-100.0, -150.0),
        (100.0, -150.0),
        (100.0, -60.0),
        (35.0, -40.0),
        (35.0, 40.0),
        (100.0, 60.0),
        (100.0, 150.0),
        (-100.0, 150.0),
        (-100.0, 60.0),
        (-35.0, 40.0),
        (-35.0, -40.0),
        (-100.0, -60.0),
    ];
    let rows = [(0.0, -100.0), (0.0, 100.0)];
    let used = section(&rows, &waisted, Mode::GrossSection);
    assert!((used - 5e3 / (70.0 * 10.0 * 275.0)).abs() < 1e-6, "{used}");
    // Three holes 40 mm apart across, the outer ones 30 mm beyond the middle one, where the plate is 160 mm wide and not 220:
    // 160 - 3 x 17.5 + 2 x 30^2 / 160 = 118.75 mm, of steel that breaks at 410: 0.9 x 410 x 1187.5 / 1.25 N.
    let staggered = [(-40.0, -15.0), (0.0, 15.0), (40.0, -15.0)];
    let tapered = [
        (-80.0, -90.0),
        (80.0, -90.0),
        (80.0, -15.0),
        (110.0, 15.0),
        (110.0, 90.0),
        (-110.0, 90.0),
        (-110.0, 15.0),
        (-80.0, -15.0),
    ];
    let used = section(&staggered, &tapered, Mode::NetSection);
    assert!(
        (used - 10e3 / (0.9 * 410.0 * 1187.5 / 1.25)).abs() < 1e-6,
        "{used}"
    );
}

/// By hand, Steel Buildings in Europe 3.2.3: a fin plate 360 x 10 mm of S275, its bolts 60 mm from where it is held, bears
/// 10 x 360^2 / 6 x 275 = 59.4 kN m there; 80 mm are more than 10 / 0.15, and it may buckle.
#[test]
fn a_fin_plate_in_bending_by_hand() {
    let fin = |z: f64| {
        let corner = |x, y| Point { x: mm(x), y: mm(y) };
        let plate = Outline::between(corner(-z, -180.0), corner(50.0, 180.0)).unwrap();
        let web = Outline::between(corner(-40.0, -200.0), corner(400.0, 200.0)).unwrap();
        let fin = Connection::builder(bolt())
            .rows_and_columns(5, 1, "70 mm", "70 mm")
            .plate("plate", plate)
            .held(Side::Left)
            .plate("support", web)
            .held(Side::Right)
            .in_plane(InPlane::Elastic);
        checked(fin, at_origin("reaction", [0.0, -100e3, 0.0]))
    };
    let bent = |verdict: &ConnectionVerdict| {
        let mut checks = verdict.checks.iter().map(|own| &own.check);
        let bent = checks.find(|own| {
            own.method.citation.contains("in bending")
                && own.place.to_string() == "ply 1"
                && own.mode == Mode::GrossSection
        });
        bent.unwrap().utilisation.value
    };
    let open = |verdict: &ConnectionVerdict| {
        let open = verdict.open();
        let mut open = open.iter().filter(|own| own.place.to_string() == "ply 1");
        open.any(|own| own.mode == Mode::GrossSection)
    };
    let short = fin(60.0);
    assert!(
        (bent(&short) - 100.0 * 0.06 / 59.4).abs() < 1e-4,
        "{}",
        short.render(UnitSystem::Si)
    );
    assert!(!open(&short));
    let long = fin(80.0);
    assert!((bent(&long) - 100.0 * 0.08 / 59.4).abs() < 1e-4);
    assert!(open(&long));
    assert_ne!(long.word(), Word::Holds);
}

/// How loads came to the bolts stands in the verdict, with its warning where the method was recalled.
#[test]
fn methods_of_distribution_are_named() {
    let tilted = LoadCase::new(
        "hook",
        [0.0, -4e3, 0.0].map(newtons),
        [0.0, 0.0, 120.0].map(mm),
    );
    let verdict = checked(clamped(3, 2, Turn::NONE), tilted);
    let methods: Vec<&str> = verdict.methods.iter().map(|own| own.citation).collect();
    assert!(
        methods[0].contains("elastic vector") && methods[1].contains("centroid"),
        "{methods:?}"
    );
    let recalled = |verdict: &ConnectionVerdict| {
        verdict
            .cautions
            .iter()
            .any(|caution| caution.to_string().contains("centroid"))
    };
    assert!(recalled(&verdict));
    let straight = checked(
        clamped(3, 2, Turn::NONE),
        at_origin("pull", [0.0, -4e3, 2e3]),
    );
    assert_eq!(straight.methods.len(), 1);
    assert!(!recalled(&straight));
}

/// An alternation takes the difference of both forces as arrows, and both its ends are checked by themselves.
#[test]
fn alternating_loads_have_their_range() {
    let across = |name: &str, x: f64, y: f64| at_origin(name, [x, y, 0.0]);
    let connection = start(2, 2, Turn::NONE)
        .cases([across("right", 8e3, 0.0), across("up", 0.0, 6e3)])
        .alternation(Alternation::new("right", "up").cycles(1e5))
        .build()
        .unwrap();
    let verdict = connection.check().unwrap();
    assert_eq!(verdict.cases.len(), 3);
    assert_eq!(verdict.cases[2].name, "right <> up");
    // Of each bolt: 2 kN to the right, 1.5 kN up: 2.5 kN between them, so from 2 to -0.5 kN.
    let steady = connection.check_bolt_in("right", 1).unwrap();
    let account = format!("{}", steady.account(Mode::Fatigue));
    assert!(account.contains("steady"), "{account}");
    // Loads that repeat are never better than steady ones.
    let once = start(2, 2, Turn::NONE)
        .cases(connection.cases.clone())
        .build()
        .unwrap()
        .check()
        .unwrap();
    assert!(rank(verdict.word()) >= rank(once.word()));
    assert!(verdict.missing.iter().chain(&once.missing).count() >= once.missing.len());
    assert!(
        verdict.missing.iter().any(|own| own.mode == Mode::Fatigue)
            || verdict.bolts.iter().any(|bolt| bolt
                .verdict
                .checks
                .iter()
                .any(|check| check.mode == Mode::Fatigue)),
        "{}",
        verdict.render(UnitSystem::Si)
    );
}

/// Prying makes the bolts of a tee carry more than the pull, and its flange is checked.
#[test]
fn a_flange_that_bends_pries() {
    use shankline::connection::PlatePrying;
    let tee = |thickness: &str| {
        let bolt = Joint::builder("3/4-10 UNC")
            .grade("ASTM F3125 A325 type 1")
            .product(ScrewProduct::StructuralBolt)
            .nut(NutStyle::HeavyHex)
            .nut_grade("ASTM A563 DH")
            .washers(WasherStyle::F436)
            .ply("flange", thickness)
            .material("ASTM A992 steel")
            .end_distance("1.5 in")
            .edge_distance("1.5 in")
            .ply("beam flange", "0.75 in")
            .material("ASTM A992 steel")
            .end_distance("1.5 in")
            .edge_distance("1.5 in")
            .methods(JointMethods::aisc_lrfd(AiscEdition::E2010))
            .load_factor(1.0);
        Connection::builder(bolt)
            .rows_and_columns(2, 2, "4 in", "4 in")
            .prying(PlatePrying::new(
                "flange",
                inches(4.0),
                inches(1.75),
                inches(1.5),
            ))
            .case("hung")
            .force("0 lbf", "0 lbf", "60000 lbf")
            .at("0 in", "0 in", "0 in")
            .build()
            .unwrap()
            .check()
            .unwrap()
    };
    let pull = |verdict: &ConnectionVerdict| {
        let checks = &verdict.bolts[0].verdict.checks;
        let tension = checks.iter().find(|check| {
            check.mode == Mode::BoltTension
                && check.level == shankline::strength::check::Level::Design
        });
        force(&tension.unwrap().demand)
    };
    let (thin, thick) = (tee("0.5 in"), tee("1.5 in"));
    let kip = 4_448.221_615_260_5;
    assert!(
        (pull(&thick) / kip - 15.0).abs() < 1e-6,
        "{}",
        pull(&thick) / kip
    );
    assert!(pull(&thin) / kip > 16.0);
    let flange = |verdict: &ConnectionVerdict| {
        verdict
            .checks
            .iter()
            .find(|own| own.check.mode == Mode::Prying)
            .unwrap()
            .check
            .utilisation
            .value
    };
    assert!(flange(&thin) > flange(&thick));
}

/// A force whose place nobody says would act through the centroid, where it does least.
#[test]
fn a_force_without_its_place_is_refused() {
    let said = || {
        start(2, 2, Turn::NONE)
            .case("hook")
            .force("0 kN", "-9 kN", "0 kN")
    };
    for silent in [
        said(),
        said().case("next").moment("0 N m", "0 N m", "9 N m"),
        said().cases([]),
    ] {
        let error = silent.build().unwrap_err().to_string();
        assert!(error.contains("hook") && error.contains("acts"), "{error}");
    }
    assert!(said().at("0 mm", "0 mm", "0 mm").build().is_ok());
    let twice = said()
        .at("0 mm", "0 mm", "0 mm")
        .force("0 kN", "-9 kN", "0 kN");
    assert!(twice.build().is_err());
    assert!(
        start(2, 2, Turn::NONE)
            .force("0 kN", "1 kN", "0 kN")
            .build()
            .is_err()
    );
}

#[cfg(feature = "serde")]
mod documents {
    use super::*;
    use serde_json::{Value, from_str, from_value, to_value};

    fn example() -> Value {
        let text = std::fs::read_to_string("examples/data/mezzanine_bracket.json").unwrap();
        let mut value: Value = from_str(&text).unwrap();
        let case = at_origin("load", [0.0, -44e3, 0.0]);
        value["cases"] = to_value([case]).unwrap();
        value
    }

    #[test]
    fn what_is_written_reads_back() {
        let read: Connection = from_value(example()).unwrap();
        let again: Connection = from_value(to_value(&read).unwrap()).unwrap();
        assert_eq!(again, read);
        assert_eq!(again.check().unwrap(), read.check().unwrap());
        let mut whole = start(2, 2, Turn::NONE)
            .cases([
                at_origin("a", [1e3, 0.0, 0.0]),
                at_origin("b", [0.0, 1e3, 0.0]),
            ])
            .combination(Combination::new("both").plus(1.35, "a").plus(-1.5, "b"))
            .alternation(Alternation::new("a", "b").cycles(1e4))
            .out_of_plane(OutOfPlane::PressedEdge {
                ply: "plate".into(),
            })
            .build()
            .unwrap();
        whole.plates[0].held = Some(Side::Towards(shankline::units::degrees(30.0)));
        let again: Connection = from_value(to_value(&whole).unwrap()).unwrap();
        assert_eq!(again, whole);
    }

    /// No field of a request may be misspelt, be a list in place of an object, or, where loads hang on it, be left out.
    #[test]
    fn spoiled_requests_are_refused() {
        let spoil = |change: &dyn Fn(&mut Value), word: &str| {
            let mut value = example();
            change(&mut value);
            let error = from_value::<Connection>(value).expect_err(word).to_string();
            assert!(error.contains(word), "{word}: {error}");
        };
        spoil(&|own| own["plate"] = Value::Null, "plate");
        spoil(&|own| own["cases"][0]["force"] = Value::Null, "force");
        spoil(&|own| own["cases"][0] = Value::Array(Vec::new()), "list");
        spoil(&|own| own["plates"][0]["hold"] = "left".into(), "hold");
        spoil(&|own| own["in_plane"] = "elastc".into(), "elastc");
        for key in ["name", "force_x", "force_z", "moment_z", "x", "z"] {
            let without = |own: &mut Value| {
                own["cases"][0].as_object_mut().unwrap().remove(key);
            };
            spoil(&without, key);
        }
        for key in ["joint", "bolts", "cases", "title"] {
            let without = |own: &mut Value| {
                own.as_object_mut().unwrap().remove(key);
            };
            spoil(&without, key);
        }
    }

    /// The word stands in the answer, and every bolt and case with it.
    #[test]
    fn answers_are_written() {
        let connection: Connection = from_value(example()).unwrap();
        let answer = to_value(connection.check().unwrap()).unwrap();
        assert_eq!(answer["word"], "holds");
        assert_eq!(answer["bolts"].as_array().unwrap().len(), 12);
        assert_eq!(answer["cases"][0]["loads"].as_array().unwrap().len(), 12);
    }

    #[cfg(feature = "schema")]
    #[test]
    fn the_schema_is_current() {
        let file = "examples/data/connection.schema.json";
        let schema = shankline::connection::schema();
        if std::env::var_os("UPDATE_EXAMPLES").is_some() {
            std::fs::write(file, &schema).unwrap();
        }
        assert_eq!(std::fs::read_to_string(file).unwrap(), schema);
    }
}

/// What the check of the group by EN 1993-1-8 3.7(1) uses, if there is one.
fn group_rule(connection: &Connection) -> Option<f64> {
    let verdict = connection.check().unwrap();
    let mut checks = verdict.checks.iter();
    let own = checks.find(|own| own.check.method.citation.contains("3.7(1)"));
    own.map(|own| own.check.utilisation.value)
}

/// Four bolts share a load through their centroid evenly, so that the group is used as much as each; the clause is of no load
/// that turns or pulls.
#[test]
fn the_group_rule_is_of_loads_through_the_centroid() {
    let on = |bolts: JointBuilder, columns: usize, case: LoadCase| {
        let own = Connection::builder(bolts).rows_and_columns(2, columns, "60 mm", "60 mm");
        let square = || Outline::rectangle("160 mm", "160 mm").unwrap();
        let own = own.plate("plate", square()).plate("support", square());
        let own = own.in_plane(InPlane::Elastic);
        own.cases([case]).build().unwrap()
    };
    let pushed = || at_origin("push", [80e3, 0.0, 0.0]);
    let straight = on(bolt(), 2, pushed());
    let verdict = straight.check().unwrap();
    let used = |mode: Mode| {
        let checks = verdict.bolts[0].verdict.checks.iter();
        let checks = checks.filter(|check| check.mode == mode);
        checks
            .map(|check| check.utilisation.value)
            .fold(0.0, f64::max)
    };
    let each = used(Mode::BoltShear).max(used(Mode::Bearing));
    assert!(each > 0.1);
    let group = group_rule(&straight).unwrap();
    assert!((group / each - 1.0).abs() < 1e-9, "{group} {each}");
    let off = LoadCase::new(
        "turn",
        [80e3, 0.0, 0.0].map(newtons),
        [0.0, 50.0, 0.0].map(mm),
    );
    assert_eq!(group_rule(&on(bolt(), 2, off)), None);
    let pulled = at_origin("pull", [80e3, 0.0, 20e3]);
    assert_eq!(group_rule(&on(bolt(), 2, pulled)), None);
}
