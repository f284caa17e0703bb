//! One act under way: the copy it changes, the time it lets pass, and what comes of that.

use std::borrow::Cow;

use plant::{Handle, Happening, Level, Point};
use quantity::{Constant, Seconds, Tag, Volume};

use super::{gas, hands, prove, reach, scald, senses};
use crate::person::Harm;
use crate::session::{Session, Trap};
use crate::shown::{Ending, Fact, Noticed, Outcome, Shown};

quantity::constants! {
    /// Until somebody switches an unlocked breaker on again, when nobody told the household.
    const RESET_UNTOLD: Constant<Seconds> = Constant::of("until an unlocked breaker is switched on when nobody was told", Seconds::minutes(12.0), Tag::Model("somebody misses the light"));
    /// The same when they were told: a visitor, a child.
    const RESET_TOLD: Constant<Seconds> = Constant::of("the same when the household was told", Seconds::minutes(30.0), Tag::Model("a visitor, a child"));
    /// A tap that has run this long on a full tank runs solid.
    const SOLID_AFTER: Constant<Seconds> = Constant::of("a tap on a full tank runs solid after", Seconds(60.0), Tag::Memory("common practice: 1 to 3 minutes after the first water"));
    /// Pressure over the working pressure from which it is told: past what a relief valve lets by.
    const OVER_WORKING: Constant = Constant::new("pressure over the working pressure from which it is told", 1.1, "1", Tag::Model("past what a relief valve lets by"));
    /// What little rises over the drain's lip as the rest in the tank warms is no flood.
    const LIP: Constant<Volume> = Constant::of(
        "water over a drain's lip that is no flood",
        Volume::litres(0.002),
        Tag::Model("what the rest in the tank gains as it warms"),
    );
}

/// An act under way.
pub(super) struct Turn<'a> {
    /// The session before it.
    pub before: Cow<'a, Session>,
    /// The session it changes.
    pub s: Session,
    /// Its number.
    pub step: u32,
    /// Harms so far.
    pub harms: Vec<Harm>,
    /// What was noticed so far.
    pub noticed: Vec<Noticed>,
    /// Facts so far.
    pub facts: Vec<Fact>,
    /// Water that runs is watched by the technician himself.
    pub attended: bool,
    /// Whoever opens a tap stands at it, a hand in the water.
    pub lived: bool,
    /// Something of the vessel stands open: what runs out of it is the technician's doing.
    pub open: bool,
    /// When a breaker tripped during the act, counted from its start.
    pub tripped_at: Option<Seconds>,
    /// Power came on to the heater.
    came_on: bool,
    /// Bare metal the hands are on.
    held: Vec<Point>,
    /// Only asked whether the act can be done at all: no time passes.
    pub asking: bool,
}

impl<'a> Turn<'a> {
    /// Begins an act.
    pub fn new(before: &'a Session) -> Self {
        Self::of(Cow::Borrowed(before))
    }

    /// The same of a session of one's own.
    pub fn of(before: Cow<'a, Session>) -> Self {
        Self {
            s: before.clone().into_owned(),
            step: before.next_step(),
            before,
            harms: Vec::new(),
            noticed: Vec::new(),
            facts: Vec::new(),
            attended: false,
            lived: false,
            open: false,
            tripped_at: None,
            came_on: false,
            held: Vec::new(),
            asking: false,
        }
    }

    /// Notes that the hands are on something for the rest of the act.
    pub fn hold(&mut self, point: Point) {
        self.held.push(point);
    }

    /// Lets time pass, with whatever the people of the house do meanwhile.
    pub fn pass(&mut self, time: Seconds) {
        let mut left = if self.asking { 0.0 } else { time.get() };
        while left > 0.0 {
            let due = self.next_reset();
            let chunk = due.map_or(left, |(_, at)| (at - self.s.clock).get().clamp(0.0, left));
            if chunk > 0.0 {
                self.advance(Seconds(chunk));
                left -= chunk;
            }
            if let Some((slot, at)) = due
                && at <= self.s.clock + Seconds(1e-6)
            {
                self.somebody_resets(slot);
            }
        }
    }

    /// The breaker somebody will switch on next, and when.
    fn next_reset(&self) -> Option<(u32, Seconds)> {
        if !self.s.job.traps.contains(&Trap::SomebodyResets) {
            return None;
        }
        let patience = if self.s.me.household_told { RESET_TOLD.get() } else { RESET_UNTOLD.get() };
        self.s
            .me
            .off_since
            .iter()
            .filter(|(slot, _)| {
                self.s
                    .home
                    .plant
                    .panel
                    .breakers
                    .get(**slot as usize)
                    .is_some_and(|b| b.handle == Handle::Off && !b.locked)
            })
            .map(|(slot, since)| (*slot, *since + patience))
            .min_by(|a, b| a.1.get().total_cmp(&b.1.get()))
    }

