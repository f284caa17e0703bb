//! The high limit: trips by its body, latches again only by hand and only once cool.

use quantity::{Kelvins, Temperature};

use super::thermostat::share;
use crate::{Contact, Limit};

/// Usual fixed trip of a household heater (trade sheet 3.4: published, 170 °F nominal).
pub const TRIP: Temperature = Temperature::fahrenheit(170.0);
/// It latches only at or below this (trade sheet 3.4: published, one maker's figure).
pub const RESET_BELOW: Temperature = Temperature::fahrenheit(120.0);

impl Limit {
    /// A sound one at a temperature.
    pub fn sound(body: Temperature) -> Self {
        Self { trip: TRIP, reset_below: RESET_BELOW, body, tripped: false, poles: [Contact::Sound; 2] }
    }

    /// Presses the button: latches if it has tripped and is cool enough. Returns whether it clicked. Held
    /// in or not, the button never keeps the poles closed: it is trip-free (trade sheet 3.4, published).
    pub fn press(&mut self) -> bool {
        let latches = self.tripped && self.body <= self.reset_below;
        if latches {
            self.tripped = false;
        }
        latches
    }

    /// How far the body is from tripping.
    pub fn margin(&self) -> Kelvins {
        self.trip.above(self.body)
    }

    /// Trips if its body stands at or above its point. Returns whether it did just now.
    pub fn snap(&mut self) -> bool {
        let trips = !self.tripped && self.body >= self.trip;
        self.tripped |= trips;
        trips
    }

    /// Body temperature once everything has settled beside a wall: it sits as flat as a seated thermostat.
    pub fn settled(&self, wall: Temperature, covered: bool, room: Temperature) -> Temperature {
        Temperature(room.get() + share(true, covered) * (wall.get() - room.get()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Trade sheet 3.4 (published: manual reset, trip-free, reset only once cooled).
    #[test]
    fn latches_only_cool_and_by_hand() {
        let mut limit = Limit::sound(Temperature::fahrenheit(120.0));
        assert!(!limit.press());
        limit.body = Temperature::fahrenheit(170.5);
        assert!(limit.snap());
        assert!(!limit.snap(), "once");
        assert!(!limit.press(), "too hot to latch");
        limit.body = Temperature::fahrenheit(119.0);
        assert!(!limit.snap());
        assert!(limit.tripped, "it does not come back by itself");
        assert!(limit.press());
        assert!(!limit.tripped);
    }
}
