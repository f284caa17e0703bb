//! What an inspection of a whole house finds: everything that is not as it should be.

use quantity::{Constant, Kelvins, Metres, Ohms, Seconds, Tag, Temperature, Volume};
use serde::{Deserialize, Serialize};

use crate::controls::board::Sensor;
use crate::home::Home;
use crate::parts::{Contact, Level, Limit, SOUND_JOINT};
use crate::points::End;
use crate::supply::{Circuit, Handle};
use crate::waterworks::{DipTube, Fixture, SETTLED};

/// Something that is not as it should be. Found by looking at everything, which nobody on the job can.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
pub enum Defect {
    /// Coil broken.
    ElementOpen(Level),
    /// Coil touches the sheath.
    ElementGrounded(Level),
    /// Turns of the coil are shorted.
    ElementShorted(Level),
    /// Scale lies thick on the sheath.
    ElementCrusted(Level),
    /// Stamp differs from the plate.
    ElementRating(Level),
    /// The element's gasket leaks.
    GasketLeaks(Level),
    /// A contact or blade does not do what it should.
    Thermostat(Level),
    /// Not pressed against the shell.
    ThermostatLoose(Level),
    /// A pole of the limit is burnt.
    LimitPole,
    /// The limit trips far below its rating.
    LimitWeak,
    /// The limit is not pressed against the shell.
    LimitLoose,
    /// A sensor is open, shorted, or out of its plug.
    Sensor(Level),
    /// The limit is tripped.
    LimitTripped,
    /// A joint resists, is burnt or charred.
    Joint(End),
    /// A wire lies on a screw not its own.
    Miswired(End),
    /// A wire lies off its screw.
    Lifted(End),
    /// The shell is rusted through.
    ShellHole,
    /// The dip tube is not whole.
    DipTube,
    /// The anode rod is worn, or feeds bacteria.
    Anode,
    /// The relief valve weeps or is set above the tank's working pressure.
    ReliefValve,
    /// Expanding water has nowhere to go.
    NoExpansionRoom,
    /// The house stands above 80 psi.
    StaticPressure,
    /// The mixing valve has seized.
    MixingValve,
    /// A fixture crosses over, or its stop lets too much cold in.
    Cartridge,
    /// The drain valve drips or is clogged.
    DrainValve,
    /// A nipple leaks or lets too little through.
    Nipples,
    /// Hot and cold are swapped.
    Reversed,
    /// The hot line leaks.
    HotLine,
    /// A dial below 110 °F.
    DialLow(Level),
    /// A dial above 125 °F.
    DialHigh(Level),
    /// Dials more than 10 °F apart.
    DialsUnequal,
    /// A pole of the breaker does not make.
    BreakerPole,
    /// A fuse of the box in the line is melted or out of its clips.
    Fuse,
    /// Contacts of the box in the line do not make.
    BoxPole,
    /// A timer's clock is out.
    Clock,
    /// Both poles of the breaker sit on one leg.
    BreakerStab,
    /// Aluminium in a connector that is not made for it.
    Aluminium(End),
    /// A leg or the neutral of the service is not whole.
    Service,
    /// The directory calls the heater's breaker another.
    Mislabelled,
    /// The breaker does not suit the circuit.
    BreakerRating,
    /// No breaker of the heater is on.
    PowerOff,
    /// The supply is lower than the elements' stamp.
    LowSupply,
    /// The house asks for more than the heater was fitted for.
    Demand,
    /// Water comes in far colder than the town's.
    ColdMain,
    /// The board has locked heating out.
    LockedOut,
    /// The cable shows ghost volts.
    LongRun,
    /// Water bridges a live screw to the shell.
    WetCompartment(Level),
    /// Gas that burns stands in the lines.
    Gas,
    /// A pipe is frozen.
    Frozen,
    /// The tank is not full.
    NotFull,
    /// Sediment over the bottom.
    Sediment,
    /// A recirculation pump that should rest runs.
    Pump,
    /// The check valve of a loop does not shut.
    ReturnCheck,
    /// A hot pipe is held tight.
    TightPipe,
    /// The air around the heater is damp.
    DampAir,
}

