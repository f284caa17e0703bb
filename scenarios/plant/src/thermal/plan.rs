//! What the water does next, and for how long that may be taken as steady.

use quantity::{Constant, Tag};
use solver::tank::Filling;

use super::figures as f;
use super::flows::Flows;
use super::ways::Ways;

const STEP: Tag = Tag::Model("length of a step; checked against steps ten times smaller");

quantity::constants! {
    /// Longest step of all.
    const LONGEST: Constant = Constant::new("longest step", 3600.0, "s", STEP);
    /// Longest step while something flows round or away all the time.
    const FLOWING: Constant = Constant::new("longest step while something flows", 600.0, "s", STEP);
    /// Shortest step: below it nothing is worth locating.
    pub(super) const SHORTEST: Constant = Constant::new("shortest step", 0.05, "s", STEP);
    /// Longest step while the relief valve drips.
    const DRIPPING: Constant = Constant::new("longest step while the relief valve drips", 60.0, "s", STEP);
    /// Shortest step while a shut system nears the relief valve's setting.
    const CREEPING: Constant = Constant::new("shortest step near the relief valve's setting", 5.0, "s", STEP);
    /// Pressure this near the setting of the relief valve counts as there.
    pub(super) const NEAR: Constant =
        Constant::new("pressure near the relief valve's setting", 2_000.0, "Pa", STEP);
    /// Part of the way to the relief valve's setting that one step may go, and of the cold side that it may turn over.
    const HALF: Constant = Constant::new("part of the way that one step may go", 0.5, "", STEP);
    /// Most of the tank, and most of what is left in it, that one step may move while its surface moves.
    const SHARES: Constant<[f64; 3]> =
        Constant::new("most that one step moves: of the tank, of the rest, always (m3)", [0.02, 0.1, 2e-4], "", STEP);
    /// Nearly the same time or the same share.
    const NEARLY: Constant = Constant::new("nearly the same", 0.98, "", STEP);
    /// Most attempts at a step's length.
    const ATTEMPTS: Constant<u32> = Constant::new("attempts at a step's length", 40, "", STEP);
}

/// A stretch of steady flow.
#[derive(Clone, Copy, Debug)]
pub(super) struct Plan {
    /// How long, s.
    pub time: f64,
    /// Pressure at the top of the tank at its end, Pa gauge.
    pub pressure: f64,
    /// The flows.
    pub flows: Flows,
    /// What fills the tank.
    pub filling: Filling,
    /// The void closes at its end.
    pub closes: bool,
}

impl Ways {
    /// Plans up to `most` seconds while heat makes the water grow by `growth` m³/s. `warm` says that the
    /// cold side is far from the main's temperature, so that its content has to be followed.
    pub fn plan(&mut self, most: f64, growth: f64, now: f64, relief: Relief, warm: bool) -> Plan {
        let mut time = most.min(LONGEST.get());
        if self.is_busy() {
            time = time.min(FLOWING.get());
        }
        if relief.open {
            time = time.min(DRIPPING.get());
        } else if relief.growth > 0.0 && !self.gives_way() {
            // Warmer water grows faster than it does now: half the way at the fastest.
            let middle = now + HALF.get() * (relief.opens_at - now);
            let half = self.content(middle) - self.content(now);
            time = time.min((half / relief.growth).max(CREEPING.get()));
        }
        let level = self.level;
        let mut moment = self.solve(time, growth, level);
        let breathing = self.has_void() || self.floor().is_some_and(|floor| moment.pressure <= floor);
        if breathing {
            return self.plan_with_void(time, growth);
        }
        // Up to the relief valve's setting in halves, so that it opens where it should.
        let room = relief.opens_at - now;
        if !relief.open && moment.pressure > now + HALF.get() * room && room > 0.0 {
            let reach = if room < 2.0 * NEAR.get() { room } else { HALF.get() * room };
            time = (time * reach / (moment.pressure - now)).clamp(SHORTEST.get(), time);
            moment = self.solve(time, growth, level);
        }
        let through = moment.flows.out();
        if warm && through > f::SPECK.get() / NEARLY.get() && through * time > HALF.get() * self.cold {
            time = (HALF.get() * self.cold / through).max(SHORTEST.get());
            moment = self.solve(time, growth, level);
        }
        Plan {
            time,
            pressure: moment.pressure,
            flows: moment.flows,
            filling: Filling::KeepFull,
            closes: false,
        }
    }

    fn plan_with_void(&mut self, most: f64, growth: f64) -> Plan {
        let mut time = most;
        let (shortest, level) = (SHORTEST.get(), self.level);
        let [of_all, of_rest, always] = SHARES.get();
        for _ in 0..ATTEMPTS.get() {
            let mut moment = self.solve(time, growth, level);
            let coming = |ways: &Self, moment: &super::flows::Moment| {
                moment.flows.inflow() + ways.released(moment.pressure) / time
            };
            let share = (of_rest * self.water).clamp(always, of_all * self.capacity);
            let through = coming(self, &moment) - moment.flows.out();
            // No further than to the drain's lip.
            let over = self.water - f::EMPTY.get() * self.area();
            let share = if through < 0.0 && over > 0.0 { share.min(over) } else { share };
            if through.abs() * time > share && time > shortest {
                let shorter = (share / through.abs()).max(shortest);
                if shorter < NEARLY.get() * time {
                    time = shorter;
                    continue;
                }
            }
            // The head of a falling surface: at the middle of the step.
            let fall = -HALF.get() * through * time / self.area();
            if self.vented && fall > 0.0 && level > f::EMPTY.get() {
                moment = self.solve(time, growth, (level - fall).max(f::EMPTY.get() / NEARLY.get()));
            }
            let flows = moment.flows;
            let fill = worth(coming(self, &moment), time);
            let net = fill + growth - flows.out();
            let void = self.void();
            let plan = |filling, closes| Plan { time, pressure: moment.pressure, flows, filling, closes };
            if self.vented && net > 0.0 && void > 0.0 && net * time >= void {
                let until = void / net;
                if until >= time / NEARLY.get() || until < shortest || time - until < shortest {
                    return plan(Filling::Flow(void / time + flows.out() - growth), true);
                }
                time = until;
                continue;
            }
            return plan(Filling::Flow(fill), false);
        }
        let moment = self.solve(shortest, growth, level);
        let fill = worth(moment.flows.inflow() + self.released(moment.pressure) / shortest, shortest);
        let filling = Filling::Flow(fill);
        Plan { time: shortest, pressure: moment.pressure, flows: moment.flows, filling, closes: false }
    }
}

/// The flow, unless it comes to less than a cubic millimetre in this time.
fn worth(flow: f64, time: f64) -> f64 {
    if (flow * time).abs() < f::SPECK.get() { 0.0 } else { flow }
}

/// What the plan has to know of the relief valve.
#[derive(Clone, Copy)]
pub(super) struct Relief {
    pub open: bool,
    pub opens_at: f64,
    /// The fastest that heat could make the water grow, m³/s.
    pub growth: f64,
}

/// Whether a valve is open enough to matter.
pub(super) fn ajar(opening: f64) -> bool {
    opening.is_finite() && opening > f::AJAR.get()
}

/// Whether this is air worth speaking of.
pub(super) fn is_air(joules: f64) -> bool {
    joules > f::NO_AIR.get()
}
