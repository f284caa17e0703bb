//! The loop that moves time.

use std::rc::Rc;

use quantity::{Constant, Seconds, Tag};
use solver::tank::{Filling, Inputs, Mixing, Port, Source, Tank};
use solver::water;

use super::figures as f;
use super::flows::WaysOut;
use super::junctions::Headers;
use super::plan::{Plan, Relief, SHORTEST, ajar};
use super::pressure::Before;
use super::vessel::{self, HALF_COIL};
use crate::controls;
use crate::electrical::Live;
use crate::waterworks::DipTube;
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

pub(super) const LEVELS: [Level; 2] = [Level::Upper, Level::Lower];

quantity::constants! {
    /// Most steps of one call: a guard that no ordinary call comes near.
    const MOST_STEPS: Constant<u32> = Constant::new("most steps of one call", 4_000_000, "", Tag::Model("a guard"));
    /// Longest step while an element glows in air.
    const GLOWING: Constant = Constant::new("longest step while an element glows", 1.0, "s", Tag::Model("step"));
    /// Longest step where accuracy is checked with finer ones.
    const FINE: Constant = Constant::new("longest fine step, before its factor", 600.0, "s", Tag::Model("step"));
    /// Growth of water for each joule at the fastest met below boiling.
    const FASTEST_GROWTH: Constant = Constant::new(
        "fastest growth of water by heat",
        1.7e-10,
        "m3/J",
        Tag::Computed("IAPWS-97 at 90 C: 7.0e-4 /K over 965 kg/m3 and 4205 J/(kg K)"),
    );
    /// The jet of a stub beside the outlet stirs all of the top.
    const STUB: Constant<[f64; 2]> = Constant::new(
        "eddy of a stub's jet, and its reach (m)",
        [1.5, 0.25],
        "m2/s per m3/s",
        Tag::Model("the outlet falls by 15 F and more within 5 to 10 gallons, fault F37"),
    );
    /// Power that counts as none.
    const NO_POWER: Constant = Constant::new("power that counts as none", 1e-3, "W", Tag::Model("leakage"));
    /// Step of enthalpy over which growth is taken.
    const SMALL_HEAT: Constant = Constant::new("step of enthalpy", 500.0, "J/kg", Tag::Model("0.1 K"));
    /// Longest step while a contact or a coil may come or go.
    const WATCHED: Constant =
        Constant::new("longest step while a contact or coil may come or go", 60.0, "s", Tag::Model("step"));
    /// Longest step while a burst clears the drain.
    const CLEARING: Constant = Constant::new("longest step while the drain clears", 2.0, "s", Tag::Model("step"));
}

/// One call under way.
pub(super) struct Run {
    /// Seconds since the call began.
    pub at: f64,
    pub happened: Vec<(Seconds, Happening)>,
    pub live: Rc<Live>,
    /// Heat of the two elements, W.
    pub watts: [f64; 2],
}

impl Run {
    pub fn note(&mut self, what: Happening) {
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
        let kept = self.keep_hours(0.0);
        let jumped = kept.into_iter().chain(self.snap()).map(|what| (Seconds(0.0), what)).collect();
        self.come_and_go();
        let mut run = Run { at: 0.0, happened: jumped, live: self.standing(), watts: [0.0; 2] };
        self.energised(&mut run);
        for _ in 0..MOST_STEPS.get() {
            let left = total - run.at;
            if left <= f::SPECK.get() {
                break;
            }
            self.step(&tank, &mut run, left, fineness.steps);
        }
        self.clock += Seconds(total);
        run.happened
    }

    /// Follows the network as it was just solved. A board whose supply came or went moves its relays, and it is
    /// solved again.
    fn energised(&mut self, run: &mut Run) {
        if self.supply_board(&run.live) && self.switch(run) {
            run.live = self.standing();
        }
        self.power(run);
    }

    /// Takes the powers of the network as it was solved.
    fn power(&self, run: &mut Run) {
        // What leaks through an open contact heats nothing.
        let heats = |watts: f64| if watts > NO_POWER.get() { watts } else { 0.0 };
        run.watts = LEVELS.map(|level| heats(run.live.element_watts(level).get()));
    }

