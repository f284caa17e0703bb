//! The controls on the tank's wall: their bodies ride on it, and the tank stops where one of them jumps.

use quantity::{Constant, Seconds, Tag, Temperature};
use solver::tank::{Cross, Probe, Warming};

use super::advance::{LEVELS, Run};
use super::vessel;
use crate::controls::{self, thermostat};
use crate::{Happening, Level, Plant};

/// Probes on the wall, in the order of the tank's list.
const UPPER: u32 = 0;
const LOWER: u32 = 1;
const LIMIT: u32 = 2;
const RELIEF: u32 = LIMIT + 1;
const LOWER_LIMIT: u32 = RELIEF + 1;

quantity::constants! {
    /// Lag of the relief valve's probe.
    const RELIEF_LAG: Constant =
        Constant::new("lag of the relief valve's probe", 15.0, "s", Tag::Model("a wax capsule"));
}

impl Plant {
    /// Puts the controls' bodies on the tank's wall.
    pub(super) fn set_probes(&mut self) {
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
                    celsius: self.thermostats[i].body.to_celsius(),
                }
            })
            .collect();
        let settled = self.limit.settled(one_above, self.insulated[0], self.room);
        probes.push(Probe {
            height: vessel::limit_height(&self.plate),
            lag: thermostat::BODY_LAG.get(),
            coupling: settled.get() - self.room.get(),
            celsius: self.limit.body.to_celsius(),
        });
        let kept = self.tank.probes.get(RELIEF as usize).map(|p| p.celsius);
        let height = vessel::relief_height(&self.plate);
        let water = self.tank.temperature_at(height).unwrap_or(room);
        probes.push(Probe { height, lag: RELIEF_LAG.get(), coupling: 1.0, celsius: kept.unwrap_or(water) });
        if let Some(limit) = &self.lower_limit {
            let settled = limit.settled(one_above, self.insulated[1], self.room);
            probes.push(Probe {
                height: vessel::lower_limit_height(&self.plate),
                lag: thermostat::BODY_LAG.get(),
                coupling: settled.get() - self.room.get(),
                celsius: limit.body.to_celsius(),
            });
        }
        self.tank.probes = probes;
    }

    pub(super) fn read_probes(&mut self) {
        let at = |i: u32| self.tank.probes.get(i as usize).map(|p| Temperature::celsius(p.celsius));
        let (upper, lower, limit) = (at(UPPER), at(LOWER), at(LIMIT));
        let lower_limit = at(LOWER_LIMIT);
        for (thermostat, body) in self.thermostats.iter_mut().zip([upper, lower]) {
            thermostat.body = body.unwrap_or(thermostat.body);
        }
        self.limit.body = limit.unwrap_or(self.limit.body);
        if let (Some(limit), Some(body)) = (&mut self.lower_limit, lower_limit) {
            limit.body = body;
        }
    }

    /// How the limit's body is warmed by its screws while the currents stand.
    pub(super) fn warming(&self, run: &Run) -> Option<Warming> {
        let beside = self.warming_of_limit(&run.live);
        let some = beside.settles != 0.0 || beside.fading.iter().any(|part| part.amount != 0.0);
        some.then_some(Warming { probe: LIMIT, ..beside })
    }

    /// Levels at which the tank has to stop.
    pub(super) fn watch(&self) -> Vec<Cross> {
        let mut watch = Vec::with_capacity(LOWER_LIMIT as usize + 1);
        for (probe, level) in [UPPER, LOWER].into_iter().zip(LEVELS) {
            let Some(thermostat) = self.thermostats.get(level.index()).filter(|_| self.plate.has(level))
            else {
                continue;
            };
            if let Some(board) = &self.board {
                if let Some([low, high]) = board.stays(level, thermostat.dial) {
                    let falling = (low.get() > 0.0).then_some(low.to_celsius());
                    watch.push(Cross { probe, rising: Some(high.to_celsius()), falling });
                }
                continue;
            }
            let cut_out = thermostat.cut_out();
            let misses = thermostat.fickle.filter(|contact| contact.misses);
            let cross = if let Some([low, high]) = misses.map(|contact| contact.rubs_at(cut_out)) {
                let rising = if thermostat.calling { cut_out.get().min(high.get()) } else { high.get() };
                let rising = Some(Temperature(rising).to_celsius());
                Cross { probe, rising, falling: Some(low.to_celsius()) }
            } else if thermostat.calling {
                Cross { probe, rising: Some(cut_out.to_celsius()), falling: None }
            } else {
                Cross { probe, rising: None, falling: Some(thermostat.cut_in().to_celsius()) }
            };
            watch.push(cross);
        }
        if !self.limit.tripped {
            watch.push(Cross { probe: LIMIT, rising: Some(self.limit.trip.to_celsius()), falling: None });
        }
        if let Some(limit) = self.lower_limit.filter(|limit| !limit.tripped) {
            watch.push(Cross { probe: LOWER_LIMIT, rising: Some(limit.trip.to_celsius()), falling: None });
        }
        let relief = &self.plumbing.relief;
        watch.push(if relief.open {
            Cross { probe: RELIEF, rising: None, falling: Some(self.relief_recloses().to_celsius()) }
        } else {
            Cross { probe: RELIEF, rising: Some(relief.opens_hot.to_celsius()), falling: None }
        });
        watch
    }

    /// Lets blades and limit jump that stand past their points.
    pub(super) fn snap(&mut self) -> Vec<Happening> {
        let at = |plant: &Self, height: f64| {
            plant.tank.temperature_at(height).map_or(plant.room, Temperature::celsius)
        };
        controls::snap(
            self,
            |plant| at(plant, vessel::limit_height(&plant.plate)),
            |plant| at(plant, vessel::lower_limit_height(&plant.plate)),
        )
    }

    /// Lets a timer and the utility's relays follow their hours, so many seconds into the call.
    pub(super) fn keep_hours(&mut self, at: f64) -> Vec<Happening> {
        let now = Seconds(self.clock.get() + at);
        let fitted = self.boxes_mut().filter(|_| now.get().is_finite());
        fitted
            .filter_map(|one| one.keep_hours(now).then_some(Happening::LineSwitched { closed: one.closed }))
            .collect()
    }

    /// The same, noted. Returns whether one moved.
    pub(super) fn switch(&mut self, run: &mut Run) -> bool {
        let jumped = self.snap();
        let mut moved = !jumped.is_empty();
        moved |= self.come_and_go();
        let kept = self.keep_hours(run.at);
        moved |= !kept.is_empty();
        kept.into_iter().for_each(|what| run.note(what));
        jumped.into_iter().for_each(|what| run.note(what));
        moved
    }

    /// Lets contacts that miss and coils that part follow blade and water. Returns whether one came or went.
    pub(super) fn come_and_go(&mut self) -> bool {
        let mut moved = false;
        for level in LEVELS {
            let water = self.beside_element(level);
            let thermostat = &mut self.thermostats[level.index()];
            let closed = thermostat.blade_calls();
            let bent = thermostat.cut_out().above(thermostat.body);
            moved |= thermostat.fickle.as_mut().is_some_and(|contact| contact.follow(closed, bent));
            let coil = self.elements[level.index()].parting.as_mut();
            moved |= coil.is_some_and(|coil| coil.follow(water));
        }
        moved
    }

    /// Whether a coil may come or go before anything else happens.
    pub(super) fn comes_and_goes(&self, run: &Run) -> bool {
        LEVELS.iter().any(|l| self.elements[l.index()].parting.is_some() && run.watts[l.index()] > 0.0)
    }

    /// The water beside an element; the room's air where there is none.
    fn beside_element(&self, level: Level) -> Temperature {
        let height = vessel::element_height(&self.plate, level);
        self.tank.temperature_at(height).map_or(self.room, Temperature::celsius)
    }

    /// Whether the relief valve's probe stands at its opening temperature.
    pub(super) fn relief_is_hot(&self) -> bool {
        let probe = self.tank.probes.get(RELIEF as usize);
        probe.is_some_and(|p| {
            p.celsius >= self.plumbing.relief.opens_hot.to_celsius() - super::figures::SPECK.get()
        })
    }

    /// Breakers, joints and elements in air. Returns whether one of them changed the circuit.
    pub(super) fn burn(&mut self, run: &mut Run, elapsed: f64, wetted: [bool; 2]) -> bool {
        let (time, start) = (Seconds(elapsed), Seconds(run.at - elapsed));
        let beside = LEVELS.map(|level| self.beside_element(level));
        let burnt = controls::burn(self, time, &run.live, beside, wetted);
        let changed = !burnt.is_empty() || self.cracks_differ(wetted);
        run.happened.extend(burnt.into_iter().map(|(at, what)| (start + at, what)));
        changed
    }
}
