//! Conductors: gauge and metal of each run, what it resists at its temperature, how warm its current makes it.

use quantity::{Amps, Constant, Kelvins, Metres, Ohms, Seconds, Tag, Temperature, det};
use serde::{Deserialize, Serialize};

use crate::electrical::Live;
use crate::named::named;
use crate::{Plant, Wire, Wiring, branch};

quantity::constants! {
    /// Cross-sections, by AWG.
    const AREAS: Constant<[(f64, f64); 5]> = Constant::new(
        "cross-sections: AWG, m²",
        [(14.0, 2.081e-6), (12.0, 3.309e-6), (10.0, 5.261e-6), (8.0, 8.367e-6), (6.0, 13.302e-6)],
        "",
        Tag::Computed("ASTM B258: 0.127 mm times 92^((36 - AWG)/39), its square times π/4"),
    );
    /// Copper at 20 °C: resistivity, and its growth for each kelvin.
    const COPPER: Constant<(f64, f64)> = Constant::new(
        "copper at 20 °C: resistivity in Ω·m, growth for each K",
        (1.7241e-8, 3.93e-3),
        "",
        Tag::Published("IEC 60028, international annealed copper standard"),
    );
    /// Aluminium at 20 °C: resistivity, and its growth for each kelvin.
    const ALUMINIUM: Constant<(f64, f64)> = Constant::new(
        "aluminium at 20 °C: resistivity in Ω·m, growth for each K",
        (2.8264e-8, 4.03e-3),
        "",
        Tag::Memory("IEC 60889, hard-drawn aluminium wire"),
    );
    /// Temperature of those figures.
    const REFERENCE: Constant<Temperature> =
        Constant::of("temperature of resistivities", Temperature::celsius(20.0), Tag::Published("IEC 60028"));
    /// Rise at the ampacity of the 60 °C column.
    const RISE_AT_AMPACITY: Constant<Kelvins> = Constant::of(
        "rise of a conductor at its ampacity for 60 °C",
        Kelvins(30.0),
        Tag::Published("NEC table 310.16: ampacities in air of 30 °C"),
    );
    /// Time constant of a conductor in its cable.
    const LAG: Constant<Seconds> = Constant::of(
        "time constant of a conductor",
        Seconds(300.0),
        Tag::Model("10 AWG: some 36 J/(m·K) of copper and jacket against 9 K·m/W"),
    );
    /// Steps in which the network sees a conductor's temperature.
    const STEP: Constant<Kelvins> = Constant::of(
        "steps in which the network sees a conductor's temperature",
        Kelvins(10.0),
        Tag::Model("4 % of a resistance that is itself 1 % of the circuit's"),
    );
    /// Rise below which a conductor counts as cold.
    const COLD: Constant<Kelvins> =
        Constant::of("rise below which a conductor is cold", Kelvins(0.01), Tag::Model("nothing a hand would feel"));
    /// Gauge of a branch cable nobody has sized, and of a heater's leads.
    const USUAL: Constant<[usize; 2]> =
        Constant::new("gauge of a cable not sized, of a heater's leads", [10, 12], "AWG", Tag::CommonPractice);
}

named! {
    /// What a conductor is made of.
    Metal {
        /// Copper.
        Copper = "copper",
        /// Aluminium.
        Aluminium = "aluminium",
    }
}

/// A run's conductor.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Conductor {
    /// Its gauge, AWG.
    pub awg: u8,
    /// Its metal.
    pub metal: Metal,
    /// Its connectors are marked for its metal; copper always is.
    pub rated: bool,
    /// How far its own current has brought it above the room.
    pub rise: Kelvins,
}

impl Conductor {
    /// The usual one of a wire: copper, cold.
    pub fn usual(wire: Wire) -> Self {
        let [cable, lead] = USUAL.get();
        let awg = if wire.is_cable() { cable } else { lead } as u8;
        Self { awg, metal: Metal::Copper, rated: true, rise: Kelvins(0.0) }
    }

    /// Whether its joints worsen as they heat and cool.
    pub fn creeps(&self) -> bool {
        self.metal == Metal::Aluminium && !self.rated
    }

    fn metal(&self) -> (f64, f64) {
        match self.metal {
            Metal::Copper => COPPER.get(),
            Metal::Aluminium => ALUMINIUM.get(),
        }
    }

    /// Resistance of a length of it at a temperature.
    pub fn resistance(&self, length: Metres, at: Temperature) -> Ohms {
        let (resistivity, growth) = self.metal();
        let rows = AREAS.get();
        let row = rows.iter().find(|(awg, _)| *awg == f64::from(self.awg)).or(rows.last());
        let area = row.map_or(f64::INFINITY, |(_, area)| *area);
        Ohms(resistivity * (1.0 + growth * (at.get() - REFERENCE.get().get())) * length.get() / area)
    }

    /// Rise at which it settles under a current: as the square of it over the ampacity; another metal's as its
    /// resistivity over copper's.
    pub fn settles(&self, amps: Amps) -> Kelvins {
        let rows = branch::COPPER.get();
        let row = rows.iter().find(|(awg, ..)| *awg == f64::from(self.awg)).or(rows.last());
        let share = row.map_or(0.0, |(_, [cool, ..], _)| amps.get() / cool);
        Kelvins(RISE_AT_AMPACITY.get().get() * share * share * self.metal().0 / COPPER.get().0)
    }
}

