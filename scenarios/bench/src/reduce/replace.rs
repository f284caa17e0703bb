//! Changing parts. The tank, the power and the covers are as the learner left them: water comes out of what
//! is opened under water, and live screws are live.

use plant::fault::PartKind;
use plant::{BoxKind, Level, Mount, Place, Point, Screw};
use quantity::{Constant, Pressure, Seconds, Tag, Temperature, Volume};

use super::turn::Turn;
use super::{Answered, fit, hands, judge, reach, scald, senses, water};
use crate::action::NewPart;
use crate::person::{Exposure, Source};
use crate::session::Session;
use crate::shown::{Fact, Refusal, Shown, Sight};

quantity::constants! {
    /// An opening stays open this long while the part in hand goes in.
    pub(super) const OPEN: Constant<Seconds> = Constant::of("how long an opening stays open while a part goes in", Seconds(30.0), Tag::CommonPractice);
    /// The hole of a screw-in element, 1 in thread.
    const ELEMENT_HOLE: Constant = Constant::new("hole of a screw-in element", 0.027, "m", Tag::Published("a tool list of service literature: 1 in thread"));
    /// The hole behind a flange with four bolts.
    const FLANGE_HOLE: Constant = Constant::new("hole of an element with four bolts", 0.04, "m", Tag::Model("a hairpin passes, and its bolts stand around it"));
    /// Until it shows that an element does not go in: held up to the old one and to the jacket, and carried back.
    const HELD_UP: Constant<Seconds> = Constant::of("until it shows that an element does not go in", Seconds::minutes(5.0), Tag::Model("to the van and back, and a look at the old one"));
    /// Below this the relief valve's port, in the top 6 in, is clear of water.
    const RELIEF_PORT: Constant = Constant::new("share below which the relief valve's port is clear of water", 0.85, "1", Tag::Published("ANSI Z21.22, as a city's code prints it: within the top 6 in"));
    /// More pressure than this squirts when a joint is opened. Model: a weak garden hose.
    pub(super) const SQUIRTS: Constant<Pressure> = Constant::of("pressure from which an opened joint squirts", Pressure::psi(2.0), Tag::Model("a weak garden hose"));
    /// Elements that are sold at all.
    const SOLD_WATTS: Constant<(f64, f64)> = Constant::new("elements that are sold: watts", (500.0, 12_000.0), "W", Tag::CommonPractice);
    /// See `SOLD_WATTS`.
    const SOLD_VOLTS: Constant<(f64, f64)> = Constant::new("elements that are sold: volts", (100.0, 500.0), "V", Tag::CommonPractice);
    /// Breakers and fuses that are sold at all.
    const SOLD_BREAKERS: Constant<(f64, f64)> = Constant::new("breakers and fuses that are sold", (10.0, 200.0), "A", Tag::CommonPractice);
    /// Settings of regulators that are sold at all.
    const SOLD_REGULATORS: Constant<(f64, f64)> = Constant::new("settings of regulators that are sold", (20.0, 120.0), "psi", Tag::CommonPractice);
    /// Settings of mixing valves that are sold at all.
    const SOLD_MIXERS: Constant<(f64, f64)> = Constant::new("settings of mixing valves that are sold", (80.0, 160.0), "°F", Tag::CommonPractice);
    /// Relief valves that are sold at all.
    const SOLD_RELIEFS: Constant<(f64, f64)> = Constant::new("relief valves that are sold", (30.0, 400.0), "psi", Tag::CommonPractice);
    /// Expansion tanks that are sold at all.
    const SOLD_EXPANSION: Constant<(f64, f64)> = Constant::new("expansion tanks that are sold", (0.5, 50.0), "gal", Tag::CommonPractice);
    /// Charges they can be given.
    const SOLD_CHARGES: Constant<(f64, f64)> = Constant::new("charges of expansion tanks", (5.0, 150.0), "psi", Tag::CommonPractice);
    /// From this much out of an opening whoever works at it is splashed.
    const SOAKS: Constant<Volume> = Constant::of("water out of an opening that splashes", Volume::litres(0.2), Tag::Model("a cup"));
}

