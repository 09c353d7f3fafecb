//! The design search: a naive loop agrees, order and repetition change nothing, more choice is never
//! worse, more load never helps, and every combination is accounted for.

use std::cmp::Ordering;

use shankline::joint::{
    Account, Candidate, Design, DesignSpace, Designs, Environment, Finding, Finish, HoleRule,
    Joint, JointBolt, JointLoad, JointMethods, JointNut, JointPly, JointWasher, Need, NutReason,
    Objective, OnHand, Pattern, Prying, Repeats, RuledOutReason, Scope, SetAside, Slip, Tightening,
    TorqueTightening, TurnedDownReason, Verdict, Word,
};
use shankline::material::Severity;
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::strength::slip::SlipMethod;
use shankline::strength::strip::nut_pairing;
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::tables::holes::{ClearanceHole, HoleFit};
use shankline::tables::nut_grades::NutGradeRow;
use shankline::tables::screws::{HexCapScrew, HexScrew, ProductGrade};
use shankline::units::{Mass, celsius, percent};

/// Numbers from a seed, the same on every machine (Marsaglia's xorshift).
struct Random(u64);

impl Random {
    fn below(&mut self, end: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from((self.0 >> 33) % end as u64).unwrap()
    }

    fn coin(&mut self) -> bool {
        self.below(2) == 0
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        #[allow(clippy::cast_precision_loss)]
        let part = self.below(1_000_001) as f64 / 1e6;
        low + part * (high - low)
    }

    /// Some of the items, at least one, in any order.
    fn some<T: Copy>(&mut self, items: &[T], most: usize) -> Vec<T> {
        let mut left = items.to_vec();
        let count = 1 + self.below(most.min(items.len()));
        (0..count)
            .map(|_| left.swap_remove(self.below(left.len())))
            .collect()
    }
}

const OBJECTIVES: [Objective; 9] = [
    Objective::ShankInPlanes,
    Objective::NoCut,
    Objective::Mass,
    Objective::Utilisation,
    Objective::Diameter,
    Objective::Length,
    Objective::Washers,
    Objective::PartNumbers,
    Objective::OnHand,
];

fn threads(names: &[&str]) -> Vec<Thread> {
    names.iter().map(|name| name.parse().unwrap()).collect()
}

fn nuts(pairs: &[(NutStyle, Option<NutGrade>)]) -> Vec<JointNut> {
    let nut = |&(style, grade)| JointNut {
        style,
        grade,
        finish: None,
    };
    pairs.iter().map(nut).collect()
}

/// Parts of one system to draw from.
struct Catalogue {
    sizes: Vec<Thread>,
    products: &'static [ScrewProduct],
    grades: &'static [BoltGrade],
    nuts: Vec<JointNut>,
    styles: &'static [WasherStyle],
    rules: LengthRules,
}

impl Catalogue {
    fn inch() -> Self {
        Self {
            sizes: threads(&[
                "3/8-16 UNC",
                "3/8-24 UNF",
                "1/2-13 UNC",
                "1/2-20 UNF",
                "5/8-11 UNC",
                "3/4-10 UNC",
            ]),
            products: &[ScrewProduct::HexCapScrew],
            grades: &[
                BoltGrade::Sae(SaeGrade::Grade2),
                BoltGrade::Sae(SaeGrade::Grade5),
                BoltGrade::Sae(SaeGrade::Grade8),
            ],
            nuts: nuts(&[
                (NutStyle::Hex, Some(NutGrade::SaeJ995Grade5)),
                (NutStyle::Hex, Some(NutGrade::SaeJ995Grade8)),
                (NutStyle::HexThick, Some(NutGrade::AstmA563B)),
                (NutStyle::InsertLockNe, Some(NutGrade::AsmeB18_16_6GradeN8)),
            ]),
            styles: &[WasherStyle::TypeANarrow, WasherStyle::F436],
            rules: LengthRules::fabrication(UnitSystem::UsCustomary),
        }
    }

    fn metric() -> Self {
        Self {
            sizes: threads(&["M8", "M10", "M12", "M16", "M20"]),
            products: &[ScrewProduct::Iso4014, ScrewProduct::Iso4017],
            grades: &[
                BoltGrade::Iso(PropertyClass::Class5_8),
                BoltGrade::Iso(PropertyClass::Class8_8),
                BoltGrade::Iso(PropertyClass::Class10_9),
            ],
            nuts: nuts(&[
                (NutStyle::Iso4032, Some(NutGrade::Iso898_2Class8)),
                (NutStyle::Iso4032, Some(NutGrade::Iso898_2Class10)),
                (NutStyle::Iso7040, Some(NutGrade::Iso898_2Class8)),
                (NutStyle::Iso4035, Some(NutGrade::Iso898_2Class05)),
            ]),
            styles: &[WasherStyle::Iso7089, WasherStyle::Iso7093],
            rules: LengthRules::fabrication(UnitSystem::Si),
        }
    }
}

const ZINC: Finish = Finish::ZincPlated { baked: false };

/// The stack of a joint: mostly with everything that a verdict asks for.
fn stack(random: &mut Random, loose: bool) -> Stack {
    let plies = 2 + random.below(2);
    // Thickness of the washers before they are chosen.
    let washer = JointWasher::new("washer", Spread::exact(millimetres(2.0))).metal(
        if random.below(4) == 0 {
            Metal::Steel
        } else {
            Metal::Zinc
        },
    );
    let material =
        ["ASTM A36 steel", "6061-T6 aluminium, typical"][usize::from(random.below(6) == 0)];
    let metal = if material == "ASTM A36 steel" {
        Metal::Zinc
    } else {
        Metal::Aluminium
    };
    let end_distance = millimetres(random.between(25.0, 60.0));
    let mut stack = Stack::builder();
    for ply in 0..plies {
        let thickness = millimetres(random.between(5.0, 30.0));
        let ply = JointPly::new(
            format!("ply {ply}"),
            thickness.plus_minus(millimetres(random.between(0.0, 0.5))),
        );
        stack = stack.add(if loose {
            ply
        } else {
            ply.material(material)
                .metal(metal)
                .end_distance(end_distance)
                .edge_distance(millimetres(40.0))
                .width(millimetres(90.0))
        });
    }
    if random.coin() {
        stack = stack.washer_under_head(washer.clone());
    }
    if random.below(4) == 0 {
        stack = stack.washer_to_add_under_head(washer.clone());
    }
    let count = random.below(2);
    stack
        .shear_planes(1..plies)
        .washers_under_nut(washer, count)
        .build()
        .unwrap()
}

