//! The impedance tables, the figures computed from them, and a person in a circuit.

use super::*;
use crate::person::shock::{ShockZone, shock};
use quantity::Seconds;

const PERCENTILES: [Percentile; 3] = [Percentile::P5, Percentile::P50, Percentile::P95];
const WETNESSES: [Wetness; 3] = [Wetness::Dry, Wetness::Water, Wetness::Salt];
const GLOVES: [Glove; 4] = [Glove::Bare, Glove::Rated, Glove::RatedWet, Glove::RatedDamaged];
const FOOTINGS: [Footing; 3] = [Footing::Dry, Footing::Damp, Footing::Wet];

fn bare(path: Path, percentile: Percentile, wetness: Wetness) -> Touch {
    Touch { path, percentile, wetness, area: Area::Large, glove: Glove::Bare, footing: Footing::Wet }
}

fn every_touch() -> Vec<Touch> {
    let mut all = Vec::new();
    for &path in Path::ALL {
        for percentile in PERCENTILES {
            for wetness in WETNESSES {
                for glove in GLOVES {
                    for footing in FOOTINGS {
                        for area in [Area::Large, Area::Small] {
                            all.push(Touch { path, percentile, wetness, area, glove, footing });
                        }
                    }
                }
            }
        }
    }
    all
}

/// 7.2, from memory of IEC 60479-1:2005 tables 1 to 3; typed here a second time.
#[test]
fn tables() {
    let check = |wetness, rows: &[(f64, &str)]| {
        for (volts, ohms) in rows {
            let found = PERCENTILES.map(|p| hand_to_hand(Volts(*volts), p, wetness).get().to_string());
            assert_eq!(found.join("/"), *ohms, "{wetness:?} {volts} V");
        }
    };
    let high = [
        (125.0, "900/1550/2675"),
        (150.0, "850/1400/2350"),
        (175.0, "825/1325/2175"),
        (200.0, "800/1275/2050"),
        (225.0, "775/1225/1900"),
        (400.0, "700/950/1275"),
        (1000.0, "575/775/1050"),
        (2000.0, "575/775/1050"),
    ];
    check(Wetness::Dry, &high);
    check(Wetness::Water, &high);
    check(Wetness::Dry, &[(0.0, "1750/3250/6100"), (25.0, "1750/3250/6100"), (50.0, "1375/2500/4600")]);
    check(Wetness::Dry, &[(75.0, "1125/2000/3600"), (100.0, "990/1725/3125")]);
    check(Wetness::Water, &[(25.0, "1175/2175/4100"), (50.0, "1100/2000/3675")]);
    check(Wetness::Water, &[(75.0, "1025/1825/3275"), (100.0, "975/1675/2950")]);
    check(Wetness::Salt, &[(25.0, "960/1300/1755"), (50.0, "940/1275/1720"), (100.0, "880/1225/1655")]);
    check(Wetness::Salt, &[(125.0, "850/1200/1620"), (225.0, "770/1115/1505")]);
}

/// Check case 23, computed from table 1 of the 2005 edition.
#[test]
fn check_case_23() {
    let touch = bare(Path::HandHand, Percentile::P50, Wetness::Dry);
    assert!((touch.current(Volts(125.0)).get() - 80.6e-3).abs() < 0.5e-3);
}

/// 7.6, computed from the tables and the c1 curve.
#[test]
fn numbers_of_the_trade_sheet() {
    let cases = [
        (120.0, Path::HandHand, Percentile::P50, Wetness::Dry, 1585.0, 76e-3, 30e-3, None),
        (120.0, Path::LeftHandFeet, Percentile::P5, Wetness::Water, 915.0, 131e-3, 131e-3, Some(0.34)),
        (240.0, Path::HandHand, Percentile::P50, Wetness::Dry, 1201.0, 200e-3, 80e-3, Some(0.60)),
        (208.0, Path::HandHand, Percentile::P50, Wetness::Dry, 1259.0, 165e-3, 66e-3, Some(0.73)),
    ];
    for (volts, path, percentile, wetness, ohms, amps, equivalent, crosses) in cases {
        let touch = bare(path, percentile, wetness);
        assert!((touch.impedance(Volts(volts)).get() - ohms).abs() < 1.0, "{volts} V {path:?}");
        let current = touch.current(Volts(volts));
        assert!((current.get() - amps).abs() < 0.6e-3, "{volts} V {path:?}: {current:?}");
        let judged = shock(current, path, Seconds(5.0));
        assert!((judged.equivalent.get() - equivalent).abs() < 0.6e-3);
        assert_eq!(judged.crosses_c1.is_some(), crosses.is_some());
        if let (Some(found), Some(expected)) = (judged.crosses_c1, crosses) {
            assert!((found.get() - expected).abs() < 0.006, "{volts} V {path:?}: {found:?}");
        }
    }
}

