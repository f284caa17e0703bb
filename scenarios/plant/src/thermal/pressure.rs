//! The pressure after a step, the relief valve, air in the lines, and what is news of the water.

use quantity::{Constant, Pressure, Tag, Volume, det};
use solver::tank::{Filling, Inputs, Tank};
use solver::water;

use super::advance::Run;
use super::figures as f;
use super::plan::{NEAR, Plan, ajar, is_air};
use super::vessel;
use super::ways::Ways;
use crate::waterworks::Tap;
use crate::{Happening, Plant};

quantity::constants! {
    /// Share of a line's water that carries its air out.
    const CARRIED: Constant = Constant::new(
        "air that running water carries out of a line",
        0.15,
        "",
        Tag::Model("1 to 3 minutes of spitting"),
    );
    /// Part of a line that fills with air when the tank breathes through another tap: the common trunk.
    pub(super) const TRUNK: Constant =
        Constant::new("common part of the hot lines", 0.3, "", Tag::Model("an invented house"));
    /// Rounding of the books that is not air.
    const ROUNDING: Constant = Constant::new("void that is rounding", 2e-6, "m3", Tag::Model("two millilitres"));
    /// Length of a step that only lets water fall back.
    const MOMENT: Constant = Constant::new("moment", 1e-3, "s", Tag::Model("no time"));
    /// Flow through the relief valve at which it counts as shut: less than a drop in two seconds.
    const SHUT: Constant =
        Constant::new("relief flow that counts as none", 2.5e-8, "m3/s", Tag::Model("a drop in two seconds"));
    /// Drain flow that counts as standing still.
    const STILL: Constant =
        Constant::new("drain flow that counts as none", 2e-6, "m3/s", Tag::Model("a dribble"));
    /// Hydrogen that a magnesium anode sets free.
    const HYDROGEN: Constant = Constant::new(
        "hydrogen from the anode, at room pressure",
        0.12e-3 / 86_400.0,
        "m3/s",
        Tag::Memory(
            "papers on magnesium anodes: half of the metal goes by self-corrosion; of 0.45 kg in 5 years 0.12 L a day",
        ),
    );
    /// Gas that makes a tap spit.
    pub(super) const GAS_HEARD: Constant =
        Constant::new("gas that makes a tap spit", 0.5e-3, "m3", Tag::Model("half a litre"));
    /// Pressure at the drain that moves what has settled in it: cold water's burst, not the tank's own head.
    const BURST: Constant = Constant::new(
        "pressure that clears a drain",
        70_000.0,
        "Pa",
        Tag::Model("10 psi; the head of a full tank is under 2"),
    );
    /// Time in which a burst clears a drain valve to a third.
    const CLEARS: Constant =
        Constant::new("time to clear a drain valve", 8.0, "s", Tag::Model("bursts of 10 s"));
    /// Sediment that leaves with the water of a flush.
    const SWEPT: Constant =
        Constant::new("sediment in the water of a flush", 0.01, "", Tag::Model("a cloudy bucket: 1 %"));
}

/// How the water stood before a step.
pub(super) struct Before {
    pub level: f64,
    pub air: f64,
    /// Flow from the drain.
    pub ran: f64,
}

impl Plant {
    /// Pressure that goes with the water there is now, and the highest.
    pub(super) fn settle_pressure(&mut self, tank: &Tank, ways: &mut Ways, plan: &Plan, elapsed: f64) {
        if plan.closes && elapsed >= plan.time - f::SPECK.get() {
            self.plumbing.air.0 = 0.0;
        }
        ways.refresh(self);
        if !ways.has_void() && plan.filling == Filling::KeepFull && ways.main_reaches(plan.pressure) {
            // What the growth was guessed wrong by comes from the main, or goes there.
            let lacking = ways.lacking(plan.pressure);
            if lacking > 0.0 || !self.plumbing.is_closed() {
                self.exchange_with_main(lacking);
            }
            ways.refresh(self);
        }
        let mut pressure = ways.settled_pressure();
        if let Some(floor) = ways.floor().filter(|floor| pressure <= *floor) {
            self.give_back(tank, -ways.released(floor));
            ways.refresh(self);
            let void = ways.void();
            self.plumbing.air.0 =
                if void > ROUNDING.get() { void * (floor + water::ATMOSPHERE) } else { 0.0 };
            ways.refresh(self);
            pressure = floor;
        }
        self.plumbing.pressure = Pressure(pressure);
        if pressure > self.plumbing.peak.get() {
            self.plumbing.peak = Pressure(pressure);
        }
    }

    /// Lets a volume fall back from the tank into the cold side, where air takes its place.
    fn give_back(&mut self, tank: &Tank, volume: f64) {
        if volume <= 0.0 {
            return;
        }
        let inlet = vessel::inlet_height(&self.plate, self.vessel.dip_tube).get();
        let mut inputs = Inputs::idle(inlet, self.room.to_celsius(), 0.0);
        inputs.filling = Filling::Flow(-volume / MOMENT.get());
        if let Ok(report) = tank.advance(&mut self.tank, &inputs, MOMENT.get(), &[]) {
            self.plumbing.cold_side.add(report.expelled, report.expelled_energy);
        }
    }

