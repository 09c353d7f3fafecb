//! The bolt in the hand and in the bin, advice, cuts, tolerances and dash numbers: invariants, and
//! independent reckoning of the same answers.

use proptest::prelude::*;
use shankline::{
    joint::{
        Alternative, Arrangement, Bin, BoltInHand, Candidate, Change, CutMethod, CutPlan, Goal,
        GripReason, GripRules, GripSearch, HeadSeat, JointPly, JointTolerances, JointWasher,
        StackBuilder, ToleranceChain, ToleranceMethod,
    },
    parts::AnWashers,
    prelude::*,
    tables::aircraft::{AircraftBolt, AircraftGrip, AircraftGripRow},
};

const HAIR: Length = millimetres(1e-6);

fn any_screws() -> impl Strategy<Value = ScrewSeries> {
    let names = [
        (ScrewProduct::HexCapScrew, "3/8-16 UNC"),
        (ScrewProduct::HexCapScrew, "1/2-20 UNF"),
        (ScrewProduct::HexCapScrew, "3/4-10 UNC"),
        (ScrewProduct::Iso4014, "M8"),
        (ScrewProduct::Iso4014, "M12"),
        (ScrewProduct::Iso4014, "M20"),
        (ScrewProduct::Iso4017, "M10"),
    ];
    proptest::sample::select(names.to_vec())
        .prop_map(|(product, thread)| ScrewSeries::new(product, &thread.parse().unwrap()).unwrap())
}

/// Plies of 1 to 40 mm, a shear plane between all or some of them, washers.
fn any_stack() -> impl Strategy<Value = Stack> {
    (
        proptest::collection::vec((1.0..40.0f64, 0.0..0.05f64), 1..6),
        0..2_usize,
        prop::option::of((0..3_usize, 1.0..4.0f64)),
        any::<u8>(),
    )
        .prop_map(|(plies, head, washers, mask)| {
            let planes = (1..plies.len()).filter(|plane| mask >> plane & 1 == 1);
            let mut builder = Stack::builder().shear_planes(planes);
            for _ in 0..head {
                builder = builder.washer_under_head(millimetres(2.5).plus_minus(millimetres(0.2)));
            }
            for (thickness, tolerance) in plies {
                let thickness = millimetres(thickness);
                builder = builder.ply("ply", thickness.plus_minus(tolerance * thickness));
            }
            if let Some((count, thickness)) = washers {
                let thickness = millimetres(thickness).plus_minus(millimetres(0.2));
                builder = builder.washers_under_nut(thickness, count);
            }
            builder.build().unwrap()
        })
}

fn any_rules() -> impl Strategy<Value = LengthRules> {
    (
        0.0..3.0f64,
        prop::option::of(0.5..5.0f64),
        prop_oneof![Just(0.0), 0.0..5.0f64],
        2..5_usize,
        any::<bool>(),
    )
        .prop_map(|(low, extra, clear, washers, may_cut)| {
            let rules = LengthRules::fabrication(UnitSystem::Si)
                .with_protrusion(low, extra.map(|extra| low + extra))
                .with_clear_threads(clear)
                .with_washers_under_nut(washers);
            if may_cut {
                rules
            } else {
                rules.with_cut(CutRule::Never)
            }
        })
}

fn any_goal() -> impl Strategy<Value = Goal> {
    prop_oneof![
        Just(Goal::Fits),
        Just(Goal::NoPlaneInThread),
        Just(Goal::EveryPlaneOnShank)
    ]
}

fn nut_of(thread: &Thread) -> NutEnd {
    let d = thread.nominal_diameter();
    NutEnd::with_height((0.9 * d).plus_minus(0.03 * d)).unwrap()
}

fn any_arrangement() -> impl Strategy<Value = Arrangement> {
    (any_stack(), any_screws(), any_rules()).prop_map(|(stack, screws, rules)| {
        Arrangement::new(stack, screws, nut_of(&screws.thread()), rules)
    })
}

/// The change made by the public constructors alone, apart from `Change::applied`.
fn made(change: &Change, to: &Arrangement) -> (Stack, ScrewSeries, NutEnd, LengthRules) {
    let (mut plies, mut planes) = (to.stack.plies().to_vec(), to.stack.shear_planes().to_vec());
    let (mut screws, mut nut, mut rules) = (to.screws, to.nut, to.rules);
    let there = to.stack.washers_under_nut();
    let mut washer = there.map(|(washer, count)| (washer.clone(), count));
    let mut at_head = None;
    match *change {
        Change::TurnBolt => {
            plies.reverse();
            planes = planes.iter().map(|plane| plies.len() - plane).collect();
        }
        Change::AddWashers { count, .. } => rules.washers_under_nut_max = count,
        Change::AllowCut { rule } => rules.cut = rule,
        Change::FewerClearThreads { threads, .. } => rules.clear_threads_min = threads,
        Change::LessProtrusion { pitches, .. } => rules.protrusion_min_pitches = pitches,
        Change::MoreProtrusion { pitches, .. } => rules.protrusion_max_pitches = Some(pitches),
        Change::Spacer { at_least, .. } => {
            plies.push(JointPly::new("sleeve", Spread::exact(at_least)));
        }
        Change::ThickerLastPly { at_least, .. } => {
            let last = plies.last_mut().unwrap();
            last.thickness = last.thickness + Spread::exact(at_least);
        }
        Change::OtherProduct(other) | Change::OtherDiameter(other) => {
            (screws, nut) = (other.screws, other.nut);
            let count = washer.as_ref().map_or(0, |(_, count)| *count);
            at_head = other.washer.map(JointWasher::from);
            washer = at_head.clone().map(|other| (other, count)).or(washer);
        }
        _ => {}
    }
    let mut builder = Stack::builder().shear_planes(planes);
    for head in to.stack.washers_under_head() {
        builder = builder.washer_under_head(at_head.as_ref().unwrap_or(head).clone());
    }
    for ply in plies {
        builder = builder.add(ply);
    }
    if let Some((washer, count)) = washer {
        builder = builder.washers_under_nut(washer, count);
    }
    (builder.build().unwrap(), screws, nut, rules)
}

