//! The heater's breaker trips under an ordinary load: its bimetal has tired and its pole is worn, or a lug on it is loose
//! and warms it. Both legs carry their proper current, the elements are clear of ground, and one pole or lug drops far
//! more than its twin.

use quantity::{Amps, Constant, Ohms, Tag, det};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, parameter, weight,
};
use crate::controls::breaker;
use crate::home::Home;
use crate::parts::Contact;
use crate::points::End;
use crate::supply::Circuit;
use crate::wire::Wire;

quantity::constants! {
    /// What a tired breaker's worn pole turns into heat.
    const WORN_POLE: Constant =
        Constant::new("heat in the worn pole of a tired breaker", 8.0, "W", Tag::Model("0.43 V at 18.75 A, five times its twin's"));
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F20,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[
        Parameter::either("lug", "0 tired breaker, 1 loose lug"),
        Parameter::between(
            "ease",
            [1.3, 1.6],
            "of what trips it, at the plate's current",
            Tag::Model("trips after some 6 to 20 minutes of heating"),
        ),
        Parameter::between(
            "watts",
            [21.0, 28.0],
            "W in the lug",
            Tag::Model("hot enough to trip, not to burn off"),
        ),
    ],
    // A tired breaker or a loose lug, either drawn where it trips within minutes.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[
        Remedy::Replace(PartKind::Breaker),
        Remedy::Remake(&[End { wire: Wire::CableA, side: 0 }, End { wire: Wire::BoxA, side: 0 }]),
    ],
    scope: Scope::Panel,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    let plant = &home.plant;
    !plant.wiring.hot_neutral
        && plant.plate.layout.at_once() == 1
        && plant.panel.feeding(Circuit::Heater).is_some()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let plant = &mut home.plant;
    let Amps(amps) = plant.plate.current();
    if chosen(parameters, "lug") {
        let wire = if plant.wiring.boxed { Wire::BoxA } else { Wire::CableA };
        let joint = plant.wiring.joint_mut(End { wire, side: 0 });
        joint.resistance = Ohms(parameter(parameters, "watts") / (amps * amps));
        joint.torqued = false;
        joint.charred = true;
        return;
    }
    for one in plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
        // Heat goes with the third power of the current: `controls::breaker`.
        let third = det::pow(parameter(parameters, "ease").max(1.0), 1.0 / breaker::POWER.get());
        one.holds = amps / (breaker::HOLDS.get() * one.rating.get()) / third;
        one.poles[0] = Contact::Worn(Ohms(WORN_POLE.get() / (amps * amps)));
    }
}
