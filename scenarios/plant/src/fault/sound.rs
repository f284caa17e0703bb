//! Taking a fault out of a house again, so that another can be tried in its place.

use quantity::{Constant, Kelvins, Tag, Temperature, Volts};

use crate::home::Home;
use crate::parts::{Contact, Gasket, SOUND_JOINT, Spot};
use crate::points::End;
use crate::supply::{Circuit, Handle, ServiceKind};
use crate::waterworks::DipTube;

quantity::constants! {
    /// Factory setting of the dials.
    const FACTORY_DIAL: Constant<Temperature> = Constant::of(
        "factory setting of the dials",
        Temperature::fahrenheit(120.0),
        Tag::Published("two owner's manuals of storage water heaters, thermostat setting"),
    );
    /// Leg to leg on two legs of a wye service.
    const WYE: Constant<Volts> = Constant::of(
        "leg to leg on two legs of a wye service",
        Volts(208.0),
        Tag::Published("ANSI C84.1, nominal system voltages: 208Y/120 V"),
    );
}

impl Home {
    /// Makes every part sound and every setting ordinary. Water, temperatures, pressures and time stay as
    /// they are: this is the same house at the same moment, had nothing been wrong with it.
    pub fn make_sound(&mut self) {
        let plant = &mut self.plant;
        self.demand = 1.0;
        for element in &mut plant.elements {
            element.open = false;
            element.leak = None;
            element.damp = 0.0;
            element.scorched = false;
            element.gasket = Gasket::sound();
        }
        for thermostat in &mut plant.thermostats {
            thermostat.dial = FACTORY_DIAL.get();
            thermostat.stuck = None;
            thermostat.cold_contact = Contact::Sound;
            thermostat.hot_contact = Contact::Sound;
            thermostat.cold_spot = Spot::default();
            thermostat.hot_spot = Spot::default();
            thermostat.seated = true;
            thermostat.grip = 1.0;
            thermostat.drift = Kelvins(0.0);
        }
        plant.limit.tripped = false;
        plant.limit.poles = [Contact::Sound; 2];
        plant.limit.spots = [Spot::default(); 2];
        plant.limit.welded = [false; 2];
        plant.limit.seated = true;
        plant.limit.grip = 1.0;
        for end in End::all() {
            let joint = plant.wiring.joint_mut(end);
            joint.resistance = SOUND_JOINT;
            joint.charred = false;
            joint.torqued = true;
        }
        for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
            breaker.handle = Handle::On;
            breaker.poles = [Contact::Sound; 2];
        }
        plant.vessel.dip_tube = DipTube::Whole;
        plant.vessel.shell_hole = 0.0;
        let at_208 = plant.plate.element.volts.near(WYE.get(), Volts(1.0));
        plant.service.kind = if at_208 { ServiceKind::Wye208 } else { ServiceKind::Split240 };
        plant.plumbing.closed = false;
    }
}
