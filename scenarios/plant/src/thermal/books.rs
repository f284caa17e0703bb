//! The books of water and heat, and the water on the cold side.

use quantity::{Constant, Joules, Tag, Volume, det};
use solver::tank::Report;
use solver::water;

use super::figures as f;
use super::junctions::{Headers, Sources};
use super::plan::Plan;
use crate::Plant;
use crate::waterworks::Store;

quantity::constants! {
    /// Water less than this is too little to have a temperature.
    const TRACE: Constant =
        Constant::new("water without a temperature of its own", 0.01, "kg", Tag::Model("a sip"));
    /// Cold side this far off the main's temperature has to be followed: 15 K.
    const WARM: Constant = Constant::new("cold side far from the main", 6.0e4, "J/kg", Tag::Model("15 K"));
    /// Turnover of the cold side that counts as none.
    const NO_TURN: Constant = Constant::new("turnover that counts as none", 1e-6, "", Tag::Model("rounding"));
}

impl Plant {
    /// Enthalpy of the water in the main, J/kg.
    fn main_enthalpy(&self) -> f64 {
        water::enthalpy(self.plumbing.inlet.to_celsius())
    }

    /// Enthalpy of the water on the cold side, J/kg.
    pub(super) fn cold_enthalpy(&self) -> f64 {
        let cold = &self.plumbing.cold_side;
        if cold.mass.get() > TRACE.get() { cold.heat.get() / cold.mass.get() } else { self.main_enthalpy() }
    }

    /// Volume of the water on the cold side, m³.
    pub(super) fn cold_volume(&self) -> f64 {
        self.plumbing.cold_side.mass.get() * water::specific_volume(self.cold_enthalpy())
    }

    /// Whether the cold side is far off the main's temperature.
    pub(super) fn cold_side_is_warm(&self) -> bool {
        (self.cold_enthalpy() - self.main_enthalpy()).abs() > WARM.get()
    }

    /// Enthalpies at the headers with the tank giving water of this enthalpy and the cold side of that.
    pub(super) fn headers(&self, flows: &super::flows::Flows, tank: f64, cold: f64) -> Headers {
        Headers::of(flows, Sources { main: self.main_enthalpy(), cold, tank })
    }

    /// Enthalpy of what comes back round the loop, J/kg: cooled on its way towards the room.
    pub(super) fn returned(&self, hot: f64, flow: f64) -> f64 {
        let room = water::enthalpy(self.room.to_celsius());
        if flow <= 0.0 {
            return room;
        }
        let carried = flow / water::specific_volume(hot) * water::heat_capacity(self.room.to_celsius());
        room + (hot - room) * det::exp(-f::LOOP_LOSS.get() / carried)
    }

    /// Mean enthalpy of what the cold side gives away during a stretch: stirred, filled from the house, the loop
    /// and the tank while it empties, and warmed by the room. The mean, since a long stretch turns it over many times.
    pub(super) fn given_enthalpy(&self, plan: &Plan, headers: &Headers) -> f64 {
        let here = self.cold_enthalpy();
        let (fresh, round) = (plan.flows.heater.max(0.0), plan.flows.circuit.max(0.0));
        let expelled = (-plan.flows.fill()).max(0.0);
        let brought = (fresh + round + expelled) * f::DENSITY.get();
        let (walls, room) = self.cold_pipe_walls();
        let held = self.plumbing.cold_side.mass.get().max(TRACE.get());
        let turns = (brought + walls) * plan.time / held;
        if turns < NO_TURN.get() {
            return here;
        }
        let tank = self.inlet_water();
        let streams = fresh * headers.house + round * self.returned(headers.hot, round) + expelled * tank;
        let come = (streams * f::DENSITY.get() + walls * room) / (brought + walls);
        come + (here - come) * (1.0 - det::exp(-turns)) / turns
    }

    /// Enthalpy of the tank's water at its inlet, J/kg.
    fn inlet_water(&self) -> f64 {
        let tube = super::vessel::inlet_height(&self.plate, self.vessel.dip_tube).get();
        let height = if self.plumbing.reversed { self.plate.height.get() } else { tube };
        self.tank.temperature_at(height).map_or(self.cold_enthalpy(), water::enthalpy)
    }

    /// Brings a volume from the main to the cold side, or back when negative.
    pub(super) fn exchange_with_main(&mut self, volume: f64) {
        let enthalpy = if volume >= 0.0 { self.main_enthalpy() } else { self.cold_enthalpy() };
        let mass = volume / water::specific_volume(enthalpy);
        self.plumbing.cold_side.add(mass, mass * enthalpy);
        let side = if mass >= 0.0 { &mut self.plumbing.ledger.main } else { &mut self.plumbing.ledger.back };
        side.add(mass.abs(), mass.abs() * enthalpy);
    }

