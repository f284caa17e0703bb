//! Thermostat with too wide a differential.
//! Trade sheet, section 9, F72: common practice, no source; cut-in 45 °F below the dial as drawn.

use bench::{Action, Probe, Shown};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 2] = [("level", 1.0), ("differential", 45.0)];

/// It opens at its dial, stands open at 90 °F, and closes when the water is cold.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F72, &LOWER));
    work.opens_up();
    work.act(Action::WaitForCutOut);
    let open = cools_until(&mut work, 92.0);
    let across = work.volts(D1, D2, 240.0);
    let idle = work.amps(Wire::FeedA, 0.0);
    cools_until(&mut work, 70.0);
    work.until(Wire::LowerSwitched, 18.75);
    let closes = work.volts(D1, D2, 0.0);
    work.make_dead(&[D1, D2]);
    work.finds(&[open, across, idle, closes]);
    work.fits(PartKind::LowerThermostat);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

/// Draws until the shell beside the lower thermostat is this cold, in °F; the step of that reading.
fn cools_until(work: &mut Work, fahrenheit: f64) -> u32 {
    for _ in 0..40 {
        let shell = work.act(Action::Thermometer { at: Probe::Shell { level: Level::Lower } }).shown;
        let Shown::Temperature { reading } = shell else { panic!("{shell:?}") };
        if reading.to_fahrenheit() < fahrenheit {
            return work.step();
        }
        work.draw(2.0);
        work.act(Action::Wait { minutes: 2.0 });
    }
    panic!("never below {fahrenheit} °F");
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn the_lower_element_does_not() {
    assert_in_vain(&order(FaultId::F72, &LOWER));
}
