//! Rows of the tables, with units, names and sources. A name is that of the file in `tables/`.

use serde::{Deserialize, Serialize};
use shankline::error::{Amount, Error};
use shankline::source::{Basis, Provenance};
use shankline::tables::{
    aircraft, aircraft_torque, bolts, edge_distances, en_holes, expansion, friction, galvanic,
    grades, head_marks, heat, holes, hr_bolts, locking, metric_screws, nut_grades, nuts, plies,
    pretension, screws, sockets, strengths, surface, threads, tightening, timber, washer_rules,
    washers,
};
use shankline::units::Length;

use crate::questions::written;
use crate::refusal::{Refusal, read};

/// How the rows of a table are written.
type Rows = fn() -> Result<Vec<u8>, Refusal>;

const TABLES: &[(&str, Rows)] = &[
    (
        "threads_unified",
        || written(&threads::UnifiedThread::all()),
    ),
    ("threads_metric", || written(&threads::MetricThread::all())),
    ("sae_j429_grades", || written(&grades::SaeGradeRow::all())),
    ("astm_grades", || written(&grades::AstmGradeRow::all_inch())),
    ("astm_grades_metric", || {
        written(&grades::AstmGradeRow::all_metric())
    }),
    ("iso_898_1_classes", || {
        written(&grades::PropertyClassRow::all())
    }),
    ("iso_3506_1_classes", || {
        written(&grades::StainlessClassRow::all())
    }),
    ("nuts_inch", || written(&nuts::Nut::all_inch())),
    ("nuts_metric", || written(&nuts::Nut::all_metric())),
    ("hex_cap_screws_inch", || {
        written(&screws::HexCapScrew::all())
    }),
    ("hex_screws_metric", || written(&screws::HexScrew::all())),
    ("clearance_holes_inch", || {
        written(&holes::ClearanceHole::all_inch())
    }),
    ("clearance_holes_metric", || {
        written(&holes::ClearanceHole::all_metric())
    }),
    ("structural_holes_inch", || {
        written(&holes::StructuralHole::all_inch())
    }),
    ("structural_holes_metric", || {
        written(&holes::StructuralHole::all_metric())
    }),
    ("edge_distances_inch", || {
        written(&edge_distances::EdgeDistance::all_inch())
    }),
    ("edge_distances_metric", || {
        written(&edge_distances::EdgeDistance::all_metric())
    }),
    ("holes_en_1090", || written(&en_holes::EnHole::all())),
    ("tap_drills_inch", || written(&holes::TapDrill::all_inch())),
    ("tap_drills_metric", || {
        written(&holes::TapDrill::all_metric())
    }),
    ("nut_grades_inch", || {
        written(&nut_grades::NutGradeRow::all_inch())
    }),
    ("nut_grades_metric", || {
        written(&nut_grades::NutGradeRow::all_metric())
    }),
    ("nut_pairings", || written(&nut_grades::NutPairing::all())),
    ("head_marks", || written(&head_marks::HeadMark::all())),
    ("design_stresses_inch", || {
        written(&strengths::DesignStress::all_inch())
    }),
    ("design_stresses_metric", || {
        written(&strengths::DesignStress::all_metric())
    }),
    ("nut_factors", || written(&friction::NutFactorRow::all())),
    ("friction_classes", || {
        written(&friction::FrictionClassRow::all())
    }),
    ("tightening_scatter", || {
        written(&tightening::TighteningScatter::all())
    }),
    ("prevailing_torques_inch", || {
        written(&locking::PrevailingTorque::all_inch())
    }),
    ("prevailing_torques_metric", || {
        written(&locking::PrevailingTorque::all_metric())
    }),
    ("ply_materials", || written(&plies::PlyMaterial::all())),
    ("ply_strengths_metric", || {
        written(&plies::PlyStrength::all())
    }),
    ("ply_bearing_strengths", || {
        written(&plies::PlyBearing::all())
    }),
    ("timber", || written(&timber::Timber::all())),
    ("hex_bolts_inch", || written(&bolts::HexBolt::all())),
    ("structural_bolts_inch", || {
        written(&bolts::StructuralBolt::all_inch())
    }),
    ("structural_bolts_metric", || {
        written(&bolts::StructuralBolt::all_metric())
    }),
    ("hr_bolts", || written(&hr_bolts::HrBolt::all())),
    ("hex_cap_screws_metric", || {
        written(&metric_screws::MetricHexCapScrew::all())
    }),
    ("hex_screws_metric_fine", || {
        written(&metric_screws::FineHexScrew::all())
    }),
    ("socket_head_cap_screws_inch", || {
        written(&sockets::SocketHeadCapScrew::all_inch())
    }),
    ("socket_head_cap_screws_metric", || {
        written(&sockets::SocketHeadCapScrew::all_metric())
    }),
    ("aircraft_bolts", || written(&aircraft::AircraftBolt::all())),
    ("aircraft_bolt_grips", || {
        written(&aircraft::AircraftGripRow::all())
    }),
    ("aircraft_torques", || {
        written(&aircraft_torque::AircraftTorque::all())
    }),
    ("anodic_indices", || written(&galvanic::AnodicIndex::all())),
    ("pretensions_inch", || {
        written(&pretension::Pretension::all_inch())
    }),
    ("pretensions_metric", || {
        written(&pretension::Pretension::all_metric())
    }),
    ("expansions", || written(&expansion::Expansion::all())),
    ("surface_pressures", || {
        written(&surface::SurfacePressure::all())
    }),
    ("hot_yields", || written(&heat::HotYield::all())),
    ("washer_hardnesses", || {
        written(&washer_rules::WasherHardness::all())
    }),
    ("washer_rules", || written(&washer_rules::WasherRule::all())),
    ("washers_inch", || washers(washers::Washer::all_inch())),
    ("washers_metric", || washers(washers::Washer::all_metric())),
];

