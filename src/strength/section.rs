//! How the area and the stress of a section of a bolt follow from thread and strength, for the working.

use alloc::borrow::Cow;
use alloc::string::ToString;

use crate::derivation::{Derivation, Step, StepSource};
use crate::error::Error;
use crate::material::BoltStrength;
use crate::source::Method;
use crate::source::Provenance;
use crate::strength::code::is_800;
use crate::tables::methods;
use crate::thread::Thread;
use crate::units::{Area, Stress};

/// A section that a method takes its area on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Section {
    /// The full shank.
    Shank,
    /// The tensile stress area.
    Stress,
    /// The tensile stress area as the tables print it; only of threads that have one.
    Printed,
    /// The root of the thread.
    Root,
    /// 0.78 of the shank, as the design office tables of IS 800 have it.
    Net,
}

impl Section {
    #[inline]
    pub(super) fn area(self, thread: &Thread) -> Area {
        match self {
            Self::Shank => thread.shank_area(),
            Self::Stress => thread.tensile_stress_area(),
            Self::Printed => thread
                .tabulated_stress_area()
                .unwrap_or_else(|| thread.tensile_stress_area()),
            Self::Root => thread.minor_area(),
            Self::Net => is_800::NET_OF_SHANK * thread.shank_area(),
        }
    }

    /// The printed area in place of the tensile stress area; other sections are not printed otherwise.
    pub(super) fn as_printed(self, thread: &Thread) -> Result<Self, Error> {
        match self {
            Self::Stress if thread.tabulated_stress_area().is_some() => Ok(Self::Printed),
            Self::Stress => Err(Error::NoValue {
                quantity: "printed tensile stress area",
                subject: thread.to_string(),
                reason: "no table has special threads; take the area by the formula",
            }),
            other => Ok(other),
        }
    }

    pub(super) fn step(self, thread: &Thread) -> Step {
        if self == Self::Printed {
            let source = thread
                .provenance()
                .map_or(methods::TABLE_OF_THREADS.into(), StepSource::from);
            let what = "tensile stress area, as printed";
            return Step::given(what, "A", self.area(thread)).source(source);
        }
        let (what, formula, source) = match (self, thread.is_unified()) {
            (Self::Shank, _) => ("shank area", "pi / 4 * d^2", None),
            (Self::Stress | Self::Printed, true) => (
                "tensile stress area",
                "pi / 4 * (d - 9 / 8 * sqrt(3) / 2 * P)^2",
                Some(methods::ASME_B1_1_FORMULA_FOR_THE_TENSILE_STRESS_AREA),
            ),
            (Self::Stress | Self::Printed, false) => (
                "tensile stress area",
                "pi / 4 * (d - 13 / 12 * sqrt(3) / 2 * P)^2",
                Some(methods::ISO_898_1_NOMINAL_STRESS_AREA),
            ),
            (Self::Root, true) => (
                "area at the root",
                "pi / 4 * (d - 3 / 2 * sqrt(3) / 2 * P)^2",
                Some(methods::MACHINERYS_HANDBOOK_SECTION_AT_MINOR_DIAMETER),
            ),
            (Self::Root, false) => (
                "area at the root",
                "pi / 4 * (d - 17 / 12 * sqrt(3) / 2 * P)^2",
                Some(methods::ISO_68_1_ROOT_ROUNDED_AT_H_6),
            ),
            (Self::Net, _) => (
                "net area of the thread",
                "0.78 * pi / 4 * d^2",
                Some(methods::IS800_NET_AREA),
            ),
        };
        let mut step =
            Step::new(what, "A", formula, self.area(thread)).with("d", thread.nominal_diameter());
        if matches!(self, Self::Stress | Self::Root) {
            step = step.with("P", thread.pitch());
        }
        match source {
            Some(source) => step.source(source),
            None => step,
        }
    }
}

/// The strength that a stress is a share of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Base {
    pub(super) what: &'static str,
    pub(super) symbol: &'static str,
    pub(super) value: Stress,
    /// The table of the code it is read from, where that is not the standard of the grade.
    pub(super) table: Option<&'static Method>,
}

/// A stress and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct StressOf {
    pub(super) stress: Stress,
    origin: Origin,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Origin {
    /// A cell of the table of the method.
    Table,
    /// The caller's own.
    Stated,
    /// A share of a strength: the formula, and the symbol and value of a factor that is no number in it.
    Share(Base, &'static str, Option<(&'static str, f64)>),
}

impl StressOf {
    pub(super) const fn table(stress: Stress) -> Self {
        let origin = Origin::Table;
        Self { stress, origin }
    }

    pub(super) const fn stated(stress: Stress) -> Self {
        let origin = Origin::Stated;
        Self { stress, origin }
    }

    /// `share` times the strength, which `formula` says in its symbol.
    #[inline]
    pub(super) fn share(share: f64, base: Base, formula: &'static str) -> Self {
        Self {
            stress: share * base.value,
            origin: Origin::Share(base, formula, None),
        }
    }

    /// `share` times the strength, with the share as a symbol of the formula.
    #[inline]
    pub(super) fn factor(
        (symbol, share): (&'static str, f64),
        base: Base,
        formula: &'static str,
    ) -> Self {
        Self {
            stress: share * base.value,
            origin: Origin::Share(base, formula, Some((symbol, share))),
        }
    }
}

impl Base {
    /// The minimum tensile strength of the standard of the grade.
    pub(super) const fn tensile(symbol: &'static str, strength: &BoltStrength) -> Self {
        Self {
            what: "tensile strength",
            symbol,
            value: strength.tensile_strength,
            table: None,
        }
    }
}

/// Section and stress of one bolt, as far as a working needs them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Origins {
    pub(super) thread: Thread,
    pub(super) section: Section,
    pub(super) stress: StressOf,
    pub(super) strengths: Option<Provenance>,
}

impl Origins {
    /// The steps to the stress, under a symbol, and to the area A.
    pub(super) fn steps(
        &self,
        derivation: Derivation,
        method: &'static Method,
        what: impl Into<Cow<'static, str>>,
        symbol: &'static str,
    ) -> Derivation {
        let stress = self.stress.stress;
        let derivation = match self.stress.origin {
            Origin::Table => derivation.step(Step::given(what, symbol, stress).source(method)),
            Origin::Stated => derivation
                .step(Step::given(what, symbol, stress).source(methods::STATED_BY_THE_CALLER)),
            Origin::Share(base, formula, factor) => {
                let source: StepSource = match (base.table, self.strengths) {
                    (Some(table), _) => table.into(),
                    (None, Some(provenance)) => provenance.into(),
                    (None, None) => methods::STATED_BY_THE_CALLER.into(),
                };
                let mut share = Step::new(what, symbol, formula, stress);
                if let Some((symbol, factor)) = factor {
                    share = share.with(symbol, factor);
                }
                derivation
                    .step(Step::given(base.what, base.symbol, base.value).source(source))
                    .step(share.with(base.symbol, base.value).source(method))
            }
        };
        derivation.step(self.section.step(&self.thread))
    }
}
