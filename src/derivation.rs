//! The working behind a result: symbol, formula, substituted values, result and source, step by
//! step.
//!
//! Results of this crate have a method `derivation()`;
//! [`Joint::check_with_working`](crate::joint::Joint::check_with_working) has those of a whole joint. It costs nothing until it is called; what it
//! returns is rendered as plain text, Markdown or LaTeX in the units of the reader's choice. Every
//! formula can be evaluated again from the values beside it ([`Derivation::check`]), so what
//! is shown is what was computed.
//!
//! ```
//! use shankline::derivation::{Derivation, Format, Step};
//! use shankline::units::{UnitSystem, inches, ksi, pounds_force, square_inches};
//! # fn main() -> Result<(), shankline::Error> {
//! let load = 92.0 * 0.1419 * 1000.0;
//! let derivation = Derivation::new("Yield load of a 1/2-13 bolt of grade 5")
//!     .step(
//!         Step::new("load at yield", "Fy", "Sy * At", pounds_force(load))
//!             .with("Sy", ksi(92.0))
//!             .with("At", square_inches(0.1419))
//!             .source("definition"),
//!     );
//! derivation.check()?;
//! let text = derivation.render(Format::Text, UnitSystem::UsCustomary).to_string();
//! assert!(text.contains("Fy = Sy × At"));
//! assert!(text.contains("= 92.0 ksi × 0.1419 in²"));
//! assert!(text.contains("= 13055 lbf"));
//! # Ok(())
//! # }
//! ```
//!
//! # Formulas
//!
//! Numbers, symbols (a letter, then letters, digits, `_` and `'`), `+ - * / ^`, brackets, `pi`,
//! and the functions `sqrt`, `ln`, `exp`, `sin`, `cos`, `tan`, `asin`, `acos`, `atan`, `abs`,
//! `min`, `max`; at most 1000 characters. Values stand in SI base units, so a formula that its publisher
//! wrote for numbers in one unit divides by that unit: `45 + 150 * mm / d` with the value 1 mm for the symbol `mm`.

mod expression;
mod render;

use alloc::{borrow::Cow, format, string::String, vec::Vec};
use core::fmt;

use crate::error::{Amount, Error};
use crate::source::{Method, Provenance};

pub use render::{Format, Rendered};

/// A chain of steps from the givens to a result.
///
/// ```
/// use shankline::derivation::{Derivation, Step};
/// use shankline::units::millimetres;
/// let derivation = Derivation::new("Grip")
///     .step(Step::given("first ply", "t1", millimetres(8.0)))
///     .step(Step::given("second ply", "t2", millimetres(10.0)))
///     .step(
///         Step::new("grip", "G", "t1 + t2", millimetres(18.0))
///             .with("t1", millimetres(8.0))
///             .with("t2", millimetres(10.0)),
///     );
/// assert_eq!(derivation.steps().len(), 3);
/// assert!(derivation.check().is_ok());
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[must_use]
pub struct Derivation {
    title: Cow<'static, str>,
    steps: Vec<Step>,
}

impl Derivation {
    /// A derivation without steps.
    ///
    /// ```
    /// use shankline::derivation::Derivation;
    /// assert_eq!(Derivation::new("Preload").title(), "Preload");
    /// ```
    pub fn new(title: impl Into<Cow<'static, str>>) -> Self {
        Self {
            title: title.into(),
            steps: Vec::new(),
        }
    }

    /// The derivation with one more step.
    ///
    /// ```
    /// use shankline::derivation::{Derivation, Step};
    /// let derivation = Derivation::new("Planes").step(Step::given("shear planes", "n", 2));
    /// assert_eq!(derivation.steps()[0].symbol(), "n");
    /// ```
    pub fn step(mut self, step: Step) -> Self {
        self.steps.push(step);
        self
    }

    /// The derivation with the steps of another after its own.
    ///
    /// ```
    /// use shankline::derivation::{Derivation, Step};
    /// let planes = Derivation::new("Planes").step(Step::given("shear planes", "n", 2));
    /// let whole = Derivation::new("Shear").and(planes);
    /// assert_eq!((whole.title(), whole.steps().len()), ("Shear", 1));
    /// ```
    pub fn and(mut self, other: Self) -> Self {
        self.steps.extend(other.steps);
        self
    }

    /// Adds the steps of another derivation after its own.
    ///
    /// ```
    /// use shankline::derivation::{Derivation, Step};
    /// let mut whole = Derivation::new("Shear");
    /// whole.append(Derivation::new("Planes").step(Step::given("shear planes", "n", 2)));
    /// assert_eq!(whole.steps().len(), 1);
    /// ```
    pub fn append(&mut self, other: Self) {
        self.steps.extend(other.steps);
    }

