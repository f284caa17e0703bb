//! The people of the house while they are let: who goes to which tap, when, and what comes of it.

use plant::household::{Drawn, Pour, Wish, meant};
use quantity::{Constant, Seconds, Tag};

use super::turn::Turn;
use super::{scald, senses};
use crate::shown::Fact;
use crate::sight::{Sight, Went};

quantity::constants! {
    /// What is due within this is due now.
    const AT_ONCE: Constant<Seconds> = Constant::of("a draw due within this begins", Seconds(0.001), Tag::Model("clocks are sums, and round"));
}

/// People who go about their day while somebody waits.
pub(super) struct People {
    /// What is still meant, the next one last; times count from the midnight before the visit.
    wishes: Vec<Wish>,
    /// Where from the job's clock counts.
    starts_at: Seconds,
    pour: Option<Pour>,
    /// Nothing came.
    dry: bool,
    /// It spat air.
    spat: bool,
    seen: Vec<Sight>,
}

impl People {
    /// What they mean to use from now on.
    pub fn from_now(turn: &Turn, time: Seconds) -> Self {
        let job = &turn.s.job;
        let from = job.starts_at + turn.s.clock;
        // As the house was found: what they mean to do does not hang on what is done to the heater.
        let mut wishes = meant(&job.home, job.weekday, job.kit.seed, from, from + time);
        wishes.reverse();
        Self { wishes, starts_at: job.starts_at, pour: None, dry: false, spat: false, seen: Vec::new() }
    }

    /// Opens and shuts taps as it is time to, and says how long nothing changes, `most` at most.
    pub fn go(&mut self, turn: &mut Turn, most: Seconds) -> Seconds {
        let soonest = |a: Seconds, b: Seconds| if b < a { b } else { a };
        loop {
            let home = &mut turn.s.home;
            if let Some(pour) = &self.pour {
                match pour.open(home).filter(|_| !self.dry) {
                    Some(step) => {
                        let spits = senses::spits(&home.plant, pour.tap());
                        self.dry = home.plant.tap_flow(pour.tap()).get() <= 0.0 && !spits;
                        self.spat |= spits;
                        if !self.dry {
                            return soonest(step, most);
                        }
                    }
                    None => self.done(turn),
                }
                continue;
            }
            let now = self.starts_at + turn.s.clock;
            match self.wishes.last() {
                Some(wish) if wish.at <= now + AT_ONCE.get() => {
                    self.pour = self.wishes.pop().map(|wish| Pour::begin(home, wish, now));
                    (self.dry, self.spat) = (false, false);
                }
                Some(wish) => return soonest(wish.at - now, most),
                None => return most,
            }
        }
    }

    /// What they felt in the time that has passed.
    pub fn feel(&mut self, turn: &Turn, step: Seconds) {
        if let Some(pour) = &mut self.pour {
            pour.feel(&turn.s.home, step);
        }
    }

    /// The tap is shut, and they say how it was.
    pub fn done(&mut self, turn: &mut Turn) {
        let Some(pour) = self.pour.take() else { return };
        let drawn = pour.shut(&mut turn.s.home);
        let at = Seconds(drawn.at.get() % Seconds::days(1.0).get());
        let met = turn.facts.iter().any(|fact| matches!(fact, Fact::HotDischarge { .. }));
        if drawn.burnt() && !self.dry && !met && !turn.s.me.household_told {
            scald::met(turn, drawn.hottest);
        }
        self.seen.push(Sight::Used { at, tap: drawn.tap, ran: drawn.ran, went: self.went(&drawn) });
    }

    fn went(&self, drawn: &Drawn) -> Went {
        match drawn {
            _ if self.dry => Went::Dry,
            _ if self.spat => Went::Spat,
            drawn if !drawn.felt => Went::Unfelt,
            drawn if drawn.never_warm() => Went::NeverWarm,
            drawn if drawn.burnt() => Went::TooHot,
            drawn if drawn.lukewarm() => Went::Lukewarm,
            Drawn { until_cold: Some(after), .. } => Went::RanCold { after: *after },
            _ => Went::Well,
        }
    }

    /// What they told of each draw.
    pub fn told(&self) -> &[Sight] {
        &self.seen
    }
}
