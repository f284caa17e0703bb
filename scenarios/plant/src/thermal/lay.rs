//! Laying the pipes: which of them are there, and how much each lets through.

use quantity::{Constant, Tag};
use solver::hydraulic::{Law, Relief};

use super::figures as f;
use super::ways::Ways;
use crate::parts::Level;
use crate::waterworks::{Plumbing, TAPS, Tap};
use crate::{Plant, thermal::vessel};

quantity::constants! {
    /// Guess of a junction's pressure below the one that feeds it: where the iteration starts.
    const NEARBY: Constant = Constant::new("guess of a small drop", 2.0, "Pa", Tag::Model("start of an iteration"));
}

pub(super) fn open(share: f64) -> f64 {
    if share.is_finite() { share.clamp(0.0, 1.0) } else { 0.0 }
}

/// From the street into the house, through the meter and the main valve beside it.
fn service(plumbing: &Plumbing) -> f64 {
    f::at_sixty(&f::SERVICE) * open(plumbing.main_valve)
}

/// Two paths one after the other.
fn series(a: f64, b: f64) -> f64 {
    if a > 0.0 && b > 0.0 { a * b / (a * a + b * b).sqrt() } else { 0.0 }
}

impl Ways {
    /// Lays the pipes.
    pub(super) fn lay(&mut self, plant: &Plant, mixer: Option<f64>) {
        let plumbing = &plant.plumbing;
        let (top, now) = (self.height, plumbing.pressure.get());
        let street = self.net.fixed(top, plumbing.main.get());
        self.tank = self.net.store(self.vessel(plumbing, now));
        let loops = plumbing.recirculation.filter(|r| open(r.valve) > 0.0);
        let crossed = (0..TAPS).any(|at| plumbing.crossover(at) > 0.0);
        let cold_drawn = Tap::ALL.iter().any(|tap| plumbing.cold_opening(*tap) > 0.0);
        let hot_used = (0..TAPS).any(|at| open(plumbing.hot_opening(at)) > 0.0) || plumbing.hot_leak > 0.0;
        let has_hot = hot_used || loops.is_some() || (crossed && cold_drawn) || (crossed && !self.supplied);
        let has_house = cold_drawn || (crossed && has_hot) || plumbing.regulator.is_some();
        let tees = plumbing.mixing.is_some() || loops.is_some();
        if !plumbing.stand.is_piped() {
            self.lay_parted(plumbing, street, now);
            self.lay_outlets(plant);
            return;
        }

        // From the street to the tank.
        let service = service(plumbing);
        let passes = if plumbing.frozen { 0.0 } else { open(plumbing.cold_valve) };
        let valve = f::at_sixty(&f::COLD_VALVE) * passes;
        let inlet = f::at_sixty(&f::NIPPLE) * open(plumbing.traps.inlet_free);
        let (before, mut path) = if has_house {
            let house = self.junction(now.min(self.held_at));
            self.supply(street, house, service, plumbing);
            (house, valve)
        } else {
            (street, series(service, valve))
        };
        let check = !has_house && plumbing.closed;
        let law = |k| if check { Law::Check { k, cracking: 0.0 } } else { Law::Orifice { k } };
        let cold = if tees && has_hot {
            let cold = self.junction(now + NEARBY.get());
            self.on.heater = self.pipe(before, cold, law(path));
            self.on.fill = self.pipe(cold, self.tank, Law::Orifice { k: inlet });
            Some(cold)
        } else {
            path = series(path, inlet);
            self.on.heater = self.pipe(before, self.tank, law(path));
            None
        };
        if !has_house {
            self.on.supply = self.on.heater;
        }
        if has_hot {
            self.lay_hot(plant, mixer, has_house.then_some(before), cold, now);
        }
        if has_house {
            self.lay_cold(plumbing, before);
        }
        self.lay_outlets(plant);
    }

    /// The house with both pipes off the tank: the cold one ends in the open, the hot line gets nothing.
    fn lay_parted(&mut self, plumbing: &Plumbing, street: u32, now: f64) {
        let house = self.junction(now.min(self.held_at));
        self.supply(street, house, service(plumbing), plumbing);
        let air = self.net.air(self.height);
        let k = f::at_sixty(&f::COLD_VALVE) * open(plumbing.cold_valve);
        self.on.open = self.pipe(house, air, Law::Orifice { k });
        self.lay_cold(plumbing, house);
    }

    /// The street's side of the house.
    fn supply(&mut self, street: u32, house: u32, service: f64, plumbing: &Plumbing) {
        let check = |k| if plumbing.closed { Law::Check { k, cracking: 0.0 } } else { Law::Orifice { k } };
        match plumbing.regulator {
            Some(regulator) if !regulator.stuck_open => {
                let k = series(service, f::at_sixty(&f::REGULATOR));
                let bypass = regulator.bypass && !plumbing.closed;
                let set = regulator.set.get().max(0.0);
                self.on.supply = self.pipe(street, house, Law::Regulator { k, set, bypass });
                let k = f::orifice(regulator.creep) * open(plumbing.main_valve);
                self.on.creep = self.pipe(street, house, Law::Check { k, cracking: 0.0 });
            }
            _ => self.on.supply = self.pipe(street, house, check(service)),
        }
    }