fn alternatives(arrangement: &Arrangement) -> Vec<Alternative> {
    let names = if arrangement.screws.thread().is_unified() {
        [
            (ScrewProduct::HexCapScrew, "3/8-16 UNC"),
            (ScrewProduct::HexCapScrew, "1/2-13 UNC"),
        ]
    } else {
        [
            (ScrewProduct::Iso4017, "M12"),
            (ScrewProduct::Iso4014, "M16"),
        ]
    };
    names
        .map(|(product, thread)| {
            let thread: Thread = thread.parse().unwrap();
            let screws = ScrewSeries::new(product, &thread).unwrap();
            let washer = millimetres(2.0).plus_minus(millimetres(0.2));
            Alternative::new(screws, nut_of(&thread), Some(washer))
        })
        .to_vec()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn every_advice_works_when_it_is_followed(arrangement in any_arrangement(), goal in any_goal()) {
        let list = arrangement.advice(goal, &alternatives(&arrangement)).unwrap();
        if arrangement.best(goal).unwrap().is_some() {
            prop_assert!(list.advice.is_empty());
        }
        for advice in &list.advice {
            prop_assert!(goal.is_met_by(&advice.outcome), "{:?}", advice.changes);
            let (mut changed, mut special) = (arrangement.clone(), None);
            for change in &advice.changes {
                // Pairs are for want of single changes: the first alone does not do.
                prop_assert!(changed.best(goal).unwrap().is_none());
                let (stack, screws, nut, rules) = made(change, &changed);
                changed = Arrangement::new(stack, screws, nut, rules);
                if let Change::SpecialBolt(wanted) = *change {
                    special = Some(wanted);
                }
            }
            let search = LengthSearch::new(&changed.stack, &changed.screws, changed.nut, changed.rules).unwrap();
            let found = if let Some(wanted) = special {
                let special = ScrewLength::measured(
                    wanted.length_min, wanted.shank_min, wanted.thread_start_max,
                ).unwrap();
                let candidate = search.assess(special).unwrap();
                goal.is_met_by(&candidate).then_some(candidate)
            } else {
                search.run().unwrap().accepted().iter().copied().find(|c| goal.is_met_by(c))
            };
            let found = found.map(|candidate| (candidate.screw, candidate.washers_under_nut));
            prop_assert_eq!(found, Some((advice.outcome.screw, advice.outcome.washers_under_nut)), "{:?}", advice.changes);
        }
        // Least effort first: the order of the variants.
        let rank = |change: &Change| match change {
            Change::TurnBolt => 0,
            Change::AddWashers { .. } => 1,
            Change::AllowCut { .. } => 2,
            Change::FewerClearThreads { .. } => 3,
            Change::LessProtrusion { .. } => 4,
            Change::MoreProtrusion { .. } => 5,
            Change::Spacer { .. } => 6,
            Change::OtherProduct(_) => 7,
            Change::ThickerLastPly { .. } => 8,
            Change::OtherDiameter(_) => 9,
            _ => 10,
        };
        let ranks: Vec<Vec<i32>> =
            list.advice.iter().map(|advice| advice.changes.iter().map(rank).collect()).collect();
        prop_assert!(ranks.is_sorted(), "{ranks:?}");
    }

    #[test]
    fn advised_amounts_are_the_smallest(arrangement in any_arrangement(), goal in any_goal()) {
        let less = |change: &Change| Some(match *change {
            Change::AddWashers { count, permitted } => Change::AddWashers { count: count - 1, permitted },
            Change::FewerClearThreads { threads, wanted } => Change::FewerClearThreads { threads: threads + 1e-4, wanted },
            Change::LessProtrusion { pitches, wanted } => Change::LessProtrusion { pitches: pitches + 1e-4, wanted },
            Change::MoreProtrusion { pitches, permitted } if pitches - 1e-4 > arrangement.rules.protrusion_min_pitches =>
                Change::MoreProtrusion { pitches: pitches - 1e-4, permitted },
            Change::Spacer { at_least, at_most } if at_least > 2.0 * HAIR =>
                Change::Spacer { at_least: at_least - HAIR, at_most },
            Change::ThickerLastPly { at_least, at_most } if at_least > 2.0 * HAIR =>
                Change::ThickerLastPly { at_least: at_least - HAIR, at_most },
            _ => return None,
        });
        for advice in arrangement.advice(goal, &[]).unwrap().advice {
            let (last, first) = advice.changes.split_last().unwrap();
            let arrangement = first.iter().fold(arrangement.clone(), |before, change| change.applied(&before).unwrap());
            if let Some(smaller) = less(last) {
                prop_assert_eq!(smaller.outcome(&arrangement, goal).unwrap(), None, "{:?}", smaller);
            }
            // A range holds at its far end too.
            let (far, width) = match *last {
                Change::Spacer { at_least, at_most } =>
                    (Change::Spacer { at_least: at_most - HAIR, at_most }, at_most - at_least),
                Change::ThickerLastPly { at_least, at_most } =>
                    (Change::ThickerLastPly { at_least: at_most - HAIR, at_most }, at_most - at_least),
                _ => continue,
            };
            if width > 2.0 * HAIR {
                prop_assert!(far.outcome(&arrangement, goal).unwrap().is_some(), "{:?}", far);
            }
        }
    }

    #[test]
    fn a_negative_margin_means_no_length(arrangement in any_arrangement()) {
        let advice = arrangement.advice(Goal::EveryPlaneOnShank, &[]).unwrap();
        if advice.margin.is_some_and(|margin| margin < -HAIR) {
            prop_assert!(arrangement.best(Goal::EveryPlaneOnShank).unwrap().is_none());
        }
    }

    #[test]
    fn turning_twice_is_nothing(arrangement in any_arrangement()) {
        let twice = Change::TurnBolt.applied(&Change::TurnBolt.applied(&arrangement).unwrap()).unwrap();
        prop_assert_eq!(twice, arrangement);
    }

    #[test]
    fn a_measured_stock_bolt_gets_the_verdict_of_the_table(arrangement in any_arrangement(), pick in 0..40_usize) {
        let screws = arrangement.screws;
        let Some(length) = screws.stock_lengths().nth(pick) else { return Ok(()) };
        let Ok(screw) = screws.length(length) else { return Ok(()) };
        // Measured without doubt, so the tolerance of the table is gone.
        let exact = ScrewLength::measured(screw.nominal, screw.body_length_min, screw.grip_gaging_length_max).unwrap();
        let bolt = BoltInHand::new(screws.thread(), screw.nominal, screw.body_length_min, screw.grip_gaging_length_max).unwrap();
        let verdict = bolt.verdict(&arrangement.stack, arrangement.nut, arrangement.rules).unwrap();
        let searched = arrangement.search().unwrap().assess(exact).unwrap();
        prop_assert_eq!(verdict.candidate, searched);
        // Fits exactly if it measures as wanted, with that many washers.
        let wanted = verdict.wanted;
        prop_assert_eq!(wanted.derivation().check(), Ok(()));
        let measures = screw.nominal >= wanted.length_min - HAIR
            && screw.grip_gaging_length_max <= wanted.thread_start_max + HAIR
            && (arrangement.rules.cut != CutRule::Never
                || wanted.length_max.is_none_or(|max| screw.nominal <= max + HAIR));
        prop_assert_eq!(verdict.candidate.fits(), measures);
        if wanted.shank_min <= screw.body_length_min {
            prop_assert_eq!(verdict.candidate.planes_on_shank, arrangement.stack.shear_planes().len());
        }
        // Something is to be done exactly if it does not go in as it is.
        let as_it_is = searched.fits() && searched.washers_added == 0 && !searched.needs_cut
            && searched.planes_on_shank == arrangement.stack.shear_planes().len();
        prop_assert_eq!(verdict.to_do.is_empty(), as_it_is);
    }

    #[test]
    fn doubt_never_helps(arrangement in any_arrangement(), length in 20.0..120.0f64, shank in 0.0..0.6f64, start in 0.0..0.3f64, doubt in 0.0..2.0f64) {
        let length = millimetres(length);
        let bolt = BoltInHand::new(arrangement.screws.thread(), length, shank * length, (shank + start) * length).unwrap();
        let Ok(doubtful) = bolt.with_uncertainty(millimetres(doubt)) else { return Ok(()) };
        let judge = |bolt: BoltInHand| bolt.verdict(&arrangement.stack, arrangement.nut, arrangement.rules).unwrap().candidate;
        let (sure, unsure) = (judge(bolt), judge(doubtful));
        prop_assert!(sure.fits() || !unsure.fits());
        prop_assert!(unsure.planes_on_shank <= sure.planes_on_shank);
    }

    #[test]
    fn a_bin_gives_what_it_has(arrangement in any_arrangement(), counts in proptest::collection::vec(0..6_usize, 0..30), joints in 0..30_usize) {
        let screws = arrangement.screws;
        let mut bin = Bin::new();
        for (length, &count) in screws.stock_lengths().zip(&counts) {
            if screws.length(length).is_ok() {
                bin = bin.product("part", &screws, length, count).unwrap();
            }
        }
        let thread = screws.thread();
        let pick = bin.pick(&arrangement.stack, &thread, arrangement.nut, arrangement.rules, joints).unwrap();
        let taken: usize = pick.taken.iter().map(|taken| taken.count).sum();
        prop_assert_eq!(taken + pick.missing, joints);
        let there: usize = pick.fitting.iter().map(|found| bin.items()[found.item].count).sum();
        prop_assert_eq!(taken, there.min(joints));
        prop_assert_eq!(pick.fitting.len() + pick.rejected.len(), bin.items().len());
        // The best of the bin is the best of the search among the lengths that are in it.
        let selection = arrangement.search().unwrap().run().unwrap();
        let stocked = |candidate: &&Candidate| bin.items().iter().any(|item| item.screw == candidate.screw);
        let order: Vec<Length> = selection.accepted().iter().filter(stocked).map(|c| c.screw.nominal).collect();
        let found: Vec<Length> = pick.fitting.iter().map(|found| found.candidate.screw.nominal).collect();
        prop_assert_eq!(found, order);
        if let Some(item) = pick.all_alike {
            prop_assert!(bin.items()[item].count >= joints);
        }
    }

    #[test]
    fn cuts_keep_what_they_promise(arrangement in any_arrangement(), shares in proptest::collection::vec(0.0..=1.0f64, 12)) {
        let thread = arrangement.screws.thread();
        for candidate in arrangement.search().unwrap().run().unwrap().accepted() {
            let plan = CutPlan::new(candidate, &thread, arrangement.nut, arrangement.rules).unwrap();
            prop_assert_eq!(plan.method == CutMethod::NotNeeded, !candidate.needs_cut);
            prop_assert_eq!(plan.derivation().check(), Ok(()));
            if plan.window_margin.is_some_and(|margin| margin < -HAIR) {
                prop_assert!(plan.method != CutMethod::ToFixedLength || candidate.screw.max - candidate.screw.min < 2.0 * plan.cut_tolerance);
            }
            // One assembly out of all: every part somewhere inside its limits.
            let within = |spread: Spread<Length>, share: f64| spread.min + share * (spread.max - spread.min);
            let (grip, nut) = (within(plan.grip, shares[0]), within(plan.nut_height, shares[1]));
            let bolt = within(plan.bought, shares[2]);
            let slip = (2.0 * shares[3] - 1.0) * plan.cut_tolerance;
            if let Some(cut) = plan.fixed {
                let end = bolt.min(cut.mark_from_head.nominal + slip);
                let beyond = end - grip - nut;
                prop_assert!(beyond >= cut.protrusion.min - HAIR && beyond <= cut.protrusion.max + HAIR);
                prop_assert!(beyond >= plan.protrusion_min - HAIR);
                prop_assert!(bolt - end >= cut.removed.min - HAIR && bolt - end <= cut.removed.max + HAIR);
                let mark = cut.mark_from_head.nominal - grip - nut;
                prop_assert!(mark >= cut.mark_from_nut.min - HAIR && mark <= cut.mark_from_nut.max + HAIR);
                if cut.holds_window {
                    prop_assert!(plan.protrusion_max.is_none_or(|max| beyond <= max + HAIR));
                }
                prop_assert!(cut.thread_left > plan.nut_height.max - HAIR);
            }
            if let Some(cut) = plan.at_fit_up {
                let mark = grip + nut + cut.mark_from_nut.nominal;
                let end = bolt.min(mark + slip);
                let beyond = end - grip - nut;
                prop_assert!(beyond >= plan.protrusion_min - HAIR && beyond <= cut.protrusion.max + HAIR);
                prop_assert!(end >= cut.finished.min - HAIR && end <= cut.finished.max + HAIR);
                prop_assert!(bolt - end >= cut.removed.min - HAIR && bolt - end <= cut.removed.max + HAIR);
                if cut.holds_window {
                    prop_assert!(plan.protrusion_max.is_none_or(|max| beyond <= max + HAIR));
                }
            }
        }
    }

    #[test]
    fn worst_case_is_the_search_and_holds_root_sum_square(arrangement in any_arrangement(), k in 1.0..6.0f64) {
        let selection = arrangement.search().unwrap().run().unwrap();
        for candidate in selection.accepted().iter().chain(selection.rejected()).take(6) {
            let of = |method| JointTolerances::of(&arrangement.stack, candidate, arrangement.nut, method).unwrap();
            let worst = of(ToleranceMethod::WorstCase);
            prop_assert!((worst.jam_margin.min - candidate.jam_margin).abs() < HAIR);
            prop_assert!((worst.grip.max - candidate.grip.max).abs() < HAIR);
            let protrusion = candidate.cut.map_or(candidate.protrusion, |cut| cut.protrusion);
            prop_assert!((worst.protrusion.min - protrusion.min).abs() < HAIR);
            prop_assert!((worst.protrusion.max - protrusion.max).abs() < HAIR);
            let on_shank = worst.planes_to_run_out.iter().filter(|plane| plane.min > -HAIR).count();
            prop_assert_eq!(on_shank, candidate.planes_on_shank);
            // Two-sided share within k sigma: the limits then are those of the tolerances themselves.
            let likely = of(ToleranceMethod::RootSumSquare { sigmas_per_tolerance: k, confidence: 0.68 });
            prop_assert_eq!(worst.derivation().check(), Ok(()));
            prop_assert_eq!(likely.derivation().check(), Ok(()));
            prop_assert!(likely.derivation().steps().len() > 10);
            for (narrow, wide) in [(likely.grip, worst.grip), (likely.protrusion, worst.protrusion), (likely.jam_margin, worst.jam_margin)] {
                prop_assert!(narrow.min >= wide.min - HAIR && narrow.max <= wide.max + HAIR);
                prop_assert!((narrow.middle - wide.middle).abs() < HAIR);
                let (below, above) = (narrow.share_below(narrow.min).unwrap(), narrow.share_above(narrow.max).unwrap());
                if narrow.sigma.unwrap() > HAIR {
                    prop_assert!((below.value - 0.16).abs() < 1e-6 && (above.value - 0.16).abs() < 1e-6);
                }
            }
        }
    }

    #[test]
    fn a_dash_number_keeps_its_rule(t in 0.06..4.0f64, tolerance in 0.0..0.01f64, size in 0..4_usize, rule in 0..4_usize, planes in any::<bool>()) {
        let bolt = AircraftBolt::find(["AN3", "AN4", "AN5", "AN6"][size]).unwrap();
        let rules = [GripRules::faa(), GripRules::navy(), GripRules::light_aircraft(), GripRules::builders()][rule];
        let half = inches(0.5 * t).plus_minus(inches(0.5 * tolerance));
        let builder = Stack::builder().ply("lug", half).ply("lug", half);
        let stack = if planes { builder.shear_planes([1]) } else { builder }.build().unwrap();
        let nut = NutEnd::with_height(bolt.nominal_diameter.plus_minus(inches(0.005))).unwrap();
        let search = GripSearch::new(&stack, bolt, nut, AnWashers::of(bolt).unwrap(), rules).unwrap();
        let selection = search.run().unwrap();
        let pitch = 1.0 / bolt.threads_per_inch;
        for c in selection.accepted() {
            // Reckoned apart, in inches.
            let inch = |length: Length| length.value / 0.0254;
            let head = 0.063 * f64::from(u32::try_from(c.washers.under_head).unwrap());
            let under = 0.063 * f64::from(u32::try_from(c.washers.under_nut).unwrap())
                + 0.032 * f64::from(u32::try_from(c.washers.light_under_nut).unwrap());
            let grip = inch(c.bolt.grip.grip.nominal);
            prop_assert!(head + t - grip <= rules.threads_in_hole_max * pitch + 0.000_56);
            prop_assert!(head + t - tolerance + under >= grip + 0.016 - 1e-9);
            let end = inch(c.bolt.grip.length.nominal) - 0.016 - head - t - tolerance - under - inch(nut.height().max);
            prop_assert!(end >= rules.protrusion_min_pitches * pitch - 1e-9);
            prop_assert!(c.washers.count() <= rules.washers_max && c.washers.under_nut + c.washers.light_under_nut >= 1);
        }
        for c in selection.accepted().iter().chain(selection.rejected()) {
            prop_assert_eq!(c.derivation().check(), Ok(()));
        }
        for c in selection.rejected() {
            prop_assert!(!c.reasons.is_empty());
        }
        let found = selection.best().map(|c| (c.bolt.grip.dash, c.washers.under_head, c.washers.under_nut, c.washers.light_under_nut));
        prop_assert_eq!(found, naive_dash(bolt, t, tolerance, planes, &rules, (nut.height().min, nut.height().max)));
    }
}

