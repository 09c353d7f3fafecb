//! What bolts, plies and threads carry, by named methods.
//!
//! A method is one publisher's in one edition and fixes area, stress and factor together.
//!
//! | question | begins at |
//! |---|---|
//! | shear of a bolt, planes loaded alike, allowable load | [`shear::bolt_shear`] |
//! | shear by any method, unequal planes, long joints and grips, packing | [`shear::shear_resistance`] |
//! | tension of a bolt | [`bolt_tension::bolt_tension`]; in a preloaded joint [`tension`](crate::tension) |
//! | tension, shear and bending together | [`interaction::interaction`] |
//! | what is left beside two of shear, tension and bending | [`interaction::InteractionRule::tension_left_bent`], [`interaction::InteractionRule::bending_left`] |
//! | tension left beside a shear, shear beside a tension | [`interaction::InteractionRule::tension_beside`], [`interaction::InteractionRule::shear_beside`]; F'nt and F'nv of AISC 360 [`interaction::AiscStresses`] |
//! | tension and shear together by a theory of strength, as one tension | [`combined_stress::EquivalentTension`], [`combined_stress::CombinedStress`] |
//! | the plain stress under a load: shear, tension, bearing, net section, threads; load for a factor of safety | [`stressed::StressedArea`] |
//! | the least thread, diameter, number of bolts, width or thickness for a load | [`sizing::Demand`] |
//! | a cover under pressure: share of a bolt, spacing, initial tension of a tight joint | [`cover::Cover`], [`cover::SpacingRule`], [`cover::textbook_initial_tension`] |
//! | resistance on the printed stress area, as code tables are computed | [`bolt_tension::BoltTension::on_printed_area`], [`shear::shear_resistance_on_printed_area`], [`shear::BoltShear::on_printed_area`] |
//! | slip of a preloaded joint | [`slip::slip_resistance`] |
//! | bearing, tear-out, net and gross section of a ply, bearing on the bolt | [`ply::Ply::assess`]; a single lap [`ply::Ply::single_lap`], plies that share a load [`ply::shared_resistance`] |
//! | block shear, staggered holes | [`ply::block_shear`], [`ply::Stagger::net_width`] |
//! | a plate in shear: fin plates, end plates, cleats, gussets | [`ply::plate_shear`] |
//! | least and greatest distances of holes; what kind of hole a hole is | [`ply::Ply::distances`]; [`ply::Hole::classify`] |
//! | bending of a pin or of a bolt across a gap | [`pin::PinJoint`], [`pin::en_1993_pin`], [`pin::yielding_pin`]; in single shear [`pin::single_shear_bending`] |
//! | a plate around a pin: its sections, end and dimensions | [`pin::aisc_360_pin_plate`] |
//! | a bolt in timber | [`timber::TimberConnection::resistance`]; its details [`timber::Requirement`] |
//! | a group of bolts under an eccentric load; what a group bears together | [`group::BoltPattern`]; [`group::en_1993_fastener_group`] |
//! | pressure under head, nut and washer; pull-through | [`surface::surface_pressure`], [`surface::pull_through_en_1993`], [`surface::punching_by_statics`] |
//! | washers a code requires | [`washers::required_washers`] |
//! | stripping of threads, least engagement, nut against bolt | [`strip::stripping`], [`strip::minimum_engagement`], [`strip::nut_proof`] |
//! | whether a nut belongs on a bolt, finishes and all | [`strip::nut_pairing`] |
//! | shock, impact, loads that act together | [`loads`] |
//! | comparing any of them with a load | [`check::Check`] |
//!
//! # Which publisher gives what
//!
#![doc = include_str!("strength/methods.md")]
//!
//! Every resistance says at which level it stands, nominal, design or allowable: see [`check::Level`]. These
//! are estimates: local codes rule, and where a failure can hurt someone a licensed engineer must check.
//!
//! # Refusals
//!
//! | what is wrong | error |
//! |---|---|
//! | the method does not list the grade, states nothing for that case (a thread in the plane, bending beside tension, a class of faces), or has no resistance of that level | [`Error::NoValue`](crate::Error::NoValue): the quantity, what it was asked of (the grade), why |
//! | a number that makes no sense, or lies outside what the code covers | [`Error::OutOfRange`](crate::Error::OutOfRange): the quantity, its value, the range |
//! | things that do not belong together: strengths of another size, planes that may not be added | [`Error::Mismatch`](crate::Error::Mismatch) |
//!
//! So a list of checks can put down every `NoValue` as a mode that this method leaves open, and need not stop.
//! What a code would lower a capacity for and nobody knows is neither: it is data of the result
//! ([`shear::ReductionNeeds`]).

pub mod bolt_tension;
pub mod check;
pub(crate) mod code;
pub mod combined_stress;
pub mod cover;
pub mod group;
pub mod interaction;
pub mod loads;
pub mod pin;
pub mod ply;
mod section;
pub mod shear;
pub mod sizing;
pub mod slip;
pub mod stressed;
pub mod strip;
pub mod surface;
pub mod timber;
pub mod washers;
