//! A hot pipe held tight in its straps. It grows as it warms, slips and ticks, at the beginning of a draw and after
//! it. The other noise of this row of the trade sheet, the popping of a crusted element, is F41's.

use quantity::{Metres, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F57,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::between("metres", [2.5, 6.0], "m", Tag::Model("a run along a joist"))],
    // Laid too tight from the first day; its number is the length of the run.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::PipeClips)],
    scope: Scope::Piping,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.tight = Metres(parameter(parameters, "metres"));
}
