//! Living in a house day by day: taps are opened, water is felt, somebody looks for the cause, somebody calls.

use quantity::{Constant, Draw, Joules, Seconds, Tag, Volume};

use super::habits::{self, Wish};
use super::pour::Pour;
use super::seen;
use super::week::{Drawn, Life, Week};
use crate::home::Home;
use crate::state::Happening;
use crate::supply::Handle;

/// Lives in a house for up to `days` days with whatever is wrong in it, until the people have had enough or
/// the days are over, then on to the hour at which the technician rings. The house is left as it is then,
/// with its floor dry and the lazy hand set down.
pub fn week(home: &mut Home, life: Life, draw: &mut Draw, days: u16) -> Week {
    let mut run = Run::begin(home, life, days);
    if home.away > 0 {
        return run.come_home(home);
    }
    let mut day = 0;
    loop {
        let wishes = habits::wishes(home, day, life.weekday + day, life.big_day, draw);
        let midnight = Seconds::days(f64::from(day));
        let last = day >= days || (day > 0 && run.annoyance >= life.patience);
        let at_home = !wishes.is_empty();
        for wish in wishes {
            if last && wish.at >= life.rings_at {
                break;
            }
            run.pass_until(home, midnight + wish.at);
            run.draw_water(home, &wish);
        }
        if last {
            run.pass_until(home, midnight + life.rings_at);
            return run.finish(home);
        }
        run.pass_until(home, midnight + Seconds::days(1.0));
        if at_home {
            run.evening_round(home);
        }
        day += 1;
    }
}

struct Run {
    week: Week,
    now: Seconds,
    annoyance: u16,
    /// When somebody goes to look why there is no hot water.
    look_at: Option<Seconds>,
    start: Books,
    seen: Books,
}

/// Sums taken from the plant's own books.
#[derive(Clone, Copy)]
struct Books {
    energy: f64,
    relief: f64,
    leaks: f64,
    lost: f64,
    drawn: f64,
    hidden: f64,
}

impl Books {
    fn of(home: &Home) -> Self {
        let ledger = &home.plant.plumbing.ledger;
        Self {
            energy: ledger.electric.0,
            relief: ledger.relief.mass.0,
            leaks: ledger.leaks.mass.0,
            lost: ledger.lost.0,
            drawn: ledger.taps.iter().map(|store| store.mass.0).sum(),
            hidden: ledger.hidden.mass.0,
        }
    }
}

/// Litres of water for a mass of it, near enough for what people see on a floor.
fn litres(kilograms: f64) -> Volume {
    Volume::litres(kilograms)
}

impl Run {
    fn begin(home: &Home, life: Life, days: u16) -> Self {
        let books = Books::of(home);
        Self {
            week: Week {
                kind: home.setting.household,
                location: home.setting.location,
                life,
                lasted: Seconds(0.0),
                longest: Seconds::days(f64::from(days)) + life.rings_at,
                draws: Vec::new(),
                breaker_trips: 0,
                closed_again: 0,
                found_tripped: 0,
                limit_trips: 0,
                button_pushes: 0,
                relief: Volume(0.0),
                floor: Volume(0.0),
                energy: Joules(0.0),
                usual: Joules(0.0),
                calling: Seconds(0.0),
                plate: home.plant.plate.element.watts,
                peak: home.plant.plumbing.pressure,
                drawn: Volume(0.0),
                hidden: Volume(0.0),
                rumbles: false,
                ticks: false,
                spat: false,
                away: 0,
                sweats: false,
                beside: home.installation.condensate,
                spits: false,
                grit: false,
                odd_part: false,
                worked: seen::worked(home),
                strong: 1.0,
                burnt_smell: false,
                dials: home.plant.thermostats.map(|t| t.dial),
                demand: home.demand,
                lights: [false; 2],
                eggs: false,
                rusty: false,
                tingle: false,
                second_supply: home.plant.wiring.second_source
                    || home.plant.boxes().any(|one| one.hours.is_some()),
            },
            now: Seconds(0.0),
            annoyance: 0,
            look_at: None,
            start: books,
            seen: books,
        }
    }

    /// Nobody is there until an hour before the technician rings. Then somebody opens a tap.
    fn come_home(mut self, home: &mut Home) -> Week {
        // What the weeks before did is in the house's state; the last days settle it.
        let rings = Seconds::days(LAST_DAYS.get().min(f64::from(home.away))) + self.week.life.rings_at;
        self.pass_until(home, rings - AT_HOME.get());
        self.draw_water(home, &habits::hands_at_kitchen());
        self.pass_until(home, rings);
        self.week.away = home.away;
        self.week.longest = rings;
        self.finish(home)
    }

    fn pass_until(&mut self, home: &mut Home, until: Seconds) {
        if let Some(look) = self.look_at.filter(|look| *look < until) {
            self.pass(home, look - self.now);
            self.look_at = None;
            self.look_for_cause(home);
        }
        self.pass(home, until - self.now);
    }

    fn pass(&mut self, home: &mut Home, time: Seconds) {
        if time.0 <= 0.0 {
            return;
        }
        let mut calls = home.plant.thermostats.map(|t| t.blade_calls());
        let mut since = Seconds(0.0);
        for (at, happening) in home.plant.advance(time) {
            match happening {
                Happening::Switched { level, calling } => {
                    if calls.contains(&true) {
                        self.week.calling += at - since;
                    }
                    since = at;
                    if let Some(call) = calls.get_mut(level.index()) {
                        *call = calling;
                    }
                }
                Happening::BreakerTripped { slot } => {
                    let breaker = home.plant.panel.breakers.get(slot as usize);
                    if breaker.is_some_and(|b| b.feeds_heater()) {
                        self.week.breaker_trips += 1;
                    }
                }
                Happening::LimitTripped { .. } => self.week.limit_trips += 1,
                Happening::JointBurnt { .. } | Happening::ContactBurnt { .. } => self.week.burnt_smell = true,
                _ => {}
            }
        }
        if calls.contains(&true) {
            self.week.calling += time - since;
        }
        if home.plant.plumbing.peak > self.week.peak {
            self.week.peak = home.plant.plumbing.peak;
        }
        self.now += time;
    }

