//! The pressure after a step, the relief valve, air in the lines, and what is news of the water.

use quantity::{Pressure, Volume};
use solver::tank::{Filling, Inputs, Tank};
use solver::water;

use super::advance::Run;
use super::plan::{NEAR, Plan, ajar, is_air};
use super::vessel;
use super::ways::{EMPTY, NO_AIR, Ways};
use crate::waterworks::Tap;
use crate::{Happening, Plant};

/// Share of a line's water that carries its air out (model: 1 to 3 minutes of spitting, trade sheet 5.10).
const CARRIED: f64 = 0.15;

impl Plant {
    /// Pressure that goes with the water there is now, and the highest.
    pub(super) fn settle_pressure(&mut self, tank: &Tank, plan: &Plan, elapsed: f64) {
        if plan.closes && elapsed >= plan.time - 1e-9 {
            self.plumbing.air.0 = 0.0;
        }
        let mut now = Ways::of(self);
        if !now.has_void() && plan.filling == Filling::KeepFull && now.main_reaches(plan.pressure) {
            // What the growth was guessed wrong by comes from the main, or goes there.
            let lacking = now.lacking(plan.pressure);
            if lacking > 0.0 || !self.plumbing.closed {
                self.exchange_with_main(lacking);
            }
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
    pub(super) fn carry_air(&mut self, ways: &Ways, plan: &Plan, elapsed: f64) {
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
    pub(super) fn relieve(&mut self, run: &mut Run, plan: &Plan) {
        let hot = self.relief_is_hot();
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
    pub(super) fn water_news(&mut self, run: &mut Run, before: &Ways, plan: &Plan, pressure: f64) {
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
