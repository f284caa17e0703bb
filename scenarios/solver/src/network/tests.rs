//! Networks with closed-form answers, and properties that hold for all.

use quantity::Draw;

use super::*;

const HERTZ: f64 = 60.0;

fn r(ohms: f64) -> Complex {
    Complex::resistor(ohms)
}

fn c(farads: f64) -> Complex {
    Complex::capacitor(farads, HERTZ)
}

/// The two numbers agree within `relative` of the second.
#[track_caller]
fn close(found: Complex, expected: Complex, relative: f64) {
    let off = (found - expected).norm();
    assert!(off <= relative * expected.norm(), "{found:?} is not {expected:?}, off by {off:e}");
}

fn held(nodes: u32, fixed: &[(u32, Complex)], branches: &[(u32, u32, Complex)]) -> Network {
    let mut network = Network::new(nodes);
    fixed.iter().for_each(|(node, volts)| network.fix(*node, *volts));
    branches.iter().for_each(|(a, b, y)| {
        network.connect(*a, *b, *y);
    });
    network
}

const EARTH: (u32, Complex) = (0, Complex::ZERO);

#[test]
fn divider() {
    let network = held(3, &[EARTH, (1, Complex::real(240.0))], &[(1, 2, r(10.0)), (2, 0, r(30.0))]);
    let solution = solve(&network).unwrap();
    close(solution.volt(2), Complex::real(180.0), 1e-15);
    close(solution.current(&network.branches[0]), Complex::real(6.0), 1e-15);
    close(solution.outflow(&network, 1), Complex::real(6.0), 1e-15);
    close(solution.outflow(&network, 0), Complex::real(-6.0), 1e-15);
    assert!((solution.power(&network.branches[1]) - 1080.0).abs() < 1e-9);
}

#[test]
fn ladder_of_equal_rungs() {
    // A long ladder of series R and shunt R ends in the golden ratio: its input resistance is phi R.
    let rungs = 60;
    let mut network = held(rungs + 2, &[EARTH, (1, Complex::real(1.0))], &[]);
    for node in 2..rungs + 2 {
        network.connect(node - 1, node, r(1.0));
        network.connect(node, 0, r(1.0));
    }
    let solution = solve(&network).unwrap();
    let phi = (1.0 + 5f64.sqrt()) / 2.0;
    close(solution.outflow(&network, 1), r(phi), 1e-15);
    let Ok(TwoTerminal::Admittance(y)) = two_terminal(&network, 2, 0) else { panic!("no path") };
    // From inside, the stiff source is a wire: the first series R stands beside a ladder of phi R
    // without its first series R.
    close(y, Complex::real(1.0 + 1.0 / (phi - 1.0)), 1e-14);
}

#[test]
fn balanced_three_phase_star_sits_at_zero() {
    let legs: Vec<_> = [(1, 0.0), (2, -120.0), (3, 120.0)]
        .map(|(node, angle)| (node, Complex::polar(120.0, angle)))
        .to_vec();
    let load = 12.8;
    let network = held(5, &legs, &[(1, 4, r(load)), (2, 4, r(load)), (3, 4, r(load))]);
    let solution = solve(&network).unwrap();
    assert!(solution.volt(4).norm() < 1e-13);
    assert!((solution.between(1, 2).norm() - 120.0 * 3f64.sqrt()).abs() < 1e-12);
    let heat: f64 = network.branches.iter().map(|b| solution.power(b)).sum();
    assert!((heat - 3.0 * 120.0 * 120.0 / load).abs() < 1e-9);
}

#[test]
fn bridge() {
    // Balanced: nothing flows in the middle. Off balance: the textbook formula of the unloaded bridge.
    let supply = [EARTH, (1, Complex::real(10.0))];
    let bridge = |x: f64, middle: Complex| {
        let sides = [(1, 2, r(100.0)), (1, 3, r(200.0)), (2, 0, r(300.0)), (3, 0, r(x)), (2, 3, middle)];
        solve(&held(4, &supply, &sides)).unwrap()
    };
    assert!(bridge(600.0, r(5.0)).between(2, 3).norm() < 1e-14);
    close(bridge(700.0, Complex::ZERO).between(2, 3), Complex::real(7.5 - 70.0 / 9.0), 1e-13);
}