quantity::constants! {
    /// Dial above which water is called too hot to leave.
    const HIGHEST_DIAL: Constant<Temperature> = Constant::of(
        "highest dial that an inspection passes",
        Temperature::fahrenheit(125.0),
        Tag::Model("120 °F and what the marks of a dial leave open"),
    );
    /// Dial below which water is called too cold to leave.
    const LOWEST_DIAL: Constant<Temperature> = Constant::of(
        "lowest dial that an inspection passes",
        Temperature::fahrenheit(110.0),
        Tag::Model("120 °F and what the marks of a dial leave open"),
    );
    /// A thermostat that touches with less of its plate is loose.
    const FLAT_ENOUGH: Constant = Constant::new(
        "share of a thermostat's plate that has to touch",
        0.8,
        "",
        Tag::Model("below that it reads over 4 °F low at 120 °F"),
    );
    /// Dials closer than this are alike.
    const ALIKE: Constant<Kelvins> = Constant::of(
        "dials closer than this are alike",
        Kelvins::fahrenheit(10.0),
        Tag::Model("one mark of a dial"),
    );
    /// Two ratings within this share of each other are the same stamp.
    const SAME_STAMP: Constant =
        Constant::new("ratings within this share are the same", 0.02, "", Tag::Model("no two stamps lie so close"));
    /// An element stamped for this much above its supply is underfed.
    const UNDERFED: Constant = Constant::new(
        "stamp over supply that makes a supply low",
        1.1,
        "",
        Tag::Model("beyond the service range of 5 % either way"),
    );
    /// A joint of so many times a sound one has to be made again.
    const WORN_JOINT: Constant = Constant::new(
        "resistance over a sound joint's that calls for a new joint",
        20.0,
        "",
        Tag::Model("drops a third of a volt at 18.75 A"),
    );
    /// A relief valve set above the tank's working pressure by more than rounding is the wrong one.
    const ABOVE_WORKING: Constant =
        Constant::new("setting over working pressure that is too high", 1.001, "", Tag::Model("rounding alone"));
    /// A clock is right within this.
    const CLOCK_NEAR: Constant<Seconds> =
        Constant::of("clock that is right", Seconds::minutes(30.0), Tag::Model("half a mark of a dial of 24 hours"));
    /// A leg or neutral of the service with more than this is loose.
    const LOOSE_SERVICE: Constant<Ohms> =
        Constant::of("resistance of a loose service conductor", Ohms(1.0), Tag::Model("a hundred times a sound one"));
    /// Hydrogen beyond what a working week leaves in the lines.
    const MUCH_GAS: Constant<Volume> =
        Constant::of("hydrogen that calls for venting", Volume::litres(1.2), Tag::Model("ten days of a sound rod"));
    /// Demand above what the house was fitted for.
    const TOO_MUCH: Constant =
        Constant::new("demand beyond what the heater was fitted for", 1.2, "", Tag::Model("spare of a fitting"));
}

impl Home {
    /// Everything wrong in the house, in the order of [`Defect`].
    pub fn inspect(&self) -> Vec<Defect> {
        let mut found = Vec::new();
        self.inspect_elements(&mut found);
        self.inspect_controls(&mut found);
        self.inspect_wiring(&mut found);
        self.inspect_water(&mut found);
        self.inspect_supply(&mut found);
        quantity::sort::sort(&mut found);
        found.dedup();
        found
    }

    fn inspect_elements(&self, found: &mut Vec<Defect>) {
        let plant = &self.plant;
        let supply = plant.service.across().get();
        for level in [Level::Upper, Level::Lower] {
            let element = &plant.elements[level.index()];
            let stamp = element.stamp;
            let plate = plant.plate.element;
            let near = |a: f64, b: f64| (a - b).abs() <= SAME_STAMP.get() * b.abs();
            let suits_plate = near(stamp.watts.0, plate.watts.0) && near(stamp.volts.0, plate.volts.0);
            // On a supply below the plate's, an element made for that supply is the cure.
            // Somebody's handiwork is told, not called for.
            let odd = self.installation.other_element == Some((level, stamp));
            let suits_supply = near(stamp.watts.0, plate.watts.0) && near(stamp.volts.0, supply);
            for (there, what) in [
                (element.breaks(), Defect::ElementOpen(level)),
                (element.is_shorted(), Defect::ElementShorted(level)),
                (element.leak.is_some(), Defect::ElementGrounded(level)),
                (element.is_crusted(), Defect::ElementCrusted(level)),
                (plant.film(level).is_some(), Defect::WetCompartment(level)),
                (!suits_plate && !suits_supply && !odd, Defect::ElementRating(level)),
                (element.gasket.leak_diameter > 0.0, Defect::GasketLeaks(level)),
                (stamp.volts.0 > UNDERFED.get() * supply, Defect::LowSupply),
            ] {
                if there {
                    found.push(what);
                }
            }
        }
    }

