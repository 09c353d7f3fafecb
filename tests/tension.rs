//! Stiffness, load share, fatigue and prying against printed values, and what must hold for any
//! joint.

mod support;

use proptest::prelude::*;
use shankline::material::BoltGrade;
use shankline::prelude::*;
use shankline::tension::*;
use shankline::units::{
    Stiffness, kip, kip_per_square_inch, msi, newtons_per_millimetre, pound_force,
    pounds_force_per_inch,
};
use shankline::uom::si::{length::inch, pressure::megapascal};
use support::{Row, csv_rows, number};

/// Inputs of one row: `name=value` pairs, US customary where the name does not say.
struct Inputs<'a>(&'a str);

impl<'a> Inputs<'a> {
    fn text(&self, name: &str) -> &'a str {
        self.0
            .split(';')
            .find_map(|pair| pair.strip_prefix(name)?.strip_prefix('='))
            .unwrap_or_else(|| panic!("no {name} in {}", self.0))
    }
    fn number(&self, name: &str) -> f64 {
        self.text(name).parse().unwrap()
    }
    fn inches(&self, name: &str) -> Length {
        inches(self.number(name))
    }
    fn kips(&self, name: &str) -> Force {
        pounds_force(1000.0 * self.number(name))
    }
    fn ksi(&self, name: &str) -> Stress {
        ksi(self.number(name))
    }
    fn mlbf_in(&self, name: &str) -> Stiffness {
        pounds_force_per_inch(1e6 * self.number(name))
    }
    fn layer(&self, thickness: &str) -> Layer {
        Layer::new(self.inches(thickness), msi(self.number("E_msi"))).unwrap()
    }
    /// A joint with the printed C.
    fn joint(&self) -> JointDiagram {
        JointDiagram::new(share_of(self.number("C")), self.kips("Fi_kip")).unwrap()
    }
    fn proof(&self) -> Force {
        self.ksi("Sp") * square_inches(self.number("At"))
    }
    fn check(&self) -> TensionCheck {
        let check = self
            .joint()
            .check(self.kips("P_kip"), self.proof())
            .unwrap();
        check.derivation().check().unwrap();
        check
    }
    fn repeated(&self) -> FatigueStress {
        let area = square_inches(self.number("At"));
        FatigueStress::of_joint(&self.joint(), area, newtons(0.0), self.kips("P_kip")).unwrap()
    }
    fn fatigue(&self) -> MachineDesignFatigue {
        let se = EnduranceStrength::stated(self.ksi("Se")).unwrap();
        let strengths = FatigueStrengths::new(se, self.ksi("Sut"), self.ksi("Sp")).unwrap();
        let (si, sa) = (self.ksi("si"), self.ksi("sa"));
        let criterion = match self.text("criterion") {
            "goodman" => FatigueCriterion::Goodman,
            "gerber" => FatigueCriterion::Gerber,
            "proof_line" => FatigueCriterion::ProofLine,
            other => panic!("{other}"),
        };
        let stress = FatigueStress::new(si, sa, si + sa).unwrap();
        let fatigue = MachineDesignFatigue::new(strengths, stress, criterion).unwrap();
        fatigue.derivation().check().unwrap();
        fatigue
    }
    fn flange(&self) -> (AiscFlange, AiscPrying) {
        let flange = AiscFlange::new(
            AiscBasis::Lrfd,
            self.ksi("Fu"),
            self.inches("db"),
            self.inches("hole"),
            self.inches("p"),
            self.inches("b"),
            self.inches("a"),
        )
        .unwrap();
        let check = flange
            .check(self.kips("T_kip"), self.kips("B_kip"), self.inches("t"))
            .unwrap();
        check.derivation().check().unwrap();
        (flange, check)
    }
}

/// Springs whose share is this.
fn share_of(c: f64) -> LoadShare {
    let share = LoadShare::new(
        newtons_per_millimetre(1e5 * c),
        newtons_per_millimetre(1e5 * (1.0 - c)),
    );
    share.unwrap()
}

fn grade(name: &str) -> BoltGrade {
    match name {
        "SAE J429 grade 5" => SaeGrade::Grade5.into(),
        "SAE J429 grade 7" => SaeGrade::Grade7.into(),
        "SAE J429 grade 8" => SaeGrade::Grade8.into(),
        "ISO 898-1 class 8.8" => PropertyClass::Class8_8.into(),
        "ISO 898-1 class 9.8" => PropertyClass::Class9_8.into(),
        "ISO 898-1 class 10.9" => PropertyClass::Class10_9.into(),
        "ISO 898-1 class 12.9" => PropertyClass::Class12_9.into(),
        other => panic!("{other}"),
    }
}

