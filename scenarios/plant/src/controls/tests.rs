//! Switching and burning with the currents of the real network.

use quantity::{Ohms, Seconds, Temperature};

use super::{burn, horizon};
use crate::electrical::fixtures::{blades, near, plant, stiff};
use crate::{End, Handle, Happening, Plant, SheathFault, Wire};

const WATER: [Temperature; 2] = [Temperature::celsius(20.0); 2];

/// Lets time pass as whoever moves it would: in steps up to the horizon, solving again after each change.
fn pass(plant: &mut Plant, total: f64, wetted: [bool; 2]) -> Vec<(f64, Happening)> {
    let (mut at, mut all) = (0.0, Vec::new());
    while at < total {
        let live = plant.energise(&[]);
        let step = horizon(plant, &live, wetted).get().max(0.05).min(total - at);
        let happened = burn(plant, Seconds(step), &live, WATER, wetted);
        all.extend(happened.into_iter().map(|(when, what)| (at + when.get(), what)));
        at += step;
    }
    all
}

/// Check case 12 (trade sheet 2.9 and 6.14, computed): grounded near the permanent end, satisfied: the
/// breaker trips in 5-30 s, both poles, and stays so.
#[test]
fn grounded_end_trips_the_breaker() {
    let mut plant = stiff();
    blades(&mut plant, false, false);
    plant.elements[1].leak = Some(SheathFault { fraction: 0.9, resistance: Ohms(0.0) });
    let happened = pass(&mut plant, 60.0, [true; 2]);
    assert!(
        matches!(happened[..], [(at, Happening::BreakerTripped { slot: 0 })] if (5.0..30.0).contains(&at))
    );
    assert_eq!(plant.panel.breakers[0].handle, Handle::Tripped);
    near(plant.energise(&[]).leg_current(1).get(), 0.0, 1e-6);
}

/// Trade sheet 2.9 (computed): grounded at the middle, a 30 A breaker holds for ever.
#[test]
fn grounded_middle_never_trips() {
    let mut plant = stiff();
    blades(&mut plant, false, false);
    plant.elements[1].leak = Some(SheathFault { fraction: 0.5, resistance: Ohms(0.0) });
    assert!(pass(&mut plant, 86_400.0, [true; 2]).is_empty());
}

/// Trade sheet 2.9 (computed): at the switched end the breaker trips only once it calls.
#[test]
fn switched_end_trips_only_when_calling() {
    let mut plant = stiff();
    blades(&mut plant, false, false);
    plant.elements[1].leak = Some(SheathFault { fraction: 0.1, resistance: Ohms(0.0) });
    assert!(pass(&mut plant, 3600.0, [true; 2]).is_empty());
    blades(&mut plant, false, true);
    let happened = pass(&mut plant, 60.0, [true; 2]);
    assert!(matches!(happened[..], [(at, Happening::BreakerTripped { .. })] if at < 30.0));
}

/// Check case 25 and trade sheet 2.7 (published): powered in air, the upper element opens in 30-45 s; the
/// lower one, not called, is left alone.
#[test]
fn dry_fire_opens_the_upper_element() {
    let mut plant = stiff();
    let happened = pass(&mut plant, 300.0, [false; 2]);
    let [(at, Happening::ElementBurntOut { level: crate::Level::Upper, after })] = happened[..] else {
        panic!("{happened:?}")
    };
    assert!((30.0..=45.0).contains(&at));
    near(after.get(), at, 1e-6);
    assert!(plant.elements[0].open && plant.elements[0].scorched);
    assert!(!plant.elements[1].open && !plant.elements[1].scorched);
}

/// Trade sheet 9, F23 (common practice, no source): over 1 V at 18.75 A is a bad joint: it chars and goes
/// on; far worse ones burn off within minutes; sound ones stay cool for ever.
#[test]
fn loose_joints_char_and_burn_off() {
    let end = End { wire: Wire::FeedA, side: 0 };
    let with = |ohms: f64| {
        let mut plant = plant();
        plant.wiring.joint_mut(end).resistance = Ohms(ohms);
        let happened = pass(&mut plant, 3600.0, [true; 2]);
        (happened, *plant.wiring.joint(end), plant.energise(&[]).amps(Wire::FeedA).get())
    };
    let (happened, joint, amps) = with(0.001);
    assert!(happened.is_empty() && !joint.charred && joint.rise.get() < 10.0 && amps > 18.0);
    let (happened, joint, amps) = with(0.08);
    assert!(happened.is_empty() && joint.charred && amps > 18.0);
    let (happened, joint, amps) = with(1.0);
    assert!(matches!(happened[..], [(at, Happening::JointBurnt { end: e })] if e == end && at < 300.0));
    assert!(joint.charred && amps < 1e-3);
}

/// Every splice that F23 leaves conducting drops over 1 V where it matters and lasts an hour of full current,
/// on each heater of the yard.
#[test]
fn conducting_splices_of_f23_last() {
    use crate::{Element, HeaterModel};
    let parameter = crate::FaultId::F23.fault().parameters.iter().find(|p| p.name == "ohms").unwrap();
    let end = End { wire: Wire::CableA, side: 1 };
    // A hot-and-neutral heater has no such splice of its second leg.
    let fed_by_legs = |model: &&HeaterModel| !model.plate().supply().hot_neutral();
    for model in HeaterModel::ALL.iter().filter(fed_by_legs) {
        for ohms in [parameter.low, parameter.high] {
            let mut plant = plant();
            let rating = model.plate().element;
            if rating.volts.get() < 220.0 {
                plant.service.kind = crate::supply::ServiceKind::Wye208;
            }
            plant.elements = [Element::sound(rating); 2];
            plant.wiring.joint_mut(end).resistance = Ohms(ohms);
            let live = plant.energise(&[]);
            assert!(live.volts(end.into(), crate::Screw::Ja.into()).get() > 1.0, "{model} {ohms}");
            assert!(pass(&mut plant, 3600.0, [true; 2]).is_empty(), "{model} {ohms}");
            assert!(plant.wiring.joint(end).charred);
        }
    }
}

/// Trade sheet 11, statement 9 (from memory): both elements on a 30 A breaker: minutes to hours, or never.
#[test]
fn both_elements_hold_at_first() {
    let mut plant = plant();
    plant.wiring.joint_mut(End { wire: Wire::Transfer, side: 0 }).on = Some(crate::Screw::H2);
    assert!(pass(&mut plant, 600.0, [true; 2]).is_empty());
}

/// F25 (from memory): aluminium in a connector for copper worsens with every hot cycle; copper does not, nor
/// aluminium in a connector marked for it.
#[test]
fn aluminium_under_a_copper_screw_worsens_with_hot_cycles() {
    let end = End { wire: Wire::CableA, side: 1 };
    let after = |metal, rated| {
        let mut plant = plant();
        blades(&mut plant, true, false);
        plant.wiring.joint_mut(end).resistance = Ohms(0.03);
        let conductor = plant.wiring.conductor_mut(end.wire);
        (conductor.metal, conductor.rated) = (metal, rated);
        for _ in 0..10 {
            blades(&mut plant, true, false);
            pass(&mut plant, 3600.0, [true; 2]);
            plant.thermostats.iter_mut().for_each(|t| t.calling = false);
            pass(&mut plant, 7200.0, [true; 2]);
        }
        plant.wiring.joint(end).resistance.get()
    };
    near(after(crate::Metal::Copper, true), 0.03, 1e-12);
    near(after(crate::Metal::Aluminium, true), 0.03, 1e-12);
    near(after(crate::Metal::Aluminium, false), 0.0403, 1e-4);
}
