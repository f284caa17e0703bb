//! One step of fixed length, and how long it may be.

use super::conduction::Scratch;
use super::flow::{Parcel, Plume};
use super::heat::STIRS;
use super::probe::Lags;
use super::{Filling, Inputs, Report, Slug, Source, State, Tank};
use crate::water;

/// A leak rather than a draw, m³/s: 0.6 gallons a minute. Its front creeps, so steps may be longer.
const TRICKLE: f64 = 4e-5;

/// Longest step of a draw, s.
const BRISK: f64 = 3.0;
/// Longest step of a trickle that has just begun while heat comes in and while none does, s.
const SLOW: [f64; 2] = [20.0, 60.0];
/// Longest step of any flow while heat comes in and while none does, s.
const LONGEST: [f64; 2] = [60.0, 60.0];
/// How long a flow lasts before its steps grow, s.
const SETTLED: f64 = 150.0;
/// How long it lasts before they grow faster still, s: longer than anybody showers.
const STEADY: f64 = 600.0;
/// Most of a layer, of the ordinary number of them, that comes in during a step.
const FRONT: f64 = 1.2;
/// Change of a flow that makes it another, as a share of it.
const ANOTHER: f64 = 0.2;
/// Strength of the eddy up to which that holds, m²/s per m³/s; beside a stub's 1.5 it is 2 s.
const EDDY: f64 = 1.0;
/// Heat of one step and source at rest, J: from the first moments after a change to when nothing has happened for long,
/// growing by so much a second. Less than 0.3 K of the water over an element.
const DOSE: (f64, f64, f64) = (40e3, 180e3, 135.0);

/// Work space of a run of steps; holds no state.
pub(super) struct Work {
    conduction: Scratch,
    order: Vec<(f64, usize)>,
    beside: Vec<Option<f64>>,
    pub(super) waters: Vec<f64>,
    slugs: Vec<Slug>,
}

impl Work {
    /// For a tank of so many layers.
    pub(super) fn of(layers: u32) -> Self {
        let most = 2 * layers as usize;
        Self {
            conduction: Scratch::with_room(most),
            order: Vec::with_capacity(PROBES),
            beside: Vec::with_capacity(PROBES),
            waters: Vec::with_capacity(PROBES),
            slugs: Vec::with_capacity(most),
        }
    }
}

/// As many bodies on the wall as a heater has.
const PROBES: usize = 5;

impl Tank {
    /// Longest step that keeps the splitting error small, s: short while water moves or heat comes in,
    /// growing with the time that nothing has happened.
    pub(super) fn step_length(&self, state: &State, inputs: &Inputs) -> f64 {
        let fastest = inputs.fastest();
        let watts = inputs.watts();
        let either = |[heated, cold]: [f64; 2]| if watts > STIRS { heated } else { cold };
        let full = if fastest > 0.0 {
            let most = if fastest < TRICKLE {
                let slower = TRICKLE / fastest;
                f64::min(either(SLOW), SLOW[0] * slower * slower)
            } else {
                // What a strong eddy spreads over has to be fed in small parts.
                BRISK * f64::min(1.0, EDDY / inputs.mixing.strength.max(EDDY))
            };
            // What flows on and on has settled around the inlet.
            let wild = inputs.mixing.strength > EDDY;
            let longer = |than: f64| f64::max(1.0, state.quiet / than);
            let settled = if wild { 1.0 } else { longer(SETTLED) * longer(STEADY) };
            let front = FRONT * self.layer() * f64::from(self.layers) / 48.0;
            f64::min(f64::min(most * settled, either(LONGEST)), front / fastest)
        } else {
            let idle = (0.5 * state.quiet).clamp(20.0, 300.0);
            let (least, most, growth) = DOSE;
            let dose = (growth * state.quiet).clamp(least, most);
            let strongest = inputs.sources.iter().map(|source| source.watts).fold(0.0, f64::max);
            if strongest > 0.0 { f64::min(idle, dose / strongest) } else { idle }
        };
        let seep = inputs.seep();
        let full = if seep > 0.0 { f64::min(full, 0.5 * self.layer() / seep) } else { full };
        full * self.step_scale
    }

