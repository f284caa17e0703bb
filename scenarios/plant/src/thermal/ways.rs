//! The house's piping as a network of the hydraulic solver: street, main valve, regulator or check valve, cold header, the
//! heater's cold valve, tank, hot line with or without a mixing valve, taps with both sides, crossovers, a
//! recirculation loop, leaks, relief and drain.
//!
//! Only what stands open is put in: a quiet house is one pressure between the street and the tank. Flows are
//! quasi-steady; what can give way (shell, pipes, an expansion tank, air at the top) makes the tank's pressure
//! a state, advanced by the implicit Euler rule, which holds at any step.

use quantity::{Constant, Tag};
use solver::hydraulic::{Cushion, Network, Shell, Store};
use solver::water::{ATMOSPHERE, GRAVITY};

use super::figures as f;
use super::flows::{Branches, Flows, Moment};
use super::lay::open;
use super::plan::ajar;
use crate::waterworks::Plumbing;
use crate::{Plant, thermal::vessel};

quantity::constants! {
    /// Least absolute pressure, so that air has a volume.
    const LEAST: Constant = Constant::new("least absolute pressure", 1e-6, "Pa", Tag::Model("no division by nothing"));
}

/// Everything that sets the flows at one moment.
pub(super) struct Ways {
    pub(super) net: Network,
    pub(super) tank: u32,
    pub(super) on: Branches,
    /// Volume of the tank, m³.
    pub capacity: f64,
    area: f64,
    pub(super) height: f64,
    /// Height of the water surface, m.
    pub level: f64,
    /// Volume of water in the tank, m³.
    pub water: f64,
    /// Volume of water on the cold side, m³.
    pub cold: f64,
    /// Air at the top as absolute pressure times volume, J.
    pub air: f64,
    /// Air can get in or out at the top.
    pub vented: bool,
    /// Pipe and shell at no pressure, beyond the tank's own volume, m³.
    slack: f64,
    pub(super) closed: bool,
    pub(super) supplied: bool,
    drained: bool,
    pub(super) held_at: f64,
}

impl Ways {
    pub fn of(plant: &Plant) -> Self {
        Self::with(plant, None)
    }

    /// With the mixing valve, where there is one, open by this share to the hot side.
    pub fn with(plant: &Plant, mixer: Option<f64>) -> Self {
        let plumbing = &plant.plumbing;
        let vessel = vessel::vessel(&plant.plate);
        let water = plant.tank.water_volume();
        let relief = &plumbing.relief;
        let lever = relief.lever && !relief.blocked;
        let mut ways = Self {
            net: Network::new(f::DENSITY.get()),
            tank: 0,
            on: Branches::default(),
            capacity: vessel.volume(),
            area: vessel.area(),
            height: vessel.height(),
            level: (water / vessel.area()).min(vessel.height()),
            water,
            cold: plant.cold_volume(),
            air: plumbing.air.get(),
            vented: lever || plumbing.is_open_on_top() || plumbing.taps.iter().any(|t| ajar(*t)),
            slack: f::PIPE.get() + plant.shell_growth(),
            closed: plumbing.is_closed(),
            supplied: plumbing.is_fed() && plumbing.stand.is_piped(),
            drained: open(plumbing.drain_valve) > 0.0,
            held_at: plumbing.static_pressure().get(),
        };
        ways.lay(plant, mixer);
        ways
    }

    /// The tank with all that gives way with it.
    pub(super) fn vessel(&self, plumbing: &Plumbing, now: f64) -> Store {
        let mut store = Store::full(self.capacity, self.height, 0.0, self.give() / self.capacity, 0.0);
        store.compressibility = f::SQUEEZE.get();
        store.boils = f::VACUUM.get();
        store.cushion = plumbing
            .expansion
            .filter(|e| !e.waterlogged && e.volume.get() > 0.0)
            .map(|e| Cushion { volume: e.volume.get(), charge: e.charge.get() });
        store.water = self.have();
        store.with_air(if self.has_void() { self.air } else { 0.0 }, now)
    }

    /// Stretch of shell and pipes, m³/Pa.
    fn give(&self) -> f64 {
        let diameter = 2.0 * (self.area / core::f64::consts::PI).sqrt();
        let shell =
            Shell { diameter, wall: f::SHELL.get(), youngs: f::STEEL.get(), poisson: f::POISSON.get() };
        self.capacity * shell.compliance() + f::PIPING_GIVE.get()
    }

    /// Water that the store has to hold, beyond the pipe at no pressure.
    fn have(&self) -> f64 {
        (self.water + self.cold - self.slack).max(0.0)
    }
}

