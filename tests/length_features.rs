//! Stacks with gaps, soft plies, sleeves, recesses, washers at both ends and tapped parts, ranked by orders
//! of the caller's own, against a plain enumeration.
//!
//! The enumeration takes body and grip gaging lengths as facts and does the rest anew, in millimetres as
//! bare numbers, by the rules the documentation states.

use shankline::joint::{Arrangement, Change, Criterion, Goal, HeadSeat, Ranking, StackBuilder};
use shankline::prelude::*;

mod support;

use support::Random;

/// Minimum and maximum, mm.
#[derive(Clone, Copy, Debug, Default)]
struct Range(f64, f64);

impl Range {
    fn spread(self) -> Spread<Length> {
        Spread {
            min: millimetres(self.0),
            nominal: millimetres(f64::midpoint(self.0, self.1)),
            max: millimetres(self.1),
        }
    }
}

/// A tenth of a nanometre, for sums.
const SLACK: f64 = 1e-7;

/// One joint in bare numbers.
#[derive(Debug, Default)]
struct Case {
    plies: Vec<Range>,
    crush: Vec<f64>,
    /// After each ply.
    gaps: Vec<Option<Range>>,
    /// Length, first and last ply, counted from 0.
    sleeve: Option<(Range, usize, usize)>,
    planes: Vec<usize>,
    recess: Range,
    countersunk: bool,
    spot_face: Range,
    head_washers: Vec<Range>,
    added_head_washer: Range,
    nut_washers: Vec<Range>,
    added_nut_washer: Range,
    counterbore: Range,
    tapped: bool,
    /// Nut height, or engagement.
    nut: Range,
    thread_depth: Option<f64>,
    least: f64,
    most: Option<f64>,
    end: f64,
    clear: f64,
    in_holes: Option<f64>,
    may_cut: bool,
    max_head: Option<usize>,
    max_nut: usize,
    max_all: Option<usize>,
    order: Vec<Criterion>,
}

struct Bolt {
    nominal: f64,
    length: Range,
    body: f64,
    thread_from: f64,
}

#[derive(Debug, PartialEq)]
struct Choice {
    length: f64,
    added: (usize, usize),
    in_thread: usize,
    on_shank: usize,
    needs_cut: bool,
}

impl Case {
    fn random(random: &mut Random, size: f64) -> Self {
        let count = 1 + random.below(5);
        let range = |random: &mut Random, from, thru, width| {
            let low = random.hundredths(from, thru);
            Range(low, low + random.hundredths(0, width))
        };
        let plies: Vec<Range> = (0..count).map(|_| range(random, 1000, 4000, 100)).collect();
        let crush = (0..count)
            .map(|_| {
                if random.once_in(5) {
                    random.hundredths(0, 300)
                } else {
                    0.0
                }
            })
            .collect();
        let gaps = (1..=count)
            .map(|ply| (ply < count && random.once_in(4)).then(|| range(random, 0, 100, 200)))
            .collect();
        let sleeve = random.once_in(4).then(|| {
            let first = random.below(count);
            let last = first + random.below(count - first);
            let around: f64 = plies[first..=last].iter().map(|ply| ply.0).sum();
            let low = around + random.hundredths(0, 300) - 1.0;
            (Range(low, low + 0.4), first, last)
        });
        let free = |ply: usize| sleeve.is_none_or(|(_, first, last)| ply < first || ply > last);
        let planes = (1..count)
            .filter(|&plane| {
                let cuts = sleeve.is_some_and(|(_, first, last)| plane > first && plane <= last);
                !cuts && random.below(3) > 0
            })
            .collect();
        let tapped = random.once_in(5);
        let few = |random: &mut Random| -> Vec<Range> {
            (0..random.below(3))
                .map(|_| range(random, 100, 400, 60))
                .collect()
        };
        let mut case = Self {
            planes,
            crush,
            gaps,
            sleeve,
            head_washers: few(random),
            added_head_washer: range(random, 100, 400, 60),
            added_nut_washer: range(random, 100, 400, 60),
            tapped,
            nut: range(random, 50, 110, 0),
            end: if random.once_in(3) {
                random.hundredths(0, 200)
            } else {
                0.0
            },
            least: random.hundredths(0, 300),
            most: (random.below(4) > 0).then(|| random.hundredths(500, 1200)),
            clear: if random.once_in(2) {
                0.0
            } else {
                random.hundredths(0, 200)
            },
            in_holes: random.once_in(4).then(|| random.hundredths(0, 900)),
            may_cut: random.below(3) > 0,
            max_head: (random.below(3) > 0).then(|| 2 + random.below(3)),
            max_nut: 3 + random.below(3),
            max_all: random.once_in(3).then(|| 5 + random.below(3)),
            ..Self::default()
        };
        case.nut = Range(
            size * case.nut.0,
            size * case.nut.0 + random.hundredths(0, 80),
        );
        if free(0) && random.once_in(4) {
            case.recess = range(random, 0, 200, 50);
            case.countersunk = random.once_in(3);
        }
        if tapped {
            case.nut.1 = case.nut.0;
            case.counterbore = range(random, 0, 1500, 50);
            case.thread_depth = random
                .once_in(2)
                .then(|| case.nut.0 + random.hundredths(0, 1500));
            // The face of the tapped part is a plane too.
            if random.once_in(2) {
                case.planes.push(count);
            }
        } else {
            case.nut_washers = few(random);
            if free(count - 1) && random.once_in(5) {
                case.spot_face = range(random, 0, 200, 50);
            }
        }
        case.plies = plies;
        case.head_washers.retain(|_| !case.countersunk);
        case.order = any_order(random);
        case
    }

