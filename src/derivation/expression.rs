//! The small language of formulas: read, evaluated, and written for people.
//!
//! ```text
//! sum     = product { ("+" | "-") product }
//! product = power { ("*" | "/") power }
//! power   = ["-"] atom ["^" power]
//! atom    = number | name | function "(" sum { "," sum } ")" | "(" sum ")"
//! ```

use alloc::{boxed::Box, string::String, vec::Vec};
use core::cell::Cell;
use core::fmt::{self, Write};

use crate::math;

/// Deeper nesting and longer text are refused, so that no formula can exhaust the stack.
const DEEPEST: usize = 40;
const LONGEST: usize = 1000;

/// A formula that has been read.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Expression<'a> {
    /// A number, as it was written.
    Number(&'a str),
    /// A symbol.
    Name(&'a str),
    Negative(Box<Self>),
    Binary(Operator, Box<Self>, Box<Self>),
    Call(&'a str, Vec<Self>),
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Operator {
    Add,
    Subtract,
    Multiply,
    Divide,
    Power,
}

impl Operator {
    /// How tightly it binds.
    const fn rank(self) -> u8 {
        match self {
            Self::Add | Self::Subtract => 1,
            Self::Multiply | Self::Divide => 2,
            Self::Power => 4,
        }
    }
}

/// Between product and power, as in `-x^2`.
const RANK_OF_NEGATIVE: u8 = 3;
const RANK_OF_ATOM: u8 = 5;

/// Reads a formula; `None` if it is none.
pub(super) fn read(text: &str) -> Option<Expression<'_>> {
    if text.len() > LONGEST {
        return None;
    }
    let mut reader = Reader {
        rest: text,
        depth: 0,
    };
    let expression = reader.sum()?;
    reader.skip_spaces();
    reader.rest.is_empty().then_some(expression)
}

struct Reader<'a> {
    rest: &'a str,
    depth: usize,
}

impl<'a> Reader<'a> {
    fn skip_spaces(&mut self) {
        self.rest = self.rest.trim_start();
    }

    /// Takes one of the characters, if it comes next.
    fn take(&mut self, one_of: &str) -> Option<char> {
        self.skip_spaces();
        let next = self.rest.chars().next().filter(|c| one_of.contains(*c))?;
        self.rest = self.rest.get(next.len_utf8()..).unwrap_or_default();
        Some(next)
    }

    /// Takes characters while they are wanted; at least one.
    fn take_while(&mut self, wanted: impl Fn(char) -> bool) -> Option<&'a str> {
        let end = self.rest.find(|c| !wanted(c)).unwrap_or(self.rest.len());
        let (taken, rest) = self.rest.split_at(end);
        self.rest = rest;
        (!taken.is_empty()).then_some(taken)
    }

    fn sum(&mut self) -> Option<Expression<'a>> {
        self.depth += 1;
        if self.depth > DEEPEST {
            return None;
        }
        let mut left = self.product()?;
        while let Some(sign) = self.take("+-") {
            let operator = if sign == '+' {
                Operator::Add
            } else {
                Operator::Subtract
            };
            left = Expression::Binary(operator, Box::new(left), Box::new(self.product()?));
        }
        self.depth -= 1;
        Some(left)
    }

    fn product(&mut self) -> Option<Expression<'a>> {
        let mut left = self.power()?;
        while let Some(sign) = self.take("*/") {
            let operator = if sign == '*' {
                Operator::Multiply
            } else {
                Operator::Divide
            };
            left = Expression::Binary(operator, Box::new(left), Box::new(self.power()?));
        }
        Some(left)
    }

    fn power(&mut self) -> Option<Expression<'a>> {
        self.depth += 1;
        if self.depth > DEEPEST {
            return None;
        }
        let power = if self.take("-").is_some() {
            Expression::Negative(Box::new(self.power()?))
        } else {
            let base = self.atom()?;
            if self.take("^").is_some() {
                Expression::Binary(Operator::Power, Box::new(base), Box::new(self.power()?))
            } else {
                base
            }
        };
        self.depth -= 1;
        Some(power)
    }

    fn atom(&mut self) -> Option<Expression<'a>> {
        if self.take("(").is_some() {
            let inner = self.sum()?;
            self.take(")")?;
            return Some(inner);
        }
        self.skip_spaces();
        if self.rest.starts_with(|c: char| c.is_ascii_digit()) {
            let number = self.take_while(|c| c.is_ascii_digit() || c == '.')?;
            return number
                .parse::<f64>()
                .is_ok()
                .then_some(Expression::Number(number));
        }
        if !self.rest.starts_with(|c: char| c.is_ascii_alphabetic()) {
            return None;
        }
        let name = self.take_while(|c| c.is_ascii_alphanumeric() || c == '_' || c == '\'')?;
        if self.take("(").is_none() {
            return Some(Expression::Name(name));
        }
        let mut arguments = Vec::from([self.sum()?]);
        while self.take(",").is_some() {
            arguments.push(self.sum()?);
        }
        self.take(")")?;
        Some(Expression::Call(name, arguments))
    }
}

