//! A snap thermostat: a body that follows the wall, and a blade that jumps at two temperatures.

use quantity::{Constant, Kelvins, Tag, Temperature};

use crate::Thermostat;

/// Time constant of a control's body on the wall.
pub const BODY_LAG: Constant = Constant::new(
    "time constant of a control on the wall",
    120.0,
    "s",
    Tag::Memory("trade sheet 3.6: 1-3 min"),
);

/// Share of the way from the room to the wall that a body reaches: seated and covered.
pub const COVERED: Constant = Constant::new(
    "share of the wall's excess, seated and covered",
    0.97,
    "",
    Tag::Memory("trade sheet 3.6: 1-4 °F below the water when covered; 1.5 °F at 120 °F in a 70 °F room"),
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
    Tag::Memory("trade sheet 3.6: 10-20 °F low if lifted; 15 °F at 120 °F in a 70 °F room"),
);

/// The same, lifted, insulation off.
pub const LIFTED_BARE: Constant = Constant::new(
    "share of the wall's excess, lifted, insulation off",
    0.55,
    "",
    Tag::Model("both losses together"),
);

/// Usual cut-out minus cut-in of an upper thermostat.
pub const UPPER_DIFFERENTIAL: Kelvins = Kelvins::fahrenheit(15.0);
/// Usual cut-out minus cut-in of a lower thermostat (15 and 10 °F: model defaults of trade sheet 3.3).
pub const LOWER_DIFFERENTIAL: Kelvins = Kelvins::fahrenheit(10.0);

/// Share of the wall's excess over the room that a control's body reaches.
pub(super) fn share(seated: bool, covered: bool) -> f64 {
    match (seated, covered) {
        (true, true) => COVERED.get(),
        (true, false) => BARE.get(),
        (false, true) => LIFTED.get(),
        (false, false) => LIFTED_BARE.get(),
    }
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
        Temperature(room.get() + share(self.seated, covered) * (wall.get() - room.get()))
    }

    /// Snaps if its body lies beyond where the blade jumps, as after a turn of the dial. Returns whether
    /// the blade moved: the click one hears.
    pub fn snap(&mut self) -> bool {
        let before = self.blade_calls();
        if self.calling && self.body >= self.cut_out() {
            self.calling = false;
        } else if !self.calling && self.body <= self.cut_in() {
            self.calling = true;
        }
        self.blade_calls() != before
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

    /// Trade sheet 3.6 (from memory): 1-4 °F below the water covered, 10-20 °F if lifted.
    #[test]
    fn reads_low_by_the_figures_of_the_trade() {
        let wall = Temperature::fahrenheit(120.0);
        let mut t = lower();
        let low = |t: &Thermostat| wall.above(t.settled(wall, true, ROOM)).to_fahrenheit();
        assert!((1.0..=4.0).contains(&low(&t)));
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