    /// The same under another title.
    ///
    /// ```
    /// use shankline::derivation::Derivation;
    /// assert_eq!(Derivation::new("Bearing").titled("Ply 2: bearing").title(), "Ply 2: bearing");
    /// ```
    pub fn titled(self, title: impl Into<Cow<'static, str>>) -> Self {
        Self {
            title: title.into(),
            ..self
        }
    }

    /// What is derived.
    ///
    /// ```
    /// # use shankline::derivation::Derivation;
    /// assert_eq!(Derivation::new("Preload").title(), "Preload");
    /// ```
    #[must_use]
    pub fn title(&self) -> &str {
        &self.title
    }

    /// The steps, in the order they are worked.
    ///
    /// ```
    /// # use shankline::derivation::Derivation;
    /// assert!(Derivation::new("Preload").steps().is_empty());
    /// ```
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// Evaluates every formula again from the values beside it.
    ///
    /// # Errors
    ///
    /// [`Error::Mismatch`] names the first step whose formula cannot be read, has a symbol without a
    /// value, or does not give the value of the step within a billionth of the value or, where terms
    /// cancel, of the terms it is the sum of.
    ///
    /// ```
    /// use shankline::derivation::{Derivation, Step};
    /// let wrong = Derivation::new("Sum").step(Step::new("sum", "s", "1 + n", 4).with("n", 2));
    /// assert_eq!(
    ///     wrong.check().unwrap_err().to_string(),
    ///     "derivation \"Sum\", s = 1 + n: the formula gives 3 in SI base units, the step says 4",
    /// );
    /// ```
    pub fn check(&self) -> Result<(), Error> {
        self.steps.iter().try_for_each(|step| {
            step.check().map_err(|problem| {
                Error::Mismatch(format!(
                    "derivation \"{}\", {} = {}: {problem}",
                    self.title, step.symbol, step.formula
                ))
            })
        })
    }

    /// The derivation as text in one of three forms; see [`Format`].
    ///
    /// ```
    /// use shankline::derivation::{Derivation, Format, Step};
    /// use shankline::units::{UnitSystem, millimetres};
    /// let grip = Derivation::new("Grip").step(Step::given("grip", "G", millimetres(18.0)));
    /// let latex = grip.render(Format::Latex, UnitSystem::Si).to_string();
    /// assert!(latex.contains("\\item grip: $\\displaystyle G = 18.00\\,\\mathrm{mm}$"));
    /// ```
    #[must_use]
    pub const fn render(&self, format: Format, system: crate::units::UnitSystem) -> Rendered<'_> {
        Rendered {
            derivation: self,
            format,
            system,
        }
    }
}

/// One step of a [`Derivation`].
///
/// ```
/// use shankline::derivation::Step;
/// use shankline::units::{newton_metres, newtons, millimetres};
/// let step = Step::new("torque", "T", "K * F * d", newton_metres(160.0))
///     .with("K", 0.2)
///     .with("F", newtons(50e3))
///     .with("d", millimetres(16.0))
///     .source("Shigley, 9th ed., Eq. 8-27");
/// assert_eq!(step.formula(), "K * F * d");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[must_use]
pub struct Step {
    what: Cow<'static, str>,
    symbol: Cow<'static, str>,
    /// Empty for a given value.
    formula: Cow<'static, str>,
    terms: Vec<Term>,
    value: Amount,
    source: Option<StepSource>,
}

/// Where formula or value of a [`Step`] come from.
///
/// ```
/// use shankline::derivation::{Step, StepSource};
/// use shankline::source::Method;
/// let law = Method::get("shigley-9th-ed-eq-8-27").unwrap();
/// let step = Step::given("torque", "T", 3).source(law);
/// assert_eq!(step.published_in(), Some(&StepSource::Method(law)));
/// assert_eq!(StepSource::from("drawing 12").to_string(), "drawing 12");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum StepSource {
    /// A rule or formula.
    Method(&'static Method),
    /// A row of a table.
    Row(Provenance),
    /// In the words of the caller.
    Text(Cow<'static, str>),
}

impl From<&'static Method> for StepSource {
    fn from(method: &'static Method) -> Self {
        Self::Method(method)
    }
}

impl From<Provenance> for StepSource {
    fn from(provenance: Provenance) -> Self {
        Self::Row(provenance)
    }
}

impl From<&'static str> for StepSource {
    fn from(text: &'static str) -> Self {
        Self::Text(text.into())
    }
}

impl From<String> for StepSource {
    fn from(text: String) -> Self {
        Self::Text(text.into())
    }
}

impl fmt::Display for StepSource {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Method(method) => method.fmt(f),
            Self::Row(provenance) => provenance.fmt(f),
            Self::Text(text) => f.pad(text),
        }
    }
}

