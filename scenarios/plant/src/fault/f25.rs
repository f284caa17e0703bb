//! An aluminium branch cable in connectors made for copper. The metal creeps with every heating, the joint loosens, drops
//! half a volt and more, and browns. Making it again in the same connector only begins the story anew.

use quantity::{Amps, Constant, Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, parameter, weight,
};
use crate::conductor::Metal;
use crate::home::Home;
use crate::points::End;

quantity::constants! {
    /// Gauges that aluminium has to be thicker than copper, in steps of AWG.
    pub(super) const THICKER: Constant<usize> =
        Constant::new("aluminium for copper, AWG numbers thicker", 2, "", Tag::Memory("NEC table 310.16: 8 AWG aluminium for 10 AWG copper"));
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F25,
    module: module_path!(),
    weight: weight(4.0),
    parameters: &[
        Parameter::either("leg-of-joint", "0 first, 1 second"),
        Parameter::between(
            "watts",
            [5.0, 10.0],
            "W in the joint at first",
            Tag::Model("a quarter to half a volt at 18.75 A; it creeps to over half a volt within days"),
        ),
    ],
    // Its joint creeps on by itself within days: where it began is soon past.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Connectors)],
    scope: Scope::Panel,
    tempting: PartKind::Breaker,
};

fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let plant = &mut home.plant;
    let Amps(amps) = plant.plate.current();
    for wire in plant.wiring.feeders() {
        let conductor = plant.wiring.conductor_mut(wire);
        conductor.metal = Metal::Aluminium;
        conductor.rated = false;
        conductor.awg -= THICKER.get() as u8;
    }
    let wire = plant.wiring.feeders()[usize::from(chosen(parameters, "leg-of-joint"))];
    let joint = plant.wiring.joint_mut(End { wire, side: 1 });
    joint.resistance = Ohms(parameter(parameters, "watts") / (amps * amps));
    joint.charred = true;
}
