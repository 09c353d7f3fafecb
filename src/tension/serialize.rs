//! Results that can carry cautions, as data: their fields, and the cautions, which are worked out only
//! when asked for.

use serde::{Serialize, Serializer, ser::SerializeStruct};

use super::{BoltStiffness, LoadShare, MachineDesignFatigue, MemberStiffness, VdiFatigueStrength};
use crate::units::quantity::AsRounded;

impl Serialize for BoltStiffness {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("BoltStiffness", 4)?;
        object.serialize_field("method", &self.method)?;
        object.serialize_field("segments", &self.segments)?;
        object.serialize_field("stiffness", &AsRounded(self.stiffness))?;
        object.serialize_field("cautions", &self.cautions())?;
        object.end()
    }
}

impl Serialize for MemberStiffness {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("MemberStiffness", 4)?;
        object.serialize_field("method", &self.method)?;
        object.serialize_field("members", &self.members)?;
        object.serialize_field("stiffness", &AsRounded(self.stiffness))?;
        object.serialize_field("cautions", &self.cautions())?;
        object.end()
    }
}

impl Serialize for LoadShare {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("LoadShare", 6)?;
        object.serialize_field("bolt", &self.bolt.map(AsRounded))?;
        object.serialize_field("members", &self.members.map(AsRounded))?;
        object.serialize_field("constant", &self.constant.value)?;
        object.serialize_field("introduction", &self.introduction)?;
        object.serialize_field("share", &self.share.value)?;
        object.serialize_field("cautions", &self.cautions())?;
        object.end()
    }
}

impl Serialize for MachineDesignFatigue {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("MachineDesignFatigue", 7)?;
        object.serialize_field("criterion", &self.criterion)?;
        object.serialize_field("strengths", &self.strengths)?;
        object.serialize_field("stress", &self.stress)?;
        object.serialize_field("strength_amplitude", &AsRounded(self.strength_amplitude))?;
        object.serialize_field("strength_mean", &AsRounded(self.strength_mean))?;
        object.serialize_field("factor", &self.factor)?;
        object.serialize_field("cautions", &self.cautions())?;
        object.end()
    }
}

impl Serialize for VdiFatigueStrength {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut object = serializer.serialize_struct("VdiFatigueStrength", 5)?;
        object.serialize_field("diameter", &AsRounded(self.diameter))?;
        object.serialize_field("thread", &self.thread)?;
        object.serialize_field("cycles", &self.cycles)?;
        object.serialize_field("amplitude", &AsRounded(self.amplitude))?;
        object.serialize_field("cautions", &self.cautions())?;
        object.end()
    }
}