fn tightening(random: &mut Random) -> Option<Tightening> {
    let factor = NutFactor::new(0.15, 0.18, 0.2).unwrap();
    let torque = TorqueTightening::new(factor, PreloadTarget::Reusable);
    match random.below(16) {
        0 => None,
        // Nobody says what is lost of the preload.
        1 => Some(Tightening::Torque(torque)),
        2..9 => Some(Tightening::Snug),
        _ => Some(Tightening::Torque(torque.relaxation(percent(5.0)))),
    }
}

fn load(random: &mut Random) -> JointLoad {
    let across = newtons(random.between(0.0, 40e3));
    let along = newtons(if random.coin() {
        random.between(0.0, 15e3)
    } else {
        0.0
    });
    let repeats = if random.coin() {
        Repeats::Between {
            // Of plies under a load across that comes and goes nobody here has a method.
            across_least: if random.below(6) == 0 {
                newtons(0.0)
            } else {
                across
            },
            along_least: newtons(0.0),
            cycles: None,
        }
    } else {
        Repeats::Never
    };
    JointLoad {
        across,
        along,
        repeats,
        prying: Some(Prying::None).filter(|_| random.below(20) > 0),
        shock_factor: random.between(1.0, 1.5),
        load_factor: Some(random.between(1.0, 1.5)).filter(|_| random.below(20) > 0),
    }
}

/// A joint of the catalogue, drawn at random.
fn joint(random: &mut Random, parts: &Catalogue) -> Joint {
    // Little is asked of the bolt alone, so that nothing else need be said.
    let scope = [Scope::Bolt, Scope::BoltAndNut, Scope::Joint][random.below(6).min(2)];
    let loose = scope != Scope::Joint && random.coin();
    let mut rules = parts.rules.with_washers_under_head(2);
    if random.below(3) == 0 {
        rules = rules
            .with_cut(CutRule::Never)
            .with_protrusion(1.0, Some(9.0));
    }
    let finish = match random.below(16) {
        0 => None,
        1 => Some(Finish::HotDipGalvanized),
        _ => Some(ZINC),
    };
    let mut nut = parts.nuts[0];
    nut.finish = finish.filter(|_| random.below(16) > 0);
    let mut environment = Environment {
        vibration: random.coin(),
        ..Environment::workshop()
    };
    if random.below(6) == 0 {
        environment.hottest = celsius(random.between(25.0, 120.0));
    }
    if random.below(5) == 0 {
        environment.exposure = [Exposure::Controlled, Exposure::Harsh][random.below(2)];
    }
    // EN 1993-1-8 has no inch bolts, AISC 360 no small ones.
    let mut methods = match (random.below(6), parts.sizes[0].is_unified()) {
        (0, _) => JointMethods::aisc_lrfd(AiscEdition::E2010),
        (1..3, false) => JointMethods::en_1993(),
        _ => JointMethods::machine_design(1.5),
    };
    if random.below(6) == 0 {
        methods.slip = Slip::Resisted(SlipMethod::Stated {
            friction: 0.2,
            safety_factor: 1.2,
        });
    }
    let aside = [Mode::Fatigue, Mode::Settling];
    let set_aside = aside
        .into_iter()
        .filter(|_| random.below(3) == 0)
        .map(|mode| SetAside::new(mode, "own test (invented)"))
        .collect();
    Joint {
        title: "drawn at random".into(),
        bolt: JointBolt {
            product: parts.products[0],
            thread: parts.sizes[0],
            grade: parts.grades[0],
            length: None,
            finish,
        },
        nut: Some(nut),
        stack: stack(random, loose),
        pattern: Pattern::Single,
        load: load(random),
        environment,
        tightening: tightening(random),
        rules,
        methods,
        scope,
        set_aside,
        granted: Vec::new(),
        own: OwnParts::default(),
    }
}

/// A joint and a space for it, drawn at random.
fn drawn(random: &mut Random) -> (Joint, DesignSpace, Vec<Objective>) {
    let parts = if random.coin() {
        Catalogue::inch()
    } else {
        Catalogue::metric()
    };
    let joint = joint(random, &parts);
    let fit = [HoleFit::Close, HoleFit::Normal, HoleFit::Loose][random.below(3)];
    let mut space = DesignSpace::new()
        .threads(random.some(&parts.sizes, 4))
        .products(random.some(parts.products, 2))
        .grades(random.some(parts.grades, 3))
        .nuts(random.some(&parts.nuts, 3))
        .washers(random.some(parts.styles, 2))
        .holes(fit);
    if random.coin() {
        space = space.utilisation_at_most(percent(random.between(50.0, 100.0)));
    }
    if random.coin() {
        let drawers = (0..3).map(|_| {
            let thread = random.some(&parts.sizes, 1)[0];
            let product = random.some(parts.products, 1)[0];
            let lengths: Vec<Length> = ScrewSeries::new(product, &thread)
                .unwrap()
                .stock_lengths()
                .collect();
            let length = Some(random.some(&lengths, 1)[0]);
            let grade = random.some(parts.grades, 1)[0];
            OnHand {
                bolt: JointBolt {
                    product,
                    thread,
                    grade,
                    length,
                    finish: joint.bolt.finish.or(Some(ZINC)),
                },
                count: random.below(8),
            }
        });
        space = space.on_hand(drawers.collect::<Vec<_>>(), 4);
    }
    (joint, space, random.some(&OBJECTIVES, 4))
}

