//! What time does to the water in the tank and to its shell: the rod wears, bare steel rusts, bacteria make sulphide
//! of the rod's hydrogen. The water is taken as one: draws stir little, but nights are long.

use quantity::{Constant, Kilograms, Seconds, Tag, det};

use super::plan::Plan;
use crate::Plant;

quantity::constants! {
    /// Wear of a rod.
    const WEARS: Constant = Constant::new(
        "wear of an anode rod",
        1.0 / (5.0 * 365.25 * 86_400.0),
        "1/s",
        Tag::Memory("an anode lasts 3 to 5 years and longer in soft water"),
    );
    /// Iron that a bare square metre gives to the water.
    const RUSTS: Constant = Constant::new(
        "iron from bare steel in hot fresh water",
        0.2e-3 * 7850.0 / 31_557_600.0,
        "kg/(m²·s)",
        Tag::Memory("bare steel in hot fresh water with air in it: 0.1 to 0.3 mm a year; 7850 kg/m³"),
    );
    /// What still rusts beside a rod that protects.
    const STILL_RUSTS: Constant =
        Constant::new("rust beside a sound anode, of that without", 0.02, "", Tag::Model("next to none"));
    /// Sulphide that bacteria of activity 1 make with a sound magnesium rod.
    const SULPHIDE: Constant = Constant::new(
        "sulphide made in warm water beside magnesium",
        0.5e-3 / 86_400.0,
        "kg/(m³·s)",
        Tag::Model("a night makes it smell"),
    );
    /// Water as warm as this, and warmer, slows the bacteria; at the second it kills them.
    const HOT_FOR_THEM: Constant<[f64; 2]> = Constant::new(
        "water that slows sulphate bacteria, that kills them",
        [50.0, 60.0],
        "°C",
        Tag::Memory("140 °F for some hours clears a tank"),
    );
    /// Time in which water that hot leaves a third of them.
    const KILLS: Constant =
        Constant::new("time in which hot water leaves a third of the bacteria", 3600.0, "s", Tag::Model("some hours"));
    /// Activity below which there are none.
    const NONE: Constant = Constant::new("activity that counts as none", 0.01, "", Tag::Model("they are gone"));
    /// How long water has stood in a house that nobody has lived in yet.
    const HALF_A_DAY: Constant<Seconds> =
        Constant::of("standing of the water of a house not lived in yet", Seconds::hours(12.0), Tag::Model("a long night"));
    /// Iron that colours water.
    const COLOURS: Constant = Constant::new(
        "iron that colours water",
        0.3e-3,
        "kg/m³",
        Tag::Published("40 CFR 143.3, secondary maximum contaminant levels: iron 0.3 mg/L"),
    );
    /// Sulphide that is smelled.
    const SMELLED: Constant = Constant::new(
        "hydrogen sulphide smelled in water",
        0.05e-3,
        "kg/m³",
        Tag::Memory("WHO, Guidelines for drinking-water quality: taste and odour from 0.05 to 0.1 mg/L"),
    );
}

impl Plant {
    /// Lets rod, rust and bacteria do what they do in a step.
    pub(super) fn age_water(&mut self, plan: &Plan, elapsed: f64) {
        let volume = self.tank.water_volume();
        if volume <= 0.0 {
            return;
        }
        let drawn: f64 = plan.flows.hot.iter().sum::<f64>() + plan.flows.drain;
        let kept = det::exp(-(drawn * elapsed / volume));
        self.dissolve(kept, elapsed);
        let (mean, [_, dead]) = (self.mean_celsius(), HOT_FOR_THEM.get());
        let vessel = &mut self.vessel;
        if vessel.bacteria > 0.0 && mean >= dead {
            let left = vessel.bacteria * det::exp(-(elapsed / KILLS.get()));
            vessel.bacteria = if left > NONE.get() { left } else { 0.0 };
        }
        vessel.anode.left = (vessel.anode.left - WEARS.get() * elapsed).max(0.0);
    }

    /// Gives the water what half a day of standing in this shell gives it; nothing else changes.
    pub(crate) fn as_it_stands(&mut self) {
        self.dissolve(0.0, HALF_A_DAY.get().get());
    }

