//! Random whole joints, for properties that hold of every joint.
//!
//! A joint is a function of a row of numbers ([`Dice`]); zero is the plainest choice everywhere. So a row that
//! shrinks towards zeros gives the plainest joint that still fails.

use shankline::joint::*;
use shankline::material::Finish;
use shankline::parts::{InsertLength, Locking};
use shankline::prelude::*;
use shankline::strength::check::Mode;
use shankline::strength::ply::{EdgeFinish, SlotDirection};
use shankline::strength::slip::{As4100Faces, Is800Surface, SlipClass, SlipMethod};
use shankline::strength::timber::TimberMethod;
use shankline::tables::galvanic::{Exposure, Metal};
use shankline::tables::timber::TimberKind;
use shankline::units::{degrees, kilograms_per_cubic_metre, ppm_per_kelvin};

#[path = "lives.rs"]
mod lives;
#[path = "trades.rs"]
mod trades;

use lives::{environment, load, rules, tightening};
use trades::Trade;

/// How many numbers a joint takes at most; later choices are plain.
pub const NUMBERS: usize = 160;

/// A row of numbers that choices are made from.
pub struct Dice<'a> {
    left: std::slice::Iter<'a, u16>,
    /// Whether nothing but the usual happens.
    mild: bool,
}

impl<'a> Dice<'a> {
    pub fn new(numbers: &'a [u16]) -> Self {
        Self {
            left: numbers.iter(),
            mild: false,
        }
    }

    fn next(&mut self) -> u16 {
        self.left.next().copied().unwrap_or(0)
    }

    /// From 0 to 1.
    fn share(&mut self) -> f64 {
        f64::from(self.next()) / f64::from(u16::MAX)
    }

    pub fn between(&mut self, least: f64, greatest: f64) -> f64 {
        least + (greatest - least) * self.share()
    }

    pub fn below(&mut self, count: usize) -> usize {
        usize::from(self.next()) * count / (usize::from(u16::MAX) + 1)
    }

    pub fn one<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())]
    }

    /// Whether something uncommon happens: in so many of a hundred, and never in a mild joint.
    pub fn now_and_then(&mut self, percent: f64) -> bool {
        self.unsaid(percent) && !self.mild
    }

    /// Whether a fact is left out: in so many of a hundred.
    fn unsaid(&mut self, percent: f64) -> bool {
        self.share() > 1.0 - percent / 100.0
    }
}

/// The joint of a row of numbers; none where the builder of stacks refuses its plies.
pub fn joint(numbers: &[u16]) -> Option<Joint> {
    let dice = &mut Dice::new(numbers);
    dice.mild = dice.below(3) < 2;
    let (trade, methods) = trades::trade(dice);
    // How much is told: everything, most things, or few.
    let silent = dice.one(&[0.0, 0.0, 0.0, 0.0, 1.0, 3.0, 20.0]);
    let thread: Thread = dice.one(trade.threads).parse().unwrap();
    let d = thread.nominal_diameter();
    let (grade, nut_grade) = dice.one(trade.grades);
    let timber = dice.now_and_then(6.0);
    let methods = further(dice, methods, timber, trade.inch);
    let finish = finish(dice);
    let tapped = dice.now_and_then(12.0);
    let pattern = if dice.now_and_then(12.0) {
        Pattern::Rows {
            along: 1 + dice.below(4),
            across: 1 + dice.below(3),
        }
    } else {
        Pattern::Single
    };
    let exposure = if dice.now_and_then(10.0) {
        dice.one(&[Exposure::Controlled, Exposure::Normal, Exposure::Harsh])
    } else {
        Exposure::Dry
    };
    let metals = exposure != Exposure::Dry || dice.now_and_then(10.0);
    let stack = stack(
        dice,
        &Surroundings {
            trade: &trade,
            thread: &thread,
            silent,
            timber,
            tapped,
            pattern,
            metals,
        },
    )?;
    let said = |dice: &mut Dice| !dice.unsaid(silent);
    let own = own_parts(dice, &trade, &thread, silent, tapped, finish);
    let nut = if tapped || own.nut.is_some() {
        None
    } else {
        Some(JointNut {
            style: dice.one(trade.nuts),
            grade: Some(nut_grade).filter(|_| said(dice)),
            finish: Some(finish).filter(|_| said(dice)),
        })
    };
    Some(Joint {
        title: "joint of the dice (invented)".into(),
        bolt: JointBolt {
            product: match own.screw {
                Some(_) => ScrewProduct::Own,
                None => dice.one(trade.products),
            },
            thread,
            grade: match own.strength {
                Some(_) => BoltGrade::Stated,
                None => grade,
            },
            length: None,
            finish: Some(finish).filter(|_| said(dice)),
        },
        nut,
        stack,
        pattern,
        load: load(dice, d, methods.level, silent),
        environment: environment(dice, exposure),
        tightening: tightening(dice, silent, methods.shear),
        rules: rules(dice, trade.inch),
        methods,
        scope: if dice.now_and_then(10.0) {
            dice.one(&[Scope::BoltAndNut, Scope::Bolt])
        } else {
            Scope::Joint
        },
        set_aside: set_aside(dice, trade.own),
        granted: Vec::new(),
        own,
    })
}

