//! Whether a part was needed follows from its state: tried against the whole catalogue of faults.

use plant::fault::{Parameters, PartKind, Remedy};
use plant::{FaultId, HeaterModel};
use quantity::Draw;

use super::super::judge;
use super::*;

fn house(heater: HeaterModel) -> Home {
    let (household, climate) = (HouseholdKind::Couple, Climate::MillValley);
    Home::sound(Setting { heater, household, climate, day: 200, in_line: None, location: Default::default() })
}

#[test]
fn nothing_is_needed_in_a_sound_house() {
    for &heater in HeaterModel::ALL {
        let plant = house(heater).plant;
        for &part in PartKind::ALL {
            assert!(!judge::needed(&plant, part), "{heater} {part}");
        }
    }
}

/// The part that a fault asks for is needed, the one commonly changed in its place is not.
#[test]
fn the_right_part_is_needed_and_the_tempting_one_is_not() {
    let mut tried = 0;
    for &id in FaultId::ALL {
        let fault = id.fault();
        for &heater in HeaterModel::ALL {
            for seed in 0..4 {
                let mut home = house(heater);
                if !(fault.fits)(&home) {
                    continue;
                }
                let parameters = fault.complete(&Parameters::new(), &mut Draw::new(seed, "judging")).unwrap();
                (fault.apply)(&parameters, &mut home);
                let replaced = |part| fault.remedies.contains(&Remedy::Replace(part));
                let any = fault.remedies.iter().any(|r| match r {
                    Remedy::Replace(part) => judge::needed(&home.plant, *part),
                    _ => true,
                });
                assert!(any, "{id} on {heater}: {parameters:?}");
                let tempting = replaced(fault.tempting) || !judge::needed(&home.plant, fault.tempting);
                // An element made for the voltage that is really there is a remedy of its own.
                assert!(tempting || id == FaultId::F27, "{id} on {heater}: {}", fault.tempting);
                tried += 1;
            }
        }
    }
    assert!(tried > 100, "{tried}");
}

/// Parts that the plate asks for match; the next size does not.
#[test]
fn ratings_match_the_plate() {
    let plant = house(HeaterModel::Plain40).plant;
    let rating = plant.plate.element;
    let (length, mount) = (plant.plate.length, plant.plate.mount);
    let of = |watts, volts, length, mount| NewPart::Element {
        level: Level::Upper,
        rating: plant::heater::Rating { watts: quantity::Watts(watts), volts: Volts(volts) },
        length,
        mount,
        seat_cleaned: true,
    };
    let element = |watts, volts| of(watts, volts, length, mount);
    assert!(judge::matches(&plant, &element(rating.watts.get(), rating.volts.get())));
    assert!(!judge::matches(&plant, &element(5500.0, 240.0)));
    assert!(!judge::matches(&plant, &element(4500.0, 208.0)));
    for other in plant::ElementLength::ALL.iter().filter(|one| **one != length) {
        assert!(!judge::matches(&plant, &of(4500.0, 240.0, *other, mount)), "{other}");
    }
    assert!(!judge::matches(&plant, &of(4500.0, 240.0, length, plant::Mount::FourBolt)));
    // Trade sheet 6.3 (computed): 4500 W takes 25 or 30 A.
    for (amps, right) in [(20.0, false), (25.0, true), (30.0, true), (35.0, false), (27.0, false)] {
        let part = NewPart::Breaker { rating: quantity::Amps(amps) };
        assert_eq!(judge::matches(&plant, &part), right, "{amps}");
    }
    let relief = |psi| NewPart::ReliefValve { opens_at: quantity::Pressure::psi(psi) };
    assert!(judge::matches(&plant, &relief(150.0)) && !judge::matches(&plant, &relief(210.0)));
    let tank = |gallons, psi| NewPart::ExpansionTank {
        volume: Volume::gallons(gallons),
        charge: quantity::Pressure::psi(psi),
    };
    assert!(judge::matches(&plant, &tank(2.0, 50.0)));
    assert!(!judge::matches(&plant, &tank(2.0, 20.0)) && !judge::matches(&plant, &tank(0.6, 50.0)));
}