    /// Keeps a share of what was in the water and adds what a time brings.
    fn dissolve(&mut self, kept: f64, elapsed: f64) {
        let (volume, mean) = (self.tank.water_volume(), self.mean_celsius());
        let vessel = &mut self.vessel;
        let protects = vessel.anode.protects();
        let rusting = RUSTS.get() * vessel.bare * (STILL_RUSTS.get() * protects + (1.0 - protects));
        vessel.iron = Kilograms(vessel.iron.get() * kept + rusting * elapsed);
        let [slow, dead] = HOT_FOR_THEM.get();
        let thrive = ((dead - mean) / (dead - slow)).clamp(0.0, 1.0);
        let made = SULPHIDE.get() * vessel.bacteria * vessel.anode.hydrogen() * thrive * volume;
        vessel.sulphide = Kilograms(vessel.sulphide.get() * kept + made * elapsed);
    }

    fn mean_celsius(&self) -> f64 {
        self.tank.mean().unwrap_or_else(|| self.room.to_celsius())
    }

    fn concentration(&self, of: Kilograms) -> f64 {
        let volume = self.tank.water_volume();
        if volume > 0.0 { of.get() / volume } else { 0.0 }
    }

    /// Iron in the tank's water, kg/m³.
    pub fn iron(&self) -> f64 {
        self.concentration(self.vessel.iron)
    }

    /// Hydrogen sulphide in the tank's water, kg/m³.
    pub fn sulphide(&self) -> f64 {
        self.concentration(self.vessel.sulphide)
    }

    /// The tank's water is brown in a glass.
    pub fn is_rusty(&self) -> bool {
        self.iron() >= COLOURS.get()
    }

    /// The tank's water smells of rotten eggs.
    pub fn smells_of_eggs(&self) -> bool {
        self.sulphide() >= SMELLED.get()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::climate::Climate;
    use crate::household::HouseholdKind;
    use crate::waterworks::{Anode, AnodeMetal};
    use crate::{HeaterModel, Home, Setting};

    fn plant() -> Plant {
        let (heater, household, climate) = (HeaterModel::Plain40, HouseholdKind::Couple, Climate::MillValley);
        let location = Default::default();
        Home::sound(Setting { heater, household, climate, day: 100, in_line: None, location }).plant
    }

    #[test]
    fn a_night_makes_it_smell_beside_magnesium_alone() {
        let night = |metal, celsius: f64, bacteria| {
            let mut plant = plant();
            plant.vessel.anode = Anode::new(metal);
            plant.vessel.bacteria = bacteria;
            plant.tank = super::super::vessel(&plant.plate).full_at(celsius);
            plant.advance(Seconds::hours(10.0));
            plant
        };
        let magnesium = night(AnodeMetal::Magnesium, 48.0, 1.0);
        // 0.5 mg/L a day for ten hours, computed.
        let expected = 0.5e-3 * 10.0 / 24.0;
        assert!((magnesium.sulphide() / expected - 1.0).abs() < 0.05, "{} kg/m³", magnesium.sulphide());
        assert!(magnesium.smells_of_eggs());
        assert!(!night(AnodeMetal::AluminiumZinc, 48.0, 1.0).smells_of_eggs());
        assert!(!night(AnodeMetal::Magnesium, 48.0, 0.0).smells_of_eggs());
        let hot = night(AnodeMetal::Magnesium, 66.0, 1.0);
        assert!(!hot.smells_of_eggs() && hot.vessel.bacteria == 0.0, "{}", hot.vessel.bacteria);
    }

    #[test]
    fn bare_steel_colours_water_only_where_the_rod_is_gone() {
        let day = |left, bare| {
            let mut plant = plant();
            plant.vessel.anode.left = left;
            plant.vessel.bare = bare;
            plant.advance(Seconds::days(1.0));
            plant
        };
        // 0.2 mm of 0.12 m² in a year is 0.52 g a day, computed.
        let rusty = day(0.0, 0.12);
        assert!((rusty.vessel.iron.get() - 0.516e-3).abs() < 0.01e-3, "{} kg", rusty.vessel.iron.get());
        assert!(rusty.is_rusty() && !day(0.7, 0.12).is_rusty() && !day(0.0, 0.001).is_rusty());
    }

    #[test]
    fn a_rod_lasts_five_years() {
        let mut plant = plant();
        plant.vessel.anode.left = 1.0;
        plant.advance(Seconds::days(10.0));
        let lost = 1.0 - plant.vessel.anode.left;
        assert!((lost - 10.0 / (5.0 * 365.25)).abs() < 1e-6, "{lost}");
    }
}
