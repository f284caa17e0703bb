//! The expansion tank's bladder has burst. There is a tank, and it takes nothing up: each heat-up drives the pressure
//! to the relief valve, and water comes from the air valve.

use quantity::{Constant, Pressure, Tag, Volume};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::waterworks::ExpansionTank;

quantity::constants! {
    /// The expansion tank as it was fitted.
    const TANK: Constant<Volume> =
        Constant::of("expansion tank of a closed house", Volume::gallons(4.4), Tag::CommonPractice);
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F49,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[Parameter::between(
        "psi",
        [55.0, 78.0],
        "psi",
        Tag::Model("ordinary static pressure, below the 80 psi that asks for a regulator"),
    )],
    // Drawn burst only: a bladder takes up or it does not.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::ExpansionTank)],
    scope: Scope::Piping,
    tempting: PartKind::ReliefValve,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let plumbing = &mut home.plant.plumbing;
    plumbing.main = Pressure::psi(parameter(parameters, "psi"));
    plumbing.closed = true;
    plumbing.expansion = Some(ExpansionTank { volume: TANK.get(), charge: plumbing.main, waterlogged: true });
}
