//! Stepping the stores: short enough to follow a moving surface, as long as asked otherwise.

use super::newton::{self, Frame, Solution};
use super::{Error, Law, Moved, Network, Node};
use crate::water::ATMOSPHERE;

/// Water that no longer runs out, m³: a milligram.
const DREGS: f64 = 1e-9;

impl Network {
    /// Advances by `duration` seconds. On an error nothing has changed.
    ///
    /// The work is bounded: should a surface hover so that 20 000 inner steps do not get there, the answer's
    /// `elapsed` says how far it came.
    pub fn advance(&mut self, duration: f64) -> Result<Moved, Error> {
        if !duration.is_finite() || duration < 0.0 {
            return Err(Error::Bad { field: "duration", value: duration });
        }
        self.check()?;
        let mut trial = self.clone();
        let mut moved = Moved {
            volumes: vec![0.0; self.branches.len()],
            peaks: self.stores.iter().map(|s| s.pressure).collect(),
            ..Moved::default()
        };
        for _ in 0..20_000 {
            let left = duration - moved.elapsed;
            if left <= 1e-9 {
                break;
            }
            trial.substep(left, &mut moved)?;
        }
        *self = trial;
        Ok(moved)
    }

    fn surfaces(&self) -> Vec<f64> {
        // Below its bottom when there is next to nothing left: then no opening of it is wet.
        self.stores.iter().map(|s| s.bottom + if s.water > DREGS { s.level() } else { -1e-6 }).collect()
    }

    /// One step of at most `left` seconds.
    fn substep(&mut self, left: f64, moved: &mut Moved) -> Result<(), Error> {
        let mut held: Vec<Option<f64>> =
            self.stores.iter().map(|s| (s.vented && !s.is_full()).then_some(0.0)).collect();
        for (store, air) in self.stores.iter_mut().zip(&held) {
            if air.is_some() {
                store.open_to_air();
            }
        }
        let surfaces = self.surfaces();
        let mut solution = self.settle(left, &surfaces, &mut held, moved)?;
        let dt = self.follow(left, &surfaces, &held, &solution);
        let moving = self.stores.iter().any(|s| !s.is_full()) || held.iter().any(Option::is_some);
        if moving || dt < left {
            // The surface half way: a falling head is followed to second order.
            let net = self.net_flows(&solution);
            let middle: Vec<f64> = self
                .stores
                .iter()
                .enumerate()
                .map(|(i, s)| {
                    let rise = if held[i].is_some() || !s.is_full() {
                        0.5 * dt * net[i] * s.height / s.volume
                    } else {
                        0.0
                    };
                    // Not below half the depth, or the last of the water would never run out.
                    let least = s.bottom + 0.5 * (surfaces[i] - s.bottom);
                    (surfaces[i] + rise).clamp(least, s.bottom + s.height)
                })
                .collect();
            solution = self.settle(dt, &middle, &mut held, moved)?;
        }
        let dt = self.land(dt, &held, &solution);
        self.commit(dt, &held, &solution, moved);
        Ok(())
    }

    /// Solves, letting relief valves pop and air break in where a vented vessel would fall below the air's
    /// pressure. Each can happen once per valve and vessel, so it ends.
    fn settle(
        &mut self,
        dt: f64,
        surfaces: &[f64],
        held: &mut [Option<f64>],
        moved: &mut Moved,
    ) -> Result<Solution, Error> {
        loop {
            let frame = Frame { dt, surfaces, held };
            let solution = newton::solve(self, &frame)?;
            moved.iterations += solution.iterations;
            let felt: Vec<Option<f64>> = (0..self.branches.len())
                .map(|i| {
                    let relief = self.branches.get(i).is_some_and(|b| newton::is_relief(&b.law));
                    relief.then(|| newton::across(self, &frame, &solution, i))
                })
                .collect();
            let mut again = false;
            for (branch, dp) in self.branches.iter_mut().zip(felt) {
                if let (Law::Relief(relief), Some(dp)) = (&mut branch.law, dp) {
                    again |= relief.follow(dp);
                }
            }
            for (node, pressure) in self.nodes.iter().zip(&solution.pressures) {
                if let Node::Store { store } = *node {
                    let index = store as usize;
                    if self.stores[index].vented && held[index].is_none() && *pressure < -1.0 {
                        held[index] = Some(0.0);
                        again = true;
                    }
                }
            }
            if !again {
                return Ok(solution);
            }
        }
    }

    /// Net flow into each store, m³/s.
    fn net_flows(&self, solution: &Solution) -> Vec<f64> {
        let mut net = vec![0.0; self.stores.len()];
        for (b, q) in self.branches.iter().zip(&solution.flows) {
            for (end, sign) in [(b.from, -1.0), (b.to, 1.0)] {
                if let Some(Node::Store { store }) = self.nodes.get(end.node as usize) {
                    net[*store as usize] += sign * q;
                }
            }
        }
        net
    }

    /// Step over which no surface moves far.
    fn follow(&self, left: f64, surfaces: &[f64], held: &[Option<f64>], solution: &Solution) -> f64 {
        let net = self.net_flows(solution);
        let mut dt = left;
        for (i, s) in self.stores.iter().enumerate() {
            if s.is_full() && held[i].is_none() {
                continue;
            }
            let speed = (net[i] * s.height / s.volume).abs();
            if speed > 0.0 {
                let depth = surfaces[i] - s.bottom;
                let far = if net[i] < 0.0 { 0.1 * depth } else { 0.05 * s.height };
                dt = dt.min(far.max(0.002 * s.height) / speed);
            }
        }
        dt
    }

    /// Ends the step where a vessel open to the air has just become full or empty.
    fn land(&self, mut dt: f64, held: &[Option<f64>], solution: &Solution) -> f64 {
        let net = self.net_flows(solution);
        for (i, s) in self.stores.iter().enumerate() {
            if held[i].is_none() {
                continue;
            }
            let room = if net[i] > 0.0 { s.volume - s.water } else { s.water };
            if net[i] != 0.0 && room < net[i].abs() * dt {
                // A vessel that hovers at its brim is let over it by a blink's worth, which its shell bears.
                let least = if net[i] > 0.0 { f64::min(dt, 0.02) } else { 1e-9 };
                dt = (room / net[i].abs()).max(least);
            }
        }
        dt
    }

    fn commit(&mut self, dt: f64, held: &[Option<f64>], solution: &Solution, moved: &mut Moved) {
        let net = self.net_flows(solution);
        for (total, q) in moved.volumes.iter_mut().zip(&solution.flows) {
            *total += q * dt;
        }
        for (node, pressure) in self.nodes.iter_mut().zip(&solution.pressures) {
            match node {
                Node::Free { pressure: kept, .. } => *kept = *pressure,
                Node::Store { store } => {
                    let index = *store as usize;
                    let vessel = &mut self.stores[index];
                    vessel.water = (vessel.water + net[index] * dt).max(0.0);
                    vessel.pressure = *pressure;
                    if held[index].is_some() {
                        let air = ATMOSPHERE * (vessel.volume - vessel.water);
                        vessel.set_air(air);
                    }
                    moved.peaks[index] = moved.peaks[index].max(*pressure);
                }
                Node::Fixed { .. } | Node::Air { .. } => {}
            }
        }
        moved.elapsed += dt;
        moved.steps += 1;
    }
}
