//! The working behind the results of groups.
//!
//! Sums over many bolts are split, so that every formula stays readable.

use alloc::{format, string::String, vec::Vec};

use super::{BoltForce, ElasticGroup, GroupTension, InstantaneousCentre};
use crate::derivation::{Derivation, Step};
use crate::error::Amount;
use crate::tables::methods;
use crate::units::{Area, Force, Length, Torque, from_base, inches};

/// One term of a sum: its formula, the symbols in it, its value in SI base units.
struct Addend {
    formula: String,
    symbols: Vec<(String, Amount)>,
    value: f64,
}

const MOST_ADDENDS: usize = 12;

/// Adds the steps of a sum, with partial sums where it is long.
fn sum(
    mut derivation: Derivation,
    what: &'static str,
    symbol: &str,
    amount: fn(f64) -> Amount,
    mut addends: Vec<Addend>,
) -> Derivation {
    for level in 'a'..='z' {
        if addends.len() <= MOST_ADDENDS {
            break;
        }
        let mut partial = Vec::new();
        for (n, part) in addends.chunks(MOST_ADDENDS).enumerate() {
            let name = format!("{symbol}_{level}{}", n + 1);
            let step = sum_step("partial sum", &name, amount, part);
            partial.push(Addend {
                formula: name.clone(),
                symbols: [(name, step.value())].into(),
                value: step.value().base(),
            });
            derivation = derivation.step(step);
        }
        addends = partial;
    }
    derivation.step(sum_step(what, symbol, amount, &addends))
}

fn sum_step(
    what: &'static str,
    symbol: &str,
    amount: fn(f64) -> Amount,
    addends: &[Addend],
) -> Step {
    let formulas: Vec<&str> = addends.iter().map(|addend| &*addend.formula).collect();
    let total = addends.iter().map(|addend| addend.value).sum();
    let mut step = Step::new(
        what,
        String::from(symbol),
        formulas.join(" + "),
        amount(total),
    );
    for (symbol, value) in addends.iter().flat_map(|addend| &addend.symbols) {
        step = step.with(symbol.clone(), *value);
    }
    step
}

fn force(value: f64) -> Amount {
    let force: Force = from_base(value);
    force.into()
}

fn area(value: f64) -> Amount {
    let area: Area = from_base(value);
    area.into()
}

fn torque(value: f64) -> Amount {
    let torque: Torque = from_base(value);
    torque.into()
}

fn length(value: f64) -> Amount {
    let length: Length = from_base(value);
    length.into()
}

/// The relative areas one by one.
fn areas(of: impl Iterator<Item = f64>) -> Vec<Addend> {
    of.enumerate()
        .map(|(n, area)| {
            let name = format!("a{}", n + 1);
            Addend {
                formula: name.clone(),
                symbols: [(name, area.into())].into(),
                value: area,
            }
        })
        .collect()
}