/// Changes a part.
pub(super) fn replace(turn: &mut Turn, part: &NewPart, time: Seconds) -> Answered {
    makes_sense(part)?;
    possible(turn, part)?;
    if let Some(why) = misfit(&turn.s, part) {
        turn.pass(HELD_UP.get());
        return Ok(Shown::Refused { why });
    }
    let (needed, matches) =
        (judge::helps(&turn.s.home.plant, part), judge::matches(&turn.s.home.plant, part));
    for screw in handled(part) {
        if !senses::there(&turn.s.home.plant, Point::Screw(*screw)) {
            continue;
        }
        hands::touch(turn, Point::Screw(*screw), hands::Grip::Grasps);
    }
    let scorched = scorched(turn, part);
    let rest = (time - OPEN.get()) / 2.0;
    turn.pass(rest);
    if let NewPart::Element { level, .. } = part
        && let Some(sheath) = turn.s.home.plant.elements.get(level.index()).map(|e| e.sheath)
    {
        scald::metal(turn, sheath);
    }
    open_up(turn, part);
    fit::fit(turn, part);
    turn.pass(rest);
    changed(turn, part.kind(), matches, needed, crate::prices::of(part));
    Ok(match scorched {
        Some(level) => Shown::DoneWith { sights: vec![Sight::ScorchedElement { level }] },
        None => Shown::Done,
    })
}

/// A part was changed for so many dollars.
pub(super) fn changed(turn: &mut Turn, part: PartKind, matches: bool, needed: bool, cost: f64) {
    turn.s.me.cost += cost;
    turn.facts.push(Fact::Changed { part, matches, needed, cost });
    if turn.s.me.findings.is_empty() {
        turn.facts.push(Fact::RepairedWithoutFinding);
    }
}

/// Elements of such a rating are made.
pub(super) fn is_made(rating: plant::heater::Rating) -> bool {
    judge::within(rating.watts.get(), SOLD_WATTS.get()) && judge::within(rating.volts.get(), SOLD_VOLTS.get())
}

/// The numbers of the new part are numbers of such a part.
fn makes_sense(part: &NewPart) -> Result<(), Refusal> {
    let sensible = match part {
        NewPart::Element { rating, .. } => is_made(*rating),
        NewPart::Breaker { rating } | NewPart::Fuse { rating } => {
            judge::within(rating.get(), SOLD_BREAKERS.get())
        }
        NewPart::Regulator { set } => judge::within(set.to_psi(), SOLD_REGULATORS.get()),
        NewPart::MixingValve { set } => judge::within(set.to_fahrenheit(), SOLD_MIXERS.get()),
        NewPart::ReliefValve { opens_at } => judge::within(opens_at.to_psi(), SOLD_RELIEFS.get()),
        NewPart::ExpansionTank { volume, charge } => {
            judge::within(volume.to_gallons(), SOLD_EXPANSION.get())
                && judge::within(charge.to_psi(), SOLD_CHARGES.get())
        }
        NewPart::Thermostat { .. }
        | NewPart::Limit
        | NewPart::LowerLimit
        | NewPart::TimeSwitch
        | NewPart::Connectors
        | NewPart::DipTube
        | NewPart::Anode { .. }
        | NewPart::Sensor { .. }
        | NewPart::Board
        | NewPart::Cartridge { .. }
        | NewPart::DrainValve
        | NewPart::Nipples
        | NewPart::Connections
        | NewPart::HotLine
        | NewPart::PipeClips
        | NewPart::ReturnCheck
        | NewPart::PumpTimer
        | NewPart::Gasket { .. } => true,
    };
    if sensible { Ok(()) } else { Err(Refusal::OutOfRange) }
}

/// Why an element does not go into this tank, as it shows beside the old one.
fn misfit(session: &Session, part: &NewPart) -> Option<Refusal> {
    let NewPart::Element { rating, length, mount, .. } = part else { return None };
    let plate = &session.home.plant.plate;
    if *mount != plate.mount {
        return Some(Refusal::OtherMount);
    }
    (!plate.has_room_for(length.reach(rating.watts))).then_some(Refusal::TooLong)
}

