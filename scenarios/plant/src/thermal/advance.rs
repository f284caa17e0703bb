//! The loop that moves time.

use quantity::{Pressure, Seconds, Temperature, Volume};
use solver::tank::{Cross, Filling, Inputs, Mixing, Probe, Report, Source, Stop, Tank};
use solver::water;

use super::plan::{NEAR, Plan, Relief, SHORTEST, ajar, is_air};
use super::vessel::{self, HALF_COIL};
use super::ways::{EMPTY, NO_AIR, Ways};
use crate::controls::{self, thermostat};
use crate::electrical::Live;
use crate::waterworks::{DipTube, Tap};
use crate::{Happening, Level, Plant};

/// How finely time and height are cut. Only checks of accuracy choose other than the ordinary.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fineness {
    /// Layers of the tank.
    pub layers: u32,
    /// Factor on every step: 0.1 for ten times smaller.
    pub steps: f64,
}

impl Fineness {
    /// As every drill is computed.
    pub const ORDINARY: Self = Self { layers: solver::tank::LAYERS, steps: 1.0 };
}

/// Probes on the wall, in the order of the tank's list.
const UPPER: u32 = 0;
const LOWER: u32 = 1;
const LIMIT: u32 = 2;
const RELIEF: u32 = 3;
const LEVELS: [Level; 2] = [Level::Upper, Level::Lower];

/// Lag of the relief valve's probe, s (model: a wax capsule in the water).
const RELIEF_LAG: f64 = 15.0;
/// Most steps of one call: a guard that no ordinary call comes near.
const MOST_STEPS: u32 = 4_000_000;
/// Longest step while an element glows in air, s.
const GLOWING: f64 = 1.0;
/// Share of a line's water that carries its air out (model: 1 to 3 minutes of spitting, trade sheet 5.10).
const CARRIED: f64 = 0.15;

/// The jet of a stub beside the outlet stirs all of the top (model: the outlet falls by 15 °F and more within
/// 5 to 10 gallons, F37 of the trade sheet).
const STUB: Mixing = Mixing { strength: 1.5, decay: 0.25 };

/// One call under way.
struct Run {
    at: f64,
    happened: Vec<(Seconds, Happening)>,
    live: Live,
    watts: [f64; 2],
}

impl Run {
    fn note(&mut self, what: Happening) {
        self.happened.push((Seconds(self.at), what));
    }
}

impl Plant {
    /// Lets time pass: currents, heat, switching, water, pressure. Returns what happened, each with its
    /// moment counted from the start of this call.
    pub fn advance(&mut self, time: Seconds) -> Vec<(Seconds, Happening)> {
        self.advance_with(time, Fineness::ORDINARY)
    }

    /// The same with other steps and layers.
    pub fn advance_with(&mut self, time: Seconds, fineness: Fineness) -> Vec<(Seconds, Happening)> {
        let total = if time.get().is_finite() { time.get().max(0.0) } else { 0.0 };
        let tank = vessel::vessel(&self.plate).refined(fineness.layers, fineness.steps);
        self.reconcile();
        self.set_probes();
        let live = self.energise(&[]);
        let mut run = Run { at: 0.0, happened: Vec::new(), live, watts: [0.0; 2] };
        self.switch(&mut run);
        self.power(&mut run, true);
        for _ in 0..MOST_STEPS {
            let left = total - run.at;
            if left <= 1e-9 {
                break;
            }
            self.step(&tank, &mut run, left, fineness.steps);
        }
        self.clock += Seconds(total);
        run.happened
    }

    /// Solves the network again if asked, and takes its powers.
    fn power(&self, run: &mut Run, again: bool) {
        if again {
            run.live = self.energise(&[]);
        }
        // What leaks through an open contact heats nothing.
        let heats = |watts: f64| if watts > 1e-3 { watts } else { 0.0 };
        run.watts = LEVELS.map(|level| heats(run.live.element_watts(level).get()));
    }

