//! Putting the parts that follow others in step with them, after somebody set them by hand.

use quantity::{Constant, Joules, Tag};
use solver::water;

use super::plan::is_air;
use super::pressure::TRUNK;
use super::ways::Ways;
use super::{vessel, vessel::vessel as tank_of};
use crate::waterworks::Tap;
use crate::{Level, Plant};

quantity::constants! {
    /// Difference in volume that is not worth a correction.
    const SLACK: Constant =
        Constant::new("difference not worth a correction", 2e-6, "m3", Tag::Model("two millilitres"));
    /// Share of the tank by which its air may be off before somebody must have changed it.
    const OFF: Constant =
        Constant::new("share of the tank not worth a correction", 1e-4, "", Tag::Model("rounding"));
    /// Least absolute pressure.
    const LEAST: Constant = Constant::new("least absolute pressure", 100.0, "Pa", Tag::Model("a vacuum"));
}

impl Plant {
    /// Controls and sheaths at the temperatures they come to rest at, blades where they then belong.
    pub(crate) fn settle_controls(&mut self) {
        for level in [Level::Upper, Level::Lower] {
            let i = level.index();
            let wall = self.wall(level);
            let thermostat = &mut self.thermostats[i];
            thermostat.body = thermostat.settled(wall, self.insulated[i], self.room);
            // At rest below the dial but above the cut-in a blade may stand either way: satisfied.
            thermostat.calling = self.plate.has(level) && thermostat.body <= thermostat.cut_in();
            self.elements[i].sheath = wall;
        }
        let room = self.room.to_celsius();
        let at = |height: f64| self.tank.temperature_at(height).unwrap_or(room);
        let beside = at(vessel::limit_height(&self.plate));
        let beside = quantity::Temperature::celsius(beside);
        self.limit.body = self.limit.settled(beside, self.insulated[0], self.room);
        let beside = quantity::Temperature::celsius(at(vessel::lower_limit_height(&self.plate)));
        if let Some(limit) = &mut self.lower_limit {
            limit.body = limit.settled(beside, self.insulated[1], self.room);
        }
        self.tank.probes.clear();
    }

    /// Cold side filled as the pressure asks, with water of the main.
    pub(crate) fn settle_cold_side(&mut self) {
        let h = water::enthalpy(self.plumbing.inlet.to_celsius());
        let want = Ways::of(self).content(self.plumbing.pressure.get());
        let mass = want / water::specific_volume(h);
        self.plumbing.cold_side.mass.0 = mass;
        self.plumbing.cold_side.heat.0 = mass * h;
    }

    /// Air at room pressure wherever the tank holds no water.
    pub(crate) fn fill_with_air(&mut self) {
        let void = (tank_of(&self.plate).volume() - self.tank.water_volume()).max(0.0);
        let absolute = self.plumbing.pressure.get() + water::ATMOSPHERE;
        self.plumbing.air = Joules(void * absolute.max(LEAST.get()));
        for (air, tap) in self.plumbing.line_air.iter_mut().zip(Tap::ALL) {
            air.0 = air.0.max((tap.line() * TRUNK.get()).0);
        }
    }

    /// Brings air and cold side in step with tank and pressure where a part was changed or a fault set.
    pub(super) fn reconcile(&mut self) {
        let ways = Ways::of(self);
        let void = ways.void();
        let absolute = self.plumbing.pressure.get() + water::ATMOSPHERE;
        let shut = if is_air(self.plumbing.air.get()) { self.plumbing.air.get() / absolute } else { 0.0 };
        if (void - shut).abs() > OFF.get() * ways.capacity {
            self.fill_with_air();
        }
        let ways = Ways::of(self);
        let pressure = self.plumbing.pressure.get();
        // What the last step warmed or cooled still stands in a full tank, over its size or short of it.
        let lacking =
            if ways.has_void() { ways.content(pressure) - ways.cold } else { ways.lacking(pressure) };
        if lacking.abs() > SLACK.get() {
            let h = water::enthalpy(self.plumbing.inlet.to_celsius());
            let mass = lacking / water::specific_volume(h);
            self.plumbing.cold_side.add(mass, mass * h);
            self.plumbing.ledger.parts.add(mass, mass * h);
        }
    }
}