#[test]
fn more_volts_never_drive_less_current() {
    for touch in every_touch() {
        let mut last = Amps(0.0);
        for volts in 1..=600 {
            let current = touch.current(Volts(f64::from(volts)));
            assert!(current > last, "{touch:?} at {volts} V");
            last = current;
        }
    }
}

/// Wetter hands, wetter floor, worse gloves, less skin: never less current.
#[test]
fn worse_conditions_never_drive_less_current() {
    for touch in every_touch() {
        for volts in (1..=60).map(|v| Volts(f64::from(v) * 10.0)) {
            let here = touch.current(volts).get() * (1.0 + 1e-12);
            for wetness in WETNESSES.into_iter().filter(|w| *w < touch.wetness) {
                assert!(Touch { wetness, ..touch }.current(volts).get() <= here, "{touch:?} {volts:?}");
            }
            for footing in FOOTINGS.into_iter().filter(|f| *f < touch.footing) {
                assert!(Touch { footing, ..touch }.current(volts).get() <= here, "{touch:?} {volts:?}");
            }
            for percentile in PERCENTILES.into_iter().filter(|p| *p > touch.percentile) {
                assert!(Touch { percentile, ..touch }.current(volts).get() <= here, "{touch:?} {volts:?}");
            }
            for area in [Area::Medium, Area::Small].into_iter().filter(|a| *a > touch.area) {
                assert!(Touch { area, ..touch }.current(volts).get() <= here, "{touch:?} {volts:?}");
            }
            let rated = Touch { glove: Glove::Rated, ..touch }.current(volts).get();
            assert!(rated <= here, "{touch:?} {volts:?}");
        }
    }
}

/// Sound rated gloves keep 120 V below the threshold of reaction, wet or cut ones do nothing.
#[test]
fn gloves() {
    for path in [Path::HandHand, Path::LeftHandFeet, Path::HandsFeet, Path::LeftHandTrunk] {
        let touch = |glove| Touch { glove, ..bare(path, Percentile::P5, Wetness::Salt) };
        let current = |glove| touch(glove).current(Volts(120.0));
        assert_eq!(shock(current(Glove::Rated), path, Seconds(10.0)).zone, ShockZone::Imperceptible);
        assert_eq!(current(Glove::RatedWet), current(Glove::Bare));
        assert_eq!(current(Glove::RatedDamaged), current(Glove::Bare));
    }
}

/// 7.8, computed: 120 V through a leak of 20 kilohm into a body, about 5.7 mA.
#[test]
fn tingle_at_the_tap() {
    let touch = bare(Path::HandsFeet, Percentile::P50, Wetness::Water);
    let settled = settle(&touch, |body| Volts(120.0 * body.get() / (20e3 + body.get())));
    assert!((settled.current.get() - 5.7e-3).abs() < 0.2e-3, "{settled:?}");
}

/// The voltage the circuit gives with the impedance found asks for that impedance again.
#[test]
fn person_and_circuit_agree() {
    let mut most = 0;
    for touch in every_touch() {
        for source in [0.0, 1.0, 50.0, 300.0, 1e3, 3e3, 20e3, 1e5, 1e7] {
            for open in [0.0, 24.0, 120.0, 208.0, 240.0, 480.0] {
                let circuit = |z: Ohms| Volts(open * z.get() / (source + z.get()));
                let settled = settle(&touch, circuit);
                let again = touch.impedance(circuit(settled.impedance));
                let off = again / settled.impedance - 1.0;
                assert!(off.abs() < 1e-6, "{touch:?} {open} V behind {source} ohm: {settled:?}");
                most = most.max(settled.solves);
                if source == 0.0 {
                    assert!(settled.solves <= 2, "{settled:?}");
                }
            }
        }
    }
    assert_eq!(most, 8, "solves of the hardest circuit");
}
