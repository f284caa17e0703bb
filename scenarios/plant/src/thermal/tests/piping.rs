//! The house's piping: what each thing that can be wrong with it does to flows, temperatures and pressures.

use quantity::{Draw, Kelvins, Pressure};

use super::*;
use crate::HeaterModel::{Plain40, Tall50At208};
use crate::waterworks::{Fixture, MixingValve, Recirculation, Regulator, TAPS};

fn fahrenheit(plant: &Plant, tap: Tap) -> f64 {
    plant.tap_temperature(tap).to_fahrenheit()
}

/// Opens a tap and lets it run.
fn run(plant: &mut Plant, tap: Tap, seconds: f64) {
    open(plant, tap, 1.0);
    plant.advance(Seconds(seconds));
}

/// F38: lukewarm everywhere; with the heater's cold valve shut one open hot tap keeps flowing, cold.
#[test]
fn a_crossover_keeps_flowing_with_the_cold_valve_shut() {
    let mut plant = sound(Plain40);
    run(&mut plant, Tap::Bath, 20.0);
    assert!(fahrenheit(&plant, Tap::Bath) > 115.0);
    plant.plumbing.cold_valve = 0.0;
    plant.advance(Seconds(30.0));
    assert!(plant.tap_flow(Tap::Bath).to_gpm() < 0.01);
    plant.plumbing.cold_valve = 1.0;
    plant.plumbing.fixtures[Tap::Laundry.index()].crossover = 0.008;
    plant.advance(Seconds(20.0));
    let warm = fahrenheit(&plant, Tap::Bath);
    assert!((75.0..112.0).contains(&warm), "{warm}");
    plant.plumbing.cold_valve = 0.0;
    plant.advance(Seconds(30.0));
    let gpm = plant.tap_flow(Tap::Bath).to_gpm();
    assert!(gpm > 1.0, "{gpm}");
    let cold = fahrenheit(&plant, Tap::Bath) - plant.plumbing.inlet.to_fahrenheit();
    assert!(cold < 2.0, "{cold}");
}

/// F39: the valve gives what it is set to; failed low it gives lukewarm water from a hot tank.
#[test]
fn a_mixing_valve_gives_what_it_is_set_to() {
    let mut plant = sound(Plain40);
    for f in [95.0, 105.0, 115.0] {
        plant.plumbing.mixing = Some(MixingValve { set: Temperature::fahrenheit(f), seized: None });
        run(&mut plant, Tap::Shower, 10.0);
        let got = fahrenheit(&plant, Tap::Shower);
        assert!((got - f).abs() < 1.0, "{got} for {f}");
    }
    let drawn = plant.plumbing.ledger.taps[Tap::Shower.index()];
    let celsius = water::temperature(drawn.heat.get() / drawn.mass.get());
    assert!((88.0..118.0).contains(&Temperature::celsius(celsius).to_fahrenheit()), "{celsius}");
    plant.plumbing.mixing = Some(MixingValve { set: Temperature::fahrenheit(120.0), seized: Some(0.55) });
    let got = fahrenheit(&plant, Tap::Shower);
    assert!((80.0..102.0).contains(&got) && plant.outlet().to_fahrenheit() > 115.0, "{got}");
}

/// F74: one fixture's stop: at the same moment the others give 120 °F and this one 105 °F or less.
#[test]
fn a_limit_stop_cools_one_fixture() {
    let mut plant = sound(Plain40);
    plant.plumbing.fixtures[Tap::Shower.index()] = Fixture { limit_stop: 0.35, ..Fixture::default() };
    open(&mut plant, Tap::Bath, 1.0);
    run(&mut plant, Tap::Shower, 10.0);
    assert!(fahrenheit(&plant, Tap::Shower) < 105.0, "{}", fahrenheit(&plant, Tap::Shower));
    assert!(fahrenheit(&plant, Tap::Bath) > 115.0);
    assert!(plant.hottest_at(Tap::Kitchen).to_fahrenheit() > 115.0);
}

/// Both sides of a tap: cold alone comes at the main's temperature and takes nothing from the tank.
#[test]
fn the_cold_side_leaves_the_tank_alone() {
    let mut plant = sound(Plain40);
    let before = plant.tank.energy();
    plant.plumbing.cold_taps[Tap::Kitchen.index()] = 1.0;
    plant.advance(Seconds::minutes(5.0));
    assert!((fahrenheit(&plant, Tap::Kitchen) - plant.plumbing.inlet.to_fahrenheit()).abs() < 0.5);
    assert!((plant.tank.energy() / before - 1.0).abs() < 5e-3);
    let kilograms = plant.plumbing.ledger.taps[Tap::Kitchen.index()].mass.get();
    assert!(
        (kilograms - 5.0 * plant.tap_flow(Tap::Kitchen).to_litres_per_minute()).abs() < 1.0,
        "{kilograms}"
    );
}

