//! An element's sheath in water: film or boiling, scale over it, popping, and the life that heat uses up.

use quantity::{Constant, Kelvins, Metres, Pressure, Seconds, Tag, Temperature, Watts, det};
use solver::water;

use super::element::{Beside, Failure};
use crate::{Element, Level, Plant, SheathFault};

quantity::constants! {
    /// Natural convection from a rod in water: flux over the excess temperature to the power 5/4.
    pub const FILM: Constant = Constant::new(
        "natural convection from a sheath in water, flux over excess^1.25",
        690.0,
        "W/(m²·K^1.25)",
        Tag::Computed("2.0 kW/(m²·K) at an excess of 70 K: Nu = 0.53·Ra^0.25 for an 8 mm rod, water at 84 °C"),
    );
    /// Its inverse power.
    const FILM_POWER: Constant = Constant::new(
        "excess temperature by the flux, power",
        0.8,
        "",
        Tag::Computed("inverse of the 5/4 of laminar natural convection"),
    );
    /// Nucleate boiling: flux over the cube of the excess above saturation.
    pub const BOILING: Constant = Constant::new(
        "nucleate boiling, flux over excess cubed",
        140.0,
        "W/(m²·K³)",
        Tag::Computed("Rohsenow's correlation for water on metal with C = 0.013, at one atmosphere"),
    );
    /// Its inverse power.
    const BOILING_POWER: Constant = Constant::new(
        "excess over boiling by the flux, power",
        1.0 / 3.0,
        "",
        Tag::Computed("inverse of the cube of nucleate boiling"),
    );
    /// Radius of a sheath.
    pub const RADIUS: Constant<Metres> =
        Constant::of("radius of a sheath", Metres(0.004), Tag::Memory("tubular elements of 0.315 in"));
    /// Scale thinner than this holds no water that could flash.
    pub const HOLDS_WATER: Constant<Metres> = Constant::of(
        "scale that pops",
        Metres(0.0003),
        Tag::Model("thinner it neither holds water nor insulates by more than 70 K"),
    );
    /// The sheath pops this far above the boiling point.
    pub const POPS_ABOVE: Constant<Kelvins> = Constant::of(
        "excess over boiling at which scale pops",
        Kelvins(20.0),
        Tag::Model("past the 12 K at which a clean high-density sheath boils in silence"),
    );
    /// Working life at the reference temperature.
    pub const LIFE: Constant<Seconds> = Constant::of(
        "working life of an element",
        Seconds::hours(20_000.0),
        Tag::Model("15 to 20 years at 3 hours a day, in soft water"),
    );
    /// The sheath temperature of that life.
    pub const LIFE_AT: Constant<Temperature> = Constant::of(
        "sheath temperature of an element's working life",
        Temperature::celsius(160.0),
        Tag::Computed("a clean high-density sheath boiling at 50 psi"),
    );
    /// Each step of this halves the life.
    pub const HALVES: Constant<Kelvins> = Constant::of(
        "sheath temperature step that halves an element's life",
        Kelvins(60.0),
        Tag::Model("scale shortens life; 3 mm of it to days of work, 1 mm to months"),
    );
}

impl Element {
    /// Temperature of its sheath's surface that the water touches, scale and all, and of the metal below.
    fn in_water(&self, power: Watts, beside: Beside) -> (Temperature, Temperature) {
        let flux = power.get() / self.area();
        if power.get() <= 1.0 {
            return (beside.water, beside.water);
        }
        let (radius, thickness) = (RADIUS.get().get(), self.scale.thickness.get().max(0.0));
        let outside = flux * radius / (radius + thickness);
        let film = beside.water.get() + det::pow(outside / FILM.get(), FILM_POWER.get());
        let boiling = beside.boils_at.get() + det::pow(outside / BOILING.get(), BOILING_POWER.get());
        let surface = film.min(boiling.max(beside.water.get()));
        let through = if thickness > 0.0 {
            flux * radius * det::ln(1.0 + thickness / radius) / self.scale.conductivity
        } else {
            0.0
        };
        (Temperature(surface), Temperature(surface + through))
    }

    /// Lets time pass in water: the sheath settles at once, dries or takes up moisture, and grows old.
    pub(super) fn soak(&mut self, time: Seconds, power: Watts, beside: Beside) -> Option<Failure> {
        self.sheath = self.in_water(power, beside).1;
        self.moisten(time);
        if power.get() <= 1.0 || self.open {
            return None;
        }
        let excess = self.sheath.get() - LIFE_AT.get().get();
        let rate = det::pow(2.0, excess / HALVES.get().get()) / LIFE.get().get();
        let left = (1.0 - self.life) / rate;
        self.life = (self.life + rate * time.get()).min(1.0);
        if left > time.get() {
            return None;
        }
        self.open = true;
        Some(Failure::Worn { at: Seconds(left.max(0.0)) })
    }
}

impl Element {
    /// Its scale is thick enough to hold water.
    pub fn is_crusted(&self) -> bool {
        self.scale.thickness >= HOLDS_WATER.get()
    }
}

impl Plant {
    /// Where water boils at the pressure in the tank.
    pub fn boils_at(&self) -> Temperature {
        let Pressure(gauge) = self.plumbing.pressure;
        Temperature::celsius(water::saturation_temperature(gauge + water::ATMOSPHERE))
    }