    /// Whether the washers that are always there keep the limits.
    fn starts_within_limits(&self) -> bool {
        let (head, nut) = (self.head_washers.len(), self.nut_washers.len());
        head <= self.max_head.unwrap_or(usize::MAX)
            && nut <= self.max_nut
            && head + nut <= self.max_all.unwrap_or(usize::MAX)
    }

    /// How far the end of a ply, counted from 1, and of what follows it, lies from the head.
    fn end_of(&self, ply: usize, added: usize) -> Range {
        let mut x = Range(-self.recess.1, -self.recess.0);
        let mut add = |range: Range| {
            x.0 += range.0;
            x.1 += range.1;
        };
        self.head_washers.iter().for_each(|washer| add(*washer));
        (0..added).for_each(|_| add(self.added_head_washer));
        let clamped =
            |index: usize| Range(self.plies[index].0 - self.crush[index], self.plies[index].1);
        let mut index = 0;
        while index < ply {
            match self.sleeve {
                Some((length, first, last)) if first == index => {
                    let mut around = Range::default();
                    for inside in first..=last {
                        around.0 += clamped(inside).0;
                        around.1 += clamped(inside).1;
                        if let (true, Some(gap)) = (inside < last, self.gaps[inside]) {
                            around.0 += gap.0;
                            around.1 += gap.1;
                        }
                    }
                    add(Range(length.0.max(around.0), length.1.max(around.1)));
                    index = last;
                }
                _ => add(clamped(index)),
            }
            if let Some(gap) = self.gaps[index] {
                add(gap);
            }
            index += 1;
        }
        x
    }

    fn enumerate(&self, bolts: &[Bolt], pitch: f64) -> Option<Choice> {
        let mut best: Option<(Vec<f64>, Choice)> = None;
        let (there_head, there_nut) = (self.head_washers.len(), self.nut_washers.len());
        let most_head = match self.max_head {
            Some(most) if !self.countersunk => most - there_head,
            _ => 0,
        };
        let most_nut = if self.tapped {
            0
        } else {
            self.max_nut - there_nut
        };
        for bolt in bolts {
            for head in 0..=most_head {
                for nut in 0..=most_nut {
                    let all = there_head + there_nut + head + nut;
                    if all > self.max_all.unwrap_or(usize::MAX) {
                        continue;
                    }
                    let holes = self.end_of(self.plies.len(), head);
                    let mut grip = holes;
                    let hole_end = holes.1 - self.spot_face.0;
                    for washer in &self.nut_washers {
                        grip.0 += washer.0;
                        grip.1 += washer.1;
                    }
                    grip.0 +=
                        real(nut) * self.added_nut_washer.0 - self.spot_face.1 + self.counterbore.0;
                    grip.1 +=
                        real(nut) * self.added_nut_washer.1 - self.spot_face.0 + self.counterbore.1;
                    let (least, most) = if self.tapped {
                        (
                            self.end * pitch,
                            self.thread_depth.map(|depth| depth - self.nut.1),
                        )
                    } else {
                        (
                            (self.least + self.end) * pitch,
                            self.most.map(|most| most * pitch),
                        )
                    };
                    let jams = grip.0 - bolt.thread_from < self.clear * pitch - SLACK;
                    let short = bolt.length.0 - grip.1 - self.nut.1 < least - SLACK;
                    let out = bolt.length.1 - grip.0 - self.nut.0;
                    let long = most.is_some_and(|most| out > most + SLACK);
                    let bare = self
                        .in_holes
                        .is_some_and(|most| hole_end - bolt.body > most * pitch + SLACK);
                    if jams || short || bare || (long && !self.may_cut) {
                        continue;
                    }
                    let (mut in_thread, mut on_shank) = (0, 0);
                    for &plane in &self.planes {
                        let x = self.end_of(plane, head).1;
                        on_shank += usize::from(x <= bolt.body + SLACK);
                        in_thread += usize::from(x > bolt.thread_from + SLACK);
                    }
                    let usual = [
                        Criterion::PlanesInThread,
                        Criterion::PlanesOffShank,
                        Criterion::Cut,
                        Criterion::WashersAdded,
                        Criterion::Length,
                    ];
                    let mut key = Vec::new();
                    for criterion in self.order.iter().chain(&usual) {
                        match criterion {
                            Criterion::PlanesInThread => key.push(real(in_thread)),
                            Criterion::PlanesOffShank => {
                                key.push(real(self.planes.len() - on_shank));
                            }
                            Criterion::Cut => key.push(f64::from(u8::from(long))),
                            Criterion::WashersAdded => key.extend([real(head + nut), real(head)]),
                            _ => key.push(bolt.nominal),
                        }
                    }
                    if best.as_ref().is_none_or(|(other, _)| key < *other) {
                        let choice = Choice {
                            length: bolt.nominal,
                            added: (head, nut),
                            in_thread,
                            on_shank,
                            needs_cut: long,
                        };
                        best = Some((key, choice));
                    }
                }
            }
        }
        best.map(|(_, choice)| choice)
    }