fn stiffness(row: &Row) -> Stiffness {
    let given = Inputs(&row["inputs"]);
    match row["check"].as_str() {
        "bolt_shigley" => {
            let thread: Thread = given.text("thread").parse().unwrap();
            let sections = GripSections::new(given.inches("ld"), given.inches("lt")).unwrap();
            let bolt = BoltStiffness::shigley(&thread, sections, msi(given.number("E_msi")));
            bolt.unwrap().stiffness
        }
        "members_identical" => {
            let cones = Cones::shigley(given.inches("d")).unwrap();
            cones.identical(given.layer("l")).unwrap().stiffness
        }
        "members_wileman" => {
            assert_eq!(given.text("material"), "gray_cast_iron");
            let material = WilemanMaterial::GrayCastIron;
            wileman(material, given.inches("d"), given.layer("l"))
                .unwrap()
                .stiffness
        }
        "frustum" => Cones::shigley(given.inches("d"))
            .unwrap()
            .frustum(given.layer("t"), given.inches("D"))
            .unwrap(),
        "in_series" => {
            let springs: Vec<Stiffness> = given
                .text("k")
                .split(' ')
                .map(|k| pounds_force_per_inch(1e6 * k.parse::<f64>().unwrap()))
                .collect();
            in_series(&springs).unwrap()
        }
        other => panic!("no check {other}"),
    }
}

fn calculated(row: &Row) -> f64 {
    let given = Inputs(&row["inputs"]);
    let in_kip = |force: Force| force.get::<kip>();
    let in_ksi = |stress: Stress| stress.get::<kip_per_square_inch>();
    match row["check"].as_str() {
        "endurance" => {
            let metric = row["unit"] == "MPa";
            let diameter = if metric {
                millimetres(given.number("d_mm"))
            } else {
                given.inches("d_in")
            };
            let se = EnduranceStrength::of_table(grade(given.text("grade")), diameter).unwrap();
            if metric {
                se.stress().get::<megapascal>()
            } else {
                in_ksi(se.stress())
            }
        }
        "preload_stress" => in_ksi(given.kips("Fi_kip") / square_inches(given.number("At"))),
        "share" => {
            let share = LoadShare::new(given.mlbf_in("kb"), given.mlbf_in("km")).unwrap();
            share.derivation().check().unwrap();
            share.share.value
        }
        "service_stress" => {
            let loaded = given.joint().under(given.kips("P_kip")).unwrap();
            in_ksi(loaded.bolt / square_inches(given.number("At")))
        }
        "preload" => in_kip(given.number("fraction") * given.proof()),
        "bolts_needed" => {
            let preload = given.number("fraction") * given.proof();
            let (c, nl) = (share_of(given.number("C")), given.number("nL"));
            let needed =
                bolts_needed(c, nl, given.kips("Ptotal_kip"), given.proof(), preload).unwrap();
            assert_eq!(needed.bolts, 6);
            needed.quotient
        }
        "load_factor" => given.check().load_factor,
        "yield_factor" => given.check().yield_factor,
        "separation_factor" => given.check().separation_factor,
        "fatigue_amplitude" => in_ksi(given.repeated().amplitude),
        "fatigue_mean" => in_ksi(given.repeated().mean),
        "strength_amplitude" => in_ksi(given.fatigue().strength_amplitude),
        "strength_mean" => in_ksi(given.fatigue().strength_mean),
        "fatigue_factor" => given.fatigue().factor,
        "load_for_clamp" => {
            // Fm = Fi - (1 - C) P for P, then the diagram under it.
            let share = LoadShare::new(given.mlbf_in("kb"), given.mlbf_in("km")).unwrap();
            let preload = pounds_force(given.number("Fi_lbf"));
            let clamp = pounds_force(given.number("clamp_lbf"));
            let load = (preload - clamp) / (1.0 - share.share.value);
            let joint = JointDiagram::new(share, preload).unwrap();
            assert!((joint.under(load).unwrap().clamp - clamp).abs() < newtons(1e-6));
            load.get::<pound_force>()
        }
        "bolt_load" => {
            let share = LoadShare::new(given.mlbf_in("kb"), given.mlbf_in("km")).unwrap();
            let joint = JointDiagram::new(share, pounds_force(given.number("Fi_lbf"))).unwrap();
            let loaded = joint.under(pounds_force(given.number("P_lbf"))).unwrap();
            loaded.bolt.get::<pound_force>()
        }
        "aisc_lever_stem" => given.flange().0.lever_to_stem().get::<inch>(),
        "aisc_lever_edge" => given.flange().0.lever_to_edge().get::<inch>(),
        "aisc_rho" => given.flange().0.rho(),
        "aisc_delta" => given.flange().0.delta(),
        "aisc_tc" => given.flange().1.full_thickness.get::<inch>(),
        "aisc_alpha" => given.flange().1.alpha_at_strength,
        "aisc_available" => in_kip(given.flange().1.available),
        "vdi_amplitude" => {
            let made = VdiThread::RolledBeforeHeatTreatment;
            let strength = VdiFatigueStrength::new(millimetres(given.number("d_mm")), made);
            strength.unwrap().amplitude.get::<megapascal>()
        }
        "en_fatigue" => {
            let detail = match given.text("detail") {
                "tension" => EnFatigueDetail::Tension,
                "shear" => EnFatigueDetail::Shear,
                other => panic!("{other}"),
            };
            let d = millimetres(given.number("d_mm"));
            let (range, cycles) = (megapascals(10.0), given.number("N"));
            EnFatigue::of_stress(detail, d, range, cycles, GammaMf::DamageTolerantLow)
                .unwrap()
                .resistance
                .get::<megapascal>()
        }
        "aisc_fatigue" => {
            let fatigue = AiscFatigue::of_stress(ksi(1.0), given.number("N")).unwrap();
            if row["unit"] == "MPa" {
                fatigue.resistance.get::<megapascal>()
            } else {
                in_ksi(fatigue.resistance)
            }
        }
        _ => (stiffness(row) / pounds_force_per_inch(1e6)).value,
    }
}

