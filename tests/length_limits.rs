//! Which length is the best, which is the nearest, and why one does not do, at the limits and by hand.
//!
//! M12, P = 1.75 mm, a nut of exactly 10 mm. ISO 4014 of up to 50 mm is 0.5 mm longer or shorter, to 80 mm 0.6 mm; its thread
//! begins 30 mm before its end.

use shankline::joint::{
    BoltInHand, Contradiction, Criterion, HandVerdict, Ranking, Reason, StackBuilder, ToDo,
};
use shankline::prelude::*;

fn exact(value: f64) -> Spread<Length> {
    Spread::exact(millimetres(value))
}

fn plate(thickness: f64) -> StackBuilder {
    Stack::builder().ply("plate", exact(thickness))
}

fn thread() -> Thread {
    "M12".parse().unwrap()
}

fn nut() -> NutEnd {
    NutEnd::with_height(exact(10.0)).unwrap()
}

fn rules() -> LengthRules {
    LengthRules::fabrication(UnitSystem::Si)
}

fn near(found: Length, by_hand: f64) -> bool {
    (found - millimetres(by_hand)).abs() < millimetres(1e-6)
}

fn in_hand(stack: StackBuilder, rules: LengthRules, measures: [f64; 3]) -> HandVerdict {
    let [length, shank, start] = measures.map(millimetres);
    let bolt = BoltInHand::new(thread(), length, shank, start).unwrap();
    bolt.verdict(&stack.build().unwrap(), nut(), rules).unwrap()
}

fn reasons(stack: StackBuilder, rules: LengthRules, measures: [f64; 3]) -> Vec<Reason> {
    let found = in_hand(stack, rules, measures);
    found.candidate.reasons().copied().collect()
}

/// The two nearest of those that do not fit, and by what they are ranked.
fn rejected(product: ScrewProduct, stack: StackBuilder, rules: LengthRules) -> Vec<f64> {
    let (stack, screws) = (
        stack.build().unwrap(),
        ScrewSeries::new(product, &thread()).unwrap(),
    );
    let search = LengthSearch::new(&stack, &screws, nut(), rules).unwrap();
    let selection = search.run().unwrap();
    assert!(selection.accepted().is_empty());
    let all = selection.rejected().iter().take(4);
    all.map(|own| (own.screw.nominal / millimetres(1.0)).value.round())
        .collect()
}

/// 30 mm and a nut, and an end of 3.5 to 4.5 mm, uncut: 45 mm is up to 1.0 mm too long, 40 mm 4.0 mm too short, 50 mm up
/// to 6.0 mm too long, and 35 mm 9.0 mm too short.
#[test]
fn what_is_too_long_is_as_near_as_what_is_too_short() {
    let uncut = rules()
        .with_protrusion(2.0, Some(4.5 / 1.75))
        .with_cut(CutRule::Never);
    let found = rejected(ScrewProduct::Iso4017, plate(30.0), uncut);
    assert_eq!(found, [45.0, 40.0, 50.0, 35.0]);
    // Where they may be cut those that are too long fit.
    let cut = rules().with_protrusion(2.0, Some(4.5 / 1.75));
    let stack = plate(30.0).build().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4017, &thread()).unwrap();
    let search = LengthSearch::new(&stack, &screws, nut(), cut).unwrap();
    let best = search.best().unwrap().unwrap();
    assert!(near(best.screw.nominal, 45.0) && best.needs_cut);
}

/// Ten threads beyond 37 mm and a nut: 65 mm is 0.1 mm too short, 70 mm jams 3 mm before it clamps, 60 mm is 5.1 mm too
/// short and 55 mm 10.1 mm.
#[test]
fn a_nut_that_jams_is_as_far_off_as_it_is_from_clamping() {
    let ten = rules().with_protrusion(10.0, None);
    let found = rejected(ScrewProduct::Iso4014, plate(37.0), ten);
    assert_eq!(found, [65.0, 70.0, 60.0, 55.0]);
    // 5.25 mm of clear thread asked for: 70 mm lacks 8.25 mm, and 65 mm 5.25 - 2 = 3.25 mm.
    let found = rejected(
        ScrewProduct::Iso4014,
        plate(37.0),
        ten.with_clear_threads(3.0),
    );
    assert_eq!(found, [65.0, 60.0, 70.0, 55.0]);
}