    fn builder(&self) -> StackBuilder {
        let mut builder = Stack::builder().shear_planes(self.planes.iter().copied());
        if !self.countersunk {
            builder = builder.washer_to_add_under_head(self.added_head_washer.spread());
        }
        for washer in &self.head_washers {
            builder = builder.washer_under_head(washer.spread());
        }
        for (index, ply) in self.plies.iter().enumerate() {
            let crush = millimetres(self.crush[index]);
            builder = builder.soft_ply("ply", ply.spread(), crush);
            if let Some(gap) = self.gaps[index] {
                builder = builder.gap(gap.spread());
            }
        }
        if let Some((length, first, last)) = self.sleeve {
            builder = builder.sleeve("sleeve", length.spread(), first + 1, last + 1);
        }
        if self.countersunk {
            builder = builder.head_seat(HeadSeat::Countersunk {
                below_flush: self.recess.spread(),
                head_height: millimetres(3.0),
            });
        } else if self.recess.1 > 0.0 {
            builder = builder.head_seat(HeadSeat::Recessed {
                depth: self.recess.spread(),
            });
        }
        if self.tapped {
            return builder.tapped_part("bed", self.counterbore.spread());
        }
        for washer in &self.nut_washers {
            builder = builder.washer_under_nut(washer.spread());
        }
        builder = builder.washers_under_nut(self.added_nut_washer.spread(), 0);
        if self.spot_face.1 > 0.0 {
            builder = builder.spot_face_under_nut(self.spot_face.spread());
        }
        builder
    }

    fn rules(&self) -> LengthRules {
        let mut rules = LengthRules::fabrication(UnitSystem::Si)
            .with_protrusion(self.least, self.most)
            .with_clear_threads(self.clear)
            .with_washers_under_nut(self.max_nut)
            .with_end_not_counted(self.end);
        rules.washers_under_head_max = self.max_head;
        rules.washers_max = self.max_all;
        rules.thread_in_holes_max_pitches = self.in_holes;
        if !self.may_cut {
            rules = rules.with_cut(CutRule::Never);
        }
        rules
    }

    fn nut(&self) -> NutEnd {
        if self.tapped {
            let depth = self.thread_depth.map(millimetres);
            NutEnd::tapped(millimetres(self.nut.0), depth).unwrap()
        } else {
            NutEnd::with_height(self.nut.spread()).unwrap()
        }
    }
}

fn any_order(random: &mut Random) -> Vec<Criterion> {
    let all = [
        Criterion::PlanesInThread,
        Criterion::PlanesOffShank,
        Criterion::Cut,
        Criterion::WashersAdded,
        Criterion::Length,
    ];
    (0..random.below(6)).map(|_| all[random.below(5)]).collect()
}

fn real(count: usize) -> f64 {
    f64::from(u32::try_from(count).unwrap())
}

fn mm(length: Length) -> f64 {
    length.value * 1e3
}