/// Mass in kilograms by hand, in plain numbers: see the table of `PartsMass`.
fn mass_by_hand(found: &Found) -> f64 {
    use std::f64::consts::FRAC_PI_4;
    let (bolt, candidate) = (found.bolt, found.candidate);
    let (d, d2) = (
        bolt.thread.nominal_diameter().value,
        bolt.thread.basic_pitch_diameter().value,
    );
    let (width, height) = if bolt.thread.is_unified() {
        let head = HexCapScrew::get(bolt.thread.nominal_diameter()).unwrap();
        (
            head.width_across_flats_basic.value,
            head.head_height_basic.value,
        )
    } else {
        let head = HexScrew::get(bolt.thread.nominal_diameter(), ProductGrade::A).unwrap();
        (
            head.width_across_flats_max.value,
            head.head_height_nominal.value,
        )
    };
    let screw = candidate.screw;
    let end = candidate.cut.map_or(screw.nominal, |cut| cut.length).value;
    let middle = 0.5 * (screw.body_length_min.value + screw.grip_gaging_length_max.value);
    let shank = if screw.fully_threaded {
        0.0
    } else {
        middle.min(end)
    };
    let nut = Nut::find(found.nut.style, &bolt.thread).unwrap();
    let nut_width = nut.width_across_flats_basic.map_or_else(
        || {
            0.5 * (nut.width_across_flats_min.unwrap().value
                + nut.width_across_flats_max.unwrap().value)
        },
        |width| width.value,
    );
    let washer = Washer::find(found.washers, &bolt.thread).unwrap();
    let outside = washer
        .outside_diameter_nominal
        .or(washer.outside_diameter_max)
        .unwrap()
        .value;
    let inside = washer
        .inside_diameter_nominal
        .or(washer.inside_diameter_min)
        .unwrap()
        .value;
    let ring =
        FRAC_PI_4 * (outside.powi(2) - inside.powi(2)) * washer.thickness().unwrap().nominal.value;
    let hexagon = |width: f64| 0.75_f64.sqrt() * width * width;
    let washers = found.scores[6];
    7850.0
        * (hexagon(width) * height
            + FRAC_PI_4 * (d * d * shank + d2 * d2 * (end - shank))
            + (hexagon(nut_width) - FRAC_PI_4 * d2 * d2) * nut.height().unwrap().nominal.value
            + washers * ring)
}

/// What the naive loop keeps of a joint that holds.
#[derive(Clone, Copy)]
struct Found {
    bolt: JointBolt,
    nut: JointNut,
    washers: WasherStyle,
    candidate: Candidate,
    scores: [f64; 9],
}

/// The stack built from nothing with washers of a style and other holes.
fn stack_by_hand(
    joint: &Joint,
    style: WasherStyle,
    thread: &Thread,
    hole: Length,
) -> Option<Stack> {
    let (head_washers, nut_washers) = head_and_nut_washers(joint);
    let washer = JointWasher::find(style, thread).ok()?;
    let washer = match joint.stack.washers_under_nut() {
        Some((own, _)) => washer.metal(own.metal.unwrap()),
        None => washer,
    };
    let mut stack = Stack::builder();
    for _ in 0..head_washers {
        stack = stack.washer_under_head(washer.clone());
    }
    if joint.stack.washer_to_add_under_head().is_some() {
        stack = stack.washer_to_add_under_head(washer.clone());
    }
    for ply in joint.stack.plies() {
        stack = stack.add(ply.clone().hole(hole));
    }
    let stack = stack
        .shear_planes(joint.stack.shear_planes().iter().copied())
        .washers_under_nut(washer, nut_washers)
        .build();
    Some(stack.unwrap())
}

/// Every joint built from nothing, in every stock length, and checked.
fn naive(joint: &Joint, space: &DesignSpace) -> Vec<Found> {
    let (head_washers, _) = head_and_nut_washers(joint);
    let HoleRule::Fit(fit) = space.holes else {
        panic!()
    };
    let mut all = Vec::new();
    for &thread in &space.threads {
        for &product in &space.products {
            let Ok(series) = ScrewSeries::new(product, &thread) else {
                continue;
            };
            for &grade in &space.grades {
                for &nut in &space.nuts {
                    let (Some(grade_of_nut), Some(shape)) = (nut.grade, nut.style.shape()) else {
                        panic!()
                    };
                    if grade_of_nut
                        .strength(shape, &thread, NutTapping::Usual)
                        .is_err()
                    {
                        continue;
                    }
                    for &style in &space.washers {
                        let hole = ClearanceHole::find(&thread, fit).unwrap().diameter_min;
                        let Some(stack) = stack_by_hand(joint, style, &thread, hole) else {
                            continue;
                        };
                        let mut tried = joint.clone();
                        tried.stack = stack;
                        let finish = joint.nut.unwrap().finish;
                        tried.nut = Some(JointNut { finish, ..nut });
                        for length in series.stock_lengths() {
                            tried.bolt = JointBolt {
                                product,
                                thread,
                                grade,
                                length: Some(length),
                                finish: joint.bolt.finish,
                            };
                            let Ok(check) = tried.check() else { continue };
                            let used = check
                                .checks
                                .iter()
                                .filter(|check| check.mode != Mode::Tightening)
                                .map(|check| check.utilisation.value)
                                .fold(0.0, f64::max);
                            if check.word() != Word::Holds || used > space.utilisation_max.value {
                                continue;
                            }
                            let chosen = check.candidate;
                            let on_hand = space
                                .on_hand
                                .iter()
                                .any(|item| item.bolt == tried.bolt && item.count >= space.bolts);
                            #[allow(clippy::cast_precision_loss)]
                            let number = |count: usize| count as f64;
                            let washers = head_washers
                                + chosen.washers_added_under_head
                                + chosen.washers_under_nut;
                            let mut found = Found {
                                bolt: tried.bolt,
                                nut: tried.nut.unwrap(),
                                washers: style,
                                candidate: chosen,
                                scores: [
                                    number(chosen.planes_in_run_out + chosen.planes_in_thread),
                                    number(usize::from(chosen.needs_cut)),
                                    0.0, // filled below
                                    used,
                                    thread.nominal_diameter().value,
                                    length.value,
                                    number(washers),
                                    if washers > 0 { 3.0 } else { 2.0 },
                                    number(usize::from(!on_hand)),
                                ],
                            };
                            found.scores[2] = mass_by_hand(&found);
                            all.push(found);
                        }
                    }
                }
            }
        }
    }
    all
}