    /// Moves a handle to on, by whomever, and marks whether power came to the heater.
    pub fn switch_on(&mut self, slot: u32) {
        let plant = &mut self.s.home.plant;
        let dead = !senses::fed(plant);
        if let Some(breaker) = plant.panel.breakers.get_mut(slot as usize) {
            breaker.throw(Handle::On);
        }
        self.came_on |= dead && senses::fed(plant);
    }

    /// Throws the switch or lever of the box in the line, and marks whether power came to the heater.
    pub fn throw_box(&mut self, closed: bool) {
        let plant = &mut self.s.home.plant;
        let dead = !senses::fed(plant);
        if let Some(one) = &mut plant.in_line {
            one.closed = closed;
        }
        self.came_on |= dead && senses::fed(plant);
    }

    /// Sets a timer's clock; its contacts follow.
    pub fn set_clock(&mut self, now: Seconds) {
        let plant = &mut self.s.home.plant;
        let dead = !senses::fed(plant);
        if let Some(one) = &mut plant.in_line {
            one.set_clock(now);
        }
        self.came_on |= dead && senses::fed(plant);
    }

    fn somebody_resets(&mut self, slot: u32) {
        self.switch_on(slot);
        self.noticed.push(Noticed::SomebodyReset { slot });
        self.comes_alive();
    }

    /// Power came while the hands are on bare metal: by somebody, or by the hours of a relay.
    fn comes_alive(&mut self) {
        for point in std::mem::take(&mut self.held) {
            hands::touch(self, point, hands::Grip::Grasps);
        }
    }

    fn advance(&mut self, time: Seconds) {
        let began = self.s.clock;
        let elapsed = began - self.before.clock;
        let floor = self.s.home.plant.plumbing.on_floor;
        let pressure = self.s.home.plant.plumbing.pressure;
        let full = senses::full(&self.s.home.plant);
        let gas = self.s.home.plant.hydrogen();
        let happened = self.s.home.plant.advance(time);
        self.s.clock += time;
        let mut full_for = if full { time } else { Seconds(0.0) };
        for (at, happening) in happened {
            if happening == Happening::TankFull {
                full_for = time - at;
            }
            self.notice(&happening, elapsed + at);
            self.s.happenings.push((began + at, happening));
        }
        self.count_spill(floor);
        self.count_air(full_for);
        self.watch_pressure(pressure);
        scald::watch(self);
        gas::watch(self, gas);
    }

    fn notice(&mut self, happening: &Happening, at: Seconds) {
        match *happening {
            Happening::BreakerTripped { slot } => {
                self.tripped_at = self.tripped_at.or(Some(at));
                self.noticed.push(Noticed::BreakerTripped { slot });
            }
            Happening::LimitTripped { .. } => self.noticed.push(Noticed::Click { level: Level::Upper }),
            Happening::Switched { level, .. } => self.noticed.push(Noticed::Click { level }),
            Happening::ElementBurntOut { level, after } => {
                let plant = &self.s.home.plant;
                let Some(element) = plant.elements.get(level.index()) else { return };
                let volts = senses::nominal(plant).get();
                let power = quantity::Watts(volts * volts / element.coil().get().max(1e-3));
                let sheath = element.sheath;
                self.noticed.push(Noticed::Bang);
                self.harms.push(Harm::ElementBurntOut { element: level, power, after, sheath });
            }
            Happening::LineSwitched { closed } => {
                self.noticed.push(Noticed::BoxClacks { closed });
                if closed {
                    self.comes_alive();
                }
            }
            // A fuse melts without a sound.
            Happening::FuseMelted { .. }
            | Happening::ElementWornOut { .. }
            | Happening::ContactWelded { .. } => {}
            Happening::ContactBurnt { at: contact } => {
                let power = self.before.home.plant.energise(&[]).contact_watts(contact);
                self.noticed.push(Noticed::Bang);
                self.harms.push(Harm::JointOverheated { power, seconds: at });
            }
            Happening::JointBurnt { end } => {
                let was = &self.before.home.plant;
                let power = was.energise(&[]).joint_watts(end);
                self.noticed.push(Noticed::Bang);
                self.harms.push(Harm::JointOverheated { power, seconds: at });
            }
            Happening::ReliefOpened => self.noticed.push(Noticed::ReliefRuns),
            Happening::DrainHeldByVacuum => self.noticed.push(Noticed::DrainStopped),
            Happening::TankEmpty => self.noticed.push(Noticed::TankEmpty),
            Happening::ReliefClosed | Happening::TankFull => {}
        }
    }

