//! Spoiled requests through the door, as a program in C would send them: no crash, no leak, and each is answered or refused
//! with a document. `SPOILED_REQUESTS` says how many.

// It calls the door as C does, and counts what is allocated.
#![allow(unsafe_code)]

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;
use std::ffi::CString;
use std::mem::MaybeUninit;
use std::ptr;

use serde_json::{Value, json};
use shankline_embed::QUESTIONS;
use shankline_embed::door::{self, shankline_ask, shankline_free, shankline_sweep};

thread_local! {
    /// Bytes that a thread has allocated and not given back: the library starts none of its own.
    static HELD: Cell<usize> = const { Cell::new(0) };
}

struct Counting;

// SAFETY: the system's allocator, with a count beside it.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        HELD.set(HELD.get().wrapping_add(layout.size()));
        unsafe { System.alloc(layout) }
    }
    unsafe fn dealloc(&self, at: *mut u8, layout: Layout) {
        HELD.set(HELD.get().wrapping_sub(layout.size()));
        unsafe { System.dealloc(at, layout) }
    }
}

#[global_allocator]
static COUNTING: Counting = Counting;

/// A small generator, the same everywhere.
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from(self.0 >> 11).unwrap() % most.max(1)
    }

    fn one_of<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())]
    }
}

fn kept(name: &str) -> Value {
    serde_json::from_str(&std::fs::read_to_string(format!("../data/{name}.json")).unwrap()).unwrap()
}

/// Good requests, each with its question; those that take long come seldom.
fn good() -> Vec<(&'static str, Value)> {
    let mut requests = Vec::new();
    for name in ["davit_socket", "seesaw_pivot", "winch_foot"] {
        let joint = kept(name);
        for _ in 0..4 {
            requests.push((
                "check",
                json!({ "joint": joint, "units": "si", "group": kept("davit_group") }),
            ));
            requests.push(("check", json!({ "joint": joint })));
        }
        requests.push(("verdict", json!({ "joint": joint })));
        requests.push(("lengths", json!({ "joint": joint })));
        requests.push(("assembly", json!({ "joint": joint })));
        requests.push(("sweep", json!({ "joint": joint })));
        requests.push((
            "explain",
            json!({ "joint": joint, "show": "working", "format": "latex" }),
        ));
        requests.push((
            "explain",
            json!({ "joint": joint, "show": "sheet", "format": "text" }),
        ));
        requests.push((
            "draw",
            json!({ "joint": joint, "picture": "section", "format": "svg" }),
        ));
        requests.push((
            "draw",
            json!({ "joint": joint, "picture": "checks", "format": "svg" }),
        ));
    }
    let mut connection = kept("mezzanine_bracket");
    connection["cases"] = json!([{
        "name": "crowd", "force_x": "0 kN", "force_y": "-20 kN", "force_z": "0 kN",
        "moment_x": "0 N m", "moment_y": "0 N m", "moment_z": "0 N m", "x": "0 mm", "y": "0 mm", "z": "0 mm",
    }]);
    requests.push(("check_connection", json!({ "connection": connection })));
    requests.push((
        "draw_connection",
        json!({ "connection": connection, "format": "svg" }),
    ));
    requests.push(("design", kept("walkway_hanger_design")));
    requests.push(("catalogue", json!({ "thread": "M12" })));
    requests.push(("tables", json!({ "table": "nuts_inch" })));
    requests.push(("version", json!({})));
    requests
}

/// The paths of a document, as pointers into it.
fn pointers(value: &Value, here: &str, found: &mut Vec<String>) {
    let mut below = |step: &str, own: &Value| {
        let path = format!("{here}/{step}");
        found.push(path.clone());
        pointers(own, &path, found);
    };
    match value {
        Value::Object(fields) => fields.iter().for_each(|(name, own)| below(name, own)),
        Value::Array(list) => list
            .iter()
            .enumerate()
            .for_each(|(at, own)| below(&at.to_string(), own)),
        _ => {}
    }
}

const ODD: [&str; 22] = [
    "0",
    "-1",
    "1e308",
    "-1e308",
    "1e-320",
    "1e999",
    "99999999999999999999",
    "4294967295",
    "null",
    "true",
    "[]",
    "{}",
    "\"\"",
    "\"1e300 mm\"",
    "\"-5 N\"",
    "\"0 mm\"",
    "\"1 +/- 2 mm\"",
    "\"M12\"",
    "\"1/2-13 UNC\"",
    "\"\\u0000\\ud800\"",
    "\"\u{1f529} 10 mm\"",
    "[[[[[[]]]]]]",
];