/// What hands can do at all. Wet, live or costly is possible; a full tank cannot be carried off.
fn possible(turn: &Turn, part: &NewPart) -> Result<(), Refusal> {
    let session = &turn.s;
    match part {
        NewPart::Thermostat { .. } if !session.home.plant.plate.layout.has_thermostats() => {
            Err(Refusal::NotHere)
        }
        NewPart::Sensor { .. } | NewPart::Board if session.home.plant.board.is_none() => {
            Err(Refusal::NotHere)
        }
        NewPart::Board => reach::place(session, Place::UpperCompartment),
        NewPart::Sensor { level } => reach::place(session, compartment(*level)),
        NewPart::Element { level, .. } | NewPart::Gasket { level, .. } | NewPart::Thermostat { level } => {
            reach::place(session, compartment(*level))
        }
        NewPart::Limit => reach::place(session, Place::UpperCompartment),
        NewPart::LowerLimit if session.home.plant.lower_limit.is_none() => Err(Refusal::NotHere),
        NewPart::LowerLimit => reach::place(session, Place::LowerCompartment),
        NewPart::Breaker { .. } => reach::place(session, Place::LoadCenter),
        NewPart::Fuse { .. } => boxed(session, BoxKind::FusedSwitch),
        NewPart::Connectors => reach::place(session, Place::JunctionBox),
        NewPart::TimeSwitch => boxed(session, BoxKind::Timer),
        NewPart::DipTube | NewPart::Anode { .. } => Ok(()),
        NewPart::ReliefValve { .. } | NewPart::ExpansionTank { .. } => Ok(()),
        NewPart::Regulator { .. } => isolated(session),
        NewPart::MixingValve { .. } | NewPart::Cartridge { .. } => Ok(()),
        NewPart::ReturnCheck | NewPart::PumpTimer if session.home.plant.plumbing.recirculation.is_none() => {
            Err(Refusal::NotHere)
        }
        NewPart::DrainValve
        | NewPart::Nipples
        | NewPart::Connections
        | NewPart::HotLine
        | NewPart::PipeClips
        | NewPart::ReturnCheck
        | NewPart::PumpTimer => Ok(()),
    }
}

/// The regulator stands before every other valve of the house: the main valve shut, and the pressure let down.
fn isolated(session: &Session) -> Result<(), Refusal> {
    let plumbing = &session.home.plant.plumbing;
    if plumbing.main_valve > 0.0 {
        return Err(Refusal::MainOpen);
    }
    if plumbing.pressure > SQUIRTS.get() { Err(Refusal::UnderPressure) } else { Ok(()) }
}

/// The box in the line is of this kind and open.
fn boxed(session: &Session, kind: BoxKind) -> Result<(), Refusal> {
    match &session.home.plant.in_line {
        Some(one) if one.kind == kind => reach::place(session, Place::InLineBox),
        _ => Err(Refusal::NotHere),
    }
}

const fn compartment(level: Level) -> Place {
    match level {
        Level::Upper => Place::UpperCompartment,
        Level::Lower => Place::LowerCompartment,
    }
}

/// Screws that the hands are on.
pub(super) const fn handled(part: &NewPart) -> &'static [Screw] {
    match part {
        NewPart::Element { level, .. } | NewPart::Gasket { level, .. } => match level {
            Level::Upper => &[Screw::UEa, Screw::UEb],
            Level::Lower => &[Screw::LEa, Screw::LEb],
        },
        NewPart::Board => &[Screw::K1, Screw::K2, Screw::K3, Screw::K4],
        NewPart::Thermostat { level: Level::Upper } => &[Screw::U1, Screw::U2, Screw::U4],
        NewPart::Thermostat { level: Level::Lower } => &[Screw::D1, Screw::D2],
        NewPart::Limit => &[Screw::H1, Screw::H2, Screw::H3, Screw::H4],
        NewPart::LowerLimit => &[Screw::H5, Screw::H6, Screw::H7, Screw::H8],
        NewPart::Breaker { .. } => &[Screw::B1, Screw::B2],
        NewPart::Fuse { .. } | NewPart::TimeSwitch => &[Screw::X1, Screw::X2, Screw::X3, Screw::X4],
        NewPart::Connectors => &[Screw::Ja, Screw::Jb],
        _ => &[],
    }
}