    fn step(&mut self, tank: &Tank, run: &mut Run, left: f64, fineness: f64) {
        let ways = Ways::of(self);
        let before = self.plumbing.pressure.get();
        let wetted = LEVELS.map(|level| self.wetted(level));
        let mut most = left.min(self.horizon(run, wetted).max(SHORTEST));
        if fineness < 1.0 {
            most = most.min(600.0 * fineness);
        }
        let growth = self.growth(run);
        let relief =
            Relief { open: self.plumbing.relief.open, opens_at: self.plumbing.relief.opens_at.get() };
        let mut plan = ways.plan(most, growth, before, relief, self.cold_side_is_warm());
        plan.time = plan.time.min(most);
        let inputs = self.inputs(run, &plan);
        let watch = self.watch();
        let Ok(report) = tank.advance(&mut self.tank, &inputs, plan.time, &watch) else {
            // Only numbers that are not finite can bring this about; time still passes.
            run.at += left;
            return;
        };
        self.book(&plan, &report, run.watts);
        run.at += report.elapsed;
        self.settle_pressure(tank, &plan, report.elapsed);
        self.carry_air(&ways, &plan, report.elapsed);
        let mut again = self.burn(run, report.elapsed, wetted);
        self.read_probes();
        again |= self.switch(run);
        self.relieve(run, &plan, &report);
        self.water_news(run, &ways, &plan, before);
        if again {
            self.power(run, true);
        }
    }

    /// How long currents and flows may stand as they are, s.
    fn horizon(&self, run: &Run, wetted: [bool; 2]) -> f64 {
        let soonest = controls::horizon(self, &run.live, wetted).get();
        let glows = (0..2).any(|i| !wetted[i] && run.watts[i] > 1.0 && !self.elements[i].open);
        // Water that rises over an element, or leaves it, is followed closely enough by the flow's own steps.
        if glows { soonest.min(GLOWING) } else { soonest }
    }

    /// Growth of the water by the heat it takes up, m³/s.
    fn growth(&self, run: &Run) -> f64 {
        let rate = |celsius: f64| {
            let h = water::enthalpy(celsius);
            (water::specific_volume(h + 500.0) - water::specific_volume(h)) / 500.0
        };
        let mut growth = 0.0;
        for level in LEVELS {
            let height = vessel::element_height(&self.plate, level);
            if let (Some(celsius), true) = (self.tank.temperature_at(height), run.watts[level.index()] > 0.0)
            {
                let wet = self.tank.wetted_share(height, 2.0 * HALF_COIL);
                growth += rate(celsius) * run.watts[level.index()] * wet;
            }
        }
        if let Some(mean) = self.tank.mean() {
            growth -= rate(mean) * vessel::standby_loss(&self.plate) * (mean - self.room.to_celsius());
        }
        growth
    }

    fn inputs(&self, run: &Run, plan: &Plan) -> Inputs {
        let mut inputs = Inputs::idle(self.room.to_celsius(), vessel::standby_loss(&self.plate));
        inputs.sources = LEVELS
            .iter()
            .filter(|level| run.watts[level.index()] > 0.0)
            .map(|&level| Source {
                centre: vessel::element_height(&self.plate, level),
                spread: 2.0 * HALF_COIL,
                watts: run.watts[level.index()],
            })
            .collect();
        inputs.draw = plan.flows.top();
        inputs.drain = plan.flows.bottom();
        inputs.filling = plan.filling;
        inputs.inlet_height = vessel::inlet_height(&self.plate, self.vessel.dip_tube).get();
        inputs.inlet_celsius = water::temperature(self.inlet_enthalpy(plan));
        if self.vessel.dip_tube != DipTube::Whole {
            inputs.mixing = STUB;
        }
        inputs
    }