#[test]
fn printed_values() {
    let rows = csv_rows("tests/data/tension_checks.csv");
    let mut memory = 0;
    for row in &rows {
        let (expected, tolerance) = (
            number(row, "expected").unwrap(),
            number(row, "tolerance").unwrap(),
        );
        let value = calculated(row);
        assert!(
            (value - expected).abs() <= tolerance,
            "{}: {value} and not {expected} +/- {tolerance}",
            row["id"]
        );
        memory += usize::from(row["basis"] == "memory");
    }
    // Recalled: five intermediate values of an example, the eight amplitudes of VDI 2230, and four points of EN 1993-1-9.
    assert_eq!((rows.len(), memory), (70, 17));
}

/// Shigley, 9th ed., Example 8-4, every step from the one before, nothing rounded on the way.
#[test]
fn example_8_4_from_bolt_to_factors() {
    let thread: Thread = "5/8-11 UNC".parse().unwrap();
    let sections = GripSections::textbook(&thread, inches(2.25), inches(1.5)).unwrap();
    let bolt = BoltStiffness::shigley(&thread, sections, msi(30.0)).unwrap();
    let cones = Cones::shigley(inches(0.625)).unwrap();
    let members = cones
        .identical(Layer::new(inches(1.5), msi(14.0)).unwrap())
        .unwrap();
    let share = LoadShare::new(bolt.stiffness, members.stiffness).unwrap();
    assert!((share.share.value - 0.368).abs() < 0.0005);
    let strength = SaeGrade::Grade5.strength(inches(0.625)).unwrap();
    let proof = strength.loads(&thread).unwrap().proof.unwrap();
    let preload = PreloadTarget::Reusable.fraction() * proof;
    let needed = bolts_needed(share, 2.0, pounds_force(36e3), proof, preload).unwrap();
    assert_eq!(needed.bolts, 6);
    let joint = JointDiagram::new(share, preload).unwrap();
    let check = joint.check(pounds_force(6e3), proof).unwrap();
    // Printed 2.18, 1.16 and 3.80 from a preload rounded to 14.4 kip; unrounded 14.41.
    assert!((check.load_factor - 2.18).abs() < 0.01);
    assert!((check.yield_factor - 1.16).abs() < 0.005);
    assert!((check.separation_factor - 3.80).abs() < 0.01);
    assert!((check.overload_factor - check.load_factor).abs() < 1e-12);
    for derivation in [bolt.derivation(), members.derivation(), check.derivation()] {
        derivation.check().unwrap();
    }
}