#[test]
fn node_held_by_stray_capacitance_keeps_its_digits() {
    // A run of 5 mΩ contacts that nothing but picofarads hold: the capacitive divider, whatever the run.
    let (near, far, earth) = (2e-12, 7e-12, 20e-12);
    let mut network = held(
        12,
        &[EARTH, (1, Complex::real(120.0)), (2, Complex::real(-120.0))],
        &[(1, 3, c(near)), (11, 2, c(far)), (7, 0, c(earth))],
    );
    for node in 3..11 {
        network.connect(node, node + 1, r(5e-3));
    }
    let solution = solve(&network).unwrap();
    let expected = Complex::real(120.0 * (near - far) / (near + far + earth));
    for node in 3..12 {
        // The stray currents of some 1e-7 A drop a few nanovolts a quarter turn away in the run.
        assert!((solution.volt(node).re - expected.re).abs() < 1e-13);
        assert!(solution.volt(node).im.abs() < 1e-8);
    }
    assert!(solution.floating.iter().all(|floating| !floating));
}

#[test]
fn leak_through_open_contacts_divides_like_resistors() {
    let open = Complex::real(1e-12);
    let network = held(
        5,
        &[EARTH, (1, Complex::real(120.0))],
        &[(1, 2, open), (2, 3, r(5e-3)), (3, 4, r(5e-3)), (4, 0, Complex::real(3e-12))],
    );
    close(solve(&network).unwrap().volt(3), Complex::real(30.0), 1e-14);
}

#[test]
fn nothing_holds_a_loose_part() {
    let network = held(
        6,
        &[EARTH, (1, Complex::real(120.0))],
        &[(1, 2, r(1.0)), (3, 4, r(1.0)), (2, 3, Complex::ZERO), (5, 5, r(1.0))],
    );
    let solution = solve(&network).unwrap();
    assert_eq!(solution.floating, [false, false, false, true, true, true]);
    close(solution.volt(2), Complex::real(120.0), 1e-15);
    assert!((3..6).all(|node| solution.volt(node) == Complex::ZERO));
    let empty = solve(&Network::new(2)).unwrap();
    assert_eq!(empty.floating, [true, true]);
    assert_eq!(solve(&Network::default()).unwrap(), Solution::default());
}

#[test]
fn injected_current_needs_a_way_back() {
    let mut network = held(4, &[EARTH], &[(0, 1, r(2.0)), (2, 3, r(5.0))]);
    network.inject(0, 1, Complex::real(3.0));
    network.inject(2, 3, Complex::real(3.0));
    let solution = solve(&network).unwrap();
    close(solution.volt(1), Complex::real(6.0), 1e-15);
    close(solution.between(3, 2), Complex::real(15.0), 1e-15);
    network.inject(0, 3, Complex::real(1.0));
    assert!(matches!(solve(&network), Err(NetworkError::NoReturn { node: 2 | 3 })));
}

#[test]
fn resistance_from_milliohms_to_teraohms() {
    for ohms in [1e-3, 5e-3, 12.8, 1e6, 1e12] {
        // The path under test beside strays of everything else, and live sources that must not matter.
        let network = held(
            6,
            &[EARTH, (1, Complex::real(120.0))],
            &[(2, 3, r(ohms / 2.0)), (3, 4, r(ohms / 2.0)), (1, 0, r(10.0)), (2, 5, r(1e-3)), (5, 5, r(1.0))],
        );
        let found = two_terminal(&network, 5, 4).unwrap().ohms();
        assert!((found / (ohms + 1e-3) - 1.0).abs() < 1e-14, "{found:e} for {ohms:e}");
        assert_eq!(two_terminal(&network, 2, 1), Ok(TwoTerminal::Open));
        assert_eq!(two_terminal(&network, 0, 1), Ok(TwoTerminal::Short));
        assert_eq!(two_terminal(&network, 4, 4), Ok(TwoTerminal::Short));
    }
    // Two resistors to two held nodes stand side by side.
    let network = held(3, &[EARTH, (1, Complex::real(9.0))], &[(0, 2, r(6.0)), (1, 2, r(3.0))]);
    assert!((two_terminal(&network, 2, 1).unwrap().ohms() - 2.0).abs() < 1e-15);
}