/// Modes that somebody else looks at.
fn set_aside(dice: &mut Dice, of_fittings: bool) -> Vec<SetAside> {
    let elsewhere = |mode| SetAside::new(mode, "looked at elsewhere (invented)");
    if of_fittings && !dice.unsaid(30.0) {
        // What the handbook of aircraft leaves to analysis.
        return [
            Mode::BoltBearing,
            Mode::NetSection,
            Mode::GrossSection,
            Mode::BlockShear,
        ]
        .map(elsewhere)
        .to_vec();
    }
    if dice.now_and_then(8.0) {
        let mode = dice.one(&[Mode::Fatigue, Mode::BlockShear, Mode::Prying, Mode::Slip]);
        return vec![elsewhere(mode)];
    }
    Vec::new()
}

/// Bolt, strength and nut of the shop's own, now and then.
fn own_parts(
    dice: &mut Dice,
    trade: &Trade,
    thread: &Thread,
    silent: f64,
    tapped: bool,
    finish: Finish,
) -> OwnParts {
    let mut own = OwnParts::default();
    let d = thread.nominal_diameter();
    let said = |dice: &mut Dice| !dice.unsaid(silent);
    if dice.now_and_then(8.0) || trade.own {
        // Whole numbers: they come back from a file as they went, also where a check stands at its very limit.
        let least = if trade.own { 850.0 } else { 400.0 };
        let breaks = dice.between(least, 1200.0).round();
        let mut strength = OwnStrength::new("shop steel (invented)", megapascals(breaks));
        strength.yield_strength = Some(megapascals((0.8 * breaks).round())).filter(|_| said(dice));
        let proof = (breaks * dice.between(0.5, 0.79)).round();
        strength.proof_stress = Some(megapascals(proof)).filter(|_| said(dice));
        strength.endurance = Some(megapascals(0.1 * breaks)).filter(|_| said(dice));
        strength.elastic_modulus = Some(megapascals(205e3)).filter(|_| said(dice));
        strength.expansion = Some(ppm_per_kelvin(11.5)).filter(|_| said(dice));
        own.strength = Some(strength);
    }
    if dice.now_and_then(6.0) || trade.own {
        let length = dice.between(3.0, 6.0) * d;
        let start = dice.between(0.4, 0.7) * length;
        let mut lengths = vec![OwnLength::new(
            length.plus_minus(0.03 * d),
            dice.between(0.8, 1.0) * start,
            start,
        )];
        if dice.now_and_then(50.0) {
            let longer = length + dice.between(0.5, 2.0) * d;
            let start = start + dice.between(0.0, 0.5) * d;
            lengths.insert(
                0,
                OwnLength::new(longer.plus_minus(0.03 * d), 0.9 * start, start),
            );
        }
        let mut screw = OwnScrew::new("turned bolt (invented)", lengths);
        screw.bearing_diameter = Some(1.4 * d).filter(|_| said(dice));
        screw.across_flats = Some(1.5 * d).filter(|_| said(dice));
        screw.head_height = Some(0.65 * d).filter(|_| said(dice));
        own.screw = Some(screw);
    }
    if !tapped && (dice.now_and_then(8.0) || trade.own) {
        let locking = dice.one(&[Locking::None, Locking::Insert, Locking::AllMetal]);
        let height = dice.between(0.6, 1.2) * d;
        let mut nut = OwnNut::new(
            "turned nut (invented)",
            height.plus_minus(0.02 * d),
            locking,
        );
        let proof = NutProof::Stress(megapascals(dice.between(500.0, 1300.0)));
        nut.proof = Some(proof).filter(|_| said(dice));
        nut.bearing_diameter = Some(1.4 * d).filter(|_| said(dice));
        nut.across_flats = Some(1.5 * d).filter(|_| said(dice));
        nut.finish = Some(finish).filter(|_| said(dice));
        own.nut = Some(nut);
    }
    own
}

