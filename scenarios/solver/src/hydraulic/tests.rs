//! Published and computed figures, and the behaviour of each part.

use super::*;
use crate::water;

const GALLON: f64 = 3.785_411_784e-3;
const PSI: f64 = 6_894.757;
const STEEL: Shell = Shell { diameter: 0.457, wall: 1.8e-3, youngs: 200e9, poisson: 0.3 };

fn celsius(fahrenheit: f64) -> f64 {
    (fahrenheit - 32.0) / 1.8
}

/// Computed: 50 gal, 50 to 140 °F, 60 to 150 psi: 1.54 gal; to 135 psi 1.67 gal. The formula: R. W. Griffith
/// PE, 2015. 80 psi, 60 to 120 °F: 1.44 gal to 135 and 1.25 gal to 150 psi.
#[test]
fn cushion_sizes() {
    let rows = [
        (50.0, 140.0, 60.0, 150.0, 1.54),
        (50.0, 140.0, 60.0, 135.0, 1.67),
        (60.0, 120.0, 80.0, 135.0, 1.44),
        (60.0, 120.0, 80.0, 150.0, 1.25),
    ];
    for (cold, hot, p1, p2, gallons) in rows {
        let expansion = 50.0 * water::expansion(celsius(cold), celsius(hot));
        let size = cushion_size(expansion, p1 * PSI, p2 * PSI);
        assert!((size - gallons).abs() < 0.02, "{size} {gallons}");
    }
}

/// A shut vessel heated by `kelvin`: its pressure, Pa.
fn heated(store: Store, kelvin: f64, from: f64) -> f64 {
    let mut net = Network::new(990.0);
    let mut hot = store;
    hot.water *= 1.0 + water::expansion(from, from + kelvin);
    // Steel's own volume expansion, 3 · 12e-6/K.
    hot.volume *= 1.0 + 36e-6 * kelvin;
    let node = net.store(hot);
    net.advance(1.0).unwrap();
    net.pressure(node).unwrap()
}

/// Computed: a steel shell alone (457 mm, 1.8 mm wall) gains 13 psi/°F near 86 °F; 60 to 150 psi in 7 °F.
#[test]
fn a_shut_shell_gains_13_psi_per_degree() {
    let mut store = Store::full(50.0 * GALLON, 1.22, 0.0, STEEL.compliance(), 60.0 * PSI);
    store.compressibility = water::compressibility(30.0);
    let rise = (heated(store, 1.0 / 1.8, 30.0) - 60.0 * PSI) / PSI;
    assert!((rise - 13.0).abs() < 0.4, "{rise}");
    let seven = heated(store, 7.0 / 1.8, 30.0 - 3.5 / 1.8) / PSI;
    assert!((seven - 150.0).abs() < 6.0, "{seven}");
    // With piping and other give, about 16 °F (from memory): some 2.4 times the compliance.
    store.compliance = 2.4 * (store.compliance + store.compressibility) - store.compressibility;
    store.water = store.capacity(60.0 * PSI).0;
    let sixteen = heated(store, 16.0 / 1.8, 30.0 - 8.0 / 1.8) / PSI;
    assert!((140.0..160.0).contains(&sixteen), "{sixteen}");
}

/// A cushion of the computed size, charged to the static pressure, ends at the computed pressure.
#[test]
fn a_cushion_of_the_right_size_holds_the_pressure() {
    let cushion = Cushion { volume: 1.54 * GALLON, charge: 60.0 * PSI };
    let rigid = Store::full(50.0 * GALLON, 1.22, 0.0, 0.0, 60.0 * PSI);
    let store = Store { compressibility: 1e-12, ..rigid }.with_cushion(cushion);
    let mut hot = store;
    hot.water = rigid.volume * (1.0 + water::expansion(celsius(50.0), celsius(140.0)));
    let end = hot.rest_pressure() / PSI;
    assert!((end - 150.0).abs() < 1.5, "{end}");
}

/// Half-inch bore, Cd 0.6.
fn drain_law() -> Law {
    Law::Orifice { k: orifice(0.6, core::f64::consts::FRAC_PI_4 * 0.0127 * 0.0127, 998.0) }
}

