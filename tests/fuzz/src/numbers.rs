//! Functions below the joint, at figures of every size: what they answer is a number, and their workings are true.

use core::fmt::Debug;

use shankline::derivation::Derivation;
use shankline::error::Error;
use shankline::preload::{
    BearingFace, BearingPressure, ElasticJoint, Friction, FrictionForm, NutFactor, ShortForm,
    TorsionModel,
};
use shankline::prelude::*;
use shankline::strength::bolt_tension::{HeadShape, TensionMethod, bolt_tension};
use shankline::strength::check::Level;
use shankline::strength::group::{BoltPattern, DeformationLaw, GroupBolt, NeutralAxis, PlaneLoad};
use shankline::strength::pin::{PinJoint, PinStrengths, en_1993_pin, share_in_sleeve};
use shankline::strength::ply::{Ply, PlyBolt, PlyMethod};
use shankline::strength::slip::{SlipClass, SlipMethod};
use shankline::strength::strip::{StripMethod, ThreadMaterial, stripping};
use shankline::tables::threads::{MetricThread, UnifiedThread};
use shankline::tension::{AiscBasis, AiscFlange, Cones, GripSections, Layer, LoadShare};
use shankline::thread::area;
use shankline::thread::strip::{EngagedLength, bolt_thread_area, nut_thread_area};
use shankline::units::{degrees, newton_metres, newtons_per_millimetre, square_millimetres};

use crate::any_joint::Dice;
use crate::{finite, row};

type Door = fn(&mut Figures) -> Result<(), String>;

const DOORS: [Door; 12] = [
    areas,
    strips,
    faces,
    short_forms,
    friction_forms,
    elastic,
    cones,
    shares,
    pins,
    plies,
    bolts,
    groups,
];

pub fn run(input: &[u8]) -> Result<(), String> {
    let numbers = row(input);
    let mut dice = Dice::new(&numbers);
    let door = DOORS[dice.below(DOORS.len())];
    door(&mut Figures(dice))
}

/// Numbers about what is typical, and now and then any.
struct Figures<'a>(Dice<'a>);

impl Figures<'_> {
    fn near(&mut self, typical: f64) -> f64 {
        const ODD: [f64; 16] = [
            0.0,
            -0.0,
            -1.0,
            f64::NAN,
            f64::INFINITY,
            f64::NEG_INFINITY,
            5e-324,
            1e-300,
            1e-155,
            1e-30,
            1e17,
            1e30,
            1e155,
            1e300,
            f64::MAX,
            -1e-300,
        ];
        let dice = &mut self.0;
        match dice.below(16) {
            0 => ODD[dice.below(ODD.len())],
            1 => 10_f64.powf(dice.between(-300.0, 300.0)),
            2 | 3 => typical * 10_f64.powf(dice.between(-9.0, 9.0)),
            _ => typical * 10_f64.powf(dice.between(-1.0, 1.0)),
        }
    }

    fn length(&mut self) -> Length {
        millimetres(self.near(10.0))
    }

    fn force(&mut self) -> Force {
        newtons(self.near(1e4))
    }

    fn torque(&mut self) -> Torque {
        newton_metres(self.near(100.0))
    }

    fn stress(&mut self) -> Stress {
        megapascals(self.near(300.0))
    }

    fn stiffness(&mut self) -> shankline::units::Stiffness {
        newtons_per_millimetre(self.near(1e6))
    }

    fn thread(&mut self) -> Option<Thread> {
        if self.0.below(2) == 0 {
            let all = UnifiedThread::all();
            let own = &all[self.0.below(all.len())];
            Thread::unified(own.nominal_diameter, own.series).ok()
        } else {
            let all = MetricThread::all();
            let own = &all[self.0.below(all.len())];
            Thread::metric(own.nominal_diameter, own.pitch).ok()
        }
    }

    fn grade(&mut self) -> Option<BoltGrade> {
        let all = [
            "SAE J429 grade 5",
            "SAE J429 grade 8",
            "8.8",
            "10.9",
            "12.9",
            "4.6",
            "A2-70",
            "A325",
            "A193 B7",
        ];
        all[self.0.below(all.len())].parse().ok()
    }
}

/// What was answered, if it was: nothing in it may be no number.
fn seen<T: Debug>(name: &str, answer: Result<T, Error>) -> Result<Option<T>, String> {
    match answer {
        Ok(own) => {
            finite(&format!("{own:?}")).map_err(|why| format!("{name}: {why}"))?;
            Ok(Some(own))
        }
        Err(why) => {
            let _ = why.to_string();
            Ok(None)
        }
    }
}