impl ElasticGroup {
    /// The working: J, and the force on the governing bolt. Coordinates are from the centroid.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, PlaneLoad};
    /// use shankline::units::{millimetres, newtons};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pattern = BoltPattern::rows_and_columns(2, 2, millimetres(120.0), millimetres(150.0))?;
    /// let load = PlaneLoad::new(newtons(0.0), newtons(-16e3), millimetres(425.0), millimetres(0.0));
    /// let derivation = pattern.elastic(&[load])?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().last().unwrap().symbol(), "R");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let source = methods::SHIGLEY_9TH_ED_EQ_8_57;
        let pattern = &self.pattern;
        let mut derivation = Derivation::new("Bolt group by the elastic vector method")
            .step(Step::given("force to the right", "Px", self.load.force_x))
            .step(Step::given("force up", "Py", self.load.force_y))
            .step(Step::given(
                "moment about the centroid",
                "M",
                self.load.moment,
            ));
        let each = areas(pattern.offsets().map(|(_, _, area)| area));
        derivation = sum(
            derivation,
            "relative areas together",
            "A",
            Amount::from,
            each,
        );
        let turns = pattern.gyration().is_some();
        if turns {
            let squares = pattern.offsets().enumerate().map(|(n, (x, y, area))| {
                let n = n + 1;
                Addend {
                    formula: format!("a{n} * (x{n}^2 + y{n}^2)"),
                    symbols: [
                        (format!("a{n}"), area.into()),
                        (format!("x{n}"), length(x)),
                        (format!("y{n}"), length(y)),
                    ]
                    .into(),
                    value: area * (x * x + y * y),
                }
            });
            derivation = sum(derivation, "polar moment", "J", area, squares.collect());
        }
        let Some((x, y, share)) = pattern.offsets().nth(self.governing) else {
            return derivation;
        };
        let Some(&found) = self.forces.get(self.governing) else {
            return derivation;
        };
        let part = |what, symbol, load: (&'static str, Force), arm: (&'static str, f64), value| {
            let (formula, sign) = (load.0, if arm.0 == "y" { "-" } else { "+" });
            let direct = format!("a * {formula} / A");
            let formula = if turns {
                format!("{direct} {sign} M * a * {} / J", arm.0)
            } else {
                direct
            };
            let step = Step::new(what, symbol, formula, value)
                .with("a", share)
                .with(load.0, load.1)
                .with("A", pattern.total)
                .source(source);
            if turns {
                step.with("M", self.load.moment)
                    .with(arm.0, length(arm.1))
                    .with("J", pattern.polar_moment())
            } else {
                step
            }
        };
        derivation
            .step(Step::given(
                "governing bolt",
                "n",
                self.governing.saturating_add(1),
            ))
            .step(part(
                "its force to the right",
                "Rx",
                ("Px", self.load.force_x),
                ("y", y),
                found.x,
            ))
            .step(part(
                "its force up",
                "Ry",
                ("Py", self.load.force_y),
                ("x", x),
                found.y,
            ))
            .step(resultant(found))
    }
}

fn resultant(found: BoltForce) -> Step {
    Step::new(
        "force on the bolt",
        "R",
        "sqrt(Rx^2 + Ry^2)",
        found.resultant,
    )
    .with("Rx", found.x)
    .with("Ry", found.y)
}