    /// Advances by `dt` and adds to the report.
    pub(super) fn step(
        &self,
        state: &mut State,
        inputs: &Inputs,
        dt: f64,
        work: &mut Work,
        report: &mut Report,
    ) {
        // The targets at the end of the last step are those at the start of this one.
        if work.waters.len() != state.probes.len() {
            work.waters.clear();
            work.waters.extend(
                state.probes.iter().map(|p| p.target(state.temperature_at(p.height), inputs.ambient)),
            );
        }
        let moving = inputs.fastest() > 0.0;
        if state.moving && !moving {
            state.regrid(self.layer(), &mut work.slugs);
            state.thin(inputs, self.layer());
        } else if moving && !state.moving {
            state.split(self.layer(), &mut work.slugs);
        }
        state.moving = moving;
        let (heated, fastest) = (inputs.heated(), inputs.fastest());
        if (fastest - state.flow).abs() > ANOTHER * fastest {
            state.flow = fastest;
            state.quiet = 0.0;
        }
        if state.heated != heated {
            state.quiet = 0.0;
        }
        state.heated = heated;
        // Half the flow and heat before and half after, so that splitting them from conduction is of second
        // order.
        let half = if moving { 0.5 * dt } else { dt };
        let (flow, plume) = self.move_water(state, inputs, half, report);
        let count = state.slugs.len();
        // Less than a microgram has no temperature worth the rounding.
        state.slugs.retain(|slug| slug.mass > 1e-9);
        work.conduction.plume = plume.filter(|_| moving && count == state.slugs.len());
        work.conduction.stirred.clear();
        if heated {
            self.heat(state, inputs, 0.5 * dt, &mut work.conduction.stirred, report);
        }
        state.overturn();
        report.lost += state.conduct(&mut work.conduction, inputs, self.height, flow, dt);
        if heated {
            self.heat(state, inputs, 0.5 * dt, &mut work.conduction.stirred, report);
        }
        if moving {
            self.move_water(state, inputs, half, report);
        }
        state.overturn();
        if moving {
            self.gather(state, inputs, &mut work.slugs);
        }
        state.tidy(self.layer(), self.layers);
        let heights = state.probes.iter().map(|probe| probe.height);
        state.temperatures_at(heights, &mut work.order, &mut work.beside);
        let mut lags = Lags::over(dt);
        for ((probe, water), from) in state.probes.iter_mut().zip(&work.beside).zip(&mut work.waters) {
            let to = probe.target(*water, inputs.ambient);
            probe.celsius = lags.follow(probe, *from, to);
            *from = to;
        }
        if let Some(warming) = &inputs.warming
            && let Some(probe) = state.probes.get_mut(warming.probe as usize)
        {
            probe.celsius += warming.adds(probe.lag, report.elapsed, dt);
        }
        state.quiet += dt;
        report.elapsed += dt;
        report.steps += 1;
    }

    /// Joins what is alike while water moves, except where it is about to be heated.
    fn gather(&self, state: &mut State, inputs: &Inputs, scratch: &mut Vec<Slug>) {
        let (area, layer) = (state.area, self.layer());
        let reach = |source: &Source| {
            let half = 0.5 * source.spread;
            ((source.centre - half) * area - layer, (source.centre + half) * area + 0.5 * layer)
        };
        let mut strong = inputs.sources.iter().filter(|source| source.watts > STIRS).map(reach);
        // A heater has two at most.
        match (strong.next(), strong.next(), strong.next()) {
            (None, ..) => state.gather(layer, scratch, |_, _| false),
            (Some((low, high)), None, _) => state.gather(layer, scratch, |from, to| from < high && to > low),
            _ => state.gather(layer, scratch, |from, to| {
                let all = inputs.sources.iter().filter(|source| source.watts > STIRS);
                all.map(reach).any(|(low, high)| from < high && to > low)
            }),
        }
    }

