//! An element in time; in air its sheath's heat balance up to the moment the coil melts.

use quantity::{Constant, Seconds, Tag, Temperature, Watts, det};

use crate::{Density, Element};

quantity::constants! {
    /// Mass of an element by the area of its sheath.
    pub const MASS: Constant = Constant::new(
        "mass of an element by its sheath's area",
        15.5,
        "kg/m²",
        Tag::Computed("about 0.3 kg for 4500 W at 232.5 kW/m²; others in proportion to their area"),
    );
    /// Its specific heat.
    pub const SPECIFIC_HEAT: Constant = Constant::new(
        "specific heat of an element",
        450.0,
        "J/(kg·K)",
        Tag::Computed("sheath and magnesia together, 0.45 kJ/(kg·K): with 0.3 kg some 33 K/s at 4500 W"),
    );
    /// Emissivity of a sheath that has lost its plating.
    pub const EMISSIVITY: Constant =
        Constant::new("emissivity of a scorched sheath", 0.8, "", Tag::Model("oxidised metal"));
    /// Share of its radiation that leaves a sheath, in the order of [`Density::ALL`].
    pub const OPEN_TO_ROOM: Constant<[f64; Density::ALL.len()]> = Constant::new(
        "share of a sheath's radiation that leaves it: high, low, ultra-low density",
        [1.0, 0.75, 0.75],
        "",
        Tag::Model("legs that are folded back see each other; ultra-low still stands dry firing"),
    );
    /// Natural convection from a hot rod in still air.
    pub const CONVECTION: Constant =
        Constant::new("convection from a hot sheath", 12.0, "W/(m²·K)", Tag::Model("thin rod in still air"));
    /// The coil fails at this sheath temperature.
    pub const FAILS_AT: Constant<Temperature> = Constant::of(
        "sheath temperature at which the coil fails",
        Temperature::celsius(1040.0),
        Tag::Published("a distributor's pages: sheath 1900-2000 °F; 1040 °C is 1904 °F"),
    );
    /// Beyond this the plating burns off and the blades sag.
    pub const SCORCHES_AT: Constant<Temperature> = Constant::of(
        "sheath temperature that leaves a mark",
        Temperature::celsius(600.0),
        Tag::Model("dull red heat"),
    );
    /// Stefan-Boltzmann constant.
    const STEFAN_BOLTZMANN: Constant = Constant::new(
        "Stefan-Boltzmann constant",
        5.670_374_419e-8,
        "W/(m²·K⁴)",
        Tag::Published("CODATA 2018, exact"),
    );
    /// Step of the balance while it is powered.
    const FINE: Constant<Seconds> = Constant::of(
        "step of a dry element's balance",
        Seconds(0.25),
        Tag::Model("a tenth of it moves the moment of failure by less than 0.1 s"),
    );
    /// Step of the balance while it cools.
    const COOLING: Constant<Seconds> =
        Constant::of("step of a dry element's cooling", Seconds(10.0), Tag::Model("a twentieth of its time constant"));
    /// By then all is settled.
    const SETTLED: Constant<Seconds> =
        Constant::of("time by which a dry element has settled", Seconds(600.0), Tag::Model("ten minutes"));
}

/// What an element finds around it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Beside {
    /// It stands in water with its whole coil.
    pub wetted: bool,
    /// That water.
    pub water: Temperature,
    /// Where water boils at the tank's pressure.
    pub boils_at: Temperature,
    /// The room.
    pub room: Temperature,
}

/// How a coil came to its end.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Failure {
    /// In air.
    Dry {
        /// When, from the start of the stretch.
        at: Seconds,
        /// How long it had been powered in air by then.
        after: Seconds,
    },
    /// Its life in water is used up.
    Worn {
        /// When, from the start of the stretch.
        at: Seconds,
    },
}

impl Element {
    fn heat_capacity(&self) -> f64 {
        MASS.get() * SPECIFIC_HEAT.get() * self.area()
    }

    /// Area of its sheath, m².
    pub(super) fn area(&self) -> f64 {
        self.stamp.watts.get() / self.density.surface_load() * self.length.sheath()
    }

    /// Heat a sheath gives to the air for each kelvin it lies above it.
    fn loss(&self, sheath: f64, room: f64) -> f64 {
        let open = OPEN_TO_ROOM.get().get(self.density as usize).copied().unwrap_or(1.0);
        let radiated = STEFAN_BOLTZMANN.get()
            * EMISSIVITY.get()
            * open
            * (sheath * sheath + room * room)
            * (sheath + room);
        self.area() * (radiated + CONVECTION.get())
    }

    /// Lets time pass with a power in the element. In water its sheath settles at once, and wears. In air it
    /// heats up until the coil fails; what the sheath is left with then is its own.
    pub fn advance(&mut self, time: Seconds, power: Watts, beside: Beside) -> Option<Failure> {
        if beside.wetted {
            self.in_air = Seconds(0.0);
            return self.soak(time, power, beside);
        }
        self.moisten(time);
        self.fire_dry(time, power, beside.room).map(|(at, after)| Failure::Dry { at, after })
    }

