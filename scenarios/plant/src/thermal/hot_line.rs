//! The hot line: its mixing valve, its loop, what rises in it by itself, and what a tap gives.

use quantity::{Constant, Flow, Tag, Temperature, Volume};
use solver::water::{self, GRAVITY};

use super::figures as f;
use super::flows::Moment;
use super::vessel;
use super::ways::Ways;
use crate::Plant;
use crate::waterworks::{TAPS, Tap};

quantity::constants! {
    /// Time over which a flow that was just opened comes to rest.
    pub(super) const REST: Constant =
        Constant::new("time to come to rest", 5.0, "s", Tag::Model("water in short pipes"));
    /// Turns of the mixing valve's piston until its outlet is right.
    const TURNS: Constant<u32> = Constant::new("turns of a mixing valve", 3, "", Tag::Model("within 0.1 K"));
    /// Nearest the piston comes to shutting one side.
    const LEAST: Constant =
        Constant::new("least opening of a mixing valve's port", 0.01, "", Tag::Model("leakage"));
    /// Temperature at which the shell has the volume that its dimensions give.
    const SHELL_AT: Constant =
        Constant::new("temperature of the shell's dimensions", 20.0, "C", Tag::Model("a shop"));
    /// Melting ice.
    const ICE: Constant<Temperature> =
        Constant::of("melting ice", Temperature::celsius(0.0), Tag::Published("IAPWS, melting curve at one atmosphere"));
    /// Mean of two.
    const HALF: Constant = Constant::new("mean of two", 0.5, "", Tag::Computed("arithmetic"));
}

impl Plant {
    /// Growth of the shell's volume over what its dimensions give, m³.
    pub(super) fn shell_growth(&self) -> f64 {
        let mean = self.tank.mean().unwrap_or(SHELL_AT.get());
        f::SHELL_GROWTH.get() * self.plate.content().get() * (mean - SHELL_AT.get())
    }

    /// Pressure by which warm water rises round the loop, Pa: the hot riser against the cooled return.
    pub(super) fn rising(&self) -> f64 {
        let (hot, room) = (self.outlet().to_celsius(), self.room.to_celsius());
        let lighter = water::density(room.min(hot)) - water::density(hot);
        HALF.get() * lighter * GRAVITY * f::RISER.get()
    }

    /// Enthalpy of what the tank gives to the hot line, J/kg.
    pub(super) fn line_enthalpy(&self) -> f64 {
        let slugs = self.tank.slugs();
        let slug = if self.plumbing.reversed { slugs.first() } else { slugs.last() };
        slug.map_or_else(|| water::enthalpy(self.room.to_celsius()), |s| water::enthalpy(s.celsius()))
    }

    /// The pipes as they lie, with the mixing valve where it comes to rest.
    pub(super) fn laid(&self) -> Ways {
        let Some(valve) = self.plumbing.mixing.filter(|m| m.seized.is_none()) else { return Ways::of(self) };
        let (hot, cold) =
            (water::temperature(self.line_enthalpy()), water::temperature(self.cold_enthalpy()));
        let set = valve.set.to_celsius();
        if hot <= set {
            return Ways::with(self, Some(1.0));
        }
        let odds = |share: f64| share / (1.0 - share);
        let held = |share: f64| share.clamp(LEAST.get(), 1.0 - LEAST.get());
        let wanted = odds(held((set - cold) / (hot - cold).max(LEAST.get())));
        let mut opening = wanted;
        let mut ways = Ways::with(self, Some(opening / (1.0 + opening)));
        for _ in 0..TURNS.get() {
            let level = ways.level;
            let flows = ways.solve(REST.get(), 0.0, level).flows;
            let both = flows.drawn_off() + flows.mixer;
            if both <= f::SPECK.get() || flows.mixer <= 0.0 {
                break;
            }
            let got = odds(held(flows.drawn_off() / both));
            opening = odds(held(opening * wanted / got / (1.0 + opening * wanted / got)));
            ways = Ways::with(self, Some(opening / (1.0 + opening)));
        }
        ways
    }

