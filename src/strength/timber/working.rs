//! The working of a timber joint.

use alloc::{format, string::String, vec::Vec};

use super::{MemberMaterial, TimberMember, TimberMethod, TimberResistance};
use super::{en, nds};
use crate::derivation::{Derivation, Step};
use crate::error::Amount;
use crate::tables::methods;
use crate::units::{
    Angle, Force, Stiffness, Stress, from_base, inches, ksi, megapascals, millimetres, newtons,
};

impl TimberResistance {
    /// The working.
    ///
    /// ```
    /// use shankline::prelude::*;
    /// use shankline::strength::timber::{TimberConnection, TimberMember, TimberMethod};
    /// use shankline::tables::timber::Timber;
    /// use shankline::units::degrees;
    /// # fn main() -> Result<(), shankline::Error> {
    /// let fir = Timber::find("Hem-Fir")?;
    /// let joist = TimberConnection {
    ///     diameter: inches(0.5),
    ///     main: TimberMember::wood(inches(3.5), fir, degrees(0.0)),
    ///     side: TimberMember::wood(inches(1.5), fir, degrees(90.0)),
    ///     far_side: None,
    ///     gap: inches(0.0),
    /// };
    /// let method = TimberMethod::Nds { bending_yield: ksi(45.0), adjustment: 1.15 };
    /// let bolt = AstmGrade::A307A.strength(inches(0.5))?;
    /// joist.resistance(&bolt, method)?.derivation().check()?;
    /// # Ok(())
    /// # }
    /// ```
    pub fn derivation(&self) -> Derivation {
        match self.method {
            TimberMethod::Nds { adjustment, .. } => self.nds_working(adjustment),
            TimberMethod::En1995 {
                axial,
                kmod,
                gamma_m,
            } => self.en_working(axial, kmod, gamma_m),
        }
    }