impl Ways {
    /// Pressures and flows at the end of `dt` seconds while the water grows by `growth` m³/s, with the surface
    /// at a height.
    pub fn solve(&mut self, dt: f64, growth: f64, level: f64) -> Moment {
        let have = (self.have() + growth * dt).max(0.0);
        if let Some(store) = self.net.stores.first_mut() {
            store.water = have;
        }
        let surface = if self.has_void() { level.min(self.height - f::EMPTY.get()) } else { self.height };
        let held = (self.vented && self.has_void()).then_some(0.0);
        let Ok(mut solution) = self.net.solve(dt, &[surface], &[held]) else { return self.still() };
        let mut pressure = solution.pressure(self.tank);
        if let (None, Some(floor)) = (held, self.floor())
            && pressure < floor
        {
            pressure = floor;
            match self.net.solve(dt, &[surface], &[Some(floor)]) {
                Ok(again) => solution = again,
                Err(_) => return self.still(),
            }
        }
        self.net.remember(&solution);
        Moment { pressure, flows: Flows::read(&self.on, &solution) }
    }

    /// Nothing moves: what is left when numbers that are not finite came in.
    fn still(&self) -> Moment {
        Moment { pressure: self.net.pressure(self.tank).unwrap_or_default(), flows: Flows::default() }
    }

    /// Whether air or nothing stands above the water.
    pub fn has_void(&self) -> bool {
        self.air > f::NO_AIR.get()
    }

    /// Volume of water that the cold side holds at a pressure, m³.
    pub fn content(&self, p: f64) -> f64 {
        let air = if self.has_void() { self.air / (p + ATMOSPHERE).max(LEAST.get()) } else { 0.0 };
        let held = self.net.stores.first().map_or(0.0, |s| s.capacity(p).0);
        held - self.capacity + air + self.slack
    }

    /// Pressure that goes with the water and air there are now.
    pub fn settled_pressure(&mut self) -> f64 {
        if self.vented && self.has_void() {
            return 0.0;
        }
        let have = self.have();
        self.net.stores.first_mut().map_or(0.0, |store| {
            store.water = have;
            store.rest_pressure()
        })
    }

    /// Pressure below which air comes in: through a tap or the lever at the top, or up the open drain.
    pub fn floor(&self) -> Option<f64> {
        let column = f::DENSITY.get() * GRAVITY * self.level;
        match (self.vented, self.drained) {
            (true, _) => Some(0.0),
            (false, true) => Some(if self.level > f::EMPTY.get() { -column } else { 0.0 }),
            (false, false) => None,
        }
    }

    /// Whether growing water has somewhere to go.
    pub fn gives_way(&self) -> bool {
        self.vented || self.drained || (self.supplied && !self.closed)
    }

    /// Whether the main can bring the cold side to a pressure: water in, or back where nothing stops it.
    pub fn main_reaches(&self, p: f64) -> bool {
        self.supplied && (!self.closed || p <= self.held_at)
    }

    /// Volume missing in tank and cold side together at a pressure, m³.
    pub fn lacking(&self, p: f64) -> f64 {
        let air = if self.has_void() { self.air / (p + ATMOSPHERE).max(LEAST.get()) } else { 0.0 };
        self.capacity - air + self.content(p) - self.water - self.cold
    }

    /// Surface area of the tank, m².
    pub fn area(&self) -> f64 {
        self.area
    }

    /// Volume not filled with water, m³.
    pub fn void(&self) -> f64 {
        (self.capacity - self.water).max(0.0)
    }

    /// Volume by which the cold side would shrink if it fell to this pressure, m³.
    pub fn released(&self, p: f64) -> f64 {
        self.cold - self.content(p)
    }

    /// Takes up the water and air there are now; the pipes stay as they are laid.
    pub fn refresh(&mut self, plant: &Plant) {
        self.water = plant.tank.water_volume();
        self.level = (self.water / self.area).min(self.height);
        self.cold = plant.cold_volume();
        self.air = plant.plumbing.air.get();
        self.slack = f::PIPE.get() + plant.shell_growth();
        let (have, air) = (self.have(), if self.has_void() { self.air } else { 0.0 });
        if let Some(store) = self.net.stores.first_mut() {
            let pressure = store.pressure();
            *store = store.with_air(air, pressure);
            store.water = have;
        }
    }

    /// Flow from the drain valve at a pressure at the top of the tank, m³/s.
    pub fn drain_at(&self, pressure: f64) -> f64 {
        let k = self.on.drain.and_then(|d| self.net.branches.get(d as usize)).map_or(0.0, |b| b.law.factor());
        let head = pressure + f::DENSITY.get() * GRAVITY * self.level;
        if self.level > f::EMPTY.get() { k * head.max(0.0).sqrt() } else { 0.0 }
    }

    /// Something flows all the time, or cold and hot can meet: a step is then not taken as long as an hour.
    pub fn is_busy(&self) -> bool {
        self.on.circuit.is_some() || self.on.hidden.is_some()
    }
}
