//! Nothing is wrong but a measurement: somebody read volts on wires that were dead and called two parts bad. The
//! branch cable runs long beside a live one; its ghost volts vanish on a meter of low impedance.

use quantity::{Constant, Metres, Tag};

use super::{
    Advice, Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight,
};
use crate::home::Home;

quantity::constants! {
    /// A run beside a live cable that shows ghost volts by itself, whatever traps the house has.
    pub(super) const LONG_RUN: Constant<Metres> = Constant::of(
        "run beside a live cable that misleads",
        Metres(12.0),
        Tag::Model("longer than any house has that nobody measured wrong in"),
    );
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F64,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[Parameter::between("run", [13.0, 18.0], "m", Tag::Model("a bundle along the whole house"))],
    // Nothing is wrong.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::NothingWrong)],
    scope: Scope::Words,
    tempting: PartKind::UpperThermostat,
};

/// A leg and a neutral leave nothing to float.
fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.beside_live = Metres(parameter(parameters, "run"));
}
