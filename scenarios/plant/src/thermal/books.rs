//! The books of water and heat, and the water on the cold side.

use quantity::Joules;
use solver::tank::Report;
use solver::water;

use super::plan::Plan;
use crate::Plant;
use crate::waterworks::Store;

/// Water less than this is too little to have a temperature, kg.
const TRACE: f64 = 0.01;

impl Plant {
    /// Enthalpy of the water on the cold side, J/kg.
    fn cold_enthalpy(&self) -> f64 {
        let cold = &self.plumbing.cold_side;
        if cold.mass.get() > TRACE {
            cold.heat.get() / cold.mass.get()
        } else {
            water::enthalpy(self.plumbing.inlet.to_celsius())
        }
    }

    /// Volume of the water on the cold side, m³.
    pub(super) fn cold_volume(&self) -> f64 {
        self.plumbing.cold_side.mass.get() * water::specific_volume(self.cold_enthalpy())
    }

    /// Whether the cold side is noticeably off the main's temperature.
    pub(super) fn cold_side_is_warm(&self) -> bool {
        let main = water::enthalpy(self.plumbing.inlet.to_celsius());
        (self.cold_enthalpy() - main).abs() > 2_000.0
    }

    /// Mean enthalpy of what the cold side gives to the tank during a stretch: stirred, refilled from the
    /// main while it empties.
    pub(super) fn inlet_enthalpy(&self, plan: &Plan) -> f64 {
        let main = water::enthalpy(self.plumbing.inlet.to_celsius());
        let here = self.cold_enthalpy();
        let through = plan.flows.supply.max(0.0) * plan.time * 1000.0;
        let turns = through / self.plumbing.cold_side.mass.get().max(TRACE);
        if turns < 1e-6 {
            return here;
        }
        main + (here - main) * (1.0 - quantity::det::exp(-turns)) / turns
    }

    /// Brings a volume from the main to the cold side, or back when negative.
    pub(super) fn exchange_with_main(&mut self, volume: f64) {
        let inlet = water::enthalpy(self.plumbing.inlet.to_celsius());
        let enthalpy = if volume >= 0.0 { inlet } else { self.cold_enthalpy() };
        let mass = volume / water::specific_volume(enthalpy);
        self.plumbing.cold_side.add(mass, mass * enthalpy);
        let side = if mass >= 0.0 { &mut self.plumbing.ledger.main } else { &mut self.plumbing.ledger.back };
        side.add(mass.abs(), mass.abs() * enthalpy);
    }

    /// Books a stretch.
    pub(super) fn book(&mut self, plan: &Plan, report: &Report, watts: [f64; 2]) {
        let time = report.elapsed;
        let flows = &plan.flows;
        self.exchange_with_main(flows.supply * time);
        // Cold side and tank.
        self.plumbing
            .cold_side
            .add(report.expelled - report.filled, report.expelled_energy - report.filled_energy);
        // Out at the top: taps, relief valve, upper gasket, by their shares of the flow.
        let ledger = &mut self.plumbing.ledger;
        let part = |flow: f64, of: f64, whole: f64| if of > 0.0 { whole * flow / of } else { 0.0 };
        let top = flows.top();
        let take = |store: &mut Store, flow: f64| {
            store.add(part(flow, top, report.drawn), part(flow, top, report.drawn_energy));
        };
        for (store, flow) in ledger.taps.iter_mut().zip(flows.taps) {
            take(store, flow);
        }
        take(&mut ledger.relief, flows.relief);
        take(&mut ledger.leaks, flows.gaskets[0]);
        // Out at the bottom: drain valve, lower gasket, hole in the shell.
        let bottom = flows.bottom();
        let take = |store: &mut Store, flow: f64| {
            store.add(part(flow, bottom, report.drained), part(flow, bottom, report.drained_energy));
        };
        take(&mut ledger.drain, flows.drain);
        take(&mut ledger.leaks, flows.gaskets[1]);
        take(&mut ledger.leaks, flows.hole);
        // Heat.
        ledger.electric += Joules((watts[0] + watts[1]) * time);
        ledger.dry += Joules(report.dry);
        ledger.lost += Joules(report.lost);
        // The floor.
        let mut spilt = part(flows.gaskets[0], top, report.drawn);
        spilt += part(flows.gaskets[1] + flows.hole, bottom, report.drained);
        if !self.plumbing.hose {
            spilt += part(flows.drain, bottom, report.drained);
        }
        self.spill(spilt * 1e-3);
    }
}