fn score(design: &Design, objective: Objective) -> f64 {
    use shankline::joint::Score;
    match design.score(objective) {
        #[allow(clippy::cast_precision_loss)]
        Score::Count(count) => count as f64,
        Score::Utilisation(used) => used.value,
        Score::Length(length) => length.value,
        Score::Mass(mass) => mass.map_or(f64::INFINITY, |mass: Mass| mass.value),
        other => panic!("{other:?}"),
    }
}

fn head_and_nut_washers(joint: &Joint) -> (usize, usize) {
    let nut = joint
        .stack
        .washers_under_nut()
        .map_or(0, |(_, count)| count);
    (joint.stack.washers_under_head().len(), nut)
}

/// Runs `check` on so many random spaces.
fn on_random_spaces(count: u64, check: impl Fn(u64, &Joint, &DesignSpace, &[Objective], &Designs)) {
    for seed in 1..=count {
        let mut random = Random(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15));
        let (joint, space, objectives) = drawn(&mut random);
        let designs = joint.design(&space, &objectives).unwrap();
        check(seed, &joint, &space, &objectives, &designs);
    }
}

#[test]
fn a_naive_loop_finds_the_same_designs() {
    let (feasible, winners) = (std::cell::Cell::new(0), std::cell::Cell::new(0));
    on_random_spaces(300, |seed, joint, space, objectives, designs| {
        let all = naive(joint, space);
        // Of each combination there is one design if and only if some length holds.
        let combination = |bolt: JointBolt, nut: JointNut, washers: Option<WasherStyle>| {
            format!(
                "{:?}",
                (
                    JointBolt {
                        length: None,
                        ..bolt
                    },
                    nut,
                    washers
                )
            )
        };
        let mut by_hand: Vec<String> = all
            .iter()
            .map(|found| combination(found.bolt, found.nut, Some(found.washers)))
            .collect();
        by_hand.sort();
        by_hand.dedup();
        let mut searched: Vec<String> = designs
            .feasible()
            .iter()
            .map(|design| combination(design.choice.bolt, design.choice.nut, design.choice.washers))
            .collect();
        searched.sort();
        let differ = |a: &[String], b: &[String]| {
            let only = a.iter().filter(|own| !b.contains(own));
            only.cloned().collect::<Vec<_>>()
        };
        assert_eq!(
            differ(&searched, &by_hand),
            [""; 0],
            "seed {seed}: searched only"
        );
        assert_eq!(
            differ(&by_hand, &searched),
            [""; 0],
            "seed {seed}: by hand only"
        );
        feasible.set(feasible.get() + searched.len());

        scores_are_those_by_hand(seed, objectives, designs, &all);
        winners.set(winners.get() + usize::from(designs.best().is_some()));
    });
    assert!(
        feasible.get() > 500 && winners.get() > 60,
        "{} {}",
        feasible.get(),
        winners.get()
    );
}

/// The scores of each design are those by hand, and none by hand is better.
fn scores_are_those_by_hand(seed: u64, objectives: &[Objective], designs: &Designs, all: &[Found]) {
    let by_hand_of = |design: &Design| {
        let bolt = design.choice.bolt;
        let found = all.iter().find(|found| {
            found.bolt == bolt
                && found.nut == design.choice.nut
                && Some(found.washers) == design.choice.washers
        });
        *found.unwrap()
    };
    for design in designs.feasible() {
        let found = by_hand_of(design);
        for (objective, by_hand) in OBJECTIVES.into_iter().zip(found.scores) {
            let own = score(design, objective);
            assert!(
                (own - by_hand).abs() <= 1e-12 * by_hand,
                "{objective}: {own}, {by_hand}"
            );
        }
    }
    let position = |objective: &Objective| OBJECTIVES.iter().position(|o| o == objective).unwrap();
    let order = |a: &Found, b: &Found| {
        objectives
            .iter()
            .map(|objective| {
                a.scores[position(objective)].total_cmp(&b.scores[position(objective)])
            })
            .find(|order| order.is_ne())
            .unwrap_or(Ordering::Equal)
    };
    for design in designs.feasible() {
        let own = by_hand_of(design);
        let alike = |other: &&Found| {
            let length = own.bolt.length;
            let bolt = JointBolt {
                length,
                ..other.bolt
            };
            (bolt, other.nut, other.washers) == (own.bolt, own.nut, own.washers)
        };
        assert!(
            all.iter()
                .filter(alike)
                .all(|other| order(&own, other).is_le()),
            "seed {seed}"
        );
    }
    let Some(best) = designs.best() else { return };
    let best = by_hand_of(best);
    assert!(
        all.iter().all(|other| order(&best, other).is_le()),
        "seed {seed}"
    );
}

#[test]
fn every_design_holds_and_every_combination_is_accounted_for() {
    on_random_spaces(150, |seed, _, space, objectives, designs| {
        for design in designs.feasible() {
            let joint = designs.joint(&design.choice).unwrap();
            let check = joint.check().unwrap();
            assert_eq!(check.word(), Word::Holds, "seed {seed}");
            assert_eq!(check.open().count(), 0);
            assert_eq!(check.candidate, design.candidate);
            assert!(design.utilisation() <= space.utilisation_max);
            design.mass_derivation().unwrap().check().unwrap();
        }
        let best = designs
            .best()
            .map(|best| designs.joint(&best.choice).unwrap().check().unwrap());
        assert_eq!(designs.verdict, best);
        for other in designs.rejected() {
            assert!(!other.reasons.is_empty());
            let joint = designs.joint(&other.choice).unwrap();
            let within = |check: &Verdict| {
                let mut checks = check.checks.iter();
                checks.all(|check| {
                    check.mode == Mode::Tightening || check.utilisation <= space.utilisation_max
                })
            };
            assert!(
                !joint
                    .check()
                    .is_ok_and(|check| check.holds() && within(&check))
            );
        }
        let ruled_out: usize = designs
            .ruled_out()
            .iter()
            .map(|group| group.combinations)
            .sum();
        assert_eq!(
            designs.feasible().len() + designs.rejected().len() + ruled_out,
            designs.combinations
        );
        // In order, and each step has its objective.
        for (rank, pair) in designs.feasible().windows(2).enumerate() {
            if let Some(objective) = designs.decided_by(rank) {
                assert!(score(&pair[0], objective) < score(&pair[1], objective));
            }
            for objective in objectives {
                let (a, b) = (score(&pair[0], *objective), score(&pair[1], *objective));
                assert!(a <= b);
                if a < b {
                    break;
                }
            }
        }
    });
}

