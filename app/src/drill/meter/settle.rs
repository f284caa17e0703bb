//! A display finds its reading as a meter's does: a few values on the way, each nearer by the same share.

use bench::{Display, Shown};
use gloo::timers::callback::Timeout;
use quantity::{Amps, Ohms, Volts};
use yew::prelude::*;

/// Values before the reading.
const STEPS: i32 = 3;
/// From one to the next, in milliseconds: a hand-held meter writes its figures some four times a second (common practice,
/// no source).
const PACE_MS: u32 = 250;
/// What is left of the way after each value.
const LEFT: f64 = 0.12;

/// How many values of reading number `of` were shown; all of them where nothing is to move, or the page has just opened.
#[hook]
pub fn use_steps(of: usize) -> i32 {
    let shown = use_state_eq(|| (of, STEPS));
    let (last, steps) = *shown;
    let steps = if last == of || still() { steps } else { 0 };
    let set = shown.setter();
    use_effect_with((of, steps), move |&(of, steps)| {
        let next = (last != of || steps < STEPS)
            .then(|| Timeout::new(PACE_MS, move || set.set((of, (steps + 1).min(STEPS)))));
        move || drop(next)
    });
    steps
}

/// The reader asked for less motion.
fn still() -> bool {
    gloo::utils::window()
        .match_media("(prefers-reduced-motion: reduce)")
        .is_ok_and(|asked| asked.is_some_and(|asked| asked.matches()))
}

/// What stands on the display after so many values. What is no figure stands at once.
pub fn settling(shown: &Shown, steps: i32) -> Shown {
    if steps >= STEPS {
        return shown.clone();
    }
    let share = 1.0 - LEFT.powi(steps + 1);
    match shown {
        Shown::Meter { display: Display::Volts { volts } } => {
            Shown::Meter { display: Display::Volts { volts: Volts(volts.get() * share) } }
        }
        Shown::Meter { display: Display::Amps { amps } } => {
            Shown::Meter { display: Display::Amps { amps: Amps(amps.get() * share) } }
        }
        // Open leads read over; what is between them brings that down.
        Shown::Meter { display: Display::Ohms { .. } | Display::Insulation { .. } } if steps == 0 => {
            Shown::Meter { display: Display::Over }
        }
        Shown::Meter { display: Display::Ohms { ohms } } => {
            Shown::Meter { display: Display::Ohms { ohms: Ohms(ohms.get() / share) } }
        }
        Shown::Meter { display: Display::Insulation { ohms } } => {
            Shown::Meter { display: Display::Insulation { ohms: Ohms(ohms.get() * share) } }
        }
        Shown::Clamp { amps } => Shown::Clamp { amps: Amps(amps.get() * share) },
        other => other.clone(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn volts(steps: i32) -> f64 {
        match settling(&Shown::Meter { display: Display::Volts { volts: Volts(240.0) } }, steps) {
            Shown::Meter { display: Display::Volts { volts } } => volts.get(),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn each_value_is_nearer_and_the_last_is_the_reading() {
        let all: Vec<f64> = (0..=STEPS).map(volts).collect();
        assert!(all.windows(2).all(|pair| pair[0] < pair[1]), "{all:?}");
        assert!(all[0] > 200.0 && all[STEPS as usize].to_bits() == 240.0_f64.to_bits(), "{all:?}");
    }

    #[test]
    fn what_is_no_figure_does_not_move() {
        for display in
            [Display::Over, Display::Blank, Display::Tone { on: true }, Display::Live { volts: Volts(240.0) }]
        {
            let shown = Shown::Meter { display };
            assert_eq!(settling(&shown, 0), shown);
        }
    }

    #[test]
    fn it_is_done_within_a_second() {
        assert!(STEPS as u32 * PACE_MS <= 1000);
    }
}