/// What dash numbers are ranked by, and the washers under the head, regular and light under the nut.
type Ranked = ((usize, f64, usize, usize, u8), (usize, usize, usize));

/// The best dash number and washers by trying all in plain inches: fewest planes off the shank,
/// least thread in the hole, fewest washers, fewest light ones, shortest bolt.
fn naive_dash(
    bolt: &'static AircraftBolt,
    t: f64,
    tolerance: f64,
    planes: bool,
    rules: &GripRules,
    nut: (Length, Length),
) -> Option<(u8, usize, usize, usize)> {
    let inch = |length: Length| length.value / 0.0254;
    #[allow(clippy::cast_precision_loss)]
    let times = |count: usize, thickness: f64| count as f64 * thickness;
    let pitch = 1.0 / bolt.threads_per_inch;
    let mut best: Option<Ranked> = None;
    for dash in 1..=80 {
        let Ok(row) = AircraftGrip::of(bolt, dash) else {
            continue;
        };
        let (grip, length) = (inch(row.grip.nominal), inch(row.length.nominal));
        for head in 0..=rules.washers_under_head_max {
            for regular in 0..=rules.washers_under_nut_max {
                for light in 0..=rules.washers_under_nut_max - regular {
                    let count = head + regular + light;
                    if regular + light < rules.washers_under_nut_min || count > rules.washers_max {
                        continue;
                    }
                    let start = times(head, 0.063);
                    let under = times(regular, 0.063) + times(light, 0.032);
                    let threads = ((start + t - grip) / pitch).max(0.0);
                    let thin = rules.threads_only_in_thickest && threads * pitch > 0.5 * t;
                    let too_many = (threads - rules.threads_in_hole_max) * pitch > 0.000_55;
                    let jams = start + t - tolerance + under < grip + 0.016 - 1e-9;
                    let beyond = |l: f64, t: f64, nut: Length| l - start - t - under - inch(nut);
                    let least = beyond(length - 0.016, t + tolerance, nut.1);
                    let most = beyond(length + 0.031, t - tolerance, nut.0);
                    let short = least < rules.protrusion_min_pitches * pitch - 1e-9;
                    let long = rules
                        .protrusion_max_pitches
                        .is_some_and(|max| most > max * pitch + 1e-9);
                    if thin || too_many || jams || short || long {
                        continue;
                    }
                    let off = planes && start + 0.5 * (t + tolerance) > grip - 0.016 + 1e-9;
                    let key = (usize::from(off), threads, count, light, dash);
                    if best.is_none_or(|(known, _)| key < known) {
                        best = Some((key, (head, regular, light)));
                    }
                }
            }
        }
    }
    best.map(|((.., dash), (head, regular, light))| (dash, head, regular, light))
}