    /// Heats in air. Returns when the coil failed and how long it had been powered in air by then.
    fn fire_dry(&mut self, time: Seconds, power: Watts, room: Temperature) -> Option<(Seconds, Seconds)> {
        let (capacity, room) = (self.heat_capacity(), room.get());
        let powered = power.get() > 1.0;
        if !powered {
            self.in_air = Seconds(0.0);
        }
        let (mut done, mut sheath, total) = (0.0, self.sheath.get(), time.get());
        let mut watts = power.get();
        let mut failed = None;
        while done < total {
            // Cooling may go in strides; after ten minutes of either all is settled.
            let fine = if watts > 1.0 { FINE.get().get() } else { COOLING.get().get() };
            let stride = if done > SETTLED.get().get() { total - done } else { fine.min(total - done) };
            let toward = |at: f64, time: f64| {
                let loss = self.loss(at, room);
                let end = room + watts / loss;
                end + (sheath - end) * det::exp(-time * loss / capacity)
            };
            // The loss halfway: second order.
            let next = toward(toward(sheath, stride / 2.0), stride);
            if failed.is_none() && !self.open && watts > 1.0 && next >= FAILS_AT.get().get() {
                let part = ((FAILS_AT.get().get() - sheath) / (next - sheath)).clamp(0.0, 1.0) * stride;
                done += part;
                sheath = FAILS_AT.get().get();
                failed = Some((Seconds(done), self.in_air + Seconds(done)));
                watts = 0.0;
                continue;
            }
            sheath = next;
            done += stride;
            self.scorched |= sheath >= SCORCHES_AT.get().get();
        }
        self.sheath = Temperature(sheath);
        if powered {
            self.in_air += time;
        }
        if failed.is_some() {
            self.open = true;
            self.scorched = true;
            self.leak = self.leak.or(self.splits);
            self.in_air = Seconds(0.0);
        }
        failed
    }

    /// A time before which the coil cannot fail in air: as if no heat were lost.
    pub fn earliest(&self, power: Watts) -> Seconds {
        if self.open || power.get() <= 1.0 {
            return Seconds(f64::INFINITY);
        }
        let rise = (FAILS_AT.get().get() - self.sheath.get()).max(0.0);
        Seconds(rise * self.heat_capacity() / power.get())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::SheathFault;
    use crate::heater::Rating;
    use quantity::{Ohms, Volts};

    const ROOM: Temperature = Temperature::celsius(20.0);
    const BOILS: Temperature = Temperature::celsius(148.0);
    const AIR: Beside = Beside { wetted: false, water: ROOM, boils_at: BOILS, room: ROOM };

    fn element(watts: f64, density: Density) -> Element {
        Element { density, ..Element::sound(Rating { watts: Watts(watts), volts: Volts(240.0) }) }
    }

    fn burn(mut element: Element, power: f64, step: f64) -> Option<f64> {
        for _ in 0..(600.0 / step) as u32 {
            if let Some(Failure::Dry { after, .. }) = element.advance(Seconds(step), Watts(power), AIR) {
                assert!(element.open && element.scorched);
                assert_eq!(element.leak, element.splits);
                return Some(after.get());
            }
        }
        None
    }

    /// Check case 25 and trade sheet 2.7 (published): a dry element fails in 30-45 s, whatever its size, for
    /// mass and area grow with its power.
    #[test]
    fn dry_element_fails_in_time() {
        for watts in [1500.0, 3500.0, 4500.0, 5500.0] {
            let after = burn(element(watts, Density::High), watts, 1.0).unwrap();
            assert!((30.0..=45.0).contains(&after), "{after}");
            assert!((burn(element(watts, Density::High), watts, 7.0).unwrap() - after).abs() < 0.2);
        }
    }

    /// Trade sheet 2.6 (from memory): low density takes longer, ultra-low density stands it.
    #[test]
    fn low_density_stands_it_longer() {
        let low = burn(element(4500.0, Density::Low), 4500.0, 1.0).unwrap();
        assert!(low > 60.0, "{low}");
        assert_eq!(burn(element(4500.0, Density::UltraLow), 4500.0, 1.0), None);
    }

    /// Trade sheet 2.7 (from memory): usually open, sometimes the sheath splits and grounds the coil.
    #[test]
    fn a_sheath_may_split() {
        let fault = Some(SheathFault { fraction: 0.5, resistance: Ohms(2.0) });
        burn(Element { splits: fault, ..element(4500.0, Density::High) }, 4500.0, 1.0).unwrap();
    }

    /// Computed here: on 120 V (1125 W, trade sheet 2.4) radiation wins before the coil melts.
    #[test]
    fn quarter_power_glows_and_lives() {
        assert_eq!(burn(element(4500.0, Density::High), 1125.0, 1.0), None);
    }

    #[test]
    fn water_keeps_it_cool_and_horizon_is_early_enough() {
        let mut element = element(4500.0, Density::High);
        assert!(element.earliest(Watts(4500.0)).get() < burn(element, 4500.0, 1.0).unwrap());
        let wet = Beside { wetted: true, ..AIR };
        assert_eq!(element.advance(Seconds(9000.0), Watts(4500.0), wet), None);
        assert!(!element.open && !element.scorched && element.sheath < Temperature::celsius(170.0));
        assert_eq!(element.advance(Seconds(60.0), Watts(0.0), wet), None);
        assert!(element.sheath == ROOM);
    }
}
