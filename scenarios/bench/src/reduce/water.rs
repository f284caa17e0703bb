//! Valves, taps, bucket, hose, drain, relief lever, gauge, and waiting.

use plant::{Anode, Level, Plumbing, Tap};
use quantity::{Constant, Flow, Kelvins, Metres, Pressure, Seconds, Tag, Temperature, Volume};

use super::replace::SQUIRTS;
use super::turn::Turn;
use super::{Answered, looks, scald, senses};
use crate::instrument::gauge as dial;
use crate::person::{Exposure, Source};
use crate::shown::{Bucket, Refusal, Shown, Sight};

quantity::constants! {
    /// Pipes come to rest after a stop is turned.
    const SETTLES: Constant<Seconds> = Constant::of("until pipes are at rest after a stop is turned", Seconds(20.0), Tag::Model("what a technician waits for"));
    /// Running until the glass is full of what stood in the tank.
    const GLASS: Constant<Seconds> = Constant::of("until a glass is full of what stood in the tank", Seconds(15.0), Tag::Model("a pipe's content and the glass"));
    /// Least flow that turns a meter's small dial: a fast drip.
    const DIAL_TURNS: Constant<Flow> = Constant::of("least flow that turns a meter's small dial", Flow(1e-6), Tag::CommonPractice);
    /// Largest amount run into buckets at once.
    const MOST_DRAWN: Constant<Volume> = Constant::of("most run into buckets at once", Volume::gallons(200.0), Tag::Model("more than the largest tank holds"));
    /// Drawn before the first temperature is taken: the pipe has to run hot.
    const FLUSH: Constant<Volume> = Constant::of("drawn before the first temperature is taken", Volume::litres(2.0), Tag::Model("the pipe has to run hot"));
    /// How long somebody with a bucket waits for a tap that only blows air.
    const PATIENCE: Constant<Seconds> = Constant::of("how long somebody waits at a tap that blows air", Seconds(120.0), Tag::Model("what a technician waits for"));
    /// A draw counts as run out when it has fallen by this.
    const FALL: Constant<Kelvins> = Constant::of("fall by which a draw counts as run out", Kelvins::fahrenheit(15.0), Tag::Memory("10 CFR 430 subpart B appendix E, first-hour test: 15 °F"));
    /// How long a splash clings before it is wiped off.
    pub(super) const SPLASH: Constant<Seconds> = Constant::of("how long a splash clings", Seconds(5.0), Tag::Model("until it is wiped off"));
    /// Most pieces a draw is watched in.
    const PIECES: Constant = Constant::new("most pieces a draw is watched in", 40.0, "1", Tag::Model("each below a fortieth of the draw"));
    /// How often somebody looks whether water follows the air.
    const GLANCE: Constant<Seconds> =
        Constant::of("how often a tap that blows air is looked at", Seconds(5.0), Tag::Model("a glance"));
}

/// Least piece: a thermometer in the stream follows no faster. Model: no source.
const PIECE: Volume = FLUSH.get();

fn opening(value: f64) -> Result<f64, Refusal> {
    if (0.0..=1.0).contains(&value) { Ok(value) } else { Err(Refusal::OutOfRange) }
}

/// The house's main valve, or the heater's cold valve.
pub(super) fn valve(turn: &mut Turn, of: fn(&mut Plumbing) -> &mut f64, to: f64, time: Seconds) -> Answered {
    let valve = of(&mut turn.s.home.plant.plumbing);
    let to = opening(to)?;
    if *valve == to {
        return Err(Refusal::AlreadySo);
    }
    *valve = to;
    turn.pass(time);
    Ok(Shown::Done)
}

/// A hot tap.
pub(super) fn tap(turn: &mut Turn, tap: Tap, to: f64, time: Seconds) -> Answered {
    let to = opening(to)?;
    let entry = turn.s.home.plant.plumbing.taps.get_mut(tap as usize).ok_or(Refusal::NotHere)?;
    if *entry == to {
        return Err(Refusal::AlreadySo);
    }
    *entry = to;
    turn.pass(time);
    let sights = looks::running(&turn.s.home.plant, tap).into_iter().collect();
    Ok(Shown::DoneWith { sights })
}

