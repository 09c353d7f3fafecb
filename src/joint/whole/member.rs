//! One bolt among several of a connection, and what a connection wants to know of the plies.

use alloc::string::String;
use alloc::vec::Vec;

use super::case::{Case, CasePly};
use super::material::CaseMaterial;
use super::outcome::Outcomes;
use super::{Joint, Verdict};
use crate::error::Error;
use crate::strength::check::{Level, Place};
use crate::units::{Length, Stress};

/// What stands around one bolt of a connection. A joint that is checked with it leaves what several bolts do together
/// to the connection: sections and blocks of the plies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Member {
    /// How many bolts stand behind each other along its load, itself among them.
    pub(crate) along: usize,
    /// How many such lines stand beside each other.
    pub(crate) across: usize,
    /// From the first to the last bolt, along its load.
    pub(crate) length: Length,
}

/// One ply as a connection sees it.
pub(crate) struct PlyFacts {
    pub(crate) place: Place,
    pub(crate) number: usize,
    /// None of a tapped part.
    pub(crate) name: Option<String>,
    /// Least thickness that the bolt bears on.
    pub(crate) thickness: Option<Length>,
    pub(crate) hole: Option<Length>,
    pub(crate) has_material: bool,
    pub(crate) yields: Option<Stress>,
    pub(crate) breaks: Option<Stress>,
    pub(crate) elastic_modulus: Option<Stress>,
    /// Its share of the load across: plus one way, minus the other.
    pub(crate) pull: f64,
    pub(crate) is_timber: bool,
    /// Whether structural codes are written for what it is of.
    pub(crate) is_carbon_steel: bool,
}

impl Joint {
    /// The check of one bolt among several; of one alone without them.
    pub(crate) fn check_among(&self, member: Option<&Member>) -> Result<Verdict, Error> {
        self.run(None, member, false).map(|run| run.verdict)
    }

    /// What its loads are multiplied by at a level.
    pub(crate) fn load_factor(&self, level: Level) -> f64 {
        self.load.factor(level)
    }

    /// The plies from the head, and the tapped part after them.
    pub(crate) fn ply_facts(&self) -> Result<Vec<PlyFacts>, Error> {
        let mut out = Outcomes::new(false);
        let case = Case::new(self, None, None, &mut out)?;
        let pulls = self.stack.pulls().iter();
        let pulls = pulls.copied().chain(core::iter::repeat(0.0));
        let facts = case.plies.iter().zip(pulls);
        Ok(facts.map(|(own, pull)| facts_of(own, pull)).collect())
    }
}

fn facts_of(own: &CasePly, pull: f64) -> PlyFacts {
    let at = own.material.zip(own.thickness);
    let strengths = at.and_then(|(material, thickness)| material.at_thickness(thickness).ok());
    PlyFacts {
        place: own.place,
        number: own.number,
        name: own.ply.map(|ply| ply.name.clone()),
        thickness: own.thickness,
        hole: own.ply.and_then(|ply| ply.hole),
        has_material: own.material.is_some(),
        yields: strengths.and_then(|own| own.yields),
        breaks: strengths.and_then(|own| own.breaks),
        elastic_modulus: own.material.and_then(CaseMaterial::elastic_modulus),
        pull,
        is_timber: own.timber.is_some(),
        is_carbon_steel: own.material.is_some_and(CaseMaterial::is_carbon_steel),
    }
}
