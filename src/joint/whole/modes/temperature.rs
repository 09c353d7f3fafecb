//! Heat and cold beyond what the parts are specified for.

use crate::joint::whole::Finding;
use crate::joint::whole::case::Case;
use crate::joint::whole::outcome::Outcomes;
use crate::material::BoltGrade;
use crate::strength::check::Mode;
use crate::tables::locking::{ServiceTemperature, TemperatureLimited};

pub(super) fn check(case: &Case, out: &mut Outcomes) {
    out.in_order(Mode::Temperature);
    let environment = &case.joint.environment;
    let (element, publisher) = match case.joint.bolt.grade {
        BoltGrade::Iso(_) => (TemperatureLimited::Iso898Steel, "ISO 898"),
        BoltGrade::Stainless(_) => (TemperatureLimited::Iso3506Stainless, "ISO 3506"),
        _ => (TemperatureLimited::LowAlloySteel, "NASA RP-1228"),
    };
    let Some(row) = ServiceTemperature::latest(element, publisher) else {
        return;
    };
    if let Some(limit) = row
        .temperature_max
        .filter(|&limit| environment.hottest > limit)
    {
        out.find(Finding::BoltTooHot { limit });
    }
    if let Some(limit) = row
        .temperature_min
        .filter(|&limit| environment.coldest < limit)
    {
        out.find(Finding::BoltTooCold { limit });
    }
}
