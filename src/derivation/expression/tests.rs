use super::*;
use alloc::string::ToString;
use proptest::prelude::*;

fn plain(text: &str) -> String {
    written(text, Notation::Plain)
}

fn written(text: &str, notation: Notation) -> String {
    Written::new(&read(text).unwrap(), notation, |_: &str| None).to_string()
}

fn value(text: &str) -> f64 {
    let lookup = |name: &str| (name == "x").then_some(3.0);
    read(text).unwrap().evaluate(&lookup).unwrap().value
}

#[test]
fn precedence_is_that_of_mathematics() {
    assert!((value("1 + 2 * x ^ 2") - 19.0).abs() < 1e-12);
    assert!((value("-x ^ 2") + 9.0).abs() < 1e-12);
    assert!((value("2 ^ 3 ^ 2") - 512.0).abs() < 1e-9);
    assert!((value("12 / x / 2") - 2.0).abs() < 1e-12);
    assert!((value("10 - x - 2") - 5.0).abs() < 1e-12);
    assert!((value("max(1, min(x, 7), 2)") - 3.0).abs() < 1e-12);
    assert!((value("2 ^ -x") - 0.125).abs() < 1e-12);
}

#[test]
fn writing_keeps_the_meaning() {
    for text in [
        "a - (b + c)",
        "a - (b - c)",
        "a / (b × c)",
        "(a + b) × c",
        "(a / b)^2",
        "a^(b + c)",
        "(a^b)^c",
        "sqrt(a + b) / 2",
        "(-a)^2",
        "-a × b",
        "a / (b / c)",
    ] {
        assert_eq!(plain(&text.replace('×', "*")), text);
    }
    assert_eq!(plain("((a)) + ((b) * (c))"), "a + b × c");
    assert_eq!(plain("pi / 4 * d^2"), "π / 4 × d^2");
}

#[test]
fn latex_has_fractions_roots_and_indices() {
    let latex = |text| written(text, Notation::Latex);
    assert_eq!(latex("T / (K * d)"), "\\frac{T}{K \\times d}");
    assert_eq!(latex("sqrt(x)"), "\\sqrt{x}");
    assert_eq!(latex("0.577 * Ssy"), "0.577 \\times S_{\\mathrm{sy}}");
    assert_eq!(latex("mu_th"), "\\mu_{\\mathrm{th}}");
    assert_eq!(latex("Fv_Rd"), "F_{\\mathrm{v,Rd}}");
    assert_eq!(latex("F'nt"), "F'_{\\mathrm{nt}}");
    assert_eq!(latex("(a / b)^2"), "\\left(\\frac{a}{b}\\right)^{2}");
    assert_eq!(latex("a * (b / c)"), "a \\times \\frac{b}{c}");
    assert_eq!(latex("atan(x)"), "\\arctan\\left(x\\right)");
}

/// No line is broken in a fraction, a root, or brackets that grow: what is too wide for a line has none of them.
#[test]
fn wide_latex_can_be_broken() {
    let latex = |text: &str| written(text, Notation::Latex);
    let sum = ["1 / 1000000000"; 6].join(" + ");
    let broken = latex(&alloc::format!("1 / ({sum})"));
    assert!(
        broken.starts_with("1 \\mathbin{/} (\\frac{1}{1000000000} + "),
        "{broken}"
    );
    let root = latex(&alloc::format!("sqrt({sum})"));
    assert!(
        root.starts_with("(\\frac") && root.ends_with(")^{1/2}"),
        "{root}"
    );
    let most = latex(&alloc::format!("max({sum}, x) * a"));
    assert!(most.contains(", \\allowbreak x) \\times a"), "{most}");
    // In a fraction that fits the letters are small.
    assert_eq!(
        latex("1 / (1 / a + 1 / b)"),
        "\\frac{1}{\\frac{1}{a} + \\frac{1}{b}}"
    );
}

/// Formulas of any shape, written with all their brackets.
fn formulas() -> impl Strategy<Value = String> {
    let leaf = prop_oneof![
        (0.01..99.0f64).prop_map(|x| alloc::format!("{x:.3}")),
        Just(String::from("x")),
        Just(String::from("pi")),
    ];
    leaf.prop_recursive(4, 24, 2, |inner| {
        let pair = (inner.clone(), "[-+*/^]", inner.clone());
        prop_oneof![
            pair.prop_map(|(a, sign, b)| alloc::format!("({a}) {sign} ({b})")),
            inner.clone().prop_map(|a| alloc::format!("-({a})")),
            inner.clone().prop_map(|a| alloc::format!("sqrt({a})")),
            (inner.clone(), inner).prop_map(|(a, b)| alloc::format!("max({a}, {b})")),
        ]
    })
}

proptest! {
    #[test]
    fn what_is_written_means_what_was_read(formula in formulas()) {
        let shown = plain(&formula).replace('×', "*").replace('π', "pi");
        let (expected, found) = (value(&formula), value(&shown));
        let same = expected.total_cmp(&found).is_eq() || (expected.is_nan() && found.is_nan())
            || (expected - found).abs() <= 1e-12 * expected.abs();
        prop_assert!(same, "{formula} became {shown}: {expected} and {found}");
    }

    #[test]
    fn no_text_breaks_the_reader(text in any::<String>(), near in "[-+*/^(),. a-z0-9_']{0,60}") {
        for text in [text, near] {
            if let Some(expression) = read(&text) {
                let _ = expression.evaluate(&|_| Some(1.0));
                for notation in [Notation::Plain, Notation::Latex] {
                    let written = Written::new(&expression, notation, |_: &str| None);
                    let _ = written.to_string();
                }
            }
        }
    }
}

#[test]
fn what_is_no_formula_is_refused() {
    for text in ["", "1 +", "(a", "a b", "2..5", "f(", "*a", "a)", "é", "f()"] {
        assert!(read(text).is_none(), "{text}");
    }
    for nested in ["(", "-", "2^"] {
        assert!(read(&(nested.repeat(100_000) + "x")).is_none());
        assert!(read(&(nested.repeat(100) + "x")).is_none());
    }
    assert!(read(&"1 + ".repeat(100_000)).is_none());
}