/// Runs a tap into buckets with a watch and a thermometer.
pub(super) fn bucket(turn: &mut Turn, tap: Tap, volume: Volume, time: Seconds) -> Answered {
    if !(volume.get() > 0.0 && volume <= MOST_DRAWN.get()) {
        return Err(Refusal::OutOfRange);
    }
    let was = senses::opening(&turn.s.home.plant, tap);
    set_tap(turn, tap, 1.0);
    if turn.s.home.plant.tap_flow(tap).get() <= 0.0 && !senses::spits(&turn.s.home.plant, tap) {
        set_tap(turn, tap, was);
        return Err(Refusal::NoFlow);
    }
    turn.attended = true;
    turn.pass(time / 2.0);
    let spat = let_air_out(turn, tap);
    if turn.s.home.plant.tap_flow(tap).get() <= 0.0 {
        let sights = looks::running(&turn.s.home.plant, tap).into_iter().collect();
        set_tap(turn, tap, was);
        return Ok(Shown::DoneWith { sights });
    }
    let mut shown = run(turn, tap, volume);
    shown.spat |= spat;
    set_tap(turn, tap, 0.0);
    turn.pass(time / 2.0);
    Ok(Shown::Bucket(shown))
}

/// Waits a while for the water behind the air. Returns whether there was air.
fn let_air_out(turn: &mut Turn, tap: Tap) -> bool {
    let began = turn.s.clock;
    let dry = |turn: &Turn| {
        let plant = &turn.s.home.plant;
        plant.tap_flow(tap).get() <= 0.0 && senses::spits(plant, tap)
    };
    let spat = dry(turn);
    while dry(turn) && turn.s.clock - began < PATIENCE.get() {
        turn.pass(GLANCE.get());
    }
    spat
}

fn set_tap(turn: &mut Turn, tap: Tap, to: f64) {
    if let Some(entry) = turn.s.home.plant.plumbing.taps.get_mut(tap as usize) {
        *entry = to;
    }
}

fn run(turn: &mut Turn, tap: Tap, volume: Volume) -> Bucket {
    let began = turn.s.clock;
    let pieces = (volume / PIECE).floor().clamp(1.0, PIECES.get());
    let piece = volume / pieces;
    let mut drawn = Volume(0.0);
    let mut first = None::<Temperature>;
    let mut fell_after = None;
    let mut spat = false;
    for _ in 0..pieces as u32 {
        let flow = turn.s.home.plant.tap_flow(tap);
        if flow.get() <= 0.0 {
            break;
        }
        spat |= senses::spits(&turn.s.home.plant, tap);
        turn.pass(Seconds(piece.get() / flow.get()));
        drawn += piece;
        let now = turn.s.home.plant.tap_temperature(tap);
        if drawn >= FLUSH.get() || drawn >= volume {
            let hot = *first.get_or_insert(now);
            if fell_after.is_none() && now.get() < hot.get() - FALL.get().get() {
                fell_after = Some(drawn);
            }
        }
    }
    let last = turn.s.home.plant.tap_temperature(tap);
    let took = (turn.s.clock - began).get();
    let flow = if took > 0.0 { Flow(drawn.get() / took) } else { Flow(0.0) };
    let read = |t| looks::on_thermometer(&turn.s, t);
    let (first, last) = (read(first.unwrap_or(last)), read(last));
    Bucket { tap, volume: drawn, flow, first, last, fell_after, spat }
}

/// The valve in the return of a recirculation loop.
pub(super) fn return_valve(turn: &mut Turn, to: f64, time: Seconds) -> Answered {
    let to = opening(to)?;
    let Some(loops) = &mut turn.s.home.plant.plumbing.recirculation else { return Err(Refusal::NotHere) };
    if loops.valve == to {
        return Err(Refusal::AlreadySo);
    }
    loops.valve = to;
    turn.pass(time);
    Ok(Shown::DoneWith { sights: meanwhile(turn) })
}

/// Windows open: what gas comes out is gone.
pub(super) fn ventilate(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    turn.s.me.ventilated = true;
    Ok(Shown::Done)
}

/// Warm air on a pipe, long enough for any ice in it.
pub(super) fn thaw(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    turn.s.home.plant.plumbing.frozen = false;
    Ok(Shown::DoneWith { sights: meanwhile(turn) })
}