#[test]
fn order_and_repetition_change_nothing() {
    on_random_spaces(60, |_, joint, space, objectives, designs| {
        let mut other = space.clone();
        other.threads.reverse();
        other.threads.extend_from_slice(&space.threads);
        other.products.reverse();
        other.grades.rotate_left(1);
        other.grades.push(other.grades[0]);
        other.nuts.reverse();
        other.washers.reverse();
        other.on_hand.reverse();
        assert_eq!(&joint.design(&other, objectives).unwrap(), designs);
    });
}

#[test]
fn more_choice_is_never_worse_and_more_load_never_helps() {
    on_random_spaces(100, |seed, joint, space, objectives, designs| {
        let mut fewer = space.clone();
        fewer.threads.pop();
        fewer.grades.pop();
        if !fewer.threads.is_empty() && !fewer.grades.is_empty() {
            if let Some(best) = joint.design(&fewer, objectives).unwrap().best() {
                let wider = designs.best().expect("it is in the wider space too");
                let order = objectives
                    .iter()
                    .map(|&o| score(wider, o).total_cmp(&score(best, o)))
                    .find(|order| order.is_ne());
                assert_ne!(order, Some(Ordering::Greater), "seed {seed}");
            }
        }
        // The best length may change with the load: compared are combinations.
        let mut heavier = joint.clone();
        heavier.load.shock_factor *= 1.3;
        let heavier = heavier.design(space, objectives).unwrap();
        let key = |design: &Design| {
            let bolt = JointBolt {
                length: None,
                ..design.choice.bolt
            };
            format!("{:?}", (bolt, design.choice.nut, design.choice.washers))
        };
        let before: Vec<String> = designs.feasible().iter().map(key).collect();
        for design in heavier.feasible() {
            assert!(before.contains(&key(design)), "seed {seed}");
        }
    });
}

/// A swing beam on its hanger plates, with all that a verdict asks for; invented.
fn hanger() -> Joint {
    let thread: Thread = "M12".parse().unwrap();
    let ply = |name: &str| {
        JointPly::new(name, millimetres(15.0).plus_minus(millimetres(0.3)))
            .material("ASTM A36 steel")
            .hole(millimetres(13.5))
            .end_distance(millimetres(40.0))
            .edge_distance(millimetres(35.0))
            .width(millimetres(70.0))
    };
    let washer = JointWasher::find(WasherStyle::Iso7089, &thread).unwrap();
    Joint {
        title: "swing beam (invented)".into(),
        bolt: JointBolt {
            product: ScrewProduct::Iso4014,
            thread,
            grade: PropertyClass::Class8_8.into(),
            length: None,
            finish: Some(ZINC),
        },
        nut: Some(JointNut {
            style: NutStyle::Iso4032,
            grade: None,
            finish: Some(ZINC),
        }),
        stack: Stack::builder()
            .add(ply("plate"))
            .add(ply("beam"))
            .shear_planes([1])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap(),
        pattern: Pattern::Single,
        load: JointLoad::across(newtons(10e3)),
        environment: Environment::workshop(),
        tightening: Some(Tightening::Snug),
        rules: LengthRules::fabrication(UnitSystem::Si),
        methods: JointMethods::machine_design(2.0),
        scope: Scope::Joint,
        set_aside: Vec::new(),
        granted: Vec::new(),
        own: OwnParts::default(),
    }
}

fn reason_of(designs: &Designs, thread: &str) -> RuledOutReason {
    let of_thread = |group: &&shankline::joint::RuledOut| group.thread.to_string() == thread;
    designs
        .ruled_out()
        .iter()
        .find(of_thread)
        .unwrap()
        .reason
        .clone()
}

#[test]
fn holes_that_are_there_bound_the_diameter() {
    let space = DesignSpace::new()
        .threads(threads(&["M8", "M10", "M12", "M16"]))
        .washers([WasherStyle::Iso7089]);
    let designs = hanger().design(&space, &[]).unwrap();
    assert_eq!(
        designs.best().unwrap().choice.bolt.thread.to_string(),
        "M12"
    );
    assert_eq!(
        reason_of(&designs, "M16"),
        RuledOutReason::HoleTooSmall {
            ply: 1,
            hole: millimetres(13.5)
        }
    );
    // ISO 273, coarse series: 12 mm for M10, 10 mm for M8.
    assert_eq!(
        reason_of(&designs, "M10"),
        RuledOutReason::HoleTooLarge {
            ply: 1,
            hole: millimetres(13.5),
            largest: millimetres(12.0)
        }
    );
    assert_eq!(designs.objectives, Objective::DEFAULT);
}