    /// Flows as they stand now.
    pub(super) fn moment(&self) -> Moment {
        let mut ways = self.laid();
        let level = ways.level;
        ways.solve(REST.get(), 0.0, level)
    }

    /// Flow from a tap's spout as it stands now, hot and cold together; none while only air comes.
    pub fn tap_flow(&self, tap: Tap) -> Flow {
        let flows = self.moment().flows;
        let at = |side: [f64; TAPS]| side.get(tap.index()).copied().unwrap_or_default();
        Flow(at(flows.hot) + at(flows.cold))
    }

    /// Temperature of what a tap gives as it stands now; shut, of what its hot side would give first.
    pub fn tap_temperature(&self, tap: Tap) -> Temperature {
        let plumbing = &self.plumbing;
        let mixes = plumbing.mixing.is_some()
            || plumbing.recirculation.is_some()
            || plumbing.fixtures.iter().any(|x| x.crossover > 0.0)
            || plumbing.cold_opening(tap) > 0.0;
        if !mixes {
            return self.outlet();
        }
        let flows = self.moment().flows;
        let at = |side: [f64; TAPS]| side.get(tap.index()).copied().unwrap_or_default();
        let headers = self.headers(&flows, self.line_enthalpy(), self.cold_enthalpy());
        Temperature::celsius(water::temperature(headers.spout(at(flows.hot), at(flows.cold))))
    }

    /// What a tap gives with its hot side alone wide open: the hottest it can give.
    pub fn hottest_at(&self, tap: Tap) -> Temperature {
        let plain = self.plumbing.mixing.is_none()
            && self.plumbing.recirculation.is_none()
            && self.plumbing.fixtures.iter().all(|x| x.crossover <= 0.0 && x.limit_stop <= 0.0);
        if plain {
            return self.outlet();
        }
        let mut open = self.clone();
        if let Some(side) = open.plumbing.taps.get_mut(tap.index()) {
            *side = 1.0;
        }
        if let Some(side) = open.plumbing.cold_taps.get_mut(tap.index()) {
            *side = 0.0;
        }
        open.tap_temperature(tap)
    }

    /// Flow through the house's water meter; negative while it runs backwards.
    pub fn meter_flow(&self) -> Flow {
        Flow(self.moment().flows.supply)
    }

    /// Temperature of the loop's return pipe beside the heater: the room's while nothing comes back.
    pub fn return_temperature(&self) -> Temperature {
        let flows = self.moment().flows;
        if flows.circuit <= f::SPECK.get() {
            return self.room;
        }
        let headers = self.headers(&flows, self.line_enthalpy(), self.cold_enthalpy());
        Temperature::celsius(water::temperature(self.returned(headers.hot, flows.circuit)))
    }

    /// Temperature of the cold pipe beside the heater.
    pub fn cold_pipe(&self) -> Temperature {
        if self.plumbing.frozen {
            return ICE.get();
        }
        Temperature::celsius(water::temperature(self.cold_enthalpy()))
    }

    /// Temperature of the pipe on the nipple marked hot: the outlet's, or what comes in where the two are swapped.
    pub fn hot_pipe(&self) -> Temperature {
        if self.plumbing.reversed { self.cold_pipe() } else { self.outlet() }
    }

    /// Temperature of the pipe on the nipple marked cold.
    pub fn marked_cold_pipe(&self) -> Temperature {
        if self.plumbing.reversed { self.outlet() } else { self.cold_pipe() }
    }

    /// Water beside the relief valve's probe.
    pub(super) fn relief_water(&self) -> Temperature {
        let height = vessel::relief_height(&self.plate);
        self.tank.temperature_at(height).map_or(self.room, Temperature::celsius)
    }

    /// Gas that comes first from a tap after a long rest: the anode's hydrogen, at room pressure. It burns.
    pub fn hydrogen(&self) -> Volume {
        self.plumbing.hydrogen
    }
}
