//! Prying: how a flange that bends loads its bolts beyond their share.

mod aisc;
mod en;
mod thornton;

pub use aisc::{AiscBasis, AiscFlange, AiscPrying};
pub use en::{EnMode, EnTStub, EnTStubResistance, TStubBolts};
pub use thornton::{ThorntonPrying, thornton_prying};
