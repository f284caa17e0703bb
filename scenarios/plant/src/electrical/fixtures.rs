//! Plants that tests start from.

use quantity::{Amps, Metres, Ohms, Temperature};

use super::Bridge;
use crate::climate::Climate;
use crate::home::Setting;
use crate::household::HouseholdKind;
use crate::supply::{Breaker, Circuit, Panel};
use crate::{Contact, End, HeaterModel, Limit, Plant, Point, Screw, Thermostat, Wire};

/// Resistance of a 10 MΩ voltmeter (trade sheet 1.6).
pub(crate) const METER: Ohms = Ohms(10e6);
/// Resistance of a low-impedance voltmeter (trade sheet 1.6).
pub(crate) const LOW: Ohms = Ohms(3e3);

thread_local! {
    /// Stray capacitance of a lead in place of the usual one, F.
    pub(crate) static STRAY: std::cell::Cell<Option<f64>> = const { std::cell::Cell::new(None) };
}

/// A healthy, cold 40-gallon heater, closed in, on 240 V.
pub(crate) fn plant() -> Plant {
    let heater = HeaterModel::Plain40;
    let household = HouseholdKind::Couple;
    let mut plant = Plant::sound(Setting {
        heater,
        household,
        climate: Climate::MillValley,
        day: 100,
        in_line: None,
        location: Default::default(),
    });
    plant.service.impedance = [Ohms(0.02); 2];
    plant.service.neutral = Ohms(0.02);
    plant.service.loads = crate::supply::Loads::NONE;
    plant.panel = Panel { breakers: vec![Breaker::sound(Circuit::Heater, Amps(30.0))] };
    plant.beside_live = Metres(0.0);
    plant.thermostats.iter_mut().for_each(|t| *t = Thermostat::sound(t.dial, t.differential));
    plant.limit = Limit::sound(Temperature::celsius(20.0));
    let plate = plant.plate;
    let tank = solver::tank::Tank::of_volume(plate.content().get(), plate.height.get()).unwrap();
    plant.tank = tank.full_at(15.0);
    plant
}

/// The same on stiff legs, with wires, joints and breaker as good as ideal: the case behind the trade
/// sheet's computed tables, where only the heater's own contacts have their 5 mΩ.
pub(crate) fn stiff() -> Plant {
    let mut plant = plant();
    plant.service.impedance = [Ohms(0.0); 2];
    plant.service.neutral = Ohms(0.0);
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
    plant.energise(&[Bridge::ohms(a, b, meter)]).volts(a, b).get()
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
