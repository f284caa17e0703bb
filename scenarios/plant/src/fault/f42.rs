//! Colder water comes in than this town usually has: a main that lies shallow under frozen ground. The heater is
//! sound; each gallon asks for more, and showers are longer in winter.

use quantity::{Constant, Kelvins, Tag, Temperature};

use super::{
    Advice, Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight,
};
use crate::home::Home;

quantity::constants! {
    /// The first and the last day of the cold season.
    const WINTER: Constant<(u16, u16)> =
        Constant::new("last and first day of the cold season", (90, 320), "d", Tag::Model("mid November to the end of March"));
    /// How far the street's water has to lie above the cold main's for anybody to notice.
    const WARMER: Constant<Kelvins> = Constant::of(
        "usual inlet above that of a cold main",
        Kelvins::fahrenheit(5.0),
        Tag::Model("a thermometer tells it, and so does a long shower"),
    );
    /// How far above a cold main a town's usual winter inlet may lie: no ground freezes in a warm one.
    const NEAR: Constant<Kelvins> = Constant::of(
        "usual inlet above that of a cold main, at most",
        Kelvins::fahrenheit(17.0),
        Tag::Model("towns with frost"),
    );
    /// The warmest of the cold mains.
    const WARMEST: Constant<Temperature> =
        Constant::of("warmest inlet that is called cold", Temperature::fahrenheit(45.0), Tag::CommonPractice);
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F42,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[
        Parameter::between("inlet", [38.0, 45.0], "°F", Tag::CommonPractice),
        Parameter::between("demand", [1.1, 1.2], "times", Tag::Invented("longer showers in winter")),
    ],
    // Weather, not wear.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::ColdMain)],
    scope: Scope::Words,
    tempting: PartKind::LowerElement,
};

fn fits(home: &Home) -> bool {
    let (last, first) = WINTER.get();
    let cold = home.setting.day <= last || home.setting.day >= first;
    let over = home.setting.climate.mains(home.setting.day).above(WARMEST.get());
    cold && over >= WARMER.get() && over <= NEAR.get()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.inlet = Temperature::fahrenheit(parameter(parameters, "inlet"));
    home.demand = parameter(parameters, "demand");
}

/// The water comes in far colder than this town's does on this day.
pub(super) fn is_cold(home: &Home) -> bool {
    let usual = home.setting.climate.mains(home.setting.day);
    usual.above(home.plant.plumbing.inlet) > Kelvins(WARMER.get().get() / 2.0)
}
