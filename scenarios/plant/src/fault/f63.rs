//! A house shut up for the winter: breaker off, tank drained. The people have come home and opened the valve, and no
//! water comes, for the pipe in the outer wall is frozen. Power stays off until it is thawed and the tank full.

use quantity::{Constant, Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::supply::Handle;

quantity::constants! {
    /// Outdoor air that freezes a pipe in a wall.
    const FREEZES: Constant<Temperature> =
        Constant::of("outdoor air that freezes a pipe in a wall", Temperature::fahrenheit(20.0), Tag::CommonPractice);
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F63,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[Parameter::between("away", [20.0, 60.0], "d", Tag::Invented("a winter somewhere warm"))],
    // Frozen and drained.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::ThawAndFill],
    scope: Scope::Piping,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.setting.climate.outdoors(home.setting.day) <= FREEZES.get()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.away = parameter(parameters, "away") as u16;
    let plant = &mut home.plant;
    plant.empty_vessel();
    plant.plumbing.frozen = true;
    for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds_heater()) {
        breaker.handle = Handle::Off;
    }
}