fn drained(vented: bool) -> (Network, u32, u32) {
    let mut net = Network::new(998.0);
    let air = net.air(0.0);
    let mut vessel = Store::full(45.0 * GALLON, 1.22, 0.0, STEEL.compliance(), 0.0);
    vessel.vented = vented;
    let store = net.store(vessel);
    let drain = net.branch_between((store, 0.0), (air, 0.0), drain_law());
    (net, store, drain)
}

/// Computed: Q = Cd·A·√(2gh): 5.9 gpm at 1.22 m; 45 gal in 15.3 min.
#[test]
fn draining_with_air() {
    let (mut net, _, drain) = drained(true);
    let first = net.advance(1.0).unwrap();
    let gpm = first.flow(drain) / GALLON * 60.0;
    assert!((gpm - 5.9).abs() < 0.1, "{gpm}");
    let (mut net, _, drain) = drained(true);
    let mut seconds = 0.0_f64;
    let mut out = 0.0;
    while net.stores[0].water > 1e-7 && seconds < 2000.0 {
        out += net.advance(1.0).unwrap().volume(drain);
        seconds += 1.0;
    }
    assert!((seconds / 60.0 - 15.3).abs() < 0.3, "{seconds}");
    assert!((out - 45.0 * GALLON).abs() < 1e-7, "{out}");
    // In one call the same water comes out.
    let (mut net, _, drain) = drained(true);
    let all = net.advance(2000.0).unwrap();
    assert!((all.volume(drain) - 45.0 * GALLON).abs() < 1e-9, "{}", all.volume(drain));
    assert!(all.steps < 200, "{}", all.steps);
}

/// Computed: with no air let in, flow stops at a vacuum of ρgh: 1.2 m is 11.8 kPa, 1.7 psi.
#[test]
fn draining_without_air_stops_at_the_vacuum() {
    assert!((column(998.0, 1.2) - 11.8e3).abs() < 100.0);
    let (mut net, store, drain) = drained(false);
    let start = net.stores[0].water;
    let moved = net.advance(600.0).unwrap();
    let vacuum = net.pressure(store).unwrap();
    assert!((vacuum + column(998.0, 1.22)).abs() < 5.0, "{vacuum}");
    assert!(moved.volume(drain) < 2e-5, "{}", moved.volume(drain));
    assert!((net.stores[0].water + moved.volume(drain) - start).abs() < 1e-15);
    // A tap is opened: air breaks in and the rest comes.
    net.stores[0].vented = true;
    let rest = net.advance(1200.0).unwrap();
    assert!((rest.volume(drain) + moved.volume(drain) - start).abs() < 1e-9);
}

fn filling(vented: bool) -> (Network, u32, u32, u32) {
    let mut net = Network::new(998.0);
    let main = net.fixed(0.0, 60.0 * PSI);
    let air = net.air(2.0);
    let empty = Store::full(45.0 * GALLON, 1.22, 0.0, STEEL.compliance(), 0.0).partly_filled(0.0);
    let store = net.store(Store { vented, ..empty });
    // About 5 gpm at 60 psi.
    let cold = net.branch(main, store, Law::Orifice { k: 3.15e-4 / (60.0 * PSI).sqrt() });
    let k = if vented { 1e-5 } else { 0.0 };
    let tap = net.branch_between((store, 1.22), (air, 2.0), Law::Orifice { k });
    (net, store, cold, tap)
}

/// Computed: 45 gal at 5 gpm is 9 min. With a hot tap open the air goes and then water comes from the tap.
#[test]
fn filling_with_a_tap_open() {
    let (mut net, _, cold, tap) = filling(true);
    let mut minutes = 0.0_f64;
    let (mut inn, mut out) = (0.0, 0.0);
    while !net.stores[0].is_full() && minutes < 30.0 {
        let moved = net.advance(6.0).unwrap();
        inn += moved.volume(cold);
        out += moved.volume(tap);
        minutes += 0.1;
    }
    assert!((minutes - 9.0).abs() < 0.4, "{minutes}");
    let moved = net.advance(60.0).unwrap();
    inn += moved.volume(cold);
    out += moved.volume(tap);
    assert!(moved.volume(tap) > 0.01 && moved.flow(tap) > 1e-4, "{moved:?}");
    assert!((inn - out - net.stores[0].water).abs() < 1e-9);
}

