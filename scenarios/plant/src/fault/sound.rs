//! Taking a fault out of a house again, so that another can be tried in its place.

use quantity::{Constant, Kelvins, Metres, Tag, Temperature, Volume};

use super::f25::THICKER;
use super::f69::corrected;
use crate::conductor::Metal;
use crate::controls::board::Board;
use crate::controls::limit::TRIP;
use crate::controls::thermostat::{LOWER_DIFFERENTIAL, UPPER_DIFFERENTIAL};
use crate::home::Home;
use crate::in_line::InLineBox;
use crate::parts::{Contact, Gasket, Limit, SOUND_JOINT, Scale, Spot};
use crate::points::End;
use crate::supply::{Handle, Service, Stab};
use crate::waterworks::{ExpansionTank, HeatTraps, MixingValve, Recirculation, Regulator, Vessel};
use crate::wire::Wire;

quantity::constants! {
    /// Factory setting of the dials.
    const FACTORY_DIAL: Constant<Temperature> = Constant::of(
        "factory setting of the dials",
        Temperature::fahrenheit(120.0),
        Tag::Published("two owner's manuals of storage water heaters, thermostat setting"),
    );
    /// A supply further off the plate than this is another supply.
    const FAR_OFF: Constant =
        Constant::new("supply of another kind, off the plate", 0.10, "", Tag::Model("208 V is 13 % below 240 V"));
}

impl Home {
    /// Makes every part sound and every setting ordinary. Water, temperatures, pressures and time stay as
    /// they are: this is the same house at the same moment, had nothing been wrong with it.
    pub fn make_sound(&mut self) {
        self.plant.plumbing.dew_point = super::f53::usual(self);
        if super::f42::is_cold(self) {
            self.plant.plumbing.inlet = self.setting.climate.mains(self.setting.day);
        }
        let plant = &mut self.plant;
        self.demand = 1.0;
        if plant.beside_live > super::f64::LONG_RUN.get() {
            plant.beside_live = crate::build::TIDY.get();
        }
        plant.films = Default::default();
        for element in &mut plant.elements {
            element.open = false;
            element.parting = None;
            element.stamp = plant.plate.element;
            element.length = plant.plate.length;
            if element.is_shorted() {
                element.tolerance = 1.0;
            }
            element.leak = None;
            element.damp = 0.0;
            element.scale = Scale::of(Metres(0.0));
            element.scorched = false;
            element.gasket = Gasket::sound();
        }
        for thermostat in &mut plant.thermostats {
            thermostat.dial = FACTORY_DIAL.get();
            thermostat.stuck = None;
            thermostat.cold_contact = Contact::Sound;
            thermostat.hot_contact = Contact::Sound;
            thermostat.fickle = None;
            thermostat.cold_spot = Spot::default();
            thermostat.hot_spot = Spot::default();
            thermostat.seated = true;
            thermostat.grip = 1.0;
            thermostat.drift = Kelvins(0.0);
            thermostat.offset = Kelvins(0.0);
        }
        let [upper, lower] = &mut plant.thermostats;
        (upper.differential, lower.differential) = (UPPER_DIFFERENTIAL, LOWER_DIFFERENTIAL);
        plant.limit.tripped = false;
        plant.limit.trip = TRIP.get();
        plant.limit.poles = [Contact::Sound; 2];
        plant.limit.spots = [Spot::default(); 2];
        plant.limit.welded = [false; 2];
        plant.limit.seated = true;
        plant.limit.grip = 1.0;
        plant.board = plant.board.map(|board| Board { powered: board.powered, ..Board::sound() });
        if let Some(limit) = &mut plant.lower_limit {
            *limit = Limit::sound(limit.body);
        }
        if let Some(fitted) = &mut plant.in_line {
            let InLineBox { kind, rating, locked, tagged, .. } = *fitted;
            *fitted = InLineBox { locked, tagged, ..InLineBox::sound(kind, rating) };
            fitted.set_clock(plant.clock);
        }
        if let Some(relay) = &mut plant.off_peak {
            *relay = InLineBox::off_peak(relay.rating);
            relay.set_clock(plant.clock);
        }
        for end in End::all() {
            let joint = plant.wiring.joint_mut(end);
            joint.on = Some(end.home());
            joint.resistance = SOUND_JOINT;
            joint.charred = false;
            joint.torqued = true;
            if joint.on.is_some_and(|on| on != end.home()) {
                joint.on = Some(end.home());
            }
        }
        for &wire in Wire::ALL {
            let conductor = plant.wiring.conductor_mut(wire);
            if conductor.creeps() {
                conductor.metal = Metal::Copper;
                conductor.rated = true;
                conductor.awg += THICKER.get() as u8;
            }
        }
        corrected(&mut plant.panel);
        for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds_heater()) {
            breaker.handle = Handle::On;
            breaker.poles = [Contact::Sound; 2];
            breaker.holds = 1.0;
        }
        plant.vessel = Vessel::sound();
        plant.as_it_stands();
        let service = &mut plant.service;
        let (across, plate) = (service.across().get(), plant.plate.element.volts.get());
        // A supply the plate does not name: the house would have been wired for the plate.
        if (across - plate).abs() > FAR_OFF.get() * plate {
            service.kind = plant.plate.supply();
        }
        let sound = Service::sound(service.kind);
        service.impedance = sound.impedance;
        service.neutral = sound.neutral;
        for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds_heater() && !b.is_single()) {
            (breaker.stabs, breaker.tandem) = ([Some(Stab::One), Some(Stab::Two)], None);
        }
        let plumbing = &mut plant.plumbing;
        plumbing.closed = false;
        plumbing.regulator = plumbing.regulator.map(|regulator| Regulator::sound(regulator.set));
        plumbing.expansion = plumbing.expansion.map(|tank| ExpansionTank { waterlogged: false, ..tank });
        plumbing.mixing = plumbing.mixing.map(|valve| MixingValve { seized: None, ..valve });
        plumbing.fixtures = Default::default();
        plumbing.recirculation =
            plumbing.recirculation.map(|r| Recirculation { pump: false, check: true, ..r });
        plumbing.tight = Metres(0.0);
        plumbing.frozen = false;
        plumbing.hydrogen = Volume(0.0);
        plumbing.reversed = false;
        plumbing.traps = HeatTraps::SOUND;
        plumbing.relief.weep = 0.0;
        plumbing.relief.grit = 0.0;
        for leak in [
            &mut plumbing.hot_leak,
            &mut plumbing.nipple_leak,
            &mut plumbing.drain_drip,
            &mut plumbing.drain_grit,
        ] {
            *leak = 0.0;
        }
        self.keep_handiwork();
    }
}
