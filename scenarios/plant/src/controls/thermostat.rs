//! A snap thermostat: a body that follows the wall, and a blade that jumps at two temperatures.

use quantity::{Constant, Kelvins, Tag, Temperature};

use crate::Thermostat;

quantity::constants! {
    /// Time constant of a control's body on the wall.
    pub const BODY_LAG: Constant = Constant::new(
        "time constant of a control on the wall",
        120.0,
        "s",
        Tag::Memory("control makers' data: 1-3 min"),
    );
    /// Share of the way from the room to the wall that a body reaches: seated and covered.
    pub const COVERED: Constant = Constant::new(
        "share of the wall's excess, seated and covered",
        0.97,
        "",
        Tag::Memory("control makers' data: 1-4 °F below the water when covered; 1.5 °F at 120 °F in a 70 °F room"),
    );
    /// The same, seated, insulation off.
    pub const BARE: Constant = Constant::new(
        "share of the wall's excess, seated, insulation off",
        0.85,
        "",
        Tag::Model("between covered and lifted: 7.5 °F low at 120 °F in a 70 °F room"),
    );
    /// The same, lifted off the wall, covered.
    pub const LIFTED: Constant = Constant::new(
        "share of the wall's excess, lifted",
        0.70,
        "",
        Tag::Memory("control makers' data: 10-20 °F low if lifted; 15 °F at 120 °F in a 70 °F room"),
    );
    /// The same, lifted, insulation off.
    pub const LIFTED_BARE: Constant = Constant::new(
        "share of the wall's excess, lifted, insulation off",
        0.55,
        "",
        Tag::Model("both losses together"),
    );
    /// Cut-out minus cut-in of an upper thermostat.
    const UPPER: Constant<Kelvins> = Constant::of(
        "differential of an upper thermostat",
        Kelvins::fahrenheit(15.0),
        Tag::Memory("control makers' data: typical field 8-20 °F; the model's default"),
    );
    /// Cut-out minus cut-in of a lower thermostat.
    const LOWER: Constant<Kelvins> = Constant::of(
        "differential of a lower thermostat",
        Kelvins::fahrenheit(10.0),
        Tag::Published("NREL OpenStudio-HPXML waterheater.rb: 10 °F deadband"),
    );
}

/// Usual cut-out minus cut-in of an upper thermostat.
pub const UPPER_DIFFERENTIAL: Kelvins = UPPER.get();
/// Usual cut-out minus cut-in of a lower thermostat.
pub const LOWER_DIFFERENTIAL: Kelvins = LOWER.get();

/// Share of the wall's excess over the room that a control's body reaches. A plate that only partly touches
/// lies between the lifted and the flat one.
pub(super) fn share(seated: bool, grip: f64, covered: bool) -> f64 {
    let (flat, lifted) =
        if covered { (COVERED.get(), LIFTED.get()) } else { (BARE.get(), LIFTED_BARE.get()) };
    let grip = if seated { grip.clamp(0.0, 1.0) } else { 0.0 };
    lifted + (flat - lifted) * grip
}

impl Thermostat {
    /// Its body's temperature at which it stops calling.
    pub fn cut_out(&self) -> Temperature {
        self.dial.plus(self.offset)
    }

    /// Its body's temperature at which it calls again.
    pub fn cut_in(&self) -> Temperature {
        Temperature(self.cut_out().get() - self.differential.get())
    }

    /// Body temperature once everything has settled.
    pub fn settled(&self, wall: Temperature, covered: bool, room: Temperature) -> Temperature {
        Temperature(room.get() + share(self.seated, self.grip, covered) * (wall.get() - room.get()))
    }

    /// Snaps if its body lies beyond where the blade jumps, as after a turn of the dial. Returns whether
    /// the blade moved: the click one hears.
    pub fn snap(&mut self) -> bool {
        let (before, position) = (self.blade_calls(), self.calling);
        if self.calling && self.body >= self.cut_out() {
            self.calling = false;
        } else if !self.calling && self.body <= self.cut_in() {
            self.calling = true;
        }
        if self.calling && !position {
            // A full cycle is done; most drift upward as the bimetal tires.
            self.offset += self.drift;
        }
        let moved = self.blade_calls() != before;
        if moved {
            let spot = if self.blade_calls() { &mut self.cold_spot } else { &mut self.hot_spot };
            spot.makes = spot.makes.saturating_add(1);
        }
        moved
    }

    /// Follows a board, whose relay and sensor it stands for. Returns whether the relay moved.
    pub(super) fn obey(&mut self, call: bool) -> bool {
        let before = self.blade_calls();
        self.calling = call;
        let moved = self.blade_calls() != before;
        if moved && self.blade_calls() {
            self.cold_spot.makes = self.cold_spot.makes.saturating_add(1);
        }
        moved
    }

    /// Turns the dial; returns whether the blade snapped over at once.
    pub fn turn(&mut self, dial: Temperature) -> bool {
        self.dial = dial;
        self.snap()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROOM: Temperature = Temperature::fahrenheit(70.0);

    fn lower() -> Thermostat {
        let mut t = Thermostat::sound(Temperature::fahrenheit(120.0), LOWER_DIFFERENTIAL);
        t.body = Temperature::fahrenheit(100.0);
        t
    }

    /// Trade sheet 3.3 (model default): cut-out at the dial, cut-in 10 °F below.
    #[test]
    fn opens_at_the_dial_and_closes_a_differential_below() {
        let mut t = lower();
        let mut at = |fahrenheit: f64| {
            t.body = Temperature::fahrenheit(fahrenheit);
            (t.snap(), t.blade_calls())
        };
        assert_eq!(at(119.9), (false, true));
        assert_eq!(at(120.1), (true, false));
        assert_eq!(at(110.1), (false, false));
        assert_eq!(at(109.9), (true, true));
    }

    /// Trade sheet 9, F72 (common practice, no source): calibration wanders with the cycles.
    #[test]
    fn drifts_with_its_cycles_and_counts_them() {
        let mut t = Thermostat { drift: Kelvins(0.01), ..lower() };
        for _ in 0..100 {
            t.body = Temperature::fahrenheit(130.0);
            t.snap();
            t.body = Temperature::fahrenheit(90.0);
            t.snap();
        }
        assert!((t.offset.get() - 1.0).abs() < 1e-9);
        assert_eq!((t.cold_spot.makes, t.hot_spot.makes), (100, 100));
    }

    /// Trade sheet 3.6 (from memory): 1-4 °F below the water covered, 10-20 °F if lifted.
    #[test]
    fn reads_low_by_the_figures_of_the_trade() {
        let wall = Temperature::fahrenheit(120.0);
        let mut t = lower();
        let low = |t: &Thermostat| wall.above(t.settled(wall, true, ROOM)).to_fahrenheit();
        assert!((1.0..=4.0).contains(&low(&t)));
        t.grip = 0.5;
        assert!((4.0..=10.0).contains(&low(&t)), "half on: between the two");
        t.seated = false;
        assert!((10.0..=20.0).contains(&low(&t)));
    }

    /// Common practice, no source: turning the dial below the water makes a sound one click, a welded one not.
    #[test]
    fn dial_clicks_only_a_free_blade() {
        let mut t = lower();
        assert!(t.turn(Temperature::fahrenheit(90.0)));
        assert!(!t.blade_calls());
        let mut welded = Thermostat { stuck: Some(true), ..lower() };
        assert!(!welded.turn(Temperature::fahrenheit(90.0)));
        assert!(welded.blade_calls());
    }
}
