//! Bolt and members as two springs.

use alloc::vec::Vec;

use crate::error::Error;
use crate::joint::whole::case::{Case, CasePly};
use crate::joint::whole::outcome::Outcomes;
use crate::preload::ElasticJoint;
use crate::tension::{BoltStiffness, Cones, GripSections, Layer, LoadShare};
use crate::units::{Stress, megapascals};

/// Modulus of elasticity of bolt and washers: steel, as Shigley's chapter 8 takes it (30 Mpsi).
const STEEL: Stress = megapascals(207e3);

/// Bolt and members as springs, where anything has a use for them.
pub(super) struct Springs {
    pub(super) share: LoadShare,
    pub(super) elastic: ElasticJoint,
}

/// The springs by the stiffnesses given or, if the material of every ply is given and they lie plainly on each
/// other, by those of hard plies; none where they are not known.
pub(super) fn springs(case: &Case, out: &mut Outcomes) -> Result<Option<Springs>, Error> {
    let Some(torque) = case.torque() else {
        return Ok(None);
    };
    let (bolt, members) = if let Some(given) = torque.stiffness {
        // A slip of units is plain beside the stiffness of the parts.
        if let Ok(Some((bolt, _))) = of_parts(case) {
            let ratio = (given.bolt / bolt.stiffness).value;
            if !(0.1..=10.0).contains(&ratio) {
                return Err(Error::Mismatch(alloc::format!(
                    "the stiffness given for the bolt is {ratio:.2e} times that of its shank and thread"
                )));
            }
        }
        (given.bolt, given.members)
    } else {
        // A bolt that does not reach through has no stiffness; its length is at fault already. Whoever wants the
        // springs does with bounds, or lists the stiffness as missing.
        let Ok(Some((bolt, layers))) = of_parts(case) else {
            return Ok(None);
        };
        let cones = Cones::shigley(case.diameter)?;
        let members = cones.stiffness(&layers)?;
        if out.works() {
            let frusta = cones.frusta(&layers)?;
            out.work(|| bolt.derivation());
            out.work(|| frusta.derivation());
        }
        (bolt.stiffness, members)
    };
    let share = LoadShare::new(bolt, members)?;
    let elastic = ElasticJoint::new(case.thread.pitch(), bolt, members)?;
    Ok(Some(Springs { share, elastic }))
}

/// The bolt and the layers that it clamps.
fn of_parts(case: &Case) -> Result<Option<(BoltStiffness, Vec<Layer>)>, Error> {
    let (stack, candidate) = (&case.joint.stack, &case.candidate);
    // The cones of pressure are those of hard plies on each other. A bolt that does not reach through them clamps
    // nothing: its length is at fault.
    if !stack.is_plain() || !candidate.fits() {
        return Ok(None);
    }
    let Some(moduli) = case
        .plies
        .iter()
        .map(|ply: &CasePly| ply.material?.elastic_modulus())
        .collect::<Option<Vec<Stress>>>()
    else {
        return Ok(None);
    };
    // Of a strength of the caller's own nobody says that it is that of steel.
    let modulus = match &case.joint.own.strength {
        None => STEEL,
        Some(own) => match own.elastic_modulus {
            Some(modulus) => modulus,
            None => return Ok(None),
        },
    };
    let mut layers = Vec::with_capacity(moduli.len() + 4);
    let added = stack.washer_to_add_under_head().into_iter();
    for washer in added.cycle().take(candidate.washers_added_under_head) {
        layers.push(Layer::new(washer.thickness.nominal, STEEL)?);
    }
    for washer in stack.washers_under_head() {
        layers.push(Layer::new(washer.thickness.nominal, STEEL)?);
    }
    for (ply, modulus) in stack.plies().iter().zip(moduli) {
        layers.push(Layer::new(ply.thickness.nominal, modulus)?);
    }
    for washer in stack.other_washers_under_nut() {
        layers.push(Layer::new(washer.thickness.nominal, STEEL)?);
    }
    if let Some((washer, _)) = stack.washers_under_nut() {
        for _ in 0..candidate.washers_under_nut {
            layers.push(Layer::new(washer.thickness.nominal, STEEL)?);
        }
    }
    let sections = GripSections::of_screw(&candidate.screw, candidate.grip.nominal)?;
    let bolt = BoltStiffness::shigley(case.thread, sections, modulus)?;
    Ok(Some((bolt, layers)))
}
