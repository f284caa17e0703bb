//! The loop that moves time.

use quantity::Seconds;
use solver::tank::{Inputs, Mixing, Source, Tank};
use solver::water;

use super::plan::{Plan, Relief, SHORTEST};
use super::vessel::{self, HALF_COIL};
use super::ways::Ways;
use crate::controls;
use crate::controls::limit::{NOTABLE, WARMING};
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

/// Most steps of one call: a guard that no ordinary call comes near.
const MOST_STEPS: u32 = 4_000_000;
/// Longest step while an element glows in air, s.
const GLOWING: f64 = 1.0;
/// Growth of water at 90 °C for each joule, m³/J: the fastest met below boiling (IAPWS-97: 7.0e-4 /K over
/// 965 kg/m³ and 4205 J/(kg·K), computed).
const FASTEST_GROWTH: f64 = 1.7e-10;

/// The jet of a stub beside the outlet stirs all of the top (model: the outlet falls by 15 °F and more within
/// 5 to 10 gallons, F37 of the trade sheet).
const STUB: Mixing = Mixing { strength: 1.5, decay: 0.25 };

/// One call under way.
pub(super) struct Run {
    /// Seconds since the call began.
    pub at: f64,
    pub happened: Vec<(Seconds, Happening)>,
    pub live: Live,
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
        let jumped = self.snap().into_iter().map(|what| (Seconds(0.0), what)).collect();
        let mut run = Run { at: 0.0, happened: jumped, live: self.energise(&[]), watts: [0.0; 2] };
        self.power(&mut run);
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

    /// Takes the powers of the network as it was solved.
    fn power(&self, run: &mut Run) {
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
        let valve = &self.plumbing.relief;
        let fastest = FASTEST_GROWTH * (run.watts[0] + run.watts[1]);
        let relief = Relief { open: valve.open, opens_at: valve.opens_at.get(), growth: fastest };
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
        self.relieve(run, &plan);
        self.water_news(run, &ways, &plan, before);
        if again {
            run.live = self.energise(&[]);
            self.power(run);
        }
    }

    /// How long currents and flows may stand as they are, s.
    fn horizon(&self, run: &Run, wetted: [bool; 2]) -> f64 {
        let soonest = controls::horizon(self, &run.live, wetted).get();
        let glows = (0..2).any(|i| !wetted[i] && run.watts[i] > 1.0 && !self.elements[i].open);
        // Water that rises over an element, or leaves it, is followed closely enough by the flow's own steps.
        let soonest = if glows { soonest.min(GLOWING) } else { soonest };
        // A limit beside a hot screw is warmed by it as the screw warms.
        if self.heat_beside_limit() > NOTABLE.get() { soonest.min(WARMING.get().get()) } else { soonest }
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
}