/// A value, and the size of the numbers it was summed from: what its rounding error is a fraction of.
#[derive(Clone, Copy, Debug)]
pub(super) struct Evaluated {
    pub(super) value: f64,
    pub(super) scale: f64,
}

impl Evaluated {
    fn exact(value: f64) -> Self {
        Self {
            value,
            scale: value.abs(),
        }
    }
}

impl Expression<'_> {
    /// The value, with the symbols looked up; `None` for an unknown symbol or function.
    pub(super) fn evaluate(&self, lookup: &impl Fn(&str) -> Option<f64>) -> Option<Evaluated> {
        Some(match self {
            Self::Number(text) => Evaluated::exact(text.parse().ok()?),
            Self::Name("pi") => Evaluated::exact(core::f64::consts::PI),
            Self::Name(name) => Evaluated::exact(lookup(name)?),
            Self::Negative(inner) => {
                let inner = inner.evaluate(lookup)?;
                Evaluated {
                    value: -inner.value,
                    ..inner
                }
            }
            Self::Binary(operator, left, right) => {
                let (left, right) = (left.evaluate(lookup)?, right.evaluate(lookup)?);
                match operator {
                    Operator::Add => Evaluated {
                        value: left.value + right.value,
                        scale: left.scale + right.scale,
                    },
                    Operator::Subtract => Evaluated {
                        value: left.value - right.value,
                        scale: left.scale + right.scale,
                    },
                    Operator::Multiply => Evaluated {
                        value: left.value * right.value,
                        scale: left.scale * right.scale,
                    },
                    Operator::Divide => Evaluated {
                        value: left.value / right.value,
                        scale: left.scale / right.value.abs(),
                    },
                    Operator::Power => Evaluated::exact(power(left.value, right.value)),
                }
            }
            Self::Call(name, arguments) => {
                let values: Vec<f64> = arguments
                    .iter()
                    .map(|argument| Some(argument.evaluate(lookup)?.value))
                    .collect::<Option<_>>()?;
                Evaluated::exact(call(name, &values)?)
            }
        })
    }

    fn rank(&self) -> u8 {
        match self {
            Self::Number(_) | Self::Name(_) | Self::Call(..) => RANK_OF_ATOM,
            Self::Negative(_) => RANK_OF_NEGATIVE,
            Self::Binary(operator, ..) => operator.rank(),
        }
    }

    /// Whether there is a symbol to put a value in for.
    pub(super) fn has_names(&self) -> bool {
        match self {
            Self::Number(_) => false,
            Self::Name(name) => *name != "pi",
            Self::Negative(inner) => inner.has_names(),
            Self::Binary(_, left, right) => left.has_names() || right.has_names(),
            Self::Call(_, arguments) => arguments.iter().any(Self::has_names),
        }
    }
}

/// A square is a product in the formulas of the crate, and must be one here.
fn power(base: f64, exponent: f64) -> f64 {
    if (exponent - 2.0).abs() < f64::EPSILON {
        base * base
    } else {
        math::powf(base, exponent)
    }
}

fn call(name: &str, arguments: &[f64]) -> Option<f64> {
    Some(match (name, arguments) {
        ("sqrt", &[x]) => math::sqrt(x),
        ("ln", &[x]) => math::ln(x),
        ("exp", &[x]) => math::exp(x),
        ("sin", &[x]) => math::sin(x),
        ("cos", &[x]) => math::cos(x),
        ("tan", &[x]) => math::tan(x),
        ("asin", &[x]) => math::asin(x),
        ("acos", &[x]) => math::acos(x),
        ("atan", &[x]) => math::atan(x),
        ("abs", &[x]) => x.abs(),
        ("min", &[first, ref rest @ ..]) => rest.iter().fold(first, |a, &b| a.min(b)),
        ("max", &[first, ref rest @ ..]) => rest.iter().fold(first, |a, &b| a.max(b)),
        _ => return None,
    })
}

/// How a formula is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Notation {
    /// Plain text, in one line.
    Plain,
    /// LaTeX mathematics.
    Latex,
}

/// A formula on its way to a reader. `value` writes what stands for a symbol, if not its name.
pub(super) struct Written<'a, V> {
    expression: &'a Expression<'a>,
    notation: Notation,
    value: V,
    /// Whether what is being written stands in something in which LaTeX breaks no line.
    unbroken: Cell<bool>,
}

/// What stands for a symbol.
pub(super) struct Substitute {
    pub(super) text: String,
    /// Whether a power of it needs brackets.
    pub(super) compound: bool,
}