    fn inspect_controls(&self, found: &mut Vec<Defect>) {
        let plant = &self.plant;
        let worn = |c: Contact| c != Contact::Sound;
        // A heater of one element has one thermostat: what stands for the other is nowhere to be set.
        let there = |level: &Level| plant.plate.has(*level);
        for level in [Level::Upper, Level::Lower].into_iter().filter(there) {
            let t = &plant.thermostats[level.index()];
            let contacts = worn(t.cold_contact) || (level == Level::Upper && worn(t.hot_contact));
            for (there, what) in [
                (contacts || t.stuck.is_some() || t.is_off(), Defect::Thermostat(level)),
                (t.dial < LOWEST_DIAL.get(), Defect::DialLow(level)),
                (!t.seated || t.grip < FLAT_ENOUGH.get(), Defect::ThermostatLoose(level)),
                (t.dial > HIGHEST_DIAL.get(), Defect::DialHigh(level)),
            ] {
                if there {
                    found.push(what);
                }
            }
        }
        let [upper, lower] = plant.thermostats.map(|t| t.dial);
        let sensor =
            |level: Level| plant.board.is_some_and(|board| board.sensors[level.index()] != Sensor::SOUND);
        // A bridged limit works as a welded one does.
        let welded = |l: &Limit| l.welded.contains(&true) && !self.installation.bridged;
        let limits = || std::iter::once(&plant.limit).chain(&plant.lower_limit);
        for (there, what) in [
            (plant.plate.has(Level::Lower) && upper.above(lower).abs() > ALIKE.get(), Defect::DialsUnequal),
            (limits().any(|l| l.poles.iter().any(|p| worn(*p)) || welded(l)), Defect::LimitPole),
            (limits().any(|l| l.tripped), Defect::LimitTripped),
            (limits().any(|l| !l.seated || l.grip < FLAT_ENOUGH.get()), Defect::LimitLoose),
            (limits().any(Limit::is_weak), Defect::LimitWeak),
            (sensor(Level::Upper), Defect::Sensor(Level::Upper)),
            (sensor(Level::Lower), Defect::Sensor(Level::Lower)),
            (plant.board.is_some_and(|board| board.lockout.is_some()), Defect::LockedOut),
        ] {
            if there {
                found.push(what);
            }
        }
    }

    fn inspect_wiring(&self, found: &mut Vec<Defect>) {
        let wiring = &self.plant.wiring;
        for end in End::all() {
            if !wiring.exists(end.wire) {
                continue;
            }
            let joint = wiring.joint(end);
            if wiring.conductor(end.wire).creeps() && end.side == 1 {
                found.push(Defect::Aluminium(end));
            }
            match joint.on {
                None => found.push(Defect::Lifted(end)),
                Some(screw) if screw != end.home() => found.push(Defect::Miswired(end)),
                Some(_) if joint.charred || joint.resistance > SOUND_JOINT * WORN_JOINT.get() => {
                    found.push(Defect::Joint(end));
                }
                Some(_) => {}
            }
        }
    }

    fn inspect_water(&self, found: &mut Vec<Defect>) {
        let plant = &self.plant;
        let plumbing = &plant.plumbing;
        let room = plumbing.expansion.is_some_and(|e| !e.waterlogged && e.volume > Volume(0.0));
        let cartridge = plumbing.fixtures.iter().any(Fixture::is_faulty);
        let relief = &plumbing.relief;
        let high = relief.opens_at.0 > plant.plate.working_pressure.0 * ABOVE_WORKING.get();
        for (there, what) in [
            (plumbing.is_pressed(), Defect::StaticPressure),
            (plumbing.mixing.is_some_and(|valve| valve.seized.is_some()), Defect::MixingValve),
            (cartridge, Defect::Cartridge),
            (plumbing.drain_drip > 0.0 || plumbing.drain_grit > 0.0, Defect::DrainValve),
            (
                plumbing.nipple_leak > 0.0 || plumbing.traps.are_choked() || !plumbing.stand.is_piped(),
                Defect::Nipples,
            ),
            (plumbing.reversed, Defect::Reversed),
            (plumbing.hot_leak > 0.0, Defect::HotLine),
            (plant.vessel.shell_hole > 0.0, Defect::ShellHole),
            (plant.vessel.dip_tube != DipTube::Whole, Defect::DipTube),
            (plant.vessel.anode_needed(), Defect::Anode),
            (relief.weep > 0.0 || relief.missing || high, Defect::ReliefValve),
            (plumbing.is_closed() && !room, Defect::NoExpansionRoom),
            (self.demand > TOO_MUCH.get(), Defect::Demand),
            (super::f42::is_cold(self), Defect::ColdMain),
            (plant.vessel.sediment > SETTLED.get(), Defect::Sediment),
            (plumbing.recirculation.is_some_and(|r| r.pump), Defect::Pump),
            (plumbing.recirculation.is_some_and(|r| !r.check), Defect::ReturnCheck),
            (plumbing.tight > Metres(0.0), Defect::TightPipe),
            (plumbing.hydrogen > MUCH_GAS.get(), Defect::Gas),
            (plumbing.frozen, Defect::Frozen),
            (super::f53::is_damp(self), Defect::DampAir),
        ] {
            if there {
                found.push(what);
            }
        }
    }

