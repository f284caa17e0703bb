//! From simulated time and temperature to the drawing.

use quantity::{Seconds, Temperature};

/// Tones of the water, coldest first; each is a class of the style sheet.
pub const TONES: usize = 16;

/// The tone of a temperature: from 10 °C, the coldest supply but winter's, to 70 °C, where the limit waits.
pub fn tone(of: Temperature) -> usize {
    let share = (of.to_celsius() - 10.0) / 60.0;
    ((share * TONES as f64).floor().max(0.0) as usize).min(TONES - 1)
}

/// The time axis of a drawing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Axis {
    /// Left edge.
    pub left: f64,
    /// Right edge.
    pub right: f64,
    /// Length of the job.
    pub length: Seconds,
    /// Time of day at the start.
    pub starts_at: Seconds,
}

impl Axis {
    /// Where a time into the job lies.
    pub fn x(&self, at: Seconds) -> f64 {
        let share = at.get() / self.length.get().max(1.0);
        self.left + share.clamp(0.0, 1.0) * (self.right - self.left)
    }

    /// Width of the drawing.
    pub fn width(&self) -> f64 {
        self.right - self.left
    }

    /// Round times of day with their places, far enough apart to read.
    pub fn ticks(&self) -> Vec<(f64, Seconds)> {
        const STEPS: [f64; 9] = [5.0, 10.0, 20.0, 30.0, 60.0, 120.0, 240.0, 720.0, 1440.0];
        const APART: f64 = 62.0;
        let minutes = self.length.to_minutes().max(1.0);
        let fits = |step: &&f64| **step / minutes * self.width() >= APART;
        let step = Seconds::minutes(STEPS.iter().find(fits).copied().unwrap_or(1440.0)).get();
        let first = (self.starts_at.get() / step).ceil() as u64;
        (first..)
            .map(|at| Seconds(at as f64 * step))
            .take_while(|time| time.get() <= self.starts_at.get() + self.length.get())
            .map(|time| (self.x(time - self.starts_at), time))
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ticks_are_round_and_far_enough_apart() {
        for (hours, width) in [(0.2, 300.0), (3.4, 900.0), (3.4, 300.0), (30.0, 300.0)] {
            let length = Seconds::hours(hours);
            let axis = Axis { left: 0.0, right: width, length, starts_at: Seconds::hours(8.6) };
            let ticks = axis.ticks();
            assert!(ticks.windows(2).all(|pair| pair[1].0 - pair[0].0 >= 61.9), "{ticks:?}");
            assert!(ticks.iter().all(|(x, _)| (0.0..=width).contains(x)));
        }
    }

    #[test]
    fn tones_go_from_cold_to_hot_and_stay_in_the_sheet() {
        let all: Vec<usize> = [-5.0, 10.0, 40.0, 69.9, 99.0].map(|c| tone(Temperature::celsius(c))).into();
        assert_eq!(all, [0, 0, 8, 15, 15]);
    }
}