impl<V: Fn(&str) -> Option<Substitute>> fmt::Display for Written<'_, V> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.write(f, self.expression, 0)
    }
}

impl<'a, V: Fn(&str) -> Option<Substitute>> Written<'a, V> {
    pub(super) const fn new(expression: &'a Expression<'a>, notation: Notation, value: V) -> Self {
        Self {
            expression,
            notation,
            value,
            unbroken: Cell::new(false),
        }
    }

    /// Writes an expression into something in which no line is broken.
    fn write_unbroken(
        &self,
        f: &mut fmt::Formatter<'_>,
        expression: &Expression,
        least: u8,
    ) -> fmt::Result {
        let before = self.unbroken.replace(true);
        let written = self.write(f, expression, least);
        self.unbroken.set(before);
        written
    }

    /// Writes `expression`, in brackets if it binds less tightly than `least`.
    fn write(&self, f: &mut fmt::Formatter<'_>, expression: &Expression, least: u8) -> fmt::Result {
        // A LaTeX fraction needs no brackets as a factor, whatever it is made of.
        if expression.rank() < least
            && !(self.is_fraction(expression) && least < Operator::Power.rank())
        {
            let wide = self.is_wide(expression, 0);
            let [opening, closing] = self.brackets(wide);
            f.write_str(opening)?;
            if wide {
                self.write(f, expression, 0)?;
            } else {
                self.write_unbroken(f, expression, 0)?;
            }
            return f.write_str(closing);
        }
        match expression {
            Expression::Number(text) => f.write_str(text),
            Expression::Name(name) => match (self.value)(name) {
                Some(value) if value.compound && least >= Operator::Power.rank() => {
                    let [opening, closing] = self.brackets(false);
                    write!(f, "{opening}{}{closing}", value.text)
                }
                Some(value) => f.write_str(&value.text),
                None => self.write_name(f, name),
            },
            Expression::Negative(inner) => {
                f.write_char('-')?;
                self.write(f, inner, RANK_OF_NEGATIVE)
            }
            Expression::Binary(operator, left, right) => {
                self.write_binary(f, *operator, left, right)
            }
            Expression::Call(name, arguments) => self.write_call(f, name, arguments),
        }
    }

    /// Brackets; LaTeX breaks no line between those that grow with what is in them.
    fn brackets(&self, wide: bool) -> [&'static str; 2] {
        match self.notation {
            Notation::Latex if !wide => ["\\left(", "\\right)"],
            _ => ["(", ")"],
        }
    }

    /// Whether it is written as a fraction: a wide one would run over the margin, for no line is broken in it.
    fn is_fraction(&self, expression: &Expression) -> bool {
        match expression {
            Expression::Binary(Operator::Divide, left, right) => {
                self.notation == Notation::Latex
                    && !self.is_wide(left, 1)
                    && !self.is_wide(right, 1)
            }
            _ => false,
        }
    }

    /// Whether it takes most of a line of LaTeX; what stands in fractions, inside so many of them.
    fn is_wide(&self, expression: &Expression, fractions: u8) -> bool {
        self.notation == Notation::Latex
            && !self.unbroken.get()
            && self.width(expression, fractions) > WIDE
    }

    /// About how many letters wide it is printed in LaTeX.
    fn width(&self, expression: &Expression, fractions: u8) -> f64 {
        let of = |text: &str| {
            let size = match fractions {
                0 | 1 => 1.0,
                2 => 0.7,
                _ => 0.5,
            };
            size * letters(text)
        };
        match expression {
            Expression::Number(text) => of(text),
            Expression::Name(name) => match (self.value)(name) {
                Some(value) => of(&value.text),
                None => of(name),
            },
            Expression::Negative(inner) => of("-") + self.width(inner, fractions),
            Expression::Binary(Operator::Divide, left, right) => {
                let [left, right] = [left, right].map(|own| self.width(own, fractions + 1));
                if left > right { left } else { right }
            }
            Expression::Binary(Operator::Power, left, right) => {
                self.width(left, fractions) + 0.7 * self.width(right, fractions)
            }
            Expression::Binary(_, left, right) => {
                self.width(left, fractions) + of(" + ") + self.width(right, fractions)
            }
            Expression::Call(name, arguments) => {
                let arguments = arguments.iter().map(|own| self.width(own, fractions));
                of(name) + arguments.map(|width| of("()") + width).sum::<f64>()
            }
        }
    }