/// The rows of a table, or without a name the names there are.
pub fn tables(request: &[u8]) -> Result<Vec<u8>, Refusal> {
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Asked {
        table: Option<String>,
    }
    let Asked { table } = read(request)?;
    let names = || TABLES.iter().map(|(name, _)| *name).collect::<Vec<_>>();
    let Some(table) = table else {
        return written(&names());
    };
    match TABLES.iter().find(|(name, _)| *name == table) {
        Some((_, rows)) => rows(),
        None => Err(Refusal::from(Error::UnknownName {
            what: "table",
            text: table,
            known: names().join(", "),
        })
        .in_field("table")),
    }
}

/// The library writes a washer as its name alone, from which it finds the row again; here it is the row that is asked for.
fn washers(rows: &'static [washers::Washer]) -> Result<Vec<u8>, Refusal> {
    #[derive(Serialize)]
    struct Row {
        standard: &'static str,
        style: washers::WasherStyle,
        size: &'static str,
        nominal_diameter: Amount,
        inside_diameter_nominal: Option<Amount>,
        inside_diameter_max: Option<Amount>,
        inside_diameter_min: Option<Amount>,
        outside_diameter_nominal: Option<Amount>,
        outside_diameter_max: Option<Amount>,
        outside_diameter_min: Option<Amount>,
        thickness_nominal: Option<Amount>,
        thickness_max: Option<Amount>,
        thickness_min: Option<Amount>,
        section_width_min: Option<Amount>,
        note: Option<&'static str>,
        limits_basis: Option<Basis>,
        provenance: Provenance,
    }
    let amount = |length: Option<Length>| length.map(Amount::from);
    let row = |own: &washers::Washer| Row {
        standard: own.standard,
        style: own.style,
        size: own.size,
        nominal_diameter: own.nominal_diameter.into(),
        inside_diameter_nominal: amount(own.inside_diameter_nominal),
        inside_diameter_max: amount(own.inside_diameter_max),
        inside_diameter_min: amount(own.inside_diameter_min),
        outside_diameter_nominal: amount(own.outside_diameter_nominal),
        outside_diameter_max: amount(own.outside_diameter_max),
        outside_diameter_min: amount(own.outside_diameter_min),
        thickness_nominal: amount(own.thickness_nominal),
        thickness_max: amount(own.thickness_max),
        thickness_min: amount(own.thickness_min),
        section_width_min: amount(own.section_width_min),
        note: own.note,
        limits_basis: own.limits_basis,
        provenance: own.provenance,
    };
    written(&rows.iter().map(row).collect::<Vec<Row>>())
}
