//! A limit off the shell, and a thermostat that runs away. The limit's body lags so far behind the water that the
//! relief valve opens first. Alone neither would be what it is.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F70,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[Parameter::between(
        "grip",
        [0.0, 0.1],
        "of its plate touches",
        Tag::Model("bracket sprung: at 210 °F of water its body has not reached 170 °F"),
    )],
    // A bracket sprung and a weld.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::ReplaceAll(&[PartKind::UpperThermostat, PartKind::Limit])],
    scope: Scope::HeaterParts,
    tempting: PartKind::ReliefValve,
};

/// A board watches the water by itself.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let limit = &mut home.plant.limit;
    limit.grip = parameter(parameters, "grip");
    limit.seated = false;
    home.plant.thermostats[Level::Upper.index()].stuck = Some(true);
}
