//! Dip tube broken off or gone. Cold water enters at the top and mixes with what leaves, so it is hot for a
//! moment only while the bottom of the tank is still hot.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, parameter};
use crate::home::Home;
use crate::waterworks::DipTube;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F37,
    weight: 20.0,
    tag: Tag::CommonPractice,
    parameters: &[Parameter {
        name: "missing",
        low: 0.0,
        high: 1.0,
        unit: "0 broken, 1 missing",
        logarithmic: false,
        whole: true,
    }],
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::DipTube)],
    scope: Scope::Piping,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let missing = parameter(parameters, "missing") >= 0.5;
    home.plant.vessel.dip_tube = if missing { DipTube::Missing } else { DipTube::Broken };
}