    /// Puts the controls' bodies on the tank's wall.
    fn set_probes(&mut self) {
        let room = self.room.to_celsius();
        let one_above = Temperature(self.room.get() + 1.0);
        let mut probes: Vec<Probe> = LEVELS
            .iter()
            .map(|&level| {
                let i = level.index();
                let settled = self.thermostats[i].settled(one_above, self.insulated[i], self.room);
                Probe {
                    height: vessel::control_height(&self.plate, level),
                    lag: thermostat::BODY_LAG.get(),
                    coupling: settled.get() - self.room.get(),
                    bias: 0.0,
                    celsius: self.thermostats[i].body.to_celsius(),
                }
            })
            .collect();
        let settled = self.limit.settled(one_above, self.insulated[0], self.room);
        probes.push(Probe {
            height: vessel::limit_height(&self.plate),
            lag: thermostat::BODY_LAG.get(),
            coupling: settled.get() - self.room.get(),
            bias: 0.0,
            celsius: self.limit.body.to_celsius(),
        });
        let kept = self.tank.probes.get(RELIEF as usize).map(|p| p.celsius);
        let height = vessel::relief_height(&self.plate);
        let water = self.tank.temperature_at(height).unwrap_or(room);
        probes.push(Probe {
            height,
            lag: RELIEF_LAG,
            coupling: 1.0,
            bias: 0.0,
            celsius: kept.unwrap_or(water),
        });
        self.tank.probes = probes;
    }

    fn read_probes(&mut self) {
        let at = |i: u32| self.tank.probes.get(i as usize).map(|p| Temperature::celsius(p.celsius));
        let (upper, lower, limit) = (at(UPPER), at(LOWER), at(LIMIT));
        for (thermostat, body) in self.thermostats.iter_mut().zip([upper, lower]) {
            thermostat.body = body.unwrap_or(thermostat.body);
        }
        self.limit.body = limit.unwrap_or(self.limit.body);
    }

    /// Levels at which the tank has to stop.
    fn watch(&self) -> Vec<Cross> {
        let mut watch = Vec::with_capacity(4);
        for (probe, thermostat) in [UPPER, LOWER].into_iter().zip(&self.thermostats) {
            let cross = if thermostat.calling {
                Cross { probe, rising: Some(thermostat.cut_out().to_celsius()), falling: None }
            } else {
                Cross { probe, rising: None, falling: Some(thermostat.cut_in().to_celsius()) }
            };
            watch.push(cross);
        }
        if !self.limit.tripped {
            watch.push(Cross { probe: LIMIT, rising: Some(self.limit.trip.to_celsius()), falling: None });
        }
        let relief = &self.plumbing.relief;
        watch.push(if relief.open {
            Cross { probe: RELIEF, rising: None, falling: Some(self.relief_recloses().to_celsius()) }
        } else {
            Cross { probe: RELIEF, rising: Some(relief.opens_hot.to_celsius()), falling: None }
        });
        watch
    }

    /// Lets blades and limit jump that stand past their points. Returns whether one moved.
    fn switch(&mut self, run: &mut Run) -> bool {
        let beside = self.tank.temperature_at(vessel::limit_height(&self.plate));
        let water = beside.map_or(self.room, Temperature::celsius);
        let jumped = controls::snap(self, water);
        let moved = !jumped.is_empty();
        jumped.into_iter().for_each(|what| run.note(what));
        moved
    }

    /// Breakers, joints and elements in air. Returns whether one of them changed the circuit.
    fn burn(&mut self, run: &mut Run, elapsed: f64, wetted: [bool; 2]) -> bool {
        let (time, start) = (Seconds(elapsed), Seconds(run.at - elapsed));
        let beside = LEVELS.map(|level| {
            let height = vessel::element_height(&self.plate, level);
            self.tank.temperature_at(height).map_or(self.room, Temperature::celsius)
        });
        let burnt = controls::burn(self, time, &run.live, beside, wetted);
        let changed = !burnt.is_empty();
        run.happened.extend(burnt.into_iter().map(|(at, what)| (start + at, what)));
        changed
    }