    fn write_binary(
        &self,
        f: &mut fmt::Formatter<'_>,
        operator: Operator,
        left: &Expression,
        right: &Expression,
    ) -> fmt::Result {
        let rank = operator.rank();
        let latex = self.notation == Notation::Latex;
        match operator {
            Operator::Divide if latex && !self.is_wide(left, 1) && !self.is_wide(right, 1) => {
                f.write_str("\\frac{")?;
                self.write_unbroken(f, left, 0)?;
                f.write_str("}{")?;
                self.write_unbroken(f, right, 0)?;
                f.write_char('}')
            }
            Operator::Power => {
                self.write(f, left, rank + 1)?;
                f.write_str(if latex { "^{" } else { "^" })?;
                self.write_unbroken(f, right, if latex { 0 } else { rank })?;
                f.write_str(if latex { "}" } else { "" })
            }
            _ => {
                self.write(f, left, rank)?;
                f.write_str(match operator {
                    Operator::Add => " + ",
                    Operator::Subtract => " - ",
                    Operator::Multiply if latex => " \\times ",
                    Operator::Multiply => " × ",
                    Operator::Divide if latex => " \\mathbin{/} ",
                    Operator::Divide | Operator::Power => " / ",
                })?;
                // a - (b + c) and a / (b * c) keep their brackets; a + b and a * b need none.
                let associative = matches!(operator, Operator::Add | Operator::Multiply);
                self.write(f, right, if associative { rank } else { rank + 1 })
            }
        }
    }

    fn write_call(
        &self,
        f: &mut fmt::Formatter<'_>,
        name: &str,
        arguments: &[Expression],
    ) -> fmt::Result {
        let width = |own| self.width(own, 0);
        let wide = self.notation == Notation::Latex
            && !self.unbroken.get()
            && arguments.iter().map(width).sum::<f64>() > WIDE;
        let [open, close] = self.brackets(wide);
        let (opening, closing) = match (self.notation, name) {
            (Notation::Latex, "sqrt") if wide => (open, ")^{1/2}"),
            (Notation::Latex, "sqrt") => ("\\sqrt{", "}"),
            (Notation::Latex, "abs") => ("\\left|", "\\right|"),
            (Notation::Latex, "asin" | "acos" | "atan") => {
                write!(f, "\\arc{}", name.trim_start_matches('a'))?;
                (open, close)
            }
            (Notation::Latex, _) => {
                write!(f, "\\{name}")?;
                (open, close)
            }
            (Notation::Plain, _) => {
                f.write_str(name)?;
                ("(", ")")
            }
        };
        f.write_str(opening)?;
        for (index, argument) in arguments.iter().enumerate() {
            if index > 0 {
                // LaTeX breaks no line after a comma unless it is told that it may.
                f.write_str(if wide { ", \\allowbreak " } else { ", " })?;
            }
            if wide {
                self.write(f, argument, 0)?;
            } else {
                self.write_unbroken(f, argument, 0)?;
            }
        }
        f.write_str(closing)
    }

    fn write_name(&self, f: &mut fmt::Formatter<'_>, name: &str) -> fmt::Result {
        match self.notation {
            Notation::Plain if name == "pi" => f.write_str("π"),
            Notation::Plain => f.write_str(name),
            Notation::Latex => write_latex_symbol(f, name),
        }
    }
}

/// So many letters fit on a line of an article, in a list and after the symbol.
const WIDE: f64 = 50.0;

/// About how many letters a piece of LaTeX is wide.
fn letters(latex: &str) -> f64 {
    let mut count = 0.0;
    let mut command = false;
    for c in latex.chars() {
        command = c == '\\' || command && c.is_ascii_alphabetic();
        if !command && !matches!(c, '{' | '}' | '^' | '_' | ',') {
            count += 1.0;
        }
    }
    count
}

/// Names that are Greek letters in print.
const GREEK: &[&str] = &[
    "alpha", "beta", "gamma", "delta", "epsilon", "eta", "theta", "kappa", "lambda", "mu", "nu",
    "pi", "rho", "sigma", "tau", "phi", "psi", "omega", "Delta", "Gamma", "Theta", "Lambda", "Phi",
    "Psi", "Omega",
];

/// `Ssy` is S with the index sy, `mu_th` the Greek mu with the index th, `F'nt` has its prime.
pub(super) fn write_latex_symbol(f: &mut impl Write, name: &str) -> fmt::Result {
    let (head, mut index) = match name.split_once('_') {
        Some((head, index)) => (head, String::from(index)),
        None => (name, String::new()),
    };
    if GREEK.contains(&head) {
        write!(f, "\\{head}")?;
    } else {
        let (letter, rest) = head.split_at(head.chars().next().map_or(0, char::len_utf8));
        let primes: String = rest.chars().filter(|&c| c == '\'').collect();
        write!(f, "{letter}{primes}")?;
        let letters: String = rest.chars().filter(|&c| c != '\'').collect();
        if !letters.is_empty() && !index.is_empty() {
            index.insert(0, ',');
        }
        index.insert_str(0, &letters);
    }
    if index.is_empty() {
        Ok(())
    } else {
        write!(f, "_{{\\mathrm{{{}}}}}", index.replace('_', ","))
    }
}

#[cfg(test)]
mod tests;
