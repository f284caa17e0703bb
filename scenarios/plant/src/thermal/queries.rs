//! What can be asked of the water as it stands.

use quantity::{Constant, Flow, Kelvins, Tag, Temperature};
use solver::water;

use super::plan::{ajar, is_air};
use super::pressure::GAS_HEARD;
use super::vessel::{self, HALF_COIL};
use crate::waterworks::Tap;
use crate::{Level, Plant, Point, Screw};

quantity::constants! {
    /// Heat of evaporation at one atmosphere.
    const EVAPORATION: Constant = Constant::new(
        "heat of evaporation at one atmosphere",
        2.2565e6,
        "J/kg",
        Tag::Published("IAPWS-97, 100 C"),
    );
    /// Air in a line that makes its tap spit.
    const AIR_HEARD: Constant = Constant::new("air that makes a tap spit", 1e-5, "m3", Tag::Model("ten millilitres"));
    /// How far a screw on an element follows the wall: it sits on the sheath's end.
    const SCREW: Constant =
        Constant::new("share of the wall's excess at an element's screw", 0.9, "", Tag::Model("brass"));
    /// How far the outer jacket follows the tank: it lies behind the insulation.
    const JACKET: Constant = Constant::new("share of the tank's excess at the jacket", 0.1, "", Tag::Model("foam"));
    /// How far below its opening temperature a relief valve that opened by heat shuts again.
    const RECLOSES: Constant<Kelvins> = Constant::of(
        "fall at which a hot relief valve shuts",
        Kelvins::fahrenheit(10.0),
        Tag::Model("a wax capsule's differential"),
    );
}

/// What leaks where.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Leaks {
    /// Gaskets of the upper and the lower element.
    pub gaskets: [Flow; 2],
    /// Hole in the shell, near the bottom.
    pub shell: Flow,
    /// Out of the relief valve's pipe.
    pub relief: Flow,
    /// A nipple, union or dielectric on top.
    pub nipples: Flow,
    /// The shut drain valve.
    pub drain: Flow,
    /// The hot line behind a wall or under the slab: nobody sees it.
    pub hidden: Flow,
}

impl Leaks {
    /// What runs into the house: all but the relief valve, whose pipe leads to a safe place.
    pub fn into_the_house(&self) -> Flow {
        let [upper, lower] = self.gaskets;
        upper + lower + self.shell + self.nipples + self.drain + self.hidden
    }
}

impl Plant {
    /// Whether an open tap spits: air comes, alone or with the water.
    pub fn tap_spits(&self, tap: Tap) -> bool {
        self.plumbing.taps.get(tap.index()).is_some_and(|t| ajar(*t)) && self.would_spit(tap)
    }

    /// Whether a tap would spit, were it opened now.
    pub fn would_spit(&self, tap: Tap) -> bool {
        let line = self.plumbing.line_air.get(tap.index()).copied().unwrap_or_default();
        let gas = self.plumbing.hydrogen.get() > GAS_HEARD.get();
        is_air(self.plumbing.air.get()) || line.get() > AIR_HEARD.get() || gas
    }

    /// Flow from the drain valve as it stands now.
    pub fn drain_flow(&self) -> Flow {
        // Nothing to solve for where nothing can come.
        if self.plumbing.drain_valve <= 0.0 && self.plumbing.drain_drip <= 0.0 {
            return Flow(0.0);
        }
        let flows = self.moment().flows;
        Flow(flows.drain + flows.drip)
    }

    /// Temperature of the water at the drain valve.
    pub fn drain_temperature(&self) -> Temperature {
        let bottom = self.tank.slugs().first().map(|slug| Temperature::celsius(slug.celsius()));
        bottom.unwrap_or(self.room)
    }

    /// Flow of water out of the relief valve's pipe, by itself or by the lever.
    pub fn relief_flow(&self) -> Flow {
        Flow(self.moment().flows.relief)
    }

    /// Temperature of what comes out of the relief valve's pipe.
    pub fn relief_outlet_temperature(&self) -> Temperature {
        self.relief_water()
    }

    /// What leaks where, as it stands now.
    pub fn leaks(&self) -> Leaks {
        let flows = self.moment().flows;
        Leaks {
            gaskets: flows.gaskets.map(Flow),
            shell: Flow(flows.hole),
            relief: Flow(flows.relief),
            nipples: Flow(flows.union),
            drain: Flow(flows.drip),
            hidden: Flow(flows.hidden),
        }
    }

    /// Temperature of the water that leaves for the hot line.
    pub fn outlet(&self) -> Temperature {
        let slugs = self.tank.slugs();
        let slug = if self.plumbing.reversed { slugs.first() } else { slugs.last() };
        slug.map_or(self.room, |slug| Temperature::celsius(slug.celsius()))
    }

    /// Temperature of the water at the very top.
    pub fn crown(&self) -> Temperature {
        self.tank.slugs().last().map_or(self.room, |slug| Temperature::celsius(slug.celsius()))
    }

    /// Share of the water from the top that turns to steam when it comes out into the open: its heat above
    /// boiling over the heat of evaporation.
    pub fn flash_share(&self) -> f64 {
        let boiling = water::enthalpy(water::saturation_temperature(water::ATMOSPHERE));
        ((water::enthalpy(self.crown().to_celsius()) - boiling) / EVAPORATION.get()).clamp(0.0, 1.0)
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
            Screw::UEa | Screw::UEb => warmed(self.wall(Level::Upper), SCREW.get()),
            Screw::LEa | Screw::LEb => warmed(self.wall(Level::Lower), SCREW.get()),
            // The outer shell lies behind the insulation (model: a tenth of the excess).
            Screw::Shell => warmed(self.crown(), JACKET.get()),
            _ => self.room,
        }
    }

    /// Water temperature at which a relief valve that opened by heat shuts again: 10 °F below (model).
    pub(super) fn relief_recloses(&self) -> Temperature {
        Temperature(self.plumbing.relief.opens_hot.get() - RECLOSES.get().get())
    }
}