fn further(dice: &mut Dice, methods: JointMethods, timber: bool, inch: bool) -> JointMethods {
    let mut methods = methods;
    if timber {
        methods.timber = Some(if inch {
            TimberMethod::Nds {
                bending_yield: ksi(45.0),
                adjustment: 1.0,
            }
        } else {
            TimberMethod::En1995 {
                axial: newtons(dice.between(0.0, 4e3)),
                kmod: 0.8,
                gamma_m: 1.3,
            }
        });
    }
    // One publisher for the bolt, and another for the plies or for both loads together.
    if dice.now_and_then(4.0) {
        let (_, other) = trades::trade(dice);
        methods.plies = other.plies;
    }
    if dice.now_and_then(4.0) {
        let (_, other) = trades::trade(dice);
        methods.interaction = other.interaction;
    }
    if dice.now_and_then(20.0) {
        let stated = SlipMethod::Stated {
            friction: 0.2,
            safety_factor: 1.5,
        };
        methods.slip = Slip::Resisted(match (methods.shear, dice.below(2)) {
            (ShearMethod::Aisc360 { edition }, 0) => SlipMethod::Aisc360 {
                edition,
                class: SlipClass::B,
            },
            (ShearMethod::En1993, 0) => SlipMethod::En1993 {
                class: SlipClass::B,
                serviceability: dice.now_and_then(50.0),
            },
            (ShearMethod::Is800, 0) => SlipMethod::Is800 {
                surface: Is800Surface::Untreated,
                serviceability: dice.now_and_then(50.0),
            },
            (ShearMethod::Bs5950, 0) => SlipMethod::Bs5950 {
                class: SlipClass::D,
                serviceability: dice.now_and_then(50.0),
            },
            (ShearMethod::As4100, 0) => SlipMethod::As4100 {
                faces: As4100Faces::AsRolled,
            },
            _ => stated,
        });
    }
    methods
}

fn finish(dice: &mut Dice) -> Finish {
    dice.one(&[
        Finish::ZincFlake,
        Finish::ZincPlated { baked: false },
        Finish::Bare(Metal::Steel),
        Finish::Bare(Metal::Steel),
        Finish::ZincPlated { baked: true },
        Finish::HotDipGalvanized,
        Finish::MechanicalZinc,
    ])
}

struct Surroundings<'a> {
    trade: &'a Trade,
    thread: &'a Thread,
    silent: f64,
    timber: bool,
    tapped: bool,
    pattern: Pattern,
    metals: bool,
}

fn stack(dice: &mut Dice, around: &Surroundings) -> Option<Stack> {
    let d = around.thread.nominal_diameter();
    let count = dice.one(&[2, 2, 3, 3, 4, 5]) - usize::from(around.tapped);
    let mut builder = Stack::builder();
    for _ in 0..dice.one(&[1, 1, 1, 0, 2]) {
        builder = builder.washer_under_head(washer(dice, around));
    }
    // Gaps, sleeves and stated pulls are the exception.
    let odd = dice.now_and_then(25.0);
    let gap_after = (odd && dice.now_and_then(40.0)).then(|| 1 + dice.below(count));
    let packed = count > 2 && dice.now_and_then(20.0);
    for number in 1..=count {
        let mut own = ply(dice, around);
        if packed && number == 2 {
            own = own.pulls(0.0);
        } else if packed {
            own = own.pulls(if number == 1 {
                1.0
            } else {
                -1.0 / f64::from(u8::try_from(count - 2).unwrap())
            });
        }
        builder = builder.add(own);
        if gap_after == Some(number) && number < count {
            let width = dice.between(0.02, 0.4) * d;
            builder = builder.gap(width.plus_minus(0.2 * width));
        }
    }
    if odd && count == 3 && dice.now_and_then(30.0) {
        let length = dice.between(0.8, 2.0) * d;
        builder = builder.sleeve("bushing", Spread::exact(length), 2, 2);
    }
    if odd && dice.now_and_then(20.0) {
        builder = builder.head_seat(HeadSeat::Recessed {
            depth: (0.1 * d).plus_minus(0.02 * d),
        });
    }
    let planes = if dice.unsaid(around.silent / 3.0) {
        0..0
    } else {
        1..count + usize::from(around.tapped)
    };
    builder = builder.shear_planes(planes);
    if around.tapped {
        builder = builder.tapped(tapped(dice, around));
    } else {
        for _ in 0..dice.one(&[0, 0, 0, 1]) {
            builder = builder.washer_under_nut(washer(dice, around));
        }
        let washer = washer(dice, around);
        builder = builder.washers_under_nut(washer, dice.one(&[1, 1, 1, 1, 0, 2]));
    }
    builder.build().ok()
}

