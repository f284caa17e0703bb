//! Moisture in an element's insulation: taken up while it idles, driven out by its own heat.

use quantity::{Constant, Kelvins, Ohms, Seconds, Tag, Temperature, det};

use crate::Element;

quantity::constants! {
    /// Insulation of a dry, cold element, each screw to the sheath.
    pub const DRY: Constant<Ohms> = Constant::of(
        "insulation of a dry, cold element, each screw",
        Ohms(4e9),
        Tag::Model("well above the 50 megohms cold of an element maker's acceptance rules"),
    );
    /// Insulation of one as damp as it gets.
    pub const SOAKED: Constant<Ohms> = Constant::of(
        "insulation of a damp, cold element, each screw",
        Ohms(2e5),
        Tag::Memory("element makers' service notes: a long-idle element may read 0.1 to 5 megohms; both screws together 0.1"),
    );
    /// How steeply magnesia conducts better as it warms: ln R over 1/T.
    pub const STEEPNESS: Constant<Kelvins> = Constant::of(
        "steepness of insulation over the inverse of temperature",
        Kelvins(3330.0),
        Tag::Computed(
            "50 megohms cold to 0.5 hot, two decades from 20 °C to a working 220 °C",
        ),
    );
    /// Temperature that `DRY` and `SOAKED` hold for.
    const COLD: Constant<Temperature> =
        Constant::of("a cold element", Temperature::celsius(20.0), Tag::Model("room temperature"));
    /// Time constant of drying at the reference temperature.
    pub const DRIES_IN: Constant<Seconds> = Constant::of(
        "time constant of drying",
        Seconds::minutes(30.0),
        Tag::Memory("makers of sheathed elements: an hour or two of work brings damp insulation back"),
    );
    /// That reference temperature.
    pub const DRIES_AT: Constant<Temperature> = Constant::of(
        "sheath temperature of that drying",
        Temperature::celsius(150.0),
        Tag::Model("a working sheath"),
    );
    /// Warmer by this it dries twice as fast.
    pub const DRIES_FASTER: Constant<Kelvins> =
        Constant::of("temperature step that doubles drying", Kelvins(10.0), Tag::Model("as vapour pressure does, about"));
    /// Moisture below which an element is dry.
    const DRY_ENOUGH: Constant =
        Constant::new("moisture that no longer counts", 1e-4, "of the most", Tag::Model("0.1 % of the insulation"));
    /// Time constant of the uptake through seals that do not seal.
    pub const UPTAKE: Constant<Seconds> = Constant::of(
        "time constant of the uptake of moisture",
        Seconds::days(90.0),
        Tag::Model("idle for a season"),
    );
}

impl Element {
    /// Insulation of each screw to the sheath as it now is.
    pub fn insulation(&self) -> Ohms {
        let damp = self.damp.clamp(0.0, 1.0);
        let cold = det::ln(DRY.get().get()) * (1.0 - damp) + det::ln(SOAKED.get().get()) * damp;
        let warmer = 1.0 / COLD.get().get() - 1.0 / self.sheath.get().max(1.0);
        Ohms(det::exp(cold - STEEPNESS.get().get() * warmer))
    }

    /// Lets moisture come and go with the sheath as warm as it is.
    pub(super) fn moisten(&mut self, time: Seconds) {
        if self.damp == 0.0 && self.breathes == 0.0 {
            return;
        }
        let warmer = (self.sheath.get() - DRIES_AT.get().get()) / DRIES_FASTER.get().get();
        let out = det::pow(2.0, warmer) / DRIES_IN.get().get();
        let into = self.breathes.clamp(0.0, 1.0) / UPTAKE.get().get();
        let settles = into / (into + out);
        let damp = settles + (self.damp - settles) * det::exp(-(into + out) * time.get());
        self.damp = if damp < DRY_ENOUGH.get() && self.breathes == 0.0 { 0.0 } else { damp };
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::controls::element::Beside;
    use crate::heater::Rating;
    use quantity::{Volts, Watts};

    fn element(damp: f64, breathes: f64) -> Element {
        let rating = Rating { watts: Watts(4500.0), volts: Volts(240.0) };
        Element { damp, breathes, ..Element::sound(rating) }
    }

    fn beside(celsius: f64) -> Beside {
        let room = Temperature::celsius(20.0);
        let boils_at = Temperature::celsius(148.0);
        Beside { wetted: true, water: Temperature::celsius(celsius), boils_at, room }
    }

    /// To the sheath, both screws together.
    fn megohms(element: &Element) -> f64 {
        element.insulation().get() / 2.0 / 1e6
    }

    /// Trade sheet 2.5 (published): 50 megohms cold, 0.5 hot; over 1 megohm at 500 V in service. A sound one
    /// passes all of them.
    #[test]
    fn a_sound_element_passes_cold_and_hot() {
        let mut e = element(0.0, 0.0);
        assert!(megohms(&e) >= 50.0);
        e.advance(Seconds(60.0), Watts(4500.0), beside(49.0));
        assert!(megohms(&e) >= 0.5 && megohms(&e) < 200.0, "{}", megohms(&e));
    }

    /// Trade sheet 2.5 (from memory): a long-idle element may read 0.1-5 megohms and recovers after heating.
    #[test]
    fn idles_damp_and_dries_by_its_own_heat() {
        let mut e = element(0.0, 1.0);
        for _ in 0..180 {
            e.advance(Seconds::days(1.0), Watts(0.0), beside(15.0));
        }
        assert!((0.1..=5.0).contains(&megohms(&e)), "{}", megohms(&e));
        e.breathes = 0.3;
        e.advance(Seconds::hours(2.0), Watts(4500.0), beside(49.0));
        e.advance(Seconds::minutes(30.0), Watts(0.0), beside(49.0));
        assert!(megohms(&e) > 50.0, "{}", megohms(&e));
    }

    #[test]
    fn steps_of_any_size_dry_alike() {
        let (mut one, mut many) = (element(1.0, 0.2), element(1.0, 0.2));
        one.advance(Seconds(3600.0), Watts(4500.0), beside(49.0));
        for _ in 0..360 {
            many.advance(Seconds(10.0), Watts(4500.0), beside(49.0));
        }
        assert!((one.damp - many.damp).abs() < 1e-9);
    }
}