#[cfg(feature = "serde")]
impl serde::Serialize for StepSource {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

/// A symbol of a formula and its value.
///
/// ```
/// use shankline::derivation::Step;
/// let step = Step::new("sum", "s", "1 + n", 3).with("n", 2);
/// assert_eq!(step.terms()[0].symbol, "n");
/// ```
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Term {
    /// The symbol.
    pub symbol: Cow<'static, str>,
    /// What it stands for.
    pub value: Amount,
}

impl Step {
    /// A value that follows from others by a formula.
    ///
    /// ```
    /// use shankline::derivation::Step;
    /// let step = Step::new("sum", "s", "1 + n", 3).with("n", 2);
    /// assert_eq!(step.what(), "sum");
    /// ```
    pub fn new(
        what: impl Into<Cow<'static, str>>,
        symbol: impl Into<Cow<'static, str>>,
        formula: impl Into<Cow<'static, str>>,
        value: impl Into<Amount>,
    ) -> Self {
        Self {
            what: what.into(),
            symbol: symbol.into(),
            formula: formula.into(),
            terms: Vec::new(),
            value: value.into(),
            source: None,
        }
    }

    /// A value that is given: by the caller, or by a table.
    ///
    /// ```
    /// use shankline::derivation::Step;
    /// use shankline::units::ksi;
    /// let step = Step::given("yield strength", "Sy", ksi(92.0)).source("SAE J429, Table 1");
    /// assert_eq!(step.formula(), "");
    /// ```
    pub fn given(
        what: impl Into<Cow<'static, str>>,
        symbol: impl Into<Cow<'static, str>>,
        value: impl Into<Amount>,
    ) -> Self {
        Self::new(what, symbol, "", value)
    }

    /// The value of a symbol of the formula.
    ///
    /// ```
    /// use shankline::derivation::Step;
    /// assert_eq!(Step::new("sum", "s", "1 + n", 3).with("n", 2).terms().len(), 1);
    /// ```
    pub fn with(mut self, symbol: impl Into<Cow<'static, str>>, value: impl Into<Amount>) -> Self {
        self.terms.push(Term {
            symbol: symbol.into(),
            value: value.into(),
        });
        self
    }

    /// Where formula or value come from.
    ///
    /// ```
    /// use shankline::derivation::Step;
    /// let step = Step::given("planes", "n", 2).source("drawing 12");
    /// assert_eq!(step.published_in().unwrap().to_string(), "drawing 12");
    /// ```
    pub fn source(mut self, source: impl Into<StepSource>) -> Self {
        self.source = Some(source.into());
        self
    }

    /// What the value is.
    ///
    /// ```
    /// # use shankline::derivation::Step;
    /// assert_eq!(Step::given("planes", "n", 2).what(), "planes");
    /// ```
    #[must_use]
    pub fn what(&self) -> &str {
        &self.what
    }

    /// Its symbol.
    ///
    /// ```
    /// # use shankline::derivation::Step;
    /// assert_eq!(Step::given("planes", "n", 2).symbol(), "n");
    /// ```
    #[must_use]
    pub fn symbol(&self) -> &str {
        &self.symbol
    }

    /// The formula; empty for a given value.
    ///
    /// ```
    /// # use shankline::derivation::Step;
    /// assert_eq!(Step::new("sum", "s", "1 + n", 3).formula(), "1 + n");
    /// ```
    #[must_use]
    pub fn formula(&self) -> &str {
        &self.formula
    }

    /// The symbols of the formula with their values.
    ///
    /// ```
    /// # use shankline::derivation::Step;
    /// assert!(Step::given("planes", "n", 2).terms().is_empty());
    /// ```
    #[must_use]
    pub fn terms(&self) -> &[Term] {
        &self.terms
    }

    /// The value.
    ///
    /// ```
    /// # use shankline::derivation::Step;
    /// use shankline::error::Amount;
    /// assert_eq!(Step::given("planes", "n", 2).value(), Amount::Count(2));
    /// ```
    #[must_use]
    pub const fn value(&self) -> Amount {
        self.value
    }

    /// Where formula or value come from.
    ///
    /// ```
    /// # use shankline::derivation::Step;
    /// assert_eq!(Step::given("planes", "n", 2).published_in(), None);
    /// ```
    #[must_use]
    pub const fn published_in(&self) -> Option<&StepSource> {
        self.source.as_ref()
    }

    fn term(&self, symbol: &str) -> Option<Amount> {
        let term = self.terms.iter().find(|term| term.symbol == symbol)?;
        Some(term.value)
    }

    fn check(&self) -> Result<(), alloc::string::String> {
        const SLACK: f64 = 1e-9;
        if self.formula.is_empty() {
            return Ok(());
        }
        let expression = expression::read(&self.formula).ok_or("the formula cannot be read")?;
        let found = expression
            .evaluate(&|name| Some(self.term(name)?.base()))
            .ok_or("a symbol has no value, or a function is unknown")?;
        let said = self.value.base();
        // Not `>`: a comparison with NaN must fail.
        if (found.value - said).abs() <= SLACK * found.scale.max(said.abs()) {
            Ok(())
        } else {
            Err(format!(
                "the formula gives {} in SI base units, the step says {said}",
                found.value
            ))
        }
    }
}