/// Two of the worked length selections (own construction, computed outside this crate): a clevis
/// whose cut no fixed length holds, and a hay-rake drawbar whose cut one does.
#[test]
fn worked_cut_plans() {
    let plan = |product, thread: &str, nut, washer, plies: [Spread<Length>; 3]| {
        let thread: Thread = thread.parse().unwrap();
        let washer = Washer::find(washer, &thread).unwrap().thickness().unwrap();
        let stack = plies
            .into_iter()
            .fold(Stack::builder(), |builder, ply| builder.ply("ply", ply))
            .shear_planes([1, 2])
            .washers_under_nut(washer, 1)
            .build()
            .unwrap();
        let screws = ScrewSeries::new(product, &thread).unwrap();
        let nut = NutEnd::of(Nut::find(nut, &thread).unwrap()).unwrap();
        let system = if thread.is_unified() {
            UnitSystem::UsCustomary
        } else {
            UnitSystem::Si
        };
        let rules = LengthRules::fabrication(system);
        let search = LengthSearch::new(&stack, &screws, nut, rules).unwrap();
        CutPlan::new(search.run().unwrap().best().unwrap(), &thread, nut, rules).unwrap()
    };
    let near = |found: Length, expected: Length, half: Length| {
        assert!(
            (found - expected).abs() <= half + HAIR,
            "{found:?} {expected:?}"
        );
    };
    let ear = inches(0.500).plus_minus(inches(0.015));
    let tongue = inches(1.000).plus_minus(inches(0.020));
    let clevis = plan(
        ScrewProduct::HexCapScrew,
        "3/4-10 UNC",
        NutStyle::InsertLockNe,
        WasherStyle::TypeANarrow,
        [ear, tongue, ear],
    );
    // "the spread of stack + nut + cut is 3.17 P, the wanted window only 3.00 P"
    assert_eq!(clevis.method, CutMethod::AtFitUp);
    near(
        clevis.window_margin.unwrap(),
        inches(-0.017),
        inches(0.0005),
    );
    let fixed = clevis.fixed.unwrap();
    near(fixed.mark_from_head.nominal, inches(3.688), inches(0.0005));
    near(fixed.removed.nominal, inches(0.312), inches(0.0005));
    let fit_up = clevis.at_fit_up.unwrap();
    near(
        fit_up.mark_from_nut.nominal,
        inches(0.2 + 1.0 / 64.0),
        inches(0.0),
    );
    assert!(fit_up.holds_window && !fixed.holds_window);

    let ear = millimetres(15.0).plus_minus(millimetres(0.5));
    let tongue = millimetres(30.0).plus_minus(millimetres(0.5));
    let drawbar = plan(
        ScrewProduct::Iso4014,
        "M20",
        NutStyle::Iso4032,
        WasherStyle::Iso7089,
        [ear, tongue, ear],
    );
    assert_eq!(drawbar.method, CutMethod::ToFixedLength);
    let cut = drawbar.cut().unwrap();
    near(cut.finished.nominal, millimetres(95.0), millimetres(0.0));
    near(cut.removed.nominal, millimetres(15.0), millimetres(0.0));
    near(cut.thread_left, millimetres(31.0 - 0.5), millimetres(0.0));
    near(
        cut.protrusion.max,
        4.80 * millimetres(2.5),
        millimetres(0.0125),
    );
}