/// Watts that tank and pipes lose over a day with nobody drawing.
fn standby(plant: &mut Plant) -> f64 {
    let before = plant.plumbing.ledger;
    plant.advance(Seconds::hours(24.0));
    let ledger = plant.plumbing.ledger;
    (ledger.lost.get() + ledger.pipes.get() - before.lost.get() - before.pipes.get()) / 86_400.0
}

/// F44: the return is hot with no draw and standby several times the tank's own; shut, it falls back to it
/// (about 1 kWh a day, trade sheet 4.10, computed).
#[test]
fn a_loop_that_never_rests_multiplies_standby() {
    let mut plant = sound(Plain40);
    let alone = standby(&mut plant);
    assert!((25.0..60.0).contains(&alone), "{alone} W");
    plant.plumbing.recirculation = Some(Recirculation { pump: true, check: true, valve: 1.0 });
    plant.advance(Seconds::hours(1.0));
    assert!(plant.return_temperature().to_fahrenheit() > 100.0);
    let always = standby(&mut plant);
    assert!((150.0..350.0).contains(&always), "{always} W");
    // Pump off: a check that closes stops it, one that does not lets warm water rise.
    plant.plumbing.recirculation = Some(Recirculation { pump: false, check: true, valve: 1.0 });
    assert!(plant.return_temperature().near(plant.room, Temperature(0.1)));
    // The loop has left the tank a few kelvin warmer all through than it was alone.
    let stopped = standby(&mut plant);
    plant.plumbing.recirculation = Some(Recirculation { pump: false, check: false, valve: 1.0 });
    let rising = standby(&mut plant);
    assert!(
        stopped < 1.3 * alone && rising > 2.0 * alone && rising < always,
        "{alone} {always} {stopped} {rising}"
    );
    // And while somebody draws, cold water goes up the return.
    open(&mut plant, Tap::Bath, 1.0);
    plant.advance(Seconds(20.0));
    let lower = plant.outlet().above(plant.tap_temperature(Tap::Bath));
    assert!(lower > Kelvins(0.5), "{lower:?}");
    plant.plumbing.recirculation = None;
    plant.plumbing.traps.fitted = false;
    open(&mut plant, Tap::Bath, 0.0);
    plant.advance(Seconds::hours(3.0));
    let untrapped = standby(&mut plant);
    assert!((1.05..1.5).contains(&(untrapped / alone)), "{untrapped}");
}

/// F43: the meter moves with nothing open and stops when the heater's cold valve is shut.
#[test]
fn a_leak_behind_the_wall_turns_the_meter() {
    let mut plant = sound(Plain40);
    assert!(plant.meter_flow().get().abs() < 1e-9);
    plant.plumbing.hot_leak = 0.0008;
    plant.advance(Seconds::hours(6.0));
    let gpm = plant.meter_flow().to_gpm();
    assert!((0.05..0.3).contains(&gpm), "{gpm}");
    let lost = plant.plumbing.ledger.hidden.mass.get();
    assert!((lost - gpm * 3.785 * 360.0).abs() < 0.1 * lost, "{lost}");
    assert_eq!(plant.plumbing.on_floor.get(), 0.0);
    plant.plumbing.cold_valve = 0.0;
    plant.advance(Seconds::minutes(5.0));
    assert!(plant.meter_flow().to_gpm() < 1e-4);
}

/// F58: a stuck ball leaves the cold strong and the hot weak at every tap.
#[test]
fn a_stuck_ball_weakens_the_hot_side_only() {
    let mut plant = sound(Plain40);
    plant.plumbing.traps.inlet_free = 0.05;
    run(&mut plant, Tap::Bath, 20.0);
    let hot = plant.tap_flow(Tap::Bath).to_gpm();
    open(&mut plant, Tap::Bath, 0.0);
    plant.plumbing.cold_taps[Tap::Bath.index()] = 1.0;
    let cold = plant.tap_flow(Tap::Bath).to_gpm();
    assert!(hot < 1.0 && cold > 3.0, "{hot} {cold}");
}

