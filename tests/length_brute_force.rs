//! The length search against a plain enumeration of every length and every number of washers.
//!
//! The enumeration takes body and grip gaging lengths as facts and does the rest anew, in millimetres as
//! bare numbers, by the rules the documentation of the search states.

use shankline::prelude::*;

mod support;

use support::Random;

/// Minimum and maximum, mm.
#[derive(Clone, Copy)]
struct Range(f64, f64);

/// One length of a product, mm.
struct Bolt {
    nominal: f64,
    length: Range,
    body: f64,
    thread_from: f64,
}

struct Rules {
    least: f64,
    most: Option<f64>,
    clear: f64,
    may_cut: bool,
    washers: usize,
}

/// What both sides must agree on.
#[derive(Debug, PartialEq)]
struct Choice {
    length: f64,
    washers_added: usize,
    in_thread: usize,
    on_shank: usize,
    needs_cut: bool,
}

/// Planes in thread, planes not on shank, to be cut, washers added, length: less is better.
type Rank = (usize, usize, bool, usize, f64);

/// A tenth of a nanometre, for sums.
const SLACK: f64 = 1e-7;

fn enumerate(
    bolts: &[Bolt],
    pitch: f64,
    plies: &[Range],
    planes: &[usize],
    washer: Range,
    nut: Range,
    rules: &Rules,
) -> Option<Choice> {
    let mut best: Option<(Rank, Choice)> = None;
    for bolt in bolts {
        // One washer is always there.
        for added in 0..rules.washers {
            let mut thin = 0.0;
            let mut thick = 0.0;
            for ply in plies {
                thin += ply.0;
                thick += ply.1;
            }
            for _ in 0..=added {
                thin += washer.0;
                thick += washer.1;
            }
            let jams = thin - bolt.thread_from < rules.clear * pitch - SLACK;
            let least = bolt.length.0 - thick - nut.1;
            let most = bolt.length.1 - thin - nut.0;
            let short = least < rules.least * pitch - SLACK;
            let long = rules.most.is_some_and(|limit| most > limit * pitch + SLACK);
            if jams || short || (long && !rules.may_cut) {
                continue;
            }
            let (mut in_thread, mut on_shank) = (0, 0);
            for &plane in planes {
                let position: f64 = plies[..plane].iter().map(|ply| ply.1).sum();
                if position <= bolt.body + SLACK {
                    on_shank += 1;
                } else if position > bolt.thread_from + SLACK {
                    in_thread += 1;
                }
            }
            let key = (
                in_thread,
                planes.len() - on_shank,
                long,
                added,
                bolt.nominal,
            );
            if best.as_ref().is_none_or(|(other, _)| key < *other) {
                best = Some((
                    key,
                    Choice {
                        length: bolt.nominal,
                        washers_added: added,
                        in_thread,
                        on_shank,
                        needs_cut: long,
                    },
                ));
            }
        }
    }
    best.map(|(_, choice)| choice)
}

fn mm(length: Length) -> f64 {
    length.value * 1e3
}

/// Tries so many joints of each product; answers how many had a bolt at all.
fn compare(products: &[(ScrewProduct, &str)], joints: usize, seed: u64) -> usize {
    let mut random = Random(seed);
    let mut found = 0;
    for &(product, thread) in products {
        let thread: Thread = thread.parse().unwrap();
        let screws = ScrewSeries::new(product, &thread).unwrap();
        let bolts: Vec<Bolt> = screws
            .stock_lengths()
            .filter_map(|length| screws.length(length).ok())
            .map(|screw| Bolt {
                nominal: mm(screw.nominal),
                length: Range(mm(screw.min), mm(screw.max)),
                body: mm(screw.body_length_min),
                thread_from: mm(screw.grip_gaging_length_max),
            })
            .collect();
        let (pitch, size) = (mm(thread.pitch()), mm(thread.nominal_diameter()));
        for number in 0..joints {
            let count = 1 + random.below(5);
            let plies: Vec<Range> = (0..count)
                .map(|_| {
                    let (thickness, half) =
                        (random.hundredths(100, 4000), random.hundredths(0, 60));
                    Range(thickness - half.min(0.9), thickness + half)
                })
                .collect();
            let planes: Vec<usize> = (1..count).filter(|_| random.below(3) > 0).collect();
            let washer = random.hundredths(50, 450);
            let washer = Range(washer, washer + random.hundredths(0, 60));
            let nut = size * random.hundredths(50, 110);
            let nut = Range(nut, nut + random.hundredths(0, 80));
            let rules = Rules {
                least: random.hundredths(0, 300),
                most: (random.below(4) > 0).then(|| random.hundredths(300, 900)),
                clear: random.hundredths(0, 200),
                may_cut: random.below(3) > 0,
                washers: 1 + random.below(4),
            };
            let spread = |range: Range| Spread {
                min: millimetres(range.0),
                nominal: millimetres(f64::midpoint(range.0, range.1)),
                max: millimetres(range.1),
            };
            let mut stack = Stack::builder()
                .shear_planes(planes.iter().copied())
                .washers_under_nut(spread(washer), 1);
            for ply in &plies {
                stack = stack.ply("ply", spread(*ply));
            }
            let stack = stack.build().unwrap();
            let mut own = LengthRules::fabrication(UnitSystem::Si)
                .with_protrusion(rules.least, rules.most)
                .with_clear_threads(rules.clear)
                .with_washers_under_nut(rules.washers);
            if !rules.may_cut {
                own = own.with_cut(CutRule::Never);
            }
            let nut_end = NutEnd::with_height(spread(nut)).unwrap();
            let selection = LengthSearch::new(&stack, &screws, nut_end, own)
                .unwrap()
                .run()
                .unwrap();
            let searched = selection.best().map(|best| Choice {
                length: mm(best.screw.nominal),
                washers_added: best.washers_added,
                in_thread: best.planes_in_thread,
                on_shank: best.planes_on_shank,
                needs_cut: best.needs_cut,
            });
            let enumerated = enumerate(&bolts, pitch, &plies, &planes, washer, nut, &rules);
            assert_eq!(searched, enumerated, "{screws}, joint {number}");
            found += usize::from(searched.is_some());
        }
    }
    found
}

#[test]
fn fifty_thousand_inch_joints() {
    let products = [
        (ScrewProduct::HexCapScrew, "3/8-16 UNC"),
        (ScrewProduct::HexCapScrew, "1/2-20 UNF"),
        (ScrewProduct::HexCapScrew, "3/4-10 UNC"),
        (ScrewProduct::StructuralBolt, "7/8-9 UNC"),
        (ScrewProduct::StructuralBolt, "5/8-11 UNC"),
    ];
    let found = compare(&products, 10_000, 1);
    assert!(found > 15_000, "{found}");
}

#[test]
fn seventy_thousand_metric_joints() {
    let products = [
        (ScrewProduct::Iso4014, "M10"),
        (ScrewProduct::Iso4014, "M16"),
        (ScrewProduct::Iso4014, "M20"),
        (ScrewProduct::Iso4017, "M12"),
        (ScrewProduct::En14399_4, "M24"),
        (ScrewProduct::En14399_3, "M20"),
        (ScrewProduct::Iso8765, "M12x1.25"),
    ];
    let found = compare(&products, 10_000, 2);
    assert!(found > 15_000, "{found}");
}