/// The stops under a fixture: with them shut neither side passes, nor anything across.
pub(super) fn stops(turn: &mut Turn, tap: Tap, shut: bool, time: Seconds) -> Answered {
    if turn.s.home.plant.plumbing.is_shut(tap as usize) == shut {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    if let Some(fixture) = turn.s.home.plant.plumbing.fixtures.get_mut(tap as usize) {
        fixture.shut = shut;
    }
    turn.pass(SETTLES.get());
    Ok(Shown::DoneWith { sights: meanwhile(turn) })
}

/// The first water of one side, in a glass: one side alone, long enough for the pipe to run through.
pub(super) fn sample(turn: &mut Turn, tap: Tap, hot: bool, time: Seconds) -> Answered {
    let set = |turn: &mut Turn, hot: f64, cold: f64| {
        let plumbing = &mut turn.s.home.plant.plumbing;
        let was = (plumbing.taps.get(tap as usize).copied(), plumbing.cold_taps.get(tap as usize).copied());
        if let Some(side) = plumbing.taps.get_mut(tap as usize) {
            *side = hot;
        }
        if let Some(side) = plumbing.cold_taps.get_mut(tap as usize) {
            *side = cold;
        }
        (was.0.unwrap_or_default(), was.1.unwrap_or_default())
    };
    let one = |on: bool| if on { 1.0 } else { 0.0 };
    let was = set(turn, one(hot), one(!hot));
    if turn.s.home.plant.tap_flow(tap).get() <= 0.0 {
        set(turn, was.0, was.1);
        return Err(Refusal::NoFlow);
    }
    turn.pass(GLASS.get());
    // What the tank gives is what comes; the street's water has neither iron nor sulphide in it.
    let plant = &turn.s.home.plant;
    let (rusty, eggs) = (hot && plant.is_rusty(), hot && plant.smells_of_eggs());
    set(turn, was.0, was.1);
    turn.pass(Seconds((time - GLASS.get()).get().max(0.0)));
    Ok(Shown::DoneWith { sights: vec![Sight::Sample { hot, rusty, eggs }] })
}

/// The rod, unscrewed and screwed in again. Under pressure it would come out by itself.
pub(super) fn look_at_anode(turn: &mut Turn, time: Seconds) -> Answered {
    let plumbing = &turn.s.home.plant.plumbing;
    if plumbing.is_fed() || plumbing.pressure > SQUIRTS.get() {
        return Err(Refusal::UnderPressure);
    }
    turn.pass(time);
    let plant = &turn.s.home.plant;
    let (anode, length) = (plant.vessel.anode, Anode::length(plant.plate.height));
    let bare = Metres(length.get() * anode.bare());
    Ok(Shown::DoneWith { sights: vec![Sight::Rod { metal: anode.metal, bare, length }] })
}

/// The water meter, watched for a while: its small dial turns with a thread of water.
pub(super) fn read_meter(turn: &mut Turn, time: Seconds) -> Answered {
    turn.pass(time);
    let plant = &turn.s.home.plant;
    let books = &plant.plumbing.ledger;
    let reading = Volume::litres(books.main.mass.get() - books.back.mass.get());
    let turning = plant.meter_flow() >= DIAL_TURNS.get();
    Ok(Shown::DoneWith { sights: vec![Sight::WaterMeter { turning, reading }] })
}

/// The hose.
pub(super) fn hose(turn: &mut Turn, on: bool, time: Seconds) -> Answered {
    if turn.s.home.plant.plumbing.hose == on {
        return Err(Refusal::AlreadySo);
    }
    // It comes off before the walk and is on only after it.
    if !on {
        turn.s.home.plant.plumbing.hose = false;
    }
    turn.pass(time);
    turn.s.home.plant.plumbing.hose = on;
    Ok(Shown::Done)
}

/// The drain valve.
pub(super) fn drain(turn: &mut Turn, to: f64, time: Seconds) -> Answered {
    let to = opening(to)?;
    let plumbing = &mut turn.s.home.plant.plumbing;
    if plumbing.drain_valve == to {
        return Err(Refusal::AlreadySo);
    }
    plumbing.drain_valve = to;
    // What comes first is what stood at the bottom; cold water follows it in.
    let temperature = turn.s.home.plant.drain_temperature();
    turn.pass(time);
    let flow = turn.s.home.plant.drain_flow();
    if flow.get() > 0.0 && !turn.s.home.plant.plumbing.hose {
        // Without a hose it splashes whoever turned the valve, and clings.
        scald::own(turn, Exposure { source: Source::Splash, temperature, seconds: SPLASH.get() });
    }
    Ok(Shown::DoneWith { sights: vec![Sight::DrainRuns { flow }] })
}

/// The relief valve's lever.
pub(super) fn lever(turn: &mut Turn, up: bool, time: Seconds) -> Answered {
    let relief = &mut turn.s.home.plant.plumbing.relief;
    if relief.missing {
        return Err(Refusal::NotHere);
    }
    if relief.lever == up {
        return Err(Refusal::AlreadySo);
    }
    relief.lever = up;
    let solid = senses::full(&turn.s.home.plant);
    turn.pass(time);
    let solid = solid && senses::full(&turn.s.home.plant);
    let blocked = turn.s.home.plant.plumbing.relief.blocked;
    let seen = if blocked { Sight::LeverNothing } else { Sight::LeverFlow { solid } };
    let sights = if up { vec![seen] } else { Vec::new() };
    Ok(Shown::DoneWith { sights })
}

/// What one sees going on after a wait.
pub(super) fn meanwhile(turn: &Turn) -> Vec<Sight> {
    let plant = &turn.s.home.plant;
    let mut sights: Vec<Sight> = Tap::ALL.iter().filter_map(|tap| looks::running(plant, *tap)).collect();
    if plant.plumbing.drain_valve > 0.0 {
        sights.push(Sight::DrainRuns { flow: plant.drain_flow() });
    }
    if senses::relief_runs(plant) {
        sights.push(Sight::ReliefRunning);
    }
    sights
}

/// The gauge, its lazy hand set down.
pub(super) fn gauge(turn: &mut Turn, on: bool, time: Seconds) -> Answered {
    if turn.s.me.gauge == on {
        return Err(Refusal::AlreadySo);
    }
    turn.pass(time);
    turn.s.me.gauge = on;
    let plumbing = &mut turn.s.home.plant.plumbing;
    if on {
        plumbing.peak = plumbing.pressure;
    }
    Ok(Shown::Done)
}

/// A pressure as the kit's gauge shows it.
fn on_gauge(turn: &Turn, pressure: Pressure) -> Pressure {
    Pressure::psi(dial::read(pressure.to_psi(), turn.s.job.kit.gauge))
}

/// Reads the gauge.
pub(super) fn read_gauge(turn: &mut Turn, time: Seconds) -> Answered {
    if !turn.s.me.gauge {
        return Err(Refusal::NoGauge);
    }
    turn.pass(time);
    let plumbing = &turn.s.home.plant.plumbing;
    Ok(Shown::Pressure { now: on_gauge(turn, plumbing.pressure), highest: on_gauge(turn, plumbing.peak) })
}

/// Reads the air valve of an expansion tank. Under pressure the air is as tight as the water; the charge
/// itself shows only with the water side relieved.
pub(super) fn tank_charge(turn: &mut Turn, time: Seconds) -> Answered {
    if turn.s.home.plant.plumbing.expansion.is_none() {
        return Err(Refusal::NotHere);
    }
    turn.pass(time);
    let plumbing = &turn.s.home.plant.plumbing;
    let air = plumbing.expansion.filter(|tank| !tank.waterlogged).map(|tank| {
        on_gauge(turn, if plumbing.pressure > tank.charge { plumbing.pressure } else { tank.charge })
    });
    Ok(Shown::Charge { air })
}

/// Runs water out of an opening for a while, through the drain's own path but onto the floor: the law of
/// the orifice and the mass balance stay the plant's. Stops at a height, as a fraction of full.
pub(super) fn spill(turn: &mut Turn, time: Seconds, down_to: f64) {
    let plumbing = &mut turn.s.home.plant.plumbing;
    let (drain, hose, relief) = (plumbing.drain_valve, plumbing.hose, plumbing.relief);
    plumbing.relief.blocked = false;
    plumbing.drain_valve = 1.0;
    plumbing.hose = false;
    plumbing.relief.lever = true;
    turn.open = true;
    let mut left = time.get();
    while left > 0.0 && turn.s.home.plant.fill() > down_to {
        let piece = left.min(2.0);
        turn.pass(Seconds(piece));
        left -= piece;
    }
    let plumbing = &mut turn.s.home.plant.plumbing;
    plumbing.drain_valve = drain;
    plumbing.hose = hose;
    (plumbing.relief.lever, plumbing.relief.blocked) = (relief.lever, relief.blocked);
    turn.open = false;
    turn.pass(Seconds(left.max(0.0)));
}

/// Height of an element's flange as a fraction of full.
pub(super) fn flange_fill(turn: &Turn, level: Level) -> f64 {
    let plant = &turn.s.home.plant;
    senses::flange(plant, level) / plant.plate.height.get().max(1e-3)
}
