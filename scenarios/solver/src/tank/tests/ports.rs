//! Ways in and out at heights of their own: loops, returns, a tank connected the wrong way round.

use super::super::*;

fn tank() -> Tank {
    Tank::of_volume(0.170, 1.22).unwrap()
}

/// A loop that takes from the top and returns the same volume cooler at the bottom keeps both books.
#[test]
fn a_loop_keeps_its_books() {
    for flow in [2e-6, 8e-5] {
        let tank = tank();
        let mut state = tank.full_at(50.0);
        let mut inputs = Inputs::idle(0.18, 20.0, 1.4);
        inputs.ports = vec![
            Port { height: 1.22, flow: -flow, celsius: 0.0 },
            Port { height: 0.18, flow, celsius: 35.0 },
        ];
        let (mass, energy) = (state.mass(), state.energy());
        let report = tank.advance(&mut state, &inputs, 1200.0, &[]).unwrap();
        assert!((state.mass() - mass - report.mass_gained()).abs() < 1e-9);
        assert!((state.energy() - energy - report.gained()).abs() < 1e-6 * energy);
        let [out, back, ..] = report.ports;
        assert!((out.celsius().unwrap() - 50.0).abs() < 0.5, "{out:?}");
        assert!((back.celsius().unwrap() - 35.0).abs() < 1e-3);
        assert!((out.mass + back.mass).abs() < 0.01 * back.mass);
        // The returned water lies below what it is cooler than.
        let (low, high) = (state.temperature_at(0.1).unwrap(), state.temperature_at(1.1).unwrap());
        assert!(high > 49.0 && low < 0.5 * (high + 49.5), "{low} {high}");
    }
}

/// Nipples the wrong way round: cold sinks through the hot and what leaves comes from the bottom.
#[test]
fn the_wrong_way_round_it_soon_runs_lukewarm() {
    let draw = 1.26e-4;
    let mut found = Vec::new();
    for wrong in [false, true] {
        let tank = tank();
        let mut state = tank.full_at(50.0);
        let mut inputs = Inputs { draw, inlet_celsius: 10.0, ..Inputs::idle(0.18, 20.0, 0.0) };
        if wrong {
            inputs.outlet_height = Some(inputs.inlet_height);
            inputs.inlet_height = tank.height();
        }
        let (mass, energy) = (state.mass(), state.energy());
        let half = tank.advance(&mut state, &inputs, 0.4 * tank.volume() / draw, &[]).unwrap();
        assert!((state.mass() - mass - half.mass_gained()).abs() < 1e-6);
        assert!((state.energy() - energy - half.gained()).abs() < 1e-9 * energy);
        found.push(tank.advance(&mut state, &inputs, 10.0, &[]).unwrap().outlet().unwrap());
    }
    assert!(found[0] > 49.5, "{found:?}");
    // Stirred all through: 10 + 40·exp(−0.4).
    assert!((found[1] - 36.8).abs() < 1.0, "{found:?}");
}

#[test]
fn too_many_ports_are_refused() {
    let tank = tank();
    let mut state = tank.full_at(50.0);
    let port = Port { height: 0.1, flow: 1e-6, celsius: 20.0 };
    let inputs = Inputs { ports: vec![port; PORTS + 1], ..Inputs::idle(0.18, 20.0, 1.0) };
    assert!(tank.advance(&mut state, &inputs, 1.0, &[]).is_err());
}