    /// Books a stretch.
    pub(super) fn book(&mut self, plan: &Plan, report: &Report, watts: [f64; 2], cold: f64) {
        let time = report.elapsed;
        let flows = &plan.flows;
        // Out of the tank: the hot line, the top, the bottom, each by its own way (see `inputs`).
        let [line, vents, bottom, _] = report.ports.map(|port| Store::of(-port.mass, -port.energy));
        let to_line = Store::of(report.drawn, report.drawn_energy).and(line);
        let top = Shares { all: vents, of: flows.vents() };
        let bottom =
            Shares { all: Store::of(report.drained, report.drained_energy).and(bottom), of: flows.bottom() };
        let tank = if to_line.mass.get() > 0.0 {
            to_line.heat.get() / to_line.mass.get()
        } else {
            self.line_enthalpy()
        };
        let headers = self.headers(flows, tank, cold);
        let ledger = &mut self.plumbing.ledger;
        let leaks = [
            top.part(flows.union),
            top.part(flows.gaskets[0]),
            bottom.part(flows.gaskets[1]),
            bottom.part(flows.hole),
            bottom.part(flows.drip),
        ];
        let drained = bottom.part(flows.drain);
        let mut spilt = if self.plumbing.hose { 0.0 } else { drained.mass.get() };
        for leak in leaks {
            ledger.leaks.take(leak);
            spilt += leak.mass.get();
        }
        ledger.drain.take(drained);
        ledger.relief.take(top.part(flows.relief));
        // Heat.
        ledger.electric += Joules((watts[0] + watts[1]) * time);
        ledger.dry += Joules(report.dry);
        ledger.lost += Joules(report.lost);
        // The cold side and the tank.
        let back = self.book_lines(plan, time, to_line, &headers, cold);
        let [.., pushed] = report.ports;
        self.plumbing.cold_side.add(
            report.expelled - report.filled + back.mass.get() - pushed.mass,
            report.expelled_energy - report.filled_energy + back.heat.get() - pushed.energy,
        );
        self.book_cold_pipe(cold, time);
        self.spill(spilt / f::DENSITY.get());
    }

    /// Books what the lines carried, `to_line` having come from the tank and the cold side giving at `cold`. Returns what they gave back to it.
    fn book_lines(&mut self, plan: &Plan, time: f64, to_line: Store, headers: &Headers, cold: f64) -> Store {
        let flows = &plan.flows;
        let main = self.main_enthalpy();
        let come = |flow: f64, enthalpy: f64| {
            let mass = flow.max(0.0) * time / water::specific_volume(enthalpy);
            Store::of(mass, mass * enthalpy)
        };
        let plumbing = &mut self.plumbing;
        // Into the house's header, and what of it each way takes.
        let (fresh, pushed) = (come(flows.supply, main), come(-flows.heater, cold));
        let crossed_back = come(-flows.cross, headers.hot);
        plumbing.ledger.main.take(fresh);
        plumbing.cold_side.give(pushed);
        let mut house = Shares::of([fresh, pushed, crossed_back]);
        let cold_drawn: f64 = flows.cold.iter().sum();
        house.of =
            flows.heater.max(0.0) + (-flows.supply).max(0.0) + flows.cross.max(0.0) + cold_drawn + flows.open;
        plumbing.cold_side.take(house.part(flows.heater));
        plumbing.ledger.back.take(house.part(-flows.supply));
        for (store, flow) in plumbing.ledger.taps.iter_mut().zip(flows.cold) {
            store.take(house.part(flow));
        }
        let open = house.part(flows.open);
        plumbing.ledger.leaks.take(open);
        plumbing.on_floor += Volume(open.mass.get() / f::DENSITY.get());
        plumbing.cold_side.take(house.rest());
        // Into the hot line, and out of it.
        let (mixed, reversed) = (come(flows.mixer, cold), come(-flows.circuit, cold));
        plumbing.cold_side.give(mixed);
        plumbing.cold_side.give(reversed);
        let mut hot = Shares::of([to_line, mixed, reversed, house.part(flows.cross)]);
        let drawn: f64 = flows.hot.iter().sum();
        hot.of =
            drawn + flows.hidden + flows.circuit.max(0.0) + (-flows.cross).max(0.0) + flows.pushed_back();
        for (store, flow) in plumbing.ledger.taps.iter_mut().zip(flows.hot) {
            store.take(hot.part(flow));
        }
        plumbing.ledger.hidden.take(hot.part(flows.hidden));
        plumbing.cold_side.take(hot.rest());
        // What crossed back was reckoned at the header's enthalpy; the rest of it is a matter of rounding.
        let crossed = hot.part(-flows.cross);
        plumbing.cold_side.take(crossed);
        plumbing.cold_side.give(crossed_back);
        let round = hot.part(flows.circuit);
        let mass = round.mass.get();
        let after = self.returned(headers.hot, flows.circuit) * mass;
        self.plumbing.ledger.pipes += Joules(round.heat.get() - after);
        self.plumbing.cold_side.add(mass, after);
        hot.part(flows.pushed_back())
    }

    /// The bare cold pipe's walls as a stream of water of the room's temperature: kg/s and J/kg.
    fn cold_pipe_walls(&self) -> (f64, f64) {
        let room = self.room.to_celsius();
        (f::COLD_PIPE_GAIN.get() / water::heat_capacity(room), water::enthalpy(room))
    }

    /// What the bare cold pipe takes up from the room while its content has this enthalpy in the mean.
    fn book_cold_pipe(&mut self, mean: f64, time: f64) {
        let (walls, room) = self.cold_pipe_walls();
        let heat = walls * (room - mean) * time;
        self.plumbing.cold_side.heat.0 += heat;
        self.plumbing.ledger.pipes -= Joules(heat);
    }
}

/// A mass of water with its heat, to be shared out by flows.
struct Shares {
    all: Store,
    /// The flows' sum.
    of: f64,
}

impl Shares {
    fn of<const N: usize>(stores: [Store; N]) -> Self {
        let mut all = Store::default();
        stores.into_iter().for_each(|store| all.take(store));
        Self { all, of: 0.0 }
    }

    fn part(&self, flow: f64) -> Store {
        let share = if self.of > 0.0 && flow > 0.0 { flow / self.of } else { 0.0 };
        Store::of(self.all.mass.get() * share, self.all.heat.get() * share)
    }

    /// What no flow takes: the drop that a junction's own piping gave way by.
    fn rest(&self) -> Store {
        if self.of > 0.0 { Store::default() } else { self.all }
    }
}