    fn step(&mut self, tank: &Tank, run: &mut Run, left: f64, fineness: f64) {
        self.wash_seat();
        let mut ways = self.laid();
        let pressure = self.plumbing.pressure.get();
        let before = Before { level: ways.level, air: ways.air, ran: ways.drain_at(pressure) };
        let wetted = LEVELS.map(|level| self.wetted(level));
        let mut most = left.min(self.horizon(run, wetted).max(SHORTEST.get()));
        if fineness < 1.0 {
            most = most.min(FINE.get() * fineness);
        }
        if self.plumbing.drain_grit > 0.0 && ajar(self.plumbing.drain_valve) {
            most = most.min(CLEARING.get());
        }
        let growth = self.growth(run);
        let valve = &self.plumbing.relief;
        let fastest = FASTEST_GROWTH.get() * (run.watts[0] + run.watts[1]);
        let relief =
            Relief { open: valve.open || valve.blocked, opens_at: valve.opens_at.get(), growth: fastest };
        let mut plan = ways.plan(most, growth, pressure, relief, self.cold_side_is_warm());
        plan.time = plan.time.min(most);
        let line = self.line_enthalpy();
        let first = self.headers(&plan.flows, line, self.cold_enthalpy());
        let cold = self.given_enthalpy(&plan, &first);
        let headers = self.headers(&plan.flows, line, cold);
        let inputs = self.inputs(run, &plan, &headers, cold);
        let watch = self.watch();
        let Ok(report) = tank.advance(&mut self.tank, &inputs, plan.time, &watch) else {
            // Only numbers that are not finite can bring this about; time still passes.
            run.at += left;
            return;
        };
        self.book(&plan, &report, run.watts, cold);
        run.at += report.elapsed;
        self.settle_pressure(tank, &mut ways, &plan, report.elapsed);
        self.carry_air(&ways, &plan, report.elapsed);
        self.age_water(&plan, report.elapsed);
        self.carry_grit(&ways, &plan, report.elapsed);
        let mut again = self.burn(run, report.elapsed, wetted);
        self.read_probes();
        again |= self.switch(run);
        self.relieve(run, &plan);
        self.water_news(run, before, &mut ways, &plan);
        if again {
            run.live = self.standing();
            self.energised(run);
        }
    }

    /// How long currents and flows may stand as they are, s.
    fn horizon(&self, run: &Run, wetted: [bool; 2]) -> f64 {
        let soonest = controls::horizon(self, &run.live, wetted).get();
        let glows = (0..2).any(|i| !wetted[i] && run.watts[i] > 1.0 && !self.elements[i].is_broken());
        // Water that rises over an element, or leaves it, is followed closely enough by the flow's own steps.
        let soonest = if glows { soonest.min(GLOWING.get()) } else { soonest };
        let soonest = if self.comes_and_goes(run) { soonest.min(WATCHED.get()) } else { soonest };
        let now = Seconds(self.clock.get() + run.at);
        let hours = self.boxes().filter_map(|fitted| fitted.hours);
        hours.fold(soonest, |soonest, hours| soonest.min(hours.until(now).get()))
    }

    /// Growth of the water by the heat it takes up, m³/s.
    fn growth(&self, run: &Run) -> f64 {
        let rate = |celsius: f64| {
            let h = water::enthalpy(celsius);
            (water::specific_volume(h + SMALL_HEAT.get()) - water::specific_volume(h)) / SMALL_HEAT.get()
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
            growth -= rate(mean) * self.loss() * (mean - self.room.to_celsius());
        }
        growth
    }

    /// Heat loss of the full tank, W/K.
    fn loss(&self) -> f64 {
        let rising = if self.plumbing.traps.fitted { 0.0 } else { f::NO_TRAP_LOSS.get() };
        vessel::standby_loss(&self.plate) + rising
    }

    fn inputs(&self, run: &Run, plan: &Plan, headers: &Headers, cold: f64) -> Inputs {
        let flows = &plan.flows;
        let tube = vessel::inlet_height(&self.plate, self.vessel.dip_tube).get();
        let top = self.plate.height.get();
        let (inlet, outlet) = if self.plumbing.reversed { (top, tube) } else { (tube, top) };
        let mut inputs = Inputs::idle(inlet, self.room.to_celsius(), self.loss());
        inputs.warming = self.warming(run);
        inputs.sources = LEVELS
            .iter()
            .filter(|level| run.watts[level.index()] > 0.0)
            .map(|&level| Source {
                centre: vessel::element_height(&self.plate, level),
                spread: 2.0 * HALF_COIL,
                watts: run.watts[level.index()],
            })
            .collect();
        let ways_out = WaysOut::of(flows);
        (inputs.draw, inputs.drain) = (ways_out.draw, ways_out.drain);
        inputs.outlet_height = self.plumbing.reversed.then_some(tube);
        inputs.ports = [(outlet, -ways_out.line), (top, -flows.vents()), (0.0, -ways_out.bottom)]
            .into_iter()
            .map(|(height, flow)| Port { height, flow, celsius: 0.0 })
            .collect();
        // Water pushed back through the outlet nipple comes in there.
        let (pushed, celsius) = (flows.pushed_back(), water::temperature(headers.hot));
        inputs.ports.push(Port { height: outlet, flow: pushed, celsius });
        inputs.filling = match plan.filling {
            Filling::Flow(all) => Filling::Flow(all - pushed),
            Filling::KeepFull => Filling::KeepFull,
        };
        inputs.inlet_celsius = water::temperature(cold);
        if self.vessel.dip_tube != DipTube::Whole || self.plumbing.reversed {
            let [strength, decay] = STUB.get();
            inputs.mixing = Mixing { strength, decay };
        }
        inputs
    }
}