/// Grip equal to the thickness: each row of the table of grips is the choice for its own grip.
#[test]
fn the_table_of_grips_chooses_itself() {
    let mut checked = 0;
    for row in AircraftGripRow::all() {
        let bolt = AircraftBolt::find(row.bolt).unwrap();
        let stack = Stack::builder()
            .ply("material", Spread::exact(row.grip))
            .build()
            .unwrap();
        // A fibre lock nut is about as high as its bolt is thick, or a little more.
        let nut = NutEnd::with_height(Spread::exact(1.1 * bolt.nominal_diameter)).unwrap();
        let washers = AnWashers::of(bolt).unwrap();
        let selection = GripSearch::new(&stack, bolt, nut, washers, GripRules::faa())
            .unwrap()
            .run()
            .unwrap();
        let best = selection.best().unwrap();
        assert_eq!(
            best.bolt.grip.grip.nominal, row.grip,
            "{}-{}",
            row.bolt, row.dash
        );
        assert_eq!((best.threads_in_hole, best.washers.count()), (0.0, 1));
        checked += 1;
    }
    assert_eq!(checked, 36);
}

#[test]
fn the_navy_lets_thread_only_into_the_thicker_part() {
    let bolt = AircraftBolt::find("AN4").unwrap();
    let nut = NutEnd::with_height(Spread::exact(inches(0.22))).unwrap();
    let washers = AnWashers::of(bolt).unwrap();
    let verdict = |first: f64, second: f64| {
        let stack = Stack::builder()
            .ply("first", Spread::exact(inches(first)))
            .ply("second", Spread::exact(inches(second)))
            .build()
            .unwrap();
        let search = GripSearch::new(&stack, bolt, nut, washers, GripRules::navy()).unwrap();
        let selection = search.run().unwrap();
        let all = selection.accepted().iter().chain(selection.rejected());
        let mut all = all.filter(|c| c.bolt.to_string() == "AN4-7A");
        all.next().unwrap().reasons.clone()
    };
    // Grip 0.438: 1/2 in of material leaves 1.7 threads in the hole.
    assert_eq!(verdict(0.1, 0.4), []);
    assert!(matches!(
        verdict(0.4, 0.1)[..],
        [GripReason::ThreadInThinPly { .. }]
    ));
    // 0.55 in: three threads, too many anywhere.
    assert!(matches!(
        verdict(0.1, 0.45)[..],
        [GripReason::GripTooShort { .. }, ..]
    ));
}

