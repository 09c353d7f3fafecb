//! Where in a request something is wrong.

use serde::Serialize;

/// Where in a request.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Place {
    /// The field, as `joint.stack.plies[0].thickness`; none for the request itself.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub field: Option<String>,
    /// The line of the request, counted from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub line: Option<usize>,
    /// The byte of that line, counted from 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub column: Option<usize>,
    /// The load case of a sweep, counted from 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub case: Option<usize>,
}

impl Place {
    /// Where `serde_json` stopped, and the field that it was reading. `again` reads another request as this one was read.
    ///
    /// It stops behind a value which it cannot read, except for one that only turns out to be wrong when it is whole: then the
    /// comma behind it is read as well, or the bracket in which it is the last. Whether the last value is wrong or all
    /// between the brackets is told by reading once more with another value behind it.
    pub(crate) fn of(
        error: &serde_json::Error,
        request: &[u8],
        again: impl FnOnce(&[u8]) -> Option<serde_json::Error>,
    ) -> Self {
        let (line, column) = (error.line(), error.column());
        if line == 0 {
            return Self::default();
        }
        let at = last_read(error, request);
        let mut field = field_at(request, at);
        let more: &[u8] = match request.get(at) {
            Some(b'}') => b",\"\":0",
            Some(b']') => b",0",
            _ => b"",
        };
        if !more.is_empty() {
            let longer = [&request[..at], more, &request[at..]].concat();
            let other = again(&longer).filter(|other| sentence(other) == sentence(error));
            let before = other.map(|other| last_read(&other, &longer));
            if let Some(before) = before.filter(|&before| before < at) {
                field = field_at(&longer, before);
            }
        }
        Self {
            field: Some(field).filter(|field| !field.is_empty()),
            line: Some(line),
            column: Some(column),
            case: None,
        }
    }
}

/// What is wrong, without the place.
pub fn sentence(error: &serde_json::Error) -> String {
    let text = error.to_string();
    let ending = format!(" at line {} column {}", error.line(), error.column());
    text.strip_suffix(&ending).unwrap_or(&text).into()
}

/// The last byte that was read, but for a comma and for blanks.
fn last_read(error: &serde_json::Error, request: &[u8]) -> usize {
    let lines = request.split_inclusive(|&byte| byte == b'\n');
    let before: usize = lines.take(error.line() - 1).map(<[u8]>::len).sum();
    let read = request.get(..before + error.column()).unwrap_or(request);
    let read = read.trim_ascii_end();
    let read = read.strip_suffix(b",").unwrap_or(read).trim_ascii_end();
    read.len().saturating_sub(1)
}

/// What a value lies in.
enum Inside {
    /// The field by its name, once it is read.
    Object(Option<String>),
    /// The element, counted from 0.
    List(usize),
}

/// The field to which a byte belongs. A reader that keeps track of the field while it reads would do the same, but every
/// type of the library would be read by two readers then, which is a fifth of the module for a browser.
fn field_at(request: &[u8], at: usize) -> String {
    let mut inside: Vec<Inside> = Vec::new();
    let mut from = 0;
    while let Some(&byte) = request.get(from).filter(|_| from <= at) {
        match (byte, inside.last_mut()) {
            (b'"', last) => {
                let text = string(&request[from + 1..]);
                if let Some(Inside::Object(name @ None)) = last {
                    *name = Some(String::from_utf8_lossy(text).into_owned());
                }
                from += text.len() + 1;
            }
            // The bracket itself belongs to the whole.
            (b'{' | b'[', _) if from == at => {}
            (b'{', _) => inside.push(Inside::Object(None)),
            (b'[', _) => inside.push(Inside::List(0)),
            (b'}' | b']', _) => drop(inside.pop()),
            (b',', Some(Inside::Object(name))) => *name = None,
            (b',', Some(Inside::List(index))) => *index += 1,
            _ => {}
        }
        from += 1;
    }
    let mut path = String::new();
    for step in &inside {
        match step {
            Inside::Object(Some(name)) if path.is_empty() => path.push_str(name),
            Inside::Object(Some(name)) => path.extend([".", name]),
            Inside::Object(None) => {}
            Inside::List(index) => path.extend(["[", &index.to_string(), "]"]),
        }
    }
    path
}

/// The inside of a string, from behind its first quote.
fn string(text: &[u8]) -> &[u8] {
    let mut escaped = false;
    let end = text.iter().position(|&byte| {
        let ends = byte == b'"' && !escaped;
        escaped = byte == b'\\' && !escaped;
        ends
    });
    &text[..end.unwrap_or(text.len())]
}

#[cfg(test)]
mod tests {
    use super::field_at;

    #[test]
    fn a_byte_has_a_field() {
        let text = br#"{"joint": {"a\"b": 1, "plies": [ {"x": "y}"}, [3, 44] ] }, "units": "si"}"#;
        let field = |of: &str| {
            let text = std::str::from_utf8(text).unwrap();
            field_at(text.as_bytes(), text.find(of).unwrap() + of.len() - 1)
        };
        assert_eq!(field("{"), "");
        assert_eq!(field("\"joint\""), "joint");
        assert_eq!(field("b\": 1"), "joint.a\\\"b");
        assert_eq!(field("y}"), "joint.plies[0].x");
        assert_eq!(field("y}\"}"), "joint.plies[0]");
        assert_eq!(field("44"), "joint.plies[1][1]");
        assert_eq!(field("] ]"), "joint.plies");
        assert_eq!(field("] ] }"), "joint");
        assert_eq!(field("si"), "units");
        assert_eq!(field_at(text, 10_000), "");
        assert_eq!(field_at(b"{\"a\": \"\\", 7), "a");
    }
}