fn worked(name: &str, working: &Derivation) -> Result<(), String> {
    working
        .check()
        .map_err(|why| format!("{name}: an untrue working: {why}"))
}

fn areas(own: &mut Figures) -> Result<(), String> {
    let (d, p) = (own.length(), own.length());
    for (name, answer) in [
        ("unified", area::unified(d, p)),
        ("unified_high_strength", area::unified_high_strength(d, p)),
        ("metric", area::metric(d, p)),
        ("unified_minor", area::unified_minor(d, p)),
        ("metric_minor", area::metric_minor(d, p)),
    ] {
        seen(name, answer)?;
    }
    seen("share_in_sleeve", share_in_sleeve(d, p, own.length()))?;
    Ok(())
}

fn strips(own: &mut Figures) -> Result<(), String> {
    let (a, b, c, engaged) = (own.length(), own.length(), own.length(), own.length());
    seen("bolt_thread_area", bolt_thread_area(a, b, c, engaged))?;
    seen("nut_thread_area", nut_thread_area(a, b, c, engaged))?;
    let Some(engaged) = seen("EngagedLength", EngagedLength::new(engaged))? else {
        return Ok(());
    };
    let Some(thread) = own.thread() else {
        return Ok(());
    };
    for (name, areas) in [
        ("strip_areas_basic", thread.strip_areas_basic(engaged)),
        (
            "strip_areas_simplified",
            thread.strip_areas_simplified(engaged),
        ),
    ] {
        let Some(areas) = seen(name, areas)? else {
            continue;
        };
        worked(name, &areas.derivation())?;
        seen("over", areas.over(own.length()))?;
        let (bolt, nut) = (
            ThreadMaterial::new(own.stress(), None),
            ThreadMaterial::new(own.stress(), None),
        );
        let (Ok(bolt), Ok(nut)) = (bolt, nut) else {
            continue;
        };
        let width_across_flats = (own.0.below(2) == 0).then(|| own.length());
        for method in [
            StripMethod::Alexander { width_across_flats },
            StripMethod::FedStdH28,
        ] {
            if let Some(strength) = seen("stripping", stripping(&areas, &bolt, &nut, method))? {
                worked("stripping", &strength.derivation())?;
            }
        }
    }
    Ok(())
}

fn faces(own: &mut Figures) -> Result<(), String> {
    if let Some(face) = seen("BearingFace", BearingFace::new(own.length(), own.length()))? {
        finite(&format!(
            "{:?}",
            face.effective_diameter(BearingPressure::UniformPressure)
        ))?;
    }
    let slip = SlipMethod::En1993 {
        class: SlipClass::B,
        serviceability: false,
    };
    finite(&format!("{slip:?}"))
}

fn short_forms(own: &mut Figures) -> Result<(), String> {
    let k = own.near(0.2);
    let factor = seen("NutFactor", NutFactor::new(0.8 * k, k, 1.2 * k))?;
    let Some(factor) = factor else { return Ok(()) };
    let Some(form) = seen("ShortForm", ShortForm::new(factor, own.length()))? else {
        return Ok(());
    };
    let (torque, running) = (own.torque(), own.torque());
    let with = form.with_prevailing(Spread {
        min: 0.5 * running,
        nominal: running,
        max: 1.5 * running,
    });
    for form in [Some(form), seen("with_prevailing", with)?]
        .into_iter()
        .flatten()
    {
        seen("preload", form.preload(torque))?;
        seen("torque", form.torque(own.force()))?;
        seen(
            "preload_within",
            form.preload_within(Spread {
                min: 0.9 * torque,
                nominal: torque,
                max: 1.1 * torque,
            }),
        )?;
        if let Some(working) = seen("derivation", form.derivation(torque))? {
            worked("short form", &working)?;
        }
    }
    Ok(())
}