    /// Pressure that goes with the water there is now, and the highest.
    fn settle_pressure(&mut self, tank: &Tank, plan: &Plan, elapsed: f64) {
        if plan.closes && elapsed >= plan.time - 1e-9 {
            self.plumbing.air.0 = 0.0;
        }
        let mut now = Ways::of(self);
        if !now.has_void() && plan.filling == Filling::KeepFull && now.main_reaches(plan.pressure) {
            // What the growth was guessed wrong by comes from the main, or goes there.
            self.exchange_with_main(-now.released(plan.pressure));
            now = Ways::of(self);
        }
        let mut pressure = now.settled_pressure();
        if let Some(floor) = now.floor().filter(|floor| pressure <= *floor) {
            self.give_back(tank, -now.released(floor));
            let void = Ways::of(self).void();
            // A millilitre or two is rounding of the books, not air.
            self.plumbing.air.0 = if void > 2e-6 { void * (floor + water::ATMOSPHERE) } else { 0.0 };
            pressure = floor;
        }
        self.plumbing.pressure = Pressure(pressure);
        if pressure > self.plumbing.peak.get() {
            self.plumbing.peak = Pressure(pressure);
        }
    }

    /// Lets a volume fall back from the tank into the cold side, where air takes its place.
    fn give_back(&mut self, tank: &Tank, volume: f64) {
        const MOMENT: f64 = 1e-3;
        if volume <= 0.0 {
            return;
        }
        let mut inputs = Inputs::idle(self.room.to_celsius(), 0.0);
        inputs.filling = Filling::Flow(-volume / MOMENT);
        inputs.inlet_height = vessel::inlet_height(&self.plate, self.vessel.dip_tube).get();
        if let Ok(report) = tank.advance(&mut self.tank, &inputs, MOMENT, &[]) {
            self.plumbing.cold_side.add(report.expelled, report.expelled_energy);
        }
    }

    /// Air drawn into the lines, and carried out again by the water.
    fn carry_air(&mut self, ways: &Ways, plan: &Plan, elapsed: f64) {
        let breathes = ways.vented && is_air(self.plumbing.air.get());
        for (i, &tap) in Tap::ALL.iter().enumerate() {
            let open = self.plumbing.taps.get(i).is_some_and(|t| ajar(*t));
            let Some(air) = self.plumbing.line_air.get_mut(i) else { continue };
            if breathes {
                let least = if open { tap.line() } else { Ways::trunk(tap.line()) };
                air.0 = air.0.max(least.0);
            } else if let Some(flow) = plan.flows.taps.get(i) {
                air.0 = (air.0 - CARRIED * flow * elapsed).max(0.0);
            }
        }
    }

    /// Opens and closes the relief valve.
    fn relieve(&mut self, run: &mut Run, plan: &Plan, report: &Report) {
        let hot = matches!(report.stop, Stop::Crossed { probe: RELIEF, rising: true });
        let pressure = self.plumbing.pressure;
        let still_hot = self.relief_water() > self.relief_recloses();
        let shut = !self.plumbing.relief.open;
        if shut && (hot || pressure.get() >= self.plumbing.relief.opens_at.get() - NEAR) {
            self.plumbing.relief.open = true;
            run.note(Happening::ReliefOpened);
        } else if !shut && !still_hot {
            // Less than a drop in two seconds: closed.
            if plan.flows.relief < 2.5e-8 && !self.plumbing.relief.lever {
                self.plumbing.relief.open = false;
                run.note(Happening::ReliefClosed);
            }
        }
    }

    /// What a person beside the tank would call news of the water.
    fn water_news(&mut self, run: &mut Run, before: &Ways, plan: &Plan, pressure: f64) {
        let after = Ways::of(self);
        if before.level > EMPTY && after.level <= EMPTY {
            run.note(Happening::TankEmpty);
        }
        if before.air > NO_AIR && !after.has_void() {
            run.note(Happening::TankFull);
        }
        if ajar(self.plumbing.drain_valve) && after.level > EMPTY {
            const STILL: f64 = 2e-6;
            let ran = before.flows(pressure, before.level).drain > STILL;
            let runs = after.flows(self.plumbing.pressure.get(), after.level).drain > STILL;
            if ran && !runs && plan.flows.supply <= STILL {
                run.note(Happening::DrainHeldByVacuum);
            }
        }
    }

    /// Adds water to what lies on the floor.
    pub(super) fn spill(&mut self, volume: f64) {
        self.plumbing.on_floor += Volume(volume.max(0.0));
    }
}