#[test]
fn each_reason_is_given_with_its_amounts() {
    let mut joint = hanger();
    joint.environment.vibration = true;
    joint.load.across = newtons(12e3);
    let space = DesignSpace::new()
        .threads(threads(&["M6", "M12", "M12x1.25"]))
        .products([ScrewProduct::Iso4014, ScrewProduct::HexCapScrew])
        .grades([
            BoltGrade::Iso(PropertyClass::Class8_8),
            BoltGrade::Sae(SaeGrade::Grade8),
        ])
        .nut_styles([NutStyle::Iso4032, NutStyle::Iso7040])
        .washers([WasherStyle::Iso7089])
        .holes(HoleFit::Normal)
        .utilisation_at_most(percent(60.0));
    let designs = joint.design(&space, &[]).unwrap();
    let all: Vec<String> = designs
        .rejected()
        .iter()
        .flat_map(|other| {
            other
                .reasons
                .iter()
                .map(|reason| reason.text(UnitSystem::Si))
        })
        .chain(
            designs
                .ruled_out()
                .iter()
                .map(|group| format!("{}: {}", group.thread, group.reason)),
        )
        .collect();
    for part in [
        // By hand: M6, 8.8: 0.577 x 640 x 20.12 (thread) or 28.27 (shank) / 2 = 3.7 or 5.2 kN.
        "bolt shear, shear plane 1: 2",
        // 0.577 x 640 x 113.10 / 2 = 20.88 kN; 12 / 20.88 = 57.5 % on shank. M12 holds, but a plain nut:
        "nut: nothing but preload holds it",
        "M12: M12 is not in the table of ASME B18.2.1 hex cap screws",
        "M12x1.25: M12x1.25 is not in the table of ISO 4014",
        "M12: hexagon bolt ISO 4014 is not made in SAE J429 grade 8",
    ] {
        assert!(
            all.iter().any(|line| line.starts_with(part)),
            "{part}: {all:#?}"
        );
    }
    let best = designs.best().unwrap();
    assert_eq!(
        best.choice.nut,
        JointNut {
            style: NutStyle::Iso7040,
            grade: Some(NutGrade::Iso898_2Class8),
            finish: Some(ZINC),
        }
    );
    assert!((best.utilisation().value - 12.0 / 20.88).abs() < 1e-3);
    // A tighter limit turns it down, with the limit.
    let designs = joint
        .design(&space.utilisation_at_most(percent(50.0)), &[])
        .unwrap();
    assert!(designs.best().is_none());
    assert!(designs.rejected().iter().flat_map(|other| &other.reasons).any(|reason| {
        matches!(reason, TurnedDownReason::AboveLimit { limit, .. } if *limit == percent(50.0))
    }));
}

#[test]
fn a_nut_without_grade_gets_the_one_its_bolt_asks_for() {
    let space = DesignSpace::new()
        .grades([PropertyClass::Class8_8, PropertyClass::Class10_9])
        .nut_styles([NutStyle::Iso4032]);
    let designs = hanger().design(&space, &[]).unwrap();
    let pairs: Vec<_> = designs
        .feasible()
        .iter()
        .map(|design| (design.choice.bolt.grade, design.choice.nut.grade))
        .collect();
    // ISO 898-2: class 8 for 8.8, class 10 for 10.9.
    assert_eq!(
        pairs,
        [
            (
                PropertyClass::Class8_8.into(),
                Some(NutGrade::Iso898_2Class8)
            ),
            (
                PropertyClass::Class10_9.into(),
                Some(NutGrade::Iso898_2Class10)
            ),
        ]
    );
    // No standard that was read names a grade for insert nuts on SAE bolts: the weakest that lets the bolt
    // break first.
    let mut inch = hanger();
    inch.bolt = JointBolt {
        product: ScrewProduct::HexCapScrew,
        thread: "1/2-13 UNC".parse().unwrap(),
        grade: SaeGrade::Grade5.into(),
        length: None,
        finish: Some(ZINC),
    };
    let space = DesignSpace::new()
        .nut_styles([NutStyle::InsertLockNe])
        .washers([WasherStyle::TypeANarrow])
        .holes(HoleFit::Normal);
    let designs = inch.design(&space, &[]).unwrap();
    let grade = designs.best().unwrap().choice.nut.grade;
    assert_eq!(grade, Some(NutGrade::AsmeB18_16_6GradeN5));
}

#[test]
fn stock_decides_where_it_must() {
    let bolt = |length, grade: PropertyClass| JointBolt {
        length: Some(millimetres(length)),
        grade: grade.into(),
        ..hanger().bolt
    };
    let drawers = [
        OnHand {
            bolt: bolt(60.0, PropertyClass::Class8_8),
            count: 2,
        },
        OnHand {
            bolt: bolt(65.0, PropertyClass::Class8_8),
            count: 40,
        },
        OnHand {
            bolt: bolt(120.0, PropertyClass::Class10_9),
            count: 40,
        },
    ];
    let space = DesignSpace::new()
        .grades([
            PropertyClass::Class8_8,
            PropertyClass::Class10_9,
            PropertyClass::Class12_9,
        ])
        .on_hand(drawers, 8);
    let free = hanger().design(&space, &[Objective::Length]).unwrap();
    assert!(!free.best().unwrap().on_hand);
    let first = hanger()
        .design(&space, &[Objective::OnHand, Objective::Length])
        .unwrap();
    assert_eq!(first.best().unwrap().choice.bolt, drawers[1].bolt);
    let only = hanger()
        .design(&space.only_on_hand(), &[Objective::Length])
        .unwrap();
    assert_eq!(only.feasible().len(), 1);
    assert_eq!(only.best().unwrap().choice.bolt, drawers[1].bolt);
    // On the screw of 120 mm the nut jams; class 12.9 is not there at all.
    assert!(matches!(
        only.rejected()[0].reasons[0],
        TurnedDownReason::Fault(Finding::Length(_))
    ));
    assert!(matches!(
        only.ruled_out()[0].reason,
        RuledOutReason::NotOnHand { .. }
    ));
}

#[test]
fn without_loads_it_is_a_search_for_parts_and_length() {
    let mut joint = hanger();
    joint.load = JointLoad::none();
    // Nothing loads it: of that nobody knows whether it is meant.
    let designs = joint.design(&DesignSpace::new(), &[]).unwrap();
    assert!(designs.rejected()[0].reasons.iter().all(|reason| {
        matches!(reason, TurnedDownReason::Undecided(missing) if missing.need == Need::Load)
    }));
    joint.set_aside = vec![SetAside::new(Mode::Loads, "parts and length only")];
    let space = DesignSpace::new()
        .products([ScrewProduct::Iso4014, ScrewProduct::Iso4017])
        .nut_styles([NutStyle::Iso4032, NutStyle::Iso4033, NutStyle::Iso7040]);
    let designs = joint.design(&space, &[]).unwrap();
    let best = designs.best().unwrap();
    assert_eq!(best.choice.bolt.product, ScrewProduct::Iso4014);
    assert_eq!(
        (best.candidate.planes_on_shank, best.utilisation().value),
        (1, 0.0)
    );
    // The length is that of the length search.
    let series = ScrewSeries::new(ScrewProduct::Iso4014, &joint.bolt.thread).unwrap();
    let nut = NutEnd::of(Nut::find(best.choice.nut.style, &joint.bolt.thread).unwrap()).unwrap();
    let search = LengthSearch::new(&joint.stack, &series, nut, joint.rules)
        .unwrap()
        .run()
        .unwrap();
    assert_eq!(
        search.best().unwrap().screw.nominal,
        best.candidate.screw.nominal
    );
}

