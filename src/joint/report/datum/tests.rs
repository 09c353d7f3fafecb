//! Every kind of value as a datum, and back from text.

use alloc::{string::ToString, vec};

use super::*;

#[derive(serde::Serialize)]
struct Whole(u8, i16);

#[derive(serde::Serialize)]
struct Wrapped(f32);

#[derive(serde::Serialize)]
struct Bare;

#[derive(serde::Serialize)]
enum Kind {
    Alone,
    One(u16),
    Two(bool, char),
    Named { inside: i64 },
}

struct Bytes;

impl Serialize for Bytes {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_bytes(&[7, 8])
    }
}

fn datum<T: Serialize>(value: T) -> Datum {
    value.serialize(ToDatum).unwrap()
}

fn number(value: f64) -> Datum {
    Datum::Number(value)
}

fn text(value: &str) -> Datum {
    Datum::Text(value.into())
}

fn of_variant(name: &str, inside: Datum) -> Datum {
    Datum::Fields(vec![(name.to_string(), inside)])
}

#[test]
fn values_keep_their_kind() {
    for (found, expected) in [
        (datum(true), Datum::Flag(true)),
        (datum(-8_i8), number(-8.0)),
        (datum(-16_i16), number(-16.0)),
        (datum(-32_i32), number(-32.0)),
        (datum(-64_i64), number(-64.0)),
        (datum(8_u8), number(8.0)),
        (datum(16_u16), number(16.0)),
        (datum(32_u32), number(32.0)),
        (datum(64_u64), number(64.0)),
        (datum(0.5_f32), number(0.5)),
        (datum(0.25_f64), number(0.25)),
        // Twelve digits, as the quantities of a report have.
        (datum(1.0 / 3.0), number(0.333_333_333_333)),
        (datum(f64::NAN), Datum::Nothing),
        (datum('c'), text("c")),
        (datum("word"), text("word")),
        (datum(Bytes), Datum::List(vec![number(7.0), number(8.0)])),
        (datum(None::<u8>), Datum::Nothing),
        (datum(Some(3_u8)), number(3.0)),
        (datum(()), Datum::Nothing),
        (datum(Bare), Datum::Nothing),
        (datum(Wrapped(0.5)), number(0.5)),
        (
            datum(Whole(1, -2)),
            Datum::List(vec![number(1.0), number(-2.0)]),
        ),
        (
            datum((1_u8, "a")),
            Datum::List(vec![number(1.0), text("a")]),
        ),
        (
            datum([1_u8, 2]),
            Datum::List(vec![number(1.0), number(2.0)]),
        ),
        (datum(vec!["a"]), Datum::List(vec![text("a")])),
        (datum(Kind::Alone), text("Alone")),
        (datum(Kind::One(1)), of_variant("One", number(1.0))),
        (
            datum(Kind::Two(true, 'c')),
            of_variant("Two", Datum::List(vec![Datum::Flag(true), text("c")])),
        ),
        (
            datum(Kind::Named { inside: -1 }),
            of_variant("Named", of_variant("inside", number(-1.0))),
        ),
    ] {
        assert_eq!(found, expected);
    }
}

#[test]
fn a_code_is_the_name_of_a_variant_and_nothing_else() {
    #[derive(serde::Serialize)]
    struct Pair {
        one: u8,
        other: u8,
    }
    assert_eq!(coded(&Kind::Alone), ("Alone".into(), Datum::Nothing));
    assert_eq!(coded(&Kind::One(1)), ("One".into(), number(1.0)));
    let (code, values) = coded(&Pair { one: 1, other: 2 });
    assert_eq!(code, "");
    let fields = [("one", 1.0), ("other", 2.0)];
    let fields = fields.map(|(name, value)| (name.to_string(), number(value)));
    assert_eq!(values, Datum::Fields(fields.to_vec()));
    assert_eq!(coded(&5_u8), (String::new(), number(5.0)));
}

#[test]
fn a_datum_is_read_back() {
    let written = r#"{"list":[null,true,-3,4,0.5,"word"],"none":null}"#;
    let read: Datum = serde_json::from_str(written).unwrap();
    let list = vec![
        Datum::Nothing,
        Datum::Flag(true),
        number(-3.0),
        number(4.0),
        number(0.5),
        text("word"),
    ];
    let fields = vec![
        ("list".to_string(), Datum::List(list)),
        ("none".to_string(), Datum::Nothing),
    ];
    assert_eq!(read, Datum::Fields(fields));
    let again: Datum = serde_json::from_str(&serde_json::to_string(&read).unwrap()).unwrap();
    assert_eq!(again, read);
}