impl Wiring {
    /// Gives the conductors that carry the whole current their gauge: cables, and the feed leads where theirs
    /// would be thinner than need be.
    pub fn size(&mut self, awg: u8) {
        for &wire in Wire::ALL {
            let conductor = self.conductor_mut(wire);
            if wire.is_cable() || matches!(wire, Wire::FeedA | Wire::FeedB) && awg < conductor.awg {
                conductor.awg = awg;
            }
        }
    }
}

impl Plant {
    /// Temperature of a wire's conductor.
    pub fn conductor_temperature(&self, wire: Wire) -> Temperature {
        self.room.plus(self.wiring.conductor(wire).rise)
    }

    /// Resistance of a wire's conductor as the network sees it.
    pub(crate) fn conductor_ohms(&self, wire: Wire) -> Ohms {
        let from = REFERENCE.get().get();
        let steps = ((self.conductor_temperature(wire).get() - from) / STEP.get().get()).round();
        let seen = Temperature(from + steps * STEP.get().get());
        self.wiring.conductor(wire).resistance(self.wiring.length(wire), seen)
    }
}

/// Lets time pass in every conductor, its current staying as it is.
pub(crate) fn advance(wiring: &mut Wiring, time: Seconds, live: &Live) {
    let mut keeps = None;
    for &wire in Wire::ALL {
        if !wiring.exists(wire) {
            continue;
        }
        let conductor = wiring.conductor_mut(wire);
        let settles = conductor.settles(live.amps(wire)).get();
        if settles < COLD.get().get() && conductor.rise.get() == 0.0 {
            continue;
        }
        let keeps = *keeps.get_or_insert_with(|| det::exp(-time.get() / LAG.get().get()));
        let rise = settles + (conductor.rise.get() - settles) * keeps;
        conductor.rise = Kelvins(if rise < COLD.get().get() { 0.0 } else { rise });
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::electrical::fixtures::{blades, near, plant};

    fn conductor(awg: u8, metal: Metal) -> Conductor {
        Conductor { awg, metal, ..Conductor::usual(Wire::CableA) }
    }

    /// Drop over 10 m there and 10 m back at 18.75 A and 20 °C, by hand (computed: 18.75 A x 20 m x ρ / area).
    #[test]
    fn drops_agree_with_a_table_worked_by_hand() {
        for (awg, metal, volts) in [
            (14, Metal::Copper, 3.107),
            (12, Metal::Copper, 1.954),
            (10, Metal::Copper, 1.229),
            (8, Metal::Copper, 0.773),
            (6, Metal::Copper, 0.486),
            (10, Metal::Aluminium, 2.015),
        ] {
            let ohms = conductor(awg, metal).resistance(Metres(20.0), REFERENCE.get());
            near(18.75 * ohms.get(), volts, 0.001);
        }
        // 55 K warmer: 1 + 55 x 0.00393 and 1 + 55 x 0.00403.
        let warmer = |metal| {
            let ohms = |t| conductor(10, metal).resistance(Metres(1.0), Temperature::celsius(t)).get();
            ohms(75.0) / ohms(20.0)
        };
        near(warmer(Metal::Copper), 1.21615, 1e-6);
        near(warmer(Metal::Aluminium), 1.22165, 1e-6);
    }

    /// NEC table 310.16 (published): 60 °C in air of 30 °C at the ampacity; so 14 AWG under 18.75 A is 47 K above.
    /// Aluminium of 10 AWG may have 25 A there: its rise comes out within a fifth.
    #[test]
    fn an_undersized_run_is_hot() {
        let mut plant = plant();
        blades(&mut plant, true, false);
        let rise = |plant: &Plant| plant.wiring.conductor(Wire::CableA).rise.get();
        let mut warm = |awg, steps: u32| {
            plant.wiring = Wiring::factory(plant.plate.layout, false);
            plant.wiring.size(awg);
            let live = plant.energise(&[]);
            let time = Seconds(3600.0 / f64::from(steps));
            (0..steps).for_each(|_| advance(&mut plant.wiring, time, &live));
            (rise(&plant), plant.conductor_temperature(Wire::CableA).to_celsius())
        };
        let (thick, thin) = (warm(10, 1), warm(14, 1));
        near(thick.0, 11.7, 0.6);
        near(thin.0, 46.9, 2.5);
        assert!(thin.1 > 60.0, "{thin:?}");
        near(warm(14, 100).0, thin.0, 1e-9);
        near(conductor(10, Metal::Aluminium).settles(Amps(25.0)).get(), 30.0, 6.0);
    }

    /// The warm run resists more, and the heater at its end gets less.
    #[test]
    fn a_warm_run_drops_more() {
        let mut plant = plant();
        blades(&mut plant, true, false);
        plant.wiring.size(14);
        let (cold, state) = (plant.energise(&[]), plant.electrical_state());
        advance(&mut plant.wiring, Seconds(3600.0), &cold);
        assert_ne!(plant.electrical_state(), state);
        let watts = |live: &Live| live.element_watts(crate::Level::Upper).get();
        let lost = watts(&cold) - watts(&plant.energise(&[]));
        assert!((5.0..40.0).contains(&lost), "{lost}");
    }
}
