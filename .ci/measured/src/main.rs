//! Runs one call so many times: `measured CALL TIMES`. The difference of two runs is what the call itself costs.

use std::hint::black_box;

use shankline::drawing;
use shankline::joint::{BoltCase, Joint};
use shankline::prelude::*;

fn davit() -> Joint {
    let text = include_str!("../../../examples/data/davit_socket.json");
    serde_json::from_str(text).expect("the davit socket")
}

fn main() {
    let arguments: Vec<String> = std::env::args().collect();
    let times: usize = arguments[2].parse().expect("how often");
    let mut joint = davit();
    let searched = joint.check().expect("a verdict");
    match arguments[1].as_str() {
        "check_of_a_given_length" => {
            joint.bolt.length = Some(searched.candidate.screw.nominal);
            repeat(times, || joint.check());
        }
        "check_with_the_length_searched" => repeat(times, || joint.check()),
        "case_of_a_prepared_joint" => {
            let mut prepared = joint.prepare().expect("a prepared joint");
            let case = BoltCase::steady(newtons(3e3), newtons(5e3));
            repeat(times, || prepared.answer(black_box(&case)));
        }
        "length_search" => repeat(times, || joint.lengths()),
        "section_as_svg" => {
            let assembly = joint.assembly(&searched.candidate).expect("an assembly");
            repeat(times, || drawing::section(&assembly, Some(&searched), UnitSystem::Si).svg());
        }
        "thread_by_designation" => repeat(times, || black_box("3/4-10 UNC").parse::<Thread>()),
        "nut_of_a_thread" => {
            let thread: Thread = "M16".parse().expect("a thread");
            repeat(times, || Nut::find(NutStyle::Iso4032, black_box(&thread)));
        }
        "strength_of_a_grade" => {
            repeat(times, || black_box(BoltGrade::Sae(SaeGrade::Grade8)).strength(inches(0.5)));
        }
        other => panic!("no call is named {other}"),
    }
}

fn repeat<T>(times: usize, mut call: impl FnMut() -> T) {
    for _ in 0..times {
        black_box(call());
    }
}