/// What aircraft bolts do not go with is refused, and the thicker part is what is left of it.
#[test]
fn a_search_by_grip_knows_what_it_is_given() {
    let bolt = AircraftBolt::find("AN4").unwrap();
    let nut = NutEnd::with_height(Spread::exact(inches(0.22))).unwrap();
    let washers = AnWashers::of(bolt).unwrap();
    let search = |stack: &Stack, nut, rules| {
        let search = GripSearch::new(stack, bolt, nut, washers, rules);
        search.map(|search| search.run().unwrap())
    };
    let ply = |thickness: f64| Stack::builder().ply("ply", Spread::exact(inches(thickness)));
    let sixteenth = Spread::exact(inches(1.0 / 16.0));
    let flush = HeadSeat::Countersunk {
        below_flush: Spread::exact(inches(0.0)),
        head_height: inches(0.1),
    };
    let hole = NutEnd::tapped(inches(0.3), None).unwrap();
    for (stack, nut) in [
        (ply(0.5).washer_under_nut(sixteenth), nut),
        (ply(0.5).head_seat(flush), nut),
        (ply(0.5).tapped_part("bed", Spread::exact(inches(0.0))), nut),
        (
            ply(0.5).tapped_part("bed", Spread::exact(inches(0.0))),
            hole,
        ),
        (ply(0.5), hole),
    ] {
        let refused = search(&stack.build().unwrap(), nut, GripRules::faa());
        assert!(matches!(refused, Err(shankline::Error::Mismatch(_))));
    }
    // Rules that ask for more washers than they permit.
    let mut rules = GripRules::faa();
    rules.washers_max = 0;
    assert!(search(&ply(0.5).build().unwrap(), nut, rules).is_err());
    // Thread in the last ply, 0.3 in against 0.2. A spot face of 0.3 in makes the thinner part of 0.5 in, and
    // in a bushing the thread bears on no ply.
    let thin = |stack: StackBuilder| {
        let selection = search(&stack.build().unwrap(), nut, GripRules::navy()).unwrap();
        let all = selection.accepted().iter().chain(selection.rejected());
        let mut all = all.filter(|c| c.bolt.to_string() == "AN4-7A");
        let reasons = all.next().unwrap().reasons.clone();
        reasons
            .iter()
            .any(|reason| matches!(reason, GripReason::ThreadInThinPly { .. }))
    };
    let two = |first: f64, last: f64| ply(first).ply("last", Spread::exact(inches(last)));
    assert!(!thin(two(0.2, 0.3)));
    assert!(thin(
        two(0.3, 0.5).spot_face_under_nut(Spread::exact(inches(0.3)))
    ));
    assert!(thin(two(0.2, 0.3).sleeve(
        "bushing",
        Spread::exact(inches(0.3)),
        2,
        2
    )));
}

/// A cover of 27 mm on a bed with 18 mm of thread, 14 of them wanted, M12. The 40 mm screw fills
/// 39.5 - 27.2 = 12.3 mm; the 45 mm screw would go 45.5 - 26.8 = 18.7 mm deep: with a washer of
/// 2.3 to 2.7 mm under its head 16.4, and 14.6 at least.
#[test]
fn a_washer_under_the_head_keeps_a_screw_from_the_bottom() {
    let thread = "M12".parse().unwrap();
    let stack = Stack::builder()
        .ply("cover", millimetres(27.0).plus_minus(millimetres(0.2)))
        .tapped_part("bed", Spread::exact(millimetres(0.0)))
        .shear_planes([1])
        .washer_to_add_under_head(millimetres(2.5).plus_minus(millimetres(0.2)))
        .build()
        .unwrap();
    let hole = NutEnd::tapped(millimetres(14.0), Some(millimetres(18.0))).unwrap();
    let rules = LengthRules::fabrication(UnitSystem::Si).with_cut(CutRule::Never);
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread).unwrap();
    let arrangement = Arrangement::new(stack, screws, hole, rules);
    assert_eq!(arrangement.best(Goal::Fits).unwrap(), None);
    let advice = arrangement.advice(Goal::Fits, &[]).unwrap().advice;
    let washer = Change::AddWashersUnderHead {
        count: 1,
        permitted: 0,
    };
    assert_eq!(advice[0].changes, [washer]);
    assert_eq!(
        advice[0].text(UnitSystem::Si),
        "put 1 washer under the head (0 permitted)"
    );
    let outcome = &advice[0].outcome;
    assert!((outcome.screw.nominal - millimetres(45.0)).abs() < HAIR);
    assert!((outcome.protrusion.min - millimetres(0.6)).abs() < HAIR);
    assert!((outcome.protrusion.max - millimetres(2.4)).abs() < HAIR);
    // Nothing that a nut would need is advised.
    let at_nut = |change: &Change| {
        matches!(
            change,
            Change::TurnBolt
                | Change::AddWashers { .. }
                | Change::Spacer { .. }
                | Change::ThickerLastPly { .. }
        )
    };
    assert!(!advice.iter().flat_map(|advice| &advice.changes).any(at_nut));
}

