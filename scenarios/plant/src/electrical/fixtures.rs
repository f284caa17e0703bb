//! Plants that tests start from.

use quantity::{Amps, Kelvins, Metres, Ohms, Pressure, Seconds, Temperature, Volts, Volume};

use super::Bridge;
use crate::supply::{Breaker, Circuit, Panel, Service, ServiceKind};
use crate::waterworks::{DipTube, Plumbing, ReliefValve, Vessel};
use crate::{Contact, Element, End, HeaterModel, Limit, Plant, Point, Screw, Thermostat, Wire, Wiring};

/// Resistance of a 10 MΩ voltmeter (trade sheet 1.6).
pub(crate) const METER: Ohms = Ohms(10e6);
/// Resistance of a low-impedance voltmeter (trade sheet 1.6).
pub(crate) const LOW: Ohms = Ohms(3e3);

/// A healthy, cold 40-gallon heater, closed in, on 240 V.
pub(crate) fn plant() -> Plant {
    let plate = HeaterModel::Plain40.plate();
    let dial = Temperature::fahrenheit(120.0);
    let tank = solver::tank::Tank::of_volume(plate.content().get(), plate.height.get()).unwrap();
    Plant {
        plate,
        service: Service { kind: ServiceKind::Split240, leg: Volts(120.0), impedance: Ohms(0.02) },
        panel: Panel { breakers: vec![Breaker::sound(Circuit::Heater, Amps(30.0))] },
        wiring: Wiring::factory(false),
        elements: [Element::sound(plate.element); 2],
        thermostats: [15.0, 10.0].map(|d| Thermostat::sound(dial, Kelvins::fahrenheit(d))),
        limit: Limit::sound(Temperature::celsius(20.0)),
        insulated: [true; 2],
        cable_coupling: 0.0,
        vessel: Vessel { dip_tube: DipTube::Whole, shell_hole: 0.0, sediment: Volume(0.0) },
        tank: tank.full_at(15.0),
        plumbing: Plumbing {
            main: Pressure::psi(60.0),
            closed: false,
            inlet: Temperature::celsius(12.0),
            cold_valve: 1.0,
            taps: [0.0; 4],
            drain_valve: 0.0,
            hose: false,
            relief: ReliefValve {
                opens_at: Pressure::psi(150.0),
                opens_hot: Temperature::fahrenheit(210.0),
                open: false,
                lever: false,
                weep: 0.0,
            },
            expansion: None,
            pressure: Pressure::psi(60.0),
            peak: Pressure::psi(60.0),
            on_floor: Volume(0.0),
        },
        room: Temperature::celsius(20.0),
        clock: Seconds(0.0),
    }
}

/// The same on stiff legs, with wires, joints and breaker as good as ideal: the case behind the trade
/// sheet's computed tables, where only the heater's own contacts have their 5 mΩ.
pub(crate) fn stiff() -> Plant {
    let mut plant = plant();
    plant.service.impedance = Ohms(0.0);
    Wire::ALL.iter().for_each(|wire| *plant.wiring.length_mut(*wire) = Metres(0.0));
    End::all().for_each(|end| plant.wiring.joint_mut(end).resistance = Ohms(0.0));
    plant.panel.breakers[0].poles = [Contact::Worn(Ohms(0.0)); 2];
    plant
}

/// The stiff one with contacts as good as ideal too: for figures of V²/R alone.
pub(crate) fn ideal() -> Plant {
    let mut plant = stiff();
    plant.limit.poles = [Contact::Worn(Ohms(0.0)); 2];
    for thermostat in &mut plant.thermostats {
        thermostat.cold_contact = Contact::Worn(Ohms(0.0));
        thermostat.hot_contact = Contact::Worn(Ohms(0.0));
    }
    plant
}

/// Sets both blades: upper calling, lower calling.
pub(crate) fn blades(plant: &mut Plant, upper: bool, lower: bool) {
    plant.thermostats[0].calling = upper;
    plant.thermostats[1].calling = lower;
}

/// Voltage between two screws as a meter shows it, the meter in the circuit.
pub(crate) fn reading(plant: &Plant, a: impl Into<Point>, b: impl Into<Point>, meter: Ohms) -> f64 {
    let (a, b) = (a.into(), b.into());
    plant.energise(&[Bridge { a, b, resistance: meter }]).volts(a, b).get()
}

/// Asserts that a number lies within a tolerance.
#[track_caller]
pub(crate) fn near(value: f64, expected: f64, tolerance: f64) {
    assert!((value - expected).abs() <= tolerance, "{value} is not {expected} ± {tolerance}");
}

/// Lifts a wire's end off its screw.
pub(crate) fn lift(plant: &mut Plant, wire: Wire, screw: Screw) {
    let side = wire.home().iter().position(|home| *home == screw).unwrap() as u8;
    plant.wiring.joint_mut(End { wire, side }).on = None;
}