    fn nds_working(&self, adjustment: f64) -> Derivation {
        let joint = &self.connection;
        let (main, side) = (&joint.main, &self.side);
        let mut derivation = Derivation::new("Bolt in timber")
            .and(self.nds_bearing(main, self.main_bearing, "m"))
            .and(self.nds_bearing(side, self.side_bearing, "s"));
        let (fem, fes) = (self.main_bearing.value, self.side_bearing.value);
        let terms = nds::Terms::new(
            joint,
            side,
            [self.main_bearing, self.side_bearing],
            self.bolt_strength,
        );
        let (re, rt) = (fem / fes, (main.thickness / side.thickness).value);
        let d = joint.diameter.value;
        let (qm, qs): (Stiffness, Stiffness) = (from_base(fem * d), from_base(fes * d));
        let given: Vec<(&'static str, Amount)> = Vec::from([
            ("D", joint.diameter.into()),
            ("lm", main.thickness.into()),
            ("ls", side.thickness.into()),
            ("Fem", self.main_bearing.into()),
            ("Fes", self.side_bearing.into()),
            ("Fyb", self.bolt_strength.into()),
            ("Re", re.into()),
            ("Rt", rt.into()),
            ("k1", terms.k1.into()),
            ("k2", terms.k2.into()),
            ("k3", terms.k3.into()),
            ("g", joint.gap.into()),
            ("qm", qm.into()),
            ("qs", qs.into()),
            ("M", self.yield_moment.into()),
        ]);
        let angle: Angle = from_base(nds::greatest_angle(joint));
        let grain = 1.0 + angle.value / core::f64::consts::TAU;
        derivation = derivation.and(if joint.gap.value > 0.0 {
            self.loads_of_length(qm, qs)
        } else {
            coefficients(re, rt, &terms, &given)
        });
        derivation = derivation.step(
            Step::new("grain factor", "Kt", "1 + a / (2 * pi)", grain)
                .with("a", angle)
                .source(methods::NDS_2018_TABLE_12_3_1B),
        );
        for mode in self.modes() {
            let Some(equation) = nds::EQUATIONS.iter().find(|e| e.name == mode.name) else {
                continue;
            };
            let planes = if joint.far_side.is_some() {
                equation.double.unwrap_or(1.0)
            } else {
                1.0
            };
            let mut source = methods::NDS_2018_TABLES_12_3_1A_AND_12_3_1B;
            let yields = match equation.general {
                Some(general) if joint.gap.value > 0.0 => {
                    source = methods::AWC_TECHNICAL_REPORT_12_GENERAL_DOWEL_EQUATIONS;
                    let [a, b, c] = general.formulas;
                    format!("2 * ({c}) / ({b} + sqrt(({b}) ^ 2 + 4 * ({a}) * ({c})))")
                }
                _ => equation.formula.into(),
            };
            let formula = format!("n * {yields} / ({} * Kt)", equation.reduction);
            let step = Step::new(
                format!("mode {}", mode.name),
                format!("Z{}", mode.name),
                formula,
                mode.value,
            )
            .with("n", planes)
            .with("Kt", grain)
            .source(source);
            derivation = derivation.step(filled(step, &given));
        }
        derivation = derivation.step(self.least_step("reference design value", "Z", "Z"));
        if let Some(allowable) = self.resistance.allowable {
            let (formula, reduced) = if self.geometry < 1.0 || self.group < 1.0 {
                ("C * Cdelta * Cg * Z", true)
            } else {
                ("C * Z", false)
            };
            let mut step = Step::new("adjusted design value", "Z'", formula, allowable)
                .with("C", adjustment)
                .with("Z", self.load);
            if reduced {
                step = step
                    .with("Cdelta", self.geometry)
                    .with("Cg", self.group)
                    .source(methods::NDS_2018_11_3_6_12_5_1);
            }
            derivation = derivation.step(step);
        }
        derivation
    }

    /// What the general dowel equations are written in: bearing loads a length, and the moment.
    fn loads_of_length(&self, qm: Stiffness, qs: Stiffness) -> Derivation {
        let diameter = self.connection.diameter;
        let bears = |of: &str, bearing: Stress, q: Stiffness| {
            Step::new("bearing load a length", format!("q{of}"), "Fe * D", q)
                .with("Fe", bearing)
                .with("D", diameter)
        };
        Derivation::new("")
            .step(bears("m", self.main_bearing, qm))
            .step(bears("s", self.side_bearing, qs))
            .step(
                Step::new(
                    "moment of the bolt",
                    "M",
                    "Fyb * D ^ 3 / 6",
                    self.yield_moment,
                )
                .with("Fyb", self.bolt_strength)
                .with("D", diameter),
            )
            .step(Step::given(
                "gap between the members",
                "g",
                self.connection.gap,
            ))
    }

    fn nds_bearing(&self, member: &TimberMember, bearing: Stress, of: &str) -> Derivation {
        let empty = Derivation::new("");
        let source = methods::NDS_2018_TABLE_12_3_3_EQ_12_3_11;
        match member.material {
            MemberMaterial::Wood(wood) => {
                let diameter = self.connection.diameter;
                let (Some(gravity), Ok((along, across))) = (
                    wood.specific_gravity,
                    nds::along_and_across(&wood, diameter),
                ) else {
                    return empty;
                };
                let (along, across): (Stress, Stress) = (from_base(along), from_base(across));
                empty
                    .step(
                        Step::new(
                            "bearing along the grain",
                            format!("Fp{of}"),
                            "11200 * G * psi",
                            along,
                        )
                        .with("G", gravity)
                        .with("psi", ksi(1e-3))
                        .source(source),
                    )
                    .step(
                        Step::new(
                            "bearing across the grain",
                            format!("Fq{of}"),
                            "6100 * G ^ 1.45 / sqrt(D / in) * psi",
                            across,
                        )
                        .with("G", gravity)
                        .with("D", diameter)
                        .with("in", inches(1.0))
                        .with("psi", ksi(1e-3))
                        .source(source),
                    )
                    .step(
                        Step::new(
                            "bearing strength",
                            format!("Fe{of}"),
                            "Fp * Fq / (Fp * sin(a) ^ 2 + Fq * cos(a) ^ 2)",
                            bearing,
                        )
                        .with("Fp", along)
                        .with("Fq", across)
                        .with("a", wood.grain_angle)
                        .source(source),
                    )
            }
            MemberMaterial::Steel {
                tensile_strength, ..
            } => empty.step(
                Step::new(
                    "bearing strength of the plate",
                    format!("Fe{of}"),
                    "c * Fu",
                    bearing,
                )
                .with("c", (bearing / tensile_strength).value)
                .with("Fu", tensile_strength)
                .source(methods::NDS_2018_APPENDIX_I),
            ),
        }
    }

    fn en_working(&self, axial: Force, kmod: f64, gamma_m: f64) -> Derivation {
        let joint = &self.connection;
        let set = en::Set::of(joint, &self.side);
        let mut derivation = Derivation::new("Bolt in timber");
        let (main, side) = (
            (&joint.main, self.main_bearing),
            (&self.side, self.side_bearing),
        );
        let (first, second) = match self.side.material {
            MemberMaterial::Wood(_) => (side, main),
            MemberMaterial::Steel { .. } => (main, side),
        };
        for ((member, bearing), of) in [(first, "1"), (second, "2")] {
            derivation = derivation.and(self.embedment_working(member, bearing, of));
        }
        derivation = derivation.step(
            Step::new(
                "yield moment of the bolt",
                "My",
                "0.3 * fu / MPa * (d / mm) ^ 2.6 * N * mm",
                self.yield_moment,
            )
            .with("fu", self.bolt_strength)
            .with("d", joint.diameter)
            .with("mm", millimetres(1.0))
            .with("MPa", megapascals(1.0))
            .with("N", newtons(1.0))
            .source(methods::EN_1995_1_1_2004_EQ_8_30),
        );
        let ratio = second.1.value / first.1.value;
        let given: Vec<(&'static str, Amount)> = Vec::from([
            ("d", joint.diameter.into()),
            ("t1", first.0.thickness.into()),
            ("t2", second.0.thickness.into()),
            ("fh1", first.1.into()),
            ("fh2", second.1.into()),
            ("My", self.yield_moment.into()),
            ("b", ratio.into()),
        ]);
        if !set.plate {
            derivation = derivation.step(
                Step::new("ratio of the embedment strengths", "b", "fh2 / fh1", ratio)
                    .with("fh1", first.1)
                    .with("fh2", second.1),
            );
        }
        for mode in self.modes() {
            let mut equations = set.first.iter().chain(set.thick);
            let Some(equation) = equations.find(|equation| equation.name == mode.name) else {
                continue;
            };
            let symbol = format!("F{}", mode.name);
            let what = format!("mode {}", mode.name);
            let source = methods::EN_1995_1_1_2004_8_2;
            if equation.rope {
                let step = Step::new(
                    format!("{what}, without the pull of the bolt"),
                    format!("{symbol}0"),
                    equation.formula,
                    mode.johansen,
                );
                derivation = derivation.step(filled(step.source(source), &given)).step(
                    Step::new(what, symbol, "F0 + min(Fax / 4, F0 / 4)", mode.value)
                        .with("F0", mode.johansen)
                        .with("Fax", axial)
                        .source(methods::EN_1995_1_1_2004_8_2_2_2),
                );
            } else {
                let step = Step::new(what, symbol, equation.formula, mode.value);
                derivation = derivation.step(filled(step.source(source), &given));
            }
        }
        derivation = derivation.step(self.en_load(&set));
        let design = self.resistance.design.unwrap_or_default();
        let share = self.geometry * self.group;
        let formula = if share < 1.0 {
            "kn * kmod * F / gM"
        } else {
            "kmod * F / gM"
        };
        let mut step = Step::new("design load", "FRd", formula, design)
            .with("kmod", kmod)
            .with("F", self.load)
            .with("gM", gamma_m)
            .source(methods::EN_1995_1_1_2004_EQ_2_17);
        if share < 1.0 {
            derivation = derivation.step(Step::given(
                "effective number of bolts in the row over their number",
                "kn",
                share,
            ));
            step = step.with("kn", share);
        }
        derivation.step(step)
    }

    fn embedment_working(&self, member: &TimberMember, bearing: Stress, of: &str) -> Derivation {
        let empty = Derivation::new("");
        let MemberMaterial::Wood(wood) = member.material else {
            return empty;
        };
        let diameter = self.connection.diameter;
        let (Some(density), Ok((along, k90))) = (
            wood.characteristic_density,
            en::along_and_k90(&wood, diameter),
        ) else {
            return empty;
        };
        let along: Stress = from_base(along);
        let source = methods::EN_1995_1_1_2004_EQS_8_31_TO_8_33;
        let base = k90 - 0.015e3 * diameter.value;
        empty
            .step(
                Step::new(
                    "embedment along the grain, rho in kg/m3",
                    format!("fh0{of}"),
                    "0.082 * (1 - 0.01 * d / mm) * rho * MPa",
                    along,
                )
                .with("d", diameter)
                .with("mm", millimetres(1.0))
                .with("rho", density.value)
                .with("MPa", megapascals(1.0))
                .source(source),
            )
            .step(
                Step::new("grain coefficient", "k90", "c + 0.015 * d / mm", k90)
                    .with("c", base)
                    .with("d", diameter)
                    .with("mm", millimetres(1.0))
                    .source(source),
            )
            .step(
                Step::new(
                    "embedment strength",
                    format!("fh{of}"),
                    "f0 / (k90 * sin(a) ^ 2 + cos(a) ^ 2)",
                    bearing,
                )
                .with("f0", along)
                .with("k90", k90)
                .with("a", wood.grain_angle)
                .source(source),
            )
    }

    /// The load of the bolt: least mode times the planes, or between those of thin and thick plates.
    fn en_load(&self, set: &en::Set) -> Step {
        let planes = f64::from(self.connection.planes());
        if set.weight <= 0.0 || set.weight >= 1.0 {
            let mut step = self.least_step("characteristic load of the bolt", "F", "F");
            step = step.with("n", planes);
            return step;
        }
        let names = |equations: &[en::Equation]| -> String {
            let names: Vec<String> = equations.iter().map(|e| format!("F{}", e.name)).collect();
            format!("min({})", names.join(", "))
        };
        let (thin, thick) = (names(set.first), names(set.thick));
        let plate = match self.side.material {
            MemberMaterial::Steel { .. } => self.side.thickness,
            MemberMaterial::Wood(_) => self.connection.main.thickness,
        };
        let formula = format!("n * ({thin} + (2 * t / d - 1) * ({thick} - {thin}))");
        let step = Step::new("characteristic load of the bolt", "F", formula, self.load)
            .with("n", planes)
            .with("t", plate)
            .with("d", self.connection.diameter);
        self.modes().fold(step, |step, mode| {
            step.with(format!("F{}", mode.name), mode.value)
        })
    }

    /// The least of the modes; for EN (`of` "F") times the planes n.
    fn least_step(&self, what: &'static str, symbol: &'static str, of: &str) -> Step {
        let names: Vec<String> = self
            .modes()
            .map(|mode| format!("{of}{}", mode.name))
            .collect();
        let least = format!("min({})", names.join(", "));
        let formula = if of == "F" {
            format!("n * {least}")
        } else {
            least
        };
        let step = Step::new(what, symbol, formula, self.load);
        self.modes().fold(step, |step, mode| {
            step.with(format!("{of}{}", mode.name), mode.value)
        })
    }
}