/// F40: with the nipples the wrong way round it runs out early.
#[test]
fn reversed_nipples_run_out_early() {
    let mut fell = Vec::new();
    for reversed in [false, true] {
        let mut plant = sound(Plain40);
        plant.panel.breakers.iter_mut().for_each(|b| b.handle = crate::Handle::Off);
        plant.plumbing.reversed = reversed;
        let start = plant.outlet();
        let mut gallons = 0.0;
        while start.above(plant.outlet()) < Kelvins::fahrenheit(15.0) && gallons < 60.0 {
            draw(&mut plant, Tap::Bath, Volume::gallons(1.0));
            gallons += 1.0;
        }
        fell.push(gallons);
    }
    assert!(fell[0] > 22.0 && fell[1] < 0.6 * fell[0], "{fell:?}");
}

/// A regulator holds its set point, droops while much is drawn, and closes the house; with a leaking seat the
/// house creeps up to the street (F46).
#[test]
fn a_regulator_holds_droops_and_creeps() {
    let mut plant = sound(Plain40);
    plant.plumbing.main = Pressure::psi(110.0);
    plant.plumbing.regulator = Some(Regulator::sound(Pressure::psi(55.0)));
    plant.advance(Seconds::minutes(10.0));
    let psi = |plant: &Plant| plant.plumbing.pressure.to_psi();
    assert!(plant.plumbing.is_closed());
    run(&mut plant, Tap::Kitchen, 5.0);
    open(&mut plant, Tap::Kitchen, 0.0);
    plant.advance(Seconds(60.0));
    assert!((54.0..58.0).contains(&psi(&plant)), "{}", psi(&plant));
    run(&mut plant, Tap::Bath, 10.0);
    assert!((35.0..54.0).contains(&psi(&plant)), "{}", psi(&plant));
    open(&mut plant, Tap::Bath, 0.0);
    plant.advance(Seconds(30.0));
    if let Some(regulator) = &mut plant.plumbing.regulator {
        regulator.creep = 0.0003;
    }
    plant.advance(Seconds::minutes(30.0));
    assert!((105.0..112.0).contains(&psi(&plant)), "{}", psi(&plant));
    // A bypass lets expansion back once the street is lower.
    plant.plumbing.main = Pressure::psi(60.0);
    plant.plumbing.regulator = Some(Regulator { bypass: true, ..Regulator::sound(Pressure::psi(55.0)) });
    plant.advance(Seconds::minutes(10.0));
    assert!(psi(&plant) < 62.0, "{}", psi(&plant));
}

/// With the main valve shut nothing comes from the street: neither side of any tap runs once the pressure is let
/// down at one, and the meter stands still, whatever stands behind it and however the heater's own valve is.
#[test]
fn a_shut_main_valve_stops_every_tap_and_the_meter() {
    let creeping = Regulator { creep: 0.0003, ..Regulator::sound(Pressure::psi(55.0)) };
    for (regulator, closed, cold_valve) in [
        (None, false, 1.0),
        (None, true, 1.0),
        (None, false, 0.0),
        (Some(creeping), false, 1.0),
        (Some(creeping), true, 0.0),
        (Some(Regulator { stuck_open: true, ..creeping }), false, 1.0),
    ] {
        let mut plant = sound(Plain40);
        plant.plumbing.regulator = regulator;
        plant.plumbing.closed = closed;
        plant.advance(Seconds::minutes(5.0));
        let held = plant.plumbing.pressure;
        plant.plumbing.main_valve = 0.0;
        plant.plumbing.cold_valve = cold_valve;
        plant.advance(Seconds(30.0));
        // What is shut in keeps its pressure until a tap lets it out.
        assert!(
            plant.plumbing.pressure.near(held, Pressure(5_000.0)),
            "{:?} of {held:?}",
            plant.plumbing.pressure
        );
        run(&mut plant, Tap::Laundry, 120.0);
        assert!(plant.plumbing.pressure.to_psi() < 1.0, "{:?}", plant.plumbing.pressure);
        let street = plant.plumbing.ledger.main;
        for tap in Tap::ALL {
            open(&mut plant, *tap, 1.0);
            plant.plumbing.cold_taps[tap.index()] = 1.0;
            plant.advance(Seconds(30.0));
            assert!(plant.tap_flow(*tap).to_gpm() < 0.01, "{tap:?}");
            assert_eq!(plant.meter_flow().get(), 0.0);
        }
        assert_eq!(plant.plumbing.ledger.main, street);
        plant.plumbing.cold_taps = [0.0; TAPS];
        plant.plumbing.taps = [0.0; TAPS];
        (plant.plumbing.main_valve, plant.plumbing.cold_valve) = (1.0, 1.0);
        plant.advance(Seconds::minutes(10.0));
        assert!(plant.plumbing.pressure.to_psi() > 40.0, "{:?}", plant.plumbing.pressure);
    }
}

