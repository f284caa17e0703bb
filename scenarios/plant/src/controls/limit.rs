//! The high limit: trips by its body, latches again only by hand and only once cool.

use quantity::{Constant, Kelvins, Tag, Temperature};
use solver::tank::{Fading, Warming};

use super::thermostat::share;
use super::{contact, joint, sturdiness};
use crate::electrical::Live;
use crate::{Contact, ContactAt, End, Limit, Plant, Screw, Spot};

quantity::constants! {
    /// Usual fixed trip of a household heater.
    pub const TRIP: Constant<Temperature> = Constant::of(
        "trip of the limit",
        Temperature::fahrenheit(170.0),
        Tag::Published("repair reference site: residential 170 °F nominal"),
    );
    /// It latches only at or below this.
    pub const RESET_BELOW: Constant<Temperature> = Constant::of(
        "the limit latches below",
        Temperature::fahrenheit(120.0),
        Tag::Published("service literature: reset possible only at or below 120 °F"),
    );
    /// Share of a nearby hot spot's rise that reaches the limit's body.
    pub const HEATED_BY_SCREWS: Constant = Constant::new(
        "share of a hot joint's rise that reaches the limit",
        0.15,
        "",
        Tag::Model("a screw 200 K hot, well browned, brings a limit at 120 °F to its trip (F71)"),
    );
}

/// Screws of the limit and of the thermostat strapped to it.
const NEAR: &[Screw] = &[Screw::H1, Screw::H2, Screw::H3, Screw::H4, Screw::U1];
/// Their contacts.
const BESIDE: &[ContactAt] =
    &[ContactAt::LimitOne, ContactAt::LimitTwo, ContactAt::UpperCold, ContactAt::UpperHot];

impl Plant {
    /// How far hot joints and contacts beside the limit warm its body.
    pub fn heat_beside_limit(&self) -> Kelvins {
        let poles: f64 = self.limit.spots.iter().map(|spot| spot.rise.get()).sum();
        let mut rise =
            poles + self.thermostats[0].cold_spot.rise.get() + self.thermostats[0].hot_spot.rise.get();
        for end in End::all() {
            let joint = self.wiring.joint(end);
            if joint.rise.get() > 0.0 && joint.on.is_some_and(|screw| NEAR.contains(&screw)) {
                rise += joint.rise.get();
            }
        }
        Kelvins(HEATED_BY_SCREWS.get() * rise)
    }

    /// How that goes on while the currents of `live` stand.
    pub(crate) fn warming_of_limit(&self, live: &Live) -> Warming {
        let sturdy = sturdiness(self);
        let mut settles = 0.0;
        let mut part = |lag, rises: &mut dyn Iterator<Item = (Kelvins, Kelvins)>| {
            let amount = rises.fold(0.0, |sum, (start, end)| {
                settles += HEATED_BY_SCREWS.get() * end.get();
                sum + HEATED_BY_SCREWS.get() * (start.get() - end.get())
            });
            Fading { amount, lag }
        };
        let mut contacts = BESIDE.iter().filter_map(|&at| {
            let start = self.contact(at).1.rise;
            contact::settles(self, at, live.contact_watts(at), sturdy).map(|end| (start, end))
        });
        let contacts = part(contact::CONTACT_LAG.get(), &mut contacts);
        let mut joints = End::all().filter_map(|end| {
            let joint = self.wiring.joint(end);
            let near = joint.on.is_some_and(|screw| NEAR.contains(&screw));
            let settles = near.then(|| joint::settles(joint.rise, live.joint_watts(end), sturdy))?;
            settles.map(|end| (joint.rise, end))
        });
        let joints = part(joint::JOINT_LAG.get(), &mut joints);
        Warming { probe: 0, settles, fading: [contacts, joints] }
    }
}

impl Limit {
    /// A sound one at a temperature.
    pub fn sound(body: Temperature) -> Self {
        Self {
            trip: TRIP.get(),
            reset_below: RESET_BELOW.get(),
            body,
            tripped: false,
            poles: [Contact::Sound; 2],
            spots: [Spot::default(); 2],
            welded: [false; 2],
            seated: true,
            grip: 1.0,
        }
    }

    /// Presses the button: latches if it has tripped and is cool enough. Returns whether it clicked. Held
    /// in or not, the button never keeps the poles closed: it is trip-free (trade sheet 3.4, published).
    pub fn press(&mut self) -> bool {
        let latches = self.tripped && self.body <= self.reset_below;
        if latches {
            self.tripped = false;
            self.spots.iter_mut().for_each(|spot| spot.makes = spot.makes.saturating_add(1));
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

    /// Body temperature once everything has settled beside a wall, no hot joint near it.
    pub fn settled(&self, wall: Temperature, covered: bool, room: Temperature) -> Temperature {
        Temperature(room.get() + share(self.seated, self.grip, covered) * (wall.get() - room.get()))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Trade sheet 9, F70 (common practice, no source): off the shell it has not tripped 10 °F above its trip, and
    /// the relief valve's 210 °F comes first.
    #[test]
    fn off_the_shell_it_trips_late() {
        let room = Temperature::fahrenheit(70.0);
        let mut limit = Limit { seated: false, ..Limit::sound(room) };
        for water in [180.0, 209.0] {
            limit.body = limit.settled(Temperature::fahrenheit(water), true, room);
            assert!(!limit.snap(), "{water}");
        }
        limit.seated = true;
        limit.body = limit.settled(Temperature::fahrenheit(180.0), true, room);
        assert!(limit.snap());
    }

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