/// Ratios and coefficients of the closed forms.
fn coefficients(
    re: f64,
    rt: f64,
    terms: &nds::Terms,
    given: &[(&'static str, Amount)],
) -> Derivation {
    let steps = [
        ("ratio of the bearing strengths", "Re", "Fem / Fes", re),
        ("ratio of the bearing lengths", "Rt", "lm / ls", rt),
        (
            "coefficient",
            "k1",
            "(sqrt(Re + 2 * Re ^ 2 * (1 + Rt + Rt ^ 2) + Rt ^ 2 * Re ^ 3) - Re * (1 + Rt)) / (1 + Re)",
            terms.k1,
        ),
        (
            "coefficient",
            "k2",
            "sqrt(2 * (1 + Re) + 2 * Fyb * (1 + 2 * Re) * D ^ 2 / (3 * Fem * lm ^ 2)) - 1",
            terms.k2,
        ),
        (
            "coefficient",
            "k3",
            "sqrt(2 * (1 + Re) / Re + 2 * Fyb * (2 + Re) * D ^ 2 / (3 * Fem * ls ^ 2)) - 1",
            terms.k3,
        ),
    ];
    steps.into_iter().fold(
        Derivation::new(""),
        |all, (what, symbol, formula, value)| {
            let step =
                Step::new(what, symbol, formula, value).source(methods::NDS_2018_TABLE_12_3_1A);
            all.step(filled(step, given))
        },
    )
}

/// The step with the values its formula names.
fn filled(step: Step, given: &[(&'static str, Amount)]) -> Step {
    let used: Vec<(&'static str, Amount)> = given
        .iter()
        .filter(|(symbol, _)| {
            step.formula()
                .split(|c: char| !c.is_ascii_alphanumeric())
                .any(|word| word == *symbol)
        })
        .copied()
        .collect();
    used.into_iter()
        .fold(step, |step, (symbol, value)| step.with(symbol, value))
}