/// With no way out for the air, Boyle's law says how far it fills: V·pa/(pa + p).
#[test]
fn filling_with_every_tap_shut_traps_air() {
    let (mut net, store, cold, _) = filling(false);
    let moved = net.advance(3600.0).unwrap();
    let p = net.pressure(store).unwrap();
    let level = net.stores[0].level();
    assert!((p + 998.0 * water::GRAVITY * level - 60.0 * PSI).abs() < 200.0, "{p}");
    let air = 45.0 * GALLON * water::ATMOSPHERE / (water::ATMOSPHERE + p);
    assert!((net.stores[0].air_volume() - air).abs() < 1e-5);
    assert!(!net.stores[0].is_full() && level < 0.85 * 1.22, "{level}");
    assert!((moved.volume(cold) - net.stores[0].water).abs() < 1e-12);
}

/// A relief valve that pops: full open at 1.1 of 150 psi, shut again at 0.85; by temperature at 210 °F, until 190.
fn popping(k: f64) -> Relief {
    let valve = Relief::standard(k, 1.1 * 150.0 * PSI, 0.85 * 150.0 * PSI);
    Relief { hot: 98.9, cool: 87.8, ..valve }
}

/// A shut system that is heated: the relief valve pops at 150 psi, lets the growth go, and reseats, over and over.
#[test]
fn the_relief_valve_passes_the_growth_and_reseats() {
    let mut net = Network::new(990.0);
    let main = net.fixed(0.0, 60.0 * PSI);
    let air = net.air(1.0);
    let store = net.store(Store::full(50.0 * GALLON, 1.22, 0.0, STEEL.compliance(), 60.0 * PSI));
    let check = net.branch(main, store, Law::Check { k: 1e-6, cracking: 2e3 });
    let relief = net.branch_between((store, 1.1), (air, 1.0), Law::Relief(popping(3e-6)));
    // 4500 W: about 2.3e-6 times the volume each second near 40 °C.
    let growth = 50.0 * GALLON * 2.3e-6;
    let (mut peak, mut out, mut pops) = (0.0_f64, 0.0, 0);
    for _ in 0..360 {
        net.stores[0].water += 10.0 * growth;
        let moved = net.advance(10.0).unwrap();
        peak = peak.max(moved.peaks[0]);
        out += moved.volume(relief);
        pops += i32::from(moved.volume(relief) > 1e-5);
        assert!(moved.volume(check) < 1e-6);
    }
    assert!(pops > 3 && (148.0 * PSI..153.0 * PSI).contains(&peak), "{}", peak / PSI);
    assert!((out - 3600.0 * growth).abs() < 0.15 * 3600.0 * growth, "{out}");
    net.advance(600.0).unwrap();
    assert!(!net.relief_mut(relief).unwrap().lifted);
    let rest = net.pressure(store).unwrap();
    assert!((126.0 * PSI..151.0 * PSI).contains(&rest), "{}", rest / PSI);
    // By temperature it opens whatever the pressure, and closes when the water has cooled.
    net.relief_mut(relief).unwrap().sense(99.0);
    assert!(net.advance(10.0).unwrap().volume(relief) > 1e-3);
    net.relief_mut(relief).unwrap().sense(80.0);
    assert!(net.advance(10.0).unwrap().volume(relief) < 1e-9);
}

#[test]
fn a_regulator_holds_its_set_pressure() {
    let mut net = Network::new(998.0);
    let main = net.fixed(0.0, 110.0 * PSI);
    let air = net.air(0.0);
    let house = net.free(0.0);
    net.branch(main, house, Law::Regulator { k: 2e-6, set: 60.0 * PSI, bypass: false });
    let tap = net.branch(house, air, Law::Orifice { k: 0.0 });
    net.advance(1.0).unwrap();
    net.advance(1.0).unwrap();
    assert!((net.pressure(house).unwrap() - 60.0 * PSI).abs() < 10.0, "{:?}", net.pressure(house));
    *net.law_mut(tap).unwrap() = Law::Orifice { k: 5e-7 };
    let moved = net.advance(1.0).unwrap();
    let p = net.pressure(house).unwrap();
    assert!(p < 60.0 * PSI && p > 50.0 * PSI, "{p}");
    assert!((moved.flow(tap) - 5e-7 * p.sqrt()).abs() < 1e-9);
    net.set_pressure(main, 40.0 * PSI);
    net.advance(1.0).unwrap();
    assert!(net.pressure(house).unwrap() < 40.0 * PSI);
}

