//! An element in air: its sheath's heat balance up to the moment the coil melts.

use quantity::{Constant, Seconds, Tag, Temperature, Watts, det};

use crate::Element;

/// Mass of a 4500 W element; others in proportion to their stamp.
pub const MASS: Constant =
    Constant::new("mass of a 4500 W element", 0.3, "kg", Tag::Computed("trade sheet 2.7: ~0.3 kg"));

/// Its specific heat.
pub const SPECIFIC_HEAT: Constant = Constant::new(
    "specific heat of an element",
    450.0,
    "J/(kg·K)",
    Tag::Computed("trade sheet 2.7: 0.45 kJ/(kg·K)"),
);

/// Surface load of a high-density element, from which its area follows.
pub const SURFACE_LOAD: Constant = Constant::new(
    "surface load of an element",
    232_500.0,
    "W/m²",
    Tag::Memory("trade sheet 2.6: high density, 150 W/in²"),
);

/// Emissivity of a sheath that has lost its plating.
pub const EMISSIVITY: Constant =
    Constant::new("emissivity of a scorched sheath", 0.8, "", Tag::Model("oxidised metal"));

/// Natural convection from a hot rod in still air.
pub const CONVECTION: Constant =
    Constant::new("convection from a hot sheath", 12.0, "W/(m²·K)", Tag::Model("thin rod in still air"));

/// The coil fails at this sheath temperature.
pub const FAILS_AT: Constant = Constant::new(
    "sheath temperature at which the coil fails",
    1040.0 + 273.15,
    "K",
    Tag::Published("trade sheet 2.7: sheath 1900-2000 °F (a distributor's pages): 1040 °C is 1904 °F"),
);

/// Beyond this the plating burns off and the blades sag.
pub const SCORCHES_AT: Constant =
    Constant::new("sheath temperature that leaves a mark", 600.0 + 273.15, "K", Tag::Model("dull red heat"));

/// Stefan-Boltzmann constant (CODATA 2018, exact).
const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;

/// Step of the balance while it is powered, seconds.
const FINE: f64 = 0.25;

impl Element {
    fn heat_capacity(&self) -> f64 {
        MASS.get() * SPECIFIC_HEAT.get() * self.stamp.watts.get() / 4500.0
    }

    fn area(&self) -> f64 {
        self.stamp.watts.get() / SURFACE_LOAD.get()
    }

    /// Heat a sheath gives to the air for each kelvin it lies above it.
    fn loss(&self, sheath: f64, room: f64) -> f64 {
        let radiated =
            STEFAN_BOLTZMANN * EMISSIVITY.get() * (sheath * sheath + room * room) * (sheath + room);
        self.area() * (radiated + CONVECTION.get())
    }

    /// Lets time pass with a power in the element. In water the sheath follows it. In air it heats up:
    /// returns when the coil failed, if it did, and how long it had been powered in air by then. A
    /// sheath that splits to ground as well is possible; here the coil only opens (model).
    pub fn advance(
        &mut self,
        time: Seconds,
        power: Watts,
        wetted: bool,
        water: Temperature,
        room: Temperature,
    ) -> Option<(Seconds, Seconds)> {
        if wetted {
            self.sheath = water;
            self.in_air = Seconds(0.0);
            return None;
        }
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
            let fine = if watts > 1.0 { FINE } else { 10.0 };
            let stride = if done > 600.0 { total - done } else { fine.min(total - done) };
            let loss = self.loss(sheath, room);
            let end = room + watts / loss;
            let next = end + (sheath - end) * det::exp(-stride * loss / capacity);
            if failed.is_none() && !self.open && watts > 1.0 && next >= FAILS_AT.get() {
                let part = ((FAILS_AT.get() - sheath) / (next - sheath)).clamp(0.0, 1.0) * stride;
                done += part;
                sheath = FAILS_AT.get();
                failed = Some((Seconds(done), self.in_air + Seconds(done)));
                watts = 0.0;
                continue;
            }
            sheath = next;
            done += stride;
            self.scorched |= sheath >= SCORCHES_AT.get();
        }
        self.sheath = Temperature(sheath);
        if powered {
            self.in_air += time;
        }
        if failed.is_some() {
            self.open = true;
            self.scorched = true;
            self.in_air = Seconds(0.0);
        }
        failed
    }

    /// A time before which the coil cannot fail in air: as if no heat were lost.
    pub fn earliest(&self, power: Watts) -> Seconds {
        if self.open || power.get() <= 1.0 {
            return Seconds(f64::INFINITY);
        }
        let rise = (FAILS_AT.get() - self.sheath.get()).max(0.0);
        Seconds(rise * self.heat_capacity() / power.get())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::heater::Rating;
    use quantity::Volts;

    const ROOM: Temperature = Temperature::celsius(20.0);

    fn burn(power: f64, step: f64) -> Option<f64> {
        let mut element = Element::sound(Rating { watts: Watts(4500.0), volts: Volts(240.0) });
        for _ in 0..(600.0 / step) as u32 {
            if let Some((_, after)) = element.advance(Seconds(step), Watts(power), false, ROOM, ROOM) {
                assert!(element.open && element.scorched);
                return Some(after.get());
            }
        }
        None
    }

    /// Check case 25 and trade sheet 2.7 (published): a dry 4500 W element fails in 30-45 s.
    #[test]
    fn dry_element_fails_in_time() {
        let after = burn(4500.0, 1.0).unwrap();
        assert!((30.0..=45.0).contains(&after), "{after}");
        assert!((burn(4500.0, 7.0).unwrap() - after).abs() < 0.2);
    }

    /// Computed here: on 120 V (1125 W, trade sheet 2.4) radiation wins before the coil melts.
    #[test]
    fn quarter_power_glows_and_lives() {
        assert_eq!(burn(1125.0, 1.0), None);
    }

    #[test]
    fn water_keeps_it_cool_and_horizon_is_early_enough() {
        let mut element = Element::sound(Rating { watts: Watts(4500.0), volts: Volts(240.0) });
        assert!(element.earliest(Watts(4500.0)).get() < burn(4500.0, 1.0).unwrap());
        assert_eq!(element.advance(Seconds(9000.0), Watts(4500.0), true, ROOM, ROOM), None);
        assert!(!element.open && element.sheath == ROOM);
    }
}