    fn lay_hot(
        &mut self,
        plant: &Plant,
        mixer: Option<f64>,
        house: Option<u32>,
        cold: Option<u32>,
        now: f64,
    ) {
        let plumbing = &plant.plumbing;
        let hot = self.junction(now - NEARBY.get());
        let outlet = f::at_sixty(&f::NIPPLE) * open(plumbing.traps.outlet_free);
        let port = f::at_sixty(&f::MIXER);
        let share = plumbing.mixing.map(|m| mixer.or(m.seized).map_or(1.0, open));
        let path = share.map_or(outlet, |share| series(outlet, port * share));
        // A tank that has drawn air gives none of it as water.
        self.on.nipple =
            self.pipe_at((self.tank, self.height), (hot, f64::NEG_INFINITY), Law::Orifice { k: path });
        if let (Some(cold), Some(share)) = (cold, share) {
            let k = port * (1.0 - share);
            self.on.mixer = self.pipe(cold, hot, Law::Check { k, cracking: 0.0 });
        }
        if let (Some(cold), Some(rec)) = (cold, plumbing.recirculation.filter(|r| open(r.valve) > 0.0)) {
            let k = f::at_sixty(&f::LOOP) * open(rec.valve);
            let rises = if rec.check { 0.0 } else { plant.rising() };
            let rise = if rec.pump { f::PUMP.get() } else { rises };
            self.on.circuit = self.pipe(hot, cold, Law::Pump { k, rise, check: rec.check });
        }
        for (i, &tap) in Tap::ALL.iter().enumerate() {
            let spout = tap.height().get().max(self.height);
            let full = tap.nominal().get() / f::SIXTY.get().sqrt();
            let side = |share: f64| Law::Orifice { k: full * open(share) };
            let hot_share = plumbing.hot_opening(i);
            if open(hot_share) > 0.0 {
                let air = self.net.air(spout);
                self.on.hot[i] = self.pipe(hot, air, side(hot_share));
            }
            let Some(house) = house else { continue };
            let k = f::orifice(plumbing.crossover(i));
            self.on.cross[i] = self.pipe(house, hot, Law::Orifice { k });
        }
        let air = self.net.air(self.height);
        self.on.hidden = self.pipe(hot, air, Law::Orifice { k: f::orifice(plumbing.hot_leak) });
    }

    fn lay_cold(&mut self, plumbing: &Plumbing, house: u32) {
        for (i, &tap) in Tap::ALL.iter().enumerate() {
            let k = tap.nominal().get() / f::SIXTY.get().sqrt() * open(plumbing.cold_opening(tap));
            if k > 0.0 {
                let air = self.net.air(tap.height().get().max(self.height));
                self.on.cold[i] = self.pipe(house, air, Law::Orifice { k });
            }
        }
    }

    /// What leaves the tank itself.
    fn lay_outlets(&mut self, plant: &Plant) {
        let plumbing = &plant.plumbing;
        let (top, out) = (self.height, f64::NEG_INFINITY);
        let roof = self.net.air(top);
        let from = (self.tank, top);
        let relief = &plumbing.relief;
        if !relief.blocked && !relief.missing {
            let k = f::orifice(f::RELIEF_BORE.get());
            if let Some(law) = relief_law(plant, k) {
                self.on.relief = self.pipe_at(from, (roof, out), law);
            }
            let k = f::orifice(relief.weep + relief.grit);
            self.on.weep = self.pipe_at(from, (roof, out), Law::Orifice { k });
        }
        // The relief valve's port, and a nipple without its pipe, are of one bore.
        let hole = if plumbing.is_open_on_top() { f::RELIEF_BORE.get() } else { plumbing.nipple_leak };
        let k = f::orifice(hole);
        self.on.union = self.pipe_at(from, (roof, out), Law::Orifice { k });
        for level in [Level::Upper, Level::Lower] {
            let i = level.index();
            let k = f::orifice(plant.elements.get(i).map_or(0.0, |e| e.gasket.leak_diameter));
            if k > 0.0 {
                let height = vessel::element_height(&plant.plate, level);
                let air = self.net.air(height);
                self.on.gaskets[i] = self.pipe_at((self.tank, height), (air, out), Law::Orifice { k });
            }
        }
        let choke = 1.0 / (1.0 + plant.vessel.sediment.to_litres().max(0.0) / f::CHOKE.get());
        let hose = if plumbing.hose { f::HOSE.get() } else { 1.0 };
        let bore = f::orifice(f::DRAIN_BORE.get()) * open(plumbing.drain_valve);
        let drain = bore * hose * choke * (1.0 - open(plumbing.drain_grit));
        let floor = self.net.air(0.0);
        let holes = [drain, f::orifice(plumbing.drain_drip), f::orifice(plant.vessel.shell_hole)];
        [self.on.drain, self.on.drip, self.on.hole] =
            holes.map(|k| self.pipe_at((self.tank, f::EMPTY.get()), (floor, out), Law::Orifice { k }));
    }

    fn junction(&mut self, guess: f64) -> u32 {
        let node = self.net.free(self.height);
        self.net.guess(node, guess);
        node
    }

    fn pipe(&mut self, from: u32, to: u32, law: Law) -> Option<u32> {
        self.pipe_at((from, f64::NEG_INFINITY), (to, f64::NEG_INFINITY), law)
    }

    /// A pipe, unless nothing passes it.
    fn pipe_at(&mut self, from: (u32, f64), to: (u32, f64), law: Law) -> Option<u32> {
        (law.factor() > 0.0).then(|| self.net.branch_between(from, to, law))
    }
}

/// The relief valve where it is lifted.
fn relief_law(plant: &Plant, k: f64) -> Option<Law> {
    let relief = &plant.plumbing.relief;
    let hot = relief.open && plant.relief_water() > plant.relief_recloses();
    if !relief.lever && !relief.open {
        return None;
    }
    let setting = relief.opens_at.get();
    let full = relief.lever || hot;
    let mut law = Relief::standard(k, setting, f::RESEAT.get() * setting);
    law.lifted = true;
    law.lever = if full { 1.0 } else { 0.0 };
    Some(Law::Relief(law))
}
