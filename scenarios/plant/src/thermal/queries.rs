//! What can be asked of the water as it stands.

use quantity::{Flow, Kelvins, Temperature, Volume};

use super::plan::{ajar, is_air};
use super::vessel::{self, HALF_COIL};
use super::ways::{Flows, Ways};
use crate::waterworks::Tap;
use crate::{Level, Plant, Point, Screw};

/// Time over which a flow that was just opened comes to rest, s.
const REST: f64 = 5.0;

/// What leaks where.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Leaks {
    /// Gaskets of the upper and the lower element.
    pub gaskets: [Flow; 2],
    /// Hole in the shell, near the bottom.
    pub shell: Flow,
    /// Out of the relief valve's pipe.
    pub relief: Flow,
}

impl Plant {
    fn flows_now(&self) -> Flows {
        let ways = Ways::of(self);
        let pressure = ways.pressure_after(REST, 0.0);
        ways.flows(pressure, ways.level)
    }

    /// Flow of water from a hot tap as it stands now; none while only air comes.
    pub fn tap_flow(&self, tap: Tap) -> Flow {
        Flow(self.flows_now().taps.get(tap.index()).copied().unwrap_or_default())
    }

    /// Whether an open tap spits: air comes, alone or with the water.
    pub fn tap_spits(&self, tap: Tap) -> bool {
        let open = self.plumbing.taps.get(tap.index()).is_some_and(|t| ajar(*t));
        let line = self.plumbing.line_air.get(tap.index()).copied().unwrap_or_default();
        open && (is_air(self.plumbing.air.get()) || line > Volume(1e-5))
    }

    /// Flow from the drain valve as it stands now.
    pub fn drain_flow(&self) -> Flow {
        Flow(self.flows_now().drain)
    }

    /// Temperature of the water at the drain valve.
    pub fn drain_temperature(&self) -> Temperature {
        let bottom = self.tank.slugs().first().map(|slug| Temperature::celsius(slug.celsius()));
        bottom.unwrap_or(self.room)
    }

    /// Flow of water out of the relief valve's pipe, by itself or by the lever.
    pub fn relief_flow(&self) -> Flow {
        Flow(self.flows_now().relief)
    }

    /// Temperature of what comes out of the relief valve's pipe.
    pub fn relief_outlet_temperature(&self) -> Temperature {
        self.relief_water()
    }

    /// What leaks where, as it stands now.
    pub fn leaks(&self) -> Leaks {
        let flows = self.flows_now();
        Leaks { gaskets: flows.gaskets.map(Flow), shell: Flow(flows.hole), relief: Flow(flows.relief) }
    }

    /// Temperature of the water that leaves at the top.
    pub fn outlet(&self) -> Temperature {
        let top = self.tank.slugs().last().map(|slug| Temperature::celsius(slug.celsius()));
        top.unwrap_or(self.room)
    }

    /// Mean temperature of each of `count` equal layers of the tank, bottom first; nothing where it is dry.
    pub fn layers(&self, count: u32) -> Vec<Option<Temperature>> {
        let layers = self.tank.layers(&vessel::vessel(&self.plate), count);
        layers.into_iter().map(|layer| layer.map(Temperature::celsius)).collect()
    }

    /// Temperature of the tank's wall beside a control.
    pub fn wall(&self, level: Level) -> Temperature {
        let height = vessel::control_height(&self.plate, level);
        self.tank.temperature_at(height).map_or(self.room, Temperature::celsius)
    }

    /// How full the tank is, 0 to 1.
    pub fn fill(&self) -> f64 {
        let tank = vessel::vessel(&self.plate);
        (self.tank.water_volume() / tank.volume()).clamp(0.0, 1.0)
    }

    /// Whether an element stands in water with its whole coil.
    pub fn wetted(&self, level: Level) -> bool {
        self.tank.wetted(vessel::element_height(&self.plate, level) + HALF_COIL)
    }

    /// Whether neither thermostat calls.
    pub fn is_satisfied(&self) -> bool {
        self.thermostats.iter().all(|t| !t.blade_calls())
    }

    /// Temperature of the metal at a point: the air around it, the tank behind it, its joint's own heat.
    pub fn metal(&self, point: Point) -> Temperature {
        let (base, rise) = match point {
            Point::Screw(screw) => {
                let hottest = crate::End::all()
                    .filter(|end| self.wiring.joint(*end).on == Some(screw))
                    .map(|end| self.wiring.joint(end).rise.get())
                    .fold(0.0, f64::max);
                (self.beside(screw), hottest)
            }
            Point::End(end) => {
                let joint = self.wiring.joint(end);
                (joint.on.map_or(self.room, |screw| self.beside(screw)), joint.rise.get())
            }
        };
        base.plus(Kelvins(rise))
    }

    /// What a screw would have without a current.
    fn beside(&self, screw: Screw) -> Temperature {
        let warmed = |wall: Temperature, share: f64| {
            Temperature(self.room.get() + share * (wall.get() - self.room.get()))
        };
        match screw {
            Screw::H1 | Screw::H2 | Screw::H3 | Screw::H4 | Screw::U1 | Screw::U2 | Screw::U4 => {
                self.thermostats[0].body
            }
            Screw::D1 | Screw::D2 => self.thermostats[1].body,
            // Screws of an element sit on its sheath's end, in the tank's wall.
            Screw::UEa | Screw::UEb => warmed(self.wall(Level::Upper), 0.9),
            Screw::LEa | Screw::LEb => warmed(self.wall(Level::Lower), 0.9),
            // The outer shell lies behind the insulation (model: a tenth of the excess).
            Screw::Shell => warmed(self.outlet(), 0.1),
            _ => self.room,
        }
    }

    /// Water beside the relief valve's probe.
    pub(super) fn relief_water(&self) -> Temperature {
        let height = vessel::relief_height(&self.plate);
        self.tank.temperature_at(height).map_or(self.room, Temperature::celsius)
    }

    /// Water temperature at which a relief valve that opened by heat shuts again: 10 °F below (model).
    pub(super) fn relief_recloses(&self) -> Temperature {
        Temperature(self.plumbing.relief.opens_hot.get() - Kelvins::fahrenheit(10.0).get())
    }
}
