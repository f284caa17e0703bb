//! Wires lifted, landed elsewhere, coupled, bridged; fingerprints and netlists.

use super::*;
use crate::supply::Handle;
use Screw::*;
use quantity::Metres;

/// Trade sheet 6.13 (computed): 10 m of cable beside one live wire, none to ground: 110 V on 10 MΩ, 0.08 V
/// on 3 kΩ; 1 m: 26 V.
#[test]
fn ghost_volts_on_a_dead_cable() {
    for (metres, volts) in [(10.0, 110.0), (1.0, 26.0)] {
        let mut plant = plant();
        plant.panel.breakers[0].handle = Handle::Off;
        plant.beside_live = Metres(metres);
        // None to ground: the other conductors of its own cable taken away.
        *plant.wiring.length_mut(Wire::CableA) = Metres(0.0);
        lift(&mut plant, Wire::CableA, Ja);
        let end = End { wire: Wire::CableA, side: 1 };
        near(reading(&plant, end, G, METER), volts, 1.0);
        near(reading(&plant, end, G, LOW), 0.008 * metres, 0.002);
    }
}

/// Computed: 10 m of flat cable has 600 pF to the ground beside it, so the same neighbour over its whole length shows
/// half of 120 V, less what the meter takes; on a live partner 180 pF against 600 pF show 28 V, less the same.
#[test]
fn a_dead_conductor_of_a_flat_cable() {
    let end = End { wire: Wire::CableA, side: 1 };
    let mut plant = plant();
    plant.panel.breakers[0].handle = Handle::Off;
    lift(&mut plant, Wire::CableA, Ja);
    plant.beside_live = Metres(10.0);
    near(reading(&plant, end, G, METER), 59.0, 3.0);
    assert!(reading(&plant, end, G, LOW) < 0.3);
    plant.beside_live = Metres(0.0);
    plant.panel.breakers[0].handle = Handle::On;
    plant.panel.breakers[0].poles[0] = crate::Contact::Open;
    near(reading(&plant, end, G, METER), 27.0, 2.0);
    assert!(reading(&plant, end, G, LOW) < 0.1);
}

/// With the breaker off nothing in the heater is live, not even on 10 MΩ.
#[test]
fn breaker_off_is_dead_everywhere() {
    let mut plant = plant();
    plant.panel.breakers[0].handle = Handle::Off;
    for screw in [Ja, Jb, H1, H2, H3, H4, U1, U2, U4, D1, D2, UEa, UEb, LEa, LEb] {
        assert!(reading(&plant, screw, G, METER) < 0.01, "{screw}");
    }
}

/// Common practice, no source (trade sheet 10.1): a second source keeps the splices live.
#[test]
fn second_source_keeps_it_live() {
    let mut plant = plant();
    plant.wiring.second_source = true;
    plant.panel.breakers.push(Breaker::sound(Circuit::SecondSource, Amps(30.0)));
    plant.panel.breakers[0].handle = Handle::Off;
    blades(&mut plant, true, false);
    near(reading(&plant, H1, H3, LOW), 239.0, 1.5);
    let live = plant.energise(&[]);
    assert!(live.amps(Wire::SecondA).get() > 18.0);
    assert!(live.amps(Wire::CableA).get() < 0.01);
    assert!(live.pole_amps(1, 0).get() > 18.0);
}

/// Trade sheet 9, F68 (common practice, no source): leads of U2 and U4 swapped: cold top heats below.
#[test]
fn swapped_thermostat_leads() {
    let mut plant = stiff();
    plant.wiring.joint_mut(End { wire: Wire::UpperSwitched, side: 0 }).on = Some(U4);
    plant.wiring.joint_mut(End { wire: Wire::Transfer, side: 0 }).on = Some(U2);
    blades(&mut plant, true, true);
    near(reading(&plant, LEa, LEb, METER), 240.0, 1.0);
    near(reading(&plant, UEa, UEb, METER), 0.0, 1.0);
    blades(&mut plant, false, true);
    near(reading(&plant, UEa, UEb, METER), 240.0, 1.0);
}

/// Any end lifted, and any end landed on any screw: readings stay finite and within the supply (a
/// leg landed on neutral lifts neutral itself until the breaker trips).
#[test]
fn every_end_lifted_and_landed_anywhere() {
    for end in End::all() {
        let places = Screw::ALL.iter().map(|screw| Some(*screw)).chain([None]);
        for on in places {
            let mut plant = plant();
            plant.wiring.joint_mut(end).on = on;
            let live = plant.energise(&[Bridge::ohms(end.into(), G.into(), METER)]);
            for screw in Screw::ALL {
                let volts = live.volts((*screw).into(), N.into()).get();
                assert!((0.0..=241.0).contains(&volts), "{end} on {on:?}: {screw} {volts}");
            }
            assert!(live.amps(end.wire).get().is_finite());
            let _ = plant.resistance(end.into(), G.into());
        }
    }
    let mut plant = plant();
    End::all().for_each(|end| plant.wiring.joint_mut(end).on = None);
    near(reading(&plant, M1, M2, METER), 240.0, 0.1);
    assert!(reading(&plant, H1, H3, METER) < 1e-6);
}

