//! A reader of the SVG that the pictures are, written apart from what writes them: strict about XML, and with its own idea
//! of how wide a text is.

/// An element without its children, or a text.
#[derive(Debug)]
pub struct Element {
    pub name: String,
    pub attributes: Vec<(String, String)>,
    pub text: String,
}

impl Element {
    pub fn get(&self, name: &str) -> Option<&str> {
        let found = self.attributes.iter().find(|(own, _)| own == name);
        found.map(|(_, value)| value.as_str())
    }

    pub fn number(&self, name: &str) -> f64 {
        let text = self
            .get(name)
            .unwrap_or_else(|| panic!("{name} of {self:?}"));
        text.parse().unwrap_or_else(|_| panic!("{name}=\"{text}\""))
    }

    pub fn class(&self) -> &str {
        self.get("class").unwrap_or("")
    }
}

/// Every element of a document, in order. Panics on what is not well formed.
pub fn read(svg: &str) -> Vec<Element> {
    assert!(
        svg.chars().all(
            |own| matches!(own, '\n' | ' '..='\u{D7FF}' | '\u{E000}'..='\u{FFFD}' | '\u{10000}'..)
                && !('\u{7F}'..='\u{9F}').contains(&own)
        ),
        "a character that XML does not know"
    );
    let mut all: Vec<Element> = Vec::new();
    let mut open: Vec<usize> = Vec::new();
    let mut rest = svg;
    while let Some(at) = rest.find('<') {
        let text = unescaped(&rest[..at]);
        match open.last() {
            Some(&own) => all[own].text.push_str(&text),
            None => assert!(text.trim().is_empty(), "text outside of the root"),
        }
        let end = tag_end(&rest[at..]);
        let tag = &rest[at + 1..at + end];
        rest = &rest[at + end + 1..];
        if let Some(name) = tag.strip_prefix('/') {
            let own = open.pop().expect("something to close");
            assert_eq!(all[own].name, name, "closed in another order");
            continue;
        }
        let (tag, closes) = match tag.strip_suffix('/') {
            Some(tag) => (tag, true),
            None => (tag, false),
        };
        assert!(!open.is_empty() || all.is_empty(), "a second root");
        all.push(element(tag));
        if !closes {
            open.push(all.len() - 1);
        }
    }
    assert!(open.is_empty(), "{} elements are not closed", open.len());
    assert!(rest.trim().is_empty());
    all
}

/// Where a tag ends: the next `>` outside of quotes.
fn tag_end(tag: &str) -> usize {
    let mut quoted = false;
    for (at, own) in tag.char_indices() {
        match own {
            '"' => quoted = !quoted,
            '>' if !quoted => return at,
            '<' if at > 0 => panic!("< within a tag"),
            _ => {}
        }
    }
    panic!("a tag has no end");
}

fn element(tag: &str) -> Element {
    let (name, mut rest) = tag.split_once(' ').unwrap_or((tag, ""));
    assert!(name.chars().all(|own| own.is_ascii_alphabetic()), "{name}");
    let mut attributes: Vec<(String, String)> = Vec::new();
    while !rest.trim().is_empty() {
        let (key, after) = rest.trim_start().split_once("=\"").expect("an attribute");
        let (value, after) = after.split_once('"').expect("a closing quote");
        assert!(!attributes.iter().any(|(own, _)| own == key), "{key} twice");
        attributes.push((key.into(), unescaped(value)));
        rest = after;
    }
    Element {
        name: name.into(),
        attributes,
        text: String::new(),
    }
}

fn unescaped(text: &str) -> String {
    let mut plain = String::new();
    let mut rest = text;
    while let Some(at) = rest.find('&') {
        plain.push_str(&rest[..at]);
        let (entity, after) = rest[at + 1..].split_once(';').expect("an entity");
        plain.push(match entity {
            "amp" => '&',
            "lt" => '<',
            "gt" => '>',
            "quot" => '"',
            "#39" => '\'',
            other => panic!("&{other};"),
        });
        rest = after;
    }
    plain.push_str(rest);
    plain
}

