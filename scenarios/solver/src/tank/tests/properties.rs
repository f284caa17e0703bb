//! Draining, filling, buoyancy, wrong inputs.

use super::super::*;
/// 45 gal, 1.22 m high.
fn tank() -> Tank {
    Tank::of_volume(45.0 * 3.785_411_784e-3, 1.22).unwrap()
}

#[test]
fn drains_and_fills_to_the_gram() {
    let tank = tank();
    let mut state = tank.layered(&[15.0, 20.0, 40.0, 50.0]);
    let start = state.mass();
    let mut inputs = Inputs::idle(0.18, 20.0, 1.4);
    inputs.filling = Filling::Flow(0.0);
    inputs.drain = 2e-4;
    let out = tank.advance(&mut state, &inputs, 2000.0, &[]).unwrap();
    assert!(state.mass() < 1e-9 && out.missing > 0.2, "{} {}", state.mass(), out.missing);
    assert!((out.drained - start).abs() < 1e-9);
    assert!(!state.wetted(0.1) && state.temperature_at(0.1).is_none() && state.mean().is_none());
    inputs.drain = 0.0;
    inputs.filling = Filling::Flow(3e-4);
    let fill = tank.advance(&mut state, &inputs, 400.0, &[]).unwrap();
    assert!((state.mass() - fill.filled).abs() < 1e-9);
    assert!((state.level() - 0.12 / tank.area()).abs() < 1e-4);
    assert!(state.wetted(0.5) && !state.wetted(1.0));
    assert!((state.temperature_at(0.5).unwrap() - 20.0).abs() < 0.01);
}

#[test]
fn a_dry_source_heats_nothing() {
    let tank = tank();
    let mut state = tank.filled_to(0.6, 20.0);
    let mut inputs = Inputs::idle(0.18, 20.0, 0.0);
    inputs.filling = Filling::Flow(0.0);
    inputs.sources = vec![Source { centre: 0.94, spread: 0.03, watts: 4500.0 }];
    let report = tank.advance(&mut state, &inputs, 60.0, &[]).unwrap();
    assert_eq!(report.heated, 0.0);
    assert!((report.dry - 270_000.0).abs() < 1e-6);
    assert_eq!(state.wetted_share(0.94, 0.03), 0.0);
    let half = state.wetted_share(0.6, 0.1);
    assert!((half - 0.5).abs() < 0.02, "{half}");
}

#[test]
fn warm_below_cold_turns_over_and_keeps_its_heat() {
    let tank = tank();
    let mut state = tank.layered(&[50.0, 40.0, 20.0, 60.0]);
    let (mass, energy) = (state.mass(), state.energy());
    let mut inputs = Inputs::idle(0.18, 20.0, 0.0);
    inputs.filling = Filling::Flow(0.0);
    inputs.conductivity = 0.0;
    tank.advance(&mut state, &inputs, 10.0, &[]).unwrap();
    assert!((state.energy() - energy).abs() < 1e-6 * energy.abs());
    assert!((state.mass() - mass).abs() < 1e-9);
    assert!(state.slugs().windows(2).all(|p| p[0].enthalpy() <= p[1].enthalpy() + 1e-6));
    assert!((state.temperature_at(0.4).unwrap() - 36.6).abs() < 0.3);
    assert!((state.temperature_at(1.15).unwrap() - 60.0).abs() < 0.01);
}

/// A sharp front goes through a whole tank and comes out sharp when nothing physical smears it.
#[test]
fn a_front_stays_sharp() {
    let tank = tank();
    let mut state = tank.full_at(50.0);
    let mut inputs = Inputs::idle(0.18, 20.0, 0.0);
    inputs.conductivity = 0.0;
    inputs.mixing.strength = 0.0;
    inputs.inlet_height = 0.0;
    inputs.inlet_celsius = 10.0;
    inputs.draw = 1e-4;
    let volume = tank.volume();
    let before = tank.advance(&mut state, &inputs, 0.97 * volume / 1e-4, &[]).unwrap();
    assert!((before.outlet().unwrap() - 50.0).abs() < 1e-3, "{:?}", before.outlet());
    tank.advance(&mut state, &inputs, 0.06 * volume / 1e-4, &[]).unwrap();
    let after = tank.advance(&mut state, &inputs, 60.0, &[]).unwrap();
    assert!((after.outlet().unwrap() - 10.0).abs() < 1e-3, "{:?}", after.outlet());
}

#[test]
fn a_crossing_is_hit_and_a_second_call_goes_on() {
    let tank = tank();
    let mut state = tank.full_at(20.0);
    state.probes.push(Probe { height: 1.0, lag: 90.0, coupling: 1.0, celsius: 20.0 });
    let mut inputs = Inputs::idle(0.18, 20.0, 0.0);
    inputs.sources = vec![Source { centre: 0.94, spread: 0.03, watts: 4500.0 }];
    let watch = [Cross { probe: 0, rising: Some(40.0), falling: None }];
    let report = tank.advance(&mut state, &inputs, 1e5, &watch).unwrap();
    assert_eq!(report.stop, Stop::Crossed { probe: 0, rising: true });
    let over = state.probes[0].celsius - 40.0;
    assert!((0.0..0.02).contains(&over), "{over}");
    let on = tank.advance(&mut state, &inputs, 60.0, &watch).unwrap();
    assert_eq!((on.stop, on.elapsed), (Stop::Duration, 60.0));
}

#[test]
fn lag_is_exact_for_any_step() {
    let one = lag(20.0, 50.0, 50.0, 90.0, 300.0);
    let many = (0..300).fold(20.0, |v, _| lag(v, 50.0, 50.0, 90.0, 1.0));
    assert!((one - many).abs() < 1e-10);
    let ramp = lag(20.0, 20.0, 50.0, 90.0, 300.0);
    let steps =
        (0..300).fold(20.0, |v, i| lag(v, 20.0 + 0.1 * f64::from(i), 20.1 + 0.1 * f64::from(i), 90.0, 1.0));
    assert!((ramp - steps).abs() < 1e-10);
    assert_eq!(lag(1.0, 2.0, 3.0, 0.0, 1.0), 3.0);
}

#[test]
fn wrong_inputs_are_refused_and_change_nothing() {
    let tank = tank();
    let mut state = tank.full_at(20.0);
    let kept = state.clone();
    let bad = [f64::NAN, f64::INFINITY, -1.0];
    for value in bad {
        let inputs = Inputs { draw: value, ..Inputs::idle(0.18, 20.0, 1.0) };
        assert!(tank.advance(&mut state, &inputs, 1.0, &[]).is_err());
        assert!(tank.advance(&mut state, &Inputs::idle(0.18, 20.0, 1.0), value, &[]).is_err());
        assert!(Tank::new(value, 1.0).is_err());
    }
    let watch = [Cross { probe: 3, rising: None, falling: None }];
    assert_eq!(tank.advance(&mut state, &Inputs::idle(0.18, 20.0, 1.0), 1.0, &watch), Err(Error::NoProbe(3)));
    assert_eq!(state, kept);
}
