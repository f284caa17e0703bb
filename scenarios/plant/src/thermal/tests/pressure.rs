//! Expansion, relief, valves.

use quantity::Pressure;

use super::*;
use crate::HeaterModel::Plain40;

fn heat_after_draw(plant: &mut Plant) -> Vec<(Seconds, Happening)> {
    draw(plant, Tap::Bath, Volume::gallons(25.0));
    plant.plumbing.peak = plant.plumbing.pressure;
    plant.advance(Seconds::hours(3.0))
}

/// Trade sheet 5.6 and F45: a closed system without an expansion tank reaches 150 psi, the relief drips.
#[test]
fn closed_system_drips() {
    let mut plant = sound(Plain40);
    plant.plumbing.closed = true;
    let happened = heat_after_draw(&mut plant);
    let opened: Vec<_> = happened.iter().filter(|(_, h)| *h == Happening::ReliefOpened).collect();
    assert!((1..4).contains(&opened.len()), "{happened:?}");
    // 60 psi to 150 psi within minutes: 16 °F of the whole tank at most (5.6, from memory).
    assert!(opened[0].0.to_minutes() < 30.0, "{:?}", opened[0]);
    let peak = plant.plumbing.peak.to_psi();
    assert!((149.0..153.0).contains(&peak), "{peak}");
    let grams = plant.plumbing.ledger.relief.mass.get() * 1000.0;
    assert!((300.0..2500.0).contains(&grams), "{grams} g");
    assert!(happened.iter().any(|(_, h)| *h == Happening::ReliefClosed));
}

/// From cold, when the growth itself grows most, the valve still opens at its setting: nothing is stepped over.
#[test]
fn relief_opens_at_its_setting_from_cold() {
    for &heater in crate::HeaterModel::ALL {
        let mut plant = cold(heater, Temperature::fahrenheit(40.0));
        plant.plumbing.closed = true;
        let happened = plant.advance(Seconds::hours(5.0));
        assert!(happened.iter().any(|(_, h)| *h == Happening::ReliefOpened), "{heater}");
        let peak = plant.plumbing.peak.to_psi();
        assert!((149.0..152.0).contains(&peak), "{heater}: {peak}");
    }
}

/// However a heating is cut into calls, be each a single step of the tank, a shut system gains the same pressure and
/// no water; and so it cools.
#[test]
fn pressure_changes_alike_however_time_is_cut() {
    let gained = |heater, from: f64, on: bool, call: f64| {
        let mut plant = cold(heater, Temperature::fahrenheit(from));
        plant.plumbing.closed = true;
        if !on {
            plant.panel.breakers.iter_mut().for_each(|breaker| breaker.handle = crate::Handle::Off);
        }
        let (start, water) = (plant.plumbing.pressure.to_psi(), held(&plant));
        let mut left = 120.0;
        while left > 1e-9 {
            plant.advance(Seconds(call));
            left -= call;
        }
        assert!(
            (held(&plant) - water - plant.plumbing.ledger.main.mass.get()).abs() < 1e-6,
            "{heater}: water"
        );
        plant.plumbing.pressure.to_psi() - start
    };
    for &heater in crate::HeaterModel::ALL {
        for (from, on) in [(60.0, true), (100.0, true), (118.0, false)] {
            let whole = gained(heater, from, on, 120.0);
            for call in [60.0, 30.0, 24.0, 20.0, 15.0, 12.0, 10.0, 8.0, 5.0, 2.0, 1.0] {
                let found = gained(heater, from, on, call);
                let apart = (found - whole).abs();
                assert!(
                    apart < 0.002 * whole.abs() + 0.002,
                    "{heater} from {from} °F in calls of {call} s: {found} psi, {whole} in one"
                );
            }
        }
    }
}

/// Trade sheet 5.7 (published method): with a tank sized for it the peak stays below 135 psi.
#[test]
fn expansion_tank_keeps_it_down() {
    let mut plant = sound(Plain40);
    plant.plumbing.closed = true;
    let charge = plant.plumbing.main;
    plant.plumbing.expansion =
        Some(ExpansionTank { volume: Volume::gallons(2.0), charge, waterlogged: false });
    let happened = heat_after_draw(&mut plant);
    assert!(!happened.iter().any(|(_, h)| *h == Happening::ReliefOpened));
    let peak = plant.plumbing.peak.to_psi();
    assert!((52.0..135.0).contains(&peak), "{peak}");
    // Waterlogged it is as good as none.
    plant.plumbing.expansion =
        Some(ExpansionTank { volume: Volume::gallons(2.0), charge, waterlogged: true });
    let happened = heat_after_draw(&mut plant);
    assert!(happened.iter().any(|(_, h)| *h == Happening::ReliefOpened));
}

/// An open system pushes what it does not hold back to the street.
#[test]
fn open_system_stays_at_the_main() {
    let mut plant = sound(Plain40);
    heat_after_draw(&mut plant);
    assert!((plant.plumbing.peak.to_psi() - 50.0).abs() < 1.0, "{}", plant.plumbing.peak.to_psi());
    assert!(plant.plumbing.ledger.back.mass.get() > 0.1);
}

/// Trade sheet 5.1 (published): the relief valve opens at 210 °F of water near the top.
#[test]
fn relief_opens_hot() {
    let mut plant = sound(Plain40);
    plant.thermostats[0].stuck = Some(true);
    plant.limit.trip = Temperature::fahrenheit(300.0);
    let happened = plant.advance(Seconds::hours(6.0));
    assert!(happened.iter().any(|(_, h)| *h == Happening::ReliefOpened), "{happened:?}");
    assert!(plant.outlet() < Temperature::fahrenheit(214.0), "{}", plant.outlet().to_fahrenheit());
    let relieved = plant.plumbing.ledger.relief.mass.get();
    assert!(relieved > 1.0, "{relieved}");
}

#[test]
fn lever_lets_water_out_and_taps_give_their_flow() {
    let mut plant = sound(Plain40);
    assert_eq!(plant.relief_flow().get(), 0.0);
    plant.plumbing.relief.lever = true;
    assert!(plant.relief_flow().to_gpm() > 3.0);
    plant.plumbing.relief.lever = false;
    open(&mut plant, Tap::Kitchen, 1.0);
    let gpm = plant.tap_flow(Tap::Kitchen).to_gpm();
    assert!((1.5..2.2).contains(&gpm), "{gpm}");
    open(&mut plant, Tap::Bath, 1.0);
    assert!(plant.tap_flow(Tap::Kitchen).to_gpm() < gpm);
    plant.plumbing.cold_valve = 0.0;
    plant.advance(Seconds(30.0));
    assert!(plant.tap_flow(Tap::Bath).to_gpm() < 0.01);
    assert!(plant.plumbing.pressure.near(Pressure(0.0), Pressure(70_000.0)));
}

/// A 1 mm leak at 50 psi: Cd·A·√(2p/ρ), as in trade sheet 5.8 (computed).
#[test]
fn gasket_leak_wets_the_floor() {
    let mut plant = sound(Plain40);
    plant.elements[Level::Lower.index()].gasket.leak_diameter = 0.001;
    plant.advance(Seconds::hours(1.0));
    let litres = plant.plumbing.on_floor.to_litres();
    let expected = 0.6 * std::f64::consts::FRAC_PI_4 * 1e-6 * (2.0 * 344_738.0 / 1000.0_f64).sqrt() * 3.6e6;
    assert!((litres / expected - 1.0).abs() < 0.03, "{litres} {expected}");
    let pressure = plant.plumbing.pressure.get() + water::ATMOSPHERE;
    assert!(pressure > 4e5);
}