    /// The path from an element's coil to its sheath that conducts now: a crack may need water in it.
    pub fn conducting_leak(&self, level: Level) -> Option<SheathFault> {
        let element = self.elements.get(level.index())?;
        element.conducting_leak(!element.leak_needs_water || self.wetted(level))
    }

    /// Whether water came to a crack, or left it, since the elements stood in it as told.
    pub(crate) fn cracks_differ(&self, wetted: [bool; 2]) -> bool {
        let pairs = Level::ALL.iter().zip(&self.elements).zip(wetted);
        pairs.into_iter().any(|((level, element), was)| {
            element.leak_needs_water && element.leak.is_some() && self.wetted(*level) != was
        })
    }

    /// Whether an element pops and crackles: water caught in its scale flashes on the sheath.
    pub fn pops(&self, level: Level) -> bool {
        let Some(element) = self.elements.get(level.index()) else { return false };
        let excess = element.sheath.above(self.boils_at());
        self.wetted(level) && element.is_crusted() && excess >= POPS_ABOVE.get()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::heater::Rating;
    use crate::{Density, ElementLength, Scale};
    use quantity::Volts;

    fn element(density: Density, millimetres: f64) -> Element {
        let rating = Rating { watts: Watts(4500.0), volts: Volts(240.0) };
        Element { density, scale: Scale::of(Metres(millimetres / 1000.0)), ..Element::sound(rating) }
    }

    fn beside(water: f64) -> Beside {
        let room = Temperature::celsius(20.0);
        let boils_at = Temperature::celsius(148.0);
        Beside { wetted: true, water: Temperature::celsius(water), boils_at, room }
    }

    fn excess(density: Density, millimetres: f64, water: f64) -> f64 {
        let mut e = element(density, millimetres);
        e.advance(Seconds(1.0), Watts(4500.0), beside(water));
        e.sheath.above(Temperature::celsius(water)).to_fahrenheit()
    }

    /// Trade sheet 11, statement 15 (from memory): at 75-150 W/in² the sheath lies 80-130 °F and more over
    /// the water.
    #[test]
    fn a_clean_sheath_lies_far_over_the_water() {
        assert!(excess(Density::High, 0.0, 49.0) >= 130.0, "{}", excess(Density::High, 0.0, 49.0));
        assert!(excess(Density::Low, 0.0, 49.0) >= 80.0, "{}", excess(Density::Low, 0.0, 49.0));
        // Boiling sets its ceiling.
        let hot = excess(Density::High, 0.0, 90.0);
        assert!((hot - (148.0 + 11.8 - 90.0) * 1.8).abs() < 1.0, "{hot}");
    }

    #[test]
    fn each_kelvin_of_water_and_each_layer_of_scale_makes_it_hotter() {
        let mut last = 0.0;
        for tenths in 0..30 {
            let now = excess(Density::High, 0.1 * f64::from(tenths), 49.0);
            assert!(now > last);
            last = now;
        }
    }

    /// Trade sheet 4.17 (published): scale shortens the element's life. Sheet 2.6: low density lasts longer.
    #[test]
    fn scale_and_density_set_the_life() {
        let years = |density, millimetres| {
            let mut e = element(density, millimetres);
            for day in 1..20_000 {
                if e.advance(Seconds::hours(3.0), Watts(4500.0), beside(49.0)).is_some() {
                    return f64::from(day) / 365.0;
                }
            }
            f64::INFINITY
        };
        let (clean, thin, thick) =
            (years(Density::High, 0.0), years(Density::High, 1.0), years(Density::High, 3.0));
        assert!((10.0..30.0).contains(&clean), "{clean}");
        assert!(thin < clean / 5.0 && thick < thin / 5.0, "{clean} {thin} {thick}");
        assert!(years(Density::Low, 1.0) > 3.0 * thin);
    }

    /// Computed here: the same watts on three quarters of the sheath are a third more on each area. Boiling hides it
    /// while the sheath is clean; under 1 mm of scale 69 K more lie across the scale and 23 K in the film, and it ages
    /// nearly three times as fast.
    #[test]
    fn a_shorter_sheath_is_hotter_under_scale_and_wears_out_sooner() {
        let after = |length, millimetres| {
            let mut e = Element { length, ..element(Density::High, millimetres) };
            e.advance(Seconds::hours(3.0), Watts(4500.0), beside(49.0));
            e
        };
        let [short, middle] = [ElementLength::Short, ElementLength::Middle].map(|length| after(length, 1.0));
        let kelvins = short.sheath.above(middle.sheath).get();
        assert!((85.0..100.0).contains(&kelvins), "{kelvins}");
        assert!(short.life > 2.0 * middle.life, "{} {}", short.life, middle.life);
        let [short, middle] = [ElementLength::Short, ElementLength::Middle].map(|length| after(length, 0.0));
        assert!(short.sheath > middle.sheath && short.life < 1.2 * middle.life);
    }

    #[test]
    fn life_does_not_depend_on_the_step() {
        let ends = |step: f64| {
            let mut e = Element { life: 0.999, ..element(Density::High, 0.0) };
            let mut at = 0.0;
            loop {
                if let Some(Failure::Worn { at: within }) =
                    e.advance(Seconds(step), Watts(4500.0), beside(49.0))
                {
                    return at + within.get();
                }
                at += step;
            }
        };
        assert!((ends(60.0) - ends(7919.0)).abs() < 1e-3);
    }
}