/// 55 mm sticks 11.6 mm out of 34 mm and a nut where 8.75 mm may be; with two washers of 2 mm 7.6 mm. Which is better, the
/// ranking says.
#[test]
fn a_cut_or_washers_as_the_ranking_says() {
    let stack = plate(34.0)
        .washers_under_nut(exact(2.0), 0)
        .build()
        .unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread()).unwrap();
    let of = |ranking: Ranking, length: f64| {
        let search = LengthSearch::new(&stack, &screws, nut(), rules()).unwrap();
        let screw = screws.length(millimetres(length)).unwrap();
        let found = search.ranked(ranking).assess(screw).unwrap();
        assert!(found.fits());
        (found.washers_added, found.needs_cut)
    };
    let washers = Ranking::by(&[Criterion::WashersAdded]);
    let cut = Ranking::by(&[Criterion::Cut]);
    assert_eq!(of(Ranking::default(), 55.0), (2, false));
    assert_eq!(of(cut, 55.0), (2, false));
    assert_eq!(of(washers, 55.0), (0, true));
    assert_eq!(
        of(
            Ranking::by(&[Criterion::Length, Criterion::WashersAdded]),
            55.0
        ),
        (0, true)
    );
    // Without a cut whatever is preferred: 50 mm sticks 6.5 mm out at most.
    assert_eq!(of(washers, 50.0), (0, false));
    // 60 mm has its thread from 30 mm and is cut whatever is added: then nothing is.
    assert_eq!(of(Ranking::default(), 60.0), (0, true));
    // A nut that jams needs its washers, and is cut all the same: 65 mm, thread from 35 mm.
    assert_eq!(of(Ranking::default(), 65.0), (1, true));
    assert_eq!(of(washers, 65.0), (1, true));
}

#[test]
fn a_ranking_has_every_criterion_once() {
    use Criterion::{Cut, Length, PlanesInThread, PlanesOffShank, WashersAdded};
    for (first, all) in [
        (
            &[][..],
            [PlanesInThread, PlanesOffShank, Cut, WashersAdded, Length],
        ),
        (
            &[Length, Cut],
            [Length, Cut, PlanesInThread, PlanesOffShank, WashersAdded],
        ),
        (
            &[Cut, Cut],
            [Cut, PlanesInThread, PlanesOffShank, WashersAdded, Length],
        ),
        (
            &[WashersAdded, Length, PlanesOffShank, Cut, PlanesInThread],
            [WashersAdded, Length, PlanesOffShank, Cut, PlanesInThread],
        ),
    ] {
        assert_eq!(Ranking::by(first).criteria(), all);
    }
}

#[cfg(feature = "serde")]
#[test]
fn a_ranking_is_written_with_every_criterion() {
    let ranking = Ranking::by(&[Criterion::Length]);
    let text = serde_json::to_value(ranking).unwrap();
    assert_eq!(text.as_array().unwrap().len(), 5);
    assert_eq!(text[0], "length");
    assert_eq!(serde_json::from_value::<Ranking>(text).unwrap(), ranking);
}

/// Where a product has no length at a size whose measures were read, either way of asking says so.
#[test]
fn a_size_without_lengths_is_refused_however_it_is_asked() {
    let mut refused = 0;
    for row in shankline::tables::threads::UnifiedThread::all() {
        let Ok(thread) = Thread::unified(row.nominal_diameter, row.series) else {
            continue;
        };
        for &product in ScrewProduct::ALL {
            let Ok(screws) = ScrewSeries::new(product, &thread) else {
                continue;
            };
            let stack = plate(30.0).build().unwrap();
            let search = LengthSearch::new(&stack, &screws, nut(), rules()).unwrap();
            let (all, best) = (search.run(), search.best());
            assert_eq!(all.as_ref().err(), best.as_ref().err(), "{screws}");
            refused += usize::from(best.is_err());
        }
    }
    assert!(refused > 0);
}

