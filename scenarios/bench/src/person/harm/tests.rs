//! Severities follow from the numbers, and every harm survives being written down.

use super::*;
use crate::person::body::{Area, Footing, Glove, Percentile, Touch, Wetness, settle};
use crate::person::burn::Exposure;

fn touch(path: Path, glove: Glove, wetness: Wetness) -> Touch {
    Touch { path, percentile: Percentile::P50, wetness, area: Area::Large, glove, footing: Footing::Wet }
}

fn shocked(path: Path, glove: Glove, wetness: Wetness, volts: f64, seconds: f64) -> Shock {
    let settled = settle(&touch(path, glove, wetness), |_| Volts(volts));
    Shock::of(Who::Technician, path, settled, Seconds(seconds))
}

fn one_of_each() -> Vec<Harm> {
    vec![
        Harm::Shock(shocked(Path::HandHand, Glove::Bare, Wetness::Dry, 120.0, 0.3)),
        Harm::Burn(Exposure::water(Temperature::celsius(60.0), Seconds(5.0)).suffer(Who::Adult)),
        Harm::Flood { volume: Volume::litres(30.0) },
        Harm::ElementBurntOut {
            element: Level::Upper,
            power: Watts(4500.0),
            after: Seconds(40.0),
            sheath: Temperature::celsius(900.0),
        },
        Harm::arc(Volts(240.0), Amps(2000.0), Seconds(0.016), false),
        Harm::MeterOverloaded { volts: Volts(240.0) },
        Harm::Steam {
            water: Temperature::celsius(120.0),
            pressure: Pressure::psi(150.0),
            volume: Volume::litres(4.0),
        },
        Harm::Overpressure { pressure: Pressure::psi(180.0), working: Pressure::psi(150.0) },
        Harm::JointOverheated { power: Watts(302.0), seconds: Seconds(600.0) },
        Harm::Strain { mass: Kilograms(60.0) },
        Harm::TankLukewarm { temperature: Temperature::celsius(38.0) },
    ]
}

#[test]
fn written_and_read_again() {
    for harm in one_of_each() {
        let text = serde_json::to_string(&harm).unwrap();
        assert_eq!(serde_json::from_str::<Harm>(&text).unwrap(), harm, "{text}");
        let spoilt = text.replacen('{', "{\"extra\":1,", 1);
        assert!(serde_json::from_str::<Harm>(&spoilt).is_err(), "{spoilt}");
    }
    let text = serde_json::to_string(&Harm::ElementBurntOut {
        element: Level::Lower,
        power: Watts(4500.0),
        after: Seconds(40.0),
        sheath: Temperature(1173.0),
    });
    assert_eq!(
        text.unwrap(),
        r#"{"harm":"element-burnt-out","element":"lower","power":4500.0,"after":40.0,"sheath":1173.0}"#
    );
}

/// 7.6: 120 V hand to hand is far above let-go yet below c1; wet, hand to feet and held, it is past c1.
#[test]
fn shocks() {
    let severity =
        |path, glove, wetness, volts, seconds| shocked(path, glove, wetness, volts, seconds).severity();
    let hands = Path::HandHand;
    assert_eq!(severity(hands, Glove::Bare, Wetness::Dry, 120.0, 5.0), Severity::Injury);
    assert_eq!(severity(Path::LeftHandFeet, Glove::Bare, Wetness::Water, 120.0, 5.0), Severity::Grave);
    assert_eq!(severity(hands, Glove::Bare, Wetness::Dry, 240.0, 0.3), Severity::Injury);
    assert_eq!(severity(hands, Glove::Bare, Wetness::Dry, 240.0, 0.7), Severity::Grave);
    assert_eq!(severity(hands, Glove::Rated, Wetness::Salt, 240.0, 5.0), Severity::NearMiss);
    assert_eq!(severity(hands, Glove::Bare, Wetness::Dry, 0.0, 5.0), Severity::NearMiss);
}

#[test]
fn things() {
    let flood = |litres| Harm::Flood { volume: Volume::litres(litres) }.severity();
    assert_eq!(
        [flood(1.0), flood(30.0), flood(170.0)],
        [Severity::NearMiss, Severity::Injury, Severity::Grave]
    );
    // 1 kA, 5 kA and 10 kA for one cycle of 60 Hz: 2, 10 and 20 kJ in the arc.
    let arc =
        |amps, protected| Harm::arc(Volts(240.0), Amps(amps), Seconds(1.0 / 60.0), protected).severity();
    assert_eq!([arc(100.0, false), arc(1e3, false)], [Severity::NearMiss, Severity::Injury]);
    assert_eq!([arc(5e3, true), arc(10e3, true)], [Severity::NearMiss, Severity::Injury]);
    let pressed =
        |psi| Harm::Overpressure { pressure: Pressure::psi(psi), working: Pressure::psi(150.0) }.severity();
    assert_eq!([pressed(180.0), pressed(310.0)], [Severity::NearMiss, Severity::Grave]);
}

#[test]
fn more_is_never_milder() {
    let mut last = Severity::NearMiss;
    for litres in 0..300 {
        let now = Harm::Flood { volume: Volume::litres(f64::from(litres)) }.severity();
        assert!(now >= last);
        last = now;
    }
    let mut last = Severity::NearMiss;
    for tick in 0..100 {
        let seconds = Seconds(0.1 * f64::from(tick));
        let burn = Exposure::water(Temperature::celsius(75.0), seconds).suffer(Who::Adult);
        assert!(burn.severity() >= last, "{burn:?}");
        last = burn.severity();
    }
    assert_eq!(last, Severity::Grave);
}

/// Trade sheet 10.16 for shocks (common practice); which burns is from memory of what burn units ask to be sent.
#[test]
fn what_takes_an_ambulance() {
    let shock = |milliamps: f64| {
        let settled = Settled {
            current: Amps(milliamps * 1e-3),
            ..settle(&touch(Path::HandHand, Glove::Bare, Wetness::Dry), |_| Volts(120.0))
        };
        Harm::Shock(Shock::of(Who::Technician, Path::HandHand, settled, Seconds(0.3))).needs_ambulance()
    };
    assert_eq!([0.4, 2.0, 4.9, 5.1, 76.0].map(shock), [false, false, false, true, true]);
    let burn = |who, degree| {
        let burn = Exposure::water(Temperature::celsius(60.0), Seconds(5.0)).suffer(who);
        Harm::Burn(Burn { degree, ..burn }).needs_ambulance()
    };
    assert_eq!(
        [Degree::First, Degree::Second, Degree::Third].map(|d| burn(Who::Adult, d)),
        [false, false, true]
    );
    assert_eq!(
        [Degree::First, Degree::Second, Degree::Third].map(|d| burn(Who::Child, d)),
        [false, true, true]
    );
    let things = one_of_each().into_iter().filter(|harm| !harm.bodily());
    assert!(things.into_iter().all(|harm| !harm.needs_ambulance()));
}