fn friction_forms(own: &mut Figures) -> Result<(), String> {
    let Some(thread) = own.thread() else {
        return Ok(());
    };
    let mut friction = || {
        let f = own.near(0.12);
        Friction::new(0.8 * f, f, 1.2 * f)
    };
    let (Ok(of_thread), Ok(of_face)) = (friction(), friction()) else {
        return Ok(());
    };
    let (bearing, torque, force) = (own.length(), own.torque(), own.force());
    for (name, form) in [
        (
            "lead_angle",
            FrictionForm::lead_angle(&thread, bearing, of_thread, of_face),
        ),
        (
            "shigley",
            FrictionForm::shigley(&thread, of_thread, of_face),
        ),
        (
            "linear",
            FrictionForm::linear(&thread, bearing, of_thread, of_face),
        ),
    ] {
        let Some(form) = seen(name, form)? else {
            continue;
        };
        seen("preload", form.preload(torque))?;
        seen("torque", form.torque(force))?;
        seen("loosening_torque", form.loosening_torque(force))?;
        seen("nut_factor", form.nut_factor())?;
        for model in [TorsionModel::Vdi2230, TorsionModel::JisB1083] {
            if let Some(stress) = seen("tightening_stress", form.tightening_stress(force, model))? {
                worked("tightening stress", &stress.derivation())?;
                seen("utilisation", stress.utilisation(own.stress()))?;
            }
            if let Some(limit) = seen("yield_point", form.yield_point(own.stress(), model))? {
                worked("yield point", &limit.derivation())?;
            }
        }
    }
    Ok(())
}

fn elastic(own: &mut Figures) -> Result<(), String> {
    let joint = ElasticJoint::new(own.length(), own.stiffness(), own.stiffness());
    let Some(joint) = seen("ElasticJoint", joint)? else {
        return Ok(());
    };
    let angle = degrees(own.near(30.0));
    seen("preload", joint.preload(angle))?;
    seen("turn", joint.turn(own.force()))?;
    seen("embedment_loss", joint.embedment_loss(own.length()))?;
    if let Some(loose) = seen("loosened", joint.loosened(own.force(), angle))? {
        worked("loosened", &loose.derivation())?;
    }
    Ok(())
}

fn cones(own: &mut Figures) -> Result<(), String> {
    let cones = if own.0.below(2) == 0 {
        Cones::shigley(own.length())
    } else {
        Cones::new(own.length(), own.length(), degrees(own.near(30.0)))
    };
    let Some(cones) = seen("Cones", cones)? else {
        return Ok(());
    };
    let mut layers = Vec::new();
    for _ in 0..=own.0.below(6) {
        if let Some(layer) = seen(
            "Layer",
            Layer::new(own.length(), megapascals(own.near(2e5))),
        )? {
            layers.push(layer);
        }
    }
    seen("stiffness", cones.stiffness(&layers))?;
    if let Some(frusta) = seen("frusta", cones.frusta(&layers))? {
        worked("frusta", &frusta.derivation())?;
    }
    if let Some(first) = layers.first() {
        if let Some(members) = seen("identical", cones.identical(*first))? {
            worked("identical members", &members.derivation())?;
        }
    }
    Ok(())
}

fn shares(own: &mut Figures) -> Result<(), String> {
    if let Some(share) = seen(
        "LoadShare",
        LoadShare::new(own.stiffness(), own.stiffness()),
    )? {
        worked("load share", &share.derivation())?;
        if let Some(share) = seen("introduced_at", share.introduced_at(own.near(0.5)))? {
            worked("load share", &share.derivation())?;
        }
    }
    let Some(thread) = own.thread() else {
        return Ok(());
    };
    if let Some(sections) = seen(
        "GripSections",
        GripSections::new(own.length(), own.length()),
    )? {
        let bolt = shankline::tension::BoltStiffness::shigley(
            &thread,
            sections,
            megapascals(own.near(2e5)),
        );
        if let Some(bolt) = seen("BoltStiffness", bolt)? {
            worked("bolt stiffness", &bolt.derivation())?;
        }
    }
    let basis = if own.0.below(2) == 0 {
        AiscBasis::Lrfd
    } else {
        AiscBasis::Asd
    };
    let flange = AiscFlange::new(
        basis,
        own.stress(),
        own.length(),
        own.length(),
        own.length(),
        own.length(),
        own.length(),
    );
    if let Some(flange) = seen("AiscFlange", flange)? {
        seen(
            "no_prying_thickness",
            flange.no_prying_thickness(own.force()),
        )?;
        if let Some(prying) = seen(
            "check",
            flange.check(own.force(), own.force(), own.length()),
        )? {
            worked("prying", &prying.derivation())?;
        }
    }
    Ok(())
}

fn pins(own: &mut Figures) -> Result<(), String> {
    let joint = PinJoint::new(own.length(), own.length(), own.length(), own.length());
    let Some(joint) = seen("PinJoint", joint)? else {
        return Ok(());
    };
    seen("moment", joint.moment(own.force()))?;
    seen("bending_stress", joint.bending_stress(own.force()))?;
    let strengths = PinStrengths {
        pin_yield: own.stress(),
        pin_tensile: own.stress(),
        ply_yield: own.stress(),
    };
    if let Some(pin) = seen("en_1993_pin", en_1993_pin(&joint, &strengths))? {
        worked("pin", &pin.derivation())?;
        seen("checks", pin.checks(own.force()))?;
    }
    Ok(())
}

