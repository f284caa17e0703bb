//! Dip tube broken off or gone. Cold water enters at the top and mixes with what leaves, so it is hot for a
//! moment only while the bottom of the tank is still hot.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::waterworks::DipTube;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F37,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[Parameter::either("missing", "0 broken, 1 missing")],
    stages: Stages::Late("missing"),
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
    let missing = chosen(parameters, "missing");
    home.plant.vessel.dip_tube = if missing { DipTube::Missing } else { DipTube::Broken };
}