/// A formula of hundreds of terms is worked in running sums.
#[test]
fn long_chains_are_worked_too() {
    let ply = millimetres(2.0).plus_minus(millimetres(0.1));
    for plies in [0, 1, 12, 13, 250] {
        let chain = (0..plies).fold(ToleranceChain::new(), |chain, index| {
            if index % 3 == 0 {
                chain.minus("ply", ply)
            } else {
                chain.plus("ply", ply)
            }
        });
        let rss = ToleranceMethod::RootSumSquare {
            sigmas_per_tolerance: 2.5,
            confidence: 0.99,
        };
        for method in [ToleranceMethod::WorstCase, rss] {
            let derivation = chain.derivation(method, "sum", "S").unwrap();
            assert_eq!(derivation.check(), Ok(()), "{plies} {method}");
        }
    }
}

/// The shares of root sum square against a seeded run of assemblies.
#[test]
fn shares_against_a_run_of_assemblies() {
    // Small linear congruential generator, Numerical Recipes' constants; twelve uniforms less six
    // are a normal number to three places.
    let mut state = 1_u64;
    let mut uniform = move || {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        #[allow(clippy::cast_precision_loss)]
        let share = (state >> 11) as f64 / (1_u64 << 53) as f64;
        share
    };
    let mut normal = move || (0..12).map(|_| uniform()).sum::<f64>() - 6.0;
    let parts = [(10.0, 0.5), (20.0, 0.8), (5.0, 0.2), (3.0, 0.3)];
    let chain = parts
        .iter()
        .fold(ToleranceChain::new(), |chain, &(size, tolerance)| {
            chain.plus("ply", millimetres(size).plus_minus(millimetres(tolerance)))
        });
    let method = ToleranceMethod::RootSumSquare {
        sigmas_per_tolerance: 2.0,
        confidence: 0.9,
    };
    let range = chain.range(method).unwrap();
    let runs = 100_000;
    let (mut inside, mut short) = (0_u32, 0_u32);
    for _ in 0..runs {
        let total: f64 = parts
            .iter()
            .map(|(size, t)| size + 0.5 * t * normal())
            .sum();
        let total = millimetres(total);
        inside += u32::from(total >= range.min && total <= range.max);
        short += u32::from(total < millimetres(37.4));
    }
    let share = |count: u32| f64::from(count) / f64::from(runs);
    // Three standard errors of a run of 100000, and the generator's own error.
    assert!((share(inside) - 0.9).abs() < 0.005, "{}", share(inside));
    let expected = range.share_below(millimetres(37.4)).unwrap().value;
    assert!(
        (share(short) - expected).abs() < 0.005,
        "{} {expected}",
        share(short)
    );
}

#[test]
fn nonsense_is_refused_everywhere() {
    let thread: Thread = "M10".parse().unwrap();
    let bad = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 1e300];
    for value in bad {
        let (good, value) = (millimetres(50.0), millimetres(value));
        let start = millimetres(20.0);
        assert!(BoltInHand::new(thread, value, start, start).is_err());
        assert!(BoltInHand::new(thread, good, value, start).is_err());
        assert!(BoltInHand::new(thread, good, start, value).is_err());
        assert!(BoltInHand::with_thread_length(thread, good, start, value).is_err());
        assert!(BoltInHand::by_caliper(value, good, good, start, start).is_err());
        let bolt = BoltInHand::new(thread, good, start, start).unwrap();
        assert!(bolt.with_uncertainty(value).is_err());
        for spread in [Spread::exact(value), good.plus_minus(value)] {
            let chain = ToleranceChain::new().plus("part", spread);
            assert!(
                chain.range(ToleranceMethod::WorstCase).is_err(),
                "{spread:?}"
            );
        }
    }
    let chain = ToleranceChain::new().plus("part", Spread::exact(millimetres(1.0)));
    for value in bad {
        for (sigmas_per_tolerance, confidence) in [(value, 0.9), (3.0, value)] {
            let method = ToleranceMethod::RootSumSquare {
                sigmas_per_tolerance,
                confidence,
            };
            assert!(chain.range(method).is_err(), "{method:?}");
        }
    }
    let stack = Stack::builder()
        .ply("lug", Spread::exact(inches(0.5)))
        .build()
        .unwrap();
    let bolt = AircraftBolt::find("AN4").unwrap();
    let nut = NutEnd::with_height(Spread::exact(inches(0.22))).unwrap();
    let washers = AnWashers::of(bolt).unwrap();
    let search = |rules| GripSearch::new(&stack, bolt, nut, washers, rules);
    for value in [f64::NAN, f64::INFINITY, -1.0] {
        let mut rules = GripRules::faa();
        rules.threads_in_hole_max = value;
        assert!(search(rules).is_err());
        let mut rules = GripRules::faa();
        rules.protrusion_min_pitches = value;
        assert!(search(rules).is_err());
    }
    let mut rules = GripRules::faa();
    rules.washers_under_nut_max = usize::MAX;
    assert!(search(rules).is_err());
    let mut thick = AnWashers::of(bolt).unwrap();
    thick.regular = Spread::exact(inches(f64::NAN));
    assert!(GripSearch::new(&stack, bolt, nut, thick, GripRules::faa()).is_err());

    // A candidate that someone tampered with.
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
    let stack = Stack::builder()
        .ply("plate", Spread::exact(millimetres(40.0)))
        .washers_under_nut(Spread::exact(millimetres(2.0)), 1)
        .build()
        .unwrap();
    let nut = nut_of(&thread);
    let rules = LengthRules::fabrication(UnitSystem::Si);
    let selection = LengthSearch::new(&stack, &screws, nut, rules)
        .unwrap()
        .run()
        .unwrap();
    let mut candidate = *selection.best().unwrap();
    candidate.washers_under_nut = usize::MAX;
    assert!(JointTolerances::of(&stack, &candidate, nut, ToleranceMethod::WorstCase).is_err());
    candidate.screw.min = millimetres(f64::NAN);
    assert!(CutPlan::new(&candidate, &thread, nut, rules).is_err());
    assert!(
        Bin::new()
            .product("x", &screws, millimetres(60.0), usize::MAX)
            .is_err()
    );
    let bin = Bin::new();
    assert!(bin.pick(&stack, &thread, nut, rules, usize::MAX).is_err());
}

