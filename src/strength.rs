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
//! | slip of a preloaded joint | [`slip::slip_resistance`] |
//! | bearing, tear-out, net and gross section of a ply | [`ply::Ply::resistances`] |
//! | block shear, staggered holes, least distances | [`ply::block_shear`], [`ply::Stagger::net_width`], [`ply::Ply::short_distances`] |
//! | bending of a pin or of a bolt across a gap | [`pin::PinJoint`], [`pin::en_1993_pin`], [`pin::yielding_pin`] |
//! | a bolt in timber | [`timber::TimberConnection::resistance`], [`timber::least_distances`] |
//! | a group of bolts under an eccentric load | [`group::BoltPattern`] |
//! | pressure under head, nut and washer; pull-through | [`surface::surface_pressure`], [`surface::pull_through_en_1993`], [`surface::punching_by_statics`] |
//! | washers a code requires | [`washers::required_washers`] |
//! | stripping of threads, least engagement, nut against bolt | [`strip::stripping`], [`strip::minimum_engagement`], [`strip::nut_proof`] |
//! | shock, impact, loads that act together | [`loads`] |
//! | comparing any of them with a load | [`check::Check`] |
//!
//! Every resistance says at which level it stands, nominal, design or allowable: see [`check::Level`]. These
//! are estimates: local codes rule, and where a failure can hurt someone a licensed engineer must check.

pub mod bolt_tension;
pub mod check;
pub mod group;
pub mod interaction;
pub mod loads;
pub mod pin;
pub mod ply;
pub mod shear;
pub mod slip;
pub mod strip;
pub mod surface;
pub mod timber;
pub mod washers;
