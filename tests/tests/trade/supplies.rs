//! Section 1: construction, control and the voltages to be read, over every kind of supply. The table of 1.6 is
//! checked in `scenarios/plant/src/electrical/tests/readings.rs`.

use plant::climate::Climate;
use plant::electrical::Bridge;
use plant::household::HouseholdKind;
use plant::supply::Loads;
use plant::{
    BURNT_OFF, BoxKind, Circuit, Contact, Handle, HeaterModel, InLineBox, Level, Plant, Screw, Service,
    ServiceKind, Setting, Stab, Wire,
};
use quantity::{Amps, Metres, Ohms};

/// A heater of the yard as its plate asks, upper and lower blade calling or not.
fn heater(heater: HeaterModel, upper: bool, lower: bool) -> Plant {
    let (household, climate) = (HouseholdKind::Couple, Climate::MillValley);
    let mut plant = Plant::sound(Setting {
        heater,
        household,
        climate,
        day: 100,
        in_line: None,
        location: Default::default(),
    });
    plant.thermostats[0].calling = upper;
    plant.thermostats[1].calling = lower;
    plant
}

fn on(kind: ServiceKind, upper: bool, lower: bool) -> Plant {
    let mut plant = heater(HeaterModel::Plain40, upper, lower);
    plant.service = Service::sound(kind);
    plant
}

/// What a 10 megohm meter reads.
fn volts(plant: &Plant, a: Screw, b: Screw) -> f64 {
    let (a, b) = (a.into(), b.into());
    plant.energise(&[Bridge::ohms(a, b, Ohms(10e6))]).volts(a, b).get()
}

#[track_caller]
fn near(value: f64, expected: f64, tolerance: f64) {
    assert!((value - expected).abs() <= tolerance, "{value} is not {expected} ± {tolerance}");
}

fn watts(plant: &Plant) -> [f64; 2] {
    let live = plant.energise(&[]);
    [Level::Upper, Level::Lower].map(|level| live.element_watts(level).get())
}

/// 1.8 (published: service literature, wiring page; the high leg from memory): leg to leg and leg to ground, unloaded.
#[test]
fn voltages_of_every_supply() {
    for (kind, across, first, second) in [
        (ServiceKind::Split240, 240.0, 120.0, 120.0),
        (ServiceKind::Wye208, 208.0, 120.0, 120.0),
        (ServiceKind::Delta240, 240.0, 120.0, 120.0),
        (ServiceKind::Delta240High, 240.0, 120.0, 208.0),
    ] {
        let plant = on(kind, false, false);
        near(volts(&plant, Screw::H1, Screw::H3), across, 0.5);
        near(volts(&plant, Screw::H1, Screw::Shell), first, 0.3);
        near(volts(&plant, Screw::H3, Screw::Shell), second, 0.3);
        near(plant.service.across().get(), across, 0.2);
    }
    for (model, hot) in [(HeaterModel::Tall50At277, 277.0), (HeaterModel::Small20, 120.0)] {
        let plant = heater(model, false, false);
        near(volts(&plant, Screw::H1, Screw::H3), hot, 0.5);
        near(volts(&plant, Screw::H1, Screw::Shell), hot, 0.5);
        // One element screw sits at nothing.
        near(volts(&plant, Screw::UEb, Screw::Shell), 0.0, 0.1);
    }
}

/// 1.1 and 1.3 (published: service literature, pmmag.com): the upper element alone, then the lower alone, then none.
#[test]
fn one_element_at_a_time() {
    for model in [HeaterModel::Plain40, HeaterModel::Large120, HeaterModel::Board50, HeaterModel::Tall50At277]
    {
        let runs = |upper, lower| watts(&heater(model, upper, lower)).map(|w| w > 100.0);
        assert_eq!(runs(true, true), [true, false], "{model}");
        assert_eq!(runs(false, true), [false, true], "{model}");
        assert_eq!(runs(false, false), [false, false], "{model}");
    }
}

/// 1.9 (from memory): L, limit, thermostat, element, N; a voltage on the neutral screw is an open neutral.
#[test]
fn single_element_at_120_volts() {
    let mut plant = heater(HeaterModel::Small20, true, false);
    let live = plant.energise(&[]);
    // Computed: 9.60 ohms, 0.104 more of 12 AWG there and back, 0.06 of leads, contacts, joints and service.
    near(live.amps(Wire::CableA).get(), 120.0 / (9.60 + 0.104 + 0.06), 0.05);
    near(live.amps(Wire::CableN).get(), live.amps(Wire::CableA).get(), 0.01);
    let mut short = plant.clone();
    short.service.impedance = [Ohms(0.0); 2];
    Wire::ALL.iter().for_each(|wire| *short.wiring.length_mut(*wire) = Metres(0.0));
    // Contacts, joints and neutral keep back less than one per cent.
    near(short.energise(&[]).amps(Wire::CableA).get(), 12.5, 0.12);
    assert_eq!(live.element_watts(Level::Lower).get(), 0.0);
    plant.wiring.joint_mut(plant::End { wire: Wire::CableN, side: 1 }).resistance = BURNT_OFF;
    near(volts(&plant, Screw::UEb, Screw::Shell), 120.0, 1.0);
    near(volts(&plant, Screw::UEa, Screw::UEb), 0.0, 0.5);
    near(watts(&plant)[0], 0.0, 0.1);
}