    fn inspect_supply(&self, found: &mut Vec<Defect>) {
        let sound = Self::sound(self.setting);
        let rating = sound.plant.panel.feeding(Circuit::Heater).map(|b| b.rating);
        let mut on = [false; 2];
        for breaker in self.plant.panel.breakers.iter().filter(|b| b.feeds_heater()) {
            on[usize::from(breaker.feeds == Circuit::OffPeak)] |= breaker.handle == Handle::On;
            if breaker.poles.iter().any(|p| *p != Contact::Sound) || breaker.holds < 1.0 {
                found.push(Defect::BreakerPole);
            }
            if breaker.feeds != Circuit::SecondSource && rating.is_some_and(|r| r != breaker.rating) {
                found.push(Defect::BreakerRating);
            }
        }
        let heater = self.plant.panel.feeding(Circuit::Heater);
        let service = &self.plant.service;
        let whole = |ohms: &Ohms| *ohms <= LOOSE_SERVICE.get();
        for (there, what) in [
            (heater.is_some_and(|b| b.stabs[0] == b.stabs[1]), Defect::BreakerStab),
            (self.plant.beside_live > super::f64::LONG_RUN.get(), Defect::LongRun),
            (!service.impedance.iter().all(whole) || !whole(&service.neutral), Defect::Service),
            (super::f69::mistaken(&self.plant.panel), Defect::Mislabelled),
        ] {
            if there {
                found.push(what);
            }
        }
        for fitted in self.plant.boxes() {
            let legs = if self.plant.wiring.hot_neutral { 1 } else { 2 };
            let open = |c: Contact| c != Contact::Sound;
            for (there, what) in [
                (fitted.is_fused() && (0..legs).any(|leg| open(fitted.link(leg))), Defect::Fuse),
                (fitted.idle || fitted.poles.iter().any(|p| open(*p)), Defect::BoxPole),
                (fitted.hours.is_some_and(|h| h.ahead.get().abs() > CLOCK_NEAR.get().get()), Defect::Clock),
                (fitted.open_amiss(), Defect::PowerOff),
            ] {
                if there {
                    found.push(what);
                }
            }
        }
        let off_peak = self.plant.panel.feeding(Circuit::OffPeak).is_some();
        if !on[0] || (off_peak && !on[1]) {
            found.push(Defect::PowerOff);
        }
    }
}

#[cfg(test)]
mod tests {
    use quantity::Draw;

    use super::*;
    use crate::climate::Climate;
    use crate::fault::{FaultId, Parameters};
    use crate::household::HouseholdKind;
    use crate::{HeaterModel, Setting};

    fn house(heater: HeaterModel) -> Home {
        let (household, climate) = (HouseholdKind::Family, Climate::MillValley);
        Home::sound(Setting {
            heater,
            household,
            climate,
            day: 100,
            in_line: None,
            location: Default::default(),
        })
    }

    #[test]
    fn a_sound_house_passes_and_every_fault_is_found_and_undone() {
        for &heater in HeaterModel::ALL {
            let sound = house(heater);
            assert_eq!(sound.inspect(), Vec::new(), "{heater}");
            for &id in FaultId::ALL.iter().filter(|id| (id.fault().fits)(&sound)) {
                for seed in 0..8 {
                    let mut home = sound.clone();
                    let numbers =
                        id.fault().complete(&Parameters::new(), &mut Draw::new(seed, "fault")).unwrap();
                    (id.fault().apply)(&numbers, &mut home);
                    assert!(!home.inspect().is_empty(), "{id} in {heater}");
                    home.make_sound();
                    assert_eq!(home.inspect(), Vec::new(), "{id} in {heater}");
                }
            }
        }
    }
}
