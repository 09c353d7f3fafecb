//! What there is to choose from, and what fits a thread.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use shankline::Spread;
use shankline::catalogue::Key;
use shankline::joint::{JointMethods, RuleSet};
use shankline::material::{BoltGrade, Finish, NutGrade, NutTapping};
use shankline::parts::{NutStyle, ScrewProduct, Washer, WasherStyle};
use shankline::strength::check::{Level, Mode};
use shankline::tables::friction::Condition;
use shankline::tables::galvanic::Metal;
use shankline::tables::holes::{ClearanceHole, HoleFit};
use shankline::tables::plies::PlyMaterial;
use shankline::tables::timber::Timber;
use shankline::thread::Thread;
use shankline::units::{Length, UnitSystem};

use crate::questions::written;
use crate::refusal::{Refusal, read};

/// One to choose: what stands in a request, and what people are shown.
#[derive(Serialize)]
struct Choice {
    code: &'static str,
    label: &'static str,
}

fn choice<K: Key>(key: K) -> Choice {
    let (code, label) = (key.code(), key.label());
    Choice { code, label }
}

fn all<K: Key>() -> Vec<Choice> {
    K::ALL.iter().copied().map(choice).collect()
}

/// The lists, or with a thread what is made for it.
pub fn catalogue(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        thread: Option<Thread>,
    }
    let Asked { thread } = read(request)?;
    match thread {
        None => lists(),
        Some(thread) => fitting(&thread),
    }
}

fn lists() -> Result<Vec<u8>, Refusal> {
    #[derive(Serialize)]
    struct Lists {
        threads: Vec<String>,
        methods: &'static [&'static str],
        families: BTreeMap<&'static str, Vec<Choice>>,
    }
    written(&Lists {
        threads: Thread::tabled().map(|thread| thread.to_string()).collect(),
        methods: &JointMethods::NAMES,
        families: BTreeMap::from([
            ("products", all::<ScrewProduct>()),
            ("bolt_grades", all::<BoltGrade>()),
            ("nut_styles", all::<NutStyle>()),
            ("nut_grades", all::<NutGrade>()),
            ("washer_styles", all::<WasherStyle>()),
            ("finishes", all::<Finish>()),
            ("metals", all::<Metal>()),
            ("materials", all::<&PlyMaterial>()),
            ("timbers", all::<&Timber>()),
            ("hole_fits", all::<HoleFit>()),
            ("conditions", all::<Condition>()),
            ("rules", all::<RuleSet>()),
            ("modes", all::<Mode>()),
            ("levels", all::<Level>()),
            ("units", all::<UnitSystem>()),
        ]),
    })
}

#[derive(Serialize)]
struct Graded {
    code: &'static str,
    label: &'static str,
    grades: Vec<Choice>,
}

fn graded<K: Key, G: Key>(key: K, grades: impl Iterator<Item = G>) -> Graded {
    let Choice { code, label } = choice(key);
    let grades = grades.map(choice).collect();
    Graded {
        code,
        label,
        grades,
    }
}

#[derive(Serialize)]
struct FittingWasher {
    code: &'static str,
    label: &'static str,
    /// None where no limits have been read.
    thickness: Option<Spread<Length>>,
}

#[derive(Serialize)]
struct Fitting {
    thread: Thread,
    products: Vec<Graded>,
    nuts: Vec<Graded>,
    washers: Vec<FittingWasher>,
    holes: Vec<&'static ClearanceHole>,
}

fn fitting(thread: &Thread) -> Result<Vec<u8>, Refusal> {
    let washer = |style: WasherStyle| FittingWasher {
        code: style.code(),
        label: style.label(),
        thickness: Washer::find(style, thread)
            .ok()
            .and_then(|own| own.thickness().ok()),
    };
    let holes = HoleFit::ALL.iter();
    written(&Fitting {
        thread: *thread,
        products: ScrewProduct::made_with(thread)
            .map(|product| graded(product, product.grades(thread)))
            .collect(),
        nuts: NutStyle::made_with(thread)
            .map(|style| graded(style, style.grades(thread, NutTapping::Usual)))
            .collect(),
        washers: WasherStyle::made_for(thread).map(washer).collect(),
        holes: holes
            .filter_map(|fit| ClearanceHole::find(thread, *fit).ok())
            .collect(),
    })
}
