//! What the water does next, and for how long that may be taken as steady.

use solver::tank::Filling;

use super::ways::{AJAR, EMPTY, Flows, NO_AIR, Ways};

/// Longest step of all, s.
const LONGEST: f64 = 3600.0;
/// Shortest step, s: below it nothing is worth locating.
pub(super) const SHORTEST: f64 = 0.05;
/// Longest step while the relief valve drips, s.
const DRIPPING: f64 = 60.0;

/// Shortest step while a shut system nears the relief valve's setting, s.
const CREEPING: f64 = 5.0;

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
    /// cold side is not at the main's temperature, so that its content has to be followed.
    pub fn plan(&self, most: f64, growth: f64, now: f64, relief: Relief, warm: bool) -> Plan {
        let mut time = most.min(LONGEST);
        if relief.open {
            time = time.min(DRIPPING);
        } else if relief.growth > 0.0 && !self.gives_way() {
            // Warmer water grows faster than it does now: half the way at the fastest.
            let half = self.content(0.5 * (now + relief.opens_at)) - self.content(now);
            time = time.min((half / relief.growth).max(CREEPING));
        }
        let pressure = self.pressure_after(time, growth);
        let breathing = self.has_void() || self.floor().is_some_and(|floor| pressure <= floor);
        if breathing {
            return self.plan_with_void(time, growth);
        }
        // Up to the relief valve's setting in halves, so that it opens where it should.
        let mut pressure = pressure;
        let room = relief.opens_at - now;
        if !relief.open && pressure > now + 0.5 * room && room > 0.0 {
            let reach = if room < 2.0 * NEAR { room } else { 0.5 * room };
            time = (time * reach / (pressure - now)).clamp(SHORTEST, time);
            pressure = self.pressure_after(time, growth);
        }
        let mut flows = self.flows(pressure, self.level);
        let through = flows.top() + flows.bottom();
        if warm && through > 1e-7 && through * time > 0.5 * self.cold {
            time = (0.5 * self.cold / through).max(SHORTEST);
            pressure = self.pressure_after(time, growth);
            flows = self.flows(pressure, self.level);
        }
        Plan { time, pressure, flows, filling: Filling::KeepFull, closes: false }
    }

    fn plan_with_void(&self, most: f64, growth: f64) -> Plan {
        let mut time = most;
        for _ in 0..40 {
            let pressure = self.pressure_after(time, growth);
            let mut flows = self.flows(pressure, self.level);
            // A fiftieth of the tank at a time, a tenth of what is left near the bottom.
            let share = (0.1 * self.water).clamp(2e-4, 0.02 * self.capacity);
            let through = flows.supply + self.released(pressure) / time - flows.top() - flows.bottom();
            if through.abs() * time > share && time > SHORTEST {
                let shorter = (share / through.abs()).max(SHORTEST);
                if shorter < 0.98 * time {
                    time = shorter;
                    continue;
                }
            }
            // The head of a falling surface: at the middle of the step.
            let fall = -0.5 * through * time / self.area();
            if self.vented && fall > 0.0 && self.level > EMPTY {
                flows = self.flows(pressure, (self.level - fall).max(1.01 * EMPTY));
            }
            let fill = worth(flows.supply + self.released(pressure) / time, time);
            let net = fill - flows.top() - flows.bottom();
            let void = self.void();
            let closing = self.vented && net > 0.0 && void > 0.0 && net * time >= void;
            if closing {
                let until = void / net;
                if until >= time * 0.999 || until < SHORTEST || time - until < SHORTEST {
                    let filling = Filling::Flow(void / time + flows.top() + flows.bottom());
                    return Plan { time, pressure, flows, filling, closes: true };
                }
                time = until;
                continue;
            }
            return Plan { time, pressure, flows, filling: Filling::Flow(fill), closes: false };
        }
        let pressure = self.pressure_after(SHORTEST, growth);
        let flows = self.flows(pressure, self.level);
        let fill = worth(flows.supply + self.released(pressure) / SHORTEST, SHORTEST);
        Plan { time: SHORTEST, pressure, flows, filling: Filling::Flow(fill), closes: false }
    }
}

/// The flow, unless it comes to less than a cubic millimetre in this time.
fn worth(flow: f64, time: f64) -> f64 {
    if (flow * time).abs() < 1e-9 { 0.0 } else { flow }
}

/// Pressure this near the setting of the relief valve counts as there, Pa.
pub(super) const NEAR: f64 = 2_000.0;

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
    opening.is_finite() && opening > AJAR
}

/// Whether this is air worth speaking of.
pub(super) fn is_air(joules: f64) -> bool {
    joules > NO_AIR
}