fn washer(dice: &mut Dice, around: &Surroundings) -> JointWasher {
    let style = dice.one(around.trade.washers);
    let d = around.thread.nominal_diameter();
    let bare = JointWasher::new("own washer", (0.2 * d).plus_minus(0.02 * d));
    let mut washer = JointWasher::find(style, around.thread).unwrap_or_else(|_| bare.clone());
    if dice.now_and_then(12.0) {
        washer = bare;
    }
    if washer.style.is_none() && !dice.unsaid(around.silent) {
        washer = washer.diameters(dice.between(1.8, 3.0) * d, dice.between(1.05, 1.2) * d);
    }
    if washer.style.is_none() && !dice.unsaid(around.silent) {
        washer = washer.hardness(dice.one(&[300.0, 200.0, 120.0]));
    }
    if around.metals && !dice.unsaid(around.silent) {
        washer = washer.metal(dice.one(&[Metal::Zinc, Metal::Steel, Metal::HotDipZinc]));
    }
    washer
}

/// A material of the tables, or now and then one of the shop's own of which more or less is said.
fn material(dice: &mut Dice, around: &Surroundings) -> JointMaterial {
    let listed = dice.one(around.trade.materials);
    if !dice.now_and_then(10.0) {
        return listed.into();
    }
    let kind = dice.one(&[
        MaterialKind::CarbonSteel,
        MaterialKind::CarbonSteel,
        MaterialKind::StainlessSteel,
        MaterialKind::Aluminium,
        MaterialKind::Other,
    ]);
    let mut own = OwnMaterial::new("shop plate (invented)", kind);
    let yields = dice.between(150.0, 600.0);
    let said = |dice: &mut Dice| !dice.unsaid(around.silent);
    own.yield_strength = Some(megapascals(yields)).filter(|_| said(dice));
    own.tensile_strength = Some(megapascals(1.3 * yields)).filter(|_| said(dice));
    own.elastic_modulus = Some(megapascals(200e3)).filter(|_| said(dice));
    own.expansion = Some(ppm_per_kelvin(12.0)).filter(|_| said(dice));
    own.shear_ratio = Some(dice.one(&[0.6, 0.4])).filter(|_| said(dice));
    own.surface_pressure = Some(megapascals(1.2 * yields)).filter(|_| said(dice));
    own.into()
}

/// A timber of the sawmill's own.
fn own_timber(dice: &mut Dice, around: &Surroundings) -> OwnTimber {
    let nds = around.trade.inch != dice.now_and_then(10.0);
    let across = Some(megapascals(3.0)).filter(|_| !dice.unsaid(around.silent));
    let figures = if nds {
        TimberFigures::Nds {
            specific_gravity: 0.5,
            compression_across: across,
        }
    } else {
        TimberFigures::En1995 {
            characteristic_density: kilograms_per_cubic_metre(380.0),
            compression_across: across,
        }
    };
    OwnTimber::new("sawmill larch (invented)", TimberKind::Softwood, figures)
}