/// 1.10 and check case 14 (computed): 2 x 4500 W at 240 V is 37.5 A; 125 % is 46.9 A, a 50 A circuit.
#[test]
fn both_elements_at_once() {
    let mut plant = heater(HeaterModel::Both50, true, true);
    plant.service.impedance = [Ohms(0.0); 2];
    let amps = plant.energise(&[]).amps(Wire::CableA).get();
    near(plant.plate.current().get(), 37.5, 0.01);
    // Cable and joints take two per cent.
    near(amps, 37.5, 0.8);
    assert!(watts(&plant).iter().all(|w| *w > 4200.0));
    let breaker = plant.panel.feeding(Circuit::Heater).unwrap();
    assert_eq!(breaker.rating.get(), 50.0);
}

/// 1.11 (published: service literature): the lower circuit is fed and limited by itself and waits for U3-U4; with the
/// main circuit off its own still stands live below.
#[test]
fn off_peak() {
    let runs = |plant: &Plant| watts(plant).map(|w| w > 100.0);
    assert_eq!(runs(&heater(HeaterModel::OffPeak80, true, true)), [true, false]);
    assert_eq!(runs(&heater(HeaterModel::OffPeak80, false, true)), [false, true]);
    // In the peak the second supply is away, and the first is not: volts at the breaker's screws, none behind the relay.
    let mut peak = heater(HeaterModel::OffPeak80, false, true);
    let closed = peak.electrical_state();
    peak.off_peak.as_mut().unwrap().closed = false;
    assert_ne!(peak.electrical_state(), closed);
    assert_eq!(runs(&peak), [false, false]);
    near(volts(&peak, Screw::S1, Screw::S2), 240.0, 0.5);
    near(volts(&peak, Screw::Jc, Screw::Jd), 0.0, 5.0);
    near(volts(&peak, Screw::H5, Screw::H7), 0.0, 5.0);
    near(volts(&peak, Screw::H1, Screw::H3), 240.0, 0.5);
    peak.thermostats[0].calling = true;
    assert_eq!(runs(&peak), [true, false]);
    // One pole burnt open: the other leg is all that is left there.
    let mut burnt = heater(HeaterModel::OffPeak80, false, true);
    burnt.off_peak.as_mut().unwrap().poles[0] = Contact::Open;
    assert_eq!(runs(&burnt), [false, false]);
    near(volts(&burnt, Screw::H7, Screw::Shell), 120.0, 1.0);
    // The breaker labelled for the heater off: the lower compartment is not dead.
    let mut off = heater(HeaterModel::OffPeak80, false, true);
    let slot = off.panel.slot_of(Circuit::Heater).unwrap();
    off.panel.breakers[slot].handle = Handle::Off;
    // What the leads beside it leave there is a ghost.
    near(volts(&off, Screw::H1, Screw::H3), 0.0, 5.0);
    // Its element runs: cable and joints take a per cent.
    near(volts(&off, Screw::H5, Screw::H7), 240.0, 3.5);
    // Its own limit opens it.
    let mut tripped = heater(HeaterModel::OffPeak80, false, true);
    tripped.lower_limit.as_mut().unwrap().tripped = true;
    assert_eq!(runs(&tripped), [false, false]);
}

/// F73 (from memory): an open service neutral leaves the heater as it is and shifts the legs with the house's loads;
/// their sum stays leg to leg.
#[test]
fn an_open_service_neutral_shifts_the_legs() {
    let mut plant = on(ServiceKind::Split240, true, false);
    let sound = watts(&plant)[0];
    plant.service.neutral = BURNT_OFF;
    plant.service.electrode = Ohms(1e9);
    plant.service.loads = Loads { one: Ohms(20.0), two: Ohms(60.0), ..Loads::NONE };
    let (one, two) = (volts(&plant, Screw::M1, Screw::N), volts(&plant, Screw::M2, Screw::N));
    // Two resistors in series over 240 V: 60 V and 180 V.
    near(one, 60.0, 1.0);
    near(two, 180.0, 1.5);
    near(one + two, volts(&plant, Screw::M1, Screw::M2), 0.1);
    near(watts(&plant)[0], sound, 15.0);
    // An electrode of 25 ohms pulls a little of it back.
    plant.service.electrode = Ohms(25.0);
    let held = volts(&plant, Screw::M1, Screw::N);
    assert!(held > one + 5.0 && held < 115.0, "{held}");
}

