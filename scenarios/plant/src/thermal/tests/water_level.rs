//! Draining, filling, air, dry fire.

use super::*;
use crate::HeaterModel::{Plain40, Tall50At208};

fn ready_to_drain(heater: HeaterModel) -> Plant {
    let mut plant = sound(heater);
    plant.panel.breakers.iter_mut().for_each(|b| b.handle = crate::Handle::Off);
    plant.plumbing.cold_valve = 0.0;
    plant.plumbing.drain_valve = 1.0;
    plant
}

fn minutes_to(plant: &mut Plant, what: &Happening, most: f64) -> Option<f64> {
    let start = plant.clock;
    while (plant.clock - start).to_minutes() < most {
        let before = (plant.clock - start).to_minutes();
        let happened = plant.advance(Seconds(30.0));
        if let Some((at, _)) = happened.iter().find(|(_, h)| h == what) {
            return Some(before + at.to_minutes());
        }
    }
    None
}

/// Check case 25 (trade sheet 5.8, computed): half-inch valve, 1.22 m: 5.9 gpm at first, 45 gal in 15.3 min.
#[test]
fn drains_with_air_in_a_quarter_hour() {
    let mut plant = ready_to_drain(Tall50At208);
    open(&mut plant, Tap::Bath, 1.0);
    plant.advance(Seconds(10.0));
    let gpm = plant.drain_flow().to_gpm();
    assert!((gpm - 5.9).abs() < 0.1, "{gpm}");
    let minutes = minutes_to(&mut plant, &Happening::TankEmpty, 60.0).expect("it empties") + 1.0 / 6.0;
    // The last 3 mm stay below the lip: 5 % of the time is theirs.
    assert!((14.2..15.6).contains(&minutes), "{minutes}");
    assert!(plant.fill() < 0.01);
    let litres = plant.plumbing.on_floor.to_litres();
    assert!((litres - 170.0).abs() < 4.0, "{litres}");
    assert!(!plant.wetted(Level::Lower));
}

/// Nothing is news twice: what lies below the lip grows as it warms, and drips over it.
#[test]
fn runs_out_once() {
    let mut plant = ready_to_drain(Tall50At208);
    open(&mut plant, Tap::Kitchen, 1.0);
    minutes_to(&mut plant, &Happening::TankEmpty, 60.0).expect("it empties");
    for minute in 0..60 {
        let again = plant.advance(Seconds(60.0));
        assert!(!again.iter().any(|(_, h)| *h == Happening::TankEmpty), "{minute} min: {again:?}");
    }
}

/// Trade sheet 5.9 (computed): without air the flow stops at a vacuum of ρgh.
#[test]
fn stalls_without_air() {
    let mut plant = ready_to_drain(Tall50At208);
    plant.plumbing.hose = true;
    let happened = plant.advance(Seconds(30.0));
    assert!(happened.iter().any(|(_, h)| *h == Happening::DrainHeldByVacuum), "{happened:?}");
    assert!(plant.fill() > 0.98);
    let kpa = plant.plumbing.pressure.get() / 1000.0;
    assert!((-12.5..-11.0).contains(&kpa), "{kpa}");
    assert!(plant.drain_flow().to_gpm() < 0.01);
    assert_eq!(plant.plumbing.on_floor.get(), 0.0);
    // The lever lets air in.
    plant.plumbing.relief.lever = true;
    assert!(plant.drain_flow().to_gpm() > 2.0);
    plant.advance(Seconds::minutes(5.0));
    assert!(plant.fill() < 0.75, "{}", plant.fill());
}

fn drained(heater: HeaterModel) -> Plant {
    let mut plant = ready_to_drain(heater);
    plant.plumbing.hose = true;
    open(&mut plant, Tap::Bath, 1.0);
    plant.advance(Seconds::hours(1.5));
    assert!(plant.fill() < 0.01);
    plant.plumbing.drain_valve = 0.0;
    open(&mut plant, Tap::Bath, 0.0);
    plant
}

/// Trade sheet 5.10 (computed): 45 gal at 5 gpm takes 9 min; the tap spits, then runs solid.
#[test]
fn fills_through_an_open_tap() {
    let mut plant = drained(Tall50At208);
    open(&mut plant, Tap::Kitchen, 1.0);
    plant.plumbing.cold_valve = 0.55;
    assert!(plant.tap_spits(Tap::Kitchen));
    assert_eq!(plant.tap_flow(Tap::Kitchen).get(), 0.0);
    let minutes = minutes_to(&mut plant, &Happening::TankFull, 60.0).expect("it fills");
    assert!((7.0..12.0).contains(&minutes), "{minutes}");
    assert!(plant.fill() > 0.999 && plant.wetted(Level::Upper));
    assert!(plant.tap_spits(Tap::Kitchen) && plant.tap_flow(Tap::Kitchen).get() > 0.0);
    plant.advance(Seconds::minutes(3.0));
    assert!(!plant.tap_spits(Tap::Kitchen));
    assert!(!plant.tap_spits(Tap::Shower));
}

/// Filled with every tap shut the air stays (5.10): at 50 psi a fifth to a quarter of the tank, and the
/// upper element stands in it.
#[test]
fn filled_with_taps_shut_keeps_its_air() {
    let mut plant = drained(Plain40);
    plant.plumbing.cold_valve = 1.0;
    plant.advance(Seconds::minutes(20.0));
    let boyle = 1.0 - 14.696 / 64.696;
    assert!((plant.fill() - boyle).abs() < 0.01, "{}", plant.fill());
    assert!((plant.plumbing.pressure.to_psi() - 50.0).abs() < 0.5);
    assert!(plant.wetted(Level::Lower) && !plant.wetted(Level::Upper));
    // Energised so, the upper element burns out: calling, because cold.
    plant.panel.breakers.iter_mut().for_each(|b| b.handle = crate::Handle::On);
    let happened = plant.advance(Seconds::minutes(2.0));
    let upper = Level::Upper;
    assert!(
        happened
            .iter()
            .any(|(_, h)| matches!(h, Happening::ElementBurntOut { level, .. } if *level == upper)),
        "{happened:?}"
    );
}

/// Check case 25 and trade sheet 2.7 (published): energised empty, the upper element fails in 30 to 45 s.
#[test]
fn dry_fire() {
    let mut plant = drained(Plain40);
    plant.advance(Seconds::hours(1.0));
    plant.panel.breakers.iter_mut().for_each(|b| b.handle = crate::Handle::On);
    let happened = plant.advance(Seconds::minutes(2.0));
    let burnt: Vec<_> = happened
        .iter()
        .filter_map(|(at, h)| match h {
            Happening::ElementBurntOut { level, after } => Some((at.get(), *level, after.get())),
            _ => None,
        })
        .collect();
    assert_eq!(burnt.len(), 1, "{happened:?}");
    assert_eq!(burnt[0].1, Level::Upper);
    assert!((30.0..45.0).contains(&burnt[0].2), "{burnt:?}");
    assert!(plant.elements[0].open && plant.elements[0].scorched && !plant.elements[1].open);
}

/// A new vessel in place of the old: empty, and its water booked out.
#[test]
fn new_vessel_is_empty() {
    let mut plant = sound(Plain40);
    let mass = held(&plant);
    plant.plumbing.cold_valve = 0.0;
    plant.empty_vessel();
    plant.advance(Seconds(10.0));
    assert!(plant.fill() < 0.05, "{}", plant.fill());
    let off = held(&plant) - mass - plant.plumbing.ledger.net_mass().get();
    assert!(off.abs() < 1e-3, "{off}");
}