#[test]
fn what_makes_no_sense_is_refused() {
    let joint = hanger();
    let refused = |space: &DesignSpace| joint.design(space, &[]).unwrap_err().to_string();
    let unwashered = DesignSpace::new().threads(threads(&["M12", "M16"]));
    assert!(refused(&unwashered).contains("no style of washer is named"));
    // What is made for one diameter does not go with another.
    let other = DesignSpace::new()
        .threads(threads(&["M16"]))
        .washers([WasherStyle::Iso7089]);
    assert!(joint.design(&other, &[]).is_ok());
    let mut running = joint.clone();
    let factor = NutFactor::new(0.16, 0.18, 0.2).unwrap();
    running.tightening = Some(Tightening::Torque(
        TorqueTightening::new(factor, PreloadTarget::Reusable)
            .relaxation(percent(5.0))
            .prevailing(Spread::exact(newton_metres(5.0))),
    ));
    let error = running.design(&other, &[]).unwrap_err().to_string();
    assert_eq!(
        error,
        "the running torque given is that of M12: it does not go with M16"
    );
    let unmeasured = OnHand {
        bolt: joint.bolt,
        count: 5,
    };
    assert!(refused(&DesignSpace::new().on_hand([unmeasured], 1)).contains("length of a M12"));
    let uncoated = OnHand {
        bolt: JointBolt {
            length: Some(millimetres(60.0)),
            finish: None,
            ..joint.bolt
        },
        count: 5,
    };
    assert!(refused(&DesignSpace::new().on_hand([uncoated], 1)).contains("coating of a M12"));
    assert!(refused(&DesignSpace::new().only_on_hand()).contains("there are none"));
    for bad in [0.0, -1.0, 1.01, f64::NAN, f64::INFINITY] {
        let space = DesignSpace::new().utilisation_at_most(Ratio::from(bad));
        assert!(refused(&space).starts_with("greatest utilisation"));
    }
    let mut loaded = joint.clone();
    loaded.load.across = newtons(f64::NAN);
    assert!(loaded.design(&DesignSpace::new(), &[]).is_err());
    assert!(refused(&DesignSpace::new().on_hand([], 0)).starts_with("number of bolts wanted"));
    let mut many = DesignSpace::new();
    many.threads = vec![joint.bolt.thread; 400];
    assert!(joint.design(&many, &[]).is_ok()); // repetitions do not count
    for nothing in [f64::MIN_POSITIVE, 5e-324] {
        loaded.load.across = newtons(nothing);
        assert!(loaded.design(&DesignSpace::new(), &[]).is_err());
    }
    // Numbers at the edge of what a load can be: reasons, no panic.
    for across in [1e12, 1e-55] {
        for shock in [1.0, 100.0] {
            let mut extreme = joint.clone();
            extreme.load.across = newtons(across);
            extreme.load.along = newtons(across);
            extreme.load.shock_factor = shock;
            let designs = extreme.design(&DesignSpace::new(), &[]).unwrap();
            assert_eq!(designs.feasible().len() + designs.rejected().len(), 1);
            for other in designs.rejected() {
                assert!(!other.reasons[0].text(UnitSystem::UsCustomary).is_empty());
            }
        }
    }
    let mut ruled = joint.clone();
    ruled.rules = ruled.rules.with_protrusion(-1.0, None);
    assert!(ruled.design(&DesignSpace::new(), &[]).is_err());
    // What no part exists for is no error.
    let odd = DesignSpace::new()
        .threads(threads(&["M12x1"]))
        .washers([WasherStyle::F436]);
    let designs = joint.design(&odd, &[]).unwrap();
    assert_eq!(
        (
            designs.feasible().len(),
            designs.rejected().len(),
            designs.combinations
        ),
        (0, 0, 1)
    );
    assert!(matches!(
        reason_of(&designs, "M12x1"),
        RuledOutReason::NoWasher { .. }
    ));
    // A plain nut on a hinge is turned down for what it is.
    let mut hinge = joint;
    hinge.environment.rotates = true;
    let designs = hinge.design(&DesignSpace::new(), &[]).unwrap();
    assert!(
        designs.rejected()[0]
            .reasons
            .contains(&TurnedDownReason::Fault(Finding::Nut(
                NutReason::FrictionLockTurns
            )))
    );
}

