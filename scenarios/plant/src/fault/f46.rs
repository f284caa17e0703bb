//! The pressure regulator holds nothing back: the house stands at the street's pressure, far above 80 psi, and each
//! heat-up takes it to the relief valve.

use quantity::{Constant, Pressure, Tag, Volume};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::waterworks::{ExpansionTank, Regulator};

quantity::constants! {
    /// What the regulator was set to, and the tank charged with.
    const SET: Constant<Pressure> = Constant::of("setting of a regulator", Pressure::psi(55.0), Tag::CommonPractice);
    /// The expansion tank that came with it.
    const TANK: Constant<Volume> =
        Constant::of("expansion tank beside a regulator", Volume::gallons(4.4), Tag::CommonPractice);
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F46,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::between(
        "psi",
        [110.0, 135.0],
        "psi",
        Tag::Model("a street at the foot of a hill"),
    )],
    // Drawn holding nothing back; its number is the street's pressure.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Regulator)],
    scope: Scope::Piping,
    tempting: PartKind::ReliefValve,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let plumbing = &mut home.plant.plumbing;
    plumbing.main = Pressure::psi(parameter(parameters, "psi"));
    plumbing.regulator = Some(Regulator { stuck_open: true, ..Regulator::sound(SET.get()) });
    plumbing.closed = true;
    plumbing.expansion = Some(ExpansionTank { volume: TANK.get(), charge: SET.get(), waterlogged: false });
}
