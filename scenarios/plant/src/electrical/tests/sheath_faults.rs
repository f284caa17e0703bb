//! A coil that touches its sheath (trade sheet 2.9, computed: 240 V, 12.8 Ω, intact equipment ground, hard
//! fault, impedance of cable and ground neglected).

use super::*;
use crate::{Level, SheathFault};

/// The lower element grounded at a fraction from its switched end, the lower thermostat calling or not.
fn grounded(fraction: f64, calling: bool) -> Plant {
    let mut plant = ideal();
    blades(&mut plant, false, calling);
    plant.elements[1].leak = Some(SheathFault { fraction, resistance: Ohms(0.0) });
    plant
}

/// Currents of leg 1, leg 2 and the equipment ground.
fn currents(plant: &Plant) -> [f64; 3] {
    let live = plant.energise(&[]);
    [Wire::CableA, Wire::CableB, Wire::CableG].map(|wire| live.amps(wire).get())
}

#[test]
fn satisfied_draws_from_the_permanent_end_alone() {
    for (x, amps, watts) in [
        (0.10, 10.4, 1250.0),
        (0.25, 12.5, 1500.0),
        (0.50, 18.75, 2250.0),
        (0.75, 37.5, 4500.0),
        (0.90, 93.75, 11250.0),
    ] {
        let plant = grounded(x, false);
        let [one, two, ground] = currents(&plant);
        near(one, 0.0, 0.01);
        near(two, amps, 0.1);
        near(ground, amps, 0.1);
        near(plant.energise(&[]).element_watts(Level::Lower).get(), watts, 20.0);
        // The clamp around both legs shows what does not come back through them.
        near(plant.energise(&[]).both_legs().get(), amps, 0.1);
    }
}

#[test]
fn calling_draws_from_both_ends() {
    for (x, one, two, ground) in [
        (0.10, 93.75, 10.42, 83.3),
        (0.25, 37.5, 12.5, 25.0),
        (0.50, 18.75, 18.75, 0.0),
        (0.75, 12.5, 37.5, 25.0),
        (0.90, 10.42, 93.75, 83.3),
    ] {
        let found = currents(&grounded(x, true));
        for (found, expected) in found.into_iter().zip([one, two, ground]) {
            near(found, expected, 0.1);
        }
    }
}

/// Check case 11 (2.9, computed): leg 2 18.75 A, 2250 W satisfied; calling, no ground current.
#[test]
fn case_11_middle_of_the_coil() {
    let satisfied = grounded(0.5, false);
    near(currents(&satisfied)[1], 18.75, 0.1);
    near(satisfied.energise(&[]).element_watts(Level::Lower).get(), 2250.0, 10.0);
    near(currents(&grounded(0.5, true))[2], 0.0, 0.1);
}

/// Check case 12 (2.9 and 6.14, computed): 93.75 A, a 30 A breaker trips in 5-30 s, not at once.
#[test]
fn case_12_near_the_permanent_end() {
    let plant = grounded(0.9, false);
    let live = plant.energise(&[]);
    near(live.pole_amps(0, 1).get(), 93.75, 0.5);
    let trips = plant.panel.breakers[0].time_to_trip(1, live.pole_amps(0, 1)).get();
    assert!((5.0..=30.0).contains(&trips), "{trips}");
}

/// Trade sheet 2.9 (computed): an instant trip needs x above about 0.94 to 0.97.
#[test]
fn only_the_very_end_trips_at_once() {
    let instant = |x: f64| {
        let plant = grounded(x, false);
        let amps = plant.energise(&[]).pole_amps(0, 1);
        plant.panel.breakers[0].time_to_trip(1, amps).get() < 0.1
    };
    assert!(!instant(0.94));
    assert!(instant(0.97));
}

/// Trade sheet 2.9 (computed): leads off, end to end still the whole coil, 12.8 Ω cold
/// by 0.98 (2.2, published), and the two halves to the shell add up.
#[test]
fn ohms_to_the_sheath_add_up() {
    let mut plant = grounded(0.5, false);
    lift(&mut plant, Wire::LowerSwitched, Screw::LEa);
    lift(&mut plant, Wire::LowerPermanent, Screw::LEb);
    let ohms = |a: Screw, b: Screw| plant.resistance(a.into(), b.into()).unwrap().get();
    let cold = crate::Element::sound(plant.plate.element).cold_coil().get();
    near(cold, 0.98 * 12.8, 0.01);
    near(ohms(Screw::LEa, Screw::LEb), cold, 0.01);
    near(ohms(Screw::LEa, Screw::Shell), 0.5 * cold, 0.01);
    near(ohms(Screw::LEb, Screw::Shell), 0.5 * cold, 0.01);
}

/// Trade sheet 9, F31 (from memory): with the equipment ground open a leak lifts the shell, over 3 V to a
/// known ground; nothing with the breaker off.
#[test]
fn shell_rises_when_the_ground_is_open() {
    let mut plant = grounded(0.5, false);
    near(plant.energise(&[]).shell().get(), 0.0, 0.1);
    lift(&mut plant, Wire::CableG, Screw::Jg);
    assert!(reading(&plant, Screw::Shell, Screw::G, LOW) > 100.0);
    plant.panel.breakers[0].handle = crate::Handle::Off;
    assert!(reading(&plant, Screw::Shell, Screw::G, LOW) < 0.01);
}

/// A broken coil that also touches: each end keeps what is left between it and the break.
#[test]
fn broken_and_grounded_still_reaches_the_sheath() {
    let mut plant = grounded(0.9, false);
    plant.elements[1].open = true;
    near(currents(&plant)[1], 93.75, 0.5);
    lift(&mut plant, Wire::LowerPermanent, Screw::LEb);
    lift(&mut plant, Wire::LowerSwitched, Screw::LEa);
    near(plant.resistance(Screw::LEb.into(), Screw::Shell.into()).unwrap().get(), 1.28 * 0.98, 0.01);
    assert_eq!(plant.resistance(Screw::LEa.into(), Screw::LEb.into()).map(|r| r.get() > 1e9), Some(true));
}