    /// Flows of one step; returns the flow at the inlet in m³/s and what it stirs.
    fn move_water(
        &self,
        state: &mut State,
        inputs: &Inputs,
        dt: f64,
        report: &mut Report,
    ) -> (f64, Option<Plume>) {
        let mut plume = None;
        let moving = inputs.fastest() > 0.0;
        self.exchange(state, inputs, dt, report);
        if inputs.draw > 0.0 {
            let (out, missing) = match inputs.outlet_height {
                Some(height) => state.take_near(height, inputs.draw * dt),
                None => state.take_top(inputs.draw * dt),
            };
            report.drawn += out.mass;
            report.drawn_energy += out.energy;
            report.missing += missing;
        } else {
            state.edge = state.slugs.last().map_or(0.0, |s| s.enthalpy);
        }
        if inputs.drain > 0.0 {
            let (out, missing) = state.take_bottom(inputs.drain * dt);
            report.drained += out.mass;
            report.drained_energy += out.energy;
            report.missing += missing;
        }
        let wanted = match inputs.filling {
            Filling::KeepFull => self.volume() - state.water_volume(),
            Filling::Flow(flow) => flow * dt,
        };
        if wanted > 0.0 {
            let enthalpy = water::enthalpy(inputs.inlet_celsius);
            let mass = wanted / water::specific_volume(enthalpy);
            let parcel = Parcel { mass, energy: mass * enthalpy };
            // The sips of a cooling tank are too small to make slugs of.
            if moving {
                plume = state.inject(inputs.inlet_height, parcel, self.layer());
            } else {
                state.growing = None;
                state.sip(inputs.inlet_height, parcel);
            }
            report.filled += mass;
            report.filled_energy += parcel.energy;
        } else if wanted < 0.0 {
            state.growing = None;
            let (out, missing) = state.take_at(inputs.inlet_height, -wanted);
            report.expelled += out.mass;
            report.expelled_energy += out.energy;
            report.missing += missing;
        }
        (if moving { (wanted / dt).max(0.0) } else { 0.0 }, plume)
    }

    /// What the ports bring and take.
    fn exchange(&self, state: &mut State, inputs: &Inputs, dt: f64, report: &mut Report) {
        for (port, sum) in inputs.ports.iter().zip(&mut report.ports) {
            if port.flow > 0.0 {
                let enthalpy = water::enthalpy(port.celsius);
                let mass = port.flow * dt / water::specific_volume(enthalpy);
                let parcel = Parcel { mass, energy: mass * enthalpy };
                // A sip is too small to make a slug of; more than that makes its own way.
                if port.flow * dt > 0.6 * self.layer() {
                    state.growing = None;
                    state.inject(port.height, parcel, self.layer());
                    state.growing = None;
                } else {
                    state.sip(port.height, parcel);
                }
                sum.mass += parcel.mass;
                sum.energy += parcel.energy;
            } else if port.flow < 0.0 {
                let (out, missing) = state.take_near(port.height, -port.flow * dt);
                sum.mass -= out.mass;
                sum.energy -= out.energy;
                report.missing += missing;
            }
        }
    }
}

impl State {
    /// Mixes a small parcel into the slug at a height.
    fn sip(&mut self, height: f64, parcel: Parcel) {
        let mut base = 0.0;
        let cut = height.max(0.0) * self.area;
        let last = self.slugs.len().saturating_sub(1);
        for (i, slug) in self.slugs.iter_mut().enumerate() {
            base += slug.volume();
            if base >= cut || i == last {
                let mass = slug.mass + parcel.mass;
                *slug = Slug::new(mass, (slug.mass * slug.enthalpy + parcel.energy) / mass);
                return;
            }
        }
        self.slugs.push(Slug::new(parcel.mass, parcel.energy / parcel.mass));
    }
}