#[test]
fn faults_in_the_input_are_named() {
    let sound = held(3, &[EARTH, (1, Complex::real(1.0))], &[(1, 2, r(1.0)), (2, 0, r(1.0))]);
    let with = |change: &dyn Fn(&mut Network)| {
        let mut network = sound.clone();
        change(&mut network);
        let planned = Plan::new(&sound).unwrap().solve(&network).unwrap_err();
        (solve(&network).unwrap_err(), planned)
    };
    for y in [f64::NAN, f64::INFINITY, -1.0, 1e31] {
        for y in [Complex::real(y), Complex::new(0.0, y)] {
            let error = NetworkError::Admittance { branch: 1 };
            assert_eq!(with(&|n| n.branches[1].admittance = y), (error, error));
        }
    }
    for v in [f64::NAN, f64::NEG_INFINITY, 1e31] {
        let error = NetworkError::Potential { fixed: 1 };
        assert_eq!(with(&|n| n.fixed[1].volts = Complex::new(0.0, v)), (error, error));
    }
    let other = NetworkError::OtherWiring;
    assert_eq!(with(&|n| n.branches[0].b = 3), (NetworkError::NoSuchNode { node: 3, nodes: 3 }, other));
    assert_eq!(with(&|n| n.fix(1, Complex::ZERO)), (NetworkError::FixedTwice { node: 1 }, other));
    assert_eq!(
        with(&|n| n.inject(0, 2, Complex::real(f64::NAN))),
        (NetworkError::Current { injection: 0 }, other)
    );
    assert!(two_terminal(&sound, 0, 3).is_err());
}

/// A network over all decades with loops everywhere.
fn tangle(draw: &mut Draw) -> Network {
    let nodes = 4 + draw.index(50) as u32;
    let mut network =
        held(nodes, &[EARTH, (1, Complex::real(120.0)), (2, Complex::polar(120.0, 120.0))], &[]);
    for node in 3..nodes {
        for _ in 0..1 + draw.index(3) {
            let other = draw.index(node as usize) as u32;
            let y = match draw.index(4) {
                0 => r(5e-3),
                1 => r(draw.between(10.0, 40.0)),
                2 => c(draw.between(2e-12, 200e-12)),
                _ => Complex::real(1e-12),
            };
            network.connect(node, other, y);
        }
    }
    network
}

#[test]
fn current_and_power_balance_in_any_tangle() {
    let mut draw = Draw::new(7, "tangled networks");
    for _ in 0..300 {
        let network = tangle(&mut draw);
        let solution = solve(&network).unwrap();
        assert!(solution.volts.iter().all(|v| v.is_finite() && v.norm() <= 240.0));
        for node in 3..network.nodes {
            // Largest current that could flow at the node gives the scale of rounding.
            let scale: f64 = network
                .branches
                .iter()
                .filter(|b| b.a == node || b.b == node)
                .map(|b| b.admittance.norm() * 120.0)
                .sum();
            let rest = solution.outflow(&network, node).norm();
            assert!(rest <= 1e-13 * scale, "{rest:e} A left over at a node of {scale:e} A");
        }
        let heat: f64 = network.branches.iter().map(|b| solution.power(b)).sum();
        let delivered: f64 =
            network.fixed.iter().map(|f| (f.volts * solution.outflow(&network, f.node).conjugate()).re).sum();
        let scale: f64 = network.branches.iter().map(|b| b.admittance.norm() * 120.0 * 120.0).sum();
        assert!((heat - delivered).abs() <= 1e-13 * scale, "{heat} W from {delivered} W");
    }
}

#[test]
fn plan_and_scratch_are_reusable() {
    let mut draw = Draw::new(8, "reused plans");
    let (mut scratch, mut reused) = (Scratch::default(), Solution::default());
    for _ in 0..50 {
        let mut network = tangle(&mut draw);
        let plan = Plan::new(&network).unwrap();
        for _ in 0..3 {
            plan.solve_into(&network, &mut scratch, &mut reused).unwrap();
            assert_eq!(reused, solve(&network).unwrap());
            network.branches.iter_mut().for_each(|b| b.admittance = b.admittance * draw.between(0.5, 2.0));
        }
    }
}

#[test]
fn two_terminals_agree_with_a_current_through_them() {
    let mut draw = Draw::new(9, "terminals");
    let mut paths = 0;
    for _ in 0..100 {
        let mut network = tangle(&mut draw);
        network.branches.retain(|b| b.admittance.im == 0.0);
        network.fixed.iter_mut().for_each(|f| f.volts = Complex::ZERO);
        let node = 3 + draw.index(network.nodes as usize - 3) as u32;
        let seen = two_terminal(&network, node, 0).unwrap();
        network.inject(0, node, Complex::real(1.0));
        match seen {
            TwoTerminal::Admittance(y) => {
                paths += 1;
                close(solve(&network).unwrap().volt(node), y.reciprocal_or_zero(), 1e-12);
            }
            TwoTerminal::Open => assert!(matches!(solve(&network), Err(NetworkError::NoReturn { .. }))),
            TwoTerminal::Short => panic!("a node that nothing holds"),
        }
    }
    assert!(paths > 50);
}