/// Several bridges at once: a meter and a hand across the same two points, a hand elsewhere.
#[test]
fn several_bridges_at_once() {
    let mut plant = stiff();
    blades(&mut plant, false, false);
    let hand = |a: Screw, b: Screw, ohms: f64| Bridge::ohms(a.into(), b.into(), Ohms(ohms));
    let live = plant.energise(&[
        hand(H1, H3, 10e6),
        hand(H1, H3, 1200.0),
        hand(UEb, Shell, 1600.0),
        hand(H1, H1, 1.0),
    ]);
    near(live.bridge_amps(0).get(), 240.0 / 10e6, 1e-7);
    near(live.bridge_amps(1).get(), 0.2, 1e-3);
    near(live.bridge_amps(2).get(), 0.075, 1e-3);
    assert_eq!(live.bridge_amps(3).get(), 0.0);
    assert_eq!(live.bridge_amps(9).get(), 0.0);
}

/// Trade sheet 10.2 (common practice, no source): leads off, 12.8 Ω less the 2 % of a cold coil (2.2,
/// published); leads on, parallel paths. A sound element is open to the shell on an ohmmeter.
#[test]
fn ohms_with_leads_on_and_off() {
    let mut plant = stiff();
    plant.panel.breakers[0].handle = Handle::Off;
    blades(&mut plant, false, true);
    let ohms = |plant: &Plant, a: Screw, b: Screw| plant.resistance(a.into(), b.into()).unwrap().get();
    let cold = 0.98 * 12.8;
    near(ohms(&plant, UEa, UEb), cold, 0.01);
    near(ohms(&plant, H1, H3), cold, 0.03);
    plant.wiring.joint_mut(End { wire: Wire::Transfer, side: 0 }).on = Some(U2);
    near(ohms(&plant, UEa, UEb), 0.5 * cold, 0.01);
    assert!(ohms(&plant, UEa, Shell) > 40e6);
    lift(&mut plant, Wire::UpperSwitched, UEa);
    lift(&mut plant, Wire::UpperPermanent, UEb);
    near(ohms(&plant, UEa, UEb), cold, 0.01);
    plant.elements[0].open = true;
    assert!(ohms(&plant, UEa, UEb) > 1e9);
    assert!(ohms(&plant, Shell, G) < 0.1, "bonded");
}

#[test]
fn fingerprint_follows_what_conducts_and_nothing_else() {
    let plant = plant();
    let same = plant.electrical_state();
    let changed = |change: &dyn Fn(&mut Plant)| {
        let mut other = plant.clone();
        change(&mut other);
        other.electrical_state() != same
    };
    assert!(!changed(&|p| p.room = Temperature::celsius(22.0)));
    assert!(!changed(&|p| p.panel.breakers[0].heat = [0.5; 2]));
    assert!(!changed(&|p| p.thermostats[0].body = Temperature::celsius(40.0)));
    assert!(changed(&|p| p.thermostats[0].calling = false));
    assert!(changed(&|p| p.thermostats[1].calling = false));
    assert!(changed(&|p| p.limit.tripped = true));
    assert!(changed(&|p| p.panel.breakers[0].handle = Handle::Off));
    assert!(changed(&|p| p.elements[1].open = true));
    assert!(changed(&|p| lift(p, Wire::FeedA, H1)));
    assert!(changed(&|p| p.wiring.joint_mut(End { wire: Wire::Bond, side: 1 }).resistance = Ohms(0.5)));
}

#[test]
fn netlist_names_every_node_and_lists_our_solution() {
    let mut plant = plant();
    plant.wiring.second_source = true;
    plant.elements[1].leak = Some(crate::SheathFault { fraction: 0.5, resistance: Ohms(1e5) });
    lift(&mut plant, Wire::Bond, Jg);
    let meter = Bridge::ohms(H1.into(), H3.into(), METER);
    let text = plant.netlist(&[meter], "forty gallons").unwrap();
    assert!(text.netlist.contains(".ac lin 1 60 60\n"));
    for name in ["L1", "H1", "UEa", "LEx", "feed_a_H1", "shell", "second_b_S2"] {
        assert!(text.netlist.contains(&format!(" {name} ")), "{name}");
        assert!(text.solution.lines().any(|line| line.starts_with(&format!("{name} "))), "{name}");
    }
    assert!(text.netlist.contains("H1 H3 1e7"));
    assert_eq!(text.solution.lines().count(), 3 + 26 + 28 + 1);
}
