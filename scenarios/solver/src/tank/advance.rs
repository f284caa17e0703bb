//! Running on until the time is over or a watched probe passes its threshold.

use super::step::Work;
use super::{Cross, Error, Inputs, Report, State, Stop, Tank, check};

/// How far past a crossing the next attempt aims, as a share of the resolution: a heater that runs on late heats for
/// nothing.
const AIM: f64 = 0.1;

impl Tank {
    /// Advances a state of this tank by up to `duration` seconds under constant inputs.
    ///
    /// Stops at the first crossing of `watch`, located within [`Tank::resolution`] seconds. A probe that
    /// starts past its threshold crosses nothing: the caller compares before it calls. On an error nothing
    /// has changed.
    pub fn advance(
        &self,
        state: &mut State,
        inputs: &Inputs,
        duration: f64,
        watch: &[Cross],
    ) -> Result<Report, Error> {
        check("duration", duration, 0.0)?;
        inputs.check()?;
        for cross in watch {
            cross.check(state)?;
        }
        let mut work = Work::of(self.layers);
        let mut report = Report::default();
        let mut kept = state.clone();
        let mut hint = f64::INFINITY;
        while report.elapsed < duration {
            let left = duration - report.elapsed;
            let long = self.step_length(state, inputs).min(hint);
            // Two even steps rather than a long and a tiny one.
            let dt = if left <= long { left } else { long.min(0.5 * left).max(0.5 * long) };
            kept.clone_from(state);
            let before = report;
            self.step(state, inputs, dt, &mut work, &mut report);
            hint = f64::INFINITY;
            if let Some((share, stop)) = first_crossing(watch, &kept, state) {
                let late = dt * (1.0 - share);
                if late <= self.resolution() || dt <= self.resolution() {
                    report.stop = stop;
                    return Ok(report);
                }
                // Again, aimed a little past the crossing.
                state.clone_from(&kept);
                work.waters.clear();
                report = before;
                hint = (dt * share + AIM * self.resolution()).min(dt - 0.5 * AIM * self.resolution());
            }
        }
        Ok(report)
    }
}

/// The earliest crossing between two states, as a share of the step.
fn first_crossing(watch: &[Cross], before: &State, after: &State) -> Option<(f64, Stop)> {
    let mut first: Option<(f64, Stop)> = None;
    for cross in watch {
        let index = cross.probe as usize;
        let (Some(a), Some(b)) = (before.probes.get(index), after.probes.get(index)) else { continue };
        let (a, b) = (a.celsius, b.celsius);
        for (limit, rising) in [(cross.rising, true), (cross.falling, false)] {
            let Some(limit) = limit else { continue };
            let passed = if rising { a < limit && b >= limit } else { a > limit && b <= limit };
            if passed {
                let share = ((limit - a) / (b - a)).clamp(0.0, 1.0);
                if first.is_none_or(|(earliest, _)| share < earliest) {
                    first = Some((share, Stop::Crossed { probe: cross.probe, rising }));
                }
            }
        }
    }
    first
}