impl InstantaneousCentre {
    /// The working of the governing bolt, and the balance of the forces that the search ended with.
    /// Coordinates are from the centroid.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, DeformationLaw, PlaneLoad};
    /// use shankline::units::{degrees, inches, pounds_force};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let line = BoltPattern::rows_and_columns(4, 1, inches(3.0), inches(3.0))?;
    /// let load = PlaneLoad::eccentric(&line, pounds_force(30e3), inches(3.0), degrees(0.0));
    /// let derivation = line.instantaneous_centre(&[load], DeformationLaw::Aisc)?.derivation();
    /// derivation.check()?;
    /// assert_eq!(derivation.steps().last().unwrap().symbol(), "C");
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let source = methods::CRAWFORD_AND_KULAK_AISC_MANUAL_PART_7;
        let mut derivation = Derivation::new("Bolt group by its instantaneous centre")
            .step(Step::given("force to the right", "Px", self.load.force_x))
            .step(Step::given("force up", "Py", self.load.force_y))
            .step(Step::given(
                "moment about the centroid",
                "M",
                self.load.moment,
            ));
        if let Some(centre) = self.centre {
            let from = self.pattern.centroid();
            derivation = derivation
                .step(Step::given(
                    "centre of rotation, right",
                    "x0",
                    centre.x - from.x,
                ))
                .step(Step::given(
                    "centre of rotation, up",
                    "y0",
                    centre.y - from.y,
                ));
        }
        let far = self.pattern.governing(self.governing, &self.forces);
        let (Ok((bolt, far)), Some(&most)) = (far, self.deformations.get(self.governing)) else {
            return derivation;
        };
        derivation = derivation
            .step(Step::given(
                "strength needed, found by search",
                "Rult",
                self.strength_needed,
            ))
            .step(Step::given(
                "governing bolt",
                "n",
                self.governing.saturating_add(1),
            ))
            .step(
                Step::new(
                    "its force",
                    "R",
                    "f * a * Rult * (1 - exp(-10 * D / in))^0.55",
                    far.resultant,
                )
                .with("f", self.law.factor())
                .with("a", bolt.relative_area)
                .with("Rult", self.strength_needed)
                .with("D", most)
                .with("in", inches(1.0))
                .source(source),
            );
        derivation = self.balance(derivation);
        let Some(coefficient) = self.coefficient else {
            return derivation;
        };
        derivation.step(
            Step::new("coefficient", "C", "sqrt(Px^2 + Py^2) / Rult", coefficient)
                .with("Px", self.load.force_x)
                .with("Py", self.load.force_y)
                .with("Rult", self.strength_needed)
                .source(source),
        )
    }

    /// The sums of the forces and moments, which are the loads again.
    fn balance(&self, mut derivation: Derivation) -> Derivation {
        let component = |letter: char, of: fn(&BoltForce) -> f64| -> Vec<Addend> {
            let forces = self.forces.iter().enumerate();
            forces
                .map(|(n, found)| {
                    let name = format!("R{letter}{}", n + 1);
                    Addend {
                        formula: name.clone(),
                        symbols: [(name, force(of(found)))].into(),
                        value: of(found),
                    }
                })
                .collect()
        };
        let right = component('x', |found| found.x.value);
        derivation = sum(
            derivation,
            "all forces to the right: Px",
            "Rx",
            force,
            right,
        );
        let up = component('y', |found| found.y.value);
        derivation = sum(derivation, "all forces up: Py", "Ry", force, up);
        let moments = self.forces.iter().zip(self.pattern.offsets()).enumerate();
        let moments = moments.map(|(n, (found, (x, y, _)))| {
            let n = n + 1;
            Addend {
                formula: format!("(x{n} * Ry{n} - y{n} * Rx{n})"),
                symbols: [
                    (format!("x{n}"), length(x)),
                    (format!("y{n}"), length(y)),
                    (format!("Rx{n}"), found.x.into()),
                    (format!("Ry{n}"), found.y.into()),
                ]
                .into(),
                value: x * found.y.value - y * found.x.value,
            }
        });
        sum(
            derivation,
            "all moments: M",
            "MR",
            torque,
            moments.collect(),
        )
    }
}

impl GroupTension {
    /// The working: the sum of squares from the neutral axis and the greatest tension.
    ///
    /// ```
    /// use shankline::strength::group::{BoltPattern, NeutralAxis};
    /// use shankline::units::{millimetres, newton_metres};
    /// # fn main() -> Result<(), shankline::Error> {
    /// let pattern = BoltPattern::rows_and_columns(2, 2, millimetres(100.0), millimetres(80.0))?;
    /// let group = pattern.tension(newton_metres(1000.0), NeutralAxis::Centroid, &[])?;
    /// group.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        let bolts = self.pattern.bolts();
        let squares = bolts.iter().enumerate().map(|(n, bolt)| {
            let (n, arm) = (n + 1, bolt.y - self.axis_y);
            Addend {
                formula: format!("a{n} * c{n}^2"),
                symbols: [
                    (format!("a{n}"), bolt.relative_area.into()),
                    (format!("c{n}"), arm.into()),
                ]
                .into(),
                value: bolt.relative_area * (arm * arm).value,
            }
        });
        let derivation = Derivation::new("Bolt tension of a moment out of the plane")
            .step(Step::given("moment out of the plane", "M", self.moment))
            .step(Step::given("height of the neutral axis", "y0", self.axis_y));
        let derivation = sum(
            derivation,
            "squares from the axis",
            "I",
            area,
            squares.collect(),
        );
        let Ok((bolt, tension)) = self.pattern.governing(self.governing, &self.tensions) else {
            return derivation;
        };
        derivation.step(
            Step::new("greatest tension", "T", "M * a * c / I", tension)
                .with("M", self.moment)
                .with("a", bolt.relative_area)
                .with("c", bolt.y - self.axis_y)
                .with("I", self.second_moment)
                .source(self.axis.method()),
        )
    }
}
