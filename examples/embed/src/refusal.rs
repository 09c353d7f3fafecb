//! Why there is no answer, as a document.

use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_json::error::Category;

use crate::place::{Place, sentence};

/// Why a question has no answer.
///
/// As a document: `code`, a stable word for programs; `text`, the sentence for people; `place`, where it is, or null where no
/// single field is at fault; and what the errors of the library have besides, such as `quantity`, `value` and `allowed`.
#[derive(Clone, Debug)]
pub struct Refusal(Box<Document>);

#[derive(Clone, Debug, Serialize)]
struct Document {
    #[serde(flatten)]
    reason: Reason,
    place: Option<Place>,
}

#[derive(Clone, Debug, Serialize)]
#[serde(untagged)]
enum Reason {
    /// The request was read, and the library refuses it.
    Library(shankline::Error),
    /// The request was not read, or this package refuses it.
    Here { code: &'static str, text: String },
}

impl Refusal {
    fn of(reason: Reason) -> Self {
        let place = None;
        Self(Box::new(Document { reason, place }))
    }

    pub(crate) fn new(code: &'static str, text: impl Into<String>) -> Self {
        let text = text.into();
        Self::of(Reason::Here { code, text })
    }

    /// What a panic leaves behind. There should be none.
    pub(crate) fn internal() -> Self {
        Self::new(
            "internal",
            "a fault of the library, which is not your doing: please report it with the request",
        )
    }

    #[cfg(any(
        feature = "reports",
        feature = "pictures",
        feature = "schema",
        feature = "tables"
    ))]
    pub(crate) fn in_field(mut self, field: &str) -> Self {
        self.0.place.get_or_insert_default().field = Some(field.into());
        self
    }

    pub(crate) fn in_case(mut self, case: usize) -> Self {
        self.0.place.get_or_insert_default().case = Some(case);
        self
    }

    /// The stable word: those of `shankline::Error::code`, and here `request_json` for what is not JSON, `request` for what
    /// does not fit the question, `question`, `not_drawn`, `no_memory`, `internal`.
    #[must_use]
    pub const fn code(&self) -> &'static str {
        match &self.0.reason {
            Reason::Library(error) => error.code(),
            Reason::Here { code, .. } => code,
        }
    }

    /// Where it is.
    #[must_use]
    pub const fn place(&self) -> Option<&Place> {
        self.0.place.as_ref()
    }

    /// The document, as JSON.
    #[must_use]
    pub fn document(&self) -> Vec<u8> {
        serde_json::to_vec(&self.0).unwrap_or_default()
    }
}

impl From<shankline::Error> for Refusal {
    fn from(error: shankline::Error) -> Self {
        Self::of(Reason::Library(error))
    }
}

impl From<serde_json::Error> for Refusal {
    /// An answer that cannot be written.
    fn from(error: serde_json::Error) -> Self {
        Self::new("internal", error.to_string())
    }
}

/// Reads a request, which is an object.
pub fn read<T: DeserializeOwned>(request: &[u8]) -> Result<T, Refusal> {
    // serde's derive would take a list for an object, field after field.
    if request.trim_ascii_start().first() == Some(&b'[') {
        return Err(Refusal::new(
            "request",
            "a request is an object with named fields, not a list",
        ));
    }
    serde_json::from_slice(request).map_err(|error| unread::<T>(&error, request))
}

#[cold]
fn unread<T: DeserializeOwned>(error: &serde_json::Error, request: &[u8]) -> Refusal {
    let code = match error.classify() {
        Category::Data => "request",
        Category::Syntax | Category::Eof | Category::Io => "request_json",
    };
    let mut refusal = Refusal::new(code, sentence(error));
    let again = |request: &[u8]| serde_json::from_slice::<T>(request).err();
    refusal.0.place = Some(Place::of(error, request, again));
    refusal
}
