//! A snap thermostat: a body that follows the wall, and a blade that jumps at two temperatures.

use quantity::{Constant, Kelvins, Seconds, Tag, Temperature, det};

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

/// A first-order body whose surroundings change evenly.
#[derive(Clone, Copy, Debug)]
pub(super) struct Follower {
    body: f64,
    target: f64,
    rate: f64,
}

impl Follower {
    /// A body on a wall in a room.
    pub fn new(body: Temperature, wall: Temperature, rate: f64, share: f64, room: Temperature) -> Self {
        let target = room.get() + share * (wall.get() - room.get());
        Self { body: body.get(), target, rate: share * rate }
    }

    /// The body after a time: exact for an even change.
    pub fn after(&self, time: f64) -> f64 {
        let lag = BODY_LAG.get();
        let behind = self.target - self.rate * lag;
        behind + self.rate * time + (self.body - behind) * det::exp(-time / lag)
    }

    /// When the body first reaches a level from below (`rising`) or above, within a time. Its slope runs
    /// from its first value to the rate of the wall without turning back more than once, so a crossing
    /// that stands at the end is found by halving.
    pub fn crossing(&self, level: f64, rising: bool, within: f64) -> Option<f64> {
        let beyond = |t: f64| if rising { self.after(t) >= level } else { self.after(t) <= level };
        if beyond(0.0) {
            return Some(0.0);
        }
        if !beyond(within) {
            return None;
        }
        let (mut low, mut high) = (0.0, within);
        while high - low > 1e-3 {
            let middle = 0.5 * (low + high);
            if beyond(middle) { high = middle } else { low = middle }
        }
        Some(high)
    }

    /// A time before which the body cannot reach a level: the distance over the steepest slope there is.
    pub fn earliest(&self, level: f64, rising: bool) -> f64 {
        let sign = if rising { 1.0 } else { -1.0 };
        let distance = sign * (level - self.body);
        if distance <= 0.0 {
            return 0.0;
        }
        let now = sign * (self.target - self.body) / BODY_LAG.get();
        let steepest = now.max(sign * self.rate);
        // On a wall that stays, the body never passes the wall's own level.
        if steepest <= 0.0 || (self.rate == 0.0 && sign * (self.target - level) < 0.0) {
            f64::INFINITY
        } else {
            distance / steepest
        }
    }
}

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

    /// Lets time pass on the wall. Returns when the blade jumped, if it did; it jumps at most once a step.
    pub fn advance(
        &mut self,
        time: Seconds,
        wall: Temperature,
        rate: f64,
        covered: bool,
        room: Temperature,
    ) -> Option<Seconds> {
        let follower = self.follower(wall, rate, covered, room);
        let before = self.blade_calls();
        let jump = follower.crossing(self.threshold().get(), self.calling, time.get());
        self.body = Temperature(follower.after(time.get()));
        if jump.is_some() {
            self.calling = !self.calling;
        }
        jump.filter(|_| self.blade_calls() != before).map(Seconds)
    }

    /// A time before which the blade cannot jump.
    pub fn earliest(&self, wall: Temperature, rate: f64, covered: bool, room: Temperature) -> Seconds {
        if self.stuck.is_some() {
            return Seconds(f64::INFINITY);
        }
        let follower = self.follower(wall, rate, covered, room);
        Seconds(follower.earliest(self.threshold().get(), self.calling))
    }

    /// Where the blade jumps next.
    fn threshold(&self) -> Temperature {
        if self.calling { self.cut_out() } else { self.cut_in() }
    }

    fn follower(&self, wall: Temperature, rate: f64, covered: bool, room: Temperature) -> Follower {
        Follower::new(self.body, wall, rate, share(self.seated, covered), room)
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
        let wall = Temperature::fahrenheit(123.0);
        let opened = t.advance(Seconds(3600.0), wall, 0.0, true, ROOM);
        assert!(opened.is_some() && !t.calling);
        assert_eq!(t.advance(Seconds(3600.0), Temperature::fahrenheit(113.0), 0.0, true, ROOM), None);
        let closed = t.advance(Seconds(3600.0), Temperature::fahrenheit(111.0), 0.0, true, ROOM);
        assert!(closed.is_some() && t.calling);
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

    #[test]
    fn horizon_never_oversteps_the_jump() {
        for (wall, rate) in [(125.0, 0.0), (110.0, 0.01), (140.0, 0.002), (122.0, -0.0001), (119.0, 0.0)] {
            let wall = Temperature::fahrenheit(wall);
            let t = lower();
            let jump = t.clone().advance(Seconds(5000.0), wall, rate, true, ROOM);
            let early = t.earliest(wall, rate, true, ROOM);
            match jump {
                Some(jump) => assert!(early <= jump, "{early:?} after {jump:?}"),
                None => assert!(early.get() > 100.0),
            }
        }
    }

    #[test]
    fn many_small_steps_make_one_large_one() {
        let (mut once, mut often) = (lower(), lower());
        let wall = Temperature::fahrenheit(110.0);
        once.advance(Seconds(600.0), wall, 0.001, true, ROOM);
        for i in 0..60 {
            often.advance(Seconds(10.0), Temperature(wall.get() + 0.01 * f64::from(i)), 0.001, true, ROOM);
        }
        assert!(once.body.near(often.body, Temperature(1e-9)));
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
