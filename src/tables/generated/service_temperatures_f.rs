// Written by tests/tables_are_current.rs from tables/service_temperatures_f.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::optional;
use crate::tables::locking::{ServiceTemperature, TemperatureLimited};

pub(in crate::tables) static SERVICE_TEMPERATURES_F: [ServiceTemperature; 12] = [
    ServiceTemperature { element: TemperatureLimited::NonmetallicInsert, publisher: "FAA", temperature_min: None, temperature_max: optional::fahrenheit(250.0), note: Some("fibre or nylon inserts"), provenance: known(&sources::AC43_13_7_64, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::SelfLockingNut250F, publisher: "NASM25027", temperature_min: None, temperature_max: optional::fahrenheit(250.0), note: Some("the class of nylon inserts"), provenance: known(&sources::NASM25027_SCOPE, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::SelfLockingNut450F, publisher: "NASM25027", temperature_min: None, temperature_max: optional::fahrenheit(450.0), note: None, provenance: known(&sources::NASM25027_SCOPE, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::SelfLockingNut800F, publisher: "NASM25027", temperature_min: None, temperature_max: optional::fahrenheit(800.0), note: None, provenance: known(&sources::NASM25027_SCOPE, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::AnaerobicCompound, publisher: "US Army", temperature_min: optional::fahrenheit(-65.0), temperature_max: optional::fahrenheit(300.0), note: Some("cured compounds of usual grades; ask the maker"), provenance: known(&sources::TM10_3930_643_20, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::CadmiumPlating, publisher: "FAA", temperature_min: None, temperature_max: optional::fahrenheit(450.0), note: Some("above it cadmium diffuses into the steel and embrittles it"), provenance: known(&sources::AC43_13_PLATING, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::CadmiumPlating, publisher: "NASA RP-1228", temperature_min: None, temperature_max: optional::fahrenheit(450.0), note: None, provenance: known(&sources::RP1228, Basis::Reproduced) },
    ServiceTemperature { element: TemperatureLimited::CadmiumPlating, publisher: "NASA TM-106943", temperature_min: None, temperature_max: optional::fahrenheit(446.0), note: Some("lubricated and cadmium plated"), provenance: known(&sources::TM106943_CADMIUM, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::ZincPlating, publisher: "NASA RP-1228", temperature_min: None, temperature_max: optional::fahrenheit(250.0), note: None, provenance: known(&sources::RP1228_RECALLED, Basis::Memory) },
    ServiceTemperature { element: TemperatureLimited::SilverPlating, publisher: "FAA", temperature_min: None, temperature_max: optional::fahrenheit(1400.0), note: Some("lock nuts"), provenance: known(&sources::AC43_13_PLATING, Basis::Published) },
    ServiceTemperature { element: TemperatureLimited::LowAlloySteel, publisher: "NASA RP-1228", temperature_min: optional::fahrenheit(-65.0), temperature_max: None, note: Some("carbon and alloy steel turn brittle below about this"), provenance: known(&sources::RP1228, Basis::Reproduced) },
    ServiceTemperature { element: TemperatureLimited::AstmA193B7, publisher: "ASME B31.1", temperature_min: None, temperature_max: optional::fahrenheit(700.0), note: Some("allowable stress constant to it in sizes up to 4 in: a fraction of the tensile strength; the yield strength falls before"), provenance: known(&sources::B31_1_A10, Basis::Reproduced) },
];