fn ply(dice: &mut Dice, around: &Surroundings) -> JointPly {
    let d = around.thread.nominal_diameter();
    let thickness = dice.between(0.4, 1.4) * d;
    let mut ply = JointPly::new("ply", thickness.plus_minus(0.02 * d));
    let said = |dice: &mut Dice| !dice.unsaid(around.silent);
    if around.timber && dice.now_and_then(60.0) {
        let name = dice.one(around.trade.timbers);
        ply.thickness = Spread::exact(dice.between(2.0, 4.0) * d);
        let angle = degrees(dice.one(&[0.0, 45.0, 90.0]));
        ply = if dice.now_and_then(15.0) {
            ply.timber(own_timber(dice, around), angle)
        } else {
            ply.timber(name, angle)
        };
        if !said(dice) {
            ply.grain_angle = None;
        }
    } else if said(dice) {
        ply = ply.material(material(dice, around));
    }
    // The usual clearance of EN 1090-2 and AISC 360, now and then wider or narrower.
    let usual = if around.trade.inch {
        inches(1.0 / 16.0)
    } else {
        millimetres(2.0)
    };
    let usual = if d < millimetres(15.0) {
        0.5 * usual.max(millimetres(2.0))
    } else {
        usual
    };
    let usual = if around.trade.inch {
        usual.max(inches(1.0 / 16.0))
    } else {
        usual
    };
    let hole = d + usual * dice.one(&[1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.5, 0.5]);
    if said(dice) {
        ply = ply.hole(hole);
        if dice.now_and_then(3.0) {
            let along = dice.one(&[SlotDirection::Across, SlotDirection::Along]);
            let length = dice.between(1.2, 2.5) * d;
            ply = ply.slot(d + millimetres(2.0), length, along);
        }
    }
    let roomy = dice.one(if dice.mild { &[1.0, 1.5] } else { &[1.0, 0.6] })
        * if around.timber { 2.5 } else { 1.0 };
    if said(dice) {
        ply = ply.end_distance(roomy * dice.between(2.0, 4.0) * d);
    }
    if said(dice) {
        ply = ply.edge_distance(roomy * dice.between(2.0, 3.0) * d);
    }
    if said(dice) {
        ply = ply.width(roomy * dice.between(4.0, 8.0) * d);
    }
    if around.pattern.along() > 1 && said(dice) {
        ply = ply.pitch(roomy * dice.between(3.0, 6.0) * d);
    }
    if around.pattern.across() > 1 && said(dice) {
        ply = ply.gauge(roomy * dice.between(3.0, 6.0) * d);
    }
    if said(dice) {
        ply.edge_finish = Some(dice.one(&[EdgeFinish::Smooth, EdgeFinish::Sheared]));
    }
    if around.trade.own && !dice.unsaid(20.0) {
        ply.bearing_strength = Some(ksi(dice.between(60.0, 110.0).round()));
        ply.bearing_yield = Some(ksi(dice.between(40.0, 80.0).round())).filter(|_| said(dice));
    }
    if around.metals && said(dice) {
        ply = ply.metal(dice.one(&[
            Metal::Steel,
            Metal::HotDipZinc,
            Metal::Zinc,
            Metal::Aluminium,
        ]));
    }
    if dice.now_and_then(3.0) {
        ply.crush = 0.02 * d;
    }
    ply
}

fn tapped(dice: &mut Dice, around: &Surroundings) -> TappedPart {
    let d = around.thread.nominal_diameter();
    let depth = 3.0 * d;
    let hole = if dice.now_and_then(25.0) {
        let length = dice.one(&InsertLength::ALL);
        if dice.now_and_then(40.0) {
            TappedHole::ThroughWithInsert { length }
        } else {
            TappedHole::BlindWithInsert { length, depth }
        }
    } else if dice.now_and_then(40.0) {
        TappedHole::Through
    } else {
        TappedHole::Blind { depth }
    };
    let mut part = TappedPart::new("bed").thread(dice.between(1.0, 2.0) * d, hole);
    let said = |dice: &mut Dice| !dice.unsaid(around.silent);
    if said(dice) {
        part = part.material(material(dice, around));
    }
    if said(dice) {
        part = part.lock(dice.one(&[
            ScrewLocking::Adhesive,
            ScrewLocking::Patch,
            ScrewLocking::Preload,
            ScrewLocking::WedgeWashers,
        ]));
    }
    if said(dice) {
        part.end_distance = Some(dice.between(2.0, 4.0) * d);
    }
    if said(dice) {
        part.edge_distance = Some(dice.between(2.0, 4.0) * d);
    }
    if said(dice) {
        part.width = Some(dice.between(4.0, 8.0) * d);
    }
    if around.metals && said(dice) {
        part.metal = Some(dice.one(&[Metal::Steel, Metal::HotDipZinc]));
    }
    part
}
