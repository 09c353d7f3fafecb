// Written by tests/tables_are_current.rs from tables/ply_surface_pressures.csv. Not edited by hand.

use super::sources;
use crate::source::Basis;
use crate::tables::known;
use crate::tables::surface::{Kinship, PlySurfacePressure, PressureEdition};

pub(in crate::tables) static PLY_SURFACE_PRESSURES: [PlySurfacePressure; 20] = [
    PlySurfacePressure { ply: "ASTM A36 steel", material: "S235JRG1 (USt 37-2, 1.0036)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("A36 is at least 58 ksi (400 MPa) strong, S235 340 MPa"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "ASTM A36 steel", material: "St 37", edition: PressureEdition::Vdi2230_1986, kinship: Kinship::Kin, note: Some("about half of what the edition of 2003 gives"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "ASTM A992 steel", material: "S235JRG1 (USt 37-2, 1.0036)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("65 ksi (448 MPa) lies below E295 (470 MPa) and S355 (510 MPa)"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "ASTM A992 steel", material: "St 37", edition: PressureEdition::Vdi2230_1986, kinship: Kinship::Kin, note: Some("about half of what the edition of 2003 gives"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "6061-T6 aluminium, typical", material: "AlMgSi1 F28 (3.2315.61)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("AW-6082 in its weaker condition: minima of 6061-T6 are 260 to 290 MPa"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "6061-T6 aluminium, A-basis", material: "AlMgSi1 F28 (3.2315.61)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("AW-6082 in its weaker condition: 42 ksi is 290 MPa, a hair below the stronger one"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "7075-T6 aluminium", material: "AlZnMgCu1.5 (AW-7075)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Same, note: None, provenance: known(&sources::VDI2230_2003_A9, Basis::Reproduced) },
    PlySurfacePressure { ply: "ductile iron 60-40-18", material: "GJS-400-15 (GGG-40)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("60 ksi is 414 MPa"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "ductile iron 65-45-12", material: "GJS-400-15 (GGG-40)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("65 ksi (448 MPa) lies below GJS-500-7"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "ductile iron 80-55-06", material: "GJS-500-7 (GGG-50)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("80 ksi is 552 MPa"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "grey cast iron class 30", material: "GG 15", edition: PressureEdition::Vdi2230_1986, kinship: Kinship::Kin, note: Some("30 ksi (207 MPa) lies below GG 25; the edition of 2003 lists no weaker iron than GJL-250"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "Ti-6Al-4V", material: "TiAl6V4 (3.7165.10)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Same, note: None, provenance: known(&sources::VDI2230_2003_A9, Basis::Reproduced) },
    PlySurfacePressure { ply: "S235 steel", material: "S235JRG1 (USt 37-2, 1.0036)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("S235 of EN 10025-2 has at least 360 MPa up to 100 mm and 340 MPa up to 250 mm, the listed steel 340 MPa"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "S275 steel", material: "S235JRG1 (USt 37-2, 1.0036)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("410 MPa lies below E295 (470 MPa)"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "S355 steel", material: "E295 (St 50-2, 1.0050)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("S355 of EN 10025-2 has at least 470 MPa up to 100 mm, under the 510 MPa that the guideline gives S355J0"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "EN-GJS-400-15 ductile iron", material: "GJS-400-15 (GGG-40)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Same, note: None, provenance: known(&sources::VDI2230_2003_A9, Basis::Reproduced) },
    PlySurfacePressure { ply: "EN-GJS-450-10 ductile iron", material: "GJS-400-15 (GGG-40)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("450 MPa lies below GJS-500-7"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
    PlySurfacePressure { ply: "EN-GJS-500-7 ductile iron", material: "GJS-500-7 (GGG-50)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Same, note: None, provenance: known(&sources::VDI2230_2003_A9, Basis::Reproduced) },
    PlySurfacePressure { ply: "EN-GJS-600-3 ductile iron", material: "GJS-600-3 (GGG-60)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Same, note: None, provenance: known(&sources::VDI2230_2003_A9, Basis::Reproduced) },
    PlySurfacePressure { ply: "EN-GJS-700-2 ductile iron", material: "GJS-600-3 (GGG-60)", edition: PressureEdition::Vdi2230_2003, kinship: Kinship::Kin, note: Some("the guideline lists no stronger iron"), provenance: known(&sources::SURFACE_KIN, Basis::Computed) },
];