#[test]
fn wrong_inputs_are_refused() {
    let (mut net, _, _) = drained(true);
    assert!(net.advance(f64::NAN).is_err());
    assert!(net.advance(-1.0).is_err());
    net.branches[0].to.node = 99;
    assert_eq!(net.advance(1.0), Err(Error::NoNode(99)));
    let (mut net, _, _) = drained(true);
    net.stores[0].water = f64::NAN;
    assert!(matches!(net.advance(1.0), Err(Error::Bad { field: "water", .. })));
    net.stores[0].water = 0.1;
    *net.law_mut(0).unwrap() = Law::Orifice { k: f64::INFINITY };
    assert!(net.advance(1.0).is_err());
}

/// Random houses, random valves, random steps: it always answers, and no water is made or lost.
#[test]
fn random_networks_converge_and_balance() {
    let mut seed = 12345_u64;
    let mut next = move || {
        seed = seed.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (seed >> 11) as f64 / (1_u64 << 53) as f64
    };
    for case in 0..300 {
        let mut net = Network::new(995.0);
        let main = net.fixed(0.0, 200e3 + 600e3 * next());
        let (house, cold, hot) = (net.free(0.0), net.free(0.5), net.free(2.0));
        let outside = net.air(1.0 + 4.0 * next());
        let floor = net.air(0.0);
        let shell = Store::full(0.17, 1.22, 0.1, STEEL.compliance(), 300e3);
        let vessel = if next() < 0.3 { shell.partly_filled(0.17 * next()) } else { shell };
        let vessel = if next() < 0.5 {
            vessel.with_cushion(Cushion { volume: 0.008, charge: 400e3 * next() })
        } else {
            vessel
        };
        let store = net.store(Store { vented: next() < 0.3, ..vessel });
        let mut k = |size: f64| if next() < 0.3 { 0.0 } else { size * (0.01 + next()) };
        let regulator = Law::Regulator { k: k(2e-6), set: 350e3, bypass: case % 2 == 0 };
        let inlet = net.branch(main, house, regulator);
        net.branch(house, cold, Law::Check { k: k(2e-6), cracking: 2e3 });
        let dip = net.branch_between((cold, 0.5), (store, 0.3), Law::Orifice { k: k(2e-6) });
        let out = net.branch_between((store, 1.32), (hot, 2.0), Law::Orifice { k: k(2e-6) });
        net.branch(hot, outside, Law::Orifice { k: k(1e-6) });
        net.branch(cold, outside, Law::Orifice { k: k(1e-6) });
        net.branch(hot, cold, Law::Orifice { k: k(1e-7) });
        let drain = net.branch_between((store, 0.1), (floor, 0.0), Law::Orifice { k: k(3e-6) });
        let relief = net.branch_between((store, 1.25), (floor, 0.0), Law::Relief(popping(k(5e-6))));
        for dt in [0.1, 1.0, 30.0, 600.0] {
            let before = net.stores[0].water;
            let moved = net.advance(dt).unwrap_or_else(|e| panic!("case {case}, {dt} s: {e}"));
            assert!((moved.elapsed - dt).abs() < 1e-6, "case {case}: {} of {dt}", moved.elapsed);
            let gain = moved.volume(dip) - moved.volume(out) - moved.volume(drain) - moved.volume(relief);
            let off = net.stores[0].water - before - gain;
            assert!(off.abs() < 1e-10, "case {case}, {dt} s: {off}");
            assert!(moved.volume(inlet).is_finite() && net.pressure(hot).unwrap().is_finite());
        }
    }
}