/// 37 mm and a thread from 37 mm: the nut clamps, with no clear thread left.
#[test]
fn clear_threads_that_are_missing_are_no_jam() {
    let one = rules().with_clear_threads(1.0);
    let found = reasons(plate(37.0), one, [60.0, 20.0, 37.0]);
    assert!(
        matches!(found[..], [Reason::TooFewClearThreads { by, washers_needed: None, .. }] if near(by, 1.75)),
        "{found:?}"
    );
    assert_eq!(reasons(plate(37.0), rules(), [60.0, 20.0, 37.0]), []);
    let found = reasons(plate(37.0), one, [60.0, 20.0, 37.5]);
    assert!(
        matches!(found[..], [Reason::NutJams { by, washers_needed: None, .. }] if near(by, 0.5)),
        "{found:?}"
    );
    // 2.25 mm are missing: two washers of 1.5 mm, or one and a half, which is two.
    let washered = plate(37.0).washers_under_nut(exact(1.5), 0);
    let found = reasons(washered, one.with_washers_under_nut(1), [60.0, 20.0, 37.5]);
    assert!(
        matches!(found[..], [Reason::NutJams { by, washers_needed: Some(2), washers_permitted: 1 }] if near(by, 0.5)),
        "{found:?}"
    );
    // And just two: 3.0 mm.
    let washered = plate(37.0).washers_under_nut(exact(1.5), 0);
    let found = reasons(washered, one.with_washers_under_nut(1), [60.0, 20.0, 38.25]);
    assert!(
        matches!(
            found[..],
            [Reason::NutJams {
                washers_needed: Some(2),
                ..
            }]
        ),
        "{found:?}"
    );
}

/// Four threads are 7 mm: clear thread all through 7 mm is asked of a bolt threaded to its head, through 6.9 mm of none.
#[test]
fn clear_threads_through_all_that_is_clamped_are_possible() {
    let four = rules().with_clear_threads(4.0);
    let measures = [40.0, 5.0, 6.0];
    let found = in_hand(plate(7.0), four, measures).to_do;
    assert!(
        matches!(found[..], [ToDo::ThreadNearerHead { by }] if near(by, 6.0)),
        "{found:?}"
    );
    let because = Contradiction::ClearThreads;
    assert_eq!(
        in_hand(plate(6.9), four, measures).to_do,
        [ToDo::NoBolt { because }]
    );
    // Nor where there is more of it.
    let found = in_hand(plate(20.0), four, [60.0, 5.0, 16.0]).to_do;
    assert!(
        matches!(found[..], [ToDo::ThreadNearerHead { by }] if near(by, 3.0)),
        "{found:?}"
    );
}

/// Thread in the holes of one thread at most and three threads clear: 1.75 mm and 5.25 mm from the end of 30 mm.
#[test]
fn thread_in_the_holes_and_clear_thread_contradict_each_other() {
    let of = |holes: f64, clear: f64| {
        let rules = rules()
            .with_thread_in_holes(holes)
            .with_clear_threads(clear);
        in_hand(plate(30.0), rules, [60.0, 20.0, 31.0]).to_do
    };
    let because = Contradiction::ThreadInHoles;
    assert_eq!(of(1.0, 3.0), [ToDo::NoBolt { because }]);
    assert_ne!(of(3.0, 3.0), [ToDo::NoBolt { because }]);
    assert_ne!(of(3.0, 1.0), [ToDo::NoBolt { because }]);
}

/// 30 mm within 1 mm and 3.5 mm to 5.25 mm beyond the nut, uncut: 2 mm do not go into 1.75 mm.
#[test]
fn what_varies_by_more_than_its_window_needs_a_cut() {
    let of = |within: f64, cut| {
        let stack =
            Stack::builder().ply("plate", millimetres(30.0).plus_minus(millimetres(within)));
        let rules = rules().with_protrusion(2.0, Some(3.0)).with_cut(cut);
        in_hand(stack, rules, [60.0, 20.0, 25.0]).to_do
    };
    let because = Contradiction::Protrusion;
    assert_eq!(of(1.0, CutRule::Never), [ToDo::NoBolt { because }]);
    let shorter = of(0.8, CutRule::Never);
    assert!(
        matches!(shorter[..], [ToDo::ShorterBolt { .. }]),
        "{shorter:?}"
    );
    let cut = of(1.0, CutRule::usual(UnitSystem::Si));
    assert_eq!(cut, [ToDo::CutAtFitUp]);
}

/// The engagement of a tapped part goes to the end of its thread at most.
#[test]
fn a_tapped_thread_is_as_deep_as_it_is_engaged() {
    let tapped = |depth| NutEnd::tapped(millimetres(14.0), Some(millimetres(depth)));
    assert!(tapped(14.0).is_ok() && tapped(13.99).is_err() && tapped(18.0).is_ok());
}