/// F47: what the first lift washes onto the seat weeps until the next one flushes it; a worn seat goes on.
#[test]
fn a_relief_valve_weeps_after_its_first_lift() {
    let mut plant = sound(Plain40);
    plant.plumbing.relief.deposit = 0.0005;
    let lift = |plant: &mut Plant| {
        plant.plumbing.relief.lever = true;
        plant.advance(Seconds(5.0));
        plant.plumbing.relief.lever = false;
        plant.advance(Seconds(60.0));
        plant.relief_flow().to_litres_per_minute()
    };
    assert_eq!(plant.relief_flow().get(), 0.0);
    let weeps = lift(&mut plant);
    assert!((0.01..0.5).contains(&weeps), "{weeps}");
    assert_eq!(lift(&mut plant), 0.0);
    plant.plumbing.relief.weep = 0.0003;
    assert!(lift(&mut plant) > 0.0);
    plant.plumbing.relief.blocked = true;
    assert_eq!(lift(&mut plant), 0.0);
}

/// Runaway with the relief valve seized: nothing holds pressure or temperature, and what comes out flashes.
#[test]
fn a_blocked_relief_valve_lets_it_run_away() {
    let mut plant = sound(Plain40);
    plant.plumbing.closed = true;
    plant.plumbing.relief.blocked = true;
    plant.thermostats[0].stuck = Some(true);
    plant.limit.trip = Temperature::fahrenheit(400.0);
    plant.advance(Seconds::hours(1.5));
    assert!(plant.plumbing.pressure.to_psi() > 165.0);
    plant.plumbing.closed = false;
    plant.advance(Seconds::hours(4.0));
    assert!(plant.crown() > Temperature::celsius(101.0), "{}", plant.crown().to_celsius());
    // (h − 419 kJ/kg)/2257 kJ/kg: about 0.19 % for each kelvin above boiling (computed, IAPWS-97).
    let over = plant.crown().to_celsius() - 100.0;
    assert!((plant.flash_share() / (0.00187 * over) - 1.0).abs() < 0.05, "{}", plant.flash_share());
}

/// F51 and trade sheet 10.6, step 5: grit stops the drain; its own head does not move it, a burst of cold does.
#[test]
fn a_burst_of_cold_clears_the_drain() {
    let mut plant = sound(Tall50At208);
    plant.plumbing.hose = true;
    plant.plumbing.cold_valve = 0.0;
    plant.plumbing.drain_grit = 0.97;
    plant.plumbing.drain_valve = 1.0;
    plant.plumbing.relief.lever = true;
    plant.advance(Seconds(20.0));
    let choked = plant.drain_flow().to_gpm();
    assert!(choked < 0.2, "{choked}");
    plant.plumbing.relief.lever = false;
    plant.plumbing.cold_valve = 1.0;
    plant.advance(Seconds(30.0));
    plant.plumbing.cold_valve = 0.0;
    plant.plumbing.relief.lever = true;
    plant.advance(Seconds(20.0));
    let clear = plant.drain_flow().to_gpm();
    assert!(clear > 2.0, "{clear}");
}

/// F59: two weeks of rest leave gas in the lines that the first gallons carry out.
#[test]
fn hydrogen_gathers_while_nobody_draws() {
    let mut plant = sound(Plain40);
    plant.advance(Seconds::hours(24.0));
    open(&mut plant, Tap::Kitchen, 1.0);
    assert!(!plant.tap_spits(Tap::Kitchen));
    open(&mut plant, Tap::Kitchen, 0.0);
    plant.advance(Seconds::hours(24.0 * 13.0));
    let litres = plant.hydrogen().to_litres();
    assert!((1.4..2.0).contains(&litres), "{litres}");
    open(&mut plant, Tap::Kitchen, 1.0);
    assert!(plant.tap_spits(Tap::Kitchen));
    plant.advance(Seconds::minutes(3.0));
    assert!(!plant.tap_spits(Tap::Kitchen) && plant.hydrogen().to_litres() < 0.1);
}