/// F73 (from memory), computed: with as much on one leg as on the other an open neutral does not show; a portable heater
/// on one of them makes it, and leg to leg stays.
#[test]
fn a_big_load_on_one_leg_shows_an_open_neutral() {
    let mut plant = on(ServiceKind::Split240, true, false);
    plant.service.loads = Loads { one: Ohms(20.0), two: Ohms(20.0), ..Loads::NONE };
    let legs = |plant: &Plant| [Screw::M1, Screw::M2].map(|leg| volts(plant, leg, Screw::N));
    let across = volts(&plant, Screw::M1, Screw::M2);
    plant.service.portable = [true, false];
    // Sound: 12.5 A through a leg and the neutral, a hundredth of an ohm each.
    near(legs(&plant)[0], 120.0, 0.6);
    near(legs(&plant)[1], 120.0, 0.6);
    plant.service.neutral = BURNT_OFF;
    plant.service.electrode = Ohms(1e9);
    plant.service.portable = [false; 2];
    near(legs(&plant)[0], legs(&plant)[1], 0.1);
    // 9.6 beside 20 ohms is 6.49: 240 V over 6.49 and 20 ohms in series.
    let [low, high] = [240.0 * 6.486 / 26.486, 240.0 * 20.0 / 26.486];
    for (portable, expected) in [([true, false], [low, high]), ([false, true], [high, low])] {
        plant.service.portable = portable;
        let [one, two] = legs(&plant);
        near(one, expected[0], 0.5);
        near(two, expected[1], 0.5);
        near(one + two, across, 0.3);
        near(volts(&plant, Screw::M1, Screw::M2), across, 0.3);
    }
    // Of a wye's two legs the same divider over 208 V.
    let mut wye = on(ServiceKind::Wye208, true, false);
    wye.service = Service { portable: [true, false], kind: ServiceKind::Wye208, ..plant.service };
    near(legs(&wye)[0], 207.8 * 6.486 / 26.486, 0.5);
    near(legs(&wye)[1], 207.8 * 20.0 / 26.486, 0.5);
}

/// 1.6, E1 with the house around it (computed): a lost utility leg is fed back through 240 V loads.
#[test]
fn a_lost_utility_leg_is_fed_back() {
    let mut plant = on(ServiceKind::Split240, true, true);
    plant.service.impedance[0] = BURNT_OFF;
    plant.service.loads = Loads { both: Ohms(30.0), ..Loads::NONE };
    near(volts(&plant, Screw::H1, Screw::H3), 0.0, 1.0);
    near(volts(&plant, Screw::H1, Screw::Shell), 120.0, 1.0);
    // Lamps on the lost leg pull it down: part of the voltage comes back over heater and load.
    plant.service.loads.one = Ohms(10.0);
    let back = volts(&plant, Screw::H1, Screw::Shell);
    assert!(back > 20.0 && back < 80.0, "{back}");
}

/// A breaker in the wrong slot, or a tandem taken for a two-pole one (computed): both poles on one leg.
#[test]
fn both_poles_on_one_leg() {
    let mut plant = on(ServiceKind::Split240, true, false);
    let slot = plant.panel.slot_of(Circuit::Heater).unwrap();
    plant.panel.breakers[slot].stabs = [Some(Stab::One); 2];
    near(volts(&plant, Screw::H1, Screw::H3), 0.0, 0.2);
    near(volts(&plant, Screw::H3, Screw::Shell), 120.0, 0.5);
    near(watts(&plant)[0], 0.0, 0.1);
}

/// A box in the line (computed): closed it is not felt, an open fuse leaves its leg back-fed through the element (E1),
/// open contacts leave the heater's side dead and the line side live.
#[test]
fn a_box_in_the_line() {
    let mut plant = on(ServiceKind::Split240, true, true);
    let sound = watts(&plant)[0];
    for &kind in BoxKind::ALL {
        plant.put_in_line(InLineBox::sound(kind, Amps(30.0)));
        near(watts(&plant)[0], sound, 25.0);
        let mut open = plant.clone();
        open.in_line.as_mut().unwrap().closed = false;
        near(volts(&open, Screw::X1, Screw::X2), 240.0, 1.0);
        near(watts(&open)[0], 0.0, 0.1);
        assert_ne!(open.electrical_state(), plant.electrical_state());
    }
    plant.in_line.as_mut().unwrap().fuses[0] = Contact::Open;
    near(volts(&plant, Screw::H1, Screw::H3), 0.0, 0.5);
    near(volts(&plant, Screw::X3, Screw::Shell), 120.0, 1.0);
    near(volts(&plant, Screw::X1, Screw::X3), 240.0, 1.0);
}