/// Shigley, 9th ed., Example 8-5, from the layers to the fatigue factors.
#[test]
fn example_8_5_from_layers_to_fatigue() {
    let thread: Thread = "5/8-11 UNC".parse().unwrap();
    let above = inches(0.0625 + 0.625);
    let grip = cap_screw_grip(above, inches(0.625), inches(0.625)).unwrap();
    let layers = [
        Layer::new(inches(0.0625), msi(30.0)).unwrap(),
        Layer::new(inches(0.625), msi(30.0)).unwrap(),
        Layer::new(grip - above, msi(16.0)).unwrap(),
    ];
    let frusta = Cones::shigley(inches(0.625)).unwrap().frusta(&layers);
    let frusta = frusta.unwrap();
    // The washer is of the plate's material: its frustum and the plate's upper one are the book's first.
    let first = in_series(&[frusta.pieces[0].stiffness, frusta.pieces[1].stiffness]).unwrap();
    let mlbf_in = |k: Stiffness| (k / pounds_force_per_inch(1e6)).value;
    assert!((mlbf_in(first) - 46.46).abs() < 0.005);
    // The print rounds the diameter 1.2983 in to 1.298, tan 30 to 0.577, and adds rounded frusta.
    assert!((mlbf_in(frusta.pieces[2].stiffness) - 197.43).abs() < 0.15);
    assert!((mlbf_in(frusta.stiffness) - 17.4).abs() < 0.01);
    let sections = GripSections::new(inches(0.0), grip).unwrap();
    let bolt = BoltStiffness::shigley(&thread, sections, msi(30.0)).unwrap();
    let share = LoadShare::new(bolt.stiffness, frusta.stiffness).unwrap();
    assert!((share.share.value - 0.280).abs() < 0.0005);

    let strength = SaeGrade::Grade5.strength(inches(0.625)).unwrap();
    let proof = strength.loads(&thread).unwrap().proof.unwrap();
    let joint = JointDiagram::new(share, 0.75 * proof).unwrap();
    let area = thread.tensile_stress_area();
    let load = pounds_force(5e3);
    let stress = FatigueStress::of_joint(&joint, area, newtons(0.0), load).unwrap();
    let strengths = FatigueStrengths::of_bolt(&strength).unwrap();
    let fatigue = |criterion| MachineDesignFatigue::new(strengths, stress, criterion).unwrap();
    // Printed 2.44 and 3.65 from rounded stresses.
    assert!((fatigue(FatigueCriterion::Goodman).factor - 2.44).abs() < 0.01);
    assert!((fatigue(FatigueCriterion::Gerber).factor - 3.65).abs() < 0.015);
    let elliptic = fatigue(FatigueCriterion::AsmeElliptic);
    elliptic.derivation().check().unwrap();
    // The book's Eq. 8-40, a form of its own for a load that falls to zero.
    let (se, sp, si) = (18.6_f64, 85.0_f64, 0.75 * 85.0);
    let sa = se / (sp * sp + se * se) * (sp * (sp * sp + se * se - si * si).sqrt() - si * se);
    assert!((elliptic.strength_amplitude.get::<kip_per_square_inch>() / sa - 1.0).abs() < 1e-9);
}

/// The VDI form is softer by head, nut and engaged thread: 39 % for Example 8-4 (own computation).
/// Beyond separation the bolt carries the whole load, and the yield factor is that of the whole.
#[test]
fn an_open_joint_yields_by_its_whole_load() {
    let share = share_of(0.2);
    let joint = JointDiagram::new(share, pounds_force(10e3)).unwrap();
    for (load, bolt) in [(5e3, 11e3), (12.5e3, 12.5e3), (18e3, 18e3)] {
        let check = joint.check(pounds_force(load), pounds_force(20e3)).unwrap();
        assert!((check.yield_factor - 20e3 / bolt).abs() < 1e-9, "{load}");
        assert!((check.yield_factor * check.utilisation().value - 1.0).abs() < 1e-12);
        check.derivation().check().unwrap();
    }
}

#[test]
fn the_two_bolt_stiffnesses_differ_as_stated() {
    let thread: Thread = "5/8-11 UNC".parse().unwrap();
    let sections = GripSections::new(inches(0.75), inches(0.75)).unwrap();
    let shigley = BoltStiffness::shigley(&thread, sections, msi(30.0)).unwrap();
    let nut = ThreadedEnd::Nut { modulus: msi(30.0) };
    let head = BoltHead::Hexagon;
    let vdi = BoltStiffness::vdi_2230(&thread, sections, head, msi(30.0), nut).unwrap();
    vdi.derivation().check().unwrap();
    let ratio = (vdi.stiffness / shigley.stiffness).value;
    assert!((ratio - 0.61).abs() < 0.01, "{ratio}");
}

/// The frusta and the exponential fit are one joint by two methods; the book finds 1.6 %.
#[test]
fn fit_and_frusta_agree_as_printed() {
    let members = Layer::new(inches(1.5), msi(14.0)).unwrap();
    let cones = Cones::shigley(inches(0.625)).unwrap();
    let frusta = cones.identical(members).unwrap().stiffness;
    let fit = wileman(WilemanMaterial::GrayCastIron, inches(0.625), members).unwrap();
    let difference = (frusta / fit.stiffness).value - 1.0;
    assert!((difference - 0.016).abs() < 0.0005, "{difference}");
}

fn layers() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((0.5..60.0, 40e3..220e3), 1..6)
}

fn made(layers: &[(f64, f64)]) -> Vec<Layer> {
    let layer = |&(t, e): &(f64, f64)| Layer::new(millimetres(t), megapascals(e)).unwrap();
    layers.iter().map(layer).collect()
}

fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        any::<f64>(),
        prop::sample::select(vec![
            0.0,
            -1.0,
            1e-300,
            1e300,
            f64::MAX,
            f64::MIN_POSITIVE,
            f64::NAN,
            f64::INFINITY,
            1e-9,
            1e-3,
            1.0,
            1e3,
            1e9
        ]),
        1e-3..1e3,
    ]
}

