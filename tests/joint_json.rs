//! The request and the answer in `examples/data` stay what the library reads and writes.
//!
//! `UPDATE_EXAMPLES=1 cargo test --all-features --test joint_json` rewrites the answer.
#![cfg(feature = "serde")]

use shankline::joint::Joint;

const REQUEST: &str = "examples/data/davit_socket.json";
const ANSWER: &str = "examples/data/davit_socket_verdict.json";

fn request() -> Joint {
    let text = std::fs::read_to_string(REQUEST).unwrap();
    serde_json::from_str(&text).unwrap()
}

#[test]
fn the_answer_is_current() {
    let verdict = request().check().unwrap();
    let mut current = serde_json::to_string_pretty(&verdict).unwrap();
    current.push('\n');
    if std::env::var_os("UPDATE_EXAMPLES").is_some() {
        std::fs::write(ANSWER, &current).unwrap();
    }
    let kept = std::fs::read_to_string(ANSWER).unwrap();
    assert_eq!(kept, current, "run this test with UPDATE_EXAMPLES=1");
}

#[test]
fn a_joint_comes_back_as_it_went() {
    let joint = request();
    let text = serde_json::to_string(&joint).unwrap();
    let back: Joint = serde_json::from_str(&text).unwrap();
    // As text: values have twelve digits there, so the last bit of a sum may differ.
    assert_eq!(serde_json::to_string(&back).unwrap(), text);
    assert_eq!(
        back.check().unwrap().holds(),
        joint.check().unwrap().holds()
    );
}

#[test]
fn bad_requests_name_the_field() {
    let text = std::fs::read_to_string(REQUEST).unwrap();
    for (right, wrong, named) in [
        ("\"across\": \"20 kN\"", "\"across\": \"20 mm\"", "20 mm"),
        ("\"across\"", "\"acros\"", "acros"),
        ("\"M16\"", "\"M16.3\"", "M16.3"),
        ("iso_7040", "iso_704", "iso_704"),
        ("\"-15 C\"", "\"-15\"", "no unit"),
        ("[1, 2]", "[1, 3]", "shear plane"),
    ] {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        let error = serde_json::from_str::<Joint>(&spoiled).unwrap_err();
        assert!(error.to_string().contains(named), "{named}: {error}");
    }
    for (right, wrong, named) in [
        (
            "\"hottest\": \"45 C\"",
            "\"hottest\": \"-45 C\"",
            "highest temperature",
        ),
        (
            "\"across\": \"20 kN\"",
            "\"across\": \"-20 kN\"",
            "load across the axis",
        ),
        (
            "\"shock_factor\": 1.5",
            "\"shock_factor\": 0.5",
            "shock factor",
        ),
    ] {
        let spoiled = text.replacen(right, wrong, 1);
        assert_ne!(spoiled, text, "{right}");
        let joint: Joint = serde_json::from_str(&spoiled).unwrap();
        let error = joint.check().unwrap_err().to_string();
        assert!(error.contains(named), "{named}: {error}");
    }
}
