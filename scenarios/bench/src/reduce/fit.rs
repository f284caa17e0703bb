//! New parts in the places of the old ones, as the plant then has them.

use plant::controls::board::{Board, Sensor};
use plant::{
    Anode, AnodeMetal, Circuit, Contact, DipTube, Discharge, Element, End, ExpansionTank, Gasket, Handle,
    HeatTraps, HeaterModel, Level, Limit, MixingValve, Place, Regulator, Screw, Stab, Stand, Thermostat,
    Vessel,
};
use quantity::{Constant, Tag, Temperature, Volume};

use super::senses;
use super::turn::Turn;
use crate::action::NewPart;

quantity::constants! {
    /// What a new gasket on rust and old rubber still leaks, as an orifice. Model: a slow drip.
    const SEAT_LEAK: Constant = Constant::new("orifice of a new gasket on rust and old rubber", 0.4e-3, "m", Tag::Model("a slow drip"));
    /// A new thermostat's dial.
    const NEW_DIAL: Constant<Temperature> = Constant::of("dial of a new thermostat", Temperature::fahrenheit(120.0), Tag::CommonPractice);
}

/// The new part goes in.
pub(super) fn fit(turn: &mut Turn, part: &NewPart) {
    match *part {
        NewPart::Element { level, rating, length, seat_cleaned, .. } => {
            new_gasket(turn, level, seat_cleaned);
            let wall = turn.s.home.plant.wall(level);
            if let Some(old) = turn.s.home.plant.elements.get_mut(level.index()) {
                *old = Element { gasket: old.gasket, length, sheath: wall, ..Element::sound(rating) };
            }
        }
        NewPart::Gasket { level, seat_cleaned } => new_gasket(turn, level, seat_cleaned),
        NewPart::Thermostat { level } => {
            let body = turn.s.home.plant.wall(level);
            if let Some(old) = turn.s.home.plant.thermostats.get_mut(level.index()) {
                let calling = body < NEW_DIAL.get();
                let sound = Thermostat::sound(NEW_DIAL.get(), differential(level));
                // It hangs on its screws until somebody presses it flat.
                *old = Thermostat { body, calling, seated: false, grip: 0.0, ..sound };
            }
        }
        NewPart::Limit => {
            let plant = &mut turn.s.home.plant;
            plant.limit = Limit::sound(plant.limit.body);
        }
        NewPart::LowerLimit => {
            let plant = &mut turn.s.home.plant;
            plant.lower_limit = plant.lower_limit.map(|limit| Limit::sound(limit.body));
        }
        NewPart::Breaker { rating } => {
            let breakers = &mut turn.s.home.plant.panel.breakers;
            if let Some(old) = breakers.iter_mut().find(|b| b.feeds == Circuit::Heater) {
                old.rating = rating;
                old.poles = [Contact::Sound; 2];
                old.holds = 1.0;
                old.heat = [0.0; 2];
                old.handle = Handle::Off;
                // Of as many poles as the circuit has: in a tandem's stead a two-pole one, across two spaces and both legs.
                if old.tandem.take().is_some() {
                    old.stabs = [Some(Stab::One), Some(Stab::Two)];
                }
            }
        }
        NewPart::Fuse { rating } => {
            if let Some(one) = &mut turn.s.home.plant.in_line {
                one.rating = rating;
                one.fuses = [Contact::Sound; 2];
                one.heat = [0.0; 2];
                one.pulled = [false; 2];
            }
        }
        NewPart::TimeSwitch => {
            let now = turn.s.home.plant.clock;
            if let Some(one) = &mut turn.s.home.plant.in_line {
                one.poles = [Contact::Sound; 2];
            }
            turn.set_clock(now);
        }
        NewPart::Connectors => {
            let wiring = &mut turn.s.home.plant.wiring;
            for wire in wiring.feeders() {
                wiring.conductor_mut(wire).rated = true;
                let joint = wiring.joint_mut(End { wire, side: 1 });
                joint.charred = false;
                joint.resistance = plant::SOUND_JOINT;
            }
        }
        NewPart::Sensor { level } => {
            if let Some(board) = &mut turn.s.home.plant.board {
                board.sensors[level.index()] = Sensor::SOUND;
            }
        }
        NewPart::Board => new_board(&mut turn.s.home.plant),
        NewPart::DipTube => turn.s.home.plant.vessel.dip_tube = DipTube::Whole,
        NewPart::Anode { metal } => turn.s.home.plant.vessel.anode = Anode::new(metal),
        NewPart::Regulator { .. }
        | NewPart::MixingValve { .. }
        | NewPart::Cartridge { .. }
        | NewPart::DrainValve
        | NewPart::Nipples
        | NewPart::Connections
        | NewPart::HotLine
        | NewPart::PipeClips
        | NewPart::ReturnCheck
        | NewPart::PumpTimer => fit_pipes(&mut turn.s.home.plant.plumbing, part),
        NewPart::ReliefValve { opens_at } => {
            let relief = &mut turn.s.home.plant.plumbing.relief;
            relief.opens_at = opens_at;
            relief.open = false;
            relief.lever = false;
            relief.weep = 0.0;
            if std::mem::take(&mut relief.missing) {
                // In a new tank's port, with a pipe of its full bore of its own.
                turn.s.home.installation.discharge = Discharge::Metal;
                turn.s.home.installation.lime = false;
            }
        }
        NewPart::ExpansionTank { volume, charge } => {
            let tank = ExpansionTank { volume, charge, waterlogged: false };
            turn.s.home.plant.plumbing.expansion = Some(tank);
        }
    }
    turn.s.home.renewed(part.kind());
    if !matches!(part, NewPart::Fuse { .. }) {
        remade(turn, super::replace::handled(part));
    }
}