fn plies(own: &mut Figures) -> Result<(), String> {
    let mut ply = Ply::without_strengths(own.length(), own.length());
    ply.yield_strength = (own.0.below(4) > 0).then(|| own.stress());
    ply.tensile_strength = (own.0.below(4) > 0).then(|| own.stress());
    ply.end_distance = (own.0.below(4) > 0).then(|| own.length());
    ply.edge_distance = (own.0.below(4) > 0).then(|| own.length());
    ply.width = (own.0.below(4) > 0).then(|| own.length());
    ply.pitch = (own.0.below(4) == 0).then(|| own.length());
    ply.gauge = (own.0.below(4) == 0).then(|| own.length());
    let diameter = own.length();
    let bolt = PlyBolt {
        tensile_strength: (own.0.below(2) > 0).then(|| own.stress()),
        ..PlyBolt::default()
    };
    for method in [
        PlyMethod::MachineDesign {
            design_factor: own.near(2.0),
        },
        PlyMethod::Aisc360 {
            edition: AiscEdition::E2016,
            deformation_matters: true,
        },
        PlyMethod::En1993,
    ] {
        let Some(modes) = seen("assess", ply.assess(diameter, bolt, method))? else {
            continue;
        };
        for mode in modes {
            if let shankline::strength::ply::PlyOutcome::Found(found) = &mode.outcome {
                worked("ply", &found.derivation())?;
            }
        }
    }
    Ok(())
}

fn bolts(own: &mut Figures) -> Result<(), String> {
    let (Some(thread), Some(grade)) = (own.thread(), own.grade()) else {
        return Ok(());
    };
    let Some(strength) = seen("strength", grade.strength(thread.nominal_diameter()))? else {
        return Ok(());
    };
    let zones = [Zone::Shank, Zone::RunOut, Zone::Thread];
    let planes: Vec<Zone> = (0..own.0.below(4)).map(|_| zones[own.0.below(3)]).collect();
    let factor = own.near(2.0);
    for method in [
        ShearMethod::DistortionEnergy {
            basis: ShearBasis::Yield,
            design_factor: factor,
        },
        ShearMethod::Aisc360 {
            edition: AiscEdition::E2016,
        },
        ShearMethod::En1993,
        ShearMethod::Bs5950,
        ShearMethod::As4100,
        ShearMethod::Is800,
    ] {
        if let Some(shear) = seen(
            "bolt_shear",
            bolt_shear(&thread, &strength, &planes, method),
        )? {
            worked("shear", &shear.derivation())?;
        }
    }
    for method in [
        TensionMethod::Proof {
            design_factor: factor,
        },
        TensionMethod::Aisc360 {
            edition: AiscEdition::E2016,
        },
        TensionMethod::En1993,
    ] {
        let grip = (own.0.below(2) > 0).then(|| own.length());
        if let Some(tension) = seen(
            "bolt_tension",
            bolt_tension(&thread, &strength, method, HeadShape::OnFace, grip),
        )? {
            worked("tension", &tension.derivation())?;
            seen("check", tension.check(own.force(), Level::Allowable))?;
        }
    }
    finite(&format!("{:?}", square_millimetres(1.0)))
}

fn groups(own: &mut Figures) -> Result<(), String> {
    let count = 1 + own.0.below(8);
    let bolts: Vec<GroupBolt> = (0..count)
        .map(|_| GroupBolt::new(own.length(), own.length()).with_relative_area(own.near(1.0)))
        .collect();
    let Some(pattern) = seen("BoltPattern", BoltPattern::new(bolts))? else {
        return Ok(());
    };
    let load = PlaneLoad::new(own.force(), own.force(), own.length(), own.length())
        .with_moment(own.torque());
    if let Some(group) = seen("elastic", pattern.elastic(&[load]))? {
        worked("elastic group", &group.derivation())?;
    }
    if let Some(group) = seen(
        "instantaneous_centre",
        pattern.instantaneous_centre(&[load], DeformationLaw::Aisc),
    )? {
        worked("instantaneous centre", &group.derivation())?;
        seen("capacity", group.capacity(own.force()))?;
    }
    if let Some(group) = seen(
        "tension",
        pattern.tension(own.torque(), NeutralAxis::Centroid, &[load]),
    )? {
        worked("group in tension", &group.derivation())?;
    }
    Ok(())
}