#[cfg(feature = "serde")]
mod data {
    use super::*;
    use shankline::{
        joint::{JointNeed, shopping_list},
        parts::AnBolt,
    };

    #[test]
    fn a_bolt_in_the_hand_is_read_with_its_units() {
        let text = r#"{ "thread": "M12", "length": "99.4 mm", "shank": "58 mm",
            "thread_start": { "value": 68.5, "unit": "mm" }, "uncertainty": "0.2 mm" }"#;
        let bolt: BoltInHand = serde_json::from_str(text).unwrap();
        assert_eq!(bolt.uncertainty, millimetres(0.2));
        let again = serde_json::to_string(&bolt).unwrap();
        assert_eq!(serde_json::from_str::<BoltInHand>(&again).unwrap(), bolt);
        for (good, bad, named) in [
            ("99.4 mm", "50 mm", "length of the screw"),
            ("\"99.4 mm\"", "99.4", "length"),
            ("58 mm", "-1 mm", "body length"),
            ("0.2 mm", "40 mm", "length of the screw"),
            ("\"M12\"", "\"M12.3\"", "M12.3"),
            ("uncertainty", "doubt", "doubt"),
        ] {
            let error = serde_json::from_str::<BoltInHand>(&text.replace(good, bad)).unwrap_err();
            assert!(error.to_string().contains(named), "{bad}: {error}");
        }
    }

    #[test]
    fn designations_and_needs_are_read() {
        let bolt: AnBolt = serde_json::from_str("\"an4h-7a\"").unwrap();
        assert_eq!(serde_json::to_string(&bolt).unwrap(), "\"AN4H-7A\"");
        assert!(serde_json::from_str::<AnBolt>("\"AN4-8\"").is_err());
        let need = JointNeed::new("hinge", 4, ["M10 x 55"]);
        let text = serde_json::to_string(&need).unwrap();
        assert_eq!(serde_json::from_str::<JointNeed>(&text).unwrap(), need);
    }

    /// A number with a unit never stands bare.
    fn every_length_has_a_unit(value: &serde_json::Value, path: &str) {
        const BARE: [&str; 16] = [
            "end_not_counted_pitches",
            "thread_in_holes_max_pitches",
            "clear_threads",
            "threads_in_hole",
            "threads_in_hole_worst",
            "threads_in_hole_max",
            "protrusion_min_pitches",
            "protrusion_max_pitches",
            "clear_threads_min",
            "z",
            "sigmas_per_tolerance",
            "confidence",
            "value",
            "threads",
            "pitches",
            "wanted",
        ];
        match value {
            serde_json::Value::Object(map) => {
                for (key, inner) in map {
                    if inner.is_f64() {
                        assert!(BARE.contains(&key.as_str()), "{path}.{key}");
                    }
                    every_length_has_a_unit(inner, &format!("{path}.{key}"));
                }
            }
            serde_json::Value::Array(items) => {
                for item in items {
                    every_length_has_a_unit(item, path);
                }
            }
            _ => {}
        }
    }

    #[test]
    fn every_result_is_written_with_units() {
        fn written(result: &impl serde::Serialize, name: &str) {
            let value = serde_json::to_value(result).unwrap();
            assert!(value.to_string().contains("\"unit\""), "{name}");
            every_length_has_a_unit(&value, name);
        }
        let thread: Thread = "M10".parse().unwrap();
        let ply = millimetres(8.0).plus_minus(millimetres(0.2));
        let stack = Stack::builder()
            .ply("foot", ply)
            .ply("base", ply)
            .shear_planes([1])
            .washers_under_nut(millimetres(2.0).plus_minus(millimetres(0.2)), 1)
            .build()
            .unwrap();
        let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread).unwrap();
        let (nut, rules) = (nut_of(&thread), LengthRules::fabrication(UnitSystem::Si));
        let arrangement =
            Arrangement::new(stack.clone(), screws, nut, rules.with_clear_threads(1.5));
        let list = arrangement
            .advice(Goal::EveryPlaneOnShank, &alternatives(&arrangement))
            .unwrap();
        assert!(!list.advice.is_empty());
        written(&list, "advice");
        written(&arrangement, "arrangement");
        let mm = millimetres;
        let bolt = BoltInHand::new(thread, mm(45.0), mm(11.5), mm(19.0)).unwrap();
        let verdict = bolt.verdict(&stack, nut, rules).unwrap();
        written(&verdict, "verdict");
        let plan = CutPlan::new(&verdict.candidate, &thread, nut, rules).unwrap();
        written(&plan, "cut plan");
        let method = ToleranceMethod::RootSumSquare {
            sigmas_per_tolerance: 3.0,
            confidence: 0.99,
        };
        written(
            &JointTolerances::of(&stack, &verdict.candidate, nut, method).unwrap(),
            "tolerances",
        );
        let bin = Bin::new().measured("tin", &bolt, 3).unwrap();
        written(&bin, "bin");
        written(&bin.pick(&stack, &thread, nut, rules, 5).unwrap(), "pick");
        let lugs = Stack::builder()
            .ply("lug", Spread::exact(inches(0.5)))
            .build()
            .unwrap();
        let bolt = AircraftBolt::find("AN4").unwrap();
        let washers = AnWashers::of(bolt).unwrap();
        let search = GripSearch::new(&lugs, bolt, nut_of(&thread), washers, GripRules::navy());
        written(&search.unwrap().run().unwrap(), "grip");
        let list = shopping_list(&[JointNeed::new("hinge", 4, ["M10 x 55"])]).unwrap();
        assert_eq!(serde_json::to_value(&list).unwrap()["lines"][0]["count"], 4);
    }
}