/// Every number in the data of a path.
pub fn numbers(data: &str) -> Vec<f64> {
    let of = data.split(|own: char| own.is_ascii_alphabetic() || own == ' ');
    of.filter(|own| !own.is_empty())
        .map(|own| own.parse().unwrap_or_else(|_| panic!("{own} in {data}")))
        .collect()
}

/// Left, top, right, bottom of a text: widths by classes of letters, as someone would guess them who has only seen the
/// typeface.
pub fn bounds(text: &Element) -> [f64; 4] {
    let mut classes = text.class().split(' ');
    let (size, stretch) = match classes.next().unwrap() {
        "H" => (16.0, 1.1),
        "S" => (12.0, 1.1),
        "T" => (12.0, 1.0),
        "N" => (11.0, 1.0),
        other => panic!("a text of the kind {other}"),
    };
    let wide = |own: char| match own {
        'i' | 'j' | 'l' | 'I' | '.' | ',' | ':' | ';' | '\'' | ' ' | '|' => 0.31,
        'f' | 'r' | 't' | '(' | ')' | '[' | ']' | '/' | '-' | '!' => 0.4,
        'c' | 'k' | 's' | 'z' => 0.54,
        'm' | 'w' | 'M' | 'W' | '@' | '%' => 0.97,
        'A'..='Z' | '<' | '>' | '+' | '=' | '&' => 0.74,
        own if own.is_ascii() => 0.63,
        _ => 1.0,
    };
    let width: f64 = text.text.chars().map(wide).sum::<f64>() * size * stretch;
    let (x, y) = (text.number("x"), text.number("y"));
    let left = match classes.next() {
        None => x,
        Some("m") => x - width / 2.0,
        Some("e") => x - width,
        Some(other) => panic!("anchored {other}"),
    };
    [left, y - 0.73 * size, left + width, y + 0.2 * size]
}

/// Fails if labels lie on each other, or anything leaves the page.
pub fn inspect(svg: &str) -> Result<Vec<Element>, String> {
    let all = read(svg);
    let root = &all[0];
    let (width, height) = (root.number("width"), root.number("height"));
    if root.get("viewBox") != Some(&format!("0 0 {width} {height}")) {
        return Err(format!("{:?}", root.get("viewBox")));
    }
    for (at, name) in ["title", "desc", "style"].iter().enumerate() {
        if all[at + 1].name != *name || all[at + 1].text.trim().is_empty() {
            return Err(format!("no {name}"));
        }
    }
    let texts: Vec<&Element> = all.iter().filter(|own| own.name == "text").collect();
    let boxes: Vec<[f64; 4]> = texts.iter().map(|own| bounds(own)).collect();
    for (at, a) in boxes.iter().enumerate() {
        if a[0] < 0.0 || a[1] < 0.0 || a[2] > width || a[3] > height {
            return Err(format!("\"{}\" leaves the page: {a:?}", texts[at].text));
        }
        for (other, b) in boxes.iter().enumerate().skip(at + 1) {
            if a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3] {
                return Err(format!(
                    "\"{}\" lies on \"{}\": {a:?} {b:?}",
                    texts[at].text, texts[other].text
                ));
            }
        }
    }
    for own in &all {
        match own.name.as_str() {
            "path" => {
                let data = own.get("d").unwrap();
                // `H` and `V` take one number: only frames of the paper have them.
                let places = numbers(data);
                let far = width.max(height);
                if places.iter().any(|own| !(0.0..=far).contains(own)) {
                    return Err(format!("a line leaves the page: {data}"));
                }
                if !data.contains(['H', 'V'])
                    && places
                        .chunks(2)
                        .any(|own| own[0] > width || own[1] > height)
                {
                    return Err(format!("a line leaves the page: {data}"));
                }
            }
            "circle" => {
                let (x, y, r) = (own.number("cx"), own.number("cy"), own.number("r"));
                if x - r < 0.0 || y - r < 0.0 || x + r > width || y + r > height {
                    return Err(format!("a circle leaves the page: {own:?}"));
                }
            }
            "svg" | "title" | "desc" | "style" | "text" => {}
            other => return Err(format!("an element {other}")),
        }
    }
    Ok(all)
}