    /// Opens a tap for what was wanted, until it has run or turned cold.
    fn draw_water(&mut self, home: &mut Home, wish: &Wish) {
        let mut pour = Pour::begin(home, *wish, self.now);
        if pour.is_felt() {
            let (eggs, rusty) = (home.plant.smells_of_eggs(), home.plant.is_rusty());
            self.week.eggs |= eggs;
            self.week.rusty |= rusty;
            self.annoyance += u16::from(eggs || rusty);
        }
        self.week.spat |= home.plant.would_spit(wish.tap);
        let rise = wish.wanted.above(home.plant.plumbing.inlet).0;
        while let Some(step) = pour.open(home) {
            self.pass(home, step);
            pour.feel(home, step);
            self.week.usual += Joules(
                step.0 * wish.flow.0 * WATER_HEAT.get() * rise / self.week.demand.max(LEAST_DEMAND.get()),
            );
        }
        let drawn = pour.shut(home);
        let sweat = home.plant.sweats();
        // What every summer brings nobody calls about.
        self.week.sweats |= (sweat.pipe || sweat.shell) && crate::fault::is_damp(home);
        self.mind(&drawn);
        self.week.draws.push(drawn);
    }

    /// What a draw does to people's mood.
    fn mind(&mut self, drawn: &Drawn) {
        self.annoyance += if drawn.never_warm() || drawn.burnt() {
            2
        } else {
            u16::from(drawn.lukewarm() || drawn.ran_out())
        };
        if drawn.never_warm() && self.look_at.is_none() {
            self.look_at = Some(self.now + self.week.life.slow_to_look);
        }
    }

    /// Somebody looks at the load center and, knowing it, at the red button. A handle that is simply off
    /// says nothing to them.
    fn look_for_cause(&mut self, home: &mut Home) {
        let life = self.week.life;
        let mut found = false;
        for breaker in home.plant.panel.breakers.iter_mut().filter(|b| b.feeds_heater()) {
            if breaker.stands() != Handle::Tripped || life.resets == 0 {
                continue;
            }
            found = true;
            if self.week.closed_again < life.resets {
                breaker.throw(Handle::On);
                self.week.closed_again += 1;
            }
        }
        self.week.found_tripped += u16::from(found);
        self.annoyance += 2 * u16::from(found);
        let limit = &mut home.plant.limit;
        if limit.tripped && self.week.button_pushes < life.pushes && limit.body < limit.reset_below {
            limit.tripped = false;
            self.week.button_pushes += 1;
        }
    }

    /// Once a day somebody passes the heater and sees what there is to see.
    fn evening_round(&mut self, home: &Home) {
        let now = Books::of(home);
        if litres(now.leaks - self.seen.leaks) > home.setting.location.noticed_leak() {
            self.annoyance += WET_FLOOR.get();
        }
        if litres(now.relief - self.seen.relief) > DRIP.get() {
            self.annoyance += 2;
        }
        self.annoyance += u16::from(self.week.sweats);
        self.seen = now;
    }

    fn finish(mut self, home: &mut Home) -> Week {
        let end = Books::of(home);
        self.week.lasted = self.now;
        self.week.relief = litres(end.relief - self.start.relief);
        self.week.floor = litres(end.leaks - self.start.leaks);
        self.week.energy = Joules(end.energy - self.start.energy);
        self.week.usual += Joules(end.lost - self.start.lost);
        self.week.burnt_smell |= seen::charred_and_carrying(home);
        (self.week.lights, self.week.tingle) = (seen::lights(home), seen::tingles(home));
        self.week.drawn = litres(end.drawn - self.start.drawn);
        self.week.hidden = litres(end.hidden - self.start.hidden);
        let calling = self.week.calling;
        seen::note(&mut self.week, home, calling);
        home.plant.plumbing.on_floor = Volume(0.0);
        home.plant.plumbing.peak = home.plant.plumbing.pressure;
        self.week
    }
}

quantity::constants! {
    /// Days of an absence that are lived through.
    const LAST_DAYS: Constant =
        Constant::new("days of an absence that are simulated", 2.0, "d", Tag::Model("the tank settles"));
    /// From the homecoming to the ring.
    const AT_HOME: Constant<Seconds> =
        Constant::of("from homecoming to the ring", Seconds::hours(1.0), Tag::Invented("they tried a tap and called"));
    /// Heat to warm a cubic metre by a kelvin near 90 °F.
    const WATER_HEAT: Constant = Constant::new(
        "heat to warm a cubic metre of water by a kelvin",
        4.16e6,
        "J/(m³·K)",
        Tag::Computed("4.18 kJ/(kg·K) and 995 kg/m³ near 90 °F, IAPWS-97"),
    );
    /// Least demand that usual consumption is divided by.
    const LEAST_DEMAND: Constant =
        Constant::new("least demand over the fitted one", 0.1, "", Tag::Model("keeps a made-up house from dividing by 0"));
    /// Annoyance at a wet floor.
    const WET_FLOOR: Constant<u16> =
        Constant::new("annoyance at a wet floor", 4, "", Tag::Model("twice that of a shower that never gets warm"));
    /// Water a day that somebody sees under the relief pipe.
    const DRIP: Constant<Volume> =
        Constant::of("water a day seen under the relief pipe", Volume::litres(0.1), Tag::Model("a mark of lime"));
}
