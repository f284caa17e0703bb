//! Section 6: branch circuits by the electrical code. Ghost volts (6.13) are checked in
//! `scenarios/plant/src/electrical/tests/wiring.rs`, the breaker curve (6.14) beside the breaker.

use plant::branch;
use quantity::Amps;

/// 6.1 to 6.3 (published: NEC 422.13, 422.11(E), 310.16, 240.4(D); results computed): least and most breaker, copper.
#[test]
fn every_row_of_the_branch_circuits() {
    for (watts, volts, least, most, awg) in [
        (3500.0, 240.0, 20.0, 25.0, 12),
        (3800.0, 240.0, 20.0, 25.0, 12),
        (4500.0, 240.0, 25.0, 30.0, 10),
        (5500.0, 240.0, 30.0, 35.0, 10),
        (6000.0, 240.0, 35.0, 40.0, 8),
        (1500.0, 120.0, 20.0, 20.0, 12),
        (2000.0, 120.0, 25.0, 25.0, 10),
        (4500.0, 208.0, 30.0, 35.0, 10),
        (5500.0, 208.0, 35.0, 40.0, 8),
    ] {
        let current = Amps(watts / volts);
        let (low, high) = branch::allowed(current).unwrap();
        assert_eq!((low.get(), high.get()), (least, most), "{watts} W at {volts} V");
        let fitted = branch::fitted(current).unwrap();
        assert!(low <= fitted && fitted <= high);
        assert_eq!(branch::copper(current, low), Some(awg), "{watts} W at {volts} V");
    }
}

/// 6.3 (published: 240.4(D) by 6.2): the larger breaker of a 5500 W heater, 35 A, asks for 8 AWG; both of 4500 W at once
/// (1.10, computed: 46.9 A) for 6 AWG.
#[test]
fn a_larger_breaker_asks_for_more_copper() {
    assert_eq!(branch::copper(Amps(5500.0 / 240.0), Amps(35.0)), Some(8));
    assert_eq!(branch::copper(Amps(37.5), Amps(50.0)), Some(6));
}

/// 6.1 (published): every heater of the yard has a breaker that its plate allows, one pole where a neutral feeds it.
#[test]
fn every_heater_is_fed_by_the_rules() {
    use plant::{Circuit, HeaterModel, Plant, Setting, climate::Climate, household::HouseholdKind};
    for &heater in HeaterModel::ALL {
        let (household, climate) = (HouseholdKind::Couple, Climate::MillValley);
        let plant = Plant::sound(Setting {
            heater,
            household,
            climate,
            day: 100,
            in_line: None,
            location: Default::default(),
        });
        let breaker = plant.panel.feeding(Circuit::Heater).unwrap();
        let (low, high) = branch::allowed(plant.plate.current()).unwrap();
        assert!(low <= breaker.rating && breaker.rating <= high, "{heater}");
        assert_eq!(breaker.is_single(), plant.service.kind.hot_neutral(), "{heater}");
    }
}