#[test]
fn sixty_thousand_joints_with_every_feature() {
    let mut random = Random(3);
    let (mut found, mut with_head_washers, mut tapped) = (0, 0, 0);
    for (product, thread) in [
        (ScrewProduct::Iso4014, "M10"),
        (ScrewProduct::Iso4014, "M16"),
        (ScrewProduct::Iso4017, "M12"),
        (ScrewProduct::HexCapScrew, "1/2-13 UNC"),
        (ScrewProduct::StructuralBolt, "3/4-10 UNC"),
        (ScrewProduct::En14399_4, "M20"),
    ] {
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
        for _ in 0..10_000 {
            let case = Case::random(&mut random, size);
            let stack = case
                .builder()
                .build()
                .unwrap_or_else(|e| panic!("{e}: {case:?}"));
            let search = LengthSearch::new(&stack, &screws, case.nut(), case.rules());
            let Ok(search) = search else {
                assert!(!case.starts_within_limits(), "{case:?}");
                continue;
            };
            assert!(case.starts_within_limits(), "{case:?}");
            let search = search.ranked(Ranking::by(&case.order));
            let selection = search.run().unwrap();
            assert_eq!(
                search.best().unwrap().as_ref(),
                selection.best(),
                "{case:?}"
            );
            let searched = selection.best().map(|best| Choice {
                length: mm(best.screw.nominal),
                added: (best.washers_added_under_head, best.washers_added),
                in_thread: best.planes_in_thread,
                on_shank: best.planes_on_shank,
                needs_cut: best.needs_cut,
            });
            assert_eq!(searched, case.enumerate(&bolts, pitch), "{case:?}");
            found += usize::from(searched.is_some());
            let of = |is: bool| usize::from(is && searched.is_some());
            tapped += of(case.tapped);
            with_head_washers += searched.map_or(0, |choice| choice.added.0.min(1));
        }
    }
    assert!(found > 20_000, "{found}");
    assert!(tapped > 2_000, "{tapped}");
    assert!(with_head_washers > 200, "{with_head_washers}");
}

/// Advice on stacks of every kind: it is given without an error, it does what it says when it is followed,
/// and a range of lengths does at its far end too.
#[test]
fn advice_on_every_feature_works_when_it_is_followed() {
    let hair = millimetres(1e-6);
    let mut random = Random(4);
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &"M12".parse().unwrap()).unwrap();
    let (mut seen, mut ranges) = ([0; 12], 0);
    for _ in 0..6_000 {
        let case = Case::random(&mut random, 12.0);
        let stack = case.builder().build().unwrap();
        let arrangement = Arrangement::new(stack, screws, case.nut(), case.rules());
        if arrangement.search().is_err() {
            continue;
        }
        for goal in [Goal::Fits, Goal::EveryPlaneOnShank] {
            let found = arrangement.advice(goal, &[]);
            let advised = found.unwrap_or_else(|error| panic!("{error}: {case:?}"));
            for advice in advised.advice {
                let (last, first) = advice.changes.split_last().unwrap();
                let before = first.iter().fold(arrangement.clone(), |before, change| {
                    change.applied(&before).unwrap()
                });
                let outcome = last.outcome(&before, goal).unwrap();
                assert_eq!(outcome, Some(advice.outcome), "{last:?} {case:?}");
                let far = match *last {
                    Change::Spacer { at_least, at_most } if at_most > at_least + 2.0 * hair => {
                        let at_least = at_most - hair;
                        Change::Spacer { at_least, at_most }
                    }
                    Change::ThickerLastPly { at_least, at_most }
                        if at_most > at_least + 2.0 * hair =>
                    {
                        let at_least = at_most - hair;
                        Change::ThickerLastPly { at_least, at_most }
                    }
                    _ => *last,
                };
                ranges += usize::from(far != *last);
                let outcome = far.outcome(&before, goal).unwrap();
                assert!(outcome.is_some(), "{far:?} {case:?}");
                seen[kind(last)] += 1;
            }
        }
    }
    // Every kind of change but other products was advised.
    println!("{seen:?} {ranges}");
    assert!(seen[..10].iter().all(|&count| count > 0), "{seen:?}");
    assert!(ranges > 100, "{ranges}");
}

fn kind(change: &Change) -> usize {
    match change {
        Change::TurnBolt => 0,
        Change::AddWashers { .. } => 1,
        Change::AddWashersUnderHead { .. } => 2,
        Change::AllowCut { .. } => 3,
        Change::FewerClearThreads { .. } => 4,
        Change::LessProtrusion { .. } => 5,
        Change::MoreProtrusion { .. } => 6,
        Change::Spacer { .. } => 7,
        Change::ThickerLastPly { .. } => 8,
        Change::SpecialBolt(_) => 9,
        _ => 10,
    }
}