/// A nut is chosen with a grade that is shown to go with the bolt and its coating, wherever there is one.
#[test]
fn nuts_are_chosen_by_the_pairs_that_are_shown() {
    let inch: &[BoltGrade] = &[
        SaeGrade::Grade2.into(),
        SaeGrade::Grade5.into(),
        SaeGrade::Grade8.into(),
        AstmGrade::A449Type1.into(),
        AstmGrade::A354Bd.into(),
    ];
    let metric: &[BoltGrade] = &[
        PropertyClass::Class4_6.into(),
        PropertyClass::Class5_8.into(),
        PropertyClass::Class8_8.into(),
        PropertyClass::Class10_9.into(),
        PropertyClass::Class12_9.into(),
    ];
    let styles = [
        NutStyle::Hex,
        NutStyle::HeavyHex,
        NutStyle::HexThick,
        NutStyle::InsertLockNe,
        NutStyle::Iso4032,
        NutStyle::Iso4033,
        NutStyle::Iso4035,
        NutStyle::Iso7040,
    ];
    let grades: Vec<NutGrade> = NutGradeRow::all_inch()
        .iter()
        .chain(NutGradeRow::all_metric())
        .map(|row| row.grade)
        .collect();
    let (mut shown, mut not_shown) = (0, 0);
    for (names, bolts) in [
        (["1/2-13 UNC", "3/4-10 UNC", "7/16-20 UNF"], inch),
        (["M12", "M20", "M16x1.5"], metric),
    ] {
        for thread in threads(&names) {
            for &bolt in bolts {
                let strength = bolt.strength(thread.nominal_diameter()).unwrap();
                for style in styles {
                    let Some(shape) = style.shape() else { continue };
                    if Nut::find(style, &thread).is_err() {
                        continue;
                    }
                    for finish in [
                        ZINC,
                        Finish::HotDipGalvanized,
                        Finish::HotDipGalvanizedUndersize,
                    ] {
                        let mut joint = hanger();
                        joint.bolt = JointBolt {
                            product: if thread.is_unified() {
                                ScrewProduct::HexCapScrew
                            } else if thread.is_coarse() {
                                ScrewProduct::Iso4014
                            } else {
                                ScrewProduct::Iso8765
                            },
                            thread,
                            grade: bolt,
                            length: None,
                            finish: Some(finish),
                        };
                        joint.nut = Some(JointNut {
                            style,
                            grade: None,
                            finish: Some(finish),
                        });
                        let washers = if thread.is_unified() {
                            WasherStyle::F436
                        } else {
                            WasherStyle::Iso7089
                        };
                        let space = DesignSpace::new().washers([washers]).holes(HoleFit::Normal);
                        let designs = joint.design(&space, &[]).unwrap();
                        let best = designs.best().map(|best| best.choice.nut);
                        let other = designs.rejected().first().map(|other| other.choice.nut);
                        let Some(chosen) = best.or(other) else {
                            continue;
                        };
                        let is_shown = |grade: NutGrade| {
                            let tapping = finish.nut_tapping();
                            let finish = Some(finish);
                            let pair =
                                nut_pairing(&strength, finish, grade, finish, shape, &thread);
                            grade.strength(shape, &thread, tapping).is_ok()
                                && pair.is_ok_and(|pair| pair.severity() == Severity::Fine)
                        };
                        let any = grades.iter().any(|&grade| is_shown(grade));
                        let own = chosen.grade.is_some_and(is_shown);
                        assert_eq!(own, any, "{bolt}, {style}, {finish:?}: {chosen:?}");
                        assert!(own || best.is_none());
                        shown += usize::from(own);
                        not_shown += usize::from(!own);
                    }
                }
            }
        }
    }
    assert!(shown > 80 && not_shown > 20, "{shown} {not_shown}");
}

/// A bolt that is marked at fit-up is cut to what the rules want past the nut: that fills a lock of 2 pitches.
#[test]
fn a_bolt_cut_at_fit_up_fills_its_lock() {
    let mut joint = hanger();
    joint.nut = Some(JointNut {
        style: NutStyle::Iso7040,
        grade: Some(NutGrade::Iso898_2Class8),
        finish: Some(ZINC),
    });
    let (washer, count) = joint.stack.washers_under_nut().unwrap();
    let mut stack = Stack::builder();
    for ply in joint.stack.plies() {
        let mut rough = ply.clone();
        rough.thickness = millimetres(15.0).plus_minus(millimetres(1.5));
        stack = stack.add(rough);
    }
    joint.stack = stack
        .shear_planes([1])
        .washers_under_nut(washer.clone(), count)
        .build()
        .unwrap();
    let verdict = joint.check().unwrap();
    assert!(
        verdict.candidate.needs_cut && verdict.candidate.cut.is_none_or(|cut| !cut.holds_window)
    );
    assert_eq!(verdict.word(), Word::Holds);
    joint.rules = joint.rules.with_protrusion(1.0, Some(5.0));
    let verdict = joint.check().unwrap();
    let faults: Vec<_> = verdict.faults().collect();
    assert!(
        matches!(faults[..], [Finding::LockNotFilled { protrusion, .. }] if (*protrusion - millimetres(1.75)).abs() < millimetres(1e-9)),
        "{faults:?}"
    );
}

/// Where no stock length reaches through the stack, that is the reason, not the spring of a bolt that is too short.
#[test]
fn bolts_that_are_too_short_are_turned_down_for_their_length() {
    let mut joint = hanger();
    joint.load.along = newtons(1e3);
    joint.load.prying = Some(Prying::None);
    let factor = NutFactor::new(0.15, 0.18, 0.2).unwrap();
    joint.tightening = Some(Tightening::Torque(
        TorqueTightening::new(factor, PreloadTarget::Reusable).relaxation(percent(5.0)),
    ));
    let space = DesignSpace::new()
        .threads(threads(&["M3"]))
        .products([ScrewProduct::Iso4017])
        .washers([WasherStyle::Iso7089])
        .holes(HoleFit::Normal);
    let designs = joint.design(&space, &[]).unwrap();
    let reasons = &designs.rejected()[0].reasons;
    let of_length =
        |reason: &TurnedDownReason| matches!(reason, TurnedDownReason::Fault(Finding::Length(_)));
    assert!(reasons.iter().any(of_length), "{reasons:?}");
}

/// A washer that a length needs under the head lies between head and ply as one that was there before: its metal
/// touches theirs.
#[test]
fn washers_added_under_the_head_corrode_too() {
    let copper = |thickness| {
        JointWasher::new("copper washer", Spread::exact(millimetres(thickness)))
            .metal(Metal::Copper)
            .diameters(millimetres(24.0), millimetres(13.0))
    };
    let mut joint = hanger();
    joint.environment.exposure = Exposure::Harsh;
    joint.rules = joint.rules.with_washers_under_head(4);
    let mut stack = Stack::builder().washer_to_add_under_head(copper(2.0));
    for ply in joint.stack.plies() {
        stack = stack.add(ply.clone().metal(Metal::Zinc));
    }
    joint.stack = stack.shear_planes([1]).build().unwrap();
    joint.bolt.length = Some(millimetres(65.0));
    let verdict = joint.check().unwrap();
    assert!(
        verdict.candidate.washers_added_under_head > 0,
        "{:?}",
        verdict.candidate
    );
    assert_eq!(verdict.account(Mode::Corrosion), Account::Fault);
}