/// The old element, once out, shows that it glowed in air.
fn scorched(turn: &Turn, part: &NewPart) -> Option<Level> {
    match part {
        NewPart::Element { level, .. } | NewPart::Gasket { level, .. } => {
            turn.s.home.plant.elements.get(level.index()).filter(|e| e.scorched).map(|_| *level)
        }
        _ => None,
    }
}

/// The vessel stands open where the part was.
fn open_up(turn: &mut Turn, part: &NewPart) {
    let spilled = turn.s.me.spilled;
    let plumbing = &turn.s.home.plant.plumbing;
    let squirts = plumbing.is_fed() || plumbing.pressure > SQUIRTS.get();
    let water_at = match part {
        NewPart::Element { level, .. } | NewPart::Gasket { level, .. } => {
            let at = turn.s.home.plant.wall(*level);
            flange_open(turn, *level);
            at
        }
        NewPart::ReliefValve { .. } => {
            let at = turn.s.home.plant.outlet();
            let down_to = if squirts { 0.0 } else { RELIEF_PORT.get() };
            water::spill(turn, OPEN.get(), down_to);
            at
        }
        NewPart::DrainValve => {
            let at = turn.s.home.plant.drain_temperature();
            water::spill(turn, OPEN.get(), 0.0);
            at
        }
        NewPart::Anode { .. } | NewPart::Nipples | NewPart::Connections | NewPart::HotLine if squirts => {
            let at = turn.s.home.plant.outlet();
            water::spill(turn, OPEN.get(), 0.0);
            at
        }
        NewPart::DipTube
        | NewPart::ReturnCheck
        | NewPart::ExpansionTank { .. }
        | NewPart::Regulator { .. }
        | NewPart::MixingValve { .. }
            if squirts =>
        {
            water::spill(turn, OPEN.get(), 0.0);
            turn.s.home.plant.plumbing.inlet
        }
        _ => {
            turn.pass(OPEN.get());
            return;
        }
    };
    splashed(turn, spilled, water_at);
}

/// Whoever works at an opening is splashed by what has come out of it since so much was spilt.
pub(super) fn splashed(turn: &mut Turn, before: Volume, temperature: Temperature) {
    if (turn.s.me.spilled - before) > SOAKS.get() {
        let splash = Exposure { source: Source::Splash, temperature, seconds: water::SPLASH.get() };
        scald::own(turn, splash);
    }
}

/// The element is out: its hole lets water out and air in.
fn flange_open(turn: &mut Turn, level: Level) {
    let lever = turn.s.home.plant.plumbing.relief.lever;
    let hole = |turn: &mut Turn, diameter: f64| {
        if let Some(element) = turn.s.home.plant.elements.get_mut(level.index()) {
            element.gasket.leak_diameter = diameter;
        }
    };
    let was = turn.s.home.plant.elements.get(level.index()).map_or(0.0, |e| e.gasket.leak_diameter);
    let open = match turn.s.home.plant.plate.mount {
        Mount::ScrewIn => ELEMENT_HOLE.get(),
        Mount::FourBolt => FLANGE_HOLE.get(),
    };
    hole(turn, open);
    // Only an opening that stands clear of the water lets air in at the top.
    let clear = turn.s.home.plant.fill() > water::flange_fill(turn, level);
    turn.s.home.plant.plumbing.relief.lever = lever || clear;
    turn.open = true;
    turn.pass(OPEN.get());
    turn.open = false;
    turn.s.home.plant.plumbing.relief.lever = lever;
    hole(turn, was);
}