proptest! {
    /// Frusta of one material are one integral, however it is cut.
    #[test]
    fn splitting_a_layer_changes_nothing(layers in layers(), which in 0..6_usize, at in 0.05..0.95) {
        let cones = Cones::shigley(millimetres(16.0)).unwrap();
        let whole = cones.stiffness(&made(&layers)).unwrap();
        let which = which % layers.len();
        let mut split = layers.clone();
        let (t, e) = split[which];
        split[which].0 = t * at;
        split.insert(which + 1, (t * (1.0 - at), e));
        let cut = cones.stiffness(&made(&split)).unwrap();
        prop_assert!((whole / cut - Ratio::new::<shankline::uom::si::ratio::ratio>(1.0)).value.abs() < 1e-9);
    }

    /// One material: the layers are the closed form. Turned round: the same.
    #[test]
    fn layers_of_one_material_are_the_closed_form(layers in layers(), e in 40e3..220e3) {
        let cones = Cones::shigley(millimetres(16.0)).unwrap();
        let one: Vec<(f64, f64)> = layers.iter().map(|&(t, _)| (t, e)).collect();
        let grip: f64 = one.iter().map(|l| l.0).sum();
        let closed = cones.identical(made(&[(grip, e)])[0]).unwrap().stiffness;
        let frusta = cones.frusta(&made(&one)).unwrap();
        prop_assert!(((closed / frusta.stiffness).value - 1.0).abs() < 1e-9);
        prop_assert!(frusta.derivation().check().is_ok());
        let mut turned = layers.clone();
        turned.reverse();
        let (a, b) = (cones.stiffness(&made(&layers)).unwrap(), cones.stiffness(&made(&turned)).unwrap());
        prop_assert!(((a / b).value - 1.0).abs() < 1e-9);
    }

    /// Two materials of half the grip each: each half has twice the stiffness of the whole grip of its
    /// material (Shigley, problems 8-19 and 8-20), and so have the frusta.
    #[test]
    fn halves_of_two_materials_are_twice_as_stiff_each(t in 5.0..80.0, e in 40e3..220e3, f in 40e3..220e3) {
        let cones = Cones::shigley(millimetres(16.0)).unwrap();
        let frusta = cones.stiffness(&made(&[(t, e), (t, f)])).unwrap();
        let whole = |e| 2.0 * cones.identical(made(&[(2.0 * t, e)])[0]).unwrap().stiffness;
        let series = in_series(&[whole(e), whole(f)]).unwrap();
        prop_assert!(((series / frusta).value - 1.0).abs() < 1e-9);
    }

    #[test]
    fn stiffness_falls_with_grip_and_rises_with_modulus(t in 5.0..80.0, more in 1.01..3.0, e in 40e3..200e3) {
        let cones = Cones::shigley(millimetres(16.0)).unwrap();
        let of = |t, e| cones.stiffness(&made(&[(t, e)])).unwrap();
        prop_assert!(of(t * more, e) < of(t, e));
        prop_assert!(of(t, e * more) > of(t, e));
        let thread: Thread = "M16".parse().unwrap();
        let bolt = |shank, free| {
            let sections = GripSections::new(millimetres(shank), millimetres(free)).unwrap();
            BoltStiffness::shigley(&thread, sections, megapascals(207e3)).unwrap().stiffness
        };
        prop_assert!(bolt(t * more, 10.0) < bolt(t, 10.0));
        prop_assert!(bolt(0.0, t) < bolt(t, 0.0)); // thread is softer than shank
        let vdi = |outside: f64| VdiPlates::new(
            ClampEnd::ThroughBolt, millimetres(17.5), millimetres(24.0), millimetres(outside),
        ).unwrap().stiffness(made(&[(t, e)])[0]);
        if let (Ok(narrow), Ok(wide)) = (vdi(26.0), vdi(26.0 * more)) {
            prop_assert!(wide.stiffness > narrow.stiffness);
            prop_assert!(wide.derivation().check().is_ok());
        }
    }

    #[test]
    fn the_diagram_is_in_balance(kb in 1e4..1e6, km in 1e4..1e7, n in 0.05..1.0, fi in 0.0..1e5, p in -2e5..2e5) {
        let share = LoadShare::new(newtons_per_millimetre(kb), newtons_per_millimetre(km)).unwrap();
        let share = share.introduced_at(n).unwrap();
        prop_assert!(share.share.value > 0.0 && share.share.value < 1.0);
        prop_assert!(share.derivation().check().is_ok());
        let joint = JointDiagram::new(share, newtons(fi)).unwrap();
        let loaded = joint.under(newtons(p)).unwrap();
        prop_assert!((loaded.bolt - loaded.clamp - newtons(p)).abs() < newtons(1e-6));
        prop_assert!(loaded.bolt.value >= 0.0 && loaded.clamp.value >= 0.0);
        // At separation nothing jumps.
        let at = joint.under(joint.separation_load).unwrap();
        prop_assert!((at.bolt - joint.separation_load).abs() < newtons(1e-6));
        prop_assert!(joint.under(newtons(p + 1.0)).unwrap().bolt >= loaded.bolt);
    }

    /// The load the overload factor leads to uses the bolt's proof load up, exactly.
    #[test]
    fn utilisation_is_one_at_capacity(c in 0.05..0.95, fraction in 0.0..0.95, p in 1.0..1e5) {
        let proof = newtons(1e5);
        let joint = JointDiagram::new(share_of(c), fraction * proof).unwrap();
        let check = joint.check(newtons(p), proof).unwrap();
        prop_assert!(check.derivation().check().is_ok());
        let at_capacity = joint.check(check.overload_factor * newtons(p), proof).unwrap();
        prop_assert!((at_capacity.utilisation().value - 1.0).abs() < 1e-9);
        // More preload, later separation.
        let tighter = JointDiagram::new(share_of(c), (fraction + 0.01) * proof).unwrap();
        prop_assert!(tighter.separation_load > joint.separation_load);
    }

    /// Goodman is the lowest line; the strength falls with preload; the point lies on the line.
    #[test]
    fn fatigue_lines(si in 0.0..80.0, sa in 0.1..30.0, s in 0.0..5.0, se in 10.0..60.0) {
        let se_typed = EnduranceStrength::stated(ksi(se)).unwrap();
        let strengths = FatigueStrengths::new(se_typed, ksi(120.0), ksi(85.0)).unwrap();
        let at = |si: f64, criterion| {
            let stress = FatigueStress::new(ksi(si), ksi(sa), ksi(si + s * sa)).unwrap();
            let fatigue = MachineDesignFatigue::new(strengths, stress, criterion).unwrap();
            fatigue.derivation().check().unwrap();
            fatigue
        };
        let goodman = at(si, FatigueCriterion::Goodman);
        prop_assert!(goodman.factor <= at(si, FatigueCriterion::Gerber).factor * (1.0 + 1e-9));
        for criterion in [FatigueCriterion::Goodman, FatigueCriterion::Gerber,
            FatigueCriterion::AsmeElliptic, FatigueCriterion::ProofLine] {
            let fatigue = at(si, criterion);
            let (a, m) = (
                fatigue.strength_amplitude.get::<kip_per_square_inch>(),
                fatigue.strength_mean.get::<kip_per_square_inch>(),
            );
            let line = match criterion {
                FatigueCriterion::Goodman => a / se + m / 120.0,
                FatigueCriterion::Gerber => a / se + (m / 120.0).powi(2),
                FatigueCriterion::AsmeElliptic => (a / se).powi(2) + (m / 85.0).powi(2),
                _ => (a + m) / 85.0,
            };
            prop_assert!((line - 1.0).abs() < 1e-9, "{criterion}: {line}");
            prop_assert!(at(si + 1.0, criterion).factor < fatigue.factor);
        }
    }

    /// The manual's alpha and Q are Thornton's equilibrium with b' and a'.
    #[test]
    fn prying_forms_are_one_equilibrium(t in 0.3..1.5, load in 5.0..40.0, p in 2.0..4.0, a in 0.8..3.5) {
        let flange = AiscFlange::new(
            AiscBasis::Lrfd, ksi(65.0), inches(0.875), inches(0.9375), inches(p), inches(2.035), inches(a),
        ).unwrap();
        let (load, bolt) = (pounds_force(1000.0 * load), pounds_force(40.6e3));
        let check = flange.check(load, bolt, inches(t)).unwrap();
        prop_assert!(check.derivation().check().is_ok());
        let tee = thornton_prying(
            load, flange.lever_to_stem(), flange.lever_to_edge(), flange.delta(), check.alpha,
        ).unwrap();
        prop_assert!(tee.derivation().check().is_ok());
        // Equal where the flange is neither too thick to pry nor past its mechanism.
        if check.alpha > 0.0 && check.alpha < 1.0 {
            prop_assert!(((tee.prying / check.prying).value - 1.0).abs() < 1e-9);
        }
        // The required thickness is the inverse of the strength.
        let least = flange.required_thickness(load, bolt).unwrap();
        let at_least = flange.check(load, bolt, least).unwrap();
        prop_assert!((at_least.utilisation.value - 1.0).abs() < 1e-9);
        prop_assert!(least <= flange.no_prying_thickness(load).unwrap() * (1.0 + 1e-12));
        // Thicker is stronger and pries less.
        let thicker = flange.check(load, bolt, inches(t * 1.1)).unwrap();
        prop_assert!(thicker.available >= check.available);
    }

    /// Mode 2 is the equilibrium of the flange: at its load the bolts are used up by load and prying.
    #[test]
    fn t_stub_modes(m in 20.0..60.0, e in 20.0..90.0, t in 6.0..40.0, bolts in 5e4..5e5) {
        let leff = millimetres(150.0);
        let stub = EnTStub::new(millimetres(m), millimetres(e), newtons(bolts)).unwrap();
        let plate = |t| stub.plate(leff, leff, millimetres(t), megapascals(275.0), 1.0).unwrap();
        let found = plate(t).resistance().unwrap();
        prop_assert!(found.derivation().check().is_ok());
        prop_assert!(found.resistance <= found.mode_1.min(found.mode_2).min(found.mode_3));
        prop_assert!(plate(t * 1.1).resistance().unwrap().resistance >= found.resistance);
        let prying = newtons(bolts) - found.mode_2;
        // Two sides: at the web both plastic moments, 2 Mpl = F m - Q n.
        let web = found.mode_2 * stub.m - prying * stub.n;
        prop_assert!((web.value - 2.0 * plate(t).moment_2.value).abs() <= 1e-9 * bolts);
        if let Ok(washer) = plate(t).with_washer(millimetres(37.0)) {
            prop_assert!(washer.resistance().unwrap().mode_1 >= found.mode_1);
        }
        // Prying costs bolts, not the flange: without it there is never more.
        let long = TStubBolts {
            elongation: millimetres(5e5),
            stress_area: square_millimetres(100.0),
            rows: 1,
        };
        let free = plate(t).with_bolts(long).unwrap().resistance().unwrap();
        prop_assert_eq!(free.prying, Some(false));
        prop_assert!(free.resistance <= found.resistance * (1.0 + 1e-12));
    }

    /// No number makes anything panic or gives a result that is not finite.
    #[test]
    fn extremes(x in prop::collection::vec(any_number(), 8)) {
        let thread: Thread = "M16".parse().unwrap();
        let length = |i: usize| millimetres(x[i]);
        let finite = |value: f64| { prop_assert!(value.is_finite(), "{value}"); Ok::<(), TestCaseError>(()) };
        if let Ok(sections) = GripSections::new(length(0), length(1)) {
            if let Ok(bolt) = BoltStiffness::shigley(&thread, sections, megapascals(x[2])) {
                finite(bolt.stiffness.value)?;
                prop_assert!(bolt.stiffness.value > 0.0);
            }
            let nut = ThreadedEnd::Nut { modulus: megapascals(x[3]) };
            if let Ok(bolt) = BoltStiffness::vdi_2230(&thread, sections, BoltHead::Hexagon, megapascals(x[2]), nut) {
                finite(bolt.stiffness.value)?;
            }
        }
        let _ = GripSections::textbook(&thread, length(0), length(1));
        let _ = cap_screw_grip(length(0), length(1), length(2));
        if let Ok(layer) = Layer::new(length(0), megapascals(x[1])) {
            if let Ok(cones) = Cones::new(length(2), length(3), shankline::units::degrees(x[4])) {
                for k in [cones.identical(layer).map(|m| m.stiffness), cones.stiffness(&[layer, layer]),
                    cones.frustum(layer, length(5))].into_iter().flatten() {
                    finite(k.value)?;
                    prop_assert!(k.value > 0.0);
                }
            }
            if let Ok(fit) = wileman(WilemanMaterial::General, length(2), layer) {
                finite(fit.stiffness.value)?;
            }
            if let Ok(tube) = hollow_cylinder(length(2), length(3), layer) {
                finite(tube.stiffness.value)?;
                prop_assert!(tube.stiffness.value > 0.0);
            }
            for end in [ClampEnd::ThroughBolt, ClampEnd::TappedHole] {
                if let Ok(k) = VdiPlates::new(end, length(2), length(3), length(4)).and_then(|p| p.stiffness(layer)) {
                    finite(k.stiffness.value)?;
                    prop_assert!(k.stiffness.value > 0.0);
                }
            }
        }
        let spring = |i: usize| newtons_per_millimetre(x[i]);
        if let Ok(k) = in_series(&[spring(0), spring(1)]) {
            finite(k.value)?;
        }
        if let Ok(share) = LoadShare::new(spring(0), spring(1)) {
            let share = share.introduced_at(x[2]).unwrap_or(share);
            if let Ok(joint) = JointDiagram::new(share, newtons(x[3])) {
                finite(joint.separation_load.value)?;
                if let Ok(loaded) = joint.under(newtons(x[4])) {
                    finite(loaded.bolt.value)?;
                    finite(loaded.clamp.value)?;
                }
                if let Ok(check) = joint.check(newtons(x[4]), newtons(x[5])) {
                    for factor in [check.yield_factor, check.load_factor, check.separation_factor, check.overload_factor] {
                        finite(factor)?;
                        prop_assert!(factor >= 0.0);
                    }
                }
                let area = square_millimetres(x[6]);
                if let Ok(stress) = FatigueStress::of_joint(&joint, area, newtons(x[4]), newtons(x[5])) {
                    finite(stress.mean.value)?;
                }
            }
            if let Ok(needed) = bolts_needed(share, x[2], newtons(x[3]), newtons(x[4]), newtons(x[5])) {
                finite(needed.quotient)?;
                prop_assert!(needed.bolts >= 1);
            }
        }
        if let Ok(margin) = margin_of_safety(newtons(x[0]), x[1], newtons(x[2])) {
            finite(margin)?;
        }
        if let Ok(strengths) = EnduranceStrength::stated(megapascals(x[0]))
            .and_then(|se| FatigueStrengths::new(se, megapascals(x[1]), megapascals(x[2])))
        {
            if let Ok(stress) = FatigueStress::new(megapascals(x[3]), megapascals(x[4]), megapascals(x[5])) {
                for criterion in [FatigueCriterion::Goodman, FatigueCriterion::Gerber,
                    FatigueCriterion::AsmeElliptic, FatigueCriterion::ProofLine] {
                    if let Ok(fatigue) = MachineDesignFatigue::new(strengths, stress, criterion) {
                        finite(fatigue.factor)?;
                        finite(fatigue.strength_mean.value)?;
                        prop_assert!(fatigue.factor >= 0.0);
                    }
                }
            }
        }
        for made in [VdiThread::RolledBeforeHeatTreatment, VdiThread::RolledAfterHeatTreatment { preload_ratio: x[1] }] {
            if let Ok(strength) = VdiFatigueStrength::new(length(0), made).and_then(|s| s.for_cycles(x[2])) {
                finite(strength.amplitude.value)?;
            }
        }
        if let Ok(tee) = thornton_prying(newtons(x[0]), length(1), length(2), x[3], x[4]) {
            finite(tee.bolt.value)?;
            finite(tee.stem_moment.value)?;
        }
        if let Ok(flange) = AiscFlange::new(AiscBasis::Asd, megapascals(x[0]), length(1), length(2), length(3), length(4), length(5)) {
            if let Ok(check) = flange.check(newtons(x[6]), newtons(x[7]), length(0)) {
                for value in [check.available.value, check.prying.value, check.bolt.value, check.utilisation.value] {
                    finite(value)?;
                }
            }
            if let Ok(least) = flange.required_thickness(newtons(x[6]), newtons(x[7])) {
                finite(least.value)?;
            }
        }
        if let Ok(found) = EnTStub::new(length(0), length(1), newtons(x[2]))
            .and_then(|s| s.plate(length(3), length(4), length(5), megapascals(x[6]), x[7]))
            .and_then(|s| s.resistance())
        {
            finite(found.mode_1.value)?;
            finite(found.resistance.value)?;
        }
    }
}