    /// Air drawn into the lines, and carried out again by the water; the anode's gas likewise.
    pub(super) fn carry_air(&mut self, ways: &Ways, plan: &Plan, elapsed: f64) {
        let breathes = ways.vented && is_air(self.plumbing.air.get());
        let plumbing = &mut self.plumbing;
        for (i, &tap) in Tap::ALL.iter().enumerate() {
            let open = plumbing.taps.get(i).is_some_and(|t| ajar(*t));
            let Some(air) = plumbing.line_air.get_mut(i) else { continue };
            if breathes {
                let least = if open { tap.line() } else { tap.line() * TRUNK.get() };
                air.0 = air.0.max(least.0);
            } else if let Some(flow) = plan.flows.hot.get(i) {
                air.0 = (air.0 - CARRIED.get() * flow * elapsed).max(0.0);
            }
        }
        let drawn: f64 = plan.flows.hot.iter().sum();
        let freed = HYDROGEN.get() * self.vessel.anode.hydrogen();
        let gas = plumbing.hydrogen.get() + freed * elapsed - CARRIED.get() * drawn * elapsed;
        plumbing.hydrogen = Volume(gas.max(0.0));
    }

    /// Gives the lines the gas that a rest of this length leaves in them.
    pub(crate) fn rest(&mut self, time: quantity::Seconds) {
        let freed = HYDROGEN.get() * self.vessel.anode.hydrogen() * time.get();
        self.plumbing.hydrogen = Volume(self.plumbing.hydrogen.get().max(freed));
    }

    /// A burst of water under pressure through the drain carries grit and sediment with it.
    pub(super) fn carry_grit(&mut self, ways: &Ways, plan: &Plan, elapsed: f64) {
        let bottom = plan.pressure + f::DENSITY.get() * water::GRAVITY * ways.level;
        if !ajar(self.plumbing.drain_valve) || bottom < BURST.get() {
            return;
        }
        let grit = &mut self.plumbing.drain_grit;
        *grit = if *grit > f::AJAR.get() { *grit * det::exp(-elapsed / CLEARS.get()) } else { 0.0 };
        let swept = SWEPT.get() * plan.flows.drain * elapsed;
        self.vessel.sediment = Volume((self.vessel.sediment.get() - swept).max(0.0));
    }

    /// Opens and closes the relief valve.
    pub(super) fn relieve(&mut self, run: &mut Run, plan: &Plan) {
        let hot = self.relief_is_hot();
        let pressure = self.plumbing.pressure;
        let still_hot = self.relief_water() > self.relief_recloses();
        let relief = &mut self.plumbing.relief;
        let shut = !relief.open;
        if relief.blocked {
            return;
        }
        if shut && (hot || pressure.get() >= relief.opens_at.get() - NEAR.get()) {
            relief.open = true;
            run.note(Happening::ReliefOpened);
        } else if !shut && !still_hot && !relief.lever {
            let leaks = f::orifice(relief.weep + relief.grit) * pressure.get().max(0.0).sqrt();
            if plan.flows.relief - leaks < SHUT.get() {
                relief.open = false;
                run.note(Happening::ReliefClosed);
            }
        }
    }

    /// What a relief valve that has just been lifted does to its seat: the first flow washes the deposit onto
    /// it, the next carries it away.
    pub(super) fn wash_seat(&mut self) {
        let relief = &mut self.plumbing.relief;
        let lifted = (relief.open || relief.lever) && !relief.blocked;
        if lifted && !relief.lifted {
            relief.grit = relief.deposit;
            relief.deposit = 0.0;
        }
        relief.lifted = lifted;
    }

    /// What a person beside the tank would call news of the water. `before` is how it stood.
    pub(super) fn water_news(&mut self, run: &mut Run, before: Before, after: &mut Ways, plan: &Plan) {
        let Before { level, air, ran } = before;
        let run_out = &mut self.plumbing.run_out;
        if level > f::EMPTY.get() && after.level <= f::EMPTY.get() && !*run_out {
            *run_out = true;
            run.note(Happening::TankEmpty);
        }
        // What lies below the lip grows as it warms, and drips over it: no news.
        *run_out &= after.level < f::FILLED.get();
        if is_air(air) && !after.has_void() {
            run.note(Happening::TankFull);
        }
        if ajar(self.plumbing.drain_valve) && after.level > f::EMPTY.get() {
            let runs = after.drain_at(self.plumbing.pressure.get()) > STILL.get();
            if ran > STILL.get() && !runs && plan.flows.inflow() <= STILL.get() {
                run.note(Happening::DrainHeldByVacuum);
            }
        }
    }

    /// Adds water to what lies on the floor.
    pub(super) fn spill(&mut self, volume: f64) {
        self.plumbing.on_floor += Volume(volume.max(0.0));
    }
}