/// The heights of ISO 7042 were recalled, those of ISO 4032 were read.
#[test]
fn a_recalled_height_of_a_nut_is_told() {
    let told = |style| {
        let nut = NutEnd::of(Nut::find(style, &thread()).unwrap()).unwrap();
        nut.cautions().iter().count()
    };
    assert_eq!((told(NutStyle::Iso7042), told(NutStyle::Iso4032)), (1, 0));
    let stack = plate(30.0).build().unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread()).unwrap();
    let selected = |style| {
        let nut = NutEnd::of(Nut::find(style, &thread()).unwrap()).unwrap();
        let search = LengthSearch::new(&stack, &screws, nut, rules()).unwrap();
        search.run().unwrap().cautions().iter().count()
    };
    assert_eq!(selected(NutStyle::Iso7042), selected(NutStyle::Iso4032) + 1);
}

/// 46 mm, cut to whole millimetres with half a millimetre either way, leave 3.5 mm of 32 mm and a nut: what is bought of 46 mm
/// needs no cut, and what is bought of 50 mm loses 4 mm. The end is then 3.5 to 4.5 mm long.
#[test]
fn a_cut_is_made_where_it_takes_something_off() {
    let window = rules().with_protrusion(2.0, Some(4.5 / 1.75));
    let found = in_hand(plate(32.0), window, [50.0, 10.0, 20.0]).candidate;
    let cut = found.cut.expect("it is cut");
    assert!(near(cut.length, 46.0) && near(cut.removed, 4.0));
    assert!(near(cut.protrusion.min, 3.5) && near(cut.protrusion.max, 4.5) && cut.holds_window);
    assert!(near(cut.thread_left, 26.0));
    // Too long by a tenth, and nothing to take off.
    let bare = BoltInHand::new(
        thread(),
        millimetres(46.0),
        millimetres(10.0),
        millimetres(20.0),
    );
    let bare = bare.unwrap().with_uncertainty(millimetres(0.6)).unwrap();
    let stack = plate(32.0).build().unwrap();
    let found = bare.verdict(&stack, nut(), window.with_protrusion(1.9, Some(4.5 / 1.75)));
    let found = found.unwrap().candidate;
    assert!(found.needs_cut && found.cut.is_none());
    // Where the window is a hair too narrow for the saw it does not hold.
    let tight = rules().with_protrusion(2.0, Some(4.49 / 1.75));
    let cut = in_hand(plate(32.0), tight, [50.0, 10.0, 20.0])
        .candidate
        .cut;
    assert!(cut.is_some_and(|cut| !cut.holds_window));
}

/// By nominal sizes: 36.5 + 10 + 2 x 1.75 = 50 mm, which there is; its shank ends at 20 mm.
#[test]
fn a_textbook_takes_the_next_length_and_its_shank() {
    use shankline::parts::Zone;
    let of = |first: f64, last: f64, product: ScrewProduct, threads: f64| {
        let stack = Stack::builder()
            .ply("a", exact(first))
            .ply("b", exact(last))
            .shear_planes([1]);
        let (stack, screws) = (
            stack.build().unwrap(),
            ScrewSeries::new(product, &thread()).unwrap(),
        );
        let search = LengthSearch::new(&stack, &screws, nut(), rules()).unwrap();
        let found = search.textbook_length_without_tolerances(threads).unwrap();
        assert_eq!(found.cautions().iter().count(), 1);
        (
            (found.screw.nominal / millimetres(1.0)).value.round(),
            found.planes[0],
            found.threads_in_planes(),
            found.clamps,
        )
    };
    let bolt = ScrewProduct::Iso4014;
    assert_eq!(of(16.5, 20.0, bolt, 2.0), (50.0, Zone::Shank, 0, true));
    assert_eq!(of(16.5, 20.1, bolt, 2.0), (55.0, Zone::Shank, 0, true));
    // At the end of the shank the thread begins.
    assert_eq!(of(19.9, 16.6, bolt, 2.0), (50.0, Zone::Shank, 0, true));
    assert_eq!(of(20.0, 16.5, bolt, 2.0), (50.0, Zone::Thread, 1, true));
    assert_eq!(of(25.0, 11.5, bolt, 2.0), (50.0, Zone::Thread, 1, true));
    // 20 + 10 + 20 mm: the nut meets the end of the shank, and 20.1 mm leave it a hair.
    let sixteen = 20.0 / 1.75;
    assert_eq!(of(10.0, 10.0, bolt, sixteen), (50.0, Zone::Shank, 0, false));
    assert_eq!(
        of(10.0, 10.1, bolt, sixteen - 0.1),
        (50.0, Zone::Shank, 0, true)
    );
    assert_eq!(of(10.0, 9.0, bolt, sixteen), (50.0, Zone::Shank, 0, false));
    // However the grip is made up, no rounding of a sum makes a nut clamp that meets the end of the shank.
    for nominal in [
        50.0, 55.0, 60.0, 65.0, 70.0, 80.0, 90.0, 100.0, 110.0, 120.0,
    ] {
        let grip = nominal - 30.0;
        for share in 1..100_u32 {
            let first = 0.01 * f64::from(share) * grip;
            let (length, _, _, clamps) = of(first, grip - first, bolt, sixteen - 0.1);
            assert_eq!((length, clamps), (nominal, false), "{first}");
        }
    }
    let screw = ScrewProduct::Iso4017;
    assert_eq!(of(16.5, 20.0, screw, 2.0), (50.0, Zone::Thread, 1, true));
}