/// F53: a cold fill sweats in damp air and is dry once it has recovered.
#[test]
fn cold_metal_sweats_in_damp_air() {
    let mut plant = cold(Plain40, Temperature::fahrenheit(45.0));
    plant.plumbing.dew_point = Temperature::fahrenheit(58.0);
    assert!(plant.sweats().shell && plant.sweats().pipe);
    plant.plumbing.dew_point = Temperature::fahrenheit(35.0);
    assert!(!plant.sweats().shell && !plant.sweats().pipe);
    plant.plumbing.dew_point = Temperature::fahrenheit(58.0);
    plant.advance(Seconds::hours(4.0));
    assert!(!plant.sweats().shell && !plant.sweats().pipe);
}

/// Everything there is, opened and shut at random: the books close to the gram and, of the heat turned over, to
/// 0.01 %.
fn books_close(seeds: core::ops::Range<u64>) {
    let (mut worst_mass, mut worst_heat) = (0.0_f64, 0.0_f64);
    for seed in seeds {
        let mut dice = Draw::new(seed, "piping");
        let mut plant = sound(HeaterModel::ALL[dice.index(HeaterModel::ALL.len())]);
        disorder(&mut plant, &mut dice);
        plant.advance(Seconds(1.0));
        let (mass, heat) = (held(&plant), stored(&plant));
        let then = plant.plumbing.ledger;
        for step in 0..30 {
            turn(&mut plant, &mut dice);
            plant.advance(Seconds(dice.between(0.0, 900.0)));
            let now = plant.plumbing.ledger;
            let off = held(&plant) - mass - (now.net_mass().get() - then.net_mass().get());
            worst_mass = worst_mass.max(off.abs());
            assert!(off.abs() < 1e-3, "seed {seed} step {step}: {off} kg");
            let off = stored(&plant) - heat - (now.net_heat().get() - then.net_heat().get());
            worst_heat = worst_heat.max(off.abs());
            assert!(off.abs() < 1e-4 * heat.max(2e7), "seed {seed} step {step}: {off} J");
        }
    }
    println!("worst: {worst_mass:.2e} kg, {worst_heat:.2e} J");
}

#[test]
fn books_close_whatever_is_wrong_with_the_piping() {
    books_close(0..150);
}

#[test]
#[ignore = "ten thousand lists take minutes; docs/figures.md keeps what they came to"]
fn books_close_over_ten_thousand_lists() {
    books_close(0..10_000);
}

fn disorder(plant: &mut Plant, dice: &mut Draw) {
    let plumbing = &mut plant.plumbing;
    plumbing.closed = dice.chance(0.4);
    plumbing.reversed = dice.chance(0.2);
    plumbing.traps.fitted = dice.chance(0.7);
    plumbing.traps.inlet_free = if dice.chance(0.3) { dice.unit() } else { 1.0 };
    if dice.chance(0.3) {
        let creep = if dice.chance(0.5) { 0.0003 } else { 0.0 };
        let (stuck_open, bypass) = (dice.chance(0.2), dice.chance(0.5));
        plumbing.main = Pressure::psi(dice.between(60.0, 120.0));
        plumbing.regulator =
            Some(Regulator { creep, stuck_open, bypass, ..Regulator::sound(Pressure::psi(55.0)) });
    }
    if dice.chance(0.3) {
        let seized = dice.chance(0.3).then(|| dice.unit());
        plumbing.mixing = Some(MixingValve { set: Temperature::fahrenheit(110.0), seized });
    }
    if dice.chance(0.4) {
        let (pump, check) = (dice.chance(0.6), dice.chance(0.6));
        plumbing.recirculation = Some(Recirculation { pump, check, valve: 1.0 });
    }
    if dice.chance(0.4) {
        plumbing.fixtures[dice.index(TAPS)] =
            Fixture { limit_stop: 0.3, crossover: dice.between(0.0, 0.008), shut: false };
    }
    for leak in [&mut plumbing.hot_leak, &mut plumbing.nipple_leak, &mut plumbing.drain_drip] {
        *leak = if dice.chance(0.3) { dice.between(0.0, 0.001) } else { 0.0 };
    }
}

fn turn(plant: &mut Plant, dice: &mut Draw) {
    let share = |dice: &mut Draw| dice.unit() * f64::from(u8::from(dice.chance(0.5)));
    let plumbing = &mut plant.plumbing;
    match dice.index(8) {
        0 => plumbing.cold_valve = share(dice),
        7 => plumbing.main_valve = share(dice),
        1 | 2 => plumbing.taps[dice.index(TAPS)] = share(dice),
        3 => plumbing.cold_taps[dice.index(TAPS)] = share(dice),
        4 => plumbing.drain_valve = share(dice),
        5 => plumbing.relief.lever = dice.chance(0.4),
        _ => plumbing.hose = dice.chance(0.5),
    }
}
