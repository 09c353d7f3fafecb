// Written by tests/tables_are_current.rs from tables/service_temperatures_c.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::locking::{ServiceTemperature, TemperatureLimited};

pub(in crate::tables) static SERVICE_TEMPERATURES_C: [ServiceTemperature; 11] = [
    ServiceTemperature { element: TemperatureLimited::NonmetallicInsert, publisher: "ISO 2320", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(120.0), note: None, provenance: known(&sources::ISO2320_1997, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::NonmetallicInsert, publisher: "ISO 2320", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(120.0), note: Some("use close to the limit can already lower the prevailing torque"), provenance: known(&sources::ISO2320_2008, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::NonmetallicInsert, publisher: "ISO 2320", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(120.0), note: None, provenance: known(&sources::ISO2320_2015, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::NonmetallicInsert, publisher: "DIN 985", temperature_min: None, temperature_max: optional::celsius(120.0), note: Some("low nuts; above it by agreement only"), provenance: known(&sources::DIN985_SCOPE, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::AllMetalNut, publisher: "ISO 2320", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(300.0), note: None, provenance: known(&sources::ISO2320_1997, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::AllMetalNut, publisher: "ISO 2320", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(150.0), note: None, provenance: known(&sources::ISO2320_2008, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::AllMetalNut, publisher: "ISO 2320", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(150.0), note: None, provenance: known(&sources::ISO2320_2015, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::Iso898Steel, publisher: "ISO 898", temperature_min: optional::celsius(-50.0), temperature_max: optional::celsius(150.0), note: Some("to +300 C only with the advice of a specialist"), provenance: known(&sources::ISO898_SCOPE, Basis::Reproduced) },
    ServiceTemperature { element: TemperatureLimited::Iso3506Stainless, publisher: "ISO 3506", temperature_min: optional::celsius(-20.0), temperature_max: optional::celsius(150.0), note: Some("in practice -196 to +300 C, by steel"), provenance: known(&sources::ISO3506_SCOPE, Basis::Reproduced) },
    ServiceTemperature { element: TemperatureLimited::SteelBoltFullStrength, publisher: "VDI 2230", temperature_min: None, temperature_max: optional::celsius(120.0), note: Some("above it the strengths at that temperature must be used"), provenance: known(&sources::VDI2230_SCOPE, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::Vdi2230Joint, publisher: "VDI 2230", temperature_min: optional::celsius(-40.0), temperature_max: optional::celsius(300.0), note: Some("steel bolts; no cold brittleness and no creep in that range"), provenance: known(&sources::VDI2230_SCOPE, Basis::Published) },
];
