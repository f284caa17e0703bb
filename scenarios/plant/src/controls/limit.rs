//! The high limit: trips by its body, latches again only by hand and only once cool.

use quantity::{Kelvins, Seconds, Temperature};

use super::thermostat::{Follower, share};
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

    /// Lets time pass on the wall beside the upper thermostat. Returns when it tripped, if it did.
    pub fn advance(
        &mut self,
        time: Seconds,
        wall: Temperature,
        rate: f64,
        covered: bool,
        room: Temperature,
    ) -> Option<Seconds> {
        let follower = Follower::new(self.body, wall, rate, share(true, covered), room);
        self.body = Temperature(follower.after(time.get()));
        if self.tripped {
            return None;
        }
        let at = follower.crossing(self.trip.get(), true, time.get())?;
        self.tripped = true;
        Some(Seconds(at))
    }

    /// A time before which it cannot trip.
    pub fn earliest(&self, wall: Temperature, rate: f64, covered: bool, room: Temperature) -> Seconds {
        if self.tripped {
            return Seconds(f64::INFINITY);
        }
        let follower = Follower::new(self.body, wall, rate, share(true, covered), room);
        Seconds(follower.earliest(self.trip.get(), true))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Trade sheet 3.4 (published: manual reset, trip-free, reset only once cooled).
    #[test]
    fn latches_only_cool_and_by_hand() {
        let room = Temperature::fahrenheit(70.0);
        let mut limit = Limit::sound(Temperature::fahrenheit(120.0));
        assert!(!limit.press());
        let hot = Temperature::fahrenheit(180.0);
        assert!(limit.advance(Seconds(1800.0), hot, 0.0, true, room).is_some());
        assert!(!limit.press(), "too hot to latch");
        assert!(limit.tripped);
        assert_eq!(limit.advance(Seconds(3600.0), room, 0.0, true, room), None);
        assert!(limit.tripped, "it does not come back by itself");
        assert!(limit.press());
        assert!(!limit.tripped);
    }
}