/// A field removed, doubled, exchanged for another or for something odd.
fn spoil_fields(dice: &mut Dice, request: &mut Value) {
    let mut paths = Vec::new();
    pointers(request, "", &mut paths);
    if paths.is_empty() {
        return;
    }
    let path = paths[dice.below(paths.len())].clone();
    let (above, name) = path.rsplit_once('/').unwrap();
    let other = request
        .pointer(&paths[dice.below(paths.len())])
        .cloned()
        .unwrap_or_default();
    let how = dice.below(5);
    let odd = ODD[dice.below(ODD.len())];
    match request.pointer_mut(above) {
        Some(Value::Object(fields)) => match how {
            0 => drop(fields.remove(name)),
            1 => drop(fields.insert(format!("{name}s"), other)),
            2 => drop(fields.insert(name.into(), other)),
            _ => drop(fields.insert(
                name.into(),
                serde_json::from_str(odd).unwrap_or(Value::Null),
            )),
        },
        Some(Value::Array(list)) => {
            let at: usize = name.parse().unwrap();
            match how {
                0 => drop(list.remove(at)),
                1 => list.extend(std::iter::repeat_n(other, 3)),
                2 => list[at] = other,
                _ => list[at] = serde_json::from_str(odd).unwrap_or(Value::Null),
            }
        }
        _ => {}
    }
}

/// Bytes flipped, removed, doubled; a number exchanged where it stands; text that is no UTF-8.
fn spoil_bytes(dice: &mut Dice, request: &mut Vec<u8>) {
    let at = dice.below(request.len());
    let some = dice.below(12).min(request.len() - at);
    match dice.below(7) {
        0 => request[at] ^= 1 << dice.below(8),
        1 => drop(request.drain(at..at + some)),
        2 => request.extend_from_within(at..at + some),
        3 => request.truncate(at),
        4 => request.insert(
            at,
            dice.one_of(&[0xff, 0xc0, 0x80, 0, b'"', b'{', b']', b'\\']),
        ),
        5 => {
            let odd = ODD[dice.below(ODD.len())];
            let digits = request[at..].iter().position(u8::is_ascii_digit);
            let from = digits.map_or(at, |digits| at + digits);
            let to = from
                + request[from..]
                    .iter()
                    .take_while(|byte| byte.is_ascii_digit())
                    .count();
            request.splice(from..to, odd.bytes());
        }
        _ => request
            .splice(at..at, std::iter::repeat_n(b'[', 300))
            .for_each(drop),
    }
}

/// A call as C makes it; what came out is checked and given back.
fn call(question: &str, request: &[u8], dice: &mut Dice) -> i32 {
    let mut text = MaybeUninit::<door::Text>::uninit();
    let loads: [f64; 5] = std::array::from_fn(|_| {
        dice.one_of(&[
            0.0,
            1.0,
            4e3,
            -4e3,
            1e9,
            1e300,
            f64::NAN,
            f64::INFINITY,
            5e-324,
        ])
    });
    let (mut words, mut modes, mut used) = ([9; 5], [9; 5], [9.0; 5]);
    let name = CString::new(question).unwrap();
    let status = unsafe {
        if question == "sweep" {
            shankline_sweep(
                request.as_ptr(),
                request.len(),
                loads.len(),
                loads.as_ptr(),
                loads.as_ptr(),
                ptr::null(),
                if dice.below(2) == 0 {
                    ptr::null()
                } else {
                    loads.as_ptr()
                },
                words.as_mut_ptr(),
                modes.as_mut_ptr(),
                used.as_mut_ptr(),
                text.as_mut_ptr(),
            )
        } else {
            shankline_ask(
                name.as_ptr(),
                request.as_ptr(),
                request.len(),
                text.as_mut_ptr(),
            )
        }
    };
    assert!(words.iter().all(|&word| word < 3 || question != "sweep"));
    let mut text = unsafe { text.assume_init() };
    check(question, status, text.bytes());
    unsafe {
        shankline_free(&raw mut text);
        shankline_free(&raw mut text);
    }
    status
}

fn check(question: &str, status: i32, text: &[u8]) {
    let text = std::str::from_utf8(text).unwrap();
    let document = || {
        serde_json::from_str::<Value>(text)
            .unwrap_or_else(|why| panic!("{question}: {why}\n{text}"))
    };
    match status {
        door::ANSWERED => match question {
            "sweep" => assert!(text.is_empty()),
            "explain" | "draw" | "draw_connection" => assert!(text.len() > 100),
            _ => assert!(document().is_object() || document().is_array()),
        },
        door::REFUSED => {
            let document = document();
            assert!(
                document["text"]
                    .as_str()
                    .is_some_and(|text| !text.is_empty()),
                "{text}"
            );
            assert!(
                document.as_object().unwrap().contains_key("place"),
                "{text}"
            );
            let code = document["code"].as_str().unwrap();
            assert!(!code.is_empty() && code != "internal", "{text}");
        }
        other => panic!("{question}: {other}"),
    }
}

