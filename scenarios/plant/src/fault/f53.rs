//! Nothing leaks: the air around the heater is damp, and pipe and rim sweat while cold water comes in. Wiped dry with
//! the tank hot they stay dry.

use quantity::{Constant, Kelvins, Tag, Temperature};

use super::{
    Advice, Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight,
};
use crate::home::Home;

quantity::constants! {
    /// The warmest main on which damp air is sure to settle.
    const COLDEST: Constant<Temperature> =
        Constant::of("warmest main on which damp air settles", Temperature::fahrenheit(53.0), Tag::Model("5 °F below the driest of the damp air"));
    /// How far below the usual the air's dew point may lie and count as ordinary.
    const DAMPER: Constant<Kelvins> =
        Constant::of("dew point above the usual that is damp air", Kelvins(1.0), Tag::Model("not felt"));
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F53,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[Parameter::between(
        "dew",
        [58.0, 66.0],
        "°F",
        Tag::Model("a laundry that dries indoors, a shower without a fan"),
    )],
    // Weather and laundry, not wear.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::DampAir)],
    scope: Scope::Words,
    tempting: PartKind::Heater,
};

fn fits(home: &Home) -> bool {
    let inlet = home.setting.climate.mains(home.setting.day);
    inlet <= COLDEST.get() && usual(home) < inlet
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.dew_point = Temperature::fahrenheit(parameter(parameters, "dew"));
}

/// Dew point of the air in this house when nobody dries a laundry in it.
pub(super) fn usual(home: &Home) -> Temperature {
    crate::thermal::dew_point(home.setting.climate, home.setting.day)
}

/// The air is far damper than the season's.
pub(crate) fn is_damp(home: &Home) -> bool {
    home.plant.plumbing.dew_point.above(usual(home)) > DAMPER.get()
}