/// Data files say the unit of every quantity and carry the cautions.
#[cfg(feature = "serde")]
#[test]
fn results_as_data() {
    let json = |value: serde_json::Value| value.to_string();
    let k = newtons_per_millimetre(1e5);
    let share = LoadShare::new(k, k).unwrap().introduced_at(0.5).unwrap();
    let text = json(serde_json::to_value(share).unwrap());
    assert!(
        text.contains(r#""members":{"unit":"N/mm","value":100000.0}"#),
        "{text}"
    );
    assert!(text.contains("method_from_memory"), "{text}");

    let joint = JointDiagram::new(share, newtons(20e3)).unwrap();
    let check = joint.check(newtons(10e3), newtons(40e3)).unwrap();
    let text = json(serde_json::to_value(check).unwrap());
    assert!(text.contains(r#""state":"clamped""#), "{text}");

    let layer = Layer::new(millimetres(20.0), megapascals(70e3)).unwrap();
    let fit = wileman(WilemanMaterial::Aluminium, millimetres(12.0), layer).unwrap();
    let text = json(serde_json::to_value(fit).unwrap());
    assert!(
        text.contains(r#""material":"aluminium""#) && text.contains("cautions"),
        "{text}"
    );

    let made = VdiThread::RolledAfterHeatTreatment { preload_ratio: 0.7 };
    let text = serde_json::to_string(&made).unwrap();
    assert_eq!(
        text,
        r#"{"rolled_after_heat_treatment":{"preload_ratio":0.7}}"#
    );
    assert_eq!(serde_json::from_str::<VdiThread>(&text).unwrap(), made);

    let frusta = Cones::shigley(millimetres(12.0))
        .unwrap()
        .frusta(&[layer])
        .unwrap();
    let text = json(serde_json::to_value(frusta).unwrap());
    assert!(text.contains(r#""half_angle":{"unit":"deg""#), "{text}");
}

/// Shigley, 9th ed., Eq. 8-24, Fb = Fi + C P, for either sign of P: half the change counts on each side.
#[test]
fn a_push_takes_off_a_preloaded_bolt_what_a_pull_adds() {
    let share =
        LoadShare::new(newtons_per_millimetre(300e3), newtons_per_millimetre(600e3)).unwrap();
    let joint = JointDiagram::new(share, newtons(60e3)).unwrap();
    let area = square_millimetres(100.0);
    let stress =
        |least, most| FatigueStress::of_joint(&joint, area, newtons(least), newtons(most)).unwrap();
    let both = stress(-12e3, 12e3);
    assert!((both.amplitude - megapascals(40.0)).abs() < megapascals(1e-6)); // 12 / 3 kN over 100 mm2
    assert!((both.mean - megapascals(600.0)).abs() < megapascals(1e-6));
    // A mean below the preload counts as the preload.
    assert_eq!(stress(-12e3, 0.0).mean, both.mean);
    assert!(stress(0.0, 12e3).amplitude < both.amplitude);
}