#[test]
fn spoiled_requests_are_answered_or_refused() {
    let count = std::env::var("SPOILED_REQUESTS").map_or(2_000, |count| count.parse().unwrap());
    let good = good();
    let mut dice = Dice(0x5eed_2026);
    let (mut answered, mut refused) = (0, 0);
    let mut one = |dice: &mut Dice| {
        let (question, request) = &good[dice.below(good.len())];
        let mut request = request.clone();
        for _ in 0..dice.below(4) {
            spoil_fields(dice, &mut request);
        }
        let mut request = request.to_string().into_bytes();
        if dice.below(3) == 0 {
            spoil_bytes(dice, &mut request);
        }
        let wrong = ["", "checks", "\u{fffd}"];
        let question = if dice.below(200) == 0 {
            dice.one_of(&wrong)
        } else {
            question
        };
        match call(question, &request, dice) {
            door::ANSWERED => answered += 1,
            _ => refused += 1,
        }
    };
    one(&mut dice);
    let before = HELD.get();
    for _ in 1..count {
        one(&mut dice);
    }
    assert_eq!(HELD.get(), before, "bytes are held after {count} requests");
    println!("{answered} answered, {refused} refused");
    assert!(count < 1000 || (answered > count / 10 && refused > count / 3));
}

/// Null pointers and lengths of nothing, in every place.
#[test]
fn null_is_refused_without_a_word() {
    let name = c"version".as_ptr();
    let request = b"{}";
    let loads = [1.0; 4];
    let mut room = [0.0_f64; 4];
    let mut bytes = [0_u8; 8];
    let mut text = MaybeUninit::<door::Text>::zeroed();
    let out = text.as_mut_ptr();
    let none = ptr::null::<u8>();
    unsafe {
        assert_eq!(
            shankline_ask(ptr::null(), request.as_ptr(), 2, out),
            door::MISUSED
        );
        assert_eq!(shankline_ask(name, none, 2, out), door::MISUSED);
        assert_eq!(
            shankline_ask(name, request.as_ptr(), 2, ptr::null_mut()),
            door::MISUSED
        );
        assert_eq!(
            shankline_ask(name, request.as_ptr(), 2, out.byte_add(1)),
            door::MISUSED
        );
        assert_eq!(
            shankline_ask(name, request.as_ptr(), usize::MAX, out),
            door::MISUSED
        );
        assert_eq!(shankline_ask(name, none, 0, out), door::REFUSED);
        shankline_free(out);
        assert_eq!(
            shankline_ask(c"\xff\xfe".as_ptr(), request.as_ptr(), 2, out),
            door::REFUSED
        );
        shankline_free(out);
        shankline_free(out);
        shankline_free(ptr::null_mut());

        let mut sweep = |across: *const f64, count: usize, words: *mut u8| {
            let (modes, used) = (bytes.as_mut_ptr(), room.as_mut_ptr());
            let (along, none) = (loads.as_ptr(), ptr::null());
            shankline_sweep(
                request.as_ptr(),
                2,
                count,
                across,
                along,
                none,
                none,
                words,
                modes,
                used,
                out,
            )
        };
        let mut words = [0_u8; 4];
        assert_eq!(sweep(ptr::null(), 4, words.as_mut_ptr()), door::MISUSED);
        assert_eq!(sweep(loads.as_ptr(), 4, ptr::null_mut()), door::MISUSED);
        assert_eq!(
            sweep(loads.as_ptr().byte_add(4), 3, words.as_mut_ptr()),
            door::MISUSED
        );
        assert_eq!(sweep(ptr::null(), 0, ptr::null_mut()), door::REFUSED);
        shankline_free(out);
    }
}

/// From many threads at once each gets its own answer.
#[test]
fn threads_do_not_meet() {
    let request = json!({ "joint": kept("davit_socket") }).to_string();
    let alone = shankline_embed::answer("check", request.as_bytes()).unwrap();
    std::thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| {
                for _ in 0..50 {
                    assert_eq!(
                        shankline_embed::answer("check", request.as_bytes()).unwrap(),
                        alone
                    );
                }
            });
        }
    });
}

/// Every question is spoiled, but those that have no more than a word to spoil.
#[test]
fn every_question_is_spoiled() {
    let good = good();
    for (name, _) in QUESTIONS.iter().filter(|(name, _)| *name != "schema") {
        assert!(good.iter().any(|(question, _)| question == name), "{name}");
    }
}