    /// Water on the floor: whose doing, and whether it has become worse.
    fn count_spill(&mut self, before: Volume) {
        let plumbing = &self.s.home.plant.plumbing;
        let more = plumbing.on_floor - before;
        if more <= LIP.get() {
            return;
        }
        let open = self.open || plumbing.runs_open() || plumbing.relief.missing;
        let careless = open || (plumbing.drain_valve > 0.0 && !plumbing.hose);
        if !careless {
            return;
        }
        let was = Harm::Flood { volume: self.s.me.spilled };
        let first = self.s.me.spilled.get() <= 0.0;
        self.s.me.spilled += more;
        let flood = Harm::Flood { volume: self.s.me.spilled };
        let told = self.harms.iter().position(|h| matches!(h, Harm::Flood { .. }));
        if let Some(entry) = told.and_then(|i| self.harms.get_mut(i)) {
            *entry = flood;
        } else if first || flood.severity() > was.severity() {
            self.harms.push(flood);
            self.noticed.push(Noticed::Flooding { volume: plumbing.on_floor });
        }
    }

    /// Air let in, and taps run until it is out again.
    fn count_air(&mut self, full_for: Seconds) {
        let plant = &self.s.home.plant;
        if !senses::full(plant) {
            self.s.me.purged = false;
            self.s.me.solid_for = Seconds(0.0);
            return;
        }
        let Some(tap) = senses::open_tap(plant) else { return };
        if self.s.me.purged {
            return;
        }
        self.s.me.solid_for += full_for;
        if self.s.me.solid_for >= SOLID_AFTER.get() && !senses::spits(plant, tap) {
            self.s.me.purged = true;
            self.noticed.push(Noticed::RunsSolid { tap });
        }
    }

    fn watch_pressure(&mut self, before: quantity::Pressure) {
        let plant = &self.s.home.plant;
        let (pressure, working) = (plant.plumbing.pressure, plant.plate.working_pressure);
        let limit = working * OVER_WORKING.get();
        if pressure > limit && before <= limit {
            self.harms.push(Harm::Overpressure { pressure, working });
        }
    }

    /// Ends the act: what follows from the state it left.
    pub fn finish(mut self, shown: Shown) -> (Session, Outcome) {
        self.judge_power();
        if self.s.ended.is_none() {
            // Somebody else's injury ends nothing: it has to be seen to.
            let own = |h: &Harm| h.bodily() && !h.to_household();
            if self.harms.iter().any(|h| own(h) && h.severity() == crate::person::Severity::Grave) {
                self.end(Ending::Injured);
            } else if self.s.job.limit_minutes.is_some_and(|limit| self.s.clock.to_minutes() > limit) {
                self.end(Ending::TimeOut);
            }
        }
        let took = self.s.clock - self.before.clock;
        let Self { s, harms, noticed, facts, .. } = self;
        (s, Outcome { took, shown, harms, noticed, facts })
    }

    /// Ends the job.
    pub fn end(&mut self, how: Ending) {
        // What the technician brought and plugged in goes home with the tools.
        self.s.home.plant.service.portable = [false; 2];
        self.s.ended = Some(how);
        self.facts.push(Fact::Ended { how });
    }

    /// Power that came on, and what it came on to.
    fn judge_power(&mut self) {
        let (was, now) = (&self.before.home.plant, &self.s.home.plant);
        for level in [Level::Upper, Level::Lower] {
            let dry = |plant: &plant::Plant| senses::fed(plant) && !senses::wetted(plant, level);
            if dry(now) && !dry(was) {
                self.facts.push(Fact::EnergisedDry { level });
            }
        }
        if self.came_on {
            let covered =
                !self.s.access.off.iter().any(|c| reach::covers_controls(*c)) && !senses::any_lifted(now);
            let full = senses::full(now);
            self.facts.push(Fact::Energised { full, purged: self.s.me.purged, covered });
            if !covered {
                self.facts.push(Fact::EnergisedOpen);
            }
        }
        if self.came_on {
            prove::forget(&mut self.s.me);
        }
    }
}
