//! Books, and agreement with finer steps.

use quantity::Draw;

use super::*;

/// The project's bound: energy within 0.01 % of what was turned over in a day; mass to the gram.
#[test]
fn books_close_over_a_day() {
    for &heater in HeaterModel::ALL {
        let mut plant = sound(heater);
        let (mass, heat) = (held(&plant), stored(&plant));
        day(&mut plant, Fineness::ORDINARY);
        let ledger = plant.plumbing.ledger;
        assert!(ledger.electric.get() > 1e7, "{heater} heated nothing");
        let off = stored(&plant) - heat - ledger.net_heat().get();
        assert!(off.abs() < 1e-4 * ledger.electric.get(), "{heater}: {off} J");
        let off = held(&plant) - mass - ledger.net_mass().get();
        assert!(off.abs() < 1e-3, "{heater}: {off} kg");
        assert!(ledger.taps[Tap::Shower.index()].mass.get() > 150.0);
    }
}

/// The project's bound: mass to the gram, whatever is opened and shut.
#[test]
fn mass_holds_under_any_valves() {
    for seed in 0..40 {
        let mut dice = Draw::new(seed, "valves");
        let mut plant = sound(HeaterModel::ALL[dice.index(4)]);
        plant.plumbing.closed = dice.chance(0.5);
        if dice.chance(0.3) {
            plant.elements[dice.index(2)].gasket.leak_diameter = 0.001;
        }
        if dice.chance(0.2) {
            plant.vessel.shell_hole = 0.001;
        }
        let (mass, heat) = (held(&plant), stored(&plant));
        for _ in 0..40 {
            match dice.index(6) {
                0 => plant.plumbing.cold_valve = dice.unit() * f64::from(u8::from(dice.chance(0.7))),
                1 | 2 => {
                    plant.plumbing.taps[dice.index(4)] = dice.unit() * f64::from(u8::from(dice.chance(0.5)))
                }
                3 => plant.plumbing.drain_valve = dice.unit() * f64::from(u8::from(dice.chance(0.6))),
                4 => plant.plumbing.relief.lever = dice.chance(0.4),
                _ => plant.plumbing.hose = dice.chance(0.5),
            }
            plant.advance(Seconds(dice.between(0.0, 400.0)));
            let off = held(&plant) - mass - plant.plumbing.ledger.net_mass().get();
            assert!(off.abs() < 1e-3, "seed {seed}: {off} kg");
            let fill = plant.tank.water_volume() / vessel(&plant.plate).volume();
            assert!((-1e-9..1.0005).contains(&fill), "seed {seed}: {fill}");
            assert!(plant.plumbing.pressure.to_psi() < 160.0, "seed {seed}");
        }
        let off = stored(&plant) - heat - plant.plumbing.ledger.net_heat().get();
        assert!(off.abs() < 1e-4 * heat, "seed {seed}: {off} J");
    }
}

/// The project's bound: against steps ten times smaller 0.1 K RMS in every layer, 60 s in switching times.
#[test]
fn finer_steps_agree() {
    let (mut coarse, mut fine) = (sound(HeaterModel::Plain40), sound(HeaterModel::Plain40));
    let a = day(&mut coarse, Fineness::ORDINARY);
    let b = day(&mut fine, Fineness { steps: 0.1, ..Fineness::ORDINARY });
    let kinds = |list: &[(f64, Happening)]| list.iter().map(|(_, h)| h.clone()).collect::<Vec<_>>();
    assert_eq!(kinds(&a), kinds(&b));
    assert!(a.len() > 4);
    // A tank left alone creeps past a cut-in at 0.2 K an hour: there the bound is 0.1 K, half an hour, and
    // what follows is counted from there.
    let mut shift = 0.0;
    for ((x, what), (y, _)) in a.iter().zip(&b) {
        let creeping = matches!(what, Happening::Switched { calling: true, .. }) && !drawing(*x);
        let off = x - y;
        if drawing(*x) {
            shift = 0.0;
        }
        assert!(if creeping { off.abs() < 1800.0 } else { (off - shift).abs() < 60.0 }, "{what:?}: {x} {y}");
        if creeping {
            shift = off;
        }
    }
    let tank = vessel(&coarse.plate);
    let layers = |plant: &Plant| plant.tank.layers(&tank, 24).into_iter().flatten().collect::<Vec<_>>();
    let (a, b) = (layers(&coarse), layers(&fine));
    assert_eq!(a.len(), 24);
    let square: f64 = a.iter().zip(&b).map(|(x, y)| (x - y) * (x - y)).sum();
    assert!((square / 24.0).sqrt() < 0.1, "{}", (square / 24.0).sqrt());
}

/// Whether water is drawn at this moment of the day, or was within the last ten minutes.
fn drawing(at: f64) -> bool {
    DAY.iter().any(|(hour, gallons)| (0.0..600.0 + 50.0 * gallons).contains(&(at - hour * 3600.0)))
}

#[test]
fn same_again_gives_the_same_bits() {
    let run = || {
        let mut plant = sound(HeaterModel::Wide80);
        plant.plumbing.closed = true;
        day(&mut plant, Fineness::ORDINARY);
        plant
    };
    assert_eq!(run(), run());
}