/// Two plates of 15 mm: 55 and 60 mm have the plane on their shank, 50 mm has it in its run-out, though it fits too.
#[test]
fn a_shopping_list_takes_only_what_is_as_good() {
    let stack = Stack::builder()
        .ply("a", exact(15.0))
        .ply("b", exact(15.0))
        .shear_planes([1])
        .build()
        .unwrap();
    let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread()).unwrap();
    let search = LengthSearch::new(&stack, &screws, nut(), rules()).unwrap();
    let selection = search.run().unwrap();
    let name = |own: &shankline::joint::Candidate| {
        format!("{:.0}", (own.screw.nominal / millimetres(1.0)).value)
    };
    let fit: Vec<String> = selection.accepted().iter().map(name).collect();
    assert!(fit.contains(&"50".to_string()));
    let need = shankline::joint::JointNeed::from_selection("rail", 4, &selection, name);
    assert_eq!(need.choices, ["55", "60"]);
    assert_eq!((need.name.as_str(), need.count), ("rail", 4));
}

/// Washers added, a cut of a fixed length, a cut at the fit-up, and neither, in a line each.
#[test]
fn a_list_of_lengths_says_what_is_to_be_done() {
    let text = |within: f64, nut_style: Option<NutStyle>| {
        let ply = millimetres(34.0).plus_minus(millimetres(within));
        let stack = Stack::builder()
            .ply("plate", ply)
            .washers_under_nut(exact(2.0), 0)
            .build()
            .unwrap();
        let screws = ScrewSeries::new(ScrewProduct::Iso4014, &thread()).unwrap();
        let nut = nut_style.map_or_else(nut, |style| {
            NutEnd::of(Nut::find(style, &thread()).unwrap()).unwrap()
        });
        let search = LengthSearch::new(&stack, &screws, nut, rules()).unwrap();
        search.run().unwrap().report(UnitSystem::Si).to_string()
    };
    let line = |text: &str, start: &str| -> String {
        let mut lines = text.lines().map(str::trim);
        let found = lines.find(|line| line.starts_with(start));
        found.unwrap_or_else(|| panic!("{start}: {text}")).into()
    };
    let exactly = text(0.0, None);
    let planes = "shear planes: 0 on shank, 0 in the run-out, 0 in the thread";
    assert_eq!(
        line(&exactly, "50 mm"),
        format!("50 mm: {planes}; sticks out 5.50 mm to 6.50 mm")
    );
    assert_eq!(
        line(&exactly, "55 mm"),
        format!("55 mm: {planes}; sticks out 6.40 mm to 7.60 mm; 2 washers added")
    );
    // 34 + 10 + 3.5 + 0.5 = 48 mm.
    assert_eq!(
        line(&exactly, "60 mm"),
        format!("60 mm: {planes}; sticks out 15.40 mm to 16.60 mm; cut to 48.00 mm")
    );
    assert!(!exactly.contains("Cautions"));
    // 4 mm either way: no fixed cut holds the window of 5.25 mm.
    let roughly = text(4.0, None);
    assert!(
        line(&roughly, "60 mm").ends_with("; cut at the fit-up"),
        "{roughly}"
    );
    let recalled = text(0.0, Some(NutStyle::Iso7042));
    let (_, cautions) = recalled
        .split_once("\nCautions\n")
        .expect("what was recalled");
    assert!(cautions.starts_with("  "), "{cautions}");
}
