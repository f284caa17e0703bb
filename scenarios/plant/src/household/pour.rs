//! One draw under way: a tap opened for what was wanted, the mix corrected as the hot water changes.

use quantity::{Constant, Draw, Kelvins, Seconds, Tag, Temperature, Volume};

use super::customs::{COLD, Use};
use super::habits::{self, Wish};
use super::week::Drawn;
use crate::home::Home;
use crate::waterworks::Tap;

/// A draw under way. Whoever lets time pass asks [`Pour::open`] for how long, and says so in [`Pour::feel`].
#[derive(Clone, PartialEq, Debug)]
pub struct Pour {
    wish: Wish,
    inlet: Temperature,
    left: Volume,
    /// Somebody has had enough of cold water.
    given_up: bool,
    drawn: Drawn,
}

impl Pour {
    /// Somebody goes to a tap. `at` counts from where the caller counts.
    pub fn begin(home: &Home, wish: Wish, at: Seconds) -> Self {
        let drawn = Drawn {
            at,
            tap: wish.tap,
            wanted: wish.wanted,
            ran: Seconds(0.0),
            hottest: home.plant.hottest_at(wish.tap),
            coldest: wish.wanted,
            until_cold: None,
            felt: wish.purpose != Use::Laundry,
        };
        Self { wish, inlet: home.plant.plumbing.inlet, left: wish.volume, given_up: false, drawn }
    }

    /// Somebody has a hand in it.
    pub fn is_felt(&self) -> bool {
        self.drawn.felt
    }

    /// At which tap.
    pub fn tap(&self) -> Tap {
        self.wish.tap
    }

    /// Sets the tap for what comes next, and says for how long; `None` where the draw is over.
    pub fn open(&self, home: &mut Home) -> Option<Seconds> {
        if self.given_up || self.left <= LAST_DROP.get() {
            return None;
        }
        let rise = home.plant.hottest_at(self.wish.tap).above(self.inlet).0;
        let share = if rise > TELLING.get().0 {
            (self.wish.wanted.above(self.inlet).0 / rise).clamp(0.0, 1.0)
        } else {
            1.0
        };
        set_flow(home, self.wish.tap, self.wish.flow * share);
        let chunk = if self.drawn.ran.0 < 1.0 { FIRST_CHUNK.get() } else { CHUNK.get() };
        Some(Seconds((self.left.0 / self.wish.flow.0).min(chunk.0)))
    }

    /// What came in the time that has passed.
    pub fn feel(&mut self, home: &Home, step: Seconds) {
        let (wanted, drawn) = (self.wish.wanted, &mut self.drawn);
        drawn.ran += step;
        self.left -= Volume(self.wish.flow.0 * step.0);
        let hot = home.plant.hottest_at(self.wish.tap);
        let at_tap = if hot < wanted { hot } else { wanted };
        drawn.hottest = if hot > drawn.hottest { hot } else { drawn.hottest };
        drawn.coldest = if at_tap < drawn.coldest { at_tap } else { drawn.coldest };
        if wanted.above(at_tap).0 > COLD.get().0 {
            drawn.until_cold = drawn.until_cold.or(Some(drawn.ran));
            self.given_up |= matches!(self.wish.purpose, Use::Shower | Use::Bath);
        }
    }

    /// The tap is shut.
    pub fn shut(self, home: &mut Home) -> Drawn {
        if let Some(opening) = home.plant.plumbing.taps.get_mut(self.wish.tap.index()) {
            *opening = 0.0;
        }
        self.drawn
    }
}

/// What the people of a house mean to draw between two times of day, counted from the midnight before a visit. The
/// same house and seed give the same day, whenever it is asked for.
pub fn meant(home: &Home, weekday: u16, seed: u64, from: Seconds, until: Seconds) -> Vec<Wish> {
    let day_of = |time: Seconds| (time / Seconds::days(1.0)).floor() as u16;
    let mut all = Vec::new();
    for day in day_of(from)..=day_of(until) {
        let mut draw = Draw::new(seed, &format!("draws of day {day}"));
        // The big evening comes once a week, and it has had its day.
        let wishes = habits::wishes(home, day, weekday + day, u16::MAX, &mut draw);
        all.extend(
            wishes.into_iter().map(|wish| Wish { at: Seconds::days(f64::from(day)) + wish.at, ..wish }),
        );
    }
    all.retain(|wish| (from..until).contains(&wish.at));
    all
}

/// Opens a tap so far that it gives this much hot water.
fn set_flow(home: &mut Home, tap: Tap, flow: quantity::Flow) {
    let Some(opening) = home.plant.plumbing.taps.get_mut(tap.index()) else { return };
    *opening = 1.0;
    let full = home.plant.tap_flow(tap).0;
    if let Some(opening) = home.plant.plumbing.taps.get_mut(tap.index()) {
        *opening = if full > 0.0 { (flow.0 / full).clamp(0.0, 1.0) } else { 1.0 };
    }
}

quantity::constants! {
    /// Until the first correction of the mix.
    const FIRST_CHUNK: Constant<Seconds> =
        Constant::of("until the mix is first corrected", Seconds(30.0), Tag::Model("a hand on the handle"));
    /// Between two corrections of the mix.
    const CHUNK: Constant<Seconds> =
        Constant::of("between two corrections of the mix", Seconds(60.0), Tag::Model("people wait and see"));
    /// A draw is over when less than this is left of it.
    const LAST_DROP: Constant<Volume> =
        Constant::of("rest of a draw that is not waited for", Volume(1e-6), Tag::Model("a millilitre"));
    /// Hot and cold further apart than this can be mixed.
    const TELLING: Constant<Kelvins> =
        Constant::of("hot over cold that can be mixed", Kelvins(0.5), Tag::Model("less cannot be felt"));
}