/// A new board on the old sensors: its relays are where the plant keeps a thermostat's contacts.
fn new_board(plant: &mut plant::Plant) {
    if let Some(board) = &mut plant.board {
        *board = Board { sensors: board.sensors, powered: board.powered, ..Board::sound() };
    }
    for relay in &mut plant.thermostats {
        relay.stuck = None;
        relay.cold_contact = Contact::Sound;
        relay.cold_spot = plant::Spot::default();
    }
}

/// The new part goes into the piping.
fn fit_pipes(plumbing: &mut plant::Plumbing, part: &NewPart) {
    match *part {
        NewPart::Regulator { set } => plumbing.regulator = Some(Regulator::sound(set)),
        NewPart::MixingValve { set } => plumbing.mixing = Some(MixingValve { set, seized: None }),
        NewPart::Cartridge { tap } => {
            if let Some(fixture) = plumbing.fixtures.get_mut(tap as usize) {
                fixture.crossover = 0.0;
                fixture.limit_stop = 0.0;
            }
        }
        NewPart::DrainValve => {
            plumbing.drain_drip = 0.0;
            plumbing.drain_grit = 0.0;
            plumbing.drain_valve = 0.0;
        }
        NewPart::Nipples => {
            plumbing.nipple_leak = 0.0;
            plumbing.traps = HeatTraps::SOUND;
        }
        NewPart::Connections => plumbing.reversed = false,
        NewPart::HotLine => plumbing.hot_leak = 0.0,
        NewPart::PipeClips => plumbing.tight = quantity::Metres(0.0),
        NewPart::ReturnCheck | NewPart::PumpTimer => {
            if let Some(loops) = &mut plumbing.recirculation {
                // A new timer keeps the pump still at the hours of a service call.
                loops.pump &= *part != NewPart::PumpTimer;
                loops.check |= *part == NewPart::ReturnCheck;
            }
        }
        _ => {}
    }
}

/// Cut-out minus cut-in of a new thermostat.
const fn differential(level: Level) -> quantity::Kelvins {
    match level {
        Level::Upper => plant::controls::thermostat::UPPER_DIFFERENTIAL,
        Level::Lower => plant::controls::thermostat::LOWER_DIFFERENTIAL,
    }
}

/// A new gasket seals on a clean seat only.
fn new_gasket(turn: &mut Turn, level: Level, seat_cleaned: bool) {
    if let Some(element) = turn.s.home.plant.elements.get_mut(level.index()) {
        let seat_dirty = element.gasket.seat_dirty && !seat_cleaned;
        let leak_diameter = if seat_dirty { SEAT_LEAK.get() } else { 0.0 };
        element.gasket = Gasket { leak_diameter, seat_dirty };
    }
}

/// Wires that were on the old part's screws sit on the new one's, torqued. What was burnt or off stays so.
fn remade(turn: &mut Turn, screws: &[Screw]) {
    let wiring = &mut turn.s.home.plant.wiring;
    for end in End::all() {
        let joint = wiring.joint_mut(end);
        if joint.on.is_some_and(|on| screws.contains(&on)) {
            joint.torqued = true;
            if !joint.charred {
                joint.resistance = plant::SOUND_JOINT;
            }
        }
    }
}

/// A conductor of the house sits on that screw.
pub(super) fn feeds(plant: &plant::Plant, screw: Screw) -> bool {
    let fed = |end: End| end.wire.is_cable() && plant.wiring.exists(end.wire);
    End::all().any(|end| fed(end) && plant.wiring.joint(end).on == Some(screw))
}

/// A new heater stands in the old one's place, empty and cold, no pipe and no lead on it, its relief port open.
pub(super) fn new_heater(turn: &mut Turn, nominal: Volume, rating: plant::heater::Rating) {
    let plant = &mut turn.s.home.plant;
    let off = |model: &HeaterModel| (model.plate().nominal.get() - nominal.get()).abs();
    // Wired as the old one was: the branch circuits stay.
    let alike = HeaterModel::ALL.iter().filter(|model| model.plate().layout == plant.plate.layout);
    let nearest = alike.min_by(|a, b| off(a).total_cmp(&off(b)));
    let mut plate = nearest.map_or(plant.plate, |model| model.plate());
    plate.element = rating;
    plant.plate = plate;
    plant.elements = [plate.new_element(); 2];
    plant.thermostats =
        [Level::Upper, Level::Lower].map(|level| Thermostat::sound(NEW_DIAL.get(), differential(level)));
    plant.limit = Limit::sound(plant.room);
    plant.lower_limit = plant.lower_limit.map(|_| Limit::sound(plant.room));
    // Bacteria live in the pipes as well and settle in the new one.
    let bacteria = plant.vessel.bacteria;
    plant.vessel = Vessel { anode: Anode::new(AnodeMetal::Magnesium), bacteria, ..Vessel::sound() };
    let plumbing = &mut plant.plumbing;
    plumbing.stand = Stand::Loose;
    plumbing.relief.missing = true;
    plumbing.relief.open = false;
    (plumbing.nipple_leak, plumbing.traps, plumbing.reversed) = (0.0, HeatTraps::SOUND, false);
    (plumbing.drain_drip, plumbing.drain_grit) = (0.0, 0.0);
    plant.empty_vessel();
    let inside = End::all().filter(|e| senses::inside(e.wire));
    for end in inside {
        // Where the house's own conductor was taken off in place of the lead, it is the one to be landed.
        let free = end.home().place() == Place::JunctionBox && feeds(plant, end.home());
        let joint = plant.wiring.joint_mut(end);
        joint.on = (!free).then(|| end.home());
        joint.resistance = plant::SOUND_JOINT;
        joint.torqued = true;
        joint.charred = false;
        joint.labelled = false;
    }
}
